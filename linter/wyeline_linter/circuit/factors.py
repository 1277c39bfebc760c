"""Factors of an assembled network: along the forest of its buses, or general ones where it is too meshed for that."""

from __future__ import annotations

from typing import Any, Protocol

import numpy as np

from .assemble import Assembled, SingularNetwork
from .forest import Forest, TooManyLoops
from .layout import Complex

DENSE_LIMIT = 400
"""Unknowns up to which a full matrix is inverted, which costs less than to load the sparse solver."""
ROUNDING = 1e-9
"""Largest relative error that elimination along the forest may leave in an equation."""
NO_SOLUTION = (
    "the equations have no single solution: two sources without impedance feed the same conductors, "
    "or windings without impedance are in parallel"
)


class _Direct(Protocol):
    def solve(self, rhs: Complex, *, transposed: bool = False) -> Complex: ...


class Factors:
    """Factors with a refined solve.  Raises SingularNetwork on construction."""

    def __init__(self, assembled: Assembled) -> None:
        self._assembled = assembled
        self.forest: Forest | None = None
        """The factors along the forest, where they serve."""
        try:
            forest = Forest(assembled)
            if self._serves(forest):
                self.forest = forest
        except (np.linalg.LinAlgError, TooManyLoops):
            pass
        self._direct: _Direct = self.forest or (
            _Dense(assembled) if assembled.size <= DENSE_LIMIT else _Sparse(assembled)
        )

    def times(self, x: Complex) -> Complex:
        """The matrix times one or many vectors."""
        return _times(self._assembled, self._assembled.values, x)

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
        assembled = self._assembled
        rhs = np.cos(np.arange(assembled.size, dtype=np.float64)).astype(np.complex128)
        x = forest.solve(rhs)
        if not np.all(np.isfinite(x)):
            return False
        left = np.abs(rhs - self.times(x))
        size = np.bincount(assembled.rows, np.abs(assembled.values) * np.abs(x)[assembled.cols], assembled.size)
        return bool(np.all(left <= ROUNDING * (size + np.abs(rhs))))


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


def _times(assembled: Assembled, values: Complex, x: Complex) -> Complex:
    rows, cols, size = assembled.rows, assembled.cols, assembled.size
    found = np.empty(x.shape, dtype=np.complex128)
    flat, into = (x[:, None], found[:, None]) if x.ndim == 1 else (x, found)
    for column in range(flat.shape[1]):
        terms = values * flat[cols, column]
        into.real[:, column] = np.bincount(rows, terms.real, size)
        into.imag[:, column] = np.bincount(rows, terms.imag, size)
    return found
