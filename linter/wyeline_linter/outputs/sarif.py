"""SARIF 2.1.0 (OASIS Standard, 27 March 2020), for code scanning and review tools."""

from __future__ import annotations

import json
import os
from typing import TYPE_CHECKING, Any
from urllib.parse import quote

from wyeline_grammar import __version__
from wyeline_linter.baseline import ACCEPTED
from wyeline_linter.commands.explain import page
from wyeline_linter.edits_in_columns import in_columns
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.fingerprints import fingerprint_of
from wyeline_linter.outputs import Results
from wyeline_linter.outputs.json_output import edit_object, range_object
from wyeline_linter.outputs.summary import line as summary_line
from wyeline_linter.outputs.summary import outcomes
from wyeline_linter.outputs.text import CAUTION, shown_path
from wyeline_linter.rules.registry import Rule, all_rules

if TYPE_CHECKING:
    from wyeline_linter.outputs.shapes import Range

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
LEVELS = {Severity.ERROR: "error", Severity.WARNING: "warning", Severity.ADVICE: "note", Severity.GAP: "none"}
ROOT = "SRCROOT"


def render(results: Results) -> str:
    """One run as text. Gaps are results of kind ``open``: evaluated, and no answer could be given."""
    return json.dumps(log(results), indent=2, ensure_ascii=False) + "\n"


def log(results: Results) -> dict[str, Any]:
    """The log as plain data."""
    rules = all_rules()
    used = sorted({f.rule for f in results.findings})
    index = {name: i for i, name in enumerate(used)}
    return {
        "$schema": SCHEMA,
        "version": "2.1.0",
        "runs": [
            {
                "tool": {
                    "driver": {
                        "name": "Wyeline",
                        "version": __version__,
                        "semanticVersion": __version__,
                        "shortDescription": {"text": "Why equipment of power distribution can or cannot be connected."},
                        "fullDescription": {"text": CAUTION},
                        "rules": [_rule(rules[name]) if name in rules else {"id": name} for name in used],
                    }
                },
                "columnKind": "utf16CodeUnits",
                "originalUriBaseIds": {ROOT: {"description": {"text": "The folder in which Wyeline ran."}}},
                "invocations": [_invocation(results)],
                "artifacts": [{"location": _artifact(path), "sourceLanguage": "wye"} for path in results.files],
                "results": [_result(f, index[f.rule]) for f in results.findings],
                "properties": {
                    "summary": summary_line(results),
                    "expectations": outcomes(results.expectations),
                },
            }
        ],
    }


def _invocation(results: Results) -> dict[str, Any]:
    notices = [
        {
            "level": "error",
            "message": {"text": f"{shown_path(path)}: {reason}"},
            "locations": [{"physicalLocation": {"artifactLocation": _artifact(path)}}],
        }
        for path, reason in results.unread
    ]
    return {"executionSuccessful": not notices, "toolExecutionNotifications": notices}


def _rule(rule: Rule) -> dict[str, Any]:
    text = page(rule)
    return {
        "id": rule.name,
        "name": "".join(part.capitalize() for part in rule.name.split("-")),
        "shortDescription": {"text": rule.summary},
        "fullDescription": {"text": rule.why},
        "help": {"text": text, "markdown": text},
        "defaultConfiguration": {"level": LEVELS[rule.severity]},
        "properties": {"basis": rule.basis, "since": rule.since, "clause": rule.clause},
    }


def _result(finding: Finding, index: int) -> dict[str, Any]:
    gap = finding.severity is Severity.GAP
    result: dict[str, Any] = {
        "ruleId": finding.rule,
        "ruleIndex": index,
        "kind": "open" if gap else "fail",
        "level": LEVELS[finding.severity],
        "message": {"text": _message(finding)},
        "locations": [_location(finding)],
        "partialFingerprints": {"wyelineFinding/v1": fingerprint_of(finding)},
        "properties": {
            "found": finding.found,
            "needed": finding.needed,
            "why": finding.why,
            "change": finding.change,
            "clause": finding.clause,
            "position": finding.position,
        },
    }
    if finding.related:
        result["relatedLocations"] = [
            {
                "id": i,
                "physicalLocation": {
                    "artifactLocation": _artifact(r.place.file),
                    "region": _region(range_object(r.place)),
                },
                "message": {"text": r.message or "see here"},
            }
            for i, r in enumerate(finding.related, 1)
        ]
    fixes = [_fix(fix) for fix in finding.fixes if fix.edits and fix.safety is not Safety.SHOW]
    if fixes:
        result["fixes"] = fixes
    if finding.allowed is not None:
        kind = "external" if finding.allowed == ACCEPTED else "inSource"
        result["suppressions"] = [{"kind": kind, "status": "accepted", "justification": finding.allowed}]
    else:
        result["suppressions"] = []
    return result


def _message(finding: Finding) -> str:
    parts = [finding.message[:1].upper() + finding.message[1:] if finding.message[:1] != "`" else finding.message]
    labelled = (("Found", finding.found), ("Needed", finding.needed), ("Why", finding.why), ("Change", finding.change))
    parts += [f"{label}: {text}" for label, text in labelled if text]
    return "\n".join(parts)


def _location(finding: Finding) -> dict[str, Any]:
    block, span = finding.place.block, finding.place.span
    region = _region(range_object(finding.place))
    if span.line < len(block.lines):
        region["snippet"] = {"text": block.lines[span.line][span.start : span.end]}
    location: dict[str, Any] = {
        "physicalLocation": {"artifactLocation": _artifact(finding.place.file), "region": region}
    }
    if finding.subject:
        full = finding.subject + (f" {finding.position}" if finding.position else "")
        location["logicalLocations"] = [{"name": finding.subject, "fullyQualifiedName": full}]
    return location


def _fix(fix: Fix) -> dict[str, Any]:
    changes: dict[str, list[dict[str, Any]]] = {}
    for edit in in_columns(fix.edits):
        changes.setdefault(edit.block.file, []).append(_replacement(edit))
    return {
        "description": {"text": fix.title},
        "artifactChanges": [
            {"artifactLocation": _artifact(path), "replacements": replacements}
            for path, replacements in changes.items()
        ],
    }


def _replacement(edit: Edit) -> dict[str, Any]:
    replacement: dict[str, Any] = {"deletedRegion": _region(edit_object(edit)["range"])}
    if edit.text:
        replacement["insertedContent"] = {"text": edit.text}
    return replacement


def _region(found: Range) -> dict[str, Any]:
    """A protocol range as a region: lines and columns from 1."""
    start, end = found["start"], found["end"]
    return {
        "startLine": start["line"] + 1,
        "startColumn": start["character"] + 1,
        "endLine": end["line"] + 1,
        "endColumn": end["character"] + 1,
    }


def _artifact(path: str) -> dict[str, str]:
    shown = shown_path(path)
    if os.path.isabs(shown):
        from pathlib import Path

        return {"uri": Path(shown).as_uri()}
    return {"uri": quote(shown.replace(os.sep, "/")), "uriBaseId": ROOT}
