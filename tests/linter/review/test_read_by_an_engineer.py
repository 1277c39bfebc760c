"""A comparison as the engineer reads it who has to sign: told once, what matters first, how near to a limit, why, and
which sheets say something else now.

The figures are worked out from the numbers in the example's own files; sources are named where they are used.
"""

from __future__ import annotations

import json as reader

import pytest
from site_edits import Edit, because, compared, new_value, one

from wyeline_linter.findings import Severity
from wyeline_linter.review import as_html, as_json, as_markdown, as_text
from wyeline_linter.review.comparison import Comparison
from wyeline_linter.review.consequences import Kind
from wyeline_linter.review.ordering import counted, natural
from wyeline_linter.review.physical import Kind as Change

OVEN = '30 A 2p   4 kW      heating continuous  "Drying oven, room 103"    2#10 + G #10 Cu  20 m  in 3/4 inch EMT'
MICROSCOPY_SPARE = "  8,10,12 20 A 3p             spare\n\n// BUNK"
OVEN_MOVED: tuple[Edit, ...] = (
    ("labs.wye", f"  7,9     {OVEN}\n", ""),
    ("labs.wye", MICROSCOPY_SPARE, MICROSCOPY_SPARE.replace("\n\n", f"\n  13,15   {OVEN}\n\n")),
)
WARMER: Edit = ("station.wye", "ambient 30 degC", "ambient 40 degC")
STRONGER: Edit = (
    "service.wye",
    "fault 4.2 kA, fault-min 3.1 kA, fault-lg 3.0 kA, x/r 5.8",
    "fault 12.5 kA, fault-min 6.2 kA, fault-lg 9.1 kA, x/r 14",
)
LARGER: Edit = ("service.wye", "750 kVA, z 5.75 %, x/r 4.7, loss 8.4 kW", "1500 kVA, z 5.75 %, x/r 6.5, loss 15 kW")
LONGER: Edit = ("admin.wye", "THWN-2                 62 m  in", "THWN-2                 162 m  in")
GENERATOR: Edit = (
    "pumps.wye",
    "feeder SB-1        -> MCC-1   175 A 3p   3#2/0 + G #6 Cu THWN-2                      96 m  in 2 inch PVC-40",
    "generator   GEN-2   480 3ph  150 kVA, pf 0.8, subtransient 14 %, transient 21 %, x2 15 %, x0 6 %, x/r 15, "
    "sustained 3 pu, ground solid\n"
    "transfer    ATS-2   200 A 3p, rated 30 kA, transition open, optional\n"
    "feeder SB-1  -> ATS-2.normal  175 A 3p  3#2/0 + G #6 Cu THWN-2  90 m  in 2 inch PVC-40\n"
    "feeder GEN-2 -> ATS-2.emergency  200 A 3p  3#4/0 + G #6 Cu THWN-2  15 m  in 2-1/2 inch PVC-40\n"
    "feeder ATS-2 -> MCC-1  3#2/0 + G #6 Cu THWN-2  6 m  in 2 inch PVC-40",
)
ON_BOTH: Edit = ("station.wye", "  switch ATS-1.emergency", "  switch ATS-1.emergency\n  switch ATS-2.emergency")


def us(*edits: Edit) -> Comparison:
    return compared("field-station", "station.wye", *edits)


def sheets_of(found: Comparison) -> dict[str, tuple[str, ...]]:
    return {sheet.name: sheet.of for sheet in found.sheets}


def test_a_circuit_that_went_to_another_board_has_moved() -> None:
    found = us(*OVEN_MOVED)
    (change,) = found.changes
    assert change.kind is Change.MOVED
    assert change.words == 'circuit 7,9 of LA-1 moved to 13,15 of LB-1 ("Drying oven, room 103")'
    load = one(found, "LDP -> LB-1", "demand current")
    assert because(load) == [change.words]
    back = us(("labs.wye", f"  7,9     {OVEN}\n", ""))
    assert [c.kind for c in back.changes] == [Change.REMOVED], "nothing is taken for moved that came nowhere"


def test_a_circuit_that_moved_says_what_else_became_of_it() -> None:
    farther = tuple((file, old, new.replace("20 m  in", "28 m  in")) for file, old, new in OVEN_MOVED)
    (change,) = us(*farther).changes
    assert change.words.endswith('moved to 13,15 of LB-1 ("Drying oven, room 103") (went from 20 to 28 m)')


def test_many_findings_of_one_rule_for_one_reason_are_one_entry() -> None:
    """At 40 degC instead of 30 the insulation of circuits decides that was not written; each board is named once."""
    found = us(WARMER)
    (entry,) = [c for c in found.worse if c.finding is not None and c.finding.rule == "installation-method-missing"]
    assert entry.count == counted(found.worse) > 30
    text = as_text.text([found])
    assert text.count("installation-method-missing") == 1 and text.count("LA-1 (circuits 1; 2; 3;") == 1
    assert f"{entry.count} new gaps" in text, "all of them are counted"
    listed = [c["words"] for c in reader.loads(as_json.json([found]))["models"][0]["worse"]]
    assert len(listed) == len(set(listed)) == entry.count, "programs get each by itself"


def test_positions_are_counted_up_and_not_spelled() -> None:
    found = us(WARMER)
    (entry,) = [c for c in found.worse if c.alike and c.gravity is Severity.GAP]
    of_one_board = [c.finding.position for c in entry.alike if c.finding is not None and c.subject == "LA-1"]
    assert of_one_board == sorted(of_one_board, key=natural)
    assert of_one_board.index("2") < of_one_board.index("11,13")


def test_a_cause_of_many_facts_is_told_whole_once_and_briefly_elsewhere() -> None:
    found = us(STRONGER)
    (change,) = found.changes
    text = as_text.text([found])
    assert text.count("fault-lg") == 1, "in what changed, and nowhere else"
    assert change.words.startswith("GRID had its fault changed from 4.2 to 12.5 kA, its fault-min from 3.1 to 6.2 kA,")
    assert change.cause.endswith("(and 2 more facts)")
    assert text.count(change.cause) == 1, "the figures that moved stand under their cause"


def test_figures_that_moved_say_how_near_they_are_to_their_limit_and_the_nearest_stands_first() -> None:
    found = us(LARGER)
    first = found.moved[0]
    least = f"({100 * new_value(one(found, 'BW-1', 'available fault', kind=Kind.MOVED)) / 22e3:.0f} % of its 22 kA"
    assert first.headline.startswith("BW-1: ") and f"{least} withstand rating)" in first.headline
    board = one(found, "SB-1", "available fault", kind=Kind.MOVED)
    assert f"({100 * new_value(board) / 35e3:.0f} % of its 35 kA rating)" in board.headline
    for writer in (as_text.text, as_markdown.markdown, as_html.html):
        assert writer([found]).index("BW-1: available fault") < writer([found]).index("SB-1: available fault")


def test_a_share_stands_beside_its_aim_and_not_beside_a_share_of_it() -> None:
    drops = [c.headline for c in us(LONGER).moved if "voltage drop" in c.headline]
    assert any("(aimed for: 3 % for a branch)" in headline or "(aimed for: 5 %" in headline for headline in drops), (
        drops
    )
    assert not any("% of the" in headline for headline in drops)


def test_what_hurts_people_stands_before_what_was_expected() -> None:
    """Withstand and breaking before loads, loads before expectations; the order is common practice, no source."""
    weak: Edit = ("service.wye", "main 1000 A, rated 35 kA", "main 1000 A, rated 10 kA")
    low: Edit = ("station.wye", "expect SB-1 fault <= 25 kA", "expect SB-1 fault <= 9 kA")
    small: Edit = ("admin.wye", "bus 125 A, main 100 A", "bus 125 A, main 40 A")
    errors = [c for c in us(weak, low, small).worse if c.gravity is Severity.ERROR]
    rules = [c.finding.rule for c in errors if c.finding is not None]
    assert rules.index("interrupting-too-low") < rules.index("board-overloaded") < rules.index("expectation-missed")


def test_what_was_added_is_told_with_its_figures_and_what_its_switch_state_makes_of_the_rest() -> None:
    found = us(GENERATOR, ON_BOTH)
    told = {one.subject: one.words for one in found.fresh}
    assert "demand load 107 A (53 % of its 200 A rating)" in told["ATS-2"]
    assert 'demand load in the worst switch state 107 A, in "Grid lost"' in told["GEN-2"]
    # The set alone, sustained: 3 pu of 150 kVA / (sqrt 3 x 480 V) = 541 A; on the grid it was more than twice as much.
    board = one(found, "MCC-1", "smallest fault in the worst switch state")
    assert new_value(board) == pytest.approx(3 * 150e3 / (3**0.5 * 480), rel=0.02)
    assert board.headline.endswith(', in "Grid lost"')
    for writer in (as_text.text, as_markdown.markdown, as_html.html, as_json.json):
        assert "GEN-2" in writer([found])


def test_a_model_that_is_all_new_is_no_list_of_additions() -> None:
    assert not us(LONGER).fresh


DIAGRAM, PANELS, FEEDERS = "one-line diagram", "panel schedules", "feeder schedule"
FAULTS, LABELS, LOADS = "fault and drop table", "labels and directories", "load summary"
NEW_TEXT: Edit = ("labs.wye", '"Confocal laser bench" ', '"Laser bench" ')


@pytest.mark.parametrize(
    ("edit", "sheets", "not_sheets"),
    [
        # The diagram prints the length of a feeder; it, labels and the heads of schedules the faults behind it.
        (LONGER, {DIAGRAM, FEEDERS, FAULTS, LABELS, PANELS}, {LOADS}),
        # Warmer wires carry less: only the feeder schedule prints what they carry.
        (WARMER, {FEEDERS}, {DIAGRAM, FAULTS, PANELS, LOADS}),
        (("station.wye", "issue C     2026", "issue D     2026"), {DIAGRAM}, {FEEDERS, PANELS}),
        (NEW_TEXT, {PANELS, LABELS}, {DIAGRAM, FEEDERS}),
    ],
)
def test_the_sheets_to_issue_anew_are_those_that_print_something_else(
    edit: Edit, sheets: set[str], not_sheets: set[str]
) -> None:
    found = sheets_of(us(edit))
    assert sheets <= found.keys() and not not_sheets & found.keys()


def test_a_renamed_board_renews_every_sheet_that_prints_its_name() -> None:
    found = sheets_of(us(*((file, "LDP*", "DP-LAB") for file in ("labs.wye", "station.wye"))))
    assert set(found["panel schedules"]) >= {"DP-LAB", "LA-1", "BUNK-1"}, "boards it feeds name it as their supply"
    assert found["panel schedules to withdraw"] == ("LDP",)
    assert {"one-line diagram", "feeder schedule", "load summary", "fault and drop table"} <= found.keys()
    assert "GH-1" not in found["panel schedules"]


def test_only_form_renews_nothing() -> None:
    assert not us(("labs.wye", "// BUSWAY. Tap-offs", "// THE BUSWAY. Tap-offs")).sheets


def test_nothing_of_the_page_is_folded_away_on_paper_and_names_read_as_names() -> None:
    found = us(LARGER)
    page = as_html.html([found])
    assert page.count("<details") == page.count("<details open>") > 2, "a folded section prints as its heading alone"
    assert "<code>T-1</code> takes 69.45 A" in page and "`" not in page


@pytest.mark.parametrize("lugs", [", lug-temp 75 degC", ""], ids=["terminals marked", "terminals not marked"])
def test_the_table_row_that_is_cited_is_the_one_the_figure_comes_from(lugs: str) -> None:
    """NEC 2023 Table 310.16: 2/0 copper carries 195 A at 90 degC, and 175 A where no terminals are rated for more."""
    thin: Edit = (
        "labs.wye",
        "3#3/0 + N #3/0 + G #6 Cu THWN-2             20 m",
        "3#2/0 + N #2/0 + G #6 Cu THWN-2  20 m",
    )
    marked = "bus 225 A, main lugs, rated 10 kA, spaces 42"
    ends: Edit = ("types.wye", f"{marked}, lug-temp 75 degC", f"{marked}{lugs}")
    found = one(us(thin, ends), "LDP -> LA-1", "wire-underprotected").finding
    assert found is not None
    assert found.found == "200 A on wires for 175 A (175 [NEC 2023 310.16: 2/0 Cu 75 degC])"


def test_what_is_lost_behind_one_missing_fact_is_one_entry_a_figure() -> None:
    """Without a table for its wires nothing behind the service is known; the reasons add up from board to board."""
    found = us(("station.wye", "basis us-2023", "basis iec"))
    lost = [c for c in found.worse if c.kind is Kind.UNKNOWN]
    assert len(lost) < 12, "GRID's wires, those of UPS-1, each feeder's own, and two motors without an efficiency"
    faults = next(c for c in lost if ": available fault is not known" in c.headline)
    assert len(set(faults.others)) > 30 and "IEC 60228" in faults.headline
    assert faults.headline.endswith("more reasons")
    assert len(as_markdown.markdown([found])) < as_markdown.MOST_CHARACTERS / 3
