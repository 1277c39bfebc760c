"""How evenly the legs of a board are loaded, and the fewest moves of circuits that even them out."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, PlacedCircuit
from wyeline_linter.loads.buckets import Key
from wyeline_linter.loads.conductors_of_loads import INDEX, inverse_conjugates, spread
from wyeline_linter.loads.leaves import Leaf
from wyeline_linter.loads.rollup import LoadBook
from wyeline_linter.systems import System

if TYPE_CHECKING:
    from wyeline_linter.board_positions import BoardPositions, Numbering

MOST_MOVES = 5
"""Moves proposed at the most: more is a new schedule, which a person should lay out."""
GOOD_ENOUGH = 0.05
_LEAST_GAIN = 0.01
"""A move that lowers the largest leg by less than this share is not worth a new label."""


def unbalance(legs_a: tuple[float, ...]) -> float:
    """(max - mean) / mean of leg currents; 0 where nothing flows (common practice)."""
    mean = sum(legs_a) / len(legs_a) if legs_a else 0.0
    return (max(legs_a) - mean) / mean if mean > 0 else 0.0


class Move(NamedTuple):
    """One change of the schedule: a circuit to other positions; ``other`` is the circuit that takes its place."""

    circuit: PlacedCircuit
    to: tuple[int, ...]
    other: PlacedCircuit | None

    @property
    def positions(self) -> tuple[int, ...]:
        return self.circuit.circuit.place.positions

    def in_words(self) -> str:
        here = ",".join(map(str, self.positions))
        there = ",".join(map(str, self.to))
        return f"swap {here} with {there}" if self.other is not None else f"move {here} to {there}"


class Swaps(NamedTuple):
    """Moves with the amperes on the board's legs before and after them."""

    moves: tuple[Move, ...]
    before_a: tuple[float, ...]
    after_a: tuple[float, ...]


class _Piece(NamedTuple):
    placed: PlacedCircuit
    leaf: Leaf
    factor: float
    poles: int


def swaps(book: LoadBook, board: Equipment, positions: BoardPositions) -> Swaps | None:
    """The moves that even out a board's legs, five at the most; None where positions decide no legs or none helps.

    Moves only circuits written at the board itself, of one or two poles, that share no neutral with others.
    """
    system = book.system(board.name)
    if system is None or len(system.legs) < 2:
        return None
    counted = book.counted(board.name)
    totals = list(counted.demand.amps[:3])
    places = [INDEX[leg] for leg in system.legs]
    pieces = list(_movable(book, board, counted.factors))
    at = {piece.placed.key: piece.placed.circuit.place.positions for piece in pieces}
    free = [run for poles in {piece.poles for piece in pieces} for run in positions.free_runs(poles)]
    before = tuple(abs(totals[k]) for k in places)
    moves: list[Move] = []
    moved: set[str] = set()
    while len(moves) < MOST_MOVES and unbalance(tuple(abs(totals[k]) for k in places)) > GOOD_ENOUGH:
        best = _best(pieces, at, free, moved, totals, places, system, positions.numbering)
        if best is None:
            break
        piece, other, to, totals = best
        moves.append(Move(piece.placed, to, other.placed if other is not None else None))
        moved.add(piece.placed.key)
        if other is not None:
            moved.add(other.placed.key)
        else:
            free = [run for run in free if not set(run) & set(to)]
    if not moves:
        return None
    return Swaps(tuple(moves), before, tuple(abs(totals[k]) for k in places))


def _movable(book: LoadBook, board: Equipment, factors: dict[Key, float]) -> Iterator[_Piece]:
    leaves = {leaf.place: leaf for leaf in book.nodes[board.name].leaves}
    shared = {
        str(int(fact.number)) if fact.value.kind == "number" else fact.value.text
        for placed in board.circuits
        for fact in [placed.circuit.body.facts.get("with")]
        if fact is not None
    }
    for placed in board.circuits:
        body = placed.circuit.body
        leaf = leaves.get(placed.key)
        if placed.block is not board.block or leaf is None or leaf.row is None or body.leg_loads:
            continue
        if "tied" in body.flags or "with" in body.facts or placed.key in shared or len(leaf.legs) > 2:
            continue
        if placed.circuit.place.positions:
            yield _Piece(placed, leaf, factors.get(leaf.key, 1.0), len(placed.circuit.place.positions))


def _best(
    pieces: list[_Piece],
    at: dict[str, tuple[int, ...]],
    free: list[tuple[int, ...]],
    moved: set[str],
    totals: list[complex],
    places: list[int],
    system: System,
    numbering: Numbering,
) -> tuple[_Piece, _Piece | None, tuple[int, ...], list[complex]] | None:
    now = max(abs(totals[k]) for k in places)
    best: tuple[float, float, int] | None = None
    chosen: tuple[_Piece, _Piece | None, tuple[int, ...], list[complex]] | None = None
    left = [piece for piece in pieces if piece.placed.key not in moved]
    for first, piece in enumerate(left):
        here = at[piece.placed.key]
        options: list[tuple[_Piece | None, tuple[int, ...]]] = [
            (other, at[other.placed.key]) for other in left[first + 1 :] if other.poles == piece.poles
        ]
        options += [(None, run) for run in free if len(run) == piece.poles]
        seen: set[tuple[str, ...]] = set()
        for other, there in options:
            legs = numbering.legs(there, system.legs)
            if set(legs) == set(piece.leaf.legs) or (other is None and legs in seen):
                continue
            if other is None:
                seen.add(legs)
            after = list(totals)
            _shift(after, piece, system, -1.0, piece.leaf.legs)
            _shift(after, piece, system, 1.0, legs)
            if other is not None:
                _shift(after, other, system, -1.0, other.leaf.legs)
                _shift(after, other, system, 1.0, numbering.legs(here, system.legs))
            sizes = [abs(after[k]) for k in places]
            rank = (max(sizes), max(sizes) - min(sizes), 0 if other is None else 1)
            if rank[0] < now * (1.0 - _LEAST_GAIN) and (best is None or rank < best):
                best, chosen = rank, (piece, other, there, after)
    return chosen


def _shift(totals: list[complex], piece: _Piece, system: System, sign: float, legs: tuple[str, ...]) -> None:
    given = piece.leaf.given
    if given is None or given.va is None:
        return
    inverse = inverse_conjugates(system)
    for i, j, va in spread(system, legs, given.va) or ():
        current = sign * piece.factor * va.conjugate() * inverse[i, j]
        for k, amount in ((i, current), (j, -current)):
            if k < 3:
                totals[k] += amount
