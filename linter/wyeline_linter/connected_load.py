"""What hangs on a piece of equipment, as stated: the sum of nameplates, and what has none.

Connected load only: no demand factor, no 125 percent, no growth. It serves choices that need a rough size (which legs
are lightest, which transformer is large enough), and says what it does not know.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.model import Body, Value
from wyeline_grammar.units import HORSEPOWER_W
from wyeline_linter.board_positions import positions_of
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.loads.measured import is_measured, measured_leaf, stands
from wyeline_linter.systems import Known, System
from wyeline_linter.verdicts import Feeds

if TYPE_CHECKING:
    from wyeline_linter.tables import Basis
    from wyeline_linter.view import View

_WITHOUT_LOAD = ("spare", "space")
_AMPERES = ("draws", "fla", "mca")


@dataclass(slots=True)
class Connected:
    """Connected load in VA; ``unknown`` names what states no load, ``at_least`` what gave only its shaft power."""

    va: float = 0.0
    unknown: list[str] = field(default_factory=list)
    at_least: list[str] = field(default_factory=list)

    @property
    def some(self) -> bool:
        return self.va > 0.0


def load_below(view: View, name: str) -> Connected:
    """The connected load of a piece of equipment and everything that it supplies."""
    found = Connected()
    seen: set[str] = set()
    pending = [(name, False)]
    while pending:
        current, within = pending.pop()
        equipment = view.equipment(current)
        if equipment is None or current in seen:
            continue
        seen.add(current)
        measured = is_measured(equipment)
        _own(view, equipment, found, within=within, measured=measured)
        pending += [
            (feeder.target.name, (within or measured) and stands(feeder.body.flags))
            for feeder in view.feeders_out_of(current)
            if view.network.supplier.get(feeder.target.name, current) == current and not feeder.normally_open
        ]
    return found


def _more_than(view: View, name: str, most: int) -> bool:
    seen = {name}
    pending = [name]
    while pending and len(seen) <= most:
        new = [f.target.name for f in view.feeders_out_of(pending.pop()) if f.target.name not in seen]
        seen.update(new)
        pending += new
    return len(seen) > most


def _own(view: View, equipment: Equipment, found: Connected, *, within: bool, measured: bool) -> None:
    """Add the loads of a piece of equipment; ``within``: what stands on it is in a measurement further up already."""
    if equipment.kind in LOAD_KINDS and not equipment.arrow and not (within and stands(equipment.body.flags)):
        voltage = view.derivation.stated(equipment.primary)
        volts = voltage.line_v if voltage is not None else None
        legs = voltage.legs if voltage else 3
        _add(equipment.body, equipment.kind, volts, legs, equipment.name, found, view.tables)
    state = view.state(equipment.name)
    system = state.system.system if state is not None and isinstance(state.system, Known) else None
    if system is None and equipment.circuits:
        system = _as_written(view, equipment)
    if measured and not within:
        leaf = measured_leaf(equipment, system or _as_written(view, equipment))
        found.va += abs(leaf.given.va) if leaf.given is not None and leaf.given.va is not None else 0.0
        found.unknown += [equipment.name] if leaf.unknown else []
    for placed in equipment.circuits:
        body = placed.circuit.body
        if (within or measured) and stands(body.flags):
            continue
        poles = body.poles.count if body.poles else max(1, len(placed.circuit.place.positions))
        label = f"{equipment.name} {placed.key}"
        kind = "motor" if "motor" in body.flags else "load"
        _add(body, kind, _volts(system, poles), poles, label, found, view.tables)


def _as_written(view: View, equipment: Equipment) -> System | None:
    from wyeline_linter.systems import source_system

    voltage = view.derivation.stated(equipment.primary)
    return None if voltage is None else source_system(voltage, frequency_hz=60.0)


def _volts(system: System | None, poles: int) -> float | None:
    if system is None or not system.legs:
        return None
    if poles == 1 and system.has_neutral:
        return min(system.distance(leg, "N") for leg in system.legs)
    return system.distance(system.legs[0], system.legs[1]) if len(system.legs) > 1 else None


def _add(
    body: Body,
    kind: str,
    volts: float | None,
    legs: int,
    label: str,
    found: Connected,
    tables: Basis | None = None,
) -> None:
    if any(flag in body.flags for flag in _WITHOUT_LOAD):
        return
    count = body.number("count") or 1.0
    if body.leg_loads:
        found.va += count * sum(_apparent(part.value, body) for part in body.leg_loads)
        return
    power = body.facts.get("power")
    if power is not None and isinstance(power.value.data, float | int):
        va = _apparent(power.value, body)
        if kind in ("motor", "drive") and power.value.dimension == "power":
            efficiency = body.number("eff")
            va /= efficiency or 1.0
            if efficiency is None or body.number("pf") is None:
                amps = _table_a(tables, abs(float(power.value.data)), volts, legs)
                if amps is not None and volts is not None:
                    va = max(va, amps * volts * (math.sqrt(3.0) if legs == 3 else 1.0))
                else:
                    found.at_least.append(label)
        found.va += count * va
        return
    amperes = next((a for a in map(body.number, _AMPERES) if a is not None), None)
    if amperes is not None and volts is not None:
        found.va += count * amperes * volts * (math.sqrt(3.0) if legs == 3 else 1.0)
        return
    found.unknown.append(label)


def _table_a(tables: Basis | None, power_w: float, volts: float | None, legs: int) -> float | None:
    """The current that the code's table gives a motor of this power (NEC 430.248, 430.250); None where it has none."""
    from wyeline_linter.standard_ratings import motor_current_a
    from wyeline_linter.tables import Looked

    if tables is None or volts is None:
        return None
    hp = round(power_w / HORSEPOWER_W * 12) / 12
    if abs(hp * HORSEPOWER_W - power_w) > 2e-3 * power_w:
        return None
    listed = motor_current_a(tables, hp, volts, 3 if legs == 3 else 1)
    return listed.value if isinstance(listed, Looked) else None


def _apparent(value: Value, body: Body) -> float:
    """VA of a power: as written, or W over the power factor where one is stated."""
    if not isinstance(value.data, float | int):
        return 0.0
    amount = abs(float(value.data))
    return amount / (body.number("pf") or 1.0) if value.dimension == "power" else amount


def leg_loads(view: View, board: str, without: Feeder | None = None, most: int | None = None) -> dict[str, float]:
    """Connected VA on each leg of a board: every load in equal shares on the legs it takes.

    The bookkeeping split of a panel schedule; leg currents need phasors. ``without`` leaves one feeder out. Empty where
    nothing is known, or where more than ``most`` pieces hang on the board (for answers between two keystrokes).
    """
    state = view.state(board)
    if state is None or not isinstance(state.system, Known) or (most is not None and _more_than(view, board, most)):
        return {}
    totals = dict.fromkeys(state.system.system.legs, 0.0)
    for feeder in view.feeders_out_of(board):
        judged = view.feeder_state(feeder.key)
        if feeder is without or judged is None or not isinstance(judged.verdict, Feeds):
            continue
        legs = judged.verdict.best.legs
        share = load_below(view, feeder.target.name).va / max(1, len(legs))
        for leg in legs:
            totals[leg] = totals.get(leg, 0.0) + share
    equipment = view.equipment(board)
    if equipment is None or not equipment.circuits:
        return totals
    positions = positions_of(view, equipment)
    for occupant in positions.occupants:
        taken = positions.legs_of(occupant) if occupant.circuit is not None else None
        if not taken:
            continue
        own = Connected()
        _add(occupant.body, "load", _volts(state.system.system, len(taken)), len(taken), "", own)
        for leg in taken:
            totals[leg] = totals.get(leg, 0.0) + own.va / len(taken)
    return totals
