"""Every way to lay a wanted voltage on a supply's conductors, by comparing distances between phasors."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from wyeline_grammar.notation import Voltage, VoltageForm
from wyeline_linter.nameplate import Fit, judge
from wyeline_linter.systems import EARTHED_NEUTRAL, NEUTRAL, UNEARTHED, Shape, System, source_system
from wyeline_linter.verdicts import LegMap, PairCheck

EXACT = 0.01
"""Same nominal: within 1 %, so that 208 is never 240 and 277 is 480/1.732."""

_FAMILIES = (
    (110.0, 115.0, 120.0),
    (200.0, 208.0),
    (220.0, 230.0, 240.0),
    (254.0, 265.0, 277.0),
    (318.0, 332.0, 347.0),
    (380.0, 400.0, 415.0),
    (440.0, 460.0, 480.0),
    (550.0, 575.0, 600.0),
    (660.0, 690.0),
)
"""Nominals that succeeded or stand beside one another (IEC 60038 history; ANSI C84.1 utilisation values): a board that
restates the neighbour is a slip of the pen, not another system."""


@lru_cache(maxsize=8192)
def neighbours(first_v: float, second_v: float) -> bool:
    """Whether two voltages are different members of one family of nominals (400 and 380, never 208 and 240)."""
    if abs(first_v - second_v) <= EXACT * second_v:
        return False
    return any(_member(first_v, family) and _member(second_v, family) for family in _FAMILIES)


def _member(volts: float, family: tuple[float, ...]) -> bool:
    return any(abs(volts - nominal) <= EXACT * nominal for nominal in family)


class Need(NamedTuple):
    """One reading of what is wanted: its conductors and the volts between them; ``top_v`` ends a nameplate band."""

    system: System
    top_v: float | None = None

    @property
    def legs(self) -> tuple[str, ...]:
        return self.system.legs

    @property
    def names(self) -> tuple[str, ...]:
        """The needed conductors, legs first."""
        legs = self.system.legs
        return (*legs, *(name for name in self.system.conductors if name not in legs))

    def without_neutral(self) -> Need:
        return Need(self.system.restrict(self.legs), self.top_v)

    def deviation(self, check: PairCheck) -> float:
        """How far a pair is off, as a share of what was wanted and with its sign; 0 inside a band."""
        nearest = min(max(check.found_v, check.needed_v), self.top_v or check.needed_v)
        return (check.found_v - nearest) / nearest

    def miss(self, check: PairCheck) -> float:
        """The same without its sign."""
        return abs(self.deviation(check))


def needs_of(up: System, wanted: Voltage | System) -> tuple[Need, ...]:
    if isinstance(wanted, System):
        return (Need(wanted),)
    hz = up.frequency_hz or 60.0
    top = wanted.high_v
    if wanted.form is not VoltageForm.TWO_WIRE:
        return (Need(source_system(wanted, frequency_hz=hz), top),)
    with_neutral = Need(source_system(wanted, frequency_hz=hz, earthing=EARTHED_NEUTRAL), top)
    return (Need(source_system(wanted, frequency_hz=hz, earthing=UNEARTHED), top), with_neutral)


def candidates(up: System, need: Need) -> Iterator[tuple[str, ...]]:
    """Every one-to-one choice of supply conductors for the needed ones, the supply's own order first."""
    if up.frequency_hz == 0.0:
        yield from _same_polarity(up, need)
        return
    tail = (NEUTRAL,) if need.system.has_neutral else ()
    if tail and not up.has_neutral:
        return
    legs = up.legs
    size = len(need.legs)
    taken = list(itertools.permutations(legs, size))
    # A–B, B–C, C–A before their opposites: the order in which the trade names legs.
    if len(legs) == 3 and size in (2, 3) and need.system.shape is not Shape.SPLIT3:
        taken.sort(key=lambda choice: (not _forward(choice, legs), legs.index(choice[0])))
    for choice in taken:
        yield (*choice, *tail)


def _same_polarity(up: System, need: Need) -> Iterator[tuple[str, ...]]:
    """On direct current the wires may not be swapped: their potentials must fall in the same order."""
    wanted = sorted(need.names, key=lambda name: -need.system.potential(name).real)
    offered = sorted(up.conductors, key=lambda name: -up.potential(name).real)
    for choice in itertools.combinations(offered, len(wanted)):
        taken = dict(zip(wanted, choice, strict=True))
        yield tuple(taken[name] for name in need.names)


def _forward(choice: tuple[str, ...], legs: tuple[str, ...]) -> bool:
    return (legs.index(choice[1]) - legs.index(choice[0])) % 3 == 1


def checks_of(up: System, need: Need, choice: tuple[str, ...]) -> tuple[PairCheck, ...]:
    taken = dict(zip(need.names, choice, strict=True))
    return tuple(
        PairCheck((a, b), (taken[a], taken[b]), volts, up.nominal_v(taken[a], taken[b]))
        for a, b, volts in need.system.pair_voltages()
    )


def grade_of(check: PairCheck, is_load: bool, top_v: float | None) -> int:
    """0 as wanted, 1 acceptable with a remark, 2 refused."""
    if is_load:
        fit = judge(check.found_v, check.needed_v, top_v).fit if check.found_v > 0 else Fit.WRONG
        return {Fit.GOOD: 0, Fit.DOUBTFUL: 1, Fit.WRONG: 2}[fit]
    if abs(check.found_v - check.needed_v) <= EXACT * check.needed_v:
        return 0
    return 1 if neighbours(check.found_v, check.needed_v) else 2


def all_maps(up: System, needs: tuple[Need, ...], is_load: bool) -> tuple[LegMap, ...]:
    graded: tuple[list[LegMap], list[LegMap]] = ([], [])
    for need in needs:
        for choice in candidates(up, need):
            if _high_leg_to_neutral(up, choice):
                continue
            checks = checks_of(up, need, choice)
            grade = max((grade_of(check, is_load, need.top_v) for check in checks), default=0)
            if grade < 2:
                graded[grade].append(_leg_map(up, need, choice, checks))
    return tuple(graded[0] or graded[1])


def _high_leg_to_neutral(up: System, choice: tuple[str, ...]) -> bool:
    """A two-wire circuit from the high leg to neutral is never made, even at 208 V (NEC 408.3(E), common practice)."""
    return len(choice) == 2 and choice[1] == NEUTRAL and choice[0] == up.high_leg


def _leg_map(up: System, need: Need, choice: tuple[str, ...], checks: tuple[PairCheck, ...]) -> LegMap:
    arriving = up.restrict(choice)
    turn = arriving.rotation
    live = len(arriving.live_legs)
    deviations = [100.0 * need.deviation(check) for check in checks]
    return LegMap(
        pairs=tuple(zip(need.names, choice, strict=True)),
        system=arriving,
        reversed_rotation=turn != 0 and turn != need.system.rotation,
        uses_high_leg=up.high_leg in arriving.legs,
        earthed_leg=arriving.earthed_leg,
        live_poles=live,
        worst_deviation_pct=max(deviations, key=abs, default=0.0),
    )


def follows(candidate: LegMap, stated: tuple[str, ...]) -> bool:
    legs = tuple(name for name in stated if name != NEUTRAL)
    needs_neutral = len(legs) == 1 and NEUTRAL in stated
    return candidate.legs == legs and (candidate.system.has_neutral or not needs_neutral)


def poles_suit(candidate: LegMap, poles: int, switched_neutral: bool) -> bool:
    """Every live wire opens. An earthed leg may open with the others, never alone (NEC 240.22); so may the neutral."""
    neutral = candidate.system.has_neutral
    if switched_neutral:
        return neutral and poles in (candidate.live_poles, len(candidate.legs))
    return poles in (candidate.live_poles, len(candidate.legs)) or (neutral and poles == len(candidate.legs) + 1)
