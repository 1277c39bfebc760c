"""Both shipped example sites as circuits for ngspice (a general circuit simulator), as normal and in every scenario
that they state: the same voltages under load, and the same fault currents of every kind at every bus, with what motors
and inverters add, within 0.1 %.

ngspice gets motors as electromotive forces behind their impedance and machines with the impedances of all three
sequences; nothing of the engine's superposition is used.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from ngspice_netlist import NEEDS_NGSPICE, run, solve_loaded, write

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.circuit import Bus, Solved, solve_flow, study_faults
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.study import StateStudy

pytestmark = NEEDS_NGSPICE

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"
AGREEMENT = 1e-3
LEAKAGE_A = 0.1
"""What an earth fault carries at the most where nothing earths a live conductor."""
SITES = {"field-station": "station.wye", "dairy-works": "works.wye"}


@pytest.fixture(scope="module", params=SITES)
def site(request: pytest.FixtureRequest) -> Analysis:
    return Analysis(str(EXAMPLES / request.param / SITES[request.param]), Files())


def test_voltages_under_load(site: Analysis) -> None:
    for study in site.view.studies.stated():
        net = study.built(Case.FLOW).network
        solved = solve_flow(net)
        assert isinstance(solved, Solved)
        theirs = solve_loaded(net)
        compared = 0
        for bus in net.buses:
            nominal = max(abs(solved.v[node]) for node in bus.nodes) or 1.0
            for i, a in enumerate(bus.nodes):
                for b in bus.nodes[:i]:
                    mine = solved.voltage_between(a, b)
                    if mine is not None and abs(mine) > 0.05 * nominal:
                        assert abs(mine - (theirs[a] - theirs[b])) <= AGREEMENT * abs(mine), (study.name, bus.name)
                        compared += 1
        assert compared > 30, study.name


@pytest.mark.parametrize("case", [Case.MAX, Case.MIN])
def test_fault_currents(site: Analysis, case: Case) -> None:
    added = 0
    for study in site.view.studies.stated():
        net = study.built(case).network
        added += len(net.motors) + len(net.fault_current_sources)
        mine = study_faults(net)
        faults = []
        for k, bus in enumerate(net.buses):
            found = kinds(study, case, bus, k)
            # Every fault costs ngspice a solution of the whole site: the smallest faults are compared one kind a bus.
            faults += [(bus, tied) for n, tied in enumerate(found) if case is Case.MAX or n == k % len(found)]
        assert len(faults) > 5, study.name
        before, _ = run(write(net, faulted=True), net)
        before[0] = 0j
        deck = write(net, faulted=True, before=before)
        _, theirs = run(deck, net, [bus.pick(tied) for bus, tied in faults])
        for (bus, tied), current in zip(faults, theirs, strict=True):
            fault = mine.bus(bus, tied)
            if fault.current_a is None:
                assert "no conducting path" in fault.note, (study.name, bus.name, tied)
                assert abs(current) < LEAKAGE_A
            else:
                assert abs(fault.conductor_a[0] - current) <= AGREEMENT * fault.current_a, (study.name, bus.name, tied)
    assert (added > 5) == (case is Case.MAX)


def kinds(study: StateStudy, case: Case, bus: Bus, turn: int) -> list[tuple[str, ...]]:
    """The faults of a bus, one of each kind, on other legs from bus to bus."""
    built = study.built(case)
    if bus.name in built.unknown:
        return []
    legs = built.system_at[bus.name].legs
    leg, next_leg = legs[turn % len(legs)], legs[(turn + 1) % len(legs)]
    found: list[tuple[str, ...]] = [legs] if len(legs) == 3 else []
    if len(legs) > 1:
        found.append((leg, next_leg))
    if bus.name not in built.unknown_earth:
        found += [(leg, other) for other in ("G", "N") if other in bus.conductors]
    return found
