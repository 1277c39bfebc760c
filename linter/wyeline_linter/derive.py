"""Derived voltages: which system stands at every piece of equipment, and what every feeder carries.

A walk from the sources outwards: a source makes a system, a feeder carries all or some of its conductors, a transformer
makes another one, and what a statement says about its own voltage is an assertion that is checked on the way. What
cannot be told stays unknown with its reasons; nothing is guessed.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterable
from typing import NamedTuple

from wyeline_grammar.linking import Equipment, Feeder, Model
from wyeline_grammar.model import SystemRef
from wyeline_grammar.notation import Voltage, VoltageForm
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.ahead import Ahead, at_maker, onward_of, through_feeder
from wyeline_linter.board_positions import circuit_legs
from wyeline_linter.earthing import own_electrode
from wyeline_linter.feeding import feed_from
from wyeline_linter.network import Network, entered_side, makes_system, on_bypass, two_sided
from wyeline_linter.system_words import with_legs_of
from wyeline_linter.systems import (
    Arrangement,
    Earthing,
    Known,
    System,
    SystemState,
    UnknownYet,
    earthing_from_words,
    source_system,
)
from wyeline_linter.verdicts import Feeds, FeedVerdict, Refusal, Undecided
from wyeline_linter.winding_fit import winding_verdict
from wyeline_linter.windings import Practice, Transformed, WindingResult, secondary_system

LOAD_KINDS = frozenset({"motor", "load", "charger", "drive", "capacitor"})
_DEFAULT_HZ = {"us": 60.0, "iec": 50.0}


class FeederState(NamedTuple):
    """What a feeder offers and carries.

    ``offered`` is the system at the end it leaves, ``carried`` the one that arrives, ``wanted`` what the far end states
    (None: it inherits), ``verdict`` whether that works.
    """

    offered: SystemState
    carried: SystemState
    wanted: Voltage | None
    verdict: FeedVerdict


class EquipmentState(NamedTuple):
    """What is known of the voltages at a piece of equipment.

    ``arriving`` is the system at its input (None for what makes its own), ``system`` the one at its bus, or at the
    output of what has two sides; at a board with an electrode of its own they differ in the earthing alone. ``winding``
    is set for transformers. ``ahead`` is what protects its input, ``onward`` what protects the feeders that leave it.
    """

    arriving: SystemState | None
    system: SystemState
    winding: WindingResult | None = None
    ahead: Ahead | None = None
    onward: Ahead | None = None


REFUSED = "the connection does not work"
"""How the reason begins that a refused connection gives for what is unknown below it; the refusal is told apart."""
NOT_FED = UnknownYet(("nothing feeds it",))


class Derivation:
    """The derived systems of a model in one switch state; ``update`` recomputes only what hangs on a change."""

    def __init__(self, model: Model, network: Network) -> None:
        self.model = model
        self.network = network
        self.states: dict[str, EquipmentState] = {}
        self.feeders: dict[str, FeederState] = {}
        self.runs = 0
        """How many pieces of equipment were derived so far: tests prove with it what an edit did not touch."""
        self.last_run: list[str] = []

    def all(self) -> None:
        """Derive everything anew."""
        self.states.clear()
        self.feeders.clear()
        self.last_run = []
        for name in self.network.order:
            self._derive(name)
        for name in self.model.equipment:
            if name not in self.states:
                self._derive(name)
        for feeder in self.model.feeders.values():
            if feeder.key not in self.feeders:
                self._judge(feeder)

    def fed(self, like: Derivation) -> None:
        """Derive what the network lists in its order and the feeders that arrive there, and nothing else.

        ``like`` is that of another switch state of the same model: what is fed alike there is taken over.
        """
        for name in self.network.order:
            if not self._take_over(name, like):
                self._derive(name)
        for name in self.network.order:
            for feeder in self.network.others.get(name, ()):
                self._judge(feeder)

    def _take_over(self, name: str, like: Derivation) -> bool:
        feeder, above = self.network.supply.get(name), self.network.supplier.get(name)
        if feeder is None or above is None or name not in like.states or feeder.source.port == "subfeed":
            return False
        if like.network.supply.get(name) is not feeder or like.network.supplier.get(name) != above:
            return False
        here, there = self.states.get(above), like.states.get(above)
        if here is None or there is None or feeder.key not in like.feeders:
            return False
        if here is not there and (here.system != there.system or here.onward != there.onward):
            return False
        self.states[name], self.feeders[feeder.key] = like.states[name], like.feeders[feeder.key]
        return True

    def update(self, names: Iterable[str], feeders: Iterable[str]) -> tuple[set[str], set[str]]:
        """Derive these again and what hangs on them, while results differ.

        Returns the names and the feeder keys whose state changed (those that went included).
        """
        depth = self.network.depth
        heap: list[tuple[int, str]] = []
        queued: set[str] = set()
        changed: set[str] = set()
        changed_feeders: set[str] = set()
        self.last_run = []

        def push(name: str) -> None:
            if name not in queued:
                queued.add(name)
                heapq.heappush(heap, (depth.get(name, 1 << 30), name))

        judge: set[str] = set()
        for key in feeders:
            feeder = self.model.feeders.get(key)
            if feeder is None:
                if self.feeders.pop(key, None) is not None:
                    changed_feeders.add(key)
                continue
            judge.add(key)
            for end in (feeder.source.name, feeder.target.name):
                if end in self.model.equipment:
                    push(end)
        for name in names:
            if name in self.model.equipment:
                push(name)
                for feeder in self.model.feeders_from.get(name, ()):
                    # The positions of its device may now lie on other legs.
                    if "at" in feeder.body.facts and self.network.supplier.get(feeder.target.name) == name:
                        push(feeder.target.name)
            elif self.states.pop(name, None) is not None:
                changed.add(name)
            judge.update(f.key for f in self._at(name))
        while heap:
            _, name = heapq.heappop(heap)
            old = self.states.get(name)
            self._derive(name)
            if self.states[name] != old:
                changed.add(name)
                judge.update(f.key for f in self._at(name))
                for feeder in self._at(name):
                    other = feeder.target.name if feeder.source.name == name else feeder.source.name
                    if self.network.supplier.get(other) == name:
                        push(other)
        for key in judge:
            feeder = self.model.feeders.get(key)
            if feeder is not None:
                before = self.feeders.get(key)
                self._judge(feeder)
                if self.feeders[key] != before:
                    changed_feeders.add(key)
        return changed, changed_feeders

    def _at(self, name: str) -> list[Feeder]:
        return [*self.model.feeders_from.get(name, ()), *self.model.feeders_to.get(name, ())]

    # one piece of equipment

    def _derive(self, name: str) -> None:
        self.runs += 1
        self.last_run.append(name)
        equipment = self.model.equipment[name]
        if makes_system(equipment):
            made = self._made(equipment, equipment.primary)
            self.states[name] = EquipmentState(None, made, None, None, self._begun(equipment, equipment.primary, made))
            return
        feeder = self.network.supply.get(name)
        if feeder is None:
            arriving: SystemState = NOT_FED
        else:
            arriving = self._judge(feeder).carried
        ahead = self._ahead(feeder) if feeder is not None and feeder.target.name == name else None
        if not two_sided(equipment) or on_bypass(equipment, self.network.state):
            here = self._earthed(equipment, arriving)
            self.states[name] = EquipmentState(arriving, here, None, ahead, onward_of(equipment, ahead))
        elif equipment.kind == "transformer":
            made, winding = self._transformed(equipment, arriving)
            onward = self._begun(equipment, equipment.secondary, made)
            self.states[name] = EquipmentState(arriving, made, winding, ahead, onward)
        else:
            side = equipment.secondary if equipment.arrow else equipment.primary
            made = self._made(equipment, side) if feeder is not None else NOT_FED
            self.states[name] = EquipmentState(arriving, made, None, ahead, self._begun(equipment, side, made))

    def _earthed(self, equipment: Equipment, arriving: SystemState) -> SystemState:
        """What arrives, as TT where the board has an electrode of its own: a TN system may end there (IEC 60364-1,
        312.2), an unearthed one cannot become earthed without a source, and the NEC knows nothing of it."""
        if not own_electrode(equipment) or self.practice == "us" or not isinstance(arriving, Known):
            return arriving
        found = arriving.system
        if found.frequency_hz == 0 or not found.earthing.solid or found.earthing.arrangement is Arrangement.TT:
            return arriving
        return Known(found.behind_own_electrode())

    def _begun(self, maker: Equipment, side: SystemRef | None, made: SystemState) -> Ahead:
        """The way that begins at what makes a system, with the electrodes written at it or at the declared system."""
        declared = self.model.system(side.name) if side is not None and side.name is not None else None
        tt = isinstance(made, Known) and made.system.earthing.arrangement is Arrangement.TT
        return at_maker(maker, declared[1].body if declared is not None else None, tt=tt)

    def _ahead(self, feeder: Feeder) -> Ahead:
        above = self.states.get(feeder.source.name)
        return through_feeder(feeder, above.ahead if above else None, above.onward if above else None)

    def _made(self, equipment: Equipment, side: SystemRef | None) -> SystemState:
        voltage = self.stated(side)
        if voltage is None:
            return UnknownYet((f"the voltage of `{equipment.name}` is not written",))
        return _source(
            voltage,
            self.frequency_hz(equipment, side),
            self.earthing(equipment, side, voltage),
            equipment.body.text("high") or "B",
        )

    def _transformed(self, equipment: Equipment, arriving: SystemState) -> tuple[SystemState, WindingResult | None]:
        primary, secondary = self.stated(equipment.primary), self.stated(equipment.secondary)
        if not isinstance(arriving, Known):
            return UnknownYet(reasons_of(arriving)), None
        if secondary is None:
            return UnknownYet((f"the secondary voltage of `{equipment.name}` is not written",)), None
        result = secondary_system(
            arriving.system,
            primary if primary is not None else arriving.system.nominal,
            secondary,
            equipment.body.text("connection"),
            practice=self.practice,
            earthing=self.earthing(equipment, equipment.secondary, secondary),
            high_leg=equipment.body.text("high") or "B",
        )
        return _winding_state(result, self.practice), result

    # one feeder

    def _judge(self, feeder: Feeder) -> FeederState:
        """What the feeder offers, carries, and whether its far end can take it; kept in ``feeders``."""
        source_state = self.states.get(feeder.source.name)
        offered: SystemState = source_state.system if source_state is not None else NOT_FED
        target = self.model.equipment.get(feeder.target.name)
        source = self.model.equipment.get(feeder.source.name)
        if source is None:
            offered = UnknownYet((f"nothing is called `{feeder.source.name}`",))
        elif source_state is None:
            offered = UnknownYet((f"what feeds `{feeder.source.name}` is not settled",))
        if source is not None and target is not None and self.delivers_into(feeder):
            return self._judge_delivery(feeder, source, target)
        wanted = self.stated(entered_side(target, feeder.target.port)) if target is not None else None
        if target is not None and self._takes_dc_beside(target, offered):
            wanted = None
        verdict = self._verdict(feeder, target, offered, wanted)
        state = FeederState(offered, _carried(verdict, self.practice), wanted, verdict)
        self.feeders[feeder.key] = state
        return state

    def delivers_into(self, feeder: Feeder) -> bool:
        """Whether a following inverter delivers along it into a board, whose voltage it takes."""
        return self.network.supply.get(feeder.source.name) is feeder

    def _judge_delivery(self, feeder: Feeder, inverter: Equipment, board: Equipment) -> FeederState:
        """The board's voltage is what is offered, and the inverter is what has to fit it."""
        at_board = self.states.get(board.name)
        offered = at_board.system if at_board is not None else NOT_FED
        wanted, poles = self.stated(inverter.primary), feeder.body.poles
        verdict: FeedVerdict
        if wanted is None and isinstance(offered, Known):
            verdict = feed_from(offered, offered.system)
        else:
            verdict = feed_from(
                offered,
                wanted or Voltage(VoltageForm.THREE_WIRE, 1.0, None, None, ""),
                stated_legs=feeder.source.legs,
                poles=poles.count if poles else None,
                switched_neutral=poles.switched_neutral if poles else False,
                frequency_hz=self.wanted_hz(inverter),
            )
        state = FeederState(offered, _carried(verdict, self.practice), wanted, verdict)
        self.feeders[feeder.key] = state
        return state

    def _takes_dc_beside(self, target: Equipment, offered: SystemState) -> bool:
        """A battery on an inverter or UPS arrives at its DC side, whatever AC voltage the statement names."""
        if target.kind not in ("inverter", "ups") or not isinstance(offered, Known):
            return False
        stated = self.stated(target.primary)
        return offered.system.frequency_hz == 0 and (stated is None or stated.form is not VoltageForm.DC2)

    def _verdict(
        self, feeder: Feeder, target: Equipment | None, offered: SystemState, wanted: Voltage | None
    ) -> FeedVerdict:
        poles = feeder.body.poles
        stated_legs = self.taken_legs(feeder, offered)
        if wanted is not None and target is not None:
            # A winding bears what a load bears, and its own rules say where it stands off its nominal voltage.
            winding = target.kind == "transformer"
            verdict = feed_from(
                offered,
                wanted,
                stated_legs=stated_legs,
                poles=poles.count if poles else None,
                switched_neutral=poles.switched_neutral if poles else False,
                is_load=winding or target.kind in LOAD_KINDS,
                frequency_hz=self.wanted_hz(target),
            )
            return winding_verdict(verdict, wanted, stated_legs) if winding else verdict
        if not isinstance(offered, Known):
            return feed_from(offered, Voltage(VoltageForm.THREE_WIRE, 1.0, None, None, ""))
        return self._inherited(feeder, offered.system, stated_legs)

    def taken_legs(self, feeder: Feeder, offered: SystemState) -> tuple[str, ...] | None:
        """The supply's legs that a feeder takes, in order: as written, else by the positions of its device where these
        leave legs out. None where neither says it."""
        if feeder.source.legs is not None:
            return feeder.source.legs
        at = feeder.statement.at
        source = self.model.equipment.get(feeder.source.name)
        if at is None or not at.positions or source is None or source.kind not in BOARDS:
            return None
        if not isinstance(offered, Known) or offered.system.frequency_hz == 0:
            return None
        poles = feeder.body.poles
        if poles is not None and poles.count != len(at.positions):
            return None
        legs = circuit_legs(at.positions, offered.system.legs, source)
        twice = len(set(legs)) < len(legs)
        return None if twice or len(legs) >= len(offered.system.legs) else legs

    def _inherited(self, feeder: Feeder, up: System, stated_legs: tuple[str, ...] | None) -> FeedVerdict:
        """The far end states no voltage: it gets the conductors that the feeder takes."""
        poles = feeder.body.poles
        conductors = feeder.body.conductors
        neutral = up.has_neutral
        if conductors is not None and neutral and not conductors.run.with_protective:
            # A fourth pole opens the neutral, and is no live wire.
            opened = min(poles.count, len(up.legs)) if poles else len(up.legs)
            live = len(stated_legs) if stated_legs else opened
            roles = {role for role, _ in conductors.extras}
            neutral = bool(roles & {"N", "PEN"}) or conductors.run.count > live - ("N" in (stated_legs or ()))
        if stated_legs is not None:
            missing = [leg for leg in stated_legs if leg not in up.conductors]
            if missing:
                return feed_from(Known(up), up, stated_legs=stated_legs)
            names = tuple(dict.fromkeys(stated_legs))
            if neutral and "N" not in names and len(names) > 1:
                names = (*names, "N")
        elif poles is not None and poles.count < len(up.live_legs):
            return Undecided(
                (f"`{feeder.key}` does not say which of the legs {', '.join(up.legs)} its {poles.count} poles take",)
            )
        else:
            names = (*up.legs, "N") if neutral else up.legs
        part = up if names == up.conductors else up.restrict(names)
        return feed_from(
            Known(up),
            part,
            stated_legs=names,
            poles=poles.count if poles else None,
            switched_neutral=poles.switched_neutral if poles else False,
        )

    # what statements say

    @property
    def practice(self) -> Practice | None:
        """``us``, ``iec``, or None where the project names no basis."""
        basis = self.model.basis
        if basis is None:
            return None
        return "us" if basis.startswith("us") else "iec"

    def stated(self, side: SystemRef | None) -> Voltage | None:
        """The voltage written on a side, looked up where a system's name stands; None where it cannot be told."""
        if side is None:
            return None
        if side.voltage is not None:
            return side.voltage
        found = self.model.system(side.name) if side.name is not None else None
        if found is None or found[1].primary is None:
            return None
        return found[1].primary.voltage

    def wanted_hz(self, equipment: Equipment) -> float | None:
        """The frequency written at the equipment or at the declared system that it names, else None."""
        side = equipment.secondary if equipment.arrow and makes_system(equipment) else equipment.primary
        return self._written_hz(equipment, side)

    def _written_hz(self, equipment: Equipment, side: SystemRef | None) -> float | None:
        own = equipment.body.number("frequency")
        found = self.model.system(side.name) if side is not None and side.name is not None else None
        return own if own is not None or found is None else found[1].body.number("frequency")

    def frequency_hz(self, equipment: Equipment, side: SystemRef | None = None) -> float:
        """Its own frequency or its system's, the project's, or the usual one of the project's basis."""
        own = self._written_hz(equipment, side)
        if own is not None:
            return own
        project = self.model.frequency_hz
        return project if project is not None else _DEFAULT_HZ.get(self.practice or "us", 60.0)

    def earthing(self, equipment: Equipment, side: SystemRef | None, voltage: Voltage) -> Earthing | None:
        """The earthing written at the equipment that makes a system, else at the declared system; None: not written."""
        bodies = [equipment.body]
        found = self.model.system(side.name) if side is not None and side.name is not None else None
        if found is not None:
            bodies.append(found[1].body)
        for body in bodies:
            for key in ("ground-resistor", "ground-reactor"):
                fact = body.facts.get(key)
                if fact is not None:
                    return earthing_from_words(key.removeprefix("ground-"), voltage, size=fact.value.text)
            for key in ("ground", "earthing"):
                word = body.text(key)
                if word is not None:
                    try:
                        return earthing_from_words({"L1": "A", "L2": "B", "L3": "C"}.get(word, word), voltage)
                    except ValueError:
                        return None
        return None


def _source(voltage: Voltage, hz: float, earthing: Earthing | None, high_leg: str) -> SystemState:
    try:
        return Known(source_system(voltage, frequency_hz=hz, earthing=earthing, high_leg=high_leg))
    except ValueError as error:
        return UnknownYet((str(error),))


def reasons_of(state: SystemState) -> tuple[str, ...]:
    """Why a system is not known; empty where it is."""
    return state.reasons if isinstance(state, UnknownYet) else ()


def _carried(verdict: FeedVerdict, practice: Practice | None) -> SystemState:
    if isinstance(verdict, Feeds):
        return Known(verdict.best.system)
    if isinstance(verdict, Refusal):
        return UnknownYet((f"{REFUSED}: {with_legs_of(practice, verdict.why)}",))
    return UnknownYet(tuple(with_legs_of(practice, reason) for reason in verdict.reasons))


def _winding_state(result: WindingResult, practice: Practice | None) -> SystemState:
    if isinstance(result, Transformed):
        return Known(result.system)
    if isinstance(result, Refusal):
        return UnknownYet((f"the windings do not fit: {with_legs_of(practice, result.why)}",))
    return UnknownYet(tuple(with_legs_of(practice, reason) for reason in result.reasons))
