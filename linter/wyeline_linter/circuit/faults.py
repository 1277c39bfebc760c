"""Short circuits between real conductors, at every bus in one go.

A fault ties a set of conductors of one bus together (earth may be one of them).  With Z the open-circuit impedance of
the bus and V its voltage before the fault, the fault currents follow from C^T (V - Z C i) = Zf i, where C says which
conductors are tied.  One method serves three-phase, line-line, line-ground, leg-neutral and double faults.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

import numpy as np

from .assemble import Assembled, Complex, Frame, SingularNetwork, assemble
from .elements import Bus
from .factors import Factors, KeptFactors
from .fault_parts import Drives, SourcesAlone, fed_by_motors
from .flowresult import Solved
from .network import Network
from .sequences import A1, A2
from .thevenin import Impedances, bus_impedances
from .tied import R_ROUNDING, Places


@dataclass(frozen=True, slots=True)
class Fault:
    """One fault at one bus.  Currents in A, rms symmetrical."""

    bus: str
    tied: tuple[str, ...]
    """Conductors tied together; "E" is earth."""
    current_a: float | None
    """Largest current in a tied conductor; None when nothing limits it or no loop exists (see `note`)."""
    conductor_a: tuple[complex, ...]
    """Current out of the network into the fault, one a tied conductor."""
    loop_ohm: complex | None
    """Equivalent impedance: prefault voltage over current, complex; of three legs that differ the mean."""
    note: str = ""

    @property
    def x_over_r(self) -> float | None:
        """X/R of the equivalent impedance; infinite when R is zero but for rounding."""
        if self.loop_ohm is None:
            return None
        r, x = self.loop_ohm.real, self.loop_ohm.imag
        return x / r if r > R_ROUNDING * abs(x) else float("inf")


class Driven(NamedTuple):
    """Voltages before a fault, in parts that add up to them: those that each source gives while all other drives stand
    still, by its name, and those that machines and converters give (None: there are none)."""

    sources: list[tuple[str, Complex]]
    others: Complex | None


def driven_by(assembled: Assembled, factors: Factors, prefault_v: Complex) -> Driven:
    """Superposition: one solution a source, and the rest."""
    network, first, whole = assembled.network, assembled.layout.first_branch, assembled.excitation()
    emf = network.branches.emf
    found: list[tuple[str, Complex]] = []
    for name, source in network.sources.items():
        rows = [first + b for b in range(source.first_branch, source.first_branch + len(source.plus)) if emf.get(b)]
        if rows:
            alone = np.zeros_like(whole)
            alone[rows] = whole[rows]
            found.append((name, assembled.node_voltages(factors.solve(alone))))
    if not assembled.with_motors and not network.fault_current_sources:
        return Driven(found, None)
    return Driven(found, prefault_v - sum(v for _, v in found))


@dataclass(frozen=True)
class FaultStudy:
    """Prefault voltages and bus impedances of one scenario; ask it for faults.

    Voltages everywhere during a fault need the equations; they are put together again when first asked for, because
    many states are kept and few are asked.
    """

    frame: Frame
    prefault_v: Complex
    """Voltage before the fault by node number (what fixed fault currents of converters add is included)."""
    impedance: Impedances
    """Open-circuit impedance matrices of the conductors of the buses, in ohm."""

    @property
    def network(self) -> Network:
        return self.frame.network

    @cached_property
    def assembled(self) -> Assembled:
        """The equations."""
        return assemble(self.network, "fault", with_motors=self.frame.with_motors)

    @cached_property
    def factors(self) -> Factors:
        """Their factors."""
        return Factors(self.assembled)

    @cached_property
    def sources_alone(self) -> SourcesAlone:
        """The same network without its machines."""
        return SourcesAlone(self)

    @cached_property
    def drives(self) -> Drives:
        """What drives currents in it."""
        return Drives(self)

    @cached_property
    def driven(self) -> Driven:
        """What each drive gives of the voltages before a fault."""
        return driven_by(self.assembled, self.factors, self.prefault_v)

    def fed_in(self) -> list[tuple[str, Sequence[int], Sequence[complex]]]:
        """The currents that machines and converters bring in, in A, by node."""
        motors = self.network.motors if self.frame.with_motors else ()
        found = fed_by_motors(motors, self.sources_alone.before_v)
        if self.network.fault_current_sources:
            found += _converter_currents(self.network, self.sources_alone.before_v)
        return found

    def let_go(self) -> None:
        """Nobody asks soon for voltages during a fault."""
        for kept in ("factors", "assembled", "sources_alone", "drives", "driven"):
            vars(self).pop(kept, None)

    def bus(self, bus: Bus, tied: Sequence[str], z_fault_ohm: complex = 0j) -> Fault:
        """One fault at one bus.  KeyError if the bus has no such conductor."""
        return self.buses([bus], tied, z_fault_ohm)[0]

    def buses(self, buses: Sequence[Bus], tied: Sequence[str], z_fault_ohm: complex = 0j) -> list[Fault]:
        """The same fault at many buses, which must all have the conductors named."""
        found: dict[int, Fault] = {}
        by_shape: dict[tuple[str, ...], list[Bus]] = {}
        for bus in buses:
            by_shape.setdefault(bus.conductors, []).append(bus)
        for alike in by_shape.values():
            for bus, fault in zip(alike, self._alike(alike, tuple(tied), z_fault_ohm), strict=True):
                found[bus.index] = fault
        return [found[bus.index] for bus in buses]

    def volts_during(self, bus: Bus, fault: Fault) -> Complex:
        """Voltage to earth by node number during one fault (one solve of the existing factors)."""
        nodes = np.array(bus.pick(fault.tied), dtype=np.int64)
        drawn = np.array(fault.conductor_a, dtype=np.complex128)
        during: Complex = self.prefault_v + self.frame.node_voltages(
            self.factors.solve(-self.frame.injected(nodes, drawn))
        )
        return during

    def places(self, buses: Sequence[Bus]) -> Places:
        """Buses that all have the same conductors, to be asked for faults in columns."""
        return Places(self.frame, self.impedance, self.prefault_v, buses)

    def _alike(self, buses: list[Bus], tied: tuple[str, ...], z_fault_ohm: complex) -> list[Fault]:
        """Buses with the same conductors, solved together."""
        columns = self.places(buses).tied(tied, z_fault_ohm)
        flowing = columns.fed & columns.closed & columns.limited
        loops = columns.loop_ohm
        found = zip(
            buses,
            *(columns.fed.tolist(), flowing.tolist(), columns.amperes.tolist()),
            *(columns.drawn.tolist(), loops.tolist(), np.isnan(loops).tolist()),
            strict=True,
        )
        nothing = (0j,) * len(tied)
        return [
            Fault(bus.name, tied, most, tuple(drawn), None if no_loop else loop)
            if flows
            else Fault(bus.name, tied, None if fed else 0.0, nothing, None, columns.why_nothing(row, tied))
            for row, (bus, fed, flows, most, drawn, loop, no_loop) in enumerate(found)
        ]


def study_faults(
    network: Network,
    *,
    c_factor: float = 1.0,
    with_motors: bool = True,
    prefault: Solved | None = None,
    kept: KeptFactors | None = None,
    what: str = "fault",
    apart: bool = False,
) -> FaultStudy:
    """Prepare the faults of a network: factorise, find prefault voltages and the impedances of the buses.

    By default loads are removed and the prefault voltage is the no-load voltage times `c_factor` (IEC 60909 c, or a
    stated prefault level); with `prefault` it is that of a solved load flow of the same network. `kept` holds
    factors to take over by `what` they are for, and keeps those of this study; `apart`
    has what each drive gives worked out while the factors are there.  Raises SingularNetwork when the network has no
    single solution.
    """

    def factorised(assembled: Assembled, which: str = what) -> Factors:
        return Factors(assembled) if kept is None else kept.of(which, assembled)

    motors = with_motors and bool(network.motors)
    # Without motors first: factors are many times the size of a solution, and stand side by side only to be kept.
    before = prefault.v.copy() if prefault is not None else None
    if before is None and motors:
        alone = assemble(network, "fault", with_motors=False)
        before = alone.node_voltages(factorised(alone, f"{what}, sources alone").solve(c_factor * alone.excitation()))
        del alone
    assembled = assemble(network, "fault", with_motors=motors)
    factors = factorised(assembled)
    if before is None:
        before = assembled.node_voltages(factors.solve(c_factor * assembled.excitation()))
    if network.fault_current_sources:
        fed = _converter_currents(network, before)
        nodes = np.array([node for _, at, _ in fed for node in at], dtype=np.int64)
        currents = np.array([i for _, _, each in fed for i in each], dtype=np.complex128)
        before = before + assembled.node_voltages(factors.solve(assembled.injected(nodes, currents)))
    if not np.all(np.isfinite(before)):
        raise SingularNetwork("the equations have no single solution")
    places = np.array([bus.index for bus in network.buses], dtype=np.int64)
    impedances = bus_impedances(assembled, factors, places)
    if factors.forest is not None:
        factors.forest.forget_diagonal()
    study = FaultStudy(assembled.frame(), before, impedances)
    if apart:
        vars(study)["driven"] = driven_by(assembled, factors, before)
    return study


def _converter_currents(network: Network, before: Complex) -> list[tuple[str, Sequence[int], Sequence[complex]]]:
    """Fixed reactive currents of converters, lagging their prefault voltage by 90 degrees so that they add up: name,
    nodes, A into each."""
    found: list[tuple[str, Sequence[int], Sequence[complex]]] = []
    for source in network.fault_current_sources:
        volts = before[list(source.legs)]
        if len(volts) == 2:
            across = volts[0] - volts[1]
            if abs(across) > 0:
                current = complex(-1j * source.current_a * across / abs(across))
                found.append((source.name, source.legs, (current, -current)))
            continue
        positive = complex((volts[0] + A1 * volts[1] + A2 * volts[2]) / 3)
        if abs(positive) > 0:
            current = -1j * source.current_a * positive / abs(positive)
            found.append((source.name, source.legs, (current, current * A2, current * A1)))
    return found
