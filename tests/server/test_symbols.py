"""The outline of a document, and the search over a workspace."""

from __future__ import annotations

import json
import time

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

from wyeline_grammar.blocks import TextFile
from wyeline_server.positions import Positions
from wyeline_server.symbols import _template, document_symbols

D = DIFFICULT
SITE = f"""\
wye 1
project "{D} House"
include "lower.wye"
/// Kitchen and hall, 50 % full.
panel "{D} P1" 208Y/120 bus 225 A demolish
//    ^^^^^^^^^^ name
  1    20 A 1p  1.2 kVA receptacle "{D} 100 %" 2#12 Cu
  3,5  20 A 2p  4 kW    heating
  7             space
  // a note
type panel LAB bus 100 A
system S1 208Y/120
raceway R-1 2 inch EMT
transformer TX 480 3ph -> S1 75 kVA
feeder TX -> "{D} P1" 225 A 3p 3#4/0 Cu
feeder F-9: TX -> LAB-1 100 A 3p
scenario "Grid lost" "on the set"
  off GRID
expect all panel   drop <= 3 %

feeder ->
//-- lower.wye
panel KITCHEN-2 208Y/120 "Bread ovens"
"""


def _shown(symbols: list[types.DocumentSymbol]) -> list[tuple[str, str | None]]:
    return [(s.name, s.detail) for s in symbols]


async def _outline(editor: Editor) -> list[types.DocumentSymbol]:
    found = await editor.client.text_document_document_symbol_async(types.DocumentSymbolParams(editor.identifier()))
    assert found and all(isinstance(s, types.DocumentSymbol) for s in found)
    return list(found)  # type: ignore[arg-type]


async def test_the_outline_is_equipment_with_its_circuits_and_all_that_has_a_name(editor: Editor) -> None:
    editor.open(SITE)
    found = await _outline(editor)
    assert _shown(found) == [
        (f"{D} House", "project"),
        ("lower.wye", "include"),
        (f"{D} P1", "panel 208Y/120"),
        ("LAB", "type panel"),
        ("S1", "system 208Y/120"),
        ("R-1", "raceway"),
        ("TX", "transformer 480 3ph -> S1"),
        (f"TX -> {D} P1", "225 A 3p"),
        ("F-9", "TX -> LAB-1  100 A 3p"),
        ("Grid lost", "on the set"),
        ("expect all panel drop <= 3 %", ""),
        ("? -> ?", ""),
    ]
    panel = found[2]
    assert panel.selection_range == editor.range(editor.fixture.marks[0])
    assert editor.words(panel.range).startswith("/// Kitchen")
    assert list(panel.tags or ()) == [types.SymbolTag.Deprecated]
    circuits = list(panel.children or ())
    assert _shown(circuits) == [
        (f"1  {D} 100 %", "20 A 1p 1.2 kVA receptacle"),
        ("3,5", "20 A 2p 4 kW heating"),
        ("7  space", ""),
    ]
    assert editor.words(circuits[0].range).strip() == editor.fixture.texts["site.wye"].split("\n")[5].strip()
    for symbol in [*found, *circuits]:
        assert symbol.range.start <= symbol.selection_range.start <= symbol.selection_range.end <= symbol.range.end


async def test_lines_move_with_the_text_above(editor: Editor) -> None:
    editor.open(SITE)
    before = await _outline(editor)
    editor.type("wye 1", "wye 1\n\n")
    after = await _outline(editor)
    assert [s.range.start.line + 2 for s in before] == [s.range.start.line for s in after]
    assert _shown(before) == _shown(after)


async def test_an_editor_without_trees_gets_a_list(plain_editor: Editor) -> None:
    plain_editor.open(SITE)
    found = await plain_editor.client.text_document_document_symbol_async(
        types.DocumentSymbolParams(plain_editor.identifier())
    )
    flat = [s for s in found or () if isinstance(s, types.SymbolInformation)]
    assert ("3,5", f"{D} P1") in [(s.name, s.container_name) for s in flat]
    assert plain_editor.words(flat[2].location.range) == f'"{D} P1"'


@pytest.mark.parametrize(
    ("query", "first"),
    [("kitchen-2", "KITCHEN-2"), ("kit", "KITCHEN-2"), ("bread", "KITCHEN-2"), ("ktn2", "KITCHEN-2"), ("f-9", "F-9")],
)
async def test_the_workspace_is_searched_by_tag_and_description(editor: Editor, query: str, first: str) -> None:
    editor.open(SITE)
    found = await editor.client.workspace_symbol_async(types.WorkspaceSymbolParams(query=query))
    mine = [
        s for s in found or () if isinstance(s.location, types.Location) and editor.folder.as_uri() in s.location.uri
    ]
    assert mine[0].name == first


async def test_nothing_is_found_for_what_is_not_there(editor: Editor) -> None:
    editor.open(SITE)
    assert not await editor.client.workspace_symbol_async(types.WorkspaceSymbolParams(query="qqzzqq"))


async def test_an_edit_of_a_large_document_makes_one_block_anew() -> None:
    file = TextFile("big.wye", "\n".join(f"panel LP-{i} 208Y/120 bus 100 A\n  1  20 A 1p" for i in range(5000)))
    document_symbols(file, Positions("utf-16"))
    before = _template.made
    file.edit((0, 0), (0, 0), "// first\n\n")
    file.edit((5002, 9), (5002, 9), "9")
    began = time.process_time()
    assert len(json.loads(str(document_symbols(file, Positions("utf-16"))))) == 5000
    assert time.process_time() - began < 0.5  # about 0.05 on an idle machine, reading it back included
    assert _template.made - before == 2
