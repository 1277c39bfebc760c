"""Changes of a model that a drafter asks for and no finding does: a type taken out, a piece put into a line, circuits
moved to even out a board.

Each is a `Fix`, whole or not at all. What only an engineer knows (ratings, impedances, lengths) is left out, so that
the model shows its gap.
"""

from __future__ import annotations

from wyeline_grammar.attributes import KINDS
from wyeline_grammar.formatter import format_lines
from wyeline_grammar.linking import STATUS, Equipment, Feeder
from wyeline_grammar.model import Span
from wyeline_grammar.parser import parse_block
from wyeline_grammar.syntax import Phrase
from wyeline_grammar.tokens import spelled
from wyeline_linter.findings import Fix, Safety, insert_above
from wyeline_linter.repair_edits import Draft, new_tag
from wyeline_linter.systems import Known, System
from wyeline_linter.view import View

_OWN = frozenset({"note", "location", "per", "like", "not-with", "standby-of", "among", "with", "number"})
"""Keys that speak of one piece of equipment, not of its type."""


def extract_type(view: View, equipment: Equipment) -> Fix | None:
    """A `type` with what this piece says of its make, and the piece `like` it; None where it says nothing or has one.

    Circuits, voltage, status, description and what names other equipment stay where they are.
    """
    statement, block = equipment.statement, equipment.block
    if "like" in statement.body.facts or statement.damaged or statement.name is None or equipment.kind not in KINDS:
        return None
    name = _free(view, f"{equipment.name}-TYPE")
    head, draft = statement.head.line, Draft()
    moved: list[str] = []
    for row, line in enumerate(parse_block(block.lines).lines):
        if line.form not in ("equipment", "more"):
            continue
        words = []
        for phrase in line.phrases:
            if _is_of_make(phrase):
                raw = block.lines[row]
                start = raw.rindex("assume", 0, phrase.start) if phrase.assumed else phrase.start
                words.append(raw[start : phrase.end])
                draft.replace(block, Span(row, start, phrase.end), "")
        if words:
            moved.append(", ".join(words))
    if not moved:
        return None
    draft.append(block, head, f"like {spelled(name)}")
    lines = format_lines([f"type {equipment.kind} {spelled(name)}  {moved[0]}", *(f"  {more}" for more in moved[1:])])
    new = insert_above(block, "\n".join([*lines, ""]))
    return Fix(f"Make a type of `{equipment.name}`", (new, *draft.edits()), Safety.LOOK)


def _is_of_make(phrase: Phrase) -> bool:
    if phrase.form in ("key", "in"):
        return phrase.tokens[0].text not in _OWN
    if phrase.form == "flag":
        return phrase.tokens[0].text not in STATUS
    return phrase.form == "quantity"


def insert_panel(view: View, feeder: Feeder) -> Fix | None:
    """A panel between the ends of a feeder that works; it takes the voltage that arrives. None where none arrives."""
    if _carried(view, feeder) is None:
        return None
    tag = new_tag(view.model, "panel", feeder.target.name)
    lines = [f"panel {tag}", f"feeder {tag} -> {_end(feeder)}{_device(feeder)}"]
    return _between(feeder, tag, lines, f"Insert a panel into `{feeder.key}`")


def insert_transformer(view: View, feeder: Feeder) -> Fix | None:
    """A transformer of equal voltages between the ends of a feeder that works: a separate system for the far end."""
    system = _carried(view, feeder)
    if system is None or system.frequency_hz == 0 or (len(system.live_legs) < 2 and not system.has_neutral):
        return None
    nominal = system.nominal
    phases = "3ph" if len(system.legs) == 3 else "1ph"
    volts = nominal.line_v
    primary = f"{volts / 1000:g} kV {phases}" if volts >= 1000 else f"{volts:g} {phases}"
    tag = new_tag(view.model, "transformer", feeder.target.name)
    lines = [f"transformer {tag} {primary} -> {nominal.text}", f"feeder {tag} -> {_end(feeder)}"]
    return _between(feeder, tag, lines, f"Insert a transformer into `{feeder.key}`")


def balance_legs(view: View, board: Equipment) -> Fix | None:
    """The fewest moves of circuits that even out a board's legs, with how far its fullest leg is above the mean before
    and after them. None where positions decide no legs, the legs are even enough, or no move helps."""
    from wyeline_linter.board_positions import positions_of
    from wyeline_linter.loads.balance import swaps, unbalance
    from wyeline_linter.loads.moved_circuits import edits_of

    found = swaps(view.loads, board, positions_of(view, board))
    if found is None:
        return None
    before, after = unbalance(found.before_a), unbalance(found.after_a)
    if after >= before:
        return None
    words = "; ".join(move.in_words() for move in found.moves)
    title = f"Balance the legs of `{board.name}`, {100 * before:.0f} % above the mean, to {100 * after:.0f} %: {words}"
    return Fix(title, edits_of(board, found), Safety.LOOK)


def _carried(view: View, feeder: Feeder) -> System | None:
    state = view.feeder_state(feeder.key)
    if state is None or not isinstance(state.carried, Known) or feeder.statement.damaged:
        return None
    return state.carried.system


def _end(feeder: Feeder) -> str:
    end = feeder.target
    return spelled(end.name) if end.port is None else f"{spelled(end.name)}.{end.port}"


def _device(feeder: Feeder) -> str:
    fact, poles = feeder.body.facts.get("rating"), feeder.body.poles
    if fact is None:
        return ""
    neutral = "+N" if poles is not None and poles.switched_neutral else ""
    return f" {fact.value.text}" + (f" {poles.count}p{neutral}" if poles is not None else "")


def _between(feeder: Feeder, tag: str, lines: list[str], title: str) -> Fix:
    draft = Draft()
    draft.replace(feeder.block, feeder.target.span, spelled(tag))
    draft.below(feeder.block, feeder.statement.last_line, lines)
    return Fix(title, draft.edits(), Safety.LOOK)


def _free(view: View, name: str) -> str:
    number = 2
    found = name
    while view.model.folded.get(found.casefold()):
        found = f"{name}-{number}"
        number += 1
    return found
