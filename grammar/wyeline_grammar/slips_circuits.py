"""Known slips of rows and small devices: numbers with marks, counts, cables by gauge, curves, power factors."""

from __future__ import annotations

import re

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, SQUARE_MM, B, Match, N, Place, rewritten, spelled, whole

_CURRENTS = "FLA|MCA|MOCP|LRA|fla|mca|mocp|lra"
_WHY_KEY = "A keyword stands before its value."


def _numbered(match: Match, place: Place) -> str | None:
    return None if place.statement else f"{match['lead']}{match['number']}"


def _beside_the_cores(match: Match, _: Place) -> str | tuple[str, ...]:
    """``4x16/16 mm2``; beside three cores it may be the neutral as well (TN-C, IEC 60364-1)."""
    both = tuple(f"{match[1]}x{match[2]}mm2 + {part} {match[3]}mm2" for part in ("PE", "PEN"))
    return both if match[1] == "3" else both[0]


def _outlets(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """``(6) recept``; whether a load behind it is that of one or of all, nobody but the writer can tell, and one before
    it is as likely as not that of all."""
    before = place.text[: match.start()]
    load = rf"\d{B}k?(?:VA|W)\b"
    if place.statement or place.tokens[0].start >= match.start() or re.search(load, before):
        return None
    written = "receptacle" in before.split() if match[3] else "lighting" in before.split()
    word = "" if written else " receptacle" if match[3] else " lighting"
    counted = f"count {match[1] or match[2]}{word}"
    if not re.search(load, place.text[match.end() :]):
        return counted
    return None if '"' in place.text else (counted, f'{word} "{match[0]}"'.lstrip())


ROWS: tuple[Slip, ...] = (
    Slip(
        "number-with-a-mark",
        spelled(
            rf"^(?P<lead>\s+)(?:#|(?:[cC]kt|CKT|[cC]ct|[cC]ircuit)\.?{BB}#?)?(?P<number>\d+(?:,\d+)*)[:.)]?(?={BB}\S)"
        ),
        _numbered,
        "A circuit begins with its positions alone.",
        "  ckt 1  20 A 1p  1 kVA lighting",
        "  1  20 A 1p  1 kVA lighting",
        message="a circuit begins with its positions alone: `{right}`",
    ),
    Slip(
        "both-currents-of-a-unit",
        whole(rf"({N})(?:{B}A)?{BB}(?:MCA|mca){B}[,/]?{B}({N})(?:{B}A)?{BB}(?:MOCP|mocp|MOP)"),
        rewritten(r"mca \1 A, mocp \2 A"),
        _WHY_KEY,
        "load RTU-5 480 3ph  28 MCA 40 MOCP",
        "load RTU-5 480 3ph  mca 28 A, mocp 40 A",
    ),
    Slip(
        "so-many-outlets",
        whole(
            rf"(?:\((\d{{1,2}})\)|(\d{{1,2}})){BB}(?:(recept(?:acle)?s?|rcpts?|outlets?)|lights?|fixtures?|luminaires?)\.?"
        ),
        _outlets,
        "How many there are stands behind `count`, with the load of one before it.",
        "  1  20 A 1p  (6) recept",
        "  1  20 A 1p  count 6 receptacle",
    ),
    Slip(
        "current-before-its-word",
        whole(rf"({N})(?:{B}A)?{BB}({_CURRENTS})(?!{BB}{N}(?:{B}A)?(?![ \t]*(?:{_CURRENTS})))"),
        lambda match, _: f"{match[2].lower()} {match[1]} A",
        _WHY_KEY,
        "  1,3,5  30 A 3p  14 FLA motor",
        "  1,3,5  30 A 3p  fla 14 A motor",
    ),
    Slip(
        "current-behind-its-word",
        whole(rf"(FLA|MCA|MOCP|LRA|fla|mca|mocp|lra)[ \t\u00a0=:]*({N})(?!{B}[\w.,])"),
        lambda match, _: f"{match[1].lower()} {match[2]} A",
        "A current has its unit, and its word small letters.",
        "motor P-5 460 3ph  15 hp, FLA 21",
        "motor P-5 460 3ph  15 hp, fla 21 A",
    ),
    Slip(
        "so-many-of-them",
        whole(rf"\(?(\d+)\)?{B}(?:[x×@]|ea\.?{BB}@?){B}({N}){B}(VA|kVA|W|kW)|({N}){B}(VA|kVA|W|kW){B}[x×]{B}(\d+)"),
        lambda match, _: f"{match[2] or match[4]} {match[3] or match[5]} count {match[1] or match[6]}",
        "The load of one stands first, and how many there are behind `count`.",
        "  1  20 A 1p  6 x 180 VA receptacle",
        "  1  20 A 1p  180 VA count 6 receptacle",
    ),
    Slip(
        "cable-by-gauge-and-cores",
        whole(
            rf"#?(14|12|10|8|6|4|2)[/-]([2-4])(?:{B}(?:w/?{B}(?:G|GND|g|gnd)|WG|with ground|AWG))?"
            rf"(?={BB}(?:MC|NM|AC|UF|SE|TC|BX)\b)"
        ),
        rewritten(r"\2#\1 + G #\1"),
        "A cable counts its conductors as a run does; its equipment ground is named.",
        '  1  20 A 1p  1 kVA receptacle  "Bench"  12/2 MC  60 ft',
        '  1  20 A 1p  1 kVA receptacle  "Bench"  2#12 + G #12 MC  60 ft',
        guess=True,
    ),
    Slip(
        "cable-and-its-protective-conductor",
        whole(
            rf"(\d)[x×](?=[\d.]+[/+][\d.]+{B}mm|(?:{SQUARE_MM})\+(?:{SQUARE_MM})(?![\d.#/x]))"
            rf"({N})[/+]({N})(?:{B}mm(?:2|²))?"
        ),
        _beside_the_cores,
        "A protective conductor of its own size is named and then sized.",
        "feeder HV -> UV  63 A 3p  4x16/16 mm2 Cu  32 m",
        "feeder HV -> UV  63 A 3p  4x16mm2 + PE 16mm2 Cu  32 m",
    ),
    Slip(
        "fuses-of-three",
        whole(rf"([34])[x×]({N}){B}A(?!{BB}[1-4][pP])"),  # `2x40 A` may be two devices
        rewritten(r"\2 A \1p"),
        "A device is its rated current and then its poles.",
        "  F2  3x16 A curve C  11 kW ev",
        "  F2  16 A 3p curve C  11 kW ev",
    ),
    Slip(
        "switched-neutral-case",
        whole(r"([1-4])[pP]\+?n|([1-4])(?:PN|pN)"),
        lambda match, _: f"{match[1] or match[2]}p+N",
        "A pole that opens the neutral is `+N`.",
        "  F1  16 A 1p+n curve B",
        "  F1  16 A 1p+N curve B",
    ),
    Slip(
        "curve-in-words",
        whole(
            r"(?:([BCDKZ])[- ](?:[cC]urve|[cC]har(?:acteristic)?\.?)"
            rf"|(?:[tT]ype|[cC]har(?:acteristic)?\.?){BB}([BCDKZ]))"
        ),
        lambda match, _: f"curve {match[1] or match[2]}",
        _WHY_KEY,
        "  F2  32 A 4p C-curve  11 kW ev",
        "  F2  32 A 4p curve C  11 kW ev",
    ),
    Slip(
        "cosine",
        whole(rf"[cC][oO][sS]{B}(?:[-_]?{B}(?:phi|Phi|PHI)|[φϕΦ]){B}[=:]?{B}(\d?)[.,](\d+)"),
        lambda match, _: f"pf {match[1] or '0'}.{match[2]}",
        "The cosine of the angle is the power factor, `pf`.",
        "  F2  32 A 3p  11 kW motor, cos phi 0.9",
        "  F2  32 A 3p  11 kW motor, pf 0.9",
    ),
    Slip(
        "continuous-cut-short",
        whole(r"[cC]ont\.?|CONT\.?"),
        rewritten("continuous"),
        "`continuous` says three hours or more.",
        "  1  20 A 1p  1 kVA cont. lighting",
        "  1  20 A 1p  1 kVA continuous lighting",
    ),
    Slip(
        "fault-current-by-its-sign",
        whole(
            rf"(?:I[kK](?:\"|''|″|3)?|[iI][sS][cC]|ISC|I[cC]{{1,2}}|AFC|SCC|PSCC"
            rf"|(?:avail(?:able)?\.?{BB})?fault{BB}current)[ \t\u00a0=:]*+({N}){B}([kK]?A)"
        ),
        lambda match, place: f"fault {match[1]} {match[2].replace('K', 'k')}" if place.statement else None,
        "The fault current that a source delivers has a keyword.",
        "utility NET 400Y/230  Ik 10 kA",
        "utility NET 400Y/230  fault 10 kA",
        quotes=True,
    ),
    Slip(
        "method-in-words",
        whole(rf"(?:installation|install\.?|inst\.?|laying|reference){BB}method{B}[:=]?{BB}([A-G]\d?)"),
        rewritten(r"method \1"),
        "The method of installation has the keyword `method`.",
        "feeder HV -> UV  63 A 3p  32 m, installation method C",
        "feeder HV -> UV  63 A 3p  32 m, method C",
    ),
)
