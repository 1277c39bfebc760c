"""Fault currents against what equipment is rated for, and the facts without which they cannot be told."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from functools import partial
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity, append_phrase, replace
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.circuit import Bus
    from wyeline_linter.circuit.ansi import Device
    from wyeline_linter.studies.fault import FaultCurrent, FaultView
    from wyeline_linter.studies.scenarios import WorstFault
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View

_PROJECT = 'project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
_SUPPLY = (
    "utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40\n"
)
_LOAD = '  1,3,5  60 A 3p  30 kW heating  "Kiln"\n'
STANDARD_KA = (5, 6, 10, 14, 15, 18, 20, 22, 25, 30, 35, 36, 42, 50, 65, 70, 85, 100, 125, 150, 200)
"""Fault ratings that are built (common practice, no source)."""
_CARRIERS = frozenset({"transfer", "busway", "meter"})
_KINDS = {"three-phase": "three legs together", "line-line": "two legs together", "line-ground": "a leg to earth"}
_KINDS["line-neutral"] = "a leg to neutral"

INTERRUPTING = rule(
    name="interrupting-too-low",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="A fault current is larger than what the devices at its place are made to interrupt.",
    why="A device that opens more current than it is made for may burst instead of clearing the fault.",
    clause={"us": "110.9", "iec": "60364-4-43 434.5.1, 60947-2"},
    wrong=_PROJECT + _SUPPLY + "panel DP 480Y/277  bus 400 A, rated 14 kA\n" + _LOAD,
    right=_PROJECT + _SUPPLY + "panel DP 480Y/277  bus 400 A, rated 25 kA\n" + _LOAD,
    mends=True,
)

EARTH = rule(
    name="earth-fault-exceeds-three-phase",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="The rating covers a fault of three legs, and a fault from a leg to earth or neutral is larger still.",
    why="Near a transformer with a grounded wye an earth fault may be the largest of all; a rating chosen by the "
    "three-phase figure then falls short.",
    clause={"us": "110.9", "iec": "60364-4-43 434.5.1"},
    wrong=_PROJECT + "utility UTIL 480 3ph  fault 30 kA, fault-min 25 kA, x/r 6\n"
    "transformer TX-1 480 3ph -> 208Y/120  150 kVA, z 2.45 %, x/r 2.5\n"
    "feeder UTIL -> TX-1  225 A 3p  3#4/0 + G #4 Cu THWN-2  5 m  in 2 inch EMT\n"
    "panel LP-1 208Y/120  bus 600 A, main 500 A, rated 14 kA\n"
    "feeder TX-1 -> LP-1  2 sets 3x250kcmil + N 250kcmil + G #2 Cu THWN-2  0.6 m  in 3 inch EMT\n  claim tap-10ft\n",
    right=_PROJECT + "utility UTIL 480 3ph  fault 30 kA, fault-min 25 kA, x/r 6\n"
    "transformer TX-1 480 3ph -> 208Y/120  150 kVA, z 2.45 %, x/r 2.5\n"
    "feeder UTIL -> TX-1  225 A 3p  3#4/0 + G #4 Cu THWN-2  5 m  in 2 inch EMT\n"
    "panel LP-1 208Y/120  bus 600 A, main 500 A, rated 22 kA\n"
    "feeder TX-1 -> LP-1  2 sets 3x250kcmil + N 250kcmil + G #2 Cu THWN-2  0.6 m  in 3 inch EMT\n  claim tap-10ft\n",
)


@INTERRUPTING.check
def interrupting_too_low(view: View) -> Iterator[Finding]:
    yield from (f for f in _overloaded(view) if f.rule == INTERRUPTING.name)


@EARTH.check
def earth_fault_exceeds_three_phase(view: View) -> Iterator[Finding]:
    yield from (f for f in _overloaded(view) if f.rule == EARTH.name)


def _overloaded(view: View) -> list[Finding]:
    """What both rules about interrupting ratings find, looked for once for each version of the model."""
    return view.studies.once("interrupting", lambda: list(_look_at_ratings(view)))


def _look_at_ratings(view: View) -> Iterator[Finding]:
    from wyeline_linter.studies.scenarios import largest_faults

    studies, largest = view.studies.for_faults(), largest_faults(view)
    amperes, row = largest.amperes.tolist(), largest.row
    us = any(study.practice == "us" for study in studies)
    rated = view.studies.of_each("rated boards", view.model.equipment, partial(_borne_a, us=us))
    # The least that a rating surely bears: what stays below it needs no closer look.
    suspects = [e for e, borne in rated if borne is not None and not amperes[row[e.name]] <= borne]
    for equipment in _in_order(suspects):
        yield from _board(equipment, studies)
    devices = view.studies.of_each("rated devices", view.model.feeders, lambda f: f.body.number("rated") is not None)
    for feeder, has_rating in devices:
        if has_rating:
            yield from _device(feeder, studies)


def _borne_a(equipment: Equipment, *, us: bool) -> float | None:
    """The fault in A that a rated board surely interrupts, whatever its X/R; 0 where no rating is written, None where
    there is nothing to rate."""
    from wyeline_linter.circuit import ansi, iec60947

    if equipment.kind not in BOARDS and not _is_fused(equipment):
        return None
    rated = _rating(equipment.body)
    if rated is None:
        return 0.0
    device = _device_kind(equipment.kind, equipment.body)
    return rated / (ansi.duty(1.0, math.inf, device, rated) if us else iec60947.duty(1.0, iec60947.LARGEST_PEAK, rated))


def _rating(body: Body) -> float | None:
    return body.number("series") or body.number("rated")


def _in_order(equipment: Iterable[Equipment]) -> list[Equipment]:
    return sorted(equipment, key=lambda e: (e.block.file, e.block.first_line, e.name))


def _is_fused(equipment: Equipment) -> bool:
    return equipment.kind == "disconnect" and ("fused" in equipment.body.flags or "fuse" in equipment.body.facts)


def _board(equipment: Equipment, studies: list[StateStudy]) -> Iterator[Finding]:
    body, name = equipment.body, equipment.name
    rated = _rating(body)
    key = "series" if body.number("series") is not None else "rated"
    device = _device_kind(equipment.kind, body)
    worst = _worst(studies, lambda f: f.bus(name), name, rated, device)
    if worst is None:
        return
    if rated is None:
        if equipment.kind in BOARDS and body.number("withstand") is None:
            yield INTERRUPTING.finding(
                equipment.place,
                f"{_ka(worst[1])} may flow in a fault at `{name}`{worst[0].when}, and it states no `rated`",
                severity=Severity.GAP,
                found=f"{_ka(worst[1])} ({_KINDS[worst[0].fault.kind]}), no rating written",
                needed="`rated`, from the nameplate or the order",
                change=f"Write what `{name}` is rated for, such as `rated {_standard_ka(worst[1])} kA`.",
                subject=name,
            )
        return
    place = equipment.place_of(key)
    fixes = _higher(equipment, key, worst[1])
    yield from _judge(name, place, rated, worst, fixes, studies, lambda f: f.bus(name), name, device)


def _device(feeder: Feeder, studies: list[StateStudy]) -> Iterator[Finding]:
    body = feeder.body
    rated = body.number("rated")
    assert rated is not None
    device = "fuse" if "fuse" in body.facts else "molded-case breaker"

    def at(faults: FaultView) -> Bus | None:
        ends = faults.built.ends.get(feeder.key)
        return ends[0] if ends is not None else None

    worst = _worst(studies, at, feeder.source.name, rated, device)
    if worst is None:
        return
    fact = body.facts["rated"]
    place = Place(feeder.block, fact.span)
    text = f"rated {_standard_ka(worst[1])} kA"
    fixes = (Fix(f"Choose a device that interrupts {_standard_ka(worst[1])} kA", (replace(place, text),), Safety.LOOK),)
    yield from _judge(feeder.key, place, rated, worst, fixes, studies, at, feeder.source.name, device)


def _worst(
    studies: list[StateStudy],
    at: object,
    board: str,
    rated: float | None,
    device: str,
    kinds: tuple[str, ...] | None = None,
) -> tuple[WorstFault, float] | None:
    """The fault with the hardest duty at a place on a board in any state, and that duty in A."""
    from wyeline_linter.studies.scenarios import WorstFault

    best: tuple[WorstFault, float] | None = None
    for study in studies:
        faults = study.largest
        bus = at(faults)  # type: ignore[operator]
        if bus is None:
            continue
        supply = study.connectivity.supply.get(board)
        cut = supply is not None and ("fuse" in supply.body.facts or "current-limiting" in supply.body.flags)
        for fault in faults.at_bus(bus).values():
            if fault.amperes is None or (kinds is not None and fault.kind not in kinds):
                continue
            duty = _duty(faults, fault, rated, device, cut=cut)
            if best is None or duty > best[1] * (1 + 1e-9):
                best = WorstFault(fault, faults, study.state), duty
    return best


def _duty(faults: FaultView, fault: FaultCurrent, rated: float | None, device: str, *, cut: bool) -> float:
    """The current to compare with a rating: times the multiplying factor of the device's test under US practice; under
    IEC practice by the first peak that goes with the rating, where no fuse ``cut`` that off ahead (fuses themselves are
    tested at a lower power factor than any)."""
    from wyeline_linter.circuit import ansi, iec60947

    amperes = fault.amperes or 0.0
    if fault.x_over_r is None or rated is None:
        return amperes
    if faults.practice == "us":
        return ansi.duty(amperes, fault.x_over_r, device, rated)  # type: ignore[arg-type]
    peak = faults.peak_a(fault) if faults.practice == "iec" and device != "fuse" and not cut else None
    return amperes if peak is None else iec60947.duty(amperes, peak, rated)


def _judge(
    name: str,
    place: Place,
    rated: float,
    worst: tuple[WorstFault, float],
    fixes: tuple[Fix, ...],
    studies: list[StateStudy],
    at: object,
    board: str,
    device: str,
) -> Iterator[Finding]:
    found, duty = worst
    if duty <= rated * (1 + 1e-6):
        return
    legs = _worst(studies, at, board, rated, device, ("three-phase", "line-line"))
    only_earth = legs is not None and legs[0].fault.kind == "three-phase" and legs[1] <= rated * (1 + 1e-6)
    chosen = EARTH if only_earth else INTERRUPTING
    amperes = found.fault.amperes or 0.0
    kind = _KINDS[found.fault.kind]
    factor = f", which counts as {_ka(duty)} at X/R {found.fault.x_over_r:.1f}" if duty > amperes * 1.005 else ""
    beside = f"; three legs together give {_ka(legs[1])}" if only_earth and legs is not None else ""
    yield chosen.finding(
        place,
        f"{_ka(amperes)} may flow in a fault at `{name}`{found.when}, and it is rated {_ka(rated)}",
        found=f"{_ka(amperes)} ({kind}){factor}{beside}",
        needed=f"{_ka(duty)} or more",
        change=f"Choose equipment rated {_standard_ka(duty)} kA, or limit the fault ahead of it "
        "(longer wires, more impedance, a current-limiting device as tested).",
        subject=name,
        fixes=fixes,
    )


def _device_kind(kind: str, body: Body) -> Device:
    if "fuse" in body.facts or "fused" in body.flags:
        return "fuse"
    return "power breaker" if kind == "switchgear" else "molded-case breaker"


def _ka(amperes: float) -> str:
    return f"{amperes / 1000:.3g} kA"


def _standard_ka(amperes: float) -> str:
    above = [k for k in STANDARD_KA if 1000 * k >= amperes]
    return f"{above[0] if above else amperes / 1000:g}"


def _higher(equipment: Equipment, key: str, amperes: float) -> tuple[Fix, ...]:
    text = f"{key} {_standard_ka(amperes)} kA"
    place = equipment.place_of(key)
    edit: Edit = (
        replace(place, text)
        if place.block is equipment.block
        else append_phrase(equipment.block, equipment.statement.head.line, text)
    )
    return (Fix(f"Choose `{equipment.name}` rated {_standard_ka(amperes)} kA", (edit,), Safety.LOOK),)


WITHSTAND = rule(
    name="withstand-too-low",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="A fault current is larger than what busbars, a busway or a transfer switch bear until it is cleared.",
    why="The forces of a fault grow with the square of its current; beyond it, bars bend and contacts weld.",
    clause={"us": "110.10, 408.6", "iec": "61439-1"},
    wrong=_PROJECT + _SUPPLY + "switchboard DP 480Y/277  bus 400 A, rated 25 kA\ntransfer ATS-1 260 A 3p, rated 10 kA\n"
    "feeder DP -> ATS-1.normal  250 A 3p  3x250kcmil + N 250kcmil + G #4 Cu THWN-2  5 m  in 2-1/2 inch EMT\n",
    right=_PROJECT + _SUPPLY + "switchboard DP 480Y/277  bus 400 A, rated 25 kA\ntransfer ATS-1 260 A 3p, rated 30 kA\n"
    "feeder DP -> ATS-1.normal  250 A 3p  3x250kcmil + N 250kcmil + G #4 Cu THWN-2  5 m  in 2-1/2 inch EMT\n",
    mends=True,
)


@WITHSTAND.check
def withstand_too_low(view: View) -> Iterator[Finding]:
    from wyeline_linter.studies.scenarios import worst_fault

    studies = view.studies.for_faults()
    keys_of = {
        e.name: keys for e, keys in view.studies.of_each("withstands", view.model.equipment, _keys_borne) if keys
    }
    for equipment in _in_order(view.model.equipment[name] for name in keys_of):
        name, body, keys = equipment.name, equipment.body, keys_of[equipment.name]
        worst = worst_fault(studies, lambda f, name=name: f.worst(name))  # type: ignore[misc]
        if worst is None or worst.fault.amperes is None:
            continue
        for key in keys:
            rated = body.number(key)
            assert rated is not None
            amperes: float | None = worst.fault.amperes
            if key == "peak":
                worst, amperes = _worst_peak(studies, name) or (worst, None)
            if amperes is None:
                continue
            if amperes > rated * (1 + 1e-6):
                yield _too_weak(equipment, key, rated, amperes, worst)


def _worst_peak(studies: list[StateStudy], name: str) -> tuple[WorstFault, float] | None:
    """The largest first peak in any switch state, in A: a smaller current of a higher X/R may have it."""
    from wyeline_linter.studies.scenarios import WorstFault

    best: tuple[WorstFault, float] | None = None
    for study in studies:
        for fault in study.largest.at(name).values():
            peak = study.largest.peak_a(fault)
            if peak is not None and (best is None or peak > best[1] * (1 + 1e-9)):
                best = WorstFault(fault, study.largest, study.state), peak
    return best


def _keys_borne(equipment: Equipment) -> list[str]:
    """What a piece of equipment states of the faults that it bears until they are cleared."""
    keys = ["withstand", "peak"] if equipment.kind in BOARDS or equipment.kind in _CARRIERS else []
    if equipment.kind in _CARRIERS or (equipment.kind == "disconnect" and not _is_fused(equipment)):
        keys.append("rated")
    return [key for key in keys if equipment.body.number(key) is not None]


def _too_weak(equipment: Equipment, key: str, rated: float, amperes: float, worst: WorstFault) -> Finding:
    name = equipment.name
    word = "a first peak of " if key == "peak" else ""
    return WITHSTAND.finding(
        equipment.place_of(key),
        f"{word}{_ka(amperes)} may flow in a fault at `{name}`{worst.when}, and it bears {_ka(rated)}",
        found=f"{word}{_ka(amperes)} ({_KINDS[worst.fault.kind]})",
        needed=f"`{key}` of {_ka(amperes)} or more",
        change=f"Choose `{name}` for {_standard_ka(amperes)} kA, or have it protected by a device with which it was "
        "tested for more.",
        subject=name,
        fixes=_higher(equipment, key, amperes),
    )


SERIES = rule(
    name="series-rating-unproven",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="A series rating is used where it was not tested to hold: too many motors feed the fault behind it.",
    why="Motors between the two devices add current that only the weaker one sees, which the test did not include.",
    basis="us",
    clause={"us": "240.86(C)"},
    wrong=_PROJECT + _SUPPLY + "panel DP 480Y/277  bus 400 A, main 400 A, rated 14 kA, series 35 kA\n"
    "motor P-1 460 3ph  150 hp, pf 0.88, eff 95 %, lra 1085 A\n"
    "feeder DP -> P-1  400 A 3p  3#4/0 + G #3 Cu THWN-2  12 m  in 2-1/2 inch EMT\n",
    right=_PROJECT + _SUPPLY + "panel DP 480Y/277  bus 400 A, main 400 A, rated 35 kA\n"
    "motor P-1 460 3ph  150 hp, pf 0.88, eff 95 %, lra 1085 A\n"
    "feeder DP -> P-1  400 A 3p  3#4/0 + G #3 Cu THWN-2  12 m  in 2-1/2 inch EMT\n",
)
SERIES_MOTOR_SHARE = 0.01
"""Motor full-load current that a series rating allows, as a share of the lower rating (NEC 240.86(C))."""


@SERIES.check
def series_rating_unproven(view: View) -> Iterator[Finding]:
    from wyeline_linter.studies.scenarios import worst_fault

    studies = view.studies.for_faults()
    tested = view.studies.of_each("series ratings", view.model.equipment, lambda e: e.body.number("series") is not None)
    for equipment in _in_order(e for e, has_series in tested if has_series):
        rated, name = equipment.body.number("rated"), equipment.name
        if rated is None or equipment.kind not in BOARDS:
            continue
        worst = worst_fault(studies, lambda f, name=name: f.worst(name))  # type: ignore[misc]
        if worst is None or (worst.fault.amperes or 0.0) <= rated:
            continue
        amperes = _motor_amperes(view, name)
        if amperes > SERIES_MOTOR_SHARE * rated:
            yield SERIES.finding(
                equipment.place_of("series"),
                f"motors of {amperes:.0f} A feed the fault behind `{name}`, whose series rating bears "
                f"{SERIES_MOTOR_SHARE * rated:.0f} A of them",
                found=f"{amperes:.0f} A of motors, {_ka(worst.fault.amperes or 0.0)} of fault current",
                needed=f"motors of {100 * SERIES_MOTOR_SHARE:g} % of {_ka(rated)} at the most",
                change="Choose devices that interrupt the whole fault current by themselves.",
                subject=name,
            )


def _motor_amperes(view: View, board: str) -> float:
    """Full-load amperes of the motors on a board and one feeder away."""
    study = view.studies.normal
    total = 0.0
    for name in (board, *(f.target.name for f in view.feeders_out_of(board))):
        system = study.book.system(name)
        for parts in study.loads_at.get(name, {}).values():
            if system is None or parts[0].category != "motor":
                continue
            wires = {c for load in parts for c in load.pair}
            volts = system.distance(*parts[0].pair)
            total += sum(abs(load.va) for load in parts) / volts / (3**0.5 if len(wires) == 3 else 1.0)
    return total
