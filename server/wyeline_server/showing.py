"""What the client is asked to show: texts, pages and places in a document. Files for it go with the session."""

from __future__ import annotations

import re
from concurrent.futures import Future
from pathlib import Path
from typing import TYPE_CHECKING, Any

from wyeline_grammar.sources import SourceError
from wyeline_server.documents import uri_of_path

if TYPE_CHECKING:
    from wyeline_server.server import WyelineServer


class Showing:
    """Shows things to the user of one client; a client that cannot show documents gets a message."""

    def __init__(self, server: WyelineServer) -> None:
        self.server = server
        self._folder: Path | None = None

    def file(self, name: str, text: str) -> str:
        """Write a text for the user to a file of this session. Returns its URI."""
        if self._folder is None:
            import tempfile

            self._folder = Path(tempfile.mkdtemp(prefix="wyeline-"))
            self.server.at_end.append(self._clear)
        path = self._folder / re.sub(r"[^A-Za-z0-9_.-]+", "-", name)
        path.write_text(text, encoding="utf-8")
        return uri_of_path(str(path))

    def text(self, name: str, text: str) -> None:
        """Show a text in the editor, as a file of that name."""
        if self._can():
            self._ask({"uri": self.file(name, text), "takeFocus": True}, text)
        else:
            self._say(text)

    def page(self, uri: str, what: str) -> None:
        """Show a page in the browser; where that cannot be, say its address."""
        said = f"{what}: {uri}"
        if self._can():
            self._ask({"uri": uri, "external": True}, said)
        else:
            self._say(said)

    def line(self, path: str, row: int) -> None:
        """Bring the editor to a line of a document, counted from 0, and select it."""
        session = self.server.session
        try:
            lines = session.text(path).lines
        except SourceError:
            return
        range_ = session.positions.range(lines, row, 0, row, len(lines[row]) if row < len(lines) else 0)
        place = f"{path}:{row + 1}"
        if self._can():
            self._ask({"uri": session.uri_of(path), "takeFocus": True, "selection": range_}, place)
        else:
            self._say(place)

    def _can(self) -> bool:
        return bool(self.server.client_can("window.showDocument.support", False))

    def _ask(self, params: dict[str, Any], otherwise: str) -> None:
        def shown(answer: Future[Any]) -> None:
            if answer.cancelled():
                return
            result = None if answer.exception() is not None else answer.result()
            if not isinstance(result, dict) or not result.get("success"):
                self._say(otherwise)

        self.server.protocol.ask("window/showDocument", params).add_done_callback(shown)

    def _say(self, text: str) -> None:
        self.server.protocol.notify("window/showMessage", {"type": 3, "message": text})

    def _clear(self) -> None:
        if self._folder is not None:
            import shutil

            shutil.rmtree(self._folder, ignore_errors=True)
            self._folder = None
