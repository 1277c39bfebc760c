"""Places at the edge of the protocol: the one module that converts between its positions and (line, column) pairs.

Inside Wyeline a column is an index into the Python string of its line; outside it counts the units of the encoding that
was agreed when the session began. Everything here clamps: a position past the end of a line or of the text is its end.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from wyeline_grammar.blocks import Block
from wyeline_grammar.lines import from_units, to_units
from wyeline_grammar.model import Span

Json = dict[str, Any]
ENCODINGS = ("utf-8", "utf-16", "utf-32")


class Positions:
    """Converts for one encoding; ``lines`` is always the text of the lines concerned, without their ends."""

    __slots__ = ("encoding",)

    def __init__(self, encoding: str = "utf-16") -> None:
        if encoding not in ENCODINGS:
            raise ValueError(f"unknown position encoding {encoding}")
        self.encoding = encoding

    # from the protocol

    def place(self, lines: Sequence[str], position: Json) -> tuple[int, int]:
        """(line, column) of a protocol position, clamped to the text."""
        line, character = int(position["line"]), int(position["character"])
        if line < 0 or not lines:
            return 0, 0
        if line >= len(lines):
            return len(lines) - 1, len(lines[-1])
        return line, from_units(lines[line], max(character, 0), self.encoding)

    def places(self, lines: Sequence[str], range_: Json) -> tuple[tuple[int, int], tuple[int, int]]:
        """Start and end of a protocol range."""
        return self.place(lines, range_["start"]), self.place(lines, range_["end"])

    # to the protocol

    def units(self, line: str, column: int) -> int:
        """A column in the units of the protocol."""
        return to_units(line, column, self.encoding)

    def length(self, line: str, start: int, end: int) -> int:
        """How many units lie between two columns of a line."""
        return to_units(line, end, self.encoding) - to_units(line, start, self.encoding)

    def position(self, lines: Sequence[str], line: int, column: int) -> Json:
        """The protocol position of a place in a text."""
        if line >= len(lines):
            line, column = len(lines) - 1, len(lines[-1]) if lines else 0
        return {"line": max(line, 0), "character": to_units(lines[line], column, self.encoding) if lines else 0}

    def range(self, lines: Sequence[str], line: int, start: int, end_line: int, end: int) -> Json:
        """The protocol range between two places of a text."""
        return {"start": self.position(lines, line, start), "end": self.position(lines, end_line, end)}

    def span(self, block: Block, span: Span) -> Json:
        """The protocol range of a span of a block, where the block stands now."""
        return self.block_range(block, span.line, span.start, span.line, span.end)

    def block_range(self, block: Block, line: int, start: int, end_line: int, end: int) -> Json:
        """The protocol range between two places of a block, lines counted from its first."""
        first, lines = block.first_line, block.lines
        line, end_line = min(line, len(lines) - 1), min(end_line, len(lines))
        last = self.units(lines[end_line], end) if end_line < len(lines) else 0
        return {
            "start": {"line": first + line, "character": self.units(lines[line], start)},
            "end": {"line": first + end_line, "character": last},
        }
