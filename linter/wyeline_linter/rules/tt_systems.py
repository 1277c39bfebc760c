"""TT systems, whose faults to earth return through electrodes: what trips on them, and what stands ahead of it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.ahead import Ahead
from wyeline_linter.claims import CLASS_II
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.earthing import own_electrode
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.protection.circuits import circuit_lines
from wyeline_linter.protection.disconnection import in_tt, longest_fault_s
from wyeline_linter.protection.fault_loop import has_rcd, least_earth_a
from wyeline_linter.protection.lines import Line, feeder_line
from wyeline_linter.protection.trip import opens_from
from wyeline_linter.rules.additional_protection import Asked, asked_of
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.fault_times import fused, lines_with_device, trips_at_once
from wyeline_linter.rules.line_findings import about, amps_text
from wyeline_linter.rules.registry import rule
from wyeline_linter.rules.residual_types import equipment_claims
from wyeline_linter.systems import Arrangement, Known, SystemState

if TYPE_CHECKING:
    from wyeline_linter.view import View

_SITE = (
    'project "Annex"\n  basis iec\n  revision "A"\n'
    "utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TT, resistance 50 ohm\n"
    "feeder NETT -> HV  63 A 4p curve C{}  4x25mm2 + PE 16mm2 Cu PVC  15 m, method C\n"
    "panel HV 400Y/230  bus 63 A, main 63 A, rated 15 kA\n"
)
_PLASTIC = _SITE.format("") + '  claim class-ii "moulded cabinet, data sheet 7"\n'
_ROW = '  F1[L1]  16 A 1p+N curve B{}  1 kW receptacle  "Sockets, office"  3G2.5mm2 Cu PVC  10 m method C\n'
TOUCH_VOLTAGE_V = 50.0
"""IEC 60364-4-41, 411.5.3: R_A times the residual operating current stays below this."""
_FED = LOAD_KINDS | {"transformer", "ups", "inverter"}
"""What a feeder ends in that has metal parts and no circuits of its own."""

TT = rule(
    name="tt-needs-rcd",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="iec",
    summary="In a TT system a circuit has no RCD, or one that trips at too high a touch voltage.",
    why="The earth rod lets so little fault current through that a breaker or fuse hardly ever trips in time.",
    clause={"iec": "60364-4-41 411.5.2, 411.5.3, 411.5.4"},
    wrong=_PLASTIC + _ROW.format(""),
    right=_PLASTIC + _ROW.format(", rcd 30 mA"),
    mends=True,
)
HOUSING = rule(
    name="tt-housing-ahead-of-rcd",
    since="0.1",
    severity=Severity.GAP,
    scope="board",
    basis="iec",
    summary="In a TT system no RCD stands ahead of a board, and nothing says that its housing is of class II.",
    why="An RCD sees faults behind it only. One between a live wire and a metal housing ahead of it leaves the housing "
    "live, and nothing trips.",
    clause={"iec": "60364-4-41 411.5, 412; 60364-5-53 531.3.5 (numbered so from memory)"},
    wrong=_SITE.format("") + _ROW.format(", rcd 30 mA"),
    right=_SITE.format(", rcd 300 mA, rcd-type S") + _ROW.format(", rcd 30 mA"),
    mends=True,
)


@TT.check
def tt_feeder(view: View, feeder: Feeder) -> Iterator[Finding]:
    target, state = view.equipment(feeder.target.name), view.state(feeder.target.name)
    if target is None or target.kind not in _FED or state is None or state.ahead is None:
        return
    alone = own_electrode(target) and _is_tt(state.system)
    if not (alone or _is_tt(state.arriving)) or view.network.supply.get(target.name) is not feeder:
        return
    ahead = state.onward if alone and state.onward is not None else state.ahead
    if ahead.rcd_a is None:
        if not _judged_by_study(feeder_line(view, feeder), ahead):
            yield _no_rcd(view, feeder.block, feeder.body, feeder.place, f"`{target.name}`", feeder.key, "")
    elif _touch_v(ahead, ahead.rcd_a) > TOUCH_VOLTAGE_V:
        yield _too_high(view, ahead, ahead.rcd_a, feeder.place, f"`{target.name}`", feeder.key, "")


@TT.also("board")
def tt_circuits(view: View, board: Equipment) -> Iterator[Finding]:
    """Each circuit by its own RCD; the board's, and what stands further up, is told at the board."""
    state = view.state(board.name) if board.circuits else None
    if state is None or state.onward is None or not _is_tt(state.system):
        return
    onward = state.onward
    lines: dict[str, Line] | None = None
    for placed in board.circuits:
        body = placed.circuit.body
        if "spare" in body.flags or "space" in body.flags:
            continue
        own = body.number("rcd")
        place, where = Place(placed.block, placed.circuit.span), f"circuit {placed.key} of `{board.name}`"
        if own is not None:
            if _touch_v(onward, own) > TOUCH_VOLTAGE_V:
                yield _too_high(view, onward, own, place, where, board.name, placed.key)
        elif not onward.rcds:
            if lines is None:
                lines = {line.position: line for line in circuit_lines(view, board)}
            if not _judged_by_study(lines.get(placed.key), onward):
                yield _no_rcd(view, placed.block, body, place, where, board.name, placed.key)


@HOUSING.check
def housing(view: View, board: Equipment) -> Iterator[Finding]:
    """A board by its own RCD and by the one ahead of it: of several behind one, the first, and those with an electrode
    of their own."""
    state = view.state(board.name) if board.kind in BOARDS else None
    if state is None or state.ahead is None or state.onward is None or not _is_tt(state.system):
        return
    before, supply = state.ahead.rcds, view.network.supply.get(board.name)
    asked = list(state.onward.rcds[len(before) :])
    if before and (not before[-1].shared or own_electrode(board)):
        asked.append(before[-1])
    worst_a = max((rcd.amps for rcd in asked), default=0.0)
    if _touch_v(state.onward, worst_a) > TOUCH_VOLTAGE_V:
        yield _too_high(view, state.onward, worst_a, board.place, f"`{board.name}`", board.name, "")
    if not before and (supply is None or not _judged_by_study(feeder_line(view, supply), state.onward)):
        yield from _open_housing(view, board, supply, state.onward)


def _open_housing(view: View, board: Equipment, supply: Feeder | None, ahead: Ahead) -> Iterator[Finding]:
    if equipment_claims(board, CLASS_II):
        return
    fixes: tuple[Fix, ...] = ()
    if supply is not None and "rating" in supply.body.facts:
        fixes = (_give_rcd(supply.block, supply.body, _of_a_board(ahead)),)
    yield HOUSING.finding(
        board.place,
        f"no RCD stands ahead of `{board.name}` in its TT system, and nothing says that its housing is of class II",
        found="no residual current device between the source and the board",
        needed="an RCD ahead of it, or a housing and wires of class II up to its own RCDs",
        change="Write an RCD on the device that feeds it (type S, so that those behind trip first, where the electrode "
        "lets one serve), or "
        f'`claim {CLASS_II} "..."` under the board with what its housing is.',
        subject=board.name,
        fixes=fixes,
        clause=clause_of(view, HOUSING),
    )


def says_from_where_it_opens(body: Body) -> bool:
    """Whether something written tells from which current a device opens without the delay of an overload."""
    return trips_at_once(body) or fused(body)


def _judged_by_study(line: Line | None, ahead: Ahead) -> bool:
    """Whether the fault study tells if an overcurrent device opens in time: both electrodes, the wires, and the trip of
    the line's own device are written."""
    if line is None or line.guard is None or not line.guard.own or line.medium:
        return False
    if (line.wiring.ground is None) is not own_electrode(line.target):
        return False  # a PE that is not there, or should not be
    known = ahead.electrode_ohm is not None and ahead.source_ohm is not None
    return known and line.body.number("length") is not None and says_from_where_it_opens(line.body)


@TT.also("study")
def overcurrent_in_tt(view: View) -> Iterator[Finding]:
    """Lines without an RCD whose faults are known: 411.5.2 lets an overcurrent device serve where the loop is low
    enough, and stays so; not where people are to be protected by 30 mA besides (411.3.3)."""
    for line in lines_with_device(view, says_from_where_it_opens):
        ahead = _ahead_of(view, line) if in_tt(line) and not has_rcd(view, line) else None
        if ahead is None or not _judged_by_study(line, ahead):
            continue
        board = line.target if line.target is not None and line.target.kind in BOARDS else None
        if board is not None and equipment_claims(board, CLASS_II):
            continue
        allowed, worst = longest_fault_s(line), least_earth_a(view, line)
        opens = opens_from(line.tables, line.body, allowed.value) if allowed is not None else None
        people = asked_of(view, line) if board is None else None
        if people is None and worst is not None and opens is not None and allowed and worst[0] >= opens.amps:
            yield about(
                view, TT, line,
                f"{line.where} is on a TT system, and its device alone opens an earth fault ({amps_text(worst[0])}"
                f"{worst[1]}): only as long as both electrodes stay as good as they are written",
                severity=Severity.WARNING,
                found=f"{amps_text(worst[0])} through {ahead.electrode_ohm:g} ohm and {ahead.source_ohm:g} ohm; "
                f"{opens.text}",
                needed=f"an RCD, or a loop that is permanently and reliably as low; {allowed.value:g} s at the most "
                f"({allowed})",
                why="Rods corrode and soil dries: a little more resistance, and nothing trips.",
                change="Give it an RCD, or accept this with what keeps the electrodes as good.",
                place=line.place_of("rating"),
                fixes=_rcd_fix(line, "30 mA" if board is None else _of_a_board(ahead)),
            )  # fmt: skip
        elif board is not None:
            yield from _open_housing(view, board, line.feeder, ahead)
        elif line.target is None or line.target.kind in _FED:
            yield _no_rcd(
                view, line.block, line.body, line.place, line.where if line.target is None else f"`{line.target.name}`",
                line.subject, line.position,
                f"{amps_text(worst[0])} at its far end{worst[1]}; {opens.text}" if worst and opens else "",
                people,
            )  # fmt: skip


def _ahead_of(view: View, line: Line) -> Ahead | None:
    """What stands ahead of the metal parts at a line's far end, with the electrode that these have."""
    end = (
        line.target if line.target is not None and (line.target.kind in BOARDS or own_electrode(line.target)) else None
    )
    state = view.state(end.name if end is not None else line.source.name)
    return state.onward if state is not None else None


def _is_tt(state: SystemState | None) -> bool:
    return isinstance(state, Known) and state.system.earthing.arrangement is Arrangement.TT


def _touch_v(ahead: Ahead, rcd_a: float) -> float:
    """The voltage on metal parts at which an RCD has tripped; 0 where no electrode is written, which is a gap."""
    return (ahead.electrode_ohm or 0.0) * rcd_a


def _rcd_fix(line: Line, text: str) -> tuple[Fix, ...]:
    return (_give_rcd(line.block, line.body, text),) if "rating" in line.body.facts else ()


def _of_a_board(ahead: Ahead) -> str:
    """The RCD ahead of a board: one that waits for those behind it, as long as the electrode lets it; with 30 mA none
    is made that waits (IEC 61008-1, from memory)."""
    waiting = (f"{amps * 1000:g} mA, rcd-type S" for amps in (0.3, 0.1) if _touch_v(ahead, amps) <= TOUCH_VOLTAGE_V)
    return next(waiting, "30 mA")


def _give_rcd(block: Block, body: Body, text: str) -> Fix:
    span = body.facts["rating"].span
    edit = Edit(block, span.line, span.end, span.line, span.end, f" rcd {text}")
    return Fix(f"Give its device an RCD of {text.replace(', rcd-type', ', type')}", (edit,), Safety.LOOK)


def _no_rcd(
    view: View, block: Block, body: Body, place: Place, where: str, subject: str, position: str, told: str = "",
    people: Asked | None = None,
) -> Finding:  # fmt: skip
    return TT.finding(
        place,
        f"{where} is on a TT system and has no RCD ahead of it",
        found="no residual current device on the way from the source"
        + (f"; an earth fault draws {told}" if told else ""),
        needed="an RCD"
        + (f" of {people.amps * 1000:g} mA: {people.words} have one, whatever their device opens" if people else ""),
        change="Write `rcd 30 mA` on its device, or on one ahead of it.",
        subject=subject,
        position=position,
        fixes=(_give_rcd(block, body, "30 mA"),) if "rating" in body.facts else (),
        clause=clause_of(view, TT),
    )


def _too_high(view: View, ahead: Ahead, rcd_a: float, place: Place, where: str, subject: str, position: str) -> Finding:
    volts = _touch_v(ahead, rcd_a)
    ohm = ahead.electrode_ohm or 0.0
    return TT.finding(
        place,
        f"{where}: {ohm:g} ohm x {rcd_a * 1000:g} mA is {volts:.3g} V, limit {TOUCH_VOLTAGE_V:g} V",
        found=f"{volts:.3g} V on exposed metal before the RCD trips",
        needed=f"{TOUCH_VOLTAGE_V:g} V or less",
        change=f"Choose an RCD of {1000 * TOUCH_VOLTAGE_V / ohm:.0f} mA or less, or a better earth electrode.",
        subject=subject,
        position=position,
        clause=clause_of(view, TT),
    )
