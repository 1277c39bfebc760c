"""RCDs and GFCIs that protect people who touch a live part all the same: which circuits ask for one."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.model import Body
from wyeline_linter.claims import DWELLING
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity, append_phrase, replace
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Arrangement, Known, System

if TYPE_CHECKING:
    from wyeline_linter.protection.lines import Line
    from wyeline_linter.view import View

_IEC = (
    'project "Annex"\n  basis iec\nutility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S\n'
    "feeder NETT -> HV  63 A 3p\npanel HV 400Y/230  bus 63 A, main 63 A\n"
)
PEOPLE = rule(
    name="rcd-or-gfci-missing",
    since="0.1",
    severity=Severity.WARNING,
    scope="board",
    basis="both",
    summary="Socket outlets of 32 A or less, shore power, or lights of a dwelling lack a residual current device of "
    "30 mA; receptacles outdoors, in kitchens, or for the charging of vehicles, lack a GFCI.",
    why="A residual current of 30 mA through a person can kill; an ordinary breaker does not see it.",
    clause={"us": "210.8, 555.35, 625.54", "iec": "60364-4-41 411.3.3, 411.3.4; 60364-7-709 709.531.2"},
    wrong=_IEC + '  F1[L1]  16 A 1p+N curve B  1 kW receptacle  "Sockets, office"\n',
    right=_IEC + '  F1[L1]  16 A 1p+N curve B  rcd 30 mA  1 kW receptacle  "Sockets, office"\n',
    mends=True,
)
_RCD_A = 0.03
_SOCKETS_A = 32.0
_SHORE_A, _LARGE_SHORE_RCD_A = 63.0, 0.3
"""Up to here shore power has 30 mA, above it 300 mA, each outlet its own (IEC 60364-7-709 709.531.2, from memory)."""
_GFCI_A = 0.006
"""A GFCI for people opens at 4 to 6 mA (class A of UL 943, as the NEC's definition notes)."""
_GFCI_CLASSES = {
    "outdoor": (_GFCI_A, "outdoor receptacles"),
    "kitchen": (_GFCI_A, "receptacles of a kitchen"),
    "ev": (_GFCI_A, "receptacles for the charging of vehicles"),
    "marina": (_RCD_A, "boat receptacles"),
}
"""Receptacles under the NEC, the residual current at which they open, and their words: outdoors 210.8, in kitchens
210.8(A)(6) and (B)(2) (from memory), for the charging of vehicles 625.54, for boats 555.35 (30 mA)."""
_TOLD = 1.0005


class Asked(NamedTuple):
    """The residual current that a circuit has to open at, what it feeds in words, and whether the device has to be its
    own."""

    amps: float
    words: str
    alone: bool = False


@PEOPLE.also("board", said=("receptacle", "marina", "lighting"))
def of_circuits(view: View, board: Equipment) -> Iterator[Finding]:
    state = view.state(board.name) if board.circuits else None
    if state is None or not isinstance(state.system, Known) or state.system.system.frequency_hz == 0:
        return
    us = view.derivation.practice == "us"
    system, ahead = state.system.system, state.onward.rcd_a if state.onward is not None else None
    dwelling = not us and _in_dwelling(view, board)
    for placed in board.circuits:
        body, block = placed.circuit.body, placed.block
        if "spare" in body.flags:
            continue
        if us:
            flag = next((f for f in _GFCI_CLASSES if f in body.flags), None) if "receptacle" in body.flags else None
            if flag is None or "gfci" in body.flags or _residual(body, ahead) <= _GFCI_CLASSES[flag][0] * _TOLD:
                continue
            fix = Fix("Write `gfci`", (append_phrase(block, placed.circuit.span.line, "gfci"),), Safety.LOOK)
            place, found = Place(block, placed.circuit.span), f"{_GFCI_CLASSES[flag][1]} without a GFCI"
            where = f"circuit {placed.key} of `{board.name}`"
            yield _told(view, place, where, found, "a GFCI", "Write `gfci` on its device.", fix, board.name, placed.key)
            continue
        asked = _asked(body, body.number("rating"), dwelling)
        if asked is not None:
            where = f"circuit {placed.key} of `{board.name}`"
            yield from _judged(view, system, asked, block, body, where, ahead, board.name, placed.key)


@PEOPLE.also("equipment", said=("receptacle", "marina"))
def of_loads(view: View, load: Equipment) -> Iterator[Finding]:
    """Socket outlets that have a name: by the feeder that supplies them."""
    feeder, state = view.network.supply.get(load.name), view.state(load.name)
    if load.kind != "load" or feeder is None or state is None or view.derivation.practice == "us":
        return
    if not isinstance(state.system, Known) or not state.system.system.frequency_hz:
        return
    asked = _asked(load.body, feeder.body.number("rating"), dwelling=False)
    if asked is not None:
        ahead, where = state.ahead.rcd_a if state.ahead is not None else None, f"`{load.name}`"
        yield from _judged(view, state.system.system, asked, feeder.block, feeder.body, where, ahead, feeder.key, "")


def asked_of(view: View, line: Line) -> Asked | None:
    """What IEC practice asks of a line for people who touch live parts, whatever else trips on it."""
    body = line.body if line.target is None else line.target.body
    dwelling = line.target is None and _in_dwelling(view, line.source)
    return _asked(body, line.body.number("rating"), dwelling)


def _in_dwelling(view: View, board: Equipment) -> bool:
    """Whether a board serves one dwelling: that is claimed at what feeds it."""
    return any(claim.name == DWELLING for f in view.feeders_into(board.name) for claim in f.statement.claims)


def _asked(body: Body, rating: float | None, dwelling: bool) -> Asked | None:
    """What IEC practice asks of a circuit or a load behind a device of a rating."""
    if rating is None or "ev" in body.flags:
        return None  # of vehicles `charging-point-rcd` tells
    if "marina" in body.flags:
        return Asked(_RCD_A if rating <= _SHORE_A else _LARGE_SHORE_RCD_A, "shore power", alone=True)
    if "receptacle" in body.flags and rating <= _SOCKETS_A:
        return Asked(_RCD_A, "socket outlets")
    if "lighting" in body.flags and dwelling:
        return Asked(_RCD_A, "lights of a dwelling")
    return None


def _judged(
    view: View,
    system: System,
    asked: Asked,
    block: Block,
    body: Body,
    where: str,
    ahead: float | None,
    subject: str,
    position: str,
) -> Iterator[Finding]:
    """``ahead`` is the residual current of the nearest RCD on the way."""
    own = body.number("rcd")
    residual = own if asked.alone and own is not None else math.inf if asked.alone else _residual(body, ahead)
    if residual <= asked.amps * _TOLD:
        return
    if residual == math.inf and ahead is None and system.earthing.arrangement is Arrangement.TT:
        return  # told by tt-needs-rcd
    need = f"rcd {asked.amps * 1000:g} mA"
    if own is not None:
        span = body.facts["rcd"].span
        edit = replace(Place(block, span), need)
        found = f"{asked.words} with a residual current device of {own * 1000:g} mA"
    else:
        span = body.facts["rating"].span
        edit = Edit(block, span.line, span.end, span.line, span.end, f" {need}")
        lack = " of its own" if asked.alone and ahead is not None else ""
        found = f"{asked.words} without a residual current device of {asked.amps * 1000:g} mA{lack}"
    needed = f"a residual current device of {asked.amps * 1000:g} mA or less" + (" for it alone" if asked.alone else "")
    fix = Fix(f"Write `{need}`", (edit,), Safety.LOOK)
    yield _told(
        view, Place(block, span), where, found, needed, f"Write `{need}` on its device.", fix, subject, position
    )


def _residual(body: Body, ahead: float | None) -> float:
    own = body.number("rcd")
    return min(own if own is not None else math.inf, ahead if ahead is not None else math.inf)


def _told(
    view: View, place: Place, where: str, found: str, needed: str, change: str, fix: Fix, subject: str, position: str
) -> Finding:
    return PEOPLE.finding(
        place,
        f"{where}: {found}",
        found=found,
        needed=needed,
        change=change,
        subject=subject,
        position=position,
        fixes=(fix,),
        clause=clause_of(view, PEOPLE),
    )
