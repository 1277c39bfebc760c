"""All tables of a report as one JSON file, after ``outputs/shapes_of_report.py``; a row stands on a line of its own."""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from typing import Any

from wyeline_linter.issues import project_figures
from wyeline_linter.outputs.shapes_of_report import (
    BesideEntry,
    CellValue,
    ColumnEntry,
    ReportData,
    ReportedState,
    RowEntry,
    TableEntry,
    TableKindEntry,
    TotalEntry,
)
from wyeline_linter.reports.columns import Cell, Column, Row, Table, TableKind
from wyeline_linter.reports.package import Package

_in_a_line = json.JSONEncoder(ensure_ascii=False, allow_nan=False).encode
_DOWN_TO_ROWS = 6
"""How many levels are laid out in lines: report, states, state, tables, table, rows."""


def report_json(packages: Sequence[Package]) -> str:
    """The tables of every switch state as text that ends in a newline."""
    return "".join(_laid_out(report_data(packages), _DOWN_TO_ROWS, "\n")) + "\n"


def report_data(packages: Sequence[Package]) -> ReportData:
    """The same as data: what ``wyeline schema report`` describes."""
    first = packages[0]
    since = first.wishes.since
    kinds = {
        t.kind.name: t.kind for p in packages for table in p.tables for t in (table, table.beside) if t is not None
    }
    return {
        "version": 1,
        "caution": f"{first.foot} {first.subject.cautions[1]}",
        "project": project_figures(first.subject.view),
        "date": first.date or None,
        "since": since.told if since is not None else None,
        "kinds": [_kind(kind) for kind in kinds.values()],
        "states": [_state(package) for package in packages],
    }


def _kind(kind: TableKind) -> TableKindEntry:
    columns = [_column(column) for column in kind.columns]
    return {"part": kind.name, "title": kind.title, "doc": kind.doc, "columns": columns}


def _column(column: Column) -> ColumnEntry:
    return {
        "key": column.key,
        "title": column.title,
        "unit": column.unit or None,
        "numeric": column.numeric,
        "doc": column.doc,
        "figure": column.figure or None,
        "source": column.source or None,
    }


def _state(package: Package) -> ReportedState:
    return {"state": package.subject.scenario, "tables": [_table(table) for table in package.tables]}


def _table(table: Table) -> TableEntry:
    return {
        "part": table.kind.name,
        "subject": table.subject or None,
        "facts": [{"name": name, "text": text} for name, text in table.facts],
        "rows": [_row(table, row) for row in table.rows],
        "totals": [_total(table, row) for row in table.totals],
        "beside": _beside(table.beside) if table.beside is not None else None,
        "notes": list(table.notes),
    }


def _beside(table: Table) -> BesideEntry:
    return {"part": table.kind.name, "rows": [_row(table, row) for row in table.rows]}


def _row(table: Table, row: Row) -> RowEntry:
    keys = table.kind.keys
    made: RowEntry = {
        "cells": {key: _value(cell) for key, cell in zip(keys, row.cells, strict=True)},
        "unknown": {key: list(cell.unknown) for key, cell in zip(keys, row.cells, strict=True) if cell.unknown},
    }
    what, _, name = row.about.partition(" ")
    if what == "f":
        made["feeder"] = name
    elif what in ("e", "c"):
        made["equipment"], _, position = name.partition(" ")
        if position:
            made["position"] = position
    if row.place:
        made["place"] = row.place
    if row.about in table.marked:
        made["changed"] = True
    return made


def _total(table: Table, row: Row) -> TotalEntry:
    """Sums stand below some columns only: what is empty is left out."""
    cells = {key: cell for key, cell in zip(table.kind.keys, row.cells, strict=True) if cell != Cell()}
    return {
        "label": row.label,
        "unit": row.unit or None,
        "cells": {key: _value(cell) for key, cell in cells.items()},
        "unknown": {key: list(cell.unknown) for key, cell in cells.items() if cell.unknown},
    }


def _value(cell: Cell) -> CellValue:
    """A number with at most nine significant digits, as in CSV."""
    if cell.value is None or isinstance(cell.value, str):
        return cell.value
    return float(f"{cell.value:.9g}")


def _laid_out(value: Any, levels: int, break_: str) -> Iterator[str]:
    """JSON with so many levels in lines of their own, and all that lies deeper in the line of what holds it."""
    if levels == 0 or not value or not isinstance(value, dict | list):
        yield _in_a_line(value)
        return
    inner, mark = break_ + " ", ("{", "}") if isinstance(value, dict) else ("[", "]")
    yield mark[0]
    for at, one in enumerate(value):
        yield f"{',' if at else ''}{inner}"
        if isinstance(value, dict):
            yield f"{_in_a_line(one)}: "
        yield from _laid_out(value[one] if isinstance(value, dict) else one, levels - 1, inner)
    yield f"{break_}{mark[1]}"
