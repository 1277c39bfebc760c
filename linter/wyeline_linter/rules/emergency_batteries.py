"""Batteries that alone feed emergency load in an outage: how long they have to last."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.emergency import dead_in_outages
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_SITE = (
    'project "Clinic"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
    "utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4\n"
    "feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
    "ups UPS-1 480Y/277  20 kVA, eff 95 %, limit 2 pu{}, emergency\n"
    "feeder DP -> UPS-1  30 A 3p  3#10 + N #10 + G #10 Cu THWN-2  10 m  in 1 inch EMT, lug-temp 75 degC\n"
    "feeder DP -> UPS-1.bypass  30 A 3p  3#10 + N #10 + G #10 Cu THWN-2  10 m  in 1 inch EMT, lug-temp 75 degC\n"
    "feeder UPS-1 -> EL-1  30 A 3p  3#10 + N #10 + G #10 Cu THWN-2  10 m  in 1 inch EMT, lug-temp 75 degC\n"
    "panel EL-1 480Y/277  bus 100 A, main lugs, rated 22 kA, lug-temp 75 degC\n"
    '  1  20 A 1p  2 kVA lighting emergency  "Exit lights, east"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
    '  3  20 A 1p  2 kVA lighting emergency  "Exit lights, west"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
    '  5  20 A 1p  2 kVA lighting emergency  "Exit lights, roof"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
)
BATTERY = rule(
    name="emergency-battery-short",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    basis="us",
    summary="A battery that alone feeds emergency load in an outage lasts less than an hour and a half, or nobody says "
    "how long.",
    why="When it is empty, the way out is dark while people may still be inside.",
    clause={"us": "700.12(C) (numbered so from memory)"},
    wrong=_SITE.format(", autonomy 20 min"),
    right=_SITE.format(", autonomy 90 min"),
    mends=True,
)
BATTERY_S = 5400.0
"""How long a storage battery carries the whole emergency load (NEC 700.12, from memory)."""


@BATTERY.check
def emergency_battery_short(view: View) -> Iterator[Finding]:
    if not view.of_kind("ups", "battery"):
        return
    told: set[str] = set()
    for equipment, lost, battery in dead_in_outages(view):
        fact = battery.body.facts.get("autonomy") if battery is not None else None
        if battery is None or battery.name in told or (fact is not None and fact.number >= BATTERY_S * 0.9995):
            continue
        told.add(battery.name)
        place = battery.place_of("autonomy") if fact is not None else battery.place
        lasts = f"lasts {fact.value.text}" if fact is not None else "does not say how long it lasts"
        own = fact is not None and "autonomy" in battery.statement.body.facts
        yield BATTERY.finding(
            place,
            f"`{battery.name}` alone feeds the emergency load on `{equipment.name}` without `{lost}`, and {lasts}",
            severity=Severity.ERROR if fact is not None else Severity.GAP,
            found=f"autonomy {fact.value.text}" if fact is not None else "no `autonomy`",
            needed="90 min with all that it feeds",
            change="Take a battery for 90 min, and write `autonomy`; or put a second source ahead of it.",
            subject=battery.name,
            fixes=(Fix("Write `autonomy 90 min`", (replace(place, "autonomy 90 min"),), Safety.LOOK),) if own else (),
        )
