"""A board says for its circuits to which class of supply they belong; NEC 700.10(B) keeps others off it."""

from __future__ import annotations

import pytest
from rule_models import check

from wyeline_linter.rules.emergency import _ATS, _DP, _EL, _PROJECT, _SET

BOARD = _PROJECT + _DP + _SET.format(kva=40) + _ATS + _EL.replace("lighting emergency", "lighting")
MARKED = BOARD.replace("rated 22 kA, lug-temp 75 degC\n  1", "rated 22 kA, lug-temp 75 degC, emergency\n  1")


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (MARKED, []),
        (MARKED.replace('lighting  "Exit lights, roof"', 'lighting optional  "Exit lights, roof"'), ["5"]),
        (BOARD, ["1"]),
    ],
)
def test_circuits_belong_to_the_system_of_their_board(text: str, told: list[str]) -> None:
    assert MARKED != BOARD
    assert [f.position for f in check("wye 1\n" + text) if f.rule == "emergency-mixed"] == told
