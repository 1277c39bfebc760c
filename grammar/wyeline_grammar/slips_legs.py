"""Known slips of legs and of the ends of feeders: legs behind a device or a board, ends of several words, arrows."""

from __future__ import annotations

import re

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, NAMED, B, Match, Place, spelled
from wyeline_grammar.vocabulary import KINDS, word_kind

_LEG = r"L[123]"
_LEGS = rf"{_LEG}(?:[ ,/+&-]{{0,3}}{_LEG})*"
_AMONG_LETTERS = r"(?:[ABC](?:[ ,/&-]{0,3}|[ ]and[ ])[ABC](?:(?:[ ,/&-]{0,3}|[ ]and[ ])[ABC])?)"
_KIND = f"(?:{'|'.join(sorted(KINDS, key=len, reverse=True))}|board|service)"
_NAME = r"[^\W\d_a-z][\w.-]*"
_LABELLED = rf"(?:[^\s:]+{B}:{B})?"


def _of_a_circuit(match: Match, place: Place) -> str | None:
    """``F5 L1,L2,L3 16 A`` and ``F1 16 A curve B L1``: the legs behind the label."""
    if place.statement or place.tokens[0].kind != "NAME" or '"' in match[0]:
        return None
    legs = dict.fromkeys(re.findall(_LEG, match["legs"]))
    return f"{match['lead']}{match['label']}[{' '.join(legs)}]{match['rest']}"


def _of_a_feeder(match: Match, _: Place) -> str | None:
    """``MSB -> LP-5 A-C``: the legs behind the end that gives them."""
    letters = re.findall(_LEG, match["legs"]) or re.findall("[ABC]", match["legs"])
    if len(set(letters)) != len(letters):
        return None
    legs = (" " if letters[0][0] == "L" else "").join(letters)
    return f"{match['lead']}{match['source']}[{legs}]{match['between']}{match['target']}"


def _end_of_several_words(match: Match, _: Place) -> str | None:
    words = match["name"].split()
    letters = words[:-1] if words[-1].isdigit() else words
    if any(c.isdigit() for word in letters for c in word) or any(word_kind(w) != "PLAIN" for w in words):
        return None
    return f'{match["lead"]}"{" ".join(words)}" ->'


def _names_alone(match: Match, _: Place) -> str | None:
    told = match["from"] or match["first"] or match["second"]
    return f"{match['lead']}{match['source']} -> {match['target']}" if told else None


LEGS: tuple[Slip, ...] = (
    Slip(
        "legs-of-a-circuit-apart",
        spelled(
            rf"^(?P<lead>\s+)(?P<label>{_NAME})(?<=[\w.-])(?P<rest>(?:{BB}[^\s\[\]]+)*?)(?<!\bleg)(?<!\bwith)(?<!\bin)"
            rf"(?<![\s,])[\s,]++(?P<legs>{_LEGS})(?=[\s,]|$)"
        ),
        _of_a_circuit,
        "The legs of a circuit stand in brackets right behind its label.",
        "  F5 L1,L2,L3  16 A 3p  5 kW process",
        "  F5[L1 L2 L3]  16 A 3p  5 kW process",
    ),
    Slip(
        "legs-behind-the-end-of-a-feeder",
        spelled(
            rf"^(?P<lead>feeder{BB}{_LABELLED})(?P<source>{NAMED})(?P<between>{B}(?:->|to){B})(?P<target>{NAMED}){BB}"
            rf"(?:(?:phases?|legs?|on|Phases?|Legs?){BB})?(?P<legs>{_LEGS}|{_AMONG_LETTERS})(?=[\s,]|$)"
        ),
        _of_a_feeder,
        "The legs that a feeder takes stand in brackets behind what gives them.",
        "feeder MSB -> LP-5 A-C  100 A 2p",
        "feeder MSB[AC] -> LP-5  100 A 2p",
        quotes=True,
        guess=True,
    ),
)
ENDS: tuple[Slip, ...] = (
    Slip(
        "first-end-of-several-words",
        spelled(
            rf"^(?P<lead>feeder{BB}{_LABELLED})(?P<name>{_NAME}(?:{BB}[^\W\d_][\w.-]*)+(?:{BB}\d{{1,2}})?){B}"
            r"(?:->|>|to\b|[–—-](?=\s))"
        ),
        _end_of_several_words,
        "A blank ends a name, so a name of several words stands in quotes.",
        "feeder CITY POWER to MSB  400 A 3p",
        'feeder "CITY POWER" -> MSB  400 A 3p',
        message="a name of several words stands in quotes",
    ),
    Slip(
        "kinds-in-front-of-ends",
        spelled(
            rf"^(?P<lead>feeder{BB}{_LABELLED})(?P<from>from{BB})?(?P<first>{_KIND}{BB})?(?P<source>(?:{NAMED})(?:\[[^\]]*\])?){BB}"
            rf"(?:->|to|>){BB}(?P<second>{_KIND}{BB})?(?P<target>{NAMED})"
        ),
        _names_alone,
        "The ends of a feeder are names alone: what they are, their own lines say.",
        "feeder from panel LP-5 to panel LP-6  100 A 3p",
        "feeder LP-5 -> LP-6  100 A 3p",
        message="the ends of a feeder are names alone: `{right}`",
        quotes=True,
    ),
    Slip(
        "hyphen-for-an-arrow",
        spelled(rf"^(?P<lead>feeder{BB}{_LABELLED}(?:{NAMED})(?:\[[^\]]*\])?{BB})-(?={BB}[^\W\d_a-z]|{BB}\")"),
        lambda match, _: f"{match['lead']}->",
        "The arrow shows which way power flows; it is a hyphen and a bracket.",
        "feeder MSB - LP-5  100 A 3p",
        "feeder MSB -> LP-5  100 A 3p",
        message="between the two ends of a connection stands `->`",
        quotes=True,
    ),
)
