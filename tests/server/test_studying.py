"""When studies run: in a thread that holds up nobody, ended and dropped for newer texts, stopped by their user."""

from __future__ import annotations

import asyncio
import threading
from collections.abc import AsyncIterator, Callable, Iterator
from typing import Any

import pytest
import pytest_asyncio
from conversation import URI, Conversation, Converse, Said, studies_over
from editing import PATIENCE_S
from test_solved_findings import SITE

from wyeline_linter.analysis import Analysis
from wyeline_server import studying


@pytest_asyncio.fixture(loop_scope="session")
async def talk(converse: Converse) -> AsyncIterator[Conversation]:
    found = converse({"window": {"workDoneProgress": True}})
    yield found
    assert await found.end() == 0
    told = [m["params"]["message"] for m in found.heard if m.get("method") == "window/showMessage"]
    assert not told, told


class Gate:
    """Work of studies waits here, each piece until it is let through."""

    def __init__(self) -> None:
        self.begun = threading.Semaphore(0)
        self.open = threading.Semaphore(0)
        self.count = 0

    def before(self, work: Callable[[Any], Any]) -> Callable[[Any], Any]:
        def waiting(asked: Any) -> Any:
            self.count += 1
            self.begun.release()
            self.open.acquire()
            return work(asked)

        return waiting

    async def someone(self) -> None:
        """Wait until a study waits at the gate."""
        assert await asyncio.to_thread(self.begun.acquire, timeout=PATIENCE_S)


@pytest.fixture
def gate_before(
    converse: Converse,  # noqa: ARG001 (begun before: it ends after this)
    monkeypatch: pytest.MonkeyPatch,
) -> Iterator[Callable[[Any, str], Gate]]:
    """Puts a gate before a function; all are open before the conversations end."""
    gates: list[Gate] = []

    def put(owner: Any, name: str) -> Gate:
        gates.append(Gate())
        monkeypatch.setattr(owner, name, gates[-1].before(getattr(owner, name)))
        return gates[-1]

    monkeypatch.setattr(studying, "REST_S", 0.05)
    yield put
    for gate in gates:
        gate.open.release(100)


@pytest.fixture
def gate(gate_before: Callable[[Any, str], Gate]) -> Gate:
    return gate_before(Analysis, "study_findings")


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


async def test_a_study_that_fails_is_told_once_and_everything_else_goes_on(
    converse: Converse, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(studying, "REST_S", 0.05)
    solve = Analysis.study_findings

    def failing(_: Analysis) -> Any:
        raise ZeroDivisionError("a fault of our own")

    monkeypatch.setattr(Analysis, "study_findings", failing)
    talk = converse({})
    talk.write_text(SITE)
    told = await talk.until(lambda m: m.get("method") == "window/showMessage")
    assert "a fault of our own" in told["params"]["message"]
    monkeypatch.setattr(Analysis, "study_findings", solve)
    talk.write_text(SITE.replace("6 m", "5 m"))
    await talk.weak("rated 14 kA")
    assert await talk.end() == 0


async def test_a_session_that_ends_does_not_wait_for_its_study(converse: Converse, gate: Gate) -> None:
    talk = converse({})
    talk.write_text(SITE)
    await gate.someone()
    talk.write_text(SITE.replace("6 m", "7 m"))
    await talk.until(lambda _: talk.published()[-1][0] == 2)
    ending = asyncio.create_task(talk.end())
    await asyncio.sleep(0.1)
    gate.open.release()
    assert await ending == 0
    await studies_over()
    assert gate.count == 1 and not any(said for _, said in talk.published()), "nothing is begun or said any more"


async def test_rest_counts_from_when_a_key_came_not_from_when_it_was_handled(
    converse: Converse, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(studying, "REST_S", 600.0)
    talk = converse({})
    inbox = talk.server.inbox
    talk.write_text(SITE)
    await talk.until(lambda _: talk.published())
    came_s = inbox.change_came_s
    timer = talk.studying._timer
    assert timer is not None and timer.when() == came_s + 600.0 and came_s < asyncio.get_running_loop().time()
    await talk.ask("textDocument/codeLens", {"textDocument": {"uri": URI}})
    assert inbox.change_came_s == came_s, "a request is no change"
    talk.tell("workspace/didChangeConfiguration", {"settings": {}})
    await talk.ask("textDocument/codeLens", {"textDocument": {"uri": URI}})
    assert inbox.change_came_s > came_s
    assert await talk.end() == 0


async def test_memory_of_studies_is_given_back_once_none_has_run_for_a_while(
    converse: Converse, monkeypatch: pytest.MonkeyPatch
) -> None:
    given = asyncio.Event()
    loop = asyncio.get_running_loop()
    monkeypatch.setattr(studying, "give_back", lambda: loop.call_soon_threadsafe(given.set))
    monkeypatch.setattr(studying, "REST_S", 0.05)
    monkeypatch.setattr(studying, "KEPT_S", 600.0)
    talk = converse({})
    talk.write_text(SITE)
    await talk.weak("rated 14 kA")
    assert not given.is_set(), "the next study needs it again"
    monkeypatch.setattr(studying, "KEPT_S", 0.05)
    talk.write_text(SITE.replace("6 m", "5 m"))
    await talk.weak("rated 14 kA")
    await asyncio.wait_for(given.wait(), PATIENCE_S)
    assert await talk.end() == 0


async def test_an_ended_session_hands_back_no_memory_later(converse: Converse, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(studying, "REST_S", 0.05)
    monkeypatch.setattr(studying, "KEPT_S", 600.0)
    talk = converse({})
    talk.write_text(SITE)
    await talk.weak("rated 14 kA")
    timer = talk.studying._memory_timer
    assert timer is not None and not timer.cancelled()
    assert await talk.end() == 0
    assert timer.cancelled(), "its loop may be another session's by now"


async def test_a_model_built_anew_as_its_study_ends_is_studied_again(
    converse: Converse, gate_before: Callable[[Any, str], Gate]
) -> None:
    gate = gate_before(studying, "solved_figures")
    talk = converse({})
    talk.write_text(SITE)
    await gate.someone()
    settings = {"uri": URI.replace("site.wye", "wyeline.toml"), "type": 1}
    talk.tell("workspace/didChangeWatchedFiles", {"changes": [settings]})
    await talk.ask("textDocument/codeLens", {"textDocument": {"uri": URI}})
    await asyncio.sleep(0.2)  # rest begins and ends while the study of the model that is gone still runs
    gate.open.release(2)
    await talk.weak("rated 14 kA")
    assert await talk.end() == 0
