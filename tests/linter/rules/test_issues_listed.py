"""The list of issues: what its findings offer, and what is no finding."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.edits_in_columns import in_columns
from wyeline_linter.findings import Finding
from wyeline_linter.fixing import apply_edits

A, B = '  issue A     2026-03-02  "for tender"', '  issue B     2026-04-14  "kitchen moved"'


def text_of(*lines: str) -> str:
    return "\n".join(('project "Kiln hall"', *lines, ""))


def found(*lines: str) -> list[Finding]:
    analysis = Analysis("/m/site.wye", Files(lambda _: text_of(*lines)), "/m")
    return [f for f in analysis.findings() if f.rule.startswith("issue-") and f.rule != "issue-data-missing"]


def fixed(lines: tuple[str, ...], number: int = 0) -> tuple[str, ...]:
    """The lines below the project once a fix of the one finding is taken, which must be the end of it."""
    (finding,) = found(*lines)
    made = apply_edits(text_of(*lines), in_columns(finding.fixes[number].edits))
    assert made.startswith('project "Kiln hall"\n') and made.endswith("\n")
    left = tuple(made.splitlines()[1:])
    assert found(*left) == []
    return left


@pytest.mark.parametrize(
    "lines",
    [
        (A, B),
        (A, B, "  issue C"),
        (A, B, '  revision "B"'),
        (A, B, '  revision "Rev. B, for permit"'),
        (A, A.replace("A", "A1")),
        ('  revision "Z"',),
        ("  issue 1 2026-03-02", "  revision 1"),
        ("  issue A 2026-03-03", "  issue B 3/2/2026", "  issue C 2026-03-04"),
        ("  issue A 2026-02-30", '  revision "B"'),
    ],
)
def test_sound_lists_and_days_that_cannot_be_read_draw_no_finding_of_the_list(lines: tuple[str, ...]) -> None:
    assert found(*lines) == []


def test_a_slip_of_one_meaning_counts_as_what_it_means() -> None:
    assert [f.rule for f in found("  issue A 31.12.2026", "  issue B 2026-03-02")] == ["issue-out-of-order"]


def test_a_list_is_put_in_the_order_of_its_days_with_all_that_stands_on_its_lines() -> None:
    last, noted = "  issue C", f"{A}  // by letter"
    assert fixed((last, B, "  frequency 60 Hz", noted)) == (noted, B, "  frequency 60 Hz", last)
    first = A.replace("A ", "A1")
    assert fixed((B, first, A)) == (first, A, B), "of one day, as written"


def test_the_second_of_two_equal_lines_can_be_deleted() -> None:
    assert fixed((A, A, B)) == (A, B)
    (finding,) = found(A, A.replace("03-02", "03-09"))
    assert finding.change.startswith("Give the later one a name of its own")


@pytest.mark.parametrize(
    ("line", "left"),
    [
        ('  revision "C"', ()),
        ('  revision "C", number 12', ("  number 12",)),
        ('  number 12, revision "C"', ("  number 12",)),
        ('  revision "C"  // as told', ("  // as told",)),
        ('  number 12, revision "C", client "Weir Trust"', ('  number 12, client "Weir Trust"',)),
    ],
)
def test_a_revision_beside_the_list_is_listed_or_left_out(line: str, left: tuple[str, ...]) -> None:
    assert fixed((line, A, B), 0) == (line, A, B, "  issue C")
    assert fixed((line, A, B), 1) == (*left, A, B)


def test_a_revision_with_words_behind_it_keeps_them_where_it_is_listed() -> None:
    line = '  revision "C, for the owner"'
    assert fixed((line, A)) == (line, A, '  issue C                 "for the owner"')


def test_an_older_issue_as_revision_can_only_be_left_out() -> None:
    (finding,) = found('  revision "A"', A, B)
    assert [fix.title for fix in finding.fixes] == ["Leave out `revision`, so that issue `B` prints"]
    assert "`A`" in finding.message and "`B`" in finding.message
