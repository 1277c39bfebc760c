"""Progress of long work, shown where the client asked for it, and stopped where its user says so."""

from __future__ import annotations

from types import TracebackType
from typing import TYPE_CHECKING, Any

from wyeline_server.protocol import RequestCancelledError

if TYPE_CHECKING:
    from wyeline_server.server import WyelineServer


class Progress:
    """A piece of long work of ``total`` steps. ``step`` raises RequestCancelledError once it is no longer wanted."""

    def __init__(self, server: WyelineServer, token: Any, title: str, total: int) -> None:
        self.server = server
        self.token = token if isinstance(token, str | int) else None
        self.title = title
        self.total = max(total, 1)
        self.done = 0

    def __enter__(self) -> Progress:
        self.begin()
        return self

    def __exit__(self, kind: type[BaseException] | None, _: BaseException | None, __: TracebackType | None) -> None:
        self.end("stopped" if kind is not None else "done")

    @property
    def stopped(self) -> bool:
        """Whether its user has stopped it."""
        return self.token is not None and self.token in self.server.inbox.stopped_work

    def begin(self) -> None:
        self._send({"kind": "begin", "title": self.title, "cancellable": True, "percentage": 0})

    def step(self, message: str) -> None:
        self.server.stop_if_cancelled()
        if self.stopped:
            raise RequestCancelledError
        self.report(message)
        self.done += 1

    def report(self, message: str) -> None:
        """Show what is being done, and the share that is done."""
        self._send({"kind": "report", "message": message, "percentage": min(100, 100 * self.done // self.total)})

    def end(self, message: str) -> None:
        self._send({"kind": "end", "message": message})
        if self.token is not None:
            self.server.inbox.stopped_work.discard(self.token)

    def _send(self, value: dict[str, Any]) -> None:
        if self.token is not None:
            self.server.protocol.notify("$/progress", {"token": self.token, "value": value})
