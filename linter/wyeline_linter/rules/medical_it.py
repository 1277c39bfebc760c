"""IT systems for medical locations: their size, and what they must have."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Known

if TYPE_CHECKING:
    from wyeline_linter.view import View

_IEC = (
    'project "Clinic"\n  basis iec\n  frequency 50 Hz, ambient 30 degC, revision "A"\n'
    "utility UTIL 400Y/230  fault 10 kA, fault-min 8 kA, x/r 3, earthing TN-S\n"
)
_THEATRE = (
    "feeder TX-M -> LAMPS  40 A 2p curve C  3G10mm2 Cu XLPE  3 m  method C\n"
    'load LAMPS 230 1ph  6 kW, medical, "Theatre 1, pendant"\n'
)
MEDICAL = rule(
    name="medical-it-limits",
    since="0.1",
    severity=Severity.WARNING,
    scope="transformer",
    summary="An isolated supply of medical equipment is too large, or has a neutral.",
    why="A small isolated system leaks so little that a first fault stays harmless; a large one does not.",
    basis="both",
    clause={"us": "517.160", "iec": "60364-7-710 710.512.1"},
    wrong=_IEC + "transformer TX-M 400 1ph -> 230 1ph  12.5 kVA, z 3 %, loss 300 W, earthing IT\n"
    "feeder UTIL[L1 L2] -> TX-M  32 A 2p curve C  3G6mm2 Cu XLPE  20 m  method C\n" + _THEATRE,
    right=_IEC + "transformer TX-M 400 1ph -> 230 1ph  8 kVA, z 3 %, loss 300 W, earthing IT\n"
    "feeder UTIL[L1 L2] -> TX-M  32 A 2p curve C  3G6mm2 Cu XLPE  20 m  method C\n" + _THEATRE,
)
MEDICAL_VA = 10_000.0
"""Largest isolated supply of a medical location (NEC 517.160(A), IEC 60364-7-710: 0.5 to 10 kVA; from memory)."""


@MEDICAL.check
def medical_it_limits(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind != "transformer":
        return
    state, va = view.state(equipment.name), equipment.body.number("power")
    if state is None or not isinstance(state.system, Known) or va is None:
        return
    system = state.system.system
    if system.earth is not None or not _serves_medical(view, equipment.name):
        return
    if va > MEDICAL_VA:
        yield MEDICAL.finding(
            equipment.place_of("power"),
            f"the isolated medical supply `{equipment.name}` has {va / 1000:g} kVA; 10 kVA is the limit",
            found=f"{va / 1000:g} kVA",
            needed="10 kVA at the most",
            change="Split it into smaller isolated supplies.",
            subject=equipment.name,
        )
    if system.has_neutral:
        yield MEDICAL.finding(
            equipment.place,
            f"the isolated medical supply `{equipment.name}` brings out a neutral",
            found="a neutral",
            needed="two wires, both isolated from earth",
            change="Choose a transformer with a two-wire secondary.",
            subject=equipment.name,
        )


def _serves_medical(view: View, name: str) -> bool:
    for feeder in view.feeders_out_of(name):
        target = view.equipment(feeder.target.name)
        if target is not None and (
            "medical" in target.body.flags or any("medical" in p.circuit.body.flags for p in target.circuits)
        ):
            return True
    return False
