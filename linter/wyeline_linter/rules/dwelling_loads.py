"""Loads of dwelling units: whether what is written lets NEC 220 calculate them, and the least that a house is given."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Place
from wyeline_linter.findings import Finding, Fix, Safety, Severity, append_phrase, delete_phrase, replace
from wyeline_linter.loads.dwelling import dwelling_of
from wyeline_linter.loads.dwelling_methods import THREE_WIRES
from wyeline_linter.loads.dwellings_together import BY_PART_III, carries_several, together_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.shapes import Shape
from wyeline_linter.tables import Looked

if TYPE_CHECKING:
    from wyeline_linter.view import View

_WORDS = ("floor-area", "small-appliance", "laundry")
_PROJECT = 'project "Annex"\n  basis us-2023\n'
_UTILITY = "utility UTIL 120/240  fault 5 kA, fault-min 3 kA, x/r 2\nfeeder UTIL -> HOUSE\n"
_PANEL = "panel HOUSE 120/240  bus 200 A, main 100 A, rated 10 kA, "
_RANGE = '  1,3  50 A 2p  12 kW kitchen  "Range"\n'
_SMALL = "panel HOUSE 120/240  bus 100 A, main 60 A, rated 10 kA, dwelling standard, floor-area 90 m2\n"

METHOD = rule(
    name="dwelling-not-calculated",
    since="0.1",
    severity=Severity.WARNING,
    scope="board",
    summary="A board describes a dwelling, and nothing calculates it: no method, or a basis other than the NEC.",
    why="The calculations of dwellings are those of NEC 220; without one of them the loads count as written.",
    wrong=_PROJECT + _UTILITY + _PANEL + "floor-area 90 m2\n" + _RANGE,
    right=_PROJECT + _UTILITY + _PANEL + "floor-area 90 m2, dwelling standard\n" + _RANGE,
    mends=True,
)


@METHOD.check
def dwelling_not_calculated(view: View, board: Equipment) -> Iterator[Finding]:
    facts = board.body.facts
    written = [word for word in ("dwelling", *_WORDS) if word in facts]
    if not written:
        return
    place = board.place_of(written[0])
    tables = view.loads.basis
    if tables is None or tables.practice != "us":
        basis = "has no code basis" if tables is None else "is checked by IEC 60364"
        yield METHOD.finding(
            place,
            f"`{board.name}` is described as a dwelling of NEC 220, and the project {basis}",
            found=f"`{written[0]} {facts[written[0]].value.text}`; the project {basis}",
            needed="`basis us-2023`: the floor area and the methods of dwellings are those of the NEC",
            change="Take these words out and write the demand as `factor` or `diversity`, or correct the basis.",
            subject=board.name,
        )
    elif "dwelling" not in facts:
        last = max(place.span.line for place in map(board.place_of, written))
        block = place.block
        methods = (("standard", "Part III of Article 220"), ("optional", "220.82"), ("existing", "220.83"))
        yield METHOD.finding(
            place,
            f"`{board.name}` states its {written[0]}, and no method to calculate a dwelling by",
            found=f"`{written[0]} {facts[written[0]].value.text}` without `dwelling`",
            needed="`dwelling standard` (NEC 220 Part III), `optional` (220.82) or `existing` (220.83)",
            change="Write the method that holds for this dwelling.",
            subject=board.name,
            fixes=tuple(
                Fix(f"Calculate it by {by}", (append_phrase(block, last, f"dwelling {word}"),), Safety.LOOK)
                for word, by in methods
            ),
        )


AREA = rule(
    name="dwelling-area-missing",
    since="0.1",
    severity=Severity.GAP,
    scope="board",
    basis="us",
    summary="A dwelling does not state its floor area.",
    why="Its lighting and receptacles count by the floor area, so its load stays unknown without it.",
    clause={"us": "220.41"},
    wrong=_PROJECT + _UTILITY + _PANEL + "dwelling standard\n" + _RANGE,
    right=_PROJECT + _UTILITY + _PANEL + "dwelling standard, floor-area 90 m2\n" + _RANGE,
)


@AREA.check
def dwelling_area_missing(view: View, board: Equipment) -> Iterator[Finding]:
    dwelling = dwelling_of(board, view.loads.basis)
    if dwelling is not None and dwelling.area_m2 is None and not board.damaged:
        yield AREA.finding(
            board.place_of("dwelling"),
            f"`{board.name}` is a dwelling without a floor area",
            found=f"`dwelling {board.body.text('dwelling')}` alone",
            needed="the area by the outside dimensions, 3 VA each square foot",
            change="Add it, such as `floor-area 1500 ft2` or `floor-area 140 m2`.",
            subject=board.name,
        )


BESIDE = rule(
    name="dwelling-factor-beside",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    basis="us",
    summary="A demand factor is stated for a dwelling whose demand is calculated, or a dwelling lies within another.",
    why="A load is reduced once: by the calculation, or by a factor. What is stated beside it does not count.",
    clause={"us": "Article 220"},
    wrong=_PROJECT + _UTILITY + _PANEL + "dwelling standard, floor-area 90 m2, factor 0.8\n" + _RANGE,
    right=_PROJECT + _UTILITY + _PANEL + "dwelling standard, floor-area 90 m2\n" + _RANGE,
    mends=True,
)


@BESIDE.check
def dwelling_factor_beside(view: View, board: Equipment) -> Iterator[Finding]:
    if dwelling_of(board, view.loads.basis) is None:
        return
    method = board.body.text("dwelling")
    above = view.network.supplier.get(board.name)
    if above is not None and above in view.loads.within:
        yield BESIDE.finding(
            board.place_of("dwelling"),
            f"`{board.name}` is a dwelling, and so is what feeds it",
            found=f"`dwelling {method}` on `{board.name}`, which is fed from within another dwelling",
            needed="one board for each dwelling unit, the one that carries its whole load",
            change=f"Take `dwelling` and `floor-area` out of `{board.name}`, or out of the board above it.",
            subject=board.name,
        )
    for word in ("factor", "diversity"):
        if word in board.body.facts:
            place = board.place_of(word)
            yield BESIDE.finding(
                place,
                f"`{board.name}` states a {word} beside `dwelling {method}`",
                found=f"`{word} {board.body.facts[word].value.text}`, which is not counted",
                needed="the calculation alone",
                change=f"Delete the {word}, or the words of the dwelling.",
                subject=board.name,
                fixes=(Fix(f"Delete `{word}`", (delete_phrase(place),), Safety.LOOK),),
            )


SERVICE = rule(
    name="dwelling-service-small",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    basis="us",
    summary="A dwelling has a smaller main, or other wires, than its service or its method of calculation asks for.",
    why="A house is given room for what comes later; the optional method holds for supplies of three wires only.",
    clause={"us": "230.79(C), 220.82(A)"},
    wrong=_PROJECT + _UTILITY + _SMALL + _RANGE,
    right=_PROJECT + _UTILITY + _SMALL.replace("main 60 A", "main 100 A") + _RANGE,
)


@SERVICE.check
def dwelling_service_small(view: View, board: Equipment) -> Iterator[Finding]:
    dwelling = dwelling_of(board, view.loads.basis)
    if dwelling is None or view.tables is None:
        return
    least = view.tables.constant("dwelling-service-least")
    feeder = view.network.supply.get(board.name)
    source = view.model.equipment.get(feeder.source.name) if feeder is not None else None
    service = source is not None and source.kind in ("utility", "meter")
    device = feeder.body.number("rating") if feeder is not None else None
    rating = min((amps for amps in (board.body.number("main"), device) if amps is not None), default=None)
    asked = dwelling.method == "optional" or (service and dwelling.method == "standard")
    if isinstance(least, Looked) and rating is not None and rating < least.value and asked:
        clause = "NEC 2023 230.79(C)" if service else "NEC 2023 220.82(A)"
        yield SERVICE.finding(
            board.place_of("main" if board.body.number("main") == rating else "dwelling"),
            f"`{board.name}` is a dwelling on {rating:g} A; {clause} asks for {least.value:g} A or more",
            found=f"{rating:g} A",
            needed=f"{least.value:g} A or more for {'the service of a dwelling' if service else 'the optional method'}",
            change="Make the supply larger." if service else "Make it larger, or write `dwelling standard`.",
            subject=board.name,
        )
    system = view.loads.system(board.name)
    three_wires = THREE_WIRES.get(dwelling.method)
    if three_wires is not None and system is not None and system.shape not in (Shape.SPLIT3, Shape.TWO_LEGS3):
        yield SERVICE.finding(
            board.place_of("dwelling"),
            f"`{board.name}` has not the three wires that `dwelling {dwelling.method}` asks for",
            found=system.in_words(),
            needed="one set of two legs and a neutral: 120/240 V, or 208Y/120 V (NEC 2023 " + three_wires + ")",
            change="Write `dwelling standard`.",
            subject=board.name,
            fixes=(
                Fix(
                    "Calculate it by Part III of Article 220",
                    (replace(board.place_of("dwelling"), "dwelling standard"),),
                    Safety.LOOK,
                ),
            ),
        )


STANDS = rule(
    name="dwelling-not-existing",
    since="0.1",
    severity=Severity.WARNING,
    scope="board",
    basis="us",
    summary="The calculation of an existing dwelling is asked for on a board that is not marked as existing.",
    why="That calculation tells whether a service or feeder that stands already is enough for what is added, and sizes "
    "no new one.",
    clause={"us": "220.83"},
    wrong=_PROJECT + _UTILITY + _PANEL + "dwelling existing, floor-area 90 m2\n" + _RANGE,
    right=_PROJECT + _UTILITY + _PANEL + "existing, dwelling existing, floor-area 90 m2\n" + _RANGE,
    mends=True,
)


@STANDS.check
def dwelling_not_existing(view: View, board: Equipment) -> Iterator[Finding]:
    dwelling = dwelling_of(board, view.loads.basis)
    if dwelling is None or dwelling.method != "existing" or board.status == "existing":
        return
    place = board.place_of("dwelling")
    mark = Fix("Mark the board `existing`", (append_phrase(place.block, place.span.line, "existing"),), Safety.LOOK)
    other = Fix("Calculate it by 220.82", (replace(place, "dwelling optional"),), Safety.LOOK)
    yield STANDS.finding(
        place,
        f"`{board.name}` is calculated as an existing dwelling, and is {board.status}",
        found=f"`dwelling existing` on a board that is {board.status}",
        needed="a service or feeder that stands already",
        change="Mark the board `existing`, and what stands already on it; or write another method.",
        subject=board.name,
        fixes=(mark, other) if board.status == "new" and "new" not in board.body.flags else (other,),
    )


_FLATS = (
    _PROJECT
    + "utility UTIL 120/240  fault 5 kA, fault-min 3 kA, x/r 2\nfeeder UTIL -> MDP\n"
    + "switchboard MDP 120/240  bus 400 A, main 300 A, rated 10 kA, dwelling multifamily\n"
)
_FLAT = (
    "feeder MDP -> FLAT-K  100 A 2p\n"
    "panel FLAT-K 120/240  bus 125 A, main lugs, rated 10 kA, dwelling optional, floor-area 70 m2\n"
    '  1,3  40 A 2p  8 kW kitchen  "Range"\n  2,4  20 A 2p  3 kW heating  "Panel heaters"\n'
)
_ROW = "".join(_FLAT.replace("FLAT-K", f"FLAT-{k}") for k in (1, 2))

TOGETHER = rule(
    name="dwellings-not-together",
    since="0.1",
    severity=Severity.WARNING,
    scope="board",
    basis="us",
    summary="Dwellings are to count together, and do not meet the conditions of that calculation, or are more than its "
    "tables hold.",
    why="The factors come from units that cook, and heat or cool, with electricity.",
    clause={"us": "220.84(A)"},
    wrong=_FLATS + _ROW + _FLAT.replace("FLAT-K", "FLAT-3").partition("  2,4")[0],
    right=_FLATS + _ROW + _FLAT.replace("FLAT-K", "FLAT-3"),
    mends=True,
)


@TOGETHER.check
def dwellings_not_together(view: View, board: Equipment) -> Iterator[Finding]:
    book = view.loads
    if book.basis is None or not carries_several(board, book.basis):
        return
    place = board.place_of("dwelling")
    together = together_of(board, book.units_of(board.name), book.system(board.name), book.basis)
    failed = together.failed
    if together.unknown:
        yield TOGETHER.finding(
            place,
            f"the load of the {together.units} dwellings on `{board.name}` is unknown: {together.unknown[0]}",
            severity=Severity.GAP,
            found="; ".join(together.unknown),
            needed="a table row for their number",
            why="Without the row no total from here up is known, and nothing is held against it.",
            change="Give them boards with fewer dwellings each, or write their demand as `factor` in place of "
            "`dwelling`.",
            subject=board.name,
        )
    if failed:
        fix = Fix("Calculate them by Part III together", (replace(place, f"dwelling {BY_PART_III}"),), Safety.LOOK)
        yield TOGETHER.finding(
            place,
            f"the dwellings on `{board.name}` do not count together: {failed[0]}",
            found="; ".join(failed),
            needed="several boards marked as dwellings; three or more by 220.84, each with cooking, and with heating "
            "or cooling",
            change=f"Meet every condition, or write `dwelling {BY_PART_III}`; without it the units are added up.",
            subject=board.name,
            fixes=(fix,) if len(book.units_of(board.name)) > 1 else (),
        )


CLASS = rule(
    name="dwelling-class-unlikely",
    since="0.1",
    severity=Severity.WARNING,
    scope="board",
    basis="us",
    summary="A load in a dwelling has another class than its description says.",
    why="Each class has a line of its own in the calculation: a water heater is an appliance, and no heating of rooms.",
    clause={"us": "220.51 to 220.55, 220.82"},
    wrong=_PROJECT + _UTILITY + _PANEL + "dwelling standard, floor-area 90 m2\n"
    '  1,3  30 A 2p  4.5 kW heating  "Water heater"\n',
    right=_PROJECT + _UTILITY + _PANEL + "dwelling standard, floor-area 90 m2\n"
    '  1,3  30 A 2p  4.5 kW appliance  "Water heater"\n',
    mends=True,
)
_LIKELY = (
    ("appliance", re.compile(r"\bwater heater|\bdish ?washer|\bdispos(?:er|al)\b|\btrash compactor", re.I)),
    ("dryer", re.compile(r"\bdryer\b|\bclothes drier\b", re.I)),
    ("kitchen", re.compile(r"\brange\b(?! hood)|\boven\b|\bcook ?top\b", re.I)),
    ("heat-pump", re.compile(r"\bheat[ -]pump\b(?! water)", re.I)),
)
_READ = frozenset(
    {"heating", "cooling", "process", "kitchen", "appliance", "dryer", "heat-pump", "receptacle", "lighting"}
)


@CLASS.check
def dwelling_class_unlikely(view: View, board: Equipment) -> Iterator[Finding]:
    if board.name not in view.loads.within:
        return
    for placed in board.circuits:
        body, leaf = placed.circuit.body, view.loads.leaf(board.name, placed.key)
        if leaf is None or leaf.row is None or not body.description:
            continue
        likely = [word for word, pattern in _LIKELY if pattern.search(body.description)]
        written = [flag for flag in body.flags if flag in _READ]
        if len(likely) != 1 or len(written) != 1 or likely[0] == written[0]:
            continue
        place = Place(placed.block, body.flags[written[0]])
        yield CLASS.finding(
            place,
            f'"{body.description}" on circuit {placed.key} of `{board.name}` counts as `{written[0]}`',
            found=f"`{written[0]}`",
            needed=f"`{likely[0]}`, if it is what its description says",
            change=f"Write `{likely[0]}`, or describe it otherwise.",
            subject=board.name,
            position=placed.key,
            fixes=(Fix(f"Write `{likely[0]}`", (replace(place, likely[0]),), Safety.LOOK),),
        )
