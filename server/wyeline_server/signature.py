"""Signature help: the form of the statement being typed, with the part under way marked."""

from __future__ import annotations

import re
from typing import Any, NamedTuple

from wyeline_grammar.attributes import ACTIONS, KEYS, KINDS, SMALL_WORDS, STATEMENTS, doc_of
from wyeline_grammar.syntax import Token
from wyeline_grammar.tokens import is_statement, tokenize
from wyeline_server.completion_slots import slot_at
from wyeline_server.offers import CIRCUIT_FORM
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer

_STOP = re.compile(r"\$\{\d+:([^}]*)\}")


class Part(NamedTuple):
    """One stop of a form: columns in its label, and the key that stands before it (empty: told by its position)."""

    start: int
    end: int
    key: str


class Form(NamedTuple):
    """A statement's form: the example as text, its parts, and what the statement says."""

    label: str
    parts: tuple[Part, ...]
    doc: str


def register(server: WyelineServer) -> None:
    server.on("textDocument/signatureHelp", answer)


def answer(server: WyelineServer, params: Any) -> Json | None:
    spot = server.spot(params)
    if spot is None:
        return None
    found = signature(spot.file.lines, spot.line, spot.column)
    if found is None:
        return None
    form, active, place = found
    offsets = server.client_can(
        "textDocument.signatureHelp.signatureInformation.parameterInformation.labelOffsetSupport", False
    )
    parameters = []
    for part in form.parts:
        words = form.label[part.start : part.end]
        parameter: Json = {"label": [part.start, part.end] if offsets else words}
        doc = doc_of(part.key, place or None) if part.key else None
        if doc:
            parameter["documentation"] = doc
        parameters.append(parameter)
    shown = {"label": form.label, "documentation": form.doc, "parameters": parameters}
    return {"signatures": [shown], "activeSignature": 0, "activeParameter": active}


def signature(lines: list[str], line: int, column: int) -> tuple[Form, int, str] | None:
    """The form of the line under way, which of its parts the cursor is at, and the place of its keys."""
    text = lines[line][:column]
    tokens, comment = tokenize(text)
    if comment is not None or not tokens:
        return None
    words = [t for t in tokens if t.end < column or t.kind == "TEXT"]
    if not words:
        return None
    statement = is_statement(lines[line])
    head = words[0]
    if head.kind == "TYPE" and len(words) > 1:
        head = words[1]
    form = _form_of(head, statement)
    if form is None:
        return None
    place = slot_at(lines, line, column).place
    return form, _active(form, words, tokens), place


def _form_of(head: Token, statement: bool) -> Form | None:
    word = head.text
    if statement:
        if word in KINDS:
            return form_of(KINDS[word].snippet, KINDS[word].doc)
        return form_of(STATEMENTS[word].snippet, STATEMENTS[word].doc) if word in STATEMENTS else None
    for table in (ACTIONS, SMALL_WORDS):
        if word in table and head.kind in ("ACTION", "ALLOW", "CLAIM", "ISSUE"):
            return form_of(table[word].snippet, table[word].doc)
    if head.kind in ("NUMBER", "LIST"):
        return form_of(CIRCUIT_FORM, "A circuit: positions, device, load and its class, name, wires, length.")
    return None


def form_of(snippet: str, doc: str) -> Form:
    """A snippet's first line as a form."""
    label, parts, at = "", [], 0
    snippet = snippet.split("\n")[0]
    for stop in _STOP.finditer(snippet):
        between = snippet[at : stop.start()]
        label += between
        words = between.replace(",", " ").split()
        key = words[-1] if words and words[-1] in KEYS else ""
        start = len(label) - len(between) + between.rindex(key) if key else len(label)
        label += stop[1]
        parts.append(Part(start, len(label), key))
        at = stop.end()
    return Form(label + snippet[at:], tuple(parts), doc)


def _active(form: Form, words: list[Token], tokens: tuple[Token, ...]) -> int:
    """The part under way: that of the last key, else the first that is not written yet."""
    keys = [part.key for part in form.parts]
    last = words[-1]
    if last.kind == "KEY" and last.text in keys:
        return keys.index(last.text)
    under_way = tokens[-1]
    written = {t.text for t in words} | ({under_way.text} if under_way.kind == "KEY" else set())
    told_by_place = [i for i, key in enumerate(keys) if not key]
    plain = sum(1 for t in words[1:] if t.kind in _COUNTED and not _behind_key(words, t))
    plain += words[0].kind in ("NUMBER", "LIST")  # a circuit begins with its positions
    for number, part in enumerate(told_by_place):
        if number >= plain and (number < 3 or not any(k in written for k in keys if k)):
            return part
    for i, key in enumerate(keys):
        if key and key not in written:
            return i
    return len(form.parts)


_COUNTED = frozenset({"NAME", "PORT", "TEXT", "VOLTAGE", "QUANTITY", "POLES", "RUN", "KIND", "TRADE_SIZE", "FLAG"})


def _behind_key(words: list[Token], token: Token) -> bool:
    before = words[words.index(token) - 1]
    return before.kind in ("KEY", "AT", "IN", "PLUS")
