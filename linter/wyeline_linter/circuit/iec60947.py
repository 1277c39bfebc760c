"""Making capacity of low-voltage devices and assemblies: the first peak that goes with a short-circuit rating.

Values from memory of IEC 60947-2 Table 2 and IEC 61439-1 Table 7, which agree above 6 kA; to be compared with the
edition adopted.
"""

from __future__ import annotations

from math import sqrt

_STEPS = ((6_000.0, 1.5), (10_000.0, 1.7), (20_000.0, 2.0), (50_000.0, 2.1))
_LARGEST = 2.2
LARGEST_PEAK = 2 * sqrt(2)
"""The most that a first peak can be, over the current."""


def making_factor(rating_a: float) -> float:
    """First peak over a rating in A: what a device was tested to make, or an assembly to bear."""
    return next((n for most_a, n in _STEPS if rating_a <= most_a), _LARGEST)


def duty(fault_a: float, peak_a: float, rating_a: float) -> float:
    """Current to compare with a rating, in A: that of the fault, or more where its peak is more than goes with it."""
    return max(fault_a, peak_a / making_factor(rating_a))
