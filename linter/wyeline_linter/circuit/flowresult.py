"""What a solved load flow can be asked: voltages, currents, powers, losses, unbalance, and its own check."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

from .assemble import Assembled, Complex, Frame, load_columns, powers
from .elements import Bus
from .network import Network
from .selftest import SelfTest, check_solution
from .sequences import sequence_parts


@dataclass(frozen=True)
class Solved:
    """A solved load flow.  Voltages in V, currents in A, powers in VA; all rms phasors."""

    frame: Frame
    x: Complex
    v: Complex
    """Voltage to earth by node number; entry 0 is earth."""
    load_current: Complex
    """Current into the plus node of each load, in the order the loads were added."""
    load_voltage: Complex
    iterations: int
    method: str
    collapsed: tuple[str, ...]
    """Loads below 0.75 of nominal voltage, taken as impedances: voltage collapse region."""
    limited: tuple[str, ...]
    """Inverters at their current limit."""
    unfed: tuple[str, ...]
    """Loads no source reaches."""
    selftest: SelfTest
    line_current: dict[int, tuple[Complex, Complex]] = field(repr=False)
    """By conductor count k: currents into the from end and out of the to end, (m, k) each."""

    @classmethod
    def of(
        cls,
        assembled: Assembled,
        x: Complex,
        across: Callable[[Complex], Complex],
        current: Callable[[Complex], Complex],
        iterations: int,
        method: str,
        collapsed: tuple[str, ...] = (),
        limited: tuple[str, ...] = (),
        unfed: tuple[str, ...] = (),
    ) -> Solved:
        """Derive currents from the voltages by each element's own law and check the whole."""
        network = assembled.network
        v = assembled.node_voltages(x)
        load_voltage = across(v)
        columns = load_columns(network.loads)
        s = powers(network.loads)
        by_impedance = columns.z_share * np.conj(s) * load_voltage / columns.v_nominal**2
        load_current = current(load_voltage) + by_impedance
        lines = line_currents(assembled, v)
        selftest = check_solution(assembled, x, v, load_current, load_voltage, lines)
        return cls(
            assembled.frame(),
            x,
            v,
            load_current,
            load_voltage,
            iterations,
            method,
            collapsed,
            limited,
            unfed,
            selftest,
            lines,
        )

    @property
    def network(self) -> Network:
        return self.frame.network

    def voltage(self, bus: Bus, plus: str, minus: str = "E") -> complex | None:
        """Voltage between two conductors of a bus ("E" is earth).

        None where it is not defined: the part floats and only one end belongs to it.
        """
        return self.voltage_between(bus[plus], bus[minus])

    def voltage_between(self, a: int, b: int) -> complex | None:
        """Voltage of node a against node b; None where it is not defined."""
        topology = self.frame.topology
        if (topology.floating[a] or topology.floating[b]) and topology.part[a] != topology.part[b]:
            return None
        return complex(self.v[a] - self.v[b])

    def line(self, name: str) -> tuple[Complex, Complex]:
        """Currents of a line: into its from end and out of its to end, one a conductor."""
        k, position = self.network.line_at[name]
        entering, leaving = self.line_current[k]
        return entering[position], leaving[position]

    def line_power(self, name: str) -> tuple[complex, complex]:
        """Complex power into the from end and out of the to end of a line, all conductors against earth."""
        k, position = self.network.line_at[name]
        group = self.network.lines[k]
        entering, leaving = self.line(name)
        v_from = self.v[list(group.from_nodes[position])]
        v_to = self.v[list(group.to_nodes[position])]
        return complex(np.sum(v_from * np.conj(entering))), complex(np.sum(v_to * np.conj(leaving)))

    def line_loss(self, name: str) -> complex:
        """Loss of a line in VA (real part: heat)."""
        sent, received = self.line_power(name)
        return sent - received

    def unbalance(self, bus: Bus, legs: str = "ABC") -> tuple[float, float]:
        """Voltage unbalance of three legs as fractions: largest deviation over mean (NEMA MG 1), and |V2/V1| (IEC)."""
        a, b, c = (complex(self.v[node]) for node in bus.pick(legs))
        between = [abs(a - b), abs(b - c), abs(c - a)]
        mean = sum(between) / 3
        _, positive, negative = sequence_parts(a - b, b - c, c - a)
        return max(abs(value - mean) for value in between) / mean, abs(negative) / abs(positive)


def line_currents(assembled: Assembled, v: Complex) -> dict[int, tuple[Complex, Complex]]:
    """Currents into the from end and out of the to end of every line, by conductor count."""
    found: dict[int, tuple[Complex, Complex]] = {}
    for k, batch in assembled.lines.items():
        v_from, v_to = v[batch.from_nodes], v[batch.to_nodes]
        series = np.einsum("mij,mj->mi", batch.y_series, v_from - v_to)
        entering, leaving = series.copy(), series
        for position, charging in assembled.network.lines[k].charging_s.items():
            half = np.array(charging, dtype=np.complex128).reshape(k, k) / 2
            entering[position] += half @ v_from[position]
            leaving[position] = leaving[position] - half @ v_to[position]
        found[k] = (entering, leaving)
    return found
