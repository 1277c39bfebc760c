"""Writes a network as a circuit for ngspice (a general circuit simulator) and reads back what it solves.

Nothing of the engine's own equations is used: coupled lines become inductors with coupling factors and controlled
sources, cores become controlled sources, constant-power loads are current sources adjusted from run to run.
"""

from __future__ import annotations

import cmath
import subprocess
import tempfile
from collections.abc import Sequence
from math import degrees, pi, sqrt
from pathlib import Path

from wyeline_linter.circuit import Network

FREQUENCY_HZ = 60.0
OMEGA = 2 * pi * FREQUENCY_HZ
OPEN_OHM = 1e12
FAULT_OHM = 1e-9
Pair = tuple[int, int]


class Deck:
    """Lines of a circuit, with fresh names and inner nodes."""

    def __init__(self) -> None:
        self.lines = ["* network"]
        self.count = 0

    def fresh(self) -> str:
        self.count += 1
        return f"x{self.count}"

    def add(self, letter: str, rest: str) -> str:
        self.count += 1
        name = f"{letter}{self.count}"
        self.lines.append(f"{name} {rest}")
        return name

    def impedance(self, a: str, b: str, z: complex) -> None:
        """A series impedance as resistor and inductor or capacitor."""
        middle = self.fresh() if z.real and z.imag else b
        if z.real:
            self.add("R", f"{a} {middle} {z.real!r}")
        start = middle if z.real else a
        if z.imag > 0:
            self.add("L", f"{start} {b} {z.imag / OMEGA!r}")
        elif z.imag < 0:
            self.add("C", f"{start} {b} {-1 / (OMEGA * z.imag)!r}")
        elif not z.real:
            self.add("V", f"{a} {b} dc 0")

    def coupled(self, heads: Sequence[str], tails: Sequence[str], z: Sequence[complex]) -> None:
        """k coupled conductors: mutual reactance by coupling factors, mutual resistance by controlled sources."""
        k = len(heads)
        inductors = []
        middles = [self.fresh() for _ in range(k)]
        meters = [self.add("V", f"{heads[i]} {middles[i]} dc 0") for i in range(k)]
        for i in range(k):
            own = z[i * k + i]
            at = middles[i]
            for j in range(k):
                if j != i and z[i * k + j].real:
                    after = self.fresh()
                    self.add("H", f"{at} {after} {meters[j]} {z[i * k + j].real!r}")
                    at = after
            if own.real and own.imag:
                after = self.fresh()
                self.add("R", f"{at} {after} {own.real!r}")
                at = after
            if own.imag:
                inductors.append(self.add("L", f"{at} {tails[i]} {own.imag / OMEGA!r}"))
            else:
                inductors.append("")
                self.impedance(at, tails[i], own)
        for i in range(k):
            for j in range(i):
                mutual = z[i * k + j].imag
                if mutual:
                    factor = mutual / sqrt(z[i * k + i].imag * z[j * k + j].imag)
                    self.add("K", f"{inductors[i]} {inductors[j]} {factor!r}")

    def current(self, a: str, b: str, value: complex) -> None:
        """A current drawn from a and returned to b."""
        self.add("I", f"{a} {b} dc 0 ac {abs(value)!r} {degrees(cmath.phase(value))!r}")


def node(number: int) -> str:
    return f"n{number}" if number else "0"


def write(net: Network, *, faulted: bool, drawn: Sequence[complex] = ()) -> Deck:
    """The network as a circuit: with loads (currents of constant-power loads in `drawn`), or as faults see it."""
    deck = Deck()
    for k, group in net.lines.items():
        assert not group.charging_s
        for start, end, matrix in zip(group.from_nodes, group.to_nodes, group.z_ohm, strict=True):
            if k == 1:
                deck.impedance(node(start[0]), node(end[0]), matrix[0])
            else:
                deck.coupled([node(n) for n in start], [node(n) for n in end], matrix)
    for a, b in net.links.values():
        deck.add("V", f"{node(a)} {node(b)} dc 0")
    for a, b, y in net.admittances:
        deck.impedance(node(a), node(b), 1 / y)
    for core in net.cores.values():
        inner = deck.fresh()
        deck.impedance(node(core.primary[0]), inner, core.z_primary_ohm)
        for pair, ratio, z in zip(core.secondaries, core.ratios, core.z_secondary_ohm, strict=True):
            behind, out = deck.fresh(), deck.fresh()
            deck.add("E", f"{behind} {node(pair[1])} {inner} {node(core.primary[1])} {1 / ratio!r}")
            meter = deck.add("V", f"{behind} {out} dc 0")
            deck.impedance(out, node(pair[0]), z)
            deck.add("F", f"{inner} {node(core.primary[1])} {meter} {1 / ratio!r}")
    for source in net.sources.values():
        behind_z = []
        for k, minus in enumerate(source.minus):
            e = net.branches.emf[source.first_branch + k]
            behind_z.append(deck.fresh())
            deck.add("V", f"{behind_z[-1]} {node(minus)} dc 0 ac {abs(e)!r} {degrees(cmath.phase(e))!r}")
        heads = [node(n) for n in source.plus]
        if any(source.z_ohm):
            deck.coupled(behind_z, heads, source.z_ohm)
        else:
            for behind, head in zip(behind_z, heads, strict=True):
                deck.add("V", f"{behind} {head} dc 0")
    if faulted:
        for motor in net.motors:
            star = deck.fresh() if len(motor.nodes) == 3 else node(motor.nodes[1])
            legs = motor.nodes if len(motor.nodes) == 3 else motor.nodes[:1]
            for leg in legs:
                deck.impedance(node(leg), star, motor.z1_ohm)
        return deck
    loads = net.loads
    for k, (pair, s, v, shares) in enumerate(zip(loads.pairs, loads.s_va, loads.v_nominal, loads.shares, strict=True)):
        if shares[2]:
            deck.impedance(node(pair[0]), node(pair[1]), v * v / (shares[2] * s.conjugate()))
        if k < len(drawn) and drawn[k]:
            deck.current(node(pair[0]), node(pair[1]), drawn[k])
    return deck


def run(deck: Deck, net: Network, faults: Sequence[Sequence[int]] = ()) -> tuple[dict[int, complex], list[complex]]:
    """Voltages of all nodes without fault, and the current into the first conductor of each fault (tied nodes)."""
    lines = list(deck.lines)
    lines.append(".options rshunt=1e10 noinit")
    control = ["set numdgt=12", "set wr_singlescale"]
    named = list(range(1, net.node_count))
    switches: list[list[str]] = []
    for f, tied in enumerate(faults):
        names = []
        for k, number in enumerate(tied):
            lines.append(f"vf{f}_{k} {node(number)} f{f}_{k} dc 0")
            lines.append(f"rf{f}_{k} f{f}_{k} f{f} {OPEN_OHM!r}")
            names.append(f"rf{f}_{k}")
        switches.append(names)
    with tempfile.TemporaryDirectory() as folder:
        ac = f"ac lin 1 {FREQUENCY_HZ} {FREQUENCY_HZ}"
        control.append(ac)
        control.append("wrdata base.txt " + " ".join(f"v({node(number)})" for number in named))
        for f, names in enumerate(switches):
            control.extend(f"alter {name} = {FAULT_OHM}" for name in names)
            control.append(ac)
            control.append(f"wrdata fault{f}.txt i(vf{f}_0)")
            control.extend(f"alter {name} = {OPEN_OHM}" for name in names)
        text = "\n".join([*lines, ".control", *control, "quit", ".endc", ".end", ""])
        (Path(folder) / "deck.cir").write_text(text, encoding="utf-8")
        done = subprocess.run(
            ["ngspice", "-b", "deck.cir"], cwd=folder, capture_output=True, text=True, timeout=60, check=False
        )
        try:
            base = read(Path(folder) / "base.txt")
            currents = [read(Path(folder) / f"fault{f}.txt")[0] for f in range(len(switches))]
        except (OSError, IndexError):
            raise AssertionError(f"ngspice gave no answer:\n{done.stdout[-2000:]}\n{done.stderr[-2000:]}") from None
    return dict(zip(named, base, strict=True)), currents


def read(path: Path) -> list[complex]:
    """Complex values of a one-row wrdata file: scale, then real and imaginary parts in turn."""
    numbers = [float(part) for part in path.read_text(encoding="utf-8").split()]
    return [complex(numbers[k], numbers[k + 1]) for k in range(1, len(numbers) - 1, 2)]


def solve_loaded(net: Network, start: dict[int, complex] | None = None) -> dict[int, complex]:
    """Load flow by ngspice: runs until the currents of constant-power and constant-current loads stand still."""
    loads = net.loads
    volts, _ = run(write(net, faulted=False), net) if start is None else (start, [])
    volts[0] = 0j
    for _ in range(12):
        drawn = []
        for pair, s, nominal, shares in zip(loads.pairs, loads.s_va, loads.v_nominal, loads.shares, strict=True):
            v = volts[pair[0]] - volts[pair[1]]
            drawn.append((s / v).conjugate() * (shares[0] + shares[1] * abs(v) / nominal))
        after, _ = run(write(net, faulted=False, drawn=drawn), net)
        after[0] = 0j
        moved = max(
            abs(after[a] - after[b] - volts[a] + volts[b]) / nominal
            for (a, b), nominal in zip(loads.pairs, loads.v_nominal, strict=True)
        )
        volts = after
        if moved < 1e-6:
            return volts
    raise AssertionError("the outer iteration with ngspice did not settle")
