"""Ohms of the conductors of a feeder: from the tables of the basis, or as written, or what is missing."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import lru_cache, partial
from typing import Literal, NamedTuple

from wyeline_grammar.linking import Place
from wyeline_grammar.model import Body, Conductors, Raceway
from wyeline_linter import conductors as tables
from wyeline_linter.conductors import Material
from wyeline_linter.protection.wiring import marks_of
from wyeline_linter.studies.case import HOT_C, ROOM_C, US_COLD_C, US_RUNNING_C, Assumption, Case, Lack, Missing
from wyeline_linter.tables import Basis, Looked, NotListed
from wyeline_linter.tables.basis import basis

Conduit = Literal["pvc", "aluminum", "steel"]
_STEEL = frozenset({"EMT", "RMC", "IMC", "steel", "GRC", "FMC", "LFMC"})
_ALUMINIUM = frozenset({"RMC-AL", "ARC", "aluminum", "aluminium"})
METAL_RACEWAYS = _STEEL | _ALUMINIUM
PLAIN_HZ = 60.0
"""Up to here the tables of either practice are turned from one to the other without a word."""


class PerLength(NamedTuple):
    """R and X of one conductor in ohm per metre, with the table rows they were read in (none: as written)."""

    r_ohm_per_m: float
    x_ohm_per_m: float
    rows: tuple[Looked[float], ...] = ()
    temperature_c: float | None = None
    turned_hz: tuple[float, float] | None = None
    """The frequency of the table and that of the system, where they differ."""

    def ohm(self, length_m: float, sets: int) -> complex:
        """The impedance of so many metres of parallel sets."""
        return complex(self.r_ohm_per_m, self.x_ohm_per_m) * length_m / sets


class LineData(NamedTuple):
    """The impedances of a feeder, its whole length and all its sets together, in ohm.

    ``leg`` is None where it cannot be told; ``neutral`` and ``protective`` are None where that conductor is not there
    or not known. ``pen`` says that neutral and protective conductor are one wire. ``missing`` names what lacks.
    """

    leg: complex | None
    neutral: complex | None
    protective: complex | None
    pen: bool
    length_m: float | None
    sets: int
    per_leg: PerLength | None
    missing: tuple[Missing, ...]
    assumed: tuple[Assumption, ...]

    def of_length(self, metres: float) -> LineData:
        """The same wires of so many metres, where these are those of one metre."""
        return LineData(
            self.leg and self.leg * metres,
            self.neutral and self.neutral * metres,
            self.protective and self.protective * metres,
            *(self.pen, metres, self.sets, self.per_leg, self.missing, self.assumed),
        )


@dataclass(frozen=True, slots=True)
class Wires:
    """The sizes of a run, by role; ``neutral`` and ``protective`` are None where there is none."""

    leg: str
    neutral: str | None
    protective: str | None
    pen: bool
    material: Material
    material_assumed: bool
    insulation: str | None
    sets: int


def wires_of(conductors: Conductors, legs: int, *, neutral: bool) -> Wires:
    """Which conductor of a run serves what, for a feeder that carries ``legs`` legs and perhaps a neutral."""
    return _wires_of(conductors._replace(span=None), legs, neutral)  # type: ignore[arg-type]


@lru_cache(maxsize=4096)
def _wires_of(conductors: Conductors, legs: int, neutral: bool) -> Wires:
    run = conductors.run
    extras = dict(conductors.extras)
    protective = run.size.text if run.with_protective else None
    count = run.count - (1 if run.with_protective else 0)
    n_size = run.size.text if count > legs else None
    pen = False
    for role in ("G", "PE"):
        if role in extras:
            protective = extras[role].text
    if "N" in extras:
        n_size = extras["N"].text
    if "PEN" in extras:
        pen, n_size, protective = True, extras["PEN"].text, extras["PEN"].text
    material, insulation, assumed = marks_of(conductors.marks, basis("iec"))
    return Wires(
        run.size.text, n_size if neutral else None, protective, pen, material, assumed, insulation, conductors.sets
    )


@lru_cache(maxsize=1024)
def end_temperature_c(insulation: str | None) -> float:
    """Temperature of a conductor at the end of a short circuit; the highest where the insulation is not known."""
    if insulation is not None:
        family = basis("iec").text("insulation-types", (insulation,), "family")
        if isinstance(family, Looked) and family.value in HOT_C:
            return HOT_C[family.value]
    return max(HOT_C.values())


def conduit_of(raceway: Raceway | None, stuff_of: Mapping[str, str | None]) -> Conduit:
    """What lies around the wires, as far as their reactance asks; ``stuff_of`` gives that of named raceways."""
    if raceway is None:
        return "pvc"
    stuff = (stuff_of.get(raceway.stuff) if raceway.named else raceway.stuff) or ""
    if stuff in _STEEL:
        return "steel"
    return "aluminum" if stuff in _ALUMINIUM else "pvc"


def temperature_c(case: Case, practice: str, insulation: str | None) -> float:
    """Conductor temperature that a case is calculated at."""
    if practice == "us":
        return US_COLD_C if case is Case.MAX else US_RUNNING_C
    return ROOM_C if case is Case.MAX else end_temperature_c(insulation)


@lru_cache(maxsize=8192)
def per_length(
    chosen: Basis,
    size: str,
    material: Material,
    conduit: Conduit,
    insulation: str | None,
    case: Case,
    frequency_hz: float,
) -> PerLength | NotListed:
    """Table value of one conductor for a case, at the frequency of its system."""
    if chosen.practice == "iec" and case in (Case.FLOW, Case.START):
        found = tables.service_impedance(chosen, size, material, frequency_hz)
    else:
        at = temperature_c(case, chosen.practice, insulation)
        found = tables.impedance(chosen, size, material, temperature_c=at, conduit=conduit, frequency_hz=frequency_hz)
    if isinstance(found, NotListed):
        return found
    base = tables.table_hz(chosen)
    turned = (base, frequency_hz) if frequency_hz and frequency_hz != base else None
    return PerLength(found.r_ohm_per_km / 1000, found.x_ohm_per_km / 1000, found.looked, found.temperature_c, turned)


def line_data(
    body: Body,
    *,
    key: str,
    place: Place,
    legs: int,
    neutral: bool,
    chosen: Basis | None,
    case: Case,
    conduit: Conduit,
    frequency_hz: float,
    length_m: float | None = None,
) -> LineData:
    """The impedances of a feeder's wires for a case. ``length_m`` replaces the length written."""
    length = body.number("length") if length_m is None else length_m
    conductors = body.conductors
    missing: list[Missing] = []
    assumed: list[Assumption] = []
    wires = None if conductors is None else wires_of(conductors, legs, neutral=neutral)
    if length is None:
        needed = "its length, such as `30 m`"
        missing.append(Missing(Lack.LENGTH, key, f"the length of `{key}` is not written", place, needed))
    elif "length" in body.facts and body.facts["length"].assumed:
        assumed.append(Assumption(key, f"the length of `{key}`", place, written=True, length_m=length))
    look = partial(_per_size, wires, chosen, case, conduit, frequency_hz)
    found = _per_leg(body, key, place, wires, chosen, look)
    leg = None if isinstance(found, Missing) else found
    if isinstance(found, Missing):
        missing.append(found)
    elif found.rows and wires is not None and wires.material_assumed:
        assumed.append(Assumption(key, f"copper, as no metal is written for `{key}`", place))
    if leg is not None and leg.turned_hz is not None and frequency_hz > PLAIN_HZ:
        base, here = leg.turned_hz
        text = f"wires of `{key}` at {here:g} Hz by their table for {base:g} Hz: reactance in proportion, skin effect"
        assumed.append(Assumption(key, f"{text} of a single round wire, nothing for its neighbours or steel", place))
    sets = conductors.sets if conductors is not None else 1
    z_leg = z_neutral = z_protective = None
    if leg is not None and length is not None:
        z_leg = leg.ohm(length, sets)
        if wires is not None:
            sizes = wires.neutral if neutral else None, wires.protective
            z_neutral, z_protective = (
                z_leg if size == wires.leg else _other(look(size), length, wires.sets) for size in sizes
            )
        elif body.number("resistance") is not None:
            # Without sizes but with ohms written, every conductor of the run has those ohms (busway practice).
            z_neutral, z_protective = z_leg if neutral else None, z_leg
            others = "neutral and protective conductor" if neutral else "protective conductor"
            text = f"{others} of `{key}` with the ohms of a leg (no others are written)"
            assumed.append(Assumption(key, text, place))
    pen = wires is not None and wires.pen
    return LineData(z_leg, z_neutral, z_protective, pen, length, sets, leg, tuple(missing), tuple(assumed))


def _per_size(
    wires: Wires | None, chosen: Basis | None, case: Case, conduit: Conduit, frequency_hz: float, size: str | None
) -> PerLength | NotListed | None:
    """Table value of a size in these wires; None where there is no size or no table."""
    if wires is None or chosen is None or size is None:
        return None
    return per_length(chosen, size, wires.material, conduit, wires.insulation, case, frequency_hz)


def _per_leg(
    body: Body,
    key: str,
    place: Place,
    wires: Wires | None,
    chosen: Basis | None,
    look: Callable[[str], PerLength | NotListed | None],
) -> PerLength | Missing:
    """R and X of a leg as written, what is not written by the tables; else what is missing."""
    own_r, own_x = body.number("resistance"), body.number("reactance")
    if own_r is not None and own_x is not None:
        return PerLength(own_r, own_x)
    needed = "`resistance` and `reactance`"
    if wires is None:
        text = f"no conductors are written for `{key}`"
        return Missing(Lack.IMPEDANCE, key, text, place, f"the conductors, or {needed}")
    looked = look(wires.leg)
    if looked is None or chosen is None:
        text = f"the project names no basis, so no table gives the resistance of `{key}`"
        return Missing(Lack.IMPEDANCE, key, text, place, f"`basis`, or {needed}")
    if isinstance(looked, NotListed):
        return Missing(Lack.IMPEDANCE, key, f"the resistance of `{key}`: {looked.reason}", place, needed)
    if own_r is None and own_x is None:
        return looked
    return looked._replace(
        r_ohm_per_m=looked.r_ohm_per_m if own_r is None else own_r,
        x_ohm_per_m=looked.x_ohm_per_m if own_x is None else own_x,
    )


def _other(found: PerLength | NotListed | None, length_m: float, sets: int) -> complex | None:
    """Ohms of a neutral or protective conductor of another size than the legs; None where it is not there or known."""
    return found.ohm(length_m, sets) if isinstance(found, PerLength) else None
