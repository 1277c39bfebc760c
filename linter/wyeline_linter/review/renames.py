"""Which names of the older version live on under another name.

A thing was renamed where one name went and one of the same kind came, and what is written about it, and what feeds it
and what it feeds, is (nearly) the same. Nothing is taken for renamed where two candidates fit alike.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from typing import Any, NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.blocks import TextFile
from wyeline_grammar.references import SHARED, names_of
from wyeline_grammar.tokens import spelled
from wyeline_linter.review.documents import HEAD, Entry, Key, Version

_ENOUGH = 1.5
"""Of 2: one for the words of the statement, one for its feeders."""
_WORDS, _WORDS_OF_A_LEAF = 0.6, 0.85
"""What the words must share by themselves; a load at the end of one feeder has nothing else to be known by."""
_MARGIN = 0.15
_THE_SAME, _MARGIN_OF_THE_SAME = 1.99, 0.02
"""Where everything is the same, another one that is nearly so is no rival."""
_MOST_PAIRS = 40_000
"""Above that only statements of equal words are looked at: a rewritten site is no renamed one."""


class Renamed(NamedTuple):
    """``kind`` is the kind of equipment, ``raceway`` or ``label`` (of a feeder)."""

    kind: str
    old: str
    new: str


def renames(old: Version, new: Version) -> list[Renamed]:
    """Names that went and live on under others, in the order of the newer version."""
    found: dict[str, Renamed] = {}
    while True:  # a neighbour that was renamed too is known in the next round
        more = _round(old, new, {r.old: r.new for r in found.values()})
        if not more:
            break
        found |= {r.old: r for r in more}
    found |= {r.old: r for r in _labels(old, new, {r.old: r.new for r in found.values()})}
    return sorted(found.values(), key=lambda r: (new.order.get(Key("named", r.new), 0), r.new))


def renamed_reader(read: Callable[[str], str], names: Mapping[str, str]) -> Callable[[str], str]:
    """Texts with some names written otherwise, wherever they are declared or used."""
    if not names:
        return read

    def changed(path: str) -> str:
        lines: list[str] = []
        for block in TextFile(path, read(path)).blocks:
            new = list(block.lines)
            for named in sorted(names_of(block.lines), key=lambda n: n.span, reverse=True):
                if named.space == SHARED and named.name in names:
                    row, start, end = named.span
                    new[row] = new[row][:start] + spelled(names[named.name]) + new[row][end:]
            lines += new
        return "\n".join(lines)

    return changed


def _round(old: Version, new: Version, known: Mapping[str, str]) -> list[Renamed]:
    taken = set(known.values())
    gone = _by_kind(e for k, e in old.entries.items() if _only_in(k, new) and k.name not in known)
    came = _by_kind(e for k, e in new.entries.items() if _only_in(k, old) and k.name not in taken)
    old_feeders, new_feeders = _feeders(old, new, known), _feeders(new, old, {name: name for name in taken})
    found: list[Renamed] = []
    for kind in gone.keys() & came.keys():
        left, right = gone[kind], came[kind]
        exact = len(left) * len(right) > _MOST_PAIRS
        marks = {e.key.name: _marks(e, known) for e in left} | {e.key.name: _marks(e, {}) for e in right}
        scores = {
            (a.key.name, b.key.name): score
            for a in left
            for b in right
            if not exact or marks[a.key.name] == marks[b.key.name]
            if (score := _score(a, b, marks, old_feeders, new_feeders)) >= _ENOUGH
        }
        found += [Renamed(kind, a, b) for a, b in _mutual(scores)]
    return found


def _only_in(key: Key, other: Version) -> bool:
    return key.sort in ("named", "raceway") and bool(key.name) and key.number == 1 and key not in other.entries


def _by_kind(entries: Iterable[Entry]) -> dict[str, list[Entry]]:
    found: dict[str, list[Entry]] = {}
    for entry in entries:
        statement = entry.statement
        if isinstance(statement, m.EquipmentStatement):
            kind = f"type {statement.kind}" if statement.is_type else statement.kind
        else:
            kind = "raceway"
        found.setdefault(kind, []).append(entry)
    return found


def _marks(entry: Entry, known: Mapping[str, str]) -> Counter[str]:
    """The words of a statement without its name, names under their newer spelling."""
    words = [w for part in (HEAD, *entry.circuits) for w in entry.words(part).split()]
    return Counter(known.get(w, w) for w in words if w.strip('"') != entry.key.name)


def _feeders(version: Version, other: Version, known: Mapping[str, str]) -> dict[str, Counter[tuple[str, str]]]:
    """The other ends of the feeders at each name: by name, or by kind where that name is in one version only."""

    def called(name: str) -> str:
        if name in known:
            return known[name]
        entry = version.entries.get(Key("named", name))
        if entry is None or Key("named", name) in other.entries:
            return name
        return f"a {getattr(entry.statement, 'kind', 'thing')}"

    found: dict[str, Counter[tuple[str, str]]] = {}
    for entry in version.entries.values():
        statement = entry.statement
        if isinstance(statement, m.FeederStatement) and statement.source is not None and statement.target is not None:
            source, target = statement.source.name, statement.target.name
            found.setdefault(source, Counter())["to", called(target)] += 1
            found.setdefault(target, Counter())["from", called(source)] += 1
    return found


def _score(
    a: Entry,
    b: Entry,
    marks: Mapping[str, Counter[str]],
    old_feeders: Mapping[str, Counter[tuple[str, str]]],
    new_feeders: Mapping[str, Counter[tuple[str, str]]],
) -> float:
    one, other = a.key.name, b.key.name
    ends = old_feeders.get(one, Counter())
    words = _alike(marks[one], marks[other])
    if words < (_WORDS if ends.total() > 1 else _WORDS_OF_A_LEAF):
        return 0.0
    return words + _alike(ends, new_feeders.get(other, Counter()))


def _alike(a: Counter[Any], b: Counter[Any]) -> float:
    """How much two bags share: 1 all, 0 nothing (two empty ones share all)."""
    total = a.total() + b.total()
    if not total:
        return 1.0
    return 2 * (a & b).total() / total


def _mutual(scores: Mapping[tuple[str, str], float]) -> list[tuple[str, str]]:
    """The pairs that are each other's best by a margin."""
    by_old: dict[str, list[float]] = {}
    by_new: dict[str, list[float]] = {}
    for (a, b), score in scores.items():
        by_old.setdefault(a, []).append(score)
        by_new.setdefault(b, []).append(score)

    def best(score: float, others: list[float]) -> bool:
        rest = sorted(others)[:-1]
        margin = _MARGIN if score < _THE_SAME else _MARGIN_OF_THE_SAME
        return score == max(others) and (not rest or score - rest[-1] >= margin)

    return [(a, b) for (a, b), s in scores.items() if best(s, by_old[a]) and best(s, by_new[b])]


def _labels(old: Version, new: Version, known: Mapping[str, str]) -> list[Renamed]:
    """Feeders between the same ends under another label."""

    def labelled(version: Version, other: Version, names: Mapping[str, str]) -> dict[tuple[str, str], list[str]]:
        found: dict[tuple[str, str], list[str]] = {}
        for key, entry in version.entries.items():
            s = entry.statement
            if isinstance(s, m.FeederStatement) and s.label and s.source and s.target and key not in other.entries:
                ends = (names.get(s.source.name, s.source.name), names.get(s.target.name, s.target.name))
                found.setdefault(ends, []).append(s.label.text)
        return found

    before, after = labelled(old, new, known), labelled(new, old, {})
    return [
        Renamed("label", gone[0], came[0])
        for ends, gone in before.items()
        if len(gone) == 1 and len(came := after.get(ends, [])) == 1
    ]
