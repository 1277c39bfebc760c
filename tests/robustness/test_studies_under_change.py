"""What physics says of two texts that differ in a known way, asked of the studies: volts under load, drops, currents
and fault currents must differ so, and no other way; and ngspice gives the same for a drawn text.
"""

from __future__ import annotations

import random
import shutil
from collections.abc import Mapping
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from ngspice_netlist import run, solve_loaded, write

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.circuit import Solved, solve_flow, study_faults
from wyeline_linter.studies.case import Case

_LEAN = settings(max_examples=8, deadline=None, suppress_health_check=list(HealthCheck))
SEEDS = st.integers(0, 2**32)
NGSPICE_AGREEMENT = 1e-3
FEET_A_METRE = 1 / 0.3048
LEGS = "ABC"


def site(seed: int, *, scale: int = 1, turn: int = 0, split: bool = False, branch: bool = False, feet: bool = False,
         side_by_side: bool = False) -> list[str]:  # fmt: skip
    """A radial site with a transformer, a panel and a motor in every branch; each statement a text of its own.

    ``scale`` multiplies sources, transformers, loads and the sets of every feeder; ``turn`` moves every single-pole
    circuit on by so many legs; ``split`` puts a board into the middle of feeders; ``branch`` adds unloaded boards;
    ``side_by_side`` writes the service as two feeders instead of two sets.
    """
    rng = random.Random(seed)

    def metres(value: float) -> str:
        return f"{value * FEET_A_METRE:.12f} ft" if feet else f"{value} m"

    def feeder(ends: str, middle: str, device: str, wires: str, length_m: int) -> list[str]:
        wires = f"{scale} sets {wires}" if scale > 1 else wires
        if not (split and middle):
            return [f"feeder {ends}  {device}  {wires}  {metres(length_m)}"]
        source, target = ends.split(" -> ")
        name = f"MID-{target}"
        return [
            f"panel {name} {middle}  bus 400 A",
            f"feeder {source} -> {name}  {device}  {wires}  {metres(length_m / 4)}",
            f"feeder {name} -> {target}  {wires}  {metres(3 * length_m / 4)}",
        ]

    def position(number: int) -> int:
        row, side = divmod(number - 1, 2)
        return (row - row % 3 + (row + turn) % 3) * 2 + side + 1

    service, length_m = "3x400kcmil + N 400kcmil + G 250kcmil Cu", rng.randint(5, 30)
    made = [
        'project "Slipway"\n  basis us-2023',
        f"utility QUAY 480Y/277  fault {30 * scale} kA, fault-min {20 * scale} kA, x/r 7",
        "switchboard MSB 480Y/277  bus 2000 A, rated 65 kA",
    ]
    if side_by_side:
        made += [f"feeder QUAY -> MSB  1000 A 3p  {service}  {metres(length_m)}\n  claim parallel"] * 2
    else:
        made.append(f"feeder QUAY -> MSB  2000 A 3p  {2 * scale} sets {service}  {metres(length_m)}")
    for i in range(rng.randint(1, 3)):
        rows = [(p, rng.randint(2, 15) * 100) for p in rng.sample(range(1, 43), rng.randint(1, 6))]
        circuits = sorted((position(p), va * scale) for p, va in rows)
        lines = "".join(f"\n  {p}  20 A 1p  {va} VA lighting" for p, va in circuits)
        made += [
            f"transformer T-{i} 480 3ph -> 208Y/120  {rng.choice([30, 45, 75]) * scale} kVA, z 4 %, x/r 2",
            f"panel P-{i} 208Y/120  bus 400 A, spaces 42{lines}",
            f"motor M-{i} 460 3ph  {rng.choice([5, 10, 15]) * scale} hp, pf 0.86, eff 91 %",
            *feeder(f"MSB -> T-{i}", "480 3ph", "100 A 3p", "3#3 + G #8 Cu", rng.randint(5, 60)),
            *feeder(f"T-{i} -> P-{i}", "208Y/120", "225 A 3p", "3#4/0 + N #4/0 + G #4 Cu", rng.randint(3, 9)),
            *feeder(f"MSB -> M-{i}", "", "40 A 3p", "3#8 + G #10 Cu", rng.randint(5, 60)),
        ]
        if branch:
            made += [f"panel E-{i} 208Y/120  bus 100 A", f"feeder P-{i} -> E-{i}  100 A 3p  3#1 + N #1 + G #8 Cu  25 m"]
    return made


def analysed(files: Mapping[str, str] | list[str]) -> Analysis:
    texts = files if isinstance(files, Mapping) else {"/m/site.wye": "\n".join(files)}
    return Analysis("/m/site.wye", Files(lambda path: texts[path]), "/m")


def figures(analysis: Analysis, turn: int = 0) -> dict[str, float]:
    """Volts, lost parts and fault currents by equipment, as the studies have them; legs named as before a turn."""
    study = analysis.view.studies.normal
    back = {LEGS[(i + turn) % 3]: LEGS[i] for i in range(3)}
    found: dict[str, float] = {}
    for name in analysis.model.equipment:
        for pair in study.judged.volts(name):
            between = "-".join(sorted(back.get(c, c) for c in pair.between))
            found[f"{name} volts {between}"] = pair.volts
        whole, _, _ = study.path_drop(name)
        if whole is not None:
            found[f"{name} drop"] = whole
        for case, view in (("largest", study.largest), ("smallest", study.smallest)):
            for kind, fault in view.at(name).items():
                if fault.amperes is not None:
                    found[f"{name} {case} {kind} fault"] = fault.amperes
    for feeder in analysis.model.feeders.values():
        amps = study.judged.currents(feeder)
        for conductor, ampere in (amps or {}).items():
            found[f"{feeder.key} amps {back.get(conductor, conductor)}"] = abs(ampere)
    return found


def agree(one: Mapping[str, float], other: Mapping[str, float], rel: float = 1e-6) -> None:
    """The second has every figure of the first."""
    assert len(one) > 20
    assert {k: other[k] for k in one} == pytest.approx(dict(one), rel=rel, abs=1e-6)


@_LEAN
@given(SEEDS, st.sampled_from([2, 3]))
def test_all_sizes_scaled_keep_volts_and_drops_and_scale_currents(seed: int, scale: int) -> None:
    small, large = figures(analysed(site(seed))), figures(analysed(site(seed, scale=scale)))
    agree({k: v * (scale if "amps" in k or "fault" in k else 1) for k, v in small.items()}, large)


@_LEAN
@given(SEEDS, st.sampled_from([1, 2]))
def test_circuits_moved_on_by_a_leg_turn_volts_and_currents_with_them(seed: int, turn: int) -> None:
    # A delta-wye transformer turns in the same sense on both sides, so the whole site turns.
    agree(figures(analysed(site(seed))), figures(analysed(site(seed, turn=turn)), turn))


@_LEAN
@given(SEEDS)
def test_boards_in_the_middle_of_feeders_and_boards_without_load_change_nothing(seed: int) -> None:
    plain = figures(analysed(site(seed)))
    without_feeders = {k: v for k, v in plain.items() if " -> " not in k}
    agree(without_feeders, figures(analysed(site(seed, split=True))))
    agree(plain, figures(analysed(site(seed, branch=True))))


@_LEAN
@given(SEEDS)
def test_two_sets_are_two_feeders_side_by_side(seed: int) -> None:
    sets, feeders = (figures(analysed(site(seed, side_by_side=s))) for s in (False, True))
    agree({k: v for k, v in sets.items() if not k.startswith("QUAY -> MSB")}, feeders)
    for conductor in LEGS:
        assert feeders[f"QUAY -> MSB amps {conductor}"] == pytest.approx(sets[f"QUAY -> MSB amps {conductor}"] / 2)


@_LEAN
@given(SEEDS, SEEDS)
def test_units_and_order_of_statements_and_files_change_nothing(seed: int, order: int) -> None:
    made = site(seed)
    plain = analysed(made)
    agree(figures(plain), figures(analysed(site(seed, feet=True))))
    in_amperes = [s.replace("fault 30 kA, fault-min 20 kA", "fault 30000 A, fault-min 20000 A") for s in made]
    in_va = [s.replace(" kVA,", "000 VA,") for s in in_amperes]
    assert in_va != made
    agree(figures(plain), figures(analysed(in_va)))
    rng = random.Random(order)
    mixed = rng.sample(made, len(made))
    at = rng.randint(0, len(mixed))
    parted = analysed({"/m/site.wye": "\n".join(['include "b.wye"', *mixed[:at]]), "/m/b.wye": "\n".join(mixed[at:])})
    agree(figures(plain), figures(parted))
    told = [sorted((f.rule, f.subject, f.position, f.message) for f in a.all_findings()) for a in (plain, parted)]
    assert told[0] == told[1]


@pytest.mark.skipif(shutil.which("ngspice") is None, reason="ngspice is not installed")
@pytest.mark.parametrize("seed", [1, 8, 21])
def test_ngspice_agrees_on_a_drawn_text(seed: int) -> None:
    """The whole path: text, model, circuit; the engine's volts and fault currents beside those of ngspice."""
    study = analysed(site(seed)).view.studies.normal
    net = study.built(Case.FLOW).network
    solved = solve_flow(net)
    assert isinstance(solved, Solved)
    theirs = solve_loaded(net)
    compared = 0
    for bus in net.buses:
        for i, a in enumerate(bus.nodes):
            for b in bus.nodes[:i]:
                mine = solved.voltage_between(a, b)
                if mine is not None and abs(mine) > 20:
                    assert abs(mine - (theirs[a] - theirs[b])) <= NGSPICE_AGREEMENT * abs(mine), bus.name
                    compared += 1
    assert compared > 20
    net = study.built(Case.MAX).network
    net.motors = []  # a motor feeds a fault behind its own reactance, which no steady netlist holds
    faults = study_faults(net, with_motors=False)
    places = [(bus, "ABC") for bus in net.buses if {"A", "B", "C"} <= set(bus.conductors)]
    _, amps = run(write(net, faulted=True), net, [bus.pick(tied) for bus, tied in places])
    assert len(places) > 4
    for (bus, tied), ampere in zip(places, amps, strict=True):
        mine_a: Any = faults.bus(bus, tied).current_a
        assert mine_a == pytest.approx(abs(ampere), rel=NGSPICE_AGREEMENT), bus.name
