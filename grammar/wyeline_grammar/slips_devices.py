"""Known slips of devices: current, poles, frame, curve, mains."""

from __future__ import annotations

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, VOLTS, B, Match, N, Place, rewritten, spelled, whole

_COUNTS = {"single": 1, "one": 1, "double": 2, "two": 2, "triple": 3, "three": 3, "four": 4}


def _poles(match: Match, _: Place) -> str:
    return f"{match[1] or _COUNTS[match[3]]}p{match[2] or ''}"


_LEAST_TRIP_A = 10.0
"""A smaller figure before a stroke counts poles."""


def _frame(match: Match, _: Place) -> str | None:
    first, second = sorted(float(figure) for figure in match.groups() if figure and figure[-1].isdigit())
    poles = f" {match['poles'][0]}p" if match["poles"] else ""
    return f"{first:g} A{poles} frame {second:g} A" if _LEAST_TRIP_A <= first < second else None


def _frame_by_mark(match: Match, _: Place) -> str | None:
    """``400AF/350AT``; a trip above its frame is a mistake in a figure, which nobody can mend but the writer."""
    frame_a, trip_a = (match[1], match[2]) if match[2] else (match[3], match[1])
    poles = f" {match['poles'][0]}p" if match["poles"] else ""
    return f"{trip_a} A{poles} frame {frame_a} A" if _LEAST_TRIP_A <= float(trip_a) <= float(frame_a) else None


def _switch_and_fuse(match: Match, _: Place) -> str | None:
    """``60AS/40AF``; fuses above their switch are a mistake in a figure, which nobody can mend but the writer."""
    switch_a, fuse_a = float(match[1]), float(match[2])
    poles = f" {match[3]}p" if match[3] else ""
    if fuse_a > switch_a:
        return None
    return f"{fuse_a:g} A{poles} fused" + (f" frame {switch_a:g} A" if switch_a > fuse_a else "")


def _device_slash(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """``20/1`` behind the positions of a circuit or the ends of a feeder; on equipment ``460/3`` may be its volts."""
    before = [token for token in place.tokens if token.end <= match.start()]
    if not before:
        return None
    device = f"{match[1]} A {match[2]}p"
    volts = before[0].kind in ("KIND", "TYPE") and match[1] in VOLTS and match[2] in "13"
    return (f"{match[1]} {match[2]}ph", device) if volts and before[-1].kind in ("NAME", "TEXT", "ARROW") else device


_MCB = rf"(?:(?:LS(?:-Schalter)?|MCB){BB})?"

DEVICES: tuple[Slip, ...] = (
    Slip(
        "device-slash",
        whole(rf"({N}){B}[aA](?:{B}[/-]{B})([1-4])(?:{B}[pP](?:oles?)?)?|({N})A([1-4])[pP]"),
        lambda match, _: f"{match[1] or match[3]} A {match[2] or match[4]}p",
        "A device is its rated current and then its poles.",
        "  1  20A/1P  1.2 kVA receptacle",
        "  1  20 A 1p  1.2 kVA receptacle",
    ),
    Slip(
        "device-slash-bare",
        spelled(r"(?<=\s)(1[56]|[2-9]\d|\d{3,4})/([1-3])(?:[pP])?(?=[\s,]|$)"),
        _device_slash,
        "A device is its rated current and then its poles.",
        "  1  20/1  1.2 kVA receptacle",
        "  1  20 A 1p  1.2 kVA receptacle",
    ),
    Slip(
        "poles-first",
        whole(rf"([1-4])(?:[pP](?:oles?)?(?:{BB}|{B}[/-]{B}|)|/)({N}){B}A(?!{BB}[1-4][pP])"),
        rewritten(r"\2 A \1p"),
        "A device is its rated current and then its poles.",
        "feeder MSB -> LP-5  3P 100 A  30 m",
        "feeder MSB -> LP-5  100 A 3p  30 m",
    ),
    Slip(
        "poles-first-in-detail",
        spelled(rf"(?<=\s)([1-4])P{BB}({N}){B}A(?!{BB}[1-4][pP])"),
        lambda match, place: f"{match[2]} A {match[1]}p" if place.tokens[0].start == match.start() else None,
        "A device is its rated current and then its poles; a circuit that is really called so needs quotes.",
        "  3P 100 A  fuse J",
        "  100 A 3p  fuse J",
        sound=True,
    ),
    Slip(
        "poles-case",
        whole(
            r"([1-4])(?:P|[pP]{2,}|p?o|[ -]?[Pp]oles?|[Pp]ol|[ -][Pp])(\+N)?"
            r"|(single|one|double|two|triple|three|four)[ -][Pp]oles?"
        ),
        _poles,
        "Poles are a figure and a small p.",
        "  3  20 A 1P  1.2 kVA receptacle",
        "  3  20 A 1p  1.2 kVA receptacle",
    ),
    Slip(
        "frame-and-trip",
        whole(
            rf"({N}){B}A(?:F{B}[/,]?{B}({N}){B}AT|T{B}[/,]?{B}({N}){B}AF)"
            rf"(?:{B}[/,]?{B}(?P<poles>[1-4]{B}-?[pP])(?:ole)?)?"
        ),
        _frame_by_mark,
        "The bare current is the device's setting; its frame has a keyword.",
        "feeder MSB -> LP-5  400AF/350AT 3p",
        "feeder MSB -> LP-5  350 A 3p frame 400 A",
    ),
    Slip(
        "trip-or-frame-alone",
        whole(rf"({N}){B}A(?P<mark>[TF])"),
        lambda match, _: f"{match[1]} A" if match["mark"] == "T" else f"frame {match[1]} A",
        "The bare current is the device's setting; its frame has a keyword.",
        "feeder MSB -> LP-5  350AT 3p",
        "feeder MSB -> LP-5  350 A 3p",
    ),
    Slip(
        "frame-slash-trip",
        whole(rf"({N})/({N})(?:{B}A|(?={BB}[1-4][pP]))(?:{BB}(?P<poles>[1-4][pP]))?"),
        _frame,
        "Offices disagree on which of the two comes first, so the frame has a keyword.",
        "feeder MSB -> LP-5  400/350 A 3p",
        "feeder MSB -> LP-5  350 A 3p frame 400 A",
    ),
    Slip(
        "curve-first",
        whole(rf"{_MCB}([BCDKZ])({N})(?:{B}A)?{BB}([1-4])[pP](\+?[nN])?"),
        lambda match, _: f"{match[2]} A {match[3]}p{'+N' if match[4] else ''} curve {match[1]}",
        "The bare current is the device's rating; its curve has a keyword.",
        "feeder HV -> UV  B16 1p  24 m",
        "feeder HV -> UV  16 A 1p curve B  24 m",
    ),
    Slip(
        "curve-between",
        whole(rf"({N}){B}A{BB}([BCDKZ])(?:{BB}([1-4])[pP](\+?[nN])?)?"),
        lambda match, _: (
            f"{match[1]} A{f' {match[3]}p' if match[3] else ''}{'+N' if match[4] else ''} curve {match[2]}"
        ),
        "Rating and poles stand together; the curve has a keyword.",
        "  F1  16 A B 1p  1.2 kW",
        "  F1  16 A 1p curve B  1.2 kW",
    ),
    Slip(
        "switch-slash-fuse",
        whole(rf"({N}){B}AS{B}/{B}({N}){B}AF(?:(?:{B}/{B}|{BB})([1-4])[pP])?"),
        _switch_and_fuse,
        "A fused switch is rated by its fuses; the switch itself, where it is larger, is its frame.",
        "  1  60AS/40AF 2p  2 kW process",
        "  1  40 A 2p fused frame 60 A  2 kW process",
    ),
    Slip(
        "size-of-a-fuse-link",
        whole(r"NH[- ]?(?:000|00|[0-4]a?)(?:[- ]?(?P<class>gG|gL|aM))?"),
        lambda match, place: None if "fuse" in place.text else f"fuse {(match['class'] or 'gG').replace('gL', 'gG')}",
        "What a fuse breaks is said by its class; the size of its link is that of its holder. Most are gG, so look.",
        "feeder HV -> UV  NH00 63 A 3p  24 m",
        "feeder HV -> UV  fuse gG 63 A 3p  24 m",
        guess=True,
    ),
    Slip(
        "fuse-without-its-word",
        whole(rf"(?<!fuse )(?<!fuse  )(gG|gL|gM|aM|gR|aR){BB}({N}{B}A(?:{BB}[1-4]p(?:\+N)?)?)"),
        rewritten(r"\2 fuse \1"),
        "The bare current is the device's rating; the class of a fuse has a keyword.",
        "feeder HV -> UV  gG 63 A 3p  24 m",
        "feeder HV -> UV  63 A 3p fuse gG  24 m",
    ),
    Slip(
        "class-of-a-fuse-alone",
        whole(r"(?<!fuse )(?<!fuse  )(gG|gL|gM|aM|gR|aR)"),
        rewritten(r"fuse \1"),
        "The class of a fuse has a keyword.",
        "feeder HV -> UV  63 A 3p  gG  24 m",
        "feeder HV -> UV  63 A 3p  fuse gG  24 m",
    ),
    Slip(
        "main-lugs",
        whole(r"(?:main )?(?:MLO|M\.L\.O\.)"),
        rewritten("main lugs"),
        "Capitals are for names; the words say what it is.",
        "panel LP-5 208Y/120  bus 225 A, MLO",
        "panel LP-5 208Y/120  bus 225 A, main lugs",
    ),
)
