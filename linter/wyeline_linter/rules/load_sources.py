"""Loads of sources and transformers against their ratings, per leg, winding and half."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_linter.findings import Finding, Fix, Safety, Severity, append_phrase, replace
from wyeline_linter.loads.buckets import VA
from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.loads.third_harmonics import nonlinear
from wyeline_linter.loads.winding_loads import WindingLoad, worst_winding
from wyeline_linter.rules.load import worst_leg
from wyeline_linter.rules.registry import rule
from wyeline_linter.shares import share_of, share_text
from wyeline_linter.standard_ratings import transformer_at_least
from wyeline_linter.system_words import conductors_text
from wyeline_linter.tables import NotListed
from wyeline_linter.windings import Transformed

if TYPE_CHECKING:
    from wyeline_linter.loads.rollup import LoadBook
    from wyeline_linter.view import View

_US = 'project "Annex"\n  basis us-2023\n'
_UTIL = "utility UTIL 480Y/277  fault 20 kA, x/r 6\n"
_FULL = 1.0005


SOURCE = rule(
    name="source-overloaded",
    since="0.1",
    severity=Severity.ERROR,
    scope="source",
    summary="A service, generator or uninterruptible supply is asked for more than its rating, in total or on one leg.",
    why="A source that is overloaded sheds everything at once, often when it is needed most.",
    clause={"us": "230.42, 700.4, 702.4, 445", "iec": "60364-5-55 551.2"},
    wrong="generator GEN 208Y/120  30 kVA, pf 0.8\nfeeder GEN -> LP-1  100 A 3p\n"
    'panel LP-1 208Y/120  bus 225 A\n  1,3,5  100 A 3p  28 kW heating  "Kiln"\n',
    right="generator GEN 208Y/120  45 kVA, pf 0.8\nfeeder GEN -> LP-1  100 A 3p\n"
    'panel LP-1 208Y/120  bus 225 A\n  1,3,5  100 A 3p  28 kW heating  "Kiln"\n',
)


@SOURCE.check
def source_overloaded(view: View, equipment: Equipment) -> Iterator[Finding]:
    shares = source_shares(view.loads, equipment)
    if not shares:
        return
    key = "service" if equipment.kind == "utility" else "power"
    share, load, limit = max(shares)
    nearly = view.settings.loading
    if share <= nearly + 1e-9:
        return
    over = share > _FULL
    yield SOURCE.finding(
        equipment.place_of(key),
        f"{load} of `{equipment.name}`, which is made for {limit}: {share_text(share)}",
        severity=Severity.ERROR if over else Severity.WARNING,
        found=load,
        needed=f"{limit} at the most" if over else f"{100 * nearly:.0f} % of {limit}, so that there is a reserve",
        change="Move load to another source or another leg, shed some, or choose a larger source.",
        subject=equipment.name,
    )


def source_shares(book: LoadBook, equipment: Equipment) -> list[tuple[float, str, str]]:
    """Demand over rating of a source, on its fullest leg and in total, each with its load and its limit in words."""
    counted = book.counted(equipment.name)
    per_ampere = volt_amperes_per_ampere(book.system(equipment.name))
    body = equipment.body
    leg, amps = worst_leg(counted.demand, book.practice)
    rated_w: float | None = None
    if equipment.kind == "utility":
        rated_a = body.number("service")
    else:
        power = body.facts.get("power")
        rated_a = None
        if power is not None and per_ampere:
            pf = body.number("pf")
            if power.value.dimension == "power":
                rated_w = power.number
            else:
                rated_a = power.number / per_ampere
                rated_w = power.number * pf if pf is not None else None
    shares: list[tuple[float, str, str]] = []
    if rated_a:
        shares.append((amps / rated_a, f"{amps:.1f} A on leg {leg}", f"{rated_a:.1f} A"))
    if rated_w:
        watts = counted.demand.va.real
        shares.append((watts / rated_w, f"{watts / 1e3:.1f} kW in total", f"{rated_w / 1e3:.1f} kW"))
    return shares


OVERLOAD = rule(
    name="transformer-overload",
    since="0.1",
    severity=Severity.ERROR,
    scope="transformer",
    summary="A winding of a transformer, or half of one, carries more than its share of the rating.",
    why="The total may fit while one winding burns: each is made for its own share only.",
    clause={"us": "450", "iec": "60076-1, 60076-12"},
    wrong=_US
    + _UTIL
    + "feeder UTIL[AB] -> TX-1  60 A 2p\ntransformer TX-1 480 1ph -> 120/240  15 kVA, z 2.5 %, x/r 1.3\n"
    "feeder TX-1 -> LP-1  80 A 2p\npanel LP-1 120/240  bus 225 A\n"
    '  1  60 A 1p  5 kVA process  "Kiln"\n  2  60 A 1p  4 kVA process  "Lathe and saw"\n'
    '  3  60 A 1p  4.5 kVA process  "Drying oven"\n',
    right=_US
    + _UTIL
    + "feeder UTIL[AB] -> TX-1  60 A 2p\ntransformer TX-1 480 1ph -> 120/240  15 kVA, z 2.5 %, x/r 1.3\n"
    "feeder TX-1 -> LP-1  70 A 2p\npanel LP-1 120/240  bus 225 A\n"
    '  1  60 A 1p  5 kVA process  "Kiln"\n  3  60 A 1p  5 kVA process  "Drying oven"\n',
    mends=True,
)

BANK = rule(
    name="two-unit-bank-overload",
    since="0.1",
    severity=Severity.ERROR,
    scope="transformer",
    summary="One of the two units of an open-delta bank carries more than its rating.",
    why="Two units carry 57.7 % of what three do, and 86.6 % of their own sum; single-phase load comes on top in one.",
    clause={"us": "450"},
    wrong=_UTIL + "feeder UTIL -> TX-1  60 A 3p\n"
    "transformer TX-1 480 3ph -> 240/120 3ph  30 kVA, connection open-delta, z 3 %, x/r 1.3\n"
    "feeder TX-1 -> LP-1  80 A 3p\npanel LP-1 240/120 3ph  bus 100 A, main 80 A\n"
    '  1,3,5  80 A 3p  28 kW heating  "Kiln"\n',
    right=_UTIL + "feeder UTIL -> TX-1  60 A 3p\n"
    "transformer TX-1 480 3ph -> 240/120 3ph  45 kVA, connection open-delta, z 3 %, x/r 1.3\n"
    "feeder TX-1 -> LP-1  80 A 3p\npanel LP-1 240/120 3ph  bus 100 A, main 80 A\n"
    '  1,3,5  80 A 3p  28 kW heating  "Kiln"\n',
)


def _open_bank(view: View, equipment: Equipment) -> bool:
    state = view.state(equipment.name)
    winding = state.winding if state is not None else None
    return isinstance(winding, Transformed) and winding.connection in ("open-delta", "open-wye")


@OVERLOAD.check
def transformer_overload(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind != "transformer" or _open_bank(view, equipment):
        return
    rating = equipment.body.number("power")
    if rating is None:
        return
    total = abs(view.loads.counted(equipment.name).demand.va)
    share, load, of = transformer_share(view.loads, equipment.name, rating)
    nearly = view.settings.loading
    if share <= nearly + 1e-9:
        return
    over = share > _FULL
    all_of_it = f"{total / 1e3:.1f} kVA of {rating / 1e3:g} kVA in total"
    yield OVERLOAD.finding(
        equipment.place_of("power"),
        f"{load} in `{equipment.name}`: {share_of(share, of)}",
        severity=Severity.ERROR if over else Severity.WARNING,
        found=f"{load}; {all_of_it}",
        needed="100 % at the most" if over else f"{100 * nearly:.0f} % at the most, so that there is a reserve",
        change="Spread the load over the windings, or choose the next size.",
        subject=equipment.name,
        fixes=_next_size(view, equipment, rating * share / (1.0 if over else nearly)),
    )


@BANK.check
def two_unit_bank_overload(view: View, equipment: Equipment) -> Iterator[Finding]:
    rating = equipment.body.number("power")
    if equipment.kind != "transformer" or rating is None or not _open_bank(view, equipment):
        return
    worst = worst_winding(view.loads, equipment.name)
    if worst is None or worst.share <= _FULL:
        return
    text = _winding_text(worst, view.loads.practice)
    yield BANK.finding(
        equipment.place_of("power"),
        f"{text} in `{equipment.name}`, two units of {rating / 2e3:g} kVA: {share_text(worst.share)}",
        found=f"{text} of a unit of {rating / 2e3:g} kVA",
        needed=f"{0.866 * rating / 1e3:.1f} kVA of balanced three-phase load at the most, less where there is other",
        change="Choose larger units, or close the delta with a third one.",
        subject=equipment.name,
        fixes=_next_size(view, equipment, rating * worst.share),
    )


def transformer_share(book: LoadBook, name: str, rating: float) -> tuple[float, str, str]:
    """Demand over rating of a transformer, by its fullest winding where known; the load and of what, in words."""
    worst = worst_winding(book, name)
    if worst is not None:
        return worst.share, _winding_text(worst, book.practice), "its share"
    total = abs(book.counted(name).demand.va)
    return total / rating, f"{total / 1e3:.1f} kVA of {rating / 1e3:g} kVA", "it"


def _winding_text(worst: WindingLoad, practice: str | None) -> str:
    ends = conductors_text((worst.start, worst.end), practice, "-")
    return f"{worst.amps:.1f} A of {worst.limit_a:.1f} A through {worst.part} {ends}"


def _next_size(view: View, equipment: Equipment, va: float) -> tuple[Fix, ...]:
    basis = view.loads.basis
    fact = equipment.body.facts.get("power")
    state = view.state(equipment.name)
    winding = state.winding if state is not None else None
    if basis is None or fact is None or not isinstance(winding, Transformed) or _open_bank(view, equipment):
        return ()
    found = transformer_at_least(basis, va / 1e3, 3 if len(winding.cores) == 3 else 1)
    place = equipment.place_of("power")
    if isinstance(found, NotListed) or place == equipment.place:
        return ()
    return (Fix(f"Choose {found.value:g} kVA", (replace(place, f"{found.value:g} kVA"),), Safety.LOOK),)


IDLE = rule(
    name="transformer-mostly-idle",
    since="0.1",
    severity=Severity.ADVICE,
    scope="transformer",
    summary="A transformer is far larger than its load, future load included.",
    why="Its core losses run day and night, and its fault current and inrush are those of its size.",
    wrong=_UTIL + "feeder UTIL -> TX-1  125 A 3p\ntransformer TX-1 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2\n"
    "feeder TX-1 -> LP-1  200 A 3p\npanel LP-1 208Y/120  bus 225 A, main 200 A\n"
    '  1,3,5  30 A 3p  9 kW heating  "Kiln"\n',
    right=_UTIL + "feeder UTIL -> TX-1  30 A 3p\ntransformer TX-1 480 3ph -> 208Y/120  15 kVA, z 4 %, x/r 2\n"
    "feeder TX-1 -> LP-1  50 A 3p\npanel LP-1 208Y/120  bus 100 A, main 50 A\n"
    '  1,3,5  30 A 3p  9 kW heating  "Kiln"\n',
)
_IDLE_BELOW = 0.3


@IDLE.check
def transformer_mostly_idle(view: View, equipment: Equipment) -> Iterator[Finding]:
    rating = equipment.body.number("power")
    if equipment.kind != "transformer" or rating is None:
        return
    book = view.loads
    below = book.nodes[equipment.name].below
    total = abs(book.counted(equipment.name).demand.va)
    worst = worst_winding(book, equipment.name)
    part = (total + below.apart_va) / rating
    fullest = worst.share if worst is not None else 0.0
    if below.unknown or total == 0.0 or max(part, fullest) >= _IDLE_BELOW:
        return
    later = f" and {below.apart_va / 1e3:.1f} kVA of future load" if below.apart_va else ""
    yield IDLE.finding(
        equipment.place_of("power"),
        f"{total / 1e3:.1f} kVA of demand{later} on `{equipment.name}` of {rating / 1e3:g} kVA: {100 * part:.0f} %",
        found=f"{total / 1e3:.1f} kVA{later}{f', {100 * fullest:.0f} % in its fullest winding' if fullest else ''}",
        needed=f"{100 * _IDLE_BELOW:.0f} % of its rating or more",
        change="Choose a smaller size, with its devices, or write the load that it waits for and mark it `future`.",
        subject=equipment.name,
    )


HARMONIC = rule(
    name="harmonic-duty",
    since="0.1",
    severity=Severity.WARNING,
    scope="transformer",
    summary="Much of a transformer's load is electronic, and the transformer is not made for harmonics.",
    why="Harmonic currents heat its windings and its neutral beyond what their amperes say.",
    clause={"us": "310.15(E)", "iec": "60364-5-52 523.6"},
    wrong=_UTIL + "feeder UTIL -> TX-1  30 A 3p\ntransformer TX-1 480 3ph -> 208Y/120  15 kVA, z 4 %, x/r 2\n"
    "feeder TX-1 -> LP-1  50 A 3p\npanel LP-1 208Y/120  bus 100 A, main 50 A\n"
    '  1,3,5  50 A 3p  9 kVA it  "Server racks"\n',
    right=_UTIL
    + "feeder UTIL -> TX-1  30 A 3p\ntransformer TX-1 480 3ph -> 208Y/120  15 kVA, z 4 %, x/r 2, kfactor 4\n"
    "feeder TX-1 -> LP-1  50 A 3p\npanel LP-1 208Y/120  bus 100 A, main 50 A\n"
    '  1,3,5  50 A 3p  9 kVA it  "Server racks"\n',
    mends=True,
)
_ELECTRONIC = frozenset({"it", "drive", "ups"})
"""Beside what states a third harmonic: drives have few of it, and others instead."""
_HARMONIC_FROM = 0.3
_ENOUGH_K = 4.0


@HARMONIC.check
def harmonic_duty(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind != "transformer" or (equipment.body.number("kfactor") or 1.0) >= _ENOUGH_K:
        return
    book = view.loads
    rating = equipment.body.number("power")
    counted = book.counted(equipment.name)
    total = abs(counted.demand.va)
    rows = book.rows(equipment.name)[0]
    waves = [key for key in rows if key.category in _ELECTRONIC or nonlinear(key)]
    electronic = sum(counted.factors[key] * abs(rows[key][VA]) for key in waves)
    if rating is None or total == 0.0 or electronic <= _HARMONIC_FROM * max(total, 0.5 * rating):
        return
    share = electronic / total
    place = equipment.place_of("kfactor")
    if "kfactor" in equipment.body.facts:
        fix = Fix("Write `kfactor 4`", (replace(place, "kfactor 4"),), Safety.LOOK)
    else:
        line = equipment.statement.head.line
        fix = Fix("Add `kfactor 4`", (append_phrase(equipment.block, line, "kfactor 4"),), Safety.LOOK)
    yield HARMONIC.finding(
        place,
        f"{100 * share:.0f} % of the load of `{equipment.name}`, {electronic / 1e3:.1f} kVA, is electronic; "
        "its K-factor is below 4",
        found=f"{electronic / 1e3:.1f} kVA of drives, computers, power supplies and what states a third harmonic",
        needed=f"K-factor 4 or more from {100 * _HARMONIC_FROM:.0f} % on",
        change="Ask for the harmonic currents and choose the K-factor by them, or a larger unit.",
        subject=equipment.name,
        fixes=(fix,),
    )
