"""The circuits of a board as lines, and which of them are alike."""

from __future__ import annotations

from operator import is_
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Place, PlacedCircuit
from wyeline_grammar.model import Circuit, RacewayStatement
from wyeline_linter.board_positions import numbering_of
from wyeline_linter.protection.laying import how_laid, is_wet, raceway_of, shared_raceway
from wyeline_linter.protection.lines import MOTOR_LUG_C, NO_CLAIMS, Guard, Line, device_kind
from wyeline_linter.protection.wiring import wiring_of
from wyeline_linter.rules.references import key_of_place
from wyeline_linter.systems import Known, System
from wyeline_linter.tables import Basis

if TYPE_CHECKING:
    from wyeline_linter.derive import EquipmentState
    from wyeline_linter.view import View


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
    raceways = [raceway_of(view, p.circuit.body) for p in board.circuits]
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
    made_by = maker.kind if maker is not None else ""
    within = board.name in view.loads.within, board.name in view.loads.measured
    around = None if bus is None else (bus.system, made_by, bus.device_a, bus.lug_c, within)
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
        laid, lacks, assumed = how_laid(view, tables, body, raceway, wiring, part, marked, device)
        return Line(
            board.name, placed.key, f"circuit {placed.key} of `{board.name}`", placed.block, body,
            Place(placed.block, circuit.span), wiring, tables, part, guard, self.maker, board, None, None, placed,
            laid, lacks, shared_raceway(body), self.claims.get(placed.key, NO_CLAIMS), assumed,
            () if lug is not None else ("what it feeds",),
        )  # fmt: skip
