"""What is sized beside other lines in one raceway carries its load there, and the rules find nothing against it."""

from __future__ import annotations

from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.sizing.lines import Proposal, size_feeder

US = """wye 1
project "Joinery"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 480Y/277  fault 20 kA, fault-min 15 kA, x/r 6
switchboard MAIN 480Y/277  bus 800 A, main 800 A, rated 35 kA, service-equipment, lug-temp 75 degC
feeder UTIL -> MAIN  2 sets 3x500kcmil + N 500kcmil Cu THWN-2  10 m  in 4 inch PVC-40
raceway R-7  4 inch EMT  30 m
"""


def site(amps: tuple[int, ...], wires: str = "") -> str:
    made = US
    for at, each in enumerate(amps):
        made += f"panel P{at} 480Y/277  bus 400 A, main lugs, rated 35 kA, lug-temp 75 degC\n"
        made += f"feeder MAIN -> P{at}  {each} A 3p  {wires}  30 m  in R-7\n"
    return made


def bundled(text: str) -> list[str]:
    findings = Analysis("/m/site.wye", Files(lambda _: text), "/m").findings()
    return [f.message for f in findings if "bundle" in f.rule or "protect" in f.rule or "ampacity" in f.rule]


def sized_wires(text: str, key: str) -> str:
    view = Analysis("/m/site.wye", Files(lambda _: text), "/m").view
    found = size_feeder(view, view.model.feeders[key])
    assert isinstance(found, Proposal), found
    return found.wires


@pytest.mark.parametrize(
    "amps", [(200,), (200, 200), (200, 200, 200), (60, 100, 225), (30, 40, 50, 60, 70), (125,) * 8]
)
@pytest.mark.parametrize("wires", ["", "3#8 + N #8 + G #10 Cu THWN-2"])
def test_what_is_written_for_all_of_them_holds(tmp_path: Path, amps: tuple[int, ...], wires: str) -> None:
    file = tmp_path / "site.wye"
    file.write_text(site(amps, wires), encoding="utf-8")
    assert main(["size", "--apply", str(file)]) == 0
    assert bundled(file.read_text(encoding="utf-8")) == []


def test_each_further_line_asks_for_more() -> None:
    """#3/0 carries 225 A in the 90 degC column; among 4 to 6 wires 80 % of it, among 7 to 9 70 %, among 10 to 20 50 %
    (NEC 2023 310.16 and 310.15(C)(1), from memory). 175 A is the standard size below 180 A, 200 A the one above."""
    found = {count: sized_wires(site((200,) * count), "MAIN -> P0").split()[0] for count in (1, 2, 3, 4)}
    # 225 A; 180 A, next size up 200 A; 157.5 A is not enough, 4/0 at 182 A is; 350 kcmil at 175 A is not enough for
    # more than 175 A, 400 kcmil at 190 A is.
    assert found == {1: "3#3/0", 2: "3#3/0", 3: "3#4/0", 4: "3x400kcmil"}


def test_wires_that_are_too_small_beside_the_others_are_not_called_large_enough() -> None:
    wires = "3#3/0 + N #3/0 + G #6 Cu THWN-2"
    assert sized_wires(site((200, 200, 200), wires), "MAIN -> P1").startswith("3#4/0")
    assert sized_wires(site((200, 200), wires), "MAIN -> P1") == ""


def test_a_second_set_counts_in_the_raceway_too(tmp_path: Path) -> None:
    file = tmp_path / "site.wye"
    file.write_text(site((400, 400, 400)), encoding="utf-8")
    assert main(["size", "--apply", str(file)]) == 0
    text = file.read_text(encoding="utf-8")
    # Two sets of three lines are 18 wires: 50 %. 400 kcmil carries 380 A at 90 degC: 2 x 380 x 0.5 = 380 A, next 400 A.
    assert text.count("2 sets 3x400kcmil") == 3 and bundled(text) == []
