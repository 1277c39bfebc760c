"""The facts without which no fault current or voltage can be told, and figures that rest on a ceiling."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.units import HORSEPOWER_W
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.rules.registry import rule
from wyeline_linter.rules.wires_unwritten import has_route_alone

if TYPE_CHECKING:
    from wyeline_linter.view import View

_PROJECT = 'project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
_SUPPLY = (
    "utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40\n"
)

INPUTS = rule(
    name="fault-inputs-missing",
    since="0.1",
    severity=Severity.GAP,
    scope="study",
    summary="A source lacks the data without which no fault current below it can be told.",
    why="A missing figure is not a small one: nothing is calculated from it, and nothing is compared.",
    clause={"us": "110.24", "iec": "60909-0"},
    wrong=_PROJECT + "utility UTIL 208Y/120  fault 10 kA, fault-min 8 kA\npanel DP 208Y/120  bus 225 A, rated 14 kA\n"
    "feeder UTIL -> DP  225 A 3p  3#4/0 + N #4/0 + G #4 Cu THWN-2  6 m  in 2-1/2 inch EMT\n",
    right=_PROJECT
    + "utility UTIL 208Y/120  fault 10 kA, fault-min 8 kA, x/r 4\npanel DP 208Y/120  bus 225 A, rated 14 kA\n"
    "feeder UTIL -> DP  225 A 3p  3#4/0 + N #4/0 + G #4 Cu THWN-2  6 m  in 2-1/2 inch EMT\n",
)
LENGTH = rule(
    name="length-missing",
    since="0.1",
    severity=Severity.GAP,
    scope="study",
    summary="The length of a feeder is not written, so nothing below it has a fault current or a voltage under load.",
    why="A length that is guessed makes one figure too good and the other too bad; only the drawing knows it.",
    wrong=_PROJECT + _SUPPLY.replace("  6 m", "") + "panel DP 480Y/277  bus 400 A, rated 25 kA\n",
    right=_PROJECT + _SUPPLY + "panel DP 480Y/277  bus 400 A, rated 25 kA\n",
)
IMPEDANCE = rule(
    name="impedance-missing",
    since="0.1",
    severity=Severity.GAP,
    scope="study",
    summary="A transformer or a feeder lacks the data for its impedance, so nothing below it can be told.",
    why="Without the impedance there is no fault current and no voltage under load below; a transformer's is read on "
    "its nameplate, a feeder's follows from its wires and their length.",
    wrong=_PROJECT
    + "utility UTIL 480 3ph  fault 30 kA, fault-min 25 kA, x/r 6\ntransformer TX-1 480 3ph -> 208Y/120  45 kVA, x/r 2\n"
    "feeder UTIL -> TX-1  70 A 3p  3#4 + G #8 Cu THWN-2  5 m  in 1 inch EMT\n",
    right=_PROJECT + "utility UTIL 480 3ph  fault 30 kA, fault-min 25 kA, x/r 6\n"
    "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 2\n"
    "feeder UTIL -> TX-1  70 A 3p  3#4 + G #8 Cu THWN-2  5 m  in 1 inch EMT\n",
)


@INPUTS.check
def fault_inputs_missing(view: View) -> Iterator[Finding]:
    yield from (f for f in _lacking(view) if f.rule == INPUTS.name)


@LENGTH.check
def length_missing(view: View) -> Iterator[Finding]:
    yield from (f for f in _lacking(view) if f.rule == LENGTH.name)


@IMPEDANCE.check
def impedance_missing(view: View) -> Iterator[Finding]:
    yield from (f for f in _lacking(view) if f.rule == IMPEDANCE.name)


def _lacking(view: View) -> list[Finding]:
    return view.studies.once("missing", lambda: list(_facts_missing(view)))


def _facts_missing(view: View) -> Iterator[Finding]:
    """Every lacking fact once, at its own place: what hangs on it below stays silent."""
    from wyeline_linter.studies.case import Lack, Missing

    found: dict[tuple[str, str], Missing] = {}
    for study in view.studies.for_faults():
        for missing in study.missing():
            found.setdefault((missing.subject, missing.text), missing)
    chosen = {Lack.LENGTH: LENGTH, Lack.IMPEDANCE: IMPEDANCE}
    without_basis = []
    by_subject: dict[tuple[str, str], list[Missing]] = {}
    for missing in found.values():
        if view.basis is None and missing.lack is Lack.IMPEDANCE and missing.text.startswith("the project names no"):
            without_basis.append(missing)
            continue
        by_subject.setdefault((missing.subject, chosen.get(missing.lack, INPUTS).name), []).append(missing)
    for subject in [subject for subject, name in by_subject if name == IMPEDANCE.name]:
        feeder = view.model.feeders.get(subject)
        if feeder is None or feeder.body.conductors is not None or "resistance" in feeder.body.facts:
            continue
        if view.basis is not None and has_route_alone(view, feeder):
            del by_subject[subject, IMPEDANCE.name]  # `wires-not-sized` tells it, with the size that would do
        else:  # a feeder of which nothing is written yet lacks both for one reason
            by_subject[subject, IMPEDANCE.name] += by_subject.pop((subject, LENGTH.name), [])
    for (subject, _), group in by_subject.items():
        first = group[0]
        smallest = all(m.lack is Lack.SMALLEST for m in group)
        earth = all(m.lack is Lack.EARTH for m in group)
        bare = subject in view.model.feeders and len({m.lack for m in group}) > 1
        needed = ", and ".join(m.needed for m in group) if bare else listed([m.needed for m in group], "and")
        below = "the smallest faults" if smallest else "faults to earth" if earth else "faults and voltages"
        yield chosen.get(first.lack, INPUTS).finding(
            first.place,
            f"`{subject}` has neither wires nor a length yet" if bare else listed([m.text for m in group], "and"),
            found="; ".join(m.text for m in group),
            needed="; ".join(dict.fromkeys(m.needed for m in group)),
            change=f"Write {needed}; until then {below} from here on are not known.",
            subject=subject,
        )
    if without_basis:
        first = min(without_basis, key=lambda m: (m.place.file, m.place.row))
        count = len(without_basis)
        yield IMPEDANCE.finding(
            first.place,
            f"the project names no basis, so no table gives the resistance of {count} feeder{'s' * (count > 1)}",
            found=listed([f"`{m.subject}`" for m in without_basis[:3]], "and") + (" and more" if count > 3 else ""),
            needed="`basis us-2023` or `basis iec`, or `resistance` and `reactance` at each feeder",
            change="Write the basis in the project block; its tables then give resistance and reactance by size.",
            subject=first.subject,
        )


MOTORS = rule(
    name="motor-contribution-missing",
    since="0.1",
    severity=Severity.WARNING,
    scope="study",
    summary="Motors that matter for a fault state neither their reactance nor their locked-rotor current.",
    why="Running motors feed a fault for its first cycles; here they are counted by a usual value for their size.",
    basis="both",
    clause={"us": "110.9", "iec": "60909-0"},
    wrong=_PROJECT + _SUPPLY + "mcc DP 480 3ph  bus 600 A, rated 30 kA\nmotor P-1 460 3ph  75 hp, pf 0.87, eff 94 %\n"
    "feeder DP -> P-1  200 A 3p  3#1 + G #6 Cu THWN-2  12 m  in 2 inch EMT\n",
    right=_PROJECT
    + _SUPPLY
    + "mcc DP 480 3ph  bus 600 A, rated 30 kA\nmotor P-1 460 3ph  75 hp, pf 0.87, eff 94 %, lra 543 A\n"
    "feeder DP -> P-1  200 A 3p  3#1 + G #6 Cu THWN-2  12 m  in 2 inch EMT\n",
)
MOTORS_THAT_MATTER_W = 50 * HORSEPOWER_W
"""Sum of motors on one board from which their contribution is worth its data (IEEE Std 141 draws a line at 50 hp)."""


@MOTORS.check
def motor_contribution_missing(view: View) -> Iterator[Finding]:
    study = view.studies.normal
    loads_at, motors_of = study.loads_at, {}
    for equipment, noted in view.studies.of_each("motors without data", view.model.equipment, _motors_without_data):
        if noted:
            motors_of[equipment.name] = noted
    boards: dict[str, list[tuple[float, str, Place]]] = {}
    for name in study.connectivity.order if motors_of else ():
        for circuit, watts, called, place in motors_of.get(name, ()):
            if circuit in loads_at.get(name, {}) if circuit else name in loads_at:
                board = name if circuit else study.connectivity.supplier.get(name, "")
                boards.setdefault(board, []).append((watts, called, place))
    for board, motors in boards.items():
        total = sum(watts for watts, _, _ in motors)
        if total < MOTORS_THAT_MATTER_W:
            continue
        motors.sort(key=lambda m: -m[0])
        us = view.derivation.practice == "us"
        much = f"{total / HORSEPOWER_W:.0f} hp" if us else f"{total / 1000:.0f} kW"
        names = listed([f"`{m[1]}`" for m in motors[:3]], "and") + (" and smaller ones" if len(motors) > 3 else "")
        yield MOTORS.finding(
            motors[0][2],
            f"{much} of motors on `{board}` state no locked-rotor current: {names}",
            found=f"{much} of motors counted by a usual reactance",
            needed="`lra` or `subtransient` of the larger ones",
            change="Write `lra` from the nameplates of the larger motors.",
            subject=motors[0][1],
        )


def _motors_without_data(equipment: Equipment) -> list[tuple[str, float, str, Place]]:
    """The motors that a statement tells of, with neither reactance nor locked-rotor current: circuit (empty: its own),
    watts, name and place."""
    from wyeline_linter.studies.place_loads import adds_to_faults

    name = equipment.name
    written = [(equipment.body, "", name, equipment.place)] if equipment.kind == "motor" else []
    written += [
        (placed.circuit.body, placed.key, f"{name} {placed.key}", Place(placed.block, placed.circuit.place.span))
        for placed in equipment.circuits
        if "motor" in placed.circuit.body.flags
    ]
    return [
        (circuit, watts * (body.number("count") or 1.0), called, place)
        for body, circuit, called, place in written
        if (watts := body.number("power")) is not None
        and adds_to_faults(body)
        and "lra" not in body.facts
        and "subtransient" not in body.facts
    ]


CEILING = rule(
    name="upper-bound-used",
    since="0.1",
    severity=Severity.ADVICE,
    scope="study",
    summary="A supply is taken as unlimited, so every largest fault below it is a ceiling.",
    why="A ceiling is good for choosing ratings and useless for trip checks: a real fault may be far smaller.",
    wrong=_PROJECT + "utility UTIL 480 3ph  infinite, fault-min 15 kA, x/r 6\n"
    "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 2\n"
    "feeder UTIL -> TX-1  70 A 3p  3#4 + G #8 Cu THWN-2  5 m  in 1 inch EMT\n",
    right=_PROJECT + "utility UTIL 480 3ph  fault 22 kA, fault-min 15 kA, x/r 6\n"
    "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 2\n"
    "feeder UTIL -> TX-1  70 A 3p  3#4 + G #8 Cu THWN-2  5 m  in 1 inch EMT\n",
)


@CEILING.check
def upper_bound_used(view: View) -> Iterator[Finding]:
    from wyeline_linter.studies.source_impedance import is_unlimited

    for equipment in view.of_kind("utility"):
        if is_unlimited(equipment):
            yield CEILING.finding(
                equipment.place_of("infinite"),
                f"`{equipment.name}` is taken as unlimited: every largest fault below it is a ceiling",
                found="no fault level of the utility",
                needed="its letter with the largest and the smallest fault level",
                change="Ask the utility for both fault levels and X/R, and write them.",
                subject=equipment.name,
            )
