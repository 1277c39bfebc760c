"""Drops, currents and voltages at the load that each of them is judged with.

The load flow is one consistent state: every load counts by the part that its source counts of it, so that currents add
up and power balances. A feeder may have to carry more than its part of that state, because a demand factor falls with
what it is taken over: 8 kVA of receptacles count in full on their panel's feeder and by half in a hundred at the
service. A feeder is therefore judged with its own demand, the feeder of a single load with the load as connected. What
that is beyond the solved state is put on its wires as currents at nominal voltage, turned to the solved voltage; wires
are linear, so the solved drop plus theirs is the drop of the sum. At equipment, what its own way loses beyond the
solved state is taken off the solved voltage.
"""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from wyeline_linter.loads.demand_shares import Beyond, DemandShares
from wyeline_linter.network import follows_grid
from wyeline_linter.studies.flow import Drop, FlowView, PairVolts, lowest_of

if TYPE_CHECKING:
    from wyeline_grammar.linking import Feeder
    from wyeline_linter.studies.judged_columns import JudgedColumns
    from wyeline_linter.studies.study import StateStudy


class Judged:
    """The judged figures of one switch state. None and empty where the load flow does not tell them."""

    def __init__(self, study: StateStudy) -> None:
        self.study = study

    @property
    def flow(self) -> FlowView:
        return self.study.flow

    @property
    def demand(self) -> DemandShares:
        return self.study.demand

    @cached_property
    def columns(self) -> JudgedColumns | None:
        """All of them side by side; None where the load flow is not solved."""
        from wyeline_linter.studies.judged_columns import JudgedColumns

        solved = self.flow.solved
        return None if solved is None else JudgedColumns(self.study, solved.v, self.study.beyond)

    # feeders

    def beyond(self, feeder: Feeder) -> Beyond | None:
        """What a feeder is judged with beyond the solved state; None where no load hangs on it."""
        if self.study.connectivity.supply.get(feeder.source.name) is feeder and not self.backwards(feeder):
            return None  # a following inverter delivers along it
        return self.demand.beyond(feeder.source.name if self.backwards(feeder) else feeder.target.name)

    def backwards(self, feeder: Feeder) -> bool:
        """Whether the feeder supplies the end that it is written from."""
        source = self.study.model.equipment.get(feeder.source.name)
        if source is None or follows_grid(source):
            return False
        return self.study.connectivity.supply.get(source.name) is feeder

    def currents(self, feeder: Feeder) -> dict[str, complex] | None:
        """Amperes into a feeder by conductor, at the load that it is judged with."""
        solved, columns = self.flow.currents(feeder.key), self.columns
        row = columns.rows.row.get(feeder.key) if columns is not None else None
        if solved is None or columns is None or row is None:
            return solved
        added = dict(zip("ABCN", columns.added[:, row].tolist(), strict=True))
        sign = -1.0 if self.backwards(feeder) else 1.0
        return {c: i + sign * added.get(c, 0j) for c, i in solved.items()}

    def drop(self, feeder: Feeder) -> Drop | None:
        """The drop of a feeder towards what it feeds, on the pair that loses most."""
        columns = self.columns
        return None if columns is None else Drop.of(columns.rows, columns.drops, feeder.key)

    # equipment

    def lost_beyond(self, name: str, *, entering: bool = False) -> float:
        """What the way to a piece of equipment loses beyond the solved state, as a part of nominal; never below 0."""
        columns = self.columns
        place = columns.pieces.tree.index.get(name) if columns is not None else None
        if columns is None or place is None:
            return 0.0
        lost = float(columns.lost_beyond[place])
        return lost - float(columns.lost_in_transformers[place]) if entering else lost

    def volts(self, name: str, *, entering: bool = False) -> tuple[PairVolts, ...]:
        """Volts of every pair of conductors at a piece of equipment (or its input); never below 0."""
        pairs = self.flow.volts(name, entering=entering)
        lost = self.lost_beyond(name, entering=entering) if pairs else 0.0
        return (
            pairs
            if lost == 0.0
            else tuple(
                PairVolts(between, nominal_v, max(0.0, volts - lost * nominal_v)) for between, nominal_v, volts in pairs
            )
        )

    def lowest(self, name: str, *, entering: bool = False) -> PairVolts | None:
        """The pair that stands lowest against its nominal."""
        return lowest_of(self.volts(name, entering=entering))
