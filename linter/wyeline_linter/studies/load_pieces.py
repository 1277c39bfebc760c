"""The loads of a switch state on their conductors, piece by piece, kept under edits.

A piece is made anew where its node in the book of loads, its equipment, its voltages or what feeds it are other ones.
How much of a load counts is no part of it: a demand factor changes with every load below the source.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from wyeline_linter.loads.demand_shares import DemandShares
from wyeline_linter.loads.leaf_loads import LeafLoad, Piece, piece_of, scale_facts, scales_from
from wyeline_linter.loads.leaves import MEASURED
from wyeline_linter.studies.listed import Listed

if TYPE_CHECKING:
    from wyeline_linter.loads.rollup import LoadBook
    from wyeline_linter.studies.injections import Counting
    from wyeline_linter.studies.tree import Tree


class LoadPieces:
    """The pieces of one version of a switch state, in the order of :class:`Listed`.

    ``changed`` are the places that differ from the version before, None where all may.
    """

    def __init__(self, book: LoadBook, before: LoadPieces | None = None) -> None:
        self.listed = listed = Listed.of(book)
        self.changed = listed.changed_since(before.listed) if before is not None else None
        self.mark = object()
        """Tells this version from all others."""
        self.mark_before = before.mark if before is not None else None
        """That of the version that ``changed``, ``alike`` and ``motors_alike`` compare with."""
        # What that version did not count itself it would count by the loads of this one.
        self._before = vars(before).get("counting") if before is not None else None
        order = listed.order
        if before is None or self.changed is None:
            self.changed = None
            self.demand = DemandShares(book)
            self._facts = [self._fact(book, k) for k in range(len(order))]
            self._scales = list(scales_from(order, listed.suppliers, self._facts).values())
            self.pieces = [piece_of(book, self.demand, n, s) for n, s in zip(order, self._scales, strict=True)]
            self._out = self._left_out(book)
            self.made = len(order)
            self.motors_alike = False
            self.reloaded: list[int] = []
            """Of ``changed``, those whose own load or what hangs on them is another one."""
            return
        changed = self.changed
        nodes, equipment = before.listed.nodes, before.listed.equipment
        self.reloaded = [
            k for k in changed if listed.nodes[k] is not nodes[k] or listed.equipment[k] is not equipment[k]
        ]
        if "tree" in vars(before):
            self.tree = before.tree
        self.demand = DemandShares(book, before.demand, [order[k] for k in changed])
        self._facts, self._scales = list(before._facts), before._scales
        for k in changed:
            self._facts[k] = self._fact(book, k)
        if any(self._facts[k] != before._facts[k] for k in changed):
            self._scales = list(scales_from(order, listed.suppliers, self._facts).values())
        self._out = self._left_out(book)
        again = {k for k in changed if self._loads_differ(book, before.listed, k)}
        if self._scales is not before._scales:
            again.update(k for k, (a, b) in enumerate(zip(self._scales, before._scales, strict=True)) if a != b)
        if self._out or before._out:  # what runs of loads that exclude each other, anywhere
            again.update(k for k, node in enumerate(listed.nodes) if node is not None and node.up.held and node.leaves)
        self.pieces = list(before.pieces)
        self.motors_alike = True
        """Whether every motor is that of the version before."""
        self.made = 0
        """For how many pieces loads are other ones."""
        for k in again:
            was, now = self.pieces[k], piece_of(book, self.demand, order[k], self._scales[k])
            if was is now or (listed.equipment[k] is before.listed.equipment[k] and _alike(was, now)):
                continue
            self.pieces[k] = now
            self.made += 1
            self.motors_alike = self.motors_alike and not (_has_motors(was) or _has_motors(now))

    def _loads_differ(self, book: LoadBook, before: Listed, k: int) -> bool:
        """Whether the loads at a piece may be other ones, and not only what it carries for others."""
        equipment, node, was = self.listed.equipment[k], self.listed.nodes[k], before.nodes[k]
        return (
            equipment is not before.equipment[k]
            or self.listed.states[k] != before.states[k]
            or node is None
            or was is None
            or node.leaves is not was.leaves
            or (equipment is not None and book.converts(equipment.name))
        )

    def _fact(self, book: LoadBook, k: int) -> tuple[float, bool]:
        listed = self.listed
        return scale_facts(listed.equipment[k], listed.feeders[k], listed.nodes[k], book.share(listed.order[k]))

    def _left_out(self, book: LoadBook) -> bool:
        """Whether there are loads that exclude each other."""
        return bool(book.relations.stands_by or book.relations.excludes)

    @cached_property
    def tree(self) -> Tree:
        """What hangs on what."""
        from wyeline_linter.studies.tree import Tree

        return Tree(self.listed.order, self.listed.suppliers)

    @property
    def alike(self) -> bool:
        """Whether every load is that of the version before, and counts by the same part."""
        return self.made == 0 and self.changed is not None and self.counting.alike

    @cached_property
    def running(self) -> list[Piece]:
        """The pieces with loads that run."""
        return [piece for piece in self.pieces if piece is not None and piece.loads]

    @cached_property
    def counting(self) -> Counting:
        """What of each load counts."""
        from wyeline_linter.studies.injections import Counting

        before, self._before = self._before, None
        return Counting(self.running, self.demand, before)

    def __iter__(self) -> Iterator[LeafLoad]:
        return iter(self.all)

    @cached_property
    def all(self) -> list[LeafLoad]:
        """Every load that runs, with the part of it that counts at its source."""
        return [load for piece in self.pieces if piece is not None for load in piece.counted(self.demand)]

    @cached_property
    def at(self) -> LoadsAt:
        """The same by equipment and by circuit (empty: the equipment itself)."""
        return LoadsAt(self)


def _alike(one: Piece | None, other: Piece | None) -> bool:
    if one is None or other is None:
        return one is other
    return one.loads == other.loads and one.asked == other.asked and one.unknown == other.unknown


def _has_motors(piece: Piece | None) -> bool:
    """Whether motors that feed a fault are on it, or some may be in what was measured."""
    return piece is not None and any(load.machine or load.category == MEASURED for load in piece.loads)


class LoadsAt(Mapping[str, dict[str, list[LeafLoad]]]):
    """Loads by equipment and by circuit, put together when asked for."""

    def __init__(self, pieces: LoadPieces) -> None:
        self._demand = pieces.demand
        self._pieces = {piece.name: piece for piece in pieces.running}
        self._made: dict[str, dict[str, list[LeafLoad]]] = {}

    def piece(self, name: str) -> Piece | None:
        """The same as it is kept: another object where it may be otherwise than before."""
        return self._pieces.get(name)

    def __getitem__(self, name: str) -> dict[str, list[LeafLoad]]:
        made = self._made.get(name)
        if made is None:
            made = {}
            for load in self._pieces[name].counted(self._demand):
                made.setdefault(load.place, []).append(load)
            self._made[name] = made
        return made

    def __contains__(self, name: object) -> bool:
        return name in self._pieces

    def __iter__(self) -> Iterator[str]:
        return iter(self._pieces)

    def __len__(self) -> int:
        return len(self._pieces)
