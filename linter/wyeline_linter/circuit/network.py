"""The network of one scenario, built bus by bus and element by element."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from .elements import (
    Branches,
    Bus,
    Core,
    FaultCurrentSource,
    LineGroup,
    Loads,
    Motor,
    Pair,
    Source,
)
from .sequences import A1, A2, phase_matrix


class Network:
    """The network of one scenario.  Names of elements must be unique; nodes come from :meth:`bus`."""

    def __init__(self) -> None:
        self.buses: list[Bus] = []
        self.bus_by_name: dict[str, Bus] = {}
        self.node_bus: list[int] = [-1]
        """Bus number of every node; -1 for earth."""
        self.lines: dict[int, LineGroup] = {}
        self.line_at: dict[str, tuple[int, int]] = {}
        self.admittances: list[tuple[int, int, complex]] = []
        self.branches = Branches()
        self.element_names: list[str] = []
        self.links: dict[str, Pair] = {}
        """Nodes that are one for the equations."""
        self.cores: dict[str, Core] = {}
        self.sources: dict[str, Source] = {}
        self.loads = Loads()
        self.motors: list[Motor] = []
        self.fault_current_sources: list[FaultCurrentSource] = []
        self.wiring: dict[str, object] = {}
        """What :mod:`.layout` keeps of the wiring, for all variants of it."""

    def variant(self) -> Network:
        """The same wiring with values of its own, and without loads, motors and converters.

        Values change by :meth:`set_line`, :meth:`set_source` and :meth:`scale_windings`; nothing may be added but
        loads, motors and converters, as buses and connections are shared.
        """
        made = Network()
        made.buses, made.bus_by_name, made.node_bus = self.buses, self.bus_by_name, self.node_bus
        made.line_at, made.element_names, made.links = self.line_at, self.element_names, self.links
        made.admittances, made.wiring = self.admittances, self.wiring
        made.lines = {k: replace(group, z_ohm=list(group.z_ohm)) for k, group in self.lines.items()}
        made.branches = replace(self.branches, impedance=list(self.branches.impedance))
        made.cores, made.sources = dict(self.cores), dict(self.sources)
        return made

    def set_line(self, name: str, z_ohm: Sequence[complex]) -> None:
        """Give a line other impedances, as :meth:`line` takes them."""
        k, position = self.line_at[name]
        self.lines[k].z_ohm[position] = _full(name, k, z_ohm)

    def set_source(self, name: str, z_ohm: tuple[complex, ...]) -> None:
        """Give a source another impedance, k*k, in all studies."""
        self.sources[name] = replace(self.sources[name], z_ohm=z_ohm, z_flow_ohm=z_ohm)

    def scale_windings(self, entries: range, factor: float) -> None:
        """Multiply impedances of cores, given by their places among those of the branches."""
        impedance = self.branches.impedance
        scaled = set()
        for place in entries:
            row, col, z = impedance[place]
            impedance[place] = (row, col, factor * z)
            scaled.add(self.element_names[self.branches.element[row]])
        for name in scaled:
            core = self.cores[name]
            z_secondary = tuple(factor * z for z in core.z_secondary_ohm)
            self.cores[name] = replace(core, z_primary_ohm=factor * core.z_primary_ohm, z_secondary_ohm=z_secondary)

    def same_wiring(self, other: Network) -> bool:
        """Whether another network has the same elements and values, loads left aside."""
        return self is other or (
            self.node_bus == other.node_bus
            and self.lines == other.lines
            and self.branches == other.branches
            and self.admittances == other.admittances
            and self.motors == other.motors
            and self.fault_current_sources == other.fault_current_sources
            and self.sources == other.sources
            and self.links == other.links
            and self.element_names == other.element_names
        )

    # -- nodes

    def bus(self, name: str, conductors: Sequence[str]) -> Bus:
        """Add a bus with its conductors ("ABCNG", or a sequence of names).  ValueError if the name is taken."""
        if name in self.bus_by_name:
            raise ValueError(f"bus {name} exists already")
        first = len(self.node_bus)
        index = len(self.buses)
        made = Bus(index, name, tuple(conductors), tuple(range(first, first + len(conductors))))
        self.node_bus.extend([index] * len(conductors))
        self.buses.append(made)
        self.bus_by_name[name] = made
        return made

    def inner_node(self, near: int) -> int:
        """Add a node that belongs to an element (a star point, a zigzag midpoint) at the bus of node `near`."""
        self.node_bus.append(self.node_bus[near])
        return len(self.node_bus) - 1

    @property
    def node_count(self) -> int:
        """Number of nodes, earth included."""
        return len(self.node_bus)

    # -- passive elements

    def line(
        self,
        name: str,
        from_nodes: Sequence[int],
        to_nodes: Sequence[int],
        z_ohm: Sequence[complex],
        charging_s: Sequence[complex] | None = None,
    ) -> None:
        """Add a line of k conductors.

        `z_ohm` is either k self impedances (independent conductors) or the full k*k matrix, row by row; `charging_s`
        likewise is the k*k shunt admittance to earth of the whole length, half of it put at each end.
        """
        k = len(from_nodes)
        if len(to_nodes) != k:
            raise ValueError(f"line {name}: {k} conductors at one end, {len(to_nodes)} at the other")
        if name in self.line_at:
            raise ValueError(f"line {name} exists already")
        z = _full(name, k, z_ohm)
        group = self.lines.setdefault(k, LineGroup())
        self.line_at[name] = (k, len(group.names))
        if charging_s is not None:
            if len(charging_s) != k * k:
                raise ValueError(f"line {name}: the charging admittance needs {k * k} entries")
            group.charging_s[len(group.names)] = tuple(charging_s)
        group.names.append(name)
        group.from_nodes.append(tuple(from_nodes))
        group.to_nodes.append(tuple(to_nodes))
        group.z_ohm.append(z)

    def impedance(self, name: str, pair: Pair, z_ohm: complex) -> None:
        """Add one impedance between two nodes (a grounding resistor, a reactor)."""
        self.line(name, pair[:1], pair[1:], (z_ohm,))

    def admittance(self, pair: Pair, y_s: complex) -> None:
        """Add a shunt admittance in siemens between two nodes; it stays in the fault study too."""
        self.admittances.append((pair[0], pair[1], y_s))

    def link(self, name: str, a: int, b: int) -> None:
        """Add a closed switch, a bond or a zero-length connection."""
        if name in self.links:
            raise ValueError(f"link {name} exists already")
        self.links[name] = (a, b)

    def core(
        self,
        name: str,
        primary: Pair,
        secondaries: Sequence[Pair],
        ratios: Sequence[float],
        z_primary_ohm: complex = 0j,
        z_secondary_ohm: Sequence[complex] = (0j,),
        magnetising_s: complex = 0j,
    ) -> None:
        """Add an ideal core with one or more secondaries.

        `ratios` are primary over secondary turns with taps; a negative one reverses the polarity.  Each winding has its
        own series impedance in its own volts; `magnetising_s` is put across the primary terminals.
        """
        if name in self.cores:
            raise ValueError(f"core {name} exists already")
        if not len(secondaries) == len(ratios) == len(z_secondary_ohm):
            raise ValueError(f"core {name}: as many ratios and impedances as secondaries are needed")
        if any(ratio == 0 for ratio in ratios):
            raise ValueError(f"core {name}: a ratio of zero")
        branches = self.branches
        first = len(branches)
        element = self._element(name)
        for k, (pair, ratio, z) in enumerate(zip(secondaries, ratios, z_secondary_ohm, strict=True)):
            branch = first + k
            branches.element.append(element)
            branches.incidence.append((branch, primary[0], 1.0))
            branches.incidence.append((branch, primary[1], -1.0))
            branches.incidence.append((branch, pair[0], -ratio))
            branches.incidence.append((branch, pair[1], ratio))
            for other in range(len(secondaries)):
                own = ratio * ratio * z if other == k else 0j
                branches.impedance.append((branch, first + other, z_primary_ohm + own))
        if magnetising_s:
            self.admittance(primary, magnetising_s)
        self.cores[name] = Core(
            name, primary, tuple(secondaries), tuple(ratios), first, z_primary_ohm, tuple(z_secondary_ohm)
        )

    # -- active elements

    def source(
        self,
        name: str,
        pair: Pair,
        e_volt: complex,
        z_ohm: complex = 0j,
    ) -> None:
        """Add a single-phase source: `e_volt` behind `z_ohm`, first node of the pair against the second."""
        self._source(name, pair[:1], pair[1:], (e_volt,), (z_ohm,), (z_ohm,))

    def coupled_source(
        self,
        name: str,
        plus: Sequence[int],
        minus: Sequence[int],
        e_volt: Sequence[complex],
        z_ohm: tuple[complex, ...],
    ) -> None:
        """Add k electromotive forces behind a common k*k impedance, `plus[j]` against `minus[j]` (a centre-tapped
        supply: leg A to neutral, neutral to leg B)."""
        if len(z_ohm) != len(plus) ** 2 or not len(plus) == len(minus) == len(e_volt):
            raise ValueError(f"source {name}: {len(plus)} forces need as many ends and a square impedance")
        self._source(name, plus, minus, e_volt, z_ohm, z_ohm)

    def three_phase_source(
        self,
        name: str,
        legs: Sequence[int],
        neutral: int | None,
        e_ln_volt: complex,
        z1_ohm: complex = 0j,
        z2_ohm: complex | None = None,
        z0_ohm: complex | None = None,
        *,
        regulated: bool = False,
    ) -> None:
        """Add a balanced three-phase source behind Z1, Z2, Z0 (Z2 and Z0 default to Z1).

        `e_ln_volt` is the phasor of leg A against the star point; B lags by 120 degrees.  Without `neutral` the star
        point is not brought out and Z0 is infinite.  `regulated` makes the load flow hold the positive-sequence
        terminal voltage at `e_ln_volt` (a generator with its regulator) while faults see the full Z1.
        """
        if len(legs) != 3:
            raise ValueError(f"source {name}: three legs are needed, {len(legs)} were given")
        z2 = z1_ohm if z2_ohm is None else z2_ohm
        z0 = z1_ohm if z0_ohm is None or neutral is None else z0_ohm
        star = self.inner_node(legs[0]) if neutral is None else neutral
        e = tuple(e_ln_volt * turn for turn in (1, A2, A1))
        full = phase_matrix(z0, z1_ohm, z2)
        flow = phase_matrix(z0, 0j, z2) if regulated else full
        self._source(name, tuple(legs), (star, star, star), e, full, flow)

    def load(
        self,
        name: str,
        pair: Pair,
        s_va: complex,
        v_nominal: float,
        shares: tuple[float, float, float] = (1.0, 0.0, 0.0),
        limit_a: float = float("inf"),
    ) -> None:
        """Add a load on a node pair; `shares` of constant power, current and impedance; negative S feeds in.

        `limit_a` caps the current of the constant-power share (inverters).  Not part of the fault study.
        """
        self.loads.add(name, pair, s_va, v_nominal, shares, limit_a)

    def motor(self, name: str, nodes: Sequence[int], z1_ohm: complex, z2_ohm: complex | None = None) -> None:
        """Add a motor's contribution to faults: three legs, or the two nodes of a single-phase motor."""
        if len(nodes) not in (2, 3):
            raise ValueError(f"motor {name}: two or three nodes are needed")
        self.motors.append(Motor(name, tuple(nodes), z1_ohm, z1_ohm if z2_ohm is None else z2_ohm))

    def fault_current_source(self, name: str, legs: Sequence[int], current_a: float) -> None:
        """Add a converter's fixed fault current, on three legs or one node pair, purely reactive."""
        if len(legs) not in (2, 3):
            raise ValueError(f"converter {name}: two or three nodes are needed")
        self.fault_current_sources.append(FaultCurrentSource(name, tuple(legs), current_a))

    # -- inner workings

    def _element(self, name: str) -> int:
        self.element_names.append(name)
        return len(self.element_names) - 1

    def _source(
        self,
        name: str,
        plus: Sequence[int],
        minus: Sequence[int],
        e_volt: Sequence[complex],
        z_ohm: tuple[complex, ...],
        z_flow_ohm: tuple[complex, ...],
    ) -> None:
        if name in self.sources:
            raise ValueError(f"source {name} exists already")
        branches = self.branches
        first = len(branches)
        element = self._element(name)
        for k, (high, low) in enumerate(zip(plus, minus, strict=True)):
            branches.element.append(element)
            branches.incidence.append((first + k, high, -1.0))
            branches.incidence.append((first + k, low, 1.0))
            branches.emf[first + k] = e_volt[k]
        # The impedances are stamped by the study: a load flow and a fault study see different ones.
        self.sources[name] = Source(name, tuple(plus), tuple(minus), z_ohm, z_flow_ohm, first)


def _full(name: str, k: int, z_ohm: Sequence[complex]) -> tuple[complex, ...]:
    """The whole matrix of a line, row by row.  ValueError where it has none."""
    if len(z_ohm) == k * k:
        z = tuple(z_ohm)
    elif len(z_ohm) == k:
        full = [0j] * (k * k)
        full[:: k + 1] = z_ohm
        z = tuple(full)
    else:
        raise ValueError(f"line {name}: {len(z_ohm)} impedances for {k} conductors; {k} or {k * k} are needed")
    if 0 in z[:: k + 1]:
        raise ValueError(f"line {name}: a conductor without impedance; use a link")
    return z
