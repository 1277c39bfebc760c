"""Supplies that meet: kept apart, or made to stand together; never in a circle by mistake."""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment, Feeder, Place, feeder_name
from wyeline_grammar.model import EquipmentStatement
from wyeline_grammar.references import references
from wyeline_grammar.tokens import spelled
from wyeline_linter.findings import (
    Finding,
    Fix,
    Offered,
    Related,
    Safety,
    Severity,
    append_phrase,
    delete_statement,
    insert_below,
    replace,
)
from wyeline_linter.near_names import names_in
from wyeline_linter.network import (
    NORMAL_STATE,
    Network,
    SwitchState,
    claims_parallel,
    feeders_named,
    follows_grid,
    makes_system,
    scenario_state,
)
from wyeline_linter.repair_edits import mentions
from wyeline_linter.rules.registry import NotAccepted, rule
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import Known, System, volts_text
from wyeline_linter.verdicts import Refusal

if TYPE_CHECKING:
    from wyeline_linter.view import View

_FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  225 A 3p\npanel LP-1 208Y/120  bus 225 A\n"

SECOND = rule(
    name="second-supply",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="Two supplies are tied together for good.",
    why="Two sources on one bus feed each other's faults and drive current through each other, unless they are kept "
    "apart or made to run together.",
    clause={"us": "702.5, 705.12", "iec": "60364-5-55 551.6, 551.7"},
    roams=True,
    wrong="utility UTIL 208Y/120  fault 10 kA, x/r 4\ngenerator GEN-1 208Y/120  60 kVA, pf 0.8\n"
    "panel LP-1 208Y/120  bus 225 A\nfeeder UTIL -> LP-1  150 A 3p\nfeeder GEN-1 -> LP-1  150 A 3p\n",
    right="utility UTIL 208Y/120  fault 10 kA, x/r 4\ngenerator GEN-1 208Y/120  60 kVA, pf 0.8\n"
    "panel LP-1 208Y/120  bus 225 A\ntransfer ATS-1  150 A 3p\nfeeder UTIL -> ATS-1.normal  150 A 3p\n"
    "feeder GEN-1 -> ATS-1.emergency  150 A 3p\nfeeder ATS-1 -> LP-1\n",
    mends=True,
)
LOOP = rule(
    name="supply-loop",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="Closed devices form a circle, so that current can go round or arrive by two ways.",
    why="Each device on the way sees only a part of the current, and opening one does not make anything dead.",
    roams=True,
    wrong="utility UTIL 480Y/277  fault 14 kA, x/r 4\nswitchboard DP-1 480Y/277  bus 800 A\n"
    "switchboard DP-2 480Y/277  bus 400 A\nfeeder UTIL -> DP-1  800 A 3p\nfeeder DP-1 -> DP-2  400 A 3p\n"
    "feeder DP-2 -> DP-1  400 A 3p\n",
    right="utility UTIL 480Y/277  fault 14 kA, x/r 4\nswitchboard DP-1 480Y/277  bus 800 A\n"
    "switchboard DP-2 480Y/277  bus 400 A\nfeeder UTIL -> DP-1  800 A 3p\nfeeder DP-1 -> DP-2  400 A 3p\n"
    "feeder DP-2 -> DP-1  400 A 3p, normally-open\n",
    mends=True,
)


@SECOND.check
def joined_supplies(view: View) -> Iterator[Finding]:
    """Loops and second supplies, in the normal state and in every scenario that closes something more."""
    told: set[str] = set()
    for network in _networks(view):
        for name in sorted(network.others):
            equipment = view.equipment(name)
            if equipment is None or makes_system(equipment):
                continue
            for feeder in network.others[name]:
                if feeder.key not in told and _joins(view, network, equipment, feeder):
                    told.add(feeder.key)
                    yield _joined(view, network, equipment, feeder)


def _networks(view: View) -> Iterator[Network]:
    yield view.network
    for _, statement in view.model.scenarios:
        if any(action.verb in ("close", "on") for action in statement.actions):
            state: SwitchState = scenario_state(view.model, statement)
            if state.name != view.network.state.name:
                yield view.network_in(state)


def _joins(view: View, network: Network, equipment: Equipment, feeder: Feeder) -> bool:
    source = view.equipment(feeder.source.name)
    if _same_line_again(view, feeder):
        return False
    if (
        source is None
        or source.name == equipment.name
        or not network.fed(source.name)
        or not network.fed(equipment.name)
    ):
        return False
    supply = network.supply.get(equipment.name)
    if any(_refused(view, f) for f in (feeder, supply) if f is not None):
        return False  # that one cannot feed it is told, and comes first
    return not follows_grid(source) and not claims_parallel(equipment, feeder)


def _refused(view: View, feeder: Feeder) -> bool:
    judged = view.feeder_state(feeder.key)
    return judged is not None and isinstance(judged.verdict, Refusal)


def _same_line_again(view: View, feeder: Feeder) -> bool:
    """Whether it is a second line between the same ends without a label: that is told as such, and once."""
    base = feeder_name(feeder.statement)
    if feeder.statement.label is not None or feeder.key == base:
        return False
    return (first := view.model.feeders.get(base)) is not None and first.statement.label is None


def _joined(view: View, network: Network, equipment: Equipment, feeder: Feeder) -> Finding:
    name, source = equipment.name, feeder.source.name
    first = network.supply.get(name)
    when = "" if network.state.name == NORMAL_STATE.name else f' in "{network.state.name}"'
    related = (Related(first.place, f"`{name}` is fed by this one, too"),) if first is not None else ()
    above = list(network.above(source))
    if network.root[source] == network.root[name] and name not in above and first is not None:
        # Of two ways to one board, the one written later is the one too many.
        order = {path: i for i, path in enumerate(view.model.files)}
        one, two = sorted((first, feeder), key=lambda f: (order[f.block.file], f.block.first_line))
        first, feeder, source = one, two, two.source.name
        related = (Related(first.place, f"`{name}` is fed by this one, too"),)
    place = Place(feeder.block, feeder.target.span)
    if network.root[source] == network.root[name]:
        if name in above:
            ring = [name, *reversed(above[: above.index(name)]), source, name]
            found = " -> ".join(f"`{n}`" for n in ring)
            message = f"current can go round in a circle{when}: {found}"
        else:
            found = f"`{feeder.key}` and `{first.key if first is not None else source}`"
            message = f"`{name}` is fed by two ways from `{network.root[name]}`{when}: {found}"
        open_one = append_phrase(feeder.block, feeder.statement.head.line, "normally-open")
        opened = Fix(f"Let `{feeder.key}` stand open (`normally-open`)", (open_one,), Safety.LOOK)
        fixes = Offered(lambda: (opened, *_left_out(view, feeder)), lambda: view.edits)
        return LOOP.finding(
            place,
            message,
            found=found,
            needed="one way to each piece of equipment, or `claim parallel` where two are meant",
            change="Let one of these feeders stand open, or claim the parallel operation.",
            subject=feeder.key,
            related=related,
            fixes=fixes if not when else (),
        )
    inputs = _inputs(view, network, equipment, first, feeder)
    return SECOND.finding(
        place,
        f"`{name}` is fed from `{network.root[source]}` and from `{network.root[name]}` at once{when}",
        found=f"two sources on `{name}`: `{network.root[name]}` and `{network.root[source]}`",
        needed="one source at a time, by a transfer switch or an interlock, or `claim parallel`",
        change=f"Write which input each feeder reaches: `{name}.normal` or `{name}.emergency`."
        if inputs
        else "Put a transfer switch ahead of it, let one feeder stand open, or claim the parallel operation.",
        subject=feeder.key,
        related=related,
        fixes=(inputs or _transfer(view, equipment, first, feeder)) if not when else (),
    )


def _left_out(view: View, feeder: Feeder) -> Iterator[Fix]:
    """The line left out, where nothing else of the model calls it by its name."""
    label = feeder.statement.label
    named = len(references(view.model, label.text)) > 1 if label is not None else any(mentions(view.model, feeder))
    if not named:
        gone = delete_statement(feeder.block, feeder.statement.last_line)
        yield Fix(f"Leave out `{feeder.key}`", (gone,), Safety.LOOK)


def _inputs(
    view: View, network: Network, equipment: Equipment, first: Feeder | None, second: Feeder
) -> tuple[Fix, ...]:
    """The inputs of a transfer switch that its feeders do not name: the utility's is the normal one."""
    if equipment.kind != "transfer" or first is None or first.block is second.block:
        return ()
    roots = {f.key: view.equipment(network.root.get(f.source.name, "")) for f in (first, second)}
    pair = sorted((first, second), key=lambda f: (root := roots[f.key]) is None or root.kind != "utility")
    wanted = list(zip(pair, ("normal", "emergency"), strict=True))
    if any(feeder.target.port not in (None, port) for feeder, port in wanted):
        return ()
    name = spelled(equipment.name)
    edits = tuple(replace(Place(feeder.block, feeder.target.span), f"{name}.{port}") for feeder, port in wanted)
    said = " and ".join(f"`{feeder.source.text}` the {port}" for feeder, port in wanted)
    return (Fix(f"Make {said} input of `{equipment.name}`", edits, Safety.LOOK),)


def _transfer(view: View, equipment: Equipment, first: Feeder | None, second: Feeder) -> tuple[Fix, ...]:
    open_one = append_phrase(second.block, second.statement.head.line, "normally-open")
    opened = Fix(f"Let `{second.key}` stand open (`normally-open`)", (open_one,), Safety.LOOK)
    if first is None or first.block is second.block:
        return (opened,)
    number = 1
    while f"ATS-{number}" in view.model.declared:
        number += 1
    name = f"ATS-{number}"
    ratings = [r for r in (first.body.number("rating"), second.body.number("rating")) if r is not None]
    poles = max((p.count for p in (first.body.poles, second.body.poles) if p is not None), default=3)
    device = f"  {max(ratings):g} A {poles}p" if ratings else ""
    lines = f"transfer {name}{device}\nfeeder {name} -> {spelled(equipment.name)}"
    edits = (
        replace(Place(first.block, first.target.span), f"{name}.normal"),
        replace(Place(second.block, second.target.span), f"{name}.emergency"),
        insert_below(second.block, second.statement.last_line, lines),
    )
    return (Fix(f"Put a transfer switch `{name}` between them and `{equipment.name}`", edits, Safety.LOOK), opened)


UNEQUAL = rule(
    name="unequal-sources-joined",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    not_accepted=NotAccepted.UNCONNECTED,
    summary="Supplies that run in parallel differ in voltage, angle, frequency or order of legs.",
    why="Closing a tie between unequal supplies is the same as a short circuit.",
    clause={"us": "705.14 (numbered so from memory; 705.143 before 2020)", "iec": "60364-5-55 551.7"},
    wrong="utility UTIL 480Y/277  fault 14 kA, x/r 4\ngenerator GEN-1 480Y/277  60 kVA, pf 0.8, frequency 50 Hz\n"
    "panel DP 480Y/277  bus 225 A\n  claim parallel\nfeeder UTIL -> DP  150 A 3p\nfeeder GEN-1 -> DP  150 A 3p\n",
    right="utility UTIL 480Y/277  fault 14 kA, x/r 4\ngenerator GEN-1 480Y/277  60 kVA, pf 0.8\n"
    "panel DP 480Y/277  bus 225 A\n  claim parallel\nfeeder UTIL -> DP  150 A 3p\nfeeder GEN-1 -> DP  150 A 3p\n",
)


@UNEQUAL.check
def unequal_sources_joined(view: View, equipment: Equipment) -> Iterator[Finding]:
    others = view.network.others.get(equipment.name)
    state = view.state(equipment.name)
    if not others or state is None or not isinstance(state.arriving, Known):
        return
    for feeder in others:
        arriving = view.feeder_state(feeder.key)
        if not claims_parallel(equipment, feeder) or arriving is None or not isinstance(arriving.carried, Known):
            continue
        why = _difference(state.arriving.system, arriving.carried.system, view.basis)
        if why is not None:
            one, two = view.network.supplier.get(equipment.name, ""), feeder.source.name
            yield UNEQUAL.finding(
                Place(feeder.block, feeder.target.span),
                f"`{one}` and `{two}` are joined at `{equipment.name}`, and {why}",
                found=why,
                needed="equal voltage, angle, frequency and order of legs",
                change="Keep the two apart, or make them equal: one vector group, the same legs, one nominal.",
                subject=feeder.key,
            )


def _difference(one: System, two: System, practice: str | None) -> str | None:
    """How two systems on one bus differ, in words, or None: 0.5 % in voltage, 0.1° in angle."""
    if one.frequency_hz != two.frequency_hz:
        return f"one has {one.frequency_hz:g} Hz, the other {two.frequency_hz:g} Hz"
    legs = one.legs
    if set(legs) != set(two.legs):
        return f"one brings legs {conductors_text(legs, practice)}, the other {conductors_text(two.legs, practice)}"
    for first, second in zip(legs, (*legs[1:], legs[0]), strict=True):
        if first == second:
            continue
        a, b = one.potential(first) - one.potential(second), two.potential(first) - two.potential(second)
        if abs(abs(a) - abs(b)) > 0.005 * abs(a):
            pair = conductors_text((first, second), practice, "–")
            return f"{pair} is {volts_text(abs(a))} on one and {volts_text(abs(b))} on the other"
        degrees = math.degrees(cmath.phase(b / a))
        if abs(degrees) > 0.1:
            return f"they are {abs(degrees):.0f}° apart"
    return None


_TWO_WAYS = (
    _FED + "panel LP-2 208Y/120  bus 100 A\nfeeder W-1: LP-1 -> LP-2  100 A 3p\n"
    "feeder W-2: UTIL -> LP-2  100 A 3p, normally-open\n"
)
INTERLOCK = rule(
    name="interlock-broken",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="More devices are closed than their interlock lets close at once.",
    why="A state that the interlock prevents cannot be switched, so no figure for it means anything.",
    wrong=_TWO_WAYS + 'interlock KEY-1 at-most 1, among W-1, W-2\nscenario "Round"\n  close W-2\n  open UTIL -> LP-1\n',
    right=_TWO_WAYS + 'interlock KEY-1 at-most 1, among W-1, W-2\nscenario "Round"\n  close W-2\n  open W-1\n',
)


@INTERLOCK.check
def interlock_broken(view: View) -> Iterator[Finding]:
    model = view.model
    interlocks = model.declared_of("interlock")
    if not interlocks:
        return
    for state in view.states_of_switches():
        for declared in interlocks:
            statement = declared.statement
            if not isinstance(statement, EquipmentStatement) or "among" not in statement.body.facts:
                continue
            most = statement.body.number("at-most") or 1.0
            named = [f for name in names_in(statement.body.facts["among"]) for f in feeders_named(model, name, None)]
            closed = [f.key for f in named if state.closed(f)]
            if len(closed) > most:
                shown = listed([f"`{key}`" for key in closed], "and")
                when = "as normal" if state.name == NORMAL_STATE.name else f'in "{state.name}"'
                yield INTERLOCK.finding(
                    Place(declared.block, declared.span),
                    f"{shown} are closed {when}, and `{declared.name}` lets {most:g} close",
                    found=f"{len(closed)} closed: {shown}",
                    needed=f"{most:g} closed at the most",
                    change="Open one of them in that state, or correct the interlock.",
                    subject=declared.name,
                )
