"""What is derived from a text alone, remembered while it is in use: bounded, so that a long session does not grow.

Two generations: what is asked for moves to the young one; when that is full the old one is dropped with all that nobody
asked for meanwhile. What belongs to the models at hand is asked for often and stays.
"""

from __future__ import annotations

from typing import Generic, TypeVar

K = TypeVar("K")
V = TypeVar("V")

_LEAST = 64


class Remembered(Generic[K, V]):
    """A bounded memo. It holds what is in use plus, at the most, as much again."""

    __slots__ = ("_most", "_old", "_young")

    def __init__(self) -> None:
        self._young: dict[K, V] = {}
        self._old: dict[K, V] = {}
        self._most = _LEAST

    def expect(self, count: int) -> None:
        """So many entries will be in use at once."""
        self._most = max(self._most, count + _LEAST)

    def get(self, key: K) -> V | None:
        """What is remembered under a key, or None."""
        found = self._young.get(key)
        if found is None:
            found = self._old.pop(key, None)
            if found is not None:
                self.put(key, found)
        return found

    def put(self, key: K, value: V) -> None:
        """Remember a value."""
        if len(self._young) >= self._most:
            self._old = self._young
            self._young = {}
        self._young[key] = value
