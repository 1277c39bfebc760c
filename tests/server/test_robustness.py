"""What a server meets in the wild: nonsense on the wire, huge and binary documents, faults inside, impatient users."""

from __future__ import annotations

import json
import random
import re
import socket
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest
from conversation import Converse, Said
from editing import PATIENCE_S, SERVER, Editor
from lsprotocol import types
from pygls.exceptions import JsonRpcException

from wyeline_server.diagnostics import Diagnostics
from wyeline_server.protocol import CANCELLED, METHOD_NOT_FOUND, framed, parse
from wyeline_server.server import WyelineServer
from wyeline_server.start import main


def framing(message: Any) -> bytes:
    body = json.dumps(message).encode()
    return b"Content-Length: %d\r\n\r\n%s" % (len(body), body)


class Wire:
    """A client that writes whatever it likes."""

    def __init__(self, *options: str, command: list[str] | None = None) -> None:
        self.process = subprocess.Popen(
            command or [*SERVER, *options], stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE
        )
        assert self.process.stdin is not None and self.process.stdout is not None
        self.writing, self.reading = self.process.stdin, self.process.stdout

    def raw(self, data: bytes) -> None:
        self.writing.write(data)
        self.writing.flush()

    def send(self, message: Any) -> None:
        self.raw(framing(message))

    def ask(self, number: int, method: str, params: Any = None) -> dict[str, Any]:
        self.send({"jsonrpc": "2.0", "id": number, "method": method, "params": params})
        return self.answer(number)

    def tell(self, method: str, params: Any = None) -> None:
        self.send({"jsonrpc": "2.0", "method": method, "params": params})

    def answer(self, number: int | None) -> dict[str, Any]:
        while True:
            message = self.message()
            if "method" not in message and message.get("id") == number:
                return message

    def message(self) -> dict[str, Any]:
        found = parse(next(framed(self.reading)))
        assert isinstance(found, dict)
        return found

    def published(self, version: int) -> dict[str, Any]:
        while True:
            message = self.message()
            if message.get("method") == "textDocument/publishDiagnostics" and message["params"]["version"] == version:
                return message["params"]

    def begin(self) -> Wire:
        assert "result" in self.ask(1, "initialize", {"capabilities": {}})
        self.tell("initialized", {})
        return self

    def open(self, text: str, uri: str = "file:///nowhere/site.wye") -> None:
        self.tell(
            "textDocument/didOpen", {"textDocument": {"uri": uri, "languageId": "wye", "version": 1, "text": text}}
        )

    def end(self) -> int:
        assert self.ask(9999, "shutdown")["result"] is None
        self.tell("exit")
        return self.process.wait(PATIENCE_S)

    def stop(self) -> str:
        if self.process.poll() is None:
            self.process.kill()
        self.process.stdin = None  # perhaps closed already
        _, complaints = self.process.communicate()
        return complaints.decode()


@pytest.fixture
def wire() -> Any:
    found = Wire()
    yield found
    found.stop()


def hover_at(line: Any = 0, character: Any = 1, uri: Any = "file:///nowhere/site.wye") -> dict[str, Any]:
    return {"textDocument": {"uri": uri}, "position": {"line": line, "character": character}}


def test_nonsense_between_messages_is_answered_and_survived(wire: Wire) -> None:
    wire.raw(b"hello?\r\n\r\nContent-Length: 9\r\n\r\n{not json")
    assert wire.answer(None)["error"]["code"] == -32700
    assert wire.ask(5, "textDocument/hover", hover_at())["error"]["code"] == -32002, "not initialized yet"
    wire.begin()
    assert wire.ask(6, "initialize", {"capabilities": {}})["error"]["code"] == -32600
    for odd in ([], [1], "text", 7, None, {"jsonrpc": "1.0"}, {"jsonrpc": "2.0", "method": 5, "id": 3}):
        wire.send(odd)
    wire.send({"jsonrpc": "2.0", "id": 77, "result": None})
    wire.tell("no/such/notification", {"a": 1})
    wire.tell("textDocument/didOpen", {"textDocument": 5})
    wire.tell("textDocument/didChange", None)
    wire.tell("$/cancelRequest", {"id": [1]})
    assert wire.ask(8, "no/such/request")["error"]["code"] == -32601
    wire.open("\ud83d panel", "untitled:half-a-character")
    assert "result" in wire.ask(10, "textDocument/hover", hover_at(0, 4, "untitled:half-a-character"))
    wire.open("panel P1 208Y/120 zz\n")
    assert wire.ask(9, "textDocument/hover", hover_at())["result"]["contents"]["value"].startswith("panel")
    assert wire.end() == 0


@pytest.mark.parametrize(
    "params",
    [
        None,
        [],
        {},
        {"textDocument": {}},
        hover_at(uri=5),
        hover_at("x"),
        {"textDocument": {"uri": "file:///nowhere/site.wye"}},
    ],
)
async def test_parameters_of_the_wrong_shape_are_refused(editor: Editor, params: Any) -> None:
    editor.open("panel P1 208Y/120\n")
    if isinstance(params, dict) and "uri" in str(params.get("textDocument")) and "position" not in params:
        params = {"textDocument": {"uri": editor.uri("site.wye")}}
    if isinstance(params, dict) and params.get("position", {}).get("line") == "x":
        params["textDocument"]["uri"] = editor.uri("site.wye")
    for method in ("textDocument/hover", "textDocument/completion"):
        with pytest.raises(JsonRpcException):
            await editor.client.send_plain(method, params)


ODD: tuple[Any, ...] = (None, True, 0, -1, 2.5, 10**30, "", "x", [], [1], {}, {"a": [1]}, [[]], {"id": {}})
ENVELOPES = [
    {"method": "window/workDoneProgress/cancel", "params": {"token": []}},
    {"id": 3, "method": []},
    {"id": [1], "result": None},
]


def test_no_shape_of_an_envelope_ends_the_session(wire: Wire) -> None:
    """Whatever stands where the protocol has an id, a method, parameters or a token: the next request is answered."""
    wire.begin()
    chance = random.Random(5)
    methods = ["$/cancelRequest", "window/workDoneProgress/cancel", "textDocument/hover", "textDocument/didChange", "x"]

    def drawn() -> dict[str, Any]:
        kinds: dict[str, Any] = {
            "jsonrpc": lambda: chance.choice(["2.0", *ODD]),
            "id": lambda: chance.choice(ODD),
            "method": lambda: chance.choice([*methods, *ODD]),
            "params": lambda: chance.choice([{"id": chance.choice(ODD), "token": chance.choice(ODD)}, *ODD]),
            "result": lambda: chance.choice(ODD),
            "error": lambda: chance.choice([{"code": chance.choice(ODD), "message": chance.choice(ODD)}, *ODD]),
        }
        return {name: make() for name, make in kinds.items() if chance.random() < 0.6}

    for message in [*ENVELOPES, *(drawn() for _ in range(600))]:
        if message.get("method") not in ("exit", "shutdown"):
            wire.send(message)
    wire.raw(b"Content-Length: " + b"9" * 5_000 + b"\r\n\r\n")
    assert wire.ask(100_001, "no/such")["error"]["code"] == METHOD_NOT_FOUND
    assert wire.ask(100_002, "shutdown")["result"] is None


@pytest.mark.parametrize("answer", [{"id": [1], "result": None}, {"error": {"code": "x"}}, {"error": {"code": None}}])
def test_an_odd_answer_to_a_question_of_the_server_is_survived(wire: Wire, answer: dict[str, Any]) -> None:
    wire.ask(1, "initialize", {"capabilities": {"workspace": {"didChangeWatchedFiles": {"dynamicRegistration": True}}}})
    wire.tell("initialized", {})
    while "id" not in (asked := wire.message()) or "method" not in asked:
        pass
    wire.send({"jsonrpc": "2.0", "id": asked["id"], **answer})
    assert wire.ask(2, "no/such")["error"]["code"] == METHOD_NOT_FOUND


@pytest.mark.parametrize("place", [(9999, 0), (0, 9999), (-5, -5)])
async def test_places_outside_the_text_are_clamped(editor: Editor, place: tuple[int, int]) -> None:
    editor.open("panel P1 208Y/120 bus 100 A\n")
    await editor.client.send_plain("textDocument/hover", hover_at(*place, editor.uri("site.wye")))
    await editor.client.send_plain("textDocument/completion", hover_at(*place, editor.uri("site.wye")))


async def test_a_document_that_was_never_opened_gives_null(editor: Editor) -> None:
    uri = (editor.folder / "nothing.wye").as_uri()
    for method in ("textDocument/hover", "textDocument/completion", "textDocument/signatureHelp"):
        assert await editor.client.send_plain(method, hover_at(0, 0, uri)) is None


@pytest.mark.parametrize(
    "text",
    [
        "",
        "\n" * 5,
        "\0\1\2\x7f\x1b[0m",
        "\ufeffpanel P1 208Y/120 bus 100 A\n",
        "panel P1\r\n  1 20 A 1p\r\n\rpanel P2\r",
        '"' * 500,
        "[" * 2000,
        "panel P1 " + "x" * 300_000,
        'include "site.wye"\n',
        "feeder A -> A\nfeeder A -> A\npanel A like A\ntype panel A like A\n",
    ],
    ids=["empty", "blank", "binary", "bom", "cr", "quotes", "brackets", "long-line", "cycle", "self"],
)
async def test_any_text_is_answered(plain_editor: Editor, text: str) -> None:
    editor = plain_editor
    uri = f"untitled:{abs(hash(text))}"
    item = types.TextDocumentItem(uri, "wye", 1, text)
    editor.client.text_document_did_open(types.DidOpenTextDocumentParams(item))
    await editor.client.until(lambda: uri in editor.client.published)
    for method in ("textDocument/hover", "textDocument/completion", "textDocument/signatureHelp"):
        await editor.client.send_plain(method, hover_at(0, 3, uri))
    range_ = {"start": {"line": 0, "character": 0}, "end": {"line": 9, "character": 0}}
    params = {"textDocument": {"uri": uri}, "range": range_, "context": {"diagnostics": []}}
    await editor.client.send_plain("textDocument/codeAction", params)
    editor.client.text_document_did_close(types.DidCloseTextDocumentParams(types.TextDocumentIdentifier(uri)))


REMARK = "// " + "a rather long remark about nothing at all " * 24 + "\n"
TEN_MEGABYTES = REMARK * (10_000_000 // len(REMARK)) + "panel P1 208Y/120 zz\n"
END = {"line": TEN_MEGABYTES.count("\n") - 1, "character": 18}
EDIT = {"range": {"start": END, "end": {**END, "character": 20}}, "text": "bus 100 A"}


def test_ten_megabytes_are_read_and_edited(wire: Wire) -> None:
    wire.begin()
    wire.open(TEN_MEGABYTES)
    assert any(d["code"] == "unreadable-line" for d in wire.published(1)["diagnostics"])
    document = {"uri": "file:///nowhere/site.wye", "version": 2}
    wire.tell("textDocument/didChange", {"textDocument": document, "contentChanges": [EDIT]})
    assert not any(d["code"] == "unreadable-line" for d in wire.published(2)["diagnostics"])
    assert wire.end() == 0


def test_an_edit_of_ten_megabytes_is_quick() -> None:
    server = WyelineServer("test")
    shown = Diagnostics(server)
    uri = "file:///nowhere/site.wye"
    path = server.session.open(uri, 1, TEN_MEGABYTES)
    assert shown.diagnostics(path)
    begun = time.thread_time()
    server.session.change(uri, 2, [EDIT])
    assert not any(d["code"] == "unreadable-line" for d in shown.diagnostics(path))
    assert time.thread_time() - begun < 0.5


_FAILING = """
import sys
from wyeline_server import hover, start
def broken(*_):
    raise KeyError("a slip of ours")
hover.hover = broken
sys.exit(start.main([]))
"""


def test_a_failing_feature_is_logged_told_once_and_answered_with_null(tmp_path: Path) -> None:
    script = tmp_path / "failing.py"
    script.write_text(_FAILING)
    wire = Wire(command=[sys.executable, str(script)])
    try:
        wire.begin()
        wire.open("panel P1 208Y/120\n")
        told = []
        for number in (5, 6, 7):
            wire.send({"jsonrpc": "2.0", "id": number, "method": "textDocument/hover", "params": hover_at()})
            while True:
                message = wire.message()
                if message.get("method") == "window/showMessage":
                    told.append(message["params"]["message"])
                if message.get("id") == number:
                    break
            assert message["result"] is None
        assert len(told) == 1 and "textDocument/hover" in told[0] and "a slip of ours" in told[0]
        assert wire.ask(8, "textDocument/completion", hover_at(0, 3))["result"]["items"], "the rest goes on"
        assert wire.end() == 0
    finally:
        complaints = wire.stop()
    assert complaints.count("Traceback") == 3


def test_a_request_taken_back_is_not_worked_on(wire: Wire) -> None:
    wire.begin()
    wire.open("".join(f"panel P-{i} 208Y/120 bus 100 A\n" for i in range(3_000)))
    ask = {"jsonrpc": "2.0", "id": 40, "method": "textDocument/hover", "params": hover_at()}
    take_back = {"jsonrpc": "2.0", "method": "$/cancelRequest", "params": {"id": 40}}
    wire.raw(b"".join(framing(each) for each in (ask, take_back)))
    assert wire.answer(40)["error"]["code"] == -32800
    assert wire.end() == 0


def test_a_burst_of_keys_is_judged_once_it_rests(wire: Wire) -> None:
    """No timer: what has arrived is taken in first, and then published under the last version."""
    wire.begin()
    wire.open("".join(f"panel P-{i} 208Y/120 bus 100 A\n" for i in range(3_000)))
    wire.published(1)
    messages = b""
    for version in range(2, 42):
        place = {"line": 0, "character": 28}
        params = {
            "textDocument": {"uri": "file:///nowhere/site.wye", "version": version},
            "contentChanges": [{"range": {"start": place, "end": place}, "text": "0"}],
        }
        messages += framing({"jsonrpc": "2.0", "method": "textDocument/didChange", "params": params})
    wire.raw(messages)
    versions = []
    while not versions or versions[-1] != 41:
        message = wire.message()
        if message.get("method") == "textDocument/publishDiagnostics":
            versions.append(message["params"]["version"])
    assert versions == sorted(versions) and len(versions) < 20
    assert wire.end() == 0


def test_without_a_shutdown_the_end_is_an_error(wire: Wire) -> None:
    wire.begin()
    wire.writing.close()
    assert wire.process.wait(PATIENCE_S) == 1


def test_unknown_values_in_capabilities_do_not_stop_the_session(wire: Wire) -> None:
    odd = {
        "workspace": {"workspaceEdit": {"failureHandling": "sometimes"}},
        "general": {"positionEncodings": ["utf-8"]},
    }
    answer = wire.ask(1, "initialize", {"capabilities": odd, "rootUri": "file:///no/such/folder"})
    assert answer["result"]["capabilities"]["positionEncoding"] == "utf-8"
    wire.tell("initialized", {})
    wire.open("panel P1 208Y/120\n")
    assert wire.published(1)
    assert wire.end() == 0


def test_over_tcp_on_the_loopback_only() -> None:
    wire = Wire("--tcp", "0")
    try:
        assert wire.process.stderr is not None
        said = wire.process.stderr.readline().decode()
        found = re.fullmatch(r"listening on 127\.0\.0\.1:(\d+)\n", said)
        assert found, said
        with (
            socket.create_connection(("127.0.0.1", int(found[1])), timeout=PATIENCE_S) as connection,
            connection.makefile("rb") as reading,
            connection.makefile("wb") as writing,
        ):
            wire.reading, wire.writing = reading, writing
            wire.begin()
            wire.open("panel P1 208Y/120 zz\n")
            assert wire.published(1)["diagnostics"]
            assert wire.end() == 0
    finally:
        wire.process.kill()
        wire.process.communicate()


def test_over_a_websocket_on_the_loopback_only() -> None:
    connect = pytest.importorskip("websockets.sync.client", reason="pip install 'wyeline[ws]'").connect
    wire = Wire("--ws", "0")
    try:
        assert wire.process.stderr is not None
        said = wire.process.stderr.readline().decode()
        found = re.fullmatch(r"listening on 127\.0\.0\.1:(\d+)\n", said)
        assert found, said
        with connect(f"ws://127.0.0.1:{found[1]}", open_timeout=PATIENCE_S) as connection:

            def send(**message: Any) -> None:
                connection.send(json.dumps({"jsonrpc": "2.0", **message}))

            def heard(wanted: str) -> dict[str, Any]:
                while True:
                    message: dict[str, Any] = json.loads(connection.recv(timeout=PATIENCE_S))
                    if wanted in message:
                        return message

            send(id=1, method="initialize", params={"capabilities": {}})
            assert heard("result")["result"]["serverInfo"]["name"] == "wyeline"
            document = {"uri": "untitled:x", "languageId": "wye", "version": 1, "text": "panel P1 208Y/120 zz\n"}
            send(method="textDocument/didOpen", params={"textDocument": document})
            told = heard("method")
            assert told["params"].get("diagnostics"), told
            send(id=2, method="shutdown")
            assert heard("result")["id"] == 2
            send(method="exit")
        assert wire.process.wait(PATIENCE_S) == 0
    finally:
        wire.process.kill()
        wire.process.communicate()


def test_without_the_package_for_it_a_websocket_is_refused_with_what_to_install(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setitem(sys.modules, "websockets.sync.server", None)
    assert main(["--ws", "0"]) == 2
    assert "pip install websockets" in capsys.readouterr().err


async def test_long_work_can_be_stopped(converse: Converse, tmp_path: Path) -> None:
    """A workspace of many models: the user stops it, and the session goes on."""
    for number in range(60):
        (tmp_path / f"m{number}.wye").write_text("panel P1 208Y/120 zz\n" * 20)
    talk = converse(
        {"textDocument": {"diagnostic": {}}, "workspace": {"diagnostics": {"refreshSupport": True}}},
    )
    added = [{"uri": tmp_path.as_uri(), "name": "models"}]
    talk.tell("workspace/didChangeWorkspaceFolders", {"event": {"added": added, "removed": []}})
    told: list[str] = []

    def hear(message: Said) -> None:
        if message.get("method") != "$/progress":
            return
        told.append(message["params"]["value"]["kind"])
        if len(told) == 3:
            talk.tell("window/workDoneProgress/cancel", {"token": "long"})
            end = time.monotonic() + PATIENCE_S
            while "long" not in talk.server.inbox.stopped_work and time.monotonic() < end:
                time.sleep(0.001)  # the thread that reads has not come to it

    talk.on_hearing = hear
    answer = await talk.reply_to("workspace/diagnostic", {"previousResultIds": [], "workDoneToken": "long"})
    assert answer["error"]["code"] == CANCELLED
    assert told == ["begin", "report", "report", "end"]
    assert await talk.ask("workspace/symbol", {"query": "P1"})
    assert await talk.end() == 0
