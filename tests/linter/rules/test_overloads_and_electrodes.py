"""What the examples of the rules do not show: circuits with a motor, nameplates that say less, wires of a service."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding, Severity

HEAD = 'wye 1\nproject "Annex"\n  basis us-2023\n'


def _findings(text: str, rule: str) -> list[Finding]:
    return [f for f in Analysis("/m/site.wye", Files(lambda _: HEAD + text), "/m").findings() if f.rule == rule]


@pytest.mark.parametrize(
    ("nameplate", "told"),
    [
        # 125 % of 10 A at a service factor of 1.15 or a rise of 40 degC, else 115 % (NEC 430.32(A)(1)).
        ("fla 10 A, service-factor 1.15, overload 12.5 A", None),
        ("fla 10 A, service-factor 1.15, overload 12.6 A", Severity.ERROR),
        ("fla 10 A, rise 40 degC, overload 12.5 A", None),
        ("fla 10 A, service-factor 1, overload 12 A", Severity.ERROR),
        ("fla 10 A, overload 11.5 A", None),
        ("fla 10 A, overload 12 A", Severity.ERROR),
        ("overload 12 A", Severity.GAP),
    ],
)
def test_the_limit_of_an_overload_follows_what_the_nameplate_says(nameplate: str, told: Severity | None) -> None:
    found = _findings(f"motor P-1 460 3ph  7.5 hp, {nameplate}\n", "motor-overload-setting")
    assert [f.severity for f in found] == ([] if told is None else [told])


def test_a_circuit_with_a_motor_is_looked_at_too() -> None:
    board = "panel LP-1 208Y/120  bus 100 A\n  2,4,6  30 A 3p  3 hp motor  fla 10 A, service-factor 1, overload 13 A\n"
    (found,) = _findings(board, "motor-overload-setting")
    assert (found.subject, found.position) == ("LP-1", "2,4,6") and "11.5 A" in found.needed


@pytest.mark.parametrize(("electrode", "wrong"), [("#2", True), ("#1/0", False)])
def test_where_a_service_arrives_its_wires_count_together(electrode: str, wrong: bool) -> None:
    """Two sets of 250 kcmil copper are 500 kcmil: 1/0 copper; one set alone would be 2 AWG (NEC 250.66)."""
    text = (
        "utility UTIL 208Y/120  fault 14 kA, x/r 4\n"
        f"switchboard MSB 208Y/120  bus 600 A, main 500 A, service-equipment, electrode {electrode}\n"
        "feeder UTIL -> MSB  2 sets 3x250kcmil + N 250kcmil Cu THWN-2  10 m  in 3 inch PVC-40\n"
    )
    assert bool(_findings(text, "electrode-conductor-small")) is wrong
