"""Where names are written: every declaration and every use, with the part it plays there.

What a block names follows from its text alone, so it is found once for each text; who bears a name is the model's
knowledge. Positions and labels of circuits are no names: they are known within their board only.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.blocks import Block
from wyeline_grammar.bodies import RACEWAY_STUFF
from wyeline_grammar.linking import Model
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.parser import parse_block
from wyeline_grammar.remembering import OfBlocks
from wyeline_grammar.syntax import Phrase, Token

SHARED = "names"
"""Equipment, systems, types, raceways, interlocks and feeder labels: one name means one of them."""
SCENARIOS = "scenarios"
"""Scenarios have names of their own."""

DECLARED = "declared"
REFERRING_KEYS = ("like", "standby-of", "not-with", "among")
"""Keys whose values are names of the model."""


class Named(NamedTuple):
    """A name where it is written in a block.

    ``span`` is the name alone: with its quotes, without a port behind it. ``role`` is ``declared``; ``from`` or ``to``
    of a feeder; ``voltage`` (a declared system's name); a key of ``REFERRING_KEYS``; ``raceway`` (behind ``in``);
    ``action`` of a scenario; ``expect``; or ``scenario`` (behind the ``in`` of an expectation). ``space`` is ``SHARED``
    or ``SCENARIOS``.
    """

    name: str
    span: m.Span
    role: str
    space: str = SHARED


class Reference(NamedTuple):
    """A name where it is written in a model."""

    block: Block
    span: m.Span
    role: str


def references(model: Model, name: str, space: str = SHARED) -> list[Reference]:
    """Every place of a model where this name is declared or used, in the order of its files and lines."""
    found: list[Reference] = []
    for path in model.files:
        file = model.store.known(path)
        for block in file.blocks if file is not None else ():
            found += [
                Reference(block, named.span, named.role)
                for named in names_of(block.lines)
                if named.name == name and named.space == space
            ]
    return found


@OfBlocks
def names_of(lines: tuple[str, ...]) -> tuple[Named, ...]:
    """The names that a block declares and uses, in the order of their places. Never raises."""
    found = [n for n in _named(lines, lower_block(lines)) if _stands_there(lines, n)]
    return tuple(sorted(set(found), key=lambda n: n.span))


def _stands_there(lines: tuple[str, ...], named: Named) -> bool:
    """Whether the words at the span are the name: where a slip was read as what it meant, they may not be."""
    span = named.span
    words = lines[span.line][span.start : span.end]
    return named.name in (words, words[1:-1])


def _named(lines: tuple[str, ...], statement: m.Statement) -> Iterator[Named]:
    if isinstance(statement, m.FeederStatement):
        if statement.label is not None:
            yield Named(*statement.label, DECLARED)
        yield from _end(lines, statement.source, "from")
        yield from _end(lines, statement.target, "to")
    elif isinstance(statement, m.EquipmentStatement):
        if statement.name is not None:
            yield Named(*statement.name, DECLARED)
        for side in (statement.primary, statement.secondary):
            if side is not None and side.name is not None:
                yield Named(side.name, side.span, "voltage")
    elif isinstance(statement, m.RacewayStatement):
        if statement.name is not None:
            yield Named(*statement.name, DECLARED)
    elif isinstance(statement, m.ScenarioStatement):
        if statement.name is not None:
            yield Named(*statement.name, DECLARED, SCENARIOS)
        for action in statement.actions:
            yield from _end(lines, action.source, "action")
            yield from _end(lines, action.target, "action")
    elif isinstance(statement, m.ExpectStatement):
        yield from _end(lines, statement.source, "expect")
        yield from _end(lines, statement.target, "expect")
        if statement.scenario is not None:
            yield Named(*statement.scenario, "scenario", SCENARIOS)
    if not isinstance(statement, m.EquipmentStatement | m.FeederStatement):
        return
    for row, line in enumerate(parse_block(lines).lines):
        for phrase in line.phrases:
            yield from _in_phrase(phrase, row)


def _end(lines: tuple[str, ...], end: m.End | None, role: str) -> Iterator[Named]:
    if end is not None:
        yield Named(end.name, without_port(lines, end), role)


def without_port(lines: tuple[str, ...], end: m.End) -> m.Span:
    """The span of an end's name alone."""
    span = end.span
    if end.port is None:
        return span
    words = lines[span.line][span.start : span.end]
    return span._replace(end=span.start + len(words.rpartition(".")[0]))


def _in_phrase(phrase: Phrase, row: int) -> Iterator[Named]:
    tokens = phrase.tokens
    if phrase.form == "key" and tokens[0].text in REFERRING_KEYS:
        for token in tokens[1:]:
            if token.kind in ("NAME", "PORT", "TEXT"):
                yield Named(_unquoted(token), m.Span(row, token.start, token.end), tokens[0].text)
    elif phrase.form == "in" and len(tokens) == 2 and tokens[1].kind == "NAME" and tokens[1].text not in RACEWAY_STUFF:
        yield Named(tokens[1].text, m.Span(row, tokens[1].start, tokens[1].end), "raceway")


def _unquoted(token: Token) -> str:
    return token.text[1:-1] if token.kind == "TEXT" else token.text
