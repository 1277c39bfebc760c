"""Factors of an assembled network: along the forest of its buses, or general ones where it is too meshed for that."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Protocol

import numpy as np

from .assemble import Assembled, SingularNetwork
from .forest import Forest, TooManyLoops
from .layout import Complex

DENSE_LIMIT = 400
"""Unknowns up to which a full matrix is inverted, which costs less than to load the sparse solver."""
ROUNDING = 1e-9
"""Largest relative error that elimination along the forest may leave in an equation."""
FLOW = "flow"
"""The matrix that every edit of a load solves again."""
NO_SOLUTION = (
    "the equations have no single solution: two sources without impedance feed the same conductors, "
    "or windings without impedance are in parallel"
)


class _Direct(Protocol):
    def solve(self, rhs: Complex, *, transposed: bool = False) -> Complex: ...


class Factors:
    """Factors with a refined solve.  Raises SingularNetwork on construction.

    ``known`` are factors of networks wired alike, those of the same equations before an edit first.
    """

    def __init__(self, assembled: Assembled, known: Sequence[Factors] = ()) -> None:
        self.rows, self.cols, self.values, self.size = assembled.rows, assembled.cols, assembled.values, assembled.size
        self.forest: Forest | None = None
        """The factors along the forest, where they serve."""
        self.eliminated = 0
        """How many blocks of the forest were worked out; all others were taken over."""
        try:
            forest = Forest(assembled, [other.forest for other in known if other.forest is not None])
            self.rows, self.cols = forest.places.rows, forest.places.cols  # the same arrays for all wired alike
            self.eliminated = forest.eliminated
            if self._serves(forest):
                self.forest = forest
        except (np.linalg.LinAlgError, TooManyLoops):
            pass
        self._direct: _Direct = self.forest or (
            _Dense(assembled) if assembled.size <= DENSE_LIMIT else _Sparse(assembled)
        )

    @property
    def along(self) -> Forest | None:
        """The forest where it gives all of a solution: none of its loops was closed beside it."""
        return None if self.forest is None or len(self.forest.places.touched) else self.forest

    def are_of(self, assembled: Assembled) -> bool:
        """Whether these are the factors of a matrix."""
        pairs = ((self.values, assembled.values), (self.rows, assembled.rows), (self.cols, assembled.cols))
        return self.size == assembled.size and all(one is other or np.array_equal(one, other) for one, other in pairs)

    def times(self, x: Complex) -> Complex:
        """The matrix times one or many vectors."""
        found = np.empty(x.shape, dtype=np.complex128)
        flat, into = (x[:, None], found[:, None]) if x.ndim == 1 else (x, found)
        for column in range(flat.shape[1]):
            terms = self.values * flat[self.cols, column]
            into.real[:, column] = np.bincount(self.rows, terms.real, self.size)
            into.imag[:, column] = np.bincount(self.rows, terms.imag, self.size)
        return found

    def solve(self, rhs: Complex) -> Complex:
        """Solve for one or many right-hand sides, refined once."""
        x = self._direct.solve(rhs)
        return np.asarray(x + self._direct.solve(rhs - self.times(x)), dtype=np.complex128)

    def solve_once(self, rhs: Complex) -> Complex:
        """Solve without refinement."""
        return self._direct.solve(rhs)

    def solve_transposed(self, rhs: Complex) -> Complex:
        """Solve with the transposed matrix (rows of the inverse)."""
        return self._direct.solve(rhs, transposed=True)

    def _serves(self, forest: Forest) -> bool:
        """Whether a solution satisfies every equation to the rounding of its terms."""
        rhs = np.cos(np.arange(self.size, dtype=np.float64)).astype(np.complex128)
        x = forest.solve(rhs)
        if not np.all(np.isfinite(x)):
            return False
        left = np.abs(rhs - self.times(x))
        size = np.bincount(self.rows, np.abs(self.values) * np.abs(x)[self.cols], self.size)
        return bool(np.all(left <= ROUNDING * (size + np.abs(rhs))))


class KeptFactors:
    """The factors of the matrices of one circuit, by what each is for, taken over by those of the circuit after an
    edit: whole where a matrix is the same, else all but the ways from what changed to the source.

    Those of the load flow, which every edit of a load asks for, are kept from the first time on. The others are kept
    from the second: most sessions change loads only, and never need them again. General factors, which are large, are
    kept of the load flow only.

    ``reused`` says whether the last matrix was the same, ``eliminated`` how many blocks were worked out so far.
    """

    def __init__(self) -> None:
        self._last: dict[str, Factors] = {}
        self._asked: set[str] = {FLOW}
        self.reused = False
        self.eliminated = 0

    def of(self, what: str, assembled: Assembled) -> Factors:
        """The factors of a matrix.  Raises SingularNetwork."""
        before = self._last.get(what)
        self.reused = before is not None and before.are_of(assembled)
        if before is not None and self.reused:
            return before
        known = [factors for other, factors in self._last.items() if other != what]
        made = Factors(assembled, known if before is None else [before, *known])
        self.eliminated += made.eliminated
        if what == FLOW or (what in self._asked and made.forest is not None):
            self._last[what] = made
        else:
            self._last.pop(what, None)
        self._asked.add(what)
        return made


class _Dense:
    def __init__(self, assembled: Assembled) -> None:
        matrix = np.zeros((assembled.size, assembled.size), dtype=np.complex128)
        np.add.at(matrix, (assembled.rows, assembled.cols), assembled.values)
        try:
            self._inverse = np.linalg.inv(matrix)
        except np.linalg.LinAlgError:
            raise SingularNetwork(NO_SOLUTION) from None

    def solve(self, rhs: Complex, *, transposed: bool = False) -> Complex:
        return np.asarray((self._inverse.T if transposed else self._inverse) @ rhs, dtype=np.complex128)


class _Sparse:
    def __init__(self, assembled: Assembled) -> None:
        from scipy.sparse.linalg import splu

        try:
            self._lu: Any = splu(
                assembled.sparse(), permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.01, options={"SymmetricMode": True}
            )
        except RuntimeError:
            raise SingularNetwork(NO_SOLUTION) from None

    def solve(self, rhs: Complex, *, transposed: bool = False) -> Complex:
        solved: Complex = self._lu.solve(rhs, trans="T" if transposed else "N")
        return solved
