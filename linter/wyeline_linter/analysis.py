"""One model, judged: the database that the command line and the language server both ask.

Text becomes findings step by step, and each step keeps its results, so an edit recomputes what hangs on it: the blocks
it touched, the voltages below them, and the rules of the elements whose own facts or figures changed.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Collection, Iterable
from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Delta, Equipment, Feeder, Model
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import Statement, Unreadable
from wyeline_grammar.remembering import forget_texts
from wyeline_grammar.sources import Files
from wyeline_linter.accepting import Allowances
from wyeline_linter.asking import Asking
from wyeline_linter.configuration import DEFAULT, Configuration, ConfigurationError
from wyeline_linter.derive import Derivation
from wyeline_linter.file_findings import FileFindings
from wyeline_linter.finding_store import FindingStore, Group
from wyeline_linter.findings import Finding
from wyeline_linter.kept_structure import KeptStructure, users_of_systems, who_refer
from wyeline_linter.network import (
    NORMAL_STATE,
    Network,
    NoSuchStateError,
    SwitchState,
    build,
    scenario_state,
)
from wyeline_linter.removed import staying
from wyeline_linter.rules.registry import SCOPES
from wyeline_linter.text_findings import finding_of, without_what_unread_lines_lack
from wyeline_linter.view import View

if TYPE_CHECKING:
    from wyeline_linter.studies.study_cache import StudyCache
    from wyeline_linter.tables import Override


class Analysis:
    """Findings and figures of one root file, kept under edits.

    ``scenario`` names the switch state to judge; None is the normal one. Only rules of ``scopes`` are run.
    ``before_rules`` is called once the model is read and its voltages are derived. Raises SourceError where the root
    itself cannot be read, NoSuchStateError where the model has no such scenario.
    """

    def __init__(
        self,
        root: str,
        files: Files,
        workspace: str | None = None,
        scenario: str | None = None,
        configuration: Configuration = DEFAULT,
        scopes: Collection[str] = SCOPES,
        before_rules: Callable[[Analysis], object] | None = None,
    ) -> None:
        self.files = files
        self.scopes = scopes
        self.between: Callable[[], object] = lambda: None
        """Called between the rules of a study. What it raises ends the study, and nothing of it is kept as found."""
        self.scenario = scenario
        self.configuration = configuration
        self.configuration_error: ConfigurationError | None = None
        """Table rows of the configuration that fit no row of the basis: none of them is used then."""
        self.model = Model(root, files, workspace)
        self.model.usual_basis = configuration.basis
        self.ran: Counter[str] = Counter()
        """What ran since the start, by step: tests prove with it what an edit did not touch."""
        self._file_versions: Counter[str] = Counter()
        self._version = 0
        self._studied: tuple[int, list[Finding]] | None = None
        """What the last study found, and of which version of the model."""
        self._view_shared: View | None = None
        """Of a twin, the view that its own was made from."""
        self._all(before_rules=before_rules)

    # updating

    def _hold(self) -> None:
        """Keep findings from now on."""
        self._store = FindingStore()
        self._by_file = FileFindings(
            self._store,
            self._allowances,
            self.configuration,
            self._file_versions,
            whole=self.scenario is None,  # what a scenario leaves dead needs no allowance there
        )
        self._asking = Asking(self.model.basis, self.scopes, self.ran)

    def _all(self, kept: StudyCache | None = None, before_rules: Callable[[Analysis], object] | None = None) -> None:
        model = self.model
        self.network = build(model, self._state())
        self.derivation = Derivation(model, self.network)
        self.derivation.all()
        self.ran["derive"] += len(self.derivation.last_run)
        self.view = View(model, self.network, self.derivation)
        self.view.study_cache = kept
        self.view.configuration = self.configuration
        self.view.overrides = self._overrides()
        self._structure = KeptStructure(model)
        self._allowances = Allowances(model)
        for path in self._file_versions:
            self._file_versions[path] += 1
        self._hold()
        for block, statement in model.statements():
            self._read(block, statement)
        if before_rules is not None:
            before_rules(self)
        ask, view, put = self._asking, self.view, self._store.put
        for name, equipment in model.equipment.items():
            if found := ask.equipment(view, equipment):
                put(("equipment", name), found)
            if found := ask.element(view, "equipment afar", equipment):
                put(("equipment afar", name), found)
        for key, feeder in model.feeders.items():
            if found := ask.feeder(view, feeder):
                put(("feeder", key), found)
            if found := ask.element(view, "feeder afar", feeder):
                put(("feeder afar", key), found)
        self._store.put(_MODEL, self._check_model())

    def _state(self) -> SwitchState:
        if self.scenario is None:
            return NORMAL_STATE
        for _, statement in self.model.scenarios:
            if statement.name is not None and statement.name.text == self.scenario:
                return scenario_state(self.model, statement)
        from wyeline_linter.studies.states import state_in

        found = state_in(self.model, self.scenario)
        if found is None:
            raise NoSuchStateError(self.scenario)
        return found

    def _overrides(self) -> tuple[Override, ...]:
        self.configuration_error = None
        try:
            return self.configuration.overrides_for(self.model.basis)
        except ConfigurationError as error:
            self.configuration_error = error
            return ()

    def edited(self, went: Iterable[Block], came: Iterable[Block]) -> Delta:
        """Take an edit of one of the model's files into account: the blocks that went and that came."""
        went, came = list(went), list(came)
        if not went and not came:
            return Delta()
        self.view.edits += 1
        delta = self.model.update(went, came)
        self.ran["parse"] += len(came)
        remarks = self.model.equipment and all(map(_only_a_remark, (*went, *came)))
        if not remarks:
            self._version += 1
            self.view.forget_studies()
        if delta.everything or delta.project or (delta.others and self.scenario is not None):
            self._all(self.view.study_cache)
            return delta
        accepted = False
        """Whether an allowance came or went."""
        for block in went:
            self._store.put(("text", block), [])
            accepted |= self._allowances.forget(block)
        for block in came:
            accepted |= self._read(block, lower_block(block.lines))
        if remarks:
            for group in self._store.showing(went):
                self._judge(group)
        else:
            self.view.unsettle()
            self._propagate(delta, went, delta.equipment | delta.feeders if accepted else set())
        self._by_file.edited(block.file for block in (*went, *came))
        return delta

    def _propagate(self, delta: Delta, went: list[Block], accepted: Collection[str]) -> None:
        """Judge what an edit touched; ``accepted`` are subjects of which allowances came or went."""
        model = self.model
        keys = delta.feeders
        shifted, renamed = self._structure.shifted(delta.names)
        self.view.near.changed(renamed)
        names = delta.equipment | users_of_systems(model, delta.equipment, shifted)
        touched = names | self._structure.left(keys)
        restructured = self._structure.changed(names, keys, self.network)
        if restructured:
            old = self.network
            self.network = self.derivation.network = self.view.network = build(model, self._state())
            self.ran["network"] += 1
            touched |= _differences(old, self.network)
            self.view.scenarios.clear()
        else:
            # Networks hold feeder objects; those replaced by an edit must stay in none, whatever its switch state.
            for written_anew in filter(None, map(model.feeders.get, keys)):
                for network in (self.network, *self.view.scenarios.values()):
                    network.replace(written_anew)
            if delta.others:
                self.view.scenarios.clear()
        changed, changed_feeders = self.derivation.update(touched, keys)
        self.ran["derive"] += len(self.derivation.last_run)
        touched |= changed
        ends = {e.name for f in map(model.feeders.get, keys) if f is not None for e in (f.source, f.target)}
        loaded = self.view.update_loads(touched | ends)
        touched_feeders = set(keys) | changed_feeders
        around: set[str] = set(loaded)
        for key in list(touched_feeders):
            feeder = model.feeders.get(key)
            if feeder is not None:
                # Its own facts concern what it feeds, and what is below that, but not what else its source feeds.
                around.add(feeder.source.name)
                touched.add(feeder.target.name)
        for name in touched:
            for feeder in (*model.feeders_from.get(name, ()), *model.feeders_to.get(name, ())):
                touched_feeders.add(feeder.key)
                around |= {feeder.source.name, feeder.target.name}
        # A changed load is looked at by its own rules and those of the feeder that brings it, never by its neighbours'.
        touched_feeders |= {f.key for name in loaded for f in model.feeders_to.get(name, ())}
        referring, referring_feeders = who_refer(model, shifted)
        around |= referring
        touched_feeders |= referring_feeders
        groups = self._store.showing(went)
        for sort, items in (("equipment", touched | around), ("feeder", touched_feeders)):
            groups |= {(sort, item) for item in items}
            groups |= {(f"{sort} afar", item) for item in items}
        if renamed or restructured:
            groups |= self._store.of_sort("equipment afar") | self._store.of_sort("feeder afar")
        for group in groups:
            self._judge(group, accepted)
        self._store.put(_MODEL, self._check_model(), accepted)

    # twins

    def twin(self, files: Files, scopes: Collection[str]) -> Analysis:
        """The same model once more for other rules, over texts that now are the same, to be edited apart from this one:
        a thread may ask it while this one goes on. All that is replaced and never changed is shared."""
        made = object.__new__(Analysis)
        vars(made).update(vars(self))
        made.files, made.scopes, made.between = files, scopes, lambda: None
        made.ran, made._studied, made._file_versions = Counter(), None, Counter()
        made._share(self)
        made.view = self.view.twin(made.model, made.network, made.derivation)
        made._view_shared = self.view
        made._hold()
        return made

    def follow(self, lead: Analysis) -> None:
        """Stand where another model stands that was edited since this became its twin, over texts that are the same
        again. Cheaper than to take these edits; what is kept of studies stays."""
        said = self._version != lead._version
        self._version, self.configuration_error = lead._version, lead.configuration_error
        self._share(lead)
        if lead.view is self._view_shared:
            self.view.follow(lead.view, self.model, self.network, self.derivation, said=said)
        else:  # it was built anew
            cache = self.view.study_cache
            self.view.forget_studies()
            self.view = lead.view.twin(self.model, self.network, self.derivation)
            self.view.study_cache = cache
            self._view_shared = lead.view
        self._hold()

    def _share(self, lead: Analysis) -> None:
        """Take over what is linked and derived there."""
        self.model, self.network = lead.model.twin(self.files), lead.network.twin()
        self.derivation = Derivation(self.model, self.network)
        self.derivation.states, self.derivation.feeders = lead.derivation.states.copy(), lead.derivation.feeders.copy()
        self._structure = lead._structure.twin(self.model)
        self._allowances = lead._allowances.twin(self.model)

    # checking

    def _read(self, block: Block, statement: Statement) -> bool:
        """Keep what a block's text alone says: its problems, and its allowances. Whether it has any of these."""
        if statement.problems:
            self._store.put(("text", block), [finding_of(problem, block) for problem in statement.problems])
        return self._allowances.read(block, statement)

    def _judge(self, group: Group, accepted_anew: Collection[str] = ()) -> None:
        """Let the rules say anew what they say of a piece of equipment or of a feeder, or nothing if it is gone."""
        sort, key = group
        found: list[Finding] = []
        if sort.startswith("equipment"):
            equipment = self.model.equipment.get(str(key))
            if equipment is not None:
                found = self._check_equipment(equipment) if sort == "equipment" else self._check(sort, equipment)
        elif sort.startswith("feeder"):
            feeder = self.model.feeders.get(str(key))
            if feeder is not None:
                found = self._asking.feeder(self.view, feeder) if sort == "feeder" else self._check(sort, feeder)
        else:
            return  # what the text says goes with its block, and the model is judged whole
        self._store.put(group, found, accepted_anew)

    def _check_equipment(self, equipment: Equipment) -> list[Finding]:
        return self._asking.equipment(self.view, equipment)

    def _check(self, sort: str, element: Equipment | Feeder) -> list[Finding]:
        return self._asking.element(self.view, sort, element)

    def _check_model(self) -> list[Finding]:
        found = [finding_of(p.problem, p.block) for p in self.model.include_problems]
        return found + self._asking.model(self.view)

    def slim(self) -> None:
        """It is judged once: before the studies, which need much themselves, let go of what only reading more text and
        further rules would take up again. Every answer stays the same."""
        forget_texts()
        self.view.slim()

    def let_go(self) -> None:
        """Nobody asks any more. What refers to its own view goes first, so that nothing waits for the collector; who
        asks all the same is answered, and lets go again."""
        self.view.forget_studies()

    # answers

    def trusted(self) -> Analysis:
        """This analysis, for those who print once and leave. Raises ConfigurationError where a part of the
        configuration could not be used, so that nobody reads figures that lack a row the project gave."""
        if self.configuration_error is not None:
            raise self.configuration_error
        return self

    def findings(self) -> list[Finding]:
        """Every finding in its one order: those accepted by an ``allow`` marked, allowances that silence none added."""
        return self._by_file.all()

    def findings_of(self, path: str) -> list[Finding]:
        """Those of :meth:`findings` that stand in a file."""
        return self._by_file.of(path)

    def version_of(self, path: str) -> int:
        """A number that is another one after an edit that changed :meth:`findings_of` a file, moved its lines, or moved
        lines that its findings show elsewhere. Whoever shows a file's findings need not look at others."""
        return self._by_file.version(path)

    def study_findings(self) -> list[Finding]:
        """What the rules of the scope ``study`` find: those that need load flow, faults, or other switch states.

        They run here, all of them, once for each version of the model; :meth:`findings` never runs them, so that it
        keeps pace with typing. Both together are what ``wyeline check`` reports.
        """
        if self._studied is None or self._studied[0] != self._version:
            raw: list[Finding] = []
            checks = self._asking.checks["study"]
            self.ran["study"] += len(checks)
            for check in checks:
                self.between()
                raw.extend(check(self.view))
            found, used = self._allowances.applied(staying(self.model, raw))
            if self.scenario is None:
                found += self._allowances.unused(used, study=True)
            judged = self.configuration.applied(without_what_unread_lines_lack(found))
            self._studied = self._version, sorted(judged, key=lambda f: f.sort_key)
        return self._studied[1]

    def take_studied(self, found: list[Finding]) -> None:
        """What :meth:`study_findings` of the same model found in another process."""
        self._studied = self._version, found

    def all_findings(self) -> list[Finding]:
        """The findings of the text, the voltages and the loads, and those of the studies, in their one order."""
        return sorted((*self.findings(), *self.study_findings()), key=lambda f: f.sort_key)


_MODEL: Group = ("model", "")


def _only_a_remark(block: Block) -> bool:
    """Whether a block is a comment or blank, so that no rule says anything of it."""
    statement = lower_block(block.lines)
    return isinstance(statement, Unreadable) and not statement.problems and not statement.damaged


def _differences(old: Network, new: Network) -> set[str]:
    """Names whose supply or other arrivals differ between two networks."""
    names = set(old.root.keys() ^ new.root.keys())
    names |= {n for n, root in new.root.items() if old.root.get(n) != root}
    supplied = old.supply.get
    names |= {n for n, feeder in new.supply.items() if supplied(n) is not feeder}
    names |= old.supply.keys() - new.supply.keys()
    names |= {n for n in old.others.keys() | new.others.keys() if old.others.get(n) != new.others.get(n)}
    return names
