"""What wires carry: at their terminals, in warm air, bundled; for their device, their load, their motors."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from wyeline_linter.claims import DWELLING
from wyeline_linter.demand_factors import fraction_dropped
from wyeline_linter.findings import Finding, Fix, Severity, append_phrase
from wyeline_linter.protection.ampacities import Carries, Laid, bounds, failing_stage
from wyeline_linter.protection.currents import Current, current_of, laid_with
from wyeline_linter.protection.dwellings import relief_if_claimed, relief_of
from wyeline_linter.protection.lines import Line, first_device_a
from wyeline_linter.protection.purposes import ONE_LOAD, Purpose, of_generator_a, purpose_of, required_a
from wyeline_linter.rules.line_findings import about, amps_text, device_words, line_text, rating_fix
from wyeline_linter.rules.motors import DRIVE_WIRE, FEEDER_DEVICE, MOTOR_WIRE, UNIT
from wyeline_linter.rules.overcurrent import UNDERPROTECTED, US, small_limit_a
from wyeline_linter.rules.raceway import BUNDLED, NEUTRAL_COUNTS
from wyeline_linter.rules.registry import Rule, rule
from wyeline_linter.rules.wires_unwritten import HOW_LAID
from wyeline_linter.shares import share_text
from wyeline_linter.sizing.lines import resized
from wyeline_linter.standard_ratings import conventional_current_ratio
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LP = "panel LP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"

TOO_HOT = rule(
    name="termination-too-hot",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="us",
    summary="Wires carry enough by their insulation, but not at terminals that are rated for less heat.",
    why="The lug is rated cooler than the wire's insulation; its column decides, and without a mark that is 60 degC.",
    clause={"us": "110.14(C)(1)"},
    wrong=US
    + "panel LP-1 480Y/277  bus 125 A, main lugs\n"
    + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)
SHORT = rule(
    name="ampacity-short",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="both",
    summary="After warm surroundings, wires carry less than their device lets through, or less than their load.",
    why="In warm air a wire sheds less heat: what it may carry shrinks, and its device does not know that.",
    clause={"us": "310.15(B), 240.4", "iec": "60364-5-52 523, B.52.14"},
    wrong=US
    + _LP
    + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT, ambient 52 degC\n",
    right=US
    + _LP
    + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT, ambient 40 degC\n",
    mends=True,
)
WIRE_MARGIN = rule(
    name="continuous-wire-margin",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="us",
    summary="Wires carry less than the load to size by, before any factor: 125 % of what runs for hours, and the rest.",
    why="The device may be the next size up, but the wires and lugs still need the 25 % reserve for hours of load.",
    clause={"us": "210.19(A), 215.2(A)"},
    wrong=US
    + "load KILN 480 3ph  91 kVA, heating continuous, lug-temp 75 degC\n"
    + "feeder MSB -> KILN  150 A 3p  3#1 + G #6 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    right=US
    + "load KILN 480 3ph  91 kVA, heating continuous, lug-temp 75 degC\n"
    + "feeder MSB -> KILN  150 A 3p  3#1/0 + G #6 Cu THWN-2  20 m  in 1-1/2 inch EMT\n",
    mends=True,
)
NOT_HELD = rule(
    name="wire-not-in-tables",
    since="0.1",
    severity=Severity.GAP,
    scope="feeder",
    basis="both",
    summary="The tables of the project's basis do not hold these wires, so nothing says what they carry.",
    why="Medium-voltage and special cables have their maker's ampacity; a table for others would mislead.",
    clause={"us": "310.14, 315", "iec": "60364-5-52, 60502-2"},
    wrong=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu SOOW  20 m  in 1-1/2 inch EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/2 inch EMT\n",
)
GENERATOR = rule(
    name="generator-wire-small",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="us",
    summary="The wires of a generator carry less than 115 % of its rated current.",
    why="A generator can be asked for more than its rating for a while; its wires must bear that.",
    clause={"us": "445.13(A)"},
    wrong='project "Annex"\n  basis us-2023\n'
    "generator GEN-1 480Y/277  100 kVA, pf 0.8, subtransient 12 %, x/r 18\n"
    "panel EP-1 480Y/277  bus 225 A, main 125 A\n"
    "feeder GEN-1 -> EP-1  125 A 3p  3#1 + N #1 + G #6 Cu THWN-2  20 m  in 2 inch EMT, lug-temp 75 degC\n",
    right='project "Annex"\n  basis us-2023\n'
    "generator GEN-1 480Y/277  100 kVA, pf 0.8, subtransient 12 %, x/r 18\n"
    "panel EP-1 480Y/277  bus 225 A, main 125 A\n"
    "feeder GEN-1 -> EP-1  125 A 3p  3#1/0 + N #1/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT, lug-temp 75 degC\n",
    mends=True,
)


@SHORT.check
def feeder_ampacity(view: View, line: Line) -> Iterator[Finding]:
    if not line.shared:
        yield from judged(view, line)


@SHORT.also("line")
def circuit_ampacity(view: View, line: Line) -> Iterator[Finding]:
    if not line.shared:
        yield from judged(view, line)


def judged(view: View, line: Line, loaded: int | None = None) -> Iterator[Finding]:
    """What is wrong with the ampacity of a line. One cause is told: the first that makes the wires too weak."""
    if line.laid is None or line.medium:
        if line.medium:
            yield _not_held(view, line, "medium-voltage cables")
        return
    current = current_of(view, line)
    laid = laid_with(line, current, loaded)
    assert laid is not None
    held = bounds(line.tables, line.wiring, laid)
    if isinstance(held, NotListed):
        yield _not_held(view, line, held.reason)
        return
    purpose = purpose_of(view, line, current)
    low, high = held
    if line.source.kind == "generator" and line.us:
        need = of_generator_a(view, line)
        if need is not None and min(high.plain_a, high.lugs_a) < need * 0.9995:
            yield _too_small(view, GENERATOR, line, high, need, "115 % of the generator's rated current")
            return
    if purpose in ONE_LOAD:
        yield from _one_load(view, line, current, purpose, high, laid)
        return
    if purpose in (Purpose.SECONDARY, Purpose.SOURCE, Purpose.TAP):
        return  # rules of their own
    if small_limit_a(line) < (line.guard.amps if line.guard is not None else 0.0) and line.us:
        return  # told by its fixed limit
    found = list(_against_device(view, line, current, purpose, low, high, laid))
    yield from found
    if not found:
        yield from _against_load(view, line, current, purpose, high)


def _not_held(view: View, line: Line, reason: str) -> Finding:
    return about(
        view, NOT_HELD, line,
        f"what {line.where} may carry is not in the tables: {reason}",
        found=line_text(line),
        needed="wires that the tables hold, or the maker's figure",
        change="Take the ampacity from the maker's data sheet, and accept this finding with that source.",
    )  # fmt: skip


def _against_device(
    view: View, line: Line, current: Current, purpose: Purpose, low: Carries, high: Carries, laid: Laid
) -> Iterator[Finding]:
    guard = line.guard
    device_a = guard.amps if guard is not None else first_device_a(line)
    if device_a is None:
        return
    kind = guard.kind if guard is not None else "breaker"
    up = not _several_receptacles(line, current)
    relief = relief_of(view, line)

    def failing(held: Carries) -> str | None:
        if relief is not None:
            return failing_stage(line.tables, held, relief.amps, kind, next_size_up=False)
        return failing_stage(line.tables, held, device_a, kind, next_size_up=up)

    stage = failing(high)
    if stage is None:
        if low is not high and failing(low) is not None:
            yield about(
                view, HOW_LAID, line,
                f"{line.where}: its insulation is not written, and {device_a:g} A may or may not suit it",
                found=line_text(line),
                needed="the insulation",
                change="Write the insulation behind the metal, as in `Cu THWN-2`.",
            )  # fmt: skip
        return
    if purpose is Purpose.GROUP and line.us:
        from wyeline_linter.protection.motor_groups import group_limit

        limit = group_limit(view, line)
        if limit is not None:
            if device_a > limit * 1.0005:
                yield _group(view, line, device_a, limit, high)
            return
    if relief is not None:
        yield _weak(view, line, stage, relief.amps, high, laid, relief.text)
        return
    found = _weak(view, line, stage, device_a, high, laid)
    less = relief_if_claimed(view, line)
    if less is not None and failing_stage(line.tables, high, less.amps, kind, next_size_up=False) is None:
        only = f"`claim {DWELLING}` asks for {amps_text(less.amps)} only."
        found = replace(found, change=f"{found.change} If it carries the whole load of one dwelling unit, {only}")
    yield found


def _several_receptacles(line: Line, current: Current) -> bool:
    return line.circuit is not None and "receptacle" in line.body.flags and current.others > 1


def _weak(view: View, line: Line, stage: str, device_a: float, found: Carries, laid: Laid, relief: str = "") -> Finding:
    """Wires too weak for ``device_a``: their device, or the part of it that ``relief`` names in words."""
    wires, fixes = line_text(line), resized(view, line, laid)
    of = f": {relief}" if relief else ""
    asked = f"{device_a:g} A" if line.us else _asked(line, device_a)
    device = device_words(line) if line.guard is not None else f"{first_device_a(line):g} A device it ends in"
    if stage == "wire":
        amps = min(found.free_a, found.best_lugs_a)
        return about(
            view, UNDERPROTECTED, line,
            f"{line.where}: {wires} carries {amps_text(amps)}, and a {device} protects it",
            found=f"{amps_text(amps)} ({found.wire_words})" if of
            else f"{device_a:g} A on wires for {amps_text(amps)} ({found.wire_words})",
            needed=f"wires for {asked}{of}, or a smaller device",
            change="Pull larger wires, or choose a smaller device.",
            fixes=fixes,
        )  # fmt: skip
    if stage == "lugs":
        ends = " and ".join(f"`{n}`" if n != "what it feeds" else n for n in line.lug_ends)
        unmarked = f"{ends} not marked: 60 degC counts" if ends else "terminals rated cooler"
        marked = _mark_lugs(line) if line.lug_ends else ()
        return about(
            view, TOO_HOT, line,
            f"{line.where}: {wires} carries {amps_text(found.lugs_a)} at its terminals, and a {device} protects it",
            found=f"{amps_text(found.lugs_a)} at {found.lug_c:g} degC ({found.looked[-1]}); {unmarked}",
            needed=f"{device_a:g} A at the terminals{of}",
            change="Pull larger wires, or write what both ends are marked for (`lug-temp 75 degC`).",
            fixes=(*marked, *fixes),
        )  # fmt: skip
    if stage == "ambient":
        buried = laid.method in ("D1", "D2") and laid.soil_km_w is not None
        around = f"at {laid.ambient_c:g} degC" + (f" in soil of {laid.soil_km_w:g} K.m/W" if buried else "")
        return about(
            view, SHORT, line,
            f"{line.where}: {around} {wires} carries {amps_text(found.warm_a)}, on a {device}",
            found=" ".join([amps_text(found.plain_a), *(f"x {row}" for row in found.looked[1 : 3 if buried else 2])]),
            needed=f"wires that carry {asked} there{of}",
            change="Pull larger wires, choose a smaller device, or take a cooler way.",
            fixes=fixes,
        )  # fmt: skip
    return _bundled(view, line, device_a, device, found, laid, fixes, f"{asked} there{of}")


def _asked(line: Line, device_a: float) -> str:
    """What wires must carry for a device, in words: more than its rating where it opens late (IEC 60364-4-43 433.1)."""
    kind = line.guard.kind if line.guard is not None else "breaker"
    ratio, most = conventional_current_ratio(line.tables, kind, device_a), line.tables.constant("overload-ratio")
    if isinstance(ratio, NotListed) or isinstance(most, NotListed) or ratio.value <= most.value:
        return f"{device_a:g} A"
    opens = (
        f"a {'fuse' if kind == 'fuse' else 'breaker'} of {device_a:g} A opens for sure at {ratio.value:g} times that"
    )
    return f"{device_a * ratio.value / most.value:.4g} A ({opens}; {most.value:g} times what they carry is the most)"


def _mark_lugs(line: Line) -> tuple[Fix, ...]:
    head = line.feeder.statement.head.line if line.feeder is not None else line.place.span.line
    edit = append_phrase(line.block, head, "lug-temp 75 degC")
    return (Fix("Say that both ends are marked for 75 degC: `lug-temp 75 degC`", (edit,)),)


def _bundled(
    view: View, line: Line, device_a: float, device: str, found: Carries, laid: Laid, fixes: tuple[Fix, ...], asked: str
) -> Finding:
    text = f"{line.where}: {line_text(line)} carries {amps_text(found.bundled_a)}"
    count = laid.current_carrying(line.wiring.sets)
    beside = f"among {count} wires" if line.us else f"among {laid.grouped(line.wiring.sets)} circuits"
    rule_found: Rule = BUNDLED
    severity = None
    if laid.third_percent:
        even = bounds(line.tables, line.wiring, laid._replace(third_percent=0.0))
        kind = line.guard.kind if line.guard is not None else "breaker"
        if not isinstance(even, NotListed) and failing_stage(line.tables, even[1], device_a, kind) is None:
            beside = f"with {share_text(laid.third_percent / 100)} of third harmonic in its neutral"
            rule_found, severity = NEUTRAL_COUNTS, Severity.ERROR
    if line.us and line.wiring.neutral is not None and line.laid is not None:
        fewer = bounds(line.tables, line.wiring, laid._replace(loaded=laid.loaded - 1))
        kind = line.guard.kind if line.guard is not None else "breaker"
        alone = count == line.wiring.legs + 1
        if alone and not isinstance(fewer, NotListed) and failing_stage(line.tables, fewer[1], device_a, kind) is None:
            rule_found, beside = NEUTRAL_COUNTS, "with the neutral counted"
    return about(
        view, rule_found, line,
        f"{text} {beside}, and a {device} protects it",
        found=f"{amps_text(found.bundled_a)} ({' x '.join(map(str, found.beside))})",
        needed=f"wires that carry {asked}",
        change="Pull larger wires, or spread them over more raceways." if rule_found is BUNDLED
        else "Pull larger wires: this neutral heats the others like a leg.",
        severity=severity,
        fixes=fixes,
    )  # fmt: skip


def _group(view: View, line: Line, device_a: float, limit: float, found: Carries) -> Finding:
    return about(
        view, FEEDER_DEVICE, line,
        f"{line.where} feeds motors, and its device of {device_a:g} A is above {limit:g} A",
        found=f"{device_a:g} A; the wires alone carry {amps_text(found.amps)}",
        needed=f"{limit:g} A: the largest branch device and the currents of the others",
        change=f"Make the device {limit:g} A, or pull wires that it protects.",
        place=line.place_of("rating"),
        fixes=(*rating_fix(line, limit), *resized(view, line)),
    )  # fmt: skip


def _against_load(view: View, line: Line, current: Current, purpose: Purpose, found: Carries) -> Iterator[Finding]:
    if relief_of(view, line) is not None:
        return  # no more is asked of them than that share of the rating, whatever the load (NEC 310.12(C))
    device_a = line.guard.amps if line.guard is not None else first_device_a(line)
    need = required_a(view, line, current, purpose)
    before = min(found.plain_a, found.lugs_a)
    # A load below counts without a small fraction of an ampere; the 125 % of motors do not.
    counts = fraction_dropped(need) if line.us and need is not None and purpose is not Purpose.GROUP else need
    if device_a is None or (counts is not None and counts > device_a * 1.0005 and purpose is not Purpose.GROUP):
        return
    if line.us and need is not None and counts is not None and counts > before * 1.0005:
        rule_found = MOTOR_WIRE if purpose is Purpose.GROUP else WIRE_MARGIN
        yield _too_small(view, rule_found, line, found, need, "the load to size by")
    elif current.design_a is not None and current.design_a > found.amps * 1.0005:
        yield _too_small(view, SHORT, line, found, current.design_a, "its load", after=True)


def _too_small(
    view: View, rule_found: Rule, line: Line, found: Carries, need: float, of: str, *, after: bool = False
) -> Finding:
    have = found.amps if after else min(found.plain_a, found.lugs_a)
    return about(
        view, rule_found, line,
        f"{line.where}: {line_text(line)} carries {amps_text(have)}, needed {amps_text(need)} for {of}",
        found=f"{amps_text(have)} ({found.looked[-1] if found.lugs_a < found.plain_a else found.looked[0]})",
        needed=f"{amps_text(need)}: {of}",
        change="Pull larger wires.",
        fixes=resized(view, line),
    )  # fmt: skip


def _one_load(
    view: View, line: Line, current: Current, purpose: Purpose, found: Carries, laid: Laid
) -> Iterator[Finding]:
    """A motor, drive, unit or capacitor: its device may exceed the wires, its current may not."""
    need = required_a(view, line, current, purpose)
    if need is None or laid is None:
        return
    rule_found = _OF_ONE_LOAD.get(purpose, SHORT) if line.us else SHORT
    words = _SIZED_BY[purpose] if line.us else "its load"
    if min(found.plain_a, found.lugs_a) < need * 0.9995:
        small = _too_small(view, rule_found, line, found, need, words)
        if purpose is Purpose.CAPACITOR and line.us:
            small = replace(small, why=_OF_A_CAPACITOR, clause="NEC 460.8(A)")
        yield small
    elif found.bundled_a < (need if purpose is Purpose.UNIT else current.design_a or 0.0) * 0.9995:
        yield _too_small(view, rule_found, line, found, need, words, after=True)


_OF_ONE_LOAD = {
    Purpose.MOTOR: MOTOR_WIRE, Purpose.DRIVE: DRIVE_WIRE, Purpose.UNIT: UNIT, Purpose.CAPACITOR: WIRE_MARGIN
}  # fmt: skip
_OF_A_CAPACITOR = "Its tolerance, a high voltage and harmonics let a capacitor draw more than its rated current."
_SIZED_BY = {
    Purpose.MOTOR: "125 % of the motor's full-load current",
    Purpose.DRIVE: "125 % of the drive's input current",
    Purpose.UNIT: "the minimum circuit ampacity of its nameplate",
    Purpose.CAPACITOR: "135 % of the rated current",
}
