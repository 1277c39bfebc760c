"""Connections that wires and windings alone cannot mend: a second supply, a circle of feeders, a supply not known."""

from __future__ import annotations

from collections.abc import Iterator

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.tokens import spelled
from wyeline_linter.findings import Edit
from wyeline_linter.network import makes_system, two_sided
from wyeline_linter.repair_edits import Draft, new_tag, set_sides, set_target, set_voltage
from wyeline_linter.repair_link import Candidate, Link
from wyeline_linter.repair_routes import COST
from wyeline_linter.sizing.plain import main_of
from wyeline_linter.systems import Known
from wyeline_linter.verdicts import Cause, Feeds, Refusal
from wyeline_linter.view import View


def meeting(view: View, link: Link) -> Refusal | None:
    """Why two supplies may not meet at the far end, or None where this is its only one."""
    supply = view.network.supply.get(link.target.name)
    if link.target.kind == "transfer" or link.port == "bypass":
        return None
    others = view.network.others.get(link.target.name, [])
    this = link.feeder
    closed = this is None or (not this.normally_open and view.network.state.closed(this))
    if link.target.name == link.source or link.target.name in view.network.above(link.source):
        if not closed:
            return None
        path = " -> ".join([link.target.name, *_names_down(view, link), link.target.name])
        return Refusal(
            Cause.LOOP,
            f"a circle of closed feeders: {path}",
            "one open point in it",
            "current could go round in a circle, and no device could tell from which side a fault is fed",
        )
    second = this in others if this is not None else supply is not None or makes_system(link.target)
    if not second and not (this is supply and others):
        return None
    if not closed:
        return None
    names = [f"`{f.key}`" for f in (supply, *others, *((None,) if this is not None else ())) if f is not None]
    if this is None:
        names.append(f"`{link.source}`")
    return Refusal(
        Cause.SECOND_SUPPLY,
        f"{len(names)} supplies that are closed at one time: {', '.join(names)}",
        "one supply, or a transfer switch between two",
        "two supplies that nothing keeps apart feed each other's faults, and unlike voltages or angles meet as a short "
        "circuit",
    )


def _names_down(view: View, link: Link) -> list[str]:
    names = [link.source]
    for name in view.network.above(link.source):
        if name == link.target.name:
            break
        names.append(name)
    return names[::-1] if link.source != link.target.name else []


def ways_to_keep_apart(view: View, link: Link, refusal: Refusal) -> Iterator[Candidate]:
    """A transfer switch between two supplies, or an open point."""
    feeder = link.feeder
    supply = view.network.supply.get(link.target.name)
    if refusal.cause is Cause.SECOND_SUPPLY:
        others = view.network.others.get(link.target.name, [])
        second = feeder if feeder is not None and feeder is not supply else next(iter(others), None)
        to_write = feeder is None and not others and link.source not in view.network.above(link.target.name)
        if supply is not None and (to_write or (second is not None and feeder is not None and len(others) == 1)):
            made = _transfer(view, link, supply, second)
            if made is not None:
                yield made
        feeder = second if feeder is supply else feeder
    if feeder is None:
        return
    draft = Draft()
    draft.append(feeder.block, feeder.statement.head.line, "normally-open")
    circle = refusal.cause is Cause.LOOP
    left = () if circle else ("an interlock that keeps the two supplies from being closed together",)
    yield Candidate(
        COST["open point"] + (0 if circle else COST["transfer"]),
        "open point",
        f"Keep `{feeder.key}` open in normal operation",
        "an open point ends the circle" if circle else "only one supply is closed at a time",
        draft.edits(),
        left,
        board=feeder.source.name,
    )


def waiting_feeder(view: View, name: str) -> Feeder | None:
    """The closed feeder that stands into something that nothing feeds: it would, if its own source were fed."""
    if view.network.fed(name):
        return None
    closed = view.network.state.closed
    return next(
        (f for f in view.model.feeders_to.get(name, ()) if closed(f) and not view.network.fed(f.source.name)), None
    )


def waiting_head(view: View, name: str) -> Equipment | None:
    """Where a supply would have to come in for all that waits above ``name``; None where nothing waits there."""
    seen = {name}
    while (feeder := waiting_feeder(view, name)) is not None and feeder.source.name not in seen:
        name = feeder.source.name
        seen.add(name)
    return view.equipment(name) if len(seen) > 1 else None


def left_out(view: View, link: Link) -> Iterator[Candidate]:
    """A feeder that cannot feed what another one feeds rightly already: without it, everything is fed."""
    this = link.feeder
    if this is None or not isinstance(link.verdict, Refusal):
        return
    for other in view.model.feeders_to.get(link.target.name, ()):
        judged = view.feeder_state(other.key)
        if other is this or judged is None or not isinstance(judged.verdict, Feeds) or other.target.port != link.port:
            continue
        if not (view.network.state.closed(other) and view.network.fed(other.source.name)):
            continue
        last = len(this.block.lines) - 1
        yield Candidate(
            COST["leave out"],
            "leave out",
            f"Leave `{this.key}` out: `{other.source.name}` feeds `{link.target.name}` already",
            f"`{other.key}` brings the voltage that `{link.target.name}` wants, and one supply is enough",
            (Edit(this.block, 0, 0, last, len(this.block.lines[last]), ""),),
            board=other.source.name,
        )
        return


def _transfer(view: View, link: Link, first: Feeder, second: Feeder | None) -> Candidate | None:
    """A transfer switch between two feeders, or between one and a second that is not written yet."""
    feeders = (first,) if second is None else (first, second)
    for feeder in feeders:
        judged = view.feeder_state(feeder.key)
        if judged is None or not isinstance(judged.verdict, Feeds):
            return None
    if second is None and not isinstance(link.verdict, Feeds):
        return None
    source = link.source if second is None else second.source.name
    tag = new_tag(view.model, "transfer", link.target.name)
    ratings = [f.body.number("rating") for f in feeders]
    known = [r for r in (*ratings, main_of(link.target)) if r is not None]
    rating = max(known) if known else None
    draft = Draft()
    for feeder, port in zip(feeders, ("normal", "emergency"), strict=False):
        set_target(draft, view.model, feeder, f"{spelled(tag)}.{port}")
    size = f"{rating:g} A, " if rating is not None else ""
    new = [f"feeder {spelled(source)} -> {spelled(tag)}.emergency  // add its device, wires and length"]
    draft.below(
        feeders[-1].block,
        feeders[-1].statement.last_line,
        [
            *(new if second is None else ()),
            f"transfer {spelled(tag)}  {size}transition open  // add its poles and rated",
            f"feeder {spelled(tag)} -> {link.end}  // add wires and length",
        ],
    )
    return Candidate(
        COST["transfer"],
        "transfer",
        f"Put a transfer switch `{tag}` between `{first.source.name}`, `{source}` and `{link.target.name}`",
        "a transfer switch lets one supply through at a time",
        draft.edits(),
        (
            f"poles of `{tag}`: whether it switches the neutral follows from where each source's neutral is bonded",
            f"rated fault current of `{tag}`, with the device ahead of it",
            f"wires and length of `{tag} -> {link.target.name}`",
            *((f"device, wires and length of `{source} -> {tag}.emergency`",) if second is None else ()),
        ),
        board=first.source.name,
        inserted=tag,
    )


# what is not known yet


def first_unknown(view: View, name: str) -> tuple[Equipment | None, Feeder | None]:
    """Where a voltage is lost on the way to ``name``: equipment that states too little, or a feeder that is refused."""
    path = view.network.path(name)
    for feeder in path:
        source = view.equipment(feeder.source.name)
        if source is not None and _states_too_little(view, source):
            return source, None
        judged = view.feeder_state(feeder.key)
        if judged is not None and isinstance(judged.offered, Known) and not isinstance(judged.verdict, Feeds):
            return None, feeder
    equipment = view.equipment(name)
    if equipment is not None and _states_too_little(view, equipment):
        return equipment, None
    return (None, None) if path or equipment is None or makes_system(equipment) else (equipment, None)


def _states_too_little(view: View, equipment: Equipment) -> bool:
    if equipment.kind == "transformer" or (two_sided(equipment) and equipment.arrow):
        return view.derivation.stated(equipment.secondary) is None
    return makes_system(equipment) and view.derivation.stated(equipment.primary) is None


def attribute_to_set(view: View, equipment: Equipment) -> Candidate | None:
    """The voltage that is missing, where everything fed from there agrees on it."""
    if not _states_too_little(view, equipment):
        return None
    wanted = {}
    for feeder in view.feeders_out_of(equipment.name):
        target = view.equipment(feeder.target.name)
        voltage = view.derivation.stated(target.primary) if target is not None else None
        if voltage is not None and target is not None and target.kind not in ("motor", "load", "charger", "drive"):
            wanted[voltage.text] = target.name
    if len(wanted) != 1:
        return None
    (text, child) = next(iter(wanted.items()))
    draft = Draft()
    if equipment.kind == "transformer":
        primary = equipment.primary
        if primary is None or primary.voltage is None:
            return None
        set_sides(draft, equipment, primary.voltage.text, text)
        side = "the secondary of "
    else:
        set_voltage(draft, equipment, text)
        side = ""
    return Candidate(
        COST["attribute"],
        "attribute",
        f"Write {text} as the voltage of {side}`{equipment.name}`, if its nameplate says so",
        f"it is what `{child}` states, and nothing else that it feeds says otherwise",
        draft.edits(),
        (f"the nameplate of `{equipment.name}`: this is what would fit, not what is known",),
        board=equipment.name,
    )
