"""How full a raceway or tray is, and the smallest one that holds its conductors (NEC Chapter 9, 376.22, 392.22).

Pure functions on the tables of a basis. IEC 60364 gives no fill table, so with an IEC basis every answer is NotListed.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from .tables import Basis, Looked, NotListed

_WHOLE = 0.8
"""Decimal of a count of like conductors from which it may be rounded up (Chapter 9 note 7)."""


@dataclass(frozen=True, slots=True)
class Wires:
    """`count` like conductors in a raceway; `insulation` is a type of NEC 310.4(1), or `bare`."""

    count: int
    size: str
    insulation: str


class Fill(NamedTuple):
    """Fill of one raceway, in square inches and percent, with the cells behind it."""

    used_in2: float
    inside: Looked[float]
    limit_percent: Looked[float]
    areas: tuple[tuple[Wires, Looked[float]], ...]
    one_more: bool = False
    """Whether all are of one size and the last of them is the one that a decimal of 0.8 allows (Chapter 9 note 7)."""

    @property
    def percent(self) -> float:
        """Share of the inside area that the conductors take."""
        return 100 * self.used_in2 / self.inside.value

    @property
    def allowed_in2(self) -> float:
        """Area the conductors may take."""
        return self.inside.value * self.limit_percent.value / 100

    @property
    def fits(self) -> bool:
        """Whether the conductors are within the limit."""
        return self.one_more or self.used_in2 <= self.allowed_in2 * (1 + 1e-9)


class Chosen(NamedTuple):
    """The smallest trade size that holds the conductors."""

    trade_size: str
    fill: Fill


@lru_cache(maxsize=16)
def raceway_kinds(basis: Basis) -> tuple[str, ...]:
    """Raceways the basis has sizes for, such as `EMT`."""
    table = basis.table("raceway-sizes")
    return () if isinstance(table, NotListed) else tuple(dict.fromkeys(key[0] for key in table.rows))


def trade_sizes(basis: Basis, kind: str) -> tuple[str, ...]:
    """Trade sizes of a raceway, smallest first, such as `1-1/4`; empty for an unknown kind."""
    table = basis.table("raceway-sizes")
    return () if isinstance(table, NotListed) else tuple(size for k, size in table.rows if k == kind)


@lru_cache(maxsize=4096)
def wire_area_in2(basis: Basis, size: str, insulation: str) -> Looked[float] | NotListed:
    """Area of one conductor with its insulation, square inches (Chapter 9 Table 5, bare: Table 8)."""
    column = basis.text("insulation-types", (insulation,), "area_column")
    if isinstance(column, NotListed):
        return column
    if column.value == "bare":
        return basis.number("conductor-properties", (size,), "bare_area_in2")
    return basis.number("conductor-areas", (size,), column.value)


def fill_limit(basis: Basis, conductors: int, *, nipple: bool = False) -> Looked[float] | NotListed:
    """Largest fill in percent for a number of conductors (Chapter 9 Table 1, note 4 for nipples to 24 in)."""
    row = "nipple" if nipple else "one" if conductors == 1 else "two" if conductors == 2 else "over two"
    return basis.number("raceway-fill", (row,), "percent")


def fill(basis: Basis, kind: str, trade_size: str, wires: Sequence[Wires], *, nipple: bool = False) -> Fill | NotListed:
    """Fill of one raceway; grounding conductors count (Chapter 9 note 3)."""
    return _fill(basis, kind, trade_size, tuple(wires), nipple)


@lru_cache(maxsize=4096)
def _fill(basis: Basis, kind: str, trade_size: str, wires: tuple[Wires, ...], nipple: bool) -> Fill | NotListed:
    used = _areas(basis, wires)
    if isinstance(used, NotListed):
        return used
    inside = basis.number("raceway-sizes", (kind, trade_size), "area_in2")
    if isinstance(inside, NotListed):
        return inside
    limit = fill_limit(basis, sum(w.count for w in wires), nipple=nipple)
    if isinstance(limit, NotListed):
        return limit
    used_in2 = sum(w.count * area.value for w, area in used)
    one_more = not nipple and _is_one_more(used, inside.value * limit.value / 100)
    return Fill(used_in2, inside, limit, used, one_more)


def _is_one_more(used: tuple[tuple[Wires, Looked[float]], ...], room_in2: float) -> bool:
    """Whether like conductors are one more than the whole number that fits, and the rest of the room is 0.8 of it."""
    sizes = {area.value for _, area in used}
    if len(sizes) != 1:
        return False
    fitting = room_in2 / sizes.pop()
    held = math.floor(fitting)
    return fitting - held >= _WHOLE and sum(w.count for w, _ in used) == held + 1


def smallest_raceway(basis: Basis, kind: str, wires: Sequence[Wires], *, nipple: bool = False) -> Chosen | NotListed:
    """The smallest trade size of a raceway that holds the conductors."""
    sizes = trade_sizes(basis, kind)
    if not sizes:
        return NotListed(f"{basis.title} has no sizes of {kind}")
    for size in sizes:
        found = fill(basis, kind, size, wires, nipple=nipple)
        if isinstance(found, NotListed):
            return found
        if found.fits:
            return Chosen(size, found)
    return NotListed(f"no {kind} is large enough; the largest is {sizes[-1]}")


def _areas(basis: Basis, wires: Sequence[Wires]) -> tuple[tuple[Wires, Looked[float]], ...] | NotListed:
    if isinstance(basis.table("raceway-fill"), NotListed):
        return NotListed(f"{basis.title} has no fill tables; cable makers' outside diameters decide")
    areas: list[tuple[Wires, Looked[float]]] = []
    for wire in wires:
        area = wire_area_in2(basis, wire.size, wire.insulation)
        if isinstance(area, NotListed):
            return area
        areas.append((wire, area))
    return tuple(areas)
