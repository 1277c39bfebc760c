"""Problems of the text as findings, with the severity and reason of their rule."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Place
from wyeline_grammar.problems import Problem
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.rules.registry import all_rules

if TYPE_CHECKING:
    pass


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
