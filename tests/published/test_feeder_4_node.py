"""The IEEE 4-node transformer test feeder: every connection, step-down and step-up, every voltage and current.

Source: W. H. Kersting, transformer test feeder of the IEEE PES Distribution System Analysis Subcommittee; see the
head of data/feeder_4_node.csv for what is from memory and what is recomputed.
"""

from __future__ import annotations

import cmath
import csv
from collections import defaultdict
from math import degrees, sqrt
from pathlib import Path

import pytest
from transformer_connections import Rating, open_delta, three_phase

from wyeline_linter.circuit import EARTH, Bus, Network, Solved, solve_flow

FOUR_WIRE = (  # ohm per mile, phases with the neutral folded in
    *(0.4576 + 1.0780j, 0.1560 + 0.5017j, 0.1535 + 0.3849j),
    *(0.1560 + 0.5017j, 0.4666 + 1.0482j, 0.1580 + 0.4236j),
    *(0.1535 + 0.3849j, 0.1580 + 0.4236j, 0.4615 + 1.0651j),
)
THREE_WIRE = (
    *(0.4013 + 1.4133j, 0.0953 + 0.8515j, 0.0953 + 0.7266j),
    *(0.0953 + 0.8515j, 0.4013 + 1.4133j, 0.0953 + 0.7802j),
    *(0.0953 + 0.7266j, 0.0953 + 0.7802j, 0.4013 + 1.4133j),
)
GROUPS = {
    ("step-down", "GrY-GrY"): "YNyn0",
    ("step-down", "GrY-D"): "YNd1",
    ("step-down", "Y-D"): "Yd1",
    ("step-down", "D-GrY"): "Dyn1",
    ("step-down", "D-D"): "Dd0",
    ("step-up", "GrY-GrY"): "YNyn0",
    ("step-up", "GrY-D"): "YNd11",
    ("step-up", "Y-D"): "Yd11",
    ("step-up", "D-GrY"): "Dyn11",
    ("step-up", "D-D"): "Dd0",
}
LOADS_KW_PF = {
    ("closed", "balanced"): ((1800, 0.9), (1800, 0.9), (1800, 0.9)),
    ("closed", "unbalanced"): ((1275, 0.85), (1800, 0.90), (2375, 0.95)),
    ("open", "balanced"): ((1200, 0.9), (1200, 0.9), (1200, 0.9)),
    ("open", "unbalanced"): ((850, 0.85), (1200, 0.90), (1583.33, 0.95)),
}
VOLT_TOLERANCE, AMPERE_TOLERANCE, DEGREE_TOLERANCE = 0.3, 0.15, 0.1


def read_cases() -> dict[tuple[str, str, str], list[tuple[str, str, float, float]]]:
    """Expected figures by (direction, connection, load)."""
    text = (Path(__file__).parent / "data" / "feeder_4_node.csv").read_text(encoding="utf-8")
    lines = [line for line in text.splitlines() if not line.startswith("#")]
    cases = defaultdict(list)
    for row in csv.DictReader(lines):
        key = (row["direction"], row["connection"], row["load"])
        cases[key].append((row["quantity"], row["phase"], float(row["magnitude"]), float(row["angle_deg"])))
    return dict(cases)


CASES = read_cases()


def solve_case(direction: str, connection: str, load: str) -> tuple[Solved, dict[str, Bus], bool]:
    """Build and solve one case."""
    opened = connection.startswith("open")
    delta_primary, delta_secondary = connection.startswith("D"), connection.endswith("D")
    v_low = 4160.0 if direction == "step-down" else 24900.0
    net = Network()
    bus = {name: net.bus(name, "ABC") for name in ("1", "2", "3", "4")}
    legs = {name: one.pick("ABC") for name, one in bus.items()}
    net.three_phase_source("infinite bus", legs["1"], EARTH, 12470 / sqrt(3))
    upper, lower = (THREE_WIRE if delta else FOUR_WIRE for delta in (delta_primary, delta_secondary))
    net.line("12", legs["1"], legs["2"], [z * 2000 / 5280 for z in upper])
    net.line("34", legs["3"], legs["4"], [z * 2500 / 5280 for z in lower])
    if opened:
        a, b, c = legs["3"]
        high = ((legs["2"][0], EARTH), (legs["2"][1], EARTH))
        unit = Rating(2e6, 0.01 + 0.06j)
        open_delta(net, "T", high, ((a, b), (b, c)), 12470 / sqrt(3), v_low, (unit, unit))
    else:
        high_neutral = EARTH if connection.startswith("GrY") else None
        low_neutral = EARTH if connection.endswith("GrY") else None
        group = GROUPS[direction, connection]
        rating = Rating(6e6, 0.01 + 0.06j)
        three_phase(net, "T", legs["2"], high_neutral, legs["3"], low_neutral, 12470, v_low, group, rating)
    for k, (kilowatt, pf) in enumerate(LOADS_KW_PF["open" if opened else "closed", load]):
        s = kilowatt * 1e3 * complex(1, sqrt(1 / pf**2 - 1))
        end = legs["4"][(k + 1) % 3] if delta_secondary else EARTH
        net.load(f"load {k}", (legs["4"][k], end), s, v_low if delta_secondary else v_low / sqrt(3))
    # One case is solved below 0.75 of nominal voltage, where the published loads stay constant power.
    flow = solve_flow(net, collapse_pu=0)
    assert isinstance(flow, Solved)
    assert flow.selftest.passed
    return flow, bus, delta_secondary


@pytest.mark.parametrize("case", CASES, ids=" ".join)
def test_every_voltage_and_current(case: tuple[str, str, str]) -> None:
    flow, bus, delta_secondary = solve_case(*case)
    wrong = []
    for quantity, phase, magnitude, angle in CASES[case]:
        k = "abc".index(phase)
        if quantity.startswith("I"):
            value, tolerance = complex(flow.line(quantity[1:])[0][k]), AMPERE_TOLERANCE
        else:
            node = quantity[1:]
            delta = case[1].startswith("D") if node == "2" else delta_secondary
            found = flow.voltage(bus[node], "ABC"[k], "ABC"[(k + 1) % 3] if delta else "E")
            assert found is not None
            value, tolerance = found, VOLT_TOLERANCE
        turn = (degrees(cmath.phase(value)) - angle + 180) % 360 - 180
        if abs(abs(value) - magnitude) > tolerance or abs(turn) > DEGREE_TOLERANCE:
            wrong.append(f"{quantity} {phase}: {abs(value):.1f}/{degrees(cmath.phase(value)):.1f}, {magnitude}/{angle}")
    assert not wrong
