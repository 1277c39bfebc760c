"""Taps: wires smaller than the device ahead of them, allowed where every condition of a claim holds."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Place
from wyeline_linter.claims import EXCUSES
from wyeline_linter.derive import REFUSED
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.taps import Proof, claimed_tap, prove
from wyeline_linter.rules.line_findings import about
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import Rule, rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_PANEL = "panel LP-1 480Y/277  bus 125 A, main 100 A, lug-temp 75 degC\njunction JB-1  lug-temp 75 degC\n"
_TAPPED = US + _PANEL + "feeder MSB -> JB-1  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  30 m  in 4 inch EMT\n"

UNPROVEN = rule(
    name="tap-unproven",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="us",
    summary="A claimed tap does not meet a condition of its rule: length, share of the device ahead, or end.",
    why="The wire is smaller than its breaker protects; only a short tap that meets every condition may be.",
    clause={"us": "240.21(B)"},
    wrong=_TAPPED + "feeder JB-1 -> LP-1  3#3 + N #3 + G #3 Cu THWN-2  5 m  in 1-1/2 inch EMT\n  claim tap-10ft\n",
    right=_TAPPED + "feeder JB-1 -> LP-1  3#3 + N #3 + G #3 Cu THWN-2  3 m  in 1-1/2 inch EMT\n  claim tap-10ft\n",
)


@UNPROVEN.check
def taps(view: View, line: Line) -> Iterator[Finding]:
    claim = claimed_tap(line)
    if claim is None or line.guard is None or line.guard.own:
        return
    yield from told(view, UNPROVEN, line, prove(view, line, claim))


_MEND = "Meet every condition, or put a device where the wires start."


def told(view: View, rule_found: Rule, line: Line, proof: Proof, change: str = _MEND) -> Iterator[Finding]:
    """What is not met of a claim, or what its proof lacks."""
    if proof.holds:
        return
    place = claim_place(line, proof.claim)
    conditions = "; ".join(EXCUSES[proof.claim].conditions)
    if proof.failed:
        yield about(
            view, rule_found, line,
            f"`claim {proof.claim}` of {line.where} fails: {proof.failed[0]}",
            found="; ".join(proof.failed),
            needed=conditions,
            change=change,
            place=place,
        )  # fmt: skip
        return
    if any(reason.startswith(REFUSED) for reason in proof.missing):
        return  # what it lacks is a connection that is refused, and told as such
    yield about(
        view, rule_found, line,
        f"`claim {proof.claim}` of {line.where} cannot be judged yet; not known: {proof.missing[0]}",
        found=f"not known: {'; '.join(proof.missing)}",
        needed=conditions,
        change="Write what is missing.",
        place=place,
        severity=Severity.GAP,
    )  # fmt: skip


def claim_place(line: Line, name: str) -> Place:
    """Where the claim is written."""
    if line.feeder is not None:
        for claim in line.feeder.statement.claims:
            if claim.name == name:
                return Place(line.block, claim.span)
    return line.wires_place
