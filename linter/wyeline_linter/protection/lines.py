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
from wyeline_grammar.model import Body, Circuit, RacewayStatement
from wyeline_linter.board_positions import numbering_of
from wyeline_linter.conductors import neutral_counts
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.wiring import Wiring, wiring_of
from wyeline_linter.rules.references import key_of_place
from wyeline_linter.shapes import Shape
from wyeline_linter.standard_ratings import DeviceKind
from wyeline_linter.systems import Known, System
from wyeline_linter.tables import Basis

if TYPE_CHECKING:
    from wyeline_linter.analysis import View
    from wyeline_linter.derive import EquipmentState

MEDIUM_VOLTAGE_V = 1000.0
"""Above this the ampacity and fill tables that are held do not apply."""
US_AMBIENT_C = IEC_AMBIENT_C = 30.0
"""Air temperature the tables are made for (NEC 310.16; IEC 60364-5-52), taken where none is written."""
IEC_GROUND_C = 20.0
"""Ground temperature the tables are made for (IEC 60364-5-52 B.52.15), taken where none is written."""
_STEEL_OR_METAL = frozenset({"EMT", "RMC", "IMC"})
METAL_RACEWAYS = _STEEL_OR_METAL
"""Raceways that may serve as the equipment grounding conductor (NEC 250.118, from memory)."""
_OPEN = frozenset({"tray", "ladder", "basket"})


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
    raceway = _raceway(view, feeder.body)
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
    system, raceway = state.carried.system, _raceway(view, feeder.body)
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
    elif onward is not None and onward.device_a is not None:
        guard = Guard(
            onward.device_a, _kind_of(view, onward.device_at, onward.device_a, tables), False, onward.device_at
        )
    ends = [source, target]
    marked, lug_ends = _lugs(body, ends)
    if wiring is None:
        assert body.conductors is not None
        wiring = wiring_of(body.conductors, len(system.legs), tables, wet=is_wet(body))
    ends_in = guard.amps if guard is not None else first_device_of(target) or 0.0
    laid, lacks, assumed = _laid(view, tables, body, raceway, wiring, system, marked, ends_in)
    return Line(
        feeder.key, "", f"`{feeder.key}`", feeder.block, body, feeder.place, wiring, tables, system, guard, maker,
        source, target, feeder, None, laid, lacks, _shared(body), claims, assumed, lug_ends,
    )  # fmt: skip


def first_device_of(target: Equipment) -> float | None:
    """The device that a line to ``target`` ends in: the main of a board, or a fused switch; None where it has none."""
    for key in ("main", "incomer"):
        rating = target.body.number(key)
        if rating is not None:
            return rating
    if target.kind == "disconnect" and ("fused" in target.body.flags or "fuse" in target.body.facts):
        return target.body.number("rating")
    return None


def first_device_a(line: Line) -> float | None:
    """The device that a line ends in, amperes."""
    return first_device_of(line.target) if line.target is not None else None


def is_wet(body: Body) -> bool:
    """Whether its wires lie where they may get wet: outdoors or in the ground."""
    return "outdoor" in body.flags or "buried" in body.facts


def circuit_lines(view: View, board: Equipment) -> tuple[Line, ...]:
    """The circuits of a board whose wires are written, as lines."""
    if not board.circuits:
        return ()
    settled = view.settled_circuits.get(board.name)
    if settled is not None and settled[0] is board:
        return settled[1]
    lines = _kept_circuit_lines(view, board)
    view.settled_circuits[board.name] = board, lines
    return lines


def _kept_circuit_lines(view: View, board: Equipment) -> tuple[Line, ...]:
    bus, tables = _bus_of(view, board), view.tables
    if bus is None or tables is None:
        return ()
    kept = view.circuit_lines.get(board.name)
    raceways = [_raceway(view, p.circuit.body) for p in board.circuits]
    deps = (board, bus.state, tables, *raceways)
    if kept is not None and len(kept[0]) == len(deps) and all(map(is_, kept[0], deps)):
        return kept[1]
    found = (bus.line(view, tables, p, raceway) for p, raceway in zip(board.circuits, raceways, strict=True))
    made = tuple([line for line in found if line is not None])
    view.circuit_lines[board.name] = (deps, made)
    return made


class Marks(NamedTuple):
    """The marks of a board's circuits, by position: -1 for what stands alone. ``wired`` are those that are lines."""

    by_place: dict[str, int]
    different: set[int]
    wired: set[int]


NO_MARKS = Marks({}, set(), set())


def circuit_marks(view: View, board: Equipment) -> Marks:
    """The circuits of a board, each with its mark.

    Circuits of one mark say the same and lie on like systems behind like devices: they differ in length, description,
    place and board only. What lies in a named raceway, or on a board where two claim one position, stands alone.
    """
    if not board.circuits:
        return NO_MARKS
    bus = _bus_of(view, board)
    maker = view.equipment(bus.maker) if bus is not None else None
    around = None if bus is None else (bus.system, maker.kind if maker is not None else "", bus.device_a, bus.lug_c)
    known = view.marks.setdefault(around, {})
    wired_marks = view.wired_marks
    alone = len({p.key for p in board.circuits}) == len(board.circuits)
    marks: dict[str, int] = {}
    for placed in board.circuits:
        circuit = placed.circuit
        key = placed.key
        raceway = circuit.body.raceway
        if not alone or (raceway is not None and raceway.named):
            marks[key] = -1
            continue
        legs = bus.legs_of(circuit) if bus is not None else None
        alike = (
            (circuit.sense, legs, bus.sharing.get(key, 0), bus.claims.get(key)) if bus is not None else circuit.sense
        )
        mark = known.get(alike)
        if mark is None:
            mark = known[alike] = view.marks_given = view.marks_given + 1
            if legs is not None and circuit.body.conductors is not None and "space" not in circuit.body.flags:
                wired_marks.add(mark)
        marks[key] = mark
    different = set(marks.values())
    return Marks(marks, different, different & wired_marks)


def _bus_of(view: View, board: Equipment) -> _Bus | None:
    state = view.state(board.name)
    if state is None or not isinstance(state.system, Known):
        return None
    return _Bus(board, state, state.system.system)


class _Bus:
    """What the circuits of a board have in common."""

    def __init__(self, board: Equipment, state: EquipmentState, system: System) -> None:
        self.board, self.state, self.system = board, state, system
        onward = state.onward
        self.maker = onward.maker if onward is not None else board.name
        self.device_a = onward.device_a if onward is not None else None
        self.device_at = onward.device_at if onward is not None else ""
        self.numbering = numbering_of(board)
        self.lug_c = board.body.number("lug-temp")
        self.sharing: dict[str, int] = {}
        """Live wires that other circuits add to the run of one."""
        for placed in board.circuits:
            fact = placed.circuit.body.facts.get("with")
            if fact is not None:
                key, poles = key_of_place(fact.value.data, fact.value.text), placed.circuit.body.poles
                self.sharing[key] = self.sharing.get(key, 0) + (poles.count if poles else 1)
        claims: dict[str, set[str]] = {}
        for claim in board.statement.claims:
            claims.setdefault(claim.place.key if claim.place is not None else "", set()).add(claim.name)
        self.claims = {key: frozenset(names) for key, names in claims.items()}

    def legs_of(self, circuit: Circuit) -> tuple[str, ...] | None:
        """The legs that a circuit takes, in order; None where they cannot be told."""
        positions, stated, system = circuit.place.positions, circuit.legs, self.system
        if positions:
            legs = self.numbering.legs(positions, system.legs)
            return legs if legs and len(set(legs)) == len(legs) else None
        if stated is not None:
            legs = tuple(leg for leg in stated if leg != "N")
            return legs if set(legs) <= set(system.legs) else None
        poles = circuit.body.poles
        if len(system.legs) == 1 or (poles is not None and poles.count >= len(system.legs)):
            return system.legs
        return None

    def line(self, view: View, tables: Basis, placed: PlacedCircuit, raceway: RacewayStatement | None) -> Line | None:
        """A circuit as a line; None where it has no wires, or its legs cannot be told."""
        circuit, body, board = placed.circuit, placed.circuit.body, self.board
        if body.conductors is None or "space" in body.flags:
            return None
        legs = self.legs_of(circuit)
        if legs is None:
            return None
        system = self.system
        more = self.sharing.get(placed.key, 0)
        names = tuple(dict.fromkeys(legs)) if not more else system.legs[: len(legs) + more]
        part = system.restrict((*names, "N") if system.has_neutral else names)
        live = len(legs) + more
        own = body.number("rating")
        guard = None
        if own is not None:
            guard = Guard(own, device_kind(body, own, tables), True, board.name)
        elif self.device_a is not None:
            guard = Guard(self.device_a, "breaker", False, self.device_at)
        wiring = wiring_of(body.conductors, live, tables, wet=is_wet(body))
        lug = body.number("lug-temp")
        if lug is None and self.lug_c is not None and "motor" in body.flags:
            lug = min(self.lug_c, MOTOR_LUG_C)
        marked = None if lug is None else round(lug)
        device = guard.amps if guard is not None else 0.0
        laid, lacks, assumed = _laid(view, tables, body, raceway, wiring, part, marked, device)
        return Line(
            board.name, placed.key, f"circuit {placed.key} of `{board.name}`", placed.block, body,
            Place(placed.block, circuit.span), wiring, tables, part, guard, self.maker, board, None, None, placed,
            laid, lacks, _shared(body), self.claims.get(placed.key, _NO_CLAIMS), assumed,
            () if lug is not None else ("what it feeds",),
        )  # fmt: skip


_NO_CLAIMS: frozenset[str] = frozenset()


def _claims_of(feeder: Feeder) -> frozenset[str]:
    claims = feeder.statement.claims
    return frozenset(c.name for c in claims) if claims else _NO_CLAIMS


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


def _raceway(view: View, body: Body) -> RacewayStatement | None:
    raceway = body.raceway
    if raceway is None or not raceway.named:
        return None
    declared = view.model.lookup(raceway.stuff)
    statement = declared.statement if declared is not None else None
    return statement if isinstance(statement, RacewayStatement) else None


def _shared(body: Body) -> str:
    return body.raceway.stuff if body.raceway is not None and body.raceway.named else ""


def _laid(
    view: View,
    tables: Basis,
    body: Body,
    raceway: RacewayStatement | None,
    wiring: Wiring,
    system: System,
    marked: int | None,
    device: float,
) -> tuple[Laid | None, str, tuple[str, ...]]:
    """How a line lies; None with what is missing."""
    around = raceway.body if raceway is not None else None

    def number(key: str) -> float | None:
        own = body.number(key)
        return own if own is not None or around is None else around.number(key)

    assumed: list[str] = []
    buried = number("buried") is not None
    ambient = number("ambient")
    method = body.text("method") or (around.text("method") if around is not None else None)
    grouped = max(1, round(number("grouped") or 1))
    together = "together" in body.flags
    if tables.practice == "us":
        if body.raceway is None and method is None and not wiring.cable and not buried:
            return None, "the raceway or cable it runs in", ()
        if ambient is None:
            ambient = view.model.project.number("ambient")
        if ambient is None:
            ambient = US_AMBIENT_C
            assumed.append(f"{US_AMBIENT_C:g} degC around the wires, as none is written")
        loaded = loaded_wires(wiring, system)
        if together:
            beside = loaded * wiring.sets * (grouped - 1)
            return Laid(ambient, loaded, marked, device, beside=beside), "", tuple(assumed)
        return Laid(ambient, loaded * grouped, marked, device), "", tuple(assumed)
    if method is None and buried:
        method = "D1" if body.raceway is not None else "D2"
    if method is None:
        return None, "its method of installation", ()
    if method in ("D1", "D2"):
        if ambient is None:
            ambient = IEC_GROUND_C
            assumed.append(f"{IEC_GROUND_C:g} degC in the ground, as none is written")
    elif ambient is None:
        ambient = view.model.project.number("ambient")
        if ambient is None:
            ambient = IEC_AMBIENT_C
            assumed.append(f"{IEC_AMBIENT_C:g} degC around the wires, as none is written")
    soil = number("soil")
    if soil is None:
        soil = view.model.project.number("soil")
    if soil is None and method in ("D1", "D2"):
        return None, "the thermal resistivity of the soil (`soil`)", ()
    stuff = (body.raceway.stuff if body.raceway is not None and not body.raceway.named else "") or (
        raceway.stuff if raceway is not None and raceway.stuff else ""
    )
    arrangement = (
        stuff if stuff in ("tray", "ladder") else "tray" if stuff in _OPEN else "wall" if method == "C"
        else "tray" if method in ("E", "F") else "bunched"
    )  # fmt: skip
    apart = grouped > 1 or not together
    """Whether the circuits of the group are those that are written, however many sets there are."""
    circuits = grouped if apart else wiring.sets
    if circuits > 1 and not stuff and arrangement != "bunched":
        assumed.append(
            f"the {circuits} lie in one layer, as on a {arrangement}, since nothing says that they are bunched"
        )
    loaded = 2 if len(system.legs) < 3 else 3
    among = None if apart else 0
    return Laid(ambient, loaded, None, 0.0, method, grouped, arrangement, soil, among), "", tuple(assumed)


def loaded_wires(wiring: Wiring, system: System, nonlinear: bool | None = False) -> int:
    """Current-carrying wires of one set (NEC 310.15(E)): its legs, and the neutral where it counts."""
    if wiring.neutral is None or not system.has_neutral:
        return wiring.legs
    counted = neutral_counts(legs=min(wiring.legs, 3), from_wye=from_wye(system), mostly_nonlinear=nonlinear)
    return wiring.legs + bool(counted.counts)


def from_wye(system: System) -> bool:
    """Whether the legs belong to a three-phase four-wire wye."""
    return system.shape in (Shape.WYE4, Shape.TWO_LEGS3, Shape.WYE3)
