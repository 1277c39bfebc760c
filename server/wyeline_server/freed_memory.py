"""Memory that is free again goes back to the system.

A study needs much for a moment. The C library of most Linux systems keeps what was freed, in pieces, so that a long
session would hold the most that any of its studies ever took.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import cache


def give_back() -> None:
    """Hand back what is free. Does nothing where the C library has no such function; takes milliseconds."""
    trim = _trim()
    if trim is not None:
        trim(0)


@cache
def _trim() -> Callable[[int], int] | None:
    if not sys.platform.startswith("linux"):
        return None
    import ctypes

    try:
        found: Callable[[int], int] = ctypes.CDLL(None).malloc_trim
    except (OSError, AttributeError):  # another C library than glibc
        return None
    return found
