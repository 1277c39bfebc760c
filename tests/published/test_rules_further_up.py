"""Rules whose answer hangs on what stands further up: worked by hand from the clauses, which are quoted from memory."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding

TWO_WIRE = """project "Works"
  basis us-2023
utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4
feeder UTIL -> MSB
switchboard MSB 480Y/277  bus 400 A, main 400 A, lug-temp 75 degC
transformer TX-1 480 1ph -> {secondary}  10 kVA, z 3 %, x/r 1.5, lug-temp 75 degC
feeder MSB[AB] -> TX-1  25 A 2p  2#10 + G #10 Cu THWN-2  20 m  in 1/2 inch EMT
load HTR-1 240 1ph  8 kW, heating{lugs}
feeder TX-1{legs} -> HTR-1  {wires} Cu THWN-2  3 m  in 1 inch EMT
"""
SPLIT = """project "Annex"
  basis iec
utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-C-S
feeder NETT -> HV  63 A 3p  {wires} Cu PVC  8 m method C
panel HV 400Y/230  bus 63 A, main 63 A
panel UV-1 400Y/230  bus 63 A, incomer 63 A
feeder HV -> UV-1  63 A 3p  3x16mm2 + PEN 16mm2 Cu PVC  8 m method C
"""
UNEARTHED = """project "Annex"
  basis iec
utility NETT 400 3ph  fault 10 kA, fault-min 6 kA, x/r 4, earthing IT
panel UV 400 3ph  bus 63 A
load FROST 400 3ph  1 kW, heating
feeder NETT -> UV  63 A 3p  4G16mm2 Cu PVC  {above_m} m method C
feeder UV -> FROST  10 A 3p curve D  4G1.5mm2 Cu PVC  {own_m} m method C
"""
SERIES = """project "Works"
  basis us-2023
utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4
feeder UTIL -> MSB  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40
switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 22 kA, lug-temp 75 degC
feeder MSB -> DP  225 A 3p  3#4/0 + N #4/0 + G #4 Cu THWN-2  6 m  in 2-1/2 inch EMT
panel DP 480Y/277  bus 225 A, main lugs, rated 10 kA, series 22 kA, lug-temp 75 degC
  1,3,5  100 A 3p  50 hp motor  "Exhaust fan"  3#3 + G #6 Cu THWN-2  10 m  in 1-1/4 inch EMT
feeder DP -> P-1  70 A 3p  3#8 + G #8 Cu THWN-2  10 m  in 1 inch EMT
motor P-1 460 3ph  {power}
"""


def drawn(text: str, rule: str) -> list[Finding]:
    analysis = Analysis("/m/site.wye", Files(lambda _: text), "/m")
    return [f for f in analysis.all_findings() if f.rule == rule]


@pytest.mark.parametrize(
    ("secondary", "legs", "wires", "lugs", "missing"),
    # The device of 25 A at 480 V lets 50 A flow at 240 V: #6 holds that at terminals of 60 degC (55 A), #8 at 75 degC
    # only (50 A; 40 A by 110.14(C)). Of a three-wire secondary the device sees half of what one leg may carry.
    [
        ("240 1ph", "", "2#6 + G #8", "", False),
        ("240 1ph", "", "2#8 + G #8", ", lug-temp 75 degC", False),
        ("240 1ph", "", "2#8 + G #8", "", True),
        ("120/240", "[AB]", "2#6 + G #8", "", True),
    ],
)
def test_the_primary_device_protects_a_two_wire_secondary(
    secondary: str, legs: str, wires: str, lugs: str, missing: bool
) -> None:
    """NEC 2023 240.4(F), 240.21(C)(1): two wires to two, through the voltage ratio."""
    text = TWO_WIRE.format(secondary=secondary, legs=legs, wires=wires, lugs=lugs)
    assert bool(drawn(text, "secondary-protection-missing")) == missing


@pytest.mark.parametrize(
    ("wires", "joined"),
    [
        ("3x16mm2 + PEN 16mm2", False),
        ("5G16mm2", True),
        ("4x16mm2 + PE 16mm2", True),
        ("3x16mm2 + N 16mm2 + PE 16mm2", True),
    ],
)
def test_what_was_split_stays_split(wires: str, joined: bool) -> None:
    """IEC 60364-5-54 543.4.3: neutral and protective conductor, once apart, are not connected again."""
    found = drawn(SPLIT.format(wires=wires), "pen-conductor-bad")
    assert ["joins neutral and earth again" in f.message for f in found] == [True] * joined


@pytest.mark.parametrize(("above_m", "own_m"), [(10, 30), (100, 20), (200, 20), (400, 20)])
def test_a_second_fault_flows_through_all_wires_from_the_source(above_m: float, own_m: float) -> None:
    """IEC 60364-4-41 411.6.4: U / 2 Zs, leg and protective conductor from the source to the far end. Resistances by
    IEC 60228 (1.15 and 12.1 ohm/km at 20 degC), at 160 degC by IEC 60909-0 (0.004 per kelvin); curve D at 20 times."""
    hot = 1 + 0.004 * (160 - 20)
    loop_ohm = 2 * hot * (1.15 * above_m + 12.1 * own_m) / 1000
    amps = 400 / (2 * loop_ohm)
    assert amps < 20 * 10
    found = drawn(UNEARTHED.format(above_m=above_m, own_m=own_m), "it-second-fault-too-weak")
    (last,) = (f for f in found if "UV -> FROST" in f.message)
    assert float(last.found.split(" A")[0]) == pytest.approx(amps, rel=0.015)


def test_a_second_fault_near_the_source_trips() -> None:
    """The same at 10 m and 25 m: 400 V / (2 x 0.98 ohm) = 204 A, above the 200 A of curve D."""
    assert not drawn(UNEARTHED.format(above_m=10, own_m=25), "it-second-fault-too-weak")


@pytest.mark.parametrize(("power", "told"), [("25 hp", []), ("30 hp", ["105 A of motors"])])
def test_motors_behind_a_series_rating(power: str, told: list[str]) -> None:
    """NEC 2023 240.86(C): full-load currents of the motors between the two devices to 1 % of the lower rating, 100 A of
    10 kA. Table 430.250 at 460 V: 65 A of 50 hp on the board, and a feeder away 34 A of 25 hp or 40 A of 30 hp."""
    found = drawn(SERIES.format(power=power), "series-rating-unproven")
    assert [f.found.split(",")[0] for f in found] == told
