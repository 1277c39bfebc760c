"""The check every solution goes through: Kirchhoff at every node, the law of every branch, and the balance of power.

Currents are taken from each element's own law, not from the matrix that was factorised.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np

from .assemble import Assembled, Complex, load_columns, shunts_of
from .layout import Floats, Ints

LIMIT = 1e-6
"""Largest relative error a solution may show."""


@dataclass(frozen=True, slots=True)
class SelfTest:
    """Result of the check; all relative, except where the name says a unit."""

    power_balance: float
    """|sources - loads - losses| over the largest power involved."""
    kirchhoff: float
    """Largest sum of currents at a node over the largest current in the network."""
    branch_law: float
    """Largest misfit of a winding or source law over the largest voltage."""
    losses_va: complex

    @property
    def passed(self) -> bool:
        """Whether every error is below 1e-6 (and none is undefined)."""
        return self.power_balance < LIMIT and self.kirchhoff < LIMIT and self.branch_law < LIMIT


def check_solution(
    assembled: Assembled,
    x: Complex,
    v: Complex,
    load_current: Complex,
    load_voltage: Complex,
    lines: dict[int, tuple[Complex, Complex]],
) -> SelfTest:
    """Check a load-flow solution (see :class:`SelfTest`)."""
    network = assembled.network
    leaving = np.zeros(assembled.node_count, dtype=np.complex128)
    largest = 0.0
    losses = 0j
    for k, (entering, received) in lines.items():
        batch = assembled.lines[k]
        np.add.at(leaving, batch.from_nodes, entering)
        np.subtract.at(leaving, batch.to_nodes, received)
        losses += complex(np.sum(v[batch.from_nodes] * np.conj(entering) - v[batch.to_nodes] * np.conj(received)))
        largest = max(largest, float(np.abs(entering).max(initial=0.0)))
    columns = _columns(assembled)
    a, b, siemens = columns.shunts
    across = v[a] - v[b]
    current = siemens * across
    np.add.at(leaving, a, current)
    np.subtract.at(leaving, b, current)
    losses += complex(np.sum(across * np.conj(current)))
    leaking = assembled.layout.leakage_s * v
    leaving += leaking
    losses += complex(np.sum(v * np.conj(leaking)))
    pairs = load_columns(network.loads)
    np.add.at(leaving, pairs.plus, load_current)
    np.subtract.at(leaving, pairs.minus, load_current)
    loads = complex(np.sum(load_voltage * np.conj(load_current)))
    largest = max(largest, float(np.abs(load_current).max(initial=0.0)))
    branch_current = assembled.branch_currents(x)
    largest = max(largest, float(np.abs(branch_current).max(initial=0.0)))
    misfit, sources, in_branches = _branches(assembled, v, branch_current, leaving)
    losses += in_branches
    scale = max(abs(sources), abs(loads), float(np.abs(load_voltage * load_current).sum()), 1.0)
    volts = float(np.abs(v).max(initial=0.0))
    # Nodes joined by links are one: what flows in the links is made to fit.
    unknown = assembled.layout.unknown
    at_unknown = np.zeros(assembled.layout.first_branch + 1, dtype=np.complex128)
    np.add.at(at_unknown, unknown, leaving)
    at_unknown[-1] = 0
    return SelfTest(
        power_balance=abs(sources - loads - losses) / scale,
        kirchhoff=float(np.abs(at_unknown).max()) / max(largest, 1e-3),
        branch_law=misfit / max(volts, 1e-3),
        losses_va=losses,
    )


class _Columns(NamedTuple):
    """The elements of a network other than lines and loads, side by side."""

    shunts: tuple[Ints, Ints, Complex]
    incidence: tuple[Ints, Ints, Floats]
    impedance: tuple[Ints, Ints, Complex] | None


def _columns(assembled: Assembled) -> _Columns:
    """The columns, kept with the equations."""
    found = assembled.kept.get("columns")
    if not isinstance(found, _Columns):
        branches = assembled.network.branches
        branch, node = (np.array([entry[k] for entry in branches.incidence], dtype=np.int64) for k in (0, 1))
        coefficient = np.array([entry[2] for entry in branches.incidence], dtype=np.float64)
        impedance = None
        if branches.impedance:
            row, col = (np.array([entry[k] for entry in branches.impedance], dtype=np.int64) for k in (0, 1))
            impedance = row, col, np.array([entry[2] for entry in branches.impedance], dtype=np.complex128)
        found = _Columns(shunts_of(assembled.network), (branch, node, coefficient), impedance)
        assembled.kept["columns"] = found
    return found


def _branches(assembled: Assembled, v: Complex, current: Complex, leaving: Complex) -> tuple[float, complex, complex]:
    """Add branch currents to the node sums; return the largest misfit of their laws, source power and branch losses."""
    branches = assembled.network.branches
    if not len(branches):
        return 0.0, 0j, 0j
    columns = _columns(assembled)
    branch, node, coefficient = columns.incidence
    np.add.at(leaving, node, coefficient * current[branch])
    law = np.zeros(len(branches), dtype=np.complex128)
    np.add.at(law, branch, coefficient * v[node])
    losses = 0j
    if columns.impedance is not None:
        row, col, z = columns.impedance
        drop = z * current[col]
        np.subtract.at(law, row, drop)
        losses += complex(np.sum(drop * np.conj(current[row])))
    sources = 0j
    for source in assembled.network.sources.values():
        k = len(source.plus)
        own_z = source.z_flow_ohm if assembled.study == "flow" else source.z_ohm
        own = slice(source.first_branch, source.first_branch + k)
        drop = np.array(own_z).reshape(k, k) @ current[own] + assembled.sharing_ohm * current[own]
        law[own] -= drop
        losses += complex(np.sum(drop * np.conj(current[own])))
    for position, e in branches.emf.items():
        law[position] += e
        sources += complex(e * np.conj(current[position]))
    return float(np.abs(law).max()), sources, losses
