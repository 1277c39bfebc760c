"""What a voltage drop says where the wires cannot carry the current that it is worked out for."""

from __future__ import annotations

import re

import pytest
from rule_models import analysis_of

SITE = """wye 1
project "Slipway"
  basis us-2023
  frequency 60 Hz, ambient 30 degC
utility GRID 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4
panel LP-1 208Y/120  bus 100 A, main 100 A, rated 22 kA, spaces 12, lug-temp 75 degC
  1  20 A 1p  0.8 kVA lighting  "Slipway lights"  2#12 + G #12 Cu THWN-2  {length_m} m  in 3/4 inch EMT
feeder GRID -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  5 m  in 1-1/4 inch EMT
"""


@pytest.mark.parametrize(("length_m", "flows"), [(150, True), (3000, False)])
def test_no_negative_voltage_is_left(length_m: int, flows: bool) -> None:
    # A voltage left over is never below zero: physics, no source. #12 Cu has about 6.5 ohm/km (NEC chapter 9, table 8,
    # from memory): 3000 m out and back at 6.7 A would lose some 260 V of 120 V.
    (found,) = [f for f in analysis_of(SITE.format(length_m=length_m)).study_findings() if f.rule == "path-drop-high"]
    assert ("is left under load" in found.found) == flows
    assert ("this current cannot flow" in found.found) != flows
    assert not re.search(r"-\d+\.\d % of nominal", found.found)
    assert ("more than the whole voltage" in found.message) != flows


@pytest.mark.parametrize(
    ("length_m", "severity", "words"),
    # 6.67 A of 0.8 kVA on 120 V; two wires #12 of steel conduit lose 2 x 6.56 ohm/km (NEC chapter 9, table 9): 8.74 V
    # in 100 m, so the whole 120 V in 1373 m, and 3 % (3.6 V) in 41.2 m (135.2 ft).
    [
        (100, "ADVICE", ["7.3 %, 8.7 V with what is connected"]),
        (500, "ADVICE", ["36.4 %", "draw more still and stop"]),
        (1360, "ADVICE", ["99.0 %"]),
        (1390, "WARNING", ["of 120 V: this current cannot flow", "135.2 ft"]),
        (4000, "WARNING", ["350 V at its full current", "135.2 ft"]),
    ],
)
def test_a_drop_beyond_the_voltage_says_that_nothing_runs(length_m: int, severity: str, words: list[str]) -> None:
    told = analysis_of(SITE.format(length_m=length_m)).study_findings()
    (found,) = [f for f in told if f.rule == "branch-drop-high"]
    assert found.severity.name == severity
    for word in words:
        assert word in f"{found.message} {found.found} {found.change}"
    assert not re.search(r"\d{3}\.?\d* % of the voltage", found.message)
