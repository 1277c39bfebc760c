"""The model's own assertions: `expect` statements held against the derived figures."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Place
from wyeline_grammar.model import ExpectStatement
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_PROJECT = 'project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
_MODEL = (
    "utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
)

MISSED = rule(
    name="expectation-missed",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="A figure is not what the model expects of it.",
    why="The expectation was written down because the design relies on it.",
    wrong=_PROJECT + _MODEL + "expect DP fault <= 20 kA\n",
    right=_PROJECT + _MODEL + "expect DP fault <= 22 kA\n",
)


@MISSED.check
def expectation_missed(view: View) -> Iterator[Finding]:
    if not view.model.expects:
        return
    from wyeline_linter.studies.measures import MEASURES, measure

    for block, statement in view.model.expects:
        if statement.relation is None or statement.value is None or statement.measure is None:
            continue
        if statement.measure not in MEASURES:
            yield _unknown_measure(block, statement, list(MEASURES))
            continue
        limit = statement.value.data
        if not isinstance(limit, float | int):
            continue
        for result in measure(view, statement):
            if result.value is None:
                yield _not_known(block, statement, result.subject, result.reasons)
            elif _fails(statement.relation, result.value, float(limit)):
                yield _missed(block, statement, result.subject, result.text, result.state)


def _fails(relation: str, value: float, limit: float) -> bool:
    slack = 1e-9 * max(abs(limit), 1e-9)
    return value > limit + slack if relation == "<=" else value < limit - slack


def _place(block: Block, statement: ExpectStatement) -> Place:
    return Place(block, statement.measure_span or statement.head)


def _missed(block: Block, statement: ExpectStatement, subject: str, text: str, state: str) -> Finding:
    assert statement.value is not None
    most = "at most" if statement.relation == "<=" else "at least"
    return MISSED.finding(
        _place(block, statement),
        f"{statement.measure} of `{subject}` is {text}{state}; {most} {statement.value.text} is expected",
        found=text,
        needed=f"{most} {statement.value.text}",
        change="Change the design so that it holds, or the expectation if the design no longer relies on it.",
        subject=subject,
    )


def _not_known(block: Block, statement: ExpectStatement, subject: str, reasons: tuple[str, ...]) -> Finding:
    why = "; ".join(reasons[:3]) or "nothing tells it"
    return MISSED.finding(
        _place(block, statement),
        f"{statement.measure} of `{subject}` is not known, so the expectation cannot be judged: {why}",
        severity=Severity.GAP,
        found=f"unknown: {why}",
        needed="the facts that it lacks",
        change="Write what is missing; the finding at its place says what.",
        subject=subject,
    )


def _unknown_measure(block: Block, statement: ExpectStatement, known: list[str]) -> Finding:
    return MISSED.finding(
        _place(block, statement),
        f"there is no figure called `{statement.measure}` to expect something of",
        severity=Severity.WARNING,
        found=f"`{statement.measure}`",
        needed=listed([f"`{name}`" for name in known]),
        change="Name one of these figures.",
        subject=statement.source.text if statement.source is not None else "",
    )
