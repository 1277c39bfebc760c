"""Unbalanced load flow: fixed-point current injection on one factorised matrix, Newton where that does not settle.

Method: modified nodal analysis in phase coordinates; constant-power and constant-current loads are injections, constant
impedances are part of the matrix.  The start is the no-load solution, which already carries every transformer's shift.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from .assemble import Assembled, Complex, Floats, Ints, SingularNetwork, assemble, impedance_loads, load_columns, powers
from .factors import FLOW, Factors, KeptFactors
from .flowresult import Solved
from .folded import Folded
from .network import Network

COLLAPSE_PU = 0.75
"""Below this part of nominal voltage a constant-power load is taken as constant impedance (common practice, no source);
the impedance is the one that draws the stated power at exactly this voltage, so the law has no jump."""
CURRENT_FLOOR_PU = 0.05
"""Likewise for constant current, whose angle has no meaning at zero volts."""
TOLERANCE_PU = 1e-10
"""How far at the most a voltage is from where it settles, as a part of nominal."""
SAFELY_PU = TOLERANCE_PU / 4
"""The same, foreseen: the ratio that it is foreseen by may still grow a little."""
ROUNDING_PU = 1e-9
"""Movements below this may be rounding, which only a refined solve corrects."""
STANDING = 0.9
"""A ratio of two movements above which they do not shrink any more."""
FIXED_POINT_LIMIT = 40
NEWTON_LIMIT = 40


@dataclass(frozen=True, slots=True)
class NotSolved:
    """The load flow gave no answer.  It carries no voltages, only why."""

    reason: str


@dataclass(frozen=True, slots=True)
class LoadLaw:
    """Constant-power and constant-current loads in arrays."""

    plus: Ints
    minus: Ints
    s_power: Complex
    s_current: Complex
    v_nominal: Floats
    limit_a: Floats
    collapse_pu: float

    @classmethod
    def of(cls, network: Network, collapse_pu: float = COLLAPSE_PU) -> LoadLaw:
        """Columns of all loads of the network (the constant-impedance share is in the matrix)."""
        columns = load_columns(network.loads)
        s = powers(network.loads)
        return cls(
            columns.plus,
            columns.minus,
            s * columns.p_share,
            s * columns.i_share,
            columns.v_nominal,
            columns.limit_a,
            max(collapse_pu, 1e-6),
        )

    def across(self, node_volts: Complex) -> Complex:
        """Voltage on each load."""
        volts: Complex = node_volts[self.plus] - node_volts[self.minus]
        return volts

    def collapsed(self, v: Complex) -> Any:
        """Loads whose constant-power share has become an impedance."""
        return (np.abs(v) < self.collapse_pu * self.v_nominal) & (self.s_power != 0)

    def current(self, v: Complex) -> Complex:
        """Current drawn from the plus node at voltage `v`, in A."""
        size = np.abs(v)
        floor_p = self.collapse_pu * self.v_nominal
        floor_i = CURRENT_FLOOR_PU * self.v_nominal
        power = np.conj(self.s_power) * v / np.maximum(size, floor_p) ** 2
        drawn = np.abs(power)
        over = drawn > self.limit_a
        power[over] *= self.limit_a[over] / drawn[over]
        steady = np.conj(self.s_current) * v / (self.v_nominal * np.maximum(size, floor_i))
        return np.asarray(power + steady, dtype=np.complex128)

    def limited(self, v: Complex) -> Any:
        """Loads (inverters) held at their current limit."""
        return np.abs(self.s_power) > self.limit_a * np.maximum(np.abs(v), self.collapse_pu * self.v_nominal) * (
            1 + 1e-12
        )

    def slope(self, v: Complex) -> tuple[Complex, Complex]:
        """dI/dV and dI/dV* of the current law (current limits are left out: only the way to the solution changes)."""
        size = np.abs(v)
        safe = np.where(size > 0, v, 1.0)
        turn = safe / np.conj(safe)
        low_p = size < self.collapse_pu * self.v_nominal
        low_i = size < CURRENT_FLOOR_PU * self.v_nominal
        sp, si = np.conj(self.s_power), np.conj(self.s_current)
        by_v = np.where(low_p, sp / (self.collapse_pu * self.v_nominal) ** 2, 0)
        by_conj = np.where(low_p, 0, -sp / np.conj(safe) ** 2)
        steady = si / (self.v_nominal * np.where(low_i, CURRENT_FLOOR_PU * self.v_nominal, np.abs(safe)))
        by_v = by_v + np.where(low_i, steady, steady / 2)
        by_conj = by_conj - np.where(low_i, 0, steady * turn / 2)
        return by_v, by_conj


class FlowFactors:
    """The equations of the last load flow with their factors and their solution without load, taken over by the next
    one while they are the same.

    Constant-power and constant-current loads are no part of the matrix, so a change of such a load solves again with
    the factors at hand.  `reused` says whether the last solve could.
    """

    def __init__(self) -> None:
        self.kept = KeptFactors()
        """Where the factors stand, with those of other matrices of the circuit."""
        self._assembled: Assembled | None = None
        self._factors: Factors | None = None
        self._no_load: Complex | None = None
        self._folded: Folded | None = None

    @property
    def reused(self) -> bool:
        return self.kept.reused

    def assembled(self, network: Network) -> Assembled:
        """The equations of a network.  Raises SingularNetwork."""
        old = self._assembled
        if old is not None and old.network.same_wiring(network):
            mine, theirs = impedance_loads(network), impedance_loads(old.network)
            if all(map(np.array_equal, mine, theirs)):
                return replace(old, network=network)
        return assemble(network, "flow")

    def of(self, assembled: Assembled) -> Factors:
        """The factors of a matrix.  Raises SingularNetwork."""
        factors = self.kept.of(FLOW, assembled)
        if factors is not self._factors:
            self._factors, self._no_load = factors, None
        self._assembled = replace(assembled, rows=factors.rows, cols=factors.cols, values=factors.values)
        return factors

    def no_load(self, source: Complex) -> Complex:
        """The solution without load."""
        assert self._factors is not None
        if self._no_load is None:
            self._no_load = self._factors.solve(source)
        return self._no_load

    def folded(self, assembled: Assembled, law: LoadLaw) -> Folded | None:
        """The factors as the loads see them; None where they are no forest, or one that closes loops."""
        assert self._factors is not None
        forest = self._factors.forest
        if forest is None or len(forest.places.touched):
            self._folded = None
            return None
        plus, minus = assembled.layout.unknown[law.plus], assembled.layout.unknown[law.minus]
        if self._folded is None or not self._folded.is_of(forest, plus, minus):
            self._folded = Folded(forest, plus, minus)
        return self._folded


def solve_flow(
    network: Network, collapse_pu: float = COLLAPSE_PU, kept: FlowFactors | None = None
) -> Solved | NotSolved:
    """Solve the load flow.  Never raises for an electrical reason: what cannot be solved comes back as NotSolved.

    `collapse_pu` is the part of nominal voltage below which constant power becomes constant impedance; 0 never.
    `kept` holds factors to take over and keeps those of this solve.
    """
    kept = FlowFactors() if kept is None else kept
    try:
        assembled = kept.assembled(network)
        factors = kept.of(assembled)
    except SingularNetwork as trouble:
        return NotSolved(str(trouble))
    law = LoadLaw.of(network, collapse_pu)
    source = assembled.excitation()
    x = kept.no_load(source)
    if not np.all(np.isfinite(x)):
        return NotSolved("the equations have no single solution")
    if not len(law.plus):
        return Solved.of(assembled, x, law.across, law.current, 0, "no load")
    x, iterations, moved = _fixed_point(assembled, factors, law, source, x, kept.folded(assembled, law))
    method = "fixed point"
    if moved is not None:
        # Seldom asked for, and so is the sparse solver that it loads.
        x, more, moved = _newton(assembled, law, source, x)
        iterations += more
        method = "Newton"
    if moved is not None:
        return NotSolved(
            "the load flow does not settle: the loads ask for more power than the network can carry at any voltage"
        )
    volts = law.across(assembled.node_voltages(x))
    fed = assembled.topology.live[law.plus] | assembled.topology.live[law.minus]
    names = network.loads.names
    return Solved.of(
        assembled,
        x,
        law.across,
        law.current,
        iterations,
        method,
        collapsed=tuple(names[k] for k in np.flatnonzero(law.collapsed(volts) & fed)),
        limited=tuple(names[k] for k in np.flatnonzero(law.limited(volts))),
        unfed=tuple(names[k] for k in np.flatnonzero(~fed)),
    )


def _injection(assembled: Assembled, law: LoadLaw, source: Complex, volts: Complex) -> Complex:
    current = law.current(volts)
    return source - assembled.injected(law.plus, current) + assembled.injected(law.minus, current)


class _Settling:
    """How the voltages at loads settle, round by round, as parts of nominal. They shrink by nearly the same ratio from
    one round to the next, which tells how far they still are from where they go."""

    def __init__(self, count: int) -> None:
        self.moved: Floats = np.zeros(count)
        """How far each voltage moved last."""
        self.most = np.inf
        self.least = np.inf
        self.rounds = 0
        self.ratio = 1.0
        self._slow = 0

    def saw(self, before: Complex, after: Complex, nominal_v: Floats) -> None:
        """One round more."""
        self.rounds += 1
        self.moved = np.abs(after - before) / nominal_v
        last, self.most = self.most, float(self.moved.max())
        self._slow = self._slow + 1 if self.most > 0.6 * last else 0
        self.ratio = self.most / last if 0.0 < last < np.inf else 1.0
        self.least = min(self.least, self.most)

    def left(self, rounds: int) -> float:
        """How far they are from where they go, at the most, after so many rounds more."""
        if not self.ratio < STANDING:
            return self.most
        return self.most * self.ratio ** (rounds + 1) / (1.0 - self.ratio)

    @property
    def astray(self) -> bool:
        """Whether they do not settle, or too slowly."""
        lost = self.rounds > 0 and not np.isfinite(self.most)
        return lost or self._slow >= 4 or self.rounds >= FIXED_POINT_LIMIT

    @property
    def settled(self) -> bool:
        """Whether they are where they go, as far as numbers tell: what moves by rounding does not shrink any more."""
        return self.left(rounds=0) < TOLERANCE_PU or (self.most < ROUNDING_PU and self.ratio > STANDING)

    def nearly(self, rounds: int) -> bool:
        """Whether they are where they go after so many rounds more."""
        return self.left(rounds) < SAFELY_PU or self.most < ROUNDING_PU


def _fixed_point(
    assembled: Assembled, factors: Factors, law: LoadLaw, source: Complex, x: Complex, folded: Folded | None
) -> tuple[Complex, int, Floats | None]:
    """Iterate; the third value is None when settled, else the last movement of each load's voltage.

    The first rounds ask for the voltages at loads alone, the last ones for all, and correct what rounding left.
    """
    volts = without_load = law.across(assembled.node_voltages(x))
    settling = _Settling(len(volts))
    best, refine = volts, False
    while not settling.astray:
        quick = folded is not None and not settling.nearly(rounds=2)
        if folded is not None and quick:
            after = without_load + folded.across(law.current(volts))
        else:
            rhs = _injection(assembled, law, source, volts)
            x = x + factors.solve_once(rhs - factors.times(x)) if refine else factors.solve_once(rhs)
            after = law.across(assembled.node_voltages(x))
        settling.saw(volts, after, law.v_nominal)
        volts = after
        if settling.most <= settling.least:
            best = volts
        if refine and settling.settled:
            return x, settling.rounds, None
        refine = not quick and settling.nearly(rounds=1)
    return factors.solve(_injection(assembled, law, source, best)), settling.rounds, settling.moved


def _newton(assembled: Assembled, law: LoadLaw, source: Complex, x: Complex) -> tuple[Complex, int, Floats | None]:
    """Newton's method in real and imaginary parts with step halving; returns as :func:`_fixed_point`."""
    from scipy.sparse.linalg import splu

    matrix = assembled.sparse()
    size = assembled.size
    moved: Floats = np.full(len(law.plus), np.inf)

    def misfit(at: Complex) -> Complex:
        rhs = _injection(assembled, law, source, law.across(assembled.node_voltages(at)))
        return np.asarray(matrix @ at - rhs, dtype=np.complex128)

    residual = misfit(x)
    for iteration in range(1, NEWTON_LIMIT + 1):
        volts = law.across(assembled.node_voltages(x))
        by_v, by_conj = law.slope(volts)
        jacobian = _real_form(matrix, _stamp(assembled, law, by_v), _stamp(assembled, law, by_conj))
        try:
            step = splu(jacobian).solve(-np.concatenate((residual.real, residual.imag)))
        except RuntimeError:
            return x, iteration, moved
        change: Complex = step[:size] + 1j * step[size:]
        moved = np.abs(law.across(assembled.node_voltages(change))) / law.v_nominal
        if float(moved.max()) < TOLERANCE_PU:
            return x + change, iteration, None
        share = 1.0
        norm = float(np.linalg.norm(residual))
        while True:
            trial = x + share * change
            after = misfit(trial)
            if np.linalg.norm(after) <= norm * (1 - 1e-4 * share):
                break
            share /= 2
            if share < 1e-3:
                return x, iteration, moved
        x, residual = trial, after
    return x, NEWTON_LIMIT, moved


def _stamp(assembled: Assembled, law: LoadLaw, y: Complex) -> Any:
    from scipy.sparse import coo_array, csc_array

    a, b = assembled.layout.unknown[law.plus], assembled.layout.unknown[law.minus]
    rows = np.concatenate((a, b, a, b))
    cols = np.concatenate((a, b, b, a))
    values = np.concatenate((y, y, -y, -y))
    inside = (rows >= 0) & (cols >= 0)
    shape = (assembled.size, assembled.size)
    return csc_array(coo_array((values[inside], (rows[inside], cols[inside])), shape=shape))


def _real_form(matrix: Any, by_v: Any, by_conj: Any) -> Any:
    from scipy.sparse import block_array

    straight = matrix + by_v
    return block_array(
        [
            [(straight + by_conj).real, (by_conj - straight).imag],
            [(straight + by_conj).imag, (straight - by_conj).real],
        ],
        format="csc",
    )
