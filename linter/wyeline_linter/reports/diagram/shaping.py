"""How much room each thing on the drawing takes: symbols with their words, and the words at both ends of a line."""

from __future__ import annotations

import enum
from dataclasses import dataclass, replace
from functools import lru_cache

from wyeline_linter.reports.diagram.glyphs import TWO_INPUTS, Glyph, Practice, node_glyph
from wyeline_linter.reports.diagram.labels import EMPTY_BLOCK, Block, text_block
from wyeline_linter.reports.diagram.layering import Item, Levels, Segment
from wyeline_linter.reports.diagram.sketch import BUSES, Device, Edge, Node, Sketch, Status

LINE_TO_TEXT_MM = 1.8
DEVICE_TO_TEXT_MM = 2.3
CROSS_MM = 4.0
"""Room on a line to be demolished for its cross."""
GAP_MM = 3.0
BAR_END_MM = 5.0
LINE_CLEAR_MM = 1.5
DEVICE_MM = 6.0
"""Height of a device's symbol."""
DEVICE_LEFT_MM, DEVICE_RIGHT_MM = 2.6, 1.4
TIE_MM = 16.0
"""Least length of the line between two tied boards."""
_LABEL_WIDTH_MM, _NODE_WIDTH_MM, _TITLE_WIDTH_MM = 28.5, 30.0, 46.0
_UPRIGHT_LABEL_MM, _UPRIGHT_NODE_MM, _UPRIGHT_DEVICE_MM = 46.0, 38.0, 18.0


class Form(enum.Enum):
    """``BEND``: a line passing a level. ``BAR``: a bus. ``MEETING``: a tie below its boards. ``SYMBOL``: the rest."""

    BEND = 1
    BAR = 2
    MEETING = 3
    SYMBOL = 4


@dataclass(frozen=True, slots=True)
class ItemShape:
    """``words`` stand right of a symbol, below a leaf's symbol where ``upright`` (turned), above the start of a bar."""

    form: Form
    glyph: Glyph
    words: Block
    upright: bool
    left: float
    right: float
    height: float


@dataclass(frozen=True, slots=True)
class EndShape:
    """What stands at one end of a line: a device with its words, and (at the supplied end) the words of the line.

    ``length`` is the room along the line, ``right`` across it, both without margins.
    """

    device: Device | None
    device_words: Block
    words: Block
    upright: bool
    left: float
    right: float
    length: float


@dataclass(frozen=True, slots=True)
class Shapes:
    """By item index, and by segment index at the segment's upper and lower end."""

    items: list[ItemShape]
    tops: list[EndShape]
    bottoms: list[EndShape]
    ties: dict[str, Block]


_NO_GLYPH = Glyph(0, 0, 0)
_BEND = ItemShape(Form.BEND, _NO_GLYPH, EMPTY_BLOCK, False, LINE_CLEAR_MM, LINE_CLEAR_MM, 0)
_PLAIN_END = EndShape(None, EMPTY_BLOCK, EMPTY_BLOCK, False, LINE_CLEAR_MM, LINE_CLEAR_MM, 0)


def shapes_of(sketch: Sketch, graph: Levels, practice: Practice, upright_from: int) -> Shapes:
    """Measure everything. A board with ``upright_from`` or more end loads gets them in narrow columns, words turned."""
    edges = {e.id: e for e in sketch.edges}
    upright = _upright_leaves(sketch, upright_from)
    items = [_item_shape(sketch, edges, item, practice, upright) for item in graph.items]
    tops, bottoms = [], []
    for segment in graph.segments:
        edge = edges[segment.edge]
        tops.append(_top(edge, graph, segment, upright))
        bottoms.append(_bottom(edge, graph, segment, upright))
    ties = {edge: text_block(_tie_words(edges[edge]), _LABEL_WIDTH_MM) for edge, _, _ in graph.side_ties}
    return Shapes(items, tops, bottoms, ties)


def is_bar(sketch: Sketch, node: str) -> bool:
    """Whether a board is drawn as a bar: it feeds something, has several supplies, or is tied to another board."""
    if sketch.node[node].kind not in BUSES:
        return False
    around = sketch.edges_to[node]
    return bool(sketch.edges_from[node]) or len(around) > 1 or any(e.tie for e in around)


def _upright_leaves(sketch: Sketch, upright_from: int) -> set[str]:
    leaves = {
        n.id
        for n in sketch.nodes
        if not sketch.edges_from[n.id]
        and len(sketch.edges_to[n.id]) == 1
        and not sketch.edges_to[n.id][0].tie
        and n.kind not in TWO_INPUTS
    }
    found: set[str] = set()
    for node in sketch.nodes:
        fed = [e.target for e in sketch.edges_from[node.id] if e.target in leaves]
        if len(fed) >= upright_from and node.kind in BUSES:
            found.update(fed)
    return found


def _item_shape(sketch: Sketch, edges: dict[str, Edge], item: Item, practice: Practice, upright: set[str]) -> ItemShape:
    if not item.node:
        if len(item.ups) < 2:
            return _BEND
        words = text_block(_tie_words(edges[item.edge]), _LABEL_WIDTH_MM)
        half = max(8.0, words.width_mm / 2)
        return ItemShape(Form.MEETING, _NO_GLYPH, words, False, half, half, 7.0 + words.height_mm)
    node = sketch.node[item.node]
    if is_bar(sketch, node.id):
        words = text_block(node.words, _TITLE_WIDTH_MM, node.tag)
        return ItemShape(Form.BAR, _NO_GLYPH, words, False, 0, 0, 0.6)
    glyph = node_glyph(node, practice)
    if node.id in upright and item.ups:
        words = text_block(node.words, _UPRIGHT_NODE_MM, node.tag)
        half = words.height_mm / 2
        height = glyph.height + 1.5 + words.width_mm
        return ItemShape(Form.SYMBOL, glyph, words, True, max(glyph.left, half), max(glyph.right, half), height)
    words = text_block(node.words, _NODE_WIDTH_MM, node.tag)
    right = glyph.right + (LINE_TO_TEXT_MM + words.width_mm if words.lines else 0)
    above = 5.0 if len(item.ups) > 1 or node.kind in TWO_INPUTS else 0.0
    below = 3.0 if len(item.downs) > 1 else 0.0
    height = above + max(glyph.height, words.height_mm) + below
    return ItemShape(Form.SYMBOL, glyph, words, False, glyph.left, right, height)


@lru_cache(maxsize=1 << 15)  # a sketch too large for one sheet is asked again for every part of it
def least_area_mm2(node: Node, practice: Practice) -> float:
    """What a symbol with its words and the gap beside it takes of a drawing at least, however it stands; nothing for
    a board, which may be a bar."""
    if node.kind in BUSES:
        return 0.0
    glyph = node_glyph(node, practice)
    turned, beside = (text_block(node.words, width, node.tag) for width in (_UPRIGHT_NODE_MM, _NODE_WIDTH_MM))
    half = turned.height_mm / 2
    upright = (max(glyph.left, half) + max(glyph.right, half) + GAP_MM) * (glyph.height + turned.width_mm)
    across = glyph.left + glyph.right + beside.width_mm + GAP_MM
    return min(upright, across * max(glyph.height, beside.height_mm))


def _tie_words(edge: Edge) -> tuple[str, ...]:
    device = edge.device or edge.main
    return (*(device.lines if device else ()), *(("N.O.",) if edge.normally_open else ()), *edge.lines)


def _top(edge: Edge, graph: Levels, segment: Segment, upright: set[str]) -> EndShape:
    if not segment.first or _is_below_tie(graph, segment):
        return _PLAIN_END
    supplied = segment.upward
    device = edge.main if supplied else edge.device
    opens = edge.normally_open and device is not None and (edge.device is None or not supplied)
    port = edge.to_port if supplied else edge.from_port
    words = (*([port] if port else []), *(device.lines if device else ()), *(("N.O.",) if opens else ()))
    turned = edge.target in upright
    block = text_block(words, _UPRIGHT_DEVICE_MM if turned else _LABEL_WIDTH_MM)
    made = _end(device, block, EMPTY_BLOCK, turned)
    return replace(made, length=made.length + CROSS_MM) if edge.status is Status.DEMOLISH else made


def _bottom(edge: Edge, graph: Levels, segment: Segment, upright: set[str]) -> EndShape:
    if not segment.last or _is_below_tie(graph, segment):
        return _PLAIN_END
    device = edge.device if segment.upward else edge.main
    port = edge.from_port if segment.upward else edge.to_port
    open_words = ("N.O.",) if edge.normally_open and edge.device is None and edge.main is None else ()
    turned = edge.target in upright
    width = _UPRIGHT_LABEL_MM if turned else _LABEL_WIDTH_MM
    # "N.O." stands once: at the device of the supplying end, else at the main, else with the words of the line.
    opens = edge.normally_open and device is not None and (edge.device is None or segment.upward)
    device_words = (*(device.lines if device else ()), *(("N.O.",) if opens else ()))
    return _end(
        device,
        text_block(device_words, width),
        text_block((*edge.lines, *open_words, *([port] if port else [])), width),
        turned,
    )


def _end(device: Device | None, device_words: Block, words: Block, turned: bool) -> EndShape:
    left = DEVICE_LEFT_MM if device else LINE_CLEAR_MM
    right = DEVICE_RIGHT_MM if device else LINE_CLEAR_MM
    if device_words.lines:
        right = max(right, DEVICE_TO_TEXT_MM + _across(device_words, turned))
    if words.lines:
        right = max(right, LINE_TO_TEXT_MM + _across(words, turned))
    device_length = max(DEVICE_MM if device else 0.0, _along(device_words, turned))
    words_length = _along(words, turned)
    between = 1.2 if device_length and words_length else 0.0
    return EndShape(device, device_words, words, turned, left, right, device_length + between + words_length)


def _across(block: Block, turned: bool) -> float:
    return block.height_mm if turned else block.width_mm


def _along(block: Block, turned: bool) -> float:
    return block.width_mm if turned else block.height_mm


def _is_below_tie(graph: Levels, segment: Segment) -> bool:
    """Whether the segment belongs to a line that ends at the meeting point of a tie (its words stand there)."""
    while not segment.last:
        lower = graph.items[segment.lower]
        segment = graph.segments[lower.downs[0]]
    return not graph.items[segment.lower].node
