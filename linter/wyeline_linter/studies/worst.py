"""Every figure in every switch state, and the worst value with the state that causes it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, Any, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder, PlacedCircuit
from wyeline_linter.studies.branch import BranchDrop
from wyeline_linter.studies.circuit_ends import end_fault_a
from wyeline_linter.studies.fault import FaultCurrent
from wyeline_linter.studies.study_figures import rounded

if TYPE_CHECKING:
    from wyeline_linter.network import SwitchState
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View

SMALLEST = frozenset({"fault_min_a", "voltage_part"})
"""Figures that are worst where they are smallest; the others where they are largest."""
NEARLY = 1e-6
"""A later state is worse where it differs by more than this share."""
WORDS = {
    "load_a": ("load", 1.0, "A", 1),
    "current_a": ("current", 1.0, "A", 1),
    "voltage_part": ("voltage under load", 100.0, "% of nominal", 1),
    "drop_part": ("drop", 100.0, "%", 2),
    "fault_max_a": ("largest fault", 1e-3, "kA", 2),
    "fault_min_a": ("smallest fault", 1e-3, "kA", 2),
}
"""What a figure is called, times what it is printed, its unit and its decimals."""
Figures = dict[str, float | None]


class InState(NamedTuple):
    """The figures of one thing in one switch state; None: not known there."""

    state: SwitchState
    figures: Figures


class Worst(NamedTuple):
    """The worst of a figure, the state of it, and the states in which it is not known."""

    value: float
    state: SwitchState
    unknown_in: tuple[str, ...]


def equipment_states(view: View, name: str) -> list[InState]:
    """Load (A on the fullest leg), lowest voltage, drop from the source and faults of what is fed, state by state."""
    return list(_each(view, lambda study: study.lists(name), lambda study: _of_equipment(study, name)))


def feeder_states(view: View, feeder: Feeder) -> list[InState]:
    """Current (A in the fullest wire), drop and faults at the far end of a feeder, in every state that closes it."""

    def closed(study: StateStudy) -> bool:
        ends = feeder.source.name, feeder.target.name
        return study.connectivity.state.closed(feeder) and all(map(study.lists, ends))

    return [s for s in _each(view, closed, lambda study: _of_feeder(study, feeder)) if s.figures]


def circuit_states(view: View, board: Equipment, placed: PlacedCircuit) -> list[InState]:
    """Load (A), lowest voltage, drop from the source, and faults at the end of a circuit, state by state."""

    def figures(study: StateStudy) -> Figures:
        own, whole = _branch(view, study, board, placed.key), study.path_drop(board.name)[0]
        lowest = study.judged.lowest(board.name)
        return {
            "load_a": None if own is None else own.amperes,
            "voltage_part": None if lowest is None or own is None else lowest.per_unit - own.part,
            "drop_part": None if whole is None or own is None else whole + own.part,
            "fault_max_a": end_fault_a(study, board, placed, largest=True),
            "fault_min_a": end_fault_a(study, board, placed, largest=False),
        }

    return list(_each(view, lambda study: study.lists(board.name), figures))


def worst(states: list[InState]) -> dict[str, Worst]:
    """The worst of every figure that is known in some state; the earlier state where two are alike."""
    found: dict[str, Worst] = {}
    for name in dict.fromkeys(name for state in states for name in state.figures):
        known = [(s.state, v) for s in states if (v := s.figures.get(name)) is not None]
        unknown = tuple(s.state.name for s in states if name in s.figures and s.figures[name] is None)
        best: tuple[SwitchState, float] | None = None
        for state, value in known:
            if best is None or (value < best[1] * (1 - NEARLY) if name in SMALLEST else value > best[1] * (1 + NEARLY)):
                best = state, value
        if best is not None:
            found[name] = Worst(best[1], best[0], unknown)
    return found


def _each(
    view: View, there: Callable[[StateStudy], bool], figures: Callable[[StateStudy], Figures]
) -> Iterator[InState]:
    for study in view.studies.every():
        if there(study):
            yield InState(study.state, figures(study))


def _of_equipment(study: StateStudy, name: str) -> Figures:
    lowest = study.judged.lowest(name)
    node = study.book.nodes.get(name)
    load = None
    if node is not None and not node.below.unknown:
        load = max(abs(i) for i in study.book.counted(name).demand.amps[:3])
    return {
        "load_a": load,
        "voltage_part": None if lowest is None else lowest.per_unit,
        "drop_part": study.path_drop(name)[0],
        "fault_max_a": _amperes(study.largest.worst(name)),
        "fault_min_a": _amperes(study.smallest.worst(name)),
    }


def _of_feeder(study: StateStudy, feeder: Feeder) -> Figures:
    ends, least = study.largest.built.ends.get(feeder.key), study.smallest.built.ends.get(feeder.key)
    if ends is None or least is None:
        return {}
    currents, drop = study.judged.currents(feeder), study.judged.drop(feeder)
    far = 0 if study.judged.backwards(feeder) else 1
    return {
        "current_a": None if currents is None else max(map(abs, currents.values())),
        "drop_part": None if drop is None else drop.part,
        "fault_max_a": _amperes(study.largest.worst_at(ends[far])),
        "fault_min_a": _amperes(study.smallest.worst_at(least[far])),
    }


def _branch(view: View, study: StateStudy, board: Equipment, position: str) -> BranchDrop | None:
    drops = view.studies.once(
        f"circuits {study.key} {board.name}", lambda: {d.circuit.key: d for d in study.branches(board)}
    )
    return drops.get(position)


def _amperes(fault: FaultCurrent | None) -> float | None:
    return None if fault is None else fault.amperes


# as data and as text


def states_entry(states: list[InState]) -> dict[str, Any]:
    """``states`` and ``worst`` for programs; nothing where there is one state only."""
    if len(states) < 2:
        return {}
    return {
        "states": [
            {"state": s.state.name, **{name: rounded(value) for name, value in s.figures.items()}} for s in states
        ],
        "worst": {
            name: {"value": rounded(w.value), "state": w.state.name, "unknown_in": list(w.unknown_in)}
            for name, w in worst(states).items()
        },
    }


def circuits_entry(view: View, board: Equipment) -> dict[str, Any]:
    """``circuits`` of a board for programs: of those whose wires and length are written, the figures at their end."""
    found = []
    for placed in board.circuits:
        own = _branch(view, view.studies.normal, board, placed.key)
        if own is None:
            continue
        states = circuit_states(view, board, placed)
        entry = {"circuit": placed.key, "own_drop_part": rounded(own.part)}
        entry |= {name: rounded(value) for name, value in states[0].figures.items()}
        found.append({**entry, **states_entry(states)})
    return {"circuits": found} if found else {}
