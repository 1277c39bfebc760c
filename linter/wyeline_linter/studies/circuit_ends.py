"""Faults at the end of a circuit: its wires in series with what stands behind the fault at its board."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, PlacedCircuit
from wyeline_linter.studies.branch import wires_of
from wyeline_linter.studies.case import Case
from wyeline_linter.systems import NEUTRAL, System

if TYPE_CHECKING:
    from wyeline_linter.studies.fault import FaultCurrent
    from wyeline_linter.studies.line_impedance import LineData
    from wyeline_linter.studies.study import StateStudy


def end_fault_a(study: StateStudy, board: Equipment, placed: PlacedCircuit, *, largest: bool) -> float | None:
    """The largest (or smallest) of the faults that the wires of a circuit allow at its end, in A.

    None where the fault at the board, the wires, or what the circuit feeds is not known. The fault at the board is the
    worst of its kind on any leg; the impedance behind it is its voltage over its current at its X/R, and the wires add
    there and back (closed form of the Thevenin circuit; cold wires for the largest, hot ones for the smallest).
    """
    parts = study.loads_at.get(board.name, {}).get(placed.key)
    faults = study.largest if largest else study.smallest
    bus = faults.bus(board.name)
    if not parts or bus is None or placed.circuit.body.conductors is None:
        return None
    legs = tuple(dict.fromkeys(c for load in parts for c in load.pair if c != NEUTRAL))
    neutral = any(NEUTRAL in load.pair for load in parts)
    case = Case.MAX if largest else Case.MIN
    hz = faults.built.system_at[bus.name].frequency_hz
    data = wires_of(study, board, placed, len(legs), neutral=neutral, frequency_hz=hz, case=case)
    if data is None or data.leg is None:
        return None
    system, at_board = faults.built.system_at[bus.name], faults.at_bus(bus)
    factor = faults.voltage_factor(bus)  # which the fault at the board holds already
    found = []
    for kind, volts, ohm in _ways(system, legs, data):
        fault = at_board.get(kind)
        if fault is not None and fault.amperes:
            found.append(factor * volts / abs(_behind(factor * volts, fault) + ohm))
    if not found:
        return None
    return max(found) if largest else min(found)


def _ways(system: System, legs: tuple[str, ...], data: LineData) -> list[tuple[str, float, complex]]:
    """The kinds of fault in a circuit, with the voltage that drives each and the ohms of its wires, there and back."""
    assert data.leg is not None
    ways: list[tuple[str, float, complex]] = []
    if len(legs) == 3:
        ways.append(("three-phase", system.distance(legs[0], legs[1]) / math.sqrt(3.0), data.leg))
    if len(legs) > 1:
        ways.append(("line-line", system.distance(legs[0], legs[1]), 2 * data.leg))
    if data.neutral is not None and system.has_neutral:
        ways.append(("line-neutral", system.distance(legs[0], NEUTRAL), data.leg + data.neutral))
    if data.protective is not None:
        ways.append(("line-ground", system.volts_to_ground(legs[0]), data.leg + data.protective))
    return ways


def _behind(volts: float, fault: FaultCurrent) -> complex:
    assert fault.amperes
    ratio = fault.x_over_r
    if ratio is None or not math.isfinite(ratio):
        return complex(0.0, volts / fault.amperes)
    r = volts / fault.amperes / math.hypot(1.0, ratio)
    return complex(r, r * ratio)
