"""Several motors alike that one line feeds (`count`): their device and their wires.

NEC 430.52(C)(1) for one (250 % of Table 430.250, next standard rating up), 430.53(C)(4) for the group (that, and the
full-load current of the others, rounded down), 430.24 for the wires (125 % of the largest, 100 % of the others).
10 hp at 460 V: 14 A; 25 hp: 34 A. All from memory.
"""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.sizing.lines import Proposal, size_feeder

SITE = """project "Mill"
  basis us-2023
utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4
feeder UTIL -> MSB
switchboard MSB 480Y/277  bus 400 A, main 400 A, lug-temp 75 degC
"""


def analysed(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def oversized(text: str) -> list[str]:
    return [f.needed for f in analysed(SITE + text).findings() if f.rule == "motor-device-oversized"]


CASES = [
    ("10 hp", 1, 35, 40),  # 250 % of 14 A is 35 A
    ("10 hp", 3, 60, 70),  # 35 + 28 = 63 A
    ("25 hp", 1, 90, 100),  # 250 % of 34 A is 85 A, next rating up
    ("25 hp", 2, 110, 125),  # 90 + 34 = 124 A
]


@pytest.mark.parametrize(("power", "count", "most", "above"), CASES)
@pytest.mark.parametrize("as_circuit", [False, True])
def test_the_largest_device(power: str, count: int, most: int, above: int, as_circuit: bool) -> None:
    for device, told in ((most, False), (above, True)):
        text = f"  1,3,5  {device} A 3p  {power} motor count {count}  3#1 + G #6 Cu THWN-2  9 m  in 2 inch EMT\n"
        if not as_circuit:
            text = f"motor P-1 460 3ph  {power}, count {count}\nfeeder MSB -> P-1  {device} A 3p\n"
        found = oversized(text)
        assert bool(found) is told
        assert all(needed.startswith(f"{most} A: ") for needed in found)
        assert all(("of the other" in needed) is (count > 1) for needed in found)


def test_a_feeder_is_sized_for_all_of_them() -> None:
    """125 % of 14 A and 28 A: 45.5 A, #8 at 75 degC (50 A); a device of 60 A."""
    text = SITE + "motor P-1 460 3ph  10 hp, pf 0.86, eff 90 %, count 3\nfeeder MSB -> P-1  9 m  in EMT\n"
    analysis = analysed(text)
    made = size_feeder(analysis.view, analysis.model.feeders["MSB -> P-1"])
    assert isinstance(made, Proposal)
    assert made.device == "60 A 3p" and made.wires.startswith("3#8 ")
    assert any("28 A of the other 2" in reason for reason in made.reasons)
    assert any("45.5 A" in reason for reason in made.reasons)
