"""Impedances behind utilities, generators and inverters from their data, or what is missing of it."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from wyeline_grammar.linking import Equipment
from wyeline_grammar.model import Body, Fact
from wyeline_grammar.notation import VoltageForm
from wyeline_linter.circuit import iec60909
from wyeline_linter.circuit.nameplate import from_magnitude, utility_z0
from wyeline_linter.studies.case import Assumption, Case, Lack, Missing
from wyeline_linter.studies.transformer_impedance import x_over_r
from wyeline_linter.systems import System

SQRT3 = math.sqrt(3.0)
USUAL_TOLERANCE = 0.06
"""How far above nominal low voltage stands at the most where nobody states a ``range``, as a part of it (IEC 60909-0
Table 1 has +6 % and +10 %); sheets and the list of assumptions say so."""
ASSUMED_IEC_R_OVER_X = 0.1
"""R/X of a network feeder of which only the fault power is known (IEC 60909-0, 6.2; from memory)."""


TURNING = frozenset({"utility", "generator"})
"""Sources that no control holds to a current."""


@dataclass(slots=True)
class SourceData:
    """What stands behind a source's terminals, in ohm: a phase of three, or the loop of a two-wire source.

    ``z1`` is None where it cannot be told. ``z_middle`` lies in the neutral of a high-leg supply, before its terminal.
    ``ceiling`` says that it was taken as unlimited.
    """

    z1: complex | None = None
    z2: complex | None = None
    z0: complex | None = None
    z_middle: complex = 0j
    ceiling: bool = False
    missing: list[Missing] = field(default_factory=list)
    assumed: list[Assumption] = field(default_factory=list)


def line_v(system: System) -> float:
    """Nominal volts between the two outermost conductors of a source, as written."""
    return system.nominal.line_v


def is_three_phase(system: System) -> bool:
    """Whether three legs leave it."""
    return len(system.legs) == 3


def rated_current_a(equipment: Equipment, system: System) -> float | None:
    """Rated current of a machine or converter from its VA, its W over its power factor, or its amperes."""
    body = equipment.body
    fact = body.facts.get("power")
    if fact is None or not isinstance(fact.value.data, float | int):
        return body.number("rating")
    va = fact.number
    if fact.value.dimension == "power":
        pf = body.number("pf")
        va = va / pf if pf else va
    return va / (SQRT3 if is_three_phase(system) else 1.0) / line_v(system)


def is_unlimited(equipment: Equipment) -> bool:
    """Whether the writer chose to take the supply as unlimited."""
    return "infinite" in equipment.body.flags or equipment.body.text("fault") == "infinite"


def source_data(
    equipment: Equipment, system: System, case: Case, practice: str | None, tolerance: float = USUAL_TOLERANCE
) -> SourceData:
    """What a source shows in a case; ``tolerance`` is that of its system, from :func:`tolerance_of`. A load flow holds
    the terminal voltage, so ``z1`` is 0 there. A converter holds that of each leg, whatever the legs draw, up to its
    limit (within some percent, IEC 62040-3; from memory): nothing of the impedance that stands for its limit in a
    fault counts there."""
    if equipment.kind == "utility":
        found = _utility(equipment, system, case, practice, tolerance)
    elif equipment.kind == "generator":
        found = _generator(equipment, system, case, practice, tolerance)
    else:
        found = converter_data(equipment, system)
    if case is Case.FLOW:
        found.missing = []
        found.z1 = found.z_middle = 0j
        turning = equipment.kind in TURNING
        found.z2, found.z0 = (found.z2 or 0j, found.z0 or 0j) if turning else (0j, 0j)
    return found


def tolerance_of(equipment: Equipment, declared: Body | None) -> float | None:
    """How far above nominal the voltage of a system may stand, as a part of it: the ``range`` of the utility that
    gives it, or of the declared system that is made; None where neither states one."""
    own = equipment.body if equipment.kind == "utility" else None
    for body in (own, declared):
        fact = body.facts.get("range") if body is not None else None
        if fact is not None and isinstance(fact.value.data, tuple):
            return round(float(fact.value.data[1]) - 1.0, 9)
    return None


def _amperes(fact: Fact, system: System) -> float:
    if fact.value.dimension == "current":
        return fact.number
    return fact.number / (SQRT3 if is_three_phase(system) else 1.0) / line_v(system)


def _utility(equipment: Equipment, system: System, case: Case, practice: str | None, tolerance: float) -> SourceData:
    found = SourceData()
    if is_unlimited(equipment) and case is Case.MAX:
        found.z1 = found.z2 = found.z0 = 0j
        found.ceiling = True
        text = f"`{equipment.name}` is unlimited: a ceiling for the largest fault"
        found.assumed.append(Assumption(equipment.name, text, equipment.place))
        return found
    level = _fault_level(found, equipment, case)
    ratio = _utility_x_over_r(found, equipment, practice)
    if level is None or ratio is None:
        return found
    c_of = voltage_factor(case, practice, system, tolerance)
    found.z1 = found.z2 = found.z0 = _loop(line_v(system), _amperes(level, system), ratio, c_of, system)
    if system.has_neutral or system.earth is not None or system.earthing.conductor is not None:
        _fit_earth(found, equipment, system, case, ratio, c_of)
    return found


def _fault_level(found: SourceData, equipment: Equipment, case: Case) -> Fact | None:
    """The fault level that a case wants, as the utility states it; where it does not, that is noted as missing."""
    name = equipment.name
    wanted, weakest = _strongest(equipment), equipment.body.facts.get("fault-min")
    if case is Case.MIN or (case is Case.START and weakest is not None):
        wanted = weakest
    if wanted is None:
        lack, word, needed = (
            (Lack.SMALLEST, "smallest fault level (fault-min)", "`fault-min` from the utility's letter")
            if case is Case.MIN
            else (Lack.SOURCE, "fault level (fault)", "`fault` from the utility's letter")
        )
        found.missing.append(Missing(lack, name, f"`{name}` states no {word}", equipment.place, needed))
    elif wanted.assumed:
        text = f"{wanted.name} of `{name}`, {wanted.value.text}"
        found.assumed.append(Assumption(name, text, equipment.place_of(wanted.name), written=True))
    return wanted


def _strongest(equipment: Equipment) -> Fact | None:
    fact = equipment.body.facts.get("fault")
    return fact if fact is not None and isinstance(fact.value.data, float | int) else None


def _utility_x_over_r(found: SourceData, equipment: Equipment, practice: str | None) -> float | None:
    name, ratio = equipment.name, x_over_r(equipment.body)
    if ratio is None and practice == "iec":
        found.assumed.append(Assumption(name, f"r/x {ASSUMED_IEC_R_OVER_X:g} of `{name}`", equipment.place))
        return 1 / ASSUMED_IEC_R_OVER_X
    if ratio is None:
        text = f"`{name}` states no x/r"
        found.missing.append(Missing(Lack.SOURCE, name, text, equipment.place, "`x/r` from the utility's letter"))
    return ratio


def _fit_earth(found: SourceData, equipment: Equipment, system: System, case: Case, ratio: float, c_of: float) -> None:
    """Zero-sequence impedance, or that of the middle, from ``fault-lg`` where the utility states it."""
    name, ground, strongest = equipment.name, equipment.body.facts.get("fault-lg"), _strongest(equipment)
    largest = None if strongest is None else _loop(line_v(system), _amperes(strongest, system), ratio, c_of, system)
    if system.nominal.form is VoltageForm.HIGH_LEG4:
        _fit_middle(found, equipment, system, case, largest, ratio, c_of)
    elif ground is None or largest is None:
        text = f"the usual split of impedance between the halves of `{name}` (no fault-lg)"
        if is_three_phase(system):
            text = f"an earth fault at `{name}` as strong as three legs together (no fault-lg)"
        else:
            found.z0 = None
        found.assumed.append(Assumption(name, text, equipment.place))
    elif is_three_phase(system):
        try:
            found.z0 = utility_z0(line_v(system), _amperes(ground, system), largest, c_factor=c_of)
        except ValueError as trouble:
            found.z0 = None
            place = equipment.place_of("fault-lg")
            found.missing.append(Missing(Lack.EARTH, name, f"`{name}`: {trouble}", place, "two figures that agree"))
    else:
        volts = min(system.distance(leg, "N") for leg in system.legs) if system.has_neutral else line_v(system)
        found.z0 = from_magnitude(volts / _amperes(ground, system), ratio)


def _fit_middle(
    found: SourceData,
    equipment: Equipment,
    system: System,
    case: Case,
    top: complex | None,
    ratio: float,
    c: float,
) -> None:
    """Impedance in the neutral of a high-leg supply, from ``fault-lg`` or from the usual bank.

    A fault of a half sees ``z1 / 2`` through a perfect middle. Three equal units in delta, one of them centre-tapped
    with 1.5 R and 1.2 X of its whole winding (Kersting), add 0.375 R + j 0.15 X, the rest of 3 z1 (1.5 R, 1.2 X) / 4.
    A larger unit for light would add less: the largest faults keep the perfect middle where nobody says better.
    """
    ground, name = equipment.body.facts.get("fault-lg"), equipment.name
    assert found.z1 is not None
    usual = 0j if case is Case.MAX else complex(0.375 * found.z1.real, 0.15 * found.z1.imag)
    if ground is None or top is None:
        why = "no fault-lg" if ground is None else "fault-lg needs `fault` beside it"
        if case is Case.MAX:
            text = (
                f"the middle of `{name}` without an impedance of its own: its largest faults to neutral come out high"
            )
            settled = (
                f"; half the volts over half of Z1 is 1.73 times `fault`{_bound_text(found, system, c)}, the most "
            )
            settled += "that any bank can give; `fault-lg`, the utility's figure from a leg to neutral, settles it"
        else:
            text = f"`{name}` as three equal units in delta, with the usual impedance of their middle"
            settled = ""
        found.z_middle = usual
        found.assumed.append(Assumption(name, f"{text} ({why}){settled}", equipment.place))
        return
    volts = min(system.distance(leg, "N") for leg in system.legs)
    found.z_middle = from_magnitude(c * volts / _amperes(ground, system), ratio) - top / 2
    if found.z_middle.real < 0 or found.z_middle.imag < 0:
        found.z_middle = usual
        text = f"`{name}`: fault-lg is more than its fault level can give from a leg to the middle"
        place = equipment.place_of("fault-lg")
        found.missing.append(Missing(Lack.EARTH, name, text, place, "two figures that agree"))


def _bound_text(found: SourceData, system: System, c: float) -> str:
    """The fault from a leg to a middle without impedance, such as `, 17.3 kA`."""
    if not found.z1:
        return ""
    volts = min(system.distance(leg, "N") for leg in system.legs)
    return f", {c * volts / abs(found.z1 / 2) / 1e3:.3g} kA"


def _loop(volts: float, amperes: float, ratio: float, c: float, system: System) -> complex:
    share = SQRT3 if is_three_phase(system) else 1.0
    return from_magnitude(c * volts / (share * amperes), ratio)


def voltage_factor(case: Case, practice: str | None, system: System, tolerance: float) -> float:
    """Voltage factor c of IEC 60909-0 Table 1 in a system; 1 in other practice."""
    if practice != "iec":
        return 1.0
    volts = line_v(system)
    return iec60909.c_min(volts, tolerance) if case is Case.MIN else iec60909.c_max(volts, tolerance)


def _generator(equipment: Equipment, system: System, case: Case, practice: str | None, tolerance: float) -> SourceData:
    body, name, place = equipment.body, equipment.name, equipment.place
    found = SourceData()
    rated = rated_current_a(equipment, system)
    ratio = x_over_r(body)
    subtransient, transient = body.number("subtransient"), body.number("transient")
    sustained = body.number("sustained")

    def lacks(what: str, needed: str, lack: Lack = Lack.SOURCE) -> None:
        found.missing.append(Missing(lack, name, f"`{name}` states no {what}", place, needed))

    if rated is None:
        lacks("rating", "its kVA")
    if ratio is None:
        lacks("x/r", "`x/r` of the machine")
    if subtransient is None:
        lacks("subtransient reactance", "`subtransient`, such as `subtransient 12 %`")
    if case is Case.MIN and sustained is None:
        lacks("sustained fault current", "`sustained`, such as `sustained 3 pu`", Lack.SMALLEST)
    if case is Case.START and transient is None:
        lacks("transient reactance", "`transient`, such as `transient 20 %`")
    if rated is None or ratio is None or subtransient is None or found.missing:
        return found
    volts = line_v(system)
    base = volts / ((SQRT3 if is_three_phase(system) else 1.0) * rated)
    pf = body.number("pf") or 0.8
    k_g = 1.0
    if practice == "iec" and case is not Case.START:
        c = voltage_factor(Case.MAX, practice, system, tolerance)
        k_g = iec60909.generator_factor(volts, volts, c, subtransient, math.sqrt(1 - pf * pf))
    reactance = {Case.MIN: 1 / sustained if sustained else subtransient, Case.START: transient}.get(case, subtransient)
    assert reactance is not None
    r = subtransient / ratio * base
    found.z1 = complex(r, reactance * base) * k_g
    x2, x0 = body.number("x2"), body.number("x0")
    found.z2 = complex(r, (subtransient if x2 is None else x2) * base) * k_g
    if x2 is None:
        found.assumed.append(Assumption(name, f"x2 of `{name}` equal to its subtransient reactance", place))
    if x0 is not None:
        found.z0 = complex(r, x0 * base) * k_g
    elif is_three_phase(system) and drives_neutral(system):
        text = f"`{name}` states no zero-sequence reactance (x0)"
        found.missing.append(Missing(Lack.EARTH, name, text, place, "`x0`, such as `x0 5 %`"))
    for key in ("subtransient", "transient", "x2", "x0", "x/r", "r/x", "sustained"):
        if key in body.facts and body.facts[key].assumed:
            text = f"{key} of `{name}`, {body.facts[key].value.text}"
            found.assumed.append(Assumption(name, text, equipment.place_of(key), written=True))
    return found


def converter_limit_a(equipment: Equipment, system: System) -> float | None:
    """The current that an inverter or UPS feeds into a fault, in ampere; None where not stated."""
    for key in ("sustained", "limit"):
        fact = equipment.body.facts.get(key)
        if fact is None or not isinstance(fact.value.data, float | int):
            continue
        if fact.value.dimension == "current":
            return fact.number
        rated = rated_current_a(equipment, system)
        return None if rated is None else fact.number * rated
    return None


def converter_data(equipment: Equipment, system: System) -> SourceData:
    """A converter that holds its voltage up to its current limit, then that current: the impedance that gives it."""
    found = SourceData()
    limit = converter_limit_a(equipment, system)
    if limit is None:
        needed = "`sustained` or `limit`, such as `sustained 2 pu`"
        text = f"`{equipment.name}` states no fault current (sustained, or limit) or no rating for it"
        found.missing.append(Missing(Lack.SOURCE, equipment.name, text, equipment.place, needed))
        return found
    size = line_v(system) / ((SQRT3 if is_three_phase(system) else 1.0) * limit)
    found.z1 = found.z2 = complex(0.0, size)
    # Its control limits each leg alike, whatever conductors a fault joins (common practice, no source).
    found.z0 = found.z1 if is_three_phase(system) else complex(0.0, size / 2)
    return found


def drives_neutral(system: System) -> bool:
    """Whether a source brings out or earths a star point, so that zero-sequence current can flow."""
    return system.has_neutral or system.earthing.conductor == "N"
