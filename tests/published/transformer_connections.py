"""Transformer connections as sets of ideal cores with series impedances, for networks that tests build by hand.

Written apart from what the product does with a model's transformers (`windings.py`, `place_transformers.py`), and so a
reference for it.  Ratings are nameplate: kVA as VA, voltages in V, impedance per unit on the nameplate.  Three-phase
connections are found from their vector group by ideal phasors, so that no table of connections can be wrong.
"""

from __future__ import annotations

import cmath
from collections.abc import Sequence
from dataclasses import dataclass
from math import pi, sqrt

from wyeline_linter.circuit import Network
from wyeline_linter.circuit.elements import Pair
from wyeline_linter.circuit.nameplate import LEAST_MAGNETISING_PU
from wyeline_linter.circuit.sequences import A1, A2

Pairs = tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class Rating:
    """Nameplate of a transformer: S in VA, series impedance per unit, ratio multiplier of the tap in use.

    `tap` above 1 adds primary turns (lowers the secondary voltage).  `z0_pu` is the zero-sequence impedance where it
    differs from `z_pu` (three-limb cores); `magnetising_pu` the shunt admittance (no-load loss - j magnetising).
    """

    s_va: float
    z_pu: complex
    tap: float = 1.0
    z0_pu: complex | None = None
    magnetising_pu: complex = 0j

    def magnetising_s(self, v_winding: float, s_core_va: float) -> complex:
        """Magnetising admittance of one core across a winding of `v_winding`, in siemens."""
        return (self.magnetising_pu or LEAST_MAGNETISING_PU) * s_core_va / v_winding**2


@dataclass(frozen=True, slots=True)
class WindingPlan:
    """Where the windings of the three cores of a vector group go, by leg position (0, 1, 2); -1 is the neutral."""

    high: Pairs
    low: Pairs
    """Two-winding groups: terminals of the low winding of each core."""
    reverse: int
    """+1, or -1 when the low windings are reversed."""
    zigzag_step: int = 0
    """For zigzag: leg k is the half of core k + start in series with the reversed half of core k + start + step."""
    start: int = 0


def single_phase(
    net: Network, name: str, primary: Pair, secondary: Pair, v_primary: float, v_secondary: float, rating: Rating
) -> None:
    """Two-winding single-phase transformer; the impedance is put on the secondary."""
    net.core(
        name,
        primary,
        (secondary,),
        (v_primary / v_secondary * rating.tap,),
        0j,
        (rating.z_pu * v_secondary**2 / rating.s_va,),
        rating.magnetising_s(v_primary, rating.s_va),
    )


def centre_tapped(
    net: Network,
    name: str,
    primary: Pair,
    legs: Sequence[int],
    neutral: int,
    v_primary: float,
    v_half: float,
    rating: Rating,
    measured: tuple[complex, complex, complex] | None = None,
) -> None:
    """Single-phase transformer with a centre-tapped secondary, legs[0] - neutral - legs[1].

    With R + jX per unit of the whole winding the primary carries 0.5 R + j0.8 X on its own base and each half
    R + j0.4 X on the base of v_half and full S (interlaced secondaries: W. H. Kersting, Distribution System Modeling
    and Analysis).  That gives R + jX leg to leg and 1.5 R + j1.2 X leg to neutral.  `measured` (primary, half 1,
    half 2; per unit on the same bases) replaces the split.
    """
    if measured is None:
        r, x = rating.z_pu.real, rating.z_pu.imag
        measured = (complex(0.5 * r, 0.8 * x), complex(r, 0.4 * x), complex(r, 0.4 * x))
    half_base = v_half**2 / rating.s_va
    # The tap adds primary turns; the primary impedance stays that of the nameplate.
    ratio = v_primary / v_half * rating.tap
    net.core(
        name,
        primary,
        ((legs[0], neutral), (neutral, legs[1])),
        (ratio, ratio),
        measured[0] * v_primary**2 / rating.s_va,
        (measured[1] * half_base, measured[2] * half_base),
        rating.magnetising_s(v_primary, rating.s_va),
    )


def three_phase(
    net: Network,
    name: str,
    high: Sequence[int],
    high_neutral: int | None,
    low: Sequence[int],
    low_neutral: int | None,
    v_high: float,
    v_low: float,
    group: str,
    rating: Rating,
) -> None:
    """Three-phase transformer or bank of a vector group such as Dyn1, Dyn11, YNyn0, Yd11, Dd0, Dzn0, Yzn11.

    The first connection is that of `high`, whichever side feeds.  Voltages are line to line.  A star point that is not
    brought out (`None`) floats inside; the zero-sequence impedance sits in the low-side neutral lead.  ValueError for
    a group that does not exist.
    """
    plan = winding_plan(group)
    high_kind, low_kind, _ = read_group(group)
    star_high = _star(net, high_kind, high, high_neutral)
    star_low = _star(net, low_kind, low, low_neutral)
    z0 = rating.z0_pu
    if star_low is not None and low_neutral is not None and z0 is not None and z0 != rating.z_pu:
        star_low = net.inner_node(low[0])
        lead = (z0 - rating.z_pu) / 3 * v_low**2 / rating.s_va
        net.impedance(f"{name} zero-sequence lead", (star_low, low_neutral), lead)
    s_core = rating.s_va / 3
    w_high = v_high if high_kind == "d" else v_high / sqrt(3)
    magnetising = rating.magnetising_s(w_high, s_core)

    def at(pair: tuple[int, int], legs: Sequence[int], star: int | None) -> Pair:
        first, second = (legs[k] if k >= 0 else star for k in pair)
        assert first is not None
        assert second is not None
        return first, second

    if low_kind != "z":
        w_low = v_low if low_kind == "d" else v_low / sqrt(3)
        z = rating.z_pu * w_low**2 / s_core
        for k in range(3):
            net.core(
                f"{name}.{k + 1}",
                at(plan.high[k], high, star_high),
                (at(plan.low[k], low, star_low),),
                (plan.reverse * w_high / w_low * rating.tap,),
                0j,
                (z,),
                magnetising,
            )
        return
    assert star_low is not None
    w_half = v_low / 3
    z_half = rating.z_pu * v_low**2 / rating.s_va / 2
    middle = [net.inner_node(low[0]) for _ in range(3)]
    outer: dict[int, Pair] = {}
    inner: dict[int, Pair] = {}
    for leg in range(3):
        outer[(leg + plan.start) % 3] = (low[leg], middle[leg])
        # The half next to the star point is reversed: its start is at the star.
        inner[(leg + plan.start + plan.zigzag_step) % 3] = (star_low, middle[leg])
    for k in range(3):
        ratio = plan.reverse * w_high / w_half * rating.tap
        net.core(
            f"{name}.{k + 1}",
            at(plan.high[k], high, star_high),
            (outer[k], inner[k]),
            (ratio, ratio),
            0j,
            (z_half, z_half),
            magnetising,
        )


def _star(net: Network, kind: str, legs: Sequence[int], neutral: int | None) -> int | None:
    if kind == "d":
        return None
    return net.inner_node(legs[0]) if neutral is None else neutral


def read_group(group: str) -> tuple[str, str, int]:
    """Connection of the high side, of the low side (d, y or z) and the clock number.  ValueError if it is none."""
    text = group.replace(" ", "")
    kinds = text.rstrip("0123456789")
    clock = text[len(kinds) :]
    letters = kinds.lower().replace("n", "")
    if len(letters) != 2 or letters[0] not in "dy" or letters[1] not in "dyz" or not clock or int(clock) > 12:
        raise ValueError(f"{group} is not a vector group such as Dyn11 or YNyn0")
    return letters[0], letters[1], int(clock) % 12


def winding_plan(group: str) -> WindingPlan:
    """The connection of a vector group: the first arrangement whose ideal phasors show its clock number.

    Arrangements tried first keep leg k on core k with straight polarity.  ValueError if none fits.
    """
    high_kind, low_kind, clock = read_group(group)
    wanted = cmath.exp(-1j * pi / 6 * clock)
    rings: tuple[Pairs, ...] = (((0, 1), (1, 2), (2, 0)), ((0, 2), (1, 0), (2, 1)))
    star: Pairs = ((0, -1), (1, -1), (2, -1))
    legs = (1 + 0j, A2, A1)
    for start in range(3):
        for reverse in (1, -1):
            for high in rings if high_kind == "d" else (star,):
                core = [legs[i] - (legs[j] if j >= 0 else 0) for i, j in high]
                choices: list[tuple[Pairs, int]]
                if low_kind == "z":
                    choices = [(star, step) for step in (1, 2)]
                elif low_kind == "d":
                    choices = [(_turned(ring, start), 0) for ring in rings]
                else:
                    choices = [(_turned(star, start), 0)]
                for low, step in choices:
                    if low_kind == "z":
                        leg_a = core[start % 3] - core[(start + step) % 3]
                    elif low_kind == "d":
                        leg_a = _ring_potential(low, core)
                    else:
                        leg_a = next(e for e, (i, _) in zip(core, low, strict=True) if i == 0)
                    leg_a *= reverse
                    if abs(leg_a / abs(leg_a) - wanted) < 1e-9:
                        return WindingPlan(high, low, reverse, step, start)
    raise ValueError(f"no connection of windings gives the vector group {group}")


def _turned(pairs: Pairs, start: int) -> Pairs:
    """Move the leg that a core serves on by `start`; the neutral stays."""
    return tuple(((i + start) % 3, (j + start) % 3 if j >= 0 else j) for i, j in pairs)


def _ring_potential(low: Pairs, core: Sequence[complex]) -> complex:
    """Potential of leg 0 against the centroid of a closed ring of windings."""
    out = sum((e for e, (i, _) in zip(core, low, strict=True) if i == 0), 0j)
    into = sum((e for e, (_, j) in zip(core, low, strict=True) if j == 0), 0j)
    return (out - into) / 3


# Banks and special transformers


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
