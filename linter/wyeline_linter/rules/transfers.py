"""Transfer switches: what arrives at their inputs must be one system, whichever input is taken."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_linter.findings import Finding, Related, Severity
from wyeline_linter.rules.registry import NotAccepted, rule
from wyeline_linter.systems import Known, System, volts_text

if TYPE_CHECKING:
    from wyeline_linter.view import View

_INPUTS = """utility UTIL 480Y/277  fault 14 kA, x/r 4
transfer ATS-1  100 A 3p
panel EL-1 480Y/277  bus 100 A
feeder UTIL -> ATS-1.normal  100 A 3p
feeder GEN-1 -> ATS-1.emergency  100 A 3p
feeder ATS-1 -> EL-1
"""
UNLIKE = rule(
    name="transfer-inputs-differ",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    not_accepted=NotAccepted.UNCONNECTED,
    summary="The inputs of a transfer switch bring different voltages, legs or frequencies.",
    why="What hangs on it is made for one system; after the transfer it would get the other.",
    clause={"us": "110.4", "iec": "60364-5-55 551.4"},
    roams=True,
    wrong=_INPUTS + "generator GEN-1 208Y/120  60 kW, pf 0.8\n",
    right=_INPUTS + "generator GEN-1 480Y/277  60 kW, pf 0.8\n",
)
_ALIKE = 0.01
"""Nominal voltages this near to each other are one (common practice, no source)."""


@UNLIKE.check
def transfer_inputs_differ(view: View, transfer: Equipment) -> Iterator[Finding]:
    found = unlike_inputs(view, transfer)
    if found is None:
        return
    one, two, why = found
    yield UNLIKE.finding(
        Place(two.block, two.target.span),
        f"`{one.source.name}` and `{two.source.name}` take turns at `{transfer.name}`: {why}",
        found=why,
        needed="the same voltages, legs and frequency at both inputs",
        change="Take a source of the voltage that is there, or put a transformer ahead of the odd input.",
        subject=transfer.name,
        related=(Related(Place(one.block, one.target.span), "the other input"),),
    )


def unlike_inputs(view: View, transfer: Equipment) -> tuple[Feeder, Feeder, str] | None:
    """Two feeders into a transfer switch that bring unlike systems, and how they differ; None where none are known."""
    if transfer.kind != "transfer":
        return None
    first: tuple[Feeder, System] | None = None
    for feeder in sorted(view.feeders_into(transfer.name), key=lambda f: f.target.port != "normal"):
        judged = view.feeder_state(feeder.key)
        offered = judged.carried if judged is not None and isinstance(judged.carried, Known) else None
        if offered is None:
            continue
        if first is None:
            first = (feeder, offered.system)
            continue
        why = _difference(first[1], offered.system)
        if why is not None:
            return first[0], feeder, why
    return None


def _difference(one: System, two: System) -> str | None:
    if one.frequency_hz != two.frequency_hz:
        return f"{one.frequency_hz:g} Hz and {two.frequency_hz:g} Hz"
    if len(one.legs) != len(two.legs):
        return f"{len(one.legs)} live wires and {len(two.legs)}"
    if len(one.legs) < 2:
        return None
    here, there = one.nominal_v(*one.legs[:2]), two.nominal_v(*two.legs[:2])
    if abs(here - there) > _ALIKE * here:
        return f"{volts_text(here)} and {volts_text(there)} between two live wires"
    return None
