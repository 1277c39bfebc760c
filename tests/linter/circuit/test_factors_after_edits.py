"""Factors after edits: those of a fresh factorisation to the last bit, and only the ways to the source worked out."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from test_faults_at_every_bus import campus

from wyeline_linter.circuit import Network, forest
from wyeline_linter.circuit.assemble import Assembled, assemble
from wyeline_linter.circuit.blocks import blocks_of
from wyeline_linter.circuit.factors import Factors, KeptFactors


def with_run(net: Network, name: str, ohm: complex) -> Network:
    """The network with another impedance of a line."""
    made = net.variant()
    made.motors = net.motors
    made.set_line(name, [ohm] * 4)
    return made


def assert_the_same(one: Factors, other: Factors) -> None:
    """Bit by bit; a not-a-number would compare as different."""
    assert one.forest is not None
    assert other.forest is not None
    for mine, theirs in zip(one.forest.factors, other.forest.factors, strict=True):
        for a, b in zip(mine, theirs, strict=True):
            assert np.array_equal(a, b)
    at = np.arange(one.forest._size)[:, None]
    assert np.array_equal(one.forest.diagonal_blocks(at), other.forest.diagonal_blocks(at))


def kept_from(net: Network) -> KeptFactors:
    """Kept factors of a network: those of faults are kept from the second time on."""
    kept = KeptFactors()
    for _ in range(2):
        kept.of("fault", assemble(net, "fault"))
    kept.eliminated = 0
    return kept


def way_of(assembled: Assembled, name: str) -> set[int]:
    """The blocks from a line to the root."""
    blocks = blocks_of(assembled.network, assembled.layout)
    k, position = assembled.network.line_at[name]
    found = set()
    for ends in assembled.layout.line_nodes[k]:
        unknown = assembled.layout.unknown[ends[position]]
        block = int(blocks.block[unknown[unknown >= 0][0]])
        while block >= 0:
            found.add(block)
            block = int(blocks.parent[block])
    return found


@settings(max_examples=40, deadline=None)
@given(
    st.lists(st.integers(0, 40), min_size=14, max_size=60),
    st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), max_size=2),
    st.lists(st.tuples(st.integers(0, 1000), st.floats(0.001, 3.0), st.booleans()), min_size=1, max_size=6),
    st.sampled_from([1, 2, forest.WHOLE_SHARE]),
)
def test_any_run_of_edits_gives_the_factors_of_a_fresh_network(
    parents: list[int], loops: list[tuple[int, int]], edits: list[tuple[int, float, bool]], share: int
) -> None:
    net, _ = campus(parents, loops, switched=False)
    kept = KeptFactors()
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(forest, "WHOLE_SHARE", share)
        for which, ohm, both in edits:
            net = with_run(net, f"run {which % len(parents) + 1}", complex(ohm, ohm / 3))
            if both:
                kept.of("sources alone", assemble(net, "fault", with_motors=False))
            assembled = assemble(net, "fault")
            factors = kept.of("fault", assembled)
            assert_the_same(factors, Factors(assemble(net, "fault")))
    right = np.cos(np.arange(assembled.size)) + 0j
    many = np.stack([right * k for k in range(1, 8)], axis=1)
    plain = np.linalg.solve(assembled.sparse().toarray(), right)
    for k, found in enumerate(factors.solve(many).T, start=1):
        assert np.allclose(found, k * plain, rtol=1e-7, atol=1e-7)
    assert np.allclose(factors.solve(right), plain, rtol=1e-7, atol=1e-7)
    assert np.allclose(factors.solve(many[:, :3])[:, 2], 3 * plain, rtol=1e-7, atol=1e-7)


def test_only_the_way_to_the_source_is_eliminated_anew() -> None:
    net, _ = campus([k // 3 for k in range(120)], [], switched=False)
    kept = kept_from(net)
    assert len(blocks_of(net, assemble(net, "fault").layout).size) > 100
    for name in ("run 118", "run 1", "run 50"):
        before, net = kept.eliminated, with_run(net, name, 0.4 + 0.3j)
        assembled = assemble(net, "fault")
        kept.of("fault", assembled)
        assert kept.eliminated - before == len(way_of(assembled, name)) <= 8
        assert not kept.reused
    before = kept.eliminated
    kept.of("fault", assemble(net, "fault"))
    assert kept.reused
    assert kept.eliminated == before, "the same matrix: nothing at all"


def test_factors_of_faults_are_kept_from_the_second_time_on() -> None:
    """A session that changes loads only solves its faults once, and holds factors of its load flow alone."""
    net, _ = campus([0, 0, 1, 2, 3], [], switched=False)
    kept = KeptFactors()
    flow, first = kept.of("flow", assemble(net, "flow")), kept.of("fault", assemble(net, "fault"))
    second = kept.of("fault", assemble(net, "fault"))
    assert kept.of("flow", assemble(net, "flow")) is flow
    assert second is not first
    assert kept.of("fault", assemble(net, "fault")) is second


def test_a_meshed_network_is_factorised_whole(monkeypatch: pytest.MonkeyPatch) -> None:
    """What closes larger loops hangs on every block."""
    from wyeline_linter.circuit import blocks

    monkeypatch.setattr(blocks, "BLOCK_LIMIT", 0)
    net, _ = campus([k // 2 for k in range(60)], [(20, 50)], switched=False)
    kept = kept_from(net)
    net = with_run(net, "run 33", 0.4 + 0.3j)
    found = kept.of("fault", assemble(net, "fault"))
    assert kept.eliminated == len(blocks_of(net, assemble(net, "fault").layout).size)
    assert_the_same(found, Factors(assemble(net, "fault")))


def test_general_factors_of_faults_are_not_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    """They are large: a network that is too meshed for elimination is solved by new ones."""
    monkeypatch.setattr(forest, "LOOP_LIMIT", -1)
    net, _ = campus([0, 0, 1, 2, 3], [], switched=False)
    kept = kept_from(net)
    first = kept.of("fault", assemble(net, "fault"))
    assert first.forest is None
    assert kept.of("fault", assemble(net, "fault")) is not first
    assert kept.eliminated == 0
