"""A report held against an earlier issue lists what changed and marks it where it is drawn and listed."""

from __future__ import annotations

import csv
import re
import subprocess
from pathlib import Path

import pytest
from report_models import printed

from wyeline_linter.cli import main
from wyeline_linter.reports.since import MARK

OLD = """wye 1
project "Boat shed"
  basis us-2023
  revision "A"
utility GRID 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4
switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 22 kA, service-equipment
panel LP-1 480Y/277  bus 100 A, main lugs, spaces 12
  1  20 A 1p  2 kVA  lighting  "Slip"
  3  20 A 1p  1 kVA  lighting  "Yard"
panel LP-2 480Y/277  bus 100 A, main lugs, spaces 12
  1  20 A 1p  2 kVA  lighting  "Loft"
  3  20 A 1p  1 kVA  lighting  "Stairs"
feeder GRID -> MSB  2 sets 3#3/0 + N #3/0 Cu THWN-2  12 m
feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m
feeder MSB -> LP-2  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  40 m
"""
NEW = (
    OLD.replace('"A"', '"B"')
    .replace('3  20 A 1p  1 kVA  lighting  "Yard"', '3  20 A 1p  3 kVA  lighting  "Yard"')
    .replace('  3  20 A 1p  1 kVA  lighting  "Stairs"\n', "")
    .replace("40 m", "90 m")
)


def reported(folder: Path, old: str, root: Path, *more: str) -> dict[str, str]:
    """The files of a report, by name."""
    printed("report", str(root), "-o", str(folder), "--since", old, *more)
    return {p.relative_to(folder).as_posix(): p.read_text("utf-8") for p in folder.rglob("*") if p.is_file()}


@pytest.fixture(scope="module")
def issue(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    """The roots of two issues of one model."""
    roots = []
    for name, text in (("a", OLD), ("b", NEW)):
        roots.append(tmp_path_factory.mktemp(name) / "shed.wye")
        roots[-1].write_text(text, "utf-8")
    return roots[0], roots[1]


def test_every_change_is_listed_as_a_comparison_tells_it(tmp_path: Path, issue: tuple[Path, Path]) -> None:
    files = reported(tmp_path, str(issue[0]), issue[1], "--format", "csv")
    rows = list(csv.DictReader(files["csv/changes.csv"].removeprefix("\ufeff").splitlines()))
    told = printed_comparison(issue)
    assert len(rows) == 4 and all(row["change"] in told for row in rows)
    places = {row["subject"]: row["place"] for row in rows}
    assert places["LP-1"] == "shed.wye:9" and places["LP-2"] == "" and places["MSB -> LP-2"] == "shed.wye:14"


def printed_comparison(issue: tuple[Path, Path]) -> str:
    return printed("compare", str(issue[0]), str(issue[1]))


def test_marks_stand_where_it_is_written_otherwise_and_nowhere_else(tmp_path: Path, issue: tuple[Path, Path]) -> None:
    files = reported(tmp_path, str(issue[0]), issue[1])
    marked = {line.split("|")[1].strip() for line in files["md/panel-LP-1.md"].splitlines() if MARK in line}
    assert marked == {f"{MARK} 3"}
    assert MARK not in files["md/panel-LP-2.md"].partition("| Position")[2], "what is gone has no row"
    assert [
        re.sub(r"<[^>]*>", "", head) for head in re.findall(r"<h3>(.*?)</h3>", files["report.html"]) if MARK in head
    ] == [f"Panel schedule LP-2{MARK} "], "its board is marked"
    feeders = [line for line in files["md/feeders.md"].splitlines() if MARK in line]
    assert len(feeders) == 1 and "LP-2" in feeders[0]
    drawing = "".join(text for name, text in files.items() if name.startswith("svg/"))
    assert drawing.count(f">{MARK} B<") == 2, "the longer feeder, and the board that has a circuit less"
    assert f"{MARK} marks what is written otherwise than in revision A: 4 changes." in re.sub(
        r"\s+", " ", files["report.html"]
    )


def test_columns_of_other_tables_and_reports_without_it_stay(tmp_path: Path, issue: tuple[Path, Path]) -> None:
    files = reported(tmp_path / "since", str(issue[0]), issue[1])
    printed("report", str(issue[1]), "-o", str(tmp_path / "plain"))
    plain = {
        p.relative_to(tmp_path / "plain").as_posix(): p.read_text("utf-8") for p in (tmp_path / "plain").rglob("*.*")
    }
    assert all(MARK not in text for name, text in plain.items() if name != "report.html")
    assert {n: t for n, t in files.items() if n.startswith("csv/") and n != "csv/changes.csv"} == {
        n: t for n, t in plain.items() if n.startswith("csv/")
    }


def test_an_issue_is_a_revision_of_git_too(tmp_path: Path) -> None:
    root = tmp_path / "shed.wye"
    git = ["git", "-C", str(tmp_path), "-c", "user.name=d", "-c", "user.email=d@example.org"]
    root.write_text(OLD, "utf-8")
    for words in (["init", "-q", "-b", "main"], ["add", "."], ["commit", "-q", "-m", "A"], ["tag", "issue-a"]):
        subprocess.run([*git, *words], check=True)
    root.write_text(NEW, "utf-8")
    files = reported(tmp_path / "out", "issue-a", root, "--format", "md", "--only", "feeders")
    assert set(files) == {"md/changes.md", "md/feeders.md"} and "40 to 90 m" in files["md/changes.md"]


def test_an_issue_that_is_not_there_is_told(issue: tuple[Path, Path], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["report", str(issue[1]), "--since", "no-such-issue"]) == 2
    assert "no-such-issue" in capsys.readouterr().err


def test_a_report_takes_one_issue_and_no_range(issue: tuple[Path, Path], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["report", str(issue[1]), "--since", "main..HEAD"]) == 2
    told = capsys.readouterr().err
    assert "main..HEAD" in told and "one revision" in told and "--model" not in told, "which a report does not have"
