"""A voltage system in a drafter's words: for hover texts, findings and reports."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

from wyeline_linter.systems import (
    MIDPOINT,
    NEUTRAL,
    Arrangement,
    Earthing,
    EarthingKind,
    Shape,
    System,
    volts_text,
)

_IEC_CONDUCTORS = {"A": "L1", "B": "L2", "C": "L3", "G": "PE"}


def conductor_text(conductor: str, practice: str | None) -> str:
    """A conductor as practice calls it: ``A`` and ``G``, or ``L1`` and ``PE``."""
    return _IEC_CONDUCTORS.get(conductor, conductor) if practice == "iec" else conductor


def conductors_text(conductors: Iterable[str], practice: str | None, joint: str = " ") -> str:
    """Several conductors as practice calls them: ``A B N``, or ``L1 L2 N``."""
    return joint.join(conductor_text(name, practice) for name in conductors)


_LEG_IN_A_SENTENCE = re.compile(
    r"`[^`]*`|\bTN-C(?:-S)?\b|"
    r"(?<![\w`])(?<!\d )(?<![\d)]\()(?<!curve )(?<!type )(?<!class )(?<!method )"
    r"(?:[BC]|(?<=\b[BC] )A|(?<=\bleg )A|A(?! (?!and\b|or\b|is\b|to\b|near\b|earthed\b)[a-z0-9]))(?![\w`])"
)
"""A leg's letter in a sentence. An A before a word or a figure is an article, behind a figure it is amperes; a B or C
may name a curve, type, class, method or earthing, or a part of a section of the code. In backquotes stands the
model's own text."""


def with_legs_of(practice: str | None, sentence: str) -> str:
    """A sentence of the verdicts, which know no practice, with its legs as practice calls them."""
    if practice != "iec":
        return sentence
    return _LEG_IN_A_SENTENCE.sub(lambda found: _IEC_CONDUCTORS.get(found[0], found[0]), sentence)


def pair_text(first: str, second: str, volts: float, practice: str | None) -> str:
    """What lies between two conductors: ``A–B 208 V``, or ``L1–L2 400 V``."""
    return f"{conductors_text((first, second), practice, '–')} {volts_text(volts)}"


_COUNT = {1: "one", 2: "two", 3: "three"}


@lru_cache(maxsize=8192)
def figures(of: System) -> str:
    """The voltages, numbers first, without earthing: what a meter reads here."""
    legs, shape = of.legs, of.shape
    line = volts_text(of.nominal_v(legs[0], legs[1])) if len(legs) > 1 else ""
    if shape in (Shape.DC2, Shape.DC3):
        return f"{volts_text(of.distance('+', '-'))} direct current between + and -"
    if shape is Shape.LIVE_NEUTRAL2:
        return f"{volts_text(of.nominal_v(legs[0], NEUTRAL))} from one live wire to neutral"
    if shape is Shape.WYE4:
        neutral = volts_text(of.nominal_v(legs[0], NEUTRAL))
        return f"{line} between any two live wires, {neutral} from each to neutral, three legs 120° apart"
    if shape in (Shape.WYE3, Shape.DELTA3):
        return f"{line} between any two live wires, three legs 120° apart, no neutral"
    if shape is Shape.HIGH_LEG4:
        return f"{line} between any two live wires, {_each_to_neutral(of)} (the high leg)"
    if shape is Shape.SPLIT3:
        neutral = volts_text(of.nominal_v(legs[0], NEUTRAL))
        return f"{line} between two live wires, neutral exactly midway ({neutral} from each)"
    if shape is Shape.TWO_LEGS3:
        neutral = volts_text(of.nominal_v(legs[0], NEUTRAL))
        return f"{line} between two live wires, {neutral} from each to neutral, two legs 120° apart"
    if shape in (Shape.TWO_LIVE2, Shape.MIDPOINT2):
        return f"{line} between two live wires, no neutral"
    if shape is Shape.CORNER2:
        return f"{line} between two wires, no neutral"
    pairs = ", ".join(f"{a}–{b} {volts_text(v)}" for a, b, v in of.pair_voltages())
    return pairs or "no two wires to measure between"


def _each_to_neutral(of: System) -> str:
    high = of.high_leg
    low = [leg for leg in of.legs if leg != high]
    names = " and ".join(low)
    return (
        f"{names} {volts_text(of.nominal_v(low[0], NEUTRAL))} to neutral, "
        f"{high} {volts_text(of.nominal_v(high or low[0], NEUTRAL))}"
    )


@lru_cache(maxsize=8192)
def in_words(of: System) -> str:
    """The system in one sentence: live wires, voltages, neutral, earthing, frequency."""
    frequency = "" if of.frequency_hz == 0.0 else f"; {of.frequency_hz:g} Hz"
    return f"{_wires(of)}; {earthing_in_words(of)}{frequency}"


def _wires(of: System) -> str:
    legs, shape = of.legs, of.shape
    line = volts_text(of.nominal_v(legs[0], legs[1])) if len(legs) > 1 else ""
    neutral = volts_text(of.nominal_v(legs[0], NEUTRAL)) if of.has_neutral and legs else ""
    match shape:
        case Shape.WYE4:
            return f"three live wires 120° apart, {line} between any two, {neutral} from each to neutral"
        case Shape.WYE3 | Shape.DELTA3:
            return f"three live wires 120° apart, {line} between any two, no neutral"
        case Shape.HIGH_LEG4:
            return f"three live wires, {line} between any two; {_each_to_neutral(of)} (the high leg)"
        case Shape.SPLIT3:
            return f"two live wires {line} apart, the neutral exactly midway, {neutral} from each to neutral"
        case Shape.TWO_LEGS3:
            return f"two live wires 120° apart, {line} between them, {neutral} from each to neutral"
        case Shape.LIVE_NEUTRAL2:
            return f"one live wire, {neutral} to neutral"
        case Shape.TWO_LIVE2 | Shape.MIDPOINT2:
            return f"two live wires {line} apart, no neutral"
        case Shape.CORNER2:
            return f"two wires {line} apart, no neutral"
        case Shape.DC2 | Shape.DC3:
            return f"{volts_text(of.distance('+', '-'))} direct current between + and -"
        case _:
            return f"{_COUNT.get(len(legs), str(len(legs)))} live wires: {figures(of)}"


def earthing_in_words(of: System) -> str:
    """How the system is earthed at its source, with its arrangement if one is stated."""
    earthing = of.earthing
    arrangement = f" ({earthing.arrangement.value})" if earthing.arrangement else ""
    parts = ", metal parts by an electrode of their own" if earthing.arrangement is Arrangement.TT else ""
    return _earthing(of, earthing) + parts + arrangement


def _earthing(of: System, earthing: Earthing) -> str:
    if earthing.kind is EarthingKind.NONE:
        return "not earthed" if earthing.stated else "no earthing stated"
    conductor = earthing.conductor
    if conductor == NEUTRAL:
        point = "neutral" if of.has_neutral else "star point" if of.shape is Shape.WYE3 else "neutral point"
    elif conductor == MIDPOINT:
        point = "middle of the winding"
    else:
        point = conductor or "one point"
    if earthing.kind is EarthingKind.SOLID:
        return f"{point} earthed at the source"
    size = f" ({earthing.size})" if earthing.size else ""
    return f"{point} earthed through a {earthing.kind.value}{size}"
