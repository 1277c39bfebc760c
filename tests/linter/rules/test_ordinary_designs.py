"""Designs as they are drawn every day draw no finding: what a sceptical reader of the rules tried."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding, Severity

LIBRARY = """project "Library"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 208Y/120  fault 22 kA, fault-min 16 kA, x/r 3
switchboard MSB 208Y/120  bus 800 A, main 800 A, rated 42 kA, service-equipment, lug-temp 75 degC, electrode #3/0
feeder UTIL -> MSB  2 sets 3x600kcmil + N 600kcmil Cu THWN-2  12 m  in 4 inch PVC-40
panel L1 208Y/120  bus 225 A, main 225 A, rated 22 kA, lug-temp 75 degC, spaces 42
  1   20 A 1p  1.2 kVA lighting "Lights, reading room" 2#12 + G #12 Cu THWN-2 25 m in 3/4 inch EMT
  3   20 A 1p  1.08 kVA receptacle "Receptacles, reading room" 2#12 + G #12 Cu THWN-2 25 m in 3/4 inch EMT
  2,4 30 A 2p  4.5 kW heating continuous "Water heater" 2#10 + G #10 Cu THWN-2 12 m in 1/2 inch EMT
  6   20 A 1p gfci 0.18 kVA receptacle outdoor "Receptacle, terrace" 2#12 + G #12 Cu THWN-2 25 m in 1/2 inch EMT
  7,9,11 30 A 3p 7.5 hp motor eff 89 %, pf 0.84 "Air handler 1" 3#10 + G #10 Cu THWN-2 20 m in 3/4 inch EMT
  8,10 40 A 2p mca 28 A, mocp 40 A cooling "Condensing unit, roof" 2#10 + G #10 Cu THWN-2 25 m in 1/2 inch EMT
  12  20 A 1p  0.5 kVA it "Racks, closet" 2#12 + G #12 Cu THWN-2 25 m in 3/4 inch EMT
feeder MSB -> L1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu THWN-2  25 m  in 2-1/2 inch EMT
motor LIFT 200 3ph 20 hp, pf 0.85, eff 90 %, lra 330 A, elevator
feeder MSB -> LIFT  125 A 3p  3#4 + G #6 Cu THWN-2  30 m  in 1-1/4 inch EMT
charger EV-1 208 1ph 7.2 kW, ev, lug-temp 75 degC
feeder MSB[AB] -> EV-1  50 A 2p  2#8 + G #10 Cu THWN-2  30 m  in 3/4 inch EMT
generator GEN 208Y/120 100 kW, pf 0.8, subtransient 12 %, transient 18 %, x/r 20, neutral floating
  x0 5 %, sustained 3 pu
transfer ATS 225 A 3p, rated 22 kA, transition open
feeder MSB -> ATS.normal 225 A 3p 3#4/0 + N #4/0 + G #4 Cu THWN-2 15 m in 2-1/2 inch EMT, lug-temp 75 degC
feeder GEN -> ATS.emergency 225 A 3p 2 sets 3#3/0 + N #3/0 + G #4 Cu THWN-2 20 m in 2 inch EMT, lug-temp 75 degC
panel SB 208Y/120  bus 225 A, main lugs, rated 22 kA, lug-temp 75 degC
  1 20 A 1p 0.8 kVA lighting "Stair lights" 2#12 + G #12 Cu THWN-2 30 m in 3/4 inch EMT
  3,5 30 A 2p 3 kW heating "Sump heater" 2#10 + G #10 Cu THWN-2 30 m in 3/4 inch EMT
feeder ATS -> SB 3#4/0 + N #4/0 + G #4 Cu THWN-2 10 m in 2-1/2 inch EMT, lug-temp 75 degC
"""
SCHOOL = """project "Schule"
  basis iec
  frequency 50 Hz, ambient 30 degC, revision "A"
utility MS 20 kV 3ph  fault 8 kA, fault-min 5 kA, x/r 8
transformer T1 20 kV 3ph -> 400Y/230  160 kVA, connection Dyn11, z 4 %, loss 2.3 kW, earthing TN-S
feeder MS -> T1  resistance 0.2 ohm/km, reactance 0.1 ohm/km, 50 m
switchboard HV 400Y/230  bus 250 A, incomer 250 A 4p, rated 25 kA
feeder T1 -> HV  4x185mm2 + PE 95mm2 Cu XLPE  8 m  method F
panel UV-1 400Y/230  bus 125 A, incomer switch, rated 10 kA
  F1[L1]  16 A 1p+N curve B rcd 30 mA  1.5 kW receptacle  "Steckdosen, Raum 1"  3G2.5mm2 Cu PVC  25 m, method B2
  F2[L2]  10 A 1p+N curve B rcd 30 mA  0.8 kW lighting  "Licht, Flur"  3G1.5mm2 Cu PVC  30 m, method B2
  F3  32 A 3p+N curve C, rcd 30 mA  11 kW receptacle  "CEE, Werkraum"  5G6mm2 Cu PVC  20 m, method C
  F4  16 A 3p+N curve C  9 kW heating  "Durchlauferhitzer"  5G2.5mm2 Cu PVC  15 m, method C
  F5[L3]  16 A 1p+N curve C rcd 30 mA, rcd-type A 3 kW it "Serverschrank" 3G2.5mm2 Cu PVC  20 m, method C
feeder HV -> UV-1  63 A 3p+N fuse gG  5G16mm2 Cu XLPE  40 m  method E
load WP 400Y/230  22 kW, heating
feeder HV -> WP  50 A 3p+N curve C  5G16mm2 Cu XLPE  45 m  method C
charger LP-1 400Y/230  11 kW, ev
feeder HV -> LP-1  20 A 3p+N curve C rcd 30 mA, rcd-type B  5G4mm2 Cu PVC  40 m  method C
generator NEA 400Y/230 100 kVA, pf 0.8, subtransient 12 %, transient 18 %, x0 5 %, x/r 15, sustained 3 pu
  earthing TN-S, neutral bonded
transfer UM 160 A 4p, rated 15 kA, transition open
feeder HV -> UM.normal  63 A {poles} curve C  4x50mm2 + PE 25mm2 Cu XLPE  20 m  method E
feeder NEA -> UM.emergency  63 A {poles}  curve B  4x50mm2 + PE 25mm2 Cu XLPE  25 m  method E
panel SV 400Y/230  bus 160 A, incomer switch, rated 15 kA
  F1  25 A 3p+N curve C 5 kW process "Entrauchung, Treppe" 5G4mm2 Cu XLPE 30 m, method C
feeder UM -> SV  4x50mm2 + PE 25mm2 Cu XLPE  10 m  method E
"""


def findings(text: str) -> list[Finding]:
    made = Analysis("/m/site.wye", Files(lambda _: text), "/m")
    return [f for f in made.all_findings() if f.severity is not Severity.ADVICE]


def told(text: str) -> list[str]:
    return [f"{f.rule}: {f.message}" for f in findings(text)]


def test_a_library() -> None:
    assert told(LIBRARY) == []


@pytest.mark.parametrize("poles", ["4p", "3p+N"])
def test_a_school_whose_devices_open_the_neutral(poles: str) -> None:
    """A fourth pole opens the neutral that the cable brings, also where the far end states no voltage."""
    assert told(SCHOOL.format(poles=poles)) == []


def test_three_poles_beside_four_wires_still_pass_the_neutral_on() -> None:
    assert told(SCHOOL.format(poles="3p")) == []


def test_a_delta_with_a_middle_tap_is_no_wye() -> None:
    """NEC 230.95: solidly grounded wye services above 150 V to ground; the high leg stands at 208 V."""
    text = """project "Shop"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL {volts}  fault 30 kA, fault-min 20 kA, x/r 4
switchboard MSB {volts}  bus 1200 A, main 1000 A, rated 65 kA, service-equipment, lug-temp 75 degC, electrode #3/0
feeder UTIL -> MSB  3 sets 3x400kcmil + N 400kcmil Cu THWN-2  10 m  in 3 inch PVC-40
"""
    assert told(text.format(volts="240/120 3ph")) == []
    assert [f.rule for f in findings(text.format(volts="480Y/277"))] == ["ground-fault-protection-missing"]


HOUSE = """project "House"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 120/240  fault 10 kA, fault-min 8 kA, x/r 2
panel H 120/240  bus 225 A, main 200 A, rated 22 kA, service-equipment, lug-temp 75 degC, electrode {size}
feeder UTIL -> H  2#4/0 + N #4/0 Al THWN-2  10 m  in 3 inch PVC-40
  claim dwelling-unit
"""


@pytest.mark.parametrize(("size", "severity"), [("#4", None), ("#6", Severity.WARNING), ("#8", Severity.ERROR)])
def test_the_wire_to_rods_alone_may_be_smaller(size: str, severity: Severity | None) -> None:
    """NEC 250.66(A), from memory: #6 copper to rods alone; nothing in the model says where it goes."""
    found = findings(HOUSE.format(size=size))
    assert [f.severity for f in found] == ([] if severity is None else [severity])
    if severity is Severity.WARNING:
        assert "to rods alone, #6 copper is enough" in found[0].change


def test_a_system_begins_behind_its_transformer() -> None:
    """Neutral and earth that were brought apart to its primary have nothing to do with the PEN behind it."""
    text = """project "Werk"
  basis iec
  frequency 50 Hz, ambient 30 degC, revision "A"
utility N 690Y/400  fault 10 kA, fault-min 8 kA, x/r 4, earthing TN-S
panel HV 690Y/400  bus 160 A, incomer 160 A, rated 16 kA
feeder N -> HV  160 A 3p fuse gG  4x95mm2 + PE 50mm2 Cu XLPE  20 m  method C
transformer TX 690 3ph -> 400Y/230  63 kVA, z 4 %, x/r 2, connection Dyn11, earthing TN-C-S
feeder HV -> TX  80 A 3p fuse gG  3x25mm2 + N 25mm2 + PE 16mm2 Cu XLPE  20 m  method C
panel UV 400Y/230  bus 160 A, incomer 100 A, rated 10 kA
feeder TX -> UV  3x50mm2 + PEN 50mm2 Cu XLPE  5 m  method C
"""
    assert "pen-conductor-bad" not in {f.rule for f in findings(text)}


HOMESTEAD = """project "Homestead"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 120/240  fault 10 kA, fault-min 6 kA, x/r 2
meter KWH
disconnect MD 120/240  200 A 2p, rated 22 kA, lug-temp 75 degC, service-equipment, electrode #4
feeder UTIL -> KWH  2#4/0 + N #4/0 Al THWN-2  14 m  in 2-1/2 inch PVC-40
feeder KWH -> MD  2#4/0 + N #4/0 Al THWN-2  1 m  in 2-1/2 inch PVC-40
transfer ATS 200 A 2p, rated 22 kA, transition open
feeder MD -> ATS.normal  200 A 2p  2#3/0 + N #3/0 + G #6 Cu THWN-2  2 m  in 2 inch EMT, lug-temp 75 degC
generator GEN 120/240 22 kW, pf 1, subtransient 15 %, transient 22 %, x/r 15, neutral floating
  x0 6 %, sustained 3 pu
feeder GEN -> ATS.emergency  100 A 2p  2#2 + N #2 + G #8 Cu THWN-2  12 m  in 1-1/2 inch PVC-40, lug-temp 75 degC
panel H 120/240  bus 225 A, main lugs, rated 22 kA, lug-temp 75 degC, spaces 40
  1   20 A 1p gfci 1.5 kVA receptacle "Kitchen counter"  2#12 + G #12 Cu NM-B 15 m
  3   20 A 1p gfci 1.5 kVA receptacle "Laundry"  2#12 + G #12 Cu NM-B 15 m
  2,4 50 A 2p 4 kVA kitchen "Range"  2#6 + N #6 + G #10 Cu NM-B 12 m
  6,8 30 A 2p 2.8 kVA process "Dryer"  2#10 + N #10 + G #10 Cu NM-B 12 m
  5,7 30 A 2p 1.5 kW heating continuous "Water heater" 2#10 + G #10 Cu NM-B 12 m
  9   15 A 1p 1 kVA lighting "Lights, ground floor" 2#14 + G #14 Cu NM-B 20 m
  10,12 40 A 2p mca 26 A, mocp 40 A cooling "Heat pump, yard" 2#10 + G #10 Cu THWN-2 15 m in 3/4 inch PVC-40
feeder ATS -> H  2#3/0 + N #3/0 + G #6 Cu THWN-2  2 m  in 2 inch EMT, lug-temp 75 degC
panel BARN 120/240  bus 125 A, main 60 A, rated 10 kA, lug-temp 75 degC
  1  20 A 1p gfci 1 kVA receptacle "Barn receptacles"  2#12 + G #12 Cu THWN-2 15 m in 1/2 inch EMT
  3  15 A 1p 0.6 kVA lighting "Barn lights"  2#14 + G #14 Cu THWN-2 15 m in 1/2 inch EMT
feeder H -> BARN  60 A 2p at 14,16  2#6 + N #6 + G #10 Cu THWN-2  45 m  in 1 inch PVC-40
"""


def test_a_homestead_with_a_generator_and_a_barn() -> None:
    assert told(HOMESTEAD) == []


def test_wires_of_a_generator_are_held_to_its_own_current() -> None:
    """22 kW at 240 V are 91.7 A, 115 % of that 105.4 A (NEC 445.13(A)): #2 has 115 A, #3 100 A, whatever the load."""
    heavy = HOMESTEAD.replace("4 kVA kitchen", "9.6 kVA kitchen").replace("2.8 kVA process", "6 kVA process")
    assert "generator-wire-small" not in {f.rule for f in findings(heavy)}
    found = [f for f in findings(heavy.replace("2#2 + N #2 + G #8", "2#3 + N #3 + G #8")) if "generator" in f.rule]
    assert [f.needed for f in found] == ["105 A: 115 % of the generator's rated current"]


def test_a_small_device_at_a_generator_bounds_its_wires() -> None:
    """NEC 445.13(A) ends at the first device with overcurrent protection: of several at the set, each bounds its wires.

    22 kW at 240 V are 91.7 A; a second breaker of 60 A on the set with #6, 65 A at 75 degC."""
    second = (
        "panel LS 120/240  bus 100 A, main 60 A, rated 10 kA, lug-temp 75 degC, spaces 12\n"
        '  1  20 A 1p 1 kVA process "Gate"  2#12 + G #12 Cu THWN-2 15 m in 1/2 inch EMT\n'
        "feeder GEN -> LS  DEVICE A 2p  2#6 + N #6 + G #10 Cu THWN-2  12 m  in 1 inch PVC-40, lug-temp 75 degC\n"
    )
    told_of = {f.rule for f in findings(HOMESTEAD + second.replace("DEVICE", "60")) if "GEN -> LS" in f.subject}
    assert told_of == set()
    told_of = {f.rule for f in findings(HOMESTEAD + second.replace("DEVICE", "100")) if "GEN -> LS" in f.subject}
    assert "generator-wire-small" in told_of


def test_a_ground_that_grew_by_as_many_gauges_as_its_legs_is_large_enough() -> None:
    """NEC 250.122(B): 30 hp at 208 V draw 88 A (430.250), 110 A ask for #2; #1/0 is two gauges more, and so is #4 than
    the #6 of 150 A. By Chapter 9 Table 8 26.24 x 105.6 / 66.36 = 41.76 kcmil, and #4 has 41.74: rounding, no need."""
    pump = "motor P-7 208 3ph 30 hp, pf 0.87, eff 92 %, lra 480 A\n"
    line = "feeder MSB -> P-7  150 A 3p  3#1/0 + G GROUND Cu THWN-2  30 m  in 1-1/2 inch EMT\n"
    for ground, told_of in (("#4", False), ("#6", True)):
        found = {f.rule for f in findings(LIBRARY + pump + line.replace("GROUND", ground)) if f.subject == "MSB -> P-7"}
        assert ("equipment-ground-not-enlarged" in found) is told_of


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("receptacle kitchen", True),
        ("gfci receptacle kitchen", False),
        ("rcd 5 mA, receptacle kitchen", False),
        ("kitchen", False),
        ("receptacle", False),
    ],
)
def test_receptacles_of_a_kitchen_want_a_gfci(said: str, wanted: bool) -> None:
    """NEC 210.8(B)(2) (from memory): receptacles of kitchens up to 50 A and 150 V to ground; a range on its own wires,
    or receptacles of an office, are not among them."""
    text = 'project "Cafe"\n  basis us-2023\nutility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> K1  100 A 3p\n'
    text += f'panel K1 208Y/120  bus 225 A\n  1  20 A 1p  {said}  0.72 kVA  "Counter, north"\n'
    assert ("rcd-or-gfci-missing" in {f.rule for f in findings(text)}) is wanted
