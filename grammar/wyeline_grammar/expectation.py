"""What can stand at a place of a line, and what is said where something else stands, in the words of the reference."""

from __future__ import annotations

from wyeline_grammar.memo import END
from wyeline_grammar.syntax import Token

PHRASE_STARTS = frozenset("KEY FLAG KIND QUANTITY SETS RUN TEXT IN AT LEG ASSUME".split())
"""Kinds that a phrase starts with."""

_STARTS = PHRASE_STARTS - {"TEXT"}
_VALUES = frozenset("QUANTITY NUMBER VOLTAGE RANGE LIST NAME".split())
_STATEMENTS = frozenset("FEEDER SCENARIO EXPECT".split())
_CONTINUATIONS = frozenset({"ARROW", "POLES", "LEGS", "PLUS", "COLON", END})
"""Marks that may go on with what stands before: named only where nothing else can stand."""

_GROUPS: tuple[tuple[frozenset[str], str, frozenset[str]], ...] = (
    (
        _STATEMENTS,
        "a kind of equipment such as `panel`, or `feeder`, `project`, `include`, `raceway`, `type`, `scenario` or "
        "`expect`",
        frozenset("WYE PROJECT INCLUDE TYPE RACEWAY KIND".split()),
    ),
    (
        _VALUES,
        "a value, such as `225 A`, `0.86`, `480 3ph`, a word or a name",
        frozenset("TEXT SIZE TRADE_SIZE PORT PLAIN FLAG KIND ACTION".split()),
    ),
    (
        frozenset({*_STARTS, "ALLOW", "CLAIM", "ISSUE"}),
        "the positions of a circuit, or a keyword with its value",
        frozenset("TEXT NAME NUMBER LIST ACTION".split()),
    ),
    (
        _STARTS,
        "a keyword with its value, a flag, a number with its unit, or conductors such as `3#8`",
        frozenset({"TEXT"}),
    ),
    (frozenset({"NAME", "PORT"}), "a name such as `LP-1` or a port such as `ATS-1.normal`", frozenset({"TEXT"})),
    (frozenset({"KEY", "FLAG", "PLAIN"}), "what is expected, such as `drop` or `fault`", frozenset({"KIND"})),
    (frozenset({"FLAG", "ACTION", "PLAIN"}), "the name of a rule or of a code exception", frozenset({"KIND"})),
    (frozenset({"NAME", "PLAIN"}), "a raceway, such as `2 inch EMT` or `R-7`", frozenset({"TRADE_SIZE"})),
    (frozenset({"LE", "GE"}), "`<=` or `>=`", frozenset()),
    (frozenset({"NAME", "TEXT"}), "a name such as `LP-1`, or one in quotes", frozenset()),
)
_SINGLE = {
    "NAME": "a name such as `LP-1`",
    "TEXT": "a text in quotes",
    "NUMBER": "a number",
    "LIST": "positions such as `2,4`",
    "DATE": "a date such as `2026-03-02`",
    "QUANTITY": "a number with its unit, such as `225 A`",
    "VOLTAGE": "a voltage such as `480Y/277`",
    "POLES": "poles such as `3p`",
    "SIZE": "a conductor size such as `#8` or `16 mm2`",
    "RUN": "conductors such as `3#8`",
    "TRADE_SIZE": "a trade size such as `2 inch`",
    "LEGS": "legs such as `[AB]`",
    "ARROW": "`->`",
    "COLON": "`:` behind a label",
    "PLUS": "`+` with a further conductor",
    "KIND": "a kind of equipment such as `panel`",
    END: "nothing more",
}


def needed_here(expected: frozenset[str]) -> str:
    """What can stand at a place; what only goes on with the words before is left out where more can."""
    left = set(expected)
    parts = []
    for group, words, covered in _GROUPS:
        if group <= left:
            parts.append(words)
            left -= group | covered
    if parts or left - _CONTINUATIONS:
        left -= {END} if {"ARROW", "LE", "IN"} & left and not parts else _CONTINUATIONS
    parts += [_SINGLE.get(kind, f"`{kind.lower()}`") for kind in sorted(left)]
    return ", ".join(parts[:-1]) + " or " + parts[-1] if len(parts) > 1 else "".join(parts)


def message(typed: str, wrong: Token | None, before: str, expected: frozenset[str]) -> tuple[str, str]:
    """The line that says what is wrong, and why: at the word ``typed`` (empty at the end) behind ``before``."""
    if expected >= _VALUES:
        stands = f"; `{typed}` is none" if typed else ""
        return f"`{before}` needs its value right behind it{stands}", "A keyword and its value belong together."
    if "NAME" in expected and expected <= {"NAME", "TEXT", "PORT"} and before != "+":
        stands = f"; `{typed}` is none" if typed else ""
        why = "A name has a capital letter, or stands in quotes; by it everything else refers to this."
        return f"a name is missing behind `{before}`{stands}", why
    needed = needed_here(expected)
    why = "A line is read word by word, and nothing is guessed."
    if typed.startswith("["):
        return f"`{typed}` names no legs: they are `A`, `B`, `C` and `N`, or `L1`, `L2`, `L3` and `N`", why
    if wrong is None:
        return f"the line ends too early: behind `{before}` stands {needed}", why
    if expected >= _STATEMENTS:
        return f"`{typed}` starts no statement: in the first column stands {needed}", why
    if expected >= _STARTS:
        if wrong.kind == "NUMBER":
            why = "Only a keyword or a unit says what a number is."
            return f"the bare number `{typed}` has neither a keyword before it nor a unit behind it", why
        if wrong.kind in ("NAME", "PORT"):
            why = "A name is the value of a keyword, or an end of a connection; it starts nothing."
            return f"nothing before it says what the name `{typed}` is for", why
        if wrong.kind == "PLAIN":
            return f"`{typed}` is no word of the language", "Only listed words say what is meant."
    reads = "cannot be read" if wrong.kind == "ERROR" else "cannot stand"
    return f"`{typed}` {reads} {f'behind `{before}`' if before else 'here'}; here stands {needed}", why
