"""The connection in question, and every way to make it, written as edits of the model's text.

`candidates` is the search of `repair`: the ways of `repair_routes` from each board that may feed, with the costs that
only the model knows (another board, other poles, a rating nobody states), cheapest first. Nothing here is verified yet.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.notation import Voltage
from wyeline_grammar.tokens import spelled
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.connected_load import load_below
from wyeline_linter.derive import LOAD_KINDS, NOT_FED, reasons_of
from wyeline_linter.feeding import feed_from
from wyeline_linter.findings import Edit
from wyeline_linter.network import can_feed
from wyeline_linter.repair_legs import Taken, position_text
from wyeline_linter.repair_routes import COST, Need, Stage, routes
from wyeline_linter.sizing.plain import device_for, main_of, wires_for
from wyeline_linter.systems import NEUTRAL, Known, System, SystemState
from wyeline_linter.verdicts import FeedVerdict, Undecided
from wyeline_linter.view import View

MOVE_TO = frozenset(BOARDS) | {"busway"}
"""Kinds that a load may be moved to."""

_GONE = frozenset({"future", "demolish"})


@dataclass(frozen=True, slots=True, eq=False)
class Link:
    """One connection: from what, to what, and the feeder that makes it, None where none is written yet.

    ``hurried`` asks for an answer between two keystrokes: legs of a board with very much below it go unweighed.
    """

    source: str
    target: Equipment
    feeder: Feeder | None
    offered: SystemState
    wanted: Voltage | None
    verdict: FeedVerdict
    port: str | None = None
    hurried: bool = False

    @property
    def end(self) -> str:
        """The far end as the language writes it."""
        return spelled(self.target.name) + (f".{self.port}" if self.port else "")


@dataclass(frozen=True, slots=True)
class Candidate:
    """One way to make a connection.

    ``left`` is what remains for an engineer to give, ``sized`` says where sizes come from. ``stage`` is what is
    inserted as ``inserted``, ``board`` what feeds it then, on ``legs``. ``keeps_need`` is false where the far end is
    declared anew, ``of_finding`` true for a rule's own fix (``family`` is then the rule). ``larger`` is
    the same way through equipment of so many VA at the least.
    """

    cost: int
    family: str
    title: str
    reason: str
    edits: tuple[Edit, ...]
    left: tuple[str, ...] = ()
    sized: tuple[str, ...] = ()
    board: str = ""
    legs: tuple[str, ...] = ()
    stage: Stage | None = None
    inserted: str | None = None
    keeps_need: bool = True
    of_finding: bool = False
    larger: Callable[[float], Candidate | None] | None = None


def link_of(view: View, source: str, target: Equipment, feeder: Feeder | None, port: str | None = None) -> Link:
    """The connection as it stands, or as it would be where no feeder makes it yet."""
    wanted = view.derivation.stated(target.primary)
    state = view.state(source)
    offered: SystemState = state.system if state is not None else NOT_FED
    judged = view.feeder_state(feeder.key) if feeder is not None else None
    if judged is not None:
        return Link(source, target, feeder, judged.offered, judged.wanted, judged.verdict, port)
    if wanted is not None:
        hz = view.derivation.wanted_hz(target)
        verdict = feed_from(offered, wanted, is_load=as_nameplate(target), frequency_hz=hz)
    elif isinstance(offered, Known):
        verdict = feed_from(offered, offered.system)
    else:
        verdict = Undecided(reasons_of(offered))
    return Link(source, target, feeder, offered, wanted, verdict, port)


def as_nameplate(target: Equipment) -> bool:
    """Whether its voltage is a nameplate with its tolerance: loads, and the windings of a transformer."""
    return target.kind in LOAD_KINDS or target.kind == "transformer"


def need_of(view: View, link: Link, up: System) -> Need | None:
    """What the far end wants of ``up``; where it states nothing, what its device and legs take. None: anything."""
    target, wanted = link.target, link.wanted
    if wanted is None:
        feeder = link.feeder
        stated = feeder.source.legs if feeder is not None else None
        poles = feeder.body.poles if feeder is not None else None
        count = len([leg for leg in stated if leg != NEUTRAL]) if stated else poles.count if poles else len(up.legs)
        names = up.legs[: max(1, min(count, len(up.legs)))]
        wanted = up.restrict((*names, NEUTRAL) if up.has_neutral else names).nominal
        if len(names) == 1 and not up.has_neutral:
            return None
    return Need(
        wanted,
        as_nameplate(target),
        view.derivation.wanted_hz(target),
        target.kind in BOARDS and link.wanted is not None,
        view.derivation.practice,
    )


# the search


def candidates(view: View, link: Link, *, everywhere: bool) -> list[Candidate]:
    """Every way to make the connection, cheapest first; ``everywhere`` looks at all boards, not only at those above."""
    found: list[Candidate] = []
    for board, base in _boards(view, link, everywhere):
        state = view.state(board)
        if state is None or not isinstance(state.system, Known):
            continue
        need = need_of(view, link, state.system.system)
        if need is None:
            continue
        for route in routes(state.system.system, need):
            if base and route.stage is not None and board not in _above(view, link):
                continue
            if base and route.redeclared is not None and _another_voltage(link.wanted, route.redeclared):
                continue  # another board and another voltage: nothing of what was asked for is left
            if route.stage is None:
                from wyeline_linter.repair_wire import by_wire

                made = by_wire(view, link, board, route, base)
            else:
                from wyeline_linter.repair_stage import by_stage

                made = by_stage(view, link, board, route, base)
            if made is not None and made.edits:
                found.append(made)
    found.sort(key=lambda c: c.cost)
    return found


def _another_voltage(wanted: Voltage | None, other: Voltage) -> bool:
    """Whether neither the voltage between legs nor that to neutral stays (within 1 %)."""
    pairs = ((wanted.line_v, other.line_v), (wanted.neutral_v, other.neutral_v)) if wanted is not None else ()
    return wanted is not None and not any(a and b and abs(a - b) <= 0.01 * b for a, b in pairs)


def _above(view: View, link: Link) -> list[str]:
    return [name for name in view.network.above(link.source) if _may_feed(view, link, name)]


def _may_feed(view: View, link: Link, name: str) -> bool:
    equipment = view.equipment(name)
    return (
        equipment is not None
        and equipment.kind in MOVE_TO
        and can_feed(equipment)
        and equipment.status not in _GONE
        and name != link.target.name
        and link.target.name not in view.network.above(name)
    )


def _boards(view: View, link: Link, everywhere: bool) -> Iterator[tuple[str, int]]:
    """The supply itself, the boards above it, and of the others the nearest one of every voltage system."""
    yield link.source, 0
    above = _above(view, link)
    backed = _backed(view, link.source)

    def moved(name: str) -> int:
        return COST["move"] + (COST["loses its second source"] if backed and not _backed(view, name) else 0)

    for name in above:
        yield name, moved(name)
    if not everywhere or link.wanted is None:
        return
    best: dict[System, tuple[int, int, str]] = {}
    near = {name: i for i, name in enumerate(view.network.above(link.source))}
    tried = {link.source, *above}
    for i, (name, state) in enumerate(view.derivation.states.items()):
        equipment = view.model.equipment.get(name)
        if equipment is None or equipment.kind not in MOVE_TO or name in tried or not isinstance(state.system, Known):
            continue
        rank = min((near[n] for n in view.network.above(name) if n in near), default=len(near))
        known = best.get(state.system.system)
        if (known is None or (rank, i) < known[:2]) and _may_feed(view, link, name):
            best[state.system.system] = (rank, i, name)
    for _, _, name in sorted(best.values()):
        yield name, moved(name)


def _backed(view: View, name: str) -> bool:
    """Whether a second source stands by for it: it is, or is fed through, one of these."""
    ways = (view.equipment(one) for one in (name, *view.network.above(name)))
    return any(way is not None and way.kind in ("transfer", "ups", "generator") for way in ways)


# what a line takes


def wants_position(view: View, link: Link, board: str) -> bool:
    """Whether a device in this board gets positions: where the line had some, or where the board counts its own."""
    feeder = link.feeder
    equipment = view.equipment(board)
    if equipment is None or equipment.kind not in BOARDS:
        return False
    if feeder is not None and board == feeder.source.name:
        at = feeder.statement.at
        return at is not None and bool(at.positions)
    return equipment.body.number("spaces") is not None


def amperes(va: float, system: System) -> float:
    """Line current of a load, balanced, at nominal voltage."""
    legs = system.legs
    if len(legs) < 2:
        return va / system.nominal_v(legs[0], NEUTRAL)
    return va / (system.nominal_v(legs[0], legs[1]) * (math.sqrt(3.0) if len(legs) == 3 else 1.0))


def has_room(view: View, link: Link, board: str) -> bool:
    """Whether what the board's own device or bus is rated for covers its stated load with this one added."""
    equipment = view.equipment(board)
    state = view.state(board)
    if equipment is None or state is None or not isinstance(state.system, Known):
        return False
    rating = main_of(equipment) or equipment.body.number("bus") or equipment.body.number("rating")
    if rating is None or board == link.source or board in view.network.above(link.target.name):
        return True
    system = state.system.system
    return amperes(load_below(view, board).va + load_below(view, link.target.name).va, system) <= rating


def feeder_line(view: View, link: Link, board: str, taken: Taken, end: str, left: list[str]) -> str:
    """The text of a feeder that does not exist yet, from a board to the far end."""
    way = taken.map
    legs = way.system.legs
    volts = way.system.nominal_v(legs[0], legs[1] if len(legs) > 1 else NEUTRAL)
    device, why = device_for(view, volts, len(legs), link.target)
    parts = [f"feeder {spelled(board)}{taken.written} -> {end}"]
    if device is None:
        left.append(why)
    else:
        parts.append(f"{device:g} A {way.live_poles}p")
        wires = wires_for(view, device, len(legs), way.system.has_neutral, view.equipment(board), link.target)
        if wires:
            parts.append(wires)
    if taken.positions:
        parts.append(position_text(taken.positions))
    left.append(f"length and raceway of `{board} -> {link.target.name}`")
    return "  ".join(parts) + "  // device, wires, length: complete what is missing"


def where_new_lines_go(view: View, link: Link, board: str) -> tuple[Block, int]:
    """Below the line in question; else below the last feeder that leaves the board; else below the far end."""
    if link.feeder is not None:
        return link.feeder.block, link.feeder.statement.last_line
    leaving = [f for f in view.feeders_out_of(board) if f.block.file == link.target.block.file]
    if leaving:
        last = max(leaving, key=lambda f: f.block.first_line)
        return last.block, last.statement.last_line
    return link.target.block, link.target.statement.last_line
