"""Where a load lies among the conductors of a system, and the currents it draws there at nominal voltage."""

from __future__ import annotations

from functools import lru_cache

from wyeline_linter.systems import NEUTRAL, System

INDEX = {"A": 0, "B": 1, "C": 2, "N": 3, "+": 0, "-": 1, "M": 3}
"""The place of a conductor in every vector of currents; direct current uses the first two."""
NEUTRAL_AT = 3
LEG_COUNT = 3
Part = tuple[int, int, complex]
"""Volt-amperes on a pair of conductors: the current goes out on the first and comes back on the second."""
Currents = tuple[complex, complex, complex, complex]


@lru_cache(maxsize=4096)
def inverse_conjugates(system: System) -> dict[tuple[int, int], complex]:
    """For each ordered pair of conductors, 1 over the conjugate of the voltage between them (1/V)."""
    points = [(INDEX[name], point) for name, point in zip(system.conductors, system.phasors, strict=True)]
    return {(i, j): 1.0 / (p - q).conjugate() for i, p in points for j, q in points if i != j and abs(p - q) > 1e-9}


def spread(system: System, legs: tuple[str, ...], va: complex) -> tuple[Part, ...] | None:
    """A load on these legs: to neutral on one, between them on two, balanced on three; None where it has no return."""
    if len(legs) == 3:
        a, b, c = (INDEX[leg] for leg in legs)
        third = va / 3.0
        return (a, b, third), (b, c, third), (c, a, third)
    if len(legs) == 2:
        return ((INDEX[legs[0]], INDEX[legs[1]], va),)
    if len(legs) == 1 and system.has_neutral:
        return ((INDEX[legs[0]], NEUTRAL_AT, va),)
    return None


def across(system: System, legs: tuple[str, ...]) -> tuple[float, float]:
    """Volts that such a load lies across: exact, and as the trade writes them. ValueError where it has no return."""
    other = legs[1] if len(legs) > 1 else NEUTRAL
    if other not in system.conductors:
        raise ValueError(f"there is no neutral beside leg {legs[0]}")
    return system.distance(legs[0], other), system.nominal_v(legs[0], other)
