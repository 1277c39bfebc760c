"""Annotations of a GitHub workflow: one command a line, shown beside the changed lines of a pull request."""

from __future__ import annotations

import os

from wyeline_linter.findings import Finding, Severity
from wyeline_linter.outputs import Results
from wyeline_linter.outputs.json_output import range_object
from wyeline_linter.outputs.summary import line as summary_line
from wyeline_linter.outputs.text import CAUTION, shown_path

COMMANDS = {
    Severity.ERROR: "error",
    Severity.WARNING: "warning",
    Severity.ADVICE: "notice",
    Severity.GAP: "notice",
}


def render(results: Results) -> str:
    """A workflow command for each finding that nothing accepts, then the summary as plain text."""
    lines = [_command(f) for f in results.findings if f.allowed is None]
    for path, reason in results.unread:
        file = escaped_property(shown_path(path).replace(os.sep, "/"))
        lines.append(f"::error file={file},title=unread::{escaped(f'this could not be judged: {reason}')}")
    return "\n".join([*lines, summary_line(results), CAUTION]) + "\n"


def _command(finding: Finding) -> str:
    found = range_object(finding.place)
    facts = {
        "file": shown_path(finding.place.file).replace(os.sep, "/"),
        "line": str(found["start"]["line"] + 1),
        "endLine": str(found["end"]["line"] + 1),
        "col": str(found["start"]["character"] + 1),
        "endColumn": str(found["end"]["character"] + 1),
        "title": finding.rule if finding.severity is not Severity.GAP else f"{finding.rule} (unknown)",
    }
    labelled = (("Found", finding.found), ("Needed", finding.needed), ("Why", finding.why), ("Change", finding.change))
    text = "\n".join([finding.message, *(f"{label}: {words}" for label, words in labelled if words)])
    listed = ",".join(f"{name}={escaped_property(value)}" for name, value in facts.items())
    return f"::{COMMANDS[finding.severity]} {listed}::{escaped(text)}"


def escaped(text: str) -> str:
    """Text of a workflow command: nothing in it ends the line or begins another command."""
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


def escaped_property(text: str) -> str:
    """A property of a workflow command."""
    return escaped(text).replace(":", "%3A").replace(",", "%2C")
