"""The wire to the earth electrode: as large as the wires of the system it earths ask for."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_grammar.notation import ConductorSize
from wyeline_linter.conductor_sizes import area_mm2, circular_mils
from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.grounding_conductors import electrode_conductor_of_area
from wyeline_linter.protection.lines import Line, feeder_line
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.writing import size_text
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_TX = (
    US + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %, x/r 1.8, electrode SIZE\n"
    "feeder MSB -> TX-1  60 A 3p  3#4 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n"
    "panel LP-1 208Y/120  bus 225 A, main 125 A, lug-temp 75 degC\n"
    "feeder TX-1 -> LP-1  3#1/0 + N #1/0 + G #6 Cu THWN-2  2.5 m  in 1-1/2 inch EMT\n  lug-temp 75 degC\n"
    "  claim tap-10ft\n"
)

SMALL = rule(
    name="electrode-conductor-small",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    basis="us",
    summary="The wire to the earth electrode is smaller than the wires of its system ask for.",
    why="In a fault or a lightning stroke this wire ties the system to earth: it follows the size of the supply wires.",
    clause={"us": "250.66, 250.30(A)(5)"},
    wrong=_TX.replace("SIZE", "#8"),
    right=_TX.replace("SIZE", "#6"),
    mends=True,
)


@SMALL.also("equipment", said=("electrode",))
def electrode_conductor_size(view: View, equipment: Equipment) -> Iterator[Finding]:
    """Behind a transformer or generator by its wires; where a service arrives, by the wires of the service."""
    fact = equipment.body.facts.get("electrode")
    if fact is None or view.tables is None or not isinstance(fact.value.data, ConductorSize):
        return
    lines = _supply_wires(view, equipment)
    metals = {line.wiring.metal for line in lines}
    if len(metals) != 1:
        return
    area_cmil = sum(line.wiring.sets * circular_mils(line.wiring.size) for line in lines)
    needed = electrode_conductor_of_area(view.tables, area_cmil, metals.pop(), "Cu")
    if isinstance(needed, NotListed) or area_mm2(fact.value.data.text) >= area_mm2(needed.value) * 0.999:
        return
    place = equipment.place_of("electrode")
    may_be_enough = area_mm2(fact.value.data.text) >= area_mm2("6") * 0.999
    have, size = size_text(fact.value.data.text), size_text(needed.value)
    wires = " and ".join(f"{_sets(line)}{size_text(line.wiring.size)} {line.wiring.metal}" for line in lines)
    yield SMALL.finding(
        place,
        f"the electrode wire of `{equipment.name}` is {have}; its supply wires, {wires}, ask for {size} copper",
        found=f"{have} copper beside {wires}",
        needed=f"{size} copper ({needed})",
        severity=Severity.WARNING if may_be_enough else None,
        change=f"Pull {size} copper to the electrode." + (_TO_RODS if may_be_enough else ""),
        subject=equipment.name,
        fixes=(Fix(f"Write `electrode {size}`", (replace(place, f"electrode {size}"),), Safety.LOOK),),
        clause=clause_of(view, SMALL),
    )


_TO_RODS = (
    " Where it goes to rods alone, #6 copper is enough, and #4 to a concrete-encased electrode (250.66(A), (B)): then "
    "accept this with that reason."
)


def _sets(line: Line) -> str:
    return f"{line.wiring.sets} sets of " if line.wiring.sets > 1 else ""


def _supply_wires(view: View, equipment: Equipment) -> list[Line]:
    """The wires that the electrode wire is sized by: of the system made here, or of the service that ends here."""
    made_here = equipment.kind in ("transformer", "generator")
    feeders = view.feeders_out_of(equipment.name) if made_here else view.feeders_into(equipment.name)
    lines = [line for line in (feeder_line(view, f) for f in feeders) if line is not None and not line.medium]
    if made_here:
        return lines
    return [line for line in lines if line.guard is None and line.source.kind == "utility"]
