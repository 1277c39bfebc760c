"""What a rule, a report or an editor feature may look at: the model, its derived figures and its settings."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from operator import attrgetter
from typing import TYPE_CHECKING, Literal

from wyeline_grammar.linking import Equipment, Feeder, Model
from wyeline_grammar.quantities import convert
from wyeline_linter.board_positions import KeptPositions
from wyeline_linter.configuration import DEFAULT, Settings
from wyeline_linter.derive import Derivation, EquipmentState, FeederState
from wyeline_linter.near_names import NearNames
from wyeline_linter.network import (
    NORMAL_STATE,
    Network,
    SwitchState,
    build,
    in_order,
    scenario_state,
)

if TYPE_CHECKING:
    from wyeline_linter.loads.rollup import LoadBook
    from wyeline_linter.protection.currents import Current
    from wyeline_linter.protection.lines import Line
    from wyeline_linter.studies.all_studies import Studies
    from wyeline_linter.studies.study_cache import StudyCache
    from wyeline_linter.systems import System
    from wyeline_linter.tables import Basis, Override


class View:
    """What a rule may look at."""

    __slots__ = (
        "_books",
        "_by_kind",
        "_judged",
        "_studies",
        "_tables",
        "circuit_lines",
        "configuration",
        "currents",
        "derivation",
        "edits",
        "equipment",
        "feeder_state",
        "lines",
        "marks",
        "marks_given",
        "model",
        "near",
        "network",
        "overrides",
        "positions",
        "scenarios",
        "settled",
        "settled_circuits",
        "settled_currents",
        "state",
        "study_cache",
        "wired_marks",
    )

    def __init__(self, model: Model, network: Network, derivation: Derivation) -> None:
        self.model = model
        self.network = network
        self.derivation = derivation
        # Rules ask these three tens of thousands of times: the dictionaries, which stay the same, answer themselves.
        self.equipment: Callable[[str], Equipment | None] = model.equipment.get
        self.state: Callable[[str], EquipmentState | None] = derivation.states.get
        self.feeder_state: Callable[[str], FeederState | None] = derivation.feeders.get
        self.edits = 0
        """How often the model was edited: what is kept of one version does not hold for the next."""
        self.near = NearNames(model)
        self.scenarios: dict[str, Network] = {}
        self.positions: KeptPositions = {}
        """What `board_positions` keeps of each board."""
        self.lines: dict[str, tuple[tuple[object, ...], Line]] = {}
        self.circuit_lines: dict[str, tuple[tuple[object, ...], tuple[Line, ...]]] = {}
        """Lines of `protection.lines`, by feeder and by board, with what they were built from."""
        self.marks: dict[object, dict[object, int]] = {}
        self.marks_given = 0
        self.wired_marks: set[int] = {-1}
        """Marks of `protection.circuits.circuit_marks`, by what is around the circuits and by what each says."""
        self.currents: dict[tuple[str, str], tuple[tuple[object, ...], Current]] = {}
        """Currents of `protection.currents`, by target or by board and circuit, with what they were worked out from."""
        self.settled: dict[str, tuple[Feeder, Line | None]] = {}
        self.settled_circuits: dict[str, tuple[Equipment, tuple[Line, ...]]] = {}
        self.settled_currents: dict[str, tuple[Equipment, System, Current]] = {}
        """Lines and currents found to hold since the last edit: who asks again need not look at what made them."""
        self.configuration = DEFAULT
        self.overrides: tuple[Override, ...] = ()
        """Rows of the code tables to which the project gives its own value."""
        self._books: dict[SwitchState, LoadBook] = {}
        self._judged: LoadBook | None = None
        self._tables: tuple[Basis | None] | None = None
        self._by_kind: tuple[int, dict[str, list[Equipment]]] = (-1, {})
        """The equipment of each kind, and after how many edits."""
        self._studies: Studies | None = None
        self.study_cache: StudyCache | None = None

    def twin(self, model: Model, network: Network, derivation: Derivation) -> View:
        """The same upon a twin of the model; of what is kept, that which studies ask for is shared."""
        made = View(model, network, derivation)
        made.configuration, made.overrides, made._tables = self.configuration, self.overrides, self._tables
        made.lines = self.lines.copy()
        made._books = {network.state: self.loads.twin(model, network, derivation)}
        return made

    def follow(self, lead: View, model: Model, network: Network, derivation: Derivation, *, said: bool) -> None:
        """Stand upon a newer twin of the model that another view is of. ``said``: what is written has another meaning
        since."""
        before, self.model, self.derivation = self.model, model, derivation
        rewired, self.network = network.order is not self.network.order, network
        self.equipment, self.state, self.feeder_state = (
            model.equipment.get,
            derivation.states.get,
            derivation.feeders.get,
        )
        self._books, self._judged = {network.state: lead.loads.twin(model, network, derivation)}, None
        if not said:
            return
        self.edits += 1
        self.near = NearNames(model)
        self.lines = lead.lines.copy()
        self.unsettle()
        self.forget_studies()
        if rewired or [s for _, s in before.scenarios] != [s for _, s in model.scenarios]:
            self.scenarios.clear()
        elif self.scenarios:  # they hold feeders
            for key, feeder in model.feeders.items():
                if before.feeders.get(key) is not feeder:
                    for scenario in self.scenarios.values():
                        scenario.replace(feeder)

    @property
    def basis(self) -> str | None:
        return self.model.basis

    @property
    def settings(self) -> Settings:
        """The limits that hold where the model states none of its own."""
        return self.configuration.settings

    @property
    def units(self) -> Literal["si", "us"]:
        """The units in which lengths and sizes are printed."""
        return self.configuration.units or ("us" if (self.basis or "").startswith("us") else "si")

    def length_text(self, length_m: float) -> str:
        """A length in the unit of the schedules, to a tenth as they print it."""
        unit = "ft" if self.units == "us" else "m"
        return f"{round(convert(length_m, unit), 1):g} {unit}"

    @property
    def tables(self) -> Basis | None:
        """The code tables of the project's basis with its own rows put in; None without a basis that is shipped.

        Raises OverrideError for an override that fits no row.
        """
        if self._tables is None:
            from wyeline_linter.tables.basis import project_basis

            self._tables = (project_basis(self.model.basis, self.overrides),)
        return self._tables[0]

    def unsettle(self) -> None:
        """Forget which lines and currents were looked at: the model has changed."""
        self.settled_currents.clear()
        self.settled.clear()
        self.settled_circuits.clear()

    def slim(self) -> None:
        """Let go of what rules of equipment, circuits and feeders keep for each other, and of what only the study of a
        later version would take over; whoever asks all the same is answered."""
        from wyeline_linter.studies.study_cache import StudyCache

        self.unsettle()
        self.positions.clear()
        self.currents.clear()
        self.circuit_lines.clear()
        for book in self._books.values():
            book.slim()
        self.study_cache = StudyCache(lasting=False)

    def of_kind(self, *kinds: str) -> list[Equipment]:
        """The equipment of some kinds, in the order of their names."""
        edits, by_kind = self._by_kind
        if edits != self.edits:
            by_kind = {}
            for e in self.model.equipment.values():
                by_kind.setdefault(e.kind, []).append(e)
            self._by_kind = self.edits, by_kind
        return sorted((e for kind in kinds for e in by_kind.get(kind, ())), key=attrgetter("name"))

    def feeders_into(self, name: str) -> list[Feeder]:
        return in_order(self.model.feeders_to.get(name, []))

    def feeders_out_of(self, name: str) -> list[Feeder]:
        return in_order(self.model.feeders_from.get(name, []))

    def near_names(self, name: str) -> list[str]:
        """The names that a slip of the pen may have meant, nearest first, three at the most."""
        return self.near.of(name)

    def network_in(self, state: SwitchState) -> Network:
        """Connectivity in another switch state, built when first asked for."""
        found = self.scenarios.get(state.name)
        if found is None or found.state != state:
            found = self.scenarios[state.name] = build(self.model, state)
        return found

    @property
    def loads(self) -> LoadBook:
        """The loads in the switch state that is judged, added up when first asked for and then kept under edits."""
        book = self._judged
        if book is None or book.network.state is not self.network.state:
            book = self._judged = self.loads_in(self.network.state)
        return book

    def loads_in(self, state: SwitchState) -> LoadBook:
        """The loads in another switch state, with the voltages that stand in it; added up when first asked for."""
        found = self._books.get(state)
        if found is None:
            from wyeline_linter.loads.rollup import LoadBook

            network, derivation = self.network, self.derivation
            if state != network.state:
                network = self.network_in(state)
                derivation = Derivation(self.model, network)
                derivation.all()
            found = self._books[state] = LoadBook(self.model, network, derivation)
        return found

    def update_loads(self, names: Iterable[str]) -> set[str]:
        """Add up anew what hangs on these names; returns the names whose loads changed. Other switch states go."""
        book = self._books.get(self.network.state)
        self._books.clear()
        self._judged = book
        if book is None:
            return set()
        self._books[self.network.state] = book
        return book.update(names, self.network)

    @property
    def studies(self) -> Studies:
        """Load flow and faults in any switch state, solved when first asked for; solutions outlast edits that leave the
        circuit as it is."""
        if self._studies is None:
            from wyeline_linter.studies.all_studies import Studies

            self._studies = Studies(self, self.study_cache)
            self.study_cache = self._studies.cache
        return self._studies

    def forget_studies(self) -> None:
        """The model changed: circuits are built anew when next asked for, and solved only where they differ."""
        if self._studies is not None:
            self._studies.let_go()
        self._studies = None

    def states_of_switches(self) -> list[SwitchState]:
        """Normal and every scenario that the model states; of several with one name, the first."""
        states: dict[str, SwitchState] = {}
        for _, statement in self.model.scenarios:
            state = scenario_state(self.model, statement)
            states.setdefault(state.name, state)
        return [NORMAL_STATE, *states.values()]
