"""Circuits that are had as variants of others equal circuits that are built, whatever case, switch state and edit."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.circuit import Network
from wyeline_linter.loads.leaf_loads import leaf_loads
from wyeline_linter.studies.build import build
from wyeline_linter.studies.built import Built
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.study import StateStudy

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
SITES = ("field-station/station.wye", "dairy-works/works.wye")


def site(name: str, files: Files | None = None) -> Analysis:
    return Analysis(str(EXAMPLES / name), files or Files())


def assert_built_alike(study: StateStudy) -> None:
    if study.zone is None:
        assert study.loads == leaf_loads(study.view, study.state)[0]
    for case in Case:
        mine = study.built(case)
        plain = build(study.model, study.connectivity, study.derivation, study.loads, case, study.view.tables)
        assert same_circuit(mine, plain), (study.name, case)


def same_circuit(a: Built, b: Built) -> bool:
    assert rounded(a).same_wiring(rounded(b))
    assert a.network.loads == b.network.loads
    for part in ("bus", "input_bus", "system_at", "ends", "unknown", "unknown_earth", "outside", "ceiling", "missing"):
        assert getattr(a, part) == getattr(b, part), part
    assert a.assumed == b.assumed
    assert list(a.lines) == list(b.lines)
    assert all(a.lines[key] == b.lines[key] for key in b.lines)
    assert a.transformers == b.transformers
    return True


def rounded(built: Built) -> Network:
    """The network with the impedances of windings in ten digits: scaled ones differ in the last bit."""
    net = built.network.variant()
    net.motors, net.fault_current_sources = built.network.motors, built.network.fault_current_sources
    net.branches.impedance = [(a, b, complex(f"{z:.10g}")) for a, b, z in net.branches.impedance]
    for group in net.lines.values():
        group.z_ohm[:] = [tuple(complex(f"{z:.10g}") for z in line) for line in group.z_ohm]
    return net


@pytest.mark.parametrize("name", SITES)
def test_every_case_in_every_state(name: str) -> None:
    analysis = site(name)
    for study in analysis.view.studies.every():
        assert_built_alike(study)
        assert study.circuits.built < len(Case), study.name


LINES = [
    *(
        ("labs.wye", old, new)
        for old, new in (("225 A, 54 m", "225 A, 60 m"), ("22 kA, resistance", "25 kA, resistance"))
    ),
    ("admin.wye", "62 m  in", "75 m  in"),
    ("admin.wye", "24 m  in", "in"),
    ("admin.wye", "3#3 + N #3 + G #8 Cu THWN-2                 3 m", "3#1 + N #1 + G #6 Cu THWN-2                 3 m"),
    ("admin.wye", "3#3 + N #3 + G #8 Cu THWN-2                 3 m", "3#3 + N #3 Cu THWN-2                 3 m"),
    ("admin.wye", "1.5 kVA   lighting", "2.5 kVA   lighting"),
    ("admin.wye", "2 m  in 3/4 inch RMC", "2 m  in 3/4 inch PVC-40"),
    ("admin.wye", "180 VA count 6", "180 VA count 7"),
    ("admin.wye", "3 kW      heating", "4 kW      motor"),
    ("admin.wye", "feeder SB-1", "// of the admin wing\nfeeder SB-1"),
    ("admin.wye", "100 A 3p ", "90 A 3p "),
]


@settings(max_examples=8, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(st.sampled_from(LINES), min_size=1, max_size=4))
def test_after_any_edits(edits: list[tuple[str, str, str]]) -> None:
    files = Files()
    analysis = site(SITES[0], files)
    for study in analysis.view.studies.stated():
        assert_built_alike(study)
    for name, old, new in edits:
        path = next(path for path in analysis.model.files if path.endswith(name))
        document = files.get(path)
        text = document.text
        analysis.edited(*document.replace_text(text.replace(old, new) if old in text else text.replace(new, old)))
        assert_built_alike(analysis.view.studies.normal)


def test_what_an_edit_builds_anew() -> None:
    files = Files()
    analysis = site(SITES[0], files)
    assert_built_alike(analysis.view.studies.normal)
    path = next(path for path in analysis.model.files if path.endswith("admin.wye"))
    document = files.get(path)

    def built_by(old: str, new: str) -> int:
        assert old in document.text
        analysis.edited(*document.replace_text(document.text.replace(old, new, 1)))
        assert_built_alike(analysis.view.studies.normal)
        return analysis.view.studies.normal.circuits.built

    assert built_by("62 m  in", "75 m  in") == 0
    assert built_by("1.5 kVA   lighting", "2.5 kVA   lighting") == 0
    assert built_by("3#3 + N #3 + G #8 Cu THWN-2    ", "3#1 + N #1 + G #6 Cu THWN-2    ") == 0
    assert built_by("100 A 3p ", "90 A 3p ") == 0
    assert built_by("75 m  in", "in") > 0
