"""Models that stand between the runs of a watch: what changed in their files is taken in, all else stays as judged."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from wyeline_grammar.sources import Files, SourceError, decode, read_bytes, workspace_of
from wyeline_linter.analysis import Analysis


class Standing(NamedTuple):
    """A model as it was last judged: what was asked, its texts, and every file that was looked at with its bytes, None
    where it was not there."""

    asked: Sequence[str]
    analysis: Analysis
    files: Files
    seen: dict[str, bytes | None]


class StandingModels:
    """The last judgement of each root."""

    def __init__(self) -> None:
        self._models: dict[str, Standing] = {}

    def keep(self, root: str, standing: Standing) -> None:
        self._models[root] = standing

    def renewed(self, root: str, asked: Sequence[str]) -> Standing | None:
        """The model brought up to date with its files; None where it has to be judged from the start: another question,
        a file that came, went or cannot be read, a scenario that is gone."""
        standing = self._models.pop(root, None)
        if standing is None or standing.asked != asked or standing.analysis.model.workspace != workspace_of(root):
            return None
        try:
            for path, before in list(standing.seen.items()):
                if not _taken_in(standing, path, before):
                    return None
        except (SourceError, KeyError):
            return None
        self._models[root] = standing
        return standing


def _taken_in(standing: Standing, path: str, before: bytes | None) -> bool:
    """Take a file's change into the model, if it has changed; False where that cannot be done. Raises SourceError."""
    try:
        now = read_bytes(path)
    except SourceError:
        return before is None
    if now == before:
        return True
    file = standing.files.known(path)
    if before is None or file is None:
        return False
    changed = file.replace_text(decode(path, now))
    standing.seen[path] = now
    if path in standing.analysis.model.files:  # else it is not included any more, or not yet again
        standing.analysis.edited(*changed)
    return True
