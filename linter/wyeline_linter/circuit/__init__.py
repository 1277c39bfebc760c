"""The electrical engine: one conductor-level network, its load flow and its faults.

It knows nothing of the language.  A network is built bus by bus and element by element in SI units; every leg, neutral
and protective conductor is a node, earth is :data:`EARTH`.  numpy and scipy are imported only when a solver, or what
it solved, is asked for.

    from wyeline_linter.circuit import EARTH, Network, Solved, solve_flow, study_faults

    net = Network()
    service, board = net.bus("SERVICE", "ABC"), net.bus("BOARD", "ABCN")
    net.three_phase_source("utility", service.pick("ABC"), EARTH, e_ln_volt=480 / 3**0.5, z1_ohm=0.0009 + 0.009j)
    for k, (leg, before) in enumerate(("AC", "BA", "CB"), start=1):  # Dyn1, 75 kVA, z 2 + j4 %
        net.core(f"T1.{k}", service.pair(leg + before), (board.pair(leg + "N"),), (480 / (208 / 3**0.5),),
                 z_secondary_ohm=((0.02 + 0.04j) * 208**2 / 75e3,))
    net.link("T1 bond", board["N"], EARTH)
    net.load("kiln", (board["A"], board["B"]), 6e3 + 0j, v_nominal=208, shares=(0, 0, 1))

    flow = solve_flow(net)
    if isinstance(flow, Solved):
        flow.voltage(board, "A", "N"), flow.load_current[0], flow.selftest.passed
    faults = study_faults(net)
    faults.bus(board, "ABC").current_a, faults.bus(board, "AN").x_over_r

Elements of :class:`Network`: `line` (1..n conductors, full Z matrix or independent), `link` (closed switch, bond),
`impedance`, `admittance`, `core` (ideal core, series impedance a winding), `source`, `three_phase_source`, `load`,
`motor` and `fault_current_source` (fault study only).  Every connection of a transformer is a set of cores.

Results: :func:`solve_flow` returns :class:`Solved` or :class:`NotSolved` (a reason, no numbers);
:func:`study_faults` returns a :class:`FaultStudy` holding one factorised matrix for all places and kinds of fault.
A voltage of a part without path to earth is None against earth.  Conversions of nameplate and utility data are in
:mod:`.nameplate`, rating checks in :mod:`.ansi` and :mod:`.iec60909`.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

from .elements import EARTH, Bus
from .network import Network

if TYPE_CHECKING:
    from .assemble import SingularNetwork
    from .faults import Fault, FaultStudy, study_faults
    from .flowresult import Solved
    from .loadflow import NotSolved, solve_flow
    from .selftest import SelfTest

_LATER = {
    "SingularNetwork": "assemble",
    "Fault": "faults",
    "FaultStudy": "faults",
    "study_faults": "faults",
    "Solved": "flowresult",
    "NotSolved": "loadflow",
    "solve_flow": "loadflow",
    "SelfTest": "selftest",
}


def __getattr__(name: str) -> Any:
    """Bring in numpy and scipy only when a solver is asked for, and what a check does without when somebody asks."""
    if name in _LATER:
        return getattr(import_module(f".{_LATER[name]}", __name__), name)
    raise AttributeError(f"module {__name__} has no attribute {name}")


__all__ = [
    "EARTH",
    "Bus",
    "Fault",
    "FaultStudy",
    "Network",
    "NotSolved",
    "SelfTest",
    "SingularNetwork",
    "Solved",
    "solve_flow",
    "study_faults",
]
