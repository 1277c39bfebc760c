"""Documents over the wire: texts as the client has them, models over several files, folders that come and go."""

from __future__ import annotations

from editing import DIFFICULT, Editor
from lsprotocol import types

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
