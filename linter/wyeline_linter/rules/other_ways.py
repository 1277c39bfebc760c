"""Devices that stand ahead in other switch states: every way into a transfer switch, a tie or a bypass has its own."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.ahead import Ahead, own_device_a
from wyeline_linter.claims import DWELLING
from wyeline_linter.findings import Finding, Related, Severity
from wyeline_linter.network import SwitchState
from wyeline_linter.protection.ampacities import bounds, failing_stage, largest_device_a
from wyeline_linter.protection.currents import current_of, laid_with
from wyeline_linter.protection.lines import Line, feeder_line, guard_ahead
from wyeline_linter.protection.purposes import Purpose, purpose_of
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.line_findings import about, amps_text, device_words, line_text
from wyeline_linter.rules.registry import rule
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_STANDBY = (
    'project "Annex"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
    "utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\n"
    "feeder UTIL -> MSB  3x500kcmil + N 500kcmil Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 22 kA, lug-temp 75 degC, service-equipment\n"
    "generator GEN 480Y/277  200 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 5 %, x/r 18\n"
    "  sustained 3 pu, neutral floating\n"
    "transfer ATS-1 {ats} A 3p, rated 22 kA, transition open, optional, lug-temp 75 degC\n"
    "panel LP-1 480Y/277  bus 225 A, main {main}, rated 22 kA, spaces 42, lug-temp 75 degC\n"
    '  1,3,5  30 A 3p  15 kW heating  "Kiln"  3#10 + G #10 Cu THWN-2  10 m  in 3/4 inch EMT\n'
    "feeder MSB -> ATS-1.normal  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n"
    "feeder GEN -> ATS-1.emergency  {gen}  3x300kcmil + N 300kcmil + G #1/0 Cu THWN-2  20 m  in 3 inch EMT\n"
    "  lug-temp 75 degC\n"
    "feeder ATS-1 -> LP-1  3#3 + N #3 + G #8 Cu THWN-2  12 m  in 1-1/4 inch EMT\n"
)
OTHER_WAY = rule(
    name="other-way-unprotected",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    basis="both",
    summary="In another switch state a larger device stands ahead of wires or of a bus than they bear.",
    why="A device protects what it feeds in every state: on the other way a larger one lets more through.",
    clause={"us": "240.4, 408.36", "iec": "60364-4-43 433.1"},
    wrong=_STANDBY.format(ats=400, main="100 A", gen="250 A 3p"),
    right=_STANDBY.format(ats=400, main="100 A", gen="100 A 3p"),
)
PASSING = rule(
    name="passing-rating-low",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    basis="both",
    summary="A transfer switch or busway has a device ahead that lets more through than it is rated for.",
    why="It has no overload device of its own: what its rating is exceeded by heats its contacts or bars unseen.",
    clause={"us": "110.3(B), 368.17(A)", "iec": "60947-6-1, 60364-4-43 433.1"},
    wrong=_STANDBY.format(ats=225, main="lugs", gen="250 A 3p")
    .replace("bus 225 A", "bus 250 A")
    .replace("feeder ATS-1 -> LP-1  3#3 + N #3 + G #8", "feeder ATS-1 -> LP-1  3x250kcmil + N 250kcmil + G #3")
    .replace("12 m  in 1-1/4 inch", "12 m  in 3 inch")
    .replace("100 A 3p  3#3 + N #3 + G #8", "225 A 3p  3#4/0 + N #4/0 + G #4")
    .replace("20 m  in 1-1/4 inch", "20 m  in 2-1/2 inch"),
    right=_STANDBY.format(ats=400, main="100 A", gen="100 A 3p"),
)


class _Way(NamedTuple):
    """What stands ahead of a piece of equipment in a switch state, and the feeder that it arrives over."""

    ahead: Ahead
    device_a: float
    feeder: Feeder
    state: SwitchState


def _largest_ahead(view: View, *, normally: bool) -> dict[str, _Way]:
    """By piece of equipment the largest device ahead of it in any switch state, or in any but the first."""
    found: dict[str, _Way] = {}
    for study in view.studies.every()[0 if normally else 1 :]:
        states, supply = study.derivation.states, study.connectivity.supply
        for name in study.connectivity.order:
            state, feeder = states.get(name), supply.get(name)
            ahead = state.ahead if state is not None else None
            if ahead is None or ahead.device_a is None or feeder is None or feeder.target.name != name:
                continue
            known = found.get(name)
            if known is None or ahead.device_a > known.device_a:
                found[name] = _Way(ahead, ahead.device_a, feeder, study.state)
    return found


@OTHER_WAY.check
def other_way(view: View) -> Iterator[Finding]:
    """Wires without a device of their own, and boards without a main, in the states beside the one that is judged."""
    for name, way in _largest_ahead(view, normally=False).items():
        usual = view.state(name)
        before = usual.ahead.device_a if usual is not None and usual.ahead is not None else None
        if before is None or way.device_a <= before:
            continue  # judged by rules of their own
        if way.feeder.body.number("rating") is None:
            line = feeder_line(view, way.feeder)
            if line is not None:
                yield from _wires(view, line, way)
        yield from _bus(view, name, before, way)


def _wires(view: View, line: Line, way: _Way) -> Iterator[Finding]:
    current = current_of(view, line)
    laid = laid_with(line, current)
    if laid is None or line.medium or line.guard is None or (DWELLING in line.claims and line.us):
        return
    if purpose_of(view, line, current) not in (Purpose.PLAIN, Purpose.GROUP):
        return
    held = bounds(line.tables, line.wiring, laid)
    if isinstance(held, NotListed):
        return
    guard = guard_ahead(view, way.ahead, line.tables)
    if guard is None or failing_stage(line.tables, held[1], guard.amps, guard.kind) is None:
        return
    if failing_stage(line.tables, held[1], line.guard.amps, line.guard.kind) is not None:
        return  # too weak for the usual device already
    there = replace(line, guard=guard)
    yield about(
        view, OTHER_WAY, there,
        f"{line.where}: {line_text(line)} carries {amps_text(held[1].amps)}, and{_when(way)} a {device_words(there)} "
        "protects it",
        found=f"{guard.amps:g} A ahead{_when(way)}; {device_words(line)} as normal",
        needed=f"{amps_text(largest_device_a(line.tables, held[1].amps, guard.kind))} or less on every way",
        change="Choose a smaller device on that way, pull larger wires, or end them in a device of their own.",
        related=_written(view, way),
    )  # fmt: skip


def _bus(view: View, name: str, before: float, way: _Way) -> Iterator[Finding]:
    equipment = view.equipment(name)
    if equipment is None or equipment.kind not in BOARDS or own_device_a(equipment) is not None or equipment.damaged:
        return
    bus = equipment.body.number("bus")
    if bus is None or way.device_a <= bus or before > bus:
        return
    yield OTHER_WAY.finding(
        equipment.place_of("bus"),
        f"the bus of `{name}` is rated {bus:g} A, and the device ahead of it is {way.device_a:g} A{_when(way)}",
        found=f"{way.device_a:g} A at `{way.ahead.device_at}`{_when(way)}; {before:g} A as normal",
        needed=f"{bus:g} A or less on every way",
        change="Choose a smaller device on that way, a larger bus, or a main in this board.",
        subject=name,
        related=_written(view, way),
        clause=clause_of(view, OTHER_WAY),
    )


@PASSING.check
def passing_rating(view: View) -> Iterator[Finding]:
    """Transfer switches and busways against the largest device ahead in any state; fire pumps have their own rule."""
    for name, way in _largest_ahead(view, normally=True).items():
        equipment = view.equipment(name)
        if equipment is None or equipment.kind not in ("transfer", "busway") or equipment.damaged:
            continue
        rating = equipment.body.number("rating")
        if rating is None or way.device_a <= rating or _feeds_fire_pump(view, equipment):
            continue
        if equipment.kind == "busway" and view.tables is not None:
            guard = guard_ahead(view, way.ahead, view.tables)
            if guard is not None and way.device_a <= largest_device_a(view.tables, rating, guard.kind):
                continue  # the next standard rating (NEC 368.17(A) exception, from memory)
        yield PASSING.finding(
            equipment.place_of("rating"),
            f"`{name}` is rated {rating:g} A, and the device ahead of it is {way.device_a:g} A{_when(way)}",
            found=f"{way.device_a:g} A at `{way.ahead.device_at}`{_when(way)}",
            needed=f"a device of {rating:g} A or less on every way into it, or what its listing names",
            change="Choose a smaller device, or a larger rating; where the maker lists it behind this device, accept "
            "this with that source.",
            subject=name,
            related=_written(view, way),
            clause=clause_of(view, PASSING),
        )


def _when(way: _Way) -> str:
    from wyeline_linter.studies.scenarios import when

    return when(way.state)


def _written(view: View, way: _Way) -> tuple[Related, ...]:
    """Where the device is written."""
    device, holder = view.model.feeders.get(way.ahead.device_at), view.equipment(way.ahead.device_at)
    place: Place | None = device.place if device is not None else holder.place if holder is not None else None
    return (Related(place, "the device is written here"),) if place is not None else ()


def _feeds_fire_pump(view: View, equipment: Equipment) -> bool:
    """Whether a fire pump hangs on it: its device carries the current of one that stalls, whatever the switch."""
    waiting, seen = [equipment.name], {equipment.name}
    while waiting:
        at = view.equipment(waiting.pop())
        if at is None:
            continue
        if "fire-pump" in at.body.flags or any("fire-pump" in c.circuit.body.flags for c in at.circuits):
            return True
        further = {feeder.target.name for feeder in view.model.feeders_from.get(at.name, ())} - seen
        seen |= further
        waiting += further
    return False
