"""Files of a git revision, read from its objects: nothing is checked out and no file of the user's is touched."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterable
from typing import NamedTuple

from wyeline_grammar.sources import MAX_FILE_BYTES, SourceError, absolute, decode

_BLOB_MODES = frozenset({"100644", "100755"})
_NAMES_A_REPOSITORY = frozenset({"GIT_DIR", "GIT_WORK_TREE", "GIT_COMMON_DIR", "GIT_INDEX_FILE", "GIT_PREFIX"})
"""What git sets for its hooks: it may mean another repository than the one that the model lies in."""


class Entry(NamedTuple):
    """A file of a tree: its mode, object and size in bytes."""

    mode: str
    object_id: str
    size: int


class Repository:
    """A repository on this machine, named by its top folder."""

    def __init__(self, top: str) -> None:
        self.top = top

    @classmethod
    def around(cls, path: str) -> Repository:
        """The repository that a path lies in, even where the path itself is gone. Raises SourceError."""
        folder = absolute(path)
        while not os.path.isdir(folder) and os.path.dirname(folder) != folder:
            folder = os.path.dirname(folder)
        top = _run(folder, "rev-parse", "--show-toplevel").decode("utf-8", "surrogateescape").rstrip("\r\n")
        return cls(os.path.abspath(top))

    def inside(self, path: str) -> str | None:
        """A path of this machine as git names it: from the top, with ``/``; empty for the top; None outside."""
        try:
            relative = os.path.relpath(os.path.realpath(path), os.path.realpath(self.top)).replace(os.sep, "/")
        except ValueError:  # another drive
            return None
        if relative == ".":
            return ""
        return None if relative == ".." or relative.startswith("../") else relative

    def tree(self, revision: str) -> Tree:
        """The files of a revision. Raises SourceError where there is no such revision."""
        commit = self.commit(revision)
        listing = _run(self.top, "ls-tree", "-r", "-l", "-z", "--full-tree", commit)
        entries: dict[str, Entry] = {}
        for line in listing.decode("utf-8", "surrogateescape").split("\0"):
            head, tab, name = line.partition("\t")
            if tab:
                mode, _, object_id, size = head.split()
                entries[name] = Entry(mode, object_id, int(size) if size.isdigit() else 0)
        return Tree(self.top, commit[:10], entries)

    def commit(self, revision: str) -> str:
        """The full id of the commit that a revision means. Raises SourceError."""
        if not revision or revision.startswith("-"):
            raise SourceError(revision, "this is neither a file nor a folder, and no revision can be called that")
        try:
            found = _run(self.top, "rev-parse", "--verify", "--quiet", "--end-of-options", f"{revision}^{{commit}}")
        except SourceError:
            raise SourceError(revision, "there is no such file or folder, and git knows no such revision") from None
        return found.decode("ascii").strip()

    def parting(self, first: str, second: str) -> str:
        """The newest commit that two revisions have in common. Raises SourceError."""
        try:
            found = _run(self.top, "merge-base", self.commit(first), self.commit(second))
        except SourceError as error:
            if error.path != "git":
                raise
            raise SourceError(f"{first}...{second}", "these two have no commit in common") from None
        return found.decode("ascii").strip()[:10]


class Tree:
    """The files of one revision: ``entries`` by name from the top."""

    def __init__(self, top: str, short: str, entries: dict[str, Entry]) -> None:
        self.top = top
        self.short = short
        self.entries = entries
        self._names = {self.path_of(name): name for name in entries}
        self._data: dict[str, bytes] = {}

    def path_of(self, name: str) -> str:
        """Where a file of the tree would lie on this machine."""
        return os.path.join(self.top, *name.split("/"))

    def has(self, path: str) -> bool:
        """Whether the revision has a file where this path of the machine points."""
        return path in self._names

    def text(self, path: str) -> str:
        """The text of a file of the revision. Raises SourceError."""
        return decode(path, self.data(path))

    def data(self, path: str) -> bytes:
        """The bytes of a file of the revision. Raises SourceError."""
        name = self._names.get(path)
        if name is None:
            raise SourceError(path, "there is no such file in this revision")
        entry = self.entries[name]
        if entry.mode not in _BLOB_MODES:
            raise SourceError(path, "this is no regular file in this revision")
        if entry.size > MAX_FILE_BYTES:
            raise SourceError(path, f"it is larger than {MAX_FILE_BYTES // (1024 * 1024)} MB")
        if entry.object_id not in self._data:
            self.prefetch([name])
        return self._data[entry.object_id]

    def prefetch(self, names: Iterable[str]) -> None:
        """Read many files in one go. Raises SourceError where git fails."""
        found = (self.entries[n] for n in names)
        wanted = dict.fromkeys(e.object_id for e in found if e.mode in _BLOB_MODES and e.size <= MAX_FILE_BYTES)
        ids = [i for i in wanted if i not in self._data]
        if not ids:
            return
        answer = _run(self.top, "cat-file", "--batch", said="".join(f"{i}\n" for i in ids).encode("ascii"))
        at = 0
        for object_id in ids:
            end = answer.index(b"\n", at)
            words = answer[at:end].split()
            if len(words) != 3:
                raise SourceError("git", f"the object {object_id} is missing from the repository")
            size = int(words[2])
            self._data[object_id] = answer[end + 1 : end + 1 + size]
            at = end + 1 + size + 1

    def workspace(self, path: str) -> str:
        """The folder that the includes of a root file may not leave: the nearest with ``wyeline.toml``, or the top."""
        folder = os.path.dirname(path)
        while folder != self.top and len(folder) > len(self.top):
            if os.path.join(folder, "wyeline.toml") in self._names:
                return folder
            folder = os.path.dirname(folder)
        return self.top


def _program() -> str:
    """How git is started: never a program of that name beside the model, which Windows would start before any other."""
    if sys.platform != "win32":
        return "git"
    folders = [folder for folder in os.environ.get("PATH", "").split(os.pathsep) if os.path.isabs(folder)]
    found = (os.path.join(folder, "git.exe") for folder in folders)
    program = next(filter(os.path.isfile, found), None)
    if program is None:
        raise SourceError("git", "it could not be started (there is no git.exe in the folders of the PATH)")
    return program


def _run(folder: str, *words: str, said: bytes | None = None) -> bytes:
    own = {name: value for name, value in os.environ.items() if name not in _NAMES_A_REPOSITORY}
    environment = {**own, "GIT_OPTIONAL_LOCKS": "0", "LC_ALL": "C"}
    try:
        done = subprocess.run(
            [_program(), "-C", folder, *words],
            input=said,
            stdin=subprocess.DEVNULL if said is None else None,
            capture_output=True,
            env=environment,
            check=False,
        )
    except OSError as error:
        raise SourceError("git", f"it could not be started ({error.strerror or error})") from None
    if done.returncode != 0:
        reason = done.stderr.decode("utf-8", "replace").strip().splitlines()
        raise SourceError("git", reason[0] if reason else f"`git {words[0]}` failed")
    return done.stdout
