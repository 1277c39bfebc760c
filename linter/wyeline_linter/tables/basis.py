"""A basis: the edition of the code whose tables a project is measured against, with the rows the project overrides."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache, lru_cache
from typing import Literal, NamedTuple

from .load import Key, Looked, NotListed, Table, basis_names, load, table_names

Practice = Literal["us", "iec"]


class Override(NamedTuple):
    """A row that a project gives its own value, with its reason.

    `table` is a table's name (`ampacity`), its number (`310.16`) or its citation (`NEC 2023 310.16`); `row` is the row
    as results print it (`3/0 Cu 75 degC`); `value` a number, or text where the table holds text.
    """

    table: str
    row: str
    value: float | str
    reason: str


class OverrideError(ValueError):
    """An override that fits no row; the message says what is nearest."""


class UnknownBasisError(ValueError):
    """A basis that is not shipped; the message lists those that are."""


class Basis:
    """All tables of one edition. Tables are read on first use; a basis is immutable and may be shared."""

    __slots__ = ("_constants", "_tables", "name", "overrides", "practice", "title")

    name: str
    title: str
    practice: Practice
    overrides: tuple[Override, ...]

    def __init__(self, name: str, overrides: tuple[Override, ...] = (), tables: dict[str, Table] | None = None) -> None:
        self.name = name
        self.overrides = overrides
        self._tables: dict[str, Table] = dict(tables or {})
        self._constants: dict[str, Looked[float] | NotListed] = {}
        about = load(name, "about").rows
        self.title = str(about[("title",)][0])
        self.practice = "us" if about[("practice",)][0] == "us" else "iec"

    def __repr__(self) -> str:
        return f"Basis({self.name!r}, {len(self.overrides)} overrides)"

    @property
    def table_names(self) -> tuple[str, ...]:
        """Names of all tables, in alphabetical order."""
        return tuple(sorted(table_names(self.name)))

    def table(self, name: str) -> Table | NotListed:
        """The table of that name, or that this basis has none."""
        table = self._tables.get(name)
        if table is not None:
            return table
        if name not in table_names(self.name):
            return NotListed(f"{self.title} has no table for {name.replace('-', ' ')}")
        table = load(self.name, name)
        self._tables[name] = table
        return table

    def number(self, table: str, key: Key, column: str) -> Looked[float] | NotListed:
        """A numeric cell."""
        found = self.table(table)
        return found if isinstance(found, NotListed) else found.number(key, column)

    def text(self, table: str, key: Key, column: str) -> Looked[str] | NotListed:
        """A text cell."""
        found = self.table(table)
        return found if isinstance(found, NotListed) else found.text(key, column)

    def number_up_to(self, table: str, amount: float, column: str, prefix: Key = ()) -> Looked[float] | NotListed:
        """A numeric cell in the first row that reaches `amount`."""
        found = self.table(table)
        if isinstance(found, NotListed):
            return found
        key = found.step_up_to(amount, prefix)
        return key if isinstance(key, NotListed) else found.number(key, column)

    def constant(self, name: str) -> Looked[float] | NotListed:
        """A single value of a clause, from the table `constants`."""
        found = self._constants.get(name)
        if found is None:
            found = self._constants[name] = self.number("constants", (name,), "value")
        return found

    def value_of(self, name: str) -> float:
        """The number of `constant`, for code that knows its basis to hold it. KeyError where it does not."""
        found = self.constant(name)
        if isinstance(found, NotListed):
            raise KeyError(name)
        return found.value

    def with_overrides(self, overrides: Iterable[Override]) -> Basis:
        """This basis with rows replaced; the later of two overrides of one row wins.

        Raises OverrideError for the first one that has no reason, fits no row, or gives text for a number.
        """
        changes: dict[str, dict[tuple[Key, str], tuple[float | str, str]]] = {}
        added = tuple(overrides)
        for override in added:
            table, key, column, value = self._place(override)
            changes.setdefault(table.name, {})[key, column] = (value, override.reason.strip())
        tables = dict(self._tables)
        for name, cells in changes.items():
            tables[name] = tables[name].replaced(cells)
        return Basis(self.name, self.overrides + added, tables)

    def _place(self, override: Override) -> tuple[Table, Key, str, float | str]:
        """Where an override belongs, and its value in the type of that cell."""
        if not override.reason.strip():
            raise OverrideError(f"the override of {override.table}, {override.row}, gives no reason")
        table = self._named(override.table)
        rows: dict[str, tuple[Key, str]] = {}
        for key in table.rows:
            for column in table.columns:
                rows.setdefault(table.row_text(key, column), (key, column))
                rows.setdefault(" ".join(key), (key, column))
        at = rows.get(override.row.strip())
        if at is None:
            raise OverrideError(f"{table.cite} has no row {override.row!r}; {_nearest(override.row, rows)}")
        key, column = at
        cell = table.cell(key, column)
        numeric = isinstance(cell, NotListed) or isinstance(cell.value, float)
        if not numeric:
            return table, key, column, str(override.value)
        try:
            return table, key, column, float(override.value)
        except ValueError:
            raise OverrideError(f"{table.cite}, {override.row}: {override.value!r} is not a number") from None

    def _named(self, named: str) -> Table:
        wanted = named.strip()
        spellings: dict[str, str] = {}
        for name in self.table_names:
            table = self.table(name)
            if isinstance(table, Table) and name != "about":
                for spelling in (table.header["table"], table.cite, name):
                    spellings[spelling] = name
        if wanted not in spellings:
            raise OverrideError(f"{self.title} has no table {wanted!r}; {_nearest(wanted, spellings)}")
        table = self.table(spellings[wanted])
        assert isinstance(table, Table)
        return table


def _nearest(wanted: str, known: Iterable[str]) -> str:
    from difflib import get_close_matches

    near = get_close_matches(wanted, list(known), n=3, cutoff=0.4)
    return f"nearest: {', '.join(near)}" if near else "nothing like it"


@cache
def basis(name: str) -> Basis:
    """The shipped basis of that name, `us-2023` or `iec`. Raises UnknownBasisError."""
    if name not in basis_names():
        raise UnknownBasisError(f"no basis {name!r}; there are {', '.join(basis_names())}")
    return Basis(name)


@lru_cache(maxsize=16)
def project_basis(name: str | None, overrides: tuple[Override, ...] = ()) -> Basis | None:
    """The tables a project is measured against; None where it names no basis, or one that is not shipped.

    Raises OverrideError for an override that fits no row.
    """
    if name is None or name not in basis_names():
        return None
    found = basis(name)
    return found.with_overrides(overrides) if overrides else found
