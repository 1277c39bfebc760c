"""What the wires of a line carry: bare, at their terminals, in warm surroundings, and bundled with others."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import NamedTuple

from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.conductors import (
    Arrangement,
    Material,
    Method,
    ampacity,
    capacity,
    nominal_ampacity,
    small_conductor_device_a,
    termination_column_c,
)
from wyeline_linter.protection.wiring import CABLES_AT_60, Wiring
from wyeline_linter.standard_ratings import DeviceKind, conventional_current_ratio, device_for_ampacity
from wyeline_linter.tables import Basis, Looked, NotListed

_SLACK = 1e-6
_ONE_AWG_MM2 = 1.001 * area_mm2("1")


class Laid(NamedTuple):
    """How wires are laid and ended.

    ``marked_c`` is what the terminals at both ends are marked for, None where one is not; ``device_a`` the device that
    decides the column of unmarked terminals. US: ``loaded`` current-carrying wires of one set; it has a
    raceway to itself, or all sets lie in one with ``beside`` wires of other lines (None: to itself). IEC: ``loaded`` 2
    or 3 live wires, ``method``, ``circuits`` in the group, or at the least in one where all sets lie with ``beside``
    circuits of other lines; ``arrangement`` of the group, ``soil_km_w``, ``third_percent`` of third harmonic that adds
    up in a neutral.
    """

    ambient_c: float
    loaded: int
    marked_c: int | None = None
    device_a: float = 0.0
    method: str = ""
    circuits: int = 1
    arrangement: str = "bunched"
    soil_km_w: float | None = None
    beside: int | None = None
    third_percent: float = 0.0

    def current_carrying(self, sets: int) -> int:
        """How many wires count in the raceway of one of so many sets (NEC 310.15(C)(1))."""
        return self.loaded if self.beside is None else self.beside + sets * self.loaded

    def grouped(self, sets: int) -> int:
        """How many circuits count in the group of so many sets (IEC 60364-5-52 523.5; each parallel set is one)."""
        return self.circuits if self.beside is None else max(self.circuits, self.beside + sets)


class Carries(NamedTuple):
    """Amperes that all sets together carry.

    ``plain_a`` by the insulation alone (IEC: in cool air or damp soil what the table's factor makes of it; the NEC asks
    for some currents before any factor), ``warm_a`` after the ambient, ``bundled_a`` after grouping too, ``lugs_a``
    what the terminals allow and ``best_lugs_a`` what terminals marked 75 degC would (infinite under IEC practice, whose
    tables know no such column).
    """

    plain_a: float
    warm_a: float
    bundled_a: float
    lugs_a: float
    best_lugs_a: float
    lug_c: float
    insulation_c: float
    looked: tuple[Looked[float], ...]
    best_row: Looked[float] | None = None
    """The row of ``best_lugs_a``."""
    beside: tuple[Looked[float], ...] = ()
    """The rows of what lies beside the wires, and of the third harmonic in their neutral."""

    @property
    def wire_row(self) -> Looked[float]:
        """The row of what the wires carry by themselves: of their insulation, or of the best terminals there are."""
        return self.looked[0] if self.best_row is None or self.free_a <= self.best_lugs_a else self.best_row

    @property
    def free_a(self) -> float:
        """What the wires carry by themselves: surroundings cooler than the table's let them carry more."""
        return max(self.plain_a, self.warm_a)

    @property
    def table_words(self) -> str:
        """The row of their insulation, with the factors of surroundings cooler than the table's."""
        more = self.looked[1:] if self.best_row is None else self.looked[1:2]
        return " ".join([str(self.looked[0]), *(f"x {factor}" for factor in more if factor.value > 1)])

    @property
    def wire_words(self) -> str:
        """`wire_row`, with those factors where they count."""
        return self.table_words if self.wire_row is self.looked[0] else str(self.wire_row)

    @property
    def amps(self) -> float:
        return min(self.bundled_a, self.lugs_a)

    @property
    def rows(self) -> str:
        """The table rows used, as one text."""
        return "; ".join(str(x) for x in self.looked)


@lru_cache(maxsize=8192)
def carries(
    tables: Basis, size: str, metal: Material, insulation_c: float, cable_60: bool, sets: int, laid: Laid
) -> Carries | NotListed:
    """What ``sets`` of a size carry (NEC 310.15, 310.16, 110.14(C); IEC 60364-5-52 Annex B)."""
    if tables.practice == "iec":
        return _iec(tables, size, metal, insulation_c, sets, laid)
    column = 60 if insulation_c < 75 else 75 if insulation_c < 90 else 90
    marked = laid.marked_c
    if cable_60:
        marked = 60
    # Where no device is known, terminals for wires larger than 1 AWG are for 75 degC (NEC 110.14(C)(1)(b)).
    device_a = math.inf if not laid.device_a and area_mm2(size) > _ONE_AWG_MM2 else laid.device_a
    lug = termination_column_c(tables, device_a, marked)
    if isinstance(lug, NotListed):
        return lug
    lug_c = 60 if lug.value < 75 else 75 if lug.value < 90 else 90
    found = ampacity(
        tables, size, metal,
        insulation_c=column,  # type: ignore[arg-type]
        termination_c=lug_c,  # type: ignore[arg-type]
        ambient_c=laid.ambient_c,
        current_carrying=laid.current_carrying(sets),
    )  # fmt: skip
    if isinstance(found, NotListed):
        return found
    plain = found.insulation.value * sets
    warm = plain * found.ambient.value
    bundled = warm * found.bundling.value / 100
    best = nominal_ampacity(tables, size, metal, 60 if cable_60 or column < 75 else 75)
    best_a = (best.value if isinstance(best, Looked) else found.termination.value) * sets
    lugs_a = found.termination.value * sets
    row = best if isinstance(best, Looked) and best_a > lugs_a else found.termination
    return Carries(
        plain,
        warm,
        bundled,
        lugs_a,
        max(best_a, lugs_a),
        float(lug_c),
        float(column),
        found.looked,
        row,
        found.looked[2:3],
    )


def _iec(tables: Basis, size: str, metal: Material, insulation_c: float, sets: int, laid: Laid) -> Carries | NotListed:
    method: Method = laid.method  # type: ignore[assignment]
    arrangement: Arrangement = laid.arrangement  # type: ignore[assignment]
    circuits = laid.grouped(sets)
    found = capacity(
        tables, size, metal,
        insulation="XLPE" if insulation_c > 70 else "PVC",
        loaded=2 if laid.loaded == 2 else 3,
        method=method,
        ambient_c=laid.ambient_c,
        circuits=circuits,
        arrangement=arrangement,
        soil_km_w=laid.soil_km_w,
        third_percent=laid.third_percent,
    )  # fmt: skip
    if isinstance(found, NotListed):
        return found
    table = found.table_value.value * sets
    warm = table * math.prod(factor.value for factor in found.around)
    bundled = found.amps * sets
    beside = tuple(row for row in found.beside if row.value != 1.0)
    return Carries(max(table, warm), warm, bundled, math.inf, math.inf, 0.0, insulation_c, found.looked, beside=beside)


def bounds(tables: Basis, wiring: Wiring, laid: Laid) -> tuple[Carries, Carries] | NotListed:
    """What the wires carry at the least and at the most; the two are one where their insulation is written."""
    if not wiring.temperatures_c:
        return NotListed(f"the tables of {tables.title} do not hold {wiring.insulation}")
    cable_60 = wiring.insulation in CABLES_AT_60
    low = carries(tables, wiring.size, wiring.metal, wiring.temperatures_c[0], cable_60, wiring.sets, laid)
    if len(wiring.temperatures_c) == 1:
        return low if isinstance(low, NotListed) else (low, low)
    high = carries(tables, wiring.size, wiring.metal, wiring.temperatures_c[-1], cable_60, wiring.sets, laid)
    if isinstance(low, NotListed):
        return low
    return high if isinstance(high, NotListed) else (low, high)


@lru_cache(maxsize=8192)
def largest_device_a(tables: Basis, amps: float, kind: DeviceKind, *, next_size_up: bool = True) -> float:
    """The largest device that protects wires of this ampacity (NEC 240.4(B), (C); IEC 60364-4-43 433.1); 0 for none."""
    found = device_for_ampacity(tables, amps, kind, next_size_up=next_size_up)
    largest = 0.0 if isinstance(found, NotListed) else max(found.largest_a, amps)
    if tables.practice == "iec":
        ratio, most = conventional_current_ratio(tables, kind, amps), tables.constant("overload-ratio")
        if isinstance(ratio, Looked) and isinstance(most, Looked) and ratio.value > most.value:
            return amps * most.value / ratio.value
        return amps
    return largest


@lru_cache(maxsize=1024)
def small_wire_limit_a(tables: Basis, size: str, metal: Material, sets: int) -> float:
    """The largest device of a small wire (NEC 240.4(D)); infinite for others."""
    found = small_conductor_device_a(tables, size, metal)
    return math.inf if isinstance(found, NotListed) else found.value * sets


STAGES = ("wire", "lugs", "ambient", "bundle")


def failing_stage(
    tables: Basis, found: Carries, device_a: float, kind: DeviceKind, *, next_size_up: bool = True
) -> str | None:
    """What first makes wires too weak for their device: the wire itself, its terminals, warm air, or bundling."""
    limits = (
        min(found.free_a, found.best_lugs_a),
        min(found.free_a, found.lugs_a),
        min(found.warm_a, found.lugs_a),
        found.amps,
    )
    for stage, limit in zip(STAGES, limits, strict=True):
        if device_a > largest_device_a(tables, limit, kind, next_size_up=next_size_up) * (1 + _SLACK):
            return stage
    return None
