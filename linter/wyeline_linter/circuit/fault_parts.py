"""What a fault current is made of: what each source and machine drives into it, and the ohms that each element puts
into its loop.

Both follow from the equations of the whole network and add up: the shares to the current, the ohms to the impedance.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Any, NamedTuple

import numpy as np

from .assemble import Assembled, assemble, motor_admittance, shunts_of
from .elements import Bus, Motor
from .factors import Factors
from .forest import Forest
from .layout import Complex, Floats, Ints
from .ways import Felt, Loops, Ways, loops_between, loops_in, reach_of, way_of, within_blocks

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
    which the ``parts`` add up to: ohm by element, as it acts at the place of the fault. ``legs_ohm`` is what each of
    three legs sees: its volts to the star over its current.
    """

    volts: complex
    ohm: complex
    amperes: float
    mean_ohm: complex
    parts: dict[str, complex]
    legs_ohm: tuple[complex, ...] = ()


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
        self.named: Any = np.array(names, dtype=object)
        self.owner: Ints = np.array([entry[0] for entry in entries], dtype=np.int64)
        self.row: Ints = np.array([entry[1] for entry in entries], dtype=np.int64)
        self.value: Complex = np.array([entry[2] for entry in entries], dtype=np.complex128)
        self._reach: list[tuple[Ints, Complex]] | None = None

    def through(self, lines: Complex) -> Complex:
        """What each force gives, (names, k), where the lines (entries, k) say what one unit of each entry gives."""
        found = np.zeros((len(self.names), lines.shape[1]), dtype=np.complex128)
        for k in range(lines.shape[1]):
            terms = lines[:, k] * self.value
            found[:, k].real = np.bincount(self.owner, terms.real, len(self.names))
            found[:, k].imag = np.bincount(self.owner, terms.imag, len(self.names))
        return found

    def felt(self, factors: Factors, unknowns: Ints) -> tuple[Floats, Complex, Complex]:
        """The loops between conductors by their unknowns, the impedance of these, and what each force gives in them."""
        forest = factors.along
        loops = loops_in(forest.order, unknowns) if forest is not None else None
        if forest is None or loops is None:
            shape, rhs = _loops(unknowns, factors.size)
            lines = factors.solve_transposed(rhs)
            return shape, rhs.T @ lines, self.through(lines[self.row])
        way = way_of(forest, loops, transposed=True)
        lines = np.zeros((len(self.row), loops.shape.shape[1]), dtype=np.complex128)
        for block, values in way:
            entries, reach = self._below(forest)[block]
            if len(entries):
                # Not `@`: as long as the machines of a site are many, that wakes threads, which cost more.
                lines[entries] = np.einsum("ij,jk->ik", reach, values)
        return loops.shape, loops.rhs.T @ way[-1].values, self.through(lines)

    def _below(self, forest: Forest) -> list[tuple[Ints, Complex]]:
        """By block, the entries in it and below, and what one unit of each gives there of what is felt in the block."""
        if self._reach is None:
            self._reach = reach_of(forest, self.row)
        return self._reach


class SourcesAlone:
    """The equations of a network without its machines, and its voltages before any fault."""

    def __init__(self, study: FaultStudy) -> None:
        same = not study.frame.with_motors
        self.assembled = study.assembled if same else assemble(study.network, "fault", with_motors=False)
        self.factors = study.factors if same else Factors(self.assembled)
        self.before_v = self.assembled.node_voltages(self.factors.solve(self.assembled.excitation()))
        self._branches = _BranchOhms(self.assembled)
        self._shunts = shunts_of(study.network) if study.network.admittances else None

    def felt(self, unknowns: Ints) -> _Everywhere | _OnTheWay | None:
        """How the loops between conductors, by their unknowns, are felt; None where none of them is an unknown."""
        if not (unknowns >= 0).any():
            return None
        if self._ways is not None:
            loops = loops_in(self._ways.forest.order, unknowns)
            if loops is not None:
                return _OnTheWay(self._ways, self.assembled, self._branches, loops)
        return _Everywhere(self, unknowns)

    @cached_property
    def _ways(self) -> Ways | None:
        """The ways to the source, where the network is a forest."""
        forest, shunts = self.factors.along, self._shunts
        if forest is None or not (shunts is None or within_blocks(forest, self.assembled, shunts)):
            return None
        return Ways(self.assembled, forest, self._branches.row, shunts)

    def powers(self, change: Complex, least: float) -> dict[str, complex]:
        """What every line, core and source takes of a change of currents alone, in VA from ``least`` on, by element."""
        frame, found = self.assembled, {}
        v = frame.node_voltages(change)
        for k, batch in frame.lines.items():
            across = v[batch.from_nodes] - v[batch.to_nodes]
            found.update(_line_powers(frame, k, batch.y_series, across, None, least))
        found.update(self._branches.powers(frame.branch_currents(change), least))
        if self._shunts is not None:
            a, b, y = self._shunts
            shunts = complex(np.sum(np.abs(v[a] - v[b]) ** 2 * np.conj(y)))
            if abs(shunts) > least:
                found[SHUNTS] = shunts
        return found


def _line_powers(
    frame: Assembled, k: int, y_series: Complex, across: Complex, at: Ints | None, least: float
) -> dict[str, complex]:
    """What lines of k conductors take, from ``least`` on, by name; ``at`` are the lines where it is not all."""
    power = np.sum(across * np.conj(np.matmul(y_series, across[..., None])[..., 0]), axis=1)
    there = np.flatnonzero(np.abs(power) > least)
    names = frame.network.lines[k].names
    numbers = there if at is None else at[there]
    return {names[number]: value for number, value in zip(numbers.tolist(), power[there].tolist(), strict=True)}


class _Everywhere:
    """Loops between conductors, solved for in the whole network."""

    def __init__(self, alone: SourcesAlone, unknowns: Ints) -> None:
        self._alone = alone
        self.shape, rhs = _loops(unknowns, alone.assembled.size)
        self._x = alone.factors.solve_once(rhs)
        self.z = rhs.T @ self._x

    def powers(self, currents: Complex, least: float) -> dict[str, complex]:
        """What every element takes while currents are drawn in the loops, in VA from ``least`` on."""
        return self._alone.powers(-(self._x @ currents), least)


class _OnTheWay:
    """The same, solved for where it is felt."""

    def __init__(self, ways: Ways, frame: Assembled, branches: _BranchOhms, loops: Loops) -> None:
        self._ways, self._frame, self._branches = ways, frame, branches
        self.shape = loops.shape
        self._way = way_of(ways.forest, loops)
        self.z: Complex = loops.rhs.T @ self._way[-1].values

    def powers(self, currents: Complex, least: float) -> dict[str, complex]:
        """What every element takes while currents are drawn in the loops, in VA from ``least`` on."""
        ways, frame = self._ways, self._frame
        way = [Felt(block, -(values @ currents)) for block, values in self._way]
        felt = ways.felt(way, least)
        change = ways.spread(felt)
        found: dict[str, complex] = {}
        for k, batch in frame.lines.items():
            at, one, other = ways.lines(k, felt)
            if len(at):
                found.update(_line_powers(frame, k, batch.y_series[at], change[one] - change[other], at, least))
        found.update(self._branches.powers(change[frame.layout.first_branch :], least, ways.branches(felt)))
        if ways.shunts and abs(shunts := ways.across(way)) > least:
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
        self.row: Ints = np.array([entry[0] for entry in entries], dtype=np.int64)
        self._column: Ints = np.array([entry[1] for entry in entries], dtype=np.int64)
        self._ohm: Complex = np.array([entry[2] for entry in entries], dtype=np.complex128)
        self._element: Ints = np.array(network.branches.element, dtype=np.int64)[self.row]
        self._names = network.element_names

    def powers(self, currents: Complex, least: float, at: Ints | None = None) -> dict[str, complex]:
        """What each element takes, from ``least`` on; ``at`` are the impedances where it is not all."""
        row, column, ohm = self.row, self._column, self._ohm
        element, count = self._element, len(self._names)
        names = self._names
        if at is not None:
            row, column, ohm = row[at], column[at], ohm[at]
            numbers, element = np.unique(element[at], return_inverse=True)
            names = [self._names[number] for number in numbers.tolist()]
            count = len(names)
        power = np.conj(currents[row]) * ohm * currents[column]
        total = np.bincount(element, power.real, count) + 1j * np.bincount(element, power.imag, count)
        return {names[k]: complex(total[k]) for k in np.flatnonzero(np.abs(total) > least).tolist()}


def shares_of(study: FaultStudy, bus: Bus, fault: Fault, most: int) -> Shares:
    """What each source, running machine and converter drives into a fault, on the conductor that carries most; of the
    machines and converters the ``most`` largest by name."""
    drives = study.drives
    unknowns = study.frame.layout.unknown[np.array(bus.pick(fault.tied), dtype=np.int64)]
    drawn = _drawn(*drives.felt(study.factors, unknowns))
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
        drives.named[fed[shown:]].tolist(),
        float(in_step[fed[shown:]].sum()),
    )


def loop_of(study: FaultStudy, bus: Bus, tied: Sequence[str]) -> Loop | None:
    """The loop of a fault at a bus, of sources alone; None where nothing limits it or no current flows.

    The power that a fault takes is that of all impedances its current flows through (Tellegen's theorem); over the
    square of the current these are ohms, which transformers turn to the side of the fault by themselves.
    """
    alone = study.sources_alone
    nodes = np.array(bus.pick(tied), dtype=np.int64)
    felt = alone.felt(alone.assembled.layout.unknown[nodes])
    if felt is None or not np.abs(felt.z).max() > 0:
        return None
    before = alone.before_v[nodes]
    currents = _in_loops(felt.z, (before @ felt.shape)[None, :])[0]
    drawn = felt.shape @ currents
    most = int(np.argmax(np.abs(drawn)))
    current = complex(drawn[most])
    if not abs(current) > 0:
        return None
    against = before[1 - most] if len(nodes) == 2 else before.mean()
    volts = complex(before[most] - against)
    squares = float(np.sum(np.abs(drawn) ** 2)) / (2 if len(nodes) == 2 else 1)
    whole = complex(np.sum(before * np.conj(drawn)))
    least = LEAST_PART * abs(whole)
    powers = felt.powers(currents, least)
    parts = {name: power / squares for name, power in powers.items()}
    legs: tuple[complex, ...] = ()
    if len(nodes) == 3 and np.abs(drawn).min() > LEAST_PART * abs(current):
        legs = tuple(((before - against) / drawn).tolist())
    return Loop(volts, volts / current, abs(current), whole / squares, parts, legs)


def fed_by_motors(motors: Iterable[Motor], before_v: Complex) -> list[tuple[str, Sequence[int], Sequence[complex]]]:
    """The currents that running machines bring in behind their impedance, in A, by node."""
    found: list[tuple[str, Sequence[int], Sequence[complex]]] = []
    for motor in motors:
        y = motor_admittance(motor.z1_ohm, motor.z2_ohm, len(motor.nodes))
        found.append((motor.name, motor.nodes, (y @ before_v[list(motor.nodes)]).tolist()))
    return found


def _loops(unknowns: Ints, size: int) -> tuple[Floats, Complex]:
    """The loops between tied conductors, (k, k - 1), and their unit currents as right-hand sides."""
    loops = loops_between(len(unknowns))
    rhs = np.zeros((size, loops.shape[1]), dtype=np.complex128)
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
