"""Figures that an `expect` statement may name, of equipment, of a feeder, or of all of a kind, in a switch state."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.model import ExpectStatement
from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.network import NORMAL_STATE, SwitchState, feeders_named, scenario_state
from wyeline_linter.shares import MULTIPLE_FROM, share_of
from wyeline_linter.studies.scenarios import when
from wyeline_linter.studies.states import state_named
from wyeline_linter.system_words import conductors_text

if TYPE_CHECKING:
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View


class Result(NamedTuple):
    """One measured figure: in the expectation's SI unit (None: unknown, with reasons), as text, and the state."""

    subject: str
    value: float | None
    text: str
    state: str
    reasons: tuple[str, ...] = ()


class Answer(NamedTuple):
    """A measured figure: its value in the SI unit (None: unknown, with ``reasons``), and how it is shown: the number
    that is printed is ``scale`` times the value, in a format of so many digits, with words behind it."""

    value: float | None
    scale: float = 1.0
    digits: int = 0
    kind: str = "f"
    words: str = ""
    reasons: tuple[str, ...] = ()

    @property
    def text(self) -> str:
        return self._text(self.digits)

    def _number(self, value: float, digits: int) -> str:
        return f"{self.scale * value:.{digits}{self.kind}}"

    def _text(self, digits: int) -> str:
        if self.value is None:
            return ""
        if self.value >= MULTIPLE_FROM and self.words.startswith("% of "):
            return share_of(self.value, self.words.removeprefix("% of "))
        return f"{self._number(self.value, digits)} {self.words}"

    def against(self, limit: float | None) -> str:
        """The text with as many digits as it takes to differ from a limit."""
        if self.value is None or limit is None or self.value == limit:
            return self.text
        for digits in range(self.digits, self.digits + MOST_DIGITS):
            if float(self._number(self.value, digits)) != float(self._number(limit, digits)):
                return self._text(digits)
        return self._text(self.digits + MOST_DIGITS)


MOST_DIGITS = 7
"""Further digits that are tried, until a figure differs from its limit."""


def _unknown(*reasons: str) -> Answer:
    return Answer(None, reasons=reasons)


def measure(view: View, statement: ExpectStatement) -> Iterator[Result]:
    """Every figure that the statement speaks of. Subjects that are not there are another rule's to report."""
    state = _state(view, statement)
    if state is None:
        return
    study = view.studies.in_state(state)
    of_equipment, of_feeder = MEASURES[statement.measure or ""]
    data = statement.value.data if statement.value is not None else None
    limit = float(data) if isinstance(data, float | int) else None
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
            yield Result(name, answer.value, answer.against(limit), when(state), answer.reasons)


def _state(view: View, statement: ExpectStatement) -> SwitchState | None:
    if statement.scenario is None:
        return NORMAL_STATE
    for _, scenario in view.model.scenarios:
        if scenario.name is not None and scenario.name.text == statement.scenario.text:
            return scenario_state(view.model, scenario)
    return state_named(view, statement.scenario.text)


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
        return _unknown(*faults.reasons(equipment.name) or ("no fault current flows there",))
    return Answer(worst.amperes, 1e-3, 3, "g", f"kA ({worst.kind})")


def _fault_of_feeder(study: StateStudy, feeder: Feeder, least: bool) -> Answer:
    faults = study.smallest if least else study.largest
    ends = faults.built.ends.get(feeder.key)
    if ends is None:
        return _unknown(f"`{feeder.key}` is open")
    worst = faults.worst_at(ends[1])
    if worst is None or worst.amperes is None:
        return _unknown(*faults.bus_reasons(ends[1]) or ("no fault current flows there",))
    return Answer(worst.amperes, 1e-3, 3, "g", f"kA ({worst.kind})")


def _drop(study: StateStudy, equipment: Equipment, _least: bool) -> Answer:
    whole, _, reasons = study.path_drop(equipment.name)
    return _unknown(*reasons) if whole is None else Answer(whole, 100.0, 2, "f", "% in the wires from the source")


def _drop_of_feeder(study: StateStudy, feeder: Feeder, _least: bool) -> Answer:
    drop = study.judged.drop(feeder)
    if drop is None:
        return _unknown(*study.flow.feeder_reasons(feeder.key))
    return Answer(drop.part, 100.0, 2, "f", f"%, {drop.volts:.2f} V")


def _voltage(study: StateStudy, equipment: Equipment, least: bool) -> Answer:
    pair = study.judged.lowest(equipment.name) if least else study.flow.highest(equipment.name)
    if pair is None:
        return _unknown(*study.flow.reasons(equipment.name))
    between = conductors_text(pair.between, study.practice, "–")
    return Answer(pair.per_unit, 100.0, 1, "f", f"% of nominal ({pair.volts:.1f} V between {between})")


def _unbalance(study: StateStudy, equipment: Equipment, _least: bool) -> Answer:
    found = study.flow.unbalance(equipment.name)
    if found is None:
        return _unknown(*study.flow.reasons(equipment.name) or ("it has no three legs",))
    return Answer(found.deviation, 100.0, 2, "f", "%")


def _loading(study: StateStudy, equipment: Equipment, _least: bool) -> Answer:
    """Demand over rating, by the fullest leg of what has legs."""
    book, name, body = study.book, equipment.name, equipment.body
    node = book.nodes.get(name)
    if node is None:
        return _unknown(f"nothing feeds `{name}`")
    if node.below.unknown:
        return _unknown(*node.below.unknown)
    counted = book.counted(name)
    per_ampere = volt_amperes_per_ampere(book.system(name))
    amps = max((abs(i) for i in counted.demand.amps[:3]), default=0.0)
    power = body.facts.get("power")
    if power is not None and isinstance(power.value.data, float | int):
        if power.value.dimension == "power":
            share = counted.demand.va.real / power.number
            return Answer(share, 100.0, 0, "f", f"% of {power.value.text}")
        if per_ampere:
            share = amps / (power.number / per_ampere)
            return Answer(share, 100.0, 0, "f", f"% of {power.value.text} on its fullest leg")
    for key in ("main", "incomer", "bus", "service", "rating"):
        rated = body.number(key)
        if rated:
            return Answer(amps / rated, 100.0, 0, "f", f"% of {rated:g} A on its fullest leg")
    return _unknown(f"`{name}` states no rating to load")


def _loading_of_feeder(study: StateStudy, feeder: Feeder, _least: bool) -> Answer:
    currents, rated = study.judged.currents(feeder), feeder.body.number("rating")
    if currents is None:
        return _unknown(*study.flow.feeder_reasons(feeder.key))
    if rated is None:
        return _unknown(f"`{feeder.key}` states no device")
    amps = max(abs(i) for i in currents.values())
    return Answer(amps / rated, 100.0, 0, "f", f"% of {rated:g} A")


def _current_of_feeder(study: StateStudy, feeder: Feeder, _least: bool) -> Answer:
    currents = study.judged.currents(feeder)
    if currents is None:
        return _unknown(*study.flow.feeder_reasons(feeder.key))
    amps = max(abs(i) for i in currents.values())
    return Answer(amps, 1.0, 1, "f", "A")


def _none(_study: StateStudy, _subject: Equipment | Feeder, _least: bool) -> Answer:
    return _unknown("it has no such figure")


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
