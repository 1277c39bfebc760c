"""Hints say what follows from the text: voltages, legs, amperes."""

from __future__ import annotations

from pathlib import Path

import pytest
from editing import DIFFICULT, Editor, solve_now
from lsprotocol import types
from test_solved_findings import SITE as SOLVABLE

from wyeline_server.inlays import SETTINGS, hints
from wyeline_server.server import WyelineServer

D = DIFFICULT
SITE = f"""\
system S1 208Y/120
utility GRID S1 fault 30 kA, x/r 8
panel "{D} P1" bus 225 A, numbering odd-even
  1      20 A 1p  1.2 kVA lighting "{D}"
  2,4    30 A 2p  {D[:0]}3.6 kVA heating
  5      space
  F1[B]  20 A 1p  0.6 kVA lighting
panel P2 120/240 bus 100 A
load HTR 208 1ph 2 kW
panel P3 208Y/120 1ph bus 100 A
feeder GRID -> "{D} P1" 200 A 3p // {D}
feeder "{D} P1" -> P2 100 A 2p
feeder "{D} P1"[AB] -> P3 100 A 2p
feeder "{D} P1" -> HTR 20 A 2p at 6,8
"""


async def _shown(editor: Editor, first: int = 0, last: int = 99) -> list[str]:
    """Each line with its hints put in, marked."""
    span = types.Range(types.Position(first, 0), types.Position(last, 0))
    found = await editor.client.text_document_inlay_hint_async(types.InlayHintParams(editor.identifier(), span))
    lines = editor.text().split("\n")
    changed: set[int] = set()
    for hint in sorted(found or (), key=lambda h: (h.position.line, h.position.character), reverse=True):
        line = hint.position.line
        column = editor.offset(editor.fixture.first, hint.position) - sum(
            len(x) + 1 for x in editor.text().split("\n")[:line]
        )
        lines[line] = f"{lines[line][:column]}<{hint.label}>{lines[line][column:]}"
        changed.add(line)
    return [lines[line] for line in sorted(changed)]


async def test_what_is_not_written_is_shown(editor: Editor) -> None:
    editor.open(SITE)
    # Leg A of the feeder to P1, by hand: 9.99 A at 0 degrees (to neutral), 17.3 A at 30 (A-B), 9.62 A at -30 (A-C)
    # are 33.3 + 3.84j A together, 33.5 A.
    assert await _shown(editor) == [
        "utility GRID S1<208Y/120> fault 30 kA, x/r 8",
        f'panel "{D} P1"<208Y/120> bus 225 A, numbering odd-even',
        f'  1<A>      20 A 1p  1.2 kVA<9.99 A> lighting "{D}"',
        "  2,4<AB>    30 A 2p  3.6 kVA<17.3 A> heating",
        "  F1[B]  20 A 1p  0.6 kVA<5 A> lighting",
        f'feeder GRID -> "{D} P1"<208Y/120> 200 A 3p<33.5 A> // {D}',
        f'feeder "{D} P1"[AB] -> P3<208Y/120 1ph> 100 A 2p',
        f'feeder "{D} P1"<[CA]> -> HTR<208 1ph> 20 A 2p<9.62 A> at 6,8',
    ]


async def test_only_the_lines_asked_for(editor: Editor) -> None:
    editor.open(SITE)
    assert await _shown(editor, 3, 4) == [
        f'  1<A>      20 A 1p  1.2 kVA<9.99 A> lighting "{D}"',
        "  2,4<AB>    30 A 2p  3.6 kVA<17.3 A> heating",
    ]


async def test_a_leg_can_be_written_down_for_good(editor: Editor) -> None:
    editor.open(SITE)
    span = types.Range(types.Position(13, 0), types.Position(13, 9))
    found = await editor.client.text_document_inlay_hint_async(types.InlayHintParams(editor.identifier(), span))
    (edits,) = [h.text_edits for h in found or () if h.text_edits]
    before = await editor.diagnostics()
    editor.change(editor.fixture.first, edits)
    assert f'feeder "{D} P1"[CA] -> HTR' in editor.text()
    assert len(await editor.diagnostics()) == len(before)


@pytest.mark.parametrize("name", SETTINGS)
async def test_each_kind_is_switched_by_its_setting(tmp_path: Path, name: str) -> None:
    server = WyelineServer("test")
    path = server.session.open((tmp_path / "a.wye").as_uri(), 1, SITE + SOLVABLE)
    file = server.session.text(path)
    solve_now(server, path)

    def texts() -> list[str]:
        return [hint.text for _, hint in hints(server, path, file, 0, 99)]

    everything = texts()
    server.settings = {"inlayHints": {n.rpartition(".")[2]: n == name for n in SETTINGS}}
    alone = texts()
    server.settings = {"inlayHints": {name.rpartition(".")[2]: False}}
    assert alone and sorted([*alone, *texts()]) == sorted(everything)
    if name.endswith("drops"):
        assert all(text.startswith("drop ") and text.endswith(" %") for text in alone), alone
