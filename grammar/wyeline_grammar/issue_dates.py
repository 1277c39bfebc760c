"""The date of an issue: a day of the calendar, written as ISO 8601 does."""

from __future__ import annotations

from wyeline_grammar.problems import Problem
from wyeline_grammar.syntax import Token

UNREAD = "?"
"""The date of an issue where what is written cannot be read as a day; sorts behind all days."""


def is_a_day(text: str) -> bool:
    """Whether a date is a day of the calendar, of a year in which somebody draws."""
    from datetime import date  # only a project with issues needs it

    try:
        return 1900 <= date.fromisoformat(text).year < 2200
    except ValueError:
        return False


def no_such_day(token: Token, row: int) -> Problem:
    return Problem(
        "value-not-understood",
        f"`{token.text}` is no day",
        row,
        token.start,
        token.end,
        found=token.text,
        needed="a day as year, month and day, such as 2026-03-02",
        why="The date of an issue says which of two drawings is the newer one.",
        change="Write the day of the issue.",
    )
