"""The words of what is wrong with a value, behind a key or as a voltage: found, needed, why, what to change."""

from __future__ import annotations

import re
from collections.abc import Sequence

from wyeline_grammar.attribute_types import Accept, Use
from wyeline_grammar.attributes import (
    KEYS,
    accept_phrase,
    listed,
    place_phrase,
    range_phrase,
    use_of,
)
from wyeline_grammar.model import Value
from wyeline_grammar.notation import NotationError
from wyeline_grammar.out_of_place import short_phrase, swap, within
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.quantities import format_number, parse_number, parse_quantity
from wyeline_grammar.syntax import Token
from wyeline_grammar.units import DIMENSIONS, UNITS


def needed(use: Use) -> str:
    """What may stand as the value: "a current, such as 225 A or 28 kA, or `lugs` or `switch`"."""
    return ", or ".join(dict.fromkeys(accept_phrase(accept) for accept in use.accepts))


def value_missing(key: str, use: Use) -> Problem:
    return Problem(
        "value-not-understood",
        f"`{key}` has no value; write it like `{use.examples[0]}`",
        0,
        0,
        0,
        found=f"`{key}` alone",
        needed=needed(use),
        why="A key is followed by its one value.",
        change=f"Write it like `{use.examples[0]}`, or delete the key.",
    )


def one_value_only(
    place: str, key: str, text: str, first: int, last: int, pieces: tuple[tuple[str, str], ...]
) -> Problem:
    more = " ".join(text for _, text in pieces[1:])
    words = all(kind in ("NAME", "PLAIN") for kind, _ in pieces[1:])
    legs = words and all(re.fullmatch("L[123]", text) for _, text in pieces[1:])
    remedies: tuple[Remedy, ...] = ()
    if words and not legs:
        from wyeline_grammar.circuit_descriptions import class_of

        said = class_of(more.split()) if place == "circuit" else ""
        alone = said and len(pieces) == _A_WORD_MORE
        meant = said if alone else f'{said} "{more}"'.lstrip()
        remedies = (swap(f"Write `{meant}`", first, meant, end=last),)
    return Problem(
        "value-not-understood",
        f"`{key}` takes one value: `{key} {text}`; what is `{more}`?",
        0,
        first,
        last,
        found=f"`{more}` behind `{key} {text}`",
        needed="one value behind a key",
        why="A name begins no phrase, so this word belongs to nothing.",
        change=f"Write the legs behind the label of the circuit, as in `F1[{more}]`, and delete them here."
        if legs and place == "circuit"
        else f"{remedies[0].title}, if it says what the load is; else delete it, or write the key it belongs to."
        if remedies
        else "Delete it, put it in quotes, or write the key it belongs to.",
        remedies=remedies,
    )


_A_WORD_MORE = 2
"""Pieces of a value that has one word too many."""


def not_understood(index: int, written: str, wanted: str, detail: str = "") -> Problem:
    return Problem(
        "value-not-understood",
        detail or f"`{written}` cannot be read: needed is {wanted}",
        0,
        index,
        index,
        found=f"`{written}`",
        needed=wanted,
        why="A value that cannot be read is a fact that is missing.",
        change="Write the value as the example shows.",
    )


def voltage_unclear(index: int, text: str, error: NotationError) -> Problem:
    """A voltage that reads as none or several systems; each spelling it may mean is a remedy."""
    only = len(error.suggestions) == 1
    return Problem(
        "voltage-notation-unclear",
        str(error),
        0,
        index,
        index,
        found=f"`{text}`",
        needed=listed([f"`{s}`" for s in error.suggestions]) or "a voltage, such as 480Y/277",
        why="The notation says which wires there are and what lies between them; it must not say it two ways.",
        change=f"Write {listed([f'`{s}`' for s in error.suggestions])}." if error.suggestions else "Write the voltage.",
        remedies=tuple(swap(f"Write `{s}`", index, s, sure=only) for s in error.suggestions),
    )


def impossible(index: int, written: str, accept: Accept) -> Problem:
    most = accept.most
    bound = f"at most {most * 100:g} %" if most and accept.dimension == "ratio" else f"at most {most:g}" if most else ""
    return Problem(
        "value-not-understood",
        f"`{written}` is impossible" + (f": it can be {bound}" if bound else ": it must be above zero"),
        0,
        index,
        index,
        found=f"`{written}`",
        needed=f"usually {range_phrase(accept)}",
        why="No equipment can have this value, so nothing is calculated with it.",
        change="Write the figure of the nameplate or the drawing, or delete it: missing is better than wrong.",
    )


def implausible(place: str, index: int, written: str, accept: Accept, value: Value) -> Problem:
    usual = range_phrase(accept)
    remedies: tuple[Remedy, ...] = ()
    if index == 0 and value.dimension == "current" and value.text.endswith("mA") and use_of(place, "rcd") is not None:
        remedies = (swap(f"Write `rcd {value.text}`", 0, f"rcd {value.text}"),)  # milliamperes are what it trips at
    elif value.kind == "quantity" and value.dimension == accept.dimension and not _near(accept, value):
        number = parse_quantity(value.text).number
        remedies = tuple(
            swap(f"Write `{spelled}`", index, spelled) for spelled in _spelled(format_number(number, 9), number, accept)
        )
    return Problem(
        "implausible-value",
        f"`{written}` is far from what is usual for {place_phrase(place)} ({usual})",
        0,
        index,
        index,
        found=f"`{written}`",
        needed=f"usually {usual}",
        why="A value this far from practice is more often a slip of the pen or of the unit than a fact.",
        change="Check the figure and its unit; if it is right, allow it with the reason.",
        remedies=remedies,
    )


_NEAR = 3.0
"""A value that misses the usual range by less than this factor is of the right unit: `main 6 A` is no `6 kA`."""


def _near(accept: Accept, value: Value) -> bool:
    data, low, high = value.data, accept.low, accept.high
    if not isinstance(data, int | float) or low is None or high is None or low <= 0:
        return False
    return low / _NEAR < data < high * _NEAR


def _spelled(figure: str, number: float, accept: Accept) -> list[str]:
    """The number with every unit of the dimension that makes it sane."""
    dimension = "temperature" if accept.dimension == "temperature-difference" else accept.dimension
    return [
        f"{figure} {unit.symbol}"
        for unit in UNITS.values()
        if unit.dimension == dimension and within(accept, number * unit.to_si + unit.offset)
    ]


def value_misfit(key: str, use: Use, kind: str, text: str, value: Value) -> Problem:
    """A value that reads well but is of no form that the key takes."""
    quantities = [accept for accept in use.accepts if accept.form == "quantity"]
    if kind == "NUMBER" and quantities:
        return _without_unit(key, use, text, quantities)
    if kind == "QUANTITY":
        return _other_dimension(key, use, text, value)
    remedies = _other_spelling(use, kind, text)
    shown = listed([f"`{r.edits[0].text}`" for r in remedies])
    return Problem(
        "value-not-understood",
        f"`{key} {text}`: needed is {needed(use)}" + (f"; write {shown}" if remedies else ""),
        0,
        1,
        1,
        found=f"`{text}` behind `{key}`",
        needed=needed(use),
        why=use.doc or KEYS[key].doc,
        change=f"Write {shown}." if remedies else f"Write it like `{use.examples[0]}`.",
        remedies=remedies,
    )


def _without_unit(key: str, use: Use, text: str, quantities: list[Accept]) -> Problem:
    number = parse_number(text)
    spelled = list(dict.fromkeys(s for accept in quantities for s in _spelled(text, number, accept)))
    units = [f"{text} {example.split()[-1]}" for a in quantities for example in DIMENSIONS[a.dimension].examples]
    shown = listed([f"`{key} {s}`" for s in spelled or list(dict.fromkeys(units))[:3]])
    return Problem(
        "quantity-without-unit",
        f"`{key} {text}`: {text} what? Write {shown}",
        0,
        1,
        1,
        found=f"{text} without a unit",
        needed=needed(use),
        why="The same digits mean very different things in different units.",
        change=f"Write {shown}.",
        remedies=tuple(swap(f"Write `{key} {s}`", 1, s, sure=len(spelled) == 1) for s in spelled),
    )


def _other_dimension(key: str, use: Use, text: str, value: Value) -> Problem:
    bare = any(accept.form in ("number", "count") for accept in use.accepts)
    given = parse_quantity(text)
    remedies: tuple[Remedy, ...] = ()
    if bare and value.dimension == "ratio":
        figure = format_number(given.value_si, 9)
        remedies = (swap(f"Write `{key} {figure}`", 1, figure, sure=True),)
    elif any(accept.form == "count" for accept in use.accepts) and given.number.is_integer():
        figure = format_number(given.number, 9)
        remedies = (swap(f"Write `{key} {figure}`", 1, figure),)
    elif any(accept.form == "voltage" for accept in use.accepts) and value.dimension == "voltage":
        figure = format_number(given.number, 9) + (" kV" if given.unit == "kV" else "")
        remedies = tuple(swap(f"Write `{figure} {p}`", 1, f"{figure} {p}") for p in ("3ph", "1ph"))
    return Problem(
        "dimension-mismatch",
        f"`{key} {text}`: {text} is {short_phrase(value.dimension)}; needed is {needed(use)}",
        0,
        1,
        1,
        found=f"{text}, {short_phrase(value.dimension)}",
        needed=needed(use),
        why=use.doc or KEYS[key].doc,
        change=f"Write it like `{use.examples[0]}`.",
        remedies=remedies,
    )


_THOUSANDS = re.compile(r"[kK](?:A?(?:IC|ic)|A\.I\.C\.)?")
"""``22k`` and ``30kAIC``: thousands of amperes, where a key takes a current."""


def _figure_with_its_unit(use: Use, text: str) -> tuple[Remedy, ...]:
    """``35C``, ``225amps``: a figure whose unit is spelt as no unit is, so that it read as a name or a word."""
    from wyeline_grammar.slip_fixes import spelled_unit

    match = re.fullmatch(r"([+-]?\d+(?:\.\d+)?)([A-Za-z%][A-Za-z.]*)", text)
    if match is None:
        return ()
    if _THOUSANDS.fullmatch(match[2]) and any(accept.dimension == "current" for accept in use.accepts):
        return (swap(f"Write `{match[1]} kA`", 1, f"{match[1]} kA"),)
    units = [UNITS[unit] for unit in spelled_unit(match[2])]
    fit = [unit for unit in units for accept in use.accepts if _same_dimension(accept, unit.dimension)]
    return tuple(swap(f"Write `{match[1]} {u.symbol}`", 1, f"{match[1]} {u.symbol}", sure=len(fit) == 1) for u in fit)


def _same_dimension(accept: Accept, dimension: str) -> bool:
    return dimension == ("temperature" if accept.dimension == "temperature-difference" else accept.dimension)


_JOINING = frozenset("by for from of to".split())
"""Words that letters put between a key and its value: never the value itself."""


def _other_spelling(use: Use, kind: str, text: str) -> tuple[Remedy, ...]:
    """Spellings that the key takes and that are near to what was written."""
    from difflib import get_close_matches

    if text[0].isdigit():
        return _figure_with_its_unit(use, text)

    bare = text[1:-1] if kind == "TEXT" else text
    choices = [word for accept in use.accepts for word in accept.words]
    if bare == "MLO" and "lugs" in choices:
        bare = "lugs"
    same = [word for word in choices if word.casefold() == bare.casefold()]
    if same:
        return tuple(swap(f"Write `{word}`", 1, word, sure=len(same) == 1) for word in same)
    takes_text = any(accept.form == "text" for accept in use.accepts)
    if kind in ("NAME", "PLAIN", "FLAG", "KIND", "ACTION") and takes_text and text not in _JOINING:
        return (swap(f'Write `"{text}"`', 1, f'"{text}"', sure=True),)
    # `iec-2023` and `ies-2023` mean `iec`: an equal year must not turn one country's tables into another's
    folded = {word.casefold(): word for word in choices}
    heads = {word: word.partition("-")[0] for word in folded}
    meant = get_close_matches(bare.casefold().partition("-")[0], set(heads.values()), n=3, cutoff=0.6)
    family = [word for word in folded if heads[word] in meant]
    near = [folded[word] for word in get_close_matches(bare.casefold(), family, n=3, cutoff=0.3)]
    return tuple(swap(f"Write `{word}`", 1, word) for word in near)


def voltage_problem(error: NotationError, token: Token, row: int, head: Sequence[Token] = ()) -> Problem:
    """A voltage notation that reads as none or as several systems, with the spellings it may mean; of a transformer
    without an arrow it may be both sides."""
    meant, message = tuple(error.suggestions), str(error)
    if head and head[0].text == "transformer" and all(t.kind != "ARROW" for t in head):
        from wyeline_grammar.slip_fixes import two_sides  # few problems need it

        first, _, second = token.text.partition("/")
        sides = two_sides(first, second) if first.isdigit() and second.isdigit() else ()
        if sides:
            meant, message = sides, f"`{token.text}` reads as one voltage; the two sides are written `{sides[0]}`"
    return Problem(
        "voltage-notation-unclear",
        message,
        row,
        token.start,
        token.end,
        found=token.text,
        needed="one of " + ", ".join(f"`{s}`" for s in meant) if meant else "a voltage",
        why="The notation decides how many wires arrive and what lies between them; word order must not.",
        change="Write the notation of the system you mean.",
        remedies=tuple(
            Remedy(f"Write `{s}`", (TextEdit(row, token.start, token.end, s),), len(meant) == 1) for s in meant
        ),
    )
