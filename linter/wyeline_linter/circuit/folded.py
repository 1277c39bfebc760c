"""The forest as the loads of a load flow see it: blocks that carry no load are folded into those below them.

What lies between two blocks with loads (a transformer, a switch, a bus that only passes on) becomes one step, and what
leads to no load falls away.  More than half of the blocks of a building go, and most of the depth, so that a round of
the load flow costs a fraction of a whole solve.  All other unknowns follow from one whole solve at the end.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

import numpy as np

from .elimination import children_of
from .forest import Factor, Forest
from .layout import Bools, Complex, Ints, distinct


class _Batch(NamedTuple):
    """Blocks of one size and the blocks of one size that each now stands below (-1: a root), with their factors."""

    members: Ints
    parents: Ints
    factor: Factor

    def of(self, rows: Ints | Bools) -> _Batch:
        return _Batch(self.members[rows], self.parents[rows], self.factor.of(rows))


class _Step(NamedTuple):
    """Blocks that are eliminated together. Their unknowns lie side by side, from `begin` to `end`."""

    begin: int
    end: int
    factor: Factor
    into: Ints
    """The unknowns of the blocks above them, each block once, (p, above); none for roots."""
    first: Ints
    """Where the blocks below each of these begin."""
    above: Ints
    """The unknowns above each block, (m, above)."""


class Folded:
    """What the currents of loads do to their voltages, by the factors of a forest that closes no loops.

    ``plus`` and ``minus`` are the unknowns of each load, -1 for earth.
    """

    def __init__(self, forest: Forest, plus: Ints, minus: Ints) -> None:
        self._forest, self._plus, self._minus = forest, plus, minus
        blocks = forest.order.blocks
        loaded = np.zeros(len(blocks.size), dtype=np.bool_)
        for at in (plus, minus):
            loaded[blocks.block[at[at >= 0]]] = True
        start, self._steps = _arranged(forest, list(_batches(forest, loaded)))
        self._size = self._steps[-1].end if self._steps else 0
        # One place more is that of earth: what is put there is left out.
        self._at_plus, self._at_minus = (
            np.where(at >= 0, start[blocks.block[at]] + blocks.place[at], self._size) for at in (plus, minus)
        )

    def is_of(self, forest: Forest, plus: Ints, minus: Ints) -> bool:
        """Whether these are still the factors and the places of the loads."""
        return self._forest is forest and np.array_equal(self._plus, plus) and np.array_equal(self._minus, minus)

    def across(self, current: Complex) -> Complex:
        """What the voltage on each load rises by, in V, when each draws a current from its plus conductor, in A."""
        work = np.zeros(self._size + 1, dtype=np.complex128)
        np.add.at(work, self._at_minus, current)
        np.subtract.at(work, self._at_plus, current)
        for step in self._steps:
            if len(step.into):
                here = work[step.begin : step.end].reshape(len(step.above), -1, 1)
                given = (step.factor.left @ here)[:, :, 0]
                work[step.into] -= given if len(given) == len(step.into) else np.add.reduceat(given, step.first)
        for step in reversed(self._steps):
            here = work[step.begin : step.end].reshape(len(step.above), -1, 1)
            found = step.factor.inverse @ here
            if len(step.into):
                found -= step.factor.right @ work[step.above][:, :, None]
            here[:] = found
        work[-1] = 0
        return np.asarray(work[self._at_plus] - work[self._at_minus], dtype=np.complex128)


def _batches(forest: Forest, loaded: Bools) -> Iterator[_Batch]:
    """The blocks that stay, below the blocks that stay."""
    parent, turns = forest.order.blocks.parent, forest.order.turns
    needed = loaded.copy()
    turn_of, row_of = np.zeros_like(parent), np.zeros_like(parent)
    for number, turn in enumerate(turns):  # leaves first
        turn_of[turn.members], row_of[turn.members] = number, np.arange(len(turn.members))
        above = parent[turn.members[needed[turn.members]]]
        needed[above[above >= 0]] = True
    below = np.bincount(parent[needed & (parent >= 0)], minlength=len(parent))
    passes_on = needed & ~loaded & (below == 1) & (parent >= 0)
    stays = needed & ~passes_on
    waiting = [
        _Batch(turn.members, parent[turn.members], factor).of(stays[turn.members])
        for turn, factor in zip(turns, forest.factors, strict=True)
    ]
    while waiting:
        batch = waiting.pop()
        through = (batch.parents >= 0) & passes_on[batch.parents]
        if not through.all():
            yield batch.of(~through)
        if through.any():
            turn_above = turn_of[batch.parents]
            for each in distinct(turn_above[through]):
                one = batch.of(through & (turn_above == each))
                passed = forest.factors[each].of(row_of[one.parents])
                waiting.append(_Batch(one.members, parent[one.parents], one.factor.below(passed)))


def _arranged(forest: Forest, batches: list[_Batch]) -> tuple[Ints, list[_Step]]:
    """Where the unknowns of each block begin, and the steps, leaves first."""
    size = forest.order.blocks.size
    up = np.full(len(size), -1, dtype=np.int64)
    for batch in batches:
        up[batch.members] = batch.parents
    depth, above = np.zeros(len(size), dtype=np.int64), up
    while (there := above >= 0).any():
        depth[there] += 1
        above = np.where(there, up[above], -1)
    alike: dict[tuple[int, int, int], list[_Batch]] = {}
    for batch in batches:
        for deep in distinct(depth[batch.members]).tolist():
            one = batch.of(depth[batch.members] == deep)
            alike.setdefault((-deep, *one.factor.right.shape[1:]), []).append(one)
    start = np.zeros(len(size), dtype=np.int64)
    joined = []
    end = 0
    for key in sorted(alike):
        members, parents = (np.concatenate([batch[k] for batch in alike[key]]) for k in (0, 1))
        order = np.lexsort((members, parents))
        factor = Factor(*map(np.concatenate, zip(*(batch.factor for batch in alike[key]), strict=True))).of(order)
        joined.append(_Batch(members[order], parents[order], factor))
        start[members[order]] = end + np.arange(len(members)) * key[1]
        end += len(members) * key[1]
    steps = []
    for members, parents, factor in joined:
        own, many = factor.right.shape[1:]
        begin = int(start[members[0]])
        above_each: Ints = start[parents][:, None] + np.arange(many)
        first = children_of(parents) if many else np.zeros(0, dtype=np.int64)
        steps.append(_Step(begin, begin + len(members) * own, factor, above_each[first], first, above_each))
    return start, steps
