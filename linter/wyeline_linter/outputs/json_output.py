"""Findings for programs: one JSON object, versioned; ranges as in the Language Server Protocol (UTF-16, from 0)."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

from wyeline_grammar.lines import to_units
from wyeline_grammar.places import Place
from wyeline_linter.edits_in_columns import in_columns
from wyeline_linter.findings import Edit, Finding
from wyeline_linter.fingerprints import fingerprint_of
from wyeline_linter.outputs import Results
from wyeline_linter.outputs.summary import by_rule, outcomes, severities
from wyeline_linter.outputs.text import CAUTION, shown_path

if TYPE_CHECKING:
    from wyeline_linter.outputs.shapes import CheckReport, EditEntry, FindingEntry, Range

VERSION = 2


def render(results: Results) -> str:
    """The object as text; its shape is described in the linter's README."""
    return json.dumps(report(results), indent=2, ensure_ascii=False) + "\n"


def report(results: Results) -> CheckReport:
    """Everything a check says."""
    shown = [f for f in results.findings if f.allowed is None]
    counts = severities(shown)
    return {
        "version": VERSION,
        "caution": CAUTION,
        "failed": results.failed,
        "unread": [{"path": shown_path(path), "reason": reason} for path, reason in results.unread],
        "findings": [finding_object(f) for f in results.findings],
        "expectations": [
            {"path": shown_path(e.path), "line": e.row, "text": e.text, "outcome": e.outcome, "reason": e.reason}
            for e in results.expectations
        ],
        "statistics": [
            {"rule": rule, "severity": word, "findings": every, "allowed": accepted}
            for rule, word, every, accepted in by_rule(results.findings)
        ],
        "summary": {
            "files": [shown_path(f) for f in results.files],
            "error": counts["error"],
            "warning": counts["warning"],
            "advice": counts["advice"],
            "gap": counts["gap"],
            "allowed": len(results.findings) - len(shown),
            "expectations": outcomes(results.expectations),
            "off": list(results.off),
        },
    }


def finding_object(finding: Finding) -> FindingEntry:
    """One finding as plain data."""
    return {
        "rule": finding.rule,
        "severity": finding.severity.word,
        "message": finding.message,
        "found": finding.found,
        "needed": finding.needed,
        "why": finding.why,
        "change": finding.change,
        "clause": finding.clause,
        "subject": finding.subject,
        "position": finding.position,
        "fingerprint": fingerprint_of(finding),
        "path": shown_path(finding.place.file),
        "range": range_object(finding.place),
        "allowed": finding.allowed,
        "related": [
            {"path": shown_path(r.place.file), "range": range_object(r.place), "message": r.message}
            for r in finding.related
        ],
        "fixes": [
            {"title": fix.title, "safety": fix.safety.value, "edits": [edit_object(e) for e in in_columns(fix.edits)]}
            for fix in finding.fixes
        ],
    }


def range_object(place: Place) -> Range:
    """A protocol range: lines and UTF-16 columns from 0."""
    span = place.span
    line = place.block.lines[span.line] if span.line < len(place.block.lines) else ""
    return _range(place.row, to_units(line, span.start, "utf-16"), place.row, to_units(line, span.end, "utf-16"))


def edit_object(edit: Edit) -> EditEntry:
    """A text edit with its file."""
    lines = edit.block.lines
    start_line = lines[edit.line] if edit.line < len(lines) else ""
    end_line = lines[edit.end_line] if edit.end_line < len(lines) else ""
    first = edit.block.first_line
    return {
        "path": shown_path(edit.block.file),
        "range": _range(
            first + edit.line,
            to_units(start_line, edit.start, "utf-16"),
            first + edit.end_line,
            to_units(end_line, edit.end, "utf-16"),
        ),
        "text": edit.text,
    }


def _range(start_line: int, start: int, end_line: int, end: int) -> Range:
    return {
        "start": {"line": start_line, "character": start},
        "end": {"line": end_line, "character": end},
    }
