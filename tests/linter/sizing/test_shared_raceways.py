"""What is sized beside other lines in one raceway carries its load there, and the rules find nothing against it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.reports.ampacity_sheet import ampacity_figure
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
    return [f.message for f in findings if any(word in f.rule for word in ("bundle", "underprotected", "ampacity"))]


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


MILL = """wye 1
project "Mill"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 480Y/277  fault 40 kA, fault-min 30 kA, x/r 6
switchboard MSB 480Y/277  bus 2500 A, main 2500 A, rated 65 kA, service-equipment, lug-temp 75 degC
feeder UTIL -> MSB
raceway R-1 12 inch ladder  30 m
"""


@pytest.mark.parametrize("amps", [(1000, 800, 100), (800, 800), (1000, 60), (600, 600, 400)])
@pytest.mark.parametrize("written", [False, True])
def test_several_sets_of_lines_not_written_yet_count(tmp_path: Path, amps: tuple[int, ...], written: bool) -> None:
    """Written together they hold: each counted the sets of all, whichever of them was asked for."""
    text = MILL
    for at, each in enumerate(amps):
        wires = "3#8 + N #8 + G #8 Cu THWN-2" if written else ""
        text += f"switchboard D{at} 480Y/277  bus 1000 A, main {each} A, rated 65 kA, lug-temp 75 degC\n"
        text += f"feeder MSB -> D{at}  {each} A 3p  {wires}  30 m  in R-1\n"
    file = tmp_path / "site.wye"
    file.write_text(text, encoding="utf-8")
    alone = [sized_wires(text, f"MSB -> D{at}") for at in range(len(amps))]
    assert main(["size", "--apply", str(file)]) == 0
    after = file.read_text(encoding="utf-8")
    assert bundled(after) == [] and all(wires in after for wires in alone)


def test_a_neighbour_of_several_sets_asks_for_more() -> None:
    """1000 A in five sets, beside 100 A: 18 wires, 50 % (NEC 310.15(C)(1)). 500 kcmil carry 5 x 430 x 0.5 = 1075 A;
    four sets (15 wires) 860 A. Of the other #2/0 Cu has 195 A at 90 degC and 97.5 A there, next 100 A;
    #1/0 has 170 A and 85 A. With one set counted for the 1000 A it would be #3: 115 A, 80 % of it 92 A."""
    text = MILL
    for name, each in (("A", 1000), ("C", 100)):
        text += f"switchboard {name} 480Y/277  bus 1000 A, main {each} A, rated 65 kA, lug-temp 75 degC\n"
        text += f"feeder MSB -> {name}  {each} A 3p  30 m  in R-1\n"
    assert sized_wires(text, "MSB -> A").startswith("5 sets 3x500kcmil")
    assert sized_wires(text, "MSB -> C").startswith("3#2/0")


def test_sets_that_lie_together_count_as_they_grow() -> None:
    """1000 A in sets that lie in one raceway: five sets of 500 kcmil are 15 wires at 50 %, 5 x 430 x 0.5 = 1075 A; four
    are 12 wires, 860 A."""
    text = MILL + (
        "switchboard A 480Y/277  bus 1000 A, main 1000 A, rated 65 kA, lug-temp 75 degC\n"
        "feeder MSB -> A  1000 A 3p  30 m  in 12 inch ladder, together\n"
    )
    assert sized_wires(text, "MSB -> A").startswith("5 sets 3x500kcmil")


IEC = """project "Mill"
  basis iec
  frequency 50 Hz, ambient 30 degC
utility NETZ 400Y/230  fault 30 kA, fault-min 20 kA, x/r 4, earthing TN-S
feeder NETZ -> HV
switchboard HV 400Y/230  bus 1250 A, incomer 1250 A, rated 36 kA
raceway T-1 tray  30 m
panel P 400Y/230  bus 250 A, incomer 125 A, rated 36 kA
panel Q 400Y/230  bus 800 A, incomer 630 A, rated 36 kA
feeder HV -> P  125 A 3p  4x50mm2 + PE 25mm2 Cu XLPE  30 m  in T-1, method E
feeder HV -> Q  630 A 3p  {wires}  30 m  in T-1, method E
"""


def test_parallel_sets_are_circuits_of_the_group_under_iec_practice() -> None:
    """B.52.17: single layer on a perforated tray, 2 circuits 0.88, 3 circuits 0.82. Two sets beside one line are three
    circuits, not two: 50 mm2 XLPE, method E, three loaded: 192 A x 0.82 = 157 A."""
    view = Analysis("/m/site.wye", Files(lambda _: IEC.format(wires="2 sets 4x240mm2 + PE 120mm2 Cu XLPE")), "/m").view
    sheet = ampacity_figure(view, view.model.feeders["HV -> P"])
    assert sheet.value == pytest.approx(192 * 0.82, rel=1e-6)


def test_what_is_offered_follows_an_edit_of_a_neighbour() -> None:
    """The finding on the line without wires says nothing that a neighbour's edit would make wrong."""
    made = Analysis("/m/site.wye", Files(lambda _: site((200, 200))), "/m")
    (gap, _) = (f for f in made.findings() if f.rule == "wires-not-sized")
    assert "`wyeline size` tells" in gap.change and gap.fixes[0].title.startswith("Size `MAIN -> P0`: 3#3/0")
    crowded = Analysis("/m/site.wye", Files(lambda _: site((200,) * 3)), "/m")
    other = next(f for f in crowded.findings() if f.rule == "wires-not-sized")
    assert replace(other, fixes=()) == replace(gap, fixes=(), place=other.place)
    assert other.fixes[0].title.startswith("Size `MAIN -> P0`: 3#4/0")


def test_neutrals_of_mostly_electronic_loads_count_in_a_shared_raceway() -> None:
    """Two lines of three legs: six wires, 80 %. Their neutrals counted eight, 70 % (NEC 310.15(C)(1), (E)(3)): #3/0 has
    225 A at 90 degC, 180 A and 157.5 A. 200 A is the next standard size of the one, 175 A of the other."""
    wires = "3#3/0 + N #3/0 + G #6 Cu THWN-2"
    text = site((200, 200), wires)
    assert bundled(text) == []
    loads = "".join(f'  F1  150 A 3p  100 kVA it  "Racks, row {at}"\n' for at in (0, 1))
    for at, load in enumerate(loads.splitlines(keepends=True)):
        text = text.replace(f"feeder MAIN -> P{at}", f"{load}feeder MAIN -> P{at}")
    found = bundled(text)
    assert len(found) == 2 and all("158 A among 8 wires" in message for message in found)
