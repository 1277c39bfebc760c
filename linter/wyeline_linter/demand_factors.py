"""Demand factors of load calculations (NEC Article 220): what part of a connected load counts.

Each function takes the whole connected load of one kind at the place where the demand is asked (a factor is applied
once, never to a load already reduced) and returns the demand with its steps. IEC standards leave demand factors to the
designer, so with an IEC basis every answer is NotListed.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache
from typing import Literal, NamedTuple

from .tables import Basis, Key, Looked, NotListed

Occupancy = Literal["dwelling", "hotel", "warehouse", "all others"]


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


def lighting_demand_va(basis: Basis, occupancy: Occupancy, connected_va: float) -> Demand | NotListed:
    """General lighting by occupancy (NEC Table 220.45, 220.42 before 2023), VA.

    A dwelling counts its small-appliance and laundry circuits in (220.52). 9,000 VA of a dwelling count as 5,100.
    """
    return _tiers(basis, "lighting-demand", (occupancy,), connected_va)


def receptacle_demand_va(basis: Basis, connected_va: float) -> Demand | NotListed:
    """Receptacles outside dwellings at 180 VA a strap (NEC 220.47, 220.44 before 2023), VA."""
    return _tiers(basis, "receptacle-demand", (), connected_va)


def _tiers(basis: Basis, name: str, prefix: Key, connected: float) -> Demand | NotListed:
    tiers = _rows_of_tiers(basis, name, prefix)
    if isinstance(tiers, NotListed):
        return tiers
    steps: list[Step] = []
    for start, end, factor in tiers:
        part = min(connected, end) - start
        if part > 0 or not steps:
            steps.append(Step(part, factor, part * factor.value / 100))
    return Demand(sum(step.counted for step in steps), tuple(steps))


@lru_cache(maxsize=64)
def _rows_of_tiers(basis: Basis, name: str, prefix: Key) -> tuple[tuple[float, float, Looked[float]], ...] | NotListed:
    """Where each tier starts and ends, and its percentage."""
    table = basis.table(name)
    if isinstance(table, NotListed):
        return table
    rows = [(start, key) for start, key in table.numeric_keys if key[: len(prefix)] == prefix]
    if not rows:
        return NotListed(f"{table.cite} has no row for {' '.join(prefix)}", table.cite)
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
    factor = _by_count(basis, "kitchen-demand", len(loads_va), last_holds=True)
    if isinstance(factor, NotListed):
        return factor
    total = sum(loads_va)
    counted = total * factor.value / 100
    two_largest = sum(sorted(loads_va, reverse=True)[:2])
    steps = (Step(total, factor, counted),)
    if counted < two_largest:
        return Demand(two_largest, steps, "not less than the two largest loads")
    return Demand(counted, steps)


def dryer_demand_va(basis: Basis, loads_va: Sequence[float]) -> Demand | NotListed:
    """Household clothes dryers (NEC 220.54), VA: each at least 5,000 VA, then by number."""
    factor = _by_count(basis, "dryer-demand", len(loads_va), last_holds=False)
    least = basis.constant("dryer-least")
    if isinstance(factor, NotListed):
        return factor
    if isinstance(least, NotListed):
        return least
    total = sum(max(load, least.value) for load in loads_va)
    counted = total * factor.value / 100
    return Demand(counted, (Step(total, factor, counted),))


def _by_count(basis: Basis, name: str, count: int, *, last_holds: bool) -> Looked[float] | NotListed:
    table = basis.table(name)
    if isinstance(table, NotListed):
        return table
    last = table.numeric_keys[-1][1]
    if last_holds and count > float(last[0]):
        return table.number(last, "percent")
    return table.number((str(count),), "percent")


def range_demand_kw(basis: Basis, ratings_kw: Sequence[float]) -> Demand | NotListed:
    """Household ranges over 8.75 kW (NEC Table 220.55 column C and notes 1, 2), kW.

    Ranges below 12 kW count as 12 in the average; for each kW, or major fraction, of the average above 12 the demand
    rises 5 percent. 24 ranges of 16 kW give 46.8 kW. Smaller ranges belong to columns that are not held.
    """
    names = ("range-over-from", "range-over-percent", "range-over-least")
    values: list[Looked[float]] = []
    for name in names:
        value = basis.constant(name)
        if isinstance(value, NotListed):
            return value
        values.append(value)
    plain_kw, rise, least_kw = values
    if not ratings_kw:
        return NotListed("no range is given")
    if min(ratings_kw) <= least_kw.value:
        return NotListed(
            f"a range of {min(ratings_kw):g} kW belongs to columns A and B, which are not held", rise.table
        )
    column_c = _column_c(basis, len(ratings_kw))
    if isinstance(column_c, NotListed):
        return column_c
    average_kw = sum(max(kw, plain_kw.value) for kw in ratings_kw) / len(ratings_kw)
    above_kw = math.floor(average_kw - plain_kw.value + 0.5)
    steps = [Step(float(len(ratings_kw)), column_c, column_c.value)]
    if above_kw <= 0:
        return Demand(column_c.value, tuple(steps))
    extra = column_c.value * above_kw * rise.value / 100
    steps.append(Step(column_c.value * above_kw, rise, extra))
    return Demand(column_c.value + extra, tuple(steps), f"average {average_kw:.4g} kW, {above_kw} kW above")


def _column_c(basis: Basis, count: int) -> Looked[float] | NotListed:
    table = basis.table("range-demand")
    if isinstance(table, NotListed):
        return table
    if count <= table.numeric_keys[-1][0]:
        return table.number((str(count),), "demand_kw")
    base, each = basis.constant("range-many-base"), basis.constant("range-many-each")
    if isinstance(base, NotListed):
        return base
    if isinstance(each, NotListed):
        return each
    row = f"{count} ranges: {base.value:g} kW + {each.value:g} kW each"
    return Looked(base.value + each.value * count, table.cite, row, each.status, each.note)


def range_demand_on_wye_kw(basis: Basis, ratings_kw: Sequence[float]) -> Demand | NotListed:
    """Like single-phase ranges spread over the legs of a three-phase feeder, kW (NEC 220.55; Annex D5(a)).

    Column C for twice the largest number between any two legs, half of that on each of the three legs.
    """
    if not ratings_kw:
        return NotListed("no range is given")
    between_two = -(-len(ratings_kw) // 3)
    largest = sorted(ratings_kw, reverse=True)
    demand = range_demand_kw(basis, [largest[i % len(largest)] for i in range(2 * between_two)])
    if isinstance(demand, NotListed):
        return demand
    note = f"for twice the {between_two} between two legs, times 3/2"
    return Demand(demand.value * 1.5, demand.steps, note)


def fixed_appliance_demand_va(basis: Basis, loads_va: Sequence[float]) -> Demand | NotListed:
    """Fixed appliances of a dwelling (NEC 220.53), VA: 75 percent with four or more.

    Ranges, dryers, space heating and air conditioning are not among them.
    """
    count, percent = basis.constant("fixed-appliance-count"), basis.constant("fixed-appliance-percent")
    if isinstance(count, NotListed):
        return count
    if isinstance(percent, NotListed):
        return percent
    total = sum(loads_va)
    if len(loads_va) < count.value:
        return Demand(total, (), f"fewer than {count.value:g} appliances")
    counted = total * percent.value / 100
    return Demand(counted, (Step(total, percent, counted),))


def optional_dwelling_va(
    basis: Basis, general_va: float, *, heating_va: float, heating_units: int, cooling_va: float
) -> Demand | NotListed:
    """Optional calculation of one dwelling (NEC 220.82), VA.

    `general_va` is lighting, circuits and appliances at nameplate. Of electric space heating (`heating_units`
    separately controlled) after its factor, and of cooling, the larger counts.
    """
    first, rest = basis.constant("optional-dwelling-first"), basis.constant("optional-dwelling-rest")
    heat = basis.constant("optional-heat-many-percent" if heating_units >= 4 else "optional-heat-few-percent")
    if isinstance(first, NotListed):
        return first
    if isinstance(rest, NotListed):
        return rest
    if isinstance(heat, NotListed):
        return heat
    over = max(0.0, general_va - first.value)
    general = min(general_va, first.value) + over * rest.value / 100
    heated = heating_va * heat.value / 100
    steps = [Step(over, rest, over * rest.value / 100)]
    if heated >= cooling_va:
        steps.append(Step(heating_va, heat, heated))
        return Demand(general + heated, tuple(steps), "heating counts, it is not below cooling")
    return Demand(general + cooling_va, tuple(steps), "cooling counts, it is larger than heating")


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


def neutral_of_ranges_and_dryers_va(basis: Basis, demand_va: float) -> Demand | NotListed:
    """Neutral load of household ranges and dryers (NEC 220.61(B)): 70 percent of their demand, VA."""
    percent = basis.constant("neutral-excess-percent")
    if isinstance(percent, NotListed):
        return percent
    counted = demand_va * percent.value / 100
    return Demand(counted, (Step(demand_va, percent, counted),))


def sizing_load(basis: Basis, *, continuous: float, noncontinuous: float) -> Demand | NotListed:
    """Load for sizing devices and conductors: 125 percent of the continuous part and the rest (NEC 215.2, 215.3).

    In the unit given (VA or A).
    """
    percent = basis.constant("continuous-percent")
    if isinstance(percent, NotListed):
        return percent
    counted = continuous * percent.value / 100
    return Demand(counted + noncontinuous, (Step(continuous, percent, counted),))
