"""What a one-line diagram is drawn from: equipment as nodes, feeders as edges, each with its words.

A sketch knows no electricity. Whoever makes it decides the words; the engine decides places and shapes. ``None`` as a
voltage or a fault figure means unknown and is drawn as a question mark, never left out.
"""

from __future__ import annotations

import enum
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property


class Kind(enum.StrEnum):
    """What a node is drawn as. ``CHARGING_POINT`` is a charger of vehicles, ``CHARGER`` any other, which rectifies.
    ``REFERENCE_OUT`` and ``REFERENCE_IN`` are made by the engine, for other sheets."""

    UTILITY = "utility"
    GENERATOR = "generator"
    INVERTER = "inverter"
    BATTERY = "battery"
    UPS = "ups"
    TRANSFER = "transfer"
    SWITCHGEAR = "switchgear"
    SWITCHBOARD = "switchboard"
    MCC = "mcc"
    PANEL = "panel"
    BUSWAY = "busway"
    DISCONNECT = "disconnect"
    TRANSFORMER = "transformer"
    MOTOR = "motor"
    DRIVE = "drive"
    LOAD = "load"
    CHARGER = "charger"
    CHARGING_POINT = "charging-point"
    CAPACITOR = "capacitor"
    METER = "meter"
    SPD = "spd"
    JUNCTION = "junction"
    REFERENCE_OUT = "reference-out"
    REFERENCE_IN = "reference-in"


KIND_WORDS = {
    Kind.UTILITY: "utility supply",
    Kind.UPS: "UPS",
    Kind.TRANSFER: "transfer switch",
    Kind.MCC: "MCC",
    Kind.DISCONNECT: "disconnecting switch",
    Kind.DRIVE: "variable-speed drive",
    Kind.SPD: "surge protection",
}
"""What people read for a kind, where it is not its own word."""
BUSES = frozenset({Kind.SWITCHGEAR, Kind.SWITCHBOARD, Kind.MCC, Kind.PANEL, Kind.BUSWAY})
REFERENCES = frozenset({Kind.REFERENCE_OUT, Kind.REFERENCE_IN})


class Status(enum.StrEnum):
    """Drawn by line style alone: thin, thick, dashed, crossed, dotted."""

    EXISTING = "existing"
    NEW = "new"
    FUTURE = "future"
    DEMOLISH = "demolish"
    TEMPORARY = "temporary"


class DeviceKind(enum.StrEnum):
    BREAKER = "breaker"
    FUSE = "fuse"
    SWITCH = "switch"


@dataclass(frozen=True, slots=True)
class Device:
    """An overcurrent or switching device on an edge. ``lines`` are its words, such as ``225 A 3P``."""

    kind: DeviceKind
    lines: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Winding:
    """A transformer winding as marked on a drawing.

    ``connection`` is one of ``delta``, ``wye``, ``zigzag``, ``single`` or empty where it is unknown; ``grounded``
    tells whether its neutral (or midpoint) is connected to ground, None where that is unknown or has no meaning.
    """

    connection: str = ""
    grounded: bool | None = None


@dataclass(frozen=True, slots=True)
class Node:
    """A piece of equipment.

    ``tag`` is printed in bold, ``lines`` (ratings) below it. ``voltage`` and ``fault`` are the derived figures as
    text: None is unknown and printed as ``?``, the empty string is left out. ``source`` is ``file:line``, ``working``
    a link (such as ``#working-MSB``) or empty. ``windings`` are (primary, secondary) of a transformer. ``stands_on`` is
    the edge that a transfer switch connects (empty: the first one to arrive).
    """

    id: str
    kind: Kind
    tag: str
    lines: tuple[str, ...] = ()
    voltage: str | None = ""
    fault: str | None = ""
    status: Status = Status.NEW
    source: str = ""
    working: str = ""
    windings: tuple[Winding, Winding] | None = None
    stands_on: str = ""

    @property
    def words(self) -> tuple[str, ...]:
        """The lines below the tag: ratings, then voltage, then fault figure."""
        words = list(self.lines)
        if self.voltage != "":
            words.append("? V" if self.voltage is None else self.voltage)
        if self.fault != "":
            words.append("fault ? kA" if self.fault is None else self.fault)
        return tuple(words)


@dataclass(frozen=True, slots=True)
class Edge:
    """A feeder or branch, from the supplying node to the supplied one.

    ``device`` sits at the supplying end, ``main`` at the supplied end (the main breaker of a panel). ``lines`` are the
    conductor text, length and the like; long lines are broken where the text allows. ``from_port`` and ``to_port`` are
    words printed beside the end (``normal``, ``emergency``, ``through``) where they are not empty. ``tie`` says that
    two boards are joined side by side rather than one fed from the other. ``rank`` orders the edges of one board
    (circuit position, distance along a busway); equal ranks keep the order of the sketch.
    """

    id: str
    source: str
    target: str
    from_port: str = ""
    to_port: str = ""
    device: Device | None = None
    main: Device | None = None
    lines: tuple[str, ...] = ()
    normally_open: bool = False
    tie: bool = False
    rank: float = 0.0
    status: Status = Status.NEW
    location: str = ""
    working: str = ""
    title: str = ""


@dataclass(frozen=True)
class Sketch:
    """Nodes and edges in a stable order. Raises ValueError for a repeated id or an edge to a node that is not there."""

    nodes: tuple[Node, ...]
    edges: tuple[Edge, ...] = ()
    title: str = ""
    node: Mapping[str, Node] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        by_id = {n.id: n for n in self.nodes}
        if len(by_id) != len(self.nodes):
            raise ValueError("two nodes of the sketch have the same id")
        if len({e.id for e in self.edges}) != len(self.edges):
            raise ValueError("two edges of the sketch have the same id")
        for edge in self.edges:
            for end in (edge.source, edge.target):
                if end not in by_id:
                    raise ValueError(f"edge {edge.id} ends at {end}, which the sketch does not have")
        object.__setattr__(self, "node", by_id)

    @cached_property
    def edges_from(self) -> Mapping[str, tuple[Edge, ...]]:
        """By supplying node, in rank order."""
        return _grouped(self, "source")

    @cached_property
    def edges_to(self) -> Mapping[str, tuple[Edge, ...]]:
        """By supplied node, in rank order."""
        return _grouped(self, "target")


def _grouped(sketch: Sketch, end: str) -> dict[str, tuple[Edge, ...]]:
    groups: dict[str, list[Edge]] = {n.id: [] for n in sketch.nodes}
    for edge in sorted(sketch.edges, key=lambda e: e.rank):
        groups[getattr(edge, end)].append(edge)
    return {name: tuple(edges) for name, edges in groups.items()}
