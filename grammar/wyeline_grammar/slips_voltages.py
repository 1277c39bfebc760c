"""Known slips of voltages: the figures, phases and wires of a nameplate or a drawing, in whatever order and signs."""

from __future__ import annotations

import re

from wyeline_grammar.attributes import use_of
from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, NAMED, VOLTS, WYES, B, Match, N, Place, spelled, whole

_UNIT = r"(?:[vV](?:olts?)?{B}(?:AC|ac|~)?|[kK][vV])".replace("{B}", B)
_PHASE = (
    rf"(?:[13]{B}-?{B}(?:PH(?:ASE)?|[Pp]h(?:ase)?|[ØøφΦ]|P(?![A-Za-z]|{BB}\d+{B}A\b))"
    r"|(?:three|single|Three|Single|THREE|SINGLE)[ -](?:phase|Phase|PHASE)"
    f"|[13](?:/?N)?(?:/PE)?{B}~)"
)
_WIRES = rf"[234]{B}-?(?:[wW](?:ire)?|WIRE)"
_WINDING = r"(?:delta|Delta|DELTA|wye|Wye|WYE|star|[ΔY])"
_BETWEEN = "[ \t\u00a0,/-]*+"  # possessive, as are its like: a wide gap must not be tried blank by blank
_VOLTAGE = (
    rf"(?P<before>[13](?:/?N)?(?:/PE)?{B}~{B})?(?P<y>[Yy])?(?P<one>{N})(?P<unit>{B}{_UNIT})?"
    rf"(?:(?P<sign>[Yy]/?|[/-])(?P<other>{N})(?P<unit2>{B}{_UNIT})?(?P<y2>[Yy])?)?"
    rf"(?:{_BETWEEN}(?P<phase>{_PHASE}))?(?:{_BETWEEN}(?P<wires>{_WIRES}))?(?:{_BETWEEN}(?P<winding>{_WINDING}))?"
)
_SINGLE = frozenset({"100", "110", "115", "120", "127", "220", "230", "240", "277"})
"""Volts that are oftener on two wires than on three (common practice, no source)."""
_WYE, _BAND = 3**0.5, 1.25
_TWICE = 0.01
"""How far a ratio may be from two."""
_HIGH_LEG = "(?:[hH]igh|HIGH|[wW]ild|WILD|[sS]tinger|STINGER|[rR]ed)[ -](?:[lL]eg|LEG)"
_LEAST_LINE_V = 200.0
"""Between the legs of a three-phase system (common practice, no source)."""


def _meant(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """The voltage as the language writes it; both where the drafter has to say which of two systems is meant."""
    said = f"{match['before'] or ''}{match['phase'] or ''}"
    phases = "3" if said[:1] in ("3", "t", "T") else "1" if said else ""
    neutral = "N" in said or (match["wires"] or "").startswith("4")
    winding = (match["winding"] or "").lower()
    if not (match["unit"] or match["unit2"] or match["sign"] or said or match["wires"] or winding):
        return None
    if match["unit"] and "k" in match["unit"].lower() and match["other"] is None:
        wye = f"{match['one']}Y/{float(match['one']) / _WYE:.3g} kV"
        if neutral or winding in ("wye", "star", "y"):
            return wye, f"{match['one']} kV 3ph"
        return f"{match['one']} kV {phases}ph" if phases else None
    if match["other"] is None:
        return _single(match, phases, neutral, winding)
    meant = _pair(match, phases, winding)
    two_sides = place.tokens[0].text == "transformer" and not any(token.kind == "ARROW" for token in place.tokens)
    return meant if not two_sides or (isinstance(meant, str) and "Y/" in meant) else None


def _single(match: Match, phases: str, neutral: bool, winding: str) -> str | tuple[str, ...] | None:
    volts = match["one"]
    if not match["unit"] and volts not in VOLTS:
        return None
    if (winding in ("wye", "star", "y") or (neutral and phases != "1")) and volts in WYES:
        return f"{volts}Y/{WYES[volts]}"
    if neutral and phases == "3":
        return f"{volts}Y/{float(volts) / _WYE:.0f}", f"{volts} 3ph"
    if not phases and not winding and (match["wires"] or "").startswith("3") and volts in _SINGLE:
        return f"{volts} 3ph", f"{float(volts) / 2:g}/{volts}"  # three legs, or two and the middle between them
    if phases or (match["wires"] or "").startswith("3") or winding in ("delta", "δ"):
        return f"{volts} {phases or '3'}ph"
    if re.search("[aA~]", match["unit"] or ""):
        both = f"{volts} 3ph", f"{volts} 1ph"
        return both[::-1] if volts in _SINGLE else both
    return None


def _pair(match: Match, phases: str, winding: str) -> str | tuple[str, ...] | None:
    first, second = float(match["one"]), float(match["other"])
    low, high = sorted((first, second))
    in_kv = "k" in f"{match['unit'] or ''}{match['unit2'] or ''}".lower()
    unit = " kV" if in_kv else ""
    if not low or not (match["unit"] or match["unit2"] or in_kv or {match["one"], match["other"]} <= VOLTS):
        return None
    ratio = high / low
    if abs(ratio - _WYE) < 0.02 * _WYE:
        wye = f"{high:g}Y/{low:g}{unit}"
        if not phases and (match["wires"] or "").startswith("3"):
            return f"{wye} 1ph", f"{high:g}{unit} 3ph"  # two legs and the neutral, or three legs
        return f"{wye}{' 1ph' if phases == '1' else ''}"
    if match["y"] or match["y2"] or (match["sign"] or "").upper().startswith("Y"):
        return None  # figures that are no wye's: a rule says what they would have to be
    if match["sign"] == "-" and ratio < _BAND and phases:
        return f"{low:g}-{high:g}{unit} {phases}ph"
    if abs(ratio - 2) > _TWICE:
        return None
    split, high_leg = f"{low:g}/{high:g}{unit}", f"{high:g}/{low:g}{unit} 3ph"
    wires = match["wires"] or ""
    if phases == "1" or wires.startswith("3"):
        return split
    if wires.startswith("4") or winding in ("delta", "δ") or (phases == "3" and first > second):
        return high_leg
    return split if first < second and not phases else (split, high_leg)


def _two_connections(match: Match, place: Place) -> tuple[str, ...] | None:
    """The plate of a machine of two voltages, one twice the other."""
    low, high = match[1], match[2]
    kind = place.tokens[0].text
    if kind not in ("motor", "load", "drive") or (kind != "motor" and float(low.split("-")[0]) < _LEAST_LINE_V):
        return None
    if abs(float(high) / float(low.split("-")[-1]) - 2) > _TWICE:
        return None
    phases = "3ph" if match["phase"][0] in "3tT" else "1ph"
    return f"{high} {phases}", f"{low} {phases}"


_SPELLED_RIGHT = rf"(?:{N}Y/{N}|{N}/{N}|{N}(?=[ kV]*[13]ph))(?:{B}k?V)?(?:{B}[13]ph)?"


def _high_leg(match: Match, place: Place) -> str | None:
    """``240/120 delta high leg B``: the delta whose one winding has its middle brought out."""
    one, other = float(match["one"]), match["other"]
    low, high = sorted((one, float(other))) if other else (one / 2, one)
    if not low or abs(high / low - 2) > _TWICE or (other is None and match["one"] != "240"):
        return None
    kind = place.tokens[0].text
    leg = match["leg"] if match["leg"] and use_of(kind, "high") is not None else None
    return f"{high:g}/{low:g} 3ph" + (f"  high {leg}" if leg else "")


def _voltage_behind(match: Match, place: Place) -> str | None:
    """A voltage that stands behind other facts of a piece of equipment."""
    wrong = place.wrong
    if wrong is None or wrong.kind != "VOLTAGE" or wrong.start != match.start("volts"):
        return None
    if place.tokens[0].kind not in ("KIND", "TYPE") or place.tokens[2].kind == "NAME":  # a name of several words
        return None
    volts = re.sub(r"\bto\b", "->", match["volts"])
    return f"{match['lead']}{volts}  {match['first']}"


def _is_name(match: Match, place: Place) -> bool:
    """Whether the match is a word that reads as the name of a system."""
    return any(token.kind == "NAME" and token.start == match.start() for token in place.tokens[2:])


_WHY = "A voltage is its figures with `Y/`, `3ph` or `1ph`; what these say already is not said again."

VOLTAGES: tuple[Slip, ...] = (
    Slip(
        "high-leg-of-a-delta",
        whole(
            rf"{_VOLTAGE}{_BETWEEN}(?:[dD]elta{BB})?{_HIGH_LEG}(?:{BB}(?:[dD]elta|DELTA))?"
            rf"(?:[ \t\u00a0=]{{1,3}}(?:(?:on|phase|leg){BB})?(?P<leg>[ABC]))?"
            rf"(?:{_BETWEEN}{_PHASE})?(?:{_BETWEEN}{_WIRES})?"
        ),
        _high_leg,
        "The delta with a high leg has its two voltages and `3ph`; which leg is the high one has the keyword `high`.",
        "panel LP-5 240/120 delta, high leg B, bus 225 A",
        "panel LP-5 240/120 3ph  high B, bus 225 A",
    ),
    Slip(
        "voltage-in-brackets",
        spelled(rf"(?<=\s)\(({N}(?:Y?/{N})?{B}(?:k?V)?(?:{BB}[13]ph)?)\)(?=[\s,]|$)"),
        lambda match, place: match[1] if place.tokens[0].kind == "KIND" else None,
        "Signs of a drawing that only set a figure apart are left out.",
        "panel LP-5 (208Y/120)  bus 225 A",
        "panel LP-5 208Y/120  bus 225 A",
    ),
    Slip(
        "volts-phases-hertz",
        whole(
            rf"({N}(?:-{N})?)(?:{B}[vV])?{B}(?P<sign>[/-]){B}([13])(?:{B}[pP][hH])?{B}(?P=sign){B}(?:50|60)(?:{B}[hH][zZ])?"
        ),
        lambda match, _: f"{match[1]} {match[3]}ph",
        "Phases stand behind the volts; the frequency is that of what feeds it.",
        "motor P-5  460/3/60  15 hp",
        "motor P-5  460 3ph  15 hp",
    ),
    Slip(
        "volts-of-two-connections",
        whole(rf"({N}(?:-{N})?)(?:{B}[vV])?[/-]({N})(?:{B}[vV])?{_BETWEEN}(?P<phase>{_PHASE})"),
        _two_connections,
        "A machine that can be connected for either voltage is connected for one; which, stands on the drawing.",
        "motor P-5  208-230/460V 3PH  15 hp",
        "motor P-5  460 3ph  15 hp",
    ),
    Slip(
        "voltage-of-a-nameplate",
        whole(rf"{_VOLTAGE}(?!{B}(?:k?A|k?VA|k?W|hp|mm|inch|ft|m)\b)"),
        _meant,
        _WHY,
        "motor P-5  460V 3PH  15 hp",
        "motor P-5  460 3ph  15 hp",
    ),
    Slip(
        "voltage-behind-a-fact",
        spelled(
            rf"(?P<lead>^(?:type{BB})?[a-z]+{BB}(?:{NAMED})[\s,]++)(?P<first>[^\"]+?)(?<![\s,])[\s,]++"
            rf"(?P<volts>{_SPELLED_RIGHT}(?:{B}(?:->|to\b){B}{_SPELLED_RIGHT})?)(?=[\s,]|$)"
        ),
        _voltage_behind,
        "The voltage stands right behind the name.",
        "transformer TX-5  75 kVA, 480 3ph -> 208Y/120",
        "transformer TX-5  480 3ph -> 208Y/120  75 kVA",
        quotes=True,
        message="the voltage stands right behind the name",
    ),
    Slip(
        "voltage-in-one-word",
        whole(_VOLTAGE),
        lambda match, place: _meant(match, place) if _is_name(match, place) else None,
        f"{_WHY} Written in one word it reads as a name.",
        "motor P-5  460V-3PH  15 hp",
        "motor P-5  460 3ph  15 hp",
        sound=True,
    ),
    Slip(
        "wye-without-its-neutral",
        whole(rf"(\d{{3}})Y/(?:{BB}(\d{{3}}))?"),
        lambda match, _: f"{match[1]}Y/{match[2] or WYES[match[1]]}" if match[1] in WYES else None,
        _WHY,
        "panel LP-5 208Y/  bus 225 A",
        "panel LP-5 208Y/120  bus 225 A",
    ),
    Slip(
        "wires-beside-a-voltage",
        whole(rf"[234]{B}-?(?:wires?|WIRE)"),
        lambda match, place: "" if any(t.kind == "VOLTAGE" and t.end <= match.start() for t in place.tokens) else None,
        "Which wires there are, the voltage says: a count beside it could only repeat or contradict it.",
        "panel LP-5 208Y/120  bus 225 A, 4 wire",
        "panel LP-5 208Y/120  bus 225 A, ",
        guess=True,
    ),
)
