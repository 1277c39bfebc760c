"""What to go through when a connection is made: ticked where the model shows it, asked where it does not.

Common practice, no source; the clauses are where a reader looks first. Nothing here passes or fails: a tick means that
the model holds the fact, not that the fact is right.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_linter.earthing import EarthingKind
from wyeline_linter.grounding_conductors import bonding_jumper, electrode_conductor
from wyeline_linter.network import follows_grid
from wyeline_linter.protection.lines import feeder_line
from wyeline_linter.repair_sizes import has_lugs_only
from wyeline_linter.sizing.plain import main_of
from wyeline_linter.sizing.writing import size_text
from wyeline_linter.studies.fault import WORDS
from wyeline_linter.system_words import conductor_text, with_legs_of
from wyeline_linter.systems import Known, System
from wyeline_linter.tables import NotListed
from wyeline_linter.verdicts import Feeds
from wyeline_linter.windings import Transformed

if TYPE_CHECKING:
    from wyeline_linter.view import View


@dataclass(frozen=True, slots=True)
class Item:
    """One line: ``known`` where the model shows it, with what it shows in ``text``; else ``text`` asks for it."""

    known: bool
    text: str

    def in_words(self) -> str:
        return f"[{'x' if self.known else ' '}] {self.text}"


def _item(known: object, shown: str, asked: str) -> Item:
    return Item(True, shown) if known else Item(False, asked)


def _clause(view: View, us: str, iec: str) -> str:
    """Where to read on under the basis of the project, in brackets; both without one."""
    if view.basis is None:
        return f" (NEC {us}; IEC {iec})"
    return f" (IEC {iec})" if view.basis == "iec" else f" (NEC {us})"


def _practice(view: View) -> str | None:
    return "iec" if view.basis == "iec" else None


def for_connection(
    view: View, target: str, inserted: str | None, kind: str | None, *, solved: bool = False
) -> tuple[Item, ...]:
    """The checklist of a connection as it stands in ``view``: of what was inserted, then of the far end.

    ``solved`` takes fault currents into account, which are worked out for it.
    """
    items: list[Item] = []
    equipment = view.equipment(inserted) if inserted is not None else None
    if equipment is not None and kind == "transformer":
        items += _of_transformer(view, equipment, solved=solved)
    elif equipment is not None and kind == "transfer":
        items += _of_transfer(view, equipment)
    elif equipment is not None:
        items += _of_source(view, equipment)
    far = view.equipment(target)
    if far is not None:
        items += _of_far_end(view, far)
    return tuple(items)


def _supply(view: View, name: str) -> Feeder | None:
    return view.network.supply.get(name)


def _of_transformer(view: View, unit: Equipment, *, solved: bool) -> list[Item]:
    body = unit.body
    state = view.state(unit.name)
    winding = state.winding if state is not None else None
    made = winding if isinstance(winding, Transformed) else None
    supply = _supply(view, unit.name)
    takes = "–".join(conductor_text(c, _practice(view)) for c in made.takes) if made is not None else ""
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
            f"primary device{_clause(view, '450.3', '60364-4-43')}, and its inrush",
        ),
        *(_secondary_device(view, line) for line in behind),
    ]
    if made is not None:
        items += _of_new_system(view, unit, made)
    ratio = body.number("x/r") or body.number("r/x")
    items += [
        _item(body.number("z"), f"z {body.text('z')} on record", "what z does its nameplate give?"),
        _item(
            ratio or body.facts.get("loss"),
            "x/r on record" if ratio else f"x/r follows from its loss of {body.text('loss')}",
            "what x/r, or what loss, does its data sheet give?",
        ),
        _item(body.facts.get("tap"), f"tap at {body.text('tap')}", "which tap is it set to?"),
        *_faults_behind(view, behind, solved=solved),
        Item(False, "room, ventilation, floor load, sound and heat: told to the other trades?"),
    ]
    return items


def _faults_behind(view: View, behind: Sequence[Feeder], *, solved: bool) -> Iterator[Item]:
    """The first boards behind a new source: fault current against rating, and what their labels have to say."""
    for line in behind:
        board = view.equipment(line.target.name)
        worst = view.studies.normal.largest.worst(line.target.name) if solved else None
        if board is None or worst is None or not worst.amperes:
            continue
        rated = board.body.text("rated")
        most = f"{worst.amperes / 1e3:.3g} kA ({WORDS[worst.kind]})"
        yield _item(
            rated,
            f"fault current at `{board.name}` {most}, rated {rated}",
            f"fault current at `{board.name}` {most}: what is it rated for?",
        )
        yield Item(True, f"label of `{board.name}`, with source and fault current: in the list of labels")
        return
    yield Item(False, "fault current at the first board against its rating: three-phase and leg to neutral")
    yield Item(False, "labels: source of supply, fault current")


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
        how_far = f"how far away?{_clause(view, '240.21(C)', '60364-4-43')}"
        run = f"{view.length_text(length.number)} away" if length is not None else how_far
        return Item(length is not None, f"secondary device: the {main:g} A main of `{line.target.name}`, {run}")
    clause = _clause(view, "240.21(C)", "60364-4-43")
    return Item(False, f"which device protects `{line.key}`, and how far from the transformer?{clause}")


def _of_new_system(view: View, unit: Equipment, made: Transformed) -> list[Item]:
    system, body = made.system, unit.body
    items = [Item(True, f"secondary: {with_legs_of(view.basis, system.in_words())}")]
    if system.has_neutral:
        items.append(Item(True, "a neutral is available"))
    else:
        asks = _single_poles_below(view, unit)
        items.append(_item(not asks, "no neutral, and nothing that is written below asks for one",
                           f"no neutral: what do the single-pole circuits of {asks} run between?"))  # fmt: skip
    if not made.separately_derived:
        return items
    if system.earthing.kind is not EarthingKind.NONE:
        stated = system.earthing.stated or any(key in body.facts for key in (*_EARTHING, "neutral"))
        clause = _clause(view, "250.30", "60364-5-54")
        where = f"where is its one neutral-to-earth bond: at the unit, or at the first device?{clause}"
        items.append(_item(stated, "how it is earthed is written", where))
    items += _of_electrode(view, unit)
    return items


_EARTHING = ("ground", "ground-resistor", "ground-reactor", "earthing")


def _single_poles_below(view: View, unit: Equipment) -> str:
    """The boards on the same voltage system whose circuits of one pole want a neutral."""
    found: list[str] = []
    pending, seen = [unit.name], {unit.name}
    while pending:
        for line in view.feeders_out_of(pending.pop()):
            board = view.equipment(line.target.name)
            if board is None or board.name in seen or board.kind in ("transformer", "ups"):
                continue
            seen.add(board.name)
            pending.append(board.name)
            poles = (placed.circuit.body.poles for placed in board.circuits)
            if any(each is not None and each.count == 1 for each in poles):
                found.append(f"`{board.name}`")
    return ", ".join(found)


def _of_electrode(view: View, unit: Equipment) -> list[Item]:
    """The wire to the earth electrode and the bonding jumper; their least sizes where the tables give them."""
    electrode = unit.body.facts.get("electrode")
    if view.basis == "iec":
        known = f"wire to the earth electrode {electrode.value.text}" if electrode is not None else ""
        return [_item(electrode, known, "size of the wire to the earth electrode (IEC 60364-5-54)")]
    least = _least_bonds(view, unit)
    known = f"wire to the earth electrode {electrode.value.text}" if electrode is not None else ""
    asked = f"size of the wire to the earth electrode{least[0]}{_clause(view, '250.66', '60364-5-54')}"
    return [
        _item(electrode, known, asked),
        _item(
            least[1],
            f"bonding jumper{least[1]} (NEC 250.102(C))",
            f"size of the bonding jumper{_clause(view, '250.102', '60364-5-54')}",
        ),
    ]


def _least_bonds(view: View, unit: Equipment) -> tuple[str, str]:
    """What the tables ask of the wire to the electrode and of the bonding jumper, such as `: #8 Cu or larger by the
    wires behind it`; empty where they do not tell."""
    tables = view.tables
    for feeder in view.feeders_out_of(unit.name) if tables is not None else ():
        line = feeder_line(view, feeder)
        if line is None or line.medium or tables is None:
            continue
        wiring = line.wiring
        sizes = [
            rule(tables, wiring.size, wiring.sets, wiring.metal, "Cu") for rule in (electrode_conductor, bonding_jumper)
        ]
        texts = [
            "" if isinstance(size, NotListed) else f": {size_text(size.value)} Cu or larger by the wires behind it"
            for size in sizes
        ]
        return texts[0], texts[1]
    return "", ""


def _of_source(view: View, unit: Equipment) -> list[Item]:
    """A generator, an inverter, a UPS, a charger or a drive between two systems."""
    body = unit.body
    power, state = body.facts.get("power"), view.state(unit.name)
    keys = ("subtransient", "sustained") if unit.kind == "generator" else ("sustained", "limit")
    given = [f"{key} {body.text(key)}" for key in keys if key in body.facts]
    asked = "what fault current does it give, by its data sheet?"
    if unit.kind == "generator":
        asked = "what subtransient reactance and what sustained fault current does its data sheet give?"
    items = [
        _item(power, f"rating {power.value.text if power else ''}", "what rating?"),
        _item(given, f"fault current that it gives: {', '.join(given)}", asked),
    ]
    makes_system = not (follows_grid(unit) and not unit.arrow)
    if unit.kind != "charger" and makes_system:
        items.append(Item(False, "do the devices behind it still trip on what it gives?"))
    system = state.system.system if state is not None and isinstance(state.system, Known) else None
    if makes_system and (system is None or system.frequency_hz):
        stated = system is not None and system.earthing.stated
        items.append(_item(stated, f"its output: {with_legs_of(view.basis, system.in_words()) if system else ''}",
                           "how is its output earthed, and where?"))  # fmt: skip
    if unit.arrow:
        items.append(Item(False, "what does it draw at its input, with its harmonics?"))
    return items


def _of_transfer(view: View, unit: Equipment) -> list[Item]:
    body = unit.body
    poles, transition = body.poles, body.text("transition")
    items = [
        _item(body.number("rating"), f"rated {body.text('rating')}", "what rating?"),
        _item(
            poles, f"{poles.count if poles else 0} poles", "does it switch the neutral? Where is each neutral bonded?"
        ),
        _item(
            body.number("rated") or body.number("withstand"),
            f"withstand {body.text('rated') or body.text('withstand')}",
            "what fault current does it bear, with which device ahead?",
        ),
        _item(transition, f"transition {transition}", "open or closed transition?"),
        _alternate_carries(view, unit),
    ]
    if transition != "open":
        items.append(Item(False, "phase order and angle of the two sources, if they are ever closed together"))
    return items


def _alternate_carries(view: View, unit: Equipment) -> Item:
    """Whether a generator or UPS on another side of a transfer switch is made for all that hangs on the switch."""
    asked = Item(False, "which loads go when the alternate source cannot carry all?")
    normal = _supply(view, unit.name)
    others = [feeder for feeder in view.feeders_into(unit.name) if feeder is not normal]
    root = view.network.root.get(others[0].source.name) if len(others) == 1 else None
    source = view.equipment(root) if root is not None else None
    node = view.loads.nodes.get(unit.name)
    power = source.body.facts.get("power") if source is not None and source.kind != "utility" else None
    if source is None or power is None or node is None or node.below.unknown:
        return asked
    rated_va = power.number / ((source.body.number("pf") or 1.0) if power.value.dimension == "power" else 1.0)
    demand = abs(view.loads.counted(unit.name).demand.va)
    if demand > rated_va:
        return Item(
            False, f"which of the {demand / 1e3:.3g} kVA go, as `{source.name}` is made for {power.value.text}?"
        )
    return Item(True, f"{demand / 1e3:.3g} kVA of demand behind it; `{source.name}` is made for {power.value.text}")


def _of_far_end(view: View, far: Equipment) -> list[Item]:
    supply = _supply(view, far.name)
    state = view.state(far.name)
    system = state.arriving.system if state is not None and isinstance(state.arriving, Known) else None
    items = [_item(system, f"`{far.name}` gets {system.figures() if system else ''}", "what voltage arrives?")]
    if supply is None:
        return items
    judged = view.feeder_state(supply.key)
    if judged is not None and isinstance(judged.verdict, Feeds):
        legs = " ".join(conductor_text(c, _practice(view)) for c in judged.verdict.best.legs)
        at = supply.statement.at
        where = f", positions {at.key}" if at is not None else ""
        items.append(Item(True, f"on legs {legs} of `{supply.source.name}`{where}"))
    items += _wires(view, supply, system)
    bus, main, rating = far.body.number("bus"), main_of(far), supply.body.number("rating")
    if bus is not None:
        above = state.ahead if state is not None else None
        behind, where = main if main is not None else rating, ""
        if behind is None and above is not None and above.device_a is not None:
            behind, where = above.device_a, f" at `{above.device_at}`"
        known = behind is not None and behind <= bus
        shown = f"bus {bus:g} A, behind {behind:g} A{where}" if behind is not None else ""
        what = "lugs only: which device ahead protects" if has_lugs_only(far) else "which device protects"
        asked = f"{what} the {bus:g} A bus?{_clause(view, '408.36', '60364-4-43')}"
        items.append(_item(known, shown, asked))
        rated = next((f"{key} {far.body.text(key)}" for key in ("rated", "withstand") if far.body.text(key)), "")
        items.append(_item(rated, f"{rated}: to be held against the fault current", "what fault current is it for?"))
    return items


def _wires(view: View, supply: Feeder, system: System | None) -> list[Item]:
    wires = supply.body.conductors
    length = supply.body.facts.get("length")
    long = f"{view.length_text(length.number)} long" if length is not None else ""
    long += ", as assumed" if length is not None and length.assumed else ""
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
        source = view.equipment(supply.source.name)
        if not ground and source is not None and source.kind == "utility" and system is not None and system.has_neutral:
            return items  # the neutral of a service is bonded where it arrives
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
