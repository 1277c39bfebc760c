"""What to go through when a connection is made: ticked where the model shows it, asked where it does not.

Common practice, no source; the clauses are where a reader looks first. Nothing here passes or fails: a tick means that
the model holds the fact, not that the fact is right.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_linter.repair_sizes import has_lugs_only
from wyeline_linter.sizing.plain import main_of
from wyeline_linter.systems import Known, System
from wyeline_linter.verdicts import Feeds
from wyeline_linter.windings import Transformed

if TYPE_CHECKING:
    from wyeline_linter.analysis import View


@dataclass(frozen=True, slots=True)
class Item:
    """One line: ``known`` where the model shows it, with what it shows in ``text``; else ``text`` asks for it."""

    known: bool
    text: str

    def in_words(self) -> str:
        return f"[{'x' if self.known else ' '}] {self.text}"


def _item(known: object, shown: str, asked: str) -> Item:
    return Item(True, shown) if known else Item(False, asked)


def for_connection(view: View, target: str, inserted: str | None, kind: str | None) -> tuple[Item, ...]:
    """The checklist of a connection as it stands in ``view``: of what was inserted, then of the far end."""
    items: list[Item] = []
    equipment = view.equipment(inserted) if inserted is not None else None
    if equipment is not None and kind == "transformer":
        items += _of_transformer(view, equipment)
    elif equipment is not None and kind == "transfer":
        items += _of_transfer(equipment)
    elif equipment is not None:
        items += _of_converter(equipment)
    far = view.equipment(target)
    if far is not None:
        items += _of_far_end(view, far)
    return tuple(items)


def _supply(view: View, name: str) -> Feeder | None:
    return view.network.supply.get(name)


def _of_transformer(view: View, unit: Equipment) -> list[Item]:
    body = unit.body
    state = view.state(unit.name)
    winding = state.winding if state is not None else None
    made = winding if isinstance(winding, Transformed) else None
    supply = _supply(view, unit.name)
    takes = "–".join(made.takes) if made is not None else ""
    primary = f"primary across {takes} of `{supply.source.name}`" if supply is not None else ""
    poles = supply.body.poles if supply is not None else None
    power = body.facts.get("power")
    behind = view.feeders_out_of(unit.name)
    items = [
        _item(made and poles, f"{primary}, {poles.count if poles else 0}-pole device", "legs and poles of the primary"),
        _item(made, f"{unit.name} stands on the voltage its primary is wound for", "does the primary fit its supply?"),
        _item(
            power, f"rating {power.value.text if power else ''}", "what kVA? Not less than the load of either winding"
        ),
        _item(
            supply is not None and supply.body.number("rating"),
            f"primary device {_device(supply)}; look at its inrush",
            "primary device (NEC 450.3; IEC 60364-4-43), and its inrush",
        ),
        *(_secondary_device(view, line) for line in behind),
    ]
    if made is not None:
        items += _of_new_system(unit, made)
    items += [
        _item(body.number("z"), f"z {body.text('z')} on record", "what z does its nameplate give?"),
        _item(body.number("x/r") or body.number("r/x"), "x/r on record", "what x/r does its data sheet give?"),
        _item(body.facts.get("tap"), f"tap at {body.text('tap')}", "which tap is it set to?"),
        Item(False, "fault current at the first board against its rating: three-phase and leg to neutral"),
        Item(False, "room, ventilation, floor load, sound and heat: told to the other trades?"),
        Item(False, "labels: source of supply, fault current"),
    ]
    return items


def _device(feeder: Feeder | None) -> str:
    fact = feeder.body.facts.get("rating") if feeder is not None else None
    poles = feeder.body.poles if feeder is not None else None
    return "" if fact is None else f"{fact.value.text}{f' {poles.count}p' if poles else ''}"


def _secondary_device(view: View, line: Feeder) -> Item:
    target = view.equipment(line.target.name)
    main = main_of(target) if target is not None else None
    if line.body.number("rating") is not None:
        return Item(True, f"secondary device {_device(line)} at the transformer")
    if main is not None:
        length = line.body.facts.get("length")
        run = f"{view.length_text(length.number)} away" if length is not None else "how far away? (NEC 240.21(C))"
        return Item(length is not None, f"secondary device: the {main:g} A main of `{line.target.name}`, {run}")
    return Item(False, f"which device protects `{line.key}`, and how far from the transformer? (NEC 240.21(C))")


def _of_new_system(unit: Equipment, made: Transformed) -> list[Item]:
    system = made.system
    stated = any(key in unit.body.facts for key in ("ground", "ground-resistor", "ground-reactor", "earthing"))
    items = [
        Item(True, f"secondary: {system.in_words()}"),
        Item(
            system.has_neutral,
            "a neutral is available" if system.has_neutral else "no neutral: does nothing below need one?",
        ),
    ]
    if made.separately_derived:
        items += [
            Item(
                stated,
                "how it is earthed is written"
                if stated
                else "where is its one neutral-to-earth bond: at the unit, or "
                "at the first device? (NEC 250.30; IEC 60364-5-54)",
            ),
            _item(
                unit.body.facts.get("electrode"),
                "wire to the earth electrode on record; the bonding jumper goes with it (NEC 250.102)",
                "size of the bonding jumper and of the wire to the earth electrode (NEC 250.66, 250.102)",
            ),
        ]
    return items


def _of_converter(unit: Equipment) -> list[Item]:
    power = unit.body.facts.get("power")
    return [
        _item(power, f"rating {power.value.text if power else ''}", "what rating?"),
        Item(False, "what fault current does it give, and do the devices behind it still trip?"),
        Item(False, "how is its output earthed, and where?"),
        Item(False, "what does it draw at its input, with its harmonics?"),
    ]


def _of_transfer(unit: Equipment) -> list[Item]:
    body = unit.body
    poles = body.poles
    return [
        _item(body.number("rating"), f"rated {body.text('rating')}", "what rating?"),
        _item(
            poles, f"{poles.count if poles else 0} poles", "does it switch the neutral? Where is each neutral bonded?"
        ),
        _item(body.number("rated"), "withstand on record", "what fault current does it bear, with which device ahead?"),
        _item(body.text("transition"), f"transition {body.text('transition')}", "open or closed transition?"),
        Item(False, "which loads go when the alternate source cannot carry all?"),
        Item(False, "phase order and angle of the two sources, if they are ever closed together"),
    ]


def _of_far_end(view: View, far: Equipment) -> list[Item]:
    supply = _supply(view, far.name)
    state = view.state(far.name)
    system = state.arriving.system if state is not None and isinstance(state.arriving, Known) else None
    items = [_item(system, f"`{far.name}` gets {system.figures() if system else ''}", "what voltage arrives?")]
    if supply is None:
        return items
    judged = view.feeder_state(supply.key)
    if judged is not None and isinstance(judged.verdict, Feeds):
        legs = " ".join(judged.verdict.best.legs)
        at = supply.statement.at
        where = f", positions {at.key}" if at is not None else ""
        items.append(Item(True, f"on legs {legs} of `{supply.source.name}`{where}"))
    items += _wires(view, supply, system)
    bus, main, rating = far.body.number("bus"), main_of(far), supply.body.number("rating")
    if bus is not None:
        ahead = main if main is not None else rating
        known = ahead is not None and ahead <= bus
        shown = f"bus {bus:g} A, behind {ahead:g} A" if ahead is not None else ""
        what = "lugs only: which device ahead protects" if has_lugs_only(far) else "which device protects"
        items.append(_item(known, shown, f"{what} the {bus:g} A bus? (NEC 408.36)"))
        rated = far.body.text("rated")
        items.append(
            _item(rated, f"rated {rated}: to be held against the fault current", "what fault current is it for?")
        )
    return items


def _wires(view: View, supply: Feeder, system: System | None) -> list[Item]:
    wires = supply.body.conductors
    length = supply.body.facts.get("length")
    long = f"{view.length_text(length.number)} long" if length is not None else ""
    items = [
        _item(wires, f"wires of `{supply.key}` on record", f"wires of `{supply.key}`: sizes, neutral, ground"),
        _item(length, long, f"how long is `{supply.key}`?"),
    ]
    if wires is not None:
        roles = {role for role, _ in wires.extras}
        if system is not None and system.has_neutral:
            neutral = bool(roles & {"N", "PEN"}) or wires.run.count > len(system.legs)
            items.append(_item(neutral, "neutral pulled", "is the neutral pulled?"))
        ground = bool(roles & {"G", "PE", "PEN"}) or wires.run.with_protective
        items.append(_item(ground, "grounding (protective) conductor pulled", "does a grounding conductor run along?"))
    return items


QUESTIONS = (
    "How many live wires arrive?",
    "Is there a neutral (white, grey or blue) among them?",
    "What does a meter read between two live wires, and between a live wire and neutral?",
)
"""Three answers that settle which voltage system is there; `readings_under` says how."""

_US_READINGS = (
    ("208Y/120 1ph", "two live wires and a neutral, 208 V between the live wires, 120 V to neutral: two legs of a wye"),
    (
        "120/240",
        "two live wires and a neutral, 240 V between the live wires, 120 V to neutral: one centre-tapped winding",
    ),
    ("240/120 3ph", "three live wires and a neutral, 240 V between any two, 120, 120 and 208 V to neutral: a high leg"),
    ("208Y/120", "three live wires and a neutral, 208 V between any two, 120 V from each to neutral: a wye"),
    ("480Y/277", "the same at 480 and 277 V"),
    (
        "480 3ph",
        "three live wires, no neutral, 480 V between any two: a delta; one that reads 0 V to earth is its corner",
    ),
)
_IEC_READINGS = (
    ("230 1ph", "one live wire and a neutral, 230 V between them: one leg of a wye"),
    ("400Y/230 1ph", "two live wires and a neutral, 400 V between the live wires, 230 V to neutral: two legs of a wye"),
    ("400Y/230", "three live wires and a neutral, 400 V between any two, 230 V from each to neutral: a wye"),
    ("690Y/400", "the same at 690 and 400 V"),
    ("400 3ph", "three live wires, no neutral, 400 V between any two: a wye whose neutral stays behind, or a delta"),
)


def readings_under(basis: str | None) -> tuple[tuple[str, str], ...]:
    """Notations, and what a meter reads where each stands: those usual under a basis, all without one."""
    if basis is None:
        return (*_US_READINGS, *_IEC_READINGS)
    return _IEC_READINGS if basis == "iec" else _US_READINGS
