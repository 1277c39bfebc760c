"""Why figures are not known: the reasons of several as one list."""

from __future__ import annotations

import re
from collections.abc import Iterable

MOST_REASONS = 8
"""Reasons that an unknown figure carries at the most; a large board with no loads written would carry hundreds."""
_MORE = re.compile(r"and (\d+) more")


def merge_reasons(*groups: Iterable[str], most: int = MOST_REASONS) -> tuple[str, ...]:
    """Reasons of several unknowns as one list: each once, in order, ``most`` at the most, the rest counted."""
    seen: dict[str, None] = {}
    more = 0
    for group in groups:
        for reason in group:
            counted = _MORE.fullmatch(reason)
            if counted is not None:
                more += int(counted[1])
            else:
                seen[reason] = None
    kept = list(seen)
    if len(kept) <= most and not more:
        return tuple(kept)
    more += max(0, len(kept) - most)
    return (*kept[:most], f"and {more} more")
