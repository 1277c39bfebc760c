"""A connection made by a wire alone: on other legs, from another board, or under another declaration."""

from __future__ import annotations

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.notation import Voltage
from wyeline_grammar.tokens import spelled
from wyeline_linter.connected_load import load_below
from wyeline_linter.repair_edits import Draft, drop_facts, set_fact, set_poles, set_source, set_voltage, set_wire_count
from wyeline_linter.repair_legs import Taken, choose, position_text
from wyeline_linter.repair_link import (
    Candidate,
    Link,
    amperes,
    feeder_line,
    has_room,
    wants_position,
    where_new_lines_go,
)
from wyeline_linter.repair_routes import COST, Route
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import NEUTRAL, Known, System, volts_text
from wyeline_linter.verdicts import LegMap
from wyeline_linter.view import View


def by_wire(view: View, link: Link, board: str, route: Route, base: int) -> Candidate | None:
    """The connection by one wire along a route, None where it does not fit; ``base`` is the cost of getting there."""
    feeder, target = link.feeder, link.target
    load = load_below(view, target.name)
    stated = feeder.source.legs if feeder is not None and board == feeder.source.name else None
    poles = feeder.body.poles if feeder is not None else None
    taken = choose(
        view,
        board,
        route.maps,
        load.va,
        feeder=feeder,
        stated=stated,
        poles=poles.count if poles else None,
        wants_position=wants_position(view, link, board),
        hurried=link.hurried,
    )
    if taken is None or not has_room(view, link, board):
        return None
    if route.redeclared is not None and not _circuits_fit(target, link.wanted, taken.map.system):
        return None
    cost, draft, said = base + route.cost, Draft(), []
    moved = feeder is not None and board != feeder.source.name
    if feeder is not None and moved:
        said.append(f"Feed `{target.name}` from `{board}` instead of `{feeder.source.name}`")
    if route.redeclared is not None:
        set_voltage(draft, target, route.redeclared.text)
        said.append(f"Declare `{target.name}` as {route.redeclared.text}")
    left: list[str] = []
    if feeder is None:
        family = "feed"
        said.append(_new_line(view, link, board, taken, draft, left))
    else:
        family = "move" if moved else "redeclare" if route.redeclared is not None else "wire"
        rating = feeder.body.number("rating")
        if load.some and rating is not None and amperes(load.va, taken.map.system) > rating * (1 + 1e-9):
            return None
        cost += _rewritten(view, link, board, taken, draft, said)
        if moved and (feeder.body.conductors is not None or "length" in feeder.body.facts):
            left.append(f"wires, length and raceway: those on the line are of the run from `{feeder.source.name}`")
            # A quick fix shows no list of what is left, so the line itself says it.
            kept = f"  // check wires, length and raceway: they are of the run from {feeder.source.name}"
            draft.below(feeder.block, feeder.statement.last_line, [kept])
    if route.redeclared is not None:
        changes = _what_changes_below(link, route.redeclared)
        left += changes
        cost += COST["unknown rating"] * len(changes)
    return Candidate(
        cost,
        family,
        "; ".join(s if i == 0 else s[0].lower() + s[1:] for i, s in enumerate(said)),
        f"`{board}` gives {taken.map.system.figures()} there; a wire is enough{taken.balance}",
        draft.edits(),
        tuple(left),
        board=board,
        legs=taken.map.legs,
        keeps_need=route.redeclared is None,
    )


def _rewritten(view: View, link: Link, board: str, taken: Taken, draft: Draft, said: list[str]) -> int:
    """Write the existing line anew; returns what the change of its device costs."""
    feeder = link.feeder
    assert feeder is not None
    cost = 0
    way = taken.map
    moved = board != feeder.source.name
    old = tuple(leg for leg in feeder.source.legs or () if leg != NEUTRAL)
    new = tuple(taken.written.strip("[]"))
    rewritten = new != old if new else bool(old) and old != way.legs
    if moved or rewritten or _names_absent(view, feeder):
        keeps_port = not moved and feeder.source.port is not None
        name = f"{spelled(board)}.{feeder.source.port}" if keeps_port else spelled(board)
        set_source(draft, view.model, feeder, name, taken.written)
        if not moved:
            said.append(
                f"Take leg{'s' if len(way.legs) > 1 else ''} {conductors_text(way.legs, view.basis)} of `{board}`"
            )
    poles = feeder.body.poles
    if poles is not None and (poles.count != way.live_poles or (poles.switched_neutral and not _n(way))):
        cost += COST["poles"]
        set_poles(draft, feeder, way.live_poles, neutral=None if _n(way) else False)
        said.append(f"Give the device {way.live_poles} pole{'s' if way.live_poles > 1 else ''}")
    at = feeder.statement.at
    if taken.positions is not None and (at is None or at.positions != taken.positions):
        cost += 0 if moved else COST["positions"]
        set_fact(draft, feeder, "at", position_text(taken.positions))
        said.append(f"Use positions {','.join(map(str, taken.positions))}")
    elif moved and taken.positions is None:
        drop_facts(draft, feeder, ("at",))
    set_wire_count(draft, feeder, len(way.legs), _n(way) and _runs_neutral(feeder, link))
    return cost


def _n(way: LegMap) -> bool:
    return way.system.has_neutral


def _names_absent(view: View, feeder: Feeder) -> bool:
    state = view.state(feeder.source.name)
    if feeder.source.legs is None or state is None or not isinstance(state.system, Known):
        return False
    return any(leg not in state.system.system.conductors for leg in feeder.source.legs)


def _runs_neutral(feeder: Feeder, link: Link) -> bool:
    """Whether the far end takes the neutral by what it states; where it states nothing, whether the run has one."""
    if link.wanted is not None:
        return True
    wires = feeder.body.conductors
    return wires is not None and bool({role for role, _ in wires.extras} & {"N", "PEN"})


def _new_line(view: View, link: Link, board: str, taken: Taken, draft: Draft, left: list[str]) -> str:
    line = feeder_line(view, link, board, taken, link.end, left)
    block, row = where_new_lines_go(view, link, board)
    draft.below(block, row, [line])
    legs = (
        f" on leg{'s' if len(taken.map.legs) > 1 else ''} {conductors_text(taken.map.legs, view.basis)}"
        if taken.written
        else ""
    )
    return f"Feed `{link.target.name}` from `{board}`{legs}"


_BEARABLE = (0.8, 1.1)
"""Share of the voltage meant for them that circuits may get under a new declaration: less is for a drafter to judge
(a heater gives less), more destroys (NEMA MG 1 and IEC 60034-1: +10 % at the most)."""


def _circuits_fit(board: Equipment, wanted: Voltage | None, system: System) -> bool:
    """Whether its circuits may live under another declaration.

    One pole needs a neutral, three take three legs, and no circuit may get a voltage far from the one it was drawn for.
    """
    for placed in board.circuits:
        circuit = placed.circuit
        poles = circuit.body.poles.count if circuit.body.poles else len(circuit.place.positions)
        if "space" in circuit.body.flags or "spare" in circuit.body.flags:
            continue
        if (poles == 1 and not system.has_neutral) or poles > len(system.legs):
            return False
        if poles == 1:
            meant, gets = wanted.neutral_v if wanted else None, system.nominal_v(system.legs[0], NEUTRAL)
        else:
            meant, gets = wanted.line_v if wanted else None, system.nominal_v(*system.legs[:2])
        if meant and not _BEARABLE[0] <= gets / meant <= _BEARABLE[1]:
            return False
    return True


def _what_changes_below(link: Link, redeclared: Voltage) -> list[str]:
    """What a new declaration asks to be looked at: circuits that sit on the voltage that changes."""
    wanted = link.wanted
    if wanted is None:
        return []
    left = []
    if abs(wanted.line_v - redeclared.line_v) > 0.01 * wanted.line_v:
        share = (redeclared.line_v / wanted.line_v) ** 2
        several = [p.key for p in link.target.circuits if len(p.circuit.place.positions) > 1]
        if several:
            left.append(
                f"nameplates of circuits {', '.join(several)} of `{link.target.name}`: they get "
                f"{volts_text(redeclared.line_v)} instead of {volts_text(wanted.line_v)}; a heater then gives "
                f"{100 * share:.0f} % of its power"
            )
    return left
