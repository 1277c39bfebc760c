"""Where texts come from: files, and editor buffers laid over them. Nothing else in Wyeline opens a model file."""

from __future__ import annotations

import os
import stat

TYPE_CHECKING = False
if TYPE_CHECKING:  # a check that is answered from what was kept gets by without `typing`, and cuts no file into blocks
    from collections.abc import Callable, Iterable

    from wyeline_grammar.blocks import Block, TextFile

MAX_FILE_BYTES = 64 * 1024 * 1024
"""A larger file is refused: a model of 100,000 pieces of equipment has about 10 MB."""


class SourceError(Exception):
    """A file that cannot be read as text; ``reason`` says why in one short sentence."""

    def __init__(self, path: str, reason: str) -> None:
        super().__init__(f"{path}: {reason}")
        self.path = path
        self.reason = reason


def read_text(path: str) -> str:
    """The text of a file, line ends as they are. Raises SourceError for anything that is no readable UTF-8 text."""
    return decode(path, read_bytes(path))


def read_bytes(path: str) -> bytes:
    """The bytes of a regular file of a bearable size. Raises SourceError."""
    try:
        mode = os.stat(path).st_mode
        if stat.S_ISDIR(mode):
            raise SourceError(path, "this is a folder, not a file")
        if not stat.S_ISREG(mode):
            raise SourceError(path, "this is no regular file")
        with open(path, "rb") as file:
            data = file.read(MAX_FILE_BYTES + 1)
    except FileNotFoundError:
        raise SourceError(path, "there is no such file") from None
    except PermissionError:
        raise SourceError(path, "reading it is not permitted") from None
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        raise SourceError(path, f"it could not be read ({reason})") from None
    if len(data) > MAX_FILE_BYTES:
        raise SourceError(path, f"it is larger than {MAX_FILE_BYTES // (1024 * 1024)} MB")
    return data


def decode(path: str, data: bytes) -> str:
    """Bytes to text: UTF-8, a byte-order mark allowed. Raises SourceError."""
    if b"\0" in data[:8192]:
        hint = "it holds zero bytes: a binary file, or text in UTF-16"
        raise SourceError(path, hint + "; save it as UTF-8 text")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        reason = f"it is not UTF-8 text (byte 0x{data[error.start]:02x} on line {line}); save it as UTF-8"
        raise SourceError(path, reason) from None


def absolute(path: str | os.PathLike[str]) -> str:
    """The key of a file: absolute and normalised, links not followed."""
    return os.path.abspath(os.fspath(path))


_MARKS = ("wyeline.toml", ".git")
_SKIPPED = frozenset({"node_modules", "__pycache__"})


def workspace_of(path: str) -> str:
    """The folder that a model's includes may not leave: the nearest one above that holds ``wyeline.toml`` or
    ``.git``, else the file's own folder."""
    folder = os.path.dirname(absolute(path))
    current = folder
    while True:
        if any(os.path.exists(os.path.join(current, mark)) for mark in _MARKS):
            return current
        parent = os.path.dirname(current)
        if parent == current:
            return folder
        current = parent


def wye_files(folder: str) -> list[str]:
    """Every ``.wye`` file below a folder, hidden folders left out, in a stable order."""
    found: list[str] = []
    for base, folders, names in os.walk(folder):
        folders[:] = sorted(f for f in folders if not f.startswith(".") and f not in _SKIPPED)
        found += [os.path.join(base, name) for name in sorted(names) if name.endswith(".wye")]
    return found


def resolve_include(base: str, target: str, workspace: str) -> str:
    """The path that an include names, relative to the file ``base``.

    Raises SourceError where it is empty, absolute, on another machine, or outside ``workspace`` (links followed).
    """
    if not target.strip():
        raise SourceError(base, "the include names no file")
    if "\0" in target or target.startswith(("/", "\\")) or (len(target) > 1 and target[1] == ":"):
        raise SourceError(target, 'an include is written relative to its own file, such as "pumps.wye"')
    try:
        path = absolute(os.path.join(os.path.dirname(base), *target.replace("\\", "/").split("/")))
        real, root = _folded(os.path.realpath(path)), _folded(os.path.realpath(workspace))
        inside = os.path.commonpath([real, root]) == root
    except (OSError, ValueError):  # a character that no file name can have, another drive, a circle of links
        raise SourceError(target, "this names no file") from None
    if not inside:
        raise SourceError(target, "it lies outside the folder of this model")
    return path


def _folded(path: str) -> str:
    return os.path.normcase(path)


class Files:
    """The texts of a session, cut into blocks: read once, replaced by editor buffers where there are some.

    ``reader`` raises SourceError. A file that cannot be read is remembered as such until ``forget``.
    """

    def __init__(self, reader: Callable[[str], str] = read_text) -> None:
        self._reader = reader
        self._files: dict[str, TextFile | SourceError] = {}
        self._buffers: set[str] = set()

    def get(self, path: str) -> TextFile:
        """The file's blocks. Raises SourceError."""
        found = self._files.get(path)
        if found is None:
            from wyeline_grammar.blocks import TextFile

            try:
                found = TextFile(path, self._reader(path))
            except SourceError as error:
                found = _bare(error)
            self._files[path] = found
        if isinstance(found, SourceError):
            raise _bare(found)
        return found

    @property
    def blocks_at_hand(self) -> int:
        """How many blocks the files read so far have."""
        return sum(len(f.blocks) for f in self._files.values() if not isinstance(f, SourceError))

    def known(self, path: str) -> TextFile | None:
        """The file if it was read without error."""
        found = self._files.get(path)
        return None if isinstance(found, SourceError) else found

    def open_buffer(self, path: str, text: str) -> TextFile:
        """Lay an editor's text over the file. A BOM in front is dropped."""
        from wyeline_grammar.blocks import TextFile

        file = self._files.get(path)
        text = text.removeprefix("\ufeff")
        if isinstance(file, TextFile):
            file.replace_text(text)
        else:
            file = self._files[path] = TextFile(path, text)
        self._buffers.add(path)
        return file

    def close_buffer(self, path: str) -> None:
        """Back to what the file says."""
        self._buffers.discard(path)
        self._files.pop(path, None)

    def reload(self, path: str) -> tuple[list[Block], list[Block]] | None:
        """Read a file from disk again, an editor's buffer given up; blocks whose text stayed remain the same objects.

        Returns the blocks that went and that came, or None where it was, or has become, unreadable or unknown.
        """
        self._buffers.discard(path)
        file = self._files.pop(path, None)
        if file is None or isinstance(file, SourceError):
            return None
        try:
            changed = file.replace_text(self._reader(path))
        except SourceError as error:
            self._files[path] = _bare(error)
            return None
        self._files[path] = file
        return changed

    def forget(self, paths: Iterable[str]) -> list[str]:
        """The files changed on disk: read them again when next asked for. Buffers stay. Returns those forgotten."""
        gone = [p for p in paths if p in self._files and p not in self._buffers]
        for path in gone:
            del self._files[path]
        return gone


def _bare(error: SourceError) -> SourceError:
    """The same without its traceback: one that is kept must not keep the models of all who were told it."""
    return SourceError(error.path, error.reason)
