"""What one version, or one mixture of two, shows: its findings and its figures."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding
from wyeline_linter.review.documents import name_of
from wyeline_linter.review.measures import Measures, measures_of


class FindingKey(NamedTuple):
    """What makes a finding the same in two versions: lines, columns and figures may differ."""

    rule: str
    subject: str
    position: str
    words: str = ""


@dataclass
class Snapshot:
    """A version judged in one switch state."""

    analysis: Analysis
    findings: list[Finding]
    measures: Measures

    @cached_property
    def failing(self) -> dict[FindingKey, list[Finding]]:
        """Findings that no allowance accepts."""
        found: dict[FindingKey, list[Finding]] = {}
        for finding in self.findings:
            if finding.allowed is None:
                found.setdefault(key_of(finding), []).append(finding)
        return found

    @cached_property
    def counts(self) -> Counter[FindingKey]:
        """How many findings there are of each rule, subject and position, whatever their words."""
        return Counter(key._replace(words="") for key, group in self.failing.items() for _ in group)

    @cached_property
    def accepted(self) -> dict[FindingKey, Finding]:
        """Findings that an allowance accepts, by rule, subject and position."""
        return {key_of(f)._replace(words=""): f for f in self.findings if f.allowed is not None}


def take(root: str, read: Callable[[str], str], workspace: str, scenario: str | None) -> Snapshot:
    """Judge a version. Raises SourceError for an unreadable root, KeyError where it has no such scenario."""
    analysis = Analysis(root, Files(read), workspace, scenario=scenario)
    return Snapshot(analysis, analysis.findings(), measures_of(analysis.view))


_FIGURES = re.compile(r"[-+]?\d+(?:\.\d+)?")


def key_of(finding: Finding) -> FindingKey:
    """The key of a finding; what has no subject is known by the statement that it stands in."""
    words = _FIGURES.sub("#", finding.message)
    return FindingKey(finding.rule, finding.subject or name_of(finding.place.block), finding.position, words)
