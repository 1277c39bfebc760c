"""Voltage systems: every standard shape, its voltages, its earthing and its words."""

import cmath
import math
from typing import Any

import pytest

from wyeline_grammar.notation import parse_voltage
from wyeline_linter.systems import (
    Earthing,
    EarthingKind,
    Shape,
    System,
    earthing_from_words,
    source_system,
    system,
)

SHAPES = [
    ("480Y/277", None, "A B C N", Shape.WYE4),
    ("400Y/230", None, "A B C N", Shape.WYE4),
    ("12.47Y/7.2 kV", None, "A B C N", Shape.WYE4),
    ("400 3ph", "TN-S", "A B C", Shape.WYE3),
    ("480 3ph", None, "A B C", Shape.DELTA3),
    ("480 3ph", "none", "A B C", Shape.DELTA3),
    ("240 3ph", "B", "A B C", Shape.DELTA3),
    ("240/120 3ph", None, "A B C N", Shape.HIGH_LEG4),
    ("120/240", None, "A B N", Shape.SPLIT3),
    ("240/480", None, "A B N", Shape.SPLIT3),
    ("208Y/120 1ph", None, "A B N", Shape.TWO_LEGS3),
    ("480 1ph", None, "A B", Shape.TWO_LIVE2),
    ("230 1ph", "TN-S", "A N", Shape.LIVE_NEUTRAL2),
    ("120 1ph", None, "A N", Shape.LIVE_NEUTRAL2),
    ("110 1ph", "mid", "A B", Shape.MIDPOINT2),
    ("240 1ph", "B", "A B", Shape.CORNER2),
    ("48 dc", None, "+ -", Shape.DC2),
]


def of(text: str, earthing: str | None = None, hz: float = 60.0, **more: Any) -> System:
    voltage = parse_voltage(text)
    chosen = None if earthing is None else earthing_from_words(earthing, voltage)
    return source_system(voltage, frequency_hz=hz, earthing=chosen, **more)


def rotated(made: System, degrees: float) -> System:
    """The same system with every angle moved ahead."""
    turn = cmath.rect(1.0, math.radians(degrees))
    earth = None if made.earth is None else made.earth * turn
    phasors = tuple(phasor * turn for phasor in made.phasors)
    return system(made.conductors, phasors, made.frequency_hz, made.earthing, earth, made.nominal, made.widest_v)


@pytest.mark.parametrize(("text", "earthing", "conductors", "shape"), SHAPES)
def test_each_notation_makes_its_shape(text: str, earthing: str | None, conductors: str, shape: Shape) -> None:
    made = of(text, earthing)
    assert " ".join(made.conductors) == conductors
    assert made.shape is shape
    # Turning the whole system changes no distance, so no shape.
    assert rotated(made, 30.0).shape is shape


@pytest.mark.parametrize(
    ("line_v", "neutral_v"),
    # Nominal systems of ANSI C84.1 and IEC 60038.
    [(208, 120), (480, 277), (600, 347), (400, 230), (690, 400), (220, 127), (380, 220), (415, 240), (200, 115)],
)
def test_wye_voltage_to_neutral_is_line_voltage_over_root_three(line_v: float, neutral_v: float) -> None:
    wye = of(f"{line_v}Y/{neutral_v}")
    assert wye.distance("A", "N") == pytest.approx(line_v / math.sqrt(3), abs=1e-5)
    assert {(a, b): v for a, b, v in wye.pair_voltages()} == {
        ("A", "B"): line_v,
        ("B", "C"): line_v,
        ("C", "A"): line_v,
        ("A", "N"): neutral_v,
        ("B", "N"): neutral_v,
        ("C", "N"): neutral_v,
    }


@pytest.mark.parametrize("high", ["A", "B", "C"])
def test_high_leg_is_208_to_neutral(high: str) -> None:
    # (240/2) x 1.732 = 208 V: ecmweb.com, "Transformer calculations", article 20900864.
    delta = of("240/120 3ph", high_leg=high)
    assert delta.high_leg == high
    assert delta.distance(high, "N") == pytest.approx(207.846, abs=1e-3)
    low = [leg for leg in "ABC" if leg != high]
    assert [delta.nominal_v(leg, "N") for leg in low] == [120, 120]
    assert delta.restrict((*low, "N")).nominal.text == "120/240"
    assert delta.restrict((high, low[0], "N")).shape is Shape.HIGH_LEG3
    assert delta.rotation == 1


def test_voltage_to_ground_follows_the_earthing() -> None:
    assert of("480Y/277").volts_to_ground("A") == pytest.approx(277.128, abs=1e-3)
    assert of("240 3ph", "B").volts_to_ground("A") == pytest.approx(240)
    assert of("240 3ph", "B").volts_to_ground("B") == 0
    assert of("240 3ph", "B").live_legs == ("A", "C")
    # Site supplies of 110 V with the winding's middle earthed: 55 V to earth (BS 7671, 411.8; IEC reduced low voltage).
    assert of("110 1ph", "mid").volts_to_ground("A") == pytest.approx(55)
    assert of("120/240").restrict(("A", "B")).volts_to_ground("A") == pytest.approx(120)
    assert of("48 dc", "-").volts_to_ground("+") == pytest.approx(48)


@pytest.mark.parametrize("earthing", ["none", "resistor", "IT"])
def test_without_a_solid_earth_a_leg_may_rise_to_line_voltage(earthing: str) -> None:
    # IEC 60364-4-41, 411.6: the first fault of an IT system puts the line voltage on the other legs.
    run = of("400Y/230", earthing).restrict(("A", "N"))
    assert run.distance("A", "N") == pytest.approx(230.94, abs=0.01)
    assert run.volts_to_ground("A") == pytest.approx(400)


@pytest.mark.parametrize(
    ("source", "taken", "label", "shape"),
    [
        ("600Y/347", "A N", "347 1ph", Shape.LIVE_NEUTRAL2),
        ("600Y/347", "C A", "600 1ph", Shape.TWO_LIVE2),
        ("600Y/347", "B C N", "600Y/347 1ph", Shape.TWO_LEGS3),
        ("400Y/230", "A B C", "400 3ph", Shape.WYE3),
        ("240/120 3ph", "A B C", "240 3ph", Shape.DELTA3),
        ("12.47Y/7.2 kV", "A N", "7.2 kV 1ph", Shape.LIVE_NEUTRAL2),
    ],
)
def test_a_run_takes_some_conductors_in_its_own_order(source: str, taken: str, label: str, shape: Shape) -> None:
    whole = of(source)
    run = whole.restrict(tuple(taken.split()))
    assert (run.nominal.text, run.shape, " ".join(run.conductors)) == (label, shape, taken)
    assert all(run.potential(name) == whole.potential(name) for name in run.conductors)
    assert run.earth == whole.earth


def test_a_run_cannot_take_what_is_not_there() -> None:
    with pytest.raises(ValueError, match="no C here, only A B N"):
        of("120/240").restrict(("A", "C"))
    with pytest.raises(ValueError, match="no conductor C to earth"):
        of("240 1ph", "C")


def test_rotation() -> None:
    wye = of("480Y/277")
    assert wye.rotation == 1
    assert wye.restrict(("B", "C", "A")).rotation == 1
    assert wye.restrict(("A", "C", "B", "N")).rotation == -1
    assert of("120/240").rotation == 0


def test_equal_systems_are_one_key() -> None:
    first = of("480Y/277")
    again = system(
        first.conductors, rotated(rotated(first, 120), -120).phasors, 60.0, first.earthing, 0j, first.nominal
    )
    assert again == first
    assert hash(again) == hash(first)
    assert of("480Y/277", hz=50.0) != first
    assert of("480Y/277", angle_deg=-30.0) != first
    assert of("480Y/277", "none") != first


def test_what_the_notation_implies_about_earth() -> None:
    for text in ("480Y/277", "120/240", "240/120 3ph", "120 1ph"):
        implied = of(text).earthing
        assert (implied.kind, implied.conductor, implied.stated) == (EarthingKind.SOLID, "N", False)
    assert not of("480 3ph").earthing.solid
    stated = earthing_from_words("TN-C-S", parse_voltage("400Y/230"))
    assert stated.solid
    assert stated.same_as(of("400Y/230").earthing)
    assert not stated.same_as(Earthing(EarthingKind.NONE))


@pytest.mark.parametrize(
    ("text", "earthing", "words"),
    [
        (
            "480Y/277",
            None,
            "three live wires 120° apart, 480 V between any two, 277 V from each to neutral; "
            "neutral earthed at the source; 60 Hz",
        ),
        (
            "240/120 3ph",
            None,
            "three live wires, 240 V between any two; A and C 120 V to neutral, B 208 V (the high leg); "
            "neutral earthed at the source; 60 Hz",
        ),
        (
            "120/240",
            None,
            "two live wires 240 V apart, the neutral exactly midway, 120 V from each to neutral; "
            "neutral earthed at the source; 60 Hz",
        ),
        (
            "400 3ph",
            "TT",
            "three live wires 120° apart, 400 V between any two, no neutral; "
            "star point earthed at the source, metal parts by an electrode of their own (TT); 60 Hz",
        ),
        ("240 1ph", "B", "two wires 240 V apart, no neutral; B earthed at the source; 60 Hz"),
        ("48 dc", None, "48 V direct current between + and -; no earthing stated"),
    ],
)
def test_in_a_drafters_words(text: str, earthing: str | None, words: str) -> None:
    assert of(text, earthing).in_words() == words
