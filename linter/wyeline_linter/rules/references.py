"""Names that are used: each must stand for something, and for the right sort of thing."""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Iterator
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.attributes import KINDS, listed, place_phrase
from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Model, Place
from wyeline_grammar.model import Body, Circuit, Claim, End, EquipmentStatement, Span, SystemRef
from wyeline_grammar.tokens import spelled
from wyeline_linter.claims import CLAIMS
from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.near_names import PARTNER_KEYS, names_in, near
from wyeline_linter.network import BYPASS, OUTGOING_PORTS, feeders_named, has_bypass, is_source
from wyeline_linter.rules.naming import sort_phrase
from wyeline_linter.rules.registry import NotAccepted, rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  225 A 3p\npanel LP-1 208Y/120  bus 225 A\n"

DANGLING = rule(
    name="dangling-reference",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A name is used, and nothing is called that.",
    why="What refers to nothing is left out of every figure.",
    roams=True,
    wrong=_FED + "panel LP-2 208Y/120  bus 100 A\nfeeder LP-1 -> LP-22  100 A 3p\nfeeder LP-1 -> LP-2  100 A 3p\n",
    right=_FED + "panel LP-2 208Y/120  bus 100 A\nfeeder LP-1 -> LP-2  100 A 3p\n",
)
OTHER_SORT = rule(
    name="name-of-another-sort",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A name stands where another sort of thing is wanted, such as a type at the end of a feeder.",
    why="A type is a definition and a raceway is a pipe: neither can be fed, and a panel is no type.",
    wrong=_FED + "raceway R-1 2 inch EMT  20 m\nfeeder LP-1 -> R-1  100 A 3p\n",
    right=_FED + "raceway R-1 2 inch EMT  20 m\n",
)


class Use(NamedTuple):
    """A name that is used at a place, the sorts it may be of, and what that is in words."""

    name: str
    place: Place
    sorts: frozenset[str]
    wanted: str
    port: str | None = None


_EQUIPMENT, _SYSTEM, _TYPE = frozenset({"equipment"}), frozenset({"system"}), frozenset({"type"})
_RACEWAY, _SWITCHES = frozenset({"raceway"}), frozenset({"equipment", "feeder"})


def _judge(view: View, use: Use, subject: str) -> Iterator[Finding]:
    entries = view.model.declared.get(use.name, [])
    if any(d.sort in use.sorts for d in entries):
        return
    if not entries and "equipment" in use.sorts and use.name in view.model.unread:
        return  # its own line is told
    if entries:
        what = sort_phrase(entries[0])
        yield OTHER_SORT.finding(
            use.place,
            f"`{use.name}` is {what}, and {use.wanted} is wanted here",
            found=f"`{use.name}`, {what}",
            needed=use.wanted,
            change=f"Write the name of {use.wanted}.",
            subject=subject,
        )
        return
    near_names = [n for n in view.near_names(use.name) if any(d.sort in use.sorts for d in view.model.declared[n])]
    tail = f".{use.port}" if use.port else ""
    yield _dangling(use.place, use.name, use.wanted, subject, near_names, tail)


def _dangling(place: Place, name: str, wanted: str, subject: str, near_names: list[str], tail: str = "") -> Finding:
    shown = listed([f"`{n}`" for n in near_names])
    return DANGLING.finding(
        place,
        f"nothing is called `{name}`" + (f"; the nearest is {shown}" if near_names else ""),
        found=f"`{name}`, which no statement declares",
        needed=wanted,
        change=f"Write {shown}, or declare `{name}`." if near_names else f"Declare `{name}`, or write another name.",
        subject=subject,
        fixes=tuple(Fix(f"Write `{n}`", (replace(place, spelled(n) + tail),), Safety.LOOK) for n in near_names),
    )


def _end(block: Block, end: End, sorts: frozenset[str] = _EQUIPMENT, wanted: str = "a piece of equipment") -> Use:
    return Use(end.name, Place(block, end.span), sorts, wanted, end.port)


@DANGLING.check
def feeder_refers(view: View, feeder: Feeder) -> Iterator[Finding]:
    for end in (feeder.source, feeder.target):
        if end.name not in view.model.equipment:
            yield from _judge(view, _end(feeder.block, end), feeder.key)
    yield from _raceway(view, feeder.body, feeder.block, feeder.key)
    yield from _claims(view, feeder.statement.claims, feeder.block, feeder.key)


def _raceway(view: View, body: Body, block: Block, subject: str) -> Iterator[Finding]:
    raceway = body.raceway
    if raceway is not None and raceway.named:
        span = raceway.span
        use = Use(
            raceway.stuff,
            Place(block, Span(span.line, span.end - len(raceway.stuff), span.end)),
            _RACEWAY,
            "a declared raceway",
        )
        yield from _judge(view, use, subject)


@DANGLING.also("equipment")
def equipment_refers(view: View, equipment: Equipment) -> Iterator[Finding]:
    yield from _statement(view, equipment.block, equipment.statement, equipment)


def _statement(
    view: View, block: Block, statement: EquipmentStatement, equipment: Equipment | None = None
) -> Iterator[Finding]:
    subject = statement.name.text if statement.name is not None else ""
    for side in (statement.primary, statement.secondary):
        if side is not None and side.name is not None and view.model.system(side.name) is None:
            use = Use(side.name, Place(block, side.span), _SYSTEM, "a voltage or a declared system")
            for finding in _judge(view, use, subject):
                yield _second_word(block, statement, side, finding)
    facts = statement.body.facts
    like = facts.get("like")
    if like is not None:
        for name in names_in(like):
            yield from _judge(view, Use(name, Place(block, like.span), _TYPE, "a type"), subject)
    for key in PARTNER_KEYS:
        fact = facts.get(key)
        for name in names_in(fact) if fact is not None else ():
            use = Use(name, Place(block, fact.span if fact else statement.head), _EQUIPMENT, "a piece of equipment")
            yield from _judge(view, use, subject)
    yield from _claims(view, statement.claims, block, subject)
    for circuit in statement.circuits:
        raceway = circuit.body.raceway
        if raceway is not None and raceway.named:
            yield from _raceway(view, circuit.body, block, subject)
        if "with" in circuit.body.facts:
            yield from _shared(block, circuit, statement, equipment)


_WYE_IN_ONE_WORD = re.compile(r"(\d{3,5})[Yy](\d*)[vV]?")


def _second_word(block: Block, statement: EquipmentStatement, side: SystemRef, finding: Finding) -> Finding:
    """A second word that reads as the name of a system: ``panel PUMP ROOM`` where none is called so, ``208Y120``."""
    name = statement.name
    if side.name is None or finding.rule != DANGLING.name:
        return finding
    volts = _WYE_IN_ONE_WORD.fullmatch(side.name)
    if volts is not None:
        meant = f"{volts[1]}Y/{volts[2] or round(float(volts[1]) / 3**0.5)}"
        return dataclasses.replace(
            finding,
            message=f"`{side.name}` is no voltage; a wye is written with its voltage to neutral: `{meant}`",
            change=f"Write `{meant}`.",
            fixes=(Fix(f"Write `{meant}`", (replace(Place(block, side.span), meant),), Safety.LOOK),),
        )
    if name is None or side is not statement.primary:
        return finding
    if name.span.line != side.span.line or any(c.isdigit() for c in name.text + side.name):
        return finding
    line = block.lines[name.span.line]
    if line[name.span.start] == '"' or line[side.span.start] == '"' or line[name.span.end : side.span.start].strip():
        return finding
    both = f'"{name.text} {side.name}"'
    whole = Place(block, Span(name.span.line, name.span.start, side.span.end))
    return dataclasses.replace(
        finding,
        message=f"nothing is called `{side.name}`; a name of several words stands in quotes: `{both}`",
        change=f"Write `{both}`, or the voltage in place of `{side.name}`.",
        fixes=(Fix(f"Write `{both}`", (replace(whole, both),), Safety.LOOK), *finding.fixes),
    )


def _shared(
    block: Block, circuit: Circuit, statement: EquipmentStatement, equipment: Equipment | None
) -> Iterator[Finding]:
    fact = circuit.body.facts["with"]
    wanted = key_of_place(fact.value.data, fact.value.text)
    circuits = [p.circuit for p in equipment.circuits] if equipment is not None else list(statement.circuits)
    known = {c.place.key for c in circuits} | {str(p) for c in circuits for p in c.place.positions}
    subject = statement.name.text if statement.name is not None else ""
    if wanted not in known:
        near_keys = near(wanted, sorted(known - {circuit.place.key}))
        yield DANGLING.finding(
            Place(block, fact.span),
            f"`{subject}` has no circuit {wanted}",
            found=f"`with {wanted}`",
            needed=f"a circuit of `{subject}`",
            change="Write the position of the circuit whose wires this one shares.",
            subject=subject,
            position=circuit.place.key,
            fixes=tuple(
                Fix(f"Write `with {k}`", (replace(Place(block, fact.span), f"with {k}"),), Safety.LOOK)
                for k in near_keys
            ),
        )


def key_of_place(data: object, text: str) -> str:
    """The key of a circuit that a value such as ``7``, ``2,4`` or ``F1`` names."""
    if isinstance(data, tuple):
        return ",".join(map(str, data))
    if isinstance(data, float | int):
        return str(int(data))
    return data if isinstance(data, str) else text


@DANGLING.also("model")
def model_refers(view: View) -> Iterator[Finding]:
    model = view.model
    for sort in ("type", "system", "interlock"):
        for declared in model.declared_of(sort):
            if not isinstance(declared.statement, EquipmentStatement):
                continue
            yield from _statement(view, declared.block, declared.statement)
            among = declared.statement.body.facts.get("among")
            for name in names_in(among) if among is not None else ():
                place = Place(declared.block, among.span if among else declared.span)
                use = Use(name, place, _SWITCHES, "a feeder's label or a piece of equipment")
                yield from _judge(view, use, declared.name)
    for block, scenario in model.scenarios:
        subject = scenario.name.text if scenario.name is not None else ""
        for action in scenario.actions:
            yield from _ends(view, block, action.source, action.target, subject)
    known = {s.name.text for _, s in model.scenarios if s.name is not None}
    for block, expect in model.expects:
        if expect.source is not None:
            yield from _ends(view, block, expect.source, expect.target, expect.source.name)
        if expect.scenario is not None and not _is_state(view, expect.scenario.text, known):
            name, place = expect.scenario.text, Place(block, expect.scenario.span)
            near_names = near(name, sorted(known))
            shown = listed([f'"{n}"' for n in near_names])
            yield DANGLING.finding(
                place,
                f'no scenario is called "{name}"' + (f"; the nearest is {shown}" if near_names else ""),
                found=f'"{name}"',
                needed="the name of a scenario",
                change=f"Write {shown}." if near_names else "Write the scenario, or leave `in` out.",
                fixes=tuple(Fix(f'Write "{n}"', (replace(place, f'"{n}"'),), Safety.LOOK) for n in near_names),
            )


def _is_state(view: View, name: str, scenarios: set[str]) -> bool:
    """Whether a scenario has this name, or a switch state that nobody has to write down."""
    if name in scenarios:
        return True
    from wyeline_linter.studies.states import state_named

    return name.startswith("with") and state_named(view, name) is not None


def _ends(view: View, block: Block, source: End, target: End | None, subject: str) -> Iterator[Finding]:
    """One name (equipment or a feeder's label), or ``A -> B``, where a feeder must run."""
    if target is None:
        use = _end(block, source, _SWITCHES, "a piece of equipment or a feeder's label")
        yield from _judge(view, use, subject)
        return
    found = [*_judge(view, _end(block, source), subject), *_judge(view, _end(block, target), subject)]
    yield from found
    if not found and not feeders_named(view.model, source.text, target.text):
        span = Span(source.span.line, source.span.start, target.span.end)
        yield DANGLING.finding(
            Place(block, span),
            f"no feeder runs from `{source.text}` to `{target.text}`",
            found=f"`{source.text} -> {target.text}`",
            needed="the ends of a feeder, or its label",
            change="Write the feeder's two ends as its own line does, or its label.",
            subject=subject,
        )


CLAIM = rule(
    name="claim-unknown",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A `claim` asks for an exception that no rule knows.",
    why="An exception that nothing checks would be a silent waiver.",
    wrong=_FED + "motor P-1 208 3ph  5 hp\nfeeder LP-1 -> P-1  40 A 3p\n  claim tap-10feet\n",
    right=_FED + "motor P-1 208 3ph  5 hp\nfeeder LP-1 -> P-1  40 A 3p\n",
    mends=True,
)


def _claims(view: View, claims: tuple[Claim, ...], block: Block, subject: str) -> Iterator[Finding]:  # noqa: ARG001
    for claim in claims:
        if claim.name in CLAIMS:
            continue
        start = max(block.lines[claim.span.line].find(claim.name, claim.span.start), 0)
        place = Place(block, Span(claim.span.line, start, start + len(claim.name)))
        near_names = near(claim.name, CLAIMS)
        shown = listed([f"`{n}`" for n in near_names or list(CLAIMS)])
        yield CLAIM.finding(
            place,
            f"no exception is called `{claim.name}`",
            found=f"`claim {claim.name}`",
            needed=shown,
            change=f"Write {shown}, or leave the claim out.",
            subject=subject,
            fixes=tuple(Fix(f"Write `claim {n}`", (replace(place, n),), Safety.LOOK) for n in near_names),
        )


PORT = rule(
    name="port-unknown",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A feeder ends at a port that this kind of equipment does not have, or on the wrong side of it.",
    why="A port says which input or which lugs are meant; one that is not there leaves the connection open.",
    wrong=_FED + "transfer ATS-1  100 A 3p\nfeeder LP-1 -> ATS-1.mains  100 A 3p\n",
    right=_FED + "transfer ATS-1  100 A 3p\nfeeder LP-1 -> ATS-1.normal  100 A 3p\n",
)


@PORT.check
def port_unknown(view: View, feeder: Feeder) -> Iterator[Finding]:
    if feeder.source.port is None and feeder.target.port is None:
        return
    for end, leaving in ((feeder.source, True), (feeder.target, False)):
        equipment = view.equipment(end.name)
        if end.port is None or equipment is None:
            continue
        ports = [word for word, _ in KINDS[equipment.kind].ports if (word in OUTGOING_PORTS) == leaving]
        if end.port in ports:
            continue
        meant = near(end.port.lower(), ports)
        ports = [*meant, *(word for word in ports if word not in meant)]
        place = Place(feeder.block, end.span)
        way = "feeders leave" if leaving else "feeders reach"
        shown = listed([f"`{end.name}.{word}`" for word in ports])
        name = spelled(end.name)
        yield PORT.finding(
            place,
            f"`{end.name}` is {place_phrase(equipment.kind)}, and {way} it at no port `{end.port}`",
            found=f"`{end.text}`",
            needed=shown or f"`{end.name}` alone",
            change=f"Write {shown}." if ports else "Leave the port out.",
            subject=feeder.key,
            fixes=(
                *(Fix(f"Write `{end.name}.{w}`", (replace(place, f"{name}.{w}"),), Safety.LOOK) for w in ports),
                Fix(f"Write `{end.name}` without a port", (replace(place, name),), Safety.LOOK),
            ),
        )


ACTION = rule(
    name="action-without-effect",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="A scenario switches something that cannot be switched that way.",
    why="The scenario would be worked out as if the line were not there.",
    wrong=_FED + 'scenario "Dark"\n  off LP-1\n',
    right=_FED + 'scenario "Dark"\n  off UTIL\n',
)


@ACTION.check
def action_without_effect(view: View) -> Iterator[Finding]:
    model = view.model
    for block, scenario in model.scenarios:
        for action in scenario.actions:
            equipment = model.equipment.get(action.source.name) if action.target is None else None
            if equipment is None:
                continue
            needed = _needed(model, action.verb, equipment, action.source.port)
            if needed is None:
                continue
            yield ACTION.finding(
                Place(block, action.span),
                f"`{action.verb}` does nothing to `{action.source.text}`, which is {place_phrase(equipment.kind)}",
                found=f"`{action.verb} {action.source.text}`",
                needed=needed,
                change=f"Write {needed}, or delete the line.",
                subject=scenario.name.text if scenario.name is not None else "",
            )


def _needed(model: Model, verb: str, equipment: Equipment, port: str | None) -> str | None:
    """What the action needs instead, or None where it does what it says."""
    if verb in ("on", "off") and not is_source(equipment):
        return f"`{verb}` with a source: a utility, generator, inverter or battery"
    if verb in ("open", "close"):
        return f"`{verb}` with a feeder: its label, or its two ends, as in `{verb} A -> B`"
    if verb == "switch" and equipment.kind == "ups":
        if port == BYPASS and has_bypass(model, equipment):
            return None
        return f"`switch {equipment.name}.{BYPASS}`, and a feeder to `{equipment.name}.{BYPASS}`"
    if verb == "switch" and (equipment.kind != "transfer" or port is None):
        return "`switch` with a transfer switch and its port, as in `switch ATS-1.emergency`"
    return None
