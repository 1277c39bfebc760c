"""Formatting: a document, some of its lines, or the line just left. Only blanks and commas change, line by line."""

from __future__ import annotations

from typing import Any

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.formatter import format_lines
from wyeline_server.positions import Json, Positions
from wyeline_server.server import WyelineServer


def register(server: WyelineServer) -> None:
    server.on("textDocument/formatting", _document)
    server.on("textDocument/rangeFormatting", _range)
    server.on("textDocument/onTypeFormatting", _on_type)


def format_document(file: TextFile, positions: Positions) -> list[Json]:
    """The edits that set a whole document: what changes of each line, and one line break at its end."""
    edits = format_rows(file, positions, 0, len(file.lines) - 1)
    lines = file.lines
    last = len(lines)
    while last > 1 and not lines[last - 1].strip(" \t\u00a0") and not lines[last - 2].strip(" \t\u00a0"):
        last -= 1
    if last < len(lines):
        edits = [edit for edit in edits if edit["range"]["start"]["line"] < last - 1]
        start, end = (last - 1, 0), (len(lines) - 1, len(lines[-1]))
        edits.append({"range": positions.range(lines, *start, *end), "newText": ""})
    elif lines[-1].strip(" \t\u00a0"):
        end = (len(lines) - 1, len(lines[-1]))
        edits.append({"range": positions.range(lines, *end, *end), "newText": "\n"})
    return edits


def format_rows(file: TextFile, positions: Positions, first: int, last: int) -> list[Json]:
    """The edits that set the lines from ``first`` to ``last``, both included, each by itself."""
    edits: list[Json] = []
    for block in file.blocks:
        if block.first_line > last or block.end_line <= first:
            continue
        for row, new in enumerate(format_lines(list(block.lines))):
            line = block.first_line + row
            if first <= line <= last and new != block.lines[row]:
                edits.append(_change(block.lines[row], new, line, positions))
    return edits


def _change(old: str, new: str, line: int, positions: Positions) -> Json:
    """The smallest edit of one line: cursors and marks on the words that stay are not moved."""
    head = 0
    most = min(len(old), len(new))
    while head < most and old[head] == new[head]:
        head += 1
    tail = 0
    while tail < most - head and old[-1 - tail] == new[-1 - tail]:
        tail += 1
    start, end = (positions.units(old, column) for column in (head, len(old) - tail))
    return {
        "range": {"start": {"line": line, "character": start}, "end": {"line": line, "character": end}},
        "newText": new[head : len(new) - tail],
    }


def _document(server: WyelineServer, params: Any) -> list[Json] | None:
    found = server.file_in(params)
    return format_document(found[1], server.session.positions) if found is not None else None


def _range(server: WyelineServer, params: Any) -> list[Json] | None:
    found = server.file_in(params)
    if found is None:
        return None
    (first, _), (last, column) = server.range_in(params, found[1])
    if column == 0 and last > first:
        last -= 1  # whole lines are selected up to the start of the next one
    return format_rows(found[1], server.session.positions, first, last)


def _on_type(server: WyelineServer, params: Any) -> list[Json] | None:
    """A line break was typed: set the line that was left."""
    spot = server.spot(params)
    if spot is None or params.get("ch") != "\n" or spot.line == 0:
        return None
    return format_rows(spot.file, server.session.positions, spot.line - 1, spot.line - 1)
