"""Circuits read by halves are those that the parser reads, whatever stands on either side of the description."""

from __future__ import annotations

from grammar_lines import ALL
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar import lowering
from wyeline_grammar.circuit_rows import read_row
from wyeline_grammar.model import EquipmentStatement, Statement
from wyeline_grammar.parser import read_block
from wyeline_grammar.tokens import cut

WORDS = sorted({token.text for line in ALL for token in cut(line)[1]} - {'"'})
PHRASES = [
    "20 A 1p",
    "1.2 kVA",
    "receptacle",
    "lighting continuous",
    "2#12 + G #12 Cu THWN-2",
    "23 m",
    "in EMT",
    "pf 0.9",
]
HEADS = ["1", "2,4", "F1", "2A", "1P", "F1[L1]", '"2A"', "Q", ""]


@st.composite
def rows(draw: st.DrawFn) -> str:
    some = st.lists(st.sampled_from(PHRASES) | st.sampled_from(WORDS), max_size=3).map("  ".join)
    head, before, behind = draw(st.sampled_from(HEADS)), draw(some), draw(some)
    text = draw(st.sampled_from(['"Hall"', '"a // b, 3 kVA"', '"Größe"', '""', "", '"open', '"x" "y"', '"p".normal']))
    gap, other = draw(st.sampled_from(["  ", " , ", "", "\t", "\u00a0"])), draw(st.sampled_from([" ", "", "  //"]))
    return f"  {head} {before}{gap}{text}{other}{behind}"


def slowly(lines: tuple[str, ...]) -> Statement:
    return lowering._lower(read_block(lines, lambda _text, _row: False), {})


@settings(max_examples=250, deadline=None)
@given(st.lists(rows(), min_size=1, max_size=4))
def test_halves_equal_the_parser(details: list[str]) -> None:
    lines = ("panel LP-1 208Y/120", *details)
    assert lowering.lower_block(lines) == slowly(lines)


def test_usual_rows_are_read_by_halves_and_share_what_they_say() -> None:
    texts = [f'  {n}  20 A 1p  900 VA  lighting "Room {n}"  2#12 + G #12 Cu THWN-2  {20 + n} m  in EMT' for n in (1, 2)]
    one, two = (read_row(text, row) for row, text in enumerate(texts, 1))
    assert one is not None
    assert two is not None
    assert one.sense is two.sense
    whole = slowly(("panel LP-1 208Y/120", *texts))
    assert isinstance(whole, EquipmentStatement)
    assert whole.circuits == (one, two)


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.sampled_from([*PHRASES[3:], "gfci", "assume 3 m", "in 3/4 inch EMT"]), unique=True, max_size=5),
    st.lists(st.integers(0, 40), min_size=2, max_size=6),
    st.sampled_from(["", " ", "\t", "   "]),
)
def test_what_stands_behind_keeps_its_meaning_wherever_it_moves(
    phrases: list[str], lengths: list[int], gap: str
) -> None:
    """The half behind a description is read once: its columns follow the description's length, its row the block."""
    behind = gap + "  ".join(phrases)
    lines = ("panel LP-1 208Y/120", *(f'  {n} 20 A 1p "{"x" * length}"{behind}' for n, length in enumerate(lengths)))
    assert lowering.lower_block(lines) == slowly(lines)
