"""Every unit against the pint registry, a general-purpose reference for units."""

from __future__ import annotations

import pint
import pytest

from wyeline_grammar.units import DIMENSIONS, TRADE_SIZE_UNITS, UNIT_SPELLINGS, UNITS, Unit

REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
PINT_SI = {
    "current": "ampere",
    "voltage": "volt",
    "apparent-power": "volt_ampere",
    "power": "watt",
    "reactive-power": "volt_ampere",
    "energy": "joule",
    "charge": "coulomb",
    "impedance": "ohm",
    "impedance-per-length": "ohm/meter",
    "ratio": "dimensionless",
    "frequency": "hertz",
    "length": "meter",
    "area": "meter**2",
    "temperature": "degree_Celsius",
    "time": "second",
    "cycles": "count",
    "thermal-resistivity": "kelvin*meter/watt",
}
THE_LANGUAGE = (
    "A mA kA V kV VA kVA MVA W kW MW var kvar Mvar hp kWh MWh Ah ohm mohm ohm/km mohm/m ohm/kft pu % Hz "
    "m km ft m2 ft2 degC degF s ms min h d cycles K.m/W"
)


def test_units_are_exactly_those_of_the_language() -> None:
    assert list(UNITS) == THE_LANGUAGE.split()
    assert {unit.dimension for unit in UNITS.values()} == set(DIMENSIONS) - {"temperature-difference"}


@pytest.mark.parametrize("unit", [*UNITS.values(), *TRADE_SIZE_UNITS.values()], ids=lambda u: u.symbol)
def test_factor_and_offset_agree_with_pint(unit: Unit) -> None:
    for number in (0.0, 1.0, 37.5):
        expected = REGISTRY.Quantity(number, unit.pint).to(PINT_SI[unit.dimension]).magnitude
        assert number * unit.to_si + unit.offset == pytest.approx(expected, rel=1e-12, abs=1e-9)


def test_signs_are_read_as_their_units() -> None:
    assert UNIT_SPELLINGS["°C"] == "degC" and UNIT_SPELLINGS["mΩ"] == "mohm" and UNIT_SPELLINGS["\u2126/km"] == "ohm/km"
    assert set(UNIT_SPELLINGS.values()) == set(UNITS)
