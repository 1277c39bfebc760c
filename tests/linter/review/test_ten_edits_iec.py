"""Ten edits of the site in IEC practice; what follows from each is worked out here from the numbers in its files.

Sources: S = sqrt(3) U I, P + jQ of motors from efficiency and power factor (physics).
"""

from __future__ import annotations

import math

import pytest
from site_edits import Edit, because, compared, new_value, old_value, one, three_phase_a

from wyeline_linter.findings import Severity
from wyeline_linter.review.comparison import Comparison
from wyeline_linter.review.consequences import Kind
from wyeline_linter.review.physical import Kind as Change

CHARGING: Edit = ("works.wye", "feeder HT-1        -> UT-3    63 A 3p", "feeder HT-1        -> UT-3    25 A 3p")
SMALL_UPS: Edit = ("standby.wye", "6 kVA, eff 93 %, recharge", "2 kVA, eff 93 %, recharge")
CELLAR: Edit = ("cellar.wye", "40 kVA, connection Dd0", "10 kVA, connection Dd0")
RANGE: Edit = ("halls.wye", "7.5 kW  kitchen", "15 kW  kitchen")
OTHER_LEG: Edit = (
    "halls.wye",
    '  F1[L1]  16 A 1p+N curve B, rcd 30 mA, rcd-type A  1.5 kW  receptacle  "Offices, east side"',
    '  F1[L2]  16 A 1p+N curve B, rcd 30 mA, rcd-type A  1.5 kW  receptacle  "Offices, east side"',
)
CELLAR_OFF: Edit = ("works.wye", "feeder HT-1        -> TR-2 ", "// feeder HT-1        -> TR-2 ")
EARTHING: Edit = ("cellar.wye", "230 3ph             earthing IT, range", "230 3ph             earthing TN-S, range")
PREHEATING: Edit = ("halls.wye", "9 kW  heating continuous  ", "57 kW  heating continuous  ")
RENAMED: Edit = ("works.wye", "KJØL-1*", "KJØL-2")
TWICE: Edit = ("halls.wye", "motor       AG-1    400 3ph ", "motor       PU-1    400 3ph ")

BARS: Edit = ("works.wye", "withstand 25 kA, peak 52 kA", "withstand 25 kA, peak 22 kA")


def iec(*edits: Edit) -> Comparison:
    return compared("dairy-works", "works.wye", *edits)


def test_a_smaller_device_ahead_of_the_chargers() -> None:
    limit = one(iec(CHARGING), "HT-1 -> UT-3", "above its 25 A device")
    assert new_value(limit) == pytest.approx(three_phase_a(2 * 11e3, 400), rel=0.01), "the third is future"
    assert because(limit) == ["HT-1 -> UT-3 went from 63 to 25 A"]


def test_a_smaller_ups_cannot_carry_its_board() -> None:
    limit = one(iec(SMALL_UPS), "UPS-1", "above its 2 kVA rating (6 kVA before)")
    assert new_value(limit) == pytest.approx(900 + 900 + 600)
    assert because(limit) == ["UPS-1 went from 6 to 2 kVA"]


def test_a_smaller_transformer_for_the_cellar() -> None:
    limit = one(iec(CELLAR), "TR-2", "above its 10 kVA rating")
    motor_w = 3000 / 0.87
    load = complex(3 * 1400 + 3 * 600 + 6000 + motor_w, motor_w * math.tan(math.acos(0.82)))
    assert new_value(limit) == pytest.approx(abs(load), rel=0.01)
    assert because(limit) == ["TR-2 went from 40 to 10 kVA"]


def test_a_larger_range_overloads_its_circuit() -> None:
    found = iec(RANGE)
    high = one(found, "UT-2", "circuit F7", f"{three_phase_a(15e3, 400):.1f} A")
    assert because(high) == ["circuit F7 of UT-2 went from 7.5 to 15 kW"]
    moved = one(found, "UT-2", "demand load", kind=Kind.MOVED)
    assert new_value(moved) - old_value(moved) == pytest.approx(three_phase_a(7.5e3, 400), rel=0.01)


def test_a_circuit_on_another_leg_unbalances_the_board() -> None:
    limit = one(iec(OTHER_LEG), "UT-2", "leg unbalance")
    kw = {"L1": 0.8 + 2 + 2.5, "L2": 1.5 + 1.5 + 0.8 + 1.8 + 2.5, "L3": 1.5 + 0.8 + 2 + 2.5}  # 1.8: the gatehouse
    mean = sum(kw.values()) / 3
    assert new_value(limit) == pytest.approx((max(kw.values()) - mean) / mean, rel=0.01)
    assert because(limit) == ["circuit F1 of UT-2 had its legs changed from L1 to L2"]


def test_what_hangs_on_a_removed_feeder() -> None:
    found = iec(CELLAR_OFF)
    unknown = one(found, "TR-2", "voltage is not known any more", kind=Kind.UNKNOWN)
    assert because(unknown) == ["feeder HT-1 -> TR-2 was removed"]
    dead = {c.subject for c in found.worse if c.finding is not None and c.finding.rule == "unfed-equipment"}
    assert "TR-2" in dead
    moved = one(found, "TR-1", "demand load")
    assert old_value(moved) - new_value(moved) == pytest.approx(0.8 * 15.63e3, rel=0.1), "diversity 0.8 at HT-1"


def test_another_earthing_is_another_voltage_to_earth() -> None:
    found = iec(EARTHING)
    voltages = [c for c in found.worse if c.kind is Kind.VOLTAGE]
    assert {"TR-2", "UT-5"} <= {name for c in voltages for name in (c.subject, *c.others)}
    assert all("IT230 had its earthing changed from IT to TN-S" in because(c) for c in voltages)


def test_a_larger_machine_fills_the_feeder_of_its_board() -> None:
    limit = one(iec(PREHEATING), "HT-1 -> UT-1", "above 80 % of its 160 A device")
    assert new_value(limit) - old_value(limit) == pytest.approx(three_phase_a(48e3, 400), rel=0.05)
    assert because(limit) == ["circuit F6 of UT-1 went from 9 to 57 kW"]


def test_a_renamed_motor_with_a_letter_of_its_language() -> None:
    found = iec(RENAMED)
    assert [(c.kind, c.words) for c in found.changes] == [(Change.RENAMED, "motor KJØL-1 is now called KJØL-2")]
    assert not found.worse and not found.better and not found.moved


def test_a_name_used_twice() -> None:
    found = iec(TWICE)
    rules = {c.finding.rule for c in found.worse if c.finding is not None}
    assert {"duplicate-tag", "dangling-reference"} <= rules, "MC-1 -> AG-1 now leads nowhere"
    assert found.worse[0].gravity is Severity.ERROR
    assert all(c.because for c in found.worse)


def test_a_smaller_set_is_too_small_when_the_mains_are_lost() -> None:
    """The standby board: two compressors, lights, burner, and the UPS with its board behind it."""
    edit = ("standby.wye", "60 kVA, pf 0.8, subtransient", "25 kVA, pf 0.8, subtransient")
    limit = one(compared("dairy-works", "works.wye", edit, scenario="Mains lost"), "GEN-1", "above its 25 kVA rating")
    compressors = 2 * 7500 / 0.9
    active = compressors + 3 * 500 + 4500 + 2400 / 0.93
    assert new_value(limit) > active, "reactive power and charging come on top"
    assert new_value(limit) == pytest.approx(abs(complex(active, compressors * math.tan(math.acos(0.85)))), rel=0.1)
    assert because(limit) == ["GEN-1 went from 60 to 25 kVA"]
    normal = compared("dairy-works", "works.wye", edit)
    assert not [c for c in normal.worse if c.subject == "GEN-1" and c.measured[1] is not None]


def test_bars_that_bear_a_smaller_peak_are_told_once() -> None:
    """The rule and the figure say the same of one peak: 1.02 + 0.98 e^(-3 R/X) times sqrt(2) of the fault current (IEC
    60909-0), and the withstand rating beside it still suffices."""
    graver = [c for c in iec(BARS).worse if c.gravity is Severity.ERROR]
    assert [c.subject for c in graver] == ["HT-1"]
    assert "above its 22 kA peak rating (52 kA before) (withstand-too-low)" in graver[0].headline
