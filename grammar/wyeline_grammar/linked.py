"""What a linked model is made of: equipment with its types applied, feeders, and whatever bears a name."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.blocks import Block
from wyeline_grammar.places import Place

_new = tuple.__new__  # a named tuple without the call of its Python constructor: one for each circuit of a model
_STATUS_BY_WEIGHT = ("demolish", "relocated", "future", "temporary", "existing", "new")
STATUS = frozenset(_STATUS_BY_WEIGHT)


def status_in(flags: Iterable[str]) -> str | None:
    """The status that a drawing shows: of `existing, demolish` what the project does with it."""
    return min((flag for flag in flags if flag in STATUS), key=_STATUS_BY_WEIGHT.index, default=None)


class PlacedCircuit(NamedTuple):
    """A circuit of a board with the block it is written in (its own or its type's)."""

    circuit: m.Circuit
    block: Block
    key: str


@dataclass(slots=True, eq=False)
class Equipment:
    """A piece of equipment with its types applied. Replaced, never changed, when one of its statements changes."""

    name: str
    kind: str
    block: Block
    statement: m.EquipmentStatement
    body: m.Body
    primary: m.SystemRef | None
    secondary: m.SystemRef | None
    arrow: bool
    circuits: tuple[PlacedCircuit, ...]
    chain: tuple[tuple[Block, m.EquipmentStatement], ...]

    @property
    def place(self) -> Place:
        name = self.statement.name
        return Place(self.block, name.span if name else self.statement.head)

    def place_of(self, attribute: str) -> Place:
        """Where an attribute or flag is written: here, or in a type; the name where it is nowhere."""
        for block, statement in self.chain:
            fact = statement.body.facts.get(attribute)
            if fact is not None:
                return Place(block, fact.span)
            span = statement.body.flags.get(attribute)
            if span is not None:
                return Place(block, span)
        return self.place

    @property
    def status(self) -> str:
        return status_in(self.body.flags) or "new"

    @property
    def damaged(self) -> bool:
        return any(statement.damaged for _, statement in self.chain)


@dataclass(slots=True, eq=False)
class Feeder:
    """A feeder; ``key`` is its label or ``FROM -> TO``, unique in the model."""

    key: str
    block: Block
    statement: m.FeederStatement
    source: m.End
    target: m.End

    @property
    def body(self) -> m.Body:
        return self.statement.body

    @property
    def place(self) -> Place:
        return Place(self.block, self.statement.head)

    @property
    def normally_open(self) -> bool:
        return "normally-open" in self.statement.body.flags


class Declared(NamedTuple):
    """One thing that bears a name: ``sort`` is equipment, type, system, interlock, raceway or feeder."""

    name: str
    sort: str
    kind: str
    block: Block
    span: m.Span
    statement: m.Statement


def feeder_name(statement: m.FeederStatement) -> str:
    """The label, or ``FROM -> TO`` with ports."""
    if statement.label is not None:
        return statement.label.text
    source = statement.source.text if statement.source else "?"
    target = statement.target.text if statement.target else "?"
    return f"{source} -> {target}"


def like_of(statement: m.EquipmentStatement) -> str | None:
    """The name of the type that a statement is like."""
    fact = statement.body.facts.get("like")
    if fact is None:
        return None
    data = fact.value.data
    if isinstance(data, tuple):
        return str(data[0]) if data else None
    return data if isinstance(data, str) else fact.value.text


def merge(name: str, chain: tuple[tuple[Block, m.EquipmentStatement], ...]) -> Equipment:
    """One piece of equipment from its statement and its types, nearest first.

    A key, a status or a position written nearer replaces the one farther away; other flags add up.
    """
    block, statement = chain[0]
    if len(chain) == 1:
        circuits = tuple([_new(PlacedCircuit, (c, block, c.place.key)) for c in statement.circuits])
        body, primary, secondary, arrow = statement.body, statement.primary, statement.secondary, statement.arrow
        return Equipment(name, statement.kind, block, statement, body, primary, secondary, arrow, circuits, chain)
    facts: dict[str, m.Fact] = {}
    flags: dict[str, m.Span] = {}
    taken: set[int | str] = set()
    placed: list[PlacedCircuit] = []
    for origin, part in chain:
        for key, fact in part.body.facts.items():
            facts.setdefault(key, fact)
        has_status = any(flag in STATUS for flag in flags)
        for flag, span in part.body.flags.items():
            if flag not in STATUS or not has_status:
                flags.setdefault(flag, span)
        for circuit in part.circuits:
            place = circuit.place
            if taken.isdisjoint(place.positions or (place.label or "",)):
                placed.append(_new(PlacedCircuit, (circuit, origin, place.key)))
        taken.update(p for c in part.circuits for p in (c.place.positions or (c.place.label or "",)))
    parts = [part for _, part in chain]
    bodies = [part.body for part in parts]
    body = m.Body(
        facts,
        flags,
        next((b.poles for b in bodies if b.poles), None),
        next((b.poles_span for b in bodies if b.poles), None),
        next((b.conductors for b in bodies if b.conductors), None),
        next((b.raceway for b in bodies if b.raceway), None),
        next((b.leg_loads for b in bodies if b.leg_loads), ()),
        next((b.description for b in bodies if b.description), None),
        bodies[0].description_span,
    )
    primary = next((p.primary for p in parts if p.primary), None)
    secondary = next((p.secondary for p in parts if p.secondary), None)
    arrow = any(p.arrow for p in parts)
    return Equipment(name, statement.kind, block, statement, body, primary, secondary, arrow, tuple(placed), chain)
