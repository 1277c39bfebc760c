"""A comparison for programs: one versioned JSON object in SI base units, described by `wyeline schema compare`."""

from __future__ import annotations

import json as writer
from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING, Literal

from wyeline_linter.outputs.json_output import finding_object
from wyeline_linter.outputs.text import CAUTION, shown_path
from wyeline_linter.review.comparison import Comparison
from wyeline_linter.review.consequences import Consequence
from wyeline_linter.review.measures import Measured
from wyeline_linter.review.physical import Change

if TYPE_CHECKING:
    from wyeline_linter.outputs.shapes import (
        AddedFigure,
        ChangeEntry,
        ComparedFigure,
        CompareReport,
        ConsequenceEntry,
        ModelComparison,
    )

VERSION = 1


def json(found: Sequence[Comparison]) -> str:
    """Every model as one object."""
    report: CompareReport = {"version": VERSION, "caution": CAUTION, "models": [_model(c) for c in found]}
    return writer.dumps(report, indent=2, ensure_ascii=False)


def _model(comparison: Comparison) -> ModelComparison:
    ids = {id(change): i for i, change in enumerate(comparison.changes, 1)}
    return {
        "name": comparison.model,
        "old": comparison.old_label,
        "new": comparison.new_label,
        "scenario": comparison.scenario,
        "changes": [_change(change, ids) for change in comparison.changes],
        "worse": [_consequence(c, ids) for c in _each(comparison.worse)],
        "better": [_consequence(c, ids) for c in _each(comparison.better)],
        "moved": [_consequence(c, ids) for c in comparison.moved],
        "added": [{"subject": one.subject, "figures": [_added(m) for m in one.figures]} for one in comparison.fresh],
        "sheets": [{"name": sheet.name, "of": list(sheet.of)} for sheet in comparison.sheets],
        "unknown_figures": comparison.gaps,
        "bounded": comparison.bounded,
    }


def _each(found: Iterable[Consequence]) -> Iterator[Consequence]:
    """Findings one by one, also those that people read in one entry."""
    for one in found:
        yield from (one, *one.alike)


def _added(measured: Measured) -> AddedFigure:
    used = measured.used
    return {
        "name": measured.name,
        "unit": measured.unit,
        "value": measured.value,
        "limit": used[1].amount if used is not None else None,
        "unknown": list(measured.unknown),
    }


def _change(change: Change, ids: dict[int, int]) -> ChangeEntry:
    place = change.place
    return {
        "id": ids[id(change)],
        "kind": change.kind.value,
        "sort": change.sort,
        "subject": change.subject,
        "words": change.words,
        "path": shown_path(place[0]) if place else None,
        "line": place[1] if place else None,
    }


def _consequence(one: Consequence, ids: dict[int, int]) -> ConsequenceEntry:
    return {
        "kind": one.kind.value,
        "gravity": one.gravity.word,
        "subject": one.subject,
        "also": [] if one.alike else one.others,
        "words": one.words,
        "rule": one.finding.rule if one.finding is not None else None,
        "finding": finding_object(one.finding) if one.finding is not None else None,
        "figure": _figure(one),
        "because": [ids[id(change)] for change in one.because],
        "how": _how(one),
    }


def _how(one: Consequence) -> Literal["undoes", "part", "together", "unexplained"]:
    if not one.because:
        return "unexplained"
    return "part" if one.contributes else "together" if one.together else "undoes"


def _figure(one: Consequence) -> ComparedFigure | None:
    before, after = one.measured
    measured = after or before
    if measured is None:
        return None
    over = after.over if after is not None else None
    return {
        "name": measured.name,
        "unit": measured.unit,
        "old": before.value if before is not None else None,
        "new": after.value if after is not None else None,
        "limit": over.amount if over is not None else None,
    }
