"""Files that change on disk, and workspace folders that come and go."""

from __future__ import annotations

import os
from typing import Any

from wyeline_server.documents import path_of_uri
from wyeline_server.include_graph import is_inside
from wyeline_server.server import WyelineServer

PATTERNS = ("**/*.wye", "**/wyeline.toml")


def register(server: WyelineServer) -> None:
    server.on("workspace/didChangeWatchedFiles", files_changed)
    server.on("workspace/didChangeWorkspaceFolders", folders_changed)
    server.once_initialized.append(lambda: begin(server))


def begin(server: WyelineServer) -> None:
    """Ask to be told of changed files."""
    if server.client_can("workspace.didChangeWatchedFiles.dynamicRegistration", False):
        options = {"watchers": [{"globPattern": pattern} for pattern in PATTERNS]}
        registration = {"id": "files", "method": "workspace/didChangeWatchedFiles", "registerOptions": options}
        server.protocol.ask("client/registerCapability", {"registrations": [registration]})


def files_changed(server: WyelineServer, params: Any) -> None:
    """Files appeared, changed or vanished; where a folder did, every file known in it."""
    session = server.session
    paths: list[str] = []
    for change in params["changes"]:
        path = path_of_uri(change["uri"])
        if path is None:
            continue
        if os.path.basename(path) == "wyeline.toml":
            session.forget_models()
        elif path.endswith(".wye"):
            paths.append(path)
        else:
            paths += [known for known in session.graph.files() if is_inside(known, path)]
    session.files_changed(paths)


def folders_changed(server: WyelineServer, params: Any) -> None:
    event = params["event"]
    for folder in event.get("removed") or ():
        server.session.remove_folder(folder["uri"])
    for folder in event.get("added") or ():
        server.session.add_folder(folder["uri"])
    server.session.forget_models()
