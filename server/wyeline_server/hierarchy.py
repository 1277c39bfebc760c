"""The feeding tree as a call hierarchy: incoming is what feeds a piece of equipment, outgoing what it feeds."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.model import FeederStatement
from wyeline_linter.analysis import Analysis
from wyeline_linter.systems import Known
from wyeline_linter.verdicts import Refusal
from wyeline_linter.view import View
from wyeline_server.navigation import whole_statement
from wyeline_server.places import At, at
from wyeline_server.positions import Json
from wyeline_server.protocol import BadParametersError
from wyeline_server.server import WyelineServer
from wyeline_server.session import Session
from wyeline_server.symbols import symbol_of


def register(server: WyelineServer) -> None:
    server.on("textDocument/prepareCallHierarchy", _prepare)
    server.on("callHierarchy/incomingCalls", _incoming)
    server.on("callHierarchy/outgoingCalls", _outgoing)


def prepared(session: Session, analysis: Analysis, here: At) -> list[Json]:
    """The equipment that is named at a place; in a feeder, where no name stands, what it feeds."""
    name = here.named.name if here.named is not None else None
    statement = here.statement
    if isinstance(statement, FeederStatement) and statement.target is not None:
        label = statement.label
        if name is None or (label is not None and name == label.text):
            name = statement.target.name
    equipment = analysis.model.equipment.get(name) if name is not None else None
    return [_item(session, analysis, equipment)] if equipment is not None else []


def feeding(session: Session, analysis: Analysis, name: str) -> list[Json]:
    """What feeds a piece of equipment, each with the feeders between."""
    feeders = analysis.model.feeders_to.get(name, [])
    return _calls(session, analysis, feeders, "from", lambda feeder: feeder.source.name)


def fed(session: Session, analysis: Analysis, name: str) -> list[Json]:
    """What a piece of equipment feeds, each with the feeders between."""
    feeders = analysis.model.feeders_from.get(name, [])
    return _calls(session, analysis, feeders, "to", lambda feeder: feeder.target.name)


def _calls(
    session: Session, analysis: Analysis, feeders: list[Feeder], end: str, other: Callable[[Feeder], str]
) -> list[Json]:
    order = {path: i for i, path in enumerate(analysis.model.files)}
    by_name: dict[str, list[Feeder]] = {}
    for feeder in sorted(feeders, key=lambda f: (order.get(f.block.file, 0), f.block.first_line)):
        by_name.setdefault(other(feeder), []).append(feeder)
    made: list[Json] = []
    for name, between in by_name.items():
        equipment = analysis.model.equipment.get(name)
        if equipment is not None:
            item = _item(session, analysis, equipment, between)
            made.append({end: item, "fromRanges": _ranges(session, analysis, between)})
    return made


def _ranges(session: Session, analysis: Analysis, feeders: list[Feeder]) -> list[Json]:
    """Where the feeders are written. The protocol wants places in the file of what feeds; else that one's name."""
    source = analysis.model.equipment.get(feeders[0].source.name)
    places = [feeder.place for feeder in feeders if source is None or feeder.block.file == source.block.file]
    if not places and source is not None:
        places = [source.place]
    return [session.positions.span(place.block, place.span) for place in places]


def _item(session: Session, analysis: Analysis, equipment: Equipment, feeders: list[Feeder] | None = None) -> Json:
    place = equipment.place
    symbol = symbol_of(equipment.block.lines)
    made: Json = {
        "name": equipment.name,
        "kind": symbol.kind if symbol is not None else 19,
        "detail": _detail(analysis.view, equipment, feeders or []),
        "uri": session.uri_of(place.file),
        "range": whole_statement(session, place),
        "selectionRange": session.positions.span(place.block, place.span),
        "data": {"root": session.uri_of(analysis.model.root), "name": equipment.name},
    }
    if equipment.status == "demolish":
        made["tags"] = [1]
    return made


def _detail(view: View, equipment: Equipment, feeders: list[Feeder]) -> str:
    """Kind and derived voltage, then how each feeder between goes: its label, whether it is open or cannot work."""
    state = view.state(equipment.name)
    words = [equipment.kind]
    if state is not None and isinstance(state.system, Known):
        words.append(state.system.system.nominal.text)
    detail = " ".join(words)
    for feeder in feeders:
        notes = [feeder.statement.label.text] if feeder.statement.label is not None else []
        judged = view.feeder_state(feeder.key)
        if feeder.normally_open:
            notes.append("normally open")
        if judged is not None and isinstance(judged.verdict, Refusal):
            notes.append("cannot work")
        if notes:
            detail += f"  ({', '.join(notes)})"
    return detail


# handlers


def _prepare(server: WyelineServer, params: Any) -> list[Json] | None:
    spot = server.spot(params)
    analysis = server.analysis_at(spot.path) if spot is not None else None
    if spot is None or analysis is None:
        return None
    return prepared(server.session, analysis, at(spot.file, spot.line, spot.column)) or None


def _incoming(server: WyelineServer, params: Any) -> list[Json] | None:
    analysis, name = _asked(server, params)
    return feeding(server.session, analysis, name) if analysis is not None else None


def _outgoing(server: WyelineServer, params: Any) -> list[Json] | None:
    analysis, name = _asked(server, params)
    return fed(server.session, analysis, name) if analysis is not None else None


def _asked(server: WyelineServer, params: Any) -> tuple[Analysis | None, str]:
    """The model and the name that an item of the tree stands for."""
    try:
        item = params["item"]
        data = item.get("data") or {}
        name, root = str(data.get("name", item["name"])), str(data.get("root", item["uri"]))
    except (TypeError, KeyError, AttributeError):
        raise BadParametersError("the request names no item of the feeding tree") from None
    return server.analysis_at(server.session.path_of(root)), name
