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
from wyeline_linter.configuration import DEFAULT, Configuration
from wyeline_linter.findings import Finding
from wyeline_linter.review.documents import name_of
from wyeline_linter.review.measures import Measures, measures_of
from wyeline_linter.review.states import worst_measures


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
    def gravest(self) -> dict[FindingKey, Finding]:
        """The gravest finding of each rule, subject and position."""
        found: dict[FindingKey, Finding] = {}
        for key, group in self.failing.items():
            bare = key._replace(words="")
            best = max(group, key=lambda f: f.severity)
            if bare not in found or best.severity > found[bare].severity:
                found[bare] = best
        return found

    @cached_property
    def accepted(self) -> dict[FindingKey, Finding]:
        """Findings that an allowance accepts, by rule, subject and position."""
        return {key_of(f)._replace(words=""): f for f in self.findings if f.allowed is not None}


def take(
    root: str,
    read: Callable[[str], str],
    workspace: str,
    scenario: str | None = None,
    configuration: Configuration = DEFAULT,
    like: Snapshot | None = None,
) -> Snapshot:
    """Judge a version. ``like`` is one whose circuit may be the same: then it is not solved again.

    Raises SourceError for an unreadable root, KeyError where it has no such scenario.
    """
    analysis = Analysis(root, Files(read), workspace, scenario, configuration)
    if analysis.configuration_error is not None:
        raise analysis.configuration_error
    solved = like.analysis.view.study_cache if like is not None else None
    if solved is not None:
        from wyeline_linter.studies.study_cache import StudyCache

        analysis.view.study_cache = StudyCache(dict(solved.solutions))
    found = analysis.all_findings()
    worst = {(m.subject, m.name): m for m in worst_measures(analysis.view)}
    return Snapshot(analysis, found, measures_of(analysis.view) | worst)


_FIGURES = re.compile(r"[-+]?\d+(?:\.\d+)?")


def key_of(finding: Finding) -> FindingKey:
    """The key of a finding; what has no subject is known by the statement that it stands in."""
    words = _FIGURES.sub("#", finding.message)
    return FindingKey(finding.rule, finding.subject or name_of(finding.place.block), finding.position, words)
