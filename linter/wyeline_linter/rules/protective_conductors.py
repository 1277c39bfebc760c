"""Combined neutral and earth conductors (PEN) of IEC practice."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body, Conductors, Span
from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.findings import Finding, Fix, Safety, Severity
from wyeline_linter.network import makes_system
from wyeline_linter.rules.connection import clause_of, poles_edit
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_IEC = 'project "Annex"\n  basis iec\n'
_TNC = (
    _IEC + "utility NETT 400Y/230  fault 10 kA, x/r 4, earthing TN-C-S\nfeeder NETT -> HV  63 A 3p\n"
    "panel HV 400Y/230  bus 63 A, main 63 A\npanel UV-1 400Y/230  bus 63 A, incomer 63 A\n"
)
LEAST_PEN_MM2 = {"Cu": 10.0, "Al": 16.0}
"""IEC 60364-5-54, 543.4.1."""

PEN = rule(
    name="pen-conductor-bad",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="iec",
    summary="A combined neutral and earth conductor (PEN) is thin, switched, behind an RCD, or joined anew.",
    why="When a PEN is lost, every exposed metal part behind it stands at the voltage of a leg.",
    clause={"iec": "60364-5-54 543.4, 60364-4-41 411.4"},
    wrong=_TNC + "feeder HV -> UV-1  40 A 3p  3x6mm2 + PEN 6mm2 Cu PVC  8 m method C\n",
    right=_TNC + "feeder HV -> UV-1  63 A 3p  3x16mm2 + PEN 16mm2 Cu PVC  8 m method C\n",
)


@PEN.check
def pen_feeder(view: View, feeder: Feeder) -> Iterator[Finding]:
    conductors = feeder.body.conductors
    if conductors is None or not _has_pen(conductors):
        return
    yield from _pen(view, feeder.block, feeder.body, conductors, f"`{feeder.key}`", feeder.key, "")
    source = view.equipment(feeder.source.name)
    above = view.network.supply.get(feeder.source.name)
    if source is None or makes_system(source) or source.kind == "transformer":
        above = None  # a system begins here, with a neutral of its own
    before = above.body.conductors if above is not None else None
    if before is not None and _is_split(before) and above is not None:
        yield PEN.finding(
            Place(feeder.block, conductors.span),
            f"`{feeder.key}` joins neutral and earth again, which `{above.key}` brings apart",
            found="N and PE apart, then one PEN",
            needed="N and PE apart from where they were split to the end",
            change="Write `+ N` and `+ PE` here.",
            subject=feeder.key,
            clause=clause_of(view, PEN),
        )


@PEN.also("board")
def pen_circuits(view: View, equipment: Equipment) -> Iterator[Finding]:
    for placed in equipment.circuits:
        body = placed.circuit.body
        if body.conductors is not None and _has_pen(body.conductors):
            where = f"circuit {placed.key} of `{equipment.name}`"
            yield from _pen(view, placed.block, body, body.conductors, where, equipment.name, placed.key)


def _has_pen(conductors: Conductors) -> bool:
    return any(role == "PEN" for role, _ in conductors.extras)


def _is_split(conductors: Conductors) -> bool:
    roles = {role for role, _ in conductors.extras}
    if "PEN" in roles:
        return False
    protective = conductors.run.with_protective or bool(roles & {"PE", "G"})
    live = conductors.run.count - conductors.run.with_protective
    return protective and ("N" in roles or live > 3)


def _pen(
    view: View, block: Block, body: Body, conductors: Conductors, where: str, subject: str, position: str
) -> Iterator[Finding]:
    def told(span: Span, message: str, found: str, needed: str, change: str, fixes: tuple[Fix, ...] = ()) -> Finding:
        return PEN.finding(
            Place(block, span),
            message,
            found=found,
            needed=needed,
            change=change,
            subject=subject,
            position=position,
            fixes=fixes,
            clause=clause_of(view, PEN),
        )

    size = next(size for role, size in conductors.extras if role == "PEN")
    metal = "Al" if "Al" in conductors.marks else "Cu"
    least, area = LEAST_PEN_MM2[metal], area_mm2(size.text)
    if area < least * 0.999:
        yield told(
            conductors.span,
            f"the PEN of {where} has {area:.3g} mm2 {metal}, and the least is {least:g} mm2",
            f"{area:.3g} mm2 {metal}",
            f"{least:g} mm2 {metal} or more",
            f"Write `+ PEN {least:g}mm2` or more, or bring N and PE apart.",
        )
    poles = body.poles
    if poles is not None and body.poles_span is not None and (poles.switched_neutral or poles.count == 4):
        fix = Fix("Make the device 3p", (poles_edit(block, body.poles_span, "3p"),), Safety.LOOK)
        yield told(
            body.poles_span,
            f"the device of {where} switches the PEN",
            f"a {poles.count}-pole device{' with switched neutral' if poles.switched_neutral else ''}",
            "a PEN that nothing ever opens",
            "Open the live wires only.",
            (fix,),
        )
    if "rcd" in body.facts:
        yield told(
            body.facts["rcd"].span,
            f"an RCD on {where} cannot see an earth fault behind a PEN",
            "an RCD ahead of a PEN",
            "N and PE apart behind an RCD",
            "Split the PEN ahead of the RCD.",
        )
