"""What a fault is worked out with and nobody wrote stands on its sheet."""

from __future__ import annotations

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.studies.working_fault import fault_figure

SITE = """wye 1
project "Press hall"
  basis iec
  frequency 50 Hz
utility NET 400Y/230  fault 20 kA, fault-min 12 kA, r/x 0.3, earthing TN-S
switchboard HV 400Y/230  bus 800 A, incomer 800 A, rated 25 kA
busway SS-1 400Y/230  800 A, 40 m, resistance 0.06 ohm/km, reactance 0.04 ohm/km
panel UV-1 400Y/230  bus 160 A, incomer switch, rated 25 kA
feeder NET -> HV  800 A 3p  2 sets 4x240mm2 + PE 120mm2 Cu XLPE  8 m method C
feeder HV -> SS-1  800 A 3p  2 m, resistance 0.06 ohm/km, reactance 0.04 ohm/km
feeder SS-1 -> UV-1  160 A 3p  4x70mm2 + PE 35mm2 Cu XLPE  6 m method C at 24 m
"""


def test_a_run_of_which_only_the_ohms_of_a_leg_are_written_says_what_it_takes_for_the_others() -> None:
    study = Analysis("/m/model.wye", Files(lambda _: SITE), "/m").view.studies.normal
    told = fault_figure(study, "UV-1", kind="line-ground").assumptions
    for name in ("HV -> SS-1", "SS-1"):
        assert f"neutral and protective conductor of `{name}` with the ohms of a leg (no others are written)" in told
    assert not any("ohms of a leg" in text for text in fault_figure(study, "HV", kind="line-ground").assumptions)
