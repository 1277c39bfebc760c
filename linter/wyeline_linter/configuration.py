"""What a project asks of Wyeline: `wyeline.toml`, found upward from a model's root file.

The command line and the editor share this loader. The shape of the file is data in ``configuration_keys``; this module
only holds what was read. It is light: the TOML reader and the rules are imported when there is a file to read.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Literal, NamedTuple

from wyeline_grammar.sources import SourceError, read_bytes, workspace_of
from wyeline_linter.findings import Finding, Severity

if TYPE_CHECKING:
    import re

    from wyeline_linter.tables import Override

FILE_NAME = "wyeline.toml"
BASELINE_NAME = "wyeline.baseline.json"
"""Both lie in the folder that a model's includes may not leave."""


@dataclass(frozen=True, slots=True)
class Settings:
    """Limits that an office may set, each a share of one. A fact of the model (``drop-branch``, ``reserve``) wins.

    ``drop_branch`` and ``drop_path``: voltage drop aimed for in the last circuit and from the source on (NEC 210.19 and
    215.2, informational notes; IEC 60364-5-52 Annex G knows 3 % and 5 % too). ``loading``: share of its rating from
    which a source or transformer draws a warning; ``balance``: how far a leg may be above the mean of its board's legs;
    ``reserve``: free positions of a board; ``allowance_change``: how far the figures of an accepted finding may move
    before it is to be judged anew (all common practice).
    """

    drop_branch: float = 0.03
    drop_path: float = 0.05
    loading: float = 0.80
    balance: float = 0.15
    reserve: float = 0.0
    allowance_change: float = 0.05


class PathRules(NamedTuple):
    """Severities for the files that a pattern fits; None switches a rule off."""

    pattern: str
    fits: re.Pattern[str]
    severities: dict[str, Severity | None]


class StatedOverride(NamedTuple):
    """A table row with the project's own value, the basis it belongs to (None: whichever one is applied), its line."""

    override: Override
    basis: str | None
    row: int


class Problem(NamedTuple):
    """What is wrong with a configuration, and where: line and columns from 0."""

    row: int
    start: int
    end: int
    message: str


class ConfigurationError(SourceError):
    """A `wyeline.toml` that says something Wyeline does not know; nothing is judged by half of a configuration.

    ``problems`` places each thing; the text names them all, a line each.
    """

    def __init__(self, path: str, problems: Iterable[Problem]) -> None:
        self.problems = tuple(problems)
        super().__init__(path, "; ".join(problem.message for problem in self.problems))

    def __str__(self) -> str:
        from wyeline_linter.outputs.text import shown_path

        shown = shown_path(self.path)
        return "\n".join(f"{shown}:{p.row + 1}:{p.start + 1}: {p.message}" for p in self.problems)


@dataclass(frozen=True, slots=True)
class Configuration:
    """One configuration as read. ``path`` is None where there is no file; then everything is as shipped.

    ``basis`` serves projects that state none; ``units`` None follows the practice of the basis, as
    an empty ``paper`` of drawings does.
    """

    path: str | None = None
    settings: Settings = Settings()
    severities: dict[str, Severity | None] = field(default_factory=dict)
    paths: tuple[PathRules, ...] = ()
    basis: str | None = None
    units: Literal["si", "us"] | None = None
    overrides: tuple[StatedOverride, ...] = ()
    paper: str = ""

    def severity(self, rule: str, file: str, own: Severity) -> Severity | None:
        """How grave a finding of a rule is in a file; None where the rule is off there. The last fitting pattern wins.

        A gap stays a gap: a figure that is unknown does not become known by being called otherwise.
        """
        chosen: Severity | None = self.severities.get(rule, own)
        if self.paths and self.path is not None:
            relative = _relative(file, os.path.dirname(self.path))
            for entry in self.paths:
                if rule in entry.severities and entry.fits.fullmatch(relative):
                    chosen = entry.severities[rule]
        return own if own is Severity.GAP and chosen is not None else chosen

    def off(self) -> list[str]:
        """Names of the rules that are switched off, for all files or for some."""
        tables = (self.severities, *(entry.severities for entry in self.paths))
        return sorted({name for table in tables for name, severity in table.items() if severity is None})

    def applied(self, findings: list[Finding]) -> list[Finding]:
        """Findings with the severities of this configuration; those of rules that are off left out."""
        if not self.severities and not self.paths:
            return findings
        result: list[Finding] = []
        for finding in findings:
            chosen = self.severity(finding.rule, finding.place.file, finding.severity)
            if chosen is finding.severity:
                result.append(finding)
            elif chosen is not None:
                result.append(replace(finding, severity=chosen))
        return result

    def overrides_for(self, basis: str | None) -> tuple[Override, ...]:
        """The project's own table rows under a basis. Raises ConfigurationError for the ones that fit no row."""
        found = [s for s in self.overrides if s.basis in (None, basis)]
        if not found or basis is None:
            return ()
        from wyeline_linter.tables.basis import OverrideError, project_basis

        problems: list[Problem] = []
        for stated in found:
            try:
                project_basis(basis, (stated.override,))
            except OverrideError as error:
                problems.append(Problem(stated.row, 0, 0, str(error)))
        if problems:
            raise ConfigurationError(self.path or FILE_NAME, problems)
        return tuple(s.override for s in found)


DEFAULT = Configuration()


def find(path: str) -> str | None:
    """The `wyeline.toml` that holds for a model file: in the folder that its includes may not leave, or None."""
    found = os.path.join(workspace_of(path), FILE_NAME)
    return found if os.path.exists(found) else None


def load_for(path: str, read: Callable[[str], bytes] = read_bytes) -> Configuration:
    """The configuration that holds for a model file. Raises ConfigurationError, SourceError where it is unreadable."""
    found = find(path)
    return DEFAULT if found is None else load(found, read(found))


def load(path: str, data: bytes) -> Configuration:
    """The configuration that a file's bytes say. Raises ConfigurationError with every problem and its place."""
    from wyeline_linter.configuration_keys import read_configuration

    return read_configuration(path, data)


def _relative(file: str, folder: str) -> str:
    try:
        return os.path.relpath(file, folder).replace(os.sep, "/")
    except ValueError:  # another drive
        return file.replace(os.sep, "/")
