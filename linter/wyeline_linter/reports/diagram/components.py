"""Equipment that hangs together, apart from what does not: each group is drawn by itself, then all are set in rows."""

from __future__ import annotations

from dataclasses import replace
from typing import Protocol, TypeVar

from wyeline_linter.reports.diagram.picture import Bar, Part, Picture, PlacedGlyph, PlacedText
from wyeline_linter.reports.diagram.sketch import Sketch

_APART_MM = 9.0
_SHEET_WIDTH, _SHEET_HEIGHT = 390.0, 240.0
"""The shape that rows aim at: the room for a drawing on a sheet."""

_TRIED = 16
"""Of so many pictures every row that they could make is tried as the width; of more, those from the first on."""


class Sized(Protocol):
    """What takes a room, in millimetres."""

    @property
    def width(self) -> float: ...
    @property
    def height(self) -> float: ...


T = TypeVar("T", bound=Sized)


def components_of(sketch: Sketch) -> list[Sketch]:
    """One sketch for each connected group, in the order of their first nodes."""
    group = {n.id: n.id for n in sketch.nodes}

    def root(name: str) -> str:
        while group[name] != name:
            group[name] = group[group[name]]
            name = group[name]
        return name

    for edge in sketch.edges:
        group[root(edge.target)] = root(edge.source)
    roots = {n.id: root(n.id) for n in sketch.nodes}
    members = dict.fromkeys(roots.values())
    if len(members) < 2:
        return [sketch]
    return [
        Sketch(
            tuple(n for n in sketch.nodes if roots[n.id] == name),
            tuple(e for e in sketch.edges if roots[e.source] == name),
            sketch.title,
        )
        for name in members
    ]


def in_rows(pictures: list[Picture]) -> Picture:
    """All pictures in rows from left to right, of a width that leaves them as large as possible on a sheet."""
    if len(pictures) == 1:
        return pictures[0]
    parts: list[Part] = []
    y = 0.0
    rows = _rows_of(pictures)
    for row in rows:
        x = 0.0
        for picture in row:
            parts.extend(_moved(part, x, y) for part in picture.parts)
            x += picture.width + _APART_MM
        y += max(p.height for p in row) + _APART_MM
    parts.sort(key=lambda part: not part.is_edge)
    return Picture(tuple(parts), *_taken(rows))


def taken_in_rows(pictures: list[T]) -> tuple[float, float]:
    """The width and the height that they take in these rows."""
    if len(pictures) == 1:
        return pictures[0].width, pictures[0].height
    return _taken(_rows_of(pictures))


def _taken(rows: list[list[T]]) -> tuple[float, float]:
    width = y = 0.0
    for row in rows:
        x = 0.0
        for picture in row:
            x += picture.width + _APART_MM
        width = max(width, x - _APART_MM)
        y += max(p.height for p in row) + _APART_MM
    return width, y - _APART_MM


def _rows_of(pictures: list[T]) -> list[list[T]]:
    widest = max(p.width for p in pictures)
    widths = {widest}
    for start in range(len(pictures) if len(pictures) <= _TRIED else 1):
        tried = 0.0
        for picture in pictures[start:]:
            tried += picture.width + _APART_MM
            widths.add(max(widest, tried - _APART_MM))
    return min((_rows(pictures, width) for width in sorted(widths)), key=_reduction)


def _rows(pictures: list[T], width: float) -> list[list[T]]:
    rows: list[list[T]] = []
    used = 0.0
    for picture in pictures:
        if rows and used + picture.width <= width + 1e-6:
            rows[-1].append(picture)
        else:
            rows.append([picture])
            used = 0.0
        used += picture.width + _APART_MM
    return rows


def _reduction(rows: list[list[T]]) -> float:
    width = max(sum(p.width + _APART_MM for p in row) for row in rows)
    height = sum(max(p.height for p in row) + _APART_MM for row in rows)
    return max(width / _SHEET_WIDTH, height / _SHEET_HEIGHT)


def _moved(part: Part, x: float, y: float) -> Part:
    def text(t: PlacedText) -> PlacedText:
        return replace(t, x=t.x + x, y=t.y + y)

    def glyph(g: PlacedGlyph) -> PlacedGlyph:
        return replace(g, x=g.x + x, y=g.y + y)

    def bar(b: Bar) -> Bar:
        return replace(b, left=b.left + x, right=b.right + x, y=b.y + y)

    return Part(
        part.id,
        part.is_edge,
        [text(t) for t in part.texts],
        [glyph(g) for g in part.glyphs],
        [tuple((px + x, py + y) for px, py in wire) for wire in part.wires],
        [bar(b) for b in part.bars],
        [(px + x, py + y) for px, py in part.dots],
        [(px + x, py + y) for px, py in part.marks],
    )
