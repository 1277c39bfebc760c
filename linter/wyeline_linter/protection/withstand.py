"""What faults ask of wires until the device that clears them has opened."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.conductor_sizes import area_mm2, is_metric
from wyeline_linter.conductors import thermal_k
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.trip import fuse_opens

if TYPE_CHECKING:
    from wyeline_linter.view import View


class Withstand(NamedTuple):
    """The least area of all sets together, and what it comes from (S = I sqrt(t) / k; IEC 60364-4-43 434.5.2)."""

    least_mm2: float
    amps: float
    seconds: float
    k: float


def withstand_of(view: View, line: Line) -> Withstand | None:
    """What the wires of a line must bear: behind a device with a delay written the largest fault (of feeders; this asks
    the fault study), behind a gG fuse what it lets through. None without either, since then only the maker's curve
    tells how long a fault lasts, and where the fault current or the insulation is not known."""
    wiring, guard = line.wiring, line.guard
    mark = wiring.insulation
    if guard is None or not guard.own or mark is None or len(wiring.temperatures_c) != 1:
        return None
    seconds = line.body.number("delay")
    gate = fuse_opens(line.tables, line.body, guard.amps, "within_5s") if seconds is None else None
    if gate is not None:
        amps: float | None = gate.value
        seconds = FUSE_AT_LAST_S
    elif seconds is None or line.feeder is None:
        return None
    else:
        amps = _largest_at_start(view, line)
    if amps is None:
        return None
    final_c = final_temperature_c(mark, wiring.size)
    k = thermal_k(wiring.metal, initial_c=wiring.temperatures_c[0], final_c=final_c)
    return Withstand(amps * seconds**0.5 / k, amps, seconds, k)


FUSE_AT_LAST_S = 5.0
"""A fuse lets the more heat through, the longer it takes; what takes longer is no short circuit (IEC 60364-4-43
434.5.2)."""


def final_temperature_c(mark: str, size: str) -> float:
    """Temperature that a wire's insulation bears for the length of a short circuit, degC.

    Cross-linked 250; thermoplastic 150 (ICEA P-32-382), of metric wires 160, above 300 mm2 140 (IEC 60364-4-43
    Table 43A). From memory.
    """
    if mark.startswith(("XH", "XL", "EPR", "RHW", "USE", "N2X", "NA2X")):
        return 250.0
    if not is_metric(size):
        return 150.0
    return 160.0 if area_mm2(size) <= 300.0 else 140.0


def _largest_at_start(view: View, line: Line) -> float | None:
    best: float | None = None
    for study in view.studies.for_faults():
        for fault in study.largest.at(line.source.name).values():
            if fault.amperes is not None and (best is None or fault.amperes > best):
                best = fault.amperes
    return best
