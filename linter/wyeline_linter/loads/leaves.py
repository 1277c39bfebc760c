"""A single load in its place: whose it is, on which conductors, and what it adds to the sums."""

from __future__ import annotations

from typing import NamedTuple

from wyeline_linter.loads.as_given import Given
from wyeline_linter.loads.buckets import CODE, Key, Largest, Row, amps_of, row_of
from wyeline_linter.loads.conductors_of_loads import Part, inverse_conjugates
from wyeline_linter.systems import System


class Leaf(NamedTuple):
    """One load.

    ``owner`` is the board or the load's own name, ``place`` the key of its circuit (empty for equipment). ``parts`` are
    its volt-amperes at nominal voltage by pair of conductors; ``row`` is None where it is unknown or adds nothing.
    """

    owner: str
    place: str
    given: Given | None
    legs: tuple[str, ...]
    parts: tuple[Part, ...]
    key: Key
    row: Row | None
    largest: Largest | None
    unknown: tuple[str, ...]
    unknown_code: tuple[str, ...]

    @property
    def of_board(self) -> bool:
        """Whether it is a load of a board as a whole, beside its circuits."""
        return self.given is not None and self.given.how in ("dwelling", MEASURED)

    @property
    def name(self) -> str:
        return f"{self.owner} {self.place}" if self.place else self.owner


NOTHING = Key("none", False)
MEASURED = "measured"
"""The class of a load that was measured at a board, and how it was read."""


def unknown_leaf(owner: str, place: str, reasons: tuple[str, ...], given: Given | None = None) -> Leaf:
    """A load of which something is missing."""
    key = Key(given.category, given.continuous) if given is not None else NOTHING
    return Leaf(owner, place, given, (), (), key, None, None, reasons, reasons)


def leaf(
    owner: str,
    place: str,
    given: Given,
    legs: tuple[str, ...],
    parts: tuple[Part, ...],
    system: System,
    factor: float | None,
    third: float | None = None,
) -> Leaf:
    """A load that is known, put on its conductors; ``third`` is its third harmonic (`third_harmonics.returning`)."""
    drawn = sum(abs(part[2]) for part in parts)
    ratio = given.code_va / drawn if given.code_va is not None and drawn else 1.0
    row = row_of(parts, inverse_conjugates(system), ratio, given.units)
    continuous = given.continuous and not given.nameplate_code
    key = Key(given.category, continuous, factor, given.nameplate_code, third=third)
    largest = None
    if given.motor and not given.nameplate_code:
        share = 1.0 / given.units
        a, b, c, n = amps_of(row, code=True)
        name = f"{owner} {place}" if place else owner
        largest = Largest(row[CODE].real * share, (a * share, b * share, c * share, n * share), name)
    return Leaf(owner, place, given, legs, parts, key, row, largest, (), given.unknown_code)
