"""Enclosures and mountings: judged outdoors, printed, compared.

Which types of NEMA 250 are for outdoors: the two halves of NEC Table 110.28, from memory; the IP code of an assembly
outdoors: IEC 61439-1 8.2.2 (second numeral 3 at least), from memory.
"""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.reports.equipment_lists import EQUIPMENT
from wyeline_linter.reports.package import Package
from wyeline_linter.reports.panel_schedule import SCHEDULE
from wyeline_linter.review.comparison import compare_versions
from wyeline_linter.review.documents import Version

US = 'project "Boat shed"\n  basis us-2023\nutility UTIL 208Y/120  fault 10 kA\nfeeder UTIL -> SP-1\n'
IEC = 'project "Boat shed"\n  basis iec\nutility UTIL 400Y/230  fault 10 kA\nfeeder UTIL -> SP-1\n'


def analysed(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def judged(text: str) -> bool:
    return any(f.rule == "enclosure-not-for-outdoors" for f in analysed(text).findings())


@pytest.mark.parametrize("kind", "1 2 5 12 12K 13".split())
def test_types_for_indoors_are_refused_outdoors_only(kind: str) -> None:
    panel = US + f"panel SP-1 208Y/120  bus 125 A, enclosure NEMA-{kind}"
    assert judged(panel + ", outdoor\n") and not judged(panel + "\n")
    assert not judged(panel.replace("basis us-2023", "basis iec") + ", outdoor\n")


@pytest.mark.parametrize("kind", "3 3R 3S 3X 3RX 3SX 4 4X 6 6P 7".split())
def test_types_for_outdoors_are_left(kind: str) -> None:
    assert not judged(US + f"panel SP-1 208Y/120  bus 125 A, enclosure NEMA-{kind}, outdoor\n")


@pytest.mark.parametrize(
    ("code", "told"),
    [("IP42", True), ("IP31", True), ("IPX2", True), ("IP43", False), ("IP66", False), ("IP4X", False)],
)
def test_ip_codes_of_boards_outdoors(code: str, told: bool) -> None:
    assert judged(IEC + f"panel SP-1 400Y/230  bus 125 A, enclosure {code}, outdoor\n") is told


def test_what_the_tables_do_not_speak_of_is_not_judged() -> None:
    """Motors, and above 1000 V (NEC 110.28)."""
    assert not judged(US + "motor SP-1 208 3ph  5 hp, enclosure NEMA-1, outdoor\n")
    high = 'project "Yard"\n  basis us-2023\nutility UTIL 12.47kV 3ph  fault 5 kA\nfeeder UTIL -> SP-1\n'
    assert not judged(high + "disconnect SP-1 12.47kV 3ph  200 A 3p, enclosure NEMA-1, outdoor\n")


def test_a_type_hands_its_enclosure_on() -> None:
    text = US + "type panel YARD  enclosure NEMA-12, outdoor\npanel SP-1 208Y/120  bus 125 A, like YARD\n"
    assert judged(text)


def test_heads_of_schedules_and_the_equipment_list_print_them() -> None:
    text = US + (
        "panel SP-1 208Y/120  bus 125 A, enclosure NEMA-3R, mounting pole, outdoor\n"
        "  1  20 A 1p  1 kVA lighting\ndisconnect DS-1 208Y/120  60 A 3p, enclosure IP65\nfeeder SP-1 -> DS-1\n"
    )
    package = Package(analysed(text))
    (head,) = (dict(table.facts) for table in package.of(SCHEDULE))
    assert (head["Enclosure"], head["Mounting"], head["Location"]) == ("NEMA type 3R", "pole", "outdoors")
    (listed,) = package.of(EQUIPMENT)
    said = {
        row.cells[0].value: [
            row.cells[EQUIPMENT.keys.index(key)].value for key in ("location", "enclosure", "mounting")
        ]
        for row in listed.rows
    }
    assert said["SP-1"] == ["outdoors", "NEMA type 3R", "pole"] and said["DS-1"] == ["", "IP65", ""]


def test_a_comparison_tells_them_and_nothing_else_changes() -> None:
    old = US + "panel SP-1 208Y/120  bus 125 A, enclosure NEMA-1\n"
    new = US + "panel SP-1 208Y/120  bus 125 A, enclosure NEMA-3R, mounting flush\n"
    old_version, new_version = (Version("/m/site.wye", lambda _, text=text: text, "/m") for text in (old, new))
    found = compare_versions(old_version, new_version)
    assert [change.words for change in found.changes] == [
        "SP-1 had its enclosure changed from NEMA-1 to NEMA-3R and now states mounting flush"
    ]
    assert not (found.worse or found.better or found.moved)
