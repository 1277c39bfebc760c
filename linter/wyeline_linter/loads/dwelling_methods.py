"""The load of a dwelling unit by the methods of NEC 220, from the sums of its classes of load.

The standard method (Part III) gives each class its demand; the optional one (220.82) counts general loads together and
adds the larger of heating and cooling, as that of an existing dwelling does (220.83). What comes out are factors of the
classes, so that sums above stay sums.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from wyeline_linter.demand_factors import cooking_demand_va, dryer_demand_va, dwelling_lighting_demand_va
from wyeline_linter.loads.buckets import CODE, UNITS, VA, Key, Rows
from wyeline_linter.loads.demand import kitchen_units
from wyeline_linter.tables import NotListed
from wyeline_linter.tables.basis import Basis
from wyeline_linter.working import Step, number_text

METHODS = ("standard", "optional", "existing")
THREE_WIRES = {"optional": "220.82(A)", "existing": "220.83"}
"""Methods that hold for supplies of two legs and a neutral only, with the clause that says so."""
FOOT2_M2 = 0.3048**2
GENERAL = frozenset({"lighting", "receptacle"})
"""Classes that the floor area and the small-appliance and laundry circuits stand for (NEC 220.41, 220.52)."""
COOKING, DRYER, _APPLIANCE, _HEAT, _COOL, _PUMP = "kitchen", "dryer", "appliance", "heating", "cooling", "heat-pump"
CLIMATE = frozenset({_HEAT, _COOL, _PUMP})
PARTLY_TO_NEUTRAL = frozenset({COOKING, DRYER})
"""What loads the neutral with a share of its demand, on whatever legs it lies (NEC 220.61(B))."""
_APART = frozenset({"ev", "ups", "charger", "capacitor", "drive"})
"""Counted as elsewhere, beside what the optional method lumps together: chargers run for hours, all at once."""
ROLES = GENERAL | PARTLY_TO_NEUTRAL | CLIMATE | {_APPLIANCE}


class Dwelling(NamedTuple):
    """What a board says about the dwelling that it carries; ``method`` is `standard`, `optional` or `existing`, and
    ``area_m2`` None where it is not written."""

    method: str
    area_m2: float | None
    small_appliance: int
    laundry: int

    def general_va(self, basis: Basis) -> float | None:
        """General lighting by the floor area, with the small-appliance and laundry circuits, VA."""
        if self.area_m2 is None:
            return None
        circuits = self.small_appliance + self.laundry
        per_foot2, per_circuit = basis.value_of("dwelling-unit-load"), basis.value_of("small-appliance-load")
        return self.area_m2 / FOOT2_M2 * per_foot2 + circuits * per_circuit


class Calculated(NamedTuple):
    """The calculation: VA of every line with its working, the total, and the factor of each kind of load; ``neutral``
    is the factor by which a kind loads the neutral (always that of the standard method). ``smaller`` is the class, of
    heating and cooling, whose nameplates are less."""

    steps: tuple[Step, ...]
    total_va: float
    factors: dict[Key, float]
    neutral: dict[Key, float]
    unknown: tuple[str, ...] = ()
    smaller: str = ""


def adds_climate(new: Rows) -> bool:
    """Whether heating or cooling is among the loads that are new (NEC 220.83(B))."""
    return any(key.category in CLIMATE and row[VA] for key, row in new.items())


def calculate(dwelling: Dwelling, rows: Rows, basis: Basis, *, climate_added: bool = False) -> Calculated:
    """The calculation over all loads of a dwelling; ``rows`` hold its general load already. ``climate_added``: heating
    or cooling is added to an existing one."""
    va = {key: row[CODE].real or abs(row[VA]) for key, row in rows.items() if key.factor is None}
    sums = _sums(va)
    standard = _standard(_general_step(dwelling, sums["general"], basis), rows, sums, basis)
    if dwelling.method == "existing":
        return _existing(rows, va, sums, standard, basis, climate_added)
    if dwelling.method == "optional":
        return _optional(rows, va, sums, standard, basis)
    return standard


def part_iii_of_several(rows: Rows, units: int, basis: Basis, fullest: Mapping[str, list[float]]) -> Calculated:
    """NEC 220 Part III over the loads of several dwellings together; ``rows`` hold each without its own factor.

    ``fullest``: on three legs and a neutral, VA of each range and dryer between the two legs that have most of them."""
    sums = _sums({key: row[CODE].real or abs(row[VA]) for key, row in rows.items() if key.factor is None})
    name = f"general lighting, small-appliance and laundry circuits of {units} dwellings"
    first = Step("G", name, number_text(sums["general"]), sums["general"], "VA", "NEC 2023 220.41, 220.52")
    return _standard(first, rows, sums, basis, fullest)


def _sums(va: dict[Key, float]) -> dict[str, float]:
    sums = {role: sum(v for key, v in va.items() if key.category == role) for role in ROLES}
    sums["general"] = sum(sums[role] for role in GENERAL)
    return sums


def _standard(
    first: Step, rows: Rows, sums: dict[str, float], basis: Basis, fullest: Mapping[str, list[float]] | None = None
) -> Calculated:
    """NEC 220 Part III; ``first`` is the line of the general load."""
    steps, counted, unknown = [first], dict[str, float](), list[str]()
    found = dwelling_lighting_demand_va(basis, sums["general"])
    if isinstance(found, NotListed):
        unknown.append(found.reason)
        counted["general"] = sums["general"]
    else:
        counted["general"] = found.value
        tiers = " + ".join(f"{number_text(s.amount)} * {number_text(s.factor.value / 100)}" for s in found.steps)
        steps.append(Step("D", "general load after demand", tiers, found.value, "VA", "NEC 2023 Table 220.45"))
    for role, ask, symbol, name, source in (
        (COOKING, cooking_demand_va, "C", "cooking appliances", "NEC 2023 Table 220.55"),
        (DRYER, dryer_demand_va, "T", "clothes dryers", "NEC 2023 220.54"),
    ):
        units = kitchen_units([row for key, row in rows.items() if key.category == role and key.factor is None])
        if not units:
            continue
        between = fullest.get(role) if fullest is not None and len(units) > 1 else None
        demand = ask(basis, units if between is None else [*between, *between])
        if isinstance(demand, NotListed):
            unknown.append(demand.reason)
            counted[role] = sums[role]
            continue
        value, formula = demand.value, number_text(demand.value)
        if between is not None:
            value, formula = 1.5 * value, f"3 / 2 * {formula}"
            name += f", as three legs of twice the {len(between)} between the two that have most"
        counted[role] = value
        row_text = "; ".join(dict.fromkeys(step.factor.row for step in demand.steps)) or demand.note
        steps.append(
            Step(symbol, f"{name}, {number_text(sums[role])} VA", formula, value, "VA",
                 f"{source}: {row_text}" if row_text else source)
        )  # fmt: skip
    number = _units(rows, {_APPLIANCE})
    if number:
        reduced = number >= basis.value_of("appliances-from")
        share = basis.value_of("appliances-percent") / 100 if reduced else 1.0
        counted[_APPLIANCE] = sums[_APPLIANCE] * share
        formula = number_text(sums[_APPLIANCE]) + (f" * {number_text(share)}" if reduced else "")
        steps.append(
            Step("F", f"{number:g} appliances fastened in place", formula, counted[_APPLIANCE], "VA", "NEC 2023 220.53")
        )
    cooling, heating = sums[_COOL] + sums[_PUMP], sums[_HEAT] + sums[_PUMP]
    counted |= _larger(sums, heating, cooling, 1.0)
    if heating or cooling:
        formula = f"max({number_text(heating)}, {number_text(cooling)})"
        name = "the larger of heating and air conditioning"
        steps.append(Step("H", name, formula, max(heating, cooling), "VA", "NEC 2023 220.51, 220.60"))
    factors = {key: counted[role] / sums[role] for key, role in _by_role(rows) if sums[role]}
    smaller = _COOL if heating >= cooling else _HEAT
    return _summed(steps, rows, factors, factors, tuple(unknown))._replace(smaller=smaller)


def _optional(
    rows: Rows, va: dict[Key, float], sums: dict[str, float], standard: Calculated, basis: Basis
) -> Calculated:
    """NEC 220.82."""
    steps = [standard.steps[0]]
    lumped = [key for key in va if key.category not in CLIMATE and key.category not in _APART]
    total = sum(va[key] for key in lumped)
    nameplates = total - sums["general"]
    steps.append(Step("N", "appliances and motors by their nameplates", number_text(nameplates), nameplates, "VA",
                      "NEC 2023 220.82(B)"))  # fmt: skip
    first, rest = basis.value_of("optional-first"), basis.value_of("optional-rest-percent") / 100
    whole = min(total, first)
    counted = whole + rest * (total - whole)
    formula = f"{number_text(whole)} + {number_text(rest)} * ({number_text(total)} - {number_text(whole)})"
    steps.append(Step("D", "general loads after demand", formula, counted, "VA", "NEC 2023 220.82(B)"))
    factors = {key: counted / total for key in lumped if total}
    units = _units(rows, {_HEAT})
    many = units >= basis.value_of("optional-rooms-from") and not sums[_PUMP]
    share = basis.value_of("optional-rooms-percent" if many else "optional-heat-percent") / 100
    heating, cooling = share * sums[_HEAT] + sums[_PUMP], sums[_COOL] + sums[_PUMP]
    by_role = _larger(sums, heating, cooling, share)
    if heating or cooling:
        pump = f"{number_text(sums[_PUMP])} + " if sums[_PUMP] else ""
        formula = f"max({pump}{number_text(share)} * {number_text(sums[_HEAT])}, {number_text(cooling)})"
        name = "the larger of heating and air conditioning"
        if sums[_HEAT]:
            name += f" ({units:g} heating unit{'s' if units != 1 else ''}: {100 * share:g} %)"
        steps.append(Step("H", name, formula, max(heating, cooling), "VA", "NEC 2023 220.82(C)"))
    for key in va:
        if key.category in by_role and sums[key.category]:
            factors[key] = by_role[key.category] / sums[key.category]
    made = _summed(steps, rows, factors, standard.neutral, standard.unknown)
    return made._replace(smaller=standard.smaller)


def _existing(
    rows: Rows, va: dict[Key, float], sums: dict[str, float], standard: Calculated, basis: Basis, climate_added: bool
) -> Calculated:
    """NEC 220.83. Where no heating or cooling is added, (A) names none: the larger of what is there counts among the
    other loads (a reading, from memory), and so do four or more separately controlled heating units by (B)."""
    clause = f"NEC 2023 220.83({'B' if climate_added else 'A'})"
    heating, cooling = sums[_HEAT] + sums[_PUMP], sums[_COOL] + sums[_PUMP]
    warm, units = heating >= cooling, _units(rows, {_HEAT})
    rooms = warm and not sums[_PUMP] and units >= basis.value_of("optional-rooms-from")
    counts = {role for role in CLIMATE if role != (_COOL if warm else _HEAT)}
    among_others = counts if rooms or not climate_added else set[str]()
    lumped = [key for key in va if key.category not in _APART and key.category not in CLIMATE - among_others]
    total = sum(va[key] for key in lumped)
    climate = sum(sums[role] for role in among_others)
    nameplates = total - climate - sums["general"]
    steps = [standard.steps[0]]
    steps.append(
        Step("N", "appliances and motors by their nameplates", number_text(nameplates), nameplates, "VA", clause)
    )
    if climate:
        name = "the larger of heating and air conditioning"
        name += f", {units:g} separately controlled units, among the others" if rooms else ", none of it new"
        steps.append(Step("N2", name, f"max({number_text(heating)}, {number_text(cooling)})", climate, "VA", clause))
    first, rest = basis.value_of("existing-first"), basis.value_of("existing-rest-percent") / 100
    whole = min(total, first)
    counted = whole + rest * (total - whole)
    formula = f"{number_text(whole)} + {number_text(rest)} * ({number_text(total)} - {number_text(whole)})"
    steps.append(Step("D", "existing and new loads after demand", formula, counted, "VA", clause))
    factors = {key: counted / total for key in lumped if total}
    factors |= {key: 0.0 for key in va if key.category in CLIMATE - counts}
    apart = counts - among_others
    if any(sums[role] for role in apart):
        factors |= {key: 1.0 for key in va if key.category in apart}
        name = "the larger of heating and air conditioning, some of it new"
        formula = f"max({number_text(heating)}, {number_text(cooling)})"
        steps.append(Step("H", name, formula, max(heating, cooling), "VA", clause))
    made = _summed(steps, rows, factors, standard.neutral, standard.unknown)
    return made._replace(smaller=standard.smaller)


def _larger(sums: dict[str, float], heating: float, cooling: float, heat_share: float) -> dict[str, float]:
    """VA that heating, cooling and heat pumps count with: of heating and cooling the larger alone."""
    warm = heating >= cooling
    return {_PUMP: sums[_PUMP], _HEAT: heat_share * sums[_HEAT] if warm else 0.0, _COOL: 0.0 if warm else sums[_COOL]}


_BETWEEN = frozenset({"G", "N", "N2"})
"""Lines that go into one further down."""


def _summed(
    steps: list[Step], rows: Rows, factors: dict[Key, float], neutral: dict[Key, float], unknown: tuple[str, ...]
) -> Calculated:
    """The sum of the lines, with what no line of the method holds."""
    counted = sum(factors[key] * (row[CODE].real or abs(row[VA])) for key, row in rows.items() if key in factors)
    lines = [step for step in steps if step.symbol not in _BETWEEN]
    others = {
        key: (1.0 if key.factor is None else key.factor) * (row[CODE].real or abs(row[VA]))
        for key, row in rows.items()
        if key not in factors
    }
    other = sum(others.values())
    if other:
        name = f"other loads: {', '.join(sorted({key.category for key in others}))}"
        lines.append(Step("O", name, number_text(other), other, "VA", "as written, with stated factors"))
        steps = [*steps, lines[-1]]
    total_va, formula = counted + other, " + ".join(step.symbol for step in lines)
    total = Step("S0", "calculated load of the dwelling", formula, total_va, "VA")
    return Calculated((*steps, total), total_va, factors, neutral, unknown)


def _general_step(dwelling: Dwelling, general_va: float, basis: Basis) -> Step:
    per_foot2, per_circuit = basis.value_of("dwelling-unit-load"), basis.value_of("small-appliance-load")
    foot2 = (dwelling.area_m2 or 0.0) / FOOT2_M2
    formula = (
        f"{number_text(per_foot2)} * {number_text(foot2)} + {number_text(per_circuit)} * {dwelling.small_appliance} + "
        f"{number_text(per_circuit)} * {dwelling.laundry}"
    )
    name = f"general lighting of {number_text(foot2)} ft2, small-appliance and laundry circuits"
    asked = dwelling.general_va(basis) or 0.0
    if general_va > asked * (1 + 1e-6):
        formula, name = number_text(general_va), f"lighting and receptacle circuits as written, above {name}"
    elif general_va < asked * (1 - 1e-6):
        formula, name = number_text(general_va), f"{name}, at their share in this switch state"
    return Step("G", name, formula, general_va, "VA", "NEC 2023 220.41, 220.52")


def _by_role(rows: Rows) -> list[tuple[Key, str]]:
    """Kinds of load that the standard method has a line for, with that line."""
    return [
        (key, "general" if key.category in GENERAL else key.category)
        for key in rows
        if key.factor is None and key.category in ROLES
    ]


def _units(rows: Rows, roles: set[str]) -> float:
    return sum(row[UNITS].real for key, row in rows.items() if key.category in roles and key.factor is None)
