"""Load flow and faults of generated sites, beside what a general sparse solver needs for the same matrix.

The floor of a load flow is one factorisation by ``scipy.sparse.linalg.splu`` and a solve an iteration; that of the
faults is a factorisation and a solve for every conductor of every bus (a part of these is run). Making the matrix,
checking the answer and reading it out are in our figures, and not in the floor. All is processor time, the median of
a few repeats, with nothing kept from one to the next.

``python tests/benchmarks/solving.py [PIECES ...]`` prints the table alone.
"""

from __future__ import annotations

import statistics
import sys
import time
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from generate import Site

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.studies.build import build
from wyeline_linter.studies.case import Case

if TYPE_CHECKING:
    from wyeline_linter.circuit import Network
    from wyeline_linter.circuit.assemble import Assembled
    from wyeline_linter.studies.study import StateStudy

REPEATS = 3
CHUNK = 128
"""Right-hand sides that the floor solves at a time."""


def rows(sizes: list[int]) -> list[str]:
    """A Markdown table: a line for each question and size in pieces."""
    lines = [
        "| pieces | buses | unknowns | what | ms | floor, ms | times the floor |",
        "| --- | --- | --- | --- | --- | --- | --- |",
    ]
    for size in sizes:
        analysis, document = _opened(size)
        study = analysis.view.studies.normal
        assert study.loads
        flow, fault = study.built(Case.FLOW).network, study.built(Case.MAX).network
        unknowns = _assembled(fault, "fault").size
        floors = {"flow": _flow_floor(flow), "faults": _fault_floor(fault)}
        measured: list[tuple[str, float, float | None]] = [
            ("circuit from the model", median(lambda study=study: _build(study)), None),
            ("its other three cases", median(lambda study=study: _cases(study)), None),
            ("load flow", median(lambda net=flow: _flow(net)), floors["flow"]),
            ("every kind of fault at every bus", median(lambda study=study: _faults(study)), floors["faults"]),
            ("all of it again after an edit of a length", _edited(analysis, document), None),
        ]
        for what, taken, floor in measured:
            ratio = ["", ""] if floor is None else [f"{1000 * floor:.1f}", f"{taken / floor:.2g}"]
            cells = [f"{size:,}", f"{len(fault.buses):,}", f"{unknowns:,}", what, f"{1000 * taken:.1f}", *ratio]
            lines.append(f"| {' | '.join(cells)} |")
    return lines


def median(work: Callable[[], object]) -> float:
    """Processor seconds of some work, after one run to warm up."""
    work()
    taken = []
    for _ in range(REPEATS):
        began = time.process_time()
        work()
        taken.append(time.process_time() - began)
    return statistics.median(taken)


def _opened(size: int) -> tuple[Analysis, Any]:
    text = Site(size).in_one()
    files = Files(lambda _: text)
    document = files.open_buffer("/m/site.wye", text)
    return Analysis("/m/site.wye", files, "/m"), document


def _build(study: StateStudy) -> None:
    build(study.model, study.connectivity, study.derivation, study.loads, Case.FLOW, study.view.tables)


def _cases(study: StateStudy) -> None:
    from wyeline_linter.studies.vary import vary

    for case in (Case.MAX, Case.MIN, Case.START):
        vary(study.built(Case.FLOW), case, study.circuits.facts)


def _afresh(net: Network) -> Network:
    """The same circuit, with nothing kept of its wiring."""
    made = net.variant()
    made.loads, made.motors, made.fault_current_sources = net.loads, net.motors, net.fault_current_sources
    made.wiring = {}
    return made


def _flow(net: Network) -> int:
    from wyeline_linter.circuit import Solved, solve_flow

    solved = solve_flow(_afresh(net))
    assert isinstance(solved, Solved)
    assert solved.selftest.passed
    return solved.iterations


def _faults(study: StateStudy) -> None:
    from wyeline_linter.circuit.faults import study_faults
    from wyeline_linter.studies.fault import FaultView

    built = study.built(Case.MAX)
    view = FaultView(built, study_faults(_afresh(built.network)), None, study.practice)
    for bus in built.network.buses:
        view.at_bus(bus)


def _assembled(net: Network, what: Any) -> Assembled:
    from wyeline_linter.circuit.assemble import assemble

    return assemble(net, what)


def _factorised(assembled: Assembled) -> Any:
    from scipy.sparse.linalg import splu

    matrix = assembled.sparse()
    return splu(matrix, permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.01, options={"SymmetricMode": True})


def _flow_floor(net: Network) -> float:
    assembled, iterations = _assembled(net, "flow"), _flow(net)
    rhs = assembled.excitation()

    def floor() -> None:
        factors = _factorised(assembled)
        for _ in range(iterations):
            factors.solve(rhs)

    return median(floor)


def _fault_floor(net: Network) -> float:
    import numpy as np

    assembled = _assembled(net, "fault")
    wanted = assembled.layout.unknown[[node for bus in net.buses for node in bus.nodes]]
    wanted = np.unique(wanted[wanted >= 0])

    factors = _factorised(assembled)
    part = wanted[:: max(1, len(wanted) // CHUNK)][:CHUNK]

    def solve() -> None:
        rhs = np.zeros((assembled.size, len(part)), dtype=np.complex128)
        rhs[part, np.arange(len(part))] = 1
        factors.solve(rhs)

    # Of many thousand solves, all alike, a part is run.
    return median(lambda: _factorised(assembled)) + median(solve) * len(wanted) / len(part)


def _edited(analysis: Analysis, document: Any) -> float:
    """Processor seconds from an edited length to circuits, load flow and faults, with what is kept of those before."""
    feeder = max(analysis.model.feeders.values(), key=lambda f: f.key)
    key, length = feeder.key, feeder.body.facts["length"].value.text

    def solve() -> None:
        study = analysis.view.studies.normal
        for faults in (study.largest, study.smallest, study.starting):
            faults.worst(feeder.target.name)
        study.flow.volts(feeder.target.name)

    solve()
    taken = []
    for k in range(REPEATS):
        old = analysis.model.feeders[key]
        row = old.place.row
        line = document.lines[row]
        before = old.body.facts["length"].value.text if k else length
        went, came = document.replace_lines(row, row + 1, [line.replace(f" {before} ", f" {41 + k} m ", 1)])
        analysis.edited(went, came)
        assert analysis.model.feeders[key].body.number("length") == 41 + k
        began = time.process_time()
        solve()
        taken.append(time.process_time() - began)
    return statistics.median(taken)


if __name__ == "__main__":
    print("\n".join(rows([int(size) for size in sys.argv[1:]] or [1000, 10_000])))
