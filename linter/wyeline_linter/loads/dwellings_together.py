"""Three or more dwelling units on one service or feeder: the optional calculation of NEC 220.84.

What every unit has connected counts with one factor by their number; what else the board carries (house loads) counts
as elsewhere.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.loads.buckets import CODE, TO_NEUTRAL, VA, Key, Row, Rows, add_row
from wyeline_linter.loads.conductors_of_loads import LEG_COUNT
from wyeline_linter.loads.dwelling import CLIMATE, COOKING
from wyeline_linter.loads.nodes import Held, Sum
from wyeline_linter.tables import Looked, NotListed
from wyeline_linter.tables.basis import Basis
from wyeline_linter.working import Step, number_text

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment


class Together(NamedTuple):
    """The factor of the units of a board, and the conditions that they do not meet."""

    units: int
    percent: Looked[float] | None
    failed: tuple[str, ...]


def carries_several(equipment: Equipment, basis: Basis | None) -> bool:
    """Whether the statement asks for the calculation of several dwellings together."""
    return equipment.body.text("dwelling") == "multifamily" and basis is not None and basis.practice == "us"


def together_of(units: Mapping[str, Rows], basis: Basis) -> Together:
    """The factor by the number of units, with their rows by name; NEC 220.84(A) says what each has to have."""
    failed: list[str] = []
    for lacking, classes in (("electric cooking (`kitchen`)", {COOKING}), ("electric heating or cooling", CLIMATE)):
        without = [name for name, rows in sorted(units.items()) if not _holds(rows, classes)]
        if without:
            more = f" and {len(without) - 1} more" if len(without) > 1 else ""
            failed.append(f"`{without[0]}`{more} has no {lacking}")
    table = basis.table("multifamily-demand")
    if isinstance(table, NotListed):
        return Together(len(units), None, (*failed, table.reason))
    keys = [key for start, key in table.numeric_keys if start <= len(units)]
    if not keys:
        return Together(len(units), None, (*failed, f"{len(units)} dwellings are below it, and not three or more"))
    percent = table.number(keys[-1], "percent")
    return Together(len(units), percent if isinstance(percent, Looked) else None, tuple(failed))


def as_together(below: Sum, units: Mapping[str, Rows], basis: Basis | None) -> tuple[Sum, dict[Key, Key]]:
    """The loads with the factor of the units on all that is of a dwelling; unchanged where a condition fails."""
    found = together_of(units, basis) if basis is not None else None
    if found is None or found.percent is None or found.failed:
        return below, {}
    share = found.percent.value / 100
    of_units = [key for rows in _all_rows(below) for key in rows if key.dwelling]
    became = {key: key._replace(factor=share if key.together else 0.0) for key in of_units}

    def counted(old: Rows) -> Rows:
        new: Rows = {}
        for key, row in old.items():
            add_row(new, became.get(key, key), _neutral_kept(key, became[key], row) if key in became else row)
        return new

    made = below.copy()
    made.rows = counted(below.rows)
    made.held = {n: Held(counted(held.rows), held.largest, held.va) for n, held in below.held.items()}
    return made, became


def steps_of(below: Rows, found: Together) -> tuple[Step, ...]:
    """The lines of the sum, from the rows of the board after the calculation."""
    if found.percent is None:
        return ()
    connected = sum(_va(row) for key, row in below.items() if key.dwelling and key.together)
    value = connected * found.percent.value / 100
    name = f"connected load of {found.units} dwellings, of heating and cooling the larger of each"
    factor = f"{number_text(connected)} * {number_text(found.percent.value / 100)}"
    cite = f"{found.percent.table}: {found.percent.row}"
    steps = [
        Step("K", name, number_text(connected), connected, "VA", "NEC 2023 220.84(C)"),
        Step("M", "dwellings together", factor, value, "VA", cite),
    ]
    house = sum((1.0 if k.factor is None else k.factor) * _va(row) for k, row in below.items() if not k.dwelling)
    if house:
        steps.append(Step("O", "house and other loads", number_text(house), house, "VA", "NEC 2023 220.84(B)"))
    return tuple(steps)


def _holds(rows: Rows, classes: Iterable[str]) -> bool:
    return any(key.category in classes and abs(row[VA]) > 0 for key, row in rows.items())


def _all_rows(below: Sum) -> list[Rows]:
    return [below.rows, *(held.rows for held in below.held.values())]


def _neutral_kept(old: Key, new: Key, row: Row) -> Row:
    """The row with what it puts on the neutral left as Part III has it for each unit (NEC 220.84(A), 220.61)."""
    if not new.factor or old.factor is None:
        return row
    made = list(row)
    for k in range(LEG_COUNT):
        made[TO_NEUTRAL + k] = row[TO_NEUTRAL + k] * old.factor / new.factor
    return made


def _va(row: Row) -> float:
    return row[CODE].real or abs(row[VA])
