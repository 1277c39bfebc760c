"""Heads in several words of the trade: `existing main switchboard MSB ...`, `charging point EV-1`, `LP-1 panel ...`.

The kind is written in front and the status behind; what else the words say becomes the description, so that nothing
of it is lost.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from wyeline_grammar.attributes import LOAD_CLASSES, flags_at, listed
from wyeline_grammar.heads import MOVING
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.slip_fixes import Place
from wyeline_grammar.slips_remarks import STATUS_WORDS
from wyeline_grammar.spelling import nearest
from wyeline_grammar.trade_terms import term_of
from wyeline_grammar.vocabulary import KINDS, STATEMENTS

Mended = tuple[str, int, int, str]
"""A text, and the piece of it (start, end) that is to be replaced by another."""

_WORD = re.compile(r'"[^"]*"|[^\s,]+')
_MOST_WORDS = 5
_SAYS_NO_MORE = frozenset("transfer panel switchboard switchgear disconnect busway meter junction".split())
"""Kinds that the trade calls by several words that say the kind alone."""
_SUPPLIES = frozenset({"emergency", "legally-required", "critical", "optional"})
"""Flags that decide by which article a system is judged: they are written only where the drafter takes them over."""
_REMAIN_OR_MOVE = "r"
"""`(R)` is relocated on one drawing, to remain or removed on another (common practice, no source)."""
_CONNECTIONS = {
    **{word: word for word in ("auto", "buck-boost", "open-delta", "open-wye", "zigzag")},
    "buck-and-boost": "buck-boost",
}
"""Words before `transformer` that say how its windings are connected: another machine than the plain one."""
_WHY = "The kind of equipment stands first, then its name; what else is said of it, behind."
_STATEMENTS = frozenset({"feeder", "raceway"})
"""Statements other than equipment that may stand behind a status."""


class _Said(NamedTuple):
    """A head in words: where its words end, the kind or statement, and what goes behind the line."""

    end: int
    kind: str
    flags: tuple[str, ...]
    description: str
    sure: bool


def meant(place: Place) -> tuple[Problem, Mended] | None:
    """The problem of a head in several words, and the line as it must have been meant.

    None where the line has another problem.
    """
    if not place.statement or place.wrong is None:
        return None
    text, tokens = place.text, place.tokens
    first, names = tokens[0], {token.start for token in tokens if token.kind in ("NAME", "TEXT", "PORT")}
    if first.text in STATEMENTS or (first.kind == "KIND" and len(tokens) > 1 and tokens[1].start in names):
        return None
    if first.kind == "PLAIN" and any(steps == 1 for steps, _ in nearest(first.text, place.expected)):
        return None  # misspelt
    figures = [t for t in tokens[:_MOST_WORDS] if t.kind == "QUANTITY"]
    words = [match.span() for match in _WORD.finditer(text)][: _MOST_WORDS + 2 * len(figures) + 2]
    for at in range(1, len(words)):
        start = words[at][0]
        if start in names and place.wrong.start <= start:
            before = [t for t in figures if t.end <= start]
            plain = [w for w in words[:at] if not any(t.start < w[1] and w[0] < t.end for t in before)]
            told = len(plain) > 1 or before or _plain(text[slice(*plain[0])]) in STATUS_WORDS
            said = _said(text, plain) if told else None
            if said is not None:
                return _renamed(place, said, "", [text[t.start : t.end] for t in before])
    if words and 0 in names and place.wrong is first:
        name, behind = text[slice(*words[0])], words[1:]
        for last in range(min(len(behind), _MOST_WORDS - 1), 0, -1):
            said = _said(text, behind[:last])
            if said is not None and said.kind not in _STATEMENTS:
                return _renamed(place, said, name, [])
    return None


def _plain(word: str) -> str:
    return word.lower().strip("().")


def _said(text: str, words: list[tuple[int, int]]) -> _Said | None:
    """What words in front of a name say, the last of them the kind; None where they say none."""
    plain = [_plain(text[start:end]) for start, end in words]
    if not all(re.fullmatch(r"[^\W\d]+(?:[-/][^\W\d]+)*\.?", word) for word in plain):
        return None
    flags: list[str] = []
    first = 0
    while first < len(plain) and (status := STATUS_WORDS.get(plain[first])) is not None:
        if len(plain[first]) == 1 and text[words[first][0]] != "(":
            break  # a letter alone may be part of what it is called
        flags.append(status)
        first += 1
    for at in range(first, len(plain)):
        spelled = "-".join(plain[at:])
        term, before = term_of(spelled), plain[first:at]
        kind = spelled if spelled in KINDS | _STATEMENTS else term.head if term is not None else ""
        if spelled in LOAD_CLASSES:
            kind = "motor" if spelled in MOVING else "load"
        if not kind:
            continue
        if kind in ("load", "motor", "charger"):
            said = term.words[:1] if term is not None else ()
            flags += said or [word for word in (spelled, *before) if word in LOAD_CLASSES][:1]
        further = [word for word in before if word in flags_at(kind) and word not in LOAD_CLASSES]
        connection = _CONNECTIONS.get("-".join(before)) if kind == "transformer" else None
        told = len(before) > len(further) or ("-" in spelled and kind not in _SAYS_NO_MORE)
        description = text[words[first][0] : words[-1][1]] if told and kind not in _STATEMENTS else ""
        more = (*flags, *further, *([f"connection {connection}"] if connection else ()))
        sure = connection is None and _SUPPLIES.isdisjoint(further) and _REMAIN_OR_MOVE not in plain[:first]
        return _Said(words[-1][1], kind, more, description[:1].upper() + description[1:], sure)
    return None


def _renamed(place: Place, said: _Said, name: str, figures: list[str]) -> tuple[Problem, Mended]:
    text, end = place.text, place.tokens[-1].end
    written = {token.text for token in place.tokens if token.start >= said.end}
    flags = tuple(flag for flag in dict.fromkeys(said.flags) if flag not in written)
    described = said.description and not any(t.kind == "TEXT" and t.start >= said.end for t in place.tokens[2:])
    more = [*figures, *flags, *([f'"{said.description}"'] if described else ())]
    front = f"{said.kind} {name}" if name else said.kind
    parted = (
        ", " if len([t for t in place.tokens if t.start >= said.end]) > 1 - bool(name) else "  "
    )  # none behind a name
    behind = f"{parted if more else ''}{', '.join(more)}"
    typed = text[: said.end]
    behind_it = next((text[t.start : t.end] for t in place.tokens if t.start >= said.end), "")
    shown = front if name else f"{front} {behind_it}"
    right = f"{shown} ... {', '.join(more)}" if more else front
    edits = [TextEdit(0, 0, said.end, front), *([TextEdit(0, end, end, behind)] if more else ())]
    problem = Problem(
        rule="known-slip",
        message=f"`{typed}` is written `{right}`",
        line=0,
        start=0,
        end=said.end,
        found=f"`{typed}`",
        needed=f"`{right}`",
        why=_WHY,
        change=f"Write `{front}` in its place"
        + (f", and {listed([f'`{word}`' for word in more], 'and')} behind" if more else ""),
        remedies=(Remedy(f"Write `{right}`", tuple(edits), said.sure),),
    )
    return problem, (f"{text[:end]}{behind}{text[end:]}", 0, said.end, front)
