"""The exceptions that a `claim` may ask for. A claim is an argument, not a waiver: its rule checks every condition.

This is the one list: completion, hover, the rules and their texts read it here.
"""

from __future__ import annotations

from typing import NamedTuple


class Excuse(NamedTuple):
    """What a claim asks for: a sentence, its clause, and the conditions that are checked, in words."""

    text: str
    clause: str
    conditions: tuple[str, ...]


_ENDS = "it ends in one device, which limits the load to what its wires carry"
_SHORT = "its length is written, and is {} at the most"

DWELLING = "dwelling-unit"
CLASS_II = "class-ii"

EXCUSES: dict[str, Excuse] = {
    "parallel": Excuse(
        "This supply runs in parallel with the others on purpose; their voltages must agree.",
        "",
        ("both supplies have one voltage, angle and frequency",),
    ),
    "tap-10ft": Excuse(
        "A tap, or wires behind a transformer, of 10 ft (3 m) at the most (NEC 240.21).",
        "240.21(B)(1), 240.21(C)(2)",
        (
            _SHORT.format("10 ft (3.05 m)"),
            "its wires carry the load, and not less than the device or bus they end in",
            "they carry a tenth of the device ahead (behind a transformer: times the voltage ratio)",
            "they run in a raceway",
        ),
    ),
    "tap-25ft": Excuse(
        "A tap, or wires behind a transformer, of 25 ft (7.6 m) at the most (NEC 240.21).",
        "240.21(B)(2), 240.21(C)(6)",
        (
            _SHORT.format("25 ft (7.62 m)"),
            "its wires carry a third of the device ahead (behind a transformer: times the voltage ratio)",
            _ENDS,
            "they run in a raceway",
        ),
    ),
    "tap-outside": Excuse(
        "A tap, or wires behind a transformer, that runs outdoors and ends in one device (NEC 240.21).",
        "240.21(B)(5), 240.21(C)(4)",
        ("it is marked `outdoor`", _ENDS),
    ),
    DWELLING: Excuse(
        "A service or feeder that carries the whole load of one dwelling unit: wires for 83 % of its rating "
        "(NEC 310.12). What the unit draws counts as written, with each `factor`, unless its board says `dwelling "
        "standard` or `dwelling optional`: then as NEC 220 calculates it. Under IEC practice its lights have an RCD of "
        "30 mA (IEC 60364-4-41 411.3.4), and nothing else follows from it.",
        "310.12(A), 310.12(B)",
        (
            "it is single-phase: 120/240 V, or as a feeder two legs and the neutral of 208Y/120",
            "its rating is 100 A to 400 A",
            "it ends in a board",
            "no line above it is claimed to carry the whole load of a dwelling unit",
        ),
    ),
    "qualified-supervision": Excuse(
        "Only qualified persons maintain and supervise the installation.", "450.3, 240.86", ()
    ),
    "backfed": Excuse("The maker permits the transformer to be fed from its secondary side.", "450.11(B)", ()),
    "parallel-small": Excuse(
        "Wires smaller than 1/0 run in parallel under one of the exceptions of NEC 310.10(G).",
        "310.10(G)(1) exceptions",
        (
            "the line is marked `existing`",
            "its wires are 2 AWG or larger",
            "the installation has qualified supervision (`claim qualified-supervision`)",
        ),
    ),
    "raceway-ground": Excuse(
        "The metal raceway itself is the equipment ground, bonded at both ends (NEC 250.118).",
        "250.118",
        ("the raceway is EMT, RMC or IMC",),
    ),
    "arc-energy-reduction": Excuse(
        "A documented way to clear arcs faster while people work is fitted (NEC 240.87, 240.67).",
        "240.87(B), 240.67(B)",
        (),
    ),
    "orderly-shutdown": Excuse(
        "A process that a sudden stop would make more dangerous: no ground-fault protection of equipment.",
        "230.95 exception, 215.10 exception",
        (),
    ),
    "rcd-in-charging-point": Excuse(
        "The charging point holds the RCD of 30 mA itself, one for each place to plug in; the text names the unit.",
        "IEC 60364-7-722 722.411.3.3",
        ("the claim says which unit in its text",),
    ),
    "no-direct-residual": Excuse(
        "An earth fault in this equipment cannot bring smooth direct current into its supply: simple separation "
        "inside, or its maker says so; the text names the document.",
        "IEC 60364-7-712 712.531.3.5, IEC 60364-5-53 531.3.3",
        ("the claim says which document in its text",),
    ),
    CLASS_II: Excuse(
        "The housing of a board in a TT system, and all that stands ahead of its RCDs, is of class II or insulated as "
        "well: no fault to metal can arise there; the text names the housing.",
        "IEC 60364-4-41 412, IEC 60364-5-53 531.3.5",
        ("the claim says which housing in its text",),
    ),
    "selectivity-study": Excuse(
        "A coordination study shows that only the device next to a fault opens; its text names the report.",
        "700.32, 701.32, 708.54",
        ("the claim says which report in its text",),
    ),
}
"""Name -> what it asks for."""

CLAIMS: dict[str, str] = {name: asked.text for name, asked in EXCUSES.items()}
"""Name -> what it claims, as a sentence."""
