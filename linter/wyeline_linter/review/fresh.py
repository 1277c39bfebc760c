"""What was added, with the figures that it comes with: nothing was there before to hold them against."""

from __future__ import annotations

from typing import NamedTuple

from wyeline_linter.figures import ordered_feeders, ordered_names
from wyeline_linter.review.consequences import headroom
from wyeline_linter.review.measures import CURRENT, DROP, FAULT, IN_WORST, LOAD, SMALLEST, VOLTAGE, Measured, written
from wyeline_linter.review.snapshots import Snapshot

_TOLD = (LOAD, CURRENT, FAULT, SMALLEST, DROP, *(figure + IN_WORST for figure in (LOAD, FAULT, SMALLEST)))


class Fresh(NamedTuple):
    """A piece of equipment or a feeder that only the newer version has, and its figures, unknown ones too."""

    subject: str
    figures: tuple[Measured, ...]

    @property
    def words(self) -> str:
        return f"{self.subject}: {'; '.join(map(_words, self.figures))}"


def fresh(old: Snapshot, new: Snapshot) -> list[Fresh]:
    """In the order of the files; nothing where there was no model before: all of it is new, and a report tells it."""
    before = old.analysis.model
    if not before.equipment:
        return []
    view = new.analysis.view
    names = [n for n in ordered_names(view) if n not in before.equipment]
    ends = {(f.source.text, f.target.text) for f in before.feeders.values()}
    feeders = [f for f in ordered_feeders(view) if f.key not in before.feeders]
    names += [f.key for f in feeders if (f.source.text, f.target.text) not in ends]
    found = []
    for name in names:
        voltage = new.measures.get((name, VOLTAGE))
        figures = [m for told in _TOLD if (m := new.measures.get((name, told))) is not None]
        if voltage is not None and voltage.value is None:
            figures.insert(0, voltage)
        figures = [m for m in figures if m.value != 0 and (m.state or not m.name.endswith(IN_WORST))]
        if figures:
            found.append(Fresh(name, tuple(figures)))
    return found


def _words(measured: Measured) -> str:
    if measured.value is None:
        return f"{measured.name} unknown: {', '.join(measured.unknown) or 'no reason is given'}"
    amount = written(measured.value, measured.unit) if isinstance(measured.value, float) else measured.value
    state = f", {measured.state}" if measured.state else ""
    return f"{measured.name} {amount}{state}{headroom(measured)}"
