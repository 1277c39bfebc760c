"""Phrases of the trade that are no spelling of one word: each becomes what was meant."""

from __future__ import annotations

import pytest

from wyeline_grammar.lowering import lower_block
from wyeline_grammar.parser import parse_line
from wyeline_grammar.problems import Problem
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


def problems_of(text: str) -> tuple[Problem, ...]:
    return tuple(lower_block(tuple(text.split("\n"))).problems)


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


@pytest.mark.parametrize(
    "text", ["  F3  32 A 1p+N  7 kW range", "load R-1 400Y/230  7 kW, range", "  F3 32 A 7 kW stove"]
)
def test_what_one_cooks_on_is_of_a_kitchen_or_heats_a_dwelling(text: str) -> None:
    """Neither is taken for granted: the demand factors of NEC 220.55 and 220.56 differ."""
    (problem,) = parse_line(text, not is_statement(text)).problems
    assert [(r.title, r.sure) for r in problem.remedies] == [("Write `kitchen`", False), ("Write `heating`", False)]


def test_a_range_with_a_description_or_with_a_band_is_told_apart() -> None:
    (cooks,) = problems_of('panel P 400Y/230\n  F3  32 A 1p+N  7 kW range  "Kitchen"')
    assert cooks.rule == "attribute-out-of-place" and "`kitchen` or `heating`" in cooks.message
    (band,) = problems_of("load R-1 400Y/230  7 kW, range 0.9..1.1")
    assert band.rule == "attribute-out-of-place" and "kitchen" not in band.message


def test_a_type_behind_rcd_is_no_current_and_a_small_current_no_rating() -> None:
    """IEC 61008-1 and 62423: AC, A, F and B are types; 30 mA is a rated residual operating current."""
    for line in ("  F1  16 A 1p+N rcd AC 30 mA  2 kW heating", "  F1  16 A 1p+N rcd F, 0.03 A  2 kW heating"):
        (problem,) = problems_of(f"panel P 400Y/230\n{line}")
        assert problem.rule == "known-slip" and problem.remedies[0].sure
    assert not problems_of("panel P 400Y/230\n  F1  16 A 1p+N rcd 30 mA, rcd-type B  2 kW heating")
    assert "known-slip" not in {p.rule for p in problems_of("feeder A -> B  16 A 4p  rcd B 30 A")}


def test_a_letter_behind_a_device_may_be_a_leg() -> None:
    (problem,) = parse_line("  3  20 A 1p C  1.2 kVA lighting", True).problems
    assert not any(remedy.sure for remedy in problem.remedies)


def test_wires_by_gauges_are_given_no_method_of_iec_practice() -> None:
    (problem,) = parse_line("feeder A -> B  60 A 3p  3#6 + G #10  80 ft  direct buried", False).problems
    assert not any("method" in remedy.title for remedy in problem.remedies)
