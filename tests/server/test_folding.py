"""What folds: statements over their details, comments, includes."""

from __future__ import annotations

import pytest
from editing import Editor
from lsprotocol import types

CASES = [
    ("panel P1\n  1  20 A 1p\n\n  // note\n  2  20 A 1p\n\npanel P2\n", [(0, 4, None)]),
    ("/// About\n/// the panel\npanel P1\n  bus 100 A\n", [(0, 1, "comment"), (2, 3, None)]),
    ("// one\n// two\n\npanel P1\n// three\n", [(0, 1, "comment")]),
    ('include "a.wye"\ninclude "b.wye"\n\npanel P1\ninclude "c.wye"\n', [(0, 1, "imports")]),
    ("panel P1\n  zz qq\n  bus 100 A\n", [(0, 2, None)]),
    ("  bus 100 A\n  main 3\n", []),
    ("", []),
]


@pytest.mark.parametrize(("text", "expected"), CASES, ids=range(len(CASES)))
async def test_what_folds(editor: Editor, text: str, expected: list[tuple[int, int, str | None]]) -> None:
    editor.open(text)
    found = await editor.client.text_document_folding_range_async(types.FoldingRangeParams(editor.identifier()))
    assert [(r.start_line, r.end_line, r.kind) for r in found or ()] == expected
