"""What an engineer signs for: ampacities where wires share a raceway, what a board can still take, what a label says,
the figure behind every expectation, and what is open or to be taken down.

Sources: NEC 2023 Table 310.16 (copper, 90 degC: #4 95 A; 75 degC: 85 A) and Table 310.15(C)(1) (four to six wires that
carry current: 80 %); the arithmetic of the ratings in the example's own files.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from report_models import DAIRY, STATION, package_of, written

from wyeline_linter.reports.columns import Table
from wyeline_linter.reports.equipment_lists import LABELS
from wyeline_linter.reports.fault_and_drop import FAULTS
from wyeline_linter.reports.feeder_schedule import FEEDERS
from wyeline_linter.reports.load_summary import CLASSES
from wyeline_linter.reports.panel_schedule import SCHEDULE
from wyeline_linter.reports.review_tables import ASSUMPTIONS, EXPECTATIONS


def cell(table: Table, row: str, column: str) -> object:
    """The value of one cell, its row by the first column."""
    at = table.kind.keys.index(column)
    (found,) = [r for r in table.rows if str(r.cells[0].value) == row]
    return found.cells[at].value


def test_wires_that_share_a_raceway_carry_what_both_runs_leave_them() -> None:
    """Two runs of two wires each in `R-PIER`: four that carry current, 80 % of 95 A; the terminals would bear 85 A."""
    feeders = package_of(STATION).of(FEEDERS)[0]
    for key in ("SB-1 -> TX-D", "SB-1 -> TX-G"):
        assert cell(feeders, key, "ampacity_a") == pytest.approx(0.8 * 95)
        assert cell(feeders, key, "governed_by") == "grouping"
    assert cell(feeders, "SB-1 -> T-LAB", "governed_by") == "75 °C terminals", "what lies alone is as before"
    factors = [i.value for s in package_of(STATION).sheets for i in s.figure.inputs
               if s.figure.name == "ampacity" and s.figure.subject == "SB-1 -> TX-D" and i.symbol == "kb"]  # fmt: skip
    assert factors == [80]


@pytest.mark.parametrize(
    ("board", "limit_a", "of"),
    [
        ("MCC-1", 175, "the device of `SB-1 -> MCC-1`"),  # a 600 A bus behind a 175 A breaker
        ("LA-2", 200, "the device of `LDP -> LA-1`"),  # lugs of LA-1 pass the bus on
        ("SB-1", 1000, "its main"),
    ],
)
def test_what_a_board_can_still_take_is_bounded_by_what_supplies_it(board: str, limit_a: int, of: str) -> None:
    schedules = {t.subject: t for t in package_of(STATION).of(SCHEDULE)}
    through = "LA-1" if board == "LA-2" else board  # the device carries both boards
    (sizing,) = [row for row in schedules[through].totals if row.label == "Sizing by code, A"]
    most = max(c.value for c in sizing.cells if isinstance(c.value, float))
    (note,) = [n for n in schedules[board].notes if n.startswith("Spare")]
    said = f"{limit_a:,}".replace(",", "\u202f")
    assert note == f"Spare: {limit_a - most:.0f} A of {said} A ({of}) on the most loaded leg."


def test_a_board_on_a_small_transformer_has_no_more_left_than_its_winding(tmp_path: Path) -> None:
    """15 kVA at 208Y/120 V: 15000 / (sqrt(3) 208) = 41.6 A on each leg; 3 x 4 kVA take 33.3 A of it."""
    rows = "\n".join(f'  {at}  50 A 1p  4 kVA  process  "Kiln {at}"' for at in (1, 3, 5))
    root = written(
        tmp_path,
        "wye 1\nproject \"Kilns\"\n  basis us-2023\nutility UTIL 480Y/277  fault 20 kA, x/r 5\n"
        "transformer T-1 480 3ph -> 208Y/120  15 kVA, z 4 %, x/r 2\npanel LP-1  bus 225 A, main 100 A, spaces 12\n"
        f"{rows}\nfeeder UTIL -> T-1  30 A 3p\nfeeder T-1 -> LP-1\n",
    )  # fmt: skip
    (table,) = package_of(root).of(SCHEDULE)
    (note,) = [n for n in table.notes if n.startswith("Spare")]
    assert note == "Spare: 8 A of 42 A (demand on a winding of `T-1`) on the most loaded leg."


def test_a_label_tells_the_largest_fault_of_all_switch_states() -> None:
    """On its bypass EDP sees more than behind the transfer switch; a label is read in both."""
    package = package_of(STATION)
    label = cell(package.of(LABELS)[0], "EDP", "fault_ka")
    faults = package.of(FAULTS)[0]
    assert isinstance(label, float)
    normal = float(str(cell(faults, "EDP", "max_ka")))
    assert label > normal
    assert f"largest fault {label:.2f} kA" in str(cell(faults, "EDP", "worse_elsewhere"))
    told = f'EDP: {label:.2f} kA in "Transfer switch serviced", {normal:.2f} kA as normal.'
    assert told in package.of(LABELS)[0].notes
    assert cell(package.of(LABELS)[0], "AH-1", "fault_ka") == cell(faults, "AH-1", "max_ka"), "one state decides here"


def test_a_label_says_nothing_where_one_state_is_not_known(tmp_path: Path) -> None:
    root = written(
        tmp_path,
        "wye 1\nproject \"Weir\"\n  basis us-2023\nutility UTIL 480Y/277  fault 20 kA, fault-min 12 kA, x/r 5\n"
        "generator GEN 480Y/277  100 kVA, neutral bonded\ntransfer ATS  100 A 4p\n"
        "panel LP-1  bus 100 A, main lugs, spaces 12\n  1  20 A 1p  1 kVA lighting  \"Gate\"\n"
        "feeder UTIL -> ATS.normal  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  10 m  in 1-1/2 inch EMT\n"
        "feeder GEN -> ATS.emergency  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  10 m  in 1-1/2 inch EMT\n"
        "feeder ATS -> LP-1  3#3 + N #3 + G #8 Cu THWN-2  3 m  in 1-1/2 inch EMT\n",
    )  # fmt: skip
    labels = package_of(root).of(LABELS)[0]
    (row,) = [r for r in labels.rows if r.cells[0].value == "LP-1"]
    last = row.cells[-1]
    assert last.value is None and last.unknown and "not known in the state" in last.unknown[0]


@pytest.mark.parametrize("root", [STATION, DAIRY])
def test_every_expectation_shows_its_figure(root: Path) -> None:
    table = package_of(root).of(EXPECTATIONS)[0]
    found = table.kind.keys.index("found")
    assert table.rows and all(row.cells[found].value for row in table.rows)
    if root == STATION:
        told = str(cell(table, "expect SB-1 fault <= 25 kA", "found")).split()[0]
        at_board = cell(package_of(STATION).of(FAULTS)[0], "SB-1", "max_ka")
        assert float(told) == pytest.approx(float(str(at_board)), rel=5e-3)
        assert str(cell(table, "expect all panel drop <= 5 %", "found")).endswith("at BUNK-3, the largest of 19")


def test_the_power_factor_that_a_converter_is_taken_to_draw_at_is_told_as_an_assumption() -> None:
    """9 kVA behind 94 % and a tenth of 20 kVA to recharge: 11.57 kW; 12.18 kVA only at a power factor of 0.95."""
    package = package_of(STATION)
    (ups,) = [r for r in package.of(CLASSES)[0].rows if [c.value for c in r.cells[:2]] == ["GRID", "ups"]]
    connected_kva = ups.cells[CLASSES.keys.index("connected_kva")].value
    assert connected_kva == pytest.approx((9 / 0.94 + 0.1 * 20) / 0.95, rel=1e-3)
    said = [
        s.figure.assumptions for s in package.sheets if s.figure.name == "connected load" and s.figure.subject == "EDP"
    ]
    assert said == [("the input of `UPS-1` at power factor 0.95 (none is written)",)]
    assert any("`UPS-1` at power factor 0.95" in str(r.cells[3].value) for r in package.of(ASSUMPTIONS)[0].rows)


def test_what_stands_open_or_is_to_be_taken_down_is_said_where_it_is_listed() -> None:
    package = package_of(STATION)
    (board,) = [t for t in package.of(SCHEDULE) if t.subject == "SB-1"]
    keys = board.kind.keys
    (bypass,) = [r for r in board.rows if r.cells[keys.index("description")].value == "via EDP"]
    assert bypass.cells[keys.index("remarks")].value == "normally open"
    assert cell(package.of(FEEDERS)[0], "BH-1 -> LATHE", "status") == "D", "written `existing, demolish`"
    assert cell(package.of(FEEDERS)[0], "BH-1 -> WINCH", "status") == "E"
    assert package.subject.of("LATHE")["status"] == "demolish"


TWO_WAYS = """wye 1
project "Kiln yard"
  basis us-2023
utility U-1 208Y/120  fault 20 kA, fault-min 15 kA, x/r 6
utility U-2 208Y/120  fault 20 kA, fault-min 15 kA, x/r 6
panel P-1 208Y/120  bus 225 A, main 200 A, rated 35 kA, spaces 12
panel EMPTY 208Y/120  bus 125 A, main lugs, rated 35 kA, spaces 24
panel REFUSED 480Y/277  bus 125 A, main lugs, rated 35 kA, spaces 24
panel ALONE 208Y/120  bus 125 A, main lugs, rated 35 kA, spaces 24
feeder U-1 -> P-1  3#3/0 + N #3/0 Cu THWN-2  30 m  in 2 inch EMT
feeder U-2 -> P-1  3#3/0 + N #3/0 Cu THWN-2  30 m  in 2 inch EMT, normally-open
feeder P-1 -> EMPTY  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in 1-1/4 inch EMT
feeder P-1 -> REFUSED  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in 1-1/4 inch EMT
"""


def test_a_board_without_circuits_has_its_schedule_once_a_feeder_leads_to_it(tmp_path: Path) -> None:
    schedules = {t.subject: dict(t.facts) for t in package_of(written(tmp_path, TWO_WAYS)).of(SCHEDULE)}
    assert schedules.keys() == {"P-1", "EMPTY", "REFUSED"}
    assert schedules["EMPTY"]["Spaces"] == "24" and schedules["EMPTY"]["Fed from"] == "P-1"
    assert "the connection does not work" in schedules["REFUSED"]["In words"]


def test_every_way_into_a_board_is_told_with_its_state(tmp_path: Path) -> None:
    schedules = {t.subject: dict(t.facts) for t in package_of(written(tmp_path, TWO_WAYS)).of(SCHEDULE)}
    assert schedules["P-1"]["Fed from"] == "U-1; U-2 (normally open)"


def test_lengths_on_the_diagram_stand_in_the_unit_of_the_schedule(tmp_path: Path) -> None:
    """30 m are 98.4 ft of 0.3048 m."""
    package = package_of(written(tmp_path, TWO_WAYS))
    (sheet,) = package.diagram.sheets
    assert set(re.findall(r"[0-9.]+ (?:ft|m)\b", sheet.svg)) == {"98.4 ft"}
