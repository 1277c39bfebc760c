"""The last line of a check, and counts by rule: never more than was checked."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence

from wyeline_linter.expectations import Expectation
from wyeline_linter.findings import Finding, Safety, Severity
from wyeline_linter.outputs import Results

OUTCOMES = ("met", "missed", "unknown")


def line(results: Results) -> str:
    """Counts per severity, unknown figures, expectations, what is accepted and what is switched off, in one line."""
    shown = [f for f in results.findings if f.allowed is None]
    counts = severities(shown)
    parts = [listed(counts) or "no rule failed on the stated facts"]
    if counts["gap"]:
        parts.append(f"{count(counts['gap'], 'figure')} unknown")
    if results.expectations:
        tally = outcomes(results.expectations)
        parts.append("expectations: " + ", ".join(f"{n} {word}" for word, n in tally.items() if n))
    accepted = len(results.findings) - len(shown)
    if accepted:
        parts.append(f"{count(accepted, 'finding')} accepted")
    if results.off:
        parts.append(f"{count(len(results.off), 'rule')} switched off")
    return "; ".join(parts) + f" ({count(len(results.files), 'file')})"


def mendable(findings: Iterable[Finding]) -> str:
    """How many findings `check --fix` sets right, in a sentence; "" where it sets none."""
    number = sum(1 for f in findings if f.allowed is None and f.fixes and f.fixes[0].safety is Safety.SAFE)
    if not number:
        return ""
    of_them = "1 of them is about writing alone" if number == 1 else f"{number} of them are about writing alone"
    return f"{of_them}: `wyeline check --fix` sets {'it' if number == 1 else 'them'} right"


def severities(findings: Iterable[Finding]) -> dict[str, int]:
    """How many findings of each severity, gravest first; all four are there."""
    counts = Counter(f.severity for f in findings)
    return {s.word: counts[s] for s in sorted(Severity, reverse=True)}


def listed(counts: Mapping[str, int]) -> str:
    """Counts by severity in words, gravest first, without the gaps; "" where there is nothing to count."""
    return ", ".join(count(n, word) for word, n in counts.items() if n and word != "gap")


def outcomes(expectations: Iterable[Expectation]) -> dict[str, int]:
    """How many expectations were met, missed and stay unknown."""
    counts = Counter(e.outcome for e in expectations)
    return {word: counts[word] for word in OUTCOMES}


def by_rule(findings: Sequence[Finding]) -> list[tuple[str, str, int, int]]:
    """``(rule, gravest severity, findings, of these accepted)``: the most frequent rule first."""
    every, accepted = Counter(f.rule for f in findings), Counter(f.rule for f in findings if f.allowed is not None)
    gravest: dict[str, Severity] = {}
    for finding in findings:
        gravest[finding.rule] = max(gravest.get(finding.rule, Severity.GAP), finding.severity)
    order = sorted(every, key=lambda rule: (-every[rule], rule))
    return [(rule, gravest[rule].word, every[rule], accepted[rule]) for rule in order]


def statistics(findings: Sequence[Finding]) -> str:
    """Counts by rule as lines of text."""
    rows = by_rule(findings)
    wide = max((len(str(n)) for _, _, n, _ in rows), default=1)
    name = max((len(rule) for rule, *_ in rows), default=1)
    lines = (
        f"{n:>{wide}}  {word:<7}  {rule:<{name}}" + (f"  ({accepted} accepted)" if accepted else "")
        for rule, word, n, accepted in rows
    )
    return "\n".join(line.rstrip() for line in lines)


def count(number: int, word: str) -> str:
    """A number with its noun."""
    plural = word if word == "advice" or number == 1 else word + "s"
    return f"{number} {plural}"
