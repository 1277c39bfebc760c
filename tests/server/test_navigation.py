"""Going from a name to its declaration, its type and its uses, over the files of a model."""

from __future__ import annotations

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

D = DIFFICULT
SITE = f"""\
include "lower.wye"
utility GRID 480Y/277 fault 30 kA, x/r 8
panel "Küche {D}" 480Y/277 like LAB
//    ^^^^^^^^^^^^^ declared
  2  20 A 1p 1 kVA "{D}"
  4  20 A 1p 1 kVA "{D}" with 2$3
feeder GRID -> "Küche {D}" 100 A 3p
//             ^^^^^^^^^^^^^ used
feeder "Küche $0{D}".through -> L$1P-1 100 A 3p "{D}"
//     ^^^^^^^^^^^^^ used
scenario "Grid lost"
  shed "Küche {D}"
//     ^^^^^^^^^^^^^ used
expect LP-1 drop <= 3 % in "Gr$2id lost"
//-- lower.wye
/// Reading rooms.
panel LP-1 480Y/277 bus 100 A
  1  20 A 1p 1 kVA "Outlets"
type panel LAB bus 225 A
"""


def _words(editor: Editor, found: list[types.Location]) -> list[tuple[str, str]]:
    names = {editor.uri(name): name for name in editor.fixture.texts}
    return [(names[f.uri], editor.words(f.range, names[f.uri])) for f in found]


async def _go(editor: Editor, cursor: int, way: str = "definition") -> list[types.LocationLink]:
    method = getattr(editor.client, f"text_document_{way}_async")
    params = types.DefinitionParams(**editor.at(cursor))
    return list(await method(params) or [])


async def test_a_definition_links_the_whole_name_to_its_statement(editor: Editor) -> None:
    editor.open(SITE)
    (link,) = await _go(editor, 0)
    declared = editor.fixture.marks[0]
    assert link.target_selection_range == editor.range(declared)
    assert link.origin_selection_range == editor.range(editor.fixture.marks[2])
    (link,) = await _go(editor, 1, "declaration")
    assert link.target_uri == editor.uri("lower.wye")
    assert editor.words(link.target_range, "lower.wye").startswith("/// Reading rooms.\npanel LP-1")
    assert editor.words(link.target_range, "lower.wye").endswith('"Outlets"')


async def test_scenarios_and_circuits_are_found_where_they_are_named(editor: Editor) -> None:
    editor.open(SITE)
    (link,) = await _go(editor, 2)
    assert editor.words(link.target_selection_range) == '"Grid lost"'
    (link,) = await _go(editor, 3)
    assert (editor.words(link.target_selection_range), link.target_range.start.line) == ("2", 3)


@pytest.mark.parametrize(
    ("text", "way", "expected"),
    [
        ('inc$0lude "lower.wye"\n//-- lower.wye\nwye 1\n', "definition", []),
        ('include "low$0er.wye"\n//-- lower.wye\nwye 1\n', "definition", [("lower.wye", "")]),
        ("type panel LAB bus 225 A\npanel P$01 208Y/120 like LAB\n", "type_definition", [("site.wye", "LAB")]),
        ("system S1 208Y/120\npanel P$01 S1\n", "type_definition", [("site.wye", "S1")]),
        ("type panel L$0AB\npanel P1 208Y/120 like LAB\n", "implementation", [("site.wye", "P1")]),
        ("panel P1 208Y/120\n  // $0P1\n", "definition", []),
        ("feeder A -> B$0\n", "definition", []),
    ],
)
async def test_where_going_leads(plain_editor: Editor, text: str, way: str, expected: list[tuple[str, str]]) -> None:
    plain_editor.open(text)
    assert _words(plain_editor, await _go(plain_editor, 0, way)) == expected  # type: ignore[arg-type]


async def test_references_and_highlights_are_every_place_of_the_name(editor: Editor) -> None:
    editor.open(SITE)
    ranges = [editor.range(mark) for mark in editor.fixture.marks]
    found = await editor.client.text_document_references_async(
        types.ReferenceParams(types.ReferenceContext(include_declaration=True), **editor.at(0))
    )
    assert [f.range for f in found or ()] == ranges
    found = await editor.client.text_document_references_async(
        types.ReferenceParams(types.ReferenceContext(include_declaration=False), **editor.at(0))
    )
    assert [f.range for f in found or ()] == ranges[1:]
    shown = await editor.client.text_document_document_highlight_async(types.DocumentHighlightParams(**editor.at(0)))
    kinds = types.DocumentHighlightKind
    assert [(h.range, h.kind) for h in shown or ()] == [
        (ranges[0], kinds.Write),
        *((r, kinds.Read) for r in ranges[1:]),
    ]


async def test_an_unsaved_buffer_counts(editor: Editor) -> None:
    editor.open(SITE)
    editor.open_document("lower.wye", "\n" * 5 + "panel LP-1 480Y/277\ntype panel LAB\n")
    (link,) = await _go(editor, 1)
    assert link.target_range.start.line == 5
