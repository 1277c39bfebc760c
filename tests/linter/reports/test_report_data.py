"""The data of a report as JSON: the rows of its tables, their sums, what they are about, and every switch state."""

from __future__ import annotations

import csv
import json
import math
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import pytest
from report_models import DAIRY, STATION, nasty_model, package_of, printed, shown, written

from wyeline_linter.commands.report import packages_of
from wyeline_linter.reports.csv_output import csv_text
from wyeline_linter.reports.files_written import report_files
from wyeline_linter.reports.json_output import report_json
from wyeline_linter.reports.package import Wishes

TABLES = Wishes(frozenset({"issues", "panel", "feeders", "load-summary", "fault-and-drop", "labels"}))

ALL_TABLES = Wishes(TABLES.parts | {"equipment", "transformers", "grounding"})


def data(root: Path, wishes: Wishes = TABLES) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(report_json([package_of(root, None, wishes)]))
    return found


def tables(found: dict[str, Any], part: str) -> list[dict[str, Any]]:
    return [table for table in found["states"][0]["tables"] if table["part"] == part]


@pytest.mark.parametrize("root", [STATION, DAIRY], ids=lambda path: path.stem)
def test_rows_are_those_of_the_csv_files(root: Path) -> None:
    package = package_of(root, None, TABLES)
    found = data(root)["states"][0]["tables"]
    assert len(found) == len(package.tables) >= 15
    for entry, table in zip(found, package.tables, strict=True):
        lines = list(csv.DictReader(csv_text(table, "").removeprefix("\ufeff").splitlines()))
        assert len(lines) == len(entry["rows"])
        for row, line in zip(entry["rows"], lines, strict=True):
            for key, value in row["cells"].items():
                written = line[key].removeprefix("'")
                if isinstance(value, float):
                    assert float(written) == value
                else:
                    assert written == (
                        value.removeprefix("'") if value is not None else "?" if key in row["unknown"] else ""
                    )


@pytest.mark.parametrize("root", [STATION, DAIRY], ids=lambda path: path.stem)
def test_columns_that_name_a_figure_hold_it(root: Path) -> None:
    """Powers in kVA and currents, by the path of their column in what `show --json` prints."""
    figures, found, compared = shown(root)["equipment"], data(root), 0
    kinds = {kind["part"]: kind for kind in found["kinds"]}
    scales = {"kVA": 1e-3, "kA": 1e-3, "A": 1.0, "%": 100.0}
    for part in ("load-summary", "fault-and-drop"):
        (table,) = tables(found, part)
        for column in kinds[part]["columns"]:
            for row in table["rows"] if column["figure"] and column["unit"] in scales else ():
                at: Any = figures[row["equipment"]]
                for key in column["figure"].split("."):
                    at = at.get(key) if isinstance(at, dict) else None
                if isinstance(at, float | int) and row["cells"][column["key"]] is not None:
                    assert row["cells"][column["key"]] == pytest.approx(at * scales[column["unit"]], rel=1e-8)
                    compared += 1
    assert compared > 60


@pytest.mark.parametrize("root", [STATION, DAIRY], ids=lambda path: path.stem)
def test_sums_of_a_schedule_add_up(root: Path) -> None:
    """The volt-amperes of the legs are the sums of the rows; currents say that they are amperes."""
    summed = 0
    for table in tables(data(root), "panel"):
        for total in table["totals"]:
            if total["label"] == "Sum of the rows":
                for key, value in total["cells"].items():
                    rows = math.fsum(row["cells"][key] or 0.0 for row in table["rows"])
                    assert rows == pytest.approx(value, rel=1e-6), (table["subject"], key)
                    summed += 1
            assert total["unit"] == ("A" if total["label"].endswith(", A") else None)
    assert summed > 10


def test_every_switch_state_is_in_it() -> None:
    packages = packages_of(str(STATION), None, TABLES)
    found = json.loads(dict(report_files(packages, ("json",)))["report.json"])
    states = [state["state"] for state in found["states"]]
    assert states[0] == "normal" and len(states) == len(packages) > 1
    first, other = (s["tables"] for s in found["states"][:2])
    assert first != other and [t["subject"] for t in first] == [t["subject"] for t in other]


def test_a_row_says_what_it_is_about_and_where_that_is_written() -> None:
    found = data(STATION)
    panel = next(t for t in tables(found, "panel") if t["subject"] == "DK-1")
    row = next(r for r in panel["rows"] if r.get("position"))
    file, _, line = row["place"].rpartition(":")
    text = (STATION.parent / file).read_text("utf-8").splitlines()[int(line) - 1]
    assert row["equipment"] == "DK-1" and text.split()[0] == row["position"]
    (feeders,) = tables(found, "feeders")
    assert {r["feeder"] for r in feeders["rows"]} == set(shown(STATION)["feeders"])


def test_what_is_unknown_is_null_with_its_reasons(tmp_path: Path) -> None:
    found = data(nasty_model(tmp_path))
    rows = [row for table in found["states"][0]["tables"] for row in table["rows"] if row["unknown"]]
    assert rows and all(row["cells"][key] is None and why for row in rows for key, why in row["unknown"].items())
    assert any(row["cells"].get("description") == "=1+1" for t in tables(found, "panel") for row in t["rows"])


ISSUES: Sequence[str] = (
    '  issue A 2026-03-02 "for tender", drawn "T. Aune", checked "R. Okafor"\n',
    '  issue B "kitchen moved", drawn "M. Kolb"\n',
)


def test_programs_read_the_project_and_its_issues(tmp_path: Path) -> None:
    head = 'wye 1\nproject "Boathouse"\n  basis us-2023, number "B-1", client "Club"\n'
    root = written(tmp_path, f"{head}{''.join(ISSUES)}utility GRID 480Y/277  fault 14 kA, x/r 4\n")
    wanted = {
        "name": "Boathouse",
        "number": "B-1",
        "client": "Club",
        "engineer": None,
        "basis": "us-2023",
        "revision": "B (not issued yet)",
        "date": None,
        "drawn": "M. Kolb",
        "checked": None,
        "issues": [
            {"issue": "B", "date": None, "purpose": "kitchen moved", "drawn": "M. Kolb", "checked": None},
            {"issue": "A", "date": "2026-03-02", "purpose": "for tender", "drawn": "T. Aune", "checked": "R. Okafor"},
        ],
    }
    assert shown(root)["project"] == wanted == data(root)["project"]
    (tmp_path / "other").mkdir()
    assert shown(written(tmp_path / "other", "utility GRID 480Y/277  fault 14 kA, x/r 4\n"))["project"]["issues"] == []


def test_it_is_written_among_the_files_and_a_row_takes_a_line(tmp_path: Path) -> None:
    printed("report", str(DAIRY), "-o", str(tmp_path), "--only", "feeders", "--format", "json")
    text = (tmp_path / "report.json").read_text("utf-8")
    found = json.loads(text)
    rows = sum(len(t["rows"]) for s in found["states"] for t in s["tables"])
    assert sum(line.lstrip().startswith('{"cells"') for line in text.splitlines()) == rows > 20
    assert "Not for energised work." in found["caution"]
    printed("report", str(DAIRY), "-o", str(tmp_path / "d"), "--only", "diagram")
    assert not (tmp_path / "d" / "report.json").exists()


def test_paper_says_what_letters_and_headings_mean() -> None:
    """Ground in US practice and earth in IEC practice: NEC 100 and IEC 60050-195, from memory."""
    station, dairy = (package_of(root, None, ALL_TABLES) for root in (STATION, DAIRY))
    noted = [t for t in station.tables if any("E existing" in note for note in t.notes)]
    status = [t for t in station.tables if t.kind.name in ("panel", "feeders") and "status" in t.kind.keys]
    with_letters = [t for t in status if any(r.cells[t.kind.keys.index("status")].value for r in t.rows)]
    assert noted == with_letters and 1 < len(noted) < len(status)
    for package, word, other in ((station, "ground", "earth"), (dairy, "earth", "ground")):
        titles = {c.title.lower() for t in package.tables for c in t.columns if c.key in ("line_ground_ka", "earthing")}
        assert titles == {f"leg to {word}", f"{word}ing"} and not any(other in title for title in titles)
    (listed,) = (t for t in station.tables if t.kind.name == "equipment")
    kinds = {row.cells[0].value: row.cells[1].value for row in listed.rows}
    assert (kinds["ATS-1"], kinds["MCC-1"], kinds["T-1"]) == ("transfer switch", "MCC", "transformer")
