"""Closed switches and bonds: one node to the solver, however many meet at a bus."""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from network_readings import Branches

from wyeline_linter.circuit import EARTH, Bus, Network, NotSolved, Solved, solve_flow, study_faults

LEAST_OHM = 1e-7


def joined(links: list[tuple[int, int]], loads: list[tuple[int, float]], *, ideal: bool) -> tuple[Network, list[Bus]]:
    """Eight nodes behind a source, joined by links, or by resistances as good as none; the rest hangs on lines."""
    net = Network()
    buses = [net.bus(str(k), "AN") for k in range(8)]
    net.source("S", (buses[0]["A"], buses[0]["N"]), 240, 0.01 + 0.02j)
    net.link("bond", buses[0]["N"], EARTH)
    for k, bus in enumerate(buses[1:], start=1):
        net.line(f"run {k}", buses[k // 2].nodes, bus.nodes, [0.05 + 0.02j, 0.08 + 0.02j])
    for k, (a, b) in enumerate(links):
        ends = buses[a]["A"], buses[b]["A"]
        if a != b:
            if ideal:
                net.link(f"tie {k}", *ends)
            else:
                net.impedance(f"tie {k}", ends, LEAST_OHM)
    for k, (at, watt) in enumerate(loads):
        net.load(f"load {k}", buses[at].pair("AN"), watt, 240)
    return net, buses


@settings(max_examples=25, deadline=None)
@given(
    st.lists(st.tuples(st.integers(0, 7), st.integers(0, 7)), min_size=1, max_size=9),
    st.lists(st.tuples(st.integers(0, 7), st.floats(100, 3000)), min_size=1, max_size=6),
)
def test_links_join_as_small_resistances_would(links: list[tuple[int, int]], loads: list[tuple[int, float]]) -> None:
    net, buses = joined(links, loads, ideal=True)
    near, _ = joined(links, loads, ideal=False)
    flow, other = solve_flow(net), solve_flow(near)
    assert isinstance(flow, Solved)
    assert isinstance(other, Solved)
    assert flow.selftest.passed
    assert np.allclose(flow.v, other.v, atol=1e-2)
    study, theirs = study_faults(net), study_faults(near)
    fault, same = study.bus(buses[-1], "AN"), theirs.bus(buses[-1], "AN")
    assert fault.current_a == pytest.approx(same.current_a, rel=1e-4)
    assert np.allclose(study.volts_during(buses[-1], fault), theirs.volts_during(buses[-1], same), atol=1e-2)


@pytest.mark.parametrize("linked", [False, True])
def test_a_bus_with_ten_thousand_branches(linked: bool) -> None:
    # Star: each load alone behind its own run, so that its voltage follows from one loop by hand.
    net = Network()
    root = net.bus("root", "ABCN")
    net.three_phase_source("S", root.pick("ABC"), root["N"], 277)
    net.link("bond", root["N"], EARTH)
    for k in range(10_000):
        start = root
        if linked:
            start = net.bus(f"switch {k}", "ABCN")
            for name in "ABCN":
                net.link(f"{k} {name}", root[name], start[name])
        end = net.bus(f"end {k}", "ABCN")
        net.line(f"run {k}", start.nodes, end.nodes, [0.1] * 4)
        net.load(f"load {k}", end.pair("AN"), 1000, 277, (0, 0, 1))
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    assert flow.selftest.passed
    by_hand = 277 / (277**2 / 1000 + 0.2)
    assert abs(flow.load_current[9_999]) == pytest.approx(by_hand, rel=1e-9)
    faults = study_faults(net)
    assert faults.factors.forest is not None, "elimination along the forest serves, so that time grows with the size"
    at_end = faults.buses([net.bus_by_name[f"end {k}"] for k in (0, 9_999)], "ABC")
    assert [fault.current_a for fault in at_end] == pytest.approx([277 / 0.1] * 2)


def test_ideal_sources_that_links_join_share() -> None:
    net = Network()
    one, two = net.bus("one", "ABC"), net.bus("two", "ABC")
    for name, bus in (("S1", one), ("S2", two)):
        net.three_phase_source(name, bus.nodes, EARTH, 480 / sqrt(3))
    for leg in "ABC":
        net.link(f"tie {leg}", one[leg], two[leg])
    net.load("L", two.pair("AB"), 48e3, 480)
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    assert flow.selftest.passed
    assert [abs(Branches.of(flow).source(name)[0]) for name in ("S1", "S2")] == pytest.approx([50, 50])


def test_ideal_sources_on_the_same_conductors_have_no_solution() -> None:
    net = Network()
    bus = net.bus("B", "A")
    net.source("S1", (bus["A"], EARTH), 240)
    net.source("S2", (bus["A"], EARTH), 241)
    flow = solve_flow(net)
    assert isinstance(flow, NotSolved)
    assert "two sources without impedance" in flow.reason


def test_a_circuit_without_a_bus_or_without_a_source() -> None:
    net = Network()
    assert isinstance(solve_flow(net), Solved)
    bus = net.bus("B", "ABC")
    net.link("electrode", bus["A"], EARTH)
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    assert flow.voltage(bus, "A") == 0
    assert study_faults(net).bus(bus, "ABC").note == "no source reaches this bus"
    for conductor in "BC":
        net.link(f"also {conductor}", bus[conductor], EARTH)
    assert isinstance(solve_flow(net), Solved)
    assert study_faults(net).bus(bus, "AB").current_a == 0.0
