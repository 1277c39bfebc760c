"""What stands at a place of a text: the word, the phrase and line around it, and the name that it is part of."""

from __future__ import annotations

from typing import NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.linking import Model
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.parser import parse_block
from wyeline_grammar.references import SCENARIOS, Named, Reference, names_of, references
from wyeline_grammar.syntax import Line, Phrase, Token


class At(NamedTuple):
    """What stands at a place. ``row`` is the line within the block, columns are code points.

    ``token`` is None between words and in comments; ``phrase`` is None in the head of a line. ``named`` is the name
    that is written there, if one is.
    """

    block: Block
    row: int
    column: int
    line: Line
    token: Token | None
    phrase: Phrase | None
    named: Named | None

    @property
    def statement(self) -> m.Statement:
        """What the block says."""
        return lower_block(self.block.lines)

    @property
    def in_comment(self) -> bool:
        """Whether the place lies behind the ``//`` of a comment."""
        comment = self.line.comment
        return comment is not None and self.column > len(self.block.lines[self.row]) - len(comment)

    @property
    def place(self) -> str:
        """Where its phrases stand, for the table of attributes: a kind's name, ``feeder``, ``circuit``, ``project``,
        ``issue``, ``raceway``, ``scenario`` or ``expect``; empty where nothing readable stands above."""
        return self.line.form if self.line.form in ("circuit", "issue") else place_of(self.statement)

    @property
    def token_span(self) -> m.Span | None:
        """Where the word stands."""
        return m.Span(self.row, self.token.start, self.token.end) if self.token is not None else None


_PLACES: dict[type[m.Statement], str] = {
    m.FeederStatement: "feeder",
    m.ProjectStatement: "project",
    m.RacewayStatement: "raceway",
    m.ScenarioStatement: "scenario",
    m.ExpectStatement: "expect",
}


def place_of(statement: m.Statement) -> str:
    """The place of the attribute table that a statement is."""
    return statement.kind if isinstance(statement, m.EquipmentStatement) else _PLACES.get(type(statement), "")


def at(file: TextFile, line: int, column: int) -> At:
    """What stands at a place; between two words that touch, the one behind it, else the one before it."""
    block = file.block_at(line)
    row = min(max(line - block.first_line, 0), len(block.lines) - 1)
    parsed = parse_block(block.lines).lines[row]
    named = next((n for n in reversed(names_of(block.lines)) if n.span.line == row and _holds(n.span, column)), None)
    for token, phrase in reversed(_words(parsed)):
        if token.start <= column <= token.end:
            return At(block, row, column, parsed, token, phrase, named)
    return At(block, row, column, parsed, None, None, named)


def _holds(span: m.Span, column: int) -> bool:
    return span.start <= column <= span.end


def _words(line: Line) -> list[tuple[Token, Phrase | None]]:
    words: list[tuple[Token, Phrase | None]] = [(token, None) for token in line.head]
    words += [(token, phrase) for phrase in line.phrases for token in phrase.tokens]
    return sorted(words, key=lambda w: (w[0].start, w[0].end))


def declarations(model: Model, named: Named) -> list[Reference]:
    """Where the thing that bears a name is declared; several places where several claim it."""
    if named.space == SCENARIOS:
        return [
            Reference(block, scenario.name.span, "declared")
            for block, scenario in model.scenarios
            if scenario.name is not None and scenario.name.text == named.name
        ]
    return [Reference(d.block, d.span, "declared") for d in model.declared.get(named.name, ())]


def uses(model: Model, named: Named, with_declaration: bool = True) -> list[Reference]:
    """Every place of a model where a name is written."""
    found = references(model, named.name, named.space)
    return found if with_declaration else [r for r in found if r.role != "declared"]
