"""Centre-tapped transformers: Kersting's example and the closed forms of the split impedance.

Source: W. H. Kersting, Distribution System Modeling and Analysis (inputs and the 117.88 V figure from memory; the rest
recomputed by hand); leg-to-neutral 1.5 R + j1.2 X is the handbook rule for interlaced secondaries.
"""

from __future__ import annotations

import cmath
from math import acos, degrees, sin

import pytest
from network_readings import Branches
from transformer_connections import Rating, centre_tapped

from wyeline_linter.circuit import EARTH, Bus, Network, Solved, solve_flow, study_faults

V_PRIMARY, V_HALF = 7200.0, 120.0


def tapped(s_va: float, z_pu: complex) -> tuple[Network, Bus]:
    net = Network()
    high, low = net.bus("high", "A"), net.bus("low", ("1", "N", "2"))
    net.source("7200 V", (high["A"], EARTH), V_PRIMARY)
    legs = low.pick("12")
    centre_tapped(net, "T", (high["A"], EARTH), legs, low["N"], V_PRIMARY, V_HALF, Rating(s_va, z_pu))
    net.link("bond", low["N"], EARTH)
    return net, low


def lagging(kva: float, pf: float) -> complex:
    return kva * 1e3 * complex(pf, sin(acos(pf)))


@pytest.mark.parametrize(
    ("kva", "z_pu", "loads", "volts", "amperes"),
    [
        (
            50,
            0.011 + 0.018j,
            (lagging(10, 0.95), lagging(15, 0.90), lagging(25, 0.85)),
            (117.88, 117.71, 235.60),
            (189.6, 233.2, 44.8),
        ),
        (
            25,
            0.012 + 0.017j,
            (lagging(3, 0.95), lagging(5, 0.85), lagging(8, 0.90)),
            (118.65, 118.51, 237.16),
            (58.9, 75.8, 18.6),
        ),
    ],
    ids=["50 kVA", "25 kVA"],
)
def test_loaded_three_wire(
    kva: float, z_pu: complex, loads: tuple[complex, ...], volts: tuple[float, ...], amperes: tuple[float, ...]
) -> None:
    net, low = tapped(kva * 1e3, z_pu)
    one, neutral, two = low.nodes
    for name, pair, s, v in (
        ("1-N", (one, neutral), loads[0], 120),
        ("N-2", (neutral, two), loads[1], 120),
        ("1-2", (one, two), loads[2], 240),
    ):
        net.load(name, pair, s, v)
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    found = [flow.voltage(low, a, b) for a, b in ("1N", "N2", "12")]
    assert [abs(v) for v in found if v] == pytest.approx(volts, abs=0.006)
    primary, (half_1, half_2) = Branches.of(flow).core("T")
    assert [abs(half_1), abs(half_2), abs(half_1 - half_2)] == pytest.approx(amperes, abs=0.06)
    if kva == 50:
        assert degrees(cmath.phase(found[0] or 0)) == pytest.approx(-0.64, abs=0.005)
        assert abs(primary) == pytest.approx(7.05, abs=0.005)


def test_faults_show_the_split_impedance() -> None:
    z_pu = 0.012 + 0.017j
    net, low = tapped(25e3, z_pu)
    faults = study_faults(net)
    assert faults.bus(low, "12").loop_ohm == pytest.approx(z_pu * 240**2 / 25e3, rel=1e-6)
    split = complex(1.5 * z_pu.real, 1.2 * z_pu.imag) * V_HALF**2 / 25e3
    assert faults.bus(low, "1N").loop_ohm == pytest.approx(split, rel=1e-6)
    assert faults.bus(low, "2N").loop_ohm == pytest.approx(split, rel=1e-6)
