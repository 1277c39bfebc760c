"""What may lie beyond a limit, found side by side: only that needs a closer look, and nothing beyond is left out."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from wyeline_linter.nameplate import WRONG_BEYOND

if TYPE_CHECKING:
    from wyeline_grammar.notation import Voltage
    from wyeline_linter.circuit.layout import Floats
    from wyeline_linter.studies.pair_columns import BusRows
    from wyeline_linter.studies.study import StateStudy

MARGIN = 1e-6
"""By how much a figure may fall short of a limit and is looked at all the same: far more than the last digits."""


class Sieve:
    """The suspects of one switch state."""

    def __init__(self, study: StateStudy) -> None:
        self.study = study

    def feeders_beyond(self, limit: float) -> set[str]:
        """The keys of feeders that may lose more than a part of nominal."""
        columns = self.study.judged.columns
        if columns is None:
            return set()
        part = columns.drops.part
        return {columns.rows.keys[k] for k in (part > limit - MARGIN).nonzero()[0].tolist()}

    def boards_beyond(self, limit: float) -> set[str]:
        """The names of boards with circuits of which one may lose more."""
        return {name for name, most in self.study.worst_branches().items() if most > limit - MARGIN}

    def ways_beyond(self, limit: float) -> set[str]:
        """The names to which, or to the end of one of whose circuits, more may be lost from the source on."""
        columns = self.study.judged.columns
        if columns is None:
            return set()
        order, path = columns.pieces.listed.order, columns.path
        found = {order[k] for k in (path > limit - MARGIN).nonzero()[0].tolist()}
        index, parts = columns.pieces.tree.index, path.tolist()
        normal = self.study if self.study.zone is None else self.study.view.studies.normal
        for name, most in normal.worst_branches().items():
            place = index.get(name)
            if place is not None and parts[place] + most > limit - MARGIN:
                found.add(name)
        return found

    def loads_off(self, kinds: Collection[str]) -> list[str]:
        """The names of loads of these kinds that may see a voltage beyond what they are made for, in their order."""
        study, columns = self.study, self.study.judged.columns
        if columns is None:
            return []
        equipment, stated = study.model.equipment, study.derivation.stated
        named = [p.name for p in study.pieces.running if equipment[p.name].kind in kinds]
        plates = [stated(equipment[name].primary) for name in named]
        rows, volts = columns.volts(entering=True)
        least, most = study.kept("plates", (rows, named, plates), lambda: _bounds(rows, named, plates))
        off = ((volts < least) | (volts > most)).nonzero()[0]
        suspects = {rows.names[k] for k in off.tolist()}
        return [name for name in named if name in suspects]


def plate_volts(plate: Voltage, *, to_neutral: bool) -> tuple[float | None, float | None]:
    """The volts that equipment is made for between two legs, or from a leg to neutral, with the upper end of a band."""
    return (plate.neutral_v, None) if to_neutral else (plate.line_v, plate.high_v)


def _bounds(rows: BusRows, named: list[str], plates: list[Voltage | None]) -> tuple[Floats, Floats]:
    """Volts at every pair within which nothing is off."""
    import numpy as np

    least, most = np.zeros_like(rows.pairs.nominal_v), np.full_like(rows.pairs.nominal_v, np.inf)
    for name, plate in zip(named, plates, strict=True):
        row = rows.row.get(name)
        if row is None or plate is None:
            continue
        pairs = rows.pairs.names[row]
        for column, pair in enumerate(pairs):
            low, high = plate_volts(plate, to_neutral="N" in pair and len(pairs) > 1)
            if low is not None:
                least[row, column] = low * (1 - WRONG_BEYOND + MARGIN)
                most[row, column] = (low if high is None else high) * (1 + WRONG_BEYOND - MARGIN)
    return least, most
