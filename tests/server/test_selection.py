"""Selections grow from the word to the text, each around the one before."""

from __future__ import annotations

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

D = DIFFICULT


async def _growing(editor: Editor) -> list[str]:
    positions = [editor.cursor(n) for n in sorted(editor.fixture.cursors)]
    (found,) = (
        await editor.client.text_document_selection_range_async(
            types.SelectionRangeParams(editor.identifier(), positions)
        )
        or ()
    )
    words: list[str] = []
    step: types.SelectionRange | None = found
    while step is not None:
        words.append(editor.words(step.range))
        step = step.parent
    return words


DETAIL = f'  "{D}" main 225 A 3p, rated 10 kA  // {D}'


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        (f'  "{D}" main 22$05 A 3p, rated 10 kA  // {D}', ["225 A", "225 A 3p", "main 225 A 3p"]),
        (f'  "{D}" ma$0in 225 A 3p, rated 10 kA  // {D}', ["main", "main 225 A 3p"]),
        (f'  "{D}" main 225 A 3p, rated 10 kA  // {D}$0', [f"// {D}"]),
    ],
)
async def test_from_the_word_to_the_text(editor: Editor, line: str, expected: list[str]) -> None:
    editor.open(f"// top\n\n/// doc\npanel P1\n{line}\n\n// end\n")
    statement = f"/// doc\npanel P1\n{DETAIL}"
    words = [] if "//" in expected[0] else [DETAIL.strip().partition("  //")[0]]
    text = editor.text()
    assert await _growing(editor) == [*expected, *words, DETAIL.strip(), DETAIL, statement, statement + "\n", text]


async def test_a_name_grows_to_its_port_and_its_feeder(editor: Editor) -> None:
    editor.open(f'feeder "{D} $0A".through -> B\n')
    line = f'feeder "{D} A".through -> B'
    assert await _growing(editor) == [f'"{D} A"', f'"{D} A".through', line, line + "\n"]


async def test_every_position_is_answered_in_its_order(editor: Editor) -> None:
    editor.open("\npanel $0P1 $1bus 100 A\n")
    positions = [types.Position(0, 0), editor.cursor(1), editor.cursor(0), types.Position(99, 99)]
    found = await editor.client.text_document_selection_range_async(
        types.SelectionRangeParams(editor.identifier(), positions)
    )
    assert [editor.words(s.range) for s in found or ()] == ["", "bus", "P1", ""]
