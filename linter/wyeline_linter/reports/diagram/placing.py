"""Where everything stands from left to right.

Every line is one vertical *column* wherever the order allows: a column joins the places that must be equal. What may
not touch becomes a difference ``x[b] >= x[a] + w``. Columns are packed to the left along those differences, then moved,
within the room they leave, until each infeed stands over the middle of what it feeds. Joining only lines that do not
cross keeps the differences free of circles (Brandes and Koepf, Graph Drawing 2001).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from wyeline_linter.reports.diagram.glyphs import PORT_MM, TWO_INPUTS
from wyeline_linter.reports.diagram.layering import Item, Levels
from wyeline_linter.reports.diagram.ordering import Order
from wyeline_linter.reports.diagram.shaping import BAR_END_MM, GAP_MM, LINE_CLEAR_MM, TIE_MM, Form, Shapes
from wyeline_linter.reports.diagram.sketch import Sketch

_ROUNDS = 4


@dataclass(slots=True)
class Places:
    """Millimetres from the left edge: the middle of each item (None for a bar), both ends of each segment, and bars."""

    middle: list[float | None]
    top: list[float]
    bottom: list[float]
    bars: dict[int, tuple[float, float]]
    ups: list[list[int]]
    downs: list[list[int]]
    width: float


class Placing:
    """Solves one drawing; ``places()`` is the result."""

    def __init__(self, sketch: Sketch, graph: Levels, shapes: Shapes, order: Order) -> None:
        self._sketch, self._graph, self._shapes, self._order = sketch, graph, shapes, order
        self._place = [0] * len(graph.items)
        for level in order:
            for at, index in enumerate(level):
                self._place[index] = at
        segments = graph.segments
        self._ups = [sorted(i.ups, key=lambda s: (self._place[segments[s].upper], s)) for i in graph.items]
        self._downs = [sorted(i.downs, key=lambda s: (self._place[segments[s].lower], s)) for i in graph.items]
        self._variables = 0
        self._middle: list[int | None] = []
        self._up = [0] * len(segments)
        self._down = [0] * len(segments)
        for item in graph.items:
            self._make_variables(item)

    def places(self) -> Places:
        if not self._join(True):
            self._join(False)
        self._pack()
        for _ in range(_ROUNDS):
            self._infeeds_over_middles()
            self._branches_under_infeeds()
        self._draw_branches_together()
        self._infeeds_over_middles()
        return self._result()

    # Variables and columns.

    def _make_variables(self, item: Item) -> None:
        ups, downs = self._ups[item.index], self._downs[item.index]
        bar = self._shapes.items[item.index].form is Form.BAR
        middle = None
        if not bar or not (ups or downs):
            middle = self._new()
        self._middle.append(middle)
        own_ups = bar or len(ups) > 1 or self._two_inputs(item)
        own_downs = bar or len(downs) > 1
        for segment in ups:
            self._up[segment] = self._new() if own_ups or middle is None else middle
        for segment in downs:
            self._down[segment] = self._new() if own_downs or middle is None else middle

    def _new(self) -> int:
        self._variables += 1
        return self._variables - 1

    def _two_inputs(self, item: Item) -> bool:
        """A switch with one or more inputs, which arrive beside its middle. (A UPS with one input is plain.)"""
        if not item.node or self._sketch.node[item.node].kind not in TWO_INPUTS:
            return False
        return len(item.ups) > 1 or (bool(item.ups) and self._sketch.node[item.node].kind == "transfer")

    def _join(self, straight: bool) -> bool:
        """Make columns and their differences. False where they go round in a circle."""
        column = list(range(self._variables))
        members = [[variable] for variable in column]
        if straight:
            for segment in self._straight_segments():
                low, high = self._down[segment], self._up[segment]
                old, new = column[high], column[low]
                if old != new:
                    for variable in members[old]:
                        column[variable] = new
                    members[new] += members[old]
                    members[old] = []
        self._column = column
        differences: dict[tuple[int, int], float] = {}
        for first, second, apart in self._differences():
            key = (column[first], column[second])
            if key[0] == key[1]:
                if apart > 0:
                    return False
                continue
            if apart > differences.get(key, float("-inf")):
                differences[key] = apart
        self._right_of: list[list[tuple[int, float]]] = [[] for _ in range(self._variables)]
        self._left_of: list[list[tuple[int, float]]] = [[] for _ in range(self._variables)]
        for (first, second), apart in differences.items():
            self._right_of[first].append((second, apart))
            self._left_of[second].append((first, apart))
        waiting = [len(left) for left in self._left_of]
        queue = [c for c in range(self._variables) if column[c] == c and not waiting[c]]
        for c in queue:
            for other, _ in self._right_of[c]:
                waiting[other] -= 1
                if not waiting[other]:
                    queue.append(other)
        self._sorted = queue
        return len(queue) == sum(1 for c in range(self._variables) if column[c] == c)

    def _straight_segments(self) -> Iterator[int]:
        """Segments of which no two cross, long lines first where some must give way."""
        segments = self._graph.segments
        for level in self._order[:-1]:
            upper = [s for item in level for s in self._downs[item]]
            below = self._order[self._graph.items[level[0]].level + 1]
            rank = {s: at for at, s in enumerate(s for item in below for s in self._ups[item])}
            places = [rank[s] for s in upper]
            if all(a < b for a, b in pairwise(places)):
                yield from upper
                continue
            at = {s: i for i, s in enumerate(upper)}
            kept: list[int] = []
            for s in sorted(upper, key=lambda s: (segments[s].first + segments[s].last, at[s])):
                if all((at[s] < at[k]) == (rank[s] < rank[k]) for k in kept):
                    kept.append(s)
            yield from kept

    def _differences(self) -> Iterator[tuple[int, int, float]]:
        tied = {frozenset((a, b)): edge for edge, a, b in self._graph.side_ties}
        for level in self._order:
            for item in level:
                yield from self._inside(item)
            for left, right in pairwise(level):
                apart = GAP_MM
                edge = tied.get(frozenset((left, right)))
                if edge is not None:
                    apart = max(TIE_MM, self._shapes.ties[edge].width_mm + 6)
                for a, reach in self._edge(left, rightwards=True):
                    for b, back in self._edge(right, rightwards=False):
                        yield a, b, reach + back + apart

    def _inside(self, index: int) -> Iterator[tuple[int, int, float]]:
        tops, bottoms = self._shapes.tops, self._shapes.bottoms
        ups, downs = self._ups[index], self._downs[index]
        for a, b in pairwise(ups):
            yield self._up[a], self._up[b], bottoms[a].right + bottoms[b].left + GAP_MM
        for a, b in pairwise(downs):
            yield self._down[a], self._down[b], tops[a].right + tops[b].left + GAP_MM
        middle = self._middle[index]
        if middle is None or not ups or self._up[ups[0]] == middle:
            return
        item, form = self._graph.items[index], self._shapes.items[index].form
        beside = 8.0 if form is Form.MEETING else PORT_MM if self._two_inputs(item) else 0.0
        yield self._up[ups[0]], middle, beside
        if len(ups) > 1:
            yield middle, self._up[ups[-1]], beside

    def _edge(self, index: int, rightwards: bool) -> Iterator[tuple[int, float]]:
        """How far the item reaches to one side, from each of the variables that may decide it."""
        shape, middle = self._shapes.items[index], self._middle[index]
        ups, downs = self._ups[index], self._downs[index]
        up, down = (ups[-1:], downs[-1:]) if rightwards else (ups[:1], downs[:1])
        title = shape.words.width_mm
        bar = shape.form is Form.BAR
        if middle is not None:
            half = max(title / 2, 8.0) if bar else 0.0
            yield middle, max(half, shape.right if rightwards else shape.left)
        for s in up:
            end = self._shapes.bottoms[s]
            reach = end.right if rightwards else end.left
            if bar:
                reach = max(reach, BAR_END_MM if rightwards else title + BAR_END_MM)
            yield self._up[s], reach
        for s in down:
            end = self._shapes.tops[s]
            reach = end.right if rightwards else end.left
            yield self._down[s], max(reach, BAR_END_MM) if bar else reach
        if bar and rightwards and downs and not ups:
            yield self._down[downs[0]], title - BAR_END_MM + LINE_CLEAR_MM

    # Packing and moving.

    def _pack(self) -> None:
        self._x = [0.0] * self._variables
        for c in self._sorted:
            for other, apart in self._right_of[c]:
                self._x[other] = max(self._x[other], self._x[c] + apart)

    def _at(self, variable: int) -> float:
        return self._x[self._column[variable]]

    def _middle_of(self, variables: list[int]) -> float:
        values = [self._at(v) for v in variables]
        return (min(values) + max(values)) / 2

    def _shift(self, columns: Iterable[int], by: float) -> None:
        """Move the columns together, as far as the others leave room."""
        group = set(columns)
        x = self._x
        for c in group:
            if by > 0:
                for other, apart in self._right_of[c]:
                    if other not in group:
                        by = min(by, x[other] - x[c] - apart)
            else:
                for other, apart in self._left_of[c]:
                    if other not in group:
                        by = max(by, x[other] - x[c] + apart)
        if abs(by) > 1e-6:
            for c in group:
                x[c] += by

    def _infeeds_over_middles(self) -> None:
        for level in reversed(self._order):
            for rightwards in (True, False):
                for index in reversed(level) if rightwards else level:
                    for variables, wanted in self._wishes(index):
                        by = wanted - self._middle_of(variables)
                        if (by > 1e-6) if rightwards else (by < -1e-6):
                            self._shift({self._column[v] for v in variables}, by)

    def _wishes(self, index: int) -> Iterator[tuple[list[int], float]]:
        ups = [self._up[s] for s in self._ups[index]]
        downs = [self._down[s] for s in self._downs[index]]
        middle = self._middle[index]
        if middle is None:
            if ups and downs:
                yield ups, self._middle_of(downs)
            return
        if len(downs) > 1:
            yield [middle], self._middle_of(downs)
        if ups and ups[0] != middle and len(downs) <= 1:
            yield [middle], self._middle_of(ups) if len(ups) > 1 else self._at(ups[0]) + PORT_MM

    def _branches_under_infeeds(self) -> None:
        for level in self._order:
            for rightwards in (True, False):
                for index in reversed(level) if rightwards else level:
                    downs = [self._down[s] for s in self._downs[index]]
                    above = self._above(index)
                    if not downs or not above or downs[0] == above[0]:
                        continue
                    by = self._middle_of(above) - self._middle_of(downs)
                    if (by > 1e-6) if rightwards else (by < -1e-6):
                        self._shift(self._branch(self._downs[index]), by)

    def _above(self, index: int) -> list[int]:
        middle = self._middle[index]
        return [middle] if middle is not None else [self._up[s] for s in self._ups[index]]

    def _branch(self, segments: Iterable[int]) -> set[int]:
        """The columns of the segments and of everything below them."""
        columns: set[int] = set()
        todo = list(segments)
        seen: set[int] = set()
        while todo:
            segment = todo.pop()
            columns.add(self._column[self._down[segment]])
            columns.add(self._column[self._up[segment]])
            lower = self._graph.segments[segment].lower
            if lower in seen:
                continue
            seen.add(lower)
            middle = self._middle[lower]
            if middle is not None:
                columns.add(self._column[middle])
            todo.extend(self._downs[lower])
        return columns

    def _draw_branches_together(self) -> None:
        """Close gaps beside the middle of each board, inner branches first."""
        for level in reversed(self._order):
            for index in level:
                downs = self._downs[index]
                if len(downs) < 2:
                    continue
                wanted = self._middle_of([self._down[s] for s in downs])
                left = [s for s in downs if self._at(self._down[s]) < wanted]
                right = [s for s in downs if self._at(self._down[s]) > wanted]
                for s in reversed(left):
                    self._shift(self._branch([s]), wanted - self._at(self._down[s]))
                for s in right:
                    self._shift(self._branch([s]), wanted - self._at(self._down[s]))

    def _result(self) -> Places:
        bars: dict[int, tuple[float, float]] = {}
        edges: list[tuple[float, float]] = []
        for item in self._graph.items:
            left = min(self._at(v) - reach for v, reach in self._edge(item.index, rightwards=False))
            right = max(self._at(v) + reach for v, reach in self._edge(item.index, rightwards=True))
            edges.append((left, right))
            if self._shapes.items[item.index].form is Form.BAR:
                taps = [self._up[s] for s in item.ups] + [self._down[s] for s in item.downs]
                far = max((self._at(v) for v in taps), default=right - BAR_END_MM) + BAR_END_MM
                bars[item.index] = (left, max(far, left + self._shapes.items[item.index].words.width_mm))
        start = min((left for left, _ in edges), default=0.0)
        width = max((right for _, right in edges), default=0.0) - start
        return Places(
            [None if m is None else self._at(m) - start for m in self._middle],
            [self._at(self._down[s.index]) - start for s in self._graph.segments],
            [self._at(self._up[s.index]) - start for s in self._graph.segments],
            {i: (a - start, b - start) for i, (a, b) in bars.items()},
            self._ups,
            self._downs,
            width,
        )
