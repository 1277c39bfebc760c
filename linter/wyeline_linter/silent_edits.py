"""Edits after which a file says what it said before: comments and blank lines came, went or changed.

A result that was kept is taken over across such edits, its rows moved (`result_cache`). What counts is narrow, and what
is in doubt is not silent: documentation (``///``), anything that does not print, and words moved within a line are not.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from wyeline_grammar.blocks import cut

_MOST_LINES = 2_000
"""Lines looked at one by one; a larger difference is judged anew."""


class Rows(NamedTuple):
    """Where the rows of the old text stand in the new one: those before ``first`` stay, those from ``last`` on move by
    ``shift``, those between are listed, as far as they are unchanged."""

    first: int
    last: int
    shift: int
    between: dict[int, int]

    def now(self, row: int) -> int:
        """Raises LookupError for a row that went, or that reads otherwise now."""
        if row < self.first:
            return row
        return row + self.shift if row >= self.last else self.between[row]


def rows_after(old: Sequence[str], new: Sequence[str]) -> Rows | None:
    """The rows of a file's old lines among its new ones, where the edit between them is silent; else None."""
    head, limit = 0, min(len(old), len(new))
    while head < limit and old[head] == new[head]:
        head += 1
    tail = 0
    while tail < limit - head and old[-1 - tail] == new[-1 - tail]:
        tail += 1
    # Out to whole blocks, so that what an edit does to the blocks around it is seen.
    while head > 0 and not (head < len(old) and _begins(old[head]) and head < len(new) and _begins(new[head])):
        head -= 1
    while tail > 0 and not _begins(old[-tail]):
        tail -= 1
    tail = max(0, tail - 1)  # the line that begins the next one as well: documentation above it must stay with it
    before, after = old[head : len(old) - tail], new[head : len(new) - tail]
    if max(len(before), len(after)) > _MOST_LINES:
        return None
    between: dict[int, int] = {}
    went, came = _speaking(before), _speaking(after)
    if len(went) != len(came):
        return None
    for (at, was), (to, now) in zip(went, came, strict=True):
        pairs = _pairs(was, now)
        if pairs is None:
            return None
        between.update((head + at + i, head + to + j) for i, j in pairs)
    return Rows(head, len(old) - tail, len(new) - len(old), between)


def _begins(line: str) -> bool:
    """Whether a line begins a statement, and so a block, whatever stands above that is no documentation."""
    return line[:1].isalpha()


def _speaking(lines: Sequence[str]) -> list[tuple[int, tuple[str, ...]]]:
    """The blocks of more than comments and blank lines."""
    return [(first, block) for first, block in cut(lines) if not all(map(_silent, block))]


def _silent(line: str) -> bool:
    words = line.strip(" ")
    return not words or (words.startswith("//") and not words.startswith("///") and words.isprintable())


def _pairs(was: tuple[str, ...], now: tuple[str, ...]) -> list[tuple[int, int]] | None:
    """The lines of two blocks that are the same; None where the blocks do not say the same."""
    if was == now:
        return [(i, i) for i in range(len(was))]
    if any(line.lstrip().startswith("///") for line in (*was, *now)):
        return None  # a blank line parts documentation from what it documents
    old = [i for i, line in enumerate(was) if not _silent(line)]
    new = [i for i, line in enumerate(now) if not _silent(line)]
    if len(old) != len(new):
        return None
    pairs = []
    for i, j in zip(old, new, strict=True):
        if was[i] == now[j]:
            pairs.append((i, j))
        elif _words(was[i]) != _words(now[j]):
            return None
    return pairs


def _words(line: str) -> str:
    """A line without the comment at its end."""
    from wyeline_grammar.tokens import tokenize  # which few kept results need

    _, comment = tokenize(line)
    if comment is None or comment.startswith("///") or not comment.isprintable():
        return line.rstrip(" ")
    return line[: len(line) - len(comment)].rstrip(" ")
