"""The wires of a feeder or circuit by what each is for: legs, neutral, ground, and their metal and insulation."""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from wyeline_grammar.model import Conductors
from wyeline_linter.conductors import Material
from wyeline_linter.tables import Basis, Looked

METALS: frozenset[str] = frozenset({"Cu", "Al"})
CABLES_AT_60 = frozenset({"NM-B", "UF-B"})
"""Cables whose wires are used at the 60 degC column whatever their insulation (NEC 334.80, 340.80, from memory)."""
_CABLES = frozenset({"NM-B", "UF-B", "MC", "AC", "TC", "TC-ER", "SE", "SER", "SEU", "MI"})
_GROUNDS = ("G", "PE", "PEN", "IG")


class Wiring(NamedTuple):
    """One set of wires, and how many sets lie in parallel.

    ``legs`` live wires of ``size`` (canonical text); ``neutral`` and ``ground`` are sizes, None where there is none of
    its own; ``ground_role`` is G, PE, PEN or IG. ``metal`` is copper where nothing says it (``metal_assumed``).
    ``insulation`` is the mark that names insulation or cable type, None where none is written; ``temperatures_c`` are
    the ratings it may have: one where it is known, the table's lowest and highest where it is not, none where the
    tables do not know the mark.
    """

    sets: int
    legs: int
    size: str
    neutral: str | None
    ground: str | None
    ground_role: str
    metal: Material
    metal_assumed: bool
    insulation: str | None
    temperatures_c: tuple[float, ...]
    cable: bool

    @property
    def pen(self) -> bool:
        return self.ground_role == "PEN"


def wiring_of(conductors: Conductors, legs: int, tables: Basis, *, wet: bool = False) -> Wiring:
    """The wires of a run that carries ``legs`` live wires."""
    return _wiring(conductors._replace(span=None), legs, tables, wet)  # type: ignore[arg-type]


@lru_cache(maxsize=4096)
def _wiring(conductors: Conductors, legs: int, tables: Basis, wet: bool) -> Wiring:
    run, extras = conductors.run, dict(conductors.extras)
    size = run.size.text
    count = run.count - run.with_protective
    live = min(legs, count) if legs else count
    neutral = extras["N"].text if "N" in extras else size if count > live else None
    role = next((r for r in _GROUNDS if r in extras), "")
    ground = extras[role].text if role else size if run.with_protective else None
    if role == "PEN":
        neutral = extras["PEN"].text
    metal, insulation, assumed = marks_of(conductors.marks, tables)
    cable = run.with_protective or insulation in _CABLES or _is_cable_type(insulation, tables)
    return Wiring(
        conductors.sets,
        live,
        size,
        neutral,
        ground,
        role or ("PE" if run.with_protective else ""),
        metal,
        assumed,
        insulation,
        temperatures(insulation, tables, wet),
        cable,
    )


def marks_of(marks: tuple[str, ...], tables: Basis) -> tuple[Material, str | None, bool]:
    """Metal, insulation mark, and whether the metal is assumed (copper where no mark says otherwise)."""
    insulation = next((m for m in marks if m not in METALS), None)
    if "Al" in marks:
        return "Al", insulation, False
    if "Cu" in marks:
        return "Cu", insulation, False
    listed = tables.text("insulation-types", (insulation,), "material") if insulation else None
    if isinstance(listed, Looked) and listed.value in METALS:
        return ("Al" if listed.value == "Al" else "Cu"), insulation, False
    return "Cu", insulation, True


def _is_cable_type(mark: str | None, tables: Basis) -> bool:
    """Whether an IEC mark names a cable rather than an insulation or a single wire."""
    return mark is not None and tables.practice == "iec" and not mark.startswith("H07V") and mark not in ("PVC", "XLPE")


def temperatures(mark: str | None, tables: Basis, wet: bool) -> tuple[float, ...]:
    """Temperature ratings that an insulation mark may stand for, degC."""
    if mark is None:
        return (60.0, 90.0) if tables.practice == "us" else (70.0, 90.0)
    column = "conductor_c" if tables.practice == "iec" else "wet_c" if wet else "dry_c"
    found = tables.number("insulation-types", (mark,), column)
    return (found.value,) if isinstance(found, Looked) else ()
