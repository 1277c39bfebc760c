"""What the product makes of a transformer (windings found by phasors of its own, `place_transformer`) beside the same
connection put together from its definition (`transformer_connections`): the same volts under unequal loads, the same
fault currents, whatever the connection.

The definitions are those of IEC 60076-1 (vector groups) and, for banks and autotransformers, of the connection
diagrams of utility practice (no single source); ngspice solves them alike (`test_against_ngspice`).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import sqrt

import pytest
from transformer_connections import (
    Rating,
    autotransformer,
    buck_boost,
    centre_tapped,
    grounding_zigzag,
    high_leg_delta,
    open_delta,
    single_phase,
    three_phase,
)

from wyeline_grammar.notation import parse_voltage
from wyeline_linter.circuit import EARTH, Bus, Network, Solved, solve_flow, study_faults
from wyeline_linter.studies.place_transformers import place_transformer
from wyeline_linter.studies.transformer_impedance import TransformerData
from wyeline_linter.systems import source_system
from wyeline_linter.windings import Transformed, secondary_system

S_VA, Z_PU, TAP = 75e3, 0.012 + 0.035j, 1.025
Z0_PU = 0.8 * Z_PU
ByHand = Callable[[Network, Bus, Bus], None]


@dataclass(frozen=True)
class Case:
    """A transformer as a model says it, and by hand from the fed bus to the made one."""

    supply: str
    primary: str
    secondary: str
    connection: str | None
    by_hand: ByHand
    legs: tuple[str, ...] | None = None
    z0_pu: complex | None = None


def rated(units: int) -> Rating:
    return Rating(S_VA / units, Z_PU, tap=TAP)


def group(name: str, z0_pu: complex | None = None) -> Case:
    star = "d" not in name[1:]
    primary_star = name.startswith("YN")

    def by_hand(net: Network, fed: Bus, made: Bus) -> None:
        neutrals = fed["N"] if primary_star else None, made["N"] if star else None
        rating = Rating(S_VA, Z_PU, TAP, z0_pu)
        three_phase(net, "T", fed.pick("ABC"), neutrals[0], made.pick("ABC"), neutrals[1], 480, 208, name, rating)

    primary, secondary = "480Y/277" if primary_star else "480 3ph", "208Y/120" if star else "208 3ph"
    return Case("480Y/277", primary, secondary, name, by_hand, z0_pu=z0_pu)


def on_two_legs(net: Network, fed: Bus, made: Bus) -> None:
    single_phase(net, "T", fed.pair("BC"), made.pair("AB"), 480, 240, rated(1))


def split(net: Network, fed: Bus, made: Bus) -> None:
    centre_tapped(net, "T", fed.pair("AC"), made.pick("AB"), made["N"], 480, 120, rated(1))


def two_units(net: Network, fed: Bus, made: Bus) -> None:
    high, low = [fed.pair(pair) for pair in ("CA", "AB")], [made.pair(pair) for pair in ("CA", "AB")]
    open_delta(net, "T", high, low, 480, 240, (rated(2), rated(2)))


def high_leg(net: Network, fed: Bus, made: Bus) -> None:
    # The lighting unit is the one across C and A, so that B is the high leg (NEC 408.3(E)).
    pairs = [fed.pair(pair) for pair in ("AC", "BA", "CB")]
    high_leg_delta(net, "T", pairs, made.pick("ABC"), made["N"], 480, 240, (rated(3),) * 3)


def auto(net: Network, fed: Bus, made: Bus) -> None:
    net.link("common", fed["N"], made["N"])
    autotransformer(*(net, "T", fed.pick("ABC"), made.pick("ABC"), made["N"], 480 / sqrt(3), 415 / sqrt(3)), rated(1))


def booster(net: Network, fed: Bus, made: Bus) -> None:
    net.link("through", fed["B"], made["B"])
    for leg in "AC":
        buck_boost(net, f"T {leg}", fed.pair((leg, "B")), made[leg], 480, 24, rated(2))


def made_neutral(net: Network, fed: Bus, made: Bus) -> None:
    for leg in "ABC":
        net.link(leg, fed[leg], made[leg])
    grounding_zigzag(net, "Z", made.pick("ABC"), made["N"], Z_PU * 480**2 / S_VA)


GROUPS = (
    *("Dyn1", "Dyn5", "Dyn7", "Dyn11", "YNyn0", "YNyn2", "YNyn6", "Yyn6", "YNd1", "YNd11", "Yd5", "Yd7"),
    *("Dd0", "Dd2", "Dd4", "Dd6", "Dd10", "Dzn0", "Dzn6", "Yzn1", "Yzn5", "Yzn11"),
)
CASES: dict[str, Case] = {
    **{name: group(name) for name in GROUPS},
    # Another zero-sequence impedance, as of a three-limb core, shows in faults to neutral and to earth alone.
    **{f"{name}, z0 of its own": group(name, Z0_PU) for name in ("Dyn1", "Dyn5", "Dyn7", "Dyn11", "YNyn0", "YNyn6")},
    "single-phase": Case("480Y/277", "480 1ph", "240 1ph", None, on_two_legs, ("B", "C")),
    "centre-tapped": Case("480Y/277", "480 1ph", "120/240", None, split, ("A", "C")),
    "open delta": Case("480Y/277", "480 3ph", "240 3ph", "open-delta", two_units),
    "high leg": Case("480Y/277", "480 3ph", "240/120 3ph", None, high_leg),
    "autotransformer": Case("480Y/277", "480Y/277", "415Y/240", "auto", auto),
    "buck-boost": Case("480Y/277", "480 3ph", "504 3ph", "buck-boost", booster),
    "grounding zigzag": Case("480 3ph", "480 3ph", "480Y/277", "zigzag", made_neutral),
}


def site(case: Case, winding: Transformed, *, product: bool) -> tuple[Network, Bus]:
    net = Network()
    fed = net.bus("fed", "ABCN")
    neutral = None if case.connection == "zigzag" else fed["N"]
    net.three_phase_source("S", fed.pick("ABC"), neutral, 480 / sqrt(3), 0.01 + 0.05j, None, 0.02 + 0.04j)
    if neutral is not None:
        net.link("source bond", neutral, EARTH)
    made = net.bus("made", winding.system.conductors)
    if product:
        tap = 1.0 if case.connection == "zigzag" else TAP  # its halves are alike
        data = TransformerData(S_VA, Z_PU, case.z0_pu, tap, 0.0, 1.0, (), ())
        place_transformer(net, "T", fed, made, winding, data)
    else:
        case.by_hand(net, fed, made)
    if winding.separately_derived or neutral is None:
        net.link("bond", made["N"] if "N" in made.conductors else made["A"], EARTH)
    return net, made


@pytest.mark.parametrize("name", CASES)
def test_volts_and_fault_currents(name: str) -> None:
    case = CASES[name]
    winding = secondary_system(
        source_system(parse_voltage(case.supply), frequency_hz=60.0),
        parse_voltage(case.primary),
        parse_voltage(case.secondary),
        case.connection,
        practice="us",
        primary_legs=case.legs,
    )
    assert isinstance(winding, Transformed), winding
    found = []
    for product in (True, False):
        net, made = site(case, winding, product=product)
        names = made.conductors
        pairs = [(a, b) for k, a in enumerate(names) for b in names[k + 1 :]]
        faults = study_faults(net)
        tied = [*pairs, *(pair for leg in winding.system.legs[1:] if (pair := (leg, "E"))), winding.system.legs]
        currents = [faults.bus(made, each).current_a for each in tied]
        star_floats = name.startswith("Yy")  # loads to neutral would push it off centre until nothing is left
        for k, (a, b) in enumerate(pairs):
            if not (star_floats and b == "N"):
                net.load(
                    f"load {k}", made.pair((a, b)), (3 + 2 * k + 1j) * 1e3, winding.system.distance(a, b), (0, 0, 1)
                )
        flow = solve_flow(net)
        assert isinstance(flow, Solved)
        found.append(([flow.voltage(made, a, b) for a, b in pairs], currents))
    (volts, amperes), (volts_by_hand, amperes_by_hand) = found
    assert None not in volts and None not in volts_by_hand
    assert volts == pytest.approx(volts_by_hand, rel=1e-5)
    assert amperes == pytest.approx(amperes_by_hand, rel=1e-5)
    assert max(a for a in amperes if a is not None) > 500
