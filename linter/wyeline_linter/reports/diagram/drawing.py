"""From a sketch to a picture: levels, order and places, then heights, lines and words."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from wyeline_linter.reports.diagram.components import components_of, in_rows, taken_in_rows
from wyeline_linter.reports.diagram.glyphs import PORT_MM, TWO_INPUTS, Practice, device_glyph, node_glyph
from wyeline_linter.reports.diagram.labels import Block
from wyeline_linter.reports.diagram.layering import Levels, levels_of
from wyeline_linter.reports.diagram.ordering import Ordering
from wyeline_linter.reports.diagram.picture import Bar, Part, Picture, PlacedGlyph, PlacedText, Point
from wyeline_linter.reports.diagram.placing import Places, Placing
from wyeline_linter.reports.diagram.shaping import (
    CROSS_MM,
    DEVICE_MM,
    DEVICE_TO_TEXT_MM,
    LINE_TO_TEXT_MM,
    TIE_MM,
    EndShape,
    Form,
    ItemShape,
    Shapes,
    shapes_of,
)
from wyeline_linter.reports.diagram.sketch import Device, Edge, Kind, Sketch
from wyeline_linter.reports.diagram.tracks import Jog, tracks_of

UPRIGHT_FROM = 12
"""A board with this many end loads gets narrow columns with turned words."""
_AFTER_ITEM_MM, _AFTER_WORDS_MM, _BEFORE_ITEM_MM = 2.0, 1.5, 1.5
_TRACK_MM = 3.0
_LEAD_MM = 2.5


@dataclass(frozen=True, slots=True)
class _Plan:
    sketch: Sketch
    graph: Levels
    order: list[list[int]]
    crossings: int


def _plan(sketch: Sketch, sunken: bool) -> _Plan:
    graph = levels_of(sketch, sunken)
    ordering = Ordering(graph)
    order = ordering.order()
    return _Plan(sketch, graph, order, ordering.crossings(order))


class Drawing:
    """A sketch with its levels and order found, ready to be drawn with more or less narrow columns."""

    def __init__(self, sketch: Sketch, practice: Practice = "us", known: dict[Sketch, Planned] | None = None) -> None:
        """``known`` keeps what hangs together for other sketches that it stands in, too."""
        known = known if known is not None else {}
        self._parts = [
            known.get(part) or known.setdefault(part, Planned(part, practice)) for part in components_of(sketch)
        ]

    def picture(self, upright_from: int = UPRIGHT_FROM) -> Picture:
        """One picture as large as it needs. A board with ``upright_from`` end loads or more gets narrow columns."""
        return in_rows([part.placed(upright_from).picture() for part in self._parts])

    def size(self, upright_from: int = UPRIGHT_FROM) -> tuple[float, float]:
        """The width and the height of that picture, without drawing it."""
        return taken_in_rows([part.placed(upright_from) for part in self._parts])


class Planned:
    """What hangs together with its levels and order, set in its places once for each number of narrow columns."""

    def __init__(self, sketch: Sketch, practice: Practice) -> None:
        self._practice = practice
        plans = (_plan(sketch, sunken) for sunken in (False, True))
        best = next(plans)
        if best.crossings:
            best = min(best, next(plans), key=lambda plan: plan.crossings)
        self._plan = best
        self._placed: dict[int, _Draughtsman] = {}

    def placed(self, upright_from: int) -> _Draughtsman:
        found = self._placed.get(upright_from)
        if found is None:
            plan = self._plan
            shapes = shapes_of(plan.sketch, plan.graph, self._practice, upright_from)
            places = Placing(plan.sketch, plan.graph, shapes, plan.order).places()
            found = _Draughtsman(plan.sketch, plan.graph, shapes, plan.order, places, self._practice)
            self._placed[upright_from] = found
        return found


class _Draughtsman:
    def __init__(
        self,
        sketch: Sketch,
        graph: Levels,
        shapes: Shapes,
        order: list[list[int]],
        places: Places,
        practice: Practice,
    ) -> None:
        self._sketch, self._graph, self._shapes, self._order = sketch, graph, shapes, order
        self._places, self._practice = places, practice
        self._y: list[float] = []
        self._tracks: dict[int, float] = {}
        self.width, self.height = places.width, 0.0
        self._set_heights()

    def picture(self) -> Picture:
        self._edges = {e.id: e for e in self._sketch.edges}
        self._parts = {("edge", e.id): Part(e.id, True) for e in self._sketch.edges}
        self._parts.update({("node", n.id): Part(n.id, False) for n in self._sketch.nodes})
        for item in self._graph.items:
            form = self._shapes.items[item.index].form
            if form is Form.BAR:
                self._draw_bar(item.index)
            elif form is Form.SYMBOL:
                self._draw_symbol(item.index)
            elif form is Form.MEETING:
                self._draw_meeting(item.index)
        self._draw_lines()
        for edge, a, b in self._graph.side_ties:
            self._draw_side_tie(edge, a, b)
        return Picture(tuple(self._parts.values()), self.width, self.height)

    # Heights.

    def _set_heights(self) -> None:
        cursor = 0.0
        for level in self._order:
            cursor += max((self._room_above(item) for item in level), default=0.0)
            self._y.append(cursor)
            lowest = max((self._bottom(item) + _AFTER_WORDS_MM for item in level), default=cursor)
            segments = [s for item in level for s in self._places.downs[item]]
            for s in segments:
                lowest = max(lowest, self._top_words_y(s) + self._shapes.tops[s].length + _AFTER_WORDS_MM)
            jogs = [
                Jog(s, self._places.top[s], self._places.bottom[s])
                for s in segments
                if abs(self._places.top[s] - self._places.bottom[s]) > 1e-6
            ]
            tracks = tracks_of(jogs)
            for jog, track in tracks.items():
                self._tracks[jog] = lowest + (track + 0.5) * _TRACK_MM
            cursor = lowest + (max(tracks.values(), default=-1) + 1) * _TRACK_MM
            self.height = cursor

    def _room_above(self, item: int) -> float:
        shape = self._shapes.items[item]
        room = 0.0
        if shape.form is Form.BAR:
            room = shape.words.height_mm + 3.0
            for edge, a, b in self._graph.side_ties:
                if item in (a, b):
                    room = max(room, self._shapes.ties[edge].height_mm + 5.0)
        for s in self._places.ups[item]:
            length = self._shapes.bottoms[s].length
            room = max(room, length + 2 * _BEFORE_ITEM_MM if length else 2.0)
        return room

    def _level_y(self, item: int) -> float:
        return self._y[self._graph.items[item].level]

    def _bottom(self, item: int) -> float:
        return self._level_y(item) + self._shapes.items[item].height

    def _top_words_y(self, segment: int) -> float:
        return self._bottom(self._graph.segments[segment].upper) + _AFTER_ITEM_MM

    # Nodes.

    def _draw_bar(self, index: int) -> None:
        item, shape = self._graph.items[index], self._shapes.items[index]
        left, right = self._places.bars[index]
        y = self._level_y(index)
        part = self._parts["node", item.node]
        cased = self._sketch.node[item.node].kind is Kind.BUSWAY
        part.bars.append(Bar(left, right, y, cased))
        part.texts.append(PlacedText(shape.words, left, y - (2.6 if cased else 1.7) - shape.words.height_mm))
        part.marks.extend(((left + 2, y), (right - 2, y)))

    def _draw_symbol(self, index: int) -> None:
        item, shape = self._graph.items[index], self._shapes.items[index]
        node = self._sketch.node[item.node]
        part = self._parts["node", item.node]
        x = self._middle(index)
        y = self._glyph_y(index)
        glyph = shape.glyph
        if node.kind is Kind.TRANSFER:
            glyph = node_glyph(node, self._practice, stands_right=self._stands_right(index))
        part.glyphs.append(PlacedGlyph(glyph, x, y))
        part.marks.append((x, y + shape.glyph.height / 2))
        if shape.words.lines:
            part.texts.append(self._symbol_words(shape, x, y))
        ups = self._places.ups[index]
        if len(ups) > 1 and node.kind not in TWO_INPUTS:
            part.wires.append(((x, self._level_y(index) + _LEAD_MM), (x, y)))
            self._dot_joints(part, [self._places.bottom[s] for s in ups], x, self._level_y(index) + _LEAD_MM)
        downs = self._places.downs[index]
        if len(downs) > 1:
            fork = self._bottom(index)
            taps = [self._places.top[s] for s in downs]
            part.wires.append(((x, y + shape.glyph.height), (x, fork)))
            part.wires.append(((min(*taps, x), fork), (max(*taps, x), fork)))
            self._dot_joints(part, taps, x, fork)

    def _stands_right(self, index: int) -> bool:
        """Whether the input that a transfer switch connects arrives on the right."""
        item = self._graph.items[index]
        segments = self._graph.segments
        arriving = {e.id for e in self._sketch.edges_to[item.node]}
        stands = self._sketch.node[item.node].stands_on
        if stands not in arriving:
            stands = next((e.id for e in self._sketch.edges if e.id in arriving), "")
        ups = self._places.ups[index]
        return any(segments[s].edge == stands for s in ups[1:])

    def _dot_joints(self, part: Part, taps: list[float], middle: float, y: float) -> None:
        low, high = min(*taps, middle), max(*taps, middle)
        part.dots.extend((t, y) for t in sorted({*taps, middle}) if low + 0.01 < t < high - 0.01)

    def _symbol_words(self, shape: ItemShape, x: float, y: float) -> PlacedText:
        glyph = shape.glyph
        if shape.upright:
            return PlacedText(shape.words, x - shape.words.height_mm / 2, y + glyph.height + 1.5, upright=True)
        down = max(0.0, (glyph.height - shape.words.height_mm) / 2)
        return PlacedText(shape.words, x + glyph.right + LINE_TO_TEXT_MM, y + down)

    def _middle(self, index: int) -> float:
        middle = self._places.middle[index]
        assert middle is not None
        return middle

    def _glyph_y(self, index: int) -> float:
        item = self._graph.items[index]
        kind = self._sketch.node[item.node].kind
        above = 2 * _LEAD_MM if len(item.ups) > 1 or kind in TWO_INPUTS else 0.0
        return self._level_y(index) + above

    # Edges.

    def _draw_lines(self) -> None:
        for segment in self._graph.segments:
            if segment.first:
                self._draw_line(segment.index)

    def _draw_line(self, first: int) -> None:
        part = self._parts["edge", self._graph.segments[first].edge]
        points: list[Point] = []
        cuts: list[tuple[float, float, float]] = []
        segment = self._graph.segments[first]
        while True:
            s = segment.index
            top, bottom = self._places.top[s], self._places.bottom[s]
            points.append((top, self._line_start(segment.upper)))
            if s in self._tracks:
                points += [(top, self._tracks[s]), (bottom, self._tracks[s])]
            end = self._level_y(segment.lower)
            points.append((bottom, end))
            cuts += self._end_words(part, self._shapes.tops[s], top, self._top_words_y(s), device_first=True)
            shape = self._shapes.bottoms[s]
            cuts += self._end_words(part, shape, bottom, end - _BEFORE_ITEM_MM - shape.length, device_first=False)
            if segment.last:
                break
            segment = self._graph.segments[self._graph.items[segment.lower].downs[0]]
        points += self._line_end(segment.lower, segment.index)
        pieces = _pieces(_simplified(points), cuts)
        part.wires.extend(pieces)
        shape = self._shapes.tops[first]
        part.marks.append((self._places.top[first], self._top_words_y(first) + shape.length - CROSS_MM / 2))

    def _line_start(self, upper: int) -> float:
        shape = self._shapes.items[upper]
        if shape.form is Form.SYMBOL and len(self._graph.items[upper].downs) < 2:
            return self._glyph_y(upper) + shape.glyph.height
        if shape.form is Form.SYMBOL:
            return self._bottom(upper)
        return self._level_y(upper)

    def _line_end(self, lower: int, segment: int) -> list[Point]:
        """From the level of the supplied item into its symbol, where the line does not end straight above it."""
        shape, item = self._shapes.items[lower], self._graph.items[lower]
        x, y = self._places.bottom[segment], self._level_y(lower) + _LEAD_MM
        if shape.form is Form.MEETING:
            half = DEVICE_MM / 2 if self._tie_device(item.edge) else 0.0
            middle = self._middle(lower)
            return [(x, y), (middle - half if x < middle else middle + half, y)]
        if shape.form is not Form.SYMBOL or self._glyph_y(lower) == self._level_y(lower):
            return []
        middle = self._middle(lower)
        if self._sketch.node[item.node].kind not in TWO_INPUTS:
            return [(x, y), (middle, y)]
        if len(item.ups) == 1 and self._sketch.node[item.node].kind is not Kind.TRANSFER:
            port = middle
        else:
            port = middle - PORT_MM if segment == self._places.ups[lower][0] else middle + PORT_MM
        return [(x, y), (port, y), (port, self._glyph_y(lower))]

    def _end_words(
        self, part: Part, shape: EndShape, x: float, y: float, device_first: bool
    ) -> list[tuple[float, float, float]]:
        """Place the device and words of one end from y downwards. Returns where the line must be cut."""
        if not shape.length:
            return []
        cuts: list[tuple[float, float, float]] = []
        turned = shape.upright
        words_long = shape.words.width_mm if turned else shape.words.height_mm
        device_words_long = shape.device_words.width_mm if turned else shape.device_words.height_mm
        if not device_first and shape.words.lines:
            part.texts.append(PlacedText(shape.words, x + LINE_TO_TEXT_MM, y, upright=turned))
            y += words_long + (1.2 if shape.length > words_long else 0.0)
        beside = y
        if shape.device is not None:
            at = y if device_first else y + max(0.0, device_words_long - DEVICE_MM)
            part.glyphs.append(PlacedGlyph(device_glyph(shape.device.kind, self._practice), x, at))
            cuts.append((x, at, at + DEVICE_MM))
            beside = y + max(0.0, (DEVICE_MM - device_words_long) / 2)
        if shape.device_words.lines:
            part.texts.append(PlacedText(shape.device_words, x + DEVICE_TO_TEXT_MM, beside, upright=turned))
        return cuts

    # Ties.

    def _tie_device(self, edge: str) -> Device | None:
        found: Edge = self._edges[edge]
        return found.device or found.main

    def _draw_meeting(self, index: int) -> None:
        edge = self._graph.items[index].edge
        x, y = self._middle(index), self._level_y(index) + _LEAD_MM
        self._draw_tie_device(edge, x, y)
        words = self._shapes.items[index].words
        self._tie_words(edge, words, x, y + 3.5)

    def _draw_side_tie(self, edge: str, a: int, b: int) -> None:
        left, right = sorted((a, b), key=lambda i: self._places.bars[i])
        start, end = self._places.bars[left][1], self._places.bars[right][0]
        words = self._shapes.ties[edge]
        x, y = end - max(TIE_MM, words.width_mm + 6) / 2, self._level_y(a)
        half = DEVICE_MM / 2 if self._tie_device(edge) else 0.0
        part = self._parts["edge", edge]
        wires: list[tuple[Point, ...]] = [((start, y), (x - half, y)), ((x + half, y), (end, y))]
        if not half:
            wires = [((start, y), (end, y))]
        part.wires.extend(wires)
        part.marks.append(((start + x - half) / 2, y))
        self._draw_tie_device(edge, x, y)
        self._tie_words(edge, words, x, y - 3.3 - words.height_mm)

    def _draw_tie_device(self, edge: str, x: float, y: float) -> None:
        device = self._tie_device(edge)
        if device is not None:
            glyph = device_glyph(device.kind, self._practice)
            self._parts["edge", edge].glyphs.append(PlacedGlyph(glyph, x - DEVICE_MM / 2, y, lying=True))

    def _tie_words(self, edge: str, words: Block, x: float, y: float) -> None:
        if words.lines:
            self._parts["edge", edge].texts.append(PlacedText(words, x - words.width_mm / 2, y, centred=True))


def _simplified(points: list[Point]) -> list[Point]:
    """Without repeated points and without points in the middle of a straight line."""
    result: list[Point] = []
    for point in points:
        if result and abs(result[-1][0] - point[0]) < 1e-6 and abs(result[-1][1] - point[1]) < 1e-6:
            continue
        if len(result) > 1 and (
            abs(result[-2][0] - point[0]) < 1e-6 > abs(result[-1][0] - point[0])
            or abs(result[-2][1] - point[1]) < 1e-6 > abs(result[-1][1] - point[1])
        ):
            result.pop()
        result.append(point)
    return result


def _pieces(points: list[Point], cuts: list[tuple[float, float, float]]) -> list[tuple[Point, ...]]:
    """The line without the stretches (x, from y, to y) that devices take."""
    pieces: list[tuple[Point, ...]] = []
    piece = points[:1]
    for a, b in pairwise(points):
        if abs(a[0] - b[0]) < 1e-6:
            for x, low, high in sorted(cuts, key=lambda c: c[1]):
                if abs(x - a[0]) < 1e-6 and a[1] - 1e-6 <= low and high <= b[1] + 1e-6:
                    pieces.append((*piece, (x, low)))
                    piece = [(x, high)]
        piece.append(b)
    pieces.append(tuple(piece))
    return pieces
