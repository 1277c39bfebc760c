"""The main job in an editor: a connection that cannot be made, why, and the change that makes it."""

from __future__ import annotations

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

BOARD = f"""wye 1
project "Boat shed {DIFFICULT}"
  basis us-2023
  frequency 60 Hz

utility     GRID    480Y/277            fault 14 kA, fault-min 9 kA, x/r 4
switchboard MSB     480Y/277            bus 400 A, main 400 A, rated 22 kA
feeder GRID        -> MSB                2 sets 3x250kcmil + N 250kcmil + G #2 Cu  12 m
"""
PANEL = f'panel       WET-1   120/240             bus 125 A, rated 10 kA, spaces 12 "Wet dock {DIFFICULT}"\n'
FEEDER = "feeder MSB         -> WET-1   100 A 2p\n"


async def test_from_refusal_to_a_model_without_it(editor: Editor) -> None:
    editor.open(BOARD)
    assert not await errors(editor)
    for word in (PANEL, *FEEDER.rstrip("\n").split(" "), "\n"):
        editor.type("", word if word in (PANEL, "\n") else word + " ")
        await editor.diagnostics()

    refusals = [d for d in await errors(editor) if "WET-1" in d.message and "MSB" in d.message]
    assert refusals, [d.message for d in await errors(editor)]
    refusal = refusals[0]
    assert "480 V" in refusal.message and "277 V" in refusal.message and "240 V" in refusal.message
    assert refusal.related_information, "the supply's own line is shown too"

    shown = await editor.client.text_document_hover_async(
        types.HoverParams(editor.identifier(), types.Position(refusal.range.start.line, 1))
    )
    assert shown is not None and isinstance(shown.contents, types.MarkupContent)
    assert "A–N 277 V" in shown.contents.value and "120 V to neutral" in shown.contents.value

    actions = await editor.actions(refusal.range, "quickfix")
    fix = next(a for a in actions if "transformer" in a.title)
    assert "WET-1" in fix.title and fix.edit is not None
    editor.apply(fix.edit)
    assert "transformer" in editor.text()
    assert [d.message for d in await errors(editor)] == []


async def errors(editor: Editor) -> list[types.Diagnostic]:
    return [d for d in await editor.diagnostics() if d.severity == types.DiagnosticSeverity.Error]


@pytest.mark.parametrize("half", ["feeder MSB -> ", "panel WET-2 120/", "feeder MSB[A"])
async def test_a_half_typed_line_leaves_the_figures_elsewhere(editor: Editor, half: str) -> None:
    editor.open(BOARD)
    editor.type("", half)
    await editor.diagnostics()
    text = editor.text()
    place = editor.place_at(text, text.index("MSB     480Y"))
    params = types.HoverParams(editor.identifier(), editor.position(place))
    shown = await editor.client.text_document_hover_async(params)
    assert shown is not None and isinstance(shown.contents, types.MarkupContent)
    assert "A–B 480 V" in shown.contents.value
