"""Going to where a name is declared, to its type, and to every place where it is used."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise
from typing import Any

from wyeline_grammar import model as m
from wyeline_grammar.blocks import TextFile
from wyeline_grammar.linking import Model, Place
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.references import SHARED, Named, Reference
from wyeline_grammar.sources import SourceError, resolve_include
from wyeline_server.places import At, at, declarations, uses
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer
from wyeline_server.session import Session

_READ, _WRITE = 2, 3


def register(server: WyelineServer) -> None:
    for method, find in (
        ("declaration", definitions),
        ("definition", definitions),
        ("typeDefinition", types_of),
        ("implementation", bearers_of_type),
    ):
        server.on(f"textDocument/{method}", _answering(method, find))
    server.on("textDocument/references", _references)
    server.on("textDocument/documentHighlight", _highlights)


def _answering(method: str, find: Any) -> Any:
    """The handler of one way to go somewhere: links for clients that take them, else bare locations."""

    def handler(server: WyelineServer, params: Any) -> list[Json] | None:
        spot = server.spot(params)
        if spot is None:
            return None
        here, found = find(server.session, spot.path, spot.file, spot.line, spot.column)
        if not found:
            return None
        if server.client_can(f"textDocument.{method}.linkSupport", False):
            return [_link(server.session, here, place) for place in found]
        return [location(server.session, place) for place in found]

    return handler


def location(session: Session, place: Place) -> Json:
    """The protocol's name of a place in any file."""
    return {"uri": session.uri_of(place.file), "range": session.positions.span(place.block, place.span)}


def _link(session: Session, here: At, place: Place) -> Json:
    selected = session.positions.span(place.block, place.span)
    made: Json = {
        "targetUri": session.uri_of(place.file),
        "targetRange": whole_statement(session, place),
        "targetSelectionRange": selected,
    }
    origin = here.named.span if here.named is not None else here.token_span
    if origin is not None:
        made["originSelectionRange"] = session.positions.span(here.block, origin)
    return made


def whole_statement(session: Session, place: Place) -> Json:
    """The range from the documentation of a statement, or from a detail's line, to its last words."""
    block, row = place.block, place.span.line
    first, last = statement_rows(block.lines, row)
    return session.positions.block_range(block, first, 0, last, len(block.lines[last]))


def statement_rows(lines: tuple[str, ...], row: int) -> tuple[int, int]:
    """First and last row of what stands at a row: a whole statement from its head line, a detail's line alone."""
    statement = lower_block(lines)
    if row != statement.head.line:
        return row, row
    first = next((i for i, text in enumerate(lines[:row]) if text.lstrip("\ufeff").startswith("///")), row)
    return first, max(statement.last_line, row)


# finding

Found = tuple[At, list[Place]]


def definitions(session: Session, path: str, file: TextFile, line: int, column: int) -> Found:
    """What stands at a place, and where that is declared: a name, an included file, a circuit of the board."""
    here = at(file, line, column)
    found: list[Place] = []
    for analysis in session.analyses_of(path):
        model = analysis.model
        if here.named is not None:
            found += [Place(r.block, r.span) for r in declarations(model, here.named)]
        elif isinstance(here.statement, m.Include):
            found += _included(session, model, here, here.statement)
        else:
            found += _circuits(model, here)
    return here, _distinct(found)


def types_of(session: Session, path: str, file: TextFile, line: int, column: int) -> Found:
    """What stands at a place, and the types and declared systems that the equipment named there takes over."""
    here = at(file, line, column)
    found: list[Place] = []
    for analysis in session.analyses_of(path) if _is_shared(here.named) else ():
        equipment = analysis.model.equipment.get(here.named.name) if here.named else None
        if equipment is None:
            continue
        found += [_name_of(block, statement) for block, statement in equipment.chain[1:2]]
        for side in (equipment.primary, equipment.secondary):
            system = analysis.model.system(side.name) if side is not None and side.name is not None else None
            if system is not None:
                found.append(_name_of(*system))
    return here, _distinct(found)


def bearers_of_type(session: Session, path: str, file: TextFile, line: int, column: int) -> Found:
    """What stands at a place, and what is like the type named there, directly or through another type."""
    here = at(file, line, column)
    found: list[Place] = []
    for analysis in session.analyses_of(path) if _is_shared(here.named) else ():
        model = analysis.model
        users = model.type_users(here.named.name) if here.named else ()
        found += [Place(d.block, d.span) for name in users for d in model.declared[name][:1]]
    return here, sorted(_distinct(found), key=lambda p: (p.file, p.row))


def used_at(session: Session, path: str, named: Named, with_declaration: bool = True) -> list[Reference]:
    """Every place of every model of a file where a name is written, in the order of files and lines."""
    found: dict[tuple[str, int, m.Span], Reference] = {}
    for analysis in session.analyses_of(path):
        for use in uses(analysis.model, named, with_declaration):
            found.setdefault((use.block.file, use.block.first_line, use.span), use)
    return list(found.values())


def _is_shared(named: Named | None) -> bool:
    return named is not None and named.space == SHARED


def _name_of(block: Any, statement: m.EquipmentStatement) -> Place:
    return Place(block, statement.name.span if statement.name is not None else statement.head)


def _distinct(places: Iterable[Place]) -> list[Place]:
    found = {(place.file, place.row, place.span): place for place in places}
    return list(found.values())


def _included(session: Session, model: Model, here: At, statement: m.Include) -> Iterator[Place]:
    if here.token is None or here.token.kind != "TEXT" or statement.target is None:
        return
    try:
        included = session.text(resolve_include(here.block.file, statement.target, model.workspace))
    except SourceError:
        return
    yield Place(included.blocks[0], m.Span(0, 0, 0))


def _circuits(model: Model, here: At) -> Iterator[Place]:
    """The circuits whose positions or label are named: behind ``with``, or ``at`` in an allowance or a claim."""
    wanted = _position_at(here)
    statement = here.statement
    if wanted is None or not isinstance(statement, m.EquipmentStatement):
        return
    equipment = model.equipment.get(statement.name.text) if statement.name is not None else None
    own = [(here.block, circuit) for circuit in statement.circuits]
    placed = own if equipment is None else [(c.block, c.circuit) for c in equipment.circuits]
    for block, circuit in placed:
        if circuit.place.label in wanted or wanted.intersection(map(str, circuit.place.positions)):
            yield Place(block, circuit.place.span)


def _position_at(here: At) -> set[str] | None:
    token = here.token
    if token is None or token.kind not in ("NUMBER", "LIST", "NAME", "TEXT"):
        return None
    behind = here.phrase is not None and here.phrase.tokens[0].text == "with"
    if not behind and here.line.form in ("allow", "claim"):
        head = here.line.head
        behind = any(a.kind == "AT" and b == token for a, b in pairwise(head))
    return {part.strip('"') for part in token.text.split(",")} if behind else None


# handlers


def _references(server: WyelineServer, params: Any) -> list[Json] | None:
    spot = server.spot(params)
    if spot is None:
        return None
    named = at(spot.file, spot.line, spot.column).named
    if named is None:
        return None
    context = params.get("context") or {}
    found = used_at(server.session, spot.path, named, bool(context.get("includeDeclaration", True)))
    return [location(server.session, Place(use.block, use.span)) for use in found]


def _highlights(server: WyelineServer, params: Any) -> list[Json] | None:
    spot = server.spot(params)
    if spot is None:
        return None
    named = at(spot.file, spot.line, spot.column).named
    if named is None:
        return None
    return [
        {
            "range": server.session.positions.span(use.block, use.span),
            "kind": _WRITE if use.role == "declared" else _READ,
        }
        for use in used_at(server.session, spot.path, named)
        if use.block.file == spot.path
    ]
