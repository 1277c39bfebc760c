"""How a need can be met from a supply: by wire, under another declaration, or through something inserted between.

A pure search over voltage systems: it knows no names, boards or texts, and its answers are kept. Costs are those of
`COST`; what hangs on the model (another board, other poles, ratings nobody knows) is added by `repair`.
"""

from __future__ import annotations

import heapq
import itertools
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from wyeline_grammar.notation import NotationError, Voltage, VoltageForm, parse_voltage
from wyeline_linter.feeding import feed
from wyeline_linter.matching import EXACT
from wyeline_linter.nameplate import Fit, judge
from wyeline_linter.shapes import Shape
from wyeline_linter.systems import NEUTRAL, System, source_system
from wyeline_linter.verdicts import Feeds, LegMap
from wyeline_linter.windings import Practice, Transformed, secondary_system

COST = {
    "legs": 0,
    "poles": 1,
    "positions": 1,
    "swap": 1,
    "move": 2,
    "loses its second source": 20,
    "attribute": 2,
    "leave out": 2,
    "open point": 2,
    "redeclare": 3,
    "redeclare to another voltage": 8,
    "fewer conductors": 5,
    "rewind": 4,
    "buck-boost": 4,
    "single-phase": 5,
    "three-phase": 6,
    "zigzag": 6,
    "converter": 7,
    "transfer": 3,
    "new source": 1,
    "earths the supply": 2,
    "unknown rating": 1,
}
"""What each edit costs. A declaration that only counts the wires differently is a small edit; one that gives every
circuit below another voltage makes another panel of it, and costs more than a transformer. What was asked to
stand behind a transfer switch, a UPS or a generator goes to a board without one only after everything else."""

BUCK_BOOST_WITHIN = 0.2
"""Boosters are made for small corrections (common practice: ratios up to about 20 %)."""

_NOMINALS = {
    "us": (120.0, 208.0, 240.0, 277.0, 347.0, 480.0, 600.0),
    "iec": (230.0, 400.0, 690.0),
}
"""Nominal voltages that a transformer is bought for: ANSI C84.1 and IEC 60038."""

_WYES = {
    208.0: "208Y/120",
    400.0: "400Y/230",
    480.0: "480Y/277",
    600.0: "600Y/347",
    690.0: "690Y/400",
}


@dataclass(frozen=True, slots=True)
class Need:
    """What the far end wants. ``may_redeclare`` holds for boards: a nameplate is not an edit away."""

    voltage: Voltage
    is_load: bool
    frequency_hz: float | None
    may_redeclare: bool
    practice: Practice | None


@dataclass(frozen=True, slots=True)
class Stage:
    """Equipment to insert: ``kind`` is its word in the language, ``makes`` the system behind it, ``takes`` the ways in
    which its own input can be connected. ``sort`` is its row of `COST`."""

    sort: str
    kind: str
    primary: Voltage
    secondary: Voltage
    connection: str | None
    makes: System
    takes: tuple[LegMap, ...]
    frequency_hz: float | None = None

    @property
    def new_source(self) -> bool:
        return self.sort not in ("buck-boost", "zigzag")

    @property
    def three_phase(self) -> bool:
        return self.primary.legs == 3


@dataclass(frozen=True, slots=True)
class Route:
    """One way: what is inserted, what the far end is declared as instead, and how it then takes its conductors."""

    cost: int
    maps: tuple[LegMap, ...]
    stage: Stage | None = None
    redeclared: Voltage | None = None


@lru_cache(maxsize=1024)
def routes(up: System, need: Need) -> tuple[Route, ...]:
    """Every way from ``up`` to ``need`` with at most one piece inserted, cheapest first (uniform-cost search)."""
    if len(up.conductors) < 2:  # one wire alone carries no voltage
        return ()
    order = itertools.count()
    queue: list[tuple[int, int, Stage | None, Voltage | None]] = [(0, next(order), None, None)]
    found: list[Route] = []
    while queue:
        cost, _, stage, declared = heapq.heappop(queue)
        here = up if stage is None else stage.makes
        wanted = need.voltage if declared is None else declared
        verdict = feed(here, wanted, is_load=need.is_load, frequency_hz=_hz(need, stage))
        if isinstance(verdict, Feeds):
            straight = tuple(m for m in verdict.maps if not m.reversed_rotation) or verdict.maps
            found.append(Route(cost, straight, stage, declared))
            continue
        if stage is None and declared is None:
            for inserted in stages(up, need):
                more = COST[inserted.sort] + (COST["new source"] if inserted.new_source else 0)
                if inserted.sort == "zigzag" and not up.earthing.solid:
                    more += COST["earths the supply"]
                heapq.heappush(queue, (cost + more, next(order), inserted, None))
        if declared is None and need.may_redeclare:
            for other in _declarations(here, need.voltage):
                heapq.heappush(queue, (cost + _redeclare_cost(need.voltage, other), next(order), stage, other))
    return tuple(found)


def _hz(need: Need, stage: Stage | None) -> float | None:
    if stage is not None and stage.frequency_hz is not None:
        return None
    return need.frequency_hz


# declarations


def _declarations(up: System, wanted: Voltage) -> Iterator[Voltage]:
    """Notations of what ``up`` has, with no more legs than are wanted; most like the wanted one first."""
    if up.frequency_hz == 0.0 or wanted.form is VoltageForm.DC2:
        return
    seen = {wanted.text}
    count = min(wanted.legs, len(up.legs))
    tail = (NEUTRAL,) if up.has_neutral and wanted.has_neutral else ()
    for legs in itertools.combinations(up.legs, count):
        part = up.restrict((*legs, *tail))
        if part.shape in (Shape.OTHER, Shape.HIGH_LEG3) or part.nominal.text in seen:
            continue
        if (part.nominal.line_v >= 1000.0) != (wanted.line_v >= 1000.0):
            continue
        seen.add(part.nominal.text)
        yield part.nominal


def _redeclare_cost(wanted: Voltage, other: Voltage) -> int:
    cost = COST["redeclare"]
    high_leg = (wanted.form is VoltageForm.HIGH_LEG4) != (other.form is VoltageForm.HIGH_LEG4) and other.has_neutral
    if high_leg or not (_same(wanted.line_v, other.line_v) or _same(wanted.neutral_v, other.neutral_v)):
        cost = COST["redeclare to another voltage"]
    fewer = other.legs < wanted.legs or (wanted.has_neutral and not other.has_neutral)
    return cost + (COST["fewer conductors"] if fewer else 0)


def _same(first: float | None, second: float | None) -> bool:
    return first is not None and second is not None and abs(first - second) <= EXACT * second


# what can be inserted


def stages(up: System, need: Need) -> Iterator[Stage]:
    """Every piece of equipment that turns ``up`` into something that may meet the need."""
    direct = need.voltage.form is VoltageForm.DC2
    if direct != (up.frequency_hz == 0.0) or need.frequency_hz not in (None, up.frequency_hz):
        yield from _converters(up, need)
        return
    if direct:
        return
    target = made_for(need)
    targets = [target]
    if need.voltage.form is VoltageForm.SPLIT3 and need.may_redeclare and need.practice != "iec":
        targets.append(parse_voltage("208Y/120"))
    for secondary in targets:
        if secondary.text == up.nominal.text:
            continue
        yield from _boosters(up, need, secondary)
        yield from _single(up, need, secondary)
        yield from _three(up, need, _earthed(need) or secondary)
        yield from _zigzag(up, need, secondary)


def made_for(need: Need) -> Voltage:
    """The system voltage that equipment of this need is made for: its own, or the nominal behind its nameplate."""
    wanted = need.voltage
    if wanted.form is VoltageForm.TWO_LEGS_NEUTRAL:  # two legs of a wye come from a whole wye
        return _voltage(wanted.line_v, "", wanted.neutral_v) or wanted
    if not need.is_load or wanted.form not in (VoltageForm.THREE_WIRE, VoltageForm.TWO_WIRE):
        return wanted
    good = []
    for nominal in _NOMINALS["iec" if need.practice == "iec" else "us"]:
        verdict = judge(nominal, wanted.line_v, wanted.high_v)
        if verdict.fit is Fit.GOOD:
            good.append((abs(verdict.deviation_pct), -nominal, nominal))
    volts = min(good)[2] if good else wanted.high_v or wanted.line_v
    if wanted.legs == 3 and volts in _WYES:  # a wye has a point to earth, a delta has none
        return parse_voltage(_WYES[volts])
    return _voltage(volts, "3ph" if wanted.legs == 3 else "1ph") or wanted


def _earthed(need: Need) -> Voltage | None:
    """A system of the same legs with a point to earth, for a board that states three wires alone: an unearthed one
    would ask for an alarm that shows the first fault (NEC 250.21(B), IEC 60364-4-41 411.6.3)."""
    wanted = need.voltage
    if need.is_load or wanted.form is not VoltageForm.THREE_WIRE:
        return None
    if wanted.line_v in _WYES:
        return parse_voltage(_WYES[wanted.line_v])
    return parse_voltage("240/120 3ph") if wanted.line_v == 240.0 and need.practice != "iec" else None


def _voltage(line: float, phases: str, neutral: float | None = None) -> Voltage | None:
    scale, unit = (1000.0, " kV") if line >= 1000.0 else (1.0, "")
    text = f"{line / scale:g}" + (f"Y/{neutral / scale:g}" if neutral else "") + unit + (f" {phases}" if phases else "")
    try:
        return parse_voltage(text)
    except NotationError:
        return None


def _line_v(up: System) -> float:
    return up.nominal_v(up.legs[0], up.legs[1]) if len(up.legs) > 1 else up.nominal_v(up.legs[0], NEUTRAL)


def _transformer(
    up: System, need: Need, sort: str, primary: Voltage | None, secondary: Voltage, connection: str | None
) -> Stage | None:
    if primary is None:
        return None
    fed = feed(up, primary)
    if not isinstance(fed, Feeds):
        return None
    straight = tuple(m for m in fed.maps if not m.reversed_rotation)
    if not straight:
        return None
    made = secondary_system(
        straight[0].system,
        primary,
        secondary,
        connection,
        practice=need.practice or "us",
        primary_legs=straight[0].conductors,
    )
    if not isinstance(made, Transformed):
        return None
    return Stage(sort, "transformer", primary, secondary, connection, made.system, straight)


def _single(up: System, need: Need, secondary: Voltage) -> Iterator[Stage]:
    """One winding across two conductors, two legs where there are two."""
    if secondary.form in (VoltageForm.TWO_WIRE, VoltageForm.SPLIT3) and up.legs:
        made = _transformer(up, need, "single-phase", _voltage(_line_v(up), "1ph"), secondary, None)
        if made is not None:
            yield made


def _three(up: System, need: Need, secondary: Voltage) -> Iterator[Stage]:
    if secondary.legs != 3 or len(up.legs) != 3:
        return
    connection = None
    if need.practice == "iec":
        connection = "Dyn11" if secondary.form is VoltageForm.WYE4 else "Dd0"
    made = _transformer(up, need, "three-phase", _voltage(_line_v(up), "3ph"), secondary, connection)
    if made is not None:
        yield made


def _boosters(up: System, need: Need, secondary: Voltage) -> Iterator[Stage]:
    """A few percent more or less, by a winding that shares a conductor; it makes no neutral that is not there."""
    if secondary.form is VoltageForm.WYE4:
        if not up.has_neutral or len(up.legs) != 3 or up.shape is not Shape.WYE4:
            return
        primary: Voltage | None = up.nominal
    elif secondary.form in (VoltageForm.THREE_WIRE, VoltageForm.TWO_WIRE):
        primary = _voltage(_line_v(up), "3ph" if secondary.legs == 3 else "1ph")
    else:
        return
    if primary is None:
        return
    off = abs(secondary.line_v / primary.line_v - 1)
    if EXACT < off <= BUCK_BOOST_WITHIN:
        word = "auto" if secondary.form is VoltageForm.WYE4 else "buck-boost"
        made = _transformer(up, need, "buck-boost", primary, secondary, word)
        if made is not None:
            yield made


def _zigzag(up: System, need: Need, secondary: Voltage) -> Iterator[Stage]:
    if secondary.form is VoltageForm.WYE4 and not up.has_neutral and len(up.legs) == 3:
        made = _transformer(up, need, "zigzag", _voltage(_line_v(up), "3ph"), secondary, "zigzag")
        if made is not None:
            yield made


def _converters(up: System, need: Need) -> Iterator[Stage]:
    """A rectifier, an inverter or a frequency converter: what no winding can do."""
    output = made_for(need) if not need.is_load or need.voltage.high_v is None else _band_end(need.voltage)
    direct = output.form is VoltageForm.DC2
    if up.frequency_hz == 0.0 and direct:
        return
    hz = None if direct else need.frequency_hz or {"iec": 50.0}.get(need.practice or "us", 60.0)
    if up.frequency_hz == 0.0:
        primary: Voltage | None = up.nominal
    elif len(up.legs) == 3 and (direct or output.legs == 3):
        primary = _voltage(_line_v(up), "3ph")
    elif up.has_neutral and direct:
        primary = _voltage(up.nominal_v(up.legs[0], NEUTRAL), "1ph")
    else:
        primary = _voltage(_line_v(up), "1ph")
    fed = None if primary is None else feed(up, primary)
    if primary is None or not isinstance(fed, Feeds):
        return
    makes = source_system(output, frequency_hz=hz or 0.0)
    takes = tuple(m for m in fed.maps if not m.reversed_rotation) or fed.maps
    kind = "charger" if direct else "inverter"
    yield Stage("converter", kind, primary, output, None, makes, takes, 0.0 if direct else hz)


def _band_end(voltage: Voltage) -> Voltage:
    return replace(voltage, high_v=None, text=f"{voltage.line_v:g} {voltage.text.rsplit(' ', 1)[-1]}")
