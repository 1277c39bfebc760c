"""Figures whose change another figure tells already."""

from __future__ import annotations

from wyeline_linter.review.measures import IN_WORST, LOAD, NEUTRAL, SIZING
from wyeline_linter.review.snapshots import Snapshot

_WITH_DEMAND = {SIZING: 0.01, NEUTRAL: 0.1}
"""Figures that go with the demand load, and by which share of it they have to part from it to be told: below that the
demand load says the same (common practice, no source)."""
_LITTLE_A = 5.0
"""A neutral current that changes by less is not told: it warms no wire."""


def told_already(key: tuple[str, str], old: Snapshot, new: Snapshot) -> bool:
    """Whether the change of a figure (subject and name) says nothing that another does not say."""
    return _as_normal(key, old, new) or _as_demand(key, old, new)


def _as_normal(key: tuple[str, str], old: Snapshot, new: Snapshot) -> bool:
    """Whether the worst of all switch states is the normal figure in both versions: that is told already."""
    figure = key[1].removesuffix(IN_WORST)
    if figure == key[1]:
        return False
    worst = (s.measures.get(key) for s in (old, new))
    return all(one is None or not one.state for one in worst)


def _as_demand(key: tuple[str, str], old: Snapshot, new: Snapshot) -> bool:
    """Whether a figure moved as the demand load did, which is told, or by so little that it does not matter."""
    subject, name = key
    part = _WITH_DEMAND.get(name)
    if part is None:
        return False
    was, now, demand_was, demand_now = (
        measured.value if measured is not None else None
        for measured in (s.measures.get((subject, figure)) for figure in (name, LOAD) for s in (old, new))
    )
    if not (isinstance(was, float) and isinstance(now, float)):
        return True  # what came, went or is unknown is told by its demand
    if name == NEUTRAL and abs(now - was) < _LITTLE_A:
        return True
    if not (isinstance(demand_was, float) and isinstance(demand_now, float)) or not demand_was or not was:
        return False
    return abs(now / was - demand_now / demand_was) < part
