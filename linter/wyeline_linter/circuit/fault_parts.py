"""What a fault current is made of: what each source and machine drives into it, and the ohms that each element puts
into its loop.

Both follow from the equations of the whole network and add up: the shares to the current, the ohms to the impedance.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from .assemble import Assembled, assemble, motor_admittance, shunts_of
from .elements import Bus, Motor
from .factors import Factors
from .layout import Complex, Floats, Ints

if TYPE_CHECKING:
    from .faults import Fault, FaultStudy

SHUNTS = "shunts"
"""Name of what all admittances across the loop take together (transformers without load)."""
LEAST_PART = 1e-6
"""Elements that add less than this part to the impedance of a loop are not named."""


@dataclass(frozen=True, slots=True)
class Loop:
    """The loop of a fault that sources alone feed, without machines and without converters of fixed current.

    ``volts``, ``ohm`` and ``amperes`` are of the conductor that carries most; ``mean_ohm`` is the mean over three legs,
    which the ``parts`` add up to: ohm by element, as it acts at the place of the fault.
    """

    volts: complex
    ohm: complex
    amperes: float
    mean_ohm: complex
    parts: dict[str, complex]


class Shares(NamedTuple):
    """What feeds a fault, in A, each in step with the whole current, so that they add up to it."""

    sources: dict[str, float]
    largest: list[tuple[str, float]]
    """The machines and converters that feed most,"""
    others: list[str]
    """those that feed too,"""
    others_a: float
    """and what they feed together."""


class Drives:
    """Every electromotive force of a network on the right-hand side of its equations, entry by entry: of sources, of
    running machines (their voltage before the fault), of converters."""

    def __init__(self, study: FaultStudy) -> None:
        network, layout = study.network, study.frame.layout
        self.motors: dict[str, Motor] = {m.name: m for m in network.motors} if study.frame.with_motors else {}
        names: list[str] = []
        entries: list[tuple[int, int, complex]] = []
        emf = network.branches.emf
        for name, source in network.sources.items():
            branches = range(source.first_branch, source.first_branch + len(source.plus))
            names.append(name)
            entries += [(len(names) - 1, layout.first_branch + b, -emf[b]) for b in branches if emf.get(b)]
        self.sources = len(names)
        """How many of the names are those of sources: the first ones."""
        for name, nodes, currents in study.fed_in():
            names.append(name)
            at = layout.unknown[np.array(nodes, dtype=np.int64)].tolist()
            entries += [(len(names) - 1, row, i) for row, i in zip(at, currents, strict=True) if row >= 0]
        self.names = names
        self.owner: Ints = np.array([entry[0] for entry in entries], dtype=np.int64)
        self.row: Ints = np.array([entry[1] for entry in entries], dtype=np.int64)
        self.value: Complex = np.array([entry[2] for entry in entries], dtype=np.complex128)

    def through(self, lines: Complex) -> Complex:
        """What each force gives, (names, k), where the lines (unknowns, k) say what one unit of each entry gives."""
        found = np.zeros((len(self.names), lines.shape[1]), dtype=np.complex128)
        for k in range(lines.shape[1]):
            terms = lines[self.row, k] * self.value
            found[:, k].real = np.bincount(self.owner, terms.real, len(self.names))
            found[:, k].imag = np.bincount(self.owner, terms.imag, len(self.names))
        return found


class SourcesAlone:
    """The equations of a network without its machines, and its voltages before any fault."""

    def __init__(self, study: FaultStudy) -> None:
        same = not study.frame.with_motors
        self.assembled = study.assembled if same else assemble(study.network, "fault", with_motors=False)
        self.factors = study.factors if same else Factors(self.assembled)
        self.before_v = self.assembled.node_voltages(self.factors.solve(self.assembled.excitation()))
        self._branches = _BranchOhms(self.assembled)
        self._shunts = shunts_of(study.network) if study.network.admittances else None

    def powers(self, change: Complex, least: float) -> dict[str, complex]:
        """What every line, core and source takes of a change of currents alone, in VA from ``least`` on, by element."""
        frame, found = self.assembled, {}
        v = frame.node_voltages(change)
        for k, batch in frame.lines.items():
            across = v[batch.from_nodes] - v[batch.to_nodes]
            power = np.sum(across * np.conj(np.matmul(batch.y_series, across[..., None])[..., 0]), axis=1)
            names = frame.network.lines[k].names
            found.update({names[at]: complex(power[at]) for at in np.flatnonzero(np.abs(power) > least).tolist()})
        found.update(self._branches.powers(frame.branch_currents(change), least))
        if self._shunts is not None:
            a, b, y = self._shunts
            shunts = complex(np.sum(np.abs(v[a] - v[b]) ** 2 * np.conj(y)))
            if abs(shunts) > least:
                found[SHUNTS] = shunts
        return found


class _BranchOhms:
    """The impedances of cores and sources in columns."""

    def __init__(self, frame: Assembled) -> None:
        network = frame.network
        entries = list(network.branches.impedance)
        for source in network.sources.values():
            n, first = len(source.plus), source.first_branch
            entries += [(first + k // n, first + k % n, z) for k, z in enumerate(source.z_ohm) if z]
        self._row: Ints = np.array([entry[0] for entry in entries], dtype=np.int64)
        self._column: Ints = np.array([entry[1] for entry in entries], dtype=np.int64)
        self._ohm: Complex = np.array([entry[2] for entry in entries], dtype=np.complex128)
        self._element: Ints = np.array(network.branches.element, dtype=np.int64)[self._row]
        self._names = network.element_names

    def powers(self, currents: Complex, least: float) -> dict[str, complex]:
        power = np.conj(currents[self._row]) * self._ohm * currents[self._column]
        total = np.bincount(self._element, power.real, len(self._names)) + 1j * np.bincount(
            self._element, power.imag, len(self._names)
        )
        return {self._names[at]: complex(total[at]) for at in np.flatnonzero(np.abs(total) > least).tolist()}


def shares_of(study: FaultStudy, bus: Bus, fault: Fault, most: int) -> Shares:
    """What each source, running machine and converter drives into a fault, on the conductor that carries most; of the
    machines and converters the ``most`` largest by name."""
    drives = study.drives
    loops, rhs = _loops(study.frame.layout.unknown[np.array(bus.pick(fault.tied), dtype=np.int64)], study.frame.size)
    lines = study.factors.solve_transposed(rhs)
    drawn = _drawn(loops, rhs.T @ lines, drives.through(lines))
    whole = drawn.sum(axis=0)
    at = int(np.argmax(np.abs(whole)))
    if whole[at] == 0:
        return Shares({}, [], [], 0.0)
    in_step: Floats = (drawn[:, at] * np.conj(whole[at]) / abs(whole[at])).real
    names, first = drives.names, drives.sources
    # Machines that are alike stay in the order of the model, whatever the last digits are.
    fed = first + np.argsort(-np.round(np.abs(in_step[first:]) / abs(whole[at]), 9), kind="stable")
    fed = fed[np.abs(in_step[fed]) > LEAST_PART * 1e-3 * abs(whole[at])]
    shown = len(fed) if len(fed) == most + 1 else most
    return Shares(
        {names[k]: float(in_step[k]) for k in range(first) if in_step[k]},
        [(names[k], float(in_step[k])) for k in fed[:shown].tolist()],
        [names[k] for k in fed[shown:].tolist()],
        float(in_step[fed[shown:]].sum()),
    )


def loop_of(study: FaultStudy, bus: Bus, tied: Sequence[str]) -> Loop | None:
    """The loop of a fault at a bus, of sources alone; None where nothing limits it or no current flows.

    The power that a fault takes is that of all impedances its current flows through (Tellegen's theorem); over the
    square of the current these are ohms, which transformers turn to the side of the fault by themselves.
    """
    alone = study.sources_alone
    frame = alone.assembled
    nodes = np.array(bus.pick(tied), dtype=np.int64)
    loops, rhs = _loops(frame.layout.unknown[nodes], frame.size)
    x = alone.factors.solve_once(rhs)
    before = alone.before_v[nodes]
    z = rhs.T @ x
    if not np.abs(z).max() > 0:
        return None
    currents = _in_loops(z, (before @ loops)[None, :])[0]
    drawn = loops @ currents
    most = int(np.argmax(np.abs(drawn)))
    current = complex(drawn[most])
    if not abs(current) > 0:
        return None
    against = before[1 - most] if len(nodes) == 2 else before.mean()
    volts = complex(before[most] - against)
    squares = float(np.sum(np.abs(drawn) ** 2)) / (2 if len(nodes) == 2 else 1)
    whole = complex(np.sum(before * np.conj(drawn)))
    least = LEAST_PART * abs(whole)
    powers = alone.powers(-(x @ currents), least)
    parts = {name: power / squares for name, power in powers.items()}
    return Loop(volts, volts / current, abs(current), whole / squares, parts)


def fed_by_motors(motors: Iterable[Motor], before_v: Complex) -> list[tuple[str, Sequence[int], Sequence[complex]]]:
    """The currents that running machines bring in behind their impedance, in A, by node."""
    found: list[tuple[str, Sequence[int], Sequence[complex]]] = []
    for motor in motors:
        y = motor_admittance(motor.z1_ohm, motor.z2_ohm, len(motor.nodes))
        found.append((motor.name, motor.nodes, (y @ before_v[list(motor.nodes)]).tolist()))
    return found


def _loops(unknowns: Ints, size: int) -> tuple[Floats, Complex]:
    """The loops between tied conductors, (k, k - 1), and their unit currents as right-hand sides."""
    k = len(unknowns)
    loops = np.vstack((np.eye(k - 1), -np.ones((1, k - 1))))
    rhs = np.zeros((size, k - 1), dtype=np.complex128)
    inside = unknowns >= 0
    np.add.at(rhs, unknowns[inside], loops[inside])
    return loops, rhs


def _in_loops(z: Complex, volts: Complex) -> Complex:
    """Currents of the loops, (m, k - 1), for m sets of voltages in them."""
    try:
        return np.asarray(np.linalg.solve(z, volts.T).T, dtype=np.complex128)
    except np.linalg.LinAlgError:
        return np.asarray((np.linalg.pinv(z) @ volts.T).T, dtype=np.complex128)


def _drawn(loops: Floats, z: Complex, volts: Complex) -> Complex:
    """Currents into the fault by conductor, (m, k)."""
    return np.asarray(_in_loops(z, volts) @ loops.T, dtype=np.complex128)
