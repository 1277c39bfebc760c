"""RCDs in series: whether one behind another opens alone."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.model import Body
from wyeline_linter.ahead import Residual, residual_device
from wyeline_linter.findings import Finding, Fix, Safety, Severity
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.rules.residual_types import type_edit

if TYPE_CHECKING:
    from wyeline_linter.view import View

_SITE = (
    'project "Mill"\n  basis iec\nutility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S\n'
    "feeder NETT -> HV  63 A 4p, rcd 300 mA{}\npanel HV 400Y/230  bus 63 A, main 63 A\n"
    '  F1[L1]  16 A 1p+N curve B, rcd 30 mA, rcd-type A  1 kW receptacle  "Sockets, mill floor"\n'
    '  F2[L2]  16 A 1p+N curve B, rcd 30 mA, rcd-type A  1 kW receptacle  "Sockets, bag store"\n'
)
SERIES = rule(
    name="rcds-not-selective",
    since="0.1",
    severity=Severity.ADVICE,
    scope="board",
    basis="iec",
    summary="An earth fault behind one RCD may trip another one ahead of it too.",
    why="Two that do not wait for each other open at once: one wet socket darkens the whole board.",
    clause={"iec": "60364-5-53 536.4.1.4 (numbered so from memory)"},
    wrong=_SITE.format(", rcd-type A"),
    right=_SITE.format(", rcd-type A-S"),
    mends=True,
)
_WAITING = {"S", "A-S"}
"""Types that let one behind them open first (type S of IEC 61008-1)."""
_WAITING_LIKE = {"AC": "S", "A": "A-S"}
_RATIO = 3.0
"""Residual current of the one ahead over that of the one behind, at the least (from memory)."""


@SERIES.check
def rcds_in_series(view: View, board: Equipment) -> Iterator[Finding]:
    """Told once at a board that has more than one thing behind the RCD ahead; where that has no type written, only what
    no type would mend."""
    state = view.state(board.name)
    if state is None or state.onward is None or not state.onward.rcds:
        return
    ahead = state.onward.rcds[-1]
    feeders = [f for f in view.feeders_out_of(board.name) if not f.normally_open]
    circuits = [p for p in board.circuits if not {"spare", "space"} & p.circuit.body.flags.keys()]
    if len(feeders) + len(circuits) < 2:
        return
    own = [(f"`{f.key}`", residual_device(f.body, f.key)) for f in feeders]
    own += [(f"circuit {p.key}", residual_device(p.circuit.body, p.key)) for p in circuits]
    behind = [(where, rcd.amps) for where, rcd in own if rcd is not None and _may_open(ahead, rcd.amps)]
    if not behind:
        return
    largest_a = max(amps for _, amps in behind)
    kind = f", type {ahead.kind}" if ahead.kind else ""
    held = _holder(view, board, ahead)
    yield SERIES.finding(
        Place(held[0], held[1].facts["rcd"].span) if held is not None else board.place,
        f"an earth fault behind {listed([where for where, _ in behind], 'or')} of `{board.name}` may trip the RCD of "
        f"`{ahead.at}` too",
        found=f"{ahead.amps * 1000:g} mA{kind}, ahead of {largest_a * 1000:g} mA",
        needed=f"type S, and {_RATIO * largest_a * 1000:g} mA or more",
        change="Choose one that waits (type S) and has three times the residual current, or leave one of the two out.",
        subject=board.name,
        fixes=_fix(ahead, held) if ahead.amps >= _RATIO * largest_a * 0.999 else (),
        clause=clause_of(view, SERIES),
    )


def _may_open(ahead: Residual, amps: float) -> bool:
    return ahead.amps < _RATIO * amps * 0.999 or bool(ahead.kind and ahead.kind not in _WAITING)


def _holder(view: View, board: Equipment, rcd: Residual) -> tuple[Block, Body] | None:
    """Where an RCD is written: at the board, or at what feeds it; None further up, and in a type."""
    if rcd.at == board.name:
        body = board.statement.body
        return (board.block, body) if "rcd" in body.facts else None
    feeder = next((f for f in view.feeders_into(board.name) if f.key == rcd.at), None)
    return (feeder.block, feeder.body) if feeder is not None else None


def _fix(ahead: Residual, held: tuple[Block, Body] | None) -> tuple[Fix, ...]:
    kind = _WAITING_LIKE.get(ahead.kind)
    if kind is None or held is None or "rcd-type" not in held[1].facts:
        return ()
    return (Fix(f"Write `rcd-type {kind}`", (type_edit(*held, kind),), Safety.LOOK),)
