"""The wires of one line: what they are sized for, the smallest that serve, and what goes beside them."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from wyeline_linter.conductor_sizes import area_mm2, standard_sizes
from wyeline_linter.conductors import ConduitMaterial
from wyeline_linter.grounding_conductors import protective_conductor
from wyeline_linter.protection.ampacities import Laid, bounds
from wyeline_linter.protection.currents import Current, laid_with, line_voltage
from wyeline_linter.protection.dwellings import relief_of
from wyeline_linter.protection.lines import METAL_RACEWAYS, Line, first_device_a
from wyeline_linter.protection.purposes import ONE_LOAD, TAPS, Purpose, required_a
from wyeline_linter.protection.taps import least_of_tap
from wyeline_linter.protection.wiring import CABLES_AT_60, Wiring
from wyeline_linter.shares import share_text
from wyeline_linter.sizing.steps import (
    NO_FAULTS,
    Demand,
    Faults,
    Ground,
    Sized,
    drop_percent,
    ground_for,
    jumper_for,
    sized,
)
from wyeline_linter.sizing.tripping import larger_written
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View


def demand_of(
    view: View, line: Line, current: Current, purpose: Purpose, wiring: Wiring, *, lost: bool = True
) -> Demand:
    """What the wires of a line are sized for; without the voltage lost on it where ``lost`` is False."""
    need = required_a(view, line, current, purpose) or 0.0
    guard = line.guard
    exempt = purpose in ONE_LOAD or purpose in (Purpose.SECONDARY, Purpose.SERVICE, Purpose.SOURCE, Purpose.TAP)
    device_a = guard.amps if guard is not None else 0.0
    if purpose in (Purpose.SECONDARY, Purpose.SERVICE) and line.target is not None:
        ends_in = first_device_a(line)
        if ends_in is not None:
            device_a, exempt = ends_in, False
    limit = _drop_target(view, line) if lost else 0.0
    least_a, least_why = least_of_tap(view, line) if line.claims & TAPS else (0.0, "")
    drop = None
    if limit and current.design_a:
        drop = _drop(view, line, current, wiring)
    design_a = current.design_a or 0.0
    relief = relief_of(view, line)
    if relief is not None:
        need, design_a = min(need, relief.amps), min(design_a, relief.amps)
    return Demand(
        device_a,
        guard.kind if guard is not None else "breaker",
        design_a,
        need,
        purpose is not Purpose.SECONDARY,
        exempt,
        drop,
        limit,
        least_sets=wiring.sets,
        least_a=least_a,
        least_why=least_why,
        relief_a=relief.amps if relief is not None else 0.0,
        relief_why=relief.text if relief is not None else "",
        neutral_a=_like_a_leg_a(line, wiring, current),
    )


def _like_a_leg_a(line: Line, wiring: Wiring, current: Current) -> float:
    """What a neutral of the same size as the legs carries where third harmonics add up in it; 0 where none do, or where
    the neutral has a size of its own."""
    sized_so = wiring.neutral is not None and current.third is not None and not _sized_alone(line)
    return current.neutral_a or 0.0 if sized_so else 0.0


def _sized_alone(line: Line) -> bool:
    """Whether a neutral may be larger than its legs: a wire of its own in a raceway, or written so already (the factors
    of IEC 60364-5-52 Annex E are those of cables with like cores)."""
    wiring = line.wiring
    if wiring.neutral is None or wiring.pen or (line.us and wiring.cable):
        return False
    return line.us or area_mm2(wiring.neutral) > area_mm2(wiring.size) * 1.001


def _drop_target(view: View, line: Line) -> float:
    project = view.model.project
    branch, path = project.number("drop-branch"), project.number("drop-path")
    last = line.target is None or line.target.kind in ("motor", "load", "charger", "drive", "capacitor")
    if last:
        return 100 * branch if branch is not None else 0.0
    return 100 * (path - branch) if path is not None and branch is not None and path > branch else 0.0


def _drop(view: View, line: Line, current: Current, wiring: Wiring) -> Callable[[int, str], float | None] | None:
    length = line.body.number("length")
    if length is None or not current.design_a or line.target is None:
        return None
    amount = view.loads.counted(line.target.name).demand.va
    pf = amount.real / abs(amount) if abs(amount) else 1.0
    stuff = line.body.raceway.stuff if line.body.raceway is not None else ""
    conduit: ConduitMaterial = "steel" if stuff in METAL_RACEWAYS else "pvc"
    return drop_percent(
        line.tables, wiring.metal, amps=current.design_a, length_m=length, volts=line_voltage(line.system),
        legs=len(line.system.legs), pf=max(0.0, min(1.0, pf)), conduit=conduit,
        frequency_hz=line.system.frequency_hz,
    )  # fmt: skip


def choose(
    view: View,
    line: Line,
    current: Current,
    purpose: Purpose,
    *,
    strict: bool = False,
    laid: Laid | None = None,
    faults: Faults = NO_FAULTS,
) -> tuple[Wiring, Sized, list[str]] | NotListed:
    """The wires of a line at their right size, with the reasons; keeps metal, insulation and what is pulled along.

    ``strict``: without the next size up, which is what an enlargement is counted from. ``faults``: what faults ask of
    the wires.
    """
    wiring = line.wiring
    laid = laid if laid is not None else laid_with(line, current)
    assert laid is not None
    insulation_c = wiring.temperatures_c[0] if wiring.temperatures_c else 0.0
    want = demand_of(view, line, current, purpose, wiring)._replace(faults=faults)
    if strict:
        want = want._replace(next_size_up=False)
    if not insulation_c:
        return NotListed(f"the tables do not hold {wiring.insulation}")
    cable_60 = wiring.insulation in CABLES_AT_60
    found = sized(line.tables, wiring.metal, insulation_c, laid, want._replace(least_sets=1), cable_60=cable_60)
    if isinstance(found, NotListed):
        return found
    beside = beside_of(line, current, purpose, want, found, laid)
    if isinstance(beside, NotListed):
        return beside
    wiring, reasons = beside
    return wiring, found, [*(f"{s.size} {s.governed}: {s.text}".lstrip() for s in found.steps), *reasons]


def beside_of(
    line: Line, current: Current, purpose: Purpose, want: Demand, found: Sized, laid: Laid | None
) -> tuple[Wiring, list[str]] | NotListed:
    """The neutral and the ground, or jumper, that go with live wires of a size, and why; none where none is pulled."""
    wiring = line.wiring
    ground, role = wiring.ground, wiring.ground_role
    reasons: list[str] = []
    if ground is not None and role != "PEN":
        made: Ground | NotListed
        if purpose is Purpose.SECONDARY and line.us:
            made = jumper_for(line.tables, wiring.metal, found)
        else:
            made = ground_for(line.tables, want.device_a or (current.sizing_a or 0.0), wiring.metal, found)
        if isinstance(made, NotListed):
            return made
        ground = made.size if line.us else larger_written(wiring, found.sets, found.size, made.size)
        reasons.append(made.text if ground == made.size else f"PE {ground}: as it is written; {made.size} is asked")
    elif role == "PEN":
        ground = max(found.size, least_pen(line, found.size), key=area_mm2)
        if ground != found.size:
            reasons.append(f"PEN {ground}: the least that a combined neutral and PE may have")
    neutral = (ground if role == "PEN" else found.size) if wiring.neutral is not None else None
    larger = neutral_for_third(line, current, found.size, found.sets, laid)
    if larger is not None:
        neutral = larger[0]
        reasons.append(larger[1])
    elif neutral == found.size:
        reasons.append(f"neutral {neutral}: as large as a leg")
    return wiring._replace(sets=found.sets, size=found.size, neutral=neutral, ground=ground), reasons


def neutral_bears(line: Line, current: Current, wiring: Wiring, laid: Laid | None) -> bool:
    """Whether the neutral of these wires carries the most that it may, as far as that is known."""
    if wiring.neutral is None or current.neutral_a is None or laid is None:
        return True
    held = bounds(line.tables, wiring._replace(size=wiring.neutral), laid)
    return isinstance(held, NotListed) or current.neutral_a <= held[1].amps * 1.0005


def neutral_for_third(line: Line, current: Current, size: str, sets: int, laid: Laid | None) -> tuple[str, str] | None:
    """A neutral larger than legs of a size, for the third harmonic in it, and why; None where none is asked for."""
    wiring, third, amps = line.wiring, current.third, current.neutral_a
    if wiring.neutral is None or wiring.pen or third is None or amps is None or not third.neutral_a:
        return None
    written = wiring.neutral if sets == wiring.sets and area_mm2(wiring.neutral) > area_mm2(size) else size
    least = written
    if _sized_alone(line) and laid is not None and wiring.temperatures_c:
        larger = (each for each in standard_sizes(line.tables) if area_mm2(each) >= area_mm2(size) * 0.999)
        for least in larger:
            held = bounds(line.tables, wiring._replace(size=least, sets=sets), laid)
            if not isinstance(held, NotListed) and held[0].amps >= amps * (1 - 1e-6):
                break
    if area_mm2(least) <= area_mm2(written):
        return (written, f"neutral {written}: as written, for the third harmonic in it") if written != size else None
    return (
        least,
        f"neutral {least}: for {amps:.4g} A with the third harmonic, {share_text(third.part)} of the line currents",
    )


def least_pen(line: Line, size: str) -> str:
    """The smallest PEN beside legs of a size: as a PE, and not below what a PEN has at the least."""
    found = protective_conductor(line.tables, size, material=line.wiring.metal, pen=True)
    return size if isinstance(found, NotListed) else found.size.value
