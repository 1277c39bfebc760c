"""Circuits that share wires and a neutral (``with 7``): on different legs, and opened together."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment
from wyeline_linter.board_positions import BoardPositions, Occupant, positions_of
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.positions import move_edit
from wyeline_linter.rules.references import key_of_place
from wyeline_linter.rules.registry import rule
from wyeline_linter.system_words import conductors_text

if TYPE_CHECKING:
    from wyeline_linter.view import View

_BASIS = 'project "Annex"\n  basis us-2023\n'
_LP = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 3p\n"
_PANEL = _LP + "panel LP-1 208Y/120  bus 125 A, main 100 A, spaces 18\n"

SAME_LEG = rule(
    name="shared-neutral-same-leg",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    summary="Circuits that share a neutral are on the same leg.",
    why="On the same leg their currents add up in the neutral, which no device guards, and overheat it.",
    clause={"us": "210.4, 100"},
    wrong=_PANEL + '  1  20 A 1p  1 kVA receptacle tied  "Bench, left"\n'
    '  2  20 A 1p  1 kVA receptacle tied  "Bench, right" with 1\n',
    right=_PANEL + '  1  20 A 1p  1 kVA receptacle tied  "Bench, left"\n'
    '  3  20 A 1p  1 kVA receptacle tied  "Bench, right" with 1\n',
    mends=True,
)
UNTIED = rule(
    name="shared-neutral-untied",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    basis="us",
    summary="Circuits that share a neutral do not open together.",
    why="Whoever works on one of them still finds the current of the other on the neutral.",
    clause={"us": "210.4(B), 240.15(B)(1)"},
    wrong=_BASIS + _PANEL + '  1  20 A 1p  1 kVA receptacle tied  "Bench, left"\n'
    '  3  20 A 1p  1 kVA receptacle  "Bench, right" with 1\n',
    right=_BASIS + _PANEL + '  1  20 A 1p  1 kVA receptacle tied  "Bench, left"\n'
    '  3  20 A 1p  1 kVA receptacle tied  "Bench, right" with 1\n',
    mends=True,
)


def shared_groups(board: BoardPositions) -> list[list[Occupant]]:
    """Circuits that share their wires, the one that owns them first."""
    owners: dict[str, Occupant] = {}
    for occupant in board.occupants:
        if occupant.circuit is not None:
            owners.setdefault(occupant.key, occupant)
            for position in occupant.positions:
                owners.setdefault(str(position), occupant)
    groups: dict[int, list[Occupant]] = {}
    for occupant in board.occupants:
        fact = occupant.body.facts.get("with") if occupant.circuit is not None else None
        owner = owners.get(key_of_place(fact.value.data, fact.value.text)) if fact is not None else None
        if owner is not None and owner is not occupant:
            groups.setdefault(id(owner), [owner]).append(occupant)
    return list(groups.values())


@SAME_LEG.also("board", said=("with",))
def shared_neutral_same_leg(view: View, equipment: Equipment) -> Iterator[Finding]:
    board = positions_of(view, equipment)
    for group in shared_groups(board):
        taken: dict[str, Occupant] = {}
        for occupant in group:
            legs = board.legs_of(occupant)
            twice = [leg for leg in legs or () if leg in taken]
            for leg in legs or ():
                taken.setdefault(leg, occupant)
            if not twice or occupant is group[0]:
                continue
            first = taken[twice[0]]
            free = [leg for leg in board.legs if leg not in taken]
            called = partial(conductors_text, practice=view.basis)
            run = next((r for leg in free for r in board.free_runs(1, frozenset({leg}))), None)
            one = occupant.positions and len(occupant.positions) == 1
            fixes = (
                (Fix(f"Move it to position {run[0]}, on {called(free[:1])}", (move_edit(occupant, run),), Safety.LOOK),)
                if run is not None and one
                else ()
            )
            yield SAME_LEG.finding(
                occupant.place,
                f"circuits {first.key} and {occupant.key} of `{equipment.name}` share a neutral, "
                f"both on {called(twice[:1])}",
                found=f"two circuits on leg {called(twice[:1])} with one neutral",
                needed="a leg of its own for each circuit that shares the neutral",
                change=f"Move it to {listed([called(leg) for leg in free])}."
                if free
                else "Give it a neutral of its own.",
                subject=equipment.name,
                position=occupant.key,
                fixes=fixes,
                clause=clause_of(view, SAME_LEG),
            )


@UNTIED.also("board", said=("with",))
def shared_neutral_untied(view: View, equipment: Equipment) -> Iterator[Finding]:
    board = positions_of(view, equipment)
    for group in shared_groups(board):
        loose = [o for o in group if "tied" not in o.body.flags]
        if not loose:
            continue
        keys = listed([o.key for o in group], "and")
        yield UNTIED.finding(
            loose[0].place,
            f"circuits {keys} of `{equipment.name}` share a neutral, and {listed([o.key for o in loose], 'and')} "
            f"{'is' if len(loose) == 1 else 'are'} not tied",
            found="devices that open one by one",
            needed="devices that open together",
            change="Write `tied` on each of them.",
            subject=equipment.name,
            position=loose[0].key,
            fixes=(Fix("Tie them", tuple(map(_tie, loose)), Safety.LOOK),),
            clause=clause_of(view, UNTIED),
        )


def _tie(occupant: Occupant) -> Edit:
    span = occupant.body.poles_span or occupant.place.span
    return Edit(occupant.place.block, span.line, span.end, span.line, span.end, " tied")
