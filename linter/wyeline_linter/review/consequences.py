"""What follows from the changes: findings that come and go, limits newly exceeded, figures that move or get lost."""

from __future__ import annotations

import enum
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field

from wyeline_linter.findings import Finding, Severity
from wyeline_linter.review.measures import BALANCE, Measured, from_to, written
from wyeline_linter.review.physical import Change, Moves
from wyeline_linter.review.snapshots import FindingKey, Snapshot
from wyeline_linter.review.told_already import told_already

REASONS = 3
"""Reasons of a figure that is not known which one sentence gives; the rest is counted."""
LEAST_CHANGE = 0.01
"""Smaller changes of a figure are not worth a reader's time."""
_NOISE = {"A": 0.05, "VA": 5.0, "W": 5.0, "V": 0.05, "ratio": 0.001, BALANCE: 0.02}
"""Changes below are rounding, whatever their share."""


class Kind(enum.Enum):
    """Sorts of consequence."""

    FINDING = "finding"
    """A rule fails that did not."""
    LIMIT = "limit"
    """A figure exceeds a rating or a limit that it kept."""
    VOLTAGE = "voltage"
    UNKNOWN = "unknown"
    """A figure that was known is not any more."""
    MENDED = "mended"
    """A rule that failed does not any more."""
    RELIEVED = "relieved"
    """A figure is back below a rating or limit."""
    KNOWN = "known"
    ACCEPTED = "accepted"
    """A failing rule is now accepted with a reason."""
    MOVED = "moved"
    """A figure changed and crossed no limit."""


WORSE = frozenset({Kind.FINDING, Kind.LIMIT, Kind.VOLTAGE, Kind.UNKNOWN})
"""The kinds that a reviewer has to judge, and that the exit code counts."""

Extra = Sequence[tuple[FindingKey, Finding]]
Probe = Callable[[Snapshot], tuple[bool, float]]
"""Of a mixture of both versions: whether the consequence is not there, and how much of it is undone (0 none, 1 all)."""


@dataclass(slots=True)
class Consequence:
    """One consequence; ``headline`` says what, ``because`` (filled in by ``causes``) why.

    ``measured`` are the figure before and after, None for findings (and for what was not there). ``contributes``
    tells that no single change undoes it: each of ``because`` has a part in it. ``together`` tells that only undoing
    all of them does.
    """

    kind: Kind
    gravity: Severity
    subject: str
    headline: str
    probe: Probe
    finding: Finding | None = None
    measured: tuple[Measured | None, Measured | None] = (None, None)
    because: tuple[Change, ...] = ()
    more_causes: int = 0
    contributes: bool = False
    together: bool = False
    others: list[str] = field(default_factory=list)
    """Further subjects with the same consequence for the same reasons."""
    alike: list[Consequence] = field(default_factory=list)
    """Further findings of the same rule for the same reasons, told with this one."""

    @property
    def count(self) -> int:
        """How many findings or figures it stands for."""
        return 1 + len(self.alike)

    @property
    def words(self) -> str:
        """The whole sentence."""
        return self.headline + self.reason

    @property
    def reason(self) -> str:
        """``, because …``; empty where no change was found to bring it about."""
        if not self.because:
            return ""
        note = " (undoing one of them is not enough)" if self.together and len(self.because) > 1 else ""
        note = " (each has a part in it)" if self.contributes and len(self.because) > 1 else note
        return f", because {self.causes}{note}"

    @property
    def causes(self) -> str:
        """The changes that brought it about, in words."""
        more = f", and {self.more_causes} more change{'s' if self.more_causes > 1 else ''}" if self.more_causes else ""
        return " and ".join(c.cause for c in self.because) + more


def consequences(old: Snapshot, new: Snapshot, moves: Moves) -> list[Consequence]:
    """Every consequence, without causes, in no particular order. Both snapshots use the newer names; ``moves`` are the
    circuits that sit elsewhere now."""
    found = list(_of_findings(old, new, moves))
    told = _by_subject(c for c in found if c.kind in (Kind.FINDING, Kind.MENDED))
    for key in {**old.measures, **new.measures}:
        before, after = old.measures.get(key), new.measures.get(key)
        if told_already(key, old, new):
            continue
        for one in _of_figure(before, after):
            partner = _partner(one, told)
            if partner is None:
                found.append(one)
            elif partner.measured == (None, None):  # the rule says the same: one entry, the figures in front
                partner.headline = f"{one.headline} ({partner.finding.rule})" if partner.finding else one.headline
                partner.measured = one.measured
                partner.probe = one.probe if partner.kind is Kind.FINDING else partner.probe
    return found


def _by_subject(found: Iterator[Consequence]) -> dict[str, list[Consequence]]:
    result: dict[str, list[Consequence]] = {}
    for one in found:
        result.setdefault(one.subject, []).append(one)
    return result


def _partner(one: Consequence, told: dict[str, list[Consequence]]) -> Consequence | None:
    wanted = {Kind.LIMIT: Kind.FINDING, Kind.RELIEVED: Kind.MENDED}.get(one.kind)
    measured = one.measured[1] or one.measured[0]
    if wanted is None or measured is None:
        return None
    for other in told.get(one.subject, ()):
        if other.kind is wanted and other.finding is not None:
            grave = other.gravity >= one.gravity or wanted is Kind.MENDED
            if grave and _speaks_of(other.finding, measured.family):
                return other
    return None


def _speaks_of(finding: Finding, family: tuple[str, ...]) -> bool:
    """Whether a rule found what a figure of a family shows. One rule holds withstand ratings against fault currents
    and peak ratings against first peaks: which of them, what it needs says."""
    peak = "`peak`" in finding.needed
    if peak or "peak" in family:
        return peak and "peak" in family
    return any(word in finding.rule for word in family)


# findings


def _of_findings(old: Snapshot, new: Snapshot, moves: Moves) -> Iterator[Consequence]:
    came, gone = list(_extra(new, old)), list(_extra(old, new))
    stayed = _went_along(came, gone, moves)
    for key, finding in came:
        if id(finding) in stayed:
            continue
        yield Consequence(Kind.FINDING, finding.severity, key.subject, _headline(key, finding), _gone(key), finding)
    for bare, finding in new.gravest.items():
        before = old.gravest.get(bare)
        if before is None or before.severity == finding.severity or new.counts[bare] > old.counts[bare]:
            continue
        if finding.severity > before.severity:
            words = f"{_headline(bare, finding)}, {before.severity.word} before"
            yield Consequence(Kind.FINDING, finding.severity, bare.subject, words, _less(bare, finding), finding)
        else:
            words = f"{_headline(bare, finding)}: {finding.severity.word} only, {before.severity.word} before"
            yield Consequence(Kind.MENDED, before.severity, bare.subject, words, _more(bare, finding), finding)
    for key, finding in gone:
        if id(finding) in stayed:
            continue
        accepted = new.accepted.get(key._replace(words=""))
        if accepted is not None:
            words = f'{_headline(key, finding)}: now accepted with "{accepted.allowed}"'
            yield Consequence(Kind.ACCEPTED, finding.severity, key.subject, words, _back(key), finding)
            continue
        words = f"{_headline(key, finding)}: no longer so"
        yield Consequence(Kind.MENDED, finding.severity, key.subject, words, _back(key), finding)


def _extra(one: Snapshot, other: Snapshot) -> Iterator[tuple[FindingKey, Finding]]:
    """The findings that one version has more of than the other, those of other words first."""
    spare = {key: one.counts[key] - other.counts[key] for key in one.counts}
    ordered = sorted(one.failing.items(), key=lambda item: (item[0] in other.failing, item[0]))
    for key, group in ordered:
        for finding in group[:: -1 if key in other.failing else 1]:
            bare = key._replace(words="")
            if spare[bare] > 0:
                spare[bare] -= 1
                yield key, finding


def _went_along(came: Extra, gone: Extra, moves: Moves) -> set[int]:
    """The findings (by id) that circuits took from an old position to a new one: nothing follows from them."""
    found: set[int] = set()
    for key, finding in gone:
        to = moves.get((key.subject, key.position))
        for other, same in came if to is not None else ():
            alike = other.rule == key.rule and same.severity is finding.severity
            if alike and (other.subject, other.position) == to and id(same) not in found:
                found |= {id(finding), id(same)}
                break
    return found


def _headline(key: FindingKey, finding: Finding) -> str:
    where = f"{key.subject} circuit {key.position}" if key.position else key.subject
    said = finding.message
    for again in (f"`{key.subject}`: ", f"circuit {key.position} of `{key.subject}`: "):
        said = said.removeprefix(again)
    return f"{where}: {said} ({finding.rule})"


def _gone(key: FindingKey) -> Probe:
    bare = key._replace(words="")

    def probe(snapshot: Snapshot) -> tuple[bool, float]:
        gone = key not in snapshot.failing if snapshot.counts[bare] else True
        return gone, float(gone)

    return probe


def _less(bare: FindingKey, finding: Finding) -> Probe:
    def probe(snapshot: Snapshot) -> tuple[bool, float]:
        found = snapshot.gravest.get(bare)
        less = found is None or found.severity < finding.severity
        return less, float(less)

    return probe


def _more(bare: FindingKey, finding: Finding) -> Probe:
    def probe(snapshot: Snapshot) -> tuple[bool, float]:
        found = snapshot.gravest.get(bare)
        more = found is not None and found.severity > finding.severity
        return more, float(more)

    return probe


def _back(key: FindingKey) -> Probe:
    bare = key._replace(words="")

    def probe(snapshot: Snapshot) -> tuple[bool, float]:
        back = snapshot.counts[bare] > 0
        return back, float(back)

    return probe


# figures


def _of_figure(before: Measured | None, after: Measured | None) -> Iterator[Consequence]:
    measured = after or before
    assert measured is not None
    if not _comparable(before, after):
        before = None
    subject, pair = measured.subject, (before, after)
    was_over, over = (m.over if m is not None else None for m in pair)
    if after is not None and over is not None and (was_over is None or over.gravity > was_over.gravity):
        words = f"{subject}: {_figures(before, after)}, above {over.words}{_limit_before(before, after)}"
        yield Consequence(Kind.LIMIT, over.gravity, subject, words, _over(pair, over.gravity), measured=pair)
        return
    if before is None or after is None:
        return
    if was_over is not None and over is None and isinstance(after.value, float):
        words = f"{subject}: {_figures(before, after)}, no longer above {was_over.words}"
        yield Consequence(Kind.RELIEVED, was_over.gravity, subject, words, _relieved(pair), measured=pair)
        return
    if before.value is not None and after.value is None:
        reasons = "; ".join(after.unknown[:REASONS]) or "no reason is given"
        more = len(after.unknown) - REASONS
        reasons += f"; and {more} more reason{'s' if more > 1 else ''}" if more > 0 else ""
        words = f"{subject}: {after.name} is not known any more: {reasons}"
        yield Consequence(Kind.UNKNOWN, Severity.WARNING, subject, words, _valued(pair), measured=pair)
    elif before.value is None and after.value is not None:
        words = f"{subject}: {after.name} is now known: {_amount(after)}"
        yield Consequence(Kind.KNOWN, Severity.ADVICE, subject, words, _valued(pair), measured=pair)
    elif isinstance(before.value, str) and isinstance(after.value, str):
        if before.value != after.value:
            words = f"{subject}: {after.name} {_voltages(before.value, after.value)}"
            yield Consequence(Kind.VOLTAGE, Severity.WARNING, subject, words, _valued(pair), measured=pair)
    elif _moved(before, after):
        words = f"{subject}: {_figures(before, after)}{headroom(after)}"
        yield Consequence(Kind.MOVED, Severity.ADVICE, subject, words, _valued(pair), measured=pair)


def _comparable(before: Measured | None, after: Measured | None) -> bool:
    """Whether two figures are of one sort; held against another sort of rating they are in another unit."""
    numbers = [m for m in (before, after) if m is not None and isinstance(m.value, float)]
    return len({m.unit for m in numbers}) < 2


def worth_telling(old: float, new: float, unit: str) -> bool:
    """Whether a figure changed by at least one percent, rounding left aside."""
    change = abs(new - old)
    return change > _NOISE.get(unit, 0.0) and change >= LEAST_CHANGE * max(abs(old), abs(new))


def _moved(before: Measured, after: Measured) -> bool:
    old, new = before.value, after.value
    return isinstance(old, float) and isinstance(new, float) and worth_telling(old, new, after.unit)


def _figures(before: Measured | None, after: Measured) -> str:
    assert isinstance(after.value, float)
    state = f", {after.state}" if after.state else ""
    if before is None or not isinstance(before.value, float):
        return f"{after.name} {written(after.value, after.unit)}{state}"
    if not worth_telling(before.value, after.value, after.unit):
        return f"{after.name} {written(after.value, after.unit)}{state}"
    return f"{after.name} {from_to(before.value, after.value, after.unit)}{state}"


def headroom(measured: Measured) -> str:
    """`` (72 % of its 35 kA rating)``; of what is a share itself the aim, ``(aimed for: 5 %)``, as a share of a share
    tells nobody anything. Nothing where it is held against nothing."""
    used = measured.used
    if used is None:
        return ""
    part, limit = used
    if measured.unit in ("ratio", BALANCE):
        return f" (aimed for: {limit.words.removeprefix('the ')})"
    return f" ({written(part, 'ratio', 2)} of {limit.words})"


def _limit_before(before: Measured | None, after: Measured) -> str:
    """The rating before, where it is the rating that changed."""
    if before is None or after.over is None:
        return ""
    same = [limit for limit in before.limits if limit.gravity is after.over.gravity]
    if not same or any(limit.amount == after.over.amount for limit in same):
        return ""
    return f" ({written(same[0].amount, after.unit)} before)"


def _amount(measured: Measured) -> str:
    if isinstance(measured.value, float):
        return written(measured.value, measured.unit)
    return str(measured.value)


def _voltages(old: str, new: str) -> str:
    (short_old, _, long_old), (short_new, _, long_new) = (text.partition(": ") for text in (old, new))
    if short_old != short_new:
        return f"{short_old} -> {short_new}"
    parts_old, parts_new = long_old.split("; "), long_new.split("; ")
    went, came = [p for p in parts_old if p not in parts_new], [p for p in parts_new if p not in parts_old]
    return f"{short_new}: {'; '.join(went) or 'nothing'} -> {'; '.join(came) or 'nothing'}"


Pair = tuple[Measured | None, Measured | None]


def _at(snapshot: Snapshot, pair: Pair) -> Measured | None:
    one = pair[1] or pair[0]
    assert one is not None
    return snapshot.measures.get((one.subject, one.name))


def _share(found: Measured | None, pair: Pair) -> float:
    """How much of a change of a figure is undone."""
    before, after = (m.value if m is not None else None for m in pair)
    value = found.value if found is not None else None
    if isinstance(value, float) and isinstance(before, float) and isinstance(after, float) and after != before:
        return (after - value) / (after - before)
    return float(value != after)


def _over(pair: Pair, gravity: Severity) -> Probe:
    def probe(snapshot: Snapshot) -> tuple[bool, float]:
        found = _at(snapshot, pair)
        limit = found.over if found is not None else None
        return limit is None or limit.gravity < gravity, _share(found, pair)

    return probe


def _relieved(pair: Pair) -> Probe:
    def probe(snapshot: Snapshot) -> tuple[bool, float]:
        found = _at(snapshot, pair)
        return found is not None and found.over is not None, _share(found, pair)

    return probe


def _valued(pair: Pair) -> Probe:
    def probe(snapshot: Snapshot) -> tuple[bool, float]:
        share = _share(_at(snapshot, pair), pair)
        return share >= _UNDONE, share

    return probe


_UNDONE = 0.9
"""A figure that went back by this much is undone."""
