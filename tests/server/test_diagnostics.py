"""Findings as diagnostics: pushed and pulled, of several files and several models, with versions, never stale."""

from __future__ import annotations

from collections.abc import AsyncIterator, Iterator
from pathlib import Path

import pytest
import pytest_lsp
from editing import DIFFICULT, SERVER, Client, Editor, capabilities
from lsprotocol import types
from pytest_lsp import ClientServerConfig

BOARD = f"""utility GRID 480Y/277 fault 14 kA, x/r 4 "{DIFFICULT}"
switchboard MSB 480Y/277 bus 400 A, main 400 A
feeder GRID -> MSB
"""


@pytest_lsp.fixture(
    config=ClientServerConfig(server_command=SERVER, client_factory=Client), scope="session", params=["utf-8", "utf-16"]
)
async def pulling(lsp_client: Client, request: pytest.FixtureRequest) -> AsyncIterator[None]:
    """A server whose client pulls."""
    answer = await lsp_client.initialize_session(
        types.InitializeParams(capabilities=capabilities(request.param, pull=True))
    )
    assert isinstance(answer.capabilities.diagnostic_provider, types.DiagnosticOptions)
    yield
    await lsp_client.shutdown_session()


@pytest.fixture
def puller(pulling: Client, tmp_path: Path) -> Iterator[Editor]:
    assert pulling.capabilities is not None and pulling.capabilities.general is not None
    encodings = pulling.capabilities.general.position_encodings or []
    working = Editor(pulling, str(encodings[0].value), tmp_path)
    yield working
    for name in list(working.texts):
        if name in working.versions:
            working.close(name)
    assert not pulling.complaints()


async def pull(editor: Editor, name: str | None = None, previous: str | None = None) -> types.DocumentDiagnosticReport:
    params = types.DocumentDiagnosticParams(editor.identifier(name), previous_result_id=previous)
    return await editor.client.text_document_diagnostic_async(params)


async def test_a_finding_carries_everything_that_helps(editor: Editor) -> None:
    editor.open(f'{BOARD}panel WET-1 120/240 "{DIFFICULT}" bus 1,200 A\nfeeder MSB -> WET-1\n')
    found = await editor.diagnostics()
    slip = next(d for d in found if d.code == "known-slip")
    assert editor.words(slip.range) == "1,200 A"
    assert (slip.severity, slip.source) == (types.DiagnosticSeverity.Error, "wyeline")
    assert "\nwhy: " in slip.message and "\nchange: " in slip.message
    refusal = next(d for d in found if "WET-1" in d.message and "MSB" in d.message)
    assert refusal.related_information and refusal.data
    related = refusal.related_information[0]
    assert related.location.uri == editor.uri("site.wye") and editor.words(related.location.range)


async def test_every_change_is_answered_under_its_version(editor: Editor) -> None:
    editor.open("panel P1 208Y/120 bus 100 A\n")
    await editor.diagnostics()
    editor.client.history.clear()
    for letter in " zzz":
        editor.replace("site.wye", *[editor.place_at(editor.text(), len(editor.text()) - 1)] * 2, letter)
    found = await editor.diagnostics()
    assert "unreadable-line" in [d.code for d in found]
    versions = [p.version for p in editor.client.history if p.uri == editor.uri("site.wye")]
    assert versions == sorted(versions, key=lambda v: v or 0), "never an older text after a newer one"
    assert versions[-1] == editor.versions["site.wye"]


async def test_files_that_are_not_open_show_their_findings_too_until_the_model_closes(editor: Editor) -> None:
    editor.open('include "pumps.wye"\n//-- pumps.wye\nmotor P-1 460 3ph 5 hp zz\n')
    assert "unreadable-line" in await editor.rules("pumps.wye")
    editor.close("site.wye")
    await editor.client.until(lambda: not editor.client.published[editor.uri("pumps.wye")].diagnostics)
    assert not editor.client.published[editor.uri("site.wye")].diagnostics


async def test_unsaved_buffers_of_every_file_count(editor: Editor) -> None:
    editor.open(
        f'include "pumps.wye"\n{BOARD}feeder MSB -> P-1 15 A 3p\n'
        f'//-- pumps.wye\nmotor P-1 460 3ph 5 hp "{DIFFICULT}"\n',
        only_first=False,
    )
    assert not [d for d in await editor.diagnostics() if "P-1" in d.message.split("\n")[0]]
    editor.client.published.pop(editor.uri("site.wye"))
    editor.type("P-1", "P-9", "pumps.wye")
    assert [d for d in await editor.diagnostics() if "P-1" in d.message.split("\n")[0]]


async def test_a_file_of_two_models_names_the_model_of_what_only_one_finds(editor: Editor) -> None:
    editor.open(
        f'motor P-1 460 3ph 5 hp zz\n//-- one.wye\ninclude "site.wye"\n{BOARD}'
        f'//-- two.wye\ninclude "site.wye"\n{BOARD}feeder MSB -> P-1 15 A 3p\n'
    )
    lines = {str(d.code): d.message.split("\n")[0] for d in await editor.diagnostics()}
    assert "(in " not in lines["unreadable-line"], "both models find it: shown once, without a name"
    assert lines["unfed-equipment"].endswith("(in one.wye)")
    assert len(lines) == len(await editor.diagnostics())


async def test_a_thousand_are_shown_worst_first_and_the_rest_is_counted(editor: Editor) -> None:
    editor.open("".join(f"panel P-{i} 208Y/120 zz\n" for i in range(1100)))
    *shown, last = await editor.diagnostics()
    assert len(shown) == 1000 and {d.severity for d in shown} == {types.DiagnosticSeverity.Error}
    assert last.message == "1200 more findings in this file are not shown here. `wyeline check` lists every one."


async def test_pulled_reports_say_when_nothing_changed(puller: Editor) -> None:
    puller.open(f'panel P1 208Y/120 bus 100 A "{DIFFICULT}" zz\n')
    first = await pull(puller)
    assert isinstance(first, types.RelatedFullDocumentDiagnosticReport)
    slip = next(d for d in first.items if d.code == "unreadable-line")
    assert puller.words(slip.range) == "zz"
    again = await pull(puller, previous=first.result_id)
    assert isinstance(again, types.RelatedUnchangedDocumentDiagnosticReport) and again.result_id == first.result_id
    puller.type(" zz", "")
    mended = await pull(puller, previous=first.result_id)
    assert isinstance(mended, types.RelatedFullDocumentDiagnosticReport)
    assert "unreadable-line" not in [d.code for d in mended.items]
    assert puller.uri("site.wye") not in puller.client.published, "who pulls is not pushed to"


async def test_the_workspace_is_pulled_a_model_at_a_time(puller: Editor) -> None:
    puller.open('include "pumps.wye"\n//-- pumps.wye\nmotor P-1 460 3ph 5 hp zz\n//-- other.wye\npanel P2 zz\n')
    folder = types.WorkspaceFolder(puller.folder.as_uri(), "models")
    event = types.WorkspaceFoldersChangeEvent(added=[folder], removed=[])
    puller.client.workspace_did_change_workspace_folders(types.DidChangeWorkspaceFoldersParams(event))
    token = f"pull-{puller.encoding}"
    puller.client.progress_reports.setdefault(token, [])
    params = types.WorkspaceDiagnosticParams([], work_done_token=token)
    report = await puller.client.workspace_diagnostic_async(params)
    by_uri = {item.uri: item for item in report.items}
    assert {puller.uri(n) for n in ("site.wye", "pumps.wye", "other.wye")} <= set(by_uri)
    assert by_uri[puller.uri("site.wye")].version == 1 and by_uri[puller.uri("other.wye")].version is None
    kinds = [type(r).__name__ for r in puller.client.progress_reports[token]]
    assert kinds[0] == "WorkDoneProgressBegin" and kinds[-1] == "WorkDoneProgressEnd"
    known = [types.PreviousResultId(u, i.result_id or "") for u, i in by_uri.items()]
    second = await puller.client.workspace_diagnostic_async(types.WorkspaceDiagnosticParams(known))
    assert {i.kind for i in second.items} == {"unchanged"}
    gone = types.WorkspaceFoldersChangeEvent(added=[], removed=[folder])
    puller.client.workspace_did_change_workspace_folders(types.DidChangeWorkspaceFoldersParams(gone))


async def test_rule_pages_are_linked_where_a_base_is_set(editor: Editor) -> None:
    await editor.client.configure(rules={"pages": "https://example.org/rules/"})
    editor.open("panel P1 zz\n")
    try:
        slip = next(d for d in await editor.diagnostics() if d.code == "unreadable-line")
        assert slip.code_description and slip.code_description.href == "https://example.org/rules/unreadable-line"
    finally:
        await editor.client.configure()


async def test_the_office_configuration_counts_and_what_is_wrong_with_it_is_shown(editor: Editor) -> None:
    toml = editor.folder / "wyeline.toml"
    toml.write_text('[rules]\nunfed-equipment = "off"\n')
    editor.open("panel P1 208Y/120 bus 100 A\n")
    assert "unfed-equipment" not in await editor.rules()
    toml.write_text('[rules]\nno-such-rule-at-all = "off"\n')
    event = types.FileEvent(toml.as_uri(), types.FileChangeType.Changed)
    editor.client.workspace_did_change_watched_files(types.DidChangeWatchedFilesParams([event]))
    published = editor.client.published
    await editor.client.until(lambda: toml.as_uri() in published and published[toml.as_uri()].diagnostics)
    (problem,) = published[toml.as_uri()].diagnostics
    assert "no-such-rule-at-all" in problem.message and problem.range.start.line == 1
    assert "unfed-equipment" in await editor.rules(), "judged as shipped until it is mended"
    toml.unlink()
    event = types.FileEvent(toml.as_uri(), types.FileChangeType.Deleted)
    editor.client.workspace_did_change_watched_files(types.DidChangeWatchedFilesParams([event]))
    await editor.client.until(lambda: not published[toml.as_uri()].diagnostics)


async def test_a_row_of_the_office_that_fits_no_table_is_shown_where_it_is_written(editor: Editor) -> None:
    toml = editor.folder / "wyeline.toml"
    row = '[[override]]\ntable = "310.16"\nrow = "3/00 Cu 75 degC"\nvalue = 195\nreason = "duct bank"\n'
    toml.write_text(f'basis = "us-2023"\n{row}')
    editor.open("panel P1 208Y/120 bus 100 A\n")
    published = editor.client.published
    await editor.client.until(lambda: toml.as_uri() in published and published[toml.as_uri()].diagnostics)
    (problem,) = published[toml.as_uri()].diagnostics
    assert "no row '3/00 Cu 75 degC'" in problem.message and problem.range.start.line == 1
    editor.type("panel P1", 'project "Shed"\n  basis iec\npanel P1')  # other tables
    await editor.client.until(lambda: "IEC" in published[toml.as_uri()].diagnostics[0].message)
    toml.write_text(f'basis = "us-2023"\n{row.replace("3/00", "3/0")}')
    event = types.FileEvent(toml.as_uri(), types.FileChangeType.Changed)
    editor.client.workspace_did_change_watched_files(types.DidChangeWatchedFilesParams([event]))
    editor.type("basis iec", "basis us-2023")
    await editor.client.until(lambda: not published[toml.as_uri()].diagnostics)
