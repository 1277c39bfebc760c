"""What deserves a word although the connection can be made, and what cannot be judged yet."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.tokens import spelled
from wyeline_linter.board_positions import positions_of
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity, replace
from wyeline_linter.network import two_sided
from wyeline_linter.rules.connection import NAMEPLATE, clause_of, legs_edit, legs_of_map, legs_text, set_by
from wyeline_linter.rules.registry import rule
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import Known, System
from wyeline_linter.verdicts import Cause, Feeds, LegMap, NoteKind, Refusal, Undecided

if TYPE_CHECKING:
    from wyeline_linter.derive import FeederState
    from wyeline_linter.view import View

_WYE = "utility UTIL 480Y/277  fault 14 kA, x/r 4\nfeeder UTIL -> MSB\nswitchboard MSB 480Y/277  bus 400 A\n"
_LOW = "utility UTIL 208Y/120  fault 14 kA, x/r 4\nfeeder UTIL -> DP\npanel DP 208Y/120  bus 400 A\n"

NEIGHBOUR = rule(
    name=NoteKind.NEIGHBOUR_NOMINAL.value,
    since="0.1",
    severity=Severity.WARNING,
    scope="feeder",
    summary="A board restates its voltage by the neighbour of what its source makes, such as 415Y/240 for 400Y/230.",
    why="The source decides the nominal voltage; two names for one system end in equipment bought for the other.",
    clause={"iec": "60038"},
    wrong="utility UTIL 400Y/230  fault 14 kA, x/r 4\nfeeder UTIL -> DP\npanel DP 415Y/240  bus 400 A\n",
    right="utility UTIL 400Y/230  fault 14 kA, x/r 4\nfeeder UTIL -> DP\npanel DP 400Y/230  bus 400 A\n",
    mends=True,
)
REVERSED = rule(
    name=NoteKind.REVERSED_ROTATION.value,
    since="0.1",
    severity=Severity.WARNING,
    scope="feeder",
    summary="Three legs are taken in the opposite order, so that the phases turn backwards behind this feeder.",
    why="Motors fed from here turn backwards: pumps do not pump, and a conveyor runs into people.",
    clause={"us": "408.3(E)"},
    wrong=_LOW + "panel LP-1 208Y/120  bus 125 A\nfeeder DP[CBA] -> LP-1  100 A 3p\n",
    right=_LOW + "panel LP-1 208Y/120  bus 125 A\nfeeder DP[ABC] -> LP-1  100 A 3p\n",
    mends=True,
)
IMPEDANCE = rule(
    name=NoteKind.NEUTRAL_ON_IMPEDANCE.value,
    since="0.1",
    severity=Severity.WARNING,
    scope="feeder",
    summary="Loads to neutral hang on a system whose neutral is earthed through an impedance.",
    why="That neutral may stand at full phase voltage in an earth fault, and the impedance is not made for load.",
    clause={"us": "250.36"},
    wrong="utility UTIL 480Y/277  fault 14 kA, x/r 4, ground-resistor 5 A\nfeeder UTIL -> MSB\n"
    "switchboard MSB 480Y/277  bus 400 A\n",
    right="utility UTIL 480Y/277  fault 14 kA, x/r 4, ground-resistor 5 A\nfeeder UTIL -> MSB\n"
    "switchboard MSB 480 3ph  bus 400 A\n",
)
LEGS = rule(
    name="legs-not-stated",
    since="0.1",
    severity=Severity.GAP,
    scope="feeder",
    summary="A feeder takes fewer legs than the board has, and does not say which.",
    why="Which legs carry the load decides the load of every leg above, and is never guessed.",
    wrong=_WYE + "transformer TX-1 480 1ph -> 120/240  25 kVA, z 2.8 %\nfeeder MSB -> TX-1  70 A 2p\n",
    right=_WYE + "transformer TX-1 480 1ph -> 120/240  25 kVA, z 2.8 %\nfeeder MSB[AB] -> TX-1  70 A 2p\n",
    mends=True,
)
UNKNOWN = rule(
    name=Cause.UNKNOWN.value,
    since="0.1",
    severity=Severity.GAP,
    scope="equipment",
    summary="What a source or transformer gives is not known yet, so nothing behind it can be judged.",
    why="Unknown is not the same as wrong: once this fact is written, everything behind it is judged.",
    wrong=_WYE + "transformer TX-1 480 3ph  45 kVA, z 4.2 %\nfeeder MSB -> TX-1  70 A 3p\n",
    right=_WYE + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %\nfeeder MSB -> TX-1  70 A 3p\n",
)


@NEIGHBOUR.check
def remarks(view: View, feeder: Feeder) -> Iterator[Finding]:
    """Every remark about a feeder that is not refused."""
    state = view.feeder_state(feeder.key)
    source, target = view.equipment(feeder.source.name), view.equipment(feeder.target.name)
    if state is None or source is None or target is None or source is target or not isinstance(state.offered, Known):
        return
    if view.derivation.delivers_into(feeder):
        source, target = target, source
    if isinstance(state.verdict, Undecided):
        yield _legs_needed(view, feeder, state.verdict, None)
    elif isinstance(state.verdict, Feeds):
        yield from _remarks(view, feeder, source, target, state.verdict, state)


def _legs_needed(view: View, feeder: Feeder, verdict: Undecided, ways: tuple[LegMap, ...] | None) -> Finding:
    choices: list[tuple[str, ...]] = []
    for way in ways or ():
        legs = legs_of_map(way)
        if frozenset(legs) not in map(frozenset, choices):
            choices.append(legs)
    state = view.feeder_state(feeder.key)
    offered = state.offered.system if state is not None and isinstance(state.offered, Known) else None
    if not choices and offered is not None and feeder.body.poles is not None:
        choices = _pairs(offered, feeder.body.poles.count)
    bus = conductors_text(offered.legs, view.basis) if offered is not None else ""
    shown = listed([f"`{legs_text(c)}`" for c in choices])
    return LEGS.finding(
        Place(feeder.block, feeder.source.span),
        f"`{feeder.key}` does not say which of the legs {bus} of `{feeder.source.name}` it takes",
        found="no legs behind the feeder's source" if ways else "; ".join(verdict.reasons),
        needed=shown or "legs",
        change=f"Write {shown}, or the positions of its device.",
        subject=feeder.key,
        fixes=tuple(
            Fix(f"Take legs {conductors_text(c, view.basis)}", (legs_edit(view, feeder, c),), Safety.LOOK)
            for c in choices[:3]
        ),
    )


@LEGS.also("board")
def circuit_legs_not_stated(view: View, equipment: Equipment) -> Iterator[Finding]:
    """A label gives no leg: a circuit of fewer poles than the board has legs says which ones it takes."""
    if not equipment.circuits:
        return
    board = positions_of(view, equipment)
    if board.numbered:
        return
    unread = {p.line for p in equipment.statement.problems if p.rule == "unreadable-line"}
    for occupant in board.occupants:
        if occupant.place.block is equipment.block and occupant.place.span.line in unread:
            continue  # its legs may stand in what could not be read
        idle = "spare" in occupant.body.flags or occupant.empty
        if occupant.circuit is None or idle or not board.legs or board.legs_of(occupant) is not None:
            continue
        span = occupant.place.span
        count = occupant.poles.count if occupant.poles is not None else 1
        choices = _pairs(board.system, count) if board.system is not None else []
        like = "L" if view.derivation.practice == "iec" else ""
        texts = [legs_text(tuple(leg for leg in choice if leg != "N"), like) for choice in choices]
        shown = listed([f"`{occupant.key}{text}`" for text in texts])
        yield LEGS.finding(
            occupant.place,
            f"circuit {occupant.key} of `{equipment.name}` does not say which legs it takes",
            found=f"a label without legs, and {count} of {len(board.legs)} legs taken",
            needed=shown or "legs behind the label",
            change=f"Write {shown}." if shown else "Write its legs behind the label.",
            subject=equipment.name,
            position=occupant.key,
            fixes=tuple(
                Fix(
                    f"Write `{occupant.key}{text}`",
                    (Edit(occupant.place.block, span.line, span.end, span.line, span.end, text),),
                    Safety.LOOK,
                )
                for text in texts
            ),
        )


def _pairs(of: System, count: int) -> list[tuple[str, ...]]:
    legs = of.legs
    if count == 1:
        return [(leg, "N") if of.has_neutral else (leg,) for leg in legs]
    pairs: list[tuple[str, ...]] = list(zip(legs, (*legs[1:], legs[0]), strict=True))
    return pairs[: 1 if len(legs) == 2 else 3]


def _remarks(
    view: View, feeder: Feeder, source: Equipment, target: Equipment, verdict: Feeds, state: FeederState
) -> Iterator[Finding]:
    offered = state.offered.system if isinstance(state.offered, Known) else None
    if offered is None:
        return
    if not verdict.only_choice and view.derivation.taken_legs(feeder, state.offered) is None:
        yield _legs_needed(view, feeder, Undecided(()), verdict.maps)
    for note in verdict.notes:
        if note.kind is NoteKind.NEIGHBOUR_NOMINAL:
            yield _neighbour(view, feeder, source, target, verdict, state)
        elif note.kind is NoteKind.NAMEPLATE_OFF:
            plate = state.wanted.text if state.wanted is not None else ""
            yield NAMEPLATE.finding(
                Place(feeder.block, feeder.target.span),
                f"`{target.name}` is made for {plate}, and `{source.name}` gives {verdict.best.system.figures()}",
                severity=Severity.WARNING,
                found=f"`{source.name}`: {verdict.best.system.figures()}",
                needed=f"`{target.name}`: {plate}",
                why=f"{note.text[:1].upper()}{note.text[1:]}.",
                change="Choose equipment rated for this voltage, or correct the nameplate.",
                subject=feeder.key,
                related=set_by(view, source),
                clause=clause_of(view, NAMEPLATE),
            )
        elif note.kind is NoteKind.REVERSED_ROTATION:
            yield _reversed(view, feeder, target, verdict, offered)
        elif note.kind is NoteKind.NEUTRAL_ON_IMPEDANCE and state.wanted is not None:
            yield IMPEDANCE.finding(
                Place(feeder.block, feeder.target.span),
                f"`{target.name}` takes a neutral from `{source.name}`, and {note.text}",
                found=note.text,
                needed="a solidly earthed neutral for loads to neutral, or no neutral",
                change="Leave the neutral out, or feed loads to neutral through a transformer.",
                subject=feeder.key,
                related=set_by(view, source),
                clause=clause_of(view, IMPEDANCE),
            )


def _neighbour(
    view: View, feeder: Feeder, source: Equipment, target: Equipment, verdict: Feeds, state: FeederState
) -> Finding:
    actual = verdict.best.system.nominal.text
    side = target.primary
    fixes: tuple[Fix, ...] = ()
    if side is not None and side == target.statement.primary:
        place = Place(target.block, side.span)
        fixes = (Fix(f"Write `{actual}`, as the source makes it", (replace(place, actual),), Safety.LOOK),)
    plate = state.wanted.text if state.wanted is not None else ""
    return NEIGHBOUR.finding(
        Place(target.block, side.span) if fixes and side is not None else Place(feeder.block, feeder.target.span),
        f"`{target.name}` is written {plate}, and `{source.name}` gives {actual}",
        found=f"`{target.name}`: {plate}",
        needed=f"{actual}, as its source makes it, or nothing: the voltage is inherited",
        change=f"Write `{actual}`, or leave the voltage out.",
        subject=target.name,
        related=set_by(view, source),
        fixes=fixes,
        clause=clause_of(view, NEIGHBOUR),
    )


def _reversed(view: View, feeder: Feeder, target: Equipment, verdict: Feeds, offered: System) -> Finding:
    legs = verdict.best.legs
    motors = target.kind == "motor" or any("motor" in p.circuit.body.flags for p in target.circuits)
    motors |= any(
        (e := view.equipment(f.target.name)) is not None and e.kind == "motor" for f in view.feeders_out_of(target.name)
    )
    called = partial(conductors_text, practice=view.basis)
    return REVERSED.finding(
        Place(feeder.block, feeder.source.legs_span or feeder.source.span),
        f"`{target.name}` takes legs {called(legs)} of `{feeder.source.name}`: its phases turn backwards",
        severity=Severity.ERROR if motors else Severity.WARNING,
        found=f"legs in the order {called(legs)}",
        needed=f"the order {called(offered.legs)}, or any that follows it round",
        change="Swap any two legs.",
        subject=feeder.key,
        fixes=(Fix(f"Take the legs in the order {called(offered.legs)}", (legs_edit(view, feeder, offered.legs),)),),
        clause=clause_of(view, REVERSED),
    )


@UNKNOWN.check
def upstream_system_unknown(view: View, equipment: Equipment) -> Iterator[Finding]:
    """The first place of a chain where a system is not known, for a reason of its own."""
    state = view.state(equipment.name)
    if state is None or isinstance(state.system, Known) or equipment.damaged:
        return
    if state.arriving is not None and not isinstance(state.arriving, Known):
        return  # something above says why
    if isinstance(state.winding, Refusal):
        return
    side = equipment.secondary if equipment.arrow else equipment.primary
    if side is not None and view.derivation.stated(side) is None:
        return  # what is written there cannot be read, or names no system: that is said where it stands
    reasons = getattr(state.system, "reasons", ())
    below = [f"`{f.target.name}`" for f in view.feeders_out_of(equipment.name)]
    told = f", so {listed(below[:3], 'and')} cannot be judged yet" if below else ""
    what = "; ".join(reasons) or f"the voltage of `{equipment.name}` is not known"
    yield UNKNOWN.finding(
        equipment.place,
        f"{what}{told}",
        found=what,
        needed=f"the voltage that `{equipment.name}` gives",
        change=_missing_side(equipment),
        subject=equipment.name,
    )


def _missing_side(equipment: Equipment) -> str:
    name = spelled(equipment.name)
    if two_sided(equipment):
        primary = equipment.primary.voltage.text if equipment.primary and equipment.primary.voltage else "480 3ph"
        return f"Write both voltages, as in `{equipment.kind} {name} {primary} -> 208Y/120`."
    return f"Write its voltage, as in `{equipment.kind} {name} 480Y/277`."
