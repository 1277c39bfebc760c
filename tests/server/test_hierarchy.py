"""The feeding tree: what feeds, and what is fed."""

from __future__ import annotations

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

D = DIFFICULT
SITE = f"""\
include "lower.wye"
utility GRID 480Y/277 fault 30 kA, x/r 8
generator GEN 480Y/277 350 kVA
transfer ATS 400 A 3p
feeder GRID -> ATS.normal 400 A 3p
feeder G-1: GEN$1 -> ATS.emergency 400 A 3p, normally-open
feeder ATS -$2> "{D} MSB" 400 A 3p
feeder "{D} MSB" -> L$0P-1 100 A 3p
feeder "{D} MSB" -> NOWHERE 100 A 3p
//-- lower.wye
/// Main board.
panel "{D} MSB" bus 400 A
  1  20 A 1p "spare"
panel LP-1 120/240 bus 100 A
"""


async def _prepared(editor: Editor, cursor: int) -> types.CallHierarchyItem:
    found = await editor.client.text_document_prepare_call_hierarchy_async(
        types.CallHierarchyPrepareParams(**editor.at(cursor))
    )
    assert found and len(found) == 1
    return found[0]


async def _incoming(editor: Editor, item: types.CallHierarchyItem) -> list[types.CallHierarchyIncomingCall]:
    return list(
        await editor.client.call_hierarchy_incoming_calls_async(types.CallHierarchyIncomingCallsParams(item)) or ()
    )


async def _outgoing(editor: Editor, item: types.CallHierarchyItem) -> list[types.CallHierarchyOutgoingCall]:
    return list(
        await editor.client.call_hierarchy_outgoing_calls_async(types.CallHierarchyOutgoingCallsParams(item)) or ()
    )


async def test_upwards_to_the_sources(editor: Editor) -> None:
    editor.open(SITE)
    item = await _prepared(editor, 0)
    assert (item.name, item.detail) == ("LP-1", "panel")
    (board,) = await _incoming(editor, item)
    assert board.from_.name == f"{D} MSB" and board.from_.uri == editor.uri("lower.wye")
    assert board.from_.detail == "panel 480Y/277  (cannot work)"
    (switch,) = await _incoming(editor, board.from_)
    assert switch.from_.name == "ATS"
    assert [r.start.line for r in switch.from_ranges] == [6]
    sources = await _incoming(editor, switch.from_)
    assert [(s.from_.name, s.from_.detail) for s in sources] == [
        ("GRID", "utility 480Y/277"),
        ("GEN", "generator 480Y/277  (G-1, normally open)"),
    ]
    assert await _incoming(editor, sources[0].from_) == []


async def test_downwards_to_the_loads(editor: Editor) -> None:
    editor.open(SITE)
    board = await _prepared(editor, 2)  # on the arrow: what the feeder feeds
    assert board.name == f"{D} MSB"
    assert editor.words(board.selection_range, "lower.wye") == f'"{D} MSB"'
    assert editor.words(board.range, "lower.wye").startswith("/// Main board.")
    calls = await _outgoing(editor, board)
    assert [c.to.name for c in calls] == ["LP-1"]  # nothing is called NOWHERE
    assert [editor.words(r, "lower.wye") for r in calls[0].from_ranges] == [f'"{D} MSB"']  # written in another file
    (board_again,) = await _outgoing(editor, (await _incoming(editor, board))[0].from_)
    assert [editor.words(r) for r in board_again.from_ranges] == [f'feeder ATS -> "{D} MSB" 400 A 3p']


@pytest.mark.parametrize("text", ["pan$0el P1\n", "type panel P$01\n", "feeder A -> B$0\n", "// P$01\n"])
async def test_what_is_no_equipment_has_no_tree(plain_editor: Editor, text: str) -> None:
    plain_editor.open(text)
    found = await plain_editor.client.text_document_prepare_call_hierarchy_async(
        types.CallHierarchyPrepareParams(**plain_editor.at())
    )
    assert not found
