"""What is said of third harmonics, and counts nowhere."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place, PlacedCircuit
from wyeline_grammar.model import Body
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.loads.measured import stands
from wyeline_linter.loads.measured_sheets import measurement_of
from wyeline_linter.loads.third_harmonics import WORD
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_FED = (
    'project "Annex"\nutility UTIL 400Y/230  fault 10 kA, x/r 4, earthing TN-S\nfeeder UTIL -> UV  63 A 4p\n'
    "panel UV 400Y/230  bus 63 A\n"
)

NO_WAY_BACK = rule(
    name="third-harmonic-not-counted",
    since="0.1",
    severity=Severity.WARNING,
    scope="circuit",
    summary="A third harmonic counts nowhere: no neutral is there for it to return through, it is within what was "
    "measured, or another is stated of the same current.",
    why="Those of three legs are in step: without a neutral none flow. Between two legs they come back on a leg.",
    wrong=_FED + '  F1  16 A 3p  5 kW process third-harmonic 30 %  "Drives"  4G2.5mm2 Cu NYM-J  9 m\n',
    right=_FED + '  F1  16 A 3p+N  5 kW process third-harmonic 30 %  "Drives"  5G2.5mm2 Cu NYM-J  9 m\n',
)


@NO_WAY_BACK.check
def on_a_circuit(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    fact = placed.circuit.body.facts.get(WORD)
    leaf = view.loads.leaf(board.name, placed.key) if fact is not None else None
    if fact is None or not fact.number or leaf is None or leaf.row is None:
        return
    place, where = Place(placed.block, fact.span), f"circuit {placed.key} of `{board.name}`"
    if leaf.key.third == 0.0:
        yield _told(place, where, placed.circuit.body, board.name, placed.key)
    elif stands(placed.circuit.body.flags) and _only_measured(view, board.name):
        yield NO_WAY_BACK.finding(
            place,
            f"{where} states {fact.value.text} of third harmonic, and is within what was measured at `{board.name}`",
            found=f"`{WORD} {fact.value.text}`, and nothing of the sort at `{board.name}`",
            needed=f"the third harmonic of all that `{board.name}` carries",
            why="The measurement stands in place of its load, and says nothing of what adds up in the neutral.",
            change=f"Write `{WORD}` at `{board.name}`, as it was measured there.",
            subject=board.name,
            position=placed.key,
        )


def _only_measured(view: View, name: str) -> bool:
    """Whether a board's measurement stands in place of its loads, and neither it nor its feeder says what its third
    harmonic is."""
    return measurement_of(view.loads, name) is not None and view.loads.nodes[name].third is None


@NO_WAY_BACK.also("equipment", said=(WORD,))
def on_equipment(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.body.number(WORD) and _returns_nowhere(view, equipment.name):
        yield _told(equipment.place_of(WORD), f"`{equipment.name}`", equipment.body, equipment.name)


@NO_WAY_BACK.also("feeder", said=(WORD,))
def on_a_feeder(view: View, feeder: Feeder) -> Iterator[Finding]:
    fact = feeder.body.facts.get(WORD)
    target = view.equipment(feeder.target.name) if fact is not None else None
    if fact is None or target is None or view.network.supply.get(target.name) is not feeder:
        return
    place, own = Place(feeder.block, fact.span), target.body.number(WORD)
    if own is not None and own != fact.number:
        stated = target.body.facts[WORD].value.text
        yield NO_WAY_BACK.finding(
            place,
            f"`{feeder.key}` states {fact.value.text} of third harmonic and `{target.name}` {stated}, which counts",
            found=f"`{WORD} {fact.value.text}` and `{WORD} {stated}` of the same current",
            needed="one of them",
            why="Of two figures one is wrong; the neutral may be sized by that.",
            change="Write the right one, at one of the two.",
            subject=feeder.key,
        )
    elif fact.number and _returns_nowhere(view, target.name):
        yield _told(place, f"`{feeder.key}`", feeder.body, feeder.key)


def _returns_nowhere(view: View, name: str) -> bool:
    """Whether what is stated of equipment or its feeder came to nothing, as far as its voltage is settled."""
    node = view.loads.nodes.get(name)
    if node is None:
        return False
    stated = node.third or node.above
    if stated is not None:
        return not stated.stated_only and stated.share == 0.0
    return any(leaf.row is not None and leaf.key.third == 0.0 for leaf in node.leaves if not leaf.place)


def _told(place: Place, where: str, body: Body, subject: str, position: str = "") -> Finding:
    stated = body.facts[WORD].value.text
    return NO_WAY_BACK.finding(
        place,
        f"{where} states {stated} of third harmonic, and has no neutral that it returns through",
        found=f"`{WORD} {stated}`, and no neutral",
        needed="a neutral, or no third harmonic: without one a load draws other harmonics",
        change="Write its neutral, or delete the phrase.",
        subject=subject,
        position=position,
    )
