"""Findings as plain records and back: what a cache or another process can hold.

A record carries the lines that a finding shows, so that it can be printed without the model it came from.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from wyeline_grammar.blocks import Block
from wyeline_grammar.places import Place, Span
from wyeline_linter.findings import Edit, Finding, Fix, Related, Safety, Severity

Record = list[Any]


def to_record(finding: Finding, number_of: Callable[[str], int]) -> Record:
    """A finding as lists, strings and numbers; files become numbers (``number_of``)."""
    return [
        finding.rule,
        int(finding.severity),
        finding.message,
        _place_record(finding.place, number_of),
        finding.found,
        finding.needed,
        finding.why,
        finding.change,
        finding.clause,
        finding.subject,
        finding.position,
        finding.allowed,
        [[_place_record(r.place, number_of), r.message] for r in finding.related],
        [[fix.title, fix.safety.value, [_edit_record(e, number_of) for e in fix.edits]] for fix in finding.fixes],
    ]


def _place_record(place: Place, number_of: Callable[[str], int]) -> Record:
    return [number_of(place.file), place.row, place.span.start, place.span.end]


def _edit_record(edit: Edit, number_of: Callable[[str], int]) -> Record:
    first = edit.block.first_line
    return [number_of(edit.block.file), first + edit.line, edit.start, first + edit.end_line, edit.end, edit.text]


def moved(record: Record, now: Callable[[int, int], int]) -> Record:
    """The record with its lines where ``now(file, row)`` says that they stand, and its fixes by their titles alone.

    Raises what ``now`` raises, and ValueError or TypeError where the record is not one.
    """

    def placed(data: Record) -> Record:
        number, row, *columns = data
        return [number, now(number, row), *columns]

    *texts, related, fixes = record
    texts[3] = placed(texts[3])
    return [
        *texts,
        [[placed(place), words] for place, words in related],
        [[title, safety, []] for title, safety, _ in fixes],
    ]


def has_edits(record: Record) -> bool:
    """Whether a fix of the record says how the text is to be changed."""
    return any(edits for _, _, edits in record[-1])


def from_record(record: Record, files: list[str], lines_of: Callable[[str], list[str]]) -> Finding:
    """The finding of a record. Raises ValueError, IndexError or TypeError where the record is not one."""
    rule, severity, message, place, *texts, allowed, related, fixes = record
    found, needed, why, change, clause, subject, position = texts

    def placed(data: Record) -> Place:
        number, row, start, end = data
        path = files[number]
        return Place(Block(path, row, (lines_of(path)[row],)), Span(0, start, end))

    def edit(data: Record) -> Edit:
        number, row, start, end_row, end, text = data
        path = files[number]
        return Edit(Block(path, row, tuple(lines_of(path)[row : end_row + 1])), 0, start, end_row - row, end, text)

    return Finding(
        rule,
        Severity(severity),
        message,
        placed(place),
        found,
        needed,
        why,
        change,
        clause,
        subject,
        position,
        tuple(Related(placed(p), text) for p, text in related),
        tuple(Fix(title, tuple(edit(e) for e in edits), Safety(safety)) for title, safety, edits in fixes),
        allowed,
    )
