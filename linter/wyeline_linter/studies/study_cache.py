"""What outlasts an edit of a model whose studies were made: solutions, circuits, loads, and what was read of them."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, NamedTuple

from wyeline_linter.studies.case import Case

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment
    from wyeline_linter.circuit import Network
    from wyeline_linter.circuit.loadflow import FlowFactors
    from wyeline_linter.loads.leaf_loads import Piece
    from wyeline_linter.studies.beyond_columns import BeyondColumns
    from wyeline_linter.studies.branch import BranchDrop
    from wyeline_linter.studies.fault import FaultView
    from wyeline_linter.studies.load_pieces import LoadPieces
    from wyeline_linter.studies.vary import Circuits
    from wyeline_linter.systems import System
    from wyeline_linter.tables import Basis


@dataclass(slots=True)
class Kept:
    """A solution with the circuit that it is of."""

    network: Network
    answer: Any


class KeptBranches(NamedTuple):
    """The drops of a board's circuits with what they followed from: they hang on no voltage under load."""

    board: Equipment
    system: System
    piece: Piece | None
    drops: list[BranchDrop]
    most: float
    """The largest, as a part of nominal."""


class KeptBoards(NamedTuple):
    """Those of all boards of a switch state, with what all of them followed from."""

    tables: Basis | None
    stuff_of: dict[str, str | None]
    by_board: dict[str, KeptBranches]


class WorstBranches(NamedTuple):
    """The largest drop of each board's circuits with what all of them followed from, piece by piece."""

    around: tuple[object, ...]
    """Buses, voltages at them, and where the drops are kept: the same objects while they hold."""
    names: list[str]
    pieces: list[Piece]
    boards: list[Equipment]
    found: dict[str, float]


@dataclass(slots=True)
class StudyCache:
    """What outlasts an edit, by switch state: solutions, circuits, loads and factors; and how often each step ran.

    Whoever judges a model that changes gives the same cache to each new :class:`Studies`. Nothing has to be told of the
    edit: every part compares what it was made from with what is there now. Loads hold while the nodes of the book and
    the equipment are the same objects; a circuit holds while nothing is fed otherwise, and has the values of edited
    wires put in; a solution holds while all values of its circuit are equal, so that an edit which is not electrical
    solves nothing.
    """

    solutions: dict[tuple[str, Case], Kept] = field(default_factory=dict)
    loads: dict[str, LoadPieces] = field(default_factory=dict)
    """By switch state, its loads."""
    circuits: dict[str, Circuits] = field(default_factory=dict)
    """By switch state, the circuits of the version before."""
    factors: dict[str, FlowFactors] = field(default_factory=dict)
    """By switch state, what its solves can take over from those before."""
    branches: dict[str, KeptBoards] = field(default_factory=dict)
    """By switch state, the drops of its boards' circuits."""
    worst: dict[str, WorstBranches] = field(default_factory=dict)
    """By switch state, the worst of these of each board."""
    beyond: dict[str, BeyondColumns] = field(default_factory=dict)
    """By switch state, what its feeders are judged with beyond the solved state."""
    views: dict[tuple[str, Case], FaultView] = field(default_factory=dict)
    """The faults by the names of the model, while circuit and solution are the same."""
    results: dict[tuple[str, str], tuple[tuple[object, ...], Any]] = field(default_factory=dict)
    """By switch state and what was asked, what was worked out, with what it follows from."""
    facts: dict[str, tuple[list[Any], list[Any]]] = field(default_factory=dict)
    """By what was asked, all equipment or feeders, and what the statement of each tells by itself."""
    solved: dict[str, int] = field(default_factory=dict)
    """Step -> how often it ran: tests prove with it what an edit did not solve anew. ``blocks eliminated`` counts the
    buses whose equations were factorised, in states whose factors are kept."""
    lasting: bool = True
    """Whether there may be an edit to outlast: factors are large, and a model that is judged once does without."""

    def count(self, step: str, times: int = 1) -> None:
        self.solved[step] = self.solved.get(step, 0) + times

    def keep(self, states: Collection[str]) -> None:
        """These are the switch states that the model has now: what is kept of others goes."""
        kept: tuple[dict[str, Any], ...] = (
            self.circuits,
            self.factors,
            self.loads,
            self.branches,
            self.worst,
            self.beyond,
        )
        for by_state in kept:
            for state in by_state.keys() - states:
                del by_state[state]
        by_state_and_case: tuple[dict[tuple[str, Any], Any], ...] = (self.solutions, self.views, self.results)
        for kept_of in by_state_and_case:
            for key in [k for k in kept_of if k[0] not in states]:
                del kept_of[key]
