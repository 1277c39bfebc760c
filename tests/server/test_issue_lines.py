"""Issues of a project in the editor: offered, explained, coloured, folded, and never taken for names of the model."""

from __future__ import annotations

import re
from datetime import date

import pytest
from editing import Editor
from lsprotocol import types
from pygls.exceptions import JsonRpcException

SITE = """project "Küster 🔌"
  basis us-2023, drawn MK
  issue A 2026-03-02 "for tender", checked RO
  issue LP-1 2026-04-14 "named like a panel"
panel LP-1 208Y/120 bus 225 A
utility GRID 208Y/120 fault 10 kA, x/r 4
feeder GRID -> LP-1
"""


async def complete(editor: Editor, line: str) -> dict[str, str]:
    editor.open(f'project "Küster 🔌"\n  basis us-2023\n{line}')
    params = types.CompletionParams(editor.identifier(), editor.cursor())
    found = await editor.client.text_document_completion_async(params)
    items = found.items if isinstance(found, types.CompletionList) else found or []
    return {i.label: i.text_edit.new_text for i in items if i.text_edit is not None}


async def test_an_issue_is_offered_under_a_project_and_its_parts_in_their_order(editor: Editor) -> None:
    offered = await complete(editor, "  iss$0")
    assert re.match(r"issue \S+ \S*2026-\d\d-\d\d", offered["issue"])
    assert {"drawn", "checked", "engineer", "revision"} <= set(await complete(editor, "  $0"))
    assert await complete(editor, "  issue $0") == {}, "nobody guesses its name"
    behind = await complete(editor, "  issue C $0")
    assert next(iter(behind)) == date.today().isoformat() and {"drawn", "checked"} <= set(behind)
    later = set(await complete(editor, '  issue C 2026-05-01 "Küche", $0'))
    assert later == {"drawn", "checked"}
    editor.open("panel LP-1 208Y/120\n  $0")
    params = types.CompletionParams(editor.identifier(), editor.cursor())
    found = await editor.client.text_document_completion_async(params)
    assert isinstance(found, types.CompletionList) and "issue" not in {i.label for i in found.items}


@pytest.mark.parametrize(
    ("at", "says"),
    [
        ("issue A", "The newest is the revision"),
        ("LP-1 2026", "The newest is the revision"),
        ("2026-03-02", "The newest is the revision"),
        ("checked RO", "Who checked it"),
        ("drawn MK", "Who drew it"),
    ],
)
async def test_hover_explains_an_issue_and_no_equipment_of_its_name(editor: Editor, at: str, says: str) -> None:
    editor.open(SITE)
    place = editor.place_at(editor.text(), editor.text().index(at) + 1)
    found = await editor.client.text_document_hover_async(
        types.HoverParams(editor.identifier(), editor.position(place))
    )
    assert found is not None and isinstance(found.contents, types.MarkupContent)
    assert says in found.contents.value and "208" not in found.contents.value


async def test_renaming_equipment_leaves_an_issue_of_its_name_alone(editor: Editor) -> None:
    editor.open(SITE.replace("panel LP-1", "panel L$0P-1"))
    edit = await editor.client.text_document_rename_async(types.RenameParams(new_name="LP-9", **editor.at(0)))
    assert edit is not None
    editor.apply(edit)
    assert "issue LP-1 2026-04-14" in editor.text() and "panel LP-9" in editor.text()


async def test_the_name_of_an_issue_is_not_renamed(editor: Editor) -> None:
    editor.open(SITE.replace("issue LP-1", "issue L$0P-1"))
    with pytest.raises(JsonRpcException) as caught:
        await editor.client.text_document_rename_async(types.RenameParams(new_name="LP-9", **editor.at(0)))
    assert "is no name" in str(caught.value.message)


async def test_a_project_folds_over_its_issues(editor: Editor) -> None:
    editor.open(SITE)
    found = await editor.client.text_document_folding_range_async(types.FoldingRangeParams(editor.identifier()))
    assert [(r.start_line, r.end_line) for r in found or ()] == [(0, 3)]


async def test_signature_help_shows_the_form_of_an_issue(editor: Editor) -> None:
    editor.open('project "X"\n  issue B $0')
    found = await editor.client.text_document_signature_help_async(
        types.SignatureHelpParams(editor.identifier(), editor.cursor())
    )
    assert found is not None and found.signatures[0].label.startswith("issue A 2026-03-02")
