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
from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.network import follows_grid
from wyeline_linter.studies.flow import Drop, FlowView, PairVolts
from wyeline_linter.systems import NEUTRAL, Known

if TYPE_CHECKING:
    from wyeline_grammar.linking import Feeder
    from wyeline_linter.studies.study import StateStudy

LEGS = ("A", "B", "C")
_NOTHING = 1e-9


class Judged:
    """The judged figures of one switch state. None and empty where the load flow does not tell them."""

    def __init__(self, study: StateStudy) -> None:
        self.study = study
        self._drops: dict[str, Drop | None] = {}
        self._lost: dict[str, float] = {}
        self._way: dict[str, float] = {}

    @property
    def flow(self) -> FlowView:
        return self.study.flow

    @cached_property
    def demand(self) -> DemandShares:
        return self.study.demand

    # feeders

    def beyond(self, feeder: Feeder) -> Beyond | None:
        """What a feeder is judged with beyond the solved state; None where no load hangs on it."""
        if self.study.connectivity.supply.get(feeder.source.name) is feeder and not self.backwards(feeder):
            return None  # a following inverter delivers along it
        return self.demand.beyond(self._fed_by(feeder))

    def _fed_by(self, feeder: Feeder) -> str:
        """The end that the feeder supplies: the one that it is written to, but for a tie that feeds backwards."""
        return feeder.source.name if self.backwards(feeder) else feeder.target.name

    def backwards(self, feeder: Feeder) -> bool:
        """Whether the feeder supplies the end that it is written from."""
        source = self.study.model.equipment.get(feeder.source.name)
        if source is None or follows_grid(source):
            return False
        return self.study.connectivity.supply.get(source.name) is feeder

    def _added(self, feeder: Feeder) -> dict[str, complex] | None:
        """Amperes by conductor that are added to the solved ones, positive towards what is fed."""
        beyond = None if self.demand.plain else self.beyond(feeder)
        if beyond is None or max(abs(i) for i in beyond.amps[:3]) < _NOTHING:
            return None
        near, far = self.flow.built.ends[feeder.key]
        system = self.flow.built.system_at[(near if self.backwards(feeder) else far).name]
        if self.flow.solved is None or not set(system.legs) <= set(LEGS):
            return None
        v = self.flow.solved.v
        first = system.legs[0]
        second = NEUTRAL if system.has_neutral else system.legs[-1]
        nominal = system.potential(first) - system.potential(second)
        solved = complex(v[far[first]] - v[far[second]])
        if not abs(nominal) or not abs(solved):
            return None
        turn = solved / abs(solved) * abs(nominal) / nominal * self._share(feeder)
        amps = {leg: beyond.amps[LEGS.index(leg)] * turn for leg in system.legs}
        if system.has_neutral:
            amps[NEUTRAL] = -sum(amps.values())
        return amps

    def _share(self, feeder: Feeder) -> float:
        """The part of the current that this one of several parallel feeders takes, by the solved state."""
        fed = self._fed_by(feeder)
        others = self.study.connectivity.others.get(fed)
        supply = self.study.connectivity.supply.get(fed)
        if not others or supply is None:
            return 1.0
        solved = {f.key: self.flow.currents(f.key) for f in (supply, *others)}
        sizes = {k: max(map(abs, amps.values()), default=0.0) for k, amps in solved.items() if amps is not None}
        total = sum(sizes.values())
        return sizes.get(feeder.key, 0.0) / total if total else 1.0

    def currents(self, feeder: Feeder) -> dict[str, complex] | None:
        """Amperes into a feeder by conductor, at the load that it is judged with."""
        solved = self.flow.currents(feeder.key)
        if solved is None:
            return None
        added = self._added(feeder)
        if added is None:
            return solved
        sign = -1.0 if self.backwards(feeder) else 1.0
        return {c: i + sign * added.get(c, 0j) for c, i in solved.items()}

    def drop(self, feeder: Feeder) -> Drop | None:
        """The drop of a feeder towards what it feeds, on the pair that loses most."""
        key = feeder.key
        if key not in self._drops:
            self._drops[key] = self._drop(feeder)
        return self._drops[key]

    def _drop(self, feeder: Feeder) -> Drop | None:
        solved = self.flow.drop(feeder.key)
        if solved is None:
            return None
        added, backwards = self._added(feeder), self.backwards(feeder)
        if added is None and not backwards:
            return solved
        near, far = self.flow.built.ends[feeder.key]
        if backwards:
            near, far = far, near
        system, data = self.flow.built.system_at[far.name], self.flow.built.lines[feeder.key]
        v = self.flow.v
        best: Drop | None = None
        for first, second, nominal in self.flow.nominal_pairs(system):
            if first not in near.conductors or second not in near.conductors:
                continue
            at_start, at_end = v[near[first]] - v[near[second]], v[far[first]] - v[far[second]]
            for conductor, sign in ((first, -1.0), (second, 1.0)):
                z = data.neutral if conductor == NEUTRAL else data.leg
                at_end += sign * (z or 0j) * (added or {}).get(conductor, 0j)
            lost = abs(at_start) - abs(at_end)
            if best is None or lost / nominal > best.part + 1e-9:
                best = Drop((first, second), lost, lost / nominal)
        return best

    # equipment

    def lost_beyond(self, name: str, *, entering: bool = False) -> float:
        """What the way to a piece of equipment loses beyond the solved state, as a part of nominal; never below 0."""
        if self.demand.plain:
            return 0.0
        network = self.study.connectivity
        passed: list[str] = []
        while name not in self._way and name in network.supply and len(passed) <= len(network.supply):
            passed.append(name)
            name = network.supplier[name]
        total = before = self._way.get(name, 0.0)
        for fed in reversed(passed):
            before = total + self._feeder_beyond(network.supply[fed])
            total = self._way[fed] = before + self._transformer_beyond(fed)
        if entering and passed:
            return before
        return total - self._transformer_beyond(name) if entering else total

    def _feeder_beyond(self, feeder: Feeder) -> float:
        solved, judged = self.flow.drop(feeder.key), self.drop(feeder)
        if solved is None or judged is None or judged is solved or self.backwards(feeder):
            return 0.0
        return max(0.0, judged.part - solved.part)

    def _transformer_beyond(self, name: str) -> float:
        """R cos + X sin of the impedance, on the fullest line of what its demand is beyond the solved state."""
        data = self.flow.built.transformers.get(name)
        if data is None or data.z_pu is None or not data.s_va:
            return 0.0
        found = self._lost.get(name)
        if found is None:
            beyond = self.demand.beyond(name)
            state = self.study.derivation.states.get(name)
            arriving = state.arriving.system if state is not None and isinstance(state.arriving, Known) else None
            found = 0.0
            if beyond is not None and abs(beyond.va) > _NOTHING:
                part = max(abs(i) for i in beyond.amps[:3]) * volt_amperes_per_ampere(arriving) / data.s_va
                angle = beyond.va / abs(beyond.va)
                found = max(0.0, part * (data.z_pu.real * angle.real + data.z_pu.imag * angle.imag))
            self._lost[name] = found
        return found

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
        pairs = self.volts(name, entering=entering)
        return min(pairs, key=lambda p: round(p.per_unit, 9)) if pairs else None
