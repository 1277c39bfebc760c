"""The folder where finished work is kept between runs, and when something from it is believed.

An entry is one file: a digest of its body, a line end, the body. Bodies are plain data (JSON, or texts between zero
bytes). An entry that other users could write to, that is torn, or too large, is as if it were not there; a folder that
cannot be written keeps nothing. This module is imported by every run of the command line and imports next to nothing.
"""

from __future__ import annotations

import os
import sys

try:
    from _blake2 import blake2b  # what hashlib gives, which loads a cryptographic library that no check needs
except ImportError:
    from hashlib import blake2b

FORMAT = 3
MAX_ENTRY_BYTES = 32 * 1024 * 1024
MAX_ENTRIES = 400
KINDS = (".json", ".told")
"""How names of entries end."""
_HALF = ".wyeline-"
"""How the names of entries begin that are being written."""
_NAME_DIGITS = 40


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
    """The digest by which contents are compared, 64 hexadecimal digits."""
    return blake2b(data, digest_size=32).hexdigest()


def name_of(asked: tuple[str, ...], kind: str) -> str:
    """The file name of the entry for what was asked."""
    return digest("\0".join(asked).encode("utf-8", "surrogatepass"))[:_NAME_DIGITS] + kind


_own = ""


def own_fingerprint() -> str:
    """A digest of Wyeline itself: interpreter, version, sizes and times of its files; a changed rule never gives a
    stale answer. It is that of what runs here: an update that comes under ``--watch`` does
    not count yet."""
    global _own
    if not _own:
        _own = _fingerprint_now()
    return _own


def _fingerprint_now() -> str:
    import wyeline_grammar
    import wyeline_linter

    marks: list[object] = [sys.version_info[:3], sys.implementation.name, FORMAT, wyeline_grammar.__version__]
    for package in (wyeline_grammar, wyeline_linter):
        for base in package.__path__:
            _stat_all(base, marks)
    return digest(repr(marks).encode("utf-8", "surrogatepass"))


def _stat_all(base: str, marks: list[object]) -> None:
    folders: list[str] = []
    files: list[tuple[str, int, int]] = []
    with os.scandir(base) as entries:
        for entry in entries:
            if entry.name == "__pycache__":
                continue
            try:
                if entry.is_dir():
                    folders.append(entry.path)
                else:
                    found = entry.stat()
                    files.append((entry.name, found.st_size, found.st_mtime_ns))
            except FileNotFoundError:  # some editor's file of a moment
                continue
    marks += (base, sorted(files))
    for each in sorted(folders):
        _stat_all(each, marks)


def read_entry(where: str, name: str) -> bytes | None:
    """The body of an entry; None where there is none to be believed."""
    path = os.path.join(where, name)
    try:
        if not _private(path) or os.path.getsize(path) > MAX_ENTRY_BYTES:
            return None
        with open(path, "rb") as file:
            mark, _, body = file.read().partition(b"\n")
    except (OSError, ValueError):
        return None
    return body if mark == digest(body).encode() else None  # else torn, or not ours


def write_entry(where: str, name: str, body: bytes) -> None:
    """Keep a body under a name, whole or not at all."""
    if len(body) > MAX_ENTRY_BYTES - 100:
        return
    try:
        os.makedirs(where, mode=0o700, exist_ok=True)
        import tempfile  # costs as much as reading an entry, which is what most runs do

        handle, temporary = tempfile.mkstemp(dir=where, prefix=_HALF, suffix=".tmp")
        try:
            with os.fdopen(handle, "wb") as file:
                file.write(digest(body).encode() + b"\n" + body)
            os.replace(temporary, os.path.join(where, name))
        except OSError:
            _remove(temporary)
        _trim(where)
    except (OSError, ValueError):
        return


def _trim(where: str) -> None:
    """Keep the newest entries only, and for a day what a kill has left half written. Whatever else somebody keeps in
    the folder is not ours."""
    kept: list[tuple[int, str]] = []
    half: list[tuple[int, str]] = []
    with os.scandir(where) as entries:
        for entry in entries:
            into = kept if _is_entry(entry.name) else half if entry.name.startswith(_HALF) else None
            if into is None:
                continue
            try:
                into.append((entry.stat().st_mtime_ns, entry.path))
            except FileNotFoundError:  # another run was quicker
                continue
    kept.sort()
    yesterday = kept[-1][0] - 86_400 * 10**9 if kept else 0
    for _, path in kept[:-MAX_ENTRIES]:
        _remove(path)
    for marked, path in half:
        if marked < yesterday:
            _remove(path)


def _is_entry(name: str) -> bool:
    stem, dot, kind = name.partition(".")
    return len(stem) == _NAME_DIGITS and dot + kind in KINDS and not stem.strip("0123456789abcdef")


def _remove(path: str) -> None:
    try:
        os.unlink(path)
    except OSError:
        return


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
