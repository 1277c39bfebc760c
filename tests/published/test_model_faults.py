"""Worked short-circuit examples said as models: text in, fault current out.

Where an example gives cables in ohm per length, the model writes `resistance` and `reactance`; a source or transformer
"as pure X" is one with a very large X/R.
"""

from __future__ import annotations

import pytest
from studied_models import PURE_X, studied

from wyeline_linter.studies.case import Case
from wyeline_linter.studies.study import StateStudy


def amperes(study: StateStudy, name: str, kind: str) -> float:
    found = study.largest.at(name)[kind].amperes
    assert found is not None
    return found


def test_cables_behind_a_2000_kva_transformer() -> None:
    """scribd.com/document/867618935 ("Short Circuit Calculations"): per unit and ohm, every line of its table."""
    study = studied(
        f"utility UTIL 22 kV 3ph  fault 500 MVA, fault-min 400 MVA, x/r {PURE_X}\n"
        f"transformer T1 22 kV 3ph -> 380Y/220  2000 kVA, z 5.75 %, x/r {PURE_X}, connection Dyn11\n"
        "switchboard MSB\nswitchboard SMDB-1\npanel HVAC1\npanel HVAC2\npanel END\n"
        "feeder UTIL -> T1  0.05 m  3x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
        "feeder T1 -> MSB  4 sets 4x300mm2 Cu  5 m  resistance 0.0812 ohm/km  reactance 0.09 ohm/km\n"
        "feeder MSB -> SMDB-1  2 sets 4x300mm2 Cu  60 m  resistance 0.0812 ohm/km  reactance 0.09 ohm/km\n"
        "feeder SMDB-1 -> HVAC1  4x300mm2 Cu  12 m  resistance 0.0812 ohm/km  reactance 0.09 ohm/km\n"
        "feeder MSB -> HVAC2  4x240mm2 Cu  30 m  resistance 0.0993 ohm/km  reactance 0.09 ohm/km\n"
        "feeder MSB -> END  4x10mm2 Cu  20 m  resistance 2.333 ohm/km  reactance 0.109 ohm/km\n"
    )
    table = {"T1": 49.41, "MSB": 48.18, "SMDB-1": 28.55, "HVAC1": 24.26, "HVAC2": 27.84, "END": 4.64}
    for name, kiloamperes in table.items():
        assert amperes(study, name, "three-phase") == pytest.approx(1000 * kiloamperes, abs=5.01), name


def test_infinite_bus_behind_1500_kva() -> None:
    """IAEI Magazine, August 2018: 1500 kVA, 480 V, 5.75 % gives 31,374 A (unrounded current: 31,378)."""
    study = studied(
        "utility UTIL 12.47 kV 3ph  infinite\n"
        f"transformer T1 12.47 kV 3ph -> 480Y/277  1500 kVA, z 5.75 %, x/r {PURE_X}, connection Dyn1\n"
        "feeder UTIL -> T1  0.05 m  3x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
    )
    assert amperes(study, "T1", "three-phase") == pytest.approx(31_378, rel=1e-4)
    assert amperes(study, "T1", "line-ground") == pytest.approx(31_378, rel=1e-4)
    assert study.largest.built.ceiling["T1"] == "UTIL"
    assert study.smallest.worst("T1") is None
    assert "fault-min" in study.smallest.reasons("T1")[0]


def test_delta_wye_transformer_makes_the_earth_fault_the_largest() -> None:
    """Derived by symmetrical components: 1500 kVA, 5.75 %, 500 MVA source, its zero sequence blocked by the delta."""
    study = studied(
        f"utility UTIL 12.47Y/7.2 kV  fault 500 MVA, fault-min 400 MVA, x/r {PURE_X}\n"
        f"transformer T1 12.47 kV 3ph -> 480Y/277  1500 kVA, z 5.75 %, x/r {PURE_X}, connection Dyn1\n"
        "feeder UTIL -> T1  0.05 m  3x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
    )
    assert amperes(study, "T1", "three-phase") == pytest.approx(29_822, rel=1e-4)
    assert amperes(study, "T1", "line-line") == pytest.approx(25_826, rel=1e-4)
    assert amperes(study, "T1", "line-ground") == pytest.approx(30_323, rel=1e-4)


def test_earth_fault_at_a_generator() -> None:
    """byjus.com: 25 MVA, 13.2 kV, X1 0.25, X2 0.35, X0 0.10, solidly grounded: 4,684 A (unrounded 4,686.3)."""
    study = studied(
        "generator G1 13.2Y/7.62 kV  25 MVA, pf 0.8, subtransient 25 %, x2 35 %, x0 10 %, neutral bonded\n"
        f"  x/r {PURE_X}\n"
    )
    assert amperes(study, "G1", "line-ground") == pytest.approx(4_686.3, rel=1e-3)


def test_centre_tapped_transformer_gives_more_to_neutral() -> None:
    """Split impedances R + jX and 1.5 R + j1.2 X (Kersting): 25 kVA, 240 V, 2 % at x/r 1.5, unlimited primary."""
    study = studied(
        "utility UTIL 7.2 kV 1ph  infinite\n"
        "transformer T1 7.2 kV 1ph -> 120/240  25 kVA, z 2 %, x/r 1.5\n"
        "feeder UTIL -> T1  0.05 m  2x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
    )
    r, x = 0.02 / (1 + 1.5**2) ** 0.5, 1.5 * 0.02 / (1 + 1.5**2) ** 0.5
    assert amperes(study, "T1", "line-line") == pytest.approx(25_000 / 240 / 0.02, rel=1e-4)
    half = 25_000 / 120 / abs(complex(1.5 * r, 1.2 * x))
    assert amperes(study, "T1", "line-neutral") == pytest.approx(half, rel=1e-4)


def test_iec_factors_of_transformer_and_voltage() -> None:
    """IEC 60909-0: c 1.05 at 400 V, K_T = 0.95 c / (1 + 0.6 x_T), Z_Q = 1.1 U / (sqrt3 I"k); worked by hand here."""
    study = studied(
        'project "P"\n  basis iec\n'
        f"utility UTIL 10 kV 3ph  fault 10 kA, fault-min 8 kA, x/r {PURE_X}\n"
        f"transformer T1 10 kV 3ph -> 400Y/230  400 kVA, z 4 %, x/r {PURE_X}, connection Dyn5, earthing TN-S\n"
        "feeder UTIL -> T1  0.05 m  3x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
    )
    source = 1.1 * 10_000 / (3**0.5 * 10_000) * 0.04**2
    k_t = 0.95 * 1.05 / (1 + 0.6 * 0.04)
    whole = source + k_t * 0.04 * 400**2 / 400e3
    assert amperes(study, "T1", "three-phase") == pytest.approx(1.05 * 400 / 3**0.5 / whole, rel=1e-4)
    fault = study.largest.at("T1")["three-phase"]
    peak = study.largest.peak_a(fault)
    assert peak == pytest.approx(2.0 * 2**0.5 * (fault.amperes or 0), rel=1e-3)


def test_an_earth_fault_in_a_tt_system_returns_through_the_electrode() -> None:
    # By hand: c U0 / |Z(supply and wires) + RA|, in the way of IEC 60364-4-41, 411.5 and IEC 60909-0 (c 1.05).
    study = studied(
        """
project "Quay"
  basis iec
  frequency 50 Hz

utility QUAY 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TT, resistance 20 ohm
switchboard HV 400Y/230  bus 100 A, rated 16 kA
feeder QUAY -> HV  63 A 4p  4x16mm2 + PE 16mm2 Cu XLPE  100 m
"""
    )
    wire = study.built(Case.MAX).lines["QUAY -> HV"].leg
    assert wire is not None
    supply = 1.05 * 400 / 3**0.5 / 10e3 * complex(1, 4) / 17**0.5
    by_hand = 1.05 * 400 / 3**0.5 / abs(supply + 2 * wire + 20)
    assert study.largest.at("HV")["line-ground"].amperes == pytest.approx(by_hand, rel=1e-6)
    # What the supply's own electrode adds is written nowhere, so the smallest current is unknown.
    assert "line-ground" not in study.smallest.at("HV")
    assert "own electrode" in study.smallest.reasons("HV", kind="line-ground")[0]


def test_winding_loss_as_a_share_is_the_loss_in_watts() -> None:
    """1.2 % of 75 kVA are 900 W: R = 1.2 %, X = sqrt(4^2 - 1.2^2) % = 3.816 %, X over R 3.18."""

    def ratio(stated: str) -> float:
        study = studied(
            f"utility UTIL 480 3ph  fault 1000 MVA, fault-min 1000 MVA, x/r {PURE_X}\n"
            f"transformer TX-1 480 3ph -> 208Y/120  75 kVA, z 4 %, {stated}, connection Dyn1\n"
            "feeder UTIL -> TX-1  0.01 m  3x500mm2 + PE 95mm2 Cu  resistance 0.01 ohm/km  reactance 0.01 ohm/km\n"
        )
        found = study.largest.at("TX-1")["three-phase"].x_over_r
        assert found is not None
        return found

    assert ratio("loss 900 W") == pytest.approx(3.816 / 1.2, rel=0.01)
    assert ratio("loss 1.2 %") == pytest.approx(ratio("loss 900 W"), rel=1e-9)


def test_a_source_without_a_ratio_under_iec_practice() -> None:
    """IEC 60909-0 6.2: where the resistance of a network is not known, R = 0.1 X."""
    study = studied('project "Mill"\n  basis iec\nutility NETT 400Y/230  fault 10 kA, fault-min 6 kA, earthing TN-S\n')
    assert study.largest.at("NETT")["three-phase"].x_over_r == pytest.approx(10)
