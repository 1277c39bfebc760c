"""Findings for programs: one JSON object, versioned; ranges as in the Language Server Protocol (UTF-16, from 0)."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from wyeline_grammar.lines import to_units
from wyeline_grammar.places import Place
from wyeline_linter.findings import Edit, Finding, Severity
from wyeline_linter.outputs.text import CAUTION, shown_path

VERSION = 1


def report(findings: Sequence[Finding], files: Sequence[str]) -> dict[str, Any]:
    """``{version, caution, findings, summary}``; the shape is described in the linter's README."""
    shown = [f for f in findings if f.allowed is None]
    return {
        "version": VERSION,
        "caution": CAUTION,
        "findings": [finding_object(f) for f in findings],
        "summary": {
            "files": [shown_path(f) for f in files],
            **{s.word: sum(1 for f in shown if f.severity is s) for s in sorted(Severity, reverse=True)},
            "allowed": len(findings) - len(shown),
        },
    }


def finding_object(finding: Finding) -> dict[str, Any]:
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
        "path": shown_path(finding.place.file),
        "range": range_object(finding.place),
        "allowed": finding.allowed,
        "related": [
            {"path": shown_path(r.place.file), "range": range_object(r.place), "message": r.message}
            for r in finding.related
        ],
        "fixes": [
            {"title": fix.title, "safety": fix.safety.value, "edits": [edit_object(e) for e in fix.edits]}
            for fix in finding.fixes
        ],
    }


def range_object(place: Place) -> dict[str, dict[str, int]]:
    """A protocol range: lines and UTF-16 columns from 0."""
    span = place.span
    line = place.block.lines[span.line] if span.line < len(place.block.lines) else ""
    return _range(place.row, to_units(line, span.start, "utf-16"), place.row, to_units(line, span.end, "utf-16"))


def edit_object(edit: Edit) -> dict[str, Any]:
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


def _range(start_line: int, start: int, end_line: int, end: int) -> dict[str, dict[str, int]]:
    return {
        "start": {"line": start_line, "character": start},
        "end": {"line": end_line, "character": end},
    }
