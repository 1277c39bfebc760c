"""Faults that devices must see in time, and wires must bear until then: they need the fault study."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.model import Body
from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.protection.circuits import circuit_lines
from wyeline_linter.protection.disconnection import in_tt, longest_fault_s
from wyeline_linter.protection.fault_loop import has_rcd, least_earth_a, second_fault_a
from wyeline_linter.protection.lines import Line, feeder_line
from wyeline_linter.protection.trip import Trip, curve_times, trip_of
from wyeline_linter.protection.withstand import withstand_of
from wyeline_linter.rules.line_findings import about, amps_text, line_text
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Arrangement
from wyeline_linter.tables import Looked

if TYPE_CHECKING:
    from wyeline_linter.view import View

_IEC = (
    'project "Annex"\n  basis iec\n  revision "A"\n'
    "utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing EARTH\n"
    "feeder NETT -> HV  4x70mm2 + PE 35mm2 Cu XLPE  6 m method C\n"
    "panel HV 400Y/230  bus 160 A, main 160 A, rated 15 kA\n"
)
_TN = _IEC.replace("EARTH", "TN-S")
_FROST = 'kW heating  "Frost heater"  3G1.5mm2 Cu PVC  50 m method C\n'
_IT = (
    'project "Annex"\n  basis iec\n  revision "A"\n'
    "utility NETT 400 3ph  fault 10 kA, fault-min 6 kA, x/r 4, earthing IT\n"
    "load FROST 400 3ph  1 kW, heating\n"
)

_TRIP_SOONER = "Choose a lower curve or setting, a residual current device, or larger wires."

SLOW = rule(
    name="disconnection-too-slow",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    basis="iec",
    summary="An earth fault at the far end does not reach the current that trips the device ahead at once, or melts "
    "its fuse in time.",
    why="An earth fault here would leave metal parts live longer than a person may touch them.",
    clause={"iec": "60364-4-41 411.3.2, 411.4.4"},
    wrong=_TN + "  F1[L1]  16 A 1p+N curve C  1 " + _FROST,
    right=_TN + "  F1[L1]  16 A 1p+N curve B  1 " + _FROST,
    mends=True,
)
SECOND = rule(
    name="it-second-fault-too-weak",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    basis="iec",
    summary="In an IT system, two earth faults at once would not reach the current that trips the device.",
    why="The first fault trips nothing; when a second one comes, devices must open as they would on a short circuit.",
    clause={"iec": "60364-4-41 411.6.4"},
    wrong=_IT + "feeder NETT -> FROST  10 A 3p curve D  4G1.5mm2 Cu PVC  40 m method C\n",
    right=_IT + "feeder NETT -> FROST  10 A 3p curve B  4G1.5mm2 Cu PVC  40 m method C\n",
    mends=True,
)
UNSEEN = rule(
    name="minimum-fault-not-seen",
    since="0.1",
    severity=Severity.WARNING,
    scope="study",
    basis="both",
    summary="The smallest fault at the far end of a feeder stays below the trip that is set on its device.",
    why="Too little fault current arrives for the device to act quickly: typical of a generator, or of a long run.",
    clause={"us": "110.10", "iec": "60364-4-43 434.5"},
    wrong='project "Annex"\n  basis us-2023\n  revision "A"\n'
    "utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, fault-lg 9 kA, x/r 4\n"
    "switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
    "feeder UTIL -> MSB  3x500kcmil + N 500kcmil Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "panel LP-1 480Y/277  bus 125 A, main lugs, rated 18 kA, lug-temp 75 degC\n"
    "feeder MSB -> LP-1  100 A 3p instantaneous 2000 A  3#3 + N #3 + G #8 Cu THWN-2  150 m  in 1-1/4 inch EMT\n",
    right='project "Annex"\n  basis us-2023\n  revision "A"\n'
    "utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, fault-lg 9 kA, x/r 4\n"
    "switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
    "feeder UTIL -> MSB  3x500kcmil + N 500kcmil Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "panel LP-1 480Y/277  bus 125 A, main lugs, rated 18 kA, lug-temp 75 degC\n"
    "feeder MSB -> LP-1  100 A 3p instantaneous 500 A  3#3 + N #3 + G #8 Cu THWN-2  150 m  in 1-1/4 inch EMT\n",
)
THERMAL = rule(
    name="fault-thermal-limit",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    basis="both",
    summary="Wires overheat in a fault before their device, with a set delay or a gG fuse, has opened.",
    why="Until it has opened the whole fault current heats the wire, and nothing carries the heat away.",
    clause={"us": "110.10 (ICEA P-32-382)", "iec": "60364-4-43 434.5.2"},
    wrong=_TN + "panel UV-1 400Y/230  bus 63 A, incomer switch, rated 15 kA\n"
    "feeder HV -> UV-1  63 A 3p pickup 500 A, delay 0.4 s  4x16mm2 + PE 16mm2 Cu XLPE  8 m method C\n",
    right=_TN + "panel UV-1 400Y/230  bus 63 A, incomer switch, rated 15 kA\n"
    "feeder HV -> UV-1  63 A 3p pickup 500 A, delay 0.02 s  4x16mm2 + PE 16mm2 Cu XLPE  8 m method C\n",
    mends=True,
)


def feeders_with_device(view: View, of: Callable[[Body], bool]) -> Iterator[Line]:
    """The feeders with a device of their own and low voltage whose statement says something, in the order of files."""
    asked = view.studies.of_each(f"feeders {of.__name__}", view.model.feeders, lambda feeder: of(feeder.body))
    feeders = sorted((f for f, says in asked if says), key=lambda f: (f.block.file, f.block.first_line))
    for feeder in feeders:
        line = feeder_line(view, feeder)
        if line is not None and line.guard is not None and line.guard.own and not line.medium:
            yield line


def trips_at_once(body: Body) -> bool:
    """Whether it is written from where a device trips at once."""
    return trip_of(body) is not None


def fused(body: Body) -> bool:
    """Whether its device is a gG fuse."""
    return body.text("fuse") == "gG"


def _waits(body: Body) -> bool:
    """Whether it is written how long a device waits."""
    return body.number("delay") is not None


def lines_with_device(view: View, of: Callable[[Body], bool]) -> Iterator[Line]:
    """Feeders, and circuits of boards, with a device of their own whose statement says something."""
    yield from feeders_with_device(view, of)

    def some_circuit(board: Equipment) -> bool:
        return any(of(placed.circuit.body) for placed in board.circuits)

    asked = view.studies.of_each(f"circuits {of.__name__}", view.model.equipment, some_circuit)
    for board in sorted((e for e, says in asked if says), key=lambda e: (e.block.file, e.block.first_line)):
        for line in circuit_lines(view, board):
            if line.guard is not None and line.guard.own and of(line.body):
                yield line


@SLOW.check
def disconnection(view: View) -> Iterator[Finding]:
    """Lines of TN systems whose device says from where it trips in time; the worst switch state is told."""
    for line in lines_with_device(view, trips_at_once):
        allowed = None if in_tt(line) or has_rcd(view, line) else longest_fault_s(line)
        if allowed is None:
            continue
        trip = trip_of(line.body, within_s=allowed.value)
        if trip is None:
            yield _waits_too_long(view, line, allowed)
            continue
        worst = least_earth_a(view, line)
        if worst is None or worst[0] >= trip.amps * 0.9995:
            continue
        yield about(
            view, SLOW, line,
            f"an earth fault at the end of {line.where} draws {amps_text(worst[0])}{worst[1]}; its device trips from "
            f"{amps_text(trip.amps)} ({trip.text})",
            found=f"{amps_text(worst[0])} at the far end",
            needed=f"{amps_text(trip.amps)} or more, or a residual current device",
            change=_TRIP_SOONER,
            place=line.place_of(trip.key),
            fixes=(*_lower(line, trip, worst[0]), *larger_to_trip(view, line)),
        )  # fmt: skip


def _waits_too_long(view: View, line: Line, allowed: Looked[float]) -> Finding:
    fact = line.body.facts["delay"]
    return about(
        view, SLOW, line,
        f"the device of {line.where} waits {fact.value.text} in an earth fault; {allowed.value:g} s is the most",
        found=f"delay {fact.value.text}, and no trip without it",
        needed=f"{allowed.value:g} s at the most ({allowed}), or a residual current device",
        change="Shorten the delay, or write from where it trips without one (`instantaneous`).",
        place=line.place_of("delay"),
    )  # fmt: skip


def _lower(line: Line, trip: Trip, amps: float) -> tuple[Fix, ...]:
    """A curve that trips on what flows, else a residual current device."""
    fixes = []
    rating = line.body.number("rating")
    if trip.key == "curve" and rating is not None:
        times = curve_times("B")
        if times is not None and times * rating <= amps:
            fixes.append(Fix("Write `curve B`", (replace(line.place_of("curve"), "curve B"),), Safety.LOOK))
    fact = line.body.facts.get("rating")
    if fact is not None:
        written = line.block.lines[fact.span.line][fact.span.start : fact.span.end]
        place = Place(line.block, fact.span)
        fixes.append(Fix("Give it an RCD of 300 mA", (replace(place, f"{written} rcd 300 mA"),), Safety.LOOK))
    return tuple(fixes)


@SECOND.check
def second_fault(view: View) -> Iterator[Finding]:
    for line in lines_with_device(view, trips_at_once):
        if line.system.earthing.arrangement is not Arrangement.IT or has_rcd(view, line):
            continue
        allowed = longest_fault_s(line)
        trip = trip_of(line.body, within_s=allowed.value) if allowed is not None else None
        amps = second_fault_a(view, line) if trip is not None and line.wiring.ground is not None else None
        if trip is None or amps is None or amps >= trip.amps * 0.9995:
            continue
        yield about(
            view, SECOND, line,
            f"two earth faults at the end of {line.where} draw {amps_text(amps)}; its device trips from "
            f"{amps_text(trip.amps)} ({trip.text})",
            found=f"{amps_text(amps)} (half the voltage over the loop of one)",
            needed=f"{amps_text(trip.amps)} or more, or a residual current device on every circuit",
            change=_TRIP_SOONER,
            place=line.place_of(trip.key),
            fixes=(*_lower(line, trip, amps), *larger_to_trip(view, line)),
        )  # fmt: skip


@UNSEEN.check
def smallest_fault(view: View) -> Iterator[Finding]:
    """Feeders whose device has a setting; earth faults of IEC practice have a rule of their own."""
    from wyeline_linter.studies.scenarios import when

    studies = view.studies.for_faults()
    for line in feeders_with_device(view, trips_at_once):
        if line.feeder is None or line.target is None:
            continue
        trip = trip_of(line.body)
        if trip is None:
            continue
        earth = line.us and not (has_rcd(view, line) or "gfpe" in line.body.flags or "gfpe-pickup" in line.body.facts)
        worst: tuple[float, str, str] | None = None
        for study in studies:
            if study.connectivity.supply.get(line.target.name) is not line.feeder:
                continue
            for kind, fault in study.smallest.at(line.target.name, entering=True).items():
                if fault.amperes is None or fault.amperes <= 0 or (kind == "line-ground" and not earth):
                    continue
                if worst is None or fault.amperes < worst[0]:
                    worst = fault.amperes, _KINDS[kind], when(study.state)
        if worst is None or worst[0] >= trip.amps * 0.9995:
            continue
        amps, kind_words, state = worst
        yield about(
            view, UNSEEN, line,
            f"a fault of {kind_words} at `{line.target.name}` draws {amps_text(amps)}{state}; the device of "
            f"{line.where} trips from {amps_text(trip.amps)}",
            found=f"{amps_text(amps)} at the least",
            needed=f"{amps_text(trip.amps)} or more ({trip.text})",
            change="Set the trip lower, or take larger wires; below it only the slow overload trip acts.",
            place=line.place_of(trip.key),
        )  # fmt: skip


_KINDS = {
    "three-phase": "three legs",
    "line-line": "two legs",
    "line-ground": "a leg to earth",
    "line-neutral": "a leg to neutral",
}


@THERMAL.check
def thermal_limit(view: View) -> Iterator[Finding]:
    """Feeders whose device has a delay written, and lines behind gG fuses: else only the maker's curve tells how long a
    fault lasts."""
    for line in (*feeders_with_device(view, _waits), *lines_with_device(view, fused)):
        asked = withstand_of(view, line)
        if asked is None:
            continue
        have_mm2, least_mm2 = area_mm2(line.wiring.size), asked.least_mm2 / line.wiring.sets
        if have_mm2 >= least_mm2 * 0.999:
            continue
        heat = f"{asked.amps / 1e3:.3g} kA for {asked.seconds:g} s"
        if fused(line.body) and line.body.number("delay") is None:
            heat = f"{heat} (what its fuse may let through)"
        yield about(
            view, THERMAL, line,
            f"{line.where}: {heat} asks for {least_mm2:.3g} mm2 in each wire, and it has {have_mm2:.3g} mm2",
            found=f"{line_text(line)}, {heat}",
            needed=f"{least_mm2:.3g} mm2 (S = I sqrt(t) / k, k = {asked.k:.0f})",
            change="Choose a smaller fuse, or pull larger wires." if fused(line.body)
            else "Shorten the delay, or pull larger wires.",
            fixes=_larger(view, line) if line.feeder is not None else (),
        )  # fmt: skip


def larger_to_trip(view: View, line: Line) -> tuple[Fix, ...]:
    """Wires of a feeder that let its device trip on an earth fault; none where no wires do."""
    from wyeline_linter.sizing.tripping import wires_let_it_trip

    return _larger(view, line) if line.feeder is not None and wires_let_it_trip(view, line) else ()


def _larger(view: View, line: Line) -> tuple[Fix, ...]:
    """Wires of a feeder that its faults allow."""
    from wyeline_linter.sizing.lines import Proposal, size_feeder

    assert line.feeder is not None
    made = size_feeder(view, line.feeder, faults=True)
    return (made.fix(),) if isinstance(made, Proposal) and made.changes else ()
