"""The standard shapes of voltage systems, recognised by the distances between phasors alone."""

from __future__ import annotations

import enum
import math

SQRT3 = math.sqrt(3.0)
_SAME = 0.01
"""Two nominal voltages within 1 % are the same nominal: 277 and 480/1.732 are, 208 and 240 are not."""


class Shape(enum.Enum):
    """The standard shapes, recognised by distances alone. The value is the trade's name."""

    WYE4 = "four-wire wye"
    WYE3 = "three-wire wye, its star point earthed and no neutral run"
    DELTA3 = "three-wire delta"
    HIGH_LEG4 = "four-wire high-leg delta"
    SPLIT3 = "single-phase three-wire"
    TWO_LEGS3 = "two legs of a wye and its neutral"
    HIGH_LEG3 = "two legs of a high-leg delta, one of them the high leg, and its neutral"
    TWO_LIVE2 = "two live wires"
    LIVE_NEUTRAL2 = "a live wire and a neutral"
    MIDPOINT2 = "two live wires, the middle of their winding earthed"
    CORNER2 = "two wires, one of them an earthed leg"
    DC2 = "two-wire direct current"
    DC3 = "three-wire direct current"
    OTHER = "a shape that has no name in the trade"


def near(volts: float, wanted: float) -> bool:
    """Whether a voltage is the wanted nominal, within 1 %."""
    return abs(volts - wanted) <= _SAME * wanted


def recognise(
    legs: tuple[complex, ...], neutral: complex | None, earth: complex | None, *, corner: bool = False
) -> Shape:
    """The shape of an alternating-current system from its potentials; ``corner`` says that a leg here is earthed."""
    if len(legs) == 3:
        return _three_legs(legs, neutral, earth)
    if len(legs) == 2:
        return _two_legs(legs, neutral, earth, corner)
    return Shape.LIVE_NEUTRAL2 if len(legs) == 1 and neutral is not None else Shape.OTHER


def _three_legs(legs: tuple[complex, ...], neutral: complex | None, earth: complex | None) -> Shape:
    a, b, c = legs
    line = abs(a - b)
    if not (near(abs(b - c), line) and near(abs(c - a), line)):
        return Shape.OTHER
    if neutral is not None:
        to_neutral = sorted(abs(leg - neutral) for leg in legs)
        if all(near(volts, line / SQRT3) for volts in to_neutral):
            return Shape.WYE4
        return Shape.HIGH_LEG4 if all(near(volts, line / 2) for volts in to_neutral[:2]) else Shape.OTHER
    if earth is not None and all(near(abs(leg - earth), line / SQRT3) for leg in legs):
        return Shape.WYE3
    return Shape.DELTA3


def _two_legs(legs: tuple[complex, ...], neutral: complex | None, earth: complex | None, corner: bool) -> Shape:
    line = abs(legs[0] - legs[1])
    if neutral is not None:
        low, high = sorted(abs(leg - neutral) for leg in legs)
        if near(low, line / 2) and near(high, line / 2):
            return Shape.SPLIT3
        if near(low, line / SQRT3) and near(high, line / SQRT3):
            return Shape.TWO_LEGS3
        return Shape.HIGH_LEG3 if near(low, line / 2) and near(high, line * SQRT3 / 2) else Shape.OTHER
    if corner:
        return Shape.CORNER2
    if earth is not None and all(near(abs(leg - earth), line / 2) for leg in legs):
        return Shape.MIDPOINT2
    return Shape.TWO_LIVE2
