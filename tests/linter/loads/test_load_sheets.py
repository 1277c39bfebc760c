"""Every sheet of the example sites, typed into a calculator, gives the figure that it explains."""

from __future__ import annotations

import math
import re
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files, workspace_of
from wyeline_linter.analysis import Analysis
from wyeline_linter.loads.sheets import FIGURES, circuit_figure, equipment_figure, load_figure
from wyeline_linter.working import Figure, numbers_of, put_in, render

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
SITES = ("field-station/station.wye", "dairy-works/works.wye")
CALCULATOR = {"sqrt": math.sqrt, "max": max, "min": min, "__builtins__": {}}
SAME = 2e-5
"""Six digits are printed of each number."""


def typed(figure: Figure) -> None:
    values = {i.symbol: i.value for i in figure.inputs if i.symbol}
    for step in figure.steps:
        assert step.value == pytest.approx(eval(put_in(step.formula, values), dict(CALCULATOR)), rel=1e-3, abs=5e-3)
        values[step.symbol] = step.value
    if figure.value is None:
        assert figure.unknown
        return
    assert figure.formula, render(figure)
    result = eval(put_in(figure.formula, numbers_of(figure)), dict(CALCULATOR))
    assert figure.value == pytest.approx(result, rel=1e-3, abs=2e-3), render(figure)
    for step in figure.by_leg:
        legs = eval(put_in(step.formula.replace("^", "**"), {figure.symbol: figure.value}), dict(CALCULATOR))
        largest = max((float(n) for n in re.findall(r"\d+\.?\d*", step.formula)), default=0.0)
        assert step.value == pytest.approx(legs, rel=SAME, abs=SAME * largest), (render(figure), step)


@pytest.mark.parametrize("site", SITES)
def test_a_pocket_calculator_gives_every_figure(site: str) -> None:
    path = str(EXAMPLES / site)
    view = Analysis(path, Files(), workspace_of(path)).view
    seen = 0
    for name, node in view.loads.nodes.items():
        for figure in FIGURES:
            typed(load_figure(view, name, figure))
        for leaf in node.leaves:
            typed(circuit_figure(view, name, leaf.place) if leaf.place else equipment_figure(view, name))
            seen += 1
    assert seen > 40


RACKS = """wye 1
project "Kiln yard"
  basis us-2023
utility QUAY 208Y/120  fault 10 kA, x/r 4
panel LP-1 208Y/120  bus 225 A
  1  20 A 1p  1.2 kVA it  "Rack 1"  third-harmonic 40 %
  2,4,6  60 A 3p  15 kVA process  "Kiln"{said}
  5  20 A 1p  1.1 kVA receptacle  "Bench"
feeder QUAY -> LP-1  225 A 3p
"""


@pytest.mark.parametrize("said", ["", " factor 60 % third-harmonic 30 %", " third-harmonic 100 %"])
def test_a_pocket_calculator_gives_a_neutral_with_third_harmonics(said: str) -> None:
    view = Analysis("/m/site.wye", Files(lambda _: RACKS.format(said=said)), "/m").view
    sheet = load_figure(view, "LP-1", "neutral")
    typed(sheet)
    (third,) = (step for step in sheet.steps if step.symbol == "T")
    assert third.value is not None and sheet.value is not None and sheet.value >= third.value > 0
