"""Lists of equipment, transformers and grounding, and what labels say."""

from __future__ import annotations

from typing import Any

from wyeline_grammar.linking import Equipment
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.board_positions import positions_of
from wyeline_linter.earthing import own_electrode
from wyeline_linter.network import makes_system
from wyeline_linter.reports.columns import Cell, Column, Table, TableKind, Value, read, words
from wyeline_linter.reports.largest_fault import largest_fault
from wyeline_linter.reports.one_line import transformation
from wyeline_linter.reports.panel_schedule import fed_words
from wyeline_linter.reports.subject import Subject, about_circuit, about_equipment
from wyeline_linter.reports.wording import (
    device_text,
    electrode_text,
    enclosure_text,
    kind_text,
    location_text,
    rating_lines,
    system_short,
    wires_text,
)
from wyeline_linter.systems import Known
from wyeline_linter.windings import Transformed

EQUIPMENT = TableKind(
    "equipment",
    "Equipment list",
    "Every piece of equipment that has a tag of its own.",
    (
        words("tag", "Tag", "Its tag.", "as written"),
        words("kind", "Kind", "What it is.", "as written"),
        words("description", "Description", "What it is for.", "as written", wide=True),
        words("rating", "Rating", "Power, current, bus, main, rated, impedance.", "as written", wide=True),
        words("voltage", "Voltage", "The nominal voltage at its bus or output.", "`equipment.system.nominal`"),
        words("arriving", "Arriving", "What arrives where that is another system.", "`equipment.arriving.nominal`"),
        words("fed_from", "Fed from", "What supplies it in this switch state.", "`equipment.fed_from`"),
        Column(
            "connected_kva",
            "Connected",
            "Connected load on it.",
            "kVA",
            "load.connected.va",
            scale=1e-3,
            digits=2,
            sheet="connected",
        ),
        words("location", "Location", "Where it stands.", "as written: location, outdoor"),
        words("enclosure", "Enclosure", "What it is enclosed in, by NEMA 250 or IEC 60529.", "as written: enclosure"),
        words("mounting", "Mounting", "How it is mounted.", "as written: mounting"),
        words("status", "Status", "existing, new, future, temporary, relocated, demolish.", "as written; else new"),
        words("note", "Note", "What is noted beside it.", "as written: note, per", wide=True),
    ),
)

TRANSFORMERS = TableKind(
    "transformers",
    "Transformers",
    "Every transformer: windings, rating, load of the fullest winding, and what protects it.",
    (
        words("tag", "Tag", "Its tag.", "as written"),
        words("windings", "Windings", "Primary and secondary voltage.", "as written"),
        words("connection", "Connection", "Vector group or kind of winding.", "`equipment.winding.connection`"),
        Column("shift_deg", "Shift", "By how much the secondary leads.", "°", "winding.shift_deg", digits=0),
        words("rating", "Rating", "Its power.", "as written: power"),
        words("z", "Z", "Short-circuit impedance.", "as written: z"),
        words("x_over_r", "X/R", "X over R of its impedance.", "as written: x/r"),
        words("fullest", "Fullest winding", "The winding that is loaded most.", "`equipment.load.windings`"),
        Column(
            "winding_percent",
            "Loaded",
            "Demand current of that winding over what it may carry.",
            "%",
            source="`equipment.load.windings.share`",
            digits=0,
        ),
        words("primary_device", "Primary device", "The device of the feeder that supplies it.", "as written"),
        words("secondary_device", "Secondary device", "Devices of its feeders, or the mains behind.", "as written"),
        words("separately_derived", "Own system", "Whether its output is a system of its own.", "`...winding`"),
        words("earthing", "Grounding", "How its output is earthed.", "`equipment.system.earthing`", iec="Earthing"),
        words("status", "Status", "existing, new, future, temporary, relocated, demolish.", "as written; else new"),
    ),
)

GROUNDING = TableKind(
    "grounding",
    "Grounding and bonding",
    "How sources of voltage systems, and boards with an electrode of their own, are earthed. Confirm bonding and "
    "switched neutrals with an engineer.",
    (
        words("source", "Source", "What makes the system.", "as written"),
        words("system", "System", "Its voltage in words.", "`equipment.system.in_words`", wide=True),
        words("earthing", "Grounding", "How it is earthed.", "`equipment.system.earthing`", iec="Earthing"),
        words("stated", "Stated", "Written, or what the notation implies.", "as written: ground, earthing, neutral"),
        words("neutral", "Neutral", "Whether a neutral leaves it, and its written bond.", "as written: neutral"),
        words("first_device", "First board", "The first board behind it.", "derived"),
        words("switched", "Switched neutral", "Transfer switches behind it, with their poles.", "as written: poles"),
        words("conductors", "Wires to it", "Wires of its first feeder, with ground and neutral.", "as written"),
    ),
)

LABELS = TableKind(
    "labels",
    "Label text",
    "What labels and directories say: source of supply, voltage, fault current. Protective equipment is not in it.",
    (
        words("tag", "Tag", "The equipment, or the board and position.", "as written"),
        words("line_1", "Line 1", "What it is.", "as written"),
        words("line_2", "Line 2", "Voltage, wires, legs.", "derived"),
        words("line_3", "Line 3", "Where it is fed from.", "`equipment.fed_from`"),
        Column(
            "fault_ka",
            "Fault current",
            "Largest fault current of all switch states, for the label that asks for it.",
            "kA",
            "fault.largest.amps",
            scale=1e-3,
            digits=2,
            sheet="fault",
        ),
    ),
)


def equipment_list(subject: Subject) -> Table:
    """Everything with a tag, in the order of the files."""
    table = Table(EQUIPMENT)
    for equipment in subject.equipment:
        figures, body = subject.of(equipment.name), equipment.body
        unknown = figures.get("unknown", {})
        table.add(
            {
                **read(EQUIPMENT, figures, subject.sheet_of(equipment.name)),
                "tag": equipment.name,
                "kind": kind_text(equipment.kind),
                "description": body.description or "",
                "rating": "; ".join(rating_lines(equipment)),
                "voltage": Cell(system_short(figures.get("system")), tuple(unknown.get("system", ()))),
                "arriving": Cell(system_short(figures.get("arriving")), tuple(unknown.get("arriving", ()))),
                "fed_from": figures.get("fed_from") or "",
                "location": location_text(body),
                "enclosure": enclosure_text(body),
                "mounting": body.text("mounting") or "",
                "status": equipment.status,
                "note": "; ".join(t for t in (body.text("note"), body.text("per")) if t),
            },
            about_equipment(equipment.name),
            subject.place(equipment.place),
        )
    return table


def transformer_list(subject: Subject) -> Table:
    """Every transformer."""
    table = Table(TRANSFORMERS, practice=subject.practice)
    for unit in subject.equipment:
        if unit.kind != "transformer":
            continue
        figures, body = subject.of(unit.name), unit.body
        system = figures.get("system")
        supply = subject.view.network.supply.get(unit.name)
        winding = figures.get("winding")
        why = tuple(figures.get("unknown", {}).get("system", ()))
        fullest, share = _fullest(subject, figures)
        table.add(
            {
                **read(TRANSFORMERS, figures),
                "tag": unit.name,
                "windings": transformation(subject, unit),
                "connection": Cell(winding["connection"] if winding else None, why),
                "rating": body.text("power") or "",
                "z": body.text("z") or "",
                "x_over_r": body.text("x/r") or "",
                "fullest": fullest,
                "winding_percent": share,
                "primary_device": device_text(supply.body) if supply is not None else "",
                "secondary_device": _secondary(subject, unit),
                "separately_derived": ("yes" if winding["separately_derived"] else "no") if winding else "",
                "earthing": Cell(system["earthing"] if system else None, why),
                "status": unit.status,
            },
            about_equipment(unit.name),
            subject.place(unit.place),
        )
    return table


def _fullest(subject: Subject, figures: Any) -> tuple[str, Cell]:
    load = figures.get("load")
    windings = load.get("windings") if load is not None else None
    if not windings:
        return "", Cell()
    known = [w for w in windings if w["share"] is not None]
    if not known:
        return "", Cell(None, tuple(load["unknown"].get("demand", ())))
    most = max(known, key=lambda w: w["share"])
    between = subject.legs(most["between"]).replace(" ", "–")
    words_of = f"{most['part']} {between}: {most['amps']:.1f} A of {most['limit_a']:.1f} A"
    return words_of, Cell(100 * most["share"])


def _secondary(subject: Subject, unit: Equipment) -> str:
    found = []
    for feeder in subject.view.feeders_out_of(unit.name):
        own = device_text(feeder.body)
        target = subject.view.equipment(feeder.target.name)
        main = _main(target) if target is not None else ""
        if own:
            found.append(f"{own} to {feeder.target.text}")
        elif main:
            found.append(f"{main} of {feeder.target.text}")
        else:
            found.append(f"none written at {feeder.target.text}")
    return "; ".join(found)


def _main(board: Equipment) -> str:
    """The main with a rating of a board, in the word that it is written with; empty where it has none."""
    for key in ("main", "incomer"):
        if board.body.number(key) is not None:
            return f"{key} {board.body.text(key)}"
    return ""


def grounding_list(subject: Subject) -> Table:
    """Every maker of a voltage system: sources, and transformers and supplies whose output is a system of its own; and
    boards whose metal parts have an electrode of their own."""
    table = Table(GROUNDING, practice=subject.practice)
    for equipment in subject.equipment:
        state = subject.view.state(equipment.name)
        derived = state is not None and isinstance(state.winding, Transformed) and state.winding.separately_derived
        alone = own_electrode(equipment)
        if not (makes_system(equipment) or derived or alone or (equipment.kind == "ups" and equipment.arrow)):
            continue
        figures = subject.of(equipment.name)
        system = figures.get("system")
        why = tuple(figures.get("unknown", {}).get("system", ()))
        known = state.system.system if state is not None and isinstance(state.system, Known) else None
        feeders = subject.view.feeders_out_of(equipment.name)
        bond = equipment.body.text("neutral")
        table.add(
            {
                "source": equipment.name,
                "system": Cell(system["in_words"] if system else None, why),
                "earthing": electrode_text(equipment) or Cell(_earthing(known) if known is not None else None, why),
                "stated": ("written" if known.earthing.stated else "implied by the notation") if known else "",
                "neutral": ("yes" + (f", {bond}" if bond else "") if known.has_neutral else "none") if known else "",
                "first_device": _first_board(subject, equipment.name),
                "switched": _transfers(subject, equipment.name),
                "conductors": "; ".join(t for f in feeders if (t := wires_text(f.body.conductors))),
            },
            about_equipment(equipment.name),
            subject.place(equipment.place),
        )
    return table


def _earthing(system: Any) -> str:
    earthing = system.earthing
    where = {"N": "neutral", "mid": "midpoint"}.get(earthing.conductor or "", f"leg {earthing.conductor}")
    words_of = earthing.kind.value if earthing.conductor is None else f"{where}, {earthing.kind.value}"
    size = f" {earthing.size}" if earthing.size else ""
    return words_of + size + (f" ({earthing.arrangement.value})" if earthing.arrangement is not None else "")


def _below(subject: Subject, name: str) -> list[str]:
    """What hangs on a maker by wire, nearest first: as far as the next maker."""
    found: dict[str, None] = {}
    pending = [name]
    while pending:
        for feeder in subject.view.feeders_out_of(pending.pop(0)):
            target = feeder.target.name
            equipment = subject.view.equipment(target)
            if equipment is None or target in found or target == name:
                continue
            found[target] = None
            if equipment.kind not in ("transformer", "ups"):
                pending.append(target)
    return list(found)


def _first_board(subject: Subject, name: str) -> str:
    boards = (n for n in _below(subject, name) if subject.view.model.equipment[n].kind in BOARDS)
    return next(boards, "")


def _transfers(subject: Subject, name: str) -> str:
    found = []
    for below in _below(subject, name):
        unit = subject.view.model.equipment[below]
        if unit.kind != "transfer":
            continue
        poles = unit.body.poles
        opens = "poles not written" if poles is None else f"{poles.count} poles"
        found.append(f"{below}: {opens}")
    return "; ".join(found)


def label_list(subject: Subject) -> Table:
    """A label for each board and source, and a directory line for each of a board's devices."""
    table = Table(LABELS)
    for equipment in subject.equipment:
        if equipment.kind not in BOARDS and equipment.kind not in ("transformer", "transfer", "busway", "disconnect"):
            continue
        figures = subject.of(equipment.name)
        system = figures.get("system")
        supply = subject.view.network.supply.get(equipment.name)
        at = supply.statement.at if supply is not None else None
        position = f", position {at.key}" if at is not None else ""
        why = tuple(figures.get("unknown", {}).get("system", ()))
        values: dict[str, Cell | Value] = {
            **_fault_on_label(subject, table, equipment.name),
            "tag": equipment.name,
            "line_1": equipment.body.description or kind_text(equipment.kind),
            "line_2": Cell(f"{system_short(system)}, {len(system['conductors'])} wires" if system else None, why),
            "line_3": f"fed from {figures['fed_from']}{position}" if figures.get("fed_from") else "",
        }
        table.add(values, about_equipment(equipment.name), subject.place(equipment.place))
        if equipment.kind in BOARDS:
            _directory(subject, table, equipment)
    return table


def _fault_on_label(subject: Subject, table: Table, name: str) -> dict[str, Cell]:
    """The largest fault that any switch state brings: a label is read whatever the switches do."""
    cells = read(LABELS, subject.of(name), subject.sheet_of(name))
    here, found = cells["fault_ka"], largest_fault(subject, name)
    if found.amps is None:
        return cells if found.normal_a is None else cells | {"fault_ka": Cell(None, found.unknown, here.sheet)}
    if not found.when:
        return cells
    column = next(c for c in LABELS.columns if c.key == "fault_ka")
    largest = Cell(found.amps / 1e3)  # the sheet behind it is that of the other state
    usual = f"{column.text(here)} {column.unit} as normal"
    table.notes.append(f"{name}: {column.text(largest)} {column.unit}{found.when}, {usual}.")
    return cells | {"fault_ka": largest}


def _directory(subject: Subject, table: Table, equipment: Equipment) -> None:
    board = positions_of(subject.view, equipment)
    for occupant in board.occupants:
        words_of = occupant.body.description or ""
        if occupant.feeder is not None:
            words_of = fed_words(subject, occupant.feeder.target.name, occupant.body)
        elif not words_of:
            words_of = "space" if occupant.empty else "spare" if "spare" in occupant.body.flags else ""
        legs = board.legs_of(occupant) or ()
        table.add(
            {
                "tag": f"{equipment.name} {occupant.key}",
                "line_1": words_of,
                "line_2": f"leg{'s' if len(legs) > 1 else ''} {subject.legs(legs)}" if legs else "",
                "line_3": "",
            },
            about_circuit(equipment.name, occupant.key) if occupant.circuit is not None else "",
            subject.place(occupant.place),
        )
