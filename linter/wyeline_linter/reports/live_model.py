"""A model as the live page shows it: its files as they are now, an editor's texts in the place of those it holds open.

One thread looks for changes; those of the page's server draw. Nothing is judged before a browser asks for it.
"""

from __future__ import annotations

import gc
import os
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from threading import Lock
from types import MappingProxyType
from typing import TYPE_CHECKING

from wyeline_grammar.sources import Files, SourceError, read_text, workspace_of
from wyeline_linter.configuration import find, load_for
from wyeline_linter.network import NoSuchStateError

if TYPE_CHECKING:
    from wyeline_linter.analysis import Analysis
    from wyeline_linter.reports.package import Package

NO_TEXTS: Mapping[str, str] = MappingProxyType({})


class LiveModel:
    """The model of a root file, in a switch state (None: the normal one)."""

    def __init__(self, root: str, scenario: str | None = None, texts: Mapping[str, str] = NO_TEXTS) -> None:
        self.root, self._scenario, self._texts = root, scenario, texts
        self._package: Package | None = None
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
        read: dict[str, object] = {}
        try:
            analysis = analysed(self.root, scenario, texts, read)
        except SourceError:
            with self._guard:
                self._stale = True
            raise
        configuration = find(self.root)
        if configuration is not None:
            read[configuration] = _stamp(configuration, NO_TEXTS)
        with self._guard:  # what was seen of a file before stays: it may have changed while the model was judged
            self._seen = read | {path: stamp for path, stamp in self._seen.items() if path in read}
        parts = frozenset({DIAGRAM, WORKING, *(kind.name for kind in TABLE_KINDS)})
        self._package = Package(analysis, Wishes(parts))
        return self._package


def analysed(
    root: str, scenario: str | None, texts: Mapping[str, str], read: dict[str, object] | None = None
) -> Analysis:
    """A model judged as it stands, with ``texts`` in the place of files; nothing is shared with another analysis.

    ``read`` takes up what was read, each path with a stamp that differs when the file does. Raises SourceError.
    """
    from wyeline_linter.analysis import Analysis

    def reader(path: str) -> str:
        if read is not None:
            read[path] = _stamp(path, texts)
        return texts[path] if path in texts else read_text(path)

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
