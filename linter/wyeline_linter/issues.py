"""The issues of a project: which of them is the newest, and what a title block says of it.

A stated `revision` that names another issue than the newest is a finding (``rules/issues.py``); until it is mended, the
title block prints the revision as stated, and nothing that holds for another issue.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from wyeline_grammar.model import Issue, ProjectStatement

if TYPE_CHECKING:
    from wyeline_linter.outputs.shapes_of_figures import IssueEntry, ProjectFigures
    from wyeline_linter.view import View

NOT_YET = "not issued yet"


def oldest_first(project: ProjectStatement) -> tuple[Issue, ...]:
    """The issues by their dates, those of one day as written; what has no date yet comes last."""
    return tuple(sorted(project.issues, key=lambda issue: issue.date or "9999"))


def newest(project: ProjectStatement) -> Issue | None:
    """The issue that is being prepared, else the latest one; None where none is listed."""
    issues = oldest_first(project)
    return issues[-1] if issues else None


def is_said_by(issue: Issue, revision: str) -> bool:
    """Whether a stated revision (`B`, `Rev. B, for tender`) is the name of an issue."""
    lead = r"(?:rev(?:ision)?\.?|issue)?\s*"
    return re.match(rf"{lead}{re.escape(issue.name.text)}(?![\w.-]*\w)", revision.strip(), re.IGNORECASE) is not None


def current(project: ProjectStatement) -> Issue | None:
    """The newest issue, unless the stated revision names another."""
    found, stated = newest(project), project.body.text("revision")
    return None if found is None or (stated and not is_said_by(found, stated)) else found


def revision(project: ProjectStatement) -> str:
    """The revision as it prints; empty where neither it nor an issue is stated."""
    stated = project.body.text("revision")
    found = newest(project)
    if stated or found is None:
        return stated or ""
    return found.name.text if found.date else f"{found.name.text} ({NOT_YET})"


def issue_date(project: ProjectStatement) -> str:
    """The day of the revision that prints, as ISO 8601 writes it; empty where it is not known."""
    found = current(project)
    return found.date if found is not None else ""


def drawn_by(project: ProjectStatement) -> str:
    """Who drew what is printed: as the newest issue says, else the project."""
    found = current(project)
    return (found is not None and found.body.text("drawn")) or project.body.text("drawn") or ""


def checked_by(project: ProjectStatement) -> str:
    """Who checked what is printed: as the newest issue says, or the project where no issue says any.

    A name beside an older issue, or one written before there were issues, says nothing of the newest.
    """
    if not any(issue.body.text("checked") for issue in project.issues):
        return project.body.text("checked") or ""
    found = current(project)
    return (found is not None and found.body.text("checked")) or ""


def project_figures(view: View) -> ProjectFigures:
    """What a title block says of the project, as data."""
    project = view.model.projects[0][1] if view.model.projects else None
    texts: dict[str, str | None] = {}
    if project is not None:
        texts = {key: project.body.text(key) for key in ("number", "client", "engineer")}
        texts |= {"revision": revision(project), "date": issue_date(project)}
        texts |= {"drawn": drawn_by(project), "checked": checked_by(project)}
    listed = reversed(oldest_first(project)) if project is not None else ()
    return {
        "name": project.name.text if project is not None and project.name is not None else None,
        "number": texts.get("number"),
        "client": texts.get("client"),
        "engineer": texts.get("engineer"),
        "basis": view.basis,
        "revision": texts.get("revision") or None,
        "date": texts.get("date") or None,
        "drawn": texts.get("drawn") or None,
        "checked": texts.get("checked") or None,
        "issues": [_entry(issue) for issue in listed],
    }


def _entry(issue: Issue) -> IssueEntry:
    body = issue.body
    return {
        "issue": issue.name.text,
        "date": issue.date or None,
        "purpose": body.description,
        "drawn": body.text("drawn"),
        "checked": body.text("checked"),
    }


def in_words(issue: Issue) -> str:
    """``issue B of 2026-04-14``, or ``issue C, not issued yet``."""
    return f"issue {issue.name.text}" + (f" of {issue.date}" if issue.date else f", {NOT_YET}")
