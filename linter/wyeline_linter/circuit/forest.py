"""Elimination from the leaves to the roots and the walk back, all blocks of one depth and size at a time.

The same factors give solutions, and the diagonal blocks of the inverse that faults ask for (the selected inverse of
K. Takahashi, J. Fagan and M.-S. Chin, 1973, here on blocks of a bus).  Entries that close larger loops are put back as
a low-rank change (Woodbury).

Where entries have changed, only the blocks on the ways from them to the root are eliminated anew.  Every block is
worked out from the same numbers by the same operations as in a whole elimination, so that the factors are the same to
the last bit and do not tell how they were reached.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

import numpy as np

from .assemble import Assembled
from .blocks import blocks_of
from .elimination import Places, Turn, order_of, places_of, sums
from .layout import Bools, Complex, Ints

LOOP_LIMIT = 240
"""Unknowns on loop-closing connections above which general sparse factors are the better way."""
WHOLE_SHARE = 8
"""Where more than one block in so many is to be eliminated anew, all are: side by side each costs a tenth."""


class TooManyLoops(Exception):  # noqa: N818 - a property of the network, not a mistake
    """The network is too meshed for elimination along a forest."""


class Factor(NamedTuple):
    """Factors of the blocks of one turn, (m, rows, columns)."""

    inverse: Complex
    right: Complex
    left: Complex

    def changed(self, rows: list[int], others: Factor) -> Factor:
        """The same but for some blocks."""
        copies = tuple(kept.copy() for kept in self)
        for copy, new in zip(copies, others, strict=True):
            copy[rows] = new
        return Factor(*copies)

    def of(self, rows: Ints | Bools) -> Factor:
        """Those of some of the blocks."""
        return Factor(self.inverse[rows], self.right[rows], self.left[rows])

    def below(self, passed: Factor) -> Factor:
        """These blocks below what other blocks stand below, one of those above each, as long as nothing is brought into
        those."""
        right = self.right @ passed.inverse
        return Factor(self.inverse + right @ self.left, -(self.right @ passed.right), -(passed.left @ self.left))


class Forest:
    """Factors of an assembled network.  Raises LinAlgError where a block has no inverse, and TooManyLoops.

    ``known`` are forests of networks wired alike, the one of the same equations before an edit first: what holds of it
    is taken over. ``eliminated`` counts the blocks that were worked out.
    """

    def __init__(self, assembled: Assembled, known: Iterable[Forest] = ()) -> None:
        self.order = order_of(blocks_of(assembled.network, assembled.layout))
        self._size = assembled.size
        self.values = assembled.values
        known = [other for other in known if other.order is self.order]
        rows, cols = assembled.rows, assembled.cols
        shared = (other.places for other in known if other.places.are_of(rows, cols))
        self.places: Places = next(shared, None) or places_of(self.order, rows, cols)
        if len(self.places.touched) > LOOP_LIMIT:
            raise TooManyLoops
        self._columns: Complex | None = None
        self._diagonal: Complex | None = None
        anew = None
        if known and known[0].places is self.places and not len(self.places.touched):
            anew = self._differing(known[0])
        if anew is None:
            self.eliminated = len(self.order.blocks.size)
            self.factors = self._eliminated()
        else:
            self.eliminated = len(anew)
            self.factors = self._taken_over(known[0], anew)
        if len(self.places.touched):
            self._close(assembled)

    # eliminating

    def _eliminated(self) -> list[Factor]:
        """All blocks."""
        order, places = self.order, self.places
        total = places.sums(self.values)
        diagonal, to_parent, from_parent = np.split(total[:-1], (places.up, places.down))
        made = []
        for turn in order.turns:
            here = order.diagonal[turn.members][:, None] + np.arange(turn.own**2)
            between = order.side[turn.members][:, None] + np.arange(turn.own * turn.above)
            factor, given = _eliminate(turn, diagonal[here], to_parent[between], from_parent[between])
            if len(turn.first):
                there = order.diagonal[turn.parents][:, None] + np.arange(turn.above**2)
                diagonal[there] -= np.add.reduceat(given, turn.first)
            made.append(factor)
        return made

    def _differing(self, other: Forest) -> list[int] | None:
        """The blocks on the ways from changed entries to the roots; None where these are too many to go one by one."""
        blocks, places = self.order.blocks, self.places
        changed = np.flatnonzero(self.values != other.values)
        if len(changed) > self._size:
            return None
        rows, cols = blocks.block[places.rows[changed]], blocks.block[places.cols[changed]]
        lower = np.where(blocks.parent[cols] == rows, cols, rows)  # the lower of the two that an entry joins
        found: set[int] = set()
        for block in set(lower.tolist()):
            while block >= 0 and block not in found:
                found.add(block)
                block = int(blocks.parent[block])
            if len(found) > len(blocks.size) // WHOLE_SHARE:
                return None
        return sorted(found)

    def _taken_over(self, other: Forest, anew: list[int]) -> list[Factor]:
        """The factors of another forest, with some blocks eliminated anew."""
        order = self.order
        turn_of, row_of = order.at
        made = list(other.factors)
        below = np.flatnonzero(np.isin(order.blocks.parent, anew))  # what is eliminated into them
        needed = self.places.of_blocks(order, {*anew, *below.tolist()})
        total = self.places.sums(self.values, needed)
        by_turn: dict[int, list[int]] = {}
        for block in anew:
            by_turn.setdefault(turn_of[block], []).append(block)
        for number in sorted(by_turn):
            turn, blocks = order.turns[number], sorted(by_turn[number], key=row_of.__getitem__)
            diagonal = np.array([self._diagonal_of(block, made, total) for block in blocks])
            begin, many = order.side[blocks][:, None], np.arange(turn.own * turn.above)
            to_parent = total[self.places.up + begin + many]
            from_parent = total[self.places.down + begin + many]
            factor, _ = _eliminate(turn, diagonal, to_parent, from_parent)
            made[number] = made[number].changed([row_of[block] for block in blocks], factor)
        return made

    def _diagonal_of(self, block: int, made: list[Factor], total: Complex) -> Complex:
        """The entries of a block when all below it are eliminated, flat."""
        order = self.order
        entries: Complex = total[order.diagonal[block] : order.diagonal[block + 1]].copy()
        for number, row in order.fed_by.get(block, ()):
            turn = order.turns[number]
            rows = turn.children(row)
            children = turn.members[rows]
            between = self.places.down + order.side[children][:, None] + np.arange(turn.own * turn.above)
            lower = total[between].reshape(len(children), turn.above, turn.own)
            given = lower @ made[number].right[rows]
            entries -= np.add.reduceat(given.reshape(len(children), -1), [0])[0]
        return entries

    def _close(self, assembled: Assembled) -> None:
        """Take the loop-closing entries B on unknowns S in: Z = Zt - Zt[:,S] B (1 + Zt[S,S] B)^-1 Zt[S,:]."""
        on, touched = self.places.on_loops, self.places.touched
        rows, cols, values = assembled.rows[on], assembled.cols[on], assembled.values[on]
        count = len(touched)
        where = np.searchsorted(touched, rows) * count + np.searchsorted(touched, cols)
        extra = sums(where, values, count * count).reshape(count, count)
        unit = np.zeros((assembled.size, count), dtype=np.complex128)
        unit[touched, np.arange(count)] = 1
        columns, lines = self.solve(unit), self.solve(unit, transposed=True)
        self._middle = extra @ np.linalg.inv(np.eye(count) + columns[touched] @ extra)
        self._columns, self._lines = columns, lines

    # solving

    def solve(self, rhs: Complex, *, transposed: bool = False) -> Complex:
        """Solve for one right-hand side (n,) or many (n, k)."""
        work = (rhs[:, None] if rhs.ndim == 1 else rhs).astype(np.complex128)
        turns = list(zip(self.order.turns, self.factors, strict=True))
        for turn, factor in turns:
            if len(turn.first):
                lift = factor.right.transpose(0, 2, 1) if transposed else factor.left
                work[turn.parent_unknowns] -= np.add.reduceat(lift @ work[turn.unknowns], turn.first)
        for turn, factor in reversed(turns):
            inverse = factor.inverse.transpose(0, 2, 1) if transposed else factor.inverse
            found = inverse @ work[turn.unknowns]
            if len(turn.first):
                lower = factor.left.transpose(0, 2, 1) if transposed else factor.right
                found -= lower @ work[turn.parent_unknowns][turn.parent_of]
            work[turn.unknowns] = found
        if self._columns is not None:
            middle = self._middle.T if transposed else self._middle
            work -= (self._lines if transposed else self._columns) @ (middle @ work[self.places.touched])
        return work.reshape(rhs.shape)

    def diagonal_blocks(self, unknowns: Ints) -> Complex:
        """The part (m, k, k) of the inverse on m sets of k unknowns, each set within one bus; -1 stands for earth."""
        if self._diagonal is None:
            self._diagonal = self._selected()
        blocks, there = self.order.blocks, unknowns >= 0
        if not there.any():
            return np.zeros((*unknowns.shape, unknowns.shape[1]), dtype=np.complex128)
        # In the place of earth stands another of the set, so that all lie in one block.
        at = np.where(there, unknowns, np.maximum(unknowns.max(axis=1, keepdims=True), 0))
        block = blocks.block[at]
        line = self.order.diagonal[block] + blocks.place[at] * blocks.size[block]
        found: Complex = self._diagonal[line[:, :, None] + blocks.place[at][:, None, :]]
        if self._columns is not None:
            found = found - self._columns[at] @ self._middle @ self._lines[at].transpose(0, 2, 1)
        found[~(there[:, :, None] & there[:, None, :])] = 0
        return found

    def _selected(self) -> Complex:
        order = self.order
        diagonal = np.zeros(int(order.diagonal[-1]), dtype=np.complex128)
        for turn, factor in zip(reversed(order.turns), reversed(self.factors), strict=True):
            found = factor.inverse
            if len(turn.first):
                there = order.diagonal[turn.parents][:, None] + np.arange(turn.above**2)
                outer = diagonal[there].reshape(-1, turn.above, turn.above)[turn.parent_of]
                found = found + factor.right @ outer @ factor.left
            here = order.diagonal[turn.members][:, None] + np.arange(turn.own**2)
            diagonal[here] = found.reshape(len(here), -1)
        return diagonal

    def forget_diagonal(self) -> None:
        """Nobody asks soon for the diagonal of the inverse."""
        self._diagonal = None


def _eliminate(turn: Turn, diagonal: Complex, to_parent: Complex, from_parent: Complex) -> tuple[Factor, Complex]:
    """The factors of blocks of a turn, of their entries flat, and what each takes off the diagonal of its parent,
    flat."""
    count, own, above = len(diagonal), turn.own, turn.above
    inverse: Complex = np.linalg.inv(diagonal.reshape(count, own, own)).astype(np.complex128, copy=False)
    right = inverse @ to_parent.reshape(count, own, above)
    lower = from_parent.reshape(count, above, own)
    return Factor(inverse, right, lower @ inverse), (lower @ right).reshape(count, -1)
