"""How the `expect` statements of a model fared, as plain records for every output."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.findings import Finding, Severity, code_end

if TYPE_CHECKING:
    from wyeline_grammar.model import ExpectStatement
    from wyeline_linter.analysis import Analysis

MISSED_RULE = "expectation-missed"
"""The rule that judges expectations; its findings stand at the statement."""


class Expectation(NamedTuple):
    """One statement: its file, row (from 0) and text; ``met``, ``missed`` or ``unknown``; and why it is not met."""

    path: str
    row: int
    text: str
    outcome: str
    reason: str


def expectations_of(analysis: Analysis, findings: list[Finding]) -> list[Expectation]:
    """The expectations of a model in the order of its files.

    What is found at the statement decides: missed where its rule says so, unknown where anything else stands in the
    way. Nothing found counts as met only where the rule ran.
    """
    expects = analysis.model.expects
    if not expects:
        return []
    from wyeline_linter.rules.registry import all_rules, applies

    rule = all_rules().get(MISSED_RULE)
    ran = rule is not None and applies(rule, analysis.model.basis)
    at: dict[tuple[str, int], list[Finding]] = {}
    for finding in findings:
        at.setdefault((finding.place.file, finding.place.row), []).append(finding)
    order = {path: i for i, path in enumerate(analysis.model.files)}
    result = []
    for block, statement in sorted(expects, key=lambda e: (order.get(e[0].file, 0), e[0].first_line)):
        line, row = block.lines[0], block.first_line
        here = [f for i in range(len(block.lines)) for f in at.get((block.file, row + i), ())]
        on = rule is not None and analysis.configuration.severity(MISSED_RULE, block.file, rule.severity) is not None
        outcome, reason = _outcome(here, statement, ran and on)
        result.append(Expectation(block.file, row, " ".join(line[: code_end(line)].split()), outcome, reason))
    return result


def _outcome(findings: list[Finding], statement: ExpectStatement, ran: bool) -> tuple[str, str]:
    for finding in findings:
        if finding.rule == MISSED_RULE and finding.severity is not Severity.GAP:
            from wyeline_linter.studies.measures import MEASURES

            return "missed" if statement.measure in MEASURES else "unknown", finding.message
    if findings:
        return "unknown", findings[0].message
    return ("met", "") if ran else ("unknown", "nothing judged it in this run")
