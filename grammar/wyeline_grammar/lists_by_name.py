"""Lists by name, most of which hold one thing. A list of one is never changed but replaced, so that twins share it."""

from __future__ import annotations

from itertools import compress
from typing import TypeVar

T = TypeVar("T")


def add_to(entries: dict[str, list[T]], name: str, item: T) -> int:
    """Put one more thing under a name; how many there are then."""
    there = entries.get(name)
    if there is None or len(there) < 2:
        there = entries[name] = [*(there or ()), item]
    else:
        there.append(item)
    return len(there)


def take_out(entries: dict[str, list[T]], name: str, item: T) -> None:
    """Take a thing, and whatever equals it, from under a name."""
    entries[name] = [other for other in entries.get(name, ()) if other != item]


def part_from(entries: dict[str, list[T]]) -> None:
    """Part the lists of a twin's copy from those of its model, as far as they may change."""
    several = map((1).__lt__, map(len, entries.values()))
    for name in list(compress(entries, several)):
        entries[name] = list(entries[name])
