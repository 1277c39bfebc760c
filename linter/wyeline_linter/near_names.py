"""Names that refer, and the names that a slip of the pen may have meant."""

from __future__ import annotations

from collections.abc import Iterable

from wyeline_grammar.linking import Model, folded_name
from wyeline_grammar.model import Fact

PARTNER_KEYS = ("standby-of", "not-with")
"""Keys of equipment whose values name other equipment."""


def names_in(fact: Fact) -> tuple[str, ...]:
    """The names that a key's value lists."""
    data = fact.value.data
    if isinstance(data, tuple):
        return tuple(str(name) for name in data)
    return (data,) if isinstance(data, str) else (fact.value.text,)


_FEW_NAMES = 2000


class NearNames:
    """Near names of a model, looked up once a name and kept while no name comes or goes that could alter them."""

    def __init__(self, model: Model) -> None:
        self._model = model
        self._found: dict[str, list[str]] = {}
        self._few = True

    def of(self, name: str) -> list[str]:
        """The names that a slip of the pen may have meant, nearest first, three at the most."""
        found = self._found.get(name)
        if found is None:
            found = self._found[name] = near_declared(name, self._model)
        return found

    def changed(self, names: Iterable[str]) -> None:
        """These names came, went, or stand for another sort of thing."""
        before, self._few = self._few, len(self._model.declared) <= _FEW_NAMES
        if self._few or before:
            self._found.clear()  # a small model is searched for names that are less near, too
            return
        for changed in names:
            for name in [n for n in self._found if _may_be_near(n, changed)]:
                del self._found[name]


def _may_be_near(one: str, other: str) -> bool:
    """Whether two names may be one slip apart, or differ in case or marks only: never False where they are."""
    if abs(len(one) - len(other)) > 1:
        return folded_name(one) == folded_name(other)
    least = min(len(one), len(other))
    head = next((i for i in range(least) if one[i] != other[i]), least)
    tail = next((i for i in range(least - head) if one[-1 - i] != other[-1 - i]), least - head)
    return max(len(one), len(other)) - head - tail <= 2 or folded_name(one) == folded_name(other)


def near_declared(name: str, model: Model) -> list[str]:
    """Declared names that a slip of the pen may have meant, nearest first, three at the most.

    One letter too many, too few, wrong or swapped is looked up; only a small model is searched for more.
    """
    declared = model.declared
    found = [n for n in sorted(model.folded.get(folded_name(name), ())) if n != name]
    if not found and len(name) <= _LONGEST_LOOKED_UP:
        letters = sorted({c for n in (name, name.swapcase()) for c in n} | set(_NAME_LETTERS))
        halves = [(name[:i], name[i:]) for i in range(len(name) + 1)]
        tries = {a + b[1:] for a, b in halves if b} | {a + b[1] + b[0] + b[2:] for a, b in halves if len(b) > 1}
        tries |= {a + c + b[1:] for a, b in halves for c in letters if b}
        tries |= {a + c + b for a, b in halves for c in letters}
        found = sorted(t for t in tries if t in declared and t != name)
    if not found and len(declared) <= _FEW_NAMES:
        found = near(name, declared)
    return found[:3]


_LONGEST_LOOKED_UP = 80
"""A longer name is no slip of one letter, and trying them all grows with the square of its length."""
_NAME_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_."


def near(name: str, names: Iterable[str]) -> list[str]:
    """Up to three names that are spelt much like ``name``; those that differ only in case come first."""
    import difflib

    folded = folded_name(name)
    known = list(names)
    same = [n for n in known if folded_name(n) == folded and n != name]
    if len(name) > _LONGEST_LOOKED_UP:
        return same[:3]
    return [*same, *(n for n in difflib.get_close_matches(name, known, 3, 0.6) if n not in same and n != name)][:3]


def free_name(name: str, model: Model) -> str:
    """A name like this one that nothing bears yet: ``LP-1`` gives ``LP-1-2``."""
    number = 2
    while f"{name}-{number}" in model.declared:
        number += 1
    return f"{name}-{number}"
