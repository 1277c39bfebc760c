"""Numbers with units: from text to plain floats in SI, and back to text a drafter reads.

Reading is a regular expression, a table and a float; the tests compare every unit with the pint library.
"""

from __future__ import annotations

import math
import re
from functools import lru_cache
from typing import Literal, NamedTuple

from wyeline_grammar.units import TRADE_SIZE_UNITS, UNIT_SPELLINGS, UNITS


class QuantityError(ValueError):
    """A text that is no quantity, number, range, list or trade size; the message says what was expected."""


class Quantity(NamedTuple):
    """A number with its unit. ``value_si`` is in the SI unit of ``dimension`` (degC for a temperature); ``unit`` is the
    canonical spelling, ``number`` the figure in that unit, ``text`` what was written."""

    value_si: float
    dimension: str
    unit: str
    number: float
    text: str


class Range(NamedTuple):
    """``0.90..1.10``: lower and upper end, in SI where a unit was written; ``dimension`` is empty for bare numbers."""

    low: float
    high: float
    dimension: str
    text: str


class TradeSize(NamedTuple):
    """A raceway's trade size: ``text`` is canonical (``1-1/4 inch``, ``53 mm``), ``number`` in the unit ``unit``."""

    number: float
    unit: str
    text: str


_BLANKS = "[ \t\u00a0]*"
_FIGURE = r"(?P<figure>(?:\d+-)?\d+/\d+|[+-]?\d+(?:\.\d+)?)"
_QUANTITY = re.compile(rf"{_FIGURE}{_BLANKS}(?P<unit>\S+)")
_TRADE_SIZE = re.compile(rf"{_FIGURE}{_BLANKS}(?P<unit>{'|'.join(TRADE_SIZE_UNITS)})")
_RANGE = re.compile(rf"(?P<low>[+-]?\d+(?:\.\d+)?)\.\.(?P<high>[+-]?\d+(?:\.\d+)?){_BLANKS}(?P<unit>\S+)?")
_FRACTION_PARTS = frozenset({2, 4, 8, 16, 32, 64})


@lru_cache(maxsize=8192)
def parse_number(text: str) -> float:
    """Read ``42``, ``-2.5``, ``1/2`` or ``7-1/2``. Raises QuantityError."""
    text = text.strip()
    if "/" in text:
        whole, _, fraction = text.rpartition("-")
        above, _, below = fraction.partition("/")
        if not (above.isascii() and above.isdigit() and below.isascii() and below.isdigit()):
            raise QuantityError(f"`{text}` is no fraction; write it like 1/2 or 7-1/2")
        if int(below) not in _FRACTION_PARTS:
            raise QuantityError(f"`{text}`: a fraction is in halves, quarters, 8ths, 16ths, 32nds or 64ths")
        if whole and not (whole.isascii() and whole.isdigit()):
            raise QuantityError(f"`{text}` is no fraction; write it like 1/2 or 7-1/2")
        return int(whole or 0) + int(above) / int(below)
    if re.fullmatch(r"[+-]?\d+(?:\.\d+)?", text, re.ASCII) is None:
        raise QuantityError(f"`{text}` is no number; write it like 42 or 0.86")
    return float(text)


@lru_cache(maxsize=8192)
def parse_quantity(text: str) -> Quantity:
    """Read ``225 A``, ``7-1/2 hp``, ``-2.5 %`` or ``95 degF``.

    Raises QuantityError where the number, or the unit behind it, is not one of the language.
    """
    match = _QUANTITY.fullmatch(text.strip())
    if match is None:
        raise QuantityError(f"`{text}` is no number with a unit; write it like 225 A or 7-1/2 hp")
    symbol = UNIT_SPELLINGS.get(match["unit"])
    if symbol is None:
        raise QuantityError(f"`{match['unit']}` in `{text}` is no unit of the language")
    unit, number = UNITS[symbol], parse_number(match["figure"])
    value_si = number * unit.to_si + unit.offset
    if not math.isfinite(value_si):
        raise QuantityError(f"`{text}` is too large to calculate with")
    return Quantity(value_si, unit.dimension, symbol, number, text)


@lru_cache(maxsize=1024)
def parse_range(text: str) -> Range:
    """Read ``0.90..1.10`` or ``-5..5 %``, the lower end first. Raises QuantityError."""
    match = _RANGE.fullmatch(text.strip())
    if match is None:
        raise QuantityError(f"`{text}` is no range; write it like 0.95..1.05")
    low, high, dimension = float(match["low"]), float(match["high"]), ""
    if match["unit"]:
        symbol = UNIT_SPELLINGS.get(match["unit"])
        if symbol is None:
            raise QuantityError(f"`{match['unit']}` in `{text}` is no unit of the language")
        unit = UNITS[symbol]
        low, high, dimension = low * unit.to_si + unit.offset, high * unit.to_si + unit.offset, unit.dimension
    if not low < high:
        raise QuantityError(f"`{text}`: write the lower end first, then the higher")
    return Range(low, high, dimension, text)


@lru_cache(maxsize=4096)
def parse_list(text: str) -> tuple[int, ...]:
    """Read ``2,4,6`` (also a single ``2``). Raises QuantityError."""
    if re.fullmatch(r"\d+(?:,\d+)*", text.strip(), re.ASCII) is None:
        raise QuantityError(f"`{text}` is no list of positions; write it like 2,4,6, without blanks")
    return tuple(int(part) for part in text.strip().split(","))


@lru_cache(maxsize=1024)
def parse_trade_size(text: str) -> TradeSize:
    """Read ``2 inch``, ``1-1/4 inch`` or ``53 mm``. Raises QuantityError."""
    match = _TRADE_SIZE.fullmatch(text.strip())
    if match is None:
        raise QuantityError(f"`{text}` is no trade size; write it like 2 inch, 1-1/4 inch or 53 mm")
    return TradeSize(parse_number(match["figure"]), match["unit"], f"{match['figure']} {match['unit']}")


Practice = Literal["us", "si"]

_STEPS: dict[str, tuple[tuple[float, str], ...]] = {
    "current": ((0.0, "mA"), (0.1, "A"), (5e3, "kA")),
    "voltage": ((0.0, "V"), (1e3, "kV")),
    "apparent-power": ((0.0, "VA"), (1e3, "kVA"), (10e6, "MVA")),
    "power": ((0.0, "W"), (1e3, "kW"), (10e6, "MW")),
    "reactive-power": ((0.0, "var"), (1e3, "kvar"), (10e6, "Mvar")),
    "energy": ((0.0, "kWh"), (3.6e10, "MWh")),
    "charge": ((0.0, "Ah"),),
    "impedance": ((0.0, "mohm"), (0.1, "ohm")),
    "impedance-per-length": ((0.0, "ohm/km"),),
    "ratio": ((0.0, "%"),),
    "frequency": ((0.0, "Hz"),),
    "length": ((0.0, "m"), (10e3, "km")),
    "area": ((0.0, "m2"),),
    "temperature": ((-math.inf, "degC"),),
    "temperature-difference": ((-math.inf, "degC"),),
    "time": ((0.0, "ms"), (0.1, "s"), (120.0, "min"), (7200.0, "h")),
    "cycles": ((0.0, "cycles"),),
    "thermal-resistivity": ((0.0, "K.m/W"),),
}
"""Per dimension: from which size (SI) on a unit reads best."""

_US_STEPS: dict[str, tuple[tuple[float, str], ...]] = {
    "length": ((0.0, "ft"),),
    "area": ((0.0, "ft2"),),
    "impedance-per-length": ((0.0, "ohm/kft"),),
}
"""Where US practice writes another unit. Temperatures stay in degC, as conductor and lug ratings do."""


def unit_for(value_si: float, dimension: str, prefer: Practice = "si") -> str:
    """The unit in which a value of this size is best read. Raises KeyError for an unknown dimension."""
    steps = _US_STEPS.get(dimension, _STEPS[dimension]) if prefer == "us" else _STEPS[dimension]
    if value_si == 0 and len(steps) > 1 and steps[0][1] in ("mA", "mohm", "ms"):
        return steps[1][1]
    chosen = steps[0][1]
    for least, symbol in steps:
        if abs(value_si) >= least * (1 - 1e-12):
            chosen = symbol
    return chosen


def convert(value_si: float, unit: str, *, difference: bool = False) -> float:
    """The figure in ``unit`` of a value in SI; ``difference`` leaves the zero point of a temperature out."""
    to = UNITS[unit]
    return (value_si - (0.0 if difference else to.offset)) / to.to_si


def format_number(number: float, digits: int | None = None) -> str:
    """A figure without exponent and trailing zeros.

    ``digits`` are the significant ones; None keeps three, and four where the first is a 1, so that the last digit is
    never worth more than one per cent of the figure.
    """
    if not math.isfinite(number):
        return "unlimited" if number > 0 else "unknown"
    if number == 0:
        return "0"
    if digits is None:
        digits = 4 if f"{abs(number):e}"[0] == "1" else 3
    from decimal import Decimal  # few figures need it

    return f"{Decimal(f'{number:.{digits - 1}e}').normalize():f}"


def format_quantity(
    value_si: float,
    dimension: str,
    prefer: Practice = "si",
    *,
    unit: str | None = None,
    digits: int | None = None,
) -> str:
    """A value in SI as text in the best unit of the practice (``9.1 kA``, ``75 kVA``, ``18 m``), or in ``unit``.

    Raises KeyError for an unknown dimension or unit.
    """
    unit = unit or unit_for(value_si, dimension, prefer)
    figure = convert(value_si, unit, difference=dimension == "temperature-difference")
    return f"{format_number(figure, digits)} {unit}"
