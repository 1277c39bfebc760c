"""Pictures and live pages of the model as it is typed, their selections, and that nothing is left of them."""

from __future__ import annotations

import asyncio
import http.client
import re
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

import pytest
from editing import DIFFICULT, PATIENCE_S, SERVER, Client, Editor, capabilities
from lsprotocol import types
from pygls.exceptions import JsonRpcException
from test_commands import command

from wyeline_server.documents import path_of_uri

SITE = f"""wye 1
project "{DIFFICULT}"
  basis us-2023
utility     GRID    480Y/277  fault 14 kA, x/r 4  "{DIFFICULT}"
switchboard MSB     480Y/277  bus 400 A, main 400 A
panel       LP-1    480Y/277  bus 125 A, main lugs
feeder GRID        -> MSB
feeder MSB         -> LP-1    100 A 3p
scenario "Night"
  open MSB -> LP-1
"""


class Browser:
    """A page of the preview, as a browser on this machine loads it."""

    def __init__(self, url: str) -> None:
        self.parts = urlsplit(url)
        assert self.parts.hostname == "127.0.0.1" and len(self.parts.path) > 24

    def ask(self, rest: str = "", body: str | None = None, **headers: str) -> http.client.HTTPResponse:
        connection = http.client.HTTPConnection("127.0.0.1", self.parts.port or 0, timeout=PATIENCE_S)
        own = {"Origin": f"http://{self.parts.netloc}"} if body is not None else {}
        connection.request("GET" if body is None else "POST", self.parts.path + rest, body, own | headers)
        return connection.getresponse()

    async def read(self, rest: str = "") -> str:
        answer = await asyncio.to_thread(lambda: self.ask(rest).read())
        return answer.decode()


def path_in(uri: str) -> Path:
    found = path_of_uri(uri)
    assert found is not None
    return Path(found)


async def test_a_picture_is_of_the_text_as_it_is_typed(editor: Editor) -> None:
    editor.open(SITE)
    editor.client.shown_documents.clear()
    editor.type("480Y/277  bus 125 A, main lugs", '480Y/277  bus 225 A, main lugs  "Not saved"')
    made = await command(editor, "wyeline.picture", editor.uri("site.wye"))
    (sheet,) = made["sheets"]
    assert sheet["svg"].startswith("<svg") and "LP-1" in sheet["svg"] and "225 A bus" in sheet["svg"]
    page = path_in(made["uri"])
    assert page.suffix == ".html" and "225 A bus" in page.read_text("utf-8")
    await editor.client.until(lambda: editor.client.shown_documents)
    assert [(d.uri, d.external) for d in editor.client.shown_documents] == [(made["uri"], True)]
    night = await command(editor, "wyeline.picture", editor.uri("site.wye"), "Night")
    assert "not fed" in night["sheets"][0]["svg"]


async def test_a_preview_keeps_up_with_the_typing(editor: Editor) -> None:
    editor.open(SITE)
    url = (await command(editor, "wyeline.preview", editor.uri("site.wye")))["url"]
    browser = Browser(url)
    assert "LP-1" in await browser.read()
    events = await asyncio.to_thread(browser.ask, "events")
    editor.type("125 A, main lugs", "225 A, main lugs")
    assert await asyncio.to_thread(until_event, events) == "edition"
    edition = await browser.read("edition")
    assert "225 A bus" in edition and DIFFICULT in edition
    assert "125 A" in (editor.folder / "site.wye").read_text("utf-8"), "nothing was saved"
    (editor.folder / "site.wye").write_text("", "utf-8")
    assert "225 A bus" in await browser.read("edition"), "what is open counts, not the file"
    again = await command(editor, "wyeline.preview", editor.uri("site.wye"))
    assert again["url"] == url, "one page for each model"
    await command(editor, "wyeline.preview", editor.uri("site.wye"), "Night")
    assert await asyncio.to_thread(until_event, events) == "edition"
    assert 'data-scenario="Night"' in await browser.read("edition")


def until_event(events: http.client.HTTPResponse) -> str:
    """The name of the next event of a page."""
    while line := events.readline().decode():
        if line.startswith("event:"):
            return line.partition(":")[2].strip()
    return "the end"


async def test_a_selection_on_the_page_is_shown_in_the_editor(editor: Editor) -> None:
    editor.open(SITE)
    browser = Browser((await command(editor, "wyeline.preview", editor.uri("site.wye")))["url"])
    line = 1 + editor.text().split("\n").index(next(t for t in editor.text().split("\n") if t.startswith("utility")))
    assert f'data-source="site.wye:{line}"' in await browser.read()
    editor.client.shown_documents.clear()
    for place in ("../../etc/passwd:1", "site.wye:x", "other.wye:2", f"site.wye:{line}"):
        assert (await asyncio.to_thread(browser.ask, "select", place)).status == 200
    await editor.client.until(lambda: editor.client.shown_documents)
    (shown,) = editor.client.shown_documents
    assert shown.uri == editor.uri("site.wye") and shown.take_focus and shown.selection is not None
    assert editor.words(shown.selection) == editor.text().split("\n")[line - 1]


async def test_a_preview_answers_to_nobody_else(editor: Editor) -> None:
    editor.open(SITE)
    browser = Browser((await command(editor, "wyeline.preview", editor.uri("site.wye")))["url"])
    for headers in ({"Host": "attacker.example"}, {"Origin": "http://attacker.example"}):
        assert (await asyncio.to_thread(lambda h=headers: browser.ask("edition", **h))).status == 403
    browser.parts = browser.parts._replace(path="/guessed/")
    assert (await asyncio.to_thread(browser.ask)).status == 403


async def test_a_client_that_shows_no_documents_is_told_the_address(plain_editor: Editor) -> None:
    plain_editor.open(SITE)
    made = await command(plain_editor, "wyeline.preview", plain_editor.uri("site.wye"))
    told = [m.message for m in plain_editor.client.messages]
    assert any(made["url"] in text for text in told), told


@pytest.mark.parametrize(
    ("name", "arguments", "says"),
    [
        ("wyeline.picture", [], "takes a document, and perhaps the name of a scenario"),
        ("wyeline.preview", ["URI", "Night", 3], "takes a document, and perhaps the name of a scenario"),
        ("wyeline.preview", ["URI", "Noon"], "no scenario `Noon`; there are Night"),
        ("wyeline.preview", ["file:///nowhere/at/all.wye"], "no model can be made"),
    ],
)
async def test_what_cannot_be_drawn_is_refused_in_words(
    editor: Editor, name: str, arguments: list[Any], says: str
) -> None:
    editor.open(SITE)
    given = [editor.uri("site.wye") if a == "URI" else a for a in arguments]
    with pytest.raises(JsonRpcException, match=re.escape(says)):
        await command(editor, name, *given)


@pytest.mark.parametrize("ends", ["shutdown", "stream"])
async def test_pages_and_files_end_with_the_session(tmp_path: Path, ends: str) -> None:
    client = Client()
    await client.start_io(*SERVER)
    await client.initialize_session(types.InitializeParams(capabilities=capabilities("utf-16")))
    editor = Editor(client, "utf-16", tmp_path)
    editor.open(SITE)
    browser = Browser((await command(editor, "wyeline.preview", editor.uri("site.wye")))["url"])
    events = await asyncio.to_thread(browser.ask, "events")
    picture = path_in((await command(editor, "wyeline.picture", editor.uri("site.wye")))["uri"])
    assert picture.exists()
    assert client._server is not None and client._server.stdin is not None
    if ends == "shutdown":
        await client.shutdown_async(None)
        assert await asyncio.to_thread(until_event, events) == "the end"
        with pytest.raises(OSError):
            browser.ask()
        assert not picture.exists() and not picture.parent.exists()
    client._server.stdin.close()
    async with asyncio.timeout(PATIENCE_S):
        assert await client._server.wait() == (0 if ends == "shutdown" else 1)
    assert not picture.parent.exists()
    await client.stop()
