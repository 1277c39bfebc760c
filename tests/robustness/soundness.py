"""What must hold for any text whatever: hypothesis, the coverage-guided fuzzer and the corpus all ask these questions.

Nothing raises; every place lies inside the text; every fix applies; the formatter is settled after one run and changes
no meaning; answers under edits are those of a fresh check.
"""

from __future__ import annotations

import dataclasses
import sys
from collections.abc import Mapping
from typing import Any

from wyeline_grammar.blocks import Block, TextFile, cut, split_lines
from wyeline_grammar.formatter import format_text
from wyeline_grammar.lines import LineIndex
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import Sense
from wyeline_grammar.places import Span
from wyeline_grammar.problems import Problem
from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures
from wyeline_linter.finding_records import from_record, to_record
from wyeline_linter.findings import Finding, Fix
from wyeline_linter.fixing import OverlapError, apply_edits

FOLDER = "/m"
ROOT = f"{FOLDER}/site.wye"
STEPS_A_CHARACTER = 6_000
STEPS_AT_LEAST = 6_000_000
"""Bound of work: calls of Python functions for a text, counted and not timed, so that a slow machine is no hang."""


class TooMuchWorkError(AssertionError):
    """A text took more steps than its length allows."""


def reader_of(texts: Mapping[str, str]) -> Any:
    def read(path: str) -> str:
        if path not in texts:
            raise SourceError(path, "there is no such file")
        return texts[path].removeprefix("\ufeff")  # as reading a file does

    return read


def analysed(texts: Mapping[str, str], root: str = ROOT) -> Analysis:
    return Analysis(root, Files(reader_of(texts)), FOLDER)


def check_all(texts: Mapping[str, str]) -> list[Finding]:
    """Every promise for a model of several files; returns its findings."""
    for text in texts.values():
        check_formatter(text)
    analysis = analysed(texts)
    findings = analysis.all_findings()
    for finding in findings:
        check_places(finding, analysis)
        check_words(finding)
        for fix in finding.fixes:
            check_fix(fix, texts)
    check_records(findings, analysis)
    model_figures(analysis.view)
    for _, scenario in analysis.model.scenarios:
        if scenario.name is not None:
            Analysis(ROOT, Files(reader_of(texts)), FOLDER, scenario=scenario.name.text).all_findings()
    return findings


# findings


def check_places(finding: Finding, analysis: Analysis) -> None:
    """Every place that a finding speaks of lies inside the text, in a block that the model holds."""
    for place in (finding.place, *(r.place for r in finding.related)):
        block, span = place.block, place.span
        file = analysis.files.known(block.file)
        assert file is not None and block in file.blocks, f"{finding.rule}: a block that is not in the text"
        assert 0 <= span.line < len(block.lines), (finding.rule, span, block.lines)
        assert 0 <= span.start <= span.end <= len(block.lines[span.line]), (finding.rule, span, block.lines[span.line])


def check_words(finding: Finding) -> None:
    assert finding.message.strip() and "\n" not in finding.message, finding


def check_fix(fix: Fix, texts: Mapping[str, str]) -> None:
    """Its edits lie inside the text and apply together; the text they give is read without a fault."""
    by_file: dict[str, list[Any]] = {}
    for edit in fix.edits:
        lines = edit.block.lines
        assert 0 <= edit.line <= edit.end_line < len(lines), (fix.title, edit)
        assert 0 <= edit.start <= len(lines[edit.line]), (fix.title, edit)
        assert 0 <= edit.end <= len(lines[edit.end_line]), (fix.title, edit)
        assert (edit.line, edit.start) <= (edit.end_line, edit.end), (fix.title, edit)
        by_file.setdefault(edit.block.file, []).append(edit)
    for path, edits in by_file.items():
        try:
            made = apply_edits(texts[path].removeprefix("\ufeff"), edits)
        except OverlapError:
            raise AssertionError(f"the edits of one fix overlap: {fix.title}") from None
        for _, lines in cut(split_lines(made)):
            lower_block(lines)


def check_records(findings: list[Finding], analysis: Analysis) -> None:
    """Findings kept by the cache come back as they were."""
    names = analysis.model.files
    numbers = {name: i for i, name in enumerate(names)}
    texts = {name: analysis.files.get(name).lines for name in names if analysis.files.known(name)}
    for finding in findings:
        record = to_record(finding, numbers.__getitem__)
        again = from_record(record, names, texts.__getitem__)
        assert (again.rule, again.message, again.sort_key) == (finding.rule, finding.message, finding.sort_key)


# the formatter


def check_formatter(text: str) -> None:
    made = format_text(text)
    assert format_text(made) == made, "a second run of the formatter changes the text again"
    assert meaning(made) == meaning(text), "the formatter changed what the text says"


def meaning(text: str) -> list[Any]:
    """What the statements of a text say, without where and how they say it.

    Blocks without words and words that could not be read count by the rule that says so.
    """
    found = []
    for _, lines in cut(split_lines(text.removeprefix("\ufeff"))):
        if any(line.strip(" \t\u00a0\ufeff,") for line in lines):
            found.append(_stripped(lower_block(tuple(lines))))
    return found


_PLACED = frozenset({"head", "last_line"})


def _stripped(value: Any) -> Any:
    """A model value without its places and spellings."""
    if isinstance(value, Span | Sense):
        return None
    if isinstance(value, Problem):
        return value.rule
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        return (
            type(value).__name__,
            *(_stripped(getattr(value, f.name)) for f in dataclasses.fields(value) if f.name not in _PLACED),
        )
    if isinstance(value, tuple) and hasattr(value, "_fields"):
        kept = [f for f in value._fields if not (f == "text" and type(value).__name__ in ("Value", "Voltage"))]
        return (type(value).__name__, *(_stripped(getattr(value, f)) for f in kept))
    if isinstance(value, Mapping):
        return {k: _stripped(v) for k, v in value.items()}
    if isinstance(value, tuple | list):
        return [_stripped(v) for v in value]
    return value


# edits


def answers(analysis: Analysis) -> tuple[Any, ...]:
    """Everything that an analysis says, as plain data."""
    return (
        [
            (f.rule, f.severity, f.message, f.sort_key, f.found, f.needed, f.change, f.allowed)
            for f in analysis.all_findings()
        ],
        model_figures(analysis.view),
        sorted(analysis.network.root.items()),
    )


def check_edits(texts: Mapping[str, str], edits: list[tuple[str, tuple[int, int], tuple[int, int], str]]) -> None:
    """After every edit the analysis that was kept says what a fresh one says."""
    files = Files(reader_of(texts))
    analysis = Analysis(ROOT, files, FOLDER)
    for path, text in texts.items():
        files.open_buffer(path, text)
    for path, start, end, new in edits:
        file: TextFile = files.get(path)
        before = LineIndex(file.text)
        went, came = file.edit(start, end, new)
        assert before is not None
        check_blocks(file)
        if path in analysis.model.files:
            analysis.edited(went, came)
            analysis.study_findings()  # so that the next edit meets figures of this one
    now = {path: files.get(path).text for path in texts}
    assert answers(analysis) == answers(analysed(now))


def check_blocks(file: TextFile) -> None:
    """Blocks kept under edits are those of the text cut afresh."""
    fresh = TextFile(file.path, file.text)
    assert [(b.first_line, b.lines) for b in file.blocks] == [(b.first_line, b.lines) for b in fresh.blocks]


# bounds


class Steps:
    """Counts calls of Python functions while it is open; raises TooMuchWorkError beyond the limit."""

    def __init__(self, limit: int) -> None:
        self.limit, self.count = limit, 0

    def __enter__(self) -> Steps:
        self._before = sys.getprofile()
        sys.setprofile(self._seen)
        return self

    def __exit__(self, *_: object) -> None:
        sys.setprofile(self._before)

    def _seen(self, _frame: Any, event: str, _argument: Any) -> None:
        if event == "call":
            self.count += 1
            if self.count > self.limit:
                sys.setprofile(None)
                raise TooMuchWorkError(f"more than {self.limit} steps")


def bounded(texts: Mapping[str, str]) -> Steps:
    return Steps(STEPS_AT_LEAST + STEPS_A_CHARACTER * sum(map(len, texts.values())))


def models_of(data: bytes) -> dict[str, str]:
    """A model out of any bytes: files are parted by a form feed, the root comes first, the others are ``b.wye`` …"""
    parts = data.decode("utf-8", "replace").split("\f")[:4]
    return {f"{FOLDER}/{name}.wye": part for name, part in zip(("site", "b", "c", "d"), parts, strict=False)}


__all__ = ["Block", "check_all", "check_edits", "models_of"]
