"""Wires at other frequencies than those of their tables, beside the field in a round wire and a hand calculation.

Tables from memory: NEC Chapter 9 Table 9 (60 Hz), IEC 60228 and 0.08 mohm/m (50 Hz). Reactance is in proportion to the
frequency (Faraday); the skin effect of a round wire is that of its Bessel functions (any textbook of fields).
"""

from __future__ import annotations

import cmath
import math

import pytest
from studied_models import studied

from wyeline_linter.conductors import Impedance, impedance
from wyeline_linter.studies.case import Case
from wyeline_linter.tables.basis import basis

US, IEC = basis("us-2023"), basis("iec")


def of_round_wire(frequency_hz: float, r_dc_ohm_per_m: float) -> float:
    """Resistance over that of direct current: Re (ka J0(ka) / 2 J1(ka)), by the series of both."""
    ka = cmath.sqrt(-1j * 2 * math.pi * frequency_hz * 4e-7 * math.pi / (math.pi * r_dc_ohm_per_m))
    j0 = sum((-(ka**2) / 4) ** n / math.factorial(n) ** 2 for n in range(40))
    j1 = ka / 2 * sum((-(ka**2) / 4) ** n / (math.factorial(n) * math.factorial(n + 1)) for n in range(40))
    return (ka * j0 / (2 * j1)).real


def of(practice: str, size: str, frequency_hz: float) -> Impedance:
    found = impedance(
        US if practice == "us" else IEC, size, "Cu", temperature_c=75.0 if practice == "us" else 20.0,
        frequency_hz=frequency_hz,
    )  # fmt: skip
    assert isinstance(found, Impedance)
    return found


@pytest.mark.parametrize("frequency_hz", [16.7, 50.0, 400.0])
@pytest.mark.parametrize("size", ["10", "1/0", "250 kcmil", "500 kcmil"])
def test_a_wire_of_the_us_tables(size: str, frequency_hz: float) -> None:
    table, here = of("us", size, 60.0), of("us", size, frequency_hz)
    assert here.x_ohm_per_km == pytest.approx(table.x_ohm_per_km * frequency_hz / 60)
    r_dc = table.r_ohm_per_km / 1000 / of_round_wire(60.0, table.r_ohm_per_km / 1000)
    assert here.r_ohm_per_km / 1000 == pytest.approx(r_dc * of_round_wire(frequency_hz, r_dc), rel=0.03)


@pytest.mark.parametrize("size", ["10 mm2", "70 mm2", "240 mm2"])
def test_a_wire_of_the_iec_tables(size: str) -> None:
    table = of("iec", size, 50.0)
    assert of("iec", size, 60.0).x_ohm_per_km == pytest.approx(0.096)
    assert table.x_ohm_per_km == pytest.approx(0.08)
    more = of_round_wire(400.0, table.r_ohm_per_km / 1000) / of_round_wire(50.0, table.r_ohm_per_km / 1000)
    assert of("iec", size, 400.0).r_ohm_per_km == pytest.approx(table.r_ohm_per_km * more, rel=0.04)


HANGAR = """project "Hangar"
  basis us-2023
  frequency {hz} Hz
generator GPU 208Y/120  90 kVA, pf 0.8, subtransient 10 %, transient 14 %, x2 10 %, x0 4 %, x/r 12, sustained 2.5 pu
  neutral bonded
panel HB 208Y/120  bus 400 A, main 250 A, rated 10 kA
  1,3,5  100 A 3p  30 kVA process  "Stand 1"  3#1 + N #1 + G #8 Cu THWN-2  60 m  in 1-1/2 inch EMT
feeder GPU -> HB  250 A 3p  3x250kcmil + N 250kcmil + G #4 Cu THWN-2  20 m  in 3 inch EMT
"""


@pytest.mark.parametrize("hz", [50, 60, 400])
def test_faults_and_drops_of_a_ground_power_unit(hz: int) -> None:
    """Symmetrical components: 3 V over Z1 + Z2 + Z0 + three times the loop of leg and ground. Steel conduit: 250 kcmil
    0.054 and 0.052, #4 0.31 and 0.060, #1 0.16 and 0.057 ohm per 1000 ft."""
    study = studied(HANGAR.format(hz=hz))

    def wire(r_kft: float, x_kft: float, length_m: float, at_c: float) -> complex:
        r = r_kft / 304.8 * (234.5 + at_c) / 309.5
        r *= of_round_wire(hz, r) / of_round_wire(60.0, r)
        return complex(r, x_kft / 304.8 * hz / 60) * length_m

    volts, base = 208 / math.sqrt(3), 208**2 / 90e3
    for view, at_c, x1 in ((study.largest, 25.0, 0.10), (study.smallest, 75.0, 0.40)):
        z1, z2, z0 = (complex(0.10 / 12, x) * base for x in (x1, 0.10, 0.04))
        leg, ground = wire(0.054, 0.052, 20, at_c), wire(0.31, 0.060, 20, at_c)
        at = view.at("HB")
        assert at["three-phase"].amperes == pytest.approx(volts / abs(z1 + leg), rel=5e-3)
        to_earth = 3 * volts / abs(z1 + z2 + z0 + 3 * (leg + ground))
        assert at["line-ground"].amperes == pytest.approx(to_earth, rel=5e-3)
    (drop,) = study.branches(study.model.equipment["HB"])
    amps = 30e3 / math.sqrt(3) / 208
    stand = wire(0.16, 0.057, 60, 75.0)
    by_hand = (
        math.sqrt(3) * amps * (stand.real * drop.power_factor + stand.imag * math.sin(math.acos(drop.power_factor)))
    )
    assert drop.volts == pytest.approx(by_hand, rel=5e-3)
    told = [a.text for a in study.built(Case.MAX).assumed if "by their table for 60 Hz" in a.text]
    assert len(told) == (hz == 400)
