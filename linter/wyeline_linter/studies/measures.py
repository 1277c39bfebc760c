"""Figures that an `expect` statement may name, of equipment, of a feeder, or of all of a kind, in a switch state."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.model import ExpectStatement
from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.network import NORMAL_STATE, SwitchState, feeders_named, scenario_state
from wyeline_linter.studies.scenarios import when

if TYPE_CHECKING:
    from wyeline_linter.analysis import View
    from wyeline_linter.studies.study import StateStudy


class Result(NamedTuple):
    """One measured figure: in the expectation's SI unit (None: unknown, with reasons), as text, and the state."""

    subject: str
    value: float | None
    text: str
    state: str
    reasons: tuple[str, ...] = ()


class Answer(NamedTuple):
    value: float | None
    text: str
    reasons: tuple[str, ...] = ()


def measure(view: View, statement: ExpectStatement) -> Iterator[Result]:
    """Every figure that the statement speaks of. Subjects that are not there are another rule's to report."""
    state = _state(view, statement)
    if state is None:
        return
    study = view.studies.in_state(state)
    of_equipment, of_feeder = MEASURES[statement.measure or ""]
    least = statement.relation == ">="
    for subject in _subjects(view, statement):
        name = subject.key if isinstance(subject, Feeder) else subject.name
        if isinstance(subject, Feeder):
            answer = of_feeder(study, subject, least)
        else:
            if not study.connectivity.fed(name):
                if statement.kind is None:
                    yield Result(name, None, "", when(state), (f"nothing feeds `{name}`{when(state)}",))
                continue
            answer = of_equipment(study, subject, least)
        if answer is not None:
            yield Result(name, answer.value, answer.text, when(state), answer.reasons)


def _state(view: View, statement: ExpectStatement) -> SwitchState | None:
    if statement.scenario is None:
        return NORMAL_STATE
    for _, scenario in view.model.scenarios:
        if scenario.name is not None and scenario.name.text == statement.scenario.text:
            return scenario_state(view.model, scenario)
    return None


def _subjects(view: View, statement: ExpectStatement) -> list[Equipment | Feeder]:
    model = view.model
    if statement.kind is not None:
        named = [e for e in model.equipment.values() if e.kind == statement.kind]
        return sorted(named, key=lambda e: (e.block.file, e.block.first_line))
    if statement.source is None:
        return []
    if statement.target is not None:
        return list(feeders_named(model, statement.source.text, statement.target.text))
    equipment = model.equipment.get(statement.source.text)
    if equipment is not None:
        return [equipment]
    return list(feeders_named(model, statement.source.text, None))


def _fault(study: StateStudy, equipment: Equipment, least: bool) -> Answer:
    faults = study.smallest if least else study.largest
    worst = faults.worst(equipment.name)
    if worst is None or worst.amperes is None:
        return Answer(None, "", faults.reasons(equipment.name) or ("no fault current flows there",))
    return Answer(worst.amperes, f"{worst.amperes / 1000:.3g} kA ({worst.kind})")


def _fault_of_feeder(study: StateStudy, feeder: Feeder, least: bool) -> Answer:
    faults = study.smallest if least else study.largest
    ends = faults.built.ends.get(feeder.key)
    if ends is None:
        return Answer(None, "", (f"`{feeder.key}` is open",))
    worst = faults.worst_at(ends[1])
    if worst is None or worst.amperes is None:
        return Answer(None, "", faults.bus_reasons(ends[1]) or ("no fault current flows there",))
    return Answer(worst.amperes, f"{worst.amperes / 1000:.3g} kA ({worst.kind})")


def _drop(study: StateStudy, equipment: Equipment, _least: bool) -> Answer:
    whole, _, reasons = study.path_drop(equipment.name)
    return Answer(None, "", reasons) if whole is None else Answer(whole, f"{100 * whole:.2f} % from the source")


def _drop_of_feeder(study: StateStudy, feeder: Feeder, _least: bool) -> Answer:
    drop = study.flow.drop(feeder.key)
    if drop is None:
        return Answer(None, "", study.flow.feeder_reasons(feeder.key))
    return Answer(drop.part, f"{100 * drop.part:.2f} %, {drop.volts:.2f} V")


def _voltage(study: StateStudy, equipment: Equipment, least: bool) -> Answer:
    pair = study.flow.lowest(equipment.name) if least else study.flow.highest(equipment.name)
    if pair is None:
        return Answer(None, "", study.flow.reasons(equipment.name))
    return Answer(pair.per_unit, f"{100 * pair.per_unit:.1f} % of nominal ({pair.volts:.1f} V between {pair.name})")


def _unbalance(study: StateStudy, equipment: Equipment, _least: bool) -> Answer:
    found = study.flow.unbalance(equipment.name)
    if found is None:
        return Answer(None, "", study.flow.reasons(equipment.name) or ("it has no three legs",))
    return Answer(found.deviation, f"{100 * found.deviation:.2f} %")


def _loading(study: StateStudy, equipment: Equipment, _least: bool) -> Answer:
    """Demand over rating, by the fullest leg of what has legs."""
    book, name, body = study.book, equipment.name, equipment.body
    node = book.nodes.get(name)
    if node is None:
        return Answer(None, "", (f"nothing feeds `{name}`",))
    if node.below.unknown:
        return Answer(None, "", tuple(node.below.unknown))
    counted = book.counted(name)
    per_ampere = volt_amperes_per_ampere(book.system(name))
    amps = max((abs(i) for i in counted.demand.amps[:3]), default=0.0)
    power = body.facts.get("power")
    if power is not None and isinstance(power.value.data, float | int):
        if power.value.dimension == "power":
            share = counted.demand.va.real / power.number
            return Answer(share, f"{100 * share:.0f} % of {power.value.text}")
        if per_ampere:
            share = amps / (power.number / per_ampere)
            return Answer(share, f"{100 * share:.0f} % of {power.value.text} on its fullest leg")
    for key in ("main", "incomer", "bus", "service", "rating"):
        rated = body.number(key)
        if rated:
            return Answer(amps / rated, f"{100 * amps / rated:.0f} % of {rated:g} A on its fullest leg")
    return Answer(None, "", (f"`{name}` states no rating to load",))


def _loading_of_feeder(study: StateStudy, feeder: Feeder, _least: bool) -> Answer:
    currents, rated = study.flow.currents(feeder.key), feeder.body.number("rating")
    if currents is None:
        return Answer(None, "", study.flow.feeder_reasons(feeder.key))
    if rated is None:
        return Answer(None, "", (f"`{feeder.key}` states no device",))
    amps = max(abs(i) for i in currents.values())
    return Answer(amps / rated, f"{100 * amps / rated:.0f} % of {rated:g} A")


def _current_of_feeder(study: StateStudy, feeder: Feeder, _least: bool) -> Answer:
    currents = study.flow.currents(feeder.key)
    if currents is None:
        return Answer(None, "", study.flow.feeder_reasons(feeder.key))
    amps = max(abs(i) for i in currents.values())
    return Answer(amps, f"{amps:.1f} A")


def _none(_study: StateStudy, _subject: Equipment | Feeder, _least: bool) -> Answer:
    return Answer(None, "", ("it has no such figure",))


OfEquipment = Callable[["StateStudy", Equipment, bool], Answer]
OfFeeder = Callable[["StateStudy", Feeder, bool], Answer]
MEASURES: dict[str, tuple[OfEquipment, OfFeeder]] = {
    "fault": (_fault, _fault_of_feeder),
    "drop": (_drop, _drop_of_feeder),
    "voltage": (_voltage, _none),
    "unbalance": (_unbalance, _none),
    "loading": (_loading, _loading_of_feeder),
    "current": (_none, _current_of_feeder),
}
"""What can be expected: `fault` (the largest for `<=`, the smallest for `>=`), `drop` (from the source or of a feeder),
`voltage` and `unbalance` (parts of nominal), `loading` (demand over rating), `current` of a feeder."""
