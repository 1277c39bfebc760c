"""What is derived from a text alone, remembered while it is in use: bounded, so that a long session does not grow.

Two generations: what is asked for moves to the young one; when that is full the old one is dropped with all that nobody
asked for meanwhile. What belongs to the models at hand is asked for often and stays.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Generic, TypeVar, TypeVarTuple

K = TypeVar("K")
V = TypeVar("V")
Ts = TypeVarTuple("Ts")

_LEAST = 64
_ABSENT: Any = object()


class Remembered(Generic[K, V]):
    """A bounded memo. It holds what is in use plus, at the most, as much again."""

    __slots__ = ("_most", "_old", "_young")

    def __init__(self) -> None:
        self._young: dict[K, V] = {}
        self._old: dict[K, V] = {}
        self._most = _LEAST

    def __len__(self) -> int:
        return len(self._young) + len(self._old)

    def expect(self, count: int) -> None:
        """So many entries will be in use at once."""
        self._most = max(self._most, count + count // 4 + _LEAST)

    def get(self, key: K, missing: V | None = None) -> V | None:
        """What is remembered under a key, or ``missing``."""
        found = self._young.get(key, _ABSENT)
        if found is _ABSENT:
            found = self._old.pop(key, _ABSENT)
            if found is _ABSENT:
                return missing
            self.put(key, found)
        return found  # type: ignore[no-any-return]

    def clear(self) -> None:
        """Forget everything."""
        self._young, self._old = {}, {}

    def put(self, key: K, value: V) -> None:
        """Remember a value."""
        if len(self._young) >= self._most:
            self._old = self._young
            self._young = {}
        self._young[key] = value


class OfBlocks(Generic[*Ts, V]):
    """A function of a block's lines (and little else) with a memo for as many blocks as are at hand.

    ``made`` counts the calls that the memo could not answer.
    """

    def __init__(self, function: Callable[[*Ts], V]) -> None:
        self._function = function
        self.memo: Remembered[tuple[*Ts], V] = of_blocks()
        self.made = 0
        self.__doc__ = function.__doc__

    def __call__(self, *key: *Ts) -> V:
        found = self.memo.get(key, _ABSENT)
        if found is _ABSENT:
            found = self._function(*key)
            self.made += 1
            self.memo.put(key, found)
        return found  # type: ignore[return-value]


def of_texts(count: int) -> Remembered[Any, Any]:
    """A memo of what stretches of lines have in common, so many of them; see `forget_texts`."""
    made: Remembered[Any, Any] = Remembered()
    made.expect(count)
    _of_texts.append(made)
    return made


def forget_texts() -> None:
    """Nothing will be read for now: what only makes reading faster is let go of. Statements stay."""
    for memo in _of_texts:
        memo.clear()


_of_texts: list[Remembered[Any, Any]] = []
_memos: list[Remembered[Any, Any]] = []
_expected = 0


def of_blocks() -> Remembered[Any, Any]:
    """A memo that grows with the number of blocks at hand."""
    made: Remembered[Any, Any] = Remembered()
    made.expect(_expected)
    _memos.append(made)
    return made


def expect_blocks(count: int) -> None:
    """So many blocks are at hand at once: what is derived from them is kept."""
    global _expected
    if count > _expected:
        _expected = count
        for memo in _memos:
            memo.expect(count)
