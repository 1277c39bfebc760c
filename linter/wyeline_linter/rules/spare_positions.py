"""Spares, spaces, and what is left free on a board."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.board_positions import positions_of
from wyeline_linter.findings import Finding, Fix, Related, Safety, Severity, delete_line, replace
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LP = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 3p\n"

CONFUSED = rule(
    name="spare-space-confused",
    since="0.1",
    severity=Severity.ADVICE,
    scope="board",
    summary="A `space` has a device or a load, or a `spare` has no device.",
    why="Spare is a device without a load, space an empty position; whoever adds a circuit buys by these words.",
    clause={"us": "408.4"},
    wrong=_LP + "panel LP-1 208Y/120  bus 125 A, main 100 A, spaces 18\n  1  20 A 1p  space\n",
    right=_LP + "panel LP-1 208Y/120  bus 125 A, main 100 A, spaces 18\n  1  20 A 1p  spare\n",
    mends=True,
)


@CONFUSED.also("board", said=("spare", "space"))
def spare_space_confused(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS:
        return
    for placed in equipment.circuits:
        body = placed.circuit.body
        word = "space" if "space" in body.flags else "spare" if "spare" in body.flags else None
        device = "rating" in body.facts or body.poles is not None
        if word is None or device == (word == "spare"):
            continue
        right = "spare" if word == "space" else "space"
        place = Place(placed.block, body.flags[word])
        yield CONFUSED.finding(
            place,
            f"position {placed.key} of `{equipment.name}` is a {word} {'with' if device else 'without'} a device",
            found=f"`{word}` {'with' if device else 'without'} a device",
            needed="`spare` for a device without a load, `space` for an empty position",
            change=f"Write `{right}`.",
            subject=equipment.name,
            position=placed.key,
            fixes=(Fix(f"Write `{right}`", (replace(place, right),), Safety.LOOK),),
            clause=clause_of(view, CONFUSED),
        )
    board = positions_of(view, equipment)
    for occupant in board.occupants:
        if not occupant.empty or occupant.circuit is None or "rating" in occupant.body.facts:
            continue
        devices = [o for p in occupant.positions for o in board.taken.get(p, ()) if not o.empty]
        if devices:
            row = occupant.circuit
            yield CONFUSED.finding(
                occupant.place,
                f"position {occupant.key} of `{equipment.name}` is written as a space, and {devices[0].shown} is there",
                found="a space with a device",
                needed="no row where a device is",
                change="Delete the row.",
                subject=equipment.name,
                position=occupant.key,
                related=(Related(devices[0].place, "the device"),),
                fixes=(Fix("Delete the row", (delete_line(row.block, row.circuit.span.line),), Safety.LOOK),),
                clause=clause_of(view, CONFUSED),
            )


FEW = rule(
    name="few-spare-positions",
    since="0.1",
    severity=Severity.ADVICE,
    scope="board",
    summary="A board is full, or has fewer free positions than the reserve that is asked for.",
    why="The next circuit would need a new panel.",
    clause={"us": "408.54"},
    wrong=_LP + 'panel LP-1 208Y/120  bus 125 A, spaces 2\n  1  20 A 1p  1 kVA lighting  "Stairs"\n'
    '  2  20 A 1p  1 kVA lighting  "Yard"\n',
    right=_LP + 'panel LP-1 208Y/120  bus 125 A, spaces 4\n  1  20 A 1p  1 kVA lighting  "Stairs"\n'
    '  2  20 A 1p  1 kVA lighting  "Yard"\n',
)


@FEW.check
def few_spare_positions(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS or "spaces" not in equipment.body.facts:
        return
    board = positions_of(view, equipment)
    numbered = [o for o in board.occupants if o.positions]
    if not numbered or board.spaces is None:
        return
    # A spare is a device that waits for a circuit: it counts as free.
    idle = {p for o in numbered if "spare" in o.body.flags for p in o.positions}
    devices = {p for o in numbered if not o.empty for p in o.positions if p <= board.spaces} - idle
    free = board.spaces - len(devices)
    reserve = equipment.body.number("reserve")
    reserve = reserve if reserve is not None else view.model.project.number("reserve")
    reserve = reserve if reserve is not None else view.settings.reserve
    least = max(1.0, reserve * board.spaces)
    if free >= least:
        return
    asked = f"{reserve * 100:g} % of {board.spaces}, that is {least:.3g}" if reserve else "at least 1"
    yield FEW.finding(
        equipment.place_of("spaces"),
        f"`{equipment.name}` has {free or 'no'} free position{'' if free == 1 else 's'} of {board.spaces}",
        found=f"{free} of {board.spaces} positions free",
        needed=asked,
        change="Choose a board with more positions, or accept it with a reason.",
        subject=equipment.name,
        clause=clause_of(view, FEW),
    )
