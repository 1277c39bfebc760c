"""How large a neutral is: for its worst current, for the fault that returns on it, and from two legs of a wye."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from wyeline_linter.conductor_sizes import area_mm2, size_at_least
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.grounding_conductors import bonding_jumper
from wyeline_linter.loads.third_harmonics import NONLINEAR_FROM, WORD
from wyeline_linter.protection.ampacities import bounds
from wyeline_linter.protection.currents import Current, current_of, laid_with
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.purposes import Purpose, purpose_of
from wyeline_linter.rules.line_findings import about, amps_text
from wyeline_linter.rules.registry import rule
from wyeline_linter.shapes import Shape
from wyeline_linter.shares import share_text
from wyeline_linter.sizing.choosing import neutral_bears, neutral_for_third
from wyeline_linter.sizing.lines import raceway_edit, resized
from wyeline_linter.sizing.writing import size_text, wires_text
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LOW = (
    'project "Annex"\n  basis us-2023\nutility UTIL 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4\n'
    "feeder UTIL -> MSB  3x500kcmil + N 500kcmil Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard MSB 208Y/120  bus 400 A, main 400 A, lug-temp 75 degC\n"
)
_BUNK = _LOW + "panel BUNK 208Y/120 1ph  bus 125 A, main lugs, lug-temp 75 degC\n"
_HALL = (
    _LOW + "panel LP-1 208Y/120  bus 125 A, main lugs, lug-temp 75 degC\n"
    '  1  40 A 1p  4 kVA process  "Oven 1"\n  2  40 A 1p  4 kVA process  "Oven 2"\n'
    '  3  40 A 1p  4 kVA process  "Oven 3"\n  4  40 A 1p  4 kVA process  "Oven 4"\n'
    '  5  40 A 1p  4 kVA process  "Oven 5"\n  6  40 A 1p  4 kVA process  "Oven 6"\n'
)

UNDERSIZED = rule(
    name="neutral-undersized",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="both",
    summary="A neutral carries less than the worst unequal load, or is smaller than a fault on it asks for.",
    why="Unequal or electronic load returns through this wire, which no device guards.",
    clause={
        "us": "220.61, 250.24(D) (numbered so from memory; (C) before 2023), 215.2(A)",
        "iec": "60364-5-52 524.2, Annex E",
    },
    wrong=_HALL + "feeder MSB -> LP-1  100 A 3p  3#3 + N #8 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    right=_HALL + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)
TWO_LEGS = rule(
    name="two-leg-neutral-reduced",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="both",
    summary="A run of two legs of a wye has a neutral smaller than its legs.",
    why="From two legs of a wye the neutral carries as much as a leg, even when the two are balanced.",
    clause={"us": "220.61(C)(1)", "iec": "60364-5-52 524.2.1"},
    wrong=_BUNK + "feeder MSB[AB] -> BUNK  100 A 2p  2#3 + N #6 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    right=_BUNK + "feeder MSB[AB] -> BUNK  100 A 2p  2#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)


@UNDERSIZED.check
def feeder_neutral(view: View, line: Line) -> Iterator[Finding]:
    yield from _judge(view, line)


@UNDERSIZED.also("line")
def circuit_neutral(view: View, line: Line) -> Iterator[Finding]:
    if line.wiring.neutral != line.wiring.size or WORD in line.body.facts:
        yield from _judge(view, line)


def _judge(view: View, line: Line) -> Iterator[Finding]:
    wiring = line.wiring
    if wiring.neutral is None or line.medium:
        return
    current = current_of(view, line)
    if area_mm2(wiring.neutral) >= area_mm2(wiring.size) * 0.999:
        if current.third is not None:
            yield from _against_worst(view, line, current)
        return
    if line.system.shape is Shape.TWO_LEGS3:
        yield about(
            view, TWO_LEGS, line,
            f"{line.where} takes two legs of a wye, and its neutral of {wiring.neutral} is smaller than a leg",
            found=f"neutral {wiring.neutral} beside legs of {wiring.size}",
            needed=f"a neutral of {wiring.size}",
            change=f"Make the neutral {wiring.size}.",
            fixes=_fix(line, wiring.size),
        )  # fmt: skip
        return
    if purpose_of(view, line, current) in (Purpose.SERVICE, Purpose.SECONDARY) and line.us:
        least = bonding_jumper(line.tables, wiring.size, 1, wiring.metal, wiring.metal)
        if not isinstance(least, NotListed) and area_mm2(wiring.neutral) < area_mm2(least.value) * 0.999:
            yield _small(view, line, f"{least.value}, for a fault that returns on it ({least})", least.value)
            return
    rest = None if line.us else _reduced_iec(line, current)
    told = False
    if rest is None or not neutral_bears(line, current, wiring._replace(neutral=rest[1]), laid_with(line, current)):
        for found in _against_worst(view, line, current):
            told = True
            yield found
    if rest is not None and not told:
        yield _small(view, line, *rest)


def _against_worst(view: View, line: Line, current: Current) -> Iterator[Finding]:
    """A neutral against the most that it may carry."""
    worst, laid, wiring = current.neutral_a, laid_with(line, current), line.wiring
    if worst is None or laid is None or wiring.neutral is None:
        return

    held = bounds(line.tables, wiring._replace(size=wiring.neutral), laid)
    if isinstance(held, NotListed) or neutral_bears(line, current, wiring, laid):
        return
    third = current.third
    what = "the load to neutral of one leg alone"
    if third is not None and third.neutral_a:
        part = share_text(third.part)
        what = f"the third harmonic of its legs, {part}, adds up to {amps_text(third.neutral_a)} in it"
        if third.neutral_a < worst * 0.999:
            what = f"unequal load, and {amps_text(third.neutral_a)} of third harmonic ({part} of the line currents)"
    needed = f"{amps_text(worst)}: {what}, and it carries {amps_text(held[1].amps)}"
    larger = neutral_for_third(line, current, wiring.size, wiring.sets, laid)
    size = larger[0] if larger is not None else wiring.size
    bears = neutral_bears(line, current, wiring._replace(neutral=size), laid)
    if third is None or (size != wiring.neutral and bears):
        yield _small(view, line, needed, size)
        return
    yield replace(
        _small(view, line, needed, wiring.size),
        change="Pull larger wires: in a cable of like cores the neutral decides the size.",
        fixes=resized(view, line, laid),
    )


_WHOLE_MM2 = {"Cu": 16.0, "Al": 25.0}
"""Up to this size of the legs a neutral is not reduced, and never below it (IEC 60364-5-52 524.2, from memory)."""


def _reduced_iec(line: Line, current: Current) -> tuple[str, str] | None:
    """What a reduced neutral has to be, and its size; None where it may be reduced this far. That most of a load is
    electronic stands for a third harmonic above 15 % where none is stated (common practice, no source)."""
    wiring, system = line.wiring, line.system
    if wiring.neutral is None or not system.frequency_hz:
        return None
    whole, legs = _WHOLE_MM2[wiring.metal], size_text(wiring.size)
    if len(system.legs) < 3:
        return f"{legs}, as large as its leg, which carries the same current", wiring.size
    third = current.third
    if third is not None and third.part > NONLINEAR_FROM:
        most = f"a smaller one is for {share_text(NONLINEAR_FROM)} or less"
        return (
            f"{legs}, as large as a leg: {share_text(third.part)} of third harmonic adds up in it; {most}",
            wiring.size,
        )
    if current.nonlinear and (third is None or third.unstated_va):
        return f"{legs}, as large as a leg: most of its load is electronic, whose harmonics add in it", wiring.size
    least = size_at_least(line.tables, min(area_mm2(wiring.size), whole))
    if isinstance(least, NotListed) or area_mm2(wiring.neutral) >= area_mm2(least.value) * 0.999:
        return None
    more = f"{legs}, as large as a leg" if least.value == wiring.size else f"{size_text(least.value)} or more"
    return (
        f"{more}: only larger {wiring.metal} legs may have a smaller neutral, and none below {whole:g} mm2",
        least.value,
    )


def _small(view: View, line: Line, needed: str, size: str) -> Finding:
    called = _called(line)
    return about(
        view, UNDERSIZED, line,
        f"the {called} of {line.where} is {line.wiring.neutral}, and that is too small",
        found=f"{called} {line.wiring.neutral} beside legs of {line.wiring.size}",
        needed=needed,
        change=f"Make the {called} {size}.",
        fixes=_fix(line, size),
    )  # fmt: skip


def _called(line: Line) -> str:
    return "PEN" if line.wiring.pen else "neutral"


def _fix(line: Line, size: str) -> tuple[Fix, ...]:
    conductors = line.body.conductors
    if conductors is None:
        return ()
    wiring = line.wiring._replace(neutral=size)
    if wiring.pen:
        wiring = wiring._replace(ground=size)
    span, text = conductors.span, wires_text(wiring, iec=not line.us)
    edits = (Edit(line.block, span.line, span.start, span.line, span.end, text), *raceway_edit(line, wiring))
    return (Fix(f"Make the {_called(line)} {size}", edits, Safety.LOOK),)
