"""Faults of a high-leg supply, held against the loop equations of the bank that makes it.

Three equal single-phase units in delta, the one between A and C tapped in its middle. A tapped winding is two halves
with 1.5 R and 1.2 X of the whole winding on its own (W. H. Kersting, "Distribution System Modeling and Analysis", from
memory), and what the whole then asks for is mutual. Kirchhoff gives the rest; no code of ours is in the equations.
"""

from __future__ import annotations

import cmath

import numpy as np
import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.studies.fault import FaultView
from wyeline_linter.studies.working_fault import fault_figure

VOLTS, X_OVER_R = 240.0, 4.0


def supply(more: str = "") -> Analysis:
    text = f"wye 1\nutility QUAY 240/120 3ph  fault 10 kA, fault-min 6 kA, x/r {X_OVER_R:g}{more}\n"
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def amperes(faults: FaultView, first: str, second: str) -> float:
    bus = faults.bus("QUAY")
    assert bus is not None and faults.study is not None
    found = faults.study.bus(bus, (first, second)).current_a
    assert found is not None
    return found


def bank(three_phase_a: float, leg: str) -> float:
    """Fault current from a leg to the middle, by the loops of the bank: eight equations, eight unknowns."""
    size = VOLTS / 3**0.5 / three_phase_a
    z1 = size * complex(1, X_OVER_R) / abs(complex(1, X_OVER_R))
    whole = 3 * z1
    own = complex(1.5 * whole.real, 1.2 * whole.imag) / 4
    mutual = whole / 2 - own
    turn = cmath.exp(2j * cmath.pi / 3)
    # Unknown: currents of the halves A-N and N-C, of the units C-B and B-A; volts of A, C, B against N; the fault.
    a = np.zeros((8, 8), dtype=complex)
    b = np.array([VOLTS / 2, VOLTS / 2, VOLTS * turn, VOLTS * turn**2, 0, 0, 0, 0])
    a[0, [0, 1, 4]] = own, mutual, 1  # A - N = e - own i1 - mutual i2
    a[1, [0, 1, 5]] = mutual, own, -1
    a[2, [2, 5, 6]] = whole, 1, -1
    a[3, [3, 6, 4]] = whole, 1, -1
    at = {"A": 4, "C": 5, "B": 6}
    a[4, [0, 3]], a[5, [2, 1]], a[6, [3, 2]] = (1, -1), (1, -1), (1, -1)  # into A, C, B
    a[at[leg], 7] = -1
    a[7, at[leg]] = 1  # the faulted leg is at the middle
    return float(abs(np.linalg.solve(a, b)[7]))


@pytest.mark.parametrize("leg", ["A", "B", "C"])
def test_the_smallest_faults_are_those_of_the_usual_bank(leg: str) -> None:
    faults = supply().view.studies.normal.smallest
    assert amperes(faults, leg, "N") == pytest.approx(bank(6_000, leg), rel=1e-6)


def test_the_largest_are_never_told_lower_than_any_bank_gives() -> None:
    """A larger unit for light comes near the perfect middle, 1.73 times three-phase; the report says it."""
    study = supply().view.studies.normal
    assert amperes(study.largest, "A", "N") == pytest.approx(10_000 * 3**0.5, rel=1e-6)
    (told,) = [a.text for a in study.assumed() if "come out high (no fault-lg)" in a.text]
    assert "1.73 times `fault`, 17.3 kA" in told and "`fault-lg`" in told.rpartition(";")[2]
    sheet = fault_figure(study, "QUAY", kind="line-neutral")
    assert told in sheet.assumptions


def test_a_stated_fault_to_neutral_is_met() -> None:
    study = supply(", fault-lg 12 kA").view.studies.normal
    assert amperes(study.largest, "A", "N") == amperes(study.largest, "C", "N") == pytest.approx(12_000, rel=1e-6)
    assert amperes(study.largest, "A", "B") == pytest.approx(10_000 * 3**0.5 / 2, rel=1e-6)
    assert not [a for a in study.assumed() if "middle" in a.text]


def test_figures_that_do_not_agree_are_told() -> None:
    study = supply(", fault-lg 30 kA").view.studies.normal
    assert any("more than its fault level can give" in m.text for m in study.missing())
    assert amperes(study.smallest, "A", "N") == pytest.approx(bank(6_000, "A"), rel=1e-6)
