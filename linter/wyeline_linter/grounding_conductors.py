"""Sizes of the conductors that carry fault current or tie to earth: equipment grounding, electrode, bonding, PE.

US sizes follow NEC 250.66, 250.102(C)(1) and 250.122, IEC sizes IEC 60364-5-54. Pure functions on the tables.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Literal, NamedTuple

from .conductor_sizes import area_mm2, circular_mils, size_at_least
from .tables import ANY, Basis, Looked, NotListed

Material = Literal["Cu", "Al"]
_SLACK = 1e-6


@lru_cache(maxsize=4096)
def equipment_ground(basis: Basis, device_a: float, material: Material) -> Looked[str] | NotListed:
    """Smallest equipment grounding conductor behind a device (NEC 250.122(A)); one in every parallel raceway (F)."""
    table = basis.table("equipment-grounding")
    if isinstance(table, NotListed):
        return table
    key = table.step_up_to(device_a)
    return key if isinstance(key, NotListed) else table.text(key, material.lower())


class Enlarged(NamedTuple):
    """An equipment grounding conductor enlarged with its phase conductors: table size, ratio of areas, result."""

    table_size: Looked[str]
    ratio: float
    size: Looked[str]
    limited_to_phase: bool


def equipment_ground_enlarged(
    basis: Basis, device_a: float, material: Material, *, phase_needed: str, phase_installed: str
) -> Enlarged | NotListed:
    """Equipment grounding conductor when the phases are larger than ampacity needs (NEC 250.122(B)).

    Its area grows in the proportion of the phase areas and need not exceed the phase conductor (250.122(A)).
    """
    plain = equipment_ground(basis, device_a, material)
    if isinstance(plain, NotListed):
        return plain
    ratio = max(1.0, circular_mils(phase_installed) / circular_mils(phase_needed))
    wanted_mm2 = area_mm2(plain.value) * ratio
    limited = wanted_mm2 > area_mm2(phase_installed) * (1 + _SLACK)
    size = size_at_least(basis, min(wanted_mm2, area_mm2(phase_installed)))
    if isinstance(size, NotListed):
        return size
    return Enlarged(plain, ratio, size, limited)


def electrode_conductor(
    basis: Basis, size: str, sets: int, ungrounded: Material, conductor: Material
) -> Looked[str] | NotListed:
    """Grounding electrode conductor by the ungrounded conductors, `sets` in parallel (NEC 250.66, 250.30(A)(5))."""
    return electrode_conductor_of_area(basis, sets * circular_mils(size), ungrounded, conductor)


def electrode_conductor_of_area(
    basis: Basis, ungrounded_cmil: float, ungrounded: Material, conductor: Material
) -> Looked[str] | NotListed:
    """The same by the area of all ungrounded conductors of one leg (NEC 250.66 note 1, from memory)."""
    return _by_ungrounded(basis, "electrode-conductor", ungrounded_cmil, ungrounded, conductor)


def bonding_jumper(
    basis: Basis, size: str, sets: int, ungrounded: Material, conductor: Material
) -> Looked[str] | NotListed:
    """Main, system or supply-side bonding jumper, and least grounded conductor (NEC 250.102(C)(1)).

    Above the table 12.5 percent of the ungrounded area, when both are of one metal.
    """
    found = _by_ungrounded(basis, "bonding-jumper", sets * circular_mils(size), ungrounded, conductor)
    if isinstance(found, Looked) or basis.practice != "us":
        return found
    share = basis.constant("bonding-percent")
    if isinstance(share, NotListed):
        return share
    if ungrounded != conductor:
        return NotListed(f"{share.table} above its last row needs the areas in one metal", share.table)
    chosen = size_at_least(basis, sets * area_mm2(size) * share.value / 100)
    if isinstance(chosen, NotListed):
        return chosen
    row = f"{share.value:g} % of {sets * circular_mils(size) / 1000:.4g} kcmil"
    return Looked(chosen.value, share.table, row, share.status, share.note)


def _by_ungrounded(
    basis: Basis, name: str, total: float, ungrounded: Material, conductor: Material
) -> Looked[str] | NotListed:
    table = basis.table(name)
    if isinstance(table, NotListed):
        return table
    for key in table.rows:
        limit = key[0] if ungrounded == "Cu" else key[1]
        if limit == ANY or total <= circular_mils(limit) * (1 + _SLACK):
            return table.text(key, conductor.lower())
    return NotListed(f"{table.cite} ends below {total / 1000:.4g} kcmil {ungrounded}", table.cite)


class Protective(NamedTuple):
    """A protective conductor: the area the rule gives, the standard size, and what set it."""

    least_mm2: float
    size: Looked[str]
    looked: tuple[Looked[float], ...]


def protective_conductor(
    basis: Basis,
    line_size: str,
    *,
    material: Material = "Cu",
    pen: bool = False,
    separate: Literal["no", "protected", "unprotected"] = "no",
) -> Protective | NotListed:
    """PE or PEN of the same metal as the line conductor (IEC 60364-5-54 Table 54.2, 543.1.3, 543.4.1).

    S up to 16 mm2, 16 mm2 up to 35 mm2, half above, then the next standard size. `separate`: a PE outside the cable,
    with or without mechanical protection, has a least area; so has a PEN.
    """
    table = basis.table("protective-conductor")
    if isinstance(table, NotListed):
        return table
    s_mm2 = area_mm2(line_size)
    key = table.step_up_to(s_mm2)
    if isinstance(key, NotListed):
        return key
    fixed, share = table.number(key, "fixed_mm2"), table.number(key, "share")
    looked: list[Looked[float]] = []
    if isinstance(fixed, Looked):
        least_mm2, found = fixed.value, fixed
    elif isinstance(share, Looked):
        least_mm2, found = s_mm2 * share.value, share
    else:
        return share
    looked.append(found)
    floors = []
    if pen:
        floors.append(f"pen-least-{material.lower()}")
    if separate != "no":
        floors.append("pe-separate-al" if material == "Al" else f"pe-separate-{separate}")
    for name in floors:
        floor = basis.constant(name)
        if isinstance(floor, NotListed):
            return floor
        if floor.value > least_mm2:
            least_mm2 = floor.value
            looked.append(floor)
    size = size_at_least(basis, least_mm2)
    return size if isinstance(size, NotListed) else Protective(least_mm2, size, tuple(looked))
