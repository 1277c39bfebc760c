"""Tables, schedules and working sheets as HTML. Every text is escaped here; no markup is taken from a model."""

from __future__ import annotations

import re
from collections.abc import Collection
from html import escape

from wyeline_linter.reports.columns import Cell, Column, Row, Table, footnote, reasons_below
from wyeline_linter.reports.diagram.svg import svg_id
from wyeline_linter.reports.equipment_lists import EQUIPMENT
from wyeline_linter.reports.feeder_schedule import FEEDERS
from wyeline_linter.reports.panel_schedule import LEGS, SCHEDULE
from wyeline_linter.reports.since import MARK
from wyeline_linter.reports.subject import row_anchor
from wyeline_linter.reports.working_sheets import Sheet

_ANCHORED = {EQUIPMENT.name: "e ", FEEDERS.name: "f ", SCHEDULE.name: "c "}
"""The table in which a thing has its own row, by the first letters of what the row is about."""


_PLAIN = re.compile(r"""[^&<>"'`]*""").fullmatch
"""Matches text that is HTML as it is: that of most cells."""


def text(value: str) -> str:
    """Text as HTML; what stands between backticks becomes code."""
    if _PLAIN(value):
        return value
    parts = value.split("`")
    if len(parts) % 2 == 0:
        return escape(value)
    return "".join(f"<code>{escape(p)}</code>" if at % 2 else escape(p) for at, p in enumerate(parts))


def table_id(table: Table) -> str:
    """The anchor of a table."""
    return svg_id(f"table {table.kind.name} {table.subject}".rstrip())


def table_html(table: Table, anchors: Collection[str]) -> str:
    """A table with its head, its reasons and its notes."""
    about = f' data-about="{escape(table.about)}"' if table.about else ""
    parts = [f'<div class="table" id="{table_id(table)}"{about}>']
    below: list[str] = []
    if table.subject:
        parts.append(f"<h3>{escape(table.title)}{_mark(table, table.about)}</h3>")
    if table.facts:
        facts = "".join(f"<div><dt>{escape(k)}</dt><dd>{text(v)}</dd></div>" for k, v in table.facts)
        parts.append(f'<dl class="facts">{facts}</dl>')
    if not table.rows and not table.totals:
        parts.append("<p>Nothing.</p>")
    elif table.kind is SCHEDULE:
        if table.built is not None:
            parts.append(_as_built(table, anchors))
        parts.append(_list(table, anchors, unplaced=table.built is not None))
        below.append(_leg_totals(table, anchors))
    else:
        parts.append(_list(table, anchors))
    if table.beside is not None:
        below.append(_list(table.beside, anchors))
    reasons = reasons_below(table)
    if reasons:
        items = "".join(f"<li>? {text(reason)}</li>" for reason in reasons)
        below.append(f'<ol class="reasons">{items}</ol>')
    if table.notes:
        below.append('<ul class="notes">' + "".join(f"<li>{text(n)}</li>" for n in table.notes) + "</ul>")
    if table.kind is SCHEDULE:
        below = ['<div class="below">', *below, "</div>"]
    parts += below
    parts.append("</div>")
    return "\n".join(p for p in parts if p)


_SHORT = 16
"""Characters of a text that paper does not break either: a tag, ``12.47Y/7.2 kV``."""


class _Cells:
    """Writes the cells of one table: its reasons are numbered, its links checked."""

    def __init__(self, table: Table, anchors: Collection[str]) -> None:
        self.anchors = anchors
        self.numbers = {reason: at for at, reason in enumerate(reasons_below(table), 1)}

    def inside(self, column: Column, cell: Cell, digits: int | None = None) -> str:
        shown = text(column.text(cell, digits))
        if cell.unknown:
            number = self.numbers[footnote(cell)]
            shown = f'<span class="unknown" title="{escape(footnote(cell))}">?<sup>{number}</sup></span>'
        if cell.sheet in self.anchors and shown:
            return f'<a href="#{cell.sheet}">{shown}</a>'
        return shown


def _list(table: Table, anchors: Collection[str], *, unplaced: bool = False) -> str:
    """All rows under their columns; ``unplaced``: only those that have no numbered position."""
    rows = [r for r in table.rows if not unplaced or not _positions(r)]
    totals = [] if table.kind is SCHEDULE else table.totals
    if not rows and not totals:
        return ""
    shown = [i for i in range(len(table.columns)) if _filled([*rows, *totals], i)]
    columns = [table.columns[i] for i in shown]
    cells = _Cells(table, anchors)
    head = "".join(_heading(c) for c in columns)
    body = "\n".join(_row(table, row, shown, cells) for row in rows)
    foot = "\n".join(_total(table, row, shown, cells) for row in totals)
    foot = f"<tfoot>\n{foot}\n</tfoot>" if foot else ""
    name = escape(table.title + (", without position" if unplaced else ""))
    return (
        f'<div class="scroll" tabindex="0" role="region" aria-label="{name}"><table class="{table.kind.name}">'
        f"<thead><tr>{head}</tr></thead>\n<tbody>\n{body}\n</tbody>{foot}</table></div>"
    )


def _heading(column: Column) -> str:
    unit = f' <span class="unit">{escape(column.unit)}</span>' if column.unit else ""
    kind = ' class="n"' if column.numeric else ""
    return f'<th scope="col"{kind} title="{escape(column.doc)}">{escape(column.title)}{unit}</th>'


def _row(table: Table, row: Row, shown: list[int], cells: _Cells) -> str:
    filled: list[str] = []
    for i in shown:
        column, cell = table.columns[i], row.cells[i]
        kind = "n" if column.numeric else "w" if column.wide else ""
        if kind != "n" and isinstance(cell.value, str) and 0 < len(cell.value) <= _SHORT:
            kind = "k"
        attribute = f' class="{kind}"' if kind else ""
        mark = _mark(table, row.about) if not filled else ""
        filled.append(f"<td{attribute}>{mark}{cells.inside(column, cell, row.digits)}</td>")
    return f"<tr{_attributes(table, row)}>{''.join(filled)}</tr>"


def _mark(table: Table, about: str) -> str:
    """The sign beside what is written otherwise than in the issue before."""
    return f'<span class="delta" title="changed since the last issue">{MARK}</span> ' if about in table.marked else ""


def _attributes(table: Table, row: Row) -> str:
    made = ""
    if row.about:
        own = _ANCHORED.get(table.kind.name)
        made += f' id="{row_anchor(row.about)}"' if own is not None and row.about.startswith(own) else ""
        made += f' data-about="{escape(row.about)}"'
    return made + (f' data-source="{escape(row.place)}"' if row.place else "")


def _total(table: Table, row: Row, shown: list[int], cells: _Cells) -> str:
    """A row of totals: its label over the columns before the first number."""
    columns = table.columns
    first = next((at for at, i in enumerate(shown) if columns[i].numeric), 1)
    filled = [f'<th scope="row" colspan="{first}">{escape(row.label)}</th>']
    for i in shown[first:]:
        kind = ' class="n"' if columns[i].numeric else ""
        filled.append(f"<td{kind}>{cells.inside(columns[i], row.cells[i], row.digits)}</td>")
    return f"<tr>{''.join(filled)}</tr>"


def _filled(rows: list[Row], at: int) -> bool:
    return any(row.cells[at].value not in (None, "") or row.cells[at].unknown for row in rows)


# Boards as they are built.


def _positions(row: Row) -> tuple[int, ...]:
    position = row.cells[0].value
    if not isinstance(position, str) or not position or not all(p.isdigit() for p in position.split(",")):
        return ()
    return tuple(int(p) for p in position.split(","))


_SIDE = ("description", "wires", "device")


def _as_built(table: Table, anchors: Collection[str]) -> str:
    """Odd positions left, even ones right; the volt-amperes of a position are those on its own leg."""
    assert table.built is not None
    cells = _Cells(table, anchors)
    at = {p: (row, k) for row in table.rows for k, p in enumerate(_positions(row))}
    lines = []
    for number, leg in enumerate(table.built.legs):
        left, right = 2 * number + 1, 2 * number + 2
        lines.append(
            f"<tr>{_side(table, cells, at.get(left), leg, right=False)}"
            f'<th scope="row" class="position">{left}</th><td class="leg">{escape(leg)}</td>'
            f'<th scope="row" class="position">{right}</th>{_side(table, cells, at.get(right), leg, right=True)}</tr>'
        )
    half = ('<th scope="col">Serves</th>', '<th scope="col">Wires</th>', '<th scope="col">Device</th>')
    volt = '<th scope="col" class="n">VA</th>'
    head = "".join((*half, volt)) + '<th scope="col" colspan="3">Position and leg</th>' + volt + "".join(half[::-1])
    return (
        f'<div class="scroll" tabindex="0" role="region" aria-label="{escape(table.title)}"><table class="built">'
        f"<thead><tr>{head}</tr></thead>\n<tbody>\n" + "\n".join(lines) + "\n</tbody></table></div>"
    )


def _side(table: Table, cells: _Cells, found: tuple[Row, int] | None, leg: str, *, right: bool) -> str:
    """The four cells beside a position. A device of several poles says what it is once and spans its rows."""
    if found is None:
        free = '<td class="free" colspan="3">free</td>'
        return f'<td class="n"></td>{free}' if right else f'{free}<td class="n"></td>'
    row, pole = found
    by_key = dict(zip(table.kind.keys, zip(table.columns, row.cells, strict=True), strict=True))
    legs = str(by_key["legs"][1].value or "").split()
    column, cell = by_key.get(_LEG_COLUMNS.get(leg, ""), (table.columns[0], Cell()))
    if pole and cell.unknown:
        cell = Cell()
    if not pole:
        unknown = next((c for key, (_, c) in by_key.items() if key.startswith("leg_") and c.unknown), None)
        cell = unknown or cell
    volt = f'<td class="n">{cells.inside(column, cell) if leg in legs or cell.unknown else ""}</td>'
    if pole:
        return volt
    span = f' rowspan="{len(_positions(row))}"' if len(_positions(row)) > 1 else ""
    texts = {key: cells.inside(*by_key[key]) for key in _SIDE}
    small = " · ".join(t for key in ("class", "remarks", "status") if (t := cells.inside(*by_key[key])))
    serves = texts["description"] or ("" if small else "?")
    raceway = cells.inside(*by_key["raceway"])
    wires = texts["wires"] + (f' <small class="in">in {raceway}</small>' if raceway else "")
    attributes = _attributes(table, row)
    three = [
        f"<td{span}{attributes}>{_mark(table, row.about)}{serves}{f' <small>{small}</small>' if small else ''}</td>",
        f"<td{span}>{wires}</td>",
        f'<td class="device"{span}>{texts["device"]}</td>',
    ]
    return volt + "".join(three[::-1]) if right else "".join(three) + volt


_LEG_COLUMNS = {name: f"leg_{leg.lower()}_va" for at, leg in enumerate(LEGS, 1) for name in (leg, f"L{at}")}


def _leg_totals(table: Table, anchors: Collection[str]) -> str:
    """The totals of a board by leg."""
    cells = _Cells(table, anchors)
    shown = [i for i, c in enumerate(table.columns) if c.key.startswith("leg_") and _filled(table.totals, i)]
    if not shown:
        return ""
    head = "<td></td>" + "".join(_heading(table.columns[i]).replace(">VA<", "><") for i in shown)
    lines = []
    for row in table.totals:
        values = "".join(
            f'<td class="n">{cells.inside(table.columns[i], row.cells[i], row.digits)}</td>' for i in shown
        )
        lines.append(f'<tr><th scope="row">{escape(row.label)}</th>{values}</tr>')
    return f'<table class="legs"><thead><tr>{head}</tr></thead><tbody>' + "\n".join(lines) + "</tbody></table>"


def sheet_html(sheet: Sheet) -> str:
    """One working sheet."""
    title, body = sheet.title_and_body
    return (
        f'<section class="sheet" id="{sheet.anchor}" data-about="{escape(sheet.about)}">'
        f"<h3>{escape(title)}</h3><pre>{escape(body.rstrip())}</pre></section>"
    )
