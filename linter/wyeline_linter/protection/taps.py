"""Taps and secondary wires: every condition of a claim, checked one by one (NEC 240.21(B), 240.21(C))."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from wyeline_linter.protection.ampacities import bounds
from wyeline_linter.protection.currents import current_of
from wyeline_linter.protection.lines import Line, first_device_a
from wyeline_linter.protection.purposes import TAPS
from wyeline_linter.systems import Known
from wyeline_linter.tables import Looked, NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

FOOT_M = 0.3048
_SLACK = 1.0005
LENGTHS_FT = {"tap-10ft": 10.0, "tap-25ft": 25.0}
_FRACTIONS = {
    ("tap-10ft", False): "tap-10ft-fraction",
    ("tap-25ft", False): "tap-25ft-fraction",
    ("tap-10ft", True): "secondary-10ft-fraction",
    ("tap-25ft", True): "secondary-25ft-fraction",
}


@dataclass(slots=True)
class Proof:
    """What became of a claim: ``failed`` conditions with their numbers, ``missing`` facts, ``met`` ones."""

    claim: str
    failed: list[str] = field(default_factory=list)
    missing: list[str] = field(default_factory=list)
    met: list[str] = field(default_factory=list)

    @property
    def holds(self) -> bool:
        return not self.failed and not self.missing


def claimed_tap(line: Line) -> str | None:
    """The tap that a line claims to be, the strictest first."""
    if line.claims.isdisjoint(TAPS):
        return None
    return next((name for name in ("tap-10ft", "tap-25ft", "tap-outside") if name in line.claims & TAPS), None)


def prove(view: View, line: Line, claim: str) -> Proof:
    """Check every condition of a tap claim on a line."""
    proof = Proof(claim)
    _length(view, line, claim, proof)
    raceway = line.body.raceway is not None or line.wiring.cable
    if claim != "tap-outside":
        if raceway:
            proof.met.append("the wires run in a raceway")
        else:
            proof.missing.append("the raceway or cable it runs in")
    else:
        _note(proof, "outdoor" in line.body.flags, "it runs outdoors", "it is not marked `outdoor`")
    if line.laid is None:
        if line.lacks not in proof.missing:
            proof.missing.append(line.lacks)
        return proof
    held = bounds(line.tables, line.wiring, line.laid)
    if isinstance(held, NotListed):
        proof.missing.append(held.reason)
        return proof
    amps = held[0].amps
    _ends(view, line, claim, amps, proof)
    _share(view, line, claim, amps, proof)
    return proof


def least_of_tap(view: View, line: Line) -> tuple[float, str]:
    """What the wires of a claimed tap must carry whatever their load, amperes, and which condition says so; 0 where
    nothing is claimed, or what decides is not written."""
    claim = claimed_tap(line)
    if claim is None:
        return 0.0, ""
    found: list[tuple[float, str]] = []
    device = first_device_a(line)
    bus = line.target.body.number("bus") if line.target is not None and claim == "tap-10ft" else None
    ends_in = device if device is not None else bus
    if ends_in is not None:
        found.append((ends_in, f"the {'device' if device is not None else 'bus'} that it ends in"))
    share = _share_of(view, line, claim)
    if share is not None:
        found.append(share)
    return max(found, default=(0.0, ""))


def _length(view: View, line: Line, claim: str, proof: Proof) -> None:
    most = LENGTHS_FT.get(claim)
    if most is None:
        return
    length = line.body.number("length")
    if length is None:
        proof.missing.append("its length")
        return
    feet = length / FOOT_M
    limit = f"{most:g} ft" if view.units == "us" else f"{view.length_text(most * FOOT_M)} ({most:g} ft)"
    long = view.length_text(length)
    if feet > most and long == view.length_text(most * FOOT_M):
        long = f"more than {long}"
    _note(proof, feet <= most * _SLACK, f"{long}, {limit} at the most", f"it is {long} long, limit {limit}")


def _ends(view: View, line: Line, claim: str, amps: float, proof: Proof) -> None:
    device = first_device_a(line)
    bus = line.target.body.number("bus") if line.target is not None else None
    current = current_of(view, line)
    if claim == "tap-10ft":
        need = current.sizing_a
        if need is None:
            proof.missing.extend(current.unknown[:1] or ("its load",))
        else:
            _note(proof, need <= amps * _SLACK, f"carries its load of {need:.4g} A",
                  f"its wires carry {amps:.4g} A, less than the load of {need:.4g} A")  # fmt: skip
        ends_in = device if device is not None else bus
        what = "device" if device is not None else "bus"
        if ends_in is None:
            proof.missing.append(f"the device or bus that it ends in at `{line.target.name if line.target else ''}`")
        else:
            _note(proof, ends_in <= amps * _SLACK, f"carries the {ends_in:g} A {what} it ends in",
                  f"its wires carry {amps:.4g} A, less than the {ends_in:g} A {what} it ends in")  # fmt: skip
        return
    if device is None:
        proof.failed.append(f"it does not end in a device of `{line.target.name if line.target else ''}`")
        return
    _note(proof, device <= amps * _SLACK, f"ends in a {device:g} A device, and carries {amps:.4g} A",
          f"it ends in a {device:g} A device, and its wires carry {amps:.4g} A")  # fmt: skip


def _share(view: View, line: Line, claim: str, amps: float, proof: Proof) -> None:
    share = _share_of(view, line, claim)
    if share is None:
        if line.guard is None and (claim, True) in _FRACTIONS:
            proof.missing.append(f"the device on the primary side of `{line.maker}`")
        return
    least, part = share
    _note(proof, amps * _SLACK >= least, f"carries {least:.4g} A, {part}",
          f"its wires carry {amps:.4g} A, less than {least:.4g} A, {part}")  # fmt: skip


def _share_of(view: View, line: Line, claim: str) -> tuple[float, str] | None:
    """The part of the device ahead that a tap has to carry, amperes, in words; None where none, or it is not known."""
    secondary = line.guard is None
    name = _FRACTIONS.get((claim, secondary))
    fraction = line.tables.constant(name) if name is not None else None
    if not isinstance(fraction, Looked):
        return None
    if line.guard is not None:
        base, words = line.guard.amps, f"the {line.guard.amps:g} A ahead"
    else:
        ahead = primary_device(view, line.maker)
        if ahead is None:
            return None
        device, ratio = ahead
        base, words = device * ratio, f"{device:g} A x {ratio:.3g} on the primary"
    return base * fraction.value, f"1/{1 / fraction.value:.0f} of {words}"


def primary_device(view: View, transformer: str) -> tuple[float, float] | None:
    """The device ahead of a transformer, amperes, and its ratio of line voltages, primary over secondary."""
    state = view.state(transformer)
    if state is None or state.ahead is None or state.ahead.device_a is None:
        return None
    if not isinstance(state.arriving, Known) or not isinstance(state.system, Known):
        return None
    low = state.system.system.widest_v
    equipment = view.equipment(transformer)
    stated = view.derivation.stated(equipment.primary) if equipment is not None else None
    high = stated.line_v if stated is not None else state.arriving.system.widest_v
    return (state.ahead.device_a, high / low) if low else None


def _note(proof: Proof, good: bool, met: str, failed: str) -> None:
    (proof.met if good else proof.failed).append(met if good else failed)
