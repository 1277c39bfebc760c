"""The server: what it can do, how its handlers are guarded, and when findings go out.

A feature is a module with ``register(server)``, called once the client has said what it can do. It registers plain
handlers, ``handler(server, params) -> plain dict``, by ``server.on``.
"""

from __future__ import annotations

import asyncio
import importlib
import inspect
import logging
import traceback
from collections.abc import Callable, Iterable, Iterator
from functools import cached_property
from typing import TYPE_CHECKING, Any, BinaryIO, NamedTuple

from lsprotocol import types
from pygls.io_ import StdoutWriter
from pygls.lsp.server import LanguageServer

from wyeline_grammar.sources import SourceError
from wyeline_server import announced
from wyeline_server.collector import kept_out
from wyeline_server.progress import Progress
from wyeline_server.protocol import (
    INVALID_REQUEST,
    NOT_INITIALIZED,
    BadParametersError,
    Inbox,
    RequestCancelledError,
    RequestError,
    WyelineProtocol,
    framed,
)

if TYPE_CHECKING:  # an answer to `initialize` needs neither the language nor the analysis
    from wyeline_grammar.blocks import TextFile
    from wyeline_linter.analysis import Analysis
    from wyeline_server.diagnostics import Diagnostics
    from wyeline_server.positions import Json
    from wyeline_server.session import Session
    from wyeline_server.showing import Showing
    from wyeline_server.studies import Study

logger = logging.getLogger(__name__)

FIRST = ("synchronising", "configuration", "watching", "diagnostics")
"""Features that texts and their findings need: loaded when the client has its answer to ``initialize``."""
FEATURES = (
    *FIRST,
    "studying",
    "hover",
    "completion",
    "signature",
    "actions",
    "commands",
    "drawings",
    "navigation",
    "rename",
    "symbols",
    "hierarchy",
    "lenses",
    "inlays",
    "folding",
    "selection",
    "links",
    "formatting",
    "tokens",
)
"""The feature modules of this package, in the order in which they register. Those behind the first ones are loaded when
first findings are out, or at the first request for one of them."""

Handler = Callable[..., Any]


class Spot(NamedTuple):
    """A place that a request asks about: the document, and the place in it as (line, column) in code points."""

    path: str
    file: TextFile
    line: int
    column: int


class WyelineServer(LanguageServer):
    """One session with one client."""

    protocol: WyelineProtocol
    diagnostics: Diagnostics
    showing: Showing

    def __init__(self, version: str) -> None:
        self.inbox = Inbox()
        self.encoding = "utf-16"
        self.folders: list[str] = []
        self.client: Json = {}
        self.settings: Json = {}
        self.state = "new"
        self.resting: list[Callable[[], None]] = []
        self.at_end: list[Callable[[], None]] = []
        self.once_initialized: list[Callable[[], None]] = []
        self.command_handlers: dict[str, Handler] = {}
        self._reported: set[str] = set()
        self._loaded: set[str] = set()
        super().__init__("wyeline", version, protocol_cls=WyelineProtocol)
        for method, handler in (
            ("initialize", _initialize),
            ("initialized", _initialized),
            ("shutdown", _shutdown),
            ("exit", _exit),
            ("$/setTrace", lambda *_: None),
        ):
            self.on(method, handler, guarded=False)

    @cached_property
    def session(self) -> Session:
        """Texts and models, from when they are first asked for."""
        from wyeline_server.session import Session

        session = Session(self.encoding)
        for uri in self.folders:
            session.add_folder(uri)
        return session

    # registering

    def load(self, features: Iterable[str] = FEATURES) -> None:
        """Import features and have them register, those that are not loaded yet. One that fails is told, and the others
        go on."""
        missing = [name for name in features if name not in self._loaded]
        if not missing:
            return
        self._loaded.update(missing)
        with kept_out():
            for name in missing:
                try:
                    importlib.import_module(f"wyeline_server.{name}").register(self)
                except Exception as error:
                    self.failed(f"loading {name}", error)

    def answers(self, method: str) -> bool:
        """Whether a method has a handler, which is loaded where it was not needed yet."""
        if method in announced.METHODS and method not in self.protocol.fm.features:
            self.load()
        return method in self.protocol.fm.features

    def on(self, method: str, handler: Handler, guarded: bool = True) -> None:
        """Answer a method with ``handler(server, params)``; a failure is logged, told once, and answered with null.
        ``announced.py`` tells the client of it."""

        if inspect.iscoroutinefunction(handler):

            async def answer_later(params: Any) -> Any:
                try:
                    return await handler(self, params)
                except (RequestError, asyncio.CancelledError):
                    raise
                except Exception as error:
                    self.failed(method, error)
                    return None

            self.feature(method)(answer_later)
            return

        def answer(params: Any) -> Any:
            try:
                return handler(self, params)
            except RequestError:
                raise
            except Exception as error:
                if not guarded:
                    raise
                self.failed(method, error)
                return None

        self.feature(method)(answer)

    def on_command(self, name: str, handler: Handler) -> None:
        """Carry out a command with ``handler(server, arguments)``."""
        self.command_handlers[name] = handler
        self.protocol.fm.command(name)(handler)

    def on_rest(self, work: Callable[[], None]) -> None:
        """Do this whenever what has arrived is handled and no change of a text waits."""
        self.resting.append(work)

    def failed(self, what: str, error: BaseException) -> None:
        """Log a failure with its trace, and tell the client about each kind of failure once."""
        logger.error("%s failed", what, exc_info=error)
        frames = traceback.extract_tb(error.__traceback__)
        where = f"{frames[-1].filename}:{frames[-1].lineno}" if frames else ""
        key = f"{what} {type(error).__name__} {where}"
        if key in self._reported:
            return
        self._reported.add(key)
        text = f"Wyeline could not answer {what} ({type(error).__name__}: {error}). Everything else goes on."
        self.protocol.notify("window/showMessage", {"type": 1, "message": text})

    def long_work(self, token: Any, title: str, total: int) -> Progress:
        """Long work of ``total`` steps, shown to the client where it sent a token for it."""
        return Progress(self, token, title, total)

    # what the client can do

    def client_can(self, path: str, default: Any = None) -> Any:
        """A capability of the client by its dotted name, such as ``textDocument.rename.prepareSupport``."""
        found: Any = self.client
        for step in path.split("."):
            if not isinstance(found, dict) or step not in found:
                return default
            found = found[step]
        return found

    def client_pulls(self) -> bool:
        """Whether the client pulls findings. One that cannot be asked to pull again would never learn what is solved at
        rest, so it is pushed to, as every client can be."""
        return self.client_can("textDocument.diagnostic") is not None and bool(
            self.client_can("workspace.diagnostics.refreshSupport", False)
        )

    def setting(self, path: str, default: Any) -> Any:
        """A setting by its dotted name below ``wyeline``; the default where it is missing or of another type."""
        found: Any = self.settings
        for step in path.split("."):
            if not isinstance(found, dict) or step not in found:
                return default
            found = found[step]
        return found if default is None or isinstance(found, type(default)) else default

    # what requests ask about

    def path_in(self, params: Any) -> str:
        """The key of the document that a request names. Raises BadParametersError."""
        try:
            uri = params["textDocument"]["uri"]
        except (TypeError, KeyError):
            raise BadParametersError("the request names no textDocument") from None
        if not isinstance(uri, str):
            raise BadParametersError("the uri of the textDocument is no text")
        try:
            return self.session.path_of(uri)
        except ValueError as error:
            raise BadParametersError(f"`{uri}` is no URI ({error})") from None

    def file_in(self, params: Any) -> tuple[str, TextFile] | None:
        """The document that a request names; None where it can be read neither from the client nor from disk."""
        path = self.path_in(params)
        try:
            return path, self.session.text(path)
        except SourceError:
            return None

    def spot(self, params: Any) -> Spot | None:
        """The place that a request asks about; None where its document cannot be read. Raises BadParametersError."""
        found = self.file_in(params)
        if found is None:
            return None
        try:
            line, column = self.session.positions.place(found[1].lines, params["position"])
        except (TypeError, KeyError, ValueError):
            raise BadParametersError("the request names no position") from None
        return Spot(*found, line, column)

    def range_in(self, params: Any, file: TextFile) -> tuple[tuple[int, int], tuple[int, int]]:
        """The range of a request as two places. Raises BadParametersError."""
        try:
            return self.session.positions.places(file.lines, params["range"])
        except (TypeError, KeyError, ValueError):
            raise BadParametersError("the request names no range") from None

    def analysis_at(self, path: str) -> Analysis | None:
        """The model that answers about a file are given from: that of its first root."""
        return self.session.analysis_of(path)

    def study_of(self, analysis: Analysis) -> Study | None:
        """What the studies of a model found last; None where the client's user wants none."""
        return self.session.study(analysis.model.root) if self.setting("studies.atRest", True) else None

    def stop_if_cancelled(self) -> None:
        """In the midst of long work: raise RequestCancelledError where the client has taken the request back."""
        msg_id = self.protocol.msg_id
        if msg_id is not None and msg_id in self.inbox.cancelled:
            raise RequestCancelledError

    def refusal(self, method: str) -> tuple[int, str] | None:
        """Why a message cannot be handled at this point of the session."""
        if method == "exit":
            return None
        if self.state == "new" and method != "initialize":
            return NOT_INITIALIZED, "the session has not been initialized"
        if self.state != "new" and method == "initialize":
            return INVALID_REQUEST, "the session is initialized already"
        if self.state == "shut down":
            return INVALID_REQUEST, "the session has been shut down"
        return None

    # running

    def serve(self, stdin: BinaryIO, stdout: BinaryIO) -> int:
        """Serve one client over a pair of streams. Returns the process's exit code."""
        self.protocol.set_writer(StdoutWriter(stdout))
        return asyncio.run(self.run(framed(stdin)))

    async def run(self, bodies: Iterator[bytes]) -> int:
        """Handle messages until the client says exit or its stream ends: 0 after a proper shutdown, else 1."""
        self.inbox.read_from(bodies)
        try:
            while self.state != "gone":
                while self.inbox.waiting and self.state != "gone":
                    self.protocol.take(self.inbox.waiting.popleft())
                    if self.state == "ready" and not self._loaded:
                        self.load(FIRST)  # the answer to `initialize` is out, the next message not begun
                    if not self.inbox.text_waits():
                        self.rest()
                    if self.protocol._request_futures:
                        await asyncio.sleep(0)
                if self.inbox.closed and not self.inbox.waiting:
                    break
                if self.state == "ready":
                    self._load_while_nothing_waits()
                if self.state != "gone":
                    await self.inbox.arrival()
        except BrokenPipeError:
            logger.warning("the client has gone")
        finally:
            self.end()
        return 0 if self.protocol._shutdown else 1

    def _load_while_nothing_waits(self) -> None:
        """The first findings are out, and their reader looks at them: load what will be asked for next."""
        if len(self._loaded) < len(FEATURES) and self.session.kept():
            self.load()
            if not self.inbox.text_waits():
                self.rest()  # of what was loaded just now

    def end(self) -> None:
        """Stop and clear away what was started for the client; done once, at shutdown or when the client is gone."""
        while self.at_end:
            work = self.at_end.pop()
            try:
                work()
            except Exception as error:
                logger.error("clearing away failed", exc_info=error)

    def rest(self) -> None:
        """Do what waits for rest: see ``on_rest``."""
        for work in self.resting:
            try:
                work()
            except BrokenPipeError:
                raise
            except Exception as error:
                self.failed("publishing", error)


def _initialize(server: WyelineServer, params: Any) -> Json:
    params = params if isinstance(params, dict) else {}
    client = params.get("capabilities")
    server.client = client if isinstance(client, dict) else {}
    converter = server.protocol._converter
    typed = announced.understood(server.client, converter)
    server.encoding, server.folders = announced.encoding_for(typed), _folders(params)
    vars(server).pop("session", None)
    options = params.get("initializationOptions")
    if isinstance(options, dict):
        server.settings = options.get("wyeline", options) if isinstance(options.get("wyeline", options), dict) else {}
    server.state = "ready"
    built = announced.capabilities(typed, server.encoding, server.client_pulls())
    capabilities = converter.unstructure(built, types.ServerCapabilities)
    server.protocol.client_capabilities, server.protocol.server_capabilities = typed, built
    return {"capabilities": capabilities, "serverInfo": {"name": server.name, "version": server.version}}


def _folders(params: Json) -> list[str]:
    folders = params.get("workspaceFolders")
    if isinstance(folders, list):
        return [f["uri"] for f in folders if isinstance(f, dict) and isinstance(f.get("uri"), str)]
    if isinstance(params.get("rootUri"), str):
        return [params["rootUri"]]
    if isinstance(params.get("rootPath"), str):
        from wyeline_server.documents import uri_of_path

        return [uri_of_path(params["rootPath"])]
    return []


def _initialized(server: WyelineServer, _: Any) -> None:
    for work in list(server.once_initialized):
        work()


def _shutdown(server: WyelineServer, _: Any) -> None:
    server.state = "shut down"
    server.end()
    server.protocol._shutdown = True


def _exit(server: WyelineServer, _: Any) -> None:
    server.state = "gone"
