"""The two sides of a comparison: a folder, a file, or a git revision, read without touching the working tree."""

from __future__ import annotations

import os
from collections.abc import Callable
from dataclasses import dataclass

from wyeline_grammar.sources import Files, SourceError, absolute, workspace_of
from wyeline_linter.commands.roots import includes_of, roots_of
from wyeline_linter.configuration import DEFAULT, FILE_NAME, Configuration, load, load_for
from wyeline_linter.outputs.text import shown_path
from wyeline_linter.review.git import Repository, Tree


@dataclass(frozen=True, slots=True)
class Side:
    """One version: ``label`` names it, ``roots`` are (name to pair by, root file), ``workspace`` bounds includes."""

    label: str
    roots: tuple[tuple[str, str], ...]
    files: Files
    workspace: Callable[[str], str]
    configuration: Callable[[str], Configuration]
    """What ``wyeline.toml`` says of a root file. Raises ConfigurationError."""


def sides(old: str, new: str | None, model: str | None) -> tuple[Side, Side]:
    """The two sides that words of a command line mean.

    ``old`` may be a range (``main..HEAD``: those two; ``main...HEAD``: from where they parted). Without ``new``, a lone
    revision is compared with the working tree. ``model`` is the file or folder of the model within the repository,
    the current folder where it is None; behind a range, which names both sides, ``new`` can only be that. Raises
    SourceError for what cannot be read.
    """
    if new is not None and not os.path.exists(old) and is_range(old):
        if model is not None or not os.path.exists(new):
            raise SourceError(new, f"`{old}` names both sides already; the model stands behind --model")
        new, model = None, new
    if new is None and not os.path.exists(old):
        first, dots, second = _range(old)
        if not dots:
            return _of_revision(old, model), _of_path(model or ".")
        repository = Repository.around(model or ".")
        first, second = first or "HEAD", second or "HEAD"
        start = repository.parting(first, second) if dots == "..." else first
        return _of_revision(start, model, first if dots == ".." else ""), _of_revision(second, model)
    if new is None:
        raise SourceError(old, "name what to compare it with: a folder, a file or a git revision")
    return _side(old, model), _side(new, model)


def is_range(word: str) -> bool:
    """Whether a word names two revisions, as in ``main..HEAD``."""
    return bool(_range(word)[1])


def _range(word: str) -> tuple[str, str, str]:
    for dots in ("...", ".."):
        first, found, second = word.partition(dots)
        if found:
            return first, dots, second
    return word, "", ""


def _side(word: str, model: str | None) -> Side:
    return _of_path(word) if os.path.exists(word) else _of_revision(word, model)


def _of_path(path: str) -> Side:
    files = Files()
    full = absolute(path)
    folder = full if os.path.isdir(full) else os.path.dirname(full)
    roots = tuple((_relative(root, folder), root) for root in roots_of([path], files))
    return Side(shown_path(full), roots, files, workspace_of, load_for)


def _of_revision(revision: str, model: str | None, label: str = "") -> Side:
    if not revision:
        raise SourceError('""', "an empty word names no file, no folder and no revision")
    try:
        repository = Repository.around(model or ".")
    except SourceError as error:
        raise SourceError(revision, f"there is no such file or folder, and no revision either ({error})") from None
    tree = repository.tree(revision)
    target = absolute(model or ".")
    inside = repository.inside(target)
    if inside is None:
        raise SourceError(target, f"it lies outside the repository {shown_path(repository.top)}")
    files = Files(tree.text)
    roots = _roots(tree, inside, files)
    if not roots:
        where = f" below {inside}" if inside else ""
        raise SourceError(label or revision, f"no .wye file{where} in this revision")
    name = label or revision
    shown = name if name == tree.short else f"{name} ({tree.short})"

    def configuration(root: str) -> Configuration:
        path = os.path.join(tree.workspace(root), FILE_NAME)
        return load(path, tree.data(path)) if tree.has(path) else DEFAULT

    return Side(shown, roots, files, tree.workspace, configuration)


def _roots(tree: Tree, inside: str, files: Files) -> tuple[tuple[str, str], ...]:
    if inside in tree.entries:
        path = tree.path_of(inside)
        return ((os.path.basename(path), path),)
    prefix = f"{inside}/" if inside else ""
    names = [n for n in sorted(tree.entries) if n.startswith(prefix) and n.endswith(".wye") and not _hidden(n)]
    paths = [tree.path_of(name) for name in names]
    tree.prefetch(names)
    included: set[str] = set()
    for path in paths:
        included |= includes_of(path, files) - {path}
    folder = tree.path_of(inside) if inside else tree.top
    roots = [p for p in paths if p not in included] or paths[:1]
    return tuple((_relative(root, folder), root) for root in roots)


def _hidden(name: str) -> bool:
    return any(part.startswith(".") for part in name.split("/")[:-1])


def _relative(path: str, folder: str) -> str:
    return os.path.relpath(path, folder).replace(os.sep, "/")
