"""A line that ends too early: what comes next, in a few words, with the line carried on as an example.

Of all that could stand there one thing is told, what most such lines go on with. Examples come from the snippets and
the examples of the attribute table, so that they are written once; names in them are invented.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from wyeline_grammar.attributes import (
    ACTIONS,
    FLAGS,
    KEYS,
    KINDS,
    SMALL_WORDS,
    STATEMENTS,
    flags_at,
    keys_at,
    use_of,
)
from wyeline_grammar.syntax import Token
from wyeline_grammar.vocabulary import word_kind

_STOP = re.compile(r"\$\{\d+:([^}]*)\}")
_LONGEST = 48
"""Columns of a line that are shown before its example; of a longer one its last words are."""


class Next(NamedTuple):
    """What a line goes on with: in words, and the words that carry it on (``instead``: in place of the whole line)."""

    words: str
    more: str
    instead: bool = False


def carried_on(
    text: str, tokens: tuple[Token, ...], statement: bool, expected: frozenset[str]
) -> tuple[str, str] | None:
    """What comes next, in words, and an example; None where nothing better is known than what could stand there."""
    found = _next(tokens, statement, expected)
    if found is None:
        return None
    if found.instead:
        return found.words, found.more
    line = " ".join(text.split())
    if len(line) > _LONGEST:
        line = "… " + " ".join(" ".join(text[token.start : token.end].split()) for token in tokens[-2:])
    glue = "" if found.more.startswith(":") else " "
    return found.words, f"{line}{glue}{found.more}"


def begun(
    text: str, tokens: tuple[Token, ...], statement: bool, wrong: Token, expected: frozenset[str]
) -> tuple[str, ...]:
    """The words that may stand there and begin like the last word of a line, behind which nothing stands yet."""
    if wrong is not tokens[-1] or wrong.kind != "PLAIN" or wrong.end != len(text):
        return ()
    if len(tokens) == 1 and statement:
        words = (*KINDS, *STATEMENTS)
    else:
        first = tokens[0]
        row = not statement and first.kind in ("NUMBER", "LIST", "NAME", "TEXT")
        place = "circuit" if row else first.text if first.kind == "KIND" else first.kind.lower()
        words = (*keys_at(place), *flags_at(place)) or (*KEYS, *FLAGS)
    return tuple(dict.fromkeys(w for w in words if w.startswith(wrong.text) and word_kind(w) in expected))


def _next(tokens: tuple[Token, ...], statement: bool, expected: frozenset[str]) -> Next | None:
    first, last = tokens[0], tokens[-1]
    if last.kind == "KEY":
        return _value(first, last)
    if len(tokens) == 1:
        alone = _from_its_snippet(first, statement)
        if alone is not None:
            return alone
    if first.kind == "EXPECT":
        return _expectation(tokens, expected)
    if first.kind == "TYPE" and last.kind == "KIND":
        return Next(
            "the name of the type, and what all like it have", "LAB  bus 225 A" if last.text == "panel" else "LAB"
        )
    if first.kind == "ALLOW" and "TEXT" in expected:
        place = "3 " if last.kind == "AT" else ""
        return Next("the reason, in quotes", f'{place}"existing run, accepted in review 7"')
    if first.kind == "FEEDER" and expected <= {"ARROW", "COLON", "LEGS"}:
        return Next("`->` and what it feeds", "-> LP-1")
    if last.kind == "COLON":
        return Next("where it comes from, `->` and what it feeds", "MSB -> LP-1")
    if last.kind == "ARROW":
        sides = "VOLTAGE" in expected
        return Next("the voltage of the other side" if sides else "what it feeds", "208Y/120" if sides else "LP-1")
    return _of_a_phrase(tokens, statement, expected)


def _value(first: Token, key: Token) -> Next | None:
    place = first.text if first.kind == "KIND" else first.kind.lower()
    use = use_of(place, key.text) or (use_of("circuit", key.text) if first.kind in ("NUMBER", "LIST", "NAME") else None)
    use = use or next(iter(KEYS[key.text].uses), None)
    return Next("its value", use.examples[0], instead=True) if use is not None else None


def _from_its_snippet(word: Token, statement: bool) -> Next | None:
    """A word that begins a line and stands alone: the first line of its snippet."""
    if statement:
        entry = KINDS.get(word.text) or STATEMENTS.get(word.text)
    else:
        opens = word.kind in ("ALLOW", "CLAIM", "ISSUE")
        entry = ACTIONS.get(word.text) or (SMALL_WORDS.get(word.text) if opens else None)
    if entry is None:
        return None
    words = {
        "wye": "the version of the language",
        "project": "its name, in quotes",
        "include": "the name of the file, in quotes",
        "type": "a kind of equipment, and the name of the type",
        "feeder": "where it comes from, `->` and what it feeds",
        "scenario": "its name",
        "expect": "of what, which figure, and its limit",
        "allow": "the name of the rule, and the reason in quotes",
        "claim": "the name of the exception",
        "issue": "its name, its date and what it is for",
    }.get(word.text, "what it acts on" if not statement else "its name")
    return Next(
        words, _STOP.sub(r"\1", entry.snippet.split("\n")[0]).replace("allow rule", "allow branch-drop-high"), True
    )


def _expectation(tokens: tuple[Token, ...], expected: frozenset[str]) -> Next | None:
    last = tokens[-1]
    said = [token.text for token in tokens]
    limit = "10 kA" if "fault" in said else "30 %" if "loading" in said else "3 %"
    sign = "" if last.kind in ("LE", "GE") else ">= " if "loading" in said else "<= "
    if last.kind == "ALL":
        return Next("a kind of equipment, a figure and its limit", "panel drop <= 3 %")
    if last.kind == "ARROW":
        return Next("where the feeder ends, a figure and its limit", "LP-1 drop <= 3 %")
    if last.kind == "IN":
        return Next("the name of a scenario", '"On generator"')
    if sign and {"LE", "GE"} <= expected:
        return Next("its limit", f"{sign}{limit}")
    return Next("its limit", limit) if not sign else Next("a figure and its limit", "drop <= 3 %")


def _of_a_phrase(tokens: tuple[Token, ...], statement: bool, expected: frozenset[str]) -> Next | None:
    last = tokens[-1]
    before = tokens[-2] if len(tokens) > 1 else last
    size = next((re.sub(r"^\d+(?=#)|^\d+[x×G]", "", t.text) for t in reversed(tokens) if t.kind == "RUN"), "#8")
    if last.kind == "PLUS":
        return Next("the part of a further conductor, and its size", f"G {size}")
    if before.kind == "PLUS":
        return Next("the size of this conductor", size)
    if last.kind == "SETS":
        return Next("the conductors of one set", "3#4/0")
    if last.kind == "IN":
        return Next("what the wires run in", "2 inch EMT")
    if last.kind == "TRADE_SIZE" or (tokens[0].kind == "RACEWAY" and "TRADE_SIZE" in expected):
        return Next("what it is made of", "EMT" if last.kind == "TRADE_SIZE" else "2 inch EMT")
    if last.kind == "AT":
        return Next("its positions, or how far along a busway", "14,16")
    if last.kind == "ASSUME":
        return Next("the value that is assumed", "30 m" if tokens[0].kind == "FEEDER" or not statement else "z 4 %")
    if last.kind == "LEG":
        return Next("a leg and its load", "A 1.2 kVA")
    if before.kind == "LEG":
        return Next("the load on this leg", "1.2 kVA")
    if not statement and tokens[0].kind in ("NUMBER", "LIST", "NAME", "TEXT") and last.kind in (tokens[0].kind, "LEGS"):
        poles = max(1, tokens[0].text.count(",") + 1)
        load = f'20 A {poles}p  {1.2 * poles:g} kVA receptacle "Bench"'
        return Next("its device and load, or `spare` or `space`", load)
    return None
