"""A picture as SVG text: every element a group with its title, names, source line and link, all words selectable.

Colours are the page's: lines and words take ``currentColor`` from ``--oneline-ink``, existing equipment
``--oneline-existing``, the sheet ``--oneline-paper``. On paper everything is black on white.
"""

from __future__ import annotations

import re
from html import escape

from wyeline_linter.reports.diagram.glyphs import Glyph
from wyeline_linter.reports.diagram.labels import ASCENT, FONT_STACK, LEADING, Line
from wyeline_linter.reports.diagram.papers import SheetSize
from wyeline_linter.reports.diagram.picture import Bar, Part, Picture, PlacedGlyph, PlacedText
from wyeline_linter.reports.diagram.sketch import REFERENCES, Edge, Node, Sketch, Status

STYLE = f""".oneline{{--ol-ink:#111;--ol-old:#666;--ol-paper:#fff;color:var(--oneline-ink,var(--ol-ink));\
background:var(--oneline-paper,var(--ol-paper));font-family:{FONT_STACK}}}
@media screen and (prefers-color-scheme:dark){{.oneline{{--ol-ink:#e6e6e6;--ol-old:#a0a0a0;--ol-paper:#16181b}}}}
.oneline text{{fill:currentColor;stroke:none;white-space:pre}}
.oneline .s{{fill:none;stroke:currentColor;stroke-width:.5;stroke-linecap:round;stroke-linejoin:round}}
.oneline .f{{fill:currentColor;stroke:currentColor;stroke-width:.2}}
.oneline .b{{stroke:currentColor;stroke-width:1.3;fill:none}}
.oneline .c{{stroke:currentColor;stroke-width:.3;fill:none}}
.oneline .k{{fill:none;stroke:currentColor;stroke-width:.35}}
.oneline .existing .s,.oneline .existing .b,.oneline .existing .c{{stroke:var(--oneline-existing,var(--ol-old))}}
.oneline .existing .s{{stroke-width:.25}}
.oneline .existing .b{{stroke-width:.75}}
.oneline .existing .f{{fill:var(--oneline-existing,var(--ol-old));stroke:none}}
.oneline .future .s,.oneline .future .b{{stroke-dasharray:1.8 1.1;stroke-linecap:butt}}
.oneline .temporary .s,.oneline .temporary .b{{stroke-dasharray:.01 1.1;stroke-linecap:round}}
.oneline .demolish .s{{stroke-width:.25}}
.oneline .demolish .b{{stroke-width:.75}}
.oneline a{{cursor:pointer}}
.oneline .paper{{fill:var(--oneline-paper,var(--ol-paper))}}
@media print{{.oneline{{--ol-ink:#000;--ol-old:#555;--ol-paper:#fff;--oneline-ink:#000;--oneline-existing:#555;\
--oneline-paper:#fff}}}}"""


def number(value: float) -> str:
    """Millimetres with two decimals at most, never ``-0``."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def svg_page(size: SheetSize, title: str, body: str, name: str = "") -> str:
    """The frame of an SVG document on a sheet of paper."""
    w, h = number(size.room_width), number(size.room_height)
    identity = f'id="{xml(svg_id(name))}" ' if name else ""
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" {identity}class="oneline" role="group" '
        f'width="{number(size.width_mm)}mm" height="{number(size.height_mm)}mm" '
        f'viewBox="0 0 {w} {h}">\n<title>{xml(title)}</title>\n<style>{STYLE}</style>\n'
        f'<rect class="paper" width="{w}" height="{h}"/>\n{body}</svg>\n'
    )


def parts_svg(picture: Picture, sketch: Sketch) -> str:
    """The groups of a picture, without a frame."""
    edges = {e.id: e for e in sketch.edges}
    return "".join(
        _edge_group(part, edges[part.id], sketch) if part.is_edge else _node_group(part, sketch.node[part.id])
        for part in picture.parts
    )


def _node_group(part: Part, node: Node) -> str:
    title = " · ".join((node.tag, node.kind.value.replace("-", " "), *node.words))
    reference = node.kind in REFERENCES
    kind = "reference" if reference else "node"
    return _group(
        part,
        f"{kind} {node.kind} {node.status}",
        f"{kind}-{part.id}",
        node.tag,
        node.source,
        node.working,
        title,
        node.status,
    )


def _edge_group(part: Part, edge: Edge, sketch: Sketch) -> str:
    ends = f"{sketch.node[edge.source].tag} → {sketch.node[edge.target].tag}"
    state = "normally open" if edge.normally_open else "closed"
    title = edge.title or " · ".join((ends, *(edge.device.lines if edge.device else ()), *edge.lines, state))
    return _group(part, f"edge {edge.status}", f"edge-{part.id}", ends, edge.location, edge.working, title, edge.status)


def _group(
    part: Part, classes: str, name: str, data_name: str, source: str, working: str, title: str, status: Status
) -> str:
    attributes = f'id="{xml(svg_id(name))}" class="{classes}" data-name="{xml(data_name)}" data-id="{xml(part.id)}"'
    if source:
        attributes += f' data-source="{xml(source)}"'
    inside = "".join(
        (
            *(_wire(points) for points in part.wires),
            *(_bar(bar) for bar in part.bars),
            *(f'<circle class="f" cx="{number(x)}" cy="{number(y)}" r=".65"/>\n' for x, y in part.dots),
            *(_glyph(glyph) for glyph in part.glyphs),
            *(text_svg(text) for text in part.texts),
            *(_crosses(part) if status is Status.DEMOLISH else ()),
        )
    )
    if working:
        label = "" if part.texts else f' aria-label="{xml(title)}"'
        inside = f'<a href="{xml(working)}"{label}>\n{inside}</a>\n'
    return f"<g {attributes}>\n<title>{xml(title)}</title>\n{inside}</g>\n"


def svg_id(name: str) -> str:
    """A name as an XML id: other letters than word letters, digits, dots and hyphens become ``_`` with their number."""
    return _NOT_IN_ID.sub(lambda m: f"_{ord(m.group()):x}_", name)


_NOT_IN_ID = re.compile(r"[^A-Za-z0-9.\-]")


def xml(text: str) -> str:
    """Text for XML, with characters that XML cannot hold replaced."""
    return escape(re.sub("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]", "\ufffd", text), quote=True)


def _wire(points: tuple[tuple[float, float], ...]) -> str:
    (x, y), *others = points
    path = [f"M{number(x)} {number(y)}"]
    for bx, by in others:
        path.append(
            f"V{number(by)}"
            if abs(bx - x) < 1e-6
            else f"H{number(bx)}"
            if abs(by - y) < 1e-6
            else f"L{number(bx)} {number(by)}"
        )
        x, y = bx, by
    return f'<path class="s" d="{"".join(path)}"/>\n'


def _bar(bar: Bar) -> str:
    line = f"M{number(bar.left)} {{y}}H{number(bar.right)}"
    made = f'<path class="b" d="{line.format(y=number(bar.y))}"/>\n'
    if bar.cased:
        casing = (
            f"M{number(bar.left)} {number(bar.y - 1.5)}H{number(bar.right)}V{number(bar.y + 1.5)}H{number(bar.left)}z"
        )
        made += f'<path class="c" d="{casing}"/>\n'
    return made


def _glyph(placed: PlacedGlyph) -> str:
    move = f"translate({number(placed.x)} {number(placed.y)})" + (" rotate(-90)" if placed.lying else "")
    return f'<g class="glyph" transform="{move}">{glyph_svg(placed.glyph)}</g>\n'


def glyph_svg(glyph: Glyph) -> str:
    """The shapes of a symbol around its own origin."""
    shapes = [f'<path class="{"f" if s.filled else "s"}" d="{s.path}"/>' for s in glyph.strokes]
    shapes += [
        f'<text x="{number(t.x)}" y="{number(t.y + 0.36 * t.size_mm)}" font-size="{number(t.size_mm)}" '
        f'text-anchor="middle">{xml(t.text)}</text>'
        for t in glyph.letters
    ]
    return "".join(shapes)


def text_svg(placed: PlacedText) -> str:
    """Each line as its own text element, filling exactly the width that the layout kept free."""
    made = []
    along = placed.x if placed.upright else placed.y
    for line in placed.block.lines:
        baseline = along + ASCENT * line.size_mm
        if placed.upright:
            made.append(
                _line(
                    line, baseline, placed.y, "end", f' transform="rotate(-90 {number(baseline)} {number(placed.y)})"'
                )
            )
        elif placed.centred:
            made.append(_line(line, placed.x + placed.block.width_mm / 2, baseline, "middle", ""))
        else:
            made.append(_line(line, placed.x, baseline, "", ""))
        along += line.size_mm * LEADING
    return "".join(made)


def _line(line: Line, x: float, y: float, anchor: str, more: str) -> str:
    weight = ' font-weight="bold"' if line.bold else ""
    anchored = f' text-anchor="{anchor}"' if anchor else ""
    return (
        f'<text x="{number(x)}" y="{number(y)}" font-size="{number(line.size_mm)}"{weight}{anchored}{more} '
        f'textLength="{number(line.width_mm)}" lengthAdjust="spacingAndGlyphs">{xml(line.text)}</text>\n'
    )


def _crosses(part: Part) -> list[str]:
    made = []
    boxes = [(g.box, 0.6) for g in part.glyphs] if not part.is_edge else []
    for (left, top, right, bottom), out in boxes:
        a, b, c, d = number(left - out), number(top - out), number(right + out), number(bottom + out)
        made.append(f'<path class="k" d="M{a} {b}L{c} {d}M{a} {d}L{c} {b}"/>\n')
    if not boxes:
        for x, y in part.marks:
            a, b, c, d = number(x - 1.5), number(y - 1.5), number(x + 1.5), number(y + 1.5)
            made.append(f'<path class="k" d="M{a} {b}L{c} {d}M{a} {d}L{c} {b}"/>\n')
    return made
