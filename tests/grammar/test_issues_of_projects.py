"""Issues of a project: read, dated as ISO 8601-1:2019 (4.3.2, calendar dates) writes days, set in columns, mended.

What other spellings of a date mean is held against the standard library's own formatting of the same day.
"""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from wyeline_grammar import memo
from wyeline_grammar.formatter import format_text
from wyeline_grammar.issue_dates import UNREAD
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import Issue, ProjectStatement
from wyeline_grammar.problems import Problem
from wyeline_grammar.references import names_of

DAYS = st.dates(date(1950, 1, 1), date(2150, 12, 31))


def project(*lines: str) -> ProjectStatement:
    statement = lower_block(('project "Haus Küster"', *(f"  {line}" for line in lines)))
    assert isinstance(statement, ProjectStatement)
    return statement


def issue(line: str) -> tuple[Issue, tuple[Problem, ...]]:
    statement = project(line)
    return statement.issues[0], statement.problems


def test_a_list_of_issues_is_read_in_its_order() -> None:
    made = project(
        'issue A 2026-03-02 "for tender"',
        'issue "B 2", 2026-04-14, "Küche", drawn "T. Aune" checked RO',
        "issue 3",
        'drawn MK, engineer "R. Okafor, PE"',
    )
    assert made.problems == ()
    told = [
        (i.name.text, i.date, i.body.description, i.body.text("drawn"), i.body.text("checked")) for i in made.issues
    ]
    assert told == [
        ("A", "2026-03-02", "for tender", None, None),
        ("B 2", "2026-04-14", "Küche", "T. Aune", "RO"),
        ("3", "", None, None, None),
    ]
    assert (made.body.text("drawn"), made.body.text("engineer")) == ("MK", "R. Okafor, PE")
    assert made.body.description is None, "the text of an issue is not the project's"


def test_usual_lines_never_ask_the_grammar() -> None:
    """The memo knows them, also without a phrase behind the date: a check of a sound model never imports Lark."""
    before = memo.counts.lark
    project(
        "issue A 2026-03-02", "issue B", 'issue "C 2" 2026-05-01 "x"', 'issue 4 2026-05-02 "y" drawn MK, checked RO'
    )
    assert memo.counts.lark == before


@given(DAYS)
def test_every_day_of_the_calendar_is_a_date(day: date) -> None:
    found, problems = issue(f"issue A {day.isoformat()}")
    assert found.date == day.isoformat() and problems == ()


@pytest.mark.parametrize("text", ["2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "0026-04-01"])
def test_what_is_no_day_is_told_and_is_not_taken_for_an_issue_in_preparation(text: str) -> None:
    found, (problem,) = issue(f"issue A {text}")
    assert found.date == UNREAD and problem.rule == "value-not-understood" and text in problem.message


@given(DAYS, st.sampled_from(["%d.%m.%Y", "%Y/%m/%d", "%Y.%m.%d", "%Y%m%d", "%d %B %Y", "%B %d, %Y", "%d-%b-%Y"]))
def test_a_date_that_can_mean_one_day_is_set_right(day: date, written: str) -> None:
    found, (problem,) = issue(f'issue A {day.strftime(written)} "x"')
    (remedy,) = problem.remedies
    assert remedy.sure and [edit.text for edit in remedy.edits] == [day.isoformat()]
    assert found.date == day.isoformat() and found.body.description == "x", "and is read as what it means"


@given(DAYS)
def test_strokes_offer_each_day_that_they_may_mean(day: date) -> None:
    _, (problem,) = issue(f"issue A {day.month}/{day.day}/{day.year}")
    offered = [edit.text for remedy in problem.remedies for edit in remedy.edits]
    assert day.isoformat() in offered and any(remedy.sure for remedy in problem.remedies) is (len(offered) == 1)
    assert len(offered) == 1 + (day.day <= 12 and day.day != day.month)


def test_what_stands_in_quotes_is_kept_by_every_fix() -> None:
    for line in (
        'issue A "2.3.2026 for tender" 2026-03-02',
        'issue 2026-03-02 A "for 3/2/2026"',
        'issue A 2.3.2026 "rev A 2026-03-02"',
    ):
        statement = project(line)
        (problem,) = statement.problems
        (edit,) = problem.remedies[0].edits
        mended = f"  {line}"
        mended = mended[: edit.start] + edit.text + mended[edit.end :]
        again = project(mended.strip())
        assert again.problems == () and again.issues[0].date == "2026-03-02"
        assert again.issues[0].body.description == statement.issues[0].body.description
        assert (again.issues[0].body.description or "") in line


def test_an_issue_takes_nothing_electrical_and_stands_under_a_project_alone() -> None:
    assert {p.rule for p in project("issue A 2026-03-02 rated 10 kA").problems} == {"attribute-out-of-place"}
    assert {p.rule for p in project("issue A 2026-03-02 3#8 + G #10 Cu").problems} == {"attribute-out-of-place"}
    board = lower_block(("panel LP-1 208Y/120", "  issue A 2026-03-02"))
    assert [p.rule for p in board.problems] == ["detail-out-of-place"]
    (alone,) = lower_block(('issue A 2026-03-02 "for tender"',)).problems
    assert [remedy.title for remedy in alone.remedies] == ["Indent the line"]


def test_issues_are_set_in_columns() -> None:
    text = (
        'project "X"\n issue A 2026-03-02 "for tender" // sent\n  issue  LONG-NAME 2026-03-02,drawn MK\n issue C "x"\n'
    )
    made = format_text(text)
    assert made == (
        'project "X"\n'
        '  issue A     2026-03-02  "for tender"  // sent\n'
        "  issue LONG-NAME  2026-03-02,  drawn MK\n"
        '  issue C                 "x"\n'
    )
    assert format_text(made) == made


def test_the_name_of_an_issue_is_no_name_of_the_model() -> None:
    assert names_of(('project "X"', "  issue LP-1 2026-03-02")) == ()


@pytest.mark.parametrize(
    ("line", "right"),
    [
        ('drawn by "M. Kolb"', 'drawn "M. Kolb"'),
        ('drawn by "M. Kolb", checked by EB', 'drawn "M. Kolb", checked EB'),
        ('issue A 2026-03-02 "x", drawn by MK, checked by "E. Bell"', None),
    ],
)
def test_by_is_left_out_and_never_taken_for_a_name(line: str, right: str | None) -> None:
    for _ in range(4):
        problems = project(line).problems
        sure = [remedy for problem in problems for remedy in problem.remedies if remedy.sure]
        assert bool(sure) is bool(problems)
        for remedy in sure[:1]:
            (edit,) = remedy.edits
            line = f"  {line}"[: edit.start] + edit.text + f"  {line}"[edit.end :]
            line = line.strip()
    assert " by" not in line and '"by"' not in line and right in (line, None)
    assert project(line).problems == ()


@pytest.mark.parametrize("line", ["issue A 2026-03-02 for tender, drawn MK", "issue A for tender 2026-03-02, drawn MK"])
def test_what_an_issue_is_for_is_offered_in_quotes(line: str) -> None:
    (problem,) = project(line).problems
    (remedy,) = problem.remedies
    assert not remedy.sure, "it may be a keyword that nobody knows"
    (edit,) = remedy.edits
    mended = f"  {line}"[: edit.start] + edit.text + f"  {line}"[edit.end :]
    assert project(mended.strip()).problems == () and mended == '  issue A 2026-03-02 "for tender", drawn MK'
