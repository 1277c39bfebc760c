"""Documents of the client: opened, changed, saved, closed. Their text is kept as blocks; nothing is judged here."""

from __future__ import annotations

from typing import Any

from wyeline_server.protocol import BadParametersError
from wyeline_server.server import WyelineServer


def register(server: WyelineServer) -> None:
    server.on("textDocument/didOpen", did_open)
    server.on("textDocument/didChange", did_change)
    server.on("textDocument/didSave", did_save)
    server.on("textDocument/didClose", did_close)


def did_open(server: WyelineServer, params: Any) -> None:
    document = params["textDocument"]
    server.session.open(document["uri"], int(document.get("version") or 0), str(document["text"]))


def did_change(server: WyelineServer, params: Any) -> None:
    document = params["textDocument"]
    path = server.path_in(params)
    if path not in server.session.documents:
        raise BadParametersError(f"{document['uri']} is not open")
    if not isinstance(params.get("contentChanges"), list):
        raise BadParametersError("the notification holds no changes")
    server.session.change(document["uri"], int(document.get("version") or 0), params["contentChanges"])


def did_save(server: WyelineServer, params: Any) -> None:
    """Nothing to do: the text is known, and what is on disk is told by file watching."""
    server.path_in(params)


def did_close(server: WyelineServer, params: Any) -> None:
    if server.path_in(params) in server.session.documents:
        server.session.close(params["textDocument"]["uri"])
