"""Edits of the model as workspace edits of the protocol."""

from __future__ import annotations

from collections.abc import Iterable

from wyeline_linter.edits_in_columns import in_columns
from wyeline_linter.file_splitting import Split
from wyeline_linter.findings import Edit
from wyeline_server.documents import uri_of_path
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer


def text_edit(server: WyelineServer, edit: Edit) -> Json:
    """One edit of a block, where the block stands now."""
    range_ = server.session.positions.block_range(edit.block, edit.line, edit.start, edit.end_line, edit.end)
    return {"range": range_, "newText": edit.text}


def workspace_edit(server: WyelineServer, edits: Iterable[Edit]) -> Json:
    """Edits of any files as one workspace edit, bound to the versions of open documents where the client can.

    Lines that were set in the fixed columns stay set. Edits that touch are joined: clients differ in what they make of
    two edits at one place.
    """
    by_path: dict[str, list[Json]] = {}
    for edit in in_columns(edits):
        by_path.setdefault(edit.block.file, []).append(text_edit(server, edit))
    return of_text_edits(server, {path: _joined(made) for path, made in by_path.items()})


def _joined(edits: list[Json]) -> list[Json]:
    joined: list[Json] = []
    for edit in sorted(edits, key=lambda e: (_place(e, "start"), _place(e, "end"))):
        if joined and _place(joined[-1], "end") == _place(edit, "start"):
            before = joined[-1]
            range_ = {"start": before["range"]["start"], "end": edit["range"]["end"]}
            joined[-1] = {"range": range_, "newText": before["newText"] + edit["newText"]}
        else:
            joined.append(edit)
    return joined


def _place(edit: Json, end: str) -> tuple[int, int]:
    return edit["range"][end]["line"], edit["range"][end]["character"]


def of_text_edits(server: WyelineServer, by_path: dict[str, list[Json]]) -> Json:
    """Text edits by file as one workspace edit."""
    session = server.session
    if server.client_can("workspace.workspaceEdit.documentChanges", False):
        return {"documentChanges": [_versioned(server, path, made) for path, made in by_path.items()]}
    return {"changes": {session.uri_of(path): made for path, made in by_path.items()}}


def _versioned(server: WyelineServer, path: str, made: list[Json]) -> Json:
    session = server.session
    return {"textDocument": {"uri": session.uri_of(path), "version": session.version(path)}, "edits": made}


def split_edit(server: WyelineServer, path: str, split: Split) -> Json:
    """A new file with its text, and what changes in the old one. For a client that can create files."""
    session = server.session
    lines = session.text(path).lines
    created = uri_of_path(split.path)
    start = {"line": 0, "character": 0}
    filled = {"range": {"start": start, "end": start}, "newText": split.text}
    made = []
    for piece in split.pieces:
        text = "".join(f"{line}\n" for line in piece.lines)
        if piece.last < len(lines):
            range_ = session.positions.range(lines, piece.first, 0, piece.last, 0)
        elif piece.first > 0:  # up to the end of the text: the line end above goes with it
            last = len(lines) - 1
            range_ = session.positions.range(
                lines, piece.first - 1, len(lines[piece.first - 1]), last, len(lines[last])
            )
            text = "".join(f"\n{line}" for line in piece.lines)
        else:
            last = len(lines) - 1
            range_ = session.positions.range(lines, 0, 0, last, len(lines[last]))
        made.append({"range": range_, "newText": text})
    return {
        "documentChanges": [
            {"kind": "create", "uri": created, "options": {"overwrite": False, "ignoreIfExists": False}},
            {"textDocument": {"uri": created, "version": None}, "edits": [filled]},
            _versioned(server, path, made),
        ]
    }
