"""Short-circuit factors of IEC 60909-0:2016.

The values are from memory of the standard (Table 1, clauses 6.2, 6.3.3, 6.6.1, 6.10, 7.1.1 and 8.1.1) and should be
compared with the adopted edition before anyone relies on them.
"""

from __future__ import annotations

from math import exp, sqrt

from .nameplate import from_magnitude

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


def feeder_impedance(v_ll: float, fault_a: float, c: float, r_over_x: float = 0.1) -> complex:
    """Network feeder Z_Q = c U / (sqrt3 I"k), in ohm; R_Q = 0.1 X_Q where nothing else is known (flag as assumed)."""
    return from_magnitude(c * v_ll / (sqrt(3) * fault_a), 1 / r_over_x if r_over_x else float("inf"))


def transformer_factor(x_pu: float, c: float) -> float:
    """K_T = 0.95 c_max / (1 + 0.6 x_T); it multiplies Z1 and Z0 of network transformers."""
    return 0.95 * c / (1 + 0.6 * x_pu)


def generator_factor(v_network: float, v_rated: float, c: float, subtransient_pu: float, sin_phi: float) -> float:
    """K_G = (U_n / U_rG) c_max / (1 + x"d sin phi)."""
    return v_network / v_rated * c / (1 + subtransient_pu * sin_phi)


def motor_impedance(v_rated: float, s_rated_va: float, starting_ratio: float, r_over_x: float = 0.42) -> complex:
    """Z_M = (I_rM / I_LR) U^2 / S, in ohm per phase; R/X 0.42 for low-voltage groups with their cables."""
    return from_magnitude(v_rated**2 / s_rated_va / starting_ratio, 1 / r_over_x)


def peak_factor(r_over_x: float) -> float:
    """kappa = 1.02 + 0.98 e^(-3 R/X)."""
    return 1.02 + 0.98 * exp(-3 * r_over_x)


def peak_current(fault_a: float, r_over_x: float, *, meshed: bool = False, low_voltage: bool = True) -> float:
    """i_p = kappa sqrt2 I"k, in A.  In meshed networks 1.15 kappa at the fault place, at most 1.8 (LV) or 2.0."""
    kappa = peak_factor(r_over_x)
    if meshed:
        kappa = min(MESHED_FACTOR * kappa, PEAK_LIMIT_LV if low_voltage else PEAK_LIMIT)
    return kappa * sqrt(2) * fault_a


def hot_resistance(r20_ohm: float, end_c: float) -> float:
    """Resistance at the end of the short circuit for minimum currents: R20 (1 + 0.004 (t - 20))."""
    return r20_ohm * (1 + 0.004 * (end_c - 20))


def breaking_factor(fault_over_rated: float, minimum_time_s: float) -> float:
    """mu for the breaking current of generators, by minimum time delay (0.02, 0.05, 0.10, 0.25 s and more)."""
    if fault_over_rated <= 2:
        return 1.0
    for limit, base, scale, rate in (
        (0.05, 0.84, 0.26, 0.26),
        (0.10, 0.71, 0.51, 0.30),
        (0.25, 0.62, 0.72, 0.32),
        (float("inf"), 0.56, 0.94, 0.38),
    ):
        if minimum_time_s < limit:
            return min(1.0, base + scale * exp(-rate * fault_over_rated))
    raise AssertionError("unreachable")
