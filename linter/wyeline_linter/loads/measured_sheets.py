"""What sheets and schedules say of a demand that was measured: how it counts, and what is within it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.loads.buckets import CODE
from wyeline_linter.loads.leaves import MEASURED, Leaf
from wyeline_linter.loads.measured import WORD, stands, volts_of_legs
from wyeline_linter.working import Input, Step, assumed, derived, given, number_text, put_in

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment
    from wyeline_linter.loads.rollup import LoadBook
    from wyeline_linter.systems import System

YEAR_S = 365 * 86_400.0
_DAY_S = 86_400.0
_NAMED = 12
_UNITS = {"current": "A", "apparent-power": "VA", "power": "W"}


class Within(NamedTuple):
    """What stands already behind a board, by name: circuits of it, equipment that a feeder of it leads to; ``refed``,
    what stands already and is fed by a feeder that does not, so that it counts as new; and ``added``, all that adds to
    the measurement."""

    circuits: tuple[str, ...]
    fed: tuple[str, ...]
    refed: tuple[str, ...]
    added: tuple[str, ...]


def measurement_of(book: LoadBook, name: str) -> Leaf | None:
    """The measurement of a board, known or not; None without one."""
    found = (leaf for leaf in book.nodes[name].leaves if leaf.given is not None and leaf.given.how == MEASURED)
    return next(found, None)


def within_of(book: LoadBook, name: str) -> Within:
    """What the measurement of a board holds, as far as the model names it."""
    board = book.model.equipment[name]
    circuits = tuple(p.key for p in board.circuits if stands(p.circuit.body.flags))
    loaded = {leaf.place for leaf in book.nodes[name].leaves if leaf.row is not None}
    new = [p.key for p in board.circuits if p.key in loaded and p.key not in circuits]
    added = [f"circuits {_listed(tuple(new))}"] if new else []
    fed, refed = [], []
    for child in book.children.get(name, ()):
        feeder, equipment = book.network.supply.get(child), book.model.equipment.get(child)
        up = book.nodes[child].up
        if not (up if up.new is None else up.new).empty:
            added.append(child if up.new is None else f"what is new on {child}")
        if feeder is not None and stands(feeder.body.flags):
            fed.append(child)
        elif equipment is not None and stands(equipment.body.flags):
            refed.append(child)
    return Within(circuits, tuple(fed), tuple(refed), tuple(added))


def steps_of(book: LoadBook, name: str) -> tuple[Step, ...]:
    """The line of the measurement on the sheets of its board."""
    leaf, system = measurement_of(book, name), book.system(name)
    if leaf is None or leaf.row is None or system is None:
        return ()
    board, share = book.model.equipment[name], book.share(name)
    inputs, formula = as_written(board, system)
    formula = put_in(formula, {each.symbol: each.value for each in inputs})
    if share != 1.0:
        formula += f" * {number_text(share)}"
    source = "NEC 2023 220.87" if book.practice == "us" else "as measured"
    return (Step("E", f"what stands already, {words_of(board)}", formula, leaf.row[CODE].real * share, "VA", source),)


def as_written(board: Equipment, system: System) -> tuple[list[Input], str]:
    """What the volt-amperes of a measurement follow from, and the formula."""
    fact, pf = board.body.facts[WORD], board.body.number("pf")
    dimension = fact.value.dimension
    inputs = [given("m", "highest demand, as measured", fact.number, _UNITS[dimension], board.place_of(WORD))]
    if dimension == "power" and pf is not None:
        return [*inputs, given("pf", "power factor", pf, "", board.place_of("pf"))], "m / pf"
    if dimension == "current":
        return [*inputs, derived("v", "VA for each ampere on every leg", volts_of_legs(system) or 0.0, "V")], "m * v"
    if pf is None:
        inputs.append(assumed("", "power factor", 1.0, "", "none is written"))
    return inputs, "m"


def words_of(board: Equipment) -> str:
    """``measured 86 A over 365 d``."""
    over, by = board.body.number("measured-over"), board.body.text("measured-by")
    period = f" over {over / _DAY_S:.4g} days" if over is not None else ""
    return f"measured {board.body.facts[WORD].value.text}{period}" + (f" ({by})" if by else "")


def notes_of(book: LoadBook, name: str) -> Iterator[str]:
    """What the sheets of a board have to say beside the sum."""
    if measurement_of(book, name) is None:
        return
    board, within = book.model.equipment[name], within_of(book, name)
    yield (
        "what was measured lies on every leg alike, at power factor "
        + (f"{board.body.number('pf'):g}" if "pf" in board.body.facts else "1 (none is written)")
        + "; at worst all of it returns through a neutral"
    )
    named = [f"circuits {_listed(within.circuits)}"] if within.circuits else []
    named += [_listed(within.fed)] if within.fed else []
    if named:
        new = ", but for what is new there" if within.fed else ""
        yield f"within the measurement, not counted again: {'; '.join(named)}{new}"
    if within.added:
        yield f"counted beside the measurement: {_listed(within.added)}"
    if within.refed:
        yield f"counted as new, because the feeder to it is not marked `existing`: {_listed(within.refed)}"
    over = board.body.number("measured-over")
    if over is not None and over < YEAR_S:
        yield (
            "measured over less than a year: that it holds the larger of heating and cooling, and other loads of the "
            "season, in an occupied building is for the engineer to confirm"
        )


def _listed(names: tuple[str, ...]) -> str:
    more = f" and {len(names) - _NAMED} more" if len(names) > _NAMED else ""
    return "; ".join(names[:_NAMED]) + more
