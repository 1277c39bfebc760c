"""What has to be issued anew after a change: schedules, tables, diagram and labels."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import NamedTuple

from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.review.consequences import Consequence, Kind
from wyeline_linter.review.measures import DROP, FAULT, LOAD, SMALLEST
from wyeline_linter.review.physical import Change
from wyeline_linter.review.physical import Kind as Edit
from wyeline_linter.review.snapshots import Snapshot


class Sheet(NamedTuple):
    """A document to issue anew; ``of`` are the names that it is about, empty for one about the whole site."""

    name: str
    of: tuple[str, ...] = ()

    @property
    def words(self) -> str:
        return f"{self.name}: {', '.join(self.of)}" if self.of else self.name


_DRAWN = frozenset({Edit.ADDED, Edit.REMOVED, Edit.RE_FED, Edit.RE_RATED, Edit.RENAMED})
_NOT_DRAWN = frozenset({"circuit", "expect", "scenario", "project", "text"})


def sheets(changes: Sequence[Change], found: Sequence[Consequence], new: Snapshot) -> list[Sheet]:
    """The sheets whose contents differ between two versions, in the order of a drawing set."""
    model = new.analysis.model
    boards = {name for name, e in model.equipment.items() if e.kind in BOARDS}
    touched = {c.subject for c in changes} | set(_ends(changes))
    users = {user for c in changes if c.sort == "type" for user in model.type_users(c.subject)}
    shown = {c.subject for c in found if _on_schedule(c)}
    schedules = _ordered(boards & (touched | users | shown), new)
    transformers = {n for n, e in model.equipment.items() if e.kind == "transformer"}
    feeders = any(p.key.sort == "feeder" for c in changes for p in c.pieces)
    currents = any(c.subject in model.feeders for c in found)
    listed = [
        Sheet("one-line diagram") if any(c.kind in _DRAWN and c.sort not in _NOT_DRAWN for c in changes) else None,
        Sheet("panel schedules", schedules) if schedules else None,
        Sheet("feeder schedule") if feeders or currents else None,
        Sheet("transformer table", t) if (t := _ordered(transformers & (touched | users | shown), new)) else None,
        Sheet("fault and drop table") if any(_figure(c) in (FAULT, SMALLEST, DROP) for c in found) else None,
        Sheet("load summary") if any(_figure(c) == LOAD for c in found) else None,
        Sheet("labels and directories", t) if (t := _ordered(_labelled(changes, new), new)) else None,
    ]
    return [sheet for sheet in listed if sheet is not None]


def _figure(consequence: Consequence) -> str:
    measured = consequence.measured[1] or consequence.measured[0]
    return measured.name if measured is not None else ""


def _on_schedule(consequence: Consequence) -> bool:
    return consequence.kind is not Kind.FINDING or consequence.measured != (None, None)


def _ends(changes: Iterable[Change]) -> Iterable[str]:
    """The names at the ends of feeders that changed."""
    for change in changes:
        for piece in change.pieces:
            if piece.key.sort == "feeder":
                source, arrow, target = piece.key.name.partition(" -> ")
                if arrow:
                    yield from (source.split(".")[0], target.split(".")[0])


def _labelled(changes: Iterable[Change], new: Snapshot) -> set[str]:
    """Equipment whose label or circuit directory is wrong now: its name, its supply, its circuits or its voltage."""
    names = {c.subject for c in changes if c.kind in (Edit.RENAMED, Edit.RE_FED, Edit.ADDED) or c.sort == "circuit"}
    model = new.analysis.model
    for change in changes:
        if change.kind is Edit.RENAMED:  # what hangs on it names it as its supply
            names |= {f.target.name for f in model.feeders_from.get(change.subject, ())}
    return {n for n in names if n in model.equipment}


def _ordered(names: Iterable[str], new: Snapshot) -> tuple[str, ...]:
    equipment = new.analysis.model.equipment
    order = {path: i for i, path in enumerate(new.analysis.model.files)}
    known = [n for n in names if n in equipment]
    return tuple(sorted(known, key=lambda n: (order.get(equipment[n].block.file, 0), equipment[n].block.first_line)))
