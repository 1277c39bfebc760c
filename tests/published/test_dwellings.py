"""Services and feeders of one dwelling unit (NEC 2023 310.12).

The table is that of NEC 310.12(A) (Table 310.12 of 2020) as distributors print it: service or feeder rating, copper,
aluminum, where no correction or adjustment is needed. The rule of 83 percent is held against every row of it. That
208Y/120 stands for feeders only, and that correction factors come on top, is from memory of 310.12 and of Example D7.
"""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.conductor_sizes import area_mm2, standard_sizes
from wyeline_linter.loads.sheets import load_figure
from wyeline_linter.reports.ampacity_sheet import ampacity_figure
from wyeline_linter.sizing.lines import Proposal, size_feeder
from wyeline_linter.tables import basis

TABLE = [
    (100, "#4", "#2"),
    (110, "#3", "#1"),
    (125, "#2", "#1/0"),
    (150, "#1", "#2/0"),
    (175, "#1/0", "#3/0"),
    (200, "#2/0", "#4/0"),
    (225, "#3/0", "x250kcmil"),
    (250, "#4/0", "x300kcmil"),
    (300, "x250kcmil", "x350kcmil"),
    (350, "x350kcmil", "x500kcmil"),
    (400, "x400kcmil", "x600kcmil"),
]
HOUSE = """project "House"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL {volts}  fault 10 kA, fault-min 6 kA, x/r 2
panel HOUSE {volts}  bus 400 A, main {rating} A, rated 22 kA, lug-temp 75 degC, service-equipment
feeder UTIL -> HOUSE  {wires}  10 m  in 4 inch PVC-40{laid}
{claim}"""
CLAIM = "  claim dwelling-unit\n"


def analysis(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def house(rating: int, size: str, metal: str, *, volts: str = "120/240", laid: str = "", claim: str = CLAIM) -> str:
    neutral = size.removeprefix("x")
    wires = f"2{size} + N {neutral} {metal} THWN-2"
    return HOUSE.format(rating=rating, wires=wires, volts=volts, laid=laid, claim=claim)


def rules(text: str) -> list[str]:
    return [f.rule for f in analysis(text).findings()]


def smaller(size: str) -> str:
    """The next smaller standard size, as it is written."""
    sizes = sorted(standard_sizes(basis("us-2023")), key=area_mm2)
    plain = size.removeprefix("x").removeprefix("#").replace("kcmil", " kcmil")
    below = sizes[sizes.index(plain) - 1]
    return f"x{below.replace(' ', '')}" if "kcmil" in below else f"#{below}"


@pytest.mark.parametrize(("rating", "copper", "aluminum"), TABLE)
def test_every_row_of_the_table(rating: int, copper: str, aluminum: str) -> None:
    for size, metal in ((copper, "Cu"), (aluminum, "Al")):
        assert rules(house(rating, size, metal)) == []
        assert rules(house(rating, smaller(size), metal)) == ["wire-underprotected"]


@pytest.mark.parametrize(("rating", "copper", "aluminum"), TABLE[:-1])
def test_size_proposes_the_row(rating: int, copper: str, aluminum: str) -> None:
    for size, metal in ((copper, "Cu"), (aluminum, "Al")):
        made = analysis(house(rating, "#14" if metal == "Cu" else "#12", metal))
        found = size_feeder(made.view, made.model.feeders["UTIL -> HOUSE"])
        assert isinstance(found, Proposal)
        assert found.wires.startswith(f"2{size} + N")
        assert any(f"83 % of the {rating} A of one dwelling unit (NEC 2023 310.12(A))" in r for r in found.reasons)


def test_without_the_claim_the_whole_rating_counts_and_the_finding_names_the_way() -> None:
    (found,) = analysis(house(200, "#2/0", "Cu", claim="")).findings()
    assert found.rule == "wire-underprotected"
    assert found.change.endswith("the whole load of one dwelling unit, `claim dwelling-unit` asks for 166 A only.")
    (small,) = analysis(house(200, "#1/0", "Cu", claim="")).findings()
    assert "dwelling" not in small.change, "150 A would not be enough for a dwelling unit either"


@pytest.mark.parametrize(
    ("size", "laid", "found"),
    # 2/0 Cu 195 A at 90 degC: 0.87 at 45 degC leaves 169.7 A, 0.82 at 50 degC 159.9 A, of the 166 A asked for.
    [("#2/0", ", ambient 45 degC", []), ("#2/0", ", ambient 50 degC", ["ampacity-short"])],
)
def test_factors_count_on_top(size: str, laid: str, found: list[str]) -> None:
    assert rules(house(200, size, "Cu", laid=laid)) == found


@pytest.mark.parametrize(
    ("rating", "volts", "size"), [(90, "120/240", "#2"), (200, "208Y/120 1ph", "#3/0"), (200, "208Y/120", "#3/0")]
)
def test_what_the_clause_does_not_cover(rating: int, volts: str, size: str) -> None:
    text = house(rating, size, "Cu", volts=volts)
    three = text.replace("2#", "3#") if volts == "208Y/120" else text
    assert rules(three) == ["dwelling-unproven"]
    assert rules(three.replace(CLAIM, "")) == []


FLATS = """project "Flats"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 208Y/120  fault 20 kA, fault-min 15 kA, x/r 3
switchboard MB 208Y/120  bus 400 A, main 400 A, rated 42 kA, service-equipment, lug-temp 75 degC
feeder UTIL -> MB  3x500kcmil + N 500kcmil Cu THWN-2  5 m  in 4 inch PVC-40
panel FLAT-1 208Y/120 1ph  bus 125 A, main 125 A, rated 22 kA, lug-temp 75 degC
feeder MB[AB] -> FLAT-1  125 A 2p  2#2 + N {neutral} + G #6 Cu THWN-2  20 m  in 1-1/2 inch EMT
  claim dwelling-unit
"""


def test_a_flat_on_two_legs_of_a_wye() -> None:
    """125 A ask for 103.75 A: #2 Cu has 115 A. Its neutral is not made smaller (220.61(C)(1))."""
    assert rules(FLATS.format(neutral="#2")) == []
    assert rules(FLATS.format(neutral="#4")) == ["two-leg-neutral-reduced"]


def test_a_part_of_a_dwelling_has_no_relief() -> None:
    text = house(200, "#2/0", "Cu") + (
        "panel GARAGE 120/240  bus 125 A, main 100 A, rated 22 kA, lug-temp 75 degC\n"
        "feeder HOUSE -> GARAGE  100 A 2p  2#4 + N #4 + G #8 Cu THWN-2  15 m  in 1-1/4 inch EMT\n" + CLAIM
    )
    weak, claim = analysis(text).findings()
    assert (weak.rule, weak.subject) == ("wire-underprotected", "HOUSE -> GARAGE")
    assert (claim.rule, claim.subject) == ("dwelling-unproven", "HOUSE -> GARAGE")
    assert "`UTIL -> HOUSE` is claimed to carry the whole load" in claim.message


def test_the_ground_follows_the_device_and_the_load_asks_no_more() -> None:
    """A feeder of 200 A: #6 Cu ground by 250.122, though its wires carry 175 A; a load of 190 A asks no more (C)."""
    text = house(400, "x600kcmil", "Cu", claim="")
    text += (
        "panel HOME 120/240  bus 225 A, main 200 A, rated 22 kA, lug-temp 75 degC\n"
        '  1,3  200 A 2p  45.6 kVA  process  "Whole house"\n'
        "feeder HOUSE -> HOME  200 A 2p  2#2/0 + N #2/0 + G #6 Cu THWN-2  15 m  in 2 inch EMT\n" + CLAIM
    )
    made = analysis(text)
    assert [f.rule for f in made.findings()] == []
    sheet = ampacity_figure(made.view, made.model.feeders["HOUSE -> HOME"])
    assert sheet.value == pytest.approx(175)
    (enough,) = (text for text in sheet.assumptions if "enough" in text)
    assert enough == "166 A are enough for its device: 83 % of the 200 A of one dwelling unit (NEC 2023 310.12(B))"


def test_the_load_sheets_say_which_calculation_is_not_made() -> None:
    made, without = analysis(house(200, "#2/0", "Cu")), analysis(house(200, "#3/0", "Cu", claim=""))
    for figure in ("demand", "sizing"):
        (note,) = (t for t in load_figure(made.view, "HOUSE", figure).assumptions if "dwelling" in t)
        assert "count as written" in note and "220.82" in note
        assert not load_figure(without.view, "HOUSE", figure).assumptions
