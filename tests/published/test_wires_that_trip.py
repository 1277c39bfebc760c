"""Wires that let a device trip on an earth fault at their end, worked by hand (IEC 60364-4-41 411.4.4: Zs Ia <= U0)."""

from __future__ import annotations

import re

import pytest
from load_models import analysed

from wyeline_linter.findings import Finding
from wyeline_linter.fixing import apply_edits
from wyeline_linter.sizing.lines import Proposal, size_feeder

SITE = (
    'wye 1\nproject "Quarry"\n  basis iec\n  frequency 50 Hz, ambient 30 degC, revision "A"\n'
    "utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S\n"
    "panel UV 400Y/230  bus 63 A, incomer switch, rated 15 kA\n"
    "feeder NETT -> UV  63 A 3p curve C  4x16mm2 + PE {ground}mm2 Cu PVC  {length} m method C\n"
)
OHM_KM = {16: 1.15, 25: 0.727, 35: 0.524, 50: 0.387, 70: 0.268, 95: 0.193, 120: 0.153}
"""Copper at 20 degC (IEC 60228); 160 degC at the end of a fault with PVC."""


def asked_ground(leg: int) -> int:
    """IEC 60364-5-54 Table 54.7: as the leg up to 16 mm2, 16 up to 35, then half of it."""
    return leg if leg <= 16 else 16 if leg <= 35 else min(size for size in OHM_KM if 2 * size >= leg)


def amps(leg: int, ground: int, length_m: float) -> float:
    """230 V at 95 % (IEC 60909-0 Table 1) over the source, 6 kA of X/R 4, and both wires of 0.08 mohm a metre."""
    source = 0.95 * 230.94 / 6000 * complex(1, 4) / 17**0.5
    wires = length_m / 1000 * complex((OHM_KM[leg] + OHM_KM[ground]) * (1 + 0.00393 * 140), 2 * 0.08)
    return 0.95 * 230.94 / abs(source + wires)


def late(text: str) -> list[Finding]:
    return [
        finding
        for finding in analysed(text.removeprefix("wye 1\n")).all_findings()
        if finding.rule == "disconnection-too-slow"
    ]


@pytest.mark.parametrize("length_m", [150, 200])
@pytest.mark.parametrize("ground", [16, 35])
def test_the_smallest_wires_that_trip(length_m: int, ground: int) -> None:
    """A larger protective conductor than asked stays, and counts."""
    trip_a = 63 * 10
    text = SITE.format(ground=ground, length=length_m)
    assert amps(16, ground, length_m) < trip_a and late(text)
    ways = ((leg, max(ground, asked_ground(leg))) for leg in OHM_KM)
    leg, pe = next((leg, pe) for leg, pe in ways if amps(leg, pe, length_m) >= 1.01 * trip_a)
    (fix,) = (fix for fix in late(text)[0].fixes if "Size" in fix.title)
    found = re.search(r"4x(\d+)mm2 \+ PE (\d+)mm2", fix.title)
    assert found is not None and (int(found[1]), int(found[2])) == (leg, pe)
    assert not late(apply_edits(text, fix.edits))


def test_a_residual_current_device_asks_no_larger_wires() -> None:
    text = SITE.format(ground=16, length=150).replace("curve C", "curve C, rcd 300 mA")
    analysis = analysed(text.removeprefix("wye 1\n"))
    assert not late(text)
    made = size_feeder(analysis.view, analysis.view.model.feeders["NETT -> UV"], faults=True)
    assert isinstance(made, Proposal) and not any("earth fault" in r for r in made.reasons)
