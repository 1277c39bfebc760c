"""Known slips of conductors and raceways."""

from __future__ import annotations

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import (
    BB,
    KCMIL,
    RACEWAYS,
    SIZE,
    SQUARE_MM,
    B,
    Match,
    N,
    Place,
    conductor_word,
    further,
    raceway_size,
    raw_gauge,
    rewritten,
    spelled,
    whole,
)

_PARTS = "PEN|PE|G|N|IG|(?i:GND|GRD|GRND|GROUND|EGC|EG|EQG|CPC|NEUT|NEU|NEUTRAL)"
_FURTHER = rf"\+{B}(?:PEN|PE|G|N|IG){B}(?:#(?:\d{{1,2}}|[1-4]/0)|{N}{B}(?:kcmil|mm2))"
_JOINED = rf"(?:(?:\+|&|w/|W/|with|and|plus){B})"


def _cores(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """``5G16``, ``3x2.5``; of a size that is a gauge too the writer says which is meant."""
    if place.wrong is None or place.wrong.start != match.start() or place.wrong is place.tokens[0]:
        return None
    mark = match[2].upper() if match[2] in "gG" else "x"
    area = f"{match[1]}{mark}{match[3]}mm2"
    return (area, f"{match[1]}#{match[3]}") if mark == "x" and match[3] in ("4", "6", "10") else area


def _cable_of_cores(match: Match, _: Place) -> str | tuple[str, ...]:
    """``3/C #4``; of ``3 core 2.5 mm2`` the writer says whether one of the cores is the protective conductor."""
    if match[2]:
        return f"{match[1]}#{match[2]}"
    area = match[3].replace("MCM", "kcmil")
    plain = f"{match[1]}x{area}"
    return (plain, f"{match[1]}G{area}") if "mm" in area and int(match[1]) > 2 else plain


def _area_run(match: Match, _: Place) -> str:
    """``3#250 kcmil`` and its kin, or ``+ N #250 kcmil``."""
    return f"{match[1]}x{match[3]}kcmil" if match[1] else f"{match[2]} {match[3]}kcmil"


AREAS: tuple[Slip, ...] = (
    Slip(
        "area-behind-gauge-sign",
        whole(
            rf"(?:\(?(\d{{1,2}})\)?(?:{B}[-x×]?{B}#|{B}-{B}|(?<=\)){B}|{BB})|(\+{B}(?:N|G|IG|PE|PEN)){B}#)"
            rf"((?:[2-9]|1\d)\d\d){B}(?:kcmil|MCM|mcm|KCMIL|Kcmil)"
        ),
        _area_run,
        "`#` is for gauges; a run of conductors sized by their area is count, `x` and area.",
        "feeder MSB -> LP-5  3#250 kcmil + G #4 Cu  30 m",
        "feeder MSB -> LP-5  3x250kcmil + G #4 Cu  30 m",
    ),
    Slip(
        "area-without-unit",
        whole(
            rf"(?:(\d{{1,2}})(?:{B}[-x×]?{B}#|-)|(\+{B}(?:N|G|IG)){BB}#?)({KCMIL})(?!{B}(?:[kKmM]|[AVW]\b|hp\b|ft\b))"
        ),
        _area_run,
        "Gauges end at #4/0; larger conductors are sized by their area, with its unit.",
        "feeder MSB -> LP-5  3#350 + G #3 Cu  30 m",
        "feeder MSB -> LP-5  3x350kcmil + G #3 Cu  30 m",
    ),
    Slip(
        "cable-without-unit",
        whole(rf"(\d{{1,2}})([Ggx×])({SQUARE_MM})(?={BB}[A-Z\d\"]|,|{B}$)"),
        _cores,
        "The size of a conductor has its unit; without one it reads as a name.",
        "feeder HV -> UV  5G16 Cu  24 m",
        "feeder HV -> UV  5G16mm2 Cu  24 m",
    ),
    Slip(
        "conductor-word",
        whole("[a-z][a-z0-9-]*"),
        conductor_word,
        "Metals and insulations are written in capitals.",
        "feeder MSB -> LP-5  3#8 + G #10 cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
    ),
    Slip(
        "two-insulations",
        whole("(THHN|THWN|XHHW|USE|RHH|RHW)/(THHN|THWN|RHW|USE)(-2)?(?:/[A-Z]+(?:-2)?)*"),
        lambda match, _: f"{match[2]}-2" if match[3] else (match[2], match[1]),
        "A wire that bears two marks is used as one of them: `THHN` is for dry places.",
        "feeder MSB -> LP-5  3#8 Cu THHN/THWN-2  30 m",
        "feeder MSB -> LP-5  3#8 Cu THWN-2  30 m",
    ),
    Slip(
        "role-missing",
        whole(r"\+\s*(#\d+(?:/0)?|\d+(?:\.\d+)?\s*(?:kcmil|mm2))(?!\s+(?:N|G|IG|PE|PEN)\b)"),
        lambda match, _: (f"+ G {match[1]}", f"+ N {match[1]}"),
        "What a further conductor is for (`G`, `N`, `PE`) cannot be told from its size.",
        "feeder MSB -> LP-5  3#8 + #10 Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
        message="a further conductor is named and then sized, such as `{right}`",
    ),
)


def _counted(match: Match, place: Place) -> tuple[str, ...] | None:
    """``100 A 2p  #3 Cu``: as many as the poles, or one more."""
    poles = [token.text[0] for token in place.tokens if token.kind == "POLES" and token.end <= match.start()]
    if place.wrong is None or place.wrong.start != match.start() or not poles:
        return None
    if any(token.kind == "RUN" for token in place.tokens):
        return None
    return tuple(f"{int(poles[-1]) + more}#{match[1]}" for more in (0, 1))


RUNS: tuple[Slip, ...] = (
    Slip(
        "metal-before-a-further-conductor",
        whole(
            rf"(?P<metal>Cu|Al|THHN|THWN(?:-2)?|XHHW(?:-2)?){BB}"
            rf"(?P<more>{_FURTHER}(?:{BB}{_FURTHER})*)"
        ),
        rewritten(r"\g<more> \g<metal>"),
        "The metal and the insulation stand behind all conductors of a run.",
        "feeder MSB -> LP-5  100 A 2p  2#3 Cu + G #8  30 m",
        "feeder MSB -> LP-5  100 A 2p  2#3 + G #8 Cu  30 m",
    ),
    Slip(
        "gauge-without-a-count",
        spelled(rf"(?<=[\s,])#(\d{{1,2}}|[1-4]/0)(?={BB}(?:Cu|Al|THHN|THWN|XHHW|\+)|[ ,]*$|{BB}{N}{B}(?:m|ft)\b)"),
        _counted,
        "A run says how many conductors it has: the legs, and one more where it brings the neutral.",
        "feeder MSB -> LP-5  100 A 2p  #3 + G #8 Cu  30 m",
        "feeder MSB -> LP-5  100 A 2p  2#3 + G #8 Cu  30 m",
        guess=True,
    ),
    Slip(
        "ground-in-run",
        whole(rf"{_JOINED}?(?:\(?1\)?{B}-?{B})?(?:#(\d+)|#?(\d/0))(?:{B}AWG)?{B}-?({_PARTS})"),
        lambda match, _: f"+ {further(match[3])} #{match[1] or match[2]}",
        "A conductor added to the run is named first and sized then.",
        "feeder MSB -> LP-5  3#8 1#8G Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #8 Cu  30 m",
    ),
    Slip(
        "ground-joined-by-a-word",
        whole(rf"(?:&|w/|W/|with|and|plus){B}({_PARTS}){BB}#?(\d+(?:/0)?)(?:{B}AWG)?"),
        lambda match, _: f"+ {further(match[1])} #{match[2]}",
        "A conductor added to the run stands behind a `+`.",
        "feeder MSB -> LP-5  3#8 w/G #10 Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
    ),
    Slip(
        "gauge-in-noughts",
        whole(r"(\d+)?(?:-|x|×)?#(0+)(?!/)"),
        lambda match, _: f"{match[1] or ''}#{len(match[2])}/0",
        "Noughts are counted: `4/0` is four of them.",
        "feeder MSB -> LP-5  3#000 Cu  30 m",
        "feeder MSB -> LP-5  3#3/0 Cu  30 m",
    ),
    Slip(
        "cable-of-cores",
        whole(
            rf"(\d{{1,2}}){B}(?:/{B}[cC]|[cC]|[- ]cores?|cond\.?)[ \t\u00a0,x×-]*+"
            rf"(?:#(\d+(?:/0)?)(?:{B}AWG)?|({N}{B}(?:kcmil|MCM|mm2|mm²)))"
        ),
        _cable_of_cores,
        "A cable counts its conductors as a run does.",
        "feeder MSB -> LP-5  3/C #4 Cu  30 m",
        "feeder MSB -> LP-5  3#4 Cu  30 m",
    ),
    Slip(
        "run-of-gauges-by-name",
        whole(rf"(\d{{1,2}})(?:{B}[-x×]{B}|{BB})(?:(\d{{1,2}}|\d/0){B}(?:AWG|awg)|(\d/0))"),
        lambda match, _: f"{match[1]}#{match[2] or match[3]}",
        "A run is the count of its conductors and, with no blank, their gauge behind its sign.",
        "feeder MSB -> LP-5  3-10AWG Cu  30 m",
        "feeder MSB -> LP-5  3#10 Cu  30 m",
    ),
    Slip(
        "run-dash",
        whole(rf"\(?(\d+)\)?{B}[-x×]?{B}#(\d+(?:/0)?)(?:{B}AWG)?|(\d+)[-x×](\d/0)|\((\d+)\){B}(\d/0)"),
        lambda match, _: f"{match[1] or match[3] or match[5]}#{match[2] or match[4] or match[6]}",
        "A run is the count of its conductors and, with no blank, their gauge.",
        "feeder MSB -> LP-5  3-#8 + G #10 Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
    ),
    Slip(
        "gauge-unmarked",
        whole(r"(\+\s*(?:N|G|IG|PE))\s+(\d{1,2}|\d/0)(?:\s*AWG)?"),
        raw_gauge,
        "A wire gauge has its sign, so that it is no bare number.",
        "feeder MSB -> LP-5  3#8 + G 10 Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
    ),
    Slip(
        "electrode-gauge-unmarked",
        whole(rf"electrode{BB}(\d/0)(?:{B}AWG)?(?:{BB}Cu)?"),
        rewritten(r"electrode #\1"),
        "A wire gauge has its sign; the wire to an electrode is of copper.",
        "panel LP-5 208Y/120  electrode 3/0",
        "panel LP-5 208Y/120  electrode #3/0",
    ),
    Slip(
        "size-before-role",
        whole(r"\+\s*(#\d+(?:/0)?|\d+(?:\.\d+)?\s*(?:kcmil|mm2))\s+(N|G|IG|PE|PEN)"),
        rewritten(r"+ \2 \1"),
        "A conductor added to the run is named first and sized then.",
        "feeder MSB -> LP-5  3#8 + #10 G Cu  30 m",
        "feeder MSB -> LP-5  3#8 + G #10 Cu  30 m",
    ),
    Slip(
        "run-blanks",
        whole(rf"(\d+)({B})[xX×*]({B})({N}{B}(?:kcmil|mm2|mm²))"),
        rewritten(r"\1x\4"),
        "A run is one word up to its size.",
        "feeder HV -> UV  3 x 95 mm2 Cu  24 m",
        "feeder HV -> UV  3x95 mm2 Cu  24 m",
    ),
    Slip(
        "size-unit",
        whole(rf"(\d+[x×])?({N}){B}(?:(MCM|mcm|KCMIL|Kcmil|kCMIL)|mm\^2|sqmm|SQMM|sq\.?{B}mm|MM2|qmm)"),
        lambda match, _: f"{match[1] or ''}{match[2]} {'kcmil' if match[3] else 'mm2'}",
        "One unit, one spelling.",
        "feeder MSB -> LP-5  3x250 MCM  30 m",
        "feeder MSB -> LP-5  3x250 kcmil  30 m",
    ),
    Slip(
        "conduit-in-twice",
        whole(rf"in{BB}({SIZE}){B}(?:in\.?|inches|'')(?={BB}[A-Z])"),
        rewritten(r"in \1 inch"),
        "`in` is the word, `inch` the unit.",
        "feeder MSB -> LP-5  30 m  in 2 in EMT",
        "feeder MSB -> LP-5  30 m  in 2 inch EMT",
    ),
    Slip(
        "conduit-size-first",
        whole(rf"(?P<size>{SIZE}){BB}(?:in|inch){BB}(?P<kind>{RACEWAYS})"),
        raceway_size,
        "`in` opens the raceway, `inch` is the unit of its trade size.",
        "feeder MSB -> LP-5  30 m  2 in EMT",
        "feeder MSB -> LP-5  30 m  in 2 inch EMT",
    ),
    Slip(
        "raceway-without-in",
        whole(rf"({N}{B}(?:m|ft)){BB}((?:(?:{SIZE}){B}(?:inch|mm){BB})?(?:{RACEWAYS}))"),
        rewritten(r"\1 in \2"),
        "`in` opens the raceway.",
        "feeder MSB -> LP-5  3#8 Cu  42 m EMT",
        "feeder MSB -> LP-5  3#8 Cu  42 m in EMT",
    ),
    Slip(
        "sets-multiplied",
        whole(
            rf"\(?(\d)\)?{B}(?:[x×*]{B})?\((\d+(?:#|{B}[x×]{B}\d)[^()]*)\)|(\d){B}[x×](?:{B}|{BB})(\d{{1,2}}(?:#|x)[^\s,]+)"
        ),
        lambda match, _: f"{match[1] or match[3]} sets {match[2] or match[4]}",
        "Parallel sets are a count and the word.",
        "feeder MSB -> LP-5  2x(4#3/0) Cu  30 m",
        "feeder MSB -> LP-5  2 sets 4#3/0 Cu  30 m",
    ),
    Slip(
        "sets-of",
        whole(rf"\(?(\d+)\)?(?:{BB}|-)(?:parallel{BB})?(?:sets?|runs?|parallel)(?:{BB}of)?:?(?={BB}[\d(])"),
        lambda match, _: f"{match[1]} set{'s' if match[1] != '1' else ''}",
        "Parallel sets are a count and the word.",
        "feeder MSB -> LP-5  2 sets of 3#4/0 Cu  30 m",
        "feeder MSB -> LP-5  2 sets 3#4/0 Cu  30 m",
    ),
)
