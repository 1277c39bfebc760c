"""How a schedule splits what a transformer draws over the legs of its supply: all of it, on the windings it touches.

Bookkeeping of panel schedules (common practice, no source): a leg's volt-amperes go in equal parts to the windings
that it touches, and those of a winding in equal parts to the legs that feed it.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from wyeline_grammar.notation import parse_voltage
from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.loads.buckets import CODE, VA, split_of
from wyeline_linter.loads.through_cores import Through, through
from wyeline_linter.systems import source_system
from wyeline_linter.windings import Transformed, secondary_system

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"


@pytest.mark.parametrize("site", ["field-station/station.wye", "dairy-works/works.wye"])
def test_no_split_loses_or_adds_anything(site: str) -> None:
    """The legs of every row, at every piece of equipment and on both of its sides, add up to the row."""
    view = Analysis(str(EXAMPLES / site), Files(), str(EXAMPLES)).view
    between_legs = 0
    for name in view.loads.nodes:
        for rows, _ in (view.loads.rows(name), view.loads.rows_above(name)):
            for row in rows.values():
                assert sum(split_of(row)) == pytest.approx(row[VA], abs=1e-6), name
                assert sum(split_of(row, code=True)) == pytest.approx(row[CODE], abs=1e-6), name
                between_legs += len([part for part in split_of(row, code=True) if part]) > 1
    assert between_legs > 10


def passed(primary: str, secondary: str, connection: str | None, legs: tuple[str, ...] | None = None) -> Through:
    supply = source_system(parse_voltage("480Y/277"), frequency_hz=60.0)
    made = secondary_system(
        supply, parse_voltage(primary), parse_voltage(secondary), connection, practice="us", primary_legs=legs
    )
    assert isinstance(made, Transformed)
    return through(made.cores, made.joined, made.system.conductors)


@pytest.mark.parametrize(
    ("primary", "secondary", "connection", "legs", "split", "returned"),
    [
        # Dyn1: winding a lies across A and C, b across B and A, c across C and B; nothing returns by the neutral.
        ("480 3ph", "208Y/120", "Dyn1", None, ((0.5, 0.5, 0), (0, 0.5, 0.5), (0.5, 0, 0.5)), 0.0),
        ("480Y/277", "208Y/120", "YNyn0", None, ((1, 0, 0), (0, 1, 0), (0, 0, 1)), 1.0),
        ("480 3ph", "208Y/120", "Yyn0", None, ((1, 0, 0), (0, 1, 0), (0, 0, 1)), 0.0),
        # One unit across B and C feeds both of its legs from both.
        ("480 1ph", "120/240", None, ("B", "C"), ((0, 0, 0), (0.5, 0.5, 0), (0.5, 0.5, 0)), 0.0),
        ("277 1ph", "120/240", None, ("B", "N"), ((0, 0, 0), (1, 1, 0), (0, 0, 0)), 1.0),
    ],
)
def test_volt_amperes_go_to_the_legs_that_feed_the_windings(
    primary: str,
    secondary: str,
    connection: str | None,
    legs: tuple[str, ...] | None,
    split: tuple[tuple[float, ...], ...],
    returned: float,
) -> None:
    found = passed(primary, secondary, connection, legs)
    assert list(found.split) == [pytest.approx(row) for row in split]
    assert list(found.to_neutral) == [pytest.approx([returned * part for part in row]) for row in split]


@pytest.mark.parametrize(
    ("secondary", "connection"),
    [("208Y/120", "Dyn11"), ("208 3ph", "Dd0"), ("208Y/120", "Dzn0"), ("240/120 3ph", None), ("240 3ph", "open-delta")],
)
def test_nothing_is_lost_and_nothing_counted_twice(secondary: str, connection: str | None) -> None:
    found = passed("480 3ph", secondary, connection)
    assert [sum(row[leg] for row in found.split) for leg in range(3)] == pytest.approx([1.0, 1.0, 1.0])
