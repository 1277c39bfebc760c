"""What feeds what: nothing left out, and no feeder between ends that cannot be joined."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from heapq import nsmallest
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import KINDS, listed, place_phrase
from wyeline_grammar.linking import STATUS, Equipment, Feeder, Place
from wyeline_grammar.model import Unreadable
from wyeline_grammar.places import Span
from wyeline_grammar.tokens import spelled
from wyeline_linter.feeding import feed
from wyeline_linter.findings import (
    Finding,
    Fix,
    Offered,
    Safety,
    Severity,
    append_phrase,
    delete_statement,
    insert_below,
    replace,
)
from wyeline_linter.network import (
    can_feed,
    follows_grid,
    makes_system,
)
from wyeline_linter.rules.registry import NotAccepted, rule
from wyeline_linter.systems import Known
from wyeline_linter.verdicts import Feeds

if TYPE_CHECKING:
    from wyeline_linter.view import View

_FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  225 A 3p\npanel LP-1 208Y/120  bus 225 A\n"

NOTHING = rule(
    name="nothing-stated",
    since="0.1",
    severity=Severity.ADVICE,
    scope="model",
    summary="The model's root file states nothing.",
    why="An empty file passes every check; a report of no findings would look like a good one.",
    wrong="// panels follow\n",
    right=_FED,
)


@NOTHING.check
def nothing_stated(view: View) -> Iterator[Finding]:
    first = None
    for block, statement in view.model.statements():
        if not isinstance(statement, Unreadable) or statement.problems:
            return
        first = first or block
    if first is not None:
        yield NOTHING.finding(
            Place(first, Span(0, 0, len(first.lines[0]))),
            "nothing is stated in this file",
            found="no statement",
            needed="at least a source, what it feeds, and a feeder",
            change="Write the first statement, or begin with `wyeline new FOLDER`.",
        )


UNFED = rule(
    name="unfed-equipment",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="Nothing feeds a piece of equipment in any switch state.",
    why="Without a supply it has no voltage, no fault level, and is in no load total.",
    wrong=_FED + "panel LP-2 208Y/120  bus 100 A\n",
    right=_FED + "panel LP-2 208Y/120  bus 100 A\nfeeder LP-1 -> LP-2  100 A 3p\n",
)
_LATER = frozenset({"future", "demolish"})


@UNFED.check
def unfed_equipment(view: View) -> Iterator[Finding]:
    fed = view.network.root
    equipment_of = view.model.equipment
    unfed = [e for e in map(equipment_of.__getitem__, equipment_of.keys() - fed.keys()) if not makes_system(e)]
    if not unfed:
        return
    told: set[str] = set()
    boards = _Boards(view)
    for equipment in sorted(unfed, key=lambda e: e.name):
        if equipment.status in _LATER or "spare" in equipment.body.flags:
            continue
        if equipment.name not in told and _first_without_supply(view, equipment, fed, told):
            yield _unfed(view, equipment, boards)


def _first_without_supply(view: View, equipment: Equipment, fed: dict[str, str], told: set[str]) -> bool:
    """Whether it is the highest point that lacks a supply: what hangs below it is told by it."""
    if follows_grid(equipment) and any(
        f.target.name in view.model.equipment for f in view.feeders_out_of(equipment.name)
    ):
        return False
    incoming = view.feeders_into(equipment.name)
    above = [f.source.name for f in incoming]
    if not above:
        return not _delivers(view, equipment)
    if any(name not in view.model.equipment or name == equipment.name for name in above):
        return False
    if any(not known_port(equipment, f.target.port) for f in incoming):
        return False
    if any(name in fed for name in above):
        return not any(view.network_in(state).fed(equipment.name) for state in view.states_of_switches())
    ring = _ring(view, equipment.name)
    told.update(ring)
    return bool(ring)


def known_port(equipment: Equipment, port: str | None) -> bool:
    """Whether feeders may reach it at this port; another rule tells of one that is not there."""
    return port is None or port in (word for word, _ in KINDS[equipment.kind].ports)


def _delivers(view: View, equipment: Equipment) -> bool:
    """Whether it only passes on what a following inverter delivers, so that its feeder says where the grid is."""
    return equipment.kind == "inverter" and bool(view.feeders_out_of(equipment.name))


def _ring(view: View, name: str) -> tuple[str, ...]:
    """The names that feed each other in a circle that no source reaches, or nothing."""
    way: list[str] = []
    while name not in way:
        way.append(name)
        above = [f.source.name for f in view.feeders_into(name) if f.source.name in view.model.equipment]
        if not above:
            return ()
        name = above[0]
    return tuple(way[way.index(name) :]) if name == way[0] else ()


class _Boards:
    """What is fed and nearest to the sources, in that order: sorted once a version of the model, when asked for."""

    def __init__(self, view: View) -> None:
        self._view = view
        self._sorted: tuple[int, list[str]] | None = None

    def names(self) -> list[str]:
        view = self._view
        if self._sorted is None or self._sorted[0] != view.edits:
            depth = view.network.depth
            nearest = nsmallest(_MOST_LOOKED_AT, view.network.root, key=lambda name: (depth[name], name))
            self._sorted = view.edits, nearest
        return self._sorted[1]


def _unfed(view: View, equipment: Equipment, boards: _Boards) -> Finding:
    incoming = view.feeders_into(equipment.name)
    fixes: Sequence[Fix] = ()
    if not incoming:
        message, found = f"nothing feeds `{equipment.name}`", "no feeder that ends here"
        if view.network.root:
            change = f"Write the feeder that feeds it, as in `feeder BOARD -> {spelled(equipment.name)}`."
            fixes = Offered(
                lambda: (*_turned(view, equipment), *_parents(view, equipment.name, boards.names())),
                lambda: view.edits,
            )
        else:
            change = (
                "This model has no source yet. Write one, such as `utility GRID 480Y/277`, and its feeder, as in "
                f"`feeder GRID -> {spelled(equipment.name)}`."
            )
            fixes = _first_source(view, equipment)
    elif any(view.network.fed(f.source.name) for f in incoming):
        ways = listed([f"`{f.key}`" for f in incoming], "and")
        stand = "stands" if len(incoming) == 1 else "stand"
        message = f"`{equipment.name}` has no supply in any switch state: {ways} {stand} open in all of them"
        found, change = f"{ways}, never closed", "Close it, or write the scenario in which it is closed."
    else:
        ring = listed([f"`{n}`" for n in _ring(view, equipment.name)], "and")
        message, found = f"{ring} feed each other, and no source feeds any of them", "a circle without a source"
        change = "Feed one of them from a source."
        fixes = Offered(
            lambda: tuple(_out_of_the_ring(view, equipment, incoming[0], boards.names())), lambda: view.edits
        )
    return UNFED.finding(
        equipment.place,
        message,
        found=found,
        needed="a path from a source",
        change=change,
        subject=equipment.name,
        fixes=fixes,
    )


def _out_of_the_ring(view: View, equipment: Equipment, closing: Feeder, boards: list[str]) -> Iterator[Fix]:
    """The feeder that closes a circle without a source, from a board that is fed instead."""
    if not _is_plain(closing):
        return
    place = Place(closing.block, closing.source.span)
    for name, end in _able_to_feed(view, equipment, boards):
        title = f"Feed `{equipment.name}` from `{name}` instead of from `{closing.source.name}`"
        yield Fix(title, (replace(place, end),), Safety.LOOK)


def _turned(view: View, equipment: Equipment) -> Iterator[Fix]:
    """A feeder written the wrong way: it leaves what nothing feeds, and ends at what could feed that."""
    for feeder in view.feeders_out_of(equipment.name):
        if _is_plain(feeder) and any(_able_to_feed(view, equipment, [feeder.target.name])):
            yield _turned_round(feeder)


def _turned_round(feeder: Feeder) -> Fix:
    edits = (
        replace(Place(feeder.block, feeder.source.span), spelled(feeder.target.name)),
        replace(Place(feeder.block, feeder.target.span), spelled(feeder.source.name)),
    )
    return Fix(f"Turn `{feeder.key}` round", edits, Safety.LOOK)


def _is_plain(feeder: Feeder) -> bool:
    """Whether its ends are names alone, without legs or ports."""
    return feeder.source.legs is None and feeder.source.port is None and feeder.target.port is None


def _first_source(view: View, equipment: Equipment) -> tuple[Fix, ...]:
    """A utility of the voltage that a board states, for a model without any source; its fault current is a gap."""
    wanted, source = equipment.primary, "GRID"
    stated = view.derivation.stated(wanted) if wanted is not None else None
    if stated is None or view.model.lookup(source) is not None:
        return ()
    text = stated.text
    lines = f"utility {source} {text}\nfeeder {source} -> {spelled(equipment.name)}"
    edit = insert_below(equipment.block, equipment.statement.last_line, lines)
    return (Fix(f"Feed it from a new utility `{source}` that gives {text}", (edit,), Safety.LOOK),)


_MOST_PARENTS, _MOST_LOOKED_AT = 3, 200
_SELDOM_PARENTS = frozenset({"utility", "generator", "meter", "junction"})


def _parents(view: View, tag: str, boards: list[str]) -> Iterator[Fix]:
    """Boards already fed that can feed it by wire; the device and the wires are the writer's."""
    equipment = view.equipment(tag)
    if equipment is None:
        return
    for name, end in _able_to_feed(view, equipment, boards):
        line = f"feeder {end} -> {spelled(equipment.name)}"
        edit = insert_below(equipment.block, equipment.statement.last_line, line)
        yield Fix(f"Feed it from `{name}` (device, wires and length are yours to write)", (edit,), Safety.SHOW)


def _able_to_feed(view: View, equipment: Equipment, boards: list[str]) -> Iterator[tuple[str, str]]:
    """The first few of the boards that can feed it by wire, and how a feeder's end there is written."""
    wanted = view.derivation.stated(equipment.primary)
    if wanted is None:
        return
    is_load = equipment.kind in ("motor", "load", "charger", "drive", "capacitor")
    shown = 0
    for name in boards:
        parent, state = view.equipment(name), view.state(name)
        if parent is None or state is None or not isinstance(state.system, Known):
            continue
        if parent.kind in _SELDOM_PARENTS or not can_feed(parent) or parent.status in _LATER:
            continue
        verdict = feed(state.system.system, wanted, is_load=is_load or equipment.kind == "transformer")
        if not isinstance(verdict, Feeds) or verdict.notes:
            continue
        legs = "" if verdict.only_choice else f"[{' '.join(verdict.best.conductors)}]"
        yield name, f"{spelled(name)}{legs}"
        shown += 1
        if shown == _MOST_PARENTS:
            return


SELF = rule(
    name="feeder-to-itself",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A feeder ends where it begins.",
    why="A wire from a board to itself feeds nothing.",
    wrong=_FED + "feeder LP-1 -> LP-1  100 A 3p\n",
    right=_FED,
    mends=True,
)


@SELF.check
def feeder_to_itself(view: View, feeder: Feeder) -> Iterator[Finding]:
    equipment = view.equipment(feeder.source.name)
    if feeder.source.name != feeder.target.name or equipment is None:
        return
    boards = _Boards(view)
    yield SELF.finding(
        Place(feeder.block, feeder.target.span),
        f"this feeder runs from `{feeder.source.name}` to `{feeder.target.name}` itself",
        found="both ends in one piece of equipment",
        needed="two pieces of equipment",
        change="Write where it really goes, or delete it.",
        subject=feeder.key,
        fixes=Offered(lambda: tuple(_elsewhere(view, feeder, equipment, boards.names())), lambda: view.edits),
    )


def _elsewhere(view: View, feeder: Feeder, equipment: Equipment, boards: list[str]) -> Iterator[Fix]:
    """Another board to feed it, where nothing else does; and the line left out."""
    if all(into.key == feeder.key for into in view.feeders_into(equipment.name)):
        place = Place(feeder.block, feeder.source.span)
        for name, end in _able_to_feed(view, equipment, boards):
            yield Fix(f"Feed `{equipment.name}` from `{name}` instead", (replace(place, end),), Safety.LOOK)
    yield Fix("Delete this feeder", (delete_statement(feeder.block, feeder.statement.last_line),), Safety.LOOK)


SOURCE_FED = rule(
    name="source-fed-by-wire",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A feeder ends at a source.",
    why="A source makes its own voltage; a wire into it ties it to another one.",
    wrong=_FED + "generator GEN-1 208Y/120  60 kVA, pf 0.8\nfeeder LP-1 -> GEN-1  100 A 3p\n",
    right=_FED,
)


@SOURCE_FED.check
def source_fed_by_wire(view: View, feeder: Feeder) -> Iterator[Finding]:
    target = view.equipment(feeder.target.name)
    if target is None or target.kind == "battery" or not makes_system(target) or feeder.source.name == target.name:
        return
    source = spelled(feeder.source.name)
    yield SOURCE_FED.finding(
        Place(feeder.block, feeder.target.span),
        f"`{target.name}` is {place_phrase(target.kind)}, and `{feeder.source.name}` cannot feed it",
        found=f"a feeder that ends at `{target.name}`",
        needed="a feeder that leaves it",
        change=f"Turn it round: `feeder {spelled(target.name)} -> {source}`.",
        subject=feeder.key,
        fixes=(_turned_round(feeder),) if _is_plain(feeder) else (),
    )


FROM_LOAD = rule(
    name="feeder-from-load",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A feeder leaves something that only takes power.",
    why="A motor or a load has no terminals to feed anything else from.",
    wrong=_FED
    + "motor P-1 208 3ph  5 hp\nmotor P-2 208 3ph  5 hp\nfeeder LP-1 -> P-1  40 A 3p\nfeeder P-1 -> P-2  40 A 3p\n",
    right=_FED
    + "motor P-1 208 3ph  5 hp\nmotor P-2 208 3ph  5 hp\nfeeder LP-1 -> P-1  40 A 3p\nfeeder LP-1 -> P-2  40 A 3p\n",
    mends=True,
)


@FROM_LOAD.check
def feeder_from_load(view: View, feeder: Feeder) -> Iterator[Finding]:
    source = view.equipment(feeder.source.name)
    if source is None or can_feed(source) or feeder.source.name == feeder.target.name:
        return
    place = Place(feeder.block, feeder.source.span)
    supply = view.network.supply.get(source.name)
    fixes: tuple[Fix, ...] = ()
    if supply is not None:
        board = supply.source.text
        fixes = (Fix(f"Feed it from `{board}`", (replace(place, spelled(supply.source.name)),), Safety.LOOK),)
    yield FROM_LOAD.finding(
        place,
        f"`{source.name}` is {place_phrase(source.kind)}, and nothing can be fed from it",
        found=f"a feeder that leaves `{source.name}`",
        needed="a board, busway, disconnect, junction or source",
        change="Feed it from the board that feeds the load, or put a junction or a disconnect between.",
        subject=feeder.key,
        fixes=fixes,
    )


STATUS_CLASH = rule(
    name="feeder-status-clash",
    since="0.1",
    severity=Severity.WARNING,
    scope="feeder",
    summary="Something that stays or comes now hangs on a feeder or a board that goes, or comes later.",
    why="When the work is done, nothing will feed it.",
    wrong=_FED + "panel LP-2 208Y/120  bus 100 A\nfeeder LP-1 -> LP-2  100 A 3p, demolish\n",
    right=_FED + "panel LP-2 208Y/120  bus 100 A, demolish\nfeeder LP-1 -> LP-2  100 A 3p, demolish\n",
    of_what_goes=True,
    mends=True,
)


@STATUS_CLASH.check
def feeder_status_clash(view: View, feeder: Feeder) -> Iterator[Finding]:
    target, source = view.equipment(feeder.target.name), view.equipment(feeder.source.name)
    if target is None or source is None or not _LATER.isdisjoint(target.body.flags):
        return
    if _LATER.isdisjoint(feeder.body.flags) and _LATER.isdisjoint(source.body.flags):
        return
    if view.network.supply.get(target.name) is not feeder:
        return
    flag = next((f for f in feeder.body.flags if f in _LATER), None)
    what, place = f"`{feeder.key}`", Place(feeder.block, feeder.body.flags[flag]) if flag else feeder.place
    if flag is None:
        flag = next((f for f in source.body.flags if f in _LATER), None)
        what = f"`{source.name}`"
    assert flag is not None
    goes = "is removed" if flag == "demolish" else "comes later"
    others = any(f in STATUS for f in target.statement.body.flags)
    mark = append_phrase(target.block, target.statement.head.line, flag)
    yield STATUS_CLASH.finding(
        place,
        f"`{target.name}` is fed by {what}, which {goes}",
        found=f"{what} is `{flag}`, `{target.name}` is `{target.status}`",
        needed="a supply of the same time as what it feeds",
        change=f"Feed `{target.name}` from something that stays, or mark it `{flag}` as well.",
        subject=feeder.key,
        fixes=() if others else (Fix(f"Mark `{target.name}` `{flag}` as well", (mark,), Safety.LOOK),),
    )
