"""Problems of the text as findings, with the severity and reason of their rule."""

from __future__ import annotations

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Place
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.problems import Problem
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.rules.registry import all_rules


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


_READ_ALL_THE_SAME = frozenset({"implausible-value"})
"""Problems of values that are taken as written."""


def without_what_unread_lines_lack(findings: list[Finding]) -> list[Finding]:
    """Findings but for the gaps and advice at lines that could not be read in full: what they miss may stand there."""
    unread: dict[Block, dict[int, str]] = {}
    left = []
    for finding in findings:
        if finding.severity in (Severity.GAP, Severity.ADVICE):
            block = finding.place.block
            if block not in unread:
                unread[block] = {p.line: p.rule for p in lower_block(block.lines).problems if _loses_words(p)}
            if unread[block].get(finding.place.span.line, finding.rule) != finding.rule:
                continue
        left.append(finding)
    return left


def _loses_words(problem: Problem) -> bool:
    mended = problem.rule == "known-slip" and any(remedy.sure for remedy in problem.remedies)
    return not mended and problem.rule not in _READ_ALL_THE_SAME
