"""The forest as the loads see it: by independent dense solves, whatever carries loads and whatever lies between."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from test_faults_at_every_bus import campus

from wyeline_linter.circuit import EARTH, NotSolved, Solved, blocks, loadflow, solve_flow
from wyeline_linter.circuit.assemble import assemble
from wyeline_linter.circuit.factors import Factors
from wyeline_linter.circuit.folded import Folded

PAIRS = ("AN", "BN", "CN", "AB", "BC", "CA")
LOADS = st.lists(
    st.tuples(st.integers(0, 60), st.sampled_from(PAIRS), st.floats(0.1, 4), st.floats(0, 2), st.booleans()),
    min_size=1,
    max_size=12,
)


@settings(max_examples=60, deadline=None)
@given(st.lists(st.integers(0, 40), min_size=2, max_size=60), LOADS, st.booleans())
def test_voltages_at_loads_are_those_of_a_dense_solve(
    parents: list[int], loads: list[tuple[int, str, float, float, bool]], switched: bool
) -> None:
    net, buses = campus(parents, [], switched=switched)
    for k, (bus, pair, kilowatts, kilovars, to_earth) in enumerate(loads):
        at = buses[bus % len(buses)]
        nodes = (at[pair[0]], EARTH) if to_earth else at.pair(pair)
        net.load(f"load {k}", nodes, 1e3 * complex(kilowatts, kilovars), 120)
    assembled = assemble(net, "flow")
    forest = Factors(assembled).forest
    assert forest is not None
    plus, minus = assembled.layout.unknown[np.array(net.loads.pairs)].T
    folded = Folded(forest, plus, minus)
    assert folded.is_of(forest, plus, minus)
    current = np.cos(np.arange(len(loads))) + 1j * np.sin(3.0 * np.arange(len(loads)))
    rhs = np.zeros(assembled.size, dtype=np.complex128)
    for a, b, amps in zip(plus, minus, current, strict=True):
        rhs[a] -= amps
        if b >= 0:
            rhs[b] += amps
    x = np.append(np.linalg.solve(assembled.sparse().toarray(), rhs), 0)
    assert np.allclose(folded.across(current), x[plus] - x[minus], rtol=1e-8, atol=1e-9)
    assert np.array_equal(folded.across(current), Folded(forest, plus, minus).across(current)), "it keeps nothing"


@settings(max_examples=40, deadline=None)
@given(
    st.lists(st.integers(0, 40), min_size=2, max_size=30),
    st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), max_size=3),
    LOADS,
    st.sampled_from([0, 240]),
    st.floats(0.2, 30),
)
@example([0, 0], [], [(0, "AN", 1.0, 0.0, False)] * 11 + [(20, "AN", 3.0, 0.0, False)], 0, 20.36)  # it shrinks slowly
def test_a_settled_flow_satisfies_the_laws_of_its_loads(
    parents: list[int],
    loops: list[tuple[int, int]],
    loads: list[tuple[int, str, float, float, bool]],
    block_limit: int,
    heavy: float,
) -> None:
    """From light to near collapse, with loops in blocks and outside of them: the dense equations hold with the currents
    that the loads draw at the voltages found, to ten digits of the nominal voltage."""
    net, buses = campus(parents, loops, switched=False)
    for k, (bus, pair, kilowatts, kilovars, _) in enumerate(loads):
        net.load(f"load {k}", buses[bus % len(buses)].pair(pair), heavy * 1e3 * complex(kilowatts, kilovars), 120)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(blocks, "BLOCK_LIMIT", block_limit)
        flow = solve_flow(net)
    if isinstance(flow, NotSolved):
        return
    assembled = assemble(net, "flow")
    law = loadflow.LoadLaw.of(net)
    current = law.current(law.across(flow.v))
    rhs = assembled.excitation()
    plus, minus = assembled.layout.unknown[np.array(net.loads.pairs)].T
    for a, b, amps in zip(plus, minus, current, strict=True):
        rhs[a] -= amps
        rhs[b] += amps if b >= 0 else 0
    x = np.append(np.linalg.solve(assembled.sparse().toarray(), rhs), 0)
    found, wanted = law.across(flow.v), x[plus] - x[minus]
    slack = loadflow.TOLERANCE_PU if flow.method == "fixed point" else 1e-8  # Newton near collapse: it is steep there
    assert np.abs(found - wanted).max() <= 120 * slack + 1e-9 * np.abs(wanted).max() * (flow.method == "Newton")


def test_rounds_that_ask_for_loads_alone_end_where_whole_rounds_end(monkeypatch: pytest.MonkeyPatch) -> None:
    net, buses = campus([k // 3 for k in range(60)], [], switched=True)
    for k, bus in enumerate(buses[5::3]):
        net.load(f"load {k}", bus.pair(PAIRS[k % 6]), 700 + 300j, 120)
    quick = solve_flow(net)
    monkeypatch.setattr(loadflow.FlowFactors, "folded", lambda *_: None)
    whole = solve_flow(net)
    assert isinstance(quick, Solved)
    assert isinstance(whole, Solved)
    assert quick.method == whole.method == "fixed point"
    assert np.abs(quick.v - whole.v).max() < 120 * loadflow.TOLERANCE_PU


def test_a_resistance_as_good_as_none_leaves_rounding_and_an_answer() -> None:
    """A tenth of a microohm in a loop: rounding moves the voltages by some 1e-10 of nominal from round to round, for
    ever. Beside it, the same network with both ends as one."""
    volts = []
    for resistance in (1e-7, None):
        net, buses = campus([0, 0, 1, 2], [], switched=False)
        for leg in "ABC":
            if resistance is None:
                net.link(f"tie {leg}", buses[3][leg], buses[4][leg])
            else:
                net.impedance(f"tie {leg}", (buses[3][leg], buses[4][leg]), resistance)
            net.load(f"load {leg}", buses[4].pair(f"{leg}N"), 3e3, 120)
        flow = solve_flow(net)
        assert isinstance(flow, Solved)
        assert flow.selftest.passed
        volts.append(abs(flow.load_voltage))
    assert np.allclose(volts[0], volts[1], rtol=1e-6)
