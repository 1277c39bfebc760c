"""Elimination from the leaves to the roots and the walk back, all blocks of one depth and size at a time.

The same factors give solutions, and the diagonal blocks of the inverse that faults ask for (the selected inverse of
K. Takahashi, J. Fagan and M.-S. Chin, 1973, here on blocks of a bus).  Entries that close larger loops are put back as
a low-rank change (Woodbury).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from .assemble import Assembled
from .blocks import blocks_of
from .layout import Bools, Complex, Ints, distinct

LOOP_LIMIT = 240
"""Unknowns on loop-closing connections above which general sparse factors are the better way."""


class TooManyLoops(Exception):  # noqa: N818 - a property of the network, not a mistake
    """The network is too meshed for elimination along a forest."""


@dataclass(frozen=True, slots=True)
class _Step:
    """The elimination of m blocks of one size into parents of one size."""

    own: Ints
    """Unknowns of the blocks, (m, own)."""
    parents: Ints
    """Unknowns of their parents, each parent once, (p, above); none for roots."""
    first: Ints
    """Where the blocks of each parent begin among the m."""
    parent_of: Ints
    """Parent of each block by its row in `parents`."""
    here: Ints
    """Places of the blocks in the flat diagonal, (m, own * own),"""
    there: Ints
    """and of the parents, (p, above * above)."""
    inverse: Complex
    right: Complex
    left: Complex


class Forest:
    """Factors of an assembled network.  Raises LinAlgError where a block has no inverse, and TooManyLoops."""

    def __init__(self, assembled: Assembled) -> None:
        blocks = self._blocks = blocks_of(assembled.network, assembled.layout)
        size, parent = blocks.size, blocks.parent
        rows, cols, values = assembled.rows, assembled.cols, assembled.values
        row_block, col_block = blocks.block[rows], blocks.block[cols]
        same = row_block == col_block
        up = (parent[row_block] == col_block) & ~same
        down = (parent[col_block] == row_block) & ~same
        loops = ~(same | up | down)
        touched = distinct(np.concatenate((rows[loops], cols[loops])))
        if len(touched) > LOOP_LIMIT:
            raise TooManyLoops
        row_place, col_place = blocks.place[rows], blocks.place[cols]
        parent_size = np.where(parent >= 0, size[parent], 0)
        self._offset = np.concatenate((np.zeros(1, dtype=np.int64), np.cumsum(size * size)))
        side = np.concatenate((np.zeros(1, dtype=np.int64), np.cumsum(size * parent_size)))
        width = size[col_block]
        diagonal = _sums(
            (self._offset[row_block] + row_place * width + col_place)[same], values[same], self._offset[-1]
        )
        to_parent = _sums((side[row_block] + row_place * width + col_place)[up], values[up], side[-1])
        from_parent = _sums((side[col_block] + row_place * width + col_place)[down], values[down], side[-1])
        self._steps: list[_Step] = []
        for members in filter(len, reversed(blocks.levels)):  # a circuit without a bus has one empty level
            self._steps.append(self._eliminate(members, diagonal, to_parent, from_parent, side, parent_size))
        self._diagonal: Complex | None = None
        self._columns: Complex | None = None
        if len(touched):
            self._close(assembled, loops, touched)

    def _eliminate(
        self, members: Ints, diagonal: Complex, to_parent: Complex, from_parent: Complex, side: Ints, parent_size: Ints
    ) -> _Step:
        blocks = self._blocks
        own, above = int(blocks.size[members[0]]), int(parent_size[members[0]])
        here = self._offset[members][:, None] + np.arange(own * own)
        inverse: Complex = np.linalg.inv(diagonal[here].reshape(-1, own, own)).astype(np.complex128)
        unknowns = blocks.unknowns[blocks.start[members][:, None] + np.arange(own)]
        if above == 0:
            none = np.zeros(0, dtype=np.int64)
            return _Step(unknowns, none, none, none, here, none, inverse, inverse, inverse)
        parent = blocks.parent[members]
        first = np.flatnonzero(np.concatenate((np.ones(1, dtype=np.bool_), np.diff(parent) != 0)))
        each = parent[first]
        there = self._offset[each][:, None] + np.arange(above * above)
        between = side[members][:, None] + np.arange(own * above)
        right = inverse @ to_parent[between].reshape(-1, own, above)
        lower = from_parent[between].reshape(-1, above, own)
        diagonal[there] -= np.add.reduceat((lower @ right).reshape(len(members), -1), first)
        return _Step(
            own=unknowns,
            parents=blocks.unknowns[blocks.start[each][:, None] + np.arange(above)],
            first=first,
            parent_of=np.repeat(np.arange(len(each)), np.diff(np.append(first, len(members)))),
            here=here,
            there=there,
            inverse=inverse,
            right=right,
            left=lower @ inverse,
        )

    def _close(self, assembled: Assembled, loops: Bools, touched: Ints) -> None:
        """Take the loop-closing entries B on unknowns S in: Z = Zt - Zt[:,S] B (1 + Zt[S,S] B)^-1 Zt[S,:]."""
        rows, cols, values = assembled.rows[loops], assembled.cols[loops], assembled.values[loops]
        count = len(touched)
        where = np.searchsorted(touched, rows) * count + np.searchsorted(touched, cols)
        extra = _sums(where, values, count * count).reshape(count, count)
        unit = np.zeros((assembled.size, count), dtype=np.complex128)
        unit[touched, np.arange(count)] = 1
        columns, lines = self.solve(unit), self.solve(unit, transposed=True)
        self._middle = extra @ np.linalg.inv(np.eye(count) + columns[touched] @ extra)
        self._touched, self._columns, self._lines = touched, columns, lines

    def solve(self, rhs: Complex, *, transposed: bool = False) -> Complex:
        """Solve for one right-hand side (n,) or many (n, k)."""
        work = (rhs[:, None] if rhs.ndim == 1 else rhs).astype(np.complex128)
        for step in self._steps:
            if len(step.first):
                lift = step.right.transpose(0, 2, 1) if transposed else step.left
                work[step.parents] -= np.add.reduceat(lift @ work[step.own], step.first)
        for step in reversed(self._steps):
            inverse = step.inverse.transpose(0, 2, 1) if transposed else step.inverse
            found = inverse @ work[step.own]
            if len(step.first):
                lower = step.left.transpose(0, 2, 1) if transposed else step.right
                found -= lower @ work[step.parents][step.parent_of]
            work[step.own] = found
        if self._columns is not None:
            middle = self._middle.T if transposed else self._middle
            work -= (self._lines if transposed else self._columns) @ (middle @ work[self._touched])
        return work.reshape(rhs.shape)

    def diagonal_blocks(self, unknowns: Ints) -> Complex:
        """The part (m, k, k) of the inverse on m sets of k unknowns, each set within one bus; -1 stands for earth."""
        if self._diagonal is None:
            self._diagonal = self._selected()
        blocks, there = self._blocks, unknowns >= 0
        if not there.any():
            return np.zeros((*unknowns.shape, unknowns.shape[1]), dtype=np.complex128)
        # In the place of earth stands another of the set, so that all lie in one block.
        at = np.where(there, unknowns, np.maximum(unknowns.max(axis=1, keepdims=True), 0))
        block = blocks.block[at]
        line = self._offset[block] + blocks.place[at] * blocks.size[block]
        found: Complex = self._diagonal[line[:, :, None] + blocks.place[at][:, None, :]]
        if self._columns is not None:
            found = found - self._columns[at] @ self._middle @ self._lines[at].transpose(0, 2, 1)
        found[~(there[:, :, None] & there[:, None, :])] = 0
        return found

    def _selected(self) -> Complex:
        diagonal = np.zeros(int(self._offset[-1]), dtype=np.complex128)
        for step in reversed(self._steps):
            found = step.inverse
            if len(step.first):
                above = step.right.shape[2]
                outer = diagonal[step.there].reshape(-1, above, above)
                found = found + step.right @ outer[step.parent_of] @ step.left
            diagonal[step.here] = found.reshape(len(found), -1)
        return diagonal


def _sums(places: Ints, values: Complex, size: int) -> Complex:
    """Values added up by their places."""
    total = np.zeros(int(size), dtype=np.complex128)
    if len(places):
        total.real = np.bincount(places, values.real, int(size))
        total.imag = np.bincount(places, values.imag, int(size))
    return total
