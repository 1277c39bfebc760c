"""The symbols, drawn from lines, arcs and letters after the practice of IEC 60617 and IEEE 315.

Every symbol hangs from the point (0, 0) of the line that enters it at the top and leaves it at (0, height). Lengths
are millimetres. ``practice`` chooses where the two standards differ: transformer (coils, or two circles) and breaker
(arc over the gap, or contact with a cross).
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

from wyeline_linter.reports.diagram.sketch import DeviceKind, Kind, Node, Winding

Practice = Literal["us", "iec"]
PORT_MM = 3.5
"""Distance of the two inputs of a transfer switch or UPS from its middle."""
TWO_INPUTS = frozenset({Kind.TRANSFER, Kind.UPS})


@dataclass(frozen=True, slots=True)
class Stroke:
    """An SVG path, filled or only drawn."""

    path: str
    filled: bool = False


@dataclass(frozen=True, slots=True)
class Letter:
    """A short text inside a symbol, centred at (x, y)."""

    text: str
    x: float
    y: float
    size_mm: float = 3.0


@dataclass(frozen=True, slots=True)
class Glyph:
    """A symbol that reaches ``left`` and ``right`` of its axis."""

    left: float
    right: float
    height: float
    strokes: tuple[Stroke, ...] = ()
    letters: tuple[Letter, ...] = ()


def _circle(x: float, y: float, r: float) -> str:
    return f"M{x - r:g} {y:g}a{r:g} {r:g} 0 1 0 {2 * r:g} 0a{r:g} {r:g} 0 1 0 {-2 * r:g} 0z"


def _box(x: float, y: float, width: float, height: float) -> str:
    return f"M{x:g} {y:g}h{width:g}v{height:g}h{-width:g}z"


def _ground(x: float, y: float) -> str:
    """Three bars that get shorter, below the point."""
    return f"M{x - 1.6:g} {y:g}h3.2M{x - 1:g} {y + 0.8:g}h2M{x - 0.45:g} {y + 1.6:g}h.9"


_SINE = "M{x:g} {y:g}c.6 -1.7 1.2 -1.7 1.8 0s1.2 1.7 1.8 0"


def _sine(x: float, y: float) -> str:
    return _SINE.format(x=x - 1.8, y=y)


def _dc(x: float, y: float) -> str:
    return f"M{x - 1.5:g} {y - 0.5:g}h3M{x - 1.5:g} {y + 0.5:g}h.8m.3 0h.8m.3 0h.8"


def _converter(first: str, second: str) -> Glyph:
    return Glyph(5, 5, 10, (Stroke(_box(-5, 0, 10, 10)), Stroke("M-5 10L5 0"), Stroke(first), Stroke(second)))


def _round(letter: str) -> Glyph:
    return Glyph(
        4.5, 4.5, 9, (Stroke(_circle(0, 4.5, 4.5)),), (Letter(letter, 0, 4.5, 4.2 if len(letter) == 1 else 3),)
    )


def _transfer(side: int) -> Glyph:
    """Two contacts and a blade on the left (-1) or right (1) one."""
    s = side
    return Glyph(
        5.5,
        5.5,
        9,
        (
            Stroke(f"M-3.5 0V2.1M3.5 0V2.1M0 9V6.8L{3.2 * s:g} 2.9M-1.2 6.8h2.4"),
            Stroke(_circle(3.5 * s, 2.6, 0.55), True),
            Stroke(_circle(-3.5 * s, 2.6, 0.55)),
            Stroke(f"M{1.9 * s:g} 3.4Q0 2.2 {-1.9 * s:g} 3.4M{-1.2 * s:g} 2.6l{-0.7 * s:g} .8l{1.1 * s:g} .1"),
        ),
    )


_BLADE = "M0 {h:g}v-1.2l-2.3 -3.8"

_FIXED: dict[Kind, Glyph] = {
    Kind.UTILITY: Glyph(5, 5, 7, (Stroke("M-5 .3h10M0 .3V7"), Stroke("M0 5l-1.5 -3.4h3z", True))),
    Kind.GENERATOR: Glyph(4.5, 4.5, 9, (Stroke(_circle(0, 4.5, 4.5) + _sine(0, 6.6)),), (Letter("G", 0, 3.5, 4),)),
    Kind.INVERTER: _converter(_dc(-2.4, 2.6), _sine(2.3, 7.4)),
    Kind.DRIVE: _converter(_sine(-2.2, 2.6), _sine(2.3, 6.9) + "M1 8.6h2.7m-.9 -.6l.9 .6l-.9 .6"),
    Kind.BATTERY: Glyph(4, 4, 7, (Stroke("M0 0V1.7M-4 1.7h8M-2 3h4M-4 4.3h8M-2 5.6h4M0 5.6V7"),)),
    Kind.UPS: Glyph(
        6.5,
        6.5,
        11,
        (
            Stroke(_box(-6.5, 0, 13, 11)),
            Stroke(_sine(-3.5, 2.4) + "M-1.2 2.4h1.6m-.6 -.5l.6 .5l-.6 .5" + _dc(2.6, 2.4)),
            Stroke("M-1.8 7.5h3.6M-1 8.5h2M-1.8 9.5h3.6M2.6 3.7V6.2H0v1.3M0 9.5V11"),
        ),
    ),
    Kind.TRANSFER: _transfer(-1),
    Kind.DISCONNECT: Glyph(3, 3, 7.5, (Stroke("M0 0V2M-1.1 2h2.2M0 7.5V6L-2.6 1.9"), Stroke(_circle(0, 6, 0.5), True))),
    Kind.MOTOR: _round("M"),
    Kind.LOAD: Glyph(2, 2, 5.5, (Stroke("M0 0V2.2"), Stroke("M0 5.5l-1.8 -3.4h3.6z", True))),
    Kind.CHARGER: _converter(_sine(-2.4, 2.6), _dc(2.3, 7.4)),
    Kind.CHARGING_POINT: Glyph(
        4.5, 4.5, 8, (Stroke(_box(-4.5, 0, 9, 8)), Stroke("M-1.6 6.2h3.2")), (Letter("EV", 0, 3.1, 3.4),)
    ),
    Kind.CAPACITOR: Glyph(3, 3, 8, (Stroke("M0 0V2.6M-3 2.6h6M-3 4h6M0 4V6.2" + _ground(0, 6.2)),)),
    Kind.METER: _round("Wh"),
    Kind.SPD: Glyph(
        2.2,
        2.2,
        9.5,
        (
            Stroke("M0 0V1.2" + _box(-1.6, 1.2, 3.2, 5) + "M0 6.2V7.7" + _ground(0, 7.7)),
            Stroke("M0 5.4l-1 -2.4h2z", True),
        ),
    ),
    Kind.JUNCTION: Glyph(0.8, 0.8, 1.4, (Stroke(_circle(0, 0.7, 0.7), True),)),
    Kind.REFERENCE_OUT: Glyph(4, 4, 6, (Stroke("M-4 0h8v3l-4 3l-4 -3z"),)),
    Kind.REFERENCE_IN: Glyph(4, 4, 6, (Stroke("M-4 0h8v3l-4 3l-4 -3z"),)),
}
_TRANSFER_RIGHT = _transfer(1)
_SMALL_BOARD = Glyph(6, 6, 5.5, (Stroke(_box(-6, 0, 12, 5.5)), Stroke("M-4.6 1.7h9.2v1.1h-9.2z", True)))

_BREAKER_US = Glyph(
    1.7,
    1,
    6,
    (Stroke("M0 0V1.2M0 4.8V6M0 1.2A1.9 1.9 0 0 0 0 4.8"), Stroke(_circle(0, 1.2, 0.4) + _circle(0, 4.8, 0.4), True)),
)
_BREAKER_IEC = Glyph(2.6, 1.2, 6, (Stroke("M0 0V1.4M-.8 .6l1.6 1.6M.8 .6l-1.6 1.6" + _BLADE.format(h=6)),))
_FUSE = Glyph(1.3, 1.3, 6, (Stroke("M0 0V6" + _box(-1.3, 0.7, 2.6, 4.6)),))
_SWITCH = Glyph(2.6, 1.2, 6, (Stroke("M0 0V1.2M-1 1.2h2" + _BLADE.format(h=6)),))


def device_glyph(kind: DeviceKind, practice: Practice) -> Glyph:
    """The symbol of a device on a line, 6 mm high."""
    if kind is DeviceKind.FUSE:
        return _FUSE
    if kind is DeviceKind.SWITCH:
        return _SWITCH
    return _BREAKER_IEC if practice == "iec" else _BREAKER_US


def lying(glyph: Glyph) -> Glyph:
    """The measures of a symbol turned on its side; whoever draws it turns the strokes by a quarter."""
    return replace(glyph, left=0, right=glyph.height, height=glyph.left + glyph.right)


def node_glyph(node: Node, practice: Practice, stands_right: bool = False) -> Glyph:
    """The symbol of a node; a board gets the box of a board that feeds nothing on this drawing.

    ``stands_right`` turns the blade of a transfer switch to its right input.
    """
    if node.kind is Kind.TRANSFER and stands_right:
        return _TRANSFER_RIGHT
    if node.kind is Kind.TRANSFORMER:
        return _transformer(node.windings or (Winding(), Winding()), practice)
    return _FIXED.get(node.kind, _SMALL_BOARD)


@lru_cache(maxsize=256)
def _transformer(windings: tuple[Winding, Winding], practice: Practice) -> Glyph:
    strokes: list[Stroke] = []
    letters: list[Letter] = []
    if practice == "iec":
        centres = (4.2, 9.8)
        strokes.append(Stroke(_circle(0, 4.2, 4.2) + _circle(0, 9.8, 4.2)))
        marks = ((0.0, 3.1), (0.0, 10.9))
        edge, height = 4.2, 14.0
    else:
        centres = (2.6, 8.4)
        bumps = "a1.2 1.2 0 0 {turn} 2.4 0" * 4
        strokes.append(Stroke("M0 0V3M-4.8 3" + bumps.format(turn=0) + "M0 11V8M-4.8 8" + bumps.format(turn=1)))
        marks = ((-7.4, 2.6), (-7.4, 8.6))
        edge, height = 4.8, 11.0
    left = edge
    for winding, (x, y), centre in zip(windings, marks, centres, strict=True):
        strokes_of, letter = _mark(winding.connection, x, y)
        strokes.extend(strokes_of)
        letters.extend(letter)
        if practice == "us":
            left = max(left, 9.2)
        if winding.grounded:
            start = -edge if practice == "iec" else x - (1.5 if winding.connection in ("wye", "zigzag") else 1.7)
            at = centre if practice == "iec" else y
            strokes.append(Stroke(f"M{start:g} {at:g}H{start - 2.2:g}v1.6" + _ground(start - 2.2, at + 1.6)))
            left = max(left, 2.2 + 1.6 - start)
    return Glyph(left, edge, height, tuple(strokes), tuple(letters))


def _mark(connection: str, x: float, y: float) -> tuple[list[Stroke], list[Letter]]:
    """Delta, star, zigzag or single-phase mark, about 3 mm, centred at (x, y); a question mark where unknown."""
    if connection == "delta":
        return [Stroke(f"M{x - 1.7:g} {y + 1.3:g}h3.4l-1.7 -2.9z")], []
    if connection == "wye":
        return [Stroke(f"M{x:g} {y:g}v1.7M{x:g} {y:g}l-1.5 -1.4M{x:g} {y:g}l1.5 -1.4")], []
    if connection == "zigzag":
        return [Stroke(f"M{x - 1.2:g} {y - 1.4:g}h2.4l-2.4 2.8h2.4")], []
    if connection == "single":
        return [Stroke(f"M{x:g} {y - 1.5:g}v3M{x - 0.8:g} {y - 1.5:g}h1.6m-1.6 3h1.6")], []
    return [], [Letter("?", x, y, 3)]
