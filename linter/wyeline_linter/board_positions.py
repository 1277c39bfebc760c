"""Positions of a board: which leg each one is on, what takes it, and which are free.

Two columns, odd left and even right: positions 1 and 2 are on the first leg, 3 and 4 on the second, and so on round the
legs; a device of several poles takes every other position, down one side. In one column, positions follow the legs one
by one (common practice; NEC 408.3(E) asks for A, B, C from left to right or top to bottom).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place, PlacedCircuit
from wyeline_grammar.model import Body, PositionRef
from wyeline_grammar.notation import Poles
from wyeline_linter.systems import Known, System

if TYPE_CHECKING:
    from wyeline_linter.derive import EquipmentState
    from wyeline_linter.view import View

ODD_EVEN = "odd-even"
COLUMN = "column"


class Numbering(NamedTuple):
    """How positions are numbered: ``odd-even``, ``sequential`` or ``column`` (left column first, then the right one,
    of ``rows`` positions each; 0 where that is not known)."""

    scheme: str = ODD_EVEN
    rows: int = 0

    def row(self, position: int) -> int:
        """The row of a position, from 0, counted down its column."""
        if self.scheme == ODD_EVEN:
            return (position - 1) // 2
        if self.scheme == COLUMN and self.rows:
            return (position - 1) % self.rows
        return position - 1

    def run(self, first: int, count: int) -> tuple[int, ...]:
        """The positions that a device of ``count`` poles takes from ``first`` on."""
        step = 2 if self.scheme == ODD_EVEN else 1
        return tuple(first + step * i for i in range(count))

    def is_run(self, positions: tuple[int, ...]) -> bool:
        """Whether positions lie one below the other in one column."""
        if positions != self.run(positions[0], len(positions)):
            return False
        rows = [self.row(p) for p in positions]
        return rows == list(range(rows[0], rows[0] + len(rows)))

    def legs(self, positions: tuple[int, ...], legs: tuple[str, ...]) -> tuple[str, ...]:
        """The leg of each position, in order, on a bus with these legs."""
        return _legs(self, positions, legs)


@lru_cache(maxsize=8192)
def _legs(numbering: Numbering, positions: tuple[int, ...], legs: tuple[str, ...]) -> tuple[str, ...]:
    return tuple([legs[numbering.row(p) % len(legs)] for p in positions]) if legs else ()


MOST_SPACES = 1_000
"""More than any board has. A figure beyond is told as out of its range, and nothing is counted up to it."""


def spaces_of(board: Equipment) -> int | None:
    """How many positions a board has; None where that is not written, or is no number of positions."""
    spaces = board.body.number("spaces")
    return int(spaces) if spaces is not None and 1 <= spaces <= MOST_SPACES else None


def numbering_of(board: Equipment) -> Numbering:
    """How a board numbers its positions."""
    scheme = board.body.text("numbering") or ODD_EVEN
    return Numbering(scheme, (spaces_of(board) or 0) // 2)


def circuit_legs(positions: tuple[int, ...], legs: tuple[str, ...], board: Equipment) -> tuple[str, ...]:
    """The legs that positions of a board are on, in order; empty where the board's legs are not known.

    ``legs`` are the legs of the board's bus in their order there (``System.legs``): three, two or one.
    """
    return numbering_of(board).legs(positions, legs)


class Occupant:
    """What takes positions of a board: a circuit, or the device of a feeder that leaves it.

    ``place`` is where its positions are written, ``stated_legs`` the legs written behind a label or a feeder's name;
    ``empty``: it is a row that says ``space``, nothing is there.
    """

    __slots__ = ("block", "body", "circuit", "empty", "feeder", "poles", "positions", "ref", "stated_legs")

    def __init__(
        self,
        ref: PositionRef,
        body: Body,
        block: Block,
        stated_legs: tuple[str, ...] | None,
        circuit: PlacedCircuit | None = None,
        feeder: Feeder | None = None,
    ) -> None:
        self.ref, self.body, self.block, self.stated_legs = ref, body, block, stated_legs
        self.circuit, self.feeder = circuit, feeder
        # Every rule of boards asks for these of every circuit.
        self.positions: tuple[int, ...] = ref.positions
        self.poles: Poles | None = body.poles
        self.empty = "space" in body.flags

    @property
    def key(self) -> str:
        return self.ref.key

    @property
    def place(self) -> Place:
        return Place(self.block, self.ref.span)

    @property
    def stated_place(self) -> Place | None:
        """Where its legs are written."""
        span = self.circuit.circuit.legs_span if self.circuit else self.feeder.source.legs_span if self.feeder else None
        return Place(self.block, span) if span is not None else None

    @property
    def shown(self) -> str:
        """How a finding calls it: its description, or the feeder's name."""
        if self.feeder is not None:
            return f"`{self.feeder.key}`"
        return f'"{self.body.description}"' if self.body.description else f"circuit {self.key}"


@dataclass(slots=True, eq=False)
class BoardPositions:
    """The positions of one board.

    ``legs`` are the legs of its bus in their order there, those of its voltage notation where nothing feeds it yet, and
    empty where neither is known; ``system`` is what stands at the bus, None where unknown. ``taken`` maps a position or
    a label to what wants it. ``spaces`` is the number of positions, None where it is not written.
    """

    board: Equipment
    legs: tuple[str, ...]
    system: System | None
    numbering: Numbering
    spaces: int | None
    occupants: tuple[Occupant, ...]
    taken: dict[int | str, list[Occupant]] = field(default_factory=dict)

    @property
    def numbered(self) -> bool:
        """Whether all that is on it has positions of the board."""
        return all(isinstance(where, int) for where in self.taken)

    def legs_of(self, occupant: Occupant) -> tuple[str, ...] | None:
        """The legs that a device is on, in order (never N); None where they cannot be told.

        Positions decide. A label needs its legs written, unless its poles take every leg.
        """
        if not self.legs:
            return None
        if occupant.positions:
            return self.numbering.legs(occupant.positions, self.legs)
        if occupant.stated_legs is not None:
            return tuple(leg for leg in occupant.stated_legs if leg != "N")
        poles = occupant.poles
        if len(self.legs) == 1 or (poles is not None and poles.count >= len(self.legs)):
            return self.legs
        return None

    def free_runs(self, poles: int, legs: frozenset[str] | None = None) -> Iterator[tuple[int, ...]]:
        """Runs of free positions for a device of so many poles, lowest first, on ``legs`` only where given.

        Without a known number of positions the search goes on a little beyond the last one taken.
        """
        last = self.spaces or max((p for p in self.taken if isinstance(p, int)), default=0) + 2 * poles + 2
        for first in range(1, last + 1):
            run = self.numbering.run(first, poles)
            if run[-1] > last or not self.numbering.is_run(run) or any(map(self._blocked, run)):
                continue
            found = self.numbering.legs(run, self.legs)
            if len(set(found)) == len(found) and (legs is None or not found or frozenset(found) == legs):
                yield run

    def _blocked(self, position: int) -> bool:
        return any(not occupant.empty for occupant in self.taken.get(position, ()))


KeptPositions = dict[str, tuple[Equipment, "EquipmentState | None", Sequence[Feeder], BoardPositions]]
"""By board: what its positions were made of, and they."""


def positions_of(view: View, board: Equipment) -> BoardPositions:
    """The positions of a board as the model stands, kept while nothing about them changes."""
    state = view.state(board.name)
    feeders: Sequence[Feeder] = view.model.feeders_from.get(board.name) or []
    kept = view.positions.get(board.name)
    if kept is not None and kept[0] is board and kept[1] is state and kept[2] == feeders:
        return kept[3]
    system = state.system.system if state is not None and isinstance(state.system, Known) else None
    if system is not None:
        legs = system.legs
    else:
        voltage = view.derivation.stated(board.primary)
        legs = ("A", "B", "C")[: voltage.legs] if voltage is not None else ()
    found = _positions(board, legs, system, feeders)
    view.positions[board.name] = (board, state, list(feeders), found)
    return found


def _positions(
    board: Equipment, legs: tuple[str, ...], system: System | None, feeders: Sequence[Feeder]
) -> BoardPositions:
    occupants = [
        Occupant(
            placed.circuit.place,
            placed.circuit.body,
            placed.block,
            placed.circuit.legs,
            circuit=placed,
        )
        for placed in board.circuits
    ]
    for feeder in sorted(feeders, key=lambda f: (f.block.file, f.block.first_line)):
        at = feeder.statement.at
        if at is not None:
            occupants.append(
                Occupant(
                    at,
                    feeder.body,
                    feeder.block,
                    feeder.source.legs,
                    feeder=feeder,
                )
            )
    taken: dict[int | str, list[Occupant]] = {}
    for occupant in occupants:
        for where in occupant.positions or (occupant.ref.label or "",):
            taken.setdefault(where, []).append(occupant)
    spaces = spaces_of(board)
    return BoardPositions(board, legs, system, numbering_of(board), spaces, tuple(occupants), taken)
