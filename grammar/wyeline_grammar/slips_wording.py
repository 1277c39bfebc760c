"""Known slips of texts, keywords and arrows."""

from __future__ import annotations

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import (
    BB,
    NAMED,
    SIZE,
    B,
    N,
    close_quote,
    equals_sign,
    hyphen,
    keyword_case,
    one_an_action,
    rewritten,
    second_side,
    secondary,
    spelled,
    trade_word,
    value_first,
    ways,
    whole,
    without,
)

_ACTED = rf"(?:{NAMED})(?:\.[a-z]+|{B}->{B}(?:{NAMED}))?"
"""What an action of a scenario names: equipment, an input of it, or a feeder by its ends."""

WORDING: tuple[Slip, ...] = (
    Slip(
        "curly-quotes",
        spelled('[“”„«»]([^“”„«»"]*)[“”„«»]'),
        rewritten(r'"\1"'),
        "Texts stand in straight quotes; word processors bend them.",
        "  1  20 A 1p  “Bench, north”",
        '  1  20 A 1p  "Bench, north"',
        quotes=True,
    ),
    Slip(
        "single-quotes",
        whole("'([^'\"]*)'"),
        rewritten(r'"\1"'),
        "Texts stand in double quotes; one stroke alone reads as feet.",
        "panel 'Pump room' 208Y/120",
        'panel "Pump room" 208Y/120',
    ),
    Slip(
        "inch-mark",
        spelled(rf"(?:\b(in){BB})?(?<!\d)({SIZE}){B}(?:\"|''|″|”){B}(?=[A-Z])"),
        lambda match, place: f"{'' if place.text.startswith('raceway') and not match[1] else 'in '}{match[2]} inch ",
        "Two strokes open a text, so the unit is written out.",
        'feeder GRID -> MSB  40 m  in 2" EMT',
        "feeder GRID -> MSB  40 m  in 2 inch EMT",
        quotes=True,
    ),
    Slip(
        "unclosed-quote",
        spelled(r'"(?:(?!//)[^"])*+(?=//|\Z)'),
        close_quote,
        "A text ends on its own line, at the next quote.",
        'include "boiler-house.wye',
        'include "boiler-house.wye"',
        message="the text `{wrong}` has no closing quote",
        quotes=True,
    ),
    Slip(
        "comment-sign",
        spelled(r"(?<!\S)(?:#|;|--|/\*)(?=\s|$)"),
        rewritten("//"),
        "A comment starts with two strokes; `#` is a wire gauge.",
        "panel LP-5 208Y/120  # ask the owner",
        "panel LP-5 208Y/120  // ask the owner",
    ),
    Slip(
        "trade-word",
        whole(r"[A-Za-z][A-Za-z.-]*"),
        trade_word,
        "One thing, one word: other names of the trade are read as none.",
        "  1  20 A 1p  0.9 kVA  lights",
        "  1  20 A 1p  0.9 kVA  lighting",
    ),
    Slip(
        "fed-from",
        spelled(
            rf"^(?P<lead>[a-z]+{BB}(?P<target>{NAMED})(?:[\s,].*?)??)(?<![\s,])[\s,]++(?:(?:fed|feeds?|supplied|served|powered|"
            rf"connected|wired)(?:{BB}(?:from|by|via|off|to))?|from|off|parent|upstream){BB}(?P<source>{NAMED})(?=[\s,]|$)"
        ),
        without,
        "A connection has a device, wires and a length of its own, so it has a line of its own.",
        "panel LP-5 208Y/120  bus 100 A, fed from MSB",
        "panel LP-5 208Y/120  bus 100 A",
        message="a feeder line makes the connection: `feeder {source} -> {target}`",
        quotes=True,
        besides="feeder {source} -> {target}",
    ),
    Slip(
        "names-behind-one-action",
        spelled(
            rf"^(?P<lead>\s+(?P<action>on|off|switch|open|close|shed){BB}{_ACTED})(?:{B}[,&]{B}|{BB}and{BB})"
            rf"(?P<next>{_ACTED})(?P<more>.*)"
        ),
        one_an_action,
        "Each change of a switch state stands on a line of its own, so that a comparison shows one changed line.",
        "  switch ATS-5.emergency, ATS-6.emergency",
        "  switch ATS-5.emergency",
        message="one line says one change: `{next}` has a line of its own",
        quotes=True,
        besides="{action} {next}{more}",
    ),
    Slip(
        "ways-of-a-panel",
        whole(r"(\d+)[ -]?(?:circuits?|ccts?|ckts?|CKTS?|CIRCUITS?|poles?|ways?|slots?|space|Spaces|SPACES)"),
        ways,
        "`spaces` counts the single-pole positions of a board.",
        "panel LP-5 208Y/120  bus 225 A, 42 circuits",
        "panel LP-5 208Y/120  bus 225 A, spaces 42",
    ),
    Slip(
        "voltage-pair-of-a-transformer",
        spelled(
            rf"(?P<lead>^transformer{BB}\S+{BB})({N})(?:{B}[vV])?[DΔ]?{B}(?:-|–|:|/|to\b|->){B}({N}Y/{N})(?:{B}[vV])?(?=[\s,]|$)"
        ),
        rewritten(r"\g<lead>\2 3ph -> \3"),
        "The two sides of a transformer are two voltages, each with its wires.",
        "transformer TX-5 480-208Y/120V  75 kVA",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA",
    ),
    Slip(
        "voltages-of-a-transformer",
        spelled(
            rf"(?P<lead>^transformer{BB}\S+{BB})({N})(?:{B}[vV])?[DΔ]?{B}(?:-|–|:|/|to\b){B}({N}){B}[vV]"
            rf"(?:{BB}(?P<phases>[13]){B}-?(?:PH|ph|Ph|[Pp]hase|PHASE))?(?=[\s,]|$)"
        ),
        secondary,
        "The two sides of a transformer are two voltages, each with its wires.",
        "transformer TX-5 480V/208V  75 kVA",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA",
    ),
    Slip(
        "keyword-case",
        whole(r"[A-Za-z][A-Za-z/_-]*"),
        keyword_case,
        "Words of the language are in small letters; capitals are for names.",
        "Panel LP-5 208Y/120",
        "panel LP-5 208Y/120",
    ),
    Slip(
        "missing-hyphen",
        whole(r"([A-Za-z]+) ([A-Za-z]+)"),
        hyphen,
        "A keyword is one word; a hyphen holds its parts together.",
        "feeder A1 -> A2  100 A 3p  normally open",
        "feeder A1 -> A2  100 A 3p  normally-open",
    ),
    Slip(
        "dash-arrow",
        spelled(r"(?<!\S)(?:—>|–>|=>|-->|—|–|--|~>)(?!\S)"),
        rewritten("->"),
        "The arrow shows which way power flows; it is a hyphen and a bracket.",
        "feeder MSB --> LP-5  100 A 3p",
        "feeder MSB -> LP-5  100 A 3p",
    ),
    Slip(
        "word-to",
        spelled(rf"^(?P<lead>(?:feeder|type|transformer|ups|charger|inverter|{B}open|{B}close)\b.*?\s)(?:to|>)(?=\s)"),
        rewritten(r"\1->"),
        "The arrow shows which way power flows.",
        "feeder MSB to LP-5  100 A 3p",
        "feeder MSB -> LP-5  100 A 3p",
        message="between the two ends of a connection stands `->`",
    ),
    Slip(
        "missing-arrow",
        spelled(rf"^(?P<lead>feeder{BB}(?:[^\s:]+{B}:{B})?)([^\s,:<>]+){BB}(?=[^\s,:<>\[]*[A-Z\"])"),
        rewritten(r"\g<lead>\2 -> "),
        "The arrow shows which of the two ends feeds the other.",
        "feeder MSB LP-5  100 A 3p",
        "feeder MSB -> LP-5  100 A 3p",
        message="between the two ends of a connection stands `->`",
    ),
    Slip(
        "missing-arrow-of-sides",
        spelled(rf"(?<!\S)(\S+){BB}(?=\d)"),
        second_side,
        "The arrow shows which of the two sides is fed.",
        "transformer TX-5 480 3ph 208Y/120  75 kVA",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA",
        message="between the two sides stands `->`",
    ),
    Slip(
        "unquoted-file",
        spelled(rf"(?<=^include )({B})([^\s\"]+)(?={B}(?://|$))"),
        rewritten(r'\1"\2"'),
        "The name of a file is a text.",
        "include pump-house.wye",
        'include "pump-house.wye"',
    ),
    Slip(
        "value-first",
        whole(rf"({N}{B}(?:k?A)?){BB}([a-z][a-z0-9/-]*)(?!{B}\d)"),
        value_first,
        "A keyword stands before its value.",
        "panel LP-5 208Y/120  bus 225 A, 42 spaces",
        "panel LP-5 208Y/120  bus 225 A, spaces 42",
    ),
    Slip(
        "at-most-of",
        spelled(rf"(at-most{BB}\d+){B},?{BB}of\b"),
        rewritten(r"\1, among"),
        "`among` names the devices that the interlock joins.",
        "interlock K-1  at-most 1 of M-1, M-2",
        "interlock K-1  at-most 1, among M-1, M-2",
    ),
    Slip(
        "bare-share",
        spelled(rf"(?<=\s)(scale{BB}\S+){BB}({N})(?={B}(?://|$))"),
        rewritten(r"\1 \2 %"),
        "A share has its sign, so that it is no bare number.",
        "  scale LP-5 50",
        "  scale LP-5 50 %",
    ),
)

SIGNS: tuple[Slip, ...] = (
    Slip(
        "equals-sign",
        spelled(rf"(?<![\w./-])([A-Za-z][A-Za-z0-9/-]*){B}[=:]{B}([^\s,=:<>]+)"),
        equals_sign,
        "A keyword and its value stand side by side.",
        "motor P-5 460 3ph  15 hp, pf=0.86",
        "motor P-5 460 3ph  15 hp, pf 0.86",
    ),
    Slip(
        "comparison",
        spelled(r"(?<=\s)(<|=<|>|=>)(?=[\s\d])"),
        lambda match, _: "<=" if "<" in match[1] else ">=",
        "An expectation names its limit, which itself is still good.",
        "expect LP-5 fault < 10 kA",
        "expect LP-5 fault <= 10 kA",
    ),
)
