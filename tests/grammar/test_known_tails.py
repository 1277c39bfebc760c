"""A statement whose tail was read before under other names is what the parser makes of it anew."""

from __future__ import annotations

from grammar_lines import ALL, STATEMENTS
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar.parser import _read_whole, read_line
from wyeline_grammar.tokens import cut

WORDS = sorted({token.text for line in ALL for token in cut(line)[1]})
NAMES = st.sampled_from(["A", "TX-1", "P-0-6", "N", "L1", "PVC-40", "B2b", "A--B", "2A", "X.normal", "x", "A_1", '"Q"'])
TAILS = sorted({" ".join(line.split()[n:]) for line in STATEMENTS for n in (1, 2, 3, 4)})


@settings(max_examples=250, deadline=None)
@given(
    st.sampled_from(["feeder", "panel", "type panel", "transformer", "expect", "raceway", "scenario", "pannel"]),
    st.lists(st.tuples(NAMES, st.sampled_from(["", " -> ", " ->", "  ->  "]), NAMES), min_size=2, max_size=4),
    st.sampled_from(TAILS) | st.lists(st.sampled_from(WORDS), max_size=6).map(" ".join),
)
def test_tails_equal_the_parser(word: str, named: list[tuple[str, str, str]], tail: str) -> None:
    for first, arrow, second in named:
        lead = f"{word} {first}{arrow}{second}" if arrow else f"{word} {first}"
        for column in (0, 24):  # close behind, and where all tails begin in one column
            text = f"{lead.ljust(column)} {tail}"
            assert read_line(text, indented=False) == _read_whole(text, indented=False)
