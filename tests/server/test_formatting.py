"""Formatting through the protocol equals the formatter, whatever the encoding and whatever the text."""

from __future__ import annotations

from pathlib import Path

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

from wyeline_grammar.formatter import format_text

D = DIFFICULT
UNTIDY = f"""\
/// {D}
panel   "{D} P1"  208Y/120   bus 225 A,main   200 A   //   {D}
 1   20 A   1p 1.2 kVA  receptacle  "{D}"   2#12 + G #12 Cu
      zz   "{D}"   qq
feeder   TX->"{D} P1"   225 A   3p


   """
OPTIONS = types.FormattingOptions(tab_size=2, insert_spaces=True)
TEXTS = [
    UNTIDY,
    "panel P1",
    "panel P1\n\n\n\n",
    "",
    "\n\n",
    "  \n",
    "panel  P1   ",
    "// a  \n\t// b\n",
    "panel P1\n  bus  3 A\n\n ",
]


@pytest.mark.parametrize("text", TEXTS, ids=range(len(TEXTS)))
async def test_a_document_is_set_as_on_the_command_line(editor: Editor, text: str) -> None:
    editor.open("wye 1\n")
    editor.texts[editor.fixture.first] = "wye 1\n"
    editor.type("wye 1\n", text)
    params = types.DocumentFormattingParams(editor.identifier(), OPTIONS)
    edits = await editor.client.text_document_formatting_async(params)
    editor.change(editor.fixture.first, list(edits or ()))
    assert editor.text() == format_text(text)
    assert not await editor.client.text_document_formatting_async(params)


async def test_edits_leave_words_that_stay_alone(editor: Editor) -> None:
    editor.open(f'panel       P1      208Y/120            bus 9 A,   "{D}"\n')
    edits = await editor.client.text_document_formatting_async(
        types.DocumentFormattingParams(editor.identifier(), OPTIONS)
    )
    assert edits and [editor.words(edit.range).strip() for edit in edits] == [""]


async def test_a_range_sets_its_lines_only(editor: Editor) -> None:
    editor.open(UNTIDY)
    lines, tidy = UNTIDY.split("\n"), format_text(UNTIDY).split("\n")
    span = types.Range(types.Position(2, 3), types.Position(4, 0))
    edits = await editor.client.text_document_range_formatting_async(
        types.DocumentRangeFormattingParams(editor.identifier(), span, OPTIONS)
    )
    editor.change(editor.fixture.first, list(edits or ()))
    assert editor.text().split("\n") == [*lines[:2], *tidy[2:4], *lines[4:]]


async def test_a_line_break_sets_the_line_that_was_left(editor: Editor) -> None:
    editor.open(f'panel   "{D}"   bus 9 A\n$0\npanel   P2\n')
    edits = await editor.client.text_document_on_type_formatting_async(
        types.DocumentOnTypeFormattingParams(ch="\n", options=OPTIONS, **editor.at())
    )
    editor.change(editor.fixture.first, list(edits or ()))
    first, *rest = editor.text().split("\n")
    assert first + "\n" == format_text(f'panel   "{D}"   bus 9 A')
    assert rest == ["", "panel   P2", ""]


async def test_line_ends_stay_as_they_are(editor: Editor) -> None:
    editor.open("wye 1\n")
    editor.type("wye 1\n", "panel  P1\r\npanel P2  \r\n")
    edits = await editor.client.text_document_formatting_async(
        types.DocumentFormattingParams(editor.identifier(), OPTIONS)
    )
    assert edits and all("\n" not in e.new_text and "\r" not in e.new_text for e in edits)
    assert [e.range.start.line for e in edits] == [0, 1]


@pytest.mark.parametrize("name", ["field-station/labs.wye", "dairy-works/halls.wye"])
async def test_the_examples_need_no_edit(editor: Editor, name: str) -> None:
    path = Path(__file__).parents[2] / "grammar" / "examples" / name
    editor.open(path.read_text("utf-8").replace("//--", "//"))
    assert not await editor.client.text_document_formatting_async(
        types.DocumentFormattingParams(editor.identifier(), OPTIONS)
    )
