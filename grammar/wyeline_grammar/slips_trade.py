"""Known slips of the trade's own phrases: ports, lugs, residual-current devices, reserve positions."""

from __future__ import annotations

import re

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import (
    BB,
    NAMED,
    SQUARE_MM,
    B,
    Fix,
    Match,
    N,
    Place,
    cable_type,
    curve_and_rating,
    earthing,
    port,
    reserve,
    rewritten,
    spelled,
    whole,
)
from wyeline_grammar.vocabulary import BOARDS

_RCD = "(?:rcd|RCD|rccb|RCCB|rcbo|RCBO)"
_RCD_TYPE = "(?P<type>AC|A|F|B)"
_CABLES = "NYM(?:-[JO])?|NYY(?:-[JO])?|N2XH|NYCWY|H07(?:RN-F|V-K)|THHN|THWN(?:-2)?|XHHW(?:-2)?|USE-2|NM-B|UF-B|XLPE|PVC"
"""Usual marks of cables and insulations (common practice, no source)."""
CABLE = re.compile(_CABLES)
_IEC = re.compile(r"mm2|mm²|\bN[YA2]\w+-[JO]\b|\brcd\b")
"""What only lines of IEC practice have (common practice, no source)."""
_THROUGH = "feed[- ]?(?:thru|through)(?:[- ]lugs?)?"


def _method(letter: str) -> Fix:
    """A reference method of IEC 60364, which says nothing of wires by gauges."""
    return lambda _, place: None if "#" in place.text or "kcmil" in place.text else f"method {letter}"


def _in_the_ground(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """``direct buried``; of ``in ground`` the writer says whether the cable lies there bare or in a duct (D1)."""
    bare, duct = _method("D2")(match, place), _method("D1")(match, place)
    if "direct" in match[0] or not isinstance(bare, str) or not isinstance(duct, str):
        return bare
    return duct if re.search(r"\bin\b", place.text[: match.start()]) else (bare, duct)


def _range(_: Match, place: Place) -> tuple[str, ...] | None:
    """``8 kW range`` on a load or in a circuit's row: one to cook on."""
    row = not place.statement and place.tokens[0].kind in ("NUMBER", "LIST", "NAME", "TEXT")
    return ("kitchen", "heating") if row or place.tokens[0].text == "load" else None


def _rated(match: Match, _: Place) -> str:
    """``RCBO 16 A 1p+N 30 mA``: the device's rating is none of the currents that it trips at."""
    return f"{match['n']} rcd {match['t']}" if match["t"] else match["n"]


def _rcbo(match: Match, place: Place) -> str | None:
    """``B16/30mA`` and ``C20/0.03``."""
    if "rcd" in place.text:
        return None
    trips = match["ma"] or f"{1000 * float('0.' + match['a']):g}"
    poles = f" {match[5]}p{'+N' if match['neutral'] else ''}" if match[5] else ""
    return f"{match['n']} A{poles} curve {match['curve']}, rcd {trips} mA"


def _residual_main(match: Match, place: Place) -> str | None:
    rating, trips = match[1] or match[3], match[2] or match[4]
    if place.tokens[0].text not in BOARDS or "bus" in place.text or "incomer" in place.text:
        return None
    return f"bus {rating} A, incomer switch, rcd {trips} mA"


TRADE: tuple[Slip, ...] = (
    Slip(
        "through-lugs-of-a-feeder",
        spelled(
            rf"(?P<lead>^feeder{BB}(?:[^\s:]+{B}:{B})?)(?P<source>{NAMED})(?P<rest>{B}->.*?)(?<![\s,])[\s,]++"
            rf"(?:(?:by|via|from|off){BB})?{_THROUGH}(?=[\s,]|$)"
        ),
        rewritten(r"\g<lead>\g<source>.through\g<rest>"),
        "Feed-through lugs are an end of the panel's bus; the end that is meant stands behind the panel's name.",
        "feeder LP-5 -> LP-6  feed thru  3#3 Cu",
        "feeder LP-5.through -> LP-6  3#3 Cu",
        quotes=True,
    ),
    Slip(
        "port-apart",
        spelled(
            rf"(?P<end>(?:^feeder{BB}(?:[^\s:]+{B}:{B})?|->{B})(?:{NAMED})){BB}"
            rf"(?P<port>normal|{_THROUGH}|through|thru|subfeed|sub-feed|bypass)(?=[\s,]|$)"
        ),
        port,
        "The input, or the lugs, that are meant stand behind the name and a point.",
        "feeder MSB -> ATS-5 normal  100 A 3p",
        "feeder MSB -> ATS-5.normal  100 A 3p",
        message="the end `{port}` stands behind the name and a point: `{right}`",
        quotes=True,
    ),
    Slip(
        "feed-through-lugs",
        whole(rf"{_THROUGH}|(?:thru|through) lugs?"),
        rewritten("through-lugs"),
        "One thing, one word: other names of the trade are read as none.",
        "panel LP-5 208Y/120  bus 225 A, feed-through lugs",
        "panel LP-5 208Y/120  bus 225 A, through-lugs",
    ),
    Slip(
        "second-lugs",
        whole(r"(?:sub-?feed|second|double)[- ]lugs?"),
        rewritten("subfeed-lugs"),
        "One thing, one word: other names of the trade are read as none.",
        "panel LP-5 208Y/120  bus 225 A, double lugs",
        "panel LP-5 208Y/120  bus 225 A, subfeed-lugs",
    ),
    Slip(
        "rcd-type-first",
        whole(rf"{_RCD}{BB}(?:[tT]ype{BB})?{_RCD_TYPE},?{BB}(?P<n>{N}{B}m?A)"),
        rewritten(r"rcd \g<n>, rcd-type \g<type>"),
        "What it trips at is one fact, its type another; each has its keyword.",
        "feeder HV -> WB  20 A 4p  rcd type B 30 mA",
        "feeder HV -> WB  20 A 4p  rcd 30 mA, rcd-type B",
    ),
    Slip(
        "rcd-type-behind",
        whole(rf"{_RCD}{BB}(?P<n>{N}{B}m?A)[ ,]{B}(?:[tT]ype{BB})?{_RCD_TYPE}"),
        rewritten(r"rcd \g<n>, rcd-type \g<type>"),
        "What it trips at is one fact, its type another; each has its keyword.",
        "feeder HV -> WB  20 A 4p  RCD 30 mA type A",
        "feeder HV -> WB  20 A 4p  rcd 30 mA, rcd-type A",
    ),
    Slip(
        "rcd-type-for-its-current",
        whole(rf"rcd{BB}{_RCD_TYPE},?{BB}(?P<n>{N}{B}mA|0?\.\d+{B}A)"),
        rewritten(r"rcd \g<n>, rcd-type \g<type>"),
        "What it trips at is one fact, its type another; each has its keyword.",
        "feeder HV -> WB  20 A 4p  rcd B 30 mA",
        "feeder HV -> WB  20 A 4p  rcd 30 mA, rcd-type B",
        sound=True,
    ),
    Slip(
        "rcd-type-alone",
        whole(r"[tT]yp[e]?[ -](AC|A|F)"),
        lambda match, place: None if "rcd-type" in place.text else f"rcd-type {match[1]}",
        "The type of a residual current device has its keyword; A, AC and F are no curves.",
        "  F1  16 A 1p+N type A  1.2 kW receptacle",
        "  F1  16 A 1p+N rcd-type A  1.2 kW receptacle",
    ),
    Slip(
        "rcbo-in-one-word",
        whole(
            rf"(?:(?:RCBO|rcbo|FI[/-]?LS){BB})?(?P<curve>[BCD])(?P<n>6|10|13|16|20|25|32|40|50|63){B}A?{B}[/ -]{B}"
            rf"(?:(?P<ma>{N}){B}mA|0[.,](?P<a>0?[1-9]\d?)(?:{B}A)?)(?:{BB}([1-4])[pP](?P<neutral>\+?[nN])?)?"
        ),
        _rcbo,
        "Rating, curve and what trips it at a residual current are three facts; two have a keyword.",
        "  F1  RCBO B16/30mA  1.2 kW receptacle",
        "  F1  16 A curve B, rcd 30 mA  1.2 kW receptacle",
    ),
    Slip(
        "rcd-as-a-main-switch",
        whole(rf"({N}){B}A{BB}(?:RCD|RCCB|rccb|FI){BB}({N}){B}mA|(?:RCD|RCCB|FI){BB}({N}){B}A[ ,/]+({N}){B}mA"),
        _residual_main,
        "A residual current device opens no overload: ahead of a board it is its main switch, with what it trips at.",
        "panel UV-5 400Y/230  40 A RCD 300 mA",
        "panel UV-5 400Y/230  bus 40 A, incomer switch, rcd 300 mA",
        guess=True,
    ),
    Slip(
        "resistance-of-a-rod",
        whole(
            r"(?:(?:earth|ground|grounding|Earth|Ground)[ -]?(?:rod|spike|electrode|resistance)|R_?A|Ra)[ \t\u00a0=:]+"
            rf"({N}){B}(?:ohms?|Ω|Ohm)"
        ),
        lambda match, place: f"resistance {match[1]} ohm" if place.tokens[0].text in BOARDS else None,
        "The resistance of a board's own electrode has its keyword.",
        "panel UV-5 400Y/230  bus 40 A, earthing TT, earth rod 50 ohm",
        "panel UV-5 400Y/230  bus 40 A, earthing TT, resistance 50 ohm",
    ),
    Slip(
        "on-a-tray",
        whole(rf"on{BB}(?:(?:cable|a|the|perforated){BB})*(tray|ladder|basket)"),
        rewritten(r"in \1"),
        "What carries the wires stands behind `in`, whatever it is.",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m  on tray",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m  in tray",
    ),
    Slip(
        "rcd-behind",
        whole(rf"({N}{B}mA){BB}{_RCD}"),
        rewritten(r"rcd \1"),
        "A keyword stands before its value.",
        "feeder HV -> UV  40 A 4p  300 mA RCD",
        "feeder HV -> UV  40 A 4p  rcd 300 mA",
    ),
    Slip(
        "rcd-with-the-rating-of-its-device",
        whole(
            rf"(?:rccb|RCCB|rcbo|RCBO|RCD){BB}(?P<n>(?:6|\d{{2,3}}){B}A(?:{BB}[1-4]p(?:\+N)?)?)"
            rf"(?:[ ,]{B}(?P<t>{N}{B}mA))?"
        ),
        _rated,
        "The bare current is the device's rating; what it trips at is another fact, with the keyword `rcd`.",
        "  F1  RCBO 16 A 1p+N 30 mA  1.2 kW receptacle",
        "  F1  16 A 1p+N rcd 30 mA  1.2 kW receptacle",
        guess=True,
    ),
    Slip(
        "residual-current-device-of-no-current",
        whole(rf"(?:rccb|RCCB|rcbo|RCBO|RCD)(?=,|{B}$|{BB}(?:{N}{B}k?(?:W|VA)\b|[a-z]))"),
        lambda _, place: None if "rcd" in place.text else "rcd 30 mA",
        "A residual current device is told by what it trips at; 30 mA is usual for people, so look at the device.",
        "  F1  RCBO 2 kW receptacle",
        "  F1  rcd 30 mA 2 kW receptacle",
        message="`{wrong}` needs the current that it trips at, such as `{right}`",
        guess=True,
    ),
    Slip(
        "earthing-alone",
        whole("(TN-S|TN-C-S|TN-C|TT|IT)"),
        earthing,
        "The arrangement of earth and neutral has its keyword, and stands where the voltage system is made.",
        "utility NET 400Y/230  fault 10 kA, TN-S",
        "utility NET 400Y/230  fault 10 kA, earthing TN-S",
    ),
    Slip(
        "cable-type-first",
        whole(rf"(?P<type>{_CABLES}){BB}(?P<run>(?P<n>[2-5])[xG×](?P<area>{SQUARE_MM}|1,5|2,5))(?:{B}mm(?:2|²))?"),
        lambda match, _: f"{match['run'].replace(',', '.').replace('×', 'x')}mm2 {match['type']}",
        "Metal, insulation and type of cable stand behind the conductors.",
        "feeder HV -> UV  40 A 4p  NYY-J 5x10  24 m",
        "feeder HV -> UV  40 A 4p  5x10mm2 NYY-J  24 m",
    ),
    Slip(
        "cable-type-apart",
        spelled(rf"(?<=[^\s,])(?P<rest>[\s,]++{N}{B}(?:m|ft)\b.*?)(?<![\s,])[\s,]++(?P<type>{_CABLES})(?=[\s,]|$)"),
        cable_type,
        "Metal, insulation and type of cable stand behind the conductors.",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m NYY-J",
        "feeder HV -> UV  40 A 4p  5G10mm2 NYY-J  24 m",
        message="`{type}` stands behind the conductors",
    ),
    Slip(
        "curve-behind",
        whole(rf"({N}{B}A{BB}[1-4]p(?:\+N)?){BB}([BCDKZ])"),
        # Alone behind a device, B and C may be legs too, unless the line is one of IEC practice.
        lambda match, place: f"{match[1]} curve {match[2]}" if "+N" in match[1] or _IEC.search(place.text) else None,
        "The curve of a device has a keyword.",
        "  F1  16 A 1p+N B  1.2 kW receptacle",
        "  F1  16 A 1p+N curve B  1.2 kW receptacle",
    ),
    Slip(
        "clipped-to-a-wall",
        whole(r"clipped(?:[ -]direct)?(?: to (?:a |the )?wall)?"),
        _method("C"),
        "How a wire is laid is said by its reference method, IEC 60364-5-52.",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m  clipped direct",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m  method C",
    ),
    Slip(
        "laid-in-the-ground",
        whole(r"direct(?:ly)?[ -]buried|buried direct(?:ly)?|(?:direct(?:ly)? )?in (?:the )?(?:ground|earth|soil)"),
        _in_the_ground,
        "How a wire is laid is said by its reference method, IEC 60364-5-52; its depth by `buried`.",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m  in ground",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m  method D2",
    ),
    Slip(
        "centimetres",
        whole(rf"({N}){B}cm"),
        lambda match, _: f"{float(match[1]) / 100:g} m",
        "Lengths are in metres, millimetres, feet or inches.",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m  buried 60 cm",
        "feeder HV -> UV  40 A 4p  5G10mm2  24 m  buried 0.6 m",
    ),
    Slip(
        "reserve-position",
        spelled(rf"(?<=\s)(?:[Rr]eserved?|RESERVE)(?={B}(?:\"|//|$))"),
        reserve,
        "A device without a load is a `spare`, an empty position a `space`; `reserve` is a share kept free.",
        "  6  20 A 1p  reserve",
        "  6  20 A 1p  spare",
    ),
    Slip(
        "range-to-cook-on",
        spelled(rf"(?<=[\s,])range(?={B}(?:,|//|$))"),
        _range,
        "`range` is the band of a supply's voltage; what cooks is a load of a kitchen, or heating in a dwelling.",
        "  6  50 A 2p  8 kW range",
        "  6  50 A 2p  8 kW kitchen",
    ),
    Slip(
        "curve-and-rating",
        whole(rf"(?:(?:LS(?:-Schalter)?|MCB){BB})?([BCDKZ])(6|10|13|16|20|25|32|40|50|63)(?:{B}A)?(?!{BB}[1-4][pP])"),
        curve_and_rating,
        "The bare current is the device's rating; its curve has a keyword.",
        "  F1  B16  1.2 kW receptacle",
        "  F1  16 A curve B  1.2 kW receptacle",
    ),
)
