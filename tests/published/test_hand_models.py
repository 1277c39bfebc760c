"""Whole small models beside a calculation by hand.

Rows of NEC 2023 tables 310.16, 250.66, 250.102(C)(1), 250.122, 430.250 and of IEC 60364-5-52 B.52.2 to B.52.17 from
memory; formulas of IEEE Std 141 (point by point) and IEC 60909-0. Every figure is worked out in the comment beside it.
"""

from __future__ import annotations

import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.protection.lines import feeder_line
from wyeline_linter.sizing.lines import size_feeder
from wyeline_linter.sizing.prepared import NotSized

US = """wye 1
project "Foundry"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 480Y/277  fault 20 kA, fault-min 15 kA, x/r 6
switchboard MSB 480Y/277  bus 800 A, main 800 A, rated 35 kA, service-equipment, lug-temp 75 degC
feeder UTIL -> MSB  2 sets 3x500kcmil + N 500kcmil Cu THWN-2  10 m  in 4 inch PVC-40
"""
TAP = """junction JB-1
feeder MSB -> JB-1  400 A 3p  3x600kcmil + N 600kcmil + G #3 Cu THWN-2  30 m  in 4 inch EMT
panel C 480Y/277  bus 225 A, main {main} A, rated 35 kA, lug-temp 75 degC
feeder JB-1 -> C  {wires}  {length} m  in EMT
  claim {claim}
"""


def analysis(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def told(text: str, *about: str) -> list[tuple[str, str]]:
    """What is found: the rule and what it is about."""
    found = [(f.rule, f.subject) for f in analysis(text).findings()]
    return [f for f in found if not about or f[0] in about]


def size(text: str, key: str) -> str:
    made = analysis(text)
    found = size_feeder(made.view, made.view.model.feeders[key])
    assert not isinstance(found, NotSized), found
    return found.wires


@pytest.mark.parametrize(
    ("claim", "main", "wires", "length", "holds"),
    # 400 A ahead: a tap of 25 ft (7.62 m) carries 133.3 A, one of 10 ft (3.05 m) 40 A, each what it ends in, with no
    # next size up. 75 degC: #10 35 A, #8 50 A, #1 130 A, #1/0 150 A.
    [
        ("tap-25ft", 150, "3#1/0 + N #1/0 + G #3 Cu THWN-2", 7.6, True),
        ("tap-25ft", 125, "3#1 + N #1 + G #3 Cu THWN-2", 7.6, False),
        ("tap-25ft", 150, "3#1/0 + N #1/0 + G #3 Cu THWN-2", 7.7, False),
        ("tap-25ft", 175, "3#1/0 + N #1/0 + G #3 Cu THWN-2", 7.0, False),
        ("tap-10ft", 50, "3#8 + N #8 + G #8 Cu THWN-2", 3.0, True),
        ("tap-10ft", 40, "3#10 + N #10 + G #10 Cu THWN-2", 3.0, False),
    ],
)
def test_taps(claim: str, main: int, wires: str, length: float, holds: bool) -> None:
    text = US + TAP.format(claim=claim, main=main, wires=wires, length=length)
    assert told(text) == ([] if holds else [("tap-unproven", "JB-1 -> C")])


@pytest.mark.parametrize(
    ("claim", "main", "wires"),
    # What a tap is sized for whatever hangs on it: the device it ends in, or a third or a tenth of the 400 A ahead.
    # Ground: 400 A asks for #3 Cu, and never more than the wires (NEC 250.122(A), (G)).
    [
        ("tap-25ft", 150, "3#1/0 + N #1/0 + G #3 Cu THWN-2"),
        ("tap-25ft", 60, "3#1/0 + N #1/0 + G #3 Cu THWN-2"),
        ("tap-25ft", 200, "3#3/0 + N #3/0 + G #3 Cu THWN-2"),
        ("tap-10ft", 60, "3#6 + N #6 + G #6 Cu THWN-2"),
        ("tap-10ft", 20, "3#8 + N #8 + G #8 Cu THWN-2"),
    ],
)
def test_a_tap_is_sized_by_its_rule(claim: str, main: int, wires: str) -> None:
    length = 3.0 if claim == "tap-10ft" else 7.0
    written = "3#12 + N #12 + G #12 Cu THWN-2"
    text = US + TAP.format(claim=claim, main=main, wires=written, length=length)
    assert size(text, "JB-1 -> C") == wires
    assert told(text.replace(written, wires)) == []


SECONDARY = """transformer TX-1 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2, electrode {electrode}
feeder MSB -> TX-1  {device} A 3p  3#4/0 + G #2 Cu THWN-2  10 m  in 2-1/2 inch EMT
panel LP-1 208Y/120  bus 225 A, main {main}, rated 10 kA, lug-temp 75 degC
feeder TX-1 -> LP-1  3#4/0 + N #4/0 + G {jumper} Cu THWN-2  3 m  in 2-1/2 inch EMT
  claim tap-10ft
"""


@pytest.mark.parametrize(
    ("device", "main", "rules"),
    # 75 kVA takes 90.2 A at 480 V and gives 208.2 A at 208 V. With a secondary device of 125 % (260 A) at the most the
    # primary may have 250 %: 225.5 A, so 225 A. Alone 125 %: 112.8 A, next standard size 125 A (NEC 450.3(B)); but a
    # delta-wye behind a primary device alone protects neither the panel nor its wires (240.21(C)(1), 408.36(B)).
    [
        (225, "225 A", []),
        (250, "225 A", ["primary-protection-large"]),
        (125, "lugs", ["panel-after-transformer-unprotected"]),
        (150, "lugs", ["primary-protection-large", "panel-after-transformer-unprotected"]),
    ],
)
def test_a_transformer_of_75_kva(device: int, main: str, rules: list[str]) -> None:
    text = US + SECONDARY.format(device=device, main=main, electrode="#2", jumper="#2")
    assert [rule for rule, _ in told(text)] == rules


@pytest.mark.parametrize(
    ("kva", "device", "secondary", "limit"),
    # 480 V, one phase. 3 kVA takes 6.25 A: alone 167 % (10.4 A, so a fuse of 10 A, as no breaker is made that small),
    # with a secondary device 250 % (15.6 A). 1 kVA takes 2.08 A: alone 167 %, a fuse of 3 A; its secondary of 8.33 A is
    # below 9 A and so guarded within 167 % (13.9 A): 20 A are none. 0.75 kVA takes 1.56 A: alone 300 %, 3 A.
    [
        (3, 15, "", 10.0),
        (3, 10, "", None),
        (3, 15, "30 A 1p", None),
        (3, 20, "30 A 1p", 15.0),
        (1, 15, "20 A 1p", 3.0),
        (1, 3, "20 A 1p", None),
        (0.75, 6, "", 3.0),
    ],
)
def test_small_transformers(kva: float, device: int, secondary: str, limit: float | None) -> None:
    text = US + f"transformer TX-1 480 1ph -> 120 1ph  {kva} kVA, z 3 %, x/r 1, electrode #8\n"
    text += f"feeder MSB[AB] -> TX-1  {device} A 2p fuse J  2#14 + G #14 Cu THWN-2  5 m  in 1/2 inch EMT\n"
    text += "load L-1 120 1ph  0.4 kVA, process\n"
    text += f"feeder TX-1 -> L-1  {secondary}  2#8 + G #8 Cu THWN-2  2 m  in 1 inch EMT\n"
    for written in (text, text.replace(" fuse J", "")):
        found = [f for f in analysis(written).findings() if f.rule == "primary-protection-large"]
        assert [f.needed.partition(" A:")[0] for f in found] == ([] if limit is None else [f"{limit:g}"])


def test_wires_behind_a_transformer_are_sized_by_what_they_end_in() -> None:
    """225 A: 4/0 Cu carries 230 A at 75 degC, though no load is written; 250.66 and 250.102(C)(1) ask #2 beside it."""
    text = US + SECONDARY.format(device=125, main="225 A", electrode="#2", jumper="#2")
    assert size(text.replace("3#4/0 + N #4/0 + G #2 Cu THWN-2  3 m", "3 m"), "TX-1 -> LP-1") == (
        "3#4/0 + N #4/0 + G #2 Cu THWN-2"
    )
    small = US + SECONDARY.format(device=125, main="225 A", electrode="#4", jumper="#4")
    assert told(small) == [("electrode-conductor-small", "TX-1"), ("bonding-jumper-small", "TX-1 -> LP-1")]


@pytest.mark.parametrize(
    ("device", "wires", "first", "rules"),
    # 50 hp 65 A, 30 hp 40 A, 10 hp 14 A (430.250): wires 1.25 x 65 + 40 + 14 = 135.25 A (430.24), #1/0 150 A, #1 130 A;
    # device 175 + 40 + 14 = 229 A, so 225 A (430.62); 175 A is 250 % of 65 A, rounded up (430.52).
    [
        (225, "3#1/0 + G #4", "175 A 3p  3#4", []),
        (250, "3#1/0 + G #4", "175 A 3p  3#4", ["motor-feeder-device"]),
        (225, "3#1 + G #4", "175 A 3p  3#4", ["motor-wire-small"]),
        (225, "3#1/0 + G #4", "200 A 3p  3#4", ["motor-device-oversized"]),
        (225, "3#1/0 + G #4", "175 A 3p  3#6", ["motor-wire-small"]),
    ],
)
def test_a_motor_group(device: int, wires: str, first: str, rules: list[str]) -> None:
    text = US + "mcc MCC-1 480 3ph  bus 600 A, main lugs, rated 35 kA, lug-temp 75 degC\n"
    text += f"feeder MSB -> MCC-1  {device} A 3p  {wires} Cu THWN-2  30 m  in 2 inch EMT\n"
    for name, hp, line in (("P-1", 50, first), ("P-2", 30, "100 A 3p  3#8"), ("P-3", 10, "35 A 3p  3#12")):
        ground = {"P-1": "#6", "P-2": "#8", "P-3": "#10"}[name]
        text += f"motor {name} 460 3ph  {hp} hp, pf 0.86, eff 92 %, lra 300 A\n"
        text += f"feeder MCC-1 -> {name}  {line} + G {ground} Cu THWN-2  30 m  in 1-1/4 inch EMT\n"
    assert [rule for rule, _ in told(text)] == rules


@pytest.mark.parametrize(
    ("marked", "wires", "rules"),
    # 20 hp 27 A at 460 V (430.250): 33.75 A. #10 carries 35 A at 75 degC, 30 A at 60; a motor's terminals are good for
    # 75 degC (110.14(C)(1)(a)(4)), the board's where they are marked so.
    [
        (", lug-temp 75 degC", "3#10 + G #10", []),
        (", lug-temp 60 degC", "3#10 + G #10", ["motor-wire-small"]),
        ("", "3#10 + G #10", ["motor-wire-small"]),
        (", lug-temp 75 degC", "3#12 + G #10", ["motor-wire-small"]),
    ],
)
def test_the_terminals_of_a_motor_s_circuit(marked: str, wires: str, rules: list[str]) -> None:
    text = US + f"panel LP 480Y/277  bus 225 A, main 200 A, rated 35 kA{marked}\n"
    text += (
        f'  1,3,5  35 A 3p  20 hp motor eff 91 %, pf 0.86  "Fan on roof"  {wires} Cu THWN-2  20 m  in 3/4 inch EMT\n'
    )
    text += "feeder MSB -> LP  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT, lug-temp 75 degC\n"
    assert [rule for rule, _ in told(text)] == rules


@pytest.mark.parametrize(
    ("device", "sets", "rules"),
    # 75 degC: 400 kcmil 335 A, 350 kcmil 310 A, 500 kcmil 380 A, #4/0 Al 180 A. Up to 800 A the next standard size may
    # stand above (240.4(B)), beyond not (240.4(C)). Every set has the whole ground (250.122(F)).
    [
        (1000, "3 sets 3x400kcmil + N 400kcmil + G #2/0 Cu", []),
        (1000, "3 sets 3x350kcmil + N 350kcmil + G #2/0 Cu", ["wire-underprotected"]),
        (800, "2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu", []),
        (800, "2 sets 3x500kcmil + N 500kcmil + G #1 Cu", ["equipment-ground-small"]),
        (400, "2 sets 3#4/0 + N #4/0 + G #1 Al", []),
        (400, "2 sets 3#1 + N #1 + G #3 Cu", ["parallel-too-small", "wire-underprotected"]),
    ],
)
def test_parallel_sets(device: int, sets: str, rules: list[str]) -> None:
    text = US.replace("bus 800 A, main 800 A", "bus 1200 A, main lugs").replace("2 sets 3x500", "4 sets 3x500")
    text += f"switchboard DP 480Y/277  bus {device} A, main lugs, rated 35 kA, lug-temp 75 degC\n"
    text += f"feeder MSB -> DP  {device} A 3p gfpe, gfpe-pickup 300 A  {sets} XHHW-2  30 m  in 4 inch EMT\n"
    found = told(text, "wire-underprotected", "equipment-ground-small", "parallel-too-small", "wires-underprotected")
    assert sorted(rule for rule, subject in found if subject == "MSB -> DP") == sorted(rules)


@pytest.mark.parametrize(
    ("row", "rules"),
    # #12 THHN 30 A, #10 40 A at 90 degC. 8 wires 0.70, 10 wires 0.50; 40 degC 0.91, 50 degC 0.82, 60 degC 0.71.
    # 30 x 0.91 x 0.70 = 19.1 A: 20 A; x 0.50 = 13.7 A: 15 A; 40 x 0.82 x 0.70 = 23.0 A: 25 A; 30 x 0.71 = 21.3 A.
    [
        ("20 A 1p  1 kVA process {} 2#12 + G #12 Cu THHN 15 m in 3/4 inch EMT, ambient 40 degC, grouped 4", []),
        (
            "20 A 1p  1 kVA process {} 2#12 + G #12 Cu THHN 15 m in 3/4 inch EMT, ambient 40 degC, grouped 5",
            ["bundled-not-derated"],
        ),
        ("20 A 1p  1 kVA process {} 2#12 + G #12 Cu THHN 15 m in 3/4 inch EMT, ambient 60 degC", []),
        (
            "30 A 1p  1 kVA process {} 2#10 + G #10 Cu THHN 15 m in 3/4 inch EMT, ambient 50 degC, grouped 4",
            ["bundled-not-derated"],
        ),
        ("25 A 1p  1 kVA process {} 2#12 + G #10 Cu THHN 15 m in 3/4 inch EMT", ["small-wire-limit"]),
    ],
)
def test_warm_and_crowded(row: str, rules: list[str]) -> None:
    text = US + "panel LP 480Y/277  bus 225 A, main 200 A, rated 35 kA, lug-temp 75 degC\n"
    text += f"  1  {row.format(chr(34) + 'Dryer one' + chr(34))}\n"
    text += "feeder MSB -> LP  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT\n"
    assert [rule for rule, _ in told(text)] == rules


def test_the_neutral_of_unlike_legs() -> None:
    """40, 30 and 10 A in phase with 120.09 V each: sqrt(a² + b² + c² - ab - bc - ca) = 26.4 A."""
    text = """project "Shop"
  basis us-2023
utility UTIL 208Y/120  fault 10 kA, fault-min 8 kA, x/r 3
panel LP 208Y/120  bus 225 A, main 200 A
  1  50 A 1p  4.8 kVA process  "One"
  3  40 A 1p  3.6 kVA process  "Two"
  5  20 A 1p  1.2 kVA process  "Three"
feeder UTIL -> LP
"""
    counted = analysis(text).view.loads.counted("LP")
    a, b, c = (va / (208 / math.sqrt(3)) for va in (4800, 3600, 1200))
    by_hand = math.sqrt(a * a + b * b + c * c - a * b - b * c - c * a)
    assert abs(counted.demand.amps[3]) == pytest.approx(by_hand, rel=1e-6)
    assert [abs(i) for i in counted.demand.amps[:3]] == pytest.approx([a, b, c])


def test_demand_by_class() -> None:
    """Receptacles 25 kVA: 10 + 7.5 = 17.5 (220.47); four kitchen units of 8 kVA at 80 % (220.56): 25.6; lighting 12 and
    heating 10 kVA for hours at 125 %: 27.5; 15 hp at 208 V 46.2 A: 16.64 kVA at 125 % 20.8 (430.24): 91.4 kVA."""
    rows = ["25 kVA receptacle", *["8 kVA kitchen"] * 4, "12 kVA lighting", "15 hp motor", "10 kVA heating continuous"]
    text = 'project "Shop"\n  basis us-2023\nutility UTIL 208Y/120  fault 10 kA, fault-min 8 kA, x/r 3\n'
    text += "panel LP 208Y/120  bus 600 A, main 600 A\n"
    text += "".join(f'  F{k}  100 A 3p  {row}  "Row {k}"\n' for k, row in enumerate(rows, 1)) + "feeder UTIL -> LP\n"
    motor = 46.2 * math.sqrt(3) * 208
    by_hand = 17_500 + 25_600 + 1.25 * (12_000 + 10_000) + 1.25 * motor
    sizing = analysis(text).view.loads.counted("LP").sizing
    assert sizing is not None
    assert sizing.va.real == pytest.approx(by_hand, rel=1e-3)


def test_faults_point_by_point() -> None:
    """12 kA at 13.8 kV behind 1000 kVA of 5.75 % and 10 m of five sets: 19.2 kA; the motor adds its locked rotor."""
    text = """project "Foundry"
  basis us-2023
utility UTIL 13.8 kV 3ph  fault 12 kA, fault-min 8 kA, x/r 10
transformer T-1 13.8 kV 3ph -> 480Y/277  1000 kVA, z 5.75 %, x/r 6
feeder UTIL -> T-1  resistance 0.3 ohm/km, reactance 0.12 ohm/km, 100 m
switchboard MSB 480Y/277  bus 1600 A, main 1600 A
feeder T-1 -> MSB  5 sets 3x400kcmil + N 400kcmil + G #3/0 Cu THWN-2  10 m  in 4 inch EMT
"""
    ratio = (480 / 13800) ** 2
    net = 13800 / math.sqrt(3) / 12e3 * ratio / math.hypot(1, 10) * complex(1, 10)
    cable = complex(0.03, 0.012) * ratio
    unit = 0.0575 * 480**2 / 1e6 / math.hypot(1, 6) * complex(1, 6)
    # 400 kcmil in steel: 0.115 ohm/km at 75 degC and 0.161 ohm/km (Chapter 9 Table 9: 0.035 and 0.049 ohm per 1000 ft).
    wires = complex(0.115 * (234.5 + 25) / (234.5 + 75), 0.161) * 0.010 / 5
    by_hand = 480 / math.sqrt(3) / abs(net + cable + unit + wires)
    study = analysis(text).view.studies.normal.largest
    (amps,), _ = study.deciding_at(["MSB"])
    assert amps == pytest.approx(by_hand, rel=0.01)


IEC = """project "Dairy"
  basis iec
  frequency 50 Hz
utility NETZ 10 kV 3ph  fault 14.43 kA, fault-min 10 kA, x/r 10
transformer T1 10 kV 3ph -> 400Y/230  630 kVA, connection Dyn11, z 4 %, loss 6.5 kW, earthing TN-S
feeder NETZ -> T1  resistance 0.2 ohm/km, reactance 0.1 ohm/km, 1 m
switchboard HV 400Y/230  bus 1000 A, incomer 1000 A, rated 36 kA
feeder T1 -> HV  4 sets 4x240mm2 + PE 120mm2 Cu XLPE  5 m  method F
"""


def test_iec_fault_behind_a_transformer() -> None:
    """630 kVA, 4 %: 10.16 mohm, R 2.62, K_T = 0.95 x 1.05 / (1 + 0.6 x_T) = 0.975; network 0.70 mohm: 22.6 kA."""
    z = 0.04 * 400**2 / 630e3
    r = 6500 * 400**2 / 630e3**2
    x = math.sqrt(z * z - r * r)
    k = 0.95 * 1.05 / (1 + 0.6 * x / (400**2 / 630e3))
    net = 1.1 * 10e3 / math.sqrt(3) / 14.43e3 * (400 / 10e3) ** 2 / math.hypot(1, 10) * complex(1, 10)
    bars = complex(18.51 / 240, 0.08) * 0.005 / 4
    by_hand = 1.05 * 400 / math.sqrt(3) / abs(k * complex(r, x) + net + bars)
    made = analysis(IEC).view.studies.normal.largest
    assert made.at("HV")["three-phase"].amperes == pytest.approx(by_hand, rel=0.002)
    (largest,), _ = made.deciding_at(["HV"])
    # A fault to the neutral is a little larger at a Dyn transformer: the network adds nothing to its zero sequence.
    assert by_hand < largest < 1.03 * by_hand


@pytest.mark.parametrize(
    ("row", "rules"),
    # PVC, three loaded wires: 16 mm2 B2 62 A, 10 mm2 B2 46 A x 0.87 (40 degC) = 40.0 A; two loaded: 2.5 mm2 B2 23 A x
    # 0.70 (three circuits) = 16.1 A. C16 trips at once from 160 A: 0.8 x 230 x 2.5 / (2 x 0.0225 x 160) = 64 m.
    [
        ("63 A 3p curve C  30 kW heating {} 5G16mm2 Cu PVC 30 m method B2", ["wire-underprotected"]),
        ("40 A 3p curve C  20 kW heating {} 5G10mm2 Cu PVC 30 m method B2, ambient 40 degC", []),
        ("20 A 1p+N curve B  3 kW heating {} 3G2.5mm2 Cu PVC 20 m method B2, grouped 3", ["bundled-not-derated"]),
        ("16 A 1p+N curve C  0.5 kW process {} 3G2.5mm2 Cu PVC 40 m method C", []),
        ("16 A 1p+N curve C  0.5 kW process {} 3G2.5mm2 Cu PVC 80 m method C", ["disconnection-too-slow"]),
    ],
)
def test_iec_circuits(row: str, rules: list[str]) -> None:
    legs = "" if "3p" in row else "[L1]"
    text = IEC + "panel UV 400Y/230  bus 160 A, incomer 125 A, rated 16 kA\n"
    text += f"  F1{legs}  {row.format(chr(34) + 'Oven, hall' + chr(34))}\n"
    text += "feeder HV -> UV  125 A 3p fuse gG  4x50mm2 + PE 25mm2 Cu XLPE  30 m  method E\n"
    made = analysis(text)
    found = [f.rule for f in made.all_findings() if f.position == "F1"]
    assert found == rules


def test_how_a_group_lies_is_said_where_nobody_wrote_it() -> None:
    """B.52.17: four circuits keep 0.77 in one layer on a tray, 0.65 bunched; the better of the two is an assumption."""
    text = IEC + "load L-1 400Y/230  20 kW, heating\n"
    text += "feeder HV -> L-1  63 A 3p curve C  4x16mm2 + PE 16mm2 Cu XLPE  20 m method E, grouped 4{}\n"
    for laid, said in (("", True), (" in tray", False)):
        made = analysis(text.format(laid))
        line = feeder_line(made.view, made.view.model.feeders["HV -> L-1"])
        assert line is not None and line.laid is not None
        assert (line.laid.arrangement, line.laid.circuits) == ("tray", 4)
        assert any("one layer, as on a tray" in remark for remark in line.assumed) == said
