"""Places in a text: offsets, (line, column) pairs and the columns that protocols count.

Inside Wyeline a column is an index into the Python string of its line (code points). Terminals count from 1; the
Language Server Protocol counts UTF-16 units unless another encoding was agreed. This module converts; no other adds or
subtracts.
"""

from __future__ import annotations

import bisect
import re

_NEWLINE = re.compile(r"\r\n|\n|\r")


class LineIndex:
    """Offsets of the lines of one text. Lines end at LF, CRLF or CR and nowhere else."""

    __slots__ = ("_ends", "_starts", "text")

    def __init__(self, text: str) -> None:
        self.text = text
        self._starts = [0]
        self._ends: list[int] = []
        for match in _NEWLINE.finditer(text):
            self._ends.append(match.start())
            self._starts.append(match.end())
        self._ends.append(len(text))

    def __len__(self) -> int:
        return len(self._starts)

    def line(self, number: int) -> str:
        """The text of line ``number`` (from 0) without its end."""
        return self.text[self._starts[number] : self._ends[number]]

    def offset(self, line: int, column: int) -> int:
        """The offset of a place; a column past the end clamps to the end, a line past the end to the text's end."""
        if line >= len(self._starts):
            return len(self.text)
        if line < 0:
            return 0
        return min(self._starts[line] + max(column, 0), self._ends[line])

    def place(self, offset: int) -> tuple[int, int]:
        """(line, column) of an offset; an offset inside a line's end counts as the end of that line."""
        offset = min(max(offset, 0), len(self.text))
        line = bisect.bisect_right(self._starts, offset) - 1
        return line, min(offset, self._ends[line]) - self._starts[line]


def to_units(line: str, column: int, encoding: str) -> int:
    """Code points to the units of ``utf-8``, ``utf-16`` or ``utf-32``; past the end clamps to the end."""
    if encoding == "utf-32" or line.isascii():
        return min(column, len(line))
    head = line[:column]
    if encoding == "utf-8":
        return len(head.encode("utf-8", "surrogatepass"))
    return len(head) + sum(1 for c in head if ord(c) > 0xFFFF)


def from_units(line: str, units: int, encoding: str) -> int:
    """The units of an encoding to code points; a place inside a character counts as the place before it."""
    if encoding == "utf-32" or line.isascii():
        return min(units, len(line))
    width = (lambda c: len(c.encode("utf-8", "surrogatepass"))) if encoding == "utf-8" else _utf16_width
    used = 0
    for column, char in enumerate(line):
        used += width(char)
        if used > units:
            return column
    return len(line)


def _utf16_width(char: str) -> int:
    return 2 if ord(char) > 0xFFFF else 1
