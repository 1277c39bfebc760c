"""What a line is for, as far as the code treats it unlike others: motors, units, secondaries, taps, sources."""

from __future__ import annotations

import enum
from typing import TYPE_CHECKING

from wyeline_linter.protection.currents import Current, rated_a
from wyeline_linter.protection.lines import Line

if TYPE_CHECKING:
    from wyeline_linter.view import View

TAPS = frozenset({"tap-10ft", "tap-25ft", "tap-outside"})
_THROUGH = frozenset({"disconnect", "meter", "junction", "transfer"})


class Purpose(enum.Enum):
    """Why a line is sized as it is."""

    PLAIN = "a feeder or circuit"
    MOTOR = "the line of one motor"
    DRIVE = "the line of a drive"
    UNIT = "the line of one unit with a nameplate ampacity"
    GROUP = "a feeder of motors"
    CAPACITOR = "the line of a capacitor bank"
    SECONDARY = "the line from a transformer to the first device"
    SERVICE = "the service wires"
    SOURCE = "the line from a source without a device"
    TAP = "a tap"

    __hash__ = object.__hash__  # members are singletons; the usual one hashes their names anew each time


ONE_LOAD = frozenset({Purpose.MOTOR, Purpose.DRIVE, Purpose.UNIT, Purpose.CAPACITOR})
"""Lines whose device may exceed the ampacity of the wires: it guards against faults, something else against overload
(NEC 240.4(G), 430.52, 440.22, 460.8; IEC 60364-4-43 433.2.1)."""


def purpose_of(view: View, line: Line, current: Current) -> Purpose:
    """What a line is for."""
    special = _load_purpose(line)
    if special is not None:
        return special
    if line.guard is None:
        maker = view.equipment(line.maker)
        kind = maker.kind if maker is not None else ""
        if kind == "transformer":
            return Purpose.SECONDARY
        return Purpose.SERVICE if kind == "utility" else Purpose.SOURCE
    if not line.guard.own and line.claims & TAPS:
        return Purpose.TAP
    if line.target is not None and line.target.kind in _THROUGH and current.motors == 1 and not current.others:
        return Purpose.UNIT
    if current.motors and line.feeder is not None and current.motors >= current.others:
        return Purpose.GROUP
    return Purpose.PLAIN


def _load_purpose(line: Line) -> Purpose | None:
    if line.source.kind == "drive":
        return Purpose.MOTOR
    if line.target is not None:
        kind = line.target.kind
        if kind == "motor":
            return Purpose.MOTOR
        if kind == "drive":
            return Purpose.DRIVE
        if kind == "capacitor":
            return Purpose.CAPACITOR
        return Purpose.UNIT if "mca" in line.target.body.facts else None
    if "mca" in line.body.facts:
        return Purpose.UNIT
    for flag in line.body.flags:
        if flag == "motor":
            return Purpose.MOTOR
        if flag == "drive":
            return Purpose.DRIVE
        if flag == "capacitor":
            return Purpose.CAPACITOR
    return None


def required_a(view: View, line: Line, current: Current, purpose: Purpose) -> float | None:
    """Amperes that the wires must carry before factors, by the code; None where the load is unknown."""
    amps = current.sizing_a
    tables = line.tables
    if tables.practice != "us":
        return current.design_a
    if purpose is Purpose.CAPACITOR and amps is not None:
        return amps * tables.value_of("capacitor-conductor-percent") / 100
    if line.source.kind == "generator":
        made = of_generator_a(view, line)
        if made is not None:
            return max(amps or 0.0, made)
    if line.source.kind == "inverter" and line.feeder is not None and not line.source.arrow:
        from wyeline_linter.loads.rollup import volt_amperes_per_ampere
        from wyeline_linter.protection.currents import CONVERTER_CONTINUOUS, inverter_a

        made = inverter_a(line.source, volt_amperes_per_ampere(line.system))
        return None if made is None else made * CONVERTER_CONTINUOUS
    return amps


def of_generator_a(view: View, line: Line) -> float | None:
    """What the wires of a generator carry whatever its load: 115 % of its rated current (NEC 445.13(A)), amperes.

    None where nothing says it, and behind a device at the generator that is smaller than its rated current, as one of
    several on it: the clause ends at the first device that protects from overload, and that one bounds its wires.
    """
    rated = generator_a(view, line)
    if rated is None or (line.guard is not None and line.guard.own and line.guard.amps < rated):
        return None
    return rated * line.tables.value_of("generator-conductor-percent") / 100


def generator_a(view: View, line: Line) -> float | None:
    """Rated current of the generator that a line leaves, amperes."""
    body = line.source.body
    fact = body.facts.get("power")
    if fact is None:
        return None
    pf = body.number("pf")
    va = fact.number / pf if fact.value.dimension == "power" and pf else fact.number
    if fact.value.dimension == "power" and not pf:
        return None
    state = view.state(line.source.name)
    system = getattr(state.system, "system", None) if state is not None else None
    return rated_a(va, system) if system is not None else None
