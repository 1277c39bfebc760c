"""The list of a project's issues: each once, in the order of its days, and at one with the stated revision."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.issue_dates import UNREAD
from wyeline_grammar.linking import Place
from wyeline_grammar.model import Issue, ProjectStatement, Span
from wyeline_grammar.tokens import spelled
from wyeline_linter.findings import (
    Edit,
    Finding,
    Fix,
    Related,
    Safety,
    Severity,
    code_end,
    delete_line,
    delete_phrase,
    insert_below,
)
from wyeline_linter.issues import in_words, is_said_by, newest, oldest_first
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_PROJECT = 'project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz\n'
_A, _B = '  issue A 2026-03-02 "for tender"\n', '  issue B 2026-04-14 "kitchen moved"\n'

REPEATED = rule(
    name="issue-repeated",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="Two issues of a project have one name.",
    why="Two drawings that bear one revision cannot be told from one another on site.",
    wrong=_PROJECT + _A + _A.replace("03-02", "03-09"),
    right=_PROJECT + _A + _A.replace("A", "A1").replace("03-02", "03-09"),
    mends=True,
)


@REPEATED.check
def issue_repeated(view: View) -> Iterator[Finding]:
    for block, project in view.model.projects[:1]:
        seen: dict[str, Issue] = {}
        for issue in project.issues:
            first = seen.setdefault(issue.name.text, issue)
            if first is not issue:
                same = first.date == issue.date and first.body.description == issue.body.description
                yield REPEATED.finding(
                    Place(block, issue.name.span),
                    f"issue `{issue.name.text}` is listed twice",
                    found=f"{in_words(first)}, and {in_words(issue)}",
                    needed="each issue once, under a name of its own",
                    change="Delete this line." if same else "Give the later one a name of its own, or delete one line.",
                    related=(Related(Place(block, first.name.span), "listed here first"),),
                    fixes=(Fix("Delete this line", (delete_line(block, issue.span.line),), Safety.LOOK),),
                )


ORDER = rule(
    name="issue-out-of-order",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="The issues of a project are not listed in the order of their days.",
    why="The newest issue is the revision that prints on every sheet, so a wrong day puts a wrong one there.",
    wrong=_PROJECT + _B + _A,
    right=_PROJECT + _A + _B,
    mends=True,
)


@ORDER.check
def issue_out_of_order(view: View) -> Iterator[Finding]:
    for block, project in view.model.projects[:1]:
        for before, issue in zip(project.issues, project.issues[1:], strict=False):
            if UNREAD not in (before.date, issue.date) and (before.date or "9999") > (issue.date or "9999"):
                open_one = not before.date
                yield ORDER.finding(
                    Place(block, issue.name.span),
                    f"issue `{issue.name.text}` stands below one that is not issued yet"
                    if open_one
                    else f"issue `{issue.name.text}` is older than the one above it",
                    found=f"{in_words(before)}, and below it {in_words(issue)}",
                    needed="the oldest issue first, and one without a date last",
                    change=f"Write the day of issue `{before.name.text}`, or move its line to the end of the list."
                    if open_one
                    else "Write the right day, or put the lines in the order of their days.",
                    related=(Related(Place(block, before.name.span), "the one above"),),
                    fixes=(Fix("Put the issues in the order of their days", _sorted(block, project), Safety.LOOK),),
                )
                return  # one finding for the list: its fix sets all of it right


def _sorted(block: Block, project: ProjectStatement) -> tuple[Edit, ...]:
    """Each line of the list replaced by the one that belongs there."""
    pairs = zip(project.issues, oldest_first(project), strict=True)
    rows = ((here.span.line, block.lines[other.span.line]) for here, other in pairs if other is not here)
    return tuple(Edit(block, row, 0, row, len(block.lines[row]), line) for row, line in rows)


REVISION = rule(
    name="issue-contradicts-revision",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="The stated revision is not the newest issue of the list.",
    why="The title block prints the revision, the table beside it the issues: a reader finds two answers on one sheet.",
    wrong=_PROJECT + '  revision "B"\n' + _A,
    right=_PROJECT + '  revision "A"\n' + _A,
    mends=True,
)


@REVISION.check
def issue_contradicts_revision(view: View) -> Iterator[Finding]:
    for block, project in view.model.projects[:1]:
        last, stated = newest(project), project.body.facts.get("revision")
        revision = project.body.text("revision")
        if last is None or stated is None or not revision or is_said_by(last, revision) or last.date == UNREAD:
            continue
        title = f"Leave out `revision`, so that issue `{last.name.text}` prints"
        change, fixes = f"{title}.", [Fix(title, (_left_out(block, stated.span),), Safety.LOOK)]
        if not any(is_said_by(issue, revision) for issue in project.issues):
            name, _, purpose = revision.partition(",")
            line = f"  issue {spelled(name.strip())}" + (f' "{purpose.strip()}"' if purpose.strip() else "")
            below = insert_below(block, project.issues[-1].span.line, line)
            title = f"List `{name.strip()}` as the issue that is being prepared"
            change = f"{title}, or {change[0].lower()}{change[1:]}"
            fixes.insert(0, Fix(title, (below,), Safety.LOOK))
        yield REVISION.finding(
            Place(block, stated.span),
            f"the revision is `{revision}`, but the newest issue is `{last.name.text}`",
            found=f"revision {revision}, and {in_words(last)}",
            needed="one answer: the newest issue is the revision, and `revision` may be left out",
            change=change,
            related=(Related(Place(block, last.name.span), "the newest issue"),),
            fixes=tuple(fixes),
        )


def _left_out(block: Block, span: Span) -> Edit:
    """A phrase deleted from its line, and the line where it has no other word."""
    line = block.lines[span.line]
    behind = line[span.end :]
    if line[: span.start].strip(" \t,"):
        return delete_phrase(Place(block, span))
    if not behind.strip():
        return delete_line(block, span.line)
    more = len(behind) - len(behind.lstrip(" \t,")) if line[span.end : code_end(line)].strip(" \t,") else 0
    return Edit(block, span.line, span.start, span.line, span.end + more, "")
