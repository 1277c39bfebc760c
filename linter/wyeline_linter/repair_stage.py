"""A transformer or converter written into a connection: its own line, the line that feeds it, what changes around."""

from __future__ import annotations

from dataclasses import dataclass

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.notation import Voltage, VoltageForm
from wyeline_grammar.tokens import spelled
from wyeline_linter.connected_load import load_below
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.repair_edits import (
    DEVICE_FACTS,
    Draft,
    drop_facts,
    legs_text,
    new_tag,
    set_own_fact,
    set_poles,
    set_sides,
    set_source,
    set_voltage,
    set_wire_count,
)
from wyeline_linter.repair_legs import Taken, choose, position_text
from wyeline_linter.repair_link import (
    Candidate,
    Link,
    need_of,
    wants_position,
    where_new_lines_go,
)
from wyeline_linter.repair_routes import COST, Route, Stage, routes
from wyeline_linter.repair_sizes import Sizes, has_lugs_only, sizes_for
from wyeline_linter.sizing.plain import device_for, main_of, wires_for
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import Known
from wyeline_linter.verdicts import LegMap
from wyeline_linter.view import View

_WORDS = {
    "single-phase": "single-phase transformer",
    "three-phase": "three-phase transformer",
    "buck-boost": "buck-boost transformer",
    "zigzag": "grounding zigzag",
}
_OF_THE_OLD_UNIT = ("z", "z0", "x/r", "r/x", "loss", "loss-idle", "tap", "taps", "connection", "kfactor")
"""Facts of a transformer's nameplate that another unit does not share."""


@dataclass(frozen=True, slots=True)
class _Onward:
    """How the far end hangs on what is inserted: its legs there, and who protects the run to it."""

    way: LegMap
    legs: str
    device_a: float | None
    keeps_device: bool


def by_stage(view: View, link: Link, board: str, route: Route, base: int, least_va: float = 0.0) -> Candidate | None:
    """The connection through a new piece of equipment fed from ``board``, of ``least_va`` at the least; None where no
    position is free for it."""
    stage = route.stage
    if stage is None:
        return None
    target = link.target
    load = load_below(view, target.name)
    taken = choose(
        view,
        board,
        stage.takes,
        load.va,
        feeder=link.feeder,
        wants_position=wants_position(view, link, board),
        hurried=link.hurried,
    )
    if taken is None:
        return None
    onward = _onward(link, route)
    sizes = sizes_for(view, stage, target, onward.device_a, least_va)
    tag = new_tag(view.model, stage.kind, target.name)
    draft = Draft()
    left: list[str] = []
    run = _length_before(link)
    lines = [_statement(link, stage, tag, sizes), _primary(view, board, taken, tag, sizes, run)]
    _secondary(view, link, onward, tag, draft, lines, left)
    if run and link.feeder is not None:
        drop_facts(draft, link.feeder, ("length",))
    _protect(target, sizes, draft)
    if route.redeclared is not None:
        set_voltage(draft, target, route.redeclared.text)
    if link.feeder is not None:  # power is read from the top: the new piece, what feeds it, and then the old line
        draft.above(link.feeder.block, lines)
    else:
        draft.below(*where_new_lines_go(view, link, board), lines)
    if stage.kind == "transformer":
        left.append(f"z and x/r of `{tag}`, from its nameplate")
    if run:
        left.append(f"the {run} of the old run now lie before `{tag}`; length and raceway of `{tag} -> {target.name}`")
    else:
        left.append(f"length and raceway of `{board} -> {tag}` and of `{tag} -> {target.name}`")
    cost = base + route.cost + COST["unknown rating"] * sizes.unresolved
    return Candidate(
        cost,
        stage.sort,
        _title(link, stage, tag, sizes, board, base, route.redeclared),
        _reason(stage, board, taken, view.basis),
        draft.edits(),
        tuple(left),
        tuple(sizes.notes),
        board,
        taken.map.legs,
        stage,
        tag,
        keeps_need=route.redeclared is None,
        larger=(lambda va: by_stage(view, link, board, route, base, va)) if sizes.power_text else None,
    )


def _title(
    link: Link, stage: Stage, tag: str, sizes: Sizes, board: str, base: int, redeclared: Voltage | None = None
) -> str:
    size = f"{sizes.power_text} " if sizes.power_text else ""
    hz = f" at {stage.frequency_hz:g} Hz" if stage.frequency_hz else ""
    text = (
        f"Feed `{link.target.name}` through a new {size}{_word(stage)} `{tag}`, "
        f"{stage.primary.text} to {stage.secondary.text}{hz}"
    )
    if base:
        text += f", fed from `{board}`"
    return text + (f", and declare it as {redeclared.text}" if redeclared is not None else "")


def _word(stage: Stage) -> str:
    if stage.kind == "charger":
        return "rectifier"
    if stage.kind == "inverter":
        return "inverter" if stage.primary.form is VoltageForm.DC2 else "frequency converter"
    return _WORDS[stage.sort]


def _reason(stage: Stage, board: str, taken: Taken, practice: str | None) -> str:
    return f"{_physics(stage, board, taken, practice)}{taken.balance}"


def _physics(stage: Stage, board: str, taken: Taken, practice: str | None) -> str:
    across = conductors_text(taken.map.conductors, practice, "–")
    if stage.sort == "zigzag":
        return f"`{board}` has no neutral; a zigzag across {across} makes one for its whole system, at the same voltage"
    if stage.sort == "converter":
        return f"no wire and no winding changes {taken.map.system.figures()} into {stage.makes.figures()}"
    made = "a voltage system of its own" if stage.new_source else "the same system at another voltage"
    return f"across {across} `{board}` gives {stage.primary.text}; the windings make {stage.makes.figures()}: {made}"


def _statement(link: Link, stage: Stage, tag: str, sizes: Sizes) -> str:
    parts = [sizes.power_text] if sizes.power_text else []
    if stage.connection is not None:
        parts.append(f"connection {stage.connection}")
    if sizes.electrode:
        parts.append(f"electrode {sizes.electrode}")
    missing = ["its rating"] if not sizes.power_text else []
    missing += ["z and x/r from its nameplate"] if stage.kind == "transformer" else ["its data from the maker"]
    sides = f"{stage.primary.text} -> {secondary_text(link, stage)}"
    return f"{stage.kind} {spelled(tag)} {sides}  {', '.join(parts)}  // add {' and '.join(missing)}"


def secondary_text(link: Link, stage: Stage) -> str:
    """The secondary as the far end writes its own side, so that a named system keeps its name."""
    side = link.target.primary
    same = link.wanted is not None and stage.secondary.text == link.wanted.text
    if same and side is not None and side.name is not None:
        return spelled(side.name)
    return stage.secondary.text


def _length_before(link: Link) -> str:
    """The length of the run that is there: it lies before a new unit, near what it feeds (common practice)."""
    fact = link.feeder.body.facts.get("length") if link.feeder is not None else None
    return fact.value.text if fact is not None else ""


def _primary(view: View, board: str, taken: Taken, tag: str, sizes: Sizes, run: str) -> str:
    parts = [f"feeder {spelled(board)}{taken.written} -> {spelled(tag)}"]
    if sizes.primary_device_a is not None:
        way = taken.map
        parts.append(f"{sizes.primary_device_a:g} A {way.live_poles}p")
        if sizes.fuse:
            parts.append("fuse gG" if view.derivation.practice == "iec" else "fuse CC")
        equipment = view.equipment(board)
        parts.append(wires_for(view, sizes.primary_device_a, len(way.legs), way.system.has_neutral, equipment))
    parts += [run, position_text(taken.positions)]
    missing = ["device"] if sizes.primary_device_a is None else []
    missing += [] if run else ["length"]
    return "  ".join(p for p in parts if p) + (f"  // add {' and '.join(missing)}" if missing else "")


def _onward(link: Link, route: Route) -> _Onward:
    """The run from the new piece to the far end. A main at the far end protects it, else its device stays."""
    way = route.maps[0]
    several = len({frozenset(m.conductors) for m in route.maps}) > 1
    feeder = link.feeder
    rating = feeder.body.number("rating") if feeder is not None else None
    keeps = main_of(link.target) is None and rating is not None
    return _Onward(way, legs_text(way.legs) if several else "", rating if keeps else None, keeps)


def _secondary(
    view: View,
    link: Link,
    onward: _Onward,
    tag: str,
    draft: Draft,
    lines: list[str],
    left: list[str],
) -> None:
    """The run to the far end: the line that is there, now from the new piece; or a new one."""
    feeder, target, way = link.feeder, link.target, onward.way
    unprotected = not onward.keeps_device and target.kind not in LOAD_KINDS
    tap = unprotected and view.derivation.practice == "us"
    if feeder is None:
        parts = [f"feeder {spelled(tag)}{onward.legs} -> {link.end}"]
        if not unprotected:
            volts = way.system.nominal_v(*way.conductors[:2])
            device, why = device_for(view, volts, len(way.legs), target)
            if device is not None:
                parts.append(f"{device:g} A {way.live_poles}p")
                parts.append(wires_for(view, device, len(way.legs), way.system.has_neutral, None, target))
            else:
                left.append(why)
        lines.append("  ".join(p for p in parts if p) + "  // add wires and length")
        lines += ["  claim tap-25ft"] if tap else []
        return
    set_source(draft, view.model, feeder, spelled(tag), onward.legs)
    if onward.keeps_device:
        poles = feeder.body.poles
        if poles is not None and (poles.count != way.live_poles or poles.switched_neutral):
            set_poles(draft, feeder, way.live_poles, neutral=poles.switched_neutral and way.system.has_neutral)
        drop_facts(draft, feeder, ("at",))
    else:
        drop_facts(draft, feeder, DEVICE_FACTS)
    if set_wire_count(draft, feeder, len(way.legs), way.system.has_neutral):
        left.append(f"wires of `{tag} -> {target.name}`: their count is changed, their size is as it was")
    if tap and not any(claim.name.startswith("tap") for claim in feeder.statement.claims):
        draft.below(feeder.block, feeder.statement.last_line, ["  claim tap-25ft"])
        left.append(f"the claim tap-25ft of `{tag} -> {target.name}` holds up to 25 ft (7.6 m); beyond, add a device")


def _protect(target: Equipment, sizes: Sizes, draft: Draft) -> None:
    """A main for a board that has none: what stands before the transformer does not protect what is behind it."""
    if sizes.main_to_add_a is None:
        return
    key = "incomer" if "incomer" in target.statement.body.facts else "main"
    if has_lugs_only(target) or key in target.statement.body.facts or target.body.text(key) is None:
        set_own_fact(draft, target, key, f"{key} {sizes.main_to_add_a:g} A")


# another unit in the place of the transformer above


def rewound(view: View, link: Link) -> Candidate | None:
    """Replace the transformer that feeds the far end by one that makes what is wanted, where it feeds nothing else."""
    unit = view.equipment(link.source)
    supply = view.network.supply.get(link.source)
    if unit is None or supply is None or unit.kind != "transformer" or link.wanted is None or link.feeder is None:
        return None
    if len(view.feeders_out_of(unit.name)) > 1 or supply.target.name != unit.name:
        return None
    state = view.state(supply.source.name)
    if state is None or not isinstance(state.system, Known):
        return None
    up = state.system.system
    above = Link(supply.source.name, link.target, supply, state.system, link.wanted, link.verdict)
    need = need_of(view, above, up)
    route = next(
        (
            r
            for r in (routes(up, need) if need is not None else ())
            if r.stage is not None and r.stage.kind == "transformer" and r.redeclared is None
        ),
        None,
    )
    if route is None or route.stage is None:
        return None
    return _rewind(view, link, unit, supply, route, route.stage)


def _rewind(view: View, link: Link, unit: Equipment, supply: Feeder, route: Route, stage: Stage) -> Candidate | None:
    feeder = link.feeder
    assert feeder is not None
    board = supply.source.name
    poles = supply.body.poles
    at = supply.statement.at
    taken = choose(
        view,
        board,
        stage.takes,
        load_below(view, unit.name).va,
        feeder=supply,
        stated=supply.source.legs,
        poles=poles.count if poles else None,
        wants_position=at is not None and bool(at.positions),
        hurried=link.hurried,
    )
    if taken is None:
        return None
    onward = _onward(link, route)
    sizes = sizes_for(view, stage, link.target, onward.device_a)
    draft = Draft()
    _statement_rewound(draft, link, unit, stage, sizes)
    if supply.source.legs is not None or taken.written:
        set_source(draft, view.model, supply, spelled(board), taken.written)
    _device_for_rewound(draft, supply, taken, sizes)
    if set_wire_count(draft, supply, len(taken.map.legs), taken.map.system.has_neutral):
        sizes.notes.append(f"wires of `{supply.key}`: their count is changed, their size is as it was")
    if onward.legs or feeder.source.legs is not None:
        set_source(draft, view.model, feeder, spelled(unit.name), onward.legs)
    own = feeder.body.poles
    if own is not None and own.count != onward.way.live_poles:
        set_poles(draft, feeder, onward.way.live_poles)
    set_wire_count(draft, feeder, len(onward.way.legs), onward.way.system.has_neutral)
    _protect(link.target, sizes, draft)
    return Candidate(
        COST["rewind"] + COST["unknown rating"] * sizes.unresolved,
        "rewind",
        f"Make `{unit.name}` a {sizes.power_text + ' ' if sizes.power_text else ''}{_word(stage)}, "
        f"{stage.primary.text} to {stage.secondary.text}",
        f"`{unit.name}` feeds nothing else, so another unit in its place needs no more equipment",
        draft.edits(),
        (f"z and x/r of the new `{unit.name}`, from its nameplate",),
        tuple(sizes.notes),
        board,
        taken.map.legs,
        stage,
        unit.name,
    )


def _statement_rewound(draft: Draft, link: Link, unit: Equipment, stage: Stage, sizes: Sizes) -> None:
    set_sides(draft, unit, stage.primary.text, secondary_text(link, stage))
    if sizes.power_text:
        set_own_fact(draft, unit, "power", sizes.power_text)
    for name in _OF_THE_OLD_UNIT:
        if name in unit.statement.body.facts:
            set_own_fact(draft, unit, name, "")
    if stage.connection is not None:
        draft.append(unit.block, unit.statement.head.line, f"connection {stage.connection}")


def _device_for_rewound(draft: Draft, supply: Feeder, taken: Taken, sizes: Sizes) -> None:
    fact = supply.body.facts.get("rating")
    if fact is None:
        return
    rating = f"{sizes.primary_device_a:g} A" if sizes.primary_device_a is not None else fact.value.text
    draft.replace(supply.block, fact.span, f"{rating} {taken.map.live_poles}p")
    at = supply.statement.at
    if taken.positions is not None and at is not None and at.positions != taken.positions:
        draft.replace(supply.block, at.span, position_text(taken.positions))
