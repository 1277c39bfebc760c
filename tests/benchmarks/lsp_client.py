"""A small stdio client of the Language Server Protocol for timing: it sends, and waits for what answers."""

from __future__ import annotations

import json
import subprocess
import threading
import time
from pathlib import Path
from queue import Empty, Queue
from typing import Any


class Client:
    """Talks to one server process; times are in seconds."""

    def __init__(self, command: list[str], folder: Path, language: str) -> None:
        self.language = language
        self.folder = folder
        self.process = subprocess.Popen(
            command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, cwd=folder
        )
        self.messages: Queue[dict[str, Any]] = Queue()
        self.number = 0
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
            self.messages.put(json.loads(stream.read(length)))

    def _send(self, message: dict[str, Any]) -> None:
        body = json.dumps({"jsonrpc": "2.0", **message}).encode()
        assert self.process.stdin is not None
        self.process.stdin.write(b"Content-Length: %d\r\n\r\n" % len(body) + body)
        self.process.stdin.flush()

    def notify(self, method: str, params: Any) -> None:
        self._send({"method": method, "params": params})

    def request(self, method: str, params: Any, limit_s: float = 120) -> Any:
        self.number += 1
        self._send({"id": self.number, "method": method, "params": params})
        wanted = self.number
        return self.wait(lambda m: m.get("id") == wanted and "method" not in m, limit_s).get("result")

    def wait(self, wanted: Any, limit_s: float = 120) -> dict[str, Any]:
        """The next message that suits; requests of the server are answered on the way. Raises TimeoutError."""
        end = time.monotonic() + limit_s
        while True:
            try:
                message = self.messages.get(timeout=max(0.001, end - time.monotonic()))
            except Empty:
                raise TimeoutError(f"{self.process.args}: no answer within {limit_s} s") from None
            if "method" in message and "id" in message:
                self._answer(message)
            elif wanted(message):
                return message

    def _answer(self, message: dict[str, Any]) -> None:
        result: Any = None
        if message["method"] == "workspace/configuration":
            result = [self.settings() for _ in message["params"]["items"]]
        self._send({"id": message["id"], "result": result})

    def settings(self) -> Any:
        schema = (self.folder / "schema.json").as_uri()
        return {
            "validate": {"enable": True},
            "schemas": [{"fileMatch": ["*.json"], "url": schema}] if self.language == "json" else {schema: "*.yaml"},
            "completion": True,
            "hover": True,
        }

    def start(self) -> float:
        """Initialise; the time until the answer."""
        began = time.monotonic()
        self.request(
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
                "initializationOptions": {"provideFormatter": False},
            },
        )
        took = time.monotonic() - began
        self.notify("initialized", {})
        if self.language in ("yaml", "json"):
            self.notify("workspace/didChangeConfiguration", {"settings": {self.language: self.settings()}})
        return took

    def open(self, path: Path) -> float:
        """Open a document; the time until its first diagnostics."""
        self.uri, self.version = path.as_uri(), 1
        self.text = path.read_text("utf-8")
        began = time.monotonic()
        document = {"uri": self.uri, "languageId": self.language, "version": 1, "text": self.text}
        self.notify("textDocument/didOpen", {"textDocument": document})
        self.wait(lambda m: self._fresh(m))
        return time.monotonic() - began

    def _fresh(self, message: dict[str, Any]) -> bool:
        if message.get("method") != "textDocument/publishDiagnostics":
            return False
        params = message["params"]
        return params["uri"] == self.uri and params.get("version") in (None, self.version)

    def edit(self, line: int, start: int, end: int, text: str) -> float:
        """Replace a stretch of a line; the time until diagnostics of that version."""
        self.version += 1
        began = time.monotonic()
        self.notify(
            "textDocument/didChange",
            {
                "textDocument": {"uri": self.uri, "version": self.version},
                "contentChanges": [
                    {
                        "range": {
                            "start": {"line": line, "character": start},
                            "end": {"line": line, "character": end},
                        },
                        "text": text,
                    }
                ],
            },
        )
        self.wait(lambda m: self._fresh(m))
        return time.monotonic() - began

    def ask(self, method: str, line: int, column: int) -> float:
        """A request at a place; the time until the answer."""
        began = time.monotonic()
        params: dict[str, Any] = {"textDocument": {"uri": self.uri}}
        if method != "textDocument/documentSymbol":
            params["position"] = {"line": line, "character": column}
        self.request(method, params)
        return time.monotonic() - began

    def usage(self) -> tuple[float, float]:
        """Processor time in seconds and resident memory in MiB of the server process (Linux)."""
        fields = Path(f"/proc/{self.process.pid}/stat").read_text().rsplit(")", 1)[1].split()
        cpu_s = (int(fields[11]) + int(fields[12])) / 100
        pages = int(Path(f"/proc/{self.process.pid}/statm").read_text().split()[1])
        return cpu_s, pages * 4096 / 2**20

    def stop(self) -> None:
        try:
            self.request("shutdown", None, 5)
            self.notify("exit", None)
            self.process.wait(5)
        except (TimeoutError, OSError, subprocess.TimeoutExpired):
            self.process.kill()
