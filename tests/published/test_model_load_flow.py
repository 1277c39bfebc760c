"""Worked voltage-drop, transformer and motor-start examples said as models."""

from __future__ import annotations

import pytest
from studied_models import PURE_X, studied

from wyeline_linter.studies.branch import branch_drops
from wyeline_linter.studies.starting import at_standstill, starts_from

US = 'project "P"\n  basis us-2023\n  frequency 60 Hz\n'


def test_loads_on_a_centre_tapped_transformer() -> None:
    """W. H. Kersting, Distribution System Modeling and Analysis: 50 kVA, 7200-120/240 V, R 0.011, X 0.018; inputs from
    memory, all outputs recomputed with his equations."""
    z = abs(complex(0.011, 0.018))
    study = studied(
        "utility UTIL 7.2 kV 1ph  fault 5000 MVA, fault-min 4000 MVA, x/r 10\n"
        f"transformer T1 7.2 kV 1ph -> 120/240  50 kVA, z {100 * z:.6f} %, x/r {0.018 / 0.011:.6f}\n"
        "feeder UTIL -> T1  0.05 m  2x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
        "feeder T1 -> LP-1  0.05 m  3x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
        "panel LP-1\n"
        '  1  100 A 1p  10 kVA  process pf 0.95  "One"\n'
        '  3  150 A 1p  15 kVA  process pf 0.9  "Two"\n'
        '  2,4  150 A 2p  25 kVA  process pf 0.85  "Both"\n'
    )
    volts = {p.between: p.volts for p in study.flow.volts("LP-1")}
    assert volts["A", "N"] == pytest.approx(117.88, abs=0.01)
    assert volts["B", "N"] == pytest.approx(117.71, abs=0.01)
    assert volts["A", "B"] == pytest.approx(235.60, abs=0.01)
    currents = study.flow.currents("T1 -> LP-1")
    assert currents is not None
    assert abs(currents["A"]) == pytest.approx(189.6, abs=0.1)
    assert abs(currents["B"]) == pytest.approx(233.2, abs=0.1)
    assert abs(currents["N"]) == pytest.approx(44.8, abs=0.1)
    primary = study.flow.currents("UTIL -> T1")
    assert primary is not None
    assert max(abs(i) for i in primary.values()) == pytest.approx(7.05, abs=0.01)


@pytest.mark.parametrize(
    ("circuit", "volts"),
    [
        # NEC Chapter 9 Table 9 arithmetic, 65 A over 1000 ft of 2/0 Cu in steel at 0.85 (checked again by hand).
        ('1,3,5  100 A 3p  draws 65 A pf 0.85 process "Far"  3#2/0 + G #6 Cu  1000 ft  in 2 inch EMT', 12.778),
        ('1,3  100 A 2p  draws 65 A pf 0.85 process "Far"  2#2/0 + G #6 Cu  1000 ft  in 2 inch EMT', 14.755),
        ('1,3,5  100 A 3p  draws 65 A pf 0.85 process "Far"  3#2/0 + G #6 Al  1000 ft  in 2 inch EMT', 18.52),
        # 100 A over 200 ft of 1 AWG Cu in steel at 0.85: derived from the same table.
        ('1,3,5  125 A 3p  draws 100 A pf 0.85 process "Near"  3#1 + G #6 Cu  200 ft  in 2 inch EMT', 5.75),
    ],
)
def test_hand_formula_of_a_circuit(circuit: str, volts: float) -> None:
    study = studied(
        US + "utility UTIL 480Y/277  fault 20 kA, fault-min 15 kA, x/r 4\n"
        "feeder UTIL -> LP-1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu  5 m  in 2-1/2 inch EMT\n"
        f"panel LP-1 480Y/277  bus 225 A\n  {circuit}\n"
    )
    board = study.equipment("LP-1")
    assert board is not None
    (drop,) = branch_drops(study, board)
    assert drop.volts == pytest.approx(volts, rel=1e-3)


def test_solved_drop_of_a_feeder_is_near_the_hand_formula() -> None:
    """The same 65 A as a load: it draws constant power, so its current rises with what the wire loses."""
    study = studied(
        US
        + "utility UTIL 480 3ph  fault 20 kA, fault-min 15 kA, x/r 4\nload FAR 480 3ph  draws 65 A, pf 0.85, process\n"
        "feeder UTIL -> FAR  100 A 3p  3#2/0 + G #6 Cu  1000 ft  in 2 inch EMT\n"
    )
    drop = study.flow.drop("UTIL -> FAR")
    assert drop is not None
    assert drop.volts == pytest.approx(12.778 * 480 / (480 - 12.778), rel=5e-3)


def test_motor_start_on_a_transformer() -> None:
    """electrical-engineering-portal.com, "Calculating transformer size and voltage drop due to starting": 1000 kVA,
    11/0.48 kV, 5.75 %, 2,118 A locked rotor at 460 V: 1,688 kVA / 17,391 kVA = 9.7 %, which is S_start / S_sc; the
    divider of two impedances gives a little less. That current is the one at the 460 V of the nameplate."""
    study = studied(
        f"utility UTIL 11 kV 3ph  fault 5000 MVA, fault-min 5000 MVA, x/r {PURE_X}\n"
        f"transformer T1 11 kV 3ph -> 480Y/277  1000 kVA, z 5.75 %, x/r {PURE_X}, connection Dyn1\n"
        "feeder UTIL -> T1  0.05 m  3x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
        "feeder T1 -> M1  0.05 m  3x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
        "motor M1 460 3ph  300 kW, pf 0.8, eff 95 %, lra 2118 A, starter DOL\n"
    )
    motor = study.equipment("M1")
    assert motor is not None
    standing = at_standstill(study, motor, study.loads_at["M1"][""])
    assert standing is not None
    (start,) = starts_from(study, [standing])
    locked = 460 / 3**0.5 / 2118 * complex(0.3, (1 - 0.3**2) ** 0.5)
    behind = 1j * (0.0575 * 480**2 / 1e6 + 480**2 / 5e9)
    assert start.dip == pytest.approx(1 - abs(locked) / abs(locked + behind), rel=1e-3)
    assert start.dip == pytest.approx(0.097, abs=0.006)


def test_a_code_letter_is_its_locked_rotor_current() -> None:
    """NEC 2023 430.7(B): letter G ends at 6.29 kVA per horsepower, for 100 hp at 460 V 629 kVA / 797 V = 789.5 A."""

    def dip(stated: str) -> float:
        study = studied(
            US + "utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\n"
            f"motor P-1 460 3ph  100 hp, pf 0.87, eff 95 %, {stated}\n"
            "feeder UTIL -> P-1  200 A 3p  3#3/0 + G #4 Cu THWN-2  20 m  in 2 inch EMT\n"
        )
        motor = study.equipment("P-1")
        assert motor is not None
        standing = at_standstill(study, motor, study.loads_at["P-1"][""])
        assert standing is not None
        return starts_from(study, [standing])[0].dip

    assert dip("code-letter G") == pytest.approx(dip("lra 789.5 A"), rel=1e-3)
    assert dip("code-letter G") > dip("lra 700 A")
