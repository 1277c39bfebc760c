"""The IEEE 4-node transformer test feeder as a model: its balanced cases, as far as the language can say them.

A model has no coupling between wires, so each run is written with its positive-sequence impedance (own less mutual),
and the published phases, which the uneven spacing spreads by a few percent, are compared by their mean.  Source and
figures as in ``test_feeder_4_node.py``.
"""

from __future__ import annotations

import pytest
from studied_models import studied
from test_feeder_4_node import CASES, FOUR_WIRE, THREE_WIRE

KM_PER_MILE = 1.609344
PART = 1e-3
SITE = """
project "Four nodes"
  basis us-2023
  frequency 60 Hz

utility N1 {high}  infinite, x/r 10
switchgear N2 {high}  bus 1200 A
feeder N1 -> N2  2000 ft, {upper}
transformer T {high} -> {low}  6000 kVA, connection {group}, z 6.08276 %, x/r 6
feeder N2 -> T  0.1 m, resistance 0.001 ohm/km, reactance 0.001 ohm/km
switchgear N3 {low}  bus 1200 A
feeder T -> N3  0.1 m, resistance 0.001 ohm/km, reactance 0.001 ohm/km
load N4 {low}  5400 kW, pf 0.9 process
feeder N3 -> N4  2500 ft, {lower}
"""
FEEDERS = {"I12": "N1 -> N2", "I34": "N3 -> N4"}


def run(matrix: tuple[complex, ...]) -> str:
    """The positive-sequence impedance of a run of three coupled wires, in ohm per mile, as a model states it."""
    own = sum(matrix[::4]) / 3
    z = (own - (sum(matrix) - 3 * own) / 6) / KM_PER_MILE
    return f"resistance {z.real:.6f} ohm/km, reactance {z.imag:.6f} ohm/km"


@pytest.mark.parametrize(
    ("connection", "group", "high", "low"),
    [
        ("GrY-GrY", "YNyn0", "12.47Y/7.2 kV", "4160Y/2400"),
        ("D-GrY", "Dyn1", "12.47 kV 3ph", "4160Y/2400"),
        ("D-D", "Dd0", "12.47 kV 3ph", "4160 3ph"),
    ],
)
def test_balanced_step_down(connection: str, group: str, high: str, low: str) -> None:
    upper, lower = (run(FOUR_WIRE if "Y/" in side else THREE_WIRE) for side in (high, low))
    study = studied(SITE.format(high=high, low=low, group=group, upper=upper, lower=lower))
    found: dict[str, list[float]] = {}
    for quantity, _, magnitude, _ in CASES["step-down", connection, "balanced"]:
        found.setdefault(quantity, []).append(magnitude)
    assert set(found) == {"V2", "V3", "V4", "I12", "I34"}
    for quantity, magnitudes in found.items():
        mean = sum(magnitudes) / 3
        if quantity in FEEDERS:
            currents = study.flow.currents(FEEDERS[quantity])
            assert currents is not None
            mine = abs(currents["A"])
        else:
            grounded = "Y/" in (high if quantity == "V2" else low)
            between = ("A", "N") if grounded else ("A", "B")
            mine = next(p.volts for p in study.flow.volts(f"N{quantity[1]}") if p.between == between)
        assert mine == pytest.approx(mean, rel=PART), quantity
