"""Which files of a workspace include which: it tells the root files of the models that a file belongs to."""

from __future__ import annotations

import os
from collections.abc import Iterable

from wyeline_grammar.sources import Files, absolute, workspace_of
from wyeline_linter.commands.roots import includes_of

MAX_FOLDERS = 20_000
"""No workspace of models has more; a home folder opened by mistake has."""
_SKIPPED = frozenset({"node_modules", "__pycache__", "site-packages"})


def wye_files(folder: str, deep: bool = True) -> list[str]:
    """The ``.wye`` files in and below a folder, hidden folders left out; empty where the folder has vanished."""
    found: list[str] = []
    for count, (base, folders, names) in enumerate(os.walk(folder)):
        folders[:] = sorted(f for f in folders if not f.startswith(".") and f not in _SKIPPED) if deep else []
        found += [os.path.join(base, name) for name in sorted(names) if name.endswith(".wye")]
        if count >= MAX_FOLDERS:
            break
    return found


class IncludeGraph:
    """Includes by file, read when first asked for and kept under edits."""

    def __init__(self, files: Files) -> None:
        self._files = files
        self._includes: dict[str, set[str]] = {}
        self._scanned: dict[str, bool] = {}
        """Folders that were read, and whether with all that lies below."""
        self._looked_around: set[str] = set()
        self._includers: dict[str, set[str]] | None = None
        """By file, those that include it; None where it is to be made anew."""

    def scan(self, folder: str, deep: bool = True) -> None:
        """Read every file of a folder once; later changes arrive by ``changed`` and ``gone``."""
        if self._scanned.get(folder, False) or (folder in self._scanned and not deep):
            return
        self._scanned[folder] = deep
        for path in wye_files(folder, deep):
            self.add(absolute(path))

    def scan_around(self, path: str, folders: Iterable[str]) -> None:
        """Read the files that may include this one: of its workspace folder, else of its model's folder. Once: what
        decides that is looked at again after ``look_again``."""
        if path in self._looked_around:
            return
        self._looked_around.add(path)
        inside = [f for f in folders if is_inside(path, f)]
        if inside:
            self.scan(max(inside, key=len))
            return
        own, marked = os.path.dirname(path), workspace_of(path)
        self.scan(marked, deep=marked != own)

    def look_again(self) -> None:
        """Workspace folders, or the files that mark a model's folder, may have changed."""
        self._looked_around.clear()

    def forget(self, folder: str) -> None:
        """A workspace folder has gone."""
        self._scanned.pop(folder, None)

    def add(self, path: str) -> None:
        if path not in self._includes:
            self.changed(path)

    def changed(self, path: str) -> None:
        """The file's includes may have changed."""
        found = includes_of(path, self._files)
        if found != self._includes.get(path):
            self._includers = None
        self._includes[path] = found

    def gone(self, path: str) -> None:
        if self._includes.pop(path, None):
            self._includers = None

    def files(self) -> list[str]:
        return sorted(self._includes)

    def includers(self, path: str) -> set[str]:
        """The files that include this one themselves."""
        if self._includers is None:
            self._includers = {}
            for other, included in self._includes.items():
                for target in included - {other}:
                    self._includers.setdefault(target, set()).add(other)
        return self._includers.get(path, set())

    def roots_of(self, path: str) -> list[str]:
        """The files that include this one, at any depth, and are included by none; the file itself where it is one.

        Files that only include each other in a circle have the first of them as root, as on the command line.
        """
        above = {path}
        pending = [path]
        while pending:
            for other in self.includers(pending.pop()):
                if other not in above:
                    above.add(other)
                    pending.append(other)
        roots = sorted(p for p in above if not self.includers(p))
        return roots or [min(above)]

    def all_roots(self) -> list[str]:
        """The root files of every model known."""
        included = {p for path, targets in self._includes.items() for p in targets if p != path}
        roots = {p for p in self._includes if p not in included}
        reached: set[str] = set()
        for root in sorted(roots):
            reached |= self._below(root)
        for path in self.files():
            if path not in reached:
                roots.add(path)
                reached |= self._below(path)
        return sorted(roots)

    def _below(self, path: str) -> set[str]:
        found = {path}
        pending = [path]
        while pending:
            for other in self._includes.get(pending.pop(), ()):
                if other not in found:
                    found.add(other)
                    pending.append(other)
        return found


def is_inside(path: str, folder: str) -> bool:
    """Whether a path lies in or below a folder."""
    return path == folder or path.startswith(folder.rstrip("/\\") + os.sep)
