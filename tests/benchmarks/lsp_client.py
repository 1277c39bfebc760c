"""A small stdio client of the Language Server Protocol for timing: it sends, and waits for what answers.

A message counts as arrived when its bytes are there: what this client then does with them is not the server's time.
"""

from __future__ import annotations

import contextlib
import json
import os
import subprocess
import sys
import threading
import time
from collections.abc import Callable
from pathlib import Path
from queue import Empty, Queue
from typing import Any

Message = dict[str, Any]
SCHEDULED = 2
"""Linux's clock of all processor time of a process, in the number of that clock beside the number of the process."""
PAGE_BYTES = os.sysconf("SC_PAGE_SIZE") if hasattr(os, "sysconf") else 4096

EVERY_ITEM = 10_000_000
"""So many symbols the peers may answer with: as shipped they stop at 5,000, where Wyeline names everything."""

REST_S = 0.4
"""How long Wyeline's server waits after the last key before it solves; told to it, so that it is known here."""


class Client:
    """Talks to one server process; times are in seconds. ``limit_s`` bounds every wait (TimeoutError)."""

    def __init__(self, command: list[str], folder: Path, language: str, limit_s: float = 120) -> None:
        self.language, self.folder, self.limit_s = language, folder, limit_s
        self.process = subprocess.Popen(
            command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, cwd=folder
        )
        self.messages: Queue[tuple[float, Message]] = Queue()
        self.number = 0
        self.uri, self.version = "", 0
        self.shown: tuple[float, Message] | None = None
        threading.Thread(target=self._read, daemon=True).start()

    def _read(self) -> None:
        stream = self.process.stdout
        assert stream is not None
        while True:
            length = 0
            while line := stream.readline():
                if line == b"\r\n":
                    break
                name, _, value = line.partition(b":")
                if name.lower() == b"content-length":
                    length = int(value)
            if not length:
                return
            body = stream.read(length)
            arrived = time.monotonic()
            self.messages.put((arrived, json.loads(body)))

    def _send(self, message: Message) -> None:
        body = json.dumps({"jsonrpc": "2.0", **message}).encode()
        assert self.process.stdin is not None
        self.process.stdin.write(b"Content-Length: %d\r\n\r\n" % len(body) + body)
        self.process.stdin.flush()

    def notify(self, method: str, params: Any) -> None:
        self._send({"method": method, "params": params})

    def wait(self, wanted: Callable[[Message], bool], limit_s: float | None = None) -> tuple[float, Message]:
        """When the next message that suits arrived, and the message; the server's own requests are answered."""
        limit_s = self.limit_s if limit_s is None else limit_s
        end = time.monotonic() + limit_s
        while True:
            try:
                arrived, message = self.messages.get(timeout=max(0.001, end - time.monotonic()))
            except Empty:
                raise TimeoutError(f"no answer within {limit_s:g} s") from None
            if self.told(message):
                self.shown = arrived, message
            if "method" in message and "id" in message:
                self._answer(message)
            elif wanted(message):
                return arrived, message

    def wait_shown(self, wanted: Callable[[Message], bool], limit_s: float | None = None) -> tuple[float, Message]:
        """As ``wait``, for diagnostics, which may have come before the last answer."""
        if self.shown is not None and wanted(self.shown[1]):
            return self.shown
        return self.wait(wanted, limit_s)

    def _answer(self, message: Message) -> None:
        result: Any = None
        if message["method"] == "workspace/configuration":
            result = [self.settings() for _ in message["params"]["items"]]
        self._send({"id": message["id"], "result": result})

    def settings(self) -> Any:
        """What the peers must know to check against the schema; Wyeline runs as shipped, at a known rest."""
        schema = (self.folder / "schema.json").as_uri()
        if self.language == "json":
            schemas = [{"fileMatch": ["site.json"], "url": schema}]
            return {"validate": {"enable": True}, "schemas": schemas, "resultLimit": EVERY_ITEM}
        if self.language == "yaml":
            settings = {"validate": True, "schemas": {schema: "*.yaml"}, "completion": True, "hover": True}
            return {**settings, "maxItemsComputed": EVERY_ITEM}
        if self.language == "wye":
            return {"studies": {"restSeconds": REST_S}}
        return None

    def request(self, method: str, params: Any, limit_s: float | None = None) -> tuple[float, Any]:
        """How long an answer took, and its result."""
        self.number += 1
        wanted = self.number
        began = time.monotonic()
        self._send({"id": wanted, "method": method, "params": params})
        arrived, message = self.wait(lambda m: m.get("id") == wanted and "method" not in m, limit_s)
        return arrived - began, message.get("result")

    def start(self) -> float:
        """Initialise; the time until the answer."""
        took, _ = self.request(
            "initialize",
            {
                "processId": None,
                "rootUri": self.folder.as_uri(),
                "workspaceFolders": [{"uri": self.folder.as_uri(), "name": "bench"}],
                "capabilities": {
                    "workspace": {"configuration": True, "workspaceFolders": True},
                    "textDocument": {
                        "publishDiagnostics": {"versionSupport": True},
                        "hover": {},
                        "completion": {},
                        "documentSymbol": {"hierarchicalDocumentSymbolSupport": True},
                    },
                },
                "initializationOptions": {"provideFormatter": False, "handledSchemaProtocols": ["file"]},
            },
        )
        self.notify("initialized", {})
        if self.language in ("yaml", "json"):
            self.notify("workspace/didChangeConfiguration", {"settings": {self.language: self.settings()}})
        return took

    def open(self, path: Path) -> float:
        """Open a document; the time until its first diagnostics."""
        self.uri, self.version = path.as_uri(), 1
        began = time.monotonic()
        document = {"uri": self.uri, "languageId": self.language, "version": 1, "text": path.read_text("utf-8")}
        self.notify("textDocument/didOpen", {"textDocument": document})
        return self.wait(self.told)[0] - began

    def told(self, message: Message) -> bool:
        """Whether a message holds the diagnostics of the document as it now stands, as far as the server says."""
        if message.get("method") != "textDocument/publishDiagnostics":
            return False
        params = message["params"]
        return bool(params["uri"] == self.uri and params.get("version") in (None, self.version))

    def change(self, line: int, start: int, end: int, text: str) -> float:
        """Replace a stretch of a line; returns when."""
        self.version += 1
        place = {"start": {"line": line, "character": start}, "end": {"line": line, "character": end}}
        now = time.monotonic()
        self.notify(
            "textDocument/didChange",
            {
                "textDocument": {"uri": self.uri, "version": self.version},
                "contentChanges": [{"range": place, "text": text}],
            },
        )
        return now

    def ask(self, name: str, line: int, column: int) -> tuple[float, Any]:
        """``hover``, ``completion`` or ``documentSymbol`` at a place: how long it took, and its result."""
        params: dict[str, Any] = {"textDocument": {"uri": self.uri}}
        if name != "documentSymbol":
            params["position"] = {"line": line, "character": column}
        return self.request(f"textDocument/{name}", params)

    def cpu_s(self) -> float:
        """Processor time of the server so far (user and system; Linux, elsewhere NaN). Of the clock of its process:
        what /proc says is rounded to ticks of 10 ms, as long as a small model takes to solve."""
        if not sys.platform.startswith("linux"):
            return float("nan")
        try:
            return time.clock_gettime((~self.process.pid << 3) | SCHEDULED)
        except OSError:
            return float("nan")

    def memory_mib(self) -> float:
        """Resident memory of the server (Linux, elsewhere NaN)."""
        try:
            pages = int(Path(f"/proc/{self.process.pid}/statm").read_text().split()[1])
        except OSError:
            return float("nan")
        return pages * PAGE_BYTES / 2**20

    def stop(self) -> None:
        """End the server, politely if it listens."""
        try:
            self.request("shutdown", None, 5)
            self.notify("exit", None)
            self.process.wait(5)
        except (TimeoutError, OSError, subprocess.TimeoutExpired):
            self.process.kill()
            self.process.wait()
        for stream in (self.process.stdin, self.process.stdout):
            if stream is not None:
                with contextlib.suppress(OSError):
                    stream.close()
