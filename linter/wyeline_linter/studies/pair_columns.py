"""Volts between conductors for many buses side by side: drops of feeders, and what stands at equipment.

A row has a pair in each column, as many as its system has, in the order of the system. What follows from the wiring
alone is kept with it, for all variants of a circuit.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from typing import TYPE_CHECKING, NamedTuple, TypeVar

import numpy as np

from wyeline_linter.studies.flow import ALIKE, nominal_pairs
from wyeline_linter.systems import NEUTRAL, System

if TYPE_CHECKING:
    from wyeline_linter.circuit import Bus
    from wyeline_linter.circuit.layout import Bools, Complex, Floats, Ints
    from wyeline_linter.studies.built import Built

T = TypeVar("T")
Pair = tuple[str, str]
LEGS = ("A", "B", "C")
NEUTRAL_AT = 3


class Pairs(NamedTuple):
    """The pairs of many buses: the names, nodes and nominal volts of each, ``there`` where a row has one."""

    names: list[list[Pair]]
    first: Ints
    second: Ints
    nominal_v: Floats
    there: Bools

    def volts(self, v: Complex) -> Floats:
        """Volts of every pair, of voltages by node."""
        size: Floats = np.abs(v[self.first] - v[self.second])
        return size

    def lowest(self, volts: Floats) -> Ints:
        """The pair of each row that stands lowest against its nominal, the first of those alike; -1 without any."""
        if not self.there.shape[1]:
            return np.full(len(volts), -1, dtype=np.int64)
        ninths = np.where(self.there, np.rint(volts / self.nominal_v / ALIKE), np.inf)
        return np.where(self.there[:, 0], np.argmin(ninths, axis=1), -1)


def pairs_of(rows: Iterable[tuple[Bus, System]], beside: Sequence[Bus] | None = None) -> Pairs:
    """The pairs of buses with the system that stands there; ``beside`` limits each to conductors of another bus."""
    listed = list(rows)
    shapes: dict[tuple[tuple[str, ...], int, tuple[str, ...]], tuple[list[Pair], list[int]]] = {}
    for k, (bus, system) in enumerate(listed):
        limit = beside[k].conductors if beside is not None else bus.conductors
        found = shapes.get((bus.conductors, id(system), limit))
        if found is None:
            there_too = [(a, b) for a, b, _ in nominal_pairs(system) if a in limit and b in limit]
            found = shapes[bus.conductors, id(system), limit] = there_too, []
        found[1].append(k)
    width = max((len(pairs) for pairs, _ in shapes.values()), default=0)
    names: list[list[Pair]] = [[] for _ in listed]
    first, second = (np.zeros((len(listed), width), dtype=np.int64) for _ in range(2))
    nominal = np.ones((len(listed), width))
    there = np.zeros((len(listed), width), dtype=np.bool_)
    for pairs, places in shapes.values():
        bus, system = listed[places[0]]
        nodes = np.array([listed[k][0].nodes for k in places], dtype=np.int64)
        for k in places:
            names[k] = pairs
        for column, (a, b) in enumerate(pairs):
            first[places, column] = nodes[:, bus.conductors.index(a)]
            second[places, column] = nodes[:, bus.conductors.index(b)]
            nominal[places, column] = system.distance(a, b)
            there[places, column] = True
    return Pairs(names, first, second, nominal, there)


class Named(NamedTuple):
    """The rows whose pair is known: their places, the names of what they are of, and of the pairs; ``row`` is the row
    of each name."""

    known: Ints
    names: list[str]
    pairs: list[Pair]
    row: dict[str, int]


class Naming:
    """The names of the pairs that decide, kept while the same ones do, as nearly always."""

    def __init__(self, names: list[str], row: dict[str, int], pairs: Pairs) -> None:
        self._names, self._row, self._pairs = names, row, pairs
        self._last: tuple[Ints, Named] | None = None

    def of(self, column: Ints) -> Named:
        """``column`` is that of the pair of each row, -1 where it is unknown."""
        if self._last is not None and np.array_equal(self._last[0], column):
            return self._last[1]
        known = (column >= 0).nonzero()[0]
        pairs = [self._pairs.names[k][at] for k, at in zip(known.tolist(), column[known].tolist(), strict=True)]
        if len(known) == len(self._names):
            found = Named(known, self._names, pairs, self._row)
        else:
            names = [self._names[k] for k in known.tolist()]
            found = Named(known, names, pairs, {name: k for k, name in enumerate(names)})
        self._last = column.copy(), found
        return found


class Drops(NamedTuple):
    """What feeders lose on the pair that loses most: its column (-1: none), V, and the part of nominal."""

    column: Ints
    volts: Floats
    part: Floats


class FeederRows:
    """The feeders of a circuit whose figures can be told, from the end that feeds to the end that is fed.

    ``backwards`` are those that are written the other way round.
    """

    def __init__(self, built: Built, backwards: Collection[str] = ()) -> None:
        unknown, refused = built.unknown, built.recipe.refused
        self.keys = [
            key
            for key, (near, far) in built.ends.items()
            if key in built.lines and key not in refused and near.name not in unknown and far.name not in unknown
        ]
        self.row = {key: k for k, key in enumerate(self.keys)}
        ends = [built.ends[key][::-1] if key in backwards else built.ends[key] for key in self.keys]
        self.backwards: Bools = np.array([key in backwards for key in self.keys], dtype=np.bool_)
        systems = [built.system_at[far.name] for _, far in ends]
        near = [bus for bus, _ in ends]
        self.far = pairs_of(((far, s) for (_, far), s in zip(ends, systems, strict=True)), beside=near)
        self.near_first, self.near_second = self._at_start(near)
        self.naming = Naming(self.keys, self.row, self.far)
        self.at_first, self.at_second = self._conductors()
        self._turns([far for _, far in ends], systems)

    def _at_start(self, near: list[Bus]) -> tuple[Ints, Ints]:
        """The nodes of the same conductors at the end that feeds."""
        first, second = np.zeros_like(self.far.first), np.zeros_like(self.far.second)
        shapes: dict[tuple[tuple[str, ...], int], list[int]] = {}
        for k, bus in enumerate(near):
            shapes.setdefault((bus.conductors, id(self.far.names[k])), []).append(k)
        for (conductors, _), places in shapes.items():
            nodes = np.array([near[k].nodes for k in places], dtype=np.int64)
            for column, (a, b) in enumerate(self.far.names[places[0]]):
                first[places, column] = nodes[:, conductors.index(a)]
                second[places, column] = nodes[:, conductors.index(b)]
        return first, second

    def _conductors(self) -> tuple[Ints, Ints]:
        """Which conductor each end of each pair is, by its place among A, B, C, N."""
        first, second = np.zeros_like(self.far.first), np.zeros_like(self.far.second)
        place = {name: k for k, name in enumerate((*LEGS, NEUTRAL))}
        shapes: dict[int, list[int]] = {}
        for k, names in enumerate(self.far.names):
            shapes.setdefault(id(names), []).append(k)
        for places in shapes.values():
            for column, (a, b) in enumerate(self.far.names[places[0]]):
                first[places, column], second[places, column] = place.get(a, 0), place.get(b, 0)
        return first, second

    def _turns(self, far: list[Bus], systems: list[System]) -> None:
        """The nodes between which the solved voltage shows how far it is turned against nominal, and the legs there."""
        count = len(far)
        self.turn_first, self.turn_second = (np.zeros(count, dtype=np.int64) for _ in range(2))
        self.turn_nominal = np.zeros(count, dtype=np.complex128)
        self.legs = np.zeros((3, count))
        self.neutral = np.zeros(count)
        for k, (bus, system) in enumerate(zip(far, systems, strict=True)):
            if not set(system.legs) <= set(LEGS):
                continue
            one = system.legs[0]
            other = NEUTRAL if system.has_neutral else system.legs[-1]
            self.turn_first[k], self.turn_second[k] = bus[one], bus[other]
            self.turn_nominal[k] = system.potential(one) - system.potential(other)
            self.neutral[k] = system.has_neutral
            for leg in system.legs:
                self.legs[LEGS.index(leg), k] = 1.0

    def turned(self, amps: Complex, v: Complex) -> Complex:
        """Currents at nominal voltage on A, B, C, (3, rows), as the solved voltage turns them; the neutral added."""
        solved = v[self.turn_first] - v[self.turn_second]
        size, nominal = np.abs(solved), np.abs(self.turn_nominal)
        known = (size > 0) & (nominal > 0)
        turn = np.zeros(len(solved), dtype=np.complex128)
        turn[known] = solved[known] / size[known] * nominal[known] / self.turn_nominal[known]
        legs = amps * turn * self.legs
        return np.concatenate((legs, -legs.sum(axis=0, keepdims=True) * self.neutral))

    def drops(self, v: Complex, wires: Complex | None = None, added: Complex | None = None) -> Drops:
        """The drops, of voltages by node; ``added`` are currents (4, rows) beyond the solved ones, and ``wires`` the
        impedance of leg and neutral (2, rows)."""
        at_end = v[self.far.first] - v[self.far.second]
        if added is not None and wires is not None:
            rows = np.arange(len(self.keys))[:, None]
            for at, sign in ((self.at_first, -1.0), (self.at_second, 1.0)):
                ohm = wires[(at == NEUTRAL_AT).astype(np.int64), rows]
                at_end = at_end + sign * (ohm * added[at, rows])
        lost = np.abs(v[self.near_first] - v[self.near_second]) - np.abs(at_end)
        part = lost / self.far.nominal_v
        count, width = lost.shape
        if not width:
            return Drops(np.full(count, -1, dtype=np.int64), np.zeros(count), np.zeros(count))
        column, most = np.zeros(count, dtype=np.int64), part[:, 0].copy()
        for k in range(1, width):
            more = self.far.there[:, k] & (part[:, k] > most + ALIKE)
            column[more], most[more] = k, part[more, k]
        volts = lost[np.arange(count), column]
        return Drops(np.where(self.far.there[:, 0], column, -1), volts, most)


def feeder_rows(built: Built, backwards: frozenset[str] = frozenset()) -> FeederRows:
    """The rows of a circuit, kept with its wiring."""
    return of_wiring(built, f"feeder rows {sorted(backwards)}", lambda: FeederRows(built, backwards))


class BusRows:
    """The pairs at the buses of equipment whose figures can be told."""

    def __init__(self, names: list[str], pairs: Pairs) -> None:
        self.names = names
        self.row = {name: k for k, name in enumerate(names)}
        self.pairs = pairs
        self.naming = Naming(names, self.row, pairs)


def bus_rows(built: Built, *, entering: bool = False) -> BusRows:
    """The rows of all equipment of a circuit, at its output or its input, kept with its wiring."""

    def make() -> BusRows:
        at = {**built.bus, **built.input_bus} if entering else built.bus
        found = [(name, bus) for name, bus in at.items() if bus.name not in built.unknown]
        names = [name for name, _ in found]
        pairs = pairs_of((bus, built.system_at[bus.name]) for _, bus in found)
        return BusRows(names, pairs)

    return of_wiring(built, "inputs" if entering else "buses", make)


def of_wiring(built: Built, what: str, make: Callable[[], T]) -> T:
    """What follows from the wiring of a circuit and what it joins, kept for all variants of it."""
    kept = built.network.wiring
    if what not in kept:
        kept[what] = make()
    return kept[what]  # type: ignore[return-value]
