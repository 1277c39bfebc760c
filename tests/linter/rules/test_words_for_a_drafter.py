"""What findings say to somebody who is no electrical expert: the cause in one short line, and a change that helps."""

from __future__ import annotations

import pytest
from rule_models import analysis_of, check

from wyeline_linter.findings import Finding
from wyeline_linter.fixing import apply_edits

US = 'wye 1\nproject "Boat shed"\n  basis us-2023\n  frequency 60 Hz, ambient 30 degC, revision "A"\n'
IEC = 'wye 1\nproject "Boat shed"\n  basis iec\n  frequency 50 Hz, ambient 30 degC, revision "A"\n'
GRID = "utility GRID 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\n"
MSB = (
    GRID + "switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 22 kA, lug-temp 75 degC\n"
    "feeder GRID -> MSB  2 sets 3#3/0 + N #3/0 Cu THWN-2  12 m  in 2 inch PVC-40\n"
)
LP = "panel LP-1 480Y/277  bus 225 A, main 100 A, rated 22 kA, spaces 24, lug-temp 75 degC\n"


def gaps(text: str) -> list[Finding]:
    analysis = analysis_of(text)
    return [*analysis.findings(), *analysis.study_findings()]


def test_what_a_feeder_cannot_do_reads_in_one_short_line() -> None:
    # Lists of findings in editors cut lines off near 90 letters (seen in VS Code at 1400 pixels).
    for voltage in ("208Y/120", "120/240", "600Y/347"):
        found = check(US + MSB + LP.replace("480Y/277", voltage) + "feeder MSB -> LP-1  100 A 3p\n")
        refused = [f for f in found if f.subject == "MSB -> LP-1" and f.severity.name == "ERROR"]
        assert refused and all(len(f.message) <= 90 for f in refused), [f.message for f in refused]
        assert refused[0].message == f"`LP-1` wants {voltage}; `MSB` gives 480Y/277"


def test_systems_that_read_alike_are_told_by_the_reason() -> None:
    text = US + MSB + "system EU 480Y/277  frequency 50 Hz\npanel SP-1 EU  bus 100 A\nfeeder MSB -> SP-1  20 A 3p\n"
    (found,) = [f for f in check(text) if f.rule == "frequency-or-dc-mismatch"]
    assert found.message.startswith("`MSB` cannot feed `SP-1`: 50 Hz equipment on 60 Hz")


def test_a_feeder_without_wires_is_told_once() -> None:
    # One cause, one finding: with a route the size that would do is told, without one that all of it is missing.
    routed = [
        f for f in gaps(US + MSB + LP + "feeder MSB -> LP-1  100 A 3p  20 m in EMT\n") if f.subject == "MSB -> LP-1"
    ]
    assert [f.rule for f in routed] == ["wires-not-sized"]
    bare = [f for f in gaps(US + MSB + LP + "feeder MSB -> LP-1  100 A 3p\n") if f.subject == "MSB -> LP-1"]
    assert [f.rule for f in bare] == ["impedance-missing"]
    assert bare[0].message == "`MSB -> LP-1` has neither wires nor a length yet"
    assert "`30 m`" in bare[0].change
    with_wires = US + MSB + LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2 in 1-1/4 inch EMT\n"
    assert [f.rule for f in gaps(with_wires) if f.subject == "MSB -> LP-1"] == ["length-missing"]


def test_a_route_without_a_length_lacks_two_things() -> None:
    text = US + MSB + LP + "feeder MSB -> LP-1  100 A 3p  in EMT\n"
    assert sorted(f.rule for f in gaps(text) if f.subject == "MSB -> LP-1") == ["length-missing", "wires-not-sized"]


def test_what_is_written_of_a_route_is_not_asked_for_again() -> None:
    site = IEC + "utility NET 400Y/230  fault 12 kA, fault-min 8 kA, r/x 0.3, earthing TN-S\n"
    site += "panel UV-1 400Y/230  bus 250 A, main 125 A, rated 15 kA, spaces 24\n"
    buried = site + "feeder NET -> UV-1  4x50mm2 + PE 25mm2 Cu XLPE  20 m method D1, buried 0.7 m\n"
    (found,) = [f for f in check(buried) if f.rule == "installation-method-missing"]
    assert "soil" in found.found and "method" not in found.change and "soil 1.0 K.m/W" in found.change
    bare = site + "feeder NET -> UV-1  4x50mm2 + PE 25mm2 Cu XLPE  20 m\n"
    (found,) = [f for f in check(bare) if f.rule == "installation-method-missing"]
    assert "method C" in found.change and "soil" not in found.change


def test_legs_beside_the_high_one_are_offered_further_up() -> None:
    # NEC 110.15 and 408.3(E): the leg with the higher voltage to ground, here 240 V x sqrt(3)/2 = 208 V. A meter passes
    # on what it gets, so the choice is that of the feeder before it.
    text = (
        US + "utility POLE 240/120 3ph  fault 10 kA, fault-min 7 kA, x/r 3\n"
        "switchboard SVC 240/120 3ph  bus 400 A, main 400 A, rated 22 kA, lug-temp 75 degC\n"
        "meter M-1\n"
        "panel FL-1 120/240  bus 125 A, main 100 A, rated 10 kA, spaces 20\n"
        "feeder POLE -> SVC  3x500kcmil + N 500kcmil Cu THWN-2  10 m  in 3 inch PVC-40\n"
        "feeder SVC[AB] -> M-1  100 A 2p  2#2 + N #2 + G #8 Cu THWN-2  3 m  in 1-1/4 inch EMT\n"
        "feeder M-1 -> FL-1  2#2 + N #2 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n"
    )
    (found,) = [f for f in check(text) if f.subject == "M-1 -> FL-1"]
    assert found.rule == "high-leg-to-neutral" and "208 V to neutral" in found.why
    fix = found.fixes[0]
    assert fix.title == "Take legs A C instead of A B of `SVC` at `SVC -> M-1`"
    mended = apply_edits(text, fix.edits)
    assert "feeder SVC[AC] -> M-1 " in " ".join(mended.split())
    assert [f for f in check(mended) if f.severity.name == "ERROR"] == []
    beside = text + "panel FL-2 120/240  bus 125 A, main 100 A, rated 10 kA\nfeeder M-1 -> FL-2\n"
    (found,) = [f for f in check(beside) if f.subject == "M-1 -> FL-1"]
    assert not any("SVC -> M-1" in f.title for f in found.fixes), "another board hangs on these legs"


def test_a_board_of_that_voltage_is_offered_in_the_editor_too() -> None:
    text = (
        US + MSB + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 2\n"
        "panel DP 208Y/120  bus 225 A, main 150 A, rated 22 kA, spaces 24, lug-temp 75 degC\n"
        "motor P-1 200 3ph  5 hp\n"
        "feeder MSB -> TX-1  70 A 3p  3#4 + G #8 Cu THWN-2  10 m  in 1-1/4 inch EMT\n"
        "feeder TX-1 -> DP  3#1/0 + N #1/0 + G #6 Cu THWN-2  3 m  in 2 inch EMT\n  claim tap-25ft\n"
        "feeder MSB -> P-1  30 A 3p\n"
    )
    (found,) = [f for f in check(text) if f.subject == "MSB -> P-1"]
    move = next(f for f in found.fixes if f.title.startswith("Feed `P-1` from `DP` instead of `MSB`"))
    assert [
        f for f in check(apply_edits(text, move.edits)) if f.subject == "DP -> P-1" and f.severity.name == "ERROR"
    ] == []
    assert any("transformer" in f.title for f in found.fixes)
    assert "check wires" not in apply_edits(text, move.edits), "the line has none"
    sized = text.replace("MSB -> P-1  30 A 3p", "MSB -> P-1  30 A 3p  3#10 + G #10 Cu THWN-2  40 m in 3/4 inch EMT")
    (found,) = [f for f in check(sized) if f.subject == "MSB -> P-1"]
    moved = apply_edits(sized, found.fixes[0].edits)
    assert found.fixes[0].title.startswith("Feed `P-1` from `DP`") and "40 m" in moved
    assert "// check wires, length and raceway: they are of the run from MSB" in moved, "a quick fix shows nothing else"
    assert not [f for f in check(moved) if f.severity.name == "ERROR" and f.subject == "DP -> P-1"]


def test_no_other_board_is_offered_where_the_declaration_would_have_to_change_too() -> None:
    low = GRID.replace("480Y/277", "208Y/120")
    text = (
        US + low + "switchboard MSB 208Y/120  bus 400 A, main 400 A, rated 22 kA, lug-temp 75 degC\n"
        "panel LP-3 208Y/120  bus 225 A, main 100 A, rated 22 kA, spaces 24\n"
        "panel LP-2 120/240  bus 225 A, main 100 A, rated 22 kA, spaces 24\n"
        "feeder GRID -> MSB  2 sets 3#3/0 + N #3/0 Cu THWN-2  12 m  in 2 inch PVC-40\n"
        "feeder MSB -> LP-3  100 A 3p\nfeeder MSB -> LP-2  100 A 2p\n"
    )
    (found,) = [f for f in check(text) if f.subject == "MSB -> LP-2" and f.severity.name == "ERROR"]
    titles = [f.title for f in found.fixes]
    assert titles[0].startswith("Declare `LP-2` as 208Y/120 1ph") and any("transformer" in t for t in titles)
    assert not any("instead of" in t for t in titles), titles


def test_units_are_those_of_the_place() -> None:
    motor = "motor P-{n} 400 3ph  30 kW, pf 0.86, eff 93 %\n"
    motor += "feeder HV -> P-{n}  80 A 3p pickup 800 A  4G25mm2 Cu XLPE  35 m method C\n"
    site = (
        IEC + "utility NET 400Y/230  fault 12 kA, fault-min 8 kA, r/x 0.3, earthing TN-S\n"
        "switchboard HV 400Y/230  bus 400 A, main 250 A, rated 25 kA\n"
        "feeder NET -> HV  4x120mm2 + PE 70mm2 Cu XLPE  20 m method C\n" + motor.format(n=1) + motor.format(n=2)
    )
    (found,) = [f for f in gaps(site) if f.rule == "motor-contribution-missing"]
    assert "60 kW" in found.message and " hp " not in found.message


def test_a_system_of_which_no_earthing_is_said_asks_for_it_first() -> None:
    site = IEC + "utility NET 400Y/230  fault 12 kA, fault-min 8 kA, r/x 0.3, earthing TN-S\n"
    site += "switchboard HV 400Y/230  bus 400 A, main 250 A, rated 25 kA\nfeeder NET -> HV\n"
    site += "transformer TC-1 400 1ph -> 230 1ph  10 kVA, z 5 %, x/r 1\nfeeder HV[L1 L2] -> TC-1  40 A 2p\n"
    site += "panel CP-1 230 1ph  bus 63 A, main 40 A, rated 6 kA\nfeeder TC-1 -> CP-1\n"
    (found,) = [f for f in check(site) if f.rule == "earth-fault-indicator-missing"]
    assert found.change.startswith("If it is earthed, write how at `TC-1`, as in `earthing TN-S`; if not, ")
    stated = site.replace("230 1ph  10 kVA,", "230 1ph  10 kVA, ground none,")
    (found,) = [f for f in check(stated) if f.rule == "earth-fault-indicator-missing"]
    assert found.change.startswith("Provide a detector")


def test_figures_of_one_finding_agree() -> None:
    text = (
        US + "utility POLE 240/120 3ph  fault 10 kA, fault-min 7 kA, x/r 3\n"
        "panel HSE 240/120 3ph  bus 225 A, main 200 A, rated 22 kA, spaces 24, lug-temp 75 degC\n"
        '  1  20 A 1p  1 kVA lighting continuous  "Stairs"  2#12 + G #12 Cu  30 m  in 3/4 inch EMT\n'
        "motor LIFT-1 230 3ph  15 hp\n"
        "feeder POLE -> HSE  3#3/0 + N #3/0 Cu THWN-2  40 m  in 2 inch PVC-40\n"
        "feeder HSE -> LIFT-1  60 A 3p  3#6 + G #10 Cu THWN-2  30 m  in 1 inch EMT\n"
    )
    (found,) = [f for f in gaps(text) if f.rule == "start-dip-high"]
    percent = found.found.split(" %")[0]
    assert f"falls by {percent} %" in found.message


def test_circuits_on_an_emergency_board_may_be_marked_or_moved() -> None:
    text = (
        US + MSB + "transfer ATS-1 100 A 4p, rated 30 kA, emergency\n"
        "feeder MSB -> ATS-1.normal  60 A 3p\nfeeder ATS-1 -> LS-1\n"
        "panel LS-1 480Y/277  bus 100 A, main lugs, rated 22 kA\n"
        '  1  20 A 1p  2 kVA lighting  "Exit ways"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
    )
    (found,) = [f for f in check(text) if f.rule == "emergency-mixed"]
    assert "Move the ordinary circuits" in found.change and "write `emergency` at each of them" in found.change
    marked = text.replace("2 kVA lighting", "2 kVA lighting emergency")
    assert not [f for f in check(marked) if f.rule == "emergency-mixed"]


def test_an_idle_transformer_is_told_with_a_share_that_can_be_checked() -> None:
    text = (
        US + MSB + "transformer TX-1 480 1ph -> 120/240  25 kVA, z 2 %, x/r 2\nfeeder MSB[AB] -> TX-1  70 A 2p\n"
        "panel WET-1 120/240  bus 125 A, main 100 A, rated 10 kA, spaces 24\n"
        '  1  20 A 1p  1.2 kVA  receptacle  "Bench"\n  2,4  30 A 2p  4.5 kW  heating  "Heater"\n'
        "feeder TX-1 -> WET-1\n  claim tap-25ft\n"
    )
    (found,) = [f for f in check(text) if f.rule == "transformer-mostly-idle"]
    assert found.message == f"5.7 kVA of demand on `TX-1` of 25 kVA: {100 * (1.2 + 4.5) / 25:.0f} %"
    # Position 1 and half of 2,4 hang on one half of the winding, which has half of the rating.
    assert f"{100 * (1.2 + 4.5 / 2) / 12.5:.0f} % in its fullest winding" in found.found


@pytest.mark.parametrize(
    ("line", "titles"),
    [
        ("panel LP-1 480Y/277  225 A", ["Write `bus 225 A`", "Write `main 225 A`"]),
        ("panel LP-1 480Y/277  bus 225", ["Write `bus 225 A`"]),
        ("panel LP-1 480/277y277  bus 225 A", ["Leave out `480/277y277`"]),
        ("motor M-1 460  5 hp", ["Write `460 3ph`", "Write `460 1ph`"]),
        ("system SEA 480Y/277, frequency 60", ["Write `frequency 60 Hz`"]),
    ],
)
def test_what_is_offered_for_a_slip_of_the_pen_starts_as_a_sentence_does(line: str, titles: list[str]) -> None:
    offered = [fix.title for found in check(f"wye 1\n{line}\n") for fix in found.fixes]
    assert [title for title in titles if title not in offered] == [], offered
    assert [title for title in offered if title[0].islower()] == []


def test_a_missing_fault_level_is_asked_for_and_no_figure_is_put_into_the_drafters_mouth() -> None:
    text = 'project "Mill"\n  basis us-2023\nutility UTIL 208Y/120  {}x/r 6\npanel LP-1 208Y/120  bus 225 A\n'
    text += "feeder UTIL -> LP-1  225 A 3p  4#4/0 + G #4 Cu THWN-2  6 m  in 2-1/2 inch EMT\n"
    for stated in ("", "fault 42 kA, "):
        found = [f for f in analysis_of(text.format(stated)).all_findings() if f.rule == "fault-inputs-missing"]
        assert found
        for finding in found:
            assert "kA" not in finding.needed + finding.change
            assert "from the utility's letter" in finding.change


def test_a_small_wire_of_a_cooling_unit_is_shown_the_way_of_its_nameplate() -> None:
    """NEC 240.4(G), 440.22 (from memory): #10 may stand behind 40 A where the nameplate says MCA 28, MOCP 40."""
    text = 'project "Mill"\n  basis us-2023\nutility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 3p\n'
    text += "panel LP-1 208Y/120  bus 225 A, lug-temp 75 degC\n"
    row = '  2,4  40 A 2p  {}  "Split unit"  2#10 + G #10 Cu THWN-2  18 m  in 3/4 inch EMT\n'

    def told(what: str) -> list[str]:
        return [f.change for f in check(text + row.format(what)) if f.rule == "small-wire-limit"]

    (change,) = told("5 kVA cooling")
    assert "`mca` and `mocp`" in change
    assert told("mca 28 A, mocp 40 A cooling") == []
    (change,) = told("5 kVA heating")
    assert "mca" not in change


def test_a_ups_without_its_efficiency_is_asked_for_it_where_its_supply_lacks_it() -> None:
    text = 'project "Mill"\n  basis us-2023\nutility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 3p\n'
    text += "panel LP-1 208Y/120  bus 225 A\nups UPS-1 208Y/120  15 kVA{}\nfeeder LP-1 -> UPS-1{}  60 A 3p\n"
    text += 'panel LP-2 208Y/120  bus 100 A\n  1  20 A 1p  1 kVA it  "Rack"\nfeeder UPS-1 -> LP-2\n'

    def told(*parts: str) -> list[str]:
        return [f.message for f in check(text.format(*parts)) if f.rule == "load-not-stated"]

    assert told("", "") == ["`UPS-1` gives no efficiency (eff), so what it draws from `LP-1` is unknown"]
    assert told(", eff 94 %", "") == []
    assert told(", future", "") == []
