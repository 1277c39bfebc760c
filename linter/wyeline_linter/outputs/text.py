"""Findings for people at a terminal: the line, marks under the words, the other place, and what to do."""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Iterable
from functools import lru_cache

from wyeline_grammar.places import Place
from wyeline_linter.findings import Finding, Safety, Severity
from wyeline_linter.printed_answers import USUAL_COLUMNS, sentence_columns

CAUTION = (
    "Design aid. Results depend on the stated inputs and assumptions; check against the code adopted where the work is "
    "done and have a licensed engineer or the designated person judge it before construction. Not for energised work."
)

_COLOURS = {Severity.ERROR: "31", Severity.WARNING: "33", Severity.ADVICE: "36", Severity.GAP: "35"}
IN_FULL = 3
"""How often what is alike in a file is told in full."""
MAX_LINE = 200
"""A longer source line is shown around the marked words only."""


def wrapped(text: str, lead: str = "", columns: int = 0) -> str:
    """Sentences behind ``lead``, in lines of so many columns (0: the terminal's) that hang under its end; a source
    line, and the line that a program may read (place, rule, message), stay whole."""
    columns = columns or sentence_columns()
    if len(lead) + len(text) <= columns:
        return lead + text
    import textwrap

    return textwrap.fill(
        text,
        columns,
        initial_indent=lead,
        subsequent_indent=" " * len(lead),
        break_long_words=False,
        break_on_hyphens=False,
    )


def caution(columns: int = 0) -> str:
    """The caution as it stands below what is printed at a terminal."""
    return wrapped(CAUTION, columns=columns)


def shown_path(path: str) -> str:
    """A path as short as it can be said from here."""
    return _shown_from(path, os.getcwd())


@lru_cache(maxsize=4096)
def _shown_from(path: str, folder: str) -> str:
    try:
        relative = os.path.relpath(path, folder)
    except ValueError:  # another drive
        return path
    shown = path if relative.startswith("..") else relative
    return shown if shown.isascii() else shown.encode("utf-8", "replace").decode()  # names of any bytes print


def render(findings: Iterable[Finding], *, colour: bool, quiet: bool = False, columns: int = 0) -> str:
    """All findings, one after the other; ``quiet`` leaves one line each. What is alike in a file (the same rule and the
    same words below the first line) is told in full three times, and further on in one line."""
    columns = columns or sentence_columns()
    if quiet:
        return "\n".join(_head(f, colour) for f in findings)
    listed = list(findings)
    alike = [_alike(finding) for finding in listed]
    count, told = Counter(alike), Counter[tuple[object, ...]]()
    lines: list[str] = []
    short = False
    for finding, like in zip(listed, alike, strict=True):
        told[like] += 1
        if told[like] > IN_FULL:
            lines.append(_head(finding, colour))
            short = True
            continue
        more = count[like] - IN_FULL if told[like] == IN_FULL else 0
        lines.append(("\n" if short else "") + _one(finding, colour, columns, more))
        short = False
    return "\n".join([*lines, ""] if short else lines)


def _alike(finding: Finding) -> tuple[object, ...]:
    """What two findings have in common of which the second says nothing new but its place and message; what names
    another place as well is like no other."""
    if finding.related:
        return (id(finding),)
    fixes = tuple(fix.title for fix in finding.fixes)
    return finding.place.file, finding.severity, finding.rule, *_particulars(finding), fixes


def render_one(finding: Finding) -> str:
    """One finding in full, for a file: without colour."""
    return _one(finding, False, USUAL_COLUMNS)


def _paint(text: str, code: str, colour: bool) -> str:
    return f"\x1b[{code}m{text}\x1b[0m" if colour else text


def _head(finding: Finding, colour: bool) -> str:
    place = f"{shown_path(finding.place.file)}:{finding.place.row + 1}:{finding.place.span.start + 1}"
    word = _paint(finding.severity.word, _COLOURS[finding.severity], colour)
    return f"{_paint(place, '1', colour)}: {word} {finding.rule}: {finding.message}"


def _one(finding: Finding, colour: bool, columns: int, more: int = 0) -> str:
    places = [(finding.place, "^", ""), *((r.place, "-", r.message) for r in finding.related)]
    width = max(len(str(p.row + 1)) for p, _, _ in places)
    lines = [_head(finding, colour)]
    for place, mark, message in places:
        if place.file != finding.place.file:
            lines.append(f"  {' ' * width} in {shown_path(place.file)}")
        lines += _source(place, mark, message, width)
    for label, text in _particulars(finding):
        lines.append(wrapped(text, f"  {label + ':':<8} ", columns))
    for i, fix in enumerate(finding.fixes):
        label = "fix:" if len(finding.fixes) == 1 else f"fix {i + 1}:"
        note = " (an example; its numbers are yours to give)" if fix.safety is Safety.SHOW else ""
        lines.append(wrapped(f"{fix.title}{note}", f"  {label:<8} ", columns))
    if more > 0:
        lines.append(wrapped(f"{more} more like this in this file, one line each below", "  alike:   ", columns))
    return "\n".join(lines) + "\n"


def _particulars(finding: Finding) -> list[tuple[str, str]]:
    parts = [
        ("found", finding.found),
        ("needed", finding.needed),
        ("why", finding.why + (f" ({finding.clause})" if finding.clause else "")),
        ("change", finding.change),
    ]
    return [(label, text) for label, text in parts if text]


def _source(place: Place, mark: str, message: str, width: int) -> list[str]:
    lines = place.block.lines
    if place.span.line >= len(lines):
        return []
    text = lines[place.span.line].replace("\t", " ")
    start, end = place.span.start, max(place.span.end, place.span.start + 1)
    if len(text) > MAX_LINE:
        cut = max(0, start - 60)
        prefix = "… " if cut else ""
        text = prefix + text[cut : cut + MAX_LINE] + (" …" if cut + MAX_LINE < len(text) else "")
        start, end = start - cut + len(prefix), min(end - cut + len(prefix), len(text))
    number = str(place.row + 1).rjust(width)
    marks = " " * start + mark * max(1, min(end, len(text) + 1) - start)
    return [
        f"  {number} | {text.rstrip()}".rstrip(),
        f"  {' ' * width} | {marks}" + (f" {message}" if message else ""),
    ]
