"""Calculation sheets of voltage drop and of the voltage under load: hand formula beside the solved value."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from wyeline_grammar.quantities import convert
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.studies.case import assumption_texts
from wyeline_linter.studies.flow import lowest_of
from wyeline_linter.system_words import conductor_text
from wyeline_linter.systems import NEUTRAL
from wyeline_linter.working import Figure, Input, State, Step, derived, given, looked_up

if TYPE_CHECKING:
    from wyeline_grammar.linking import Feeder
    from wyeline_linter.studies.branch import BranchDrop
    from wyeline_linter.studies.line_impedance import LineData
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View

_SOURCE = {
    "us": "NEC Chapter 9 Table 9, note 2; solved value: unbalanced load flow",
    "iec": "IEC 60364-5-52 Annex G; solved value: unbalanced load flow",
}


def feeder_drop_figure(study: StateStudy, feeder: Feeder) -> Figure:
    """The drop of a feeder: what the network gives, with the hand formula on the currents that flow."""
    drop, currents = study.judged.drop(feeder), study.judged.currents(feeder)
    source = _SOURCE.get(study.practice or "", "unbalanced load flow")
    if drop is None or currents is None:
        why = study.flow.feeder_reasons(feeder.key)
        return Figure("voltage drop", feeder.key, "dU", None, "V", source=source, unknown=why)
    data = study.flow.built.lines[feeder.key]
    near, far = study.flow.built.ends[feeder.key]
    if study.judged.backwards(feeder):
        near, far, currents = far, near, {c: -i for c, i in currents.items()}
    system = study.flow.built.system_at[far.name]
    first, second = drop.between
    nominal = system.distance(first, second)
    assert study.flow.solved is not None
    volts = study.flow.solved.v
    current = currents.get(first, 0j)
    across = complex(volts[near[first]] - volts[near[second]])
    # Power factor of the leg's current against the voltage that drives it.
    reference = across if second == NEUTRAL or len(system.legs) < 3 else _to_star(study, near, first, system.legs)
    angle = math.atan2((reference / current).imag, (reference / current).real) if abs(current) else 0.0
    inputs = [*_line_inputs(study.view, data, feeder), *_load_inputs(study, feeder)]
    inputs.append(derived("I", f"current on leg {conductor_text(first, study.practice)}, solved", abs(current), "A"))
    inputs.append(derived("cosphi", "its power factor", math.cos(angle)))
    inputs.append(derived("sinphi", "its reactive factor", math.sin(angle)))
    assert data.leg is not None
    steps = [
        *_line_steps(data),
        Step("Ze", "effective impedance of one wire", "R * cosphi + X * sinphi", _effective(data.leg, angle), "ohm"),
    ]
    k, word = (math.sqrt(3), "sqrt(3)") if len(system.legs) == 3 and second != NEUTRAL else (2.0, "2")
    if second == NEUTRAL:
        neutral = abs(currents.get(NEUTRAL, 0j))
        inputs.append(derived("In", "current in the neutral, solved", neutral, "A"))
        back = data.neutral if data.neutral is not None else data.leg
        steps.append(Step("Zn", "effective impedance of the neutral", "", _effective(back, angle), "ohm"))
        hand, formula = (
            abs(current) * _effective(data.leg, angle) + neutral * _effective(back, angle),
            "I * Ze + In * Zn",
        )
    else:
        hand, formula = k * abs(current) * _effective(data.leg, angle), f"{word} * I * Ze"
    steps.append(Step("dUh", "hand formula, as if all legs carried the same", formula, hand, "V"))
    steps.append(Step("u", "solved drop as a part of nominal", f"dU / {nominal:.6g}", drop.part))
    return Figure(
        "voltage drop",
        f"{feeder.key}, between {' and '.join(conductor_text(c, study.practice) for c in drop.between)}",
        "dU",
        drop.volts,
        "V",
        "",
        tuple(inputs),
        tuple(steps),
        source,
        merge_reasons(
            assumption_texts((a for a in study.flow.built.assumed if a.subject == feeder.key), study.view.length_text)
        ),
    )


def branch_drop_figure(study: StateStudy, board: str, drop: BranchDrop) -> Figure:
    """The drop in a circuit, by the hand formula."""
    place = drop.circuit.key
    k = {"three-phase": "sqrt(3) * I * Ze", "line-line": "2 * I * Ze", "line-neutral": "I * (Ze + Zn)"}[drop.wiring]
    angle = math.acos(min(1.0, max(-1.0, drop.power_factor)))
    data = drop.data
    assert data.leg is not None
    inputs = _line_inputs(study.view, data, None)
    inputs += [
        derived("I", "current of the connected load at nominal voltage", drop.amperes, "A"),
        derived("cosphi", "power factor", drop.power_factor),
        derived("sinphi", "reactive factor", math.sin(angle)),
    ]
    steps = [
        *_line_steps(data),
        Step("Ze", "effective impedance of one wire", "R * cosphi + X * sinphi", _effective(data.leg, angle), "ohm"),
    ]
    if drop.wiring == "line-neutral" and data.neutral is not None:
        steps.append(Step("Zn", "of the neutral", "", _effective(data.neutral, angle), "ohm"))
    steps.append(Step("u", "as a part of nominal", f"dU / {drop.nominal_v:.6g}", drop.part))
    source = _SOURCE.get(study.practice or "", "common practice").split(";")[0]
    beyond = "more than the whole voltage: this current cannot flow, and what remains the formula cannot tell"
    note = (beyond,) if drop.part >= 1.0 else ()
    return Figure(
        "voltage drop",
        f"circuit {place} of {board}",
        "dU",
        drop.volts,
        "V",
        k,
        tuple(inputs),
        tuple(steps),
        source,
        note,
    )


def path_drop_figure(study: StateStudy, name: str) -> Figure:
    """The drops along the way from the source, and their sum."""
    whole, parts, reasons = study.path_drop(name)
    source = "sum of the drops of the feeders in the way, each as a part of its own nominal voltage; common practice"
    if whole is None:
        return Figure("voltage drop from the source", name, "u", None, "", source=source, unknown=reasons)
    inputs = tuple(
        Input(
            f"u{k}",
            f"`{f.key}`, {d.volts:.2f} V between {_between(study, d.between)}",
            d.part,
            "",
            State.DERIVED,
            f.place,
        )
        for k, (f, d) in enumerate(parts, 1)
    )
    formula = " + ".join(f"u{k}" for k in range(1, len(parts) + 1)) or "0"
    steps = []
    lowest = study.judged.lowest(name)
    if lowest is not None:
        text = f"beside it: the voltage under load between {_between(study, lowest.between)}, as a part of nominal"
        steps.append(Step("", text, "", lowest.per_unit))
    source += (
        "; each feeder at its own demand, that of a single load at what is connected; only wires count: what "
        "transformers in the way lose shows in the voltage under load"
    )
    return Figure("voltage drop from the source", name, "u", whole, "", formula, inputs, tuple(steps), source)


def voltage_figure(study: StateStudy, name: str) -> Figure:
    """The voltages at a piece of equipment under load, the lowest against its nominal."""
    source = "unbalanced load flow, modified nodal analysis in phase coordinates; loads at the demand of their source"
    pairs = study.judged.volts(name)
    if not pairs:
        return Figure("voltage under load", name, "U", None, "V", source=source, unknown=study.flow.reasons(name))
    lowest = lowest_of(pairs)
    assert lowest is not None
    inputs = [
        derived("", f"{_between(study, p.between)}: {100 * p.per_unit:.2f} % of {p.nominal_v:.6g} V", p.volts, "V")
        for p in pairs
    ]
    inputs.append(derived("Un", f"nominal, {_between(study, lowest.between)}", lowest.nominal_v, "V"))
    steps = [Step("p", "the lowest as a part of nominal", "U / Un", lowest.per_unit)]
    beyond = study.judged.lost_beyond(name)
    if beyond:
        text = "taken off: what its own way loses at its own demand beyond the solved state, as a part of nominal"
        steps.insert(0, Step("", text, "", beyond))
    unbalance = study.flow.unbalance(name)
    if unbalance is not None:
        steps.append(Step("", "unbalance: largest deviation over mean", "", unbalance.deviation, "", "NEMA MG 1"))
        steps.append(Step("", "unbalance: V2 over V1", "", unbalance.negative, "", "IEC 60034-26"))
    solved = study.flow.solved
    if solved is not None:
        steps.append(Step("", "check: power balance of the solution", "", solved.selftest.power_balance))
    return Figure("voltage under load", name, "U", lowest.volts, "V", "", tuple(inputs), tuple(steps), source)


def _load_inputs(study: StateStudy, feeder: Feeder) -> list[Input]:
    """The load that a feeder is judged with, and what is connected."""
    beyond = study.judged.beyond(feeder)
    if beyond is None:
        return []
    inputs = [derived("S", f"{beyond.words} behind the feeder, which is judged here", abs(beyond.judged_va), "VA")]
    if abs(beyond.connected_va - beyond.judged_va) > 1e-6 * abs(beyond.connected_va):
        inputs.append(derived("", "connected behind it", abs(beyond.connected_va), "VA"))
    if abs(beyond.va) > 1e-6 * abs(beyond.judged_va):
        text = "of it beyond the part that counts at the source, put on the wires at nominal voltage"
        inputs.append(derived("", text, abs(beyond.va), "VA"))
    return inputs


def _between(study: StateStudy, pair: tuple[str, str]) -> str:
    return "–".join(conductor_text(c, study.practice) for c in pair)


def _effective(z: complex, angle: float) -> float:
    return z.real * math.cos(angle) + z.imag * math.sin(angle)


def _to_star(study: StateStudy, bus: object, leg: str, legs: tuple[str, ...]) -> complex:
    assert study.flow.solved is not None
    v = study.flow.solved.v
    nodes = [bus[name] for name in legs]  # type: ignore[index]
    return complex(v[bus[leg]] - sum(v[node] for node in nodes) / len(nodes))  # type: ignore[index]


def _line_inputs(view: View, data: LineData, feeder: Feeder | None) -> list[Input]:
    """Length and ohms of the wires, in the units of the schedules."""
    place = feeder.place if feeder is not None else None
    unit = "ft" if view.units == "us" else "m"
    one_m, per = convert(1.0, unit), data.per_leg
    length = data.length_m * one_m if data.length_m is not None else None
    inputs = [given("L", "route length", length, unit, place), derived("n", "parallel sets", float(data.sets))]
    if per is not None:
        inputs += [looked_up("", "read in", row) for row in per.rows[:2]]
        at = f" at {per.temperature_c:g} degC" if per.temperature_c is not None else ""
        per_unit = f"ohm/1000 {unit}" if unit == "ft" else "ohm/km"
        base, here = per.turned_hz or (None, None)
        skin, turned = (f"skin effect of {here:g} Hz", f"times {here:g} / {base:g} Hz") if here and base else ("", "")
        inputs.append(derived("r", f"resistance of one conductor{at}", 1000 * per.r_ohm_per_m / one_m, per_unit, skin))
        inputs.append(derived("x", "reactance of one conductor", 1000 * per.x_ohm_per_m / one_m, per_unit, turned))
    return inputs


def _line_steps(data: LineData) -> list[Step]:
    assert data.leg is not None
    known = data.per_leg is not None
    return [
        Step("R", "resistance of one leg", "r * L / (1000 * n)" if known else "", data.leg.real, "ohm"),
        Step("X", "reactance of one leg", "x * L / (1000 * n)" if known else "", data.leg.imag, "ohm"),
    ]
