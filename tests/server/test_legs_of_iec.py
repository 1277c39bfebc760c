"""Under `basis iec` everything that is shown calls the legs L1, L2, L3 (IEC 60445), what the model wrote aside: what
`wyeline show` prints, reasons of unknown, what a comparison says, hover, hints and completion."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from editing import Editor, solve_now
from lsprotocol import types

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.commands.show import equipment_text, feeder_text
from wyeline_linter.figures import figures_in_states
from wyeline_linter.review.documents import Version
from wyeline_linter.review.physical import changes
from wyeline_server.hover import hover as hover_at
from wyeline_server.inlays import hints
from wyeline_server.server import WyelineServer

SITE = """project "Works"
  basis {basis}
  frequency 50 Hz
utility NETZ 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S
panel HV 400Y/230  bus 63 A, rated 10 kA, spaces 24
  2  16 A 1p  2 kW heating  "Bench"
  F1[L1]  16 A 1p+N  2 kW process  "Bench 1"
  F2[L2 L3]  16 A 2p  2 kW process  "Bench 2"
feeder NETZ -> HV  63 A 3p  4x16mm2 + PE 16mm2 Cu PVC  15 m, method C
load OFEN 400 1ph  3 kW, heating
feeder HV[L2 L3] -> OFEN  16 A 2p  3G2.5mm2 Cu PVC  40 m, method C
load LUFT 230 1ph  3 kW, heating
feeder HV[L2] -> LUFT  16 A 1p+N  3G2.5mm2 Cu PVC  40 m, method C
panel GAST 230/115  bus 63 A
feeder HV[L1 L2] -> GAST  32 A 2p
panel RECHTS  bus 63 A
  1  16 A 1p  1 kW heating
feeder HV -> RECHTS  32 A 2p
panel KURZ 400Y/230 bus 63 A
feeder RECHTS[L3] -> KURZ  16 A 1p
load MIETER 230 1ph  3 kW, heating
feeder HV[L3 L3] -> MIETER  16 A 2p
utility ECK 240/120 3ph  fault 10 kA, fault-min 6 kA, x/r 4, high B
panel HOCH 240/120 3ph  bus 63 A
feeder ECK -> HOCH  63 A 3p
load HELL 120 1ph  1 kW, heating
feeder HOCH[L2] -> HELL  16 A 1p
"""

LETTER = re.compile(r"(?<![\w`])(?<!\d )(?<!curve )(?<!method )[ABC](?! (?!and|or|is|to|\d)[a-z])(?![\w`])")
"""A leg by its letter; not amperes behind a figure, nor an article."""
NAME = re.compile(r"\bL[123]\b")


def read(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def shown(analysis: Analysis) -> list[str]:
    view = analysis.view
    figures = figures_in_states(view, None)
    return [
        *(equipment_text(name, entry, (), view.basis) for name, entry in figures["equipment"].items()),
        *(feeder_text(key, entry, "si", (), view.basis) for key, entry in figures["feeders"].items()),
    ]


def hovered(text: str) -> list[str]:
    found, analysis = [], read(text)
    for block, _ in analysis.model.statements():
        for row, line in enumerate(block.lines):
            for word in re.finditer(r"[\w-]+|\[[^\]]*\]|->", line):
                at = hover_at(analysis.view, block, block.first_line + row, word.start())
                if at is not None and not at[0].startswith("**high**"):  # says what is left out under US practice
                    found.append(at[0])
    return found


def hinted(folder: Path, text: str) -> list[str]:
    server = WyelineServer("test")
    path = server.session.open((folder / "a.wye").as_uri(), 1, text)
    file = server.session.text(path)
    solve_now(server, path)
    return [part for _, hint in hints(server, path, file, 0, 99) for part in (hint.text, hint.tip, hint.insert)]


def compared(basis: str) -> list[str]:
    before = SITE.format(basis=basis)
    after = before.replace("F1[L1]", "F1[L3]").replace("HV[L2] -> LUFT", "HV[L3] -> LUFT")
    versions = [Version("/m/site.wye", lambda _, text=text: text, "/m") for text in (before, after)]  # type: ignore[misc]
    return [change.words for change in changes(*versions)]


def bare(texts: list[str]) -> list[str]:
    return [re.sub(r"```.*?```|`[^`]*`", "", text, flags=re.DOTALL) for text in texts]


def texts_of(where: str, basis: str, folder: Path) -> list[str]:
    text = SITE.format(basis=basis)
    if where == "show":
        return shown(read(text))
    if where == "hover":
        return hovered(text)
    return hinted(folder, text) if where == "hints" else compared(basis)


@pytest.mark.parametrize("where", ["show", "hover", "hints", "comparison"])
@pytest.mark.parametrize(("basis", "good", "bad"), [("iec", NAME, LETTER), ("us-2023", LETTER, NAME)])
def test_legs_have_the_names_of_the_practice_everywhere(
    where: str, basis: str, good: re.Pattern[str], bad: re.Pattern[str], tmp_path: Path
) -> None:
    words = bare(texts_of(where, basis, tmp_path))
    assert [w for w in words if bad.search(w)] == []
    assert any(good.search(w) for w in words)


@pytest.mark.parametrize(("basis", "some"), [("iec", {"L1 L2]", "L2 L3]"}), ("us-2023", {"AB]", "BC]"})])
async def test_legs_are_offered_by_their_names(editor: Editor, basis: str, some: set[str]) -> None:
    editor.open(SITE.format(basis=basis) + "load MORE 400 1ph  1 kW, heating\nfeeder HV[$0 -> MORE")
    params = types.CompletionParams(editor.identifier(), editor.cursor())
    found = await editor.client.text_document_completion_async(params)
    assert isinstance(found, types.CompletionList)
    assert some <= {item.label for item in found.items}
