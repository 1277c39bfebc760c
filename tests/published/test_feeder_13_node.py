"""The IEEE 13-node test feeder: node voltages and total input, with regulator taps given.

Source: IEEE PES Distribution System Analysis Subcommittee; see the head of data/feeder_13_node.csv.
"""

from __future__ import annotations

import cmath
import csv
from math import degrees, sqrt
from pathlib import Path

import pytest
from network_readings import Branches
from transformer_connections import Rating, three_phase

from wyeline_linter.circuit import EARTH, Bus, Network, Solved, solve_flow

V_LN = 4160 / sqrt(3)
TAPS = (1.0625, 1.05, 1.06875)
PHASES = "ABC"


def read_blocks() -> dict[str, list[list[str]]]:
    """Rows of the data file by the block they belong to."""
    text = (Path(__file__).parent / "data" / "feeder_13_node.csv").read_text(encoding="utf-8")
    blocks: dict[str, list[list[str]]] = {}
    for row in csv.reader(line for line in text.splitlines() if line and not line.startswith("#")):
        blocks.setdefault(row[0], []).append(row[1:])
    return blocks


BLOCKS = read_blocks()


def triangle(text: str) -> list[complex]:
    """Upper triangle aa ab ac bb bc cc as a full 3*3 matrix."""
    aa, ab, ac, bb, bc, cc = (complex(part.replace("j", "") + "j" if "j" in part else part) for part in text.split())
    return [aa, ab, ac, ab, bb, bc, ac, bc, cc]


def build() -> tuple[Network, dict[str, Bus]]:
    net = Network()
    names = ["650", "RG60", "632", "633", "634", "645", "646", "671", "684", "652", "680", "692", "611", "675"]
    bus = {name: net.bus(name, PHASES) for name in names}
    net.three_phase_source("650", bus["650"].pick(PHASES), EARTH, V_LN)
    for k, tap in enumerate(TAPS):
        net.core(f"regulator {k}", (bus["650"].nodes[k], EARTH), ((bus["RG60"].nodes[k], EARTH),), (1 / tap,))
    config = {row[0]: row for row in BLOCKS["CONFIG"]}
    for start, end, feet, kind in BLOCKS["LINE"]:
        a, b = bus["RG60" if start == "650" else start], bus[end]
        if kind == "switch":
            for phase in PHASES:
                net.link(f"{start}-{end}{phase}", a[phase], b[phase])
        elif kind == "XFM-1":
            rating = Rating(500e3, 0.011 + 0.02j)
            three_phase(net, kind, a.nodes, EARTH, b.nodes, EARTH, 4160, 480, "YNyn0", rating)
        else:
            miles = float(feet) / 5280
            z, charging = (triangle(config[kind][column]) for column in (2, 3))
            there = [k for k in range(3) if z[4 * k]]
            pick = [(i, j) for i in there for j in there]
            net.line(
                f"{start}-{end}",
                [a.nodes[k] for k in there],
                [b.nodes[k] for k in there],
                [z[3 * i + j] * miles for i, j in pick],
                [charging[3 * i + j] * 1e-6j * miles for i, j in pick],
            )
    for node, model, *numbers in BLOCKS["LOAD"]:
        add_load(net, bus[node], node, model, [float(number) for number in numbers])
    for row in BLOCKS["LOADDIST_632-671"]:
        half = [float(number) / 2 for number in row[2:]]
        for node in ("632", "671"):
            add_load(net, bus[node], f"distributed at {node}", row[1], half)
    for node, *kvar in BLOCKS["CAP"]:
        for k, text in enumerate(kvar):
            if text:
                pair = (bus[node].nodes[k], EARTH)
                net.load(f"capacitor {node}{k}", pair, -1j * float(text) * 1e3, V_LN, (0, 0, 1))
    return net, bus


def add_load(net: Network, bus: Bus, name: str, model: str, numbers: list[float]) -> None:
    delta, law = model.split("-")
    shares = {"PQ": (1.0, 0.0, 0.0), "I": (0.0, 1.0, 0.0), "Z": (0.0, 0.0, 1.0)}[law]
    base = 277.13 if bus.name == "634" else V_LN
    for k in range(3):
        s = complex(numbers[2 * k], numbers[2 * k + 1]) * 1e3
        if s:
            other = bus.nodes[(k + 1) % 3] if delta == "D" else EARTH
            net.load(f"{name} {k}", (bus.nodes[k], other), s, base * (sqrt(3) if delta == "D" else 1), shares)


@pytest.fixture(scope="module")
def solved() -> tuple[Solved, dict[str, Bus]]:
    net, bus = build()
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    assert flow.selftest.passed
    return flow, bus


def test_published_voltages(solved: tuple[Solved, dict[str, Bus]]) -> None:
    flow, bus = solved
    wrong = []
    for node, *numbers in BLOCKS["RESULT"]:
        base = 480 / sqrt(3) if node == "634" else V_LN
        for k, phase in enumerate(PHASES):
            if not numbers[2 * k]:
                continue
            per_unit, angle = float(numbers[2 * k]), float(numbers[2 * k + 1])
            v = flow.voltage(bus[node], phase)
            assert v is not None
            turn = (degrees(cmath.phase(v)) - angle + 180) % 360 - 180
            if abs(abs(v) / base - per_unit) > 2e-4 or abs(turn) > 0.02:
                wrong.append(f"{node}{phase}: {abs(v) / base:.4f}/{degrees(cmath.phase(v)):.2f}, {per_unit}/{angle}")
    assert not wrong


def test_published_input(solved: tuple[Solved, dict[str, Bus]]) -> None:
    power = Branches.of(solved[0]).source_va("650")
    assert power.real == pytest.approx(3577.191e3, rel=2e-4)
    assert power.imag == pytest.approx(1724.720e3, rel=5e-4)
