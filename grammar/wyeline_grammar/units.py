"""The units of the language, each standing once.

Case counts (``mA`` is no ``MA``), and a unit is one only behind its number, so ``A``, ``C`` and ``V`` stay free as
names. A stored value is in the *SI unit of its dimension*; temperatures are kept in degrees Celsius, an SI unit that
every drawing uses. The factors are compared with the ``pint`` registry by a test.
"""

from __future__ import annotations

from typing import NamedTuple


class Dimension(NamedTuple):
    """What is measured: its SI unit, and how a drafter calls it, with examples in the spelling of the language."""

    name: str
    si: str
    phrase: str
    examples: tuple[str, ...]


class Unit(NamedTuple):
    """A unit: ``value_si = number * to_si + offset``; ``pint`` is its expression for the pint registry."""

    symbol: str
    dimension: str
    to_si: float
    offset: float
    pint: str
    doc: str


DIMENSIONS: dict[str, Dimension] = {
    d.name: d
    for d in (
        Dimension("current", "A", "a current, such as 225 A or 28 kA", ("225 A", "28 kA", "30 mA")),
        Dimension("voltage", "V", "a voltage, such as 120 V or 10 kV", ("120 V", "10 kV")),
        Dimension("apparent-power", "VA", "an apparent power, such as 180 VA or 75 kVA", ("180 VA", "75 kVA")),
        Dimension("power", "W", "a power, such as 4.5 kW or 7-1/2 hp", ("4.5 kW", "7-1/2 hp")),
        Dimension("reactive-power", "var", "a reactive power, such as 50 kvar", ("50 kvar",)),
        Dimension("energy", "J", "an energy, such as 200 kWh", ("200 kWh",)),
        Dimension("charge", "C", "a battery's charge, such as 600 Ah", ("600 Ah",)),
        Dimension("impedance", "ohm", "a resistance or impedance, such as 0.3 ohm", ("0.3 ohm", "12 mohm")),
        Dimension(
            "impedance-per-length",
            "ohm/m",
            "a resistance per length, such as 0.193 ohm/km or 0.0608 ohm/kft",
            ("0.193 ohm/km", "0.0608 ohm/kft"),
        ),
        Dimension("ratio", "", "a share, such as 4 % or 1.1 pu", ("4 %", "1.1 pu")),
        Dimension("frequency", "Hz", "a frequency, such as 60 Hz", ("50 Hz", "60 Hz")),
        Dimension("length", "m", "a length, such as 0.7 m or 30 ft", ("0.7 m", "30 ft")),
        Dimension("area", "m2", "a floor area, such as 1500 ft2 or 140 m2", ("1500 ft2", "140 m2")),
        Dimension("temperature", "degC", "a temperature, such as 35 degC or 95 degF", ("35 degC", "95 degF")),
        Dimension("temperature-difference", "K", "a temperature rise, such as 115 degC", ("115 degC",)),
        Dimension("time", "s", "a time, such as 0.3 s, 15 min or 3 cycles", ("0.3 s", "15 min", "3 h")),
        Dimension("cycles", "cycles", "a time in cycles, such as 3 cycles", ("3 cycles",)),
        Dimension("thermal-resistivity", "K.m/W", "a soil resistivity, such as 1.5 K.m/W", ("1.5 K.m/W",)),
    )
}
"""Keyed by name. No unit is written for ``temperature-difference``: a key that holds one (``rise 115 degC``) reads the
units of ``temperature`` without their offset. ``cycles`` becomes a time only with the frequency of the system, so it
is a dimension of its own, which every key for a time takes too."""

HORSEPOWER_W = 550 * 0.3048 * 0.45359237 * 9.80665
"""The mechanical horsepower, 550 foot-pounds-force a second: 745.6999 W (what NEMA MG 1 rounds to 746 W)."""

_UNITS = (
    Unit("A", "current", 1.0, 0.0, "ampere", "ampere"),
    Unit("mA", "current", 1e-3, 0.0, "milliampere", "milliampere"),
    Unit("kA", "current", 1e3, 0.0, "kiloampere", "kiloampere"),
    Unit("V", "voltage", 1.0, 0.0, "volt", "volt"),
    Unit("kV", "voltage", 1e3, 0.0, "kilovolt", "kilovolt"),
    Unit("VA", "apparent-power", 1.0, 0.0, "volt_ampere", "volt-ampere"),
    Unit("kVA", "apparent-power", 1e3, 0.0, "kilovolt_ampere", "kilovolt-ampere"),
    Unit("MVA", "apparent-power", 1e6, 0.0, "megavolt_ampere", "megavolt-ampere"),
    Unit("W", "power", 1.0, 0.0, "watt", "watt"),
    Unit("kW", "power", 1e3, 0.0, "kilowatt", "kilowatt"),
    Unit("MW", "power", 1e6, 0.0, "megawatt", "megawatt"),
    Unit("var", "reactive-power", 1.0, 0.0, "volt_ampere", "volt-ampere reactive"),
    Unit("kvar", "reactive-power", 1e3, 0.0, "kilovolt_ampere", "kilovar"),
    Unit("Mvar", "reactive-power", 1e6, 0.0, "megavolt_ampere", "megavar"),
    Unit("hp", "power", HORSEPOWER_W, 0.0, "horsepower", "horsepower (mechanical, 745.7 W at the shaft)"),
    Unit("kWh", "energy", 3.6e6, 0.0, "kilowatt_hour", "kilowatt-hour"),
    Unit("MWh", "energy", 3.6e9, 0.0, "megawatt_hour", "megawatt-hour"),
    Unit("Ah", "charge", 3.6e3, 0.0, "ampere_hour", "ampere-hour"),
    Unit("ohm", "impedance", 1.0, 0.0, "ohm", "ohm"),
    Unit("mohm", "impedance", 1e-3, 0.0, "milliohm", "milliohm"),
    Unit("ohm/km", "impedance-per-length", 1e-3, 0.0, "ohm/kilometer", "ohm per kilometre"),
    Unit("mohm/m", "impedance-per-length", 1e-3, 0.0, "milliohm/meter", "milliohm per metre"),
    Unit("ohm/kft", "impedance-per-length", 1 / 304.8, 0.0, "ohm/kilofoot", "ohm per thousand feet"),
    Unit("pu", "ratio", 1.0, 0.0, "dimensionless", "per unit of the equipment's own rating"),
    Unit("%", "ratio", 1e-2, 0.0, "percent", "percent"),
    Unit("Hz", "frequency", 1.0, 0.0, "hertz", "hertz"),
    Unit("m", "length", 1.0, 0.0, "meter", "metre"),
    Unit("km", "length", 1e3, 0.0, "kilometer", "kilometre"),
    Unit("ft", "length", 0.3048, 0.0, "foot", "foot"),
    Unit("m2", "area", 1.0, 0.0, "meter**2", "square metre"),
    Unit("ft2", "area", 0.3048**2, 0.0, "foot**2", "square foot"),
    Unit("degC", "temperature", 1.0, 0.0, "degree_Celsius", "degree Celsius"),
    Unit("degF", "temperature", 5 / 9, -160 / 9, "degree_Fahrenheit", "degree Fahrenheit"),
    Unit("s", "time", 1.0, 0.0, "second", "second"),
    Unit("ms", "time", 1e-3, 0.0, "millisecond", "millisecond"),
    Unit("min", "time", 60.0, 0.0, "minute", "minute"),
    Unit("h", "time", 3600.0, 0.0, "hour", "hour"),
    Unit("d", "time", 86400.0, 0.0, "day", "day"),
    Unit("cycles", "cycles", 1.0, 0.0, "count", "cycles of the system's frequency"),
    Unit("K.m/W", "thermal-resistivity", 1.0, 0.0, "kelvin*meter/watt", "kelvin metre per watt"),
)

UNITS: dict[str, Unit] = {unit.symbol: unit for unit in _UNITS}
"""Every unit that may follow a number, keyed by its canonical spelling."""

TRADE_SIZE_UNITS: dict[str, Unit] = {
    unit.symbol: unit
    for unit in (
        Unit("inch", "length", 0.0254, 0.0, "inch", "trade size in inches"),
        Unit("mm", "length", 1e-3, 0.0, "millimeter", "trade size in millimetres (metric designator)"),
    )
}
"""Units of raceway trade sizes; a trade size names a product, so it is never converted from one to the other."""

_OHM_SIGNS = ("\u03a9", "\u2126")


def _also_read(symbol: str) -> tuple[str, ...]:
    if symbol.startswith("deg"):
        return (symbol.replace("deg", "\u00b0"),)
    if "ohm" in symbol:
        return tuple(symbol.replace("ohm", sign) for sign in _OHM_SIGNS)
    if symbol in ("m2", "ft2"):
        return (symbol.replace("2", "\u00b2"),)
    if symbol == "K.m/W":
        return ("K\u00b7m/W",)
    return ()


UNIT_SPELLINGS: dict[str, str] = {
    **{symbol: symbol for symbol in UNITS},
    **{other: symbol for symbol in UNITS for other in _also_read(symbol)},
}
"""Every spelling the language reads (``°C``, ``Ω`` among them) to the canonical one that the formatter writes."""
