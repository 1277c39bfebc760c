"""Working sheets of loads: each figure replayed for one piece of equipment or one circuit, number by number."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Place
from wyeline_grammar.model import Body
from wyeline_grammar.units import HORSEPOWER_W
from wyeline_linter.claims import DWELLING
from wyeline_linter.loads import measured_sheets
from wyeline_linter.loads.as_given import table_current_a, usual_pf
from wyeline_linter.loads.balance import unbalance
from wyeline_linter.loads.buckets import CODE, VA, Key, Largest, Row, Rows
from wyeline_linter.loads.coincidence import left_out
from wyeline_linter.loads.conductors_of_loads import INDEX
from wyeline_linter.loads.demand import NO_BASIS, Counted, added_to, sizing_factors
from wyeline_linter.loads.dwelling import dwelling_of
from wyeline_linter.loads.dwelling_methods import adds_climate, calculate
from wyeline_linter.loads.dwellings_together import carries_several, steps_of, together_of
from wyeline_linter.loads.leaves import MEASURED, Leaf
from wyeline_linter.loads.leg_sheets import by_leg, of_one_load, third_step, worst_alone
from wyeline_linter.loads.measured import new_of
from wyeline_linter.loads.neutral import neutral_a
from wyeline_linter.loads.nodes import Sum
from wyeline_linter.loads.of_equipment import ASSUMED_CONVERTER_PF, is_converter, plate_ratio
from wyeline_linter.loads.rollup import LoadBook
from wyeline_linter.loads.third_harmonics import ThirdHarmonic, third_harmonic
from wyeline_linter.network import two_sided
from wyeline_linter.system_words import conductor_text
from wyeline_linter.working import (
    Figure,
    Input,
    State,
    Step,
    assumed,
    derived,
    given,
    looked_up,
    merge_reasons,
    number_text,
    value_text,
)

if TYPE_CHECKING:
    from wyeline_linter.view import View

FIGURES = ("connected", "demand", "sizing", "neutral", "balance")
"""What can be asked of a piece of equipment."""
AMOUNTS = FIGURES[:3]
"""The loads among these, which lie on legs."""


def load_figure(view: View, name: str, figure: str) -> Figure:
    """The working of one figure of a piece of equipment. KeyError for an unknown name, ValueError for a figure."""
    book = view.loads
    made = {
        "connected": _connected,
        "demand": _demand,
        "sizing": _sizing,
        "neutral": _neutral,
        "balance": _balance,
    }.get(figure)
    if made is None:
        raise ValueError(f"no load figure is called {figure}; there are {', '.join(FIGURES)}")
    sheet = made(book, name)
    if figure in AMOUNTS and sheet.known:
        return sheet._replace(by_leg=by_leg(view, name, figure))
    return sheet


def in_words(key: Key) -> str:
    """A kind of load as a schedule names it."""
    if key.category == MEASURED:
        return "what stands already, as measured"
    more = ["continuous"] if key.continuous else []
    if key.third:
        more.append(f"third harmonic {100 * key.third:.3g} %")
    if key.factor is not None:
        more.append(f"factor {key.factor:.4g} of a dwelling" if key.dwelling else f"factor {key.factor:g} stated")
    return ", ".join([key.category, *more])


def _at_input(book: LoadBook, name: str) -> bool:
    """Whether all that is known of its load is what it draws: a charger, whose battery is no load."""
    node = book.nodes[name]
    return node.below.empty and not node.up.empty and two_sided(book.model.equipment[name])


def _counting(book: LoadBook, name: str) -> tuple[Rows, Largest | None]:
    return book.rows_above(name) if _at_input(book, name) else book.rows(name)


def _counted(book: LoadBook, name: str) -> Counted:
    return book.counted_above(name) if _at_input(book, name) else book.counted(name)


def _rows(book: LoadBook, name: str) -> list[tuple[Key, Row]]:
    return sorted(_counting(book, name)[0].items(), key=lambda item: str(item[0]))


def _power_sum(book: LoadBook, name: str, *, factors: dict[Key, float] | None) -> tuple[list[Input], list[Step]]:
    inputs: list[Input] = []
    terms_p, terms_q = [], []
    for k, (key, row) in enumerate(_rows(book, name), 1):
        together = value_text(abs(row[VA]), "VA")
        if factors is not None and factors[key] != 1.0:
            together += f", with its factor {value_text(factors[key] * abs(row[VA]), 'VA')}"
        inputs.append(derived(f"P{k}", f"{in_words(key)}: active power", row[VA].real, "W", f"of {together}"))
        inputs.append(derived(f"Q{k}", f"{in_words(key)}: reactive power", row[VA].imag, "var"))
        factor = ""
        if factors is not None and factors[key] != 1.0:
            inputs.append(_factor_input(f"f{k}", key, factors[key], book))
            factor = f" * f{k}"
        terms_p.append(f"P{k}{factor}")
        terms_q.append(f"Q{k}{factor}")
    weights = factors or dict.fromkeys(_counting(book, name)[0], 1.0)
    p = sum(weights[key] * row[VA].real for key, row in _rows(book, name))
    q = sum(weights[key] * row[VA].imag for key, row in _rows(book, name))
    steps = [
        Step("P", "active power", " + ".join(terms_p) or "0", p, "W"),
        Step("Q", "reactive power", " + ".join(terms_q) or "0", q, "var"),
    ]
    return inputs, steps


def _factor_input(symbol: str, key: Key, factor: float, book: LoadBook) -> Input:
    if key.dwelling:
        note = "its part in the calculation of the dwelling"
        return derived(symbol, f"demand factor of {key.category}", factor, note=note)
    if key.factor is not None:
        return Input(symbol, f"demand factor of {key.category}", factor, "", State.GIVEN)
    table = {"receptacle": "receptacle-demand", "kitchen": "kitchen-demand"}[key.category]
    found = book.basis.table(table) if book.basis is not None else None
    cite = getattr(found, "cite", "")
    return Input(symbol, f"demand factor of {key.category}", factor, "", State.DERIVED, table=cite)


def _figure(
    book: LoadBook,
    name: str,
    title: str,
    symbol: str,
    value: float,
    unit: str,
    formula: str,
    inputs: list[Input],
    steps: list[Step],
    source: str,
    *,
    code: bool = False,
) -> Figure:
    below = book.nodes[name].up if _at_input(book, name) else book.nodes[name].below
    unknown = merge_reasons(below.unknown, below.unknown_code if code else ())
    left = book.left_out(name)
    notes = [f"left out, because another runs in its place: {', '.join(sorted(left))}"] if left else []
    notes += [*measured_sheets.notes_of(book, name), *_converters(book, name)]
    units = book.units_of(name)
    if calculation_of(book, name):
        notes.append(_OF_THE_METHOD if name in book.dwellings else _OF_UNITS)
    elif len(units) > 1:
        notes.append(_OF_SEVERAL.format(len(units)))
    elif _is_us(book) and any(
        claim.name == DWELLING for f in book.model.feeders_to.get(name, ()) for claim in f.statement.claims
    ):
        notes.append(_OF_A_DWELLING)
    if unknown:
        notes.append(f"what is known adds up to {value:.6g} {unit}")
    return Figure(
        title,
        name,
        symbol,
        None if unknown else value,
        unit,
        formula,
        tuple(inputs),
        tuple(steps),
        source,
        tuple(notes),
        unknown,
    )


def _is_us(book: LoadBook) -> bool:
    return book.basis is not None and book.basis.practice == "us"


_OF_A_DWELLING = (
    "the loads of the dwelling unit count as written, each with its `factor`; the calculations of NEC 220 are made "
    "where the board says `dwelling standard` (Part III) or `dwelling optional` (220.82), with its `floor-area`"
)
_OF_THE_METHOD = (
    "lighting and receptacle circuits count within the general load, `kitchen` as household cooking, other classes as "
    "their line says; 125 % is added to loads outside these lines only"
)

_OF_SEVERAL = (
    "the loads of the {} dwellings below add up as each is calculated; the demand of several dwellings together (NEC "
    "220), which may be less, is calculated where the board says `dwelling multifamily` (220.84, of two 220.85) or "
    "`dwelling multifamily-standard` (Part III)"
)
_OF_UNITS = "the dwellings below count together; their neutral as Part III has it"


def calculation_of(book: LoadBook, name: str) -> tuple[Step, ...]:
    """The lines of the dwelling calculation of a board, replayed; none where there is no such calculation."""
    equipment, node = book.model.equipment[name], book.nodes[name]
    if node.became and book.basis is not None and carries_several(equipment, book.basis):
        return steps_of(book.rows(name)[0], together_of(equipment, book.units_of(name), book.system(name), book.basis))
    dwelling = dwelling_of(equipment, book.basis)
    if dwelling is None or book.basis is None or name not in book.dwellings or not node.became:
        return ()
    written, share = Sum(), book.share(name)
    for leaf in node.leaves:
        written.add_leaf(leaf, alone=book.alone(leaf))
    if name in book.apart:
        written.new = new_of(equipment, node.leaves, book.alone)
    written = written if share == 1.0 else written.at_share(share)
    for child in book.children.get(name, ()):
        if child in book.nodes:
            written.add(book.nodes[child].up)
    left = left_out({n: held.va for n, held in written.held.items()}, book.relations, book.running)
    climate_added = written.new is not None and adds_climate(written.new.counting(left)[0])
    return calculate(dwelling, written.counting(left)[0], book.basis, climate_added=climate_added).steps


def _converters(book: LoadBook, name: str) -> list[str]:
    """The power factor that converters below are taken to draw at, where none is written."""
    found: list[str] = []
    ahead = list(book.children.get(name, ()))
    while ahead:
        equipment = book.model.equipment.get(ahead.pop())
        if equipment is None:
            continue
        if not is_converter(equipment, bool(book.children.get(equipment.name))):
            ahead += book.children.get(equipment.name, ())
        elif equipment.kind == "ups" or equipment.body.number("pf") is None:
            found.append(f"the input of `{equipment.name}` at power factor {ASSUMED_CONVERTER_PF:g} (none is written)")
    return sorted(found)


def _connected(book: LoadBook, name: str) -> Figure:
    inputs, steps = _power_sum(book, name, factors=None)
    steps = [*measured_sheets.steps_of(book, name), *steps]
    value = abs(_counted(book, name).connected.va)
    return _figure(book, name, "connected load", "S", value, "VA", "sqrt(P*P + Q*Q)", inputs, steps, "common practice")


def _demand(book: LoadBook, name: str) -> Figure:
    counted = _counted(book, name)
    inputs, steps = _power_sum(book, name, factors=counted.factors)
    us = book.practice == "us"
    steps = [*measured_sheets.steps_of(book, name), *calculation_of(book, name), *steps]
    source = "NEC 2023 Article 220, each factor once over all loads of its class" if us else "stated factors"
    return _figure(
        book, name, "demand load", "S", abs(counted.demand.va), "VA", "sqrt(P*P + Q*Q)", inputs, steps, source
    )


def _sizing(book: LoadBook, name: str) -> Figure:
    counted = _counted(book, name)
    if counted.sizing is None or book.basis is None:
        return Figure("load to size by", name, "S", None, "VA", unknown=(NO_BASIS,))
    if book.practice != "us":
        figure = _demand(book, name)
        source = "IEC 60364-4-43 433.1: the design current is that of the demand"
        return Figure(
            "load to size by", name, "S", figure.value, "VA", figure.formula, figure.inputs, figure.steps, source,
            figure.assumptions, figure.unknown,
        )  # fmt: skip
    quarter = sizing_factors(book.basis)[1]
    inputs: list[Input] = []
    terms: list[str] = []
    for k, (key, row) in enumerate(_rows(book, name), 1):
        inputs.append(derived(f"S{k}", f"{in_words(key)}, by the code's figures", row[CODE].real, "VA"))
        term = f"S{k}"
        if counted.factors[key] != 1.0:
            inputs.append(_factor_input(f"f{k}", key, counted.factors[key], book))
            term += f" * f{k}"
        if added_to(key, book.basis) != 1.0:
            term += f" * {added_to(key, book.basis):g}"
        terms.append(term)
    largest = _counting(book, name)[1]
    if largest is not None:
        inputs.append(derived("M", f"largest motor, {largest.name}", largest.va, "VA"))
        terms.append(f"{quarter:g} * M")
    source = "NEC 2023 215.2, 215.3 (125 % of continuous load), 430.24 (a quarter of the largest motor)"
    if any(key.category == MEASURED for key in counted.factors):
        source += ", 220.87 (125 % of what was measured)"
    formula = " + ".join(terms) or "0"
    steps = [*measured_sheets.steps_of(book, name), *calculation_of(book, name)]
    return _figure(
        book, name, "load to size by", "S", counted.sizing.va.real, "VA", formula, inputs, steps, source, code=True
    )


def _neutral(book: LoadBook, name: str) -> Figure:
    system = book.system(name)
    if system is None or not system.has_neutral:
        return Figure("neutral current", name, "IN", None, "A", unknown=(f"no neutral is at `{name}`",))
    counted = book.counted(name)
    amps = counted.demand.amps
    inputs: list[Input] = []
    called = {leg: conductor_text(leg, book.practice) for leg in system.legs}
    for leg, word in called.items():
        i = amps[INDEX[leg]]
        inputs.append(derived(f"x{word}", f"leg {word}, in phase with 0 degrees", i.real, "A"))
        inputs.append(derived(f"y{word}", f"leg {word}, 90 degrees ahead", i.imag, "A"))
    x, y = (" + ".join(f"{c}{word}" for word in called.values()) for c in "xy")
    total = sum(amps[INDEX[leg]] for leg in system.legs)
    steps = [Step("X", "sum in phase", x, total.real, "A"), Step("Y", "sum ahead", y, total.imag, "A")]
    third = third_harmonic(system, book.rows(name)[0], counted.factors)
    value, formula, source = abs(total), "sqrt(X*X + Y*Y)", "Kirchhoff"
    if third is not None:
        steps.append(third_step(book.rows(name)[0], counted.factors, third))
        value, formula = neutral_a(amps, third), "sqrt(X*X + Y*Y + T*T)"
        legs_a = sum(abs(amps[INDEX[leg]]) for leg in system.legs)
        if value == legs_a:
            steps.append(Step("L", "what its legs carry, the most that returns", number_text(legs_a), legs_a, "A"))
            formula = f"min({formula}, L)"
        source = "Kirchhoff; IEC 60364-5-52 Annex E: the third harmonics of the legs are in step"
    figure = _figure(book, name, "neutral current", "IN", value, "A", formula, inputs, steps, source)
    if third is not None:
        figure = figure._replace(assumptions=(*figure.assumptions, *_of_thirds(third)))
    return figure._replace(by_leg=worst_alone(book, name, system)) if figure.known else figure


def _of_thirds(third: ThirdHarmonic) -> list[str]:
    """What stands beside a neutral's current with third harmonics in it."""
    notes = ["the third harmonics of all loads are added as plain numbers, which is the most that they come to"]
    if third.unstated_va:
        notes.append(f"{value_text(third.unstated_va, 'VA')} of load states no third harmonic and counts with none")
    return notes


def _balance(book: LoadBook, name: str) -> Figure:
    system = book.system(name)
    if system is None or len(system.legs) < 2 or not set(system.legs) <= {"A", "B", "C"}:
        return Figure("unbalance of the legs", name, "u", None, "", unknown=(f"`{name}` has no two legs to balance",))
    amps = book.counted(name).demand.amps
    values = tuple(abs(amps[INDEX[leg]]) for leg in system.legs)
    called = [conductor_text(leg, book.practice) for leg in system.legs]
    inputs = [derived(f"I{leg}", f"leg {leg}", value, "A") for leg, value in zip(called, values, strict=True)]
    names = [i.symbol for i in inputs]
    mean = Step("m", "mean", f"({' + '.join(names)}) / {len(names)}", sum(values) / len(values), "A")
    formula = f"(max({', '.join(names)}) - m) / m" if mean.value else "0"
    return _figure(
        book, name, "unbalance of the legs", "u", unbalance(values), "", formula, inputs, [mean], "common practice"
    )


def circuit_figure(view: View, board: str, place: str) -> Figure:
    """The working of what one circuit draws. KeyError where the board has no such circuit with a load."""
    equipment = view.model.equipment[board]
    leaf = next((leaf for leaf in view.loads.nodes[board].leaves if leaf.place == place), None)
    placed = next((p for p in equipment.circuits if p.key == place), None)
    if leaf is None or placed is None:
        raise KeyError(place)

    def where(key: str) -> Place:
        fact = placed.circuit.body.facts.get(key)
        return Place(placed.block, fact.span if fact is not None else placed.circuit.span)

    return _drawn(view, leaf, placed.circuit.body, where)


def equipment_figure(view: View, name: str) -> Figure:
    """The working of what a load with a name of its own draws. KeyError where it is no load."""
    equipment = view.model.equipment[name]
    leaf = next((leaf for leaf in view.loads.nodes[name].leaves if not leaf.place), None)
    if leaf is None:
        raise KeyError(name)
    return _drawn(view, leaf, equipment.body, equipment.place_of)


def _drawn(view: View, leaf: Leaf, body: Body, place_of: Callable[[str], Place]) -> Figure:
    title, subject = "apparent power drawn", leaf.name
    read = leaf.given
    if read is None or read.va is None or leaf.row is None:
        return Figure(title, subject, "S", None, "VA", unknown=leaf.unknown)
    value, phases = abs(leaf.row[VA]), len(leaf.legs)
    other = leaf.legs[1] if phases > 1 else "N"
    system = view.loads.system(leaf.owner)
    volts, nominal_v = (
        (system.distance(leaf.legs[0], other), system.nominal_v(leaf.legs[0], other))
        if system is not None and read.how != "legs"
        else (0.0, 0.0)
    )
    per_ampere = ("sqrt(3) * " if phases == 3 else "") + "V * I"
    across = derived("V", "nominal voltage across it", volts, "V")
    inputs: list[Input] = []
    formula = ""
    if read.how in ("va", "var"):
        inputs.append(given("s", "as written", body.number("power"), read.how, place_of("power")))
        formula = "s"
    elif read.how in ("w", "shaft"):
        inputs.append(given("P", "as written", body.number("power"), "W", place_of("power")))
        formula = "P"
        if body.number("eff") is not None:
            inputs.append(given("eff", "efficiency", body.number("eff"), "", place_of("eff")))
            formula += " / eff"
        motor_eff = _motor_eff(view, leaf) if read.how == "shaft" else None
        if motor_eff is not None:
            inputs.append(derived("em", "efficiency of the motor behind it", motor_eff))
            formula += " / em"
        formula += " / pf"
        inputs.append(_pf_input(body, read.category, place_of("pf")))
    elif read.how in ("amperes", "mca"):
        key = next(k for k in ("draws", "fla", "mca", "rating") if k in body.facts)
        inputs += [given("I", f"{key} as written", body.number(key), "A", place_of(key)), across]
        formula = per_ampere
    elif read.how == "table":
        hp = (body.number("power") or 0.0) / HORSEPOWER_W
        row = table_current_a(view.loads.basis, hp, nominal_v, phases)
        inputs.append(given("", "as written", hp, "hp", place_of("power")))
        inputs += [looked_up("I", "full-load current", row, "A")] if row is not None else []
        inputs.append(across)
        formula = per_ampere
    elif read.how == "limit":
        limit = value / read.units
        inputs.append(given("s", "what the energy management holds it to", limit, "VA", place_of("limit")))
        formula = "s"
    elif read.how == "dwelling":
        inputs.append(derived("s", "general load of the dwelling beyond what its circuits state", value, "VA"))
        formula = "s"
    elif read.how == MEASURED and system is not None:
        inputs, formula = measured_sheets.as_written(view.model.equipment[leaf.owner], system)
    elif read.how == "legs":
        inputs += [
            Input(f"s{item.leg}", f"leg {item.leg}, as written", abs(va), "VA", State.GIVEN, place_of("power"))
            for item, (_, _, va) in zip(body.leg_loads, leaf.parts, strict=True)
        ]
        formula = " + ".join(i.symbol for i in inputs)
    if read.units > 1 and read.how != "legs":
        inputs.append(given("n", "number", float(read.units), "", place_of("count")))
        formula += " * n"
    equipment = view.model.equipment[leaf.owner]
    ratio = 1.0
    if not leaf.place:
        ratio = plate_ratio(read, nominal_v, view.derivation.stated(equipment.primary), phases)
    if ratio != 1.0:
        inputs.append(derived("r", "share at this voltage, constant resistance: (V/Vn) squared", ratio))
        formula += " * r"
    source = "NEC 2023 430.6(A)(1)" if read.how == "table" else "common practice"
    legs = of_one_load(leaf, view.loads.share(leaf.owner))
    return Figure(title, subject, "S", value, "VA", formula, tuple(inputs), (), source, _notes(read.how), by_leg=legs)


def _motor_eff(view: View, leaf: Leaf) -> float | None:
    equipment = view.model.equipment[leaf.owner]
    if equipment.kind != "drive" or leaf.place:
        return None
    behind = (view.model.equipment.get(n) for n in view.loads.children.get(leaf.owner, ()))
    return next((e.body.number("eff") for e in behind if e is not None and e.kind == "motor"), None)


def _pf_input(body: Body, category: str, place: Place) -> Input:
    written = body.number("pf")
    if written is not None:
        return given("pf", "power factor", written, "", place)
    return assumed("pf", "power factor", usual_pf(category), "", "none is written")


def _notes(how: str) -> tuple[str, ...]:
    if how == "mca":
        return ("the minimum circuit ampacity stands for the current drawn, which is lower",)
    return ()
