"""Completion: what fits at the cursor, partners of feeders first of all, in every encoding."""

from __future__ import annotations

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

SITE = f"""project "{DIFFICULT}" basis us-2023
utility GRID 480Y/277 fault 14 kA, x/r 4
switchboard MSB 480Y/277 bus 400 A, main 400 A, spaces 12 "{DIFFICULT}"
  1,3,5 30 A 3p 2 kVA heating
panel LP-1 480Y/277 bus 225 A, main 100 A
panel WET-1 120/240 bus 125 A
panel LP-2 480Y/277 bus 225 A
motor P-1 460 3ph 10 hp
type panel LAB bus 225 A
feeder GRID -> MSB
feeder MSB -> LP-2 100 A 3p
"""


async def complete(editor: Editor, line: str, *, blank: bool = False) -> list[types.CompletionItem]:
    """The items at ``$0`` of a line put under the site."""
    editor.open(SITE + line)
    context = types.CompletionContext(types.CompletionTriggerKind.TriggerCharacter, " ") if blank else None
    params = types.CompletionParams(editor.identifier(), editor.cursor(), context=context)
    found = await editor.client.text_document_completion_async(params)
    if found is None:
        return []
    assert isinstance(found, types.CompletionList)
    return sorted(found.items, key=lambda i: i.sort_text or "")


def labels(items: list[types.CompletionItem]) -> list[str]:
    return [item.label for item in items]


async def test_partners_of_a_feeder_come_best_first_and_none_is_missing(editor: Editor) -> None:
    items = await complete(editor, "feeder MSB -> $0", blank=True)
    assert labels(items) == ["LP-1", "P-1", "LP-2", "GRID", "WET-1"], "and never MSB itself"
    details = {item.label: item.detail or "" for item in items}
    assert "wants 480Y/277" in details["LP-1"]
    assert "fed from `MSB` already" in details["LP-2"]
    assert details["WET-1"].startswith("panel · cannot: found 480 V") and "120 V" in details["WET-1"]
    assert "source of its own" in details["GRID"]


async def test_ends_with_names_of_their_own_are_offered(editor: Editor) -> None:
    more = "transfer ATS-1 100 A 4p\npanel LP-7 480Y/277 bus 100 A, through-lugs\nfeeder MSB -> ATS-1.normal 100 A 3p\n"
    found = {i.label: i.detail or "" for i in await complete(editor, f"{more}feeder LP-1 -> ATS-1.$0")}
    assert set(found) == {"ATS-1.normal", "ATS-1.emergency"}
    assert "taken by `MSB -> ATS-1.normal`" in found["ATS-1.normal"] and "alternate" in found["ATS-1.emergency"]
    inputs = [label for label in labels(await complete(editor, f"{more}feeder LP-1 -> $0")) if "ATS" in label]
    assert inputs == ["ATS-1.emergency", "ATS-1.normal", "ATS-1"], "the free one first"
    leaving = labels(await complete(editor, f"{more}feeder LP-$0"))
    assert "LP-7.through" in leaving and "LP-1.through" not in leaving, "only where the panel has such lugs"
    assert "LP-7.subfeed" not in leaving


async def test_sources_for_a_feeder_judge_the_far_end_where_it_is_written(editor: Editor) -> None:
    items = await complete(editor, "feeder $0 -> LP-1")
    assert labels(items)[:3] == ["GRID", "LP-2", "MSB"]
    assert labels(await complete(editor, "feeder $0"))[-1] == "P-1", "no feeder leaves a motor"


@pytest.mark.parametrize(
    ("line", "some"),
    [
        ("$0", {"panel", "feeder", "scenario", "transformer"}),
        ("type pa$0", {"panel"}),
        ("feeder MSB[$0", {"ABC]", "AB]", "A N]"}),
        ("feeder MSB -> LP-1 $0", {"100 A 3p", "in", "at", "gfpe"}),
        ("feeder MSB -> LP-1 100 A 3p $0", {"3#1 + N #1 + G #8 Cu THWN-2"}),
        ("feeder MSB -> LP-1 100 A 3p at $0", {"2,4,6", "7,9,11"}),
        ("feeder MSB -> LP-1 100 A 3p in $0", {"2 inch EMT"}),
        ("feeder MSB -> LP-1 3#3 + $0", {"N", "G", "PE", "PEN"}),
        ("panel LP-3 480Y/277 bus 100 A, m$0", {"main"}),
        ("panel LP-3 480Y/277 main $0", {"lugs", "switch", "150 A"}),
        ("panel LP-3 like $0", {"LAB"}),
        ("panel LP-3 $0", {"208Y/120", "480Y/277", "bus"}),
        ("transformer TX-9 480 3ph -> $0", {"208Y/120"}),
        ("panel LP-3 480Y/277 spaces 12\n  $0", {"1", "1,3", "allow", "main"}),
        ("panel LP-3 480Y/277\n  allow $0", {"known-slip"}),
        ("panel LP-3 480Y/277\n  claim $0", {"tap-25ft"}),
        ('scenario "Out"\n  $0', {"off", "switch", "shed"}),
        ('scenario "Out"\n  off $0', {"GRID"}),
        ('scenario "Out"\n  open $0', {"MSB -> LP-2", "GRID -> MSB"}),
        ("expect $0", {"MSB", "all"}),
    ],
)
async def test_every_slot_offers_what_fits(editor: Editor, line: str, some: set[str]) -> None:
    found = set(labels(await complete(editor, line)))
    assert some <= found, f"missing {some - found} among {sorted(found)[:60]}"


async def test_what_the_trade_says_brings_the_word_of_the_language(editor: Editor) -> None:
    async def brought(line: str, typed: str) -> tuple[str, str]:
        (item,) = [i for i in await complete(editor, line) if i.label == typed]
        assert isinstance(item.text_edit, types.TextEdit)
        return item.detail or "", item.text_edit.new_text

    detail, text = await brought("ats$0", "ats")
    assert detail.startswith("is written `transfer`") and text.startswith("transfer ")
    assert (await brought("elevators$0", "elevators"))[1].endswith(", elevator")
    assert (await brought("panel LP-9 208Y/120 feed$0", "feed-through"))[1] == "through-lugs"
    assert (await brought("panel LP-9 208Y/120\n  1 20 A 1p outl$0", "outlet"))[1] == "receptacle"
    assert "ats" not in labels(await complete(editor, "$0")), "the list is not twice as long unasked"
    assert "ats" not in labels(await complete(editor, "panel LP-9 208Y/120 at$0"))


async def test_what_does_not_fit_is_not_offered(editor: Editor) -> None:
    phrases = set(labels(await complete(editor, "panel LP-3 480Y/277 bus 100 A, $0")))
    assert "bus" not in phrases, "stands there already"
    assert not phrases & {"fault", "x/r", "normally-open"}, "are of other kinds"
    assert await complete(editor, "// a comment $0") == []
    assert await complete(editor, 'panel LP-3 480Y/277 "text $0"') == []
    assert await complete(editor, "panel LP-3 480Y/277 bus 100 A $0", blank=True) == [], "a blank alone asks nothing"


async def test_what_is_chosen_replaces_the_word_under_way(editor: Editor) -> None:
    items = await complete(editor, f'motor P-2 460 3ph 5 hp "{DIFFICULT}" pf 0.8 effi$0')
    assert items == [], "no word begins so"
    items = await complete(editor, f'motor P-2 460 3ph 5 hp "{DIFFICULT}" ef$0')
    item = next(i for i in items if i.label == "eff")
    assert isinstance(item.text_edit, types.TextEdit) and editor.words(item.text_edit.range) == "ef"
    assert item.text_edit.new_text.startswith("eff ${1:")
    assert item.insert_text_format == types.InsertTextFormat.Snippet


async def test_a_client_without_snippets_gets_plain_text(plain_editor: Editor) -> None:
    items = await complete(plain_editor, "pane$0")
    edit = next(i for i in items if i.label == "panel").text_edit
    assert isinstance(edit, types.TextEdit) and edit.new_text.startswith("panel LP-1 208Y/120  bus 225 A")


async def test_the_long_text_comes_when_an_item_is_looked_at(editor: Editor) -> None:
    items = await complete(editor, "feeder MSB -> $0")
    item = next(i for i in items if i.label == "LP-2")
    found = await editor.client.completion_item_resolve_async(item)
    assert isinstance(found.documentation, types.MarkupContent)
    assert "A–B 480 V" in found.documentation.value


async def test_includes_are_files_of_the_folder(editor: Editor) -> None:
    (editor.folder / "wyeline.toml").touch()
    editor.open('include "$0"\n//-- parts/pumps.wye\nmotor P-1 460 3ph 5 hp\n')
    params = types.CompletionParams(editor.identifier(), editor.cursor())
    found = await editor.client.text_document_completion_async(params)
    assert isinstance(found, types.CompletionList)
    assert labels(list(found.items)) == ["parts/pumps.wye"]


@pytest.mark.parametrize(
    ("line", "active"),
    [
        ("panel $0", "LP-1"),
        ("panel LP-9 $0", "208Y/120"),
        ("panel LP-9 208Y/120 $0", "bus 225 A"),
        ("panel LP-9 208Y/120 bus $0", "bus 225 A"),
        ("panel LP-9 208Y/120 bus 100 A, $0", "main 200 A"),
        ("feeder MSB -> $0", "LP-1"),
        ("feeder MSB -> LP-1 $0", "225 A"),
        ('scenario "Out"\n  off $0', "UTIL"),
        ("panel LP-9 208Y/120\n  1 $0", "20 A"),
        ("panel LP-9 208Y/120\n  allow $0", "rule"),
    ],
)
async def test_the_form_of_a_statement_shows_the_part_under_way(editor: Editor, line: str, active: str) -> None:
    editor.open(SITE + line)
    params = types.SignatureHelpParams(editor.identifier(), editor.cursor())
    found = await editor.client.text_document_signature_help_async(params)
    assert found is not None and found.active_parameter is not None
    form = found.signatures[0]
    label = (form.parameters or [])[found.active_parameter].label
    words = label if isinstance(label, str) else form.label[label[0] : label[1]]
    assert words == active, form.label


async def test_no_form_where_nothing_is_typed_or_in_a_comment(editor: Editor) -> None:
    for line in ("$0", "// panel $0", "zz $0"):
        editor.open(SITE + line)
        params = types.SignatureHelpParams(editor.identifier(), editor.cursor())
        assert await editor.client.text_document_signature_help_async(params) is None
        editor.close()


@pytest.mark.parametrize(
    ("line", "first"),
    [
        ("panel LP-3 480Y/277 $0", ["bus", "main", "incomer", "rated"]),
        ("panel LP-3 480Y/277\n  1 20 A 1p $0", ["180 VA", "4.5 kW", "30 m", "spare", "space", "lighting"]),
        ("panel LP-3 480Y/277\n  1 20 A 1p 1 kVA 9 m $0", ["spare", "space", "lighting", "receptacle"]),
        ("generator GEN 480Y/277 $0", ["75 kVA", "4.5 kW", "frequency"]),
        ("feeder MSB -> LP-1 100 A $0", ["3p", "1p", "2p", "4p"]),
        ("panel LP-3 480Y/277\n  1,3 20 A $0", ["2p", "1p", "3p", "4p"]),
        ("panel LP-3 480Y/277\n  F1[$0", ["A]", "B]", "C]", "ABC]"]),
        ("expect LP-1 $0", ["fault <= 10 kA", "drop <= 3 %"]),
        ("expect all panel $0", ["fault <= 10 kA", "drop <= 3 %"]),
    ],
)
async def test_what_the_place_alone_has_stands_first(editor: Editor, line: str, first: list[str]) -> None:
    assert labels(await complete(editor, line))[: len(first)] == first


async def test_no_value_is_offered_twice(editor: Editor) -> None:
    for line in ("panel LP-3 480Y/277 main $0", "generator GEN 480Y/277 neutral $0", "feeder MSB -> LP-1 rcd-type $0"):
        found = labels(await complete(editor, line))
        assert found and len(found) == len(set(found))
    after = labels(await complete(editor, "feeder MSB -> LP-1 100 A 3p 30 m $0"))
    assert not [label for label in after if label.endswith(" A 3p")] and after[-1] != "note"
