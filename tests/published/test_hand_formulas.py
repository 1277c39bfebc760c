"""Voltage drop, neutral current, unbalance, motor start and rating factors against published examples.

The source stands beside each check; "derived" means closed form, worked out by hand.
"""

from __future__ import annotations

from math import acos, cos, radians, sqrt

import pytest
from hand_formulas import (
    effective_ohm,
    generator_starting_dip,
    largest_deviation,
    neutral_current,
    open_delta_loads,
    starting_dip,
    supply_z,
    voltage_drop,
)
from network_readings import Branches
from transformer_connections import Rating, high_leg_delta

from wyeline_linter.circuit import EARTH, Bus, Network, Solved, solve_flow
from wyeline_linter.circuit.ansi import (
    duty,
    motor_first_cycle_pu,
    multiplying_factor,
    peak_factor,
    rms_asymmetry_factor,
    x_over_r_of,
)
from wyeline_linter.circuit.nameplate import locked_rotor_z, transformer_z_pu, utility_z0


@pytest.mark.parametrize(
    ("r_kft", "x_kft", "single_v", "three_v"),
    # NEC Chapter 9 Table 9, 2/0 in steel, 65 A, 1000 ft, pf 0.85: published arithmetic, recomputed.
    [(0.10, 0.054, 14.755, 12.778), (0.16, 0.054, 21.385, 18.52)],
    ids=["copper", "aluminium"],
)
def test_drop_along_1000_feet(r_kft: float, x_kft: float, single_v: float, three_v: float) -> None:
    assert voltage_drop(65, r_kft, x_kft, 0.85, "line-line") == pytest.approx(single_v, rel=1e-3)
    assert voltage_drop(65, r_kft, x_kft, 0.85, "three-phase") == pytest.approx(three_v, rel=1e-3)


def on_three_legs(net: Network, bus: Bus, s_va: complex, v_ll: float, shares: tuple[float, float, float]) -> None:
    """A balanced load without neutral: a third of it on each pair of legs."""
    for pair in ("AB", "BC", "CA"):
        net.load(f"load {pair}", bus.pair(pair), s_va / 3, v_ll, shares)


def test_drop_of_a_feeder_solved() -> None:
    # 1 AWG Cu in steel (NEC Chapter 9 Table 9: 0.16 + j0.057 ohm/kft), 100 A, 200 ft, 480 V, pf 0.85: 1.20 %, derived.
    z = (0.16 + 0.057j) * 0.2
    by_hand = voltage_drop(100, z.real, z.imag, 0.85, "three-phase")
    assert by_hand == pytest.approx(5.75, abs=0.005)
    net = Network()
    board, end = net.bus("board", "ABC"), net.bus("end", "ABC")
    net.three_phase_source("S", board.nodes, EARTH, 480 / sqrt(3))
    net.line("run", board.nodes, end.nodes, [z] * 3)
    angle = acos(0.85)
    on_three_legs(net, end, 480 * sqrt(3) * 100 * complex(0.85, sqrt(1 - cos(angle) ** 2)), 480, (0, 1, 0))
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    across = flow.voltage(end, "A", "B")
    assert across is not None
    assert 480 - abs(across) == pytest.approx(by_hand, rel=2e-3)


def test_iec_guide_lighting_circuit() -> None:
    # Installation guide, chapter G example 2 (scribd.com/document/520873322): 4.4 V on the feeder line to line,
    # 7.6 V on the branch at 19 V/A/km, unity power factor.
    feeder = voltage_drop(150, 0.59 / sqrt(3) * 0.05, 0, 1, "three-phase")
    branch = voltage_drop(20, 19 / 2 * 0.02, 0, 1, "line-neutral")
    assert (feeder, branch) == pytest.approx((4.4, 7.6), abs=0.05)
    assert feeder / sqrt(3) + branch == pytest.approx(10.1, abs=0.1)


@pytest.mark.parametrize(
    ("legs", "expected"),
    # forums.mikeholt.com/threads/multiwire-circuit.44780 (first), a public page, derived.
    [((5, 8, 0), 7.0), ((10, 15, 20), 8.66), ((10, 8, 6), 3.46), ((10, 10, 0), 10.0)],
)
def test_neutral_current(legs: tuple[float, float, float], expected: float) -> None:
    assert neutral_current(legs) == pytest.approx(expected, abs=0.005)
    net = Network()
    board, end = net.bus("board", "ABCN"), net.bus("end", "ABCN")
    net.three_phase_source("S", board.pick("ABC"), board["N"], 120)
    net.link("bond", board["N"], EARTH)
    net.line("run", board.nodes, end.nodes, [0.001] * 4)
    for leg, ampere in zip("ABC", legs, strict=True):
        if ampere:
            net.load(leg, end.pair((leg, "N")), ampere * 120, 120, (0, 1, 0))
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    assert abs(flow.line("run")[0][3]) == pytest.approx(expected, abs=0.01)


@pytest.mark.parametrize(
    ("volts", "percent"),
    # manualshelf.com motor-saver 201-575-au; a forum example; the classic 460, 467, 450 V example of NEMA MG 1.
    [((203, 210, 212), 2.56), ((462, 463, 455), 1.09), ((480, 476, 472), 0.84), ((460, 467, 450), 1.96)],
)
def test_unbalance(volts: tuple[float, ...], percent: float) -> None:
    assert 100 * largest_deviation(volts) == pytest.approx(percent, abs=0.005)


def test_motor_start_on_a_transformer() -> None:
    # electrical-engineering-portal.com, 1000 kVA 5.75 %: 1,688 kVA start against 17,391 kVA: 9.7 %.
    assert starting_dip(1688, 1000 / 0.0575) == pytest.approx(0.097, abs=5e-4)
    # The same, solved: a purely reactive start as an impedance gives x / (1 + x) of the same ratio.
    net = Network()
    bus, low = net.bus("source", "ABC"), net.bus("motor", "ABC")
    net.three_phase_source("S", bus.nodes, EARTH, 480 / sqrt(3))
    net.line("transformer", bus.nodes, low.nodes, [transformer_z_pu(5.75, float("inf")) * 480**2 / 1e6] * 3)
    start_va = 1688e3
    z = locked_rotor_z(480, start_va / (480 * sqrt(3)), 0.0)
    assert abs(z) == pytest.approx(480**2 / start_va)
    on_three_legs(net, low, 1j * start_va, 480, (0, 0, 1))
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    x = 1688 * 0.0575 / 1000
    assert abs(flow.v[low["A"]]) / (480 / sqrt(3)) == pytest.approx(1 / (1 + x), rel=1e-9)
    assert generator_starting_dip(1688, 1000, 0.0575) == pytest.approx(x / (1 + x))


@pytest.mark.parametrize("leading", [True, False])
def test_open_delta_units(leading: bool) -> None:
    # Closed form of the loads of an open-delta bank (utility distribution handbooks; here solved at no impedance).
    s3, s1 = 30e3, 20e3
    phi3, phi1 = radians(30), radians(10)
    net = Network()
    high, low = net.bus("high", "ABC"), net.bus("low", "ABCN")
    net.three_phase_source("S", high.nodes, EARTH, 480 / sqrt(3))
    a, b, c = high.nodes
    legs = ("A", "B", "C") if leading else ("C", "B", "A")
    pairs = ((a, c), (b, a)) if leading else ((c, a), (b, c))
    rating = Rating(50e3, 1e-9j)
    high_leg_delta(net, "T", pairs, low.pick(legs), low["N"], 480, 240, (rating, rating))
    net.link("bond", low["N"], EARTH)
    on_three_legs(net, low, s3 * complex(cos(phi3), sqrt(1 - cos(phi3) ** 2)), 240, (1, 0, 0))
    for leg in "AC":
        s_half = s1 / 2 * complex(cos(phi1), sqrt(1 - cos(phi1) ** 2))
        net.load(leg, low.pair((leg, "N")), s_half, 120)
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    assert abs(flow.voltage(low, "B", "N") or 0) == pytest.approx(120 * sqrt(3), rel=1e-6)  # the high leg
    units = [abs(Branches.of(flow).core_va(f"T.{k}")) for k in (1, 2)]
    possible = [open_delta_loads(s3, phi3, s1, phi1, sign) for sign in (1, -1)]
    assert units[1] == pytest.approx(s3 / sqrt(3), rel=1e-4)
    assert units[0] == pytest.approx(possible[0 if leading else 1][0], rel=1e-4)


def test_high_leg_and_utility_data() -> None:
    # ECM magazine: high leg of 240/120 V is 207.8 V; utility letters by the definition of the sequence network.
    v_ll, i3, ilg = 480.0, 40e3, 36e3
    z1 = supply_z(v_ll, i3, 1 / 8)
    z0 = utility_z0(v_ll, ilg, z1)
    assert abs(3 * v_ll / sqrt(3) / (2 * z1 + z0)) == pytest.approx(ilg)
    with pytest.raises(ValueError, match="leaves no zero-sequence"):
        utility_z0(v_ll, 2 * i3, z1)


def test_rating_factors() -> None:
    # IEEE C37.13 and UL 489 test circuits: X/R 6.59, 4.90, 3.18, 1.73; IEEE Std 141: peak 2.3 times rms at X/R 6.6.
    printed = {0.15: 6.59, 0.20: 4.90, 0.30: 3.18, 0.50: 1.73}
    for power_factor, x_over_r in printed.items():
        assert x_over_r_of(power_factor) == pytest.approx(x_over_r, abs=5e-3)
        assert multiplying_factor(x_over_r, power_factor) == pytest.approx(1, abs=1e-3)
    assert peak_factor(x_over_r_of(0.15)) == pytest.approx(2.29, abs=0.01)
    assert rms_asymmetry_factor(x_over_r_of(0.15)) == pytest.approx(1.33, abs=0.01)
    # Published multiplying factors at 7 % power factor (X/R 14.25), from memory: 1.11 for 15 %, 1.18 for 20 %.
    assert multiplying_factor(14.25, 0.15) == pytest.approx(1.11, abs=5e-3)
    assert multiplying_factor(14.25, 0.20) == pytest.approx(1.18, abs=5e-3)
    assert duty(9e3, 3.0, "molded-case breaker", 10e3) > 9e3
    assert duty(9e3, 3.0, "power breaker", 10e3) == 9e3
    assert [motor_first_cycle_pu(hp) for hp in (49, 50)] == [0.28, 0.20]
    assert motor_first_cycle_pu(100, 0.167) == pytest.approx(0.2, abs=5e-4)
    assert effective_ohm(0.1, 0.054, 0.85) == pytest.approx(0.1135, abs=1e-4)


def test_legs_on_one_hot_add_up() -> None:
    # Two circuits on the same leg: 10 + 10 = 20 A in the neutral (forums.mikeholt.com/threads/multiwire-circuit.44780).
    net = Network()
    board: Bus = net.bus("board", "AN")
    net.source("S", board.pair("AN"), 120)
    net.link("bond", board["N"], EARTH)
    for name in ("one", "two"):
        net.load(name, board.pair("AN"), 1200, 120, (0, 1, 0))
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    assert abs(Branches.of(flow).source("S")[0]) == pytest.approx(20)
