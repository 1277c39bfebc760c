"""The arithmetic of a fault: what flows when conductors of many buses are tied, in columns."""

from __future__ import annotations

from collections.abc import Sequence
from copy import copy
from dataclasses import dataclass

import numpy as np

from .assemble import Frame
from .elements import Bus
from .layout import Bools, Complex, Floats, Ints
from .thevenin import Impedances

NO_IMPEDANCE_OHM = 1e-8
"""A fault loop below this has no limit: the source was stated without impedance."""
R_ROUNDING = 1e-9
"""What elimination leaves of a resistance that is none, as a part of the reactance."""
UNBALANCE_LIMIT = 0.1
"""Three tied conductors whose prefault voltages differ more than this are not a three-phase fault."""


@dataclass(frozen=True, slots=True)
class TiedColumns:
    """One kind of fault at m buses."""

    drawn: Complex
    """Current out of the network into the fault, one a tied conductor, (m, tied)."""
    loop_ohm: Complex
    """Equivalent impedance, of three legs that differ the mean; not a number where there is none."""
    fed: Bools
    """Whether a source reaches the bus,"""
    closed: Bools
    """whether a conducting path joins what is tied,"""
    limited: Bools
    """and whether an impedance limits the current."""

    @property
    def amperes(self) -> Floats:
        """Largest current in a tied conductor; not a number where nothing limits it or no loop exists."""
        size: Floats = np.abs(self.drawn).max(axis=1)
        return np.where(self.fed, np.where(self.closed & self.limited, size, np.nan), 0.0)

    @property
    def x_over_r(self) -> Floats:
        """X/R of the equivalent impedance, infinite when R is zero but for rounding; not a number without one."""
        r, x = self.loop_ohm.real, self.loop_ohm.imag
        ratio = np.full(len(r), np.inf)
        np.divide(x, r, out=ratio, where=r > R_ROUNDING * np.abs(x))
        flowing = self.fed & self.closed & self.limited
        return np.where(flowing & ~np.isnan(r), ratio, np.nan)

    def bare(self) -> TiedColumns:
        """The same without currents and impedances: what `why_nothing` asks."""
        none = np.zeros(0, dtype=np.complex128)
        return TiedColumns(none, none, self.fed, self.closed, self.limited)

    def why_nothing(self, row: int, tied: Sequence[str]) -> str:
        """Why no current flows at a bus, or none that can be told; empty where one flows."""
        if not self.fed[row]:
            return "no source reaches this bus"
        if not self.closed[row]:
            return (
                f"no conducting path joins {tied[0]} and {tied[1]}: nothing earths this part, so a first fault carries "
                "only the small capacitive current of its wires"
            )
        return "" if self.limited[row] else "the source was stated without impedance: no limit"


class Places:
    """Buses with the same conductors, their impedances and voltages before the fault."""

    def __init__(self, frame: Frame, impedance: Impedances, prefault_v: Complex, buses: Sequence[Bus]) -> None:
        self._topology = frame.topology
        self._bus = buses[0]
        self._nodes: Ints = np.array([bus.nodes for bus in buses], dtype=np.int64)
        self._z = impedance.at([bus.index for bus in buses])
        self._v = prefault_v[self._nodes]

    def tied(self, tied: Sequence[str], z_fault_ohm: complex | Complex = 0j) -> TiedColumns:
        """The fault that ties these conductors through an impedance, which may differ from bus to bus.  ValueError for
        fewer than two different ones."""
        if len(tied) < 2 or len(set(tied)) != len(tied):
            raise ValueError("a fault ties at least two different conductors")
        names = self._bus.conductors
        places = [-1 if self._bus[name] == 0 else names.index(name) for name in tied]
        drawn, loop_v, bounded = self._two(places, z_fault_ohm) if len(tied) == 2 else self._more(places, z_fault_ohm)
        nodes = np.where(np.array(places) >= 0, self._nodes[:, places], 0)
        live, part = self._topology.live[nodes], self._topology.part[nodes]
        closed: Bools = np.ones(len(nodes), dtype=np.bool_)
        if len(tied) == 2:
            closed = np.asarray(part[:, 0] == part[:, 1])
        return TiedColumns(drawn, _loops(loop_v, drawn), np.asarray(live.any(axis=1)), closed, bounded)

    def part(self, tied: Sequence[str], driven_v: Complex) -> tuple[Floats, Complex]:
        """What one of the drives of a fault feeds it, where it alone puts ``driven_v`` on the nodes before: the largest
        current in a tied conductor, and the volts of the whole over it as an impedance (not a number: none)."""
        places = [-1 if self._bus[name] == 0 else self._bus.conductors.index(name) for name in tied]
        alone = copy(self)
        alone._v = driven_v[self._nodes]
        of = Places._two if len(tied) == 2 else Places._more
        drawn = of(alone, places, 0j)[0]
        return np.abs(drawn).max(axis=1), _loops(of(self, places, 0j)[1], drawn)

    def _two(self, places: list[int], z_fault_ohm: complex | Complex) -> tuple[Complex, Complex, Bools]:
        p, q = places
        z: Complex = np.zeros(len(self._z), dtype=np.complex128) + z_fault_ohm
        v: Complex = np.zeros(len(self._z), dtype=np.complex128)
        if p >= 0:
            z += self._z[:, p, p]
            v += self._v[:, p]
        if q >= 0:
            z += self._z[:, q, q]
            v -= self._v[:, q]
        if p >= 0 and q >= 0:
            z -= self._z[:, p, q] + self._z[:, q, p]
        bounded = np.abs(z) > NO_IMPEDANCE_OHM
        current = np.divide(v, z, out=np.zeros_like(v), where=bounded)
        return np.stack((current, -current), axis=1), v[:, None], bounded

    def _more(self, places: list[int], z_fault_ohm: complex | Complex) -> tuple[Complex, Complex, Bools]:
        loops = np.zeros((self._z.shape[1], len(places) - 1))
        for column, place in enumerate(places[:-1]):
            if place >= 0:
                loops[place, column] += 1
            if places[-1] >= 0:
                loops[places[-1], column] -= 1
        # Each conductor has the fault's impedance in its own way to the common point.
        branch = np.reshape(z_fault_ohm, (-1, 1, 1)) * (np.eye(len(places) - 1) + 1)
        loop_z, loop_v = loops.T @ self._z @ loops + branch, self._v @ loops
        bounded = np.abs(loop_z).max(axis=(1, 2)) > NO_IMPEDANCE_OHM
        currents = np.zeros_like(loop_v)
        if bounded.any():
            # A loop may be redundant (two legs on one node behind a bond), hence least squares where needed.
            try:
                currents[bounded] = np.linalg.solve(loop_z[bounded], loop_v[bounded][..., None])[..., 0]
            except np.linalg.LinAlgError:
                currents[bounded] = (np.linalg.pinv(loop_z[bounded]) @ loop_v[bounded][..., None])[..., 0]
        return np.concatenate((currents, -currents.sum(axis=1, keepdims=True)), axis=1), loop_v, bounded


def _loops(loop_v: Complex, drawn: Complex) -> Complex:
    """Impedance of each equivalent loop: for two tied conductors the whole loop, for three legs that of one phase.

    Where three legs differ (open-delta banks, single-phase machines), it is their mean by the square of the current:
    volts over amperes of one leg are turned by up to 30 degrees there, and say nothing of how fast its direct current
    decays. Not a number for three conductors that are not a balanced star (two legs to earth), where no single loop
    exists, and where nothing flows.
    """
    found = np.full(len(drawn), np.nan + 1j * np.nan)
    if drawn.shape[1] == 2:
        first = drawn[:, 0]
        known, power, squares = first != 0, loop_v[:, 0], first
    elif drawn.shape[1] == 3:
        one, two = loop_v[:, 0], loop_v[:, 1]
        star = np.stack([2 * one - two, 2 * two - one, -one - two], axis=1) / 3
        size, squares = np.abs(star), np.sum(np.abs(drawn) ** 2, axis=1)
        known = (squares != 0) & (size.max(axis=1) - size.min(axis=1) <= UNBALANCE_LIMIT * size.max(axis=1))
        power = np.sum(star * np.conj(drawn), axis=1)
    else:
        return found
    return np.asarray(np.divide(power, squares, out=found, where=known), dtype=np.complex128)
