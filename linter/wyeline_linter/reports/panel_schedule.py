"""Panel schedules: what takes every position, on which legs, with the volt-amperes it puts on each."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.model import Body
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.board_positions import ODD_EVEN, BoardPositions, Occupant, positions_of
from wyeline_linter.loads.buckets import split_of
from wyeline_linter.loads.measured import stands
from wyeline_linter.loads.measured_sheets import measurement_of, words_of
from wyeline_linter.loads.sheets import in_words
from wyeline_linter.network import follows_grid
from wyeline_linter.reports.columns import (
    Cell,
    Column,
    Table,
    TableKind,
    TwoColumns,
    Value,
    note_letters,
    number,
    words,
)
from wyeline_linter.reports.largest_fault import largest_fault
from wyeline_linter.reports.load_summary import classes_of
from wyeline_linter.reports.spare import spare_words
from wyeline_linter.reports.subject import Subject, about_circuit, about_equipment, about_feeder, sheet_anchor
from wyeline_linter.reports.wording import (
    STATUS_LEGEND,
    STATUS_NOTE,
    class_of,
    device_text,
    electrode_text,
    enclosure_text,
    location_text,
    main_text,
    raceway_text,
    rating_text,
    remarks_of,
    shared_wires,
    status_of,
    system_short,
    wires_text,
)
from wyeline_linter.shares import above_mean, share_text

if TYPE_CHECKING:
    from wyeline_linter.view import View

LEGS = ("A", "B", "C")
WITHIN = "within the measurement"
_ALIKE = 0.0005
"""A leg that is less above the mean of all is not told from the others."""


def _leg_column(leg: str) -> Column:
    return Column(
        f"leg_{leg.lower()}_va",
        f"Leg {leg}",
        f"Connected load on leg {leg}: one pole to neutral whole, two poles half on each, three poles a third.",
        "VA",
        source="the circuit's load, or `equipment.load.connected` of what a feeder supplies",
        digits=0,
        iec=f"Leg L{LEGS.index(leg) + 1}",
    )


SCHEDULE = TableKind(
    "panel",
    "Panel schedule",
    "One board: every position with its device, its wires and its load on each leg.",
    (
        words("position", "Position", "The positions it takes, or its label.", "as written"),
        words("legs", "Legs", "The legs its poles are on, in their order.", "derived from positions, or as written"),
        words("description", "Description", "What it serves; `via` names a board it feeds.", wide=True),
        words("class", "Class", "The class of the load, which decides how it counts.", "as written"),
        words("device", "Device", "The overcurrent device with its poles.", "as written: rating, poles, fuse, curve"),
        words("wires", "Wires", "Conductors of one circuit or feeder.", "as written", wide=True),
        words("raceway", "Raceway", "What the wires run in.", "as written"),
        *(_leg_column(leg) for leg in LEGS),
        words("remarks", "Remarks", "Protective functions, spare and space, what stands by.", "as written", wide=True),
        words("status", "Status", f"{STATUS_LEGEND}. Empty: new.", "as written"),
        words("feeds", "Feeds", "The equipment that a feeder supplies.", "as written"),
    ),
)


def panel_schedules(subject: Subject) -> list[Table]:
    """One schedule for every board that has circuits or feeders; an empty one too, once a feeder leads to it."""
    made, view = [], subject.view
    for equipment in subject.equipment:
        if equipment.kind in BOARDS:
            name, board = equipment.name, positions_of(view, equipment)
            if board.occupants or view.feeders_out_of(name) or view.feeders_into(name):
                made.append(panel_schedule(subject, equipment, board))
    return made


def panel_schedule(subject: Subject, equipment: Equipment, board: BoardPositions) -> Table:
    """The schedule of one board."""
    name = equipment.name
    table = Table(SCHEDULE, name, about=about_equipment(name), practice=subject.practice)
    table.facts = _head(subject, equipment, board)
    sums = dict.fromkeys(LEGS, 0.0)
    unknown: dict[str, None] = {}
    for occupant in _in_order(board):
        _add(subject, table, board, occupant, sums, unknown)
    placed = {o.feeder.key for o in board.occupants if o.feeder is not None}
    for feeder in subject.view.feeders_out_of(name):
        if feeder.key not in placed:
            loads = _fed_loads(subject, name, feeder.target.name, feeder.key)
            _take(loads, sums, unknown)
            legs = subject.of_feeder(feeder.key).get("legs") or ()
            values = _written(feeder.body)
            values |= {
                "legs": subject.legs(leg for leg in legs if leg != "N"),
                "description": fed_words(subject, feeder.target.name, feeder.body),
                "feeds": feeder.target.text,
                "remarks": _feeder_remarks(subject, name, feeder),
                **loads,
            }
            table.add(values, about_feeder(feeder.key), subject.place(feeder.place))
    _totals(subject, equipment, table, sums, tuple(unknown))
    note_letters(table, "status", STATUS_NOTE)
    table.beside = classes_of(subject, equipment)
    table.built = _as_built(subject, board)
    return table


def _as_built(subject: Subject, board: BoardPositions) -> TwoColumns | None:
    """Two columns where positions are odd left and even right, and no two devices want the same one."""
    taken = [p for p in board.taken if isinstance(p, int)]
    if board.numbering.scheme != ODD_EVEN or not taken or not board.legs:
        return None
    if any(len(who) > 1 for who in board.taken.values()):
        return None
    if not all(board.numbering.is_run(o.positions) for o in board.occupants if o.positions):
        return None
    count = (max(board.spaces or 0, *taken) + 1) // 2
    return TwoColumns(tuple(subject.legs((board.legs[row % len(board.legs)],)) for row in range(count)))


def _in_order(board: BoardPositions) -> list[Occupant]:
    """Numbered positions upwards, then labels as they are written."""
    return sorted(board.occupants, key=lambda o: (not o.positions, o.positions[:1] or (0,)))


def _head(subject: Subject, equipment: Equipment, board: BoardPositions) -> list[tuple[str, str]]:
    body = equipment.body
    figures = subject.of(equipment.name)
    system = figures.get("system")
    used = sum(1 for p in range(1, (board.spaces or 0) + 1) if any(not o.empty for o in board.taken.get(p, ())))
    spaces = str(board.spaces or "")
    if board.spaces and any(o.positions for o in board.occupants):
        spaces += f": {used} used, {board.spaces - used} free"
    wires = f", {len(system['conductors'])} wires" if system else ""
    flags = {flag: word for flag, word in _FLAGS.items() if flag in body.flags}
    main = [main_text(body).removeprefix("main "), *(flags[f] for f in ("through-lugs", "subfeed-lugs") if f in flags)]
    facts = [
        ("Fed from", _fed_from(subject, equipment.name)),
        ("Voltage", (system_short(system) or "?") + wires),
        ("In words", str(system["in_words"]) if system else "; ".join(figures.get("unknown", {}).get("system", ()))),
        ("Bus", ", ".join(t for t in (body.text("bus"), flags.get("double-neutral")) if t)),
        ("Main", ", ".join(word for word in main if word)),
        ("Short-circuit rating", rating_text(body)),
        ("Largest fault", _largest_fault(subject, equipment)),
        ("Earthing", electrode_text(equipment)),
        ("Terminals", (body.text("lug-temp") or "").replace("deg", "°")),
        ("Spaces", spaces),
        ("Location", location_text(body)),
        ("Enclosure", enclosure_text(body)),
        ("Mounting", body.text("mounting") or ""),
        ("Use", flags.get("service-equipment", "")),
        ("Status", equipment.status),
        ("Description", body.description or ""),
        ("Note", body.text("note") or ""),
    ]
    return [(label, text) for label, text in facts if text]


_FLAGS = {
    "through-lugs": "feed-through lugs",
    "subfeed-lugs": "sub-feed lugs",
    "double-neutral": "double neutral",
    "service-equipment": "service equipment",
}


def _largest_fault(subject: Subject, board: Equipment) -> str:
    """The fault current that its short-circuit rating is held against; nothing where nothing feeds it."""
    if subject.of(board.name).get("source") is None:
        return ""
    found = largest_fault(subject, board.name)
    if found.amps is None:
        return f"? ({'; '.join(found.unknown)})" if found.unknown else "?"
    return f"{number(found.amps / 1e3, 2)} kA{found.when}"


def _fed_from(subject: Subject, name: str) -> str:
    """Every way into a board, that which feeds it first; the others with why they do not."""
    network = subject.view.network
    supply = network.supply.get(name)
    ways = []
    for feeder in sorted(subject.view.feeders_into(name), key=lambda f: f is not supply):
        at = feeder.statement.at
        way = feeder.source.text + (f", position {at.key}" if at is not None else "")
        if not network.state.closed(feeder):
            way += " (normally open)" if feeder.normally_open else " (open)"
        ways.append(way)
    if supply is None:
        return "nothing in this switch state" + (f": {'; '.join(ways)}" if ways else "")
    return "; ".join(ways)


def _written(body: Body) -> dict[str, Cell | Value]:
    return {
        "class": class_of(body),
        "device": device_text(body),
        "wires": wires_text(body.conductors) or shared_wires(body),
        "raceway": raceway_text(body.raceway),
        "remarks": "; ".join(remarks_of(body)),
        "status": status_of(body),
    }


def _add(
    subject: Subject,
    table: Table,
    board: BoardPositions,
    occupant: Occupant,
    sums: dict[str, float],
    unknown: dict[str, None],
) -> None:
    name = board.board.name
    legs = board.legs_of(occupant)
    body = occupant.body
    values = _written(body)
    values |= {"position": occupant.key, "legs": subject.legs(legs or ()), "description": body.description or ""}
    if occupant.feeder is not None:
        feeder = occupant.feeder
        loads = _fed_loads(subject, name, feeder.target.name, feeder.key)
        values["description"] = fed_words(subject, feeder.target.name, body)
        values["feeds"] = feeder.target.text
        values["remarks"] = _feeder_remarks(subject, name, feeder)
        about = about_feeder(feeder.key)
    else:
        loads = _circuit_loads(subject, name, occupant)
        leaf = subject.view.loads.leaf(name, occupant.key)
        if leaf is not None and leaf.given is not None:
            values["class"] = in_words(leaf.key)
        about = about_circuit(name, occupant.key)
        if name in subject.view.loads.measured and stands(body.flags):
            values["remarks"] = "; ".join(filter(None, (str(values["remarks"]), WITHIN)))
            table.add(values | loads, about, subject.place(occupant.place))
            return
    _take(loads, sums, unknown)
    table.add(values | loads, about, subject.place(occupant.place))


def fed_words(subject: Subject, target: str, body: Body) -> str:
    """How a schedule calls what a feeder supplies; ``via`` where that is another board."""
    equipment = subject.view.equipment(target)
    words_of = body.description or (equipment.body.description if equipment is not None else None) or ""
    via = f"via {target}" if equipment is not None and equipment.kind in BOARDS else target
    return f"{via}: {words_of}" if words_of else via


def _feeder_remarks(subject: Subject, board: str, feeder: Feeder) -> str:
    """What is written beside it, and why its load is not on the legs: it stands open, or another runs in its place."""
    remarks = list(remarks_of(feeder.body))
    if not subject.view.network.state.closed(feeder):
        remarks.append("normally open" if feeder.normally_open else "open")
    load = subject.of(board).get("load")
    if load is not None and feeder.target.name in load["left_out"]:
        remarks.append("another runs in its place")
    if board in subject.view.loads.measured and stands(feeder.body.flags):
        remarks.append(f"{WITHIN} but for what is new on it")
    return "; ".join(remarks)


def _take(loads: Mapping[str, Cell], sums: dict[str, float], unknown: dict[str, None]) -> None:
    for leg in LEGS:
        cell = loads.get(f"leg_{leg.lower()}_va")
        if cell is None:
            continue
        unknown.update(dict.fromkeys(cell.unknown))
        if isinstance(cell.value, float | int):
            sums[leg] += cell.value


def _circuit_loads(subject: Subject, board: str, occupant: Occupant) -> dict[str, Cell]:
    leaf = subject.view.loads.leaf(board, occupant.key)
    if leaf is None:
        return {}
    sheet = sheet_anchor(f"{board} {occupant.key}", "drawn")
    if leaf.row is None:
        return {"leg_a_va": Cell(None, leaf.unknown, sheet)} if leaf.unknown else {}
    share = subject.view.loads.share(board)
    return _split({"": tuple(share * part for part in split_of(leaf.row))}, sheet, leaf.legs)


def _fed_loads(subject: Subject, board: str, target: str, key: str) -> dict[str, Cell]:
    """What a feeder brings to the board, on the board's legs, beyond what was measured there; nothing where it brings
    nothing in this state."""
    book = subject.view.loads
    supply = subject.view.network.supply.get(target)
    node = book.nodes.get(target)
    if node is None or supply is None or supply.key != key or target not in book.children.get(board, ()):
        return {}
    up = node.up if node.up.new is None or board not in book.measured else node.up.new
    if up.unknown:
        return {"leg_a_va": Cell(None, up.unknown, sheet_anchor(target, "connected"))}
    rows, _ = up.counting(book.left_out(board))
    parts = {str(kind): split_of(row) for kind, row in rows.items()}
    return _split(parts, sheet_anchor(target, "connected"), LEGS) if parts else {}


def _split(parts: Mapping[str, tuple[complex, ...]], sheet: str, legs: tuple[str, ...]) -> dict[str, Cell]:
    cells = {}
    for k, leg in enumerate(LEGS):
        va = abs(sum(part[k] for part in parts.values()))
        if va > 1e-6 and (leg in legs or not set(legs) & set(LEGS)):
            cells[f"leg_{leg.lower()}_va"] = Cell(va, (), sheet)
    return cells


def _totals(
    subject: Subject, equipment: Equipment, table: Table, sums: dict[str, float], unknown: tuple[str, ...]
) -> None:
    name = equipment.name
    load: Mapping[str, Any] | None = subject.of(name).get("load")
    system = subject.of(name).get("system")
    legs = [leg for leg in LEGS if system is None or leg in system["conductors"]]
    general = subject.view.loads.leaf(name) if name in subject.view.loads.dwellings else None
    if general is not None and general.row is not None:
        parts = dict(zip(LEGS, map(abs, split_of(general.row)), strict=True))
        sums = {leg: sums[leg] + parts[leg] for leg in LEGS}
        label = "General load by the floor area (NEC 220.41, 220.52) beyond what rows state"
        table.add_total(label, {f"leg_{leg.lower()}_va": parts[leg] for leg in legs})
    measured = measurement_of(subject.view.loads, name) if name in subject.view.loads.measured else None
    if measured is not None:
        share = subject.view.loads.share(name)
        split = split_of(measured.row) if measured.row is not None else (0j, 0j, 0j)
        parts = {leg: share * abs(part) for leg, part in zip(LEGS, split, strict=True)}
        sums = {leg: sums[leg] + parts[leg] for leg in LEGS}
        unknown += measured.unknown
        label = f"What stands already, {words_of(equipment)}"
        cells = {leg: Cell(None if measured.unknown else parts[leg], measured.unknown) for leg in legs}
        table.add_total(label, {f"leg_{leg.lower()}_va": cells[leg] for leg in legs})
    if any(sums.values()) or unknown:
        label = "Sum of the rows" + (" that are known" if unknown else "")
        table.add_total(label, {f"leg_{leg.lower()}_va": sums[leg] for leg in legs})
    if load is None:
        return
    names = (("connected", "Connected"), ("demand", "Demand"), ("sizing", "Sizing by code"))
    for key, label in names:
        amount = load[key]
        sheet = sheet_anchor(name, key)
        if amount is None:
            why = tuple(load["unknown"].get(key, ()))
            table.add_total(f"{label}, VA", {f"leg_{leg.lower()}_va": Cell(None, why, sheet) for leg in legs})
            continue
        shown = {leg: va for leg, va in amount["leg_va"].items() if leg in LEGS}
        table.add_total(
            f"{label}, VA (total {number(amount['va'], 0)})",
            {f"leg_{leg.lower()}_va": Cell(va, (), sheet) for leg, va in shown.items()},
        )
        table.add_total(
            f"{label}, A",
            {f"leg_{leg.lower()}_va": Cell(amount["amps"][leg], (), sheet) for leg in shown},
            digits=1,
            unit="A",
        )
    table.notes += _notes(spare_words(subject, equipment), load)
    table.notes += _beside_the_sums(subject, equipment)


_ELECTRONIC = frozenset({"it", "drive", "ups", "ev"})
_NAMED = 6
"""Of what is beside the sums, how much is named."""


def _notes(spare: str, load: Mapping[str, Any]) -> list[str]:
    notes = [
        "The rows are added as numbers; connected, demand and sizing load take power factors into account, and amperes "
        "are phasors at nominal voltage."
    ]
    neutral = load.get("neutral")
    if neutral is not None:
        notes.append(f"Neutral: {number(neutral['demand_a'], 1)} A under demand{_of_neutral(load)}.")
    if load.get("unbalance") is not None:
        notes.append(
            "Balance: the legs carry alike."
            if load["unbalance"] < _ALIKE
            else f"Balance: the most loaded leg is {above_mean(load['unbalance'])}."
        )
    if spare:
        notes.append(spare)
    if load.get("left_out"):
        notes.append(f"Not counted, because another runs in its place: {', '.join(load['left_out'])}.")
    if load.get("apart_va"):
        notes.append(f"Future or to be removed, not counted: {number(load['apart_va'] / 1e3, 2)} kVA.")
    return notes


def _of_neutral(load: Mapping[str, Any]) -> str:
    """What of harmonics is in the neutral's current, its worst, and what nobody stated."""
    neutral = load["neutral"]
    worst = f", at worst {number(neutral['worst_a'], 1)} A" if neutral["worst_a"] is not None else ""
    if neutral["third_harmonic_a"] is None:
        waves = any(row["class"] in _ELECTRONIC for row in load["by_class"])
        return worst + ("; harmonics of electronic loads, which add up in it, are not counted" if waves else "")
    third = f"{number(neutral['third_harmonic_a'], 1)} A of third harmonic"
    part = f"{share_text(neutral['third_harmonic_part'])} of the line currents"
    unstated = neutral["third_harmonic_unstated_va"]
    without = f"; {number(unstated / 1e3, 2)} kVA states none and counts with none" if unstated else ""
    alone = worst if (neutral["worst_a"] or 0.0) > neutral["demand_a"] else ""
    return f", with {third} ({part}){alone}{without}"


def _beside_the_sums(subject: Subject, board: Equipment) -> list[str]:
    """What is no load and changes the current all the same: capacitors, and inverters that feed into the board."""
    names = subject.view.studies.once("beside the sums", lambda: _delivering_below(subject.view)).get(board.name)
    if not names:
        return []
    more = f" and {len(names) - _NAMED} more" if len(names) > _NAMED else ""
    return [f"Not in these sums: {', '.join(names[:_NAMED])}{more}; the feeder schedule tells the current with them."]


def _delivering_below(view: View) -> dict[str, list[str]]:
    """By name of what stands above them."""
    found: dict[str, list[str]] = {}
    for e in view.of_kind("capacitor", "inverter"):
        if e.kind == "capacitor" or follows_grid(e):
            for name in view.network.above(e.name):
                found.setdefault(name, []).append(f"{e.name} ({e.kind})")
    return found
