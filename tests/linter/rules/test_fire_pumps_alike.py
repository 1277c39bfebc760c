"""Fire pumps that one line stands for (`count`) run at 115 % of the full-load current of all of them (NEC 695.7(B)),
and the device ahead of them carries the locked-rotor current of one and the full-load current of the others for good
(695.4(B)(2)(a)). Full-load current: 96 A at 75 hp, 460 V (NEC Table 430.250). All from memory."""

from __future__ import annotations

import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.rules.motor_starts import lost_beyond_full_load_v
from wyeline_linter.sizing.lines import size_feeder
from wyeline_linter.sizing.prepared import NotSized

PUMPS = """project "Sprinkler room"
  basis us-2023
  frequency 60 Hz
utility UTIL 480Y/277  fault 12 kA, fault-min 8 kA, x/r 4
switchboard MSB 480Y/277  bus 1200 A, rated 65 kA
feeder UTIL -> MSB  1600 A 3p  1 m, resistance 0.001 ohm/km, reactance 0.001 ohm/km
motor FP-1 460 3ph  75 hp, pf 0.87, eff 93 %, fire-pump, count {count}
feeder MSB -> FP-1  1600 A 3p  {length} m, resistance 0.3 ohm/km, reactance 0.1 ohm/km
"""


@pytest.mark.parametrize("count", [1, 2, 4])
def test_all_of_them_draw_more_than_their_full_load(count: int) -> None:
    """I (R cos + X sin), a leg, times the square root of 3: of the supply as at its weakest, and of 100 m of wire."""
    analysis = Analysis("/m/site.wye", Files(lambda _: PUMPS.format(count=count, length=100)), "/m")
    study = analysis.view.studies.normal
    supply = 480 / math.sqrt(3) / 8e3 / math.hypot(1, 4)
    r, x = supply + 0.03, 4 * supply + 0.01
    drawn_a = 75 * 745.7 / 0.93 / 0.87 / 480 / math.sqrt(3)
    more_a = count * (1.15 * 96 - drawn_a)
    expected = math.sqrt(3) * more_a * (r * 0.87 + x * math.sqrt(1 - 0.87**2))
    assert lost_beyond_full_load_v(study, analysis.model.equipment["FP-1"]) == pytest.approx(expected, rel=0.02)


BEHIND_ONE_DEVICE = """project "Sprinkler room"
  basis us-2023
  frequency 60 Hz
utility UTIL 480Y/277  fault 12 kA, fault-min 8 kA, x/r 4
switchboard MSB 480Y/277  bus 1600 A, rated 65 kA
feeder UTIL -> MSB  1600 A 3p  1 m
motor FP-1 460 3ph  {power}, pf 0.87, eff 93 %, lra 543 A, fire-pump, count {count}
feeder MSB -> FP-1  {device} A 3p  3#1/0 + G #1 Cu THWN-2  20 m  in 2 inch RMC
"""


def behind(device: int, count: int, power: str = "75 hp") -> Analysis:
    text = BEHIND_ONE_DEVICE.format(device=device, count=count, power=power)
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


@pytest.mark.parametrize(
    ("count", "device", "small"),
    # 543 A; 543 + 96 = 639 A; 543 + 3 x 96 = 831 A.
    [(1, 500, True), (1, 600, False), (2, 600, True), (2, 700, False), (4, 800, True), (4, 1000, False)],
)
def test_the_device_carries_one_that_stalls_and_the_others(count: int, device: int, small: bool) -> None:
    found = [f for f in behind(device, count).all_findings() if f.rule == "fire-pump-device-small"]
    assert bool(found) == small
    if found:
        carried_a = 543 + (count - 1) * 96
        assert found[0].needed.startswith(f"{carried_a} A or more")
        assert [fix.title for fix in found[0].fixes] == [f"Make the device {ratings_above(carried_a)} A"]


def ratings_above(amps: float) -> int:
    """Standard ratings of NEC 240.6(A), from memory."""
    return next(rating for rating in (500, 600, 700, 800, 1000) if rating >= amps)


@pytest.mark.parametrize(("count", "device"), [(1, "600 A 3p"), (2, "700 A 3p"), (4, "1000 A 3p")])
def test_several_are_sized_with_a_device_for_all_of_them(count: int, device: str) -> None:
    written = BEHIND_ONE_DEVICE.format(device=600, count=count, power="75 hp").replace(
        "600 A 3p  3#1/0 + G #1 Cu THWN-2  20 m  in 2 inch RMC", "20 m  in RMC"
    )
    made = Analysis("/m/site.wye", Files(lambda _: written), "/m")
    found = size_feeder(made.view, made.model.feeders["MSB -> FP-1"])
    assert not isinstance(found, NotSized) and found.device == device


def test_a_size_that_is_not_listed_leaves_the_others_unknown() -> None:
    """78 hp stands in no row of the table: what one pump draws is the least, and no size is offered."""
    found = [f for f in behind(500, 2, "78 hp").all_findings() if f.rule == "fire-pump-device-small"]
    assert "unknown" in found[0].needed and not found[0].fixes
    made = behind(600, 2, "78 hp")
    assert not [f for f in made.all_findings() if f.rule == "fire-pump-device-small"]
    unsized = BEHIND_ONE_DEVICE.format(device="", count=2, power="78 hp").replace("   A 3p", "")
    made = Analysis("/m/site.wye", Files(lambda _: unsized), "/m")
    refused = size_feeder(made.view, made.model.feeders["MSB -> FP-1"])
    assert isinstance(refused, NotSized) and "full-load current of the other pumps" in refused.reasons[0]
