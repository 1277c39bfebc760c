"""The wires of one circuit stay together, or iron around a single one of them heats."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import RacewayStatement
from wyeline_linter.findings import Finding, Fix, Safety, Severity, delete_phrase
from wyeline_linter.protection.circuits import circuit_lines
from wyeline_linter.protection.lines import Line, feeder_line
from wyeline_linter.rules.line_findings import about
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LINE = (
    US + "panel LP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"
    "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch STUFF, isolated-phases\n"
)
IRON = frozenset({"RMC", "IMC", "EMT"})
"""Raceways that are iron unless a maker says otherwise (aluminium ones exist; common practice, no source)."""

SPLIT = rule(
    name="circuit-conductors-split",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="both",
    summary="The legs of one circuit run apart, each in an iron raceway of its own.",
    why="The field of a single wire magnetises the iron around it, which heats; side by side the fields cancel.",
    clause={"us": "300.3(B), 300.20", "iec": "60364-5-52 521.5"},
    wrong=_LINE.replace("STUFF", "EMT"),
    right=_LINE.replace("STUFF", "PVC-40"),
    mends=True,
)


@SPLIT.also("feeder", said=("isolated-phases",))
def feeder_split(view: View, feeder: Feeder) -> Iterator[Finding]:
    line = feeder_line(view, feeder)
    if line is not None and "isolated-phases" in line.body.flags:
        yield from _split(view, line)


@SPLIT.also("board", said=("isolated-phases",))
def circuits_split(view: View, board: Equipment) -> Iterator[Finding]:
    for line in circuit_lines(view, board):
        if "isolated-phases" in line.body.flags:
            yield from _split(view, line)


def _split(view: View, line: Line) -> Iterator[Finding]:
    stuff = _stuff(view, line)
    if stuff not in IRON or line.system.frequency_hz == 0:
        return
    place = Place(line.block, line.body.flags["isolated-phases"])
    yield about(
        view, SPLIT, line,
        f"each leg of {line.where} runs in an iron raceway of its own ({stuff})",
        found=f"legs apart, in {stuff}",
        needed="all legs, the neutral and the ground of a circuit in one raceway, or raceways that are not iron",
        change="Pull all wires of the circuit through every raceway, or use PVC.",
        place=place,
        fixes=(Fix("Keep the wires together: leave out `isolated-phases`", (delete_phrase(place),), Safety.LOOK),),
    )  # fmt: skip


def _stuff(view: View, line: Line) -> str:
    raceway = line.body.raceway
    if raceway is None or not raceway.named:
        return raceway.stuff if raceway is not None else ""
    declared = view.model.lookup(raceway.stuff)
    statement = declared.statement if declared is not None else None
    return (statement.stuff or "") if isinstance(statement, RacewayStatement) else ""
