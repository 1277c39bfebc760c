"""What is known of a thing of the model, as text for people: cards for hover and completion.

The figures come from the linter; here they are only worded. Text is Markdown.
"""

from __future__ import annotations

import contextlib

from wyeline_grammar.attributes import (
    FLAGS,
    KEYS,
    KINDS,
    Unkeyed,
    Use,
    accept_phrase,
    doc_of,
    listed,
    place_phrase,
    range_phrase,
    use_of,
)
from wyeline_grammar.linking import Declared, Equipment, Feeder, PlacedCircuit
from wyeline_grammar.model import EquipmentStatement, RacewayStatement
from wyeline_grammar.notation import Voltage, VoltageForm, parse_voltage
from wyeline_grammar.word_pages import written
from wyeline_linter.board_positions import Occupant, positions_of
from wyeline_linter.derive import reasons_of
from wyeline_linter.load_figures import load_figures, load_lines
from wyeline_linter.loads.sheets import circuit_figure
from wyeline_linter.system_words import conductors_text, pair_text, with_legs_of
from wyeline_linter.systems import Known, SystemState, volts_text
from wyeline_linter.verdicts import Refusal, Undecided
from wyeline_linter.view import View
from wyeline_linter.windings import Transformed
from wyeline_linter.working import short

CODE = "```wye\n{}\n```"


def equipment_card(view: View, equipment: Equipment) -> str:
    """A piece of equipment: what it is, the voltage at every pair of its legs, where it comes from, or why not."""
    name = equipment.name
    lines = [_title(name, equipment.kind, equipment.body.description)]
    if equipment.statement.doc:
        lines.append(equipment.statement.doc)
    state = view.state(name)
    refused = [refusal for feeder in view.feeders_into(name) if (refusal := refusal_text(view, feeder))]
    dead = bool(refused) and state is not None and not isinstance(state.system, Known)
    lines += refused if dead else []
    if dead:  # one cause, told once: nothing below it can be told
        lines.append("**Voltage** and **load** are unknown until it can be fed")
    elif state is not None:
        if state.arriving is not None and state.arriving is not state.system:
            lines.append(f"**Arriving** {system_text(state.arriving, view.basis)}")
            lines.append(f"**Makes** {system_text(state.system, view.basis)}")
        else:
            lines.append(f"**Voltage** {system_text(state.system, view.basis)}")
        if isinstance(state.winding, Transformed):
            lines.append(f"**Windings** {_windings_text(state.winding)}")
    load = load_figures(view, name) if not dead else None
    if load is not None:
        lines.append("**Load**\n" + "\n".join(f"- {line.strip()}" for line in load_lines(load, view.basis)))
    lines += path_text(view, name)
    lines += [] if dead else refused
    return "\n\n".join(lines)


def _windings_text(winding: Transformed) -> str:
    if winding.angle_unknown is not None:
        return f"{winding.connection.rstrip('0123456789')}; {winding.angle_unknown}"
    shifted = "" if winding.shift_deg is None else f", shifted by {winding.shift_deg:g}°"
    return f"{winding.connection}{shifted}"


def feeder_card(view: View, feeder: Feeder) -> str:
    """A feeder: what its board offers, what its far end wants, which legs it takes, or why it cannot be connected."""
    body = feeder.body
    lines = [_title(feeder.key, "feeder", body.description)]
    if feeder.statement.doc:
        lines.append(feeder.statement.doc)
    if feeder.normally_open:
        lines.append("Normally open.")
    state = view.feeder_state(feeder.key)
    if state is not None:
        lines.append(f"**`{feeder.source.name}` offers** {system_text(state.offered, view.basis)}")
        if state.wanted is not None:
            lines.append(f"**`{feeder.target.name}` wants** {voltage_text(state.wanted)}")
        if isinstance(state.carried, Known):
            legs = conductors_text(state.carried.system.conductors, view.basis)
            lines.append(f"**Carries** {system_text(state.carried, view.basis)}  \non {legs}")
        elif isinstance(state.verdict, Undecided):
            lines.append("**Cannot be told yet:** " + with_legs_of(view.basis, "; ".join(state.verdict.reasons)))
        if isinstance(state.verdict, Refusal):  # both sides stand above
            lines.append(f"**Cannot be connected:** {with_legs_of(view.basis, state.verdict.why)}")
    return "\n\n".join(lines)


def refusal_text(view: View, feeder: Feeder) -> str:
    """Why a feeder cannot be connected; empty where it can."""
    state = view.feeder_state(feeder.key)
    if state is None or not isinstance(state.verdict, Refusal):
        return ""
    refusal = state.verdict
    why, found, needed = (with_legs_of(view.basis, text) for text in (refusal.why, refusal.found, refusal.needed))
    return (
        f"**Cannot be connected** (`{feeder.key}`): {why}\n\n"
        f"- found at `{feeder.source.name}`: {found}\n- needed at `{feeder.target.name}`: {needed}"
    )


def circuit_card(view: View, board: Equipment, circuit: PlacedCircuit) -> str:
    """A circuit of a board: its legs and the voltage on them."""
    body = circuit.circuit.body
    lines = [_title(f"{board.name} {circuit.key}", "circuit", body.description)]
    board_positions = positions_of(view, board)
    occupant = next((o for o in board_positions.occupants if o.circuit is circuit), None)
    legs = legs_of(view, board, occupant) if occupant is not None else ""
    lines.append(legs or "Its legs cannot be told yet.")
    with contextlib.suppress(KeyError):  # no load is written
        lines.append(f"**Draws** {short(circuit_figure(view, board.name, circuit.key))}")
    return "\n\n".join(lines)


def legs_of(view: View, board: Equipment, occupant: Occupant) -> str:
    """The legs that a device of a board is on, with the voltages between and to neutral; empty where unknown."""
    board_positions = positions_of(view, board)
    legs = board_positions.legs_of(occupant)
    if not legs:
        return ""
    words = f"**On leg{'s' if len(legs) > 1 else ''}** {conductors_text(legs, view.basis)}"
    system = board_positions.system
    if system is None:
        return words
    pairs = [
        pair_text(a, b, v, view.basis)
        for a, b, v in system.pair_voltages()
        if a in legs and (b in legs or b not in system.legs)
    ]
    return f"{words}: {' · '.join(pairs)}" if pairs else words


def declared_card(declared: Declared) -> str:
    """A type, system, interlock, raceway or label: its sort and the lines that declare it."""
    lines = [_title(declared.name, declared.sort if declared.sort != "equipment" else declared.kind, None)]
    if declared.statement.doc:
        lines.append(declared.statement.doc)
    statement = declared.statement
    if isinstance(statement, EquipmentStatement) and declared.sort == "system" and statement.primary is not None:
        if statement.primary.voltage is not None:
            lines.append(f"**Voltage** {voltage_text(statement.primary.voltage)}")
    elif isinstance(statement, EquipmentStatement | RacewayStatement):
        code = declared.block.lines[statement.head.line : statement.last_line + 1]
        lines.append(CODE.format("\n".join(code[:12])))
    return "\n\n".join(lines)


def system_text(state: SystemState, practice: str | None) -> str:
    """A voltage system in words, then every pair of its conductors with its volts."""
    if not isinstance(state, Known):
        return "unknown: " + "; ".join(reasons_of(state))
    pairs = " · ".join(pair_text(*pair, practice) for pair in state.system.pair_voltages())
    return f"{with_legs_of(practice, state.system.in_words())}  \n{pairs}"


def voltage_text(voltage: Voltage) -> str:
    """A voltage notation in words: ``208Y/120`` is three live wires and a neutral (wye), 208 V ... 120 V."""
    if voltage.high_v is not None:
        volts = f"a nameplate for {volts_text(voltage.line_v)} to {volts_text(voltage.high_v)} between them"
    elif voltage.form in (VoltageForm.TWO_WIRE, VoltageForm.DC2):
        volts = f"{volts_text(voltage.line_v)} between them"
    elif voltage.neutral_v is None:
        volts = f"{volts_text(voltage.line_v)} between any two of them"
    elif voltage.form is VoltageForm.HIGH_LEG4:
        high = voltage.neutral_v * 3**0.5
        volts = (
            f"{volts_text(voltage.line_v)} between live wires, {volts_text(voltage.neutral_v)} from two of them to "
            f"neutral, {volts_text(round(high))} from the high leg"
        )
    else:
        volts = f"{volts_text(voltage.line_v)} between live wires, {volts_text(voltage.neutral_v)} to neutral"
    return f"`{voltage.text}`: {voltage.form.value}, {volts}"


def notation_text(text: str) -> str:
    """A voltage notation as typed, in words. Raises NotationError."""
    return voltage_text(parse_voltage(text))


def path_text(view: View, name: str) -> list[str]:
    """The way from the source, and what else is known of the supply."""
    network = view.network
    path = network.path(name)
    if not path:
        return []
    names = [*reversed(list(network.above(name))), name]
    return ["**Fed** " + " → ".join(f"`{n}`" for n in names)]


def key_text(key: str, place: str | None) -> str:
    """A key: what it says, how it is written, its sane range, and what holds where it is left out."""
    use = use_of(place, key) if place is not None else None
    uses = [use] if use is not None else list(KEYS[key].uses)
    lines = [f"**{key}** — {doc_of(key, place) or ''}"]
    for each in uses:
        where = "" if use is not None else f"{listed([place_phrase(p) for p in sorted(each.places)])}: "
        lines.append(f"{where}{use_text(each)}")
    return "\n\n".join(lines)


def use_text(use: Use) -> str:
    """How a key is written at a place."""
    forms = listed([accept_phrase(accept) for accept in use.accepts])
    ranges = [r for r in map(range_phrase, use.accepts) if r]
    text = f"Takes {forms}."
    if ranges:
        text += f" Sane range: {listed(ranges)}."
    if use.default:
        text += f" Left out: {use.default}."
    examples = ", ".join(f"`{example}`" for example in use.examples)
    return text + (f" For example {examples}." if examples else "")


def unkeyed_text(unkeyed: Unkeyed) -> str:
    """What a quantity without a key means at a place."""
    sane = range_phrase(unkeyed.accept)
    return f"{unkeyed.doc[:1].upper()}{unkeyed.doc[1:]}." + (f" Sane range: {sane}." if sane else "")


def flag_text(flag: str) -> str:
    lines = written(flag).rstrip("\n")
    return f"**{flag}** — {FLAGS[flag].doc}" + (f"\n\n{CODE.format(lines)}" if lines else "")


def kind_text(kind: str) -> str:
    """A kind of equipment: what it is, how many voltages it takes, its ports, what a bare quantity means."""
    found = KINDS[kind]
    lines = [f"**{kind}** — {found.doc}"]
    sides = {
        "none": "No voltage is written.",
        "one": "One voltage is written behind its name, or left out: then it takes what arrives.",
        "two": "Two voltages are written: `480 3ph -> 208Y/120`.",
        "either": "One voltage, or two with an arrow between them.",
    }
    lines.append(sides[found.sides])
    if found.unkeyed:
        lines.append("Without a key: " + "; ".join(f"{accept_phrase(u.accept)}: {u.doc}" for u in found.unkeyed) + ".")
    if found.ports:
        lines.append("\n".join(f"- `.{port}`: {doc}" for port, doc in found.ports))
    if written(kind):
        lines.append(CODE.format(written(kind).rstrip("\n")))
    return "\n\n".join(lines)


def _title(name: str, kind: str, description: str | None) -> str:
    return f"**{name}** · {kind}" + (f" · {description}" if description else "")
