"""Selections that grow: the word, its phrase, the line, the statement with its details, the whole text."""

from __future__ import annotations

from typing import Any

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.linking import Place
from wyeline_grammar.model import Span
from wyeline_server.navigation import statement_rows
from wyeline_server.places import at
from wyeline_server.positions import Json, Positions
from wyeline_server.protocol import BadParametersError
from wyeline_server.server import WyelineServer

_Range = tuple[int, int, int, int]


def register(server: WyelineServer) -> None:
    server.on("textDocument/selectionRange", _handler)


def selections(file: TextFile, line: int, column: int) -> list[_Range]:
    """(line, column, end line, end column) of what lies around a place, the smallest first."""
    here = at(file, line, column)
    block, row, text = here.block, here.row, here.block.lines[here.row]
    spans: list[Span] = []
    if here.named is not None:
        spans.append(here.named.span)
    if here.token_span is not None:
        spans.append(here.token_span)
    if here.phrase is not None:
        value = here.phrase.tokens[1:]
        if here.phrase.form == "key" and value and here.token in value:
            spans.append(Span(row, value[0].start, value[-1].end))
        spans.append(Span(row, here.phrase.start, here.phrase.end))
    if here.line.comment is not None and column >= len(text) - len(here.line.comment):
        spans.append(Span(row, len(text) - len(here.line.comment), len(text.rstrip())))
    elif here.line.end:
        spans.append(Span(row, len(text) - len(text.lstrip()), here.line.end))
    spans.append(Span(row, len(text) - len(text.lstrip()), len(text.rstrip())))
    spans.append(Span(row, 0, len(text)))
    top = block.first_line
    found: list[_Range] = [(top + s.line, s.start, top + s.line, s.end) for s in spans]
    found.append(_statement(Place(block, here.statement.head)))
    last = len(block.lines) - 1
    found.append((top, 0, top + last, len(block.lines[last])))
    found.append((0, 0, len(file.lines) - 1, len(file.lines[-1])))
    return _growing(found, line, column)


def _statement(place: Place) -> _Range:
    lines, top = place.block.lines, place.block.first_line
    first, last = statement_rows(lines, place.span.line)
    return top + first, 0, top + last, len(lines[last])


def _growing(found: list[_Range], line: int, column: int) -> list[_Range]:
    """Those that hold the place, each strictly around the one before."""
    kept: list[_Range] = []
    for one in found:
        start, end = one[:2], one[2:]
        if not start <= (line, column) <= end:
            continue
        if not kept or (start <= kept[-1][:2] and kept[-1][2:] <= end and one != kept[-1]):
            kept.append(one)
    return kept


def _handler(server: WyelineServer, params: Any) -> list[Json] | None:
    found = server.file_in(params)
    if found is None:
        return None
    file, positions = found[1], server.session.positions
    try:
        places = [positions.place(file.lines, position) for position in params["positions"]]
    except (TypeError, KeyError, ValueError):
        raise BadParametersError("the request names no positions") from None
    return [_nested(file, positions, line, column) for line, column in places]


def _nested(file: TextFile, positions: Positions, line: int, column: int) -> Json:
    made: Json = {}
    for range_ in reversed(selections(file, line, column)):
        outer = made
        made = {"range": positions.range(file.lines, *range_)}
        if outer:
            made["parent"] = outer
    return made
