"""The load flow read by equipment and feeder: volts between conductors, drops, currents, unbalance, losses."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.circuit import Bus
from wyeline_linter.studies.built import Built, Reasons
from wyeline_linter.systems import NEUTRAL, System

if TYPE_CHECKING:
    from wyeline_linter.circuit import NotSolved, Solved
    from wyeline_linter.studies.pair_columns import Drops, FeederRows

ALIKE = 1e-9
"""Pairs that differ by no more than this part of nominal are alike: the first of them is named."""


def nominal_pairs(system: System) -> list[tuple[str, str, float]]:
    """Every pair of conductors of a system between which there is a voltage, with the nominal."""
    names = system.conductors
    pairs = ((a, b, system.distance(a, b)) for k, a in enumerate(names) for b in names[k + 1 :])
    return [pair for pair in pairs if pair[2] > 1e-6]


class PairVolts(NamedTuple):
    """Volts between two conductors: nominal (exact) and under load."""

    between: tuple[str, str]
    nominal_v: float
    volts: float

    @property
    def per_unit(self) -> float:
        return self.volts / self.nominal_v


class Drop(NamedTuple):
    """Voltage drop of a feeder on the pair of conductors that loses most, in V and as a part of nominal."""

    between: tuple[str, str]
    volts: float
    part: float

    @classmethod
    def of(cls, rows: FeederRows, drops: Drops, key: str) -> Drop | None:
        """That of one feeder; None where it cannot be told."""
        row = rows.row.get(key)
        if row is None or drops.column[row] < 0:
            return None
        return cls(rows.far.names[row][drops.column[row]], float(drops.volts[row]), float(drops.part[row]))


def lowest_of(pairs: Sequence[PairVolts]) -> PairVolts | None:
    """The pair that stands lowest against its nominal, the first of those that are alike in nine digits."""
    return min(pairs, key=_ninths) if pairs else None


def highest_of(pairs: Sequence[PairVolts]) -> PairVolts | None:
    """The pair that stands highest."""
    return max(pairs, key=_ninths) if pairs else None


def _ninths(pair: PairVolts) -> int:
    return round(pair.per_unit / ALIKE)  # as `pair_columns` does


@dataclass(frozen=True, slots=True)
class Unbalance:
    """Voltage unbalance of three legs: largest deviation over mean (NEMA MG 1) and V2 over V1 (IEC), as parts."""

    deviation: float
    negative: float


class FlowView:
    """A load flow by the names of the model. Every answer is None where it cannot be told; ``reasons`` say why."""

    def __init__(self, built: Built, solved: Solved | NotSolved) -> None:
        self.built = built
        self.trouble: str | None = None
        self.solved: Solved | None = None
        if hasattr(solved, "reason"):
            self.trouble = solved.reason
        else:
            self.solved = solved
            if not solved.selftest.passed:
                self.trouble = "the solution fails its own check of power balance and currents"
                self.solved = None
        self._nominal: dict[int, list[tuple[str, str, float]]] = {}
        self._drops: Drops | None = None

    @cached_property
    def v(self) -> list[complex]:
        """Voltage to earth by node number, where the flow is solved."""
        return [] if self.solved is None else self.solved.v.tolist()

    # why not

    def reasons(self, name: str, *, entering: bool = False) -> Reasons:
        """Why the figures of a piece of equipment (of its input) are unknown; empty where they are known."""
        bus = self.bus(name, entering=entering)
        if bus is None:
            why = self.built.outside.get(f"{name} output") or self.built.outside.get(name)
            return why or (f"nothing feeds `{name}`",)
        return self._bus_reasons(bus)

    def _bus_reasons(self, bus: Bus) -> Reasons:
        if self.trouble is not None:
            return (self.trouble,)
        return self.built.unknown.get(bus.name, ())

    def feeder_reasons(self, key: str) -> Reasons:
        """Why the figures of a feeder are unknown."""
        ends = self.built.ends.get(key)
        if key in self.built.recipe.refused:
            return (f"`{key}` is left out of the circuit: it cannot feed what it ends at beside its other supply",)
        if ends is None:
            return (f"no current flows in `{key}` in this switch state",)
        if self.trouble is not None:
            return (self.trouble,)
        if key not in self.built.lines:
            own = tuple(m.text for m in self.built.missing if m.subject == key)
            return own or ("it has no length",)
        return self.built.unknown.get(ends[0].name, ()) or self.built.unknown.get(ends[1].name, ())

    # equipment

    def bus(self, name: str, *, entering: bool = False) -> Bus | None:
        """The bus of a piece of equipment: its output, or its input."""
        if entering:
            return self.built.input_bus.get(name) or self.built.bus.get(name)
        return self.built.bus.get(name)

    def volts(self, name: str, *, entering: bool = False) -> tuple[PairVolts, ...]:
        """Volts of every pair of conductors (legs, legs to neutral); empty where unknown."""
        bus = self.bus(name, entering=entering)
        if bus is None or self.solved is None or self._bus_reasons(bus):
            return ()
        return tuple(self._pairs(bus))

    def _pairs(self, bus: Bus) -> Iterator[PairVolts]:
        assert self.solved is not None
        v = self.v
        for first, second, nominal in self.nominal_pairs(self.built.system_at[bus.name]):
            yield PairVolts((first, second), nominal, abs(v[bus[first]] - v[bus[second]]))

    def nominal_pairs(self, system: System) -> list[tuple[str, str, float]]:
        """Every pair of conductors of a system of this circuit between which there is a voltage, with the nominal."""
        found = self._nominal.get(id(system))  # the circuit keeps its systems, so their identity holds
        if found is None:
            found = self._nominal[id(system)] = nominal_pairs(system)
        return found

    def lowest(self, name: str, *, entering: bool = False) -> PairVolts | None:
        """The pair that stands lowest against its nominal."""
        return lowest_of(self.volts(name, entering=entering))

    def highest(self, name: str, *, entering: bool = False) -> PairVolts | None:
        """The pair that stands highest against its nominal."""
        return highest_of(self.volts(name, entering=entering))

    def unbalance(self, name: str, *, entering: bool = False) -> Unbalance | None:
        """Voltage unbalance where three legs are; None elsewhere."""
        bus = self.bus(name, entering=entering)
        if bus is None or self.solved is None or self._bus_reasons(bus):
            return None
        legs = self.built.system_at[bus.name].legs
        if len(legs) != 3:
            return None
        deviation, negative = self.solved.unbalance(bus, legs)  # type: ignore[arg-type]
        return Unbalance(deviation, min(negative, 1 / negative if negative else 1.0))

    # feeders

    def currents(self, key: str) -> dict[str, complex] | None:
        """Amperes into the wires of a feeder at its start, by conductor (the protective one left out)."""
        ends = self.built.ends.get(key)
        if ends is None or self.solved is None or self.feeder_reasons(key):
            return None
        entering, _ = self.solved.line(key)
        k, position = self.solved.network.line_at[key]
        nodes = self.solved.network.lines[k].from_nodes[position]
        names = {node: name for name, node in zip(ends[0].conductors, ends[0].nodes, strict=True)}
        return {names[node]: complex(i) for node, i in zip(nodes, entering, strict=True) if names[node] != "G"}

    def drop(self, key: str) -> Drop | None:
        """The drop of a feeder on the pair that loses most."""
        if self.solved is None:
            return None
        from wyeline_linter.studies.pair_columns import feeder_rows

        rows = feeder_rows(self.built)
        if self._drops is None:
            self._drops = rows.drops(self.solved.v)
        return Drop.of(rows, self._drops, key)

    def loss_w(self, key: str) -> float | None:
        """Heat in the wires of a feeder, in W."""
        if self.solved is None or self.feeder_reasons(key):
            return None
        return self.solved.line_loss(key).real

    def neutral_a(self, key: str) -> float | None:
        """Amperes in the neutral of a feeder; None where it has none or they are unknown."""
        currents = self.currents(key)
        return None if currents is None or NEUTRAL not in currents else abs(currents[NEUTRAL])
