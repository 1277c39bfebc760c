"""Sums of loads: one row of numbers for each kind of load, so that a demand factor can still be applied to the whole.

Everything in a row adds up, so a board's rows are the sum of its circuits' and of what hangs below; only the two
largest units, which kitchens ask for, are kept as such.
"""

from __future__ import annotations

from collections.abc import Iterable
from operator import add
from typing import NamedTuple

from wyeline_linter.loads.conductors_of_loads import LEG_COUNT, NEUTRAL_AT, Currents, Part


class Key(NamedTuple):
    """What a row holds: a class of load, continuous or not, and the demand factor stated for it (None: the table's), or
    made by the calculation of a dwelling."""

    category: str
    continuous: bool
    factor: float | None = None
    nameplate: bool = False
    dwelling: bool = False
    together: bool = True
    """Whether it counts where several dwellings are calculated together; the smaller of heat and cooling does not."""
    third: float | None = None
    """Share of third harmonic that returns through a neutral, as stated; None where nobody says."""

    stands: int = 0
    """Only where it is asked which part of a load counts, never in rows: whether a measurement further up holds it."""


NEW, STANDS, OWN = 0, 1, 2
"""Of `Key.stands`: it adds to a measurement; it is within that of a board above; it is the measurement of the board
itself, which stands for those above."""
Row = list[complex]
Rows = dict[Key, Row]

UNITS, VA, SPLIT, AMPS, CODE, CODE_SPLIT, CODE_AMPS, LARGEST, SECOND = 0, 1, 2, 5, 9, 10, 13, 17, 18
TO_NEUTRAL = 19
WIDTH = 22
"""A row: number of units; VA; VA split on legs A, B, C; amperes on A, B, C, N; then the same by the code's figures
(VA, split, amperes); the two largest units in VA; the code's VA on A, B, C that return through N. Amperes are phasors
that go out to the load, N as well."""


class Largest(NamedTuple):
    """The largest motor: VA and amperes by the code's figures of one unit, and its name."""

    va: float
    amps: Currents
    name: str


def row_of(parts: Iterable[Part], inverse: dict[tuple[int, int], complex], code_ratio: float, units: int) -> Row:
    """The row of one load. ``inverse`` gives 1/V* for each pair; ``code_ratio`` is the code's VA over those drawn.

    The code adds volt-amperes and amperes as plain numbers, so its figures take every load as of one power factor.
    """
    row: Row = [0j] * WIDTH
    row[UNITS] = complex(units)
    for i, j, va in parts:
        current = va.conjugate() * inverse[i, j]
        code_va = abs(va) * code_ratio
        code_amps = code_va * inverse[i, j]
        row[VA] += va
        row[AMPS + i] += current
        row[AMPS + j] -= current
        row[CODE] += code_va
        row[CODE_AMPS + i] += code_amps
        row[CODE_AMPS + j] -= code_amps
        if j == NEUTRAL_AT:
            row[SPLIT + i] += va
            row[CODE_SPLIT + i] += code_va
            row[TO_NEUTRAL + i] += code_va
        else:
            half = va * 0.5
            row[SPLIT + i] += half
            row[SPLIT + j] += half
            row[CODE_SPLIT + i] += code_va * 0.5
            row[CODE_SPLIT + j] += code_va * 0.5
    if units > 1:
        row[LARGEST] = row[SECOND] = complex(abs(row[VA]) / units)
    else:
        row[LARGEST] = complex(abs(row[VA]))
    return row


def add_row(rows: Rows, key: Key, row: Row) -> None:
    """Add a row to the one of its kind; ``row`` itself is left as it is."""
    old = rows.get(key)
    if old is None:
        rows[key] = row
        return
    added = list(map(add, old, row))
    most, less = old, row
    if row[LARGEST].real > old[LARGEST].real:
        most, less = row, old
    first, second = less[LARGEST], most[SECOND]
    added[LARGEST] = most[LARGEST]
    added[SECOND] = first if first.real >= second.real else second
    rows[key] = added


def scaled(row: Row, factor: float) -> Row:
    """The row of a load that runs at a share of its full value."""
    kept = [value * factor for value in row]
    kept[UNITS] = row[UNITS]
    return kept


def amps_of(row: Row, *, code: bool = False) -> Currents:
    """The phasor currents of a row on A, B, C and N."""
    at = CODE_AMPS if code else AMPS
    return row[at], row[at + 1], row[at + 2], row[at + NEUTRAL_AT]


def split_of(row: Row, *, code: bool = False) -> tuple[complex, ...]:
    """The bookkeeping split of a row on legs A, B, C: to neutral whole, between two legs half each."""
    at = CODE_SPLIT if code else SPLIT
    return tuple(row[at : at + LEG_COUNT])
