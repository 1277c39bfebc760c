"""Transformers: the system each makes, its angle, its cores, and why windings do not fit."""

import cmath
import math
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar.notation import parse_voltage
from wyeline_linter.cores import PRIMARY_STAR, Core, Side, Terminal
from wyeline_linter.systems import Shape, System, earthing_from_words, source_system
from wyeline_linter.vector_groups import VectorGroup, all_groups, nearest_names, read_group
from wyeline_linter.verdicts import Cause, NoteKind, Refusal, Undecided
from wyeline_linter.windings import Transformed, WindingResult, secondary_system


def of(text: str, ground: str | None = None, **more: Any) -> System:
    voltage = parse_voltage(text)
    earthing = None if ground is None else earthing_from_words(ground, voltage)
    return source_system(voltage, frequency_hz=60.0, earthing=earthing, **more)


def wound(supply: str | System, first: str, second: str, connection: str | None = None, **more: Any) -> WindingResult:
    primary = of(supply) if isinstance(supply, str) else supply
    return secondary_system(primary, parse_voltage(first), parse_voltage(second), connection, **more)


def made(supply: str | System, first: str, second: str, connection: str | None = None, **more: Any) -> Transformed:
    result = wound(supply, first, second, connection, **more)
    assert isinstance(result, Transformed), result
    return result


def primary_pair(core: Core) -> tuple[str, str]:
    return core.primary.start.conductor, core.primary.end.conductor


def secondary_pair(core: Core) -> tuple[str, str]:
    """The outer ends of the secondary windings of a core, dotted end first."""
    return core.secondaries[0].start.conductor, core.secondaries[-1].end.conductor


def angle_deg(phasor: complex) -> float:
    return math.degrees(cmath.phase(phasor))


def turn(degrees: float) -> complex:
    return cmath.rect(1.0, math.radians(degrees))


def assert_one_flux_per_core(primary: System, result: Transformed) -> None:
    """Every winding of a core must see the same volts per turn, worked out from the potentials of both sides."""
    at: dict[Terminal, complex] = {}
    for side, system in ((Side.PRIMARY, primary), (Side.SECONDARY, result.system)):
        at |= {Terminal(side, c): p for c, p in zip(system.conductors, system.phasors, strict=True)}
    legs = [primary.potential(leg) for leg in primary.legs]
    at[PRIMARY_STAR] = sum(legs) / len(legs)
    for core in result.cores:
        for winding in (core.primary, *core.secondaries):
            if winding.start not in at or winding.end not in at:
                continue
            flux = (at[winding.start] - at[winding.end]) / winding.volts
            reference = (at[core.primary.start] - at[core.primary.end]) / core.primary.volts
            assert flux == pytest.approx(reference, abs=1e-4)
    for mine, theirs in result.joined:
        assert primary.potential(mine) == pytest.approx(result.system.potential(theirs), abs=1e-6)


# IEC 60076-1, clause 7 and annex: the clock number is the hour at which the low-voltage phasor stands when the
# high-voltage one stands at 12; each hour is 30° of lag. Checked against phasors written out here.


@pytest.mark.parametrize("group", all_groups(), ids=lambda group: group.name)
def test_every_vector_group_stands_at_its_hour(group: VectorGroup) -> None:
    name = group.name
    clock = int("".join(letter for letter in name if letter.isdigit()))
    second = "400 3ph" if "d" in name else "400Y/230"
    for rotation_of_source in (0.0, -17.0):
        supply = of("10 kV 3ph", angle_deg=rotation_of_source)
        result = made(supply, "10 kV 3ph", second, name)
        assert result.connection == name
        hour = -30.0 * clock + rotation_of_source
        for leg, place in (("A", 0), ("B", -120), ("C", 120)):
            assert result.system.potential(leg) == pytest.approx(400 / math.sqrt(3) * turn(hour + place), abs=1e-4)
        assert result.shift_deg is not None
        assert (result.shift_deg + 30 * clock) % 360 == pytest.approx(0, abs=1e-3)
        assert result.angle_unknown is None
        assert result.separately_derived
        if "z" not in name:
            exact = made(of("400 3ph"), "400 3ph", second, name)
            assert_one_flux_per_core(of("400 3ph"), exact)


def test_exactly_the_groups_that_can_be_wound_exist() -> None:
    for pair, odd in (("Yy", 0), ("Dd", 0), ("Dz", 0), ("Yd", 1), ("Dy", 1), ("Yz", 1)):
        for clock in range(13):
            assert (read_group(f"{pair}{clock}") is not None) == (clock < 12 and clock % 2 == odd)
    assert nearest_names("Dyn10") == ("Dyn9", "Dyn11")
    assert nearest_names("dyn11")[0] == "Dyn11"


def test_zigzag_halves_add_up() -> None:
    # A zigzag leg is two halves of V/3 line-to-line at 60°: sqrt(3) x 400/3 = 230.9 V (IEC 60076-1 definition of z).
    result = made("10 kV 3ph", "10 kV 3ph", "400Y/230", "Yzn11")
    assert [len(core.secondaries) for core in result.cores] == [2, 2, 2]
    assert {round(w.volts, 3) for core in result.cores for w in core.secondaries} == {133.333}
    assert abs(result.system.potential("A")) == pytest.approx(230.94, abs=0.01)


@pytest.mark.parametrize(
    ("name", "pairs"),
    # Dyn1 has its first winding across A–C, Dyn11 across A–B (IEC 60076-1 connection diagrams).
    [("Dyn1", [("A", "C"), ("B", "A"), ("C", "B")]), ("Dyn11", [("A", "B"), ("B", "C"), ("C", "A")])],
)
def test_cores_of_delta_wye(name: str, pairs: list[tuple[str, str]]) -> None:
    result = made("480Y/277", "480 3ph", "208Y/120", name, tap_pct=-2.5)
    assert [primary_pair(core) for core in result.cores] == pairs
    assert [secondary_pair(core) for core in result.cores] == [("A", "N"), ("B", "N"), ("C", "N")]
    core = result.cores[0]
    assert core.secondaries[0].volts / core.primary.volts == pytest.approx(208 / math.sqrt(3) / 480)
    assert core.tap_pct == -2.5
    # Taps belong to load flow: nominal voltages stay as written.
    assert result.system.nominal_v("A", "N") == 120


@pytest.mark.parametrize(
    ("supply", "first", "second", "practice", "shift"),
    [
        # IEEE C57.12.00: in delta-wye and wye-delta units the high-voltage side leads by 30°.
        ("480Y/277", "480 3ph", "208Y/120", "us", -30.0),
        ("208Y/120", "208 3ph", "480Y/277", "us", 30.0),
        ("480Y/277", "480Y/277", "240 3ph", "us", -30.0),
        ("480Y/277", "480Y/277", "208Y/120", "us", 0.0),
        ("480Y/277", "480 3ph", "240 3ph", "us", 0.0),
        ("10 kV 3ph", "10 kV 3ph", "400Y/230", "iec", None),
        ("10 kV 3ph", "10 kV 3ph", "400Y/230", None, None),
    ],
)
def test_angle_where_no_connection_is_given(
    supply: str, first: str, second: str, practice: str | None, shift: float | None
) -> None:
    result = made(supply, first, second, practice=practice)
    if shift is None:
        assert result.angle_unknown == "no vector group is given, so the angle of the secondary is unknown"
    else:
        assert result.angle_unknown is None
        assert result.shift_deg == pytest.approx(shift)


@pytest.mark.parametrize("legs", [("A", "B"), ("B", "C"), ("C", "A")])
def test_one_winding_with_its_middle_brought_out(legs: tuple[str, str]) -> None:
    supply = of("480Y/277")
    result = made(supply, "480 1ph", "120/240", primary_legs=legs)
    assert result.system.shape is Shape.SPLIT3
    across = supply.potential(legs[0]) - supply.potential(legs[1])
    assert angle_deg(result.system.potential("A")) == pytest.approx(angle_deg(across))
    assert result.system.potential("B") == pytest.approx(-result.system.potential("A"))
    assert [w.volts for w in result.cores[0].secondaries] == [120, 120]
    assert (result.connection, result.takes, result.separately_derived) == ("centre-tapped", legs, True)


def test_single_phase_from_leg_and_neutral() -> None:
    result = made("480Y/277", "277 1ph", "120 1ph", primary_legs=("B",))
    assert result.takes == ("B", "N")
    assert result.system.conductors == ("A", "N")
    assert result.system.potential("A") == pytest.approx(120 * turn(-120), abs=1e-6)
    floating = made("480Y/277", "480 1ph", "230 1ph", primary_legs=("A", "B"))
    assert floating.system.conductors == ("A", "B")
    assert floating.system.earth is None


@pytest.mark.parametrize("high", ["A", "B", "C"])
@pytest.mark.parametrize(
    ("supply", "first", "connection", "legs"),
    [
        ("480Y/277", "480 3ph", None, None),
        ("480Y/277", "480 3ph", "open-delta", None),
        ("12.47Y/7.2 kV", "12.47Y/7.2 kV 1ph", "open-wye", ("A", "B")),
        ("12.47Y/7.2 kV", "12.47Y/7.2 kV 1ph", None, ("C", "B")),
    ],
)
def test_high_leg_banks(
    supply: str, first: str, connection: str | None, legs: tuple[str, ...] | None, high: str
) -> None:
    result = made(supply, first, "240/120 3ph", connection, primary_legs=legs, practice="us", high_leg=high)
    bank = result.system
    assert bank.shape is Shape.HIGH_LEG4
    assert bank.high_leg == high
    assert bank.rotation == 1
    # 120 x 1.732 = 207.85 V (ecmweb.com article 20900864).
    assert bank.distance(high, "N") == pytest.approx(207.846, abs=1e-3)
    split = [core for core in result.cores if len(core.secondaries) == 2]
    assert len(split) == 1
    assert set(secondary_pair(split[0])) == set("ABC") - {high}
    assert len(result.cores) == (3 if connection is None and legs is None else 2)


def test_open_delta_keeps_the_angle() -> None:
    bank = made("480 3ph", "480 3ph", "240 3ph", "open-delta")
    closed = made("480 3ph", "480 3ph", "240 3ph", "Dd0")
    for leg in "ABC":
        assert bank.system.potential(leg) == pytest.approx(closed.system.potential(leg), abs=1e-6)


@pytest.mark.parametrize(
    ("supply", "first", "second", "connection", "legs"),
    [
        ("480Y/277", "480Y/277", "600Y/347", "auto", None),
        ("480 3ph", "480 3ph", "240 3ph", "auto", None),
        ("208Y/120", "208 1ph", "240 1ph", "auto", ("A", "B")),
        ("208Y/120", "208 1ph", "230 1ph", "buck-boost", ("B", "C")),
        ("208Y/120", "208 3ph", "230 3ph", "buck-boost", None),
        ("480Y/277", "480Y/277", "440Y/254", "buck-boost", None),
        ("120 1ph", "120 1ph", "112 1ph", "buck-boost", None),
        ("480 3ph", "480 3ph", "480Y/277", "zigzag", None),
    ],
)
def test_shared_conductors_keep_earth_and_angle(
    supply: str, first: str, second: str, connection: str, legs: tuple[str, ...] | None
) -> None:
    primary = of(supply)
    result = made(primary, first, second, connection, primary_legs=legs)
    assert not result.separately_derived
    voltage = parse_voltage(second)
    a, b = result.system.conductors[:2]
    assert result.system.distance(a, b) == pytest.approx(voltage.line_v, rel=1e-6)
    assert_one_flux_per_core(primary, result)
    if connection != "zigzag":
        assert result.system.earth == primary.earth
        assert result.system.earthing == primary.earthing


def test_a_grounding_zigzag_moves_no_leg_and_makes_a_neutral() -> None:
    supply = of("480 3ph", "none")
    result = made(supply, "480 3ph", "480Y/277", "zigzag")
    assert result.system.shape is Shape.WYE4
    assert result.system.volts_to_ground("A") == pytest.approx(277.128, abs=1e-3)
    # Each half of the windings takes V/3 line to line: leg to inner point, inner point to neutral.
    potentials = {leg: result.system.potential(leg) for leg in "ABC"}
    fluxes = [(potentials[a] - potentials[b]) / 3 for a, b in ("AC", "BA", "CB")]
    inner = [potentials[leg] - flux for leg, flux in zip("ABC", fluxes, strict=True)]
    assert [abs(point) for point in inner] == pytest.approx([160.0] * 3)
    for k, core in enumerate(result.cores):
        assert core.primary.start.conductor == "ABC"[k]
        assert core.primary.volts == pytest.approx(160.0)


@pytest.mark.parametrize(
    ("supply", "first", "second", "connection", "legs", "cause", "says"),
    [
        ("480Y/277", "480 1ph", "120/240", None, ("A", "N"), Cause.WINDING_VOLTAGE, "only 58 %"),
        ("240 3ph", "208 3ph", "480Y/277", None, None, Cause.WINDING_VOLTAGE, "driven 15 % beyond"),
        ("480Y/277", "480 1ph", "120/240", None, ("A", "B", "C"), Cause.WINDING_COUNT, "2-pole device on two of the"),
        ("120/240", "240 3ph", "480 3ph", None, None, Cause.WINDING_COUNT, "takes three legs"),
        ("480Y/277", "480 3ph", "120/240", None, None, Cause.WINDING_COUNT, "three-phase primary has three windings"),
        ("480Y/277", "480 1ph", "208Y/120", None, ("A", "B"), Cause.WINDING_COUNT, "one winding makes one phase"),
        ("480 3ph", "480Y/277", "208Y/120", None, None, Cause.NO_NEUTRAL, "only live wires arrive"),
        ("10 kV 3ph", "10 kV 3ph", "400Y/230", "Dyn10", None, Cause.WINDING_CONNECTION, "Dyn9, Dyn11"),
        ("10 kV 3ph", "10 kV 3ph", "400Y/230", "Yd11", None, Cause.WINDING_CONNECTION, "no neutral point"),
        ("480 3ph", "480 3ph", "240Y/139", "auto", None, Cause.WINDING_CONNECTION, "cannot make a neutral"),
        ("48 dc", "48 dc", "120 1ph", None, None, Cause.WINDING_CONNECTION, "direct current"),
        ("480Y/277", "480 3ph", "208Y/120", "open-delta", None, Cause.WINDING_CONNECTION, "three-wire or a high-leg"),
        ("480 3ph", "480 3ph", "208Y/120", "zigzag", None, Cause.WINDING_CONNECTION, "Dzn0"),
        ("480Y/277", "480 1ph", "208Y/120 1ph", None, ("A", "B"), Cause.WINDING_CONNECTION, "180° apart"),
    ],
)
def test_windings_that_do_not_fit(
    supply: str, first: str, second: str, connection: str | None, legs: tuple[str, ...] | None, cause: Cause, says: str
) -> None:
    result = wound(supply, first, second, connection, primary_legs=legs, practice="us")
    assert isinstance(result, Refusal), result
    assert result.cause is cause
    assert says in result.why


def test_legs_not_chosen_is_undecided() -> None:
    result = wound("480Y/277", "480 1ph", "120/240")
    assert isinstance(result, Undecided)
    assert result.reasons == ("which conductors the primary takes: A–B, B–C, C–A",)
    assert isinstance(wound(of("480Y/277").restrict(("B", "C")), "480 1ph", "120/240"), Transformed)


def test_remarks() -> None:
    off = made("400Y/230", "415 3ph", "208Y/120", "Dyn1")
    assert [(n.kind, n.text) for n in off.notes] == [
        (NoteKind.WINDING_OFF_NOMINAL, "415 V windings stand on 400 3ph: -3.6 % before any tap")
    ]
    assert [n.kind for n in made("480Y/277", "480Y/277", "208Y/120", practice="us").notes] == [NoteKind.ZERO_SEQUENCE]
    floats = made("10 kV 3ph", "10 kV 3ph", "400Y/230", "Yyn0")
    assert [n.kind for n in floats.notes] == [NoteKind.PRIMARY_STAR_FLOATS]
    tied = made("480Y/277", "480Y/277", "240 3ph", practice="us")
    assert [n.kind for n in tied.notes] == [NoteKind.PRIMARY_STAR_TIED]


def test_earthing_of_the_new_system() -> None:
    corner = made(
        "480Y/277", "480 3ph", "240 3ph", practice="us", earthing=earthing_from_words("B", parse_voltage("240 3ph"))
    )
    assert corner.system.earthed_leg == "B"
    assert corner.system.volts_to_ground("A") == pytest.approx(240)
    it = made(
        "10 kV 3ph", "10 kV 3ph", "400Y/230", "Dyn11", earthing=earthing_from_words("IT", parse_voltage("400Y/230"))
    )
    assert it.system.volts_to_ground("A") == pytest.approx(400)


@settings(max_examples=40, deadline=None)
@given(
    st.lists(st.sampled_from([g.name for g in all_groups() if g.secondary == "y" and g.secondary_neutral]), max_size=6)
)
def test_a_chain_of_transformers_adds_its_hours_and_stays_one_system(chain: list[str]) -> None:
    system, hours = of("400Y/230"), 0
    for name in chain:
        system = made(system, "400 3ph", "400Y/230", name).system
        hours += int("".join(letter for letter in name if letter.isdigit()))
    expected = of("400Y/230", angle_deg=-30.0 * (hours % 12))
    assert system == expected
    assert hash(system) == hash(expected)


def test_reversed_supply_reverses_the_shift() -> None:
    supply = of("480Y/277").restrict(("A", "C", "B"))
    result = made(supply, "480 3ph", "208Y/120", "Dyn1")
    assert result.system.rotation == -1
    assert result.shift_deg == pytest.approx(30.0)
