"""Renaming over all files of all models that share the name; what would lose its meaning is refused with the reason."""

from __future__ import annotations

import os
from collections.abc import Iterable
from typing import Any

from wyeline_grammar.attributes import place_phrase
from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.linking import Declared, Model, Place
from wyeline_grammar.model import Span
from wyeline_grammar.references import SCENARIOS, Named, Reference, names_of
from wyeline_grammar.tokens import spelled
from wyeline_linter.findings import Edit, replace
from wyeline_server.edits import workspace_edit
from wyeline_server.places import At, at, declarations, uses
from wyeline_server.positions import Json
from wyeline_server.protocol import REQUEST_FAILED, RequestError
from wyeline_server.server import WyelineServer
from wyeline_server.session import Session


def register(server: WyelineServer) -> None:
    server.on("textDocument/prepareRename", _prepare)
    server.on("textDocument/rename", _rename)


class RefusedError(RequestError):
    """A rename that would change what the model says, or that is none; the message says why."""

    def __init__(self, reason: str) -> None:
        super().__init__(REQUEST_FAILED, reason)


def name_to_change(session: Session, path: str, here: At) -> Named:
    """The name at a place, where it may be renamed. Raises RefusedError."""
    if here.named is None:
        if here.token is None or here.in_comment:
            raise RefusedError("No name stands here.")
        raise RefusedError(f"`{here.token.text}` is no name: only what the model's author has named can be renamed.")
    analyses = session.analyses_of(path)
    if not any(declarations(analysis.model, here.named) for analysis in analyses):
        raise RefusedError(f"Nothing is called `{here.named.name}`, so there is nothing to rename.")
    return here.named


def renamed(session: Session, path: str, file: TextFile, line: int, column: int, new_name: str) -> list[Edit]:
    """The changes that give what is named at a place another name. Raises RefusedError."""
    named = name_to_change(session, path, at(file, line, column))
    wanted = _wanted(new_name, named)
    if wanted == named.name:
        return []
    found: dict[tuple[str, int, Span], Reference] = {}
    models: dict[str, Model] = {}
    pending = [path]
    while pending:
        for analysis in session.analyses_of(pending.pop()):
            model = analysis.model
            if model.root in models:
                continue
            models[model.root] = model
            for use in uses(model, named):
                found.setdefault((use.block.file, use.block.first_line, use.span), use)
            pending += {use.block.file for use in found.values()}
    for model in models.values():
        _refuse_clash(session, model, named, wanted)
    text = f'"{wanted}"' if named.space == SCENARIOS and _quoted(found.values()) else spelled(wanted)
    changes = [replace(Place(use.block, use.span), text) for use in found.values()]
    _refuse_lost_meaning(session, changes, named, wanted)
    return changes


def _wanted(new_name: str, named: Named) -> str:
    """The new name itself: typed in quotes or without."""
    name = new_name.strip()
    if len(name) > 1 and name[0] == name[-1] == '"':
        name = name[1:-1].strip()
    if not name:
        raise RefusedError("A name has at least one letter or figure.")
    for sign, what in (('"', "a quotation mark"), ("\n", "a line break"), ("\r", "a line break")):
        if sign in name:
            raise RefusedError(f"A name cannot hold {what}; `{named.name}` keeps its name.")
    return name


def _quoted(found: Iterable[Reference]) -> bool:
    """Whether a name is written in quotes everywhere, as titles of scenarios are."""
    return all(use.block.lines[use.span.line][use.span.start] == '"' for use in found)


def _refuse_clash(session: Session, model: Model, named: Named, wanted: str) -> None:
    taken = declarations(model, named._replace(name=wanted))
    if not taken:
        return
    first = taken[0]
    where = f"{_shown(session, first.block.file)}:{first.block.first_line + first.span.line + 1}"
    if named.space == SCENARIOS:
        raise RefusedError(f"There is a scenario `{wanted}` already ({where}).")
    declared: Declared | None = model.lookup(wanted)
    what = _what(declared) if declared is not None else "something"
    raise RefusedError(f"`{wanted}` is {what} already ({where}); one name means one thing in the whole model.")


def _what(declared: Declared) -> str:
    sorts = {"type": "a type", "raceway": "a raceway", "feeder": "the label of a feeder"}
    return sorts.get(declared.sort) or place_phrase(declared.kind)


def _refuse_lost_meaning(session: Session, changes: Iterable[Edit], named: Named, wanted: str) -> None:
    """Read every changed block again: each name must come back as the one that was meant, and no other may change."""
    by_block: dict[Block, list[Edit]] = {}
    for change in changes:
        by_block.setdefault(change.block, []).append(change)
    for block, made in by_block.items():
        lines = list(block.lines)
        for edit in sorted(made, key=lambda e: (e.line, e.start), reverse=True):
            old = lines[edit.line]
            lines[edit.line] = old[: edit.start] + edit.text + old[edit.end :]
        before = [
            (n.span.line, wanted if (n.name, n.space) == (named.name, named.space) else n.name, n.role)
            for n in names_of(block.lines)
        ]
        if before != [(n.span.line, n.name, n.role) for n in names_of(tuple(lines))]:
            row = block.first_line + made[0].line + 1
            reason = "reads as something else" if spelled(wanted) == wanted else "needs quotes, which cannot stand"
            raise RefusedError(f"`{wanted}` {reason} on line {row} of {_shown(session, block.file)}.")


def _shown(session: Session, path: str) -> str:
    """A file as a message names it: from its workspace folder."""
    inside = [folder for folder in session.folders if path.startswith(folder.rstrip("/\\") + os.sep)]
    return os.path.relpath(path, max(inside, key=len)) if inside else os.path.basename(path)


def _prepare(server: WyelineServer, params: Any) -> Json | None:
    spot = server.spot(params)
    if spot is None:
        return None
    here = at(spot.file, spot.line, spot.column)
    named = name_to_change(server.session, spot.path, here)
    return {"range": server.session.positions.span(here.block, named.span), "placeholder": named.name}


def _rename(server: WyelineServer, params: Any) -> Json | None:
    spot = server.spot(params)
    if spot is None:
        return None
    changes = renamed(server.session, spot.path, spot.file, spot.line, spot.column, str(params.get("newName", "")))
    return workspace_edit(server, changes)
