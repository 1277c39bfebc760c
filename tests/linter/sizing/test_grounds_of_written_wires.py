"""Wires that are larger than asked for stay as they are written, and their ground, jumper or PE is sized with them."""

from __future__ import annotations

import random

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.fixing import apply_edits
from wyeline_linter.sizing.lines import Proposal, size_feeder

US = """project "Quarry"
  basis us-2023
  frequency 60 Hz, ambient 30 degC
utility UTIL 480Y/277  fault 60 kA, fault-min 40 kA, x/r 6
feeder UTIL -> MSB
switchboard MSB 480Y/277  bus 2000 A, main 2000 A, rated 65 kA, lug-temp 75 degC, gfpe, gfpe-pickup 1200 A
  claim arc-energy-reduction
"""
PANEL = "panel LP-1 480Y/277  bus 800 A, main {main} A, rated 65 kA, lug-temp 75 degC\n"
BANK = """transformer TX 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2, electrode #3/0
panel LP-2 208Y/120  bus 800 A, main 225 A, rated 22 kA, lug-temp 75 degC
feeder MSB -> TX  125 A 3p  3#1 + G #6 Cu THWN-2  10 m  in 1-1/2 inch EMT
feeder TX -> LP-2  {wires} Cu THWN-2  5 m  in 4 inch EMT
  claim tap-25ft
"""
RULES = {"equipment-ground-small", "equipment-ground-not-enlarged", "bonding-jumper-small", "raceway-overfilled"}


def analysis(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def proposal(text: str, key: str) -> Proposal:
    made = analysis(text)
    found = size_feeder(made.view, made.model.feeders[key])
    assert isinstance(found, Proposal), found
    return found


@pytest.mark.parametrize(
    ("main", "written", "ground"),
    # NEC 250.122(A): 100 A #8 Cu (16.51 kcmil), 60 A #10 (10.38); circular mils of Chapter 9 Table 8, from memory.
    # 100 A asks for #3 (100 A at 75 degC, 52.62 kcmil): #1 is 83.69, 1.59 times: 26.26 kcmil, more than #6 (26.24), so
    # #4. 250 kcmil 4.75 times: 78.4 kcmil, #1. 60 A asks for #6 (65 A, 26.24): #3 is 2.01 times: 20.8 kcmil, #6.
    [
        (100, "3#1 + N #1 + G #8", "#4"),
        (100, "3x250kcmil + N 250kcmil + G #8", "#1"),
        (60, "3#3 + N #3 + G #10", "#6"),
        (100, "3#3 + N #3 + G #12", "#8"),
        (100, "3#1 + N #1 + G #4", ""),
        (100, "3#1 + N #1 + G #2", ""),
    ],
)
def test_a_ground_grows_with_the_wires_that_are_written(main: int, written: str, ground: str) -> None:
    text = US + PANEL.format(main=main) + f"feeder MSB -> LP-1  {main} A 3p  {written} Cu THWN-2  20 m  in 3 inch EMT\n"
    made = proposal(text, "MSB -> LP-1")
    live = written.rpartition(" + G ")[0]
    assert made.wires == (f"{live} + G {ground} Cu THWN-2" if ground else "")
    after = apply_edits(text, made.edits)
    assert not RULES & {f.rule for f in analysis(after).findings()}
    assert not proposal(after, "MSB -> LP-1").changes


@pytest.mark.parametrize(
    ("written", "jumper"),
    # NEC 250.102(C)(1), from memory: over 350 to 600 kcmil Cu #1/0, 2/0 and 3/0 #4, 4/0 to 350 kcmil #2.
    [
        ("3x500kcmil + N 500kcmil + G #2", "#1/0"),
        ("3x350kcmil + N 350kcmil + G #4", "#2"),
        ("3x350kcmil + N 350kcmil + G #2", ""),
    ],
)
def test_a_jumper_follows_the_wires_that_are_written(written: str, jumper: str) -> None:
    made = proposal(US + BANK.format(wires=written), "TX -> LP-2")
    assert made.wires == (f"{written.rpartition(' + G ')[0]} + G {jumper} Cu THWN-2" if jumper else "")


def test_whatever_is_written_the_rules_of_grounds_find_nothing_after_sizing() -> None:
    rng = random.Random(7)
    sizes = "#14 #12 #10 #8 #6 #4 #3 #2 #1 #1/0 #2/0 #3/0 #4/0 250kcmil 350kcmil 500kcmil".split()
    grown = 0
    for _ in range(150):
        amps = rng.choice([20, 60, 100, 150, 225, 400, 600])
        size = rng.choice(sizes)
        ground = rng.choice(sizes[: sizes.index(size) + 1])
        run = f"3{size}" if size[0] == "#" else f"3x{size}"
        sets = rng.choice(["", "2 sets "])
        wires = f"{sets}{run} + N {size} + G {ground} {rng.choice(['Cu', 'Al'])} THWN-2"
        row = f'  F1  {amps} A 3p  {0.8 * amps * rng.uniform(0.3, 1.2):.1f} kVA process  "Saw, hall"\n'
        length = rng.choice([5, 40, 200])
        text = US + PANEL.format(main=amps) + row + f"feeder MSB -> LP-1  {amps} A 3p  {wires}  {length} m  in EMT\n"
        made = proposal(text, "MSB -> LP-1")
        after = apply_edits(text, made.edits)
        assert not RULES & {f.rule for f in analysis(after).findings() if f.subject == "MSB -> LP-1"}, (text, made)
        grown += wires.rpartition(" + G ")[0] in made.wires
    assert grown > 10, "wires that are kept and given a larger ground are among those drawn"


@pytest.mark.parametrize("written", ["3#3 + N #6 + G #8", "3#3 + N #6 + G #12", "3#1 + N #6 + G #8"])
def test_a_reduced_neutral_that_stays_is_not_called_as_large_as_a_leg(written: str) -> None:
    text = US + PANEL.format(main=100) + f"feeder MSB -> LP-1  100 A 3p  {written} Cu THWN-2  20 m  in 3 inch EMT\n"
    made = proposal(text, "MSB -> LP-1")
    assert "neutral 6: as written" in made.reasons and not any("as large as a leg" in r for r in made.reasons)
    assert not made.wires or " + N #6" in made.wires


def test_a_neutral_of_a_legs_size_is_called_so() -> None:
    written = "3#3 + N #3 + G #12"
    text = US + PANEL.format(main=100) + f"feeder MSB -> LP-1  100 A 3p  {written} Cu THWN-2  20 m  in 3 inch EMT\n"
    assert "neutral 3: as large as a leg" in proposal(text, "MSB -> LP-1").reasons


# NEC 250.102(C)(1), from memory: to #2 Cu #8, 1 and 1/0 #6, 2/0 and 3/0 #4, over 350 to 600 kcmil #1/0.
@pytest.mark.parametrize(
    ("written", "jumper"), [("3#1 + N #1", "#6"), ("3#3/0 + N #3/0", "#4"), ("2 sets 3x400kcmil + N 400kcmil", "#1/0")]
)
def test_a_missing_jumper_behind_a_transformer_is_offered_by_its_wires(written: str, jumper: str) -> None:
    text = US + BANK.format(wires=written)
    (missing,) = [f for f in analysis(text).findings() if f.rule == "equipment-ground-missing"]
    (fix,) = missing.fixes
    after = apply_edits(text, fix.edits)
    assert f"{written} + G {jumper} Cu" in " ".join(after.split())
    assert not {"equipment-ground-missing", *RULES} & {f.rule for f in analysis(after).findings()}


BAKERY = """project "Bakery"
  basis iec
  frequency 50 Hz, ambient 30 degC
utility NET 400Y/230  fault 10 kA, fault-min 4 kA, x/r 2, earthing {earthing}
panel MDB 400Y/230  bus 100 A, incomer 100 A 3p, rated 10 kA
feeder NET -> MDB  100 A 3p fuse gG  {wires}  30 m, method C
"""


# IEC 60364-5-54, 543.4.1: a PEN has 10 mm2 of copper or 16 mm2 of aluminium, at the least.
@pytest.mark.parametrize(
    ("earthing", "wires", "offered"),
    [
        ("TN-C-S", "4x35mm2 Al XLPE", ["3x35mm2 + PEN 35mm2 Al XLPE", "4x35mm2 + PE 16mm2 Al XLPE"]),
        ("TN-C", "3x50mm2 + N 25mm2 Al XLPE", ["3x50mm2 + PEN 25mm2 Al XLPE", "3x50mm2 + N 25mm2 + PE 25mm2 Al XLPE"]),
        ("TN-S", "4x35mm2 Al XLPE", ["4x35mm2 + PE 16mm2 Al XLPE"]),
        ("TN-C-S", "4x6mm2 Cu XLPE", ["5G6mm2 Cu XLPE"]),
        ("TN-C-S", "4x10mm2 Al XLPE", ["5G10mm2 Al XLPE"]),
    ],
)
def test_the_fourth_wire_of_a_supply_may_be_its_pen(earthing: str, wires: str, offered: list[str]) -> None:
    text = BAKERY.format(earthing=earthing, wires=wires)
    (missing,) = [f for f in analysis(text).findings() if f.rule == "equipment-ground-missing"]
    assert [fix.edits[0].text for fix in missing.fixes] == offered
    for fix in missing.fixes:
        after = analysis(apply_edits(text, fix.edits)).findings()
        assert not {"equipment-ground-missing", "equipment-ground-small", "pen-conductor-bad"} & {f.rule for f in after}
