"""Neutrals of feeders and circuits: brought along where they are needed, and never asked of a supply without one."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body, Conductors
from wyeline_grammar.notation import ConductorSize
from wyeline_linter.board_positions import BoardPositions, Occupant, positions_of
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.connection import HIGH_LEG, ONE_POLE, clause_of, poles_edit
from wyeline_linter.rules.registry import NotAccepted, rule
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import SQRT3, Known, System, volts_text
from wyeline_linter.verdicts import Feeds, Refusal

if TYPE_CHECKING:
    from wyeline_linter.view import View

_WYE = "utility UTIL 480Y/277  fault 14 kA, x/r 4\nfeeder UTIL -> MSB\nswitchboard MSB 480Y/277  bus 400 A\n"
_DELTA = "utility UTIL 480 3ph  fault 14 kA, x/r 4\nfeeder UTIL -> DP\npanel DP 480 3ph  bus 400 A\n"

NOT_PULLED = rule(
    name="neutral-not-pulled",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    not_accepted=NotAccepted.UNCONNECTED,
    summary="What is fed needs a neutral, the supply has one, and the wires between them leave it out.",
    why="The neutral stops upstream: loads to neutral would find their way back over each other.",
    clause={"us": "200.3"},
    wrong=_WYE + "panel LL-1 480Y/277  bus 125 A\nfeeder MSB -> LL-1  60 A 3p  3#6 + G #10 Cu\n",
    right=_WYE + "panel LL-1 480Y/277  bus 125 A\nfeeder MSB -> LL-1  60 A 3p  3#6 + N #6 + G #10 Cu\n",
    mends=True,
)


def brings_neutral(conductors: Conductors, live: int) -> bool:
    """Whether a run has a neutral beside so many live wires: named, combined with PE, or one more than the legs."""
    if any(role in ("N", "PEN") for role, _ in conductors.extras):
        return True
    return conductors.run.count - conductors.run.with_protective > live


def size_text(size: ConductorSize) -> str:
    """A conductor size as it is written behind ``+ N``."""
    return f"#{size.text}" if size.system == "awg" else size.text.replace(" ", "")


@NOT_PULLED.check
def neutral_not_pulled(view: View, feeder: Feeder) -> Iterator[Finding]:
    conductors, state = feeder.body.conductors, view.feeder_state(feeder.key)
    target = view.equipment(feeder.target.name)
    if conductors is None or state is None or target is None or not isinstance(state.offered, Known):
        return
    if (
        not isinstance(state.verdict, Feeds)
        or not state.offered.system.has_neutral
        or target.name == feeder.source.name
    ):
        return
    standing = view.state(target.name)
    if standing is not None and isinstance(standing.winding, Refusal):
        return  # its windings cannot be, which is told
    if state.wanted is None:
        # The far end takes what arrives: its circuits to neutral show that one was meant.
        if state.verdict.best.system.has_neutral or not any(
            _to_neutral(o) for o in positions_of(view, target).occupants
        ):
            return
    elif not all(m.system.has_neutral for m in state.verdict.maps):
        return
    live = len(state.verdict.best.legs)
    if brings_neutral(conductors, live):
        return
    run = conductors.run
    fixes: tuple[Fix, ...] = ()
    span = conductors.span
    text = feeder.block.lines[span.line][span.start : span.end]
    first = text.split("+")[0].rstrip()
    if not run.with_protective:
        words = first.split()
        # The metal stands behind the last size; the neutral goes before the first extra conductor.
        at = span.start + (len(first) if "+" in text else len(words[0]))
        edit = Edit(feeder.block, span.line, at, span.line, at, f" + N {size_text(run.size)}")
        fixes = (Fix(f"Bring the neutral along: `+ N {size_text(run.size)}`", (edit,), Safety.LOOK),)
    yield NOT_PULLED.finding(
        Place(feeder.block, span),
        f"`{target.name}` needs a neutral, and the wires from `{feeder.source.name}` bring none",
        found=f"{live} live wires and no neutral",
        needed=f"a neutral from `{feeder.source.name}` to `{target.name}`",
        change="Add `+ N` with its size.",
        subject=feeder.key,
        fixes=fixes,
        clause=clause_of(view, NOT_PULLED),
    )


def _to_neutral(occupant: Occupant) -> bool:
    """Whether a circuit uses one live wire only, so that its other wire can but be a neutral."""
    poles = occupant.poles
    return occupant.circuit is not None and poles is not None and poles.count == 1 and not _idle(occupant.body)


def _idle(body: Body) -> bool:
    return "spare" in body.flags or "space" in body.flags


ON_DELTA = rule(
    name="neutral-load-on-delta",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    not_accepted=NotAccepted.UNCONNECTED,
    summary="A circuit to neutral stands on a board that no neutral reaches.",
    why="A system of live wires has no neutral point to return to; it takes a transformer to make one.",
    clause={"us": "200.3"},
    wrong=_DELTA + '  1  20 A 1p  1.8 kVA lighting  "High bay"\n',
    right=_DELTA + '  1,3  20 A 2p  1.8 kVA lighting  "High bay"\n',
)
_STAR_LINE_V = (208.0, 220.0, 380.0, 400.0, 415.0, 480.0, 600.0, 690.0)
"""Line voltages whose loads to neutral are common: a one-pole circuit there was meant to go to neutral."""


@ON_DELTA.check
def circuits_without_neutral(view: View, board: Equipment) -> Iterator[Finding]:
    """One-pole circuits where no neutral arrives: what was meant decides which rule tells of it."""
    if not board.circuits:
        return
    positions = positions_of(view, board)
    system = positions.system
    if system is None or system.frequency_hz == 0 or system.has_neutral or len(system.live_legs) < len(system.legs):
        return
    supply = view.network.supply.get(board.name)
    offered = view.feeder_state(supply.key) if supply is not None else None
    left_out = offered is not None and isinstance(offered.offered, Known) and offered.offered.system.has_neutral
    if left_out and view.derivation.stated(board.primary) is None:
        return  # the supply has one, and the feeder leaves it out: that is told at the feeder
    line = system.nominal_v(system.legs[0], system.legs[1]) if len(system.legs) > 1 else 0.0
    for occupant in positions.occupants:
        if not _to_neutral(occupant) or occupant.circuit is None:
            continue
        if len(system.legs) == 3 and line in _STAR_LINE_V:
            yield ON_DELTA.finding(
                occupant.place,
                f"circuit {occupant.key} goes to neutral, and `{board.name}` has none",
                found=f"`{board.name}`: {system.figures()}",
                needed=f"a neutral, {volts_text(round(line / SQRT3))} from each live wire",
                change=f"Feed it at {volts_text(line)} from two legs, or "
                + (
                    f"give `{board.name}` the neutral that its supply has: write its voltage with it, and pull it."
                    if left_out
                    else "put in a transformer that makes a neutral."
                ),
                subject=board.name,
                position=occupant.key,
                clause=clause_of(view, ON_DELTA),
            )
        else:
            yield _one_pole(view, board, positions, system, occupant)


def _one_pole(view: View, board: Equipment, positions: BoardPositions, system: System, occupant: Occupant) -> Finding:
    fixes: tuple[Fix, ...] = ()
    span = occupant.body.poles_span
    block = occupant.place.block
    if span is not None:
        edits = [poles_edit(block, span, "2p")]
        if occupant.positions:
            second = positions.numbering.run(occupant.positions[0], 2)
            if positions.taken.get(second[1]) is None and second[1] <= (positions.spaces or second[1]):
                edits.append(replace(occupant.place, ",".join(map(str, second))))
        if len(edits) > 1 or (occupant.stated_legs is not None and len(occupant.stated_legs) == 2):
            fixes = (Fix("Make it a two-pole device", tuple(edits), Safety.LOOK),)
    return ONE_POLE.finding(
        Place(block, span) if span is not None else occupant.place,
        f"circuit {occupant.key} of `{board.name}` has one pole, and both of its wires are live",
        found=f"a 1-pole device on {system.figures()}",
        needed="a device that opens both wires",
        change="Take two legs and a two-pole device.",
        subject=board.name,
        position=occupant.key,
        fixes=fixes,
        clause=clause_of(view, ONE_POLE),
    )


@HIGH_LEG.also("equipment")
def circuit_on_high_leg(view: View, board: Equipment) -> Iterator[Finding]:
    if not board.circuits:
        return
    positions = positions_of(view, board)
    system = positions.system
    high = system.high_leg if system is not None else None
    if system is None or high is None:
        return
    for occupant in positions.occupants:
        if not _to_neutral(occupant) or positions.legs_of(occupant) != (high,):
            continue
        low = [leg for leg in system.legs if leg != high]
        called = partial(conductors_text, practice=view.basis)
        volts, usual = system.nominal_v(high, "N"), system.nominal_v(low[0], "N")
        fixes = []
        if occupant.positions:
            runs = (run for leg in low for run in positions.free_runs(1, frozenset({leg})))
            moved = next(runs, None)
            if moved is not None:
                edit = replace(occupant.place, str(moved[0]))
                fixes.append(Fix(f"Move it to position {moved[0]}", (edit,), Safety.LOOK))
        yield HIGH_LEG.finding(
            occupant.place,
            f"circuit {occupant.key} of `{board.name}` is on {called((high,))}, the high leg: "
            f"{volts_text(volts)} to neutral",
            found=f"{volts_text(volts)} from {called((high,))} to neutral",
            needed=f"{volts_text(usual)} to neutral, on {called(low, joint=' or ')}",
            change=f"Move it to a position on {called(low, joint=' or ')}.",
            subject=board.name,
            position=occupant.key,
            fixes=tuple(fixes),
            clause=clause_of(view, HIGH_LEG),
        )
