"""US practice for low-voltage ratings: first-cycle motor impedances, asymmetry, and the duty of a tested device.

Sources: IEEE Std 141 (first-cycle network), IEEE C37.13 and UL 489 (test power factors); values from memory of these
standards, to be compared with the edition adopted.
"""

from __future__ import annotations

from math import acos, exp, inf, pi, sqrt, tan
from typing import Literal

Device = Literal["power breaker", "molded-case breaker", "fuse"]
TEN_KA = 10_000.0
TWENTY_KA = 20_000.0
LARGE_MOTOR_HP = 50.0


def motor_first_cycle_pu(hp: float, subtransient_pu: float | None = None) -> float:
    """First-cycle reactance of an induction motor per unit on its kVA (IEEE Std 141).

    From 50 hp: 1.2 X", or 0.20 where X" is not stated; below: 1.67 X", or 0.28.
    """
    if hp >= LARGE_MOTOR_HP:
        return 0.20 if subtransient_pu is None else 1.2 * subtransient_pu
    return 0.28 if subtransient_pu is None else 1.67 * subtransient_pu


def peak_factor(x_over_r: float) -> float:
    """Peak over rms symmetrical current at half a cycle: sqrt2 (1 + e^(-pi/(X/R)))."""
    return sqrt(2) * (1 + _decay(x_over_r))


def rms_asymmetry_factor(x_over_r: float) -> float:
    """Asymmetrical over symmetrical rms at half a cycle: sqrt(1 + 2 e^(-2 pi/(X/R)))."""
    return sqrt(1 + 2 * _decay(x_over_r) ** 2)


def test_power_factor(device: Device, rating_a: float) -> float:
    """Power factor at which a device was tested for its interrupting rating in A."""
    if device == "power breaker":
        return 0.15
    if device == "fuse" or rating_a > TWENTY_KA:
        return 0.20
    return 0.30 if rating_a > TEN_KA else 0.50


def x_over_r_of(power_factor: float) -> float:
    """X/R of a circuit of the given power factor: tan(acos pf)."""
    return tan(acos(power_factor))


def multiplying_factor(x_over_r: float, power_factor: float) -> float:
    """How much harder than its test a circuit is: ratio of peak factors, at least 1 (IEEE C37.13)."""
    return max(1.0, peak_factor(x_over_r) / peak_factor(x_over_r_of(power_factor)))


def duty(fault_a: float, x_over_r: float, device: Device, rating_a: float) -> float:
    """Current to compare with a device's interrupting rating, in A: fault current times multiplying factor."""
    return fault_a * multiplying_factor(x_over_r, test_power_factor(device, rating_a))


def _decay(x_over_r: float) -> float:
    if x_over_r <= 0:
        return 0.0
    return 1.0 if x_over_r == inf else exp(-pi / x_over_r)
