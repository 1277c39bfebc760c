"""A page on each word of the language, and on what the trade calls it: what it says, how it is written, what goes
with it. Plain text with Markdown's marks, the same in a terminal and in an editor."""

from __future__ import annotations

from collections.abc import Iterator

from wyeline_grammar.attributes import (
    ACTIONS,
    FLAG_GROUPS,
    FLAGS,
    KEYS,
    KINDS,
    LOAD_CLASSES,
    SMALL_WORDS,
    STATEMENTS,
    accept_phrase,
    flags_at,
    keys_at,
    listed,
    place_phrase,
    range_phrase,
    unkeyed_at,
    use_of,
)
from wyeline_grammar.reference import where
from wyeline_grammar.trade_terms import TERMS, WRITTEN, term_of
from wyeline_grammar.vocabulary import word_kind

_SIDES = {
    "none": "No voltage is written.",
    "one": "One voltage stands behind its name, or none: then it takes what arrives.",
    "two": "Two voltages stand behind its name, with an arrow between: `480 3ph -> 208Y/120`.",
    "either": "One voltage stands behind its name, or two with an arrow between.",
}


CIRCUIT = ("circuit", "circuits", "branch-circuit", "branch", "row")
"""A circuit is a row of a board, and begins with no word of its own."""


def page(typed: str) -> str | None:
    """The page on a word, or on what the trade calls by these words; None where nobody knows them."""
    word = "-".join(typed.lower().split())
    if word in CIRCUIT:
        return "\n".join(_circuit())
    term = term_of(typed)
    if word_kind(word) != "PLAIN":
        means = listed([f"`{said}`" for said in term.says], "or") if term is not None else ""
        trade = ["", f"What the trade means by it elsewhere is written with {means}."] if means else []
        return "\n".join([*_word(word), *trade])
    if term is None:
        return None
    shown = listed([f"`{said}`" for said in term.says], "and" if term.head and term.words else "or")
    if set(term.about) and set(term.about) <= LOAD_CLASSES:
        return "\n".join(["The class of a load is one of these words.", "", *_classes(tuple(sorted(LOAD_CLASSES)))])
    pages = ["\n".join(_word(said)) for said in term.says]
    return "\n\n".join([f"{typed.strip()} is written with {shown}.", *pages])


def contents() -> str:
    """All words of the language by what they are, and how to ask for more."""
    rows = [
        ("statements", sorted(STATEMENTS)),
        ("kinds of equipment", list(KINDS)),
        *((title.lower(), [f for f in FLAGS if FLAGS[f].group == group]) for group, title in FLAG_GROUPS),
        ("keys, each with a value", sorted(KEYS)),
        ("in scenarios", sorted(ACTIONS)),
        ("further words", sorted(SMALL_WORDS)),
    ]
    lines = ["The words of the language. `wyeline explain WORD` says what one means and how it is written; WORD may"]
    lines += ["also be what the trade says, such as `transfer switch`, `EV charger` or `feed-through lugs`.", ""]
    for title, words in rows:
        lines += [f"- {title}: {', '.join(words)}"]
    return "\n".join(lines)


def spellings() -> list[str]:
    """Every word that has a page."""
    return [
        *CIRCUIT,
        *STATEMENTS,
        *KINDS,
        *FLAGS,
        *KEYS,
        *ACTIONS,
        *SMALL_WORDS,
        *(s for term in TERMS for s in term.spellings),
    ]


def written(word: str) -> str:
    """Lines that show how a word is written; empty where its page has examples of each use instead."""
    return WRITTEN.get(word, "")


def _circuit() -> Iterator[str]:
    """The page on what has no word: rows of boards."""
    yield "# circuit"
    yield ""
    yield "A row below a board: its positions or its label, its device, its load and what it is, then its wires."
    yield from ("", "```wye", *WRITTEN["panel"].rstrip("\n").split("\n"), "```")
    yield from (
        "",
        "Positions count poles: a device of three poles takes three, as in `7,9,11`. A label such as `F3` takes",
    )
    yield "its legs in brackets instead, as in `F3[L1]` or `F3[L1 L2 L3]`."
    yield from _takes("circuit")
    yield from ("", "The classes of loads:", *_classes(tuple(sorted(LOAD_CLASSES))))


def _word(word: str) -> Iterator[str]:
    yield f"# {word}"
    yield ""
    for table in (STATEMENTS, KINDS, FLAGS, ACTIONS, SMALL_WORDS):
        if word in table:
            yield table[word].doc
            break
    if word in KEYS:
        yield KEYS[word].doc
    if word in KINDS:
        yield ""
        yield _SIDES[KINDS[word].sides]
    if word in WRITTEN:
        yield from ("", "```wye", *WRITTEN[word].rstrip("\n").split("\n"), "```")
    if word in KEYS:
        yield ""
        yield from _uses(word)
    if word in KINDS or word in ("feeder", "project", "raceway", "issue"):
        yield from _takes(word)
    if word in FLAGS:
        yield from ("", f"It stands alone, on {where(FLAGS[word].places)}.")
        if word in LOAD_CLASSES:
            heads = {term.head for term in TERMS if word in term.words and term.head}
            if heads:
                yield from ("", f"As equipment with a name of its own: {listed([f'`{h}`' for h in sorted(heads)])}.")
            yield from ("", "The classes of loads:", *_classes(tuple(sorted(LOAD_CLASSES))))
    other = [s for term in TERMS if word in term.says[:1] for s in term.spellings]
    if other:
        yield from ("", f"The trade also says: {', '.join(other)}.")


def _uses(key: str) -> Iterator[str]:
    """Where a key stands, and how its value is written there."""
    for use in KEYS[key].uses:
        text = f"- on {where(use.places)}: {listed([accept_phrase(accept) for accept in use.accepts])}"
        ranges = [r for r in map(range_phrase, use.accepts) if r]
        text += f"; usually {listed(ranges)}" if ranges else ""
        text += f". As in {listed([f'`{example}`' for example in use.examples])}." if use.examples else "."
        text += f" {use.doc}" if use.doc else ""
        yield text + (f" Left out: {use.default}." if use.default else "")


def _takes(place: str) -> Iterator[str]:
    """What else is written on a piece of equipment or a line."""
    if place in KINDS and KINDS[place].ports:
        yield from ("", "Its ends:", *(f"- `NAME.{port}`: {doc}" for port, doc in KINDS[place].ports))
    if unkeyed_at(place):
        yield from ("", "Without a key:", *(f"- {accept_phrase(u.accept)}: {u.doc}" for u in unkeyed_at(place)))
    keys = [key for key in keys_at(place) if key != "at"]
    if keys:
        yield from ("", f"Keys that stand on {place_phrase(place)}:")
        for key in keys:
            use = use_of(place, key)
            shown = use.examples[0] if use is not None and use.examples else key
            yield f"- `{shown}`: {(use.doc if use is not None else '') or KEYS[key].doc}"
    flags = flags_at(place)
    if flags:
        yield from ("", f"Words that stand alone: {', '.join(flags)}.")


def _classes(words: tuple[str, ...]) -> list[str]:
    return [f"- `{word}`: {FLAGS[word].doc}" for word in words]
