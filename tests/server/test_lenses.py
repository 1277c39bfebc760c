"""Lenses say what equipment carries, and nothing where that is unknown."""

from __future__ import annotations

from pathlib import Path

from editing import DIFFICULT, Editor, solve_now
from lsprotocol import types
from test_solved_findings import SITE as SOLVABLE

from wyeline_server.lenses import SETTINGS, WORKING_SHEET, lenses
from wyeline_server.server import WyelineServer

D = DIFFICULT
SITE = f"""\
utility GRID 208Y/120 fault 30 kA, x/r 8
/// {D}
panel "{D} P1" bus 225 A, main 200 A // {D}
  1,3,5  60 A 3p  36 kW heating
panel P2 bus 100 A
  1      20 A 1p  lighting
panel P3 bus 100 A
feeder GRID -> "{D} P1" 200 A 3p
feeder GRID -> P2 100 A 3p
"""


async def test_load_beside_rating_above_the_equipment(editor: Editor) -> None:
    editor.open(SITE)
    found = await editor.client.text_document_code_lens_async(types.CodeLensParams(editor.identifier()))
    shown = [(editor.words(lens.range), lens.command.title) for lens in found or () if lens.command]
    loads = [entry for entry in shown if entry[1].startswith("load")]
    # 36 kW on three legs of 208Y/120 (360 V in all): 100 A of 200 A. P2's load is unknown, P3 has none.
    assert loads == [(f'panel "{D} P1" bus 225 A, main 200 A', "load 99.9 A of main 200 A (50 %)")]


async def test_an_edit_is_in_the_next_answer(editor: Editor) -> None:
    editor.open(SITE)
    editor.type("36 kW", "18 kW")
    found = await editor.client.text_document_code_lens_async(types.CodeLensParams(editor.identifier()))
    assert next(lens.command.title for lens in found or () if lens.command) == "load 50 A of main 200 A (25 %)"


async def test_each_kind_is_switched_by_its_setting(tmp_path: Path) -> None:
    server = WyelineServer("test")
    path = server.session.open((tmp_path / "a.wye").as_uri(), 1, SOLVABLE)
    file = server.session.text(path)
    solve_now(server, path)
    server.command_handlers[WORKING_SHEET] = lambda *_: None

    def kinds() -> list[str]:
        return [lens["command"]["title"].split()[0] for lens in lenses(server, path, file)]

    assert kinds() == ["load", "fault", "show"]
    assert lenses(server, path, file)[2]["command"]["arguments"] == [server.session.uri_of(path), "DP"]
    for name, left in zip(SETTINGS, (["fault", "show"], ["load", "show"], ["load", "fault"]), strict=True):
        server.settings = {"codeLens": {name.rpartition(".")[2]: False}}
        assert kinds() == left
    server.settings = {"codeLens": dict.fromkeys(("loads", "faults", "working"), False)}
    assert kinds() == []
    server.settings = {"studies": {"atRest": False}}
    assert kinds() == ["load", "show"]
