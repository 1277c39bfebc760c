"""Blocks under edits equal blocks cut anew, and lines end where they should."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar.blocks import TextFile, cut, split_lines
from wyeline_grammar.lines import LineIndex, from_units, to_units

LINES = st.sampled_from(
    [
        "panel LP-1 208Y/120",
        "  1  20 A 1p",
        "",
        "// note",
        "/// doc",
        "  // inner",
        "feeder A -> B",
        "\t2  space",
        "   ",
    ]
)
TEXTS = st.lists(LINES, max_size=12).map("\n".join)


def shapes(file: TextFile) -> list[tuple[int, tuple[str, ...]]]:
    return [(b.first_line, b.lines) for b in file.blocks]


@settings(max_examples=300, deadline=None)
@given(TEXTS, st.lists(st.tuples(st.integers(0, 12), st.integers(0, 8), st.integers(0, 4), TEXTS), max_size=4))
def test_edited_blocks_equal_blocks_cut_anew(text: str, edits: list[tuple[int, int, int, str]]) -> None:
    file = TextFile("site.wye", text)
    for line, column, lines, new in edits:
        before = set(file.blocks)
        went, came = file.edit((line, column), (line + lines, column), new)
        assert shapes(file) == cut(file.lines)
        assert (before - set(went)) | set(came) == set(file.blocks)


@settings(max_examples=200, deadline=None)
@given(TEXTS, TEXTS)
def test_replacing_the_text_keeps_what_stayed(old: str, new: str) -> None:
    file = TextFile("site.wye", old)
    file.replace_text(new)
    assert file.text == new
    assert shapes(file) == cut(split_lines(new))


def test_an_edit_touches_its_own_block_only() -> None:
    file = TextFile("site.wye", "panel A1\n  1  20 A 1p\npanel B1\n  1  20 A 1p\npanel C1\n")
    went, came = file.edit((3, 5), (3, 7), "30")
    assert [b.lines[0] for b in went] == ["panel B1"]
    assert [b.lines for b in came] == [("panel B1", "  1  30 A 1p")]


def test_a_commented_out_statement_does_not_hand_its_details_on() -> None:
    blocks = cut(split_lines("panel A1\n  1  20 A 1p\n// panel B1\n  2  20 A 1p\n"))
    assert [lines[0] for _, lines in blocks] == ["panel A1", "// panel B1"]


def test_documentation_belongs_to_the_statement_right_below() -> None:
    blocks = cut(split_lines("/// quay\nutility Q 208Y/120\n/// alone\n\npanel P1\n"))
    assert [lines for _, lines in blocks] == [("/// quay", "utility Q 208Y/120"), ("/// alone", ""), ("panel P1", "")]


def test_lines_end_at_lf_crlf_and_cr_and_nowhere_else() -> None:
    text = "a\r\nb\rc\nd\u2028e\x0bf"
    index = LineIndex(text)
    assert [index.line(i) for i in range(len(index))] == ["a", "b", "c", "d\u2028e\x0bf"] == split_lines(text)
    assert index.place(text.index("c")) == (2, 0)
    assert index.offset(0, 99) == 1
    assert index.offset(99, 0) == len(text)


@given(st.text(alphabet="aé°Ω😀 ", max_size=12), st.integers(0, 14))
def test_columns_survive_the_round_trip(line: str, column: int) -> None:
    for encoding in ("utf-8", "utf-16", "utf-32"):
        assert from_units(line, to_units(line, column, encoding), encoding) == min(column, len(line))
    assert to_units(line, column, "utf-16") == len(line[:column].encode("utf-16-le")) // 2
