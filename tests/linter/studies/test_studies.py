"""Studies of a model: gaps that stay where they are, switch states, sheets, and what an edit solves anew."""

from __future__ import annotations

import cmath
import math

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.fixing import apply_edits
from wyeline_linter.network import NORMAL_STATE
from wyeline_linter.protection.currents import current_of
from wyeline_linter.protection.lines import feeder_line
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.scenarios import losses
from wyeline_linter.studies.sheets import study_sheet
from wyeline_linter.working import render

ROOT = "/m/model.wye"
SITE = """wye 1
project "Mill"
  basis us-2023
  frequency 60 Hz, revision "A"

utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4

switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC

feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40

panel LP-1 480Y/277  bus 225 A, main lugs, rated 22 kA, lug-temp 75 degC
  1  20 A 1p  2 kVA lighting  "Hall"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT

feeder DP -> LP-1  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT

panel LP-2 480Y/277  bus 100 A, main lugs, rated 22 kA, lug-temp 75 degC
  1  20 A 1p  2 kVA lighting  "Stairs"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT

feeder LP-1 -> LP-2  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  10 m  in 1 inch EMT
"""


class Desk:
    """A model that can be edited like an open document."""

    def __init__(self, text: str) -> None:
        self.text = text
        files = Files(lambda _: self.text)
        self.document = files.open_buffer(ROOT, text)
        self.analysis = Analysis(ROOT, files, "/m")

    def edit(self, old: str, new: str) -> None:
        assert old in self.text
        self.text = self.text.replace(old, new, 1)
        went, came = self.document.replace_text(self.text)
        self.analysis.edited(went, came)

    @property
    def solved(self) -> dict[str, int]:
        return dict(self.analysis.view.studies.cache.solved)


def fresh(text: str) -> Analysis:
    return Analysis(ROOT, Files(lambda _: text), "/m")


def shown(findings: list[Finding]) -> list[tuple[str, str, int]]:
    return [(f.rule, f.message, f.place.row) for f in findings]


def test_a_missing_length_is_one_gap_and_blanks_only_what_is_below() -> None:
    analysis = fresh(SITE.replace("  20 m  in 2 inch EMT", "  in 2 inch EMT"))
    gaps = [f for f in analysis.study_findings() if f.severity is Severity.GAP]
    assert [(f.rule, f.subject) for f in gaps] == [("length-missing", "DP -> LP-1")]
    study = analysis.view.studies.normal
    assert study.largest.worst("DP") is not None
    for name in ("LP-1", "LP-2"):
        assert study.largest.worst(name) is None
        assert study.flow.volts(name) == ()
        assert study.largest.reasons(name) == ("the length of `DP -> LP-1` is not written",)
    # The loads below the gap still flow above it.
    current = study.flow.currents("UTIL -> DP")
    assert current is not None
    assert max(abs(i) for i in current.values()) > 14
    figures = model_figures(analysis.view, "LP-2")["equipment"]["LP-2"]
    assert figures["fault"] is None
    assert figures["unknown"]["fault"] == ["the length of `DP -> LP-1` is not written"]


def test_a_missing_smallest_fault_level_leaves_the_largest() -> None:
    analysis = fresh(SITE.replace(", fault-min 15 kA", ""))
    study = analysis.view.studies.normal
    assert study.largest.worst("LP-2") is not None
    assert study.smallest.worst("LP-2") is None
    assert [f.rule for f in analysis.study_findings()] == ["fault-inputs-missing"]


def test_without_a_basis_one_gap_stands_for_all_feeders() -> None:
    analysis = fresh(SITE.replace("  basis us-2023\n", ""))
    assert [f.rule for f in analysis.study_findings()] == ["impedance-missing"]


def test_faults_at_a_bus_follow_from_the_impedances_by_hand() -> None:
    study = fresh(SITE).view.studies.normal
    data = study.built(Case.MAX).lines["UTIL -> DP"]
    assert data.leg is not None
    source = 480 / 3**0.5 / 22e3
    z = source / 17**0.5 * complex(1, 4) + data.leg
    three = study.largest.at("DP")["three-phase"].amperes
    assert three == pytest.approx(480 / 3**0.5 / abs(z), rel=1e-6)
    assert study.largest.at("DP")["line-line"].amperes == pytest.approx(480 / abs(2 * z), rel=1e-6)


def test_what_an_edit_solves_anew() -> None:
    desk = Desk(SITE)
    desk.analysis.all_findings()
    before = desk.solved
    desk.edit('"Stairs"', '"Stairs, north"')
    desk.analysis.all_findings()
    anew = ("board's circuits", "pieces of loads", "demands of feeders")  # of the one board that was edited
    assert desk.solved == before | {step: before[step] + 1 for step in anew}
    desk.edit('2 kVA lighting  "Stairs, north"', '3 kVA lighting  "Stairs, north"')
    desk.analysis.all_findings()
    after = desk.solved
    assert after["load flow, factors kept"] == 1
    assert after["largest fault"] == before["largest fault"]
    desk.edit("10 m  in 1 inch EMT", "12 m  in 1 inch EMT")
    desk.analysis.all_findings()
    assert desk.solved["largest fault"] == before["largest fault"] + 1
    assert desk.solved["load flow"] == before["load flow"] + 1


def test_typing_never_runs_a_study() -> None:
    desk = Desk(SITE)
    desk.analysis.findings()
    desk.edit('"Stairs"', '"Stairs, north"')
    desk.analysis.findings()
    assert desk.analysis.ran["study"] == 0


def test_an_allowance_for_a_study_rule_is_judged_by_the_study() -> None:
    low = SITE.replace("rated 22 kA, lug-temp 75 degC\n  1", "rated 10 kA, lug-temp 75 degC\n  1", 1)
    allow = '  allow interrupting-too-low "fed by current-limiting fuses, test report 7"\n'
    accepted = fresh(low.replace("\nfeeder DP -> LP-1", allow + "\nfeeder DP -> LP-1"))
    assert accepted.findings() == []
    assert [f.allowed for f in accepted.study_findings()] == ["fed by current-limiting fuses, test report 7"]
    unused = fresh(SITE.replace("\nfeeder DP -> LP-1", allow + "\nfeeder DP -> LP-1"))
    assert unused.findings() == []
    assert [f.rule for f in unused.study_findings()] == ["allowance-unused"]


EDITS = [
    ("10 m  in 1 inch", "40 m  in 1 inch"),
    ("40 m  in 1 inch", "10 m  in 1 inch"),
    ('2 kVA lighting  "Hall"', '4 kVA lighting  "Hall"'),
    ('4 kVA lighting  "Hall"', '2 kVA lighting  "Hall"'),
    (", fault-min 15 kA", ""),
    ("fault 22 kA", "fault 30 kA"),
    ("fault 30 kA", "fault 22 kA"),
    ("feeder LP-1 -> LP-2", "feeder DP -> LP-2"),
    ("feeder DP -> LP-2", "feeder LP-1 -> LP-2"),
    ("rated 22 kA", "rated 10 kA"),
    ("3#6 + N #6", "3#8 + N #8"),
]


@settings(max_examples=15, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(st.sampled_from(EDITS), max_size=6))
def test_any_run_of_edits_gives_the_studies_of_a_fresh_check(edits: list[tuple[str, str]]) -> None:
    desk = Desk(SITE)
    for old, new in edits:
        if old in desk.text:
            desk.edit(old, new)
            desk.analysis.study_findings()
    again = fresh(desk.text)
    assert shown(desk.analysis.all_findings()) == shown(again.all_findings())
    assert model_figures(desk.analysis.view) == model_figures(again.view)


BRANCH_SITE = SITE.replace(
    '"Stairs"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT',
    '"Stairs"  2#12 + G #12 Cu THWN-2  20 m  in R-9, pf 0.8\n\nraceway R-9 3/4 inch EMT',
)
BRANCH_EDITS = [
    *EDITS,
    ("R-9 3/4 inch EMT", "R-9 3/4 inch PVC-40"),
    ("R-9 3/4 inch PVC-40", "R-9 3/4 inch EMT"),
    ("basis us-2023", "basis iec"),
    ("basis iec", "basis us-2023"),
    ('"Stairs"  2#12 + G #12 Cu THWN-2  20 m', '"Stairs"  2#10 + G #10 Cu THWN-2  35 m'),
    ("  1  20 A 1p  2 kVA", "  3  20 A 1p  2 kVA"),
    ("panel LP-2 480Y/277", "panel LP-2 480"),
    ("panel LP-2 480\n", "panel LP-2 480Y/277\n"),
    ("lug-temp 75 degC\n  1  20 A", "lug-temp 75 degC, existing\n  1  20 A"),
]


@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(st.sampled_from(BRANCH_EDITS), max_size=8))
def test_drops_of_circuits_that_are_kept_equal_those_worked_out_anew(edits: list[tuple[str, str]]) -> None:
    """Also below every aim, where no finding would show that an old drop was kept."""
    desk = Desk(BRANCH_SITE)
    desk.analysis.study_findings()
    for old, new in edits:
        if old in desk.text:
            desk.edit(old, new)
            desk.analysis.study_findings()
    study, again = desk.analysis.view.studies.normal, fresh(desk.text).view.studies.normal
    for name in ("LP-1", "LP-2"):
        kept, anew = (s.branches(s.view.model.equipment[name]) for s in (study, again))
        assert [d[1:] for d in kept] == [d[1:] for d in anew]
        assert [d.circuit.key for d in kept] == [d.circuit.key for d in anew]


def test_a_raceway_of_other_stuff_changes_the_drop_of_the_circuit_in_it() -> None:
    desk = Desk(BRANCH_SITE)

    def drop() -> float:
        study = desk.analysis.view.studies.normal
        return study.branches(study.view.model.equipment["LP-2"])[0].volts

    steel = drop()
    desk.edit("R-9 3/4 inch EMT", "R-9 3/4 inch PVC-40")
    assert drop() != steel


STANDBY = (
    SITE
    + """
generator GEN-1 480Y/277  140 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, neutral bonded
  sustained 3 pu

transfer ATS-1 100 A 4p, rated 30 kA

feeder DP -> ATS-1.normal  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  8 m  in 1-1/4 inch EMT, lug-temp 75 degC

feeder GEN-1 -> ATS-1.emergency  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  8 m  in 1-1/4 inch EMT, lug-temp 75 degC

panel EP-1 480Y/277  bus 100 A, main lugs, rated 22 kA, lug-temp 75 degC
  1  20 A 1p  2 kVA lighting  "Exit"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT

feeder ATS-1 -> EP-1  3#6 + N #6 + G #10 Cu THWN-2  4 m  in 1-1/4 inch EMT, lug-temp 75 degC

scenario "Mains lost"
  off UTIL
  switch ATS-1.emergency

expect EP-1 fault <= 2 kA in "Mains lost"
expect EP-1 fault >= 2 kA
expect all panel drop <= 3 %
"""
)


def test_each_source_lost_takes_the_transfers_along() -> None:
    analysis = fresh(STANDBY)
    states = {state.name: state for state in losses(analysis.view)}
    assert set(states) == {"without GEN-1", "without UTIL"}
    assert states["without UTIL"].port_of("ATS-1") == "emergency"
    assert states["without GEN-1"].port_of("ATS-1") == "normal"
    assert analysis.view.network_in(states["without UTIL"]).fed("EP-1")


def test_a_panel_has_other_faults_on_its_generator() -> None:
    analysis = fresh(STANDBY)
    normal, lost = analysis.view.studies.stated()
    assert normal.state == NORMAL_STATE
    grid, machine = (study.largest.worst("EP-1") for study in (normal, lost))
    assert grid is not None and machine is not None
    rated = 140e3 / 3**0.5 / 480
    assert machine.amperes == pytest.approx(rated / 0.12, rel=0.25)
    assert (grid.amperes or 0) > 5 * (machine.amperes or 0)
    assert [f.rule for f in analysis.study_findings()] == []


def test_expectations_are_judged_in_their_scenario() -> None:
    analysis = fresh(STANDBY.replace('fault <= 2 kA in "Mains lost"', "fault <= 2 kA"))
    missed = analysis.study_findings()
    assert [f.rule for f in missed] == ["expectation-missed"]
    assert "at most 2 kA is expected" in missed[0].message


@pytest.mark.parametrize("figure", ["fault", "fault-min", "line-ground", "drop", "voltage"])
def test_every_sheet_ends_in_the_figure_that_is_shown(figure: str) -> None:
    analysis = fresh(SITE)
    sheet = study_sheet(analysis.view, "LP-2", figure)
    assert sheet.known
    text = render(sheet)
    assert "Result" in text
    figures = model_figures(analysis.view, "LP-2")["equipment"]["LP-2"]
    wanted = {
        "fault": figures["fault"]["largest"]["amps"],
        "fault-min": figures["fault"]["smallest"]["amps"],
        "line-ground": figures["fault"]["max"]["line-ground"]["amps"],
        "drop": figures["drop"]["part"],
        "voltage": figures["voltage_under_load"]["lowest"]["volts"],
    }[figure]
    assert sheet.value == pytest.approx(wanted, rel=1e-6)


def test_a_sheet_of_a_fault_can_be_followed_with_a_pocket_calculator() -> None:
    sheet = study_sheet(fresh(SITE).view, "DP", "three-phase")
    values = {**{i.symbol: i.value for i in sheet.inputs}, **{s.symbol: s.value for s in sheet.steps}}
    assert sheet.formula == "V / Z"
    assert sheet.value == pytest.approx(values["V"] / (values["R"] ** 2 + values["X"] ** 2) ** 0.5, rel=1e-9)


def test_sheets_that_are_not_there_say_so() -> None:
    view = fresh(SITE).view
    with pytest.raises(KeyError):
        study_sheet(view, "LP-9", "fault")
    with pytest.raises(ValueError, match="fault-min"):
        study_sheet(view, "LP-1", "heat")


def test_a_supply_that_is_refused_changes_no_figure_of_the_board_that_another_one_feeds() -> None:
    other = "utility WEST 240/120 3ph  fault 30 kA, fault-min 20 kA, x/r 4\n"
    joined = "feeder WEST -> DP  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT\n  claim parallel\n"
    alone = model_figures(Desk(SITE + other).analysis.view)["equipment"]["DP"]
    refused = Desk(SITE + other + joined)
    assert model_figures(refused.analysis.view)["equipment"]["DP"] == alone
    # The circuit is made anew once the feeder is one that fits.
    refused.edit("240/120 3ph", "480Y/277")
    accepted = model_figures(refused.analysis.view)["equipment"]["DP"]
    assert accepted == model_figures(Desk(refused.text).analysis.view)["equipment"]["DP"]
    assert accepted["fault"]["max"] != alone["fault"]["max"]


def test_a_second_supply_that_nobody_claims_is_left_open_and_the_reports_say_so() -> None:
    other = "utility WEST 480Y/277  fault 30 kA, fault-min 20 kA, x/r 4\n"
    joined = "feeder WEST -> DP  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT\n"
    alone = model_figures(Desk(SITE + other).analysis.view)["equipment"]["DP"]
    desk = Desk(SITE + other + joined)
    assert {f.rule for f in desk.analysis.all_findings()} >= {"second-supply"}
    assert model_figures(desk.analysis.view)["equipment"]["DP"] == alone
    study = desk.analysis.view.studies.normal
    (told,) = (a.text for a in study.assumed() if a.subject == "WEST -> DP")
    assert told == "`WEST -> DP` left open: no `claim parallel` says that `DP` is fed by it and `UTIL -> DP`"
    assert study.flow.feeder_reasons("WEST -> DP")[0].startswith("`WEST -> DP` is left out of the circuit")
    claimed = Desk(SITE + other + joined + "  claim parallel\n")
    assert model_figures(claimed.analysis.view)["equipment"]["DP"]["fault"]["max"] != alone["fault"]["max"]


def test_an_inverter_that_follows_is_placed_once_whichever_way_its_feeder_is_written() -> None:
    pv = "inverter PV-1 480 3ph  60 kW, limit 1.1 pu, grid-following\n"
    wires = "100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  40 m  in 1-1/4 inch EMT\n"
    out, back = (
        model_figures(Desk(SITE + pv + f"feeder {ends}  {wires}").analysis.view)["equipment"]["DP"]
        for ends in ("PV-1 -> DP", "DP -> PV-1")
    )
    assert {k: v for k, v in out.items() if k != "load"} == {k: v for k, v in back.items() if k != "load"}
    assert out["fault"]["max"]
    # 60 kW at 480 V: 72.2 A go out by it, whatever the board draws.
    desk = Desk(SITE + pv + f"feeder PV-1 -> DP  {wires}")
    feeder = model_figures(desk.analysis.view)["feeders"]["PV-1 -> DP"]
    assert feeder["current"]["largest_a"] == pytest.approx(60e3 / 480 / 3**0.5, rel=0.01)
    line = feeder_line(desk.analysis.view, desk.analysis.view.model.feeders["PV-1 -> DP"])
    assert line is not None
    assert current_of(desk.analysis.view, line).design_a == pytest.approx(60e3 / 480 / 3**0.5, rel=1e-6)


def test_larger_wires_against_a_drop_bring_the_ground_that_they_ask_for() -> None:
    text = SITE.replace("THWN-2  20 m  in 3/4 inch EMT\n\nfeeder DP", "THWN-2  90 m  in 3/4 inch EMT\n\nfeeder DP")
    desk = Desk(text)
    (fix,) = (f for found in desk.analysis.all_findings() if found.rule == "branch-drop-high" for f in found.fixes)
    # NEC 250.122(B): the ground grows as the legs do; beside 20 A it is as large as they are.
    assert fix.title == "Take #10 wires: `2#10 + G #10 Cu THWN-2`"
    rules = {f.rule for f in Desk(apply_edits(text, fix.edits)).analysis.all_findings()}
    assert not rules & {"branch-drop-high", "equipment-ground-not-enlarged"}


def test_what_is_sized_by_is_never_less_than_what_flows() -> None:
    # 5 kW across A-B, 9 kVA of welders at a lagging power factor: on B the phasors add up to more than figures without
    # angles do. By hand: 5 kW / 208 V = 24.0 A at -30 deg, 9 kVA / (sqrt3 208 V) = 25.0 A behind by acos 0.85.
    text = """utility UTIL 208Y/120  fault 22 kA, fault-min 15 kA, x/r 5
panel LP-1 208Y/120  bus 225 A, main 150 A, rated 22 kA
  2,4  30 A 2p  5 kW heating  "Heater"
  1,3,5  40 A 3p  9 kVA pf 0.85 welding  "Welder"
feeder UTIL -> LP-1  150 A 3p  3#1/0 + N #1/0 Cu THWN-2  6 m  in 2 inch PVC-40
"""
    view = Desk(SITE.split("utility")[0] + text).analysis.view
    line = feeder_line(view, view.model.feeders["UTIL -> LP-1"])
    assert line is not None
    current = current_of(view, line)
    hand = abs(cmath.rect(5000 / 208, -math.pi / 6) + cmath.rect(9000 / 208 / 3**0.5, -math.acos(0.85)))
    assert current.design_a == pytest.approx(hand, rel=2e-3)
    assert current.sizing_a is not None and current.sizing_a >= current.design_a
