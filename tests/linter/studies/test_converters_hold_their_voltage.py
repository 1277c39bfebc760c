"""A UPS holds the voltage of each leg, however unequal its load: its current limit is no impedance in a load flow.

IEC 62040-3 (from memory) grades what its output does under load: a few percent at the most, fully unbalanced or not.
"""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis

SITE = """project "Clinic"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 208Y/120  fault 42 kA, fault-min 30 kA, x/r 6
panel SB 208Y/120  bus 225 A, main 225 A, rated 42 kA, lug-temp 75 degC
feeder UTIL -> SB  4#4/0 Cu THWN-2  20 m  in 2-1/2 inch PVC-40
ups UPS 208Y/120  15 kVA, eff 94 %, pf 0.9, limit {limit}
feeder SB -> UPS  60 A 3p  4#6 + G #10 Cu THWN-2  9 m  in 1 inch EMT
panel ITP 208Y/120  bus 100 A, main 60 A, rated 10 kA, lug-temp 75 degC
  1  30 A 1p  4 kVA it  "Rack 1"  2#10 + G #10 Cu  9 m  in 3/4 inch EMT
  3  20 A 1p  1 kVA it  "Rack 2"  2#12 + G #12 Cu  9 m  in 3/4 inch EMT
feeder UPS -> ITP  60 A 3p  4#6 + G #10 Cu THWN-2  3 m  in 1 inch EMT
"""


@pytest.mark.parametrize("limit", ["1.1 pu", "2 pu", "120 A"])
def test_one_loaded_leg_moves_its_output_by_its_wires_alone(limit: str) -> None:
    """33 A and 8 A through 3 m of #6, 1.6 ohm/km (NEC Chapter 9 Table 9, 0.49 ohm/kft, from memory): 0.16 V there,
    0.14 V back with the 30 A in the neutral, 0.25 % of 120 V; the impedance of a limit of 2 pu made it 9 %."""
    analysis = Analysis("/m/model.wye", Files(lambda _: SITE.format(limit=limit)), "/m")
    pairs = analysis.view.studies.normal.flow.volts("ITP")
    assert {pair.between for pair in pairs} >= {("A", "N"), ("B", "N"), ("C", "N")}
    for pair in pairs:
        assert pair.per_unit == pytest.approx(1.0, rel=3e-3)
