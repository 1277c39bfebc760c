"""The issues of a project as a table: the revision table of a set of drawings."""

from __future__ import annotations

from wyeline_linter.issues import NOT_YET
from wyeline_linter.reports.columns import Table, TableKind, words
from wyeline_linter.reports.subject import Subject

ISSUES = TableKind(
    "issues",
    "Issues",
    "Every issue of this model, the newest first.",
    (
        words("issue", "Issue", "Its name."),
        words("date", "Date", f"The day of the issue, as ISO 8601 writes it; `{NOT_YET}` while it is being prepared."),
        words("purpose", "What for", "What it was issued for, or what it changed.", wide=True),
        words("drawn", "Drawn", "Who drew it."),
        words("checked", "Checked", "Who checked it; empty where nobody is named."),
    ),
)


def issue_list(subject: Subject) -> Table:
    """The table, without rows where the project lists no issue."""
    table = Table(ISSUES)
    block = subject.project_block
    for issue in reversed(subject.issues):
        values = {
            "issue": issue.name.text,
            "date": issue.date or NOT_YET,
            "purpose": issue.body.description or "",
            "drawn": issue.body.text("drawn") or "",
            "checked": issue.body.text("checked") or "",
        }
        table.add(values, "", f"{subject.file(block.file)}:{block.first_line + issue.span.line + 1}" if block else "")
    return table
