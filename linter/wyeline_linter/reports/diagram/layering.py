"""Which level each piece of equipment stands on: sources on top, everything below what feeds it.

The result is a graph in which every arc joins two neighbouring levels: a feeder that passes a level has a *bend item*
there. Boards joined by a tie share a level.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from wyeline_linter.reports.diagram.sketch import BUSES, Edge, Kind, Sketch


@dataclass(slots=True)
class Item:
    """Something that takes a place on a level: a node, a bend of a long feeder, or the meeting point of a tie.

    ``node`` is empty for the last two; ``edge`` is empty for a node. ``ups`` and ``downs`` are segments, by index.
    """

    index: int
    level: int
    node: str = ""
    edge: str = ""
    ups: list[int] = field(default_factory=list)
    downs: list[int] = field(default_factory=list)


@dataclass(slots=True)
class Segment:
    """The part of an edge between two neighbouring levels. ``first`` and ``last`` mark the ends of the whole line.

    ``upward`` says that the edge runs against the direction of the drawing (in a ring).
    """

    index: int
    edge: str
    upper: int
    lower: int
    first: bool
    last: bool
    upward: bool


@dataclass(slots=True)
class Levels:
    """``side_ties`` are (edge, item, item) between two bars of one level; ``tie_chains`` their boards in order."""

    items: list[Item]
    segments: list[Segment]
    levels: list[list[int]]
    side_ties: list[tuple[str, int, int]]
    tie_chains: list[list[int]]
    item_of: dict[str, int]


def levels_of(sketch: Sketch, sunken: bool = False) -> Levels:
    """Put every node of the sketch on a level.

    ``sunken`` puts a second source (a generator of a transfer switch) below the board that is the first: it then
    stands among what that board feeds and no feeder need cross its line, at the price of a taller drawing.
    """
    side, below = _split_ties(sketch)
    group = _groups(sketch, side)
    side_ids = {e.id for e in side}
    below_ids = {e.id for e in below}
    plain = [e for e in sketch.edges if e.id not in side_ids and e.id not in below_ids]
    upward = _ring_closers(sketch, plain, group)
    level = _levels(sketch, plain, group, upward, sunken)
    made = Levels([], [], [], [], [], {})
    for node in sketch.nodes:
        made.item_of[node.id] = _add_item(made, level[group[node.id]], node=node.id)
    # Rank order first: it decides the first drawing order of a board's taps.
    for edge in sorted(plain, key=lambda e: e.rank):
        source, target = made.item_of[edge.source], made.item_of[edge.target]
        if edge.id in upward:
            _add_line(made, edge.id, target, source, upward=True)
        else:
            _add_line(made, edge.id, source, target)
    for edge in below:
        ends = (made.item_of[edge.source], made.item_of[edge.target])
        meeting = _add_item(made, max(made.items[end].level for end in ends) + 1, edge=edge.id)
        _add_line(made, edge.id, ends[0], meeting)
        _add_line(made, edge.id, ends[1], meeting, upward=True)
    made.levels = [[] for _ in range(max((item.level for item in made.items), default=-1) + 1)]
    for item in made.items:
        made.levels[item.level].append(item.index)
    made.side_ties = [(e.id, made.item_of[e.source], made.item_of[e.target]) for e in side]
    made.tie_chains = _chains(made.side_ties)
    return made


def _add_item(made: Levels, level: int, node: str = "", edge: str = "") -> int:
    made.items.append(Item(len(made.items), level, node, edge))
    return len(made.items) - 1


def _add_line(made: Levels, edge: str, upper: int, lower: int, upward: bool = False) -> None:
    top, bottom = made.items[upper].level, made.items[lower].level
    above = upper
    for level in range(top + 1, bottom + 1):
        below = lower if level == bottom else _add_item(made, level, edge=edge)
        segment = Segment(len(made.segments), edge, above, below, level == top + 1, level == bottom, upward)
        made.segments.append(segment)
        made.items[above].downs.append(segment.index)
        made.items[below].ups.append(segment.index)
        above = below


def _split_ties(sketch: Sketch) -> tuple[list[Edge], list[Edge]]:
    """Ties drawn side by side, and ties drawn below both ends.

    Side by side needs two bars on one level, neighbours in one chain: neither end feeds the other, no board has a
    third neighbour, and the chain does not close to a ring. An edge from a node to itself is drawn below as well.
    """
    side: list[Edge] = []
    below: list[Edge] = []
    degree: dict[str, int] = {}
    parent: dict[str, str] = {}

    def root(name: str) -> str:
        while name in parent:
            name = parent[name]
        return name

    for edge in sketch.edges:
        if edge.source == edge.target:
            below.append(edge)
            continue
        if not edge.tie:
            continue
        ends = (edge.source, edge.target)
        fits = (
            all(sketch.node[end].kind in BUSES and degree.get(end, 0) < 2 for end in ends)
            and root(ends[0]) != root(ends[1])
            and not _feeds(sketch, ends[0], ends[1])
            and not _feeds(sketch, ends[1], ends[0])
        )
        if not fits:
            below.append(edge)
            continue
        side.append(edge)
        parent[root(ends[0])] = root(ends[1])
        for end in ends:
            degree[end] = degree.get(end, 0) + 1
    return side, below


def _feeds(sketch: Sketch, start: str, goal: str) -> bool:
    seen, todo = {start}, [start]
    while todo:
        for edge in sketch.edges_from[todo.pop()]:
            if not edge.tie and edge.target not in seen:
                if edge.target == goal:
                    return True
                seen.add(edge.target)
                todo.append(edge.target)
    return False


def _groups(sketch: Sketch, side: list[Edge]) -> dict[str, str]:
    """By node, the first board of its tie chain (itself where it has no tie)."""
    group = {n.id: n.id for n in sketch.nodes}
    for edge in side:
        old, new = group[edge.target], group[edge.source]
        for name, value in group.items():
            if value == old:
                group[name] = new
    return group


def _ring_closers(sketch: Sketch, plain: list[Edge], group: dict[str, str]) -> set[str]:
    """The edges that close a ring when followed from the sources: they are drawn upwards."""
    outgoing: dict[str, list[Edge]] = {g: [] for g in group.values()}
    fed: set[str] = set()
    for edge in sorted(plain, key=lambda e: e.rank):
        outgoing[group[edge.source]].append(edge)
        fed.add(group[edge.target])
    starts = [n.id for n in sketch.nodes if group[n.id] not in fed] + [n.id for n in sketch.nodes]
    state: dict[str, int] = {}
    closers: set[str] = set()
    for start in starts:
        if group[start] in state:
            continue
        state[group[start]] = 1
        path: list[tuple[str, Iterator[Edge]]] = [(group[start], iter(outgoing[group[start]]))]
        while path:
            name, edges = path[-1]
            following = next(edges, None)
            if following is None:
                state[name] = 2
                path.pop()
                continue
            target = group[following.target]
            if state.get(target) == 1:
                closers.add(following.id)
            elif target not in state:
                state[target] = 1
                path.append((target, iter(outgoing[target])))
    return closers


def _levels(sketch: Sketch, plain: list[Edge], group: dict[str, str], upward: set[str], sunken: bool) -> dict[str, int]:
    """By group: one more than the lowest feeding level, with sources other than utilities next to what they feed."""
    below: dict[str, list[str]] = {g: [] for g in group.values()}
    above: dict[str, list[str]] = {g: [] for g in group.values()}
    for edge in plain:
        source, target = group[edge.source], group[edge.target]
        if edge.id in upward:
            source, target = target, source
        if source != target:
            below[source].append(target)
            above[target].append(source)
    order, level = _longest_paths(below)
    free: set[str] = set()
    for name in order:
        if len(below[name]) == 1 and all(a in free for a in above[name]):
            free.add(name)
    if sunken:
        lower = {name: list(targets) for name, targets in below.items()}
        for root in (name for name in order if name in free and not above[name]):
            if sketch.node[root].kind is not Kind.UTILITY:
                end = root
                while end in free:
                    end = below[end][0]
                for other in dict.fromkeys(a for a in above[end] if a not in free):
                    lower[other].append(root)
        order, level = _longest_paths(lower)
    for name in reversed(order):
        top = not above[name]
        if name in free and not (top and sketch.node[name].kind is Kind.UTILITY):
            level[name] = min(level[target] for target in below[name]) - 1
    return level


def _longest_paths(below: dict[str, list[str]]) -> tuple[list[str], dict[str, int]]:
    """The names from above to below, and by name the length of the longest way down to it."""
    waiting = dict.fromkeys(below, 0)
    for targets in below.values():
        for target in targets:
            waiting[target] += 1
    order = [name for name in below if waiting[name] == 0]
    level = dict.fromkeys(below, 0)
    for name in order:
        for target in below[name]:
            level[target] = max(level[target], level[name] + 1)
            waiting[target] -= 1
            if waiting[target] == 0:
                order.append(target)
    return order, level


def _chains(side_ties: list[tuple[str, int, int]]) -> list[list[int]]:
    neighbours: dict[int, list[int]] = {}
    for _, left, right in side_ties:
        neighbours.setdefault(left, []).append(right)
        neighbours.setdefault(right, []).append(left)
    chains: list[list[int]] = []
    seen: set[int] = set()
    for start, around in neighbours.items():
        if start in seen or len(around) != 1:
            continue
        chain = [start]
        seen.add(start)
        while ahead := [n for n in neighbours[chain[-1]] if n not in seen]:
            chain.append(ahead[0])
            seen.add(ahead[0])
        chains.append(chain)
    return chains
