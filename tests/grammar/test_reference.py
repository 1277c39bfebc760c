"""The language reference: its tables are those of the program, and its examples read clean and are set as formatted."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from wyeline_grammar.blocks import cut, split_lines
from wyeline_grammar.formatter import format_text
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.reference import BEGIN, END, renewed

TEXT = (Path(__file__).parents[2] / "grammar" / "README.md").read_text(encoding="utf-8")
EXAMPLES = re.findall(r"^```wye[^\n]*\n(.*?)^```", TEXT, re.DOTALL | re.MULTILINE)


def test_the_tables_are_those_of_the_program() -> None:
    assert renewed(TEXT) == TEXT, "run: python -m wyeline_grammar.reference grammar/README.md"


def test_a_text_without_marks_is_refused() -> None:
    with pytest.raises(ValueError, match="between"):
        renewed(END + BEGIN)


@pytest.mark.parametrize("example", EXAMPLES)
def test_every_example_reads_clean_and_is_formatted(example: str) -> None:
    blocks = cut(split_lines(example))
    assert [problem for _, lines in blocks for problem in lower_block(lines).problems] == []
    assert format_text(example) == example


def test_links_within_the_reference_lead_somewhere() -> None:
    headings = {re.sub(r"[^\w\- ]", "", h).lower().replace(" ", "-") for h in re.findall(r"^## (.+)$", TEXT, re.M)}
    assert set(re.findall(r"\]\(#([^)]+)\)", TEXT)) <= headings
