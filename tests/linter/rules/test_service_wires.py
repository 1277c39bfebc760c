"""Service wires that end at a meter are held against the main behind it.

NEC 230.90(A) (from memory): each ungrounded service conductor has overload protection, of a rating no higher than its
ampacity. 310.16 (from memory), copper at 75 degC: 350 kcmil 310 A, 400 kcmil 335 A; four sets 1240 A, five 1675 A.
"""

from __future__ import annotations

import pytest
from rule_models import analysis_of

SITE = """wye 1
project "Clinic"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 208Y/120  fault 42 kA, fault-min 30 kA, x/r 6
meter CT 1600 A
switchboard MSB 208Y/120  bus 1600 A, main MAIN A, rated 65 kA, lug-temp 75 degC, service-equipment
  claim arc-energy-reduction "maintenance switch"
panel LP-1 208Y/120  bus 225 A, main 225 A, rated 42 kA, lug-temp 75 degC
  1,3,5  100 A 3p  20 kW heating  "Boiler"  3#1 + G #8 Cu THWN-2  9 m  in 1-1/2 inch EMT
feeder UTIL -> CT  AHEAD Cu THWN-2  18 m  in 3 inch PVC-40
feeder CT -> MSB  5 sets 4x400kcmil Cu THWN-2  3 m  in 3 inch PVC-40
feeder MSB -> LP-1  225 A 3p  4#4/0 + G #4 Cu THWN-2  9 m  in 2-1/2 inch EMT
"""


def told(main: str, ahead: str, *changed: tuple[str, str]) -> list[str]:
    text = SITE.replace("MAIN", main).replace("AHEAD", ahead)
    for old, new in changed:
        assert old in text
        text = text.replace(old, new)
    return [f.rule for f in analysis_of(text).findings() if f.subject == "UTIL -> CT"]


@pytest.mark.parametrize(
    ("main", "ahead", "rules"),
    [
        ("1600", "4 sets 4x350kcmil", ["wire-underprotected"]),
        ("1600", "5 sets 4x400kcmil", []),
        ("1200", "4 sets 4x350kcmil", []),
    ],
)
def test_the_main_behind_a_meter_protects_the_wires_ahead_of_it(main: str, ahead: str, rules: list[str]) -> None:
    assert told(main, ahead) == rules


def test_the_way_to_the_main_is_followed_through_meters_and_no_further_than_it_is_one_way() -> None:
    ahead = "4 sets 4x350kcmil"
    second = (
        "feeder CT -> MSB",
        "meter CT-2 1600 A\nfeeder CT -> CT-2  5 sets 4x400kcmil Cu THWN-2\nfeeder CT-2 -> MSB",
    )
    assert told("1600", ahead, second) == ["wire-underprotected"]
    own = ("CT -> MSB  5 sets", "CT -> MSB  1200 A 3p  5 sets")
    assert told("1600", ahead, own) == []
    branch = ("feeder CT -> MSB", "panel HP 208Y/120  bus 225 A, main 225 A\nfeeder CT -> HP\nfeeder CT -> MSB")
    assert told("1600", ahead, branch) == []
