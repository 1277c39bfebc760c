"""Language servers under an editor's hands: start, open, edits, a burst of keys, requests idle and busy, memory.

Every server holds the same model, each in its notation, as one document. An edit is one character that makes a load
in the middle of the document wrong, or takes that back; it has been answered when the diagnostics of that very
version say so on that very line, not when some diagnostics arrive.
"""

from __future__ import annotations

import os
import re
import sys
import time
from pathlib import Path
from typing import Any, NamedTuple

from lsp_client import REST_S, Client, Message
from processes import BIN, RUFF

HERE = Path(__file__).parent
PEERS = Path(os.environ.get("WYELINE_PEERS", Path.home() / ".cache" / "wyeline-peers"))
NODE_BIN = PEERS / "node_modules" / ".bin"
MOST_PATIENCE_S = 10
"""How long at least to wait for solved figures before they count as not shown by this server."""

Taken = dict[str, list[float]]
"""What was measured, by name: milliseconds, for names that begin with ``memory`` MiB."""


class Server(NamedTuple):
    """How to run a server, and how its document is made wrong: ``wrong`` typed where ``load`` matches.

    ``shows`` is whether its diagnostics tell of the wrong load; ``answers`` which requests it answers; ``word`` is
    where they are asked, on the line after the edited one.
    """

    command: list[str]
    document: str
    language: str
    load: str
    wrong: str
    word: str = ""
    answers: tuple[str, ...] = ()
    shows: bool = True


EVERY = ("hover", "completion", "documentSymbol")
WYE = ("one/site.wye", "wye", r"(?<= )900 VA", "9", r"lighting|receptacle|it ")
SERVERS = {
    "wyeline": Server([str(BIN / "wyeline-server")], *WYE, answers=EVERY),
    "pygls alone": Server([sys.executable, str(HERE / "trivial_server.py")], *WYE, shows=False),
    "yaml": Server(
        [str(NODE_BIN / "yaml-language-server"), "--stdio"],
        *("site.yaml", "yaml", r"(?<=va: )900$", "-", r"load"),
        answers=EVERY,
    ),
    "json": Server(
        [str(NODE_BIN / "vscode-json-language-server"), "--stdio"],
        *("site.json", "json", r'(?<="va": )900', "-", r"load"),
        answers=EVERY,
    ),
    "ruff": Server([str(RUFF), "server"], "site.py", "python", r'(?<="va": )900', "x"),
}


class NotShownError(Exception):
    """A server never showed what was waited for."""


class Session:
    """One server over one document. ``taken`` fills as it is played."""

    def __init__(self, server: Server, folder: Path, limit_s: float) -> None:
        document = folder / server.document
        self.server = server
        self.client = Client(server.command, document.parent, server.language, limit_s)
        self.document = document
        self.taken: Taken = {}
        text = document.read_text("utf-8")
        lines = text.split("\n")
        rows = range(len(lines) // 2, len(lines) - 1)
        self.line = next(row for row in rows if re.search(server.load, lines[row]) and '"' in lines[row + 1])
        self.elsewhere = lines[self.line + 1].rindex('"')
        found = re.search(server.load, lines[self.line])
        assert found is not None
        self.column = found.start()
        self.asked = self.line, self.column
        if server.word:
            near = ((row, re.search(server.word, lines[row])) for row in range(self.line, len(lines)))
            self.asked = next((row, word.start()) for row, word in near if word)
        self.is_wrong = False

    def note(self, name: str, value: float) -> None:
        self.taken.setdefault(name, []).append(value)

    def play(self, edits: int, solved: int) -> Taken:
        """Everything, in the order in which a day with an editor goes. Raises TimeoutError."""
        client = self.client
        try:
            start_s = client.start()
            self.note("start", start_s * 1000)
            before = client.cpu_s()
            open_s = client.open(self.document)
            self.note("open", open_s * 1000)
            self.note("start and open", (start_s + open_s) * 1000)
            self.note("memory after open", client.memory_mib())
            self.note("open cpu", (self._settled_cpu_s() - before) * 1000)
            self._edits(edits)
            self._burst()
            self._requests(max(2, edits // 3))
            if self.server.language == "wye" and self.server.shows and solved:
                self._solved(solved)
            self.note("memory at end", client.memory_mib())
        finally:
            client.stop()
        return self.taken

    def _settled_cpu_s(self) -> float:
        """Wait until the server does nothing more of its own; its processor time so far."""
        last = self.client.cpu_s()
        end = time.monotonic() + self.client.limit_s
        while time.monotonic() < end:
            time.sleep(REST_S + 0.2)
            before, last = last, self.client.cpu_s()
            if not last - before > 0.02:
                break
        return last  # with what the last wait still took: it is none of what comes next

    def _type(self) -> float:
        """Make the load wrong, or right again; returns when."""
        width = 1 if self.is_wrong else 0
        text = "" if self.is_wrong else self.server.wrong
        self.is_wrong = not self.is_wrong
        return self.client.change(self.line, self.column, self.column + width, text)

    def _fresh(self, message: Message) -> bool:
        if not self.client.told(message):
            return False
        return not self.server.shows or bool(self._on_line(message)) == self.is_wrong

    def _on_line(self, message: Message) -> list[Any]:
        return [d for d in message["params"]["diagnostics"] if d["range"]["start"]["line"] == self.line]

    def _edits(self, edits: int) -> None:
        edits += edits % 2
        before = self.client.cpu_s()
        for _ in range(edits):
            began = self._type()
            self.note("edit", (self.client.wait_shown(self._fresh)[0] - began) * 1000)
        self.note("edit cpu", (self.client.cpu_s() - before) * 1000 / edits)

    def _burst(self) -> None:
        """Ten keys without a pause: nine into a text on the next line, and the tenth makes the load wrong."""
        row, column = self.line + 1, self.elsewhere
        for _ in range(9):
            self.client.change(row, column, column, "a")
        began = self._type()
        self.note("burst", (self.client.wait_shown(self._fresh)[0] - began) * 1000)
        self.client.change(row, column, column + 9, "")
        self._type()
        self.client.wait_shown(self._fresh)

    def _requests(self, count: int) -> None:
        self._settled_cpu_s()
        for name in self.server.answers:
            for _ in range(count):
                took, result = self.client.ask(name, *self.asked)
                if not (result.get("items", result) if isinstance(result, dict) else result):
                    raise NotShownError(f"{self.server.command[0]}: {name} answers nothing at {self.asked}")
                self.note(name, took * 1000)
        for name in (each for each in self.server.answers if each != "documentSymbol"):
            for _ in range(count + count % 2):
                self._type()
                self.note(f"{name}, busy", self.client.ask(name, *self.asked)[0] * 1000)
                self.client.wait_shown(self._fresh)

    def _solved(self, count: int) -> None:
        """From a key to the findings of the load flow that follow from it, less the rest that the server waits for;
        and a key that comes while it solves, to its own findings."""
        wanted = study_rules()
        limit_s = max(MOST_PATIENCE_S, self.taken["open"][0] / 1000 * 5)

        def settled(message: Message) -> bool:
            return self.client.told(message) and any(d.get("code") in wanted for d in self._on_line(message))

        for _ in range(count):
            before = self._settled_cpu_s()
            began = self._type()
            try:
                took_ms = (self.client.wait_shown(settled, limit_s)[0] - began) * 1000
            except TimeoutError:
                return  # not shown by this server: no row
            self.note("solved", max(0.0, took_ms - REST_S * 1000))
            self.note("solved cpu", (self.client.cpu_s() - before) * 1000)
            self._type()
            self.client.wait_shown(self._fresh)
            self._type()
            self.client.wait_shown(self._fresh)
            time.sleep(REST_S + 0.05)  # the next key comes while it solves
            began = self._type()
            self.note("edit while solving", (self.client.wait_shown(self._fresh)[0] - began) * 1000)


def study_rules() -> frozenset[str]:
    """Names of the rules that look at solved figures."""
    from wyeline_linter.rules.registry import all_rules

    return frozenset(name for name, rule in all_rules().items() if "study" in rule.checks)
