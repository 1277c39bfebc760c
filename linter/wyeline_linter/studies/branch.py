"""Voltage drop in the circuits of a board, by the hand formula: their loads stand on the board's bus in the circuit."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Place, PlacedCircuit
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.line_impedance import LineData, conduit_of, line_data
from wyeline_linter.systems import NEUTRAL, System

if TYPE_CHECKING:
    from wyeline_linter.loads.leaf_loads import LeafLoad
    from wyeline_linter.studies.study import StateStudy


class BranchDrop(NamedTuple):
    """The drop of one circuit: V, the part of nominal, and what it was worked out from."""

    circuit: PlacedCircuit
    volts: float
    part: float
    amperes: float
    power_factor: float
    nominal_v: float
    wiring: str
    """``three-phase``, ``line-line`` or ``line-neutral``."""
    data: LineData


def branch_drops(study: StateStudy, board: Equipment) -> list[BranchDrop]:
    """The drops of a board's circuits whose wires, length and load are written."""
    bus = study.built(Case.FLOW).bus.get(board.name)
    if bus is None or not board.circuits:
        return []
    system = study.built(Case.FLOW).system_at[bus.name]
    loads = study.loads_at.get(board.name, {})
    found = []
    for placed in board.circuits:
        body = placed.circuit.body
        parts = loads.get(placed.key)
        if not parts or body.conductors is None or "with" in body.facts:
            continue
        drop = _drop(study, board, placed, parts, system)
        if drop is not None:
            found.append(drop)
    return found


def _drop(
    study: StateStudy, board: Equipment, placed: PlacedCircuit, parts: list[LeafLoad], system: System
) -> BranchDrop | None:
    legs = tuple(dict.fromkeys(c for load in parts for c in load.pair if c != NEUTRAL))
    neutral = any(NEUTRAL in load.pair for load in parts)
    data = wires_of(study, board, placed, len(legs), neutral=neutral, frequency_hz=system.frequency_hz)
    if data is None or data.leg is None:
        return None
    worst = max(parts, key=lambda load: abs(load.va))
    pair = worst.pair
    nominal = system.distance(*pair)
    if len(legs) == 3 and not neutral:
        va = sum((load.va for load in parts), 0j)
        amperes, wiring, ohm = abs(va) / nominal / math.sqrt(3.0), "three-phase", math.sqrt(3.0) * data.leg
    else:
        va, amperes = worst.va, abs(worst.va) / nominal
        wiring = "line-neutral" if NEUTRAL in pair else "line-line"
        back = data.neutral if wiring == "line-neutral" else data.leg
        if back is None:
            return None
        ohm = data.leg + back
    pf = va.real / abs(va) if va else 1.0
    sine = va.imag / abs(va) if va else 0.0
    volts = amperes * (ohm.real * pf + ohm.imag * sine)
    return BranchDrop(placed, volts, volts / nominal, amperes, pf, nominal, wiring, data)


def wires_of(
    study: StateStudy,
    board: Equipment,
    placed: PlacedCircuit,
    legs: int,
    *,
    neutral: bool,
    frequency_hz: float,
    case: Case = Case.FLOW,
) -> LineData | None:
    """The impedances of a circuit's wires; None where their length is not written.

    Circuits are many and alike but for their length: what a metre of their wires comes to is worked out once, and so is
    each length of it.
    """
    body = placed.circuit.body
    length = body.facts.get("length")
    if length is None:
        return None

    def looked_up(length_m: float) -> LineData:
        return line_data(
            body,
            key=f"{board.name} {placed.key}",
            place=Place(placed.block, placed.circuit.place.span),
            legs=legs,
            neutral=neutral,
            chosen=study.view.tables,
            case=case,
            conduit=conduit_of(body.raceway, study.stuff_of),
            frequency_hz=frequency_hz,
            length_m=length_m,
        )

    if length.assumed:
        return looked_up(length.number)
    alike = (placed.circuit.sense, legs, neutral, case, frequency_hz)
    lengths = study.circuit_wires.get(alike)
    if lengths is None:
        lengths = study.circuit_wires[alike] = {1.0: looked_up(1.0)}
    length_m = length.number
    found = lengths.get(length_m)
    if found is None:
        metre = lengths[1.0]
        found = lengths[length_m] = metre if metre.leg is None else metre.of_length(length_m)
    return found
