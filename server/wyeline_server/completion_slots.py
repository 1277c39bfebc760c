"""Where the cursor stands in a line being typed: what kind of word comes next, judged from the words before it.

Only the text is looked at; what may be offered there is ``completion``'s business.
"""

from __future__ import annotations

from typing import NamedTuple

from wyeline_grammar.attributes import KEYS
from wyeline_grammar.notation import parse_legs
from wyeline_grammar.syntax import Token
from wyeline_grammar.tokens import is_statement, tokenize

_WORD_ENDS = ' \t\u00a0,:[]"<>='


class Slot(NamedTuple):
    """What comes next.

    ``what`` is one of: ``statement detail kind sides source target legs phrase value raceway role include rule claim
    reason action subject measure scenario day nothing``. ``prefix`` is the part of the word already typed, from column
    ``start``. ``head`` is the first word of the statement, ``place`` where its phrases stand (a kind, ``feeder``,
    ``circuit``, ``project``, ``issue``, ``raceway``), ``key`` the key or verb that a value belongs to, ``tokens`` the
    line's words before it.
    """

    what: str
    start: int
    prefix: str
    place: str = ""
    key: str = ""
    tokens: tuple[Token, ...] = ()
    quoted: bool = False


def slot_at(lines: list[str], line: int, column: int) -> Slot:
    """The slot at a place of a text."""
    text = lines[line][:column]
    tokens, comment = tokenize(text)
    if comment is not None:
        return Slot("nothing", column, "")
    start, quoted = _word_start(text)
    before = tuple(t for t in tokens if t.end <= start and t.start < start)
    prefix = text[start:]
    if quoted:
        return _quoted(lines, line, start, prefix, before)
    if is_statement(lines[line]) or not text:
        return _statement(start, prefix, before)
    return _detail(_above(lines, line), start, prefix, before)


def _word_start(text: str) -> tuple[int, bool]:
    """Where the word under way begins, and whether it stands in quotes."""
    if text.count('"') % 2:
        return text.rindex('"') + 1, True
    start = len(text)
    while start and text[start - 1] not in _WORD_ENDS and not text.endswith("->", 0, start):
        start -= 1
    return start, False


def _above(lines: list[str], line: int) -> tuple[Token, ...]:
    """The words of the statement that an indented line belongs to."""
    for number in range(line - 1, -1, -1):
        text = lines[number]
        if text.strip() and is_statement(text):
            return tokenize(text)[0]
    return ()


def _quoted(lines: list[str], line: int, start: int, prefix: str, before: tuple[Token, ...]) -> Slot:
    if before and before[0].kind == "INCLUDE":
        return Slot("include", start, prefix, quoted=True)
    slot = (
        _statement(start, prefix, before)
        if is_statement(lines[line])
        else _detail(_above(lines, line), start, prefix, before)
    )
    named = slot.what in ("source", "target", "subject") or (slot.what == "value" and slot.key in NAMING)
    return slot._replace(quoted=True) if named else Slot("nothing", start, prefix)


NAMING = frozenset({"like", "not-with", "standby-of", "among", "with"})


def _statement(start: int, prefix: str, before: tuple[Token, ...]) -> Slot:
    if not before:
        return Slot("statement", start, prefix)
    head = before[0]
    if head.kind == "TYPE":
        if len(before) == 1:
            return Slot("kind", start, prefix, tokens=before)
        head, words = before[1], before[1:]
    else:
        words = before
    if head.kind == "FEEDER":
        return _feeder(start, prefix, before)
    if head.kind == "KIND":
        return _equipment(head.text, start, prefix, words)
    if head.kind == "RACEWAY":
        return _phrase("raceway", start, prefix, before) if len(before) > 1 else Slot("nothing", start, prefix)
    if head.kind == "PROJECT":
        return _phrase("project", start, prefix, before)
    if head.kind == "EXPECT":
        return _expect(start, prefix, before)
    return Slot("nothing", start, prefix)


def _equipment(kind: str, start: int, prefix: str, words: tuple[Token, ...]) -> Slot:
    if len(words) == 1:
        return Slot("nothing", start, prefix)  # its own name
    sides = [t for t in words[2:] if t.kind in ("VOLTAGE", "NAME", "ARROW")]
    if len(sides) == len(words) - 2 and (not sides or sides[-1].kind == "ARROW"):
        return Slot("sides", start, prefix, kind, tokens=words)
    return _phrase(kind, start, prefix, words)


def _feeder(start: int, prefix: str, before: tuple[Token, ...]) -> Slot:
    words = before[1:]
    if any(t.kind == "COLON" for t in words):
        words = words[next(i for i, t in enumerate(words) if t.kind == "COLON") + 1 :]
    arrow = next((i for i, t in enumerate(words) if t.kind == "ARROW"), None)
    last = words[-1] if words else None
    if last is not None and last.text.startswith("[") and "]" not in last.text:
        return Slot("legs", start, prefix, "feeder", tokens=before)
    if arrow is None:
        return Slot("source" if not words else "arrow", start, prefix, "feeder", tokens=before)
    if arrow == len(words) - 1:
        return Slot("target", start, prefix, "feeder", tokens=before)
    return _phrase("feeder", start, prefix, before)


def _expect(start: int, prefix: str, before: tuple[Token, ...]) -> Slot:
    last = before[-1]
    if last.kind == "IN":
        return Slot("scenario", start, prefix, tokens=before)
    if len(before) == 1 or last.kind == "ARROW":
        return Slot("subject", start, prefix, tokens=before)
    if last.kind in ("NAME", "TEXT") or before[-2].kind == "ALL":
        return Slot("measure", start, prefix, tokens=before)
    return Slot("kind" if last.kind == "ALL" else "nothing", start, prefix, tokens=before)


def _detail(above: tuple[Token, ...], start: int, prefix: str, before: tuple[Token, ...]) -> Slot:
    head = above[1] if len(above) > 1 and above[0].kind == "TYPE" else (above[0] if above else None)
    place = "" if head is None else head.text
    if not before:
        return Slot("detail", start, prefix, place)
    first = before[0]
    if first.kind in ("ALLOW", "CLAIM"):
        what = {"ALLOW": "rule", "CLAIM": "claim"}[first.kind] if len(before) == 1 else "reason"
        return Slot(what, start, prefix, place, first.text, before)
    if first.kind == "ISSUE":
        return _issue(start, prefix, before)
    if first.kind == "ACTION" and place == "scenario":
        return Slot("action", start, prefix, place, first.text, before)
    if first.kind in ("NUMBER", "LIST", "NAME", "TEXT"):
        if before[-1].text.startswith("[") and "]" not in before[-1].text:
            return Slot("legs", start, prefix, "circuit", tokens=before)
        return _phrase("circuit", start, prefix, before)
    return _phrase(place, start, prefix, before)


def _issue(start: int, prefix: str, before: tuple[Token, ...]) -> Slot:
    """Behind `issue` its name, which nobody can guess, then the day, then phrases."""
    if len(before) == 1:
        return Slot("nothing", start, prefix, "issue", tokens=before)
    slot = _phrase("issue", start, prefix, before)
    return slot._replace(what="day") if len(before) == 2 and slot.what == "phrase" else slot


def _phrase(place: str, start: int, prefix: str, words: tuple[Token, ...]) -> Slot:
    last = words[-1]
    if last.kind == "PLUS":
        return Slot("role", start, prefix, place, tokens=words)
    if last.kind == "IN":
        return Slot("raceway", start, prefix, place, tokens=words)
    if last.text in KEYS and last.kind in ("KEY", "AT"):
        return Slot("value", start, prefix, place, last.text, words)
    if last.kind in ("NAME", "TEXT") and len(words) > 1 and words[-2].text in NAMING:
        return Slot("value", start, prefix, place, words[-2].text, words)
    return Slot("phrase", start, prefix, place, tokens=words)


class Ends(NamedTuple):
    """The ends of a feeder as far as they are written."""

    source: str | None
    legs: tuple[str, ...] | None
    target: str | None


def ends_in(text: str) -> Ends:
    """The ends of a feeder's line, whatever state it is in."""
    tokens, _ = tokenize(text)
    words = list(tokens[1:])
    if any(t.kind == "COLON" for t in words):
        words = words[next(i for i, t in enumerate(words) if t.kind == "COLON") + 1 :]
    arrow = next((i for i, t in enumerate(words) if t.kind == "ARROW"), len(words))
    before, behind = words[:arrow], words[arrow + 1 :]
    legs = next((parse_legs(t.text) for t in before if t.kind == "LEGS"), None)
    return Ends(_name(before), legs, _name(behind))


def _name(words: list[Token]) -> str | None:
    if not words or words[0].kind not in ("NAME", "TEXT", "PORT"):
        return None
    name = words[0].text.rpartition(".")[0] if words[0].kind == "PORT" else words[0].text
    return name.strip('"')
