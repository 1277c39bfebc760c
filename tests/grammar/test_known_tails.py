"""A statement whose tail was read before under other names is what the parser makes of it anew."""

from __future__ import annotations

from grammar_lines import ALL, STATEMENTS
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar import lowering
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.parser import _read_whole, read_line
from wyeline_grammar.remembering import forget_texts
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


ENDS = st.sampled_from(
    [
        ' "Pump"',
        ' "Pumpe, groß"',
        ' ""',
        '"Pump"',
        ' "a, 3 kVA \u00d7 \u00a0"',
        ' "x" ',
        ' "x" "y"',
        ' "open',
        ' "',
        ' assume "x"',
    ]
)


@settings(max_examples=250, deadline=None)
@given(
    st.sampled_from(["motor", "panel", "type load", "feeder", "project", "scenario", "utility"]),
    st.lists(st.tuples(NAMES, ENDS), min_size=2, max_size=5),
    st.sampled_from(TAILS)
    | st.sampled_from(["460 3ph 10 hp, pf 0.86", "bus 100 A,", "location", "", "\u00d7", '"Hall" 3 kVA']),
)
def test_so_are_tails_under_other_descriptions_and_what_they_say(
    word: str, named: list[tuple[str, str]], tail: str
) -> None:
    for name, end in named:
        text = f"{word} {name} {tail}{end}"
        assert read_line(text, indented=False) == _read_whole(text, indented=False)
    known = [lower_block((f"{word} {name} {tail}{end}",)) for name, end in named]
    for (name, end), statement in zip(reversed(named), reversed(known), strict=True):
        lowering._STATEMENTS.clear()
        forget_texts()
        assert lower_block((f"{word} {name} {tail}{end}",)) == statement
