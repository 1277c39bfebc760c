"""What the symbols on a sheet mean: one entry for each, in a title strip that has room for all of them."""

from __future__ import annotations

from math import ceil
from typing import NamedTuple

from wyeline_linter.reports.diagram.glyphs import Glyph, Practice, Stroke, device_glyph
from wyeline_linter.reports.diagram.labels import Block, Line
from wyeline_linter.reports.diagram.picture import Picture, PlacedText
from wyeline_linter.reports.diagram.sketch import BUSES, KIND_WORDS, DeviceKind, Kind, Sketch
from wyeline_linter.reports.diagram.svg import glyph_svg, number, text_svg

_ENTRY_MM = 31.0
_ROWS, _ROW_MM, _GLYPH_MM = 4, 5.7, 4.9
_GLYPH_WIDE_MM = 7.0

_DEVICES = {
    DeviceKind.BREAKER: "circuit breaker",
    DeviceKind.FUSE: "fuse",
    DeviceKind.SWITCH: "switch",
}
_KINDS = KIND_WORDS | {
    Kind.CHARGER: "charger, rectifier",
    Kind.CHARGING_POINT: "charging point",
    Kind.REFERENCE_OUT: "another sheet",
    Kind.REFERENCE_IN: "another sheet",
}
_ORDER = [_KINDS.get(kind, kind.value) for kind in Kind]
_BUS = Glyph(6, 6, 1, (Stroke("M-6 -.2h12v1.3h-12z", True),))
_BUSWAY = Glyph(6, 6, 3, (Stroke("M-6 0h12v3h-12z"), Stroke("M-6 .9h12v1.2h-12z", True)))


class Symbol(NamedTuple):
    """A symbol with its meaning."""

    glyph: Glyph
    words: str


def symbols_of(sketch: Sketch, picture: Picture, practice: Practice) -> tuple[Symbol, ...]:
    """Every symbol that a sketch was drawn with, devices first; the first transformer stands for all of them."""
    devices = {device.kind for edge in sketch.edges for device in (edge.device, edge.main) if device is not None}
    found = [Symbol(device_glyph(kind, practice), words) for kind, words in _DEVICES.items() if kind in devices]
    drawn: dict[str, Glyph] = {}
    for part in picture.parts:
        if not part.is_edge:
            kind = sketch.node[part.id].kind
            if part.bars:
                drawn.setdefault(*(("busway", _BUSWAY) if kind is Kind.BUSWAY else ("bus", _BUS)))
            else:
                words = "board, panel" if kind in BUSES else _KINDS.get(kind, kind.value)
                drawn.setdefault(words, part.glyphs[0].glyph)
    return (*found, *(Symbol(glyph, words) for words, glyph in sorted(drawn.items(), key=lambda d: _place(d[0]))))


def _place(words: str) -> int:
    return _ORDER.index(words) if words in _ORDER else -1


def legend_width_mm(symbols: tuple[Symbol, ...]) -> float:
    """How much of a strip they take."""
    return ceil(len(symbols) / _ROWS) * _ENTRY_MM


def symbol_legend(symbols: tuple[Symbol, ...], left: float, top: float) -> str:
    """The symbols with their words, column by column, from the left upper corner of their cell."""
    made = [text_svg(PlacedText(Block((Line("Symbols", 1.8),)), left + 2, top + 1.2))]
    for at, (glyph, words) in enumerate(symbols):
        x = left + 2 + at // _ROWS * _ENTRY_MM
        y = top + 3.7 + at % _ROWS * _ROW_MM
        scale = min(_GLYPH_MM / glyph.height, _GLYPH_WIDE_MM / (glyph.left + glyph.right), 0.8)
        middle = x + _GLYPH_WIDE_MM / 2 + (glyph.left - glyph.right) * scale / 2
        down = y + (_GLYPH_MM - glyph.height * scale) / 2
        move = f"translate({number(middle)} {number(down)}) scale({scale:.3f})"
        made.append(f'<g class="glyph" transform="{move}">{glyph_svg(glyph)}</g>\n')
        line = Line(words, 2.1)
        made.append(text_svg(PlacedText(Block((line,)), x + _GLYPH_WIDE_MM + 1.5, y + (_GLYPH_MM - 2.7) / 2)))
    return "".join(made)
