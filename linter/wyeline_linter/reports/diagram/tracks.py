"""At which height each line between two levels goes sideways, where it cannot run straight down."""

from __future__ import annotations

from typing import NamedTuple


class Jog(NamedTuple):
    """A segment that arrives at ``top`` and leaves at ``bottom`` (millimetres from the left)."""

    segment: int
    top: float
    bottom: float


def tracks_of(jogs: list[Jog]) -> dict[int, int]:
    """By segment, the number of its track from above. No two jogs whose stretches meet share one.

    Of two jogs to the right that overlap, the right one must leave its column before the left one passes below it: it
    lies higher; mirrored for jogs to the left. Lines that keep their order then never cross here.
    """
    rightwards = sorted((j for j in jogs if j.bottom > j.top), key=lambda j: (-j.top, -j.bottom, j.segment))
    leftwards = sorted((j for j in jogs if j.bottom <= j.top), key=lambda j: (j.top, j.bottom, j.segment))
    track: dict[int, int] = {}
    placed: list[tuple[Jog, int]] = []
    for jog in [*rightwards, *leftwards]:
        low, high = min(jog.top, jog.bottom), max(jog.top, jog.bottom)
        beside = [
            t
            for other, t in placed
            if min(other.top, other.bottom) <= high + 1 and low <= max(other.top, other.bottom) + 1
        ]
        number = max(beside, default=-1) + 1
        track[jog.segment] = number
        placed.append((jog, number))
    return track
