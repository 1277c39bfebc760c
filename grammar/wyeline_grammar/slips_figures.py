"""Known slips of numbers, positions, units and voltages."""

from __future__ import annotations

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import (
    BB,
    B,
    N,
    fraction_sign,
    phases,
    positions,
    rewritten,
    spelled,
    thousands,
    unit_case,
    unit_word,
    volts_alone,
    whole,
    wye_mark,
)

NUMBERS: tuple[Slip, ...] = (
    Slip(
        "thousands-comma",
        whole(rf"(?P<n>\d{{1,3}}(?:,\d{{3}})+){B}(?P<unit>[A-Za-z%]+)"),
        thousands,
        "A comma parts words, so figures have no thousands mark.",
        "switchboard MSB 480Y/277  bus 1,200 A",
        "switchboard MSB 480Y/277  bus 1200 A",
    ),
    Slip(
        "decimal-comma",
        whole(rf"(\d+x|\d+G)?(\d+),(\d{{1,2}})({B}[A-Za-z%][A-Za-z0-9%/.²]*)"),
        rewritten(r"\1\2.\3\4"),
        "A comma parts words, so the decimal mark is a point.",
        "feeder HV -> UV  3G2,5 mm2 Cu  24 m",
        "feeder HV -> UV  3G2.5 mm2 Cu  24 m",
    ),
    Slip(
        "decimal-comma-number",
        spelled(r"(?<=[a-z] )(\d+),(\d+)(?![\d,])"),
        rewritten(r"\1.\2"),
        "A comma parts words, so the decimal mark is a point.",
        "expect LP-5 drop <= 2,5 %",
        "expect LP-5 drop <= 2.5 %",
    ),
    Slip(
        "leading-point",
        spelled(r"(?<![\w.])\.(\d+)"),
        rewritten(r"0.\1"),
        "A point alone is easily lost on paper, so a digit stands before it.",
        "motor P-5 460 3ph  15 hp, pf .86",
        "motor P-5 460 3ph  15 hp, pf 0.86",
    ),
    Slip(
        "positions",
        spelled(
            rf"(?P<lead>^\s+|\bat{BB})(?P<list>\d+(?:{B}[-/&]{B}\d+|,?{BB}\d+|,\d+)+)(?=[\s\[,]|$)(?!{B}(?:A|VA|kVA|V|kV|W|kW|hp|m|ft)\b)"
        ),
        positions,
        "All positions of a device are one word, with commas and without blanks.",
        "  2, 4  20 A 2p  2 kVA heating",
        "  2,4  20 A 2p  2 kVA heating",
        message="the positions of one device are written `{right}`",
    ),
    Slip(
        "fraction-sign",
        spelled("(?:(?<!\\d)(\\d+) ?)?([½¼¾⅛⅜⅝⅞])(\\s*)"),
        fraction_sign,
        "A fraction is written with a stroke, and a hyphen behind the whole number.",
        "motor P-5 460 3ph  7½ hp",
        "motor P-5 460 3ph  7-1/2 hp",
    ),
    Slip(
        "fraction-blank",
        whole(rf"(\d+){BB}(\d+/(?:2|4|8|16|32)){B}([a-zA-Z]+)"),
        rewritten(r"\1-\2 \3"),
        "A hyphen holds the whole number and its fraction together.",
        "motor P-5 460 3ph  7 1/2 hp",
        "motor P-5 460 3ph  7-1/2 hp",
    ),
    Slip(
        "minus-sign",
        spelled("(?<![^\\s,])[−–—](?=\\d)"),
        rewritten("-"),
        "A minus is a hyphen.",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, tap −2.5 %",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, tap -2.5 %",
    ),
)

UNITS: tuple[Slip, ...] = (
    Slip(
        "foot-mark",
        whole(rf"({N}){B}['′]"),
        rewritten(r"\1 ft"),
        "A unit is written out.",
        "feeder MSB -> LP-5  3#8 Cu  140'",
        "feeder MSB -> LP-5  3#8 Cu  140 ft",
    ),
    Slip(
        "unit-word",
        whole(rf"(?P<n>(?:\d+-)?\d+/\d+|[+-]?{N}){B}(?P<word>[A-Za-z]+(?:\.[A-Za-z]+)*\.?)"),
        unit_word,
        "One unit, one spelling.",
        "feeder MSB -> LP-5  3#8 Cu  140 feet",
        "feeder MSB -> LP-5  3#8 Cu  140 ft",
    ),
    Slip(
        "direct-current",
        whole(rf"({N}){B}(?:[vV]{B}-?{B}(?:dc|DC)|VDC|Vdc|DC)"),
        rewritten(r"\1 dc"),
        "A voltage is its figure and the word that says of what kind it is.",
        "battery BAT-5  48 VDC  20 kWh",
        "battery BAT-5  48 dc  20 kWh",
    ),
    Slip(
        "phases",
        whole(
            rf"(?P<volts>{N}(?:[Yy]?/{N}|-{N})?){B}(?P<unit>[kK]?[vV]|){B}[,/-]?{B}"
            rf"(?P<phases>[13](?:{B}-?{B}(?:PH|Ph|ph|[Pp]hase|PHASE|Ø|ø|φ|Φ)))(?P<wires>{B},?{B}[34]{B}-?[wW](?:ire)?)?"
        ),
        phases,
        "A voltage is its figures and then `3ph` or `1ph`; the volts need no unit.",
        "motor P-5  460V 3PH  15 hp",
        "motor P-5  460 3ph  15 hp",
    ),
    Slip(
        "phases-in-one-word",
        whole(r"(?P<volts>\d+)(?P<unit>k?V)-?(?P<phases>[13][Pp][Hh])(?P<wires>-[34]W)?"),
        lambda match, place: None if match.start() <= place.tokens[1].start else phases(match, place),
        "A voltage is its figures and then `3ph` or `1ph`; written in one word it reads as a name.",
        "motor P-5  460V-3PH  15 hp",
        "motor P-5  460 3ph  15 hp",
        sound=True,
    ),
    Slip(
        "wye-mark",
        whole(rf"[Yy](?P<one>{N})[Vv]?/(?P<other>{N})[Vv]?"),
        wye_mark,
        "A wye is the volts between two legs, `Y/`, and the volts from a leg to neutral.",
        "panel LP-5 Y480/277  bus 100 A",
        "panel LP-5 480Y/277  bus 100 A",
    ),
    Slip(
        "wye-mark-behind",
        whole(rf"(?P<one>{N})[Vv]?/(?P<other>{N})[Vv]?[Yy]"),
        wye_mark,
        "A wye is the volts between two legs, `Y/`, and the volts from a leg to neutral.",
        "panel LP-5 120/208Y  bus 100 A",
        "panel LP-5 208Y/120  bus 100 A",
    ),
    Slip(
        "volts-twice",
        whole(rf"(?P<one>{N})[Vv]/(?P<other>{N})[Vv]?"),
        wye_mark,
        "A wye is the volts between two legs, `Y/`, and the volts from a leg to neutral.",
        "panel LP-5 480V/277V  bus 100 A",
        "panel LP-5 480Y/277  bus 100 A",
    ),
    Slip(
        "voltage-alone",
        whole(r"(?P<n>\d{3})"),
        volts_alone,
        "The same volts arrive on two wires, on three, or on three and a neutral; which, must not be guessed.",
        "panel LP-5 230  bus 100 A",
        "panel LP-5 230 3ph  bus 100 A",
        message="`{n}` does not say which wires bring it",
    ),
    Slip(
        "temperature-unit",
        whole(rf"(?P<key>ambient|rise|lug-temp){BB}(?P<n>[+-]?{N}){B}(?:deg\.?{B}|°{B})?(?P<scale>[CF])"),
        rewritten(r"\g<key> \g<n> deg\g<scale>"),
        "`C` alone is free as a name.",
        "  ambient 35 C",
        "  ambient 35 degC",
    ),
    Slip(
        "unit-case",
        whole(rf"(?P<n>(?:\d+-)?\d+/\d+|[+-]?{N}){B}(?P<unit>[A-Za-z][A-Za-z./]*)"),
        unit_case,
        "Case counts in a unit: `m` and `M` are not the same.",
        "motor P-5 460 3ph  15 HP",
        "motor P-5 460 3ph  15 hp",
    ),
)
