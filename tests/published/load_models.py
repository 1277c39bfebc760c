"""Models in memory for the tests of loads."""

from __future__ import annotations

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.view import View

ROOT = "/m/model.wye"


def analysed(text: str) -> Analysis:
    """A model of one file, analysed."""
    return Analysis(ROOT, Files(lambda _: "wye 1\n" + text), "/m")


def viewed(text: str) -> View:
    """What its rules look at."""
    return analysed(text).view


def amps(view: View, name: str, what: str = "connected") -> tuple[float, ...]:
    """Amperes on A, B, C, N at a piece of equipment."""
    amount = getattr(view.loads.counted(name), what)
    return tuple(abs(i) for i in amount.amps)
