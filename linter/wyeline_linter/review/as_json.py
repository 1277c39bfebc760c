"""A comparison for programs: one JSON object, versioned, amounts in SI base units.

``{version, caution, models}``; each model has ``name``, ``old``, ``new`` (labels), ``scenario``, ``changes``, ``worse``
(sorted by gravity), ``better``, ``moved``, ``added`` (``subject`` and ``figures``: ``name``, ``unit``, ``value``,
``limit``, ``unknown``), ``sheets``, ``unknown_figures`` and ``bounded`` (causes were looked for in
groups only). A change has ``id``, ``kind``, ``sort``, ``subject``, ``words``, ``path`` and ``line`` (from 1). A
consequence has ``kind``, ``gravity``, ``subject``, ``also`` (others alike), ``words``, ``rule``, ``finding`` (as in
``check --format json``), ``figure`` (``name``, ``unit``, ``old``, ``new``, ``limit``), ``because`` (ids of changes) and
``how``: ``undoes`` (undoing any one of them undoes it), ``part`` (each has a part in it), ``together`` (only undoing
all does) or ``unexplained``.
"""

from __future__ import annotations

import json as writer
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from wyeline_linter.outputs.json_output import finding_object
from wyeline_linter.outputs.text import CAUTION, shown_path
from wyeline_linter.review.comparison import Comparison
from wyeline_linter.review.consequences import Consequence
from wyeline_linter.review.measures import Measured
from wyeline_linter.review.physical import Change

VERSION = 1


def json(found: Sequence[Comparison]) -> str:
    """Every model as one object."""
    report = {"version": VERSION, "caution": CAUTION, "models": [_model(c) for c in found]}
    return writer.dumps(report, indent=2, ensure_ascii=False)


def _model(comparison: Comparison) -> dict[str, Any]:
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


def _added(measured: Measured) -> dict[str, Any]:
    used = measured.used
    return {
        "name": measured.name,
        "unit": measured.unit,
        "value": measured.value,
        "limit": used[1].amount if used is not None else None,
        "unknown": list(measured.unknown),
    }


def _change(change: Change, ids: dict[int, int]) -> dict[str, Any]:
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


def _consequence(one: Consequence, ids: dict[int, int]) -> dict[str, Any]:
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


def _how(one: Consequence) -> str:
    if not one.because:
        return "unexplained"
    return "part" if one.contributes else "together" if one.together else "undoes"


def _figure(one: Consequence) -> dict[str, Any] | None:
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
