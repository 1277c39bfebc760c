"""What comes together at one piece of equipment, before anything is left out or reduced."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import NamedTuple

from wyeline_linter.loads.buckets import (
    AMPS,
    CODE_AMPS,
    CODE_SPLIT,
    SPLIT,
    TO_NEUTRAL,
    VA,
    Largest,
    Rows,
    add_row,
    amps_of,
    scaled,
    split_of,
)
from wyeline_linter.loads.leaves import Leaf
from wyeline_linter.loads.third_harmonics import Restated
from wyeline_linter.loads.through_cores import Through
from wyeline_linter.reasons import merge_reasons


class Held(NamedTuple):
    """A load that something else excludes: kept apart until it is known which of them counts."""

    rows: Rows
    largest: Largest | None
    va: float


class Sum:
    """Loads added up: rows, those held apart, the largest motor, what is unknown, and what stands by for later.

    ``factored`` names what stated a demand factor that is in the rows already. ``apart_va`` is what is marked as future
    or to be removed and counts in nothing. ``new`` is the part of all this that a measurement further up does not hold
    (:mod:`wyeline_linter.loads.measured`); None where there is no such board, or all is new to it.
    """

    __slots__ = ("apart_va", "factored", "held", "largest", "new", "rows", "unknown", "unknown_code")

    def __init__(self) -> None:
        self.rows: Rows = {}
        self.held: dict[str, Held] = {}
        self.largest: Largest | None = None
        self.unknown: tuple[str, ...] = ()
        self.unknown_code: tuple[str, ...] = ()
        self.apart_va = 0.0
        self.factored: tuple[str, ...] = ()
        self.new: Sum | None = None

    def __eq__(self, other: object) -> bool:
        if self is other:
            return True
        return isinstance(other, Sum) and all(getattr(self, n) == getattr(other, n) for n in Sum.__slots__)

    __hash__ = None  # type: ignore[assignment]

    @property
    def empty(self) -> bool:
        return not (self.rows or self.held or self.unknown)

    def add_leaf(self, leaf: Leaf, *, alone: bool) -> None:
        """Add one load; ``alone``: it has rivals, so it is held apart."""
        if leaf.unknown:
            self.unknown = merge_reasons(self.unknown, leaf.unknown)
        if leaf.unknown_code:
            self.unknown_code = merge_reasons(self.unknown_code, leaf.unknown_code)
        if leaf.row is None:
            return
        if leaf.key.factor is not None:
            self.factored = merge_reasons(self.factored, (leaf.name,))
        if alone:
            self.held[leaf.name] = Held({leaf.key: leaf.row}, leaf.largest, abs(leaf.row[VA]))
            return
        add_row(self.rows, leaf.key, leaf.row)
        self.largest = larger(self.largest, leaf.largest)

    def add(self, other: Sum) -> None:
        """Add what comes up from below."""
        for key, row in other.rows.items():
            add_row(self.rows, key, row)
        if other.held:
            self.held = {**self.held, **other.held}
        self.largest = larger(self.largest, other.largest)
        if other.unknown:
            self.unknown = merge_reasons(self.unknown, other.unknown)
        if other.unknown_code:
            self.unknown_code = merge_reasons(self.unknown_code, other.unknown_code)
        if other.factored:
            self.factored = merge_reasons(self.factored, other.factored)
        self.apart_va += other.apart_va
        if self.new is not None:
            self.new.add(other if other.new is None else other.new)

    def copy(self) -> Sum:
        made = Sum()
        made.rows = dict(self.rows)
        made.held = dict(self.held)
        made.largest, made.apart_va, made.factored = self.largest, self.apart_va, self.factored
        made.unknown, made.unknown_code = self.unknown, self.unknown_code
        made.new = None if self.new is None else self.new.copy()
        return made

    def rekeyed(self, other: Callable[[Rows], Rows]) -> Sum:
        """The same with other kinds of load in place of its own, in the part that is new as well."""
        made = self.copy()
        made.rows = other(self.rows)
        made.held = {n: Held(other(h.rows), h.largest, h.va) for n, h in self.held.items()}
        made.new = None if self.new is None else self.new.rekeyed(other)
        return made

    def with_factor(self, factor: float, name: str) -> Sum:
        """The same with a stated demand factor on all that has none yet."""

        def rekeyed(rows: Rows) -> Rows:
            made: Rows = {}
            for key, row in rows.items():
                add_row(made, key if key.factor is not None else key._replace(factor=factor), row)
            return made

        made = self.rekeyed(rekeyed)
        made.factored = merge_reasons(self.factored, (name,))
        return made

    def restated(self, third: Restated) -> Sum:
        """The same with a share of third harmonic in place of what its loads say."""
        kinds = (key for rows in (self.rows, *(each.rows for each in self.held.values())) for key in rows)
        if all(third.key(key) is key for key in kinds):
            return self
        return self.rekeyed(lambda rows: _restated(rows, third))

    def at_share(self, share: float) -> Sum:
        """The same at a share of its full value, in a switch state that says so."""
        made = self.copy()
        made.rows = {key: scaled(row, share) for key, row in self.rows.items()}
        made.held = {
            n: Held({k: scaled(r, share) for k, r in h.rows.items()}, _share(h.largest, share), h.va * share)
            for n, h in self.held.items()
        }
        made.largest = _share(self.largest, share)
        made.new = None if self.new is None else self.new.at_share(share)
        return made

    def through(self, transformer: Through) -> Sum:
        """The same on the other side of a transformer."""
        made = self.copy()
        made.rows = {key: _through(row, transformer) for key, row in self.rows.items()}
        made.held = {
            n: Held({k: _through(r, transformer) for k, r in h.rows.items()}, _across(h.largest, transformer), h.va)
            for n, h in self.held.items()
        }
        made.largest = _across(self.largest, transformer)
        made.new = None if self.new is None else self.new.through(transformer)
        return made

    def counting(self, out: Iterable[str]) -> tuple[Rows, Largest | None]:
        """Rows and largest motor with what is held put in, but for the names left out."""
        if not self.held:
            return self.rows, self.largest
        dropped = frozenset(out)
        rows, largest = dict(self.rows), self.largest
        for name in sorted(self.held):
            if name in dropped:
                continue
            held = self.held[name]
            for key, row in held.rows.items():
                add_row(rows, key, row)
            largest = larger(largest, held.largest)
        return rows, largest


def _restated(rows: Rows, third: Restated) -> Rows:
    made: Rows = {}
    for key, row in rows.items():
        add_row(made, third.key(key), row)
    return made


def larger(first: Largest | None, second: Largest | None) -> Largest | None:
    """The larger of two motors; of equal ones the name that comes first."""
    if first is None or second is None:
        return first or second
    if abs(first.va - second.va) > 1e-9 * first.va:
        return first if first.va > second.va else second
    return first if first.name <= second.name else second


def _share(largest: Largest | None, share: float) -> Largest | None:
    if largest is None:
        return None
    a, b, c, n = largest.amps
    return Largest(largest.va * share, (a * share, b * share, c * share, n * share), largest.name)


def _across(largest: Largest | None, transformer: Through) -> Largest | None:
    return None if largest is None else Largest(largest.va, transformer.primary_amps(largest.amps), largest.name)


def _through(row: list[complex], transformer: Through) -> list[complex]:
    made = list(row)
    made[AMPS : AMPS + 4] = transformer.primary_amps(amps_of(row))
    made[CODE_AMPS : CODE_AMPS + 4] = transformer.primary_amps(amps_of(row, code=True))
    for at, code in ((SPLIT, False), (CODE_SPLIT, True)):
        a, b, c = split_of(row, code=code)
        made[at : at + 3] = [r[0] * a + r[1] * b + r[2] * c for r in transformer.split]
        if code:
            made[TO_NEUTRAL : TO_NEUTRAL + 3] = [r[0] * a + r[1] * b + r[2] * c for r in transformer.to_neutral]
    return made
