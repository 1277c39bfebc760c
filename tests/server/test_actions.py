"""Code actions: fixes of findings, acceptance, refactorings, fix all and format, applied as an editor applies them."""

from __future__ import annotations

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

from wyeline_grammar.formatter import format_text

SITE = f"""project "{DIFFICULT}" basis us-2023
utility GRID 480Y/277 fault 14 kA, x/r 4
switchboard MSB 480Y/277 bus 400 A, main 400 A
panel LP-1 480Y/277 bus 225 A, main 100 A, existing "{DIFFICULT}"
  rated 22 kA
  1 20 A 1p 1.2 kVA lighting
feeder GRID -> MSB
feeder MSB -> LP-1 100 A 3p
"""


def line_of(editor: Editor, words: str) -> types.Range:
    """An empty range at the start of the line that holds ``words``."""
    text = editor.text()
    number = text[: text.index(words)].count("\n")
    return types.Range(types.Position(number, 0), types.Position(number, 0))


def named(actions: list[types.CodeAction], words: str) -> types.CodeAction:
    found = [a for a in actions if words in a.title]
    assert len(found) == 1, [a.title for a in actions]
    return found[0]


def applied(editor: Editor, action: types.CodeAction) -> None:
    assert action.edit is not None
    editor.apply(action.edit)


async def test_a_fix_mends_what_its_finding_marks(editor: Editor) -> None:
    editor.open(f'panel P1 208Y/120 "{DIFFICULT}" bus 1,200 A\n//                          x\n'.split("\n//")[0] + "\n")
    slip = next(d for d in await editor.diagnostics() if d.code == "known-slip")
    assert editor.words(slip.range) == "1,200 A"
    actions = await editor.actions(slip.range, "quickfix")
    action = named(actions, "Write `1200 A`")
    assert action.kind == "quickfix" and action.is_preferred and list(action.diagnostics or ()) == [slip]
    assert not named(actions, "Write `1.200 A`").is_preferred
    applied(editor, action)
    assert "bus 1200 A" in editor.text()
    assert "known-slip" not in await editor.rules()


async def test_who_types_on_is_offered_the_fixes_of_the_line(editor: Editor) -> None:
    """The cursor stands behind what was typed, the finding at its beginning."""
    editor.open(f'utility GRID 208Y/120 fault 10 kA, x/r 3\nexisting panel P1 208Y/120 bus 100 A  "{DIFFICULT}"$0\n')
    here = editor.cursor()
    action = named(await editor.actions(types.Range(here, here), "quickfix"), "Write `panel P1 ... existing`")
    applied(editor, action)
    assert editor.text().splitlines()[1].split() == [
        "panel",
        "P1",
        *f'208Y/120 bus 100 A "{DIFFICULT}", existing'.split(),
    ]
    touched = next(d for d in await editor.diagnostics() if d.code == "unfed-equipment")
    titles = [a.title for a in await editor.actions(types.Range(touched.range.start, touched.range.start), "quickfix")]
    assert titles and len(titles) == len(set(titles))


async def test_a_finding_can_be_accepted_with_a_reason(editor: Editor) -> None:
    editor.open(f'utility GRID 208Y/120 fault 10 kA, x/r 3\npanel P1 208Y/120 bus 100 A "{DIFFICULT}"\n  1 20 A 1p\n')
    unfed = next(d for d in await editor.diagnostics() if d.code == "unfed-equipment")
    action = named(await editor.actions(unfed.range, "quickfix"), "Accept `unfed-equipment`")
    applied(editor, action)
    assert editor.text().endswith('  1 20 A 1p\n  allow unfed-equipment "say here why it is accepted"\n')
    assert "unfed-equipment" not in await editor.rules()


async def test_what_physics_forbids_is_not_offered_to_be_accepted(editor: Editor) -> None:
    editor.open(
        "utility GRID 480Y/277 fault 10 kA, x/r 3\n"
        f'panel P1 208Y/120 bus 100 A "{DIFFICULT}"\n'
        'feeder GRID -> P1 100 A 3p\n  allow unused-type "nothing of that sort is here"\n'
    )
    for code in ("leg-voltage-mismatch", "allowance-unused"):
        found = next(d for d in await editor.diagnostics() if d.code == code)
        titles = [a.title for a in await editor.actions(found.range, "quickfix")]
        assert titles and not [title for title in titles if title.startswith(f"Accept `{code}`")], code


async def test_fix_all_takes_the_certain_ones_only_and_only_when_asked(editor: Editor) -> None:
    editor.open(f'Panel P1 208Y/120 "{DIFFICULT}" bus 100 A\nPanel P2 208Y/120 bus 1,200 A\n')
    whole = types.Range(types.Position(0, 0), types.Position(2, 0))
    assert not [a for a in await editor.actions(whole) if str(a.kind).startswith("source")]
    applied(editor, named(await editor.actions(whole, "source.fixAll"), "Mend"))
    first, second, _ = editor.text().split("\n")
    assert first.split()[:2] == ["panel", "P1"] and second.split()[:2] == ["panel", "P2"]


async def test_organize_is_format(editor: Editor) -> None:
    editor.open(f'panel   P1   208Y/120 "{DIFFICULT}"   bus 100 A\n\n\n')
    action = named(await editor.actions(line_of(editor, "P1"), "source.organize"), "Format")
    applied(editor, action)
    assert editor.text() == format_text('panel   P1   208Y/120 "' + DIFFICULT + '"   bus 100 A\n')
    assert await editor.actions(line_of(editor, "P1"), "source.organize") == []


async def test_a_type_is_taken_out_and_nothing_else_changes(editor: Editor) -> None:
    editor.open(SITE)
    before = await editor.rules()
    applied(editor, named(await editor.actions(line_of(editor, "panel LP-1"), "refactor"), "Make a type of `LP-1`"))
    text = editor.text()
    assert "type panel" in text, text
    assert "LP-1-TYPE" in text and "like LP-1-TYPE" in text
    head = next(line for line in text.split("\n") if line.startswith("panel") and line.split()[1] == "LP-1")
    assert "existing" in head and DIFFICULT in head and "bus" not in head
    assert text.count("rated 22 kA") == 1 and "\n\n\n" not in text
    assert await editor.rules() == before


@pytest.mark.parametrize(("what", "kind"), [("panel", "panel"), ("transformer", "transformer")])
async def test_a_piece_is_put_into_a_feeder(editor: Editor, what: str, kind: str) -> None:
    editor.open(SITE)
    await editor.diagnostics()
    actions = await editor.actions(line_of(editor, "feeder MSB"), "refactor.rewrite")
    applied(editor, named(actions, f"Insert a {what} into `MSB -> LP-1`"))
    errors = [d for d in await editor.diagnostics() if d.severity == types.DiagnosticSeverity.Error]
    assert [str(d.code) for d in errors] == [] or what == "transformer", errors
    new = next(line for line in editor.text().split("\n") if line.startswith(kind) and "LP-1 " not in line)
    tag = new.split()[1]
    assert f"-> {tag}" in editor.text() and f"feeder {tag}" in editor.text()


UNEVEN = f"""utility UTIL 208Y/120  fault 10 kA, x/r 4
panel LP-1 208Y/120  bus 225 A, spaces 12 "{DIFFICULT}"
  1  60 A 1p  6 kVA process  "Oven {DIFFICULT}"
  2  60 A 1p  6 kVA process  "Second oven"
  3  60 A 1p  2 kVA process  "Mixer"
  allow circuit-load-high at 1 "as surveyed"
feeder UTIL -> LP-1  200 A 3p
"""


async def test_circuits_move_to_even_out_a_board_with_the_share_in_the_title(editor: Editor) -> None:
    editor.open(UNEVEN)
    action = named(await editor.actions(line_of(editor, "panel LP-1"), "refactor"), "Balance the legs of `LP-1`")
    assert action.kind == "refactor.rewrite" and "157 % above the mean, to 29 %" in action.title, action.title
    applied(editor, action)
    text = editor.text()
    moved = next(line.split()[0] for line in text.split("\n") if f"Oven {DIFFICULT}" in line)
    assert moved not in ("1", "2", "3"), text
    assert f"allow circuit-load-high at {moved} " in text, "what is accepted of the circuit goes along"
    again = await editor.actions(line_of(editor, "panel LP-1"), "refactor")
    assert not [a.title for a in again if "Balance" in a.title], "nothing helps any more"


async def test_a_search_is_not_made_for_every_move_of_the_cursor(editor: Editor) -> None:
    editor.open(UNEVEN)
    await editor.diagnostics()
    context = types.CodeActionContext([], trigger_kind=types.CodeActionTriggerKind.Automatic)
    params = types.CodeActionParams(editor.identifier(), line_of(editor, "panel LP-1"), context)
    found = await editor.client.text_document_code_action_async(params) or []
    assert not [a.title for a in found if "Balance" in a.title]


async def test_a_board_moves_to_a_file_of_its_own(editor: Editor) -> None:
    text = SITE + f'panel LP-2 480Y/277 bus 100 A, main lugs "{DIFFICULT}"\nfeeder LP-1 -> LP-2 60 A 3p\n'
    editor.open("wye 1\n" + text)
    before = await editor.rules()
    applied(editor, named(await editor.actions(line_of(editor, "panel LP-1"), "refactor"), "`LP-1` and what it feeds"))
    assert 'include "lp-1.wye"\n' in editor.text() and "panel LP-1" not in editor.text()
    assert editor.text("lp-1.wye").startswith("wye 1\n\npanel LP-1") and "LP-2 60 A" in editor.text("lp-1.wye")
    there = sorted([*await editor.rules(), *await editor.rules("lp-1.wye")])
    assert there == sorted(before) and "unreadable-include" not in there


async def test_selected_statements_move_to_a_file_whose_name_is_free(editor: Editor) -> None:
    (editor.folder / "msb.wye").write_text("// another\n")
    editor.open(SITE)
    await editor.diagnostics()
    start = line_of(editor, "switchboard MSB").start
    whole = types.Range(start, types.Position(start.line + 2, 0))
    action = named(await editor.actions(whole, "refactor.extract"), "Move 2 statements")
    applied(editor, action)
    assert 'include "msb-2.wye"' in editor.text() and "panel LP-1" in editor.text("msb-2.wye")
    assert (editor.folder / "msb.wye").read_text() == "// another\n"


async def test_a_client_that_creates_no_files_is_offered_no_split(plain_editor: Editor) -> None:
    plain_editor.open(SITE)
    whole = types.Range(types.Position(1, 0), types.Position(5, 0))
    context = types.CodeActionContext([])
    params = types.CodeActionParams(plain_editor.identifier(), whole, context)
    found = await plain_editor.client.text_document_code_action_async(params) or []
    assert not [a.title for a in found if "new file" in a.title]


async def test_a_client_without_literals_gets_commands_that_apply_the_edit(plain_editor: Editor) -> None:
    editor = plain_editor
    editor.open("panel P1 208Y/120 bus 1,200 A\n")
    slip = next(d for d in await editor.diagnostics() if d.code == "known-slip")
    params = types.CodeActionParams(editor.identifier(), slip.range, types.CodeActionContext([slip]))
    found = await editor.client.text_document_code_action_async(params)
    command = next(c for c in found or [] if isinstance(c, types.Command) and "1200 A" in c.title)
    editor.client.edits.clear()
    await editor.client.workspace_execute_command_async(
        types.ExecuteCommandParams(command.command, arguments=command.arguments)
    )
    assert editor.client.edits and editor.client.edits[0].edit.changes
    editor.apply(editor.client.edits[0].edit)
    assert "bus 1200 A" in editor.text()
