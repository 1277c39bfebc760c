"""Dwelling units: wires for 83 % of the rating, allowed where every condition of the claim holds."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_linter.claims import DWELLING
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.protection.dwellings import prove
from wyeline_linter.protection.lines import Line
from wyeline_linter.rules.registry import rule
from wyeline_linter.rules.taps import told

if TYPE_CHECKING:
    from wyeline_linter.view import View

_HOUSE = (
    'project "Annex"\n  basis us-2023\nutility UTIL VOLTS  fault 10 kA, fault-min 6 kA, x/r 2\n'
    "panel HOUSE VOLTS  bus 225 A, main 200 A, lug-temp 75 degC\n"
    "feeder UTIL -> HOUSE  2#3/0 + N #3/0 Cu THWN-2  10 m  in 2 inch PVC-40\n"
    "  claim dwelling-unit\n"
)

UNPROVEN = rule(
    name="dwelling-unproven",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="us",
    summary="What is claimed to serve one dwelling unit does not meet a condition: system, rating, or what it feeds.",
    why="Only the whole load of one dwelling unit is so mixed that wires for 83 % of the rating are enough.",
    clause={"us": "310.12(A), 310.12(B)"},
    wrong=_HOUSE.replace("VOLTS", "208Y/120 1ph"),
    right=_HOUSE.replace("VOLTS", "120/240").replace("#3/0", "#2/0"),
)


@UNPROVEN.check
def dwellings(view: View, line: Line) -> Iterator[Finding]:
    if DWELLING in line.claims:
        yield from told(view, UNPROVEN, line, prove(view, line), "Meet every condition, or take the claim out.")
