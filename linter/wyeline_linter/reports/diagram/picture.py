"""The finished drawing as plain geometry: each node and edge with its symbols, lines and texts in their places.

Millimetres from the top left corner. What is here is what ``svg.py`` writes and what tests measure.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from wyeline_linter.reports.diagram.glyphs import Glyph
from wyeline_linter.reports.diagram.labels import Block

Point = tuple[float, float]
Box = tuple[float, float, float, float]
"""Left, top, right, bottom."""


@dataclass(frozen=True, slots=True)
class PlacedText:
    """A block of lines whose box starts at (x, y). ``upright``: turned to read upwards, lines from left to right."""

    block: Block
    x: float
    y: float
    upright: bool = False
    centred: bool = False

    @property
    def box(self) -> Box:
        width, height = self.block.width_mm, self.block.height_mm
        if self.upright:
            width, height = height, width
        return (self.x, self.y, self.x + width, self.y + height)


@dataclass(frozen=True, slots=True)
class PlacedGlyph:
    """A symbol hanging from (x, y). ``lying``: turned by a quarter, running to the right from (x, y)."""

    glyph: Glyph
    x: float
    y: float
    lying: bool = False

    @property
    def box(self) -> Box:
        glyph = self.glyph
        if self.lying:
            # A quarter turn against the clock: left becomes below.
            return (self.x, self.y - glyph.right, self.x + glyph.height, self.y + glyph.left)
        return (self.x - glyph.left, self.y, self.x + glyph.right, self.y + glyph.height)


@dataclass(frozen=True, slots=True)
class Bar:
    """A bus. ``cased`` is a busway: a line with a casing on both sides."""

    left: float
    right: float
    y: float
    cased: bool = False


@dataclass(slots=True)
class Part:
    """All that belongs to one node or one edge. ``dots`` mark joints; ``marks`` may get a cross."""

    id: str
    is_edge: bool
    texts: list[PlacedText] = field(default_factory=list)
    glyphs: list[PlacedGlyph] = field(default_factory=list)
    wires: list[tuple[Point, ...]] = field(default_factory=list)
    bars: list[Bar] = field(default_factory=list)
    dots: list[Point] = field(default_factory=list)
    marks: list[Point] = field(default_factory=list)

    def boxes(self) -> Iterator[Box]:
        yield from (text.box for text in self.texts)
        yield from (glyph.box for glyph in self.glyphs)
        for bar in self.bars:
            half = 1.5 if bar.cased else 0.6
            yield (bar.left, bar.y - half, bar.right, bar.y + half)
        for wire in self.wires:
            xs, ys = [p[0] for p in wire], [p[1] for p in wire]
            yield (min(xs), min(ys), max(xs), max(ys))


@dataclass(frozen=True, slots=True)
class Picture:
    """Parts in a stable order (edges first, so that symbols lie over lines), and the size of it all."""

    parts: tuple[Part, ...]
    width: float
    height: float
