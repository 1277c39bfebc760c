"""The report reference, made from the declarations of the tables: every table, every column, where it comes from."""

from __future__ import annotations

from wyeline_linter.reports.markdown_output import escaped
from wyeline_linter.reports.package import TABLE_KINDS
from wyeline_linter.reports.since import CHANGES


def reference_markdown() -> str:
    """One section a table."""
    lines: list[str] = []
    for kind in (*TABLE_KINDS, CHANGES):
        lines += [f"### {kind.title} (`{kind.name}`)", "", kind.doc, ""]
        lines += ["| Column | In CSV | Unit | What it says | From |", "| --- | --- | --- | --- | --- |"]
        for column in kind.columns:
            source = f"`{column.figure}` of the figures" if column.figure else column.source
            unit = f"{column.unit} ({column.us[0]} for people in US units)" if column.us is not None else column.unit
            cells = (escaped(column.title), f"`{column.key}`", unit, escaped(column.doc), source)
            lines.append("| " + " | ".join(cells) + " |")
        lines.append("")
    return "\n".join(lines)
