"""Loads that never run together: of those below one place, only the most that can run at once counts there.

``standby-of`` names what a unit replaces, ``not-with`` what it excludes. Both are judged at the place asked: a standby
pump on a board of its own loads that board in full, and adds nothing where the pumps it replaces are below as well.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_linter.near_names import PARTNER_KEYS, names_in

MOST_RIVALS = 20
"""A group larger than this is counted in full: which of it can run at once is no longer worked out."""


class Relations(NamedTuple):
    """``stands_by``: unit -> those it replaces; ``excludes``: load -> those it never runs with, both ways."""

    stands_by: dict[str, tuple[str, ...]]
    excludes: dict[str, frozenset[str]]

    def concerns(self, name: str) -> bool:
        return name in self.stands_by or name in self.excludes or any(name in of for of in self.stands_by.values())


def relates(equipment: Equipment | None) -> bool:
    """Whether a statement says with what it never runs, or what it stands by for."""
    return equipment is not None and any(key in equipment.body.facts for key in PARTNER_KEYS)


def relations_of(equipment: Iterable[Equipment]) -> Relations:
    """What the statements say about each other."""
    stands_by: dict[str, tuple[str, ...]] = {}
    excludes: dict[str, set[str]] = {}
    for item in equipment:
        facts = item.body.facts
        if "standby-of" in facts:
            stands_by[item.name] = tuple(n for n in names_in(facts["standby-of"]) if n != item.name)
        if "not-with" in facts:
            for other in names_in(facts["not-with"]):
                if other != item.name:
                    excludes.setdefault(item.name, set()).add(other)
                    excludes.setdefault(other, set()).add(item.name)
    return Relations(stands_by, {name: frozenset(others) for name, others in excludes.items()})


def left_out(held: Mapping[str, float], relations: Relations, running: frozenset[str]) -> frozenset[str]:
    """Which of the loads below a place do not count there.

    ``held`` gives the VA of those that have relations; ``running`` are all names of the model that are in service, so
    that a unit whose partner is out of service counts.
    """
    if not held:
        return frozenset()
    out: set[str] = set()
    for name, replaces in sorted(relations.stands_by.items()):
        if name not in held:
            continue
        mains = [main for main in replaces if main in running]
        below = [main for main in mains if main in held and main not in out]
        if not mains or len(below) < len(mains):
            continue
        # All that it replaces are below: it counts only in place of a smaller one.
        smallest = min(below, key=lambda main: (held[main], main))
        out.add(smallest if held[name] > held[smallest] else name)
    weights = {name: va for name, va in held.items() if name in relations.excludes and name not in out}
    for group in _groups(weights, relations.excludes):
        out.update(set(group) - _most(group, weights, relations.excludes))
    return frozenset(out)


def _groups(weights: Mapping[str, float], excludes: Mapping[str, frozenset[str]]) -> list[list[str]]:
    left, groups = set(weights), []
    for start in sorted(weights):
        if start not in left:
            continue
        group, pending = [], [start]
        left.discard(start)
        while pending:
            name = pending.pop()
            group.append(name)
            for other in sorted(excludes[name] & left):
                left.discard(other)
                pending.append(other)
        groups.append(sorted(group))
    return groups


def _most(group: list[str], weights: Mapping[str, float], excludes: Mapping[str, frozenset[str]]) -> set[str]:
    """The loads of a group that can run at once and together draw the most."""
    if len(group) > MOST_RIVALS:
        return set(group)
    best: tuple[float, set[str]] = (-1.0, set())

    def choose(rest: list[str], chosen: set[str], total: float) -> None:
        nonlocal best
        if not rest:
            if total > best[0]:
                best = (total, chosen)
            return
        first, *others = rest
        choose([n for n in others if n not in excludes[first]], chosen | {first}, total + weights[first])
        if excludes[first] & set(others):
            choose(others, chosen, total)

    choose(group, set(), 0.0)
    return best[1]
