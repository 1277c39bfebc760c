"""Neutral currents, and currents through transformers, against handbook figures and closed forms.

Sources stand beside each check. "Closed form" is derived from symmetry by hand, independent of the program's solver.
"""

from __future__ import annotations

import cmath
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from load_models import amps, viewed

from wyeline_grammar.notation import parse_voltage
from wyeline_linter.loads.through_cores import Through, through
from wyeline_linter.loads.winding_loads import winding_loads
from wyeline_linter.systems import System, source_system
from wyeline_linter.windings import Transformed, secondary_system

WYE = "utility U 208Y/120  fault 10 kA, x/r 4\nfeeder U -> P  225 A 3p\npanel P 208Y/120  bus 225 A\n"
SPLIT = "utility U 120/240  fault 10 kA, x/r 4\nfeeder U -> P  225 A 2p\npanel P 120/240  bus 225 A\n"


def circuits(*va: tuple[str, float]) -> str:
    return "".join(f"  {where}  60 A 1p  {value:.6f} VA heating\n" for where, value in va)


@pytest.mark.parametrize(
    ("legs", "neutral"),
    [
        # Read at https://forums.mikeholt.com/threads/multiwire-circuit.44780/
        ((5.0, 8.0, 0.0), 7.0),
        # Recomputed: sqrt(A2 + B2 + C2 - AB - BC - CA), the handbook formula.
        ((10.0, 15.0, 20.0), 8.66),
        # Recomputed; a circulating copy with a sign error gives 15.1 A.
        ((10.0, 8.0, 6.0), 3.46),
    ],
)
def test_wye_neutral(legs: tuple[float, float, float], neutral: float) -> None:
    volts = 208 / math.sqrt(3)
    view = viewed(WYE + circuits(*((p, i * volts) for p, i in zip("135", legs, strict=True))))
    assert amps(view, "P")[3] == pytest.approx(neutral, abs=0.005)


def test_split_phase_and_same_leg_neutral() -> None:
    """5 and 8 A: 3 A in the neutral; two circuits on one leg 10 + 10: 20 A (common practice, no source)."""
    assert amps(viewed(SPLIT + circuits(("1", 600.0), ("3", 960.0))), "P")[3] == pytest.approx(3.0)
    assert amps(viewed(SPLIT + circuits(("1", 1200.0), ("2", 1200.0))), "P")[3] == pytest.approx(20.0)


def test_two_legs_of_a_wye_give_their_own_current_in_the_neutral() -> None:
    """Two hot wires and the neutral of 208Y/120, 10 A each: 10 A (common practice; NEC 220.61(C))."""
    volts = 208 / math.sqrt(3)
    text = "utility U 208Y/120  fault 10 kA, x/r 4\nfeeder U[BC] -> P  60 A 2p\npanel P 208Y/120 1ph  bus 100 A\n"
    view = viewed(text + circuits(("1", 10 * volts), ("3", 10 * volts)))
    assert amps(view, "P") == pytest.approx((0.0, 10.0, 10.0, 10.0))


def transformer(first: str, second: str, connection: str | None, practice: str, **more: object) -> Transformed:
    up = source_system(parse_voltage(str(more.get("up", first))), frequency_hz=60.0)
    made = secondary_system(
        up,
        parse_voltage(first),
        parse_voltage(second),
        connection,
        practice=practice,  # type: ignore[arg-type]
        primary_legs=more.get("legs"),  # type: ignore[arg-type]
    )
    assert isinstance(made, Transformed)
    return made


def map_of(made: Transformed) -> Through:
    return through(made.cores, made.joined, made.system.conductors)


def test_delta_wye_reflects_differences_of_leg_currents() -> None:
    """Closed form: lag 30 degrees I_A = k(i_a - i_b), lead 30 degrees I_A = k(i_a - i_c); IEC 60076-1 clock numbers."""
    a, b, c = 30 + 4j, -11 - 25j, -8 + 17j
    us = map_of(transformer("480 3ph", "208Y/120", None, "us"))
    k = 208 / math.sqrt(3) / 480
    assert us.primary_amps((a, b, c, -a - b - c))[:3] == pytest.approx((k * (a - b), k * (b - c), k * (c - a)))
    iec = map_of(transformer("10 kV 3ph", "400Y/230", "Dyn11", "iec"))
    k = 400 / math.sqrt(3) / 10e3
    assert iec.primary_amps((a, b, c, -a - b - c))[:3] == pytest.approx((k * (a - c), k * (b - a), k * (c - b)))


def test_one_load_to_neutral_behind_a_delta_takes_two_primary_lines() -> None:
    """Closed form: a single i gives k i in two lines and nothing in the third."""
    text = "utility U 480 3ph  fault 20 kA, x/r 6\nfeeder U -> T  60 A 3p\n"
    text += 'project "X"\n  basis us-2023\ntransformer T 480 3ph -> 208Y/120  30 kVA\n'
    text += "feeder T -> P  90 A 3p\npanel P 208Y/120  bus 100 A\n  1  60 A 1p  2.4 kVA heating\n"
    view = viewed(text)
    i = 2400 / (208 / math.sqrt(3))
    k = 208 / math.sqrt(3) / 480
    assert sorted(amps(view, "U")[:3]) == pytest.approx([0.0, k * i, k * i], abs=1e-9)


def test_centre_tap_halves() -> None:
    """Closed form: I_p = (V_half / V_p)(I_A - I_B), I_B counted out of B; each half against half of the rating."""
    text = (
        "utility U 480 3ph  fault 20 kA, x/r 6\nfeeder U[AB] -> T  60 A 2p\ntransformer T 480 1ph -> 120/240  25 kVA\n"
    )
    text += "feeder T -> P  100 A 2p\npanel P 120/240  bus 225 A\n" + circuits(("1", 9600.0), ("3", 2400.0))
    view = viewed(text)
    assert amps(view, "P") == pytest.approx((80.0, 20.0, 0.0, 60.0))
    assert amps(view, "U") == pytest.approx((25.0, 25.0, 0.0, 0.0))
    halves = winding_loads(view.loads, "T")
    assert [round(w.amps, 6) for w in halves] == [80.0, 20.0]
    assert halves[0].limit_a == pytest.approx(12500 / 120)


@pytest.mark.parametrize("pf1", [1.0, 0.8])
@pytest.mark.parametrize("pf3", [1.0, 0.85])
def test_open_delta_units(pf1: float, pf3: float) -> None:
    """Closed form (handbook): lighting unit sqrt(S1² + S3²/3 + 2/sqrt(3) S1 S3 cos(phi3 - phi1 ± 30 degrees)), power
    unit S3 / sqrt(3); the sign depends on which unit leads."""
    s1, s3 = 9e3, 12e3
    text = "utility U 480 3ph  fault 20 kA, x/r 6\nfeeder U -> T  60 A 3p\n"
    text += "transformer T 480 3ph -> 240/120 3ph  45 kVA, connection open-delta\nfeeder T -> P  90 A 3p\n"
    text += "panel P 240/120 3ph  bus 225 A\n"
    text += f"  1,5  60 A 2p  {s1:g} VA process pf {pf1}\n  2,4,6  60 A 3p  {s3:g} VA process pf {pf3}\n"
    view = viewed(text)
    half, other_half, power = winding_loads(view.loads, "T")
    assert half.amps == pytest.approx(other_half.amps)
    assert power.amps * 240 == pytest.approx(s3 / math.sqrt(3))
    turn = math.acos(pf3) - math.acos(pf1)
    closed = [
        math.sqrt(s1**2 + s3**2 / 3 + 2 / math.sqrt(3) * s1 * s3 * math.cos(turn + sign * math.pi / 6))
        for sign in (1, -1)
    ]
    assert min(abs(half.amps * 240 - c) for c in closed) < 1e-6 * s1


CONNECTIONS = [
    ("480 3ph", "208Y/120", None, "us", {}),
    ("400 3ph", "400Y/230", "Dyn11", "iec", {}),
    ("480 3ph", "240 3ph", "Dd0", "iec", {}),
    ("480 3ph", "240/120 3ph", None, "us", {}),
    ("480 3ph", "240/120 3ph", "open-delta", "us", {}),
    ("12.47Y/7.2 kV", "240/120 3ph", "open-wye", "us", {"legs": ("A", "B", "N")}),
    ("480Y/277", "208Y/120", "YNyn0", "iec", {}),
    ("400 3ph", "400Y/230", "Dzn0", "iec", {}),
    ("480 1ph", "120/240", None, "us", {"up": "480 3ph", "legs": ("B", "C")}),
    ("277 1ph", "120/240", None, "us", {"up": "480Y/277", "legs": ("C", "N")}),
    ("480Y/277", "240Y/139", "auto", "us", {}),
    ("208Y/120", "240 3ph", "buck-boost", "us", {}),
]


def power(system: System, currents: tuple[complex, ...]) -> complex:
    index = {"A": 0, "B": 1, "C": 2, "N": 3}
    return sum((p * currents[index[c]].conjugate() for c, p in zip(system.conductors, system.phasors, strict=True)), 0j)


@pytest.mark.parametrize(("first", "second", "connection", "practice", "more"), CONNECTIONS)
@settings(max_examples=15, deadline=None)
@given(
    draw=st.lists(st.complex_numbers(max_magnitude=100, allow_nan=False, allow_infinity=False), min_size=4, max_size=4)
)
def test_ideal_transformers_pass_on_complex_power(
    first: str, second: str, connection: str | None, practice: str, more: dict[str, object], draw: list[complex]
) -> None:
    """Conservation of energy: an ideal transformer takes exactly the complex power that it gives, whatever the load."""
    made = transformer(first, second, connection, practice, **more)
    primary = source_system(parse_voltage(str(more.get("up", first))), frequency_hz=60.0)
    index = {"A": 0, "B": 1, "C": 2, "N": 3}
    currents = [0j] * 4
    names = made.system.conductors
    for value, name in zip(draw, names[:-1], strict=False):
        currents[index[name]] = value
    currents[index[names[-1]]] = -sum(currents, 0j)
    up = map_of(made).primary_amps(currents)
    assert abs(sum(up)) < 1e-6
    given_va, taken_va = power(made.system, tuple(currents)), power(primary, up)
    assert cmath.isclose(given_va, taken_va, rel_tol=2e-3, abs_tol=1e-3)


def test_kersting_centre_tapped_loads_at_nominal_voltage() -> None:
    """50 kVA 7200-120/240 V: lines 189.6 and 233.2 A, neutral 44.8 A under load (Kersting, Distribution System Modeling
    and Analysis; inputs and results from memory). At nominal voltage constant power draws less by 117.8/120."""
    text = (
        "utility U 7.2 kV 1ph  fault 4 kA, x/r 4\nfeeder U -> T  10 A 2p\ntransformer T 7.2 kV 1ph -> 120/240  50 kVA\n"
    )
    text += "feeder T -> P  225 A 2p\npanel P 120/240  bus 225 A\n"
    text += "  1  125 A 1p  10 kVA process pf 0.95\n  3  150 A 1p  15 kVA process pf 0.90\n"
    text += "  5,7  125 A 2p  25 kVA process pf 0.85\n"
    one, two, _, neutral = amps(viewed(text), "P")
    assert one == pytest.approx(189.6 * 117.85 / 120, rel=3e-3)
    assert two == pytest.approx(233.2 * 117.75 / 120, rel=3e-3)
    assert neutral == pytest.approx(44.8 * 117.8 / 120, rel=2e-2)
