"""Reads one code table, a CSV file whose header says what it is and where its values come from.

A table knows rows by their key columns and gives every cell back as `Looked`: the value together with the table, the
row as a person would find it in print, and whether the value was verified. What a table does not hold is `NotListed`,
with the reason. This module knows files and cells; which cell answers which question is decided by its callers.
"""

from __future__ import annotations

import csv
import math
import os
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache, cached_property
from typing import Generic, NamedTuple, TypeVar

T_co = TypeVar("T_co", covariant=True)
Cell = float | str | None
Key = tuple[str, ...]

_HERE = os.path.dirname(__file__)

STATUSES = ("verified", "partly", "memory")
"""How far a value was checked when the file was written: read on a public page, read in part or under another heading,
or written from memory. A value replaced by a project has the status `override`."""

ANY = "any"
"""Key of a row without an upper end."""


@dataclass(frozen=True, slots=True)
class Looked(Generic[T_co]):
    """A value with the place it was read from."""

    value: T_co
    table: str
    row: str
    status: str
    note: str = ""

    def __str__(self) -> str:
        value = f"{self.value:g}" if isinstance(self.value, float) else str(self.value)
        remark = {"verified": "", "override": f" (override: {self.note})"}.get(self.status, f" ({self.status})")
        return f"{value} [{self.table}: {self.row}]{remark}"


class NotListed(NamedTuple):
    """The answer to a question the tables cannot answer."""

    reason: str
    table: str = ""

    def __str__(self) -> str:
        return self.reason


@dataclass(frozen=True)
class Table:
    """One table: rows by key, columns by name.

    `rows` maps the key (texts of the key columns) to the cells in the order of `columns`. Cells are floats, texts in
    the columns the header declares as such, or None where the printed table is blank.
    """

    name: str
    header: Mapping[str, str]
    keys: tuple[str, ...]
    columns: tuple[str, ...]
    labels: Mapping[str, str]
    rows: Mapping[Key, tuple[Cell, ...]]
    statuses: Mapping[Key, str]
    reasons: Mapping[tuple[Key, str], str]

    @property
    def cite(self) -> str:
        """The table as it is cited, such as `NEC 2023 310.16`."""
        return self.header["cite"]

    @cached_property
    def _places(self) -> dict[str, int]:
        return {column: place for place, column in enumerate(self.columns)}

    @cached_property
    def numeric_keys(self) -> tuple[tuple[float, Key], ...]:
        """Rows in the order of their last key column read as a number; `any` is infinity."""
        return tuple(sorted((math.inf if key[-1] == ANY else float(key[-1]), key) for key in self.rows))

    def row_text(self, key: Key, column: str) -> str:
        """The row and column in words, such as `3/0 Cu 75 degC`."""
        by = self.header.get("row by")
        if by is not None:
            return str(self.rows[key][self._places[by]])
        words = self.header["row"].format(
            column=self.labels.get(column, column), **dict(zip(self.keys, key, strict=True))
        )
        if key[-1] == ANY and f"up to {{{self.keys[-1]}}}" in self.header["row"]:
            # The last row of a table of steps holds what lies above the step before it.
            below = [k[-1] for _, k in self.numeric_keys if k[:-1] == key[:-1] and k[-1] != ANY]
            words = words.replace(f"up to {ANY}", f"above {below[-1]}") if below else words
        return words

    def status_of(self, key: Key, column: str) -> str:
        """`verified`, `partly`, `memory` or `override` for one cell."""
        if (key, column) in self.reasons:
            return "override"
        status = self.statuses[key]
        if " " not in status:
            return status
        for part in status.split(";"):
            word, *named = part.split()
            if column in named:
                return word
        return STATUSES[-1]

    def cell(self, key: Key, column: str) -> Looked[float | str] | NotListed:
        """The cell at `key` and `column`, or why there is none."""
        cells = self.rows.get(key)
        if cells is None:
            return NotListed(f"{self.cite} has no row for {' '.join(key)}", self.cite)
        place = self._places.get(column)
        if place is None:
            return NotListed(f"{self.cite} has no column {column}", self.cite)
        value = cells[place]
        row = self.row_text(key, column)
        if value is None:
            return NotListed(f"{self.cite} gives no value for {row}", self.cite)
        return Looked(value, self._cited(cells), row, self.status_of(key, column), self.reasons.get((key, column), ""))

    def _cited(self, cells: tuple[Cell, ...]) -> str:
        by = self.header.get("cite by")
        if by is None:
            return self.header["cite"]
        return f"{self.header.get('cite prefix', '')} {cells[self._places[by]]}".strip()

    @cached_property
    def _numbers(self) -> dict[tuple[Key, str], Looked[float]]:
        """Numeric cells looked up so far: what a table holds is bounded, what it is asked for is not."""
        return {}

    def number(self, key: Key, column: str) -> Looked[float] | NotListed:
        """A numeric cell."""
        known = self._numbers.get((key, column))
        if known is not None:
            return known
        found = self.cell(key, column)
        if isinstance(found, NotListed):
            return found
        if not isinstance(found.value, float):
            return NotListed(f"{found.table}, {found.row}: {found.value!r} is not a number", found.table)
        number = self._numbers[key, column] = Looked(found.value, found.table, found.row, found.status, found.note)
        return number

    def text(self, key: Key, column: str) -> Looked[str] | NotListed:
        """A cell that is text, such as a conductor size."""
        found = self.cell(key, column)
        if isinstance(found, NotListed):
            return found
        return Looked(str(found.value), found.table, found.row, found.status, found.note)

    def step_up_to(self, amount: float, prefix: Key = ()) -> Key | NotListed:
        """Key of the first row whose last key column is at least `amount` (tables of the form "up to").

        `prefix` fixes the leading key columns.
        """
        for limit, key in self.numeric_keys:
            if amount <= limit and key[: len(prefix)] == prefix:
                return key
        held = [limit for limit, key in self.numeric_keys if key[: len(prefix)] == prefix]
        if not held:
            return NotListed(f"{self.cite} has no row for {' '.join(prefix)}", self.cite)
        return NotListed(f"{self.cite} ends at {held[-1]:g}; {amount:g} is above", self.cite)

    def cells(self) -> Iterator[Looked[float | str]]:
        """Every cell that has a value, in the order of the file."""
        for key in self.rows:
            for column in self.columns:
                found = self.cell(key, column)
                if isinstance(found, Looked):
                    yield found

    def replaced(self, changes: Mapping[tuple[Key, str], tuple[float | str, str]]) -> Table:
        """A copy in which cells hold other values, each with its reason."""
        rows = dict(self.rows)
        for (key, column), (value, _) in changes.items():
            cells = list(rows[key])
            cells[self._places[column]] = value
            rows[key] = tuple(cells)
        reasons = {**self.reasons, **{at: reason for at, (_, reason) in changes.items()}}
        return Table(self.name, self.header, self.keys, self.columns, self.labels, rows, self.statuses, reasons)


def read(name: str, lines: Iterable[str]) -> Table:
    """Reads a table from the lines of its file.

    Raises ValueError with the table's name when the file is not as the header says.
    """
    header: dict[str, str] = {}
    body: list[str] = []
    for line in lines:
        if line.startswith("#"):
            word, _, text = line[1:].strip().partition(": ")
            header[word] = f"{header[word]}; {text}" if word in header else text
        elif line.strip():
            body.append(line)
    lacking = [
        word
        for word in ("standard", "edition", "table", "cite", "title", "obtained", "key", "row")
        if word not in header
    ]
    if lacking or not body:
        raise ValueError(f"table {name}: the file lacks {', '.join(lacking) or 'rows'}")
    parsed = csv.reader(body)
    names = next(parsed)
    keys = tuple(header["key"].split(","))
    columns = tuple(column for column in names if column not in keys and column != "status")
    if names != [*keys, *columns, "status"]:
        raise ValueError(f"table {name}: columns must be the keys, the values, then status")
    texts = set(header.get("text", "").split(","))
    as_text = [column in texts for column in columns]
    width = len(keys)
    rows: dict[Key, tuple[Cell, ...]] = {}
    statuses: dict[Key, str] = {}
    for fields in parsed:
        if len(fields) != len(names):
            raise ValueError(f"table {name}: row {fields[0]} has {len(fields)} fields instead of {len(names)}")
        key = tuple(fields[:width])
        if key in rows:
            raise ValueError(f"table {name}: row {' '.join(key)} stands twice")
        rows[key] = tuple(map(_cell, fields[width:-1], as_text))
        statuses[key] = fields[-1]
    labels = {word[7:]: text for word, text in header.items() if word.startswith("column ")}
    return Table(name, header, keys, columns, labels, rows, statuses, {})


def _cell(field: str, as_text: bool) -> Cell:
    if field == "":
        return None
    if as_text:
        return field
    try:
        return float(field)
    except ValueError:
        return field


@cache
def table_names(basis: str) -> frozenset[str]:
    """The tables of a basis, by what they are for (`ampacity`, `device-ratings`, ...)."""
    return frozenset(name[:-4] for name in os.listdir(os.path.join(_HERE, basis)) if name.endswith(".csv"))


@cache
def basis_names() -> tuple[str, ...]:
    """Every basis that is shipped, in alphabetical order."""
    return tuple(n for n in sorted(os.listdir(_HERE)) if os.path.isfile(os.path.join(_HERE, n, "about.csv")))


@cache
def load(basis: str, name: str) -> Table:
    """One table of a basis, read on first use. Raises ValueError if its file is damaged."""
    with open(os.path.join(_HERE, basis, f"{name}.csv"), encoding="utf-8") as file:
        return read(name, file.read().splitlines())
