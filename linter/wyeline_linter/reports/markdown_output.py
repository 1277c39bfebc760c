"""Tables as Markdown: a heading, the head of a schedule, the table with its totals, reasons and cautions."""

from __future__ import annotations

import re
from functools import lru_cache

from wyeline_linter.reports.columns import Row, Table, footnote, reasons_below
from wyeline_linter.reports.since import MARK

_SPECIAL = re.compile(r"([\\`*_{}\[\]|~#!])")


def markdown_text(table: Table, caution: str, colophon: str = "") -> str:
    """One table as a document of its own. Columns that stay empty all the way down are left out; ``colophon`` says of
    which issue of which project it is."""
    lines = [f"# {escaped(table.title)}", "", escaped(table.kind.doc), ""]
    lines += [f"- {escaped(label)}: {escaped(text)}" for label, text in table.facts]
    if table.facts:
        lines.append("")
    lines += table_lines(table)
    if table.beside is not None:
        lines += ["", f"{escaped(table.beside.title)}:", "", *table_lines(table.beside)]
    reasons = reasons_below(table)
    if reasons:
        lines += ["", *(f"{number}. ? {escaped(reason)}" for number, reason in enumerate(reasons, 1))]
    if table.notes:
        lines += ["", *(f"- {escaped(note)}" for note in table.notes)]
    if colophon:
        lines += ["", escaped(colophon)]
    return "\n".join([*lines, "", f"> {escaped(caution)}", ""])


def table_lines(table: Table) -> list[str]:
    """The table itself."""
    if not table.rows:
        return ["Nothing."]
    shown = [i for i in range(len(table.columns)) if _filled(table, i)]
    columns = [table.columns[i] for i in shown]
    reasons = {reason: number for number, reason in enumerate(reasons_below(table), 1)}
    lines = [
        "| " + " | ".join(escaped(c.heading) for c in columns) + " |",
        "| " + " | ".join("---:" if c.numeric else "---" for c in columns) + " |",
    ]

    def line(row: Row) -> str:
        texts = []
        for i, column in zip(shown, columns, strict=True):
            cell = row.cells[i]
            text = escaped(column.text(cell, row.digits))
            texts.append(f"{text} ({reasons[footnote(cell)]})" if cell.unknown else text)
        if row.about in table.marked:
            texts[0] = f"{MARK} {texts[0]}"
        if row.label:
            texts[0] = f"**{escaped(row.label)}**"
        return "| " + " | ".join(texts) + " |"

    return lines + [line(row) for row in (*table.rows, *table.totals)]


def _filled(table: Table, at: int) -> bool:
    return any(row.cells[at].value not in (None, "") or row.cells[at].unknown for row in (*table.rows, *table.totals))


@lru_cache(maxsize=1 << 14)  # tables say the same over and over: tags, wires, volts
def escaped(text: str) -> str:
    """Text that Markdown shows as it is, on one line; what stands between backticks stays code."""
    parts = " ".join(text.split()).split("`")
    if len(parts) % 2 == 0:
        return _plain("`".join(parts))
    return "`".join(part.replace("|", "\\|") if at % 2 else _plain(part) for at, part in enumerate(parts))


def _plain(text: str) -> str:
    return _SPECIAL.sub(r"\\\1", text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"))
