"""What a circuit is for, written without quotes: `30 A 2p water heater 4500 W`; it may say the class of load too."""

from __future__ import annotations

import re

from wyeline_grammar.attributes import LOAD_CLASSES
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.slip_fixes import METAL_WORDS, Place
from wyeline_grammar.slips_trade import CABLE
from wyeline_grammar.spelling import nearest
from wyeline_grammar.trade_terms import term_of
from wyeline_grammar.units import UNITS
from wyeline_grammar.vocabulary import word_kind

_ROWS = frozenset({"NUMBER", "LIST", "NAME", "TEXT"})
_JOINING = frozenset("and at for in of on the to with & / +".split())
"""Words that may stand inside a description, though some of them are words of the language too."""
_LISTED = frozenset({"KEY", "FLAG", "KIND"})
_WORD = re.compile(r"[ \t\u00a0]*([^\W\d_][\w'&/.-]*|[&/+](?=\s)|\d{1,3}(?!\w|[.,]\d|[/#]))(?![^\s,])")
_UNIT = re.compile(r"[ \t\u00a0]*([A-Za-z%]+)")
_NO_WORD = re.compile(r"[A-Z]|L[123]|[BCDKZ]\d+A?|[1-4][pP]N?")
"""Legs, curves and poles."""
_FIGURE = re.compile(r"[ \t\u00a0=:]*\d")
_SHORTEST = 3
"""Fewer small letters are oftener a slip than a description."""


def several_words(place: Place) -> Problem | None:
    """`water heater`, `Kitchen counter receptacles`: words that describe, where the first alone would mean another
    thing, or none."""
    words = _described(place)
    plain = [word for word in words if word_kind(word) == "PLAIN"]
    if len(words) < 2 or not plain:
        return None
    first, rest = words[0], words[1:]
    if first.isupper() and word_kind(first.lower()) not in ("PLAIN", "KIND") and not _says(first):
        return None  # a word of the language in capitals, `AFCI`
    if _says(first) or any(steps == 1 for steps, _ in nearest(first, _LISTED)):
        known = term_of(" ".join(words)) is not None or term_of(" ".join(words[:2])) is not None
        if not known and not any(_says(word) for word in rest):
            return None  # `lights corridor`: the class, and the description behind
    return _unquoted(place, words)


def last_resort(place: Place) -> Problem | None:
    """A word, or words, that nothing of the language is near to."""
    words = _described(place)
    if not words or (words[0].islower() and (nearest(words[0], _LISTED) or len(words[0]) < _SHORTEST)):
        return None
    return _unquoted(place, words)


def _described(place: Place) -> list[str]:
    """The words of a row without a description, from the first one on that cannot stand there."""
    wrong, text = place.wrong, place.text
    if wrong is None or place.statement or place.tokens[0].kind not in _ROWS or '"' in text:
        return []
    words: list[str] = []
    at = wrong.start
    while (match := _WORD.match(text, at)) is not None:
        word, before = match[1], words[-1] if words else ""
        unit = _UNIT.match(text, match.end())
        if word[0].isdigit() and (not words or (unit and (unit[1] in UNITS or _says(unit[1])))):
            break  # a figure with its unit, or so many of them
        listed = word_kind(word) not in ("PLAIN", "KIND") and word not in LOAD_CLASSES
        if (listed and word not in _JOINING and before not in _JOINING) or word in METAL_WORDS:
            break
        if _NO_WORD.fullmatch(word) or CABLE.fullmatch(word):
            break
        keyed = word_kind(word.lower()) == "KEY" and _FIGURE.match(text, match.end())
        if keyed or (before == "in" and word.isupper()):  # a fact, or what its wires run in
            break
        words.append(word)
        at = match.end()
    while words and words[-1] in _JOINING:
        words.pop()
    return words


def _says(words: str) -> str:
    """The class of load that words of the trade, or of the language, say; empty where they say none or several."""
    if words.lower() in LOAD_CLASSES:
        return words.lower()
    term = term_of(words)
    classes = [word for word in term.words if word in LOAD_CLASSES] if term is not None else []
    return classes[0] if len(classes) == 1 else ""


def class_of(words: list[str]) -> str:
    """The class of load that a description says, by all its words or by one of them; empty where it says none."""
    what = words[: next((i for i, word in enumerate(words) if word in _JOINING), len(words))]  # not where it stands
    return next((c for said in (" ".join(what), *reversed(what)) if (c := _says(said))), "")


def _unquoted(place: Place, words: list[str]) -> Problem:
    assert place.wrong is not None
    text, start = place.text, place.wrong.start
    end = start
    for word in words:
        end = text.index(word, end) + len(word)
    written = {token.text for token in place.tokens if token.end <= start or token.start >= end}
    found = class_of(words)
    told = f"{found} " if found and len(words) > 1 and not written & LOAD_CLASSES else ""
    typed, right = text[start:end], f'{told}"{" ".join(words)}"'
    return Problem(
        rule="known-slip",
        message=f"`{typed}` is written `{right}`",
        line=0,
        start=start,
        end=end,
        found=f"`{typed}`",
        needed=f"`{right}`",
        why="A description stands in quotes, so that its words are not read as words of the language"
        + (f"; what class of load it is, `{found}`, is a word of its own." if told else "."),
        change=f"Write `{right}`",
        remedies=(Remedy(f"Write `{right}`", (TextEdit(0, start, end, right),), sure=False),),
    )
