"""Names: each thing one name, each name one thing, and every type used as what it is."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import place_phrase
from wyeline_grammar.linking import Declared, Equipment, Feeder, Place, PlacedCircuit, feeder_name, like_of
from wyeline_grammar.model import EquipmentStatement, Span
from wyeline_linter.findings import Edit, Finding, Fix, Related, Safety, Severity, replace
from wyeline_linter.near_names import free_name, spelled
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.analysis import View

_FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  225 A 3p\n"
_SORTS = {
    "type": "a type",
    "system": "a system",
    "interlock": "an interlock",
    "raceway": "a raceway",
    "feeder": "a feeder",
}


def sort_phrase(declared: Declared) -> str:
    """``a panel``, ``a type``, ``a raceway``: what a declared name stands for."""
    return _SORTS.get(declared.sort) or place_phrase(declared.kind)


DUPLICATE = rule(
    name="duplicate-tag",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="Two things share one name.",
    why="Schedules, labels and every reference to the name cannot tell the two apart.",
    clause={"us": "408.4", "iec": "81346-1"},
    wrong="raceway R-1 2 inch EMT  20 m\nraceway R-1 3 inch EMT  20 m\n",
    right="raceway R-1 2 inch EMT  20 m\nraceway R-2 3 inch EMT  20 m\n",
    mends=True,
)


@DUPLICATE.check
def duplicate_tag(view: View) -> Iterator[Finding]:
    model = view.model
    for name in model.repeated:
        first, *extras = model.declared[name]
        for extra in extras:
            both = "two feeders" if extra.sort == first.sort == "feeder" else "two things"
            yield _twice(view, name, both, Place(extra.block, extra.span), Place(first.block, first.span), extra.sort)
    seen: dict[str, Place] = {}
    for block, scenario in model.scenarios:
        if scenario.name is None:
            continue
        place = Place(block, scenario.name.span)
        if scenario.name.text in seen:
            yield _twice(view, scenario.name.text, "two scenarios", place, seen[scenario.name.text], "scenario")
        seen.setdefault(scenario.name.text, place)


def _twice(view: View, name: str, what: str, place: Place, first: Place, sort: str) -> Finding:
    other = f"{name} 2" if sort == "scenario" else free_name(name, view.model)
    text = f'"{other}"' if sort == "scenario" else spelled(other)
    return DUPLICATE.finding(
        place,
        f"`{name}` is the name of {what}",
        found=f"{what} called `{name}`",
        needed="one name for one thing",
        change=f"Give this one a name of its own, such as `{other}`.",
        subject=name,
        related=(Related(first, "the name is first given here"),),
        fixes=(Fix(f"Rename this one to `{other}`", (replace(place, text),), Safety.LOOK),),
    )


CASE = rule(
    name="names-differ-by-case",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="Two names differ only in capital and small letters.",
    why="On a drawing or over the telephone both are one name; sooner or later the wrong one is switched off.",
    wrong="raceway R-A 2 inch EMT  20 m\nraceway R-a 3 inch EMT  20 m\n",
    right="raceway R-A 2 inch EMT  20 m\nraceway R-B 3 inch EMT  20 m\n",
)


@CASE.check
def names_differ_by_case(view: View) -> Iterator[Finding]:
    model = view.model
    for names in map(model.folded.__getitem__, model.alike):
        order = {path: i for i, path in enumerate(model.files)}
        entries = sorted(
            (model.declared[name][0] for name in names), key=lambda d: (order[d.block.file], d.block.first_line)
        )
        for later in entries[1:]:
            seen = later.name.casefold() != entries[0].name.casefold()
            how = "look the same and are made of different characters" if seen else "differ only by case"
            yield CASE.finding(
                Place(later.block, later.span),
                f"`{later.name}` and `{entries[0].name}` {how}",
                found=f"`{later.name}` and `{entries[0].name}`",
                needed="names that differ when they are spoken",
                change="Give one of them another name.",
                subject=later.name,
                related=(Related(Place(entries[0].block, entries[0].span), "the other name is given here"),),
            )


LABEL = rule(
    name="feeder-label-missing",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    summary="Two feeders run between the same ends, and one has no label.",
    why="A scenario, an interlock or a schedule that names them by their ends cannot tell which one is meant.",
    wrong=_FED + "panel LP-1 208Y/120  bus 225 A\nfeeder UTIL -> LP-1  225 A 3p, normally-open\n",
    right=_FED + "panel LP-1 208Y/120  bus 225 A\nfeeder SPARE-WAY: UTIL -> LP-1  225 A 3p, normally-open\n",
    mends=True,
)


@LABEL.check
def feeder_label_missing(view: View, feeder: Feeder) -> Iterator[Finding]:
    statement = feeder.statement
    base = feeder_name(statement)
    if statement.label is not None or feeder.key == base:
        return
    first = view.model.feeders.get(base)
    number = 2
    while f"F-{number}" in view.model.declared:
        number += 1
    label = f"F-{number}"
    span = feeder.source.span
    edit = Edit(feeder.block, span.line, span.start, span.line, span.start, f"{label}: ")
    yield LABEL.finding(
        Place(feeder.block, span),
        f"a second feeder runs from `{feeder.source.text}` to `{feeder.target.text}`, and it has no label",
        found=f"two feeders called `{base}`",
        needed="a label for each further one, as in `feeder F-2: A -> B`",
        change=f"Give it a label, such as `{label}:`, or delete it where it is the same feeder written twice.",
        subject=feeder.key,
        related=(Related(first.place, "the first one"),) if first is not None else (),
        fixes=(Fix(f"Label it `{label}`", (edit,), Safety.LOOK),),
    )


UNUSED = rule(
    name="unused-type",
    since="0.1",
    severity=Severity.ADVICE,
    scope="model",
    summary="A type is defined, and nothing is like it.",
    why="A definition that nothing uses misleads whoever changes it and expects an effect.",
    wrong="type panel LAB  bus 225 A, main 200 A\n" + _FED + "panel LP-1 208Y/120  bus 225 A\n",
    right="type panel LAB  bus 225 A, main 200 A\n" + _FED + "panel LP-1 208Y/120  like LAB\n",
    mends=True,
)


@UNUSED.check
def unused_type(view: View) -> Iterator[Finding]:
    model = view.model
    for declared in model.declared_of("type"):
        users = [model.declared[name][0] for name in model.type_users(declared.name)]
        if any(_is_like(user, declared.name) for user in users):
            continue
        block = declared.block
        last = declared.statement.last_line
        end = Edit(block, 0, 0, last, len(block.lines[last]), "")
        if last + 1 < len(block.lines):
            end = Edit(block, 0, 0, last + 1, 0, "")
        yield UNUSED.finding(
            Place(block, declared.span),
            f"nothing is like the type `{declared.name}`",
            found=f"no statement says `like {declared.name}`",
            needed="at least one use",
            change="Delete the type, or write `like` where it belongs.",
            subject=declared.name,
            fixes=(Fix(f"Delete the type `{declared.name}`", (end,), Safety.LOOK),),
        )


def _is_like(user: Declared, name: str) -> bool:
    return isinstance(user.statement, EquipmentStatement) and like_of(user.statement) == name


OTHER_KIND = rule(
    name="type-of-another-kind",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    summary="A statement is like a type of another kind of equipment.",
    why="The facts of a transformer mean nothing on a panel: they would be read by nothing, or by the wrong rule.",
    wrong="type transformer DRY  z 4 %\n" + _FED + "panel LP-1 208Y/120  bus 225 A, like DRY\n",
    right="type panel DRY  outdoor\n" + _FED + "panel LP-1 208Y/120  bus 225 A, like DRY\n",
)


@OTHER_KIND.check
def type_of_another_kind(view: View, equipment: Equipment) -> Iterator[Finding]:
    if len(equipment.chain) > 1:
        yield from _other_kind(view, Place(equipment.block, equipment.statement.head), equipment.statement)


@OTHER_KIND.also("model")
def type_like_another_kind(view: View) -> Iterator[Finding]:
    for declared in view.model.declared_of("type"):
        if isinstance(declared.statement, EquipmentStatement):
            yield from _other_kind(view, Place(declared.block, declared.span), declared.statement)


def _other_kind(view: View, place: Place, statement: EquipmentStatement) -> Iterator[Finding]:
    like = like_of(statement)
    found = view.model.type(like) if like is not None else None
    if found is None or statement.name is None or found[1].kind == statement.kind:
        return
    fact = statement.body.facts["like"]
    what = place_phrase(found[1].kind)
    yield OTHER_KIND.finding(
        Place(place.block, fact.span),
        f"`{statement.name.text}` is {place_phrase(statement.kind)}, and `{like}` is the type of {what}",
        found=f"`{like}`, a type of {found[1].kind}",
        needed=f"a type of {statement.kind}",
        change="Name a type of the same kind, or leave `like` out.",
        subject=statement.name.text,
        related=(Related(Place(found[0], found[1].kind_span), "the type is defined here"),),
    )


CIRCLE = rule(
    name="type-refers-to-itself",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="A type is like itself, directly or through other types.",
    why="A definition that goes round in a circle defines nothing.",
    wrong="type panel LAB  bus 225 A, like WET\ntype panel WET  main 200 A, like LAB\n"
    + _FED
    + "panel LP-1 208Y/120  like LAB\n",
    right="type panel LAB  bus 225 A, like WET\ntype panel WET  main 200 A\n"
    + _FED
    + "panel LP-1 208Y/120  like LAB\n",
)


@CIRCLE.check
def type_refers_to_itself(view: View) -> Iterator[Finding]:
    model = view.model
    told: set[str] = set()
    for declared in model.declared_of("type"):
        circle = _circle(view, declared.name)
        if circle is None or told.intersection(circle) or not isinstance(declared.statement, EquipmentStatement):
            continue
        told.update(circle)
        fact = declared.statement.body.facts["like"]
        way = " -> ".join(f"`{name}`" for name in (*circle, circle[0]))
        text = f"the type `{declared.name}` is like itself" + (f": {way}" if len(circle) > 1 else "")
        yield CIRCLE.finding(
            Place(declared.block, fact.span),
            text,
            found=way,
            needed="types that end in one that is like no other",
            change="Leave out one `like` of the circle.",
            subject=declared.name,
            related=tuple(
                Related(Place(other[0], other[1].name.span), "and back through this one")
                for name in circle[1:]
                if (other := model.type(name)) is not None and other[1].name is not None
            ),
        )


def _circle(view: View, name: str) -> tuple[str, ...] | None:
    """The types from ``name`` back to itself, or None where its chain ends."""
    way = [name]
    while True:
        found = view.model.type(way[-1])
        like = like_of(found[1]) if found is not None else None
        if like is None or like in way:
            return tuple(way) if like == name else None
        way.append(like)


REPEATED = rule(
    name="project-repeated",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="A second `project` statement stands in the model.",
    why="Only the first one's basis, frequency and limits hold; what the second says would be read by nothing.",
    wrong='project "Annex"\n  frequency 60 Hz\nproject "Annex, west"\n  ambient 35 degC\n',
    right='project "Annex"\n  frequency 60 Hz\n  ambient 35 degC\n',
)


@REPEATED.check
def project_repeated(view: View) -> Iterator[Finding]:
    projects = view.model.projects
    for block, statement in projects[1:]:
        first_block, first = projects[0]
        span = statement.name.span if statement.name is not None else statement.head
        first_span = first.name.span if first.name is not None else first.head
        yield REPEATED.finding(
            Place(block, span),
            "a model has one `project` statement, and this is another one",
            found=f"{len(projects)} `project` statements",
            needed="one",
            change="Move what it says under the first one, and delete it.",
            related=(Related(Place(first_block, first_span), "the first one, which holds"),),
        )


PLACEHOLDER = rule(
    name="placeholder-left",
    since="0.1",
    severity=Severity.ADVICE,
    scope="equipment",
    summary="A text still holds a placeholder such as TBD or XX.",
    why="It will print on schedules and labels as it stands.",
    wrong=_FED + 'panel LP-1 208Y/120  bus 225 A, "TBD"\n',
    right=_FED + 'panel LP-1 208Y/120  bus 225 A, "Stair 2, level 1"\n',
)
_PLACEHOLDER = re.compile(r"\b(?:TBD|TBC|TBA|TODO|FIXME|[Xx]{2,})\b|\?{2,}|^\s*\?\s*$")
_TEXT_KEYS = ("location", "note", "per", "number", "client")


@PLACEHOLDER.check
def placeholder_left(view: View, equipment: Equipment) -> Iterator[Finding]:  # noqa: ARG001
    body = equipment.statement.body
    texts: list[tuple[str | None, Span | None]] = [(body.description, body.description_span)]
    if not body.facts.keys().isdisjoint(_TEXT_KEYS):
        texts += [(body.text(key), body.facts[key].span) for key in _TEXT_KEYS if key in body.facts]
    for text, span in texts:
        if text and span is not None and _PLACEHOLDER.search(text):
            yield _placeholder(Place(equipment.block, span), text, equipment.name, "")
    for circuit in equipment.statement.circuits:
        text, span = circuit.body.description, circuit.body.description_span
        if text and span is not None and _PLACEHOLDER.search(text):
            yield _placeholder(Place(equipment.block, span), text, equipment.name, circuit.place.key)


def _placeholder(place: Place, text: str, subject: str, position: str) -> Finding:
    return PLACEHOLDER.finding(
        place,
        f'a placeholder is left in "{text}"',
        found=f'"{text}"',
        needed="the text that shall print",
        change="Write what it is, or leave the text out.",
        subject=subject,
        position=position,
    )


VAGUE = rule(
    name="vague-directory-entry",
    since="0.1",
    severity=Severity.ADVICE,
    scope="board",
    basis="both",
    summary="A circuit has no description, or one that does not say which circuit it is.",
    why="Someone in the dark must know from the directory which device this is: say what and where.",
    clause={"us": "408.4(A)", "iec": "60364-5-51 514.1"},
    wrong='project "Annex"\n  basis us-2023\n'
    + _FED
    + 'panel LP-1 208Y/120  bus 225 A, main 200 A\n  1  20 A 1p  1 kVA lighting  "Lights"\n',
    right='project "Annex"\n  basis us-2023\n'
    + _FED
    + 'panel LP-1 208Y/120  bus 225 A, main 200 A\n  1  20 A 1p  1 kVA lighting  "Lights, stair 2"\n',
)
_GENERIC = frozenset(
    """light lights lighting receptacle receptacles outlet outlets socket sockets plugs power load loads motor motors
    heater heaters heating fan fans pump pumps equipment misc miscellaneous general various unknown other""".split()
)


@VAGUE.check
def vague_directory_entry(view: View, equipment: Equipment) -> Iterator[Finding]:  # noqa: ARG001
    first: dict[str, PlacedCircuit] = {}
    for placed in equipment.circuits:
        circuit = placed.circuit
        body = circuit.body
        if "spare" in body.flags or "space" in body.flags:
            continue
        text = (body.description or "").strip()
        words = " ".join(text.casefold().split())
        if not text:
            yield _vague(placed, equipment, circuit.span, f"circuit {placed.key} has no description", "no description")
        elif words in _GENERIC:
            span = body.description_span or circuit.span
            yield _vague(placed, equipment, span, f'"{text}" does not say which circuit this is', f'"{text}"')
        elif words in first:
            span = body.description_span or circuit.span
            other = first[words].key
            yield _vague(placed, equipment, span, f'circuit {other} is called "{text}", too', f'"{text}" twice')
        if words:
            first.setdefault(words, placed)


def _vague(placed: PlacedCircuit, board: Equipment, span: Span, message: str, found: str) -> Finding:
    return VAGUE.finding(
        Place(placed.block, span),
        message,
        found=found,
        needed="a description that fits one circuit of this board only",
        change='Say what it feeds and where, as in "Outlets, room 104".',
        subject=board.name,
        position=placed.key,
    )
