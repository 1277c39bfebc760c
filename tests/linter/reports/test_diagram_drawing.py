"""The diagram engine measured on its own geometry: nothing overlaps, nothing crosses without need, nothing is lost."""

from __future__ import annotations

from collections import Counter
from itertools import combinations, pairwise

import diagram_sketches as drawn
import pytest

from wyeline_linter.reports.diagram.drawing import Drawing
from wyeline_linter.reports.diagram.picture import Box, Picture, Point
from wyeline_linter.reports.diagram.sketch import Edge, Kind, Node, Sketch

HAND_MADE = {
    "station": drawn.station,
    "double-ended": drawn.double_ended,
    "crowded": drawn.crowded_board,
    "single": drawn.single,
    "ring": drawn.ring,
    "nothing": lambda: Sketch(()),
}
Stretch = tuple[Point, Point]


def overlap(a: Box, b: Box, slack: float = 0.05) -> bool:
    return a[0] + slack < b[2] and b[0] + slack < a[2] and a[1] + slack < b[3] and b[1] + slack < a[3]


def overlapping(picture: Picture) -> list[str]:
    """Words that touch other words or symbols, and symbols that touch symbols of other elements."""
    words = [(text.box, part.id, text.block.lines[0].text) for part in picture.parts for text in part.texts]
    symbols = [(glyph.box, part.id, "symbol") for part in picture.parts for glyph in part.glyphs]
    bars = [((b.left, b.y - 0.6, b.right, b.y + 0.6), p.id, "bar") for p in picture.parts for b in p.bars]
    found = [f"{a[1:]} on {b[1:]}" for a, b in combinations([*words, *symbols, *bars], 2) if overlap(a[0], b[0])]
    for part in picture.parts:
        for a, b in stretches(part.wires):
            line = (min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1]))
            wide = (line[0] - 0.3, line[1] - 0.3, line[2] + 0.3, line[3] + 0.3)
            found += [f"line {part.id} through {w[1:]}" for w in words if overlap(wide, w[0])]
            found += [f"line {part.id} through {s[1:]}" for s in symbols if overlap(line_inside(line), s[0])]
    return found


def line_inside(line: Box) -> Box:
    """The stretch as a thin box without its ends, which may touch a symbol."""
    left, top, right, bottom = line
    if right - left > bottom - top:
        return (left + 0.5, top - 0.1, right - 0.5, bottom + 0.1)
    return (left - 0.1, top + 0.5, right + 0.1, bottom - 0.5)


def stretches(wires: list[tuple[Point, ...]]) -> list[Stretch]:
    return [(a, b) for wire in wires for a, b in pairwise(wire)]


def crossings(picture: Picture) -> int:
    """Pairs of lines of different elements that cross; lines lying on each other count a thousand."""
    lines = [(a, b, part.id) for part in picture.parts for a, b in stretches(part.wires) if part.is_edge]
    across = [(a, b, i) for a, b, i in lines if abs(a[1] - b[1]) < 1e-6]
    down = [(a, b, i) for a, b, i in lines if abs(a[0] - b[0]) < 1e-6]
    assert len(across) + len(down) == len(lines), "every line runs straight down or straight across"
    count = 0
    for a, b, i in across:
        low, high = min(a[0], b[0]), max(a[0], b[0])
        for c, d, j in down:
            if i != j and low + 1e-6 < c[0] < high - 1e-6 and min(c[1], d[1]) + 1e-6 < a[1] < max(c[1], d[1]) - 1e-6:
                count += 1
    for axis, group in ((1, across), (0, down)):
        for (a, b, i), (c, d, j) in combinations(group, 2):
            if i != j and abs(a[axis] - c[axis]) < 0.3:
                other = 1 - axis
                shared = min(max(a[other], b[other]), max(c[other], d[other])) - max(
                    min(a[other], b[other]), min(c[other], d[other])
                )
                count += 1000 if shared > 0.1 else 0
    return count


def check_complete(sketch: Sketch, picture: Picture) -> None:
    names = Counter(("edge" if part.is_edge else "node", part.id) for part in picture.parts)
    wanted = [("node", n.id) for n in sketch.nodes] + [("edge", e.id) for e in sketch.edges]
    assert names == Counter(wanted)
    words = {part.id: " ".join(line.text for t in part.texts for line in t.block.lines) for part in picture.parts}
    for node in sketch.nodes:
        assert squeezed(node.tag) in squeezed(words[node.id])
        for line in node.words:
            assert squeezed(line) in squeezed(words[node.id])
    for part in picture.parts:
        assert part.wires if part.is_edge else (part.glyphs or part.bars)
    for edge in sketch.edges:
        for line in (*edge.lines, *(edge.device.lines if edge.device else ()), edge.to_port):
            assert squeezed(line) in squeezed(words[edge.id])


def squeezed(text: str) -> str:
    return "".join(text.split())


@pytest.mark.parametrize("name", HAND_MADE)
@pytest.mark.parametrize("practice", ["us", "iec"])
def test_hand_made_drawings_are_clean(name: str, practice: str) -> None:
    sketch = HAND_MADE[name]()
    picture = Drawing(sketch, "iec" if practice == "iec" else "us").picture()
    check_complete(sketch, picture)
    assert overlapping(picture) == []
    assert crossings(picture) == 0


@pytest.mark.parametrize("seed", range(100))
def test_random_trees_are_drawn_without_crossings(seed: int) -> None:
    sketch = drawn.random_tree(seed, 4 + seed % 60)
    picture = Drawing(sketch, "us" if seed % 2 else "iec").picture((12, 3)[seed % 3 == 0])
    check_complete(sketch, picture)
    assert overlapping(picture) == []
    assert crossings(picture) == 0


@pytest.mark.parametrize("seed", range(100))
def test_random_networks_are_drawn_without_overlaps(seed: int) -> None:
    sketch = drawn.random_network(seed, 6 + seed % 50)
    picture = Drawing(sketch, "us" if seed % 2 else "iec").picture((12, 3)[seed % 3 == 0])
    check_complete(sketch, picture)
    assert overlapping(picture) == []
    assert crossings(picture) < 1000


def test_every_supply_stands_above_what_it_feeds() -> None:
    sketch = drawn.station()
    picture = Drawing(sketch).picture()
    top = {
        p.id: min(b[1] for b in [*(g.box for g in p.glyphs), *((0, b.y, 0, 0) for b in p.bars)])
        for p in picture.parts
        if not p.is_edge
    }
    for edge in sketch.edges:
        assert top[edge.source] < top[edge.target]


def test_tied_boards_stand_side_by_side() -> None:
    picture = Drawing(drawn.double_ended()).picture()
    bars = {p.id: p.bars[0] for p in picture.parts if p.bars}
    assert bars["MDB-A"].y == bars["MDB-B"].y
    assert bars["MDB-A"].right < bars["MDB-B"].left
    tie = next(p for p in picture.parts if p.id.startswith("MDB-A-MDB-B"))
    assert {point[1] for wire in tie.wires for point in wire} == {bars["MDB-A"].y}


def test_taps_of_a_busway_keep_their_distances_in_order() -> None:
    picture = Drawing(drawn.double_ended()).picture()
    x = {p.id: p.glyphs[0].x for p in picture.parts if p.id.startswith("DB-")}
    assert x["DB-1"] < x["DB-2"] < x["DB-3"]


def test_the_transfer_switch_stands_on_its_normal_input() -> None:
    picture = Drawing(drawn.station()).picture()
    parts = {p.id: p for p in picture.parts}
    switch = parts["ATS-1"].glyphs[0]
    normal = next(p for i, p in parts.items() if i.startswith("MSB-ATS-1"))
    arrives = normal.wires[-1][-1][0]
    blade = switch.glyph.strokes[0].path.split("L")[1].split()[0]
    assert (arrives > switch.x) == (float(blade) > 0)


def test_a_sketch_with_loose_ends_is_refused() -> None:
    a = Node("A", Kind.PANEL, "A")
    with pytest.raises(ValueError, match="ends at B"):
        Sketch((a,), (Edge("e", "A", "B"),))
    with pytest.raises(ValueError, match="same id"):
        Sketch((a, a))


def test_three_transfer_switches_with_own_generators_cross_nothing() -> None:
    b = drawn.Builder()
    b.node(Kind.UTILITY, "GRID")
    b.node(Kind.SWITCHBOARD, "MSB", "1600 A bus")
    b.feed("GRID", "MSB")
    for number in range(3):
        b.node(Kind.TRANSFER, f"ATS-{number}", "260 A")
        b.node(Kind.GENERATOR, f"GEN-{number}", "125 kVA")
        b.node(Kind.LOAD, f"L-{number}", "40 kW")
        b.feed("MSB", f"ATS-{number}", "200 A 3P", to_port="normal")
        b.feed(f"GEN-{number}", f"ATS-{number}", "200 A 3P", to_port="emergency")
        b.feed(f"ATS-{number}", f"L-{number}")
    picture = Drawing(b.sketch()).picture()
    assert overlapping(picture) == []
    assert crossings(picture) == 0


def test_separate_services_are_set_in_rows() -> None:
    b = drawn.Builder()
    for number in range(9):
        b.node(Kind.UTILITY, f"NET-{number}", "480Y/277 V")
        b.node(Kind.PANEL, f"P-{number}", "225 A bus")
        b.feed(f"NET-{number}", f"P-{number}", "200 A 3P", "12 m")
    picture = Drawing(b.sketch()).picture()
    check_complete(b.sketch(), picture)
    assert overlapping(picture) == []
    assert 0.5 < picture.width / picture.height < 4
