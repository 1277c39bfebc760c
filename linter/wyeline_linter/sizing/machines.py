"""Transformers and generators sized from what hangs on them."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_linter.findings import Edit, append_phrase
from wyeline_linter.grounding_conductors import bonding_jumper, electrode_conductor
from wyeline_linter.loads.demand import MOTORS
from wyeline_linter.loads.leaf_loads import leaf_loads
from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.loads.winding_loads import winding_loads
from wyeline_linter.protection.lines import feeder_line
from wyeline_linter.sizing.plain import tables_for
from wyeline_linter.standard_ratings import transformer_at_least, transformer_device_limit
from wyeline_linter.system_words import conductors_text
from wyeline_linter.tables import Basis, NotListed

if TYPE_CHECKING:
    from wyeline_linter.network import SwitchState
    from wyeline_linter.view import View

USUAL_DIP = 0.20
"""Starting dip of a generator taken as the limit where none is written (common practice 15 to 30 %, no source)."""
LEAST_SHARE = 0.30
"""Share of its rating below which a diesel set should not run for long (common practice, no source)."""
RECTIFIER_MARGIN = 1.15
"""Least factor on rectifier load (UPS, drives, chargers) for its harmonics (common practice 1.15 to 1.6, no source)."""


class Machine(NamedTuple):
    """A transformer or generator sized: the reason of every figure, and an edit where it has no rating.

    ``need_va`` is what it must carry (None where a load is unknown), ``va`` the usual size that does, ``stated_va`` the
    rating that is written.
    """

    subject: str
    need_va: float | None
    va: float | None
    stated_va: float | None
    reasons: tuple[str, ...]
    unknown: tuple[str, ...]
    edits: tuple[Edit, ...] = ()


def size_transformer(view: View, equipment: Equipment) -> Machine:
    """The usual size that carries the worst leg of the demand and the reserve, and what must go with it."""
    tables = tables_for(view)[0]
    book = view.loads
    node, system = book.nodes[equipment.name], book.system(equipment.name)
    stated = equipment.body.number("power")
    unknown = node.below.unknown
    per_ampere = volt_amperes_per_ampere(system)
    reasons: list[str] = []
    if unknown or system is None or not per_ampere:
        return Machine(equipment.name, None, None, stated, (), unknown or ("its voltage is not settled",))
    demand = book.counted(equipment.name).demand
    worst = max(abs(i) for i in demand.amps[:3])
    need = per_ampere * worst
    reasons.append(f"{need / 1e3:.4g} kVA: {worst:.4g} A on the fullest leg, as if every leg carried it")
    windings = winding_loads(book, equipment.name)
    if windings and stated:
        fullest = max(windings, key=lambda w: w.share)
        by_winding = stated * fullest.share
        if by_winding > need * 1.001:
            need = by_winding
            ends = conductors_text((fullest.start, fullest.end), book.practice, "-")
            reasons.append(f"{need / 1e3:.4g} kVA: {fullest.part} {ends} carries most")
    reserve = view.model.project.number("reserve") or equipment.body.number("reserve") or 0.0
    if reserve:
        need *= 1 + reserve
        reasons.append(f"{need / 1e3:.4g} kVA with {100 * reserve:g} % reserve")
    if need <= 0:
        return Machine(equipment.name, None, None, stated, (), ("nothing behind it states a load",))
    phases = 3 if len(system.legs) == 3 else 1
    chosen = transformer_at_least(tables, need / 1e3, 3 if phases == 3 else 1)
    if isinstance(chosen, NotListed):
        return Machine(equipment.name, need, None, stated, tuple(reasons), (chosen.reason,))
    va = chosen.value * 1e3
    reasons.append(f"{chosen.value:g} kVA: next usual size ({chosen.table})")
    shown_va = stated or va
    reasons += _devices(tables, view, equipment, shown_va, per_ampere, phases)
    reasons += _earthing(tables, view, equipment)
    reasons += _regulation(equipment, shown_va, demand.va)
    edits: tuple[Edit, ...] = ()
    if stated is None:
        edits = (append_phrase(equipment.block, equipment.statement.head.line, f"{chosen.value:g} kVA"),)
    return Machine(equipment.name, need, va, stated, tuple(reasons), (), edits)


def _devices(tables: Basis, view: View, equipment: Equipment, va: float, per_ampere: float, phases: int) -> list[str]:
    stated = view.derivation.stated(equipment.primary)
    found = []
    if stated is not None and stated.line_v < 1000:
        primary = va / stated.line_v / (math.sqrt(3.0) if phases == 3 or stated.legs == 3 else 1.0)
        for protected, words in ((False, "alone"), (True, "with a secondary device")):
            limit = transformer_device_limit(tables, primary, side="primary", secondary_protected=protected)
            if not isinstance(limit, NotListed):
                found.append(
                    f"primary {primary:.4g} A: device up to {limit.largest_a:g} A {words} ({limit.rating.table})"
                )
    rated = va / per_ampere
    limit = transformer_device_limit(tables, rated, side="secondary", secondary_protected=True)
    if not isinstance(limit, NotListed):
        found.append(f"secondary {rated:.4g} A: device up to {limit.largest_a:g} A")
    return found


def _earthing(tables: Basis, view: View, equipment: Equipment) -> list[str]:
    """Bonding jumper and electrode conductor of the system that it makes, by the wires behind it."""
    for feeder in view.feeders_out_of(equipment.name):
        line = feeder_line(view, feeder)
        if line is None or tables.practice != "us":
            continue
        wiring = line.wiring
        jumper = bonding_jumper(tables, wiring.size, wiring.sets, wiring.metal, "Cu")
        electrode = electrode_conductor(tables, wiring.size, wiring.sets, wiring.metal, "Cu")
        found = []
        if not isinstance(jumper, NotListed):
            found.append(f"system bonding jumper {jumper.value} Cu ({jumper.table})")
        if not isinstance(electrode, NotListed):
            found.append(f"electrode conductor {electrode.value} Cu ({electrode.table})")
        return found
    return []


def _regulation(equipment: Equipment, va: float, load: complex) -> list[str]:
    """Voltage drop at the demand load: R % cos + X % sin, times the share of its rating."""
    z, x_r = equipment.body.number("z"), equipment.body.number("x/r")
    if z is None or x_r is None or not abs(load):
        return []
    r = z / math.hypot(1.0, x_r)
    cos = load.real / abs(load)
    sin = math.sqrt(max(0.0, 1 - cos * cos))
    share = abs(load) / va
    return [f"loses {100 * share * (r * cos + r * x_r * sin):.2g} % at the demand load"]


NOTHING_HANGS = ("nothing hangs on it in any switch state",)


def size_generator(view: View, equipment: Equipment, state: SwitchState | None = None) -> Machine:
    """What a set must deliver: running load, its worst leg, rectifier margin, and the start of the largest motor.

    ``state`` is the switch state in which it carries its load (None: the one judged).
    """
    book = view.loads if state is None else view.loads_in(state)
    name = equipment.name
    node, system = book.nodes.get(name), book.system(name)
    fact = equipment.body.facts.get("power")
    pf = equipment.body.number("pf") or 0.8
    stated = None
    if fact is not None:
        stated = fact.number / pf if fact.value.dimension == "power" else fact.number
    per_ampere = volt_amperes_per_ampere(system)
    if node is None or node.below.unknown or node.below.empty or not per_ampere:
        why = node.below.unknown if node is not None and node.below.unknown else NOTHING_HANGS
        return Machine(name, None, None, stated, (), tuple(why))
    counted = book.counted(name)
    load = counted.demand
    running = max(abs(load.va), load.va.real / pf)
    steps = [
        (running, f"{running / 1e3:.4g} kVA: {abs(load.va) / 1e3:.4g} kVA, {load.va.real / 1e3:.4g} kW at pf {pf:g}")
    ]
    worst = per_ampere * max(abs(i) for i in load.amps[:3])
    steps.append((worst, f"{worst / 1e3:.4g} kVA: the fullest leg, as if every leg carried it"))
    rows = book.rows(name)[0]
    rectified = sum(abs(row[1]) * counted.factors[key] for key, row in rows.items() if key.category in _RECTIFIERS)
    if rectified:
        more = running + (RECTIFIER_MARGIN - 1) * rectified
        steps.append(
            (more, f"{more / 1e3:.4g} kVA: {RECTIFIER_MARGIN:g} times the {rectified / 1e3:.4g} kVA of rectifiers")
        )
    start = _start(view, equipment, per_ampere, running, state)
    if start is not None:
        steps.append(start)
    need = max(va for va, _ in steps)
    reasons = [text for _, text in steps]
    reasons.append(f"{need / 1e3:.4g} kVA at the least: the next size of a maker")
    if stated and abs(load.va) < LEAST_SHARE * stated:
        reasons.append(f"runs at {100 * abs(load.va) / stated:.0f} %, below {100 * LEAST_SHARE:g} % for long")
    return Machine(name, need, need, stated, tuple(reasons), ())


_RECTIFIERS = frozenset({"ups", "drive", "charger", "ev", "it"})


def _start(
    view: View, equipment: Equipment, per_ampere: float, running: float, state: SwitchState | None
) -> tuple[float, str] | None:
    """kVA for the dip of the largest motor start: dip = X'd S / (S_g + X'd S), S the locked-rotor kVA."""
    transient = equipment.body.number("transient")
    found, _ = leaf_loads(view, state)
    network = view.network if state is None else view.network_in(state)
    starts = [
        (x.locked_rotor_a, x.element, x.place)
        for x in found
        if x.locked_rotor_a is not None and x.category in MOTORS and network.root.get(x.element) == equipment.name
    ]
    if transient is None or not starts:
        return None
    amps, element, place = max(starts, key=lambda s: (s[0], s[1]))
    start = amps * per_ampere
    limit = equipment.body.number("dip") or USUAL_DIP
    need = transient * start * (1 / limit - 1)
    note = "" if equipment.body.number("dip") is not None else " (taken, none is written)"
    where = f"{element} {place}".strip()
    return need, (
        f"{need / 1e3:.4g} kVA: `{where}` starts with {start / 1e3:.4g} kVA, dip {100 * limit:g} %{note}, "
        f"running {running / 1e3:.4g} kVA"
    )
