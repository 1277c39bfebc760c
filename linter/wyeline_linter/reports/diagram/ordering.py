"""In which order equipment stands on each level, so that as few lines as possible cross.

A tree drawn by walking it has no crossing. Where boards have a second supply the order is improved by barycentres
(a level follows the middle of its neighbours), then by exact exchanges of neighbours, then by moving whole branches
to the ends of their board. Boards of a tie stay side by side. Method: layered drawing after Sugiyama, Tagawa and Toda
(IEEE Trans. SMC 11, 1981).
"""

from __future__ import annotations

from bisect import bisect_right, insort

from wyeline_linter.reports.diagram.layering import Levels

_SWEEPS = 8
_IDLE_SWEEPS = 3
_BRANCH_MOVES = 60
_WORK = 2500
"""Branch moves times lines: bounds the time of large drawings, not by the clock, so that the result stays the same."""

Order = list[list[int]]


class Ordering:
    """Finds the order for one graph; ``order()`` is the result, one list of items for each level."""

    def __init__(self, graph: Levels) -> None:
        self._graph = graph
        segments = graph.segments
        self._above = [[segments[s].upper for s in item.ups] for item in graph.items]
        self._below = [[segments[s].lower for s in item.downs] for item in graph.items]
        self._chain_of = {item: chain for chain in graph.tie_chains for item in chain}
        self._roots = [item.index for item in graph.items if not item.ups]

    def order(self) -> Order:
        children = [list(below) for below in self._below]
        best, crossings = self._improved(self._walked(self._roots, children))
        if crossings:
            best = self._with_branches_moved(best, crossings, children)
        return best

    def crossings(self, order: Order) -> int:
        """How many pairs of lines cross between neighbouring levels."""
        place = self._places(order)
        return sum(self._crossings_below(level, place) for level in order)

    def _places(self, order: Order) -> list[int]:
        place = [0] * len(self._graph.items)
        for level in order:
            for at, item in enumerate(level):
                place[item] = at
        return place

    def _crossings_below(self, level: list[int], place: list[int]) -> int:
        seen: list[int] = []
        count = 0
        for item in level:
            targets = [place[t] for t in self._below[item]]
            for target in targets:
                count += len(seen) - bisect_right(seen, target)
            for target in targets:
                insort(seen, target)
        return count

    def _walked(self, roots: list[int], children: list[list[int]]) -> Order:
        order: Order = [[] for _ in self._graph.levels]
        seen = [False] * len(self._graph.items)
        todo = list(reversed(roots))
        while todo:
            item = todo.pop()
            if seen[item]:
                continue
            chain = self._chain_of.get(item, [item])
            for member in chain:
                seen[member] = True
                order[self._graph.items[member].level].append(member)
            todo.extend(child for member in reversed(chain) for child in reversed(children[member]))
        return order

    def _improved(self, order: Order) -> tuple[Order, int]:
        best, fewest = [list(level) for level in order], self.crossings(order)
        if fewest == 0:
            return best, 0
        idle = 0
        for sweep in range(_SWEEPS):
            place = self._places(order)
            downwards = sweep % 2 == 0
            around = self._above if downwards else self._below
            for level in order if downwards else reversed(order):
                self._sort(level, around, place)
            self._exchange(order)
            count = self.crossings(order)
            if count < fewest:
                best, fewest = [list(level) for level in order], count
                idle = -1
                if count == 0:
                    break
            idle += 1
            if idle == _IDLE_SWEEPS:
                break
        return best, fewest

    def _clusters(self, level: list[int]) -> list[list[int]]:
        clusters: list[list[int]] = []
        done: set[int] = set()
        inside = set(level)
        for item in level:
            if item in done:
                continue
            chain = self._chain_of.get(item)
            if chain is None:
                clusters.append([item])
                continue
            # The chain keeps its direction as it stands now.
            first, last = chain[0], chain[-1]
            members = chain if level.index(first) <= level.index(last) else chain[::-1]
            clusters.append([m for m in members if m in inside])
            done.update(chain)
        return clusters

    def _sort(self, level: list[int], around: list[list[int]], place: list[int]) -> None:
        keyed = []
        for at, cluster in enumerate(self._clusters(level)):
            if len(cluster) > 1:
                ends = [_mean([place[n] for n in around[i]]) for i in (cluster[0], cluster[-1])]
                if ends[0] is not None and ends[1] is not None and ends[0] > ends[1]:
                    cluster.reverse()
            middle = _mean([place[n] for i in cluster for n in around[i]])
            keyed.append((middle, at, cluster))
        # What has no neighbour on that side keeps its place; the others are sorted among themselves.
        moving = sorted((k for k in keyed if k[0] is not None), key=lambda k: (k[0], k[1]))
        result: list[int] = []
        following = iter(moving)
        for middle, _, cluster in keyed:
            result.extend(cluster if middle is None else next(following)[2])
        level[:] = result
        for at, item in enumerate(level):
            place[item] = at

    def _exchange(self, order: Order) -> None:
        place = self._places(order)
        for _ in range(4):
            changed = False
            for level in order:
                clusters = self._clusters(level)
                for i in range(len(clusters) - 1):
                    if self._gain(clusters[i], clusters[i + 1], place) > 0:
                        clusters[i], clusters[i + 1] = clusters[i + 1], clusters[i]
                        changed = True
                level[:] = [item for cluster in clusters for item in cluster]
                for at, item in enumerate(level):
                    place[item] = at
            if not changed:
                return

    def _gain(self, left: list[int], right: list[int], place: list[int]) -> int:
        """Crossings saved when the two change places."""
        gain = 0
        for around in (self._above, self._below):
            a = sorted(place[n] for i in left for n in around[i])
            b = sorted(place[n] for i in right for n in around[i])
            for x in a:
                smaller = bisect_right(b, x - 1)
                gain += smaller - (len(b) - bisect_right(b, x))
        return gain

    def _with_branches_moved(self, best: Order, fewest: int, children: list[list[int]]) -> Order:
        """Try moving the branches that lead to a second supply to either end of their board; keep what helps."""
        roots = list(self._roots)
        moves, most = 0, min(_BRANCH_MOVES, _WORK // len(self._graph.segments))
        improved = True
        while improved and fewest and moves < most:
            improved = False
            for item in self._suspects():
                for siblings in (
                    [roots] if item in roots else [children[parent] for parent in dict.fromkeys(self._above[item])]
                ):
                    for to_end in (True, False):
                        moves += 1
                        before = list(siblings)
                        siblings.remove(item)
                        siblings.insert(len(siblings) if to_end else 0, item)
                        tried, count = self._improved(self._walked(roots, children))
                        if count < fewest:
                            best, fewest, improved = tried, count, True
                        else:
                            siblings[:] = before
                        if fewest == 0 or moves >= most:
                            return best
        return best

    def _suspects(self) -> list[int]:
        """Items with two supplies and everything above them, nearest first."""
        found: dict[int, None] = {}
        layer = [item.index for item in self._graph.items if len(item.ups) > 1]
        while layer:
            found.update(dict.fromkeys(i for i in layer if i not in found))
            layer = [parent for i in layer for parent in self._above[i] if parent not in found]
        return list(found)


def _mean(values: list[int]) -> float | None:
    return sum(values) / len(values) if values else None
