"""Faults solved for where they are felt, beside the same faults solved for in the whole network."""

from __future__ import annotations

import random
from math import sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from transformer_connections import Rating, three_phase

from wyeline_linter.circuit import EARTH, Bus, FaultStudy, Network, study_faults
from wyeline_linter.circuit.factors import Factors
from wyeline_linter.circuit.fault_parts import LEAST_PART, SHUNTS, Loop, Shares, loop_of, shares_of

TIES = (("A", "B", "C"), ("A", "B"), ("C", "N"), ("B", "E"))


def site(seed: int, *, magnetised: bool, second_source: bool, banks: bool, loops: int = 0) -> tuple[Network, list[Bus]]:
    """A tree of four-wire buses with motors and, off most ways, what takes current: transformers without load, a bank
    that carries the third part of an earth fault, and a source that feeds back."""
    chance = random.Random(seed)
    net = Network()
    grid, root = net.bus("grid", "ABC"), net.bus("0", "ABCN")
    net.three_phase_source("grid", grid.nodes, EARTH, 4160 / sqrt(3), 0.05 + 0.5j, 0.05 + 0.6j, 0.9j)
    rating = Rating(500e3, 0.01 + 0.05j)
    three_phase(net, "T", grid.nodes, None, root.pick("ABC"), root["N"], 4160, 480, "Dyn1", rating)
    net.link("bond", root["N"], EARTH)
    buses = [root]
    for k in range(1, 24):
        above, bus = chance.choice(buses[-9:]), net.bus(str(k), "ABCN")
        ohm = (0.004 + 0.003j) * chance.uniform(0.3, 4)
        net.line(f"run {k}", above.nodes, bus.nodes, [ohm] * 4)
        if k % 4 == 0:
            net.motor(f"motor {k}", bus.pick("ABC"), (0.2 + 2j) * chance.uniform(0.5, 3))
        if magnetised and k % 3 == 0:
            net.admittance(bus.pair("AB"), chance.uniform(0.0005, 0.02) * (0.1 - 1j))
        buses.append(bus)
    if banks:
        for at in (7, 16):
            far = net.bus(f"bank {at}", "ABC")
            three_phase(net, f"B{at}", buses[at].pick("ABC"), buses[at]["N"], far.nodes, None, 480, 240, "YNd1", rating)
    if second_source:
        net.three_phase_source("own", buses[19].pick("ABC"), buses[19]["N"], 480 / sqrt(3), 0.01 + 0.1j, 0.1j, 0.05j)
    for k in range(loops):
        net.line(f"loop {k}", buses[2 + k].nodes, buses[20 - 3 * k].nodes, [0.02 + 0.01j] * 4)
    return net, buses


Part = tuple[Loop | None, Shares]


def parts(net: Network, buses: list[Bus], *, with_motors: bool) -> tuple[FaultStudy, list[Part]]:
    study = study_faults(net, with_motors=with_motors)
    return study, [(loop_of(study, b, t), shares_of(study, b, study.bus(b, t), 3)) for b in buses for t in TIES]


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 10_000), st.booleans(), st.booleans(), st.booleans(), st.sampled_from([0, 0, 2]), st.booleans())
def test_a_fault_solved_where_it_is_felt_is_that_of_the_whole_network(
    seed: int, magnetised: bool, second_source: bool, banks: bool, loops: int, with_motors: bool
) -> None:
    net, buses = site(seed, magnetised=magnetised, second_source=second_source, banks=banks, loops=loops)
    study, felt = parts(net, buses, with_motors=with_motors)
    if loops == 0:
        assert study.factors.along is not None
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(Factors, "along", None)
        _, solved = parts(net, buses, with_motors=with_motors)
    for (loop, shares), (whole_loop, whole_shares) in zip(felt, solved, strict=True):
        assert loop is not None and whole_loop is not None
        assert loop.ohm == pytest.approx(whole_loop.ohm, rel=1e-9)
        near = 1e-9 * abs(whole_loop.mean_ohm)
        # What stands at the edge of being named may be on either side of it.
        for name in loop.parts.keys() | whole_loop.parts.keys():
            edge = 1.001 * LEAST_PART * abs(whole_loop.mean_ohm)
            one, other = loop.parts.get(name, 0j), whole_loop.parts.get(name, 0j)
            assert abs(one - other) <= near or max(abs(one), abs(other)) < edge, name
        assert (SHUNTS in loop.parts) == (SHUNTS in whole_loop.parts)
        assert list(loop.parts) == [name for name in whole_loop.parts if name in loop.parts]
        assert dict(shares.largest) == pytest.approx(dict(whole_shares.largest), rel=1e-9)
        assert shares.sources == pytest.approx(whole_shares.sources, rel=1e-9, abs=1e-9)
        assert shares.others == whole_shares.others
        assert shares.others_a == pytest.approx(whole_shares.others_a, rel=1e-9, abs=1e-9)


def test_what_carries_current_beside_the_way_is_named() -> None:
    net, buses = site(3, magnetised=True, second_source=True, banks=True)
    study, _ = parts(net, [], with_motors=False)
    loop = loop_of(study, buses[5], ("A", "E"))
    assert loop is not None
    assert "own" in loop.parts and any(name.startswith("B7") for name in loop.parts)
