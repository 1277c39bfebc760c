"""The search for the least changes that make a connection, against geometry worked out here and printed examples."""

from __future__ import annotations

import math
import time
from itertools import combinations, product

import pytest

from wyeline_grammar.notation import Voltage, VoltageForm, parse_voltage
from wyeline_grammar.sources import Files
from wyeline_grammar.tokens import spelled
from wyeline_linter.analysis import Analysis
from wyeline_linter.checklist import readings_under
from wyeline_linter.connected_load import leg_loads, load_below
from wyeline_linter.findings import Fix, Severity
from wyeline_linter.fixing import apply_edits
from wyeline_linter.repair import Solution, Trial, diagnose, repairs_for, solve
from wyeline_linter.repair_edits import new_tag
from wyeline_linter.repair_routes import COST, Need, routes
from wyeline_linter.systems import System, source_system
from wyeline_linter.verdicts import Cause

BOARD = """wye 1
project "Ferry quay"
  basis us-2023
  frequency 60 Hz, ambient 30 degC
utility     QUAY    480Y/277            fault 28 kA, x/r 7
switchboard MSB     480Y/277            bus 800 A, main 800 A, rated 42 kA, lug-temp 75 degC
feeder QUAY        -> MSB     800 A 3p   2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu  12 m
load        BOILER  480 1ph             20 kVA, heating
feeder MSB[AB]     -> BOILER  60 A 2p    2#6 + G #10 Cu                              10 m
"""


def model(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def mended(text: str, solution: Solution | Fix) -> str:
    return apply_edits(text, solution.edits)


def first(text: str, source: str, target: str) -> tuple[Solution, str]:
    solution = solve(model(text).view, source, target)[0]
    return solution, mended(text, solution)


# --- the pure search

NOTATIONS = [
    "480Y/277",
    "480 3ph",
    "208Y/120",
    "240/120 3ph",
    "120/240",
    "208Y/120 1ph",
    "400Y/230",
    "230 3ph",
    "600Y/347",
]


def distances(of: Voltage) -> tuple[list[float], list[float]]:
    """Volts between legs and from legs to neutral, from the definition of each notation (ANSI C84.1, IEC 60038)."""
    v = of.line_v
    if of.form is VoltageForm.WYE4:
        return [v] * 3, [v / math.sqrt(3)] * 3
    if of.form is VoltageForm.THREE_WIRE:
        return [v] * 3, []
    if of.form is VoltageForm.TWO_WIRE:
        return [v], []
    if of.form is VoltageForm.SPLIT3:
        return [v], [v / 2] * 2
    if of.form is VoltageForm.HIGH_LEG4:
        return [v] * 3, [v / 2, v / 2, v * math.sqrt(3) / 2]
    return [v], [v / math.sqrt(3)] * 2


def measured(system: System) -> tuple[list[float], list[float]]:
    to_neutral = [system.distance(leg, "N") for leg in system.legs] if system.has_neutral else []
    return sorted(system.distance(a, b) for a, b in combinations(system.legs, 2)), sorted(to_neutral)


@pytest.mark.parametrize(("have", "want"), list(product(NOTATIONS, NOTATIONS)))
def test_every_route_ends_in_the_voltages_that_were_asked_for(have: str, want: str) -> None:
    up = source_system(parse_voltage(have), frequency_hz=60.0)
    found = routes(up, Need(parse_voltage(want), False, None, True, "us"))
    assert [r.cost for r in found] == sorted(r.cost for r in found)
    if have == want:
        assert found[0].cost == 0
    for route in found:
        target = route.redeclared or parse_voltage(want)
        lines, neutrals = distances(target)
        got_lines, got_neutrals = measured(route.maps[0].system)
        assert got_lines == pytest.approx(sorted(lines), rel=0.05), "380 and 400 V count as one family of nominals"
        assert got_neutrals == pytest.approx(sorted(neutrals), rel=0.05)
        if route.stage is not None:
            across = source_system(route.stage.primary, frequency_hz=60.0)
            assert measured(route.stage.takes[0].system)[0] == pytest.approx(measured(across)[0], rel=0.01)


def sorts(have: str, want: str, **other: object) -> list[tuple[int, str]]:
    up = source_system(parse_voltage(have), frequency_hz=60.0)
    fields = {"is_load": False, "frequency_hz": None, "may_redeclare": True, "practice": "us", **other}
    found = routes(up, Need(parse_voltage(want), **fields))  # type: ignore[arg-type]
    return [(r.cost, r.stage.sort if r.stage else "redeclare" if r.redeclared else "wire") for r in found]


def test_the_classic_case_takes_one_winding_across_two_legs() -> None:
    assert sorts("480Y/277", "120/240")[0] == (COST["single-phase"] + COST["new source"], "single-phase")


def test_small_corrections_take_a_booster_and_never_make_a_neutral() -> None:
    assert sorts("208Y/120", "240 3ph")[0] == (COST["buck-boost"], "buck-boost")
    assert "buck-boost" not in [sort for _, sort in sorts("208 3ph", "240Y/139")]
    assert "buck-boost" not in [sort for _, sort in sorts("480Y/277", "240 3ph")], "beyond 20 % it is no booster's work"


def test_one_phase_never_becomes_three() -> None:
    assert sorts("120/240", "480 3ph", is_load=True, may_redeclare=False) == []


def test_other_frequencies_and_direct_current_take_a_converter() -> None:
    assert [s for _, s in sorts("480Y/277", "480Y/277", frequency_hz=50.0, may_redeclare=False)] == ["converter"]
    assert [s for _, s in sorts("120/240", "48 dc", is_load=True, may_redeclare=False)] == ["converter"]


@pytest.mark.parametrize("basis", ["us-2023", "iec", None])
def test_the_readings_of_a_meter_are_those_of_the_system_they_name(basis: str | None) -> None:
    assert any(notation.startswith("400Y") for notation, _ in readings_under(basis)) == (basis != "us-2023")
    for notation, words in readings_under(basis):
        for _, _, volts in source_system(parse_voltage(notation), frequency_hz=60.0).pair_voltages():
            assert f"{volts:g}" in words


# --- on a model


def test_the_device_gets_its_poles_and_the_lightest_legs() -> None:
    text = BOARD + "load  EV-1  480 1ph  7.2 kW\nfeeder MSB -> EV-1  20 A 1p\n"
    solution, after = first(text, "MSB", "EV-1")
    assert "feeder MSB[BC] -> EV-1  20 A 2p" in after, "the boiler sits on A and B"
    assert "10/10/0 kVA, then 10/13.6/3.6 kVA" in solution.reason


def test_a_transformer_is_sized_by_the_main_that_protects_it() -> None:
    """NEC 450.3(B), 240.6(A), from memory: 75 kVA is 208.2 A at 208 V; 125 % is 260 A, next standard 300 A, so a 250 A
    main needs 75 kVA (45 kVA allows 175 A). Its primary is 90.2 A at 480 V: 112.8 A, next standard 125 A."""
    text = (
        BOARD
        + "panel LP-1 208Y/120  bus 400 A, main 250 A, rated 10 kA\n"
        + "feeder MSB -> LP-1  250 A 3p  3x250kcmil + N 250kcmil + G #2 Cu THWN-2\n"
    )
    solution, after = first(text, "MSB", "LP-1")
    assert solution.family == "three-phase"
    assert "480 3ph -> 208Y/120 75 kVA" in after
    assert "feeder MSB         -> TX-1    125 A 3p" in after
    assert "feeder TX-1 -> LP-1  3x250kcmil" in after, "its own main protects the run, as a claim says"
    assert "claim tap-25ft" in after
    assert not any(word in after.split("transformer")[1].split("//")[0] for word in (" z ", "x/r", " m "))


def test_a_board_without_a_main_gets_one_and_the_size_follows_its_load() -> None:
    """9.4 kVA stated, 4.75 kVA of it on one half: 10 kVA would be 95 % full and 15 kVA is 63 %; 62.5 A at 240 V, 125 %
    is 78.1 A, next standard 80 A (NEC 450.3(B))."""
    text = BOARD + (
        "panel WET 120/240  bus 125 A, rated 10 kA, spaces 12\n"
        '  1    20 A 1p  180 VA count 5 receptacle "Benches"\n  3    20 A 1p  1 kVA lighting "Lamps"\n'
        '  2,4  40 A 2p  7.5 kW heating "Oven"\n'
    )
    solution, after = first(text, "MSB", "WET")
    assert load_below(model(text).view, "WET").va == pytest.approx(9400)
    assert "480 1ph -> 120/240  15 kVA" in after
    assert "main 80 A" in after
    assert "feeder TX-1        -> WET" in after
    assert solution.left
    words = {item.text: item.known for item in solution.checklist}
    assert words["a neutral is available"]
    assert not words["what z does its nameplate give?"]


def test_wires_of_a_new_line_come_from_the_tables() -> None:
    """NEC 310.16: #3 Cu carries 100 A at 75 degC, and 250.122 asks for a #8 ground behind 100 A (both from memory)."""
    text = BOARD + "panel LP-1 480Y/277  bus 125 A, main 100 A, rated 42 kA\n"
    found = diagnose(model(text).view, "MSB", model(text).model.equipment["LP-1"])
    assert found.works
    _, after = first(text, "MSB", "LP-1")
    assert "feeder MSB         -> LP-1    100 A 3p   3#3 + N #3 + G #8 Cu THWN-2" in after


def test_nothing_is_moved_to_a_board_that_it_would_overload() -> None:
    small = (
        "panel SP 208Y/120  bus 100 A, main {} A\nfeeder TX -> SP\n"
        "transformer TX 480 3ph -> 208Y/120  112.5 kVA, z 4 %\nfeeder MSB -> TX 175 A 3p\n"
    )
    text = BOARD + small + "load OVEN 208 3ph  20 kVA\nfeeder MSB -> OVEN  70 A 3p\n"
    assert solve(model(text.format(60)).view, "MSB", "OVEN")[0].title.startswith("Feed `OVEN` from `SP`")
    assert all("from `SP`" not in s.title for s in solve(model(text.format(45)).view, "MSB", "OVEN"))


def test_a_heater_is_not_put_on_twice_its_voltage_by_a_new_declaration() -> None:
    text = BOARD + 'panel WET 120/240  bus 125 A, main 100 A\n  1,3  30 A 2p  4 kW heating "Oven"\nfeeder MSB -> WET\n'
    assert "redeclare" not in [s.family for s in solve(model(text).view, "MSB", "WET")]


def test_what_is_below_an_unknown_supply_is_mended_at_the_first_trouble() -> None:
    text = (
        BOARD
        + "panel A-1 208Y/120  bus 225 A, main 100 A\nfeeder MSB -> A-1\n"
        + "load B-1 120 1ph  1 kW\nfeeder A-1 -> B-1  20 A 1p\n"
    )
    view = model(text).view
    found = diagnose(view, "A-1", view.model.equipment["B-1"])
    assert found.unknown
    assert found.at == "MSB -> A-1"
    solution, after = first(text, "A-1", "B-1")
    assert solution.family == "three-phase"
    again = model(after).view
    assert diagnose(again, "A-1", again.model.equipment["B-1"]).works


def test_a_second_supply_from_elsewhere_takes_the_place_of_the_first() -> None:
    text = BOARD + "panel LP-1 480Y/277  bus 125 A, main 100 A\nfeeder MSB -> LP-1  100 A 3p\n"
    text += "switchboard SB-2 480Y/277  bus 400 A\nfeeder MSB -> SB-2  400 A 3p\n"
    view = model(text).view
    found = diagnose(view, "SB-2", view.model.equipment["LP-1"])
    assert found.refusal is not None
    assert found.refusal.cause is Cause.SECOND_SUPPLY
    _, after = first(text, "SB-2", "LP-1")
    assert "feeder SB-2 -> LP-1  100 A 3p" in after
    assert "MSB         -> LP-1" not in after


def test_iec_practice_gets_a_vector_group_and_no_us_wires() -> None:
    text = (
        BOARD.replace("us-2023", "iec")
        .replace("60 Hz", "50 Hz")
        .replace("480Y/277", "400Y/230")
        .replace("480 1ph", "400 1ph")
    )
    text += "panel V-1 208Y/120  bus 100 A, incomer 100 A\n"
    _, after = first(text, "MSB", "V-1")
    assert "400 3ph -> 208Y/120 31.5 kVA, connection Dyn11" in after
    assert "THWN" not in after.split("V-1", 1)[1]
    assert "claim" not in after


def test_iec_wires_take_the_method_of_the_boards_other_lines_as_an_assumption() -> None:
    """63 A: 10 mm2 carry 71 A, 6 mm2 only 52 A (IEC 60364-5-52 Table B.52.5, method C, copper, XLPE; from memory)."""
    text = BOARD.replace("us-2023", "iec").replace("60 Hz", "50 Hz").replace("480Y/277", "400Y/230")
    text = text.replace("480 1ph", "400 1ph")
    beside = "panel V-2 400Y/230  bus 100 A, incomer 63 A\nfeeder MSB -> V-2  63 A 3p  5G16mm2 Cu XLPE  20 m method C\n"
    _, after = first(text + "panel V-1 208Y/120  bus 100 A, incomer 100 A\n" + beside, "MSB", "V-1")
    line = next(row for row in after.splitlines() if row.startswith("feeder MSB") and "-> TX-1" in row)
    assert "63 A 3p" in line and "4G10mm2 Cu XLPE assume method C" in line


def test_quick_fixes_are_those_of_the_search_and_cheap() -> None:
    text = BOARD + "panel WET 120/240  bus 125 A, main 100 A\nfeeder MSB -> WET  100 A 2p\n"
    analysis = model(text)
    feeder = analysis.model.feeders["MSB -> WET"]
    fixes = repairs_for(analysis.view, feeder)
    assert "transformer" in fixes[0].title
    after = model(mended(text, fixes[0])).view
    assert after.state("WET") is not None
    assert diagnose(after, "TX-1", after.model.equipment["WET"]).works
    start = time.thread_time()
    for _ in range(20):
        repairs_for(analysis.view, feeder)
    assert (time.thread_time() - start) / 20 < 0.05


def test_trying_leaves_the_model_as_it_was() -> None:
    text = BOARD + "panel WET 120/240  bus 125 A, main 100 A\nfeeder MSB -> WET  100 A 2p\n"
    analysis = model(text)
    trial = Trial(analysis.view)
    before = trial.before
    solve(analysis.view, "MSB", "WET")
    assert analysis.files.get("/m/site.wye").text == text
    assert trial.before == before == Trial(analysis.view).before


def test_tags_follow_the_model() -> None:
    assert new_tag(model(BOARD).model, "transformer", "WET") == "TX-1"
    assert new_tag(model(BOARD + "transformer T-7 480 3ph -> 208Y/120\n").model, "transformer", "WET") == "T-8"
    assert new_tag(model(BOARD + "panel tX-1 480Y/277\n").model, "transformer", "WET") == "TX-2"
    named = model(BOARD + "transformer T-LAB 480 3ph -> 208Y/120\n").model
    assert new_tag(named, "transformer", "WET") == "T-WET"
    assert [spelled(n) for n in ("LP-1", "2A", "PUMP ROOM", "Küche")] == ["LP-1", '"2A"', '"PUMP ROOM"', "Küche"]


def test_loads_of_a_board_are_shared_among_the_legs_they_take() -> None:
    text = (
        BOARD
        + "panel LP 208Y/120  spaces 12\n  1  20 A 1p  1 kVA lighting\n"
        + "  4,6  20 A 2p  3 kVA heating\n  7  20 A 1p  spare\n"
    )
    text += "transformer TX 480 3ph -> 208Y/120  45 kVA\nfeeder MSB -> TX  70 A 3p\nfeeder TX -> LP\n"
    # positions 4 and 6 of two columns are on B and C
    assert leg_loads(model(text).view, "LP") == pytest.approx({"A": 1000, "B": 1500, "C": 1500})


def test_scenarios_follow_a_feeder_that_is_renamed_by_its_ends() -> None:
    text = BOARD + "panel WET 120/240  bus 125 A, main 100 A\nfeeder MSB -> WET  100 A 2p\n"
    text += "scenario Night\n  open MSB -> WET\nexpect MSB -> WET drop <= 2 %\n"
    _, after = first(text, "MSB", "WET")
    assert "open TX-1 -> WET" in after
    assert "expect TX-1 -> WET drop <= 2 %" in after


def test_a_quick_fix_in_a_large_model_does_not_add_up_the_whole_of_it() -> None:
    rows = [
        f"panel P-{i} 480Y/277  bus 100 A\n  1  20 A 1p  1 kVA lighting\nfeeder MSB -> P-{i}  100 A 3p\n"
        for i in range(3000)
    ]
    analysis = model(BOARD + "".join(rows) + "panel WET 120/240  bus 125 A, main 100 A\nfeeder MSB -> WET  100 A 2p\n")
    feeder = analysis.model.feeders["MSB -> WET"]
    start = time.thread_time()
    assert repairs_for(analysis.view, feeder)
    assert time.thread_time() - start < 0.1


def test_what_is_inserted_stands_in_the_order_of_power_above_the_line_and_its_comment() -> None:
    text = BOARD + "panel LP-1 208Y/120  bus 125 A, main 100 A\n/// To the loft.\nfeeder MSB -> LP-1  100 A 3p  30 m\n"
    after = first(text, "MSB", "LP-1")[1].splitlines()
    at = next(i for i, line in enumerate(after) if line.startswith("transformer"))
    assert after[at + 1].split()[1:4] == ["MSB", "->", "TX-1"]
    assert after[at + 2] == "/// To the loft."
    assert after[at + 3].split()[1:4] == ["TX-1", "->", "LP-1"]


def test_another_board_is_not_offered_with_another_voltage() -> None:
    text = BOARD + (
        "transformer TX-1 480 3ph -> 208Y/120  75 kVA, z 4 %\nfeeder MSB -> TX-1  125 A 3p\n"
        "panel LP-1 208Y/120  bus 225 A, main 225 A\nfeeder TX-1 -> LP-1\n"
        "panel WS-1 120/240  bus 125 A, main lugs\nfeeder LP-1 -> WS-1  100 A 2p\n"
    )
    titles = [s.title for s in solve(model(text).view, "LP-1", "WS-1")]
    assert titles and not any("480Y/277" in title for title in titles)


TWICE = """transformer TX-1 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2
feeder MSB -> TX-1  125 A 3p  3#1 + G #6 Cu  9 m
panel LP-1 208Y/120  bus 225 A, main 200 A, rated 10 kA, spaces 42
feeder TX-1 -> LP-1  200 A 3p  3#3/0 + N #3/0 + G #4 Cu  5 m
feeder MSB -> LP-1  100 A 3p  3#3 + G #8 Cu  20 m
"""


def test_a_wrong_feeder_beside_a_right_one_is_left_out_and_nothing_else_is_opened() -> None:
    view = model(BOARD + TWICE).view
    quick = [fix.title for fix in repairs_for(view, view.model.feeders["MSB -> LP-1"])]
    assert not any("open" in title or "transfer" in title for title in quick)
    solution, text = first(BOARD + TWICE, "MSB", "LP-1")
    assert "MSB         -> LP-1" not in text and "MSB -> LP-1" not in text
    assert solution.title == "Leave `MSB -> LP-1` out: `TX-1` feeds `LP-1` already"
    assert [f.rule for f in model(text).findings() if f.severity is Severity.ERROR] == []


def test_a_feeder_to_itself_does_not_hide_the_ways_to_feed_a_board() -> None:
    text = BOARD + "panel LP-1 208Y/120  bus 100 A, main 100 A\nfeeder MSB -> LP-1  100 A 3p  20 m\n"
    ring = text + "feeder LP-1 -> LP-1  60 A 3p\n"
    assert [s.title for s in solve(model(ring).view, "MSB", "LP-1")] == [
        s.title for s in solve(model(text).view, "MSB", "LP-1")
    ]


def test_a_transformer_for_a_motor_carries_the_current_that_the_table_gives_it() -> None:
    motor = "motor M-3 208 3ph  7.5 hp\nfeeder MSB -> M-3  30 A 3p  3#10 + G #10 Cu  20 m\n"
    view = model(BOARD + motor).view
    # NEC table 430.250: 24.2 A at 208 V, 8.7 kVA; the shaft alone would be 5.6 kW.
    assert load_below(view, "M-3").va == pytest.approx(24.2 * 208 * 3**0.5)
    assert [f.title for f in repairs_for(view, view.model.feeders["MSB -> M-3"])] == [
        "Feed `M-3` through a new 9 kVA three-phase transformer `TX-1`, 480 3ph to 208Y/120"
    ]
