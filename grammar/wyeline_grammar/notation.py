"""Trade notation: what voltages, conductors, devices and legs are when written the way a drawing writes them."""

from __future__ import annotations

import enum
import math
import re
from dataclasses import dataclass
from functools import lru_cache


class VoltageForm(enum.Enum):
    """Which set of conductors a voltage notation stands for."""

    WYE4 = "three live wires and a neutral (wye)"
    THREE_WIRE = "three live wires"
    SPLIT3 = "two live wires and a neutral midway between them"
    HIGH_LEG4 = "three live wires and a neutral midway between two of them (high-leg delta)"
    TWO_LEGS_NEUTRAL = "two legs of a wye and its neutral"
    TWO_WIRE = "two wires"
    DC2 = "two-wire direct current"


@dataclass(frozen=True, slots=True)
class Voltage:
    """A voltage notation.

    ``line_v`` is line to line in volts (the only voltage of the two-wire and DC forms; the lower end of a nameplate
    band), ``neutral_v`` leg to neutral as written or None, ``high_v`` the upper end of a nameplate band or None.
    ``text`` is the canonical spelling.
    """

    form: VoltageForm
    line_v: float
    neutral_v: float | None
    high_v: float | None
    text: str

    def __hash__(self) -> int:
        return hash(self.text)  # the hash of a text is kept with it; these four stand in many keys

    @property
    def legs(self) -> int:
        """How many live wires it has."""
        return _LEGS[self.form]

    @property
    def has_neutral(self) -> bool:
        return self.form in _WITH_NEUTRAL


_LEGS = {
    VoltageForm.WYE4: 3,
    VoltageForm.THREE_WIRE: 3,
    VoltageForm.SPLIT3: 2,
    VoltageForm.HIGH_LEG4: 3,
    VoltageForm.TWO_LEGS_NEUTRAL: 2,
    VoltageForm.TWO_WIRE: 2,
    VoltageForm.DC2: 2,
}
_WITH_NEUTRAL = frozenset({VoltageForm.WYE4, VoltageForm.SPLIT3, VoltageForm.HIGH_LEG4, VoltageForm.TWO_LEGS_NEUTRAL})


class NotationError(ValueError):
    """A notation that reads as none, or as more than one, system.

    ``suggestions`` are the spellings it may mean.
    """

    def __init__(self, message: str, suggestions: tuple[str, ...] = ()) -> None:
        super().__init__(message)
        self.suggestions = suggestions


_VOLTAGE = re.compile(
    r"(?P<first>\d+(?:\.\d+)?)(?:(?P<wye>Y/|/|-)(?P<second>\d+(?:\.\d+)?))?[ \t\u00a0]*(?P<unit>kV|V)?"
    r"[ \t\u00a0]*(?P<phases>1ph|3ph|dc)?"
)


_HIGHEST_V = 1_000_000.0
"""No system on earth works at more (common practice, no source); a longer figure is a slip."""


def _number(value: float) -> str:
    """A figure as people write it: every digit, no exponent."""
    text = f"{value:g}"
    if "e" not in text and float(text) == value:
        return text
    from decimal import Decimal  # few figures need it

    return f"{Decimal(repr(value)):f}"


@lru_cache(maxsize=4096)
def parse_voltage(text: str) -> Voltage:
    """Read a voltage notation such as ``480Y/277``, ``120/240``, ``13.8 kV 3ph`` or ``208-230 1ph``.

    Raises NotationError where word order or a missing ``1ph``/``3ph`` leaves two systems possible (common practice;
    notation of ANSI C84.1 and, with the low value first, of IEC 60038).
    """
    match = _VOLTAGE.fullmatch(text.strip())
    if match is None:
        raise NotationError(f"`{text}` is no voltage notation", ("480Y/277", "480 3ph", "120/240", "240 1ph", "48 dc"))
    scale = 1000.0 if match["unit"] == "kV" else 1.0
    for figure in (match["first"], match["second"] or "1"):
        if not 0 < float(figure) * scale <= _HIGHEST_V:
            raise NotationError(f"`{text}`: a voltage lies above zero and below {_HIGHEST_V / 1e3:g} kV")
    unit = " kV" if match["unit"] == "kV" else ""
    first, phases = float(match["first"]), match["phases"]
    second = float(match["second"]) if match["second"] else None
    if second is None:
        if phases is None:
            raise NotationError(
                f"`{text}` does not say how many wires", tuple(f"{_number(first)}{unit} {p}" for p in ("3ph", "1ph"))
            )
        form = {"3ph": VoltageForm.THREE_WIRE, "1ph": VoltageForm.TWO_WIRE, "dc": VoltageForm.DC2}[phases]
        return Voltage(form, first * scale, None, None, f"{_number(first)}{unit} {phases}")
    if match["wye"] == "-":
        return _band(text, first, second, scale, unit, phases)
    if match["wye"] == "Y/":
        return _wye(text, first, second, scale, unit, phases)
    return _slashed(text, first, second, scale, unit, phases)


def _band(text: str, low: float, high: float, scale: float, unit: str, phases: str | None) -> Voltage:
    if phases is None:
        raise NotationError(f"`{text}` does not say how many wires", (f"{text} 3ph", f"{text} 1ph"))
    if high <= low:
        raise NotationError(f"`{text}`: write the lower voltage first", (f"{_number(high)}-{_number(low)} {phases}",))
    form = {"3ph": VoltageForm.THREE_WIRE, "1ph": VoltageForm.TWO_WIRE, "dc": VoltageForm.DC2}[phases]
    return Voltage(form, low * scale, None, high * scale, f"{_number(low)}-{_number(high)}{unit} {phases}")


def _is_wye(line: float, neutral: float) -> bool:
    """Nominal pairs are rounded (12.47/7.2, 220/127, 208/120), so the ratio is met within 1.5 %."""
    return abs(line / neutral / math.sqrt(3) - 1) <= 0.015


def _wye(text: str, line: float, neutral: float, scale: float, unit: str, phases: str | None) -> Voltage:
    if phases == "dc":
        raise NotationError(f"`{text}`: direct current has no wye", (f"{_number(line)} dc",))
    if not _is_wye(line, neutral):
        right = round(line / math.sqrt(3), 0 if unit == "" else 1)
        raise NotationError(
            f"`{text}`: in a wye the voltage to neutral is the line voltage / 1.73, here {_number(right)}",
            (f"{_number(line)}Y/{_number(right)}{unit}",),
        )
    form = VoltageForm.TWO_LEGS_NEUTRAL if phases == "1ph" else VoltageForm.WYE4
    canonical = f"{_number(line)}Y/{_number(neutral)}{unit}" + (" 1ph" if phases == "1ph" else "")
    return Voltage(form, line * scale, neutral * scale, None, canonical)


def _slashed(text: str, first: float, second: float, scale: float, unit: str, phases: str | None) -> Voltage:
    if phases == "dc":
        raise NotationError(f"`{text}`: two-wire direct current has one voltage", (f"{_number(second)} dc",))
    low, high = min(first, second), max(first, second)
    split = abs(high / low - 2) <= 0.01
    low_first = first < second
    if split and low_first and phases != "3ph":
        return Voltage(VoltageForm.SPLIT3, high * scale, low * scale, None, f"{_number(low)}/{_number(high)}{unit}")
    if split and not low_first and phases == "3ph":
        canonical = f"{_number(high)}/{_number(low)}{unit} 3ph"
        return Voltage(VoltageForm.HIGH_LEG4, high * scale, low * scale, None, canonical)
    if split:
        raise NotationError(
            f"`{text}` may mean two systems: {_number(low)}/{_number(high)} is one winding with a centre tap, "
            f"{_number(high)}/{_number(low)} 3ph a delta with one winding tapped",
            (f"{_number(low)}/{_number(high)}{unit}", f"{_number(high)}/{_number(low)}{unit} 3ph"),
        )
    if _is_wye(high, low):
        spelled = f"{_number(high)}Y/{_number(low)}{unit}"
        if low_first and phases is None:
            return Voltage(VoltageForm.WYE4, high * scale, low * scale, None, spelled)
        if low_first and phases == "1ph":
            return Voltage(VoltageForm.TWO_LEGS_NEUTRAL, high * scale, low * scale, None, f"{spelled} 1ph")
        raise NotationError(f"`{text}`: write the wye as `{spelled}`", (spelled, f"{spelled} 1ph"))
    raise NotationError(
        f"`{text}`: {_number(high)} and {_number(low)} belong to no one system",
        (f"{_number(high)} 3ph", f"{_number(high)} 1ph"),
    )


@dataclass(frozen=True, slots=True)
class ConductorSize:
    """A conductor size: ``text`` is canonical (``4/0`` for AWG, ``250 kcmil``, ``95 mm2``), ``system`` is ``awg``,
    ``kcmil`` or ``mm2``."""

    text: str
    system: str

    def __hash__(self) -> int:
        return hash(self.text)


@dataclass(frozen=True, slots=True)
class Run:
    """A run of equal conductors: ``3#4/0`` is three of 4/0; ``5G16mm2`` a cable of five, one of them protective."""

    count: int
    size: ConductorSize
    with_protective: bool = False

    def __hash__(self) -> int:
        return hash((self.count, self.size.text))


_SIZE = re.compile(r"#(?P<gauge>\d+(?:/0)?)|(?P<n>\d+(?:\.\d+)?)[ \t\u00a0]*(?P<unit>kcmil|mm2|mm²)")
_RUN = re.compile(
    r"(?P<count>\d+)(?:#(?P<gauge>\d+(?:/0)?)|(?P<mark>[x×G])[ \t\u00a0]*"
    r"(?P<n>\d+(?:\.\d+)?)[ \t\u00a0]*(?P<unit>kcmil|mm2|mm²))"
)


@lru_cache(maxsize=4096)
def parse_size(text: str) -> ConductorSize:
    """Read ``#2/0``, ``400 kcmil`` or ``95 mm2``. Raises NotationError."""
    match = _SIZE.fullmatch(text.strip())
    if match is None:
        raise NotationError(f"`{text}` is no conductor size", ("#8", "#4/0", "250 kcmil", "16 mm2"))
    return _size(match)


def _size(match: re.Match[str]) -> ConductorSize:
    if match["gauge"]:
        return ConductorSize(match["gauge"], "awg")
    unit = "kcmil" if match["unit"] == "kcmil" else "mm2"
    return ConductorSize(f"{_number(float(match['n']))} {unit}", unit)


@lru_cache(maxsize=4096)
def parse_run(text: str) -> Run:
    """Read ``3#4/0``, ``3x400kcmil``, ``4x185mm2`` or ``5G16mm2``. Raises NotationError."""
    match = _RUN.fullmatch(text.strip())
    if match is None:
        raise NotationError(f"`{text}` is no run of conductors", ("3#8", "3x250kcmil", "4x95mm2", "5G16mm2"))
    return Run(int(match["count"]), _size(match), match["mark"] == "G")


def parse_legs(text: str) -> tuple[str, ...]:
    """Read ``[AB]``, ``[L1 N]`` into ("A", "B"), ("A", "N"): L1, L2, L3 are A, B, C."""
    found = re.findall(r"L[123]|[ABCN]", text)
    return tuple({"L1": "A", "L2": "B", "L3": "C"}.get(leg, leg) for leg in found)


@dataclass(frozen=True, slots=True)
class Poles:
    """``3p+N``: three poles and a switched neutral."""

    count: int
    switched_neutral: bool = False

    def __hash__(self) -> int:
        return self.count


@lru_cache(maxsize=64)
def parse_poles(text: str) -> Poles:
    """Read ``1p`` to ``4p``, with ``+N`` for a switched neutral."""
    return Poles(int(text[0]), text.endswith("+N"))
