"""Transformers: what their windings make of what feeds them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment, Place
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.connection import LEG_VOLTAGE, clause_of, rule_of_cause
from wyeline_linter.rules.registry import NotAccepted, Rule, rule
from wyeline_linter.system_words import with_legs_of
from wyeline_linter.verdicts import Cause, NoteKind, Refusal
from wyeline_linter.windings import Transformed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_WYE = "utility UTIL 480Y/277  fault 14 kA, x/r 4\nfeeder UTIL -> MSB\nswitchboard MSB 480Y/277  bus 400 A\n"
_TX = _WYE + "feeder MSB -> TX-1  70 A 3p\n"

CONNECTION = rule(
    name=Cause.WINDING_CONNECTION.value,
    since="0.1",
    severity=Severity.ERROR,
    scope="transformer",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A transformer's connection cannot be wound, or does not give what its secondary says.",
    why="What stands behind it cannot be told from a connection that does not exist.",
    clause={"iec": "60076-1 7"},
    wrong=_TX + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %, connection Dyn2\n",
    right=_TX + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %, connection Dyn1\n",
    mends=True,
)
OFF_NOMINAL = rule(
    name=NoteKind.WINDING_OFF_NOMINAL.value,
    since="0.1",
    severity=Severity.WARNING,
    scope="equipment",
    summary="A transformer's primary is wound for a voltage some percent off the one that feeds it.",
    why="Every voltage behind it is off by the same share, unless a tap makes up for it.",
    wrong=_TX + "transformer TX-1 460 3ph -> 208Y/120  45 kVA, z 4.2 %\n",
    right=_TX + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %\n",
)
FLOATS = rule(
    name=NoteKind.PRIMARY_STAR_FLOATS.value,
    since="0.1",
    severity=Severity.WARNING,
    scope="equipment",
    summary="A wye-wye transformer feeds loads to neutral while its primary star point is not tied.",
    why="Unequal loads push the secondary neutral off centre: some legs get too much, others too little.",
    wrong=_TX + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %, connection Yyn0\n",
    right=_TX + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %, connection Dyn1\n",
)
TIED = rule(
    name=NoteKind.PRIMARY_STAR_TIED.value,
    since="0.1",
    severity=Severity.WARNING,
    scope="equipment",
    summary="A wye-delta transformer has its primary neutral tied.",
    why="It then feeds every earth fault and every unbalance upstream, and may burn doing so.",
    wrong=_TX + "transformer TX-1 480Y/277 -> 240 3ph  45 kVA, z 4.2 %, connection YNd1\n",
    right=_TX + "transformer TX-1 480 3ph -> 240 3ph  45 kVA, z 4.2 %, connection Yd1\n",
)
ZERO_SEQUENCE = rule(
    name=NoteKind.ZERO_SEQUENCE.value,
    since="0.1",
    severity=Severity.ADVICE,
    scope="equipment",
    summary="A wye-wye transformer with both neutrals tied passes unbalance on, depending on its core.",
    why="Earth faults and unequal loads are not seen at their full size upstream on a three-limb core.",
    wrong=_TX + "transformer TX-1 480Y/277 -> 208Y/120  45 kVA, z 4.2 %\n",
    right=_TX + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %\n",
)
_BY_NOTE: dict[NoteKind, tuple[Rule, str]] = {
    NoteKind.WINDING_OFF_NOMINAL: (
        OFF_NOMINAL,
        "Set a tap that makes up for it, or choose another unit.",
    ),
    NoteKind.PRIMARY_STAR_FLOATS: (FLOATS, "Tie the primary neutral, or choose a delta primary."),
    NoteKind.PRIMARY_STAR_TIED: (TIED, "Leave the primary star point open: write the primary as `3ph`."),
    NoteKind.ZERO_SEQUENCE: (ZERO_SEQUENCE, "Choose a delta primary, or let the maker confirm the core."),
}
_NEEDED: dict[NoteKind, str] = {
    NoteKind.WINDING_OFF_NOMINAL: "windings for the voltage that arrives",
    NoteKind.PRIMARY_STAR_FLOATS: "a tied primary neutral or a delta winding",
    NoteKind.PRIMARY_STAR_TIED: "an open primary star point, unless a grounding bank is meant",
    NoteKind.ZERO_SEQUENCE: "a delta winding, where unbalance shall stay behind the transformer",
}


@CONNECTION.check
def windings(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind != "transformer":
        return
    state = view.state(equipment.name)
    winding = state.winding if state is not None else None
    if isinstance(winding, Refusal):
        yield _refused(view, equipment, winding)
    elif isinstance(winding, Transformed):
        for note in winding.notes:
            if note.kind in _BY_NOTE and not (note.kind is NoteKind.WINDING_OFF_NOMINAL and _tapped(equipment)):
                found, change = _BY_NOTE[note.kind]
                yield found.finding(
                    equipment.place,
                    f"`{equipment.name}`: {note.text}",
                    found=note.text,
                    needed=_NEEDED[note.kind],
                    change=change,
                    subject=equipment.name,
                )


def _tapped(equipment: Equipment) -> bool:
    return bool(equipment.body.number("tap"))


def _refused(view: View, equipment: Equipment, refusal: Refusal) -> Finding:
    found = CONNECTION if refusal.cause is Cause.WINDING_CONNECTION else rule_of_cause(refusal.cause) or LEG_VOLTAGE
    fact = equipment.body.facts.get("connection")
    place = equipment.place_of("connection") if fact is not None else equipment.place
    own = equipment.statement.body.facts.get("connection")
    if found is not CONNECTION and equipment.statement.secondary is not None:
        place = Place(equipment.block, equipment.statement.secondary.span)
    near_ones = refusal.nearest if found is CONNECTION else ()
    edits: list[tuple[str, Edit]] = []
    if own is not None:
        written = Place(equipment.block, own.span)
        edits = [(word, replace(written, f"connection {word}")) for word in near_ones]
    shown = listed([f"`{word}`" for word in near_ones])
    why = with_legs_of(view.basis, refusal.why)
    return found.finding(
        place,
        f"`{equipment.name}` cannot make {refusal.needed} of {refusal.found}: {why}",
        found=f"{refusal.found} -> {refusal.needed}" + (f", connection {fact.value.text}" if fact else ""),
        needed=shown or "windings that fit both sides",
        why=f"{why[:1].upper()}{why[1:]}.",
        change=f"Write {shown}." if shown else "Write the voltages and the connection of one unit that can be bought.",
        subject=equipment.name,
        fixes=tuple(Fix(f"Write `connection {word}`", (edit,), Safety.LOOK) for word, edit in edits),
        clause=clause_of(view, found),
    )
