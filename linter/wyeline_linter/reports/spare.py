"""What a board can still take: held against its own main and bus, and against what stands ahead of it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any, NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_linter.reports.columns import number
from wyeline_linter.reports.subject import Subject

_PASSED_ON = frozenset("switchgear switchboard mcc panel busway transfer disconnect junction meter".split())
"""What passes the current of a board on to it whole, so that its own ratings and supply bound the board too."""
_OWN = {"main": "main", "incomer": "incomer", "bus": "bus", "rating": "rating"}


class Bound(NamedTuple):
    """A rating in A, what it carries on its fullest leg in A, and what it is the rating of."""

    limit_a: float
    carried_a: float
    of: str

    @property
    def left_a(self) -> float:
        return self.limit_a - self.carried_a


def spare_words(subject: Subject, equipment: Equipment) -> str:
    """The note of a schedule; empty where no rating or no load is known.

    The bound with the least left counts: the board's main and bus, the device of the feeder that supplies it, and
    where that has none (lugs, the secondary of a transformer) what lies ahead of it up to the next device.
    """
    bounds = list(_bounds(subject, equipment))
    if not bounds:
        return ""
    least = min(bounds, key=lambda b: b.left_a)
    of = f"{number(least.limit_a, 0)} A ({least.of})"
    if least.left_a < 0:
        return f"No spare: {number(-least.left_a, 0)} A above {of} on the most loaded leg."
    return f"Spare: {number(least.left_a, 0)} A of {of} on the most loaded leg."


def _bounds(subject: Subject, board: Equipment) -> Iterator[Bound]:
    yield from _own(subject, board, "its")
    passed = {board.name}
    feeder = subject.view.network.supply.get(board.name)
    while feeder is not None:
        rating, carried = feeder.body.number("rating"), _sizing_a(subject, feeder.target.name)
        if rating and carried is not None:
            yield Bound(rating, carried, f"the device of `{feeder.key}`")
        source = subject.view.equipment(feeder.source.name)
        if rating or source is None or source.name in passed:
            return
        passed.add(source.name)
        if source.kind == "transformer":
            yield from _windings(subject, source.name)
            return
        if source.kind not in _PASSED_ON:
            return
        yield from _own(subject, source, f"`{source.name}`:")
        feeder = subject.view.network.supply.get(source.name)


def _own(subject: Subject, equipment: Equipment, whose: str) -> Iterator[Bound]:
    carried = _sizing_a(subject, equipment.name)
    for word, said in _OWN.items():
        limit = equipment.body.number(word)
        if limit and carried is not None:
            yield Bound(limit, carried, f"{whose} {said}")


def _windings(subject: Subject, name: str) -> Iterator[Bound]:
    """A transformer is held against demand, without what a code adds for continuous load."""
    load: dict[str, Any] = subject.of(name).get("load") or {}
    for winding in load.get("windings", ()):
        if winding["share"] is not None:
            yield Bound(winding["limit_a"], winding["amps"], f"demand on {winding['part']} of `{name}`")


def _sizing_a(subject: Subject, name: str) -> float | None:
    load: dict[str, Any] = subject.of(name).get("load") or {}
    amount = load.get("sizing") or load.get("demand")
    if amount is None:
        return None
    return max((a for leg, a in amount["amps"].items() if leg not in ("N", "M")), default=None)
