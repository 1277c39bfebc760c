"""The current of a line: what flows in it by design, and what the code sizes wires and devices by."""

from __future__ import annotations

from operator import is_
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.loads.buckets import AMPS, CODE_AMPS, UNITS, VA, Rows, amps_of
from wyeline_linter.loads.demand import MOTORS, Amount, Counted, sizing_factors
from wyeline_linter.loads.leaves import Leaf
from wyeline_linter.loads.neutral import neutral_a, worst_neutral
from wyeline_linter.loads.rollup import LoadBook, Node, volt_amperes_per_ampere
from wyeline_linter.loads.third_harmonics import ThirdHarmonic, nonlinear, third_harmonic
from wyeline_linter.network import two_sided
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.laying import from_wye
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.wiring import Wiring
from wyeline_linter.systems import System

if TYPE_CHECKING:
    from wyeline_linter.view import View

CONVERTER_CONTINUOUS = 1.25
"""Inverter output counts as continuous (NEC 690.8(B), 705.28, from memory). Under `basis iec` its rated current counts
as it is: IEC 60364-7-712 enlarges what comes from the modules, on the other side (from memory)."""


class Current(NamedTuple):
    """Amperes on the leg that carries most.

    ``design_a`` flows at full demand, ``sizing_a`` is what the code sizes by (continuous load at 125 %, a quarter of
    the largest motor); None where a load is unknown (``unknown``). ``motors`` counts motors, drives and units with a
    nameplate ampacity, ``others`` the rest; ``nonlinear`` tells whether most of it is, None where nothing is known.
    ``neutral_a`` is the worst the neutral may carry, after what the code lets off, with the third harmonic ``third``
    that comes together in it (None where no load states one).
    """

    design_a: float | None
    sizing_a: float | None
    unknown: tuple[str, ...] = ()
    motors: int = 0
    others: int = 0
    nonlinear: bool | None = None
    neutral_a: float | None = None
    third: ThirdHarmonic | None = None


NOTHING = Current(0.0, 0.0)


def current_of(view: View, line: Line) -> Current:
    """What flows in a line."""
    return _of_circuit(view, line) if line.circuit is not None else _of_feeder(view, line)


def _of_feeder(view: View, line: Line) -> Current:
    # Along a line that a following inverter delivers by flows what it gives, not what the board draws.
    target = line.source if line.feeder is not None and view.derivation.delivers_into(line.feeder) else line.target
    if target is None:
        return NOTHING
    return feeder_current(view, target, line.system)


def feeder_current(view: View, target: Equipment, system: System) -> Current:
    """What a feeder to ``target`` carries on a system's legs."""
    settled = view.settled_currents.get(target.name)
    if settled is not None and settled[0] is target and settled[1] is system:
        return settled[2]
    current = _feeder_current(view, target, system)
    view.settled_currents[target.name] = target, system, current
    return current


def _feeder_current(view: View, target: Equipment, system: System) -> Current:
    if target.kind == "capacitor":
        per_ampere = volt_amperes_per_ampere(system)
        kvar = target.body.number("power")
        amps = kvar / per_ampere if kvar and per_ampere else None
        return Current(amps, amps, () if amps is not None else (f"`{target.name}` states no kvar",))
    if target.kind == "inverter" and not target.arrow:
        amps = inverter_a(target, volt_amperes_per_ampere(system))
        if amps is None:
            return Current(None, None, (f"`{target.name}` states no rating",))
        return Current(amps, amps * (1.0 if view.basis == "iec" else CONVERTER_CONTINUOUS))
    book = view.loads
    node = book.nodes.get(target.name)
    if node is None or target.kind == "spd":
        return NOTHING
    counted = book.counted_above(target.name) if two_sided(target) else book.counted(target.name)
    deps = (target, system, node, counted)
    kept = view.currents.get((target.name, ""))
    if kept is not None and all(map(is_, kept[0], deps)):
        return kept[1]
    made = _fed_current(book, target, system, node, counted)
    view.currents[target.name, ""] = (deps, made)
    return made


def _fed_current(book: LoadBook, target: Equipment, system: System, node: Node, counted: Counted) -> Current:
    if two_sided(target):
        rows, unknown = node.up.rows, node.up
        neutral = None
    else:
        unknown = node.below
        rows = book.rows(target.name)[0]
        neutral = worst_neutral(system, rows, counted.factors, book.basis) if system.has_neutral and rows else None
    why = tuple(unknown.unknown)
    code = tuple(unknown.unknown_code)
    motors, others = _count(rows)
    worst = third = None
    if not why:
        third = third_harmonic(system, rows, counted.factors)
        if neutral is not None:
            worst = neutral.unbalance_a if neutral.reduced_a is None else neutral.reduced_a
        if third is not None and third.neutral_a:
            worst = max(worst or 0.0, neutral_a(counted.demand.amps, third))
    design = _most(counted.demand)
    return Current(
        None if why else design,
        # Code figures are added without their angles: on one leg they may fall below what flows, and never count less.
        None if why or code or counted.sizing is None else max(_most(counted.sizing), design),
        why or code,
        motors,
        others,
        _nonlinear(rows),
        worst,
        third,
    )


def inverter_a(inverter: Equipment, per_ampere: float) -> float | None:
    """The rated output current of an inverter, amperes."""
    rating, power = inverter.body.number("rating"), inverter.body.number("power")
    if rating is not None:
        return rating
    if power is None or not per_ampere:
        return None
    pf = inverter.body.number("pf") if inverter.body.facts["power"].value.dimension == "power" else None
    return power / (pf or 1.0) / per_ampere


def _of_circuit(view: View, line: Line) -> Current:
    name, book = line.source.name, view.loads
    leaf = book.leaf(name, line.position) if name in book.nodes else None
    if leaf is None:
        return NOTHING
    kept = view.currents.get((name, line.position))
    if kept is not None and kept[0][0] is line and kept[0][1] is leaf:
        return kept[1]
    made = _leaf_current(line, leaf)
    view.currents[name, line.position] = ((line, leaf), made)
    return made


def _leaf_current(line: Line, leaf: Leaf) -> Current:
    if leaf.row is None:
        return Current(None, None, leaf.unknown)
    design = max(abs(leaf.row[AMPS + k]) for k in range(3))
    motor = leaf.key.category in MOTORS or leaf.key.nameplate
    mostly = nonlinear(leaf.key)
    units = leaf.given.units if leaf.given is not None else 1
    counts = (units, 0) if motor else (0, units)
    third = third_harmonic(line.system, {leaf.key: leaf.row}, {leaf.key: 1.0})
    neutral = neutral_a(amps_of(leaf.row), third)
    if leaf.unknown_code:
        return Current(design, None, leaf.unknown_code, *counts, mostly, neutral, third)
    amps = max(abs(leaf.row[CODE_AMPS + k]) for k in range(3)) if line.us else design
    if line.us and leaf.key.continuous and not motor:
        amps *= sizing_factors(line.tables)[0]
    if line.us and motor and not leaf.key.nameplate:
        amps *= 1 + sizing_factors(line.tables)[1] / units
    return Current(design, amps, (), *counts, mostly, neutral, third)


def _most(amount: Amount) -> float:
    a, b, c, _ = amount.amps
    return max(abs(a), abs(b), abs(c))


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
    total = waves = 0.0
    for key, row in rows.items():
        size = abs(row[VA])
        total += size
        if nonlinear(key):
            waves += size
    return waves > total / 2 if total else None


def line_voltage(system: System) -> float:
    """Nominal volts between two legs, or leg to neutral on one leg; 0 where neither is there."""
    legs = system.legs
    if len(legs) > 1:
        return system.nominal_v(legs[0], legs[1])
    return system.nominal_v(legs[0], "N") if legs and system.has_neutral else 0.0


def rated_a(va: float, system: System) -> float | None:
    """Rated current of a source of ``va`` on its system, amperes."""
    per_ampere = volt_amperes_per_ampere(system)
    return va / per_ampere if per_ampere else None


def laid_with(line: Line, current: Current, loaded: int | None = None) -> Laid | None:
    """How a line lies, the neutral of mostly nonlinear load counted (US) and what its third harmonic takes off (IEC);
    ``loaded`` wires (US) or circuits (IEC) share its raceway."""
    laid, wiring = line.laid, line.wiring
    if laid is None:
        return None
    if line.us and current.nonlinear and wiring.legs == 3 and wiring.neutral is not None and from_wye(line.system):
        laid = laid._replace(loaded=laid.loaded + 1)
    elif not line.us and current.third is not None and wiring.legs == 3 and wiring.neutral is not None:
        laid = laid._replace(third_percent=_counted_percent(current.third, wiring))
    if loaded is None:
        return laid
    return laid._replace(beside=max(0, loaded - wiring.sets * (laid.loaded if line.us else 1)))


_BY_NEUTRAL_PERCENT = 45.0


def _counted_percent(third: ThirdHarmonic, wiring: Wiring) -> float:
    """The share by which Table E.52.1 is read. Its last row leaves out the factor because legs as large as a neutral
    that decides their size are not full; beside a larger neutral they may be (common practice, no source)."""
    percent = 100 * third.part
    larger = wiring.neutral is not None and area_mm2(wiring.neutral) > area_mm2(wiring.size) * 1.001
    return min(percent, _BY_NEUTRAL_PERCENT) if larger else percent
