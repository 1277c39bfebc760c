"""What a project removes: nobody sizes or corrects it any more, so nothing that could be accepted is told of it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_linter.rules.registry import all_rules

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment, Model
    from wyeline_linter.findings import Finding

REMOVED = "demolish"


def staying(model: Model, found: list[Finding]) -> list[Finding]:
    """The findings that concern what stays, and of what is removed those that nobody can accept, such as a voltage that
    cannot be, and those of rules that look at removal itself."""
    rules = all_rules()
    return [
        finding
        for finding in found
        if (rule := rules[finding.rule]).of_what_goes or rule.not_accepted is not None or not _goes(model, finding)
    ]


def _goes(model: Model, finding: Finding) -> bool:
    """Whether it is told of something removed: equipment, a feeder with or without what it feeds, or a circuit."""
    feeder = model.feeders.get(finding.subject)
    if feeder is not None:
        target = model.equipment.get(feeder.target.name)
        return REMOVED in feeder.body.flags or (target is not None and REMOVED in target.body.flags)
    equipment = model.equipment.get(finding.subject)
    return equipment is not None and (REMOVED in equipment.body.flags or _in_a_removed_row(equipment, finding))


def _in_a_removed_row(board: Equipment, finding: Finding) -> bool:
    """By its line: a removed circuit and the new one in its place may bear one number."""
    if not finding.position:
        return False
    block, line = finding.place.block, finding.place.span.line
    return any(
        REMOVED in placed.circuit.body.flags and placed.block is block and placed.circuit.place.span.line == line
        for placed in board.circuits
    )
