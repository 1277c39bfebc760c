"""Where the legs of a bank differ, a fault sheet shows the ohms of each leg beside the means of its parts."""

from __future__ import annotations

import cmath
import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.circuit.fault_parts import loop_of
from wyeline_linter.studies.working_fault import fault_figure

SITE = """project "Annex"
  basis us-2023
utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4
transformer TX 480 3ph -> 240 3ph  75 kVA, z 3 %, x/r 2{connection}
feeder UTIL -> TX  125 A 3p  3#1 + G #6 Cu THWN-2  10 m  in 2 inch EMT
panel LP 240 3ph  bus 225 A, main 150 A
feeder TX -> LP  3#1/0 + G #6 Cu THWN-2  5 m  in 2 inch EMT
"""


def site(connection: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: SITE.format(connection=connection)), "/m")


@pytest.mark.parametrize(("connection", "shown"), [("", []), (", connection open-delta", ["ZA", "ZB", "ZC"])])
def test_legs_are_shown_where_they_differ(connection: str, shown: list[str]) -> None:
    study = site(connection).view.studies.normal
    sheet = fault_figure(study, "LP", kind="three-phase")
    legs = {s.symbol: s.value for s in sheet.steps if s.symbol in ("ZA", "ZB", "ZC")}
    assert list(legs) == shown
    if shown:
        volts = next(i.value for i in sheet.inputs if getattr(i, "symbol", "") == "V")
        assert isinstance(volts, float) and isinstance(sheet.value, float)
        assert volts / min(z for z in legs.values() if z is not None) == pytest.approx(sheet.value, rel=1e-3)


def test_the_currents_of_the_legs_leave_nothing_over() -> None:
    """Kirchhoff: 138.6 V a leg, 120 degrees apart, over the ohms of each leg add up to nothing."""
    largest = site(", connection open-delta").view.studies.normal.largest
    bus = largest.bus("LP")
    assert bus is not None and largest.study is not None
    loop = loop_of(largest.study, bus, ("A", "B", "C"))
    assert loop is not None
    amps = [240 / math.sqrt(3) * cmath.exp(-2j * math.pi * k / 3) / z for k, z in enumerate(loop.legs_ohm)]
    assert len(amps) == 3 and abs(sum(amps)) < 1e-6 * abs(amps[0])
    assert loop.amperes == pytest.approx(max(map(abs, amps)), rel=1e-6)
