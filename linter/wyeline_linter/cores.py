"""Transformers taken apart: cores, the windings on each, and the conductors every winding lies between.

All windings of a core share one flux, so (potential of start - potential of end) / volts is the same complex number for
each of them; everything a transformer does to voltages and currents follows from that and from how the ends are joined.
"""

from __future__ import annotations

import enum
from typing import NamedTuple

from wyeline_linter.systems import LEGS, NEUTRAL, SQRT3


class Side(enum.Enum):
    """Where a winding's end is joined: to the supply, to what is supplied, or to a point inside the enclosure."""

    PRIMARY = "primary"
    SECONDARY = "secondary"
    INSIDE = "inside"

    __hash__ = object.__hash__  # members are singletons; the usual one hashes their names anew each time


class Terminal(NamedTuple):
    """One end of a winding: a conductor of a side, under that side's name, or a named point inside."""

    side: Side
    conductor: str


class Winding(NamedTuple):
    """A winding, its dotted end first. ``volts`` is its rated voltage, so volts are in proportion to turns."""

    start: Terminal
    end: Terminal
    volts: float

    def reversed(self) -> Winding:
        return Winding(self.end, self.start, self.volts)


class Core(NamedTuple):
    """One limb or one single-phase unit: the winding that is fed and those that share its flux.

    In an autotransformer the fed winding may run from one side to the other; ``primary`` is then the first of its
    chain. ``tap_pct`` belongs to the primary (+2.5 means 2.5 % more primary turns, hence a lower secondary voltage);
    nominal voltages ignore it, load flow does not.
    """

    primary: Winding
    secondaries: tuple[Winding, ...]
    tap_pct: float = 0.0


PRIMARY_STAR = Terminal(Side.INSIDE, "primary star")
SECONDARY_STAR = Terminal(Side.INSIDE, "secondary star")


def on_primary(conductor: str) -> Terminal:
    return Terminal(Side.PRIMARY, conductor)


def on_secondary(conductor: str) -> Terminal:
    return Terminal(Side.SECONDARY, conductor)


_TURNED = (0, 6, 4, 8, 2, 10)
"""Clock steps that relabelling and reversing the secondary windings give, the plainest first."""
_PRIMARY_CLOCKS = {"Y": (0,), "D": (11, 1)}
_SECONDARY_CLOCKS = {"y": (0,), "d": (1, 11), "z": (11, 1)}


def group_cores(
    legs: tuple[str, ...],
    primary: str,
    secondary: str,
    clock: int,
    primary_line_v: float,
    secondary_line_v: float,
    *,
    primary_star: Terminal,
    secondary_star: Terminal,
    tapped_for_high_leg: str | None = None,
    tap_pct: float = 0.0,
) -> tuple[Core, ...]:
    """The three cores of a vector group (IEC 60076-1, clause 7: the secondary lags by 30° times the clock number).

    ``legs`` are the primary conductors in order, ``primary`` is Y or D, ``secondary`` y, d or z. Dyn11 puts its first
    winding across A–B, Dyn1 across A–C. ``tapped_for_high_leg`` splits the delta winding opposite that leg at a
    neutral. Raises ValueError where no joining of windings gives the clock number.
    """
    for turned in _TURNED:
        for first in _PRIMARY_CLOCKS[primary]:
            for second in _SECONDARY_CLOCKS[secondary]:
                if (first + second + turned) % 12 == clock:
                    fed = _primary_windings(legs, primary, first, primary_line_v, primary_star)
                    made = _secondary_windings(secondary, second, turned, secondary_line_v, secondary_star)
                    if tapped_for_high_leg is not None:
                        made = [_tapped(windings, tapped_for_high_leg) for windings in made]
                    return tuple(Core(p, tuple(s), tap_pct) for p, s in zip(fed, made, strict=True))
    raise ValueError(f"no {primary}{secondary}{clock} can be wound")


def _primary_windings(
    legs: tuple[str, ...], connection: str, clock: int, line_v: float, star: Terminal
) -> list[Winding]:
    if connection == "Y":
        return [Winding(on_primary(leg), star, line_v / SQRT3) for leg in legs]
    step = 1 if clock == 11 else 2
    return [Winding(on_primary(legs[k]), on_primary(legs[(k + step) % 3]), line_v) for k in range(3)]


def _secondary_windings(connection: str, clock: int, turned: int, line_v: float, star: Terminal) -> list[list[Winding]]:
    """The secondary windings of limbs 0, 1, 2."""
    limbs: list[list[Winding]] = [[], [], []]
    shift, swapped = {0: (0, False), 4: (1, False), 8: (2, False), 6: (0, True), 10: (1, True), 2: (2, True)}[turned]

    def wind(limb: int, start: Terminal, end: Terminal, volts: float) -> None:
        winding = Winding(start, end, volts)
        limbs[(limb + shift) % 3].append(winding.reversed() if swapped else winding)

    for k, leg in enumerate(LEGS):
        here = on_secondary(leg)
        if connection == "y":
            wind(k, here, star, line_v / SQRT3)
        elif connection == "d":
            wind(k, here, on_secondary(LEGS[(k + (1 if clock == 1 else 2)) % 3]), line_v)
        else:
            inner = Terminal(Side.INSIDE, f"zigzag {leg}")
            wind(k, here, inner, line_v / 3)
            wind((k + (1 if clock == 11 else 2)) % 3, star, inner, line_v / 3)
    return limbs


def _tapped(windings: list[Winding], high_leg: str) -> list[Winding]:
    """Split the winding between the two low legs at the neutral; leave the others."""
    split: list[Winding] = []
    for winding in windings:
        if high_leg in (winding.start.conductor, winding.end.conductor):
            split.append(winding)
        else:
            split += halves(winding.start, winding.end, winding.volts)
    return split


def halves(start: Terminal, end: Terminal, volts: float) -> list[Winding]:
    """A centre-tapped winding as its two halves, with the neutral between them."""
    middle = on_secondary(NEUTRAL)
    return [Winding(start, middle, volts / 2), Winding(middle, end, volts / 2)]


def single_core(
    pair: tuple[str, str], primary_v: float, secondary: tuple[str, ...], secondary_v: float, tap_pct: float = 0.0
) -> tuple[Core, ...]:
    """A single-phase unit: across ``pair`` on the primary; two secondary conductors, or A, B and N centre-tapped."""
    fed = Winding(on_primary(pair[0]), on_primary(pair[1]), primary_v)
    first, second = on_secondary(secondary[0]), on_secondary(secondary[1])
    made = halves(first, second, secondary_v) if len(secondary) == 3 else [Winding(first, second, secondary_v)]
    return (Core(fed, tuple(made), tap_pct),)


def two_unit_cores(
    fed: tuple[tuple[str, str], tuple[str, str]],
    primary_v: float,
    secondary_v: float,
    *,
    high_leg: str,
    tapped: bool,
    tap_pct: float = 0.0,
) -> tuple[Core, ...]:
    """Open delta: the lighting unit between the two low legs, the power unit from the second of them to the high leg.

    ``fed`` are the primary pairs of both units, the second lagging the first by 120°.
    """
    k = LEGS.index(high_leg)
    first, second = LEGS[(k + 1) % 3], LEGS[(k + 2) % 3]
    ends = ((first, second), (second, high_leg))
    cores = []
    for (start, end), (p_start, p_end) in zip(ends, fed, strict=True):
        winding = Winding(on_secondary(start), on_secondary(end), secondary_v)
        made = _tapped([winding], high_leg) if tapped else [winding]
        cores.append(Core(Winding(on_primary(p_start), on_primary(p_end), primary_v), tuple(made), tap_pct))
    return tuple(cores)


def auto_cores(
    legs: tuple[str, ...], common: Terminal, primary_v: float, secondary_v: float, tap_pct: float = 0.0
) -> tuple[Core, ...]:
    """Autotransformer: a series winding between the two sides of each leg, a common one on to ``common``.

    ``primary_v`` and ``secondary_v`` are volts from a leg to the common point.
    """
    cores = []
    for leg in legs:
        high, low = (on_primary(leg), on_secondary(leg))
        if secondary_v > primary_v:
            high, low = low, high
        series = Winding(high, low, abs(primary_v - secondary_v))
        cores.append(Core(series, (Winding(low, common, min(primary_v, secondary_v)),), tap_pct))
    return tuple(cores)


def buck_boost_cores(
    pairs: tuple[tuple[str, str], ...], primary_v: float, secondary_v: float, tap_pct: float = 0.0
) -> tuple[Core, ...]:
    """Small units whose secondary lies in series with the first conductor of each pair, to add or take a little."""
    cores = []
    for leg, other in pairs:
        series = Winding(on_secondary(leg), on_primary(leg), abs(secondary_v - primary_v))
        added = series if secondary_v > primary_v else series.reversed()
        cores.append(Core(Winding(on_primary(leg), on_primary(other), primary_v), (added,), tap_pct))
    return tuple(cores)


def grounding_zigzag_cores(legs: tuple[str, ...], line_v: float) -> tuple[Core, ...]:
    """A zigzag that makes a neutral: half of each leg's winding, then the reversed half of the next limb."""
    inner = [Terminal(Side.INSIDE, f"zigzag {leg}") for leg in legs]
    third = line_v / 3
    return tuple(
        Core(
            Winding(on_primary(legs[k]), inner[k], third), (Winding(on_secondary(NEUTRAL), inner[(k + 2) % 3], third),)
        )
        for k in range(3)
    )


def secondary_points(cores: tuple[Core, ...], primary_points: dict[Terminal, complex]) -> dict[Terminal, complex]:
    """Potentials of the secondary's conductors and inner points, chained along its windings.

    ``primary_points`` gives the primary ends. The primary is taken at its rated voltage (direction kept), so nominal
    notations stay exact down a chain of transformers. The zero lies at the neutral, else at the first end found.
    """
    steps: list[tuple[Terminal, Terminal, complex]] = []
    for core in cores:
        across = primary_points[core.primary.start] - primary_points[core.primary.end]
        flux = across / abs(across)
        steps += [(w.start, w.end, flux * w.volts) for w in core.secondaries]
    neutral = on_secondary(NEUTRAL)
    ends = {end for step in steps for end in step[:2]}
    points = {neutral if neutral in ends else steps[0][1]: 0j}
    while len(points) < len(ends):
        before = len(points)
        for start, end, rise in steps:
            if start in points and end not in points:
                points[end] = points[start] - rise
            elif end in points and start not in points:
                points[start] = points[end] + rise
        if len(points) == before:
            raise ValueError("the windings are not joined to one another")
    return points
