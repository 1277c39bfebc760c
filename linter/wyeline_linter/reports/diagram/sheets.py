"""Sheets as they are handed over: the drawing within a frame, with a title strip, a line legend and the cautions."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

from wyeline_linter.reports.diagram.drawing import UPRIGHT_FROM, Drawing, Planned
from wyeline_linter.reports.diagram.glyphs import Practice
from wyeline_linter.reports.diagram.papers import A3, SheetSize
from wyeline_linter.reports.diagram.picture import Picture
from wyeline_linter.reports.diagram.shaping import GAP_MM, least_area_mm2
from wyeline_linter.reports.diagram.sketch import Sketch
from wyeline_linter.reports.diagram.splitting import Reference, sheet_link, split
from wyeline_linter.reports.diagram.svg import number, parts_svg, svg_page
from wyeline_linter.reports.diagram.symbol_legend import Symbol, symbols_of
from wyeline_linter.reports.diagram.title_strip import (
    EDGE_MM,
    STRIP_MM,
    TABLE_MM,
    TitleBlock,
    table_height_mm,
    title_strip,
)


@dataclass(frozen=True, slots=True)
class Sheet:
    """One finished sheet. ``heads`` are the tags of its leading boards, ``scale`` how much the drawing was reduced."""

    number: int
    count: int
    heads: tuple[str, ...]
    sketch: Sketch
    picture: Picture
    scale: float
    svg: str


@dataclass(frozen=True, slots=True)
class SheetSet:
    """All sheets, and the feeders that go from one to another."""

    sheets: tuple[Sheet, ...]
    references: tuple[Reference, ...]


_PADDING_MM = 5.0
_MOST_SCALE = 1.2
_UPRIGHT = (UPRIGHT_FROM, 6)


def sheets_of(sketch: Sketch, title: TitleBlock, size: SheetSize = A3, practice: Practice = "us") -> SheetSet:
    """Draw the sketch on as many sheets as it needs. The same input gives the same bytes."""
    known: dict[Sketch, Planned] = {}
    seen: dict[Sketch, bool] = {}
    rooms, least = _rooms(size, title), size.least_scale

    def fits(part: Sketch) -> bool:
        if part not in seen:
            too_much = _too_much(part, rooms, practice, least)
            seen[part] = not too_much and _set(Drawing(part, practice, known), rooms, least)[1] >= least
        return seen[part]

    parts = split(sketch, fits)
    count = len(parts.sketches)
    made = []
    for at, (part, heads) in enumerate(zip(parts.sketches, parts.heads, strict=True), 1):
        drawing = Drawing(part, practice, known)
        upright_from, scale = _set(drawing, rooms, least)
        picture = drawing.picture(upright_from)
        svg = _sheet_svg(part, picture, scale, title, size, (at, count, heads), symbols_of(part, picture, practice))
        made.append(Sheet(at, count, heads, part, picture, scale, svg))
    return SheetSet(tuple(made), parts.references)


def _too_much(sketch: Sketch, rooms: Sequence[_Room], practice: Practice, scale: float) -> bool:
    """Whether the symbols alone, set without a gap between their rows, take more than a sheet at its least scale."""
    least = sum(least_area_mm2(node, practice) for node in sketch.nodes)
    return all(least > (room.width / scale + GAP_MM) * room.height / scale for room in rooms)


def _set(drawing: Drawing, rooms: Sequence[_Room], least: float) -> tuple[int, float]:
    """From how many end loads on words are turned, as late as possible, and the scale at which that fits the sheet."""
    best: tuple[int, float] | None = None
    for upright_from in _UPRIGHT:
        size = drawing.size(upright_from)
        scale = max(room.scale(size, least) for room in rooms)
        if best is None or scale > best[1]:
            best = (upright_from, scale)
        if scale >= least:
            break
    assert best is not None
    return best


class _Room(NamedTuple):
    """What is free for the drawing, from the upper left corner of the frame."""

    width: float
    height: float

    def scale(self, size: tuple[float, float], least: float) -> float:
        """How large a picture may be drawn in it, where it is not to be smaller than ``least``."""
        width, height = size
        return min(max(_MOST_SCALE, least), self.width / max(width, 1.0), self.height / max(height, 1.0))


def _rooms(size: SheetSize, title: TitleBlock) -> tuple[_Room, ...]:
    """The rooms beside the strip: with a revision table on it, above the table and to the left of it."""
    width = size.room_width - 2 * (EDGE_MM + _PADDING_MM)
    height = size.room_height - 2 * (EDGE_MM + _PADDING_MM) - STRIP_MM
    if not title.issues:
        return (_Room(width, height),)
    return _Room(width, height - table_height_mm(title)), _Room(width - TABLE_MM, height)


def _sheet_svg(
    sketch: Sketch,
    picture: Picture,
    scale: float,
    title: TitleBlock,
    size: SheetSize,
    place: tuple[int, int, tuple[str, ...]],
    symbols: tuple[Symbol, ...],
) -> str:
    at, count, heads = place
    room = max(_rooms(size, title), key=lambda room: room.scale((picture.width, picture.height), size.least_scale))
    left = EDGE_MM + _PADDING_MM + (room.width - picture.width * scale) / 2
    # A drawing lower than the sheet hangs in its upper third, as one hangs a picture.
    top = EDGE_MM + _PADDING_MM + (room.height - picture.height * scale) / 3
    move = f"translate({number(left)} {number(top)}) scale({scale:.4f})"
    body = f'<g transform="{move}">\n{parts_svg(picture, sketch)}</g>\n'
    name = f"{title.project}: one-line diagram, sheet {at} of {count} ({', '.join(heads)})"
    strip = title_strip(title, size, place, symbols)
    return svg_page(size, name, body + strip, sheet_link(at))
