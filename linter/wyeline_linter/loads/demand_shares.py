"""Which part of a load counts at each place above it, and what a place carries beyond its part of the whole.

A demand factor counts once, at the place that is asked about, over all that hangs below it. The same circuit may
therefore count in full on its panel's feeder and by half at the service.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.loads.buckets import NEW, STANDS, VA, Key, Row, amps_of
from wyeline_linter.loads.demand import factors_of, ordered
from wyeline_linter.loads.measured import new_and_standing, stands
from wyeline_linter.loads.rollup import LoadBook, Node
from wyeline_linter.loads.third_harmonics import Restated

Asked = tuple[str, Key]
"""The place at which a load is asked for, and its kind there."""
Amps = tuple[complex, complex, complex, complex]
Mark = tuple[float | None, float, bool, dict[Key, Key], Restated | None, Restated | None, bool, bool]
"""What a place does to loads that pass it: a stated factor, what a limit leaves, whether it is a top, which kind of
load the calculation of a dwelling makes of which, the third harmonic stated on its bus and above it, whether a
measurement stands there for what was there before, and whether all that it draws is new to one further up."""
MOST_SLOTS = 5_000
"""Slots that are taken over: beyond, those that nobody asks for any more go with all others, which are found anew."""


class Beyond(NamedTuple):
    """What a feeder is judged with, beyond what flows when all counts at its source: amperes on A, B, C and N at
    nominal voltage, VA, the VA in all and connected, and in words which load it is."""

    amps: Amps
    va: complex
    judged_va: complex
    connected_va: complex
    words: str


class Part(NamedTuple):
    """A kind of load behind a feeder: it counts there by ``here``; ``times`` its share at the source is taken off."""

    key: Key
    row: Row
    here: float
    times: float


class DemandShares:
    """The shares of one switch state's loads, worked out when first asked for.

    ``before``: those of an earlier version of the same state, with the names whose nodes or equipment are other ones
    since. What a place does to kinds of loads, and so where each counts, is taken over where it holds.
    """

    def __init__(self, book: LoadBook, before: DemandShares | None = None, changed: Iterable[str] = ()) -> None:
        self.book = book
        self._factors: dict[str, tuple[Node, dict[Key, float]]] = {}
        """By top, its node in the book of loads and the factors that follow from it."""
        self._out: dict[str, frozenset[str]] = {}
        self._tops: dict[Asked, int] = {}
        self._marks: dict[str, Mark] = {}
        self.slots: list[tuple[str, Key]] = []
        """The tops: a source or converter, and a kind of load there."""
        self._slot_of: dict[tuple[str, Key], int] = {}
        self.slots_kept = before is not None and before._holds(book, changed)
        """Whether slots are those of the version before."""
        if before is not None and self.slots_kept:
            self._tops, self._marks = before._tops, before._marks
            self.slots, self._slot_of = before.slots, before._slot_of
            self._factors = {top: known for top, known in before._factors.items() if not known[0].below.held}

    def _holds(self, book: LoadBook, changed: Iterable[str]) -> bool:
        """Whether each load still counts where it did."""
        if len(self.slots) > MOST_SLOTS:
            return False
        mine = self._marks
        return all(name not in mine or mine[name] == _mark(book, name) for name in changed)

    # at the source

    def at_source(self, name: str, key: Key) -> float:
        """The part of a load of this kind, on this equipment, that counts at the source (or converter) above."""
        return self._counting(*self.top(name, key))

    def top(self, name: str, key: Key) -> tuple[str, Key]:
        """The source or converter on which a kind of load counts, and the kind it has become there: a factor that is
        stated on the way goes with it."""
        return self.slots[self.slot(name, key)]

    def slot(self, name: str, key: Key) -> int:
        """The same by its number among :attr:`slots`."""
        passed: list[Asked] = []
        nodes, suppliers, marks = self.book.nodes, self.book.network.supplier, self._marks
        while (found := self._tops.get((name, key))) is None:
            passed.append((name, key))
            above = suppliers.get(name)
            mark = marks.get(name)
            if mark is None:
                mark = marks[name] = _mark(self.book, name)
            factor, limited, is_top, became, third, above_it, measured, is_new = mark
            standing = key.stands
            if standing:
                key = key._replace(stands=NEW)
                if measured and standing == STANDS:
                    key, standing = key._replace(factor=0.0), NEW
            key = became.get(key, key)
            if factor is not None and key.factor is None:
                key = key._replace(factor=factor)
            if limited != 1.0 and key.category == "ev":
                key = key._replace(factor=(1.0 if key.factor is None else key.factor) * limited)
            if third is not None:
                key = third.key(key)
            if above is None or above not in nodes or is_top:
                found = self._slot_of.get((name, key))
                if found is None:
                    found = self._slot_of[name, key] = len(self.slots)
                    self.slots.append((name, key))
                break
            if above_it is not None:
                key = above_it.key(key)
            if standing and not is_new:
                key = key._replace(stands=STANDS)
            name = above
        for place in passed:
            self._tops[place] = found
        return found

    @property
    def of_slots(self) -> list[float]:
        """What counts at each slot that was asked for so far; 1 for a kind that is not there any more."""
        return [self._counting(top, key) for top, key in self.slots]

    def _counting(self, top: str, key: Key) -> float:
        found = self._factors_at(top).get(key)
        if found is not None:
            return found
        return 1.0 if key.factor is None else key.factor

    def _is_top(self, name: str) -> bool:
        return self.book.converts(name)

    def _top_name(self, name: str) -> str:
        while not self._is_top(name) and self.book.network.supplier.get(name) in self.book.nodes:
            name = self.book.network.supplier[name]
        return name

    def _factors_at(self, top: str) -> dict[Key, float]:
        node = self.book.nodes[top]
        known = self._factors.get(top)
        if known is None or known[0] is not node:
            known = self._factors[top] = node, factors_of(ordered(self.book.rows(top)[0]), self.book.basis)
        return known[1]

    def left_out(self, top: str) -> frozenset[str]:
        """Loads below a source that do not run, because others run in their place."""
        found = self._out.get(top)
        if found is None:
            found = self._out[top] = self.book.left_out(top)
        return found

    # at a feeder

    def single(self, name: str) -> bool:
        """Whether a feeder ends at a single load."""
        equipment = self.book.model.equipment[name]
        return equipment.kind in LOAD_KINDS and not equipment.circuits

    def parts(self, name: str) -> list[Part]:
        """What hangs on the feeder to ``name``, by kind; nothing where nothing is drawn there.

        A feeder is judged with its demand: the factors at its far end, over all that hangs below. The feeder of a
        single load is the last circuit, and is judged with the load as connected.
        """
        book = self.book
        node = book.nodes.get(name)
        if node is None or name not in book.model.equipment or not (node.up.rows or node.up.held):
            return []
        above = book.network.supplier.get(name)
        if above is None or above not in book.nodes:
            return []
        own = ordered(book.rows_above(name)[0])
        factors = dict.fromkeys(own, 1.0) if self.single(name) else factors_of(own, book.basis)
        if not _twice(node):
            return [Part(key, row, factors[key], 1.0) for key, row in own.items()]
        left_out = self.left_out(self._top_name(above)) if node.up.held else frozenset[str]()
        whole = ordered(node.up.counting(left_out)[0])
        new = {} if node.up.new is None else node.up.new.counting(left_out)[0]
        return [
            *(Part(key, row, factors[key], 0.0) for key, row in own.items()),
            *(Part(key, row, 0.0, 1.0) for key, row in new_and_standing(node.up, whole, new)),
        ]

    def beyond(self, name: str) -> Beyond | None:
        """What the feeder to ``name`` is judged with; None where nothing is drawn there."""
        parts = self.parts(name)
        if not parts:
            return None
        above = self.book.network.supplier[name]
        twice = _twice(self.book.nodes[name])
        judged = sum((part.here * part.row[VA] for part in parts), 0j)
        own = [part for part in parts if not (twice and part.times)]
        connected = sum((part.row[VA] for part in own), 0j)
        words = "the connected load" if self.single(name) else "the demand"
        total, va = [0j, 0j, 0j, 0j], 0j
        for part in parts:
            weight = part.here - part.times * self.at_source(above, part.key)
            va += weight * part.row[VA]
            for k, value in enumerate(amps_of(part.row)):
                total[k] += weight * value
        return Beyond((total[0], total[1], total[2], total[3]), va, judged, connected, words)


def _twice(node: Node) -> bool:
    """Whether loads stand twice among the parts, as they count here and as they count at the source: where some exclude
    each other, or a measurement further up holds some."""
    return bool(node.up.held) or node.up.new is not None


def _mark(book: LoadBook, name: str) -> Mark:
    node, equipment = book.nodes.get(name), book.model.equipment.get(name)
    if node is None or equipment is None:
        return None, 1.0, True, {}, None, None, False, False
    feeder = book.network.supply.get(name) if name in book.behind else None
    is_new = feeder is not None and not stands(feeder.body.flags)
    measured = name in book.measured
    return node.factor, node.limited, book.converts(name), node.became, node.third, node.above, measured, is_new
