"""Which models a path means: a file is a root itself; a folder gives every ``.wye`` file that no other includes."""

from __future__ import annotations

import os
from collections.abc import Iterable

from wyeline_grammar.sources import Files, SourceError, absolute, resolve_include, workspace_of, wye_files
from wyeline_linter.outputs.text import shown_path


def roots_of(paths: Iterable[str], files: Files) -> list[str]:
    """Root files in the order given. Raises SourceError for a path that is not there, or a folder without models."""
    found: list[str] = []
    for path in paths:
        full = existing(path)
        if os.path.isdir(full):
            roots = _roots_in(full, files)
            if not roots:
                raise SourceError(path, "no .wye file in this folder")
            found += roots
        else:
            found.append(full)
    return list(dict.fromkeys(found))


def existing(path: str) -> str:
    """The absolute path of a file or folder that a word of the command line names. Raises SourceError where none is
    there: an empty word (a variable of a script that is not set) is not the current folder."""
    if not path:
        raise SourceError('""', "an empty word names no file and no folder")
    full = absolute(path)
    if not os.path.exists(full):
        linked = os.path.islink(full)
        raise SourceError(path, "this link leads to no file" if linked else "there is no such file")
    return full


def one_root(path: str, files: Files) -> str:
    """The one model that a path means. Raises SourceError where it means none, or several."""
    roots = roots_of([path], files)
    if len(roots) > 1:
        raise SourceError(path, f"this folder holds {len(roots)} models; name one: {', '.join(map(shown_path, roots))}")
    return roots[0]


def _roots_in(folder: str, files: Files) -> list[str]:
    paths = wye_files(folder)
    included: set[str] = set()
    for path in paths:
        included |= includes_of(path, files) - {path}
    roots = [p for p in paths if p not in included]
    return roots or paths[:1]  # files that all include each other: start somewhere, the circle is a finding


def includes_of(path: str, files: Files) -> set[str]:
    """The files that a file includes itself; unreadable ones are left out."""
    from wyeline_grammar.includes import included

    found: set[str] = set()
    try:
        blocks = files.get(path).blocks
    except SourceError:
        return found
    workspace = workspace_of(path)
    for block in blocks:
        target = included(block)
        if target is not None:
            try:
                found.add(resolve_include(path, target, workspace))
            except SourceError:
                continue
    return found
