"""Problems of a word that cannot stand where it does: misspelt, not finished yet, or nothing that is known there."""

from __future__ import annotations

import re
from collections.abc import Iterator

from wyeline_grammar import memo
from wyeline_grammar.attributes import listed
from wyeline_grammar.expectation import PHRASE_STARTS, message, needed_here
from wyeline_grammar.memo import Failure
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.slip_fixes import Place
from wyeline_grammar.syntax import Token
from wyeline_grammar.tokens import cut, is_statement
from wyeline_grammar.unfinished import carried_on

UNREADABLE = "unreadable-line"
LONGEST_MENDED = 2_000
"""Longer lines are no slip of the pen; they get the general message."""


def misspelt(wrong: Token, words: tuple[str, ...], place: Place, sure: bool) -> Problem:
    listed = " or ".join(f"`{word}`" for word in words)
    typed = place.text[wrong.start : wrong.end]
    return Problem(
        rule=UNREADABLE,
        message=f"`{typed}` is no word of the language here; the nearest is {listed}",
        line=0,
        start=wrong.start,
        end=wrong.end,
        found=f"`{typed}`",
        needed=needed_here(place.expected),
        why="Only listed words can stand here, and none is guessed.",
        change=f"Write {listed}",
        remedies=tuple(Remedy(f"Write `{word}`", (TextEdit(0, wrong.start, wrong.end, word),), sure) for word in words),
    )


_MOST_BEGUN = 5
"""Of more words that begin like one that is being typed a few are shown, and none is offered."""


def unfinished_word(wrong: Token, words: tuple[str, ...], place: Place) -> Problem:
    """A word that is being typed: what begins so."""
    few = len(words) <= _MOST_BEGUN
    shown = listed([f"`{word}`" for word in words]) if few else f"{len(words)} words, such as `{words[0]}`,"
    return Problem(
        rule=UNREADABLE,
        message=f"`{wrong.text}` is no word yet: {shown} begin{'s' * (len(words) == 1)} so",
        line=0,
        start=wrong.start,
        end=wrong.end,
        found=f"`{wrong.text}`",
        needed=needed_here(place.expected),
        why="Only listed words say what is meant, and none is guessed.",
        change=f"Write {shown}" if few else "Write the whole word",
        remedies=tuple(Remedy(f"Write `{word}`", (TextEdit(0, wrong.start, wrong.end, word),), False) for word in words)
        if few
        else (),
    )


_SIZE = re.compile(r"\d+|(?:\d+-)?[1357]/[248]")


def unreadable(place: Place, stop: Failure) -> Problem:
    """The general message: what was found, and what could stand there."""
    wrong = place.wrong
    before = _typed(place.text, place.tokens[stop.at - 1]) if stop.at else ""
    typed = _typed(place.text, wrong) if wrong else ""
    says, why = message(typed, wrong, before, stop.expected)
    needed = needed_here(stop.expected)
    if place.tokens[0].kind == "ALLOW" and "TEXT" in stop.expected:
        needed = "the reason, in quotes"
        says = f"`{before}` needs its reason behind it, in quotes"
        why = "Who reads the finding later must see why it was accepted."
    if place.tokens[0].kind == "ISSUE" and "KEY" in stop.expected:
        needed = "a day such as `2026-03-02`, what it is for in quotes, or who `drawn` or `checked` it"
        says = f"`{typed}` is none of what stands on an issue: {needed}"
    shown = wrong or place.tokens[-1]
    remedies: tuple[Remedy, ...] = ()
    change = f"Write {needed} behind `{before}`"
    more = carried_on(place.text, place.tokens, place.statement, stop.expected) if wrong is None else None
    if more is not None:
        needed, example = more
        says = f"the line ends too early: behind `{before}` comes {needed}, as in `{example}`"
        change = f"Go on with {needed}, as in `{example}`"
    if wrong and stop.at and place.tokens[stop.at - 1].kind == "IN" and _SIZE.fullmatch(typed):
        needed = f"a trade size with its unit, as in `{typed} inch EMT`"
        says = f"`{typed}` behind `{before}` is a trade size without its unit, as in `{typed} inch EMT`"
        edit = TextEdit(0, wrong.end, wrong.end, " inch")
        remedies = (Remedy(f"Write `{typed} inch`", (edit,), sure=False),)
        change = f"Write `{typed} inch`, or `mm`, and what the raceway is made of"
    elif wrong:
        if says.startswith(f"`{before}` needs its value"):
            _, example = carried_on(place.text, place.tokens[: stop.at], place.statement, stop.expected) or ("", "")
            needed = f"a value, as in `{example}`" if example else needed
        change = f"Write {needed}{', ' if 'as in' in needed else ' '}in place of `{typed}`"
        if "bare number" in says:
            change = f"Write the unit behind `{typed}`, or the keyword that it belongs to in front of it"
        elif wrong.kind in ("NAME", "PLAIN") and stop.expected >= PHRASE_STARTS:
            change = f"Write a word of the language in place of `{typed}`; a description stands in quotes"
        if len(place.text) <= LONGEST_MENDED and parses(place.text[: wrong.start] + place.text[wrong.end :]):
            edit = TextEdit(0, wrong.start, wrong.end, "")
            remedies = (Remedy(f"Leave out `{typed}`", (edit,), sure=False),)
            change += ", or leave it out"
        if wrong.kind == "NUMBER" and len(place.text) <= LONGEST_MENDED and _runs_somewhere(place):
            edits = [TextEdit(0, wrong.end, wrong.end, f" {unit}") for unit in ("m", "ft")]
            as_length = [e for e in edits if parses(place.text[: e.start] + e.text + place.text[e.start :])]
            remedies = (*(Remedy(f"Write `{typed}{e.text}`", (e,), sure=False) for e in as_length), *remedies)
        if wrong.kind == "NUMBER" and len(place.text) <= LONGEST_MENDED:
            remedies = (*_number_meant(place, wrong, place.tokens[stop.at - 1]), *remedies)
    found = f"`{typed}`" if wrong else "the end of the line"
    return Problem(UNREADABLE, says, 0, shown.start, shown.end, found, needed, why, change, remedies)


def _number_meant(place: Place, wrong: Token, before: Token) -> Iterator[Remedy]:
    """What a bare number is where a line has one gap for it: the end of a name, or the rating of a feeder's device."""
    text, tokens = place.text, place.tokens
    typed = _typed(text, wrong)
    if tokens[0].kind == "KIND" and before is tokens[1] and before.kind == "NAME":
        edit = TextEdit(0, before.end, wrong.start, "-")
        if parses(text[: edit.start] + edit.text + text[edit.end :]):
            yield Remedy(f"Write `{_typed(text, before)}-{typed}`", (edit,), sure=False)
    rated = any(t.kind == "RUN" or (t.kind == "QUANTITY" and t.text.endswith("A")) for t in tokens)
    if tokens[0].kind == "FEEDER" and not rated:
        edit = TextEdit(0, wrong.end, wrong.end, " A")
        if parses(text[: edit.start] + edit.text + text[edit.end :]):
            yield Remedy(f"Write `{typed} A`", (edit,), sure=False)


def _runs_somewhere(place: Place) -> bool:
    """Whether the line has wires of which no length is written yet."""
    tokens = place.tokens
    wires = any(token.kind == "RUN" for token in tokens) and (not place.statement or tokens[0].kind == "FEEDER")
    return wires and not any(t.kind == "QUANTITY" and t.text.endswith(("m", "ft")) for t in tokens)


def _typed(text: str, token: Token) -> str:
    return short(text[token.start : token.end].strip())


def short(typed: str) -> str:
    return typed if len(typed) <= 60 else typed[:57] + "..."


def parses(text: str) -> bool:
    kinds, _, _ = cut(text)
    return bool(kinds) and isinstance(memo.shape(kinds, is_statement(text)), memo.Recipe)
