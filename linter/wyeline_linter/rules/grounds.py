"""Equipment grounds, protective conductors and bonding jumpers: there, large enough, enlarged with the wires."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.earthing import own_electrode
from wyeline_linter.findings import Finding, Fix, Severity
from wyeline_linter.grounding_conductors import (
    bonding_jumper,
    equipment_ground,
    equipment_ground_enlarged,
    protective_conductor,
)
from wyeline_linter.network import makes_system
from wyeline_linter.protection.currents import current_of
from wyeline_linter.protection.lines import METAL_RACEWAYS, Line
from wyeline_linter.protection.purposes import Purpose, purpose_of
from wyeline_linter.rules.line_findings import about, line_text, wires_fix
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.protective_conductors import LEAST_PEN_MM2
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.as_written import needed_size
from wyeline_linter.sizing.choosing import choose
from wyeline_linter.sizing.writing import size_text, wires_text
from wyeline_linter.systems import Arrangement
from wyeline_linter.tables import Looked, NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LP = "panel LP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"
_TX = (
    US + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %, x/r 1.8\n"
    "feeder MSB -> TX-1  60 A 3p  3#4 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n"
    "panel LP-1 208Y/120  bus 225 A, main 125 A, lug-temp 75 degC\n"
)
_SERVICE = (
    'project "Annex"\n  basis us-2023\nutility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\n'
    "feeder UTIL -> MSB  3x500kcmil + N 500kcmilGROUND Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard MSB 480Y/277  bus 400 A, main 400 A, lug-temp 75 degC, service-equipment\n"
)
_SLACK = 0.999
_ROUNDED = 0.998
"""Legs some gauges larger ask for a ground as many gauges larger (AWG is a geometric series, ASTM B258): so far may the
areas of Chapter 9 Table 8, rounded to four figures, put the product off. Sizing takes the next size all the same."""

MISSING = rule(
    name="equipment-ground-missing",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="both",
    summary="A line brings no equipment ground (PE), and no metal raceway is claimed to be one.",
    why="Fault current must have its way back, or no device opens and metal parts stay live.",
    clause={"us": "250.118, 250.122", "iec": "60364-5-54 543"},
    wrong=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)
SMALL = rule(
    name="equipment-ground-small",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="both",
    summary="An equipment ground (PE) is smaller than its device, or its wires, ask for.",
    why="The earth wire must carry a fault until the device opens, in every parallel raceway by itself.",
    clause={"us": "250.122(A), 250.122(F)", "iec": "60364-5-54 543.1"},
    wrong=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #10 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)
NOT_ENLARGED = rule(
    name="equipment-ground-not-enlarged",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="us",
    summary="Wires are larger than their ampacity asks for, and their equipment ground did not grow with them.",
    why="Larger legs, for voltage drop or reserve, feed a larger fault: the ground grows in the same proportion.",
    clause={"us": "250.122(B)"},
    wrong=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#1 + N #1 + G #8 Cu THWN-2  20 m  in 1-1/2 inch EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#1 + N #1 + G #4 Cu THWN-2  20 m  in 1-1/2 inch EMT\n",
    mends=True,
)
JUMPER = rule(
    name="bonding-jumper-small",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="us",
    summary="The bonding jumper beside a transformer's secondary wires is smaller than their size asks for.",
    why="Ahead of the first device nothing limits an earth fault but the windings: bonding follows the wire size.",
    clause={"us": "250.102(C), 250.30(A)(2)"},
    wrong=_TX
    + "feeder TX-1 -> LP-1  3#1 + N #1 + G #8 Cu THWN-2  2.5 m  in 1-1/2 inch EMT\n  lug-temp 75 degC\n"
    + "  claim tap-10ft\n",
    right=_TX
    + "feeder TX-1 -> LP-1  3#1 + N #1 + G #6 Cu THWN-2  2.5 m  in 1-1/2 inch EMT\n  lug-temp 75 degC\n"
    + "  claim tap-10ft\n",
    mends=True,
)

# Sections from memory: objectionable current, and the neutral as the way back ahead of the service disconnect.
BESIDE_NEUTRAL = rule(
    name="ground-beside-service-neutral",
    since="0.1",
    severity=Severity.WARNING,
    scope="feeder line",
    basis="us",
    summary="Service wires bring a ground beside a neutral that is bonded at the service equipment.",
    why="Ahead of the service disconnect the neutral is tied to earth at both ends, and so is a ground beside it: a "
    "part of the neutral current then always flows in the ground and in what it touches.",
    clause={"us": "250.6, 250.142(A)"},
    wrong=_SERVICE.replace("GROUND", " + G #1/0"),
    right=_SERVICE.replace("GROUND", ""),
)


@BESIDE_NEUTRAL.check
def ground_beside_service_neutral(view: View, line: Line) -> Iterator[Finding]:
    if line.medium or line.guard is not None or line.target is None:
        return
    maker, wiring, target = view.equipment(line.maker), line.wiring, line.target
    if maker is None or maker.kind != "utility" or wiring.neutral is None or wiring.ground is None or wiring.pen:
        return
    # Only what is written as service equipment is known to hold the bond.
    if "service-equipment" not in target.body.flags or target.body.text("neutral") == "floating":
        return
    yield about(
        view, BESIDE_NEUTRAL, line,
        f"{line.where} brings a ground beside the neutral, which is bonded at `{target.name}`: "
        "the neutral current has two ways back",
        found=f"{line_text(line)}, ahead of the service disconnect",
        needed="the neutral alone, which is the way back for fault current here",
        change="Leave the ground out; where the utility or the authority asks for this wire, accept the finding "
        "with that reason.",
    )  # fmt: skip


@MISSING.check
def feeder_ground(view: View, line: Line) -> Iterator[Finding]:
    if not (line.medium or _no_ground_needed(view, line)):
        yield from _ground(view, line)


@MISSING.also("line")
def circuit_ground(view: View, line: Line) -> Iterator[Finding]:
    if not line.medium:
        yield from _ground(view, line)


def _no_ground_needed(view: View, line: Line) -> bool:
    """Service wires bring the neutral as the way back; direct-current plants and surge devices have their own rules."""
    maker = view.equipment(line.maker)
    kind = maker.kind if maker is not None else ""
    served = line.target is not None and "service-equipment" in line.target.body.flags
    if kind == "utility" and line.us and (line.guard is None or (served and line.wiring.neutral is not None)):
        return True  # the neutral is bonded at the service equipment (NEC 250.24(D), 250.142(A), from memory)
    if not line.us and own_electrode(line.target):
        return True  # its metal parts are earthed there (IEC 60364-4-41, 411.5.1)
    if not line.us and line.system.earthing.arrangement is Arrangement.TT and kind == "utility" and line.guard is None:
        return True
    return line.system.frequency_hz == 0


def _ground(view: View, line: Line) -> Iterator[Finding]:
    wiring = line.wiring
    raceway = line.body.raceway
    if wiring.ground is None:
        if "raceway-ground" in line.claims and raceway is not None and not raceway.named:
            if raceway.stuff in METAL_RACEWAYS:
                return
        elif wiring.cable and line.us and wiring.insulation in ("MC", "NM-B", "UF-B", "AC"):
            return  # such cables have one inside, or an armour that serves
        role = "G" if line.us else "PE"
        as_pen = () if line.us else _as_pen(view, line)
        yield about(
            view, MISSING, line,
            f"{line.where} brings no {'equipment ground' if line.us else 'protective conductor'}",
            found=f"{line_text(line)}, and nothing for fault current to come back on",
            needed=f"`+ {role}` with its size"
            + (", or `claim raceway-ground` where the raceway is EMT, RMC or IMC" if line.us else "")
            + (", or the neutral as `PEN`, up to where the two are parted" if as_pen else ""),
            change=f"Add `+ {role}` with its size" + (", or write the neutral as `+ PEN`." if as_pen else "."),
            fixes=(*as_pen, *_with_ground(view, line, role)),
        )  # fmt: skip
        return
    current = current_of(view, line)
    purpose = purpose_of(view, line, current)
    if purpose in (Purpose.SECONDARY, Purpose.SOURCE) and line.us and line.guard is None:
        if purpose is Purpose.SECONDARY:
            yield from _jumper(view, line)
        return
    if wiring.pen or line.guard is None:
        return
    if line.us:
        yield from _us_size(view, line, purpose)
    else:
        yield from _iec_size(view, line)


def _least(line: Line) -> Looked[str] | None:
    """The table's ground for the device, never larger than the wires (NEC 250.122(A))."""
    assert line.guard is not None
    found = equipment_ground(line.tables, line.guard.amps, line.wiring.metal)
    if isinstance(found, NotListed):
        return None
    if area_mm2(found.value) > area_mm2(line.wiring.size):
        return Looked(line.wiring.size, found.table, f"{found.row}, never larger than the wires", found.status)
    return found


def _us_size(view: View, line: Line, purpose: Purpose) -> Iterator[Finding]:
    wiring = line.wiring
    least = _least(line)
    if least is None or wiring.ground is None:
        return
    if area_mm2(wiring.ground) < area_mm2(least.value) * _SLACK:
        yield _small(view, line, least.value, str(least))
        return
    if line.laid is None or line.guard is None or len(wiring.temperatures_c) != 1 or line.shared:
        return
    if area_mm2(wiring.ground) >= area_mm2(wiring.size) * _SLACK:
        return
    current = current_of(view, line)
    needed = needed_size(view, line, current, purpose)
    if needed is None:
        return
    more = equipment_ground_enlarged(
        line.tables, line.guard.amps, wiring.metal, phase_needed=needed, phase_installed=wiring.size
    )
    if isinstance(more, NotListed) or area_mm2(wiring.ground) >= area_mm2(more.size.value) * _SLACK:
        return
    if area_mm2(wiring.ground) >= area_mm2(more.table_size.value) * more.ratio * _ROUNDED:
        return
    yield about(
        view, NOT_ENLARGED, line,
        f"{line.where}: {size_text(wiring.size)} where {size_text(needed)} would do, and the ground is still "
        f"{size_text(wiring.ground)}",
        found=f"ground {size_text(wiring.ground)}",
        needed=f"{size_text(more.size.value)}: {size_text(more.table_size.value)} by the device, "
        f"times {more.ratio:.2f}",
        change=f"Enlarge the ground to {size_text(more.size.value)}.",
        fixes=_ground_fix(line, more.size.value),
    )  # fmt: skip


def _iec_size(view: View, line: Line) -> Iterator[Finding]:
    wiring = line.wiring
    if wiring.ground is None:
        return
    least = protective_conductor(line.tables, wiring.size, material=wiring.metal)
    if isinstance(least, NotListed) or area_mm2(wiring.ground) >= least.least_mm2 * _SLACK:
        return
    yield _small(view, line, least.size.value, str(least.looked[0]))


def _small(view: View, line: Line, size: str, row: str) -> Finding:
    role = line.wiring.ground_role
    have, wires = size_text(line.wiring.ground or ""), f"{size_text(line.wiring.size)} wires"
    device = f"{line.guard.amps:g} A device" if line.guard is not None and line.us else wires
    return about(
        view, SMALL, line,
        f"the {role} of {line.where} is {have}; its {device} ask{'s' if line.us else ''} for {size_text(size)}",
        found=f"{role} {have}",
        needed=f"{size_text(size)} or larger ({row})",
        change=f"Make it {size_text(size)}" + (" in every set." if line.wiring.sets > 1 else "."),
        fixes=_ground_fix(line, size),
    )  # fmt: skip


def _jumper(view: View, line: Line) -> Iterator[Finding]:
    wiring = line.wiring
    if wiring.ground is None:
        return
    least = _jumper_beside(view, line)
    if least is None or area_mm2(wiring.ground) >= area_mm2(least.value) * _SLACK:
        return
    yield about(
        view, JUMPER, line,
        f"the bonding jumper of {line.where} is {size_text(wiring.ground)}; "
        f"{size_text(wiring.size)} {wiring.metal} asks for {size_text(least.value)}",
        found=f"G {size_text(wiring.ground)}",
        needed=str(least),
        change=f"Make it {size_text(least.value)}.",
        fixes=_ground_fix(line, least.value),
    )  # fmt: skip


def _ground_fix(line: Line, size: str) -> tuple[Fix, ...]:
    """The same wires with another ground."""
    return wires_fix(
        line, wires_text(line.wiring._replace(ground=size), iec=not line.us), f"Make the ground {size_text(size)}"
    )


def _as_pen(view: View, line: Line) -> tuple[Fix, ...]:
    """The neutral of a supply's own line as the PEN that its TN-C or TN-C-S asks for (IEC 60364-5-54, 543.4)."""
    maker, wiring = view.equipment(line.maker), line.wiring
    begins = maker is not None and (makes_system(maker) or maker.kind == "transformer")
    combined = line.system.earthing.arrangement in (Arrangement.TN_C, Arrangement.TN_C_S)
    if not begins or not combined or wiring.neutral is None:
        return ()
    if area_mm2(wiring.neutral) < LEAST_PEN_MM2.get(wiring.metal, math.inf) * _SLACK:
        return ()
    text = wires_text(wiring._replace(ground=wiring.neutral, ground_role="PEN"), iec=True)
    return wires_fix(line, text, f"Call the neutral what it is in this supply: `{text}`")


def _jumper_beside(view: View, line: Line) -> Looked[str] | None:
    """The table's bonding jumper beside a transformer's secondary wires, in each raceway; None elsewhere.

    In raceways in parallel each jumper follows the wires of its own raceway (NEC 250.102(C)(2)).
    """
    if purpose_of(view, line, current_of(view, line)) is not Purpose.SECONDARY:
        return None
    found = bonding_jumper(line.tables, line.wiring.size, 1, line.wiring.metal, line.wiring.metal)
    return None if isinstance(found, NotListed) else found


def _with_ground(view: View, line: Line, role: str) -> tuple[Fix, ...]:
    wiring = line.wiring._replace(ground=line.wiring.size, ground_role=role)
    if line.us:
        least = _least(line) if line.guard is not None else _jumper_beside(view, line)
        if least is None:
            return ()
        size = least.value
        if line.laid is not None and line.guard is not None and len(line.wiring.temperatures_c) == 1:
            current = current_of(view, line)
            found = choose(view, line, current, purpose_of(view, line, current), strict=True)
            if not isinstance(found, NotListed) and found[1].sets == line.wiring.sets:
                more = equipment_ground_enlarged(
                    line.tables, line.guard.amps, line.wiring.metal,
                    phase_needed=found[1].needed, phase_installed=line.wiring.size,
                )  # fmt: skip
                if not isinstance(more, NotListed) and area_mm2(more.size.value) > area_mm2(size):
                    size = more.size.value
        wiring = wiring._replace(ground=size)
    else:
        made = protective_conductor(line.tables, line.wiring.size, material=line.wiring.metal)
        if isinstance(made, NotListed):
            return ()
        wiring = wiring._replace(ground=made.size.value)
    text = wires_text(wiring, iec=not line.us)
    return wires_fix(line, text, f"Bring one along: `{text}`")
