"""From nameplates and utility letters to impedances in ohm.  Plain arithmetic; imports nothing heavy."""

from __future__ import annotations

import cmath
from math import sqrt

LEAST_MAGNETISING_PU = -1e-6j
"""Magnetising admittance where none is stated.  A perfect core leaves the flux common to all three legs of a wye/wye or
zigzag undetermined; a millionth of rated current settles it and changes no figure that is shown."""


def from_magnitude(z_ohm: float, x_over_r: float) -> complex:
    """Split an impedance magnitude by its X/R.  ValueError for a negative value."""
    if z_ohm < 0 or x_over_r < 0:
        raise ValueError("an impedance and its X/R cannot be negative")
    r = z_ohm / sqrt(1 + x_over_r**2)
    return complex(r, r * x_over_r) if x_over_r != float("inf") else complex(0, z_ohm)


def utility_z0(v_ll: float, ground_fault_a: float, z1_ohm: complex, c_factor: float = 1.0) -> complex:
    """Zero-sequence impedance from the line-to-ground fault current: Z0 = 3 V / I - 2 Z1, in ohm.

    The loop is taken to have the angle of Z1 (flag it as assumed). ValueError when the current is larger than the
    stated Z1 allows, which means that the two figures contradict each other.
    """
    total = 3 * c_factor * v_ll / sqrt(3) / ground_fault_a
    z0 = cmath.rect(total, cmath.phase(z1_ohm)) - 2 * z1_ohm
    if z0.real < -1e-9 * total or z0.imag < -1e-9 * total:
        raise ValueError(
            f"a ground fault of {ground_fault_a:g} A leaves no zero-sequence impedance beside the three-phase figure"
        )
    return z0


def transformer_z_pu(z_percent: float, x_over_r: float) -> complex:
    """Series impedance per unit on the nameplate from %Z and X/R."""
    return from_magnitude(z_percent / 100, x_over_r)


def transformer_z_pu_from_loss(z_percent: float, load_loss_w: float, s_va: float) -> complex:
    """Series impedance per unit from %Z and the load loss at rated current (IEC 60909-0, 6.3.1)."""
    z, r = z_percent / 100, load_loss_w / s_va
    if r > z:
        raise ValueError("the load loss is larger than the impedance allows")
    return complex(r, sqrt(z * z - r * r))


def locked_rotor_z(v_rated: float, locked_rotor_a: float, power_factor: float, phases: int = 3) -> complex:
    """Impedance of a starting motor per phase (star) or across its two wires, in ohm."""
    z = v_rated / (sqrt(3) * locked_rotor_a) if phases == 3 else v_rated / locked_rotor_a
    return z * complex(power_factor, sqrt(1 - power_factor**2))
