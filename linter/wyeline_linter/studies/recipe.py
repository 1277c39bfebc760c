"""What a circuit was made of, element by element, so that the same circuit can be had with other values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_linter.circuit import Bus
from wyeline_linter.derive import Derivation, EquipmentState
from wyeline_linter.network import Network as Connectivity
from wyeline_linter.network import claims_parallel, follows_grid, makes_system
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.line_impedance import LineData, conduit_of, line_data
from wyeline_linter.studies.source_impedance import SourceData
from wyeline_linter.studies.transformer_impedance import TransformerData
from wyeline_linter.systems import System
from wyeline_linter.tables import Basis
from wyeline_linter.verdicts import Refusal

if TYPE_CHECKING:
    from wyeline_linter.studies.injections import Injections


@dataclass(slots=True)
class LineAt:
    """A run of wires: of a feeder, or a stretch of a busway of ``length_m``; ``missing`` and ``assumed`` say where what
    it lacks is listed, ``carried`` which conductors have an impedance (none: it is bridged)."""

    key: str
    piece: Feeder | Equipment
    system: System
    length_m: float | None
    missing: int
    assumed: int
    data: LineData | None = None
    carried: tuple[str, ...] = ()


@dataclass(slots=True)
class SourceAt:
    """A source, how far above nominal its system may stand, where what it lacks is listed, and its data."""

    equipment: Equipment
    system: System
    tolerance: float
    missing: int
    assumed: int
    data: SourceData


@dataclass(slots=True)
class TransformerAt:
    """A transformer, the voltage that it makes and how far above it that may stand, where what it lacks is listed, its
    data, and where its impedances stand in the circuit."""

    equipment: Equipment
    secondary_v: float
    tolerance: float
    missing: int
    assumed: int
    data: TransformerData
    windings: range


@dataclass(slots=True)
class Recipe:
    """All of one circuit, and the facts that its wiring hangs on."""

    lines: dict[str, LineAt] = field(default_factory=dict)
    sources: list[SourceAt] = field(default_factory=list)
    transformers: list[TransformerAt] = field(default_factory=list)
    followers: list[tuple[Equipment, System, Bus]] = field(default_factory=list)
    """Inverters that follow the grid."""
    names: list[str] = field(default_factory=list)
    """What is listed in its state,"""
    pieces: list[Equipment] = field(default_factory=list)
    states: list[EquipmentState | None] = field(default_factory=list)
    """and the voltages there."""
    wiring: tuple[object, ...] = ()
    """What hangs on what, from :func:`wiring_of`."""
    refused: frozenset[str] = frozenset()
    """The feeders that are left out, from :func:`refused_joins`."""
    declared: dict[str, object] = field(default_factory=dict)
    """The phrases of the declared systems that were looked at."""
    stuff_of: Mapping[str, str | None] = field(default_factory=dict)
    largest_apart: bool = False
    """Whether the largest faults have another circuit: something is plugged into a busway where nobody wrote, or earth
    faults return through an electrode."""
    notes: tuple[int, int] = (0, 0)
    """How much was listed as missing and as assumed before the loads were placed."""
    injections: Injections | None = None
    """The loads of the load flow in columns."""


def wiring_of(network: Connectivity) -> tuple[object, ...]:
    """Which feeder supplies what and which others join it, in the order of the circuit."""
    supply = network.supply
    return (
        [(name, feeder.key if (feeder := supply.get(name)) is not None else None) for name in network.order],
        [(name, [feeder.key for feeder in feeders]) for name, feeders in network.others.items()],
    )


def refused_joins(network: Connectivity, derivation: Derivation) -> frozenset[str]:
    """Further feeders into a board that are left out: those that cannot feed it, and those that nobody claims to run
    together with its supply. What two supplies on one bus would do is no figure of the installation that is meant."""
    return frozenset(
        feeder.key
        for name, feeders in network.others.items()
        for feeder in feeders
        if not joins(network, derivation, name, feeder)
    )


def joins(network: Connectivity, derivation: Derivation, name: str, feeder: Feeder) -> bool:
    """Whether a further feeder into a piece of equipment is part of the circuit."""
    judged, equipment = derivation.feeders.get(feeder.key), derivation.model.equipment
    if judged is not None and isinstance(judged.verdict, Refusal):
        return False
    target, source = equipment[name], equipment[feeder.source.name]
    if makes_system(target) or follows_grid(source) or not network.fed(source.name) or not network.fed(name):
        return True
    return claims_parallel(target, feeder)


def line_of(at: LineAt, tables: Basis | None, case: Case, stuff_of: Mapping[str, str | None]) -> LineData:
    """The impedances of a run for a case."""
    piece, body = at.piece, at.piece.body
    busway = isinstance(piece, Equipment)
    return line_data(
        body,
        key=piece.name if isinstance(piece, Equipment) else piece.key,
        place=piece.place,
        legs=len(at.system.legs),
        neutral=at.system.has_neutral,
        chosen=None if busway else tables,
        case=case,
        conduit="pvc" if busway else conduit_of(body.raceway, stuff_of),
        frequency_hz=at.system.frequency_hz,
        length_m=at.length_m,
    )
