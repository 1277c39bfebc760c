"""Settings of the client: pulled where it can be asked, taken as sent where it sends them.

All stand below ``wyeline``; server/README.md lists them. A setting of another type than expected counts as missing.
"""

from __future__ import annotations

import logging
from concurrent.futures import Future
from typing import Any

from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer

logger = logging.getLogger(__name__)

_REFRESHES = {
    "workspace/inlayHint/refresh": "workspace.inlayHint.refreshSupport",
    "workspace/codeLens/refresh": "workspace.codeLens.refreshSupport",
    "workspace/diagnostic/refresh": "workspace.diagnostics.refreshSupport",
}


def register(server: WyelineServer) -> None:
    server.on("workspace/didChangeConfiguration", changed)
    server.once_initialized.append(lambda: begin(server))


def begin(server: WyelineServer) -> None:
    """Ask for the settings, and to be told when they change."""
    if server.client_can("workspace.didChangeConfiguration.dynamicRegistration", False):
        registration = {"id": "settings", "method": "workspace/didChangeConfiguration"}
        server.protocol.ask("client/registerCapability", {"registrations": [registration]})
    pull(server)


def changed(server: WyelineServer, params: Any) -> None:
    """The settings may have changed: what is sent along counts where the client cannot be asked."""
    if server.client_can("workspace.configuration", False):
        pull(server)
        return
    settings = params.get("settings") if isinstance(params, dict) else None
    if isinstance(settings, dict):
        _take(server, settings.get("wyeline", settings))


def pull(server: WyelineServer) -> None:
    if not server.client_can("workspace.configuration", False):
        return

    def arrived(answer: Future[Any]) -> None:
        error = answer.exception()
        if error is not None:
            logger.info("the client gave no settings: %s", error)
            return
        found = answer.result()
        if isinstance(found, list) and found:
            _take(server, found[0])

    server.protocol.ask("workspace/configuration", {"items": [{"section": "wyeline"}]}).add_done_callback(arrived)


def _take(server: WyelineServer, settings: Any) -> None:
    new: Json = settings if isinstance(settings, dict) else {}
    if new == server.settings:
        return
    server.settings = new
    server.session.touch(server.session.kept())
    for method, capability in _REFRESHES.items():
        if server.client_can(capability, False):
            server.protocol.ask(method, None)
