"""The slips that people make when they write a line as another trade paper, program or habit would have it.

One table: a row recognises the slip by its spelling and knows the right one. ``recovery.py`` tries the rows, in their
order, on a line that does not parse, and takes the first whose spelling lets more of the line be read; rows with
``sound`` are tried on lines that do parse but cannot have been meant so. Every row carries an example that a test runs.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import NamedTuple

from wyeline_grammar.syntax import Token
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


class Slip(NamedTuple):
    """One known slip.

    ``fix`` gives the text that replaces the match, several where the line may mean several things (then none is sure),
    or None where this is not the slip. ``pattern`` sees the line with the insides of texts and comments blanked out,
    unless ``quotes``. ``why`` is one sentence. ``message`` may use ``{wrong}`` and ``{right}``.
    """

    name: str
    pattern: re.Pattern[str]
    fix: Fix
    why: str
    wrong: str
    right: str
    message: str = "`{wrong}` is written `{right}`"
    quotes: bool = False
    sound: bool = False


_B = "[ \t\u00a0]*"
_BB = "[ \t\u00a0]+"
_START = r"(?<![^\s,:\[\]+>\"])"
_STOP = r"(?![^\s,:\[\]+<\"])"
_N = r"\d+(?:\.\d+)?"
_SIZE = r"(?:\d+-)?\d+/\d+|\d+(?:\.\d+)?"
_RACEWAYS = "EMT|RMC|IMC|GRC|PVC(?:-40|-80)?|FMC|LFMC|LFNC|ENT|RTRC|HDPE"
"""Raceway types by the abbreviations of common practice (article titles of NFPA 70, chapter 3)."""

_UNIT_WORDS = {
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
    "cycle": "cycles",
}
_BY_LOWER: dict[str, list[str]] = {}
for _unit in UNITS:
    _BY_LOWER.setdefault(_unit.lower(), []).append(_unit)
_FRACTION_SIGNS = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}


def _c(pattern: str, flags: int = 0) -> re.Pattern[str]:
    return re.compile(pattern, flags)


def _to(template: str) -> Fix:
    """The match rewritten; groups that took no part are empty."""
    return lambda match, _: match.expand(template)


def _words(pattern: str) -> re.Pattern[str]:
    return re.compile(f"{_START}(?:{pattern}){_STOP}")


def _unit_word(match: Match, _: Place) -> str | None:
    unit = _UNIT_WORDS.get(match["word"].lower())
    return f"{match['n']} {unit}" if unit else None


def _unit_case(match: Match, _: Place) -> str | None:
    found = _BY_LOWER.get(match["unit"].lower(), [])
    return f"{match['n']} {found[0]}" if len(found) == 1 and found[0] != match["unit"] else None


def _keyword_case(match: Match, place: Place) -> str | None:
    """A listed word in another case, or with ``_`` for ``-``."""
    word = match[0].lower().replace("_", "-")
    if word == match[0] or word_kind(word) == "PLAIN" or place.wrong is None or match.start() != place.wrong.start:
        return None
    return word


def _hyphen(match: Match, _: Place) -> str | None:
    word = f"{match[1]}-{match[2]}".lower()
    return word if word_kind(word) != "PLAIN" else None


def _positions(match: Match, place: Place) -> str:
    """``2-4`` to ``2,4``; ``1-5`` with three poles is ``1,3,5``."""
    numbers = re.findall(r"\d+", match["list"])
    poles = re.search(r"\b([234])[pP]\b", place.text)
    if len(numbers) == 2 and poles and "-" in match["list"]:
        first, last = map(int, numbers)
        if last - first == 2 * (int(poles[1]) - 1):
            numbers = [str(n) for n in range(first, last + 1, 2)]
    return f"{match['lead'] or ''}{','.join(numbers)}"


def _thousands(match: Match, _: Place) -> tuple[str, str]:
    figure = match["n"]
    return f"{figure.replace(',', '')} {match['unit']}", f"{figure.replace(',', '.', 1)} {match['unit']}"


def _frame(match: Match, _: Place) -> str | None:
    frame, trip = float(match[1]), float(match[2])
    frame, trip = max(frame, trip), min(frame, trip)
    poles = f" {match['poles'].lower()}" if match["poles"] else ""
    return f"{trip:g} A{poles} frame {frame:g} A" if frame != trip else None


def _raw_gauge(match: Match, place: Place) -> str | None:
    return f"{match[1]} #{match[2]}" if "#" in place.text else None


def _phases(match: Match, _: Place) -> str:
    volts, unit = match["volts"], " kV" if match["unit"].lower() == "kv" else ""
    phases = "3ph" if match["phases"].startswith("3") else "1ph"
    if "/" in volts and phases == "3ph" and ("Y" in volts.upper() or match["wires"]):
        return volts.replace("y", "Y") + unit
    return f"{volts.replace('y', 'Y')}{unit} {phases}"


def _quoted_name(match: Match, place: Place) -> str | None:
    """A name that reads as a quantity, number or the like, where a name must stand."""
    wrong = place.wrong
    if wrong is None or wrong.start != match.start() or "NAME" not in place.expected or "QUANTITY" in place.expected:
        return None
    numeric = wrong.kind in ("QUANTITY", "VOLTAGE", "NUMBER", "POLES", "RUN", "SIZE", "SETS", "RANGE", "LIST")
    return f'"{match[0]}"' if numeric and not re.search(r"\s", match[0]) else None


def _quoted_circuit(match: Match, place: Place) -> str | None:
    """``2A 40 A 3p``: two currents, the first without a blank: a circuit's label that reads as a current."""
    return f'"{match[1]}"' if place.tokens[0].text == match[1] else None


def _small_name(match: Match, place: Place) -> str | None:
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


def _several_words(match: Match, _: Place) -> str | None:
    words = match["name"].split()
    if any(word_kind(word) != "PLAIN" for word in words):
        return None
    return f'{match["lead"]}"{" ".join(words)}"{match["tail"]}'


def _label_without_digit(match: Match, place: Place) -> str | tuple[str, ...] | None:
    label = match[0]
    if place.tokens[0].kind != "NAME" or place.tokens[0].end != match.end() or any(c.isdigit() for c in label):
        return None
    small = label.lower()
    if small in KEYS:
        return small
    return (small, f'"{label}"') if word_kind(small) != "PLAIN" else (f'"{label}"', f"{label}-1")


def _indent(_: Match, place: Place) -> str | None:
    """A detail in the first column: a circuit, or a line that can be nothing else."""
    if not place.statement or place.wrong is not place.tokens[0]:
        return None
    first = place.tokens[0]
    label = first.kind in ("NUMBER", "LIST") or (
        first.kind in ("NAME", "TEXT") and any(c.isdigit() for c in first.text)
    )
    return "  " if label or word_kind(first.text) != "PLAIN" or first.kind == "QUANTITY" else None


def _unindent(_: Match, place: Place) -> str | None:
    if place.statement or not place.tokens or place.tokens[0].kind not in _STATEMENT_STARTS:
        return None
    return ""


_STATEMENT_STARTS = frozenset({"KIND", *(word.upper() for word in STATEMENTS)})


def _close_quote(match: Match, place: Place) -> str | tuple[str, ...] | None:
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


def _fraction_sign(match: Match, _: Place) -> str:
    whole, sign, rest = match[1], _FRACTION_SIGNS[match[2]], match[3]
    return f"{whole}-{sign}{rest}" if whole else f"{sign}{rest}"


SLIPS: tuple[Slip, ...] = (
    Slip(
        "curly-quotes",
        _c('[“”„«»]([^“”„«»"]*)[“”„«»]'),
        _to(r'"\1"'),
        "Texts stand in straight quotes; word processors bend them.",
        "  1  20 A 1p  “Bench, north”",
        '  1  20 A 1p  "Bench, north"',
        quotes=True,
    ),
    Slip(
        "single-quotes",
        _words("'([^'\"]*)'"),
        _to(r'"\1"'),
        "Texts stand in double quotes; one stroke alone reads as feet.",
        "panel 'Pump room' 208Y/120",
        'panel "Pump room" 208Y/120',
    ),
    Slip(
        "inch-mark",
        _c(rf"\bin{_BB}({_SIZE}){_B}(?:\"|''|″|”){_B}(?=[A-Z])"),
        _to(r"in \1 inch "),
        "Two strokes open a text, so the unit is written out.",
        'feeder GRID -> MSB  40 m  in 2" EMT',
        "feeder GRID -> MSB  40 m  in 2 inch EMT",
        quotes=True,
    ),
    Slip(
        "unclosed-quote",
        _c('"[^"]*$'),
        _close_quote,
        "A text ends on its own line, at the next quote.",
        'include "boiler-house.wye',
        'include "boiler-house.wye"',
        message="the text `{wrong}` has no closing quote",
        quotes=True,
    ),
    Slip(
        "comment-sign",
        _c(r"(?<!\S)(?:#|;|--|/\*)(?=\s|$)"),
        _to("//"),
        "A comment starts with two strokes; `#` is a wire gauge.",
        "panel LP-5 208Y/120  # ask the owner",
        "panel LP-5 208Y/120  // ask the owner",
    ),
    Slip(
        "keyword-case",
        _words(r"[A-Za-z][A-Za-z/_-]*"),
        _keyword_case,
        "Words of the language are in small letters; capitals are for names.",
        "Panel LP-5 208Y/120",
        "panel LP-5 208Y/120",
    ),
    Slip(
        "missing-hyphen",
        _words(r"([A-Za-z]+) ([A-Za-z]+)"),
        _hyphen,
        "A keyword is one word; a hyphen holds its parts together.",
        "feeder A1 -> A2  100 A 3p  normally open",
        "feeder A1 -> A2  100 A 3p  normally-open",
    ),
    Slip(
        "dash-arrow",
        _c(r"(?<!\S)(?:—>|–>|=>|-->|—|–|--|~>)(?!\S)"),
        _to("->"),
        "The arrow shows which way power flows; it is a hyphen and a bracket.",
        "feeder MSB --> LP-5  100 A 3p",
        "feeder MSB -> LP-5  100 A 3p",
    ),
    Slip(
        "word-to",
        _c(rf"^((?:feeder|type|transformer|ups|charger|inverter|{_B}open|{_B}close)\b.*?\s)(?:to|>)(?=\s)"),
        _to(r"\1->"),
        "The arrow shows which way power flows.",
        "feeder MSB to LP-5  100 A 3p",
        "feeder MSB -> LP-5  100 A 3p",
        message="between the two ends of a connection stands `->`",
    ),
    Slip(
        "missing-arrow",
        _c(rf"^(feeder{_BB}(?:[^\s:]+{_B}:{_B})?[^\s,:<>]+)({_BB})(?=[^\s,:<>\[]*[A-Z\"])"),
        _to(r"\1 -> "),
        "The arrow shows which of the two ends feeds the other.",
        "feeder MSB LP-5  100 A 3p",
        "feeder MSB -> LP-5  100 A 3p",
        message="between the two ends of a connection stands `->`",
    ),
    Slip(
        "equals-sign",
        _c(rf"(?<=[a-z0-9])({_B})[=:]({_B})(?=[^\s=])"),
        _to(" "),
        "A keyword and its value stand side by side.",
        "motor P-5 460 3ph  15 hp, pf=0.86",
        "motor P-5 460 3ph  15 hp, pf 0.86",
        message="between a keyword and its value stands a blank",
    ),
    Slip(
        "comparison",
        _c(r"(?<=\s)(<|=<|>|=>)(?=[\s\d])"),
        lambda match, _: "<=" if "<" in match[1] else ">=",
        "An expectation names its limit, which itself is still good.",
        "expect LP-5 fault < 10 kA",
        "expect LP-5 fault <= 10 kA",
    ),
    Slip(
        "device-slash",
        _words(rf"({_N}){_B}[aA](?:{_B}[/-]{_B})([1-4]){_B}[pP](?:ole)?"),
        _to(r"\1 A \2p"),
        "A device is its rated current and then its poles.",
        "  1  20A/1P  1.2 kVA receptacle",
        "  1  20 A 1p  1.2 kVA receptacle",
    ),
    Slip(
        "poles-first",
        _words(rf"([1-4])[pP]{_BB}({_N}){_B}A(?!{_BB}[1-4][pP])"),
        _to(r"\2 A \1p"),
        "A device is its rated current and then its poles.",
        "feeder MSB -> LP-5  3P 100 A  30 m",
        "feeder MSB -> LP-5  100 A 3p  30 m",
    ),
    Slip(
        "poles-first-in-detail",
        _c(rf"(?<=\s)([1-4])P{_BB}({_N}){_B}A(?!{_BB}[1-4][pP])"),
        lambda match, place: f"{match[2]} A {match[1]}p" if place.tokens[0].start == match.start() else None,
        "A device is its rated current and then its poles; a circuit that is really called so needs quotes.",
        "  3P 100 A  fuse J",
        "  100 A 3p  fuse J",
        sound=True,
    ),
    Slip(
        "poles-case",
        _words(r"([1-4])(?:P|[ -]?[Pp]ole|[ -][Pp])(\+N)?"),
        _to(r"\1p\2"),
        "Poles are a figure and a small p.",
        "  3  20 A 1P  1.2 kVA receptacle",
        "  3  20 A 1p  1.2 kVA receptacle",
    ),
    Slip(
        "frame-and-trip",
        _words(rf"({_N}){_B}AF{_B}[/,]?{_B}({_N}){_B}AT(?:{_BB}(?P<poles>[1-4][pP]))?"),
        _frame,
        "The bare current is the device's setting; its frame has a keyword.",
        "feeder MSB -> LP-5  400AF/350AT 3p",
        "feeder MSB -> LP-5  350 A 3p frame 400 A",
    ),
    Slip(
        "frame-slash-trip",
        _words(rf"({_N})/({_N}){_B}A(?:{_BB}(?P<poles>[1-4][pP]))?"),
        _frame,
        "Offices disagree on which of the two comes first, so the frame has a keyword.",
        "feeder MSB -> LP-5  400/350 A 3p",
        "feeder MSB -> LP-5  350 A 3p frame 400 A",
    ),
    Slip(
        "curve-first",
        _words(rf"([BCDKZ])({_N})(?:{_B}A)?{_BB}([1-4]p(?:\+N)?)"),
        _to(r"\2 A \3 curve \1"),
        "The bare current is the device's rating; its curve has a keyword.",
        "feeder HV -> UV  B16 1p  24 m",
        "feeder HV -> UV  16 A 1p curve B  24 m",
    ),
    Slip(
        "curve-between",
        _words(rf"({_N}){_B}A{_BB}([BCDKZ])(?:{_BB}([1-4]p(?:\+N)?))?"),
        lambda match, _: f"{match[1]} A{' ' + match[3] if match[3] else ''} curve {match[2]}",
        "Rating and poles stand together; the curve has a keyword.",
        "  F1  16 A B 1p  1.2 kW",
        "  F1  16 A 1p curve B  1.2 kW",
    ),
    Slip(
        "main-lugs",
        _words(r"MLO|M\.L\.O\."),
        _to("main lugs"),
        "Capitals are for names; the words say what it is.",
        "panel LP-5 208Y/120  bus 225 A, MLO",
        "panel LP-5 208Y/120  bus 225 A, main lugs",
    ),
    Slip(
        "main-breaker",
        _words(rf"MCB{_BB}({_N}{_B}A)|({_N}{_B}A){_BB}MCB"),
        lambda match, _: f"main {match[1] or match[2]}",
        "Capitals are for names; the words say what it is.",
        "panel LP-5 208Y/120  bus 225 A, MCB 200 A",
        "panel LP-5 208Y/120  bus 225 A, main 200 A",
    ),
    Slip(
        "thousands-comma",
        _words(rf"(?P<n>\d{{1,3}}(?:,\d{{3}})+){_B}(?P<unit>[A-Za-z%]+)"),
        _thousands,
        "A comma parts words, so figures have no thousands mark.",
        "switchboard MSB 480Y/277  bus 1,200 A",
        "switchboard MSB 480Y/277  bus 1200 A",
    ),
    Slip(
        "decimal-comma",
        _words(rf"(\d+x|\d+G)?(\d+),(\d{{1,2}})({_B}[A-Za-z%][A-Za-z0-9%/.²]*)"),
        _to(r"\1\2.\3\4"),
        "A comma parts words, so the decimal mark is a point.",
        "feeder HV -> UV  3G2,5 mm2 Cu  24 m",
        "feeder HV -> UV  3G2.5 mm2 Cu  24 m",
    ),
    Slip(
        "decimal-comma-number",
        _c(r"(?<=[a-z] )(\d+),(\d+)(?![\d,])"),
        _to(r"\1.\2"),
        "A comma parts words, so the decimal mark is a point.",
        "expect LP-5 drop <= 2,5 %",
        "expect LP-5 drop <= 2.5 %",
    ),
    Slip(
        "leading-point",
        _c(r"(?<![\w.])\.(\d+)"),
        _to(r"0.\1"),
        "A point alone is easily lost on paper, so a digit stands before it.",
        "motor P-5 460 3ph  15 hp, pf .86",
        "motor P-5 460 3ph  15 hp, pf 0.86",
    ),
    Slip(
        "positions",
        _c(
            rf"(?P<lead>^\s+|\bat{_BB})(?P<list>\d+(?:{_B}[-/&]{_B}\d+|,?{_BB}\d+|,\d+)+)(?=[\s\[,]|$)(?!{_B}(?:A|VA|kVA|V|kV|W|kW|hp|m|ft)\b)"
        ),
        _positions,
        "All positions of a device are one word, with commas and without blanks.",
        "  2, 4  20 A 2p  2 kVA heating",
        "  2,4  20 A 2p  2 kVA heating",
        message="the positions of one device are written `{right}`",
    ),
    Slip(
        "fraction-sign",
        _c("(\\d*) ?([½¼¾⅛⅜⅝⅞])(\\s*)"),
        _fraction_sign,
        "A fraction is written with a stroke, and a hyphen behind the whole number.",
        "motor P-5 460 3ph  7½ hp",
        "motor P-5 460 3ph  7-1/2 hp",
    ),
    Slip(
        "fraction-blank",
        _words(rf"(\d+){_BB}(\d+/(?:2|4|8|16|32)){_B}([a-zA-Z]+)"),
        _to(r"\1-\2 \3"),
        "A hyphen holds the whole number and its fraction together.",
        "motor P-5 460 3ph  7 1/2 hp",
        "motor P-5 460 3ph  7-1/2 hp",
    ),
    Slip(
        "minus-sign",
        _c("(?<![^\\s,])[−–—](?=\\d)"),
        _to("-"),
        "A minus is a hyphen.",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, tap −2.5 %",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, tap -2.5 %",
    ),
    Slip(
        "ground-in-run",
        _words(rf"\+?{_B}(?:1{_B}-?{_B})?#(\d+(?:/0)?){_B}-?(G|GND|EG|EGC|PE|N)"),
        lambda match, _: f"+ {match[2] if match[2] in ('PE', 'N') else 'G'} #{match[1]}",
        "A conductor added to the run is named first and sized then.",
        "feeder MSB -> LP-5  3#8 1#8G Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #8 Cu  30 m",
    ),
    Slip(
        "run-dash",
        _words(rf"\(?(\d+)\)?{_B}[-x×]?{_B}#(\d+(?:/0)?)(?:{_B}AWG)?|(\d+)-(\d/0)|\((\d+)\){_B}(\d/0)"),
        lambda match, _: f"{match[1] or match[3] or match[5]}#{match[2] or match[4] or match[6]}",
        "A run is the count of its conductors and, with no blank, their gauge.",
        "feeder MSB -> LP-5  3-#8 + G #10 Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
    ),
    Slip(
        "gauge-unmarked",
        _words(r"(\+\s*(?:N|G|IG|PE))\s+(\d{1,2}|\d/0)(?:\s*AWG)?"),
        _raw_gauge,
        "A wire gauge has its sign, so that it is no bare number.",
        "feeder MSB -> LP-5  3#8 + G 10 Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
    ),
    Slip(
        "size-before-role",
        _words(r"\+\s*(#\d+(?:/0)?|\d+(?:\.\d+)?\s*(?:kcmil|mm2))\s+(N|G|IG|PE|PEN)"),
        _to(r"+ \2 \1"),
        "A conductor added to the run is named first and sized then.",
        "feeder MSB -> LP-5  3#8 + #10 G Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
    ),
    Slip(
        "run-blanks",
        _words(rf"(\d+)({_B})[xX×*]({_B})({_N}{_B}(?:kcmil|mm2|mm²))"),
        _to(r"\1x\4"),
        "A run is one word up to its size.",
        "feeder HV -> UV  3 x 95 mm2 Cu  24 m",
        "feeder HV -> UV  3x95 mm2 Cu  24 m",
    ),
    Slip(
        "size-unit",
        _words(rf"(\d+[x×])?({_N}){_B}(?:(MCM|mcm|KCMIL|Kcmil|kCMIL)|mm\^2|sqmm|SQMM|sq\.?{_B}mm|MM2|qmm)"),
        lambda match, _: f"{match[1] or ''}{match[2]} {'kcmil' if match[3] else 'mm2'}",
        "One unit, one spelling.",
        "feeder MSB -> LP-5  3x250 MCM  30 m",
        "feeder MSB -> LP-5  3x250 kcmil  30 m",
    ),
    Slip(
        "conduit-in-twice",
        _words(rf"in{_BB}({_SIZE}){_B}(?:in\.?|inches|'')(?={_BB}[A-Z])"),
        _to(r"in \1 inch"),
        "`in` is the word, `inch` the unit.",
        "feeder MSB -> LP-5  30 m  in 2 in EMT",
        "feeder MSB -> LP-5  30 m  in 2 inch EMT",
    ),
    Slip(
        "conduit-size-first",
        _words(rf"({_SIZE}){_BB}(?:in|inch){_BB}({_RACEWAYS})"),
        _to(r"in \1 inch \2"),
        "`in` opens the raceway, `inch` is the unit of its trade size.",
        "feeder MSB -> LP-5  30 m  2 in EMT",
        "feeder MSB -> LP-5  30 m  in 2 inch EMT",
    ),
    Slip(
        "conduit-size-last",
        _words(rf"in{_BB}({_RACEWAYS}){_BB}({_SIZE}){_B}(inch|mm|in|\")"),
        lambda match, _: f"in {match[2]} {'mm' if match[3] == 'mm' else 'inch'} {match[1]}",
        "The trade size stands before the raceway's kind.",
        "feeder MSB -> LP-5  30 m  in EMT 2 inch",
        "feeder MSB -> LP-5  30 m  in 2 inch EMT",
    ),
    Slip(
        "raceway-without-in",
        _words(rf"({_N}{_B}(?:m|ft)){_BB}((?:(?:{_SIZE}){_B}(?:inch|mm){_BB})?(?:{_RACEWAYS}))"),
        _to(r"\1 in \2"),
        "`in` opens the raceway.",
        "feeder MSB -> LP-5  3#8 Cu  42 m EMT",
        "feeder MSB -> LP-5  3#8 Cu  42 m in EMT",
    ),
    Slip(
        "sets-of",
        _words(rf"\(?(\d+)\)?{_BB}(?:sets?|runs?|parallel)(?:{_BB}of)?(?={_BB}\d)"),
        lambda match, _: f"{match[1]} set{'s' if match[1] != '1' else ''}",
        "Parallel sets are a count and the word.",
        "feeder MSB -> LP-5  2 sets of 3#4/0 Cu  30 m",
        "feeder MSB -> LP-5  2 sets 3#4/0 Cu  30 m",
    ),
    Slip(
        "foot-mark",
        _words(rf"({_N}){_B}['′]"),
        _to(r"\1 ft"),
        "A unit is written out.",
        "feeder MSB -> LP-5  3#8 Cu  140'",
        "feeder MSB -> LP-5  3#8 Cu  140 ft",
    ),
    Slip(
        "unit-word",
        _words(rf"(?P<n>(?:\d+-)?\d+/\d+|[+-]?{_N}){_B}(?P<word>[A-Za-z]+(?:\.[A-Za-z]+)*\.?)"),
        _unit_word,
        "One unit, one spelling.",
        "feeder MSB -> LP-5  3#8 Cu  140 feet",
        "feeder MSB -> LP-5  3#8 Cu  140 ft",
    ),
    Slip(
        "direct-current",
        _words(rf"({_N}){_B}(?:[vV]{_B}-?{_B}(?:dc|DC)|VDC|Vdc|DC)"),
        _to(r"\1 dc"),
        "A voltage is its figure and the word that says of what kind it is.",
        "battery BAT-5  48 VDC  20 kWh",
        "battery BAT-5  48 dc  20 kWh",
    ),
    Slip(
        "phases",
        _words(
            rf"(?P<volts>{_N}(?:[Yy]?/{_N}|-{_N})?){_B}(?P<unit>[kK]?[vV]|){_B}[,/-]?{_B}"
            rf"(?P<phases>[13](?:{_B}-?{_B}(?:PH|Ph|ph|[Pp]hase|PHASE|Ø|ø|φ|Φ)))(?P<wires>{_B},?{_B}[34]{_B}-?[wW](?:ire)?)?"
        ),
        _phases,
        "A voltage is its figures and then `3ph` or `1ph`; the volts need no unit.",
        "motor P-5  460V 3PH  15 hp",
        "motor P-5  460 3ph  15 hp",
    ),
    Slip(
        "temperature-unit",
        _words(rf"(?P<key>ambient|rise|lug-temp){_BB}(?P<n>[+-]?{_N}){_B}(?:deg\.?{_B}|°{_B})?(?P<scale>[CF])"),
        _to(r"\g<key> \g<n> deg\g<scale>"),
        "`C` alone is free as a name.",
        "  ambient 35 C",
        "  ambient 35 degC",
    ),
    Slip(
        "unit-case",
        _words(rf"(?P<n>(?:\d+-)?\d+/\d+|[+-]?{_N}){_B}(?P<unit>[A-Za-z][A-Za-z./]*)"),
        _unit_case,
        "Case counts in a unit: `m` and `M` are not the same.",
        "motor P-5 460 3ph  15 HP",
        "motor P-5 460 3ph  15 hp",
    ),
    Slip(
        "legs-list",
        _c(r"\[\s*((?:L[123]|[A-CNa-cn])(?:\s*[-/&+]?\s*(?:L[123]|[A-CNa-cn]))*)\s*\]"),
        lambda match, _: "[" + re.sub(r"[-/&+\s]+", " " if "L" in match[1] else "", match[1].upper()) + "]",
        "Legs stand side by side in capitals.",
        "feeder MSB[A-B] -> TX-5  100 A 2p",
        "feeder MSB[AB] -> TX-5  100 A 2p",
    ),
    Slip(
        "name-reads-as-quantity",
        _c(r'[^\s,:\[\]"<>=]+'),
        _quoted_name,
        "Without quotes it reads as a figure or a quantity.",
        "panel 2A 208Y/120",
        'panel "2A" 208Y/120',
        message="a name that reads as a quantity stands in quotes: `{right}`",
    ),
    Slip(
        "circuit-reads-as-quantity",
        _c(rf"(?<=\s)(\d+[AVWhms])(?={_BB}{_N}{_B}A\b)"),
        _quoted_circuit,
        "Without quotes it reads as a quantity, and the line as a further fact of the statement above.",
        "  2A  40 A 3p  15 hp motor",
        '  "2A"  40 A 3p  15 hp motor',
        message="a circuit that reads as a quantity stands in quotes: `{right}`",
        sound=True,
    ),
    Slip(
        "label-without-digit",
        _c(r"(?<=\s)[^\W\d][\w.-]*"),
        _label_without_digit,
        "A circuit's label has a digit, so that a keyword in the wrong case is not taken for a circuit.",
        "  Main 150 A",
        "  main 150 A",
        message="`{wrong}` has no digit, so it is no circuit's label; write `{right}`",
        sound=True,
    ),
    Slip(
        "small-letter-name",
        _words(r"[a-z0-9][a-z0-9_.-]*"),
        _small_name,
        "A name has a capital, which tells it from the words of the language.",
        "panel lp-5 208Y/120",
        "panel LP-5 208Y/120",
        message="a name has a capital letter: `{right}`",
    ),
    Slip(
        "name-of-several-words",
        _c(
            rf"(?P<lead>^(?:type{_BB})?[a-z]+{_BB}|->{_B})(?P<name>[^\W\d_][\w.-]*(?:{_BB}[^\W_][\w.-]*)+)"
            rf"(?P<tail>(?={_B}(?:\[|->|,|$|//)|{_BB}[a-z\d\"]))"
        ),
        _several_words,
        "A blank ends a name, so a name of several words stands in quotes.",
        "panel PUMP ROOM 208Y/120",
        'panel "PUMP ROOM" 208Y/120',
        message="a name of several words stands in quotes",
    ),
    Slip(
        "detail-in-first-column",
        _c(r"^(?=\S)"),
        _indent,
        "A line in the first column starts a statement of its own; what belongs to the statement above is indented.",
        "1  20 A 1p  1.2 kVA receptacle",
        "  1  20 A 1p  1.2 kVA receptacle",
        message="`{wrong}` starts a detail of the statement above, which stands indented",
    ),
    Slip(
        "statement-indented",
        _c(r"^\s+"),
        _unindent,
        "An indented line belongs to the statement above it.",
        "  panel LP-5 208Y/120  bus 225 A",
        "panel LP-5 208Y/120  bus 225 A",
        message="`{wrong}` starts a statement, which stands in the first column",
    ),
)
