"""One name changed everywhere it is written, and refused where the model would come to mean something else."""

from __future__ import annotations

from pathlib import Path

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types
from pygls.exceptions import JsonRpcException

from wyeline_grammar.formatter import format_text
from wyeline_server.edits import workspace_edit
from wyeline_server.rename import renamed
from wyeline_server.server import WyelineServer

D = DIFFICULT
SITE = f"""\
include "lower.wye"
utility GRID 480Y/277 fault 30 kA, x/r 8
panel M$0SB S480 like LAB bus 400 A "{D}"
  F1  20 A 1p 1 kVA "MSB"
  allow overloaded at MSB "{D}"
feeder GRID -> MSB 100 A 3p // MSB stays in a comment
feeder "{D}": MSB.through[ABC] -> LP-1 100 A 3p at 1,3,5
feeder MSB -> MSB-2 100 A 3p
scenario "Grid lost"
  shed MSB
expect MSB drop <= 3 % in "Grid lost"
//-- lower.wye
system S480 480Y/277
type panel LAB like MSB
panel LP-1 480Y/277 bus 100 A
raceway R-7 2 inch EMT
motor P-1 460 3ph 15 hp not-with P-2 P-3
feeder MSB -> P-1 50 A 3p in R-7
"""


async def _rename(editor: Editor, new: str, cursor: int = 0) -> types.WorkspaceEdit | None:
    return await editor.client.text_document_rename_async(types.RenameParams(new_name=new, **editor.at(cursor)))


async def _refusal(editor: Editor, new: str, cursor: int = 0) -> str:
    with pytest.raises(JsonRpcException) as caught:
        await _rename(editor, new, cursor)
    return str(caught.value.message)


@pytest.mark.parametrize("new", ["SWB-1", f"Küche {D}"])
async def test_every_use_in_every_file_follows(editor: Editor, new: str) -> None:
    editor.open(SITE)
    edit = await _rename(editor, new)
    assert edit is not None
    editor.apply(edit)
    spelled = new if new == "SWB-1" else f'"{new}"'
    kept = {'"MSB"': "@1", "at MSB": "@2", "// MSB": "@3", "MSB-2": "@4"}
    for name, text in editor.fixture.texts.items():
        for old, mark in kept.items():
            text = text.replace(old, mark)
        text = text.replace("MSB", spelled)
        for old, mark in kept.items():
            text = text.replace(mark, old)
        assert editor.text(name) == text


async def test_versions_go_to_clients_that_take_them(tmp_path: Path) -> None:
    server = WyelineServer("test")
    (tmp_path / "lower.wye").write_text("feeder MSB -> P-1\n", "utf-8")
    path = server.session.open((tmp_path / "site.wye").as_uri(), 7, 'include "lower.wye"\npanel MSB 208Y/120\n')
    changes = renamed(server.session, path, server.session.text(path), 1, 7, "SWB")
    assert len(workspace_edit(server, changes)["changes"]) == 2
    server.client = {"workspace": {"workspaceEdit": {"documentChanges": True}}}
    made = workspace_edit(server, changes)["documentChanges"]
    assert {c["textDocument"]["uri"].rpartition("/")[2]: c["textDocument"]["version"] for c in made} == {
        "site.wye": 7,  # as the client has it
        "lower.wye": None,  # as it is on disk
    }


async def test_unsaved_buffers_of_other_files_count(editor: Editor) -> None:
    editor.open(SITE, only_first=False)
    editor.type("", "feeder MSB -> LATE 9 A 3p\n", "lower.wye")
    edit = await _rename(editor, "SWB-1")
    assert edit is not None
    editor.apply(edit)
    assert "feeder SWB-1 -> LATE" in editor.text("lower.wye")


@pytest.mark.parametrize(
    ("text", "new", "result"),
    [
        (
            "type panel L$0AB\npanel P1 208Y/120 like LAB\n",
            "OFFICE",
            "type panel OFFICE\npanel P1 208Y/120 like OFFICE\n",
        ),
        ("system S$01 208Y/120\npanel P1 S1\n", "LOW", "system LOW 208Y/120\npanel P1 LOW\n"),
        (
            "raceway R$0-1 2 inch EMT\nfeeder A -> B 9 A 1p in R-1\n",
            "R-2",
            "raceway R-2 2 inch EMT\nfeeder A -> B 9 A 1p in R-2\n",
        ),
        (
            "feeder TIE: A -> B 9 A 1p\ninterlock K at-most 1, among T$0IE, M-1\n",
            "T-9",
            "feeder T-9: A -> B 9 A 1p\ninterlock K at-most 1, among T-9, M-1\n",
        ),
        (
            'scenario "On gen"\nexpect all panel drop <= 3 % in "On $0gen"\n',
            "Generator",
            'scenario "Generator"\nexpect all panel drop <= 3 % in "Generator"\n',
        ),
        (
            "motor P-1 460 3ph\nmotor P-2 460 3ph standby-of P-$01\n",
            "p",
            'motor "p" 460 3ph\nmotor P-2 460 3ph standby-of "p"\n',
        ),
        ("panel P$01 208Y/120\npanel P1 208Y/120\n", "P2", "panel P2 208Y/120\npanel P2 208Y/120\n"),
    ],
)
async def test_each_sort_of_name(plain_editor: Editor, text: str, new: str, result: str) -> None:
    plain_editor.open(text)
    edit = await _rename(plain_editor, new)
    assert edit is not None
    plain_editor.apply(edit)
    assert plain_editor.text() == result


@pytest.mark.parametrize(
    ("text", "new", "reason"),
    [
        ("panel P$01\npanel P2\n", "P2", "`P2` is a panel already (site.wye:2)"),
        ("panel P$01\nfeeder P2: P1 -> X\n", "P2", "`P2` is the label of a feeder already"),
        ('scenario "A$0"\nscenario "B"\n', "B", "There is a scenario `B` already"),
        ("panel P$01\n", '  ""', "at least one letter"),
        ("panel P$01\n", 'a"b', "cannot hold a quotation mark"),
        ("motor P$01\ninterlock K at-most 1, among P1, P2\n", "pump 1", "needs quotes, which cannot stand on line 2"),
        ("system S$01 208Y/120\npanel P1 S1\n", "low side", "needs quotes, which cannot stand on line 2 of site.wye"),
        ("raceway R$0-1 2 inch EMT\nfeeder A -> B in R-1\n", "EMT", "reads as something else on line 2"),
        ("feeder A$0 -> B\n", "C", "Nothing is called `A`"),
        ("pan$0el P1\n", "C", "`panel` is no name"),
        ("panel P1 // P$01\n", "C", "No name stands here"),
    ],
)
async def test_what_cannot_be_is_refused_with_its_reason(
    plain_editor: Editor, text: str, new: str, reason: str
) -> None:
    plain_editor.open(text)
    assert reason in await _refusal(plain_editor, new)


async def test_preparing_gives_the_whole_name_or_the_reason(editor: Editor) -> None:
    editor.open(f'panel "{D} $0A" 208Y/120\n//    ^^^^^^^^^ name\nfeeder "{D} A".through -> $1B\n')
    place = await editor.client.text_document_prepare_rename_async(types.PrepareRenameParams(**editor.at(0)))
    assert isinstance(place, types.PrepareRenamePlaceholder)
    assert (place.range, place.placeholder) == (editor.range(editor.fixture.marks[0]), f"{D} A")
    with pytest.raises(JsonRpcException, match="Nothing is called `B`"):
        await editor.client.text_document_prepare_rename_async(types.PrepareRenameParams(**editor.at(1)))


async def test_models_that_share_a_file_are_renamed_together(editor: Editor) -> None:
    editor.open(
        'include "common.wye"\npanel M$0SB 208Y/120\n//-- other.wye\ninclude "common.wye"\npanel MSB 480Y/277\n'
        "//-- common.wye\nfeeder MSB -> P-1 20 A 1p\n"
    )
    edit = await _rename(editor, "SWB")
    assert edit is not None
    editor.apply(edit)
    assert "panel SWB 480Y/277" in editor.text("other.wye")
    assert "MSB" not in editor.text("common.wye")


async def test_a_rename_leaves_formatted_lines_formatted_and_others_alone(editor: Editor) -> None:
    formatted = format_text(
        "switchboard MSB 480Y/277 bus 400 A\npanel LP-1 480Y/277 bus 225 A\nfeeder MSB -> LP-1 100 A 3p 12 m\n"
    )
    editor.open(formatted.replace("LP-1", "L$0P-1", 1) + "panel  LP-2 480Y/277   bus 225 A\n")
    edit = await _rename(editor, "LIGHTS-EAST-1")
    assert edit is not None
    editor.apply(edit)
    made = editor.text().split("\n")
    assert "LIGHTS-EAST-1" in made[1] and "LIGHTS-EAST-1" in made[2]
    assert made[:3] == format_text("\n".join(made[:3]) + "\n").split("\n")[:3]
    assert made[0] == formatted.split("\n")[0] and made[3] == "panel  LP-2 480Y/277   bus 225 A"
