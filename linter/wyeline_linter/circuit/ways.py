"""Where in a network a current that is brought in at one bus is felt: on the way from there to the source, and in what
hangs on that way and takes current.

All else follows the voltage of the way without a current, so that one fault need not be solved for the whole network.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from .assemble import Assembled
from .elimination import Order
from .forest import Forest
from .layout import Complex, Floats, Ints

Shunts = tuple[Ints, Ints, Complex]
"""Admittances across conductors: their two nodes and siemens."""


class Felt(NamedTuple):
    """The solution in one block, (own, k)."""

    block: int
    values: Complex


class Loops(NamedTuple):
    """The loops between conductors tied together at a bus: ``shape`` (conductors, k) says which conductors unit current
    k enters and leaves; ``block`` is where they lie, ``rhs`` (own, k) what is brought in there."""

    shape: Floats
    block: int
    rhs: Complex


def loops_in(order: Order, unknowns: Ints) -> Loops | None:
    """The loops between conductors by their unknowns (-1: earth); None where they lie in no block or in several."""
    blocks = order.blocks
    shape = loops_between(len(unknowns))
    inside = unknowns >= 0
    there = set(blocks.block[unknowns[inside]].tolist())
    if len(there) != 1:
        return None
    block = there.pop()
    rhs = np.zeros((int(blocks.size[block]), shape.shape[1]), dtype=np.complex128)
    np.add.at(rhs, blocks.place[unknowns[inside]], shape[inside])
    return Loops(shape, block, rhs)


def loops_between(conductors: int) -> Floats:
    """Unit currents that enter at each conductor but the last and leave at the last, (conductors, conductors - 1)."""
    return np.vstack((np.eye(conductors - 1), -np.ones((1, conductors - 1))))


def way_of(forest: Forest, loops: Loops, *, transposed: bool = False) -> list[Felt]:
    """The solution on the way from the root to where the loops are; of a forest that closes no larger loops.

    The operations are those of a whole solution, in their order, so that the digits are the same.
    """
    turn_of, row_of = forest.order.at
    parent, factors = forest.order.parent, forest.factors
    block, rhs = loops.block, loops.rhs
    up = [(block, rhs)]
    while parent[block] >= 0:
        factor, row = factors[turn_of[block]], row_of[block]
        rhs = -((factor.right[row].T if transposed else factor.left[row]) @ rhs)
        block = parent[block]
        up.append((block, rhs))
    way: list[Felt] = []
    for block, rhs in reversed(up):
        factor, row = factors[turn_of[block]], row_of[block]
        values = (factor.inverse[row].T if transposed else factor.inverse[row]) @ rhs
        if way:
            values -= (factor.left[row].T if transposed else factor.right[row]) @ way[-1].values
        way.append(Felt(block, values))
    return way


def reach_of(forest: Forest, unknowns: Ints) -> list[tuple[Ints, Complex]]:
    """By block, which of some unknowns lie in it or below (their numbers), and what one unit in the block, of a
    solution of the transposed equations, makes of each of them (m, own) while nothing else is brought in below."""
    order = forest.order
    nothing = np.zeros(0, dtype=np.int64), np.zeros((0, 0), dtype=np.complex128)
    blocks, (turn_of, row_of) = order.blocks, order.at
    found: list[list[tuple[Ints, Complex]]] = [[] for _ in blocks.size]
    for block, numbers in _by_block(blocks.block[unknowns]).items():
        own = np.zeros((len(numbers), int(blocks.size[block])), dtype=np.complex128)
        own[np.arange(len(numbers)), blocks.place[unknowns[numbers]]] = 1
        found[block].append((numbers, own))
    made: list[tuple[Ints, Complex]] = [nothing] * len(found)
    for turn in order.turns:
        for block in turn.members.tolist():
            parts = found[block]
            if not parts:
                continue
            numbers, reach = (np.concatenate(column) for column in zip(*parts, strict=True))
            made[block] = numbers, reach
            if turn.above:
                left = forest.factors[turn_of[block]].left[row_of[block]]
                found[order.parent[block]].append((numbers, -(reach @ left.T)))
    return made


def within_blocks(forest: Forest, assembled: Assembled, shunts: Shunts) -> bool:
    """Whether no admittance joins two blocks."""
    a, b = (assembled.layout.unknown[nodes] for nodes in shunts[:2])
    block = forest.order.blocks.block
    return bool(np.all((a < 0) | (b < 0) | (block[a] == block[b])))


class Ways:
    """The lines, cores and sources of an assembled network by the block they lie in."""

    def __init__(self, assembled: Assembled, forest: Forest, z_rows: Ints, shunts: Shunts | None) -> None:
        self._assembled, self.forest, self.shunts = assembled, forest, shunts is not None
        blocks = forest.order.blocks
        self._branches = _by_block(blocks.block[z_rows + assembled.layout.first_branch])
        self._ends: dict[int, tuple[Ints, Ints]] = {}
        self._lines: dict[int, dict[int, Ints]] = {}
        depth = forest.order.depth
        taken = _given(forest)
        for k, (from_nodes, to_nodes) in assembled.layout.line_nodes.items():
            ends = assembled.layout.unknown[from_nodes], assembled.layout.unknown[to_nodes]
            one, other = (np.where(at >= 0, blocks.block[at], -1).max(axis=1) for at in ends)
            deeper = np.where(depth[one] >= depth[other], one, other)
            deeper = np.where(one < 0, other, np.where(other < 0, one, deeper))
            self._ends[k], self._lines[k] = ends, _by_block(deeper)
            for upper, lower, at in ((one, other, ends[0]), (other, one, ends[1])):
                hanging = (lower >= 0) & (blocks.parent[lower] == upper) & (upper >= 0)
                _stamp(forest.order, taken, lower[hanging], at[hanging], assembled.lines[k].y_series[hanging])
        none = np.zeros(0, dtype=np.int64)
        a, b, y_s = shunts or (none, none, np.zeros(0, dtype=np.complex128))
        self._across = _Across(forest, assembled.layout.unknown[a], assembled.layout.unknown[b], y_s)
        taken -= self._across.hung
        side = forest.order.above_squared
        owner = np.repeat(np.arange(len(side) - 1), np.diff(side))
        # No part of a power is more than this times the square of the volts: nothing here gives power.
        self._most = 2 * np.sqrt(np.bincount(owner, np.abs(taken) ** 2, len(side) - 1))
        self._hanging = self._by_most()

    def _by_most(self) -> list[list[tuple[float, int]]]:
        """By block, those that hang on it and the most that each takes, what takes most first."""
        hanging: list[list[tuple[float, int]]] = [[] for _ in self._most]
        for block, parent in enumerate(self.forest.order.parent):
            if parent >= 0:
                hanging[parent].append((float(self._most[block]), block))
        for each in hanging:
            each.sort(key=lambda entry: -entry[0])
        return hanging

    def across(self, way: list[Felt]) -> complex:
        """What all admittances take of a change on a way, in VA."""
        return self._across.power(way)

    def felt(self, way: list[Felt], least: float) -> list[Felt]:
        """A change on a way, with what hangs there and takes ``least`` VA or more."""
        on_way, found, todo = {felt.block for felt in way}, list(way), list(way)
        turn_of, row_of = self.forest.order.at
        while todo:
            above = todo.pop()
            squares = float(np.vdot(above.values, above.values).real)
            for most, block in self._hanging[above.block]:
                if most * squares < least:
                    break
                if block not in on_way:
                    right = self.forest.factors[turn_of[block]].right[row_of[block]]
                    found.append(Felt(block, -(right @ above.values)))
                    todo.append(found[-1])
        return found

    def spread(self, felt: list[Felt]) -> Complex:
        """What is felt by unknown, with earth behind the last one; zero elsewhere."""
        blocks = self.forest.order.blocks
        spread = np.zeros(self._assembled.size + 1, dtype=np.complex128)
        for block, values in felt:
            start = int(blocks.start[block])
            spread[blocks.unknowns[start : start + len(values)]] = values
        return spread

    def lines(self, k: int, felt: list[Felt]) -> tuple[Ints, Ints, Ints]:
        """The lines of k conductors that lie where something is felt, with the unknowns of their ends."""
        at = _of(self._lines[k], felt)
        return at, self._ends[k][0][at], self._ends[k][1][at]

    def branches(self, felt: list[Felt]) -> Ints:
        """The impedances of cores and sources that lie there."""
        return _of(self._branches, felt)


class _Across:
    """Admittances across conductors, each within a block, as they act on a block with all that hangs on it: ``whole``
    has them by block, ``hung`` by what hangs on a parent, both flat."""

    def __init__(self, forest: Forest, a: Ints, b: Ints, y_s: Complex) -> None:
        self._order = order = forest.order
        self.whole = np.zeros(int(order.diagonal[-1]), dtype=np.complex128)
        self.hung = np.zeros(int(order.above_squared[-1]), dtype=np.complex128)
        blocks = order.blocks
        for row, column, sign in ((a, a, 1), (b, b, 1), (a, b, -1), (b, a, -1)):
            inside = (row >= 0) & (column >= 0)
            row, column = row[inside], column[inside]
            block = blocks.block[row]
            at = order.diagonal[block] + blocks.place[row] * blocks.size[block] + blocks.place[column]
            np.add.at(self.whole, at, sign * y_s[inside])
        for turn, factor in zip(order.turns, forest.factors, strict=True):
            if turn.above and len(a):
                own = order.diagonal[turn.members][:, None] + np.arange(turn.own**2)
                inside = self.whole[own].reshape(-1, turn.own, turn.own)
                hung = (np.conj(factor.right).transpose(0, 2, 1) @ inside @ factor.right).reshape(len(own), -1)
                self.hung[order.above_squared[turn.members][:, None] + np.arange(turn.above**2)] = hung
                there = order.diagonal[turn.parents][:, None] + np.arange(turn.above**2)
                self.whole[there] += np.add.reduceat(hung, turn.first)

    def power(self, way: list[Felt]) -> complex:
        """What all of them take of a change on a way from a root, in VA."""
        order, found = self._order, 0j
        for felt, below in zip(way, [*way[1:], None], strict=True):
            acting = self.whole[order.diagonal[felt.block] : order.diagonal[felt.block + 1]]
            if below is not None:
                acting = acting - self.hung[order.above_squared[below.block] : order.above_squared[below.block + 1]]
            found += complex(np.vdot(felt.values, acting.reshape(len(felt.values), -1) @ felt.values))
        return found.conjugate()


def _by_block(block: Ints) -> dict[int, Ints]:
    order = np.argsort(block, kind="stable")
    parts = np.split(order, np.flatnonzero(np.diff(block[order])) + 1) if len(block) else []
    return {int(block[part[0]]): part for part in parts}


def _of(by_block: dict[int, Ints], felt: list[Felt]) -> Ints:
    parts = [by_block[each.block] for each in felt if each.block in by_block]
    return np.sort(np.concatenate(parts)) if parts else np.zeros(0, dtype=np.int64)


def _given(forest: Forest) -> Complex:
    """What all below and in each block adds to the diagonal of its parent, beside the ends of its lines there, flat."""
    order, places = forest.order, forest.places
    total = places.sums(forest.values)
    taken = np.zeros(int(order.above_squared[-1]), dtype=np.complex128)
    for turn, factor in zip(order.turns, forest.factors, strict=True):
        if turn.above:
            between = places.up + order.side[turn.members][:, None] + np.arange(turn.own * turn.above)
            given = factor.left @ total[between].reshape(-1, turn.own, turn.above)
            at = order.above_squared[turn.members][:, None] + np.arange(turn.above**2)
            taken[at] = -given.reshape(len(given), -1)
    return taken


def _stamp(order: Order, taken: Complex, lower: Ints, upper_unknowns: Ints, y_series: Complex) -> None:
    """Add the upper ends of lines to what their blocks add to the diagonal of their parents."""
    blocks = order.blocks
    place: Ints = np.where(upper_unknowns >= 0, blocks.place[upper_unknowns], -1)
    row, column = place[:, :, None], place[:, None, :]
    above: Ints = order.parent_size[lower][:, None, None]
    at: Ints = order.above_squared[lower][:, None, None] + row * above + column
    inside = (row >= 0) & (column >= 0)
    np.add.at(taken, at[inside], y_series[inside])
