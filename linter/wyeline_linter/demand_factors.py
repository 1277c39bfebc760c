"""Demand factors of load calculations (NEC Article 220): what part of a connected load counts.

Each function takes the whole connected load of one kind at the place where the demand is asked (a factor is applied
once, never to a load already reduced) and returns the demand with its steps. IEC standards leave demand factors to the
designer, so with an IEC basis every answer is NotListed.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache
from typing import NamedTuple

from .tables import Basis, Looked, NotListed


class Step(NamedTuple):
    """One line of a demand calculation: an amount, what it is multiplied with, what comes out (all of one unit)."""

    amount: float
    factor: Looked[float]
    counted: float


class Demand(NamedTuple):
    """A demand with its steps. `value` is in the unit of the loads given (VA or kW)."""

    value: float
    steps: tuple[Step, ...]
    note: str = ""


def receptacle_demand_va(basis: Basis, connected_va: float) -> Demand | NotListed:
    """Receptacles outside dwellings at 180 VA a strap (NEC 220.47, 220.44 before 2023), VA."""
    tiers = _receptacle_tiers(basis)
    if isinstance(tiers, NotListed):
        return tiers
    steps: list[Step] = []
    for start, end, factor in tiers:
        part = min(connected_va, end) - start
        if part > 0 or not steps:
            steps.append(Step(part, factor, part * factor.value / 100))
    return Demand(sum(step.counted for step in steps), tuple(steps))


@lru_cache(maxsize=64)
def _receptacle_tiers(basis: Basis) -> tuple[tuple[float, float, Looked[float]], ...] | NotListed:
    """Where each tier starts and ends, VA, and its percentage."""
    table = basis.table("receptacle-demand")
    if isinstance(table, NotListed):
        return table
    rows = table.numeric_keys
    ends = [start for start, _ in rows[1:]] + [math.inf]
    tiers: list[tuple[float, float, Looked[float]]] = []
    for (start, key), end in zip(rows, ends, strict=True):
        factor = table.number(key, "percent")
        if isinstance(factor, NotListed):
            return factor
        tiers.append((start, end, factor))
    return tuple(tiers)


def kitchen_demand_va(basis: Basis, loads_va: Sequence[float]) -> Demand | NotListed:
    """Kitchen equipment outside dwellings (NEC 220.56), VA: by number of units, never below the two largest loads."""
    factor = _kitchen_factor(basis, len(loads_va))
    if isinstance(factor, NotListed):
        return factor
    total = sum(loads_va)
    counted = total * factor.value / 100
    two_largest = sum(sorted(loads_va, reverse=True)[:2])
    steps = (Step(total, factor, counted),)
    if counted < two_largest:
        return Demand(two_largest, steps, "not less than the two largest loads")
    return Demand(counted, steps)


def _kitchen_factor(basis: Basis, units: int) -> Looked[float] | NotListed:
    """The factor by number of units; the last row holds for more."""
    table = basis.table("kitchen-demand")
    if isinstance(table, NotListed):
        return table
    last = table.numeric_keys[-1][1]
    return table.number(last if units > float(last[0]) else (str(units),), "percent")


def neutral_demand_a(basis: Basis, unbalance_a: float, *, not_reducible_a: float = 0.0) -> Demand | NotListed:
    """Neutral of a feeder (NEC 220.61(B)), amperes: 70 percent of what exceeds 200 A.

    `not_reducible_a` is the part of nonlinear loads and of circuits from two legs of a wye (220.61(C)); it is counted
    whole and does not use up the 200 A.
    """
    start, percent = basis.constant("neutral-excess-from"), basis.constant("neutral-excess-percent")
    if isinstance(start, NotListed):
        return start
    if isinstance(percent, NotListed):
        return percent
    excess = max(0.0, unbalance_a - not_reducible_a - start.value)
    counted = excess * percent.value / 100
    return Demand(unbalance_a - excess + counted, (Step(excess, percent, counted),))


def fraction_dropped(amps: float) -> float:
    """A load current without its fraction of an ampere, where that is less than half of one (NEC 220.5(B)), A."""
    whole = math.floor(amps)
    return float(whole) if amps - whole < 0.5 else amps
