"""Writes a network as a circuit for ngspice (a general circuit simulator) and reads back what it solves.

Nothing of the engine's own equations is used: coupled lines become inductors with coupling factors and controlled
sources, cores become controlled sources, constant-power loads are current sources adjusted from run to run.
"""

from __future__ import annotations

import cmath
import shutil
import subprocess
import tempfile
from collections.abc import Sequence
from math import degrees, pi, sqrt
from pathlib import Path

import pytest

from wyeline_linter.circuit import Network

NEEDS_NGSPICE = pytest.mark.skipif(shutil.which("ngspice") is None, reason="ngspice is not installed")
FREQUENCY_HZ = 60.0
OMEGA = 2 * pi * FREQUENCY_HZ
OPEN_OHM = 1e12
FAULT_OHM = 1e-9
SIDES = {2: [(0, 1)], 3: [(0, 1), (0, 2), (1, 2)]}
"""Places beside the diagonal of a matrix."""


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

    def behind(self, heads: Sequence[str], tails: Sequence[str], z: Sequence[complex]) -> None:
        """k conductors with any k*k impedance, also one that no coil has (sequences that differ in a machine).

        Each current goes through 1 ohm and 1 ohm of reactance aside; what stands there is put into the conductors.
        """
        k = len(heads)
        middles, aside = [self.fresh() for _ in range(k)], [self.fresh() for _ in range(k)]
        for j in range(k):
            meter = self.add("V", f"{heads[j]} {middles[j]} dc 0")
            through = self.fresh()
            self.add("F", f"0 {aside[j]} {meter} 1")
            self.add("R", f"{aside[j]} {through} 1")
            self.add("L", f"{through} 0 {1 / OMEGA!r}")
            aside[j] = f"{aside[j]},{through} {through},0"
        for i in range(k):
            at = middles[i]
            terms = [
                (pair, gain)
                for j in range(k)
                for pair, gain in zip(aside[j].split(), (z[i * k + j].real, z[i * k + j].imag), strict=True)
                if gain
            ]
            for n, (pair, gain) in enumerate(terms):
                after = tails[i] if n == len(terms) - 1 else self.fresh()
                plus, minus = pair.split(",")
                self.add("E", f"{at} {after} {plus} {minus} {gain!r}")
                at = after
            if not terms:
                self.add("V", f"{at} {tails[i]} dc 0")

    def current(self, a: str, b: str, value: complex) -> None:
        """A current drawn from a and returned to b."""
        self.add("I", f"{a} {b} dc 0 ac {abs(value)!r} {degrees(cmath.phase(value))!r}")


def node(number: int) -> str:
    return f"n{number}" if number else "0"


def write(
    net: Network, *, faulted: bool, drawn: Sequence[complex] = (), before: dict[int, complex] | None = None
) -> Deck:
    """The network as a circuit: with loads (currents of constant-power loads in `drawn`), or as faults see it.

    With the voltages `before` a fault, motors stand in it as sources of these voltages behind their impedance, and
    converters as sources of their current, a quarter of a turn behind their voltage.
    """
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
        z = source.z_ohm if faulted else source.z_flow_ohm
        if any(z):
            alike = len(heads) == 1 or all(z[i * len(heads) + j] == z[j * len(heads) + i] for i, j in SIDES[len(heads)])
            (deck.coupled if alike and all(own.imag > 0 for own in z[:: len(heads) + 1]) else deck.behind)(
                behind_z, heads, z
            )
        else:
            for behind, head in zip(behind_z, heads, strict=True):
                deck.add("V", f"{behind} {head} dc 0")
    if faulted:
        for motor in net.motors if before is not None else ():
            assert motor.z1_ohm == motor.z2_ohm
            back = motor.nodes[1] if len(motor.nodes) == 2 else None
            star = deck.fresh() if back is None else node(back)
            zero = sum(before[leg] for leg in motor.nodes) / 3 if back is None else before[back]
            for leg in motor.nodes if back is None else motor.nodes[:1]:
                inner, e = deck.fresh(), before[leg] - zero
                deck.impedance(node(leg), inner, motor.z1_ohm)
                deck.add("V", f"{inner} {star} dc 0 ac {abs(e)!r} {degrees(cmath.phase(e))!r}")
        for converter in net.fault_current_sources if before is not None else ():
            legs = converter.legs
            if len(legs) == 2:
                turns, volts = (1,), before[legs[0]] - before[legs[1]]
                ends = [(legs[1], legs[0])]
            else:
                turns = (1, cmath.rect(1, -2 * pi / 3), cmath.rect(1, 2 * pi / 3))
                volts = sum(before[leg] / turn for leg, turn in zip(legs, turns, strict=True)) / 3
                ends = [(0, leg) for leg in legs]
            for (out, into), turn in zip(ends, turns, strict=True):
                deck.current(node(out), node(into), -1j * converter.current_a * turn * volts / abs(volts))
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
    for number in sorted({number for tied in faults for number in tied}):
        # Every conductor has a switch to one common point, and a fault closes some of them.
        lines.append(f"vf{number} {node(number)} f{number} dc 0")
        lines.append(f"rf{number} f{number} fault {OPEN_OHM!r}")
    with tempfile.TemporaryDirectory() as folder:
        ac = f"ac lin 1 {FREQUENCY_HZ} {FREQUENCY_HZ}"
        control.append(ac)
        control.append("wrdata base.txt " + " ".join(f"v({node(number)})" for number in named))
        for f, tied in enumerate(faults):
            control.extend(f"alter rf{number} = {FAULT_OHM}" for number in tied)
            control.append(ac)
            control.append(f"wrdata fault{f}.txt i(vf{tied[0]})")
            control.append("destroy all")
            control.extend(f"alter rf{number} = {OPEN_OHM}" for number in tied)
        text = "\n".join([*lines, ".control", *control, "quit", ".endc", ".end", ""])
        (Path(folder) / "deck.cir").write_text(text, encoding="utf-8")
        done = subprocess.run(
            ["ngspice", "-b", "deck.cir"], cwd=folder, capture_output=True, text=True, timeout=300, check=False
        )
        try:
            base = read(Path(folder) / "base.txt")
            currents = [read(Path(folder) / f"fault{f}.txt")[0] for f in range(len(faults))]
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
