"""What is carried beside what may be carried, in one number each: for lenses, hints and short lists.

Every answer is None where a load below is unknown: the reasons are with the full figures (``load_figures``). Amounts
are demand loads, phasor amperes at nominal voltage.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.loads.buckets import AMPS
from wyeline_linter.loads.conductors_of_loads import INDEX

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LEGS = "ABC"
_BOARD_LIMITS = ("main", "incomer", "bus")
_THROUGH = frozenset({"busway", "transfer", "disconnect", "junction", "meter"})
_BY_POWER = frozenset({"transformer", "generator", "ups", "inverter"})


class Loading(NamedTuple):
    """A demand load and the rating that it is held against, in ``unit`` (``A``, ``VA`` or ``W``).

    ``of`` names the rating: ``main``, ``incomer``, ``bus`` or ``rating``.
    """

    carried: float
    limit: float
    unit: str
    of: str

    @property
    def share(self) -> float:
        """Carried over limit."""
        return self.carried / self.limit


def loading_of(view: View, name: str) -> Loading | None:
    """What a piece of equipment carries on its fullest leg, or in all, beside its smallest rating.

    None where it has no rating, carries nothing, or a load below it is unknown.
    """
    equipment = view.model.equipment.get(name)
    node = view.loads.nodes.get(name)
    if equipment is None or node is None or node.below.unknown or node.below.empty:
        return None
    demand = view.loads.counted(name).demand
    if equipment.kind in _BY_POWER:
        fact = equipment.body.facts.get("power")
        limit = equipment.body.number("power")
        if fact is None or not limit:
            return None
        active = fact.value.dimension == "power"
        return Loading(demand.va.real if active else abs(demand.va), limit, "W" if active else "VA", "rating")
    limits = list(_limits(equipment))
    if not limits:
        return None
    word, limit = min(limits, key=lambda item: item[1])
    return Loading(max(abs(demand.amps[INDEX[leg]]) for leg in _LEGS), limit, "A", word)


def _limits(equipment: Equipment) -> Iterator[tuple[str, float]]:
    words = _BOARD_LIMITS if equipment.kind in BOARDS else ("rating",) if equipment.kind in _THROUGH else ()
    for word in words:
        value = equipment.body.number(word)
        if value:
            yield word, value


def feeder_amps(view: View, feeder: Feeder) -> float | None:
    """The demand current of a feeder on its fullest leg, in A; None where it supplies nothing, or that is unknown."""
    name = feeder.target.name
    node = view.loads.nodes.get(name)
    if view.network.supply.get(name) is not feeder or node is None or node.up.unknown or node.up.empty:
        return None
    demand = view.loads.counted_above(name).demand
    return max(abs(demand.amps[INDEX[leg]]) for leg in _LEGS)


def circuit_amps(view: View, board: str) -> dict[str, float]:
    """The current of each circuit of a board on its fullest leg, in A, by the circuit's key; the unknown left out."""
    node = view.loads.nodes.get(board)
    if node is None:
        return {}
    return {
        leaf.place: max(abs(leaf.row[AMPS + INDEX[leg]]) for leg in _LEGS)
        for leaf in node.leaves
        if leaf.place and leaf.row is not None
    }
