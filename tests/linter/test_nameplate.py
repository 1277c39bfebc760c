"""Nameplate voltages on nominal systems."""

import pytest

from wyeline_linter.nameplate import MOTOR_NAMEPLATES, Fit, judge


@pytest.mark.parametrize(
    ("nominal", "low", "high", "fit"),
    [
        # NEMA MG 1 pairings: motor 200 on 208, 230 on 240, 460 on 480, 575 on 600 (lorchem.com/pages.php?id=64;
        # industrialmonitordirect.com, "NEMA 460V vs 480V"). 115 on 120: from memory.
        (208, 200, None, Fit.GOOD),
        (240, 230, None, Fit.GOOD),
        (480, 460, None, Fit.GOOD),
        (600, 575, None, Fit.GOOD),
        (4160, 4000, None, Fit.GOOD),
        (120, 115, None, Fit.GOOD),
        # Common practice, no source: bands, neighbours and misfits that a drafter meets.
        (208, 208, 230, Fit.GOOD),
        (208, 230, None, Fit.DOUBTFUL),
        (208, 240, None, Fit.WRONG),
        (240, 208, None, Fit.WRONG),
        (240, 208, 240, Fit.GOOD),
        (277, 347, None, Fit.WRONG),
        (347, 277, None, Fit.WRONG),
        (480, 440, None, Fit.DOUBTFUL),
        (480, 440, 480, Fit.GOOD),
        (400, 380, None, Fit.GOOD),
        (400, 415, None, Fit.GOOD),
        (400, 380, 415, Fit.GOOD),
        (230, 220, 240, Fit.GOOD),
        (690, 660, None, Fit.GOOD),
        (277, 120, None, Fit.WRONG),
    ],
)
def test_fit(nominal: float, low: float, high: float | None, fit: Fit) -> None:
    assert judge(nominal, low, high).fit is fit


def test_limits_of_a_motor_are_ten_percent() -> None:
    # A 460 V motor may run at 414 to 506 V: engplatform.com/motor-nameplate-and-terminology (NEMA MG 1).
    assert judge(506, 460).fit is Fit.DOUBTFUL
    assert judge(414, 460).fit is Fit.DOUBTFUL
    assert judge(506.5, 460).fit is Fit.WRONG
    assert judge(413.5, 460).fit is Fit.WRONG


def test_a_heater_loses_power_with_the_square() -> None:
    # Joule's law: (208/240)^2 = 0.7511, (240/208)^2 = 1.3314.
    assert judge(208, 240).heater_power_ratio == pytest.approx(0.7511, abs=1e-4)
    assert judge(240, 208).heater_power_ratio == pytest.approx(1.3314, abs=1e-4)
    assert judge(208, 240).why() == (
        "240 V equipment gets 13.3 % less than its nameplate on 208 V, outside ±10 %; "
        "a heater gives 75.1 % of its power"
    )


def test_a_tap_moves_the_nominal() -> None:
    assert judge(208, 230, tap_pct=5.0).fit is Fit.DOUBTFUL
    assert judge(208, 230, tap_pct=5.0).deviation_pct == pytest.approx(-5.043, abs=1e-3)


def test_every_motor_nameplate_suits_its_system_and_no_other_size() -> None:
    for nominal in MOTOR_NAMEPLATES:
        good = [other for other, plate in MOTOR_NAMEPLATES.items() if judge(nominal, plate).fit is Fit.GOOD]
        assert good == [nominal]


def test_nonsense_is_told() -> None:
    with pytest.raises(ValueError, match="no voltages to compare"):
        judge(208, 0)
