"""Wires that let their device trip on an earth fault at their far end (IEC 60364-4-41 411.4.4, 411.6.4)."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.grounding_conductors import protective_conductor
from wyeline_linter.protection.disconnection import in_tt, longest_fault_s
from wyeline_linter.protection.fault_loop import behind_of, has_rcd
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.trip import fuse_opens, trip_of
from wyeline_linter.protection.wiring import Wiring
from wyeline_linter.sizing.steps import LARGEST_SET, Tripping
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_MARGIN = 1.01
"""What is proposed trips with a little to spare: here ohms are added up that the study adds as a network."""


def tripping_of(view: View, line: Line) -> Tripping | None:
    """What a feeder's device asks of its wires; None where residual current trips it, where nothing written says from
    where it trips, and where the fault, a length or a protective conductor is not known."""
    guard, length_m = line.guard, line.body.number("length")
    allowed = longest_fault_s(line)
    if line.us or guard is None or not guard.own or length_m is None or line.wiring.ground is None:
        return None
    if allowed is None or in_tt(line) or has_rcd(view, line):
        return None
    trip = trip_of(line.body, guard.amps, within_s=allowed.value)
    if trip is not None:
        trip_a, needed = trip.amps, f"and its device trips from {trip.amps:.4g} A ({trip.text})"
    else:
        gate = fuse_opens(line.tables, line.body, guard.amps, "within_5s")
        if gate is None:
            return None
        trip_a, needed = gate.value, f"and its fuse has opened within 5 s from {gate.value:.4g} A ({gate})"
    behind = behind_of(view, line)
    if not behind:
        return None

    def amps(sets: int, size: str) -> float:
        loop = _loop_ohm(line, sets, size, length_m)
        return 0.0 if loop is None else min(b.amps(loop) for b in behind) / _MARGIN

    return Tripping(
        amps, trip_a, needed,
        f"no wires let an earth fault at the far end draw the {trip_a:.4g} A that its device asks for: it takes a "
        "residual current device, or a device that trips sooner",
    )  # fmt: skip


def wires_let_it_trip(view: View, line: Line) -> bool:
    """Whether there are wires, in as many sets, that let a feeder's device trip on an earth fault."""
    asked = tripping_of(view, line)
    return asked is not None and asked.trips(line.wiring.sets, LARGEST_SET[line.tables.practice])


def larger_written(wiring: Wiring, sets: int, size: str, asked: str) -> str:
    """The PE beside wires of a size: as it is asked for, or as it is written beside wires that are no larger, where
    that is more. Who enlarges wires makes no PE smaller, whose ohms let devices trip."""
    if wiring.ground is None or sets < wiring.sets or area_mm2(size) < area_mm2(wiring.size):
        return asked
    return max(asked, wiring.ground, key=area_mm2)


def _loop_ohm(line: Line, sets: int, size: str, length_m: float) -> complex | None:
    """Leg and protective conductor, hot, of wires of another size, with what is proposed beside them."""
    from wyeline_linter.studies.case import Case
    from wyeline_linter.studies.line_impedance import conduit_of, per_length

    wiring = line.wiring
    asked = protective_conductor(line.tables, size, material=wiring.metal)
    if isinstance(asked, NotListed) or wiring.ground is None or "resistance" in line.body.facts:
        return None
    ground = larger_written(wiring, sets, size, asked.size.value)
    conduit = conduit_of(line.body.raceway, {})
    total = 0j
    for each in (size, ground):
        hz = line.system.frequency_hz
        found = per_length(line.tables, each, wiring.metal, conduit, wiring.insulation, Case.MIN, hz)
        if isinstance(found, NotListed):
            return None
        total += found.ohm(length_m, sets)
    return total
