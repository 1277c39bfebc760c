"""The dwelling unit that a board carries: what its statement says of it, and its loads with the factors of its method.

Its general load, which the floor area stands for, is a load of the board beside its circuits.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from wyeline_linter.loads.as_given import CONSTANT_POWER, Given
from wyeline_linter.loads.buckets import CODE, CODE_SPLIT, TO_NEUTRAL, Key, Row, Rows, add_row
from wyeline_linter.loads.conductors_of_loads import INDEX, LEG_COUNT, NEUTRAL_AT
from wyeline_linter.loads.dwelling_methods import (
    GENERAL,
    METHODS,
    PARTLY_TO_NEUTRAL,
    ROLES,
    Calculated,
    Dwelling,
    adds_climate,
    calculate,
)
from wyeline_linter.loads.leaves import Leaf, leaf
from wyeline_linter.loads.measured import is_measured, stands
from wyeline_linter.loads.nodes import Sum
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.tables.basis import Basis

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment
    from wyeline_linter.systems import System


def dwelling_of(equipment: Equipment, basis: Basis | None) -> Dwelling | None:
    """What the statement says; None for what is no dwelling, or where the basis has no such calculation."""
    body = equipment.body
    method = body.text("dwelling")
    if method not in METHODS or basis is None or basis.practice != "us" or is_measured(equipment):
        return None
    small, laundry = body.number("small-appliance"), body.number("laundry")
    return Dwelling(
        method,
        body.number("floor-area"),
        2 if small is None else int(small),
        1 if laundry is None else int(laundry),
    )


def is_covered(leaf: Leaf) -> bool:
    """Whether a circuit that states no load needs none in a dwelling: the floor area stands for it."""
    given = leaf.given
    return given is not None and given.va is None and given.how == "none" and given.category in GENERAL


def general_leaf(
    name: str, dwelling: Dwelling, below: Sum, system: System, basis: Basis, share: float = 1.0
) -> Leaf | None:
    """The general load that the written circuits do not hold yet, on every leg to neutral; None where there is none.

    ``below`` runs at a ``share`` of its full value; the leaf is given in full."""
    general = dwelling.general_va(basis)
    if general is None:
        return None
    rows = [*below.rows.items(), *(item for held in below.held.values() for item in held.rows.items())]
    written = sum(row[CODE].real for key, row in rows if key.category in GENERAL and key.factor is None)
    rest = general - written / share
    if rest <= 1e-6 * general:
        return None
    legs = system.legs
    parts = tuple((INDEX[leg], NEUTRAL_AT, complex(rest / len(legs))) for leg in legs)
    given = Given(complex(rest), rest, "lighting", False, 1, False, CONSTANT_POWER, "dwelling")
    return leaf(name, "", given, legs, parts, system, None)


def all_dwellings(
    equipment: Iterable[Equipment], basis: Basis | None, below: Callable[[str], Iterable[str]]
) -> tuple[frozenset[str], frozenset[str]]:
    """The boards that carry a dwelling, and all that lies within one, themselves included."""
    found = frozenset(item.name for item in equipment if dwelling_of(item, basis) is not None)
    return found, frozenset(inside for name in found for inside in below(name))


def as_dwelling(
    board: Equipment,
    basis: Basis | None,
    leaves: tuple[Leaf, ...],
    below: Sum,
    system: System | None,
    counting: Callable[[Sum], Rows],
    share: float,
) -> tuple[tuple[Leaf, ...], Sum, dict[Key, Key]]:
    """The loads of a dwelling with its general load among its leaves, its factors on all of them, and which kind of
    load has become which. ``counting`` leaves out what others run in place of; ``share`` is that of its full load at
    which it runs in a switch state."""
    dwelling, name = dwelling_of(board, basis), board.name
    if dwelling is None or basis is None or not share:
        return leaves, below, {}
    below = below.copy()
    lacks: tuple[str, ...] = () if dwelling.area_m2 is not None else (f"`{name}` gives no floor-area",)
    if system is None or not system.legs:
        lacks += (f"the voltage at `{name}` is not known",)
    elif not system.has_neutral:
        lacks += (f"`{name}` has no neutral for its lighting and receptacles",)
    if lacks or system is None:
        below.unknown = merge_reasons(below.unknown, lacks)
        below.unknown_code = merge_reasons(below.unknown_code, lacks)
        return leaves, below, {}
    general = general_leaf(name, dwelling, below, system, basis, share)
    if general is not None:
        leaves = (*leaves, general)
        added = Sum()
        added.add_leaf(general, alone=False)
        added.new = Sum() if stands(board.body.flags) else None
        below.add(added if share == 1.0 else added.at_share(share))
    climate_added = below.new is not None and adds_climate(counting(below.new))
    found = calculate(dwelling, counting(below), basis, climate_added=climate_added)
    became = {
        key: Key(
            key.category,
            key.continuous and key.category not in ROLES,
            factor,
            key.nameplate,
            dwelling=True,
            together=key.category != found.smaller,
            third=key.third,
        )
        for key, factor in found.factors.items()
    }

    def counted(old: Rows) -> Rows:
        new: Rows = {}
        for key, row in old.items():
            if key in became:
                add_row(new, became[key], _neutral_by_part_iii(key, row, found, basis))
            else:
                add_row(new, key, row)
        return new

    made = below.rekeyed(counted)
    made.factored = merge_reasons(below.factored, (name,))
    made.unknown = merge_reasons(below.unknown, found.unknown)
    return leaves, made, became


def _neutral_by_part_iii(key: Key, row: Row, found: Calculated, basis: Basis) -> Row:
    """The row with what it puts on the neutral: by the standard method also where the optional one is taken."""
    factor, standard = found.factors[key], found.neutral.get(key, 1.0)
    if not factor or (factor == standard and key.category not in PARTLY_TO_NEUTRAL):
        return row
    made, ratio, source = list(row), standard / factor, TO_NEUTRAL
    if key.category in PARTLY_TO_NEUTRAL:
        ratio, source = ratio * basis.value_of("dwelling-neutral-percent") / 100, CODE_SPLIT
    for k in range(LEG_COUNT):
        made[TO_NEUTRAL + k] = ratio * row[source + k]
    return made
