"""The exceptions that a `claim` may ask for. A claim is an argument, not a waiver: its rule checks every condition."""

from __future__ import annotations

CLAIMS: dict[str, str] = {
    "parallel": "This supply runs in parallel with the others on purpose; their voltages must agree.",
    "tap-10ft": "A tap of 10 ft (3 m) at the most (NEC 240.21).",
    "tap-25ft": "A tap of 25 ft (7.5 m) at the most (NEC 240.21).",
    "tap-outside": "A tap outdoors that ends in one device (NEC 240.21).",
    "qualified-supervision": "Only qualified persons maintain and supervise the installation.",
    "backfed": "The maker permits the transformer to be fed from its secondary side.",
}
"""Name -> what it claims."""
