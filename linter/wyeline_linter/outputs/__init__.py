"""How findings leave: one file an output format, each ``render(results) -> text``."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from wyeline_linter.expectations import Expectation
from wyeline_linter.findings import Finding, Severity

FORMATS: dict[str, str] = {
    "text": "for people at a terminal",
    "json": "one versioned object for programs",
    "sarif": "SARIF 2.1.0 for code scanning",
    "github": "annotations of a GitHub workflow",
    "gitlab": "a GitLab code quality report",
    "junit": "JUnit XML for test reports",
}
"""Each name is a module of this package (``json`` is ``json_output``)."""
WITH_EDITS = frozenset({"json", "sarif"})
"""Those that say of each fix how the text is to be changed; the others give its title at the most."""


class Results(NamedTuple):
    """What a check has to say: findings in their one order, the files read, expectations, and what counts as failed.

    ``failed`` is the verdict behind the exit code: a finding at or above ``threshold``, or a baseline that allows more
    than it needs. ``unread`` are paths of models that could not be judged, with the reason; ``off``
    the rules that the configuration switches off, for all files or for some.
    """

    findings: list[Finding]
    files: list[str]
    expectations: list[Expectation]
    threshold: Severity
    failed: bool
    unread: Sequence[tuple[str, str]] = ()
    off: Sequence[str] = ()
