"""What flows in a neutral: by phasors, by the hand formulas of the trade, and at its worst.

The hand formulas hold where all loads have one power factor; the phasor sum always does.
"""

from __future__ import annotations

import math
from typing import NamedTuple

from wyeline_linter.demand_factors import neutral_demand_a
from wyeline_linter.loads.buckets import TO_NEUTRAL, Key, Rows
from wyeline_linter.loads.conductors_of_loads import INDEX, LEG_COUNT, NEUTRAL_AT, Currents
from wyeline_linter.loads.third_harmonics import ThirdHarmonic, nonlinear
from wyeline_linter.shapes import Shape
from wyeline_linter.systems import NEUTRAL, System
from wyeline_linter.tables import NotListed
from wyeline_linter.tables.basis import Basis


class WorstNeutral(NamedTuple):
    """The largest unbalance that a neutral may see, amperes: the loads to neutral of one leg alone, after demand.

    ``reduced_a`` is after the reduction of what exceeds 200 A (NEC 220.61(B)); None where the basis has none. Of it
    ``nonlinear_a`` is not reduced: nonlinear loads on a three-phase four-wire wye (220.61(C)(2)).
    """

    leg: str
    unbalance_a: float
    reduced_a: float | None
    nonlinear_a: float = 0.0


def worst_neutral(system: System, rows: Rows, factors: dict[Key, float], basis: Basis | None) -> WorstNeutral | None:
    """The worst unbalance (NEC 220.61(A)); None without a neutral. A run of two legs of a wye is never reduced."""
    if not system.has_neutral:
        return None
    legs, waves = [0.0] * LEG_COUNT, [0.0] * LEG_COUNT
    wye = system.shape is Shape.WYE4
    for key, row in rows.items():
        kept = wye and nonlinear(key)
        for k in range(LEG_COUNT):
            va = factors[key] * row[TO_NEUTRAL + k].real
            legs[k] += va
            if kept:
                waves[k] += va
    amps = {leg: legs[INDEX[leg]] / system.distance(leg, NEUTRAL) for leg in system.legs}
    leg = max(amps, key=lambda name: (amps[name], name))
    waves_a = waves[INDEX[leg]] / system.distance(leg, NEUTRAL)
    reduced = None
    if basis is not None and basis.practice == "us" and system.shape is not Shape.TWO_LEGS3:
        found = neutral_demand_a(basis, amps[leg], not_reducible_a=waves_a)
        reduced = None if isinstance(found, NotListed) else found.value
    return WorstNeutral(leg, amps[leg], reduced, waves_a)


def neutral_a(amps: Currents, third: ThirdHarmonic | None) -> float:
    """What flows in a neutral, amperes: root of the squares of what its legs leave over (by phasors) and of the third
    harmonic, and no more than all legs carry together."""
    left = abs(amps[NEUTRAL_AT])
    if third is None or not third.neutral_a:
        return left
    return min(math.hypot(left, third.neutral_a), sum(abs(i) for i in amps[:LEG_COUNT]))
