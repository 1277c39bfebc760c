"""A file split by include says what it said before, as it was written, and its comments went along."""

from __future__ import annotations

from pathlib import Path

import pytest

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.sources import Files, read_text
from wyeline_linter.analysis import Analysis
from wyeline_linter.file_splitting import Split, split_board, split_selected

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"
SITE = """wye 1
// The whole site.

project "Annex"
  basis us-2023

utility     GRID    480Y/277            fault 14 kA, x/r 4
switchboard MSB     480Y/277            bus 400 A, main 400 A

// HALL
//
// What stands in the hall.

/// The hall's own board.
panel       LP-1    480Y/277            bus 225 A, main lugs   // as surveyed
  1       20 A 1p   1.2 kVA   lighting  "Hall"
// Fed from above.
transformer TX-1    480 3ph -> 208Y/120  30 kVA, z 4 %, x/r 2
panel       LP-2    208Y/120            bus 125 A, main 100 A
panel       LP-9    480Y/277            bus 125 A, main lugs

feeder GRID        -> MSB
feeder MSB         -> LP-1    100 A 3p
feeder LP-1        -> TX-1     50 A 3p
feeder TX-1        -> LP-2    100 A 3p
feeder MSB         -> LP-9    100 A 3p
"""


def after(text: str, split: Split) -> str:
    """The old file as the pieces leave it."""
    lines = text.split("\n")
    for piece in reversed(split.pieces):
        lines[piece.first : piece.last] = piece.lines
    return "\n".join(lines)


def judged(texts: dict[str, str], root: str) -> tuple[object, ...]:
    """What a model says and what is found in it, wherever it is written."""
    folder = str(Path(root).parent)
    analysis = Analysis(root, Files(lambda path: texts[path] if path in texts else read_text(path)), folder)
    found = sorted((f.rule, f.message, f.subject, f.place.block.lines[f.place.span.line]) for f in analysis.findings())
    return sorted(analysis.model.equipment), sorted(analysis.model.feeders), len(analysis.model.expects), found


def of_board(text: str, name: str, path: str = "/plans/site.wye", *taken: str) -> Split | None:
    analysis = Analysis(path, Files(lambda _: text), "/plans")
    board = analysis.model.equipment[name]
    return split_board(analysis.view, TextFile(path, text), board, taken)


def test_a_board_goes_with_what_it_feeds_and_the_comments_above() -> None:
    split = of_board(SITE, "LP-1")
    assert split is not None and Path(split.path) == Path("/plans/lp-1.wye")
    assert split.title == "Move `LP-1` and what it feeds to a new file `lp-1.wye`"
    assert split.text == (
        "wye 1\n\n/// The hall's own board.\n"
        "panel       LP-1    480Y/277            bus 225 A, main lugs   // as surveyed\n"
        '  1       20 A 1p   1.2 kVA   lighting  "Hall"\n'
        "// Fed from above.\n"
        "transformer TX-1    480 3ph -> 208Y/120  30 kVA, z 4 %, x/r 2\n"
        "panel       LP-2    208Y/120            bus 125 A, main 100 A\n\n"
        "feeder LP-1        -> TX-1     50 A 3p\nfeeder TX-1        -> LP-2    100 A 3p\n"
    )
    left = after(SITE, split)
    assert '// What stands in the hall.\n\ninclude "lp-1.wye"\npanel       LP-9' in left
    assert "feeder MSB         -> LP-1    100 A 3p\nfeeder MSB         -> LP-9" in left
    assert judged({"/plans/site.wye": SITE}, "/plans/site.wye") == judged(
        {"/plans/site.wye": left, split.path: split.text}, "/plans/site.wye"
    )


def test_the_selection_goes_whole_to_the_end_of_the_text() -> None:
    lines = SITE.split("\n")
    first = next(i for i, line in enumerate(lines) if line.startswith("panel       LP-9"))
    split = split_selected(TextFile("/plans/site.wye", SITE), first, len(lines) - 1)
    assert split is not None and split.title == "Move 6 statements to a new file `lp-9.wye`"
    assert split.text == "wye 1\n\n" + "\n".join(lines[first:])
    assert after(SITE, split) == "\n".join(lines[:first]) + '\ninclude "lp-9.wye"\n'


def test_an_include_goes_below_the_others_and_versions_and_projects_stay() -> None:
    text = SITE.replace("  basis us-2023\n", '  basis us-2023\n\ninclude "types.wye"  // shared\n')
    split = split_selected(TextFile("/plans/site.wye", text), 0, 11)
    assert split is not None
    left = after(text, split)
    assert 'include "types.wye"  // shared\ninclude "grid.wye"\n' in left
    assert left.startswith("wye 1\n// The whole site.\n\nproject") and "project" not in split.text
    everything = split_selected(TextFile("/plans/site.wye", text), 0, 999)
    assert everything is None, "a file that only includes another is no gain"


@pytest.mark.parametrize(("first", "last"), [(7, 7), (0, 4), (9, 11)])
def test_a_single_statement_and_what_must_stay_do_not_go(first: int, last: int) -> None:
    assert split_selected(TextFile("/plans/site.wye", SITE), first, last) is None


def test_names_of_files_stay_unique(tmp_path: Path) -> None:
    (tmp_path / "lp-1.wye").write_text("", "utf-8")
    path = str(tmp_path / "site.wye")
    split = of_board(SITE, "LP-1", path, str(tmp_path / "LP-1-2.wye"))
    assert split is not None and Path(split.path).name == "lp-1-3.wye"
    assert of_board(SITE, "LP-9", path) is None, "it feeds nothing"
    odd = of_board(SITE.replace("LP-1 ", '"../a b" ').replace("-> LP-1", '-> "../a b"'), "../a b", path)
    assert odd is not None and Path(odd.path) == tmp_path / "a-b.wye"


@pytest.mark.parametrize("root", ["field-station/station.wye", "dairy-works/works.wye"])
def test_the_examples_say_the_same_after_every_split(root: str) -> None:
    path = str(EXAMPLES / root)
    before = judged({}, path)
    analysis = Analysis(path, Files(), str(EXAMPLES))
    splits = 0
    for name, board in analysis.model.equipment.items():
        file = TextFile(board.block.file, read_text(board.block.file))
        split = split_board(analysis.view, file, board)
        if split is not None:
            splits += 1
            left = after(file.text, split)
            assert judged({board.block.file: left, split.path: split.text}, path) == before, name
            kept = [line for line in file.lines if line.strip()]
            there = [line for line in (left + "\n" + split.text).split("\n") if line.strip()]
            assert len(there) == len(kept) + 1 + ("wye 1" in kept) and not set(kept) - set(there), name
            assert "\n\n\n" not in left
    assert splits > 3
