"""What the figures of a switch state follow from, piece by piece, so that an edit shows which pieces it touched."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import compress, count
from operator import is_not
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment, Feeder
    from wyeline_linter.derive import EquipmentState
    from wyeline_linter.loads.rollup import LoadBook, Node


class Listed(NamedTuple):
    """The pieces of a switch state in the order of its circuit, every supplier before what it supplies.

    Equipment, feeders and nodes of the book of loads are replaced and never changed, so that what is the same object
    is as before.
    """

    order: list[str]
    nodes: Sequence[Node | None]
    equipment: Sequence[Equipment | None]
    states: Sequence[EquipmentState | None]
    feeders: Sequence[Feeder | None]
    """What supplies each,"""
    suppliers: Sequence[str | None]
    """and the name at that feeder's other end."""
    rest: tuple[object, ...]
    """What all of them hang on: basis, relations between loads, what of these runs, shares, and what feeds what."""

    @classmethod
    def of(cls, book: LoadBook) -> Listed:
        """What is listed in the state of a book of loads."""
        network = book.network
        order = list(network.order)
        return cls(
            order,
            list(map(book.nodes.get, order)),
            list(map(book.model.equipment.get, order)),
            list(map(book.derivation.states.get, order)),
            list(map(network.supply.get, order)),
            list(map(network.supplier.get, order)),
            (book.basis, book.relations, book.running, book.shares, book.children),
        )

    def changed_since(self, before: Listed) -> list[int] | None:
        """The places of the pieces that are not as they were; None where all may be otherwise."""
        if self.order != before.order or self.suppliers != before.suppliers or self.rest != before.rest:
            return None
        changed: set[int] = set()
        for mine, theirs in (
            (self.nodes, before.nodes),
            (self.equipment, before.equipment),
            (self.feeders, before.feeders),
            (self.states, before.states),
        ):
            other = list(compress(count(), map(is_not, mine, theirs)))
            if mine is self.nodes or mine is self.states:  # these may be made anew and say the same
                other = [k for k in other if mine[k] != theirs[k]]
            changed.update(other)
        return sorted(changed)
