"""Motor starts and what mandatory limits say of them, in the switch state where they are worst."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.protection.trip import impedance_ohm
from wyeline_linter.rules.drop import BELOW, LOOSE, SUPPLY, Lost, keep_worst
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.devices import motor_full_load_a
from wyeline_linter.systems import Known

if TYPE_CHECKING:
    from wyeline_linter.studies.starting import Standing, Start
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View

STRICT = rule(
    name="strict-drop-limit",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="A fire pump gets less voltage than the code demands, running or starting.",
    why="A fire pump has to start and run when everything else fails; its limits are mandatory.",
    basis="us",
    clause={"us": "695.7"},
    wrong=LOOSE + SUPPLY + "motor FP-1 460 3ph  25 hp, pf 0.85, eff 93 %, lra 183 A, fire-pump\n"
    "feeder DP -> FP-1  200 A 3p  3#6 + G #6 Cu THWN-2  330 m  in 1-1/4 inch RMC\n",
    right=LOOSE + SUPPLY + "motor FP-1 460 3ph  25 hp, pf 0.85, eff 93 %, lra 183 A, fire-pump\n"
    "feeder DP -> FP-1  200 A 3p  3#6 + G #6 Cu THWN-2  60 m  in 1-1/4 inch RMC\n",
)
START = rule(
    name="start-dip-high",
    since="0.1",
    severity=Severity.WARNING,
    scope="study",
    summary="A motor that starts pulls the voltage down too far, at its own terminals or at lights nearby.",
    why="Its torque falls with the square of the voltage, so it may not start; lights dim and contactors drop out.",
    wrong=LOOSE + BELOW + "motor P-1 208 3ph  10 hp, pf 0.85, eff 90 %, lra 179 A\n"
    "feeder LP-1 -> P-1  60 A 3p  3#8 + G #10 Cu THWN-2  40 m  in 3/4 inch EMT\n",
    right=LOOSE + BELOW + "motor P-1 208 3ph  10 hp, pf 0.85, eff 90 %, lra 179 A, starter soft-start\n"
    "feeder LP-1 -> P-1  60 A 3p  3#8 + G #10 Cu THWN-2  40 m  in 3/4 inch EMT\n",
)
DIP_AT_MOTOR, DIP_AT_LIGHTING = 0.15, 0.05
"""Dips accepted at a starting motor and at boards with lighting (common practice, no source)."""
FIRE_PUMP_RUN, FIRE_PUMP_START = 0.05, 0.15
"""Limits of NEC 695.7: below the motor's rating while it runs at 115 % of its current, and in its start."""
FIRE_PUMP_SHARE = 1.15
MOST_STARTS = 60
"""Motors whose effect on other boards is worked out, those with the deepest dip first."""


@START.check
def start_dip_high(view: View) -> Iterator[Finding]:
    found: dict[tuple[str, str], Lost] = {}
    for study in view.studies.for_faults():
        starts = _starts(view, study)
        for start, equipment in starts:
            limit = equipment.body.number("dip") or DIP_AT_MOTOR
            if "fire-pump" not in equipment.body.flags and start.dip > limit:  # a fire pump's limit is mandatory
                make = partial(_dips, study, equipment, start, equipment.name, start.dip, limit)
                keep_worst(found, start.name, "", Lost(start.dip, make))
        for start, equipment in starts[:MOST_STARTS]:
            if start.dip > DIP_AT_LIGHTING and (start.name, "") not in found:
                for name, dip in _at_lights(study, start):
                    make = partial(_dips, study, equipment, start, name, dip, DIP_AT_LIGHTING)
                    keep_worst(found, start.name, "lights", Lost(dip, make))
        if starts and (solved := study.starting.study) is not None:
            solved.let_go()
    for (name, where), lost in found.items():
        if not where or (name, "") not in found:
            yield lost.finding()


def _starts(view: View, study: StateStudy) -> list[tuple[Start, Equipment]]:
    from wyeline_linter.studies.starting import at_standstill, starts_direct, starts_from

    direct = {equipment.name: equipment for equipment in view.of_kind("motor") if starts_direct(equipment.body)}
    motors = {piece.name: (direct[piece.name], piece) for piece in study.pieces.running if piece.name in direct}

    # Pieces are other ones where their equipment is; neither has an equality but its identity.
    pieces = tuple(piece for _, piece in motors.values())

    def stand() -> list[Standing]:
        loads = [(equipment, study.loads_at[name].get("", [])) for name, (equipment, _) in motors.items()]
        return [motor for of in loads if (motor := at_standstill(study, *of)) is not None]

    def start() -> list[tuple[Start, Equipment]]:
        built = study.starting.built
        standing = study.kept("motors at standstill", (built.bus, built.unknown, *pieces), stand)
        found = [(start, motors[start.name][0]) for start in starts_from(study, standing)]
        return sorted(found, key=lambda f: (f[0].kept, f[0].name))

    return study.kept("starts", (study.starting, *pieces), start)


def _at_lights(study: StateStudy, start: Start) -> Iterator[tuple[str, float]]:
    """Boards with lights above a motor where its start dips too far, with the dip."""
    from wyeline_linter.studies.starting import kept_elsewhere

    lit = [
        name
        for name in study.connectivity.above(start.name)
        if any(load.category == "lighting" for parts in study.loads_at.get(name, {}).values() for load in parts)
    ]
    for name, kept in kept_elsewhere(study, start, lit).items():
        if 1 - kept > DIP_AT_LIGHTING:
            yield name, 1 - kept


def _dips(study: StateStudy, equipment: Equipment, start: Start, at: str, dip: float, limit: float) -> Finding:
    from wyeline_linter.studies.scenarios import when

    usual = " (six times its full-load current, as no lra is written)" if start.assumed else ""
    where = "at its terminals" if at == equipment.name else f"at the lights on `{at}`"
    return START.finding(
        equipment.place,
        f"the voltage {where} falls by {100 * dip:.1f} % while `{equipment.name}` starts{when(study.state)}",
        found=f"{100 * dip:.1f} %, with {start.locked_rotor_a:.0f} A locked-rotor current{usual}",
        needed=f"{100 * limit:g} % at the most",
        change="Let it start softly (`starter soft-start`), feed it from nearer the source, or take larger wires.",
        subject=equipment.name,
    )


@STRICT.check
def strict_drop_limit(view: View) -> Iterator[Finding]:
    found: dict[tuple[str, str], Lost] = {}
    told = view.studies.of_each("fire pumps", view.model.equipment, lambda e: "fire-pump" in e.body.flags)
    marked = {equipment.name for equipment, is_pump in told if is_pump}
    for study in view.studies.every() if marked else ():
        pumps = [name for name in study.loads_at if name in marked]
        if not pumps:
            continue
        starts = {start.name: start for start, _ in _starts(view, study)}
        for name in pumps:
            equipment = view.model.equipment[name]
            plate = study.derivation.stated(equipment.primary)
            lowest = study.judged.lowest(name)
            volts = lowest.volts - lost_beyond_full_load_v(study, equipment) if lowest is not None else None
            if plate is not None and volts is not None and volts < (1 - FIRE_PUMP_RUN) * plate.line_v:
                part = 1 - volts / plate.line_v
                keep_worst(
                    found, name, "runs", Lost(part, partial(_strict, study, equipment, "runs", part, FIRE_PUMP_RUN))
                )
            start = starts.get(name)
            if start is not None and start.dip > FIRE_PUMP_START:
                make = partial(_strict, study, equipment, "starts", start.dip, FIRE_PUMP_START)
                keep_worst(found, name, "starts", Lost(start.dip, make))
    for (name, verb), lost in found.items():
        if verb == "runs" or (name, "runs") not in found:
            yield lost.finding()


def lost_beyond_full_load_v(study: StateStudy, equipment: Equipment) -> float:
    """What is lost between legs beyond the solved voltage where the motor draws 115 % of its full-load current by the
    table: I (R cos + X sin) by the impedance of the smallest fault. 0 V where that is not known."""
    parts = study.loads_at.get(equipment.name, {}).get("", [])
    system = study.derivation.states[equipment.name].arriving
    power, tables = equipment.body.number("power"), study.view.tables
    fault = study.smallest.at(equipment.name).get("three-phase")
    if not parts or not isinstance(system, Known) or power is None or tables is None or fault is None:
        return 0.0
    full_a = motor_full_load_a(tables, power, system.system) or equipment.body.number("fla")
    if full_a is None or not fault.amperes:
        return 0.0
    volts = system.system.distance(*system.system.legs[:2])
    va, units = sum(load.va for load in parts), equipment.body.number("count") or 1.0
    more_a = FIRE_PUMP_SHARE * units * full_a - abs(va) / volts / 3**0.5
    z = impedance_ohm(volts / 3**0.5, fault.amperes, fault.x_over_r)
    return max(0.0, 3**0.5 * more_a * (z.real * va.real + z.imag * abs(va.imag)) / abs(va))


def _strict(study: StateStudy, equipment: Equipment, verb: str, part: float, limit: float) -> Finding:
    from wyeline_linter.studies.scenarios import when

    return STRICT.finding(
        equipment.place,
        f"{100 * part:.1f} % of the voltage is missing while the fire pump `{equipment.name}` {verb}"
        f"{when(study.state)}; {100 * limit:g} % is the limit",
        found=f"{100 * part:.1f} % below its rated voltage at {100 * FIRE_PUMP_SHARE:.0f} % of its full-load current"
        if verb == "runs"
        else f"a dip of {100 * part:.1f} %",
        needed=f"{100 * limit:g} % at the most",
        change="Take larger wires, a stiffer source, or a starter that draws less.",
        subject=equipment.name,
    )
