"""Combined neutral and earth conductors (PEN) of IEC practice."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body, Conductors, Span
from wyeline_linter.ahead import Residual
from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.findings import Finding, Fix, Related, Safety, Severity
from wyeline_linter.network import makes_system
from wyeline_linter.rules.connection import clause_of, poles_edit
from wyeline_linter.rules.neutral_bonds import switches_neutral
from wyeline_linter.rules.registry import rule
from wyeline_linter.rules.residual_types import rcds_on
from wyeline_linter.systems import Arrangement, Known, SystemState

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
    clause={"iec": "60364-5-54 543.4, 60364-4-41 411.4.3, 411.4.5"},
    wrong=_TNC + "feeder HV -> UV-1  40 A 3p  3x6mm2 + PEN 6mm2 Cu PVC  8 m method C\n",
    right=_TNC + "feeder HV -> UV-1  63 A 3p  3x16mm2 + PEN 16mm2 Cu PVC  8 m method C\n",
)


@PEN.check
def pen_feeder(view: View, feeder: Feeder) -> Iterator[Finding]:
    conductors = feeder.body.conductors
    if conductors is None or not _has_pen(conductors):
        return
    judged = view.feeder_state(feeder.key)
    tt = judged is not None and _is_tt(judged.carried)  # told by `pen-in-tt`
    ahead = () if tt else tuple(rcd for rcd in rcds_on(view, feeder) if rcd.at != feeder.key)
    yield from _pen(view, feeder.block, feeder.body, conductors, f"`{feeder.key}`", feeder.key, "", ahead)
    source = view.equipment(feeder.source.name)
    above = view.network.supply.get(feeder.source.name)
    if source is None or makes_system(source) or source.kind == "transformer":
        above = None  # a system begins here, with a neutral of its own
    elif any(f.body.conductors is not None and _has_pen(f.body.conductors) for f in view.feeders_into(source.name)):
        yield from _opened(view, feeder, conductors, source)
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
            state = view.state(equipment.name)
            onward = state.onward if state is not None and not _is_tt(state.system) else None
            ahead = onward.rcds if onward is not None else ()
            yield from _pen(view, placed.block, body, body.conductors, where, equipment.name, placed.key, ahead)


def _opened(view: View, feeder: Feeder, conductors: Conductors, source: Equipment) -> Iterator[Finding]:
    """A PEN that comes in and leaves as one, through a switch or an incomer that opens it."""
    if source.kind in ("transfer", "disconnect"):
        poles = source.body.poles
        opens = source.kind == "transfer" and bool(switches_neutral(source))
        opens = opens or (poles is not None and (poles.switched_neutral or poles.count == 4))
    else:
        facts = (source.body.facts.get(key) for key in ("main", "incomer"))
        poles = next((fact.poles for fact in facts if fact is not None and fact.poles is not None), None)
        opens = poles is not None and (poles.switched_neutral or poles.count == 4)
    if not opens:
        return
    place = source.place
    yield PEN.finding(
        Place(feeder.block, conductors.span),
        f"`{source.name}` opens the PEN that `{feeder.key}` carries on",
        found="a device that opens the neutral too, and one PEN on both sides of it",
        needed="a PEN that nothing ever opens, or N and PE apart from here on",
        change=f"Let `{source.name}` open the live wires only, or write `+ N` and `+ PE` behind it.",
        subject=feeder.key,
        related=(Related(place, "the PEN is opened here"),),
        clause=clause_of(view, PEN),
    )


def _is_tt(state: SystemState) -> bool:
    return isinstance(state, Known) and state.system.earthing.arrangement is Arrangement.TT


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
    view: View,
    block: Block,
    body: Body,
    conductors: Conductors,
    where: str,
    subject: str,
    position: str,
    ahead: tuple[Residual, ...],
) -> Iterator[Finding]:
    """``ahead`` are the RCDs on the way to it."""

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
    elif ahead:
        yield told(
            conductors.span,
            f"the RCD of `{ahead[-1].at}` stands ahead of the PEN of {where}",
            "a PEN behind an RCD",
            "N and PE apart behind an RCD",
            "Split the PEN ahead of the RCD, or leave the RCD out.",
        )
