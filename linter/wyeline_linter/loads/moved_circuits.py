"""Circuits moved to other positions of their board, written down: the positions, and what names a circuit by them."""

from __future__ import annotations

from collections.abc import Iterator

from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.model import PositionRef
from wyeline_linter.findings import Edit, replace
from wyeline_linter.loads.balance import Swaps


def edits_of(board: Equipment, swaps: Swaps) -> tuple[Edit, ...]:
    """The edits that carry moves out. Allowances and claims ``at`` a circuit of the board go along with it."""
    to: dict[str, str] = {}
    edits: list[Edit] = []
    for move in swaps.moves:
        moved = [(move.circuit, move.to)]
        if move.other is not None:
            moved.append((move.other, move.positions))
        for placed, positions in moved:
            text = ",".join(map(str, positions))
            to[placed.key] = text
            edits.append(replace(Place(placed.block, placed.circuit.place.span), text))
    edits += [replace(Place(board.block, ref.span), to[ref.key]) for ref in _mentions(board) if ref.key in to]
    return tuple(edits)


def _mentions(board: Equipment) -> Iterator[PositionRef]:
    places = [allow.place for allow in board.statement.allows] + [claim.place for claim in board.statement.claims]
    yield from (place for place in places if place is not None)
