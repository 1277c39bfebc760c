"""What the code sizes by and what the neutral carries are told where the demand load alone does not tell them."""

from __future__ import annotations

import pytest
from test_what_changed import compared

from wyeline_linter.review.measures import NEUTRAL, SIZING, UNBALANCE

SITE = """project "Mill"
  basis us-2023
utility     UTIL  208Y/120        fault 30 kA, fault-min 20 kA, x/r 8
switchboard MSB   208Y/120        bus 400 A, main 400 A, rated 42 kA
feeder UTIL -> MSB  400 A 3p  3x500kcmil + N 500kcmil Cu THWN-2  10 m  in 4 inch PVC-40
panel       LP-1  208Y/120        bus 225 A, main lugs, rated 42 kA
  1  40 A 1p  3 kVA process  "Hall"
  3  40 A 1p  3 kVA process  "Yard"
  5  40 A 1p  3 kVA process  "Shed"
feeder MSB -> LP-1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu THWN-2  20 m  in 2-1/2 inch EMT
"""


def moved(new: str) -> dict[tuple[str, str], tuple[float, float]]:
    found = {}
    for one in compared(SITE, new).moved:
        before, after = one.measured
        assert before is not None and after is not None
        if after.name in (SIZING, NEUTRAL, UNBALANCE):
            assert isinstance(before.value, float) and isinstance(after.value, float)
            found[after.subject, after.name] = before.value, after.value
    return found


def test_continuous_load_changes_what_the_code_sizes_by_alone() -> None:
    """125 % of continuous load (NEC 215.2(A)(1), from memory): 3 kVA at 120.09 V is 25 A, then 31.2 A."""
    found = moved(SITE.replace("process", "process continuous"))
    assert found.keys() == {("LP-1", SIZING), ("MSB", SIZING)}
    assert all(pair == pytest.approx((25, 31.25), rel=1e-3) for pair in found.values())


def test_a_load_on_another_leg_changes_neutral_and_balance() -> None:
    """Two of three equal loads on one leg: 50 A at 0 and 25 A at 120 degrees come back as the root of 1875, 43.3 A."""
    found = moved(SITE.replace("  5  40 A 1p", "  7  40 A 1p"))
    assert found.keys() == {(board, name) for board in ("LP-1", "MSB") for name in (NEUTRAL, UNBALANCE)}
    assert found["LP-1", NEUTRAL] == pytest.approx((0, 1875**0.5), rel=1e-3, abs=0.01)


@pytest.mark.parametrize("figure", ["4 kVA", "2 kVA", "3.1 kVA"])
def test_what_goes_with_the_demand_is_not_told_again(figure: str) -> None:
    assert moved(SITE.replace("3 kVA", figure)) == {}
