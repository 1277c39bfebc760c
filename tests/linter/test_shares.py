"""Shares of a limit in words that a drafter reads at a glance (common practice, no source)."""

from __future__ import annotations

import re

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures
from wyeline_linter.load_figures import load_lines
from wyeline_linter.shares import above_mean, share_of, share_text

OVERLOADED = """wye 1
project "Crane yard"
  basis us-2023
utility GRID 480Y/277  fault 14 kA, fault-min 9 kA, x/r 6, service 100 A
switchboard SB 480Y/277  bus 100 A, main 60 A, rated 65 kA, service-equipment
  1,3,5  600 A 3p  400 kVA  process  "Press"
  2  20 A 1p  40 kVA  heating  "Oven"  2#14 + G #14 Cu  300 m  in 1/2 inch EMT
transformer T1 480 3ph -> 208Y/120  3 kVA, z 3.2 %, x/r 2, electrode #6
panel KP 208Y/120  bus 100 A, main 20 A, rated 10 kA
  1  20 A 1p  30 kVA  lighting  "Lamps"
feeder GRID -> SB  3#3 + N #3 Cu THWN-2  15 m  in 2 inch RMC
feeder SB -> T1  125 A 3p  3#1 + G #6 Cu THWN-2  9 m  in 2 inch EMT
feeder T1 -> KP  3#1 + N #1 + G #6 Cu THWN-2  6 m  in 2 inch EMT
expect T1 loading <= 80 %
"""


@pytest.mark.parametrize(
    ("share", "text"),
    [(0.0, "0 %"), (0.874, "87 %"), (1.37, "137 %"), (1.994, "199 %"), (2.4, "2.4 times"), (119.18, "120 times"),
     (12_345.0, "12 000 times")],
)  # fmt: skip
def test_from_twice_on_a_share_is_a_multiple(share: float, text: str) -> None:
    assert share_text(share) == text


def test_what_it_is_a_share_of_follows() -> None:
    assert share_of(1.37, "leg A") == "137 % of leg A"
    assert share_of(2.4, "leg A") == "2.4 times leg A"
    assert (above_mean(0.19), above_mean(1.6)) == ("19 % above the mean", "2.6 times the mean")


def test_no_text_of_a_badly_overloaded_model_speaks_of_thousands_of_per_cent() -> None:
    analysis = Analysis("/m/site.wye", Files(lambda _: OVERLOADED), "/m")
    texts = [text for f in (*analysis.findings(), *analysis.study_findings()) for text in (f.message, f.found)]
    for entry in model_figures(analysis.view)["equipment"].values():
        if entry.get("load"):
            texts += load_lines(entry["load"], None)
    assert any("times" in text for text in texts)
    assert [text for text in texts if re.search(r"[2-9]\d\d(\.\d+)? %|\d{4}(\.\d+)? %", text)] == []
