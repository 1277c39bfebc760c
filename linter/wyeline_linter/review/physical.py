"""What changed physically between two versions, each change in words and with the pieces that make it up."""

from __future__ import annotations

import enum
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from wyeline_grammar import model as m
from wyeline_grammar.blocks import Block
from wyeline_linter.review.documents import CONFIGURATION, HEAD, Entry, Key, Piece, Version
from wyeline_linter.review.renames import Renamed
from wyeline_linter.review.wording import (
    Said,
    circuit_changes,
    feeder_in_words,
    in_words,
    issue_changes,
    statement_changes,
)


class Kind(enum.Enum):
    """Sorts of change, in the order in which they are listed."""

    ADDED = "added"
    REMOVED = "removed"
    RE_FED = "re-fed"
    RE_RATED = "re-rated"
    CHANGED = "changed"
    MOVED = "moved"
    RENAMED = "renamed"
    ISSUED = "issued"


@dataclass(frozen=True, slots=True)
class Change:
    """One edit that is made or left as a whole.

    ``words`` say it whole (``T-1 went from 75 to 150 kVA``), ``brief`` shorter where it is told as a cause; ``subject``
    is the name or feeder it is about; ``pieces`` are what to exchange to undo it (none for a renaming: it changes
    nothing electrically); ``block`` and ``row`` say where it stands, in the newer version where it still does.
    """

    kind: Kind
    sort: str
    subject: str
    words: str
    pieces: tuple[Piece, ...]
    block: Block | None = None
    row: int = 0
    brief: str = ""

    @property
    def cause(self) -> str:
        """The words behind "because"."""
        return self.brief or self.words

    @property
    def place(self) -> tuple[str, int] | None:
        """File and line (from 1)."""
        return None if self.block is None else (self.block.file, self.block.first_line + self.row + 1)


RATINGS = frozenset(
    "power rating bus main incomer rated withstand series peak fault fault-min limit frame pickup service z".split()
)
"""Facts whose change is a new rating."""


def changes(old: Version, new: Version, renamed: Iterable[Renamed] = ()) -> list[Change]:
    """Every change of meaning from ``old`` (already under the newer names) to ``new``, in the order of the files."""
    practice = new.model.basis
    found = list(_renamings(new, renamed))
    gone = {k: e for k, e in old.entries.items() if k not in new.entries}
    came = {k: e for k, e in new.entries.items() if k not in old.entries}
    found += _refed(gone, came, practice)
    found += _whole(gone, came)
    for key, entry in new.entries.items():
        before = old.entries.get(key)
        if before is not None and before.lines != entry.lines:
            found += _within(before, entry, practice)
    found = _between_boards(found, old, new)
    if replace(old.configuration, path=None) != replace(new.configuration, path=None):
        words = "wyeline.toml says other severities, limits or table rows"
        found.append(Change(Kind.CHANGED, "configuration", "wyeline.toml", words, (Piece(CONFIGURATION),)))
    return sorted(found, key=lambda c: _where(c, old, new))


Moves = Mapping[tuple[str, str], tuple[str, str]]
"""Circuits that sit elsewhere now: old board and position (as in ``2,4``), new board and position."""


def circuit_moves(found: Iterable[Change]) -> Moves:
    """Which circuits moved."""
    moved = (change.pieces for change in found if change.kind is Kind.MOVED and change.sort == "circuit")
    return {(was.key.name, _place(was.part)): (now.key.name, _place(now.part)) for now, was in moved}


def _where(change: Change, old: Version, new: Version) -> tuple[int, int, str]:
    if change.pieces:
        key = change.pieces[0].key
        return new.order.get(key, len(new.order) + old.order.get(key, 0)), change.row, change.words
    return new.order.get(Key("named", change.subject), 0), change.row, change.words


def _renamings(new: Version, renamed: Iterable[Renamed]) -> Iterator[Change]:
    for one in renamed:
        entry = next(
            (new.entries[k] for s in ("named", "raceway", "feeder") if (k := Key(s, one.new)) in new.entries), None
        )
        block = entry.block if entry is not None else None
        words = f"{one.kind} {one.old} is now called {one.new}"
        yield Change(Kind.RENAMED, one.kind, one.new, words, (), block)


# whole statements


def _refed(gone: dict[Key, Entry], came: dict[Key, Entry], practice: str | None) -> Iterator[Change]:
    """Feeders that went and came into one thing: it has another supply. What is told here leaves both dictionaries."""
    for by_port in (True, False):
        ends: dict[str, tuple[list[Key], list[Key]]] = {}
        for side, entries in enumerate((gone, came)):
            for key, entry in entries.items():
                target = _target(entry)
                if target is not None:
                    ends.setdefault(target.text if by_port else target.name, ([], []))[side].append(key)
        for name, (left, right) in ends.items():
            for a, b in zip(left, right, strict=False):
                before, after = gone.pop(a), came.pop(b)
                words = _refed_words(before.statement, after.statement, practice)
                yield Change(
                    Kind.RE_FED,
                    "feeder",
                    name.split(".")[0],
                    words,
                    (Piece(b), Piece(a)),
                    after.block,
                    brief=words.partition(" (")[0],
                )


def _refed_words(before: m.Statement, after: m.Statement, practice: str | None) -> str:
    assert isinstance(before, m.FeederStatement) and isinstance(after, m.FeederStatement)
    old, new = before.source, after.source
    assert old is not None and new is not None and after.target is not None and before.target is not None
    if old.text == new.text and before.target.text == after.target.text:
        first, second = (s.label.text if s.label else "no label" for s in (before, after))
        words = f"{new.text} -> {after.target.text} went from the label {first} to {second}"
    elif old.text == new.text:
        words = f"{old.text} now feeds {after.target.text} instead of {before.target.text}"
    else:
        words = f"{after.target.text} is fed from {new.text} instead of {old.text}"
    more = statement_changes(before, after, practice)
    return f"{words} ({'; '.join(w for _, w in more)})" if more else words


def _target(entry: Entry) -> m.End | None:
    """Where a feeder ends; None for other statements, and for one that is not read so far as to say what feeds it."""
    statement = entry.statement
    return statement.target if isinstance(statement, m.FeederStatement) and statement.source is not None else None


def _whole(gone: dict[Key, Entry], came: dict[Key, Entry]) -> Iterator[Change]:
    """Statements that came and went; the feeders into what came or went belong to it."""
    for entries, kind in ((came, Kind.ADDED), (gone, Kind.REMOVED)):
        feeders: dict[str, list[Key]] = {}
        for key, entry in entries.items():
            target = _target(entry)
            if target is not None and Key("named", target.name) in entries:
                feeders.setdefault(target.name, []).append(key)
        told = {key for keys in feeders.values() for key in keys}
        for key, entry in entries.items():
            if key in told:
                continue
            into = feeders.get(key.name, []) if key.sort == "named" else []
            pieces = tuple(Piece(k) for k in (key, *into))
            words = f"{in_words(entry.statement, key.name)} was {kind.value}"
            if into:
                fed = ", ".join(feeder_in_words(entries[k].statement) for k in into)
                words += f", fed {fed}"
            yield Change(kind, _sort(entry), key.name, words, pieces, entry.block)


def _sort(entry: Entry) -> str:
    statement = entry.statement
    if isinstance(statement, m.EquipmentStatement):
        return "type" if statement.is_type else statement.kind
    return entry.key.sort


# within a statement


def _within(before: Entry, after: Entry, practice: str | None) -> Iterator[Change]:
    key, sort = after.key, _sort(after)
    name = key.name or sort
    if before.words(HEAD) != after.words(HEAD):
        facts = statement_changes(before.statement, after.statement, practice)
        issued = issue_changes(before.statement, after.statement)
        for words, row in issued:  # told apart: an issue changes no figure, so nothing else is because of it
            pieces = () if facts else (Piece(key),)
            yield Change(Kind.ISSUED, sort, name, words, pieces, after.block, row)
        if issued and not facts:
            return
        refed = _other_source(before.statement, after.statement, practice)
        kind = Kind.RE_RATED if any(fact in RATINGS for fact, _ in facts) else Kind.CHANGED
        subject = name
        called = name if sort != "type" else f"type {name}"
        words, brief = _sentence(called, facts), _brief(called, facts)
        if refed is not None:
            kind, words, brief = Kind.RE_FED, f"{refed[1]}{f' ({words})' if facts else ''}", refed[1]
            subject = refed[0]
        yield Change(kind, sort, subject, words, (Piece(key),), after.block, after.statement.head.line, brief)
    yield from _circuit_changes(before, after, practice)


def _other_source(before: m.Statement, after: m.Statement, practice: str | None) -> tuple[str, str] | None:
    """A labelled feeder with other ends."""
    if not isinstance(before, m.FeederStatement) or not isinstance(after, m.FeederStatement):
        return None
    if before.source is None or after.source is None or before.target is None or after.target is None:
        return None
    if (before.source.text, before.target.text) == (after.source.text, after.target.text):
        return None
    words = _refed_words(before, after, practice).split(" (")[0]
    return after.target.name, words


def _sentence(name: str, facts: Sequence[Said]) -> str:
    """``T-1 went from 75 to 150 kVA and its z from 4 to 6 %``."""
    if not facts:
        return f"{name} was rewritten"
    parts, changed = [], False
    for _, words in facts:
        of = words.removeprefix("had its ")
        parts.append(f"its {of.replace(' changed from ', ' from ', 1)}" if changed and of != words else words)
        changed = " from " in words
    return f"{name} {', '.join(parts[:-1])}{' and ' if parts[1:] else ''}{parts[-1]}"


_BRIEFLY = 2
"""Facts that a cause names; the rest is counted."""


def _brief(name: str, facts: Sequence[Said]) -> str:
    """The change where it is told as a cause: its ratings first, and not all of many facts."""
    if len(facts) <= _BRIEFLY:
        return ""
    first = sorted(facts, key=lambda fact: fact[0] not in RATINGS)[:_BRIEFLY]
    left = len(facts) - len(first)
    return f"{_sentence(name, first)} (and {left} more fact{'s' if left > 1 else ''})"


def _circuit_changes(before: Entry, after: Entry, practice: str | None) -> Iterator[Change]:
    board = after.key.name
    gone = {p: before.words(p) for p in before.circuits if p not in after.circuits}
    came = {p: after.words(p) for p in after.circuits if p not in before.circuits}
    for old, new in _moved(gone, came):
        words = f"circuit {_place(old)} of {board} moved to {_place(new)}"
        pieces = (Piece(after.key, new), Piece(after.key, old))
        yield Change(Kind.MOVED, "circuit", board, words, pieces, after.block, after.circuits[new])
        del gone[old], came[new]
    for part in came:
        words = f"circuit {_place(part)} of {board} was added{_load(after, part)}"
        row = after.circuits[part]
        yield Change(Kind.ADDED, "circuit", board, words, (Piece(after.key, part),), after.block, row)
    for part in gone:
        words = f"circuit {_place(part)} of {board} was removed{_load(before, part)}"
        yield Change(Kind.REMOVED, "circuit", board, words, (Piece(after.key, part),), after.block)
    for part, row in after.circuits.items():
        if part not in before.circuits or before.words(part) == after.words(part):
            continue
        one, other = before.circuit(part), after.circuit(part)
        facts = circuit_changes(one, other, practice) if one is not None and other is not None else []
        kind = Kind.RE_RATED if any(fact in RATINGS for fact, _ in facts) else Kind.CHANGED
        called = f"circuit {_place(part)} of {board}"
        words, brief = _sentence(called, facts), _brief(called, facts)
        yield Change(kind, "circuit", board, words, (Piece(after.key, part),), after.block, row, brief)


def _between_boards(found: list[Change], old: Version, new: Version) -> list[Change]:
    """Circuits that went from one board and came to another saying the same, or the same description at least."""
    gone = [c for c in found if c.kind is Kind.REMOVED and c.sort == "circuit"]
    came = [c for c in found if c.kind is Kind.ADDED and c.sort == "circuit"]
    pairs: dict[int, tuple[Change, Change]] = {}
    for saying in (_said_by, _described):
        left = _by_words(((c, old) for c in gone if id(c) not in pairs), saying)
        right = _by_words(((c, new) for c in came if id(c) not in pairs), saying)
        for words, (one, *more) in left.items():
            others = right.get(words, [])
            if not more and len(others) == 1 and one.subject != others[0].subject:
                pairs[id(one)] = pairs[id(others[0])] = (one, others[0])
    kept = []
    for change in found:
        pair = pairs.get(id(change))
        if pair is None:
            kept.append(change)
        elif change is pair[1]:
            kept.append(_moved_over(*pair, old, new))
    return kept


def _moved_over(one: Change, other: Change, old: Version, new: Version) -> Change:
    (was,), (now,) = one.pieces, other.pieces
    before, after = old.entries[was.key].circuit(was.part), new.entries[now.key].circuit(now.part)
    facts: list[Said] = []
    if before is not None and after is not None:
        facts = circuit_changes(before, after, new.model.basis)
    more = f" ({'; '.join(w for _, w in facts)})" if facts else ""
    of = _load(new.entries[now.key], now.part)
    brief = f"circuit {_place(was.part)} of {one.subject} moved to {_place(now.part)} of {other.subject}"
    return Change(Kind.MOVED, "circuit", other.subject, f"{brief}{of}{more}", (now, was), other.block, other.row, brief)


def _by_words(
    changes: Iterable[tuple[Change, Version]], saying: Callable[[Entry, str], str]
) -> dict[str, list[Change]]:
    found: dict[str, list[Change]] = {}
    for change, version in changes:
        (piece,) = change.pieces
        words = saying(version.entries[piece.key], piece.part)
        if words:
            found.setdefault(words, []).append(change)
    return found


def _said_by(entry: Entry, part: str) -> str:
    """All that a circuit says but where it sits."""
    return entry.words(part).partition(" ")[2]


def _described(entry: Entry, part: str) -> str:
    circuit = entry.circuit(part)
    return (circuit.body.description or "") if circuit is not None else ""


def _place(part: str) -> str:
    """The place of a circuit, without the number of one that another has already taken."""
    return part.partition(" #")[0]


def _load(entry: Entry, part: str) -> str:
    circuit = entry.circuit(part)
    description = circuit.body.description if circuit is not None else None
    return f' ("{description}")' if description else ""


def _moved(gone: dict[str, str], came: dict[str, str]) -> list[tuple[str, str]]:
    """Circuits that say the same on other positions, where that can only be one."""

    def rest(words: str) -> str:
        return words.partition(" ")[2]

    found = []
    for old, words in gone.items():
        alike = [new for new, other in came.items() if rest(other) == rest(words)]
        back = [other for other in gone.values() if rest(other) == rest(words)]
        if len(alike) == 1 and len(back) == 1 and rest(words):
            found.append((old, alike[0]))
    return found
