"""Inlay hints: what follows from the text and is not written in it.

The voltage of equipment and of what a feeder brings, the legs that a feeder or a circuit takes, the amperes that flow,
and, once they are solved, the voltage drops. Each kind is switched by a setting (``SETTINGS``); what is unknown shows
nothing.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from wyeline_grammar import model as m
from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.quantities import format_quantity
from wyeline_linter.analysis import Analysis
from wyeline_linter.board_positions import positions_of
from wyeline_linter.loading import circuit_amps, feeder_amps
from wyeline_linter.system_words import conductor_text, conductors_text, with_legs_of
from wyeline_linter.systems import Known, SystemState
from wyeline_linter.verdicts import Feeds
from wyeline_linter.view import View
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer
from wyeline_server.solved_words import drop_in_brief, drop_in_full, drop_of, mark
from wyeline_server.studies import Study

SETTINGS = {
    "inlayHints.voltages": "Show the voltage of equipment that has none written, and what each feeder brings.",
    "inlayHints.legs": "Show the legs of feeders and circuits where they are not written.",
    "inlayHints.amperes": "Show the amperes of feeders (demand) and circuits, on the fullest leg.",
    "inlayHints.drops": "Show the voltage drop of feeders in per cent of nominal, once it is solved.",
}
"""The settings that switch kinds of hints, all on unless set to false, with what each does."""

_TYPE = 1
_LEAST_DROP = 0.00005
"""A smaller drop, as of feeders without load, is no news: 0.01 % is the least that is shown."""


def register(server: WyelineServer) -> None:
    server.on("textDocument/inlayHint", _handler)


class Hint:
    """One hint behind a place of a block; ``insert`` is the text that writes it down for good."""

    __slots__ = ("column", "insert", "row", "text", "tip")

    def __init__(self, row: int, column: int, text: str, tip: str = "", insert: str = "") -> None:
        self.row = row
        self.column = column
        self.text = text
        self.tip = tip
        self.insert = insert


def hints(server: WyelineServer, path: str, file: TextFile, first: int, last: int) -> Iterator[tuple[Block, Hint]]:
    """The hints of the lines from ``first`` to ``last``, both included, each with its block."""
    analysis = server.analysis_at(path)
    shown = frozenset(name.rpartition(".")[2] for name in SETTINGS if server.setting(name, True))
    if analysis is None or not shown:
        return
    feeders = _feeders_by_block(analysis)
    study = server.study_of(analysis) if "drops" in shown else None
    for block in file.blocks:
        if block.first_line > last:
            return
        if block.end_line <= first:
            continue
        for hint in _of_block(analysis, block, feeders, shown, study):
            if first <= block.first_line + hint.row <= last:
                yield block, hint


def _feeders_by_block(analysis: Analysis) -> dict[Block, Feeder]:
    return {feeder.block: feeder for feeder in analysis.model.feeders.values()}


def _of_block(
    analysis: Analysis, block: Block, feeders: dict[Block, Feeder], shown: frozenset[str], study: Study | None
) -> Iterator[Hint]:
    statement = lower_block(block.lines)
    if isinstance(statement, m.EquipmentStatement):
        if statement.name is None or statement.is_type:
            return
        equipment = analysis.model.equipment.get(statement.name.text)
        if equipment is not None and equipment.block is block:
            yield from _of_equipment(analysis.view, equipment, shown)
    elif isinstance(statement, m.FeederStatement):
        feeder = feeders.get(block)
        if feeder is not None:
            yield from _of_feeder(analysis.view, feeder, shown)
            yield from _drop(feeder, study, analysis.view.basis)


def _of_equipment(view: View, equipment: Equipment, shown: frozenset[str]) -> Iterator[Hint]:
    if "voltages" in shown:
        yield from _voltage(view, equipment)
    if equipment.circuits and ("legs" in shown or "amperes" in shown):
        yield from _of_circuits(view, equipment, shown)


def _voltage(view: View, equipment: Equipment) -> Iterator[Hint]:
    """The derived voltage behind a name without one; the voltage that a declared system's name stands for."""
    statement = equipment.statement
    for side in (statement.primary, statement.secondary):
        voltage = view.derivation.stated(side) if side is not None and side.name is not None else None
        if side is not None and voltage is not None:
            yield Hint(side.span.line, side.span.end, voltage.text)
    if statement.primary is not None or statement.secondary is not None or statement.name is None:
        return
    state = view.state(equipment.name)
    found = _known(state.system, view.basis) if state is not None else None
    if found is not None:
        span = statement.name.span
        yield Hint(span.line, span.end, *found)


def _known(state: SystemState, practice: str | None) -> tuple[str, str] | None:
    """The notation of a system, and its words."""
    if not isinstance(state, Known):
        return None
    return state.system.nominal.text, with_legs_of(practice, state.system.in_words())


def _of_circuits(view: View, board: Equipment, shown: frozenset[str]) -> Iterator[Hint]:
    positions = positions_of(view, board)
    amps = circuit_amps(view, board.name) if "amperes" in shown else {}
    for occupant in positions.occupants:
        circuit = occupant.circuit
        if circuit is None or circuit.block is not board.block:
            continue
        span = occupant.place.span
        if "legs" in shown and occupant.stated_legs is None and not occupant.empty:
            legs = positions.legs_of(occupant)
            if legs:
                yield Hint(span.line, span.end, _joined(legs, view), f"on leg {_listed(legs, view)} of `{board.name}`")
        drawn = amps.get(circuit.key)
        load = circuit.circuit.body.facts.get("power")
        if drawn is not None and load is not None and load.span.line == circuit.circuit.span.line:
            yield Hint(load.span.line, load.span.end, _amperes(drawn), "on its fullest leg, at nominal voltage")


def _joined(legs: tuple[str, ...], view: View) -> str:
    """``AB``, or ``L1 L2``: legs as the language takes them between brackets."""
    called = [conductor_text(leg, view.basis) for leg in legs]
    return (" " if any(len(leg) > 1 for leg in called) else "").join(called)


def _listed(legs: tuple[str, ...], view: View) -> str:
    return conductors_text(legs, view.basis, ", ")


def _of_feeder(view: View, feeder: Feeder, shown: frozenset[str]) -> Iterator[Hint]:
    state = view.feeder_state(feeder.key)
    if state is None or not isinstance(state.verdict, Feeds):
        return
    if "legs" in shown and feeder.source.legs is None and isinstance(state.offered, Known):
        legs = state.verdict.best.legs
        if len(legs) < len(state.offered.system.legs) and state.verdict.only_choice:
            text = f"[{_joined(legs, view)}]"
            tip = f"takes leg {_listed(legs, view)} of `{feeder.source.name}`"
            yield Hint(feeder.source.span.line, feeder.source.span.end, text, tip, text)
    end = feeder.target.legs_span or feeder.target.span
    found = _known(state.carried, view.basis) if "voltages" in shown else None
    drawn = feeder_amps(view, feeder) if "amperes" in shown else None
    if found is not None:
        yield Hint(end.line, end.end, *found)
    rating = feeder.body.facts.get("rating")
    if drawn is not None and rating is not None:
        yield Hint(rating.span.line, rating.span.end, _amperes(drawn), "demand on its fullest leg, at nominal voltage")
    elif drawn is not None:
        yield Hint(end.line, end.end, _amperes(drawn), "demand on its fullest leg, at nominal voltage")


def _drop(feeder: Feeder, study: Study | None, practice: str | None) -> Iterator[Hint]:
    drop, length = drop_of(study, feeder), feeder.body.facts.get("length")
    if study is not None and drop is not None and length is not None and drop.share >= _LEAST_DROP:
        shown = f"drop {drop_in_brief(drop)}{mark(study)}"
        yield Hint(length.span.line, length.span.end, shown, drop_in_full(drop, practice))


def _amperes(amps: float) -> str:
    return format_quantity(float(f"{amps:.3g}"), "current")


def _protocol(server: WyelineServer, block: Block, hint: Hint) -> Json:
    character = server.session.positions.units(block.lines[hint.row], hint.column)
    position = {"line": block.first_line + hint.row, "character": character}
    made: Json = {"position": position, "label": hint.text, "kind": _TYPE, "paddingLeft": not hint.insert}
    if hint.tip:
        made["tooltip"] = hint.tip
    if hint.insert:
        made["textEdits"] = [{"range": {"start": position, "end": position}, "newText": hint.insert}]
    return made


def _handler(server: WyelineServer, params: Any) -> list[Json] | None:
    found = server.file_in(params)
    if found is None:
        return None
    path, file = found
    (first, _), (last, _) = server.range_in(params, file)
    return [_protocol(server, block, hint) for block, hint in hints(server, path, file, first, last)]
