"""The studies of one switch state, each solved when first asked for, and kept while nothing electrical changes."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import cached_property
from itertools import compress, count
from operator import is_, is_not, or_
from typing import TYPE_CHECKING, NamedTuple, TypeVar

from wyeline_grammar.linking import Equipment, Feeder, Model
from wyeline_linter.loads.demand_shares import DemandShares
from wyeline_linter.loads.leaf_loads import LeafLoad
from wyeline_linter.network import SwitchState
from wyeline_linter.studies.build import raceway_stuff
from wyeline_linter.studies.built import Built
from wyeline_linter.studies.case import Assumption, Case, Missing
from wyeline_linter.studies.fault import FaultView
from wyeline_linter.studies.first_peaks import peaks_add_up
from wyeline_linter.studies.flow import Drop, FlowView
from wyeline_linter.studies.judged import Judged
from wyeline_linter.studies.load_pieces import LoadPieces, LoadsAt
from wyeline_linter.studies.sieve import Sieve
from wyeline_linter.studies.study_cache import Kept, KeptBoards, KeptBranches, StudyCache, WorstBranches
from wyeline_linter.studies.vary import Circuits, Facts

if TYPE_CHECKING:
    from wyeline_linter.circuit import FaultStudy, NotSolved, Solved
    from wyeline_linter.circuit.loadflow import FlowFactors
    from wyeline_linter.derive import Derivation
    from wyeline_linter.loads.rollup import LoadBook
    from wyeline_linter.network import Network as Connectivity
    from wyeline_linter.studies.beyond_columns import BeyondColumns
    from wyeline_linter.studies.branch import BranchDrop
    from wyeline_linter.studies.line_impedance import LineData
    from wyeline_linter.view import View

T = TypeVar("T")


class PathDrop(NamedTuple):
    """The drops on the way to a piece of equipment: their sum as a part of nominal (None: not known, with the
    reasons), and each, source first."""

    part: float | None
    parts: tuple[tuple[Feeder, Drop], ...]
    reasons: tuple[str, ...]


class StateStudy:
    """Load flow and faults of one switch state, each solved when first asked for.

    ``zone`` is its connectivity where only what that lists is worked out.
    """

    def __init__(self, view: View, state: SwitchState, cache: StudyCache, zone: Connectivity | None = None) -> None:
        self.view = view
        self.state = state
        self.zone = zone
        self.cache = cache
        self._built: dict[Case, Built] = {}
        self._path_drops: dict[str, PathDrop] = {}
        self._worst_branches: dict[str, float] | None = None
        self.circuit_wires: dict[tuple[object, ...], dict[float, LineData]] = {}
        """Impedances of circuits by what is written of their wires, and by their length in metres."""

    @property
    def name(self) -> str:
        return self.state.name

    @property
    def key(self) -> str:
        """What solutions are kept under: a scenario may be called like a state that nobody wrote down."""
        return self.state.name + self.state.words

    @property
    def model(self) -> Model:
        return self.view.model

    @cached_property
    def book(self) -> LoadBook:
        """The loads of this state."""
        if self.zone is None:
            return self.view.loads_in(self.state)
        from wyeline_linter.derive import Derivation
        from wyeline_linter.loads.rollup import LoadBook

        derivation = Derivation(self.model, self.zone)
        normal = self.view.loads
        derivation.fed(normal.derivation)
        return LoadBook(self.model, self.zone, derivation, like=normal)

    @cached_property
    def pieces(self) -> LoadPieces:
        """The loads that run in this state, piece by piece, those of the version before taken over as far as they
        hold."""
        made = self.cache.loads[self.key] = LoadPieces(self.book, self.cache.loads.get(self.key))
        if made.made:
            self.cache.count("pieces of loads", made.made)
        return made

    @property
    def loads(self) -> list[LeafLoad]:
        """Every load that runs in this state, on its conductors."""
        return self.pieces.all

    @property
    def demand(self) -> DemandShares:
        """Which part of each load counts where."""
        return self.pieces.demand

    @cached_property
    def judged(self) -> Judged:
        """Drops, currents and voltages at the load that each is judged with."""
        return Judged(self)

    @cached_property
    def beyond(self) -> BeyondColumns:
        """What each feeder is judged with beyond the solved state."""
        from wyeline_linter.studies.beyond_columns import BeyondColumns

        made = self.cache.beyond[self.key] = BeyondColumns(self.pieces, self.cache.beyond.get(self.key))
        if made.made:
            self.cache.count("demands of feeders", made.made)
        return made

    @property
    def loads_at(self) -> LoadsAt:
        """The same by equipment and by circuit (empty: the equipment itself)."""
        return self.pieces.at

    @cached_property
    def stuff_of(self) -> dict[str, str | None]:
        """What each named raceway is made of."""
        return raceway_stuff(self.model)

    @cached_property
    def _listed(self) -> frozenset[str]:
        return frozenset(self.connectivity.order)

    def lists(self, name: str) -> bool:
        """Whether a piece of equipment is fed in this state and its figures are worked out here."""
        return name in self._listed

    @property
    def connectivity(self) -> Connectivity:
        return self.book.network

    @property
    def derivation(self) -> Derivation:
        return self.book.derivation

    @property
    def practice(self) -> str | None:
        return self.derivation.practice

    def built(self, case: Case) -> Built:
        """The circuit for a case."""
        found = self._built.get(case)
        if found is None:
            built = self.circuits.built
            found = self._built[case] = self.circuits.of(case)
            if self.circuits.built > built:
                self.cache.count("circuit built")
        return found

    @cached_property
    def circuits(self) -> Circuits:
        """Its circuits, those of the version before taken over as far as they hold."""
        facts = Facts(self.model, self.connectivity, self.derivation, self.pieces, self.view.tables)
        made = Circuits(facts, self.cache.circuits.get(self.key))
        self.cache.circuits[self.key] = made
        return made

    @cached_property
    def flow(self) -> FlowView:
        """The load flow."""
        from wyeline_linter.circuit.loadflow import solve_flow

        built = self.built(Case.FLOW)
        kept = self.cache.solutions.get((self.key, Case.FLOW))
        if kept is not None and kept.network.same_wiring(built.network) and kept.network.loads == built.network.loads:
            return FlowView(built, kept.answer)
        factors = self._factors
        eliminated = factors.kept.eliminated if factors is not None else 0
        answer: Solved | NotSolved = solve_flow(built.network, kept=factors)
        self.cache.count("load flow, factors kept" if factors is not None and factors.reused else "load flow")
        if factors is not None:
            self.cache.count("blocks eliminated", factors.kept.eliminated - eliminated)
        self.cache.solutions[self.key, Case.FLOW] = Kept(built.network, answer)
        return FlowView(built, answer)

    @property
    def _factors(self) -> FlowFactors | None:
        """What the solves of this state take over from those before. Of the many states that nobody writes down,
        factors would take most of all memory."""
        from wyeline_linter.circuit.loadflow import FlowFactors

        if self.zone is not None or not self.cache.lasting:
            return None
        return self.cache.factors.setdefault(self.key, FlowFactors())

    def _faults(self, case: Case) -> tuple[Built, FaultStudy | None, str | None]:
        from wyeline_linter.circuit import SingularNetwork
        from wyeline_linter.circuit.faults import study_faults

        built = self.built(case)
        if not built.network.sources:
            return built, None, "no source is part of the circuit"
        kept = self.cache.solutions.get((self.key, case))
        if kept is not None and kept.network.same_wiring(built.network):
            answer = kept.answer
        else:
            self.cache.count(case.value)
            factors = self._factors.kept if self._factors is not None else None
            eliminated = factors.eliminated if factors is not None else 0
            try:
                apart = case is Case.MAX and peaks_add_up(self.practice, built.network)
                answer = study_faults(built.network, kept=factors, what=case.value, apart=apart)
            except SingularNetwork as trouble:
                answer = str(trouble)
            if factors is not None:
                self.cache.count("blocks eliminated", factors.eliminated - eliminated)
            self.cache.solutions[self.key, case] = Kept(built.network, answer)
        return (built, None, answer) if isinstance(answer, str) else (built, answer, None)

    def _view(self, case: Case) -> FaultView:
        """The faults of a case: what was read of them holds while circuit and solution are the same."""
        built, study, trouble = self._faults(case)
        kept = self.cache.views.get((self.key, case))
        same = kept is not None and kept.built is built and kept.study is study
        if kept is None or not same or kept.trouble != trouble or kept.practice != self.practice:
            kept = self.cache.views[self.key, case] = FaultView(built, study, trouble, self.practice)
        return kept

    @cached_property
    def largest(self) -> FaultView:
        """The largest faults."""
        return self._view(Case.MAX)

    @cached_property
    def smallest(self) -> FaultView:
        """The smallest faults."""
        return self._view(Case.MIN)

    @cached_property
    def starting(self) -> FaultView:
        """The circuit that motor starts are judged on."""
        return self._view(Case.START)

    # figures of several parts

    def kept(self, what: str, of: tuple[object, ...], work: Callable[[], T]) -> T:
        """The result of some work on this state that follows from ``of`` alone: that of the version before where it is
        the same."""
        known = self.cache.results.get((self.key, what))
        if known is None or known[0] != of:
            self.cache.count(what)
            known = self.cache.results[self.key, what] = of, work()
        return known[1]

    @property
    def sieve(self) -> Sieve:
        """What may lie beyond a limit."""
        return Sieve(self)

    def branches(self, board: Equipment) -> list[BranchDrop]:
        """The drops of a board's circuits whose wires, length and load are written."""
        found = self._branches(board) if board.circuits else None
        return [] if found is None else found.drops

    def worst_branches(self) -> dict[str, float]:
        """By board, the largest of them as a part of nominal; worked out once."""
        if self._worst_branches is None:
            self._worst_branches = self._found_worst_branches()
        return self._worst_branches

    def _found_worst_branches(self) -> dict[str, float]:
        """Those of the version before, where board, load and voltage are the same."""
        pieces, built, boards_at = self.pieces.running, self._flow_circuit, self._boards
        names = [piece.name for piece in pieces]
        boards = list(map(self.model.equipment.__getitem__, names))
        before = self.cache.worst.get(self.key)
        around = built.bus, built.system_at, boards_at
        if before is not None and before.names == names and all(map(is_, before.around, around)):
            found = before.found
            other = map(or_, map(is_not, before.pieces, pieces), map(is_not, before.boards, boards))
            changed: Iterable[int] = compress(count(), other)
        else:
            found, changed = {}, range(len(names))
        for k in changed:
            kept = self._branches(boards[k]) if boards[k].circuits else None
            if kept is not None and kept.drops:
                found[names[k]] = kept.most
            else:
                found.pop(names[k], None)
        self.cache.worst[self.key] = WorstBranches(around, names, pieces, boards, found)
        return found

    @cached_property
    def _boards(self) -> dict[str, KeptBranches]:
        """The drops of boards' circuits that may still hold."""
        tables, stuff_of = self.view.tables, self.stuff_of
        kept = self.cache.branches.get(self.key)
        if kept is None or kept.tables is not tables or kept.stuff_of != stuff_of:
            kept = self.cache.branches[self.key] = KeptBoards(tables, stuff_of, {})
        if len(kept.by_board) > 2 * len(self._listed):  # boards that are gone
            kept.by_board.clear()
        return kept.by_board

    def _branches(self, board: Equipment) -> KeptBranches | None:
        name, built, kept_boards = board.name, self._flow_circuit, self._boards
        bus = built.bus.get(name)
        if bus is None:
            return None
        system, piece = built.system_at[bus.name], self.loads_at.piece(name)
        kept = kept_boards.get(name)
        if kept is None or kept.board is not board or kept.piece is not piece or kept.system is not system:
            from wyeline_linter.studies.branch import branch_drops

            self.cache.count("board's circuits")
            drops = branch_drops(self, board)
            most = max((drop.part for drop in drops), default=0.0)
            kept = kept_boards[name] = KeptBranches(board, system, piece, drops, most)
        return kept

    @cached_property
    def _flow_circuit(self) -> Built:
        return self.built(Case.FLOW)

    def path_drop(self, name: str) -> PathDrop:
        """The sum of the drops along the way from the source, as a part of nominal, its parts, and why not.

        Only wires count: what the transformers in the way lose shows in the voltage under load.
        """
        network, found = self.connectivity, self._path_drops
        passed: list[str] = []
        while name not in found and name in network.supply and len(passed) <= len(network.supply):
            passed.append(name)
            name = network.supplier[name]
        above = found.get(name)
        if above is None:
            fed = network.fed(name)  # the way ends at a source, where nothing is lost yet, or at what nothing feeds
            above = PathDrop(0.0, (), ()) if fed else PathDrop(None, (), (f"nothing feeds `{name}`",))
        for below in reversed(passed):
            lost = above.part
            if lost is not None:
                feeder = network.supply[below]
                drop = self.judged.drop(feeder)
                if drop is None:
                    above = PathDrop(None, (), self.flow.feeder_reasons(feeder.key))
                else:
                    above = PathDrop(lost + drop.part, (*above.parts, (feeder, drop)), ())
            found[below] = above
        return above

    def missing(self) -> list[Missing]:
        """Every lacking fact of this state, each once, in the order of the circuit."""
        found: dict[tuple[str, str], Missing] = {}
        for case in (Case.MAX, Case.MIN):
            for missing in self.built(case).missing:
                found.setdefault((missing.subject, missing.text), missing)
        return list(found.values())

    def assumed(self) -> list[Assumption]:
        """Every assumption of this state, each once."""
        found: dict[tuple[str, str], Assumption] = {}
        for case in (Case.MAX, Case.MIN):
            for assumption in self.built(case).assumed:
                found.setdefault((assumption.subject, assumption.text), assumption)
        return list(found.values())

    def equipment(self, name: str) -> Equipment | None:
        return self.model.equipment.get(name)
