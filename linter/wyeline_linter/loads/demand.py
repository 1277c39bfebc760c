"""What part of the connected load counts at a place: each demand factor once, over all that hangs below it.

By class: sum, then factor, then sum (NEC Article 220); 125 % of continuous loads and a quarter of the largest motor
come on top where the code sizes by them. A factor that is stated stands in place of the table's. IEC standards leave
factors to the designer, and size by the design current as it is.
"""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from wyeline_linter.demand_factors import kitchen_demand_va, receptacle_demand_va
from wyeline_linter.loads.buckets import (
    CODE,
    LARGEST,
    SECOND,
    UNITS,
    VA,
    Key,
    Largest,
    Row,
    Rows,
)
from wyeline_linter.loads.conductors_of_loads import Currents
from wyeline_linter.loads.leaves import MEASURED
from wyeline_linter.tables import NotListed
from wyeline_linter.tables.basis import Basis

MOTORS = frozenset({"motor", "drive"})
NO_BASIS = "the project names no code basis, so nothing says what to size by"


class Amount(NamedTuple):
    """A load at a place: VA in total and by the bookkeeping split on legs A, B, C; phasor amperes on A, B, C and N."""

    va: complex
    split: tuple[complex, ...]
    amps: Currents


class Counted(NamedTuple):
    """Connected load, demand, and what the code sizes by (None without a basis), with the factor of each kind."""

    connected: Amount
    demand: Amount
    sizing: Amount | None
    factors: dict[Key, float]


_TABLES_OF = frozenset({"receptacle", "kitchen"})
"""Classes whose demand the tables tell."""
_PLAIN = frozenset({1.0})


def factors_of(rows: Rows, basis: Basis | None) -> dict[Key, float]:
    """The demand factor of every kind of load at a place: stated, from the table, or 1."""
    factors = {key: 1.0 if key.factor is None else key.factor for key in rows}
    if basis is None or basis.practice != "us":
        return factors
    for category in _TABLES_OF.intersection([key.category for key in rows]):
        keys = [key for key in rows if key.category == category and key.factor is None]
        if keys:
            factor = _table_factor(basis, category, [rows[key] for key in keys])
            for key in keys:
                factors[key] = factor
    return factors


def _table_factor(basis: Basis, category: str, rows: list[Row]) -> float:
    """Demand over connected load from the table of a class; 1 where it has none."""
    connected = abs(sum(row[VA] for row in rows))
    if connected == 0.0:
        return 1.0
    if category == "receptacle":
        found = receptacle_demand_va(basis, connected)
    else:
        found = kitchen_demand_va(basis, kitchen_units(rows))
    return 1.0 if isinstance(found, NotListed) else min(1.0, found.value / connected)


def kitchen_units(rows: list[Row]) -> list[float]:
    """VA of each unit as far as the sum keeps them: the two largest, the rest in equal parts."""
    count = int(sum(row[UNITS].real for row in rows))
    total = abs(sum(row[VA] for row in rows))
    ranked = sorted((row[k].real for row in rows for k in (LARGEST, SECOND)), reverse=True)[: min(2, count)]
    rest = count - len(ranked)
    left = max(0.0, total - sum(ranked))
    return [*ranked, *([left / rest] * rest if rest else [])]


@lru_cache(maxsize=8)
def sizing_factors(basis: Basis) -> tuple[float, float]:
    """How much a continuous load counts, and how much is added of the largest motor, in sizing."""
    if basis.practice != "us":
        return 1.0, 0.0
    continuous, motor = basis.constant("continuous-percent"), basis.constant("motor-conductor-percent")
    return (
        1.25 if isinstance(continuous, NotListed) else continuous.value / 100.0,
        0.25 if isinstance(motor, NotListed) else motor.value / 100.0 - 1.0,
    )


def sizing_weight(key: Key, factor: float, basis: Basis) -> float:
    """What a kind of load is multiplied with in sizing: motors have their rule, a nameplate's mca holds it already."""
    return factor * added_to(key, basis)


def added_to(key: Key, basis: Basis) -> float:
    """The same without its demand factor: 125 % of what runs for hours, and of what was measured (US practice)."""
    if key.category == MEASURED:
        return measured_share(basis)
    return sizing_factors(basis)[0] if key.continuous and key.category not in MOTORS and not key.nameplate else 1.0


@lru_cache(maxsize=8)
def measured_share(basis: Basis) -> float:
    """How much the highest demand that was measured counts in sizing (NEC 220.87(2))."""
    return basis.value_of("existing-demand-percent") / 100.0 if basis.practice == "us" else 1.0


def count(rows: Rows, largest: Largest | None, basis: Basis | None) -> Counted:
    """Connected, demand and sizing load of the rows at a place."""
    rows = ordered(rows)
    factors = factors_of(rows, basis)
    connected = _sum(rows)
    demand = connected if set(factors.values()) <= _PLAIN else _sum(rows, factors)
    if basis is None:
        return Counted(connected, demand, None, factors)
    if basis.practice != "us":
        return Counted(connected, demand, demand, factors)
    quarter = sizing_factors(basis)[1]
    weights = {key: sizing_weight(key, factors[key], basis) for key in rows}
    sizing = _sum(rows, weights, code=True)
    if largest is not None and quarter:
        amps = tuple([i + quarter * m for i, m in zip(sizing.amps, largest.amps, strict=True)])
        extra = quarter * largest.va
        share = leg_shares(largest.amps)
        split = tuple([s + extra * part for s, part in zip(sizing.split, share, strict=True)])
        sizing = Amount(sizing.va + extra, split, amps)  # type: ignore[arg-type]
    # Code figures are added without the angles of their power factors, so those of a leg or of the neutral may fall
    # below what flows there, and never count less.
    pairs = zip(sizing.amps, demand.amps, strict=True)
    flows: Currents = tuple([one if abs(one) >= abs(other) else other for one, other in pairs])  # type: ignore[assignment]
    return Counted(connected, demand, Amount(sizing.va, sizing.split, flows), factors)


def ordered(rows: Rows) -> Rows:
    """The rows in the one order of adding up, whatever the history of edits was: sums then agree to the last digit."""
    return {key: rows[key] for key in sorted(rows, key=_order)} if len(rows) > 1 else rows


def _order(key: Key) -> tuple[str, bool, bool, float, bool, bool, bool, float]:
    factor, third = key.factor or 0.0, -1.0 if key.third is None else key.third
    return key.category, key.continuous, key.factor is None, factor, key.nameplate, key.dwelling, key.together, third


def leg_shares(amps: Currents) -> tuple[float, ...]:
    """How the largest motor is booked on legs A, B, C: by its amperes."""
    sizes = [abs(i) for i in amps[:3]]
    total = sum(sizes) or 1.0
    return tuple([size / total for size in sizes])


def _sum(rows: Rows, weights: dict[Key, float] | None = None, *, code: bool = False) -> Amount:
    # VA, its split on three legs, and the amperes on four conductors stand side by side in a row, twice (`buckets`).
    first = CODE if code else VA
    last = first + 8
    va = sa = sb = sc = ia = ib = ic = neutral = 0j
    for key, row in rows.items():
        weight = 1.0 if weights is None else weights[key]
        p, q, r, s, t, u, v, w = row[first:last]
        if weight == 1.0:
            va, sa, sb, sc = va + p, sa + q, sb + r, sc + s
            ia, ib, ic, neutral = ia + t, ib + u, ic + v, neutral + w
        else:
            va, sa, sb, sc = va + weight * p, sa + weight * q, sb + weight * r, sc + weight * s
            ia, ib, ic, neutral = ia + weight * t, ib + weight * u, ic + weight * v, neutral + weight * w
    return Amount(va, (sa, sb, sc), (ia, ib, ic, neutral))
