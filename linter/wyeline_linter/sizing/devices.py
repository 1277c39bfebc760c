"""The device of a line: the next standard rating above what is asked for, or what a motor, unit or winding allows."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_grammar.model import Body
from wyeline_grammar.units import HORSEPOWER_W
from wyeline_linter.protection.currents import Current, line_voltage, rated_a
from wyeline_linter.protection.lines import Line, device_kind
from wyeline_linter.protection.purposes import Purpose, required_a
from wyeline_linter.standard_ratings import (
    DeviceKind,
    DeviceLimit,
    MotorDevice,
    MotorKind,
    device_ratings,
    motor_current_a,
    motor_device_limit,
    motor_feeder_device,
    rating_at_least,
)
from wyeline_linter.systems import System
from wyeline_linter.tables import Basis, Looked, NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View


class Device(NamedTuple):
    """A rating with its reason."""

    amps: float
    kind: DeviceKind
    text: str


def device_of(view: View, line: Line, current: Current, purpose: Purpose) -> Device | str:
    """A device for the start of a line, or why none can be told."""
    tables, target = line.tables, line.target
    kind = device_kind(line.body, 20.0, tables)
    if target is None:
        return "a circuit's device is the designer's choice"
    if purpose is Purpose.MOTOR and tables.practice == "us":
        return _for_motor(tables, target, line.system, kind)
    mocp = target.body.number("mocp")
    if mocp is not None:
        return Device(mocp, kind, f"{mocp:g} A: the largest device that the nameplate of `{target.name}` allows")
    if target.kind == "transformer":
        return _for_primary(tables, target, line.system, kind)
    main = next((target.body.number(k) for k in ("main", "incomer") if target.body.number(k) is not None), None)
    need = required_a(view, line, current, purpose)
    if main is not None and (need is None or need <= main):
        return Device(main, kind, f"{main:g} A: as large as the main of `{target.name}`")
    if need is None:
        return "; ".join(current.unknown) or f"the load of `{target.name}` is not known"
    if not need:
        bus = target.body.number("bus")
        if bus is None:
            return f"nothing below `{target.name}` states a load, and it has no rating"
        return _at_most_bus(tables, bus, kind, target)
    found = rating_at_least(tables, need, kind)
    if isinstance(found, NotListed):
        return found.reason
    return Device(found.value, kind, f"{found.value:g} A: next standard rating above {need:.4g} A ({found.table})")


def _at_most_bus(tables: Basis, bus: float, kind: DeviceKind, target: Equipment) -> Device | str:
    best = max((r for r in device_ratings(tables, kind) if r <= bus), default=None)
    if best is None:
        return f"no standard rating suits the {bus:g} A bus of `{target.name}`"
    return Device(best, kind, f"{best:g} A: the {bus:g} A bus of `{target.name}`, as nothing below states a load")


def motor_kind(equipment_legs: int) -> MotorKind:
    """The row of the motor device table for a motor on so many legs, where its design is not written."""
    return "squirrel cage" if equipment_legs == 3 else "single-phase"


def motor_full_load_a(tables: Basis, power_w: float, system: System) -> float | None:
    """Table full-load current of a motor (NEC 430.248, 430.250); None where it is not listed."""
    hp = power_w / HORSEPOWER_W
    near = round(hp * 12) / 12
    hp = near if near and abs(near - hp) < 2e-3 * max(hp, 1.0) else hp
    found = motor_current_a(tables, hp, line_voltage(system), 3 if len(system.legs) == 3 else 1)
    return None if isinstance(found, NotListed) else found.value


def other_motors_a(tables: Basis, motor: Body, system: System) -> float | None:
    """Full-load amperes of all but one of the motors that one line stands for (`count`); None where not known."""
    others = (motor.number("count") or 1.0) - 1.0
    if others <= 0:
        return 0.0
    power = motor.facts.get("power")
    hp_known = power is not None and power.value.dimension == "power"
    each_a = motor_full_load_a(tables, power.number, system) if power is not None and hp_known else None
    each_a = each_a if each_a is not None else motor.number("fla")
    return None if each_a is None else others * each_a


def motors_device_limit(
    tables: Basis, each_a: float, count: int, row: MotorKind, device: MotorDevice
) -> DeviceLimit | NotListed:
    """Largest device of one circuit of so many motors alike, amperes: what one motor allows (NEC 430.52(C)(1)), and the
    full-load current of the others on top, rounded down (NEC 430.53(C)(4), from memory)."""
    one = motor_device_limit(tables, each_a, row, device)
    if count <= 1 or isinstance(one, NotListed):
        return one
    kind: DeviceKind = "breaker" if device == "inverse_time_breaker" else "fuse"
    several = motor_feeder_device(tables, one.largest_a, (count - 1) * each_a, kind)
    return several if isinstance(several, NotListed) else several._replace(percent=one.percent)


def fire_pump_device(tables: Basis, carried_a: float, kind: DeviceKind = "breaker") -> Looked[float] | NotListed:
    """The device ahead of fire pumps: it carries for good the locked-rotor current of the largest and the full-load
    current of the others (NEC 695.4(B)(2)(a), from memory; up to the 2011 text the locked-rotor current of each)."""
    return rating_at_least(tables, carried_a, kind)


def _for_motor(tables: Basis, target: Equipment, system: System, kind: DeviceKind) -> Device | str:
    if "fire-pump" in target.body.flags:
        return _for_fire_pump(tables, target, system, kind)
    power = target.body.number("power")
    amps = motor_full_load_a(tables, power, system) if power is not None else None
    amps = amps if amps is not None else target.body.number("fla")
    if amps is None:
        return f"the full-load current of `{target.name}` is neither written nor in the table"
    device: MotorDevice = "dual_element_fuse" if kind == "fuse" else "inverse_time_breaker"
    count = int(target.body.number("count") or 1)
    limit = motors_device_limit(tables, amps, count, motor_kind(len(system.legs)), device)
    if isinstance(limit, NotListed) or limit.percent is None:
        return limit.reason if isinstance(limit, NotListed) else "no limit is listed"
    percent = limit.percent
    return Device(
        limit.largest_a,
        kind,
        f"{limit.largest_a:g} A: {percent.value:g} % of {amps:g} A, next rating up ({percent.table})"
        + (f", and {(count - 1) * amps:g} A of the other {count - 1} (NEC 430.53(C)(4))" if count > 1 else ""),
    )


def _for_fire_pump(tables: Basis, target: Equipment, system: System, kind: DeviceKind) -> Device | str:
    locked_a = target.body.number("lra")
    if locked_a is None:
        return f"the device of a fire pump carries its locked-rotor current: `lra` of `{target.name}` is not written"
    others_a = other_motors_a(tables, target.body, system)
    if others_a is None:
        return f"the full-load current of the other pumps of `{target.name}` is neither written nor in the table"
    found = fire_pump_device(tables, locked_a + others_a, kind)
    if isinstance(found, NotListed):
        return found.reason
    running = f" and the {others_a:g} A of the others" if others_a else ""
    text = f"{found.value:g} A: carries the {locked_a:g} A of the stalled fire pump{running} for good "
    text += "(NEC 695.4(B)(2)(a))"
    return Device(found.value, kind, text)


def _for_primary(tables: Basis, target: Equipment, system: System, kind: DeviceKind) -> Device | str:
    power = target.body.number("power")
    amps = rated_a(power, system) if power is not None else None
    if amps is None:
        return f"`{target.name}` states no kVA"
    found = rating_at_least(tables, 1.25 * amps, kind)
    if isinstance(found, NotListed):
        return found.reason
    return Device(found.value, kind, f"{found.value:g} A: 125 % of the {amps:.4g} A of `{target.name}`, next rating up")
