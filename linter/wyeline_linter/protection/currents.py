"""The current of a line: what flows in it by design, and what the code sizes wires and devices by."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_linter.loads.buckets import AMPS, CODE_AMPS, UNITS, Rows
from wyeline_linter.loads.conductors_of_loads import NEUTRAL_AT
from wyeline_linter.loads.demand import MOTORS, Amount, sizing_factors
from wyeline_linter.loads.neutral import worst_neutral
from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.network import two_sided
from wyeline_linter.protection.lines import Line
from wyeline_linter.systems import System
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.analysis import View

NONLINEAR = frozenset({"it"})
"""Classes whose currents are mostly harmonic (common practice, no source)."""
CONVERTER_CONTINUOUS = 1.25
"""Inverter output counts as continuous (NEC 690.8(B), 705.28, from memory)."""


class Current(NamedTuple):
    """Amperes on the leg that carries most.

    ``design_a`` flows at full demand, ``sizing_a`` is what the code sizes by (continuous load at 125 %, a quarter of the
    largest motor); None where a load is unknown (``unknown``). ``motors`` counts motors, drives and units with a
    nameplate ampacity, ``others`` the rest; ``nonlinear`` tells whether most of it is electronic, None where nothing is
    known. ``neutral_a`` is the worst the neutral may carry, after what the code lets off.
    """

    design_a: float | None
    sizing_a: float | None
    unknown: tuple[str, ...] = ()
    motors: int = 0
    others: int = 0
    nonlinear: bool | None = None
    neutral_a: float | None = None


NOTHING = Current(0.0, 0.0)


def current_of(view: View, line: Line) -> Current:
    """What flows in a line."""
    return _of_circuit(view, line) if line.circuit is not None else _of_feeder(view, line)


def _of_feeder(view: View, line: Line) -> Current:
    target = line.target
    if target is None:
        return NOTHING
    return feeder_current(view, target, line.system)


def feeder_current(view: View, target: Equipment, system: System) -> Current:
    """What a feeder to ``target`` carries on a system's legs."""
    per_ampere = volt_amperes_per_ampere(system)
    if target.kind == "capacitor":
        kvar = target.body.number("power")
        amps = kvar / per_ampere if kvar and per_ampere else None
        return Current(amps, amps, () if amps is not None else (f"`{target.name}` states no kvar",))
    if target.kind == "inverter" and not target.arrow:
        amps = inverter_a(target, per_ampere)
        if amps is None:
            return Current(None, None, (f"`{target.name}` states no rating",))
        return Current(amps, amps * CONVERTER_CONTINUOUS)
    book = view.loads
    node = book.nodes.get(target.name)
    if node is None or target.kind == "spd":
        return NOTHING
    if two_sided(target):
        counted, rows, unknown = book.counted_above(target.name), node.up.rows, node.up
        neutral = None
    else:
        counted, unknown = book.counted(target.name), node.below
        rows = book.rows(target.name)[0]
        neutral = worst_neutral(system, rows, counted.factors, book.basis) if system.has_neutral and rows else None
    why = tuple(unknown.unknown)
    code = tuple(unknown.unknown_code)
    motors, others = _count(rows)
    worst = None
    if neutral is not None and not why:
        worst = neutral.unbalance_a if neutral.reduced_a is None else neutral.reduced_a
    return Current(
        None if why else _most(counted.demand),
        None if why or code or counted.sizing is None else _most(counted.sizing),
        why or code,
        motors,
        others,
        _nonlinear(rows),
        worst,
    )


def inverter_a(inverter: Equipment, per_ampere: float) -> float | None:
    """The rated output current of an inverter, amperes."""
    rating, power = inverter.body.number("rating"), inverter.body.number("power")
    if rating is not None:
        return rating
    return power / per_ampere if power is not None and per_ampere else None


def _of_circuit(view: View, line: Line) -> Current:
    node = view.loads.nodes.get(line.source.name)
    leaf = next((x for x in node.leaves if x.place == line.position), None) if node is not None else None
    if leaf is None:
        return NOTHING
    if leaf.row is None:
        return Current(None, None, leaf.unknown)
    design = max(abs(leaf.row[AMPS + k]) for k in range(3))
    motor = leaf.key.category in MOTORS or leaf.key.nameplate
    nonlinear = leaf.key.category in NONLINEAR
    units = leaf.given.units if leaf.given is not None else 1
    counts = (units, 0) if motor else (0, units)
    neutral = abs(leaf.row[AMPS + NEUTRAL_AT])
    if leaf.unknown_code:
        return Current(design, None, leaf.unknown_code, *counts, nonlinear, neutral)
    amps = max(abs(leaf.row[CODE_AMPS + k]) for k in range(3)) if line.us else design
    if line.us and leaf.key.continuous and not motor:
        amps *= sizing_factors(line.tables)[0]
    if line.us and motor and not leaf.key.nameplate:
        amps *= 1 + sizing_factors(line.tables)[1] / units
    return Current(design, amps, (), *counts, nonlinear, neutral)


def _most(amount: Amount) -> float:
    return max(abs(i) for i in amount.amps[:3])


def _count(rows: Rows) -> tuple[int, int]:
    motors = others = 0
    for key, row in rows.items():
        units = round(row[UNITS].real)
        if key.category in MOTORS or key.nameplate:
            motors += units
        else:
            others += units
    return motors, others


def _nonlinear(rows: Rows) -> bool | None:
    total = sum(abs(row[1]) for row in rows.values())
    if not total:
        return None
    return sum(abs(row[1]) for key, row in rows.items() if key.category in NONLINEAR) > total / 2


def motor_table_a(view: View, name: str, hp: float, volts: float, phases: int) -> float | None:
    """Table full-load current of a motor (NEC 430.6(A)), amperes; None where the table does not list it."""
    from wyeline_linter.standard_ratings import motor_current_a

    tables = view.tables
    if tables is None:
        return None
    found = motor_current_a(tables, round(hp * 12) / 12 if hp < 1 else round(hp, 2), volts, 3 if phases == 3 else 1)
    return None if isinstance(found, NotListed) else found.value


def line_voltage(system: System) -> float:
    """Nominal volts between two legs, or leg to neutral on one leg; 0 where neither is there."""
    legs = system.legs
    if len(legs) > 1:
        return system.nominal_v(legs[0], legs[1])
    return system.nominal_v(legs[0], "N") if legs and system.has_neutral else 0.0


def rated_a(kva: float, system: System) -> float | None:
    """Rated current of a source on its system, amperes."""
    per_ampere = volt_amperes_per_ampere(system)
    return kva / per_ampere if per_ampere else None


def sqrt3(legs: int) -> float:
    """The factor between power, line voltage and current."""
    return math.sqrt(3.0) if legs == 3 else 1.0
