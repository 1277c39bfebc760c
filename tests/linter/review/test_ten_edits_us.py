"""Ten edits of the site in US practice; what follows from each is worked out here from the numbers in its files.

Sources: S = sqrt(3) U I and sums of phasors (physics); positions run down both sides of a panel and take the legs in
turn, A B C (common practice, no source).
"""

from __future__ import annotations

import cmath
import math

import pytest
from site_edits import (
    Edit,
    because,
    compared,
    new_value,
    old_value,
    one,
    three_phase_a,
)

from wyeline_linter.findings import Severity
from wyeline_linter.review.comparison import Comparison
from wyeline_linter.review.consequences import Kind
from wyeline_linter.review.physical import Kind as Change

SMALLER_TRANSFORMER: Edit = ("energy.wye", "BIGHT-LV 75 kVA, like DRY, z 4.4", "BIGHT-LV 15 kVA, like DRY, z 4.4")
SMALLER_MAIN: Edit = ("admin.wye", "bus 125 A, main 100 A", "bus 125 A, main 40 A")
OVEN: Edit = (
    "labs.wye",
    '4 kW      heating continuous  "Drying oven, room 103"',
    '14 kW  heating continuous  "Drying oven, room 103"',
)
SMALLER_DEVICE: Edit = ("labs.wye", "feeder LDP         -> LB-1    100 A 3p", "feeder LDP         -> LB-1    30 A 3p")
HIGH_LEG: Edit = ("west.wye", "units 3, high C", "units 3, high B")
NO_FEEDER: Edit = ("labs.wye", "feeder LDP         -> LB-1 ", "// feeder LDP         -> LB-1 ")
SAME_POSITION: Edit = ("admin.wye", "  13      20 A 1p             spare", "  12      20 A 1p             spare")
HEATER: Edit = (
    "admin.wye",
    "feeder SB-1        -> AH-1 ",
    "load        HTR-9   480 3ph  300 kW, heating\nfeeder SB-1 -> HTR-9  450 A 3p\nfeeder SB-1        -> AH-1 ",
)
LONG_WIRE = "THWN-2                      220 m  in 3/4 inch RMC\nfeeder DS-RTU2"
RENAMED: Edit = ("labs.wye", "LL-1*", "LL-7")
OTHER_LEGS: Edit = ("labs.wye", "feeder LDP[AB]     -> BUNK-1", "feeder LDP[BC]     -> BUNK-1")


def us(*edits: Edit) -> Comparison:
    return compared("field-station", "station.wye", *edits)


def leg_of(position: int) -> str:
    """The leg of a panel position."""
    return "ABC"[(position - 1) // 2 % 3]


def test_a_smaller_transformer_is_overloaded() -> None:
    found = us(SMALLER_TRANSFORMER)
    limit = one(found, "T-EV", "above its 15 kVA rating")
    assert limit.gravity is Severity.ERROR
    assert new_value(limit) == pytest.approx(3 * 6600), "three chargers of 6.6 kVA run, three are future"
    assert because(limit) == ["T-EV went from 75 to 15 kVA"]
    assert [c.kind for c in found.changes] == [Change.RE_RATED]


def test_a_smaller_main_is_exceeded_on_its_fullest_leg() -> None:
    limit = one(us(SMALLER_MAIN), "AL-1", "above its 40 A main (100 A before)")
    # Leg A: circuits 1 and 2 (six outlets each), the counter's 1.2 kVA, and a heater from A to B whose current lies
    # 30 degrees ahead of the voltage from A to neutral.
    to_neutral = 208 / math.sqrt(3)
    amps = (2 * 6 * 180 + 1200) / to_neutral + cmath.rect(3000 / 208, math.radians(30))
    assert new_value(limit) == pytest.approx(abs(amps), rel=0.01)
    assert limit.finding is not None and limit.finding.rule == "board-overloaded"
    assert because(limit) == ["AL-1 had its main changed from 100 to 40 A"]


def test_a_larger_load_overloads_its_circuit_and_moves_the_board() -> None:
    found = us(OVEN)
    high = one(found, "LA-1", "circuit 7,9", f"{14000 / 208:.1f} A")
    assert because(high) == ["circuit 7,9 of LA-1 went from 4 to 14 kW"]
    moved = one(found, "T-LAB", "demand load")
    assert new_value(moved) - old_value(moved) == pytest.approx(10e3, rel=0.03), "nearly in phase with the rest"
    assert because(moved) == because(high)


def test_a_smaller_device_carries_too_much() -> None:
    limit = one(us(SMALLER_DEVICE), "LDP -> LB-1", "above its 30 A device")
    per_leg = 1100 + 4 * 180  # one instrument and four outlets on each leg
    amps = per_leg / (208 / math.sqrt(3)) + three_phase_a(7500, 208)
    assert new_value(limit) == pytest.approx(amps, rel=0.03), "the angle of the chiller's current left aside"
    assert because(limit)[0].startswith("LDP -> LB-1 went from 100 to 30 A")


def test_another_high_leg_meets_the_circuits_that_stand_on_it() -> None:
    found = us(HIGH_LEG)
    single_pole = {1, 3, 2, 4}
    on_high_leg = {str(p) for p in single_pole if leg_of(p) == "B"}
    rule = "high-leg-to-neutral"
    circuits = [c for c in found.worse if c.subject == "BH-1" and c.finding and c.finding.rule == rule]
    meets = {c.finding.position for c in circuits if c.finding}
    assert meets == on_high_leg == {"3", "4"}
    assert all(because(c) == ["T-W had its high changed from C to B"] for c in found.worse)
    voltages = [c for c in found.worse if c.kind is Kind.VOLTAGE]
    assert any("BH-1" in (c.subject, *c.others) for c in voltages)
    assert found.worse[0].gravity is Severity.ERROR and found.worse[-1].gravity <= Severity.WARNING


def test_what_loses_its_feeder_is_dead_and_its_load_is_gone_above() -> None:
    found = us(NO_FEEDER)
    unfed = one(found, "LB-1", "(unfed-equipment)")
    unknown = one(found, "LB-1", "voltage is not known any more", kind=Kind.UNKNOWN)
    assert because(unfed) == because(unknown) == ["feeder LDP -> LB-1 was removed"]
    moved = one(found, "T-LAB", "demand load")
    assert old_value(moved) > new_value(moved)
    assert because(moved) == because(unfed)


def test_two_devices_on_one_position() -> None:
    found = us(SAME_POSITION)
    occupied = [c for c in found.worse if c.finding is not None and c.finding.rule == "position-occupied"]
    assert occupied and all(c.subject == "AL-1" for c in occupied)
    assert because(occupied[0]) == ["circuit 13 of AL-1 moved to 12"]


def test_an_added_load_fills_what_is_above() -> None:
    found = us(HEATER)
    board = one(found, "SB-1", "above 80 % of its 1000 A main")
    assert new_value(board) - old_value(board) == pytest.approx(three_phase_a(300e3, 480), rel=0.05)
    transformer = one(found, "T-1", "demand load", "above 80 % of its 750 kVA rating")
    assert new_value(transformer) - old_value(transformer) == pytest.approx(300e3, rel=0.05), "angles left aside"
    assert because(board) == because(transformer) == ["load HTR-9 was added, fed from SB-1 by 450 A"]
    assert [(c.kind, c.subject) for c in found.changes] == [(Change.ADDED, "HTR-9")], "the feeder belongs to it"
    assert "SB-1" in next(s for s in found.sheets if s.name == "panel schedules").of


def test_a_renamed_panel_is_renamed_and_nothing_else() -> None:
    found = us(RENAMED)
    assert [(c.kind, c.words) for c in found.changes] == [(Change.RENAMED, "panel LL-1 is now called LL-7")]
    assert not found.worse and not found.better and not found.moved
    assert "LL-7" in next(s for s in found.sheets if s.name == "labels and directories").of


def test_legs_that_are_not_those_of_the_positions() -> None:
    assert [leg_of(7), leg_of(9)] == ["A", "B"], "the feeder's device stands on 7,9"
    found = us(OTHER_LEGS)
    conflict = one(found, "LDP", "circuit 7,9", "(position-leg-conflict)")
    assert conflict.gravity is Severity.ERROR
    assert because(conflict) == ["LDP -> BUNK-1 had its legs changed from A B to B C"]


def test_a_long_wire_loses_more_than_is_aimed_for() -> None:
    """Drop of a balanced feeder is sqrt(3) I (R cos phi + X sin phi) (common formula); R of #10 copper is about
    3.9 ohm/km (NEC chapter 9, table 9, from memory), and X hardly counts beside it."""
    found = us(("admin.wye", "THWN-2                      2 m  in 3/4 inch RMC\nfeeder DS-RTU2", LONG_WIRE))
    drop = one(found, "DS-RTU1 -> RTU-1", "voltage drop", "above the 3 % for a branch")
    amps, cos_phi = 17, 0.9  # what the nameplate states stands for what it draws
    assert new_value(drop) == pytest.approx(math.sqrt(3) * amps * 3.9 * 0.22 * cos_phi / 480, rel=0.12)
    assert drop.finding is not None and drop.finding.rule == "branch-drop-high"
    assert because(drop) == ["DS-RTU1 -> RTU-1 went from 2 to 220 m"]


def test_all_at_once_each_consequence_keeps_its_own_cause() -> None:
    found = us(SMALLER_TRANSFORMER, SMALLER_MAIN, OVEN, SMALLER_DEVICE, HEATER, RENAMED, OTHER_LEGS)
    assert because(one(found, "T-EV", "above its 15 kVA rating")) == ["T-EV went from 75 to 15 kVA"]
    assert because(one(found, "AL-1", "above its 40 A main")) == ["AL-1 had its main changed from 100 to 40 A"]
    assert because(one(found, "LDP -> LB-1", "above its 30 A device"))[0].startswith("LDP -> LB-1 went")
    added = "load HTR-9 was added, fed from SB-1 by 450 A"
    transformer = one(found, "T-1", "demand load")
    assert because(transformer)[0] == added, "the oven adds to T-1 as well, but less"
    gravities = [c.gravity for c in found.worse]
    assert gravities == sorted(gravities, reverse=True)
