"""Which legs of a board a line takes, and at which positions: the lightest ones that fit."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from wyeline_grammar.linking import Feeder
from wyeline_linter.board_positions import positions_of
from wyeline_linter.connected_load import leg_loads
from wyeline_linter.repair_edits import legs_text
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import NEUTRAL, Known
from wyeline_linter.verdicts import LegMap
from wyeline_linter.view import View

_HURRIED_MOST = 300
"""Pieces below a board whose legs a quick fix still weighs."""


@dataclass(frozen=True, slots=True)
class Taken:
    """The conductors chosen for a line, the legs to write (empty: only one choice exists), its positions, and what the
    choice does to the balance of the board (empty where no load is stated)."""

    map: LegMap
    written: str
    positions: tuple[int, ...] | None
    balance: str = ""


def choose(
    view: View,
    board: str,
    maps: Iterable[LegMap],
    load_va: float,
    *,
    feeder: Feeder | None = None,
    stated: tuple[str, ...] | None = None,
    poles: int | None = None,
    wants_position: bool = False,
    hurried: bool = False,
) -> Taken | None:
    """The lightest legs of a board among ``maps``, with free positions on them where the board counts positions.

    Legs that are written and fit stay. None where no run of positions is free.
    """
    ways = list(maps)
    several = len({frozenset(m.conductors) for m in ways}) > 1
    loads = leg_loads(view, board, feeder, _HURRIED_MOST if hurried else None) if several else {}

    def after(way: LegMap) -> dict[str, float]:
        share = load_va / len(way.legs)
        return {leg: va + (share if leg in way.legs else 0.0) for leg, va in loads.items()}

    def taking(way: LegMap, positions: tuple[int, ...] | None) -> Taken:
        return Taken(
            way, _written(way, several, board, view), positions, _balance(board, loads, after(way), view.basis)
        )

    def key(item: tuple[int, LegMap]) -> tuple[object, ...]:
        i, way = item
        return (
            stated is None or way.legs != tuple(leg for leg in stated if leg != NEUTRAL),
            poles is not None and way.live_poles != poles,
            way.uses_high_leg,
            round(max(after(way).values(), default=0.0)),
            round(sum(loads.get(leg, 0.0) for leg in way.legs)),
            i,
        )

    ordered = [way for _, way in sorted(enumerate(ways), key=key)]
    if not wants_position:
        return taking(ordered[0], None)
    equipment = view.equipment(board)
    if equipment is None:
        return None
    positions = positions_of(view, equipment)
    at = feeder.statement.at if feeder is not None and feeder.source.name == board else None
    if at is not None and at.positions:
        on = positions.numbering.legs(at.positions, positions.legs)
        for way in ordered:
            if way.legs == on and way.live_poles == len(at.positions):
                return taking(way, at.positions)
    for way in ordered:
        for run in positions.free_runs(way.live_poles, frozenset(way.legs)):
            on = positions.numbering.legs(run, positions.legs)
            fitting = next((w for w in ordered if w.legs == on), None)
            if fitting is not None:
                return taking(fitting, run)
    return None


def _balance(board: str, before: dict[str, float], after: dict[str, float], practice: str | None) -> str:
    if not any(before.values()):
        return ""

    def shown(loads: dict[str, float]) -> str:
        return "/".join(f"{va / 1000:.3g}" for va in loads.values())

    legs = conductors_text(before, practice, "/")
    return f"; stated load of `{board}` on legs {legs}: {shown(before)} kVA, then {shown(after)} kVA"


def _written(way: LegMap, several: bool, board: str, view: View) -> str:
    state = view.state(board)
    order = state.system.system.legs if state is not None and isinstance(state.system, Known) else way.legs
    if several or (len(way.legs) > 1 and way.legs != tuple(leg for leg in order if leg in way.legs)):
        return legs_text(way.legs)
    return ""


def position_text(positions: tuple[int, ...] | None) -> str:
    return "" if positions is None else f"at {','.join(map(str, positions))}"
