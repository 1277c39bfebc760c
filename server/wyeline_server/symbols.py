"""The outline of a document and the search over a workspace: equipment with its circuits, feeders, and what else has a
name."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any, NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.blocks import TextFile
from wyeline_grammar.linking import feeder_name
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.parser import parse_block
from wyeline_grammar.remembering import OfBlocks
from wyeline_grammar.sources import SourceError
from wyeline_grammar.vocabulary import BOARDS
from wyeline_server.positions import Json, Positions
from wyeline_server.protocol import ReadyJson
from wyeline_server.server import WyelineServer
from wyeline_server.session import Session

MOST_FOUND = 500
"""A search that gives more helps nobody."""

FILE, NAMESPACE, PACKAGE, CLASS, FIELD, INTERFACE, CONSTANT = 1, 3, 4, 5, 8, 11, 14
BOOLEAN, OBJECT, KEY, STRUCT, EVENT = 17, 19, 20, 23, 24
"""Kinds of the protocol, chosen for their icons: it knows none of the trade's own."""
_DEPRECATED = 1


def register(server: WyelineServer) -> None:
    server.on("textDocument/documentSymbol", _document_symbols)
    server.on("workspace/symbol", _workspace_symbols)


class Symbol(NamedTuple):
    """Something that the outline shows. Lines are relative to the block; ``words`` are the columns of its name."""

    name: str
    detail: str
    kind: int
    gone: bool
    first: int
    last: int
    row: int
    words: tuple[int, int]
    children: tuple[Symbol, ...] = ()


def read_symbol(lines: tuple[str, ...]) -> Symbol | None:
    """What a block puts into the outline, not remembered; None for comments and what cannot be read."""
    statement = lower_block(lines)
    row = statement.head.line
    first = next((i for i, text in enumerate(lines[:row]) if text.lstrip("\ufeff").startswith("///")), row)

    def made(name: str, detail: str, kind: int, span: m.Span, gone: bool = False, *children: Symbol) -> Symbol:
        last = max(statement.last_line, row)
        return Symbol(name or "?", detail, kind, gone, first, last, span.line, (span.start, span.end), children)

    if isinstance(statement, m.EquipmentStatement):
        return _equipment(lines, statement, made)
    if isinstance(statement, m.FeederStatement):
        gone = "demolish" in statement.body.flags
        span = statement.label.span if statement.label is not None else _ends(statement)
        detail = _behind_head(lines, row)
        if statement.label is not None and statement.source is not None and statement.target is not None:
            detail = f"{statement.source.text} -> {statement.target.text}  {detail}".rstrip()
        return made(feeder_name(statement), detail, INTERFACE, span, gone)
    if isinstance(statement, m.RacewayStatement | m.ProjectStatement | m.ScenarioStatement):
        kind = {m.RacewayStatement: PACKAGE, m.ProjectStatement: NAMESPACE}.get(type(statement), EVENT)
        word = {m.RacewayStatement: "raceway", m.ProjectStatement: "project"}.get(type(statement), "scenario")
        name = statement.name
        detail = (statement.title or word) if isinstance(statement, m.ScenarioStatement) else word
        return made(name.text if name else word, detail, kind, name.span if name else statement.head)
    if isinstance(statement, m.Include):
        return made(statement.target or "", "include", FILE, statement.target_span)
    if isinstance(statement, m.ExpectStatement):
        head = statement.head
        return made(_squeezed(lines[row][head.start : head.end]), "", BOOLEAN, head)
    return None


symbol_of = OfBlocks(read_symbol)
"""The same, remembered."""


def _ends(statement: m.FeederStatement) -> m.Span:
    """From the first end that can be read to the last."""
    ends = [end.span for end in (statement.source, statement.target) if end is not None]
    return ends[0]._replace(end=ends[-1].end) if ends else statement.head


def _equipment(lines: tuple[str, ...], statement: m.EquipmentStatement, made: Any) -> Symbol:
    kind = statement.kind
    sides = [_side(side) for side in (statement.primary, statement.secondary) if side is not None]
    detail = " ".join([*(["type"] if statement.is_type else []), kind, " -> ".join(sides)]).strip()
    if statement.body.description:
        detail += f"  {statement.body.description}"
    shown = STRUCT if kind in BOARDS else {"system": CONSTANT, "interlock": KEY}.get(kind, OBJECT)
    if statement.is_type:
        shown = CLASS
    circuits = [_circuit(lines, circuit) for circuit in statement.circuits]
    name = statement.name
    gone = "demolish" in statement.body.flags
    found: Symbol = made(name.text if name else "", detail, shown, name.span if name else statement.head, gone)
    return found._replace(children=tuple(circuits)) if circuits else found


def _side(side: m.SystemRef) -> str:
    return side.voltage.text if side.voltage is not None else side.name or "?"


def _circuit(lines: tuple[str, ...], circuit: m.Circuit) -> Symbol:
    span, body = circuit.span, circuit.body
    text = body.description or next((flag for flag in ("spare", "space") if flag in body.flags), "")
    rest = lines[span.line][circuit.place.span.end : span.end]
    if body.description_span is not None and body.description_span.line == span.line:
        rest = rest[: body.description_span.start - circuit.place.span.end]
    name = f"{circuit.place.key}  {text}".rstrip()
    detail = "" if text in ("spare", "space") and not body.description else _squeezed(rest)
    return Symbol(
        name, detail, FIELD, "demolish" in body.flags, span.line, span.line, span.line, (span.start, span.end)
    )


def _behind_head(lines: tuple[str, ...], row: int) -> str:
    """The device of a feeder, as written: the phrase right behind its head, where that is a rating."""
    phrases = parse_block(lines).lines[row].phrases
    if not phrases or phrases[0].form != "quantity":
        return ""
    return _squeezed(lines[row][phrases[0].start : phrases[0].end])


def _squeezed(text: str) -> str:
    return " ".join(text.split())


def document_symbols(file: TextFile, positions: Positions) -> ReadyJson:
    """The outline of a document as a tree, in JSON."""
    encoding = positions.encoding
    made: list[str] = []
    for block in file.blocks:
        template = _template(block.lines, encoding)
        if template is not None:
            text, rows = template
            top = block.first_line
            made += "," if made else "[", text % tuple([top + row for row in rows])
    return ReadyJson([*made, "]"] if made else ["[]"])


@OfBlocks
def _template(lines: tuple[str, ...], encoding: str) -> tuple[str, tuple[int, ...]] | None:
    """The JSON of a block's symbol with a ``%d`` for every line number, and the rows that fill them."""
    symbol = read_symbol(lines)  # the outline keeps its JSON alone
    if symbol is None:
        return None
    rows: list[int] = []
    return _written(symbol, lines, Positions(encoding), rows), tuple(rows)


def _written(symbol: Symbol, lines: tuple[str, ...], positions: Positions, rows: list[int]) -> str:
    def place(row: int, column: int) -> str:
        rows.append(row)
        return f'{{"line":%d,"character":{positions.units(lines[row], column)}}}'

    def text(words: str) -> str:
        return json.dumps(words).replace("%", "%%")

    start, end = symbol.words
    parts = [
        f'{{"name":{text(symbol.name)},"detail":{text(symbol.detail)},"kind":{symbol.kind}',
        f',"range":{{"start":{place(symbol.first, 0)},"end":{place(symbol.last, len(lines[symbol.last]))}}}',
        f',"selectionRange":{{"start":{place(symbol.row, start)},"end":{place(symbol.row, end)}}}',
    ]
    if symbol.gone:
        parts.append(f',"tags":[{_DEPRECATED}]')
    if symbol.children:
        parts.append(f',"children":[{",".join(_written(c, lines, positions, rows) for c in symbol.children)}]')
    return "".join([*parts, "}"])


def _document_symbols(server: WyelineServer, params: Any) -> ReadyJson | list[Json] | None:
    found = server.file_in(params)
    if found is None:
        return None
    path, file = found
    if server.client_can("textDocument.documentSymbol.hierarchicalDocumentSymbolSupport", False):
        return document_symbols(file, server.session.positions)
    return [made for made, _ in _flat(server.session, path, file)]


def _flat(session: Session, path: str, file: TextFile) -> Iterator[tuple[Json, Symbol]]:
    """Every symbol with its place, circuits under the name of their board."""
    uri = session.uri_of(path)
    for block in file.blocks:
        symbol = symbol_of(block.lines)
        if symbol is None:
            continue
        for one in (symbol, *symbol.children):
            place = session.positions.block_range(block, one.row, one.words[0], one.row, one.words[1])
            made: Json = {"name": one.name, "kind": one.kind, "location": {"uri": uri, "range": place}}
            if one.gone:
                made["tags"] = [_DEPRECATED]
            if one is not symbol:
                made["containerName"] = symbol.name
            elif one.detail:
                made["containerName"] = one.detail
            yield made, one


# the workspace


def workspace_symbols(server: WyelineServer, query: str) -> list[Json]:
    """What is called or described like ``query``, best first: its letters in their order are enough."""
    session = server.session
    wanted = "".join(query.split()).casefold()
    found: list[tuple[int, str, int, int, Json]] = []
    for path in _files(session):
        server.stop_if_cancelled()
        try:
            file = session.text(path)
        except SourceError:
            continue
        for made, symbol in _flat(session, path, file):
            if symbol.kind in (FILE, BOOLEAN):
                continue
            rank = _rank(wanted, symbol.name, symbol.detail)
            if rank is not None:
                line = made["location"]["range"]["start"]["line"]
                found.append((rank, path, line, len(found), made))
    found.sort(key=lambda f: f[:4])
    return [made for *_, made in found[:MOST_FOUND]]


def _files(session: Session) -> list[str]:
    """Every file of the workspace folders, and of the models of open documents."""
    session.all_roots()
    return sorted({*session.graph.files(), *session.documents})


def _rank(wanted: str, name: str, detail: str) -> int | None:
    """How well a query fits, 0 the best; None where it does not."""
    if not wanted:
        return 5
    tag = "".join(name.split()).casefold()
    if tag == wanted:
        return 0
    if tag.startswith(wanted):
        return 1
    if wanted in tag:
        return 2
    if wanted in "".join(detail.split()).casefold():
        return 3
    letters = iter(tag)
    return 4 if all(letter in letters for letter in wanted) else None


def _workspace_symbols(server: WyelineServer, params: Any) -> list[Json]:
    return workspace_symbols(server, str(params.get("query", "")))
