"""Where the neutral of each source is tied to earth, and what a transfer switch does with it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_linter.findings import Finding, Fix, Related, Safety, Severity, replace
from wyeline_linter.network import BYPASS, NORMAL, NORMAL_STATE, has_bypass
from wyeline_linter.rules.registry import rule
from wyeline_linter.shares import share_of
from wyeline_linter.systems import Known, System

if TYPE_CHECKING:
    from wyeline_linter.view import View

_PROJECT = 'project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
_UTIL = "utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4\n"
_DP = (
    _UTIL + "feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
)
_WIRES = "3#3/0 + N #3/0 + G #6 Cu THWN-2"
_STANDBY = (
    f"feeder DP -> ATS-1.normal  200 A 3p  {_WIRES}  8 m  in 2 inch EMT\n"
    f"feeder GEN-1 -> ATS-1.emergency  200 A 3p  {_WIRES}  20 m  in 2 inch EMT\n"
    f"feeder ATS-1 -> LP-1  {_WIRES}  4 m  in 2 inch EMT\n"
    "panel LP-1 480Y/277  bus 225 A, main lugs, rated 22 kA, lug-temp 75 degC\n"
    '  1  20 A 1p  2 kVA lighting  "Stairs"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
)
_SET = (
    "generator GEN-1 480Y/277  140 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, "
    "sustained 3 pu"
)

MISMATCH = rule(
    name="transfer-neutral-mismatch",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="A transfer switch passes on a neutral bonded on both sides, or opens one bonded on neither.",
    why="Where the alternate source has its own bond, the switch must open the neutral too; where it has none, the "
    "neutral must stay connected to the one bond there is.",
    basis="both",
    clause={"us": "250.30, 250.35", "iec": "60364-4-44 444.4.7"},
    wrong=_PROJECT + _DP + f"{_SET}, neutral bonded\ntransfer ATS-1 200 A 3p, rated 30 kA\n" + _STANDBY,
    right=_PROJECT + _DP + f"{_SET}, neutral bonded\ntransfer ATS-1 200 A 4p, rated 30 kA\n" + _STANDBY,
    mends=True,
)


def switches_neutral(transfer: Equipment) -> bool | None:
    """Whether a transfer switch opens the neutral; None where neither its poles nor ``neutral`` say it."""
    word = transfer.body.text("neutral")
    if word is not None:
        return word in ("switched", "overlapping")
    poles = transfer.body.poles
    if poles is None:
        return None
    return poles.switched_neutral or poles.count == 4


def _inputs(view: View, transfer: Equipment) -> dict[str, Feeder]:
    return {feeder.target.port or NORMAL: feeder for feeder in view.feeders_into(transfer.name)}


def _offered(view: View, feeder: Feeder) -> System | None:
    state = view.feeder_state(feeder.key)
    return state.carried.system if state is not None and isinstance(state.carried, Known) else None


def _root(view: View, feeder: Feeder) -> Equipment | None:
    """The generator, UPS or utility behind a feeder, as normal."""
    network = view.network_in(NORMAL_STATE) if view.network.state != NORMAL_STATE else view.network
    name = feeder.source.name
    return view.equipment(network.root.get(name, name))


@MISMATCH.check
def transfer_neutral_mismatch(view: View) -> Iterator[Finding]:
    for transfer in view.of_kind("transfer"):
        inputs = _inputs(view, transfer)
        alternate, normal = inputs.get("emergency"), inputs.get(NORMAL)
        if alternate is None or normal is None:
            continue
        system, other = _offered(view, alternate), _offered(view, normal)
        machine = _root(view, alternate)
        if system is None or other is None or not (system.has_neutral and other.has_neutral):
            continue
        if machine is None or machine.kind != "generator":
            continue
        word, switched = machine.body.text("neutral"), switches_neutral(transfer)
        if word is None or switched is None:
            yield _unsaid(transfer, machine, word)
        elif word == "bonded" and not switched:
            yield _mismatch(transfer, machine, "passes the neutral on, and it is bonded on both sides", four=True)
        elif word == "floating" and switched:
            yield _mismatch(transfer, machine, "opens the neutral, and then it is bonded nowhere", four=False)


def _unsaid(transfer: Equipment, machine: Equipment, word: str | None) -> Finding:
    who, needed = (machine, "`neutral bonded` or `neutral floating`") if word is None else (transfer, "its poles")
    what = (
        f"whether the neutral of `{machine.name}` is bonded"
        if word is None
        else f"how many poles `{transfer.name}` has"
    )
    return MISMATCH.finding(
        who.place,
        f"it is not written {what}, so the neutral of `{transfer.name}` cannot be judged",
        severity=Severity.GAP,
        found="nothing about it",
        needed=needed,
        change=f"Write {needed} at `{who.name}`.",
        subject=who.name,
    )


def _mismatch(transfer: Equipment, machine: Equipment, how: str, *, four: bool) -> Finding:
    rating = transfer.statement.body.facts.get("rating")
    fixes: tuple[Fix, ...] = ()
    if rating is not None and rating.poles is not None and "neutral" not in transfer.body.facts:
        text = f"{rating.value.text} {4 if four else 3}p"
        edit = replace(Place(transfer.block, rating.span), text)
        fixes = (Fix(f"Choose a switch with {4 if four else 3} poles", (edit,), Safety.LOOK),)
    tied = "bonded" if four else "floating"
    return MISMATCH.finding(
        transfer.place,
        f"`{transfer.name}` {how}: `{machine.name}` says `neutral {tied}`",
        found=f"a neutral {'passed through' if four else 'switched'}, and `neutral {tied}` at `{machine.name}`",
        needed="four poles with a bond at the set, or three with none" if four else "three poles, or a bond at the set",
        change="Choose a four-pole switch, or take the bond out of the set."
        if four
        else "Choose a three-pole switch, or bond the neutral at the set.",
        subject=transfer.name,
        related=(Related(machine.place_of("neutral"), "the bond of the set is written here"),),
        fixes=fixes,
    )


MISSING = rule(
    name="neutral-bond-missing",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="A source with a neutral of its own ties it to earth nowhere.",
    why="Without the bond an earth fault trips nothing and the neutral may stand at any voltage.",
    basis="both",
    clause={"us": "250.20(B), 250.30(A)(1)", "iec": "60364-5-55 551.4"},
    wrong=_PROJECT
    + "generator GEN-1 208Y/120  50 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, "
    "sustained 3 pu, neutral floating\n"
    "feeder GEN-1 -> LP-1  175 A 3p  3#2/0 + N #2/0 + G #6 Cu THWN-2  6 m  in 2 inch EMT\n"
    "panel LP-1 208Y/120  bus 225 A, main lugs, rated 10 kA, lug-temp 75 degC\n",
    right=_PROJECT
    + "generator GEN-1 208Y/120  50 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, "
    "sustained 3 pu, neutral bonded\n"
    "feeder GEN-1 -> LP-1  175 A 3p  3#2/0 + N #2/0 + G #6 Cu THWN-2  6 m  in 2 inch EMT\n"
    "panel LP-1 208Y/120  bus 225 A, main lugs, rated 10 kA, lug-temp 75 degC\n",
    mends=True,
)


@MISSING.check
def neutral_bond_missing(view: View) -> Iterator[Finding]:
    for machine in view.of_kind("generator", "ups", "inverter"):
        if machine.body.text("neutral") != "floating":
            continue
        state = view.state(machine.name)
        if state is None or not isinstance(state.system, Known) or not state.system.system.has_neutral:
            continue
        if _bonded_downstream(view, machine.name) or _bonded_at_bypass(view, machine):
            continue
        place = machine.place_of("neutral")
        yield MISSING.finding(
            place,
            f"the neutral of `{machine.name}` floats, and nothing it feeds ties it to earth",
            found="`neutral floating`, and no board marked as service equipment, no solid transfer",
            needed="one bond of the neutral, at the source or at its first board",
            change="Bond the neutral at the source, or at the first board behind it.",
            subject=machine.name,
            fixes=(Fix("Bond the neutral at the source", (replace(place, "neutral bonded"),), Safety.LOOK),),
        )


def _bonded_at_bypass(view: View, machine: Equipment) -> bool:
    """Whether the neutral of a UPS is that of its bypass, earthed where this comes from."""
    feeders = view.feeders_into(machine.name) if has_bypass(view.model, machine) else ()
    systems = [_offered(view, feeder) for feeder in feeders if feeder.target.port == BYPASS]
    return any(s is not None and s.has_neutral and s.earthing.solid for s in systems)


def _bonded_downstream(view: View, name: str) -> bool:
    """Whether a board that carries the bond, or a transfer that keeps the neutral joined to another source, follows."""
    pending, seen = [name], {name}
    while pending:
        for feeder in view.feeders_out_of(pending.pop()):
            equipment = view.equipment(feeder.target.name)
            if equipment is None or equipment.name in seen:
                continue
            seen.add(equipment.name)
            if "service-equipment" in equipment.body.flags:
                return True
            if equipment.kind == "transfer":
                # What it does with the neutral is judged by transfer-neutral-mismatch.
                return True
            if equipment.kind not in ("transformer", "ups"):
                pending.append(equipment.name)
    return False


REPEATED = rule(
    name="neutral-bond-repeated",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    summary="The neutral is tied to earth again behind the place where it is tied already.",
    why="Part of the neutral current then flows over building steel and pipes, and earth-fault relays see only a part.",
    basis="both",
    clause={"us": "250.24(B) (numbered so from memory; (A)(5) before 2023), 250.142(B)", "iec": "60364-4-44 444.4.3"},
    wrong=_PROJECT
    + _DP.replace("lug-temp 75 degC", "lug-temp 75 degC, service-equipment")
    + f"feeder DP -> LP-1  200 A 3p  {_WIRES}  8 m  in 2 inch EMT\n"
    "panel LP-1 480Y/277  bus 225 A, main 200 A, rated 22 kA, lug-temp 75 degC, service-equipment\n",
    right=_PROJECT
    + _DP.replace("lug-temp 75 degC", "lug-temp 75 degC, service-equipment")
    + f"feeder DP -> LP-1  200 A 3p  {_WIRES}  8 m  in 2 inch EMT\n"
    "panel LP-1 480Y/277  bus 225 A, main 200 A, rated 22 kA, lug-temp 75 degC\n",
)


@REPEATED.also("equipment", said=("service-equipment",))
def neutral_bond_repeated(view: View, equipment: Equipment) -> Iterator[Finding]:
    if "service-equipment" not in equipment.body.flags or not view.network.fed(equipment.name):
        return
    state = view.state(equipment.name)
    if state is None or not isinstance(state.arriving, Known) or not state.arriving.system.has_neutral:
        return
    earlier: Equipment | None = None
    for name in view.network.above(equipment.name):
        above = view.equipment(name)
        if above is None:
            return
        if "service-equipment" in above.body.flags:
            earlier = above
        if above.kind == "utility":
            break
        if above.kind in ("transformer", "generator", "ups", "inverter"):
            earlier = above if state.arriving.system.earthing.solid else earlier
            break
    if earlier is None:
        return
    yield REPEATED.finding(
        equipment.place_of("service-equipment"),
        f"`{equipment.name}` is marked as service equipment, and its neutral is earthed at `{earlier.name}` already",
        found=f"a bond at `{earlier.name}` and another at `{equipment.name}`",
        needed="one bond in each system",
        change=f"Take the mark off `{equipment.name}`, and keep neutral and ground apart there.",
        subject=equipment.name,
        related=(Related(earlier.place, "the neutral is bonded here"),),
    )


ZIGZAG = rule(
    name="zigzag-protection",
    since="0.1",
    severity=Severity.WARNING,
    scope="feeder",
    summary="The device of a grounding transformer is too large for it.",
    why="A large device would let the transformer burn, and the neutral that it makes would be lost with it.",
    basis="us",
    clause={"us": "450.5"},
    wrong=_PROJECT + "utility UTIL 480 3ph  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "feeder UTIL -> ZZ-1  50 A 3p  3#8 + G #10 Cu THWN-2  6 m  in 1 inch EMT, lug-temp 75 degC\n"
    "transformer ZZ-1 480 3ph -> 480Y/277  30 kVA, connection zigzag, z 4 %, x/r 2\n",
    right=_PROJECT + "utility UTIL 480 3ph  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "feeder UTIL -> ZZ-1  45 A 3p  3#8 + G #10 Cu THWN-2  6 m  in 1 inch EMT, lug-temp 75 degC\n"
    "transformer ZZ-1 480 3ph -> 480Y/277  30 kVA, connection zigzag, z 4 %, x/r 2\n",
)
ZIGZAG_SHARE = 1.25
"""Largest device of a grounding autotransformer, as a share of its rated current (NEC 450.5)."""


@ZIGZAG.check
def zigzag_protection(view: View, feeder: Feeder) -> Iterator[Finding]:
    target = view.equipment(feeder.target.name)
    if target is None or target.kind != "transformer" or target.body.text("connection") != "zigzag":
        return
    state, rating, va = view.feeder_state(feeder.key), feeder.body.number("rating"), target.body.number("power")
    if state is None or not isinstance(state.carried, Known) or rating is None or va is None:
        return
    rated = va / 3**0.5 / state.carried.system.nominal.line_v
    # 450.5 names no next standard size above its 125 % (from memory).
    if rating > ZIGZAG_SHARE * rated * 1.0001:
        yield ZIGZAG.finding(
            feeder.place,
            f"{rating:g} A protects the grounding transformer `{target.name}` of {rated:.1f} A",
            found=f"{rating:g} A, {share_of(rating / rated, 'its current')}",
            needed=f"{ZIGZAG_SHARE * rated:.1f} A at the most (125 %)",
            change="Choose a smaller device, or a larger grounding transformer.",
            subject=feeder.key,
        )


JOINED = rule(
    name="earthing-systems-joined",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="One board is fed from an earthed system in one position of its switch and an unearthed one in the other.",
    why="Devices, insulation and fault protection are chosen for one kind of earthing; in the other they fail.",
    clause={"us": "250.20, 250.4", "iec": "60364-1 312.2, 60364-4-44 444.4.6"},
    wrong=_PROJECT
    + _DP.replace(" + N 500kcmil", "").replace("480Y/277  bus", "480 3ph  bus")
    + "generator GEN-1 480 3ph  90 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x/r 18, sustained 3 pu\n"
    "transfer ATS-1 200 A 3p, rated 30 kA\n"
    "feeder DP -> ATS-1.normal  125 A 3p  3#1 + G #6 Cu THWN-2  8 m  in 2 inch EMT\n"
    "feeder GEN-1 -> ATS-1.emergency  125 A 3p  3#1 + G #6 Cu THWN-2  20 m  in 2 inch EMT\n",
    right=_PROJECT
    + _DP.replace(" + N 500kcmil", "").replace("480Y/277  bus", "480 3ph  bus")
    + "generator GEN-1 480Y/277  90 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, "
    "sustained 3 pu\n"
    "transfer ATS-1 200 A 3p, rated 30 kA\n"
    "feeder DP -> ATS-1.normal  125 A 3p  3#1 + G #6 Cu THWN-2  8 m  in 2 inch EMT\n"
    "feeder GEN-1 -> ATS-1.emergency  125 A 3p  3#1 + G #6 Cu THWN-2  20 m  in 2 inch EMT\n",
)


@JOINED.check
def earthing_systems_joined(view: View) -> Iterator[Finding]:
    for transfer in view.of_kind("transfer"):
        inputs = _inputs(view, transfer)
        systems = {port: s for port, f in inputs.items() if (s := _offered(view, f)) is not None}
        if len(systems) < 2:
            continue
        one, two = systems.get(NORMAL), systems.get("emergency")
        if one is None or two is None or one.frequency_hz == 0 or two.frequency_hz == 0:
            continue
        first, second = _in_words(one), _in_words(two)
        if first != second:
            yield JOINED.finding(
                transfer.place,
                f"`{transfer.name}` switches from {first} system to {second} one",
                found=f"{first} system at its normal input, {second} one at the other",
                needed="the same earthing at both inputs",
                change="Earth both sources alike, or put a transformer between.",
                subject=transfer.name,
            )


def _in_words(system: System) -> str:
    kind = system.earthing.kind.value
    return {"solid": "a solidly earthed", "none": "an unearthed"}.get(kind, "an impedance-earthed")
