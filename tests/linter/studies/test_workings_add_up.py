"""What a calculation sheet prints can be worked out again from the lines above it, with a pocket calculator.

The evaluation reads the printed text alone; no number of ours is in it.
"""

from __future__ import annotations

import ast
import math
import operator
import re
from collections.abc import Callable
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.rules.registry import all_rules
from wyeline_linter.studies.sheets import study_sheet
from wyeline_linter.studies.working_fault import MOST_MACHINES
from wyeline_linter.working import Figure, render

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
DIGITS = 5e-5
"""Six digits are printed of each number; the legs of a three-phase loop may differ in the fifth."""
_SIGNS: dict[type[ast.operator], Callable[[float, float], float]] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
    ast.Pow: operator.pow,
}


def calculated(text: str) -> float:
    """A line of numbers with + - * / ^, sqrt, max and min."""

    def value(node: ast.expr) -> float:
        if isinstance(node, ast.Constant):
            return float(node.value)
        if isinstance(node, ast.Name):
            return {"pi": math.pi}[node.id]
        if isinstance(node, ast.BinOp):
            return _SIGNS[type(node.op)](value(node.left), value(node.right))
        if isinstance(node, ast.UnaryOp):
            return -value(node.operand)
        assert isinstance(node, ast.Call) and isinstance(node.func, ast.Name), text
        known = {"sqrt": math.sqrt, "max": max, "min": min, "abs": abs, "exp": math.exp}
        return float(known[node.func.id](*map(value, node.args)))

    return value(ast.parse(text.replace("^", "**"), mode="eval").body)


def largest_in(text: str) -> float:
    return max((abs(float(number)) for number in re.findall(r"\d+(?:\.\d+)?", text)), default=0.0)


def disagreements(sheet: str) -> list[str]:
    """The lines of a sheet whose numbers do not give what is printed behind them."""
    wrong, last, steps = [], "", False
    for line in re.sub(r"\n {14,}", " ", sheet).splitlines():
        steps = line == "  Steps" or (steps and bool(line))
        cells = [] if line in ("", "  Steps") else re.split(r"\s{2,}", line.strip())
        if steps and cells:
            told = next(cell for cell in cells if " = " in cell or cell.startswith("= "))
            parts = told.split(" = ")
            if len(parts) > 1 and parts[-2]:
                stated, text = float(parts[-1].split(" ")[0]), parts[-2]
                if abs(calculated(text) - stated) > DIGITS * max(abs(stated), 0.1 * largest_in(text)):
                    wrong.append(line)
        elif cells and (cells[0] == "Formula" or last == "open"):
            last = line.partition(" = ")[2] if cells[0] != "Formula" else "open"
            formula = line.partition(" = ")[2]
        elif cells and cells[0] == "Result" and last:
            text = last if last != "open" else formula
            stated = float(cells[1].split(" = ")[1].split(" ")[0])
            if abs(calculated(text) - stated) > DIGITS * max(abs(stated), 0.1 * largest_in(text)):
                wrong.append(line)
    return wrong


def view_of(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


MOTORS = """wye 1
project "Cold store"
  basis us-2023
utility UTIL 480Y/277  fault 20 kA, fault-min 12 kA, x/r 6
transformer T1 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2
switchboard DP 480Y/277  bus 600 A, rated 30 kA, service-equipment
  1,3,5  90 A 3p  mca 62 A  cooling  "Chiller"
  7,9,11  15 A 3p  1.5 hp  motor  "Rake"
panel LP 208Y/120  bus 225 A, main 225 A, rated 10 kA
  1,3,5  60 A 3p  25 hp  motor  "Pump"
  2  20 A 1p  0.5 hp  motor  "Fan"
feeder UTIL -> DP  2 sets 3#4/0 + N #4/0 Cu THWN-2  20 m  in 3 inch EMT
feeder DP -> T1  125 A 3p  3#1 + G #6 Cu THWN-2  5 m  in 2 inch EMT
feeder T1 -> LP  3#4/0 + N #4/0 + G #2 Cu THWN-2  55 ft  in 3 inch EMT
"""
KINDS = ("fault", "fault-min", "three-phase", "line-line", "line-ground", "line-neutral")


def test_a_wrong_sheet_is_noticed() -> None:
    sheet = render(study_sheet(view_of(MOTORS).view, "DP", "fault"))
    assert not disagreements(sheet)
    amperes = re.search(r"I2 .*?([\d.]+) A", sheet)
    assert amperes is not None
    assert disagreements(sheet.replace(f"+ {amperes[1]} +", "+ 0 +"))
    assert disagreements(re.sub(r"(Z .* = )0\.", r"\g<1>1.", sheet))


@pytest.mark.parametrize("name", ["UTIL", "DP", "T1", "LP"])
@pytest.mark.parametrize("kind", KINDS)
def test_a_fault_with_motors_adds_up(name: str, kind: str) -> None:
    figure = study_sheet(view_of(MOTORS).view, name, kind)
    assert figure.known
    assert not disagreements(render(figure))
    machines = [i for i in figure.inputs if "running machine" in i.name]
    assert bool(machines) == (kind != "fault-min")
    if machines:
        shares = [float(i.value) for i in figure.inputs if i.symbol.startswith("I") and isinstance(i.value, float)]
        assert sum(shares) == pytest.approx(figure.value, rel=1e-9)
        assert figure.formula == " + ".join(f"I{k}" for k in range(1, len(shares) + 1))


def test_many_machines_are_the_largest_and_the_sum_of_the_others() -> None:
    rows = "".join(f'  {k},{k + 2},{k + 4}  20 A 3p  {5 + k / 10:g} kVA  pump  "Pump {k}"\n' for k in range(13, 60, 6))
    figure = study_sheet(view_of(MOTORS.replace("panel LP", f"{rows}panel LP")).view, "DP", "fault")
    machines = [i for i in figure.inputs if "running machine" in i.name]
    (others,) = [i for i in figure.inputs if "other machines together" in i.name]
    assert len(machines) == MOST_MACHINES and machines == sorted(machines, key=lambda i: -float(i.value or 0.0))
    assert others.name == "from the 6 other machines together"
    assert not disagreements(render(figure))


def test_the_sheet_says_what_each_part_is_in_the_units_of_the_project() -> None:
    inputs = study_sheet(view_of(MOTORS).view, "LP", "fault").inputs
    names = [i.name for i in inputs]
    assert "`UTIL -> DP`, 65.6 ft, at 25 degC" in names and "`T1`: 4 % of 75 kVA" in names
    assert not [name for name in names if re.search(r"\d m\b", name)]
    metric = study_sheet(view_of(MOTORS.replace("us-2023", "iec")).view, "LP", "fault-min")
    assert not [i.name for i in metric.inputs if re.search(r"\d ft\b", i.name)]


BANKS = {
    "open-delta": "transformer T 480 3ph -> 240 3ph  45 kVA, z 3 %, x/r 2, connection open-delta, units 2",
    "high-leg": "transformer T 480 3ph -> 240/120 3ph  45 kVA, z 3 %, x/r 2",
    "single": "transformer T 480 1ph -> 120/240  25 kVA, z 3 %, x/r 2",
    "resistor": "transformer T 2400 3ph -> 480Y/277  500 kVA, z 5 %, x/r 4, ground-resistor 5 ohm",
}


@pytest.mark.parametrize("bank", BANKS)
@pytest.mark.parametrize("kind", KINDS)
def test_a_fault_behind_a_special_bank_adds_up(bank: str, kind: str) -> None:
    low = BANKS[bank].partition("-> ")[2].rpartition("  ")[0].strip()
    high = BANKS[bank].partition("transformer T ")[2].partition(" ->")[0]
    site = f"""wye 1
project "Ropeway"
  basis us-2023
utility UTIL {high.replace("1ph", "3ph")}  fault 20 kA, fault-min 12 kA, x/r 6
switchboard DP {high.replace("1ph", "3ph")}  bus 600 A, rated 30 kA
  1,3,5  90 A 3p  50 kVA  pump  "Winder"
{BANKS[bank]}
panel LP {low}  bus 225 A, rated 10 kA
feeder UTIL -> DP  3#4/0 + G #2 Cu THWN-2  20 m  in 3 inch EMT
feeder DP -> T  125 A {"2" if bank == "single" else "3"}p  5 m  in 2 inch EMT
feeder T -> LP  10 m
"""
    site = (
        site.replace("p  5 m", "p  3#1 + G #6 Cu THWN-2  5 m")
        if bank != "single"
        else site.replace("p  5 m", "p  2#1 + G #6 Cu THWN-2  5 m").replace("-> T ", "-> T  ", 1)
    )
    figure = study_sheet(view_of(site).view, "T", kind)
    if figure.known:
        assert not disagreements(render(figure))


@pytest.mark.parametrize("site", ["field-station/station.wye", "dairy-works/works.wye"])
def test_every_sheet_of_the_shipped_examples_adds_up(site: str) -> None:
    root = str(EXAMPLES / site)
    view = Analysis(root, Files(), str(EXAMPLES)).view
    sheets: list[Figure] = []
    for name in view.model.equipment:
        if view.studies.normal.connectivity.fed(name):
            sheets += [study_sheet(view, name, kind) for kind in (*KINDS, "drop", "voltage")]
    sheets += [
        study_sheet(view, key, "drop") for key in view.studies.normal.flow.built.lines if key in view.model.feeders
    ]
    known = [sheet for sheet in sheets if sheet.known]
    assert len(known) > 100
    assert {s.subject: wrong for s in known if (wrong := disagreements(render(s)))} == {}


def test_every_fault_sheet_of_the_rules_own_examples_adds_up() -> None:
    """Parallel sources, autotransformers, grounding banks, unlimited supplies, TT and IT among them."""
    known, wrong = 0, {}
    for rule in all_rules().values():
        text = rule.wrong if rule.wrong.startswith("wye") else f"wye 1\n{rule.wrong}"
        if "project " not in text:
            text = text.replace("wye 1\n", 'wye 1\nproject "Works"\n  basis us-2023\n', 1)
        view = view_of(text).view
        for name in view.model.equipment:
            for kind in KINDS if view.studies.normal.connectivity.fed(name) else ():
                figure = study_sheet(view, name, kind)
                known += figure.known
                found = disagreements(render(figure)) if figure.known else []
                if found:
                    wrong[rule.name, name, kind] = found
    assert wrong == {} and known > 500
