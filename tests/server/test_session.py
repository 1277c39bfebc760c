"""Documents over the wire: texts as the client has them, models over several files, folders that come and go."""

from __future__ import annotations

import asyncio
import os
import shutil
from pathlib import Path

import pytest
from editing import DIFFICULT, PATIENCE_S, Editor
from hypothesis import given, settings
from hypothesis import strategies as st
from lsprotocol import types

from wyeline_grammar.blocks import split_lines
from wyeline_grammar.lines import LineIndex
from wyeline_server.documents import path_of_uri, uri_of_path
from wyeline_server.session import Session

BOARD = f'utility GRID 208Y/120 fault 10 kA, x/r 3 "{DIFFICULT}"\n'


async def test_edits_land_where_the_editor_made_them(editor: Editor) -> None:
    editor.open(f'panel P1 208Y/120 bus 100 A "{DIFFICULT}" zz$0\n')
    assert "unreadable-line" in await editor.rules()
    place = editor.fixture.cursors[0]
    editor.replace(place.file, place._replace(column=place.column - 2), place, "main 100 A")
    assert "unreadable-line" not in await editor.rules()


async def test_a_whole_text_may_be_sent_instead_of_ranges(editor: Editor) -> None:
    editor.open("panel P1 208Y/120 zz\n")
    await editor.diagnostics()
    name = editor.fixture.first
    editor.texts[name], editor.versions[name] = "panel P1 208Y/120 bus 100 A\n", 7
    editor.client.text_document_did_change(
        types.DidChangeTextDocumentParams(
            types.VersionedTextDocumentIdentifier(version=7, uri=editor.uri(name)),
            [types.TextDocumentContentChangeWholeDocument(editor.texts[name])],
        )
    )
    assert "unreadable-line" not in await editor.rules()


async def test_text_past_the_end_and_odd_ends_of_lines_are_clamped(editor: Editor) -> None:
    editor.open("panel P1 208Y/120 bus 100 A")
    await editor.diagnostics()
    far = types.Range(types.Position(90, 90), types.Position(91, 5))
    params = types.DidChangeTextDocumentParams(
        types.VersionedTextDocumentIdentifier(version=2, uri=editor.uri("site.wye")),
        [types.TextDocumentContentChangePartial(far, " zz")],
    )
    editor.versions["site.wye"] = 2
    editor.client.text_document_did_change(params)
    found = [d for d in await editor.diagnostics() if d.code == "unreadable-line"]
    assert found[0].range.start.character == len("panel P1 208Y/120 bus 100 A ")


async def test_a_document_has_one_key_however_its_uri_is_spelt(editor: Editor) -> None:
    editor.open("panel P1 208Y/120 zz\n")
    await editor.diagnostics()
    odd = editor.uri("site.wye").replace("site", "%73ite")
    params = {"textDocument": {"uri": odd}, "position": {"line": 0, "character": 1}}
    assert (await editor.request("textDocument/hover", params)) is not None
    found = await editor.request("textDocument/documentSymbol", {"textDocument": {"uri": odd}})
    assert found


async def test_an_untitled_document_is_a_model_of_its_own(editor: Editor) -> None:
    uri = "untitled:Untitled-7"
    item = types.TextDocumentItem(uri, "wye", 3, "panel P1 208Y/120 zz\n")
    editor.client.text_document_did_open(types.DidOpenTextDocumentParams(item))
    await editor.client.until(lambda: uri in editor.client.published)
    assert editor.client.published[uri].version == 3
    assert "unreadable-line" in [d.code for d in editor.client.published[uri].diagnostics]
    closing = types.DidCloseTextDocumentParams(types.TextDocumentIdentifier(uri))
    editor.client.text_document_did_close(closing)


async def test_an_included_file_shows_the_findings_of_its_root(editor: Editor) -> None:
    editor.open('motor P-1 460 3ph 5 hp\n//-- root.wye\ninclude "site.wye"\n' + BOARD + "feeder GRID -> P-1 15 A 3p\n")
    messages = [d.message for d in await editor.diagnostics()]
    assert not any("unfed" in m or "nothing feeds" in m for m in messages), "its root feeds it"


async def changed(editor: Editor, name: str, kind: types.FileChangeType) -> None:
    event = types.FileEvent(editor.uri(name), kind)
    editor.client.workspace_did_change_watched_files(types.DidChangeWatchedFilesParams([event]))


async def seen(editor: Editor, rule: str, *, gone: bool = False, name: str = "site.wye") -> None:
    """Wait until a finding is shown, or is not any more."""
    async with asyncio.timeout(PATIENCE_S):
        while (rule in await editor.rules(name)) == gone:
            editor.client.news.clear()
            await editor.client.news.wait()


async def test_files_that_appear_change_and_vanish_are_taken_in(editor: Editor) -> None:
    editor.open('include "pumps.wye"\n' + BOARD)
    await seen(editor, "include-unreadable")
    (editor.folder / "pumps.wye").write_text("motor P-1 460 3ph zz\n")
    await changed(editor, "pumps.wye", types.FileChangeType.Created)
    await seen(editor, "include-unreadable", gone=True)
    editor.fixture.texts["pumps.wye"] = "motor P-1 460 3ph zz\n"
    await seen(editor, "unreadable-line", name="pumps.wye")
    (editor.folder / "pumps.wye").write_text("motor P-1 460 3ph 5 hp\n")
    await changed(editor, "pumps.wye", types.FileChangeType.Changed)
    await seen(editor, "unreadable-line", gone=True, name="pumps.wye")
    (editor.folder / "pumps.wye").write_bytes(b"\0\0\0")
    await changed(editor, "pumps.wye", types.FileChangeType.Changed)
    await seen(editor, "include-unreadable")
    os.unlink(editor.folder / "pumps.wye")
    await changed(editor, "pumps.wye", types.FileChangeType.Deleted)
    await seen(editor, "include-unreadable")


async def test_a_folder_that_vanishes_takes_its_files_along(editor: Editor) -> None:
    editor.open('include "parts/pumps.wye"\n//-- parts/pumps.wye\nmotor P-1 460 3ph zz\n')
    await seen(editor, "unreadable-line", name="parts/pumps.wye")
    shutil.rmtree(editor.folder / "parts")
    await changed(editor, "parts", types.FileChangeType.Deleted)
    await seen(editor, "include-unreadable")
    shutil.rmtree(editor.folder)
    editor.type("", "panel P2 208Y/120 zz\n")
    assert "unreadable-line" in await editor.rules(), "what is open lives on"


async def test_closing_without_saving_brings_back_what_is_on_disk(editor: Editor) -> None:
    editor.open('include "pumps.wye"\n//-- pumps.wye\nmotor P-1 460 3ph 5 hp\n', only_first=False)
    editor.type("5 hp", "5 hp zz", "pumps.wye")
    await seen(editor, "unreadable-line", name="pumps.wye")
    editor.close("pumps.wye")
    await seen(editor, "unreadable-line", gone=True, name="pumps.wye")


@pytest.mark.parametrize(
    ("uri", "path", "windows"),
    [
        ("file:///srv/a%20b/%C3%B8.wye", "/srv/a b/ø.wye", False),
        ("file:///srv/./x/../site.wye", "/srv/site.wye", False),
        ("file:///c%3A/Models/site.wye", "C:\\Models\\site.wye", True),
        ("file:///C:/Models/site.wye", "C:\\Models\\site.wye", True),
        ("file://server/share/site.wye", "\\\\server\\share\\site.wye", True),
        ("untitled:x", None, False),
        ("file:///a%00b", None, False),
    ],
)
def test_uris_and_paths(uri: str, path: str | None, windows: bool) -> None:
    assert path_of_uri(uri, windows) == path
    if path is not None:
        assert path_of_uri(uri_of_path(path, windows), windows) == path


def test_files_in_a_circle_have_one_root(tmp_path: Path) -> None:
    (tmp_path / "wyeline.toml").touch()
    (tmp_path / "a.wye").write_text('include "b.wye"\n')
    (tmp_path / "b.wye").write_text('include "a.wye"\n')
    (tmp_path / "c.wye").write_text("panel P1\n")
    session = Session()
    session.add_folder(tmp_path.as_uri())
    a, b, c = (str(tmp_path / f"{n}.wye") for n in "abc")
    assert session.roots_of(a) == session.roots_of(b) == [a]
    assert session.roots_of(c) == [c]
    assert session.all_roots() == [a, c]


def test_a_misspelt_include_still_joins_its_file_to_the_model(tmp_path: Path) -> None:
    (tmp_path / "site.wye").write_text("wye 1\n// nothing yet\n")
    (tmp_path / "north.wye").write_text("panel LP-1 208Y/120 bus 225 A\n")
    session = Session()
    session.add_folder(tmp_path.as_uri())
    site, north = str(tmp_path / "site.wye"), str(tmp_path / "north.wye")
    session.open(uri_of_path(site), 1, "wye 1\n// nothing yet\n")
    assert session.roots_of(north) == [north]
    line = {"start": {"line": 1, "character": 0}, "end": {"line": 1, "character": 14}}
    session.change(uri_of_path(site), 2, [{"range": line, "text": 'incl5de "north.wye"'}])
    assert session.roots_of(north) == [site]


@settings(max_examples=40, deadline=None)
@given(st.data())
def test_random_edits_give_what_a_fresh_reading_gives(data: st.DataObject) -> None:
    """Whatever is typed where, in any encoding: the text is the client's, the findings those of a new session."""
    text = f'utility GRID 480Y/277 fault 14 kA, x/r 4 "{DIFFICULT}"\nfeeder GRID -> P1\npanel P1 480Y/277 bus 100 A\n'
    encoding = data.draw(st.sampled_from(["utf-8", "utf-16", "utf-32"]))
    session = Session(encoding)
    path = session.open("untitled:x", 1, text)
    session.analysis_of(path)
    for version in range(2, 6):
        drawn = sorted(data.draw(st.lists(st.integers(0, len(text)), min_size=2, max_size=2)))
        start, end = (at - (text[at - 1 : at + 1] == "\r\n") for at in drawn)  # no editor has a place inside a line end
        new = data.draw(
            st.sampled_from(["", "\n", "x", "😀", "  1 20 A 1p\n", 'include "y.wye"\n', "panel P1\n", "\r\n"])
        )
        range_ = {"start": _position(text, start, session), "end": _position(text, end, session)}
        session.change("untitled:x", version, [{"range": range_, "text": new}])
        text = text[:start] + new + text[end:]
        assert session.text(path).lines == split_lines(text)
        if data.draw(st.booleans()):
            session.analysis_of(path)
    fresh = Session(encoding)
    other = fresh.open("untitled:x", 1, text)
    assert _told(session, path) == _told(fresh, other)


def _position(text: str, offset: int, session: Session) -> dict[str, int]:
    line, column = LineIndex(text).place(offset)
    return session.positions.position(split_lines(text), line, column)


def _told(session: Session, path: str) -> list[tuple[object, ...]]:
    analysis = session.analysis_of(path)
    assert analysis is not None
    return [f.sort_key for f in analysis.findings()]
