"""The switch states that nobody writes down, found in the model: each source, transformer, tie, transfer position and
parallel feeder in turn.

What acts by itself acts: a transfer switch whose input is dead goes to the one that is live. A tie that stands open
closes where that brings back what is dead, and where an interlock says what has to open for it; without an interlock
nothing says whether it may close between two live ends, and it does not. A scenario that describes the same loss
stands in the place of the state found here, because it says what is shed.

Of each state only the *zone* is worked out: the islands in which something is fed in another way than as normal. What
only lost load, or is dead, has no worse figure than it had. A model with one way to everything has no such state.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from functools import partial
from itertools import combinations
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Feeder, Model
from wyeline_grammar.model import EquipmentStatement
from wyeline_linter.near_names import names_in
from wyeline_linter.network import (
    BYPASS,
    NORMAL,
    NORMAL_STATE,
    Network,
    SwitchState,
    arrives_at_inactive_port,
    build,
    claims_parallel,
    feeders_named,
    follows_grid,
    makes_system,
)
from wyeline_linter.studies.scenarios import losses, transferred

if TYPE_CHECKING:
    from wyeline_linter.view import View

MOST_STATES = 40
MOST_PIECES = 40_000
"""How many states found here are worked out, and how many pieces of equipment in all of them together."""
MOST_LOOKED = 400
"""How many are looked at to find them."""
MOST_KEPT = 8
"""Connectivities that are kept while states are looked for."""
MOST_CHOICES = 12
"""Choices of what opens for one tie."""


class Zone(NamedTuple):
    """A state with its connectivity, whose ``order`` holds only what is worked out."""

    state: SwitchState
    network: Network


class Found(NamedTuple):
    """The states that are worked out, and in words what is not."""

    zones: tuple[Zone, ...]
    left_out: tuple[str, ...]


class _Candidate(NamedTuple):
    """What happens first, the states that come of it, and whether a scenario that describes it stands in its place."""

    cause: SwitchState
    states: Callable[[], Iterable[SwitchState]]
    can_be_stated: bool = True


def _itself(state: SwitchState) -> _Candidate:
    return _Candidate(state, lambda: (state,))


def found_states(view: View) -> Found:
    """The states of a model that are looked at beside normal and its scenarios, in a fixed order, bounded in number."""
    finder = _Finder(view)
    zones: list[Zone] = []
    left_out: list[str] = []
    seen: set[frozenset[tuple[str, ...]]] = set()
    pieces = looked = 0
    for candidate in finder.candidates():
        if not seen:
            seen = {_wiring(z.network) for s in finder.scenarios if (z := finder.zone(s)) is not None} | {frozenset()}
        if candidate.can_be_stated and finder.is_stated(candidate.cause):
            continue
        if len(zones) >= MOST_STATES or pieces >= MOST_PIECES or looked >= MOST_LOOKED:
            left_out.append(candidate.cause.name)
            continue
        for state in candidate.states():
            looked += 1
            zone = finder.zone(state)
            wiring = _wiring(zone.network) if zone is not None else frozenset()
            if zone is not None and wiring not in seen:
                seen.add(wiring)
                zones.append(zone)
                pieces += len(zone.network.order)
    return Found(tuple(zones), tuple(left_out))


def state_named(view: View, name: str) -> SwitchState | None:
    """A state by the name that figures give for it, those included that a scenario stands in the place of."""
    for candidate in _Finder(view).candidates():
        if name.startswith(candidate.cause.name):
            for state in candidate.states():
                if state.name == name:
                    return state
    return next((state for state in losses(view) if state.name == name), None)


def state_in(model: Model, name: str) -> SwitchState | None:
    """The same of a model that nothing is derived of yet."""
    from wyeline_linter.derive import Derivation
    from wyeline_linter.view import View

    network = build(model)
    return state_named(View(model, network, Derivation(model, network)), name)


def state_names(view: View) -> list[str]:
    """The names of the states that are worked out."""
    return [zone.state.name for zone in found_states(view).zones]


def unlocked_ties(view: View) -> list[str]:
    """Feeders that stand open and that no interlock names: they never close between two live ends here."""
    named = {key for _, keys in _Finder(view).interlocks for key in keys}
    return sorted(f.key for f in view.model.feeders.values() if f.normally_open and f.key not in named)


def _stands_open(feeder: Feeder) -> bool:
    return "normally-open" in feeder.statement.body.flags


class _Finder:
    def __init__(self, view: View) -> None:
        self.view = view
        self.model = view.model
        self.normal = view.network if view.network.state == NORMAL_STATE else view.network_in(NORMAL_STATE)
        self._networks: dict[SwitchState, Network] = {}
        said_open = view.studies.of_each("stand open", self.model.feeders, _stands_open)
        open_ones = [feeder for feeder, stands_open in said_open if stands_open]
        self.open = sorted(open_ones, key=lambda f: f.key)
        self.transfers = {
            e.name: ports for e in view.of_kind("transfer", "ups") if len(ports := self._ports(e.name)) > 1
        }
        """Transfer switches and UPS with their inputs, where there is a choice."""
        self.parallel = {
            name: feeders
            for name, others in sorted(self.normal.others.items())
            if (feeders := self._parallel(name, others))
        }
        fed = self.normal.root.keys() & self.normal.supply.keys()
        self.followers = [e.name for e in view.of_kind("inverter") if e.name in fed and follows_grid(e)]
        self.interlocks = self._interlocks()
        self.scenarios = [s for s in view.states_of_switches() if s != NORMAL_STATE]

    def _network(self, state: SwitchState) -> Network:
        """Connectivity in a state. Only the last ones are kept: there may be many states of a large model."""
        found = self._networks.get(state)
        if found is None:
            if len(self._networks) >= MOST_KEPT:
                self._networks.clear()
            found = self._networks[state] = build(self.model, state)
        return found

    def _ports(self, name: str) -> dict[str, list[Feeder]]:
        ports: dict[str, list[Feeder]] = {}
        for feeder in self.view.feeders_into(name):
            ports.setdefault(feeder.target.port or NORMAL, []).append(feeder)
        return ports

    def _parallel(self, name: str, others: list[Feeder]) -> list[Feeder]:
        """Closed feeders that arrive at one place together; the wires of inverters that follow are none of them."""
        supply = self.normal.supply.get(name)
        if supply is None or makes_system(self.model.equipment[name]):
            return []
        target = self.model.equipment[name]
        real = [f for f in others if not follows_grid(self.model.equipment[f.source.name])]
        real = [f for f in real if f.source.name in self.normal.root and f.source.name != name]
        real = [f for f in real if claims_parallel(target, f)]
        return [supply, *real] if real else []

    def _interlocks(self) -> list[tuple[int, tuple[str, ...]]]:
        found = []
        for declared in self.model.declared_of("interlock"):
            statement = declared.statement
            if not isinstance(statement, EquipmentStatement) or "among" not in statement.body.facts:
                continue
            named = [f for n in names_in(statement.body.facts["among"]) for f in feeders_named(self.model, n, None)]
            found.append((int(statement.body.number("at-most") or 1), tuple(f.key for f in named)))
        return found

    # candidates

    def candidates(self) -> Iterator[_Candidate]:
        """Every state worth a look, the likely ones first."""
        if not (self.open or self.transfers or self.parallel or self.followers):
            return
        yield from self._positions()
        yield from self._ties()
        for feeders in self.parallel.values():
            for feeder in feeders:
                state = SwitchState(
                    f"with {feeder.key} open", frozenset({feeder.key}), words=f" with `{feeder.key}` open"
                )
                yield _itself(state)
        yield from self._lost()

    def _positions(self) -> Iterator[_Candidate]:
        for name, ports in self.transfers.items():
            for port, feeders in sorted(ports.items()):
                live = any(f.source.name in self.normal.root and NORMAL_STATE.closed(f) for f in feeders)
                if port != NORMAL_STATE.port_of(name) and live:
                    words = f" with `{name}` on its {port}" + ("" if port == BYPASS else " input")
                    state = SwitchState(f"with {name} on {port}", transfer=((name, port),), words=words)
                    yield _itself(state)

    def _ties(self) -> Iterator[_Candidate]:
        for tie in self.open:
            if not any(tie.key in keys for _, keys in self.interlocks) or not self._is_live(tie, self.normal):
                continue
            for opened in self._choices(tie.key, NORMAL_STATE):
                name = f"with {tie.key} closed" + (f" and {' and '.join(opened)} open" if opened else "")
                rest = f" and {listed([f'`{k}`' for k in opened], 'and')} open" if opened else ""
                words = f" with `{tie.key}` closed{rest}"
                state = SwitchState(name, frozenset(opened), frozenset({tie.key}), words=words)
                yield _itself(state)

    def _is_live(self, tie: Feeder, network: Network) -> bool:
        return tie.source.name in network.root or tie.target.name in network.root

    def _choices(self, key: str, state: SwitchState, dead: Network | None = None) -> list[tuple[str, ...]]:
        """What has to open so that a feeder may close: every choice, or with ``dead`` only feeders dead there."""
        choices: list[tuple[str, ...]] = [()]
        for most, keys in self.interlocks:
            if key not in keys:
                continue
            closed = [k for k in keys if k != key and (f := self.model.feeders.get(k)) is not None and state.closed(f)]
            longer: list[tuple[str, ...]] = []
            for chosen in choices:
                left = [k for k in closed if k not in chosen]
                need = len(left) + 1 - most
                if need <= 0:
                    longer.append(chosen)
                    continue
                if dead is not None:
                    left = [k for k in left if self.model.feeders[k].source.name not in dead.root][:need]
                longer += [(*chosen, *more) for more in combinations(left, need)]
            choices = longer[:MOST_CHOICES]
        return choices

    def _lost(self) -> Iterator[_Candidate]:
        if len(self.followers) > 1:
            words = f" without {listed([f'`{n}`' for n in self.followers[:3]], 'and')}"
            words += " and the other inverters" if len(self.followers) > 3 else ""
            state = SwitchState("without inverters", off=frozenset(self.followers), words=words)
            yield _itself(state)._replace(can_be_stated=False)
        elif self.followers:
            name = self.followers[0]
            state = SwitchState(f"without {name}", off=frozenset({name}), words=f" without `{name}`")
            yield _itself(state)._replace(can_be_stated=False)
        above = self._above_ways()
        if not above:
            return
        for name in self.normal.order:
            if name not in above:
                continue
            equipment, feeder = self.model.equipment[name], self.normal.supply.get(name)
            words = f" without `{name}`"
            if makes_system(equipment) and equipment.kind != "battery":
                cause = SwitchState(f"without {name}", off=frozenset({name}), words=words)
            elif equipment.kind == "transformer" and feeder is not None:
                cause = SwitchState(f"without {name}", frozenset({feeder.key}), words=words)
            else:
                continue
            yield _Candidate(cause, partial(self._after, cause))

    def _after(self, cause: SwitchState) -> Iterator[SwitchState]:
        """What comes of a loss: with ties closed, and with none."""
        lost = transferred(self.view, cause)
        yield from self._restored(lost)
        yield lost

    def _above_ways(self) -> set[str]:
        """The names on which something hangs that has another way to be fed."""
        ends: set[str] = set()
        for ports in self.transfers.values():
            ends.update(f.source.name for feeders in ports.values() for f in feeders)
        for tie in self.open:
            ends |= {tie.source.name, tie.target.name}
        for feeders in self.parallel.values():
            ends.update(f.source.name for f in feeders)
        for name in list(ends):
            ends.update(self.normal.above(name))
        return ends

    def _restored(self, lost: SwitchState) -> Iterator[SwitchState]:
        """The state after a loss with ties closed that bring something back, once for each tie that may close first."""
        network = self._network(lost)
        for first in self.open:
            if not self._brings_back(first, network, lost):
                continue
            state, closed = lost, []
            for tie in (first, *self.open):
                now = self._network(state)
                if tie.key in state.closed_feeders or not self._brings_back(tie, now, state):
                    continue
                choices = self._choices(tie.key, state, now)
                if not choices:
                    continue
                closed.append(tie.key)
                state = state._replace(
                    name=f"{lost.name}, {' and '.join(closed)} closed",
                    open_feeders=state.open_feeders | set(choices[0]),
                    closed_feeders=state.closed_feeders | {tie.key},
                    words=f"{lost.words}, {listed([f'`{k}`' for k in closed], 'and')} closed",
                )
            if closed:
                yield state

    def _brings_back(self, tie: Feeder, network: Network, state: SwitchState) -> bool:
        """Whether one end of a tie is live and the other, which is fed as normal, is dead."""
        source, target = tie.source.name, tie.target.name
        end = self.model.equipment.get(target)
        if end is None or source not in self.model.equipment or arrives_at_inactive_port(end, tie, state):
            return False
        live = source in network.root, target in network.root
        dead = target if live[0] else source
        return live[0] != live[1] and dead in self.normal.root

    # what a scenario says already

    def is_stated(self, cause: SwitchState) -> bool:
        """Whether a scenario describes this, so that it says what else happens."""
        return any(
            cause.off <= s.off
            and cause.open_feeders <= s.open_feeders
            and cause.closed_feeders <= s.closed_feeders
            and set(cause.transfer) <= set(s.transfer)
            for s in self.scenarios
        )

    # zones

    def zone(self, state: SwitchState) -> Zone | None:
        """What of a state has to be worked out; None where nothing has."""
        network, normal = self._network(state), self.normal
        changed = {n for n in network.root if network.supply.get(n) is not normal.supply.get(n)}
        for name in network.others.keys() | normal.others.keys():
            if name in network.root and self._arriving(name, network) != self._arriving(name, normal):
                changed.add(name)
        for name in self.followers:
            if name not in network.root and normal.supplier[name] in network.root:
                changed.add(normal.supplier[name])
        changed |= self._partners_of_dead(network)
        if not changed:
            return None
        islands = _islands(network)
        wanted = {islands.get(network.root[n], network.root[n]) for n in changed}
        order = [n for n in network.order if islands.get(network.root[n], network.root[n]) in wanted]
        return Zone(state, replace(network, order=order))

    def _arriving(self, name: str, network: Network) -> set[str]:
        return {f.key for f in network.others.get(name, ()) if f.source.name in network.root}

    def _partners_of_dead(self, network: Network) -> set[str]:
        """Loads that run because the one that excludes them, or that they stand by for, is dead."""
        relations = self.view.loads.relations if self.view.network.state == NORMAL_STATE else None
        if relations is None or not (relations.stands_by or relations.excludes):
            return set()
        found: set[str] = set()
        for name, others in (*relations.stands_by.items(), *relations.excludes.items()):
            if name in network.root and any(n in self.normal.root and n not in network.root for n in others):
                found.add(name)
        return found


def _islands(network: Network) -> dict[str, str]:
    """Root -> one root of the same island: sources that run in parallel are one."""
    island: dict[str, str] = {}

    def top(root: str) -> str:
        while island.get(root, root) != root:
            root = island[root]
        return root

    for name, feeders in network.others.items():
        for feeder in feeders:
            one, two = network.root.get(name), network.root.get(feeder.source.name)
            if one is not None and two is not None and top(one) != top(two):
                island[top(one)] = top(two)
    return {root: top(root) for root in island}


def _wiring(network: Network) -> frozenset[tuple[str, ...]]:
    """How everything in a zone is fed: states with the same have the same figures."""
    wired = set()
    for name in network.order:
        supply = network.supply.get(name)
        others = sorted(f.key for f in network.others.get(name, ()) if f.source.name in network.root)
        wired.add((name, supply.key if supply is not None else "", *others))
    return frozenset(wired)
