"""Voltage drop, voltage under load, and motor starts (D.9)."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body, Conductors
from wyeline_linter.conductor_sizes import area_mm2, next_size_up
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.registry import rule
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.analysis import View
    from wyeline_linter.studies.branch import BranchDrop
    from wyeline_linter.studies.starting import Start
    from wyeline_linter.studies.study import StateStudy

_PROJECT = 'project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
_SUPPLY = (
    "utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
)
LARGEST_STEP = 40
"""Sizes that a proposal tries at the most."""

BRANCH = rule(
    name="branch-drop-high",
    since="0.1",
    severity=Severity.ADVICE,
    scope="study",
    summary="The last circuit to a load loses more of the voltage than the project aims for.",
    why="Lights dim, heaters give less and motors run hot at the far end of a long thin wire.",
    basis="both",
    clause={"us": "210.19 informational note", "iec": "60364-5-52 525, Annex G"},
    wrong=_PROJECT
    + _SUPPLY
    + "load KILN 480 3ph  18 kW, heating\nfeeder DP -> KILN  30 A 3p  3#10 + G #10 Cu THWN-2  170 m  in 3/4 inch EMT\n",
    right=_PROJECT
    + _SUPPLY
    + "load KILN 480 3ph  18 kW, heating\nfeeder DP -> KILN  30 A 3p  3#10 + G #10 Cu THWN-2  80 m  in 3/4 inch EMT\n",
)
PATH = rule(
    name="path-drop-high",
    since="0.1",
    severity=Severity.ADVICE,
    scope="study",
    summary="Feeders and circuit together lose more of the voltage than the project aims for.",
    why="Each part may be within its aim and the sum still leaves too little at the end.",
    basis="both",
    clause={"us": "215.2 informational note", "iec": "60364-5-52 525, Annex G"},
    wrong=_PROJECT + _SUPPLY + "panel LP-1 480Y/277  bus 100 A, rated 18 kA, lug-temp 75 degC\n"
    "feeder DP -> LP-1  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  170 m  in 1 inch EMT\n"
    "load KILN 480 3ph  28 kW, heating\nfeeder LP-1 -> KILN  45 A 3p  3#8 + G #10 Cu THWN-2  80 m  in 3/4 inch EMT, "
    "lug-temp 75 degC\n",
    right=_PROJECT + _SUPPLY + "panel LP-1 480Y/277  bus 100 A, rated 18 kA, lug-temp 75 degC\n"
    "feeder DP -> LP-1  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  90 m  in 1 inch EMT\n"
    "load KILN 480 3ph  28 kW, heating\nfeeder LP-1 -> KILN  45 A 3p  3#8 + G #10 Cu THWN-2  60 m  in 3/4 inch EMT, "
    "lug-temp 75 degC\n",
)


def drop_limits(view: View) -> tuple[float, float]:
    """The drops aimed for in the last circuit and from the source on: the project's, else those of the office."""
    body = view.model.projects[0][1].body if view.model.projects else None
    branch = body.number("drop-branch") if body is not None else None
    path = body.number("drop-path") if body is not None else None
    return (
        view.settings.drop_branch if branch is None else branch,
        view.settings.drop_path if path is None else path,
    )


@BRANCH.check
def branch_drop_high(view: View) -> Iterator[Finding]:
    limit, _ = drop_limits(view)
    study = view.studies.normal
    for name in study.connectivity.order:
        equipment = view.equipment(name)
        if equipment is None:
            continue
        feeder = study.connectivity.supply.get(name)
        if equipment.kind in LOAD_KINDS and feeder is not None and feeder.target.name == name:
            drop = study.judged.drop(feeder)
            if drop is not None and drop.part > limit:
                fixes = (
                    _thicker(view, feeder.body, Place(feeder.block, feeder.body.conductors.span), drop.part / limit)
                    if feeder.body.conductors is not None
                    else ()
                )
                yield _branch(feeder.key, "", feeder.place, drop.volts, drop.part, limit, fixes)
        for branch in _branches(view, study, equipment):
            if branch.part > limit:
                body = branch.circuit.circuit.body
                place = Place(branch.circuit.block, branch.circuit.circuit.place.span)
                assert body.conductors is not None
                wires = Place(branch.circuit.block, body.conductors.span)
                fixes = _thicker(view, body, wires, branch.part / limit)
                yield _branch(name, branch.circuit.key, place, branch.volts, branch.part, limit, fixes)


def _branches(view: View, study: StateStudy, board: Equipment) -> list[BranchDrop]:
    from wyeline_linter.studies.branch import branch_drops

    return view.studies.once(f"branches {study.name} {board.name}", lambda: branch_drops(study, board))


def _branch(
    subject: str, position: str, place: Place, volts: float, part: float, limit: float, fixes: tuple[Fix, ...]
) -> Finding:
    where = f"circuit {position} of `{subject}`" if position else f"`{subject}`"
    return BRANCH.finding(
        place,
        f"{100 * part:.1f} % of the voltage ({volts:.1f} V) is lost in {where}; {100 * limit:g} % is aimed for",
        found=f"{100 * part:.1f} %, {volts:.1f} V",
        needed=f"{100 * limit:g} % at the most",
        change="Take larger wires, shorten the way, or feed it from nearer.",
        subject=subject,
        position=position,
        fixes=fixes,
    )


@PATH.check
def path_drop_high(view: View) -> Iterator[Finding]:
    _, limit = drop_limits(view)
    study = view.studies.normal
    told: set[str] = set()
    for name in study.connectivity.order:
        equipment = view.equipment(name)
        if equipment is None:
            continue
        whole, parts, _ = study.path_drop(name)
        if whole is None or not parts:
            continue
        above = study.connectivity.supplier.get(name)
        if whole > limit:
            if above in told:
                told.add(name)
                continue
            told.add(name)
            yield _path(equipment.place, name, "", whole, limit, parts[-8:], 0.0)
            continue
        branches = _branches(view, study, equipment)
        worst = max(branches, key=lambda b: b.part, default=None)
        if worst is not None and whole + worst.part > limit:
            place = Place(worst.circuit.block, worst.circuit.circuit.place.span)
            yield _path(place, name, worst.circuit.key, whole + worst.part, limit, parts, worst.part)


def _path(
    place: Place,
    name: str,
    position: str,
    whole: float,
    limit: float,
    parts: tuple[tuple[Feeder, object], ...],
    own: float,
) -> Finding:
    ranked = sorted(parts, key=lambda p: -p[1].part)  # type: ignore[attr-defined]
    most, drop = ranked[0]
    share = drop.part  # type: ignore[attr-defined]
    where = f"circuit {position} of `{name}`" if position else f"`{name}`"
    in_circuit = own > share
    mostly = f"circuit {position} itself, {100 * own:.1f} %" if in_circuit else f"`{most.key}`, {100 * share:.1f} %"
    return PATH.finding(
        place,
        f"{100 * whole:.1f} % of the voltage is lost on the way to {where}, most of it in {mostly}; "
        f"{100 * limit:g} % is aimed for",
        found=f"{100 * whole:.1f} % in all, {mostly}",
        needed=f"{100 * limit:g} % at the most",
        change=f"Take larger wires where most is lost: {'the circuit' if in_circuit else f'`{most.key}`'}.",
        subject=name,
        position=position,
    )


def _thicker(view: View, body: Body, place: Place, times: float) -> tuple[Fix, ...]:
    """The wires with about so many times the area, as an edit of the run."""
    conductors, tables = body.conductors, view.tables
    if conductors is None or tables is None:
        return ()
    size = conductors.run.size.text
    least = area_mm2(size) * times
    for _ in range(LARGEST_STEP):
        found = next_size_up(tables, size)
        if isinstance(found, NotListed):
            return ()
        size = found.value
        if area_mm2(size) >= least:
            text = run_text(conductors, size)
            return (Fix(f"Take {size} wires: `{text}`", (replace(place, text),), Safety.LOOK),)
    return ()


def run_text(conductors: Conductors, size: str) -> str:
    """A run with another size, as it is written; conductors that were as large as a leg stay so."""
    run = conductors.run
    old = run.size.text

    def mark(text: str) -> str:
        return f"{text}" if text.endswith(("kcmil", "mm2")) else f"#{text}"

    if size.endswith(("kcmil", "mm2")):
        wires = f"{run.count}{'G' if run.with_protective else 'x'}{size.replace(' ', '')}"
    else:
        wires = f"{run.count}#{size}"
    parts = [f"{conductors.sets} sets {wires}" if conductors.sets > 1 else wires]
    for role, own in conductors.extras:
        kept = size if own.text == old and role in ("N", "PEN") else own.text
        parts.append(f"+ {role} {mark(kept).replace(' kcmil', 'kcmil').replace(' mm2', 'mm2')}")
    return " ".join([*parts, *conductors.marks])


_LOOSE = _PROJECT.replace("frequency 60 Hz,", "frequency 60 Hz, drop-branch 10 %, drop-path 15 %,")
_BELOW = (
    "utility UTIL 480 3ph  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "transformer TX-1 480 3ph -> 208Y/120  30 kVA, z 5.5 %, x/r 2\n"
    "feeder UTIL -> TX-1  45 A 3p  3#8 + G #10 Cu THWN-2  6 m  in 3/4 inch EMT, lug-temp 75 degC\n"
    "panel LP-1 208Y/120  bus 125 A, main 100 A, rated 10 kA, lug-temp 75 degC\n"
    "feeder TX-1 -> LP-1  3#3 + N #3 + G #8 Cu THWN-2  2 m  in 1-1/2 inch EMT, lug-temp 75 degC\n  claim tap-10ft\n"
)
_KILN = "load KILN 208 3ph  18 kW, heating\nfeeder LP-1 -> KILN  70 A 3p  3#4 + G #8 Cu THWN-2  150 m  in 1 inch EMT\n"
VOLTAGE = rule(
    name="load-voltage-off",
    since="0.1",
    severity=Severity.WARNING,
    scope="study",
    summary="With its load on, a piece of equipment sees a voltage beyond what it is made for.",
    why="Nominal voltages fit, and what is lost in wires and transformers on the way does not leave enough.",
    clause={"us": "110.4, ANSI C84.1", "iec": "60038"},
    wrong=_LOOSE + _BELOW.replace("x/r 2\n", "x/r 2, tap 5 %\n") + _KILN,
    right=_LOOSE + _BELOW + _KILN,
)


@VOLTAGE.check
def load_voltage_off(view: View) -> Iterator[Finding]:
    from wyeline_linter.nameplate import Fit, judge
    from wyeline_linter.studies.scenarios import when

    told: set[str] = set()
    for study in view.studies.stated():
        for name in study.loads_at:
            equipment = view.equipment(name)
            if equipment is None or equipment.kind not in LOAD_KINDS or name in told:
                continue
            plate = study.derivation.stated(equipment.primary)
            pairs = study.judged.volts(name, entering=True) if plate is not None else ()
            for pair in pairs:
                assert plate is not None
                to_neutral = "N" in pair.between and len(pairs) > 1
                low = plate.neutral_v if to_neutral else plate.line_v
                high = None if to_neutral else plate.high_v
                if low is None or judge(pair.nominal_v, low, high).fit is Fit.WRONG:
                    continue
                verdict = judge(pair.volts, low, high)
                if verdict.fit is Fit.WRONG:
                    told.add(name)
                    yield VOLTAGE.finding(
                        equipment.place,
                        f"`{name}` gets {pair.volts:.0f} V under load{when(study.state)}, "
                        f"{verdict.deviation_pct:+.1f} % off its nameplate",
                        found=f"{pair.volts:.1f} V between {pair.name}",
                        needed=f"within 10 % of {verdict.plate_text}",
                        change="Take larger wires, another tap, or equipment for the voltage there is.",
                        subject=name,
                    )
                    break


STRICT = rule(
    name="strict-drop-limit",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="A fire pump gets less voltage than the code demands, running or starting.",
    why="A fire pump has to start and run when everything else fails; its limits are mandatory.",
    basis="us",
    clause={"us": "695.7"},
    wrong=_LOOSE + _SUPPLY + "motor FP-1 460 3ph  25 hp, pf 0.85, eff 93 %, lra 183 A, fire-pump\n"
    "feeder DP -> FP-1  90 A 3p  3#6 + G #6 Cu THWN-2  330 m  in 1-1/4 inch RMC\n",
    right=_LOOSE + _SUPPLY + "motor FP-1 460 3ph  25 hp, pf 0.85, eff 93 %, lra 183 A, fire-pump\n"
    "feeder DP -> FP-1  90 A 3p  3#6 + G #6 Cu THWN-2  60 m  in 1-1/4 inch RMC\n",
)
START = rule(
    name="start-dip-high",
    since="0.1",
    severity=Severity.WARNING,
    scope="study",
    summary="A motor that starts pulls the voltage down too far, at its own terminals or at lights nearby.",
    why="Its torque falls with the square of the voltage, so it may not start; lights dim and contactors drop out.",
    wrong=_LOOSE + _BELOW + "motor P-1 208 3ph  10 hp, pf 0.85, eff 90 %, lra 179 A\n"
    "feeder LP-1 -> P-1  60 A 3p  3#8 + G #10 Cu THWN-2  40 m  in 3/4 inch EMT\n",
    right=_LOOSE + _BELOW + "motor P-1 208 3ph  10 hp, pf 0.85, eff 90 %, lra 179 A, starter soft-start\n"
    "feeder LP-1 -> P-1  60 A 3p  3#8 + G #10 Cu THWN-2  40 m  in 3/4 inch EMT\n",
)
DIP_AT_MOTOR, DIP_AT_LIGHTING = 0.15, 0.05
"""Dips accepted at a starting motor and at boards with lighting (common practice, no source)."""
FIRE_PUMP_RUN, FIRE_PUMP_START = 0.05, 0.15
"""Limits of NEC 695.7: running at 115 % current is not modelled, the drop at full load is compared."""
MOST_STARTS = 60
"""Motors whose effect on other boards is worked out, those with the deepest dip first."""


@START.check
def start_dip_high(view: View) -> Iterator[Finding]:
    told: set[str] = set()
    for study in view.studies.stated():
        starts = _starts(view, study)
        for start, equipment in starts:
            limit = equipment.body.number("dip") or DIP_AT_MOTOR
            if "fire-pump" in equipment.body.flags:
                continue  # has its own, mandatory limit
            if start.dip > limit and start.name not in told:
                told.add(start.name)
                yield _dips(study, equipment, start, equipment.name, start.dip, limit)
        for start, equipment in starts[:MOST_STARTS]:
            if start.dip <= DIP_AT_LIGHTING or start.name in told:
                continue
            yield from _at_lights(study, start, equipment, told)


def _starts(view: View, study: StateStudy) -> list[tuple[Start, Equipment]]:
    from wyeline_linter.studies.starting import start_of, starts_direct

    def work() -> list[tuple[Start, Equipment]]:
        found = []
        for name, places in study.loads_at.items():
            equipment = view.equipment(name)
            parts = places.get("")
            if equipment is None or equipment.kind != "motor" or parts is None or not starts_direct(equipment.body):
                continue
            start = start_of(study, equipment, parts)
            if start is not None:
                found.append((start, equipment))
        return sorted(found, key=lambda f: (f[0].kept, f[0].name))

    return view.studies.once(f"starts {study.name}", work)


def _at_lights(study: StateStudy, start: Start, equipment: Equipment, told: set[str]) -> Iterator[Finding]:
    from wyeline_linter.studies.starting import kept_elsewhere

    lit = [
        name
        for name in study.connectivity.above(start.name)
        if any(load.category == "lighting" for parts in study.loads_at.get(name, {}).values() for load in parts)
    ]
    for name, kept in kept_elsewhere(study, start, lit).items():
        if 1 - kept > DIP_AT_LIGHTING:
            told.add(start.name)
            yield _dips(study, equipment, start, name, 1 - kept, DIP_AT_LIGHTING)
            return


def _dips(study: StateStudy, equipment: Equipment, start: Start, at: str, dip: float, limit: float) -> Finding:
    from wyeline_linter.studies.scenarios import when

    usual = " (six times its full-load current, as no lra is written)" if start.assumed else ""
    where = "at its terminals" if at == equipment.name else f"at the lights on `{at}`"
    return START.finding(
        equipment.place,
        f"the voltage {where} falls by {100 * dip:.0f} % while `{equipment.name}` starts{when(study.state)}",
        found=f"{100 * dip:.1f} %, with {start.locked_rotor_a:.0f} A locked-rotor current{usual}",
        needed=f"{100 * limit:g} % at the most",
        change="Let it start softly (`starter soft-start`), feed it from nearer the source, or take larger wires.",
        subject=equipment.name,
    )


@STRICT.check
def strict_drop_limit(view: View) -> Iterator[Finding]:
    study = view.studies.normal
    starts = {start.name: start for start, _ in _starts(view, study)}
    for name in study.loads_at:
        equipment = view.equipment(name)
        if equipment is None or "fire-pump" not in equipment.body.flags:
            continue
        plate = study.derivation.stated(equipment.primary)
        lowest = study.judged.lowest(name)
        if plate is not None and lowest is not None and lowest.volts < (1 - FIRE_PUMP_RUN) * plate.line_v:
            part = 1 - lowest.volts / plate.line_v
            yield _strict(equipment, "runs", part, FIRE_PUMP_RUN)
            continue
        start = starts.get(name)
        if start is not None and start.dip > FIRE_PUMP_START:
            yield _strict(equipment, "starts", start.dip, FIRE_PUMP_START)


def _strict(equipment: Equipment, verb: str, part: float, limit: float) -> Finding:
    return STRICT.finding(
        equipment.place,
        f"{100 * part:.1f} % of the voltage is missing while the fire pump `{equipment.name}` {verb}; "
        f"{100 * limit:g} % is the limit",
        found=f"{100 * part:.1f} % below its rated voltage" if verb == "runs" else f"a dip of {100 * part:.1f} %",
        needed=f"{100 * limit:g} % at the most",
        change="Take larger wires, a stiffer source, or a starter that draws less.",
        subject=equipment.name,
    )
