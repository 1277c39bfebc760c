"""Voltage notations: the same figures in volts and in kilovolts, and what the slash says."""

from __future__ import annotations

import pytest

from wyeline_grammar.notation import NotationError, VoltageForm, parse_voltage


@pytest.mark.parametrize(
    ("volts", "kilovolts", "form"),
    [
        ("4160Y/2400", "4.16Y/2.4 kV", VoltageForm.WYE4),
        ("7200/12470", "7.2/12.47 kV", VoltageForm.WYE4),
        ("4160Y/2400 1ph", "4.16Y/2.4 kV 1ph", VoltageForm.TWO_LEGS_NEUTRAL),
        ("2400/4160 1ph", "2.4/4.16 kV 1ph", VoltageForm.TWO_LEGS_NEUTRAL),
        ("2400/4800", "2.4/4.8 kV", VoltageForm.SPLIT3),
        ("4800/2400 3ph", "4.8/2.4 kV 3ph", VoltageForm.HIGH_LEG4),
        ("4160 3ph", "4.16 kV 3ph", VoltageForm.THREE_WIRE),
        ("3000-3300 3ph", "3-3.3 kV 3ph", VoltageForm.THREE_WIRE),
        ("1500 dc", "1.5 kV dc", VoltageForm.DC2),
    ],
)
def test_kilovolts_are_a_thousand_volts(volts: str, kilovolts: str, form: VoltageForm) -> None:
    plain, scaled = parse_voltage(volts), parse_voltage(kilovolts)
    assert plain.form is scaled.form is form
    figures = [(v.line_v, v.neutral_v or 0.0, v.high_v or 0.0) for v in (plain, scaled)]
    assert figures[0] == pytest.approx(figures[1])


@pytest.mark.parametrize(
    ("text", "offered"),
    [
        ("480Y/240", "480Y/277"),  # 480 / 1.732
        ("240/120", "120/240"),
        ("480/277", "480Y/277"),
        ("600/208", "600 3ph"),
        ("690-400 3ph", "400-690 3ph"),
        ("48Y/27.7 dc", "48 dc"),
    ],
)
def test_what_is_no_system_offers_the_nearest(text: str, offered: str) -> None:
    with pytest.raises(NotationError) as refused:
        parse_voltage(text)
    assert offered in refused.value.suggestions
