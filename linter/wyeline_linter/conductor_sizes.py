"""Conductor sizes: reading their names, their area, their order, and the next one up.

A size is its canonical text: AWG as a bare number (`14`, `1`, `1/0`, `4/0`), `250 kcmil` and above, or `2.5 mm2`.
"""

from __future__ import annotations

import math
import re
from functools import lru_cache

from .tables import Basis, Looked, NotListed, Table, basis

MM2_PER_CIRCULAR_MIL = math.pi / 4 * 0.0254**2
"""A circular mil is the area of a circle of 0.001 in diameter."""

_SIZE = re.compile(r"(?P<gauge>\d{1,2})|(?P<aught>[1-4])/0|(?P<amount>\d+(?:\.\d+)?) (?P<unit>kcmil|mm2)")
_STEP = 1e-6
"""Relative slack of comparisons of areas, far below the distance of two sizes."""


@lru_cache(maxsize=4096)
def circular_mils(size: str) -> float:
    """Area of an AWG or kcmil size in circular mils, as NEC Chapter 9 Table 8 rounds it.

    AWG sizes the table lacks follow the gauge's definition (ASTM B258): diameter 5 mil times 92 to the power
    (36 - n) / 39. Raises ValueError for text that is no size.
    """
    match = _SIZE.fullmatch(size)
    if match is None:
        raise ValueError(f"{size!r} is not a conductor size; write 12, 1/0, 250 kcmil or 95 mm2")
    if match["unit"] == "mm2":
        return float(match["amount"]) / MM2_PER_CIRCULAR_MIL
    if match["unit"] == "kcmil":
        return float(match["amount"]) * 1000
    listed = basis("us-2023").number("conductor-properties", (size,), "circular_mils")
    if isinstance(listed, Looked):
        return listed.value
    gauge = int(match["gauge"]) if match["gauge"] else 1 - int(match["aught"])
    diameter_mil: float = 5 * 92.0 ** ((36 - gauge) / 39)
    return diameter_mil**2


@lru_cache(maxsize=4096)
def area_mm2(size: str) -> float:
    """Cross-section of the metal in mm2. Raises ValueError for text that is no size.

    `area_mm2("4/0")` is 107.2, `area_mm2("95 mm2")` is 95.
    """
    if size.endswith(" mm2") and _SIZE.fullmatch(size):
        return float(size[:-4])
    return circular_mils(size) * MM2_PER_CIRCULAR_MIL


def is_metric(size: str) -> bool:
    """Whether the size is given in mm2."""
    return size.endswith("mm2")


@lru_cache(maxsize=16)
def standard_sizes(basis: Basis) -> tuple[str, ...]:
    """All sizes of the basis, smallest first (NEC Chapter 9 Table 8, or IEC 60228)."""
    table = basis.table("conductor-properties")
    assert isinstance(table, Table)
    return tuple(key[0] for key in table.rows)


def size_at_least(basis: Basis, least_mm2: float) -> Looked[str] | NotListed:
    """The smallest standard size with at least the area `least_mm2`."""
    table = basis.table("conductor-properties")
    assert isinstance(table, Table)
    for size in standard_sizes(basis):
        if area_mm2(size) >= least_mm2 * (1 - _STEP):
            return Looked(size, table.cite, f"{size}, {area_mm2(size):.4g} mm2", table.status_of((size,), "area"))
    return NotListed(f"{table.cite} has no size of {least_mm2:.4g} mm2 or more", table.cite)


def next_size_up(basis: Basis, size: str) -> Looked[str] | NotListed:
    """The standard size after `size`."""
    return size_at_least(basis, area_mm2(size) * (1 + 1e-3))
