"""The words of what is wrong with a phrase: found, needed, why, what to change.

Positions are numbers of tokens within the phrase, 0 for its first; ``interpret`` turns them into columns.
"""

from __future__ import annotations

import difflib
from collections.abc import Callable

from wyeline_grammar.attribute_types import FACILITIES, LOADS, Accept, Unkeyed, Use
from wyeline_grammar.attributes import (
    CLASS_KINDS,
    FLAGS,
    KEYS,
    accept_phrase,
    flags_at,
    keys_at,
    listed,
    place_phrase,
    range_phrase,
    use_of,
)
from wyeline_grammar.model import Value
from wyeline_grammar.notation import NotationError
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.quantities import format_number, parse_number, parse_quantity
from wyeline_grammar.units import DIMENSIONS, UNITS
from wyeline_grammar.vocabulary import BOARDS, KINDS

_POWERS = frozenset({"power", "apparent-power", "reactive-power"})
_RELATED: dict[str, tuple[str, ...]] = {
    "fault": ("rated", "withstand", "subtransient", "limit"),
    "rated": ("withstand", "fault"),
    "withstand": ("rated",),
    "bus": ("main", "service"),
    "main": ("bus", "service"),
    "incomer": ("bus",),
    "service": ("bus", "main"),
    "z": ("subtransient", "fault", "reactance"),
    "subtransient": ("z", "fault"),
    "draws": ("limit",),
    "fla": ("draws",),
    "mca": ("draws",),
    "ground": ("neutral", "earthing"),
    "earthing": ("ground",),
    "transition": ("neutral",),
    "resistance": ("z",),
    "factor": ("diversity",),
    "diversity": ("factor",),
    "voltage": ("mcov",),
}
"""Keys that are taken for one another, to offer the one that may stand at the place."""

_OF_DEVICE = "The voltage here follows from the legs that are taken; `voltage` is what the device is rated for."
_ELSEWHERE = {
    ("circuit", "voltage"): _OF_DEVICE,
    ("feeder", "voltage"): _OF_DEVICE,
    ("feeder", "power"): "The load belongs to the equipment the feeder goes to.",
    ("raceway", "power"): "The load belongs to the equipment that is fed.",
    ("", "length"): "A length belongs to the feeder or circuit whose wires run it.",
    ("", "temperature"): "Write `ambient` in front of the temperature around it.",
    ("", "voltage"): "A voltage stands behind the name, such as `480Y/277`, or behind `voltage`.",
    ("", "frequency"): "Write `frequency` in front of it.",
}


def needed(use: Use) -> str:
    """What may stand as the value: "a current, such as 225 A or 28 kA, or `lugs` or `switch`"."""
    return ", or ".join(dict.fromkeys(accept_phrase(accept) for accept in use.accepts))


def _swap(title: str, index: int, text: str, sure: bool = False, end: int | None = None) -> Remedy:
    return Remedy(title, (TextEdit(0, index, index if end is None else end, text),), sure)


def _belongs(where: frozenset[str]) -> str:
    """The places of a word, said shortly: "every piece of equipment", "a board, a feeder"."""
    rest, parts = set(where), []
    for group, phrase in ((FACILITIES, "any piece of equipment"), (BOARDS, "a board"), (LOADS, "a load")):
        if group <= rest:
            rest -= group
            parts.append(phrase)
    return listed([*parts, *(place_phrase(place) for place in sorted(rest))])


def _change(instead: list[str], belongs: str) -> str:
    return (
        f"Write {listed([f'`{word}`' for word in instead])} here, or move it." if instead else f"Move it to {belongs}."
    )


def _nearest(word: str, choices: tuple[str, ...]) -> list[str]:
    return difflib.get_close_matches(word, choices, n=2, cutoff=0.7)


def key_out_of_place(place: str, key: str, fits: Callable[[str], bool]) -> Problem:
    """A key that may not stand there; other keys are offered where they may, and ``fits`` says they take the value."""
    where = frozenset(p for use in KEYS[key].uses for p in use.places)
    allowed = keys_at(place)
    instead = [k for k in (*_RELATED.get(key, ()), *_nearest(key, allowed)) if k in allowed and fits(k)]
    belongs = _belongs(where)
    return Problem(
        "attribute-out-of-place",
        f"`{key}` does not stand on {place_phrase(place)}; it belongs on {belongs}",
        0,
        0,
        0,
        found=f"`{key}` on {place_phrase(place)}",
        needed=f"`{key}` on {belongs}",
        why=f"{KEYS[key].doc} Here it would be read by nothing.",
        change=_change(instead, belongs),
        remedies=tuple(_swap(f"write `{k}`", 0, k) for k in instead),
    )


def flag_out_of_place(place: str, flag: str) -> Problem:
    belongs, instead = _belongs(FLAGS[flag].places), _nearest(flag, flags_at(place))
    return Problem(
        "attribute-out-of-place",
        f"`{flag}` does not stand on {place_phrase(place)}; it belongs on {belongs}",
        0,
        0,
        0,
        found=f"`{flag}` on {place_phrase(place)}",
        needed=f"`{flag}` on {belongs}",
        why=f"It says: {FLAGS[flag].doc} Here it would be read by nothing.",
        change=f"Write {listed([f'`{f}`' for f in instead])} here, or move it."
        if instead
        else f"Move it to {belongs}.",
        remedies=tuple(_swap(f"write `{f}`", 0, f) for f in instead),
    )


def class_out_of_place(place: str, kind: str) -> Problem:
    takes = place in ("circuit", "load")
    classes = listed([f"`{k}`" for k in sorted(CLASS_KINDS)])
    return Problem(
        "attribute-out-of-place",
        f"`{kind}` is no class of a load" if takes else f"`{kind}` does not stand on {place_phrase(place)}",
        0,
        0,
        0,
        found=f"`{kind}` on {place_phrase(place)}",
        needed=f"one of {classes}" if takes else "a kind only in front of a new name, or as the class of a load",
        why="Behind the head of a line a kind says what a load is.",
        change="Write the class of the load." if takes else f"To add {place_phrase(kind)}, begin a line of its own.",
    )


def poles_out_of_place(place: str, index: int, text: str) -> Problem:
    return Problem(
        "attribute-out-of-place",
        f"`{text}` stands behind no device here",
        0,
        index,
        index,
        found=f"`{text}` on {place_phrase(place)}",
        needed="poles behind the current of a device, such as `100 A 2p` on a feeder or `main 100 A 2p` on a board",
        why="Poles say how many wires a device opens, so they belong to a device.",
        change="Delete the poles, or write them behind the rating of the device.",
    )


def unkeyed_out_of_place(place: str, text: str, dimension: str, unkeyed: tuple[Unkeyed, ...]) -> Problem:
    """A quantity without a key that has no meaning there."""
    if dimension == "voltage" and place in KINDS:
        return _volts_without_wires(place, text)
    powers = [u for u in unkeyed if u.accept.dimension in _POWERS] if dimension in _POWERS else []
    if powers:
        return _other_power(place, text, dimension, powers)
    derived = dimension == "voltage" and (place, dimension) in _ELSEWHERE
    keys = [] if derived else _keys_for(place, text)[:4]
    hint = _ELSEWHERE.get((place, dimension if dimension not in _POWERS else "power")) or _ELSEWHERE.get(
        ("", dimension), ""
    )
    spelled = [f"`{key} {text}`" for key in keys]
    change = (
        f"Write {listed(spelled)}."
        if keys
        else "Leave it out."
        if derived
        else hint or "Write the key that says what it is, or move it."
    )
    return Problem(
        "attribute-out-of-place",
        f"`{text}` does not say what it is on {place_phrase(place)}" + (f": {listed(spelled)}?" if keys else ""),
        0,
        0,
        0,
        found=f"{text} without a key",
        needed=_unkeyed_phrase(place, unkeyed),
        why=hint or "The same figure may be several facts, and each is checked against another limit.",
        change=change,
        remedies=tuple(_swap(f"write `{key} {text}`", 0, f"{key} {text}") for key in keys)
        or ((_swap(f"leave out `{text}`", 0, ""),) if derived else ()),
    )


def _volts_without_wires(place: str, text: str) -> Problem:
    """``208V`` or ``12.47 kV``: a voltage that does not say which wires bring it."""
    given = parse_quantity(text)
    figure = format_number(given.number, 9) + (" kV" if given.unit == "kV" else "")
    spelled = [f"{figure} 3ph", f"{figure} 1ph"]
    shown = listed([f"`{s}`" for s in spelled])
    return Problem(
        "attribute-out-of-place",
        f"`{text}` does not say which wires {place_phrase(place)} has: {shown}?",
        0,
        0,
        0,
        found=f"{text} alone",
        needed=f"a voltage with its wires: {shown}, or with its neutral, such as `208Y/120`",
        why="The same volts arrive on two wires, on three, or on three and a neutral; which, must not be guessed.",
        change=f"Write {shown} right behind the name, or the wye with its neutral.",
        remedies=tuple(_swap(f"write `{s}`", 0, s) for s in spelled),
    )


def _unkeyed_phrase(place: str, unkeyed: tuple[Unkeyed, ...]) -> str:
    if not unkeyed:
        return f"a key in front of every quantity of {place_phrase(place)}"
    meanings = dict.fromkeys(f"{u.doc} as {DIMENSIONS[u.accept.dimension].phrase}" for u in unkeyed)
    return "without a key only " + listed(list(meanings))


def _other_power(place: str, text: str, dimension: str, powers: list[Unkeyed]) -> Problem:
    given = parse_quantity(text)
    wanted = powers[0].accept.dimension
    unit = (given.unit[0] if given.unit[0] in "kM" else "") + DIMENSIONS[wanted].si
    figure = format_number(given.number)
    remedies = (
        (_swap(f"write `{figure} {unit}`", 0, f"{figure} {unit}"),) if unit in UNITS and given.unit != "hp" else ()
    )
    name = powers[0].doc
    return Problem(
        "dimension-mismatch",
        f"`{text}` is {_bare(dimension)}; {name} is {DIMENSIONS[wanted].phrase}",
        0,
        0,
        0,
        found=f"{text}, {_bare(dimension)}",
        needed=f"{name} as {listed([DIMENSIONS[u.accept.dimension].phrase for u in powers])}",
        why=f"kW, kVA and kvar of {place_phrase(place)} differ by its power factor.",
        change="Write the figure of the nameplate in its own unit.",
        remedies=remedies,
    )


def _bare(dimension: str) -> str:
    """``a current``: the phrase without its examples."""
    return DIMENSIONS[dimension].phrase.partition(",")[0]


_SELDOM = frozenset({"limit"})
"""Keys that are offered behind the others: few mean them."""


def _keys_for(place: str, text: str) -> list[str]:
    """Keys of a place that would take this quantity, the value being sane."""
    value = parse_quantity(text)
    out = []
    for key in sorted(keys_at(place), key=_SELDOM.__contains__):
        use = use_of(place, key)
        assert use is not None
        for accept in use.accepts:
            if accept.form == "quantity" and accept.dimension == value.dimension and _within(accept, value.value_si):
                out.append(key)
                break
    return out


def _within(accept: Accept, value: float) -> bool:
    if accept.low is None or accept.high is None:
        return True
    return accept.low <= value * (1 + 1e-9) and value * (1 - 1e-9) <= accept.high


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


def one_value_only(key: str, text: str, first: int, last: int, pieces: tuple[tuple[str, str], ...]) -> Problem:
    more = " ".join(text for _, text in pieces[1:])
    return Problem(
        "value-not-understood",
        f"`{key}` takes one value: `{key} {text}`; what is `{more}`?",
        0,
        first,
        last,
        found=f"`{more}` behind `{key} {text}`",
        needed="one value behind a key",
        why="A name begins no phrase, so this word belongs to nothing.",
        change="Delete it, put it in quotes, or write the key it belongs to.",
    )


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
        remedies=tuple(_swap(f"write `{s}`", index, s, sure=only) for s in error.suggestions),
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
    if value.kind == "quantity" and value.dimension == accept.dimension:
        number = parse_quantity(value.text).number
        remedies = tuple(
            _swap(f"write `{spelled}`", index, spelled)
            for spelled in _spelled(format_number(number, 9), number, accept)
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


def _spelled(figure: str, number: float, accept: Accept) -> list[str]:
    """The number with every unit of the dimension that makes it sane."""
    dimension = "temperature" if accept.dimension == "temperature-difference" else accept.dimension
    return [
        f"{figure} {unit.symbol}"
        for unit in UNITS.values()
        if unit.dimension == dimension and _within(accept, number * unit.to_si + unit.offset)
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
        remedies=tuple(_swap(f"write `{key} {s}`", 1, s, sure=len(spelled) == 1) for s in spelled),
    )


def _other_dimension(key: str, use: Use, text: str, value: Value) -> Problem:
    bare = any(accept.form in ("number", "count") for accept in use.accepts)
    given = parse_quantity(text)
    remedies: tuple[Remedy, ...] = ()
    if bare and value.dimension == "ratio":
        figure = format_number(given.value_si, 9)
        remedies = (_swap(f"write `{key} {figure}`", 1, figure, sure=True),)
    elif any(accept.form == "count" for accept in use.accepts) and given.number.is_integer():
        figure = format_number(given.number, 9)
        remedies = (_swap(f"write `{key} {figure}`", 1, figure),)
    elif any(accept.form == "voltage" for accept in use.accepts) and value.dimension == "voltage":
        figure = format_number(given.number, 9) + (" kV" if given.unit == "kV" else "")
        remedies = tuple(_swap(f"write `{figure} {p}`", 1, f"{figure} {p}") for p in ("3ph", "1ph"))
    return Problem(
        "dimension-mismatch",
        f"`{key} {text}`: {text} is {_bare(value.dimension)}; needed is {needed(use)}",
        0,
        1,
        1,
        found=f"{text}, {_bare(value.dimension)}",
        needed=needed(use),
        why=use.doc or KEYS[key].doc,
        change=f"Write it like `{use.examples[0]}`.",
        remedies=remedies,
    )


def _other_spelling(use: Use, kind: str, text: str) -> tuple[Remedy, ...]:
    """Spellings that the key takes and that are near to what was written."""
    bare = text[1:-1] if kind == "TEXT" else text
    choices = [word for accept in use.accepts for word in accept.words]
    if bare == "MLO" and "lugs" in choices:
        bare = "lugs"
    same = [word for word in choices if word.casefold() == bare.casefold()]
    if same:
        return tuple(_swap(f"write `{word}`", 1, word, sure=len(same) == 1) for word in same)
    if kind in ("NAME", "PLAIN", "FLAG", "KIND", "ACTION") and any(a.form == "text" for a in use.accepts):
        return (_swap(f'write `"{text}"`', 1, f'"{text}"', sure=True),)
    # `iec-2023` and `ies-2023` mean `iec`: an equal year must not turn one country's tables into another's
    folded = {word.casefold(): word for word in choices}
    heads = {word: word.partition("-")[0] for word in folded}
    meant = difflib.get_close_matches(bare.casefold().partition("-")[0], set(heads.values()), n=3, cutoff=0.6)
    family = [word for word in folded if heads[word] in meant]
    near = [folded[word] for word in difflib.get_close_matches(bare.casefold(), family, n=3, cutoff=0.3)]
    return tuple(_swap(f"write `{word}`", 1, word) for word in near)
