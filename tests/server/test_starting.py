"""A client has its answer to ``initialize`` before the analysis is loaded, and nothing that it sends next is lost."""

from __future__ import annotations

import io
import json
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest
from editing import SERVER

from wyeline_server.protocol import framed
from wyeline_server.server import WyelineServer

WRONG = """\
wye 1
project "Pump house"
  basis us-2023
panel LP-1 208Y/120 bus 100 A, spaces 12
  1 20 A 1p -5 VA lighting
"""
LATER = """\
import io, sys
from wyeline_server.server import FIRST, WyelineServer
server = WyelineServer("0")
written = io.BytesIO()
server.protocol.set_writer(written)
server.protocol.take({"jsonrpc": "2.0", "id": 1, "method": "initialize", "params": {"capabilities": {}}})
assert b"hoverProvider" in written.getvalue()
heavy = ("wyeline_linter", "wyeline_grammar.", "numpy", "scipy", "lark")
early = [name for name in sys.modules if name.startswith(heavy)]
assert set(early) <= {"wyeline_grammar.sources"}, early
server.load(FIRST)
assert "wyeline_linter.analysis" in sys.modules
assert not {"wyeline_server.hover", "wyeline_server.studying", "numpy"} & set(sys.modules)
server.load()
assert {"wyeline_server.hover", "wyeline_server.studying"} <= set(sys.modules)
"""


def test_the_answer_to_initialize_waits_for_nothing_that_it_does_not_need() -> None:
    done = subprocess.run([sys.executable, "-c", LATER], capture_output=True, text=True, timeout=60)
    assert done.returncode == 0, done.stderr


def test_a_feature_that_cannot_be_loaded_is_told_and_takes_no_other_with_it(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    server = WyelineServer("0")
    written = io.BytesIO()
    server.protocol.set_writer(written)

    def broken(_: WyelineServer) -> None:
        raise ImportError("a library of it is not there")

    monkeypatch.setattr("wyeline_server.hover.register", broken)
    server.load()
    assert "textDocument/hover" not in server.protocol.fm.features
    assert {"textDocument/didOpen", "textDocument/completion"} <= set(server.protocol.fm.features)
    assert b"loading hover" in written.getvalue()
    assert "loading hover failed" in caplog.text


def message(method: str, params: Any = None, number: int | None = None) -> bytes:
    body = {"jsonrpc": "2.0", "method": method, "params": params} | ({} if number is None else {"id": number})
    data = json.dumps(body).encode()
    return b"Content-Length: %d\r\n\r\n" % len(data) + data


def opened(path: Path) -> list[bytes]:
    document = {"uri": path.as_uri(), "languageId": "wye", "version": 7, "text": WRONG}
    return [
        message(
            "initialize", {"capabilities": {}, "workspaceFolders": [{"uri": path.parent.as_uri(), "name": "x"}]}, 1
        ),
        message("initialized", {}),
        message("textDocument/didOpen", {"textDocument": document}),
    ]


@pytest.mark.parametrize(
    "asked",
    [
        ("textDocument/hover", {"position": {"line": 3, "character": 7}}),
        ("textDocument/documentSymbol", {}),
        ("textDocument/semanticTokens/full", {}),
    ],
    ids=lambda each: each[0].rpartition("/")[2],
)
def test_everything_sent_at_once_before_any_answer_is_answered_in_its_order(
    asked: tuple[str, dict[str, Any]], tmp_path: Path
) -> None:
    """The documents and the first request arrive while the server still starts: nothing is loaded for them yet."""
    path = tmp_path / "pump.wye"
    name, params = asked
    sent = [
        *opened(path),
        message(name, {"textDocument": {"uri": path.as_uri()}, **params}, 2),
        message("shutdown", None, 3),
        message("exit"),
    ]
    done = subprocess.run(SERVER, input=b"".join(sent), capture_output=True, timeout=60)
    assert done.returncode == 0, done.stderr
    got = [json.loads(body) for body in framed(io.BytesIO(done.stdout))]
    answers = [each for each in got if each.get("id") in (1, 2, 3) and "method" not in each]
    assert [each["id"] for each in answers] == [1, 2, 3]
    assert all("error" not in each for each in answers), answers
    assert answers[1]["result"], answers
    shown = [each["params"] for each in got if each.get("method") == "textDocument/publishDiagnostics"]
    assert [params["version"] for params in shown] == [7] and shown[0]["diagnostics"]
    assert not done.stderr, done.stderr


def test_a_document_that_is_opened_as_soon_as_the_answer_is_there_gets_its_findings(tmp_path: Path) -> None:
    """The client is quicker than the loading that follows the answer."""
    path = tmp_path / "pump.wye"
    first, *rest = opened(path)
    with subprocess.Popen(SERVER, stdin=subprocess.PIPE, stdout=subprocess.PIPE) as server:
        assert server.stdin is not None and server.stdout is not None
        server.stdin.write(first)
        server.stdin.flush()
        bodies = framed(server.stdout)
        assert json.loads(next(bodies))["id"] == 1
        for each in rest:
            server.stdin.write(each)
        server.stdin.flush()
        shown = json.loads(next(bodies))
        assert shown["method"] == "textDocument/publishDiagnostics" and shown["params"]["diagnostics"]
        time.sleep(0.2)  # the rest is loaded while nothing waits
        place = {"textDocument": {"uri": path.as_uri()}, "position": {"line": 3, "character": 7}}
        server.stdin.write(message("textDocument/hover", place, 2) + message("shutdown", None, 3) + message("exit"))
        server.stdin.close()
        answers = {each["id"]: each for each in map(json.loads, bodies) if "id" in each}
        assert answers[2]["result"], answers
        assert server.wait(30) == 0
