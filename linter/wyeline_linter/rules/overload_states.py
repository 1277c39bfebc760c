"""Loads in other switch states than the normal one: what stays in service carries what it takes over."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.network import NORMAL_STATE
from wyeline_linter.rules.load import limits_of, worst_leg
from wyeline_linter.rules.load_sources import source_shares, transformer_share
from wyeline_linter.rules.registry import rule
from wyeline_linter.shares import share_text

if TYPE_CHECKING:
    from wyeline_linter.loads.rollup import LoadBook
    from wyeline_linter.network import SwitchState
    from wyeline_linter.view import View

_TWIN = (
    'project "Twin hall"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
    "utility UTIL-1 480Y/277  fault 18 kA, fault-min 15 kA, x/r 4\n"
    "utility UTIL-2 480Y/277  fault 18 kA, fault-min 15 kA, x/r 4\n"
    "switchboard MSB-1 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
    "switchboard MSB-2 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC\n"
    "feeder M-1: UTIL-1 -> MSB-1  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40, "
    "lug-temp 75 degC\n"
    "feeder M-2: UTIL-2 -> MSB-2  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40, "
    "lug-temp 75 degC\n"
    "feeder TIE: MSB-1 -> MSB-2  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40, "
    "lug-temp 75 degC, normally-open\n"
    "interlock KEY-1 at-most 2, among M-1, M-2, TIE\n"
    "load OVEN-1 480 3ph  {one} kW, heating\n"
    "feeder MSB-1 -> OVEN-1  250 A 3p  3x250kcmil + G #4 Cu THWN-2  10 m  in 2-1/2 inch EMT, lug-temp 75 degC\n"
    "load OVEN-2 480 3ph  {two} kW, heating\n"
    "feeder MSB-2 -> OVEN-2  250 A 3p  3x250kcmil + G #4 Cu THWN-2  10 m  in 2-1/2 inch EMT, lug-temp 75 degC\n"
)
OVERLOADED = rule(
    name="overload-after-switching",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    summary="What stays in service is overloaded once a source, transformer or feeder is out, or a tie is closed.",
    why="A spare way that cannot carry what it takes over trips as well, and then both halves are dark.",
    clause={"us": "215.2, 230.42", "iec": "60364-4-43 433.1"},
    wrong=_TWIN.format(one=180, two=170),
    right=_TWIN.format(one=120, two=110),
)
_FULL = 1.0005


class _Load(NamedTuple):
    """A share of what something is made for, in words, and where its rating is written."""

    share: float
    load: str
    limit: str
    place: Place
    state: SwitchState


@OVERLOADED.check
def overload_after_switching(view: View) -> Iterator[Finding]:
    """A generator that stands in has a rule of its own; a tie is closed by somebody, who can shed first: a warning."""
    first, *others = view.studies.every()
    yield from _left_out(view)
    worst: dict[str, _Load] = {}
    feeds: dict[str, str] = {}
    for study in others:
        for name in study.connectivity.order:
            equipment, feeder = view.equipment(name), study.connectivity.supply.get(name)
            if equipment is not None:
                found = _of_equipment(study.book, equipment, study.state)
                _keep(worst, name, found, partial(_of_equipment, first.book, equipment, first.state))
            if feeder is not None and feeder.body.number("rating"):
                feeds[feeder.key] = name
                found = _of_feeder(study.book, name, feeder, study.state)
                _keep(worst, feeder.key, found, partial(_normally, first.book, name, feeder, first.state))
    for subject, load in worst.items():
        if feeds.get(subject) in worst:
            continue  # the same current, told at what it feeds
        yield _finding(subject, load)


def _left_out(view: View) -> Iterator[Finding]:
    """The switch states beyond the number that is worked out: nothing is said of them."""
    names = view.studies.found().left_out if view.network.state == NORMAL_STATE else ()
    if not names:
        return
    block, statement = view.model.projects[0] if view.model.projects else (None, None)
    place = next(iter(view.model.equipment.values())).place
    if block is not None and statement is not None:
        place = Place(block, statement.head)
    shown = listed([f'"{name}"' for name in names[:5]], "and") + (f" and {len(names) - 5} more" if names[5:] else "")
    yield OVERLOADED.finding(
        place,
        f"{len(names)} switch states are not looked at: {shown}",
        severity=Severity.GAP,
        found=f"{len(names)} states beyond those that are worked out",
        needed="figures for every state that can come about",
        change="Check a state by itself with `--scenario`, or write a scenario for those that matter.",
        subject="",
    )


def _keep(worst: dict[str, _Load], subject: str, found: _Load | None, normal: Callable[[], _Load | None]) -> None:
    """Keep what is overloaded here and not as normal, in the worst state."""
    if found is None or found.share <= _FULL:
        return
    known = worst.get(subject)
    if known is not None:
        if found.share > known.share * _FULL:
            worst[subject] = found
        return
    usual = normal()
    if usual is None or usual.share <= _FULL:
        worst[subject] = found


def _of_equipment(book: LoadBook, equipment: Equipment, state: SwitchState) -> _Load | None:
    name = equipment.name
    if name not in book.nodes or not book.network.fed(name):
        return None
    if equipment.kind == "transformer":
        rating = equipment.body.number("power")
        if not rating:
            return None
        share, load, _ = transformer_share(book, name, rating)
        return _Load(share, load, f"{rating / 1e3:g} kVA", equipment.place_of("power"), state)
    if equipment.kind in ("utility", "ups"):
        shares = source_shares(book, equipment)
        if not shares:
            return None
        share, load, limit = max(shares)
        place = equipment.place_of("service" if equipment.kind == "utility" else "power")
        return _Load(share, load, limit, place, state)
    limits = limits_of(equipment)
    if not limits:
        return None
    key, limit_a = min(limits, key=lambda item: item[1])
    leg, amps = worst_leg(book.counted(name).demand, book.practice)
    return _Load(amps / limit_a, f"{amps:.1f} A on leg {leg}", f"{limit_a:g} A", equipment.place_of(key), state)


def _of_feeder(book: LoadBook, fed: str, feeder: Feeder, state: SwitchState) -> _Load | None:
    rating = feeder.body.number("rating")
    if fed not in book.nodes or not rating:
        return None
    leg, amps = worst_leg(book.counted_above(fed).demand, book.practice)
    place = Place(feeder.block, feeder.body.facts["rating"].span)
    return _Load(amps / rating, f"{amps:.1f} A on leg {leg}", f"{rating:g} A", place, state)


def _normally(book: LoadBook, fed: str, feeder: Feeder, state: SwitchState) -> _Load | None:
    """The same as normal, where the feeder supplies the same end."""
    if book.network.supply.get(fed) is not feeder:
        return None
    return _of_feeder(book, fed, feeder, state)


def _finding(subject: str, load: _Load) -> Finding:
    from wyeline_linter.studies.scenarios import when

    closed = sorted(load.state.closed_feeders)
    by_hand = bool(closed) and bool(load.state.words)
    shed = f" before {listed([f'`{key}`' for key in closed], 'and')} closes" if by_hand else ""
    return OVERLOADED.finding(
        load.place,
        f"{load.load} through `{subject}`{when(load.state)}; it is made for {load.limit}: {share_text(load.share)}",
        severity=Severity.WARNING if by_hand else Severity.ERROR,
        found=f"{load.load} of demand{when(load.state)}",
        needed=f"{load.limit} at the most",
        change=f"Shed load{shed} and write that as a scenario with `shed`, or choose it for what it takes over.",
        subject=subject,
    )
