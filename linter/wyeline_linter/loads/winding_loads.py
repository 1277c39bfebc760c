"""How a transformer's windings share its load: each against what it may carry, halves and single units too."""

from __future__ import annotations

from operator import is_
from typing import NamedTuple

from wyeline_linter.loads.conductors_of_loads import Currents
from wyeline_linter.loads.rollup import LoadBook
from wyeline_linter.loads.through_cores import Through, loading_amps
from wyeline_linter.windings import Transformed

_SHARED = frozenset({"auto", "buck-boost", "zigzag"})


class WindingLoad(NamedTuple):
    """A secondary winding under the demand load: between which conductors, amperes, and amperes that it may carry."""

    start: str
    end: str
    volts: float
    amps: float
    limit_a: float
    part: str

    @property
    def share(self) -> float:
        return self.amps / self.limit_a


def winding_loads(book: LoadBook, name: str) -> list[WindingLoad]:
    """Every secondary winding of a transformer; empty where it has no rating, does not fit, or shares its windings.

    The rating is divided evenly: a third on each core of three, a half on each unit of an open delta (its rating is
    that of both units together), and within a centre-tapped winding a half on each half.
    """
    equipment = book.model.equipment.get(name)
    state = book.derivation.states.get(name)
    rating = equipment.body.number("power") if equipment is not None else None
    map_ = book.through(name)
    if rating is None or map_ is None or state is None or not isinstance(state.winding, Transformed):
        return []
    winding, demand = state.winding, book.counted(name).demand
    deps = (equipment, state, demand)
    kept = book.windings.get(name)
    if kept is None or not all(map(is_, kept[0], deps)):
        kept = book.windings[name] = (deps, _winding_loads(winding, rating, map_, demand.amps))
    return kept[1]


def _winding_loads(winding: Transformed, rating: float, map_: Through, demand: Currents) -> list[WindingLoad]:
    if winding.connection in _SHARED or _is_zigzag(winding):
        return []
    amps = map_.winding_amps(demand)
    limits = loading_amps(winding.cores, rating)
    halves = {c for c, core in enumerate(winding.cores) if len(core.secondaries) == 2}
    return [
        WindingLoad(w.start, w.end, w.volts, abs(i), limit, _part(winding, w.core in halves))
        for w, i, limit in zip(map_.made, amps, limits, strict=True)
    ]


def _is_zigzag(winding: Transformed) -> bool:
    ends = (end for core in winding.cores for w in core.secondaries for end in (w.start, w.end))
    return any(end.conductor.startswith("zigzag") for end in ends)


def _part(winding: Transformed, half: bool) -> str:
    if winding.connection in ("open-delta", "open-wye"):
        unit = "the lighting unit" if half else "the power unit"
        return f"half of {unit}" if half else unit
    if half:
        return "one half of the winding"
    return "a winding" if len(winding.cores) > 1 else "the winding"


def worst_winding(book: LoadBook, name: str) -> WindingLoad | None:
    """The winding that is loaded most, as a share of what it may carry."""
    return max(winding_loads(book, name), key=lambda w: w.share, default=None)
