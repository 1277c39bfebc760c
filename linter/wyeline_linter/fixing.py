"""Fixes applied: whole or not at all, pass by pass, and never where one makes things worse."""

from __future__ import annotations

import contextlib
import os
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.lines import LineIndex
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import EquipmentStatement, FeederStatement
from wyeline_grammar.sources import Files, SourceError, read_text
from wyeline_grammar.vocabulary import SOURCES
from wyeline_linter.analysis import Analysis
from wyeline_linter.configuration import DEFAULT, Configuration
from wyeline_linter.edits_in_columns import in_columns
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity

MAX_PASSES = 10


class OverlapError(Exception):
    """Two fixes want the same stretch of text."""


def apply_edits(text: str, edits: Sequence[Edit]) -> str:
    """The text of one file after edits of its blocks. The file's own line ends are kept, and lines that were set in
    the fixed columns stay set.

    Raises OverlapError where two edits touch the same stretch.
    """
    index = LineIndex(text)
    newline = "\r\n" if "\r\n" in text else ("\r" if "\r" in text and "\n" not in text else "\n")
    spans = sorted(
        (
            index.offset(e.block.first_line + e.line, e.start),
            index.offset(e.block.first_line + e.end_line, e.end),
            i,
            e.text.replace("\n", newline),
        )
        for i, e in enumerate(in_columns(edits))
    )
    parts: list[str] = []
    at = 0
    for start, end, _, new in spans:
        if start < at:
            raise OverlapError
        parts += [text[at:start], new]
        at = end
    return "".join([*parts, text[at:]])


@dataclass(slots=True)
class Outcome:
    """What fixing did: new texts by file, and titles of what was applied."""

    texts: dict[str, str] = field(default_factory=dict)
    applied: list[str] = field(default_factory=list)
    thrown_away: bool = False
    left_to_choose: int = 0
    """Findings whose fixes feed something from elsewhere, or take a device away, so that somebody has to choose."""


class Chosen(NamedTuple):
    """Fixes to apply together, and how many findings wait for somebody to choose."""

    fixes: list[Fix]
    left: int


def choose(findings: Iterable[Finding], allowed: frozenset[Safety]) -> Chosen:
    """The first fix of each finding that may be applied; of fixes that overlap, the earlier finding's.

    What takes something off its supply, or chooses one of several boards for it, is left: no order of ours knows which
    load belongs on which board.
    """
    taken: dict[Block, list[tuple[tuple[int, int], tuple[int, int]]]] = {}
    chosen: list[Fix] = []
    left = 0
    for finding in findings:
        if finding.allowed is not None or not finding.fixes:
            continue
        fix = next((f for f in finding.fixes if f.safety in allowed), None)
        if fix is None or fix is not finding.fixes[0] or not fix.edits:
            continue
        if fix.safety is not Safety.SAFE and needs_a_choice(fix, alone=len(finding.fixes) == 1):
            left += 1
            continue
        spans = [(e.block, (e.line, e.start), (e.end_line, e.end)) for e in fix.edits]
        if any(
            start <= other_end and other_start <= end
            for block, start, end in spans
            for other_start, other_end in taken.get(block, ())
        ):
            continue
        for block, start, end in spans:
            taken.setdefault(block, []).append((start, end))
        chosen.append(fix)
    return Chosen(chosen, left)


def needs_a_choice(fix: Fix, alone: bool) -> bool:
    """Whether only a person can say that a fix is meant: it takes something off what feeds it, or takes equipment
    or the device of a feeder away, or writes a source, or it feeds something anew and is not the only fix (``alone``).
    A transformer put between two keeps both. A kind that nobody said is for a person to say, too."""
    by_block: dict[Block, list[Edit]] = {}
    for edit in fix.edits:
        by_block.setdefault(edit.block, []).append(edit)
    before, after = _Stretch(), _Stretch()
    for block, edits in by_block.items():
        text = "\n" * block.first_line + "\n".join(block.lines)
        try:
            changed = apply_edits(text, edits)
        except OverlapError:
            return True
        before.read(text)
        after.read(changed)
    if after.sources - before.sources:
        return True
    if before.equipment - after.equipment or before.devices - after.devices:
        return True
    gone, new = before.feeders - after.feeders, after.feeders - before.feeders
    if after.equipment - before.equipment and not new:
        return True  # what a line that nobody could read is: a load, a source, a board
    if not all(source != target and after.reaches(source, target) for source, target in gone):
        return True
    return bool(new) and not gone and not alone


class _Stretch:
    """Equipment and the ends of feeders, closed ones, that stretches of text declare."""

    def __init__(self) -> None:
        self.equipment: Counter[str] = Counter()
        self.feeders: Counter[tuple[str, str]] = Counter()
        self.sources: Counter[str] = Counter()
        self.devices: Counter[str] = Counter()
        """Devices of feeders, by what they stand in."""

    def read(self, text: str) -> None:
        for block in TextFile("", text).blocks:
            statement = lower_block(block.lines)
            if isinstance(statement, FeederStatement):
                source, target = (end.name if end is not None else "" for end in (statement.source, statement.target))
                if "normally-open" not in statement.body.flags:
                    self.feeders[source, target] += 1
                self.devices[source] += "rating" in statement.body.facts
            elif isinstance(statement, EquipmentStatement) and statement.name is not None:
                self.equipment[statement.name.text] += 1
                self.sources[statement.name.text] += statement.kind in SOURCES

    def reaches(self, source: str, target: str) -> bool:
        """Whether a way leads from one to the other."""
        reached, waiting = {source}, [source]
        while waiting:
            here = waiting.pop()
            following = {b for a, b in self.feeders if a == here} - reached
            reached |= following
            waiting += following
        return target in reached


def fix_model(
    root: str,
    reader: Callable[[str], str],
    allowed: frozenset[Safety],
    workspace: str | None,
    configuration: Configuration = DEFAULT,
) -> Outcome:
    """Apply fixes to a model until nothing more can be mended; nothing is written.

    Fixes after which the model has more errors than before are left out.
    """
    outcome = Outcome()

    def overlaid(path: str) -> str:
        return outcome.texts[path] if path in outcome.texts else reader(path)

    analysis = Analysis(root, Files(overlaid), workspace, configuration=configuration)
    tries = iter(range(_MOST_TRIED))
    for _ in range(MAX_PASSES):
        findings = _found(analysis, allowed)
        fixes, outcome.left_to_choose = choose(findings, allowed)
        if not fixes:
            break
        before, errors = dict(outcome.texts), _errors(findings)

        def tried(some: Sequence[Fix], before: dict[str, str] = before) -> Analysis | None:
            """The model with these fixes, or None where they touch each other."""
            outcome.texts = dict(before)
            try:
                for path, edits in _by_file(some).items():
                    outcome.texts[path] = apply_edits(overlaid(path), edits)
            except OverlapError:
                return None
            return Analysis(root, Files(overlaid), workspace, configuration=configuration)

        def good(some: Sequence[Fix], most: int = errors) -> Analysis | None:
            again = tried(some)
            return again if again is not None and _errors(_found(again, allowed)) <= most else None

        again = good(fixes)
        if again is None:
            outcome.thrown_away = True
            fixes = harmless(fixes, lambda some: good(some) is not None, tries)
            again = good(fixes) if fixes else None
        if again is None:
            outcome.texts = before
            break
        analysis = again
        outcome.applied += [f.title for f in fixes]
    return outcome


def _by_file(fixes: Iterable[Fix]) -> dict[str, list[Edit]]:
    edits: dict[str, list[Edit]] = {}
    for fix in fixes:
        for edit in fix.edits:
            edits.setdefault(edit.block.file, []).append(edit)
    return edits


_MOST_TRIED = 40
"""How often a model is checked to find the fixes that make new errors: one costs about twice the logarithm of all."""


def harmless(fixes: list[Fix], good: Callable[[list[Fix]], bool], tries: Iterator[int]) -> list[Fix]:
    """The fixes that are ``good`` together: halves are left out until those that are not are found."""
    kept: list[Fix] = []
    waiting = [fixes[len(fixes) // 2 :], fixes[: len(fixes) // 2]] if len(fixes) > 1 else []
    while waiting and next(tries, None) is not None:
        part = waiting.pop()
        if good([*kept, *part]):
            kept += part
        elif len(part) > 1:
            waiting += [part[len(part) // 2 :], part[: len(part) // 2]]
    return kept


def _found(analysis: Analysis, allowed: frozenset[Safety]) -> list[Finding]:
    """What may be mended: the studies offer only fixes that want a look, so they run only where those are allowed."""
    return analysis.all_findings() if Safety.LOOK in allowed else analysis.findings()


def _errors(findings: Iterable[Finding]) -> int:
    return sum(1 for f in findings if f.severity is Severity.ERROR and f.allowed is None)


def write_atomically(path: str, text: str, was: str | None = None) -> None:
    """Put a text in the place of a file's, all or nothing, with the file's permissions; a link stays a link.

    ``was`` is the text that the new one was made from. Raises SourceError where the file cannot be written, or no
    longer holds that text.
    """
    with _told(path):
        target = os.path.realpath(path)
        temporary = _beside(target, text)
        try:
            _synchronise(temporary)
            _permit(temporary, target)
            if was is not None and read_text(path) != was:
                raise SourceError(path, "it was changed in the meantime; nothing was written, so run it again")
            os.replace(temporary, target)
        except BaseException:
            _remove(temporary)
            raise


def write_together(texts: Iterable[tuple[str, str]]) -> int:
    """Put texts, by path, in the place of files that belong together; how many. Folders are made.

    Until the last text is there no file is touched, so that what ends halfway (an interrupt, a full disk) leaves the
    old ones all as they were, never some new beside some old. Raises SourceError as ``write_atomically`` does.
    """
    from concurrent.futures import ThreadPoolExecutor

    waiting: dict[str, str] = {}
    try:
        # A disk takes many files at once nearly as fast as one, and while the next is made.
        with ThreadPoolExecutor(_AT_ONCE) as disk:
            on_disk = {}
            for path, text in texts:
                with _told(path):
                    target = os.path.realpath(path)
                    os.makedirs(os.path.dirname(target), exist_ok=True)
                    waiting[target] = _beside(target, text)
                on_disk[path] = disk.submit(_synchronise, waiting[target])
            for path, done in on_disk.items():
                with _told(path):
                    done.result()
        count = len(waiting)
        for target, temporary in list(waiting.items()):
            with _told(target):
                _permit(temporary, target)
                os.replace(temporary, target)
            del waiting[target]
        return count
    finally:
        for temporary in waiting.values():
            _remove(temporary)


_AT_ONCE = 8
"""Files that are synchronised with the disk at a time."""


def _synchronise(path: str) -> None:
    with open(path, "r+b") as file:
        os.fsync(file.fileno())


def _permit(temporary: str, target: str) -> None:
    with contextlib.suppress(OSError):
        os.chmod(temporary, _permissions(target))


def _beside(target: str, text: str) -> str:
    """A new file in the folder of another that holds a text, for nobody else to read yet; its path."""
    import tempfile  # nothing is written while one types

    handle, temporary = tempfile.mkstemp(dir=os.path.dirname(target), prefix=".wyeline-", suffix=".tmp")
    try:
        # Only the name of a file can hold what is no UTF-8, in a report; a model's text was read as UTF-8.
        with os.fdopen(handle, "w", encoding="utf-8", errors="replace", newline="") as file:
            file.write(text)
    except BaseException:
        _remove(temporary)
        raise
    return temporary


def _remove(path: str) -> None:
    with contextlib.suppress(OSError):
        os.unlink(path)


@contextlib.contextmanager
def _told(path: str) -> Iterator[None]:
    """What the system refuses is told of a path. Raises SourceError."""
    try:
        yield
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        raise SourceError(path, f"it could not be written ({reason})") from None


def _permissions(path: str) -> int:
    """Those of the file, or where there is none those that a new file gets."""
    try:
        return os.stat(path).st_mode & 0o7777
    except FileNotFoundError:
        mask = os.umask(0)
        os.umask(mask)
        return 0o666 & ~mask


__all__ = [
    "Outcome",
    "OverlapError",
    "apply_edits",
    "choose",
    "fix_model",
    "write_atomically",
    "write_together",
]
