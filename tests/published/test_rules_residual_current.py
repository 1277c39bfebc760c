"""Residual current devices by type: charging points, drives, inverters; and the NEC's receptacles for charging.

IEC 60364-7-722:2018 722.411.3.3 and 722.531.3.101, IEC 60364-7-712:2017 712.531.3.5, IEC 60364-5-53:2019 531.3.3 with
the types of IEC 61008-1 and IEC 62423, NEC 2023 555.35 and 625.54: from memory, paraphrased.
"""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding

SITE = """project "Quay"
  basis iec
utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S
feeder NETT -> HV  160 A 3p
panel HV 400Y/230  bus 160 A, main 160 A
"""
US = """project "Quay"
  basis us-2023
utility UTIL 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4
feeder UTIL -> LP-1
panel LP-1 208Y/120  bus 225 A, main 200 A, service-equipment
"""
ABOUT = ("charging-point-rcd", "rcd-type-unfit", "rcd-or-gfci-missing")


def told(text: str) -> list[tuple[str, str]]:
    """The rules of this page that find something, each with its severity."""
    return [(f.rule, f.severity.name.lower()) for f in found(text)]


def found(text: str) -> list[Finding]:
    findings = Analysis("/m/site.wye", Files(lambda _: text), "/m").findings()
    return [f for f in findings if f.rule in ABOUT]


@pytest.mark.parametrize(
    ("device", "verdict"),
    # A connecting point has an RCD of 30 mA or less to itself, at least type A; against direct current type B, or type
    # A or F with a device that opens at 6 mA of it (IEC 62955).
    [
        ("rcd 30 mA, rcd-type B  11 kW ev", None),
        ("rcd 10 mA, rcd-type B  11 kW ev", None),
        ("rcd 30 mA, rcd-type A  11 kW ev rdc-dd", None),
        ("rcd 30 mA, rcd-type F  11 kW ev rdc-dd", None),
        ("rcd 30 mA, rcd-type A  11 kW ev", "error"),
        ("rcd 30 mA, rcd-type F  11 kW ev", "error"),
        ("rcd 30 mA, rcd-type AC  11 kW ev rdc-dd", "error"),
        ("rcd 100 mA, rcd-type B  11 kW ev", "error"),
        ("11 kW ev rdc-dd", "error"),
        ("rcd 30 mA  11 kW ev rdc-dd", "gap"),
        ("rcd 30 mA, rcd-type S  11 kW ev", "gap"),
        ("rcd 30 mA, rcd-type B  11 kW ev count 2", "error"),
    ],
)
def test_a_circuit_to_a_charging_point(device: str, verdict: str | None) -> None:
    want = [("charging-point-rcd", verdict)] if verdict is not None else []
    assert told(SITE + f'  F1  20 A 3p+N curve C  {device}  "Point 1, quay"\n') == want
    behind = device.replace("  11 kW ev", "\ncharger EV-1 400Y/230  11 kW, ev", 1).replace("11 kW ev", "")
    line, _, charger = behind.partition("\n")
    if charger:
        assert told(SITE + f"{charger}\nfeeder HV -> EV-1  20 A 3p+N curve C {line}\n") == want


def test_one_rcd_ahead_of_a_board_is_no_point_s_own() -> None:
    """722.411.3.3: each point individually. Alone on its board it has the RCD ahead to itself."""
    board = SITE.replace("main 160 A", "main 160 A, rcd 30 mA, rcd-type B")
    point = '  F{0}  20 A 3p+N curve C  11 kW ev  "Point {0}, quay"\n'
    assert told(board + point.format(1)) == []
    assert [r for r, _ in told(board + point.format(1) + point.format(2))] == ["charging-point-rcd"] * 2
    garage = "panel HV-2 400Y/230  bus 63 A, main 63 A\n" + point.format(1) + "feeder HV -> HV-2  63 A 3p+N"
    assert told(SITE + garage + ", rcd 30 mA, rcd-type B\n") == []
    assert told(board + garage + "\n") == [("charging-point-rcd", "error")]


def test_a_switch_of_one_point_may_hold_its_rcd() -> None:
    """What lies behind the last board guards this point alone, what lies ahead of a board all that hangs on it."""
    point = "disconnect DS-1  20 A 3p\ncharger EV-1 400Y/230  11 kW, ev\nfeeder DS-1 -> EV-1\n"
    assert told(SITE + point + "feeder HV -> DS-1  20 A 3p+N curve C, rcd 30 mA, rcd-type B\n") == []
    assert told(SITE + point + "feeder HV -> DS-1  20 A 3p+N, rcd 30 mA, rcd-type A\n") == [
        ("charging-point-rcd", "error")
    ]
    ahead = SITE.replace("NETT -> HV  160 A 3p", "NETT -> DS-0  160 A 3p+N, rcd 30 mA, rcd-type B\nfeeder DS-0 -> HV")
    ahead += "disconnect DS-0  160 A 3p\n"
    assert told(ahead + point + "feeder HV -> DS-1  20 A 3p+N curve C\n") == [("charging-point-rcd", "error")]


def test_what_the_charging_point_holds_itself() -> None:
    """722.411.3.3 leaves out what the charging equipment provides; somebody has to say which equipment that is."""
    point = '  F1  20 A 3p+N curve C  11 kW ev  "Point 1, quay"\n'
    assert told(SITE + point) == [("charging-point-rcd", "error")]
    assert told(SITE + point + "  claim rcd-in-charging-point at F1\n") == [("charging-point-rcd", "error")]
    assert told(SITE + point + '  claim rcd-in-charging-point at F1 "column of sheet E-7"\n') == []


def test_a_station_of_direct_current_is_no_ac_connecting_point() -> None:
    assert told(SITE + "charger DC-1 400Y/230 -> 400 dc  60 kW, ev\nfeeder HV -> DC-1  100 A 3p+N\n") == []
    assert told(SITE + '  F1  125 A 3p+N  70 kW ev  "Fast charger"\n') == []


@pytest.mark.parametrize(("kind", "fits"), [("AC", False), ("A", False), ("A-S", False), ("F", False), ("B", True)])
def test_a_six_pulse_rectifier_wants_type_b(kind: str, fits: bool) -> None:
    """Smooth direct residual current: type B only (IEC 62423; the warning text of IEC 61800-5-1)."""
    drive = "drive FU-1 400 3ph  5.5 kW, fla 11 A\n"
    text = SITE + drive + f"feeder HV -> FU-1  20 A 3p curve C, rcd 300 mA, rcd-type {kind}\n"
    assert told(text) == ([] if fits else [("rcd-type-unfit", "error")])
    ahead = SITE.replace("main 160 A", f"main 160 A, rcd 300 mA, rcd-type {kind}")
    assert told(ahead + drive + "feeder HV -> FU-1  20 A 3p curve C\n") == told(text)
    circuit = '  F1  20 A 3p curve C  5.5 kW drive fla 11 A  "Fan, loft"\n'
    assert told(ahead + circuit) == told(text)


@pytest.mark.parametrize(("kind", "fits"), [("AC", False), ("A", False), ("F", True), ("B", True)])
def test_a_drive_between_a_leg_and_the_neutral_wants_type_f(kind: str, fits: bool) -> None:
    """Mixed frequencies: type F was made for single-phase inverters between a leg and the neutral (IEC 62423)."""
    circuit = (
        f'  F1[L1]  16 A 1p+N curve C, rcd 30 mA, rcd-type {kind}  1.5 kW motor fla 9 A, starter VFD  "Fan, loft"\n'
    )
    assert told(SITE + circuit) == ([] if fits else [("rcd-type-unfit", "error")])


def test_a_drive_without_an_rcd_asks_for_none() -> None:
    assert told(SITE + "drive FU-1 400 3ph  5.5 kW, fla 11 A\nfeeder HV -> FU-1  20 A 3p curve C\n") == []


def test_a_transformer_ends_what_the_rcd_ahead_of_it_sees() -> None:
    """Behind windings of its own a direct current to earth does not pass the RCD ahead of them."""
    board = SITE.replace("main 160 A", "main 160 A, rcd 300 mA, rcd-type A")
    drive = "transformer T-1 400 3ph -> 400Y/230  16 kVA, z 4 %, x/r 2\nfeeder HV -> T-1  25 A 3p\n"
    drive += "drive FU-1 400 3ph  5.5 kW, fla 11 A\nfeeder T-1 -> FU-1  20 A 3p curve C\n"
    assert told(board + drive) == []


@pytest.mark.parametrize("way", ["feeder PV -> HV", "feeder HV -> PV"])
def test_an_inverter_of_a_plant(way: str) -> None:
    """712.531.3.5: type B, unless simple separation or the maker's word says that no direct current can come."""
    plant = "inverter PV 400Y/230  20 kW, limit 1.1 pu, grid-following\n"
    line = f"{way}  40 A 3p+N, rcd 300 mA, rcd-type {{}}\n"
    assert told(SITE + plant + line.format("B")) == []
    assert told(SITE + plant + line.format("A")) == [("rcd-type-unfit", "error")]
    claim = '  claim no-direct-residual "data sheet D-3"\n'
    assert told(SITE + plant + line.format("A") + claim) == []
    assert told(SITE + plant + f"{way}  40 A 3p+N\n") == []
    ahead = SITE.replace("main 160 A", "main 160 A, rcd 300 mA, rcd-type A")
    assert told(ahead + plant + f"{way}  40 A 3p+N\n") == [("rcd-type-unfit", "error")]


def test_a_point_of_type_b_numbs_a_type_a_ahead() -> None:
    """Type B of 30 mA may let up to 60 mA of smooth direct current stand (IEC 62423); type A bears 6 mA."""
    board = SITE.replace("main 160 A", "main 160 A, rcd 300 mA, rcd-type A")
    point = '  F1  20 A 3p+N curve C, rcd 30 mA, rcd-type {}  "Point 1, quay"\n'
    other = '  F2  10 A 3p  2 kW heating  "Heater, shed"\n'
    assert told(board + point.format("B  11 kW ev") + other) == [("rcd-type-unfit", "error")]
    assert told(board + point.format("A  11 kW ev rdc-dd") + other) == []


@pytest.mark.parametrize(
    ("row", "fits"),
    # 625.54: every receptacle for the charging of vehicles; 210.8: outdoors. A GFCI for people is class A of UL 943, 4
    # to 6 mA; 555.35 asks 30 mA of shore power. What is wired in has no receptacle.
    [
        ("ev receptacle", False),
        ("ev receptacle gfci", True),
        ("rcd 30 mA ev receptacle", False),
        ("rcd 6 mA ev receptacle", True),
        ("ev", True),
        ("receptacle outdoor", False),
        ("rcd 30 mA receptacle outdoor", False),
        ("receptacle marina", False),
        ("rcd 30 mA receptacle marina", True),
    ],
)
def test_receptacles_under_the_nec(row: str, fits: bool) -> None:
    text = US + f'  1,3  40 A 2p  6 kVA  {row}  "Pier, bay 1"\n'
    assert told(text) == ([] if fits else [("rcd-or-gfci-missing", "warning")])
