"""Neutrals of IT systems: live like a leg once a first earth fault stands, and guarded like one."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Place
from wyeline_linter.findings import Finding, Fix, Safety, Severity
from wyeline_linter.protection.circuits import circuit_lines
from wyeline_linter.protection.fault_loop import has_rcd
from wyeline_linter.protection.lines import Line
from wyeline_linter.rules.connection import poles_edit
from wyeline_linter.rules.line_findings import about
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Arrangement, Known

if TYPE_CHECKING:
    from wyeline_linter.view import View

_SITE = (
    'project "Kiln"\n  basis iec\n  revision "A"\n'
    "utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing IT\n"
    "load KILN 400Y/230  9 kW, heating\nfeeder NETT -> KILN  16 A {} curve B  5G4mm2 Cu PVC  10 m method C\n"
)
UNGUARDED = rule(
    name="it-neutral-unguarded",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="iec",
    summary="In an IT system a device leaves the neutral closed, or nothing says that it sees overcurrent in it.",
    why="With one earth fault standing, a second one on a neutral drives a fault current through it that no device on "
    "the legs sees; and a neutral that stays closed is live.",
    clause={"iec": "60364-4-43 431.2.2"},
    wrong=_SITE.format("3p"),
    right=_SITE.format("4p"),
    mends=True,
)


@UNGUARDED.check
def of_feeder(view: View, line: Line) -> Iterator[Finding]:
    if line.system.earthing.arrangement is Arrangement.IT:
        yield from _judged(view, line)


@UNGUARDED.also("board")
def of_circuits(view: View, board: Equipment) -> Iterator[Finding]:
    state = view.state(board.name) if board.circuits else None
    if state is None or not isinstance(state.system, Known):
        return
    system = state.system.system
    if system.earthing.arrangement is Arrangement.IT and system.has_neutral:
        for line in circuit_lines(view, board):
            yield from _judged(view, line)


def _judged(view: View, line: Line) -> Iterator[Finding]:
    """An RCD that opens every live wire, neutral included, stands for the detection: it sees the second fault."""
    poles, span, system = line.body.poles, line.body.poles_span, line.system
    if poles is None or span is None or not system.has_neutral or not system.frequency_hz:
        return
    legs = len(system.legs)
    if line.medium or line.wiring.neutral is None or "spare" in line.body.flags or poles.count > legs:
        return
    if poles.switched_neutral and has_rcd(view, line):
        return
    written = f"{poles.count}p" + "+N" * poles.switched_neutral
    needed = f"{legs + 1}p"
    yield about(
        view, UNGUARDED, line,
        f"the device of {line.where} opens the neutral of an IT system, and is not said to see overcurrent in it"
        if poles.switched_neutral
        else f"the device of {line.where} leaves the neutral of an IT system closed",
        severity=Severity.GAP if poles.switched_neutral else None,
        found=written,
        needed=f"a device that guards and opens the neutral like a leg ({needed}), or an RCD that opens it",
        change=f"Write `{needed}`, or leave the neutral out where nothing needs it.",
        place=Place(line.block, span),
        fixes=(Fix(f"Make the device {needed}", (poles_edit(line.block, span, needed),), Safety.LOOK),),
    )  # fmt: skip
