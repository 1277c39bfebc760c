"""The formatter moves blanks and commas, sets columns, and says the same thing after as before."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar.blocks import cut, split_lines
from wyeline_grammar.formatter import format_lines, format_text
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.tokens import tokenize

EXAMPLES = sorted((Path(__file__).parents[2] / "grammar" / "examples").rglob("*.wye"))


def meaning(text: str) -> list[list[tuple[str, str]]]:
    return [
        [(t.kind, "".join(t.text.split()) if t.kind != "TEXT" else t.text) for t in tokenize(line)[0]]
        for line in split_lines(text)
    ]


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: f"{p.parent.name}/{p.name}")
def test_examples_are_set(path: Path) -> None:
    text = path.read_text("utf-8")
    made = format_text(text)
    assert format_text(made) == made
    assert meaning(made) == meaning(text)
    if path.parent.name != "broken":
        assert made == text


def test_columns_of_each_statement() -> None:
    made = format_text(
        "utility  QUAY 480Y/277 fault 28 kA,x/r 7.5\n"
        "panel LP-1 208Y/120 bus 225 A , main 200 A // labs\n"
        '   1 20 A 1p 1.44kVA receptacle "Bench"   2#12+G #12 Cu 24 m in 3/4 inch EMT\n'
        "feeder QUAY->LP-1 225 A 3p 3#4/0 + N #4/0 + G #4 Cu 6 m\n"
    )
    assert made == (
        "utility     QUAY    480Y/277            fault 28 kA, x/r 7.5\n"
        "panel       LP-1    208Y/120            bus 225 A, main 200 A  // labs\n"
        '  1       20 A 1p   1.44 kVA  receptacle          "Bench"                    2#12 + G #12 Cu'
        "  24 m  in 3/4 inch EMT\n"
        "feeder QUAY        -> LP-1    225 A 3p   3#4/0 + N #4/0 + G #4 Cu                    6 m\n"
    )


def test_a_long_word_pushes_its_own_line_only() -> None:
    lines = ["panel LP-1 208Y/120 bus 225 A", "panel A-VERY-LONG-TAG-NAME 208Y/120 bus 225 A"]
    first, second = format_lines(lines)
    assert first == format_lines(lines[:1])[0]
    assert second.startswith("panel       A-VERY-LONG-TAG-NAME  208Y/120")


def test_unreadable_lines_stay_as_they_are() -> None:
    text = "panel  LP-1   208Y/120   bus  225 A,  mian 3 A\n  ??   what\n"
    assert format_text(text) == text


def test_plain_spellings_are_written() -> None:
    assert "16 mm2" in format_text("feeder A1 → B1  3×16 mm² Cu").replace("3x16mm2", "3x16 mm2")


PIECES = st.sampled_from(
    "panel LP-1 480Y/277 bus 225 A , main lugs existing feeder -> A1 20 A 1p 2#12 + N #12 G Cu 24 m in EMT "
    '"text" at 2,4 assume z 4 % // x 3 sets leg B 1.2 kVA : [AB] 1 2,4 allow claim'.split()
)


@settings(max_examples=300, deadline=None)
@given(st.lists(st.lists(PIECES, max_size=9).map(" ".join), max_size=4), st.booleans())
def test_any_text_keeps_its_meaning(lines: list[str], indent: bool) -> None:
    text = "\n".join(("  " if indent and i else "") + line for i, line in enumerate(lines))
    made = format_text(text)
    assert format_text(made) == made
    assert meaning(made.rstrip()) == meaning(text.rstrip(" \t\n,"))
    before = [len(lower_block(block).problems) for _, block in cut(split_lines(text))]
    after = [len(lower_block(block).problems) for _, block in cut(split_lines(made))]
    assert sum(before) == sum(after)
