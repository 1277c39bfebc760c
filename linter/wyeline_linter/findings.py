"""What a check has to say: findings, the places they speak of, and the edits that mend them."""

from __future__ import annotations

import enum
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import NamedTuple, SupportsIndex, overload

from wyeline_grammar.blocks import Block
from wyeline_grammar.places import Place


class Severity(enum.IntEnum):
    """How grave a finding is; ``GAP`` is a calculation that could not be made, neither a pass nor a fail."""

    GAP = 0
    ADVICE = 1
    WARNING = 2
    ERROR = 3

    @property
    def word(self) -> str:
        return self.name.lower()


class Safety(enum.Enum):
    """Who may apply a fix: ``SAFE`` changes only how something is written, ``LOOK`` changes what the model says and
    wants a person's eye, ``SHOW`` is an example that needs numbers only an engineer has."""

    SAFE = "safe"
    LOOK = "needs a look"
    SHOW = "shown only"


class Edit(NamedTuple):
    """Replace a stretch of a block's text. Lines are relative to the block; ``text`` may hold line breaks (LF)."""

    block: Block
    line: int
    start: int
    end_line: int
    end: int
    text: str


def replace(place: Place, text: str) -> Edit:
    """Put ``text`` where ``place`` is."""
    span = place.span
    return Edit(place.block, span.line, span.start, span.line, span.end, text)


def append_phrase(block: Block, line: int, text: str) -> Edit:
    """Add a phrase at the end of a line, before its comment if it has one."""
    column = code_end(block.lines[line])
    return Edit(block, line, column, line, column, parting(block.lines[line]) + text)


def parting(line: str) -> str:
    """What parts a new phrase from the words of a line: one blank where the line never has two."""
    return "  " if "  " in line[: code_end(line)].lstrip() or "\t" in line else " "


def delete_phrase(place: Place) -> Edit:
    """Delete a phrase with the blanks and the comma before it."""
    span = place.span
    line = place.block.lines[span.line]
    start = len(line[: span.start].rstrip(" \t,"))
    return Edit(place.block, span.line, start, span.line, span.end, "")


def insert_below(block: Block, line: int, text: str) -> Edit:
    """Put whole new lines below a line of a block."""
    column = len(block.lines[line])
    return Edit(block, line, column, line, column, "\n" + text)


def insert_above(block: Block, text: str) -> Edit:
    """Put whole new lines above a block."""
    return Edit(block, 0, 0, 0, 0, text + "\n")


def delete_line(block: Block, line: int) -> Edit:
    """Delete a line of a block; its line break goes where the edit is applied (``in_columns``)."""
    return Edit(block, line, 0, line, len(block.lines[line]), "")


def delete_statement(block: Block, last_line: int) -> Edit:
    """Delete a statement from the first line of its block to its last one, with the line break behind it."""
    return Edit(block, 0, 0, last_line, len(block.lines[last_line]), "")


def code_end(line: str) -> int:
    """The column where a line's words end: before a comment, blanks dropped."""
    quoted = False
    for i, char in enumerate(line):
        if char == '"':
            quoted = not quoted
        elif not quoted and line.startswith("//", i) and (i == 0 or line[i - 1] != ":"):
            return len(line[:i].rstrip())
    return len(line.rstrip())


class Fix(NamedTuple):
    """One way to mend a finding, applied whole or not at all."""

    title: str
    edits: tuple[Edit, ...]
    safety: Safety = Safety.LOOK


class Offered(Sequence[Fix]):
    """Fixes that depend on the whole model: worked out when somebody looks, and again after the model has changed.

    ``version`` counts the changes of the model. Most findings are never asked for their fixes between two keystrokes.
    """

    __slots__ = ("_made", "_version", "_work")

    def __init__(self, work: Callable[[], tuple[Fix, ...]], version: Callable[[], int]) -> None:
        self._work = work
        self._version = version
        self._made: tuple[int, tuple[Fix, ...]] | None = None

    def _now(self) -> tuple[Fix, ...]:
        version = self._version()
        if self._made is None or self._made[0] != version:
            self._made = version, self._work()
        return self._made[1]

    def __len__(self) -> int:
        return len(self._now())

    @overload
    def __getitem__(self, at: SupportsIndex) -> Fix: ...
    @overload
    def __getitem__(self, at: slice) -> tuple[Fix, ...]: ...
    def __getitem__(self, at: SupportsIndex | slice) -> Fix | tuple[Fix, ...]:
        return self._now()[at]

    def __iter__(self) -> Iterator[Fix]:
        return iter(self._now())

    def __eq__(self, other: object) -> bool:
        return self is other or (isinstance(other, tuple | Offered) and self._now() == tuple(other))

    def __hash__(self) -> int:
        return hash(self._now())


class Related(NamedTuple):
    """Another place that a finding speaks of."""

    place: Place
    message: str


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that a rule found.

    ``message`` stands alone on one line; ``found``, ``needed``, ``why`` and ``change`` say the rest in plain words,
    numbers first. ``subject`` is the name of the equipment or feeder it is about, ``position`` the circuit. ``causes``
    names what an unknown figure lacks. ``allowed`` is the reason of the allowance that accepts it.
    """

    rule: str
    severity: Severity
    message: str
    place: Place
    found: str = ""
    needed: str = ""
    why: str = ""
    change: str = ""
    clause: str = ""
    subject: str = ""
    position: str = ""
    related: tuple[Related, ...] = ()
    fixes: Sequence[Fix] = ()
    allowed: str | None = None

    @property
    def sort_key(self) -> tuple[str, int, int, int, str, str, str, str]:
        """The one order in which findings leave: path, start, end, rule, message; subject and position where what is
        written in a type is found of each that bears it."""
        span = self.place.span
        return (
            self.place.file,
            self.place.row,
            span.start,
            span.end,
            self.rule,
            self.message,
            self.subject,
            self.position,
        )
