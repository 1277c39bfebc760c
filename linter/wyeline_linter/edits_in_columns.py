"""Edits that leave a set line set: who reviews the change of a formatted file sees the words that changed, and the
formatter has nothing to move afterwards."""

from __future__ import annotations

from collections.abc import Iterable

from wyeline_grammar.blocks import Block
from wyeline_grammar.formatter import format_lines
from wyeline_linter.findings import Edit


def in_columns(edits: Iterable[Edit]) -> tuple[Edit, ...]:
    """The same changes, with each changed or new line in the fixed columns where the line before it was.

    A line that somebody laid out otherwise keeps its blanks; a line that could not be read has no layout, so it is set.
    Lines without an edit are never touched. Edits of a line that overlap, or run over line ends, come back as they are.
    Lines of which an edit leaves nothing go with the line break behind them: in a block's last line such an edit ends
    where the next block begins.
    """
    by_block: dict[Block, list[Edit]] = {}
    for edit in edits:
        by_block.setdefault(edit.block, []).append(edit)
    return tuple(edit for block, made in by_block.items() for edit in _set(block, made))


def _set(block: Block, made: list[Edit]) -> list[Edit]:
    rows: dict[int, list[Edit]] = {}
    result: list[Edit] = []
    for edit in made:
        if edit.line == edit.end_line:
            rows.setdefault(edit.line, []).append(edit)
        else:
            result.append(edit)
    before = format_lines(list(block.lines))
    flat: list[str] = []
    pieces: dict[int, tuple[int, int]] = {}
    for row, old in enumerate(block.lines):
        new = _spliced(old, rows[row]) if row in rows else old
        lines = [old] if new is None else new.split("\n")
        if new is not None and row in rows and before[row] == old:
            pieces[row] = len(flat), len(flat) + len(lines)
        flat += lines
    after = format_lines(flat)
    result = [_with_its_break(edit, made) for edit in result]
    for row, of_row in rows.items():
        first, last = pieces.get(row, (0, 0))
        if flat[first:last] == after[first:last]:
            result += [_with_its_break(edit, made) for edit in of_row]
        else:
            result.append(smallest_edit(block, row, "\n".join(after[first:last])))
    return result


def _with_its_break(edit: Edit, made: list[Edit]) -> Edit:
    """An edit that leaves nothing of whole lines, up to the line below; others as they are."""
    lines = edit.block.lines
    last = lines[edit.end_line]
    whole = not edit.text and edit.start == 0 and edit.end == len(last) and (edit.line, 0) != (edit.end_line, edit.end)
    if not whole or any(other is not edit and other.line <= edit.end_line <= other.end_line for other in made):
        return edit
    return edit._replace(end_line=edit.end_line + 1, end=0)


def _spliced(old: str, edits: list[Edit]) -> str | None:
    """A line after its edits, None where two of them want the same stretch."""
    parts: list[str] = []
    at = 0
    for edit in sorted(edits, key=lambda e: (e.start, e.end)):
        if edit.start < at:
            return None
        parts += [old[at : edit.start], edit.text]
        at = edit.end
    return "".join([*parts, old[at:]])


def smallest_edit(block: Block, row: int, new: str) -> Edit:
    """The smallest edit that makes a line of a block another, so that cursors on the words that stay are not moved."""
    old = block.lines[row]
    most = min(len(old), len(new))
    head = next((i for i in range(most) if old[i] != new[i]), most)
    tail = next((i for i in range(most - head) if old[-1 - i] != new[-1 - i]), most - head)
    return Edit(block, row, head, row, len(old) - tail, new[head : len(new) - tail])
