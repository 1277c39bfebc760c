"""Which changes bring a consequence about: found by judging the model with changes undone, never by guessing.

Few changes are undone one by one. Many are undone in halves, and only halves that matter are looked into further, so
that a large edit costs a number of judgements that grows with the changes that matter. Where no single change undoes a
consequence, the smallest set that does is sought. The number of judgements is bounded; what the bound leaves open is
told as the whole group of changes that undoes it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace

from wyeline_grammar.sources import SourceError
from wyeline_linter.review.consequences import Consequence, Kind
from wyeline_linter.review.documents import CONFIGURATION, Piece, Version
from wyeline_linter.review.physical import Change
from wyeline_linter.review.snapshots import Snapshot, take

ONE_BY_ONE = 24
"""Up to so many changes each is undone by itself; more are undone in halves."""
MOST_TRIALS = 160
MOST_STATEMENTS = 60_000
"""Trials times statements of the model: a large model is judged less often."""
SHOWN = 3
"""Causes that one sentence names."""
_PART = 0.2
"""Share of a change of a figure from which an edit is named as having a part in it."""


@dataclass
class Trials:
    """Mixtures of two versions, judged when asked for and kept."""

    old: Version
    new: Version
    changes: Sequence[Change]
    scenario: str | None = None
    like: Snapshot | None = None
    """The newer version judged, whose solved circuit serves every mixture with the same wiring."""
    left: int = MOST_TRIALS
    _kept: dict[frozenset[int], Snapshot | None] = field(default_factory=dict)

    def __post_init__(self) -> None:
        size = max(1, len(self.new.entries))
        self.left = max(8, min(MOST_TRIALS, MOST_STATEMENTS // size))

    def without(self, group: Iterable[int]) -> Snapshot | None:
        """The newer version with these changes undone; None where the bound is reached or it cannot be judged."""
        key = frozenset(group)
        if key not in self._kept:
            if self.left <= 0:
                return None
            self.left -= 1
            taken: dict[Piece, Version] = {p: self.old for i in key for p in self.changes[i].pieces}
            self._kept[key] = self._judged(taken)
        return self._kept[key]

    def judged(self, index: int) -> bool:
        """Whether one change has been undone by itself already."""
        return frozenset((index,)) in self._kept

    def _judged(self, taken: dict[Piece, Version]) -> Snapshot | None:
        new = self.new
        configuration = new.configuration
        if Piece(CONFIGURATION) in taken:  # the patterns of its paths are those of the newer version's folder
            configuration = replace(self.old.configuration, path=configuration.path)
        try:
            return take(new.root, new.reader(taken), new.workspace, self.scenario, configuration, self.like)
        except (SourceError, KeyError):
            return None


@dataclass
class _Evidence:
    """What trials showed of one consequence."""

    undone: dict[int, float] = field(default_factory=dict)
    part: dict[int, float] = field(default_factory=dict)
    group: tuple[int, ...] = ()


def explain(found: Sequence[Consequence], trials: Trials) -> None:
    """Fill in the causes of each consequence."""
    indices = tuple(i for i, change in enumerate(trials.changes) if change.pieces)
    if not indices or not found:
        return
    evidence = {id(c): _Evidence(group=indices) for c in found}
    grave = [c for c in found if c.kind is not Kind.MOVED]
    one_by_one = len(indices) <= min(ONE_BY_ONE, trials.left)
    if one_by_one:
        for i in indices:
            _weigh(grave, trials, (i,), evidence)
    else:
        _halve(grave, trials, indices, evidence)
    # Figures that only moved are looked at in what was judged anyway: a site has thousands of them.
    moved = [c for c in found if c.kind is Kind.MOVED]
    for i in indices if moved else ():
        if one_by_one or trials.judged(i):
            _weigh(moved, trials, (i,), evidence)
    for consequence in found:
        _settle(consequence, evidence[id(consequence)], trials)


def _weigh(
    found: Iterable[Consequence], trials: Trials, group: tuple[int, ...], evidence: dict[int, _Evidence]
) -> list[Consequence]:
    """Undo a group; returns the consequences that it matters for."""
    snapshot = trials.without(group)
    if snapshot is None:
        return []
    touched = []
    for consequence in found:
        undone, share = consequence.probe(snapshot)
        if not undone and share < _PART:
            continue
        touched.append(consequence)
        known = evidence[id(consequence)]
        if undone and len(group) < len(known.group):
            known.group = group
        if len(group) == 1:
            (known.undone if undone else known.part)[group[0]] = share
    return touched


def _halve(found: list[Consequence], trials: Trials, group: tuple[int, ...], evidence: dict[int, _Evidence]) -> None:
    """Look for what matters in each half of a group, and on where something does."""
    if len(group) == 1 or not found:
        return
    middle = len(group) // 2
    for half in (group[:middle], group[middle:]):
        _halve(_weigh(found, trials, half, evidence), trials, half, evidence)


def _settle(consequence: Consequence, known: _Evidence, trials: Trials) -> None:
    if known.undone:
        chosen = sorted(known.undone, key=lambda i: -known.undone[i])
    elif known.part:
        chosen = sorted(known.part, key=lambda i: -known.part[i])
        consequence.contributes = True
    elif consequence.kind is Kind.MOVED:
        chosen = _of_the_subject(consequence, trials)
        consequence.together = True
    else:
        chosen = _smallest(consequence, known.group, trials)
        consequence.together = True
    consequence.because = tuple(trials.changes[i] for i in chosen[:SHOWN])
    consequence.more_causes = max(0, len(chosen) - SHOWN)


def _of_the_subject(consequence: Consequence, trials: Trials) -> list[int]:
    """All changes of the thing itself, where undoing them together brings its figure back."""
    if len(trials.changes) > ONE_BY_ONE:
        return []
    group = [i for i, c in enumerate(trials.changes) if c.pieces and consequence.subject in _about(c)]
    snapshot = trials.without(group) if len(group) > 1 else None
    return group if snapshot is not None and consequence.probe(snapshot)[0] else []


def _about(change: Change) -> set[str]:
    """What a change is about, with both ends of a feeder and both boards of a circuit."""
    names = {change.subject}
    for piece in change.pieces:
        source, arrow, target = piece.key.name.partition(" -> ")
        names |= {piece.key.name, source.split(".")[0], target.split(".")[0]} if arrow else {piece.key.name}
    return names


def _smallest(consequence: Consequence, group: tuple[int, ...], trials: Trials) -> list[int]:
    """A smallest part of a group of changes that undoes a consequence: nothing can be left out of it."""
    kept = list(group)
    width = max(1, len(kept) // 2)
    while width:
        at = 0
        while at < len(kept):
            rest = kept[:at] + kept[at + width :]
            snapshot = trials.without(rest) if rest else None
            if snapshot is not None and consequence.probe(snapshot)[0]:
                kept = rest
            else:
                at += width
        width //= 2
    return kept
