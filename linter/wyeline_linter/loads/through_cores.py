"""Currents through a transformer: from the lines of its secondary to its windings and the lines of its primary.

On every core the ampere-turns of the fed winding balance those of the others, and at every joint the currents add up to
nothing; what is left open (the current round a closed delta) is settled by the least leakage energy of equal units. So
one calculation holds for every connection: delta-wye, wye-wye, open delta, centre taps, zigzags, autotransformers.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import chain
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.cores import Core, Side, Terminal
from wyeline_linter.loads.conductors_of_loads import INDEX, LEG_COUNT
from wyeline_linter.windings import Transformed

if TYPE_CHECKING:
    from wyeline_linter.derive import EquipmentState

_LEAK_WEIGHT = 1e6
"""How unwelcome a current out of a joint that leads nowhere is: an insulated star point."""
_SHARE_WEIGHT = 1e-6


class WindingAt(NamedTuple):
    """A secondary winding: its core, its ends and its rated volts."""

    core: int
    start: str
    end: str
    volts: float


class Through(NamedTuple):
    """The linear map of a transformer at nominal ratio.

    ``lines[p]`` gives the current into primary conductor p for each secondary line current (A, B, C, N, going out);
    ``windings[k]`` that of secondary winding k, ``fed[c]`` that of the fed winding of core c. ``split[p]`` gives what
    primary leg p takes of each secondary leg in a schedule's bookkeeping, ``to_neutral[p]`` the part of it that returns
    through the primary's neutral. All numbers are real, because windings are.
    """

    lines: tuple[tuple[float, ...], ...]
    windings: tuple[tuple[float, ...], ...]
    made: tuple[WindingAt, ...]
    fed: tuple[tuple[float, ...], ...]
    split: tuple[tuple[float, ...], ...]
    to_neutral: tuple[tuple[float, ...], ...]

    def primary_amps(self, amps: Sequence[complex]) -> tuple[complex, complex, complex, complex]:
        """The currents into the primary's conductors A, B, C, N."""
        a, b, c, n = amps
        return tuple([ra * a + rb * b + rc * c + rn * n for ra, rb, rc, rn in self.lines])  # type: ignore[return-value]

    @property
    def fed_to_neutral(self) -> bool:
        """Whether the fed windings draw current through a neutral: only there third harmonics pass on to one. A closed
        delta keeps those of its three legs to itself."""
        return any(self.lines[LEG_COUNT])

    def winding_amps(self, amps: Sequence[complex]) -> list[complex]:
        """The current of every secondary winding, as ``made`` lists them."""
        return [sum((f * i for f, i in zip(row, amps, strict=True)), 0j) for row in self.windings]


class _Windings:
    """The windings of a transformer, fed ones first, and the joints where they meet each other and the lines.

    The unknowns are winding currents from start to end inside the winding, then line currents in, then leaks out of
    inner joints.
    """

    def __init__(
        self, cores: tuple[Core, ...], joined: tuple[tuple[str, str], ...], secondary: tuple[str, ...]
    ) -> None:
        self._same = {Terminal(Side.SECONDARY, there): Terminal(Side.PRIMARY, here) for here, there in joined}
        self.core_count = len(cores)
        self.fed = [(c, core.primary) for c, core in enumerate(cores)]
        self.made = [(c, winding) for c, core in enumerate(cores) for winding in core.secondaries]
        self.all = [*self.fed, *self.made]
        self.ends = [(self.node(winding.start), self.node(winding.end)) for _, winding in self.all]
        leaving = [self.node(Terminal(Side.SECONDARY, name)) for name in secondary]
        self.joints = list(dict.fromkeys([*chain.from_iterable(self.ends), *leaving]))
        self.supplied = [j for j in self.joints if j.side is Side.PRIMARY]
        self.inside = [j for j in self.joints if j.side is Side.INSIDE]
        self.lines_from = len(self.all)
        self.leaks_from = self.lines_from + len(self.supplied)
        self.count = self.leaks_from + len(self.inside)

    def node(self, terminal: Terminal) -> Terminal:
        return self._same.get(terminal, terminal)

    def balances(self) -> list[list[float]]:
        """One row a core (ampere-turns add up to nothing), then one a joint (currents do)."""
        rows = []
        for core in range(self.core_count):
            turns = [winding.volts if c == core else 0.0 for c, winding in self.all]
            rows.append(turns + [0.0] * (self.count - len(turns)))
        for joint in self.joints:
            row = [float((end == joint) - (start == joint)) for start, end in self.ends]
            row += [0.0] * (self.count - len(row))
            if joint in self.supplied:
                row[self.lines_from + self.supplied.index(joint)] = 1.0
            if joint in self.inside:
                row[self.leaks_from + self.inside.index(joint)] = -1.0
            rows.append(row)
        return rows

    def drawn(self, name: str, back: str) -> list[float]:
        """The right side for one ampere out of a secondary conductor, back into another."""
        right = [0.0] * (self.core_count + len(self.joints))
        if name != back:
            for end, amount in ((name, 1.0), (back, -1.0)):
                joint = self.joints.index(self.node(Terminal(Side.SECONDARY, end)))
                right[self.core_count + joint] += amount
        return right

    def weights(self) -> list[float]:
        """What the square of each unknown costs."""
        leakage = [w.volts**2 for _, w in self.fed] + [_SHARE_WEIGHT * w.volts**2 for _, w in self.made]
        most = max(leakage)
        return [w / most for w in leakage] + [0.0] * len(self.supplied) + [_LEAK_WEIGHT] * len(self.inside)

    def order(self) -> list[int]:
        """Unknowns in the order in which they are expressed by the others: lines, secondary, fed windings, leaks."""
        fed = range(len(self.fed))
        made = range(len(self.fed), self.lines_from)
        return [*range(self.lines_from, self.leaks_from), *made, *fed, *range(self.leaks_from, self.count)]


@lru_cache(maxsize=4096)
def through(cores: tuple[Core, ...], joined: tuple[tuple[str, str], ...], secondary: tuple[str, ...]) -> Through:
    """The map of a transformer with these cores; ``joined`` are conductors shared by both sides, primary name first,
    ``secondary`` the conductors that leave it."""
    windings = _Windings(cores, joined, secondary)
    back = "N" if "N" in secondary else secondary[-1]
    wanted = [windings.drawn(name, back) for name in secondary]
    solved = _least(windings.balances(), windings.weights(), wanted, windings.order())
    columns = {INDEX[name]: solution for name, solution in zip(secondary, solved, strict=True)}

    def of(k: int) -> tuple[float, ...]:
        return tuple(_clean(columns[i][k]) if i in columns else 0.0 for i in range(LEG_COUNT + 1))

    lines: list[tuple[float, ...]] = [(0.0,) * 4] * (LEG_COUNT + 1)
    for place, joint in enumerate(windings.supplied, windings.lines_from):
        lines[INDEX[joint.conductor]] = of(place)
    return Through(
        tuple(lines),
        # Out of the dotted end: against the sense in which the fed winding's current counts.
        tuple(tuple(-f for f in of(k)) for k in range(len(windings.fed), windings.lines_from)),
        tuple(WindingAt(c, w.start.conductor, w.end.conductor, w.volts) for c, w in windings.made),
        tuple(of(k) for k in range(len(windings.fed))),
        *_splits(cores),
    )


def through_of(state: EquipmentState | None) -> Through | None:
    """How currents pass a transformer in its place; None for what is none, or does not fit."""
    if state is None or not isinstance(state.winding, Transformed):
        return None
    winding = state.winding
    return through(winding.cores, winding.joined, winding.system.conductors)


def _clean(value: float) -> float:
    return 0.0 if abs(value) < 1e-7 else value


def _splits(cores: tuple[Core, ...]) -> tuple[tuple[tuple[float, ...], ...], tuple[tuple[float, ...], ...]]:
    """A schedule's split: a leg's share on the windings that it touches, each winding's on the primary legs; and what
    of it is fed between a leg and the neutral."""
    touching: dict[int, list[int]] = {}
    for c, core in enumerate(cores):
        for winding in core.secondaries:
            for end in (winding.start, winding.end):
                if end.side is Side.SECONDARY and end.conductor != "N":
                    touching.setdefault(INDEX[end.conductor], []).append(c)
    split = [[0.0] * LEG_COUNT for _ in range(LEG_COUNT)]
    to_neutral = [[0.0] * LEG_COUNT for _ in range(LEG_COUNT)]
    for leg, found in touching.items():
        for c in found:
            ends = (cores[c].primary.start, cores[c].primary.end)
            fed = [INDEX[end.conductor] for end in ends if end.side is not Side.INSIDE and end.conductor != "N"]
            for primary in fed:
                split[primary][leg] += 1.0 / len(found) / len(fed)
                if any(end.side is not Side.INSIDE and end.conductor == "N" for end in ends):
                    to_neutral[primary][leg] += 1.0 / len(found) / len(fed)
    return tuple(map(tuple, split)), tuple(map(tuple, to_neutral))


def _least(
    rows: list[list[float]], weights: list[float], wanted: list[list[float]], order: list[int]
) -> list[list[float]]:
    """For each right side, the x with ``rows`` x = right side and the least sum of weights x²; redundant rows do no
    harm. ``order`` says which unknowns are expressed by the others first; the few left free are then chosen."""
    matrix = []
    right = []
    for row, *values in zip(rows, *wanted, strict=True):
        scale = max(map(abs, row)) or 1.0
        matrix.append([value / scale for value in row])
        right.append([value / scale for value in values])
    taken = _eliminate(matrix, right, order)
    count = len(weights)
    free = [k for k in range(count) if k not in taken]
    # x = start + sum of z times a loop, one loop for each free unknown.
    loops = []
    for k in free:
        loop = [0.0] * count
        loop[k] = 1.0
        for column, row_at in taken.items():
            loop[column] = -matrix[row_at][k]
        loops.append(loop)
    starts = []
    for side in range(len(wanted)):
        start = [0.0] * count
        for column, row_at in taken.items():
            start[column] = right[row_at][side]
        starts.append(start)
    normal = [[_dot(a, b, weights) for b in loops] for a in loops]
    pulls = [[-_dot(loop, start, weights) for start in starts] for loop in loops]
    chosen = _eliminate(normal, pulls, list(range(len(loops))))
    for side, start in enumerate(starts):
        for k, row_at in chosen.items():
            amount = pulls[row_at][side]
            for i in range(count):
                start[i] += amount * loops[k][i]
    return starts


def _dot(a: list[float], b: list[float], weights: list[float]) -> float:
    return sum(w * x * y for w, x, y in zip(weights, a, b, strict=True))


def _eliminate(matrix: list[list[float]], right: list[list[float]], order: list[int]) -> dict[int, int]:
    """Gauss and Jordan in place, columns in ``order``; returns the pivot row of each column that has one."""
    unused = set(range(len(matrix)))
    taken: dict[int, int] = {}
    for column in order:
        row = max(unused, key=lambda r: abs(matrix[r][column]), default=None)
        if row is None or abs(matrix[row][column]) < 1e-9:
            continue
        unused.discard(row)
        taken[column] = row
        pivot = matrix[row][column]
        matrix[row] = [value / pivot for value in matrix[row]]
        right[row] = [value / pivot for value in right[row]]
        for other in range(len(matrix)):
            factor = matrix[other][column]
            if other != row and factor:
                matrix[other] = [a - factor * b for a, b in zip(matrix[other], matrix[row], strict=True)]
                right[other] = [a - factor * b for a, b in zip(right[other], right[row], strict=True)]
    return taken


def loading_amps(cores: tuple[Core, ...], va: float) -> tuple[float, ...]:
    """What each secondary winding may carry: an equal part of the rating on each core, over the volts of that core."""
    share = va / len(cores)
    return tuple(share / sum(w.volts for w in core.secondaries) for core in cores for _ in core.secondaries)
