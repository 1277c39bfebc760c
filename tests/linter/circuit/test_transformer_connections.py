"""Transformer connections at no load: ratio, clock number, taps, and what the special connections give."""

from __future__ import annotations

import cmath
from math import pi, sqrt

import pytest
from network_readings import Branches
from transformer_connections import (
    Rating,
    autotransformer,
    buck_boost,
    grounding_zigzag,
    scott,
    three_phase,
    winding_plan,
)

from wyeline_linter.circuit import EARTH, Bus, Network, Solved, solve_flow, study_faults

GROUPS = (
    *("Dyn1", "Dyn5", "Dyn7", "Dyn11", "YNyn0", "YNyn2", "Yy6", "Yd1", "Yd5", "Yd7", "Yd11"),
    *("Dd0", "Dd2", "Dd4", "Dd6", "Dd8", "Dd10", "Dzn0", "Dz6", "YNzn1", "Yzn5", "Yzn11"),
)


def supplied(v_ll: float) -> tuple[Network, Bus]:
    net = Network()
    high = net.bus("high", "ABCN")
    net.three_phase_source("S", high.pick("ABC"), high["N"], v_ll / sqrt(3))
    net.link("bond", high["N"], EARTH)
    return net, high


def solved(net: Network) -> Solved:
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    return flow


@pytest.mark.parametrize("group", GROUPS)
def test_clock_number_ratio_and_impedance(group: str) -> None:
    # IEC 60076-1, clause 7: the clock number counts the lag of the low side in steps of 30 degrees.
    net, high = supplied(400)
    low = net.bus("low", "ABCN")
    rating = Rating(100e3, 0.01 + 0.05j, tap=1.025)
    star = None if group[1:].lower().lstrip("n")[0] == "d" else low["N"]
    high_star = high["N"] if group.startswith("YN") else None
    three_phase(net, "T", high.pick("ABC"), high_star, low.pick("ABC"), star, 400, 200, group, rating)
    net.link("low bond", low["N"], EARTH)
    flow = solved(net)
    clock = int("".join(letter for letter in group if letter.isdigit()))
    for a, b in ("AB", "BC", "CA"):
        above, below = flow.voltage(high, a, b), flow.voltage(low, a, b)
        assert above is not None
        assert below is not None
        assert below / above == pytest.approx(cmath.rect(0.5 / 1.025, -clock * pi / 6), rel=1e-5)
    fault = study_faults(net).bus(low, "ABC")
    assert fault.loop_ohm == pytest.approx((0.01 + 0.05j) * 200**2 / 100e3, rel=1e-4)


def test_us_delta_wye_winding_lies_between_a_and_c() -> None:
    # Common practice, no source: with a 30 degree lag winding a is fed from A and C, with a lead from A and B.
    assert winding_plan("Dyn1").high[0] == (0, 2)
    assert winding_plan("Dyn11").high[0] == (0, 1)


def test_wye_without_neutral_lets_the_star_point_move() -> None:
    # A leg-to-neutral load on wye/wye without primary neutral nearly loses its voltage; with the neutral it does not.
    leg_volts = {}
    for joined in (True, False):
        net, high = supplied(400)
        low = net.bus("low", "ABCN")
        star = high["N"] if joined else None
        rating = Rating(100e3, 0.01 + 0.05j, magnetising_pu=0.002 - 0.01j)
        three_phase(net, "T", high.pick("ABC"), star, low.pick("ABC"), low["N"], 400, 400, "YNyn0", rating)
        net.link("low bond", low["N"], EARTH)
        net.load("L", low.pair("AN"), 20e3, 230, (0, 0, 1))
        leg_volts[joined] = abs(solved(net).v[low["A"]])
    assert leg_volts[True] > 225
    assert leg_volts[False] < 30


def test_autotransformer_and_buck_boost() -> None:
    net, high = supplied(480)
    low, raised, lowered = net.bus("low", "ABC"), net.bus("raised", "A"), net.bus("lowered", "A")
    star = high["N"]
    autotransformer(
        *(net, "T", high.pick("ABC"), low.nodes, star, 480 / sqrt(3), 400 / sqrt(3)), Rating(50e3, 0.02 + 0.03j)
    )
    a, b = high.pick("AB")
    buck_boost(net, "up", (a, b), raised["A"], 480, 24, Rating(1e3, 0.03 + 0.02j))
    buck_boost(net, "down", (a, b), lowered["A"], 480, 24, Rating(1e3, 0.03 + 0.02j), boost=False)
    flow = solved(net)
    assert abs(flow.voltage(low, "A", "B") or 0) == pytest.approx(400, rel=1e-5)
    assert abs(flow.voltage_between(raised["A"], b) or 0) == pytest.approx(504, rel=1e-5)
    assert abs(flow.voltage_between(lowered["A"], b) or 0) == pytest.approx(456, rel=1e-5)
    short = study_faults(net).bus(low, "ABC")
    assert short.loop_ohm == pytest.approx((0.02 + 0.03j) * 400**2 / 50e3, rel=1e-4)


def test_zigzag_makes_a_neutral() -> None:
    net = Network()
    bus = net.bus("B", "ABCN")
    net.three_phase_source("S", bus.pick("ABC"), None, 277, 0.01j)
    grounding_zigzag(net, "Z", bus.pick("ABC"), bus["N"], 0.3 + 0.9j)
    net.link("bond", bus["N"], EARTH)
    flow = solved(net)
    assert [abs(flow.voltage(bus, leg, "N") or 0) for leg in "ABC"] == pytest.approx([277] * 3, rel=1e-4)
    expected = 3 * 277 / abs(2 * 0.01j + 0.3 + 0.9j)
    assert study_faults(net).bus(bus, "AE").current_a == pytest.approx(expected, rel=1e-4)


def test_scott_gives_two_phases_and_balances_the_primary() -> None:
    net, high = supplied(480)
    low = net.bus("low", ("1", "2", "N"))
    pairs = (low.pair("1N"), low.pair("2N"))
    scott(net, "T", high.pick("ABC"), pairs[0], pairs[1], 480, 240, (Rating(25e3, 0.01j), Rating(25e3, 0.01j)))
    net.link("low bond", low["N"], EARTH)
    for k, pair in enumerate(pairs):
        net.load(f"L{k}", pair, 10e3, 240)
    flow = solved(net)
    one, two = flow.v[list(low.pick("12"))]
    assert abs(one) == pytest.approx(240, rel=1e-3)
    assert abs(two) == pytest.approx(240, rel=1e-3)
    assert abs(cmath.phase(two / one)) == pytest.approx(pi / 2, abs=1e-2)
    legs = [abs(i) for i in Branches.of(flow).source("S")]
    assert max(legs) - min(legs) < 0.02 * max(legs)
