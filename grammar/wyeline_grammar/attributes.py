"""THE table of attributes: every key, flag, kind and word of the language with its meaning, put together for asking.

The parser's checks, hover, completion, the language reference and the range check of values all read it here.
"""

from __future__ import annotations

from functools import lru_cache

from wyeline_grammar.attribute_types import Accept, Flag, Key, Kind, Place, Unkeyed, Use, Word
from wyeline_grammar.attributes_keys import ALL_KEYS, KEY_GROUPS
from wyeline_grammar.attributes_kinds import ALL_KINDS, ALL_PLACES
from wyeline_grammar.attributes_words import (
    ALL_ACTIONS,
    ALL_FLAGS,
    ALL_ROLES,
    ALL_SMALL_WORDS,
    ALL_STATEMENTS,
    FLAG_GROUPS,
)
from wyeline_grammar.quantities import convert, format_quantity, unit_for
from wyeline_grammar.units import DIMENSIONS

__all__ = [
    "ACTIONS",
    "ALL_FLAGS",
    "ALL_KEYS",
    "ALL_KINDS",
    "CLASS_KINDS",
    "FLAGS",
    "FLAG_GROUPS",
    "KEYS",
    "KEY_GROUPS",
    "KINDS",
    "LOAD_CLASSES",
    "PLACES",
    "ROLES",
    "SMALL_WORDS",
    "STATEMENTS",
    "STATUS",
    "Accept",
    "Flag",
    "Key",
    "Kind",
    "Place",
    "Unkeyed",
    "Use",
    "Word",
    "accept_phrase",
    "doc_of",
    "flags_at",
    "keys_at",
    "listed",
    "place_phrase",
    "range_phrase",
    "takes_poles",
    "unkeyed_at",
    "use_of",
]

KEYS: dict[str, Key] = {key.word: key for key in ALL_KEYS}
"""Every key, and ``at``, whose value is checked like a key's."""
FLAGS: dict[str, Flag] = {flag.word: flag for flag in ALL_FLAGS}
KINDS: dict[str, Kind] = {kind.word: kind for kind in ALL_KINDS}
PLACES: dict[str, Place] = {place.word: place for place in ALL_PLACES}
STATEMENTS: dict[str, Word] = {word.word: word for word in ALL_STATEMENTS}
SMALL_WORDS: dict[str, Word] = {word.word: word for word in ALL_SMALL_WORDS}
ACTIONS: dict[str, Word] = {word.word: word for word in ALL_ACTIONS}
ROLES: dict[str, Word] = {word.word: word for word in ALL_ROLES}

STATUS = frozenset(flag.word for flag in ALL_FLAGS if flag.group == "status")
CLASS_KINDS = frozenset("motor drive charger capacitor transformer ups battery spd meter load".split())
"""Kinds that may stand on a circuit or a load as the class of what is fed: ``7.5 kW motor``."""
LOAD_CLASSES = frozenset(flag.word for flag in ALL_FLAGS if flag.group == "load-class")
"""The flags that are a load's class; a kind of ``CLASS_KINDS`` is one too."""

_USES: dict[tuple[str, str], Use] = {
    (place, key.word): use for key in ALL_KEYS for use in key.uses for place in use.places
}
_UNKEYED: dict[str, tuple[Unkeyed, ...]] = {
    **{kind.word: kind.unkeyed for kind in ALL_KINDS},
    **{place.word: place.unkeyed for place in ALL_PLACES},
}
_TAKES_POLES = frozenset({"feeder", "circuit", "transfer", "disconnect"})


def use_of(place: str, key: str) -> Use | None:
    """What a key means at a place; None where it may not stand."""
    return _USES.get((place, key))


@lru_cache(maxsize=64)
def keys_at(place: str) -> tuple[str, ...]:
    """The keys that may stand at a place (``at`` among them), in the order of the reference."""
    return tuple(key.word for key in ALL_KEYS if (place, key.word) in _USES)


@lru_cache(maxsize=64)
def flags_at(place: str) -> tuple[str, ...]:
    """The flags that may stand at a place."""
    return tuple(flag.word for flag in ALL_FLAGS if place in flag.places)


def unkeyed_at(place: str) -> tuple[Unkeyed, ...]:
    """What a quantity without a key means there."""
    return _UNKEYED.get(place, ())


def takes_poles(place: str) -> bool:
    """Whether poles may stand behind an unkeyed current: it is the rating of a device."""
    return place in _TAKES_POLES


def place_phrase(place: str) -> str:
    """``a panel``, ``an inverter``, ``a feeder``."""
    if place in PLACES:
        return PLACES[place].phrase
    spelled = {"mcc": "an MCC", "ups": "a UPS", "spd": "an SPD"}.get(place)
    return spelled or f"{'an' if place[0] in 'aeio' else 'a'} {place}"


def listed(items: tuple[str, ...] | list[str], last: str = "or") -> str:
    """``a, b or c``."""
    if len(items) < 2:
        return "".join(items)
    return f"{', '.join(items[:-1])} {last} {items[-1]}"


def accept_phrase(accept: Accept) -> str:
    """One way of writing a value, in a drafter's words: "a current, such as 225 A or 28 kA"."""
    if accept.form == "quantity":
        return DIMENSIONS[accept.dimension].phrase
    if accept.form == "word":
        return listed([f"`{word}`" for word in accept.words])
    if accept.form == "pattern":
        return accept.phrase
    if accept.form == "range":
        return "a range, such as -5..5 %" if accept.dimension else "a range, such as 0.95..1.05"
    return _FORM_PHRASES[accept.form]


_FORM_PHRASES = {
    "number": "a number without unit",
    "count": "a whole number",
    "voltage": "a voltage, such as 480Y/277 or 120/240",
    "positions": "positions, such as 2,4 or F9",
    "text": 'a text in quotes, such as "Level 2"',
    "name": "a name",
    "names": "one or several names",
    "size": "a size of wire, such as #6, 250kcmil or 35mm2",
}


def range_phrase(accept: Accept) -> str:
    """The sane range of a value as text (``0.8 % to 15 %``); empty where there is none."""
    if accept.low is None or accept.high is None:
        return ""
    if accept.form == "quantity":
        unit = unit_for(accept.high, accept.dimension)
        plain = accept.low <= 0 or convert(accept.low, unit) >= 0.1
        low = format_quantity(accept.low, accept.dimension, unit=unit if plain else None)
        return f"{low} to {format_quantity(accept.high, accept.dimension, unit=unit)}"
    scale, unit = (100, " %") if accept.dimension == "ratio" else (1, "")
    return f"{accept.low * scale:g} to {accept.high * scale:g}{unit}"


def doc_of(word: str, place: str | None = None) -> str | None:
    """The sentence for hover of a word of the language, at a place where it is known; None for any other word."""
    if word in KEYS:
        use = use_of(place, word) if place else None
        return (use.doc if use else "") or KEYS[word].doc
    for table in (FLAGS, KINDS, STATEMENTS, SMALL_WORDS, ACTIONS):
        if word in table:
            return str(table[word].doc)
    return None
