"""Tables as CSV (RFC 4180, UTF-8 with a byte order mark, so that spreadsheets read every letter).

The header holds the columns' keys with their units. Unknown is ``?``; the column ``unknown`` says why. The last column
carries the caution in the first row, so that a file that goes its own way still says what it is.
"""

from __future__ import annotations

import csv
import io

from wyeline_linter.reports.columns import UNKNOWN, Cell, Row, Table

UNKNOWN_COLUMN, CAUTION_COLUMN = "unknown", "caution"
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def csv_text(table: Table, caution: str) -> str:
    """One table with its header. Totals are left out: they are sums of rows, and a file is for reckoning on."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([*table.kind.keys, UNKNOWN_COLUMN, CAUTION_COLUMN])
    for at, row in enumerate(table.rows):
        reasons = _reasons(table, row)
        writer.writerow([*(csv_value(c) for c in row.cells), guarded(reasons), caution if at == 0 else ""])
    return "\ufeff" + out.getvalue()


def csv_value(cell: Cell) -> str:
    """A number with at most nine significant digits, a text that no spreadsheet takes for a formula."""
    if cell.value is None:
        return UNKNOWN if cell.unknown else ""
    if isinstance(cell.value, str):
        return guarded(cell.value)
    return f"{cell.value:.9g}"


def guarded(text: str) -> str:
    """Text that begins like a formula gets an apostrophe in front, unless it is a number."""
    if not text.startswith(_FORMULA):
        return text
    try:
        float(text)
    except ValueError:
        return f"'{text}"
    return text


def _reasons(table: Table, row: Row) -> str:
    found: dict[str, list[str]] = {}
    for column, cell in zip(table.kind.columns, row.cells, strict=True):
        if cell.unknown:
            found.setdefault("; ".join(cell.unknown), []).append(column.key)
    return " | ".join(f"{', '.join(keys)}: {why}" for why, keys in found.items())
