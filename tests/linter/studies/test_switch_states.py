"""Switch states that nobody writes down: which there are, what flows in them, and what is told of the worst."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.commands.show import worst_text
from wyeline_linter.figures import figures_in_states
from wyeline_linter.network import NORMAL_STATE
from wyeline_linter.studies import states as states_module
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.study import StateStudy
from wyeline_linter.studies.worst import SMALLEST, equipment_states, feeder_states, worst

ROOT = "/m/model.wye"
HEAD = 'wye 1\nproject "Dye works"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
WIRES = "3x500kcmil + N 500kcmil + G #3 Cu THWN-2  {m} m  in 4 inch PVC-40"
TWIN = (
    HEAD
    + f"""
utility UTIL-1 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4
utility UTIL-2 480Y/277  fault 12 kA, fault-min 9 kA, x/r 4
switchboard MSB-1 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC
switchboard MSB-2 480Y/277  bus 400 A, main 400 A, rated 18 kA, lug-temp 75 degC
feeder M-1: UTIL-1 -> MSB-1  400 A 3p  {WIRES.format(m=6)}
feeder M-2: UTIL-2 -> MSB-2  400 A 3p  {WIRES.format(m=60)}
feeder TIE: MSB-1 -> MSB-2  400 A 3p  {WIRES.format(m=6)}, normally-open
interlock KEY-1 at-most 2, among M-1, M-2, TIE
load VAT-1 480 3ph  180 kW, heating
feeder MSB-1 -> VAT-1  250 A 3p  3x250kcmil + G #4 Cu THWN-2  40 m  in 2-1/2 inch EMT
load VAT-2 480 3ph  190 kW, heating
feeder MSB-2 -> VAT-2  250 A 3p  3x250kcmil + G #4 Cu THWN-2  40 m  in 2-1/2 inch EMT
"""
)
KEYLESS = TWIN.replace("interlock KEY-1 at-most 2, among M-1, M-2, TIE\n", "")
STANDBY = (
    HEAD
    + f"""
utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4
switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC
feeder UTIL -> DP  400 A 3p  {WIRES.format(m=6)}
inverter PV-1 480 3ph  60 kW, limit 1.1 pu, grid-following
feeder DP -> PV-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  40 m  in 1-1/4 inch EMT, lug-temp 75 degC
generator GEN-1 480Y/277  140 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, neutral bonded
  sustained 3 pu
transfer ATS-1 100 A 4p, rated 30 kA
feeder DP -> ATS-1.normal  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  8 m  in 1-1/4 inch EMT, lug-temp 75 degC
feeder GEN-1 -> ATS-1.emergency  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  80 m  in 1-1/4 inch EMT, lug-temp 75 degC
load VAT-3 480 3ph  30 kW, heating
feeder ATS-1 -> VAT-3  3#6 + N #6 + G #10 Cu THWN-2  4 m  in 1-1/4 inch EMT, lug-temp 75 degC
"""
)


def fresh(text: str, state: str | None = None) -> Analysis:
    return Analysis(ROOT, Files(lambda _: text), "/m", state)


def found(text: str) -> list[str]:
    return [zone.state.name for zone in fresh(text).view.studies.found().zones]


@pytest.mark.parametrize(
    ("text", "names"),
    [
        (TWIN.split("feeder TIE")[0], []),
        (TWIN, ["with TIE closed and M-1 open", "with TIE closed and M-2 open"]),
        (KEYLESS, ["without UTIL-1, TIE closed", "without UTIL-2, TIE closed"]),
        (TWIN + 'scenario "North out"\n  open M-1\n  close TIE\n', ["with TIE closed and M-2 open"]),
        (STANDBY, ["with ATS-1 on emergency", "without PV-1"]),
        (STANDBY + 'scenario "Dark"\n  off UTIL\n  off PV-1\n  switch ATS-1.emergency\n', ["without PV-1"]),
        (
            TWIN.replace(", normally-open", "\n  claim parallel").replace("UTIL-2 ->", "MSB-1 ->"),
            ["with M-2 open", "with TIE open"],
        ),
        (TWIN.replace(", normally-open", "").replace("UTIL-2 ->", "MSB-1 ->"), []),
    ],
    ids=[
        "radial",
        "interlocked",
        "no interlock",
        "one is stated",
        "standby",
        "loss is stated",
        "parallel feeders",
        "unclaimed",
    ],
)
def test_which_states_there_are(text: str, names: list[str]) -> None:
    assert found(text) == names


def test_a_radial_model_pays_nothing_for_states() -> None:
    view = fresh(TWIN.split("feeder TIE")[0]).view
    assert [study.state for study in view.studies.every()] == [NORMAL_STATE]
    assert view.scenarios == {}


def test_a_tie_feeds_backwards_with_the_impedances_of_the_way_by_hand() -> None:
    view = fresh(KEYLESS).view
    study = next(s for s in view.studies.zones() if s.name == "without UTIL-1, TIE closed")
    assert study.connectivity.supplier["MSB-1"] == "MSB-2"
    # V / |Zsource + Zmain + Ztie|: series impedances of one phase (IEEE Std 141, hand method).
    source = 480 / 3**0.5 / 12e3 / 17**0.5 * complex(1, 4)
    main, tie = study.built(Case.MAX).lines["M-2"].leg, study.built(Case.MAX).lines["TIE"].leg
    assert main is not None and tie is not None
    assert study.largest.at("MSB-1")["three-phase"].amperes == pytest.approx(
        480 / 3**0.5 / abs(source + main + tie), rel=1e-6
    )
    feeder = view.model.feeders["TIE"]
    assert study.judged.backwards(feeder)
    drop, current = study.judged.drop(feeder), study.judged.currents(feeder)
    assert drop is not None and current is not None
    # sqrt(3) I (R cos + X sin), unity power factor at the load and nearly so at its start (NEC Ch. 9 Table 9 note 2).
    assert drop.volts == pytest.approx(3**0.5 * abs(current["A"]) * study.flow.built.lines["TIE"].leg.real, rel=0.02)  # type: ignore[union-attr]
    assert study.path_drop("MSB-1")[0] > study.path_drop("MSB-2")[0] > 0  # type: ignore[operator]


@pytest.mark.parametrize("text", [TWIN, KEYLESS, STANDBY], ids=["interlocked", "no interlock", "standby"])
def test_a_state_asked_for_directly_has_the_figures_of_the_state(text: str) -> None:
    view = fresh(text).view
    for zone in view.studies.zones():
        direct = fresh(text, zone.name).view.studies.normal
        for name in zone.connectivity.order:
            for of_zone, of_whole in ((zone.largest, direct.largest), (zone.smallest, direct.smallest)):
                one, other = of_zone.worst(name), of_whole.worst(name)
                assert (one and one.amperes) == pytest.approx(other and other.amperes, rel=1e-9)
            low, direct_low = zone.judged.lowest(name), direct.judged.lowest(name)
            assert (low and low.volts) == pytest.approx(direct_low and direct_low.volts, rel=1e-7)
            assert zone.path_drop(name)[0] == pytest.approx(direct.path_drop(name)[0], rel=1e-6, abs=1e-9)
            assert zone.book.counted(name).demand.va == pytest.approx(direct.book.counted(name).demand.va)


def test_what_is_outside_a_zone_is_no_worse_there_than_as_normal() -> None:
    for text in (TWIN, STANDBY):
        view = fresh(text).view
        for zone in view.studies.zones():
            whole = fresh(text, zone.name).view.studies.normal
            for name in whole.connectivity.order:
                if zone.lists(name):
                    continue
                here, normal = whole.judged.lowest(name), view.studies.normal.judged.lowest(name)
                assert here is not None and normal is not None
                assert here.volts >= normal.volts - 1e-6
                fault, usual = whole.largest.worst(name), view.studies.normal.largest.worst(name)
                if usual is not None and usual.amperes is not None:
                    assert fault is not None and (fault.amperes or 0) <= usual.amperes * (1 + 1e-9)


@settings(max_examples=10, deadline=None, suppress_health_check=list(HealthCheck))
@given(
    st.floats(5, 30),
    st.floats(5, 30),
    st.integers(2, 300),
    st.integers(2, 300),
    st.integers(5, 200),
    st.integers(5, 200),
)
def test_the_worst_is_at_least_as_bad_as_every_state(
    ka_1: float, ka_2: float, m_1: int, m_2: int, kw_1: int, kw_2: int
) -> None:
    text = TWIN.replace("22 kA, fault-min 15", f"{ka_1:.2f} kA, fault-min 4").replace(
        "12 kA, fault-min 9", f"{ka_2:.2f} kA, fault-min 4"
    )
    text = text.replace("  6 m  in 4 inch PVC-40\nfeeder M-2", f"  {m_1} m  in 4 inch PVC-40\nfeeder M-2")
    text = text.replace("  60 m", f"  {m_2} m").replace("180 kW", f"{kw_1} kW").replace("190 kW", f"{kw_2} kW")
    view = fresh(text).view
    each = [equipment_states(view, n) for n in view.model.equipment]
    each += [feeder_states(view, f) for f in view.model.feeders.values()]
    for states in each:
        for name, most in worst(states).items():
            assert most.unknown_in == ()
            for state in states:
                value = state.figures[name]
                assert value is not None
                if name in SMALLEST:
                    assert most.value <= value * (1 + 1e-5)
                else:
                    assert most.value >= value * (1 - 1e-5)
                assert state.state != most.state or value == most.value


def shown(text: str) -> list[tuple[str, str, str]]:
    return [(f.rule, f.subject, f.message) for f in fresh(text).study_findings() if not f.allowed]


def test_a_finding_is_told_once_for_the_worst_state() -> None:
    findings = shown(TWIN)
    by_rule = [(rule, subject) for rule, subject, _ in findings]
    assert len(by_rule) == len(set(by_rule))
    texts = {(rule, subject): message for rule, subject, message in findings}
    assert texts["interrupting-too-low", "MSB-2"].startswith("19.4 kA may flow in a fault at `MSB-2` with `TIE` closed")
    # 370 kW / (sqrt(3) 480 V) = 445.0 A
    assert "445.0 A on leg A through `MSB-1` with `TIE` closed" in texts["overload-after-switching", "MSB-1"]
    assert ("overload-after-switching", "M-1") not in texts  # told at the board already


def test_a_drop_is_told_for_the_longer_way() -> None:
    text = STANDBY.replace("  80 m", "  800 m").replace("frequency 60 Hz,", "frequency 60 Hz, drop-path 3 %,")
    told = [(rule, message) for rule, _, message in shown(text) if rule == "path-drop-high"]
    assert len(told) == 1
    assert "with `ATS-1` on its emergency input" in told[0][1]
    assert "most of it in `GEN-1 -> ATS-1.emergency`" in told[0][1]


def test_what_a_source_of_a_state_lacks_is_a_gap() -> None:
    findings = shown(STANDBY.replace("subtransient 12 %, ", ""))
    assert [(rule, subject) for rule, subject, _ in findings] == [("fault-inputs-missing", "GEN-1")]


def test_states_beyond_the_bound_are_named(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(states_module, "MOST_STATES", 1)
    figures = figures_in_states(fresh(TWIN).view)
    assert [s["state"] for s in figures["states"]] == ["normal", "with TIE closed and M-1 open"]
    assert "with TIE closed and M-2 open" in figures["left_out"]
    gaps = [m for rule, subject, m in shown(TWIN) if rule == "overload-after-switching" and not subject]
    assert len(gaps) == 1 and "with TIE closed and M-2 open" in gaps[0]
    assert figures_in_states(fresh(KEYLESS).view)["unlocked_ties"] == ["TIE"]


def test_the_command_line_shows_and_explains_states(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "site.wye"
    path.write_text(STANDBY, "utf-8")
    assert main(["show", str(path), "VAT-3"]) == 0
    text = capsys.readouterr().out
    assert "voltage under load" in text and "`ATS-1` on its emergency input" in text
    assert main(["show", str(path), "VAT-3", "--json"]) == 0
    entry = json.loads(capsys.readouterr().out)["equipment"]["VAT-3"]
    state = "with ATS-1 on emergency"
    assert entry["worst"]["drop_part"]["state"] == entry["worst"]["fault_min_a"]["state"] == state
    assert main(["explain", str(path), "VAT-3", "drop", "--scenario", state]) == 0
    assert f"u = {entry['worst']['drop_part']['value']:.6g}"[:10] in capsys.readouterr().out
    assert main(["explain", str(path), "VAT-3", "fault", "--scenario", "without UTIL"]) == 0
    assert "Switch state: without UTIL" in capsys.readouterr().out
    assert main(["show", str(path), "--scenario", "nowhere"]) == 2
    assert f"`{state}`" in capsys.readouterr().err


def test_a_state_is_not_named_for_what_shows_the_same_figure() -> None:
    entry = {
        "states": [
            {"state": "normal", "voltage_part": 0.99981, "drop_part": 0.0101},
            {"state": "out", "voltage_part": 0.9931, "drop_part": 0.0102},
        ],
        "worst": {
            "voltage_part": {"value": 0.9931, "state": "out", "unknown_in": []},
            "drop_part": {"value": 0.0102, "state": "out", "unknown_in": []},
        },
    }
    words = {"out": "without `T-1`"}
    assert worst_text(entry, "normal", words) == [
        "  worst     voltage under load 99.3 % of nominal without `T-1`; drop 1.02 % without `T-1`"
    ]
    entry["worst"]["voltage_part"]["value"] = 0.99961
    entry["worst"]["drop_part"]["value"] = 0.010104
    assert worst_text(entry, "normal", words) == []


def test_figures_of_a_zone_study_are_those_of_its_own_circuit() -> None:
    view = fresh(KEYLESS).view
    zones: list[StateStudy] = view.studies.zones()
    view.studies.every()[0].largest.worst("MSB-1")
    assert all(not zone._built for zone in zones)  # nothing is built before a figure is asked for
    assert {bus.name for bus in zones[0].largest.built.network.buses} == set(zones[0].connectivity.order)


SIZES = st.sampled_from(["6 kVA", "9 kVA", "14 kVA", "25 kVA"])


@settings(max_examples=8, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(st.tuples(st.sampled_from(["A", "B"]), SIZES), min_size=1, max_size=4), st.booleans())
def test_figures_in_all_states_after_edits_are_those_of_a_fresh_check(
    edits: list[tuple[str, str]], interlocked: bool
) -> None:
    """Receptacles: one load's change moves the part that counts of all the others (NEC Table 220.47)."""
    boards = "".join(
        f"panel LP-{n} 480Y/277  bus 225 A, main lugs, rated 25 kA, lug-temp 75 degC\n"
        f'  1,3,5  60 A 3p  8 kVA receptacle  "Bench {n}"\n'
        f"feeder MSB-{k} -> LP-{n}  100 A 3p  3#1 + N #1 + G #8 Cu THWN-2  30 m  in 2 inch EMT\n"
        for n, k in (("A", 1), ("B", 2))
    )
    text = (TWIN if interlocked else KEYLESS) + boards
    files = Files(lambda _: text)
    document = files.open_buffer(ROOT, text)
    analysis = Analysis(ROOT, files, "/m")
    analysis.study_findings()
    for bench, size in edits:
        lines = text.splitlines(keepends=True)
        text = "".join(
            f'  1,3,5  60 A 3p  {size} receptacle  "Bench {bench}"\n' if f"Bench {bench}" in x else x for x in lines
        )
        went, came = document.replace_text(text)
        analysis.edited(went, came)
        analysis.study_findings()
    again = fresh(text)
    assert figures_in_states(analysis.view) == figures_in_states(again.view)
    assert [f.message for f in analysis.study_findings()] == [f.message for f in again.study_findings()]


def test_an_expectation_may_name_a_state_that_nobody_wrote_down() -> None:
    text = TWIN + 'expect MSB-2 fault <= 18 kA in "with TIE closed and M-2 open"\nexpect MSB-2 fault <= 9 kA\n'
    missed = [f.message for f in fresh(text).all_findings() if f.rule in ("expectation-missed", "dangling-reference")]
    assert len(missed) == 1
    assert missed[0].startswith("fault of `MSB-2` is 19.4 kA (three-phase) with `TIE` closed and `M-2` open")


def test_of_two_scenarios_with_one_name_the_first_is_studied() -> None:
    text = (
        "wye 1\nutility U 480Y/277  fault 10 kA, x/r 4\nswitchboard M 480Y/277  bus 400 A\nfeeder U -> M  400 A 3p\n"
        "panel P 480Y/277  bus 100 A\nfeeder M -> P  100 A 3p\n"
        "scenario Night\n  off U\nscenario Night\n  open M -> P\n"
    )
    view = Analysis("/m/site.wye", Files(lambda _: text), "/m").view
    assert [state.name for state in view.states_of_switches()] == ["normal", "Night"]
    assert view.states_of_switches()[1].off == {"U"}
