"""Vector groups by name: which exist, what they say, and which one a slip was meant to be (IEC 60076-1, clause 7)."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import NamedTuple

WORDS = ("auto", "open-delta", "open-wye", "zigzag", "buck-boost")
"""Connections that are no vector group."""

_EVEN = range(0, 12, 2)
_ODD = range(1, 12, 2)
_CLOCKS = {
    ("Y", "y"): _EVEN,
    ("D", "d"): _EVEN,
    ("D", "z"): _EVEN,
    ("Y", "d"): _ODD,
    ("D", "y"): _ODD,
    ("Y", "z"): _ODD,
}
_NAME = re.compile(r"(?P<primary>Y|D)(?P<pn>N?)(?P<secondary>y|d|z)(?P<sn>n?)(?P<clock>\d{1,2})")


class VectorGroup(NamedTuple):
    """A vector group: winding letters, whether each star point is brought out, and the clock number."""

    primary: str
    primary_neutral: bool
    secondary: str
    secondary_neutral: bool
    clock: int

    @property
    def name(self) -> str:
        first = self.primary + ("N" if self.primary_neutral else "")
        return f"{first}{self.secondary}{'n' if self.secondary_neutral else ''}{self.clock}"


def all_groups() -> tuple[VectorGroup, ...]:
    """Every group that can be wound, in the order of the families and clock numbers."""
    return tuple(
        VectorGroup(primary, pn, secondary, sn, clock)
        for (primary, secondary), clocks in _CLOCKS.items()
        for pn in ((False, True) if primary == "Y" else (False,))
        for sn in ((True, False) if secondary != "d" else (False,))
        for clock in clocks
    )


@lru_cache(maxsize=512)
def read_group(name: str) -> VectorGroup | None:
    """The group of this name, or None where none exists."""
    match = _NAME.fullmatch(name)
    if match is None:
        return None
    group = VectorGroup(match["primary"], bool(match["pn"]), match["secondary"], bool(match["sn"]), int(match["clock"]))
    if group.clock not in _CLOCKS[group.primary, group.secondary]:
        return None
    if (group.primary == "D" and group.primary_neutral) or (group.secondary == "d" and group.secondary_neutral):
        return None
    return group


@lru_cache(maxsize=512)
def nearest_names(name: str) -> tuple[str, ...]:
    """Up to three spellings that exist: the neighbours on the clock where the letters exist, else the most alike."""
    match = _NAME.fullmatch(name)
    if match is not None:
        letters = name[: match.start("clock")]
        hours = [(int(match["clock"]) + step) % 12 for step in (1, -1)]
        near = tuple(f"{letters}{hour}" for hour in sorted(hours) if read_group(f"{letters}{hour}"))
        if near:
            return near
    from difflib import get_close_matches

    known = {group.name.lower(): group.name for group in all_groups()} | {word: word for word in WORDS}
    return tuple(known[found] for found in get_close_matches(name.lower(), known, n=3, cutoff=0.5))
