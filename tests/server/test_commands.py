"""Commands by name: connect with its reasons and edits, and a clear refusal of what is none."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types
from pygls.exceptions import JsonRpcException

from wyeline_server.documents import path_of_uri

SITE = f"""project "{DIFFICULT}" basis us-2023
utility GRID 480Y/277 fault 14 kA, x/r 4
switchboard MSB 480Y/277 bus 400 A, main 400 A
panel WET-1 120/240 bus 125 A "{DIFFICULT}"
feeder GRID -> MSB
feeder MSB -> WET-1 100 A 2p
"""


async def command(editor: Editor, name: str, *arguments: Any, token: str | None = None) -> Any:
    params = types.ExecuteCommandParams(name, arguments=list(arguments), work_done_token=token)
    return await editor.client.workspace_execute_command_async(params)


async def test_connect_says_why_not_and_applies_the_change_chosen(editor: Editor) -> None:
    editor.open(SITE)
    found = await command(editor, "wyeline.connect", editor.uri("site.wye"), "MSB", "WET-1")
    assert not found["works"] and "480 V" in found["refusal"]["found"] and "240 V" in found["refusal"]["needed"]
    titles = [s["title"] for s in found["solutions"]]
    number = 1 + next(i for i, title in enumerate(titles) if "transformer" in title)
    assert found["solutions"][number - 1]["checklist"]
    editor.client.edits.clear()
    again = await command(editor, "wyeline.connect", editor.uri("site.wye"), "MSB", "WET-1", number)
    assert again["applied"] == number
    await editor.client.until(lambda: editor.client.edits)
    editor.apply(editor.client.edits[0].edit)
    assert not [d for d in await editor.diagnostics() if d.severity == types.DiagnosticSeverity.Error]


async def test_partners_are_listed_with_their_reasons(editor: Editor) -> None:
    editor.open(SITE)
    uri = editor.uri("site.wye")
    everything = await command(editor, "wyeline.partners", uri)
    assert {p["name"] for p in everything} == {"GRID", "MSB", "WET-1"}
    (first, *others) = await command(editor, "wyeline.partners", uri, "MSB")
    assert [p["name"] for p in (first, *others)] == ["GRID", "WET-1"] and not first["fits"]
    assert "480 V" in others[0]["reason"] and "source of its own" in first["reason"]


async def test_progress_is_shown_to_a_client_that_sent_a_token(editor: Editor) -> None:
    editor.open(SITE)
    editor.client.progress_reports.setdefault("c-1", []).clear()
    await command(editor, "wyeline.connect", editor.uri("site.wye"), "GRID", "MSB", token="c-1")
    kinds = [type(r).__name__ for r in editor.client.progress_reports["c-1"]]
    assert kinds == ["WorkDoneProgressBegin", "WorkDoneProgressReport", "WorkDoneProgressEnd"]


async def test_a_working_sheet_shows_the_numbers_and_the_formula(editor: Editor) -> None:
    editor.open(SITE + "load HTR-1 480 3ph 10 kW\nfeeder MSB -> HTR-1 20 A 3p\n")
    found = await command(editor, "wyeline.workingSheet", editor.uri("site.wye"), "MSB", "connected")
    assert "Formula" in found["text"] and "10" in found["text"] and "design aid" in found["text"].lower()
    hover = types.HoverParams(editor.identifier(), types.Position(2, 13))
    shown = await editor.client.text_document_hover_async(hover)
    assert shown is not None and "connected" in str(shown.contents)


SMALL = f"""project "{DIFFICULT}" basis us-2023
utility     GRID  480Y/277  fault 14 kA, x/r 4
switchboard MSB   480Y/277  bus 400 A, main 400 A
panel       LP-1  480Y/277  bus 125 A "{DIFFICULT}"
  1,3,5   60 A 3p  40 kVA heating  "Oven"
feeder GRID        -> MSB
feeder MSB         -> LP-1    60 A 3p  40 m  in EMT
"""


async def test_sizes_are_shown_with_their_reasons_and_written_on_request(editor: Editor) -> None:
    editor.open(SMALL)
    uri = editor.uri("site.wye")
    editor.client.edits.clear()
    editor.client.shown_documents.clear()
    found = await command(editor, "wyeline.size", uri, "LP-1")
    assert not found["applied"] and not editor.client.edits
    (sizing,) = found["sizings"]
    assert sizing["sized"] and sizing["subject"] == "MSB -> LP-1" and "310.16" in " ".join(sizing["reasons"])
    assert sizing["title"] in found["text"] and "design aid" in found["text"].lower()
    await editor.client.until(lambda: editor.client.shown_documents)
    shown = path_of_uri(editor.client.shown_documents[0].uri)
    assert shown is not None and Path(shown).read_text("utf-8") == found["text"]
    again = await command(editor, "wyeline.size", uri, "MSB -> LP-1", True)
    assert again["applied"]
    await editor.client.until(lambda: editor.client.edits)
    editor.apply(editor.client.edits[0].edit)
    printed = subprocess.run(
        [sys.executable, "-m", "wyeline_linter.cli", "size", str(editor.folder / "site.wye"), "LP-1", "--apply"],
        capture_output=True,
        check=True,
    )
    assert printed.returncode == 0
    assert editor.text() == (editor.folder / "site.wye").read_text("utf-8"), "what the command line writes"


@pytest.mark.parametrize(
    ("name", "arguments", "says"),
    [
        ("wyeline.paint", [], "no command is called `wyeline.paint`; there are wyeline."),
        ("wyeline.connect", [], "takes a document, what feeds, what is fed"),
        ("wyeline.connect", ["URI", "MSB", "WET-9"], "is called `WET-9`; the nearest: WET-1"),
        ("wyeline.connect", ["URI", "MSB", "MSB"], "cannot feed itself"),
        ("wyeline.connect", ["URI", "MSB", "WET-1", 99], "number 99 is none of them"),
        ("wyeline.connect", ["file:///nowhere/at/all.wye", "MSB", "WET-1"], "no model can be made"),
        ("wyeline.workingSheet", ["URI", "MSB", "colour"], "no load figure is called colour"),
        ("wyeline.partners", [], "takes a document, and perhaps what feeds"),
        ("wyeline.size", ["URI"], "takes a document, a name, and perhaps true"),
        ("wyeline.size", ["URI", "MSB", "yes"], "takes a document, a name, and perhaps true"),
        ("wyeline.size", ["URI", "WET-9"], "is called `WET-9`; the nearest: WET-1"),
        ("wyeline.applyEdit", [3], "takes a workspace edit"),
    ],
)
async def test_what_cannot_be_carried_out_is_refused_in_words(
    editor: Editor, name: str, arguments: list[Any], says: str
) -> None:
    editor.open(SITE)
    given = [editor.uri("site.wye") if a == "URI" else a for a in arguments]
    with pytest.raises(JsonRpcException, match=says.replace(".", r"\.").split(";")[0]) as refused:
        await command(editor, name, *given)
    assert says in str(refused.value)
