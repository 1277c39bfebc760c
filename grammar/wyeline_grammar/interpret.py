"""What one phrase says at its place, checked against the table of attributes.

A phrase is judged by its place and the kinds and texts of its tokens alone, so each distinct phrase is judged once;
problems are kept by the number of their token and get columns when they are handed out.
"""

from __future__ import annotations

import re
from functools import lru_cache
from typing import NamedTuple

from wyeline_grammar import out_of_place, value_problems
from wyeline_grammar.attribute_types import Accept, Use
from wyeline_grammar.attributes import CLASS_KINDS, FLAGS, KEYS, takes_poles, unkeyed_at, use_of
from wyeline_grammar.model import Value
from wyeline_grammar.notation import NotationError, parse_size, parse_voltage
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.quantities import (
    QuantityError,
    parse_list,
    parse_number,
    parse_quantity,
    parse_range,
    parse_trade_size,
)
from wyeline_grammar.syntax import Phrase, Token
from wyeline_grammar.tokens import tokenize
from wyeline_grammar.units import UNITS


class Interpreted(NamedTuple):
    """What a phrase says.

    ``name`` is the key, the flag, a kind as a load's class, or for an unkeyed quantity ``rating``, ``power``,
    ``capacity`` or ``length``; None where the phrase may not stand there, so that nothing is read from it. ``value`` is
    None for flags and classes, and where it could not be read. ``at`` and ``with`` always hold a ``list``, ``name`` or
    ``quantity``. ``fault infinite`` is read as the flag ``infinite``.
    """

    name: str | None
    value: Value | None
    assumed: bool
    problems: tuple[Problem, ...]


def interpret(place: str, phrase: Phrase, line: int = 0) -> Interpreted:
    """Judge a phrase at a place (a kind's name, ``feeder``, ``circuit``, ``project``, ``raceway``, ``scenario``).

    The forms ``quantity``, ``key``, ``flag`` and ``class`` are judged; others (wires, raceways, texts, loads per leg)
    are read where they are gathered, and come back under the name of their form. Problems are placed on ``line``.
    """
    tokens = phrase.tokens
    judged = _judge(place, phrase.form, tuple([token[:2] for token in tokens]), phrase.assumed)
    if not judged.problems:
        return judged
    return judged._replace(problems=tuple(_placed(problem, tokens, line) for problem in judged.problems))


def value_of(token: Token) -> Value | None:
    """The value that one token stands for, or None where it stands for none."""
    try:
        return _read(token.kind, token.text)
    except (NotationError, QuantityError):
        return None


def _placed(problem: Problem, tokens: tuple[Token, ...], line: int) -> Problem:
    """Turn the numbers of tokens into columns."""
    return problem._replace(
        line=line,
        start=tokens[problem.start].start,
        end=tokens[problem.end].end,
        remedies=tuple(
            remedy._replace(
                edits=tuple(
                    TextEdit(line, tokens[edit.start].start, tokens[edit.end].end, edit.text) for edit in remedy.edits
                )
            )
            for remedy in problem.remedies
        ),
    )


@lru_cache(maxsize=8192)
def _read(kind: str, text: str) -> Value | None:
    if kind == "QUANTITY":
        quantity = parse_quantity(text)
        return Value("quantity", quantity.value_si, text, quantity.dimension)
    if kind == "NUMBER":
        return Value("number", parse_number(text), text)
    if kind == "VOLTAGE":
        return Value("voltage", parse_voltage(text), text)
    if kind == "RANGE":
        band = parse_range(text)
        return Value("range", (band.low, band.high), text, band.dimension)
    if kind == "LIST":
        return Value("list", parse_list(text), text)
    if kind == "SIZE":
        return Value("size", parse_size(text), text)
    if kind == "TRADE_SIZE":
        return Value("trade-size", parse_trade_size(text).text, text)
    if kind == "TEXT":
        return Value("text", text[1:-1], text)
    if kind in ("NAME", "PORT"):
        return Value("name", text, text)
    if kind in ("PLAIN", "FLAG", "KIND", "ACTION"):
        return Value("word", text, text)
    return None


_Pieces = tuple[tuple[str, str], ...]


@lru_cache(maxsize=8192)
def _judge(place: str, form: str, pieces: _Pieces, assumed: bool) -> Interpreted:
    """Judge a phrase, and keep of the remedies those that leave fewer problems than there were."""
    judged = _first_judgement(place, form, pieces, assumed)
    if not any(problem.remedies for problem in judged.problems):
        return judged
    most = len(judged.problems)
    kept = tuple(
        problem._replace(remedies=tuple(r for r in problem.remedies if _left_by(place, pieces, r) < most))
        for problem in judged.problems
    )
    return judged._replace(problems=kept)


_FORM_OF = {"QUANTITY": "quantity", "FLAG": "flag", "KIND": "class"}


_ALONE = frozenset({"TEXT", "FLAG"})
"""What behind a value is a phrase of its own."""


def _left_by(place: str, pieces: _Pieces, remedy: Remedy) -> int:
    """How many problems a remedy leaves in its phrase."""
    texts = [text for _, text in pieces]
    for edit in sorted(remedy.edits, reverse=True):
        texts[edit.start : edit.end + 1] = [edit.text]
    new = tuple(token[:2] for token in tokenize(" ".join(texts))[0])
    new = new[: next((i for i, (kind, _) in enumerate(new) if kind in _ALONE and i > 1), len(new))]
    if not new:
        return 0  # the phrase is left out
    return len(_first_judgement(place, _FORM_OF.get(new[0][0], "key"), new, False).problems)


def _first_judgement(place: str, form: str, pieces: _Pieces, assumed: bool) -> Interpreted:
    problems: list[Problem] = []
    name: str | None = form
    value: Value | None = None
    if form == "key":
        name, value = _judge_key(place, pieces, problems)
    elif form == "quantity":
        name, value = _judge_unkeyed(place, pieces, problems)
    elif form == "flag":
        name = pieces[0][1]
        if name in FLAGS and place not in FLAGS[name].places:
            problems.append(out_of_place.flag_out_of_place(place, name))
            name = None
    elif form == "class":
        name = pieces[0][1]
        if name not in CLASS_KINDS or place not in ("circuit", "load"):
            problems.append(out_of_place.class_out_of_place(place, name))
            name = None
    return Interpreted(name, value, assumed, tuple(problems))


def _judge_unkeyed(place: str, pieces: _Pieces, problems: list[Problem]) -> tuple[str | None, Value | None]:
    kind, text = pieces[0]
    try:
        value = _read(kind, text)
    except QuantityError as error:
        problems.append(value_problems.not_understood(0, text, "a number with a unit", str(error)))
        return None, None
    assert value is not None
    if len(pieces) > 1 and (value.dimension != "current" or not takes_poles(place)):
        problems.append(out_of_place.poles_out_of_place(place, 1, pieces[1][1]))
    unkeyed = unkeyed_at(place)
    for meaning in unkeyed:
        if meaning.accept.dimension == value.dimension:
            if not _sane(place, f"{text}", meaning.accept, value, 0, problems):
                return meaning.name, None
            return meaning.name, value
    problems.append(out_of_place.unkeyed_out_of_place(place, text, value.dimension, unkeyed))
    return None, None


def _judge_key(place: str, pieces: _Pieces, problems: list[Problem]) -> tuple[str | None, Value | None]:
    key = pieces[0][1]
    use = use_of(place, key)
    if use is None:
        if key in KEYS:
            alone = len(pieces) == 1 or pieces[1][0] == "TEXT" or _is_power(pieces[1])
            bare = tuple(text for _, text in pieces[1:]) if _fits_without_key(place, pieces) else ()
            problems.append(
                out_of_place.key_out_of_place(
                    place, key, lambda other: _fits_key(place, other, pieces), alone=alone, bare=bare
                )
            )
        return None, None
    end = len(pieces)
    if end > 1 and pieces[-1][0] == "POLES":
        end -= 1
        if not use.poles:
            problems.append(out_of_place.poles_out_of_place(place, end, pieces[end][1]))
    if end == 1:
        problems.append(value_problems.value_missing(key, use))
        return key, None
    try:
        return _value(place, key, use, pieces[1:end], problems)
    except NotationError as error:
        problems.append(value_problems.voltage_unclear(1, pieces[1][1], error))
    except QuantityError as error:
        problems.append(
            value_problems.not_understood(1, f"{key} {pieces[1][1]}", value_problems.needed(use), str(error))
        )
    return key, None


def _is_power(piece: tuple[str, str]) -> bool:
    """Whether a load stands behind a word, so that this is no key with its value: `range 8 kW`."""
    value = _read(*piece) if piece[0] == "QUANTITY" else None
    return value is not None and value.dimension in ("power", "apparent-power")


def _fits_key(place: str, key: str, pieces: _Pieces) -> bool:
    """Whether the value of a phrase would be right behind another key."""
    problems: list[Problem] = []
    _judge_key(place, (("KEY", key), *pieces[1:]), problems)
    return not problems


def _fits_without_key(place: str, pieces: _Pieces) -> bool:
    """Whether the value of a phrase would be right there with no key in front of it."""
    problems: list[Problem] = []
    if [kind for kind, _ in pieces[1:]] not in (["QUANTITY"], ["QUANTITY", "POLES"]):
        return False
    _judge_unkeyed(place, pieces[1:], problems)
    return not problems


def _value(place: str, key: str, use: Use, pieces: _Pieces, problems: list[Problem]) -> tuple[str | None, Value | None]:
    kind, text = pieces[0]
    if len(pieces) > 1:
        if use.accepts[0].form == "names":
            names = tuple(text[1:-1] if kind == "TEXT" else text for kind, text in pieces)
            return key, Value("names", names, " ".join(text for _, text in pieces))
        problems.append(value_problems.one_value_only(place, key, text, 2, len(pieces), pieces))
    value = _read(kind, text)
    if value is None:
        problems.append(value_problems.not_understood(1, f"{key} {text}", value_problems.needed(use)))
        return key, None
    for accept in use.accepts:
        fitting = _fit(accept, value)
        if fitting is None:
            continue
        if fitting.kind == "word" and (key, fitting.data) == ("fault", "infinite"):
            return "infinite", None
        if accept.form == "quantity" and accept.dimension != value.dimension:
            sane = _sane_in_cycles(value)
        else:
            sane = _sane(place, f"{key} {text}", accept, fitting, 1, problems)
        if sane:
            return key, fitting
        if not problems:
            problems.append(value_problems.impossible(1, f"{key} {text}", accept))
        return key, None
    problems.append(value_problems.value_misfit(key, use, kind, text, value))
    return key, None


def _fit(accept: Accept, value: Value) -> Value | None:
    """The value as this way of writing reads it, or None where it does not."""
    form, kind = accept.form, value.kind
    if form == "quantity":
        return _fit_quantity(accept, value) if kind == "quantity" else None
    if form == "number":
        return value if kind == "number" else None
    if form == "count":
        data = value.data
        return value if kind == "number" and isinstance(data, float) and data.is_integer() else None
    if form == "word":
        return value._replace(kind="word") if kind in ("word", "name") and value.data in accept.words else None
    if form == "pattern":
        return value if kind == "name" and re.fullmatch(accept.pattern, str(value.data)) else None
    if form == "range":
        return value if kind == "range" and value.dimension == accept.dimension else None
    if form == "positions":
        if kind == "number":
            whole = isinstance(value.data, float) and value.data.is_integer() and value.data >= 1
            return value._replace(kind="list", data=(int(value.data),)) if whole else None  # type: ignore[call-overload]
        if kind == "text":
            return value._replace(kind="name")
        return value if kind in ("list", "name") else None
    if form == "names":
        return value._replace(kind="names", data=(value.data,)) if kind in ("name", "text") else None
    if form == "name":
        return value._replace(kind="name") if kind in ("name", "text") else None
    return value if kind == form else None


def _fit_quantity(accept: Accept, value: Value) -> Value | None:
    if value.dimension == accept.dimension:
        return value
    if accept.dimension == "time" and value.dimension == "cycles":
        return value
    if accept.dimension == "temperature-difference" and value.dimension == "temperature":
        quantity = parse_quantity(value.text)
        kelvin = quantity.number * UNITS[quantity.unit].to_si
        return value._replace(data=kelvin, dimension="temperature-difference")
    return None


def _sane_in_cycles(value: Value) -> bool:
    return isinstance(value.data, float) and value.data >= 0


def _sane(place: str, written: str, accept: Accept, value: Value, index: int, problems: list[Problem]) -> bool:
    """Whether a value is possible; one that is possible but odd is reported and kept."""
    low, high = accept.low, accept.high
    if low is None or high is None:
        return True
    if value.kind == "range":
        least, greatest = value.data  # type: ignore[misc]
    elif isinstance(value.data, float):
        least = greatest = value.data
    else:
        return True
    signed = low < 0
    if (not signed and least < 0) or (low > 0 and least == 0) or (accept.most is not None and greatest > accept.most):
        problems.append(value_problems.impossible(index, written, accept))
        return False
    slack = 1e-9 * max(abs(low), abs(high))
    if least < low - slack or greatest > high + slack:
        problems.append(value_problems.implausible(place, index, written, accept, value))
    return True
