"""Finished findings, kept between runs of the command line: an unchanged model is answered without being read again.

An entry is a JSON file in the user's own cache folder. It holds the digest of every file that the result came from (and
the files that were looked for in vain), of the configuration, and of Wyeline itself; one difference and it is not used.
JSON is data only: a planted or torn entry can at worst be wrong about findings of files that it must name with their
digests, and an entry that other users could write to is ignored. Anything wrong with the cache is silently no cache.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import sys
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any, NamedTuple

if TYPE_CHECKING:
    from wyeline_linter.expectations import Expectation
    from wyeline_linter.findings import Finding

FORMAT = 2
MAX_ENTRY_BYTES = 32 * 1024 * 1024
MAX_ENTRIES = 200


class Kept(NamedTuple):
    """An entry that still holds: its files, its findings and expectations (built when called), the share by which
    figures of accepted findings may move, and the rules that are off."""

    files: list[str]
    findings: Callable[[], list[Finding]]
    expectations: Callable[[], list[Expectation]]
    may_move: float
    off: list[str]


def folder() -> str | None:
    """The cache folder, or None where there is no usable one (or ``WYELINE_CACHE=off``)."""
    chosen = os.environ.get("WYELINE_CACHE")
    if chosen == "off":
        return None
    if chosen:
        return chosen
    if sys.platform == "win32":
        base = os.environ.get("LOCALAPPDATA")
    else:
        home = os.path.expanduser("~")
        base = os.environ.get("XDG_CACHE_HOME") or (os.path.join(home, ".cache") if home != "~" else None)
    return os.path.join(base, "wyeline") if base else None


def digest(data: bytes) -> str:
    """The digest by which contents are compared."""
    return hashlib.sha256(data).hexdigest()


def own_fingerprint() -> str:
    """A digest of Wyeline itself: version, sizes and times of its files; a changed rule never gives a stale answer."""
    import wyeline_grammar
    import wyeline_linter

    marks: list[str] = [f"{sys.version_info[:3]} {FORMAT} {wyeline_grammar.__version__}"]
    for package in (wyeline_grammar, wyeline_linter):
        for base in package.__path__:
            _stat_all(base, marks)
    return digest("\n".join(sorted(marks)).encode())


def _stat_all(base: str, marks: list[str]) -> None:
    with os.scandir(base) as entries:
        for entry in entries:
            if entry.name == "__pycache__":
                continue
            if entry.is_dir():
                _stat_all(entry.path, marks)
            else:
                found = entry.stat()
                marks.append(f"{entry.path} {found.st_size} {found.st_mtime_ns}")


class ResultCache:
    """Entries by what was asked: root, options and configuration. ``where`` is their folder; "" keeps nothing."""

    def __init__(self, where: str | None = None) -> None:
        self.where = (where or None) if where is not None else folder()
        self._own: str | None = None

    def _path(self, asked: Sequence[str]) -> str | None:
        if self.where is None:
            return None
        return os.path.join(self.where, digest("\0".join(asked).encode("utf-8", "surrogatepass"))[:40] + ".json")

    def _fingerprint(self) -> str:
        if self._own is None:
            self._own = own_fingerprint()
        return self._own

    def load(self, asked: Sequence[str], read: Callable[[str], bytes | None]) -> Kept | None:
        """The entry for what was asked if it still holds, else None.

        ``read`` gives the bytes of a file, None where there is none.
        """
        path = self._path(asked)
        if path is None:
            return None
        try:
            if not _private(path) or os.path.getsize(path) > MAX_ENTRY_BYTES:
                return None
            with open(path, "rb") as file:
                mark, _, body = file.read().partition(b"\n")
            if mark != digest(body).encode():
                return None  # torn, or not ours
            entry = json.loads(body)
            if entry["own"] != self._fingerprint() or entry["asked"] != list(asked):
                return None
            texts: dict[str, bytes] = {}
            for name, wanted in entry["files"].items():
                data = read(name)
                if (digest(data) if data is not None else None) != wanted:
                    return None
                if data is not None:
                    texts[name] = data
            names: list[str] = entry["order"]
            records: list[list[Any]] = entry["findings"]
            fared: list[list[Any]] = entry["expectations"]
            may_move = float(entry["may_move"])
            off = [str(name) for name in entry["off"]]
        except (OSError, ValueError, KeyError, TypeError, AttributeError, RecursionError):
            return None

        def findings() -> list[Finding]:
            from wyeline_grammar.blocks import split_lines
            from wyeline_linter.finding_records import from_record

            cut: dict[str, list[str]] = {}

            def lines_of(name: str) -> list[str]:
                if name not in cut:
                    cut[name] = split_lines(texts[name].decode("utf-8-sig"))
                return cut[name]

            return [from_record(record, names, lines_of) for record in records]

        def expectations() -> list[Expectation]:
            from wyeline_linter.expectations import Expectation

            return [Expectation(names[number], *rest) for number, *rest in fared]

        return Kept(names, findings, expectations, may_move, off)

    def store(
        self,
        asked: Sequence[str],
        files: dict[str, bytes | None],
        order: Sequence[str],
        findings: Sequence[Finding],
        expectations: Sequence[Expectation] = (),
        may_move: float = 0.0,
        off: Sequence[str] = (),
    ) -> None:
        """Keep a result. ``files`` are the bytes that every file had, None for those that were not there."""
        from wyeline_linter.finding_records import to_record

        path = self._path(asked)
        if path is None or self.where is None:
            return
        numbers = {name: i for i, name in enumerate(order)}
        try:
            entry = {
                "own": self._fingerprint(),
                "asked": list(asked),
                "files": {name: (digest(data) if data is not None else None) for name, data in files.items()},
                "order": list(order),
                "findings": [to_record(f, numbers.__getitem__) for f in findings],
                "may_move": may_move,
                "off": list(off),
                "expectations": [[numbers[e.path], *e[1:]] for e in expectations],
            }
            body = json.dumps(entry, separators=(",", ":")).encode()
            data = digest(body).encode() + b"\n" + body
            if len(data) > MAX_ENTRY_BYTES:
                return
            os.makedirs(self.where, mode=0o700, exist_ok=True)
            import tempfile  # costs as much as reading an entry, which is what most runs do

            handle, temporary = tempfile.mkstemp(dir=self.where, suffix=".tmp")
            try:
                with os.fdopen(handle, "wb") as file:
                    file.write(data)
                os.replace(temporary, path)
            except OSError:
                with contextlib.suppress(OSError):
                    os.unlink(temporary)
            self._trim()
        except (OSError, KeyError, ValueError):
            return

    def _trim(self) -> None:
        """Keep the newest entries only."""
        assert self.where is not None
        with os.scandir(self.where) as entries:
            found = [(e.stat().st_mtime_ns, e.path) for e in entries if e.name.endswith(".json")]
        for _, path in sorted(found)[:-MAX_ENTRIES]:
            with contextlib.suppress(OSError):
                os.unlink(path)


def _private(path: str) -> bool:
    """Whether only this user can have written the file (and the folder it lies in)."""
    getuid = getattr(os, "getuid", None)
    if getuid is None:  # Windows: the folder lies in the user's own profile
        return os.path.isfile(path)
    own = getuid()
    for each in (path, os.path.dirname(path)):
        found = os.lstat(each)
        if found.st_uid != own or found.st_mode & 0o022:
            return False
    return True
