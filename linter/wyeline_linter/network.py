"""Connectivity: which feeder supplies what, in a given state of the switches.

Every closed feeder is followed from the sources outwards. The first supply that reaches a piece of equipment is *its*
supply; what else arrives there is kept beside it, for the rules that judge loops and second supplies.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable
from dataclasses import dataclass, field
from operator import attrgetter
from typing import NamedTuple

from wyeline_grammar.linking import Equipment, Feeder, Model
from wyeline_grammar.model import ScenarioStatement, SystemRef

NORMAL = "normal"
BYPASS = "bypass"
OUTGOING_PORTS = {"through": "through-lugs", "subfeed": "subfeed-lugs"}
"""Ends that feeders leave, with the word that says a panel has them; feeders reach all other ends."""
_SOURCE_RANK = {"utility": 0, "generator": 1, "inverter": 2, "battery": 3}
_TWO_SIDED = frozenset({"transformer", "ups"})
_LOADS = frozenset({"motor", "load", "charger", "capacitor", "spd"})
_SWITCHING = frozenset({"transfer", "ups"})
"""Kinds of which one input is taken at a time, so that an input without a port may be the one that is not."""


class SwitchState(NamedTuple):
    """One state of the switches: ``open_feeders`` and ``closed_feeders`` by key (against what is normal), ``off``
    sources, ``transfer`` positions by switch, ``shed`` and ``scale`` by name or feeder key. ``words`` say in a sentence
    what a state is that nobody wrote down; those that a scenario states have a name instead."""

    name: str = NORMAL
    open_feeders: frozenset[str] = frozenset()
    closed_feeders: frozenset[str] = frozenset()
    off: frozenset[str] = frozenset()
    on: frozenset[str] = frozenset()
    transfer: tuple[tuple[str, str], ...] = ()
    shed: frozenset[str] = frozenset()
    scale: tuple[tuple[str, float], ...] = ()
    words: str = ""

    def closed(self, feeder: Feeder) -> bool:
        if feeder.key in self.open_feeders:
            return False
        return not feeder.normally_open or feeder.key in self.closed_feeders

    def port_of(self, transfer: str) -> str:
        """The input that a transfer switch, or a UPS with its bypass, stands on."""
        return next((port for name, port in self.transfer if name == transfer), NORMAL)


NORMAL_STATE = SwitchState()


def scenario_state(model: Model, scenario: ScenarioStatement) -> SwitchState:
    """The switch state that a scenario describes. Actions on names that are not there are left out (a rule says so)."""
    opened, closed, off, on, shed = set(), set(), set(), set(), set()
    transfer: dict[str, str] = {}
    scale: dict[str, float] = {}
    for action in scenario.actions:
        keys = [f.key for f in feeders_named(model, action.source.text, action.target.text if action.target else None)]
        name = action.source.name
        if action.verb == "open":
            opened.update(keys)
        elif action.verb == "close":
            closed.update(keys)
        elif action.verb == "off":
            off.add(name)
        elif action.verb == "on":
            on.add(name)
        elif action.verb == "switch" and action.source.port:
            equipment = model.equipment.get(name)
            if equipment is None or equipment.kind != "ups" or has_bypass(model, equipment):
                transfer[name] = action.source.port
        elif action.verb == "shed":
            shed.update(keys or [name])
        elif action.verb == "scale" and action.value is not None and isinstance(action.value.data, float):
            for key in keys or [name]:
                scale[key] = action.value.data
    label = scenario.name.text if scenario.name else "scenario"
    return SwitchState(
        label,
        frozenset(opened),
        frozenset(closed),
        frozenset(off),
        frozenset(on),
        tuple(sorted(transfer.items())),
        frozenset(shed),
        tuple(sorted(scale.items())),
    )


def feeders_named(model: Model, source: str, target: str | None) -> list[Feeder]:
    """The feeders that ``FROM -> TO`` or a label means; empty where none does."""
    if target is None:
        feeder = model.feeders.get(source)
        return [feeder] if feeder is not None else []
    base = source.split(".")[0]
    return [
        f
        for f in model.feeders_from.get(base, ())
        if f.target.text == target and (f.source.text == source or f.source.name == source)
    ]


def two_sided(equipment: Equipment) -> bool:
    """Whether power goes in on one side and out, as another system, on the other."""
    return equipment.kind in _TWO_SIDED or equipment.arrow


def makes_system(equipment: Equipment) -> bool:
    """Whether it can carry an island by itself: a source that does not need another one's voltage to follow."""
    if equipment.kind == "inverter":
        return "grid-forming" in equipment.body.flags and not equipment.arrow
    return equipment.kind in _SOURCE_RANK and not equipment.arrow


def on_bypass(equipment: Equipment, state: SwitchState) -> bool:
    """Whether it is a UPS that stands on its bypass: what arrives there goes through, and nothing is converted."""
    return equipment.kind == "ups" and state.port_of(equipment.name) == BYPASS


def has_bypass(model: Model, equipment: Equipment) -> bool:
    """Whether a UPS has a feeder at the input of its bypass."""
    feeders = model.feeders_to.get(equipment.name, ()) if equipment.kind == "ups" else ()
    return any(feeder.target.port == BYPASS for feeder in feeders)


def entered_side(equipment: Equipment, port: str | None) -> SystemRef | None:
    """The side of equipment that a feeder to this port of it meets: the bypass of a UPS leads to its output."""
    return equipment.secondary if port == BYPASS and equipment.arrow else equipment.primary


def follows_grid(equipment: Equipment) -> bool:
    """Whether it delivers power only into a voltage that another source holds (a following inverter)."""
    return equipment.kind == "inverter" and not makes_system(equipment) and not equipment.arrow


def is_source(equipment: Equipment) -> bool:
    """Whether it delivers power of its own (following inverters too)."""
    return equipment.kind in _SOURCE_RANK


def can_feed(equipment: Equipment) -> bool:
    """Whether feeders may leave it."""
    return equipment.kind not in _LOADS or equipment.arrow


class NoSuchStateError(KeyError):
    """The model has no scenario, and no switch state, of this name."""


def claims_parallel(equipment: Equipment, feeder: Feeder) -> bool:
    """Whether ``claim parallel`` stands at the feeder or at what it feeds."""
    claims = (*feeder.statement.claims, *(c for _, s in equipment.chain for c in s.claims))
    return any(claim.name == "parallel" for claim in claims)


@dataclass(slots=True)
class Network:
    """What feeds what in one switch state.

    ``supply`` maps a name to the feeder that supplies it and ``supplier`` to the name at that feeder's other end (a
    following inverter takes its voltage from the board that it feeds into); ``others`` to further closed feeders that
    arrive there; ``root`` to the source it hangs on; ``order`` lists names with every supplier before what it supplies.
    """

    state: SwitchState
    supply: dict[str, Feeder] = field(default_factory=dict)
    supplier: dict[str, str] = field(default_factory=dict)
    others: dict[str, list[Feeder]] = field(default_factory=dict)
    root: dict[str, str] = field(default_factory=dict)
    depth: dict[str, int] = field(default_factory=dict)
    order: list[str] = field(default_factory=list)

    def fed(self, name: str) -> bool:
        return name in self.root

    def path(self, name: str) -> list[Feeder]:
        """The feeders from the source to ``name``, source first."""
        found: list[Feeder] = []
        while name in self.supply and len(found) <= len(self.supply):
            found.append(self.supply[name])
            name = self.supplier[name]
        return found[::-1]

    def twin(self) -> Network:
        """The same once more, in which feeders are replaced apart from this one."""
        return Network(
            self.state, self.supply.copy(), self.supplier, self.others.copy(), self.root, self.depth, self.order
        )

    def replace(self, feeder: Feeder) -> None:
        """Put an edited feeder of unchanged ends in the place of the one before."""
        for name in (feeder.target.name, feeder.source.name):
            supply = self.supply.get(name)
            if supply is not None and supply.key == feeder.key:
                self.supply[name] = feeder
        others = self.others.get(feeder.target.name)
        if others is not None:
            self.others[feeder.target.name] = [feeder if f.key == feeder.key else f for f in others]

    def above(self, name: str) -> Iterable[str]:
        """The names above, nearest first."""
        count = 0
        while name in self.supply and count <= len(self.supply):
            name = self.supplier[name]
            count += 1
            yield name


def arrives_at_inactive_port(equipment: Equipment, feeder: Feeder, state: SwitchState) -> bool:
    """Whether a feeder ends at an input that the switch does not stand on."""
    port = feeder.target.port
    if equipment.kind in _SWITCHING:
        return (port or NORMAL) != state.port_of(equipment.name)
    return port == BYPASS or (port is not None and port.startswith("dc"))


def build(model: Model, state: SwitchState = NORMAL_STATE) -> Network:
    """Follow every closed feeder from the sources. Utilities come first, then generators, then forming inverters."""
    network = Network(state)
    sources = [e for e in model.equipment.values() if e.kind in _SOURCE_RANK]
    followers = any(map(follows_grid, sources))
    roots = sorted(
        (e for e in sources if makes_system(e) and e.name not in state.off),
        key=lambda e: (_SOURCE_RANK[e.kind], e.name),
    )
    rank = 0
    while rank < len(roots):
        kind = roots[rank].kind
        same = [e for e in roots[rank:] if e.kind == kind]
        rank += len(same)
        _spread(model, network, [e for e in same if e.name not in network.root], state, followers)
    _spread_backwards(model, network, state, followers)
    _collect_others(model, network, state)
    return network


def _spread(model: Model, network: Network, roots: list[Equipment], state: SwitchState, followers: bool) -> None:
    for equipment in roots:
        network.root[equipment.name] = equipment.name
        network.depth[equipment.name] = 0
    _spread_from(model, network, deque(equipment.name for equipment in roots), state, followers)


def _spread_backwards(model: Model, network: Network, state: SwitchState, followers: bool) -> None:
    """A tie that a switch state closes feeds whichever of its ends is dead, also the one it is written from."""
    pending = sorted(state.closed_feeders)
    while True:
        for key in pending:
            tie = model.feeders.get(key)
            if tie is None or not tie.normally_open or not state.closed(tie):
                continue
            dead, live = model.equipment.get(tie.source.name), tie.target.name
            if dead is None or dead.name in network.root or live not in network.root:
                continue
            if makes_system(dead) or two_sided(dead) or dead.kind == "transfer":
                continue
            network.root[dead.name] = network.root[live]
            network.depth[dead.name] = network.depth[live] + 1
            network.supply[dead.name], network.supplier[dead.name] = tie, live
            _spread_from(model, network, deque([dead.name]), state, followers)
            break
        else:
            return


def _spread_from(model: Model, network: Network, queue: deque[str], state: SwitchState, followers: bool) -> None:
    """``followers``: the model has following inverters, so that feeders are also looked at against their direction."""
    root, depth, supply, supplier, order = (
        network.root, network.depth, network.supply, network.supplier, network.order,
    )  # fmt: skip
    equipment_of, feeders_from, closed, off = model.equipment, model.feeders_from, state.closed, state.off
    while queue:
        name = queue.popleft()
        order.append(name)
        feeders = feeders_from.get(name)
        if feeders:
            source_root, below = root[name], depth[name] + 1
            for feeder in sorted(feeders, key=_key_of) if len(feeders) > 1 else feeders:
                end = feeder.target
                target = equipment_of.get(end.name)
                if target is None or end.name in root or not closed(feeder):
                    continue
                kind = target.kind
                if kind in _SOURCE_RANK and (makes_system(target) or (end.name in off and follows_grid(target))):
                    continue
                if (end.port is not None or kind in _SWITCHING) and arrives_at_inactive_port(target, feeder, state):
                    continue
                root[end.name] = source_root
                depth[end.name] = below
                supply[end.name] = feeder
                supplier[end.name] = name
                queue.append(end.name)
        if not followers:
            continue
        for feeder in in_order(model.feeders_to.get(name, _NONE)):
            source = equipment_of.get(feeder.source.name)
            if source is None or source.name in root or not follows_grid(source) or not state.closed(feeder):
                continue
            if source.name in state.off:
                continue
            root[source.name] = root[name]
            depth[source.name] = depth[name] + 1
            supply[source.name] = feeder
            network.supplier[source.name] = name
            network.order.append(source.name)


def in_order(feeders: list[Feeder]) -> list[Feeder]:
    """Feeders in an order that neither the place of a line nor the history of edits decides."""
    return sorted(feeders, key=_key_of) if len(feeders) > 1 else feeders


_key_of = attrgetter("key")
_NONE: list[Feeder] = []


def _collect_others(model: Model, network: Network, state: SwitchState) -> None:
    for name, feeders in model.feeders_to.items():
        target = model.equipment.get(name)
        if target is None or len(feeders) < (1 if makes_system(target) else 2):
            continue
        chosen = network.supply.get(name)
        extra = [
            f
            for f in feeders
            if f is not chosen
            and f.source.name != name  # a feeder to itself feeds nothing
            and network.supply.get(f.source.name) is not f  # it feeds backwards: a tie, a following inverter
            and state.closed(f)
            and f.source.name in model.equipment
            and not arrives_at_inactive_port(target, f, state)
        ]
        if extra:
            network.others[name] = in_order(extra)


def structure_key(equipment: Equipment) -> tuple[object, ...]:
    """What about a piece of equipment matters to connectivity: when it stays equal, the network stays."""
    return (equipment.kind, equipment.arrow, "grid-forming" in equipment.body.flags)


class FeederStructure(NamedTuple):
    """What about a feeder matters to connectivity."""

    key: str
    source: str
    source_port: str | None
    target: str
    target_port: str | None
    normally_open: bool


def feeder_structure_key(feeder: Feeder) -> FeederStructure:
    source, target = feeder.source, feeder.target
    return FeederStructure(feeder.key, source.name, source.port, target.name, target.port, feeder.normally_open)
