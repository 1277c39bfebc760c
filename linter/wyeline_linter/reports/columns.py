"""Tables as data: every column once, with its name, its unit, where its value comes from and what it says.

HTML, CSV, Markdown and the report reference all read these declarations; nothing else knows a column.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any, Literal, NamedTuple

UNKNOWN = "?"
Value = float | int | str | None
Units = Literal["si", "us"]


class Cell(NamedTuple):
    """One value of a table, in its column's unit.

    ``None`` with reasons is unknown and printed as ``?``; ``None`` without reasons does not apply and stays empty.
    ``sheet`` is the anchor of the working sheet that shows how the value came about.
    """

    value: Value = None
    unknown: tuple[str, ...] = ()
    sheet: str = ""

    @property
    def known(self) -> bool:
        return not self.unknown


@dataclass(frozen=True, slots=True)
class Column:
    """One column.

    ``key`` is the header in CSV and ends in the unit where there is one (``length_m``); ``title`` and ``unit`` are what
    people read. ``figure`` is the path of the figure in ``wyeline show --json`` below the equipment or feeder of the
    row, read with ``scale`` and, where it is not a number itself, ``pick``; without it ``source`` says where the value
    comes from. ``digits`` are those behind the point, None for text. ``sheet`` names the working sheet of the figure.
    ``wide`` lets a text wrap over several lines. ``us`` is the unit that people read where the project prints US units,
    with its size in ``unit``; CSV keeps to ``unit``. ``iec`` is the title under IEC practice, where it is another.
    """

    key: str
    title: str
    doc: str
    unit: str = ""
    figure: str = ""
    source: str = ""
    scale: float = 1.0
    pick: Callable[[Any], Value] | None = None
    digits: int | None = None
    sheet: str = ""
    wide: bool = False
    us: tuple[str, float] | None = None
    size: float = 1.0
    iec: str = ""

    def read_in(self, units: Units, practice: str = "us") -> Column:
        """The column as people read it in these units and in this practice."""
        column = replace(self, title=self.iec) if self.iec and practice == "iec" else self
        if self.us is None or units == "si":
            return column
        return replace(column, unit=self.us[0], size=self.us[1], us=None)

    @property
    def numeric(self) -> bool:
        return self.digits is not None

    @property
    def heading(self) -> str:
        return f"{self.title}, {self.unit}" if self.unit else self.title

    def text(self, cell: Cell, digits: int | None = None) -> str:
        """A cell as people read it: ``?`` for unknown, nothing for what does not apply."""
        if cell.value is None:
            return UNKNOWN if cell.unknown else ""
        if isinstance(cell.value, str):
            return cell.value
        wanted = digits if digits is not None else self.digits
        return number(cell.value / self.size, wanted if wanted is not None else 3)


def number(value: float, digits: int) -> str:
    """A number with so many digits behind the point, thousands apart by a thin space, never ``-0``."""
    text = f"{value:,.{digits}f}".replace(",", "\u202f")
    return text[1:] if text.startswith("-") and not text.strip("-0.\u202f") else text


def whole(key: str, title: str, doc: str, source: str, unit: str = "", digits: int = 0) -> Column:
    """A column of numbers that are written."""
    return Column(key, title, doc, unit, source=source, digits=digits)


def words(key: str, title: str, doc: str, source: str = "as written", *, wide: bool = False, iec: str = "") -> Column:
    """A column of words."""
    return Column(key, title, doc, source=source, wide=wide, iec=iec)


@dataclass(frozen=True, slots=True)
class TableKind:
    """A table by its name (also the file's), with its columns."""

    name: str
    title: str
    doc: str
    columns: tuple[Column, ...]
    keys: tuple[str, ...] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "keys", tuple(c.key for c in self.columns))
        if len(set(self.keys)) != len(self.keys):
            raise ValueError(f"table {self.name} has two columns of one key")


class Row(NamedTuple):
    """A row: its cells in the order of the columns, the anchor of what it is about, and where that is written."""

    cells: tuple[Cell, ...]
    about: str = ""
    place: str = ""
    label: str = ""
    """Set for a row of totals: what is totalled."""
    digits: int | None = None
    """Digits behind the point in this row, where the unit is another than the column's."""
    unit: str = ""
    """That other unit."""


class TwoColumns(NamedTuple):
    """How a board with odd positions left and even ones right is built: the name of the leg of each row, from above."""

    legs: tuple[str, ...]


@dataclass(slots=True)
class Table:
    """Rows under their columns; ``facts`` stand in the head of a schedule, ``totals``, the table ``beside`` them and
    ``notes`` below it.

    ``marked`` holds what rows are about that is written otherwise than in the issue before.
    ``built`` is set for a board whose rows can be shown in two columns, as it is built.
    """

    kind: TableKind
    subject: str = ""
    rows: list[Row] = field(default_factory=list)
    totals: list[Row] = field(default_factory=list)
    facts: list[tuple[str, str]] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    about: str = ""
    built: TwoColumns | None = None
    beside: Table | None = None
    marked: frozenset[str] = frozenset()
    units: Units = "si"
    practice: str = "us"
    columns: tuple[Column, ...] = field(init=False)
    """The columns as people read them."""

    def __post_init__(self) -> None:
        self.columns = tuple(column.read_in(self.units, self.practice) for column in self.kind.columns)

    @property
    def title(self) -> str:
        return f"{self.kind.title} {self.subject}".rstrip()

    def add(self, values: Mapping[str, Cell | Value], about: str = "", place: str = "") -> None:
        """Add a row by column key; a key that is left out stays empty. Raises KeyError for one that is no column."""
        self.rows.append(Row(self._cells(values), about, place))

    def add_total(
        self, label: str, values: Mapping[str, Cell | Value], digits: int | None = None, unit: str = ""
    ) -> None:
        """Add a row of totals, with its unit and digits where they are others than those of the columns."""
        self.totals.append(Row(self._cells(values), label=label, digits=digits, unit=unit))

    def _cells(self, values: Mapping[str, Cell | Value]) -> tuple[Cell, ...]:
        unknown = values.keys() - set(self.kind.keys)
        if unknown:
            raise KeyError(f"table {self.kind.name} has no column {', '.join(sorted(unknown))}")
        return tuple(_cell(values.get(key)) for key in self.kind.keys)


def _cell(value: Cell | Value) -> Cell:
    return value if isinstance(value, Cell) else Cell(value)


def read(kind: TableKind, entry: Mapping[str, Any], sheet: Callable[[str], str] | None = None) -> dict[str, Cell]:
    """The cells of all columns that read a figure. ``entry`` is the equipment's or feeder's own part of the figures,
    ``sheet`` gives the anchor of a working sheet by the name of its figure."""
    return {c.key: figure_cell(c, entry, sheet) for c in kind.columns if c.figure}


def figure_cell(column: Column, entry: Mapping[str, Any], sheet: Callable[[str], str] | None = None) -> Cell:
    """The figure that a column names: known, unknown with its reasons, or empty where it does not apply."""
    found, reasons = resolve(entry, column.figure)
    anchor = sheet(column.sheet) if sheet is not None and column.sheet else ""
    if found is not None and column.pick is not None:
        found = column.pick(found)
    if found is None:
        return Cell(None, reasons, anchor if reasons else "")
    if isinstance(found, float | int) and not isinstance(found, bool):
        found = found * column.scale
    return Cell(found if isinstance(found, float | int) else str(found), (), anchor)


def resolve(entry: Mapping[str, Any], path: str) -> tuple[Any, tuple[str, ...]]:
    """The value at a dotted path of the figures, or None with the reasons that stand nearest to it."""
    at: Any = entry
    outer: tuple[str, ...] = ()
    for key in path.split("."):
        if not isinstance(at, Mapping):
            return None, ()
        unknown = at.get("unknown")
        reasons = tuple(unknown.get(key) or ()) if isinstance(unknown, Mapping) else tuple(unknown or ())
        outer = reasons or outer
        if at.get(key) is None:
            return None, outer
        at = at[key]
    return at, ()


def largest_leg(amps: Mapping[str, float]) -> float | None:
    """The largest current of the legs; the neutral and the middle are not among them."""
    return max((value for name, value in amps.items() if name not in ("N", "M")), default=None)


def reasons_below(table: Table) -> list[str]:
    """Every reason of an unknown cell, each once, in the order of the rows: the footnotes of a table."""
    seen: dict[str, None] = {}
    for row in (*table.rows, *table.totals):
        for cell in row.cells:
            if cell.unknown:
                seen[footnote(cell)] = None
    return list(seen)


def footnote(cell: Cell) -> str:
    """The reasons of one unknown cell as one text."""
    return "; ".join(cell.unknown)


def of_kind(tables: Iterable[Table], name: str) -> list[Table]:
    """The tables of one kind."""
    return [t for t in tables if t.kind.name == name]


def note_letters(table: Table, key: str, note: str) -> None:
    """Say what letters mean, where the column ``key`` prints any."""
    at = table.kind.keys.index(key)
    if any(row.cells[at].value for row in table.rows):
        table.notes.append(note)


def note_rises(table: Table, key: str) -> None:
    """Say what a drop below zero means, where the column ``key`` prints one."""
    at = next(i for i, column in enumerate(table.columns) if column.key == key)
    column = table.columns[at]
    if any(column.text(row.cells[at]).startswith(("-", "\N{MINUS SIGN}")) for row in table.rows):
        table.notes.append(
            "A drop below zero is a rise: an inverter feeds back towards the source, or a capacitor lifts the voltage."
        )
