"""Uninterruptible supplies whose bypass nobody writes: what feeds a fault behind them is then half known."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_linter.findings import Finding, Severity
from wyeline_linter.rules.registry import rule
from wyeline_linter.studies.place_sources import bypass_untold

if TYPE_CHECKING:
    from wyeline_linter.view import View

_SITE = (
    'project "Exchange"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
    "utility UTIL 208Y/120  fault 22 kA, fault-min 14 kA, x/r 6\n"
    "switchboard MSB 208Y/120  bus 400 A, main 400 A, rated 35 kA, service-equipment, lug-temp 75 degC\n"
    "feeder UTIL -> MSB  400 A 3p  3x500kcmil + N 500kcmil Cu THWN-2  14 m  in 4 inch PVC-40\n"
    "ups UPS-1 208Y/120 -> 208Y/120  20 kVA, eff 94 %, limit 2 pu{bonded}\n"
    "feeder MSB -> UPS-1  110 A 3p  3#2 + N #2 + G #6 Cu THWN-2  22 m  in 1-1/2 inch EMT, lug-temp 75 degC\n"
    "panel IT-1 208Y/120  bus 125 A, main 100 A, rated {rated} kA, spaces 30, lug-temp 75 degC\n"
    "feeder UPS-1 -> IT-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  9 m  in 1-1/4 inch EMT, lug-temp 75 degC\n"
)
# That a double conversion supply goes over to its mains when its inverter is asked for more than its limit is common
# practice; IEC 62040-3 asks the maker to declare the bypass (clause not named: from memory).
NOT_WRITTEN = rule(
    name="bypass-not-written",
    since="0.1",
    severity=Severity.GAP,
    scope="study",
    summary="A UPS gives the voltage that it gets, and nothing says what feeds a fault behind it over its bypass.",
    why="In a fault most of them go over to their bypass: then the mains feed it, with many times what the inverter "
    "gives, and devices behind have to break that.",
    clause={"us": "110.9, 110.24", "iec": "60364-4-43 434.5.1, 62040-3"},
    wrong=_SITE.format(bonded="", rated=10),
    right=_SITE.format(bonded="", rated=22)
    + "feeder BYP: MSB -> UPS-1.bypass  110 A 3p  3#2 + N #2 + G #6 Cu THWN-2  22 m  in 1-1/2 inch EMT\n"
    "  lug-temp 75 degC\n",
)


@NOT_WRITTEN.check
def bypass_not_written(view: View) -> Iterator[Finding]:
    for ups in view.of_kind("ups"):
        if ups.damaged or not view.feeders_out_of(ups.name) or not bypass_untold(view.model, view.derivation, ups):
            continue
        largest = view.studies.normal.largest
        behind, arriving = largest.worst(ups.name), largest.worst(ups.name, entering=True)
        told = [
            f"{fault.amperes / 1e3:.3g} kA {where}"
            for fault, where in ((behind, "from its inverter"), (arriving, "where its supply arrives"))
            if fault is not None and fault.amperes is not None
        ]
        source = next((f.source.text for f in view.feeders_into(ups.name)), "MSB")
        yield NOT_WRITTEN.finding(
            ups.place,
            f"what feeds a fault behind `{ups.name}` over its bypass is not written; its inverter alone counts",
            found="; ".join((*told, f"no feeder to `{ups.name}.bypass`")),
            needed="the way over its bypass, or the maker's word that it has none",
            change=f"Write `feeder {source} -> {ups.name}.bypass` with its device and wires (where the bypass is "
            "inside and shares the input, those of the input again); where it has none, accept this with the "
            "maker's data.",
            subject=ups.name,
        )
