"""Load flow: the laws of loads, states that are not numbers, sources, loops, and the check on every solution."""

from __future__ import annotations

import cmath
from math import sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from network_readings import Branches
from transformer_connections import Rating, three_phase

from wyeline_linter.circuit import EARTH, Bus, Network, NotSolved, Solved, solve_flow
from wyeline_linter.circuit.sequences import sequence_parts


def two_buses(z: complex, volt: float = 240.0) -> tuple[Network, Bus]:
    net = Network()
    start, end = net.bus("start", "AN"), net.bus("end", "AN")
    net.source("S", start.pair("AN"), volt)
    net.link("bond", start["N"], EARTH)
    net.line("run", start.nodes, end.nodes, [z / 2] * 2)
    return net, end


def solved(net: Network, **options: float) -> Solved:
    flow = solve_flow(net, **options)
    assert isinstance(flow, Solved)
    assert flow.selftest.passed
    return flow


@pytest.mark.parametrize("shares", [(1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.3, 0.3, 0.4)])
def test_each_law_draws_what_it_says(shares: tuple[float, float, float]) -> None:
    net, end = two_buses(0.1 + 0.1j)
    s = 8e3 + 4e3j
    net.load("L", end.pair("AN"), s, 240, shares)
    flow = solved(net)
    v = flow.load_voltage[0]
    u = abs(v) / 240
    assert v * flow.load_current[0].conjugate() == pytest.approx(s * (shares[0] + shares[1] * u + shares[2] * u * u))


@pytest.mark.parametrize("share_of_limit", [0.5, 0.9, 0.99, 0.99999])
def test_constant_power_up_to_the_limit_of_the_line(share_of_limit: float) -> None:
    # Closed form for a purely resistive line: V = (E + sqrt(E^2 - 4 R P)) / 2; at most E^2 / 4R.
    net, end = two_buses(0.2 + 0j)
    limit = 240**2 / (4 * 0.2)
    net.load("L", end.pair("AN"), share_of_limit * limit, 240)
    flow = solved(net, collapse_pu=0)
    assert abs(flow.load_voltage[0]) == pytest.approx(120 * (1 + sqrt(1 - share_of_limit)), rel=1e-6)


def test_too_much_power_is_a_state_and_not_a_number() -> None:
    net, end = two_buses(0.2 + 0j)
    net.load("kiln", end.pair("AN"), 1.05 * 240**2 / 0.8, 240)
    flow = solve_flow(net, collapse_pu=0)
    assert isinstance(flow, NotSolved)
    assert "more power" in flow.reason
    switched = solved(net)
    assert switched.collapsed == ("kiln",)


def test_load_no_source_reaches() -> None:
    net, end = two_buses(0.1 + 0j)
    island = net.bus("island", "AN")
    net.link("island bond", island["N"], EARTH)
    net.load("far", island.pair("AN"), 1e3, 240)
    net.load("near", end.pair("AN"), 1e3, 240)
    flow = solved(net)
    assert flow.unfed == ("far",)
    assert flow.collapsed == ()
    assert flow.v[island["A"]] == 0
    assert abs(flow.v[end["A"]]) > 200


def test_floating_part_has_line_voltages_only() -> None:
    net = Network()
    high, low = net.bus("high", "ABC"), net.bus("low", "ABC")
    net.three_phase_source("S", high.nodes, EARTH, 480 / sqrt(3))
    three_phase(net, "T", high.nodes, None, low.nodes, None, 480, 240, "Dd0", Rating(45e3, 0.02 + 0.03j))
    net.load("L", low.pair("AB"), 5e3, 240)
    flow = solved(net)
    assert flow.voltage(low, "A") is None
    across = flow.voltage(low, "B", "C")
    assert across is not None
    assert abs(across) == pytest.approx(240, rel=0.01)


def test_regulated_generator_holds_positive_sequence() -> None:
    net = Network()
    bus = net.bus("G", "ABCN")
    net.three_phase_source("G", bus.pick("ABC"), bus["N"], 277, 0.3j, 0.2j, 0.05j, regulated=True)
    net.link("bond", bus["N"], EARTH)
    net.load("one leg", bus.pair("AN"), 20e3 + 5e3j, 277)
    flow = solved(net)
    zero, positive, negative = sequence_parts(*(complex(v) for v in flow.v[list(bus.pick("ABC"))]))
    assert positive == pytest.approx(277)
    third = flow.load_current[0] / 3
    assert negative == pytest.approx(-0.2j * third)
    assert zero == pytest.approx(-0.05j * third)


def test_inverter_at_its_limit() -> None:
    net, end = two_buses(0.1 + 0j)
    net.load("PV", end.pair("AN"), -12e3, 240, limit_a=40)
    net.load("L", end.pair("AN"), 3e3, 240)
    flow = solved(net)
    assert flow.limited == ("PV",)
    assert abs(flow.load_current[0]) == pytest.approx(40)
    assert Branches.of(flow).source_va("S").real < 0


def test_parallel_sources_and_a_closed_tie_share_by_impedance() -> None:
    net = Network()
    one, two = net.bus("one", "A"), net.bus("two", "A")
    net.source("S1", (one["A"], EARTH), 240, 0.01)
    net.source("S2", (two["A"], EARTH), 240, 0.03)
    net.link("tie", one["A"], two["A"])
    net.link("second tie", one["A"], two["A"])
    net.load("L", (two["A"], EARTH), 24e3, 240, (0, 1, 0))
    flow = solved(net)
    assert [abs(Branches.of(flow).source(name)[0]) for name in ("S1", "S2")] == pytest.approx([75, 25], rel=1e-6)


def test_phase_shift_is_in_the_start() -> None:
    # A chain of shifting transformers turns the nominal by 4 * 30 degrees; the load flow must follow at once.
    net = Network()
    bus = net.bus("0", "ABCN")
    net.three_phase_source("S", bus.pick("ABC"), bus["N"], 277)
    net.link("bond", bus["N"], EARTH)
    for k in range(1, 5):
        low = net.bus(str(k), "ABCN")
        three_phase(
            *(net, f"T{k}", bus.pick("ABC"), None, low.pick("ABC"), low["N"], 480, 480), "Dyn1", Rating(1e6, 0.05j)
        )
        net.link(f"bond {k}", low["N"], EARTH)
        bus = low
    net.load("L", bus.pair("AN"), 10e3, 277)
    flow = solved(net)
    assert cmath.phase(flow.v[bus["B"]]) == pytest.approx(
        2 * cmath.pi / 3 * -1 - 2 * cmath.pi / 3 + 2 * cmath.pi, abs=0.02
    )


@settings(max_examples=25, deadline=None)
@given(
    st.lists(
        st.tuples(st.integers(0, 20), st.floats(0.001, 0.05), st.floats(-2e3, 4e3), st.floats(-1e3, 2e3)), min_size=1
    ),
    st.integers(0, 3),
)
def test_every_solution_passes_its_check(runs: list[tuple[int, float, float, float]], loops: int) -> None:
    net = Network()
    buses = [net.bus("0", "ABCN")]
    net.three_phase_source("S", buses[0].pick("ABC"), buses[0]["N"], 230, 0.01j, 0.02j, 0.015j)
    net.link("bond", buses[0]["N"], EARTH)
    for k, (above, ohm, watt, var) in enumerate(runs, start=1):
        bus = net.bus(str(k), "ABCN")
        net.line(f"to {k}", buses[above % len(buses)].nodes, bus.nodes, [complex(ohm, ohm)] * 4)
        net.load(f"load {k}", bus.pair(("ABC"[k % 3], "N")), complex(watt, var), 230)
        buses.append(bus)
    for k in range(loops):
        a, b = buses[k % len(buses)], buses[-1 - k % len(buses)]
        if a is not b:
            net.line(f"loop {k}", a.nodes, b.nodes, [0.02 + 0.01j] * 4)
    flow = solve_flow(net)
    if isinstance(flow, Solved):
        assert flow.selftest.passed
        sent, received = flow.line_power("to 1")
        assert flow.line_loss("to 1") == pytest.approx(sent - received)
        assert flow.selftest.losses_va.real >= -1e-6


def test_mistakes_are_named() -> None:
    net = Network()
    bus = net.bus("B", "AN")
    with pytest.raises(ValueError, match="bus B exists"):
        net.bus("B", "A")
    with pytest.raises(KeyError, match="conductors A N, not C"):
        bus["C"]
    with pytest.raises(ValueError, match="use a link"):
        net.line("run", bus.nodes, (EARTH, EARTH), [0j, 1j])
    with pytest.raises(ValueError, match="2 or 4 are needed"):
        net.line("run", bus.nodes, (EARTH, EARTH), [1j, 1j, 1j])
    with pytest.raises(ValueError, match="add up to 1"):
        net.load("L", bus.pair("AN"), 1, 120, (1, 1, 0))
    with pytest.raises(ValueError, match="not a vector group"):
        three_phase(net, "T", (1, 1, 1), None, (1, 1, 1), None, 1, 1, "Xyn3", Rating(1, 1j))
    with pytest.raises(ValueError, match="no connection"):
        three_phase(net, "T", (1, 1, 1), None, (1, 1, 1), None, 1, 1, "Dyn2", Rating(1, 1j))
