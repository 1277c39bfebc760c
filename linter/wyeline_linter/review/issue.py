"""What a report says of the changes since an earlier issue: those that a comparison tells, and what they mark."""

from __future__ import annotations

import os
from collections.abc import Iterator

from wyeline_linter.issues import current, in_words
from wyeline_linter.reports.since import Revised, Since
from wyeline_linter.reports.subject import about_circuit, about_equipment, about_feeder
from wyeline_linter.review.documents import HEAD, Version
from wyeline_linter.review.physical import Change, Kind, changes
from wyeline_linter.review.renames import renamed_reader, renames


def since(label: str, old: Version, new: Version) -> Since:
    """The changes from one version to another, under the newer names."""
    issue = _named(old)
    same = issue == _named(new)
    renamed = renames(old, new)
    if renamed:
        names = {r.old: r.new for r in renamed}
        old = Version(old.root, renamed_reader(old.reader(), names), old.workspace, old.configuration)
    found = [change for change in changes(old, new, renamed) if change.kind is not Kind.ISSUED]
    folder = os.path.dirname(new.root)
    return Since(
        label if same or not issue else issue,
        tuple(Revised(c.kind.value, c.subject, c.words, _place(c, folder, new)) for c in found),
        frozenset(about for change in found for about in _marks(change, new)),
    )


def _named(version: Version) -> str:
    """``issue A of 2026-03-02``, else ``revision A``; empty where the version says neither."""
    if not version.model.projects:
        return ""
    project = version.model.projects[0][1]
    found, revision = current(project), project.body.text("revision")
    return in_words(found) if found is not None else f"revision {revision}" if revision else ""


def _place(change: Change, folder: str, new: Version) -> str:
    place = change.place
    if place is None or (change.pieces and all(new.words(piece) is None for piece in change.pieces)):
        return ""
    return f"{os.path.relpath(place[0], folder).replace(os.sep, '/')}:{place[1]}"


def _marks(change: Change, new: Version) -> Iterator[str]:
    """The rows that tell of what a change is about, where it is still there."""
    if not change.pieces:  # a renaming: nothing else changed
        yield about_equipment(change.subject)
    for piece in change.pieces:
        name = piece.key.name
        if new.words(piece) is None:
            if piece.part != HEAD and piece.key in new.entries:  # a circuit is gone: its board is marked
                yield about_equipment(name)
        elif piece.key.sort == "feeder":
            yield about_feeder(name)
        elif piece.key.sort == "named":
            yield about_equipment(name) if piece.part == HEAD else about_circuit(name, piece.part)
