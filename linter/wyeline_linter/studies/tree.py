"""The pieces of a switch state as a tree in columns, for sums along the way from the source."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np

if TYPE_CHECKING:
    from wyeline_linter.circuit.layout import Floats, Ints


class Tree:
    """Pieces in an order in which every supplier stands before what it supplies, and the supplier of each."""

    def __init__(self, order: Sequence[str], suppliers: Sequence[str | None]) -> None:
        self.index = {name: k for k, name in enumerate(order)}
        above = [-1 if supplier is None else self.index.get(supplier, -1) for supplier in suppliers]
        self.above: Ints = np.array(above, dtype=np.int64)
        """The place of the supplier of each, -1 for what has none."""

    @cached_property
    def levels(self) -> list[Ints]:
        """The places of those with a supplier by their distance from the source."""
        depth: list[int] = []
        for above in self.above.tolist():
            depth.append(depth[above] + 1 if 0 <= above < len(depth) else 0)
        deep = np.array(depth, dtype=np.int64)
        return [np.flatnonzero(deep == level) for level in range(1, int(deep.max(initial=0)) + 1)]

    def sums(self, own: Floats) -> Floats:
        """For each the sum of what it and all above it have; what has no supplier starts at nothing."""
        total = np.zeros(len(own))
        for places in self.levels:
            total[places] = total[self.above[places]] + own[places]
        return total
