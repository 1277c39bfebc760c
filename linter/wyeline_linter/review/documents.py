"""One version of a model cut into pieces that can be exchanged one by one.

A piece is a statement without its circuits, or one circuit of a board. A piece keeps its name when lines move within a
file or to another file; two versions are compared, and mixed, by these names.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Model, feeder_name
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.sources import Files
from wyeline_grammar.tokens import tokenize
from wyeline_linter.configuration import DEFAULT, Configuration

HEAD = ""
"""The part of a statement that is not one of its circuits."""


class Key(NamedTuple):
    """Which statement: ``sort`` is ``named`` (equipment, types, systems, interlocks), ``feeder``, ``raceway``,
    ``project``, ``scenario``, ``expect`` or ``text``; ``number`` counts those of equal names from 1."""

    sort: str
    name: str
    number: int = 1


CONFIGURATION = Key("configuration", "")
"""The configuration beside the model, which is exchanged as a whole."""


class Piece(NamedTuple):
    """One piece: the circuit ``part`` of a statement, or the rest of it (``HEAD``)."""

    key: Key
    part: str = HEAD


@dataclass(slots=True)
class Entry:
    """A statement of a version: its block, and where its circuits stand in it."""

    key: Key
    block: Block
    statement: m.Statement
    circuits: dict[str, int] = field(default_factory=dict)
    """Circuit -> line within the block."""

    @property
    def lines(self) -> tuple[str, ...]:
        return self.block.lines

    def words(self, part: str) -> str:
        """What a part says, without columns, comments and documentation: equal words mean the same."""
        if part != HEAD:
            return _said(self.lines[self.circuits[part]])
        taken = set(self.circuits.values())
        return "\n".join(said for i, line in enumerate(self.lines) if i not in taken and (said := _said(line)))

    def circuit(self, part: str) -> m.Circuit | None:
        """The circuit of a part."""
        row = self.circuits.get(part)
        if row is None or not isinstance(self.statement, m.EquipmentStatement):
            return None
        return next((c for c in self.statement.circuits if c.span.line == row), None)


def _said(line: str) -> str:
    if line.lstrip().startswith("//"):
        return ""
    return " ".join(token.text for token in tokenize(line)[0])


class Version:
    """A version of a model by pieces. Raises SourceError where the root cannot be read.

    ``entries`` are in the order of files and lines.
    """

    def __init__(
        self, root: str, read: Callable[[str], str], workspace: str, configuration: Configuration = DEFAULT
    ) -> None:
        self.root = root
        self.workspace = workspace
        self.configuration = configuration
        self._read = read
        self.files = Files(read)
        self.model = Model(root, self.files, workspace)
        self.entries: dict[Key, Entry] = {}
        counts: dict[tuple[str, str], int] = {}
        for block, statement in self.model.statements():
            named = _named(block, statement)
            if named is None:
                continue
            number = counts[named] = counts.get(named, 0) + 1
            key = Key(*named, number)
            self.entries[key] = Entry(key, block, statement, _circuits(statement))

    @cached_property
    def order(self) -> dict[Key, int]:
        """The place of each statement among all."""
        return {key: i for i, key in enumerate(self.entries)}

    def parts(self, key: Key) -> Iterable[str]:
        """The parts of a statement, its head first; none where it is not there."""
        entry = self.entries.get(key)
        return () if entry is None else (HEAD, *entry.circuits)

    def words(self, piece: Piece) -> str | None:
        """What a piece says, None where it is not there."""
        entry = self.entries.get(piece.key)
        if entry is None or (piece.part != HEAD and piece.part not in entry.circuits):
            return None
        return entry.words(piece.part)

    def reader(self, taken: Mapping[Piece, Version] | None = None) -> Callable[[str], str]:
        """How this version's files read with some pieces as they are in another version (gone where not there).

        Pieces that only the other version has are added: circuits to their board, statements at the end of the root.
        """
        changes: dict[Key, dict[str, Version]] = {}
        for piece, other in (taken or {}).items():
            changes.setdefault(piece.key, {})[piece.part] = other
        texts: dict[str, str] = {}
        for key in changes:
            entry = self.entries.get(key)
            path = self.root if entry is None else entry.block.file
            if path not in texts:
                texts[path] = self._text(path, changes)

        def read(path: str) -> str:
            return texts[path] if path in texts else self._read(path)

        return read

    def _text(self, path: str, changes: Mapping[Key, Mapping[str, Version]]) -> str:
        file = self.files.get(path)
        at = {id(e.block): e for k, e in self.entries.items() if k in changes and e.block.file == path}
        lines: list[str] = []
        for block in file.blocks:
            entry = at.get(id(block))
            lines += block.lines if entry is None else _mixed(entry, changes[entry.key])
        if path == self.root:
            for key, parts in changes.items():
                other = parts.get(HEAD)
                if key not in self.entries and other is not None and key in other.entries:
                    lines += other.entries[key].lines
        return "\n".join(lines)


def _mixed(entry: Entry, parts: Mapping[str, Version]) -> list[str]:
    """A statement's lines with some parts from elsewhere."""
    source = entry
    if HEAD in parts:
        found = parts[HEAD].entries.get(entry.key)
        if found is None:
            return []
        source = found
    taken = {row: part for part, row in entry.circuits.items()}
    rows = [line for i, line in enumerate(source.lines) if i not in set(source.circuits.values())]
    while rows and not rows[-1].strip():
        rows.pop()
    for row in sorted(taken):
        part = taken[row]
        other = parts.get(part)
        if other is None:
            rows.append(entry.lines[row])
        else:
            rows += _circuit_of(other, entry.key, part)
    for part, other in parts.items():
        if part != HEAD and part not in entry.circuits:
            rows += _circuit_of(other, entry.key, part)
    return rows


def _circuit_of(version: Version, key: Key, part: str) -> list[str]:
    entry = version.entries.get(key)
    row = None if entry is None else entry.circuits.get(part)
    return [] if entry is None or row is None else [entry.lines[row]]


def _circuits(statement: m.Statement) -> dict[str, int]:
    found: dict[str, int] = {}
    if isinstance(statement, m.EquipmentStatement):
        for circuit in statement.circuits:
            part, number = circuit.place.key, 1
            while part in found:
                number += 1
                part = f"{circuit.place.key} #{number}"
            found[part] = circuit.span.line
    return found


def _named(block: Block, statement: m.Statement) -> tuple[str, str] | None:
    """Sort and name of a statement; None for what says nothing by itself (comments, includes, the version)."""
    if isinstance(statement, m.EquipmentStatement | m.RacewayStatement | m.ScenarioStatement):
        sort = {m.RacewayStatement: "raceway", m.ScenarioStatement: "scenario"}.get(type(statement), "named")
        return sort, statement.name.text if statement.name is not None else ""
    if isinstance(statement, m.FeederStatement):
        return "feeder", feeder_name(statement)
    if isinstance(statement, m.ProjectStatement):
        return "project", ""
    if isinstance(statement, m.Include | m.WyeVersion):
        return None
    words = " / ".join(said for line in block.lines if (said := _said(line)))
    if not words:
        return None
    return ("expect" if isinstance(statement, m.ExpectStatement) else "text"), words


def name_of(block: Block) -> str:
    """The name that a block's statement is known by."""
    named = _named(block, lower_block(block.lines))
    return named[1] or named[0] if named is not None else block.lines[0].strip()


EMPTY_ROOT = "wye 1\n"


def nothing(path: str) -> str:
    """The reader of a model that is not there: a root without statements."""
    del path
    return EMPTY_ROOT


def reading(files: Files) -> Callable[[str], str]:
    """The texts of a session's files. Raises SourceError as they do."""

    def read(path: str) -> str:
        return files.get(path).text

    return read
