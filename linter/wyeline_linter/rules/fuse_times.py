"""Earth faults behind gG fuses in TN systems: what the gates of their standard tell of the time until they open."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.model import Body
from wyeline_linter.earthing import own_electrode
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.protection.lines import Line
from wyeline_linter.rules.fault_times import SLOW, has_rcd, least_earth_a, lines_with_device, trips_at_once
from wyeline_linter.rules.line_findings import about, amps_text
from wyeline_linter.systems import Arrangement
from wyeline_linter.tables import Looked

if TYPE_CHECKING:
    from wyeline_linter.analysis import View

FIXED_A, SOCKETS_A = 32.0, 63.0
"""Final circuits of fixed equipment and of socket outlets up to here have the shorter time (IEC 60364-4-41:2017
411.3.2.2, from memory)."""
SHORT_TIME = "0.4 s at the most (0.2 s above 230 V to earth)"
"""Of TN systems, IEC 60364-4-41 Table 41.1 (from memory)."""
_LAST = frozenset({"motor", "load", "charger", "capacitor", "drive"})


def fused(body: Body) -> bool:
    """Whether its device is a gG fuse."""
    return body.text("fuse") == "gG"


def _has_short_time(line: Line, amps: float) -> bool:
    """Whether it is a last circuit that has less time than a distribution circuit."""
    if line.circuit is None and (line.target is None or line.target.kind not in _LAST):
        return False
    body = line.body if line.target is None else line.target.body
    return amps <= (SOCKETS_A if "receptacle" in body.flags else FIXED_A)


@SLOW.also("study")
def fuse_opens_late(view: View) -> Iterator[Finding]:
    """Distribution circuits have 5 s (411.3.2.3), and so has no last circuit more. Of the shorter time of small last
    circuits the gates tell only one side: a fuse that has opened within 0.1 s is fast enough, below that its curve
    decides."""
    for line in lines_with_device(view, fused):
        arrangement = line.system.earthing.arrangement
        if arrangement in (Arrangement.TT, Arrangement.IT) or line.system.earth is None or line.guard is None:
            continue
        if own_electrode(line.target):
            continue  # its end is in TT, where residual current trips
        if has_rcd(view, line) or line.system.frequency_hz == 0 or trips_at_once(line.body):
            continue
        key = (f"{line.guard.amps:g}",)
        slow, fast = (line.tables.number("fuse-gates", key, column) for column in ("within_5s", "within_100ms"))
        worst = least_earth_a(view, line) if isinstance(slow, Looked) else None
        if worst is None or not isinstance(slow, Looked):
            continue
        draws = f"an earth fault at the end of {line.where} draws {amps_text(worst[0])}{worst[1]}"
        if worst[0] < slow.value * 0.9995:
            yield about(
                view, SLOW, line,
                f"{draws}; its fuse has opened within 5 s from {amps_text(slow.value)}",
                found=f"{amps_text(worst[0])} at the far end",
                needed=f"{amps_text(slow.value)} or more ({slow}), or a residual current device",
                change="Choose a smaller fuse, a residual current device, or larger wires.",
                place=line.place_of("rating"),
            )  # fmt: skip
        elif isinstance(fast, Looked) and worst[0] < fast.value * 0.9995 and _has_short_time(line, line.guard.amps):
            yield about(
                view, SLOW, line,
                f"{draws}; whether its fuse opens soon enough for a last circuit is not told by its standard",
                severity=Severity.GAP,
                found=f"{amps_text(worst[0])} at the far end; opened within 5 s from {amps_text(slow.value)}, within "
                f"0.1 s from {amps_text(fast.value)}",
                needed=f"{SHORT_TIME}; {amps_text(fast.value)} settles it ({fast})",
                change="Look up its time in the maker's curve and accept this with that source, or choose a smaller "
                "fuse, a residual current device, or larger wires.",
                place=line.place_of("rating"),
            )  # fmt: skip
