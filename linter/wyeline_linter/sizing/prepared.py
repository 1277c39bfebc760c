"""A feeder made ready to be sized: its line, whether or not its wires are written, its current, and its device."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Feeder
from wyeline_linter.earthing import own_electrode
from wyeline_linter.protection.currents import Current, current_of
from wyeline_linter.protection.lines import Guard, Line, feeder_line, first_device_a, planned_line
from wyeline_linter.protection.purposes import ONE_LOAD, Purpose, purpose_of
from wyeline_linter.protection.wiring import Wiring, temperatures
from wyeline_linter.sizing.devices import Device, device_of
from wyeline_linter.systems import System
from wyeline_linter.tables import Basis

if TYPE_CHECKING:
    from wyeline_linter.view import View

USUAL = {"us": "THWN-2", "iec": "XLPE"}
"""Insulation taken where nothing is written (common practice, no source)."""


class NotSized(NamedTuple):
    """Why a feeder cannot be sized: the facts that are missing."""

    subject: str
    reasons: tuple[str, ...]


class Prepared(NamedTuple):
    """What wires are chosen for. ``device`` is the one that is proposed, None where the one written stays; ``reasons``
    say so."""

    line: Line
    current: Current
    purpose: Purpose
    device: Device | None
    reasons: list[str]


def prepared(view: View, feeder: Feeder, *, carries_a: float = 0.0) -> Prepared | NotSized:
    """A feeder with the device that it has, or that its load and its ends ask for; a written device below ``carries_a``
    is chosen anew."""
    tables = view.tables
    if tables is None:
        return NotSized(feeder.key, ("the project names no basis, so no table gives a size",))
    line = feeder_line(view, feeder) or planned_line(view, feeder, lambda made: _planned(view, tables, made, feeder))
    if line is None or line.target is None:
        return NotSized(feeder.key, (f"the voltage of `{feeder.key}` is not settled",))
    if line.medium:
        return NotSized(feeder.key, ("the tables hold no medium-voltage cables; the maker's data decide",))
    current = current_of(view, line)
    if line.laid is None:
        example = "`in EMT`, whose size then follows" if line.us else "`method C`"
        example = "`soil 1.0 K.m/W`" if "`soil`" in line.lacks else example
        return NotSized(feeder.key, (f"{line.lacks} is not written (such as {example})",))
    purpose = purpose_of(view, line, current)
    device: Device | None = None
    reasons: list[str] = []
    own = line.guard if line.guard is not None and line.guard.own else None
    below = own is not None and (is_below(own, current) or own.amps < carries_a)
    small = below and purpose not in ONE_LOAD
    if small or (own is None and _wants_device(line, purpose)):
        asked = device_of(view, line, current, purpose)
        if isinstance(asked, str):
            return NotSized(feeder.key, (asked,))
        device = asked
        reasons.append(device.text)
        if own is not None:
            asked_a = max(current.sizing_a or 0.0, carries_a)
            reasons.append(f"{own.amps:g} A, as written, is less than the {asked_a:.4g} A to size by")
        guard = Guard(device.amps, device.kind, True, feeder.key)
        line = replace(line, guard=guard, laid=line.laid._replace(device_a=device.amps))
        purpose = purpose_of(view, line, current)
    ends_in = first_device_a(line) if purpose in (Purpose.SECONDARY, Purpose.SERVICE) else None
    if line.guard is None and not current.sizing_a and ends_in is None:
        why = current.unknown or ("it has no device, and nothing below states a load",)
        return NotSized(feeder.key, why)
    if current.unknown:
        reasons.append(f"the load is not known, so the device alone decides: {'; '.join(current.unknown[:2])}")
    return Prepared(line, current, purpose, device, reasons)


def is_below(guard: Guard, current: Current) -> bool:
    """Whether a device is smaller than the load that its line is sized by, so that wires alone would mend nothing."""
    return (current.sizing_a or 0.0) > guard.amps * (1 + 1e-9)


def _wants_device(line: Line, purpose: Purpose) -> bool:
    """Whether a device belongs at its start: not behind a meter, switch or lugs, nor at a transformer's terminals."""
    if line.feeder is None or line.feeder.source.port is not None:
        return False
    if purpose in (Purpose.SECONDARY, Purpose.SERVICE, Purpose.TAP):
        return False
    return line.source.kind in ("switchgear", "switchboard", "mcc", "panel", "busway", "generator", "ups", "inverter")


def _planned(view: View, tables: Basis, system: System, feeder: Feeder) -> Wiring:
    """Wires of no size yet: what has to be pulled between these two ends."""
    practice = tables.practice
    mark = USUAL[practice]
    size = "12" if practice == "us" else "2.5 mm2"
    neutral = size if system.has_neutral else None
    apart = practice != "us" and own_electrode(view.equipment(feeder.target.name))
    ground = None if apart or feeder.source.port == "none" else size
    role = "G" if practice == "us" else "PE"
    held = temperatures(mark, tables, False)
    return Wiring(1, len(system.legs), size, neutral, ground, role, "Cu", False, mark, held, False)
