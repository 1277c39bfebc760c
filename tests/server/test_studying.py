"""When studies run: in a thread that holds up nobody, ended and dropped for newer texts, stopped by their user."""

from __future__ import annotations

import asyncio
import io
import itertools
import json
import queue
import threading
from collections.abc import AsyncIterator, Callable, Iterator
from typing import Any

import pytest
import pytest_asyncio
from test_solved_findings import SITE, WEAK

from wyeline_linter.analysis import Analysis
from wyeline_server import studying
from wyeline_server.protocol import framed, parse
from wyeline_server.server import WyelineServer

URI = "file:///nowhere/site.wye"
Said = dict[str, Any]


class Conversation:
    """A client in the same process: what it sends is handled by the server's own loop, what it is told is kept."""

    def __init__(self, capabilities: Said) -> None:
        self.server = WyelineServer("0")
        self.server.protocol.set_writer(self)  # type: ignore[arg-type]
        self.heard: list[Said] = []
        self.news = asyncio.Event()
        self.version = 0
        self._sent: queue.Queue[bytes | None] = queue.Queue()
        self._numbers = itertools.count(1)
        self._running = asyncio.create_task(self.server.run(iter(self._sent.get, None)))
        self.tell("initialize", {"capabilities": capabilities}, id=0)

    def write(self, data: bytes) -> None:
        for body in framed(io.BytesIO(data)):
            message = parse(body)
            assert isinstance(message, dict)
            self.heard.append(message)
        self.news.set()

    def close(self) -> None: ...

    def tell(self, method: str, params: Any, **more: Any) -> None:
        self._sent.put(json.dumps({"jsonrpc": "2.0", "method": method, "params": params, **more}).encode())

    def answer(self, question: Said) -> None:
        self._sent.put(json.dumps({"jsonrpc": "2.0", "id": question["id"], "result": None}).encode())

    async def ask(self, method: str, params: Any) -> Any:
        number = next(self._numbers)
        self.tell(method, params, id=number)
        return (await self.until(lambda m: m.get("id") == number and "method" not in m))["result"]

    async def until(self, wanted: Callable[[Said], object], after: int = 0) -> Said:
        """The first message (behind ``after`` others) that is wanted; waits for it."""
        async with asyncio.timeout(20):
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
        await self.ask("shutdown", None)
        self.tell("exit", None)
        self._sent.put(None)
        return await self._running


class Gate:
    """Studies wait here, each until it is let through."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.begun = threading.Semaphore(0)
        self.open = threading.Semaphore(0)
        self.count = 0
        solve = Analysis.study_findings

        def waiting(analysis: Analysis) -> Any:
            self.count += 1
            self.begun.release()
            self.open.acquire()
            return solve(analysis)

        monkeypatch.setattr(Analysis, "study_findings", waiting)
        monkeypatch.setattr(studying, "REST_S", 0.05)

    async def someone(self) -> None:
        """Wait until a study waits at the gate."""
        assert await asyncio.to_thread(self.begun.acquire, timeout=20)


@pytest.fixture
def gate(monkeypatch: pytest.MonkeyPatch) -> Iterator[Gate]:
    found = Gate(monkeypatch)
    yield found
    for _ in range(100):
        found.open.release()


@pytest_asyncio.fixture(loop_scope="session")
async def talk() -> AsyncIterator[Conversation]:
    found = Conversation({"window": {"workDoneProgress": True}})
    yield found
    assert await found.end() == 0
    told = [m["params"]["message"] for m in found.heard if m.get("method") == "window/showMessage"]
    assert not told, told


async def test_requests_are_answered_while_a_study_runs(talk: Conversation, gate: Gate) -> None:
    talk.write_text(SITE)
    await gate.someone()
    where = {"textDocument": {"uri": URI}, "position": {"line": 5, "character": 7}}
    assert "480 V" in (await talk.ask("textDocument/hover", where))["contents"]["value"]
    assert await talk.ask("textDocument/codeLens", {"textDocument": {"uri": URI}})
    assert talk.published() == [(1, "")], "the study still waits"
    gate.open.release()
    await talk.weak("rated 14 kA")


async def test_a_study_of_an_older_text_is_dropped_and_the_newest_solved(talk: Conversation, gate: Gate) -> None:
    talk.write_text(SITE)
    await gate.someone()
    for rated in ("13 kA", "12 kA", "11 kA"):
        talk.write_text(SITE.replace("14 kA", rated))
    await talk.until(lambda _: talk.published()[-1][0] == 4)
    await asyncio.sleep(0.2)
    assert gate.count == 1, "one at a time"
    gate.open.release()
    await gate.someone()
    gate.open.release()
    await talk.weak("rated 11 kA")
    assert [said for _, said in talk.published() if said] == [talk.published()[-1][1]], "only what holds was said"
    assert gate.count == 2


async def test_what_was_found_stays_while_it_is_solved_anew(talk: Conversation, gate: Gate) -> None:
    talk.write_text(SITE)
    await gate.someone()
    gate.open.release()
    await talk.weak("rated 14 kA")
    talk.write_text(SITE.replace("6 m", "7 m"))
    await gate.someone()
    for metres in (8, 9):
        talk.write_text(SITE.replace("6 m", f"{metres} m"))
        await talk.weak("rated 14 kA")
    gate.open.release()
    await gate.someone()
    gate.open.release()
    await talk.until(lambda _: talk.published()[-1][1] != talk.published()[1][1])
    assert all(said for _, said in talk.published()[1:]), talk.published()


async def test_long_work_is_shown_and_its_user_may_stop_it(
    talk: Conversation, gate: Gate, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(studying, "SHOWN_AFTER_S", 0.05)
    talk.write_text(SITE)
    await gate.someone()
    made = await talk.until(lambda m: m.get("method") == "window/workDoneProgress/create")
    talk.answer(made)
    token = made["params"]["token"]

    def progress(kind: str) -> Callable[[Said], object]:
        return lambda m: m.get("method") == "$/progress" and m["params"]["value"]["kind"] == kind

    begun = await talk.until(progress("begin"))
    assert begun["params"]["token"] == token and begun["params"]["value"]["title"] == "Solving site.wye"
    talk.tell("window/workDoneProgress/cancel", {"token": token})
    await talk.ask("textDocument/codeLens", {"textDocument": {"uri": URI}})
    gate.open.release()
    assert (await talk.until(progress("end")))["params"]["value"]["message"] == "stopped"
    await asyncio.sleep(0.2)
    assert gate.count == 1 and talk.published() == [(1, "")], "not begun again of itself"
    talk.write_text(SITE.replace("6 m", "5 m"))  # the next edit asks anew
    await gate.someone()
    gate.open.release()
    await talk.weak("rated 14 kA")


async def test_a_study_that_fails_is_told_once_and_everything_else_goes_on(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(studying, "REST_S", 0.05)
    solve = Analysis.study_findings

    def failing(_: Analysis) -> Any:
        raise ZeroDivisionError("a fault of our own")

    monkeypatch.setattr(Analysis, "study_findings", failing)
    talk = Conversation({})
    talk.write_text(SITE)
    told = await talk.until(lambda m: m.get("method") == "window/showMessage")
    assert "a fault of our own" in told["params"]["message"]
    monkeypatch.setattr(Analysis, "study_findings", solve)
    talk.write_text(SITE.replace("6 m", "5 m"))
    await talk.weak("rated 14 kA")
    assert await talk.end() == 0


async def test_a_session_that_ends_does_not_wait_for_its_study(gate: Gate) -> None:
    talk = Conversation({})
    talk.write_text(SITE)
    await gate.someone()
    talk.write_text(SITE.replace("6 m", "7 m"))
    await talk.until(lambda _: talk.published()[-1][0] == 2)
    ending = asyncio.create_task(talk.end())
    await asyncio.sleep(0.1)
    gate.open.release()
    assert await ending == 0
    await asyncio.sleep(0.2)
    assert gate.count == 1 and not any(said for _, said in talk.published()), "nothing is begun or said any more"


async def test_rest_counts_from_when_a_key_came_not_from_when_it_was_handled(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(studying, "REST_S", 30.0)
    talk = Conversation({})
    inbox = talk.server.inbox
    talk.write_text(SITE)
    await talk.until(lambda _: talk.published())
    came_s = inbox.change_came_s
    timer = talk.studying._timer
    assert timer is not None and timer.when() == came_s + 30.0 and came_s < asyncio.get_running_loop().time()
    await talk.ask("textDocument/codeLens", {"textDocument": {"uri": URI}})
    assert inbox.change_came_s == came_s, "a request is no change"
    talk.tell("workspace/didChangeConfiguration", {"settings": {}})
    await talk.ask("textDocument/codeLens", {"textDocument": {"uri": URI}})
    assert inbox.change_came_s > came_s
    assert await talk.end() == 0


async def test_memory_of_studies_is_given_back_once_none_has_run_for_a_while(monkeypatch: pytest.MonkeyPatch) -> None:
    given = asyncio.Event()
    loop = asyncio.get_running_loop()
    monkeypatch.setattr(studying, "give_back", lambda: loop.call_soon_threadsafe(given.set))
    monkeypatch.setattr(studying, "REST_S", 0.05)
    monkeypatch.setattr(studying, "KEPT_S", 600.0)
    talk = Conversation({})
    talk.write_text(SITE)
    await talk.weak("rated 14 kA")
    assert not given.is_set(), "the next study needs it again"
    monkeypatch.setattr(studying, "KEPT_S", 0.05)
    talk.write_text(SITE.replace("6 m", "5 m"))
    await talk.weak("rated 14 kA")
    await asyncio.wait_for(given.wait(), 20)
    assert await talk.end() == 0


async def test_an_ended_session_hands_back_no_memory_later(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(studying, "REST_S", 0.05)
    monkeypatch.setattr(studying, "KEPT_S", 600.0)
    talk = Conversation({})
    talk.write_text(SITE)
    await talk.weak("rated 14 kA")
    timer = talk.studying._memory_timer
    assert timer is not None and not timer.cancelled()
    assert await talk.end() == 0
    assert timer.cancelled(), "its loop may be another session's by now"


async def test_a_model_built_anew_as_its_study_ends_is_studied_again(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(studying, "REST_S", 0.05)
    begun, let_go = threading.Semaphore(0), threading.Semaphore(0)
    figures = studying.solved_figures

    def waiting(view: Any) -> Any:
        begun.release()
        let_go.acquire()
        return figures(view)

    monkeypatch.setattr(studying, "solved_figures", waiting)
    talk = Conversation({})
    talk.write_text(SITE)
    assert await asyncio.to_thread(begun.acquire, timeout=20)
    settings = {"uri": URI.replace("site.wye", "wyeline.toml"), "type": 1}
    talk.tell("workspace/didChangeWatchedFiles", {"changes": [settings]})
    await talk.ask("textDocument/codeLens", {"textDocument": {"uri": URI}})
    await asyncio.sleep(0.2)  # rest begins and ends while the study of the model that is gone still runs
    for _ in range(2):
        let_go.release()
    await talk.weak("rated 14 kA")
    assert await talk.end() == 0
