"""Links to included files, and to the pages of rules."""

from __future__ import annotations

from pathlib import Path

from editing import DIFFICULT, Editor
from lsprotocol import types

from wyeline_server.links import links
from wyeline_server.server import WyelineServer

D = DIFFICULT


async def test_includes_open_their_files(editor: Editor) -> None:
    editor.open(
        f'include "°Ω😀/lower.wye" // {D}\n//       ^^^^^^^^^^^^^ there\n'
        'include "later.wye"\n//       ^^^^^^^^^ not yet\n'
        'include "../../../../outside.wye"\ninclude ""\n//-- °Ω😀/lower.wye\nwye 1\n'
    )
    found = await editor.client.text_document_document_link_async(types.DocumentLinkParams(editor.identifier()))
    assert found and [link.range for link in found] == [editor.range(mark) for mark in editor.fixture.marks]
    assert [link.target for link in found] == [editor.uri("°Ω😀/lower.wye"), editor.uri("later.wye")]


async def test_a_tooltip_says_whether_the_file_is_there(tmp_path: Path) -> None:
    server = WyelineServer("test")
    server.client = {"textDocument": {"documentLink": {"tooltipSupport": True}}}
    server.session.open((tmp_path / "b.wye").as_uri(), 1, "wye 1\n")  # only in the editor as yet
    path = server.session.open((tmp_path / "a.wye").as_uri(), 1, 'include "b.wye"\ninclude "c.wye"\n')
    found = links(server, path, server.session.text(path))
    assert [link["tooltip"] for link in found] == ["Open this file", "There is no such file yet"]


async def test_rules_link_to_their_pages_where_there_are_any(tmp_path: Path) -> None:
    server = WyelineServer("test")
    server.settings = {"rules": {"pages": "https://example.org/rules/"}}
    path = server.session.open((tmp_path / "a.wye").as_uri(), 1, 'panel P1\n  allow spaces-overfull at 3 "why"\n')
    (link,) = links(server, path, server.session.text(path))
    assert link["target"] == "https://example.org/rules/spaces-overfull"
    assert link["range"]["start"] == {"line": 1, "character": 8}
