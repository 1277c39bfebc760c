"""Findings file by file in their one order, accepted ones marked: files in which nothing changed stay as they were."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

from wyeline_grammar.blocks import Block
from wyeline_linter.accepting import Allowances, Used
from wyeline_linter.configuration import Configuration
from wyeline_linter.finding_store import FindingStore, alike
from wyeline_linter.findings import Finding
from wyeline_linter.text_findings import without_what_unread_lines_lack


class FileFindings:
    """What a store holds, judged by allowances and configuration.

    ``versions`` counts by file how often its findings, or a place that one of them shows, changed; it outlasts this
    object where a model is judged as a whole again. ``whole``: allowances that accept nothing are told, too.
    """

    def __init__(
        self,
        store: FindingStore,
        allowances: Allowances,
        configuration: Configuration,
        versions: Counter[str],
        *,
        whole: bool,
    ) -> None:
        self._store = store
        self._allowances = allowances
        self._configuration = configuration
        self._versions = versions
        self._whole = whole
        self._judged: dict[str, list[Finding]] = {}
        self._used: dict[str, Used] = {}
        self._unused: dict[str, list[Finding]] = {}
        self._sorted: dict[str, list[Finding]] = {}
        self._shows: dict[str, set[str]] = {}
        """Other files that findings of a file show places in."""
        self._all: list[Finding] | None = None
        self._stale = True
        """Whether there may be an allowance that was not looked at."""

    def edited(self, files: Iterable[str]) -> None:
        """The texts of these files changed: lines may have moved."""
        edited = set(files)
        self._stale = True
        for path in edited | {path for path, shown in self._shows.items() if not shown.isdisjoint(edited)}:
            self._versions[path] += 1

    def all(self) -> list[Finding]:
        """Every finding, by file, line and column."""
        self._settle()
        if self._all is None:
            self._all = [finding for path in sorted(self._sorted) for finding in self._sorted[path]]
        return self._all

    def of(self, path: str) -> list[Finding]:
        """The findings of one file, in the same order."""
        self._settle()
        return self._sorted.get(path, [])

    def version(self, path: str) -> int:
        """Another number than before where the findings of a file, or what they show, changed."""
        self._settle()
        return self._versions[path]

    def _settle(self) -> None:
        changed, self._store.changed = self._store.changed, set()
        if not changed and not self._stale:
            return
        for path in changed:
            found, self._used[path] = self._allowances.applied(self._store.in_file(path))
            self._judged[path] = self._configuration.applied(without_what_unread_lines_lack(found))
        if self._whole:
            changed |= self._look_for_unused()
        self._stale = False
        for path in changed:
            self._sort(path)

    def _look_for_unused(self) -> set[str]:
        used: set[tuple[Block, int]] = set().union(*self._used.values())
        now: dict[str, list[Finding]] = {}
        for finding in self._configuration.applied(self._allowances.unused(used, study=False)):
            now.setdefault(finding.place.block.file, []).append(finding)
        before, self._unused = self._unused, now
        return {path for path in before.keys() | now.keys() if not alike(before.get(path, []), now.get(path, []))}

    def _sort(self, path: str) -> None:
        found = [*self._judged.get(path, ()), *self._unused.get(path, ())]
        found.sort(key=lambda f: f.sort_key)
        if alike(found, self._sorted.get(path, [])):
            return
        self._versions[path] += 1
        self._all = None
        if not found:
            self._sorted.pop(path, None)
            self._shows.pop(path, None)
            return
        self._sorted[path] = found
        self._shows[path] = {r.place.block.file for finding in found for r in finding.related} - {path}
