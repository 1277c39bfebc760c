"""The loads of a load flow in columns: what stands on one pair of conductors of a bus and follows one law is one load.

Where nothing but amounts differs from an earlier version, its buses, pairs and laws are taken over, and what is left is
to multiply each load with the part of it that counts, and to add up.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from wyeline_linter.circuit.elements import Loads, Pair
from wyeline_linter.circuit.layout import Complex, Floats, Ints

if TYPE_CHECKING:
    from wyeline_linter.loads.as_given import Shares
    from wyeline_linter.loads.demand_shares import DemandShares
    from wyeline_linter.loads.leaf_loads import LeafLoad, Piece
    from wyeline_linter.studies.built import Built
    from wyeline_linter.studies.load_pieces import LoadPieces

Label = tuple[tuple[str, str], "Shares"]
"""A pair of conductors and a law: shares of constant power, current, impedance."""


class Grouped(NamedTuple):
    """The loads of one piece of equipment: which of its labels each belongs to, and VA as if it counted in full."""

    labels: list[Label]
    group: list[int]
    va: list[complex]


class Injections(NamedTuple):
    """All loads of a state in columns, one row a load, and where each group of them stands in the circuit."""

    names: list[str]
    grouped: list[Grouped]
    """By piece with loads."""
    first: list[int]
    """The first row of each piece, and the end."""
    group: Ints
    va: Complex
    place: Ints
    """By group: its place among the loads of the circuit, -1 where it has none there."""
    fixed: Loads
    """All that is known of the loads of the circuit but their VA."""

    def loads(self, shares: Floats) -> Loads:
        """The loads of the circuit, of each row the part that counts. What comes to nothing is left out."""
        count = len(self.place)
        total = np.zeros(count, dtype=np.complex128)
        if len(self.group):
            total.real = np.bincount(self.group, self.va.real * shares, count)
            total.imag = np.bincount(self.group, self.va.imag * shares, count)
        s_va = total[self.place >= 0]
        whole = self.fixed.with_power(s_va.tolist())
        return whole if s_va.all() else whole.picked(np.flatnonzero(s_va).tolist())


def grouped(loads: Iterable[LeafLoad]) -> Grouped:
    """The loads of one piece of equipment by pair and law."""
    labels: dict[Label, int] = {}
    group: list[int] = []
    va: list[complex] = []
    for load in loads:
        group.append(labels.setdefault((load.pair, load.shares), len(labels)))
        va.append(load.va)
    return Grouped(list(labels), group, va)


def injections_of(made: Built, names: list[str], parts: list[Grouped], before: Injections | None = None) -> Injections:
    """The columns of the loads on the buses of a circuit; ``before`` are those of an earlier version of it."""
    if before is not None and before.names == names:
        other = [k for k, (a, b) in enumerate(zip(parts, before.grouped, strict=True)) if a is not b]
        if all(
            parts[k].labels == before.grouped[k].labels and parts[k].group == before.grouped[k].group for k in other
        ):
            va = before.va.copy()
            for k in other:
                va[before.first[k] : before.first[k + 1]] = parts[k].va
            return Injections(names, parts, before.first, before.group, va, before.place, before.fixed)
    first, group, va_of, place = [0], [], [], []
    fixed = Loads()
    count = 0
    for name, part in zip(names, parts, strict=True):
        group += [count + k for k in part.group]
        va_of += part.va
        first.append(len(group))
        count += len(part.labels)
        for pair, shares in part.labels:
            place.append(_place(made, fixed, name, pair, shares))
    return Injections(
        names,
        parts,
        first,
        np.array(group, dtype=np.int64),
        np.array(va_of, dtype=np.complex128),
        np.array(place, dtype=np.int64),
        fixed,
    )


def _place(made: Built, fixed: Loads, name: str, pair: tuple[str, str], shares: Shares) -> int:
    bus = made.input_bus.get(name) or made.bus.get(name)
    if bus is None or pair[0] not in bus.conductors or pair[1] not in bus.conductors:
        return -1
    volts = made.system_at[bus.name].distance(*pair)
    mark = f"{name} {'-'.join(pair)} {shares[0]:g}/{shares[1]:g}/{shares[2]:g}"
    nodes: Pair = bus.pair(pair)
    fixed.add(mark, nodes, 0j, volts, shares)
    return len(fixed.names) - 1


class Counting:
    """What of each row counts, by the slots of the demand shares, kept while rows and slots are the same."""

    def __init__(self, pieces: Sequence[Piece], demand: DemandShares, before: Counting | None = None) -> None:
        self.pieces = pieces
        self.slots_of: list[list[int]]
        if before is not None and demand.slots_kept and len(before.pieces) == len(pieces):
            self.slots_of = [
                slots if piece is known else _slots(piece, demand)
                for piece, known, slots in zip(pieces, before.pieces, before.slots_of, strict=True)
            ]
        else:
            self.slots_of = [_slots(piece, demand) for piece in pieces]
        alike = before is not None and self.slots_of == before.slots_of
        self.rows: Ints = (
            before.rows
            if before is not None and alike
            else np.array([slot for slots in self.slots_of for slot in slots], dtype=np.int64)
        )
        of_slots = np.array([*demand.of_slots, 1.0], dtype=np.float64)  # the last is that of a row without a slot
        self.shares: Floats = of_slots[self.rows]
        """The part of each row that counts."""
        self.alike = before is not None and alike and np.array_equal(self.shares, before.shares)
        """Whether each row counts by the part it did before."""


def _slots(piece: Piece, demand: DemandShares) -> list[int]:
    return [-1 if asked is None else demand.slot(*asked) for asked in piece.asked]


def injected(made: Built, loads: Iterable[LeafLoad] | LoadPieces) -> Loads:
    """The loads of a circuit. Columns that its recipe holds of an earlier version are taken over where they hold."""
    running = getattr(loads, "running", None)
    if running is None:
        return _of_list(made, loads)
    for piece in running:
        if piece.placed is None:
            piece.placed = grouped(piece.loads)
    parts = [piece.placed for piece in running]
    found = injections_of(made, [piece.name for piece in running], parts, made.recipe.injections)
    made.recipe.injections = found
    return found.loads(loads.counting.shares)  # type: ignore[union-attr]


def _of_list(made: Built, loads: Iterable[LeafLoad]) -> Loads:
    by_name: dict[str, list[LeafLoad]] = {}
    for load in loads:
        by_name.setdefault(load.element, []).append(load)
    shares = [load.demand_share for parts in by_name.values() for load in parts]
    found = injections_of(made, list(by_name), list(map(grouped, by_name.values())))
    return found.loads(np.array(shares, dtype=np.float64))
