"""Known slips of numbers, positions, units and voltages."""

from __future__ import annotations

from wyeline_grammar.attributes import KEYS
from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import (
    BB,
    B,
    Match,
    N,
    Place,
    decimal_comma,
    fraction_sign,
    positions,
    rewritten,
    spelled,
    thousands,
    unit_case,
    unit_word,
    volts_alone,
    whole,
)


def _one_figure(match: Match, place: Place) -> str | None:
    """``fault-min 2,5kA``; behind a word that counts, `spaces 42,10kA`, the comma parts two facts."""
    key = KEYS.get(place.text[: match.start()].split()[-1])
    if key is not None and all(accept.form != "quantity" for use in key.uses for accept in use.accepts):
        return None
    return f"{match[1]}.{match[2]} {match[3]}"


NUMBERS: tuple[Slip, ...] = (
    Slip(
        "thousands-comma",
        whole(rf"(?P<n>\d{{1,3}}(?:,\d{{3}})+){B}(?P<unit>[A-Za-z%]+[2²]?)"),
        thousands,
        "A comma parts words, so figures have no thousands mark.",
        "switchboard MSB 480Y/277  bus 1,200 A",
        "switchboard MSB 480Y/277  bus 1200 A",
    ),
    Slip(
        "decimal-comma",
        whole(rf"(\d+x|\d+G)?(\d+),(\d{{1,2}})({B}[A-Za-z%][A-Za-z0-9%/.²]*)"),
        decimal_comma,
        "A comma parts words, so the decimal mark is a point.",
        "feeder HV -> UV  3G2,5 mm2 Cu  24 m",
        "feeder HV -> UV  3G2.5 mm2 Cu  24 m",
    ),
    Slip(
        "decimal-comma-of-cores",
        whole(rf"([2-5])([xG×])([12]),5(?:{B}mm(?:2|²)?)?"),
        lambda match, _: f"{match[1]}{match[2].replace('×', 'x')}{match[3]}.5mm2",
        "A comma parts words, so the decimal mark is a point; an area has its unit.",
        "  F1  16 A 1p+N  3G2,5  24 m",
        "  F1  16 A 1p+N  3G2.5mm2  24 m",
    ),
    Slip(
        "decimal-comma-in-one-word",
        spelled(r"(?<=[a-z] )(\d+),(\d{1,2})([A-Za-z%][A-Za-z0-9%/.²]*)"),
        _one_figure,
        "A comma parts words, so the decimal mark is a point: read so, these would be two figures.",
        "utility NET 400Y/230  fault-min 2,5kA",
        "utility NET 400Y/230  fault-min 2.5 kA",
        sound=True,
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
        "feet-and-inches",
        spelled(rf"(?<![\w.])(\d+){B}['′]{B}-?{B}(\d{{1,2}})(?:\"|″|''|”)"),
        lambda match, _: f"{int(match[1]) + int(match[2]) / 12:.4g} ft",
        "A length is one figure with its unit.",
        "feeder MSB -> LP-5  3#8 Cu  65'-6\"",
        "feeder MSB -> LP-5  3#8 Cu  65.5 ft",
        quotes=True,
    ),
    Slip(
        "square-feet",
        whole(
            rf"(?P<n>{N}){B}(?:[sS][qQ]\.?|[sS]quare){B}(?P<unit>[fF][tT]|[fF]eet|[fF]oot|[mM](?:et(?:er|re)s?)?)\.?"
        ),
        lambda match, _: f"{match['n']} {'m2' if match['unit'][0] in 'mM' else 'ft2'}",
        "An area has its unit in one word.",
        "panel LP-5 120/240  dwelling standard, floor-area 1500 sq. ft.",
        "panel LP-5 120/240  dwelling standard, floor-area 1500 ft2",
    ),
    Slip(
        "floor-area-by-a-word",
        whole(rf"(?:[fF]loor{BB})?(?:[aA]rea|AREA|[sS]quare{BB}footage){B}[=:]?{B}({N}){B}(ft2|ft²|m2|m²)"),
        rewritten(r"floor-area \1 \2"),
        "The floor area of a dwelling has a keyword.",
        "panel LP-5 120/240  dwelling standard, area 1500 ft2",
        "panel LP-5 120/240  dwelling standard, floor-area 1500 ft2",
    ),
    Slip(
        "length-with-a-word",
        whole(rf"(?:L|[lL]ength|LENGTH|[lL]en\.?|[dD]ist(?:ance)?\.?|[rR]un){B}[=:]?{B}({N}){B}(m|ft|feet|')"),
        lambda match, _: f"{match[1]} {'m' if match[2] == 'm' else 'ft'}",
        "On a feeder or a circuit a length needs no keyword.",
        "feeder MSB -> LP-5  3#8 Cu  L=20 m",
        "feeder MSB -> LP-5  3#8 Cu  20 m",
    ),
    Slip(
        "percent-impedance",
        whole(rf"(?:%{B}I?Z{B}[=:]?{B}({N})(?:{B}%)?|({N}){B}%{B}I?Z|I?Z{B}%{B}[=:]?{B}({N})|IZ{B}[=:]?{B}({N}){B}%)"),
        lambda match, _: f"z {match[1] or match[2] or match[3] or match[4]} %",
        "A keyword stands before its value, and a share has its sign behind it.",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, 5.75%Z",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, z 5.75 %",
    ),
    Slip(
        "k-factor",
        whole(r"[kK](?:[- ]?(?:[fF]actor|rated))?[- =]?(4|9|13|20|30|40|50)(?:[- ]rated)?"),
        rewritten(r"kfactor \1"),
        "The rating for harmonic currents has a keyword.",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, K-13",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, kfactor 13",
    ),
    Slip(
        "vector-group-alone",
        whole("(?:D|Y|YN|Z|ZN)(?:d|y|yn|z|zn)(?:\\d{1,2})"),
        rewritten(r"connection \g<0>"),
        "How the windings are joined has a keyword.",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, Dyn11",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, connection Dyn11",
    ),
    Slip(
        "rise-behind",
        whole(rf"({N})(?:{B}(?:deg(?:rees?)?\.?|°))?(?:{B}([CF]))?{BB}(?:temp(?:erature|\.)?{BB})?rise"),
        lambda match, _: f"rise {match[1]} deg{match[2] or 'C'}",
        "A keyword stands before its value.",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, 150 °C rise",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, rise 150 degC",
    ),
    Slip(
        "peak-watts",
        whole(rf"({N}){B}([kM]?)Wp"),
        rewritten(r"\1 \2W"),
        "What the modules give in full sun is not what their inverter is rated: look at the plate of the inverter.",
        "inverter PV-5 400Y/230  12 kWp",
        "inverter PV-5 400Y/230  12 kW",
        guess=True,
    ),
    Slip(
        "degrees-of-no-scale",
        whole(rf"(ambient|rise|lug-temp){BB}({N}){B}(?:degrees?|deg\.?|°)(?!{B}[CF]\b)"),
        lambda match, _: (f"{match[1]} {match[2]} degC", f"{match[1]} {match[2]} degF"),
        "The same figure is two temperatures.",
        "panel LP-5 208Y/120  bus 225 A, ambient 35 degrees",
        "panel LP-5 208Y/120  bus 225 A, ambient 35 degC",
    ),
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
