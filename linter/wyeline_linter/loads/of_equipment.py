"""The load of a piece of equipment that is one: a motor, load, drive, charger or capacitor with a name of its own."""

from __future__ import annotations

from wyeline_grammar.linking import Equipment
from wyeline_grammar.notation import Voltage
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.loads.as_given import CONSTANT_IMPEDANCE, Given, has_no_load, read
from wyeline_linter.loads.conductors_of_loads import across, spread
from wyeline_linter.loads.leaves import Leaf, leaf, unknown_leaf
from wyeline_linter.loads.third_harmonics import WORD, returning
from wyeline_linter.systems import System
from wyeline_linter.tables.basis import Basis

_STATES_LOAD = ("power", "draws", "fla", "mca", "rating")
CONVERTERS = frozenset({"ups", "charger", "drive", "inverter"})
ASSUMED_CONVERTER_PF = 0.95
"""Input power factor of a UPS, drive or charger that states none (common practice, no source)."""


def is_converter(equipment: Equipment, feeds_something: bool) -> bool:
    """Whether what it draws follows from what it feeds: power goes in, and out again as another system."""
    if equipment.kind == "ups" or (equipment.arrow and equipment.kind in CONVERTERS):
        return True
    return equipment.kind == "drive" and feeds_something and not states_load(equipment)


def states_load(equipment: Equipment) -> bool:
    """Whether it says what it draws."""
    facts = equipment.body.facts
    return any(key in facts for key in _STATES_LOAD if key != "rating" or equipment.kind == "drive")


def equipment_leaf(
    equipment: Equipment,
    system: System | None,
    reasons: tuple[str, ...],
    basis: Basis | None,
    practice: str | None,
    *,
    plate: Voltage | None,
    motor_eff: float | None = None,
) -> Leaf | None:
    """What it draws itself, None for what is no load. ``system`` holds the conductors that arrive, ``plate`` is its
    nameplate voltage, ``motor_eff`` the efficiency of the motor behind a drive."""
    if equipment.kind not in LOAD_KINDS or has_no_load(equipment.body):
        return None
    if system is None or not system.legs:
        return unknown_leaf(equipment.name, "", reasons or (f"no leg arrives at `{equipment.name}`",))
    legs = system.legs
    if len(legs) == 1 and not system.has_neutral:
        return unknown_leaf(equipment.name, "", (f"one leg alone arrives at `{equipment.name}`",))
    volts, nominal_v = across(system, legs)
    given = read(
        equipment.body,
        equipment.kind,
        f"`{equipment.name}`",
        volts=volts,
        nominal_v=nominal_v,
        phases=3 if len(legs) == 3 else 1,
        basis=basis,
        practice=practice,
        motor_eff=motor_eff,
    )
    if given.va is None:
        return unknown_leaf(equipment.name, "", given.unknown, given)
    va = given.va * plate_ratio(given, nominal_v, plate, len(legs))
    parts = spread(system, legs, va)
    assert parts is not None
    factor, third = equipment.body.number("factor"), returning(equipment.body.number(WORD), system, len(legs))
    return leaf(equipment.name, "", given._replace(va=va), legs, parts, system, factor, third)


def plate_ratio(given: Given, nominal_v: float, plate: Voltage | None, legs: int) -> float:
    """(V/Vn)² for what has constant impedance: a 240 V heater on 208 V gives three quarters of its power."""
    if given.shares != CONSTANT_IMPEDANCE or plate is None or plate.high_v is not None or given.how == "amperes":
        return 1.0
    rated = plate.neutral_v if legs == 1 and plate.neutral_v is not None else plate.line_v
    return (nominal_v / rated) ** 2


def converter_input(equipment: Equipment, out_w: float | None) -> tuple[complex | None, tuple[str, ...]]:
    """VA drawn by a converter that delivers ``out_w`` watts (None: it feeds nothing that is modelled, so its rating
    counts): power over efficiency, and the recharge of its battery, at its input power factor."""
    body = equipment.body
    eff = body.number("eff")
    rating = body.number("power")
    who = f"`{equipment.name}`"
    if eff is None:
        return None, (f"{who} gives no efficiency (eff)",)
    if out_w is None:
        if rating is None:
            return None, (f"{who} gives no rating",)
        out_w = rating
    recharge = (body.number("recharge") or 0.0) * (rating or 0.0)
    # On a UPS the power factor written is that of its output.
    pf = (body.number("pf") if equipment.kind != "ups" else None) or ASSUMED_CONVERTER_PF
    power = out_w / eff + recharge
    return complex(power, power / pf * (1.0 - pf * pf) ** 0.5), ()
