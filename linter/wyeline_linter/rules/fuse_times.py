"""Earth faults behind gG fuses: what the gates of their standard tell of the time until they open."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_linter.findings import Finding, Severity
from wyeline_linter.protection.disconnection import in_tt, is_short_timed, longest_fault_s
from wyeline_linter.protection.fault_loop import has_rcd, least_earth_a, second_fault_a
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.trip import fuse_opens
from wyeline_linter.rules.fault_times import SECOND, SLOW, fused, larger_to_trip, lines_with_device, trips_at_once
from wyeline_linter.rules.line_findings import about, amps_text
from wyeline_linter.rules.registry import Rule
from wyeline_linter.systems import Arrangement
from wyeline_linter.tables import Looked

if TYPE_CHECKING:
    from wyeline_linter.view import View


@SLOW.also("study")
def fuse_opens_late(view: View) -> Iterator[Finding]:
    """Distribution circuits have 5 s (411.3.2.3), and so has no last circuit more. Of the shorter time of small last
    circuits the gates tell only one side: a fuse that has opened within 0.1 s is fast enough, below that its curve
    decides."""
    for line in lines_with_device(view, fused):
        allowed = longest_fault_s(line)
        if allowed is None or in_tt(line) or has_rcd(view, line) or trips_at_once(line.body):
            continue
        worst = least_earth_a(view, line)
        if worst is not None:
            draws = f"an earth fault at the end of {line.where} draws {amps_text(worst[0])}{worst[1]}"
            yield from _opens(view, SLOW, line, worst[0], draws, allowed)


@SECOND.also("study")
def second_fault_opens_late(view: View) -> Iterator[Finding]:
    """In an IT system whose metal parts are tied together, two faults have the times of TN (411.6.4 a)."""
    for line in lines_with_device(view, fused):
        unearthed = line.system.earthing.arrangement is Arrangement.IT
        if not unearthed or has_rcd(view, line) or trips_at_once(line.body):
            continue
        allowed, amps = longest_fault_s(line), second_fault_a(view, line)
        if allowed is not None and amps is not None:
            draws = f"two earth faults at the end of {line.where} draw {amps_text(amps)}"
            yield from _opens(view, SECOND, line, amps, draws, allowed)


def _opens(view: View, rule: Rule, line: Line, amps: float, draws: str, allowed: Looked[float]) -> Iterator[Finding]:
    """What the gates of a fuse say of a fault of so many amperes, which ``draws`` puts in words."""
    rating = line.body.number("rating")
    if rating is None:
        return
    slow, fast = (fuse_opens(line.tables, line.body, rating, column) for column in ("within_5s", "within_100ms"))
    if slow is None:
        return
    if amps < slow.value * 0.9995:
        yield about(
            view, rule, line,
            f"{draws}; its fuse has opened within 5 s from {amps_text(slow.value)}",
            found=f"{amps_text(amps)} at the far end",
            needed=f"{amps_text(slow.value)} or more ({slow}), or a residual current device",
            change="Choose a smaller fuse, a residual current device, or larger wires.",
            place=line.place_of("rating"),
            fixes=larger_to_trip(view, line),
        )  # fmt: skip
    elif fast is not None and amps < fast.value * 0.9995 and is_short_timed(line):
        yield about(
            view, rule, line,
            f"{draws}; whether its fuse opens soon enough for a last circuit is not told by its standard",
            severity=Severity.GAP,
            found=f"{amps_text(amps)} at the far end; opened within 5 s from {amps_text(slow.value)}, within "
            f"0.1 s from {amps_text(fast.value)}",
            needed=f"{allowed.value:g} s at the most ({allowed}); {amps_text(fast.value)} settles it ({fast})",
            change="Look up its time in the maker's curve and accept this with that source, or choose a smaller "
            "fuse, a residual current device, or larger wires.",
            place=line.place_of("rating"),
        )  # fmt: skip
