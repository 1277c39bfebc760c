"""The state of a session: open documents, files, and one analysis for each model, kept under edits.

Nothing of the protocol library is known here. Changes are taken in at once, but an analysis catches up only when it is
asked, so that a burst of keystrokes is judged once.
"""

from __future__ import annotations

import gc
import logging
import os
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field

from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.includes import may_include
from wyeline_grammar.sources import Files, SourceError, workspace_of
from wyeline_linter.analysis import Analysis
from wyeline_linter.configuration import DEFAULT, Configuration, ConfigurationError, Problem, find, load_for
from wyeline_server.collector import kept_out
from wyeline_server.documents import DocumentNames, path_of_uri
from wyeline_server.include_graph import IncludeGraph, is_inside
from wyeline_server.positions import Json, Positions
from wyeline_server.studies import SCOPE, PendingEdit, Study

logger = logging.getLogger(__name__)


@dataclass(slots=True)
class Document:
    """A document open in the client."""

    path: str
    uri: str
    version: int


@dataclass(slots=True)
class _Kept:
    """An analysis with the edits that it has not taken in yet, and its studies."""

    analysis: Analysis
    study: Study
    pending: PendingEdit = field(default_factory=PendingEdit)

    @property
    def files(self) -> list[str]:
        return self.analysis.model.files

    def add(self, went: Iterable[Block], came: Iterable[Block]) -> None:
        went, came = list(went), list(came)
        self.pending.add(went, came)
        self.study.edited(went, came)


class Session:
    """Documents and models of one client.

    Paths are absolute and the keys of everything. ``touched`` are models whose findings may have changed since they
    were last asked for by ``take_touched``.
    """

    def __init__(self, encoding: str = "utf-16") -> None:
        self.positions = Positions(encoding)
        self.names = DocumentNames()
        self.files = Files()
        self.graph = IncludeGraph(self.files)
        self.folders: list[str] = []
        self.documents: dict[str, Document] = {}
        self._kept: dict[str, _Kept] = {}
        self._earlier: dict[str, Study] = {}
        """Studies of models that are to be built anew."""
        self._touched: set[str] = set()
        self._let_go = False
        self._problems: dict[str, dict[str, tuple[Problem, ...]]] = {}
        """By `wyeline.toml` that was read and by root file, what is wrong."""

    # workspace folders and files on disk

    def add_folder(self, uri: str) -> None:
        path = path_of_uri(uri)
        if path is not None and path not in self.folders:
            self.folders.append(path)
            self.graph.look_again()

    def remove_folder(self, uri: str) -> None:
        path = path_of_uri(uri)
        if path is not None and path in self.folders:
            self.folders.remove(path)
            self.graph.forget(path)
            self.graph.look_again()

    def files_changed(self, paths: Iterable[str]) -> None:
        """Files changed, appeared or vanished on disk; open documents keep what the client says."""
        for path in paths:
            if path in self.documents:
                continue
            self._reload(path)
            if not os.path.exists(path):
                self.graph.gone(path)

    def _reload(self, path: str) -> None:
        before = self.graph.includers(path)
        changed = self.files.reload(path)
        self.graph.changed(path)
        if changed is None:
            self._drop_models_with(path, before)
        else:
            self._feed(path, *changed)

    # documents

    def path_of(self, uri: str) -> str:
        """The key of a document, whichever way its URI is spelt."""
        return self.names.key(uri, self.folders[0] if self.folders else "")

    def uri_of(self, path: str) -> str:
        """The URI of a file, as the client spells it where it has the document open."""
        return self.names.uri(path)

    def open(self, uri: str, version: int, text: str) -> str:
        path = self.path_of(uri)
        self.names.opened(path, uri)
        self.documents[path] = Document(path, uri, version)
        text = text.removeprefix("\ufeff")
        known = self.files.known(path)
        if known is None:
            self.files.open_buffer(path, text)
            self.graph.changed(path)
            self._drop_models_with(path, self.graph.includers(path))
        else:
            went, came = known.replace_text(text)
            self.files.open_buffer(path, text)
            self._taken(path, went, came)
        for root in self.roots_of(path):
            self._touched.add(root)
        return path

    def change(self, uri: str, version: int, changes: Iterable[Json]) -> str:
        """Take in the changes of a document in their order; one without range replaces the whole text.

        Raises KeyError for a document that is not open.
        """
        path = self.path_of(uri)
        document = self.documents[path]
        file = self.files.get(path)
        for change in changes:
            range_ = change.get("range")
            if range_ is None:
                went, came = file.replace_text(str(change["text"]).removeprefix("\ufeff"))
            else:
                start, end = self.positions.places(file.lines, range_)
                went, came = file.edit(start, end, str(change["text"]))
            self._taken(path, went, came)
        document.version = version
        return path

    def close(self, uri: str) -> str:
        """The document is what its file says again. Raises KeyError for one that is not open."""
        path = self.path_of(uri)
        del self.documents[path]
        roots = self.roots_of(path)
        if self.names.saved(path):
            self._reload(path)
        else:
            self.files.close_buffer(path)
            self.graph.gone(path)
            self._drop(path)
        self.names.closed(path)
        self._touched.update(roots)
        return path

    def version(self, path: str) -> int | None:
        document = self.documents.get(path)
        return document.version if document is not None else None

    def text(self, path: str) -> TextFile:
        """The lines and blocks of a file as the session knows it. Raises SourceError."""
        return self.files.get(path)

    def _taken(self, path: str, went: list[Block], came: list[Block]) -> None:
        if any(may_include(b) for b in (*went, *came)):
            self.graph.changed(path)
            self._touched.update(self._kept)
            for other in self.documents:
                self._touched.update(self.roots_of(other))
        self._feed(path, went, came)

    def _feed(self, path: str, went: list[Block], came: list[Block]) -> None:
        held = False
        for root, kept in self._kept.items():
            if path in kept.files:
                held = True
                kept.add(went, came)
                self._touched.add(root)
            else:
                kept.study.passed_by(path, went)
        if not held and path in self.documents:
            self._touched.update(self.roots_of(path))

    # models

    def roots_of(self, path: str) -> list[str]:
        """The root files of the models that a file belongs to."""
        if self.names.saved(path):
            self.graph.scan_around(path, self.folders)
        self.graph.add(path)
        return self.graph.roots_of(path)

    def all_roots(self) -> list[str]:
        """The root files of all models in the workspace folders, and of all open documents."""
        for folder in self.folders:
            self.graph.scan(folder)
        roots = {root for root in self.graph.all_roots() if any(is_inside(root, folder) for folder in self.folders)}
        for path in self.documents:
            roots.update(self.roots_of(path))
        return sorted(roots)

    def analysis(self, root: str) -> Analysis | None:
        """The analysis of a root file with every edit taken in; None where the file cannot be read."""
        kept = self._kept.get(root)
        if kept is None:
            try:
                analysis = self._built(root)
            except SourceError as error:
                logger.info("no model: %s", error)
                return None
            earlier = self._earlier.pop(root, None)
            study = Study.after(earlier, self.files) if earlier is not None else Study()
            kept = self._kept[root] = _Kept(analysis, study)
        elif kept.pending:
            before = kept.analysis.configuration_error
            try:
                kept.analysis.edited(*kept.pending.take())
            except SourceError as error:
                logger.info("no model any more: %s", error)
                self._let_go_of(root)
                return None
            except Exception:
                self._let_go_of(root)
                raise
            if kept.analysis.configuration_error is not before:
                self._keep_problems(root, kept.analysis.configuration_error)
        return kept.analysis

    def _built(self, root: str) -> Analysis:
        configuration = self._configuration(root)
        analysis = self._without_collector(
            lambda: Analysis(root, self.files, workspace_of(root), configuration=configuration)
        )
        if analysis.configuration_error is not None:
            self._keep_problems(root, analysis.configuration_error)
        return analysis

    def _without_collector(self, build: Callable[[], Analysis]) -> Analysis:
        """A new analysis."""
        if self._let_go:
            gc.unfreeze()
            gc.collect()
            self._let_go = False
        with kept_out():
            return build()

    def _configuration(self, root: str) -> Configuration:
        """What `wyeline.toml` says for a model; as shipped where it cannot be read, which is told then."""
        self._keep_problems(root, None)
        try:
            return load_for(root)
        except SourceError as error:
            self._keep_problems(root, error)
            return DEFAULT

    def _keep_problems(self, root: str, error: SourceError | None) -> None:
        path = find(root)
        for problems in self._problems.values():
            problems.pop(root, None)
        if isinstance(error, ConfigurationError):
            self._problems.setdefault(error.path, {})[root] = error.problems
        elif error is not None:
            self._problems.setdefault(error.path, {})[root] = (Problem(0, 0, 0, error.reason),)
        elif path is not None:
            self._problems.setdefault(path, {})

    @property
    def configuration_problems(self) -> dict[str, tuple[Problem, ...]]:
        """What is wrong with each `wyeline.toml` that was read: for all of its models together, each problem once."""
        return {
            path: tuple(sorted({problem for problems in by_root.values() for problem in problems}))
            for path, by_root in self._problems.items()
        }

    # studies

    def study(self, root: str) -> Study | None:
        """The studies of a model in memory."""
        kept = self._kept.get(root)
        return kept.study if kept is not None else None

    def studies_due(self) -> list[str]:
        """The root files of the models in memory whose studies are to be made; those with open documents first."""
        opened = {root for path in self.documents for root in self.roots_of(path)}
        due = [root for root, kept in self._kept.items() if kept.study.due]
        return sorted(due, key=lambda root: root not in opened)

    def release(self, study: Study) -> None:
        """Let go of the copy that was solved."""
        study.release()
        self._let_go = True

    def to_solve(self, root: str) -> Analysis:
        """A copy of the model that a thread may work on, until this is called again for it. Raises SourceError."""
        analysis = self.analysis(root)
        if analysis is None:
            raise SourceError(root, "it cannot be read any more")
        return self._kept[root].study.prepared(
            self.files, analysis, lambda files: self._without_collector(lambda: analysis.twin(files, (SCOPE,)))
        )

    def analyses_of(self, path: str) -> list[Analysis]:
        """The analyses of every model that a file belongs to, in the order of their root files."""
        found = [self.analysis(root) for root in self.roots_of(path)]
        return [a for a in found if a is not None and path in a.model.files]

    def analysis_of(self, path: str) -> Analysis | None:
        """The first of a file's models: what single answers (hover, definition) are given from."""
        return next(iter(self.analyses_of(path)), None)

    def kept(self) -> list[str]:
        """The root files of the models in memory."""
        return list(self._kept)

    def drop_unused(self) -> list[str]:
        """Let go of models without an open document. Returns their root files."""
        used = {root for path in self.documents for root in self.roots_of(path)}
        gone = [root for root in self._kept if root not in used]
        self._earlier = {root: study for root, study in self._earlier.items() if root in used}
        for root in gone:
            self._let_go_of(root)
        return gone

    def take_touched(self) -> set[str]:
        """Root files of models whose findings may have changed; asked once, they count as told."""
        touched, self._touched = self._touched, set()
        return touched

    def touch(self, roots: Iterable[str]) -> None:
        self._touched.update(roots)

    def forget_models(self) -> None:
        """Build every model anew when next asked for: what decides their limits has changed."""
        self.graph.look_again()
        self._problems = {path: {} for path in self._problems}
        for root in list(self._kept):
            self._drop(root)
        for path in self.documents:
            self._touched.update(self.roots_of(path))

    def _drop_models_with(self, path: str, includers: set[str]) -> None:
        """A file appeared, vanished or became (un)readable: its models are built anew."""
        concerned = {path, *includers}
        for root, kept in list(self._kept.items()):
            if concerned.intersection(kept.files):
                self._drop(root)

    def _let_go_of(self, root: str) -> None:
        """A model leaves; what the collector was told to leave alone is looked at again before the next one."""
        kept = self._kept.pop(root)
        kept.study.release()
        kept.analysis.let_go()
        self._let_go = True

    def _drop(self, root: str) -> None:
        kept = self._kept.pop(root, None)
        if kept is not None:
            self._let_go = True
            kept.study.release()
            kept.analysis.let_go()
            self._earlier[root] = kept.study
        self._touched.add(root)
