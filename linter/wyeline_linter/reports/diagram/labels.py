"""How much room words take: widths of a generic sans-serif, line breaking, and blocks of lines.

All lengths are millimetres on an unscaled sheet. Every text is written with the width measured here as its
``textLength``, so a viewer with another font still fills exactly the box that the layout kept free.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import lru_cache

FONT_STACK = "'Liberation Sans',Arial,Helvetica,'Nimbus Sans',Roboto,'Noto Sans','DejaVu Sans',sans-serif"
TAG_MM = 3.0
TEXT_MM = 2.3
LEADING = 1.28
"""Distance of two baselines, in letter sizes."""
ASCENT = 0.93
"""From the top of a line's box to its baseline, in letter sizes."""

# Advance widths in thousandths of the letter size, as in the metric-compatible open sans-serif fonts.
_REGULAR = {
    188: "′",
    191: "'",
    222: "ijl",
    260: "|",
    278: " !,./:;I[\\]ft·",
    333: "()-`r²³",
    334: "{}",
    355: '"″',
    389: "*",
    400: "°",
    469: "^",
    500: "Jcksvxyzç",
    549: "±≤≥√",
    556: "#$0123456789?L_abdeghnopqu–äöüéèñå",
    576: "µ",
    584: "+<=>~×",
    611: "FTZß",
    667: "&ABEKPSVXYÄÉΔφ",
    722: "CDHNRUwÜ",
    778: "GOQÖΩ",
    833: "Mm½¼¾",
    889: "%",
    944: "W",
    1015: "@",
}
_BOLD = {
    240: "'′",
    278: " ,./I\\ijl·",
    280: "|",
    333: "!()-:;[]`ft²³",
    389: "*r{}",
    400: "°",
    479: '"″',
    500: "z",
    549: "±≤≥√",
    556: "#$0123456789J_aceksvxy–äéèçå",
    584: "+<=>^~×µ",
    611: "?FLTZbdghnopquöüñß",
    667: "EPSVXYÉ",
    722: "&ABCDHKNRUÄÜΔφ",
    778: "GOQwÖ",
    833: "M½¼¾Ω",
    889: "%m",
    944: "W",
    975: "@",
}
_REGULAR_WIDTH = {letter: width for width, letters in _REGULAR.items() for letter in letters}
_BOLD_WIDTH = {letter: width for width, letters in _BOLD.items() for letter in letters}
_OTHER = 1000
"""For every other letter: wide enough for ideographs."""


@lru_cache(maxsize=8192)
def text_width_mm(text: str, size_mm: float, bold: bool = False) -> float:
    """Width of one line of text."""
    table = _BOLD_WIDTH if bold else _REGULAR_WIDTH
    return sum(table.get(letter, _OTHER) for letter in text) * size_mm / 1000


@dataclass(frozen=True, slots=True)
class Line:
    """One line of text of a block."""

    text: str
    size_mm: float = TEXT_MM
    bold: bool = False

    @property
    def width_mm(self) -> float:
        return text_width_mm(self.text, self.size_mm, self.bold)


@dataclass(frozen=True, slots=True)
class Block:
    """Lines under each other, measured once: a drawing asks many times."""

    lines: tuple[Line, ...]
    width_mm: float = field(init=False, compare=False)
    height_mm: float = field(init=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "width_mm", max((line.width_mm for line in self.lines), default=0.0))
        object.__setattr__(self, "height_mm", sum(line.size_mm * LEADING for line in self.lines))


EMPTY_BLOCK = Block(())


def broken(text: str, width_mm: float, size_mm: float = TEXT_MM, bold: bool = False) -> list[str]:
    """The text in as few lines as the width allows, of lengths as even as possible.

    A line breaks at a space, ahead of a ``+`` and behind a comma; a word longer than a line is cut, nothing is lost.
    """
    words = _words(text, width_mm, size_mm, bold)
    if not words:
        return []
    lines = _filled(words, width_mm, size_mm, bold)
    low, high = max(text_width_mm(word, size_mm, bold) for word in words), width_mm
    while len(lines) > 1 and high - low > size_mm / 2:
        middle = (low + high) / 2
        tried = _filled(words, middle, size_mm, bold)
        if len(tried) == len(lines):
            lines, high = tried, middle
        else:
            low = middle
    return lines


def _words(text: str, width_mm: float, size_mm: float, bold: bool) -> list[str]:
    words: list[str] = []
    for word in _unbroken(text, width_mm, size_mm, bold):
        words += _cut(word, width_mm, size_mm, bold)
    return words


def _cut(word: str, width_mm: float, size_mm: float, bold: bool) -> list[str]:
    """A word in parts that are no wider than a line; a part has at least one letter."""
    parts, start, width = [], 0, 0.0
    for at, letter in enumerate(word):
        more = text_width_mm(letter, size_mm, bold)
        if at > start and width + more > width_mm * (1 + 1e-9):
            parts.append(word[start:at])
            start, width = at, 0.0
        width += more
    return [*parts, word[start:]]


def _unbroken(text: str, width_mm: float, size_mm: float, bold: bool) -> list[str]:
    """Words, with what belongs together as one: a ``+`` part of a conductor text, a number and its unit."""
    parts: list[str] = []
    for part in re.split(r"\s+(?=\+\s)|(?<=,)\s+", text.strip()):
        if text_width_mm(part, size_mm, bold) <= width_mm:
            parts.append(part)
            continue
        for word in part.split():
            if parts and parts[-1] in ("+", "in", "x", "×", "to"):
                word = f"{parts.pop()} {word}"
            parts.append(word)
    return [part for part in parts if part]


def _filled(words: list[str], width_mm: float, size_mm: float, bold: bool) -> list[str]:
    lines = [words[0]]
    for word in words[1:]:
        longer = f"{lines[-1]} {word}"
        if text_width_mm(longer, size_mm, bold) <= width_mm:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


@lru_cache(maxsize=1 << 16)  # a sketch too large for one sheet is drawn many times, with the words of all its parts
def text_block(lines: tuple[str, ...], width_mm: float, tag: str = "") -> Block:
    """A block of plain lines, each broken to the width, below a bold tag if there is one."""
    made = [Line(part, TAG_MM, True) for part in broken(tag, width_mm, TAG_MM, True)]
    made.extend(Line(part) for text in lines for part in broken(text, width_mm))
    return Block(tuple(made))
