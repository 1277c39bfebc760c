"""From which current a device trips at once, as far as it is written: its curve, its settings, or neither."""

from __future__ import annotations

import math
from typing import NamedTuple

from wyeline_grammar.model import Body
from wyeline_linter.tables import Basis, Looked
from wyeline_linter.tables.basis import basis


class Trip(NamedTuple):
    """The least current that surely trips a device without the delay of an overload, and where it is written."""

    amps: float
    key: str
    text: str


def trip_of(body: Body, rating: float | None = None, *, within_s: float = math.inf) -> Trip | None:
    """The trip of a device, of ``rating`` where that is not the one written; None where neither curve nor setting is
    written (a fuse's curve is the maker's). A pickup that waits longer than ``within_s`` is passed over."""
    own, delay_s = body.number("rating") if rating is None else rating, body.number("delay") or 0.0
    for key in ("pickup", "instantaneous"):
        fact = body.facts.get(key) if key != "pickup" or delay_s <= within_s else None
        if fact is not None and isinstance(fact.value.data, float | int):
            if fact.value.dimension == "current":
                return Trip(fact.number, key, f"{key} {fact.value.text}")
            if own is not None:
                return Trip(fact.number * own, key, f"{key} {fact.value.text}")
    curve = body.text("curve")
    if curve is None or own is None:
        return None
    times = curve_times(curve)
    return Trip(times * own, "curve", f"curve {curve}, {times:g} times {own:g} A") if times is not None else None


def curve_times(curve: str) -> float | None:
    """How many times its rating a miniature breaker of a curve needs to trip at once (IEC 60898-1)."""
    tables: Basis = basis("iec")
    found = tables.number("trip-bands", (curve,), "trip")
    return found.value if isinstance(found, Looked) else None


_TRIPPED_WITHIN_S = 0.1
"""Within this a miniature breaker at its trip has opened (IEC 60898-1, from memory), and a breaker at its setting
(common practice, no source)."""


def opens_from(tables: Basis, body: Body, within_s: float) -> Trip | None:
    """The current from which a device has opened within so many seconds, of 0.4 s or less: by its trip, or by the gate
    of a gG fuse for 0.1 s. None where nothing written tells it."""
    if within_s < _TRIPPED_WITHIN_S:
        return None
    trip, rating = trip_of(body, within_s=within_s), body.number("rating")
    if trip is not None or rating is None:
        return trip
    gate = fuse_opens(tables, body, rating, "within_100ms")
    return None if gate is None else Trip(gate.value, "rating", f"opened within 0.1 s from {gate.value:g} A ({gate})")


def fuse_opens(tables: Basis, body: Body, rating: float, column: str) -> Looked[float] | None:
    """The current from which every gG fuse of a rating has opened, ``within_5s`` or ``within_100ms``; None where the
    device is none, or the standard's gates do not hold its rating."""
    if body.text("fuse") != "gG":
        return None
    found = tables.number("fuse-gates", (f"{rating:g}",), column)
    return found if isinstance(found, Looked) else None


def impedance_ohm(volts: float, amps: float, x_over_r: float | None) -> complex:
    """The impedance behind a fault current, with its angle where X/R is known (else plain reactance)."""
    size = volts / amps
    if x_over_r is None or math.isinf(x_over_r):
        return complex(0.0, size)
    r = size / math.hypot(1.0, x_over_r)
    return complex(r, r * x_over_r)
