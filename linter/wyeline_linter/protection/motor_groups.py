"""The largest device of a feeder of motors: the largest branch device and the currents of the rest (NEC 430.62)."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_linter.loads.buckets import CODE_AMPS
from wyeline_linter.loads.demand import MOTORS
from wyeline_linter.protection.lines import Line
from wyeline_linter.standard_ratings import motor_feeder_device
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View


def group_limit(view: View, line: Line) -> float | None:
    """The largest standard device in front of a board of motors, amperes; None where a branch device is not known.

    The largest branch device counts whole, the other motors with their full-load current, all else with its demand.
    """
    board = line.target
    if board is None:
        return None
    branches: list[tuple[float, float]] = []
    others = 0.0
    book = view.loads
    for feeder in view.feeders_out_of(board.name):
        node = book.nodes.get(feeder.target.name)
        if node is None or view.network.supply.get(feeder.target.name) is not feeder:
            continue
        row = next((x.row for x in node.leaves if x.row is not None), None)
        rows = node.up.rows
        amps = max((abs(sum(r[CODE_AMPS + k] for r in rows.values())) for k in range(3)), default=0.0)
        motor = bool(rows) and all(key.category in MOTORS or key.nameplate for key in rows)
        if motor or (row is not None and not rows):
            rating = feeder.body.number("rating")
            if rating is None:
                return None
            branches.append((rating, amps))
        else:
            others += amps
    board_node = book.nodes.get(board.name)
    bodies = {p.key: p.circuit.body for p in board.circuits}
    for leaf in board_node.leaves if board_node is not None else ():
        if leaf.row is None:
            continue
        amps = max(abs(leaf.row[CODE_AMPS + k]) for k in range(3))
        rating = bodies[leaf.place].number("rating") if leaf.place in bodies else None
        if (leaf.key.category in MOTORS or leaf.key.nameplate) and rating is not None:
            branches.append((rating, amps))
        else:
            others += amps
    if not branches:
        return None
    largest = max(branches)
    rest = sum(amps for _, amps in branches) - largest[1]
    found = motor_feeder_device(line.tables, largest[0], rest + others)
    return None if isinstance(found, NotListed) else found.largest_a
