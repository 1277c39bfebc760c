"""What each feeder is judged with beyond the solved state, for all of them side by side, kept under edits.

The kinds of load behind a feeder and what of them counts there follow from its own node; what of them counts at the
source hangs on every load below it, and is put in anew each time.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from wyeline_linter.loads.buckets import VA, amps_of
from wyeline_linter.loads.demand_shares import DemandShares, Part

if TYPE_CHECKING:
    from wyeline_linter.circuit.layout import Complex, Floats, Ints
    from wyeline_linter.studies.load_pieces import LoadPieces


class BeyondColumns:
    """Amperes on A, B, C and N at nominal voltage, and VA, by the place of the piece that is fed."""

    amps: Complex
    """(4, pieces); nothing where nothing is drawn."""
    va: Complex
    made: int
    """For how many pieces the kinds of load were looked at anew."""
    _parts: list[list[Part]]
    _slots: list[list[int]]
    _held: set[int]
    """Pieces behind whose feeders loads exclude each other."""
    _first: Ints
    owner: Ints
    slot: Ints
    here: Floats
    times: Floats
    rows: Complex

    def __init__(self, pieces: LoadPieces, before: BeyondColumns | None = None) -> None:
        self.mark = pieces.mark
        demand, order, nodes = pieces.demand, pieces.listed.order, pieces.listed.nodes
        holds = before is not None and before.mark is pieces.mark_before and pieces.changed is not None
        self.made = 0
        if before is not None and holds and demand.slots_kept and pieces.changed is not None:
            again = set(pieces.reloaded) | before._held
            self._held = before._held - set(pieces.reloaded)
            self._held |= {k for k in pieces.reloaded if (node := nodes[k]) is not None and node.up.held}
            self._parts, self._slots = list(before._parts), list(before._slots)
            other = []
            for k in sorted(again):
                parts, slots = _parts(demand, order[k])
                self.made += 1
                if parts != self._parts[k] or slots != self._slots[k]:
                    other.append(k)
                    self._parts[k], self._slots[k] = parts, slots
            if all(self._slots[k] == before._slots[k] for k in other):
                self._first, self.owner, self.slot = before._first, before.owner, before.slot
                self.here, self.times, self.rows = before.here.copy(), before.times.copy(), before.rows.copy()
                for k in other:
                    self._put(k)
            else:
                self._join()
        else:
            found = [_parts(demand, name) for name in order]
            self.made = len(order)
            self._held = {k for k, node in enumerate(nodes) if node is not None and node.up.held}
            self._parts, self._slots = [parts for parts, _ in found], [slots for _, slots in found]
            self._join()
        of_slots = np.array([*demand.of_slots, 1.0], dtype=np.float64)
        self._sum(len(order), self.here - self.times * of_slots[self.slot])

    def _join(self) -> None:
        """Put the parts of all pieces one after the other."""
        parts = [part for of_one in self._parts for part in of_one]
        counts = [len(of_one) for of_one in self._parts]
        self._first = np.concatenate((np.zeros(1, dtype=np.int64), np.cumsum(np.array(counts, dtype=np.int64))))
        self.owner = np.repeat(np.arange(len(counts)), counts)
        self.slot = np.array([slot for slots in self._slots for slot in slots], dtype=np.int64)
        self.here = np.array([part.here for part in parts], dtype=np.float64)
        self.times = np.array([part.times for part in parts], dtype=np.float64)
        self.rows = np.array([_row(part) for part in parts], dtype=np.complex128).reshape(-1, 5)

    def _put(self, k: int) -> None:
        parts = self._parts[k]
        if parts:
            at = slice(self._first[k], self._first[k + 1])
            self.here[at] = [part.here for part in parts]
            self.times[at] = [part.times for part in parts]
            self.rows[at] = [_row(part) for part in parts]

    def _sum(self, count: int, weight: Floats) -> None:
        total = np.zeros((5, count), dtype=np.complex128)
        if len(weight):
            for column in range(5):
                total.real[column] = np.bincount(self.owner, weight * self.rows.real[:, column], count)
                total.imag[column] = np.bincount(self.owner, weight * self.rows.imag[:, column], count)
        self.amps, self.va = total[:4], total[4]


def _parts(demand: DemandShares, name: str) -> tuple[list[Part], list[int]]:
    parts = demand.parts(name)
    above = demand.book.network.supplier.get(name) or ""
    return parts, [demand.slot(above, part.key) for part in parts]


def _row(part: Part) -> tuple[complex, ...]:
    return (*amps_of(part.row), part.row[VA])
