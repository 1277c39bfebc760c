"""Fire pumps that one line stands for (`count`) run at 115 % of the full-load current of all of them (NEC 695.7(B)).
Full-load current: 96 A at 75 hp, 460 V (NEC Table 430.250). Both from memory."""

from __future__ import annotations

import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.rules.motor_starts import lost_beyond_full_load_v

PUMPS = """project "Sprinkler room"
  basis us-2023
  frequency 60 Hz
utility UTIL 480Y/277  fault 12 kA, fault-min 8 kA, x/r 4
switchboard MSB 480Y/277  bus 1200 A, rated 65 kA
feeder UTIL -> MSB  1600 A 3p  1 m, resistance 0.001 ohm/km, reactance 0.001 ohm/km
motor FP-1 460 3ph  75 hp, pf 0.87, eff 93 %, fire-pump, count {count}
feeder MSB -> FP-1  1600 A 3p  {length} m, resistance 0.3 ohm/km, reactance 0.1 ohm/km
"""


@pytest.mark.parametrize("count", [1, 2, 4])
def test_all_of_them_draw_more_than_their_full_load(count: int) -> None:
    """I (R cos + X sin), a leg, times the square root of 3: of the supply as at its weakest, and of 100 m of wire."""
    analysis = Analysis("/m/site.wye", Files(lambda _: PUMPS.format(count=count, length=100)), "/m")
    study = analysis.view.studies.normal
    supply = 480 / math.sqrt(3) / 8e3 / math.hypot(1, 4)
    r, x = supply + 0.03, 4 * supply + 0.01
    drawn_a = 75 * 745.7 / 0.93 / 0.87 / 480 / math.sqrt(3)
    more_a = count * (1.15 * 96 - drawn_a)
    expected = math.sqrt(3) * more_a * (r * 0.87 + x * math.sqrt(1 - 0.87**2))
    assert lost_beyond_full_load_v(study, analysis.model.equipment["FP-1"]) == pytest.approx(expected, rel=0.02)
