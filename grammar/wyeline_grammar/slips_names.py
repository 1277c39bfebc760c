"""Known slips of legs, names and places of a line."""

from __future__ import annotations

import re

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import (
    BB,
    B,
    N,
    indent,
    label_without_digit,
    quoted_circuit,
    quoted_name,
    several_words,
    small_name,
    spelled,
    unindent,
    whole,
)

NAMES: tuple[Slip, ...] = (
    Slip(
        "legs-list",
        spelled(r"\[\s*((?:L[123]|[A-CNa-cn])(?:\s*[-/&+]?\s*(?:L[123]|[A-CNa-cn]))*)\s*\]"),
        lambda match, _: "[" + re.sub(r"[-/&+\s]+", " " if "L" in match[1] else "", match[1].upper()) + "]",
        "Legs stand side by side in capitals.",
        "feeder MSB[A-B] -> TX-5  100 A 2p",
        "feeder MSB[AB] -> TX-5  100 A 2p",
    ),
    Slip(
        "name-reads-as-quantity",
        spelled(r'[^\s,:\[\]"<>=]+'),
        quoted_name,
        "Without quotes it reads as a figure or a quantity.",
        "panel 2A 208Y/120",
        'panel "2A" 208Y/120',
        message="a name that reads as a quantity stands in quotes: `{right}`",
    ),
    Slip(
        "circuit-reads-as-quantity",
        spelled(rf"(?<=\s)(\d+[AVWhms])(?={BB}{N}{B}A\b)"),
        quoted_circuit,
        "Without quotes it reads as a quantity, and the line as a further fact of the statement above.",
        "  2A  40 A 3p  15 hp motor",
        '  "2A"  40 A 3p  15 hp motor',
        message="a circuit that reads as a quantity stands in quotes: `{right}`",
        sound=True,
    ),
    Slip(
        "label-without-digit",
        spelled(r"(?<=\s)[^\W\d][\w.-]*"),
        label_without_digit,
        "A circuit's label has a digit, so that a keyword in the wrong case is not taken for a circuit.",
        "  Main 150 A",
        "  main 150 A",
        message="`{wrong}` has no digit, so it is no circuit's label; write `{right}`",
        sound=True,
    ),
    Slip(
        "small-letter-name",
        whole(r"[a-z0-9][a-z0-9_.-]*"),
        small_name,
        "A name has a capital, which tells it from the words of the language.",
        "panel lp-5 208Y/120",
        "panel LP-5 208Y/120",
        message="a name has a capital letter: `{right}`",
    ),
    Slip(
        "name-of-several-words",
        spelled(
            rf"(?P<lead>^(?:type{BB})?[a-z]+{BB}|->{B})(?P<name>[^\W\d_][\w.-]*(?:{BB}[^\W\d_][\w.-]*)+(?:{BB}\d{{1,2}}(?={B}(?:\[|->|,|$|//)))?)"
            rf"(?P<tail>(?={B}(?:\[|->|,|$|//)|{BB}[a-z\d\"]))"
        ),
        several_words,
        "A blank ends a name, so a name of several words stands in quotes.",
        "panel PUMP ROOM 208Y/120",
        'panel "PUMP ROOM" 208Y/120',
        message="a name of several words stands in quotes",
    ),
    Slip(
        "detail-in-first-column",
        spelled(r"^(?=\S)"),
        indent,
        "A line in the first column starts a statement of its own; what belongs to the statement above is indented.",
        "1  20 A 1p  1.2 kVA receptacle",
        "  1  20 A 1p  1.2 kVA receptacle",
        message="`{wrong}` starts a detail of the statement above, which stands indented",
    ),
    Slip(
        "statement-indented",
        spelled(r"^\s+"),
        unindent,
        "An indented line belongs to the statement above it.",
        "  panel LP-5 208Y/120  bus 225 A",
        "panel LP-5 208Y/120  bus 225 A",
        message="`{wrong}` starts a statement, which stands in the first column",
    ),
)
