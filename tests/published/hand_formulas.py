"""The formulas of hand calculation, which solved figures are compared with; the tests name where each was printed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, pi, sqrt
from typing import Literal

Wiring = Literal["three-phase", "line-line", "line-neutral"]


@dataclass(frozen=True, slots=True)
class PointToPoint:
    """One step of the point-to-point method: I' = I / (1 + f)."""

    factor: float
    multiplier: float
    fault_a: float


def terminal_current(s_va: float, v_secondary: float, z_percent: float, phases: int, tolerance: float = 1.0) -> float:
    """Fault current at transformer terminals fed without limit: full-load current / (tolerance * Z), in A.

    `tolerance` 0.9 counts on the -10 % allowed on a nameplate impedance (common practice).
    """
    full_load = s_va / (sqrt(3) * v_secondary if phases == 3 else v_secondary)
    return full_load * 100 / (tolerance * z_percent)


def along_conductor(
    fault_a: float, length_ft: float, c_constant: float, per_phase: int, volt: float, wiring: Wiring
) -> PointToPoint:
    """Point-to-point step along conductors: f = k L I / (C n E), k = sqrt3 (three-phase) or 2, L one way in ft.

    `volt` is line to line, or line to neutral for "line-neutral"; `c_constant` from the conductor table.
    """
    k = sqrt(3) if wiring == "three-phase" else 2.0
    return _step(fault_a, k * length_ft * fault_a / (c_constant * per_phase * volt))


def through_transformer(
    fault_a: float,
    v_primary: float,
    v_secondary: float,
    s_va: float,
    z_percent: float,
    phases: int,
    tolerance: float = 1.0,
) -> PointToPoint:
    """Point-to-point step through a second transformer: f = k I Vp Z / S; the result is on the secondary."""
    k = sqrt(3) if phases == 3 else 1.0
    step = _step(fault_a, k * fault_a * v_primary * tolerance * z_percent / 100 / s_va)
    return PointToPoint(step.factor, step.multiplier, step.fault_a * v_primary / v_secondary)


def _step(fault_a: float, factor: float) -> PointToPoint:
    multiplier = 1 / (1 + factor)
    return PointToPoint(factor, multiplier, fault_a * multiplier)


def effective_ohm(r_ohm: float, x_ohm: float, power_factor: float) -> float:
    """Effective impedance R cos phi + X sin phi (NEC Chapter 9 Table 9 note 2)."""
    return r_ohm * power_factor + x_ohm * sqrt(1 - power_factor**2)


def voltage_drop(current_a: float, r_ohm: float, x_ohm: float, power_factor: float, wiring: Wiring) -> float:
    """Voltage drop of a run in V: sqrt3 I Ze line to line (three-phase), 2 I Ze (two wires); R and X of one wire."""
    k = sqrt(3) if wiring == "three-phase" else 2.0
    return k * current_a * effective_ohm(r_ohm, x_ohm, power_factor)


def neutral_current(leg_a: Sequence[float]) -> float:
    """Neutral current of three legs of equal power factor: sqrt(A2 + B2 + C2 - AB - BC - CA), in A."""
    a, b, c = leg_a
    return sqrt(max(a * a + b * b + c * c - a * b - b * c - c * a, 0.0))


def open_delta_loads(
    three_phase_va: float, three_phase_angle: float, single_phase_va: float, single_phase_angle: float, sign: int
) -> tuple[float, float]:
    """Loads of the lighting and the power unit of an open delta in VA; angles in radians.

    sqrt(S1^2 + S3^2/3 + (2/sqrt3) S1 S3 cos(phi3 - phi1 +- 30 deg)) and S3/sqrt3.  `sign` +1 or -1: which unit leads.
    """
    s1, s3 = single_phase_va, three_phase_va
    shift = three_phase_angle - single_phase_angle + sign * pi / 6
    return sqrt(s1 * s1 + s3 * s3 / 3 + 2 / sqrt(3) * s1 * s3 * cos(shift)), s3 / sqrt(3)


def starting_dip(start_va: float, short_circuit_va: float) -> float:
    """Voltage dip as a part of nominal when a motor starts on a stiff system: S_start / S_sc."""
    return start_va / short_circuit_va


def generator_starting_dip(start_va: float, rated_va: float, transient_pu: float) -> float:
    """Voltage dip of a generator as a part of nominal: X'd S_start / (S_rated + X'd S_start)."""
    share = transient_pu * start_va
    return share / (rated_va + share)


def largest_deviation(volts: Sequence[float]) -> float:
    """Voltage unbalance as NEMA MG 1 defines it: largest deviation from the mean over the mean."""
    mean = sum(volts) / len(volts)
    return max(abs(value - mean) for value in volts) / mean


def supply_z(v_ll: float, fault_a: float, r_over_x: float, c_factor: float = 1.0) -> complex:
    """Positive-sequence impedance of a supply from its three-phase fault current, in ohm: c U / (sqrt3 I)."""
    z_ohm = c_factor * v_ll / (sqrt(3) * fault_a)
    x_ohm = z_ohm / sqrt(1 + r_over_x**2)
    return complex(r_over_x * x_ohm, x_ohm)
