"""The unknowns grouped in blocks that form a forest: a block a bus, with the branch currents that hang on it.

Distribution is nearly a tree of buses, so almost every entry of the matrix lies in a block or between a block and its
parent.  Buses around a small loop are taken as one block; what closes larger loops is left to :mod:`.forest`.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import numpy as np

from .layout import Ints, Layout, columns, components, distinct
from .network import Network

BLOCK_LIMIT = 240
"""Largest number of unknowns of a block made by merging the buses around a loop."""


@dataclass(frozen=True, slots=True)
class Blocks:
    """Blocks in numbers of their own; `levels` holds those of one depth, size and parent size together, roots first."""

    block: Ints
    """Block of each unknown."""
    place: Ints
    """Position of each unknown in its block."""
    size: Ints
    parent: Ints
    """Parent of each block, -1 for a root."""
    unknowns: Ints
    """The unknowns of all blocks one after the other,"""
    start: Ints
    """and where those of each block begin."""
    levels: list[Ints]
    order: list[Any] = field(default_factory=list, repr=False)
    """What :mod:`.elimination` made of them."""


def blocks_of(network: Network, layout: Layout) -> Blocks:
    """The blocks of a network, found once for each layout."""
    kept = layout.kept.get(BLOCK_LIMIT)
    if not isinstance(kept, Blocks):
        kept = layout.kept[BLOCK_LIMIT] = _group(network, layout)
    return kept


def _group(network: Network, layout: Layout) -> Blocks:
    names, group = np.unique(layout.group, return_inverse=True)
    count = len(names)
    voltages = layout.first_branch
    element = np.array(network.branches.element, dtype=np.int64)
    elements = len(network.element_names)
    touching, touched = element[layout.branch], group[layout.branch_node]
    first = np.zeros(elements, dtype=np.int64)
    first[touching[::-1]] = touched[::-1]
    heads, tails = _coupled(network, layout, group)
    heads, tails = np.concatenate((heads, first[touching])), np.concatenate((tails, touched))
    weight = np.bincount(group, minlength=count) + np.bincount(first[element], minlength=count)
    plus = layout.unknown[[source.plus[0] for source in network.sources.values()]]
    merged, parent, depth = _forest(heads, tails, weight, group[plus[plus >= 0]])
    # A branch current belongs to the deepest of the blocks it touches, so that every block can be eliminated alone.
    owner = np.zeros(elements, dtype=np.int64)
    by_depth = np.argsort(depth[merged[touched]], kind="stable")
    owner[touching[by_depth]] = merged[touched[by_depth]]
    block = np.empty(layout.size, dtype=np.int64)
    block[:voltages] = merged[group]
    block[voltages:] = owner[element]
    size = np.bincount(block, minlength=len(parent))
    unknowns = np.argsort(block, kind="stable")
    start = np.concatenate((np.zeros(1, dtype=np.int64), np.cumsum(size)[:-1]))
    place = np.empty(len(block), dtype=np.int64)
    place[unknowns] = np.arange(len(block)) - start[block[unknowns]]
    return Blocks(block, place, size, parent, unknowns, start, _levels(size, parent, depth))


def _coupled(network: Network, layout: Layout, group: Ints) -> tuple[Ints, Ints]:
    """Groups that an admittance of the matrix joins."""
    shunts = columns([shunt[:2] for shunt in network.admittances], 2)
    ends = [(shunts[:, 0], shunts[:, 1]), *((a.ravel(), b.ravel()) for a, b in layout.line_nodes.values())]
    a = layout.unknown[np.concatenate([pair[0] for pair in ends])]
    b = layout.unknown[np.concatenate([pair[1] for pair in ends])]
    inside = (a >= 0) & (b >= 0)
    return group[a[inside]], group[b[inside]]


def _forest(heads: Ints, tails: Ints, weight: Ints, roots: Ints) -> tuple[Ints, Ints, Ints]:
    """Merge groups until the blocks form a forest: block of each group, parent and depth of each block.

    The groups around a loop, up to where its two sides meet, become one block unless that grows beyond BLOCK_LIMIT.
    """
    count = len(weight)
    low, high = np.minimum(heads, tails), np.maximum(heads, tails)
    keys = distinct((low * count + high)[low != high])
    low, high = keys // max(count, 1), keys % max(count, 1)
    above, level = _breadth_first(count, low, high, roots)
    cross = (above[low] != high) & (above[high] != low)
    top = np.arange(count)
    if cross.any():
        top = _merge_loops(low[cross].tolist(), high[cross].tolist(), above.tolist(), level.tolist(), weight.tolist())
    kept, merged = np.unique(top, return_inverse=True)
    parent = np.where(above[kept] >= 0, merged[above[kept]], -1)
    return merged, parent, level[kept]


def _breadth_first(count: int, a: Ints, b: Ints, roots: Ints) -> tuple[Ints, Ints]:
    """Parent (-1 for a root) and level of every point, from one root a part: a source where there is one."""
    above = np.full(count, -1, dtype=np.int64)
    level = np.zeros(count, dtype=np.int64)
    part = components(count, a, b)
    root_of = np.arange(count)
    root_of[part[roots[::-1]]] = roots[::-1]
    frontier = distinct(root_of[distinct(part)])
    from_points, to_points = np.concatenate((a, b)), np.concatenate((b, a))
    order = np.argsort(from_points, kind="stable")
    to_points = to_points[order]
    degree = np.bincount(from_points, minlength=count)
    start = np.cumsum(degree) - degree
    seen = np.zeros(count, dtype=np.bool_)
    seen[frontier] = True
    depth = 0
    while len(frontier):
        depth += 1
        many = degree[frontier]
        before = np.cumsum(many) - many
        near = to_points[np.arange(int(many.sum())) + np.repeat(start[frontier] - before, many)]
        come_from = np.repeat(frontier, many)
        new = ~seen[near]
        near, come_from = near[new], come_from[new]
        above[near[::-1]] = come_from[::-1]  # the first that reaches a point keeps it
        seen[near] = True
        level[near] = depth
        frontier = distinct(near)
    return above, level


def _merge_loops(heads: list[int], tails: list[int], above: list[int], level: list[int], weight: list[int]) -> Ints:
    top = list(range(len(above)))

    def find(point: int) -> int:
        while top[point] != point:
            top[point] = top[top[point]]
            point = top[point]
        return point

    for one, other in zip(heads, tails, strict=True):
        a, b = find(one), find(other)
        path = set()
        while a != b:
            if level[a] < level[b]:
                a, b = b, a
            path.add(a)
            a = find(above[a])
        path.discard(a)
        if len(path) < 2 or sum(weight[block] for block in path) > BLOCK_LIMIT:
            continue
        keep = min(path, key=lambda block: level[block])
        weight[keep] = sum(weight[block] for block in path)
        for block in path:
            top[block] = keep
    return np.array([find(point) for point in range(len(top))], dtype=np.int64)


def _levels(size: Ints, parent: Ints, depth: Ints) -> list[Ints]:
    """Blocks of one depth, size and parent size together, from the roots down; those of one parent side by side."""
    parent_size = np.where(parent >= 0, size[parent], 0)
    order = np.lexsort((parent, parent_size, size, depth))
    change = (np.diff(depth[order]) != 0) | (np.diff(size[order]) != 0) | (np.diff(parent_size[order]) != 0)
    return [np.asarray(part) for part in np.split(order, np.flatnonzero(change) + 1)]
