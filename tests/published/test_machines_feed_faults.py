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


def test_the_shares_of_a_fault_are_those_of_superposition() -> None:
    """A machine before the line and one behind it, a fault behind it. Each electromotive force alone, by series and
    parallel impedances (superposition); of each current the part in step with the sum, so that these add up."""
    site = SITE.format(load="mca 62 A  cooling") + (
        'mcc LP 480 3ph  bus 200 A, rated 30 kA\n  C1  60 A 3p  25 kVA  pump  "Well"\n'
        "feeder DP -> LP  200 A 3p  3#3/0 Cu THWN-2  60 m  in 2 inch EMT\n"
    )
    study = Analysis("/m/site.wye", Files(lambda _: site), "/m").view.studies.normal
    line = study.largest.built.lines

    def of_size(ohm: float, x_over_r: float) -> complex:
        return ohm * cmath.exp(1j * math.atan(x_over_r))

    volts = 480.0 / math.sqrt(3.0)
    source = of_size(volts / 20e3, 6.0) + (line["UTIL -> DP"].leg or 0j)
    first = of_size(0.20 * 480**2 / (math.sqrt(3.0) * 480 * 62), 10.0)
    second = of_size(0.28 * 480**2 / 25e3, 5.0)
    way = line["DP -> LP"].leg or 0j

    def driven(own: complex, beside: complex) -> complex:
        """Current in the line to the fault from a source behind ``own``, the other one of DP being ``beside`` it."""
        across = beside * way / (beside + way)
        return volts / (own + across) * beside / (beside + way)

    currents = driven(source, first), driven(first, source), volts / second
    total = sum(currents)
    expected = [(i * total.conjugate() / abs(total)).real for i in currents]
    printed = [i for i in fault_figure(study, "LP", kind="three-phase").inputs if i.symbol.startswith("I")]
    told = {i.name.partition("`")[2].rstrip("`"): i.value for i in printed}
    assert [told[name] for name in ("UTIL", "DP C1", "LP C1")] == pytest.approx(expected, rel=2e-3)
    assert sum(expected) == pytest.approx(fault_figure(study, "LP", kind="three-phase").value, rel=2e-3)


def test_the_ohms_of_the_way_are_those_of_a_hand_calculation() -> None:
    """Ohms of the primary side count by the square of the ratio (IEEE Std 141, from memory); the loop is the sum."""
    site = SITE.format(load="50 kVA  heating") + (
        "transformer TX 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2\n"
        "feeder DP -> TX  125 A 3p  3#1 Cu THWN-2  5 m  in 2 inch EMT\n"
    )
    study = Analysis("/m/site.wye", Files(lambda _: site), "/m").view.studies.normal
    line, square = study.largest.built.lines, (208.0 / 480.0) ** 2
    utility = 480.0 / math.sqrt(3.0) / 20e3 * cmath.exp(1j * math.atan(6.0))
    expected = [
        utility * square,
        (line["UTIL -> DP"].leg or 0j) * square,
        (line["DP -> TX"].leg or 0j) * square,
        0.04 * 208.0**2 / 75e3 * cmath.exp(1j * math.atan(2.0)),
    ]
    figure = fault_figure(study, "TX", kind="three-phase")
    rows = [str(i.value).removesuffix(" ohm").split(" + j ") for i in figure.inputs if str(i.value).endswith(" ohm")]
    found = [complex(float(r), float(x)) for r, x in rows[: len(expected)]]
    assert found == pytest.approx(expected, abs=2e-7)
    assert figure.value == pytest.approx(208.0 / math.sqrt(3.0) / abs(sum(expected)), rel=1e-4)
