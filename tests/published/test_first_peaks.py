"""First peaks of faults beside hand calculation: of unequal legs, of several sources, behind a converter, and of motors
at the voltage of their nameplate.

Sources, from memory: IEC 60909-0:2016 clauses 6.2, 8.1 (kappa; the peaks of sources side by side add up) and Table 1;
IEEE Std 141 (first-cycle reactance of motors); NEMA MG 1 (460 V motors for 480 V systems).
"""

from __future__ import annotations

import cmath
import math

import pytest
from studied_models import studied

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import figures_in_states
from wyeline_linter.studies.working_fault import fault_figure


def at_angle(size: float, x_over_r: float) -> complex:
    return size * complex(1.0, x_over_r) / math.hypot(1.0, x_over_r)


def kappa(z: complex) -> float:
    return 1.02 + 0.98 * math.exp(-3 * z.real / z.imag)


BANK = """project "Bakery"
  basis us-2023
utility UTIL 12.47 kV 3ph  fault 200 kA, x/r {ratio}
transformer TB 12.47 kV 3ph -> 240 3ph  75 kVA, connection open-delta, units 2, z 2.5 %, x/r {ratio}
feeder UTIL -> TB  10 A 3p  resistance 0.000001 ohm/km, reactance 0.000001 ohm/km, 1 m
"""


@pytest.mark.parametrize("ratio", [1.0, 1.8, 4.0])
def test_the_peak_behind_an_open_delta_is_that_of_its_windings(ratio: float) -> None:
    """Two windings alone feed three legs: each current, and that of the common leg as their sum, has a direct part that
    decays with X/R of a winding, whatever the angle between volts and current of a leg is. The exact peak of R and X in
    series, over all moments of closing, is the forced current less what it would have been at first, as that decays."""
    fault = studied(BANK.format(ratio=ratio)).largest.at("TB")["three-phase"]
    own = at_angle(0.025 * 240**2 / 37.5e3, ratio)
    # The common leg has both windings' currents, 60 degrees apart.
    assert fault.amperes == pytest.approx(math.sqrt(3) * 240 / abs(own), rel=5e-3)
    assert fault.x_over_r == pytest.approx(ratio, rel=2e-3)
    lag = math.atan(ratio)
    moments = [k * math.pi / 400 for k in range(801)]
    exact = max(
        abs(math.sin(t + start - lag) - math.sin(start - lag) * math.exp(-t / ratio))
        for start in moments
        for t in moments
    )
    peak = studied(BANK.format(ratio=ratio)).largest.peak_a(fault)
    assert peak == pytest.approx(math.sqrt(2) * fault.amperes * exact, rel=0.05)


MILL = """project "Mill"
  basis iec
  frequency 50 Hz
utility NETZ 400Y/230  fault 9 kA, fault-min 5 kA, r/x 0.6, earthing TN-S
switchboard HV 400Y/230  bus 250 A, incomer switch, rated 15 kA
  F2  160 A 3p  75 kW motor eff 95 %, pf 0.87 "Mill"  3x70mm2 + PE 35mm2 Cu XLPE  42 m  method C
panel UV 400Y/230  bus 250 A, incomer switch, rated 15 kA
feeder NETZ -> HV  250 A 3p fuse gG  4x120mm2 + PE 70mm2 Cu XLPE  20 m  method E
feeder HV -> UV  250 A 3p fuse gG  4x120mm2 + PE 70mm2 Cu XLPE  30 m  method E
"""


def test_the_peaks_of_a_supply_and_of_motors_add_up() -> None:
    """At the board where both meet: kappa of each by its own R/X, 0.42 of the group of motors."""
    view = studied(MILL).largest
    fault = view.at("HV")["three-phase"]
    volts = 1.05 * 400 / math.sqrt(3)
    line = view.built.lines["NETZ -> HV"].leg or 0j
    supply = at_angle(volts / 9e3, 1 / 0.6) + line
    motor = at_angle(400**2 / (75e3 / 0.95 / 0.87) / 5, 1 / 0.42)
    assert fault.amperes == pytest.approx(volts * abs(1 / supply + 1 / motor), rel=1e-5)
    peak = math.sqrt(2) * volts * (kappa(supply) / abs(supply) + kappa(motor) / abs(motor))
    assert view.peak_a(fault) == pytest.approx(peak, rel=1e-5)
    together = 1 / (1 / supply + 1 / motor)
    assert peak > 1.002 * kappa(together) * math.sqrt(2) * volts / abs(together)
    (last,) = (
        s for s in fault_figure(studied(MILL), "HV", kind="three-phase").steps if s.name.startswith("first peak")
    )
    assert last.value == pytest.approx(peak, rel=1e-5)


def test_behind_shared_ohms_each_part_is_taken_by_what_drives_it() -> None:
    """Superposition: the volts over the current that one drive alone brings to the fault."""
    view = studied(MILL).largest
    fault = view.at("UV")["three-phase"]
    volts = 1.05 * 400 / math.sqrt(3)
    supply = at_angle(volts / 9e3, 1 / 0.6) + (view.built.lines["NETZ -> HV"].leg or 0j)
    motor = at_angle(400**2 / (75e3 / 0.95 / 0.87) / 5, 1 / 0.42)
    shared = view.built.lines["HV -> UV"].leg or 0j
    total = shared + 1 / (1 / supply + 1 / motor)
    parts = [volts / total * other / (supply + motor) for other in (motor, supply)]
    peak = math.sqrt(2) * sum(abs(i) * kappa(volts / i) for i in parts)
    assert fault.amperes == pytest.approx(volts / abs(total), rel=1e-5)
    assert view.peak_a(fault) == pytest.approx(peak, rel=1e-5)


def test_a_single_source_keeps_the_one_factor() -> None:
    text = MILL.replace("75 kW motor eff 95 %, pf 0.87", "75 kW heating")
    view = studied(text).largest
    fault = view.at("HV")["three-phase"]
    supply = at_angle(1.05 * 400 / math.sqrt(3) / 9e3, 1 / 0.6) + (view.built.lines["NETZ -> HV"].leg or 0j)
    assert fault.amperes is not None
    assert view.peak_a(fault) == pytest.approx(kappa(supply) * math.sqrt(2) * fault.amperes, rel=1e-6)


WORKS = """project "Pump house"
  basis us-2023
utility UTIL 480 3ph  fault 20 kA, x/r 6
mcc DP 480 3ph  bus 600 A, rated 30 kA
  F1  100 A 3p  {row}  "Compressor"  3#1 + G #8 Cu THWN-2  10 m  in 1-1/2 inch EMT
motor P1 {plate}  75 hp{own}
feeder UTIL -> DP  2 sets 3#4/0 + G #2 Cu THWN-2  20 m  in 3 inch EMT
feeder DP -> P1  175 A 3p  resistance 0.000001 ohm/km, reactance 0.000001 ohm/km, 1 m
"""


def siemens(plate: str, own: str = "", row: str = "20 kVA heating") -> complex:
    fault = studied(WORKS.format(plate=plate, own=own, row=row)).largest.at("DP")["three-phase"]
    assert fault.amperes is not None and fault.x_over_r is not None
    return fault.amperes / (480 / math.sqrt(3)) * cmath.exp(-1j * math.atan(fault.x_over_r))


@pytest.mark.parametrize(
    ("plate", "own", "ohm"),
    [
        # 96 A by NEC Table 430.250; 0.20 per unit from 50 hp, at the volts of the plate, X/R 10.
        ("460 3ph", "", 0.20 * 460 / (math.sqrt(3) * 96)),
        ("480 3ph", "", 0.20 * 480 / (math.sqrt(3) * 96)),
        ("440-480 3ph", "", 0.20 * 480 / (math.sqrt(3) * 96)),
        # 1.2 times the locked-rotor reactance: 96 A over 543 A of 460 V.
        ("460 3ph", ", lra 543 A", 1.2 * 460 / (math.sqrt(3) * 543)),
        # By its output: 75 hp over efficiency and power factor, at the volts of the plate.
        ("460 3ph", ", eff 94 %, pf 0.87", 0.20 * 460**2 / (75 * 745.7 / 0.94 / 0.87)),
    ],
)
def test_a_motor_feeds_a_fault_by_its_nameplate(plate: str, own: str, ohm: float) -> None:
    added = siemens(plate, own) - siemens(plate, own + ", starter VFD")
    assert added == pytest.approx(1 / at_angle(ohm, 10.0), rel=2e-3)


def test_a_motor_in_a_row_is_made_for_the_usual_voltage() -> None:
    """60 hp has 77 A at 460 V (NEC Table 430.250)."""
    turning = siemens("460 3ph", row="60 hp motor") - siemens("460 3ph", row="60 hp motor starter VFD")
    assert turning == pytest.approx(1 / at_angle(0.20 * 460 / (math.sqrt(3) * 77), 10.0), rel=2e-3)


HELD = """wye 1
project "Exchange"
  basis us-2023
utility UTIL 208Y/120  fault 20 kA, fault-min 12 kA, x/r 4
ups UPS 208Y/120  40 kVA, eff 95 %, limit 2 pu
panel IT 208Y/120  bus 225 A, main 125 A, rated 14 kA
feeder UTIL -> UPS  150 A 3p  3#1/0 + N #1/0 + G #6 Cu THWN-2  11 m  in 2 inch EMT
feeder UTIL -> UPS.bypass  125 A 3p  3#1/0 + N #1/0 + G #6 Cu THWN-2  11 m  in 2 inch EMT
feeder UPS -> IT  125 A 3p  3#1/0 + N #1/0 + G #6 Cu THWN-2  70 m  in 2 inch EMT
"""


def test_a_converter_has_no_x_over_r() -> None:
    """Its control holds the current: nothing tells a decay, and no current has a peak beyond 2 sqrt(2) times it."""
    view = Analysis("/m/site.wye", Files(lambda _: HELD), "/m").view
    entry = figures_in_states(view, "IT")["equipment"]["IT"]
    for case in ("max", "min"):
        for fault in entry["fault"][case].values():
            assert fault["x_over_r"] is None and "`UPS` holds the current" in fault["note"]
            assert fault["peak_a"] == pytest.approx(2 * math.sqrt(2) * fault["amps"], rel=1e-5)
    bypassed = next(s for s in view.studies.every() if "bypass" in s.name)
    fault = bypassed.largest.at("IT")["three-phase"]
    assert fault.x_over_r is not None and fault.x_over_r < 4 and not fault.note


YARD = """project "Yard"
  basis us-2023
utility UTIL 480Y/277  fault 5 kA, fault-min 4 kA, x/r 0.6
generator GEN 480Y/277  500 kVA, pf 0.8, subtransient 12.5 %, transient 18 %, x2 13 %, x0 30 %, sustained 3 pu, x/r 40
  neutral floating
transfer ATS 800 A 3p, rated 42 kA, transition open
switchboard EP 480Y/277  bus 800 A, main lugs, rated 42 kA, peak {peak} kA
feeder UTIL -> ATS.normal  800 A 3p  2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu THWN-2  1 m  in 4 inch PVC-40
feeder GEN -> ATS.emergency  600 A 3p  2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu THWN-2  1 m  in 4 inch PVC-40
feeder ATS -> EP  2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu THWN-2  1 m  in 4 inch PVC-40
"""


@pytest.mark.parametrize(("peak", "told"), [(8, True), (15, False)])
def test_the_largest_peak_counts_and_not_that_of_the_largest_current(peak: int, told: bool) -> None:
    """5 kA at X/R 0.6 peak at 7.1 kA; 4.8 kA of the machine at X/R 40 peak at 13 kA."""
    site = Analysis("/m/site.wye", Files(lambda _: "wye 1\n" + YARD.format(peak=peak)), "/m")
    found = [f for f in site.all_findings() if f.rule == "withstand-too-low"]
    assert [f.subject for f in found] == (["EP"] if told else [])
