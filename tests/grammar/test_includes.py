"""Who asks which files belong together sees every include that the model follows, the misspelt ones among them."""

from __future__ import annotations

from hypothesis import example, given
from hypothesis import strategies as st

from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.includes import included, may_include
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import Include

SLIPS = st.lists(st.tuples(st.integers(0, 20), st.sampled_from(["", "4", "e", " ", '"', "\ufeff", "//", "\t", "N"])))


@given(SLIPS, st.sampled_from(["", "/// What the site has in common.\n", "  bus 100 A\n", "// north wing\n"]))
@example([(4, "5")], "")
@example([(4, "5")], "/// What the site has in common.\n")
def test_no_include_is_overlooked(slips: list[tuple[int, str]], before: str) -> None:
    line = 'include "north.wye"'
    for at, put in slips:
        line = line[:at] + put + line[at + 1 :]
    for block in TextFile("site.wye", before + line).blocks:
        statement = lower_block(block.lines)
        if isinstance(statement, Include):
            assert may_include(block)
            assert included(block) == statement.target
        else:
            assert included(block) is None


def test_a_misspelt_include_is_one() -> None:
    assert included(Block("site.wye", 0, ('incl4de "north.wye"',))) == "north.wye"
    assert included(Block("site.wye", 0, ('panel P1 208Y/120 "include"',))) is None
    assert not may_include(Block("site.wye", 0, ("panel P1 208Y/120", '  1  20 A 1p "include"')))
