"""The studies of one model beside its analysis: a copy that a thread may solve, and what was found last.

The copy shares with the analysis all that is replaced and never changed, and holds the rest itself; it is brought up to
date by the event loop while no thread works on it. What was found is kept while the model moves on: a finding goes with
its statement, and whatever is shown says whether it still is to be confirmed. Nothing of the protocol library is known
here.
"""

from __future__ import annotations

import copy
from collections import Counter
from collections.abc import Callable, Iterable
from dataclasses import replace

from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding
from wyeline_linter.solved_figures import SolvedFigures

SCOPE = "study"
"""The only rules that the copy runs; all others are run by the session's own analysis."""


class PendingEdit:
    """Blocks that went and that came since an analysis was last brought up to date."""

    __slots__ = ("came", "went")

    def __init__(self) -> None:
        self.went: list[Block] = []
        self.came: list[Block] = []

    def __bool__(self) -> bool:
        return bool(self.went or self.came)

    def add(self, went: Iterable[Block], came: Iterable[Block]) -> None:
        fresh = {id(b) for b in self.came}
        gone = set()
        for block in went:
            if id(block) in fresh:
                gone.add(id(block))
            else:
                self.went.append(block)
        if gone:
            self.came = [b for b in self.came if id(b) not in gone]
        self.came += came

    def take(self) -> tuple[list[Block], list[Block]]:
        """All of it; afterwards there is none."""
        taken = self.went, self.came
        self.went, self.came = [], []
        return taken


class StillFiles(Files):
    """The texts of a session as they stood when last renewed."""

    def __init__(self, live: Files) -> None:
        super().__init__()
        self._live = live

    def get(self, path: str) -> TextFile:
        if path not in self._files:
            self._files[path] = self._still(path)
        return super().get(path)

    def renew(self) -> None:
        """Take in what has changed, also in files that were no part of the model meanwhile."""
        for path, still in list(self._files.items()):
            live = self._live.known(path)
            if live is None or isinstance(still, SourceError) or live.blocks != still.blocks:
                self._files[path] = self._still(path)

    def _still(self, path: str) -> TextFile | SourceError:
        try:
            file = copy.copy(self._live.get(path))
        except SourceError as error:
            return error.with_traceback(None)  # which would keep the frames of all callers
        file.lines, file.blocks = list(file.lines), list(file.blocks)
        return file


class Study:
    """What the studies of one model found, and how far that still holds.

    ``edits`` counts the edits of the model. ``declined``: its user wants no study of the text as it stands. ``marked``:
    figures were shown with a sign that they are being solved anew.
    """

    def __init__(self) -> None:
        self.edits = 0
        self.declined = False
        self.marked = False
        self.at_work = False
        """Whether a thread works on the copy."""
        self.copy: Analysis | None = None
        self.figures = SolvedFigures()
        self._files: StillFiles | None = None
        self._copied = 0
        """Of how many edits the copy is."""
        self._studied: int | None = None
        self._found: dict[str, list[Finding]] = {}
        self._shown_by: dict[str, set[str]] = {}
        """By file, the files with findings that speak of places in it."""
        self._versions: Counter[str] = Counter()
        self._gone: set[Block] = set()
        self._came: set[Block] = set()

    @classmethod
    def after(cls, earlier: Study, files: Files) -> Study:
        """The study of a model that was built anew: what was found before stands where its statement still does."""
        made = cls()
        made._found, made._gone, made._shown_by = earlier._found, set(earlier._gone), earlier._shown_by
        for path, found in made._found.items():
            file = files.known(path)
            there = set(file.blocks) if file is not None else set()
            made._gone |= {finding.place.block for finding in found} - there
        return made

    @property
    def settling(self) -> bool:
        """Whether the text is another one than the one that was studied, or none was."""
        return self._studied != self.edits

    @property
    def due(self) -> bool:
        """Whether a study is to be made."""
        return self.settling and not self.declined

    def edited(self, went: Iterable[Block], came: Iterable[Block]) -> None:
        """An edit of the model."""
        went, came = list(went), list(came)
        if not went and not came:
            return
        self.edits += 1
        self.declined = False
        for block in went:
            if block in self._came:  # no study has seen it
                self._came.discard(block)
            else:
                self._gone.add(block)
        self._came.update(came)
        for path in {block.file for block in (*went, *came)}:
            self._versions.update(self._shown_by.get(path, ()))

    def passed_by(self, path: str, went: Iterable[Block]) -> None:
        """An edit of a file that is no part of the model for now: what was found there goes with its statement."""
        if path in self._found:
            self._gone.update(went)

    # solving

    def prepared(self, files: Files, analysis: Analysis, build: Callable[[Files], Analysis]) -> Analysis:
        """The copy of an analysis, brought up to date; ``build`` makes it over the texts as they stand. Raises what
        that raises."""
        if self.copy is None or self._files is None:
            self._files = StillFiles(files)
            self.copy = build(self._files)
        elif self._copied != self.edits:
            self._files.renew()
            self.copy.follow(analysis)
        self._copied = self.edits
        for path in self.copy.model.files:
            self._files.get(path)
        return self.copy

    def found(self, findings: Iterable[Finding], figures: SolvedFigures) -> None:
        """The study of the text as it stands has found this."""
        before, self._found, self._shown_by = self._found, {}, {}
        for finding in findings:
            path = finding.place.file
            self._found.setdefault(path, []).append(finding)
            edits = (edit for fix in finding.fixes for edit in fix.edits)
            for file in {path, *(r.place.file for r in finding.related), *(edit.block.file for edit in edits)}:
                self._shown_by.setdefault(file, set()).add(path)
        self._versions.update(before.keys() | self._found.keys())
        self.figures = figures
        self.marked = False
        self._gone.clear()
        self._came.clear()
        self._studied = self.edits

    def release(self) -> None:
        """Let go of the copy: what was found is kept. A thread that still works on it lets go of it when it ends."""
        if self.copy is not None and not self.at_work:
            self.copy.let_go()
        self.copy = self._files = None

    # what is shown

    def findings(self, path: str) -> list[Finding]:
        """What was found in a file and still stands there, in its order: without places and fixes in what went."""
        found = self._found.get(path, [])
        if not self._gone:
            return found
        return [self._without_gone(f) for f in found if f.place.block not in self._gone]

    def version_of(self, path: str) -> int:
        """A number that is another one after an edit or a study that may have changed what is shown of a file."""
        return self._versions[path]

    def _without_gone(self, finding: Finding) -> Finding:
        related = tuple(r for r in finding.related if r.place.block not in self._gone)
        fixes = tuple(f for f in finding.fixes if not any(e.block in self._gone for e in f.edits))
        if len(related) == len(finding.related) and len(fixes) == len(finding.fixes):
            return finding
        return replace(finding, related=related, fixes=fixes)

    def stands(self, block: Block) -> bool:
        """Whether a statement of the model is one of those that were studied last."""
        return block not in self._came
