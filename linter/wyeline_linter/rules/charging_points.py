"""Charging points of electric vehicles: the residual current device that each of them has to itself."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body, Span
from wyeline_linter.ahead import Residual
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.rules.residual_types import (
    SENSES,
    SMOOTH,
    claimed,
    equipment_claims,
    guard_of_circuit,
    guard_of_feeder,
    live_wires,
    type_edit,
)

if TYPE_CHECKING:
    from wyeline_linter.view import View

_FED = (
    'project "Mill"\n  basis iec\nutility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S\n'
    "feeder NETT -> HV  63 A 3p\npanel HV 400Y/230  bus 63 A, main 63 A\n"
)
POINT = rule(
    name="charging-point-rcd",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    basis="iec",
    summary="A charging point has no RCD of 30 mA to itself, or one that does not sense the current of a vehicle.",
    why="A car stands on rubber tyres, and people touch its metal. A fault in its charger may leave "
    "smooth direct current, which only type B or a detecting device in the charging point (RDC-DD) opens at.",
    clause={"iec": "60364-7-722 722.411.3.3, 722.531.3.101"},
    wrong=_FED + '  F1  16 A 3p+N curve C, rcd 30 mA, rcd-type A  11 kW ev  "Charging point, yard"\n',
    right=_FED + '  F1  16 A 3p+N curve C, rcd 30 mA, rcd-type A  11 kW ev rdc-dd  "Charging point, yard"\n',
    mends=True,
)
_RCD_A = 0.03
_LARGEST_A = 80.0
"""Plugs of IEC 62196 carry 63 A of three phases or 70 A of one at the most: behind a larger device stands a station of
direct current or several points, whose own circuits are what the rule is about."""
_IN_POINT = "rcd-in-charging-point"


@POINT.check
def of_circuits(view: View, board: Equipment) -> Iterator[Finding]:
    charging = [p for p in board.circuits if "ev" in p.circuit.body.flags and "spare" not in p.circuit.body.flags]
    state = view.state(board.name) if charging else None
    if state is None or not live_wires(state.system):
        return
    for placed in charging:
        body = placed.circuit.body
        if _is_point(body) and not equipment_claims(board, _IN_POINT, placed.key):
            guard = guard_of_circuit(view, board, placed)
            where = f"circuit {placed.key} of `{board.name}`"
            yield from _judged(
                view, guard, "rcd" in body.facts, "rdc-dd" in body.flags,
                int(body.number("count") or 1), where, placed.block, body, placed.circuit.span, board.name, placed.key,
            )  # fmt: skip


@POINT.also("feeder")
def of_feeders(view: View, feeder: Feeder) -> Iterator[Finding]:
    target, state = view.equipment(feeder.target.name), view.feeder_state(feeder.key)
    if target is None or state is None or "ev" not in target.body.flags or not live_wires(state.carried):
        return
    if target.kind not in ("charger", "load") or target.arrow or not _is_point(feeder.body):
        return
    if claimed(feeder.statement.claims, _IN_POINT) or equipment_claims(target, _IN_POINT):
        return
    nearest = guard_of_feeder(view, feeder)
    direct = "rdc-dd" in target.body.flags or "rdc-dd" in feeder.body.flags
    yield from _judged(
        view, nearest, nearest is not None and nearest.at == feeder.key, direct, int(target.body.number("count") or 1),
        f"`{target.name}`", feeder.block, feeder.body, feeder.target.span, feeder.key, "",
    )  # fmt: skip


def _is_point(body: Body) -> bool:
    rating = body.number("rating")
    return rating is None or rating <= _LARGEST_A


def _judged(
    view: View,
    rcd: Residual | None,
    own: bool,
    direct: bool,
    points: int,
    where: str,
    block: Block,
    body: Body,
    span: Span,
    subject: str,
    position: str,
) -> Iterator[Finding]:
    """``rcd`` is what guards this line alone, ``own`` whether its own device is one, ``direct`` whether the charging
    point itself opens at direct current, ``points`` how many there are on the line."""
    place, severity, fixes = Place(block, span), Severity.ERROR, list[Fix]()
    needed = "an RCD of 30 mA or less for each, type B, or type A with an RDC-DD"
    if rcd is None or rcd.amps > _RCD_A * 1.0005:
        found = "no RCD of its own" if rcd is None else f"an RCD of {rcd.amps * 1000:g} mA"
        kind = "A" if direct else SMOOTH
        rating = body.facts.get("rating")
        if own:
            place = Place(block, body.facts["rcd"].span)
            fixes.append(Fix("Write `rcd 30 mA`", (replace(place, "rcd 30 mA"),), Safety.LOOK))
        elif rating is not None:
            edit = Edit(block, rating.span.line, rating.span.end, rating.span.line, rating.span.end,
                        f" rcd 30 mA rcd-type {kind}")  # fmt: skip
            fixes.append(Fix(f"Give it an RCD of 30 mA, type {kind}", (edit,), Safety.LOOK))
    elif points > 1:
        found, needed = f"one RCD for {points} charging points", "an RCD of 30 mA or less for each of them"
    elif rcd.kind not in SENSES:
        found, severity = "an RCD whose type is not written", Severity.GAP
    elif SENSES[rcd.kind] < SENSES["A"]:
        found = f"an RCD of type {rcd.kind}"
    elif SENSES[rcd.kind] < SENSES[SMOOTH] and not direct:
        found = f"an RCD of type {rcd.kind}, and nothing that opens at direct current"
    else:
        return
    if own and not fixes and points == 1:
        place = Place(block, body.facts["rcd-type" if "rcd-type" in body.facts else "rcd"].span)
        kind = "A" if direct else SMOOTH
        fixes.append(Fix(f"Write `rcd-type {kind}`", (type_edit(block, body, kind),), Safety.LOOK))
    yield POINT.finding(
        place,
        f"{where} charges vehicles, and has {found}",
        found=found,
        needed=needed,
        change="Write `rcd 30 mA, rcd-type B` on its device; or type A and, where the charging point opens at 6 mA of "
        f'direct current by itself, `rdc-dd`; or `claim {_IN_POINT} "..."` with the unit that holds them.',
        subject=subject,
        position=position,
        severity=severity,
        fixes=fixes,
        clause=clause_of(view, POINT),
    )
