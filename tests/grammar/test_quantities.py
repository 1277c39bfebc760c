"""Reading and writing quantities; the units themselves are compared with pint in ``test_units.py``."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar.quantities import (
    QuantityError,
    TradeSize,
    format_number,
    format_quantity,
    parse_list,
    parse_number,
    parse_quantity,
    parse_range,
    parse_trade_size,
)
from wyeline_grammar.units import UNITS


@pytest.mark.parametrize(
    ("text", "value_si", "dimension"),
    [
        ("225 A", 225, "current"),
        ("37.5kVA", 37_500, "apparent-power"),
        ("7-1/2 hp", 7.5 * 745.699872, "power"),  # 550 ft.lbf/s, NIST SP 811 appendix B
        ("1/2 hp", 372.849936, "power"),
        ("-2.5 %", -0.025, "ratio"),
        ("95 degF", 35, "temperature"),
        ("-40 °F", -40, "temperature"),  # where both scales meet
        ("0.2 Ω/km", 0.0002, "impedance-per-length"),
        ("140\u00a0ft", 42.672, "length"),
        ("3 cycles", 3, "cycles"),
    ],
)
def test_quantities_are_read(text: str, value_si: float, dimension: str) -> None:
    quantity = parse_quantity(text)
    assert quantity.value_si == pytest.approx(value_si, rel=1e-9) and quantity.dimension == dimension


@pytest.mark.parametrize("text", ["225", "A", "225 KVA", "7-1/3 hp", ".86 A", "1e5 A", "9" * 400 + " A", "5 A A", ""])
def test_what_is_no_quantity_says_so(text: str) -> None:
    with pytest.raises(QuantityError):
        parse_quantity(text)


def test_the_other_forms() -> None:
    assert parse_number("1-1/4") == 1.25 and parse_number("+0.5") == 0.5
    assert parse_range("-5..5 %")[:3] == (-0.05, 0.05, "ratio") and parse_range("0.9..1.1").dimension == ""
    assert parse_list("2,4,6") == (2, 4, 6)
    assert parse_trade_size("1-1/4  inch") == TradeSize(1.25, "inch", "1-1/4 inch")
    for parse, text in ((parse_range, "1.1..0.9"), (parse_list, "2, 4"), (parse_trade_size, "2 in")):
        with pytest.raises(QuantityError):
            parse(text)


@pytest.mark.parametrize(
    ("value_si", "dimension", "prefer", "text"),
    [
        (9100, "current", "si", "9.1 kA"),
        (1200, "current", "us", "1200 A"),
        (0.03, "current", "si", "30 mA"),
        (75_000, "apparent-power", "us", "75 kVA"),
        (18, "length", "si", "18 m"),
        (42.672, "length", "us", "140 ft"),
        (0.0283, "ratio", "si", "2.83 %"),
        (900, "time", "si", "15 min"),
        (0.3, "time", "si", "0.3 s"),
        (0, "current", "si", "0 A"),
        (480, "voltage", "us", "480 V"),
        (13_800, "voltage", "us", "13.8 kV"),
        (277.128, "voltage", "us", "277 V"),
        (720e6, "energy", "si", "200 kWh"),
        (1.9e-4, "impedance-per-length", "us", "0.0579 ohm/kft"),
        (115, "temperature-difference", "si", "115 degC"),
    ],
)
def test_quantities_are_written_as_a_drafter_would(value_si: float, dimension: str, prefer: str, text: str) -> None:
    assert format_quantity(value_si, dimension, prefer) == text  # type: ignore[arg-type]


def test_unlimited_and_unknown_figures_are_words() -> None:
    assert format_number(math.inf) == "unlimited" and format_number(math.nan) == "unknown"


@given(
    st.floats(1e-3, 1e7, allow_nan=False),
    st.sampled_from(sorted(u.symbol for u in UNITS.values() if u.dimension not in ("cycles", "temperature"))),
)
@settings(max_examples=80, deadline=None)
def test_written_and_read_again_is_the_same_within_its_digits(number: float, unit: str) -> None:
    quantity = parse_quantity(f"{number:.9f} {unit}")
    again = parse_quantity(format_quantity(quantity.value_si, quantity.dimension, digits=9))
    assert again.value_si == pytest.approx(quantity.value_si, rel=1e-7)
    assert again.dimension == quantity.dimension
