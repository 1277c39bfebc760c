"""What changed since an earlier issue, as a report shows it: a list, and a mark beside what was written otherwise."""

from __future__ import annotations

from typing import NamedTuple

from wyeline_linter.reports.columns import Table, TableKind, words

MARK = "▲"
"""Stands beside a row or an element that was written otherwise in the earlier issue."""


class Revised(NamedTuple):
    """One change in words, with its kind (``added``), its subject, and file and line of the newer version."""

    kind: str
    subject: str
    words: str
    place: str


class Since(NamedTuple):
    """An earlier issue: what it is called (``issue A of 2026-03-02``, ``revision A``, or where it was read from), the
    changes, and what rows are marked by (``about`` of a row: an element that is not written as it was)."""

    issue: str
    changes: tuple[Revised, ...]
    marked: frozenset[str]

    @property
    def told(self) -> str:
        """What the mark means, for the head of a page and the strip of a drawing."""
        count = f"{len(self.changes)} change{'s' if len(self.changes) != 1 else ''}"
        return f"{MARK} marks what is written otherwise than in {self.issue}: {count}."


CHANGES = TableKind(
    "changes",
    "Changes since the last issue",
    "What is written otherwise than in the issue that this report is held against. Figures that follow from it are "
    "told by `wyeline compare`.",
    (
        words("kind", "Kind", "added, removed, re-fed, re-rated, changed, moved or renamed.", "both issues"),
        words("subject", "About", "The equipment, feeder or board it is about.", "both issues"),
        words("change", "Change", "What changed, in words.", "both issues", wide=True),
        words("place", "Place", "File and line, where it is still written.", "derived"),
    ),
)


def change_list(since: Since) -> Table:
    """The list of changes, in the order of the files."""
    table = Table(CHANGES)
    for change in since.changes:
        values = {"kind": change.kind, "subject": change.subject, "change": change.words, "place": change.place}
        table.add(values, "", change.place)
    return table
