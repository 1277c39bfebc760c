"""In which order blocks are eliminated, and where the entries of a matrix go: what follows from the wiring alone."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from .blocks import Blocks
from .layout import Complex, Ints, distinct


class Turn(NamedTuple):
    """The elimination of m blocks of one size into parents of one size."""

    own: int
    above: int
    members: Ints
    """The blocks;"""
    unknowns: Ints
    """their unknowns, (m, own);"""
    parents: Ints
    """their parents, each once, (p,); none for roots;"""
    parent_unknowns: Ints
    """the unknowns of these, (p, above)."""
    first: Ints
    """Where the blocks of each parent begin among the m."""
    parent_of: Ints
    """Parent of each block by its row in `parents`."""

    def children(self, parent: int) -> slice:
        """The rows of the blocks of a parent, by its row in `parents`."""
        last = parent + 1 == len(self.first)
        return slice(int(self.first[parent]), len(self.members) if last else int(self.first[parent + 1]))


class Order:
    """The turns, leaves first, and where each block lies in a flat row of all of them.

    `diagonal` is where the entries of a block begin, `side` where those between it and its parent do.
    """

    def __init__(self, blocks: Blocks) -> None:
        self.blocks = blocks
        size, parent = blocks.size, blocks.parent
        self.parent_size: Ints = np.where(parent >= 0, size[parent], 0)
        self.diagonal = _starts(size * size)
        self.side = _starts(size * self.parent_size)
        # A circuit without a bus has one empty level.
        self.turns = [self._turn(members) for members in reversed(blocks.levels) if len(members)]

    def _turn(self, members: Ints) -> Turn:
        blocks = self.blocks
        own, above = int(blocks.size[members[0]]), int(self.parent_size[members[0]])
        unknowns = blocks.unknowns[blocks.start[members][:, None] + np.arange(own)]
        if above == 0:
            none = np.zeros(0, dtype=np.int64)
            return Turn(own, above, members, unknowns, none, none, none, none)
        parent = blocks.parent[members]
        first = children_of(parent)
        each = parent[first]
        parent_of = np.repeat(np.arange(len(each)), np.diff(np.append(first, len(members))))
        above_them = blocks.unknowns[blocks.start[each][:, None] + np.arange(above)]
        return Turn(own, above, members, unknowns, each, above_them, first, parent_of)

    @cached_property
    def parent(self) -> list[int]:
        """By block, its parent; -1 for a root."""
        parent: list[int] = self.blocks.parent.tolist()
        return parent

    @cached_property
    def depth(self) -> Ints:
        """By block, how many stand above it."""
        depth = np.zeros(len(self.parent_size), dtype=np.int64)
        for turn in reversed(self.turns):
            if turn.above:
                depth[turn.members] = depth[turn.parents][turn.parent_of] + 1
        return depth

    @cached_property
    def above_squared(self) -> Ints:
        """Where the entries begin that each block adds to the diagonal of its parent."""
        return _starts(self.parent_size**2)

    @cached_property
    def at(self) -> tuple[list[int], list[int]]:
        """By block, its turn and its row in that."""
        turn, row = [0] * len(self.blocks.size), [0] * len(self.blocks.size)
        for number, each in enumerate(self.turns):
            for k, block in enumerate(each.members.tolist()):
                turn[block], row[block] = number, k
        return turn, row

    @cached_property
    def fed_by(self) -> dict[int, list[tuple[int, int]]]:
        """By block, the turns in which others are eliminated into it, and its row among the parents there."""
        found: dict[int, list[tuple[int, int]]] = {}
        for number, each in enumerate(self.turns):
            for row, block in enumerate(each.parents.tolist()):
                found.setdefault(block, []).append((number, row))
        return found


def children_of(parents: Ints) -> Ints:
    """Where the blocks of each parent begin, of blocks of which those of one parent lie side by side."""
    return np.flatnonzero(np.concatenate((np.ones(1, dtype=np.bool_), np.diff(parents) != 0)))


def order_of(blocks: Blocks) -> Order:
    """The order of blocks, kept with them."""
    if not blocks.order:
        blocks.order.append(Order(blocks))
    found: Order = blocks.order[0]
    return found


@dataclass(frozen=True, slots=True)
class Places:
    """Where the entries of a matrix are added up: the diagonal of all blocks, what leads to their parents, what comes
    from them, and one place for what closes loops."""

    rows: Ints
    cols: Ints
    place: NDArray[np.int32]
    up: int
    """Where what leads to parents begins,"""
    down: int
    """what comes from them,"""
    loops: int
    """and the place for loops."""
    on_loops: Ints
    """The entries that close loops,"""
    touched: Ints
    """and their unknowns."""

    def are_of(self, rows: Ints, cols: Ints) -> bool:
        """Whether these are the places of a matrix with entries there."""
        same = (self.rows is rows and self.cols is cols) or len(self.rows) == len(rows)
        return same and np.array_equal(self.rows, rows) and np.array_equal(self.cols, cols)

    def sums(self, values: Complex, entries: Ints | None = None) -> Complex:
        """The values added up by their places; those of some entries only, the others are zero then."""
        if entries is None:
            return sums(self.place, values, self.loops + 1)
        return sums(self.place[entries], values[entries], self.loops + 1)

    def of_blocks(self, order: Order, blocks: Iterable[int]) -> Ints:
        """The entries of some blocks and between them and their parents."""
        wanted = np.zeros(self.loops + 1, dtype=np.bool_)
        for block in blocks:
            wanted[order.diagonal[block] : order.diagonal[block + 1]] = True
            side = slice(int(order.side[block]), int(order.side[block + 1]))
            wanted[self.up : self.down][side] = True
            wanted[self.down : self.loops][side] = True
        return np.flatnonzero(wanted[self.place])


def places_of(order: Order, rows: Ints, cols: Ints) -> Places:
    """The places of entries."""
    blocks = order.blocks
    size, parent = blocks.size, blocks.parent
    row_block, col_block = blocks.block[rows], blocks.block[cols]
    same = row_block == col_block
    up = (parent[row_block] == col_block) & ~same
    down = (parent[col_block] == row_block) & ~same
    begin_up = int(order.diagonal[-1])
    begin_down = begin_up + int(order.side[-1])
    loops = begin_down + int(order.side[-1])
    within = blocks.place[rows] * size[col_block] + blocks.place[cols]
    place = np.full(len(rows), loops, dtype=np.int64)
    place[same] = (order.diagonal[row_block] + within)[same]
    place[up] = (begin_up + order.side[row_block] + within)[up]
    place[down] = (begin_down + order.side[col_block] + within)[down]
    on_loops = np.flatnonzero(place == loops)
    touched = distinct(np.concatenate((rows[on_loops], cols[on_loops])))
    return Places(rows, cols, place.astype(np.int32), begin_up, begin_down, loops, on_loops, touched)


def sums(places: NDArray[np.integer[Any]], values: Complex, size: int) -> Complex:
    """Values added up by their places."""
    total = np.zeros(int(size), dtype=np.complex128)
    if len(places):
        total.real = np.bincount(places, values.real, int(size))
        total.imag = np.bincount(places, values.imag, int(size))
    return total


def _starts(sizes: Ints) -> Ints:
    return np.concatenate((np.zeros(1, dtype=np.int64), np.cumsum(sizes)))
