"""Both shipped example sites as circuits for ngspice (a general circuit simulator): the same voltages under load and
the same fault currents at every bus, within 0.1 %.

Two things are left out of the comparison because one frequency-domain netlist cannot hold them: sources whose negative
sequence differs from their positive one (the generators; compared with closed forms elsewhere), and the fixed fault
currents of converters (they are added to ngspice's result nowhere, and switched off here).
"""

from __future__ import annotations

import os
import shutil
from pathlib import Path

import pytest
from ngspice_netlist import run, solve_loaded, write

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.circuit import Network, Solved, solve_flow, study_faults
from wyeline_linter.circuit.elements import Source
from wyeline_linter.network import NORMAL_STATE, scenario_state
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.study import StateStudy

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"
AGREEMENT = 1e-3
AT_ONCE = 20
"""Faults a run of ngspice works through."""
SITES = {"field-station": "station.wye", "dairy-works": "works.wye"}


@pytest.fixture(scope="module", autouse=True)
def ngspice() -> None:
    if shutil.which("ngspice") is None:
        if os.environ.get("CI"):
            pytest.fail("ngspice is not installed, and CI must compare with it")
        pytest.skip("ngspice is not installed")


@pytest.fixture(scope="module", params=SITES)
def site(request: pytest.FixtureRequest) -> Analysis:
    return Analysis(str(EXAMPLES / request.param / SITES[request.param]), Files())


def states(analysis: Analysis) -> list[StateStudy]:
    """Normal, and the first scenario that the site states (its supply is lost)."""
    studies = analysis.view.studies
    first = scenario_state(analysis.model, analysis.model.scenarios[0][1])
    return [studies.in_state(NORMAL_STATE), studies.in_state(first)]


def test_voltages_under_load(site: Analysis) -> None:
    for study in states(site):
        net = study.built(Case.FLOW).network
        stiff(net)
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


def test_fault_currents(site: Analysis) -> None:
    study = states(site)[0]
    net = study.built(Case.MAX).network
    net.motors, net.fault_current_sources = [], []
    machines = {e.name for e in site.model.equipment.values() if e.kind == "generator"}
    mine = study_faults(net, with_motors=False)
    places = []
    for bus in net.buses:
        root = study.connectivity.root.get(bus.name.split("@")[0].removesuffix(" input"))
        system = study.built(Case.MAX).system_at[bus.name]
        if root in machines or bus.name in study.built(Case.MAX).unknown:
            continue
        kinds = [system.legs] if len(system.legs) == 3 else []
        kinds.append((system.legs[0], "N" if system.has_neutral else system.legs[-1]))
        if system.earth is not None:
            kinds.append((system.legs[0], "G"))
        # One kind a bus, in turn: every run of ngspice costs half a second.
        places.append((bus, kinds[len(places) % len(kinds)]))
    assert len(places) > 30
    theirs = []
    for start in range(0, len(places), AT_ONCE):
        wanted = [bus.pick(tied) for bus, tied in places[start : start + AT_ONCE]]
        theirs += run(write(net, faulted=True), net, wanted)[1]
    for (bus, tied), current in zip(places, theirs, strict=True):
        fault = mine.bus(bus, tied)
        assert fault.current_a is not None, (bus.name, tied, fault.note)
        assert abs(fault.conductor_a[0] - current) <= AGREEMENT * fault.current_a, (bus.name, tied)


def stiff(net: Network) -> None:
    """Take the sequence impedances out of the sources, on both sides of the comparison."""
    for name, source in net.sources.items():
        k = len(source.plus)
        nothing = (0j,) * (k * k)
        net.sources[name] = Source(name, source.plus, source.minus, nothing, nothing, source.first_branch)
