"""A model as the live page shows it: its files as they are now, an editor's texts in the place of those it holds open.

One thread looks for changes; those of the page's server draw. Nothing is judged before a browser asks for it.
"""

from __future__ import annotations

import gc
import os
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from threading import Lock
from types import MappingProxyType
from typing import TYPE_CHECKING

from wyeline_grammar.sources import Files, SourceError, read_text, workspace_of
from wyeline_linter.configuration import find, load_for
from wyeline_linter.network import NoSuchStateError

if TYPE_CHECKING:
    from wyeline_grammar.blocks import TextFile
    from wyeline_linter.analysis import Analysis
    from wyeline_linter.reports.package import Package

NO_TEXTS: Mapping[str, str] = MappingProxyType({})


class LiveModel:
    """The model of a root file, in a switch state (None: the normal one)."""

    def __init__(self, root: str, scenario: str | None = None, texts: Mapping[str, str] = NO_TEXTS) -> None:
        self.root, self._scenario, self._texts = root, scenario, texts
        self._package: Package | None = None
        self._standing: _Standing | None = None
        self._stale = True
        self._guard, self._drawing = Lock(), Lock()
        self._seen = {root: _stamp(root, texts)}

    @property
    def files(self) -> frozenset[str]:
        """The paths that the model was read from, and those that it names in vain."""
        with self._guard:
            return frozenset(self._seen)

    def look(self, texts: Mapping[str, str] = NO_TEXTS) -> bool:
        """Whether a file of the model is another one than at the last look.

        ``texts`` are those of an editor's open documents, by path; files that are not among them are read from disk.
        """
        with self._guard:
            self._texts = texts
            seen = {path: _stamp(path, texts) for path in self._seen}
            if seen == self._seen:
                return False
            self._seen, self._stale = seen, True
            return True

    def show(self, scenario: str | None) -> bool:
        """Show another switch state from now on. Whether it is another one."""
        with self._guard:
            changed = scenario != self._scenario
            self._scenario = scenario
            self._stale |= changed
            return changed

    def renew(self) -> Package:
        """What there is to show of the files as they are now.

        Raises SourceError where the root cannot be read, the configuration cannot be used, or the model has no such
        switch state.
        """
        with self._drawing:
            return self._newest()

    def page(self) -> str:
        """The whole page; of the model as it was last where there is nothing newer."""
        from wyeline_linter.reports.html_page import page_html

        with self._drawing, _uncollected():
            try:
                package = self._newest()
            except SourceError:
                if self._package is None:
                    raise
                package = self._package
            return page_html([package], live=True)

    def edition(self) -> str:
        """The part of the page that changes. Raises as :meth:`renew` does."""
        from wyeline_linter.reports.html_page import edition_html

        with self._drawing, _uncollected():
            return edition_html(self._newest())

    def _newest(self) -> Package:
        from wyeline_linter.reports.package import DIAGRAM, TABLE_KINDS, WORKING, Package, Wishes

        with self._guard:
            texts, scenario, stale = self._texts, self._scenario, self._stale
        if self._package is not None and not stale:
            return self._package
        with self._guard:
            self._stale = False
        standing, self._standing = self._standing, None
        try:
            if standing is None or not standing.takes_in(scenario, texts):
                standing = _Standing(self.root, scenario, texts)
        except Exception:
            with self._guard:
                self._stale = True
            raise
        read = standing.read
        with self._guard:  # what was seen of a file before stays: it may have changed while the model was judged
            self._seen = read | {path: stamp for path, stamp in self._seen.items() if path in read}
        parts = frozenset({DIAGRAM, WORKING, *(kind.name for kind in TABLE_KINDS)})
        made = self._package.made if self._package is not None else None
        self._package = Package(standing.analysis, Wishes(parts), made=made)
        self._standing = standing
        return self._package


class _Standing:
    """A model that is judged, with what was read for it, so that edits of its files can be taken in."""

    def __init__(self, root: str, scenario: str | None, texts: Mapping[str, str]) -> None:
        self.root, self.scenario, self.texts = root, scenario, texts
        self.read: dict[str, object] = {}
        """Every path that was read, or looked for in vain, with a stamp that differs when the file does."""
        self.configuration = find(root)
        stamp = _stamp(self.configuration, NO_TEXTS) if self.configuration is not None else None
        self.analysis = analysed(root, scenario, self._reader)
        if self.configuration is not None:
            self.read[self.configuration] = stamp

    def _reader(self, path: str) -> str:
        self.read[path] = _stamp(path, self.texts)
        return text_of(path, self.texts)

    def takes_in(self, scenario: str | None, texts: Mapping[str, str]) -> bool:
        """Make the model that of the files as they are now. False, and nothing done, where it has to be judged from the
        start: another configuration, a file that came or went or cannot be read, a switch state that an edit may take
        away."""
        analysis, files = self.analysis, self.analysis.files
        if scenario is not None or self.scenario is not None or find(self.root) != self.configuration:
            return False
        if workspace_of(self.root) != analysis.model.workspace:
            return False
        changed: list[tuple[TextFile, str]] = []
        stamps = {path: _stamp(path, NO_TEXTS if path == self.configuration else texts) for path in self.read}
        for path, stamp in stamps.items():
            if stamp == self.read[path]:
                continue
            file = files.known(path)
            if file is None or path == self.configuration:
                return False
            try:
                changed.append((file, text_of(path, texts)))
            except SourceError:
                return False
        self.texts, self.read = texts, stamps
        for file, text in changed:
            blocks = file.replace_text(text)
            if file.path in analysis.model.files:  # else it is not included any more, or not yet again
                analysis.edited(*blocks)
        return True


def text_of(path: str, texts: Mapping[str, str]) -> str:
    """The text of a file: that of an editor which holds it open, else what is on disk. Raises SourceError."""
    return texts[path] if path in texts else read_text(path)


def analysed(root: str, scenario: str | None, reader: Callable[[str], str]) -> Analysis:
    """A model judged as ``reader`` gives its files; nothing is shared with another analysis. Raises SourceError."""
    from wyeline_linter.analysis import Analysis

    try:
        return Analysis(root, Files(reader), workspace_of(root), scenario, load_for(root)).trusted()
    except NoSuchStateError:
        raise SourceError(root, f"this model has no scenario `{scenario}`") from None


@contextmanager
def _uncollected() -> Iterator[None]:
    """While a page is made, garbage waits: looking through all that is made costs more than it frees."""
    collecting = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if collecting:
            gc.enable()


def _stamp(path: str, texts: Mapping[str, str]) -> object:
    if path in texts:
        return texts[path]
    try:
        status = os.stat(path)
    except OSError:
        return None
    return status.st_mtime_ns, status.st_size, status.st_ino
