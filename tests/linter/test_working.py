"""A calculation sheet can be followed with a pocket calculator, and an unknown keeps its reasons."""

from __future__ import annotations

import math
import textwrap

import pytest
from hypothesis import example
from hypothesis import given as having
from hypothesis import strategies as st

from wyeline_linter import working
from wyeline_linter.tables.basis import basis
from wyeline_linter.working import (
    Figure,
    Step,
    assumed,
    derived,
    given,
    looked_up,
    merge_reasons,
    number_text,
    numbers_of,
    put_in,
    render,
    short,
    total,
)


def current() -> Figure:
    """75 kVA at 480 V: 90.2 A (worked example, common practice)."""
    inputs = (given("S", "rating", 75e3, "VA"), derived("V", "line to line", 480.0, "V"))
    return Figure("full-load current", "TX-1", "I", 75e3 / (math.sqrt(3) * 480), "A", "S / (sqrt(3) * V)", inputs)


def unknown(reason: str) -> Figure:
    return Figure("load", "LP-1", "S", None, "VA", unknown=(reason,))


def test_the_numbers_put_in_give_the_result() -> None:
    figure = current()
    typed = put_in(figure.formula, numbers_of(figure))
    assert typed == "75000 / (sqrt(3) * 480)"
    assert eval(typed, {"sqrt": math.sqrt}) == pytest.approx(figure.value)
    assert short(figure) == "90.211 A = 75000 / (sqrt(3) * 480)"


def test_sheet_names_rows_assumptions_and_source() -> None:
    percent = basis("us-2023").constant("continuous-percent")
    figure = Figure(
        "sizing load",
        "LP-1",
        "S",
        12_500.0,
        "VA",
        "Q",
        (
            given("C", "continuous", 10e3, "VA"),
            looked_up("p", "percent", percent, "%"),
            assumed("f", "power factor", 1.0, "", "none is written"),
        ),  # type: ignore[arg-type]
        (Step("Q", "continuous counted", "C * p / 100", 12_500.0, "VA"),),
        source="NEC 2023 215.3",
    )
    sheet = render(figure)
    assert "C * p / 100 = 10000 * 125 / 100 = 12500 VA" in sheet
    assert "NEC 2023 215.3: continuous part of a load" in sheet
    assert "Assumed   power factor 1" in sheet
    assert sheet.endswith("Source    NEC 2023 215.3\n")


def test_unknown_passes_through_sums_and_comparisons_with_its_reasons() -> None:
    assert total([current(), unknown("no load is written"), unknown("no load is written")]) == (
        None,
        ("no load is written",),
    )
    assert "unknown" in render(unknown("no load is written"))


def test_reasons_are_bounded_and_counted_across_merges() -> None:
    first = merge_reasons(f"reason {i}" for i in range(12))
    assert len(first) == 9 and first[-1] == "and 4 more"
    assert merge_reasons(first, ["another"])[-1] == "and 5 more"


def test_a_long_formula_goes_on_below_itself_within_the_width_of_a_page() -> None:
    inputs = tuple(given(f"S{k}", f"load {k}", 1000.0 * k, "VA") for k in range(1, 21))
    formula = " + ".join(i.symbol for i in inputs)
    sheet = render(Figure("sum", "MSB", "S", 210e3, "VA", formula, inputs))
    assert max(map(len, sheet.splitlines())) <= 118
    told = sheet.partition("  Formula   S = ")[2].partition("\n  Result")[0]
    assert " ".join(told.split()) == f"{formula} S = {put_in(formula, {i.symbol: i.value for i in inputs})}"


def test_numbers_are_those_of_a_pocket_calculator() -> None:
    assert [number_text(v) for v in (0.0, 75e3, 1.5e7, 277.128129, 0.86, 1e-5)] == [
        "0", "75000", "15000000", "277.128", "0.86", "0.00001",
    ]  # fmt: skip


@having(st.text(st.sampled_from("ab =+*()[]\t\n\u00a0\u202f-"), max_size=40), st.integers(1, 30))
@example("a = b  [c]", 10)
def test_a_line_of_a_sheet_breaks_as_textwrap_breaks_it(text: str, width: int) -> None:
    wrapped = textwrap.wrap(text, width, break_long_words=False, break_on_hyphens=False)
    assert working._wrapped(text, width) == wrapped
