"""Diagrams as SVG and as sheets: valid, complete, deterministic, and with references that hold in both directions."""

from __future__ import annotations

import subprocess
import sys
import time
import xml.etree.ElementTree as ET
from collections import Counter
from dataclasses import replace
from pathlib import Path

import diagram_sketches as drawn
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_linter.reports.diagram import sheets
from wyeline_linter.reports.diagram.drawing import Drawing
from wyeline_linter.reports.diagram.labels import broken, text_width_mm
from wyeline_linter.reports.diagram.papers import A3, TABLOID, SheetSize
from wyeline_linter.reports.diagram.shaping import GAP_MM, least_area_mm2
from wyeline_linter.reports.diagram.sheets import SheetSet, sheets_of
from wyeline_linter.reports.diagram.sketch import Edge, Kind, Node, Sketch, Status
from wyeline_linter.reports.diagram.svg import parts_svg
from wyeline_linter.reports.diagram.title_strip import TitleBlock

SVG = "{http://www.w3.org/2000/svg}"
CAUTION = "Design aid. Not for energised work."
TITLE = TitleBlock("Quarry works", "Q-104", "B", "us-2023", "(date)", "normal", (CAUTION,))


def groups(svg: str) -> list[ET.Element]:
    return [g for g in ET.fromstring(svg).iter(f"{SVG}g") if g.get("data-id") is not None]


def drawn_svg(sketch: Sketch) -> str:
    return f'<svg xmlns="http://www.w3.org/2000/svg">{parts_svg(Drawing(sketch).picture(), sketch)}</svg>'


def all_sheets(sketch: Sketch, size: SheetSize = A3) -> SheetSet:
    return sheets_of(sketch, TITLE, size)


@pytest.mark.parametrize("make", [drawn.station, drawn.double_ended, drawn.crowded_board, drawn.single, drawn.ring])
def test_every_element_is_a_group_with_title_name_source_and_link(make: object) -> None:
    sketch = make()  # type: ignore[operator]
    found = {g.get("id"): g for g in groups(drawn_svg(sketch))}
    assert len(found) == len(sketch.nodes) + len(sketch.edges)
    for group in found.values():
        assert group.findtext(f"{SVG}title")
        assert group.get("data-source", "").startswith("plan.wye:")
    for node in sketch.nodes:
        group = found[f"node-{node.id}"]
        assert group.get("data-name") == node.tag
        link = group.find(f"{SVG}a")
        assert link is not None and link.get("href") == f"#working-{node.id}"
        assert any(text.text == node.tag for text in group.iter(f"{SVG}text"))


def test_status_and_unknown_figures_are_read_without_colour() -> None:
    sketch = drawn.station()
    root = {g.get("data-name"): g for g in groups(drawn_svg(sketch))}
    for tag, status in (("T-W", "existing"), ("P-4", "future"), ("LATHE", "demolish"), ("CABIN", "temporary")):
        assert status in str(root[tag].get("class")).split()
    assert any(path.get("class") == "k" for path in root["LATHE"].iter(f"{SVG}path"))
    assert "fault ? kA" in [t.text for t in root["GEN-1"].iter(f"{SVG}text")]


@given(st.text(max_size=60), st.text(max_size=60), st.sampled_from(list(Kind)), st.sampled_from(list(Status)))
@settings(max_examples=60, deadline=None)
def test_any_text_gives_valid_xml_and_one_id(tag: str, line: str, kind: Kind, status: Status) -> None:
    sketch = Sketch((Node(f"a{tag}", kind, tag, (line,), status=status, source=line, working=tag),), title=line)
    assert len(groups(drawn_svg(sketch))) == 1


@given(st.text(st.characters(codec="ascii", categories=("L", "N", "P", "Zs")), max_size=90), st.floats(5, 60))
@settings(max_examples=150, deadline=None)
def test_broken_lines_lose_nothing_and_keep_their_width(text: str, width_mm: float) -> None:
    lines = broken(text, width_mm)
    assert "".join("".join(lines).split()) == "".join(text.split())
    assert all(text_width_mm(line, 2.3) <= width_mm + 1e-9 or len(line) == 1 for line in lines)


def test_widths_of_letters() -> None:
    # Adobe core font metrics of Helvetica (AFM 4.1, published): A 667, m 833, space 278, digit 556; bold W 944.
    assert text_width_mm("Am 5", 1000) == 667 + 833 + 278 + 556
    assert text_width_mm("W", 1000, bold=True) == 944


def check_set(sketch: Sketch, made: SheetSet) -> None:
    names: Counter[str] = Counter()
    for sheet in made.sheets:
        root = ET.fromstring(sheet.svg)
        assert root.get("id") == f"oneline-sheet-{sheet.number}"
        names.update(str(e.get("id")) for e in root.iter() if e.get("id"))
        words = " ".join(t.text or "" for t in root.iter(f"{SVG}text"))
        assert f"{sheet.number} of {sheet.count}" in words
        assert "Design aid." in words
    assert max(names.values()) == 1
    drawn_parts = Counter(g.get("data-id") for s in made.sheets for g in groups(s.svg))
    for element in (*sketch.nodes, *sketch.edges):
        assert drawn_parts[element.id] == 1, element.id
    sheet_of = {n.id: s.number for s in made.sheets for n in s.sketch.nodes}
    for reference in made.references:
        assert sheet_of[reference.source] == reference.source_sheet
        assert sheet_of[reference.target] == reference.target_sheet
        assert reference.source_sheet != reference.target_sheet
        there, back = (
            sheet.sketch.node[f"{kind} {reference.edge}"]
            for kind, sheet in (
                (Kind.REFERENCE_OUT, made.sheets[reference.source_sheet - 1]),
                (Kind.REFERENCE_IN, made.sheets[reference.target_sheet - 1]),
            )
        )
        assert f"sheet {reference.target_sheet}" in " ".join(there.lines)
        assert f"sheet {reference.source_sheet}" in " ".join(back.lines)
        assert (there.working, back.working) == (
            f"#oneline-sheet-{reference.target_sheet}",
            f"#oneline-sheet-{reference.source_sheet}",
        )
    ends = sum(n.kind in (Kind.REFERENCE_IN, Kind.REFERENCE_OUT) for s in made.sheets for n in s.sketch.nodes)
    assert ends == 2 * len(made.references)


def test_a_small_model_stays_on_one_sheet() -> None:
    made = all_sheets(drawn.station(), TABLOID)
    assert (len(made.sheets), made.references) == (1, ())
    assert 'width="431.8mm" height="279.4mm"' in made.sheets[0].svg
    check_set(drawn.station(), made)


@pytest.mark.parametrize("seed", range(12))
def test_large_models_are_split_and_stay_legible(seed: int) -> None:
    sketch = (drawn.random_tree if seed % 2 else drawn.random_network)(seed, 60 + 10 * seed)
    made = all_sheets(sketch, A3 if seed % 3 else TABLOID)
    check_set(sketch, made)
    assert len(made.sheets) > 1
    assert min(sheet.scale for sheet in made.sheets) > 0.6


def test_a_board_wider_than_a_sheet_is_continued() -> None:
    sketch = drawn.crowded_board(70)
    made = all_sheets(sketch)
    check_set(sketch, made)
    assert made.sheets[0].heads == ("MCC-7",)
    assert all("MCC-7" in s.heads[0] for s in made.sheets)
    assert "bus continued on sheet 2" in made.sheets[0].svg.replace("\n", " ")


def test_a_supply_of_more_transformers_than_a_sheet_takes_is_continued() -> None:
    supply = Node("GRID", Kind.UTILITY, "GRID", ("20 kV",), source="plan.wye:1")
    units = [Node(f"T-{n}", Kind.TRANSFORMER, f"T-{n}", ("630 kVA",), source="plan.wye:2") for n in range(60)]
    edges = [Edge(f"F-{n}", "GRID", f"T-{n}", lines=("3x95 mm² Al", "40 m"), location="plan.wye:3") for n in range(60)]
    made = all_sheets(Sketch((supply, *units), tuple(edges)))
    drawn_parts = Counter(g.get("data-id") for s in made.sheets for g in groups(s.svg))
    assert all(drawn_parts[n.id] == 1 for n in (supply, *units)) and all(drawn_parts[e.id] == 1 for e in edges)
    assert len(made.sheets) > 2 and min(sheet.scale for sheet in made.sheets) >= A3.least_scale
    assert "bus continued on sheet 2" in made.sheets[0].svg.replace("\n", " ")


def test_tied_boards_stay_on_one_sheet() -> None:
    small = SheetSize("small", 260.0, 200.0)
    made = all_sheets(drawn.double_ended(), small)
    sheet_of = {n.id: s.number for s in made.sheets for n in s.sketch.nodes}
    assert sheet_of["MDB-A"] == sheet_of["MDB-B"]
    check_set(drawn.double_ended(), made)


def test_the_same_sketch_gives_the_same_bytes_in_another_process() -> None:
    here = Path(__file__).parent
    code = (
        "import sys, hashlib; sys.path.insert(0, sys.argv[1])\n"
        "import diagram_sketches as d\n"
        "from wyeline_linter.reports.diagram.sheets import sheets_of\n"
        "from wyeline_linter.reports.diagram.papers import A3\n"
        "from wyeline_linter.reports.diagram.title_strip import TitleBlock\n"
        "made = sheets_of(d.random_network(5, 120), TitleBlock('P'), A3)\n"
        "print(hashlib.sha256(''.join(s.svg for s in made.sheets).encode()).hexdigest())"
    )
    digests = {
        subprocess.run(
            [sys.executable, "-c", code, str(here)],
            capture_output=True,
            text=True,
            check=True,
            env={"PYTHONHASHSEED": s},
        ).stdout
        for s in ("1", "77")
    }
    assert len(digests) == 1


def test_one_more_line_of_words_changes_the_drawing() -> None:
    sketch = drawn.single()
    other = Sketch((replace(sketch.nodes[0], lines=("400 A bus",)),))
    assert drawn_svg(sketch) != drawn_svg(other)


def test_two_hundred_nodes_are_drawn_quickly() -> None:
    sketch = drawn.random_tree(1, 220)
    best = 9.0
    for _ in range(3):
        start = time.thread_time()
        drawn_svg(sketch)
        best = min(best, time.thread_time() - start)
    assert best < 0.3


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 10_000), st.integers(5, 60), st.booleans(), st.sampled_from([12, 6, 99]))
def test_no_drawing_is_smaller_than_what_its_symbols_take_at_least(
    seed: int, size: int, tree: bool, upright_from: int
) -> None:
    """A sketch that is turned away for the room of its symbols would not have fitted when drawn either."""
    sketch = (drawn.random_tree if tree else drawn.random_network)(seed, size)
    picture = Drawing(sketch).picture(upright_from)
    least = sum(least_area_mm2(node, "us") for node in sketch.nodes)
    assert 0 < least <= (picture.width + GAP_MM) * picture.height


def test_a_site_that_is_turned_away_undrawn_is_drawn_on_the_same_sheets() -> None:
    sketch = drawn.crowded_board(500)
    made = all_sheets(sketch)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(sheets, "_too_much", lambda *_: False)
        assert [sheet.svg for sheet in all_sheets(sketch).sheets] == [sheet.svg for sheet in made.sheets]
    assert sheets._too_much(sketch, sheets._rooms(A3, TITLE), "us", A3.least_scale)
