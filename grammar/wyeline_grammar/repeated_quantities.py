"""What is wrong with a second quantity without a key: the key that would say what it is, or the power factor."""

from __future__ import annotations

from collections.abc import Mapping

from wyeline_grammar.attributes import use_of
from wyeline_grammar.interpret import value_of
from wyeline_grammar.model import Fact
from wyeline_grammar.out_of_place import keys_for
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.syntax import Token

_OF_A_LOAD = frozenset({"draws", "fla", "mca", "mocp"})
"""Currents that are meant beside a device's: that of its load."""
_WHY = "Two values of one fact leave the reader, and every figure below, to guess which one holds."


def second_quantity(place: str, facts: Mapping[str, Fact], first: Fact, token: Token, row: int) -> Problem:
    """The problem of a quantity (a token in a row of the block) that stands beside ``first``, of the same meaning."""
    said, text = first.value.text, token.text
    factor = _power_factor(first, token)
    if factor is not None and use_of(place, "pf") is not None:
        return _power_twice("pf" in facts, first, token, row, factor)
    free = [key for key in keys_for(place, text) if key not in facts]
    keys = sorted(free, key=lambda key: key not in _OF_A_LOAD)[:4]
    shown = " or ".join(f"`{key} {text}`" for key in keys)
    return Problem(
        "attribute-repeated",
        f"`{text}` stands beside `{said}` without a key" + (f", as in `{keys[0]} {text}`" if keys else ""),
        row,
        token.start,
        token.end,
        found=f"`{said}` and `{text}`, both without a key",
        needed="one of a kind without a key, each further one with the key that says what it is",
        why=_WHY,
        change=f"Write {shown}, or delete the wrong one." if keys else "Delete the wrong one.",
        remedies=tuple(
            Remedy(f"Write `{key} {text}`", (TextEdit(row, token.start, token.start, f"{key} "),), sure=False)
            for key in keys
        ),
    )


def _power_factor(first: Fact, token: Token) -> str | None:
    """The power factor that watts and volt-amperes beside them say; None where it is none, or they are not both."""
    second = value_of(token)
    if second is None or not isinstance(first.value.data, float) or not isinstance(second.data, float):
        return None
    by_dimension = {first.value.dimension: first.value.data, second.dimension: second.data}
    watts, volt_amperes = by_dimension.get("power", 0.0), by_dimension.get("apparent-power", 0.0)
    return f"{watts / volt_amperes:.3g}" if 0 < watts <= volt_amperes else None


def _power_twice(factor_stated: bool, first: Fact, token: Token, row: int, factor: str) -> Problem:
    """Watts and volt-amperes side by side: one of them, and the power factor."""
    said, text = first.value.text, token.text
    volt_amperes_first = first.value.dimension == "apparent-power"
    line, start, end = (row, token.start, token.end) if volt_amperes_first else first.span
    right = "" if factor_stated else f"pf {factor}"
    watts = text if volt_amperes_first else said
    title = f"Leave out `{watts}`" if factor_stated else f"Write `pf {factor}` in place of `{watts}`"
    return Problem(
        "attribute-repeated",
        f"`{said}` and `{text}` say one fact twice; the power factor between them is {factor}",
        row,
        token.start,
        token.end,
        found=f"`{said}` and `{text}`, both without a key",
        needed="one of them, and the power factor",
        why=_WHY,
        change=f"{title}.",
        remedies=(Remedy(title, (TextEdit(line, start, end, right),), sure=False),),
    )
