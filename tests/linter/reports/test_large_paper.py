"""Drawings on large paper: its size, how high letters are on it, where the title block stands, and what fits.

Sizes of ISO 216 and of ANSI/ASME Y14.1 (both from memory) are written here as their standards define them: by halves of
a square metre, and in inches.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from pathlib import Path

import diagram_sketches as drawn
import pytest
from report_models import DAIRY, STATION, package_of, printed, written

from wyeline_linter.configuration import ConfigurationError
from wyeline_linter.configuration_keys import read_configuration
from wyeline_linter.reports.diagram.papers import PAPERS, paper_named
from wyeline_linter.reports.diagram.sheets import SheetSet, sheets_of
from wyeline_linter.reports.diagram.title_strip import TitleBlock
from wyeline_linter.reports.html_page import page_html
from wyeline_linter.reports.package import Wishes

TITLE = TitleBlock("Quarry works", "Q-104", "B", "us-2023", "(date)", "normal", ("Design aid.",) * 5)
CAPITAL = 0.718  # of Helvetica: Adobe core font metrics (AFM 4.1, published), CapHeight 718
INCHES = {"tabloid": (17, 11), "ANSI-C": (22, 17), "ANSI-D": (34, 22), "ANSI-E": (44, 34)} | {
    f"Arch-{letter}": (long, short) for letter, long, short in (("C", 24, 18), ("D", 36, 24), ("E", 48, 36))
}
LARGE = [name for name in PAPERS if name not in ("A3", "tabloid")]


def on_paper(svg: str) -> tuple[float, list[tuple[float, float, str]]]:
    """Millimetres of paper to a unit of the drawing, and every text with its letter size and distance from the left."""
    root = ET.fromstring(svg)
    wide_mm, (_, _, wide, _) = (
        float(str(root.get("width")).removesuffix("mm")),
        map(float, root.get("viewBox", "").split()),
    )
    unit = wide_mm / wide
    found = []

    def walk(element: ET.Element, scale: float) -> None:
        move = re.search(r"scale\(([\d.]+)\)", element.get("transform", ""))
        scale *= float(move[1]) if move else 1.0
        if element.tag.endswith("}text") and (element.text or "").strip():
            found.append(
                (float(element.get("font-size", "0")) * scale * unit, float(element.get("x", "0")), element.text or "")
            )
        for inside in element:
            walk(inside, scale)

    walk(root, 1.0)
    return unit, found


@pytest.mark.parametrize("name", PAPERS)
def test_sheets_have_the_size_of_their_standard(name: str) -> None:
    size = PAPERS[name]
    if name in INCHES:
        assert (size.width_mm, size.height_mm) == pytest.approx([inch * 25.4 for inch in INCHES[name]])
    else:
        number = int(name[1:])
        width_mm, height_mm = (1000 * 2 ** (0.25 - n / 2) for n in (number, number + 1))
        assert (size.width_mm, size.height_mm) == pytest.approx((width_mm, height_mm), abs=1.0)
    assert paper_named(name.lower()) == paper_named(name.replace("-", " ")) == name


@pytest.mark.parametrize("name", LARGE)
@pytest.mark.parametrize("make", [drawn.station, lambda: drawn.random_tree(3, 300)], ids=["small", "300 pieces"])
def test_letters_on_large_paper_are_high_enough_to_read(name: str, make: object) -> None:
    made: SheetSet = sheets_of(make(), TITLE, PAPERS[name])  # type: ignore[operator]
    least_mm = 1.5 if name.endswith(("2", "C")) else 1.8
    for sheet in made.sheets:
        _, texts = on_paper(sheet.svg)
        strip = sheet.svg.partition('class="title-strip"')[2]
        beside = [size for size, _, text in texts if f">{text}</text>" not in strip]
        assert min(beside) * CAPITAL >= least_mm * (1 - 1e-3)
        assert min(size for size, _, _ in texts) * CAPITAL >= 1.35, "the title block has small captions"
        assert f"Sheet ({PAPERS[name].name})" in strip


def test_larger_paper_takes_more() -> None:
    sketch = drawn.random_tree(3, 300)
    counts = [len(sheets_of(sketch, TITLE, PAPERS[name]).sheets) for name in ("A3", "A1", "A0")]
    assert counts[0] > counts[1] > counts[2] >= 1
    counts = [len(sheets_of(sketch, TITLE, PAPERS[name]).sheets) for name in ("tabloid", "ANSI-D", "ANSI-E")]
    assert counts[0] > counts[1] > counts[2] >= 1


def test_nothing_leaves_the_frame_and_the_drawing_stays_off_the_title_block() -> None:
    for name in ("A1", "ANSI-D", "Arch-E"):
        size = PAPERS[name]
        for sheet in sheets_of(drawn.random_network(4, 200), TITLE, size).sheets:
            move = re.search(r"translate\(([\d.]+) ([\d.]+)\) scale\(([\d.]+)\)", sheet.svg)
            assert move is not None
            left, top, scale = map(float, move.groups())
            assert left >= 10 and left + sheet.picture.width * scale <= size.room_width - 10
            assert top >= 10 and top + sheet.picture.height * scale <= size.room_height - 37


def test_letters_may_be_asked_for_higher() -> None:
    usual, higher = (package_of(STATION, None, Wishes(paper="A1", lettering_mm=mm)) for mm in (None, 2.5))
    assert len(higher.diagram.sheets) > len(usual.diagram.sheets)
    for sheet in higher.diagram.sheets:
        assert higher.paper.capitals_mm(sheet.scale) >= 2.5 - 1e-9


def test_the_paper_of_the_project_stands_in_its_configuration(tmp_path: Path) -> None:
    (tmp_path / "wyeline.toml").write_text('paper = "ansi-d"\n', "utf-8")
    root = written(tmp_path, 'project "X"\n  basis us-2023\nutility GRID 480Y/277  fault 14 kA, x/r 4\n')
    assert package_of(root).paper is PAPERS["ANSI-D"]
    assert package_of(root, None, Wishes(paper="A2")).paper is PAPERS["A2"], "what is asked for wins"
    with pytest.raises(ConfigurationError, match="nearest: `ANSI-D`"):
        read_configuration("wyeline.toml", b'paper = "ANSI-DD"\n')


def test_large_sheets_tell_what_their_symbols_mean() -> None:
    (sheet,) = package_of(DAIRY, None, Wishes(paper="A1")).diagram.sheets
    strip = sheet.svg.partition('class="title-strip"')[2]
    said = strip[strip.index(">Symbols<") :].partition(">Drawn<")[0]
    drawn_kinds = {
        n.kind.value for n in sheet.sketch.nodes if n.kind.value in ("generator", "motor", "load", "battery")
    }
    assert len(drawn_kinds) == 4 and all(f">{kind}<" in said for kind in drawn_kinds)
    assert ">fuse<" in said and ">circuit breaker<" in said and ">another sheet<" not in said
    names = re.findall(r"<text[^>]*textLength[^>]*>([^<]+)<", said)
    assert said.count('class="glyph"') == len(names) == len(set(names))
    first = package_of(STATION, None, Wishes(paper="Arch-D")).diagram.sheets[0]
    assert ">another sheet<" in first.svg
    assert ">Symbols<" not in package_of(STATION).diagram.sheets[0].svg, "a small sheet needs its strip"


def test_only_drawings_are_printed_on_large_paper() -> None:
    for root, paper, drawing, wide in (
        (STATION, "Arch-D", "914.4mm 609.6mm", "431.8mm 279.4mm"),
        (DAIRY, "A1", "841mm 594mm", "420mm 297mm"),
    ):
        page = page_html([package_of(root, None, Wishes(frozenset({"diagram"}), paper=paper))])
        assert f"@page drawing{{size:{drawing}" in page and f"@page wide{{size:{wide}" in page


def test_the_command_says_on_how_many_sheets_and_how_high_letters_are(tmp_path: Path) -> None:
    command = ("report", str(DAIRY), "-o", str(tmp_path / "r"), "--only", "diagram", "--format", "svg")
    assert "one-line diagram: 1 sheet A1, capitals 1.9 mm and up" in printed(*command, "--paper", "a1")
    sheet = (tmp_path / "r" / "svg" / "one-line-1.svg").read_text("utf-8")
    assert sheet.startswith("<svg") and 'width="841mm" height="594mm"' in sheet
    told = re.search(r"2 sheets A1, capitals ([\d.]+) mm", printed(*command, "--paper", "A1", "--lettering", "2.5mm"))
    assert told is not None and 2.5 <= float(told[1]) < 3


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--paper", "A5"), "there is no paper `A5`; there are A3, A2, A1"),
        (("--lettering", "0.2"), "`0.2` is no height from 1 mm to 5 mm"),
        (("--lettering", "nan"), "`nan` is no height"),
        (("--lettering", "big"), "`big` is no height"),
    ],
)
def test_what_cannot_be_printed_is_refused(
    words: tuple[str, ...], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    from wyeline_linter.cli import main

    assert main(["report", str(DAIRY), *words]) == 2
    assert said in capsys.readouterr().err
