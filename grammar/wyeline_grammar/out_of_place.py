"""The words of what is wrong with a phrase that stands where it means nothing: found, needed, why, what to change.

Positions are numbers of tokens within the phrase, 0 for its first; ``interpret`` turns them into columns.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Container

from wyeline_grammar.attribute_types import FACILITIES, LOADS, Accept, Unkeyed
from wyeline_grammar.attributes import (
    CLASS_KINDS,
    FLAGS,
    KEYS,
    flags_at,
    keys_at,
    listed,
    place_phrase,
    unkeyed_at,
    use_of,
)
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.quantities import format_number, parse_quantity
from wyeline_grammar.trade_terms import BY_SPELLING
from wyeline_grammar.units import DIMENSIONS, UNITS
from wyeline_grammar.vocabulary import BOARDS, KINDS

_POWERS = frozenset({"power", "apparent-power", "reactive-power"})
_RATINGS = frozenset({"bus", "main", "incomer", "service"})
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
    "kfactor": ("third-harmonic",),
    "third-harmonic": ("kfactor",),
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
    (
        "",
        "frequency",
    ): "The frequency is that of the project, or of the source: it is written there, as `frequency 60 Hz`.",
}

_MOVED = {
    ("project", "voltage"): "Write it behind the name of the supply, as in `utility GRID 480Y/277`: every other "
    "voltage follows from there.",
}


def swap(title: str, index: int, text: str, sure: bool = False, end: int | None = None) -> Remedy:
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
    from difflib import get_close_matches

    return get_close_matches(word, choices, n=2, cutoff=0.7)


def key_out_of_place(
    place: str, key: str, fits: Callable[[str], bool], *, alone: bool, bare: tuple[str, ...] = ()
) -> Problem:
    """A key that may not stand there; other keys are offered where they may, and ``fits`` says they take the value.
    One that stands ``alone``, without a value, may be what the trade calls another word of the place; a ``bare`` value
    is one that says there without a key what ``main`` or ``bus`` say on a board: what a disconnect is rated."""
    where = frozenset(p for use in KEYS[key].uses for p in use.places)
    term = BY_SPELLING.get(key)
    meant = [word for word in term.words if word in flags_at(place)] if term is not None and alone else []
    if meant:
        return _term_out_of_place(place, key, meant)
    allowed = keys_at(place)
    instead = [k for k in (*_RELATED.get(key, ()), *_nearest(key, allowed)) if k in allowed and fits(k)]
    remedies = [swap(f"Write `{k}`", 0, k) for k in instead]
    if bare and not instead and key in _RATINGS:
        instead = [" ".join(bare)]
        remedies = [swap(f"Write `{instead[0]}`", 0, instead[0], end=len(bare))]
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
        change=_MOVED.get((place, key)) or _change(instead, belongs),
        remedies=tuple(remedies),
    )


def _term_out_of_place(place: str, key: str, meant: list[str]) -> Problem:
    """A key that the trade says for a flag of this place: a `range` on a circuit is one to cook on."""
    shown = " or ".join(f"`{word}`" for word in meant)
    return Problem(
        "attribute-out-of-place",
        f"`{key}` as a load is written {shown}",
        0,
        0,
        0,
        found=f"`{key}` on {place_phrase(place)}",
        needed=shown,
        why="What a load is decides its demand factor and its code rules; the word has another meaning here: "
        + KEYS[key].doc,
        change=f"Write {shown} in its place.",
        remedies=tuple(swap(f"Write `{word}`", 0, word, sure=len(meant) == 1) for word in meant),
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
        remedies=tuple(swap(f"Write `{f}`", 0, f) for f in instead),
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


_ALONE = " without a key"
_SAME = {"main": "incomer", "incomer": "main"}
"""Keys of which a statement has one."""


def beside(problem: Problem, place: str, facts: Container[str]) -> Problem:
    """The same problem where these facts are stated as well: a key that has its value already is no answer."""
    text = problem.found.removesuffix(_ALONE)
    if text == problem.found or not problem.remedies:
        return problem
    known = [r for r in problem.remedies if (key := r.edits[0].text.split(" ")[0]) in facts or _SAME.get(key) in facts]
    if not known:
        return problem
    taken = frozenset(r.edits[0].text.split(" ")[0] for r in known)
    again = unkeyed_out_of_place(place, text, parse_quantity(text).dimension, unkeyed_at(place), taken)
    left = tuple(r for r in problem.remedies if r not in known)
    return again._replace(line=problem.line, start=problem.start, end=problem.end, remedies=left)


def unkeyed_out_of_place(
    place: str, text: str, dimension: str, unkeyed: tuple[Unkeyed, ...], taken: frozenset[str] = frozenset()
) -> Problem:
    """A quantity without a key that has no meaning there; ``taken`` are keys that have their value elsewhere."""
    if dimension in _POWERS and place in KINDS and _WIRES.fullmatch(text):
        return _count_of_wires(place, text)
    if dimension == "voltage" and place in KINDS:
        return _volts_without_wires(place, text)
    powers = [u for u in unkeyed if u.accept.dimension in _POWERS] if dimension in _POWERS else []
    if powers:
        return _other_power(place, text, dimension, powers)
    derived = dimension == "voltage" and (place, dimension) in _ELSEWHERE
    keys = [] if derived else [key for key in keys_for(place, text) if key not in taken][:4]
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
        found=f"{text}{_ALONE}",
        needed=_unkeyed_phrase(place, unkeyed),
        why=hint or "The same figure may be several facts, and each is checked against another limit.",
        change=change,
        remedies=tuple(swap(f"Write `{key} {text}`", 0, f"{key} {text}") for key in keys)
        or ((swap(f"Leave out `{text}`", 0, ""),) if derived else ()),
    )


_WIRES = re.compile(r"[2-5] ?W")


def _count_of_wires(place: str, text: str) -> Problem:
    """``4W`` behind a voltage: the wires of a drawing, which read as watts."""
    return Problem(
        "attribute-out-of-place",
        f"`{text}` reads as watts; which wires {place_phrase(place)} has, its voltage says",
        0,
        0,
        0,
        found=text,
        needed="a voltage that says them: `480Y/277` three and a neutral, `480 3ph` three, `120/240` two and a neutral",
        why="A count of wires beside a voltage could only repeat or contradict it.",
        change=f"Leave out `{text}`.",
        remedies=(swap(f"Leave out `{text}`", 0, ""),),
    )


_TO_NEUTRAL: dict[float, int] = {208: 120, 380: 220, 400: 230, 415: 240, 480: 277, 600: 347, 690: 400}
"""Volts between lines of the usual wyes, and to their neutral (ANSI C84.1, IEC 60038)."""
_MOSTLY_WYE = frozenset({208, 380, 400, 415})
"""Voltages of boards that nearly always bring their neutral (common practice, no source)."""


def _volts_without_wires(place: str, text: str) -> Problem:
    """``208V`` or ``12.47 kV``: a voltage that does not say which wires bring it."""
    given = parse_quantity(text)
    figure = format_number(given.number, 9) + (" kV" if given.unit == "kV" else "")
    spelled = [f"{figure} 3ph", f"{figure} 1ph"]
    neutral = _TO_NEUTRAL.get(given.number) if given.unit == "V" else None
    if neutral is not None and place in BOARDS:
        wye = f"{figure}Y/{neutral}"
        spelled.insert(0 if given.number in _MOSTLY_WYE else 2, wye)
    shown = listed([f"`{s}`" for s in spelled])
    return Problem(
        "attribute-out-of-place",
        f"`{text}` does not say which wires {place_phrase(place)} has: {shown}?",
        0,
        0,
        0,
        found=f"{text} alone",
        needed=f"a voltage with its wires: {shown}"
        + ("" if "Y/" in shown else ", or with its neutral, such as `208Y/120`"),
        why="The same volts arrive on two wires, on three, or on three and a neutral; which, must not be guessed.",
        change=f"Write {shown} right behind the name; `Y/` brings the neutral.",
        remedies=tuple(swap(f"Write `{s}`", 0, s) for s in spelled),
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
        (swap(f"Write `{figure} {unit}`", 0, f"{figure} {unit}"),) if unit in UNITS and given.unit != "hp" else ()
    )
    name = powers[0].doc
    return Problem(
        "dimension-mismatch",
        f"`{text}` is {short_phrase(dimension)}; {name} is {DIMENSIONS[wanted].phrase}",
        0,
        0,
        0,
        found=f"{text}, {short_phrase(dimension)}",
        needed=f"{name} as {listed([DIMENSIONS[u.accept.dimension].phrase for u in powers])}",
        why=f"kW, kVA and kvar of {place_phrase(place)} differ by its power factor.",
        change="Write the figure of the nameplate in its own unit.",
        remedies=remedies,
    )


def short_phrase(dimension: str) -> str:
    """``a current``: the phrase without its examples."""
    return DIMENSIONS[dimension].phrase.partition(",")[0]


_SELDOM = frozenset({"limit", "ambient", "measured"})
"""Keys that are offered behind the others: few mean them; a temperature that terminals are marked with is theirs."""


def keys_for(place: str, text: str) -> list[str]:
    """Keys of a place that would take this quantity, the value being sane."""
    value = parse_quantity(text)
    out = []
    for key in sorted(keys_at(place), key=_SELDOM.__contains__):
        use = use_of(place, key)
        assert use is not None
        for accept in use.accepts:
            if accept.form == "quantity" and accept.dimension == value.dimension and within(accept, value.value_si):
                out.append(key)
                break
    return out


def within(accept: Accept, value: float) -> bool:
    if accept.low is None or accept.high is None:
        return True
    return accept.low <= value * (1 + 1e-9) and value * (1 - 1e-9) <= accept.high
