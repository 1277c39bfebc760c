"""Text into blocks: a statement and its indented lines. No parsing happens here.

A block starts at an unindented line. ``///`` lines directly above a statement belong to its block; other unindented
comment lines form a block of their own, so that details under a commented-out statement never reach the one before.
Nothing spans lines, so an edit touches the blocks it lies in and, at the most, their neighbours.
"""

from __future__ import annotations

import bisect
from collections.abc import Iterator, Sequence

from wyeline_grammar.remembering import expect_blocks


def split_lines(text: str) -> list[str]:
    """The lines of a text without their ends. Lines end at LF, CRLF or CR and nowhere else."""
    return text.replace("\r\n", "\n").replace("\r", "\n").split("\n")


class Block:
    """Consecutive lines of one file that are read together.

    ``first_line`` counts from 0 and moves when lines are inserted above; everything else never changes. Two blocks of
    equal text share what is derived from the text alone, so nothing derived may hold an absolute line.
    """

    __slots__ = ("file", "first_line", "lines")

    def __init__(self, file: str, first_line: int, lines: tuple[str, ...]) -> None:
        self.file = file
        self.first_line = first_line
        self.lines = lines

    def __repr__(self) -> str:
        return f"Block({self.file}:{self.first_line + 1}, {self.lines[0]!r})"

    @property
    def end_line(self) -> int:
        """The line after its last one."""
        return self.first_line + len(self.lines)


_BLANKS = " \t\u00a0\ufeff"


def _indented_or_blank(line: str) -> bool:
    if not line or line[0] in " \t\u00a0":
        return True
    if line[0] not in ",\ufeff":
        return False
    return (line[0] == "\ufeff" and line[1:2] in _BLANKS) or _blank(line)


def _blank(line: str) -> bool:
    """Whether a line has no words: a comma is a blank."""
    return not line.strip(_BLANKS + ",")


def _starts(lines: Sequence[str]) -> Iterator[int]:
    """Indices at which a new block begins."""
    state = "none"  # of the block so far: "doc", "comment", "statement"
    for i, line in enumerate(lines):
        if _indented_or_blank(line):
            if i == 0:
                yield 0
            if state == "doc" and _blank(line):
                state = "statement"  # a blank line cuts the documentation off from what follows
            continue
        text = line.lstrip("\ufeff")
        if text.startswith("///"):
            if state != "doc" or i == 0:
                yield i
            state = "doc"
        elif text.startswith("//"):
            if state != "comment" or i == 0:
                yield i
            state = "comment"
        else:
            if state != "doc" or i == 0:
                yield i
            state = "statement"


def cut(lines: Sequence[str]) -> list[tuple[int, tuple[str, ...]]]:
    """Blocks as (index of the first line, lines). Joined they are the lines given."""
    starts = list(_starts(lines))
    ends = [*starts[1:], len(lines)] if starts else []
    return [(a, tuple(lines[a:b])) for a, b in zip(starts, ends, strict=True)]


class TextFile:
    """One file's lines and blocks, kept under edits.

    ``path`` is the key of the file, the same string that findings carry.
    """

    __slots__ = ("blocks", "lines", "path")

    def __init__(self, path: str, text: str) -> None:
        self.path = path
        self.lines = split_lines(text)
        self.blocks = [Block(path, first, lines) for first, lines in cut(self.lines)]
        expect_blocks(len(self.blocks))

    @property
    def text(self) -> str:
        """The text with LF as line end."""
        return "\n".join(self.lines)

    def block_at(self, line: int) -> Block:
        """The block that holds a line; lines outside the file give the nearest block."""
        return self.blocks[self._index_at(line)]

    def _index_at(self, line: int) -> int:
        return max(0, bisect.bisect_right(self.blocks, line, key=lambda b: b.first_line) - 1)

    def edit(self, start: tuple[int, int], end: tuple[int, int], text: str) -> tuple[list[Block], list[Block]]:
        """Replace the text between two (line, column) places, columns in code points, clamped to the text.

        Returns the blocks that went and the blocks that came. Blocks whose text did not change stay the same objects.
        """
        last = len(self.lines) - 1
        if start[0] > last:
            start = (last, len(self.lines[last]))
        if end[0] > last:
            end = (last, len(self.lines[last]))
        if end < start:
            start, end = end, start
        first_text, last_text = self.lines[start[0]], self.lines[end[0]]
        new = split_lines(first_text[: start[1]] + text + last_text[min(end[1], len(last_text)) :])
        return self.replace_lines(start[0], end[0] + 1, new)

    def replace_text(self, text: str) -> tuple[list[Block], list[Block]]:
        """Make ``text`` the whole text; unchanged blocks at both ends stay the same objects."""
        new = split_lines(text)
        old = self.lines
        head = 0
        limit = min(len(old), len(new))
        while head < limit and old[head] == new[head]:
            head += 1
        if head == len(old) == len(new):
            return [], []
        tail = 0
        while tail < limit - head and old[-1 - tail] == new[-1 - tail]:
            tail += 1
        changed = self.replace_lines(head, len(old) - tail, new[head : len(new) - tail])
        expect_blocks(len(self.blocks))
        return changed

    def replace_lines(self, first: int, last: int, new: list[str]) -> tuple[list[Block], list[Block]]:
        """Replace lines ``first`` to ``last`` (exclusive) by ``new`` and cut the blocks around them anew."""
        lo = self._index_at(first)
        if lo > 0:
            lo -= 1  # documentation or comments above may now join or part
        hi = self._index_at(max(first, last - 1)) + 1
        shift = len(new) - (last - first)
        self.lines[first:last] = new
        if not self.lines:
            self.lines.append("")
            shift += 1
        top = self.blocks[lo].first_line
        while hi < len(self.blocks) and not self._still_starts(top, self.blocks[hi], shift):
            hi += 1
        old = self.blocks[lo:hi]
        bottom = self.blocks[hi].first_line + shift if hi < len(self.blocks) else len(self.lines)
        fresh = [Block(self.path, top + a, lines) for a, lines in cut(self.lines[top:bottom])]
        same_head = 0
        while same_head < min(len(old), len(fresh)) and old[same_head].lines == fresh[same_head].lines:
            same_head += 1
        same_tail = 0
        while (
            same_tail < min(len(old), len(fresh)) - same_head
            and old[-1 - same_tail].lines == fresh[-1 - same_tail].lines
        ):
            same_tail += 1
        went = old[same_head : len(old) - same_tail]
        came = fresh[same_head : len(fresh) - same_tail]
        self.blocks[lo + same_head : hi - same_tail] = came
        if shift:
            below = self.blocks[lo + same_head + len(came) :]
            # From the far end where they move away: whoever reads meanwhile, in a thread, finds them in their order.
            for block in reversed(below) if shift > 0 else below:
                block.first_line += shift
        return went, came

    def _still_starts(self, top: int, block: Block, shift: int) -> bool:
        """Whether an old block below the edit still begins a block of its own, counted from line ``top``."""
        start = block.first_line + shift
        return start - top in list(_starts(self.lines[top : start + 1]))
