"""Where something is written: columns of a line of a block, whatever moves above it."""

from __future__ import annotations

from typing import NamedTuple

from wyeline_grammar.blocks import Block


class Span(NamedTuple):
    """Columns ``start`` to ``end`` of one line of a block."""

    line: int
    start: int
    end: int


def span_of(line: int, start: int, end: int) -> Span:
    """A span, the same object for the same columns: what is set in columns says the same ones on every other line."""
    found = _spans.get((line, start, end))
    if found is None:
        if len(_spans) >= _MOST_SPANS:
            _spans.clear()
        found = Span(line, start, end)
        _spans[found] = found
    return found


_MOST_SPANS = 10_000
_spans: dict[tuple[int, int, int], Span] = {}


class Place(NamedTuple):
    """A span of a block: the one way to say where something is written."""

    block: Block
    span: Span

    @property
    def file(self) -> str:
        return self.block.file

    @property
    def row(self) -> int:
        """The line in the file, from 0."""
        return self.block.first_line + self.span.line
