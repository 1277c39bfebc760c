"""What stands already, as it was measured: the highest demand at a board, in place of the loads that make it up.

Behind a board with a measurement every load is either within it (`existing`, on feeders that are `existing` too) or
new. Sums keep the new part beside the whole, so that the board counts its measurement and what is new, and nothing
twice. How much of it counts in sizing hangs on the basis (:func:`wyeline_linter.loads.demand.measured_share`).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from wyeline_grammar.linked import status_in
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.loads.as_given import CONSTANT_POWER, Given
from wyeline_linter.loads.buckets import NEW, STANDS, Key, Row
from wyeline_linter.loads.conductors_of_loads import INDEX, NEUTRAL_AT, Part, spread
from wyeline_linter.loads.leaves import MEASURED, Leaf, leaf, unknown_leaf
from wyeline_linter.loads.nodes import Sum
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.systems import NEUTRAL, System

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment, Feeder

WORD = "measured"
NO_POWER_FACTOR = "what was measured at `{}` is kW without a power factor (pf)"
NOT_LISTED = "`{}` stands already, and neither circuits marked `existing` nor a `measured` demand say what it carries"


def is_measured(equipment: Equipment) -> bool:
    """Whether the statement gives a demand that was measured there."""
    return WORD in equipment.body.facts and equipment.kind in BOARDS


def stands(flags: Iterable[str]) -> bool:
    """Whether it was there when something was measured; what moves to another place may have been elsewhere."""
    return status_in(flags) == "existing"


def all_measured(
    equipment: Iterable[Equipment], below: Callable[[str], Iterable[str]]
) -> tuple[frozenset[str], frozenset[str]]:
    """The boards with a measurement, and all that lies behind one, themselves included."""
    found = frozenset(item.name for item in equipment if is_measured(item))
    return found, frozenset(inside for name in found for inside in below(name))


def new_of(equipment: Equipment, leaves: Iterable[Leaf], alone: Callable[[Leaf], bool]) -> Sum:
    """The sum of the loads of a piece of equipment that are new."""
    flags = {placed.key: placed.circuit.body.flags for placed in equipment.circuits}
    made = Sum()
    for one in leaves:
        if not stands(flags.get(one.place, equipment.body.flags)):
            made.add_leaf(one, alone=alone(one))
    return made


def without_reasons(board: Equipment, leaves: Iterable[Leaf]) -> list[Leaf]:
    """The circuits of a measured board; those that stand need not say what they draw."""
    flags = {placed.key: placed.circuit.body.flags for placed in board.circuits}
    return [one._replace(unknown=(), unknown_code=()) if stands(flags[one.place]) else one for one in leaves]


def lists_nothing(board: Equipment, feeders: Iterable[Feeder | None]) -> bool:
    """Whether a board stands already and nothing on it does: what it carries was left out, not empty."""
    if board.kind not in BOARDS or is_measured(board) or not stands(board.body.flags):
        return False
    rows = (placed.circuit.body.flags for placed in board.circuits)
    return not any(map(stands, rows)) and not any(f is not None and stands(f.body.flags) for f in feeders)


def as_measured(
    board: Equipment, leaves: tuple[Leaf, ...], below: Sum, system: System | None, share: float
) -> tuple[tuple[Leaf, ...], Sum]:
    """The loads of a board with its measurement among its leaves, in place of what stands already. ``share`` is that of
    its full load at which it runs in a switch state."""
    new = below if below.new is None else below.new
    made = new.copy()
    made.apart_va, made.new = below.apart_va, new
    if not share:
        return leaves, made
    one = measured_leaf(board, system)
    if one.row is None:
        made.unknown = merge_reasons(made.unknown, one.unknown)
        made.unknown_code = merge_reasons(made.unknown_code, one.unknown_code)
        return (*leaves, one), made
    added = Sum()
    added.add_leaf(one, alone=False)
    added.factored, added.new = (), Sum()
    made.add(added if share == 1.0 else added.at_share(share))
    return (*leaves, one), made


def measured_leaf(board: Equipment, system: System | None) -> Leaf:
    """The measurement as a load on every leg alike; unknown with its reasons."""
    fact, pf = board.body.facts[WORD], board.body.number("pf")
    power = fact.value.dimension == "power"
    per_ampere = volts_of_legs(system) if system is not None and system.legs else None
    lacks: tuple[str, ...] = ()
    if system is None or not system.legs:
        lacks = (f"the voltage at `{board.name}` is not known",)
    elif per_ampere is None:
        lacks = (f"`{board.name}` has one leg and no neutral to return through",)
    elif power and pf is None:
        lacks = (NO_POWER_FACTOR.format(board.name),)
    given = Given(None, None, MEASURED, False, 1, False, CONSTANT_POWER, MEASURED, unknown=lacks)
    if system is None or per_ampere is None or lacks:
        return unknown_leaf(board.name, "", lacks, given)
    cos = 1.0 if pf is None else pf
    va = fact.number * per_ampere if fact.value.dimension == "current" else fact.number / (cos if power else 1.0)
    drawn = va * complex(cos, math.sqrt(1.0 - cos * cos))
    parts = _parts(system, drawn)
    return leaf(board.name, "", given._replace(va=drawn, code_va=va), system.legs, parts, system, 1.0)


def volts_of_legs(system: System) -> float | None:
    """VA for each ampere on every leg alike; None where nothing can return."""
    legs = system.legs
    if _to_neutral(system):
        return sum(system.distance(leg, NEUTRAL) for leg in legs)
    if len(legs) == 3:
        return sum(system.distance(legs[k], legs[(k + 1) % 3]) for k in range(3)) / math.sqrt(3.0)
    return system.distance(legs[0], legs[1]) if len(legs) == 2 else None


def _to_neutral(system: System) -> bool:
    """Whether all of it may return through the neutral: nobody measured how much does, so it counts there whole."""
    if not system.has_neutral:
        return False
    volts = [system.distance(leg, NEUTRAL) for leg in system.legs]
    return max(volts) - min(volts) < 1e-6 * max(volts)


def _parts(system: System, va: complex) -> tuple[Part, ...]:
    if _to_neutral(system):
        return tuple((INDEX[leg], NEUTRAL_AT, va / len(system.legs)) for leg in system.legs)
    return spread(system, system.legs, va) or ()


def new_and_standing(up: Sum, rows: dict[Key, Row], new: dict[Key, Row]) -> list[tuple[Key, Row]]:
    """Rows that come up to a place, what is new of each kind and what stands already apart."""
    if up.new is None:
        return list(rows.items())
    made = [(key._replace(stands=NEW), row) for key, row in new.items()]
    for key, row in rows.items():
        other = new.get(key)
        rest = row if other is None else [one - part for one, part in zip(row, other, strict=True)]
        made.append((key._replace(stands=STANDS), rest))
    return made
