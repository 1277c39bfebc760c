"""What the conductor-level network consists of: buses, their conductors, and what connects them.

Every leg, neutral and protective conductor of every bus is a node; earth is node 0 and the reference.  Elements are
kept in columns, ready to be stamped in bulk by :mod:`.assemble`.  All values are SI: ohm, siemens, volt, ampere, VA.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

EARTH = 0
"""Node number of earth, the reference of every voltage."""

LINK_OHM = 1e-9
"""Resistance by which sources without impedance share that links put in parallel; at 50 kA it drops 0.05 mV."""

Pair = tuple[int, int]
"""Two nodes; the first is the positive (or dotted) end."""


@dataclass(frozen=True, slots=True)
class Bus:
    """A place where conductors are at one potential each; `nodes` runs parallel to `conductors`."""

    index: int
    name: str
    conductors: tuple[str, ...]
    nodes: tuple[int, ...]

    def __getitem__(self, conductor: str) -> int:
        """Node of one conductor; "E" is earth unless the bus has a conductor of that name.  KeyError if absent."""
        try:
            return self.nodes[self.conductors.index(conductor)]
        except ValueError:
            if conductor == "E":
                return EARTH
            raise KeyError(f"bus {self.name} has conductors {' '.join(self.conductors)}, not {conductor}") from None

    def pick(self, conductors: Sequence[str]) -> tuple[int, ...]:
        """Nodes of several conductors, in the order asked for."""
        asked, nodes = tuple(conductors), self.nodes
        if asked == self.conductors:
            return nodes
        places = _places(self.conductors, asked)
        if places is None:
            return tuple([self[conductor] for conductor in asked])
        return tuple([nodes[place] if place >= 0 else EARTH for place in places])

    def pair(self, conductors: Sequence[str]) -> Pair:
        """Nodes of two conductors, the first positive."""
        plus, minus = conductors
        return self[plus], self[minus]


@lru_cache(maxsize=1024)
def _places(conductors: tuple[str, ...], asked: tuple[str, ...]) -> tuple[int, ...] | None:
    """Where conductors stand among those of a bus, -1 for earth; None where one is not there."""
    if not all(name in conductors or name == "E" for name in asked):
        return None
    return tuple(conductors.index(name) if name in conductors else -1 for name in asked)


@dataclass(slots=True)
class LineGroup:
    """All coupled lines of one conductor count k; one entry a line in every list."""

    names: list[str] = field(default_factory=list)
    from_nodes: list[tuple[int, ...]] = field(default_factory=list)
    to_nodes: list[tuple[int, ...]] = field(default_factory=list)
    z_ohm: list[tuple[complex, ...]] = field(default_factory=list)
    """k*k entries, row by row."""
    charging_s: dict[int, tuple[complex, ...]] = field(default_factory=dict)
    """Total shunt admittance to earth (k*k) of the few lines that state it, by position in the lists."""
    inverted: Any = field(default=None, compare=False, repr=False)
    """The impedances that were inverted last, as they stood in the list, with their inverses: for all variants."""


@dataclass(slots=True)
class Branches:
    """Unknown branch currents and the law of each: sum(coefficient * V) - sum(Z * i) = -E.

    A branch leaves node n with `coefficient` times its current.  Transformer windings and sources are of this form,
    which keeps zero impedances exact.
    """

    element: list[int] = field(default_factory=list)
    """For each branch, the number of the element it belongs to."""
    incidence: list[tuple[int, int, float]] = field(default_factory=list)
    """(branch, node, coefficient)"""
    impedance: list[tuple[int, int, complex]] = field(default_factory=list)
    """(branch, branch, Z in ohm)"""
    emf: dict[int, complex] = field(default_factory=dict)
    """Electromotive force in V of the branches that have one."""

    def __len__(self) -> int:
        return len(self.element)


@dataclass(frozen=True, slots=True)
class Core:
    """An ideal core with series impedances; its branch currents are secondary currents referred to the primary."""

    name: str
    primary: Pair
    secondaries: tuple[Pair, ...]
    ratios: tuple[float, ...]
    """Primary turns over secondary turns, tap included, one a secondary."""
    first_branch: int
    z_primary_ohm: complex
    z_secondary_ohm: tuple[complex, ...]


@dataclass(frozen=True, slots=True)
class Source:
    """Voltages behind impedance: branch j drives `plus[j]` against `minus[j]`; `z_ohm` is k*k for fault studies."""

    name: str
    plus: tuple[int, ...]
    minus: tuple[int, ...]
    z_ohm: tuple[complex, ...]
    z_flow_ohm: tuple[complex, ...]
    first_branch: int


@dataclass(slots=True)
class Loads:
    """Loads on node pairs, in columns.  S is drawn at `v_nominal`; shares of constant P, I and Z add up to 1."""

    names: list[str] = field(default_factory=list)
    pairs: list[Pair] = field(default_factory=list)
    s_va: list[complex] = field(default_factory=list)
    v_nominal: list[float] = field(default_factory=list)
    shares: list[tuple[float, float, float]] = field(default_factory=list)
    limit_a: list[float] = field(default_factory=list)
    kept: dict[str, Any] = field(default_factory=dict, compare=False, repr=False)
    """What is made of all but the VA: loads with the same pairs and laws share it."""

    def add(
        self,
        name: str,
        pair: Pair,
        s_va: complex,
        v_nominal: float,
        shares: tuple[float, float, float],
        limit_a: float = float("inf"),
    ) -> None:
        """Add a load. ValueError for one that follows no law."""
        if v_nominal <= 0:
            raise ValueError(f"load {name}: a nominal voltage above zero is needed")
        if abs(sum(shares) - 1.0) > 1e-9:
            raise ValueError(f"load {name}: the shares of constant power, current and impedance must add up to 1")
        if self.kept:  # others may share the columns
            self.names, self.pairs, self.v_nominal = list(self.names), list(self.pairs), list(self.v_nominal)
            self.shares, self.limit_a, self.kept = list(self.shares), list(self.limit_a), {}
        self.names.append(name)
        self.pairs.append(pair)
        self.s_va.append(s_va)
        self.v_nominal.append(v_nominal)
        self.shares.append(shares)
        self.limit_a.append(limit_a)

    def with_power(self, s_va: list[complex]) -> Loads:
        """The same loads drawing other VA."""
        self.kept.setdefault("shared", True)
        return Loads(self.names, self.pairs, s_va, self.v_nominal, self.shares, self.limit_a, self.kept)

    def picked(self, places: Sequence[int]) -> Loads:
        """Some of the loads."""
        columns = (self.names, self.pairs, self.s_va, self.v_nominal, self.shares, self.limit_a)
        return Loads(*([column[k] for k in places] for column in columns))  # type: ignore[arg-type]


@dataclass(frozen=True, slots=True)
class Motor:
    """A machine that feeds a fault: passive admittance in the fault study, absent from the load flow.

    `nodes` holds three legs (Z1, Z2; Z0 infinite) or one node pair (Z1 only).
    """

    name: str
    nodes: tuple[int, ...]
    z1_ohm: complex
    z2_ohm: complex


@dataclass(frozen=True, slots=True)
class FaultCurrentSource:
    """A converter that adds a fixed positive-sequence current during a fault (IEC 60909-0:2016)."""

    name: str
    legs: tuple[int, ...]
    current_a: float
