"""A figure that a table prints stands on the working sheet that it opens, to the sixth digit."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from report_models import DAIRY, STATION, package_of, written

from wyeline_linter.reports.columns import Cell, Column, Row, Table
from wyeline_linter.working import render

CASES = [(STATION, None), (STATION, "Grid lost"), (STATION, "Quiet weekend"), (DAIRY, None), (DAIRY, "Mains lost")]
SHARES = {"loaded_percent": "rating", "rated_percent": "rated"}
"""Columns that set the result of their sheet against what another column of their row says."""
SIX_DIGITS = 6e-6
NUMBER = re.compile(r"(?<![\w.])\d+(?:\.\d+)?")


def opened(root: Path, scenario: str | None) -> list[tuple[Table, Row, Column, Cell, list[float]]]:
    """Every cell of a report that holds a number and opens a sheet, with the numbers on the sheet."""
    package = package_of(root, scenario)
    numbers = {s.anchor: [float(n) for n in NUMBER.findall(render(s.figure))] for s in package.sheets}
    return [
        (table, row, column, cell, numbers[cell.sheet])
        for table in package.tables
        for row in (*table.rows, *table.totals)
        for column, cell in zip(table.kind.columns, row.cells, strict=True)
        if cell.sheet and isinstance(cell.value, float | int)
    ]


@pytest.mark.parametrize(("root", "scenario"), CASES)
def test_what_is_printed_stands_on_the_sheet_behind_it(root: Path, scenario: str | None) -> None:
    cells = opened(root, scenario)
    assert len(cells) > 100
    missing = []
    for table, row, column, cell, numbers in cells:
        assert isinstance(cell.value, float | int)
        value = abs(cell.value)
        units = (1.0, 1e3, 1e-2)  # the sheet is in VA, A, V and parts of one
        if column.key in SHARES or any(abs(n - value * u) <= SIX_DIGITS * max(n, 1e-3) for n in numbers for u in units):
            continue
        missing.append((table.title, row.label or row.about, column.key, cell.value))
    assert missing == []


def test_a_share_of_a_rating_is_that_of_the_figures_beside_it() -> None:
    seen = 0
    for table, row, column, cell, numbers in opened(STATION, None):
        if column.key not in SHARES:
            continue
        rating = row.cells[table.kind.keys.index(SHARES[column.key])].value
        assert isinstance(rating, str) and isinstance(cell.value, float)
        written = float(rating.split(" ")[0]) * (1e3 if rating.split(" ")[1].startswith("k") else 1.0)
        assert any(100 * n / written == pytest.approx(cell.value, rel=1e-5) for n in numbers), (row.about, column.key)
        seen += 1
    assert seen > 30


def test_the_legs_of_a_centre_tapped_load_stand_on_its_sheet(tmp_path: Path) -> None:
    """1.2 kVA on A to neutral and 4 kW from A to B: 3200 VA and 26.67 A on A, 2000 VA and 16.67 A on B (by hand)."""
    root = written(
        tmp_path,
        """wye 1
project "Hut"
utility GRID 120/240  fault 10 kA, x/r 2
panel LP 120/240  bus 100 A, rated 10 kA, service-equipment
  1  20 A 1p  1.2 kVA  receptacle  "Sockets"
  5,7  30 A 2p  4 kW  heating  "Oven"
feeder GRID -> LP  2#3 + N #3 Cu THWN-2  10 m  in 2 inch RMC
""",
    )
    sheets = {s.figure.subject + " " + s.figure.name: render(s.figure) for s in package_of(root).sheets}
    told = sheets["LP connected load"]
    assert re.search(r"SA .* = 3200 VA", told) and re.search(r"SB .* = 2000 VA", told)
    assert re.search(r"IA .* = 26\.6667 A", told) and re.search(r"IB .* = 16\.6667 A", told)
    assert re.search(r"on each of its 2 legs +S / 2 = 4000 / 2 = 2000 VA", sheets["LP 5,7 apparent power drawn"])
    assert re.search(r"leg A alone +\(1200\) / 120 = 10 A", sheets["LP neutral current"])
