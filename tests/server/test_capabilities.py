"""What the server announces is what it answers, and what it does not answer is listed with its reason."""

from __future__ import annotations

import asyncio
import importlib
import io
import json
from pathlib import Path
from typing import Any

import pytest
from editing import Editor
from lsprotocol import types
from unsupported import UNSUPPORTED

from wyeline_server import announced
from wyeline_server.announced import COMMANDS, METHODS
from wyeline_server.protocol import framed, parse
from wyeline_server.server import FEATURES, WyelineServer

ALWAYS = {"initialize", "initialized", "shutdown", "exit", "$/setTrace"}
"""Part of every session, announced by nothing."""
ANNOUNCED: dict[str, str] = {
    "textDocument/didOpen": "textDocumentSync.openClose",
    "textDocument/didClose": "textDocumentSync.openClose",
    "textDocument/didChange": "textDocumentSync.change",
    "textDocument/didSave": "textDocumentSync.save",
    "textDocument/hover": "hoverProvider",
    "textDocument/completion": "completionProvider",
    "completionItem/resolve": "completionProvider.resolveProvider",
    "textDocument/signatureHelp": "signatureHelpProvider",
    "textDocument/declaration": "declarationProvider",
    "textDocument/definition": "definitionProvider",
    "textDocument/typeDefinition": "typeDefinitionProvider",
    "textDocument/implementation": "implementationProvider",
    "textDocument/references": "referencesProvider",
    "textDocument/documentHighlight": "documentHighlightProvider",
    "textDocument/documentSymbol": "documentSymbolProvider",
    "textDocument/codeAction": "codeActionProvider",
    "textDocument/codeLens": "codeLensProvider",
    "textDocument/documentLink": "documentLinkProvider",
    "textDocument/formatting": "documentFormattingProvider",
    "textDocument/rangeFormatting": "documentRangeFormattingProvider",
    "textDocument/onTypeFormatting": "documentOnTypeFormattingProvider",
    "textDocument/rename": "renameProvider",
    "textDocument/prepareRename": "renameProvider.prepareProvider",
    "textDocument/foldingRange": "foldingRangeProvider",
    "textDocument/selectionRange": "selectionRangeProvider",
    "textDocument/prepareCallHierarchy": "callHierarchyProvider",
    "callHierarchy/incomingCalls": "callHierarchyProvider",
    "callHierarchy/outgoingCalls": "callHierarchyProvider",
    "textDocument/semanticTokens/full": "semanticTokensProvider.full",
    "textDocument/semanticTokens/full/delta": "semanticTokensProvider.full.delta",
    "textDocument/semanticTokens/range": "semanticTokensProvider.range",
    "textDocument/inlayHint": "inlayHintProvider",
    "textDocument/diagnostic": "diagnosticProvider",
    "workspace/diagnostic": "diagnosticProvider.workspaceDiagnostics",
    "workspace/symbol": "workspaceSymbolProvider",
    "workspace/executeCommand": "executeCommandProvider.commands",
    "workspace/didChangeWorkspaceFolders": "workspace.workspaceFolders.changeNotifications",
    "workspace/didChangeConfiguration": "",
    "workspace/didChangeWatchedFiles": "",
}
"""Method -> where it is announced; empty where the client is asked for it (or sends it anyhow)."""
PULLS = {
    "textDocument": {"diagnostic": {}, "rename": {"prepareSupport": True}},
    "workspace": {"diagnostics": {"refreshSupport": True}},
}


def begun(client: dict[str, Any]) -> tuple[WyelineServer, dict[str, Any]]:
    """A server after ``initialize``, and its capabilities."""

    async def session() -> tuple[WyelineServer, dict[str, Any]]:
        server = WyelineServer("0")
        written = io.BytesIO()
        server.protocol.set_writer(written)
        body = {"jsonrpc": "2.0", "id": 1, "method": "initialize", "params": {"capabilities": client}}
        server.protocol.take(body)
        answer = parse(next(framed(io.BytesIO(written.getvalue()))))
        assert isinstance(answer, dict) and "result" in answer, answer
        server.load()
        return server, json.loads(json.dumps(answer["result"]["capabilities"]))

    return asyncio.run(session())


def is_announced(capabilities: dict[str, Any], path: str) -> bool:
    found: Any = capabilities
    for step in path.split("."):
        if not isinstance(found, dict) or step not in found:
            return False
        found = found[step]
    return found not in (None, False, 0, [])


@pytest.fixture(scope="module")
def full() -> tuple[WyelineServer, dict[str, Any]]:
    return begun(PULLS)


def test_every_handler_is_announced_and_every_announcement_handled(full: tuple[WyelineServer, dict[str, Any]]) -> None:
    server, capabilities = full
    handlers = set(server.protocol.fm.features) - ALWAYS
    assert handlers <= set(ANNOUNCED), "say where these are announced"
    assert {m for m, path in ANNOUNCED.items() if m not in handlers} == set(), "nobody answers these"
    assert {m for m, path in ANNOUNCED.items() if path and not is_announced(capabilities, path)} == set()
    roots = {path.split(".")[0] for path in ANNOUNCED.values()}
    assert set(capabilities) - roots == {"positionEncoding"}, "announced, and answered by nobody known here"


def test_every_request_a_client_may_send_is_answered_or_listed_with_its_reason(
    full: tuple[WyelineServer, dict[str, Any]],
) -> None:
    server, _ = full
    handlers = set(server.protocol.fm.features)
    sent_by_clients = {
        method
        for method in types.METHOD_TO_TYPES
        if types.message_direction(method) != "serverToClient" and not method.startswith(("$/", "window/"))
    }
    follow_ups = ("typeHierarchy/", "notebookDocument/")
    missing = {m for m in sent_by_clients - handlers - set(UNSUPPORTED) if not m.startswith(follow_ups)}
    assert missing == set(), "answer these, or say why not in unsupported.py"
    assert not handlers & set(UNSUPPORTED), "answered now: take them off the list"
    assert all(reason and not reason.endswith(".") for reason in UNSUPPORTED.values())


@pytest.mark.parametrize("client", [PULLS, {}])
def test_what_is_said_before_anything_is_loaded_is_what_is_loaded_then(client: dict[str, Any]) -> None:
    server, _ = begun(client)
    pulled = announced.PULLED if client else frozenset()
    assert set(server.protocol.fm.features) - ALWAYS == METHODS | pulled
    assert set(COMMANDS) == set(server.command_handlers)


def test_every_feature_module_is_there() -> None:
    for name in FEATURES:
        assert hasattr(importlib.import_module(f"wyeline_server.{name}"), "register"), name


def test_only_what_the_client_can_take_is_announced() -> None:
    _, plain = begun({})
    assert "diagnosticProvider" not in plain, "a client that does not pull is pushed to"
    _, deaf = begun({"textDocument": {"diagnostic": {}}})
    assert "diagnosticProvider" not in deaf, "so is one that cannot be asked to pull again"
    assert plain["renameProvider"] is True, "options only for a client that knows them"
    assert plain["positionEncoding"] == "utf-16"
    _, full = begun(PULLS)
    assert full["renameProvider"] == {"prepareProvider": True}
    assert full["diagnosticProvider"]["interFileDependencies"] is True


@pytest.mark.parametrize(
    ("offered", "chosen"),
    [(["utf-8", "utf-16"], "utf-8"), (["utf-32", "utf-8"], "utf-32"), (["utf-7"], "utf-16"), (None, "utf-16")],
)
def test_the_first_encoding_that_both_know_is_agreed(offered: list[str] | None, chosen: str) -> None:
    client = {"general": {"positionEncodings": offered}} if offered else {}
    server, capabilities = begun(client)
    assert capabilities["positionEncoding"] == chosen == server.session.positions.encoding


def test_commands_announced_are_those_that_are_carried_out(full: tuple[WyelineServer, dict[str, Any]]) -> None:
    server, capabilities = full
    assert set(capabilities["executeCommandProvider"]["commands"]) == set(server.command_handlers)
    assert all(name.startswith("wyeline.") for name in server.command_handlers)


def test_the_installed_protocol_library_is_one_that_was_tested() -> None:
    """The protocol subclass leans on its insides: a new minor version wants a look first."""
    from importlib.metadata import version

    assert version("pygls").split(".")[:2] == ["2", "1"]


async def test_a_client_that_registers_is_asked_for_files_and_settings(editor: Editor) -> None:
    await editor.request("workspace/symbol", {"query": "x"})
    methods = {r.method for r in editor.client.registrations}
    assert methods == {"workspace/didChangeWatchedFiles", "workspace/didChangeConfiguration"}


def test_the_settings_page_lists_every_setting() -> None:
    from wyeline_server import inlays, lenses, studying

    page = (Path(__file__).parents[2] / "server" / "README.md").read_text(encoding="utf-8")
    for name in (*inlays.SETTINGS, *lenses.SETTINGS, *studying.SETTINGS, "studies.restSeconds", "rules.pages"):
        assert f"`wyeline.{name}`" in page, name
    server, _ = begun(PULLS)
    for name in server.command_handlers:
        assert f"`{name}`" in page, name
