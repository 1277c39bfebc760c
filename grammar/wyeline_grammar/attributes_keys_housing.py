"""Keys that say what equipment is enclosed in and what it is mounted on: data of the attribute table."""

from __future__ import annotations

from wyeline_grammar.attribute_types import FACILITIES, Accept, Use, keyed, words

_HOUSED = FACILITIES - {"utility"}
ENCLOSURE_TYPES = frozenset(f"NEMA-{kind}" for kind in "1 2 3 3R 3S 3X 3RX 3SX 4 4X 5 6 6P 7 8 9 10 12 12K 13".split())
"""The types of NEMA 250 and UL 50E (list from memory)."""
IP_CODE = r"IP(?:[0-6]|X)(?:[0-9]|X)[A-D]?[HMSWK]?"
"""Degrees of protection of IEC 60529: two numerals, X where one is not said, and letters (K: ISO 20653)."""

HOUSING_KEYS = (
    keyed(
        "enclosure",
        "What it is enclosed in: a type of NEMA 250 and UL 50E, written with a hyphen, or an IP code of IEC 60529.",
        Use(
            _HOUSED,
            (
                Accept("pattern", pattern="|".join(sorted(ENCLOSURE_TYPES)), phrase="a type such as NEMA-3R"),
                Accept("pattern", pattern=IP_CODE, phrase="an IP code such as IP54"),
            ),
            ("enclosure NEMA-1", "enclosure NEMA-3R", "enclosure IP54"),
        ),
    ),
    keyed(
        "mounting",
        "How it is mounted: on a surface or a wall, flush in a wall, on the floor, a pole, a pad or a rack, from the "
        "ceiling.",
        Use(_HOUSED, (words("surface flush wall floor pole pad rack ceiling"),), ("mounting flush", "mounting pad")),
    ),
)
