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
    return _by_tiers(basis, "receptacle-demand", connected_va)


def dwelling_lighting_demand_va(basis: Basis, general_va: float) -> Demand | NotListed:
    """General lighting, small appliances and laundry of a dwelling (NEC Table 220.45, 220.42 before 2023), VA."""
    return _by_tiers(basis, "dwelling-lighting-demand", general_va)


def _by_tiers(basis: Basis, table: str, connected_va: float) -> Demand | NotListed:
    tiers = _tiers(basis, table)
    if isinstance(tiers, NotListed):
        return tiers
    steps: list[Step] = []
    for start, end, factor in tiers:
        part = min(connected_va, end) - start
        if part > 0 or not steps:
            steps.append(Step(part, factor, part * factor.value / 100))
    return Demand(sum(step.counted for step in steps), tuple(steps))


@lru_cache(maxsize=64)
def _tiers(basis: Basis, name: str) -> tuple[tuple[float, float, Looked[float]], ...] | NotListed:
    """Where each tier starts and ends, VA, and its percentage."""
    table = basis.table(name)
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


_KW = 1e3
_COLUMN_B_FROM_VA, _COLUMN_C_FROM_VA, _COOKING_TO_VA = 3.5 * _KW, 8.75 * _KW, 27 * _KW
_COLUMN_C_TO_KW = 12.0
_COOKING_FROM_VA = 1.75 * _KW


def cooking_demand_va(basis: Basis, ratings_va: Sequence[float]) -> Demand | NotListed:
    """Household cooking appliances of a dwelling by their nameplates (NEC Table 220.55 with its notes 1 to 3), VA.

    The lesser of column C for all, and of columns A and B for those that they are made for with C for the rest; never
    more than the nameplates. What is rated 1.75 kW or less, or above 27 kW, counts whole.
    """
    table = basis.table("cooking-demand")
    rise = basis.constant("cooking-rise-percent")
    if isinstance(table, NotListed):
        return table
    if isinstance(rise, NotListed):
        return rise
    whole = [va for va in ratings_va if not _COOKING_FROM_VA < va <= _COOKING_TO_VA]
    small = [va for va in ratings_va if _COOKING_FROM_VA < va < _COLUMN_B_FROM_VA]
    middle = [va for va in ratings_va if _COLUMN_B_FROM_VA <= va <= _COLUMN_C_FROM_VA]
    large = [va for va in ratings_va if _COLUMN_C_FROM_VA < va <= _COOKING_TO_VA]
    if max(map(len, (small, middle, large)), default=0) > len(table.numeric_keys) or (
        len(small) + len(middle) + len(large) > len(table.numeric_keys)
    ):
        return NotListed(f"{table.cite} is held for up to {len(table.numeric_keys)} appliances", table.cite)
    apart: list[Step] = []
    for column, group in (("a", small), ("b", middle)):
        if group:
            percent = table.number((str(len(group)),), column)
            if isinstance(percent, NotListed):
                return percent
            apart.append(Step(sum(group), percent, sum(group) * percent.value / 100))
    ways: list[tuple[list[Step], list[float]]] = [(apart, large), ([], [*small, *middle, *large])]
    answers: list[tuple[float, list[Step]]] = []
    for steps, group in ways:
        found = list(steps)
        if group:
            kw = table.number((str(len(group)),), "c")
            if isinstance(kw, NotListed):
                return kw
            found.append(Step(sum(group), kw, min(sum(group), kw.value * _KW * _above_column_c(group, rise.value))))
        answers.append((sum(step.counted for step in found), found))
    value, steps = min(answers, key=lambda answer: answer[0])
    note = f"{sum(whole):g} VA of appliances outside the table counts whole" if whole else ""
    return Demand(value + sum(whole), tuple(steps), note)


def _above_column_c(ratings_va: Sequence[float], rise_percent: float) -> float:
    """How much column C rises for an average rating above 12 kW; a smaller one counts as 12 kW (notes 1 and 2)."""
    mean_kw = sum(max(va / _KW, _COLUMN_C_TO_KW) for va in ratings_va) / len(ratings_va)
    return 1.0 + rise_percent / 100 * math.floor(mean_kw - _COLUMN_C_TO_KW + 0.5)


def dryer_demand_va(basis: Basis, ratings_va: Sequence[float]) -> Demand | NotListed:
    """Clothes dryers of a dwelling (NEC 220.54), VA: each with 5000 VA or its nameplate, by their number."""
    table, least = basis.table("dryer-demand"), basis.constant("dryer-least")
    if isinstance(table, NotListed):
        return table
    if isinstance(least, NotListed):
        return least
    if len(ratings_va) > len(table.numeric_keys):
        return NotListed(f"{table.cite} is held for up to {len(table.numeric_keys)} dryers", table.cite)
    percent = table.number((str(len(ratings_va)),), "percent")
    if isinstance(percent, NotListed):
        return percent
    total = sum(max(va, least.value) for va in ratings_va)
    return Demand(total * percent.value / 100, (Step(total, percent, total * percent.value / 100),))


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
