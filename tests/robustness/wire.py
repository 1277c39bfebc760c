"""A client of the language server in bare messages, sound and unsound, with an eye on the process of the server."""

from __future__ import annotations

import contextlib
import json
import os
import subprocess
import sys
import threading
import time
from pathlib import Path
from queue import Empty, Queue
from typing import Any

from command_line import environment

SERVER = [sys.executable, "-m", "wyeline_server.start"]
LONGEST_WAIT_S = 180.0


class Wire:
    """A client of bare messages; a thread reads what comes, so that neither side ever waits for the other."""

    def __init__(self, folder: Path) -> None:
        self.process = subprocess.Popen(
            SERVER, cwd=folder, env=environment(), stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE
        )
        self.number = 0
        self.answers: dict[Any, Any] = {}
        self.published: dict[str, tuple[Any, list[Any]]] = {}
        self.news: Queue[None] = Queue()
        self.complaints: list[bytes] = []
        threading.Thread(target=self._read, daemon=True).start()
        threading.Thread(target=self._complain, daemon=True).start()

    def _complain(self) -> None:
        assert self.process.stderr is not None
        self.complaints.extend(self.process.stderr)

    def _read(self) -> None:
        stream = self.process.stdout
        assert stream is not None
        while True:
            length = 0
            while (line := stream.readline().strip()) != b"":
                if line.lower().startswith(b"content-length:"):
                    length = int(line.split(b":")[1])
            if not length:
                return
            message = json.loads(stream.read(length))
            if message.get("method") == "textDocument/publishDiagnostics":
                params = message["params"]
                self.published[params["uri"]] = (params.get("version"), params["diagnostics"])
            elif "method" in message and "id" in message:
                self.send({"id": message["id"], "result": None})
            elif "id" in message and "method" not in message:
                self.answers[message["id"]] = message
            self.news.put(None)

    def raw(self, data: bytes) -> None:
        assert self.process.stdin is not None
        self.process.stdin.write(data)
        self.process.stdin.flush()

    def send(self, message: dict[str, Any]) -> None:
        body = json.dumps({"jsonrpc": "2.0", **message}).encode()
        self.raw(b"Content-Length: %d\r\n\r\n%s" % (len(body), body))

    def tell(self, method: str, params: Any) -> None:
        self.send({"method": method, "params": params})

    def begin(self, method: str, params: Any) -> int:
        self.number += 1
        self.send({"id": self.number, "method": method, "params": params})
        return self.number

    def ask(self, method: str, params: Any) -> Any:
        number = self.begin(method, params)
        self.until(lambda: number in self.answers)
        return self.answers.pop(number)

    def until(self, condition: Any) -> None:
        end = time.monotonic() + LONGEST_WAIT_S
        while not condition():
            assert self.process.poll() is None, b"".join(self.complaints)[-3000:].decode()
            with contextlib.suppress(Empty):
                self.news.get(timeout=0.2)
            assert time.monotonic() < end, f"the server was silent for {LONGEST_WAIT_S} s"

    def resident_mb(self) -> float:
        pages = int(Path(f"/proc/{self.process.pid}/statm").read_text().split()[1])
        return pages * os.sysconf("SC_PAGE_SIZE") / 2**20

    def ticks(self) -> int:
        """Processor time, in clock ticks."""
        fields = Path(f"/proc/{self.process.pid}/stat").read_text().rpartition(")")[2].split()
        return int(fields[11]) + int(fields[12])

    def kept_open(self) -> tuple[int, int]:
        folder = f"/proc/{self.process.pid}"
        return len(os.listdir(f"{folder}/fd")), len(os.listdir(f"{folder}/task"))
