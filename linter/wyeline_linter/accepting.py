"""The `allow` statements of a model: which findings they accept, and which of them accept nothing."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from dataclasses import replace

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Model
from wyeline_grammar.model import (
    Allow,
    EquipmentStatement,
    FeederStatement,
    ProjectStatement,
    ScenarioStatement,
    Statement,
)
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.rules.registry import all_rules, applies

Used = set[tuple[Block, int]]
"""Allowances that accepted something: the block, and the how-manieth of its allowances."""


def beyond(rule: str) -> str:
    """Why nobody can accept a rule's findings, neither by an `allow` nor in a baseline; empty where one can."""
    found = all_rules().get(rule)
    return found.not_accepted.value if found is not None and found.not_accepted is not None else ""


def to_offer(finding: Finding) -> bool:
    """Whether an editor may offer to accept a finding: where it is a matter of judgement. An overload or a rating too
    low stays one when it is accepted, so whoever accepts such an error of physics writes the `allow` by hand."""
    found = all_rules().get(finding.rule)
    if found is None or found.scope == "text" or beyond(finding.rule):
        return False
    return found.basis != "physics" or finding.severity is not Severity.ERROR


class Allowances:
    """Statements with allowances, by block."""

    def __init__(self, model: Model) -> None:
        self.model = model
        self._by_block: dict[Block, tuple[Allow, ...]] = {}
        self._everywhere: dict[Block, tuple[Allow, ...]] = {}
        """Those of the project hold for the whole model."""

    def twin(self, model: Model) -> Allowances:
        """The same of a twin of the model."""
        made = Allowances(model)
        made._by_block, made._everywhere = self._by_block.copy(), self._everywhere.copy()
        return made

    def read(self, block: Block, statement: Statement) -> bool:
        """Take a statement into account; whether it has allowances."""
        allows: tuple[Allow, ...] = getattr(statement, "allows", ())
        if not allows:
            return False
        if isinstance(statement, ProjectStatement):
            self._everywhere[block] = allows
        elif isinstance(statement, EquipmentStatement | FeederStatement | ScenarioStatement):
            self._by_block[block] = allows
        return True

    def forget(self, block: Block) -> bool:
        """A statement went; whether it had allowances."""
        found = self._by_block.pop(block, None) or self._everywhere.pop(block, None)
        return found is not None

    def applied(self, raw: Iterable[Finding]) -> tuple[list[Finding], Used]:
        """Findings, those that are accepted marked with the reason; and the allowances that were used."""
        if not self._by_block and not self._everywhere:
            return list(raw), set()
        used: Used = set()
        result: list[Finding] = []
        everywhere = sorted(self._everywhere.items(), key=lambda e: (e[0].file, e[0].first_line))
        for finding in raw:
            accepted = self._for(finding, everywhere)
            never = beyond(finding.rule) if accepted is not None else ""
            if never:
                finding = replace(finding, why=f"{finding.why} No `allow` can take this away: {never}.".lstrip())
            elif accepted is not None:
                used.add(accepted[:2])
                finding = replace(finding, allowed=accepted[2].reason)
            result.append(finding)
        return result, used

    def _for(
        self, finding: Finding, everywhere: list[tuple[Block, tuple[Allow, ...]]]
    ) -> tuple[Block, int, Allow] | None:
        for block in self._blocks_of(finding):
            for i, allow in enumerate(self._by_block.get(block, ())):
                if allow.rule == finding.rule and (allow.place is None or allow.place.key == finding.position):
                    return block, i, allow
        for block, allows in everywhere:
            for i, allow in enumerate(allows):
                if allow.rule == finding.rule:
                    return block, i, allow
        return None

    def _blocks_of(self, finding: Finding) -> Iterator[Block]:
        yield finding.place.block
        equipment = self.model.equipment.get(finding.subject)
        if equipment is not None:
            for block, _ in equipment.chain:
                yield block
        feeder = self.model.feeders.get(finding.subject)
        if feeder is not None:
            yield feeder.block

    def unused(self, used: Collection[tuple[Block, int]], *, study: bool) -> list[Finding]:
        """A finding for each allowance that accepted nothing.

        Each pass speaks of the allowances for its own rules (``study``: those that need solved figures); those for no
        rule at all belong to the first.
        """
        if not self._by_block and not self._everywhere:
            return []
        from wyeline_linter.rules.allowances import unused_allowance

        rules, basis = all_rules(), self.model.basis
        found: list[Finding] = []
        for block, allows in (*self._by_block.items(), *self._everywhere.items()):
            for i, allow in enumerate(allows):
                rule = rules.get(allow.rule)
                of_study = rule is not None and "study" in rule.checks
                if (block, i) not in used and of_study == study:
                    ran = rule is not None and applies(rule, basis)
                    never = beyond(allow.rule)
                    found.append(
                        unused_allowance(rules["allowance-unused"], block, allow, ran, rule is not None, never)
                    )
        return found
