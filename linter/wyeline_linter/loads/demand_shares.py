"""Which part of a load counts at each place above it, and what a place carries beyond its part of the whole.

A demand factor counts once, at the place that is asked about, over all that hangs below it. The same circuit may
therefore count in full on its panel's feeder and by half at the service.
"""

from __future__ import annotations

from functools import cached_property
from typing import NamedTuple

from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.loads.buckets import VA, Key, Rows, amps_of
from wyeline_linter.loads.demand import factors_of
from wyeline_linter.loads.of_equipment import is_converter
from wyeline_linter.loads.rollup import LoadBook

Amps = tuple[complex, complex, complex, complex]


class Beyond(NamedTuple):
    """What a feeder is judged with, beyond what flows when all counts at its source: amperes on A, B, C and N at
    nominal voltage, VA, the VA in all and connected, and in words which load it is."""

    amps: Amps
    va: complex
    judged_va: complex
    connected_va: complex
    words: str


class DemandShares:
    """The shares of one switch state's loads, worked out when first asked for."""

    def __init__(self, book: LoadBook) -> None:
        self.book = book
        self._tops: dict[tuple[str, Key], tuple[str, Key]] = {}
        self._factors: dict[str, dict[Key, float]] = {}
        self._out: dict[str, frozenset[str]] = {}

    @cached_property
    def plain(self) -> bool:
        """Whether every load counts in full wherever it is asked for: no factor is below one and nothing excludes."""
        book = self.book
        tops = {name for name, root in book.network.root.items() if name == root or self._is_top(name)}
        tops = {name for name in tops if name in book.nodes}
        if any(book.nodes[name].below.held for name in tops):
            return False
        return all(factor == 1.0 for name in tops for factor in self._factors_at(name).values())

    # at the source

    def at_source(self, name: str, key: Key) -> float:
        """The part of a load of this kind, on this equipment, that counts at the source (or converter) above."""
        top, at_top = self.top(name, key)
        return self._factors_at(top).get(at_top, 1.0)

    def top(self, name: str, key: Key) -> tuple[str, Key]:
        """The source or converter on which a kind of load counts, and the kind it has become there: a factor that is
        stated on the way goes with it."""
        passed: list[tuple[str, Key]] = []
        nodes, suppliers = self.book.nodes, self.book.network.supplier
        while (found := self._tops.get((name, key))) is None:
            passed.append((name, key))
            node, above = nodes[name], suppliers.get(name)
            if node.factor is not None and key.factor is None:
                key = key._replace(factor=node.factor)
            if node.limited != 1.0 and key.category == "ev":
                key = key._replace(factor=(1.0 if key.factor is None else key.factor) * node.limited)
            if above is None or above not in nodes or self._is_top(name):
                found = name, key
                break
            name = above
        for place in passed:
            self._tops[place] = found
        return found

    def _is_top(self, name: str) -> bool:
        return is_converter(self.book.model.equipment[name], bool(self.book.children.get(name)))

    def _top_name(self, name: str) -> str:
        while not self._is_top(name) and self.book.network.supplier.get(name) in self.book.nodes:
            name = self.book.network.supplier[name]
        return name

    def _factors_at(self, top: str) -> dict[Key, float]:
        found = self._factors.get(top)
        if found is None:
            found = self._factors[top] = factors_of(self.book.rows(top)[0], self.book.basis)
        return found

    def left_out(self, top: str) -> frozenset[str]:
        """Loads below a source that do not run, because others run in their place."""
        found = self._out.get(top)
        if found is None:
            found = self._out[top] = self.book.left_out(top)
        return found

    # at a feeder

    def beyond(self, name: str) -> Beyond | None:
        """What the feeder to ``name`` is judged with; None where nothing is drawn there.

        A feeder is judged with its demand: the factors at its far end, over all that hangs below. The feeder of a
        single load is the last circuit, and is judged with the load as connected.
        """
        book = self.book
        node, equipment = book.nodes.get(name), book.model.equipment.get(name)
        if node is None or equipment is None or not (node.up.rows or node.up.held):
            return None
        above = book.network.supplier.get(name)
        if above is None or above not in book.nodes:
            return None
        own, _ = book.rows_above(name)
        single = equipment.kind in LOAD_KINDS and not equipment.circuits
        factors = dict.fromkeys(own, 1.0) if single else factors_of(own, book.basis)
        whole = node.up.counting(self.left_out(self._top_name(above)))[0] if node.up.held else own
        shares = {key: self.at_source(above, key) for key in whole}
        connected = sum((row[VA] for row in own.values()), 0j)
        judged = sum((factors[key] * row[VA] for key, row in own.items()), 0j)
        words = "the connected load" if single else "the demand"
        if own is whole and factors == shares:
            return Beyond((0j, 0j, 0j, 0j), 0j, judged, connected, words)
        here, there = _amps(own, factors), _amps(whole, shares)
        amps = tuple(a - b for a, b in zip(here, there, strict=True))
        counted = sum((shares[key] * row[VA] for key, row in whole.items()), 0j)
        return Beyond((amps[0], amps[1], amps[2], amps[3]), judged - counted, judged, connected, words)


def _amps(rows: Rows, factors: dict[Key, float]) -> list[complex]:
    total = [0j, 0j, 0j, 0j]
    for key, row in rows.items():
        factor = factors[key]
        for k, value in enumerate(amps_of(row)):
            total[k] += factor * value
    return total
