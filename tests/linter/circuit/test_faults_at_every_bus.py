"""Faults: all buses at once against plain solves, contributions, and places where a fault has no number."""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from network_readings import Branches, sequences
from transformer_connections import Rating, three_phase

from wyeline_linter.circuit import EARTH, Bus, Network, Solved, blocks, forest, solve_flow, study_faults, thevenin


def campus(parents: list[int], loops: list[tuple[int, int]], *, switched: bool) -> tuple[Network, list[Bus]]:
    """A tree of four-wire buses behind a delta/wye unit, optionally with switches in the legs, and loops added."""
    net = Network()
    grid, root = net.bus("grid", "ABC"), net.bus("0", "ABCN")
    net.three_phase_source("grid", grid.nodes, EARTH, 480 / sqrt(3), 0.001 + 0.01j, 0.001 + 0.012j, 0.02j)
    rating = Rating(500e3, 0.01 + 0.05j)
    three_phase(net, "T", grid.nodes, None, root.pick("ABC"), root["N"], 480, 208, "Dyn1", rating)
    net.link("bond", root["N"], EARTH)
    buses = [root]
    for k, parent in enumerate(parents, start=1):
        above, bus = buses[parent % len(buses)], net.bus(str(k), "ABCN")
        start = above.nodes
        if switched:
            switch = net.bus(f"switch {k}", "ABC")
            for leg in "ABC":
                net.link(f"switch {k}{leg}", above[leg], switch[leg])
            start = (*switch.nodes, above["N"])
        net.line(f"run {k}", start, bus.nodes, [(0.01 + 0.004j) * (1 + k % 5)] * 4)
        if k % 4 == 0:
            net.motor(f"motor {k}", bus.pick("ABC"), 0.2 + 2j)
        buses.append(bus)
    for k, (a, b) in enumerate(loops):
        one, other = buses[a % len(buses)], buses[b % len(buses)]
        if one is not other:
            net.line(f"loop {k}", one.nodes, other.nodes, [0.02 + 0.01j] * 4)
    return net, buses


@settings(max_examples=25, deadline=None)
@given(
    st.lists(st.integers(0, 40), min_size=14, max_size=40),
    st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), max_size=5),
    st.booleans(),
    st.sampled_from([0, 60, 240]),
)
def test_block_elimination_equals_plain_solves(
    parents: list[int], loops: list[tuple[int, int]], switched: bool, block_limit: int
) -> None:
    net, buses = campus(parents, loops, switched=switched)
    kept = blocks.BLOCK_LIMIT
    blocks.BLOCK_LIMIT = block_limit  # small: loops go through the low-rank change
    try:
        study = study_faults(net)
    finally:
        blocks.BLOCK_LIMIT = kept
    assert study.factors.forest is not None
    whole = np.linalg.inv(study.assembled.sparse().toarray())
    solved = thevenin.by_solving(study.factors, study.assembled.layout.unknown[[buses[-1].nodes]], len(whole))
    for bus in net.buses:
        at = study.assembled.layout.unknown[list(bus.nodes)]
        there = np.outer(at >= 0, at >= 0)
        plain = np.where(there, whole[np.ix_(at, at)], 0)
        # The grid side of the unit is earthed through the source, so every entry is comparable.
        assert np.allclose(study.impedance[bus.index], plain, rtol=1e-6, atol=1e-9)
    assert np.allclose(study.impedance[buses[-1].index], solved[0], rtol=1e-6, atol=1e-9)
    right = np.cos(np.arange(len(whole))) + 0j
    assert np.allclose(study.factors.solve_transposed(right), whole.T @ right, rtol=1e-6, atol=1e-6)


def test_network_during_a_fault_is_consistent() -> None:
    net, buses = campus([0, 0, 1, 1, 2, 3], [(3, 5)], switched=True)
    study = study_faults(net)
    for tied in ("ABC", "AN", "BC", "CE", "ABE"):
        fault = study.bus(buses[-1], tied)
        during_v = study.volts_during(buses[-1], fault)
        volts = [during_v[node] for node in buses[-1].pick(tied)]
        assert np.ptp(np.abs(volts)) < 1e-6
        assert sum(fault.conductor_a) == pytest.approx(0, abs=1e-6)
        # What the sources add, carried to the low side, and the motors together make the fault current of each leg.
        added = Branches.during(study, buses[-1], fault)
        core = [added.core(f"T.{k}")[1][0] for k in (1, 2, 3)]
        motors = sum(added.motor(k)[0] for k in range(len(net.motors)))
        drawn = fault.conductor_a[0] if tied[0] == "A" else 0
        assert core[0] + motors == pytest.approx(drawn, abs=2e-2)
        by_source = added.source("grid")
        primary = [added.core(f"T.{k}")[0] for k in (1, 2, 3)]
        assert abs(sum(by_source)) < 1e-3
        assert max(abs(by_source)) <= 2 * max(abs(i) for i in primary) + 1e-3


def test_motors_add_in_parallel() -> None:
    net = Network()
    bus = net.bus("B", "ABC")
    net.three_phase_source("S", bus.nodes, EARTH, 277, 0.02j, 0.02j, 0.02j)
    net.motor("M", bus.nodes, 0.5j)
    assert study_faults(net, with_motors=False).bus(bus, "ABC").current_a == pytest.approx(277 / 0.02)
    with_motor = study_faults(net)
    assert with_motor.bus(bus, "ABC").current_a == pytest.approx(277 / 0.02 + 277 / 0.5)
    # The motor has no neutral: it helps the ground fault through Z1 and Z2 only.
    z1 = 1 / (1 / 0.02 + 1 / 0.5)
    assert with_motor.bus(bus, "AE").current_a == pytest.approx(3 * 277 / (2 * z1 + 0.02))


def test_converter_adds_its_current() -> None:
    # IEC 60909-0:2016: at the bus itself a full converter adds its fixed current.
    net = Network()
    bus = net.bus("B", "ABC")
    net.three_phase_source("S", bus.nodes, EARTH, 277, 0.02j)
    net.fault_current_source("PV", bus.nodes, 120)
    assert study_faults(net).bus(bus, "ABC").current_a == pytest.approx(277 / 0.02 + 120)


def test_fault_impedance_and_prefault_voltage() -> None:
    net = Network()
    bus = net.bus("B", "ABC")
    net.three_phase_source("S", bus.nodes, EARTH, 277, 0.02j)
    assert study_faults(net, c_factor=1.05).bus(bus, "ABC").current_a == pytest.approx(1.05 * 277 / 0.02)
    study = study_faults(net)
    assert study.bus(bus, "AE", 0.1).current_a == pytest.approx(277 / abs(0.1 + 0.02j))
    assert study.bus(bus, "ABC", 0.1).current_a == pytest.approx(277 / abs(0.1 + 0.02j))
    net.load("L", (bus["A"], EARTH), 20e3 + 10e3j, 277)
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    loaded = study_faults(net, prefault=flow).bus(bus, "AE").current_a
    assert loaded == pytest.approx(abs(flow.v[bus["A"]]) / 0.02)


def test_faults_that_have_no_number_say_why() -> None:
    net = Network()
    stiff, dead, high, low = (net.bus(name, "ABC") for name in ("stiff", "dead", "high", "low"))
    net.three_phase_source("stiff", stiff.nodes, EARTH, 277)
    net.three_phase_source("S", high.nodes, EARTH, 277, 0.02j)
    three_phase(net, "T", high.nodes, None, low.nodes, None, 480, 240, "Dd0", Rating(45e3, 0.02 + 0.03j))
    study = study_faults(net)
    assert "without impedance" in study.bus(stiff, "ABC").note
    assert study.bus(stiff, "ABC").current_a is None
    assert (study.bus(dead, "AB").current_a, study.bus(dead, "AB").note) == (0.0, "no source reaches this bus")
    first = study.bus(low, "AE")
    assert first.current_a is None
    assert "first fault" in first.note
    # Two legs to earth is a line-line fault there.
    double, line = study.bus(low, "ABE").current_a, study.bus(low, "AB").current_a
    assert line is not None
    assert double == pytest.approx(line, rel=1e-4)
    with pytest.raises(ValueError, match="two different"):
        study.bus(low, "A")


def test_zero_sequence_of_the_core_and_of_a_return_conductor() -> None:
    # Z0 of a run whose earth fault returns in one conductor is Zphase + 3 Zreturn.
    net = Network()
    grid, root, end = net.bus("grid", "ABC"), net.bus("root", "ABCNG"), net.bus("end", "ABCG")
    net.three_phase_source("S", grid.nodes, EARTH, 277)
    rating = Rating(75e3, 0.02 + 0.03j, z0_pu=0.018 + 0.025j)
    three_phase(net, "T", grid.nodes, None, root.pick("ABC"), root["N"], 480, 208, "Dyn11", rating)
    net.link("bond", root["N"], root["G"])
    net.link("electrode", root["G"], EARTH)
    phase, ground = 0.05 + 0.01j, 0.12 + 0.015j
    net.line("run", root.pick("ABCG"), end.nodes, [phase, phase, phase, ground])
    parts = sequences(study_faults(net), end, back="G")
    base = 208**2 / 75e3
    assert parts.z1_ohm == pytest.approx((0.02 + 0.03j) * base + phase, rel=1e-5)
    assert parts.z0_ohm == pytest.approx((0.018 + 0.025j) * base + phase + 3 * ground, rel=1e-5)
    assert parts.coupling < 1e-6


@pytest.mark.parametrize("general", [False, True])
def test_a_grid(monkeypatch: pytest.MonkeyPatch, general: bool) -> None:
    if general:
        monkeypatch.setattr(forest, "LOOP_LIMIT", -1)  # as too meshed: the sparse solver instead
    net = Network()
    grid = {(i, j): net.bus(f"{i} {j}", "ABCN") for i in range(12) for j in range(12)}
    net.three_phase_source("S", grid[0, 0].pick("ABC"), grid[0, 0]["N"], 277, 0.01j)
    net.link("bond", grid[0, 0]["N"], EARTH)
    for (i, j), bus in grid.items():
        for other in (grid.get((i + 1, j)), grid.get((i, j + 1))):
            if other is not None:
                net.line(f"{bus.name} to {other.name}", bus.nodes, other.nodes, [0.01 + 0.01j] * 4)
    study = study_faults(net)
    assert (study.factors.forest is None) == general
    # Resistances of a grid are symmetric about its diagonal.
    one, other = study.bus(grid[3, 8], "AN").current_a, study.bus(grid[8, 3], "AN").current_a
    assert one == pytest.approx(other, rel=1e-9)
    end = grid[11, 11]
    block = study.impedance[end.index]
    fault = study.bus(end, "AB")
    assert fault.loop_ohm == pytest.approx(block[0, 0] + block[1, 1] - block[0, 1] - block[1, 0])
    during_v = study.volts_during(end, fault)
    assert abs(during_v[end["A"]] - during_v[end["B"]]) < 1e-6
