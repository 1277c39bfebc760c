"""What running machines add to a fault, beside the first-cycle reactance of IEEE Std 141 (from memory).

That the classes named here are machines is common practice, no source; that a nameplate with a least ampacity belongs
to equipment with motors is NEC 430.7(D) and 440.4(B).
"""

from __future__ import annotations

import cmath
import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.studies.working_fault import fault_figure

SITE = """wye 1
project "Cold store"
  basis us-2023
utility UTIL 480 3ph  fault 20 kA, x/r 6
mcc DP 480 3ph  bus 600 A, rated 30 kA
  C1  90 A 3p  {load}  "Chiller"
feeder UTIL -> DP  2 sets 3#4/0 Cu THWN-2  20 m  in 3 inch EMT
"""


def loop_siemens(load: str) -> complex:
    """One over the impedance of the three-phase loop at the board."""
    view = Analysis("/m/site.wye", Files(lambda _: SITE.format(load=load)), "/m").view
    fault = view.studies.normal.largest.at("DP")["three-phase"]
    assert fault.amperes is not None and fault.x_over_r is not None
    return fault.amperes / (480.0 / math.sqrt(3.0)) * cmath.exp(-1j * math.atan(fault.x_over_r))


@pytest.mark.parametrize(
    ("load", "reactance_pu", "x_over_r", "va"),
    [
        # From 50 hp 0.20 per unit, below 0.28 (1.67 times 0.167); X/R 10 and 5 of the middle of the curves.
        ("mca 62 A  cooling", 0.20, 10.0, math.sqrt(3.0) * 480 * 62),
        ("mca 62 A", 0.20, 10.0, math.sqrt(3.0) * 480 * 62),
        ("25 kVA  pump", 0.28, 5.0, 25e3),
        ("25 kVA  fan", 0.28, 5.0, 25e3),
        ("25 kVA  elevator", 0.28, 5.0, 25e3),
    ],
)
def test_running_machines_are_added(load: str, reactance_pu: float, x_over_r: float, va: float) -> None:
    added = loop_siemens(load) - loop_siemens(load + " starter VFD")
    size_ohm = reactance_pu * 480**2 / va
    expected = 1 / (size_ohm * cmath.exp(1j * math.atan(x_over_r)))
    assert added == pytest.approx(expected, rel=2e-3)


@pytest.mark.parametrize("load", ["50 kVA  heating", "50 kVA  lighting", "mca 62 A  heating", "50 kVA  process"])
def test_what_does_not_turn_adds_nothing(load: str) -> None:
    assert loop_siemens(load) == pytest.approx(loop_siemens("20 kVA  lighting"), rel=1e-9)


def test_the_working_names_what_is_counted_as_a_motor_the_largest_first() -> None:
    site = SITE.format(load="mca 62 A  cooling").replace("feeder", '  C2  15 A 3p  1.5 hp  motor  "Rake"\nfeeder')
    study = Analysis("/m/site.wye", Files(lambda _: site), "/m").view.studies.normal
    assumed = [note for note in fault_figure(study, "DP").assumptions if "reactance" in note]
    assert [("C1" in note, "counted as a running motor" in note) for note in assumed] == [(True, True), (False, False)]
