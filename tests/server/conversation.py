"""A client in the process of the test: for what has to be arranged inside the server, and for what is told when."""

from __future__ import annotations

import asyncio
import io
import itertools
import json
import queue
import threading
from collections.abc import Callable
from typing import Any

from editing import PATIENCE_S, WEAK

from wyeline_server import studying
from wyeline_server.protocol import framed, parse
from wyeline_server.server import WyelineServer

URI = "file:///nowhere/site.wye"
Said = dict[str, Any]


class Conversation:
    """What it sends is handled by the server's own loop, what it is told is kept."""

    def __init__(self, capabilities: Said) -> None:
        self.server = WyelineServer("0")
        self.server.protocol.set_writer(self)  # type: ignore[arg-type]
        self.heard: list[Said] = []
        self.news = asyncio.Event()
        self.version = 0
        self._sent: queue.Queue[bytes | None] = queue.Queue()
        self._numbers = itertools.count(1)
        self._ending = False
        self.on_hearing: Callable[[Said], None] = lambda _: None
        """Called with each message, in the midst of the server's work."""
        self._running = asyncio.create_task(self.server.run(iter(self._sent.get, None)))
        self.tell("initialize", {"capabilities": capabilities}, id=0)

    def write(self, data: bytes) -> None:
        for body in framed(io.BytesIO(data)):
            message = parse(body)
            assert isinstance(message, dict)
            self.heard.append(message)
            self.on_hearing(message)
        self.news.set()

    def close(self) -> None: ...

    def tell(self, method: str, params: Any, **more: Any) -> None:
        self._sent.put(json.dumps({"jsonrpc": "2.0", "method": method, "params": params, **more}).encode())

    def answer(self, question: Said) -> None:
        self._sent.put(json.dumps({"jsonrpc": "2.0", "id": question["id"], "result": None}).encode())

    async def ask(self, method: str, params: Any) -> Any:
        return (await self.reply_to(method, params))["result"]

    async def reply_to(self, method: str, params: Any) -> Said:
        """Ask, and wait for the answer, be it an error."""
        number = next(self._numbers)
        self.tell(method, params, id=number)
        return await self.until(lambda m: m.get("id") == number and "method" not in m)

    async def until(self, wanted: Callable[[Said], object], after: int = 0) -> Said:
        """The first message (behind ``after`` others) that is wanted; waits for it."""
        async with asyncio.timeout(PATIENCE_S):
            while True:
                for message in self.heard[after:]:
                    if wanted(message):
                        return message
                self.news.clear()
                await self.news.wait()

    def write_text(self, text: str) -> None:
        """Open the document, or make this its text."""
        self.version += 1
        document = {"uri": URI, "languageId": "wye", "version": self.version, "text": text}
        if self.version == 1:
            self.tell("textDocument/didOpen", {"textDocument": document})
        else:
            self.tell("textDocument/didChange", {"textDocument": document, "contentChanges": [{"text": text}]})

    def published(self) -> list[tuple[int, str]]:
        """Each publish of the document: its version, and what it says of the weak board."""
        found = []
        for message in self.heard:
            if message.get("method") == "textDocument/publishDiagnostics" and message["params"]["uri"] == URI:
                told = [d["message"] for d in message["params"]["diagnostics"] if d["code"] == WEAK]
                found.append((message["params"]["version"], told[0].split("\n")[0] if told else ""))
        return found

    async def weak(self, words: str) -> None:
        """Wait until the present text is said to have a weak board, in words."""
        await self.until(
            lambda _: (
                self.published()[-1:]
                and self.published()[-1][0] == self.version
                and words in self.published()[-1][1]
                and self.published()[-1][1]
            )
        )

    @property
    def studying(self) -> studying.Studying:
        (at_rest,) = [work.__self__ for work in self.server.resting if getattr(work, "__name__", "") == "look"]
        assert isinstance(at_rest, studying.Studying)
        return at_rest

    async def end(self) -> int:
        """End the session, once; its exit code."""
        if not self._ending:
            self._ending = True
            await self.ask("shutdown", None)
            self.tell("exit", None)
            self._sent.put(None)
        return await self._running


Converse = Callable[[Said], Conversation]


async def studies_over() -> None:
    """Wait until no study runs, and until the loop has heard of it."""
    for thread in threading.enumerate():
        if thread.name == "study":
            await asyncio.to_thread(thread.join, PATIENCE_S)
            assert not thread.is_alive()
    await asyncio.sleep(0)
