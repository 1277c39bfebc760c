"""Calculation sheets of fault currents: the loop of the solved network, beside what every part of the way adds."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from wyeline_linter.circuit import ansi, iec60909
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.studies.build import assumption_texts
from wyeline_linter.studies.case import Case
from wyeline_linter.working import Figure, Input, State, Step, derived

if TYPE_CHECKING:
    from wyeline_linter.studies.fault import FaultCurrent, FaultView
    from wyeline_linter.studies.study import StateStudy

_METHOD = {
    "us": "IEEE Std 141 and 551: symmetrical current of the first half cycle, from the network's impedances",
    "iec": "IEC 60909-0: initial symmetrical short-circuit current",
}


def fault_figure(study: StateStudy, name: str, *, largest: bool = True, kind: str | None = None) -> Figure:
    """The working of the fault current at a piece of equipment: of the kind that decides, or of the kind named."""
    view = study.largest if largest else study.smallest
    found = view.at(name)
    fault = found.get(kind) if kind is not None else view.worst(name)
    title = f"{'largest' if largest else 'smallest'} fault current"
    if fault is None or fault.amperes is None:
        why = view.reasons(name, kind=kind) or ((fault.note,) if fault is not None and fault.note else ("none flows",))
        return Figure(title, name, "I", None, "A", source=_METHOD.get(view.practice or "us", ""), unknown=why)
    return _worked(study, view, name, title, fault, found)


def _worked(
    study: StateStudy, view: FaultView, name: str, title: str, fault: FaultCurrent, found: dict[str, FaultCurrent]
) -> Figure:
    bus = view.bus(name)
    assert bus is not None
    assert view.study is not None
    raw = view.study.bus(bus, fault.tied)
    system = view.built.system_at[bus.name]
    inputs: list[Input] = []
    steps: list[Step] = []
    loop = raw.loop_ohm
    three = len(fault.tied) == 3
    prefault = raw.loop_ohm * raw.conductor_a[0] if loop is not None and raw.loop_ohm is not None else None
    volts = abs(prefault) if prefault is not None else None
    inputs.append(derived("V", f"volts that drive it ({'leg to star' if three else '-'.join(fault.tied)})", volts, "V"))
    factor = ""
    if view.practice == "iec":
        c = (fault.amperes or 0.0) / (raw.current_a or 1.0)
        inputs.append(Input("c", "voltage factor, IEC 60909-0 Table 1", c, "", State.DERIVED))
        factor = "c * "
    inputs += _way(study, view, name)
    if loop is not None:
        steps.append(Step("R", "resistance of the loop, solved for the whole network", "", loop.real, "ohm"))
        steps.append(Step("X", "reactance of the loop", "", loop.imag, "ohm"))
        steps.append(Step("Z", "impedance of the loop", "sqrt(R^2 + X^2)", abs(loop), "ohm"))
        if loop.real > 0:
            steps.append(Step("q", "X over R", "X / R", loop.imag / loop.real))
            steps.append(_peak_step(view, fault))
    for kind, other in found.items():
        if kind != fault.kind and other.amperes is not None:
            inputs.append(derived("", f"for comparison: {kind}", other.amperes, "A"))
    method = _METHOD.get(view.practice or "us", "")
    conductors = "cold conductors, running motors added" if view.built.case is Case.MAX else "hot conductors, no motors"
    ceiling = view.built.ceiling.get(bus.name)
    notes = assumption_texts(view.built.assumed)
    if ceiling is not None:
        notes = (f"`{ceiling}` unlimited: this is a ceiling", *notes)
    return Figure(
        title,
        f"{name} ({system.nominal.text}), {fault.kind}: {' '.join(fault.tied)} tied together; {conductors}",
        "I",
        fault.amperes,
        "A",
        f"{factor}V / Z" if loop is not None else "",
        tuple(inputs),
        tuple(steps),
        method,
        merge_reasons(notes, most=12),
    )


def _peak_step(view: FaultView, fault: FaultCurrent) -> Step:
    peak = view.peak_a(fault)
    if view.practice == "iec":
        kappa = iec60909.peak_factor(1 / fault.x_over_r) if fault.x_over_r else None
        text = f"first peak with kappa {kappa:.3f} = 1.02 + 0.98 e^(-3 R/X)" if kappa is not None else "first peak"
        return Step("", text, "", peak, "A", "IEC 60909-0, 8.1.1")
    factor = ansi.peak_factor(fault.x_over_r) if fault.x_over_r is not None else 0.0
    return Step("", f"first peak, {factor:.3f} times: sqrt2 (1 + e^(-pi R/X))", "", peak, "A", "IEEE C37.13")


def _way(study: StateStudy, view: FaultView, name: str) -> list[Input]:
    """What lies in the way from the source: source, wires and transformers with their own ohms."""
    rows: list[Input] = []
    root = study.connectivity.root.get(name)
    source = view.built.network.sources.get(root) if root is not None else None
    if source is not None and len(source.plus) == 3:
        z1 = source.z_ohm[0] - source.z_ohm[1]
        # On a symmetrical matrix the diagonal less the off-diagonal is close to Z1; shown as its size.
        rows.append(derived("", f"source `{root}`: Z1 of one leg", abs(z1), "ohm", note=f"X/R {_ratio(z1)}"))
    for feeder in study.connectivity.path(name):
        data = view.built.lines.get(feeder.key)
        if data is not None and data.leg is not None:
            length = f"{data.length_m:g} m" if data.length_m is not None else ""
            at = data.per_leg.temperature_c if data.per_leg is not None else None
            warm = f" at {at:g} degC" if at is not None else ""
            rows.append(
                Input(
                    "",
                    f"`{feeder.key}`: one leg, {length}{warm}",
                    abs(data.leg),
                    "ohm",
                    State.DERIVED,
                    feeder.place,
                    note=f"R {data.leg.real:.5g}, X {data.leg.imag:.5g}",
                )
            )
        transformer = view.built.transformers.get(feeder.target.name)
        if transformer is not None and transformer.z_pu is not None and transformer.s_va:
            target = study.equipment(feeder.target.name)
            made = view.built.system_at.get(feeder.target.name)
            if target is not None and made is not None:
                ohm = transformer.z_pu * made.nominal.line_v**2 / transformer.s_va
                kt = f", K_T {transformer.k_t:.3f}" if not math.isclose(transformer.k_t, 1.0) else ""
                rows.append(
                    Input(
                        "",
                        f"`{target.name}`: {100 * abs(transformer.z_pu):.3g} % of {transformer.s_va / 1000:g} kVA{kt}",
                        abs(ohm),
                        "ohm",
                        State.DERIVED,
                        target.place,
                        note=f"R {ohm.real:.5g}, X {ohm.imag:.5g} at {made.nominal.line_v:g} V",
                    )
                )
    return rows


def _ratio(z: complex) -> str:
    return f"{z.imag / z.real:.3g}" if z.real > 0 else "without R"
