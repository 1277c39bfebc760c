"""The baseline: findings accepted as they were, and the figures under which allowances were given.

One JSON file a project, sorted, one entry a line, meant to be committed. It lets a check begin on an old model and fail
on what is new; it must not allow more than it needs; and what it accepts rots loudly when the figures change.
"""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Iterable
from dataclasses import replace
from functools import lru_cache
from typing import Any, NamedTuple

from wyeline_grammar.blocks import Block
from wyeline_grammar.places import Place, Span
from wyeline_grammar.sources import SourceError, absolute, decode, read_bytes, workspace_of
from wyeline_linter.accepting import beyond
from wyeline_linter.configuration import BASELINE_NAME
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.fingerprints import figures_of, fingerprint, fingerprint_of, moved

VERSION = 1
ACCEPTED = f"accepted by {BASELINE_NAME}"
"""What stands as the reason of a finding that the baseline accepts."""

_ABOUT = "Findings accepted as they were, and the figures of allowances. Written by `wyeline check --update-baseline`."
_TEXTS = ("model", "rule", "subject", "position", "message", "found")
OWN_RULES = frozenset({"allowance-stale", "baseline-excess"})


class Entry(NamedTuple):
    """One accepted finding (``allowance`` false), or the figures of one that an `allow` of the model accepts."""

    model: str
    rule: str
    subject: str
    position: str
    message: str
    found: str
    allowance: bool

    @property
    def mark(self) -> str:
        return fingerprint(self.rule, self.subject, self.position, self.message)

    def line(self) -> str:
        return json.dumps({**dict(zip(_TEXTS, self[:6], strict=True)), "allowance": self.allowance}, ensure_ascii=False)


class Baseline(NamedTuple):
    """A baseline file as read; entries in the file's order, with the row (from 0) where each stands."""

    path: str
    entries: tuple[Entry, ...]
    rows: tuple[int, ...]
    lines: tuple[str, ...]


def path_for(root: str) -> str:
    """Where the baseline of a model is, or would be: in the folder that its includes may not leave."""
    return os.path.join(workspace_of(root), BASELINE_NAME)


def model_name(path: str, root: str) -> str:
    """How a baseline calls a model: its root file as seen from the baseline."""
    try:
        return os.path.relpath(root, os.path.dirname(absolute(path))).replace(os.sep, "/")
    except ValueError:  # another drive
        return root.replace(os.sep, "/")


def load(path: str, read: Callable[[str], bytes] = read_bytes) -> Baseline | None:
    """The baseline in a file; None where there is no such file. Raises SourceError for one that is none."""
    if not os.path.exists(path):
        return None
    text = decode(path, read(path))
    try:
        tree = json.loads(text)
    except (ValueError, RecursionError) as error:
        row = getattr(error, "lineno", 1)
        raise SourceError(path, f"this is no JSON (line {row}); write it anew with --update-baseline") from None
    if not isinstance(tree, dict) or tree.get("version") != VERSION or not isinstance(tree.get("entries"), list):
        raise SourceError(path, f"this is no baseline of version {VERSION}; write it anew with --update-baseline")
    entries = tuple(_entry(path, data) for data in tree["entries"])
    lines = tuple(text.splitlines())
    rows, at = [], 0
    for _ in entries:  # one entry a line, as they were written; elsewhere the first line stands for all
        at = next((i for i in range(at, len(lines)) if lines[i].lstrip().startswith('{"model"')), -1) + 1
        rows.append(max(at - 1, 0))
    return Baseline(path, entries, tuple(rows), lines or ("",))


def load_once(path: str) -> Baseline | None:
    """The baseline in a file, read once for all models of a run; None where there is none (any more)."""
    try:
        mark = os.stat(path)
    except OSError:
        return None
    return _kept(path, mark.st_mtime_ns, mark.st_size)


@lru_cache(maxsize=4)
def _kept(path: str, _mtime_ns: int, _size: int) -> Baseline | None:
    return load(path)


def _entry(path: str, data: Any) -> Entry:
    if not isinstance(data, dict) or data.keys() != {*_TEXTS, "allowance"}:
        keys = ", ".join((*_TEXTS, "allowance"))
        raise SourceError(path, f"an entry has exactly the keys {keys}; write it anew with --update-baseline")
    texts = [data[key] for key in _TEXTS]
    if not all(isinstance(t, str) for t in texts) or not isinstance(data["allowance"], bool):
        raise SourceError(path, "an entry holds texts, and `allowance` is true or false")
    model, rule, subject, position, message, found = texts
    return Entry(model, rule, subject, position, message, found, data["allowance"])


def applied(
    baseline: Baseline, model: str, findings: list[Finding], may_move: float, *, judge: bool = True
) -> list[Finding]:
    """Findings of one model under a baseline: those that it accepts are marked, and what is wrong with it is added.

    An accepted finding whose figures moved by more than the share ``may_move`` is not accepted any more, and one that
    nobody can accept (`accepting.beyond`) never is: it says so, and so does its entry, at its line. ``judge`` false
    leaves out what the baseline has too much (a scenario draws other findings than the normal state).
    """
    open_entries: dict[tuple[str, bool], list[int]] = {}
    for number, recorded in enumerate(baseline.entries):
        if recorded.model == model:
            open_entries.setdefault((recorded.mark, recorded.allowance), []).append(number)
    if not open_entries:
        return findings
    result: list[Finding] = []
    for finding in findings:
        never = beyond(finding.rule)
        if never:
            if (fingerprint_of(finding), False) in open_entries:
                finding = replace(finding, why=f"{finding.why} No baseline can take this away: {never}.".lstrip())
            result.append(finding)
            continue
        entry = _taken(baseline, open_entries.get((fingerprint_of(finding), finding.allowed is not None)), finding)
        if entry is None:
            result.append(finding)
            continue
        changed = moved(f"{entry.message}; {entry.found}", f"{finding.message}; {finding.found}", may_move)
        if finding.allowed is not None:
            result.append(finding)
            if changed:
                result.append(_stale(finding, entry, may_move))
        elif changed:
            told = f'The baseline accepted it when it was "{entry.message}".'
            result.append(replace(finding, change=f"{finding.change} {told}".strip()))
        else:
            result.append(replace(finding, allowed=ACCEPTED))
    if judge:
        left = sorted(n for numbers in open_entries.values() for n in numbers)
        result += [_excess(baseline, n) for n in left]
    return sorted(result, key=lambda f: f.sort_key)


def _taken(baseline: Baseline, numbers: list[int] | None, finding: Finding) -> Entry | None:
    """The entry for a finding, used up; of several alike, the one with the same figures first."""
    if not numbers:
        return None
    same = (n for n in numbers if baseline.entries[n].message == finding.message)
    chosen = next(same, numbers[0])
    numbers.remove(chosen)
    return baseline.entries[chosen]


def _stale(finding: Finding, entry: Entry, may_move: float) -> Finding:
    from wyeline_linter.rules.allowances import STALE

    return STALE.finding(
        finding.place,
        f"the figures under which `{finding.rule}` was accepted have changed: {finding.message}",
        found=finding.found or finding.message,
        needed=f"at most {100 * may_move:g} % away from what was accepted: {entry.found or entry.message}",
        change="Judge it anew. If it still holds, record the new figures with `wyeline check --update-baseline`.",
        subject=finding.subject,
        position=finding.position,
    )


def _excess(baseline: Baseline, number: int) -> Finding:
    from wyeline_linter.rules.allowances import EXCESS

    entry, row = baseline.entries[number], baseline.rows[number]
    line = baseline.lines[row] if row < len(baseline.lines) else ""
    start = len(line) - len(line.lstrip())
    what = f"`{entry.rule}`" + (f" of `{entry.subject}`" if entry.subject else "")
    never = beyond(entry.rule)
    return EXCESS.finding(
        Place(Block(baseline.path, row, (line,)), Span(0, start, max(len(line.rstrip()), start))),
        f"no baseline can take {what} in `{entry.model}` away: {never}"
        if never
        else f"the baseline accepts {what} in `{entry.model}`, which is not there any more",
        found=f"an entry for what nobody can accept: {entry.message}"
        if never
        else f"an entry without its finding: {entry.message}",
        needed="entries for findings that are a matter of judgement"
        if never
        else "entries for findings that are there",
        why="Accepting is for what a person can judge and answer for." if never else "",
        change="Take it out with `wyeline check --prune`.",
        subject=entry.subject,
        position=entry.position,
    )


def entries_of(model: str, findings: Iterable[Finding]) -> list[Entry]:
    """What a baseline would record of a model: every failing finding, and every one accepted that shows figures.

    Gaps are never accepted: an unknown figure fails nothing, and a baseline must not hide that it is unknown. Nor is
    what nobody can accept.
    """
    return [
        Entry(model, f.rule, f.subject, f.position, f.message, f.found, f.allowed is not None)
        for f in findings
        if f.severity is not Severity.GAP and not beyond(f.rule)
        if f.allowed is None or figures_of(f"{f.message}; {f.found}")
    ]


def pruned(baseline: Baseline, checked: dict[str, list[Finding]]) -> list[Entry]:
    """The entries that are still needed; those of models that were not checked stay."""
    left: dict[tuple[str, str, bool], int] = {}
    for model, findings in checked.items():
        for finding in findings:
            if beyond(finding.rule):
                continue
            key = (model, fingerprint_of(finding), finding.allowed is not None)
            left[key] = left.get(key, 0) + 1
    kept = []
    for entry in baseline.entries:
        key = (entry.model, entry.mark, entry.allowance)
        if entry.model not in checked or left.get(key, 0) > 0:
            kept.append(entry)
            left[key] = left.get(key, 0) - 1
    return kept


def text_of(entries: Iterable[Entry]) -> str:
    """The file: sorted, one entry a line."""
    lines = ",\n".join(f"    {entry.line()}" for entry in sorted(entries))
    body = f"[\n{lines}\n  ]" if lines else "[]"
    return f'{{\n  "version": {VERSION},\n  "about": {json.dumps(_ABOUT)},\n  "entries": {body}\n}}\n'
