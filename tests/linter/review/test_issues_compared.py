"""A new issue is told as that, never as a change of what is built, and reports name the issue they are held against."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest
from test_what_changed import compared, told

from wyeline_linter.cli import main
from wyeline_linter.review.physical import Kind
from wyeline_linter.review.sheets import DIAGRAM

HEAD = 'wye 1\nproject "Mill"\n  basis us-2023\n  frequency 60 Hz, ambient 30 degC\n'
A = '  issue A 2026-03-02 "for tender"\n'
B = '  issue B 2026-04-14 "yard lights", drawn MK\n'
SITE = """utility     UTIL  480Y/277        fault 30 kA, fault-min 20 kA, x/r 8
switchboard MSB   480Y/277        bus 1200 A
feeder UTIL -> MSB  1200 A 3p
panel       LP-1  480Y/277        bus 225 A
  1  20 A 1p  2 kVA lighting  "Hall"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT
feeder MSB -> LP-1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu THWN-2  20 m  in 2-1/2 inch EMT
"""


@pytest.mark.parametrize(
    ("before", "after", "words"),
    [
        (A, A + B, ['issue B of 2026-04-14 is new ("yard lights")']),
        (A, A + "  issue B\n", ["issue B, not issued yet is new"]),
        (
            A + "  issue B\n",
            A + B,
            ['issue B now says "yard lights"', "issue B now states drawn MK", "issue B was issued on 2026-04-14"],
        ),
        (A, A.replace("03-02", "03-09"), ["issue A is dated 2026-03-09 instead of 2026-03-02"]),
        (A + B, B, ["issue A of 2026-03-02 is no longer listed"]),
        (A, A.replace("tender", "permit"), ['issue A had its description changed from "for tender" to "for permit"']),
    ],
)
def test_an_issue_is_told_as_an_issue(before: str, after: str, words: list[str]) -> None:
    found = compared(HEAD + before + SITE, HEAD + after + SITE)
    assert [w for _, w in told(found)] == words
    assert {kind for kind, _ in told(found)} == {Kind.ISSUED}
    rows = (HEAD + after).splitlines()
    for change in found.changes:
        assert change.place is not None
        said = rows[change.place[1] - 1]
        assert said.startswith("project" if "no longer" in change.words else "  issue ")
    assert not found.worse and not found.better and not found.moved, "no figure of the model hangs on it"


def test_the_title_block_asks_for_the_drawing_anew() -> None:
    found = compared(HEAD + A + SITE, HEAD + A + B + SITE)
    assert [sheet.name for sheet in found.sheets] == [DIAGRAM]


def test_what_follows_is_laid_to_what_was_built_and_not_to_the_issue() -> None:
    """Both stand in the project: undoing one must not undo the other in the reader's eye."""
    hot = HEAD.replace("30 degC", "48 degC")
    found = compared(HEAD + A + SITE, hot + A + B + SITE)
    kinds = [kind for kind, _ in told(found)]
    assert sorted(k.value for k in kinds) == ["changed", "issued"]
    causes = {change.kind for c in (*found.worse, *found.moved) for change in c.because}
    assert causes <= {Kind.CHANGED}


def reported(tmp_path: Path, old: str, new: str) -> tuple[str, list[dict[str, str]]]:
    for name, text in (("old", old), ("new", new)):
        (tmp_path / name).mkdir()
        (tmp_path / name / "mill.wye").write_text(HEAD + text, "utf-8")
    out = tmp_path / "report"
    assert main(["report", str(tmp_path / "new/mill.wye"), "-o", str(out), "--since", str(tmp_path / "old")]) == 0
    changes = (out / "csv/changes.csv").read_text("utf-8").removeprefix("\ufeff")
    return (out / "report.html").read_text("utf-8"), list(csv.DictReader(changes.splitlines()))


def test_a_report_names_the_issue_that_it_is_held_against(tmp_path: Path) -> None:
    longer = SITE.replace("Cu THWN-2  20 m  in 2", "Cu THWN-2  45 m  in 2")
    page, rows = reported(tmp_path, A + SITE, A + B + longer)
    assert "marks what is written otherwise than in issue A of 2026-03-02: 1 change." in page
    assert [row["subject"] for row in rows] == ["MSB -> LP-1"], "the new issue itself stands in the list of issues"
    assert "▲ B<" in page and "revision B · 2026-04-14" in page


@pytest.mark.parametrize(
    ("old", "new", "named"),
    [
        ('  revision "A"\n', A + B, "in revision A:"),
        ("  issue A\n", A, "in issue A, not issued yet:"),
        (A, A, "in " + "{folder}"),
    ],
)
def test_an_old_version_is_named_as_it_called_itself(tmp_path: Path, old: str, new: str, named: str) -> None:
    page, _ = reported(tmp_path, old + SITE, new + SITE)
    assert f"otherwise than {named.split('{')[0]}" in page
    assert ("in issue A of 2026-03-02:" in page) is False
