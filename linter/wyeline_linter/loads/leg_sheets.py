"""What stands below the result of a load sheet: volt-amperes and amperes of every leg, as schedules print them."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from wyeline_linter.loads.buckets import CODE_AMPS, TO_NEUTRAL, Key, Largest, Rows, amps_of, split_of
from wyeline_linter.loads.conductors_of_loads import INDEX, LEG_COUNT
from wyeline_linter.loads.demand import Amount, Counted, leg_shares, ordered, sizing_factors, sizing_weight
from wyeline_linter.loads.leaves import Leaf
from wyeline_linter.loads.neutral import worst_neutral
from wyeline_linter.loads.rollup import LoadBook
from wyeline_linter.loads.third_harmonics import ThirdHarmonic
from wyeline_linter.network import two_sided
from wyeline_linter.system_words import conductor_text
from wyeline_linter.systems import NEUTRAL, Known, System
from wyeline_linter.working import Step, number_text

if TYPE_CHECKING:
    from wyeline_linter.view import View

_NOTHING = 1e-9
"""Of the largest term: what rounding left, which no sheet needs to print."""
Term = tuple[complex, float]
"""A number of one kind of load and what it is multiplied with."""


def by_leg(view: View, name: str, figure: str) -> tuple[Step, ...]:
    """Every leg's volt-amperes and amperes of the connected, demand or sizing load; of equipment with two sides also
    at its input. Nothing where a load is unknown."""
    book, equipment = view.loads, view.model.equipment[name]
    node, system = book.nodes[name], book.system(name)
    steps: list[Step] = []
    below = node.below
    if system is not None and not below.empty and not below.unknown and not (figure == "sizing" and below.unknown_code):
        steps += _side(book, book.rows(name), book.counted(name), system, figure, "")
    state = view.state(name)
    arriving = state.arriving if state is not None else None
    above = node.up
    settled = not above.unknown and not (figure == "sizing" and above.unknown_code)
    if two_sided(equipment) and isinstance(arriving, Known) and settled:
        supply = book.rows_above(name)
        steps += _side(book, supply, book.counted_above(name), arriving.system, figure, " at its input")
    return tuple(steps)


def _side(
    book: LoadBook,
    counting: tuple[Rows, Largest | None],
    counted: Counted,
    system: System,
    figure: str,
    where: str,
) -> list[Step]:
    rows, largest = ordered(counting[0]), counting[1]
    amount = {"connected": counted.connected, "demand": counted.demand, "sizing": counted.sizing}[figure]
    if amount is None:
        return []
    if figure == "sizing" and book.practice == "us":
        return _sizing_side(book, rows, largest, counted, amount, system, where)
    weights = counted.factors if figure != "connected" else dict.fromkeys(rows, 1.0)
    steps, legs = [], _legs(system, book.practice)
    for at, word in legs:
        split = [(split_of(row)[at], weights[key]) for key, row in rows.items()]
        steps.append(_split_step(word, where, split, amount.split[at]))
    for at, word in legs:
        amps = [(amps_of(row)[at], weights[key]) for key, row in rows.items()]
        steps.append(_current_step(word, where, sum_text(amps), amount.amps[at]))
    return steps


def _sizing_side(
    book: LoadBook,
    rows: Rows,
    largest: Largest | None,
    counted: Counted,
    amount: Amount,
    system: System,
    where: str,
) -> list[Step]:
    assert book.basis is not None
    quarter = sizing_factors(book.basis)[1]
    weights = {key: sizing_weight(key, counted.factors[key], book.basis) for key in rows}
    shares = leg_shares(largest.amps) if largest is not None else ()
    steps, legs = [], _legs(system, book.practice)
    for at, word in legs:
        split = [(split_of(row, code=True)[at], weights[key]) for key, row in rows.items()]
        if largest is not None:
            split.append((complex(largest.va * shares[at]), quarter))
        steps.append(_split_step(word, where, split, amount.split[at]))
    for at, word in legs:
        amps = [(amps_of(row, code=True)[at], weights[key]) for key, row in rows.items()]
        if largest is not None:
            amps.append((largest.amps[at], quarter))
        formula = f"max({sum_text(amps)}, {number_text(abs(counted.demand.amps[at]))})"
        steps.append(_current_step(word, where, formula, amount.amps[at], "no less than under demand"))
    return steps


def _legs(system: System, practice: str | None) -> list[tuple[int, str]]:
    """The place of every leg in the rows of loads, and what practice calls it."""
    return [(INDEX[leg], conductor_text(leg, practice)) for leg in system.legs if INDEX[leg] < LEG_COUNT]


def _split_step(word: str, where: str, terms: list[Term], value: complex) -> Step:
    symbol = f"S{word}{'i' if where else ''}"
    return Step(symbol, f"leg {word}{where}, as schedules split it", sum_text(terms), abs(value), "VA")


def _current_step(word: str, where: str, formula: str, value: complex, remark: str = "") -> Step:
    symbol = f"I{word}{'i' if where else ''}"
    return Step(symbol, f"current on leg {word}{where}", formula, abs(value), "A", remark)


def sum_text(terms: Iterable[Term]) -> str:
    """The size of a sum of phasors with its numbers put in: the parts in phase, then those 90 degrees ahead."""
    kept = list(terms)
    most = max((abs(value * weight) for value, weight in kept), default=0.0)
    sums = []
    for component in ("real", "imag"):
        numbers = [(getattr(value, component), weight) for value, weight in kept]
        shown = [(n, w) for n, w in numbers if abs(n * w) > _NOTHING * most]
        if shown:
            sums.append(_joined(shown))
    if not sums:
        return "0"
    if len(sums) == 1 and all(value.imag == 0.0 and value.real >= 0.0 for value, _ in kept):
        return sums[0]
    return f"sqrt({' + '.join(f'({each})^2' for each in sums)})"


def _joined(terms: list[tuple[float, float]]) -> str:
    text = ""
    for value, weight in terms:
        sign = (" - " if value < 0 else " + ") if text else ("-" if value < 0 else "")
        text += sign + number_text(abs(value)) + (f" * {number_text(weight)}" if weight != 1.0 else "")
    return text


def worst_alone(book: LoadBook, name: str, system: System) -> tuple[Step, ...]:
    """The neutral's current where the loads to neutral of one leg run alone; nothing without a neutral."""
    rows, factors = ordered(book.rows(name)[0]), book.counted(name).factors
    worst = worst_neutral(system, rows, factors, book.basis)
    if worst is None:
        return ()
    terms = [(complex(row[TO_NEUTRAL + INDEX[worst.leg]].real), factors[key]) for key, row in rows.items()]
    formula = f"({sum_text(terms)}) / {number_text(system.distance(worst.leg, NEUTRAL))}"
    word = conductor_text(worst.leg, book.practice)
    return (Step("Iw", f"at worst: the loads to neutral of leg {word} alone", formula, worst.unbalance_a, "A"),)


def third_step(rows: Rows, factors: dict[Key, float], third: ThirdHarmonic) -> Step:
    """The third harmonic that adds up in a neutral, kind by kind."""
    terms = []
    for key, row in ordered(rows).items():
        if key.third:
            legs = sum(abs(row[CODE_AMPS + k]) for k in range(LEG_COUNT))
            factor = f" * {number_text(factors[key])}" if factors[key] != 1.0 else ""
            terms.append(f"{number_text(key.third)} * {number_text(legs)}{factor}")
    name = f"third harmonic of all legs, {100 * third.part:.3g} % of their currents"
    return Step("T", name, " + ".join(terms) or "0", third.neutral_a, "A", "share times the amperes of the legs")


def of_one_load(leaf: Leaf, share: float) -> tuple[Step, ...]:
    """What one load puts on each of its legs, where it lies on several alike or runs at a share of what it draws."""
    if leaf.row is None or (len(leaf.legs) < 2 and share == 1.0):
        return ()
    parts = [abs(part) * share for part in split_of(leaf.row)]
    most = max(parts)
    alike = [part for part in parts if part > _NOTHING * most]
    if not most or max(alike) - min(alike) > _NOTHING * most:
        return ()
    factor = f" * {number_text(share)}" if share != 1.0 else ""
    where = f"each of its {len(alike)} legs" if len(alike) > 1 else "its leg"
    state = ", at its share in this switch state" if share != 1.0 else ""
    return (Step("Sl", f"on {where}{state}", f"S{factor} / {len(alike)}", most, "VA"),)
