"""The model as a drawing: a picture of it as it is typed, and a page in the browser that keeps up with the typing.

Both judge a copy of the texts in a thread of their own, so that no request waits for a drawing.
"""

from __future__ import annotations

import asyncio
import contextlib
import os
import threading
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING, Any, NamedTuple, TypeVar, cast

from wyeline_grammar.sources import SourceError
from wyeline_linter.reports.live_model import LiveModel, analysed, text_of
from wyeline_server.positions import Json
from wyeline_server.protocol import REQUEST_FAILED, BadParametersError, RequestError
from wyeline_server.server import WyelineServer

if TYPE_CHECKING:
    from wyeline_linter.reports.preview import Preview

REST_S = 0.25
"""How long nothing is typed before open pages are told of a new edition."""


_Made = TypeVar("_Made")


def register(server: WyelineServer) -> None:
    previews = Previews(server)
    server.on_command("wyeline.picture", picture)
    server.on_command("wyeline.preview", lambda server, arguments: previews.open(server, arguments))
    server.on_rest(previews.rest)


async def picture(server: WyelineServer, arguments: list[Any]) -> Json:
    """``wyeline.picture`` [uri, switch state?]: the one-line diagram of the model as it is typed, and opens it.

    Returns ``{uri, sheets}``: a page with every sheet, and each sheet as SVG with what stands at its top.
    """
    root, scenario = _asked(server, arguments, "wyeline.picture")
    texts = _texts(server)

    def draw() -> tuple[str, list[Json]]:
        from wyeline_linter.reports.files_written import standing_alone
        from wyeline_linter.reports.html_page import page_html
        from wyeline_linter.reports.package import DIAGRAM, Package, Wishes

        package = Package(analysed(root, scenario, partial(text_of, texts=texts)), Wishes(frozenset({DIAGRAM})))
        sheets: list[Json] = [
            {"number": s.number, "heads": list(s.heads), "svg": standing_alone(s.svg)} for s in package.diagram.sheets
        ]
        return page_html([package]), sheets

    try:
        page, sheets = await _in_thread(draw)
    except SourceError as trouble:
        raise RequestError(REQUEST_FAILED, str(trouble)) from None
    stem = os.path.splitext(os.path.basename(root))[0]
    uri = server.showing.file(f"{stem}-one-line.html", page)
    server.showing.page(uri, "The one-line diagram")
    return {"uri": uri, "sheets": sheets}


class _Open(NamedTuple):
    model: LiveModel
    preview: Preview


class Previews:
    """The live pages of a session, one for each model. They end with it."""

    def __init__(self, server: WyelineServer) -> None:
        self.server = server
        self._open: dict[str, _Open] = {}
        self._typed: dict[str, str] = {}
        self._timer: asyncio.TimerHandle | None = None

    def open(self, server: WyelineServer, arguments: list[Any]) -> Json:
        """``wyeline.preview`` [uri, switch state?]: the live page of the model, which is opened in the browser.

        Returns ``{url}``. Asked again, it is the same page, in the switch state that is asked for.
        """
        root, scenario = _asked(server, arguments, "wyeline.preview")
        there = self._open.get(root)
        if there is None:
            there = self._started(root, scenario)
        elif there.model.show(scenario):
            there.preview.changed()
        server.showing.page(there.preview.address, "The preview")
        return {"url": there.preview.address}

    def _started(self, root: str, scenario: str | None) -> _Open:
        from wyeline_linter.reports.preview import Preview  # a web server, which few sessions ask for

        loop = asyncio.get_running_loop()

        def selected(place: str) -> None:  # in a thread of the page's server
            with contextlib.suppress(RuntimeError):  # the session is over
                loop.call_soon_threadsafe(self._selected, root, place)

        model = LiveModel(root, scenario, _texts(self.server))
        try:
            preview = Preview(model.page, model.edition, selected)
        except OSError as error:
            raise RequestError(REQUEST_FAILED, f"no port of this machine can be listened on ({error})") from None
        preview.start()
        if not self._open:
            self.server.at_end.append(self._close)
        self._open[root] = _Open(model, preview)
        return self._open[root]

    def _selected(self, root: str, place: str) -> None:
        """Show the line of what is chosen on a page: ``file:line``, the file as seen from the root's folder."""
        file, _, line = place.rpartition(":")
        there = self._open.get(root)
        path = os.path.normpath(os.path.join(os.path.dirname(root), *file.split("/")))
        if there is not None and line.isascii() and line.isdigit() and path in there.model.files:
            self.server.showing.line(path, max(int(line) - 1, 0))

    def rest(self) -> None:
        """Something has come from the client: look, once it rests, whether a model is another one."""
        if self._open and self._timer is None:
            self._timer = asyncio.get_running_loop().call_later(REST_S, self._rested)

    def _rested(self) -> None:
        self._timer = None
        typed, self._typed = self._typed, _texts(self.server)
        if typed != self._typed:
            self.rest()  # still at it
            return
        for model, preview in self._open.values():
            if model.look(typed):
                preview.changed()

    def _close(self) -> None:
        if self._timer is not None:
            self._timer.cancel()
        while self._open:
            self._open.popitem()[1].preview.close()


def _asked(server: WyelineServer, arguments: list[Any], command: str) -> tuple[str, str | None]:
    """The root file of the model, and the switch state (None: the normal one), that a command asks for."""
    uri, scenario = (*arguments, None, None)[:2]
    if len(arguments) > 2 or not isinstance(uri, str) or not isinstance(scenario, str | None):
        raise BadParametersError(f"{command} takes a document, and perhaps the name of a scenario")
    analysis = server.analysis_at(server.session.path_of(uri))
    if analysis is None:
        raise RequestError(REQUEST_FAILED, f"no model can be made of {uri}")
    names = [s.name.text for _, s in analysis.model.scenarios if s.name is not None]
    if scenario is not None and scenario not in names:
        there_are = f"there are {', '.join(names)}" if names else "it has none"
        raise RequestError(REQUEST_FAILED, f"this model has no scenario `{scenario}`; {there_are}")
    return analysis.model.root, scenario


def _texts(server: WyelineServer) -> dict[str, str]:
    """The texts of the open documents as they stand, by path."""
    session = server.session
    return {path: session.text(path).text for path in session.documents}


async def _in_thread(work: Callable[[], _Made]) -> _Made:
    """What ``work`` returns or raises, done beside the session; a session that ends does not wait for it."""
    loop = asyncio.get_running_loop()
    answer: asyncio.Future[_Made] = loop.create_future()

    def told(made: _Made | None, error: Exception | None) -> None:
        if answer.cancelled():
            return
        if error is not None:
            answer.set_exception(error)
        else:
            answer.set_result(cast(_Made, made))

    def run() -> None:
        made: _Made | None = None
        failed: Exception | None = None
        try:
            made = work()
        except Exception as error:
            failed = error
        with contextlib.suppress(RuntimeError):  # the session is over
            loop.call_soon_threadsafe(told, made, failed)

    threading.Thread(target=run, name="drawing", daemon=True).start()
    return await answer
