"""Phrases of the trade that are no spelling of one word: each becomes what was meant."""

from __future__ import annotations

import pytest

from wyeline_grammar.parser import parse_line
from wyeline_grammar.tokens import is_statement

F = "feeder HV -> UV  40 A 4p  5G10mm2  24 m  "
MEANT = {
    F + "clipped direct": F + "method C",
    F + "clipped to the wall": F + "method C",
    F + "direct buried": F + "method D2",
    F + "buried 60 cm": F + "buried 0.6 m",
    'feeder A -> B  5x500kcmil  24 m  in 4" PVC': "feeder A -> B  5x500kcmil  24 m  in 4 inch PVC",
    "transformer TX-1 480 -> 120/240  25 kVA": "transformer TX-1 480 1ph -> 120/240  25 kVA",
    "  F5[L3]  16 A 1p+N B  3 kW heating": "  F5[L3]  16 A 1p+N curve B  3 kW heating",
}


@pytest.mark.parametrize(("wrong", "right"), list(MEANT.items()), ids=lambda text: text)
def test_what_was_meant(wrong: str, right: str) -> None:
    line = parse_line(wrong, not is_statement(wrong))
    (problem,) = line.problems
    (edit,) = problem.remedies[0].edits
    assert problem.rule == "known-slip" and problem.remedies[0].sure
    assert wrong[: edit.start] + edit.text + wrong[edit.end :] == right
    meant = parse_line(right, not is_statement(right))
    assert not meant.problems
    assert [[t.text for t in p.tokens] for p in line.phrases] == [[t.text for t in p.tokens] for p in meant.phrases]


def test_a_letter_behind_a_device_may_be_a_leg() -> None:
    (problem,) = parse_line("  3  20 A 1p C  1.2 kVA lighting", True).problems
    assert not any(remedy.sure for remedy in problem.remedies)


def test_wires_by_gauges_are_given_no_method_of_iec_practice() -> None:
    (problem,) = parse_line("feeder A -> B  60 A 3p  3#6 + G #10  80 ft  direct buried", False).problems
    assert not any("method" in remedy.title for remedy in problem.remedies)
