"""What does not work is never drawn as if it did: a sheet leaves the office without the list of findings."""

from __future__ import annotations

import re
from pathlib import Path

from report_models import STATION, package_of, written

from wyeline_linter.reports.html_page import edition_html
from wyeline_linter.reports.review_tables import FINDINGS

SITE = """wye 1
project "Mill lane"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility     POLE    240/120 3ph         fault 10 kA, fault-min 7 kA, x/r 3
switchboard SVC     240/120 3ph         bus 400 A, main 400 A, rated 22 kA, lug-temp 75 degC
generator   GEN     120/240             20 kW
panel       FL-1    120/240             bus 125 A, main 100 A, rated 10 kA
panel       FL-2    120/240             bus 125 A, main 100 A, rated 10 kA
panel       HT-1    480Y/277            bus 125 A, main 100 A, rated 10 kA
feeder POLE        -> SVC                3x500kcmil + N 500kcmil Cu THWN-2  10 m  in 3 inch PVC-40
feeder SVC[AC]     -> FL-1    100 A 2p   2#2 + N #2 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT
feeder SVC[AC]     -> FL-2    100 A 2p   2#2 + N #2 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT
feeder GEN         -> FL-2    100 A 2p   2#2 + N #2 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT
feeder SVC         -> HT-1    100 A 3p   3#2 + N #2 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT
"""


def test_a_refused_feeder_a_second_supply_and_the_legs_stand_on_the_drawing(tmp_path: Path) -> None:
    package = package_of(written(tmp_path, SITE))
    (sheet,) = package.diagram.sheets
    texts = re.findall(r"<text[^>]*>([^<]*)</text>", sheet.svg)
    assert texts.count("cannot be connected") == 1
    assert texts.count("second supply") == 1
    # Which two of three legs a board hangs on decides here whether it has 120 V or the high leg (NEC 110.15).
    assert texts.count("on A C") == 2


def test_errors_are_counted_at_the_head_of_the_page_and_in_the_title_block(tmp_path: Path) -> None:
    package = package_of(written(tmp_path, SITE))
    errors = sum(row.cells[0].value == "error" for row in package.of(FINDINGS)[0].rows)
    assert errors >= 2
    inside = edition_html(package)
    head = inside[: inside.index("<section")]
    assert f"{errors} errors stand in this model" in head and 'href="#part-findings"' in head
    assert f"{errors} errors stand" in re.sub(r"<[^>]+>", " ", package.diagram.sheets[0].svg)


def test_a_model_without_errors_is_not_called_anything() -> None:
    head = edition_html(package_of(STATION)).split("<section")[0]
    assert "errors stand" not in head and "No rule of the checked set failed on the stated facts" in head
    assert not re.search(r"\b(compliant|approved|safe)\b", head)
