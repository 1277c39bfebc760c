"""Types: used by something, for equipment of their kind, and not in a circle."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import place_phrase
from wyeline_grammar.linking import Declared, Equipment, Place, like_of
from wyeline_grammar.model import EquipmentStatement
from wyeline_linter.findings import Finding, Fix, Related, Safety, Severity, delete_statement
from wyeline_linter.rules.naming import FED
from wyeline_linter.rules.registry import NotAccepted, rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

UNUSED = rule(
    name="unused-type",
    since="0.1",
    severity=Severity.ADVICE,
    scope="model",
    summary="A type is defined, and nothing is like it.",
    why="A definition that nothing uses misleads whoever changes it and expects an effect.",
    wrong="type panel LAB  bus 225 A, main 200 A\n" + FED + "panel LP-1 208Y/120  bus 225 A\n",
    right="type panel LAB  bus 225 A, main 200 A\n" + FED + "panel LP-1 208Y/120  like LAB\n",
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
        end = delete_statement(block, declared.statement.last_line)
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
    not_accepted=NotAccepted.UNCLEAR,
    summary="A statement is like a type of another kind of equipment.",
    why="The facts of a transformer mean nothing on a panel: they would be read by nothing, or by the wrong rule.",
    wrong="type transformer DRY  z 4 %\n" + FED + "panel LP-1 208Y/120  bus 225 A, like DRY\n",
    right="type panel DRY  outdoor\n" + FED + "panel LP-1 208Y/120  bus 225 A, like DRY\n",
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
    not_accepted=NotAccepted.UNCLEAR,
    summary="A type is like itself, directly or through other types.",
    why="A definition that goes round in a circle defines nothing.",
    wrong="type panel LAB  bus 225 A, like WET\ntype panel WET  main 200 A, like LAB\n"
    + FED
    + "panel LP-1 208Y/120  like LAB\n",
    right="type panel LAB  bus 225 A, like WET\ntype panel WET  main 200 A\n" + FED + "panel LP-1 208Y/120  like LAB\n",
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
