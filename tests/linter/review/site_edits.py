"""Shipped sites with edits made to copies of them, and their comparison with what they were."""

from __future__ import annotations

import math
from pathlib import Path

from wyeline_grammar.sources import read_text
from wyeline_linter.review.comparison import Comparison, compare_versions
from wyeline_linter.review.consequences import Consequence, Kind
from wyeline_linter.review.documents import Version

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
SQRT3 = math.sqrt(3)

Edit = tuple[str, str, str]
"""File, words that go (once in the file, or all of them where they end in ``*``), words that come."""


def compared(site: str, root: str, *edits: Edit, scenario: str | None = None) -> Comparison:
    """A shipped site compared with itself after edits of its texts."""
    folder = EXAMPLES / site
    texts = {str(folder / path.name): read_text(str(path)) for path in folder.glob("*.wye")}
    edited = dict(texts)
    for file, old, new in edits:
        path = str(folder / file)
        if old.endswith("*"):
            edited[path] = edited[path].replace(old[:-1], new)
            continue
        assert edited[path].count(old) == 1, (file, old, edited[path].count(old))
        edited[path] = edited[path].replace(old, new)
    top = str(folder / root)
    return compare_versions(*(Version(top, source.__getitem__, str(folder)) for source in (texts, edited)), scenario)


def one(comparison: Comparison, subject: str, *words: str, kind: Kind | None = None) -> Consequence:
    """The one new consequence of a subject that says these words."""
    among = [*comparison.worse, *comparison.better, *comparison.moved]
    about = [c for c in among if subject in (c.subject, *c.others)]
    found = [c for c in about if all(w in c.headline for w in words) and kind in (None, c.kind)]
    listed = "\n".join(c.words for c in about)
    assert len(found) == 1, f"{len(found)} of {subject} say {words}; there is:\n{listed}"
    return found[0]


def because(consequence: Consequence) -> list[str]:
    """The causes in words."""
    return [change.words for change in consequence.because]


def three_phase_a(va: float, volts: float) -> float:
    """Amperes of a balanced three-phase load: S / (sqrt 3 U)."""
    return va / (SQRT3 * volts)


def new_value(consequence: Consequence) -> float:
    """The figure after the edit."""
    measured = consequence.measured[1]
    assert measured is not None and isinstance(measured.value, float)
    return measured.value


def old_value(consequence: Consequence) -> float:
    """The figure before the edit."""
    measured = consequence.measured[0]
    assert measured is not None and isinstance(measured.value, float)
    return measured.value
