"""A feeder or circuit with all that the code rules ask of it: wires, voltage, what protects it, how it is laid.

A line is built once and kept while nothing that it was built from is replaced.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from operator import is_
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place, PlacedCircuit
from wyeline_grammar.model import Body, RacewayStatement
from wyeline_linter.ahead import Ahead, own_device_a
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.laying import how_laid, is_wet, raceway_of, shared_raceway
from wyeline_linter.protection.wiring import Wiring, wiring_of
from wyeline_linter.standard_ratings import DeviceKind
from wyeline_linter.systems import Known, System
from wyeline_linter.tables import Basis

if TYPE_CHECKING:
    from wyeline_linter.view import View

MEDIUM_VOLTAGE_V = 1000.0
"""Above this the ampacity and fill tables that are held do not apply."""
METAL_RACEWAYS = frozenset({"EMT", "RMC", "IMC"})
"""Raceways that may serve as the equipment grounding conductor (NEC 250.118, from memory)."""


class Guard(NamedTuple):
    """The overcurrent device that protects a line: its own, or the nearest one ahead. ``at`` names what holds it."""

    amps: float
    kind: DeviceKind
    own: bool
    at: str


@dataclass(slots=True, eq=False)
class Line:
    """A feeder, or a circuit of a board, whose wires are written.

    ``subject`` and ``position`` are those of its findings, ``where`` names it in words. ``system`` is what its wires
    carry. ``guard`` is None where no device stands between it and ``maker``, which makes its voltage. ``laid`` is None
    where how it lies is not known (``lacks`` says what is missing). ``shared`` names the raceway it lies in with
    others. ``assumed`` are remarks on values nobody wrote. ``claims`` are the exceptions that it asks for.

    Nobody writes to a line. It is not frozen, because every feeder has one and frozen ones cost more to make.
    """

    subject: str
    position: str
    where: str
    block: Block
    body: Body
    place: Place
    wiring: Wiring
    tables: Basis
    system: System
    guard: Guard | None
    maker: str
    source: Equipment
    target: Equipment | None
    feeder: Feeder | None
    circuit: PlacedCircuit | None
    laid: Laid | None
    lacks: str
    shared: str
    claims: frozenset[str]
    assumed: tuple[str, ...]
    lug_ends: tuple[str, ...]

    @property
    def us(self) -> bool:
        return self.tables.practice == "us"

    @property
    def wires_place(self) -> Place:
        """Where its wires are written."""
        conductors = self.body.conductors
        return Place(self.block, conductors.span) if conductors is not None else self.place

    def place_of(self, key: str) -> Place:
        """Where an attribute is written; its wires where it is not."""
        fact = self.body.facts.get(key)
        return Place(self.block, fact.span) if fact is not None else self.wires_place

    @property
    def medium(self) -> bool:
        return self.system.widest_v > MEDIUM_VOLTAGE_V


def feeder_line(view: View, feeder: Feeder) -> Line | None:
    """A feeder as a line; None without wires, basis or a voltage that is settled."""
    settled = view.settled.get(feeder.key)
    if settled is not None and settled[0] is feeder:
        return settled[1]
    line = _kept_line(view, feeder)
    view.settled[feeder.key] = feeder, line
    return line


def _kept_line(view: View, feeder: Feeder) -> Line | None:
    if feeder.body.conductors is None or view.tables is None or feeder.statement.damaged:
        return None
    if feeder.source.name == feeder.target.name:
        return None  # it feeds nothing, which is told
    source, target = view.equipment(feeder.source.name), view.equipment(feeder.target.name)
    state = view.feeder_state(feeder.key)
    if source is None or target is None or state is None or not isinstance(state.carried, Known):
        return None
    above = view.state(source.name)
    raceway = raceway_of(view, feeder.body)
    deps = (feeder, source, target, state, above, raceway, view.tables)
    kept = view.lines.get(feeder.key)
    if kept is not None and all(map(is_, kept[0], deps)):
        return kept[1]
    claims = _claims_of(feeder)
    made = _feeder(view, view.tables, feeder, source, target, state.carried.system, raceway, claims)
    view.lines[feeder.key] = (deps, made)
    return made


def planned_line(view: View, feeder: Feeder, plan: Callable[[System], Wiring]) -> Line | None:
    """A feeder as a line with the wires that ``plan`` gives it, whatever is written; None where its voltage is open."""
    source, target = view.equipment(feeder.source.name), view.equipment(feeder.target.name)
    state = view.feeder_state(feeder.key)
    if source is None or target is None or state is None or not isinstance(state.carried, Known):
        return None
    if view.tables is None:
        return None
    claims = _claims_of(feeder)
    system, raceway = state.carried.system, raceway_of(view, feeder.body)
    return _feeder(view, view.tables, feeder, source, target, system, raceway, claims, plan(system))


def _feeder(
    view: View,
    tables: Basis,
    feeder: Feeder,
    source: Equipment,
    target: Equipment,
    system: System,
    raceway: RacewayStatement | None,
    claims: frozenset[str],
    wiring: Wiring | None = None,
) -> Line:
    body = feeder.body
    above = view.state(source.name)
    onward = above.onward if above is not None else None
    if above is not None and feeder.source.port == "subfeed" and above.ahead is not None:
        onward = above.ahead
    maker = onward.maker if onward is not None else source.name
    own = body.number("rating")
    guard = None
    if own is not None:
        guard = Guard(own, device_kind(body, own, tables), True, feeder.key)
    elif onward is not None:
        guard = guard_ahead(view, onward, tables)
    ends = [source, target]
    marked, lug_ends = _lugs(body, ends)
    if wiring is None:
        assert body.conductors is not None
        wiring = wiring_of(body.conductors, len(system.legs), tables, wet=is_wet(body))
    ends_in = guard.amps if guard is not None else own_device_a(target) or 0.0
    laid, lacks, assumed = how_laid(view, tables, body, raceway, wiring, system, marked, ends_in)
    return Line(
        feeder.key, "", f"`{feeder.key}`", feeder.block, body, feeder.place, wiring, tables, system, guard, maker,
        source, target, feeder, None, laid, lacks, shared_raceway(body), claims, assumed, lug_ends,
    )  # fmt: skip


def guard_ahead(view: View, ahead: Ahead, tables: Basis) -> Guard | None:
    """The device that stands ahead of a line without one of its own; None where there is none."""
    if ahead.device_a is None:
        return None
    return Guard(ahead.device_a, _kind_of(view, ahead.device_at, ahead.device_a, tables), False, ahead.device_at)


def first_device_a(line: Line) -> float | None:
    """The device that a line ends in, amperes: the main of a board, or a fused switch; None where it has none."""
    return own_device_a(line.target) if line.target is not None else None


NO_CLAIMS: frozenset[str] = frozenset()


def _claims_of(feeder: Feeder) -> frozenset[str]:
    claims = feeder.statement.claims
    return frozenset(c.name for c in claims) if claims else NO_CLAIMS


def device_kind(body: Body, amps: float, tables: Basis) -> DeviceKind:
    """Fuse, miniature breaker (IEC, with a curve), or breaker."""
    if "fuse" in body.facts or "fused" in body.flags:
        return "fuse"
    return "mcb" if tables.practice == "iec" and ("curve" in body.facts or amps < 20) else "breaker"


def _kind_of(view: View, at: str, amps: float, tables: Basis) -> DeviceKind:
    feeder, equipment = view.model.feeders.get(at), view.equipment(at)
    body = feeder.body if feeder is not None else equipment.body if equipment is not None else None
    return device_kind(body, amps, tables) if body is not None else "breaker"


MOTOR_LUG_C = 75.0
"""What the terminals of a motor bear without a mark: design B, C or D (NEC 110.14(C)(1)(a)(4), from memory)."""
_NO_MARK = frozenset({"utility"})
"""The utility's own terminals are not the installation's to judge."""


def _lugs(body: Body, ends: list[Equipment]) -> tuple[int | None, tuple[str, ...]]:
    """What the terminals at both ends are marked for, None where one of them is not; and the names of those."""
    own = body.number("lug-temp")
    if own is not None:
        return round(own), ()
    marks, bare = [], []
    for end in ends:
        lug = end.body.number("lug-temp")
        if lug is not None:
            marks.append(lug)
        elif end.kind == "motor":
            marks.append(MOTOR_LUG_C)
        elif end.kind not in _NO_MARK:
            bare.append(end.name)
    if bare or not marks:
        return None, tuple(bare)
    return round(min(marks)), ()
