"""Changes that somebody asks for (a type taken out, a piece put between, circuits moved, a board in a file of its own,
what connects two) leave a formatted file formatted, and touch no line that they do not change."""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Iterable, Iterator
from functools import cache
from pathlib import Path

import pytest

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.formatter import format_text
from wyeline_grammar.sources import Files, read_text
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter import refactorings, repair
from wyeline_linter.analysis import Analysis
from wyeline_linter.file_splitting import Split, split_board, split_selected
from wyeline_linter.findings import Edit, Fix
from wyeline_linter.fixing import apply_edits

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"
SITES = ["field-station/station.wye", "dairy-works/works.wye"]
UNEVEN = """wye 1
project "Kiln shed"
utility     GRID    208Y/120            fault 10 kA, fault-min 8 kA, x/r 4
panel       LP-1    208Y/120            bus 225 A, main 200 A, spaces 12
  1       60 A 1p   6 kVA     process             "Kiln, east"
  2       60 A 1p   6 kVA     process             "Kiln, west"
  3       60 A 1p   2 kVA     process             "Mixer"
  5       60 A 1p   1 kVA     process             "Press"
feeder GRID        -> LP-1    200 A 3p                                               12 m
"""


@cache
def model(site: str) -> Analysis:
    return Analysis(str(EXAMPLES / site), Files(lambda path: format_text(read_text(path))), str(EXAMPLES))


def stays_set(analysis: Analysis, edits: Iterable[Edit], what: str) -> None:
    by_file: dict[str, list[Edit]] = {}
    for edit in edits:
        by_file.setdefault(edit.block.file, []).append(edit)
    for path, of_file in by_file.items():
        old = analysis.files.get(path).text
        made = apply_edits(old, of_file)
        assert format_text(made).rstrip("\n") == made.rstrip("\n"), what
        assert "\n\n\n" not in made or "\n\n\n" in old, what
        spans = [(e.block.first_line + e.line, e.block.first_line + e.end_line) for e in of_file]
        kept = [line for row, line in enumerate(old.split("\n")) if not any(a <= row <= b for a, b in spans)]
        assert not Counter(kept) - Counter(made.split("\n")), what


def asked(analysis: Analysis) -> Iterator[Fix | None]:
    view = analysis.view
    for equipment in analysis.model.equipment.values():
        yield refactorings.extract_type(view, equipment)
        if equipment.kind in BOARDS:
            yield refactorings.balance_legs(view, equipment)
    for feeder in analysis.model.feeders.values():
        yield refactorings.insert_panel(view, feeder)
        yield refactorings.insert_transformer(view, feeder)


@pytest.mark.parametrize("site", SITES)
def test_types_pieces_and_moved_circuits(site: str) -> None:
    analysis = model(site)
    fixes = [fix for fix in asked(analysis) if fix is not None]
    assert {fix.title.split(" ")[0] for fix in fixes} >= {"Make", "Insert"} and len(fixes) > 40
    for fix in fixes:
        stays_set(analysis, fix.edits, fix.title)


def test_circuits_moved_to_even_out_the_legs() -> None:
    assert format_text(UNEVEN) == UNEVEN
    analysis = Analysis("/m/site.wye", Files(lambda _: UNEVEN), "/m")
    fix = refactorings.balance_legs(analysis.view, analysis.model.equipment["LP-1"])
    assert fix is not None and fix.edits
    stays_set(analysis, fix.edits, fix.title)


@pytest.mark.parametrize("site", SITES)
def test_what_connects_two(site: str) -> None:
    """Random pairs: what feeds the one today may be far from what the other gives."""
    analysis, rng = model(site), random.Random(7)
    names = sorted(analysis.model.equipment)
    boards = [name for name in names if analysis.model.equipment[name].kind in BOARDS]
    proposed = 0
    for _ in range(12):
        source, target = rng.choice(boards), rng.choice(names)
        if source == target:
            continue
        for solution in repair.solve(analysis.view, source, target):
            proposed += 1
            stays_set(analysis, solution.edits, f"{source} to {target}: {solution.title}")
    assert proposed > 5


def halves_stay_set(file: TextFile, split: Split) -> None:
    lines = list(file.lines)
    for piece in reversed(split.pieces):
        lines[piece.first : piece.last] = piece.lines
    for text in ("\n".join(lines), split.text):
        assert format_text(text).rstrip("\n") == text.rstrip("\n"), split.title


@pytest.mark.parametrize("site", SITES)
def test_files_split(site: str) -> None:
    analysis, rng = model(site), random.Random(11)
    splits = 0
    for board in analysis.model.equipment.values():
        file = analysis.files.get(board.block.file)
        first, last = sorted(rng.randrange(len(file.lines)) for _ in range(2))
        for split in (split_board(analysis.view, file, board), split_selected(file, first, last)):
            if split is not None:
                splits += 1
                halves_stay_set(file, split)
    assert splits > 10
