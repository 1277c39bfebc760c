"""What stays of a finding when lines move and figures change: how two runs, or two tools, know it again."""

from __future__ import annotations

import hashlib
import re

from wyeline_grammar.units import UNITS
from wyeline_linter.findings import Finding

_FIGURE = re.compile(r"`[^`]*`|(?<![\w#/.,-])(\d+(?:\.\d+)?)(?![\w/-]|,\d)(?: ([A-Za-z%][\w/.%]*))?")


def figures_of(text: str) -> list[float]:
    """The figures in a text in their order, those with a unit in SI; names in backquotes and sizes are none."""
    found = []
    for match in _FIGURE.finditer(text):
        if match[1] is not None:
            unit = UNITS.get(match[2] or "")
            found.append(float(match[1]) * (unit.to_si if unit is not None else 1.0))
    return found


def without_figures(text: str) -> str:
    """A text with ``#`` in the place of each figure and its unit."""

    def plain(match: re.Match[str]) -> str:
        if match[1] is None:
            return match[0]
        return "#" if match[2] is None or match[2] in UNITS else f"# {match[2]}"

    return _FIGURE.sub(plain, text)


def fingerprint(rule: str, subject: str, position: str, message: str) -> str:
    """The mark of a finding: by rule, subject, position and message without its figures; 32 hexadecimal digits."""
    parts = "\0".join((rule, subject, position, without_figures(message)))
    return hashlib.sha256(parts.encode("utf-8", "surrogatepass")).hexdigest()[:32]


def fingerprint_of(finding: Finding) -> str:
    """The mark of a finding, the same wherever its lines go."""
    return fingerprint(finding.rule, finding.subject, finding.position, finding.message)


def distinct_fingerprints(findings: list[Finding], shown: list[str]) -> list[str]:
    """A mark for each finding that none of the others bears; ``shown`` are the paths they are reported under."""
    seen: dict[str, int] = {}
    marks = []
    for finding, path in zip(findings, shown, strict=True):
        mark = hashlib.sha256(f"{path}\0{fingerprint_of(finding)}".encode("utf-8", "surrogatepass")).hexdigest()[:32]
        number = seen[mark] = seen.get(mark, -1) + 1
        marks.append(mark if not number else hashlib.sha256(f"{mark} {number}".encode()).hexdigest()[:32])
    return marks


def moved(old: str, new: str, by_more_than: float) -> bool:
    """Whether a figure of a text changed by more than a share of what it was, or figures came or went.

    0.05 as the share: 100 A against 104 A stays, against 106 A moved.
    """
    before, now = figures_of(old), figures_of(new)
    if len(before) != len(now):
        return True
    return any(abs(b - a) > by_more_than * abs(a) * (1 + 1e-9) + 1e-12 for a, b in zip(before, now, strict=True))
