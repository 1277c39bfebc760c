"""What flows in closed switches and bonds: by Kirchhoff, and alike where they are in parallel.

Nodes joined by links are one to the solver.  Here the current that other elements take from each node is distributed
on the links that join them, along a tree of links and then around its loops, as equal resistances would have it.
"""

from __future__ import annotations

import numpy as np

from .assemble import Frame, motor_admittance
from .elements import EARTH
from .layout import Complex


def leaving_nodes(frame: Frame, v: Complex, branch: Complex, lines: dict[int, tuple[Complex, Complex]]) -> Complex:
    """Current that lines, shunts, windings, sources and (in a fault study) motors take from each node, in A."""
    network = frame.network
    leaving = np.zeros(frame.node_count, dtype=np.complex128)
    for k, (entering, received) in lines.items():
        from_nodes, to_nodes = frame.layout.line_nodes[k]
        np.add.at(leaving, from_nodes, entering)
        np.subtract.at(leaving, to_nodes, received)
    for a, b, y in network.admittances:
        current = y * (v[a] - v[b])
        leaving[a] += current
        leaving[b] -= current
    leaving += frame.layout.leakage_s * v
    for number, node, coefficient in network.branches.incidence:
        leaving[node] += coefficient * branch[number]
    if frame.with_motors:
        for motor in network.motors:
            nodes = list(motor.nodes)
            leaving[nodes] += motor_admittance(motor.z1_ohm, motor.z2_ohm, len(nodes)) @ v[nodes]
    return leaving


def link_currents(frame: Frame, leaving: Complex) -> dict[str, complex]:
    """Current of every link from its first node to its second, given what leaves each node by all other elements."""
    links = frame.network.links
    at: dict[int, list[tuple[str, int]]] = {}
    for name, (a, b) in links.items():
        at.setdefault(a, []).append((name, b))
        at.setdefault(b, []).append((name, a))
    found = dict.fromkeys(links, 0j)
    seen: set[int] = set()
    for root in sorted(at, key=lambda node: node != EARTH):
        if root not in seen:
            _distribute(root, at, links, leaving, seen, found)
    return found


def _distribute(
    root: int,
    at: dict[int, list[tuple[str, int]]],
    links: dict[str, tuple[int, int]],
    leaving: Complex,
    seen: set[int],
    found: dict[str, complex],
) -> None:
    """The links of one part."""
    seen.add(root)
    order, above = [root], {root: ("", root)}
    for node in order:
        for name, other in at[node]:
            if other not in seen:
                seen.add(other)
                above[other] = (name, node)
                order.append(other)
    need = {node: complex(leaving[node]) for node in order}
    for node in reversed(order[1:]):
        name, upper = above[node]
        found[name] = need[node] if links[name][0] == upper else -need[node]
        need[upper] += need[node]
    tree = {name for name, _ in above.values()}
    chords = list(dict.fromkeys(name for node in order for name, _ in at[node] if name not in tree))
    if chords:
        _balance(chords, above, links, found)


def _balance(
    chords: list[str], above: dict[int, tuple[str, int]], links: dict[str, tuple[int, int]], found: dict[str, complex]
) -> None:
    """Send a current around each loop so that the volts around it vanish, all links being alike."""
    circuits = []
    for chord in chords:
        circuit = {chord: 1.0}
        a, b = links[chord]
        for node, sign in ((a, 1.0), (b, -1.0)):
            while above[node][1] != node:
                name, upper = above[node]
                # From the root down to the chord's start, through it, and back from its end.
                circuit[name] = circuit.get(name, 0.0) + (sign if links[name][0] == upper else -sign)
                node = upper
        circuits.append({name: turns for name, turns in circuit.items() if turns})
    number = {name: k for k, name in enumerate(dict.fromkeys(name for circuit in circuits for name in circuit))}
    around = np.zeros((len(circuits), len(number)))
    for k, circuit in enumerate(circuits):
        for name, turns in circuit.items():
            around[k, number[name]] = turns
    flowing = np.array([found[name] for name in number])
    flowing = flowing - around.T @ np.linalg.lstsq(around @ around.T, around @ flowing, rcond=None)[0]
    found.update(zip(number, flowing.tolist(), strict=True))
