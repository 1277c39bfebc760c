"""Wires in parallel: sets too small for it, and twin feeders that are unlike."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.protection.lines import Line, feeder_line
from wyeline_linter.rules.line_findings import about, line_text
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.lines import resized

if TYPE_CHECKING:
    from wyeline_linter.view import View

PARALLEL = rule(
    name="parallel-too-small",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="us",
    summary="Wires smaller than 1/0 run in parallel.",
    why="Only 1/0 and larger may run in parallel: small ones share the current too unequally at their joints.",
    clause={"us": "310.10(G)"},
    wrong=US + "panel LP-1 480Y/277  bus 225 A, main 150 A, lug-temp 75 degC\n"
    "feeder MSB -> LP-1  150 A 3p  2 sets 3#3 + N #3 + G #6 Cu THWN-2  20 m  in 1-1/2 inch EMT\n",
    right=US + "panel LP-1 480Y/277  bus 225 A, main 150 A, lug-temp 75 degC\n"
    "feeder MSB -> LP-1  150 A 3p  3#1/0 + N #1/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT\n",
    mends=True,
)


@PARALLEL.check
def parallel_wires(view: View, line: Line) -> Iterator[Finding]:
    if line.wiring.sets < 2 or area_mm2(line.wiring.size) >= area_mm2("1/0") * 0.999:
        return
    if _small_sets_claimed(view, line):
        return
    yield about(
        view, PARALLEL, line,
        f"{line.where} runs {line.wiring.sets} sets of {line.wiring.size} AWG in parallel",
        found=f"{line.wiring.sets} sets of {line.wiring.size} AWG",
        needed="1/0 AWG or larger in every set",
        change="Run one set of larger wires, or sets of 1/0 and larger.",
        fixes=resized(view, line),
    )  # fmt: skip


def _small_sets_claimed(view: View, line: Line) -> bool:
    """The claimed exception: an existing line of 2 AWG or larger under qualified supervision."""
    if "parallel-small" not in line.claims or "existing" not in line.body.flags:
        return False
    supervised = any(c.name == "qualified-supervision" for _, p in view.model.projects for c in p.claims)
    return (supervised or "qualified-supervision" in line.claims) and area_mm2(line.wiring.size) > area_mm2("2") * 0.999


UNLIKE = rule(
    name="parallel-unlike",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="both",
    summary="Two feeders in parallel between the same ends differ in length, size, metal or raceway.",
    why="Unequal twins share the current unequally: the shorter or thicker one is overloaded.",
    clause={"us": "310.10(G)(2)", "iec": "60364-5-52 523.7"},
    wrong=US + "panel LP-1 480Y/277  bus 225 A, main 200 A, lug-temp 75 degC\n"
    "feeder W-1: MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n  claim parallel\n"
    "feeder W-2: MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  29 m  in 1-1/4 inch EMT\n  claim parallel\n",
    right=US + "panel LP-1 480Y/277  bus 225 A, main 200 A, lug-temp 75 degC\n"
    "feeder W-1: MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n  claim parallel\n"
    "feeder W-2: MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n  claim parallel\n",
)


@UNLIKE.check
def parallel_twins(view: View, line: Line) -> Iterator[Finding]:
    feeder = line.feeder
    if feeder is None or len(view.model.feeders_to.get(feeder.target.name, ())) < 2 or feeder.normally_open:
        return
    twins = [
        f for f in view.feeders_into(feeder.target.name)
        if f.target.text == feeder.target.text and f.source.text == feeder.source.text and not f.normally_open
    ]  # fmt: skip
    if len(twins) < 2 or twins[0] is feeder:
        return
    first = feeder_line(view, twins[0])
    if first is None:
        return
    unlike = [
        word
        for word, one, other in (
            ("length", first.body.number("length"), line.body.number("length")),
            ("size", first.wiring.size, line.wiring.size),
            ("metal", first.wiring.metal, line.wiring.metal),
            ("insulation", first.wiring.insulation, line.wiring.insulation),
            ("raceway", _stuff(first), _stuff(line)),
        )
        if one != other
    ]
    if unlike:
        yield about(
            view, UNLIKE, line,
            f"{line.where} runs in parallel with `{twins[0].key}`, and their {', '.join(unlike)} differ",
            found=f"{line_text(line)} beside {line_text(first)}",
            needed="the same length, size, metal, insulation and raceway",
            change="Make the two alike.",
            place=line.place,
        )  # fmt: skip


def _stuff(line: Line) -> str:
    raceway = line.body.raceway
    return "" if raceway is None else raceway.stuff if not raceway.named else "named"
