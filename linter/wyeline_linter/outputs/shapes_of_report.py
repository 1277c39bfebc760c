"""What ``report.json`` holds, the data of a report; see ``shapes.py`` for how these are written."""

from typing import Annotated, Literal, NotRequired, TypedDict

from wyeline_linter.outputs.shapes import Reasons
from wyeline_linter.outputs.shapes_of_figures import ProjectFigures

CellValue = float | str | None


class ColumnEntry(TypedDict):
    """A column: its key, which ends in the unit, what people read above it, what it says, and where its value comes
    from: `figure` is a path below the equipment or feeder in `wyeline show --json`, `source` says it in words."""

    key: str
    title: str
    unit: str | None
    numeric: bool
    doc: str
    figure: str | None
    source: str | None


class TableKindEntry(TypedDict):
    """What all tables of a kind have in common; `part` is what `--only` calls it."""

    part: str
    title: str
    doc: str
    columns: list[ColumnEntry]


class RowEntry(TypedDict):
    """A row: values by the keys of the columns, in the units of their keys. Null is what does not apply, or what is
    unknown, with its reasons under `unknown`. What the row is about: equipment, the position of one of its circuits, or
    a feeder; `place` is the line that writes it; `changed` stands where it is written otherwise than in the issue that
    the report is held against."""

    cells: dict[str, CellValue]
    unknown: Reasons
    equipment: NotRequired[str]
    position: NotRequired[str]
    feeder: NotRequired[str]
    place: NotRequired[str]
    changed: NotRequired[Literal[True]]


class TotalEntry(TypedDict):
    """A row below a schedule: what it sums, and its values by the columns that they stand below. `unit` is that of the
    values where it is another than that of their columns."""

    label: str
    unit: str | None
    cells: dict[str, CellValue]
    unknown: Reasons


class FactEntry(TypedDict):
    """A line in the head of a schedule, as people read it."""

    name: str
    text: str


class BesideEntry(TypedDict):
    """The table that stands beside the sums of a schedule: the load of its board by class."""

    part: str
    rows: list[RowEntry]


class TableEntry(TypedDict):
    """A table: which kind, the board of a schedule, what stands in its head, its rows, its sums and its notes."""

    part: str
    subject: str | None
    facts: list[FactEntry]
    rows: list[RowEntry]
    totals: list[TotalEntry]
    beside: BesideEntry | None
    notes: list[str]


class ReportedState(TypedDict):
    """The tables of one switch state."""

    state: str
    tables: list[TableEntry]


class ReportData(TypedDict):
    """What `wyeline report` writes into `report.json`: every table of a report, in each switch state that it has."""

    version: Literal[1]
    caution: Annotated[str, "to be shown wherever figures are"]
    project: ProjectFigures
    date: Annotated[str | None, "the date that is printed"]
    since: Annotated[str | None, "the issue that changes are marked against"]
    kinds: list[TableKindEntry]
    states: list[ReportedState]
