"""What has to be issued anew after a change: the sheets of a report that say something else than before.

Both versions are reported as they are handed over and held against one another as printed, so that a figure which stays
the same to its last printed digit asks for no new sheet, and nothing that is printed can be forgotten.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from wyeline_linter.analysis import Analysis
    from wyeline_linter.reports.columns import Row, Table
    from wyeline_linter.reports.subject import Subject


class Sheet(NamedTuple):
    """A document to issue anew; ``of`` are the names that it is about, empty for one about the whole site."""

    name: str
    of: tuple[str, ...] = ()

    @property
    def words(self) -> str:
        return f"{self.name}: {', '.join(self.of)}" if self.of else self.name


Printed = dict[str, tuple[object, ...]]
"""What a document says, by the name of what it says it about (the empty name: the document as a whole)."""

DIAGRAM, PANELS, FEEDERS = "one-line diagram", "panel schedules", "feeder schedule"
TRANSFORMERS, LABELS, WITHDRAWN = "transformer table", "labels and directories", "panel schedules to withdraw"
_WHOLE = {
    FEEDERS: "feeders",
    "load summary": "load-summary",
    "load by class": "load-classes",
    "fault and drop table": "fault-and-drop",
    "grounding table": "grounding",
    "equipment list": "equipment",
}
"""Documents about the whole site, and the table of a report that each is."""
_ORDER = (DIAGRAM, PANELS, WITHDRAWN, FEEDERS, TRANSFORMERS, *(w for w in _WHOLE if w != FEEDERS), LABELS)
"""In the order of a drawing set."""


def sheets(old: Analysis, new: Analysis) -> list[Sheet]:
    """The sheets whose contents differ between two versions, each under its own names."""
    before, after = _printed(old), _printed(new)
    found = []
    for name in _ORDER:
        had, has = before.get(name, {}), after.get(name, {})
        if name == WITHDRAWN:
            gone = tuple(of for of in before[PANELS] if of not in after[PANELS])
            found += [Sheet(name, gone)] if gone else []
        elif "" in has or "" in had:
            found += [Sheet(name)] if had != has else []
        else:
            of = tuple(of for of, said in has.items() if had.get(of) != said)
            found += [Sheet(name, of)] if of else []
    return found


def _printed(analysis: Analysis) -> dict[str, Printed]:
    from wyeline_linter.reports.equipment_lists import LABELS as LABEL_TABLE
    from wyeline_linter.reports.equipment_lists import TRANSFORMERS as TRANSFORMER_TABLE
    from wyeline_linter.reports.package import Package, Wishes
    from wyeline_linter.reports.panel_schedule import SCHEDULE

    parts = frozenset({SCHEDULE.name, TRANSFORMER_TABLE.name, LABEL_TABLE.name, *_WHOLE.values()})
    package = Package(analysis, Wishes(parts))
    tables: dict[str, list[Table]] = {}
    for table in package.tables:
        tables.setdefault(table.kind.name, []).append(table)
    (labels,), (transformers,) = tables[LABEL_TABLE.name], tables[TRANSFORMER_TABLE.name]
    return {
        DIAGRAM: {"": tuple(_drawn(package.subject))},
        PANELS: {t.subject: tuple(_lines(t)) for t in tables.get(SCHEDULE.name, ())},
        TRANSFORMERS: {_first(row): (_line(transformers, row),) for row in transformers.rows},
        LABELS: _labels(labels),
        **{name: {"": tuple(_lines(tables[part][0]))} for name, part in _WHOLE.items()},
    }


def _labels(table: Table) -> Printed:
    """The rows of each board under its name: the board's own label first, its directory behind it."""
    found: dict[str, list[object]] = {}
    name = ""
    for row in table.rows:
        if row.about.startswith("e "):
            name = _first(row)
        found.setdefault(name, []).append(_line(table, row))
    return {name: tuple(rows) for name, rows in found.items()}


def _drawn(subject: Subject) -> Iterator[object]:
    """What the diagram and its title strip say, wherever it lies on the sheet."""
    from wyeline_linter.reports.one_line import one_line, paper_of

    sketch = one_line(subject, linked=False)
    yield subject.project, *(subject.project_text(key) for key in ("number", "client", "engineer"))
    yield subject.revision, subject.issue_date, subject.drawn, subject.checked
    yield from ((i.name.text, i.date, i.body.description, i.body.text("drawn")) for i in subject.issues)
    yield subject.basis_in_words
    yield subject.scenario, subject.practice, paper_of(subject)
    yield from (replace(node, source="") for node in sketch.nodes)
    yield from (replace(edge, location="") for edge in sketch.edges)


def _lines(table: Table) -> Iterator[object]:
    yield from (tuple(c.heading for c in table.columns), *table.facts, *table.notes)
    yield from (_line(table, row) for row in (*table.rows, *table.totals))
    if table.beside is not None:
        yield from _lines(table.beside)


def _line(table: Table, row: Row) -> tuple[str, ...]:
    cells = zip(table.columns, row.cells, strict=True)
    return (row.label, *(f"{column.text(cell, row.digits)}{'; '.join(cell.unknown)}" for column, cell in cells))


def _first(row: Row) -> str:
    return str(row.cells[0].value)
