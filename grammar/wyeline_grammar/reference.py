"""The tables of the language reference, printed from the table of attributes.

``python -m wyeline_grammar.reference README.md`` writes them between the marks of the file; a test fails where the file
and the table differ.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable
from pathlib import Path

from wyeline_grammar.attribute_types import FACILITIES, LOADS, Accept, Key, Unkeyed, Use
from wyeline_grammar.attributes import (
    ACTIONS,
    ALL_FLAGS,
    ALL_KINDS,
    FLAG_GROUPS,
    KEY_GROUPS,
    PLACES,
    ROLES,
    SMALL_WORDS,
    STATEMENTS,
    accept_phrase,
    listed,
    range_phrase,
)
from wyeline_grammar.units import DIMENSIONS, TRADE_SIZE_UNITS, UNITS
from wyeline_grammar.vocabulary import BOARDS

BEGIN = "<!-- begin: tables written by `python -m wyeline_grammar.reference` -->"
END = "<!-- end of written tables -->"

_SIDES = {"none": "none", "one": "one", "two": "two (`->`)", "either": "one or two"}


def reference_tables() -> str:
    """Markdown of all words of the language: statements, kinds, keys, flags, units."""
    return "\n".join(
        [
            *_heading("Words that begin or join lines"),
            *_words(),
            *_heading("Kinds of equipment"),
            *_kinds(),
            *_heading("Quantities without a key, elsewhere"),
            *_places(),
            *_heading("Keys"),
            "A key has one value. *Usual* is the range outside which `implausible-value` asks whether the figure is "
            "right; a key without *if left out* has no default: what is missing stays missing.",
            "",
            *_keys(),
            *_heading("Flags"),
            *_flags(),
            *_heading("Units"),
            *_units(),
        ]
    )


def renewed(text: str) -> str:
    """A reference with its tables written anew. Raises ValueError where the marks are missing."""
    before, begin, rest = text.partition(BEGIN)
    _, end, after = rest.partition(END)
    if not begin or not end:
        raise ValueError(f"the text has no part between {BEGIN!r} and {END!r}")
    return f"{before}{BEGIN}\n{reference_tables()}\n{END}{after}"


def _heading(title: str) -> list[str]:
    return ["", f"### {title}", ""]


def _table(header: tuple[str, ...], rows: Iterable[tuple[str, ...]]) -> list[str]:
    lines = [header, tuple("---" for _ in header), *rows]
    return ["| " + " | ".join(cell.replace("|", "\\|") for cell in line) + " |" for line in lines]


def _words() -> list[str]:
    rows = [
        (f"`{word.word}`", sort, word.doc)
        for sort, words in (("statement", STATEMENTS), ("small word", SMALL_WORDS), ("action", ACTIONS))
        for word in words.values()
    ]
    rows += [(f"`+ {word.word}`", "conductor", f"A wire that is {word.doc}.") for word in ROLES.values()]
    return _table(("word", "sort", "what it says"), rows)


def _kinds() -> list[str]:
    return _table(
        ("kind", "what it is", "voltages", "without a key", "ports"),
        [
            (
                f"`{kind.word}`",
                kind.doc,
                _SIDES[kind.sides],
                _meanings(kind.unkeyed),
                "; ".join(f"`.{port}`: {doc}" for port, doc in kind.ports),
            )
            for kind in ALL_KINDS
        ],
    )


def _meanings(unkeyed: tuple[Unkeyed, ...]) -> str:
    """ "a current: its rating; a length: its length"."""
    by_doc: dict[str, list[str]] = {}
    for meaning in unkeyed:
        by_doc.setdefault(meaning.doc, []).append(_bare(DIMENSIONS[meaning.accept.dimension].phrase))
    return "; ".join(f"{listed(phrases)}: {doc}" for doc, phrases in by_doc.items())


def _bare(phrase: str) -> str:
    """A phrase without its examples."""
    return phrase.partition(", such as")[0]


def _places() -> list[str]:
    rows = [(f"`{place.word}`", _meanings(place.unkeyed)) for place in PLACES.values() if place.unkeyed]
    return _table(("on", "without a key"), rows)


def _keys() -> list[str]:
    out: list[str] = []
    for title, keys in KEY_GROUPS:
        out += [f"**{title}**", ""]
        out += _table(
            ("key", "what it says", "value", "example", "stands on", "usual", "if left out"),
            [_key_row(key, use) for key in keys for use in key.uses],
        )
        out += [""]
    return out


def _key_row(key: Key, use: Use) -> tuple[str, ...]:
    usual = "; ".join(dict.fromkeys(filter(None, map(range_phrase, use.accepts))))
    values = ", or ".join(dict.fromkeys(_value(accept) for accept in use.accepts))
    poles = ", and its poles" if use.poles else ""
    examples = ", ".join(f"`{example}`" for example in use.examples)
    return (f"`{key.word}`", use.doc or key.doc, values + poles, examples, where(use.places), usual, use.default)


def _value(accept: Accept) -> str:
    phrase = accept_phrase(accept)
    return phrase if accept.form == "pattern" else _bare(phrase)


def where(places: frozenset[str]) -> str:
    """The places of a key or flag: groups by their name, the rest by their words."""
    rest, parts = set(places), []
    for group, phrase in ((FACILITIES, "all equipment"), (BOARDS, "boards"), (LOADS, "loads")):
        if group <= rest:
            rest -= group
            parts.append(phrase)
    return ", ".join([*parts, *(f"`{place}`" for place in sorted(rest))])


def _flags() -> list[str]:
    rows = [
        (f"`{flag.word}`", title, flag.doc, where(flag.places))
        for group, title in FLAG_GROUPS
        for flag in ALL_FLAGS
        if flag.group == group
    ]
    return _table(("flag", "group", "what it says", "stands on"), rows)


def _units() -> list[str]:
    rows = []
    for dimension in DIMENSIONS.values():
        units = [f"`{unit.symbol}`" for unit in UNITS.values() if unit.dimension == dimension.name]
        if units:
            rows.append((_bare(dimension.phrase), " ".join(units)))
    rows.append(("a raceway's trade size", " ".join(f"`{unit}`" for unit in TRADE_SIZE_UNITS)))
    return [*_table(("what is measured", "units"), rows), "", f"`hp` is {UNITS['hp'].doc}."]


def main(arguments: list[str]) -> int:
    """Write the tables of the given files anew."""
    for name in arguments:
        path = Path(name)
        path.write_text(renewed(path.read_text(encoding="utf-8")), encoding="utf-8", newline="\n")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
