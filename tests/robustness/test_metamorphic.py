"""What physics says of two models that differ in a known way: the figures must differ so, and no other way."""

from __future__ import annotations

import random
from collections.abc import Callable
from math import sqrt
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from transformer_connections import Rating, three_phase

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.circuit import EARTH, Network, NotSolved, solve_flow, study_faults
from wyeline_linter.figures import model_figures

_LEAN = settings(max_examples=12, deadline=None, suppress_health_check=list(HealthCheck))
SEEDS = st.integers(0, 2**32)

# the engine


def drawn_network(
    seed: int, *, scale: float = 1.0, turn: int = 0, split: bool = False, branch: bool = False, double: bool = False
) -> tuple[Network, list[Any]]:
    """A tree of buses below a source and a delta-wye transformer; the options are the known differences.

    ``scale`` divides impedances and multiplies loads; ``turn`` moves every single-phase load on by so many legs;
    ``split`` makes two halves of every line; ``branch`` adds unloaded lines; ``double`` puts two sets for one line of
    half the impedance.
    """
    rng = random.Random(seed)
    net = Network()
    legs = "ABC"
    service = net.bus("S", "ABC")
    net.three_phase_source("grid", service.pick("ABC"), EARTH, 480 / sqrt(3), (0.002 + 0.012j) / scale)
    first = net.bus("0", "ABCN")
    rating = Rating(112.5e3 * scale, 0.018 + 0.04j)
    three_phase(net, "T", service.pick("ABC"), None, first.pick("ABC"), first["N"], 480, 208, "Dyn1", rating)
    net.link("bond", first["N"], EARTH)
    buses = [first]
    for k in range(rng.randint(2, 8)):
        above, below = rng.choice(buses), net.bus(f"B{k}", "ABCN")
        z = complex(rng.uniform(0.002, 0.03), rng.uniform(0.001, 0.02)) / scale
        if split:
            middle = net.bus(f"M{k}", "ABCN")
            net.line(f"a{k}", above.nodes, middle.nodes, [z * 0.3] * 4)
            net.line(f"b{k}", middle.nodes, below.nodes, [z * 0.7] * 4)
        elif double:
            net.line(f"a{k}", above.nodes, below.nodes, [2 * z] * 4)
            net.line(f"b{k}", above.nodes, below.nodes, [2 * z] * 4)
        else:
            net.line(f"a{k}", above.nodes, below.nodes, [z] * 4)
        if branch:
            net.line(f"spare {k}", above.nodes, net.bus(f"U{k}", "ABCN").nodes, [z] * 4)
        leg = legs[(rng.randrange(3) + turn) % 3]
        s = complex(rng.uniform(200, 4000), rng.uniform(0, 2000)) * scale
        net.load(f"L{k}", below.pair((leg, "N")), s, 120)
        buses.append(below)
    return net, buses


def volts(net: Network, buses: list[Any], turn: int = 0) -> list[float]:
    flow = solve_flow(net)
    assert not isinstance(flow, NotSolved)
    assert flow.selftest.passed
    legs = "ABC"
    return [abs(flow.voltage(bus, legs[(i + turn) % 3], "N")) for bus in buses for i in range(3)]


def amps(net: Network, buses: list[Any], kind: str = "ABC") -> list[float]:
    study = study_faults(net)
    return [abs(study.bus(bus, kind).current_a) for bus in buses]


@_LEAN
@given(SEEDS, st.sampled_from([0.5, 2.0, 10.0]))
def test_loads_and_conductors_scaled_together_keep_voltages_and_scale_faults(seed: int, scale: float) -> None:
    small, large = drawn_network(seed), drawn_network(seed, scale=scale)
    assert volts(*large) == pytest.approx(volts(*small), rel=1e-7)
    for kind in ("ABC", "AN", "AB"):
        assert amps(*large, kind) == pytest.approx([scale * i for i in amps(*small, kind)], rel=1e-6)


@_LEAN
@given(SEEDS, st.sampled_from([1, 2]))
def test_legs_relabelled_turn_the_voltages_with_them(seed: int, turn: int) -> None:
    assert volts(*drawn_network(seed, turn=turn), turn) == pytest.approx(volts(*drawn_network(seed)), rel=1e-7)
    faults = drawn_network(seed)
    on_a, on_b, on_c = (amps(*faults, kind) for kind in ("AN", "BN", "CN"))
    assert on_b == pytest.approx(on_a, rel=1e-6)
    assert on_c == pytest.approx(on_a, rel=1e-6)


@_LEAN
@given(SEEDS)
def test_a_line_in_two_halves_an_unloaded_branch_and_equal_sets_change_nothing(seed: int) -> None:
    plain = drawn_network(seed)
    for same in ({"split": True}, {"branch": True}, {"double": True}):
        other = drawn_network(seed, **same)
        assert volts(*other) == pytest.approx(volts(*plain), rel=1e-7), same
        for kind in ("ABC", "AN"):
            assert amps(*other, kind) == pytest.approx(amps(*plain, kind), rel=1e-6), same


# the whole way, from the text


def drawn_site(seed: int) -> list[str]:
    """Statements of a sound radial site; each a block of its own, in an order without meaning."""
    rng = random.Random(seed)
    made = ["utility QUAY 480Y/277  fault 30 kA, x/r 7", "switchboard MSB 480Y/277  bus 2000 A, rated 65 kA"]
    made.append("feeder QUAY -> MSB  2000 A 3p  6 sets 3x400kcmil + N 400kcmil + G 250kcmil Cu  12 m")
    for i in range(rng.randint(1, 4)):
        kva = rng.choice([30, 45, 75])
        rows = "".join(
            f"\n  {p}  20 A 1p  {rng.randint(2, 15) * 100} VA {rng.choice(['receptacle', 'lighting'])}"
            for p in rng.sample(range(1, 43), rng.randint(1, 6))
        )
        made += [
            f"transformer T-{i} 480 3ph -> 208Y/120  {kva} kVA, z 4 %, x/r 2",
            f"feeder MSB -> T-{i}  100 A 3p  3#3 + G #8 Cu  {rng.randint(5, 60)} m",
            f"panel P-{i} 208Y/120  bus 225 A, spaces 42{rows}",
            f"feeder T-{i} -> P-{i}  3#4/0 + N #4/0 + G #4 Cu  {rng.randint(3, 9)} m",
            f"motor M-{i} 460 3ph  {rng.choice([5, 10, 15])} hp, pf 0.86, eff 91 %",
            f"feeder MSB -> M-{i}  40 A 3p  3#8 + G #10 Cu  {rng.randint(5, 60)} m",
        ]
    return made


def figures(files: dict[str, str]) -> tuple[Any, list[Any]]:
    """Figures of every name, and findings without their places."""
    analysis = Analysis("/m/site.wye", Files(lambda path: files[path]), "/m")
    found = model_figures(analysis.view)
    told = sorted((f.rule, f.subject, f.position, f.severity) for f in analysis.findings())
    return found["equipment"], told


def agree(one: Any, other: Any) -> None:
    """Equal structure, numbers to nine digits."""
    if isinstance(one, dict):
        assert one.keys() == other.keys()
        for key in one:
            agree(one[key], other[key])
    elif isinstance(one, list):
        assert len(one) == len(other)
        for a, b in zip(one, other, strict=True):
            agree(a, b)
    elif isinstance(one, float):
        assert other == pytest.approx(one, rel=1e-9, abs=1e-9)
    else:
        assert one == other


def _in_si(text: str) -> str:
    """The same quantities in other units."""
    words = {" 2000 A": " 2 kA", " 480Y/277  ": " 480Y/277  ", "fault 30 kA": "fault 30000 A"}
    for old, new in words.items():
        text = text.replace(old, new)
    return text.replace(" kVA,", "000 VA,")


def _shuffled(seed: int) -> Callable[[list[str]], dict[str, str]]:
    def cut(made: list[str]) -> dict[str, str]:
        rng = random.Random(seed)
        order = rng.sample(made, len(made))
        at = rng.randint(0, len(order))
        return {"/m/site.wye": "\n".join(['include "b.wye"', *order[:at]]), "/m/b.wye": "\n".join(order[at:])}

    return cut


@_LEAN
@given(SEEDS, SEEDS)
def test_order_of_statements_and_files_says_nothing(seed: int, order: int) -> None:
    made = drawn_site(seed)
    one, told = figures({"/m/site.wye": "\n".join(made)})
    other, told_too = figures(_shuffled(order)(made))
    agree(one, other)
    assert told == told_too


@_LEAN
@given(SEEDS)
def test_units_say_nothing(seed: int) -> None:
    made = "\n".join(drawn_site(seed))
    assert _in_si(made) != made
    one, told = figures({"/m/site.wye": made})
    other, told_too = figures({"/m/site.wye": _in_si(made)})
    agree(one, other)
    assert told == told_too


@_LEAN
@given(SEEDS)
def test_a_name_says_nothing_and_an_unloaded_branch_adds_nothing(seed: int) -> None:
    made = drawn_site(seed)
    one, _ = figures({"/m/site.wye": "\n".join(made)})
    renamed, _ = figures({"/m/site.wye": "\n".join(made).replace("MSB", "Hauptverteilung")})
    for name, entry in one.items():
        agree(entry.get("load"), renamed[name.replace("MSB", "Hauptverteilung")].get("load"))
    branch = ["panel EMPTY 480Y/277  bus 100 A", "feeder MSB -> EMPTY  100 A 3p  3#1 + N #1 + G #8 Cu  40 m"]
    more, _ = figures({"/m/site.wye": "\n".join([*made, *branch])})
    for name, entry in one.items():
        agree(entry, more[name])


@_LEAN
@given(SEEDS)
def test_loads_add_up_by_phasors_from_the_last_circuit_to_the_source(seed: int) -> None:
    """Conservation: what leaves a board is what its circuits and feeders take (nominal voltage, no losses)."""
    one, _ = figures({"/m/site.wye": "\n".join(drawn_site(seed))})
    watts = {name: entry["load"]["connected"]["w"] for name, entry in one.items() if entry.get("load")}
    below = sum(w for name, w in watts.items() if name.startswith(("P-", "M-")))
    assert watts["MSB"] == pytest.approx(below, rel=1e-9)
    assert watts["QUAY"] == pytest.approx(below, rel=1e-9)
