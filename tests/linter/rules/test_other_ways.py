"""What stands ahead in other switch states. NEC 2023 240.4 and IEC 60364-4-43 433.1 ask for a device that protects the
wires whichever way feeds them; ampacities are NEC Table 310.16's (from memory)."""

from __future__ import annotations

import pytest
from rule_models import analysis_of

from wyeline_linter.rules.other_ways import _STANDBY


def _found(text: str) -> list[str]:
    analysis = analysis_of("wye 1\n" + text)
    found = analysis.all_findings()
    return [f"{f.rule}: {f.message}" for f in found if f.rule in {"other-way-unprotected", "passing-rating-low"}]


@pytest.mark.parametrize(("device", "told"), [("100 A 3p", False), ("110 A 3p", True), ("250 A 3p", True)])
def test_wires_behind_a_transfer_switch_are_held_against_both_ways(device: str, told: bool) -> None:
    """#3 Cu carries 100 A at 75 degC: a device of 100 A on one way and a larger one on the other."""
    found = _found(_STANDBY.format(ats=400, main="100 A", gen=device))
    assert [line.split("`")[1] for line in found] == (["ATS-1 -> LP-1"] if told else [])


def test_a_bus_by_lugs_is_held_against_both_ways() -> None:
    found = _found(_STANDBY.format(ats=400, main="lugs", gen="300 A 3p"))
    assert any("the bus of `LP-1` is rated 225 A, and the device ahead of it is 300 A" in line for line in found)


def test_the_larger_device_on_the_usual_way_stays_with_the_usual_rules() -> None:
    text = _STANDBY.format(ats=400, main="100 A", gen="90 A 3p").replace("normal  100 A 3p", "normal  150 A 3p")
    assert not _found(text)


def test_a_transfer_switch_for_a_fire_pump_is_left_to_the_rule_of_fire_pumps() -> None:
    text = _STANDBY.format(ats=100, main="100 A", gen="250 A 3p")
    assert [line.split(":")[0] for line in _found(text)] == ["passing-rating-low", "other-way-unprotected"]
    pump = "motor FP-1 460 3ph  25 hp, pf 0.85, eff 93 %, lra 183 A, fire-pump\nfeeder LP-1 -> FP-1  200 A 3p\n"
    assert [line.split(":")[0] for line in _found(text + pump)] == ["other-way-unprotected"]
