"""One cause, one finding: what hangs below something that cannot work is not blamed for it."""

from __future__ import annotations

import pytest
from rule_models import analysis_of, check, rules_in

from wyeline_linter.rules.emergency import _ATS, _DP, _EL, _PROJECT, _SET

WYE = "utility UTIL 480Y/277  fault 14 kA, x/r 4\nfeeder UTIL -> MSB\nswitchboard MSB 480Y/277  bus 400 A\n"
BELOW = """panel LP-2 208Y/120  bus 100 A
  1  20 A 1p  1 kVA lighting  "Stairs"
feeder LP-1 -> LP-2  100 A 3p
motor P-1 208 3ph  5 hp
feeder LP-2 -> P-1  40 A 3p
"""


@pytest.mark.parametrize(
    ("head", "expected"),
    [
        (WYE + "panel LP-1 208Y/120  bus 125 A\nfeeder MSB -> LP-1  100 A 3p\n", ["leg-voltage-mismatch"]),
        (WYE + "panel LP-1 208Y/120  bus 125 A\n", ["unfed-equipment"]),
        (
            WYE + "transformer TX-1 480 3ph  45 kVA, z 4.2 %\nfeeder MSB -> TX-1  70 A 3p\nfeeder TX-1 -> LP-1\n"
            "panel LP-1 208Y/120  bus 125 A\n",
            ["upstream-system-unknown"],
        ),
        (
            WYE + "transformer TX-1 480 1ph -> 208Y/120  45 kVA, z 4.2 %\nfeeder MSB[AB] -> TX-1  70 A 2p\n"
            "feeder TX-1 -> LP-1\npanel LP-1 208Y/120  bus 125 A\n",
            ["winding-count-misfit"],
        ),
        (WYE + "feeder MSP -> LP-1  100 A 3p\npanel LP-1 208Y/120  bus 125 A\n", ["dangling-reference"]),
        (WYE + "panel LP-1 PLANT-LV  bus 125 A\nfeeder MSB -> LP-1  100 A 3p\n", ["dangling-reference"]),
        (WYE.replace("480Y/277  fault", "480/277  fault") + "panel LP-1  bus 125 A\nfeeder MSB -> LP-1\n",
         ["voltage-notation-unclear"]),
    ],
)  # fmt: skip
def test_only_the_first_of_a_chain_is_told(head: str, expected: list[str]) -> None:
    below = BELOW
    if "PLANT-LV" in head or "480/277" in head:
        below = ""
    assert rules_in(head + below) == expected


def test_both_names_and_where_the_voltage_is_set_are_told() -> None:
    (finding,) = check(WYE + "panel LP-1 208Y/120  bus 125 A\nfeeder MSB -> LP-1  100 A 3p\n")
    assert finding.message == "`LP-1` wants 208Y/120; `MSB` gives 480Y/277"
    assert finding.found.startswith("`MSB`: 480 V between any two") and finding.needed.startswith("`LP-1`: 208 V")
    assert [r.place.row for r in finding.related] == [0]
    assert finding.fixes


def test_a_refusal_reads_the_same_whatever_feeds_the_supply() -> None:
    text = WYE + "junction J-1\nfeeder MSB -> J-1\npanel LP-1 208Y/120  bus 125 A\nfeeder J-1 -> LP-1  100 A 3p\n"
    (finding,) = check(text)
    assert finding.rule == "leg-voltage-mismatch"
    assert [r.place.row for r in finding.related] == [0]


def test_an_inverter_that_follows_the_grid_is_no_second_supply() -> None:
    text = WYE + "inverter PV-1 480 3ph  50 kW, grid-following\nfeeder PV-1 -> MSB  100 A 3p\n"
    assert rules_in(text) == []


def test_a_transfer_switch_keeps_two_sources_apart() -> None:
    text = WYE + (
        "generator GEN-1 480Y/277  60 kVA\ntransfer ATS-1  100 A 3p\nfeeder MSB -> ATS-1.normal  100 A 3p\n"
        "feeder GEN-1 -> ATS-1.emergency  100 A 3p\npanel EP-1 480Y/277  bus 125 A\nfeeder ATS-1 -> EP-1\n"
    )
    assert rules_in(text) == []
    assert rules_in(text + "feeder W-2: MSB -> EP-1  100 A 3p\n") == ["supply-loop"]
    tied = text + 'feeder W-2: MSB -> EP-1  100 A 3p, normally-open\nscenario "Round"\n  close W-2\n'
    assert rules_in(tied) == ["supply-loop"]
    assert rules_in(tied + "  open MSB -> ATS-1.normal\n  open ATS-1 -> EP-1\n") == []


def test_a_second_supply_that_cannot_feed_the_board_is_told_as_that() -> None:
    text = WYE + "utility U-2 240/120 3ph  fault 9 kA, x/r 4\nfeeder U-2 -> MSB  200 A 3p\n"
    assert rules_in(text) == ["leg-voltage-mismatch"]


def test_a_feeder_to_itself_and_a_leg_that_there_is_not_are_told_once() -> None:
    panel = 'panel LP-1 480Y/277  bus 125 A, main 100 A\n  F1[L4]  20 A 1p  1 kW  lighting  "Stairs, north"\n'
    text = 'project "Mill"\n  basis us-2023\n  revision "A"\n' + WYE + panel + "feeder MSB -> LP-1  100 A 3p\n"
    assert rules_in(text) == ["unreadable-line"]
    ring = text.replace("[L4]", "[A]") + "feeder LP-1 -> LP-1  60 A 3p  3#12 + G #10 Cu  8 m\n"
    assert rules_in(ring) == ["feeder-to-itself"]


def test_wires_of_a_service_bring_no_ground_where_the_neutral_is_bonded() -> None:
    """NEC 250.24(C), 250.142(A): on the supply side the neutral is the way back, device at the utility's end or not."""
    text = (
        'project "Mill"\n  basis us-2023\n  revision "A"\nutility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\n'
        "switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 22 kA, lug-temp 75 degC, service-equipment\n"
        "feeder UTIL -> MSB  400 A 3p  3x600kcmil + N 600kcmil Cu THWN-2  12 m  in 4 inch PVC-40\n"
    )
    assert "equipment-ground-missing" not in rules_in(text)
    assert "equipment-ground-missing" in rules_in(text.replace(", service-equipment", ""))


def test_a_ground_beside_the_neutral_of_a_service_is_told_and_never_taken_out_by_a_fix() -> None:
    """NEC 250.6, 250.142(A), from memory: bonded at both ends, the ground carries neutral current all the time."""
    rule = "ground-beside-service-neutral"
    text = (
        'project "Mill"\n  basis us-2023\n  revision "A"\nutility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\n'
        "switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 22 kA, lug-temp 75 degC, service-equipment\n"
        "feeder UTIL -> MSB  3x600kcmil + N 600kcmil + G #1/0 Cu THWN-2  12 m  in 4 inch PVC-40\n"
    )
    assert rule in rules_in(text)
    assert not next(finding for finding in check(text) if finding.rule == rule).fixes
    for other in (
        text.replace(" + G #1/0", ""),
        text.replace(" + N 600kcmil", ""),  # no neutral that could share its current
        text.replace(", service-equipment", ""),  # nobody says where the bond is
        text.replace("basis us-2023", "basis iec"),
        text.replace("UTIL -> MSB  3", "UTIL -> MSB  400 A 3p  3"),  # a feeder with a device, bonded ahead of it
    ):
        assert rule not in rules_in(other), other


def test_a_transformer_that_cannot_be_is_asked_for_no_neutral() -> None:
    unit = "transformer TX-3 480Y/277 -> 120/240  25 kVA, z 3 %, x/r 2\n"
    assert rules_in(WYE + unit + "feeder MSB -> TX-3  60 A 3p  3#6 + G #10 Cu  15 m\n") == ["winding-count-misfit"]


def test_the_reserve_for_continuous_load_is_told_where_it_counts() -> None:
    head = "utility GRID 400Y/230  fault 8 kA, fault-min 4 kA, r/x 0.5\npanel HV 400Y/230  bus 63 A, rated 10 kA\n"
    mixer = '  F3  16 A 3p curve C  14 kW  heating  "Mixer, bakehouse"\n'
    feeder = "feeder GRID -> HV  63 A 3p  4x16mm2 + PE 16mm2 Cu PVC  20 m, method C\n"
    text = 'project "Mill"\n  basis iec\n  frequency 50 Hz, revision "A"\n' + head + mixer + feeder
    (finding,) = (f for f in check(text) if f.rule == "circuit-load-high")
    assert "125" not in finding.why and "US" not in finding.why


def test_a_board_that_nothing_feeds_is_offered_boards_and_no_generator() -> None:
    text = WYE + "generator AGG 480Y/277  60 kVA\npanel LP-1 480Y/277  bus 125 A\n"
    (finding,) = (f for f in check(text) if f.subject == "LP-1")
    assert [fix.title.split(" (")[0] for fix in finding.fixes] == ["Feed it from `MSB`"]


def test_a_feeder_written_twice_is_told_once() -> None:
    twice = "panel LP-1 480Y/277  bus 125 A\nfeeder MSB -> LP-1  100 A 3p\nfeeder MSB -> LP-1  100 A 3p\n"
    assert rules_in(WYE + twice) == ["feeder-label-missing"]
    labelled = twice.replace("feeder MSB", "feeder F-2: MSB", 1)
    assert rules_in(WYE + labelled) == ["supply-loop"]


def test_a_name_of_two_words_is_taken_for_a_system_only_where_one_is_called_so() -> None:
    (finding,) = check(WYE + "panel PUMP ROOM  bus 125 A\nfeeder MSB -> PUMP  100 A 3p\n")
    assert finding.rule == "dangling-reference" and '`"PUMP ROOM"`' in finding.message
    assert [edit.text for edit in finding.fixes[0].edits] == ['"PUMP ROOM"']
    system = "system ROOM 480Y/277\npanel PUMP ROOM  bus 125 A\nfeeder MSB -> PUMP  100 A 3p\n"
    assert rules_in(WYE + system) == []


@pytest.mark.parametrize(
    ("panel", "expected"),
    [
        ("panel LP-1 480 1ph  bus 125 A\n  1  20 A 1p  1 kVA lighting  \"Stage\"\nfeeder MSB[AB] -> LP-1  100 A 2p\n",
         "one-pole-on-two-live-wires"),
        ("panel LP-1 480 3ph  bus 125 A\n  1  20 A 1p  1 kVA lighting  \"Stage\"\nfeeder MSB -> LP-1  100 A 3p\n",
         "neutral-load-on-delta"),
    ],
)  # fmt: skip
def test_a_circuit_to_neutral_is_told_where_the_board_itself_says_that_it_has_none(panel: str, expected: str) -> None:
    assert rules_in(WYE + panel) == [expected]


def test_unlike_inputs_of_a_transfer_switch_are_told_once_in_every_state() -> None:
    rest = """generator GEN 208Y/120  60 kW, pf 0.8, subtransient 12 %, x0 5 %, x/r 15, sustained 3 pu
transfer ATS-1  100 A 3p
panel EM-1 480Y/277  bus 100 A
feeder MSB -> ATS-1.normal  100 A 3p
feeder GEN -> ATS-1.emergency  100 A 3p
feeder ATS-1 -> EM-1
scenario "Mains lost"
  off UTIL
  switch ATS-1.emergency
"""
    told = [f for f in analysis_of(WYE + rest).all_findings() if f.severity.word == "error"]
    assert [f.rule for f in told] == ["transfer-inputs-differ"]
    assert told[0].found == "480 V and 208 V between two live wires"


@pytest.mark.parametrize("written", ["208Y120", "208Y", "208y120V"])
def test_a_wye_without_its_stroke_is_told_as_a_voltage(written: str) -> None:
    (finding,) = check(WYE + f"transformer TX-1 480 3ph -> {written}  45 kVA\nfeeder MSB -> TX-1  70 A 3p\n")
    assert finding.rule in ("dangling-reference", "known-slip") and "`208Y/120`" in finding.message
    assert [edit.text for edit in finding.fixes[0].edits] == ["208Y/120"]


def test_a_port_that_is_not_there_does_not_make_emergency_load_lack_its_second_source() -> None:
    text = _PROJECT + _DP + _SET.format(kva=40) + _ATS.replace(", emergency\n", "\n") + _EL
    (finding,) = analysis_of(text.replace("ATS-1.emergency", "ATS-1.emergncy")).all_findings()
    assert finding.rule == "port-unknown"
    assert finding.fixes[0].title == "Write `ATS-1.emergency`", "the nearest first"
    assert analysis_of(text).all_findings() == []
    alone = text.replace("GEN-1 -> ATS-1.emergency", "DP -> ATS-1.emergency")
    assert "emergency-without-second-source" in {f.rule for f in analysis_of(alone).all_findings()}


def test_two_rows_of_one_position_are_told_whatever_either_says_of_its_load() -> None:
    """One row states a power that alone tells nothing, the other needs no load: a dwelling counts it by its floor."""
    board = "panel HOUSE 120/240  bus 200 A, main 200 A, spaces 40\n  dwelling standard, floor-area 1800 ft2\n"
    rows = '  11  20 A 1p  1.4 kW  motor  "Pump"\n  11  15 A 1p  receptacle  "Bedrooms"\n'
    for some in (rows, rows.replace("1.4 kW  motor", "1.4 kVA kitchen")):
        text = 'wye 1\nproject "P"\n  basis us-2023\nutility U 120/240  fault 10 kA\n' + board + some
        assert "position-occupied" in rules_in(text + "feeder U -> HOUSE  2#2/0 + N #2/0 Cu THWN-2  20 ft\n")
