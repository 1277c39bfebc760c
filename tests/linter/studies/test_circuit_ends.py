"""Figures at the end of a circuit are those of a load that stands there with a feeder of the same wires."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.studies.study import StateStudy
from wyeline_linter.studies.worst import circuit_states

ROOT = "/m/model.wye"
US = """wye 1
project "Weaving shed"
  basis us-2023
  frequency 60 Hz, revision "A"
utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4
feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  30 m  in 4 inch PVC-40
panel DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC
"""
IEC = """wye 1
project "Weaving shed"
  basis iec
  frequency 50 Hz, revision "A"
utility UTIL 400Y/230  fault 15 kA, fault-min 9 kA, x/r 3, earthing TN-S
feeder UTIL -> DP  250 A 3p  5G120mm2 Cu XLPE  30 m method E
panel DP 400Y/230  bus 250 A, incomer switch, rated 25 kA
"""
CASES = [
    (US, "1,3,5", "480 3ph", "DP", "3#8 + G #10 Cu THWN-2  {m} m  in 3/4 inch EMT", "40 A 3p"),
    (US, "1,3", "480 1ph", "DP[AB]", "2#8 + G #10 Cu THWN-2  {m} m  in 3/4 inch EMT", "40 A 2p"),
    (IEC, "F1", "400 3ph", "DP", "4G6mm2 Cu PVC  {m} m method C", "32 A 3p curve C"),
]


def study_of(text: str) -> StateStudy:
    return Analysis(ROOT, Files(lambda _: text), "/m").view.studies.normal


@pytest.mark.parametrize(
    ("site", "at", "volts", "start", "wires", "device"), CASES, ids=["three legs", "two legs", "iec"]
)
@pytest.mark.parametrize("m", [5, 60])
def test_a_circuit_ends_like_a_feeder_of_the_same_wires(
    site: str, at: str, volts: str, start: str, wires: str, device: str, m: int
) -> None:
    run = wires.format(m=m)
    as_circuit = study_of(f'{site}  {at}  {device}  9 kW heating  "Dryer"  {run}\n')
    as_feeder = study_of(f"{site}load DRYER {volts}  9 kW, heating\nfeeder {start} -> DRYER  {device}  {run}\n")
    board = as_circuit.model.equipment["DP"]
    (state,) = circuit_states(as_circuit.view, board, board.circuits[0])
    largest, smallest = as_feeder.largest.worst("DRYER"), as_feeder.smallest.worst("DRYER")
    assert largest is not None and smallest is not None
    assert state.figures["fault_max_a"] == pytest.approx(largest.amperes, rel=0.002)
    assert state.figures["fault_min_a"] == pytest.approx(smallest.amperes, rel=0.002)
    # The circuit's drop is the hand formula at nominal voltage, the feeder's is solved.
    assert state.figures["drop_part"] == pytest.approx(as_feeder.path_drop("DRYER")[0], rel=0.05)
    lowest = as_feeder.judged.lowest("DRYER")
    assert lowest is not None
    assert state.figures["voltage_part"] == pytest.approx(lowest.per_unit, abs=0.001)
