"""How the known slips of ``slips_*.py`` are mended: from a match to the text that should stand there."""

from __future__ import annotations

import itertools
import re
from collections.abc import Callable
from typing import NamedTuple

from wyeline_grammar import attributes
from wyeline_grammar.quantities import parse_quantity
from wyeline_grammar.spelling import nearest
from wyeline_grammar.syntax import Token
from wyeline_grammar.trade_terms import BY_SPELLING
from wyeline_grammar.units import UNITS
from wyeline_grammar.vocabulary import KEYS, STATEMENTS, word_kind


class Place(NamedTuple):
    """What a row may look at besides its match: the line as written, its tokens, whether it stands in the first
    column, the first wrong token (None at the end of the line, and on a line that parses) and what could stand
    there."""

    text: str
    tokens: tuple[Token, ...]
    statement: bool
    wrong: Token | None
    expected: frozenset[str]


Match = re.Match[str]
Fix = Callable[[Match, Place], str | tuple[str, ...] | None]


# Fragments of patterns: blanks or none, blanks, the edges of a word, a figure, a figure or fraction.
B = "[ \t\u00a0]*"
BB = "[ \t\u00a0]+"
START = r"(?<![^\s,:\[\]+>\"])"
STOP = r"(?![^\s,:\[\]+<\"])"
N = r"\d+(?:\.\d+)?"
SIZE = r"(?:\d+-)?\d+/\d+|\d+(?:\.\d+)?"
NAMED = r'[^\W\d_a-z][\w.-]*|"[^"]*"'
"""A name as it is usually written, or one in quotes."""
KCMIL = "250|300|350|400|500|600|700|750|800|900|1000|1250|1500|1750|2000"
SQUARE_MM = r"1\.5|2\.5|4|6|10|16|25|35|50|70|95|120|150|185|240|300"
"""Standard areas of conductors: NFPA 70, chapter 9, table 8, and IEC 60228."""
RACEWAYS = "EMT|RMC|IMC|GRC|PVC(?:-40|-80)?|FMC|LFMC|LFNC|ENT|RTRC|HDPE"
"""Raceway types by the abbreviations of common practice (article titles of NFPA 70, chapter 3)."""

PART_WORDS = {
    **dict.fromkeys(("GND", "GRD", "GRND", "GROUND", "EGC", "EG", "EQG"), "G"),
    **dict.fromkeys(("CPC", "E"), "PE"),
    **dict.fromkeys(("NEUT", "NEU", "NEUTRAL"), "N"),
}
"""What drawings call the further conductors of a run (common practice, no source)."""


def further(word: str) -> str:
    """``EGC``, ``gnd``: the further conductor that a drawing calls so, as it is written here."""
    return PART_WORDS.get(word.upper(), word.upper())


METAL_WORDS = {
    **dict.fromkeys(("cu", "copper", "cu.", "Copper", "COPPER", "CU"), "Cu"),
    **dict.fromkeys(("al", "alum", "alum.", "aluminum", "aluminium", "Aluminum", "ALUMINUM", "AL", "ALUM"), "Al"),
}
_LONGEST_MARK = 9
"""Marks of insulations and cables are short; a longer word is none."""
UNIT_WORDS = {
    **dict.fromkeys(("feet", "foot", "ft.", "lf"), "ft"),
    **dict.fromkeys(("metre", "metres", "meter", "meters", "mtr"), "m"),
    **dict.fromkeys(("amp", "amps", "ampere", "amperes"), "A"),
    **dict.fromkeys(("volt", "volts"), "V"),
    **dict.fromkeys(("watt", "watts"), "W"),
    **dict.fromkeys(("kilowatt", "kilowatts"), "kW"),
    **dict.fromkeys(("horsepower", "h.p."), "hp"),
    **dict.fromkeys(("percent", "pct"), "%"),
    **dict.fromkeys(("hertz", "cps"), "Hz"),
    **dict.fromkeys(("second", "seconds", "sec"), "s"),
    **dict.fromkeys(("minute", "minutes", "mins"), "min"),
    **dict.fromkeys(("hour", "hours", "hr", "hrs"), "h"),
    **dict.fromkeys(("inches", "inch.", "in."), "inch"),
    **dict.fromkeys(("ohms", "ohm."), "ohm"),
    **dict.fromkeys(("sqft", "sf", "sq.ft.", "sq-ft"), "ft2"),
    **dict.fromkeys(("sqm", "sq.m."), "m2"),
    "cycle": "cycles",
}
_BY_LOWER = {low: [unit for unit in UNITS if unit.lower() == low] for low in {unit.lower() for unit in UNITS}}
FRACTION_SIGNS = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}


def spelled(pattern: str) -> re.Pattern[str]:
    """A spelling that may begin and end anywhere."""
    return re.compile(pattern)


def rewritten(template: str) -> Fix:
    """The match rewritten; groups that took no part are empty."""
    return lambda match, _: match.expand(template)


def whole(pattern: str) -> re.Pattern[str]:
    """A spelling of whole words."""
    return re.compile(f"{START}(?:{pattern}){STOP}")


def without(match: Match, place: Place) -> str | None:
    """The words of a connection taken off the line of equipment that they stand on."""
    kind = place.tokens[0].kind
    return match["lead"] if kind == "KIND" else None


def one_an_action(match: Match, place: Place) -> str | None:
    """The further names behind an action of a scenario taken off its line."""
    return match["lead"] if place.tokens[0].kind == "ACTION" else None


def spelled_unit(word: str) -> list[str]:
    """The units that a word spells: by name, in another case, or a scale of temperature."""
    if word in ("C", "F", "c", "f"):
        return [f"deg{word.upper()}"]
    named = UNIT_WORDS.get(word.lower())
    return [named] if named else _BY_LOWER.get(word.lower(), [])


def unit_word(match: Match, _: Place) -> str | None:
    unit = UNIT_WORDS.get(match["word"].lower())
    return f"{match['n']} {unit}" if unit else None


def unit_case(match: Match, _: Place) -> str | None:
    found = _BY_LOWER.get(match["unit"].lower(), [])
    return f"{match['n']} {found[0]}" if len(found) == 1 and found[0] != match["unit"] else None


def keyword_case(match: Match, place: Place) -> str | None:
    """A listed word in another case, or with ``_`` for ``-``."""
    word = match[0].lower().replace("_", "-")
    if word == match[0] or word_kind(word) == "PLAIN" or place.wrong is None or match.start() != place.wrong.start:
        return None
    return word if _may_take_what_follows(word, match.end(), place) else None


def _may_take_what_follows(word: str, end: int, place: Place) -> bool:
    """Whether a key may have the quantity behind it: ``RCBO 2 kW`` must not take the load for a residual current."""
    behind = next((token for token in place.tokens if token.start >= end), None)
    if word not in KEYS or behind is None or behind.kind != "QUANTITY":
        return True
    dimension = parse_quantity(behind.text).dimension
    accepted = {accept.dimension for use in attributes.KEYS[word].uses for accept in use.accepts}
    return dimension in accepted or (dimension == "temperature" and "temperature-difference" in accepted)


def hyphen(match: Match, _: Place) -> str | None:
    word = f"{match[1]}-{match[2]}".lower()
    return word if word_kind(word) != "PLAIN" else None


def positions(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """``2-4`` with two poles is ``2,4``, ``1-5`` with three ``1,3,5``. Figures that do not rise are no positions; of
    any other span, such as ``9-19``, the writer says whether one column of the board is meant or both."""
    numbers, lead = re.findall(r"\d+", match["list"]), match["lead"] or ""
    if any(int(b) <= int(a) for a, b in itertools.pairwise(numbers)):
        return None
    if len(numbers) != 2 or "-" not in match["list"]:
        return f"{lead}{','.join(numbers)}"
    first, last = map(int, numbers)
    said = re.search(r"\b([1-4])[pP]\b", place.text)
    poles, column = int(said[1]) if said else 0, range(first, last + 1, 2)
    if column[-1] == last and len(column) == poles:
        return f"{lead}{','.join(map(str, column))}"
    if last - first > _LONGEST_RUN:
        return None
    both = range(first, last + 1)
    runs = [column, both] if column[-1] == last else [both, (first, last)]
    if last - first == 1:
        runs = [both]
    runs.sort(key=lambda run: len(run) != poles)
    return tuple(f"{lead}{','.join(map(str, run))}" for run in runs)


_LONGEST_RUN = 84
"""No board has more positions in a column (common practice, no source)."""


def decimal_comma(match: Match, place: Place) -> str | tuple[str, ...]:
    """``2,5 mm2``; but what a row of a board begins with may be its position and a figure behind it, as ``1,20 A``."""
    figure = f"{match[1] or ''}{match[2]}.{match[3]}{match[4]}"
    if place.statement or match[1] or match.start() > place.tokens[0].start:
        return figure
    return f"{match[2]}  {match[3]}{match[4]}", figure


def thousands(match: Match, _: Place) -> tuple[str, str]:
    figure = match["n"]
    return f"{figure.replace(',', '')} {match['unit']}", f"{figure.replace(',', '.', 1)} {match['unit']}"


VOLTS = frozenset("100 110 115 120 127 200 208 220 230 240 277 347 380 400 415 416 440 460 480 575 600 690".split())
"""What is written as a bare figure and can only be a voltage (IEC 60038, ANSI C84.1 and nameplates, from memory)."""


def volts_alone(match: Match, place: Place) -> str | tuple[str, str] | None:
    """A usual voltage behind the name of equipment, where its voltage stands."""
    tokens, figure = place.tokens, match["n"]
    third = len(tokens) > 2 and tokens[0].kind == "KIND" and tokens[2].start == match.start()
    if not third or figure not in VOLTS:
        return None
    split = re.match(r"\s*->\s*1[12]\d/2[234]\d(?!Y)", place.text[match.end() :])
    return f"{figure} 1ph" if split else (f"{figure} 3ph", f"{figure} 1ph")  # one winding makes what has a middle


def raceway_size(match: Match, place: Place) -> str:
    """``2 in EMT``: behind ``raceway`` and its name the size needs no ``in`` before it."""
    lead = "" if place.text.startswith("raceway") else "in "
    return f"{lead}{match['size']} inch {match['kind']}"


def trade_word(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """A word that the trade uses for one of the language's, where that word could stand."""
    term = BY_SPELLING.get(match[0].lower())
    if term is None or not term.words or place.wrong is None or match.start() != place.wrong.start:
        return None
    if not all(_may_take_what_follows(word, match.end(), place) for word in term.words):
        return None
    return term.words if len(term.words) > 1 else term.words[0]


def ways(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """``42 circuits``; but ``4 pole`` is a device's, and a way of a three-phase board may take three poles."""
    if "pole" in match[0] and int(match[1]) <= 4:
        return None
    spaces = f"spaces {match[1]}"
    three = "way" in match[0] and re.search(r"\dY/\d|\d ?3ph", place.text)
    return (spaces, f"spaces {3 * int(match[1])}") if three else spaces


def port(match: Match, _: Place) -> str:
    """``ATS-5 normal`` to ``ATS-5.normal``."""
    word = match["port"].replace("-", "")
    return f"{match['end']}.{'through' if 'thr' in word else word}"


def reserve(_: Match, place: Place) -> str | None:
    """A word for a spare device at the end of a circuit's row."""
    row = not place.statement and place.tokens[0].kind in ("NUMBER", "LIST", "NAME", "TEXT")
    return "spare" if row else None


def earthing(match: Match, place: Place) -> str | None:
    """``TN-S`` alone, on equipment."""
    wrong = place.wrong
    here = wrong is not None and wrong.start == match.start() and place.tokens[0].kind in ("KIND", "TYPE")
    return f"earthing {match[1]}" if here else None


def cable_type(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """A type of cable behind the length of a line whose conductors stand before it; `PVC` may be a conduit as well."""
    wires = [
        token for token in place.tokens if token.end <= match.start() + 1 and token.kind in ("RUN", "SIZE", "NAME")
    ]
    runs = any(token.kind == "RUN" for token in wires) and not re.search(r"\bin\b", match["rest"])  # a raceway's stuff
    if not runs or wires[-1].end != match.start():
        return None
    insulation = f" {match['type']}{match['rest']}"
    return (f"{match['rest']} in PVC", insulation) if match["type"] == "PVC" else insulation


def curve_and_rating(match: Match, place: Place) -> str | None:
    """``B16`` behind the label of a circuit or the ends of a feeder, where its poles are not said."""
    wrong = place.wrong
    return f"{match[2]} A curve {match[1]}" if wrong is not None and wrong.start == match.start() else None


def equals_sign(match: Match, _: Place) -> str | None:
    """``pf=0.86`` and ``Z=4%``."""
    key = match[1] if match[1].islower() else match[1].lower()
    return f"{key} {match[2]}" if key == match[1] or key in KEYS else None


def conductor_word(match: Match, place: Place) -> str | None:
    """A metal or insulation in small letters behind its conductors."""
    wrong = place.wrong
    if wrong is None or wrong.start != match.start() or not {"NAME", "PLUS"} <= place.expected:
        return None
    if match[0] in UNITS or match[0] in ("kcmil", "mcm", "awg"):
        return None
    return METAL_WORDS.get(match[0]) or (match[0].upper() if len(match[0]) < _LONGEST_MARK else None)


def value_first(match: Match, place: Place) -> str | None:
    """``42 spaces``, ``225 A bus``: a key behind its value, and nothing behind it that could be its value."""
    at = place.wrong.start if place.wrong else len(place.text)
    if match[2] not in KEYS or not (at == match.start() or not place.text[match.end() : at].strip(" ,\t")):
        return None
    return f"{match[2]} {match[1]}"


WYES = {"208": "120", "220": "127", "380": "220", "400": "230", "415": "240", "480": "277", "600": "347", "690": "400"}
"""Volts from a leg to neutral of a usual wye, by those between its legs (ANSI C84.1, IEC 60038, from memory)."""


def secondary(match: Match, _: Place) -> tuple[str, ...] | None:
    """Two voltages of a transformer: what the second one is, with a neutral or without, is for the writer to say."""
    sides = two_sides(match[2], match[3], match["phases"] or "")
    return tuple(f"{match['lead']}{side}" for side in sides) or None


def two_sides(first: str, second: str, phases: str = "") -> tuple[str, ...]:
    """What two volts of a transformer may be the sides of. Two that are one wye's, and a lower one first, are the
    voltages of one side."""
    if float(first) <= float(second) or WYES.get(first) == second:
        return ()
    wye = (f"{first} 3ph -> {second}Y/{WYES[second]}",) if second in WYES else ()
    high_leg = (f"{first} 3ph -> 240/120 3ph",) if second == "240" else ()
    three = (*wye, f"{first} 3ph -> {second} 3ph", *high_leg)
    one = (f"{first} 1ph -> {second} 1ph", f"{first} 1ph -> {float(second) / 2:g}/{second}")
    return three if phases == "3" else one if phases == "1" else (*three, one[0])


def second_side(match: Match, place: Place) -> str | None:
    """``480 3ph 208Y/120``: two voltages side by side."""
    pair = [token.kind for token in place.tokens if token.end >= match.start() and token.start <= match.end()]
    if place.wrong is None or place.wrong.start != match.end() or pair[-2:] != ["VOLTAGE", "VOLTAGE"]:
        return None
    return f"{match[1]} -> "


def raw_gauge(match: Match, place: Place) -> str | None:
    """A bare gauge on a line that has gauges; ``1/0`` is nothing else."""
    sure = match[2].endswith("/0") or "#" in place.text or "kcmil" in place.text
    return f"{match[1]} #{match[2]}" if sure else None


def quoted_name(match: Match, place: Place) -> str | None:
    """A name that reads as a quantity, number or the like, where a name must stand."""
    wrong = place.wrong
    if wrong is None or wrong.start != match.start() or "NAME" not in place.expected or "QUANTITY" in place.expected:
        return None
    numeric = wrong.kind in ("QUANTITY", "NUMBER", "POLES", "RUN", "SIZE", "SETS")
    return f'"{match[0]}"' if numeric and not re.search(r"\s", match[0]) else None


def quoted_circuit(match: Match, place: Place) -> str | None:
    """``2A 40 A 3p``: two currents, the first without a blank: a circuit's label that reads as a current."""
    return f'"{match[1]}"' if place.tokens[0].text == match[1] else None


def small_name(match: Match, place: Place) -> str | None:
    wrong = place.wrong
    if (
        wrong is None
        or wrong.start != match.start()
        or wrong.end != match.end()
        or wrong.kind not in ("PLAIN", "ERROR")
    ):
        return None
    if "NAME" not in place.expected or place.expected & {"PLAIN", "KEY"}:
        return None
    return match[0].upper()


def several_words(match: Match, _: Place) -> str | None:
    words = match["name"].split()
    if any(c.isdigit() for word in words[:-1] for c in word):
        return None  # a tag such as `LP-1` is a whole name
    if "->" in match["lead"] and any(c.isdigit() for c in words[-1]) and not words[-1].isdigit():
        return None  # behind the end of a feeder rather the mark of its device, such as `NH00`
    if any(word_kind(word) != "PLAIN" or (word.islower() and nearest(word, _LISTED)) for word in words):
        return None  # a keyword, or nearly one
    if "to" in words:
        return None  # an arrow in letters
    return f'{match["lead"]}"{" ".join(words)}"{match["tail"]}'


def label_without_digit(match: Match, place: Place) -> str | tuple[str, ...] | None:
    label = match[0]
    if place.tokens[0].kind != "NAME" or place.tokens[0].end != match.end() or any(c.isdigit() for c in label):
        return None
    small = label.lower()
    if small in KEYS:
        return small
    return (small, f'"{label}"') if word_kind(small) != "PLAIN" else (f'"{label}"', f"{label}-1")


def indent(_: Match, place: Place) -> str | None:
    """A detail in the first column: a circuit, or a line that can be nothing else."""
    if not place.statement or place.wrong is not place.tokens[0]:
        return None
    first = place.tokens[0]
    label = first.kind in ("NUMBER", "LIST") or (
        first.kind in ("NAME", "TEXT") and any(c.isdigit() for c in first.text)
    )
    return "  " if label or word_kind(first.text) != "PLAIN" or first.kind == "QUANTITY" else None


_LISTED = frozenset({"KEY", "FLAG", "KIND"})
STATEMENT_STARTS = frozenset({"KIND", *(word.upper() for word in STATEMENTS)})


def unindent(_: Match, place: Place) -> str | None:
    if place.statement or not place.tokens or place.tokens[0].kind not in STATEMENT_STARTS:
        return None
    return ""


def close_quote(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """Close a text at the gap where a column ends, else at the end of the line."""
    if place.wrong is None or place.wrong.start != match.start() or place.wrong.kind != "ERROR":
        return None
    inside = place.wrong.text.rstrip(" \t\u00a0,")
    rest = match[0][len(inside) :]
    gap = re.search(r"(?<=\S)(?=[ \t\u00a0]{2,})", inside)
    whole = f'{inside}"{rest}'
    if gap:
        return f'{inside[: gap.start()]}"{inside[gap.start() :]}{rest}', whole
    return whole if " " not in inside else (whole, f"{inside.replace(' ', chr(34) + ' ', 1)}{rest}")


def fraction_sign(match: Match, _: Place) -> str:
    whole, sign, rest = match[1], FRACTION_SIGNS[match[2]], match[3]
    return f"{whole}-{sign}{rest}" if whole else f"{sign}{rest}"
