"""The typed model: what the statements of a ``.wye`` file say.

Statements come from the text of one block alone and never know where the block stands: equal blocks share them. Lines
in spans are relative to the block, columns are code points. What several statements say together (names resolved,
types applied) is in ``linking.py``.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from wyeline_grammar.notation import ConductorSize, Poles, Run, Voltage
from wyeline_grammar.places import Span as Span
from wyeline_grammar.problems import Problem


class Value(NamedTuple):
    """What stands behind a key, or an unkeyed quantity.

    ``kind``: ``quantity`` (data: float in the SI unit of ``dimension``), ``number`` (float), ``voltage`` (Voltage),
    ``range`` ((low, high), with ``dimension``), ``list`` (tuple of int), ``size`` (ConductorSize), ``trade-size``
    (str), ``text``, ``word``, ``name`` (str) or ``names`` (tuple of str). ``text`` is the spelling.
    """

    kind: str
    data: object
    text: str
    dimension: str = ""


class Fact(NamedTuple):
    """An attribute as written: a key with its value, or an unkeyed quantity under the name of its meaning."""

    name: str
    value: Value
    assumed: bool
    span: Span
    poles: Poles | None = None

    @property
    def number(self) -> float:
        """The value as a plain number in SI units. Raises TypeError where it is none."""
        if isinstance(self.value.data, float | int):
            return float(self.value.data)
        raise TypeError(f"{self.name} holds {self.value.kind}, no number")


class NameUse(NamedTuple):
    """A name where it is written."""

    text: str
    span: Span


class SystemRef(NamedTuple):
    """A voltage, or the name of a declared system, on one side of a piece of equipment."""

    voltage: Voltage | None
    name: str | None
    span: Span


class Conductors(NamedTuple):
    """``3 sets 3x400kcmil + N 400kcmil + G #2/0 Cu``.

    ``extras`` are (role, size) with role ``N``, ``G``, ``PE``, ``PEN`` or ``IG``; ``marks`` the metal, insulation or
    cable type behind them, in order.
    """

    sets: int
    run: Run
    extras: tuple[tuple[str, ConductorSize], ...]
    marks: tuple[str, ...]
    span: Span


class Raceway(NamedTuple):
    """``in 2 inch EMT`` (``named`` false) or ``in R-7``."""

    trade_size: str | None
    stuff: str
    named: bool
    span: Span


class LegLoad(NamedTuple):
    """``leg A 1.2 kVA``: the leg is A, B or C."""

    leg: str
    value: Value
    span: Span


_NO_FACTS: Mapping[str, Fact] = {}
_NO_FLAGS: Mapping[str, Span] = {}


class Body(NamedTuple):
    """The phrases of a statement or circuit. ``flags`` holds flags and, for a load, its class written as a kind."""

    facts: Mapping[str, Fact] = _NO_FACTS
    flags: Mapping[str, Span] = _NO_FLAGS
    poles: Poles | None = None
    poles_span: Span | None = None
    conductors: Conductors | None = None
    raceway: Raceway | None = None
    leg_loads: tuple[LegLoad, ...] = ()
    description: str | None = None
    description_span: Span | None = None

    def number(self, name: str) -> float | None:
        """A fact's number in SI units, or None where it is not stated as a number."""
        fact = self.facts.get(name)
        if fact is None:
            return None
        data = fact.value.data
        return data if type(data) is float else float(data) if isinstance(data, float | int) else None

    def text(self, name: str) -> str | None:
        """A fact's spelling, or None where it is not stated."""
        fact = self.facts.get(name)
        return None if fact is None else (fact.value.data if isinstance(fact.value.data, str) else fact.value.text)


EMPTY_BODY = Body()


class Sense:
    """What a body says, whatever its length and description, and wherever it stands: bodies that say the same have one
    sense between them (``senses.py``), so what follows from it alone is worked out once. Compares by identity.

    ``words`` are its keys and flags.
    """

    __slots__ = ("content", "words")

    def __init__(self, content: tuple[object, ...], words: frozenset[str]) -> None:
        self.content = content
        self.words = words


class PositionRef(NamedTuple):
    """A place in a board: positions (``2,4``), or a label (``F1``)."""

    positions: tuple[int, ...]
    label: str | None
    span: Span

    @property
    def key(self) -> str:
        return self.label if self.label is not None else _joined(self.positions)


@lru_cache(maxsize=4096)
def _joined(positions: tuple[int, ...]) -> str:
    return ",".join(map(str, positions))


class Allow(NamedTuple):
    """``allow RULE [at PLACE] "reason"``."""

    rule: str
    rule_span: Span
    place: PositionRef | None
    reason: str
    span: Span


class Issue(NamedTuple):
    """``issue NAME [DATE] phrases``: ``date`` as ISO 8601 writes it, empty for an issue that is being prepared, ``?``
    where it cannot be read."""

    name: NameUse
    date: str
    body: Body
    span: Span


class Claim(NamedTuple):
    """``claim NAME [at PLACE] ["text"]``."""

    name: str
    place: PositionRef | None
    text: str | None
    span: Span


class Circuit(NamedTuple):
    """A load without a name on positions of a board; ``legs`` as written behind a label; ``sense`` is its body's."""

    place: PositionRef
    legs: tuple[str, ...] | None
    legs_span: Span | None
    body: Body
    span: Span
    sense: Sense


class End(NamedTuple):
    """One end of a feeder: equipment, perhaps its port, perhaps the legs taken there (A, B, C, N)."""

    name: str
    port: str | None
    legs: tuple[str, ...] | None
    span: Span
    legs_span: Span | None = None

    @property
    def text(self) -> str:
        return self.name if self.port is None else f"{self.name}.{self.port}"


@dataclass(frozen=True, slots=True)
class Statement:
    """What every statement has. ``head`` spans its head line's words; ``last_line`` is its last line with words.

    ``damaged`` means that part of it could not be read, so that a missing fact proves nothing.
    """

    head: Span
    last_line: int
    doc: str
    problems: tuple[Problem, ...]
    damaged: bool


@dataclass(frozen=True, slots=True)
class WyeVersion(Statement):
    version: str | None


@dataclass(frozen=True, slots=True)
class Include(Statement):
    target: str | None
    target_span: Span


@dataclass(frozen=True, slots=True)
class ProjectStatement(Statement):
    """``issues`` are in the order in which they are written."""

    name: NameUse | None
    body: Body
    allows: tuple[Allow, ...]
    claims: tuple[Claim, ...]
    issues: tuple[Issue, ...]


@dataclass(frozen=True, slots=True)
class EquipmentStatement(Statement):
    """``[type] KIND NAME [SIDES] phrases``. ``primary`` is the only side where there is one."""

    is_type: bool
    kind: str
    kind_span: Span
    name: NameUse | None
    primary: SystemRef | None
    secondary: SystemRef | None
    arrow: bool
    body: Body
    circuits: tuple[Circuit, ...]
    allows: tuple[Allow, ...]
    claims: tuple[Claim, ...]


@dataclass(frozen=True, slots=True)
class RacewayStatement(Statement):
    name: NameUse | None
    trade_size: str | None
    stuff: str | None
    body: Body
    allows: tuple[Allow, ...]
    claims: tuple[Claim, ...]


@dataclass(frozen=True, slots=True)
class FeederStatement(Statement):
    label: NameUse | None
    source: End | None
    target: End | None
    body: Body
    allows: tuple[Allow, ...]
    claims: tuple[Claim, ...]

    @property
    def at(self) -> PositionRef | None:
        """The positions of its device in the board it leaves, or None."""
        fact = self.body.facts.get("at")
        if fact is None:
            return None
        if fact.value.kind == "list" and isinstance(fact.value.data, tuple):
            return PositionRef(tuple(fact.value.data), None, fact.span)
        if fact.value.kind == "number" and isinstance(fact.value.data, float | int):
            return PositionRef((int(fact.value.data),), None, fact.span)
        if fact.value.kind in ("name", "text", "names"):
            label = fact.value.data if isinstance(fact.value.data, str) else fact.value.text
            return PositionRef((), label, fact.span)
        return None


class Action(NamedTuple):
    """A switching action of a scenario: ``verb`` is a word of vocabulary.ACTIONS."""

    verb: str
    source: End
    target: End | None
    value: Value | None
    span: Span


@dataclass(frozen=True, slots=True)
class ScenarioStatement(Statement):
    name: NameUse | None
    title: str | None
    actions: tuple[Action, ...]
    allows: tuple[Allow, ...]


@dataclass(frozen=True, slots=True)
class ExpectStatement(Statement):
    """``expect SUBJECT MEASURE <= VALUE [in SCENARIO]``; ``kind`` is set for ``all KIND``."""

    kind: str | None
    source: End | None
    target: End | None
    measure: str | None
    measure_span: Span | None
    relation: str | None
    value: Value | None
    scenario: NameUse | None


@dataclass(frozen=True, slots=True)
class Unreadable(Statement):
    """A block without a usable statement: only comments, details standing alone, or a head line that says nothing.

    ``name`` is the name that stands where a statement has its own: what is called so is not missing, only unread.
    """

    name: NameUse | None = None
