"""A comparison for a terminal."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from wyeline_linter.outputs.text import CAUTION, shown_path
from wyeline_linter.review.comparison import Comparison
from wyeline_linter.review.consequences import Consequence, Kind
from wyeline_linter.review.ordering import also, by_cause, counted
from wyeline_linter.review.physical import Change

MOST_MOVED = 12
"""Figures that moved without crossing a limit, listed at the most."""


def text(found: Sequence[Comparison]) -> str:
    """Every model, one after the other, and the caution."""
    return "\n".join([*("\n".join(_one(c)) for c in found), CAUTION])


def _one(comparison: Comparison) -> Iterator[str]:
    yield title(comparison)
    if not comparison.changes and not comparison.worse:
        yield from ("", UNCHANGED, "")
        return
    yield ""
    yield f"What changed ({len(comparison.changes)})"
    for change in comparison.changes:
        yield f"  {change.kind.value:<8}  {change.words}{place(change)}"
    yield ""
    yield f"What follows ({counted(comparison.worse)})" if comparison.worse else NOTHING_FOLLOWS
    for one in comparison.worse:
        yield f"  {one.gravity.word:<8}  {one.words}{also(one)}"
        yield from (f"            {label}: {said}" for label, said in particulars(one))
    if comparison.better:
        yield ""
        yield f"What is better ({counted(comparison.better)})"
        yield from (f"  {one.kind.value:<8}  {one.words}{also(one)}" for one in comparison.better)
    if comparison.fresh:
        yield ""
        yield f"{FRESH} ({len(comparison.fresh)})"
        yield from (f"  {one.words}" for one in comparison.fresh[:MOST_MOVED])
        if len(comparison.fresh) > MOST_MOVED:
            yield f"  and {len(comparison.fresh) - MOST_MOVED} more (all of them with --format json)"
    if comparison.moved:
        yield ""
        yield f"{MOVED} ({len(comparison.moved)})"
        for cause, figures in by_cause(comparison.moved[:MOST_MOVED]).items():
            yield f"  {cause or UNEXPLAINED}:"
            yield from (f"    {one.headline}" for one in figures)
        if len(comparison.moved) > MOST_MOVED:
            yield f"  and {len(comparison.moved) - MOST_MOVED} more (all of them with --format json)"
    if comparison.sheets:
        yield ""
        yield "To issue anew"
        yield from (f"  {sheet.words}" for sheet in comparison.sheets)
    yield ""
    yield from (f"Note: {note}" for note in notes(comparison))
    yield summary(comparison)


FRESH = "What was added comes with"
MOVED = "Figures that moved without crossing a limit"
UNEXPLAINED = "by no single change"
UNCHANGED = "Nothing changed that a model says: no equipment, feeder, circuit or project fact."
NOTHING_FOLLOWS = "No rule newly fails and no limit is newly exceeded on the stated facts."


def title(comparison: Comparison) -> str:
    """The model and both versions."""
    name = f"{comparison.model}: " if comparison.model else ""
    scenario = f', in scenario "{comparison.scenario}"' if comparison.scenario else ""
    return f"{name}{comparison.old_label} -> {comparison.new_label}{scenario}"


def place(change: Change) -> str:
    """Where a change stands."""
    found = change.place
    return "" if found is None else f"  [{shown_path(found[0])}:{found[1]}]"


def particulars(one: Consequence) -> list[tuple[str, str]]:
    """What a finding says beside its message."""
    finding = one.finding
    if finding is None or one.kind is not Kind.FINDING:
        return []
    said = [("found", finding.found), ("needed", finding.needed), ("why", finding.why), ("change", finding.change)]
    return [(label, words) for label, words in said if words]


def notes(comparison: Comparison) -> Iterator[str]:
    """What a reader has to know about how far the comparison goes."""
    if comparison.bounded:
        yield "so much changed that causes were looked for in groups of changes only."
    unexplained = sum(1 for c in comparison.worse if not c.because)
    if unexplained and comparison.changes:
        yield f"for {unexplained} of these no change of the model's statements was found to be the cause."


def summary(comparison: Comparison) -> str:
    """One line of counts; what is unknown is counted, too."""
    counts: dict[str, int] = {}
    for one in comparison.worse:
        counts[one.gravity.word] = counts.get(one.gravity.word, 0) + one.count
    plural = {"error": "errors", "warning": "warnings", "gap": "gaps", "advice": "advice"}
    parts = [f"{n} new {word if n == 1 else plural[word]}" for word, n in counts.items()]
    gaps = f"; {comparison.gaps} figure{'s' if comparison.gaps != 1 else ''} unknown" if comparison.gaps else ""
    return f"{', '.join(parts) or 'no rule newly fails on the stated facts'}{gaps}"
