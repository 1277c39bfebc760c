"""A circuit that was made of the model: where the model's things are in it, and what of it cannot be told."""

from __future__ import annotations

from dataclasses import dataclass, field

from wyeline_linter.circuit import Bus, Network
from wyeline_linter.studies.case import Assumption, Case, Missing
from wyeline_linter.studies.line_impedance import LineData
from wyeline_linter.studies.recipe import Recipe
from wyeline_linter.studies.source_impedance import USUAL_TOLERANCE
from wyeline_linter.studies.transformer_impedance import TransformerData
from wyeline_linter.systems import System

Reasons = tuple[str, ...]


@dataclass(slots=True)
class Built:
    """A circuit and where the model's things are in it.

    ``bus`` and ``input_bus`` give the bus of a piece of equipment and, for what has two sides, that of its input;
    ``ends`` the two buses of a feeder; ``lines`` the feeders whose impedance is known. ``unknown``, ``unknown_earth``
    and ``unknown_ground`` say by bus name why its figures, its faults to earth and neutral, or those to earth alone,
    cannot be told;
    ``outside`` does so for equipment that is not in the circuit. ``missing`` lists each lacking fact once.
    """

    case: Case
    network: Network = field(default_factory=Network)
    bus: dict[str, Bus] = field(default_factory=dict)
    input_bus: dict[str, Bus] = field(default_factory=dict)
    system_at: dict[str, System] = field(default_factory=dict)
    ends: dict[str, tuple[Bus, Bus]] = field(default_factory=dict)
    lines: dict[str, LineData] = field(default_factory=dict)
    transformers: dict[str, TransformerData] = field(default_factory=dict)
    unknown: dict[str, Reasons] = field(default_factory=dict)
    unknown_earth: dict[str, Reasons] = field(default_factory=dict)
    unknown_ground: dict[str, Reasons] = field(default_factory=dict)
    outside: dict[str, Reasons] = field(default_factory=dict)
    missing: list[Missing] = field(default_factory=list)
    assumed: list[Assumption] = field(default_factory=list)
    ceiling: dict[str, str] = field(default_factory=dict)
    """Bus name -> the unlimited source above it."""
    converter: dict[str, str] = field(default_factory=dict)
    """Bus name -> the converter that alone feeds it, and limits what flows there."""
    tolerance: dict[str, float] = field(default_factory=dict)
    """Bus name -> how far above nominal its voltage may stand, as a part of it, where that is written."""
    recipe: Recipe = field(default_factory=Recipe)
    """What was placed and of what, for the same circuit with other values (:mod:`.vary`)."""

    def reasons(self, bus: Bus) -> Reasons:
        return self.unknown.get(bus.name, ())

    def noted(self) -> tuple[int, int]:
        """Where the next lacking facts and assumptions are listed."""
        return len(self.missing), len(self.assumed)

    def inherit(self, near: Bus, bus: Bus) -> None:
        """What is not known at ``near`` is not known at ``bus`` behind it."""
        for kept in (self.unknown, self.unknown_earth, self.unknown_ground):
            if near.name in kept:
                kept[bus.name] = kept[near.name]
        for marked in (self.ceiling, self.converter):
            if near.name in marked:
                marked[bus.name] = marked[near.name]
        if near.name in self.tolerance:
            self.tolerance[bus.name] = self.tolerance[near.name]

    def fed_beside(self, one: Bus, other: Bus) -> None:
        """Both buses are joined: what another source feeds too, no converter limits alone."""
        first, second = self.converter.get(one.name), self.converter.get(other.name)
        if first != second:
            self.converter = {name: by for name, by in self.converter.items() if by not in (first, second)}

    def state_tolerance(self, bus: Bus, stated: float | None) -> float:
        """Keep the tolerance of a system that is made at a bus, where it is written; gives the one that counts."""
        self.tolerance.pop(bus.name, None)
        if stated is not None:
            self.tolerance[bus.name] = stated
        return self.tolerance_at(bus)

    def tolerance_at(self, bus: Bus) -> float:
        """How far above nominal the voltage of a bus may stand, as a part of it: written, or the usual."""
        return self.tolerance.get(bus.name, USUAL_TOLERANCE)

    def add_unknown(self, bus: Bus, reasons: Reasons) -> None:
        """More reasons why the figures of a bus cannot be told."""
        if reasons:
            self.unknown[bus.name] = tuple(dict.fromkeys((*self.unknown.get(bus.name, ()), *reasons)))

    def add_unknown_earth(self, bus: Bus, reasons: Reasons) -> None:
        """The same of its faults to earth and neutral alone."""
        if reasons:
            known = self.unknown_earth.get(bus.name, ())
            self.unknown_earth[bus.name] = tuple(dict.fromkeys((*known, *reasons)))
