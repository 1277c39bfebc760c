"""The listed word that a misspelt one is nearest to."""

from __future__ import annotations

from functools import cache, lru_cache

from wyeline_grammar.vocabulary import ACTIONS, FLAGS, KEYS, KINDS, SMALL_WORDS, STATEMENTS, word_kind


@cache
def _deletions() -> dict[str, tuple[str, ...]]:
    """Every listed word under all its spellings with up to two letters left out."""
    found: dict[str, list[str]] = {}
    for word in sorted(KEYS | FLAGS | KINDS | ACTIONS | SMALL_WORDS | STATEMENTS):
        for short in _shortened(word):
            found.setdefault(short, []).append(word)
    return {short: tuple(words) for short, words in found.items()}


def _shortened(word: str) -> set[str]:
    once = {word[:i] + word[i + 1 :] for i in range(len(word))}
    return {word, *once, *(short[:i] + short[i + 1 :] for short in once for i in range(len(short)))}


def distance(a: str, b: str) -> int:
    """How many letters must be put in, left out, changed or swapped with their neighbour."""
    before: list[int] = []
    row = list(range(len(b) + 1))
    for i, x in enumerate(a, 1):
        earlier, before, row = before, row, [i]
        for j, y in enumerate(b, 1):
            cost = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (x != y))
            if i > 1 and j > 1 and x == b[j - 2] and a[i - 2] == y:
                cost = min(cost, earlier[j - 2] + 1)
            row.append(cost)
    return row[-1]


_DENIAL = "not"
"""No slip of `note`: what is behind it would come to say the opposite."""


@lru_cache(maxsize=4096)
def nearest(word: str, expected: frozenset[str]) -> tuple[tuple[int, str], ...]:
    """Listed words that can stand here and differ by a letter or two, the nearest first, at the most four."""
    word = word.lower()
    if not 2 <= len(word) <= 30 or word == _DENIAL:
        return ()
    index = _deletions()
    candidates = {candidate for short in _shortened(word.replace("_", "-")) for candidate in index.get(short, ())}
    found = []
    for candidate in candidates:
        if word_kind(candidate) in expected and max(len(word), len(candidate)) > 3:
            steps = distance(word, candidate)
            if 0 < steps <= (1 if len(candidate) < 5 else 2):
                found.append((steps, candidate))
    return tuple(sorted(found)[:4])
