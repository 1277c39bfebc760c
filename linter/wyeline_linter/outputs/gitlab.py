"""A GitLab code quality report: a JSON list; fingerprints stay when lines move."""

from __future__ import annotations

import json
import os
from typing import Any

from wyeline_linter.findings import Finding, Severity
from wyeline_linter.fingerprints import distinct_fingerprints
from wyeline_linter.outputs import Results
from wyeline_linter.outputs.json_output import range_object
from wyeline_linter.outputs.text import shown_path

SEVERITIES = {Severity.ERROR: "critical", Severity.WARNING: "major", Severity.ADVICE: "minor", Severity.GAP: "info"}


def render(results: Results) -> str:
    """The list as text; what is accepted is left out."""
    return json.dumps(issues(results), indent=2, ensure_ascii=False) + "\n"


def issues(results: Results) -> list[dict[str, Any]]:
    """An object for each finding."""
    shown = [f for f in results.findings if f.allowed is None]
    paths = [shown_path(f.place.file).replace(os.sep, "/") for f in shown]
    marks = distinct_fingerprints(shown, paths)
    return [_issue(f, path, mark) for f, path, mark in zip(shown, paths, marks, strict=True)]


def _issue(finding: Finding, path: str, mark: str) -> dict[str, Any]:
    found = range_object(finding.place)
    particulars = [text for text in (finding.change, finding.why) if text]
    return {
        "description": f"{finding.message}. {' '.join(particulars)}".strip(),
        "check_name": finding.rule,
        "fingerprint": mark,
        "severity": SEVERITIES[finding.severity],
        "location": {
            "path": path,
            "positions": {
                "begin": {"line": found["start"]["line"] + 1, "column": found["start"]["character"] + 1},
                "end": {"line": found["end"]["line"] + 1, "column": found["end"]["character"] + 1},
            },
            "lines": {"begin": found["start"]["line"] + 1, "end": found["end"]["line"] + 1},
        },
    }
