"""The shapes of the attribute table: what may stand where, with which value, and what it means.

The table itself is data in ``attributes_keys*.py``, ``attributes_kinds.py`` and ``attributes_words.py``;
``attributes.py`` puts it together and answers questions about it.
"""

from __future__ import annotations

from typing import NamedTuple

from wyeline_grammar.quantities import parse_quantity
from wyeline_grammar.vocabulary import BOARDS, KINDS, SOURCES


class Accept(NamedTuple):
    """One way of writing a value.

    ``form`` is ``quantity`` (of ``dimension``), ``number``, ``count`` (a whole number), ``voltage``, ``range`` (of
    ``dimension``, empty for a bare one), ``positions`` (a number, a list, a name or a quoted name), ``text``,
    ``word`` (one of ``words``; a word or a name by its spelling), ``pattern`` (a name that ``pattern`` matches, said as
    ``phrase``), ``size`` (of a wire), ``name`` or ``names``. ``low`` and ``high`` bound what is sane: in the SI unit of
    the dimension, or a bare number; None where nothing is known. Above ``most`` a value is impossible.
    """

    form: str
    dimension: str = ""
    words: tuple[str, ...] = ()
    low: float | None = None
    high: float | None = None
    pattern: str = ""
    phrase: str = ""
    most: float | None = None


class Use(NamedTuple):
    """A key at some places: a kind's name, ``feeder``, ``circuit``, ``project`` or ``raceway``.

    ``doc`` replaces the key's sentence where it means something of its own there; ``default`` says what holds where it
    is left out, empty for the facts that have no default (missing stays missing). ``poles`` may follow the value.
    """

    places: frozenset[str]
    accepts: tuple[Accept, ...]
    examples: tuple[str, ...]
    doc: str = ""
    default: str = ""
    poles: bool = False


class Key(NamedTuple):
    """A key, what it says in a drafter's words, and its uses; no place is in two of them."""

    word: str
    doc: str
    uses: tuple[Use, ...]


class Flag(NamedTuple):
    """A word that stands alone; ``group`` is one of ``FLAG_GROUPS``."""

    word: str
    doc: str
    group: str
    places: frozenset[str]


class Unkeyed(NamedTuple):
    """What a quantity without a key means at a place: ``name`` is ``rating``, ``power``, ``capacity`` or ``length``."""

    name: str
    doc: str
    accept: Accept


class Kind(NamedTuple):
    """A kind of equipment.

    ``sides``: ``none`` (no voltage is written), ``one``, ``two`` (``480 3ph -> 208Y/120``) or ``either``.
    ``ports`` are its named ends, with what each is. ``board``: may hold circuits. ``system``: makes a voltage system of
    its own. ``snippet`` completes the statement, with numbered stops of the editor protocol.
    """

    word: str
    doc: str
    sides: str
    unkeyed: tuple[Unkeyed, ...]
    snippet: str
    ports: tuple[tuple[str, str], ...] = ()
    board: bool = False
    system: bool = False


class Word(NamedTuple):
    """A statement, small word or action: what it says, and its snippet for completion."""

    word: str
    doc: str
    snippet: str


class Place(NamedTuple):
    """A statement other than equipment that takes phrases, and what its unkeyed quantities mean."""

    word: str
    phrase: str
    unkeyed: tuple[Unkeyed, ...]


FACILITIES = KINDS - {"system", "interlock"}
"""Kinds that are a piece of equipment, not a name for a relation or a voltage."""
LOADS = frozenset({"motor", "drive", "load", "charger", "capacitor"})
LINES = frozenset({"feeder", "circuit"})
"""What has a device, wires and a length."""
WIRING = LINES | {"raceway"}
MAKERS = SOURCES | {"transformer", "system", "charger"}
"""Kinds where a voltage system begins, so that its earthing may be said."""
EVERYWHERE = FACILITIES | WIRING | {"project", "system", "interlock"}
ALL_BOARDS = BOARDS


def keyed(word: str, doc: str, *uses: Use) -> Key:
    """A key with its uses."""
    return Key(word, doc, uses)


def places(*names: str | frozenset[str]) -> frozenset[str]:
    """The union of places given as words (``"motor load"``) or sets."""
    out: set[str] = set()
    for name in names:
        out.update(name.split() if isinstance(name, str) else name)
    return frozenset(out)


def quantity(low: str, high: str, dimension: str = "", most: float | None = None) -> Accept:
    """A quantity whose sane range is written in the language, such as ``quantity("15 A", "6000 A")``."""
    least, highest = parse_quantity(low), parse_quantity(high)
    assert least.dimension == highest.dimension and least.value_si < highest.value_si
    if dimension == "temperature-difference":
        return Accept("quantity", dimension, low=least.number, high=highest.number)
    return Accept("quantity", least.dimension, low=least.value_si, high=highest.value_si, most=most)


def number(low: float, high: float, most: float | None = None) -> Accept:
    """A bare number in a sane range."""
    return Accept("number", low=low, high=high, most=most)


def count(low: int, high: int) -> Accept:
    """A whole number in a sane range."""
    return Accept("count", low=low, high=high)


def words(text: str) -> Accept:
    """One of the given spellings, words and names alike."""
    return Accept("word", words=tuple(text.split()))


TEXT = Accept("text")
COUNT = Accept("count")
NAME = Accept("name")
NAMES = Accept("names")
POSITIONS = Accept("positions")
SIZE = Accept("size")
VOLTAGE = Accept("voltage")
