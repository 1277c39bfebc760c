"""Voltage drop and voltage under load, in the switch state where they are worst."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body, Conductors
from wyeline_grammar.quantities import format_quantity
from wyeline_linter.conductor_sizes import area_mm2, next_size_up, size_at_least
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.writing import size_text
from wyeline_linter.system_words import conductors_text
from wyeline_linter.tables import Basis, NotListed

if TYPE_CHECKING:
    from wyeline_linter.nameplate import NameplateVerdict
    from wyeline_linter.studies.branch import BranchDrop
    from wyeline_linter.studies.flow import Drop, PairVolts
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View

_PROJECT = 'project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
SUPPLY = (
    "utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
)
COUNTS_TO = 0.25
"""Up to what part of the voltage a drop worked out for a fixed current tells what happens. A load that holds its power
behind wires gets it only while they would lose less than this at its rated current: maximum power transfer, V²/4R."""
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
    + SUPPLY
    + "load KILN 480 3ph  18 kW, heating\nfeeder DP -> KILN  30 A 3p  3#10 + G #10 Cu THWN-2  170 m  in 3/4 inch EMT\n",
    right=_PROJECT
    + SUPPLY
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
    wrong=_PROJECT + SUPPLY + "panel LP-1 480Y/277  bus 100 A, rated 18 kA, lug-temp 75 degC\n"
    "feeder DP -> LP-1  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  170 m  in 1 inch EMT\n"
    "load KILN 480 3ph  28 kW, heating\nfeeder LP-1 -> KILN  45 A 3p  3#8 + G #10 Cu THWN-2  80 m  in 3/4 inch EMT, "
    "lug-temp 75 degC\n",
    right=_PROJECT + SUPPLY + "panel LP-1 480Y/277  bus 100 A, rated 18 kA, lug-temp 75 degC\n"
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


WORSE = 0.0005
"""By how much, as a part of nominal, another switch state has to be worse to be named instead of the normal one."""


class Lost(NamedTuple):
    """A drop beyond its aim: of what, in which state, and the finding that tells it."""

    part: float
    finding: Callable[[], Finding]


def keep_worst(found: dict[tuple[str, str], Lost], subject: str, position: str, lost: Lost) -> None:
    """Keep the worse of two drops at one place; the earlier state where they are nearly alike."""
    known = found.get((subject, position))
    if known is None or lost.part > known.part + WORSE:
        found[subject, position] = lost


@BRANCH.check
def branch_drop_high(view: View) -> Iterator[Finding]:
    limit, _ = drop_limits(view)
    found: dict[tuple[str, str], Lost] = {}
    for study in view.studies.every():
        beyond = study.sieve.feeders_beyond(limit)
        # A circuit's own wires lose the same in every state.
        boards = study.sieve.boards_beyond(limit) if study.zone is None else frozenset()
        fed = {view.model.feeders[key].target.name for key in beyond}
        for name in study.connectivity.order if beyond or boards else ():
            equipment = view.equipment(name) if name in fed or name in boards else None
            if equipment is None:
                continue
            feeder = study.connectivity.supply.get(name)
            if equipment.kind in LOAD_KINDS and feeder is not None and feeder.target.name == name:
                drop = study.judged.drop(feeder) if feeder.key in beyond else None
                if drop is not None and drop.part > limit:
                    keep_worst(found, feeder.key, "", Lost(drop.part, partial(_of_feeder, view, study, feeder, limit)))
            for branch in _branches(view, study, equipment) if name in boards else ():
                if branch.part > limit:
                    make = partial(_of_circuit, view, study, name, branch, limit)
                    keep_worst(found, name, branch.circuit.key, Lost(branch.part, make))
    for lost in found.values():
        yield lost.finding()


def _of_feeder(view: View, study: StateStudy, feeder: Feeder, limit: float) -> Finding:
    drop, wires = study.judged.drop(feeder), feeder.body.conductors
    assert drop is not None
    fixes: tuple[Fix, ...] = ()
    if wires is not None:
        fixes = _thicker(view, feeder.body, Place(feeder.block, wires.span), drop.part / limit)
    return _branch(study, feeder.key, "", feeder.place, drop.volts, drop.part, limit, fixes)


def _of_circuit(view: View, study: StateStudy, board: str, branch: BranchDrop, limit: float) -> Finding:
    body = branch.circuit.circuit.body
    place = Place(branch.circuit.block, branch.circuit.circuit.place.span)
    assert body.conductors is not None
    wires = Place(branch.circuit.block, body.conductors.span)
    fixes = _thicker(view, body, wires, branch.part / limit)
    if branch.part < 1.0:
        return _branch(study, board, branch.circuit.key, place, branch.volts, branch.part, limit, fixes)
    return _beyond(view, board, branch, place, limit, fixes)


def _beyond(view: View, board: str, branch: BranchDrop, place: Place, limit: float, fixes: tuple[Fix, ...]) -> Finding:
    """A circuit whose current would lose more than there is: no figure of what remains can be told, only that it does
    not run, and how far these wires reach."""
    key, length_m = branch.circuit.key, branch.circuit.circuit.body.number("length") or 0.0
    reach = format_quantity(length_m * limit / branch.part, "length", view.units)
    return BRANCH.finding(
        place,
        f"circuit {key} of `{board}` cannot run: its {branch.amperes:.1f} A would lose {branch.volts:.0f} V in these "
        f"wires, and {branch.nominal_v:.0f} V is all there is; {100 * limit:g} % is aimed for",
        severity=Severity.WARNING,
        found=f"{branch.volts:.0f} V at its full current, of {branch.nominal_v:.0f} V: this current cannot flow",
        needed=f"{100 * limit:g} % at the most",
        why="No voltage is left that would drive this current through the wires: a motor does not turn, electronics do "
        "not start, a heater stays nearly cold. How much of it flows the figure cannot tell.",
        change=f"Look at the length first: {100 * limit:g} % reaches {reach} with these wires. Else take larger ones, "
        "or feed it from nearer.",
        subject=board,
        position=key,
        fixes=fixes,
    )


def _branches(view: View, study: StateStudy, board: Equipment) -> list[BranchDrop]:
    return (study if study.zone is None else view.studies.normal).branches(board)


def _branch(
    study: StateStudy,
    subject: str,
    position: str,
    place: Place,
    volts: float,
    part: float,
    limit: float,
    fixes: tuple[Fix, ...],
) -> Finding:
    from wyeline_linter.studies.scenarios import when

    where = f"circuit {position} of `{subject}`" if position else f"`{subject}`"
    return BRANCH.finding(
        place,
        f"{100 * part:.1f} % of the voltage ({volts:.1f} V) is lost in {where}{when(study.state)}; "
        f"{100 * limit:g} % is aimed for",
        found=f"{100 * part:.1f} %, {volts:.1f} V with what is connected{_past_exact(part, position)}",
        needed=f"{100 * limit:g} % at the most",
        change="Take larger wires, shorten the way, or feed it from nearer.",
        subject=subject,
        position=position,
        fixes=fixes,
    )


def _past_exact(part: float, position: str) -> str:
    """What a large drop at a fixed current leaves out, of a circuit: a feeder's is solved with what its load does."""
    if not position or part <= COUNTS_TO:
        return ""
    return "; with so much lost a motor or electronics draw more still and stop, a heater draws less"


@PATH.check
def path_drop_high(view: View) -> Iterator[Finding]:
    _, limit = drop_limits(view)
    found: dict[tuple[str, str], Lost] = {}
    told_before: set[str] = set()
    for study in view.studies.every():
        told: set[str] = set()
        suspects = study.sieve.ways_beyond(limit)
        for name in study.connectivity.order if suspects else ():
            equipment = view.equipment(name) if name in suspects else None
            if equipment is None:
                continue
            whole, parts, _ = study.path_drop(name)
            if whole is None or not parts:
                continue
            above = study.connectivity.supplier.get(name)
            if whole > limit:
                known = above in told or (name in told_before and (name, "") not in found)
                told.add(name)
                if not known:
                    make = partial(_path, study, equipment.place, name, "", whole, limit, parts[-8:], 0.0)
                    keep_worst(found, name, "", Lost(whole, make))
                continue
            if name in told_before:
                continue
            branches = _branches(view, study, equipment)
            worst = max(branches, key=lambda b: b.part, default=None)
            if worst is not None and whole + worst.part > limit:
                place = Place(worst.circuit.block, worst.circuit.circuit.place.span)
                make = partial(
                    _path, study, place, name, worst.circuit.key, whole + worst.part, limit, parts, worst.part
                )
                keep_worst(found, name, worst.circuit.key, Lost(whole + worst.part, make))
        told_before |= told
    for (name, position), lost in found.items():
        if position and (name, "") in found:
            continue
        yield lost.finding()


def _path(
    study: StateStudy,
    place: Place,
    name: str,
    position: str,
    whole: float,
    limit: float,
    parts: tuple[tuple[Feeder, Drop], ...],
    own: float,
) -> Finding:
    from wyeline_linter.studies.scenarios import when

    most, drop = max(parts, key=lambda p: p[1].part)
    where = f"circuit {position} of `{name}`" if position else f"`{name}`"
    in_circuit = own > drop.part
    share = f", {100 * own:.1f} %" if own < 1.0 else ""
    mostly = f"circuit {position} itself{share}" if in_circuit else f"`{most.key}`, {100 * drop.part:.1f} %"
    all_of_it = f"{100 * whole:.1f} %" if whole < 1.0 else "more than the whole voltage"
    lost = f"{100 * whole:.1f} % of the voltage is lost" if whole < 1.0 else "more than the whole voltage would be lost"
    return PATH.finding(
        place,
        f"{lost} in the wires on the way to {where}{when(study.state)}, most of it in {mostly}; "
        f"{100 * limit:g} % is aimed for",
        found=f"{all_of_it} in all wires of the way, {mostly}{_left_over(study, name, own)}",
        needed=f"{100 * limit:g} % at the most",
        change=f"Take larger wires where most is lost: {'the circuit' if in_circuit else f'`{most.key}`'}.",
        subject=name,
        position=position,
    )


def _left_over(study: StateStudy, name: str, own: float) -> str:
    """The voltage under load beside a drop, which leaves out what transformers lose and what their taps add."""
    lowest = study.judged.lowest(name)
    if lowest is None:
        return ""
    left = lowest.per_unit - own
    if left <= 0.0:  # the drop is that of the rated current, which such a wire does not let through
        return "; this current cannot flow through these wires: they are far too thin or too long for it"
    return f"; with transformers and taps {100 * left:.1f} % of nominal is left under load"


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
            text = run_text(conductors, size, tables)
            return (Fix(f"Take {size_text(size)} wires: `{text}`", (replace(place, text),), Safety.LOOK),)
    return ()


def run_text(conductors: Conductors, size: str, tables: Basis) -> str:
    """A run with a larger size, as it is written; conductors that were as large as a leg stay so, and in US practice a
    ground grows in the proportion of the legs, up to their size (NEC 250.122(A), (B))."""
    run = conductors.run
    old = run.size.text
    times = area_mm2(size) / area_mm2(old)

    def grown(own: str) -> str:
        found = size_at_least(tables, min(area_mm2(own) * times, area_mm2(size)))
        return own if isinstance(found, NotListed) else found.value

    def mark(text: str) -> str:
        return f"{text}" if text.endswith(("kcmil", "mm2")) else f"#{text}"

    if size.endswith(("kcmil", "mm2")):
        wires = f"{run.count}{'G' if run.with_protective else 'x'}{size.replace(' ', '')}"
    else:
        wires = f"{run.count}#{size}"
    parts = [f"{conductors.sets} sets {wires}" if conductors.sets > 1 else wires]
    for role, own in conductors.extras:
        kept = size if own.text == old and role in ("N", "PEN", "PE") else own.text
        if role in ("G", "IG") and tables.practice == "us":
            kept = grown(own.text)
        parts.append(f"+ {role} {mark(kept).replace(' kcmil', 'kcmil').replace(' mm2', 'mm2')}")
    return " ".join([*parts, *conductors.marks])


LOOSE = _PROJECT.replace("frequency 60 Hz,", "frequency 60 Hz, drop-branch 10 %, drop-path 15 %,")
BELOW = (
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
    wrong=LOOSE + BELOW.replace("x/r 2\n", "x/r 2, tap 5 %\n") + _KILN,
    right=LOOSE + BELOW + _KILN,
)


_LEAST_V = 1e-3
"""What is left where the way loses all: next to nothing, which can be compared."""


@VOLTAGE.check
def load_voltage_off(view: View) -> Iterator[Finding]:
    from wyeline_linter.nameplate import Fit, judge
    from wyeline_linter.studies.sieve import plate_volts

    found: dict[tuple[str, str], Lost] = {}
    for study in view.studies.every():
        for name in study.sieve.loads_off(LOAD_KINDS):
            equipment = view.model.equipment[name]
            plate = study.derivation.stated(equipment.primary)
            pairs = study.judged.volts(name, entering=True) if plate is not None else ()
            for pair in pairs:
                assert plate is not None
                low, high = plate_volts(plate, to_neutral="N" in pair.between and len(pairs) > 1)
                if low is None or judge(pair.nominal_v, low, high).fit is Fit.WRONG:
                    continue
                verdict = judge(max(pair.volts, _LEAST_V), low, high)
                if verdict.fit is Fit.WRONG:
                    part = abs(verdict.deviation_pct) / 100
                    keep_worst(found, name, "", Lost(part, partial(_off, study, equipment, pair, verdict)))
                    break
    for lost in found.values():
        yield lost.finding()


def _off(study: StateStudy, equipment: Equipment, pair: PairVolts, verdict: NameplateVerdict) -> Finding:
    from wyeline_linter.studies.scenarios import when

    return VOLTAGE.finding(
        equipment.place,
        f"`{equipment.name}` gets {pair.volts:.0f} V under load{when(study.state)}, "
        f"{verdict.deviation_pct:+.1f} % off its nameplate",
        found=f"{pair.volts:.1f} V between {conductors_text(pair.between, study.practice, '–')}",
        needed=f"within 10 % of {verdict.plate_text}",
        change="Take larger wires, another tap, or equipment for the voltage there is.",
        subject=equipment.name,
    )
