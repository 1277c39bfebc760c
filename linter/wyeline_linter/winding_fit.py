"""Whether the windings of a primary fit the conductors they are put across; and the shape of every answer."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import NamedTuple

from wyeline_grammar.notation import Voltage, VoltageForm
from wyeline_linter.cores import Core
from wyeline_linter.feeding import feed
from wyeline_linter.matching import EXACT
from wyeline_linter.systems import Earthing, System, volts_text
from wyeline_linter.verdicts import Cause, Feeds, FeedVerdict, LegMap, Note, NoteKind, Refusal, Undecided


class Transformed(NamedTuple):
    """A transformer that fits, and the system that it makes.

    ``connection`` is a vector group, one of the connection words, ``single-phase`` or ``centre-tapped``.
    ``shift_deg`` is how far leg A of the secondary leads that of the primary (Dyn1: -30), None where it has no meaning
    (single-phase and open connections: the angle is that of the pair fed). ``angle_unknown`` says why the angle must
    not be relied on, else None. ``joined`` are conductors that both sides share, primary name first. ``takes`` are the
    primary's conductors in order.
    """

    system: System
    cores: tuple[Core, ...]
    connection: str
    takes: tuple[str, ...]
    shift_deg: float | None
    angle_unknown: str | None
    separately_derived: bool
    joined: tuple[tuple[str, str], ...] = ()
    notes: tuple[Note, ...] = ()


WindingResult = Transformed | Refusal | Undecided


class Job(NamedTuple):
    primary: System
    fed_at: Voltage
    makes: Voltage
    legs: tuple[str, ...] | None
    earthing: Earthing | None
    high_leg: str
    tap_pct: float


def unwound(first: Voltage, second: Voltage, why: str, nearest: tuple[str, ...] = ()) -> Refusal:
    return Refusal(Cause.WINDING_CONNECTION, first.text, second.text, why, nearest=nearest)


def fit(job: Job, notation: Voltage) -> LegMap | Refusal | Undecided:
    """The conductors that the primary takes, if its windings fit what lies between them (within ±10 %)."""
    verdict = winding_verdict(feed(job.primary, notation, stated_legs=job.legs, is_load=True), notation, job.legs)
    if isinstance(verdict, Refusal):
        return verdict
    if isinstance(verdict, Undecided):
        return verdict
    if not verdict.only_choice:
        first_of = {frozenset(m.conductors): m for m in reversed(verdict.maps)}
        ways = ["–".join(m.conductors) for m in verdict.maps if first_of[frozenset(m.conductors)] is m]
        return Undecided((f"which conductors the primary takes: {', '.join(ways)}",), verdict.maps)
    return verdict.best


def winding_verdict(verdict: FeedVerdict, notation: Voltage, legs: tuple[str, ...] | None) -> FeedVerdict:
    """The feeding test's answer for a primary of this notation on these legs, said of windings instead of loads."""
    if isinstance(verdict, Refusal):
        return _winding_refusal(verdict, notation, legs)
    if isinstance(verdict, Feeds):
        return replace(verdict, notes=tuple(n for n in verdict.notes if n.kind is not NoteKind.NAMEPLATE_OFF))
    return verdict


def _winding_refusal(refusal: Refusal, notation: Voltage, legs: tuple[str, ...] | None) -> Refusal:
    refusal = replace(refusal, needed=refusal.needed.removesuffix(" (nameplate)"))
    volts = volts_text(notation.line_v)
    if refusal.cause in (Cause.PHASE_COUNT, Cause.MISSING_LEG) and notation.form is VoltageForm.TWO_WIRE:
        if legs is not None and len(legs) > 2:
            why = "this is a two-wire (single-phase) primary: it takes a 2-pole device on two of the three legs"
            return replace(refusal, cause=Cause.WINDING_COUNT, why=why)
        return refusal
    if refusal.cause is Cause.PHASE_COUNT:
        why = f"the primary has three windings for {volts} and takes three legs: {refusal.why}"
        return replace(refusal, cause=Cause.WINDING_COUNT, why=why)
    if refusal.cause in (Cause.LEG_VOLTAGE, Cause.NAMEPLATE, Cause.ANGLE) and refusal.compared:
        worst = max(refusal.compared, key=lambda check: abs(math.log(max(check.found_v, 1e-9) / check.needed_v)))
        share = worst.found_v / worst.needed_v
        where = f"a {volts_text(worst.needed_v)} winding across {'–'.join(worst.takes)} ({volts_text(worst.found_v)})"
        if share < 1:
            why = f"{where} gives only {100 * share:.0f} % of its secondary voltage"
        else:
            why = f"{where} is driven {100 * (share - 1):.0f} % beyond its rating: its iron saturates and it overheats"
        return replace(refusal, cause=Cause.WINDING_VOLTAGE, why=why)
    return refusal


def fit_notes(fitting: LegMap, notation: Voltage) -> tuple[Note, ...]:
    off = fitting.worst_deviation_pct
    if abs(off) <= 100 * EXACT:
        return ()
    text = f"{volts_text(notation.line_v)} windings stand on {fitting.system.nominal.text}: {off:+.1f} % before any tap"
    return (Note(NoteKind.WINDING_OFF_NOMINAL, text),)
