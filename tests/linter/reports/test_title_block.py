"""The title block of drawings and reports: which issue it is, who drew and checked it, and every issue before it.

What a title block and its revision table say is held against ISO 7200:2004 (fields of a title block: owner,
identification number, date of issue, sheet, title, creator; revision index) from memory; where it stands on a sheet is
common practice, no source.
"""

from __future__ import annotations

import csv
import re
from pathlib import Path

import pytest
from report_models import NASTY, package_of, printed, written

from wyeline_linter.reports.diagram.papers import A3, TABLOID, SheetSize
from wyeline_linter.reports.diagram.sheets import sheets_of
from wyeline_linter.reports.diagram.sketch import Kind, Node, Sketch
from wyeline_linter.reports.diagram.title_strip import Issued, TitleBlock
from wyeline_linter.reports.files_written import report_files
from wyeline_linter.reports.package import Package

FED = """utility GRID 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4
switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 22 kA, service-equipment
feeder GRID -> MSB  2 sets 3#3/0 + N #3/0 Cu THWN-2  12 m
"""
A = '  issue A 2026-03-02 "for tender", drawn "T. Aune", checked "R. Okafor"\n'
B = '  issue B 2026-04-14 "Küche verlegt", drawn "M. Kolb"\n'
C = "  issue C\n"


def package(folder: Path, *lines: str) -> Package:
    return package_of(written(folder, f'wye 1\nproject "Bootshaus Küster"\n  basis us-2023\n{"".join(lines)}{FED}'))


def strip(made: Package) -> dict[str, str]:
    """What each cell of the title strip says, by its caption."""
    svg = made.diagram.sheets[0].svg.partition('class="title-strip"')[2]
    texts = [t for t in re.findall(r">([^<>]+)</text>", svg) if t.strip()]
    captions = ("Drawn", "Checked", "Engineer", "Project", "Client", "Revision", "Date", "Number", "Sheet (tabloid)")
    first = texts[: texts.index("What for") - 2] if "What for" in texts else texts
    return {c: texts[i + 1] for i, c in enumerate(first) if c in captions and texts[i + 1] not in captions}


def test_the_newest_issue_is_the_revision_with_its_day_and_who_drew_it(tmp_path: Path) -> None:
    made = package(tmp_path, A, B)
    said = strip(made)
    assert (said["Revision"], said["Date"], said["Drawn"]) == ("B", "2026-04-14", "M. Kolb")
    assert "Checked" not in said, "R. Okafor checked A, and says nothing of B: an empty place to sign"
    assert made.issue == ("revision B", "2026-04-14")
    assert made.colophon.split(" · ")[:2] == ["Bootshaus Küster", "revision B"]
    assert made.colophon.endswith("drawn M. Kolb · checked ____________")


def test_an_issue_without_a_date_prints_as_not_issued_yet(tmp_path: Path) -> None:
    made = package(tmp_path, A, B, C, '  drawn "T. Aune"\n')
    said = strip(made)
    assert said["Revision"] == "C (not issued yet)" and said["Drawn"] == "T. Aune" and "Date" not in said


def test_who_checked_is_the_project_s_only_while_no_issue_says(tmp_path: Path) -> None:
    for name, lines, checked in (
        ("a", (A.partition(", drawn")[0] + "\n", '  checked "R. Okafor"\n'), "R. Okafor"),
        ("b", (A, B, '  checked "R. Okafor"\n'), ""),
        ("c", (A, '  checked "somebody else"\n'), "R. Okafor"),
        ("d", ('  revision "B", checked "E. Bell"\n',), "E. Bell"),
        ("e", (A, '  revision "B"\n'), ""),
    ):
        (tmp_path / name).mkdir()
        subject = package(tmp_path / name, *lines).subject
        assert subject.checked == checked, lines
        assert subject.issue_date == ("" if name in "de" else "2026-04-14" if name == "b" else "2026-03-02")


def test_a_date_that_is_asked_for_prints_in_place_of_the_issue_s(tmp_path: Path) -> None:
    printed("report", str(written(tmp_path, f'project "X"\n{A}{FED}')), "-o", str(tmp_path / "r"), "--date", "9 March")
    page = (tmp_path / "r" / "report.html").read_text("utf-8")
    assert "revision A · 9 March" in page and "revision A · 2026" not in page


def test_reports_list_every_issue_with_the_newest_first(tmp_path: Path) -> None:
    made = package(tmp_path, A, B, C)
    files = dict(report_files([made], ("html", "csv", "md")))
    rows = list(csv.DictReader(files["csv/issues.csv"].removeprefix("\ufeff").splitlines()))
    assert [(r["issue"], r["date"], r["purpose"], r["drawn"], r["checked"]) for r in rows] == [
        ("C", "not issued yet", "", "", ""),
        ("B", "2026-04-14", "Küche verlegt", "M. Kolb", ""),
        ("A", "2026-03-02", "for tender", "T. Aune", "R. Okafor"),
    ]
    assert "Küche verlegt" in files["md/issues.md"] and 'id="part-issues"' in files["report.html"]
    tables = [text for name, text in files.items() if name.startswith("md/")]
    assert tables and all("Bootshaus Küster · revision C (not issued yet)" in text for text in tables)
    assert "pproved" not in "".join(files.values())


def test_without_issues_nothing_is_listed_and_two_places_to_sign_stay(tmp_path: Path) -> None:
    made = package(tmp_path, '  revision "A"\n')
    files = dict(report_files([made], ("html", "csv", "svg")))
    assert not any("issues" in name for name in files) and 'id="part-issues"' not in files["report.html"]
    assert "What for" not in files["svg/one-line-1.svg"]
    assert files["report.html"].count("<div class=open>") == 2 and "Engineer" not in files["report.html"]


def test_an_engineer_has_a_place_of_their_own(tmp_path: Path) -> None:
    made = package(tmp_path, A, '  engineer "R. Okafor, PE"\n')
    assert strip(made)["Engineer"] == "R. Okafor, PE"
    assert "engineer R. Okafor, PE" in made.colophon
    assert "<dt>Engineer</dt><dd>R. Okafor, PE</dd>" in dict(report_files([made], ("html",)))["report.html"]


LONG = "Antworten auf die Prüfung: Übergabestation, Kabelwege in Küche und Gefrierraum, Erdung; " * 3
TEXT = re.compile(r'<text[^>]* x="([\d.]+)" y="([\d.]+)"[^>]*textLength="([\d.]+)"')


@pytest.mark.parametrize("size", [A3, TABLOID], ids=lambda s: s.name)
@pytest.mark.parametrize("count", [1, 6, 7, 12, 300])
def test_a_long_list_stays_in_its_table_and_off_the_drawing(size: SheetSize, count: int) -> None:
    issues = tuple(
        Issued(f"Ä{n}", "2026-03-02", LONG if n == count else "für den Bau", "M. Kolb-Østergård", "Dr. Müller-Lüden")
        for n in range(count, 0, -1)
    )
    nodes = tuple(Node(f"L-{n}", Kind.LOAD, f"L-{n}", ("10 kW",)) for n in range(3))
    made = sheets_of(Sketch(nodes, ()), TitleBlock("P", issues=issues), size)
    (sheet,) = made.sheets
    drawing, _, block = sheet.svg.partition('class="title-strip"')
    table = block[block.index(">What for<") - 400 :]
    assert f">Ä{count}<" in table and ("earlier issues" in table) is (count > 6)
    assert (">Ä1<" in table) is (count <= 6)
    lefts = [(float(x), float(x) + float(w)) for x, _, w in TEXT.findall(block)]
    assert len(lefts) > 20 and all(left >= 10 and right <= size.width_mm - 10 for left, right in lefts)
    frame = re.findall(r'<path class="s" d="M([\d.]+) ([\d.]+)V([\d.]+)H([\d.]+)', block)[-1]
    left, bottom, top, right = map(float, frame)
    inside = [float(y) for x, y, _ in TEXT.findall(table) if float(x) >= left]
    assert (right, bottom) == pytest.approx((size.width_mm - 10, size.height_mm - 37)) and all(y > top for y in inside)
    assert bottom - top < 60
    move = re.search(r"translate\(([\d.]+) ([\d.]+)\) scale\(([\d.]+)\)", drawing)
    assert move is not None
    x, y, scale = map(float, move.groups())
    low, wide = y + sheet.picture.height * scale, x + sheet.picture.width * scale
    assert low <= top + 0.1 or wide <= left + 0.1


def test_a_text_without_end_leaves_the_drawing_its_room(tmp_path: Path) -> None:
    text = "Kabelwege und Klemmen " * 2_000
    names = [f'  issue "{text}{n}" 2026-03-02 "{text}", drawn "{text}"\n' for n in range(6)]
    made = package(tmp_path, *names)
    (sheet,) = made.diagram.sheets
    assert sheet.scale > 0.7 and "…<" in sheet.svg
    assert text.strip() in dict(report_files([made], ("csv",)))["csv/issues.csv"], "the list has all of it"


def test_names_and_texts_of_strangers_stay_text(tmp_path: Path) -> None:
    nasty = NASTY.replace('"', "'")
    made = package(
        tmp_path,
        f'  drawn "{nasty}", engineer "{nasty}"\n',
        f'  issue "{nasty}" 2026-03-02 "{nasty}", checked "{nasty}"\n',
        '  issue "=HYPERLINK(1)" 2026-03-03 "=1+1", checked "@x"\n',
    )
    files = dict(report_files([made], ("html", "csv", "md", "svg")))
    for name in ("report.html", "md/issues.md", "svg/one-line-1.svg"):
        assert "<script>alert" not in files[name], name
    rows = list(csv.reader(files["csv/issues.csv"].removeprefix("\ufeff").splitlines()))
    assert rows[1][:1] == ["'=HYPERLINK(1)"] and rows[1][2] == "'=1+1" and rows[1][4] == "'@x"
