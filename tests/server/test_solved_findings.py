"""Solved figures at rest: what studies find stays, moves, goes and comes back, is never stale, and equals a check."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator

import pytest_asyncio
from editing import DIFFICULT, WEAK, Editor, solve_now
from hypothesis import given
from hypothesis import settings as settings_of_hypothesis
from hypothesis import strategies as st
from lsprotocol import types
from test_diagnostics import pull, puller, pulling  # noqa: F401

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.solved_figures import solved_figures
from wyeline_server.diagnostics import Diagnostics
from wyeline_server.server import WyelineServer
from wyeline_server.studying import REST_S

D = DIFFICULT
# 22 kA at the source, 6 m away a board that is made for 14 kA (NEC 110.9).
SITE = f"""\
project "Kiln hall {D}"
  basis us-2023
  frequency 60 Hz, revision "A"
utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4
feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40
panel DP 480Y/277  /* {D} */ bus 400 A, rated 14 kA
  1,3,5  60 A 3p  30 kW heating  "Kiln"
""".replace(f"/* {D} */ ", "")
RESTED_S = REST_S + 0.5
"""Rest, and the study of a small model."""


async def solved(editor: Editor, rule: str = WEAK) -> types.Diagnostic:
    """Wait until a finding is shown of the text as it stands."""
    await editor.client.until(lambda: shown_now(editor, rule))
    return shown_now(editor, rule)[0]


async def gone(editor: Editor, rule: str = WEAK) -> None:
    """Wait until a finding is not shown of the text as it stands, and see that it stays away at rest."""
    await editor.diagnostics()
    await editor.client.until(lambda: not shown_now(editor, rule))
    await asyncio.sleep(RESTED_S)
    assert not shown_now(editor, rule)


def shown_now(editor: Editor, rule: str) -> list[types.Diagnostic]:
    name = editor.fixture.first
    told = editor.client.published.get(editor.uri(name))
    current = told is not None and told.version == editor.versions[name]
    return [d for d in told.diagnostics if d.code == rule] if told is not None and current else []


def publishes(editor: Editor, name: str = "site.wye") -> list[types.PublishDiagnosticsParams]:
    return [p for p in editor.client.history if p.uri == editor.uri(name)]


def rules_of(params: types.PublishDiagnosticsParams) -> list[str]:
    return [str(d.code) for d in params.diagnostics]


async def test_a_solved_finding_comes_at_rest_with_its_fix(editor: Editor) -> None:
    editor.client.history.clear()
    editor.open(SITE)
    found = await solved(editor)
    assert editor.words(found.range) == "rated 14 kA" and "\nneeded: " in found.message
    first, *_, last = publishes(editor)
    assert WEAK not in rules_of(first), "what the text says does not wait for it"
    assert first.version == last.version == 1
    (fix,) = [a for a in await editor.actions(found.range, "quickfix") if "rated" in a.title]
    assert fix.edit is not None
    editor.apply(fix.edit)
    await gone(editor)


async def test_at_rest_the_editor_says_what_a_check_says(editor: Editor) -> None:
    editor.open(SITE)
    await solved(editor)
    for old, new in (("6 m", "60 m"), ("x/r 4", "x/r 9"), ("30 kW", "45 kW"), ("rated 14 kA", "rated 6 kA")):
        editor.type(old, new)
        await editor.diagnostics()
    found = await solved(editor)
    fresh = Analysis("site.wye", Files(lambda _: editor.text()), str(editor.folder))
    expected = [(f.rule, f.message, f.place.row) for f in fresh.all_findings()]
    assert WEAK in [rule for rule, *_ in expected]
    shown = [(str(d.code), d.message.split("\n")[0], d.range.start.line) for d in await editor.diagnostics()]
    assert shown == expected and found.message.split("\n")[0] in [message for _, message, _ in expected]


async def test_a_solved_finding_moves_with_its_statement_and_never_flickers_in_a_burst(editor: Editor) -> None:
    editor.open(SITE)
    before = await solved(editor)
    editor.client.history.clear()
    for count, letter in enumerate("\n// the kilns\n"):
        editor.replace("site.wye", editor.place_at("", 0), editor.place_at("", 0), letter)
        if count % 3 == 0:
            await editor.diagnostics()
    found = await solved(editor)
    assert found.range.start.line == before.range.start.line + 2
    await asyncio.sleep(RESTED_S)
    sent = publishes(editor)
    assert all(WEAK in rules_of(p) for p in sent), "shown all the time"
    versions = [p.version or 0 for p in sent]
    assert versions == sorted(versions) and versions[-1] == editor.versions["site.wye"]
    told = [[d.range.start.line for d in p.diagnostics if d.code == WEAK] for p in sent]
    assert told == sorted(told), "down with each line, never back"


async def test_a_solved_finding_goes_with_its_statement_and_is_found_anew(editor: Editor) -> None:
    editor.open(SITE)
    await solved(editor)
    editor.client.history.clear()
    editor.type("rated 14 kA", "rated 13 kA")
    found = await solved(editor)
    assert "rated 13 kA" in found.message
    assert [WEAK in rules_of(p) for p in publishes(editor)] == [False, True], "its own element was edited"


async def test_a_model_that_is_built_anew_keeps_what_was_found(editor: Editor) -> None:
    editor.open(f'include "pumps.wye"\n{SITE}')
    await solved(editor)
    editor.client.history.clear()
    (editor.folder / "pumps.wye").write_text("motor P-1 460 3ph 5 hp zz\n")
    event = types.FileEvent(editor.uri("pumps.wye"), types.FileChangeType.Created)
    editor.client.workspace_did_change_watched_files(types.DidChangeWatchedFilesParams([event]))
    await editor.client.until(lambda: publishes(editor, "pumps.wye"))
    await asyncio.sleep(RESTED_S)
    assert publishes(editor) and all(WEAK in rules_of(p) for p in publishes(editor))


async def test_of_several_models_each_is_solved_and_shown_once(editor: Editor) -> None:
    supply, panel = SITE[: SITE.index("panel")], SITE[SITE.index("panel") :]
    weaker = supply.replace("22 kA", "9 kA").replace("15 kA", "8 kA")
    files = f'//-- one.wye\ninclude "site.wye"\n{supply}//-- two.wye\ninclude "site.wye"\n{weaker}'
    editor.open(panel + files)
    found = await solved(editor)
    assert found.message.split("\n")[0].endswith("(in one.wye)"), "the other supply is weak enough"
    assert len([d for d in await editor.diagnostics() if d.code == WEAK]) == 1
    (editor.folder / "two.wye").write_text(f'include "site.wye"\n{supply}')
    event = types.FileEvent(editor.uri("two.wye"), types.FileChangeType.Changed)
    editor.client.workspace_did_change_watched_files(types.DidChangeWatchedFilesParams([event]))
    await editor.client.until(lambda: [d for d in shown_now(editor, WEAK) if "(in " not in d.message])


async def test_no_more_than_a_thousand_are_shown_the_solved_ones_counted(editor: Editor) -> None:
    editor.open(SITE + "".join(f"panel P-{i} 208Y/120 zz\n" for i in range(1100)))
    await solved(editor)
    *shown, last = await editor.diagnostics()
    assert len(shown) == 1000
    fresh = Analysis("site.wye", Files(lambda _: editor.text()), str(editor.folder))
    assert last.message.startswith(f"{len(fresh.all_findings()) - 1000} more findings")


@pytest_asyncio.fixture(loop_scope="session")
async def settings(editor: Editor) -> AsyncIterator[Editor]:
    """An editor whose user changes settings, and changes them back."""
    yield editor
    await editor.client.configure()


@pytest_asyncio.fixture(loop_scope="session")
async def pulling_settings(puller: Editor) -> AsyncIterator[Editor]:  # noqa: F811
    """The same, of an editor that pulls."""
    yield puller
    await puller.client.configure()


async def hold(editor: Editor) -> None:
    """Nothing is solved from here on, however slowly a test goes on."""
    await editor.client.configure(studies={"restSeconds": 60})


async def let_go(editor: Editor) -> None:
    """What is due is solved now."""
    for studies in ({"atRest": False}, {"restSeconds": 0}):
        await editor.client.configure(studies=studies)


async def test_studies_can_be_switched_off_and_on(settings: Editor) -> None:
    editor = settings
    editor.open(SITE)
    await solved(editor)
    await editor.client.configure(studies={"atRest": False})
    await gone(editor)
    editor.type("6 m", "7 m")
    await asyncio.sleep(RESTED_S)
    assert WEAK not in await editor.rules()
    await editor.client.configure(studies={"restSeconds": 0})
    await solved(editor)


async def test_severities_of_the_office_hold_for_solved_findings(editor: Editor) -> None:
    (editor.folder / "wyeline.toml").write_text(f'[rules]\n{WEAK} = "warning"\n')
    editor.open(SITE)
    found = await solved(editor)
    assert found.severity == types.DiagnosticSeverity.Warning
    (editor.folder / "wyeline.toml").write_text(f'[rules]\n{WEAK} = "off"\n')
    event = types.FileEvent((editor.folder / "wyeline.toml").as_uri(), types.FileChangeType.Changed)
    editor.client.workspace_did_change_watched_files(types.DidChangeWatchedFilesParams([event]))
    await gone(editor)


async def lens_titles(editor: Editor) -> list[str]:
    found = await editor.client.text_document_code_lens_async(types.CodeLensParams(editor.identifier()))
    return [lens.command.title for lens in found or () if lens.command]


async def hint_labels(editor: Editor) -> list[str]:
    span = types.Range(types.Position(0, 0), types.Position(99, 0))
    found = await editor.client.text_document_inlay_hint_async(types.InlayHintParams(editor.identifier(), span))
    return [str(hint.label) for hint in found or ()]


async def hover_text(editor: Editor, word: str) -> str:
    text = editor.text()
    position = editor.position(editor.place_at(text, text.index(word)))
    found = await editor.client.text_document_hover_async(types.HoverParams(editor.identifier(), position))
    assert found is not None and isinstance(found.contents, types.MarkupContent)
    return found.contents.value


async def test_figures_are_shown_once_solved_and_say_when_they_are_solved_anew(settings: Editor) -> None:
    editor = settings
    await hold(editor)
    editor.open(SITE)
    assert not [t for t in await lens_titles(editor) if t.startswith("fault")], "nothing is solved for a lens"
    assert "**Fault**" not in await hover_text(editor, "DP 480Y")
    await let_go(editor)
    await solved(editor)
    (fault,) = [t for t in await lens_titles(editor) if t.startswith("fault")]
    (drop,) = [label for label in await hint_labels(editor) if label.endswith("%")]
    hover = await hover_text(editor, "DP 480Y")
    # A check's own figures: the finding names the same fault.
    message = next(d.message for d in await editor.diagnostics() if d.code == WEAK)
    amount = fault.split()[1]
    assert f"{amount} kA may flow" in message and fault == f"fault {amount} of 14 kA ({fault[-6:-3].strip('( ')} %)"
    assert "**Fault**" in hover and "**Under load**" in hover and "…" not in hover
    assert drop.startswith("drop ") and f"**Drop** {drop.removeprefix('drop ')}" in await hover_text(editor, "->")

    await hold(editor)
    editor.type("x/r 4", "x/r 5")  # another element
    assert fault + " …" in await lens_titles(editor)
    assert drop + " …" in await hint_labels(editor)
    assert "…" in await hover_text(editor, "DP 480Y")
    await let_go(editor)
    asked_again = {"workspace/codeLens/refresh", "workspace/inlayHint/refresh"}
    await asked_to(editor, asked_again)  # of the settings
    while [t for t in (*await lens_titles(editor), *await hint_labels(editor)) if "…" in t]:
        await asked_to(editor, asked_again)

    await hold(editor)
    editor.type("rated 14 kA", "rated 22 kA")  # its own
    assert not [t for t in await lens_titles(editor) if t.startswith("fault")]


async def asked_to(editor: Editor, what: set[str]) -> None:
    """Wait until the server has asked for this, and forget that it has."""
    await editor.client.until(lambda: what <= editor.client.refreshed)
    editor.client.refreshed -= what


async def pulled_when_asked(puller: Editor, previous: str) -> types.RelatedFullDocumentDiagnosticReport:  # noqa: F811
    """The weak board, told to who pulls whenever the server asks for it."""
    while True:
        await asked_to(puller, {"workspace/diagnostic/refresh"})
        found = await pull(puller, previous=previous)
        if isinstance(found, types.RelatedFullDocumentDiagnosticReport) and WEAK in [d.code for d in found.items]:
            return found


async def test_who_pulls_is_asked_to_pull_again_and_told_when_nothing_changed(pulling_settings: Editor) -> None:
    editor = pulling_settings
    await hold(editor)
    editor.open(SITE)
    first = await pull(editor)
    assert isinstance(first, types.RelatedFullDocumentDiagnosticReport)
    assert WEAK not in [d.code for d in first.items]
    await let_go(editor)
    second = await pulled_when_asked(editor, first.result_id or "")
    editor.client.refreshed.clear()
    editor.type("x/r 4", "x/r 4.0")  # solved anew, and found the same
    same = await pull(editor, previous=second.result_id)
    assert isinstance(same, types.RelatedUnchangedDocumentDiagnosticReport)
    await asyncio.sleep(RESTED_S)
    assert isinstance(await pull(editor, previous=second.result_id), types.RelatedUnchangedDocumentDiagnosticReport)
    assert not editor.client.refreshed & {"workspace/diagnostic/refresh"}, "there was nothing new"
    await hold(editor)
    editor.type('"Kiln"', '"Kilns"')
    moved = await pull(editor, previous=second.result_id)
    assert isinstance(moved, types.RelatedFullDocumentDiagnosticReport), "its own statement was edited"
    assert WEAK not in [d.code for d in moved.items]
    await let_go(editor)
    assert await pulled_when_asked(editor, moved.result_id or "")


async def test_models_that_are_not_open_are_solved_once_the_workspace_is_pulled(puller: Editor) -> None:  # noqa: F811
    puller.open(f"panel P1 208Y/120 bus 100 A\n//-- other/other.wye\n{SITE}")
    folder = types.WorkspaceFolder(puller.folder.as_uri(), "models")
    event = types.WorkspaceFoldersChangeEvent(added=[folder], removed=[])
    puller.client.workspace_did_change_workspace_folders(types.DidChangeWorkspaceFoldersParams(event))
    try:
        puller.client.refreshed.clear()
        first = await puller.client.workspace_diagnostic_async(types.WorkspaceDiagnosticParams([]))
        before = next(i for i in first.items if i.uri == puller.uri("other/other.wye"))
        known = [types.PreviousResultId(before.uri, before.result_id or "")]
        codes: list[object] = []
        while WEAK not in codes:
            await asked_to(puller, {"workspace/diagnostic/refresh"})
            second = await puller.client.workspace_diagnostic_async(types.WorkspaceDiagnosticParams(known))
            after = next(i for i in second.items if i.uri == before.uri)
            full = isinstance(after, types.WorkspaceFullDocumentDiagnosticReport)
            codes = [d.code for d in after.items] if full else []
    finally:
        gone_again = types.WorkspaceFoldersChangeEvent(added=[], removed=[folder])
        puller.client.workspace_did_change_workspace_folders(types.DidChangeWorkspaceFoldersParams(gone_again))


EDITS = (
    ("rated 14 kA", "rated 30 kA"),
    ("22 kA", "9 kA"),
    ("15 kA", "8 kA"),
    ("  6 m", "  60 m"),
    ("30 kW", "90 kW"),
    ("us-2023", "iec"),
    ("x/r 4", "x/r zz"),
    ("panel DP", "\npanel DP"),
    ("-> DP", "-> DQ"),
    ('"Kiln"', '"Kiln" // fires'),
    ("60 Hz", "60 Hz\n  allow interrupting-too-low"),
)


@settings_of_hypothesis(max_examples=25, deadline=None)
@given(st.lists(st.tuples(st.sampled_from(EDITS), st.booleans()), min_size=1, max_size=6))
def test_after_any_edits_the_copy_finds_what_a_fresh_check_finds(edits: list[tuple[tuple[str, str], bool]]) -> None:
    """Back and forth, solved now and then: what stands meanwhile is of statements that are there, in either file."""
    server = WyelineServer("test")
    shown = Diagnostics(server)
    supply, board = SITE[: SITE.index("panel")], SITE[SITE.index("panel") :]
    texts = {"/nowhere/site.wye": f'include "supply.wye"\n{board}', "/nowhere/supply.wye": supply}
    for path, text in texts.items():
        server.session.open(f"file://{path}", 1, text)
    site = next(iter(texts))
    solve_now(server, site)
    for version, ((old, new), at_rest) in enumerate(edits, 2):
        old, new = (old, new) if any(old in t and new not in t for t in texts.values()) else (new, old)
        path = next((p for p, t in texts.items() if old in t), site)
        texts[path] = texts[path].replace(old, new, 1)
        server.session.change(f"file://{path}", version, [{"text": texts[path]}])
        analysis = server.analysis_at(site)
        assert analysis is not None
        study = server.study_of(analysis)
        assert study is not None
        there = {block for p in texts for block in server.session.text(p).blocks}
        for finding in (f for p in texts for f in study.findings(p)):
            places = [finding.place, *(related.place for related in finding.related)]
            assert all(place.block in there for place in places)
            assert all(edit.block in there for fix in finding.fixes for edit in fix.edits)
        if at_rest:
            solve_now(server, site)
            fresh = Analysis(site, Files(texts.__getitem__), "/nowhere")
            found = [f.sort_key for p in sorted(texts) for f in study.findings(p)]
            assert found == [f.sort_key for f in fresh.study_findings()]
            assert study.figures == solved_figures(fresh.view) and not study.settling
        for p in texts:
            assert shown.diagnostics(p) == Diagnostics(server).diagnostics(p), "what is kept is what is made anew"
