"""Motors, drives and packaged units under US practice: their devices, and the wires that feed them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Place, PlacedCircuit
from wyeline_grammar.model import Body
from wyeline_linter.findings import Finding, Fix, Safety, Severity
from wyeline_linter.protection.lines import Line, device_kind
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.devices import motor_full_load_a, motor_kind, motors_device_limit
from wyeline_linter.standard_ratings import DeviceLimit, MotorDevice, MotorKind
from wyeline_linter.systems import Known, System
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_MOTOR = "motor P-1 460 3ph  10 hp, pf 0.85, eff 90 %\n"
_UNIT = "load RTU-1 460 3ph  mca 30 A, mocp 45 A, cooling, lug-temp 75 degC\n"

MOTOR_WIRE = rule(
    name="motor-wire-small",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="us",
    summary="The wires of motors carry less than 125 % of the largest full-load current and 100 % of the others.",
    why="Wires of motors follow the code's table of currents, not the nameplate, with a quarter more for the largest.",
    clause={"us": "430.6(A), 430.22, 430.24"},
    wrong=US + "motor P-1 460 3ph  40 hp, pf 0.86, eff 93 %\n"
    "feeder MSB -> P-1  110 A 3p  3#8 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    right=US + "motor P-1 460 3ph  40 hp, pf 0.86, eff 93 %\n"
    "feeder MSB -> P-1  110 A 3p  3#6 + G #6 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)
DRIVE_WIRE = rule(
    name="drive-wire-small",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="us",
    summary="The wires of a drive carry less than 125 % of its input current.",
    why="A drive draws harmonic current: size for the drive's input, not for the motor behind it.",
    clause={"us": "430.122(A)"},
    wrong=US + "drive VFD-1 480 3ph  15 hp, draws 26 A, eff 97 %\n"
    "feeder MSB -> VFD-1  40 A 3p  3#10 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n",
    right=US + "drive VFD-1 480 3ph  15 hp, draws 26 A, eff 97 %\n"
    "feeder MSB -> VFD-1  40 A 3p  3#8 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n",
    mends=True,
)
FEEDER_DEVICE = rule(
    name="motor-feeder-device",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="us",
    summary="A feeder of motors has a device larger than the largest branch device and the currents of the others.",
    why="The feeder breaker follows the largest motor, not the sum of the breakers.",
    clause={"us": "430.62, 430.63"},
    wrong=US + "mcc MCC-1 480 3ph  bus 600 A, main lugs, lug-temp 75 degC\n"
    "feeder MSB -> MCC-1  200 A 3p  3#2 + G #6 Cu THWN-2  20 m  in 1-1/2 inch EMT\n"
    "motor P-1 460 3ph  25 hp, pf 0.85, eff 93 %\nmotor P-2 460 3ph  25 hp, pf 0.85, eff 93 %\n"
    "feeder MCC-1 -> P-1  90 A 3p  3#8 + G #8 Cu THWN-2  10 m  in 1 inch EMT\n"
    "feeder MCC-1 -> P-2  90 A 3p  3#8 + G #8 Cu THWN-2  10 m  in 1 inch EMT\n",
    right=US + "mcc MCC-1 480 3ph  bus 600 A, main lugs, lug-temp 75 degC\n"
    "feeder MSB -> MCC-1  110 A 3p  3#2 + G #6 Cu THWN-2  20 m  in 1-1/2 inch EMT\n"
    "motor P-1 460 3ph  25 hp, pf 0.85, eff 93 %\nmotor P-2 460 3ph  25 hp, pf 0.85, eff 93 %\n"
    "feeder MCC-1 -> P-1  90 A 3p  3#8 + G #8 Cu THWN-2  10 m  in 1 inch EMT\n"
    "feeder MCC-1 -> P-2  90 A 3p  3#8 + G #8 Cu THWN-2  10 m  in 1 inch EMT\n",
    mends=True,
)
MOTOR_DEVICE = rule(
    name="motor-device-oversized",
    since="0.1",
    severity=Severity.ERROR,
    scope="motor",
    basis="us",
    summary="The branch device of a motor is larger than its full-load current allows.",
    why="The device guards the motor's line against short circuits; beyond its limit it may not see one in time.",
    clause={"us": "430.52(C)(1), 430.53(C)"},
    wrong=US + _MOTOR + "feeder MSB -> P-1  45 A 3p  3#10 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n",
    right=US + _MOTOR + "feeder MSB -> P-1  35 A 3p  3#10 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n",
    mends=True,
)
UNIT = rule(
    name="packaged-unit-limits",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    basis="us",
    summary="A packaged unit has a larger device, or smaller wires, than its nameplate asks for.",
    why="The label gives the smallest wire (mca) and the largest device (mocp) the unit was tested with; follow both.",
    clause={"us": "440.22, 440.32, 110.3(B)"},
    wrong=US + _UNIT + "feeder MSB -> RTU-1  60 A 3p  3#10 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n",
    right=US + _UNIT + "feeder MSB -> RTU-1  45 A 3p  3#10 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n",
    mends=True,
)


@MOTOR_DEVICE.check
def motor_device(view: View, equipment: Equipment) -> Iterator[Finding]:
    """A motor with a name against the device ahead of it; a drive's own protection guards what hangs behind one."""
    state = view.state(equipment.name)
    if state is None or state.ahead is None or not isinstance(state.arriving, Known):
        return
    supply = view.network.supply.get(equipment.name)
    source = view.equipment(supply.source.name) if supply is not None else None
    if source is None or source.kind == "drive" or state.ahead.device_a is None:
        return
    holder = view.model.feeders.get(state.ahead.device_at)
    body = holder.body if holder is not None else None
    found = _oversized(
        view, equipment.body, state.arriving.system, state.ahead.device_a, body, f"`{equipment.name}`",
        Place(holder.block, body.facts["rating"].span) if holder is not None and body is not None else equipment.place,
        equipment.name, "",
    )  # fmt: skip
    if found is not None:
        yield found


@MOTOR_DEVICE.also("line")
def motor_circuit(view: View, line: Line) -> Iterator[Finding]:
    guard = line.guard
    if guard is None or "motor" not in line.body.flags or not guard.own:
        return
    found = _oversized(
        view, line.body, line.system, guard.amps, line.body, line.where, line.place_of("rating"), line.subject,
        line.position,
    )  # fmt: skip
    if found is not None:
        yield found


def _oversized(
    view: View, motor: Body, system: System, device_a: float, device: Body | None, where: str, place: Place,
    subject: str, position: str,
) -> Finding | None:  # fmt: skip
    tables, power = view.tables, motor.facts.get("power")
    if tables is None or power is None or power.value.dimension != "power":
        return None
    if "fire-pump" in motor.flags:  # it carries the locked-rotor current (NEC 695.4(B)(2))
        return None
    amps = motor_full_load_a(tables, power.number, system)
    amps = amps if amps is not None else motor.number("fla")
    if amps is None:
        return None
    sort = "dual_element_fuse" if device is not None and device_kind(device, device_a, tables) == "fuse" else None
    kind: MotorDevice = "dual_element_fuse" if sort else "inverse_time_breaker"
    row: MotorKind = motor_kind(len(system.legs))
    count = int(motor.number("count") or 1)
    limit = motors_device_limit(tables, amps, count, row, kind)
    if isinstance(limit, NotListed) or device_a <= limit.largest_a:
        return None
    drawn, needed = f"{amps:g} A by the table", f"{_share(limit)} of {amps:g} A, next standard rating up"
    if count > 1:
        drawn = f"{count} times {drawn}"
        needed += f", and {(count - 1) * amps:g} A of the other {count - 1}; each then wants to be listed for a group"
    return MOTOR_DEVICE.finding(
        place,
        f"{where} draws {drawn}; its device is {device_a:g} A, limit {limit.largest_a:g} A",
        found=f"{device_a:g} A",
        needed=f"{limit.largest_a:g} A: {needed}",
        change=f"Make the device {limit.largest_a:g} A; the overload relay guards the motor itself.",
        subject=subject,
        position=position,
        fixes=_rating(place, device, limit.largest_a),
        clause=clause_of(view, MOTOR_DEVICE),
    )


def _share(limit: DeviceLimit) -> str:
    return f"{limit.percent.value:g} %" if limit.percent is not None else "the limit"


def _rating(place: Place, device: Body | None, amps: float) -> tuple[Fix, ...]:
    if device is None or "rating" not in device.facts:
        return ()
    from wyeline_linter.sizing.writing import rating_edit

    edit = rating_edit(place.block, device, amps)
    return (Fix(f"Make the device {amps:g} A", (edit,), Safety.LOOK),) if edit is not None else ()


@UNIT.also("equipment", said=("mocp",))
def unit_device(view: View, equipment: Equipment) -> Iterator[Finding]:
    """A unit with a nameplate against the device ahead of it."""
    mocp = equipment.body.number("mocp")
    state = view.state(equipment.name)
    if mocp is None or state is None or state.ahead is None or state.ahead.device_a is None:
        return
    if state.ahead.device_a <= mocp * 1.0005:
        return
    holder = view.model.feeders.get(state.ahead.device_at)
    body = holder.body if holder is not None else None
    place = (
        Place(holder.block, body.facts["rating"].span) if holder is not None and body is not None else equipment.place
    )
    yield _above_label(view, f"`{equipment.name}`", state.ahead.device_a, mocp, place, body, equipment.name, "")


@UNIT.also("circuit")
def unit_circuit(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    body = placed.circuit.body
    mocp, rating = body.number("mocp"), body.number("rating")
    if mocp is not None and rating is not None and rating > mocp * 1.0005:
        place = Place(placed.block, body.facts["rating"].span)
        where = f"circuit {placed.key} of `{board.name}`"
        yield _above_label(view, where, rating, mocp, place, body, board.name, placed.key)


def _above_label(
    view: View, where: str, rating: float, mocp: float, place: Place, body: Body | None, subject: str, position: str
) -> Finding:
    return UNIT.finding(
        place,
        f"the device of {where} is {rating:g} A; its nameplate allows {mocp:g} A",
        found=f"{rating:g} A",
        needed=f"{mocp:g} A at the most (mocp)",
        change=f"Make the device {mocp:g} A.",
        subject=subject,
        position=position,
        fixes=_rating(place, body, mocp),
        clause=clause_of(view, UNIT),
    )
