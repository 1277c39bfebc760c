"""From the network to one sparse matrix (modified nodal analysis).

Unknowns are the node voltages (earth left out, nodes joined by links taken as one) followed by the branch currents:

    [ Y   A ] [V]   [ I ]
    [ A^T -Z] [i] = [-E ]

Y holds lines and shunts, A the incidence of windings and sources, Z their impedances.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Literal, NamedTuple

import numpy as np

from .elements import LINK_OHM, LineGroup, Loads
from .layout import Complex, Floats, Ints, Layout, Topology, layout_of, shares_sources
from .network import Network
from .sequences import phase_matrix

Study = Literal["flow", "fault"]


@dataclass(frozen=True, slots=True)
class LineBatch:
    """Lines of one conductor count in arrays: nodes (m, k), series admittance (m, k, k)."""

    from_nodes: Ints
    to_nodes: Ints
    y_series: Complex


@dataclass(frozen=True, slots=True)
class Frame:
    """The numbering of the unknowns: everything needed to interpret a solution, without the equations."""

    network: Network
    study: Study
    layout: Layout
    with_motors: bool
    """Whether motors are in the matrix."""
    sharing_ohm: float
    """What every source was given in its own way, so that ideal ones in parallel share."""

    @property
    def size(self) -> int:
        """Number of unknowns."""
        return self.layout.size

    @property
    def node_count(self) -> int:
        return self.layout.node_count

    @property
    def topology(self) -> Topology:
        return self.layout.topology

    def excitation(self) -> Complex:
        """Right-hand side of the sources alone."""
        rhs = np.zeros(self.size, dtype=np.complex128)
        emf = self.network.branches.emf
        if emf:
            where = np.fromiter(emf, dtype=np.int64, count=len(emf)) + self.layout.first_branch
            rhs[where] = -np.fromiter(emf.values(), dtype=np.complex128, count=len(emf))
        return rhs

    def injected(self, nodes: Ints, currents: Complex) -> Complex:
        """Right-hand side of currents brought into nodes."""
        rhs = np.zeros(self.size, dtype=np.complex128)
        at = self.layout.unknown[nodes]
        inside = at >= 0
        np.add.at(rhs, at[inside], currents[inside])
        return rhs

    def node_voltages(self, solution: Complex) -> Complex:
        """Voltages by node number (earth first, zero) out of a solution; a trailing axis is kept."""
        volts = np.zeros((self.layout.first_branch + 1, *solution.shape[1:]), dtype=np.complex128)
        volts[:-1] = solution[: self.layout.first_branch]
        return np.asarray(volts[self.layout.unknown], dtype=np.complex128)

    def branch_currents(self, solution: Complex) -> Complex:
        """Currents of windings and sources in the order of the network's branches."""
        return solution[self.layout.first_branch :]


@dataclass(frozen=True, slots=True)
class Assembled(Frame):
    """The entries of the matrix, and the lines as they are in it. Many times the size of a solution."""

    rows: Ints
    cols: Ints
    values: Complex
    lines: dict[int, LineBatch]
    kept: dict[str, Any] = field(default_factory=dict, repr=False, compare=False)
    """What others made of the values: it holds for all networks that differ in loads without impedance only."""

    def sparse(self) -> Any:
        """The matrix in compressed columns, for what scipy solves."""
        from scipy.sparse import coo_array, csc_array

        return csc_array(coo_array((self.values, (self.rows, self.cols)), shape=(self.size, self.size)))

    def frame(self) -> Frame:
        """What a solution needs when the equations are solved."""
        return Frame(self.network, self.study, self.layout, self.with_motors, self.sharing_ohm)


class SingularNetwork(Exception):  # noqa: N818 - a state of the network, not a mistake of the program
    """The network has no single solution; the text says why as far as it can be told."""


def assemble(network: Network, study: Study, *, with_motors: bool = True) -> Assembled:
    """Stamp the network.  The load flow sees constant-impedance loads, the fault study sees motors and full Z1."""
    layout = layout_of(network)
    entries = _Entries(layout.unknown)
    lines = _stamp_lines(network, layout, entries)
    leaking = np.flatnonzero(layout.leakage_s)
    entries.add(leaking, leaking, layout.leakage_s[leaking].astype(np.complex128))
    if network.admittances:
        entries.pair(*shunts_of(network))
    if study == "flow":
        entries.pair(*impedance_loads(network))
    elif with_motors:
        _stamp_motors(network, entries)
    sharing = LINK_OHM if shares_sources(network, layout, flow=study == "flow") else 0.0
    rows, cols, values = entries.joined()
    branch_rows, branch_cols, branch_values = _branch_entries(network, layout, study, sharing)
    return Assembled(
        network=network,
        study=study,
        layout=layout,
        rows=np.concatenate((rows, branch_rows)),
        cols=np.concatenate((cols, branch_cols)),
        values=np.concatenate((values, branch_values)),
        lines=lines,
        with_motors=study == "fault" and with_motors,
        sharing_ohm=sharing,
    )


class _Entries:
    """Matrix entries by node number, collected in chunks, and given out by unknown."""

    def __init__(self, unknown: Ints) -> None:
        self.unknown = unknown
        self.rows: list[Ints] = [np.zeros(0, dtype=np.int64)]
        self.cols: list[Ints] = [np.zeros(0, dtype=np.int64)]
        self.values: list[Complex] = [np.zeros(0, dtype=np.complex128)]

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
        """Add blocks y (m, k, k) at rows (m, k) and columns (m, k), leaving out what is zero in all of them."""
        k = y.shape[1]
        there = y.any(axis=0)
        row, col = np.nonzero(there)
        if len(row) == k * k:
            self.add(
                np.broadcast_to(row_nodes[:, :, None], y.shape), np.broadcast_to(col_nodes[:, None, :], y.shape), y
            )
        else:
            self.add(row_nodes[:, row], col_nodes[:, col], y[:, row, col])

    def joined(self) -> tuple[Ints, Ints, Complex]:
        rows, cols = self.unknown[np.concatenate(self.rows)], self.unknown[np.concatenate(self.cols)]
        inside = (rows >= 0) & (cols >= 0)
        return rows[inside], cols[inside], np.concatenate(self.values)[inside]


def _stamp_lines(network: Network, layout: Layout, entries: _Entries) -> dict[int, LineBatch]:
    batches = {}
    for k, group in network.lines.items():
        from_nodes, to_nodes = layout.line_nodes[k]
        y = _inverses(group, k)
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


def _inverses(group: LineGroup, k: int) -> Complex:
    """The series admittances of lines, (m, k, k): those whose impedance is the one inverted before are taken over."""
    z = group.z_ohm
    before, y = group.inverted or ([], None)
    if y is None or len(before) != len(z):
        again, y = list(range(len(z))), np.zeros((len(z), k, k), dtype=np.complex128)
    else:
        again = [position for position, (one, other) in enumerate(zip(z, before, strict=True)) if one is not other]
        y = y.copy() if again else y
    if again:
        try:
            y[again] = np.linalg.inv(np.array([z[position] for position in again]).reshape(-1, k, k))
        except np.linalg.LinAlgError:
            raise SingularNetwork(f"a line of {k} conductors has an impedance matrix without inverse") from None
        group.inverted = list(z), y
    return y


def shunts_of(network: Network) -> tuple[Ints, Ints, Complex]:
    """Shunt admittances in columns: their two nodes and siemens."""
    shunts = network.admittances
    a, b = (np.array([shunt[end] for shunt in shunts], dtype=np.int64) for end in (0, 1))
    return a, b, np.array([shunt[2] for shunt in shunts], dtype=np.complex128)


def impedance_loads(network: Network) -> tuple[Ints, Ints, Complex]:
    """The constant-impedance part of loads in columns: two nodes and siemens."""
    columns = load_columns(network.loads)
    there = np.flatnonzero(columns.z_share != 0)
    s = powers(network.loads) if len(there) else np.zeros(0, dtype=np.complex128)
    there = there[s[there] != 0]
    y = np.conj(s[there]) * columns.z_share[there] / columns.v_nominal[there] ** 2
    return columns.plus[there], columns.minus[there], np.asarray(y, dtype=np.complex128)


class LoadColumns(NamedTuple):
    """What is known of loads but their VA, side by side."""

    plus: Ints
    minus: Ints
    p_share: Floats
    i_share: Floats
    z_share: Floats
    v_nominal: Floats
    limit_a: Floats


def load_columns(loads: Loads) -> LoadColumns:
    """The columns of loads, kept with them."""
    found = loads.kept.get("columns")
    if not isinstance(found, LoadColumns) or len(found.plus) != len(loads.names):
        plus, minus = np.array(loads.pairs, dtype=np.int64).reshape(-1, 2).T.copy()
        p_share, i_share, z_share = np.array(loads.shares, dtype=np.float64).reshape(-1, 3).T.copy()
        found = loads.kept["columns"] = LoadColumns(
            plus,
            minus,
            p_share,
            i_share,
            z_share,
            np.array(loads.v_nominal, dtype=np.float64),
            np.array(loads.limit_a, dtype=np.float64),
        )
    return found


def powers(loads: Loads) -> Complex:
    """The VA of loads side by side, kept with their columns for those asked about last."""
    kept = loads.kept.get("powers")
    if not isinstance(kept, tuple) or kept[0] is not loads.s_va or len(kept[1]) != len(loads.s_va):
        kept = loads.kept["powers"] = loads.s_va, np.array(loads.s_va, dtype=np.complex128)
    found: Complex = kept[1]
    return found


def motor_admittance(z1_ohm: complex, z2_ohm: complex, legs: int) -> Complex:
    """Admittance of a motor between its nodes, (legs, legs); the zero sequence is open."""
    return np.array(_motor_values(z1_ohm, z2_ohm, legs)).reshape(legs, legs)


def _motor_values(z1_ohm: complex, z2_ohm: complex, legs: int) -> tuple[complex, ...]:
    if legs == 2:
        y = 1 / z1_ohm
        return y, -y, -y, y
    return phase_matrix(0j, 1 / z1_ohm, 1 / z2_ohm)


def _stamp_motors(network: Network, entries: _Entries) -> None:
    for legs in (2, 3):
        alike = [motor for motor in network.motors if len(motor.nodes) == legs]
        if alike:
            nodes = np.array([motor.nodes for motor in alike], dtype=np.int64)
            values = [_motor_values(motor.z1_ohm, motor.z2_ohm, legs) for motor in alike]
            entries.block(nodes, nodes, np.array(values, dtype=np.complex128).reshape(-1, legs, legs))


def _branch_entries(network: Network, layout: Layout, study: Study, sharing: float) -> tuple[Ints, Ints, Complex]:
    impedance = list(network.branches.impedance)
    for source in network.sources.values():
        k = len(source.plus)
        z = source.z_flow_ohm if study == "flow" else source.z_ohm
        first = source.first_branch
        impedance.extend((first + i, first + j, z[i * k + j]) for i in range(k) for j in range(k) if z[i * k + j])
        if sharing:
            impedance.extend((first + i, first + i, complex(sharing)) for i in range(k))
    branch = layout.branch + layout.first_branch
    coefficient = layout.coefficient.astype(np.complex128)
    z_row = np.array([entry[0] for entry in impedance], dtype=np.int64) + layout.first_branch
    z_col = np.array([entry[1] for entry in impedance], dtype=np.int64) + layout.first_branch
    z_value = np.array([entry[2] for entry in impedance], dtype=np.complex128)
    return (
        np.concatenate((layout.branch_node, branch, z_row)),
        np.concatenate((branch, layout.branch_node, z_col)),
        np.concatenate((coefficient, coefficient, -z_value)),
    )


__all__ = [
    "Assembled",
    "Complex",
    "Floats",
    "Frame",
    "Ints",
    "LineBatch",
    "SingularNetwork",
    "assemble",
    "motor_admittance",
]
