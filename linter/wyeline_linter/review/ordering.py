"""The order in which a reviewer reads consequences, and what is told in one entry.

The gravest come first. Among equals: what is not counted or fed at all, since no other figure holds before that is
mended; then what people are hurt by (faults that nothing interrupts or clears, earthing); then devices and wires,
loads, voltage drop; last what is expected, named or allowed. The order is common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from functools import cache

from wyeline_linter.review.consequences import Consequence, Kind
from wyeline_linter.review.measures import BALANCE

LISTED = 6
"""Subjects that one entry names where they share a figure; the rest is counted."""
_PLACES = 40
"""Places of findings that one entry names; the rest is counted."""
_ALIKE = 3
"""Up to so many findings of one rule for one reason are told each by itself."""

_RANKS: tuple[str, ...] = (
    "reading references supplies connection winding",
    "short_circuit fault_times fault_inputs ground_fault neutral_bonds earthing grounds protective_conductors "
    "electrodes neutrals shared_neutrals emergency transfers medical_it",
    "overcurrent wires parallel_wires taps lugs raceway split_raceways motors motor_overloads devices neutral_sizes "
    "third_harmonics",
    "load load_sources load_stated overload_states transformer transformer_use",
    "drop motor_starts positions connection_remarks",
    "expectation allowances naming structure review type_use line_findings",
)
"""Files of rules by rank; a rule of another file stands with devices and wires."""
_BETWEEN = 2
_BY_FAMILY = {"fault": 1, "peak": 1, "overload": 3, "unbalanced": 4, "drop": 4}
_KINDS = (Kind.FINDING, Kind.LIMIT, Kind.VOLTAGE, Kind.UNKNOWN)


def by_gravity(consequence: Consequence) -> tuple[object, ...]:
    """The sorting key."""
    kind = _KINDS.index(consequence.kind) if consequence.kind in _KINDS else len(_KINDS)
    position = consequence.finding.position if consequence.finding is not None else ""
    place = natural(consequence.subject), natural(position)
    return -consequence.gravity, _rank(consequence), kind, *place, natural(consequence.headline)


def by_weight(consequence: Consequence) -> tuple[object, ...]:
    """The sorting key of figures that crossed no limit: by how near they are to one, or by how much they changed."""
    after = consequence.measured[1]
    used = after.used if after is not None else None
    return -max(used[0] if used is not None else 0.0, _change(consequence)), natural(consequence.words)


def natural(text: str) -> tuple[tuple[bool, int, str], ...]:
    """``circuit 2`` before ``circuit 11,13``."""
    return tuple(
        (not word.isdigit(), int(word) if word.isdigit() else 0, word)
        for word in re.findall(r"[0-9]{1,18}|[^0-9]+", text)
    )


def _rank(consequence: Consequence) -> int:
    if consequence.finding is not None:
        return _rank_of_rule(consequence.finding.rule)
    measured = consequence.measured[1] or consequence.measured[0]
    family = measured.family if measured is not None else ()
    return next((_BY_FAMILY[word] for word in family if word in _BY_FAMILY), _BETWEEN)


@cache
def _rank_of_rule(name: str) -> int:
    from wyeline_linter.rules.registry import all_rules

    found = all_rules().get(name)
    checks = [check for group in found.checks.values() for check in group] if found is not None else []
    file = checks[0].__module__.rpartition(".")[2] if checks else ""
    return next((rank for rank, files in enumerate(_RANKS) if file in files.split()), _BETWEEN)


def _change(consequence: Consequence) -> float:
    """How much a figure changed, as a part of the larger of the two; of a balance the difference itself."""
    before, after = (m.value if m is not None else None for m in consequence.measured)
    if not isinstance(before, float) or not isinstance(after, float):
        return 0.0
    measured = consequence.measured[1]
    if measured is not None and measured.unit == BALANCE:
        return abs(after - before)
    return abs(after - before) / max(abs(after), abs(before), 1e-12)


def gathered(found: Sequence[Consequence]) -> list[Consequence]:
    """What is the same for the same reasons, as one entry each: voltages, unknown figures, findings of one rule."""
    findings: dict[object, list[Consequence]] = {}
    for consequence in found:
        if (key := _one_finding(consequence)) is not None:
            findings.setdefault(key, []).append(consequence)
    kept: dict[object, Consequence] = {}
    for i, consequence in enumerate(found):
        rule, figure = _one_finding(consequence), _one_figure(consequence)
        together = rule is not None and len(findings[rule]) > _ALIKE
        first = kept.setdefault(rule if together else figure or (i,), consequence)
        if first is not consequence:
            first.others.append(consequence.subject)
            if together:
                first.alike.append(consequence)
    return list(kept.values())


def _one_finding(consequence: Consequence) -> object:
    """Findings that share it are told together: one rule, one reason, and no figures before and after."""
    if consequence.finding is None or consequence.measured != (None, None):
        return None
    rule, reasons = consequence.finding.rule, consequence.because
    return consequence.kind, rule, consequence.gravity, reasons, consequence.contributes, consequence.together


def _one_figure(consequence: Consequence) -> object:
    if consequence.kind not in (Kind.VOLTAGE, Kind.UNKNOWN, Kind.KNOWN):
        return None
    after = consequence.measured[1]
    if consequence.kind is Kind.UNKNOWN and after is not None:
        # Reasons add up on the way from the source: what lacks the same first fact is lost for the same cause.
        return consequence.kind, after.name, _first_reason(consequence.subject, after.unknown), consequence.because
    rest = consequence.headline.removeprefix(consequence.subject)
    about = rest if consequence.kind is not Kind.KNOWN else rest.partition(": ")[2].partition(":")[0]
    return consequence.kind, about, consequence.because


def _first_reason(subject: str, reasons: Sequence[str]) -> str:
    """The first reason; one that is the thing's own (the size of its wires) without its name and figures."""
    first = reasons[0] if reasons else ""
    own = first.replace(f"`{subject}`", "")
    return first if own == first else re.sub(r"[0-9]+", "", own)


def counted(found: Iterable[Consequence]) -> int:
    """How many consequences a list tells."""
    return sum(one.count for one in found)


def by_cause(found: Iterable[Consequence]) -> dict[str, list[Consequence]]:
    """Consequences under the changes that brought them about, whichever had the larger part; as they are met."""
    words: dict[object, str] = {}
    groups: dict[str, list[Consequence]] = {}
    for one in found:
        key = frozenset(change.words for change in one.because), one.more_causes
        cause = words.setdefault(key, f"because {one.causes}" if one.because else "")
        groups.setdefault(cause, []).append(one)
    return groups


def also(consequence: Consequence) -> str:
    """``; the same at LP-1, LP-2 and 4 more``."""
    if consequence.alike:
        return f"; the same rule at {_places(consequence.alike)}"
    others = list(dict.fromkeys(consequence.others))
    if not others:
        return ""
    named, more = others[:LISTED], len(others) - LISTED
    return f"; the same at {', '.join(named)}" + (f" and {more} more" if more > 0 else "")


def _places(alike: Sequence[Consequence]) -> str:
    """``LA-1 (circuits 2; 7,9), LA-2`` and how many more."""
    boards: dict[str, list[str]] = {}
    for one in alike[:_PLACES]:
        position = one.finding.position if one.finding is not None else ""
        boards.setdefault(one.subject, []).extend([position] if position else [])
    named = [
        f"{subject} (circuit{'s' if at[1:] else ''} {'; '.join(at)})" if at else subject
        for subject, at in boards.items()
    ]
    more = len(alike) - _PLACES
    return ", ".join(named) + (f" and {more} more" if more > 0 else "")
