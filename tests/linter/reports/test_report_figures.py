"""Figures of reports are those of ``wyeline show --json``, totals are sums of their rows, unknown says why."""

from __future__ import annotations

import csv
import io
import re
from pathlib import Path
from typing import Any

import pytest
from report_models import DAIRY, STATION, nasty_model, package_of, shown, written

from wyeline_linter.reports.columns import Cell, Column, Table, number
from wyeline_linter.reports.csv_output import csv_text
from wyeline_linter.reports.diagram.sketch import Kind
from wyeline_linter.reports.fault_and_drop import FAULTS
from wyeline_linter.reports.feeder_schedule import FEEDERS
from wyeline_linter.reports.html_page import page_html
from wyeline_linter.reports.load_summary import CLASSES, SUMMARY
from wyeline_linter.reports.markdown_output import markdown_text
from wyeline_linter.reports.one_line import one_line
from wyeline_linter.reports.package import TABLE_KINDS, Wishes
from wyeline_linter.reports.panel_schedule import SCHEDULE

LIGHTS = """wye 1
project "Shed"
  basis us-2023
utility GRID 480Y/277  fault 14 kA, fault-min 9 kA, x/r 6
panel LP 480Y/277  bus 100 A, main 60 A, rated 22 kA, service-equipment
  1  20 A 1p  2 kVA  lighting  "Lamps"
feeder GRID -> LP  3#3 + N #3 Cu THWN-2  15 m  in 2 inch RMC
"""
CASES = [(STATION, None), (STATION, "Grid lost"), (DAIRY, None), (DAIRY, "Mains lost")]


def csv_rows(table: Table) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(csv_text(table, "caution").removeprefix("\ufeff"), newline="")))


def largest(amps: dict[str, float]) -> float:
    return max(value for name, value in amps.items() if name != "N")


def agree(text: str, expected: float | None) -> None:
    """A cell of a CSV file holds the figure to nine digits; unknown is ``?``."""
    if expected is None:
        assert text in ("?", "")
    else:
        assert float(text) == pytest.approx(expected, rel=1e-8)


@pytest.mark.parametrize(("root", "scenario"), CASES)
def test_the_load_summary_shows_the_figures_of_show(root: Path, scenario: str | None) -> None:
    figures = shown(root, scenario)["equipment"]
    rows = csv_rows(package_of(root, scenario).of(SUMMARY)[0])
    assert len(rows) > 5
    for row in rows:
        load = figures[row["equipment"]]["load"]
        for word in ("connected", "demand", "sizing"):
            amount = load[word]
            agree(row[f"{word}_kva"], None if amount is None else amount["va"] / 1e3)
        agree(row["demand_a"], None if load["demand"] is None else largest(load["demand"]["amps"]))
        agree(row["neutral_a"], load["neutral"]["demand_a"] if load["neutral"] is not None else None)
        agree(row["unbalance_percent"], load["unbalance"] * 100 if load["unbalance"] is not None else None)


@pytest.mark.parametrize(("root", "scenario"), CASES)
def test_the_feeder_schedule_shows_the_figures_of_show(root: Path, scenario: str | None) -> None:
    found = shown(root, scenario)
    rows = csv_rows(package_of(root, scenario).of(FEEDERS)[0])
    assert [row["feeder"] for row in rows] == list(found["feeders"])
    for row in rows:
        feeder = found["feeders"][row["feeder"]]
        agree(row["length_m"], feeder["length_m"])
        assert row["from"] == feeder["from"]
        assert len(row["legs"].split()) == len(feeder["legs"] or ())
        target = found["equipment"][feeder["to"].split(".")[0]]
        if "load" in target and row["demand_a"] not in ("", "?"):
            load = target["load"].get("arriving", target["load"])
            agree(row["demand_a"], largest(load["demand"]["amps"]))


def test_a_charger_that_has_no_load_behind_it_shows_what_its_feeder_carries() -> None:
    """10 kW of direct current at 93 % and a power factor of 0.95 in halls.wye: 11.32 kVA, 16.3 A at 400 V (by hand)."""
    rows = csv_rows(package_of(DAIRY).of(FEEDERS)[0])
    row = next(row for row in rows if row["to"] == "CH-1")
    agree(row["demand_a"], 10e3 / 0.93 / 0.95 / 400 / 3**0.5)
    assert row["current_a"] and abs(float(row["demand_a"]) - float(row["current_a"])) < 0.5


def test_a_rise_of_the_voltage_is_called_one(tmp_path: Path) -> None:
    for kind in (FEEDERS, FAULTS):
        assert any(note.startswith("A drop below zero is a rise") for note in package_of(DAIRY).of(kind)[0].notes)
    lights = written(tmp_path, LIGHTS)
    assert not any("a rise" in note for note in package_of(lights).of(FEEDERS)[0].notes)


def test_conductors_of_iec_projects_are_called_so_in_sheets_and_reasons() -> None:
    package = package_of(DAIRY)
    sheets = {sheet.anchor: sheet.figure for sheet in package.sheets}
    titles = [figure.subject for figure in sheets.values() if "tied together" in figure.subject]
    assert titles and not [title for title in titles if re.search(r"\b[ABCG] (?:[ABCG]|tied)", title)]
    reasons = [r for row in package.of(FAULTS)[0].rows for cell in row.cells for r in cell.unknown]
    assert any("joins L1 and PE" in reason for reason in reasons)


@pytest.mark.parametrize(("root", "scenario"), CASES)
def test_faults_and_drops_are_the_figures(root: Path, scenario: str | None) -> None:
    assert faults_agree(root, scenario) == 0


def test_an_unknown_fault_is_a_question_mark_with_its_reason(tmp_path: Path) -> None:
    assert faults_agree(nasty_model(tmp_path), None) > 0


def faults_agree(root: Path, scenario: str | None) -> int:
    """Compare the column of the largest fault with ``show``; how many of them are unknown."""
    unknown = 0
    package = package_of(root, scenario)
    figures = shown(root, scenario)["equipment"]
    table = package.of(FAULTS)[0]
    column = next(i for i, c in enumerate(FAULTS.columns) if c.key == "max_ka")
    for row in table.rows:
        entry: Any = figures[str(row.cells[0].value)]
        for key in FAULTS.columns[column].figure.split("."):
            entry = entry.get(key) if entry is not None else None
        cell = row.cells[column]
        if entry is None:
            assert cell.value is None and cell.unknown
            unknown += 1
        else:
            assert cell.value == pytest.approx(entry / 1e3)
    return unknown


def test_faults_volts_and_drops_of_a_board_are_those_of_show() -> None:
    board = shown(STATION)["equipment"]["SB-1"]
    row = next(row for row in csv_rows(package_of(STATION).of(FAULTS)[0]) if row["bus"] == "SB-1")
    agree(row["max_ka"], board["fault"]["largest"]["amps"] / 1e3)
    agree(row["line_ground_ka"], board["fault"]["max"]["line-ground"]["amps"] / 1e3)
    agree(row["min_ka"], board["fault"]["smallest"]["amps"] / 1e3)
    agree(row["voltage_percent"], board["voltage_under_load"]["lowest"]["part"] * 100)
    agree(row["path_drop_percent"], board["drop"]["part"] * 100)
    agree(row["rated_percent"], 100 * board["fault"]["largest"]["amps"] / 35e3)  # rated 35 kA in service.wye


def test_drops_and_currents_of_feeders_are_those_of_show() -> None:
    found = shown(STATION)["feeders"]
    for row in csv_rows(package_of(STATION).of(FEEDERS)[0]):
        feeder = found[row["feeder"]]
        for key, figure, part, scale in (
            ("current_a", "current", "largest_a", 1.0),
            ("drop_percent", "drop", "part", 100.0),
            ("fault_at_end_ka", "fault_at_end", "largest_a", 1e-3),
        ):
            known = feeder.get(figure)
            agree(row[key], known[part] * scale if known is not None else None)


def test_ampacities_are_those_of_the_published_tables() -> None:
    """NEC 2023 Table 310.16, copper, 75 degC: 4/0 carries 230 A, 400 kcmil 335 A. IEC 60364-5-52 Table B.52.5, method
    C, copper in XLPE, three wires loaded: 35 mm2 carries 147 A."""
    station = {row["feeder"]: row for row in csv_rows(package_of(STATION).of(FEEDERS)[0])}
    agree(station["SB-1 -> T-LAB"]["ampacity_a"], 230)
    agree(station["T-1 -> SB-1"]["ampacity_a"], 3 * 335)
    assert station["SB-1 -> T-LAB"]["governed_by"] == "75 °C terminals"
    dairy = {row["feeder"]: row for row in csv_rows(package_of(DAIRY).of(FEEDERS)[0])}
    agree(dairy["OV-1 -> NT-1"]["ampacity_a"], 147)


@pytest.mark.parametrize("root", [STATION, DAIRY])
def test_the_working_of_an_ampacity_leads_to_its_value(root: Path) -> None:
    checked = 0
    for sheet in package_of(root).sheets:
        figure = sheet.figure
        if figure.name == "ampacity":
            numbers = {i.symbol: i.value for i in figure.inputs}
            assert eval(figure.formula, {"min": min}, numbers) == pytest.approx(figure.value)
            checked += 1
    assert checked > 20


@pytest.mark.parametrize(("root", "scenario"), CASES)
def test_totals_of_a_schedule_are_the_sums_of_its_rows(root: Path, scenario: str | None) -> None:
    package = package_of(root, scenario)
    figures = shown(root, scenario)["equipment"]
    checked = 0
    for table in package.of(SCHEDULE):
        totals = {row.label: row for row in table.totals}
        load = figures[table.subject].get("load")
        for leg in "ABC":
            at = SCHEDULE.keys.index(f"leg_{leg.lower()}_va")
            rows = sum(r.cells[at].value or 0.0 for r in table.rows)  # type: ignore[misc]
            summed = next((r.cells[at].value for label, r in totals.items() if label.startswith("Sum")), None)
            if summed is not None:
                assert summed == pytest.approx(rows)
            if load is None or load["connected"] is None or leg not in load["connected"]["leg_va"]:
                continue
            # Volt-amperes of unlike power factor add up to less than their sum, never to more.
            connected = load["connected"]["leg_va"][leg]
            assert 0.9 * rows <= connected <= rows + 1e-6, table.subject
            label = next(label for label in totals if label.startswith("Connected, VA"))
            assert totals[label].cells[at].value == pytest.approx(connected)
            checked += 1
    assert checked > 3


def test_rows_of_one_power_factor_add_up_to_the_connected_load() -> None:
    table = next(t for t in package_of(STATION).of(SCHEDULE) if t.subject == "AL-1")
    load = shown(STATION)["equipment"]["AL-1"]["load"]["connected"]["leg_va"]
    for leg in "ABC":
        at = SCHEDULE.keys.index(f"leg_{leg.lower()}_va")
        assert sum(r.cells[at].value or 0.0 for r in table.rows) == pytest.approx(load[leg])  # type: ignore[misc]


def test_classes_add_up_to_the_known_load() -> None:
    """Active and reactive parts of classes differ, so their volt-amperes sum to the connected load or a little more."""
    figures = shown(STATION)["equipment"]
    rows = csv_rows(package_of(STATION).of(CLASSES)[0])
    for name in {row["equipment"] for row in rows}:
        total = sum(float(row["connected_kva"]) for row in rows if row["equipment"] == name)
        assert 1.0 - 1e-9 <= total * 1e3 / figures[name]["load"]["known_va"] < 1.1


def test_the_legs_of_a_schedule_follow_its_positions() -> None:
    """NEC 408.3(E): A, B, C from top to bottom, in a board with odd positions left and even ones right."""
    for table in package_of(STATION).of(SCHEDULE):
        if table.built is None or len(set(table.built.legs)) != 3:
            continue
        for row in table.rows:
            position, legs = str(row.cells[0].value or ""), str(row.cells[1].value)
            if position and position.replace(",", "").isdigit():
                assert legs == " ".join("ABC"[(int(p) - 1) // 2 % 3] for p in position.split(","))


def test_what_is_not_known_is_a_question_mark_with_its_reason(tmp_path: Path) -> None:
    package = package_of(nasty_model(tmp_path))
    feeders = csv_rows(package.of(FEEDERS)[0])
    assert all(row["length_m"] == "?" and "length_m" in row["unknown"] for row in feeders)
    board = next(t for t in package.of(SCHEDULE) if t.subject == "LP-1")
    row = next(row for row in csv_rows(board) if row["position"] == "3")
    assert row["leg_a_va"] == "?" and "circuit 3 of `LP-1`" in row["unknown"]
    assert any(r.label == "Sum of the rows that are known" for r in board.totals)
    gaps = [r for t in package.tables if t.kind.name == "assumptions-and-gaps" for r in t.rows]
    assert any("length" in str(r.cells[3].value) for r in gaps)


def test_every_column_names_its_unit_its_source_and_its_meaning() -> None:
    suffixes = {"m": "_m", "A": "_a", "kA": "_ka", "kVA": "_kva", "VA": "_va", "%": "_percent", "°": "_deg"}
    for kind in TABLE_KINDS:
        assert kind.doc.endswith(".")
        for column in kind.columns:
            assert column.doc and (column.figure or column.source), (kind.name, column.key)
            if column.unit:
                assert column.key.endswith(suffixes[column.unit]), (kind.name, column.key)


def test_numbers_for_people() -> None:
    assert number(-0.04, 1) == "0.0"
    assert number(-0.05, 2) == "-0.05"
    assert number(1234567.891, 1) == "1\u202f234\u202f567.9"
    assert Column("x", "X", "x").text(Cell(None, ("no length is written",))) == "?"


def test_the_diagram_holds_every_piece_of_equipment_and_every_feeder() -> None:
    for root in (STATION, DAIRY):
        subject = package_of(root).subject
        sketch = one_line(subject)
        assert {n.id for n in sketch.nodes} == {e.name for e in subject.equipment if e.kind in list(Kind)}
        assert {e.id for e in sketch.edges} == {f.key for f in subject.feeders}
        assert len({n.working for n in sketch.nodes}) == len(sketch.nodes)


DOUBLE_ENDED = """wye 1
project "Mill"
  basis iec
utility     NET-A   400Y/230            fault 20 kA, x/r 5
utility     NET-B   400Y/230            fault 20 kA, x/r 5
switchboard MDB-A   400Y/230            bus 800 A, main 630 A
switchboard MDB-B   400Y/230            bus 800 A, main 630 A
transfer    CO-1                        125 A 4p
panel       ESB     400Y/230            bus 125 A, incomer switch
feeder NET-A       -> MDB-A
feeder NET-B       -> MDB-B
feeder MDB-A       -> MDB-B   630 A 4p  normally-open
feeder MDB-A       -> CO-1.normal      100 A 4p
feeder MDB-B       -> CO-1.emergency   100 A 4p
feeder CO-1        -> ESB
scenario "B lost"
  off NET-B
  close MDB-A -> MDB-B
  switch CO-1.emergency
"""


def test_a_tie_stays_a_tie_and_a_transfer_shows_where_it_stands(tmp_path: Path) -> None:
    root = written(tmp_path, DOUBLE_ENDED)
    for scenario, open_now, port in ((None, True, "normal"), ("B lost", False, "emergency")):
        sketch = one_line(package_of(root, scenario).subject)
        tie = next(e for e in sketch.edges if e.id == "MDB-A -> MDB-B")
        assert tie.tie and tie.normally_open is open_now
        assert [e.id for e in sketch.edges if e.tie] == ["MDB-A -> MDB-B"]
        stands = sketch.node["CO-1"].stands_on
        assert next(e for e in sketch.edges if e.id == stands).to_port == port


@pytest.mark.parametrize(
    ("units", "heading", "shown"),
    [(None, "Length, ft", "131.2"), ('"us"', "Length, ft", "131.2"), ('"si"', "Length, m", "40.0")],
)
def test_people_read_lengths_in_the_units_of_the_project(
    tmp_path: Path, units: str | None, heading: str, shown: str
) -> None:
    """40 m are 131.2 ft (NIST SP 811, Appendix B: 1 ft = 0.3048 m); files to reckon on keep to metres."""
    root = written(
        tmp_path,
        'project "Annex"\n  basis us-2023\nutility GRID 480Y/277  fault 14 kA, x/r 4\n'
        "panel LP-1 480Y/277  bus 125 A\nfeeder GRID -> LP-1  3#1 + N #1 + G #6 Cu THWN-2  40 m  in 2 inch EMT\n",
    )
    if units is not None:
        (tmp_path / "wyeline.toml").write_text(f"units = {units}\n", "utf-8")
    package = package_of(root, wishes=Wishes(frozenset({"feeders"})))
    (table,) = package.tables
    lines = markdown_text(table, "").split("\n")
    head = next(line for line in lines if "Length" in line).split(" | ")
    row = next(line for line in lines if "LP-1" in line).split(" | ")
    assert row[head.index(heading)] == shown
    assert f">{shown}</td>" in page_html([package]) and f">{heading[-2:].strip()}</span>" in page_html([package])
    assert csv_text(table, "").split("\r\n")[1].split(",")[table.kind.keys.index("length_m")] == "40"


def test_the_main_of_a_board_is_drawn_once() -> None:
    """A second feeder into a board brings no second main."""
    into = {edge.id: edge.main for edge in one_line(package_of(STATION).subject).edges if edge.target == "EDP"}
    assert len(into) == 2 and [main is not None for main in into.values()].count(True) == 1
    assert into["BYPASS"] is None


def test_what_is_worse_in_another_switch_state_is_what_show_says(station_worst: dict[str, Any]) -> None:
    rows = {row["bus"]: row for row in csv_rows(package_of(STATION).of(FAULTS)[0])}
    told = 0
    for name, row in rows.items():
        found = station_worst["equipment"][name]["worst"]
        normal = next(s["fault_max_a"] for s in station_worst["equipment"][name]["states"] if s["state"] == "normal")
        if found["fault_max_a"]["value"] > 1.01 * normal:
            told += f"largest fault {number(found['fault_max_a']['value'] / 1e3, 2)} kA" in row["worse_elsewhere"]
        elif row["worse_elsewhere"]:
            assert "largest fault" not in row["worse_elsewhere"], name
    assert told >= 2, "GEN-1 and EDP, each in a state of its own"
    assert "voltage under load" not in rows["T-LAB"]["worse_elsewhere"], "a tenth of a percent hides what matters"
    assert all(not row["worse_elsewhere"] for row in csv_rows(package_of(STATION, "Grid lost").of(FAULTS)[0]))


def test_a_source_without_load_as_normal_says_in_which_state_it_carries_most(tmp_path: Path) -> None:
    """6 kW on one leg of 480Y/277 is 21.7 A, whichever source it hangs on."""
    path = tmp_path / "shed.wye"
    more = (
        "generator GEN 480Y/277  60 kVA, pf 0.8, subtransient 12 %, x/r 20, sustained 3 pu, x0 5 %, neutral floating\n"
        "transfer ATS 100 A 3p\nfeeder GRID -> ATS.normal  60 A 3p  3#4 + N #4 Cu THWN-2  5 m  in 2 inch RMC\n"
        "feeder GEN -> ATS.emergency  60 A 3p  3#4 + N #4 Cu THWN-2  5 m  in 2 inch RMC\n"
    )
    path.write_text(LIGHTS.replace("feeder GRID", more + "feeder ATS").replace("2 kVA", "6 kVA"), "utf-8")
    (summary,) = package_of(path).of(SUMMARY)
    assert [note for note in summary.notes if note.startswith("GEN")] == [
        "GEN carries nothing as normal, and 21.7 A on its fullest leg with `ATS` on its emergency input."
    ]
    assert "GEN" not in [row["equipment"] for row in csv_rows(summary)]


@pytest.fixture(scope="module")
def station_worst() -> dict[str, Any]:
    return shown(STATION)


def test_machines_whose_reactance_is_assumed_are_one_row() -> None:
    (table,) = (t for t in package_of(STATION).tables if t.kind.name == "assumptions-and-gaps")
    rows = [row for row in csv_rows(table) if "reactance" in row["text"]]
    assert [("counted as a running motor" in row["text"], int(row["times"]) > 5) for row in rows] == [
        (False, True),
        (True, True),
    ]
    assert not [row for row in csv_rows(table) if re.search(r"and \d+ more", row["text"])]


def test_a_guessed_length_stands_in_the_unit_of_the_schedules(tmp_path: Path) -> None:
    guessed = written(tmp_path, LIGHTS.replace("  15 m", "  assume 15 m"))
    (table,) = (t for t in package_of(guessed).tables if t.kind.name == "assumptions-and-gaps")
    (row,) = (row for row in csv_rows(table) if row["sort"] == "marked as assumed")
    assert (row["figure"], row["text"]) == ("length", "49.2 ft")


def test_an_incomer_behind_a_transformer_is_its_secondary_device(tmp_path: Path) -> None:
    text = DAIRY.read_text("utf-8")
    assert "bus 800 A, main 630 A" in text
    for other in DAIRY.parent.glob("*.wye"):
        (tmp_path / other.name).write_text(other.read_text("utf-8"), "utf-8")
    root = tmp_path / DAIRY.name
    root.write_text(text.replace("bus 800 A, main 630 A", "bus 800 A, incomer 630 A"), "utf-8")
    for file, told in ((DAIRY, "main 630 A of HT-1"), (root, "incomer 630 A of HT-1")):
        (table,) = (t for t in package_of(file).tables if t.kind.name == "transformers")
        assert told in [cell.value for row in table.rows for cell in row.cells]


def test_a_table_of_faults_says_what_it_rests_on_and_which_states_it_knows() -> None:
    """Who signs it asks for method, temperatures and switch states: those that ``wyeline show`` lists."""
    for root, method in ((STATION, "IEEE Std 141"), (DAIRY, "IEC 60909-0")):
        (table,) = (t for t in package_of(root).tables if t.kind.name == "fault-and-drop")
        told = " ".join(table.notes)
        assert method in told
        studies = package_of(root).subject.view.studies.every()
        assert all(study.name in told for study in studies[1:])


def test_a_schedule_names_what_its_sums_leave_out() -> None:
    """HT-1 has a capacitor and an inverter; neither is a load, both change the current."""
    for board, told in (("HT-1", True), ("UT-1", False)):
        (table,) = (t for t in package_of(DAIRY).of(SCHEDULE) if t.subject == board)
        assert ("Not in these sums: CAP-1 (capacitor), PV-1 (inverter)" in " ".join(table.notes)) is told
    (ups,) = (t for t in package_of(DAIRY).of(SCHEDULE) if t.subject == "UT-6")
    assert "harmonics of electronic loads" in " ".join(ups.notes)
