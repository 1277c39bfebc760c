"""Keys that say what was measured at a board that stands already: data of the attribute table."""

from __future__ import annotations

from wyeline_grammar.attribute_types import ALL_BOARDS, TEXT, Use, keyed, quantity

MEASURED_KEYS = (
    keyed(
        "measured",
        "The highest demand that was measured at the board (means over 15 minutes): amperes of its fullest leg, or kVA "
        "or kW of all legs, kW with `pf`. It stands for all that is `existing` behind the board; what is new adds to "
        "it. US practice counts 125 % of it (NEC 220.87), IEC practice the figure itself.",
        Use(
            ALL_BOARDS,
            (quantity("1 A", "6000 A"), quantity("100 VA", "5 MVA"), quantity("100 W", "5 MW")),
            ("measured 86 A", "measured 52 kVA", "measured 47 kW"),
        ),
    ),
    keyed(
        "measured-over",
        "How long it was measured: NEC 220.87 takes the highest demand of a year, or of 30 days and more of "
        "uninterrupted recording.",
        Use(ALL_BOARDS, (quantity("1 h", "3660 d"),), ("measured-over 365 d", "measured-over 30 d")),
    ),
    keyed(
        "measured-by",
        "With what and when it was measured, or whose record it is: printed on its working sheet.",
        Use(ALL_BOARDS, (TEXT,), ('measured-by "interval data of the utility, 2025-03 to 2026-02"',)),
    ),
)
