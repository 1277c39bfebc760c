"""Tokens: every kind by its spelling, the longest spelling wins, columns, and time that grows with the line."""

from __future__ import annotations

import re
import time
import unicodedata
from itertools import pairwise

import pytest
from grammar_lines import ALL
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar import vocabulary
from wyeline_grammar.tokens import is_statement, tokenize
from wyeline_grammar.units import TRADE_SIZE_UNITS, UNITS

SPELLED = {
    "TEXT": ['"Wet lab"', '""', '"a // b"'],
    "PORT": ["TS-1.normal", '"2A".through', "LP-1.sub-feed"],
    "ARROW": ["->", "→"],
    "LE": ["<=", "≤"],
    "GE": [">=", "≥"],
    "COLON": [":"],
    "PLUS": ["+"],
    "LEGS": ["[AB]", "[L1 N]", "[ A, B ]"],
    "TRADE_SIZE": ["2 inch", "1-1/4 inch", "3/4inch", "50 mm"],
    "QUANTITY": [
        "7-1/2 hp",
        "37.5kVA",
        "-2.5 %",
        "+5 %",
        "20\u00a0A",
        "0.2 Ω/km",
        "35 °C",
        "1.5 K.m/W",
        "2A",
        "16/32 hp",
    ],
    "VOLTAGE": [
        "480Y/277",
        "208-230 1ph",
        "10 kV 3ph",
        "120/240",
        "12.47Y/7.2 kV",
        "7.2/12.47 kV",
        "48 dc",
        "480V 3ph",
    ],
    "RUN": ["3#4/0", "3x95 mm2", "3×95mm²", "5G16mm2", "3x250kcmil"],
    "SIZE": ["#2/0", "400 kcmil", "16mm2"],
    "SETS": ["3 sets", "1 set"],
    "POLES": ["2p", "3p+N"],
    "RANGE": ["0.95..1.05", "0.9..1.1 pu", "-5..5 %"],
    "LIST": ["2,4,6"],
    "NUMBER": ["42", "0.86", "-3"],
    "NAME": ["MSB", "2LP-1", "L1", "gG", "Küche", "küche", "TX_1", "A.1", "1P", "15HP", "配電盤", "Ku\u0308che"],
    "PLAIN": ["us-2023", "tap-25ft", "3way", "cu", "4801ph"],  # `480` and `1ph` need a blank between them
    "KEY": ["bus", "x/r"],
    "FLAG": ["ev"],
    "KIND": ["ups"],
    "ACTION": ["open"],
    "IN": ["in"],
    "EXPECT": ["expect"],
    "ERROR": [
        "lp_1",
        ".86",
        "140'",
        "20A/1P",
        "[AX]",
        "2-4",
        "1/2",
        "+2#12",
        "=",
        "]",
        "½",
        "MSB-",
        "3-#8",
        "“x”",
        "4.",
        "1 2/",
    ],
}


@pytest.mark.parametrize(("kind", "text"), [(kind, text) for kind, texts in SPELLED.items() for text in texts])
def test_kind_by_spelling(kind: str, text: str) -> None:
    tokens, comment = tokenize(text)
    assert tokens[-1].kind == kind and (len(tokens) == 1 or text == "1 2/") and comment is None


def test_plain_spelling_and_columns_of_the_text_as_written() -> None:
    line = '  3×95\u00a0mm² "3×" → Ω-1 0.2 Ω/km ≤ 35°C // × '
    tokens, comment = tokenize(line)
    assert [t.text for t in tokens] == ["3x95 mm2", '"3×"', "->", "Ω-1", "0.2 ohm/km", "<=", "35degC"]
    assert [line[t.start : t.end] for t in tokens] == ["3×95\u00a0mm²", '"3×"', "→", "Ω-1", "0.2 Ω/km", "≤", "35°C"]
    assert comment == "// × "


def test_unclosed_quote_ends_at_the_comment() -> None:
    tokens, comment = tokenize('1 "Bench // north')
    assert [(t.kind, t.text) for t in tokens] == [("NUMBER", "1"), ("ERROR", '"Bench ')]
    assert comment == "// north"


def test_first_column() -> None:
    assert all(map(is_statement, ("wye 1", "\ufeffwye 1", "//", "Küche")))
    assert not any(map(is_statement, (" x", "\tx", "\u00a0x", "", "\ufeff", "\ufeff x")))


def test_no_listed_word_is_spelled_like_a_unit() -> None:
    words = vocabulary.KEYS | vocabulary.FLAGS | vocabulary.KINDS | vocabulary.ACTIONS
    words |= vocabulary.SMALL_WORDS | vocabulary.STATEMENTS
    assert not words & (set(UNITS) | set(TRADE_SIZE_UNITS))


# The kinds once more, each written for itself as the reference spells it: the slow way to say what the longest is.
_B = "[ \t\u00a0\ufeff]*"
_n, _nn, _s = r"\d+(\.\d+)?", r"\d\d+(\.\d+)?", r"[+-]?\d+(\.\d+)?"
_u = "(" + "|".join(map(re.escape, UNITS)) + ")"
_f = r"(\d+-)?\d+/(2|4|8|16|32|64)"
_ph = "(1ph|3ph|dc)"
_v = rf"({_B}k?V{_B}{_ph}|[ \t\u00a0\ufeff]+{_ph}|{_B}dc)"  # `4801ph` is none: its figures would run together
_port = "[a-z][a-z0-9]*(-[a-z0-9]+)*"
_name = r"[A-Za-z0-9_]+([-.][A-Za-z0-9_]+)*"
REFERENCE = [
    ("COMMENT", "//.*"),
    ("PORT", rf'"[^"]*"\.{_port}'),
    ("TEXT", '"[^"]*"'),
    ("ARROW", "->"),
    ("LE", "<="),
    ("GE", ">="),
    ("COLON", ":"),
    ("PLUS", r"\+"),
    ("LEGS", r"\[[ ,]*((L[123]|[ABCN])[ ,]*)+\]"),
    ("TRADE_SIZE", rf"({_f}|{_n}){_B}(inch|mm)"),
    ("QUANTITY", rf"{_f}{_B}{_u}"),
    ("VOLTAGE", rf"({_n}Y/{_n}|{_nn}/{_nn})({_v}|({_B}k?V)?)|{_n}/{_n}{_B}kV({_B}{_ph})?|{_n}(-{_n})?{_v}"),
    ("RUN", rf"\d+(#\d+(/0)?|x{_n}{_B}(kcmil|mm2)|G{_n}{_B}mm2)"),
    ("SIZE", rf"#\d+(/0)?|{_n}{_B}(kcmil|mm2)"),
    ("QUANTITY", rf"{_s}{_B}{_u}"),
    ("SETS", rf"\d+{_B}sets?"),
    ("POLES", r"[1-4]p(\+N)?"),
    ("RANGE", rf"{_s}\.\.{_s}({_B}{_u})?"),
    ("LIST", r"\d+(,\d+)+"),
    ("NUMBER", _s),
    ("PORT", rf"(?=[^.]*[A-Z]|.*[A-Z].*\.){_name}\.{_port}"),
    ("NAME", rf"(?=.*[A-Z]){_name}"),
    ("WORD", r"(?=.*[a-z])[a-z0-9]+([-/][a-z0-9]+)*"),
]  # fmt: skip
NEEDS_NO_EDGE = {"COMMENT", "TEXT", "ARROW", "LE", "GE", "COLON", "PLUS", "LEGS"}


def _edge(line: str, at: int) -> bool:
    return at == len(line) or line[at] in ' \t\u00a0,:[]"+<>=' or line.startswith(("->", "//"), at)


def _longest(line: str, start: int) -> tuple[str, int]:
    best, kind = start, "ERROR"
    for name, pattern in REFERENCE:
        for end in range(len(line), best, -1):
            if not (name in NEEDS_NO_EDGE or _edge(line, end)) or not re.fullmatch(pattern, line[start:end], re.ASCII):
                continue
            if name == "PLUS" and line[end : end + 1].isdigit():
                continue
            best, kind = end, name
            break
    return kind, best


PIECES = st.sampled_from(
    """12 0.86 4 277 480 208 Y / - . .. , + # x G N p 1ph 3ph dc k V A kVA hp % mm mm2 kcmil inch sets set in bus MSB L1
    [ ] " : -> <= >= < = // lp tap-25ft 1/2 7-1/2 4/0 AB normal through""".split()
) | st.just(" ")


@settings(max_examples=400, deadline=None)
@given(st.lists(PIECES, min_size=1, max_size=9).map("".join))
def test_the_longest_spelling_wins(line: str) -> None:
    tokens, comment = tokenize(line)
    for token in tokens:
        kind, end = _longest(line, token.start)
        if token.kind == "ERROR":
            no_such_size = kind in ("SIZE", "RUN") and re.search(r"#(0|\d{3}|[05-9]/|\d\d/)|\b0", token.text)
            too_long = re.search(r"\d{16}", token.text)
            assert kind == "ERROR" or no_such_size or too_long, (token, kind)
        elif kind == "WORD":
            assert token.end == end and token.kind == vocabulary.word_kind(token.text)
        else:
            assert (token.kind, token.end) == (kind, end)
    covered = [line[a.end : b.start] for a, b in pairwise(tokens)]
    assert all(not gap.strip(" \t\u00a0\ufeff,") for gap in covered)
    assert comment is None or line.endswith(comment)


@settings(max_examples=200, deadline=None)
@given(st.text(max_size=60))
def test_any_text_has_tokens_in_order_within_it(line: str) -> None:
    tokens, _ = tokenize(line)
    at = 0
    for token in tokens:
        assert at <= token.start < token.end <= len(line)
        at = token.end


LONG = """1, [ [A " a- 1-1/ + +1 A. 1 ' ½ 3# “ L1 12 0.8 x/""".split()


@pytest.mark.parametrize(
    "line", [*(bit * 100_000 for bit in LONG), "5 " * 100_000, " " * 200_000 + "x", "[A " * 60_000]
)
def test_time_grows_with_the_line(line: str) -> None:
    started = time.process_time()
    tokenize(line)
    assert (
        time.process_time() - started < 4
    )  # 0.4 s at the most on the slowest machine tried; a square would take hours


def test_sound_lines_hold_no_unreadable_word() -> None:
    for line in ALL:
        assert all(token.kind != "ERROR" for token in tokenize(line)[0]), line
        assert tokenize(unicodedata.normalize("NFD", line))[1] == tokenize(line)[1]
