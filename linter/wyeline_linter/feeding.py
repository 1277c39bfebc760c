"""What may be fed from what by wire alone: every way to connect it, or the physical reason why there is none.

A wire changes no voltage, so the test compares distances: each pair of conductors that the equipment needs must lie as
far apart at the supply. Transformers are `windings`' business; positions, loops and second supplies are found by the
network, which reports them with the same `Cause` and `Refusal`.
"""

from __future__ import annotations

from functools import lru_cache

from wyeline_grammar.notation import Voltage
from wyeline_linter import refusing
from wyeline_linter.matching import EXACT, all_maps, follows, needs_of, poles_suit
from wyeline_linter.nameplate import Fit, NameplateVerdict, judge
from wyeline_linter.systems import EarthingKind, Known, System, SystemState
from wyeline_linter.verdicts import Feeds, FeedVerdict, LegMap, Note, NoteKind, Undecided


def feed(
    upstream: System,
    wanted: Voltage | System,
    *,
    stated_legs: tuple[str, ...] | None = None,
    poles: int | None = None,
    switched_neutral: bool = False,
    is_load: bool = False,
    frequency_hz: float | None = None,
) -> FeedVerdict:
    """Test whether ``upstream`` can feed ``wanted`` by wire.

    ``stated_legs`` are the supply's conductors as written, in order (the neutral may be left out); ``poles`` and
    ``switched_neutral`` describe the device. ``is_load`` reads the voltage as a nameplate with its tolerance, otherwise
    it is a system that must be met as written. ``frequency_hz`` (0 for DC) is compared where given. Answers are kept,
    so that asking for 10,000 circuits is cheap.
    """
    return _feed(upstream, wanted, stated_legs, poles, switched_neutral, is_load, frequency_hz)


def feed_from(
    upstream: SystemState,
    wanted: Voltage | System,
    *,
    stated_legs: tuple[str, ...] | None = None,
    poles: int | None = None,
    switched_neutral: bool = False,
    is_load: bool = False,
    frequency_hz: float | None = None,
) -> FeedVerdict:
    """`feed` from a place whose system may be unknown yet: then undecided, never refused."""
    if isinstance(upstream, Known):
        return _feed(upstream.system, wanted, stated_legs, poles, switched_neutral, is_load, frequency_hz)
    return Undecided(upstream.reasons)


@lru_cache(maxsize=4096)
def _feed(
    up: System,
    wanted: Voltage | System,
    stated: tuple[str, ...] | None,
    poles: int | None,
    switched_neutral: bool,
    is_load: bool,
    frequency_hz: float | None,
) -> FeedVerdict:
    needs = needs_of(up, wanted)
    needed = refusing.needed_text(wanted, is_load)
    wrong_supply = refusing.other_frequency(up, wanted, needed, frequency_hz)
    if wrong_supply is not None:
        return wrong_supply
    if stated is not None:
        absent = [name for name in stated if name not in up.conductors]
        if absent:
            return refusing.absent_conductors(up, absent, needed)
    found_maps = all_maps(up, needs, is_load)
    if not found_maps:
        return refusing.no_map(up, needs, needed, stated, is_load)
    maps = found_maps
    if stated is not None:
        maps = tuple(m for m in maps if follows(m, stated))
        if not maps:
            return refusing.not_these_legs(up, needs, needed, stated, found_maps, is_load)
    if poles is not None:
        opened = tuple(m for m in maps if poles_suit(m, poles, switched_neutral))
        if not opened:
            return refusing.wrong_poles(up, needed, maps, poles, switched_neutral)
        maps = opened
    return Feeds(maps, _notes(up, wanted, maps, is_load))


def _notes(up: System, wanted: Voltage | System, maps: tuple[LegMap, ...], is_load: bool) -> tuple[Note, ...]:
    notes = []
    best = maps[0]
    label = wanted.nominal if isinstance(wanted, System) else wanted
    if abs(best.worst_deviation_pct) > 100 * EXACT:
        if is_load:
            verdict = _load_verdict(best, label)
            if verdict.fit is not Fit.GOOD:
                notes.append(Note(NoteKind.NAMEPLATE_OFF, verdict.why()))
        else:
            text = f"written {label.text}, but the source makes {best.system.nominal.text}"
            notes.append(Note(NoteKind.NEIGHBOUR_NOMINAL, text))
    if best.reversed_rotation:
        notes.append(Note(NoteKind.REVERSED_ROTATION, f"legs {' '.join(best.legs)} turn motors backwards"))
    if isinstance(wanted, System) and wanted.earthing.stated and not wanted.earthing.same_as(up.earthing):
        notes.append(
            Note(NoteKind.EARTHING_RESTATED, "earthing is decided where the system is made, not where it is taken")
        )
    through_impedance = up.earthing.kind in (EarthingKind.RESISTOR, EarthingKind.REACTOR)
    if through_impedance and all(m.system.has_neutral for m in maps):
        text = f"the neutral is earthed through a {up.earthing.kind.value} and is not meant to carry load"
        notes.append(Note(NoteKind.NEUTRAL_ON_IMPEDANCE, text))
    return tuple(notes)


def _load_verdict(candidate: LegMap, label: Voltage) -> NameplateVerdict:
    return judge(candidate.system.pair_voltages()[0][2], label.line_v, label.high_v)
