"""Positions of boards: each taken once, on the legs that it says, by a device that can reach them."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from itertools import count
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.notation import Voltage
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.board_positions import BoardPositions, Occupant, positions_of
from wyeline_linter.derive import EquipmentState
from wyeline_linter.findings import Edit, Finding, Fix, Related, Safety, Severity, replace
from wyeline_linter.removed import REMOVED
from wyeline_linter.rules.connection import POLES, clause_of, legs_text, poles_edit
from wyeline_linter.rules.registry import NotAccepted, rule
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import Known

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LP = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 3p\n"
_PANEL = _LP + "panel LP-1 208Y/120  bus 125 A, main 100 A, spaces 18\n"


def _fix(title: str, *edits: Edit) -> Fix:
    return Fix(title, edits, Safety.LOOK)


def written(positions: tuple[int, ...]) -> str:
    """Positions as a line writes them: ``2,4``."""
    return ",".join(map(str, positions))


def move_edit(occupant: Occupant, positions: tuple[int, ...]) -> Edit:
    """Write other positions where these stand."""
    text = written(positions)
    return replace(occupant.place, text if occupant.feeder is None else f"at {text}")


def move_fixes(board: BoardPositions, occupant: Occupant, legs: frozenset[str] | None = None) -> tuple[Fix, ...]:
    """The next free runs for a device: on the same legs where one is left, else on any."""
    poles = occupant.poles.count if occupant.poles is not None else len(occupant.positions)
    poles = max(poles, 1)
    for wanted in (legs, None) if legs is not None else (None,):
        found = next(board.free_runs(poles, wanted), None)
        if found is not None:
            title = f"Move it to {written(found)}, which {'is' if poles == 1 else 'are'} free"
            return (_fix(title, move_edit(occupant, found)),)
    return ()


def _leaving(one: Occupant, other: Occupant) -> Occupant | None:
    """The circuit of the two that the project removes, where the other one stays."""
    going = [o for o in (one, other) if o.circuit is not None and REMOVED in o.body.flags]
    return going[0] if len(going) == 1 and going[0].positions else None


def _label_fix(board: BoardPositions, leaving: Occupant) -> Fix:
    """A label of its own, with its legs where they are known: its row stays, and its positions are free."""
    taken = {occupant.key for occupant in board.occupants}
    label = next(n for n in (f"X{leaving.positions[0]}" + "-1" * again for again in count()) if n not in taken)
    legs = board.legs_of(leaving)
    text = label if legs is None else f"{label}[{''.join(legs)}]"
    return _fix(f"Write `{text}` for the circuit that is removed", replace(leaving.place, text))


def _change(leaving: Occupant | None) -> str:
    if leaving is None:
        return "Move one of them to free positions."
    who = leaving.shown[:1].upper() + leaving.shown[1:]
    return f"{who} is removed: write a label in place of its position, and the position is the other's."


OCCUPIED = rule(
    name="position-occupied",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    not_accepted=NotAccepted.UNCLEAR,
    summary="Two devices want one position, or a device sits beyond the last one.",
    why="Only one device fits a position; the second would not be there when the panel is built.",
    wrong=_PANEL + '  1  20 A 1p  1 kVA lighting  "Stairs"\n  1  20 A 1p  1 kVA lighting  "Yard"\n',
    right=_PANEL + '  1  20 A 1p  1 kVA lighting  "Stairs"\n  3  20 A 1p  1 kVA lighting  "Yard"\n',
    mends=True,
)


@OCCUPIED.check
def position_occupied(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS:
        return
    board = positions_of(view, equipment)
    told: set[int] = set()
    for where, wanting in board.taken.items():
        if len(wanting) < 2:
            continue
        devices = [o for o in wanting if not o.empty]
        for later in devices[1:]:
            if id(later) in told or later is devices[0]:
                continue
            told.add(id(later))
            first = devices[0]
            legs = frozenset(later.stated_legs or ()) - {"N"}
            leaving = _leaving(first, later)
            yield OCCUPIED.finding(
                later.place,
                f"position {where} of `{equipment.name}` is taken by {first.shown}, and {later.shown} wants it, too",
                found=f"two devices on position {where}",
                needed="one device on each position",
                change=_change(leaving),
                subject=equipment.name,
                position=later.key,
                related=(Related(first.place, "the position is taken here"),),
                fixes=(
                    *(() if leaving is None else (_label_fix(board, leaving),)),
                    *(move_fixes(board, later, legs or None) if later.positions else ()),
                ),
            )
    spaces = board.spaces
    if spaces is None or all(1 <= where <= spaces for where in board.taken if isinstance(where, int)):
        return
    for occupant in board.occupants:
        beyond = [p for p in occupant.positions if p > spaces or p < 1]
        if beyond:
            yield OCCUPIED.finding(
                occupant.place,
                f"`{equipment.name}` has {board.spaces} positions, and {occupant.shown} wants {written(tuple(beyond))}",
                found=f"position {written(tuple(beyond))}",
                needed=f"positions 1 to {board.spaces}",
                change="Move it to free positions, or correct `spaces`.",
                subject=equipment.name,
                position=occupant.key,
                fixes=move_fixes(board, occupant),
            )


LEG_CONFLICT = rule(
    name="position-leg-conflict",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    summary="The legs that are written are not those of the positions that are taken.",
    why="The bus decides which leg a position is on; a schedule that says otherwise loads the wrong leg.",
    clause={"us": "408.3(E)"},
    wrong=_PANEL + "panel APT-1 208Y/120 1ph  bus 125 A\nfeeder LP-1[CA] -> APT-1  60 A 2p at 7,9\n",
    right=_PANEL + "panel APT-1 208Y/120 1ph  bus 125 A\nfeeder LP-1[AB] -> APT-1  60 A 2p at 7,9\n",
    mends=True,
)


@LEG_CONFLICT.check
def position_leg_conflict(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS:
        return
    board = positions_of(view, equipment)
    for occupant in board.occupants:
        if not occupant.stated_legs and not occupant.body.leg_loads:
            continue
        legs = board.legs_of(occupant)
        if legs is None:
            continue
        stated = tuple(leg for leg in occupant.stated_legs or () if leg != "N")
        if occupant.positions and stated and set(stated) != set(legs):
            yield _conflict(view, board, occupant, stated, legs)
        strange = [load.leg for load in occupant.body.leg_loads if load.leg not in legs]
        if strange and occupant.circuit is not None:
            span = next(load.span for load in occupant.body.leg_loads if load.leg in strange)
            called = partial(conductors_text, practice=view.basis)
            yield LEG_CONFLICT.finding(
                Place(occupant.place.block, span),
                f"circuit {occupant.key} of `{equipment.name}` is on {called(legs)}, and not on {called(strange[:1])}",
                found=f"a load on leg {called(strange[:1])}",
                needed=f"loads on {called(legs)}",
                change=f"Write the leg that it is on: {listed([called(leg) for leg in legs])}.",
                subject=equipment.name,
                position=occupant.key,
                clause=clause_of(view, LEG_CONFLICT),
            )


def _conflict(
    view: View, board: BoardPositions, occupant: Occupant, stated: tuple[str, ...], legs: tuple[str, ...]
) -> Finding:
    at, place = written(occupant.positions), occupant.stated_place
    called = partial(conductors_text, practice=view.basis)
    fixes: list[Fix] = []
    if place is not None and len(set(legs)) == len(legs) == len(stated):
        like = place.block.lines[place.span.line][place.span.start : place.span.end]
        fixes.append(_fix(f"Write legs {called(legs)}", replace(place, legs_text(legs, like))))
    if len(stated) == len(occupant.positions):
        runs = [
            r for r in board.free_runs(len(stated), frozenset(stated)) if board.numbering.legs(r, board.legs) == stated
        ]
        if runs:
            fixes.append(_fix(f"Move it to {written(runs[0])}, on {called(stated)}", move_edit(occupant, runs[0])))
    name = board.board.name
    many = "positions" if len(occupant.positions) > 1 else "position"
    are = "are" if len(occupant.positions) > 1 else "is"
    return LEG_CONFLICT.finding(
        place or occupant.place,
        f"{many} {at} of `{name}` {are} on {called(legs, joint=' and ')}, not on {called(stated, joint=' and ')}",
        found=f"legs {called(stated)}",
        needed=f"legs {called(legs)}, as {many} {at} {are}",
        change="Write the legs of the positions, or take positions on these legs.",
        subject=name,
        position=occupant.key,
        related=(Related(occupant.place, "these positions"),) if place is not None else (),
        fixes=tuple(fixes),
        clause=clause_of(view, LEG_CONFLICT),
    )


STRADDLE = rule(
    name="multi-pole-straddle",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    summary="The positions of a multi-pole device do not lie one below the other, each on a leg of its own.",
    why="A device of several poles takes neighbouring positions of one column, and can reach no leg twice.",
    clause={"us": "408.3(E), 240.15"},
    wrong=_PANEL + '  1,4  20 A 2p  2 kW heating  "Foyer"\n',
    right=_PANEL + '  1,3  20 A 2p  2 kW heating  "Foyer"\n',
    mends=True,
)


@STRADDLE.check
def multi_pole_straddle(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS:
        return
    board = positions_of(view, equipment)
    for occupant in board.occupants:
        positions = occupant.positions
        if len(positions) < 2 or occupant.empty:
            continue
        legs = board.numbering.legs(positions, board.legs)
        twice = len(set(legs)) < len(legs)
        if board.numbering.is_run(positions) and not twice:
            continue
        most = max(len(board.legs), 2)
        run = board.numbering.run(positions[0], min(len(positions), most))
        called = partial(conductors_text, practice=view.basis)
        others = [o for p in run for o in board.taken.get(p, ()) if o is not occupant and not o.empty]
        fixes: tuple[Fix, ...] = ()
        fits = len(run) == len(positions) and not board.numbering.is_run(positions)
        if fits and not others and run[-1] <= (board.spaces or run[-1]):
            fixes = (_fix(f"Write {written(run)}", move_edit(occupant, run)),)
        else:
            fixes = move_fixes(board, occupant)
        why = f"on {called(legs, joint=' and ')}" if twice else "not one below the other"
        yield STRADDLE.finding(
            occupant.place,
            f"positions {written(positions)} of `{equipment.name}` are {why}, so one device cannot take them",
            found=f"positions {written(positions)}" + (f" on {called(legs)}" if legs else ""),
            needed=f"neighbours such as {written(run)}, each on a leg of its own",
            change="Take positions one below the other, and no more poles than there are legs.",
            subject=equipment.name,
            position=occupant.key,
            fixes=fixes,
            clause=clause_of(view, STRADDLE),
        )


def _label_for(view: View, board: BoardPositions, occupant: Occupant) -> str:
    """A label in place of one number that stands for a device of several poles, as IEC boards are numbered; or ""."""
    poles = occupant.poles
    if poles is None or poles.count < 2 or len(occupant.positions) != 1 or not (view.basis or "").startswith("iec"):
        return ""
    label = f"F{occupant.positions[0]}"
    return label if all(o.key != label for o in board.occupants) else ""


_LEG_TO_NEUTRAL = frozenset({"lighting", "receptacle", "sign", "show-window", "it"})
"""Classes of loads that one pole mostly serves (common practice, no source)."""


def _wants_several_poles(view: View, equipment: Equipment, occupant: Occupant) -> bool:
    """Whether the poles of a device are rather meant than the one position that it is written on: by the voltage of
    the load, or where one leg could not carry it, else by what it is."""
    state, body = view.state(equipment.name), occupant.body
    plate = body.facts.get("voltage")
    if plate is not None and isinstance(plate.value.data, Voltage):
        return not plate.value.data.has_neutral and plate.value.data.line_v > _MOST_TO_NEUTRAL * _to_neutral_v(state)
    load, rating, volts = body.number("power"), body.number("rating"), _to_neutral_v(state)
    if load is not None and rating is not None and volts and load * (body.number("count") or 1) > rating * volts:
        return True
    return occupant.feeder is not None or _LEG_TO_NEUTRAL.isdisjoint(body.flags)


_MOST_TO_NEUTRAL = 1.15
"""A nameplate of more than this many times the volts from a leg to neutral is for two legs."""


def _to_neutral_v(state: EquipmentState | None) -> float:
    """Volts from a leg to neutral, the lowest of the legs; 0 where they are not known or there is no neutral."""
    if state is None or not isinstance(state.system, Known) or not state.system.system.has_neutral:
        return 0.0
    system = state.system.system
    return min(system.distance(leg, "N") for leg in system.legs)


@POLES.also("equipment")
def pole_count_wrong(view: View, equipment: Equipment) -> Iterator[Finding]:
    """Poles against positions, or against the legs written behind a label."""
    if equipment.kind not in BOARDS:
        return
    board = positions_of(view, equipment)
    for occupant in board.occupants:
        poles = occupant.poles
        if poles is None or occupant.body.poles_span is None:
            continue
        legs = tuple(leg for leg in occupant.stated_legs or () if leg != "N") if occupant.circuit is not None else ()
        wanted = len(occupant.positions) or len(legs)
        # A pole that opens the neutral, or the earthed leg, may take a position or none.
        if (
            not wanted
            or wanted in (poles.count, poles.count + poles.switched_neutral)
            or poles.count == wanted + 1 == 4
        ):
            continue
        if not occupant.positions and (poles.count == wanted + 1 or poles.count > len(board.legs or "ABC")):
            continue
        span = occupant.body.poles_span
        text = f"{wanted}p"
        several = "s" if len(occupant.positions) > 1 else ""
        what = (
            f"position{several} {written(occupant.positions)}"
            if occupant.positions
            else f"legs {conductors_text(legs, view.basis)}"
        )
        fixes = [_fix(f"Make the device {text}", poles_edit(occupant.place.block, span, text))]
        if occupant.positions:
            run = board.numbering.run(occupant.positions[0], poles.count)
            if not any(o is not occupant and not o.empty for p in run for o in board.taken.get(p, ())):
                several_meant = wanted < poles.count and _wants_several_poles(view, equipment, occupant)
                fixes.insert(0 if several_meant else 1, _fix(f"Take {written(run)}", move_edit(occupant, run)))
        label = _label_for(view, board, occupant)
        if label and occupant.feeder is None:
            edit = replace(occupant.place, label)
            fixes.insert(0, _fix(f"Call it `{label}`: a label stands for the device, whatever its poles", edit))
        yield POLES.finding(
            Place(occupant.place.block, span),
            f"{occupant.shown} on {what} of `{equipment.name}` has {poles.count} pole{'s' if poles.count > 1 else ''}",
            found=f"{poles.count} pole{'s' if poles.count > 1 else ''} on {what}",
            needed=f"{wanted} pole{'s' if wanted > 1 else ''}, one for each",
            change=f"Write `{text}`, or as many positions as poles"
            + (f", or a label such as `{label}` in place of the position." if label else "."),
            subject=equipment.name,
            position=occupant.key,
            fixes=tuple(fixes),
            clause=clause_of(view, POLES),
        )


EARTHED_POLE = rule(
    name="grounded-leg-has-pole",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    summary="A device opens only the earthed leg of a corner-grounded system.",
    why="With the earthed wire open the load is dead to look at and live to touch.",
    clause={"us": "240.22"},
    wrong="utility UTIL 240 3ph  fault 10 kA, x/r 2, ground B\nfeeder UTIL -> DP  100 A 3p\n"
    'panel DP 240 3ph  bus 125 A, spaces 18\n  3  20 A 1p  2 kW heating  "Store"\n',
    right="utility UTIL 240 3ph  fault 10 kA, x/r 2, ground B\nfeeder UTIL -> DP  100 A 3p\n"
    'panel DP 240 3ph  bus 125 A, spaces 18\n  1  20 A 1p  2 kW heating  "Store"\n',
)


@EARTHED_POLE.check
def grounded_leg_has_pole(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS:
        return
    board = positions_of(view, equipment)
    earthed = board.system.earthed_leg if board.system is not None else None
    if earthed is None:
        return
    for occupant in board.occupants:
        if occupant.empty or "spare" in occupant.body.flags or board.legs_of(occupant) != (earthed,):
            continue
        leg = conductors_text((earthed,), view.basis)
        yield EARTHED_POLE.finding(
            occupant.place,
            f"{occupant.shown} of `{equipment.name}` opens {leg} only, which is the earthed leg",
            found=f"a device in the earthed leg {leg} alone",
            needed="a device in the live wires, or in all of them together",
            change=f"Move it to a position that is not on {leg}.",
            subject=equipment.name,
            position=occupant.key,
            clause=clause_of(view, EARTHED_POLE),
        )
