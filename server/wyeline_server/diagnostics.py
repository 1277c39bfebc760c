"""Findings as diagnostics: pushed, or pulled by clients that say they pull; of one document or of the workspace.

Two speeds: what the text, the voltages and the loads say follows every edit; what the studies found last stands beside
it until its statement changes, and is replaced when typing rests and they are solved anew.

A file of several models shows what they agree on once, and what only some of them find under their names. Nothing is
published for a text that is older than the client's.
"""

from __future__ import annotations

import asyncio
import bisect
import os
import weakref
from collections.abc import Iterable
from typing import Any

from wyeline_grammar.linking import Place
from wyeline_linter.analysis import Analysis
from wyeline_linter.configuration import Problem
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.rules.registry import all_rules
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer
from wyeline_server.session import Session

MAX_SHOWN = 1000
"""More in one file help nobody, and cost the client seconds."""
_SEVERITY = {Severity.ERROR: 1, Severity.WARNING: 2, Severity.ADVICE: 3, Severity.GAP: 3}
_UNNECESSARY = 1


def register(server: WyelineServer) -> None:
    all_rules()  # loaded while the client makes ready what it opens first
    shown = Diagnostics(server)
    server.diagnostics = shown
    if server.client_pulls():
        server.on("textDocument/diagnostic", shown.pull)
        server.on("workspace/diagnostic", shown.pull_workspace)
        server.on_rest(shown.refresh)
    else:
        server.on_rest(shown.push)


class Diagnostics:
    """What the client has been told, and what there is to tell."""

    def __init__(self, server: WyelineServer) -> None:
        self.server = server
        self._told: dict[str, tuple[int | None, list[Json]]] = {}
        self._files_of_root: dict[str, set[str]] = {}
        self._made: dict[str, tuple[tuple[object, ...], list[Json]]] = {}
        """By file, its diagnostics with what they were made of."""
        self._results: dict[str, tuple[str, list[Json]]] = {}
        self._studied: set[str] = set()
        self._count = 0

    @property
    def session(self) -> Session:
        return self.server.session

    # what there is to tell

    def findings_in(self, path: str, rows: tuple[int, int] | None = None) -> list[tuple[Finding, str]]:
        """The findings in a file, in their order, each with the models that it holds in (empty: in all of them).

        ``rows`` keeps to those that begin between two lines, both included.
        """
        analyses = self.session.analyses_of(path)
        if len(analyses) == 1:
            return [(finding, "") for finding in self._of(analyses[0], path, rows)]
        counts: dict[tuple[Any, ...], tuple[Finding, list[str]]] = {}
        for analysis in analyses:
            for finding in self._of(analysis, path, rows):
                key = (*finding.sort_key, finding.severity, finding.place.span.line)
                counts.setdefault(key, (finding, []))[1].append(os.path.basename(analysis.model.root))
        return [
            (finding, "" if len(roots) == len(analyses) else ", ".join(roots))
            for _, (finding, roots) in sorted(counts.items())
        ]

    def _of(self, analysis: Analysis, path: str, rows: tuple[int, int] | None) -> list[Finding]:
        study = self.server.study_of(analysis)
        found = _between(analysis.findings_of(path), rows)
        solved = _between(study.findings(path), rows) if study is not None else None
        if solved:
            found = sorted((*found, *solved), key=lambda f: f.sort_key)
        return [finding for finding in found if finding.allowed is None]

    def diagnostics(self, path: str) -> list[Json]:
        """A file's diagnostics, the worst where there are too many to show; the same list while they stay the same."""
        state = self._state(path)
        known = self._made.get(path)
        if known is not None and known[0] == state:
            return known[1]
        found = self.findings_in(path)
        left_out = len(found) - MAX_SHOWN
        if left_out > 0:
            found = _worst(found)
        made = [self.diagnostic(finding, models) for finding, models in found]
        if left_out > 0:
            made.append(_left_out(left_out))
        if known is not None and known[1] == made:
            made = known[1]
        self._made[path] = state, made
        return made

    def _state(self, path: str) -> tuple[object, ...]:
        """What a file's diagnostics are made of: while it stays equal, so do they."""
        state: list[object] = [self.server.settings]
        for analysis in self.session.analyses_of(path):
            study = self.server.study_of(analysis)
            state += [weakref.ref(analysis), analysis.version_of(path)]
            state.append((weakref.ref(study), study.version_of(path)) if study is not None else None)
        return tuple(state)

    def diagnostic(self, finding: Finding, models: str = "") -> Json:
        """One finding in the protocol's shape."""
        server, session = self.server, self.session
        place = finding.place
        made: Json = {
            "range": session.positions.span(place.block, place.span),
            "severity": _SEVERITY[finding.severity],
            "code": finding.rule,
            "source": "wyeline",
            "message": message(finding, models),
            "data": {"rule": finding.rule},
        }
        pages = server.setting("rules.pages", "")
        if pages and server.client_can("textDocument.publishDiagnostics.codeDescriptionSupport", True):
            made["codeDescription"] = {"href": f"{pages.rstrip('/')}/{finding.rule}"}
        if finding.related and server.client_can("textDocument.publishDiagnostics.relatedInformation", True):
            made["relatedInformation"] = [
                {"location": self.location(related.place), "message": related.message} for related in finding.related
            ]
        if finding.rule.endswith("-unused") or finding.rule.startswith("unused-"):
            made["tags"] = [_UNNECESSARY]
        return made

    def location(self, place: Place) -> Json:
        """The protocol's name of a place in any file."""
        return {
            "uri": self.session.uri_of(place.file),
            "range": self.session.positions.span(place.block, place.span),
        }

    # pushing

    def push(self) -> None:
        """Publish what changed: of the documents touched always, of other files where it differs."""
        roots = self.session.take_touched()
        if not roots:
            return
        gone = set(self.session.drop_unused())
        paths: set[str] = set()
        for root in roots | gone:
            paths |= self._files_of_root.pop(root, set())
            if root in gone:
                continue
            if not self._wanted(root):
                continue
            analysis = self.session.analysis(root)
            if analysis is not None:
                self._files_of_root[root] = set(analysis.model.files)
                paths |= self._files_of_root[root]
        for path in sorted(paths):
            self._publish(path)
        self._publish_configuration()

    def _publish_configuration(self) -> None:
        """What is wrong with a `wyeline.toml`: pushed to every client, as none pulls for such a file."""
        for path, problems in self.session.configuration_problems.items():
            made = [_of_configuration(problem) for problem in problems]
            if self._told.get(path, (None, []))[1] != made:
                self._told[path] = (None, made)
                params = {"uri": self.session.uri_of(path), "diagnostics": made}
                self.server.protocol.notify("textDocument/publishDiagnostics", params)

    def _wanted(self, root: str) -> bool:
        return any(root in self.session.roots_of(path) for path in self.session.documents)

    def _publish(self, path: str) -> None:
        version = self.session.version(path)
        shown = any(path in files for files in self._files_of_root.values())
        made = self.diagnostics(path) if shown else []
        told = self._told.get(path)
        if told is not None and told[0] == version and (told[1] is made or told[1] == made):
            return
        if told is None and not made and version is None:
            return
        params: Json = {"uri": self.session.uri_of(path), "diagnostics": made}
        if version is not None:
            params["version"] = version
        self.server.protocol.notify("textDocument/publishDiagnostics", params)
        if made or version is not None:
            self._told[path] = (version, made)
        else:
            self._told.pop(path, None)
            self._made.pop(path, None)

    # pulling

    def pull(self, server: WyelineServer, params: Any) -> Json:
        """``textDocument/diagnostic``."""
        path = server.path_in(params)
        return self._report(path, params.get("previousResultId"))

    def _report(self, path: str, previous: Any) -> Json:
        made = self.diagnostics(path)
        result_id, known = self._results.get(path, ("", None))
        if known != made:
            self._count += 1
            result_id = str(self._count)
            self._results[path] = (result_id, made)
        if previous == result_id:
            return {"kind": "unchanged", "resultId": result_id}
        return {"kind": "full", "resultId": result_id, "items": made}

    async def pull_workspace(self, server: WyelineServer, params: Any) -> Json:
        """``workspace/diagnostic``: every file of every model, a model at a time, with progress and cancel."""
        previous = {
            server.session.path_of(entry["uri"]): entry["value"]
            for entry in params.get("previousResultIds") or ()
            if isinstance(entry, dict)
        }
        items: list[Json] = []
        done: set[str] = set()
        roots = server.session.all_roots()
        with server.long_work(params.get("workDoneToken"), "Checking models", len(roots)) as progress:
            for root in roots:
                progress.step(os.path.basename(root))
                analysis = server.session.analysis(root)
                for path in () if analysis is None else analysis.model.files:
                    if path not in done:
                        done.add(path)
                        items.append(self._workspace_report(path, previous.get(path)))
                await asyncio.sleep(0)
        server.rest()
        items += [
            {"uri": server.session.uri_of(path), "version": None, "kind": "full", "items": []}
            for path in sorted(previous.keys() - done)
        ]
        return {"items": items}

    def _workspace_report(self, path: str, previous: Any) -> Json:
        report = self._report(path, previous)
        return {"uri": self.session.uri_of(path), "version": self.session.version(path), **report}

    def refresh(self) -> None:
        """Ask a client that pulls to pull again where the findings of other files changed: by an edit, by a study."""
        roots, studied = self.session.take_touched(), self._studied
        self._studied = set()
        self._publish_configuration()
        if not roots:
            return
        others = sum(self._outdated(path) for path in self.session.documents)
        if others > 1 or (studied and (others or any(map(self._outdated, self._files_of(studied))))):
            self.server.protocol.ask("workspace/diagnostic/refresh", None)

    def _outdated(self, path: str) -> bool:
        """Whether the client was told something else about a file; False for one it never asked about."""
        told = self._results.get(path)
        return told is not None and told[1] != self.diagnostics(path)

    def _files_of(self, roots: Iterable[str]) -> set[str]:
        analyses = [self.session.analysis(root) for root in roots]
        return {path for analysis in analyses if analysis is not None for path in analysis.model.files}

    def studied(self, roots: set[str]) -> None:
        """The studies of these models are done: the client is told of what they found."""
        self._studied |= roots
        self.session.touch(roots)


def _between(findings: list[Finding], rows: tuple[int, int] | None) -> list[Finding]:
    """Those of a file's findings, in their order, that begin between two lines, both included."""
    if rows is None:
        return findings
    start = bisect.bisect_left(findings, rows[0], key=_row)
    end = bisect.bisect_right(findings, rows[1], key=_row)
    return findings[start:end]


def _row(finding: Finding) -> int:
    return finding.place.row


def _worst(found: list[tuple[Finding, str]]) -> list[tuple[Finding, str]]:
    """As many as are shown, the gravest first, each kind in its order."""
    chosen: list[tuple[Finding, str]] = []
    for severity in sorted(Severity, reverse=True):
        chosen += [each for each in found if each[0].severity is severity]
        if len(chosen) >= MAX_SHOWN:
            break
    return chosen[:MAX_SHOWN]


def message(finding: Finding, models: str = "") -> str:
    """A finding's text: the one line that stands alone, then what was found and needed, why, and what to change."""
    lines = [finding.message + (f" (in {models})" if models else "")]
    why = finding.why + (f" ({finding.clause})" if finding.clause else "")
    for label, text in (("found", finding.found), ("needed", finding.needed), ("why", why), ("change", finding.change)):
        if text:
            lines.append(f"{label}: {text}")
    return "\n".join(lines)


def _of_configuration(problem: Problem) -> Json:
    place = {"line": problem.row, "character": problem.start}
    return {
        "range": {"start": place, "end": {"line": problem.row, "character": problem.end}},
        "severity": 1,
        "source": "wyeline",
        "code": "configuration",
        "message": f"{problem.message}. Models are judged as shipped until this is mended.",
    }


def _left_out(count: int) -> Json:
    zero = {"line": 0, "character": 0}
    return {
        "range": {"start": zero, "end": zero},
        "severity": 3,
        "source": "wyeline",
        "message": f"{count} more findings in this file are not shown here. `wyeline check` lists every one.",
    }


def overlaps(range_: Json, start: tuple[int, int], end: tuple[int, int]) -> bool:
    """Whether a protocol range and another, given by two (line, character) pairs, share a place."""
    first = (range_["start"]["line"], range_["start"]["character"])
    last = (range_["end"]["line"], range_["end"]["character"])
    return first <= end and start <= last
