"""One model, judged: the database that the command line and the language server both ask.

Text becomes findings step by step, and each step keeps its results, so an edit recomputes what hangs on it: the blocks
it touched, the voltages below them, and the rules of the elements whose own facts or figures changed.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Delta, Equipment, Feeder, Model
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import (
    Allow,
    EquipmentStatement,
    FeederStatement,
    ProjectStatement,
    ScenarioStatement,
    Statement,
)
from wyeline_grammar.sources import Files
from wyeline_linter.configuration import DEFAULT, Configuration, ConfigurationError
from wyeline_linter.derive import Derivation
from wyeline_linter.findings import Finding
from wyeline_linter.near_names import PARTNER_KEYS, names_in
from wyeline_linter.network import (
    NORMAL_STATE,
    Network,
    SwitchState,
    build,
    feeder_structure_key,
    scenario_state,
    structure_key,
)
from wyeline_linter.protection.lines import circuit_lines, circuit_marks
from wyeline_linter.rules.registry import SCOPES, Check, Rule, all_rules, applies, rules_for
from wyeline_linter.text_findings import finding_of as finding_of
from wyeline_linter.view import View as View

if TYPE_CHECKING:
    from wyeline_linter.studies.study import StudyCache
    from wyeline_linter.tables import Override


class Analysis:
    """Findings and figures of one root file, kept under edits.

    ``scenario`` names the switch state to judge; None is the normal one. Only rules of ``scopes`` are run. Raises
    SourceError where the root itself cannot be read, KeyError where the model has no such scenario.
    """

    def __init__(
        self,
        root: str,
        files: Files,
        workspace: str | None = None,
        scenario: str | None = None,
        configuration: Configuration = DEFAULT,
        scopes: Collection[str] = SCOPES,
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
        from wyeline_linter.studies.states import state_in

        found = state_in(self.model, self.scenario)
        if found is None:
            raise KeyError(self.scenario)
        return found

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
            scope: [c for rule in rules_for(scope, basis) for c in rule.checks[scope]] if scope in self.scopes else []
            for scope in SCOPES
        }
        self._quiet: list[tuple[Check, set[int]]] = [(check, set()) for check in self._checks["line"]]
        """For each check of lines the marks of circuits about which it has nothing to say."""

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
            # Networks hold feeder objects; those replaced by an edit must stay in none, whatever its switch state.
            for key in keys:
                feeder = self.model.feeders.get(key)
                if feeder is not None:
                    for network in (self.network, *self.view.scenarios.values()):
                        network.replace(feeder)
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
            found.extend(self._check_lines(equipment))
        return found

    def _check_lines(self, board: Equipment) -> Iterator[Finding]:
        view = self.view
        marks = circuit_marks(view, board)
        different = set(marks.values())
        for check, quiet in self._quiet:
            if different <= quiet:
                continue
            self.ran["rule"] += 1
            for line in circuit_lines(view, board):
                mark = marks[line.position]
                if mark in quiet:
                    continue
                found = list(check(view, line))
                yield from found
                if not found and mark >= 0:
                    quiet.add(mark)

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
                self.between()
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
