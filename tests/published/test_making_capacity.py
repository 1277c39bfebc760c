"""Ratings under IEC practice against the first peak that goes with them: IEC 60947-2 Table 2 and IEC 61439-1 Table 7,
from memory (up to 10 kA 1.7 times, up to 20 kA 2.0 times, up to 50 kA 2.1 times the rating)."""

from __future__ import annotations

import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis

MILL = """wye 1
project "Mill"
  basis iec
  frequency 50 Hz, revision "A"
utility NETZ 400Y/230  fault {fault} kA, fault-min 5 kA, x/r {ratio}, earthing TN-S
panel HV 400Y/230  bus 160 A, incomer {incomer}, rated {rated} kA
feeder NETZ -> HV  160 A 4p {ahead}  4x70mm2 + PE 35mm2 Cu XLPE  0.1 m  method E
"""


@pytest.mark.parametrize(
    ("fault", "ratio", "rated"),
    [(9.5, 1.0, 10), (9.5, 1.5, 10), (9.5, 2.0, 10), (9.5, 5.0, 10), (9.5, 5.0, 15), (14.0, 3.0, 15), (14.0, 8.0, 15),
     (24.0, 4.0, 25), (24.0, 12.0, 25), (5.8, 1.0, 6), (5.8, 2.0, 6)],
)  # fmt: skip
def test_a_rating_holds_the_peak_that_it_was_tested_for(fault: float, ratio: float, rated: float) -> None:
    """kappa sqrt(2) I against n times the rating; each current alone is within its rating."""
    text = MILL.format(fault=fault, ratio=ratio, rated=rated, incomer="160 A 4p", ahead="curve C")
    n = 1.5 if rated <= 6 else 1.7 if rated <= 10 else 2.0 if rated <= 20 else 2.1
    peak = (1.02 + 0.98 * math.exp(-3 / ratio)) * math.sqrt(2) * fault
    found = Analysis("/m/site.wye", Files(lambda _: text), "/m").all_findings()
    found = [f for f in found if f.rule == "interrupting-too-low" and f.subject == "HV"]
    assert bool(found) == (peak > n * rated)
    if found:
        told = float(found[0].needed.split(" kA")[0])
        assert told == pytest.approx(peak / n, rel=0.02)


def test_a_fuse_ahead_cuts_the_peak_off() -> None:
    """A gG fuse limits the current long before its first peak (IEC 60269-1, from memory)."""
    text = MILL.format(fault=9.5, ratio=5.0, rated=10, incomer="160 A 4p", ahead="fuse gG")
    assert "interrupting-too-low" not in {
        f.rule for f in Analysis("/m/s.wye", Files(lambda _: text), "/m").all_findings()
    }
