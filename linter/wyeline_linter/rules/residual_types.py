"""Residual current devices and what they can sense: which type a load asks for, by the fault current it can leave."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place, PlacedCircuit
from wyeline_grammar.model import Body, Claim
from wyeline_linter.ahead import Ahead, Residual, residual_device
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity, replace
from wyeline_linter.network import follows_grid
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Known, SystemState

if TYPE_CHECKING:
    from wyeline_linter.view import View

_FED = (
    'project "Mill"\n  basis iec\nutility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S\n'
    "feeder NETT -> HV  63 A 3p\npanel HV 400Y/230  bus 63 A, main 63 A\n"
)
TYPE = rule(
    name="rcd-type-unfit",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="iec",
    summary="A drive, inverter, UPS or charging point stands behind an RCD that cannot sense its fault current.",
    why="Behind a rectifier or inverter a fault to earth is smooth direct current or of mixed frequency. An RCD of "
    "another type does not see it, and direct current numbs it to every other fault as well.",
    clause={"iec": "60364-5-53 531.3.3; 60364-7-712 712.531.3.5; 60364-7-722 722.531.3.101"},
    wrong=_FED + "drive FU-1 400 3ph  5.5 kW, fla 11 A\nfeeder HV -> FU-1  20 A 3p curve C, rcd 300 mA, rcd-type A\n",
    right=_FED + "drive FU-1 400 3ph  5.5 kW, fla 11 A\nfeeder HV -> FU-1  20 A 3p curve C, rcd 300 mA, rcd-type B\n",
    mends=True,
)
SENSES = {"AC": 0, "A": 1, "A-S": 1, "F": 2, "B": 3}
"""What a type senses, each more than the one before: alternating, pulsating direct, mixed frequencies, smooth direct
current (IEC 60364-5-53 531.3.3). `S` alone says that it waits, not what it senses."""
SMOOTH, MIXED = "B", "F"
"""The least type that senses smooth direct current, and that senses mixed frequencies."""
_FAULTS = {SMOOTH: "smooth direct current", MIXED: "current of mixed frequencies"}
_FITTING = {SMOOTH: "type B", MIXED: "type F or B"}
_NO_DIRECT = "no-direct-residual"


def claimed(claims: Iterable[Claim], name: str, key: str = "") -> bool:
    """Whether a claim with a text is there, for the circuit ``key`` of a board or for all that it stands on."""
    return any(c.name == name and c.text and (c.place is None or c.place.key == key) for c in claims)


def equipment_claims(equipment: Equipment, name: str, key: str = "") -> bool:
    """The same for equipment, with what it takes over from types."""
    return any(claimed(statement.claims, name, key) for _, statement in equipment.chain)


def rcds_on(view: View, feeder: Feeder) -> tuple[Residual, ...]:
    """The RCDs between what makes its voltage and the end of a feeder that is no supply, the nearest to it last."""
    delivers = view.derivation.delivers_into(feeder)
    above = view.state(feeder.target.name if delivers else feeder.source.name)
    ahead: Ahead | None = None
    if above is not None:
        ahead = above.ahead if feeder.source.port == "subfeed" else above.onward
    own = residual_device(feeder.body, feeder.key)
    before = ahead.rcds if ahead is not None else ()
    return before if own is None else (*before, own)


def live_wires(state: SystemState | None) -> int:
    """How many wires other than the neutral arrive; 0 where that is not known, or where it is direct current."""
    if not isinstance(state, Known) or state.system.frequency_hz == 0:
        return 0
    return len(state.system.legs)


def _least(body: Body, kind: str, wires: int) -> str:
    """The least type of RCD that senses a fault in this load; empty where any does.

    A rectifier between a leg and the neutral leaves mixed frequencies, one between legs smooth direct current (IEC
    62423). A following inverter is told apart: what it feeds through is not a rectifier alone (60364-7-712).
    """
    if not wires:
        return ""
    if kind == "drive" or "drive" in body.flags or body.text("starter") == "VFD":
        return SMOOTH if wires > 1 else MIXED
    if kind in ("ups", "inverter") and wires > 1:
        return SMOOTH
    return SMOOTH if "ev" in body.flags and "rdc-dd" not in body.flags else ""


@TYPE.check
def of_feeders(view: View, feeder: Feeder) -> Iterator[Finding]:
    source, target, state = (
        view.equipment(feeder.source.name),
        view.equipment(feeder.target.name),
        view.feeder_state(feeder.key),
    )
    if source is None or target is None or state is None:
        return
    load, least = target, ""
    if follows_grid(source) and view.derivation.delivers_into(feeder):
        load, least = source, SMOOTH if live_wires(state.carried) else ""
    elif target.kind in ("drive", "ups", "motor", "load", "charger", "inverter") and feeder.target.port is None:
        least = _least(target.body, target.kind, live_wires(state.carried))
    if not least or "rdc-dd" in feeder.body.flags:
        return
    rcds = rcds_on(view, feeder)
    if not rcds or claimed(feeder.statement.claims, _NO_DIRECT) or equipment_claims(load, _NO_DIRECT):
        return
    if "ev" in load.body.flags:
        point = guard_of_feeder(view, feeder)  # judged by `charging-point-rcd`
        rcds = tuple(r for r in rcds if r != point)
    worst = _worst(rcds, least)
    if worst is not None:
        end = Place(feeder.block, feeder.source.span if load is source else feeder.target.span)
        yield _told(
            view,
            worst,
            least,
            f"`{load.name}`",
            feeder.block,
            feeder.body,
            None if worst.at == feeder.key else end,
            feeder.key,
            "",
        )


@TYPE.also("board")
def of_circuits(view: View, board: Equipment) -> Iterator[Finding]:
    """Each circuit whose own RCD does not fit, and once for the board what stands ahead of it."""
    state = view.state(board.name) if board.circuits else None
    if state is None or not live_wires(state.system):
        return
    ahead = state.onward.rcds if state.onward is not None else ()
    behind: dict[str, list[PlacedCircuit]] = {}
    for placed in board.circuits:
        body = placed.circuit.body
        if ("rcd" not in body.facts and not ahead) or "spare" in body.flags:
            continue
        wires = body.poles.count if body.poles is not None else max(len(placed.circuit.place.positions), 1)
        least = _least(body, "", wires)
        if not least or equipment_claims(board, _NO_DIRECT, placed.key):
            continue
        own = residual_device(body, placed.key)
        if own is not None and "ev" not in body.flags and _seeing(own, least) is not True:
            where = f"circuit {placed.key} of `{board.name}`"
            yield _told(view, own, least, where, placed.block, body, None, board.name, placed.key)
        elif any(_seeing(r, least) is not True for r in ahead):
            behind.setdefault(least, []).append(placed)
    for least, circuits in behind.items():
        first = circuits[0]
        vehicle = "ev" in first.circuit.body.flags  # what a point has to itself, `charging-point-rcd` judges
        lone = guard_of_circuit(view, board, first) if vehicle else None
        worst = _worst(tuple(r for r in ahead if r != lone), least)
        if worst is not None:
            keys = listed([c.key for c in circuits], "and")
            where = f"circuit{'s' if len(circuits) > 1 else ''} {keys} of `{board.name}`"
            end = Place(first.block, first.circuit.span)
            yield _told(view, worst, least, where, first.block, first.circuit.body, end, board.name, first.key)


def guard_of_circuit(view: View, board: Equipment, placed: PlacedCircuit) -> Residual | None:
    """The RCD that a circuit has to itself: its own, or the one ahead of a board that feeds nothing else."""
    own, state = residual_device(placed.circuit.body, placed.key), view.state(board.name)
    if own is not None or state is None or state.onward is None or not state.onward.rcds:
        return own
    nearest, arriving = state.onward.rcds[-1], state.ahead.rcds if state.ahead is not None else ()
    if nearest.at != board.name and (not arriving or arriving[-1].shared):
        return None  # a board further up shares it out
    empty = ("spare", "space")
    used = sum(1 for p in board.circuits if not any(flag in p.circuit.body.flags for flag in empty))
    return nearest if used + len(view.feeders_out_of(board.name)) == 1 else None


def guard_of_feeder(view: View, feeder: Feeder) -> Residual | None:
    """The RCD behind the last board on the way: one at a board, or ahead of it, guards all that hangs on it."""
    rcds = rcds_on(view, feeder)
    return rcds[-1] if rcds and not rcds[-1].shared else None


def _seeing(rcd: Residual, least: str) -> bool | None:
    """Whether an RCD senses what the least type asked for does; None where its type does not say."""
    return SENSES[rcd.kind] >= SENSES[least] if rcd.kind in SENSES else None


def _worst(rcds: tuple[Residual, ...], least: str) -> Residual | None:
    """The nearest RCD that cannot sense it, else the nearest of which nobody says what it senses, else None."""
    unfit = [r for r in rcds if _seeing(r, least) is False] or [r for r in rcds if _seeing(r, least) is None]
    return unfit[-1] if unfit else None


def _told(
    view: View,
    rcd: Residual,
    least: str,
    where: str,
    block: Block,
    body: Body,
    end: Place | None,
    subject: str,
    position: str,
) -> Finding:
    """``end`` is where a load is written whose RCD stands ahead of it; None: the RCD is its own."""
    unfit = _seeing(rcd, least) is False
    device = "its RCD" if end is None else f"the RCD of `{rcd.at}` ahead"
    written = f"type {rcd.kind}" if unfit else "type not written"
    key = "rcd-type" if "rcd-type" in body.facts else "rcd"
    return TYPE.finding(
        end or Place(block, body.facts[key].span),
        f"{where}: a fault leaves {_FAULTS[least]}, and {device} "
        + (f"is type {rcd.kind}" if unfit else "has no type that says what it senses"),
        found=f"{rcd.amps * 1000:g} mA, {written}",
        needed=_FITTING[least],
        change=f"Take {_FITTING[least]}, or, where no such current can arise, write "
        f'`claim {_NO_DIRECT} "..."` with the document that says so.',
        subject=subject,
        position=position,
        severity=Severity.ERROR if unfit else Severity.GAP,
        fixes=()
        if end is not None
        else (Fix(f"Write `rcd-type {least}`", (type_edit(block, body, least),), Safety.LOOK),),
        clause=clause_of(view, TYPE),
    )


def type_edit(block: Block, body: Body, kind: str) -> Edit:
    """The edit that gives the RCD of a feeder or circuit another type."""
    written = body.facts.get("rcd-type")
    if written is not None:
        return replace(Place(block, written.span), f"rcd-type {kind}")
    span = body.facts["rcd"].span
    return Edit(block, span.line, span.end, span.line, span.end, f", rcd-type {kind}")
