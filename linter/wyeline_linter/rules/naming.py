"""Names: each thing one name, each name one thing, and no placeholders left."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import place_phrase
from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Declared, Equipment, Feeder, Place, PlacedCircuit, feeder_name
from wyeline_grammar.model import Span
from wyeline_grammar.tokens import spelled
from wyeline_linter.findings import Edit, Finding, Fix, Related, Safety, Severity, code_end, delete_statement, replace
from wyeline_linter.near_names import free_name
from wyeline_linter.rules.registry import NotAccepted, rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  225 A 3p\n"
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
    not_accepted=NotAccepted.UNCLEAR,
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
    not_accepted=NotAccepted.UNCLEAR,
    summary="Two feeders run between the same ends, and one has no label.",
    why="A scenario, an interlock or a schedule that names them by their ends cannot tell which one is meant.",
    wrong=FED + "panel LP-1 208Y/120  bus 225 A\nfeeder UTIL -> LP-1  225 A 3p, normally-open\n",
    right=FED + "panel LP-1 208Y/120  bus 225 A\nfeeder SPARE-WAY: UTIL -> LP-1  225 A 3p, normally-open\n",
    mends=True,
)


@LABEL.check
def feeder_label_missing(view: View, feeder: Feeder) -> Iterator[Finding]:
    statement = feeder.statement
    if statement.label is not None or " #" not in feeder.key:
        return
    base = feeder_name(statement)
    if feeder.key == base:
        return
    first = view.model.feeders.get(base)
    number = 2
    while f"F-{number}" in view.model.declared:
        number += 1
    label = f"F-{number}"
    span = feeder.source.span
    edit = Edit(feeder.block, span.line, span.start, span.line, span.start, f"{label}: ")
    fixes: tuple[Fix, ...] = (Fix(f"Label it `{label}`", (edit,), Safety.LOOK),)
    again = first is not None and _words(first.block) == _words(feeder.block)
    if again:
        gone = delete_statement(feeder.block, statement.last_line)
        fixes = (Fix("Delete it: it says what the first one says", (gone,), Safety.LOOK), *fixes)
    yield LABEL.finding(
        Place(feeder.block, span),
        f"a second feeder runs from `{feeder.source.text}` to `{feeder.target.text}`, and it has no label",
        found=f"two feeders called `{base}`" + (", word for word the same" if again else ""),
        needed="a label for each further one, as in `feeder F-2: A -> B`",
        change=f"Give it a label, such as `{label}:`, or delete it where it is the same feeder written twice.",
        subject=feeder.key,
        related=(Related(first.place, "the first one"),) if first is not None else (),
        fixes=fixes,
    )


def _words(block: Block) -> list[list[str]]:
    """What a statement says, whatever its columns and comments."""
    said = (line[: code_end(line)].split() for line in block.lines)
    return [words for words in said if words]


REPEATED = rule(
    name="project-repeated",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    not_accepted=NotAccepted.UNCLEAR,
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
    wrong=FED + 'panel LP-1 208Y/120  bus 225 A, "TBD"\n',
    right=FED + 'panel LP-1 208Y/120  bus 225 A, "Stair 2, level 1"\n',
)
_PLACEHOLDER = re.compile(r"\b(?:TBD|TBC|TBA|TODO|FIXME|[Xx]{2,})\b|\?{2,}|^\s*\?\s*$")
_MAYBE = re.compile("TBD|TBC|TBA|TODO|FIXME|[Xx]{2}|[?]")
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
    circuits = equipment.statement.circuits
    if not circuits or not _MAYBE.search("\n".join([c.body.description for c in circuits if c.body.description])):
        return  # one look at all of them
    for circuit in circuits:
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
    + FED
    + 'panel LP-1 208Y/120  bus 225 A, main 200 A\n  1  20 A 1p  1 kVA lighting  "Lights"\n',
    right='project "Annex"\n  basis us-2023\n'
    + FED
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
