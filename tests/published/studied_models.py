"""Models in memory for the tests of studies."""

from __future__ import annotations

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.studies.study import StateStudy

PURE_X = 1_000_000
"""An X/R by which a source or a transformer is as good as a pure reactance."""


def studied(text: str) -> StateStudy:
    """The studies of a model of one file, as normal."""
    return Analysis("/m/model.wye", Files(lambda _: "wye 1\n" + text), "/m").view.studies.normal
