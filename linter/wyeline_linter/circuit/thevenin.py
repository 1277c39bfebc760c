"""The impedance every bus shows to a fault, for all buses in one go.

Of the inverse of the matrix only the diagonal blocks of the buses are wanted.  Distribution is nearly a tree of buses,
so those blocks follow from one block elimination towards the root and one walk back (the selected inverse of
K. Takahashi, J. Fagan and M.-S. Chin, 1973, here on blocks of a bus).  Buses around a loop are taken as one block; what
is too large for that is put back as a low-rank change (Woodbury).  The result is compared with plain solves of the
sparse factors at a few buses; if they differ, or if there are too many loops, every bus is solved from the factors
instead, many right-hand sides at a time.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_array
from scipy.sparse.csgraph import breadth_first_order

from .assemble import Assembled, Complex, Factors, Floats, Ints

LOOP_LIMIT = 600
"""Unknowns on loop-closing connections above which plain solves are the better way."""
BLOCK_LIMIT = 1200
"""Largest number of unknowns of a block made by merging the buses around a loop."""
SAMPLE = 6
AGREEMENT = 1e-6
ROUNDING = 1e-10
"""What the common voltage of a floating part leaves of the digits of a difference."""
CHUNK = 128


def bus_impedances(assembled: Assembled, factors: Factors, buses: Ints) -> list[Complex]:
    """Open-circuit impedance matrices (k, k) to earth of the conductors of each bus asked for, in ohm."""
    network = assembled.network
    wanted = [np.array(network.buses[bus].nodes, dtype=np.int64) - 1 for bus in buses]
    if len(wanted) > 2 * SAMPLE:
        found = _by_tree(assembled, factors, wanted)
        if found is not None:
            return found
    return _by_solving(assembled, factors, wanted)


def _by_solving(assembled: Assembled, factors: Factors, wanted: list[Ints]) -> list[Complex]:
    found: list[Complex] = []
    start = 0
    while start < len(wanted):
        stop, width = start, 0
        while stop < len(wanted) and (width == 0 or width + len(wanted[stop]) <= CHUNK):
            width += len(wanted[stop])
            stop += 1
        rhs = np.zeros((assembled.size, width), dtype=np.complex128)
        rhs[np.concatenate(wanted[start:stop]), np.arange(width)] = 1
        solved = factors.solve(rhs)
        column = 0
        for unknowns in wanted[start:stop]:
            found.append(solved[unknowns, column : column + len(unknowns)])
            column += len(unknowns)
        start = stop
    return found


@dataclass(frozen=True, slots=True)
class _Blocks:
    """Unknowns grouped in blocks that form a forest; `order` lists blocks parents first."""

    block: Ints
    """Block of each unknown."""
    place: Ints
    """Position of each unknown in its block."""
    size: Ints
    parent: Ints
    """Parent of each block, -1 for a root."""
    depth: Ints


def _by_tree(assembled: Assembled, factors: Factors, wanted: list[Ints]) -> list[Complex] | None:
    blocks = _group(assembled)
    rows, cols = assembled.rows, assembled.cols
    row_block, col_block = blocks.block[rows], blocks.block[cols]
    same = row_block == col_block
    up = blocks.parent[row_block] == col_block
    down = blocks.parent[col_block] == row_block
    loops = ~(same | up | down)
    touched = np.unique(np.concatenate((rows[loops], cols[loops])))
    if len(touched) > LOOP_LIMIT:
        return None
    try:
        inverse = _selected_inverse(assembled, blocks, same, up, down)
    except np.linalg.LinAlgError:
        return None
    diagonal, offset = inverse
    found: list[Complex] = []
    for unknowns in wanted:
        block = blocks.block[unknowns[0]]
        size = int(blocks.size[block])
        whole = diagonal[offset[block] : offset[block] + size * size].reshape(size, size)
        at = blocks.place[unknowns]
        found.append(whole[np.ix_(at, at)])
    if len(touched):
        found = _close_loops(assembled, loops, touched, wanted, found)
    return found if _agrees(assembled, factors, wanted, found) else None


def _group(assembled: Assembled) -> _Blocks:
    """A block a bus with the branch currents that hang on it from below; breadth-first from the source buses."""
    network = assembled.network
    nodes = assembled.node_count - 1
    node_bus = np.array(network.node_bus[1:], dtype=np.int64)
    buses = len(network.buses)
    branches = network.branches
    element = np.array(branches.element, dtype=np.int64)
    incidence = np.array([(b, n) for b, n, _ in branches.incidence if n], dtype=np.int64).reshape(-1, 2)
    touching_element, touching_bus = element[incidence[:, 0]], node_bus[incidence[:, 1] - 1]
    pairs = np.unique(np.column_stack((touching_element, touching_bus)), axis=0)
    counts = np.bincount(pairs[:, 0], minlength=len(network.element_names))
    # Which buses are coupled: through the matrix between nodes, or through an element's branches.
    in_y = (assembled.rows < nodes) & (assembled.cols < nodes)
    heads = [node_bus[assembled.rows[in_y]]]
    tails = [node_bus[assembled.cols[in_y]]]
    first = np.zeros(len(counts), dtype=np.int64)
    first[pairs[::-1, 0]] = pairs[::-1, 1]
    heads.append(first[pairs[:, 0]])
    tails.append(pairs[:, 1])
    own_size = np.bincount(node_bus, minlength=buses) + np.bincount(first[element], minlength=buses)
    roots = [int(node_bus[s.plus[0] - 1]) for s in network.sources.values()]
    merged, parent, depth = _forest(np.concatenate(heads), np.concatenate(tails), own_size, roots)
    # A branch current belongs to the deepest of the blocks it touches, so that every block can be eliminated alone.
    owner = np.zeros(len(counts), dtype=np.int64)
    by_depth = pairs[np.argsort(depth[merged[pairs[:, 1]]], kind="stable")]
    owner[by_depth[:, 0]] = merged[by_depth[:, 1]]
    block = np.concatenate((merged[node_bus], owner[element]))
    size = np.bincount(block, minlength=len(parent))
    arranged = np.argsort(block, kind="stable")
    starts = np.concatenate(([0], np.cumsum(size)[:-1]))
    place = np.empty(len(block), dtype=np.int64)
    place[arranged] = np.arange(len(block)) - starts[block[arranged]]
    return _Blocks(block, place, size, parent, depth)


def _forest(heads: Ints, tails: Ints, size: Ints, roots: list[int]) -> tuple[Ints, Ints, Ints]:
    """Merge buses until the blocks form a forest: block of each bus, parent (-1 for a root) and depth of each block.

    The buses around a loop, up to where its two sides meet, become one block unless that grows beyond BLOCK_LIMIT.
    """
    buses = len(size)
    apart = heads != tails
    edges = np.unique(np.sort(np.column_stack((heads[apart], tails[apart])), axis=1), axis=0)
    graph = coo_array((np.ones(len(edges)), (edges[:, 0], edges[:, 1])), shape=(buses, buses)).tocsr()
    above = [-1] * buses
    level = [0] * buses
    seen = np.zeros(buses, dtype=np.bool_)
    for root in (*roots, *range(buses)):
        if seen[root]:
            continue
        order, before = breadth_first_order(graph, root, directed=False)
        seen[order] = True
        for bus in order[1:].tolist():
            above[bus] = int(before[bus])
            level[bus] = level[above[bus]] + 1
    top = list(range(buses))
    weight = size.tolist()

    def find(bus: int) -> int:
        while top[bus] != bus:
            top[bus] = top[top[bus]]
            bus = top[bus]
        return bus

    parents = np.array(above)
    cross = (parents[edges[:, 0]] != edges[:, 1]) & (parents[edges[:, 1]] != edges[:, 0])
    for one, other in edges[cross].tolist():
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
    tops = [find(bus) for bus in range(buses)]
    kept, merged = np.unique(np.array(tops, dtype=np.int64), return_inverse=True)
    parent = np.array([merged[above[bus]] if above[bus] >= 0 else -1 for bus in kept.tolist()], dtype=np.int64)
    depth = np.array([level[bus] for bus in kept.tolist()], dtype=np.int64)
    return merged.astype(np.int64), parent, depth


def _selected_inverse(
    assembled: Assembled, blocks: _Blocks, same: Floats, up: Floats, down: Floats
) -> tuple[Complex, Ints]:
    """Diagonal blocks of the inverse of the forest part, flat, with the offset of each block."""
    size, parent, depth = blocks.size, blocks.parent, blocks.depth
    parent_size = np.where(parent >= 0, size[parent], 0)
    offset = np.concatenate(([0], np.cumsum(size * size)))
    side = np.concatenate(([0], np.cumsum(size * parent_size)))
    diagonal = np.zeros(int(offset[-1]), dtype=np.complex128)
    to_parent = np.zeros(int(side[-1]), dtype=np.complex128)
    from_parent = np.zeros(int(side[-1]), dtype=np.complex128)
    rows, cols, values = assembled.rows, assembled.cols, assembled.values
    row_block, col_block = blocks.block[rows], blocks.block[cols]
    row_place, col_place = blocks.place[rows], blocks.place[cols]

    def fill(target: Complex, mask: Floats, start: Ints, row: Ints, width: Ints, col: Ints) -> None:
        np.add.at(target, (start + row * width + col)[mask], values[mask])

    fill(diagonal, same, offset[row_block], row_place, size[row_block], col_place)
    fill(to_parent, up, side[row_block], row_place, parent_size[row_block], col_place)
    fill(from_parent, down, side[col_block], row_place, size[col_block], col_place)

    groups = _levels(size, parent_size, depth)
    down_steps: list[tuple[Ints, Ints, Complex, Complex, Complex]] = []
    for members in reversed(groups):
        own, above = int(size[members[0]]), int(parent_size[members[0]])
        here = offset[members][:, None] + np.arange(own * own)
        inverse: Complex = np.linalg.inv(diagonal[here].reshape(-1, own, own)).astype(np.complex128)
        if above == 0:
            diagonal[here] = inverse.reshape(len(members), -1)
            continue
        between = side[members][:, None] + np.arange(own * above)
        right = inverse @ to_parent[between].reshape(-1, own, above)
        lower = from_parent[between].reshape(-1, above, own)
        there = offset[parent[members]][:, None] + np.arange(above * above)
        np.subtract.at(diagonal, there, (lower @ right).reshape(len(members), -1))
        down_steps.append((here, there, inverse, right, lower @ inverse))
    for here, there, inverse, right, left in reversed(down_steps):
        above = right.shape[2]
        outer = diagonal[there].reshape(-1, above, above)
        diagonal[here] = (inverse + right @ outer @ left).reshape(len(here), -1)
    return diagonal, offset


def _levels(size: Ints, parent_size: Ints, depth: Ints) -> list[Ints]:
    """Blocks of one depth, size and parent size together, from the roots down."""
    order = np.lexsort((parent_size, size, depth))
    keys = np.column_stack((depth[order], size[order], parent_size[order]))
    cuts = np.flatnonzero(np.any(keys[1:] != keys[:-1], axis=1)) + 1
    return [np.asarray(part) for part in np.split(order, cuts)]


def _close_loops(
    assembled: Assembled, loops: Floats, touched: Ints, wanted: list[Ints], found: list[Complex]
) -> list[Complex]:
    """Add the loop-closing entries B on unknowns S: Z = Zt - Zt[:,S] B (1 + Zt[S,S] B)^-1 Zt[S,:]."""
    rows, cols, values = assembled.rows[loops], assembled.cols[loops], assembled.values[loops]
    count = len(touched)
    extra = np.zeros((count, count), dtype=np.complex128)
    np.add.at(extra, (np.searchsorted(touched, rows), np.searchsorted(touched, cols)), values)
    whole = assembled.matrix()
    correction = coo_array((values, (rows, cols)), shape=whole.shape).tocsc()
    forest = Factors((whole - correction).tocsc())
    unit = np.zeros((assembled.size, count), dtype=np.complex128)
    unit[touched, np.arange(count)] = 1
    columns = forest.solve(unit)
    lines = forest.solve_transposed(unit)
    middle = extra @ np.linalg.inv(np.eye(count) + columns[touched] @ extra)
    return [z - columns[unknowns] @ middle @ lines[unknowns].T for z, unknowns in zip(found, wanted, strict=True)]


def _agrees(assembled: Assembled, factors: Factors, wanted: list[Ints], found: list[Complex]) -> bool:
    """Compare a few buses, spread over the model, with plain solves."""
    picked = np.unique(np.linspace(0, len(wanted) - 1, SAMPLE).astype(int))
    exact = _by_solving(assembled, factors, [wanted[k] for k in picked])
    topology = assembled.topology
    for k, z in zip(picked, exact, strict=True):
        nodes = wanted[k] + 1
        parts = topology.part[nodes]
        # Within a part the impedances between conductors matter; the common voltage of a floating part is arbitrary.
        for part in np.unique(parts):
            at = np.flatnonzero(parts == part)
            here, there = found[k][np.ix_(at, at)], z[np.ix_(at, at)]
            if not _close(_between(here), _between(there), ROUNDING * float(np.abs(there).max())):
                return False
            if not topology.floating[nodes[at[0]]] and not _close(here, there, 0.0):
                return False
    return True


def _between(z: Complex) -> Complex:
    """Impedances between conductors: those to the first one, both ways, taken off."""
    rows = z - z[:1]
    return np.asarray(rows - rows[:, :1], dtype=np.complex128)


def _close(a: Complex, b: Complex, rounding: float) -> bool:
    return bool(np.abs(a - b).max() <= AGREEMENT * max(float(np.abs(b).max()), 1e-9) + rounding)
