"""Semantic tokens: what each word is, the difference after an edit, and a part of a document."""

from __future__ import annotations

import time
from pathlib import Path

import pytest
from editing import DIFFICULT, ENCODINGS, Editor
from lsprotocol import types

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.tokens import tokenize
from wyeline_server.announced import TOKEN_MODIFIERS, TOKEN_TYPES
from wyeline_server.positions import Positions
from wyeline_server.tokens import numbers, piece_of, pieces

D = DIFFICULT
SITE = f"""\
/// {D} doc
panel "{D} P1" S1 like LAB 225 A "{D}" existing // {D} end
  1  20 A 1p "x"

feeder F-1: "{D} P1".through[AB] -> LP-2 100 A 2p 2#3 Cu in R-1
system S1 208Y/120
panel OLD 208Y/120 demolish
"""


def _words(editor: Editor, data: list[int] | tuple[int, ...]) -> list[tuple[str, str, str]]:
    """(word, type, modifiers) of every token."""
    found = []
    line = character = 0
    for i in range(0, len(data), 5):
        down, right, length, kind, modifiers = data[i : i + 5]
        line, character = line + down, right if down else character + right
        place = types.Range(types.Position(line, character), types.Position(line, character + length))
        names = ",".join(name for bit, name in enumerate(TOKEN_MODIFIERS) if modifiers >> bit & 1)
        found.append((editor.words(place), TOKEN_TYPES[kind], names))
    return found


async def _full(editor: Editor) -> types.SemanticTokens:
    found = await editor.client.text_document_semantic_tokens_full_async(
        types.SemanticTokensParams(editor.identifier())
    )
    assert found is not None
    return found


async def test_every_word_says_what_it_is(editor: Editor) -> None:
    editor.open(SITE)
    assert _words(editor, list((await _full(editor)).data)) == [
        (f"/// {D} doc", "comment", "documentation"),
        ("panel", "type", ""),
        (f'"{D} P1"', "variable", "declaration"),
        ("S1", "enum", ""),
        ("like", "property", ""),
        ("LAB", "class", ""),
        ("225 A", "number", ""),
        (f'"{D}"', "string", ""),
        ("existing", "modifier", ""),
        (f"// {D} end", "comment", ""),
        ("1", "number", ""),
        ("20 A", "number", ""),
        ("1p", "number", ""),
        ('"x"', "string", ""),
        ("feeder", "keyword", ""),
        ("F-1", "function", "declaration"),
        (":", "operator", ""),
        (f'"{D} P1"', "variable", ""),
        ("through", "property", ""),
        ("[AB]", "parameter", ""),
        ("->", "operator", ""),
        ("LP-2", "variable", ""),
        ("100 A", "number", ""),
        ("2p", "number", ""),
        ("2#3", "number", ""),
        ("Cu", "enumMember", ""),
        ("in", "keyword", ""),
        ("R-1", "namespace", ""),
        ("system", "type", ""),
        ("S1", "enum", "declaration"),
        ("208Y/120", "enumMember", ""),
        ("panel", "type", ""),
        ("OLD", "variable", "declaration,deprecated"),
        ("208Y/120", "enumMember", ""),
        ("demolish", "modifier", ""),
    ]


EDITS = [
    ("LP-2", "LP-22"),
    ("  1  20 A", "// gone\n\n  1  20 A"),
    ("existing", ""),
    ('  1  20 A 1p "x"\n', ""),
    ("", "zz\n"),
]


@pytest.mark.parametrize(("old", "new"), EDITS, ids=range(len(EDITS)))
async def test_the_difference_makes_the_new_tokens_of_the_old(editor: Editor, old: str, new: str) -> None:
    editor.open(SITE)
    before = await _full(editor)
    editor.type(old, new)
    found = await editor.client.text_document_semantic_tokens_full_delta_async(
        types.SemanticTokensDeltaParams(editor.identifier(), str(before.result_id))
    )
    assert isinstance(found, types.SemanticTokensDelta)
    data = list(before.data)
    for edit in found.edits:
        data[edit.start : edit.start + edit.delete_count] = edit.data or ()
    after = await _full(editor)
    assert data == list(after.data)
    assert sum(len(edit.data or ()) for edit in found.edits) < len(data) or new.startswith("//")


async def test_a_difference_to_what_was_never_given_is_everything(editor: Editor) -> None:
    editor.open(SITE)
    found = await editor.client.text_document_semantic_tokens_full_delta_async(
        types.SemanticTokensDeltaParams(editor.identifier(), "none")
    )
    assert isinstance(found, types.SemanticTokens) and found.data == (await _full(editor)).data


@pytest.mark.parametrize(("first", "last"), [(0, 0), (2, 4), (3, 3), (1, 99)])
async def test_a_range_holds_the_tokens_of_its_lines(editor: Editor, first: int, last: int) -> None:
    editor.open(SITE)
    span = types.Range(types.Position(first, 0), types.Position(last, 0))
    found = await editor.client.text_document_semantic_tokens_range_async(
        types.SemanticTokensRangeParams(editor.identifier(), span)
    )
    assert found is not None
    lines = editor.text().split("\n")[first : last + 1]
    counts = [len(tokenize(line)[0]) + ("//" in line) + (".through" in line) for line in lines]
    assert len(_words(editor, list(found.data))) == sum(counts)


@pytest.mark.parametrize("encoding", ENCODINGS)
@pytest.mark.parametrize("name", ["field-station/labs.wye", "dairy-works/works.wye"])
async def test_tokens_of_the_examples_stand_in_their_order_and_never_overlap(name: str, encoding: str) -> None:
    path = Path(__file__).parents[2] / "grammar" / "examples" / name
    file = TextFile(str(path), path.read_text("utf-8"))
    placed = pieces(file, encoding)
    data = [int(number) for number in "".join(numbers(placed)).split(",")]
    assert len(data) == sum(piece.size for _, piece in placed) and len(data) > 500
    units = Positions(encoding).units
    line = character = reached = 0
    for i in range(0, len(data), 5):
        down, right, length = data[i : i + 3]
        line, character, reached = line + down, right if down else character + right, 0 if down else reached
        assert character >= reached and length > 0
        reached = character + length
        assert reached <= units(file.lines[line], len(file.lines[line]))


async def test_an_edit_of_a_large_document_makes_one_block_anew() -> None:
    file = TextFile("big.wye", "\n".join(f"panel LP-{i} 208Y/120 bus 100 A\n  1  20 A 1p" for i in range(5000)))
    pieces(file, "utf-16")
    before = piece_of.made
    file.edit((0, 0), (0, 0), "// first\n\n")
    file.edit((5002, 9), (5002, 9), "9")
    began = time.process_time()
    assert sum(piece.size for _, piece in pieces(file, "utf-16")) == 5 * (5000 * 8 + 1)
    assert time.process_time() - began < 0.2  # about 0.01 on an idle machine
    assert piece_of.made - before == 2
