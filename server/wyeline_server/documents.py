"""Names of documents: the one place where URIs and the keys of files meet.

A document has one key however its URI is spelt: the absolute path of its file, or, where it has no file yet, a path
of its own beside the files of the workspace, so that its includes and its messages read as if it were saved there.
"""

from __future__ import annotations

import ntpath
import os
import posixpath
import re
from urllib.parse import quote, unquote, urlsplit

_DRIVE = re.compile(r"/?([A-Za-z]):(?=[/\\]|$)")


def path_of_uri(uri: str, windows: bool = os.name == "nt") -> str | None:
    """The absolute path that a ``file:`` URI names; None for any other URI."""
    parts = urlsplit(uri)
    if parts.scheme.lower() != "file":
        return None
    path = unquote(parts.path)
    if "\0" in path:
        return None
    if not windows:
        return posixpath.normpath(path or "/")
    drive = _DRIVE.match(path)
    if drive:
        path = f"{drive[1].upper()}:{path[drive.end() :]}"
    elif parts.netloc and parts.netloc.lower() != "localhost":
        path = f"//{unquote(parts.netloc)}{path}"
    return ntpath.normpath(path)


def uri_of_path(path: str, windows: bool = os.name == "nt") -> str:
    """The ``file:`` URI of an absolute path."""
    if not windows:
        return "file://" + quote(os.fsencode(path), safe="/~!$&'()*+,;=@:")
    plain = path.replace("\\", "/")
    if plain.startswith("//"):
        host, _, rest = plain[2:].partition("/")
        return f"file://{quote(host)}/{quote(rest)}"
    drive = _DRIVE.match(plain)
    return f"file:///{drive[1].lower()}%3A{quote(plain[drive.end() :])}" if drive else "file:///" + quote(plain)


class DocumentNames:
    """Keys of documents, and the URI by which the client knows each."""

    def __init__(self) -> None:
        self._uris: dict[str, str] = {}
        self._keys: dict[str, str] = {}

    def key(self, uri: str, folder: str = "") -> str:
        """The key of a document; ``folder`` is where a document without file is taken to stand."""
        path = path_of_uri(uri)
        if path is not None:
            return path
        key = self._keys.get(uri)
        if key is None:
            name = re.sub(r"[^\w.-]+", "-", unquote(uri)).strip("-") or "unsaved"
            key = self._keys[uri] = os.path.join(folder or os.getcwd(), name)
            self._uris[key] = uri
        return key

    def uri(self, key: str) -> str:
        """The URI of a document, as its client spells it where it has done so."""
        return self._uris.get(key) or uri_of_path(key)

    def opened(self, key: str, uri: str) -> None:
        """From now on the document is called by this URI."""
        self._uris[key] = uri

    def closed(self, key: str) -> None:
        """The document is called by its file's URI again; one without file keeps its own."""
        if path_of_uri(self._uris.get(key, "")) is not None:
            del self._uris[key]

    def saved(self, key: str) -> bool:
        """Whether the document is a file (or may be one), not only a buffer of the editor."""
        uri = self._uris.get(key)
        return uri is None or path_of_uri(uri) is not None
