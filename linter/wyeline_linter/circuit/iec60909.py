"""Short-circuit factors of IEC 60909-0:2016.

The values are from memory of the standard (Table 1, clauses 6.3.3, 6.6.1 and 8.1.1) and should be
compared with the adopted edition before anyone relies on them.
"""

from __future__ import annotations

from math import exp, sqrt
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from .layout import Floats

LOW_VOLTAGE_V = 1000.0
MESHED_FACTOR = 1.15
PEAK_LIMIT_LV = 1.8
PEAK_LIMIT = 2.0


def c_max(v_ll: float, tolerance: float = 0.06) -> float:
    """Voltage factor for maximum currents: 1.05 (LV within +6 %), 1.10 (LV within +10 %, and above 1 kV)."""
    return 1.05 if v_ll <= LOW_VOLTAGE_V and tolerance <= 0.06 else 1.10


def c_min(v_ll: float, tolerance: float = 0.06) -> float:
    """Voltage factor for minimum currents: 0.95 (LV within +6 %), 0.90 (LV within +10 %), 1.00 above 1 kV."""
    if v_ll > LOW_VOLTAGE_V:
        return 1.00
    return 0.95 if tolerance <= 0.06 else 0.90


def transformer_factor(x_pu: float, c: float) -> float:
    """K_T = 0.95 c_max / (1 + 0.6 x_T); it multiplies Z1 and Z0 of network transformers."""
    return 0.95 * c / (1 + 0.6 * x_pu)


def generator_factor(v_network: float, v_rated: float, c: float, subtransient_pu: float, sin_phi: float) -> float:
    """K_G = (U_n / U_rG) c_max / (1 + x"d sin phi)."""
    return v_network / v_rated * c / (1 + subtransient_pu * sin_phi)


def peak_factor(r_over_x: float) -> float:
    """kappa = 1.02 + 0.98 e^(-3 R/X)."""
    return 1.02 + 0.98 * exp(-3 * r_over_x)


def peak_factors(r_over_x: Floats) -> Floats:
    """The same of many at once."""
    import numpy as np

    return np.asarray(1.02 + 0.98 * np.exp(-3 * r_over_x), dtype=np.float64)


def peak_current(fault_a: float, r_over_x: float, *, meshed: bool = False, low_voltage: bool = True) -> float:
    """i_p = kappa sqrt2 I"k, in A.  In meshed networks 1.15 kappa at the fault place, at most 1.8 (LV) or 2.0."""
    kappa = peak_factor(r_over_x)
    if meshed:
        kappa = min(MESHED_FACTOR * kappa, PEAK_LIMIT_LV if low_voltage else PEAK_LIMIT)
    return kappa * sqrt(2) * fault_a
