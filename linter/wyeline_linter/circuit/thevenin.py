"""The impedance every bus shows to a fault, for all buses in one go.

Of the inverse of the matrix only the diagonal blocks of the buses are wanted: factors along the forest of buses give
them in one walk.  The result is compared with plain solves at a few buses; if they differ, or if there is no such
forest, every bus is solved for instead, many right-hand sides at a time.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from .assemble import Assembled
from .factors import Factors
from .layout import Complex, Ints, distinct

SAMPLE = 3
AGREEMENT = 1e-6
ROUNDING = 1e-10
"""What the common voltage of a floating part leaves of the digits of a difference."""
CHUNK = 128


class Impedances:
    """Open-circuit impedance matrices (k, k) to earth of the conductors of buses, in ohm, kept by width k."""

    def __init__(self, by_width: dict[int, tuple[Ints, Complex]], buses: int) -> None:
        self._by_width = {k: z for k, (_, z) in by_width.items()}
        self._row = np.full(buses, -1, dtype=np.int64)
        self._width = np.zeros(buses, dtype=np.int64)
        for k, (at, _) in by_width.items():
            self._row[at] = np.arange(len(at))
            self._width[at] = k

    def at(self, buses: Sequence[int]) -> Complex:
        """Those of several buses of one width, (m, k, k).  KeyError where one was not asked for."""
        row = self._row[list(buses)]
        if (row < 0).any():
            raise KeyError(buses[int(np.flatnonzero(row < 0)[0])])
        return self._by_width[int(self._width[buses[0]])][row]

    def __getitem__(self, bus: int) -> Complex:
        """That of one bus.  KeyError where it was not asked for."""
        return np.asarray(self.at([bus])[0], dtype=np.complex128)


def bus_impedances(assembled: Assembled, factors: Factors, buses: Ints) -> Impedances:
    """The impedances of the buses asked for."""
    found: dict[int, tuple[Ints, Complex]] = {}
    unknowns = _unknowns(assembled, buses)
    for k, (alike, at) in unknowns.items():
        if factors.forest is not None:
            found[k] = alike, factors.forest.diagonal_blocks(at)
        else:
            found[k] = alike, by_solving(factors, at, assembled.size)
    if factors.forest is not None and not _agrees(assembled, factors, found):
        found = {k: (alike, by_solving(factors, at, assembled.size)) for k, (alike, at) in unknowns.items()}
    return Impedances(found, len(assembled.network.buses))


def _unknowns(assembled: Assembled, buses: Ints) -> dict[int, tuple[Ints, Ints]]:
    """By width, the buses and their unknowns, kept with the layout."""
    kept = assembled.layout.unknowns_of
    if not kept or not np.array_equal(kept[0], buses):
        by_width: dict[int, list[int]] = {}
        for bus in buses.tolist():
            by_width.setdefault(len(assembled.network.buses[bus].nodes), []).append(bus)
        found = {}
        for k, alike in by_width.items():
            nodes = np.array([assembled.network.buses[bus].nodes for bus in alike], dtype=np.int64)
            found[k] = np.array(alike, dtype=np.int64), assembled.layout.unknown[nodes]
        kept[:] = [buses, found]
    return kept[1]  # type: ignore[no-any-return]


def by_solving(factors: Factors, unknowns: Ints, size: int) -> Complex:
    """The blocks (m, k, k) by plain solves; -1 among the unknowns (m, k) stands for earth."""
    m, k = unknowns.shape
    found = np.zeros((m, k, k), dtype=np.complex128)
    step = max(1, CHUNK // k)
    for start in range(0, m, step):
        part = unknowns[start : start + step]
        there = np.flatnonzero(part.ravel() >= 0)
        rhs = np.zeros((size, part.size), dtype=np.complex128)
        rhs[part.ravel()[there], there] = 1
        solved = factors.solve(rhs).reshape(size, len(part), k)
        block = solved[part[:, :, None], np.arange(len(part))[:, None, None], np.arange(k)[None, None, :]]
        block[part < 0] = 0
        found[start : start + step] = block
    return found


def _agrees(assembled: Assembled, factors: Factors, found: dict[int, tuple[Ints, Complex]]) -> bool:
    """Compare a few buses, spread over the model, with plain solves of a current in one conductor, out of another."""
    count = sum(len(at) for at, _ in found.values())
    wanted = distinct(np.linspace(0, count - 1, SAMPLE).astype(np.int64)).tolist() if count else []
    picked: list[tuple[int, Complex]] = []
    before = 0
    for at, blocks in found.values():
        picked += [(int(at[k - before]), blocks[k - before]) for k in wanted if before <= k < before + len(at)]
        before += len(at)
    topology, unknown = assembled.topology, assembled.layout.unknown
    loops: list[tuple[Ints, Complex, int, int]] = []
    rhs = np.zeros((assembled.size, len(picked)), dtype=np.complex128)
    for bus, z in picked:
        nodes = np.array(assembled.network.buses[bus].nodes, dtype=np.int64)
        into = next((k for k, node in enumerate(nodes) if unknown[node] >= 0), None)
        if into is None:
            continue
        # The common voltage of a floating part is arbitrary: only currents that stay within it are compared.
        same = np.flatnonzero(topology.part[nodes] == topology.part[nodes[into]])
        out = int(same[-1]) if topology.floating[nodes[into]] else -1
        rhs[unknown[nodes[into]], len(loops)] += 1
        if out >= 0:
            rhs[unknown[nodes[out]], len(loops)] -= 1
        loops.append((nodes[same], z[same], into, out))
    solved = assembled.node_voltages(factors.solve_once(rhs))
    for column, (nodes, z, into, out) in enumerate(loops):
        here, there = z[:, into] - (z[:, out] if out >= 0 else 0), solved[nodes, column]
        rounding = 0.0
        if out >= 0:
            here, there = here - here[0], there - there[0]
            rounding = ROUNDING * float(np.abs(z).max())
        limit = AGREEMENT * max(float(np.abs(there).max()), 1e-9) + rounding
        if not bool((np.abs(here - there) <= limit).all()):
            return False
    return True
