"""One model judged for the command line: its configuration, findings and expectations, kept where nothing changed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.sources import Files, SourceError, decode, read_bytes, workspace_of
from wyeline_linter import configuration as configurations
from wyeline_linter.cache_folder import digest
from wyeline_linter.configuration import Configuration
from wyeline_linter.expectations import Expectation
from wyeline_linter.findings import Finding
from wyeline_linter.result_cache import ResultCache
from wyeline_linter.studies_apart import StudiesApart

if TYPE_CHECKING:
    from wyeline_linter.analysis import Analysis
    from wyeline_linter.standing import StandingModels


class Judged(NamedTuple):
    """One model: its root, findings in their order, files, how its expectations fared, the share by which the
    figures of accepted findings may move, the rules that its configuration switches off, and every file that was looked
    at with its bytes, None where it is not there."""

    root: str
    findings: list[Finding]
    files: list[str]
    expectations: list[Expectation]
    may_move: float
    off: list[str]
    read: Mapping[str, bytes | None]


class ConfigurationOf:
    """The configuration of a model, read when first asked for: what is kept needs only its digest."""

    def __init__(self, root: str) -> None:
        self.path = configurations.find(root)
        self._data = read_bytes(self.path) if self.path is not None else b""
        self.read: dict[str, bytes | None] = {self.path: self._data} if self.path is not None else {}
        """The file that was read, with its bytes."""
        self._read: Configuration | None = None

    @property
    def digest(self) -> str:
        return digest(self._data) + f" {self.path}" if self.path is not None else ""

    def get(self) -> Configuration:
        """Raises ConfigurationError."""
        if self._read is None:
            self._read = configurations.load(self.path, self._data) if self.path is not None else configurations.DEFAULT
        return self._read


def judge(
    root: str,
    scenario: str | None,
    cache: ResultCache,
    configuration: ConfigurationOf,
    buffers: Mapping[str, bytes] | None = None,
    standing: StandingModels | None = None,
    *,
    with_edits: bool = True,
    may_copy: bool = False,
) -> Judged:
    """The findings of one model, from the cache where nothing changed. ``buffers`` are texts that stand for files;
    ``standing`` are models that are still there from an earlier run of the same process; without ``with_edits`` fixes
    may come with their titles alone. ``may_copy``: this process is ours, and may make a copy of itself for the studies.

    Raises SourceError where the root cannot be read or the model has no such scenario, ConfigurationError.
    """
    asked = ("check", root, scenario or "", configuration.digest)
    laid_over = buffers or {}
    seen: dict[str, bytes | None] = {}

    def read(path: str) -> bytes | None:
        try:
            seen[path] = laid_over[path] if path in laid_over else read_bytes(path)
        except SourceError:
            seen[path] = None
        return seen[path]

    kept = cache.load(asked, read, with_edits=with_edits) if not laid_over else None
    if kept is not None:
        return Judged(root, kept.findings(), kept.files, kept.expectations(), kept.may_move, kept.off, seen)

    from wyeline_linter.expectations import expectations_of

    renewed = standing.renewed(root, asked) if standing is not None else None
    if renewed is not None:
        analysis, seen = renewed.analysis.trusted(), renewed.seen
    else:
        seen = {}
        with StudiesApart(possible=may_copy and standing is None) as apart:
            analysis, files = _read_and_judged(root, scenario, configuration, laid_over, seen, apart)
            studied = apart.take(analysis)
        if standing is not None:
            from wyeline_linter.standing import Standing

            standing.keep(root, Standing(asked, analysis, files, seen))
        elif not studied:
            analysis.slim()
    findings = analysis.all_findings()
    expectations = expectations_of(analysis, findings)
    may_move, off = analysis.configuration.settings.allowance_change, analysis.configuration.off()
    if not laid_over:
        cache.store(asked, seen, analysis.model.files, findings, expectations, may_move, off)
    return Judged(root, findings, analysis.model.files, expectations, may_move, off, seen)


def _read_and_judged(
    root: str,
    scenario: str | None,
    configuration: ConfigurationOf,
    laid_over: Mapping[str, bytes],
    seen: dict[str, bytes | None],
    apart: StudiesApart,
) -> tuple[Analysis, Files]:
    """A model from its files. Files that are looked at, now and whenever it is edited, go into ``seen``."""
    from wyeline_linter.analysis import Analysis
    from wyeline_linter.network import NoSuchStateError

    def reader(path: str) -> str:
        if seen.get(path) is None:
            seen[path] = None
            seen[path] = laid_over[path] if path in laid_over else read_bytes(path)
        data = seen[path]
        assert data is not None
        return decode(path, data)

    files = Files(reader)
    try:
        workspace, settings = workspace_of(root), configuration.get()
        return Analysis(root, files, workspace, scenario, settings, before_rules=apart.begin).trusted(), files
    except NoSuchStateError:
        from wyeline_linter.outputs.text import shown_path

        raise SourceError(shown_path(root), f"this model has no scenario `{scenario}`") from None
