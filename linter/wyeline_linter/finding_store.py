"""Findings by what was judged and by the file they stand in, kept so that an edit costs what it changes.

A *group* is what one judgement said: of a block's text, of a piece of equipment, of a feeder, of the model. An edit
puts the groups that were judged anew; only files in which a finding changed are sorted, and published, again.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator

from wyeline_grammar.blocks import Block
from wyeline_linter.findings import Finding, Offered

Group = tuple[str, object]
"""What was judged, such as ``("equipment", "LP-1")`` or ``("text", block)``."""


class FindingStore:
    """Groups with at least one finding, and where their findings stand.

    ``changed`` collects the files in which a finding came, went or changed; whoever brings them up to date empties it.
    """

    def __init__(self) -> None:
        self._groups: dict[Group, dict[str, list[Finding]]] = {}
        """By group, by file."""
        self._in_file: dict[str, dict[Group, list[Finding]]] = {}
        self._shown: dict[Group, tuple[Block, ...]] = {}
        self._showing: dict[Block, set[Group]] = {}
        """Groups whose findings show a place in a block, or offer an edit there."""
        self.changed: set[str] = set()

    def put(self, group: Group, found: list[Finding], accepted_anew: Collection[str] = ()) -> None:
        """What a group says now. ``accepted_anew``: subjects of which allowances came or went, so that files with
        findings about them changed even if these did not."""
        before = self._groups.get(group)
        if before is None and not found:
            return
        now: dict[str, list[Finding]] = {}
        for finding in found:
            now.setdefault(finding.place.block.file, []).append(finding)
        for path in {*(before or ()), *now}:
            old, new = (before or {}).get(path, []), now.get(path, [])
            if alike(old, new):
                if old:
                    now[path] = old
                if accepted_anew and any(finding.subject in accepted_anew for finding in old):
                    self.changed.add(path)
                continue
            self.changed.add(path)
            groups = self._in_file.setdefault(path, {})
            if new:
                groups[group] = new
            else:
                groups.pop(group, None)
        if now:
            self._groups[group] = now
        else:
            del self._groups[group]
        self._index(group, now)

    def _index(self, group: Group, now: dict[str, list[Finding]]) -> None:
        shown = tuple({block: None for found in now.values() for finding in found for block in _shown_by(finding)})
        before = self._shown.get(group, ())
        if shown == before:
            return
        for block in before:
            groups = self._showing[block]
            groups.discard(group)
            if not groups:
                del self._showing[block]
        for block in shown:
            self._showing.setdefault(block, set()).add(group)
        if shown:
            self._shown[group] = shown
        else:
            del self._shown[group]

    def showing(self, blocks: Iterable[Block]) -> set[Group]:
        """The groups whose findings show a place in one of these blocks."""
        return {group for block in blocks for group in self._showing.get(block, ())}

    def of_sort(self, sort: str) -> set[Group]:
        """The groups of one sort that have findings."""
        return {group for group in self._groups if group[0] == sort}

    def in_file(self, path: str) -> Iterator[Finding]:
        """The findings that stand in a file, in no order."""
        for found in self._in_file.get(path, {}).values():
            yield from found


def alike(one: list[Finding], other: list[Finding]) -> bool:
    """Whether two judgements said the same of the same places. Fixes that are only offered are not looked at: they are
    worked out from the model as it stands when somebody asks."""
    return one is other or (len(one) == len(other) and all(map(_same, one, other)))


def _same(one: Finding, other: Finding) -> bool:
    return one is other or (
        one.message == other.message
        and one.place == other.place
        and one.rule == other.rule
        and one.severity is other.severity
        and (one.found, one.needed, one.why, one.change, one.clause) == _words(other)
        and (one.subject, one.position, one.allowed) == (other.subject, other.position, other.allowed)
        and one.related == other.related
        and _fixes_alike(one, other)
    )


def _words(finding: Finding) -> tuple[str, str, str, str, str]:
    return finding.found, finding.needed, finding.why, finding.change, finding.clause


def _fixes_alike(one: Finding, other: Finding) -> bool:
    if isinstance(one.fixes, Offered) or isinstance(other.fixes, Offered):
        return type(one.fixes) is type(other.fixes)
    return one.fixes == other.fixes


def _shown_by(finding: Finding) -> Iterator[Block]:
    for related in finding.related:
        yield related.place.block
    if not isinstance(finding.fixes, Offered):
        for fix in finding.fixes:
            for edit in fix.edits:
                yield edit.block
