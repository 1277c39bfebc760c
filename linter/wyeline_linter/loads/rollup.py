"""The loads of a whole model in one switch state, added up from the last circuit to the sources, and kept under edits.

What goes up is never a child's demand but its loads by class, so that at every place a demand factor is applied once,
over all that hangs below.
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Iterable, Iterator
from functools import lru_cache
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder, Model
from wyeline_linter.derive import LOAD_KINDS, NOT_FED, Derivation, EquipmentState
from wyeline_linter.loads.as_given import limit_va
from wyeline_linter.loads.buckets import VA, Key, Largest, Rows
from wyeline_linter.loads.coincidence import left_out, relates, relations_of
from wyeline_linter.loads.demand import Counted, count
from wyeline_linter.loads.drawn_above import drawn_above, system_of
from wyeline_linter.loads.dwelling import all_dwellings, as_dwelling, is_covered
from wyeline_linter.loads.dwellings_together import Unit, as_together, carries_several
from wyeline_linter.loads.leaves import Leaf
from wyeline_linter.loads.measured import (
    NOT_LISTED,
    all_measured,
    as_measured,
    lists_nothing,
    new_of,
    stands,
    without_reasons,
)
from wyeline_linter.loads.measured import WORD as MEASURED_WORD
from wyeline_linter.loads.mentioned_tags import mentioned_tags
from wyeline_linter.loads.nodes import Sum
from wyeline_linter.loads.of_circuits import circuit_leaves
from wyeline_linter.loads.of_equipment import equipment_leaf, is_converter
from wyeline_linter.loads.state_shares import shares_in
from wyeline_linter.loads.stated_factors import held_to_limit, stated_factor
from wyeline_linter.loads.third_harmonics import Restated, restated_at
from wyeline_linter.loads.through_cores import Through, through_of
from wyeline_linter.network import Network, follows_grid, on_bypass
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.systems import System
from wyeline_linter.tables import UnknownBasisError
from wyeline_linter.tables.basis import Basis, basis

if TYPE_CHECKING:
    from wyeline_linter.loads.winding_loads import WindingLoad

_NOT_COUNTED = frozenset({"future", "demolish"})


class Node(NamedTuple):
    """The loads at one piece of equipment.

    ``leaves`` are its own loads; ``below`` is what it carries on its bus or output; ``up`` what it draws from its
    supply; ``twice`` names stated factors below a place that states one too. ``factor`` is the one stated here, and
    ``limited`` the share that a limit leaves of vehicle chargers; both are in ``below`` already. ``became`` says which
    kind of load the calculation of a dwelling makes of which. ``third`` is the share of third harmonic stated here for
    all that it carries, in ``below`` already, ``above`` what is left of it on the side of its supply, in ``up``.
    """

    name: str
    leaves: tuple[Leaf, ...]
    below: Sum
    up: Sum
    twice: tuple[str, ...]
    factor: float | None = None
    limited: float = 1.0
    became: dict[Key, Key] = {}  # noqa: RUF012 (of a NamedTuple: never changed)
    third: Restated | None = None
    above: Restated | None = None


class LoadBook:
    """Every load of a model in one switch state; ``update`` works out anew only what hangs on a change.

    ``like``: a book of another switch state of the same model; then only what the network lists in its order is added
    up, and what hangs together alike there is taken over.
    """

    def __init__(self, model: Model, network: Network, derivation: Derivation, *, like: LoadBook | None = None) -> None:
        self.model = model
        self.derivation = derivation
        self.nodes: dict[str, Node] = {}
        self.runs = 0
        """How many pieces of equipment were added up so far: tests prove with it what an edit did not touch."""
        self._own: dict[str, tuple[tuple[Leaf, ...], Sum]] = {}
        self._counted: dict[str, tuple[Node, Counted]] = {}
        self._counted_above: dict[str, tuple[Node, Counted]] = {}
        self.windings: dict[str, tuple[tuple[object, ...], list[WindingLoad]]] = {}
        """What `winding_loads` keeps of each transformer, with what it was worked out from."""
        self._by_place: dict[str, tuple[tuple[Leaf, ...], dict[str, Leaf]]] = {}
        self.mentions: dict[str, dict[str, str]] = {}
        """By board: tags that the descriptions of its loaded circuits mention, with the circuit's key."""
        self._take(network)
        self._like = like
        self.all()

    def twin(self, model: Model, network: Network, derivation: Derivation) -> LoadBook:
        """The same of a twin of the model. What is added up is shared: it is replaced, never changed."""
        made = object.__new__(LoadBook)
        for name, held in vars(self).items():
            setattr(made, name, held.copy() if isinstance(held, dict) else held)
        made.model, made.network, made.derivation = model, network, derivation
        return made

    def slim(self) -> None:
        """Let go of what is made again when asked for."""
        self._counted.clear()
        self._counted_above.clear()
        self.windings.clear()

    # building

    def _take(self, network: Network) -> None:
        self.network = network
        children: dict[str, list[str]] = {}
        for name, above in network.supplier.items():
            equipment = self.model.equipment.get(name)
            if equipment is not None and (equipment.kind != "inverter" or not follows_grid(equipment)):
                children.setdefault(above, []).append(name)
        for names in children.values():
            names.sort()
        self.children = children
        self._shares = shares_in(self.network)

    def all(self) -> None:
        """Add up everything anew."""
        self.basis = _basis(self.model.basis)
        self.practice = self.derivation.practice
        self.nodes.clear()
        self._own.clear()
        self._counted.clear()
        self._counted_above.clear()
        self.mentions.clear()
        self.relations = relations_of(self.model.equipment.values())
        self.running = self._running()
        self._find_dwellings_and_measured()
        for name in reversed(self.network.order):
            if name in self.model.equipment:
                self.nodes[name] = self._taken_over(name) or self._node(name)
        if self._like is not None:
            if not (self.relations.stands_by or self.relations.excludes):
                self._counted.update(self._like._counted)
                self._counted_above.update(self._like._counted_above)
            return
        for name in self.model.equipment:
            if name not in self.nodes:
                self.nodes[name] = self._node(name)

    def _taken_over(self, name: str) -> Node | None:
        """The node of the other switch state, where all that it follows from is the same."""
        like = self._like
        node = like.nodes.get(name) if like is not None else None
        if like is None or node is None or self.network.supply.get(name) is not like.network.supply.get(name):
            return None
        children = self.children.get(name, [])
        if children != like.children.get(name, []) or self.share(name) != like.share(name):
            return None
        if (name in self.behind) != (name in like.behind) or (name in self.apart) != (name in like.apart):
            return None
        if any(self.nodes.get(child) is not like.nodes.get(child) for child in children):
            return None
        if self.converts(name) and self.running != like.running:
            return None
        here, there = self.derivation.states.get(name), like.derivation.states.get(name)
        if here is there:
            return node
        if here is None or there is None or here.system != there.system or here.arriving != there.arriving:
            return None
        return node if here.winding == there.winding else None

    def update(self, names: Iterable[str], network: Network | None = None) -> set[str]:
        """Work these out again and what hangs on them upwards, while results differ; returns the names that changed.

        ``names`` are the equipment whose statement, voltage or feeders changed, those that went included.
        """
        touched = set(names)
        changed: set[str] = set()
        again: set[str] = set(touched)
        if network is not None and network is not self.network:
            before, shares = self.network.supplier, self._shares
            self._take(network)
            for name in shares.keys() | self._shares.keys():
                if shares.get(name, 1.0) != self._shares.get(name, 1.0):
                    self._own.pop(name, None)
                    again.add(name)
            for name in before.keys() | network.supplier.keys():
                if before.get(name) != network.supplier.get(name):
                    again.update(n for n in (name, before.get(name), network.supplier.get(name)) if n is not None)
        for name in touched:
            self._own.pop(name, None)
            self.mentions.pop(name, None)
            if name not in self.model.equipment and self.nodes.pop(name, None) is not None:
                self._forget_counted(name)
                changed.add(name)
        again |= self._relations_again(touched, network is not None)
        again |= self._dwellings_and_measured_again(touched, network is not None)
        depth = self.network.depth
        heap = [(-depth.get(name, 1 << 30), name) for name in again if name in self.model.equipment]
        heapq.heapify(heap)
        queued = {name for _, name in heap}
        while heap:
            _, name = heapq.heappop(heap)
            old, new = self.nodes.get(name), self._node(name)
            if old is not None and old == new:
                continue
            self.nodes[name] = new
            changed.add(name)
            above = self.network.supplier.get(name)
            if (
                above is not None
                and above not in queued
                and (old is None or old.up != new.up or old.below != new.below)
            ):
                queued.add(above)
                heapq.heappush(heap, (-depth.get(above, 1 << 30), above))
        return changed

    def _relations_again(self, touched: set[str], rewired: bool) -> set[str]:
        """Who must be looked at again because loads exclude each other otherwise than before."""
        old = self.relations
        concerned = any(old.concerns(n) or relates(self.model.equipment.get(n)) for n in touched)
        if not concerned and not (rewired and (old.stands_by or old.excludes)):
            return set()
        self.relations = relations_of(self.model.equipment.values())
        running = self._running()
        if self.relations == old and running == self.running:
            return set()
        self.running = running
        names = set(self.relations.excludes) | set(old.excludes)
        for stands_by in (self.relations.stands_by, old.stands_by):
            names |= stands_by.keys() | {main for mains in stands_by.values() for main in mains}
        for name in names:
            self._own.pop(name, None)
        again = names | {name for name, node in self.nodes.items() if node.below.held}
        for name in again:
            self._forget_counted(name)
        return again

    def units_of(self, name: str) -> dict[str, Unit]:
        """The dwellings below a board, each with its loads."""
        below = sorted(self.dwellings.intersection(self.below(name)) - {name})
        systems = {unit: self.system(unit) for unit in below if unit in self.nodes}
        return {
            unit: Unit(self.nodes[unit].below.rows, system.legs if system is not None else ())
            for unit, system in systems.items()
        }

    def _together(self, board: Equipment, below: Sum) -> tuple[Sum, dict[Key, Key]]:
        units = self.units_of(board.name)
        methods = {self.model.equipment[unit].body.text("dwelling") for unit in units}
        return as_together(below, board, units, self.system(board.name), self.basis, standard=methods == {"standard"})

    def _find_dwellings_and_measured(self) -> None:
        equipment = self.model.equipment
        self.dwellings, self.within = all_dwellings(equipment.values(), self.basis, self.below)
        self.measured, self.behind = all_measured(equipment.values(), self.below)
        existing = [name for name in self.dwellings if equipment[name].body.text("dwelling") == "existing"]
        self.apart = self.behind.union(inside for name in existing for inside in self.below(name))
        """Where what is new is told from what stands already."""

    def _dwellings_and_measured_again(self, touched: set[str], rewired: bool) -> set[str]:
        """Who must be looked at again because it lies within a dwelling, or behind a measurement, now or no more."""
        equipment = self.model.equipment
        said = any(
            n in self.dwellings or n in self.measured
            or (n in equipment and not equipment[n].body.facts.keys().isdisjoint(("dwelling", MEASURED_WORD)))
            for n in touched
        )  # fmt: skip
        if not said and not (rewired and (self.dwellings or self.measured)):
            return set()
        within, behind, apart = self.within, self.behind, self.apart
        self._find_dwellings_and_measured()
        again = set((within ^ self.within) | (behind ^ self.behind) | (apart ^ self.apart))
        for name in again:
            self._own.pop(name, None)
        return again

    def _forget_counted(self, name: str) -> None:
        self._counted.pop(name, None)
        self._counted_above.pop(name, None)

    def _running(self) -> frozenset[str]:
        """Of the loads that have relations, those in service."""
        relations = self.relations
        names = set(relations.excludes) | relations.stands_by.keys()
        names |= {main for mains in relations.stands_by.values() for main in mains}
        return frozenset(
            name for name in names if name in self.model.equipment and self.network.fed(name) and not self.is_off(name)
        )

    def is_off(self, name: str) -> bool:
        """Whether it is shed in this switch state, or counts for nothing because it is future or to be removed."""
        return self.share(name) == 0.0 or self.is_gone(self.model.equipment[name], self.network.supply.get(name))

    def converts(self, name: str) -> bool:
        """Whether what it draws follows from what it feeds by conversion; a UPS on its bypass passes on what comes."""
        equipment = self.model.equipment[name]
        return is_converter(equipment, bool(self.children.get(name))) and not on_bypass(equipment, self.network.state)

    @staticmethod
    def is_gone(equipment: Equipment, feeder: Feeder | None) -> bool:
        """Whether it counts for nothing because it, or what feeds it, is future or to be removed."""
        if not _NOT_COUNTED.isdisjoint(equipment.body.flags):
            return True
        return feeder is not None and not _NOT_COUNTED.isdisjoint(feeder.body.flags)

    # one piece of equipment

    def _node(self, name: str) -> Node:
        self.runs += 1
        equipment = self.model.equipment[name]
        state = self.derivation.states.get(name)
        feeder = self.network.supply.get(name)
        children = self.children.get(name, ())
        own = self._own.get(name)
        if own is None or equipment.kind == "drive":
            own = self._own[name] = self._own_sum(equipment, state, children)
        leaves, below = own
        feeds = equipment.kind not in LOAD_KINDS or equipment.arrow or not leaves
        if children and feeds:
            below = below.copy()
            for child in children:
                node = self.nodes.get(child)
                if node is not None:
                    below.add(node.up)
        if name in self.behind and lists_nothing(equipment, [self.network.supply.get(child) for child in children]):
            below = below.copy()
            below.unknown = merge_reasons(below.unknown, (NOT_LISTED.format(name),))
        twice: tuple[str, ...] = ()
        factor, limited = None, 1.0
        became: dict[Key, Key] = {}
        unit = name in self.dwellings
        if unit:
            system, share = self.system(name), self.share(name)
            leaves, below, became = as_dwelling(equipment, self.basis, leaves, below, system, self._counting, share)
        elif carries_several(equipment, self.basis):
            below, became = self._together(equipment, below)
        if name in self.measured:
            leaves, below = as_measured(equipment, leaves, below, self.system(name), self.share(name))
        if unit or not leaves or equipment.circuits or name in self.measured:
            factor, source = (None, "") if unit else stated_factor(equipment, feeder)
            if factor is not None:
                twice = below.factored
                below = below.with_factor(factor, source)
            limit = self._limit(equipment, feeder, state)
            if limit is not None:
                below, limited = held_to_limit(below, limit, source or name)
        third, above = restated_at(equipment, feeder, state, through_of(state), converts=self.converts(name))
        below = below if third is None else below.restated(third)
        up = drawn_above(self, equipment, state, below)
        up = up if above is None else up.restated(above)
        if self.is_gone(equipment, feeder):
            apart, up = up.apart_va + _total_va(up), Sum()
            up.apart_va = apart
        if up.new is not None and feeder is not None and not stands(feeder.body.flags):
            up = up.copy()
            up.new = None  # who was fed otherwise, or not at all, when something further up was measured
        self._forget_counted(name)
        return Node(name, leaves, below, up, twice, factor, limited, became, third, above)

    def _counting(self, added: Sum) -> Rows:
        """The rows of a sum without what others run in place of."""
        held = {n: h.va for n, h in added.held.items()}
        return added.counting(left_out(held, self.relations, self.running))[0]

    def _own_sum(
        self, equipment: Equipment, state: EquipmentState | None, children: Iterable[str]
    ) -> tuple[tuple[Leaf, ...], Sum]:
        system, reasons = system_of(state.system if state is not None else NOT_FED)
        leaves: list[Leaf] = []
        if equipment.circuits:
            leaves += circuit_leaves(equipment, system, reasons, self.basis, self.practice)
            if equipment.name in self.within:
                leaves = [one._replace(unknown=(), unknown_code=()) if is_covered(one) else one for one in leaves]
            if equipment.name in self.measured:
                leaves = without_reasons(equipment, leaves)
            mentioned = mentioned_tags(equipment, leaves)
            if mentioned:
                self.mentions[equipment.name] = mentioned
            else:
                self.mentions.pop(equipment.name, None)
        elif equipment.kind in LOAD_KINDS and not is_converter(equipment, bool(list(children))):
            arriving, why = system_of(state.arriving if state is not None and state.arriving is not None else NOT_FED)
            found = equipment_leaf(
                equipment,
                arriving,
                why,
                self.basis,
                self.practice,
                plate=self.derivation.stated(equipment.primary),
                motor_eff=self._motor_eff(children) if equipment.kind == "drive" else None,
            )
            leaves += [found] if found is not None else []
        added = Sum()
        for leaf in leaves:
            added.add_leaf(leaf, alone=self.alone(leaf))
        if equipment.name in self.apart:
            added.new = new_of(equipment, leaves, self.alone)
        share = self.share(equipment.name)
        return tuple(leaves), added if share == 1.0 else added.at_share(share) if share else Sum()

    def alone(self, leaf: Leaf) -> bool:
        """Whether something else excludes it, so that it is held apart."""
        return not leaf.place and self.relations.concerns(leaf.owner)

    def share(self, name: str) -> float:
        """The share of its full load at which it runs in this switch state; 0 where it is shed."""
        return self._shares.get(name, 1.0)

    @property
    def shares(self) -> dict[str, float]:
        """The shares of all that does not run at its full load for this switch state's sake."""
        return self._shares

    def _motor_eff(self, children: Iterable[str]) -> float | None:
        for child in children:
            equipment = self.model.equipment.get(child)
            if equipment is not None and equipment.kind == "motor":
                return equipment.body.number("eff")
        return None

    def _limit(self, equipment: Equipment, feeder: Feeder | None, state: EquipmentState | None) -> float | None:
        for body in (equipment.body, feeder.body if feeder is not None else None):
            if body is not None and "limit" in body.facts:
                system, _ = system_of(state.system if state is not None else NOT_FED)
                return limit_va(body, volt_amperes_per_ampere(system))
        return None

    # answers

    def counted(self, name: str) -> Counted:
        """Connected, demand and sizing load of what a piece of equipment carries. KeyError for an unknown name.

        What is unknown below is not in it: see ``node(name).below.unknown``.
        """
        node = self.nodes[name]
        kept = self._counted.get(name)
        if kept is not None and kept[0] is node:
            return kept[1]
        rows, largest = node.below.counting(self.left_out(name))
        counted = count(rows, largest, self.basis)
        self._counted[name] = (node, counted)
        return counted

    def leaf(self, name: str, place: str = "") -> Leaf | None:
        """The load of a circuit of a board, or of a load with a name of its own; None where there is none."""
        node = self.nodes[name]
        kept = self._by_place.get(name)
        if kept is None or kept[0] is not node.leaves:
            kept = self._by_place[name] = (node.leaves, {leaf.place: leaf for leaf in node.leaves})
        return kept[1].get(place)

    def counted_above(self, name: str) -> Counted:
        """The same on the side of its supply: a transformer's primary, a converter's input."""
        node = self.nodes[name]
        kept = self._counted_above.get(name)
        if kept is not None and kept[0] is node:
            return kept[1]
        rows, largest = self.rows_above(name)
        counted = count(rows, largest, self.basis)
        self._counted_above[name] = (node, counted)
        return counted

    def rows(self, name: str) -> tuple[Rows, Largest | None]:
        """The loads by class that count at a place, and the largest motor among them."""
        return self.nodes[name].below.counting(self.left_out(name))

    def rows_above(self, name: str) -> tuple[Rows, Largest | None]:
        """The same on the side of its supply."""
        up = self.nodes[name].up
        return up.counting(left_out({n: h.va for n, h in up.held.items()}, self.relations, self.running))

    def left_out(self, name: str) -> frozenset[str]:
        """Loads below a place that do not count there, because others run in their place."""
        held = self.nodes[name].below.held
        if not held:
            return frozenset()
        return left_out({n: h.va for n, h in held.items()}, self.relations, self.running)

    def system(self, name: str) -> System | None:
        """The system that the currents of ``counted`` flow in."""
        state = self.derivation.states.get(name)
        return system_of(state.system if state is not None else NOT_FED)[0]

    def through(self, name: str) -> Through | None:
        """How currents pass a transformer; None for what is none, or does not fit."""
        return through_of(self.derivation.states.get(name))

    def below(self, name: str) -> Iterator[str]:
        """A name and all that it supplies, nearest first."""
        pending = [name]
        while pending:
            current = pending.pop()
            yield current
            pending.extend(reversed(self.children.get(current, [])))


@lru_cache(maxsize=256)
def volt_amperes_per_ampere(system: System | None) -> float:
    """VA for each ampere of a balanced load on all legs; 0 where the system is unknown."""
    if system is None or not system.legs:
        return 0.0
    legs = system.legs
    if len(legs) == 3:
        return sum(system.distance(legs[k], legs[(k + 1) % 3]) for k in range(3)) / math.sqrt(3.0)
    other = legs[1] if len(legs) == 2 else "N"
    return system.distance(legs[0], other) if other in system.conductors else 0.0


def _basis(name: str | None) -> Basis | None:
    if name is None:
        return None
    try:
        return basis(name)
    except UnknownBasisError:
        return None


def _total_va(up: Sum) -> float:
    rows, _ = up.counting(())
    return abs(sum((row[VA] for row in rows.values()), 0j))
