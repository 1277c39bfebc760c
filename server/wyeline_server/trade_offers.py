"""Completion for somebody who types what the trade says: `ats` brings `transfer`, `wallbox` brings `charger`."""

from __future__ import annotations

from collections.abc import Iterator

from wyeline_grammar.attributes import KINDS, STATEMENTS, doc_of, flags_at, keys_at
from wyeline_grammar.trade_terms import TERMS
from wyeline_server.completion_slots import Slot
from wyeline_server.positions import Json

_SNIPPET = 15
"""The kind of item in the protocol."""
_FEWEST = 2
"""Letters that have to be typed: before, the list would be twice as long."""


def by_trade_terms(slot: Slot) -> Iterator[Json]:
    """Words of the language for what is being typed, where they may stand and the trade calls them so."""
    typed = slot.prefix.casefold()
    if len(typed) < _FEWEST or slot.quoted:
        return
    for term in TERMS:
        spelling = next((s for s in term.spellings if s.startswith(typed)), None)
        if spelling is None:
            continue
        if slot.what == "statement" and term.head:
            snippet = KINDS[term.head].snippet if term.head in KINDS else STATEMENTS[term.head].snippet
            behind = f", {term.words[0]}" if term.head in ("load", "motor") and term.words else ""
            yield _item(spelling, term.head, snippet + behind)
        elif slot.what in ("phrase", "detail"):
            for word in (
                w for w in (*term.words, *term.about) if w in flags_at(slot.place) or w in keys_at(slot.place)
            ):
                yield _item(spelling, word, word if word in flags_at(slot.place) else f"{word} ")


def _item(spelling: str, word: str, insert: str) -> Json:
    return {
        "label": spelling,
        "kind": _SNIPPET,
        "detail": f"is written `{word}`: {doc_of(word) or ''}",
        "insertText": insert,
    }
