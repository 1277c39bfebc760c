"""Emergency and standby supplies: separate, with a second source that carries them; what differs by switch state."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.network import NORMAL, NORMAL_STATE, build
from wyeline_linter.rules.registry import NotAccepted, rule
from wyeline_linter.rules.structure import known_port
from wyeline_linter.rules.transfers import unlike_inputs
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import Known, System

if TYPE_CHECKING:
    from wyeline_linter.view import View

_PROJECT = 'project "Clinic"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
_UTIL = "utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4\n"
_DP = (
    _UTIL + "feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
)
_SET = (
    "generator GEN-1 480Y/277  {kva} kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, "
    "sustained 3 pu, neutral bonded\n"
)
_ATS = (
    "transfer ATS-1 100 A 4p, rated 30 kA, emergency\n"
    "feeder DP -> ATS-1.normal  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  8 m  in 1-1/4 inch EMT, lug-temp 75 degC\n"
    "feeder GEN-1 -> ATS-1.emergency  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  20 m  in 1-1/4 inch EMT, "
    "lug-temp 75 degC\n"
    "feeder ATS-1 -> EL-1  3#6 + N #6 + G #10 Cu THWN-2  4 m  in 1-1/4 inch EMT, lug-temp 75 degC\n"
)
_EL = (
    "panel EL-1 480Y/277  bus 100 A, main lugs, rated 22 kA, lug-temp 75 degC\n"
    '  1  20 A 1p  2 kVA lighting emergency  "Exit lights, east"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
    '  3  20 A 1p  2 kVA lighting emergency  "Exit lights, west"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
    '  5  20 A 1p  2 kVA lighting emergency  "Exit lights, roof"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
)
_OTHER = '  2,4,6  40 A 3p  20 kW heating  "Reheat"  3#8 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n'

_OTHER_CLASSES = frozenset({"legally-required", "critical", "optional"})
"""Classes of supply beside emergency: a circuit that says one of them is not emergency on any board."""
MIXED = rule(
    name="emergency-mixed",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    summary="Emergency circuits share a board with circuits that are not.",
    why="What goes wrong in an ordinary circuit must never put out the lights that lead people to safety.",
    basis="both",
    clause={"us": "700.5(E) (numbered so from memory; (D) before 2023), 700.10(B)", "iec": "60364-5-56 560.7"},
    wrong=_PROJECT
    + _DP
    + _SET.format(kva=40)
    + _ATS.replace(", emergency\n", "\n")
    + _EL
    + _OTHER.replace("20 kW", "14 kW"),
    right=_PROJECT + _DP + _SET.format(kva=40) + _ATS.replace(", emergency\n", "\n") + _EL,
)


@MIXED.check
def emergency_mixed(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS:
        return
    feeding = [f for f in view.feeders_out_of(equipment.name) if "emergency" in f.body.flags]
    transfers = [view.equipment(name) for name in list(view.network.above(equipment.name))[:1]]
    dedicated = any(t is not None and t.kind == "transfer" and "emergency" in t.body.flags for t in transfers)
    whole = "emergency" in equipment.body.flags  # what the board says holds for circuits that say nothing else
    marked = any("emergency" in placed.circuit.body.flags for placed in equipment.circuits)
    if not (whole or marked or feeding or dedicated):
        return
    emergency: list[tuple[str, Place]] = []
    other: list[tuple[str, Place]] = []
    for placed in equipment.circuits:
        flags = placed.circuit.body.flags
        if "spare" in flags or "space" in flags:
            continue
        belongs = "emergency" in flags or (whole and not flags.keys() & _OTHER_CLASSES)
        (emergency if belongs else other).append((placed.key, Place(placed.block, placed.circuit.place.span)))
    if not other or not (emergency or feeding or dedicated or whole):
        return
    keys = listed([key for key, _ in other[:4]], "and") + (" and more" if len(other) > 4 else "")
    why = "circuits " + listed([k for k, _ in emergency[:4]], "and") if emergency else "its transfer switch"
    why = "the board" if whole else why
    yield MIXED.finding(
        other[0][1],
        f"`{equipment.name}` holds ordinary circuits ({keys}) beside emergency ones",
        found=f"{why} marked emergency; {keys} not",
        needed="a board for the emergency system alone",
        change="Move the ordinary circuits to a board of their own, behind another transfer switch; or, where they "
        "belong to the emergency system, write `emergency` at each of them, or at the board where all of them do.",
        subject=equipment.name,
        position=other[0][0],
    )


SECOND = rule(
    name="emergency-without-second-source",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="Emergency load stays dead when a source is lost.",
    why="In an outage these lights stay dark: nothing else is there to feed them.",
    basis="both",
    clause={"us": "700.12", "iec": "60364-5-56 560.6"},
    wrong=_PROJECT
    + _DP
    + "feeder DP -> EL-1  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  4 m  in 1-1/4 inch EMT, lug-temp 75 degC\n"
    + _EL,
    right=_PROJECT + _DP + _SET.format(kva=40) + _ATS.replace(", emergency\n", "\n") + _EL,
)


@SECOND.check
def emergency_without_second_source(view: View) -> Iterator[Finding]:
    for equipment, lost, battery in dead_in_outages(view):
        if battery is not None:
            continue  # how long it lasts is told by `emergency-battery-short`
        yield SECOND.finding(
            equipment.place,
            f"the emergency load on `{equipment.name}` is dead without `{lost}`",
            found=f"one way in, and it comes from `{lost}`",
            needed="a second source: a generator behind a transfer switch, or a battery",
            change="Feed it through a transfer switch with a second source, or from a UPS.",
            subject=equipment.name,
        )


def dead_in_outages(view: View) -> Iterator[tuple[Equipment, str, Equipment | None]]:
    """Each emergency load that nothing but a battery feeds when a source is lost: it, that source, the battery."""
    from wyeline_linter.studies.scenarios import losses

    marked = view.studies.of_each("emergency loads", view.model.equipment, _is_emergency)
    wanted = [equipment for equipment, emergency in marked if emergency]
    if not wanted:
        return
    normal = view.network_in(NORMAL_STATE) if view.network.state != NORMAL_STATE else view.network
    told: set[str] = set()
    above = {n for e in wanted for n in (e.name, *normal.above(e.name))}
    for state in losses(view):
        if state.name.removeprefix("without ") not in above:
            continue
        network = build(view.model, state)
        for equipment in sorted(wanted, key=lambda e: e.name):
            name = equipment.name
            if name in told or not normal.fed(name) or network.fed(name):
                continue
            told.add(name)
            if any(_has_broken_way_in(view, n) for n in (name, *normal.above(name))):
                continue  # the second source may be meant by that line, which is told already
            yield equipment, next(iter(state.off), state.name.removeprefix("without ")), _battery_above(view, name)


def _is_emergency(equipment: Equipment) -> bool:
    if equipment.kind in ("generator", "transfer", "utility"):
        return False
    if "emergency" in equipment.body.flags:
        return True
    return any("emergency" in placed.circuit.body.flags for placed in equipment.circuits)


def _has_broken_way_in(view: View, name: str) -> bool:
    """Whether a feeder to it names a port that there is not, or comes from nothing that is declared."""
    equipment = view.equipment(name)
    return equipment is not None and any(
        view.equipment(f.source.name) is None or not known_port(equipment, f.target.port)
        for f in view.feeders_into(name)
    )


def _battery_above(view: View, name: str) -> Equipment | None:
    """The nearest battery, or UPS with one, there or above."""
    way = (view.equipment(n) for n in (name, *view.network.above(name)))
    return next((e for e in way if e is not None and e.kind in ("ups", "battery")), None)


CAPACITY = rule(
    name="standby-capacity-low",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="A generator is asked to carry more than its rating when the source that it stands in for is lost.",
    why="An overloaded set stalls or trips, and then nothing runs at all.",
    basis="both",
    clause={"us": "700.4, 701.4, 702.4", "iec": "60364-5-55 551.2"},
    wrong=_PROJECT
    + _DP
    + _SET.format(kva=40)
    + _ATS.replace(", emergency\n", "\n").replace("EL-1", "LP-1")
    + _EL.replace("EL-1", "LP-1").replace(" emergency", "").replace("Exit lights", "Hall")
    + '  2,4,6  50 A 3p  38 kW heating  "Reheat"  3#6 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n',
    right=_PROJECT
    + _DP
    + _SET.format(kva=40)
    + _ATS.replace(", emergency\n", "\n").replace("EL-1", "LP-1")
    + _EL.replace("EL-1", "LP-1").replace(" emergency", "").replace("Exit lights", "Hall")
    + _OTHER.replace("20 kW", "12 kW"),
)


@CAPACITY.check
def standby_capacity_low(view: View) -> Iterator[Finding]:
    from wyeline_linter.studies.scenarios import losses, when

    machines = [e for e in view.model.equipment.values() if e.kind == "generator"]
    if not machines:
        return
    told: set[str] = set()
    stated = [s for s in view.states_of_switches() if s != NORMAL_STATE]
    # Where the model states how the source is lost, it says what is shed; only what it leaves open is worked out here.
    covered = {name for state in stated for name in state.off}
    states = [*stated, *(s for s in losses(view, transformers=False) if not s.off <= covered)]
    for state in states:
        book = view.loads_in(state)
        for machine in sorted(machines, key=lambda e: e.name):
            name, power = machine.name, machine.body.facts.get("power")
            if name in told or power is None or not isinstance(power.value.data, float | int) or name in state.off:
                continue
            demand = book.counted(name).demand.va
            size = demand.real if power.value.dimension == "power" else abs(demand)
            unit = "kW" if power.value.dimension == "power" else "kVA"
            if size <= power.number:
                continue
            told.add(name)
            yield CAPACITY.finding(
                machine.place_of("power"),
                f"`{name}` has to carry {size / 1000:.0f} {unit}{when(state)}, and is made for "
                f"{power.number / 1000:g} {unit}",
                found=f"{size / 1000:.1f} {unit} of demand",
                needed=f"{power.number / 1000:g} {unit} at the most",
                change="Shed load in that state (a scenario with `shed`), or choose a larger set.",
                subject=name,
            )


SAME = rule(
    name="transfer-inputs-same-origin",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="Both inputs of a transfer switch come from the same source.",
    why="What is lost on the one way is lost on the other: both ways die together.",
    basis="both",
    clause={"us": "700.12", "iec": "60364-5-56 560.6"},
    wrong=_PROJECT
    + _DP
    + _ATS.replace("feeder GEN-1 -> ATS-1.emergency", "feeder W-2: DP -> ATS-1.emergency").replace(
        ", emergency\n", "\n"
    )
    + _EL.replace(" emergency", "").replace("Exit lights", "Hall"),
    right=_PROJECT
    + _DP
    + _SET.format(kva=40)
    + _ATS.replace(", emergency\n", "\n")
    + _EL.replace(" emergency", "").replace("Exit lights", "Hall"),
)


@SAME.check
def transfer_inputs_same_origin(view: View) -> Iterator[Finding]:
    network = view.network_in(NORMAL_STATE) if view.network.state != NORMAL_STATE else view.network
    for transfer in view.of_kind("transfer"):
        roots: dict[str, str] = {}
        for feeder in view.feeders_into(transfer.name):
            root = network.root.get(feeder.source.name)
            if root is not None:
                roots[feeder.target.port or NORMAL] = root
        if len(roots) > 1 and len(set(roots.values())) == 1:
            root = next(iter(roots.values()))
            yield SAME.finding(
                transfer.place,
                f"both inputs of `{transfer.name}` come from `{root}`",
                found=f"`{root}` at either input",
                needed="two sources that are not lost together",
                change="Feed one input from a generator, another service or a battery.",
                subject=transfer.name,
            )


DIFFERS = rule(
    name="system-differs-between-states",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    not_accepted=NotAccepted.UNCONNECTED,
    summary="A piece of equipment sees another voltage system in one switch state than in another.",
    why="Its devices, its loads and its rotation are right for one of them only.",
    clause={"us": "110.4", "iec": "60364-5-55 551.4"},
    wrong=_PROJECT
    + _DP
    + "generator GEN-1 480 3ph  40 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x/r 18, "
    "sustained 3 pu, ground B\n"
    + _ATS.replace(", emergency\n", "\n").replace(
        "GEN-1 -> ATS-1.emergency  60 A 3p  3#6 + N #6", "GEN-1 -> ATS-1.emergency  60 A 3p  3#6"
    )
    + _EL.replace(" emergency", "").replace("Exit lights", "Hall").replace("panel EL-1 480Y/277", "panel EL-1")
    + 'scenario "Mains lost"\n  off UTIL\n  switch ATS-1.emergency\n',
    right=_PROJECT
    + _DP
    + _SET.format(kva=40)
    + _ATS.replace(", emergency\n", "\n")
    + _EL.replace(" emergency", "").replace("Exit lights", "Hall").replace("panel EL-1 480Y/277", "panel EL-1")
    + 'scenario "Mains lost"\n  off UTIL\n  switch ATS-1.emergency\n',
)


@DIFFERS.check
def system_differs_between_states(view: View) -> Iterator[Finding]:
    from wyeline_linter.studies.scenarios import when

    first, *others = view.studies.every()
    told: set[str] = set()
    for study in others:
        for name in study.connectivity.order:
            state, normal = study.derivation.states.get(name), first.derivation.states.get(name)
            equipment = view.equipment(name)
            if state is None or normal is None or equipment is None or name in told:
                continue
            if not isinstance(state.system, Known) or not isinstance(normal.system, Known):
                continue
            why = _difference(normal.system.system, state.system.system, view.basis)
            if why is None:
                continue
            told.add(name)
            if study.connectivity.supplier.get(name) in told or unlike_inputs(view, equipment) is not None:
                continue
            yield DIFFERS.finding(
                equipment.place,
                f"`{name}` sees another system{when(study.state)} than as normal: {why}",
                found=why,
                needed="the same conductors, voltages, rotation and earthing in every state",
                change="Make the sources alike, or put a transformer between the odd one and this board.",
                subject=name,
            )


def _difference(one: System, two: System, practice: str | None) -> str | None:
    if set(one.conductors) != set(two.conductors):
        return f"{conductors_text(one.conductors, practice)} and {conductors_text(two.conductors, practice)}"
    if one.frequency_hz != two.frequency_hz:
        return f"{one.frequency_hz:g} Hz and {two.frequency_hz:g} Hz"
    here = {frozenset((a, b)): v for a, b, v in one.pair_voltages()}
    for a, b, volts in two.pair_voltages():
        other = here.get(frozenset((a, b)))
        if other is not None and abs(other - volts) > 0.01 * volts:
            return f"{conductors_text((a, b), practice, '–')} is {other:g} V and {volts:g} V"
    if one.rotation and two.rotation and one.rotation != two.rotation:
        return "the legs follow each other the other way round"
    if one.earthing.kind is not two.earthing.kind:
        return f"earthing is {one.earthing.kind.value} and {two.earthing.kind.value}"
    return None
