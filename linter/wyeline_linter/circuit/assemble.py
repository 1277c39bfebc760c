"""From the network to one sparse matrix (modified nodal analysis) and its factors.

Unknowns are the node voltages (earth left out) followed by the branch currents:

    [ Y   A ] [V]   [ I ]
    [ A^T -Z] [i] = [-E ]

Y holds lines and shunts, A the incidence of switches, windings and sources, Z their impedances.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray
from scipy.sparse import coo_array, csc_array
from scipy.sparse.csgraph import connected_components
from scipy.sparse.linalg import splu

from .elements import EARTH, Network, phase_matrix

Complex = NDArray[np.complex128]
Ints = NDArray[np.int64]
Floats = NDArray[np.float64]
Study = Literal["flow", "fault"]

FLOATING_S = 1e-6
"""Total leakage to earth given to each part of the network that has no path to earth (common practice, no source): it
makes the matrix solvable and stands for an insulation resistance of 1 megohm."""


@dataclass(frozen=True, slots=True)
class LineBatch:
    """Lines of one conductor count in arrays: nodes (m, k), series admittance (m, k, k)."""

    from_nodes: Ints
    to_nodes: Ints
    y_series: Complex


@dataclass(frozen=True, slots=True)
class Topology:
    """What hangs together: `part` numbers the galvanic parts node by node, `live` says whether a source reaches it."""

    part: Ints
    floating: NDArray[np.bool_]
    """Per node: no conducting path to earth, so its voltage to earth is not defined."""
    live: NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Assembled:
    """Entries of the matrix and everything needed to interpret a solution."""

    network: Network
    study: Study
    size: int
    """Number of unknowns."""
    node_count: int
    rows: Ints
    cols: Ints
    values: Complex
    lines: dict[int, LineBatch]
    topology: Topology
    leakage_s: Floats
    """Per node, the leakage added because its part of the network floats."""

    def matrix(self) -> Any:
        """The matrix in compressed columns."""
        return csc_array(coo_array((self.values, (self.rows, self.cols)), shape=(self.size, self.size)))

    def excitation(self) -> Complex:
        """Right-hand side of the sources alone."""
        rhs = np.zeros(self.size, dtype=np.complex128)
        emf = self.network.branches.emf
        if emf:
            where = np.fromiter(emf, dtype=np.int64, count=len(emf)) + self.node_count - 1
            rhs[where] = -np.fromiter(emf.values(), dtype=np.complex128, count=len(emf))
        return rhs

    def node_voltages(self, solution: Complex) -> Complex:
        """Voltages by node number (earth first, zero) out of a solution; a trailing axis is kept."""
        volts = np.zeros((self.node_count, *solution.shape[1:]), dtype=np.complex128)
        volts[1:] = solution[: self.node_count - 1]
        return volts


MOST_AT_A_NODE = 3000
"""Pivoting on zero-ohm links fills the factors of a bus with more feeders than any real one has."""


class SingularNetwork(Exception):  # noqa: N818 - a state of the network, not a mistake of the program
    """The network has no single solution; the text says why as far as it can be told."""


class Factors:
    """Sparse LU factors of one matrix with a refined solve.  Raises SingularNetwork on construction."""

    def __init__(self, matrix: Any) -> None:
        self.matrix = matrix
        crowded = int(np.diff(matrix.indptr).max(initial=0))
        if crowded > MOST_AT_A_NODE:
            raise SingularNetwork(
                f"{crowded} branches meet at one conductor, and the solver is made for {MOST_AT_A_NODE}: "
                "the time would grow with the square"
            )
        try:
            self._lu: Any = splu(
                matrix,
                permc_spec="MMD_AT_PLUS_A",
                diag_pivot_thresh=0.01,
                options={"SymmetricMode": True},
            )
        except RuntimeError:
            raise SingularNetwork(
                "the equations have no single solution: two sources without impedance feed the same conductors, "
                "or windings without impedance are in parallel"
            ) from None

    def solve(self, rhs: Complex) -> Complex:
        """Solve for one or many right-hand sides, refined once."""
        x: Complex = self._lu.solve(rhs)
        return np.asarray(x + self._lu.solve(rhs - self.matrix @ x), dtype=np.complex128)

    def solve_once(self, rhs: Complex) -> Complex:
        """Solve without refinement."""
        solved: Complex = self._lu.solve(rhs)
        return solved

    def solve_transposed(self, rhs: Complex) -> Complex:
        """Solve with the transposed matrix (rows of the inverse)."""
        solved: Complex = self._lu.solve(rhs, trans="T")
        return solved


def assemble(network: Network, study: Study, *, with_motors: bool = True) -> Assembled:
    """Stamp the network.  The load flow sees constant-impedance loads, the fault study sees motors and full Z1."""
    entries = _Entries()
    lines = _stamp_lines(network, entries)
    topology = _topology(network, lines)
    leakage = _leakage(topology)
    nodes = np.flatnonzero(leakage)
    entries.add(nodes, nodes, leakage[nodes].astype(np.complex128))
    shunts = list(network.admittances)
    if study == "flow":
        shunts.extend(_impedance_loads(network))
    elif with_motors:
        _stamp_motors(network, entries)
    if shunts:
        a, b, y = (np.array(column) for column in zip(*shunts, strict=True))
        entries.pair(a, b, y)
    rows, cols, values = entries.joined()
    inside = (rows != EARTH) & (cols != EARTH)
    rows, cols, values = rows[inside] - 1, cols[inside] - 1, values[inside]
    branch_rows, branch_cols, branch_values = _branch_entries(network, study)
    node_count = network.node_count
    return Assembled(
        network=network,
        study=study,
        size=node_count - 1 + len(network.branches),
        node_count=node_count,
        rows=np.concatenate((rows, branch_rows)),
        cols=np.concatenate((cols, branch_cols)),
        values=np.concatenate((values, branch_values)),
        lines=lines,
        topology=topology,
        leakage_s=leakage,
    )


class _Entries:
    """Matrix entries by node number, collected in chunks."""

    def __init__(self) -> None:
        self.rows: list[Ints] = []
        self.cols: list[Ints] = []
        self.values: list[Complex] = []

    def add(self, rows: Ints, cols: Ints, values: Complex) -> None:
        self.rows.append(rows.ravel())
        self.cols.append(cols.ravel())
        self.values.append(values.ravel())

    def pair(self, a: Ints, b: Ints, y: Complex) -> None:
        self.add(a, a, y)
        self.add(b, b, y)
        self.add(a, b, -y)
        self.add(b, a, -y)

    def block(self, row_nodes: Ints, col_nodes: Ints, y: Complex) -> None:
        """Add blocks y (m, k, k) at rows (m, k) and columns (m, k)."""
        shape = y.shape
        self.add(
            np.broadcast_to(row_nodes[:, :, None], shape),
            np.broadcast_to(col_nodes[:, None, :], shape),
            y,
        )

    def joined(self) -> tuple[Ints, Ints, Complex]:
        if not self.rows:
            none = np.zeros(0, dtype=np.int64)
            return none, none, np.zeros(0, dtype=np.complex128)
        return np.concatenate(self.rows), np.concatenate(self.cols), np.concatenate(self.values)


def _stamp_lines(network: Network, entries: _Entries) -> dict[int, LineBatch]:
    batches = {}
    for k, group in network.lines.items():
        from_nodes = np.array(group.from_nodes, dtype=np.int64)
        to_nodes = np.array(group.to_nodes, dtype=np.int64)
        z = np.array(group.z_ohm, dtype=np.complex128).reshape(-1, k, k)
        try:
            y: Complex = np.linalg.inv(z).astype(np.complex128)
        except np.linalg.LinAlgError:
            raise SingularNetwork(f"a line of {k} conductors has an impedance matrix without inverse") from None
        entries.block(from_nodes, from_nodes, y)
        entries.block(to_nodes, to_nodes, y)
        entries.block(from_nodes, to_nodes, -y)
        entries.block(to_nodes, from_nodes, -y)
        for position, charging in group.charging_s.items():
            half = np.array(charging, dtype=np.complex128).reshape(1, k, k) / 2
            for ends in (from_nodes, to_nodes):
                entries.block(ends[position : position + 1], ends[position : position + 1], half)
        batches[k] = LineBatch(from_nodes, to_nodes, y)
    return batches


def _impedance_loads(network: Network) -> list[tuple[int, int, complex]]:
    loads = network.loads
    return [
        (pair[0], pair[1], share[2] * s.conjugate() / v**2)
        for pair, s, v, share in zip(loads.pairs, loads.s_va, loads.v_nominal, loads.shares, strict=True)
        if share[2] and s
    ]


def motor_admittance(z1_ohm: complex, z2_ohm: complex, legs: int) -> Complex:
    """Admittance of a motor between its nodes, (legs, legs); the zero sequence is open."""
    if legs == 2:
        y = 1 / z1_ohm
        return np.array([[y, -y], [-y, y]])
    return np.array(phase_matrix(0j, 1 / z1_ohm, 1 / z2_ohm)).reshape(3, 3)


def _stamp_motors(network: Network, entries: _Entries) -> None:
    for motor in network.motors:
        nodes = np.array([motor.nodes], dtype=np.int64)
        entries.block(nodes, nodes, motor_admittance(motor.z1_ohm, motor.z2_ohm, len(motor.nodes))[None])


def _branch_entries(network: Network, study: Study) -> tuple[Ints, Ints, Complex]:
    branches = network.branches
    offset = network.node_count - 1
    impedance = list(branches.impedance)
    for source in network.sources.values():
        k = len(source.plus)
        z = source.z_flow_ohm if study == "flow" else source.z_ohm
        first = source.first_branch
        impedance.extend((first + i, first + j, z[i * k + j]) for i in range(k) for j in range(k) if z[i * k + j])
    incidence = [entry for entry in branches.incidence if entry[1] != EARTH]
    branch = np.array([entry[0] for entry in incidence], dtype=np.int64) + offset
    node = np.array([entry[1] for entry in incidence], dtype=np.int64) - 1
    coefficient = np.array([entry[2] for entry in incidence], dtype=np.complex128)
    z_row = np.array([entry[0] for entry in impedance], dtype=np.int64) + offset
    z_col = np.array([entry[1] for entry in impedance], dtype=np.int64) + offset
    z_value = np.array([entry[2] for entry in impedance], dtype=np.complex128)
    return (
        np.concatenate((node, branch, z_row)),
        np.concatenate((branch, node, z_col)),
        np.concatenate((coefficient, coefficient, -z_value)),
    )


def _topology(network: Network, lines: dict[int, LineBatch]) -> Topology:
    """Galvanic parts (conductors, windings, sources) and which of them a source reaches through the cores."""
    count = network.node_count
    heads: list[Ints] = []
    tails: list[Ints] = []
    for batch in lines.values():
        heads.append(batch.from_nodes.ravel())
        tails.append(batch.to_nodes.ravel())
    pairs: list[tuple[int, int]] = [(a, b) for a, b, _ in network.admittances]
    links = set(network.link_at.values())
    ends: dict[int, list[int]] = {branch: [] for branch in links}
    for branch, node, _ in network.branches.incidence:
        if branch in links:
            ends[branch].append(node)
    pairs.extend((a, b) for a, b in ends.values())
    magnetic: list[tuple[int, int]] = []
    for core in network.cores.values():
        pairs.append(core.primary)
        pairs.extend(core.secondaries)
        magnetic.extend((core.primary[0], secondary[0]) for secondary in core.secondaries)
    for source in network.sources.values():
        pairs.extend(zip(source.plus, source.minus, strict=True))
        pairs.extend((source.plus[0], leg) for leg in source.plus[1:])
    charged = [
        (node, EARTH)
        for group in network.lines.values()
        for position in group.charging_s
        for node in group.from_nodes[position]
    ]
    pairs.extend(charged)
    if pairs:
        both = np.array(pairs, dtype=np.int64)
        heads.append(both[:, 0])
        tails.append(both[:, 1])
    part = _components(count, heads, tails)
    if magnetic:
        both = np.array(magnetic, dtype=np.int64)
        heads.append(both[:, 0])
        tails.append(both[:, 1])
    # Earth joins parts without bringing supply, so liveness is judged with earth's edges left out.
    reach = _components(count, heads, tails, without=EARTH)
    live = np.zeros(count, dtype=np.bool_)
    fed = {reach[node] for source in network.sources.values() for node in (*source.plus, *source.minus) if node}
    live[np.isin(reach, list(fed))] = True
    live[EARTH] = False
    return Topology(part=part, floating=part != part[EARTH], live=live)


def _components(count: int, heads: list[Ints], tails: list[Ints], without: int | None = None) -> Ints:
    if not heads:
        return np.arange(count, dtype=np.int64)
    a, b = np.concatenate(heads), np.concatenate(tails)
    if without is not None:
        kept = (a != without) & (b != without)
        a, b = a[kept], b[kept]
    graph = coo_array((np.ones(len(a)), (a, b)), shape=(count, count))
    _, labels = connected_components(graph, directed=False)
    return np.asarray(labels, dtype=np.int64)


def _leakage(topology: Topology) -> Floats:
    sizes = np.bincount(topology.part)
    return np.where(topology.floating, FLOATING_S / sizes[topology.part], 0.0)
