"""What the studies solved, in one number each: for lenses, hints and cards that are shown while one types.

Plain values without a tie to the model that they were solved on, so that they can be kept while the model moves on.
Amounts are in A, V and shares of one; what is unknown is left out, its reasons are with the full figures
(``studies.study_figures``).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, NamedTuple, TypeVar

from wyeline_grammar.linking import Equipment

if TYPE_CHECKING:
    from wyeline_linter.studies.judged_columns import JudgedColumns
    from wyeline_linter.studies.scenarios import LargestFaults
    from wyeline_linter.view import View

T = TypeVar("T")
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


class Figures(Mapping[str, T]):
    """Figures of one kind by name, side by side in columns: one is put together when it is asked for."""

    def __init__(
        self,
        names: Sequence[str] = (),
        columns: tuple[list[Any], ...] = (),
        make: Callable[..., T] | None = None,
        row: dict[str, int] | None = None,
    ) -> None:
        self._row = {name: k for k, name in enumerate(names)} if row is None else row
        self._columns = columns
        self._make = make

    def __getitem__(self, name: str) -> T:
        row = self._row[name]
        assert self._make is not None
        return self._make(*(column[row] for column in self._columns))

    def __contains__(self, name: object) -> bool:
        return name in self._row

    def __iter__(self) -> Iterator[str]:
        return iter(self._row)

    def __len__(self) -> int:
        return len(self._row)

    def __eq__(self, other: object) -> bool:
        if isinstance(other, Figures) and (self._row is other._row or list(self._row) == list(other._row)):
            return self._columns is other._columns or self._columns == other._columns
        return isinstance(other, Mapping) and dict(self.items()) == dict(other.items())

    __hash__ = None  # type: ignore[assignment]


@dataclass(frozen=True, slots=True)
class SolvedFigures:
    """Figures of one version of a model, by the names of equipment and the keys of feeders."""

    faults: Figures[FaultFigure] = field(default_factory=Figures)
    volts: Figures[VoltsFigure] = field(default_factory=Figures)
    drops: Figures[DropFigure] = field(default_factory=Figures)


def solved_figures(view: View) -> SolvedFigures:
    """The figures of a view. Solves what is not solved yet, which may take seconds."""
    columns = view.studies.normal.judged.columns
    if columns is None:
        return SolvedFigures(_faults(view))
    return SolvedFigures(_faults(view), _volts(columns), _drops(columns))


def _faults(view: View) -> Figures[FaultFigure]:
    from wyeline_linter.studies.scenarios import largest_faults

    normal = view.studies.normal
    limits = [limit for _, limit in view.studies.of_each("fault limits", view.model.equipment, _limit)]
    found = largest_faults(view)
    of = found.names, limits, [(study.state, study.largest.mark) for study in found.studies], normal.smallest.mark
    return normal.kept("fault figures", of, lambda: _made(found, view, limits))


def _made(found: LargestFaults, view: View, limits: list[tuple[float | None, str]]) -> Figures[FaultFigure]:
    from wyeline_linter.studies.fault import KINDS
    from wyeline_linter.studies.scenarios import when

    rows = [k for k, kind in enumerate(found.kind.tolist()) if kind >= 0]
    names = [found.names[k] for k in rows]
    which, amperes, kinds = found.which.tolist(), found.amperes.tolist(), found.kind.tolist()
    words = [when(study.state).strip() for study in found.studies]
    ceilings = [study.largest.ceilings for study in found.studies]
    smallest, least_kind = view.studies.normal.smallest.deciding_at(names)
    columns = (
        [amperes[k] for k in rows],
        [KINDS[kinds[k]] for k in rows],
        [words[which[k]] for k in rows],
        [ceilings[which[k]].get(found.names[k], "") for k in rows],
        [least if kind >= 0 else None for least, kind in zip(smallest.tolist(), least_kind.tolist(), strict=True)],
        [limits[k][0] for k in rows],
        [limits[k][1] for k in rows],
    )
    return Figures(names, columns, FaultFigure)


def _limit(equipment: Equipment) -> tuple[float | None, str]:
    for word in RATINGS:
        value = equipment.body.number(word)
        if value:
            return value, word
    return None, ""


def _volts(columns: JudgedColumns) -> Figures[VoltsFigure]:
    rows, volts = columns.volts()
    lowest = rows.pairs.lowest(volts)
    known, names, pairs, row = rows.naming.of(lowest)
    at = lowest[known]
    least = volts[known, at]
    share = least / rows.pairs.nominal_v[known, at]
    return Figures(names, (least.tolist(), pairs, share.tolist()), VoltsFigure, row)


def _drops(columns: JudgedColumns) -> Figures[DropFigure]:
    import numpy as np

    rows, drops = columns.rows, columns.drops
    known, names, pairs, row = rows.naming.of(drops.column)
    path = columns.path_of_rows[known]
    whole: list[float | None] = path.tolist()
    for k in np.flatnonzero(np.isnan(path)).tolist():
        whole[k] = None
    return Figures(names, (drops.volts[known].tolist(), pairs, drops.part[known].tolist(), whole), DropFigure, row)
