"""What parsing yields: lines cut into a head and phrases.

A parsed line is its tokens and how they group; nothing here knows what the words mean. All columns are Python string
indices within the line (code points, from 0); all line numbers are relative to the first line of the block.
"""

from __future__ import annotations

from typing import NamedTuple

from wyeline_grammar.problems import Problem


class Token(NamedTuple):
    """One word of a line.

    ``kind`` is a terminal of ``wye.lark`` (``tokens.py`` lists them) or ``ERROR``. ``text`` is the plain spelling
    (``x`` for ``×``), texts with their quotes; ``start`` and ``end`` are columns of the line as written.
    """

    kind: str
    text: str
    start: int
    end: int


class Phrase(NamedTuple):
    """One phrase after the head.

    ``form`` is one of: ``quantity`` (unkeyed, perhaps with poles), ``key`` (also ``at``: first token is the key, the
    rest its value), ``flag``, ``class`` (a kind as a load's class), ``text``, ``in`` (raceway), ``leg``,
    ``conductors``. ``assume`` before a phrase is not among its tokens.
    """

    form: str
    tokens: tuple[Token, ...]
    assumed: bool = False

    @property
    def start(self) -> int:
        return self.tokens[0].start

    @property
    def end(self) -> int:
        return self.tokens[-1].end


class Line(NamedTuple):
    """One line: its form, the tokens of its head (in order, marks included) and its phrases.

    Forms of statements: ``wye project include equipment type raceway feeder scenario expect``; of details: ``circuit
    more action allow claim issue``; also ``comment``, ``doc``, ``blank`` and ``broken`` (nothing usable was found).
    In a line with problems the head holds what could be read, in order, and readable phrases are kept; a line whose
    slip can only have meant one thing holds what it meant, in columns of the text as written (several tokens may then
    share them). ``comment`` runs from its ``//`` to the end of the line as written.
    """

    form: str
    head: tuple[Token, ...]
    phrases: tuple[Phrase, ...]
    problems: tuple[Problem, ...]
    comment: str | None = None

    @property
    def end(self) -> int:
        """The column where the last word ends that could be read (before a trailing comment)."""
        if not self.problems:
            last = self.phrases[-1].tokens if self.phrases else self.head
            return last[-1].end if last else 0
        # Words of a mended slip may share columns.
        return max((token.end for token in self.words()), default=0)

    @property
    def start(self) -> int:
        """The column where its first word begins that could be read."""
        if not self.problems:
            first = self.head or (self.phrases[0].tokens if self.phrases else ())
            return first[0].start if first else 0
        return min((token.start for token in self.words()), default=0)

    def words(self) -> list[Token]:
        """The tokens of its head and of its phrases."""
        return [*self.head, *(token for phrase in self.phrases for token in phrase.tokens)]


class BlockSyntax(NamedTuple):
    """A statement with its details. ``lines[i]`` is the i-th line of the block, blank and comment lines included.

    ``head`` is the index of the statement's line, or None where the block is only comments, or its details stand
    alone (each such detail then carries a problem).
    """

    lines: tuple[Line, ...]
    head: int | None
