"""A UPS on its bypass: what arrives there goes through as it would through a switch, and nothing is converted."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures
from wyeline_linter.network import NORMAL_STATE
from wyeline_linter.studies.working_fault import fault_figure

ROOT = "/m/model.wye"
SITE = """wye 1
project "Exchange"
  basis us-2023
  frequency 60 Hz, revision "A"
utility UTIL 480Y/277  fault 22 kA, fault-min 14 kA, x/r 6
switchboard MSB 480Y/277  bus 800 A, main 600 A, rated 35 kA, service-equipment, lug-temp 75 degC
feeder UTIL -> MSB  600 A 3p  2 sets 3x350kcmil + N 350kcmil Cu THWN-2  14 m  in 3 inch RMC
{ups}
transformer TX-B 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 1.5, electrode #4
feeder MSB -> TX-B  70 A 3p  3#4 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT
feeder BYP: TX-B -> UPS-1{port}  150 A 3p  3#1/0 + N #1/0 + G #6 Cu THWN-2  5 m  in 2 inch EMT
panel IT-1  bus 150 A, main 125 A, rated 10 kA, spaces 30, lug-temp 75 degC
  1,3,5  90 A 3p  24 kVA  it  "Rack two"  3#3 + N #3 + G #8 Cu THWN-2  24 m  in 1-1/4 inch EMT, lug-temp 75 degC
  2  20 A 1p  1.2 kVA  it  "Rack one"  2#12 + G #12 Cu THWN-2  24 m  in 3/4 inch EMT
feeder UPS-1 -> IT-1  125 A 3p  3#1 + N #1 + G #6 Cu THWN-2  9 m  in 1-1/2 inch EMT
"""
UPS = """ups UPS-1 480Y/277 -> 208Y/120  40 kVA, eff 94 %, limit 2 pu
feeder MSB -> UPS-1  70 A 3p  3#4 + N #4 + G #8 Cu THWN-2  22 m  in 1-1/4 inch EMT"""
WITH_BYPASS = SITE.format(ups=UPS, port=".bypass")
AS_A_SWITCH = SITE.format(ups="disconnect UPS-1  150 A 3p", port="")
ON_BYPASS = "with UPS-1 on bypass"
SERVICE = 'scenario "Service"\n  switch UPS-1.bypass\n'


def fresh(text: str, state: str | None = None) -> Analysis:
    return Analysis(ROOT, Files(lambda _: text), "/m", state)


def test_the_bypass_carries_what_a_switch_in_its_place_would() -> None:
    """Voltages, loads, drops and faults of the whole model, each figure."""
    told = model_figures(fresh(WITH_BYPASS + SERVICE, "Service").view)
    wanted = model_figures(fresh(AS_A_SWITCH).view)
    for kind in ("equipment", "feeders"):
        for name, figures in wanted[kind].items():
            here = told[kind][name]
            for key in ("system", "load", "drop", "voltage_under_load", "fault", "current", "fault_at_end"):
                if name == "UPS-1" and key == "load":
                    continue  # a UPS also says what arrives
                assert here.get(key) == figures.get(key), (name, key)
    assert told["equipment"]["UPS-1"]["load"]["demand"] == wanted["equipment"]["UPS-1"]["load"]["demand"]


def test_it_is_looked_at_without_being_asked() -> None:
    """The converter limits a fault to twice its current, the bypass lets through what the transformer gives."""
    analysis = fresh(WITH_BYPASS)
    zones = {z.state.name: z for z in analysis.view.studies.found().zones}
    assert ON_BYPASS in zones
    normal = analysis.view.studies.in_state(NORMAL_STATE).largest.deciding_at(["IT-1"])[0][0]
    bypass = analysis.view.studies.in_state(zones[ON_BYPASS].state).largest.deciding_at(["IT-1"])[0][0]
    assert normal == pytest.approx(2 * 40e3 / 3**0.5 / 208, rel=0.01)
    # 45 kVA of 4 % at 208 V give 3.1 kA at its terminals (IEEE Std 141): less behind the wires.
    assert 2000 < bypass < 45e3 / 3**0.5 / 208 / 0.04


def test_a_board_too_weak_for_the_bypass_is_told_with_the_state() -> None:
    weak = WITH_BYPASS.replace("main 125 A, rated 10 kA", "main 125 A, rated 2 kA")
    told = [f for f in fresh(weak).study_findings() if f.subject == "IT-1" and "bypass" in f.message]
    assert told
    assert "with `UPS-1` on its bypass" in told[0].message
    assert not [f for f in fresh(WITH_BYPASS).study_findings() if f.subject == "IT-1" and "rated" in f.message]


def test_what_loses_its_input_takes_the_bypass() -> None:
    """Fed from elsewhere, the bypass holds the load when the input's transformer is out."""
    text = WITH_BYPASS.replace(
        "feeder MSB -> UPS-1  70 A 3p",
        "transformer TX-A 480 3ph -> 480Y/277  75 kVA, z 4 %, x/r 2\nfeeder MSB -> TX-A  110 A 3p  3#2 + G #6 Cu THWN-2"
        "  5 m  in 1-1/4 inch EMT\nfeeder TX-A -> UPS-1  70 A 3p",
    )
    states = fresh(text).view.studies.found()
    without = fresh(text, "without TX-A").view
    assert without.network.supply["UPS-1"].target.port == "bypass"
    assert [z.state.name for z in states.zones] == [ON_BYPASS, "without TX-A"]


def test_a_scenario_stands_in_its_place() -> None:
    states = fresh(WITH_BYPASS + SERVICE).view.studies.found()
    assert [z.state.name for z in states.zones] == []


@pytest.mark.parametrize("feeder", ["", "feeder MSB -> UPS-1.bypass  70 A 3p\n"])
def test_a_ups_without_a_bypass_is_not_switched(feeder: str) -> None:
    text = WITH_BYPASS.replace("UPS-1.bypass", "SP-1") + "panel SP-1  bus 150 A\n" + feeder + SERVICE
    told = [f for f in fresh(text).findings() if f.rule == "action-without-effect"]
    assert bool(told) != bool(feeder)
    if told:
        assert "a feeder to `UPS-1.bypass`" in told[0].needed
        assert fresh(text, "Service").view.network.supply["UPS-1"].target.port is None


def test_the_bypass_has_the_voltage_of_the_output() -> None:
    """Not that of the input: the load would get it as it is."""
    assert [f for f in fresh(WITH_BYPASS).findings() if f.severity.name == "ERROR"] == []
    straight = WITH_BYPASS.replace(
        "feeder BYP: TX-B -> UPS-1.bypass  150 A 3p  3#1/0", "feeder BYP: MSB -> UPS-1.bypass  150 A 3p  3#1/0"
    )
    (told,) = [f for f in fresh(straight).findings() if f.rule == "leg-voltage-mismatch"]
    assert "208Y/120" in told.message and "480Y/277" in told.message


def test_a_floating_neutral_is_earthed_where_the_bypass_comes_from() -> None:
    floating = WITH_BYPASS.replace("limit 2 pu", "limit 2 pu, neutral floating")
    told = [f.rule for f in fresh(floating).findings()]
    assert "neutral-bond-missing" not in told
    alone = floating.replace("UPS-1.bypass", "SP-1") + "panel SP-1  bus 150 A\n"
    assert "neutral-bond-missing" in [f.rule for f in fresh(alone).findings()]


@pytest.mark.parametrize("state", [None, "Service"])
def test_edits_keep_up(state: str | None) -> None:
    """A bypass that comes and goes under edits gives what a fresh reading gives."""
    files = Files(lambda _: WITH_BYPASS + SERVICE)
    analysis = Analysis(ROOT, files, "/m", state)
    file = files.get(ROOT)
    line = next(i for i, text in enumerate(file.lines) if ".bypass" in text and text.startswith("feeder"))
    written = file.lines[line]
    for text in ("// gone", written, written.replace(".bypass", ""), written):
        analysis.edited(*file.replace_lines(line, line + 1, [text]))
        again = fresh(file.text, state)
        assert [(f.rule, f.message) for f in analysis.findings()] == [(f.rule, f.message) for f in again.findings()]
        assert [f.message for f in analysis.study_findings()] == [f.message for f in again.study_findings()]
        assert model_figures(analysis.view) == model_figures(again.view)


SAME_VOLTAGE = (
    SITE.replace("transformer TX-B 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 1.5, electrode #4\n", "")
    .replace("feeder MSB -> TX-B  70 A 3p  3#4 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n", "")
    .replace("TX-B -> UPS-1{port}", "MSB -> UPS-1.bypass")
    .replace("480Y/277", "208Y/120")
    .replace("{ups}", UPS.replace("480Y/277", "208Y/120"))
)


def gaps(text: str) -> list[str]:
    return [f.subject for f in fresh(text).all_findings() if f.rule == "bypass-not-written"]


def test_a_ups_without_a_written_bypass_says_that_its_inverter_alone_counts() -> None:
    """Common practice, no source: a double conversion supply goes over to its mains in a fault. It can by wire alone
    where it gives the voltage that it gets."""
    without = "".join(line for line in SAME_VOLTAGE.splitlines(keepends=True) if "BYP:" not in line)
    assert gaps(SAME_VOLTAGE) == []
    assert gaps(without) == ["UPS-1"]
    assert gaps(without.replace("ups UPS-1 208Y/120 -> 208Y/120", "ups UPS-1 208 3ph -> 208Y/120")) == []
    told = fault_figure(fresh(without).view.studies.normal, "IT-1").assumptions
    assert any("`UPS-1` does not go over to its bypass" in text for text in told)
    assert not fault_figure(fresh(SAME_VOLTAGE).view.studies.normal, "IT-1").assumptions
