"""What a transformer makes of the system that feeds it: the new system with its angle, or why windings do not fit."""

from __future__ import annotations

import cmath
import math
from functools import lru_cache
from typing import Literal

from wyeline_grammar.notation import Voltage, VoltageForm, parse_voltage
from wyeline_linter import cores as make
from wyeline_linter.cores import Core, Side, Terminal
from wyeline_linter.shared_windings import neutral_maker, sharing
from wyeline_linter.systems import (
    LEGS,
    NEUTRAL,
    SQRT3,
    Earthing,
    System,
    conductors_of,
    earth_potential,
    system,
    usual_earthing,
)
from wyeline_linter.vector_groups import WORDS, VectorGroup, nearest_names, read_group
from wyeline_linter.verdicts import Cause, LegMap, Note, NoteKind, Refusal
from wyeline_linter.winding_fit import Job, fit, fit_notes, unwound
from wyeline_linter.winding_fit import Transformed as Transformed
from wyeline_linter.winding_fit import WindingResult as WindingResult

Practice = Literal["us", "iec"]


@lru_cache(maxsize=4096)
def secondary_system(
    primary: System,
    primary_notation: Voltage,
    secondary_notation: Voltage,
    connection: str | None = None,
    *,
    practice: Practice | None = None,
    primary_legs: tuple[str, ...] | None = None,
    earthing: Earthing | None = None,
    high_leg: str = "B",
    tap_pct: float = 0.0,
) -> WindingResult:
    """The system behind a transformer that ``primary`` feeds on ``primary_legs`` (left out where one choice exists).

    ``connection`` is a vector group or a connection word; left out, the notations decide. In US practice a delta-wye or
    wye-delta unit then has its high-voltage side leading by 30° (IEEE C57.12.00); elsewhere a three-phase angle is
    unknown until a vector group is given. ``earthing`` is what is stated for the new system, else what its notation
    implies. Nominal voltages are those written; ``tap_pct`` only goes into the cores. ValueError where ``earthing``
    names a conductor that the secondary does not have.
    """
    if VoltageForm.DC2 in (primary_notation.form, secondary_notation.form):
        return unwound(primary_notation, secondary_notation, "direct current passes no transformer")
    job = Job(primary, primary_notation, secondary_notation, primary_legs, earthing, high_leg, tap_pct)
    if connection in ("auto", "buck-boost"):
        return sharing(job, connection)
    if connection == "zigzag":
        return neutral_maker(job)
    if connection == "open-delta":
        return _open_delta(job)
    if connection == "open-wye" or (connection is None and primary_notation.form is VoltageForm.TWO_LEGS_NEUTRAL):
        return _open_wye(job)
    if (primary_notation.legs == 3) != (secondary_notation.legs == 3):
        return _phase_counts_differ(primary_notation, secondary_notation)
    if primary_notation.legs == 2:
        if connection is not None:
            why = f"`{connection}` names three-phase windings; two wires feed a single winding and need no connection"
            return unwound(primary_notation, secondary_notation, why, ("auto", "buck-boost"))
        return _single(job)
    if connection is None:
        group, unknown = _usual_group(job, practice)
        return _three_phase(job, group, unknown)
    named = read_group(connection)
    if named is None:
        near = nearest_names(connection)
        hint = (
            f"; nearest: {', '.join(near)}" if near else f"; write a vector group such as Dyn11, or {', '.join(WORDS)}"
        )
        why = f"`{connection}` is no connection that can be wound{hint}"
        return unwound(primary_notation, secondary_notation, why, near)
    return _three_phase(job, named, None)


def _phase_counts_differ(first: Voltage, second: Voltage) -> Refusal:
    if first.legs == 3:
        why = (
            "a three-phase primary has three windings and makes three legs; a single-phase secondary takes one winding"
        )
        why += " across two of them, so write the primary as two-wire"
    else:
        why = "one winding makes one phase; three legs take a three-phase primary, or two units connected open-delta"
    return Refusal(Cause.WINDING_COUNT, first.text, second.text, why)


def _primary_points(job: Job) -> dict[Terminal, complex]:
    points = {make.on_primary(c): p for c, p in zip(job.primary.conductors, job.primary.phasors, strict=True)}
    legs = [job.primary.potential(leg) for leg in job.primary.legs]
    points[make.PRIMARY_STAR] = sum(legs, 0j) / len(legs)
    return points


def _new_source(job: Job, cores: tuple[Core, ...], conductors: tuple[str, ...], earthing: Earthing) -> System:
    """A floating secondary as a source of its own: zero at the neutral, else midway between the legs."""
    found = make.secondary_points(cores, _primary_points(job))
    points = {t.conductor: p for t, p in found.items() if t.side is Side.SECONDARY}
    legs = [points[name] for name in conductors if name != NEUTRAL]
    zero = points[NEUTRAL] if NEUTRAL in conductors else sum(legs, 0j) / len(legs)
    points = {name: points[name] - zero for name in conductors}
    return system(
        conductors,
        tuple(points.values()),
        job.primary.frequency_hz,
        earthing,
        earth_potential(earthing, points),
        job.makes,
    )


def _earthing(job: Job) -> Earthing:
    return usual_earthing(job.makes) if job.earthing is None else job.earthing


def _single(job: Job) -> WindingResult:
    fitting = fit(job, job.fed_at)
    if not isinstance(fitting, LegMap):
        return fitting
    if job.makes.form is VoltageForm.TWO_LEGS_NEUTRAL:
        why = "one winding gives legs 180° apart, never two legs of a wye 120° apart"
        return unwound(job.fed_at, job.makes, why, ("120/240",))
    earthing = _earthing(job)
    conductors = conductors_of(job.makes, earthing)
    takes = fitting.conductors if len(fitting.conductors) == 2 else fitting.legs
    cores = make.single_core((takes[0], takes[1]), job.fed_at.line_v, conductors, job.makes.line_v, job.tap_pct)
    return Transformed(
        _new_source(job, cores, conductors, earthing),
        cores,
        "centre-tapped" if len(conductors) == 3 else "single-phase",
        takes,
        shift_deg=None,
        angle_unknown=None,
        separately_derived=True,
        notes=fit_notes(fitting, job.fed_at),
    )


def _usual_group(job: Job, practice: Practice | None) -> tuple[VectorGroup, str | None]:
    """The windings that the notations stand for, and why their angle is unknown, if it is."""
    star = job.fed_at.form is VoltageForm.WYE4
    primary = "Y" if star else "D"
    secondary = "y" if job.makes.form is VoltageForm.WYE4 else "d"
    clock = 0
    if primary.lower() != secondary:
        # The high-voltage side leads by 30°, whichever side is fed (IEEE C57.12.00).
        clock = 1 if job.fed_at.line_v >= job.makes.line_v else 11
        if practice == "iec":
            clock = 11
    group = VectorGroup(primary, star, secondary, secondary == "y", clock)
    unknown = None if practice == "us" else "no vector group is given, so the angle of the secondary is unknown"
    return group, unknown


def _three_phase(job: Job, group: VectorGroup, unknown: str | None) -> WindingResult:
    needs_neutral = group.primary_neutral and job.fed_at.form is VoltageForm.WYE4
    notation = job.fed_at if needs_neutral else _three_wire(job.fed_at)
    fitting = fit(job, notation)
    if not isinstance(fitting, LegMap):
        return fitting
    earthing = _earthing(job)
    conductors = conductors_of(job.makes, earthing)
    tapped = job.makes.form is VoltageForm.HIGH_LEG4
    if group.secondary == "d" and job.makes.form is VoltageForm.WYE4:
        why = f"`{group.name}` has a delta secondary, and a delta has no neutral point"
        return unwound(
            job.fed_at,
            job.makes,
            why,
            tuple(f"{letters}{group.clock}" for letters in (("Dyn", "Yzn") if group.clock % 2 else ("Yyn", "Dzn"))),
        )
    if group.secondary != "d" and tapped:
        why = f"`{group.name}` has a star secondary; a high leg needs a delta with one winding tapped"
        return unwound(job.fed_at, job.makes, why, ("Dd0",))
    cores = make.group_cores(
        fitting.legs,
        group.primary,
        group.secondary,
        group.clock,
        job.fed_at.line_v,
        job.makes.line_v,
        primary_star=make.on_primary(NEUTRAL) if needs_neutral else make.PRIMARY_STAR,
        secondary_star=make.on_secondary(NEUTRAL) if NEUTRAL in conductors else make.SECONDARY_STAR,
        tapped_for_high_leg=job.high_leg if tapped else None,
        tap_pct=job.tap_pct,
    )
    made = _new_source(job, cores, conductors, earthing)
    return Transformed(
        made,
        cores,
        group.name,
        (*fitting.legs, NEUTRAL) if needs_neutral else fitting.legs,
        shift_deg=_shift(job.primary, fitting.legs, made),
        angle_unknown=unknown,
        separately_derived=True,
        notes=(*fit_notes(fitting, notation), *_star_notes(group, made.has_neutral)),
    )


def _three_wire(notation: Voltage) -> Voltage:
    if notation.form is VoltageForm.THREE_WIRE:
        return notation
    volts = notation.line_v
    return parse_voltage(f"{volts / 1000:g} kV 3ph" if volts >= 1000 else f"{volts:g} 3ph")


def _shift(primary: System, legs: tuple[str, ...], made: System) -> float:
    """Degrees by which the secondary's first leg leads the primary's, both seen from the middle of their legs."""
    before = [primary.potential(leg) for leg in legs]
    after = [made.potential(leg) for leg in LEGS]
    turn = (after[0] - sum(after) / 3) / (before[0] - sum(before) / 3)
    degrees = round(math.degrees(cmath.phase(turn)), 6)
    return 180.0 if degrees == -180.0 else degrees + 0.0


def _star_notes(group: VectorGroup, secondary_neutral: bool) -> tuple[Note, ...]:
    if group.primary != "Y":
        return ()
    if group.secondary == "y" and secondary_neutral:
        if group.primary_neutral:
            text = (
                "wye-wye: on a three-limb core earth faults and unequal load are not seen at their full size upstream"
            )
            return (Note(NoteKind.ZERO_SEQUENCE, text),)
        text = "the primary star point is not tied, so loads to neutral on the secondary push its neutral off centre"
        return (Note(NoteKind.PRIMARY_STAR_FLOATS, text),)
    if group.secondary == "d" and group.primary_neutral:
        text = "a wye-delta with its primary neutral tied feeds every earth fault upstream; tie it only on purpose"
        return (Note(NoteKind.PRIMARY_STAR_TIED, text),)
    return ()


def _open_delta(job: Job) -> WindingResult:
    if job.makes.form not in (VoltageForm.THREE_WIRE, VoltageForm.HIGH_LEG4) or job.fed_at.legs != 3:
        why = "two units in open delta take three legs and make a three-wire or a high-leg delta"
        return unwound(job.fed_at, job.makes, why, ("open-wye",) if job.fed_at.legs == 2 else ())
    notation = _three_wire(job.fed_at)
    fitting = fit(job, notation)
    if not isinstance(fitting, LegMap):
        return fitting
    high = LEGS.index(job.high_leg)
    ring = [fitting.legs[(high + step) % 3] for step in (1, 2, 3)]
    pairs = ((ring[0], ring[1]), (ring[1], ring[2]))
    made = _two_units(job, pairs, job.fed_at.line_v)
    return made._replace(connection="open-delta", takes=fitting.legs, notes=fit_notes(fitting, notation))


def _open_wye(job: Job) -> WindingResult:
    if job.makes.form not in (VoltageForm.THREE_WIRE, VoltageForm.HIGH_LEG4) or job.fed_at.neutral_v is None:
        why = "two units in open wye take two legs and the neutral and make a three-wire or a high-leg delta"
        return unwound(job.fed_at, job.makes, why, ("open-delta",))
    line, neutral = job.fed_at.line_v, job.fed_at.neutral_v
    shape = f"{line / 1000:g}Y/{neutral / 1000:g} kV 1ph" if line >= 1000 else f"{line:g}Y/{neutral:g} 1ph"
    two_legs = parse_voltage(shape)
    fitting = fit(job, two_legs)
    if not isinstance(fitting, LegMap):
        return fitting
    legs = fitting.legs
    first, second = (job.primary.potential(leg) - job.primary.potential(NEUTRAL) for leg in legs)
    if cmath.phase(second / first) > 0:
        legs = (legs[1], legs[0])
    pairs = ((legs[0], NEUTRAL), (legs[1], NEUTRAL))
    made = _two_units(job, pairs, line / SQRT3)
    return made._replace(connection="open-wye", takes=fitting.conductors, notes=fit_notes(fitting, two_legs))


def _two_units(job: Job, pairs: tuple[tuple[str, str], tuple[str, str]], primary_v: float) -> Transformed:
    earthing = _earthing(job)
    cores = make.two_unit_cores(
        pairs,
        primary_v,
        job.makes.line_v,
        high_leg=job.high_leg,
        tapped=job.makes.form is VoltageForm.HIGH_LEG4,
        tap_pct=job.tap_pct,
    )
    conductors = conductors_of(job.makes, earthing)
    made = _new_source(job, cores, conductors, earthing)
    return Transformed(made, cores, "", (), shift_deg=None, angle_unknown=None, separately_derived=True)
