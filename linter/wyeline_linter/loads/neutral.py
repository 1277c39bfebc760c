"""What flows in a neutral: by phasors, by the hand formulas of the trade, and at its worst.

The hand formulas hold where all loads have one power factor; the phasor sum always does.
"""

from __future__ import annotations

import math
from typing import NamedTuple

from wyeline_linter.demand_factors import neutral_demand_a
from wyeline_linter.loads.buckets import TO_NEUTRAL, Key, Rows
from wyeline_linter.loads.conductors_of_loads import INDEX, LEG_COUNT
from wyeline_linter.shapes import Shape
from wyeline_linter.systems import NEUTRAL, System
from wyeline_linter.tables import NotListed
from wyeline_linter.tables.basis import Basis


def wye_neutral_a(a: float, b: float, c: float) -> float:
    """Neutral of a four-wire wye from the leg currents of loads to neutral, equal power factor, amperes.

    sqrt(A² + B² + C² - AB - BC - CA): 10, 15 and 20 A give 8.66 A (handbook formula).
    """
    return math.sqrt(max(0.0, a * a + b * b + c * c - a * b - b * c - c * a))


def split_phase_neutral_a(a: float, b: float) -> float:
    """Neutral of 120/240 V three-wire, equal power factor: the difference of the legs, amperes."""
    return abs(a - b)


def two_leg_neutral_a(a: float, b: float) -> float:
    """Neutral of two legs of a wye: as of a wye whose third leg is idle; two equal currents give the same again."""
    return wye_neutral_a(a, b, 0.0)


def hand_neutral_a(system: System, legs_a: tuple[float, ...]) -> float | None:
    """The hand formula for a system's shape, None where the trade has none; ``legs_a`` to neutral on A, B, C."""
    values = [legs_a[INDEX[leg]] for leg in system.legs]
    if system.shape is Shape.WYE4:
        return wye_neutral_a(*values)
    if system.shape is Shape.SPLIT3:
        return split_phase_neutral_a(*values)
    if system.shape is Shape.TWO_LEGS3:
        return two_leg_neutral_a(*values)
    return values[0] if system.shape is Shape.LIVE_NEUTRAL2 else None


def with_triplen_a(fundamental_a: float, triplen_legs_a: tuple[float, ...]) -> float:
    """Neutral with third-harmonic currents of the legs, which add up arithmetically there, amperes rms.

    Three legs of 10 A, 30 % third harmonic each, give 9 A though the fundamentals cancel (IEC 60364-5-52 Annex E).
    """
    return math.hypot(fundamental_a, sum(triplen_legs_a))


class WorstNeutral(NamedTuple):
    """The largest unbalance that a neutral may see, amperes: the loads to neutral of one leg alone, after demand.

    ``reduced_a`` is after the reduction of what exceeds 200 A (NEC 220.61(B)); None where the basis has none.
    """

    leg: str
    unbalance_a: float
    reduced_a: float | None


def worst_neutral(system: System, rows: Rows, factors: dict[Key, float], basis: Basis | None) -> WorstNeutral | None:
    """The worst unbalance (NEC 220.61(A)); None without a neutral. A run of two legs of a wye is never reduced."""
    if not system.has_neutral:
        return None
    legs = [0.0] * LEG_COUNT
    for key, row in rows.items():
        for k in range(LEG_COUNT):
            legs[k] += factors[key] * row[TO_NEUTRAL + k].real
    amps = {leg: legs[INDEX[leg]] / system.distance(leg, NEUTRAL) for leg in system.legs}
    leg = max(amps, key=lambda name: (amps[name], name))
    reduced = None
    if basis is not None and basis.practice == "us" and system.shape is not Shape.TWO_LEGS3:
        found = neutral_demand_a(basis, amps[leg])
        reduced = None if isinstance(found, NotListed) else found.value
    return WorstNeutral(leg, amps[leg], reduced)
