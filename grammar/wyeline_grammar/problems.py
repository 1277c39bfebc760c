"""What is wrong with a text, in words a drafter understands, and how to mend it."""

from __future__ import annotations

from typing import NamedTuple


class TextEdit(NamedTuple):
    """Replace columns ``start`` to ``end`` of line ``line`` of the block by ``text`` (no line break in it).

    ``line`` is relative to the block. To delete whole lines or insert some, the linter wing has its own edits.
    """

    line: int
    start: int
    end: int
    text: str


class Remedy(NamedTuple):
    """One way to mend a problem. ``sure`` means unambiguous: the text can only have meant this."""

    title: str
    edits: tuple[TextEdit, ...]
    sure: bool = True


class Problem(NamedTuple):
    """One thing wrong at one place of a block.

    ``rule`` is a rule name of the linter's registry. ``found``, ``needed``, ``why`` and ``change`` are plain
    sentences or fragments, numbers first; ``message`` is the one line that stands alone.
    """

    rule: str
    message: str
    line: int
    start: int
    end: int
    found: str = ""
    needed: str = ""
    why: str = ""
    change: str = ""
    remedies: tuple[Remedy, ...] = ()
