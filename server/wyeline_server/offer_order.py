"""In which order words and figures are offered: what the place alone has before what stands nearly everywhere."""

from __future__ import annotations

from collections.abc import Iterator

from wyeline_grammar.attribute_types import FACILITIES
from wyeline_grammar.attributes import FLAGS, KEYS, LOAD_CLASSES, flags_at, keys_at, unkeyed_at
from wyeline_grammar.quantities import parse_quantity
from wyeline_grammar.syntax import Token
from wyeline_grammar.units import DIMENSIONS
from wyeline_grammar.vocabulary import BOARDS

_LAST = frozenset({"limit", "measured", "measured-over", "measured-by", "enclosure", "mounting"})
"""Keys that few lines have."""
_LOAD_KINDS = frozenset({"circuit", "load"})


def keys_in_order(place: str) -> list[str]:
    """The keys of a place: those that nearly everything may have last."""
    seldom = _LAST | {"pf"} if place in BOARDS else _LAST
    return sorted(keys_at(place), key=lambda key: (key in seldom) + 2 * _general(key))


def _general(key: str) -> bool:
    return key != "lug-temp" and {place for use in KEYS[key].uses for place in use.places} >= FACILITIES


def flags_in_order(place: str) -> tuple[list[str], list[str]]:
    """The flags of a place: those that say what it is, which stand before its keys, and the others."""
    first = ("spare", "space", *LOAD_CLASSES, "continuous") if place in _LOAD_KINDS else ()
    flags = flags_at(place)
    early = [flag for flag in flags if flag in first and FLAGS[flag].group != "status"]
    return early, [flag for flag in flags if flag not in early]


def quantities(place: str, tokens: tuple[Token, ...]) -> Iterator[tuple[str, str]]:
    """Figures that need no key at a place, as examples, each with what it means; none of a kind that is written."""
    written = {parse_quantity(token.text).dimension for token in tokens if token.kind == "QUANTITY"}
    powers = {"power", "apparent-power", "reactive-power"}
    told: set[str] = set()
    for meaning in unkeyed_at(place):
        dimension = meaning.accept.dimension
        group = "power" if dimension in powers else dimension
        known = bool(written & powers) if group == "power" else dimension in written
        device = dimension == "current" and place in ("feeder", "circuit")
        if known or device or dimension == "reactive-power" or (group != "power" and group in told):
            continue
        told.add(group)
        large = dimension == "apparent-power" and place in FACILITIES - {"load"}
        yield _AS_EXAMPLE.get(dimension, DIMENSIONS[dimension].examples[-large]), f"{meaning.doc}, an example"


_AS_EXAMPLE = {"length": "30 m"}
"""Where the first example of a dimension is none of what usually stands without a key."""
