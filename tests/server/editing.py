"""An editor for tests: opens fixtures over stdio, types, and converts places to the encoding that was agreed."""

from __future__ import annotations

import asyncio
import itertools
import sys
from collections.abc import Callable, Sequence
from concurrent.futures import Future
from functools import wraps
from pathlib import Path
from typing import Any

import pytest_lsp
from lsprotocol import types
from marks import Fixture, Mark, Place, read
from pygls.client import JsonRPCClient
from pygls.protocol import default_converter
from pytest_lsp import client as lsp_client

from wyeline_grammar.lines import from_units, to_units
from wyeline_linter.solved_figures import solved_figures
from wyeline_server.server import WyelineServer

SERVER = [sys.executable, "-m", "wyeline_server.start"]
_NUMBERS = itertools.count()
ENCODINGS = ("utf-8", "utf-16", "utf-32")
PATIENCE_S = 60
"""How long a test waits for what has to come: a machine under load may stand still for many seconds."""
WEAK = "interrupting-too-low"
"""What studies find in the tests: a board that is made for less than the fault at it."""
DIFFICULT = "° Ω 😀"
"""Characters whose widths differ in every encoding; a fixture puts them before what it looks at."""


class Client(pytest_lsp.LanguageClient):
    """Keeps what the server publishes and what it complains about."""

    def __init__(self) -> None:
        super().__init__(converter_factory=default_converter)
        features = dict(lsp_client.DEFAULT_CLIENT_FEATURES)
        features[types.TEXT_DOCUMENT_PUBLISH_DIAGNOSTICS] = _publish
        features[types.CLIENT_REGISTER_CAPABILITY] = _registered
        features[types.CLIENT_UNREGISTER_CAPABILITY] = lambda *_: None
        features[types.WORKSPACE_APPLY_EDIT] = _applied
        features[types.WORKSPACE_CONFIGURATION] = _configured
        for refreshed in ("inlayHint", "codeLens", "semanticTokens", "diagnostic"):
            features[f"workspace/{refreshed}/refresh"] = _refreshing(f"workspace/{refreshed}/refresh")
        lsp_client.register_lsp_features(self, {method: _heard(handler) for method, handler in features.items()})
        self.published: dict[str, types.PublishDiagnosticsParams] = {}
        self.history: list[types.PublishDiagnosticsParams] = []
        self.refreshed: set[str] = set()
        self.registrations: list[types.Registration] = []
        self.edits: list[types.ApplyWorkspaceEditParams] = []
        self.settings_given = 0
        self.news = asyncio.Event()
        self.stderr_lines: list[str] = []

    async def start_io(self, cmd: str, *args: Any, **kwargs: Any) -> None:
        await JsonRPCClient.start_io(self, cmd, *args, **kwargs)
        self._stderr_forwarder = asyncio.create_task(self._collect())

    async def _collect(self) -> None:
        assert self._server is not None and self._server.stderr is not None
        while line := await self._server.stderr.readline():
            self.stderr_lines.append(line.decode(errors="replace"))

    async def send_plain(self, method: str, params: Any) -> Any:
        """Send a request as it is, however odd, and wait for the answer."""
        answer: Future[Any] = Future()
        msg_id = f"plain-{next(_NUMBERS)}"
        self.protocol._request_futures[msg_id] = answer
        self.protocol._send_data({"jsonrpc": "2.0", "id": msg_id, "method": method, "params": params})
        async with asyncio.timeout(PATIENCE_S):
            return await asyncio.wrap_future(answer)

    async def until(self, condition: Callable[[], object]) -> None:
        """Wait for news from the server until a condition holds."""
        async with asyncio.timeout(PATIENCE_S):
            while not condition():
                self.news.clear()
                await self.news.wait()

    async def configure(self, **settings: object) -> None:
        """Change the user's settings below ``wyeline``; the server has them before it handles what is sent next."""
        before = self.settings_given
        self.set_configuration({"wyeline": settings} if settings else {})
        self.workspace_did_change_configuration(types.DidChangeConfigurationParams(settings={}))
        await self.until(lambda: self.settings_given > before)

    def complaints(self) -> list[str]:
        """What went wrong on the server's side, by its log and by what it told the user."""
        told = [m.message for m in self.messages if m.type in (types.MessageType.Error, types.MessageType.Warning)]
        return ["".join(self.stderr_lines)] * bool(self.stderr_lines) + told


def _heard(handler: Callable[..., Any]) -> Callable[..., Any]:
    """Whatever it is that the server sends, who waits looks again."""

    @wraps(handler)
    def handle(client: Client, *params: Any) -> Any:
        found = handler(client, *params)
        client.news.set()
        return found

    return handle


def _publish(client: Client, params: types.PublishDiagnosticsParams) -> None:
    client.published[params.uri] = params
    client.history.append(params)


def _refreshing(method: str) -> Callable[..., None]:
    def asked(client: Client, *_: Any) -> None:
        client.refreshed.add(method)

    return asked


def _registered(client: Client, params: types.RegistrationParams) -> None:
    client.registrations += params.registrations


def _configured(client: Client, params: types.ConfigurationParams) -> list[Any]:
    client.settings_given += 1
    return [client.get_configuration(section=item.section) for item in params.items]


def _applied(client: Client, params: types.ApplyWorkspaceEditParams) -> types.ApplyWorkspaceEditResult:
    client.edits.append(params)
    return types.ApplyWorkspaceEditResult(applied=True)


def capabilities(encoding: str, *, pull: bool = False) -> types.ClientCapabilities:
    """What a recent editor says that it can do."""
    found = lsp_client.client_capabilities("neovim@v0.11.0")
    found.general = found.general or types.GeneralClientCapabilities()
    found.general.position_encodings = [types.PositionEncodingKind(encoding)]
    assert found.text_document is not None
    assert found.workspace is not None
    found.workspace.did_change_watched_files = types.DidChangeWatchedFilesClientCapabilities(dynamic_registration=True)
    found.workspace.did_change_configuration = types.DidChangeConfigurationClientCapabilities(dynamic_registration=True)
    found.workspace.code_lens = types.CodeLensWorkspaceClientCapabilities(refresh_support=True)
    found.workspace.inlay_hint = types.InlayHintWorkspaceClientCapabilities(refresh_support=True)
    found.workspace.diagnostics = types.DiagnosticWorkspaceClientCapabilities(refresh_support=True)
    found.text_document.diagnostic = types.DiagnosticClientCapabilities() if pull else None
    return found


class Editor:
    """One user at work in a folder of her own."""

    def __init__(self, client: Client, encoding: str, folder: Path) -> None:
        self.client = client
        self.encoding = encoding
        self.folder = folder
        self.texts: dict[str, str] = {}
        self.versions: dict[str, int] = {}
        self.fixture = Fixture()

    # documents

    def uri(self, name: str) -> str:
        return (self.folder / name).as_uri()

    def open(self, text: str, *, only_first: bool = True) -> Fixture:
        """Write the files of a fixture and open the first, or all."""
        self.fixture = read(text)
        for name, content in self.fixture.texts.items():
            path = self.folder / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(content, encoding="utf-8", newline="")
        for name in [self.fixture.first] if only_first else list(self.fixture.texts):
            self.open_document(name, self.fixture.texts[name])
        return self.fixture

    def open_document(self, name: str, text: str) -> None:
        self.texts[name], self.versions[name] = text, 1
        item = types.TextDocumentItem(uri=self.uri(name), language_id="wye", version=1, text=text)
        self.client.text_document_did_open(types.DidOpenTextDocumentParams(text_document=item))

    def close(self, name: str | None = None) -> None:
        name = name or self.fixture.first
        del self.texts[name]
        self.client.text_document_did_close(types.DidCloseTextDocumentParams(text_document=self.identifier(name)))

    def identifier(self, name: str | None = None) -> types.TextDocumentIdentifier:
        return types.TextDocumentIdentifier(uri=self.uri(name or self.fixture.first))

    def text(self, name: str | None = None) -> str:
        """The text as the editor shows it now."""
        return self.texts[name or self.fixture.first]

    def type(self, old: str, new: str, name: str | None = None) -> None:
        """Replace the one place where ``old`` stands, as a keystroke does. Nothing to replace: append."""
        name = name or self.fixture.first
        text = self.text(name)
        assert text.count(old) == 1 or not old, f"{old!r} stands {text.count(old)} times in {name}"
        start = text.index(old) if old else len(text)
        self.replace(name, self.place_at(text, start), self.place_at(text, start + len(old)), new)

    def replace(self, name: str, start: Place, end: Place, new: str) -> None:
        self.change(name, [types.TextEdit(types.Range(self.position(start), self.position(end)), new)])

    def change(self, name: str, edits: Sequence[types.TextEdit]) -> None:
        """Apply edits of the protocol to the editor's text and tell the server."""
        in_order = sorted(enumerate(edits), key=lambda e: (e[1].range.start.line, e[1].range.start.character, e[0]))
        ordered = [edit for _, edit in reversed(in_order)]
        for edit in ordered:
            text = self.text(name)
            start, end = self.offset(name, edit.range.start), self.offset(name, edit.range.end)
            assert start <= end
            self.texts[name] = text[:start] + edit.new_text + text[end:]
        self.versions[name] += 1
        self.client.text_document_did_change(
            types.DidChangeTextDocumentParams(
                types.VersionedTextDocumentIdentifier(version=self.versions[name], uri=self.uri(name)),
                [types.TextDocumentContentChangePartial(edit.range, edit.new_text) for edit in ordered],
            )
        )

    def apply(self, edit: types.WorkspaceEdit) -> None:
        """Apply a workspace edit as an editor does: to open documents, and to files on disk."""
        by_uri: dict[str, list[types.TextEdit]] = {u: list(e) for u, e in (edit.changes or {}).items()}
        for change in edit.document_changes or ():
            if isinstance(change, types.CreateFile):
                name = change.uri.removeprefix(f"{self.folder.as_uri()}/")
                assert "/" not in name
                assert not (self.folder / name).exists()
                (self.folder / name).write_text("")
                self.open_document(name, "")
                continue
            assert isinstance(change, types.TextDocumentEdit), f"not expected here: {change}"
            made = [types.TextEdit(e.range, e.new_text) for e in change.edits]  # type: ignore[union-attr]
            by_uri.setdefault(change.text_document.uri, []).extend(made)
        for uri, edits in by_uri.items():
            name = next(n for n in self.fixture.texts | self.texts if self.uri(n) == uri)
            if name not in self.texts:
                self.open_document(name, (self.folder / name).read_text(encoding="utf-8"))
            self.change(name, edits)

    # places

    def place_at(self, text: str, offset: int, name: str | None = None) -> Place:
        head = text[:offset]
        return Place(name or self.fixture.first, head.count("\n"), offset - head.rfind("\n") - 1)

    def position(self, place: Place) -> types.Position:
        """A place in the editor's text in the units of the protocol."""
        line = self.line(place.file, place.line)
        return types.Position(place.line, to_units(line, place.column, self.encoding))

    def range(self, mark: Mark) -> types.Range:
        start, end = Place(mark.file, mark.line, mark.start), Place(mark.file, mark.line, mark.end)
        return types.Range(self.position(start), self.position(end))

    def line(self, name: str, number: int) -> str:
        text = self.texts.get(name)
        return (text if text is not None else self.fixture.texts[name]).split("\n")[number]

    def offset(self, name: str, position: types.Position) -> int:
        lines = self.text(name).split("\n")
        if position.line >= len(lines):
            return len(self.text(name))
        before = sum(len(line) + 1 for line in lines[: position.line])
        return before + from_units(lines[position.line], position.character, self.encoding)

    def words(self, range_: types.Range, name: str | None = None) -> str:
        """The text that a range of the protocol covers."""
        name = name or self.fixture.first
        if name not in self.texts:
            self.texts[name] = self.fixture.texts[name]
        return self.text(name)[self.offset(name, range_.start) : self.offset(name, range_.end)]

    def cursor(self, number: int = 0) -> types.Position:
        return self.position(self.fixture.cursors[number])

    def at(self, number: int = 0) -> dict[str, Any]:
        """Document and position of a cursor, for requests that ask about a place."""
        name = self.fixture.cursors[number].file
        return {"text_document": self.identifier(name), "position": self.cursor(number)}

    # what the server says

    async def diagnostics(self, name: str | None = None) -> list[types.Diagnostic]:
        """The diagnostics of the text as it stands now; waits for them."""
        name = name or self.fixture.first
        async with asyncio.timeout(PATIENCE_S):
            while True:
                told = self.client.published.get(self.uri(name))
                if told is not None and (name not in self.texts or told.version == self.versions[name]):
                    return list(told.diagnostics)
                self.client.news.clear()
                await self.client.news.wait()

    async def rules(self, name: str | None = None) -> list[str]:
        """The names of the findings of the text as it stands now."""
        return [str(d.code) for d in await self.diagnostics(name)]

    async def request(self, method: str, params: Any) -> Any:
        """A request with plain parameters, right or wrong; results have attributes. Raises JsonRpcException."""
        return await self.client.send_plain(method, params)

    async def actions(self, range_: types.Range, *kinds: str) -> list[types.CodeAction]:
        """The code actions offered for a range, with the diagnostics that the editor shows there."""
        shown = [d for d in await self.diagnostics() if d.range.start <= range_.end and range_.start <= d.range.end]
        context = types.CodeActionContext(shown, only=list(kinds) or None)
        params = types.CodeActionParams(self.identifier(), range_, context)
        found = await self.client.text_document_code_action_async(params) or []
        return [a for a in found if isinstance(a, types.CodeAction)]


def solve_now(server: WyelineServer, path: str) -> None:
    """Make the studies of a file's model without waiting for rest."""
    analysis = server.analysis_at(path)
    assert analysis is not None
    study, model = server.study_of(analysis), server.session.to_solve(analysis.model.root)
    assert study is not None
    study.found(model.study_findings(), solved_figures(model.view))
