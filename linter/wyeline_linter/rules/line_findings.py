"""The one way a rule tells of a feeder or circuit: its place, its clause, its subject and position."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_grammar.linking import Place
from wyeline_linter.findings import Edit, Finding, Fix, Related, Safety, Severity
from wyeline_linter.protection.lines import Line
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import Rule

if TYPE_CHECKING:
    from wyeline_linter.view import View


def about(
    view: View,
    rule: Rule,
    line: Line,
    message: str,
    *,
    found: str,
    needed: str,
    change: str,
    place: Place | None = None,
    why: str = "",
    severity: Severity | None = None,
    fixes: tuple[Fix, ...] = (),
    related: tuple[Related, ...] = (),
) -> Finding:
    """A finding of a rule about a line, at its wires unless another place is given."""
    return rule.finding(
        place or line.wires_place,
        message,
        found=found,
        needed=needed,
        change=change,
        why=why,
        severity=severity,
        subject=line.subject,
        position=line.position,
        related=related,
        fixes=fixes,
        clause=clause_of(view, rule),
    )


def rating_fix(line: Line, amps: float) -> tuple[Fix, ...]:
    """A fix that gives a line's own device another rating; none where it has no device of its own."""
    from wyeline_linter.sizing.writing import rating_edit

    edit = rating_edit(line.block, line.body, amps)
    return (Fix(f"Make the device {edit.text}", (edit,), Safety.LOOK),) if edit is not None else ()


def wires_fix(line: Line, text: str, title: str = "") -> tuple[Fix, ...]:
    """A fix that writes a line's wires, with all that is said of them, as ``text``; none where it has none written."""
    conductors = line.body.conductors
    if conductors is None:
        return ()
    span = conductors.span
    edit = Edit(line.block, span.line, span.start, span.line, span.end, text)
    return (Fix(title or f"Write the wires as `{text}`", (edit,), Safety.LOOK),)


def device_words(line: Line) -> str:
    """The device that protects a line, in words."""
    guard = line.guard
    if guard is None:
        return "no device"
    word = "fuse" if guard.kind == "fuse" else "breaker"
    return f"{guard.amps:g} A {word}" if guard.own else f"{guard.amps:g} A {word} at `{guard.at}`"


def amps_text(amps: float) -> str:
    """Amperes to three figures and no more: ``76 A``, ``8.2 A``."""
    return f"{amps:.0f} A" if amps >= 100 else f"{amps:.3g} A"


def line_text(line: Line) -> str:
    """The wires as written."""
    span = line.wires_place.span
    return line.block.lines[span.line][span.start : span.end].strip()
