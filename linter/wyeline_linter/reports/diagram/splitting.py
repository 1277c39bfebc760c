"""A sketch too large for one sheet, cut at boards into smaller ones that name each other.

Every node and every edge of the sketch stands on exactly one sheet. A feeder between two sheets is drawn, with its
device and words, on the sheet of the board it leaves, and ends in a reference there; on the other sheet a short line
comes in from a reference back. A board too wide by itself is continued as a second bar.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace

from wyeline_linter.reports.diagram.sketch import BUSES, Edge, Kind, Node, Sketch, Status

Fits = Callable[[Sketch], bool]
_WIDE = 12
"""A board with this many feeders is better continued than moved away from its supply."""
_HALF = 0.6
"""A cut should take at most this share of a sheet's equipment, so that what stays is worth a sheet."""


@dataclass(frozen=True, slots=True)
class Reference:
    """One feeder that goes from sheet ``source_sheet`` to ``target_sheet`` (counted from 1)."""

    edge: str
    source: str
    source_sheet: int
    target: str
    target_sheet: int


@dataclass(frozen=True, slots=True)
class Split:
    """The sketches of the sheets, the boards (or first equipment) that head each, and the references between them."""

    sketches: tuple[Sketch, ...]
    heads: tuple[tuple[str, ...], ...]
    references: tuple[Reference, ...]


def split(sketch: Sketch, fits: Fits) -> Split:
    """Cut the sketch until each part fits. A part that cannot be cut any more is left as it is."""
    if fits(sketch):
        return Split((sketch,), (_tags(sketch, _heads(sketch, {n.id for n in sketch.nodes})),), ())
    cutter = _Cutter(sketch, fits)
    parts = cutter.parts()
    return _described(cutter.sketch, parts, cutter.continued)


def sheet_link(number: int) -> str:
    """The id of a sheet's drawing, which references link to."""
    return f"oneline-sheet-{number}"


class _Cutter:
    def __init__(self, sketch: Sketch, fits: Fits) -> None:
        self.sketch = sketch
        self._fits = fits
        self.continued: set[str] = set()
        self._taken = {n.id for n in sketch.nodes} | {e.id for e in sketch.edges}

    def parts(self) -> list[list[str]]:
        done: list[list[str]] = []
        todo = [[n.id for n in self.sketch.nodes]]
        while todo:
            part = todo.pop(0)
            cuts: list[list[str]] = []
            while not self._fits(self._inside(part)):
                cut = self._cut(part)
                if cut is None or len(cut) > _HALF * len(part):
                    # One board is most of the part: continuing it beats a sheet with nothing but its supply.
                    cut = self._halve(part, 4 if cut is None else _WIDE) or cut
                if cut is None:
                    break
                away = set(cut)
                part = [n for n in part if n not in away]
                cuts.append(cut)
            done.append(part)
            place = {n.id: at for at, n in enumerate(self.sketch.nodes)}
            todo.extend(sorted(cuts, key=lambda c: min(place[n] for n in c)))
        return self._combined(done)

    def _inside(self, part: list[str]) -> Sketch:
        return _sheet(self.sketch, part, {}, 1, self.continued)[0]

    def _combined(self, parts: list[list[str]]) -> list[list[str]]:
        """Put neighbouring small parts on one sheet; the first sheet, with the service, stays as it is."""
        combined = parts[:1]
        for part in parts[1:]:
            together = [*combined[-1], *part]
            if len(combined) > 1 and self._fits(self._inside(together)):
                combined[-1] = together
            else:
                combined.append(part)
        return combined

    def _cut(self, part: list[str]) -> list[str] | None:
        """The branch to move to another sheet: the largest one that leaves enough, boards of a tie together."""
        inside = set(part)
        parent = self._parents(part)
        children = _children(parent)
        best: list[str] | None = None
        for node in part:
            if self.sketch.node[node].kind not in BUSES or not children[node]:
                continue
            group = self._tied(node, inside)
            if any(parent[member] is None for member in group):
                continue
            branch = self._with_own_sources(_below(group, children), inside)
            if len(branch) < len(part) and (best is None or self._better(branch, best, len(part))):
                best = branch
        return best

    def _with_own_sources(self, branch: list[str], inside: set[str]) -> list[str]:
        """The branch with the sources (and what lies between) that feed nothing else."""
        own = set(branch)
        added: list[str] = []
        growing = True
        while growing:
            growing = False
            for node in [e.source for n in (*branch, *added) for e in self.sketch.edges_to[n]]:
                if node in inside and node not in own and all(e.target in own for e in self.sketch.edges_from[node]):
                    own.add(node)
                    added.append(node)
                    growing = True
        # A chain that hangs on a board outside stays there, from its upper end down.
        while fed := [n for n in added if any(e.source in inside - own for e in self.sketch.edges_to[n])]:
            own.difference_update(fed)
            added = [n for n in added if n in own]
        return [*branch, *added]

    @staticmethod
    def _better(branch: list[str], best: list[str], whole: int) -> bool:
        fits, fitted = len(branch) <= _HALF * whole, len(best) <= _HALF * whole
        if fits != fitted:
            return fits
        return len(branch) > len(best) if fits else len(branch) < len(best)

    def _parents(self, part: list[str]) -> dict[str, str | None]:
        """A forest over the part: by node, the node that feeds it first (closed feeders before open ones)."""
        inside = set(part)
        parent: dict[str, str | None] = dict.fromkeys(part)
        for node in part:
            arriving = [e for e in self.sketch.edges_to[node] if e.source in inside and not e.tie and e.source != node]
            for edge in sorted(arriving, key=lambda e: e.normally_open):
                if not self._leads_up(edge.source, node, parent):
                    parent[node] = edge.source
                    break
        return parent

    @staticmethod
    def _leads_up(start: str, goal: str, parent: dict[str, str | None]) -> bool:
        at: str | None = start
        while at is not None:
            if at == goal:
                return True
            at = parent[at]
        return False

    def _tied(self, node: str, inside: set[str]) -> list[str]:
        group, todo = {node: None}, [node]
        while todo:
            at = todo.pop()
            for edge in (*self.sketch.edges_from[at], *self.sketch.edges_to[at]):
                other = edge.target if edge.source == at else edge.source
                if edge.tie and other in inside and other not in group:
                    group[other] = None
                    todo.append(other)
        return list(group)

    def _halve(self, part: list[str], least: int) -> list[str] | None:
        """Continue the board with the most feeders as a second bar, and give it half of them; where no board has many,
        what else feeds many, such as a supply of many transformers."""
        inside = set(part)
        parent = self._parents(part)
        children = _children(parent)
        boards = [n for n in part if self.sketch.node[n].kind in BUSES]
        if all(len(children[n]) < least for n in boards):
            boards = part
        board = max(boards, key=lambda n: len(children[n]), default=None)
        if board is None or len(children[board]) < least:
            return None
        ordered = [e.target for e in self.sketch.edges_from[board] if parent.get(e.target) == board]
        ordered = list(dict.fromkeys(t for t in ordered if t in inside))
        moved = ordered[(len(ordered) + 1) // 2 :]
        continued = self._continue(board, moved)
        return _below([continued, *moved], {**children, continued: []})

    def _continue(self, board: str, moved: list[str]) -> str:
        """Add the second bar and hang the feeders of the moved equipment under it."""
        node = self.sketch.node[board]
        name, number = node.id, 1
        while name in self._taken:
            number += 1
            name = f"{board} ({number})"
        edge_name = f"{name}, bus"
        while edge_name in self._taken:
            edge_name += "'"
        self._taken |= {name, edge_name}
        kind = node.kind if node.kind in BUSES else Kind.JUNCTION
        second = replace(node, id=name, kind=kind, tag=f"{node.tag} (continued)", lines=(), voltage="", fault="")
        self.continued.add(edge_name)
        away = set(moved)
        edges = [
            replace(e, source=name) if e.source == board and e.target in away and not e.tie else e
            for e in self.sketch.edges
        ]
        last = max((e.rank for e in self.sketch.edges_from[board]), default=0.0)
        title = f"{node.tag}: bus continued"
        bus = Edge(edge_name, board, name, rank=last + 1, status=node.status, location=node.source, title=title)
        self.sketch = Sketch((*self.sketch.nodes, second), (*edges, bus), self.sketch.title)
        return name


def _children(parent: Mapping[str, str | None]) -> dict[str, list[str]]:
    """What each node has right below it."""
    children: dict[str, list[str]] = {node: [] for node in parent}
    for node, above in parent.items():
        if above is not None:
            children[above].append(node)
    return children


def _below(roots: Iterable[str], children: dict[str, list[str]]) -> list[str]:
    found: dict[str, None] = {}
    todo = list(roots)
    while todo:
        node = todo.pop(0)
        if node not in found:
            found[node] = None
            todo.extend(children[node])
    return list(found)


def _heads(sketch: Sketch, inside: set[str]) -> list[str]:
    """The boards of a part that no other board of it feeds; without boards, its first equipment."""
    boards = [n.id for n in sketch.nodes if n.id in inside and sketch.node[n.id].kind in BUSES]
    below: set[str] = set()
    for board in boards:
        if board in below:
            continue
        todo, seen = [board], {board}
        while todo:
            for edge in sketch.edges_from[todo.pop()]:
                if not edge.tie and edge.target in inside and edge.target not in seen:
                    seen.add(edge.target)
                    todo.append(edge.target)
        below |= seen - {board}
    return [b for b in boards if b not in below] or [n.id for n in sketch.nodes if n.id in inside][:1]


def _tags(sketch: Sketch, heads: list[str]) -> tuple[str, ...]:
    return tuple(sketch.node[n].tag for n in heads)


def _described(sketch: Sketch, parts: list[list[str]], continued: set[str]) -> Split:
    sheet_of = {node: number for number, part in enumerate(parts, 1) for node in part}
    sketches: list[Sketch] = []
    references: list[Reference] = []
    for number, part in enumerate(parts, 1):
        made, leaving = _sheet(sketch, part, sheet_of, number, continued)
        sketches.append(made)
        references.extend(leaving)
    heads = tuple(_tags(sketch, _heads(sketch, set(part))) for part in parts)
    return Split(tuple(sketches), heads, tuple(references))


def _sheet(
    sketch: Sketch, part: list[str], sheet_of: dict[str, int], number: int, continued: set[str]
) -> tuple[Sketch, list[Reference]]:
    """The part with a reference for each feeder that leaves or enters it. Sheets are ``00`` until they are numbered."""
    inside = set(part)
    nodes = [n for n in sketch.nodes if n.id in inside]
    edges: list[Edge] = []
    leaving: list[Reference] = []
    for edge in sketch.edges:
        out, into = edge.source in inside, edge.target in inside
        if out and into:
            edges.append(edge)
        elif out:
            there = sheet_of.get(edge.target, 0)
            nodes.append(_reference(Kind.REFERENCE_OUT, edge, sketch.node[edge.target], there, edge.id in continued))
            edges.append(replace(edge, target=nodes[-1].id, main=None, to_port="", tie=False))
            leaving.append(Reference(edge.id, edge.source, number, edge.target, there))
        elif into:
            there, other = sheet_of.get(edge.source, 0), sketch.node[edge.source]
            nodes.append(_reference(Kind.REFERENCE_IN, edge, other, there, edge.id in continued))
            edges.append(_coming_in(edge, nodes[-1].id, f"{other.tag} → {sketch.node[edge.target].tag}", there))
    return Sketch(tuple(nodes), tuple(edges), sketch.title), leaving


def _coming_in(edge: Edge, reference: str, ends: str, sheet: int) -> Edge:
    """The short line under an incoming reference. What the feeder is stands on the other sheet."""
    return replace(
        edge,
        id=f"{edge.id}, coming in",
        source=reference,
        device=None,
        lines=(),
        from_port="",
        tie=False,
        normally_open=False,
        title=f"{ends}, drawn on sheet {sheet}",
    )


def _reference(kind: Kind, edge: Edge, other: Node, sheet: int, bus: bool) -> Node:
    name = sheet or "00"
    out = kind is Kind.REFERENCE_OUT
    where = f"continued on sheet {name} ({other.tag})" if out else f"from sheet {name} ({other.tag})"
    word = "to" if out else "from"
    if bus:
        where = f"bus continued on sheet {name}" if out else f"bus continued from sheet {name}"
    return Node(
        f"{kind} {edge.id}",
        kind,
        f"{word} {other.tag}",
        (where,),
        status=Status.NEW,
        source=edge.location,
        working=f"#{sheet_link(sheet)}" if sheet else "",
    )
