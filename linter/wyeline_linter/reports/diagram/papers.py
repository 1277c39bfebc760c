"""Paper of drawings: sizes of sheets, and how large letters are on them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from wyeline_linter.reports.diagram.labels import TEXT_MM

CAPITAL = 0.718
"""Height of a capital in letter sizes: Adobe core font metrics of Helvetica (AFM 4.1, published), CapHeight 718."""
_LEAST_SCALE = 0.72
"""Below this the words would fall under the smallest lettering that is read with ease on paper, capitals of 1.2 mm."""


@dataclass(frozen=True, slots=True)
class SheetSize:
    """Width and height of a sheet lying on its long side, in millimetres of paper.

    A sheet is laid out as a smaller one of ``room_width`` by ``room_height`` and printed ``magnified`` times as large,
    words, symbols and title block alike. ``least_scale`` is the most that a drawing is reduced to fit into that.
    """

    name: str
    width_mm: float
    height_mm: float
    magnified: float = 1.0
    least_scale: float = _LEAST_SCALE

    @property
    def room_width(self) -> float:
        """The width of the sheet before it is magnified."""
        return self.width_mm / self.magnified

    @property
    def room_height(self) -> float:
        """The height of the sheet before it is magnified."""
        return self.height_mm / self.magnified

    def capitals_mm(self, scale: float) -> float:
        """Height on paper of capitals beside symbols, of a drawing at a scale."""
        return scale * TEXT_MM * CAPITAL * self.magnified

    def lettered(self, lettering_mm: float) -> SheetSize:
        """The same sheet with capitals of a height, or higher."""
        return replace(self, least_scale=lettering_mm / (TEXT_MM * CAPITAL * self.magnified))


# Capitals of 1.5 mm and 1.8 mm: a sheet that is looked at from further away has larger letters. 1.8 mm is the smallest
# nominal height of ISO 3098-1 (from memory).
_MIDDLE, _LARGE = 1.5 / (_LEAST_SCALE * TEXT_MM * CAPITAL), 1.8 / (_LEAST_SCALE * TEXT_MM * CAPITAL)

A3 = SheetSize("A3", 420.0, 297.0)
TABLOID = SheetSize("tabloid", 431.8, 279.4)
PAPERS = {
    size.name.replace(" ", "-"): size
    for size in (
        A3,  # ISO 216
        SheetSize("A2", 594.0, 420.0, _MIDDLE),
        SheetSize("A1", 841.0, 594.0, _LARGE),
        SheetSize("A0", 1189.0, 841.0, _LARGE),
        TABLOID,  # ANSI/ASME Y14.1: sizes B (17 in by 11 in), C, D and E
        SheetSize("ANSI C", 558.8, 431.8, _MIDDLE),
        SheetSize("ANSI D", 863.6, 558.8, _LARGE),
        SheetSize("ANSI E", 1117.6, 863.6, _LARGE),
        SheetSize("Arch C", 609.6, 457.2, _MIDDLE),  # 24 in by 18 in, 36 by 24, 48 by 36: common practice, no source
        SheetSize("Arch D", 914.4, 609.6, _LARGE),
        SheetSize("Arch E", 1219.2, 914.4, _LARGE),
    )
}
"""Every paper that a drawing may be asked for on, by the word that asks for it."""


def paper_named(word: str) -> str | None:
    """The word of a paper, whatever its case, with a blank for the hyphen too; None where there is no such paper."""
    return next((name for name in PAPERS if name.casefold() == word.casefold().replace(" ", "-")), None)


LETTERING_MM = (1.0, 5.0)
"""The least and the most that may be asked for as the height of the smallest capitals."""
