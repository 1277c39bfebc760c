"""Voltage factors by the tolerance of the supply: IEC 60909-0:2016 Table 1 and clauses 6.2, 6.3.3 (from memory), in
whole models.  What a converter feeds is a current and not raised by the factor (the same standard, 2016; from memory).
"""

from __future__ import annotations

import cmath
import math

import pytest
from studied_models import PURE_X, studied

from wyeline_linter.studies.working_fault import fault_figure
from wyeline_linter.working import State

LV = 400.0 / math.sqrt(3.0)


def _behind_network(band: str) -> str:
    return (
        'project "Mill"\n  basis iec\n  frequency 50 Hz\n'
        f"utility NET 400Y/230  fault 10 kA, fault-min 6 kA, r/x 0.3, earthing TN-S{band}\n"
        "switchboard HV 400Y/230  bus 400 A, incomer 400 A\nfeeder NET -> HV  400 A 3p  "
        "4x240mm2 + PE 120mm2 Cu XLPE  0.1 m  method C\n"
    )


@pytest.mark.parametrize("band", ["", ", range 0.94..1.06", ", range 0.90..1.10"])
def test_the_utility_gives_what_it_states_whatever_the_tolerance(band: str) -> None:
    """Clause 6.2: Z_Q = c U_n / (sqrt3 I"kQ), so that the same c gives I"kQ back at the connection point."""
    study = studied(_behind_network(band))
    assert study.largest.at("NET")["three-phase"].amperes == pytest.approx(10_000.0, rel=1e-6)
    assert study.smallest.at("NET")["three-phase"].amperes == pytest.approx(6_000.0, rel=1e-6)


def _behind_transformer(band: str) -> str:
    return (
        'project "Mill"\n  basis iec\n  frequency 50 Hz\n'
        f"system S400 400Y/230  earthing TN-S{band}\n"
        "utility NET 20 kV 3ph  fault 350 MVA, fault-min 220 MVA, r/x 0.1\n"
        "transformer T1 20 kV 3ph -> S400  1000 kVA, connection Dyn11, z 6 %, loss 10.5 kW\n"
        "feeder NET -> T1  63 A 3p  3x50mm2 Cu N2XS2Y  0.1 m\n"
    )


@pytest.mark.parametrize(
    ("band", "largest_c", "smallest_c"),
    [("", 1.05, 0.95), ("  range 0.94..1.06", 1.05, 0.95), ("  range 0.90..1.10", 1.10, 0.90)],
)
def test_behind_a_transformer_the_tolerance_of_its_own_system_counts(
    band: str, largest_c: float, smallest_c: float
) -> None:
    """Table 1: 1.05 and 0.95 for +6 %, 1.10 and 0.90 for +10 %; 1.10 and 1.00 above 1 kV. K_T takes c_max of the
    low-voltage side."""
    study = studied(_behind_transformer(band))
    r, z = 10.5e3 / 1e6, 0.06
    own = complex(r, math.sqrt(z * z - r * r)) * 400.0**2 / 1e6

    def network(c: float, va: float) -> complex:
        size = c * 20e3**2 / va * (400.0 / 20e3) ** 2
        return cmath.rect(size, math.atan(10.0))

    factor = 0.95 * largest_c / (1 + 0.6 * own.imag * 1e6 / 400.0**2)
    most = largest_c * LV / abs(network(1.10, 350e6) + factor * own)
    least = smallest_c * LV / abs(network(1.00, 220e6) + own)
    assert study.largest.at("T1")["three-phase"].amperes == pytest.approx(most, rel=1e-4)
    assert study.smallest.at("T1")["three-phase"].amperes == pytest.approx(least, rel=1e-4)


def test_a_converter_adds_its_limit_and_no_more() -> None:
    """60 kVA at 400 V, held to 1.1 times its rated current, beside a utility that is as good as a pure reactance: the
    currents are in step, and 95.3 A come on top."""
    alone = _behind_network("").replace("r/x 0.3", f"x/r {PURE_X}")
    both = alone + (
        "inverter PV 400 3ph  60 kVA, limit 1.1 pu, grid-following\n"
        "feeder HV -> PV  125 A 3p  3x50mm2 + PE 25mm2 Cu XLPE  5 m  method C\n"
    )
    without, with_it = (studied(text).largest.at("HV")["three-phase"].amperes for text in (alone, both))
    assert without is not None
    assert with_it == pytest.approx(without + 1.1 * 60e3 / (math.sqrt(3.0) * 400.0), abs=0.05)


def test_the_sheet_names_the_factor_as_assumed_where_no_range_is_written() -> None:
    """Who signs has to see on which tolerance the figures rest."""
    states = {
        band: next(i for i in fault_figure(studied(_behind_network(band)), "HV").inputs if i.symbol == "c").state
        for band in ("", ", range 0.90..1.10")
    }
    assert states == {"": State.ASSUMED, ", range 0.90..1.10": State.DERIVED}
