"""Banks and special transformers: open delta, high leg, autotransformers, buck-boost, grounding zigzag, Scott."""

from __future__ import annotations

from collections.abc import Sequence
from math import sqrt

from .elements import Pair
from .nameplate import LEAST_MAGNETISING_PU
from .network import Network
from .transformers import Rating, centre_tapped, single_phase


def open_delta(
    net: Network,
    name: str,
    high_pairs: Sequence[Pair],
    low_pairs: Sequence[Pair],
    v_high: float,
    v_low: float,
    ratings: Sequence[Rating],
) -> None:
    """Two single-phase units, each across one pair of the high side and one pair of the low side.

    Open delta: high pairs such as (A, B) and (B, C), low pairs (a, b) and (b, c), `v_high` line to line.  Open wye/open
    delta: high pairs (A, N) and (B, N), `v_high` line to neutral.
    """
    for k in range(2):
        single_phase(net, f"{name}.{k + 1}", high_pairs[k], low_pairs[k], v_high, v_low, ratings[k])


def high_leg_delta(
    net: Network,
    name: str,
    high_pairs: Sequence[Pair],
    low: Sequence[int],
    neutral: int,
    v_high: float,
    v_low: float,
    ratings: Sequence[Rating],
) -> None:
    """Closed or open delta with one centre-tapped unit; `low` is (lighting leg 1, high leg, lighting leg 2).

    `high_pairs[0]` feeds the lighting unit across low[0] - low[2]; [1] the unit across low[1] - low[0]; a third, if
    present, the one across low[2] - low[1].  `high_pairs` must be the matching pairs of the high side, for a delta
    (A, C), (B, A), (C, B).
    """
    if len(high_pairs) not in (2, 3) or len(ratings) != len(high_pairs):
        raise ValueError(f"high-leg delta {name}: two or three units, each with its rating, are needed")
    centre_tapped(net, f"{name}.1", high_pairs[0], (low[0], low[2]), neutral, v_high, v_low / 2, ratings[0])
    for k, pair in enumerate(((low[1], low[0]), (low[2], low[1]))[: len(high_pairs) - 1], start=1):
        single_phase(net, f"{name}.{k + 1}", high_pairs[k], pair, v_high, v_low, ratings[k])


def autotransformer(
    net: Network,
    name: str,
    high: Sequence[int],
    low: Sequence[int],
    star: int,
    v_high: float,
    v_low: float,
    rating: Rating,
) -> None:
    """Wye autotransformer of one to three legs, a core each: series winding high-low, common winding low-star.

    Voltages are leg to star.  `rating.s_va` is the through rating of all legs; the impedance is that of the nameplate
    on the low side at through rating, placed in the series winding.
    """
    s_core = rating.s_va / len(high)
    turns = (v_high - v_low) / v_low
    # A low-side short circuit at through rating sees (1/co-ratio)^2 of the series-winding impedance.
    z_series = rating.z_pu * v_high**2 / s_core
    for k, (top, bottom) in enumerate(zip(high, low, strict=True)):
        net.core(
            f"{name}.{k + 1}",
            (top, bottom),
            ((bottom, star),),
            (turns * rating.tap,),
            z_series,
            (0j,),
            rating.magnetising_s(v_high, s_core),
        )


def buck_boost(
    net: Network,
    name: str,
    supply: Pair,
    served: int,
    v_primary: float,
    v_secondary: float,
    rating: Rating,
    *,
    boost: bool = True,
) -> None:
    """One insulating unit wired to raise (or lower) a voltage.

    The primary lies across `supply`; the low-voltage winding is in series between supply[0] and `served`.  `rating` is
    the nameplate of the insulating unit with `v_primary` and `v_secondary`.
    """
    pair = (served, supply[0]) if boost else (supply[0], served)
    single_phase(net, name, supply, pair, v_primary, v_secondary, rating)


def grounding_zigzag(net: Network, name: str, legs: Sequence[int], neutral: int, z0_ohm: complex) -> None:
    """Zigzag grounding bank that gives a three-wire system a neutral; `z0_ohm` per phase.

    Each leg runs through a half winding of its own core and the reversed half of the next; balanced voltages meet
    practically an open circuit, equal currents in all legs only the leakage impedance.
    """
    middle = [net.inner_node(legs[0]) for _ in range(3)]
    half = z0_ohm / 2
    magnetising = LEAST_MAGNETISING_PU / abs(z0_ohm)
    for k in range(3):
        other = (neutral, middle[(k + 2) % 3])
        net.core(f"{name}.{k + 1}", (legs[k], middle[k]), (other,), (1.0,), half, (half,), magnetising)


def scott(
    net: Network,
    name: str,
    legs: Sequence[int],
    main: Pair,
    teaser: Pair,
    v_high: float,
    v_low: float,
    ratings: Sequence[Rating],
) -> None:
    """Scott connection, three-phase to two-phase: main unit on legs[1] - legs[2], teaser from legs[0] to its middle.

    `v_high` line to line; the teaser uses 86.6 % of the turns.  Impedances are those of each unit's secondary.
    """
    middle = net.inner_node(legs[0])
    ratio = v_high / v_low
    net.core(
        f"{name}.main",
        main,
        ((legs[1], middle), (middle, legs[2])),
        (2 / ratio, 2 / ratio),
        ratings[0].z_pu * v_low**2 / ratings[0].s_va,
        (0j, 0j),
    )
    net.core(
        f"{name}.teaser",
        (legs[0], middle),
        (teaser,),
        (ratio * sqrt(3) / 2 * ratings[1].tap,),
        0j,
        (ratings[1].z_pu * v_low**2 / ratings[1].s_va,),
    )
