"""What is proposed for wires whose neutral carries third harmonics holds before the rules that judge them."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.fixing import apply_edits
from wyeline_linter.sizing.lines import Proposal, size_feeder

IEC = """wye 1
project "Quarry"
  basis iec
utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, r/x 0.4, earthing TN-S
feeder NETT -> HV  4x95mm2 + PE 50mm2 Cu XLPE  6 m method C
switchboard HV 400Y/230  bus 250 A, incomer 160 A 4p
panel R 400Y/230  bus 160 A, incomer switch
  F1  {device} A 3p+N  {kva:.3f} kVA it third-harmonic {percent} %
feeder HV -> R  {device} A 4p curve C  {wires}  20 m  method {method}
"""
US = """wye 1
project "Quarry"
  basis us-2023
utility UTIL 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4
feeder UTIL -> MSB  2 sets 3#3/0 + N #3/0 Cu THWN-2  6 m  in 2 inch PVC-40
switchboard MSB 208Y/120  bus 400 A, main 400 A, lug-temp 75 degC
panel R 208Y/120  bus 225 A, main lugs, lug-temp 75 degC
  1,3,5  {device} A 3p  {kva:.3f} kVA it third-harmonic {percent} %
feeder MSB -> R  {device} A 3p  {wires}  20 m  in 3 inch EMT, ambient {ambient_c} degC
"""
JUDGES = frozenset(
    "neutral-undersized neutral-counts-as-loaded ampacity-short wire-underprotected bundled-not-derated "
    "continuous-wire-margin termination-too-hot".split()
)
PERCENT = st.sampled_from([0, 10, 15, 16, 20, 33, 34, 40, 45, 46, 60, 80, 100])
WIRES_IEC = ["", "5G6mm2 Cu PVC", "5G16mm2 Cu NYM-J", "4x35mm2 + PE 16mm2 Cu XLPE", "3x16mm2 + PEN 16mm2 Cu XLPE",
             "3x35mm2 + N 50mm2 + PE 16mm2 Cu PVC", "3x50mm2 + N 25mm2 + PE 25mm2 Cu XLPE"]  # fmt: skip
WIRES_US = ["", "3#3 + N #3 + G #8 Cu THWN-2", "3#1 + N #1/0 + G #6 Cu THWN-2", "3#1/0 + N #2 + G #6 Cu XHHW-2",
            "3#3 + N #3 + G #8 Cu MC", "2 sets 3#1/0 + N #1/0 + G #6 Cu THWN-2"]  # fmt: skip


def left_after_sizing(text: str, key: str) -> list[str]:
    def analysed(written: str) -> Analysis:
        return Analysis("/m/site.wye", Files(lambda _: written), "/m")

    before = analysed(text)
    proposed = size_feeder(before.view, before.model.feeders[key])
    assert isinstance(proposed, Proposal), proposed
    after = analysed(apply_edits(text, proposed.edits))
    return [f"{f.rule}: {f.found}; {f.needed}" for f in after.findings() if f.subject == key and f.rule in JUDGES]


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(PERCENT, st.sampled_from(WIRES_IEC), st.sampled_from(["B1", "B2", "C", "E"]), st.sampled_from([16, 40, 63, 125]))
def test_iec_sizes_hold(percent: int, wires: str, method: str, device: int) -> None:
    kva = 0.9 * device * 0.4 * 3**0.5
    text = IEC.format(percent=percent, wires=wires, method=method, device=device, kva=kva)
    assert left_after_sizing(text, "HV -> R") == []


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(PERCENT, st.sampled_from(WIRES_US), st.sampled_from([30, 40]), st.sampled_from([20, 50, 100, 200]))
def test_us_sizes_hold(percent: int, wires: str, ambient_c: int, device: int) -> None:
    kva = 0.75 * device * 0.208 * 3**0.5
    text = US.format(percent=percent, wires=wires, ambient_c=ambient_c, device=device, kva=kva)
    assert left_after_sizing(text, "MSB -> R") == []


@pytest.mark.parametrize(("wires", "written"), [("3x35mm2 + N 50mm2 + PE 16mm2 Cu PVC", "3x35mm2 + N 120mm2")])
def test_a_neutral_that_is_written_larger_grows_alone(wires: str, written: str) -> None:
    text = IEC.format(percent=80, wires=wires, method="C", device=100, kva=62.35)
    analysis = Analysis("/m/site.wye", Files(lambda _: text), "/m")
    sized = size_feeder(analysis.view, analysis.model.feeders["HV -> R"])
    assert isinstance(sized, Proposal)
    assert sized.wires.startswith(written), sized.reasons
