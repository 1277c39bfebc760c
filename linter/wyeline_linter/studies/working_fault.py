"""Calculation sheets of fault currents: every part of the loop in ohm, every source and machine in ampere, and their
sums."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.circuit import iec60909
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.studies.case import Assumption, Case, assumption_texts
from wyeline_linter.studies.first_peaks import peak_steps
from wyeline_linter.studies.place_sources import bypass_untold
from wyeline_linter.studies.source_impedance import USUAL_TOLERANCE
from wyeline_linter.system_words import conductor_text
from wyeline_linter.working import Figure, Input, State, Step, derived, number_text

if TYPE_CHECKING:
    from wyeline_grammar.linking import Place
    from wyeline_linter.circuit import Bus
    from wyeline_linter.circuit.elements import Motor
    from wyeline_linter.circuit.fault_parts import Loop, Shares
    from wyeline_linter.studies.fault import FaultCurrent, FaultView
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.systems import System

_METHOD = {
    "us": "IEEE Std 141 and 551: symmetrical current of the first half cycle, from the network's impedances",
    "iec": "IEC 60909-0: initial symmetrical short-circuit current",
}


_SHARES = "; of each share what is in step with the whole current"
NOT_NAMED = "the reactance of the machines not named here, by their size"
MOST_MACHINES = 6
"""Machines that a sheet lists by name, the largest first; the others stand there as one sum."""
LEGS_DIFFER = 5e-5
"""From this difference on, the ohms of a three-phase loop are not those of every leg."""


class Worked(NamedTuple):
    """A sheet with what it follows from besides the faults that it is kept with."""

    connectivity: object
    words: tuple[str, ...]
    """The unit of lengths, and what is taken of bypasses."""
    owners: dict[str, tuple[object, object]]
    """The feeder and the equipment that each part of its loop may be called after: the same objects while it holds."""
    figure: Figure


def fault_figure(study: StateStudy, name: str, *, largest: bool = True, kind: str | None = None) -> Figure:
    """The working of the fault current at a piece of equipment: of the kind that decides, or of the kind named. It
    stays as it is while the faults, and what it says beside them, do."""
    view = study.largest if largest else study.smallest
    if kind is not None:
        return _figure(study, view, name, kind, _bypasses(study, name), {})
    bypasses = _bypasses(study, name)
    words = (study.view.length_text(1.0), *bypasses)
    known = view.worked.get(name)
    if known is None or known.connectivity is not study.connectivity or known.words != words or _other(study, known):
        owners: dict[str, tuple[object, object]] = {}
        figure = _figure(study, view, name, kind, bypasses, owners)
        known = view.worked[name] = Worked(study.connectivity, words, owners, figure)
    return known.figure


def _other(study: StateStudy, known: Worked) -> bool:
    return any(_named(study, owner) != named for owner, named in known.owners.items())


def _named(study: StateStudy, owner: str) -> tuple[object, object]:
    """The feeder and the piece of equipment that a part of a loop may be called after."""
    name = owner.removeprefix(_EARTHING)
    return study.model.feeders.get(name), study.equipment(name)


def _figure(
    study: StateStudy,
    view: FaultView,
    name: str,
    kind: str | None,
    bypasses: list[str],
    owners: dict[str, tuple[object, object]],
) -> Figure:
    largest = view.largest
    found = view.at(name)
    fault = found.get(kind) if kind is not None else view.worst(name)
    title = f"{'largest' if largest else 'smallest'} fault current"
    if fault is None or fault.amperes is None:
        why = view.reasons(name, kind=kind) or ((fault.note,) if fault is not None and fault.note else ("none flows",))
        return Figure(title, name, "I", None, "A", source=_METHOD.get(view.practice or "us", ""), unknown=why)
    return _worked(study, view, name, title, fault, found, bypasses, owners)


def _worked(
    study: StateStudy,
    view: FaultView,
    name: str,
    title: str,
    fault: FaultCurrent,
    found: dict[str, FaultCurrent],
    bypasses: list[str],
    owners: dict[str, tuple[object, object]],
) -> Figure:
    from wyeline_linter.circuit.fault_parts import loop_of, shares_of

    bus = view.bus(name)
    assert bus is not None and view.study is not None and fault.amperes is not None
    raw = view.study.bus(bus, fault.tied)
    system = view.built.system_at[bus.name]
    loop = loop_of(view.study, bus, fault.tied)
    fed = len(view.study.drives.names) > 1
    shares = shares_of(view.study, bus, raw, MOST_MACHINES) if fed and loop is not None else None
    c = fault.amperes / raw.current_a if view.practice == "iec" and raw.current_a else 1.0
    inputs: list[Input] = []
    steps: list[Step] = []
    names, formula = [conductor_text(name, view.practice) for name in fault.tied], ""
    if loop is not None:
        tied = "leg to star" if len(fault.tied) == 3 else "-".join(names)
        inputs.append(derived("V", f"volts that drive it ({tied})", abs(loop.volts), "V"))
        if view.practice == "iec":
            inputs.append(_factor_row(view, bus, system, c))
        ohms = _by_owner(study, view, loop)
        owners.update((owner, _named(study, owner)) for owner in ohms)
        digits = _decimals(loop.ohm)
        inputs += [_way_row(study, view, owner, z, digits) for owner, z in ohms.items()]
        steps += _loop_steps(loop, [*ohms.values()], digits, names)
        if not _legs_alike(loop):
            steps += _mean_steps(loop.mean_ohm, "resistance, mean of the legs: the sum of the parts")
        formula = "c * V / Z" if view.practice == "iec" else "V / Z"
        if shares is not None:
            machines = _machine_shares(view, shares, c)
            if len(machines) > 1:
                what = "current of the supply alone"
                steps.append(Step("Ia", what, formula, c * loop.amperes, "A"))
                inputs += machines
                formula = " + ".join(i.symbol for i in machines)
                steps = [s for s in steps if s.symbol not in ("Rw", "Xw")]
                steps += _mean_steps(raw.loop_ohm, "resistance with all that feeds, solved")
        q = fault.x_over_r
        if q is not None and q != float("inf"):
            whole = any(step.symbol == "Xw" for step in steps)
            steps.append(Step("q", "X over R", "Xw / Rw" if whole else "X / R", q))
            steps += peak_steps(view, bus, fault, c)
        elif q is not None:
            crest = f"2 * sqrt(2) * {number_text(fault.amperes or 0.0)}"
            what = fault.note or "with nothing to damp it"
            steps.append(Step("", f"first peak, {what}", crest, view.peak_a(fault), "A"))
    for kind, other in found.items():
        if kind != fault.kind and other.amperes is not None:
            inputs.append(derived("", f"for comparison: {kind}", other.amperes, "A"))
    conductors = "cold conductors, running motors added" if view.built.case is Case.MAX else "hot conductors, no motors"
    ceiling = view.built.ceiling.get(bus.name)
    notes = assumption_texts(_concerned(view, loop, shares), study.view.length_text)
    notes = (*bypasses, *notes)
    if ceiling is not None:
        notes = (f"`{ceiling}` unlimited: this is a ceiling", *notes)
    return Figure(
        title,
        f"{name} ({system.nominal.text}), {fault.kind}: {' '.join(names)} tied together; {conductors}",
        "I",
        fault.amperes,
        "A",
        formula,
        tuple(inputs),
        tuple(steps),
        _METHOD.get(view.practice or "us", "") + (_SHARES if formula.startswith("I1 ") else ""),
        merge_reasons(notes, most=12),
    )


def _bypasses(study: StateStudy, name: str) -> list[str]:
    """What is taken of the supplies ahead that could go over to a bypass which nobody wrote."""
    way = [study.equipment(each) for each in (name, *study.connectivity.above(name))]
    return [
        f"`{e.name}` does not go over to its bypass, which is not written: its inverter alone feeds a fault behind it"
        for e in way
        if e is not None and e.kind == "ups" and bypass_untold(study.model, study.derivation, e)
    ]


def _factor_row(view: FaultView, bus: Bus, system: System, c: float) -> Input:
    """The voltage factor, and what of the tolerance of the voltage it rests on."""
    name, stated = "voltage factor (IEC 60909-0 Table 1)", view.built.tolerance.get(bus.name)
    if system.nominal.line_v > iec60909.LOW_VOLTAGE_V:
        return Input("c", name, c, "", State.DERIVED, note="above 1 kV")
    share = USUAL_TOLERANCE if stated is None else stated
    usual = f"voltage at most {100 * share:g} % above nominal"
    if stated is None:
        return Input("c", name, c, "", State.ASSUMED, note=f"{usual}; no `range` of its system is written")
    return Input("c", name, c, "", State.DERIVED, note=f"{usual}, its `range`")


def _legs_alike(loop: Loop) -> bool:
    return abs(loop.mean_ohm - loop.ohm) <= LEGS_DIFFER * abs(loop.ohm)


def _loop_steps(loop: Loop, parts: list[complex], digits: int, names: list[str]) -> list[Step]:
    """R, X and Z of the loop, as sums of the parts that are listed; of each leg, where the legs differ."""
    alike = _legs_alike(loop)
    sums = ["", ""]
    if alike and parts:
        sums = [" + ".join(f"{getattr(part, of):.{digits}f}" for part in parts) for of in ("real", "imag")]
        sums = [text.replace("+ -", "- ") for text in sums]
    z = loop.mean_ohm if alike else loop.ohm
    where = "sum of the parts" if alike else "on the fullest leg; the parts are the mean of the legs"
    return [
        Step("R", f"resistance, {where}", sums[0], z.real, "ohm"),
        Step("X", "reactance, likewise", sums[1], z.imag, "ohm"),
        Step("Z", "impedance of the loop", "sqrt(R^2 + X^2)", abs(z), "ohm"),
        *(
            Step(f"Z{name}", f"leg {name} alone: {_complex_text(leg)}, solved", "", abs(leg), "ohm")
            for name, leg in zip(names, () if alike else loop.legs_ohm, strict=False)
        ),
    ]


def _mean_steps(ohm: complex | None, what: str) -> list[Step]:
    """R and X for X over R, where they are not those of the loop that is listed."""
    if ohm is None:
        return []
    return [Step("Rw", what, "", ohm.real, "ohm"), Step("Xw", "reactance, likewise", "", ohm.imag, "ohm")]


def _machine_shares(view: FaultView, shares: Shares, c: float) -> list[Input]:
    """What each source and machine adds, in A: sources first, then machines and converters, the largest first; ``c``
    times the currents of the network."""
    assert view.study is not None
    motors = view.study.drives.motors
    of_sources: dict[str, float] = {}
    for name, amperes in shares.sources.items():
        owner = name.split(" ")[0]
        of_sources[owner] = of_sources.get(owner, 0.0) + amperes
    rows = [(f"from `{name}`", amperes, "") for name, amperes in of_sources.items()]
    for name, amperes in shares.largest:
        if name in motors:
            rows.append((f"from the running machine `{name}`", amperes, _of_machine(motors[name])))
        else:
            rows.append((f"from the converter `{name}`, at its limit", amperes, ""))
    if shares.others:
        rows.append((f"from the {len(shares.others)} other machines together", shares.others_a, ""))
    return [derived(f"I{k}", text, c * amperes, "A", more) for k, (text, amperes, more) in enumerate(rows, 1)]


def _of_machine(motor: Motor) -> str:
    across = "a leg" if len(motor.nodes) == 3 else "across its wires"
    return f"{abs(motor.z1_ohm):.4g} ohm {across}, X/R {_ratio(motor.z1_ohm)}"


class _Part(NamedTuple):
    """What a row of the way says beside its ohms in the loop: ``own`` are those of one leg, in the words ``note``,
    which say nothing new where they are the same."""

    text: str
    place: Place | None = None
    own: complex = 0j
    note: str = ""


def _by_owner(study: StateStudy, view: FaultView, loop: Loop) -> dict[str, complex]:
    """The ohms that every feeder and piece of equipment puts into the loop, as the current flows."""
    ohms: dict[str, complex] = {}
    for element, z in loop.parts.items():
        owner = _owner(view, element)
        ohms[owner] = ohms.get(owner, 0j) + z
    feeders = study.model.feeders

    def place_of(owner: str) -> tuple[int, int]:
        base = owner.removeprefix(_EARTHING)
        name = feeders[base].target.name if base in feeders else base.partition("@")[0]
        depth = study.connectivity.depth.get(name, len(feeders))
        return depth, owner.startswith(_EARTHING) + 1 - (owner in feeders)

    return {owner: ohms[owner] for owner in sorted(ohms, key=place_of)}


def _way_row(study: StateStudy, view: FaultView, owner: str, z: complex, digits: int) -> Input:
    part = _described(study, view, owner)
    sign = "-" if z.imag < 0 else "+"
    text = f"{z.real:.{digits}f} {sign} j {abs(z.imag):.{digits}f} ohm"
    note = "" if _complex_text(part.own) == _complex_text(z) else part.note
    return Input("", part.text, text, "", State.DERIVED, part.place, note=note)


_EARTHING = "earthing of "


def _owner(view: FaultView, element: str) -> str:
    """The feeder or piece of equipment that an element of the circuit belongs to."""
    from wyeline_linter.circuit.fault_parts import SHUNTS

    built = view.built
    if element in built.lines or element == SHUNTS:
        return element
    for ending in (" grounding impedance", " source earth", " earth"):
        if element.endswith(ending):
            return _EARTHING + element.removesuffix(ending)
    name = element.removesuffix(" zero-sequence lead")
    unit = name.rpartition(".")[0]
    if unit in built.transformers:
        return unit
    return name if name in built.bus or "@" in name else name.split(" ")[0]


def _described(study: StateStudy, view: FaultView, owner: str) -> _Part:
    from wyeline_linter.circuit.fault_parts import SHUNTS

    built = view.built
    if owner == SHUNTS:
        return _Part("what the transformers take without load")
    feeder, data = study.model.feeders.get(owner), built.lines.get(owner)
    if data is not None and data.leg is not None:
        length = study.view.length_text(data.length_m) if data.length_m is not None else ""
        at = data.per_leg.temperature_c if data.per_leg is not None else None
        warm = f"at {at:g} degC" if at is not None else ""
        busway, _, end = owner.partition("@") if feeder is None else (owner, "", "")
        upto = f" up to {study.view.length_text(float(end))} from its start" if end else ""
        text = f"`{busway}`{upto}" + "".join(f", {more}" for more in (length, warm) if more)
        place = feeder.place if feeder is not None else None
        return _Part(text, place, data.leg, f"one leg {_complex_text(data.leg)}")
    transformer, equipment = built.transformers.get(owner), study.equipment(owner.removeprefix(_EARTHING))
    place = equipment.place if equipment is not None else None
    made = built.system_at.get(owner)
    if transformer is not None and made is not None and transformer.z_pu is not None and transformer.s_va:
        own = transformer.z_pu * made.nominal.line_v**2 / transformer.s_va
        kt = f", K_T {transformer.k_t:.3f}" if abs(transformer.k_t - 1.0) > 1e-9 else ""
        text = f"`{owner}`: {100 * abs(transformer.z_pu):.3g} % of {transformer.s_va / 1000:g} kVA{kt}"
        return _Part(text, place, own, f"{_complex_text(own)} at {made.nominal.line_v:g} V")
    if owner.startswith(_EARTHING):
        return _Part(f"earthing of `{owner.removeprefix(_EARTHING)}`", place)
    source = built.network.sources.get(owner)
    if source is not None and made is not None:
        three = len(source.plus) == 3
        own = source.z_ohm[0] - source.z_ohm[1] if three else source.z_ohm[0]
        note = f"{'one leg ' if three else ''}{_complex_text(own)} at {made.nominal.line_v:g} V"
        return _Part(f"`{owner}`, X/R {_ratio(own)}", place, own, note)
    return _Part(f"`{owner}`", place)


def _concerned(view: FaultView, loop: Loop | None, shares: Shares | None) -> list[Assumption]:
    """What is assumed of that which has a part in the fault, and of what is no part of the circuit at all. Of machines,
    those that the sheet names; the others are in one sentence."""
    built = view.built
    if loop is None or view.study is None:
        return built.assumed
    motors = view.study.drives.motors
    inside = {_owner(view, element).removeprefix(_EARTHING).partition("@")[0] for element in loop.parts}
    rest: set[str] = set()
    if shares is not None:
        inside |= {name.split(" ")[0] for name in shares.sources} | {name for name, _ in shares.largest}
        rest = set(shares.others)

    def concerns(subject: str) -> bool:
        return subject in inside or not (subject in motors or subject in built.lines or subject in built.bus)

    found = [a for a in built.assumed if concerns(a.subject)]
    if rest and any(a.subject in rest for a in built.assumed):
        found.append(Assumption("", NOT_NAMED))
    return found


def _decimals(z: complex) -> int:
    """Digits behind the point with which the parts of an impedance add up to six significant ones of it and of its R
    and X."""
    whole = 6 - math.ceil(math.log10(abs(z)))
    least = min((abs(part) for part in (z.real, z.imag) if abs(part) > 1e-6 * abs(z)), default=abs(z))
    return min(12, max(0, whole, 6 - math.ceil(math.log10(least))))


def _complex_text(z: complex) -> str:
    sign = "-" if z.imag < 0 else "+"
    return f"{_short(z.real)} {sign} j {_short(abs(z.imag))} ohm"


def _short(value: float) -> str:
    return number_text(float(f"{value:.4g}"))


def _ratio(z: complex) -> str:
    return f"{z.imag / z.real:.3g}" if z.real > 0 else "without R"
