"""IEC 60909 factors on the low-voltage example of IEC TR 60909-4 (400 V, two transformers in parallel).

Inputs, impedances and the three-phase results are from memory of the technical report; recomputing them reproduces
every remembered figure.
"""

from __future__ import annotations

from math import sqrt

import pytest
from hand_formulas import supply_z
from transformer_connections import Rating, three_phase

from wyeline_linter.circuit import EARTH, Bus, Network, study_faults
from wyeline_linter.circuit.iec60909 import (
    c_max,
    c_min,
    generator_factor,
    peak_current,
    peak_factor,
    transformer_factor,
)
from wyeline_linter.circuit.nameplate import transformer_z_pu_from_loss

TRANSFORMERS = {
    "T1": (630e3, 6.5e3, 2.684e-3 + 10.054e-3j),
    "T2": (400e3, 4.6e3, 4.712e-3 + 15.698e-3j),
}


def corrected(name: str) -> complex:
    s_va, loss_w, _ = TRANSFORMERS[name]
    z = transformer_z_pu_from_loss(4, loss_w, s_va)
    return z * transformer_factor(z.imag, c_max(400))


@pytest.mark.parametrize("name", TRANSFORMERS)
def test_corrected_transformer_impedance(name: str) -> None:
    s_va, _, printed = TRANSFORMERS[name]
    assert corrected(name) * 410**2 / s_va == pytest.approx(printed, rel=1e-4)


def test_three_phase_currents() -> None:
    net = Network()
    grid = net.bus("Q", "ABC")
    bus: dict[str, Bus] = {name: net.bus(name, "ABCN") for name in ("T1", "T2", "F2", "M", "F3")}
    z_grid = supply_z(20e3, 10e3, 0.1, c_max(20e3))
    assert z_grid * (0.41 / 20) ** 2 == pytest.approx(0.0531e-3 + 0.5311e-3j, rel=1e-3)
    net.three_phase_source("Q", grid.nodes, EARTH, 20e3 / sqrt(3), z_grid)
    for name, (s_va, _, _) in TRANSFORMERS.items():
        low = bus[name]
        rating = Rating(s_va, corrected(name))
        three_phase(net, name, grid.nodes, None, low.pick("ABC"), low["N"], 20e3, 410, "Dyn5", rating)
        net.link(f"{name} bond", low["N"], EARTH)
    for start, end, length_m, parallel, z_km in (
        ("T1", "F2", 10, 2, 0.077 + 0.079j),
        ("T2", "F2", 4, 2, 0.208 + 0.068j),
        ("F2", "M", 20, 1, 0.271 + 0.087j),
        ("M", "F3", 50, 1, 0.3704 + 0.297j),
    ):
        z = z_km * length_m / parallel / 1e3
        net.line(f"{start}-{end}", bus[start].nodes, bus[end].nodes, [z] * 4)
    # Equivalent voltage source c U_n / sqrt3 at the fault; the network was built at the no-load voltage of 410 V.
    faults = study_faults(net, c_factor=c_max(400) * 400 / 410)
    for name, printed_ka in (("T1", 34.62), ("F2", 34.12), ("F3", 6.95)):
        assert faults.bus(bus[name], "ABC").current_a == pytest.approx(printed_ka * 1e3, rel=1.5e-3), name


def test_factors() -> None:
    # IEC 60909-0:2016 Table 1 and clauses 6 to 9, from memory.
    assert (c_max(400), c_max(400, 0.10), c_max(20e3)) == (1.05, 1.10, 1.10)
    assert (c_min(400), c_min(400, 0.10), c_min(20e3)) == (0.95, 0.90, 1.00)
    assert peak_factor(0) == pytest.approx(2.0)
    assert peak_factor(10) == pytest.approx(1.02, abs=1e-4)
    assert peak_current(10e3, 0.1) == pytest.approx(sqrt(2) * 10e3 * 1.746, rel=1e-3)
    assert peak_current(10e3, 0, meshed=True) == pytest.approx(1.8 * sqrt(2) * 10e3)
    assert generator_factor(400, 400, 1.05, 0.15, 0.6) == pytest.approx(1.05 / 1.09)
