"""One model, judged: the database that the command line and the language server both ask.

Text becomes findings step by step, and each step keeps its results, so an edit recomputes what hangs on it: the blocks
it touched, the voltages below them, and the rules of the elements whose own facts or figures changed.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import TYPE_CHECKING, Literal

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Delta, Equipment, Feeder, Model, Place
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import (
    Allow,
    EquipmentStatement,
    FeederStatement,
    ProjectStatement,
    ScenarioStatement,
    Statement,
)
from wyeline_grammar.problems import Problem
from wyeline_grammar.sources import Files
from wyeline_linter.board_positions import KeptPositions
from wyeline_linter.configuration import DEFAULT, Configuration, ConfigurationError, Settings
from wyeline_linter.derive import Derivation, EquipmentState, FeederState
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.near_names import PARTNER_KEYS, names_in, near_declared
from wyeline_linter.network import (
    NORMAL_STATE,
    Network,
    SwitchState,
    build,
    feeder_structure_key,
    in_order,
    scenario_state,
    structure_key,
)
from wyeline_linter.rules.registry import Check, Rule, all_rules, applies, rules_for

if TYPE_CHECKING:
    from wyeline_linter.loads.rollup import LoadBook
    from wyeline_linter.protection.currents import Current
    from wyeline_linter.protection.lines import Line
    from wyeline_linter.studies.study import Studies, StudyCache
    from wyeline_linter.tables import Basis, Override


class View:
    """What a rule may look at."""

    __slots__ = (
        "_books",
        "_judged",
        "_studies",
        "_tables",
        "circuit_lines",
        "configuration",
        "currents",
        "derivation",
        "lines",
        "model",
        "network",
        "overrides",
        "positions",
        "scenarios",
        "settled",
        "settled_circuits",
        "study_cache",
    )

    def __init__(self, model: Model, network: Network, derivation: Derivation) -> None:
        self.model = model
        self.network = network
        self.derivation = derivation
        self.scenarios: dict[str, Network] = {}
        self.positions: KeptPositions = {}
        """What `board_positions` keeps of each board."""
        self.lines: dict[str, tuple[tuple[object, ...], Line]] = {}
        self.circuit_lines: dict[str, tuple[tuple[object, ...], tuple[Line, ...]]] = {}
        """Lines of `protection.lines`, by feeder and by board, with what they were built from."""
        self.currents: dict[tuple[str, str], tuple[tuple[object, ...], Current]] = {}
        """Currents of `protection.currents`, by target or by board and circuit, with what they were worked out from."""
        self.settled: dict[str, tuple[Feeder, Line | None]] = {}
        self.settled_circuits: dict[str, tuple[Equipment, tuple[Line, ...]]] = {}
        """Lines found to hold since the last edit: a rule that asks again need not look at what they were built from."""
        self.configuration = DEFAULT
        self.overrides: tuple[Override, ...] = ()
        """Rows of the code tables to which the project gives its own value."""
        self._books: dict[SwitchState, LoadBook] = {}
        self._judged: LoadBook | None = None
        self._tables: tuple[Basis | None] | None = None
        self._studies: Studies | None = None
        self.study_cache: StudyCache | None = None

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

    @property
    def tables(self) -> Basis | None:
        """The code tables of the project's basis with its own rows put in; None without a basis that is shipped.

        Raises OverrideError for an override that fits no row.
        """
        if self._tables is None:
            from wyeline_linter.tables.basis import project_basis

            self._tables = (project_basis(self.model.basis, self.overrides),)
        return self._tables[0]

    def state(self, name: str) -> EquipmentState | None:
        return self.derivation.states.get(name)

    def feeder_state(self, key: str) -> FeederState | None:
        return self.derivation.feeders.get(key)

    def equipment(self, name: str) -> Equipment | None:
        return self.model.equipment.get(name)

    def unsettle(self) -> None:
        """Forget which lines were looked at: the model has changed."""
        self.settled.clear()
        self.settled_circuits.clear()

    def of_kind(self, *kinds: str) -> list[Equipment]:
        """The equipment of some kinds, in the order of their names."""
        return sorted((e for e in self.model.equipment.values() if e.kind in kinds), key=lambda e: e.name)

    def feeders_into(self, name: str) -> list[Feeder]:
        return in_order(self.model.feeders_to.get(name, []))

    def feeders_out_of(self, name: str) -> list[Feeder]:
        return in_order(self.model.feeders_from.get(name, []))

    def near_names(self, name: str) -> list[str]:
        """The names that a slip of the pen may have meant, nearest first, three at the most."""
        return near_declared(name, self.model)

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
            from wyeline_linter.studies.study import Studies

            self._studies = Studies(self, self.study_cache)
            self.study_cache = self._studies.cache
        return self._studies

    def forget_studies(self) -> None:
        """The model changed: circuits are built anew when next asked for, and solved only where they differ."""
        self._studies = None

    def states_of_switches(self) -> list[SwitchState]:
        """Normal and every scenario that the model states."""
        return [NORMAL_STATE, *(scenario_state(self.model, s) for _, s in self.model.scenarios)]


class Analysis:
    """Findings and figures of one root file, kept under edits.

    ``scenario`` names the switch state to judge; None is the normal one. Raises SourceError where the root itself
    cannot be read, KeyError where the model has no such scenario.
    """

    def __init__(
        self,
        root: str,
        files: Files,
        workspace: str | None = None,
        scenario: str | None = None,
        configuration: Configuration = DEFAULT,
    ) -> None:
        self.files = files
        self.scenario = scenario
        self.configuration = configuration
        self.configuration_error: ConfigurationError | None = None
        """Table rows of the configuration that fit no row of the basis: none of them is used then."""
        self.model = Model(root, files, workspace)
        self.model.usual_basis = configuration.basis
        self.ran: Counter[str] = Counter()
        """What ran since the start, by step: tests prove with it what an edit did not touch."""
        self._text: dict[Block, list[Finding]] = {}
        self._equipment: dict[str, list[Finding]] = {}
        self._feeders: dict[str, list[Finding]] = {}
        """Findings where there are any: by block, by name, by feeder."""
        self._model: list[Finding] = []
        self._allows: dict[Block, Statement] = {}
        """Statements with allowances."""
        self._version = 0
        self._studied: tuple[int, list[Finding]] | None = None
        """What the last study found, and of which version of the model."""
        self._all()

    # updating

    def _all(self, kept: StudyCache | None = None) -> None:
        model = self.model
        self.network = build(model, self._state())
        self.derivation = Derivation(model, self.network)
        self.derivation.all()
        self.ran["derive"] += len(self.derivation.last_run)
        self.view = View(model, self.network, self.derivation)
        self.view.study_cache = kept
        self.view.configuration = self.configuration
        self.view.overrides = self._overrides()
        self._structure = {name: structure_key(e) for name, e in model.equipment.items()}
        self._feeder_structure = {key: feeder_structure_key(f) for key, f in model.feeders.items()}
        self._sorts = {name: entries[0].sort for name, entries in model.declared.items()}
        self._text, self._equipment, self._feeders, self._allows = {}, {}, {}, {}
        for block, statement in model.statements():
            self._read(block, statement)
        self._load_rules()
        for name, equipment in model.equipment.items():
            _keep(self._equipment, name, self._check_equipment(equipment))
        for key, feeder in model.feeders.items():
            _keep(self._feeders, key, self._check_feeder(feeder))
        self._model = self._check_model()
        self._findings: list[Finding] | None = None

    def _state(self) -> SwitchState:
        if self.scenario is None:
            return NORMAL_STATE
        for _, statement in self.model.scenarios:
            if statement.name is not None and statement.name.text == self.scenario:
                return scenario_state(self.model, statement)
        raise KeyError(self.scenario)

    def _overrides(self) -> tuple[Override, ...]:
        self.configuration_error = None
        try:
            return self.configuration.overrides_for(self.model.basis)
        except ConfigurationError as error:
            self.configuration_error = error
            return ()

    def _load_rules(self) -> None:
        basis = self.model.basis
        self._checks: dict[str, list[Check]] = {
            scope: [check for rule in rules_for(scope, basis) for check in rule.checks[scope]]
            for scope in ("model", "equipment", "feeder", "circuit", "study")
        }

    def edited(self, went: Iterable[Block], came: Iterable[Block]) -> Delta:
        """Take an edit of one of the model's files into account: the blocks that went and that came."""
        went, came = list(went), list(came)
        self._findings = None
        if not went and not came:
            return Delta()
        self._version += 1
        self.view.forget_studies()
        delta = self.model.update(went, came)
        self.ran["parse"] += len(came)
        if delta.everything or delta.project or (delta.others and self.scenario is not None):
            self._all(self.view.study_cache)
            return delta
        for block in went:
            self._text.pop(block, None)
            self._allows.pop(block, None)
        for block in came:
            self._read(block, lower_block(block.lines))
        self.view.unsettle()
        self._propagate(delta, set(went))
        return delta

    def _propagate(self, delta: Delta, went: set[Block]) -> None:
        model = self.model
        keys = delta.feeders
        shifted = self._shifted(delta.names)
        names = self._with_users_of_systems(delta.equipment, shifted)
        touched = set(names)
        for key in keys:  # what a feeder that went, or now runs elsewhere, was connected to
            before = self._feeder_structure.get(key)
            if before is not None:
                touched |= {before.source, before.target}
        if self._structure_changed(names, keys):
            old = self.network
            self.network = self.derivation.network = self.view.network = build(model, self._state())
            self.ran["network"] += 1
            touched |= _differences(old, self.network)
            self.view.scenarios.clear()
        elif delta.others:
            self.view.scenarios.clear()
        changed, changed_feeders = self.derivation.update(touched, keys)
        self.ran["derive"] += len(self.derivation.last_run)
        touched |= changed
        ends = {e.name for f in map(model.feeders.get, keys) if f is not None for e in (f.source, f.target)}
        loaded = self.view.update_loads(touched | ends)
        touched_feeders = set(keys) | changed_feeders
        for key in list(touched_feeders):
            feeder = model.feeders.get(key)
            if feeder is not None:
                touched |= {feeder.source.name, feeder.target.name}
        around: set[str] = set(loaded)
        for name in touched:
            for feeder in (*model.feeders_from.get(name, ()), *model.feeders_to.get(name, ())):
                touched_feeders.add(feeder.key)
                around |= {feeder.source.name, feeder.target.name}
        # A changed load is looked at by its own rules and those of the feeder that brings it, never by its neighbours'.
        touched_feeders |= {f.key for name in loaded for f in model.feeders_to.get(name, ())}
        self._add_those_who_refer(shifted, around, touched_feeders)
        self._add_those_who_show(went, around, touched_feeders)
        for name in touched | around:
            equipment = model.equipment.get(name)
            _keep(self._equipment, name, self._check_equipment(equipment) if equipment is not None else [])
        for key in touched_feeders:
            feeder = model.feeders.get(key)
            _keep(self._feeders, key, self._check_feeder(feeder) if feeder is not None else [])
        self._model = self._check_model()

    def _shifted(self, names: Iterable[str]) -> dict[str, str]:
        """The names that now stand for nothing, or for another sort of thing, with the sort they had."""
        shifted: dict[str, str] = {}
        for name in names:
            entries = self.model.declared.get(name)
            old, new = self._sorts.get(name), entries[0].sort if entries else None
            if old == new:
                continue
            if old is not None:
                shifted[name] = old
            if new is None:
                del self._sorts[name]
            else:
                self._sorts[name] = new
        return shifted

    def _add_those_who_refer(self, shifted: dict[str, str], names: set[str], keys: set[str]) -> None:
        """What names something that went, other than as the end of a feeder, its type or its system."""
        model = self.model
        raceways = {name for name, sort in shifted.items() if sort == "raceway"}
        for equipment in model.equipment.values() if shifted else ():
            facts = equipment.body.facts
            for key in PARTNER_KEYS:
                fact = facts.get(key)
                if fact is not None and not shifted.keys().isdisjoint(names_in(fact)):
                    names.add(equipment.name)
        if not raceways:
            return
        for feeder in model.feeders.values():
            raceway = feeder.body.raceway
            if raceway is not None and raceway.stuff in raceways:
                keys.add(feeder.key)
        for equipment in model.equipment.values():
            for placed in equipment.circuits:
                raceway = placed.circuit.body.raceway
                if raceway is not None and raceway.stuff in raceways:
                    names.add(equipment.name)

    def _add_those_who_show(self, went: set[Block], names: set[str], keys: set[str]) -> None:
        """What has a finding that offers names or repairs from the whole model, or that shows a place that went."""
        rules = all_rules()

        def shows(finding: Finding) -> bool:
            rule = rules.get(finding.rule)
            if rule is not None and rule.roams:
                return True
            if any(related.place.block in went for related in finding.related):
                return True
            return any(edit.block in went for fix in finding.fixes for edit in fix.edits)

        for name, found in self._equipment.items():
            if any(map(shows, found)):
                names.add(name)
        for key, found in self._feeders.items():
            if any(map(shows, found)):
                keys.add(key)

    def _with_users_of_systems(self, names: set[str], shifted: dict[str, str]) -> set[str]:
        """A declared system's users are derived anew with it."""
        model = self.model
        systems = {n for n in names if any(d.sort == "system" for d in model.declared.get(n, ()))}
        systems |= shifted.keys()  # also where the name of something else stood in a system's place
        if not systems:
            return set(names)
        users = {
            e.name
            for e in model.equipment.values()
            for side in (e.primary, e.secondary)
            if side is not None and side.name in systems
        }
        return set(names) | users

    def _structure_changed(self, names: Iterable[str], keys: Iterable[str]) -> bool:
        changed = False
        for name in names:
            equipment = self.model.equipment.get(name)
            new = structure_key(equipment) if equipment is not None else None
            if self._structure.get(name) != new:
                changed = True
                if new is None:
                    self._structure.pop(name, None)
                else:
                    self._structure[name] = new
        for key in keys:
            feeder = self.model.feeders.get(key)
            structure = feeder_structure_key(feeder) if feeder is not None else None
            if self._feeder_structure.get(key) != structure:
                changed = True
                if structure is None:
                    self._feeder_structure.pop(key, None)
                else:
                    self._feeder_structure[key] = structure
        if not changed:
            # The network holds feeder objects; those replaced by an edit must not stay in it.
            for key in keys:
                feeder = self.model.feeders.get(key)
                if feeder is not None:
                    self.network.replace(feeder)
        return changed

    # checking

    def _read(self, block: Block, statement: Statement) -> None:
        """Keep what a block's text alone says: its problems, and that it has allowances."""
        if statement.problems:
            self._text[block] = [finding_of(problem, block) for problem in statement.problems]
        if getattr(statement, "allows", ()):
            self._allows[block] = statement

    def _check_equipment(self, equipment: Equipment) -> list[Finding]:
        found: list[Finding] = []
        view, checks = self.view, self._checks["equipment"]
        self.ran["rule"] += len(checks)
        for check in checks:
            found.extend(check(view, equipment))
        if equipment.circuits:
            checks = self._checks["circuit"]
            self.ran["rule"] += len(checks)
            for check in checks:
                for circuit in equipment.circuits:
                    found.extend(check(view, equipment, circuit))
        return found

    def _check_feeder(self, feeder: Feeder) -> list[Finding]:
        found: list[Finding] = []
        view, checks = self.view, self._checks["feeder"]
        self.ran["rule"] += len(checks)
        for check in checks:
            found.extend(check(view, feeder))
        return found

    def _check_model(self) -> list[Finding]:
        found = [finding_of(p.problem, p.block) for p in self.model.include_problems]
        self.ran["rule"] += len(self._checks["model"])
        for check in self._checks["model"]:
            found.extend(check(self.view))
        return found

    # answers

    def trusted(self) -> Analysis:
        """This analysis, for those who print once and leave. Raises ConfigurationError where a part of the
        configuration could not be used, so that nobody reads figures that lack a row the project gave."""
        if self.configuration_error is not None:
            raise self.configuration_error
        return self

    def findings(self) -> list[Finding]:
        """Every finding in its one order: those accepted by an ``allow`` marked, allowances that silence none added."""
        if self._findings is None:
            raw = [f for group in self._groups() for f in group]
            judged = self.configuration.applied(self._with_allowances(raw))
            self._findings = sorted(judged, key=lambda f: f.sort_key)
        return self._findings

    def study_findings(self) -> list[Finding]:
        """What the rules of the scope ``study`` find: those that need load flow, faults, or other switch states.

        They run here, all of them, once for each version of the model; :meth:`findings` never runs them, so that it
        keeps pace with typing. Both together are what ``wyeline check`` reports.
        """
        if self._studied is None or self._studied[0] != self._version:
            raw: list[Finding] = []
            checks = self._checks["study"]
            self.ran["study"] += len(checks)
            for check in checks:
                raw.extend(check(self.view))
            judged = self.configuration.applied(self._with_allowances(raw, study=True))
            self._studied = self._version, sorted(judged, key=lambda f: f.sort_key)
        return self._studied[1]

    def all_findings(self) -> list[Finding]:
        """The findings of the text, the voltages and the loads, and those of the studies, in their one order."""
        return sorted((*self.findings(), *self.study_findings()), key=lambda f: f.sort_key)

    @property
    def settling(self) -> bool:
        """Whether edits came after the last study (or there was none), so that what it found may no longer hold."""
        return self._studied is None or self._studied[0] != self._version

    def last_study_findings(self) -> list[Finding]:
        """What the last study found, without running one: while :attr:`settling`, to be shown as not yet confirmed.

        Findings of statements that went are left out, and so are places and fixes in such statements.
        """
        if self._studied is None:
            return []
        if not self.settling:
            return self._studied[1]
        there = {block for block, _ in self.model.statements()}
        return [_without_gone(f, there) for f in self._studied[1] if f.place.block in there]

    def _groups(self) -> Iterator[list[Finding]]:
        yield from self._text.values()
        yield from self._equipment.values()
        yield from self._feeders.values()
        yield self._model

    def _with_allowances(self, raw: list[Finding], *, study: bool = False) -> list[Finding]:
        by_block, everywhere = self._allowances()
        if not by_block and not everywhere:
            return raw
        used: set[int] = set()
        result: list[Finding] = []
        for finding in raw:
            allow = self._allow_for(finding, by_block, everywhere)
            if allow is not None and finding.rule not in _NEVER_ALLOWED:
                used.add(id(allow))
                finding = replace(finding, allowed=allow.reason)
            result.append(finding)
        if self.scenario is not None:
            return result  # what a scenario leaves dead needs no allowance there
        unused = all_rules()["allowance-unused"]
        ran = {rule.name for rule in all_rules().values() if applies(rule, self.model.basis)}
        rules = all_rules()
        for block, allows in (*by_block.items(), *everywhere):
            for allow in allows:
                # Each pass speaks of the allowances for its own rules; those for no rule at all belong to the first.
                of_study = allow.rule in rules and "study" in rules[allow.rule].checks
                if id(allow) not in used and of_study == study:
                    result.append(_unused(unused, block, allow, ran))
        return result

    def _allowances(self) -> tuple[dict[Block, tuple[Allow, ...]], list[tuple[Block, tuple[Allow, ...]]]]:
        by_block: dict[Block, tuple[Allow, ...]] = {}
        everywhere: list[tuple[Block, tuple[Allow, ...]]] = []
        for block, statement in self._allows.items():
            if isinstance(statement, ProjectStatement):
                everywhere.append((block, statement.allows))
            elif isinstance(statement, EquipmentStatement | FeederStatement | ScenarioStatement):
                by_block[block] = statement.allows
        everywhere.sort(key=lambda e: (e[0].file, e[0].first_line))
        return by_block, everywhere

    def _allow_for(
        self,
        finding: Finding,
        by_block: dict[Block, tuple[Allow, ...]],
        everywhere: list[tuple[Block, tuple[Allow, ...]]],
    ) -> Allow | None:
        blocks = [finding.place.block]
        equipment = self.model.equipment.get(finding.subject)
        if equipment is not None:
            blocks += [block for block, _ in equipment.chain]
        feeder = self.model.feeders.get(finding.subject)
        if feeder is not None:
            blocks.append(feeder.block)
        for block in blocks:
            for allow in by_block.get(block, ()):
                if allow.rule == finding.rule and (allow.place is None or allow.place.key == finding.position):
                    return allow
        for _, allows in everywhere:
            for allow in allows:
                if allow.rule == finding.rule:
                    return allow
        return None


def _keep(store: dict[str, list[Finding]], key: str, found: list[Finding]) -> None:
    """Findings under their key, and nothing where there are none."""
    if found:
        store[key] = found
    else:
        store.pop(key, None)


def _without_gone(finding: Finding, there: set[Block]) -> Finding:
    """A finding without the related places and the fixes that lie in statements that went."""
    related = tuple(r for r in finding.related if r.place.block in there)
    fixes = tuple(f for f in finding.fixes if all(e.block in there for e in f.edits))
    if len(related) == len(finding.related) and len(fixes) == len(finding.fixes):
        return finding
    return replace(finding, related=related, fixes=fixes)


_NEVER_ALLOWED = frozenset({"allowance-unused", "allowance-stale", "baseline-excess"})


def _unused(rule: Rule, block: Block, allow: Allow, ran: set[str]) -> Finding:
    from wyeline_linter.rules.allowances import unused_allowance

    return unused_allowance(rule, block, allow, allow.rule in ran, allow.rule in all_rules())


def _differences(old: Network, new: Network) -> set[str]:
    """Names whose supply or other arrivals differ between two networks."""
    names = set(old.root.keys() ^ new.root.keys())
    names |= {n for n, root in new.root.items() if old.root.get(n) != root}
    names |= {n for n in old.supply.keys() | new.supply.keys() if old.supply.get(n) is not new.supply.get(n)}
    names |= {n for n in old.others.keys() | new.others.keys() if old.others.get(n) != new.others.get(n)}
    return names


def finding_of(problem: Problem, block: Block) -> Finding:
    """A problem of the text as a finding, with the severity and reason of its rule."""
    from wyeline_grammar.model import Span

    known = all_rules().get(problem.rule)
    severity = known.severity if known is not None else Severity.ERROR
    fixes = tuple(
        Fix(
            remedy.title,
            tuple(Edit(block, e.line, e.start, e.line, e.end, e.text) for e in remedy.edits),
            Safety.SAFE if remedy.sure else Safety.LOOK,
        )
        for remedy in problem.remedies
    )
    return Finding(
        problem.rule,
        severity,
        problem.message,
        Place(block, Span(problem.line, problem.start, problem.end)),
        problem.found,
        problem.needed,
        problem.why or (known.why if known is not None else ""),
        problem.change,
        fixes=fixes,
    )
