"""Lines whose first word is none that starts a statement, though the trade would understand them: `elevator EL-1 ...`.

The word is set right, and where it said the class of a load too, the class goes behind: nothing that it said is lost.
"""

from __future__ import annotations

from wyeline_grammar.attributes import KEYS, LOAD_CLASSES
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.slip_fixes import Place
from wyeline_grammar.spelling import nearest
from wyeline_grammar.syntax import Line, Token
from wyeline_grammar.trade_terms import term_of
from wyeline_grammar.vocabulary import KINDS, STATEMENTS, word_kind

MOVING = frozenset({"elevator", "pump", "fan", "fire-pump"})
"""Classes of loads that are motors."""
_WHY = "One thing, one word: other names of the trade are read as none."
_WHY_CLASS = "The kind of equipment stands first; what class of load it is, behind."
_KIND_LIST = ", ".join(f"`{kind}`" for kind in sorted(KINDS - {"system", "interlock"}))

Mended = tuple[str, int, int, str]
"""A text, and the piece of it (start, end) that is to be replaced by another."""


def meant(place: Place) -> tuple[Problem, Mended | None] | None:
    """The problem of a first word that starts no statement, and the line as it must have been meant, if that is sure.

    None where the line has another problem, or where its first word is just misspelt.
    """
    tokens = place.tokens
    if not place.statement or place.wrong is not tokens[0]:
        return None
    first, typed = tokens[0], place.text[: tokens[0].end]
    if first.kind in ("NAME", "TEXT", "PORT") and len(tokens) > 1:
        follows = tokens[2].kind if tokens[1].kind == "LEGS" and len(tokens) > 2 else tokens[1].kind
        if follows in ("ARROW", "COLON", "VOLTAGE"):
            return _unsaid(place, typed, _likely(tokens))
    if not _heads_a_statement(tokens):
        return None
    if _board_at_the_service(typed, tokens):
        return _unknown(place, typed), None
    kind, load_class = _meant_kind(typed, tokens)
    if kind:
        return _renamed(place, typed, kind, load_class)
    if _says_a_device(typed, tokens):
        return _device(typed), None
    if first.kind == "KEY" and first.text == "main" and any(t.kind == "VOLTAGE" for t in tokens):
        return _unknown(place, typed), None  # the main board, by the look of it
    small = first.text.lower()
    if first.kind not in ("PLAIN", "NAME") or word_kind(small) != "PLAIN" or nearest(small, place.expected):
        return None
    return _unknown(place, typed), None


def _heads_a_statement(tokens: tuple[Token, ...]) -> bool:
    """Whether a name follows, so that the line is no detail that lost its indent."""
    kinds = [token.kind for token in tokens[1:3]]
    return bool(kinds) and (kinds[0] in ("NAME", "PORT") or kinds[:2] in (["TEXT", "VOLTAGE"], ["TEXT", "ARROW"]))


def _board_at_the_service(typed: str, tokens: tuple[Token, ...]) -> bool:
    """Whether a word for the supply stands before a board, which must not become a source."""
    term = term_of(typed)
    return term is not None and term.head == "utility" and any(t.text in ("bus", "main", "spaces") for t in tokens)


def _meant_kind(typed: str, tokens: tuple[Token, ...]) -> tuple[str, str]:
    """The kind, or statement, that a first word stands for, and the class of load that it says; empty where none."""
    word, first = typed.lower(), tokens[0]
    linked = any(token.kind == "ARROW" for token in tokens[1:3])
    if first.kind == "FLAG" and word in LOAD_CLASSES:
        if word == "ev":
            return "charger", ""
        return ("motor" if word in MOVING else "load"), word
    if word == "range":  # a key elsewhere; before a name, the one in a kitchen, of a household or not
        return "load", ""
    if first.kind == "ACTION" and word == "switch":  # before a name alone, what a transfer switch does
        return ("disconnect", "") if any(t.kind in ("POLES", "VOLTAGE") for t in tokens) else ("", "")
    term = term_of(typed)
    if term is None or not term.head or (term.head == "feeder") != linked:
        return "", ""
    if term.head not in ("load", "motor", "charger"):
        return term.head, ""
    rated_as_load = term.head == "motor" and any(t.text in ("mca", "mocp") for t in tokens)
    return ("load" if rated_as_load else term.head), (term.words[0] if term.words else "")


def _renamed(place: Place, typed: str, kind: str, load_class: str) -> tuple[Problem, Mended]:
    tokens, text = place.tokens, place.text
    written = {token.text for token in tokens[1:]}
    edits = [TextEdit(0, 0, len(typed), kind)]
    mended, right = text, kind
    if load_class and load_class not in written:
        end = tokens[-1].end
        edits.append(TextEdit(0, end, end, f", {load_class}"))
        mended = f"{text[:end]}, {load_class}{text[end:]}"
        right = f"{kind} {text[tokens[1].start : tokens[1].end]} ... {load_class}"
    problem = Problem(
        rule="known-slip",
        message=f"`{typed}` is written `{right}`",
        line=0,
        start=0,
        end=len(typed),
        found=f"`{typed}`",
        needed=f"`{right}`",
        why=_WHY_CLASS if len(edits) > 1 else _WHY,
        change=f"Write `{kind}` in its place" + (f", and `{load_class}` behind" if len(edits) > 1 else ""),
        remedies=(Remedy(f"Write `{right}`", tuple(edits), sure=True),),
    )
    return problem, (mended, 0, len(typed), kind)


def brought_back(line: Line, tokens: tuple[Token, ...]) -> Line:
    """A mended line in the columns of the text as it was written: a class that was put behind stands at the first word,
    which said it."""
    end = tokens[-1].end
    if all(token.end <= end for phrase in line.phrases for token in phrase.tokens):
        return line
    first = tokens[0]
    phrases = tuple(
        phrase._replace(
            tokens=tuple(t if t.end <= end else Token(t.kind, t.text, first.start, first.end) for t in phrase.tokens)
        )
        for phrase in line.phrases
    )
    return line._replace(phrases=phrases)


def _says_a_device(typed: str, tokens: tuple[Token, ...]) -> bool:
    """Whether a breaker or fuse is written as if it were a piece of equipment; ``fuse J`` is a detail."""
    if typed.lower() in ("fuse", "fuses"):
        return not any(tokens[1].text in accept.words for use in KEYS["fuse"].uses for accept in use.accepts)
    term = term_of(typed)
    return term is not None and "curve" in term.about


def _device(typed: str) -> Problem:
    """``breaker CB-1 ...``: devices stand on what they protect, so that none is drawn that protects nothing."""
    return Problem(
        rule="unreadable-line",
        message=f"`{typed}`: a breaker or fuse is no line of its own, it stands on what it protects",
        line=0,
        start=0,
        end=len(typed),
        found=f"`{typed}` in front of a name",
        needed="its rating on a feeder, `feeder MSB -> LP-1  100 A 3p`, on a circuit, `1  20 A 1p`, or as `main` of a "
        "board; one in an enclosure of its own is a `disconnect`",
        why="A device is judged by the wires and the load behind it, so it is written where these are.",
        change="Write its rating behind the feeder that it protects, and delete this line; or call it a `disconnect` "
        "and feed it",
        remedies=(Remedy("Write `disconnect`", (TextEdit(0, 0, len(typed), "disconnect"),), sure=False),),
    )


def _likely(tokens: tuple[Token, ...]) -> tuple[str, ...]:
    """The kinds, or statement, that a line looks like by what stands on it, the likeliest first."""
    words = {token.text for token in tokens}
    if any(token.kind in ("ARROW", "COLON") for token in tokens[1:3]):
        return ("transformer",) if tokens[1].kind == "VOLTAGE" else ("feeder",)
    if words & {"bus", "main", "incomer", "spaces"}:
        return ("panel", "switchboard")
    return ("utility", "generator") if "fault" in words else ("load", "panel")


def _unsaid(place: Place, name: str, words: tuple[str, ...]) -> tuple[Problem, Mended | None]:
    """A line that begins with a name: the word before it is missing."""
    sure = len(words) == 1
    listed = " or ".join(f"`{word} {name}`" for word in words)
    problem = Problem(
        rule="known-slip" if sure else "unreadable-line",
        message=f"in front of `{name}` stands what it is, as in {listed}",
        line=0,
        start=0,
        end=len(name),
        found=f"`{name}` alone",
        needed=listed if sure else f"a kind of equipment: {_KIND_LIST}",
        why="The first word says what a line is: a kind of equipment with its name, or `feeder` with two ends.",
        change=f"Write {listed}",
        remedies=tuple(Remedy(f"Write `{word} {name}`", (TextEdit(0, 0, 0, f"{word} "),), sure) for word in words),
    )
    return problem, (place.text, 0, 0, f"{words[0]} ") if sure else None


def _unknown(place: Place, typed: str) -> Problem:
    """A first word that nobody knows: what there is, and what the rest of the line looks like."""
    likely = _likely(place.tokens)[0]
    statements = ", ".join(f"`{word}`" for word in sorted(STATEMENTS - {"wye"}))
    return Problem(
        rule="unreadable-line",
        message=f"`{typed}` is no kind of equipment, and starts no other statement",
        line=0,
        start=0,
        end=len(typed),
        found=f"`{typed}`",
        needed=f"a kind of equipment: {_KIND_LIST}; or {statements}",
        why="A line is read word by word, and nothing is guessed.",
        change=f"Write the kind in place of `{typed}`: what only draws power is a `load`, a board a `panel`; "
        f"a description stands in quotes. `wyeline explain` lists and explains all words",
        remedies=(Remedy(f"Write `{likely}`", (TextEdit(0, 0, len(typed), likely),), sure=False),),
    )
