"""What a voltage system is: the conductors at a place, the voltage between any two of them, and how it is earthed.

A system is plain geometry: one nominal phasor potential per conductor. Names such as 480Y/277 or "high-leg delta" are
only recognisers over the distances between those points, so whatever the geometry allows needs no special case.
What may feed what is `feeding`'s business; what a transformer makes of a system is `windings`'.
"""

from __future__ import annotations

import cmath
import itertools
import math
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from wyeline_grammar.notation import Voltage, VoltageForm, parse_voltage
from wyeline_linter.earthing import (
    EARTHED_NEUTRAL as EARTHED_NEUTRAL,
)
from wyeline_linter.earthing import (
    LEGS as LEGS,
)
from wyeline_linter.earthing import (
    MIDPOINT as MIDPOINT,
)
from wyeline_linter.earthing import (
    NEUTRAL as NEUTRAL,
)
from wyeline_linter.earthing import (
    UNEARTHED as UNEARTHED,
)
from wyeline_linter.earthing import (
    Arrangement as Arrangement,
)
from wyeline_linter.earthing import (
    Earthing as Earthing,
)
from wyeline_linter.earthing import (
    EarthingKind as EarthingKind,
)
from wyeline_linter.earthing import (
    earthing_from_words as earthing_from_words,
)
from wyeline_linter.earthing import (
    usual_earthing as usual_earthing,
)
from wyeline_linter.shapes import SQRT3 as SQRT3
from wyeline_linter.shapes import Shape as Shape
from wyeline_linter.shapes import near, recognise


@dataclass(frozen=True, slots=True, eq=False)
class System:
    """The conductors at a place and their nominal potentials.

    ``conductors`` are the legs in their order at this place, then the neutral; the protective conductor is not one of
    them. ``phasors`` are rms volts at the absolute angle of the source, known up to a common constant; ``earth`` is the
    potential of earth on the same footing, None where no solid connection fixes it. ``widest_v`` is the largest
    voltage between two conductors of the *source* system, which a restricted run still has to be insulated for.
    ``frequency_hz`` is 0 for direct current. ``nominal`` is the notation of what is present here. Equal
    systems compare and hash equal (potentials to 1 mV, whichever way they were worked out), and the hash is kept.
    """

    conductors: tuple[str, ...]
    phasors: tuple[complex, ...]
    frequency_hz: float
    earthing: Earthing
    earth: complex | None
    widest_v: float
    nominal: Voltage
    legs: tuple[str, ...]
    """The conductors that are not the neutral, in order."""
    has_neutral: bool
    _key: tuple[object, ...]
    _hash: int

    def __hash__(self) -> int:
        return self._hash

    def __eq__(self, other: object) -> bool:
        if self is other:
            return True
        return isinstance(other, System) and self._hash == other._hash and self._key == other._key

    @property
    def shape(self) -> Shape:
        return _shape(self)

    @property
    def rotation(self) -> int:
        """+1 where the three legs, in their order, follow each other (A before B before C), -1 reversed, 0 if not 3."""
        return rotation_of(tuple(self.potential(leg) for leg in self.legs))

    @property
    def high_leg(self) -> str | None:
        """The leg whose voltage to neutral is 1.73 times that of its neighbours, or None."""
        return _high_leg(self)

    @property
    def live_legs(self) -> tuple[str, ...]:
        """The legs that a device must open: all but a solidly earthed one."""
        return tuple(leg for leg in self.legs if leg != self.earthed_leg)

    @property
    def earthed_leg(self) -> str | None:
        """The leg that is solidly earthed (corner-grounded delta, earthed DC pole), or None."""
        conductor = self.earthing.conductor
        return conductor if self.earthing.solid and conductor in self.legs else None

    def potential(self, conductor: str) -> complex:
        """Nominal phasor of a conductor, rms volts. Raises ValueError where the system has no such conductor."""
        return self.phasors[self.conductors.index(conductor)]

    def distance(self, first: str, second: str) -> float:
        """Nominal volts between two conductors, exact geometry (277.128, not 277)."""
        return abs(self.potential(first) - self.potential(second))

    def nominal_v(self, first: str, second: str) -> float:
        """Volts between two conductors as the trade writes them (277, 120, 208)."""
        return nominal_near(self.distance(first, second), self.nominal)

    def pair_voltages(self) -> tuple[tuple[str, str, float], ...]:
        """Every pair with its nominal volts as written: legs first (A–B, B–C, C–A), then legs to neutral."""
        return _pair_voltages(self)

    def volts_to_ground(self, conductor: str) -> float:
        """The voltage to ground that insulation and devices must bear.

        Solidly earthed: the nominal figure. Unearthed or through an impedance: up to the full line voltage, because one
        earth fault puts it there (common practice; IEC 60364-4-41, 411.6).
        """
        return self.widest_v if self.earth is None else abs(self.potential(conductor) - self.earth)

    def restrict(self, conductors: tuple[str, ...]) -> System:
        """The system on a run that takes only these conductors, legs in this order; angle and earthing stay.

        Raises ValueError for a conductor that is not here or is named twice.
        """
        return _restrict(self, conductors)

    def behind_own_electrode(self) -> System:
        """The system at a board whose metal parts have an earth electrode of their own, and no PE from the source."""
        earthing = self.earthing._replace(arrangement=Arrangement.TT, stated=True)
        return system(
            self.conductors, self.phasors, self.frequency_hz, earthing, self.earth, self.nominal, self.widest_v
        )

    def figures(self) -> str:
        """The system in numbers: "480 V between any two live wires, 277 V from each to neutral, legs 120° apart"."""
        from wyeline_linter.system_words import figures

        return figures(self)

    def in_words(self) -> str:
        """The system as one drafter tells it to another, with its earthing and frequency."""
        from wyeline_linter.system_words import in_words

        return in_words(self)


class Known(NamedTuple):
    """The system at a place is settled."""

    system: System


class UnknownYet(NamedTuple):
    """The system cannot be told yet; ``reasons`` name the missing facts. Never the same as "does not fit"."""

    reasons: tuple[str, ...]


SystemState = Known | UnknownYet


def _rounded(value: complex, digits: int) -> complex:
    return complex(round(value.real, digits) + 0.0, round(value.imag, digits) + 0.0)


def system(
    conductors: tuple[str, ...],
    phasors: tuple[complex, ...],
    frequency_hz: float,
    earthing: Earthing,
    earth: complex | None,
    nominal: Voltage,
    widest_v: float | None = None,
) -> System:
    """Build a System from potentials in volts; ``widest_v`` defaults to the largest distance among them."""
    points = tuple(_rounded(phasor, 9) for phasor in phasors)
    fixed = None if earth is None else _rounded(earth, 9)
    if widest_v is None:
        widest_v = max((abs(p - q) for p, q in itertools.combinations(points, 2)), default=0.0)
    key = (
        conductors,
        tuple(_rounded(point, 3) for point in points),
        frequency_hz,
        earthing,
        None if fixed is None else _rounded(fixed, 3),
        round(widest_v, 3),
        nominal.text,
    )
    legs = tuple([name for name in conductors if name not in (NEUTRAL, "M")])
    has_neutral = NEUTRAL in conductors
    return System(
        conductors, points, frequency_hz, earthing, fixed, widest_v, nominal, legs, has_neutral, key, hash(key)
    )


def unit(degrees: float) -> complex:
    """The unit phasor at an angle in degrees."""
    return cmath.rect(1.0, math.radians(degrees))


_WYE_ANGLES = {"A": 0.0, "B": -120.0, "C": 120.0}


def conductors_of(voltage: Voltage, earthing: Earthing) -> tuple[str, ...]:
    """The conductors that a source of this notation sends out.

    A two-wire source has a neutral exactly when one of its wires is the earthed one.
    """
    form = voltage.form
    if form is VoltageForm.DC2:
        return ("+", "-")
    if form is VoltageForm.TWO_WIRE:
        return ("A", NEUTRAL) if earthing.conductor == NEUTRAL else ("A", "B")
    legs = LEGS[: voltage.legs]
    return (*legs, NEUTRAL) if voltage.has_neutral else legs


@lru_cache(maxsize=4096)
def source_system(
    voltage: Voltage,
    *,
    frequency_hz: float,
    earthing: Earthing | None = None,
    high_leg: str = "B",
    angle_deg: float = 0.0,
) -> System:
    """The system that a source of this notation makes.

    Leg A of a wye stands at ``angle_deg``; on two wires or a centre-tapped winding the voltage from the first leg to
    the last does. ``frequency_hz`` is ignored for direct current. Raises ValueError where ``earthing`` names a
    conductor that the source does not have.
    """
    chosen = usual_earthing(voltage) if earthing is None else earthing
    names = conductors_of(voltage, chosen)
    points = {name: point * unit(angle_deg) for name, point in _points(voltage, names, high_leg).items()}
    earth = earth_potential(chosen, points)
    hz = 0.0 if voltage.form is VoltageForm.DC2 else frequency_hz
    return system(names, tuple(points[name] for name in names), hz, chosen, earth, voltage)


def _points(voltage: Voltage, names: tuple[str, ...], high_leg: str) -> dict[str, complex]:
    line = voltage.line_v
    if voltage.form is VoltageForm.DC2:
        return {"+": complex(line / 2), "-": complex(-line / 2)}
    if voltage.form is VoltageForm.SPLIT3:
        return {"A": complex(line / 2), "B": complex(-line / 2), NEUTRAL: 0j}
    if voltage.form is VoltageForm.TWO_WIRE:
        return (
            {"A": complex(line), NEUTRAL: 0j} if NEUTRAL in names else {"A": complex(line / 2), "B": complex(-line / 2)}
        )
    star = {leg: line / SQRT3 * unit(angle) for leg, angle in _WYE_ANGLES.items()}
    star[NEUTRAL] = 0j
    if voltage.form is VoltageForm.HIGH_LEG4:
        if high_leg not in LEGS:
            raise ValueError(f"the high leg is A, B or C, not {high_leg}")
        low = [leg for leg in LEGS if leg != high_leg]
        middle = (star[low[0]] + star[low[1]]) / 2
        return {name: point - middle for name, point in star.items() if name != NEUTRAL} | {NEUTRAL: 0j}
    return star


def earth_potential(earthing: Earthing, points: dict[str, complex]) -> complex | None:
    """Where earth lies among the potentials of a source, or None without a solid connection.

    An earthed star point or winding middle that no wire leaves from is the centre of the legs. Raises ValueError where
    the earthed conductor is not there.
    """
    conductor = earthing.conductor
    if not earthing.solid or conductor is None:
        return None
    if conductor in points:
        return points[conductor]
    if conductor in (NEUTRAL, MIDPOINT):
        legs = [point for name, point in points.items() if name != NEUTRAL]
        return sum(legs, 0j) / len(legs)
    raise ValueError(f"the system has no conductor {conductor} to earth")


def rotation_of(legs: tuple[complex, ...]) -> int:
    """Sense of three potentials taken in order: +1 when each lags the one before by a third of a turn, -1, or 0."""
    if len(legs) != 3:
        return 0
    first, second, third = legs
    area = ((second - first).conjugate() * (third - first)).imag
    if abs(area) < 1e-6:
        return 0
    return -1 if area > 0 else 1


def nominal_near(volts: float, nominal: Voltage) -> float:
    """The nominal figure that a computed voltage stands for: the notation's own, else rounded as the trade does."""
    for known in (nominal.line_v, nominal.neutral_v):
        if known and abs(volts - known) <= 0.006 * known:
            return known
    if volts >= 1000.0:
        return float(f"{volts:.4g}")
    return float(round(volts)) if volts >= 100.0 or abs(volts - round(volts)) < 0.05 else round(volts, 1)


def volts_text(volts: float) -> str:
    """``480 V``, ``63.5 V``, ``13.8 kV``."""
    if volts >= 1000.0:
        return f"{volts / 1000.0:.4g} kV"
    return f"{volts:.4g} V"


@lru_cache(maxsize=4096)
def _pair_voltages(of: System) -> tuple[tuple[str, str, float], ...]:
    legs = of.legs
    pairs = list(itertools.pairwise(legs))
    if len(legs) == 3:
        pairs.append((legs[2], legs[0]))
    pairs += [(leg, middle) for middle in (NEUTRAL, "M") if middle in of.conductors for leg in legs]
    return tuple((first, second, of.nominal_v(first, second)) for first, second in pairs)


@lru_cache(maxsize=4096)
def _restrict(of: System, conductors: tuple[str, ...]) -> System:
    if len(set(conductors)) != len(conductors):
        raise ValueError(f"a conductor is named twice: {' '.join(conductors)}")
    for name in conductors:
        if name not in of.conductors:
            raise ValueError(f"there is no {name} here, only {' '.join(of.conductors)}")
    order = (*(c for c in conductors if c != NEUTRAL), *(c for c in conductors if c == NEUTRAL))
    if order == of.conductors:
        return of
    points = tuple(of.potential(name) for name in order)
    kept = system(order, points, of.frequency_hz, of.earthing, of.earth, of.nominal, of.widest_v)
    return system(order, points, of.frequency_hz, of.earthing, of.earth, _label(kept, of.nominal), of.widest_v)


def _label(of: System, source: Voltage) -> Voltage:
    """The notation of a restricted system; an unnamed shape keeps the notation of its source."""

    def number(volts: float) -> tuple[str, str]:
        return (f"{volts / 1000:g}", " kV") if volts >= 1000 else (f"{volts:g}", "")

    legs, shape = of.legs, of.shape
    if shape in (Shape.DC2, Shape.DC3, Shape.OTHER, Shape.HIGH_LEG3) or not legs or len(of.conductors) == 1:
        return source
    other = legs[1] if len(legs) > 1 else NEUTRAL
    line = of.nominal_v(legs[0], other)
    text, unit_text = number(line)
    if shape in (Shape.WYE4, Shape.HIGH_LEG4):
        return source
    if shape in (Shape.WYE3, Shape.DELTA3):
        return parse_voltage(f"{text}{unit_text} 3ph")
    if shape in (Shape.SPLIT3, Shape.TWO_LEGS3):
        half = of.nominal_v(legs[0], NEUTRAL)
        half_text = f"{half / 1000:g}" if unit_text else f"{half:g}"
        if shape is Shape.SPLIT3:
            return parse_voltage(f"{half_text}/{text}{unit_text}")
        return parse_voltage(f"{text}Y/{half_text}{unit_text} 1ph")
    return parse_voltage(f"{text}{unit_text} 1ph")


@lru_cache(maxsize=4096)
def _high_leg(of: System) -> str | None:
    # A high leg alone with its neutral is known by its label only; geometry cannot tell it from any other leg.
    legs = of.legs
    if NEUTRAL not in of.conductors or len(legs) < 2:
        return None
    ranked = sorted(legs, key=lambda leg: of.distance(leg, NEUTRAL))
    low, high = ranked[0], ranked[-1]
    return high if near(of.distance(high, NEUTRAL), SQRT3 * of.distance(low, NEUTRAL)) else None


@lru_cache(maxsize=4096)
def _shape(of: System) -> Shape:
    if of.frequency_hz == 0.0:
        return Shape.DC3 if "M" in of.conductors else Shape.DC2 if len(of.conductors) == 2 else Shape.OTHER
    neutral = of.potential(NEUTRAL) if of.has_neutral else None
    legs = tuple(of.potential(leg) for leg in of.legs)
    return recognise(legs, neutral, of.earth, corner=of.earthed_leg is not None)
