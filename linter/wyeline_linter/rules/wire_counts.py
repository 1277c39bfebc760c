"""Whether a run has as many wires as the legs it carries need: none missing, and none that no figure knows of."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_linter.findings import Finding, Severity
from wyeline_linter.protection.lines import Line
from wyeline_linter.rules.line_findings import about, line_text, wires_fix
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.writing import wires_text

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LP = (
    "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n"
    "panel LP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"
)
_ROW = '  1  20 A 1p  3 kVA lighting  "High bays"  {wires} Cu THWN-2  20 m  in 3/4 inch EMT\n'

FEW = rule(
    name="wires-too-few",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="both",
    summary="A run has fewer wires than the legs it carries, or one leg and nothing for its current to come back on.",
    why="Every leg has a wire of its own, and current to neutral its way back; what is bare or green carries neither.",
    wrong=US + _LP + _ROW.format(wires="1#12 + G #12"),
    right=US + _LP + _ROW.format(wires="2#12 + G #12"),
    mends=True,
)
LEFT_OVER = rule(
    name="wires-left-over",
    since="0.1",
    severity=Severity.WARNING,
    scope="feeder line",
    basis="both",
    summary="A run in a raceway has more wires than its legs and neutral take, which count in no figure.",
    why="Wires that carry nothing stated fill the raceway and may heat the others; a slip of the pen looks the same.",
    wrong=US + _LP + _ROW.format(wires="3#12 + G #12"),
    right=US + _LP + _ROW.format(wires="2#12 + G #12"),
    mends=True,
)


def _count(line: Line) -> tuple[int, bool] | None:
    """The wires of one set that may carry load, and whether a neutral of its own is named beside them; None where
    the voltage asks for no count of legs (direct current)."""
    conductors = line.body.conductors
    if conductors is None or line.system.frequency_hz == 0 or not line.system.legs:
        return None
    named = any(role in ("N", "PEN") for role, _ in conductors.extras)
    return conductors.run.count - conductors.run.with_protective, named


@FEW.check
@FEW.also("line")
def too_few(view: View, line: Line) -> Iterator[Finding]:
    counted = _count(line)
    if counted is None:
        return
    have, named = counted
    legs = len(line.system.legs)
    if have >= legs and (legs > 1 or named or have > 1):
        return
    alone = legs == 1
    wiring = line.wiring._replace(legs=legs, neutral=line.wiring.neutral or (line.wiring.size if alone else None))
    text = wires_text(wiring, iec=not line.us)
    yield about(
        view, FEW, line,
        f"{line.where} carries one leg, and no wire brings its current back" if alone
        else f"{line.where} carries {legs} legs on {have} {'wire' if have == 1 else 'wires'}",
        found=f"{line_text(line)}: {have} beside {line.wiring.ground_role or 'what is earthed'}",
        needed="a leg and its neutral" if alone else f"{legs} wires of one size, and the neutral where one is used",
        change=f"Write `{text}`.",
        fixes=wires_fix(line, text),
    )  # fmt: skip


@LEFT_OVER.check
@LEFT_OVER.also("line")
def left_over(view: View, line: Line) -> Iterator[Finding]:
    """A cable is bought with the cores it has; only wires that are pulled one by one are counted."""
    counted = _count(line)
    conductors = line.body.conductors
    if counted is None or conductors is None or conductors.run.with_protective or line.wiring.cable:
        return
    have, named = counted
    legs = len(line.system.legs)
    over = have - legs - (not named)
    if over <= 0:
        return
    text = wires_text(line.wiring, iec=not line.us)
    yield about(
        view, LEFT_OVER, line,
        f"{line.where} carries {legs} {'leg' if legs == 1 else 'legs'} and has {have} wires"
        + (" beside its neutral" if named else ""),
        found=f"{line_text(line)}: {over} that no figure knows of",
        needed=f"{legs} and a neutral" if not named else f"{legs} beside the neutral",
        change=f"Write `{text}`; circuits that share the run say `with`, and wires for switching go into a note.",
        fixes=wires_fix(line, text),
    )  # fmt: skip
