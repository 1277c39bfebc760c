"""Zero, positive and negative sequence of three phasors (Fortescue)."""

from __future__ import annotations

A1 = complex(-0.5, 3**0.5 / 2)
"""The operator a: a turn of +120 degrees."""
A2 = A1.conjugate()
"""a squared: a turn of -120 degrees."""


def phase_matrix(of_0: complex, of_1: complex, of_2: complex) -> tuple[complex, ...]:
    """Sequence quantities (zero, positive, negative) as a 3*3 phase matrix, row by row (Fortescue)."""
    on = (of_0 + of_1 + of_2) / 3
    ahead = (of_0 + A1 * of_1 + A2 * of_2) / 3
    behind = (of_0 + A2 * of_1 + A1 * of_2) / 3
    return (on, ahead, behind, behind, on, ahead, ahead, behind, on)


def sequence_parts(a: complex, b: complex, c: complex) -> tuple[complex, complex, complex]:
    """Zero, positive and negative sequence of three phasors (Fortescue)."""
    return (a + b + c) / 3, (a + A1 * b + A2 * c) / 3, (a + A2 * b + A1 * c) / 3
