"""A figure with its working: what went in, the formula, what came out between, and where the rule for it stands.

Calculations keep plain floats; a `Figure` is built on demand, by replaying the calculation for one element, and says
enough for a reviewer to follow it with a pocket calculator. A value that cannot be told is None with its reasons.
"""

from __future__ import annotations

import enum
import re
import textwrap
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.reasons import merge_reasons as merge_reasons

if TYPE_CHECKING:
    from wyeline_grammar.linking import Place
    from wyeline_linter.tables import Looked


class State(enum.Enum):
    """Where a value comes from."""

    GIVEN = "given"
    DERIVED = "derived"
    ASSUMED = "assumed"
    MISSING = "missing"


class Input(NamedTuple):
    """One value that went in.

    ``symbol`` is its letter in the formula (empty: it is only listed), ``name`` what it is in words, ``value`` in the
    SI unit ``unit`` (or a text, None where missing), ``place`` where it is written, ``table`` the row it was read in,
    ``note`` one more remark (why it was assumed).
    """

    symbol: str
    name: str
    value: float | str | None
    unit: str = ""
    state: State = State.GIVEN
    place: Place | None = None
    table: str = ""
    note: str = ""


class Step(NamedTuple):
    """A value between: ``formula`` in symbols or with its numbers already put in; ``value`` in ``unit``."""

    symbol: str
    name: str
    formula: str
    value: float | None
    unit: str = ""
    source: str = ""


class Figure(NamedTuple):
    """A value with its working.

    ``value`` is in the SI unit ``unit`` (``VA``, ``A``, ``V``, ``ohm``, ``m``; empty for a ratio), None exactly where
    ``unknown`` has reasons. ``formula`` uses the symbols of ``inputs`` and ``steps``, pi, the signs + - * / ^, sqrt(),
    exp(), max() and min(). ``source`` is the standard and clause, or "common practice". ``by_leg`` goes on from the
    value to what each leg has of it.
    """

    name: str
    subject: str
    symbol: str
    value: float | None
    unit: str
    formula: str = ""
    inputs: tuple[Input, ...] = ()
    steps: tuple[Step, ...] = ()
    source: str = "common practice"
    assumptions: tuple[str, ...] = ()
    unknown: tuple[str, ...] = ()
    by_leg: tuple[Step, ...] = ()

    @property
    def known(self) -> bool:
        return self.value is not None


def given(symbol: str, name: str, value: float | str | None, unit: str = "", place: Place | None = None) -> Input:
    """An input as written; missing where there is no value."""
    return Input(symbol, name, value, unit, State.MISSING if value is None else State.GIVEN, place)


def derived(symbol: str, name: str, value: float | str | None, unit: str = "", note: str = "") -> Input:
    """An input that another calculation gave; missing where there is no value."""
    return Input(symbol, name, value, unit, State.MISSING if value is None else State.DERIVED, note=note)


def assumed(symbol: str, name: str, value: float | str, unit: str, note: str, place: Place | None = None) -> Input:
    """An input nobody stated, with the reason for the value taken; also what a writer marks with ``assume``."""
    return Input(symbol, name, value, unit, State.ASSUMED, place, note=note)


def looked_up(symbol: str, name: str, looked: Looked[float], unit: str = "") -> Input:
    """An input read from a table, with its row and how far the row was verified."""
    row = f"{looked.table}: {looked.row}"
    remark = {"verified": "", "memory": "table value from memory"}.get(looked.status, looked.status)
    return Input(symbol, name, looked.value, unit, State.DERIVED, table=row, note=looked.note or remark)


def total(parts: Iterable[Figure]) -> tuple[float | None, tuple[str, ...]]:
    """The sum of figures, or None with the reasons of every unknown part."""
    figures = list(parts)
    reasons = merge_reasons(*(f.unknown for f in figures))
    if reasons:
        return None, reasons
    return sum(f.value or 0.0 for f in figures), ()


def number_text(value: float) -> str:
    """A number with at most six significant digits, no exponent, no trailing zeros: what a pocket calculator shows.

    What rounding left of nothing (below 1e-9 in SI units) is 0."""
    if abs(value) < 1e-9:
        return "0"
    text = f"{value:.6g}"
    if "e" in text:
        digits = 0 if abs(value) >= 1 else 12
        text = f"{value:.{digits}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def value_text(value: float | str | None, unit: str = "") -> str:
    """``75000 VA``, ``0.86``, or ``unknown``."""
    if value is None:
        return "unknown"
    if isinstance(value, str):
        return value
    return f"{number_text(value)} {unit}".rstrip()


_WORD = re.compile(r"[A-Za-z_À-ɏͰ-Ͽ][\w.']*")
_FUNCTIONS = frozenset({"sqrt", "max", "min", "abs", "cos", "sin", "exp"})


def put_in(formula: str, values: Mapping[str, float | str | None]) -> str:
    """The formula with numbers in place of its symbols; a symbol without a number stays."""

    def number(match: re.Match[str]) -> str:
        word = match[0]
        value = values.get(word)
        if word in _FUNCTIONS or not isinstance(value, float | int):
            return word
        return number_text(value) if value >= 0 else f"({number_text(value)})"

    return _WORD.sub(number, formula)


def numbers_of(figure: Figure) -> dict[str, float | str | None]:
    """Every symbol of a figure with its number."""
    return {
        **{i.symbol: i.value for i in figure.inputs if i.symbol},
        **{s.symbol: s.value for s in figure.steps if s.symbol},
    }


def short(figure: Figure) -> str:
    """One line for a hover: ``90.21 A = 75000 / (sqrt(3) * 480)``."""
    if figure.value is None:
        return f"{figure.name}: unknown: {'; '.join(figure.unknown)}"
    text = value_text(figure.value, figure.unit)
    return f"{text} = {put_in(figure.formula, numbers_of(figure))}" if figure.formula else text


def _by_leg_head(steps: Sequence[Step]) -> str:
    phasors = ": the parts in phase with 0 degrees, then those 90 degrees ahead, in the order above"
    return "By leg" + (phasors if any("^2" in step.formula for step in steps) else "")


def render(figure: Figure) -> str:
    """A calculation sheet: formula, numbers put in, values between, result, table rows, clause, assumptions."""
    lines = [f"{figure.name}: {figure.subject}", ""]
    if figure.inputs:
        lines += ["  Put in", *_table([_input_row(i) for i in figure.inputs]), ""]
    # A step may compare the result itself, where that is solved for and no formula gives it.
    values: dict[str, float | str | None] = {figure.symbol: figure.value} if not figure.formula else {}
    values.update({i.symbol: i.value for i in figure.inputs if i.symbol})
    if figure.steps:
        lines += ["  Steps", *_step_lines(figure.steps, values), ""]
    if figure.formula:
        lines += _hung("  Formula   ", figure.symbol, figure.formula)
        numbers = put_in(figure.formula, numbers_of(figure))
        if numbers != figure.formula:
            lines += _hung("            ", figure.symbol, numbers)
    lines.append(f"  Result    {figure.symbol} = {value_text(figure.value, figure.unit)}".rstrip())
    if figure.by_leg:
        lines += [
            "",
            f"  {_by_leg_head(figure.by_leg)}",
            *_step_lines(figure.by_leg, {**values, figure.symbol: figure.value}),
            "",
        ]
    lines += [f"  Unknown   {reason}" for reason in figure.unknown]
    lines += [f"  Assumed   {text}" for text in _assumptions(figure)]
    lines.append(f"  Source    {figure.source}")
    return "\n".join(lines) + "\n"


def _input_row(item: Input) -> tuple[str, ...]:
    where = item.table
    if item.place is not None:
        where = f"{_file_name(item.place.file)}:{item.place.row + 1}"
    remark = f"({item.note})" if item.note else ""
    return item.symbol, item.name, value_text(item.value, item.unit), item.state.value, where, remark


_WIDTH = 118
"""Characters of a line of a sheet: what fits on paper and in a terminal."""
_LEAST_ROOM = 48


def _hung(lead: str, symbol: str, formula: str) -> list[str]:
    """An equation behind a lead; what does not fit goes on below its right side."""
    head = f"{lead}{symbol} = "
    told = _wrapped(formula, _WIDTH - len(head))
    return [head + told[0], *(" " * len(head) + more for more in told[1:])]


def _step_lines(steps: Sequence[Step], values: dict[str, float | str | None]) -> list[str]:
    """A line each, in columns; a formula that is too long goes on below itself."""
    symbols, names = max([len(step.symbol) for step in steps]), max([len(step.name) for step in steps])
    before = 4 + (symbols + 2 if symbols else 0) + names + 2
    lines = []
    for step in steps:
        head = (f"{step.symbol:<{symbols}}  " if symbols else "") + f"{step.name:<{names}}  "
        told = _wrapped(_step_text(step, values), max(_LEAST_ROOM, _WIDTH - before))
        lines += [f"    {head}{told[0]}", *(" " * before + more for more in told[1:])]
        if step.symbol:
            values[step.symbol] = step.value
    return lines


def _wrapped(text: str, width: int) -> list[str]:
    """A text in lines of at most ``width``; a longer word is not broken. Where it fits, as most do, it is a line as it
    is."""
    plain = text != "" and text.isprintable() and text[-1] != " "
    if plain and len(text) <= width:
        return [text]
    if plain and text[0] != " " and "  " not in text:
        return list(_filled(text, width))
    return textwrap.wrap(text, width, break_long_words=False, break_on_hyphens=False)


def _filled(text: str, width: int) -> Iterator[str]:
    """A text of single blanks as ``textwrap`` would fill it, at a small part of its time."""
    start = 0
    while len(text) - start > width:
        end = text.rfind(" ", start, start + width + 1)
        if end < 0:
            end = text.find(" ", start)
        if end < 0:
            break
        yield text[start:end]
        start = end + 1
    yield text[start:]


def _step_text(step: Step, values: Mapping[str, float | str | None]) -> str:
    numbers = put_in(step.formula, values)
    shown = f"{step.formula} = {numbers}" if numbers != step.formula else step.formula
    source = f"  [{step.source}]" if step.source else ""
    return f"{shown} = {value_text(step.value, step.unit)}".strip() + source


def _assumptions(figure: Figure) -> list[str]:
    inputs = [f"{i.name} {value_text(i.value, i.unit)}" for i in figure.inputs if i.state is State.ASSUMED]
    return [*inputs, *figure.assumptions]


def _table(rows: list[tuple[str, ...]]) -> list[str]:
    columns = [column for column in zip(*rows, strict=True) if any(column)]
    form = "    " + "  ".join(f"%-{max(map(len, column))}s" for column in columns)
    return [(form % row).rstrip() for row in zip(*columns, strict=True)]


def _file_name(path: str) -> str:
    return path.replace("\\", "/").rsplit("/", 1)[-1]
