"""What inverters send back without load: I = S / (sqrt3 U), physics; held against ratings as IEC 60364-4-43 433.1 and
NEC 705.28, 705.30 hold currents against wires and devices (sections from memory)."""

from __future__ import annotations

import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis

BARN = (
    'project "Barn"\n  basis iec\n  frequency 50 Hz\n'
    "utility NET 20 kV 3ph  fault 350 MVA, fault-min 220 MVA, r/x 0.1\n"
    "transformer T1 20 kV 3ph -> 400Y/230  {kva} kVA, connection Dyn11, z 4 %, loss 2.3 kW, earthing TN-S\n"
    "switchboard HV 400Y/230  bus 630 A, incomer {main} A, rated 25 kA{limit}\n"
    "feeder NET -> T1  {fuse} A 3p fuse HH  3x50mm2 Cu N2XS2Y  15 m\n"
    "feeder T1 -> HV  {wires}mm2 + PE 120mm2 Cu XLPE  8 m method C\n"
    "load L 400Y/230  20 kW, heating\nfeeder HV -> L  40 A 3p+N curve C  5G10mm2 Cu XLPE  10 m method C\n"
    "inverter PV-1 400 3ph  150 kW, limit 1.1 pu, grid-following\n"
    "feeder HV -> PV-1  250 A 3p  3x120mm2 + PE 70mm2 Cu XLPE  10 m method C\n"
    "inverter PV-2 400 3ph  100 kW, limit 1.1 pu, grid-following\n"
    "feeder PV-2 -> HV  {device} A 3p  3x70mm2 + PE 35mm2 Cu XLPE  10 m method C\n"
)
FITS = {"kva": 400, "main": 400, "fuse": 16, "wires": "4x240", "device": 160, "limit": ""}
LV_A = 250e3 / math.sqrt(3.0) / 400.0
"""360.8 A of both; 7.2 A at 20 kV; 144.3 A of PV-2 alone. 4x240 Cu XLPE carries 500 A clipped to a wall, 4x150 371 A,
4x120 321 A (IEC 60364-5-52 Table B.52.5, from memory)."""


def found(**other: object) -> dict[str, float]:
    """By subject the A or kVA that the findings of the rule tell."""
    text = "wye 1\n" + BARN.format(**{**FITS, **other})
    findings = Analysis("/m/model.wye", Files(lambda _: text), "/m").findings()
    return {f.subject: float(f.found.split()[0]) for f in findings if f.rule == "export-overload"}


def test_what_is_made_for_all_of_it_draws_nothing() -> None:
    assert found() == {}
    assert found(fuse=8) == {}, "7.2 A at 20 kV"


@pytest.mark.parametrize(
    ("other", "subject", "amount"),
    [
        ({"kva": 160}, "T1", 250.0),
        ({"main": 250}, "HV", LV_A),
        ({"wires": "4x120"}, "T1 -> HV", LV_A),
        ({"fuse": 6.3}, "NET -> T1", LV_A * 400 / 20e3),
        ({"device": 125}, "PV-2 -> HV", 100e3 / math.sqrt(3.0) / 400.0),
    ],
)
def test_each_thing_on_the_way_is_held_against_it(other: dict[str, object], subject: str, amount: float) -> None:
    told = found(**other)
    assert list(told) == [subject]
    assert told[subject] == pytest.approx(amount, rel=0.01)


def test_wires_that_just_carry_it_draw_nothing() -> None:
    assert found(wires="4x150") == {}


def test_what_a_system_holds_back_is_not_counted_above_it() -> None:
    assert found(kva=160, limit=", limit 150 kW") == {}
