"""Two versions compared from end to end."""

from __future__ import annotations

import os
from dataclasses import dataclass, field

from wyeline_grammar.sources import SourceError
from wyeline_linter.findings import Severity
from wyeline_linter.network import NoSuchStateError
from wyeline_linter.review.causes import Trials, explain
from wyeline_linter.review.consequences import WORSE, Consequence, Kind, consequences
from wyeline_linter.review.documents import Version, nothing, reading
from wyeline_linter.review.fresh import Fresh, fresh
from wyeline_linter.review.ordering import by_gravity, by_weight, gathered
from wyeline_linter.review.physical import Change, changes, circuit_moves
from wyeline_linter.review.renames import renamed_reader, renames
from wyeline_linter.review.revisions import Side, is_range, sides
from wyeline_linter.review.sheets import Sheet, sheets
from wyeline_linter.review.snapshots import Snapshot, take


@dataclass
class Comparison:
    """One model in two versions.

    ``worse`` is sorted by gravity; ``better`` and ``moved`` hold what nobody has to worry about; ``fresh`` what was
    added, with its figures. ``gaps`` counts the
    newer version's findings of figures that could not be calculated. ``bounded`` tells that not every cause could be
    looked for.
    """

    model: str
    old_label: str
    new_label: str
    scenario: str | None
    changes: list[Change] = field(default_factory=list)
    worse: list[Consequence] = field(default_factory=list)
    better: list[Consequence] = field(default_factory=list)
    moved: list[Consequence] = field(default_factory=list)
    fresh: list[Fresh] = field(default_factory=list)
    sheets: list[Sheet] = field(default_factory=list)
    gaps: int = 0
    bounded: bool = False

    @property
    def worst(self) -> Severity | None:
        """The gravest consequence."""
        return max((c.gravity for c in self.worse), default=None)


def compare_sides(old: Side, new: Side, scenario: str | None) -> list[Comparison]:
    """Every model of two sides, paired by name (a lone one with a lone one). Raises SourceError."""
    left, right = dict(old.roots), dict(new.roots)
    if len(left) == len(right) == 1:
        pairs = [(next(iter(right)), next(iter(left.values())), next(iter(right.values())))]
    else:
        names = [*right, *(name for name in left if name not in right)]
        pairs = [(name, left.get(name, ""), right.get(name, "")) for name in names]
    found = []
    for name, old_root, new_root in pairs:
        before = _version(old, old_root or new_root, there=bool(old_root))
        after = _version(new, new_root or old_root, there=bool(new_root))
        found.append(compare_versions(before, after, scenario, name, old.label, new.label))
    return found


def versions_of(old: str, root: str) -> tuple[str, Version, Version]:
    """A model on disk, by its root, and its earlier version in a folder, a file or a git revision, with what that is
    called. Raises SourceError where there is none, or several and none of that name."""
    if not os.path.exists(old) and is_range(old):
        raise SourceError(old, "a report marks the changes since one issue: name one revision, not a range")
    before, after = sides(old, root, root)
    names = dict(before.roots)
    earlier = names.get(os.path.basename(root)) or (next(iter(names.values())) if len(names) == 1 else None)
    if earlier is None:
        raise SourceError(old, f"of its models none is called {os.path.basename(root)}: {', '.join(names)}")
    return before.label, _version(before, earlier, there=True), _version(after, root, there=True)


def _version(side: Side, root: str, *, there: bool) -> Version:
    return Version(root, reading(side.files) if there else nothing, side.workspace(root), side.configuration(root))


def compare_versions(
    old: Version,
    new: Version,
    scenario: str | None = None,
    model: str = "",
    old_label: str = "old",
    new_label: str = "new",
) -> Comparison:
    """Compare two versions of one model. Raises SourceError where one of them lacks the scenario."""
    result = Comparison(model, old_label, new_label, scenario)
    renamed, as_named = renames(old, new), old
    if renamed:
        names = {r.old: r.new for r in renamed}
        old = Version(old.root, renamed_reader(old.reader(), names), old.workspace, old.configuration)
    result.changes = changes(old, new, renamed)
    before = _taken(old, scenario, old_label)
    after = _taken(new, scenario, new_label)
    found = consequences(before, after, circuit_moves(result.changes))
    trials = Trials(old, new, result.changes, scenario, after)
    explain(sorted(found, key=by_gravity), trials)
    result.bounded = trials.left <= 0
    result.worse = gathered(sorted((c for c in found if c.kind in WORSE), key=by_gravity))
    result.moved = sorted((c for c in found if c.kind is Kind.MOVED), key=by_weight)
    better = (c for c in found if c.kind not in WORSE and c.kind is not Kind.MOVED)
    result.better = gathered(sorted(better, key=by_gravity))
    result.fresh = fresh(before, after)
    printed = _taken(as_named, scenario, old_label).analysis if renamed else before.analysis
    result.sheets = sheets(printed, after.analysis) if result.changes else []
    result.gaps = _gaps(after)
    return result


def _taken(version: Version, scenario: str | None, label: str) -> Snapshot:
    try:
        return take(version.root, version.reader(), version.workspace, scenario, version.configuration)
    except NoSuchStateError:
        raise SourceError(label, f"this version of the model has no scenario `{scenario}`") from None


def _gaps(snapshot: Snapshot) -> int:
    return sum(1 for f in snapshot.findings if f.severity is Severity.GAP and f.allowed is None)
