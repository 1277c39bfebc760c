"""Circuits that are alike are asked once while a rule has nothing to say; what asking each would find is found."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding
from wyeline_linter.protection.circuits import circuit_lines, circuit_marks

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
HEAD = (
    'project "Mill"\n  basis BASIS\n  frequency 60 Hz, ambient 30 degC\nutility U 480Y/277  fault 14 kA, x/r 4\n'
    "transformer T 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2\nfeeder U -> T  100 A 3p\nfeeder T -> B  200 A 3p\n"
    "feeder B -> C  100 A 3p\nfeeder U -> A  100 A 3p\n"
)
DEVICES = ("20 A 1p", "30 A 1p", "15 A 2p", "25 A 3p", "100 A 1p frame 125 A", "")
LOADS = ("1 kVA lighting", "2.4 kVA ev factor 0.5", "3 kW", "9 kVA receptacle continuous", "2 hp motor", "spare", "")
WIRES = ("2#12 + G #12 Cu THWN-2", "2#14 Cu", "3#8 + N #12 + G #12 Cu THWN-2", "2#10 + G #14 Al XHHW-2", "")
WAYS = ("in 1/2 inch EMT", "in R-1", "grouped 9 in 1 inch EMT", "")


def drawn(seed: int, basis: str) -> str:
    """A model of boards on unlike systems with circuits that repeat, many of them wrong."""
    r = random.Random(seed)
    kinds = ["  ".join(r.choice(some) for some in (DEVICES, LOADS, WIRES, WAYS)) for _ in range(9)]
    rows = []
    for board, system in (("A", "480Y/277"), ("B", "208Y/120"), ("C", "208Y/120")):
        rows.append(f"panel {board} {system}  bus 225 A, main 100 A")
        for place in range(1, 31):
            key = place - 1 if seed % 3 == 1 and board == "C" and r.random() < 0.05 else place
            rows.append(f'  {key}  {r.choice(kinds)}  "Row {place}"  {r.randint(5, 60)} m')
    return HEAD.replace("BASIS", basis) + "\n".join(rows) + "\nraceway R-1 2 inch EMT\n"


def asked_one_by_one(analysis: Analysis) -> list[Finding]:
    view, checks = analysis.view, analysis._asking.checks
    boards = analysis.model.equipment.values()
    found = [f for e in boards for p in e.circuits for check in checks["circuit"] for f in check(view, e, p)]
    lines = [line for e in boards for line in circuit_lines(view, e)]
    return found + [f for line in lines for check in checks["line"] for f in check(view, line)]


@pytest.mark.parametrize("model", ["dairy-works/works.wye", "field-station/station.wye", *range(6)])
def test_all_that_asking_each_circuit_finds_is_found(model: str | int, tmp_path: Path) -> None:
    if isinstance(model, int):
        root = tmp_path / "a.wye"
        root.write_text(drawn(model, "iec" if model % 3 == 2 else "us-2023"), "utf-8")
    else:
        root = EXAMPLES / model
    analysis = Analysis(str(root), Files())
    expected = asked_one_by_one(analysis)
    rules = {f.rule for f in expected}
    texts = {(f.rule, f.message, f.subject, f.position, f.place) for f in expected}
    told = [f for f in analysis.findings() if f.rule in rules]
    assert not texts - {(f.rule, f.message, f.subject, f.position, f.place) for f in told}


def test_more_circuits_of_a_kind_ask_no_more(tmp_path: Path) -> None:
    """Counted, not timed: what is asked grows with the kinds of circuits, not with their number."""
    ran = []
    for count in (12, 120):
        rows = [f'  {i}  20 A 1p  900 VA lighting  "Row {i}"  2#12 Cu THWN-2  {i} m in EMT' for i in range(count)]
        root = tmp_path / f"{count}.wye"
        root.write_text(HEAD.replace("BASIS", "us-2023") + "\n".join(["panel B 208Y/120  bus 225 A", *rows]), "utf-8")
        analysis = Analysis(str(root), Files())
        marks = circuit_marks(analysis.view, analysis.model.equipment["B"])
        assert (len(marks.by_place), len(marks.different)) == (count, 3)  # a kind a leg
        ran.append(analysis.ran["rule"])
    loud = 120 * 2  # no ground, and the raceway's size: rules that have something to say are asked about each
    assert ran[1] - ran[0] <= loud
