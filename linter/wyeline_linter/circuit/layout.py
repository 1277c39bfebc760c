"""Which unknown stands for which node, and what hangs together: all that follows from the wiring alone.

Nodes joined by links are one unknown, so that a bus may have any number of ideal switches without filling the factors.
Earth, and what links tie to it, is none.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray

from .elements import EARTH
from .network import Network

Complex = NDArray[np.complex128]
Ints = NDArray[np.int64]
Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

FLOATING_S = 1e-6
"""Total leakage to earth given to each part of the network that has no path to earth (common practice, no source): it
makes the matrix solvable and stands for an insulation resistance of 1 megohm."""


@dataclass(frozen=True, slots=True)
class Topology:
    """What hangs together: `part` numbers the galvanic parts node by node, `live` says whether a source reaches it."""

    part: Ints
    floating: Bools
    """Per node: no conducting path to earth, so its voltage to earth is not defined."""
    live: Bools


@dataclass(frozen=True, slots=True)
class Layout:
    """The unknowns of a network: merged node voltages first, then the branch currents in their order."""

    shape: tuple[int, ...]
    """Counts of what the layout was made from: a network that has grown since needs another."""
    node_count: int
    unknown: Ints
    """By node number; -1 for earth and what is linked to it."""
    first_branch: int
    """Number of the first branch current."""
    size: int
    group: Ints
    """By unknown voltage: a bus it belongs to, the same for all unknowns of buses that share one."""
    node_group: Ints
    """By node: that bus."""
    line_nodes: dict[int, tuple[Ints, Ints]]
    """From and to nodes (m, k) of the lines of k conductors."""
    branch: Ints
    """Incidence of branches in columns, earth left out: branch,"""
    branch_node: Ints
    """unknown of the node,"""
    coefficient: Floats
    """and coefficient."""
    topology: Topology
    leakage_s: Floats
    """Per node, the leakage added because its part of the network floats."""
    kept: dict[int, Any] = field(default_factory=dict, repr=False)
    """What :mod:`.blocks` found, by its limit."""
    unknowns_of: list[Any] = field(default_factory=list, repr=False)
    """The buses that faults were asked for last, and their unknowns by width."""


def layout_of(network: Network) -> Layout:
    """The layout of a network, kept with it until something is added."""
    kept = network.wiring.get("layout")
    shape = _shape(network)
    if isinstance(kept, Layout) and kept.shape == shape:
        return kept
    made = network.wiring["layout"] = _lay_out(network, shape)
    return made


def _shape(network: Network) -> tuple[int, ...]:
    return (
        network.node_count,
        len(network.links),
        len(network.branches),
        len(network.admittances),
        *(number for k, group in network.lines.items() for number in (k, len(group.names), len(group.charging_s))),
    )


def _lay_out(network: Network, shape: tuple[int, ...]) -> Layout:
    count = network.node_count
    links = columns(network.links.values(), 2)
    merged = components(count, links[:, 0], links[:, 1])
    kept = np.flatnonzero(merged == np.arange(count))
    number = np.full(count, -1, dtype=np.int64)
    number[kept] = np.arange(len(kept)) - 1  # earth has the lowest number of its part, and becomes -1
    unknown = number[merged]
    bus = np.array(network.node_bus, dtype=np.int64)
    joined = np.flatnonzero((unknown >= 0) & (merged != np.arange(count)))
    node_group = components(max(1, len(network.buses)), bus[joined], bus[merged[joined]])[bus]
    line_nodes = {k: (columns(group.from_nodes, k), columns(group.to_nodes, k)) for k, group in network.lines.items()}
    incidence = network.branches.incidence
    branch = np.array([entry[0] for entry in incidence], dtype=np.int64)
    node = unknown[np.array([entry[1] for entry in incidence], dtype=np.int64)]
    coefficient = np.array([entry[2] for entry in incidence], dtype=np.float64)
    inside = node >= 0
    topology = _topology(network, links, line_nodes)
    sizes = np.bincount(topology.part)
    return Layout(
        shape=shape,
        node_count=count,
        unknown=unknown,
        first_branch=len(kept) - 1,
        size=len(kept) - 1 + len(network.branches),
        group=node_group[kept[1:]],
        node_group=node_group,
        line_nodes=line_nodes,
        branch=branch[inside],
        branch_node=node[inside],
        coefficient=coefficient[inside],
        topology=topology,
        leakage_s=np.where(topology.floating, FLOATING_S / sizes[topology.part], 0.0),
    )


def columns(rows: Iterable[Sequence[int]], width: int) -> Ints:
    """Tuples of numbers as an array (m, width)."""
    return np.array(list(rows), dtype=np.int64).reshape(-1, width)


def _topology(network: Network, links: Ints, line_nodes: dict[int, tuple[Ints, Ints]]) -> Topology:
    """Galvanic parts (conductors, windings, sources) and which of them a source reaches through the cores."""
    count = network.node_count
    pairs: list[tuple[int, int]] = [(a, b) for a, b, _ in network.admittances]
    magnetic: list[tuple[int, int]] = []
    for core in network.cores.values():
        pairs.append(core.primary)
        pairs.extend(core.secondaries)
        magnetic.extend((core.primary[0], secondary[0]) for secondary in core.secondaries)
    for source in network.sources.values():
        pairs.extend(zip(source.plus, source.minus, strict=True))
        pairs.extend((source.plus[0], leg) for leg in source.plus[1:])
    pairs.extend(
        (node, EARTH)
        for group in network.lines.values()
        for position in group.charging_s
        for node in group.from_nodes[position]
    )
    conducting = columns(pairs, 2)
    heads = [links[:, 0], conducting[:, 0], *(ends[0].ravel() for ends in line_nodes.values())]
    tails = [links[:, 1], conducting[:, 1], *(ends[1].ravel() for ends in line_nodes.values())]
    a, b = np.concatenate(heads), np.concatenate(tails)
    part = components(count, a, b)
    # Earth joins parts without bringing supply, so liveness is judged with earth's edges left out.
    coupled = columns(magnetic, 2)
    a, b = np.concatenate((a, coupled[:, 0])), np.concatenate((b, coupled[:, 1]))
    apart = (a != EARTH) & (b != EARTH)
    reach = components(count, a[apart], b[apart])
    fed = [node for source in network.sources.values() for node in (*source.plus, *source.minus) if node]
    live = np.zeros(count, dtype=np.bool_)
    live[reach[fed]] = True
    live = live[reach]
    live[EARTH] = False
    return Topology(part=part, floating=part != part[EARTH], live=live)


def components(count: int, heads: Ints, tails: Ints) -> Ints:
    """The connected parts of a graph: for each of its `count` points the lowest number in its part.

    Every root with a lower neighbour hooks onto it and paths are halved, so that the rounds grow with the logarithm.
    """
    label = np.arange(count, dtype=np.int64)
    a, b = heads, tails
    while True:
        a, b = label[a], label[b]
        apart = a != b
        if not apart.any():
            return label
        a, b = a[apart], b[apart]
        np.minimum.at(label, np.maximum(a, b), np.minimum(a, b))
        while True:
            above = label[label]
            if np.array_equal(above, label):
                break
            label = above


def shares_sources(network: Network, layout: Layout, *, flow: bool) -> bool:
    """Whether links put sources in parallel that have no impedance of their own in the study."""
    ideal = [
        ends
        for source in network.sources.values()
        if not any(source.z_flow_ohm if flow else source.z_ohm)
        for ends in zip(source.plus, source.minus, strict=True)
    ]
    if len(ideal) < 2:
        return False
    apart = columns(ideal, 2)
    return _circles(apart) < _circles(layout.unknown[apart] + 1)


def distinct(values: Ints) -> Ints:
    """The values in ascending order, each once. `numpy.unique` loads masked arrays to ask whether these are some, which
    takes a twentieth of the check of a small model."""
    ordered = np.sort(values, axis=None)
    first = np.ones(len(ordered), dtype=np.bool_)
    np.not_equal(ordered[1:], ordered[:-1], out=first[1:])
    return ordered[first]


def _circles(ends: Ints) -> int:
    """How many edges of a graph close a loop."""
    points, numbered = np.unique(ends, return_inverse=True)
    numbered = numbered.reshape(-1, 2)
    label = components(len(points), numbered[:, 0], numbered[:, 1])
    return len(ends) - (len(points) - len(distinct(label)))
