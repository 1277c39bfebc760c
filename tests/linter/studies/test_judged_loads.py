"""Which load a drop, a current and a voltage are for: the demand of a feeder, what is connected of a last circuit."""

from __future__ import annotations

import math

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures
from wyeline_linter.studies.sheets import study_sheet
from wyeline_linter.studies.study import StateStudy
from wyeline_linter.working import render

ROOT = "/m/model.wye"
HEAD = 'wye 1\nproject "Archive"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
SUPPLY = (
    HEAD
    + """
utility UTIL 208Y/120  fault 22 kA, fault-min 15 kA, x/r 4
switchboard MSB 208Y/120  bus 800 A, main 800 A, rated 25 kA, lug-temp 75 degC
feeder UTIL -> MSB  800 A 3p  2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu THWN-2  20 m  in 4 inch PVC-40
"""
)
PANEL = """
panel LP-{n} 208Y/120  bus 225 A, main lugs, rated 25 kA, lug-temp 75 degC
  1,3,5  100 A 3p  {kva} kVA receptacle  "Row {n}"  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT
feeder MSB -> LP-{n}  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  60 m  in 2 inch EMT
"""
OFFICES = SUPPLY + PANEL.format(n=1, kva=30) + PANEL.format(n=2, kva=30)


def study_of(text: str) -> StateStudy:
    return Analysis(ROOT, Files(lambda _: text), "/m").view.studies.normal


def demand_va(connected: float) -> float:
    """Receptacles that are not continuous: 10 kVA in full and half of the rest (NEC 2023 Table 220.47)."""
    return connected if connected <= 10e3 else 10e3 + (connected - 10e3) / 2


def test_each_feeder_drops_at_its_own_demand() -> None:
    """NEC Table 220.47 by hand: 30 kVA count as 20 kVA on their panel's feeder, 60 kVA as 35 kVA at the service."""
    study = study_of(OFFICES)
    for key, connected, own in (("UTIL -> MSB", 60e3, 35e3), ("MSB -> LP-1", 30e3, 20e3)):
        feeder = study.model.feeders[key]
        assert own == demand_va(connected)
        current, drop, beyond = study.judged.currents(feeder), study.judged.drop(feeder), study.judged.beyond(feeder)
        assert current is not None and drop is not None and beyond is not None
        assert abs(beyond.judged_va) == pytest.approx(own)
        assert abs(beyond.connected_va) == pytest.approx(connected)
        # S / (sqrt(3) U), a little more where the voltage under load is a little less.
        assert abs(current["A"]) == pytest.approx(own / 208 / math.sqrt(3), rel=0.01)
        leg = study.flow.built.lines[key].leg
        assert leg is not None
        # sqrt(3) I R at unity power factor (NEC Ch. 9 Table 9 note 2); wires turn the current a little.
        assert drop.volts == pytest.approx(math.sqrt(3) * abs(current["A"]) * leg.real, rel=0.01)


HELD = (
    SUPPLY
    + """
panel DP-1 208Y/120  bus 225 A, main lugs, rated 25 kA, lug-temp 75 degC
  1,3,5  50 A 3p  10 kW heating  "Ramp"  3#8 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT
feeder MSB -> DP-1  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  40 m  in 2 inch EMT
feeder DP-1 -> EV-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  60 m  in 1-1/4 inch EMT
panel EV-1 208Y/120  bus 125 A, main lugs, rated 25 kA, lug-temp 75 degC, limit 10.8 kVA
  1,3   50 A 2p  7.2 kVA ev  "Charger 1"  2#6 + G #10 Cu THWN-2  15 m  in 3/4 inch EMT
  5,7   50 A 2p  7.2 kVA ev  "Charger 2"  2#6 + G #10 Cu THWN-2  15 m  in 3/4 inch EMT
  9,11  50 A 2p  7.2 kVA ev  "Charger 3"  2#6 + G #10 Cu THWN-2  15 m  in 3/4 inch EMT
"""
)


def test_chargers_that_are_held_to_a_limit_drop_at_the_limit() -> None:
    """Three chargers of 7.2 kVA, held together to 10.8 kVA (NEC 625.42): half of what is connected flows in their own
    feeder, and in the one above beside its other load."""
    study = study_of(HELD)
    for key, own in (("DP-1 -> EV-1", 10.8e3), ("MSB -> DP-1", 20.8e3)):
        current = study.judged.currents(study.model.feeders[key])
        assert current is not None
        assert abs(current["A"]) == pytest.approx(own / 208 / math.sqrt(3), rel=0.025), key


def test_a_transformer_on_the_way_drops_at_its_own_demand_too() -> None:
    """Two panels of 30 kVA at power factor 0.8, each behind 75 kVA of 4 %, X/R 2, count 20 kVA by themselves and 17.5
    of the 35 kVA of both (NEC Table 220.47). The 2.5 kVA between cost R cos + X sin more of the voltage."""
    text = SUPPLY
    for n in (1, 2):
        text += f"""
feeder MSB -> TX-{n}  225 A 3p  3#4/0 + G #2 Cu THWN-2  0.05 m  in 2-1/2 inch EMT
transformer TX-{n} 208 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2, connection Dyn1, lug-temp 75 degC
panel LP-{n} 208Y/120  bus 225 A, main 225 A, rated 25 kA, lug-temp 75 degC
  1,3,5  100 A 3p  30 kVA pf 0.8 receptacle  "Row {n}"  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT
feeder TX-{n} -> LP-{n}  3#4/0 + N #4/0 + G #2 Cu THWN-2  0.05 m  in 2-1/2 inch EMT
"""
    study = study_of(text)
    solved, judged = study.flow.lowest("LP-1"), study.judged.lowest("LP-1")
    assert solved is not None and judged is not None
    r = 0.04 / math.sqrt(5)
    assert solved.per_unit - judged.per_unit == pytest.approx(2.5 / 75 * (r * 0.8 + 2 * r * 0.6), rel=0.05)


def test_the_solved_state_holds_the_demand_of_the_source_and_obeys_kirchhoff() -> None:
    study = study_of(OFFICES)
    service, *panels = (study.flow.currents(k) for k in ("UTIL -> MSB", "MSB -> LP-1", "MSB -> LP-2"))
    assert service is not None
    for leg in "ABC":
        assert sum(p[leg] for p in panels if p is not None) == pytest.approx(service[leg], rel=1e-6)
    assert sum(load.va.real * load.demand_share for load in study.loads) == pytest.approx(35e3)


def test_the_voltage_of_a_panel_has_the_drop_of_its_own_demand_in_it() -> None:
    study = study_of(OFFICES)
    solved, judged = study.flow.lowest("LP-1"), study.judged.lowest("LP-1")
    drop, of_flow = study.judged.drop(study.model.feeders["MSB -> LP-1"]), study.flow.drop("MSB -> LP-1")
    assert solved is not None and judged is not None and drop is not None and of_flow is not None
    assert solved.volts - judged.volts == pytest.approx(drop.volts - of_flow.volts, rel=1e-6)
    assert drop.volts > of_flow.volts
    text = render(study_sheet(study.view, "LP-1", "voltage"))
    assert "what its own way loses at its own demand" in text
    text = render(study_sheet(study.view, "MSB -> LP-1", "drop"))
    assert "the demand behind the feeder" in text and "connected behind it" in text


def test_a_transformer_loses_more_at_its_own_demand() -> None:
    """R cos + X sin on the kVA beyond the solved state: (20 - 17.5) / 45 of 2 % at unity power factor."""
    below = OFFICES + (
        "transformer TX-1 208 3ph -> 208Y/120  45 kVA, z 2.828427 %, x/r 1\n"
        "feeder MSB -> TX-1  150 A 3p  3#1/0 + G #6 Cu THWN-2  1 m  in 2 inch EMT\n"
        "panel LP-3 208Y/120  bus 225 A, main 125 A, rated 25 kA, lug-temp 75 degC\n"
        '  1,3,5  100 A 3p  30 kVA receptacle  "Row 3"\n'
        "feeder TX-1 -> LP-3  3#1/0 + N #1/0 + G #6 Cu THWN-2  1 m  in 2 inch EMT\n"
    )
    study = study_of(below)
    counted = study.book.counted("UTIL").demand.va.real / 90e3 * 30e3
    assert counted == pytest.approx(demand_va(90e3) / 3)
    beyond = study.judged.lost_beyond("TX-1")
    wires = study.judged.lost_beyond("TX-1", entering=True)
    assert beyond - wires == pytest.approx((20e3 - counted) / 45e3 * 0.02, rel=1e-3)


@pytest.mark.parametrize("factor", ["", ", factor 60 %"])
def test_the_feeder_of_a_single_load_drops_at_what_is_connected(factor: str) -> None:
    """A stated factor thins the feeder of the board; behind it the one load still runs in full."""
    text = SUPPLY + (
        f"panel HP-1 208Y/120  bus 225 A, main lugs, rated 25 kA, lug-temp 75 degC{factor}\n"
        "feeder MSB -> HP-1  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  60 m  in 2 inch EMT\n"
        "load STOVE 208 3ph  24 kW, heating\n"
        "feeder HP-1 -> STOVE  90 A 3p  3#3 + G #8 Cu THWN-2  30 m  in 1-1/4 inch EMT\n"
    )
    study = study_of(text)
    last = study.judged.currents(study.model.feeders["HP-1 -> STOVE"])
    ahead = study.judged.currents(study.model.feeders["MSB -> HP-1"])
    assert last is not None and ahead is not None
    assert abs(last["A"]) == pytest.approx(24e3 / 208 / math.sqrt(3), rel=0.03)
    assert abs(ahead["A"]) == pytest.approx((0.6 if factor else 1.0) * 24e3 / 208 / math.sqrt(3), rel=0.03)
    words = model_figures(study.view, "HP-1 -> STOVE")["feeders"]["HP-1 -> STOVE"]["current"]["load"]
    assert words == {"is": "connected load", "va": 24000.0, "connected_va": 24000.0}


def test_two_boards_keep_their_own_stated_factors() -> None:
    """What each board's factor leaves adds up to the service: 12 kW at 50 % and 20 kW at 80 %."""
    text = SUPPLY + "".join(
        f"panel HP-{n} 208Y/120  bus 225 A, main lugs, rated 25 kA, lug-temp 75 degC, factor {factor} %\n"
        f'  1,3,5  90 A 3p  {kw} kW heating  "Row {n}"\n'
        f"feeder MSB -> HP-{n}  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  60 m  in 2 inch EMT\n"
        for n, factor, kw in ((1, 50, 12), (2, 80, 20))
    )
    study = study_of(text)
    assert {load.element: load.demand_share for load in study.loads} == {"HP-1": 0.5, "HP-2": 0.8}
    assert study.book.counted("UTIL").demand.va.real == pytest.approx(22e3)


@settings(max_examples=12, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(st.integers(1, 60), min_size=1, max_size=4))
def test_no_feeder_is_judged_with_less_than_flows_when_all_counts_at_the_source(kva: list[int]) -> None:
    text = SUPPLY + "".join(PANEL.format(n=n, kva=size) for n, size in enumerate(kva, 1))
    study = study_of(text)
    assert sum(load.va.real * load.demand_share for load in study.loads) == pytest.approx(demand_va(1e3 * sum(kva)))
    for n, size in enumerate(kva, 1):
        feeder = study.model.feeders[f"MSB -> LP-{n}"]
        beyond, judged, solved = study.judged.beyond(feeder), study.judged.drop(feeder), study.flow.drop(feeder.key)
        assert beyond is not None and judged is not None and solved is not None
        assert abs(beyond.judged_va) == pytest.approx(demand_va(1e3 * size))
        assert judged.part >= solved.part - 1e-12


def test_a_figure_that_misses_by_its_rounding_shows_the_digits_that_differ() -> None:
    text = OFFICES + "expect UTIL fault <= 21.99 kA\nexpect MSB -> LP-1 drop <= 0.7242 %\n"
    messages = [f.message for f in Analysis(ROOT, Files(lambda _: text), "/m").study_findings()]
    assert "fault of `UTIL` is 22 kA (three-phase); at most 21.99 kA is expected" in messages
    found = next(m for m in messages if "drop" in m)
    assert float(found.split(" is ")[1].split(" %")[0]) > 0.7242
    assert "; at most 0.7242 % is expected" in found
