"""Statements to a model: one root file and what it includes, names resolved, types applied.

The model is kept under edits: ``update`` takes the blocks that went and came and relinks only what refers to them.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.linked import STATUS as STATUS
from wyeline_grammar.linked import Declared as Declared
from wyeline_grammar.linked import Equipment as Equipment
from wyeline_grammar.linked import Feeder as Feeder
from wyeline_grammar.linked import PlacedCircuit as PlacedCircuit
from wyeline_grammar.linked import feeder_name as feeder_name
from wyeline_grammar.linked import like_of as like_of
from wyeline_grammar.linked import merge
from wyeline_grammar.linked import status_in as status_in
from wyeline_grammar.lists_by_name import add_to, part_from, take_out
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.places import Place as Place
from wyeline_grammar.problems import Problem
from wyeline_grammar.remembering import expect_blocks
from wyeline_grammar.sources import Files, SourceError, resolve_include, workspace_of

MAX_INCLUDE_DEPTH = 64


def folded_name(name: str) -> str:
    """A name as it is heard and seen: without case, and one spelling for letters that look the same when composed."""
    if name.isascii():
        return name.lower()
    import unicodedata  # only names beyond ASCII need it

    return unicodedata.normalize("NFKC", unicodedata.normalize("NFKC", name).casefold())


class PlacedProblem(NamedTuple):
    block: Block
    problem: Problem


@dataclass(slots=True)
class Delta:
    """What an update changed: names of equipment, keys of feeders, and whether the project or other statements did."""

    equipment: set[str] = field(default_factory=set)
    feeders: set[str] = field(default_factory=set)
    names: set[str] = field(default_factory=set)
    others: bool = False
    project: bool = False
    everything: bool = False


class Model:
    """A root file and what it includes.

    ``files`` are the file keys in include order; ``equipment`` and ``feeders`` are in no particular order.
    """

    def __init__(self, root: str, files: Files, workspace: str | None = None) -> None:
        self.root = root
        self.store = files
        self.usual_basis: str | None = None
        """The basis of projects that state none."""
        self.workspace = workspace if workspace is not None else workspace_of(root)
        self.rebuild()

    # building

    def rebuild(self) -> None:
        """Link everything anew from the store's blocks. Raises SourceError where the root itself is unreadable."""
        self.files: list[str] = []
        self.include_problems: list[PlacedProblem] = []
        self.included_from: dict[str, Place] = {}
        self.declared: dict[str, list[Declared]] = {}
        self.folded: dict[str, list[str]] = {}
        self._names_by_sort: dict[str, set[str]] = {}
        self.repeated: set[str] = set()
        """Names that several statements bear."""
        self.alike: set[str] = set()
        """Folded names that stand for several, which differ by case only."""
        self.unread: dict[str, int] = {}
        """Names in lines that cannot be read and would say what they stand for, and in how many."""
        self.equipment: dict[str, Equipment] = {}
        self.feeders: dict[str, Feeder] = {}
        self.feeders_from: dict[str, list[Feeder]] = {}
        self.feeders_to: dict[str, list[Feeder]] = {}
        self._feeder_groups: dict[str, list[tuple[Block, m.FeederStatement]]] = {}
        self._feeder_keys: dict[str, list[str]] = {}
        self._type_users: dict[str, set[str]] = {}
        self.projects: list[tuple[Block, m.ProjectStatement]] = []
        self.scenarios: list[tuple[Block, m.ScenarioStatement]] = []
        self.expects: list[tuple[Block, m.ExpectStatement]] = []
        self.versions: list[tuple[Block, m.WyeVersion]] = []
        self._follow(self.store.get(self.root), ())
        self._order = {path: i for i, path in enumerate(self.files)}
        delta = Delta()
        for path in self.files:
            for block in self.store.get(path).blocks:
                self._register(block, delta)
        self._relink(delta)

    def _follow(self, file: TextFile, above: tuple[str, ...]) -> None:
        self.files.append(file.path)
        expect_blocks(self.store.blocks_at_hand)
        for block in file.blocks:
            statement = lower_block(block.lines)
            if isinstance(statement, m.Include) and statement.target is not None:
                self._include(file, block, statement, above)

    def _include(self, file: TextFile, block: Block, statement: m.Include, above: tuple[str, ...]) -> None:
        target = statement.target or ""
        try:
            path = resolve_include(file.path, target, self.workspace)
            if path in (*above, file.path):
                self._include_problem(
                    block,
                    statement,
                    "include-cycle",
                    f'"{target}" includes this file again, directly or through others',
                    "Delete the include that closes the circle; each file of a model is read once.",
                )
                return
            if path in self.included_from or path == self.root:
                return
            if len(above) >= MAX_INCLUDE_DEPTH:
                self._include_problem(
                    block,
                    statement,
                    "include-cycle",
                    f"includes are nested more than {MAX_INCLUDE_DEPTH} deep here",
                    "Include the files side by side from the root file.",
                )
                return
            included = self.store.get(path)
        except SourceError as error:
            outside = "outside" in error.reason or "relative" in error.reason
            self._include_problem(
                block,
                statement,
                "include-outside" if outside else "include-unreadable",
                f'"{target}" is not included: {error.reason}',
                "Move the file into the folder of this model." if outside else "Correct the path, or add the file.",
            )
            return
        self.included_from[path] = Place(block, statement.target_span)
        self._follow(included, (*above, file.path))

    def _include_problem(self, block: Block, statement: m.Include, rule: str, message: str, change: str) -> None:
        span = statement.target_span
        self.include_problems.append(
            PlacedProblem(
                block,
                Problem(
                    rule,
                    message,
                    span.line,
                    span.start,
                    span.end,
                    found=message,
                    needed="a file of this model, written relative to the file that includes it",
                    why="What is not included is in no schedule, no load total and no fault figure.",
                    change=change,
                ),
            )
        )

    def twin(self, files: Files) -> Model:
        """The same model once more, to be updated apart from this one, over texts that now are the same.

        What is linked is shared: equipment, feeders and declarations are replaced, never changed.
        """
        made = object.__new__(Model)
        vars(made).update(vars(self))
        made.store = files
        for name, held in vars(self).items():
            if isinstance(held, dict | list | set):
                setattr(made, name, held.copy())
        part_from(made.declared)
        part_from(made.folded)
        part_from(made.feeders_from)
        part_from(made.feeders_to)
        part_from(made._feeder_groups)
        part_from(made._feeder_keys)
        for names in (made._names_by_sort, made._type_users):
            for key, held in names.items():
                names[key] = held.copy()
        return made

    # updating

    def update(self, went: Iterable[Block], came: Iterable[Block]) -> Delta:
        """Take an edit's blocks into account. A changed include rebuilds the model (``everything``)."""
        went, came = list(went), list(came)
        if any(isinstance(lower_block(b.lines), m.Include) for b in (*went, *came)):
            self.rebuild()
            return Delta(everything=True)
        delta = Delta()
        for block in went:
            self._unregister(block, delta)
        for block in came:
            self._register(block, delta)
        self._relink(delta)
        return delta

    def _key(self, block: Block) -> tuple[int, int]:
        return self._order.get(block.file, 0), block.first_line

    def _names_of(self, block: Block, statement: m.Statement) -> Iterator[Declared]:
        if isinstance(statement, m.EquipmentStatement) and statement.name is not None:
            sort = "type" if statement.is_type else statement.kind
            if sort not in ("type", "system", "interlock"):
                sort = "equipment"
            yield Declared(statement.name.text, sort, statement.kind, block, statement.name.span, statement)
        elif isinstance(statement, m.RacewayStatement) and statement.name is not None:
            yield Declared(statement.name.text, "raceway", "raceway", block, statement.name.span, statement)
        elif isinstance(statement, m.FeederStatement) and statement.label is not None:
            yield Declared(statement.label.text, "feeder", "feeder", block, statement.label.span, statement)

    def _list_of(self, statement: m.Statement) -> list[tuple[Block, m.Statement]] | None:
        if isinstance(statement, m.EquipmentStatement):
            return None  # nearly all of them
        lists: dict[type, Any] = {
            m.ProjectStatement: self.projects,
            m.ScenarioStatement: self.scenarios,
            m.ExpectStatement: self.expects,
            m.WyeVersion: self.versions,
        }
        return lists.get(type(statement))

    def _register(self, block: Block, delta: Delta) -> None:
        statement = lower_block(block.lines)
        for declared in self._names_of(block, statement):
            if add_to(self.declared, declared.name, declared) > 1:
                self.repeated.add(declared.name)
            else:
                folded = folded_name(declared.name)
                if add_to(self.folded, folded, declared.name) > 1:
                    self.alike.add(folded)
            self._names_by_sort.setdefault(declared.sort, set()).add(declared.name)
            delta.names.add(declared.name)
        if isinstance(statement, m.Unreadable) and statement.name is not None:
            self.unread[statement.name.text] = self.unread.get(statement.name.text, 0) + 1
            delta.names.add(statement.name.text)
        elif isinstance(statement, m.FeederStatement):
            if statement.source is not None and statement.target is not None:
                base = feeder_name(statement)
                add_to(self._feeder_groups, base, (block, statement))
                delta.feeders.add(base)
        else:
            entries = self._list_of(statement)
            if entries is not None:
                entries.append((block, statement))
                delta.others = True
                delta.project |= isinstance(statement, m.ProjectStatement)

    def _unregister(self, block: Block, delta: Delta) -> None:
        statement = lower_block(block.lines)
        for declared in self._names_of(block, statement):
            left = [d for d in self.declared.get(declared.name, ()) if d.block is not block]
            if left:
                self.declared[declared.name] = left
            else:
                self.declared.pop(declared.name, None)
                folded = folded_name(declared.name)
                take_out(self.folded, folded, declared.name)
                if len(self.folded[folded]) < 2:
                    self.alike.discard(folded)
            if len(left) < 2:
                self.repeated.discard(declared.name)
            if all(d.sort != declared.sort for d in left):
                self._names_by_sort.get(declared.sort, set()).discard(declared.name)
            delta.names.add(declared.name)
        if isinstance(statement, m.Unreadable) and statement.name is not None:
            left_unread = self.unread.pop(statement.name.text) - 1
            if left_unread:
                self.unread[statement.name.text] = left_unread
            delta.names.add(statement.name.text)
        elif isinstance(statement, m.FeederStatement):
            if statement.source is not None and statement.target is not None:
                base = feeder_name(statement)
                group = [g for g in self._feeder_groups.get(base, ()) if g[0] is not block]
                self._feeder_groups[base] = group
                delta.feeders.add(base)
        else:
            entries = self._list_of(statement)
            if entries is not None:
                entries[:] = [e for e in entries if e[0] is not block]
                delta.others = True
                delta.project |= isinstance(statement, m.ProjectStatement)

    def _relink(self, delta: Delta) -> None:
        if delta.others:
            for entries in (self.projects, self.scenarios, self.expects, self.versions):
                entries.sort(key=lambda e: self._key(e[0]))
        for name in delta.names:
            bearers = self.declared.get(name, [])
            if len(bearers) > 1:
                bearers.sort(key=lambda d: self._key(d.block))
        pending, seen = set(delta.names), set()
        while pending:
            name = pending.pop()
            if name in seen:
                continue
            seen.add(name)
            pending |= self._type_users.get(name, set())
            pending |= self._link_name(name)
        delta.names |= seen
        delta.equipment |= seen
        keys: set[str] = set()
        for base in delta.feeders:
            keys |= self._link_group(base)
        delta.feeders = keys

    def _link_name(self, name: str) -> set[str]:
        """Relink what a name stands for; returns names whose types must be looked at again."""
        entries = self.declared.get(name, [])
        first = entries[0] if entries else None
        if first is None or first.sort != "equipment" or not isinstance(first.statement, m.EquipmentStatement):
            self.equipment.pop(name, None)
            if first is not None and first.sort == "type" and isinstance(first.statement, m.EquipmentStatement):
                like = like_of(first.statement)
                if like is not None:
                    self._type_users.setdefault(like, set()).add(name)
            return set()
        chain = tuple(self._chain(first.block, first.statement))
        for _, statement in chain:
            like = like_of(statement)
            if like is not None:
                self._type_users.setdefault(like, set()).add(name)
        self.equipment[name] = merge(name, chain)
        return set()

    def _chain(self, block: Block, statement: m.EquipmentStatement) -> Iterator[tuple[Block, m.EquipmentStatement]]:
        """The statement and the types it is like, nearest first; a circle is walked once."""
        seen: set[str] = set()
        current: tuple[Block, m.EquipmentStatement] | None = (block, statement)
        while current is not None:
            yield current
            like = like_of(current[1])
            if like is None or like in seen:
                return
            seen.add(like)
            current = self.type(like)

    def type(self, name: str) -> tuple[Block, m.EquipmentStatement] | None:
        """The type of this name, or None."""
        for declared in self.declared.get(name, ()):
            if declared.sort == "type" and isinstance(declared.statement, m.EquipmentStatement):
                return declared.block, declared.statement
        return None

    def _link_group(self, base: str) -> set[str]:
        """Relink the feeders of one name; returns the keys touched."""
        touched: set[str] = set()
        for key in self._feeder_keys.pop(base, ()):
            old = self.feeders.pop(key)
            touched.add(key)
            take_out(self.feeders_from, old.source.name, old)
            take_out(self.feeders_to, old.target.name, old)
        group = self._feeder_groups.get(base, [])
        if not group:
            self._feeder_groups.pop(base, None)
        elif len(group) > 1:
            group.sort(key=lambda g: self._key(g[0]))
        for i, (block, statement) in enumerate(group, 1):
            if statement.source is None or statement.target is None:
                continue
            key = base if i == 1 else _numbered(base, i)
            feeder = Feeder(key, block, statement, statement.source, statement.target)
            self.feeders[key] = feeder
            add_to(self.feeders_from, feeder.source.name, feeder)
            add_to(self.feeders_to, feeder.target.name, feeder)
            add_to(self._feeder_keys, base, key)
            touched.add(key)
        return touched

    # asking

    def statements(self) -> Iterator[tuple[Block, m.Statement]]:
        """Every block with its statement, in file order."""
        for path in self.files:
            file = self.store.known(path)
            if file is not None:
                for block in file.blocks:
                    yield block, lower_block(block.lines)

    def lookup(self, name: str) -> Declared | None:
        """What a name stands for (the first where several claim it)."""
        entries = self.declared.get(name)
        return entries[0] if entries else None

    def system(self, name: str) -> tuple[Block, m.EquipmentStatement] | None:
        """The declared system of this name, or None."""
        for declared in self.declared.get(name, ()):
            if declared.sort == "system" and isinstance(declared.statement, m.EquipmentStatement):
                return declared.block, declared.statement
        return None

    def declared_of(self, sort: str) -> list[Declared]:
        """Everything of one sort, in file order."""
        names = self._names_by_sort.get(sort, ())
        found = [d for name in names for d in self.declared[name] if d.sort == sort]
        return sorted(found, key=lambda d: self._key(d.block))

    def type_users(self, name: str) -> set[str]:
        """Names of what is like this type, directly or through another type."""
        return {user for user in self._type_users.get(name, ()) if user in self.declared}

    @property
    def project(self) -> m.Body:
        """The project's facts; those of the first project statement win."""
        if not self.projects:
            return m.EMPTY_BODY
        return self.projects[0][1].body

    @property
    def basis(self) -> str | None:
        """``us-2023``, ``iec`` or None: with none only the rules of physics run."""
        return self.project.text("basis") or self.usual_basis

    @property
    def frequency_hz(self) -> float | None:
        return self.project.number("frequency")


def _numbered(base: str, number: int) -> str:
    return f"{base} #{number}"
