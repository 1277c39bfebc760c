"""The fault figure beside a symbol is the largest of every switch state: ratings are read against it.

NEC 110.9, 110.24 (from memory): the maximum available fault current is what equipment has to bear, in any state.
"""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.reports.one_line import one_line
from wyeline_linter.reports.subject import Subject

SITE = """project "Clinic"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 208Y/120  fault 42 kA, fault-min 30 kA, x/r 6
panel SB 208Y/120  bus 225 A, main 225 A, rated 65 kA, lug-temp 75 degC
feeder UTIL -> SB  4#4/0 Cu THWN-2  20 m  in 2-1/2 inch PVC-40
ups UPS 208Y/120  15 kVA, eff 94 %, pf 0.9, limit 2 pu
feeder SB -> UPS  60 A 3p  4#6 + G #10 Cu THWN-2  9 m  in 1 inch EMT
BYPASS
panel ITP 208Y/120  bus 100 A, main 60 A, rated 10 kA, lug-temp 75 degC
  1  20 A 1p  1 kVA it  "Rack 1"  2#12 + G #12 Cu  9 m  in 3/4 inch EMT
feeder UPS -> ITP  60 A 3p  4#6 + G #10 Cu THWN-2  3 m  in 1 inch EMT
"""
FEEDER = "feeder SB -> UPS.bypass  60 A 3p  4#6 + G #10 Cu THWN-2  9 m  in 1 inch EMT"


def drawn(text: str) -> dict[str, str | None]:
    analysis = Analysis("/m/model.wye", Files(lambda _: text), "/m")
    return {node.tag: node.fault for node in one_line(Subject(analysis)).nodes}


def test_what_a_bypass_lets_through_is_drawn_and_not_the_limit_of_the_inverter() -> None:
    """15 kVA at 208 V are 41.6 A, 83 A at 2 pu; over the bypass the mains feed the fault."""
    alone = drawn(SITE.replace("BYPASS\n", ""))
    assert alone["ITP"] == "fault 0.08 kA"
    fed = drawn(SITE.replace("BYPASS", FEEDER))
    text = fed["ITP"] or ""
    assert text.endswith(" kA (normal 0.08)")
    # NEC Chapter 9 Table 9 (from memory) at 75 degC, ohm/km: #6 in steel 1.61 + j0.21, 4/0 in PVC 0.203 + j0.134; the
    # largest fault meets cold copper, 25 degC: (234.5 + 25) / (234.5 + 75) of it. The mains: 120 V / 42 kA at X/R 6.
    cold = (234.5 + 25) / (234.5 + 75)
    mains = 120.09 / 42e3 * complex(1, 6) / abs(complex(1, 6))
    wires = 12e-3 * complex(1.61 * cold, 0.21) + 20e-3 * complex(0.203 * cold, 0.134)
    assert float(text.split()[1]) == pytest.approx(120.09 / abs(mains + wires) / 1e3, rel=0.02)
    assert fed["SB"] == alone["SB"]
