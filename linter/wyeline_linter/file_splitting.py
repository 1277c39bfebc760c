"""A file split by include: some of its statements go, as they are written, into a file of their own next to it."""

from __future__ import annotations

import os
import re
from collections.abc import Collection, Iterable, Sequence
from typing import NamedTuple

from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.linking import Equipment
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import (
    EquipmentStatement,
    FeederStatement,
    Include,
    ProjectStatement,
    Statement,
    Unreadable,
    WyeVersion,
)
from wyeline_linter.view import View

_STAY = (WyeVersion, ProjectStatement, Include)


class Piece(NamedTuple):
    """Replace lines ``first`` to ``last`` (exclusive) of the old file by ``lines``."""

    first: int
    last: int
    lines: tuple[str, ...]


class Split(NamedTuple):
    """``path`` is the new file's and ``text`` what it holds; ``pieces`` are what changes in the old one, in order."""

    title: str
    path: str
    text: str
    pieces: tuple[Piece, ...]


def split_selected(file: TextFile, first: int, last: int, taken: Collection[str] = ()) -> Split | None:
    """The statements that lines ``first`` to ``last`` (inclusive) touch, with all that is written between them.

    The language version, the project and includes stay where they are. ``taken`` are paths that are no longer free.
    None where fewer than two statements would go, or all of them.
    """
    touched = [b for b in file.blocks if b.first_line <= last and first <= _last_written(b)]
    return _split(file, touched, "", f"{_count(touched)} statements", taken)


def split_board(view: View, file: TextFile, board: Equipment, taken: Collection[str] = ()) -> Split | None:
    """A board, what it feeds, and the feeders between these, as far as the file holds them; the feeder that arrives
    at the board stays. None where nothing of what it feeds is in the file, or nothing else is."""
    fed = {board.name}
    waiting = [board.name]
    while waiting:
        name = waiting.pop()
        for feeder in view.feeders_out_of(name):
            target = feeder.target.name
            if view.network.supply.get(target) is feeder and target not in fed:
                fed.add(target)
                waiting.append(target)
    going = [b for b in file.blocks if _belongs(lower_block(b.lines), fed)]
    return _split(file, going, board.name, f"`{board.name}` and what it feeds", taken)


def _belongs(statement: Statement, names: Collection[str]) -> bool:
    if isinstance(statement, FeederStatement):
        ends = (statement.source, statement.target)
        return all(end is not None and end.name in names for end in ends)
    if isinstance(statement, EquipmentStatement):
        return statement.name is not None and not statement.is_type and statement.name.text in names
    return False


def _split(file: TextFile, going: Sequence[Block], name: str, what: str, taken: Collection[str]) -> Split | None:
    moved = _without_what_stays(file, going)
    staying = {id(b) for b in file.blocks} - {id(b) for b in moved}
    left = [b for b in file.blocks if id(b) in staying and not isinstance(lower_block(b.lines), (*_STAY, Unreadable))]
    if _count(moved) < 2 or not left:
        return None
    runs = _runs(file, moved)
    path = _free_path(file.path, name or _first_name(moved), taken)
    version = next((b.lines[0] for b in file.blocks if isinstance(lower_block(b.lines), WyeVersion)), None)
    text = "\n".join([*([version.split("//")[0].strip(), ""] if version else []), *_new_lines(file, runs), ""])
    include = f'include "{os.path.basename(path)}"'
    return Split(f"Move {what} to a new file `{os.path.basename(path)}`", path, text, _pieces(file, runs, include))


def _without_what_stays(file: TextFile, going: Sequence[Block]) -> list[Block]:
    """Those that may go; a comment above something that stays, stays with it."""
    chosen = {id(block) for block in going}
    found: list[Block] = []
    goes = True
    for block in reversed(file.blocks):
        if not _comments_only(block):
            goes = id(block) in chosen and not isinstance(lower_block(block.lines), _STAY)
        if goes and id(block) in chosen:
            found.append(block)
    return found[::-1]


def _count(blocks: Iterable[Block]) -> int:
    return sum(not isinstance(lower_block(b.lines), (*_STAY, Unreadable)) for b in blocks)


def _last_written(block: Block) -> int:
    """The last line of a block that is not blank."""
    rows = [row for row, line in enumerate(block.lines) if line.strip()]
    return block.first_line + (rows[-1] if rows else 0)


def _runs(file: TextFile, moved: Sequence[Block]) -> list[tuple[int, int]]:
    """Runs of lines that go, from the first to the one after the last; comments right above a statement go with it."""
    at = {id(block): number for number, block in enumerate(file.blocks)}
    chosen = {at[id(block)] for block in moved}
    for number in sorted(chosen, reverse=True):
        above = file.blocks[number - 1] if number else None
        if above is not None and _comments_only(above) and above.lines[-1].strip():
            chosen.add(number - 1)
    runs: list[tuple[int, int]] = []
    for number in sorted(chosen):
        block = file.blocks[number]
        if runs and runs[-1][1] == block.first_line:
            runs[-1] = (runs[-1][0], block.end_line)
        else:
            runs.append((block.first_line, block.end_line))
    return runs


def _comments_only(block: Block) -> bool:
    return all(not line.strip() or line.lstrip("\ufeff \t").startswith("//") for line in block.lines)


def _new_lines(file: TextFile, runs: Sequence[tuple[int, int]]) -> list[str]:
    lines: list[str] = []
    for first, last in runs:
        if lines and lines[-1].strip():
            lines.append("")
        lines += file.lines[first:last]
    while lines and not lines[-1].strip():
        lines.pop()
    return lines


def _pieces(file: TextFile, runs: Sequence[tuple[int, int]], include: str) -> tuple[Piece, ...]:
    """The old file without the runs, and with the include below its other includes, or else where the first run was."""
    includes = [b for b in file.blocks if isinstance(lower_block(b.lines), Include)]
    found: list[Piece] = []
    if includes:
        row = includes[-1].first_line + lower_block(includes[-1].lines).last_line
        found.append(Piece(row + 1, row + 1, (include,)))
    for first, last in runs:
        put = () if includes or found else (include,)
        above_blank = first == 0 or not file.lines[first - 1].strip()
        if last < len(file.lines):
            while last - first > 1 and not file.lines[last - 1].strip() and (put or not above_blank):
                last -= 1  # the blank line below parts what is left
        else:
            while first > 0 and not put and not file.lines[first - 1].strip():
                first -= 1
            put = (*put, "")  # the text goes on ending with a line end
        found.append(Piece(first, last, put))
    joined: list[Piece] = []
    for piece in sorted(found):
        if joined and joined[-1].last == piece.first:
            piece = Piece(joined[-1].first, piece.last, (*joined.pop().lines, *piece.lines))
        joined.append(piece)
    return tuple(joined)


def _first_name(moved: Sequence[Block]) -> str:
    statements = [lower_block(block.lines) for block in moved]
    named = [s.name.text for s in statements if isinstance(s, EquipmentStatement) and s.name is not None]
    return named[0] if named else "part"


def _free_path(beside: str, name: str, taken: Collection[str]) -> str:
    """A path in the same folder that nothing has; names that differ only in case count as the same."""
    folder = os.path.dirname(beside)
    stem = re.sub(r"[^\w.-]+", "-", name).strip("-.").lower() or "part"
    used = {os.path.normcase(path).casefold() for path in taken}
    number, path = 1, os.path.join(folder, f"{stem}.wye")
    while os.path.lexists(path) or os.path.normcase(path).casefold() in used:
        number += 1
        path = os.path.join(folder, f"{stem}-{number}.wye")
    return path
