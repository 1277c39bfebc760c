"""What the studies solved, in one number each: for lenses, hints and cards that are shown while one types.

Plain values without a tie to the model that they were solved on, so that they can be kept while the model moves on.
Amounts are in A, V and shares of one; what is unknown is left out, its reasons are with the full figures
(``studies.study_figures``).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import field
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_grammar.records import dataclass

if TYPE_CHECKING:
    from wyeline_linter.analysis import View
    from wyeline_linter.studies.study import StateStudy

RATINGS = ("series", "rated", "withstand")
"""The ratings that a fault is held against, the one that counts first."""


class FaultFigure(NamedTuple):
    """The largest fault at a place in any switch state, beside what is written that the place bears.

    ``kind`` is of ``studies.fault.WORDS``; ``when`` names the switch state (empty: normal); ``ceiling`` is the source
    that is taken as unlimited, so that the fault is at the most as large; ``least_a`` is the smallest fault as normal.
    """

    largest_a: float
    kind: str
    when: str
    ceiling: str
    least_a: float | None
    limit_a: float | None
    of: str


class VoltsFigure(NamedTuple):
    """The lowest voltage at a place under the load that it is judged with, as normal: between which conductors, and as
    a share of nominal."""

    volts: float
    between: tuple[str, str]
    share: float


class DropFigure(NamedTuple):
    """What a feeder loses under the load that it is judged with, as normal, on the pair that loses most.

    ``path_share`` is the sum of the shares from the source to its far end, None where one of them is unknown.
    """

    volts: float
    between: tuple[str, str]
    share: float
    path_share: float | None


@dataclass(frozen=True, slots=True)
class SolvedFigures:
    """Figures of one version of a model, by the names of equipment and the keys of feeders."""

    faults: dict[str, FaultFigure] = field(default_factory=dict)
    volts: dict[str, VoltsFigure] = field(default_factory=dict)
    drops: dict[str, DropFigure] = field(default_factory=dict)


def solved_figures(view: View) -> SolvedFigures:
    """The figures of a view. Solves what is not solved yet, which may take seconds."""
    studies = view.studies.for_faults()
    normal = view.studies.normal
    return SolvedFigures(
        dict(_faults(view, studies, normal)),
        dict(_volts(view, normal)),
        dict(_drops(normal)),
    )


def _faults(view: View, studies: list[StateStudy], normal: StateStudy) -> Iterator[tuple[str, FaultFigure]]:
    from wyeline_linter.studies.scenarios import worst_fault

    for name, equipment in view.model.equipment.items():
        worst = worst_fault(studies, lambda f, name=name: f.worst(name))  # type: ignore[misc]
        if worst is None or worst.fault.amperes is None:
            continue
        bus = worst.faults.bus(name)
        least = normal.smallest.worst(name)
        limit, word = _limit(equipment)
        yield (
            name,
            FaultFigure(
                worst.fault.amperes,
                worst.fault.kind,
                worst.when.strip(),
                worst.faults.built.ceiling.get(bus.name, "") if bus is not None else "",
                least.amperes if least is not None else None,
                limit,
                word,
            ),
        )


def _limit(equipment: Equipment) -> tuple[float | None, str]:
    for word in RATINGS:
        value = equipment.body.number(word)
        if value:
            return value, word
    return None, ""


def _volts(view: View, normal: StateStudy) -> Iterator[tuple[str, VoltsFigure]]:
    for name in view.model.equipment:
        lowest = normal.judged.lowest(name)
        if lowest is not None:
            yield name, VoltsFigure(lowest.volts, lowest.between, lowest.per_unit)


def _drops(normal: StateStudy) -> Iterator[tuple[str, DropFigure]]:
    for key in normal.flow.built.ends:
        feeder = normal.model.feeders[key]
        drop = normal.judged.drop(feeder)
        if drop is not None:
            whole = normal.path_drop(feeder.target.name)[0]
            yield key, DropFigure(drop.volts, drop.between, drop.part, whole)
