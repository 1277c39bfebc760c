"""What hand-built networks of tests are asked, beyond what the product reads of a solution: currents of windings and
sources, what machines add to a fault, and impedances in symmetrical components.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np

from wyeline_linter.circuit import Bus, Fault, FaultStudy, Solved
from wyeline_linter.circuit.assemble import Complex, Frame, motor_admittance
from wyeline_linter.circuit.sequences import A1, A2


@dataclass(frozen=True)
class Branches:
    """Currents of windings and sources, in A, from a solution of the equations of a network."""

    frame: Frame
    x: Complex

    @classmethod
    def of(cls, flow: Solved) -> Branches:
        """Those of a load flow."""
        return cls(flow.frame, flow.x)

    @classmethod
    def during(cls, study: FaultStudy, bus: Bus, fault: Fault) -> Branches:
        """What a fault adds to them."""
        nodes = np.array(bus.pick(fault.tied), dtype=np.int64)
        drawn = np.array(fault.conductor_a, dtype=np.complex128)
        return cls(study.frame, study.factors.solve(-study.frame.injected(nodes, drawn)))

    def core(self, name: str) -> tuple[complex, tuple[complex, ...]]:
        """Into the first node of a core's primary, and out of the first node of each secondary."""
        core = self.frame.network.cores[name]
        first = self.frame.layout.first_branch + core.first_branch
        referred = [complex(i) for i in self.x[first : first + len(core.ratios)]]
        return sum(referred), tuple(ratio * i for ratio, i in zip(core.ratios, referred, strict=True))

    def core_va(self, name: str) -> complex:
        """Power into a core's primary, in VA."""
        a, b = self.frame.network.cores[name].primary
        v = self.frame.node_voltages(self.x)
        return complex((v[a] - v[b]) * self.core(name)[0].conjugate())

    def source(self, name: str) -> Complex:
        """What a source delivers into its plus nodes."""
        source = self.frame.network.sources[name]
        first = self.frame.layout.first_branch + source.first_branch
        delivered: Complex = self.x[first : first + len(source.plus)]
        return delivered

    def source_va(self, name: str) -> complex:
        """Power that a source delivers at its terminals, in VA."""
        source, v = self.frame.network.sources[name], self.frame.node_voltages(self.x)
        return complex(np.sum((v[list(source.plus)] - v[list(source.minus)]) * np.conj(self.source(name))))

    def motor(self, position: int) -> Complex:
        """What a motor (by its position in the network) feeds out of its nodes."""
        motor = self.frame.network.motors[position]
        y = motor_admittance(motor.z1_ohm, motor.z2_ohm, len(motor.nodes))
        fed: Complex = -(y @ self.frame.node_voltages(self.x)[list(motor.nodes)])
        return fed


class Sequences(NamedTuple):
    """Sequence impedances of a bus in ohm, and how far they are coupled (0: not at all)."""

    z1_ohm: complex
    z2_ohm: complex
    z0_ohm: complex
    coupling: float


def sequences(study: FaultStudy, bus: Bus, back: str) -> Sequences:
    """Those of the legs A, B, C, the zero sequence returning through the conductor ``back``."""
    z = study.impedance[bus.index]
    at, to = [bus.conductors.index(leg) for leg in "ABC"], bus.conductors.index(back)
    block = z[np.ix_(at, at)] - z[at][:, [to]] - z[[to]][:, at] + z[to, to]
    fortescue = np.array([[1, 1, 1], [1, A2, A1], [1, A1, A2]])
    z012 = np.linalg.inv(fortescue) @ block @ fortescue
    zero, one, two = (complex(z) for z in np.diag(z012))
    off = z012 - np.diag(np.diag(z012))
    return Sequences(one, two, zero, float(np.abs(off[1:]).max() / abs(one)))
