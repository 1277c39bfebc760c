"""Folding: a statement over its details, runs of comments and documentation, and runs of includes."""

from __future__ import annotations

from typing import Any

from wyeline_grammar import model as m
from wyeline_grammar.blocks import TextFile
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.parser import parse_block
from wyeline_grammar.remembering import OfBlocks
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer

_COMMENTS = frozenset({"comment", "doc"})


def register(server: WyelineServer) -> None:
    server.on("textDocument/foldingRange", _handler)


def folding_ranges(file: TextFile, most: int | None = None) -> list[Json]:
    """Whole lines that fold, at most so many."""
    found: list[Json] = []
    includes: list[int] = []
    for block in file.blocks:
        rows = _rows(block.lines)
        for first, last, kind in rows:
            made: Json = {"startLine": block.first_line + first, "endLine": block.first_line + last}
            if kind:
                made["kind"] = kind
            found.append(made)
        if isinstance(lower_block(block.lines), m.Include):
            includes.append(block.first_line)
        elif includes:
            found += _imports(includes)
            includes = []
    found += _imports(includes)
    found.sort(key=lambda r: (r["startLine"], -r["endLine"]))
    return found if most is None else found[:most]


def _imports(lines: list[int]) -> list[Json]:
    return [{"startLine": lines[0], "endLine": lines[-1], "kind": "imports"}] if len(lines) > 1 else []


@OfBlocks
def _rows(lines: tuple[str, ...]) -> tuple[tuple[int, int, str], ...]:
    """(first row, last row, kind) of what folds in a block; statements have no kind."""
    if len(lines) == 1:
        return ()
    found: list[tuple[int, int, str]] = []
    statement = lower_block(lines)
    if not isinstance(statement, m.Unreadable) and not any("//" in text for text in lines):
        first, last = statement.head.line, statement.last_line  # nothing else folds
        return ((first, last, ""),) if last > first else ()
    syntax = parse_block(lines)
    if syntax.head is not None and statement.last_line > syntax.head:
        found.append((syntax.head, statement.last_line, ""))
    start = None
    for row, line in enumerate((*syntax.lines, None)):
        if line is not None and line.form in _COMMENTS:
            start = row if start is None else start
        elif start is not None:
            if row - 1 > start:
                found.append((start, row - 1, "comment"))
            start = None
    return tuple(found)


def _handler(server: WyelineServer, params: Any) -> list[Json] | None:
    found = server.file_in(params)
    if found is None:
        return None
    most = server.client_can("textDocument.foldingRange.rangeLimit")
    return folding_ranges(found[1], most if isinstance(most, int) and most > 0 else None)
