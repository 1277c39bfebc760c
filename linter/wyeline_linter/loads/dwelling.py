"""The load of one dwelling unit as NEC 220 calculates it, from its floor area and the classes of its loads.

The standard method (Part III) gives each class its demand; the optional one (220.82) counts general loads together and
adds the larger of heating and cooling. What comes out are factors of the classes, so that sums above stay sums.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.demand_factors import cooking_demand_va, dryer_demand_va, dwelling_lighting_demand_va
from wyeline_linter.loads.as_given import CONSTANT_POWER, Given
from wyeline_linter.loads.buckets import CODE, CODE_SPLIT, TO_NEUTRAL, UNITS, VA, Key, Row, Rows, add_row
from wyeline_linter.loads.conductors_of_loads import INDEX, LEG_COUNT, NEUTRAL_AT
from wyeline_linter.loads.demand import kitchen_units
from wyeline_linter.loads.leaves import Leaf, leaf
from wyeline_linter.loads.nodes import Held, Sum
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.tables import NotListed
from wyeline_linter.tables.basis import Basis
from wyeline_linter.working import Step, number_text

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment
    from wyeline_linter.systems import System

FOOT2_M2 = 0.3048**2
GENERAL = frozenset({"lighting", "receptacle"})
"""Classes that the floor area and the small-appliance and laundry circuits stand for (NEC 220.41, 220.52)."""
COOKING, _DRYER, _APPLIANCE, _HEAT, _COOL, _PUMP = "kitchen", "dryer", "appliance", "heating", "cooling", "heat-pump"
CLIMATE = frozenset({_HEAT, _COOL, _PUMP})
_TO_NEUTRAL = frozenset({COOKING, _DRYER})
"""What loads the neutral with a share of its demand, on whatever legs it lies (NEC 220.61(B))."""
_APART = frozenset({"ev", "ups", "charger", "capacitor", "drive"})
"""Counted as elsewhere, beside what the optional method lumps together: chargers run for hours, all at once."""
_ROLES = GENERAL | _TO_NEUTRAL | CLIMATE | {_APPLIANCE}


class Dwelling(NamedTuple):
    """What a board says about the dwelling that it carries; ``area_m2`` None where it is not written."""

    optional: bool
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


def dwelling_of(equipment: Equipment, basis: Basis | None) -> Dwelling | None:
    """What the statement says; None for what is no dwelling, or where the basis has no such calculation."""
    body = equipment.body
    method = body.text("dwelling")
    if method not in ("standard", "optional") or basis is None or basis.practice != "us":
        return None
    small, laundry = body.number("small-appliance"), body.number("laundry")
    return Dwelling(
        method == "optional",
        body.number("floor-area"),
        2 if small is None else int(small),
        1 if laundry is None else int(laundry),
    )


def is_covered(leaf: Leaf) -> bool:
    """Whether a circuit that states no load needs none in a dwelling: the floor area stands for it."""
    given = leaf.given
    return given is not None and given.va is None and given.how == "none" and given.category in GENERAL


def general_leaf(
    name: str, dwelling: Dwelling, below: Sum, system: System, basis: Basis, share: float = 1.0
) -> Leaf | None:
    """The general load that the written circuits do not hold yet, on every leg to neutral; None where there is none.

    ``below`` runs at a ``share`` of its full value; the leaf is given in full."""
    general = dwelling.general_va(basis)
    if general is None:
        return None
    rows = [*below.rows.items(), *(item for held in below.held.values() for item in held.rows.items())]
    written = sum(row[CODE].real for key, row in rows if key.category in GENERAL and key.factor is None)
    rest = general - written / share
    if rest <= 1e-6 * general:
        return None
    legs = system.legs
    parts = tuple((INDEX[leg], NEUTRAL_AT, complex(rest / len(legs))) for leg in legs)
    given = Given(complex(rest), rest, "lighting", False, 1, False, CONSTANT_POWER, "dwelling")
    return leaf(name, "", given, legs, parts, system, None)


def calculate(dwelling: Dwelling, rows: Rows, basis: Basis) -> Calculated:
    """The calculation over all loads of a dwelling; ``rows`` hold its general load already."""
    va = {key: row[CODE].real or abs(row[VA]) for key, row in rows.items() if key.factor is None}
    sums = {role: sum(v for key, v in va.items() if key.category == role) for role in _ROLES}
    sums["general"] = sum(sums[role] for role in GENERAL)
    standard = _standard(dwelling, rows, sums, basis)
    if dwelling.optional:
        return _optional(rows, va, sums, standard, basis)
    return standard


def _standard(dwelling: Dwelling, rows: Rows, sums: dict[str, float], basis: Basis) -> Calculated:
    """NEC 220 Part III."""
    steps, counted, unknown = [_general_step(dwelling, sums["general"], basis)], dict[str, float](), list[str]()
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
        (_DRYER, dryer_demand_va, "T", "clothes dryers", "NEC 2023 220.54"),
    ):
        units = kitchen_units([row for key, row in rows.items() if key.category == role and key.factor is None])
        if not units:
            continue
        demand = ask(basis, units)
        if isinstance(demand, NotListed):
            unknown.append(demand.reason)
            counted[role] = sums[role]
            continue
        counted[role] = demand.value
        row_text = "; ".join(dict.fromkeys(step.factor.row for step in demand.steps)) or demand.note
        steps.append(
            Step(symbol, f"{name}, {number_text(sums[role])} VA", number_text(demand.value), demand.value, "VA",
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


def _larger(sums: dict[str, float], heating: float, cooling: float, heat_share: float) -> dict[str, float]:
    """VA that heating, cooling and heat pumps count with: of heating and cooling the larger alone."""
    warm = heating >= cooling
    return {_PUMP: sums[_PUMP], _HEAT: heat_share * sums[_HEAT] if warm else 0.0, _COOL: 0.0 if warm else sums[_COOL]}


def _summed(
    steps: list[Step], rows: Rows, factors: dict[Key, float], neutral: dict[Key, float], unknown: tuple[str, ...]
) -> Calculated:
    """The sum of the lines, with what no line of the method holds."""
    counted = sum(factors[key] * (row[CODE].real or abs(row[VA])) for key, row in rows.items() if key in factors)
    lines = [step for step in steps if step.symbol != "G" and step.symbol != "N"]
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


def all_dwellings(
    equipment: Iterable[Equipment], basis: Basis | None, below: Callable[[str], Iterable[str]]
) -> tuple[frozenset[str], frozenset[str]]:
    """The boards that carry a dwelling, and all that lies within one, themselves included."""
    found = frozenset(item.name for item in equipment if dwelling_of(item, basis) is not None)
    return found, frozenset(inside for name in found for inside in below(name))


def as_dwelling(
    board: Equipment,
    basis: Basis | None,
    leaves: tuple[Leaf, ...],
    below: Sum,
    system: System | None,
    counting: Callable[[Sum], Rows],
    share: float,
) -> tuple[tuple[Leaf, ...], Sum, dict[Key, Key]]:
    """The loads of a dwelling with its general load among its leaves, its factors on all of them, and which kind of
    load has become which. ``counting`` leaves out what others run in place of; ``share`` is that of its full load at
    which it runs in a switch state."""
    dwelling, name = dwelling_of(board, basis), board.name
    if dwelling is None or basis is None or not share:
        return leaves, below, {}
    below = below.copy()
    lacks: tuple[str, ...] = () if dwelling.area_m2 is not None else (f"`{name}` gives no floor-area",)
    if system is None or not system.legs:
        lacks += (f"the voltage at `{name}` is not known",)
    elif not system.has_neutral:
        lacks += (f"`{name}` has no neutral for its lighting and receptacles",)
    if lacks or system is None:
        below.unknown = merge_reasons(below.unknown, lacks)
        below.unknown_code = merge_reasons(below.unknown_code, lacks)
        return leaves, below, {}
    general = general_leaf(name, dwelling, below, system, basis, share)
    if general is not None:
        leaves = (*leaves, general)
        added = Sum()
        added.add_leaf(general, alone=False)
        below.add(added if share == 1.0 else added.at_share(share))
    made = below.copy()
    found = calculate(dwelling, counting(below), basis)
    became = {
        key: Key(
            key.category,
            key.continuous and key.category not in _ROLES,
            factor,
            key.nameplate,
            dwelling=True,
            together=key.category != found.smaller,
            third=key.third,
        )
        for key, factor in found.factors.items()
    }

    def counted(old: Rows) -> Rows:
        new: Rows = {}
        for key, row in old.items():
            if key in became:
                add_row(new, became[key], _neutral_by_part_iii(key, row, found, basis))
            else:
                add_row(new, key, row)
        return new

    made.rows = counted(below.rows)
    made.held = {n: Held(counted(held.rows), held.largest, held.va) for n, held in below.held.items()}
    made.factored = merge_reasons(below.factored, (name,))
    made.unknown = merge_reasons(below.unknown, found.unknown)
    return leaves, made, became


def _neutral_by_part_iii(key: Key, row: Row, found: Calculated, basis: Basis) -> Row:
    """The row with what it puts on the neutral: by the standard method also where the optional one is taken."""
    factor, standard = found.factors[key], found.neutral.get(key, 1.0)
    if not factor or (factor == standard and key.category not in _TO_NEUTRAL):
        return row
    made, ratio, source = list(row), standard / factor, TO_NEUTRAL
    if key.category in _TO_NEUTRAL:
        ratio, source = ratio * basis.value_of("dwelling-neutral-percent") / 100, CODE_SPLIT
    for k in range(LEG_COUNT):
        made[TO_NEUTRAL + k] = ratio * row[source + k]
    return made


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
        if key.factor is None and key.category in _ROLES
    ]


def _units(rows: Rows, roles: set[str]) -> float:
    return sum(row[UNITS].real for key, row in rows.items() if key.category in roles and key.factor is None)
