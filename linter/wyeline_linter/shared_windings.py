"""Transformers whose two sides share conductors: autotransformers, buck-boost units and the grounding zigzag."""

from __future__ import annotations

from wyeline_grammar.notation import VoltageForm
from wyeline_linter import cores as make
from wyeline_linter.matching import EXACT
from wyeline_linter.systems import EARTHED_NEUTRAL, NEUTRAL, SQRT3, earth_potential, rotation_of, system
from wyeline_linter.verdicts import LegMap
from wyeline_linter.winding_fit import Job, Transformed, WindingResult, fit, fit_notes, unwound


def sharing(job: Job, connection: str) -> WindingResult:
    """Autotransformer and buck-boost: a conductor is shared, so earth and neutral stay those of the primary."""
    if job.makes.has_neutral and not job.fed_at.has_neutral:
        why = "a transformer that shares a conductor cannot make a neutral; two windings apart, or a zigzag, can"
        return unwound(job.fed_at, job.makes, why, ("zigzag", "Dyn1", "Dyn11"))
    allowed = {
        VoltageForm.WYE4: (VoltageForm.WYE4, VoltageForm.THREE_WIRE),
        VoltageForm.THREE_WIRE: (VoltageForm.THREE_WIRE,),
        VoltageForm.TWO_WIRE: (VoltageForm.TWO_WIRE,),
    }
    if job.makes.form not in allowed.get(job.fed_at.form, ()):
        why = f"`{connection}` keeps the shape of the system and changes only its voltage"
        return unwound(job.fed_at, job.makes, why)
    if job.makes.line_v == job.fed_at.line_v:
        return unwound(job.fed_at, job.makes, f"`{connection}` between equal voltages changes nothing")
    fitting = fit(job, job.fed_at)
    if not isinstance(fitting, LegMap):
        return fitting
    ratio = job.makes.line_v / job.fed_at.line_v
    taken = fitting.system
    scale = job.fed_at.line_v, job.makes.line_v
    legs, three, star = taken.legs, len(taken.legs) == 3, taken.has_neutral
    joined: tuple[tuple[str, str], ...]
    if three and (star or connection == "auto"):
        middle = taken.potential(NEUTRAL) if star else sum((taken.potential(leg) for leg in legs), 0j) / 3
        common = make.on_primary(NEUTRAL) if star else make.PRIMARY_STAR
        joined = ((NEUTRAL, NEUTRAL),) if star else ()
        scale = scale[0] / SQRT3, scale[1] / SQRT3
        moved, pairs = legs, tuple((leg, NEUTRAL) for leg in legs)
    else:
        other = NEUTRAL if not three and star else legs[1]
        moved = tuple(leg for leg in legs if leg != other)
        middle, common, joined = taken.potential(other), make.on_primary(other), ((other, other),)
        pairs = tuple((leg, other) for leg in moved)
    if connection == "auto":
        cores = make.auto_cores(moved, common, *scale, job.tap_pct)
    else:
        cores = make.buck_boost_cores(pairs, *scale, job.tap_pct)
    kept = (*legs, NEUTRAL) if star and job.makes.form is not VoltageForm.THREE_WIRE else legs
    points = tuple(middle + ratio * (taken.potential(name) - middle) for name in kept)
    made = system(
        kept,
        points,
        taken.frequency_hz,
        taken.earthing,
        taken.earth,
        job.makes,
        taken.widest_v * max(ratio, 1.0),
    )
    return Transformed(
        made,
        cores,
        connection,
        taken.conductors,
        shift_deg=0.0 if three and rotation_of(points[:3]) else None,
        angle_unknown=None,
        separately_derived=False,
        joined=joined,
        notes=fit_notes(fitting, job.fed_at),
    )


def neutral_maker(job: Job) -> WindingResult:
    """The grounding zigzag: a neutral for a three-wire system at the same voltage."""
    same = abs(job.makes.line_v - job.fed_at.line_v) <= EXACT * job.fed_at.line_v
    if job.fed_at.form is not VoltageForm.THREE_WIRE or job.makes.form is not VoltageForm.WYE4 or not same:
        why = "`zigzag` alone makes a neutral for a three-wire system at its own voltage; a zigzag secondary is a group"
        return unwound(job.fed_at, job.makes, f"{why} such as Dzn0 or Yzn11", ("Dzn0", "Yzn11"))
    fitting = fit(job, job.fed_at)
    if not isinstance(fitting, LegMap):
        return fitting
    taken = fitting.system
    middle = sum(taken.phasors, 0j) / 3
    earthing = EARTHED_NEUTRAL if job.earthing is None else job.earthing
    points = {**dict(zip(taken.conductors, taken.phasors, strict=True)), NEUTRAL: middle}
    made = system(
        (*taken.legs, NEUTRAL),
        tuple(points[name] for name in (*taken.legs, NEUTRAL)),
        taken.frequency_hz,
        earthing,
        earth_potential(earthing, points),
        job.makes,
    )
    return Transformed(
        made,
        make.grounding_zigzag_cores(taken.legs, job.fed_at.line_v),
        "zigzag",
        taken.legs,
        shift_deg=0.0,
        angle_unknown=None,
        separately_derived=False,
        joined=tuple((leg, leg) for leg in taken.legs),
        notes=fit_notes(fitting, job.fed_at),
    )
