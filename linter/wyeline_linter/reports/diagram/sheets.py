"""Sheets as they are handed over: the drawing within a frame, with a title strip, a line legend and the cautions."""

from __future__ import annotations

from dataclasses import dataclass

from wyeline_linter.reports.diagram.drawing import UPRIGHT_FROM, Drawing
from wyeline_linter.reports.diagram.glyphs import Practice
from wyeline_linter.reports.diagram.labels import Block, Line, broken
from wyeline_linter.reports.diagram.picture import Picture, PlacedText
from wyeline_linter.reports.diagram.shaping import GAP_MM, least_area_mm2
from wyeline_linter.reports.diagram.sketch import Sketch, Status
from wyeline_linter.reports.diagram.splitting import Reference, sheet_link, split
from wyeline_linter.reports.diagram.svg import number, parts_svg, svg_page, text_svg, xml


@dataclass(frozen=True, slots=True)
class SheetSize:
    """Width and height of a sheet lying on its long side, in millimetres."""

    name: str
    width_mm: float
    height_mm: float


A3 = SheetSize("A3", 420.0, 297.0)  # ISO 216
TABLOID = SheetSize("tabloid", 431.8, 279.4)  # 17 in by 11 in, ANSI/ASME Y14.1 size B


@dataclass(frozen=True, slots=True)
class TitleBlock:
    """What the title strip says. ``cautions`` are whole sentences; everything is printed as given."""

    project: str
    number: str = ""
    revision: str = ""
    basis: str = ""
    date: str = ""
    scenario: str = ""
    cautions: tuple[str, ...] = ()
    client: str = ""


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


_EDGE_MM = 10.0
_PADDING_MM = 5.0
_STRIP_MM = 27.0
_CLIENT_MM = 36.0
_SIGNED_MM = 32.0
"""Room for whoever drew and checked a sheet to sign: by hand, no model says who judged it."""
_LEAST_SCALE = 0.72
"""Below this the words (2.3 mm) would fall under the smallest lettering that is read with ease on paper, 1.7 mm."""
_MOST_SCALE = 1.2
_UPRIGHT = (UPRIGHT_FROM, 6)


def sheets_of(sketch: Sketch, title: TitleBlock, size: SheetSize = A3, practice: Practice = "us") -> SheetSet:
    """Draw the sketch on as many sheets as it needs. The same input gives the same bytes."""
    seen: dict[Sketch, tuple[Picture, float] | None] = {}

    def fits(part: Sketch) -> bool:
        if part not in seen:
            made = None if _too_much(part, size, practice) else _drawn(part, size, practice)
            seen[part] = made if made is not None and made[1] >= _LEAST_SCALE else None
        return seen[part] is not None

    parts = split(sketch, fits)
    count = len(parts.sketches)
    made = []
    for at, (part, heads) in enumerate(zip(parts.sketches, parts.heads, strict=True), 1):
        picture, scale = seen.get(part) or _drawn(part, size, practice)
        svg = _sheet_svg(part, picture, scale, title, size, at, count, heads)
        made.append(Sheet(at, count, heads, part, picture, scale, svg))
    return SheetSet(tuple(made), parts.references)


def _too_much(sketch: Sketch, size: SheetSize, practice: Practice) -> bool:
    """Whether the symbols alone, set without a gap between their rows, take more than a sheet at its least scale."""
    width, height = (side / _LEAST_SCALE for side in _room(size))
    return sum(least_area_mm2(node, practice) for node in sketch.nodes) > (width + GAP_MM) * height


def _drawn(sketch: Sketch, size: SheetSize, practice: Practice) -> tuple[Picture, float]:
    """The picture with turned words as late as possible, and the scale at which it fits the sheet."""
    drawing = Drawing(sketch, practice)
    best: tuple[Picture, float] | None = None
    for upright_from in _UPRIGHT:
        picture = drawing.picture(upright_from)
        scale = _scale(picture, size)
        if best is None or scale > best[1]:
            best = (picture, scale)
        if scale >= _LEAST_SCALE:
            break
    assert best is not None
    return best


def _room(size: SheetSize) -> tuple[float, float]:
    width = size.width_mm - 2 * (_EDGE_MM + _PADDING_MM)
    return width, size.height_mm - 2 * (_EDGE_MM + _PADDING_MM) - _STRIP_MM


def _scale(picture: Picture, size: SheetSize) -> float:
    width, height = _room(size)
    return min(_MOST_SCALE, width / max(picture.width, 1.0), height / max(picture.height, 1.0))


def _sheet_svg(
    sketch: Sketch,
    picture: Picture,
    scale: float,
    title: TitleBlock,
    size: SheetSize,
    at: int,
    count: int,
    heads: tuple[str, ...],
) -> str:
    width, height = _room(size)
    left = _EDGE_MM + _PADDING_MM + (width - picture.width * scale) / 2
    # A drawing lower than the sheet hangs in its upper third, as one hangs a picture.
    top = _EDGE_MM + _PADDING_MM + (height - picture.height * scale) / 3
    move = f"translate({number(left)} {number(top)}) scale({scale:.4f})"
    body = f'<g transform="{move}">\n{parts_svg(picture, sketch)}</g>\n'
    name = f"{title.project}: one-line diagram, sheet {at} of {count} ({', '.join(heads)})"
    strip = _strip(title, size, at, count, heads)
    return svg_page(size.width_mm, size.height_mm, name, body + strip, sheet_link(at))


_LEGEND = (
    (Status.EXISTING, "existing"),
    (Status.NEW, "new"),
    (Status.FUTURE, "future"),
    (Status.TEMPORARY, "temporary"),
    (Status.DEMOLISH, "to be demolished"),
)


def _strip(title: TitleBlock, size: SheetSize, at: int, count: int, heads: tuple[str, ...]) -> str:
    """The strip along the lower edge: legend and cautions, room for two hands, what the sheet is, then its number."""
    left, right = _EDGE_MM, size.width_mm - _EDGE_MM
    bottom = size.height_mm - _EDGE_MM
    top = bottom - _STRIP_MM
    signed = _SIGNED_MM if right - left > 350 else 0.0  # a smaller sheet needs its strip for the cautions
    columns = (left, left + 34, right - 178 - signed, right - 178, right - 76, right - 34)
    middle = (top + bottom) / 2
    lines = "".join(f"M{number(x)} {number(top)}V{number(bottom)}" for x in columns[1:])
    frame = f"M{number(left)} {number(_EDGE_MM)}H{number(right)}V{number(bottom)}H{number(left)}z"
    path = f'<path class="s" d="{frame}M{number(left)} {number(top)}H{number(right)}{lines}"/>\n'
    hands = [
        f'<path class="s" d="M{number(columns[2])} {number(middle)}H{number(columns[3])}"/>\n',
        _cell(columns[2], columns[3], (top, middle), "Drawn", (), 2.6),
        _cell(columns[2], columns[3], (middle, bottom), "Checked", (), 2.6),
    ]
    until = columns[4] - (_CLIENT_MM if title.client else 0.0)
    cells = [
        _legend(columns[0] + 2, top + 3.4),
        _cell(columns[1], columns[2], (top, bottom), "Cautions", title.cautions, 2.1),
        *(hands if signed else ()),
        _cell(columns[3], until, (top, top + 12.5), "Project", (title.project,), 3.6, bold=True),
        _cell(until, columns[4], (top, top + 12.5), "Client", (title.client,), 2.6) if title.client else "",
        _cell(columns[3], columns[4], (top + 12.5, bottom), "One-line diagram", (", ".join(heads),), 3.0),
        _cell(columns[4], columns[5], (top, top + 11), "Basis", (title.basis,), 2.6),
        _cell(columns[4], columns[5], (top + 11, top + 19), "Switch state", (title.scenario,), 2.6),
        _cell(columns[4], columns[5], (top + 19, bottom), "Date", (title.date,), 2.6),
        _cell(columns[5], right, (top, top + 8), "Number", (title.number,), 2.6),
        _cell(columns[5], right, (top + 8, top + 18), "Revision", (title.revision,), 2.6),
        _cell(columns[5], right, (top + 18, bottom), "Sheet", (f"{at} of {count}",), 3.6, bold=True),
    ]
    return f'<g class="title-strip">\n{path}{"".join(cells)}</g>\n'


_CAPTION_MM = 3.6
"""From the upper edge of a cell to the text below its caption."""
_LEAST_MM = 1.5
"""The smallest lettering that a text too long for its cell is reduced to."""


def _cell(
    left: float,
    right: float,
    between: tuple[float, float],
    caption: str,
    texts: tuple[str, ...],
    size_mm: float,
    bold: bool = False,
) -> str:
    """A small caption with text below it, broken to the width of its column and reduced where it is too long for what
    lies between two heights."""
    width, (top, bottom) = right - left - 4, between
    made = text_svg(PlacedText(Block((Line(caption, 1.8),)), left + 2, top + 1.2))

    def block(size_mm: float) -> Block:
        return Block(tuple(Line(row, size_mm, bold) for text in texts for row in broken(text, width, size_mm, bold)))

    while size_mm > _LEAST_MM and block(size_mm).height_mm > bottom - top - _CAPTION_MM:
        size_mm -= 0.1
    return made + text_svg(PlacedText(block(size_mm), left + 2, top + _CAPTION_MM))


def _legend(left: float, top: float) -> str:
    made = []
    for row, (status, words) in enumerate(_LEGEND):
        y = top + 4.7 * row
        line = f'<path class="s" d="M{number(left)} {number(y)}h11"/>'
        if status is Status.DEMOLISH:
            line += f'<path class="k" d="M{number(left + 4)} {number(y - 1.5)}l3 3m-3 0l3 -3"/>'
        made.append(f'<g class="{status}"><title>{xml(words)}</title>{line}</g>\n')
        made.append(text_svg(PlacedText(Block((Line(words, 2.1),)), left + 12.5, y - 1.3)))
    return "".join(made)
