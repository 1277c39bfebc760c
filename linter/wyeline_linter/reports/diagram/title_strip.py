"""The strip along the lower edge of a sheet: what it is, who drew and checked it, and its revision table."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from wyeline_linter.reports.diagram.labels import Block, Line, broken
from wyeline_linter.reports.diagram.papers import SheetSize
from wyeline_linter.reports.diagram.picture import PlacedText
from wyeline_linter.reports.diagram.sketch import Status
from wyeline_linter.reports.diagram.svg import number, text_svg, xml
from wyeline_linter.reports.diagram.symbol_legend import Symbol, legend_width_mm, symbol_legend


class Issued(NamedTuple):
    """A row of the revision table, everything printed as given."""

    name: str
    date: str = ""
    purpose: str = ""
    drawn: str = ""
    checked: str = ""


@dataclass(frozen=True, slots=True)
class TitleBlock:
    """What the title strip says. ``cautions`` are whole sentences; everything is printed as given; ``issues`` have the
    newest first."""

    project: str
    number: str = ""
    revision: str = ""
    basis: str = ""
    date: str = ""
    scenario: str = ""
    cautions: tuple[str, ...] = ()
    client: str = ""
    drawn: str = ""
    checked: str = ""
    engineer: str = ""
    issues: tuple[Issued, ...] = ()


EDGE_MM = 10.0
STRIP_MM = 27.0
TABLE_MM = 178.0
"""The width of the title block itself, and of the revision table that stands on it."""
_CAUTIONS_MM = 120.0
"""So much of the strip of large paper stays for the cautions; on small paper all of it does."""
_CLIENT_MM = 36.0
_SIGNED_MM = 32.0
"""Room for whoever drew and checked a sheet to sign by hand, beside the name if the model states it; the engineer has
the same width for a seal."""
_MOST_ISSUES = 6
"""Of more, the last row counts the older ones; the report lists all."""
_COLUMNS = (("Issue", 18.0), ("Date", 22.0), ("What for", 90.0), ("Drawn", 24.0), ("Checked", 24.0))
_ROW_MM = 2.1
_MOST_LINES, _MOST_LETTERS = 4, 1000
"""So much of a text stands in the table, so that the drawing keeps its room."""
_GAP_MM = 1.2

_LEGEND = (
    (Status.EXISTING, "existing"),
    (Status.NEW, "new"),
    (Status.FUTURE, "future"),
    (Status.TEMPORARY, "temporary"),
    (Status.DEMOLISH, "to be demolished"),
)


def title_strip(
    title: TitleBlock, size: SheetSize, sheet: tuple[int, int, tuple[str, ...]], symbols: tuple[Symbol, ...] = ()
) -> str:
    """The strip along the lower edge: legends and cautions, room for two hands, what the sheet is, then its number; the
    revision table stands on its right end. ``sheet`` is its number, of how many, and the tags of its leading boards;
    ``symbols`` are told on paper that has room for all of them."""
    at, count, heads = sheet
    left, right = EDGE_MM, size.room_width - EDGE_MM
    bottom = size.room_height - EDGE_MM
    top = bottom - STRIP_MM
    signed = _SIGNED_MM if right - left > 350 else 0.0  # a smaller sheet needs its strip for the cautions
    sealed = signed if title.engineer else 0.0
    columns = (left, left + 34, right - TABLE_MM - signed, right - TABLE_MM, right - 76, right - 34)
    hands_from = columns[2] - sealed
    words_end = hands_from - legend_width_mm(symbols)
    if size.magnified == 1 or words_end - columns[1] < _CAUTIONS_MM:
        words_end = hands_from
    middle = (top + bottom) / 2
    lines = "".join(f"M{number(x)} {number(top)}V{number(bottom)}" for x in (*columns[1:], hands_from, words_end))
    frame = f"M{number(left)} {number(EDGE_MM)}H{number(right)}V{number(bottom)}H{number(left)}z"
    path = f'<path class="s" d="{frame}M{number(left)} {number(top)}H{number(right)}{lines}"/>\n'
    hands = [
        f'<path class="s" d="M{number(columns[2])} {number(middle)}H{number(columns[3])}"/>\n',
        _cell(columns[2], columns[3], (top, middle), "Drawn", _named(title.drawn), 2.6),
        _cell(columns[2], columns[3], (middle, bottom), "Checked", _named(title.checked), 2.6),
        _cell(hands_from, columns[2], (top, bottom), "Engineer", (title.engineer,), 2.6) if sealed else "",
    ]
    until = columns[4] - (_CLIENT_MM if title.client else 0.0)
    cells = [
        _legend(columns[0] + 2, top + 3.4),
        _cell(columns[1], words_end, (top, bottom), "Cautions", title.cautions, 2.1),
        symbol_legend(symbols, words_end, top) if words_end < hands_from else "",
        *(hands if signed else ()),
        _cell(columns[3], until, (top, top + 12.5), "Project", (title.project,), 3.6, bold=True),
        _cell(until, columns[4], (top, top + 12.5), "Client", (title.client,), 2.6) if title.client else "",
        _cell(columns[3], columns[4], (top + 12.5, bottom), "One-line diagram", (", ".join(heads),), 3.0),
        _cell(columns[4], columns[5], (top, top + 11), "Basis", (title.basis,), 2.6),
        _cell(columns[4], columns[5], (top + 11, top + 19), "Switch state", (title.scenario,), 2.6),
        _cell(columns[4], columns[5], (top + 19, bottom), "Date", (title.date,), 2.6),
        _cell(columns[5], right, (top, top + 8), "Number", (title.number,), 2.6),
        _cell(columns[5], right, (top + 8, top + 18), "Revision", (title.revision,), 2.6),
        _cell(columns[5], right, (top + 18, bottom), f"Sheet ({size.name})", (f"{at} of {count}",), 3.6, bold=True),
    ]
    table = _revision_table(title, right, top) if title.issues else ""
    return f'<g class="title-strip">\n{path}{"".join(cells)}{table}</g>\n'


def _named(name: str) -> tuple[str, ...]:
    return (name,) if name else ()


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


def table_height_mm(title: TitleBlock) -> float:
    """How much the revision table takes above the strip."""
    return sum(_row_height_mm(row) for row in _rows(title))


def _rows(title: TitleBlock) -> list[list[Block]]:
    """The heading, then the newest issues."""
    shown = title.issues if len(title.issues) <= _MOST_ISSUES else title.issues[: _MOST_ISSUES - 1]
    rows = [[Block((Line(caption, 1.8),)) for caption, _ in _COLUMNS]]
    rows += [[_words(text, width) for text, (_, width) in zip(issue, _COLUMNS, strict=True)] for issue in shown]
    older = len(title.issues) - len(shown)
    if older:
        rows.append([_words(text, width) for text, (_, width) in zip(_older(older), _COLUMNS, strict=True)])
    return rows


def _older(count: int) -> Issued:
    return Issued("", "", f"{count} earlier issues: see the list of issues of the report")


def _words(text: str, width_mm: float) -> Block:
    """A text in at most two lines, smaller where it needs more, then in at most four; the list of issues of the report
    has the rest of a longer one."""
    size_mm = _ROW_MM
    shown = text if len(text) <= _MOST_LETTERS else f"{text[:_MOST_LETTERS]}…"
    while size_mm > _LEAST_MM and len(broken(shown, width_mm - 3, size_mm)) > 2:
        size_mm -= 0.1
    lines = broken(shown, width_mm - 3, size_mm)
    if len(lines) > _MOST_LINES:
        lines = [*lines[: _MOST_LINES - 1], f"{lines[_MOST_LINES - 1][:-1]}…"]
    return Block(tuple(Line(part, size_mm) for part in lines))


def _row_height_mm(row: list[Block]) -> float:
    return max(block.height_mm for block in row) + _GAP_MM


def _revision_table(title: TitleBlock, right: float, bottom: float) -> str:
    rows = _rows(title)
    left, top = right - TABLE_MM, bottom - table_height_mm(title)
    lines, texts, y = f"M{number(left)} {number(bottom)}V{number(top)}H{number(right)}", [], top
    x = left
    for _, width in _COLUMNS[:-1]:
        x += width
        lines += f"M{number(x)} {number(top)}V{number(bottom)}"
    for at, row in enumerate(rows):
        lines += f"M{number(left)} {number(y)}H{number(right)}" if at else ""
        x = left
        for block, (_, width) in zip(row, _COLUMNS, strict=True):
            texts.append(text_svg(PlacedText(block, x + 1.5, y + _GAP_MM / 2)) if block.lines else "")
            x += width
        y += _row_height_mm(row)
    return f'<path class="s" d="{lines}"/>\n{"".join(texts)}'
