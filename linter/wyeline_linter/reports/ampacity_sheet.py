"""What the wires of a feeder carry, by the rules' own reckoning, with its working."""

from __future__ import annotations

from wyeline_grammar.linking import Feeder
from wyeline_linter.protection.ampacities import Carries, bounds
from wyeline_linter.protection.currents import current_of, laid_with
from wyeline_linter.protection.dwellings import relief_of
from wyeline_linter.protection.lines import Line, feeder_line
from wyeline_linter.protection.shared_raceways import lines_in, loaded_in
from wyeline_linter.tables import NotListed
from wyeline_linter.view import View
from wyeline_linter.working import Figure, Input, given, looked_up

_SOURCES = {"us": "NEC 2023 310.15, 310.16, 110.14(C)", "iec": "IEC 60364-5-52, Annex B"}


def ampacity_figure(view: View, feeder: Feeder) -> Figure:
    """The least that the wires carry, in A; unknown with its reason."""
    found = _held(view, feeder)
    if isinstance(found, str):
        return Figure("ampacity", feeder.key, "I", None, "A", unknown=(found,))
    line, held = found
    inputs = [given("n", "parallel sets", float(line.wiring.sets), "", line.wires_place)]
    if line.us:
        names = (("Ii", "by the insulation", "A"), ("ka", "ambient", ""), ("kb", "grouping, percent", ""))
        terminals = ("Il", f"by terminals at {held.lug_c:g} degC", "A")
        inputs += _looked(held, (*names, terminals))
        formula = "n * min(Ii * ka * kb / 100, Il)"
    else:
        factors = [(f"k{at}", "factor", "") for at in range(1, len(held.looked))]
        inputs += _looked(held, (("It", "by the table", "A"), *factors))
        formula = " * ".join(["n", "It", *(symbol for symbol, _, _ in factors)])
    source = _SOURCES.get(line.tables.practice, line.tables.title)
    relief = relief_of(view, line)
    enough = (f"{relief.amps:.4g} A are enough for its device: {relief.text}",) if relief is not None else ()
    assumed = (*line.assumed, *enough)
    return Figure("ampacity", feeder.key, "I", held.amps, "A", formula, tuple(inputs), (), source, assumed)


def governing(view: View, feeder: Feeder) -> str:
    """What decides the ampacity: terminals, grouping, ambient or insulation; empty where it is unknown."""
    found = _held(view, feeder)
    if isinstance(found, str):
        return ""
    held = found[1]
    if held.lugs_a < held.bundled_a:
        return f"{held.lug_c:g} °C terminals"
    if held.bundled_a < held.warm_a:
        return "grouping"
    return "ambient" if held.warm_a < held.plain_a else f"{held.insulation_c:g} °C insulation"


def _held(view: View, feeder: Feeder) -> tuple[Line, Carries] | str:
    if feeder.body.conductors is None:
        return "no wires are written"
    line = feeder_line(view, feeder)
    if line is None:
        return "no code basis is named" if view.basis is None else "its voltage or its wires are not settled"
    if line.medium:
        return "the tables do not hold medium-voltage cables; the maker's figure counts"
    laid = laid_with(line, current_of(view, line), _beside(view, line))
    if laid is None:
        return line.lacks or "how it is laid is not written"
    held = bounds(line.tables, line.wiring, laid)
    return held.reason if isinstance(held, NotListed) else (line, held[0])


def _beside(view: View, line: Line) -> int | None:
    """The wires (US) or circuits (IEC) in the raceway that a line shares with others; None where it lies alone."""
    lines = lines_in(view, line.shared) if line.shared else []
    return loaded_in(view, lines) if lines else None


def _looked(held: Carries, names: tuple[tuple[str, str, str], ...] | list[tuple[str, str, str]]) -> list[Input]:
    return [looked_up(s, name, looked, unit) for (s, name, unit), looked in zip(names, held.looked, strict=False)]
