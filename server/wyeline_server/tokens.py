"""Semantic tokens: every word with what it is, and every name with what it stands for there.

What a word is follows from the text of its block, so the tokens of a block are kept by its text. A block begins on a
line of its own: only the first number of each block depends on what stands above, and an answer is joined from pieces.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any, NamedTuple

from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.highlighting import GROUP_OF_KIND
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import EquipmentStatement
from wyeline_grammar.parser import parse_block
from wyeline_grammar.references import Named, names_of
from wyeline_grammar.remembering import OfBlocks
from wyeline_grammar.tokens import BLANKS, tokenize
from wyeline_server.announced import TOKEN_TYPES
from wyeline_server.positions import Json, Positions
from wyeline_server.protocol import ReadyJson
from wyeline_server.server import WyelineServer

_INDEX = {name: i for i, name in enumerate(TOKEN_TYPES)}
_DECLARATION, _DEPRECATED, _DOCUMENTATION = 1 << 0, 1 << 2, 1 << 3

TYPE_OF_GROUP = {
    "comment": "comment",
    "doc": "comment",
    "text": "string",
    "statement": "keyword",
    "kind": "type",
    "key": "property",
    "flag": "modifier",
    "action": "keyword",
    "link": "keyword",
    "port": "variable",
    "name": "enumMember",
    "legs": "parameter",
    "voltage": "enumMember",
    "conductor": "number",
    "quantity": "number",
    "count": "number",
    "mark": "operator",
}
"""What the protocol calls each group of tokens (``wyeline_grammar.highlighting``); it knows none of the trade's own.

Words spelt like names that name nothing of the model (``Cu``, ``EMT``, ``N``) are members of what the trade lists."""
TYPE_OF_ROLE = {"voltage": "enum", "like": "class", "raceway": "namespace", "scenario": "event"}
"""Names by the part they play where they are used; other names are ``variable``."""
TYPE_OF_DECLARED = {
    "system": "enum",
    "type": "class",
    "raceway": "namespace",
    "scenario": "event",
    "feeder": "function",
}
"""Names by the form of the statement that declares them."""


def register(server: WyelineServer) -> None:
    given = _Given()
    server.on("textDocument/semanticTokens/full", given.full)
    server.on("textDocument/semanticTokens/full/delta", given.delta)
    server.on("textDocument/semanticTokens/range", _range)


class Piece(NamedTuple):
    """The tokens of a block as numbers of the protocol.

    ``first`` and ``last`` are the rows of its first and last token; ``rest`` is every number but the very first (which
    says how many lines lie between this piece and the one before), written in JSON; ``size`` counts all of them.
    """

    first: int
    last: int
    rest: str
    size: int


@OfBlocks
def piece_of(lines: tuple[str, ...], encoding: str) -> Piece | None:
    """The tokens of a block; None where it has none."""
    return _piece(lines, encoding, 0, len(lines))


def _piece(lines: tuple[str, ...], encoding: str, top: int, bottom: int) -> Piece | None:
    units = Positions(encoding).units
    numbers: list[int] = []
    first, row, column = -1, 0, 0
    for at, start, end, kind, modifiers in words_of(lines):
        if not top <= at < bottom:
            continue
        text = lines[at]
        begin = start if text.isascii() else units(text, start)
        length = end - start if text.isascii() else units(text, end) - begin
        if first < 0:
            first = row = at
        elif at != row:
            column = 0
        numbers += (at - row, begin - column, length, kind, modifiers)
        row, column = at, begin
    if first < 0:
        return None
    return Piece(first, row, ",".join(map(str, numbers[1:])), len(numbers))


def words_of(lines: tuple[str, ...]) -> Iterator[tuple[int, int, int, int, int]]:
    """(row, start, end, type, modifiers) of every word of a block, columns in code points, none overlapping."""
    statement = lower_block(lines)
    gone = isinstance(statement, EquipmentStatement) and "demolish" in statement.body.flags
    names = {(n.span.line, n.span.start): n for n in names_of(lines)}
    form = ""  # of the statement: it says what a name that is declared stands for
    if isinstance(statement, EquipmentStatement):
        form = "type" if statement.is_type else statement.kind
    elif any(named.role == "declared" for named in names.values()):
        syntax = parse_block(lines)
        form = syntax.lines[syntax.head].form if syntax.head is not None else ""
    for row, text in enumerate(lines):
        yield from _words_in(text, row, form, names, gone)


def _words_in(
    text: str, row: int, form: str, names: dict[tuple[int, int], Named], gone: bool
) -> Iterator[tuple[int, int, int, int, int]]:
    tokens, comment = tokenize(text)
    for token in tokens:
        named = names.get((row, token.start))
        if named is not None:
            modifiers = _DECLARATION if named.role == "declared" else 0
            kinds = TYPE_OF_DECLARED if named.role == "declared" else TYPE_OF_ROLE
            kind = kinds.get(form if named.role == "declared" else named.role, "variable")
            if gone and named.role == "declared":
                modifiers |= _DEPRECATED
            yield row, token.start, named.span.end, _INDEX[kind], modifiers
            if named.span.end < token.end:  # a port: its point stays bare
                yield row, named.span.end + 1, token.end, _INDEX["property"], 0
            continue
        group = GROUP_OF_KIND.get(token.kind)
        if group is not None:
            yield row, token.start, token.end, _INDEX[TYPE_OF_GROUP[group]], 0
    if comment is not None:
        start, end = len(text) - len(comment), len(text.rstrip(BLANKS))
        yield row, start, end, _INDEX["comment"], _DOCUMENTATION if comment.startswith("///") else 0


Placed = tuple[int, Piece]
"""A piece, with the lines that lie between it and the one before."""


def pieces(file: TextFile, encoding: str) -> list[Placed]:
    """The tokens of a document: the piece of each block that has any."""
    found: list[Placed] = []
    before = 0
    for block in file.blocks:
        piece = piece_of(block.lines, encoding)
        if piece is not None:
            top = block.first_line
            found.append((top + piece.first - before, piece))
            before = top + piece.last
    return found


def numbers(placed: Iterable[Placed]) -> list[str]:
    """What pieces say, as parts of JSON between the brackets of a list."""
    parts: list[str] = []
    for lines, piece in placed:
        parts += f",{lines}," if parts else f"{lines},", piece.rest
    return parts


def range_of(file: TextFile, first: int, last: int, encoding: str) -> ReadyJson:
    """The tokens of the lines from ``first`` to ``last``, both included."""
    found: list[Placed] = []
    before = 0
    for block in _blocks_in(file, first, last):
        top = block.first_line
        if first <= top and block.end_line <= last + 1:
            piece = piece_of(block.lines, encoding)
        else:
            piece = _piece(block.lines, encoding, first - top, last + 1 - top)
        if piece is not None:
            found.append((top + piece.first - before, piece))
            before = top + piece.last
    return ReadyJson(['{"data":[', *numbers(found), "]}"])


def _blocks_in(file: TextFile, first: int, last: int) -> Iterator[Block]:
    for block in file.blocks:
        if block.first_line > last:
            return
        if block.end_line > first:
            yield block


class _Given:
    """What the client has been given last for each document, to answer with the difference next time."""

    def __init__(self) -> None:
        self._last: dict[str, tuple[str, list[Placed]]] = {}
        self._count = 0

    def full(self, server: WyelineServer, params: Any) -> ReadyJson | None:
        found = server.file_in(params)
        if found is None:
            return None
        path, file = found
        return self._full(server, path, pieces(file, server.session.positions.encoding))

    def _full(self, server: WyelineServer, path: str, placed: list[Placed]) -> ReadyJson:
        result = self._keep(server, path, placed)
        return ReadyJson([f'{{"resultId":"{result}","data":[', *numbers(placed), "]}"])

    def _keep(self, server: WyelineServer, path: str, placed: list[Placed]) -> str:
        for closed in self._last.keys() - server.session.documents.keys():
            del self._last[closed]
        self._count += 1
        self._last[path] = (str(self._count), placed)
        return str(self._count)

    def delta(self, server: WyelineServer, params: Any) -> ReadyJson | Json | None:
        found = server.file_in(params)
        if found is None:
            return None
        path, file = found
        placed = pieces(file, server.session.positions.encoding)
        told = self._last.get(path)
        if told is None or told[0] != params.get("previousResultId"):
            return self._full(server, path, placed)
        old = told[1]
        head = _same(old, placed)
        tail = _same(old[head:][::-1], placed[head:][::-1])
        result = self._keep(server, path, placed)
        gone, new = _size(old[head : len(old) - tail]), placed[head : len(placed) - tail]
        if not gone and not new:
            return {"resultId": result, "edits": []}
        start = f'{{"resultId":"{result}","edits":[{{"start":{_size(placed[:head])},"deleteCount":{gone},"data":['
        return ReadyJson([start, *numbers(new), "]}]}"])


def _size(placed: Iterable[Placed]) -> int:
    """How many numbers pieces hold."""
    return sum(piece.size for _, piece in placed)


def _same(first: list[Placed], second: list[Placed]) -> int:
    """How many pieces are the same from the front."""
    for i, (a, b) in enumerate(zip(first, second, strict=False)):
        if a != b:
            return i
    return min(len(first), len(second))


def _range(server: WyelineServer, params: Any) -> ReadyJson | None:
    found = server.file_in(params)
    if found is None:
        return None
    (first, _), (last, _) = server.range_in(params, found[1])
    return range_of(found[1], first, last, server.session.positions.encoding)
