"""Hover: the word under the cursor, what the model derives for it, and the range it covers in every encoding."""

from __future__ import annotations

import re

import pytest
from editing import DIFFICULT, Editor
from lsprotocol import types

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.rules.registry import all_rules
from wyeline_server.hover import hover as hover_at

SITE = f"""utility GRID 480Y/277 fault 14 kA, x/r 4 "{DIFFICULT}"
switchboard MSB 480Y/277 bus 400 A, main 400 A
transformer TX-1 480 3ph -> 208Y/120 45 kVA, z 4.2 %, x/r 1.9
/// Wet bench.
panel WET-1 208Y/120 bus 225 A, main 150 A, spaces 12 "{DIFFICULT}"
  1,3 20 A 2p 2 kVA heating
feeder GRID -> MSB
feeder MSB -> TX-1 70 A 3p 3#4 + G #8 Cu 30 m
feeder TX-1 -> WET-1
"""


async def hover(editor: Editor, old: str, *, offset: int = 0) -> tuple[str, str]:
    """(text, the words it covers) at the place where ``old`` stands in the fixture."""
    text = editor.text()
    assert text.count(old) == 1, old
    place = editor.place_at(text, text.index(old) + offset)
    params = types.HoverParams(editor.identifier(), editor.position(place))
    found = await editor.client.text_document_hover_async(params)
    if found is None:
        return "", ""
    assert isinstance(found.contents, types.MarkupContent) and found.range is not None
    return found.contents.value, editor.words(found.range)


@pytest.mark.parametrize(
    ("at", "offset", "covers", "says"),
    [
        ("panel WET-1", 6, "WET-1", "A–B 208 V · B–C 208 V · C–A 208 V · A–N 120 V"),
        ("panel WET-1", 6, "WET-1", "Wet bench."),
        ("panel WET-1", 6, "WET-1", "`GRID` → `MSB` → `TX-1` → `WET-1`"),
        ("transformer TX-1", 13, "TX-1", "**Arriving**"),
        ("switchboard MSB 480Y/277", 18, "480Y/277", "three live wires and a neutral (wye), 480 V between live wires"),
        ("panel WET", 1, "panel", "panelboard or distribution board"),
        ("main 150 A", 1, "main", "Takes a current"),
        ("20 A 2p", 6, "2p", "2 poles"),
        ("1,3 20 A", 0, "1,3", "A–B 208 V"),
        ("heating", 2, "heating", "heating"),
        ("3#4 ", 0, "3#4", "21.15 mm²"),
        (" 30 m", 1, "30 m", "98.4 ft"),
        ("MSB -> TX", 4, "->", "**`MSB` offers**"),
        ("z 4.2 %", 0, "z", "Impedance voltage"),
    ],
)
async def test_a_word_says_what_it_is_and_what_is_known(
    editor: Editor, at: str, offset: int, covers: str, says: str
) -> None:
    editor.open(SITE)
    text, words = await hover(editor, at, offset=offset)
    assert (words, says in text) == (covers, True), text


async def test_a_refused_feeder_shows_both_sides_and_the_reason(editor: Editor) -> None:
    editor.open(
        'utility GRID 480Y/277 fault 14 kA, x/r 4\nswitchboard MSB 480Y/277 bus 400 A "😀"\n'
        "panel WET-1 120/240 bus 125 A\nfeeder GRID -> MSB\nfeeder MSB -> WET-1\n"
    )
    text, _ = await hover(editor, "feeder MSB")
    assert "A–N 277 V" in text and "120 V to neutral" in text and "Cannot be connected" in text
    text, _ = await hover(editor, "panel WET-1", offset=6)
    assert "Cannot be connected" in text and "found at `MSB`" in text


async def test_comments_blanks_and_what_cannot_be_read_say_nothing(editor: Editor) -> None:
    editor.open("// panel P1\n\npanel P1 208Y/120 zz\n")
    for place in ((0, 5), (1, 0), (2, 19)):
        params = types.HoverParams(editor.identifier(), types.Position(*place))
        assert await editor.client.text_document_hover_async(params) is None


async def test_what_is_not_known_says_why(editor: Editor) -> None:
    editor.open("panel P1 bus 100 A\n")
    text, _ = await hover(editor, "P1")
    assert "unknown: nothing feeds it" in text


async def test_a_refusal_gives_its_reason_once(editor: Editor) -> None:
    editor.open(SITE.replace("panel WET-1 208Y/120", "panel WET-1 480Y/277"))
    text, _ = await hover(editor, "panel WET-1", offset=6)
    assert "**Voltage** and **load** are unknown until it can be fed" in text
    assert text.count("no two wires here are 480 V apart") == 1
    assert "found at `TX-1`" in text and "needed at `WET-1`" in text


@pytest.mark.parametrize(
    ("windings", "basis", "says"),
    [
        ("480 1ph -> 120/240 25 kVA", "us-2023", "**Windings** centre-tapped"),  # a shift has no meaning there
        ("480 3ph -> 208Y/120 45 kVA", "us-2023", "**Windings** Dyn1, shifted by -30°"),
        ("480 3ph -> 208Y/120 45 kVA", "iec", "**Windings** Dyn; no vector group is given"),
    ],
)
async def test_a_transformer_says_how_it_shifts(editor: Editor, windings: str, basis: str, says: str) -> None:
    legs = "[AB]" if "1ph" in windings else ""
    editor.open(
        f'project "Annex"\n  basis {basis}\nutility GRID 480Y/277 fault 14 kA, x/r 4\n'
        f"transformer TX-1 {windings}\nfeeder GRID{legs} -> TX-1 70 A {2 if legs else 3}p\n"
    )
    text, _ = await hover(editor, "transformer TX-1", offset=13)
    assert says in text


def test_every_word_of_the_rules_examples_is_answered() -> None:
    """A card that fails shows nothing and is only logged: here it fails. The examples hold every kind and word."""
    asked = 0
    for rule in all_rules().values():
        for text in (rule.wrong, rule.right):
            model = Analysis("/m/site.wye", Files(lambda _, text=text: text), "/m")
            for block in TextFile("/m/site.wye", text).blocks:
                for row, line in enumerate(block.lines):
                    for word in re.finditer(r"\S+", line):
                        hover_at(model.view, block, block.first_line + row, word.start())
                        asked += 1
    assert asked > 20_000
