"""A report as files in a folder: their names, and their contents as text."""

from __future__ import annotations

import contextlib
import os
import re
from collections.abc import Collection, Iterator, Sequence

from wyeline_linter.reports.columns import Table
from wyeline_linter.reports.csv_output import csv_text
from wyeline_linter.reports.html_page import page_html
from wyeline_linter.reports.json_output import report_json
from wyeline_linter.reports.markdown_output import escaped, markdown_text
from wyeline_linter.reports.package import DIAGRAM, WORKING, Package
from wyeline_linter.reports.panel_schedule import SCHEDULE

REPORT, DATA = "report.html", "report.json"


def report_files(packages: Sequence[Package], formats: Sequence[str]) -> Iterator[tuple[str, str]]:
    """Every file by its path below the folder, with ``/`` between folders. CSV, Markdown and drawings outside the HTML
    are those of the first package; the same model and wishes give the same bytes."""
    first = packages[0]
    if "html" in formats:
        yield REPORT, page_html(packages)
    names = _names(first.tables) if {"csv", "md"} & set(formats) else []
    if "json" in formats and first.tables:
        yield DATA, report_json(packages)
    if "csv" in formats:
        for name, table in names:
            yield f"csv/{name}.csv", csv_text(table, first.caution)
    if "md" in formats:
        for name, table in names:
            yield f"md/{name}.md", markdown_text(table, first.caution, first.colophon)
        if first.wants(WORKING):
            yield "md/working-sheets.md", _working(first)
    if "svg" in formats and first.wants(DIAGRAM):
        for sheet in first.diagram.sheets:
            yield f"svg/one-line-{sheet.number}.svg", standing_alone(sheet.svg)


def _working(package: Package) -> str:
    lines = ["# Working sheets", ""]
    for sheet in package.sheets:
        title, body = sheet.title_and_body
        lines += [f"## {escaped(title)}", "", *(f"    {line}".rstrip() for line in body.splitlines()), ""]
    return "\n".join([*lines, escaped(package.colophon), "", f"> {escaped(package.caution)}", ""])


def left_behind(folder: str, written: Sequence[str], parts: Collection[str]) -> list[str]:
    """Files of an earlier report beside those now written that say nothing of this model any more: the schedule of a
    board that is gone, a sheet too many. Only names that a report gives, of the parts and formats now written."""
    found = []
    for part in sorted({os.path.dirname(name) for name in written} - {""}):
        here = {os.path.basename(name).casefold() for name in written if os.path.dirname(name) == part}
        heads = tuple("one-line-" if p == DIAGRAM else f"{p}-" for p in (DIAGRAM, SCHEDULE.name) if p in parts)
        with contextlib.suppress(OSError):
            found += [
                f"{part}/{name}"
                for name in sorted(os.listdir(os.path.join(folder, part)))
                if name.startswith(heads) and name.endswith(f".{part}") and name.casefold() not in here
            ]
    return found


_ROW_LINK = re.compile(r'<a href="#row[^>]*>(.*?)</a>', re.DOTALL)
_SHEET_LINK = re.compile(r'href="#oneline-sheet-(\d+)"')


def standing_alone(svg: str) -> str:
    """A sheet outside the page: its links lead to the other sheets' files, those into tables are left out."""
    return _SHEET_LINK.sub(r'href="one-line-\1.svg"', _ROW_LINK.sub(r"\1", svg))


def _names(tables: Sequence[Table]) -> list[tuple[str, Table]]:
    """A file name for every table that no two systems read differently, each once."""
    taken: set[str] = set()
    named = []
    for table in tables:
        name = base = "-".join(t for t in (table.kind.name, file_part(table.subject)) if t)
        number = 1
        while name.casefold() in taken:
            number += 1
            name = f"{base}~{number}"
        taken.add(name.casefold())
        named.append((name, table))
    return named


def file_part(text: str) -> str:
    """A tag as part of a file name: letters and digits of any script, dots and hyphens, the rest as ``_``."""
    return re.sub(r"[^\w.\-]", "_", text)[:80].rstrip(".")
