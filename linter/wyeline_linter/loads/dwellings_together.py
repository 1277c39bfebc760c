"""Several dwelling units on one service or feeder, counted together as NEC 220 does.

Three or more may count by the optional calculation (220.84): what every unit has connected, with one factor by their
number. Two count by Part III as if they were one, or as three alike by 220.84 where that is less (220.85). Part III for
any number is there to be asked for. What else the board carries (house loads) counts as elsewhere.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.loads.buckets import CODE, TO_NEUTRAL, VA, Key, Row, Rows, add_row
from wyeline_linter.loads.conductors_of_loads import LEG_COUNT
from wyeline_linter.loads.demand import kitchen_units
from wyeline_linter.loads.dwelling_methods import CLIMATE, COOKING, DRYER, part_iii_of_several
from wyeline_linter.loads.nodes import Sum
from wyeline_linter.tables import Looked, NotListed
from wyeline_linter.tables.basis import Basis
from wyeline_linter.working import Step, number_text

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment
    from wyeline_linter.systems import System

BY_NUMBER, BY_PART_III = "multifamily", "multifamily-standard"
"""What a board may ask for."""
ALIKE = 3
"""As how many units two of them may count (NEC 220.85)."""


class Unit(NamedTuple):
    """A dwelling below a board: its loads as its own calculation leaves them, and the legs that it lies on."""

    rows: Rows
    legs: tuple[str, ...]


class Together(NamedTuple):
    """How the units of a board count: the factor of every kind of load of theirs (:func:`_kind`), the lines of the sum,
    and the conditions that they do not meet, in which case nothing is changed. ``unknown`` names what no table tells;
    ``part_iii``: it is that calculation that counts."""

    units: int
    factors: dict[Key, float]
    steps: tuple[Step, ...] = ()
    failed: tuple[str, ...] = ()
    unknown: tuple[str, ...] = ()
    part_iii: bool = False


def carries_several(equipment: Equipment, basis: Basis | None) -> bool:
    """Whether the statement asks for the calculation of several dwellings together."""
    return _method(equipment) != "" and basis is not None and basis.practice == "us"


def _method(equipment: Equipment) -> str:
    method = equipment.body.text("dwelling")
    return method if method in (BY_NUMBER, BY_PART_III) else ""


def together_of(board: Equipment, units: Mapping[str, Unit], system: System | None, basis: Basis) -> Together:
    """How the units on a board of this voltage system count together."""
    number = len(units)
    if number < 2:
        return Together(number, {}, failed=(f"{number} dwelling{'' if number else 's'} below it, and not several",))
    if _method(board) == BY_PART_III:
        return _by_part_iii(units, system, basis)
    failed = _lacking(units)
    if number >= ALIKE:
        return Together(number, {}, failed=failed) if failed else _by_number(units, basis)
    part_iii = _by_part_iii(units, system, basis)
    return part_iii if failed else _two(units, part_iii, basis)


def _lacking(units: Mapping[str, Unit]) -> tuple[str, ...]:
    """What NEC 220.84(A) asks of each unit, and some have not."""
    failed: list[str] = []
    for lacking, classes in (("electric cooking (`kitchen`)", {COOKING}), ("electric heating or cooling", CLIMATE)):
        without = [name for name, unit in sorted(units.items()) if not _holds(unit.rows, classes)]
        if without:
            more = f" and {len(without) - 1} more" if len(without) > 1 else ""
            failed.append(f"`{without[0]}`{more} has no {lacking}")
    return tuple(failed)


def _percent(number: int, basis: Basis) -> Looked[float] | str:
    table = basis.table("multifamily-demand")
    if isinstance(table, NotListed):
        return table.reason
    keys = [key for start, key in table.numeric_keys if start <= number]
    found = table.number(keys[-1], "percent")
    return found if isinstance(found, Looked) else found.reason


def _by_number(units: Mapping[str, Unit], basis: Basis) -> Together:
    """NEC 220.84."""
    percent = _percent(len(units), basis)
    if isinstance(percent, str):
        return Together(len(units), {}, failed=(percent,))
    share = percent.value / 100
    connected = sum(_connected(unit.rows) for unit in units.values())
    name = f"connected load of {len(units)} dwellings, of heating and cooling the larger of each"
    factor = f"{number_text(connected)} * {number_text(share)}"
    steps = (
        Step("K", name, number_text(connected), connected, "VA", "NEC 2023 220.84(C)"),
        Step("M", "dwellings together", factor, connected * share, "VA", f"{percent.table}: {percent.row}"),
    )
    return Together(len(units), _one_factor(units, share), steps)


def _by_part_iii(units: Mapping[str, Unit], system: System | None, basis: Basis) -> Together:
    """NEC 220 Part III over all units: the general loads, the ranges, the dryers and the appliances of all together."""
    found = part_iii_of_several(_without_factors(units.values()), len(units), basis, _fullest(units, system))
    factors = {_kind(key): found.factors.get(_bare(key), 1.0) for key in _kinds(units)}
    last = found.steps[-1]._replace(symbol="M", name="dwellings together, by Part III")
    return Together(len(units), factors, (*found.steps[:-1], last), unknown=found.unknown, part_iii=True)


def _without_factors(units: Iterable[Unit]) -> Rows:
    made: Rows = {}
    for unit in units:
        for key, row in unit.rows.items():
            if key.dwelling:
                add_row(made, _bare(key), row)
    return made


def _fullest(units: Mapping[str, Unit], system: System | None) -> dict[str, list[float]]:
    """On three legs and a neutral, where ranges and dryers count by twice the number between the two legs that have
    most (NEC 220.54, 220.55): VA of each of those. A unit on three legs counts between any two. Else nothing."""
    if system is None or len(system.legs) != 3 or not system.has_neutral:
        return {}
    found: dict[str, list[float]] = {}
    for pair in ({"A", "B"}, {"B", "C"}, {"C", "A"}):
        between = _without_factors(u for u in units.values() if len(u.legs) != 2 or set(u.legs) == pair)
        for role in (COOKING, DRYER):
            here = kitchen_units([row for key, row in between.items() if key.category == role])
            if (len(here), sum(here)) > (len(found.get(role, ())), sum(found.get(role, ()))):
                found[role] = here
    return found


def _two(units: Mapping[str, Unit], part_iii: Together, basis: Basis) -> Together:
    """NEC 220.85: by Part III, or as three alike if that is less; of unlike ones the larger is taken (a reading)."""
    percent = _percent(ALIKE, basis)
    connected = [_connected(unit.rows) for unit in units.values()]
    if isinstance(percent, str) or not any(connected):
        return part_iii
    three = ALIKE * max(connected) * percent.value / 100
    by_part_iii = part_iii.steps[-1].value or 0.0
    factor = f"{ALIKE} * {number_text(max(connected))} * {number_text(percent.value / 100)}"
    source = f"NEC 2023 220.85; {percent.table}: {percent.row}"
    of_three = Step("A", "as three dwellings alike", factor, three, "VA", source)
    lesser = min(three, by_part_iii)
    name = "dwellings together, the lesser"
    last = Step("M", name, "min(P3, A)", lesser, "VA", "NEC 2023 220.85")
    steps = (*part_iii.steps[:-1], part_iii.steps[-1]._replace(symbol="P3"), of_three, last)
    if three >= by_part_iii or part_iii.unknown:
        return part_iii._replace(steps=steps)
    return Together(len(units), _one_factor(units, three / sum(connected)), steps)


def _one_factor(units: Mapping[str, Unit], share: float) -> dict[Key, float]:
    return {_kind(key): share if key.together else 0.0 for key in _kinds(units)}


def _kinds(units: Mapping[str, Unit]) -> Iterator[Key]:
    return (key for unit in units.values() for key in unit.rows if key.dwelling)


def _kind(key: Key) -> Key:
    """What a kind of load is known by at its unit and further up, where its harmonics may be told otherwise."""
    return key._replace(third=None)


def _bare(key: Key) -> Key:
    """A kind of load before the calculation of its dwelling."""
    return key._replace(factor=None, dwelling=False, together=True, third=None)


def as_together(
    below: Sum,
    board: Equipment,
    units: Mapping[str, Unit],
    system: System | None,
    basis: Basis | None,
    *,
    standard: bool,
) -> tuple[Sum, dict[Key, Key]]:
    """The loads with the factors of the units on all that is of a dwelling; unchanged where a condition fails.

    ``standard``: each unit by itself is calculated by Part III, so that its neutral follows from its loads."""
    found = together_of(board, units, system, basis) if basis is not None else None
    if found is None or found.failed:
        return below, {}
    all_rows = [below.rows, *(held.rows for held in below.held.values())]
    of_units = [key for rows in all_rows for key in rows if key.dwelling]
    became = {key: key._replace(factor=found.factors.get(_kind(key), key.factor)) for key in of_units}
    keeps = not (found.part_iii and standard)

    def counted(old: Rows) -> Rows:
        new: Rows = {}
        for key, row in old.items():
            other = became.get(key)
            kept = _neutral_kept(key, other, row) if other is not None and keeps else row
            add_row(new, key if other is None else other, kept)
        return new

    made = below.rekeyed(counted)
    made.unknown = (*made.unknown, *(reason for reason in found.unknown if reason not in made.unknown))
    return made, became


def steps_of(below: Rows, found: Together) -> tuple[Step, ...]:
    """The lines of the sum; ``below`` are the rows of the board after the calculation, house loads among them."""
    house = sum((1.0 if k.factor is None else k.factor) * _va(row) for k, row in below.items() if not k.dwelling)
    if not house or not found.steps:
        return found.steps
    source = "NEC 2023 220.84(B)" if not found.part_iii else "NEC 2023 220 Part III"
    return (*found.steps, Step("O", "house and other loads", number_text(house), house, "VA", source))


def _holds(rows: Rows, classes: Iterable[str]) -> bool:
    return any(key.category in classes and abs(row[VA]) > 0 for key, row in rows.items())


def _connected(rows: Rows) -> float:
    return sum(_va(row) for key, row in rows.items() if key.dwelling and key.together)


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
