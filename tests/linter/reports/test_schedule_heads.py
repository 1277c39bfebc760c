"""What a plan reviewer looks for on the schedule of a board, and on every printed page."""

from __future__ import annotations

import re
from pathlib import Path

from report_models import DAIRY, STATION, package_of, written

from wyeline_linter.reports.columns import Table
from wyeline_linter.reports.diagram.sketch import DeviceKind
from wyeline_linter.reports.equipment_lists import EQUIPMENT
from wyeline_linter.reports.html_page import page_html
from wyeline_linter.reports.html_tables import table_html
from wyeline_linter.reports.load_summary import SUMMARY
from wyeline_linter.reports.markdown_output import markdown_text
from wyeline_linter.reports.one_line import one_line
from wyeline_linter.reports.package import Wishes
from wyeline_linter.reports.panel_schedule import SCHEDULE


def schedule(root: Path, board: str, scenario: str | None = None) -> Table:
    return next(t for t in package_of(root, scenario).of(SCHEDULE) if t.subject == board)


def test_the_head_of_a_schedule_holds_what_a_reviewer_compares() -> None:
    """Voltage with wires, bus, main, short-circuit rating beside the fault current, terminals, spaces, supply."""
    facts = dict(schedule(STATION, "LA-1").facts)
    assert facts["Fed from"] == "LDP, position 1,3,5" and facts["Voltage"] == "208Y/120 V, 4 wires"
    assert facts["Bus"] == "225 A" and facts["Main"] == "lugs, feed-through lugs"
    assert facts["Short-circuit rating"] == "10 kA" and facts["Largest fault"] == "5.22 kA"
    assert facts["Terminals"] == "75 °C" and facts["Spaces"] == "42: 23 used, 19 free"
    assert dict(schedule(STATION, "SB-1").facts)["Location"] == "Electrical room 002"
    assert dict(schedule(DAIRY, "HT-1").facts)["Short-circuit rating"] == "25 kA, withstand 25 kA, peak 52 kA"


def test_a_rating_is_set_beside_the_largest_fault_of_all_switch_states() -> None:
    assert dict(schedule(STATION, "EDP").facts)["Largest fault"] == '10.94 kA in "Transfer switch serviced"'
    lost = dict(schedule(STATION, "EDP", "Grid lost").facts)["Largest fault"]
    assert float(lost.removesuffix(" kA")) < 2, "the report of one state tells that state's"


def test_an_unknown_fault_says_why_and_what_nothing_feeds_has_none(tmp_path: Path) -> None:
    root = written(
        tmp_path,
        'wye 1\nproject "Weir"\n  basis us-2023\nutility UTIL 480Y/277\n'
        "panel LP-1 480Y/277  bus 100 A, main lugs, spaces 12, outdoor\n"
        '  1  20 A 1p  1 kVA lighting  "Gate"\npanel LP-2 480Y/277  bus 100 A, main lugs\n'
        "feeder UTIL -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  10 m  in 1-1/2 inch EMT\n"
        "feeder LP-1 -> LP-2  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  10 m  in 1 inch EMT, normally-open\n",
    )
    told = dict(schedule(root, "LP-1").facts)
    assert told["Largest fault"].startswith("? (") and "UTIL" in told["Largest fault"]
    assert told["Location"] == "outdoors"
    assert "Largest fault" not in dict(schedule(root, "LP-2").facts)


def test_circuits_that_share_a_neutral_say_in_whose_wires_they_run() -> None:
    wires = {
        row.cells[0].value: row.cells[SCHEDULE.keys.index("wires")].value for row in schedule(STATION, "LA-1").rows
    }
    assert wires["21"] == wires["23"] == "with 19"


def test_the_load_by_class_stands_beside_a_schedule_and_adds_up() -> None:
    package = package_of(DAIRY)
    connected = {
        str(r.cells[0].value): r.cells[SUMMARY.keys.index("connected_kva")].value for r in package.of(SUMMARY)[0].rows
    }
    table = schedule(DAIRY, "UT-2")  # everything on it at power factor 1
    assert table.beside is not None
    at = table.beside.kind.keys.index("connected_kva")
    parts = [row.cells[at].value for row in table.beside.rows]
    assert len(parts) == 4 and sum(p for p in parts if isinstance(p, float)) == connected["UT-2"]
    assert "lighting, continuous" in table_html(table, ()) and "lighting, continuous" in markdown_text(table, "")


def test_every_printed_page_says_which_issue_of_which_project_it_is() -> None:
    page = page_html([package_of(STATION, None, Wishes(frozenset({"panel"}), "29 November"))])
    heads = re.findall(r'@top-(left|right)\{content:"([^"]*)"', page)
    assert [side for side, _ in heads] == ["left", "right"]
    right = re.sub(r"\\([0-9a-f]+) ", lambda m: chr(int(m[1], 16)), heads[1][1])
    assert heads[0][1] == "Heron Bight Research Station" and right == "HB-2207 · revision C · 29 November"


def test_a_drawing_names_its_client_and_leaves_room_to_sign() -> None:
    for sheet in package_of(STATION).diagram.sheets:
        assert "Client" in sheet.svg and "Heron Bight Trust" in sheet.svg
        assert ">Drawn<" in sheet.svg and ">Checked<" in sheet.svg and "pproved" not in sheet.svg


def test_an_incomer_is_drawn_as_the_device_it_is(tmp_path: Path) -> None:
    root = written(
        tmp_path,
        'wye 1\nproject "Yard"\n  basis iec\nutility NET 400Y/230  fault 12 kA, fault-min 6 kA, x/r 3, earthing TN-S\n'
        "switchboard HV 400Y/230  bus 250 A, incomer 160 A 4p, rated 25 kA\n"
        "panel UV 400Y/230  bus 100 A, incomer switch\n"
        "feeder NET -> HV  4x95mm2 + PE 50mm2 Cu XLPE  25 m method C\n"
        "feeder HV -> UV  63 A 3p+N curve C, 5G16mm2 Cu XLPE  30 m method C\n",
    )
    mains = {edge.target: edge.main for edge in one_line(package_of(root).subject).edges}
    assert mains["HV"] is not None and mains["HV"].kind is DeviceKind.BREAKER and mains["HV"].lines == ("160 A",)
    assert mains["UV"] is not None and mains["UV"].kind is DeviceKind.SWITCH


def test_what_the_strip_of_a_drawing_says_is_large_enough_to_read() -> None:
    """1.7 mm is the least lettering that is read with ease on paper (common practice, no source)."""
    for root in (STATION, DAIRY):
        for sheet in package_of(root, None, Wishes(frozenset({"diagram"}), "29 November 2026")).diagram.sheets:
            strip = sheet.svg.partition('class="title-strip"')[2]
            sizes = [float(size) for size in re.findall(r'font-size="?:?([\d.]+)', strip)]
            assert len(sizes) > 15 and min(sizes) >= 1.7


def test_the_one_line_and_the_equipment_list_tell_what_a_label_asks_of_its_circuit() -> None:
    lines = {node.tag: node.lines for node in one_line(package_of(STATION).subject).nodes}
    assert "MCA 62 A, MOCP 80 A" in lines["CHL-1"]
    listed = package_of(STATION).of(EQUIPMENT)[0]
    ratings = {row.cells[0].value: row.cells[EQUIPMENT.keys.index("rating")].value for row in listed.rows}
    assert ratings["CHL-1"] == "MCA 62 A, MOCP 80 A"
