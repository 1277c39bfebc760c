"""Known slips of boards: mains, lugs, ratings, enclosures, temperatures of terminals."""

from __future__ import annotations

import re

from wyeline_grammar.attributes import flags_at
from wyeline_grammar.attributes_keys_housing import ENCLOSURE_TYPES
from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, B, Match, N, Place, rewritten, spelled, whole
from wyeline_grammar.vocabulary import BOARDS

_BREAKER = rf"(?:MCB|MCCB|(?:[mM]ain{BB})?(?:[cC]ircuit{BB})?[bB]reaker|[mM]ain{BB}(?:CB|C/B|BKR|[bB]kr))"
_POLES = r"(?:[ \t\u00a0,/]*+(?P<{name}>[1-4])[ -]?[pP](?:oles?)?)?"
_KA = r"(?:[kK][aA]?)"
_IC = r"(?:A?[ \t\u00a0-]*+(?:AIC|aic|A\.I\.C\.|SCCR|sccr|IC|RMS|rms)(?:{BB}(?:sym|SYM)\.?)?)".replace(
    "{BB}", BB
).replace("{B}", B)
_CURRENTS = "bus|main|incomer|service|rated|withstand|frame|series|fault"
_MAIN_WORDS = r"MCB|MCCB|main{BB}(?:circuit{BB})?breaker|main{BB}CB".replace("{BB}", BB)
_RATED = rf"{N}{B}k?A{BB}(?:{_MAIN_WORDS}|{_CURRENTS})"
_FIRST_RATING = rf"(?<![^\s,])(?<!bus )(?<!main )(?<!rated ){_RATED}"
_TYPE = r"\d{1,2}[RSXKPrsxkp]{0,2}"
_HOUSED = (
    rf"(?:(?:NEMA|UL)[ -]?(?:[Tt]ype[ -]?)?(?P<nema>{_TYPE})|[Tt]ype[ -](?P<type>{_TYPE}) enclosure"
    r"|IP[ -]?(?P<ip>[0-6X][0-9X][A-D]?)"
    r"|(?P<mount>flush|surface|wall|pole|pad|rack|floor|ceiling)(?:[- ]?mount(?:ed|ing)?)?"
    r"|(?P<other>recess(?:ed)?(?:[- ]?mount(?:ed|ing)?)?|free[- ]?standing))"
)
_ONE_HOUSED = re.compile(_HOUSED)
_ANY_HOUSED = re.sub(r"\?P<\w+>", "?:", _HOUSED)
_BUILD = r"(?:(?:dry|cast[- ]coil|oil|liquid)(?:[- ](?:type|filled|resin))|weatherproof|explosion[- ]proof)"
_TEMPERATURE = rf"(?P<n>{N})(?:{B}(?:deg(?:rees?)?\.?|°))?(?:{B}(?P<scale>[CF]))?"
_OF_TERMINALS = r"(?:lug(?:s|-temp)?|terminals?|terminations?|Lugs|Terminals|rated lugs)"


def _main(match: Match, place: Place) -> str:
    """The main of a board; of a feeder or a circuit just its device."""
    rating, poles = match["n"] or match["m"], match["p"] or match["q"]
    first = place.tokens[0]
    alone = not place.statement and (first.kind == "KEY" or first.start >= match.start())  # a detail of its board
    board = alone or any(token.text in BOARDS for token in place.tokens[:2])
    return f"{'main ' if board else ''}{rating} A" + (f" {poles}p" if poles else "")


def _main_of_the_bus(_: Match, place: Place) -> str | None:
    bus = re.search(rf"\bbus{BB}({N}){B}A\b", place.text)
    return f"main {bus[1]} A" if bus else None


def _interrupting(match: Match, _: Place) -> str | None:
    """``22 kAIC``, ``10,000 AIC``, ``10K AIC``: in kiloamperes, since no board is rated for less than one."""
    figure, kilo = match["n"] or match["m"], match["k"] or match["l"]
    value = float(figure.replace(",", ""))
    if not kilo and value < 1000:
        return None
    return f"{'withstand' if match['short'] else 'rated'} {value if kilo else value / 1000:g} kA"


def _ratings_behind(match: Match, _: Place) -> str:
    """``225 A bus, 100 A main, 10k AIC``, each with its keyword in front."""
    ratings = re.sub(
        rf"({N}{B}k?A){BB}({_MAIN_WORDS}|{_CURRENTS})",
        lambda m: f"{m[2] if re.fullmatch(_CURRENTS, m[2]) else 'main'} {m[1]}",
        match[0],
    )
    more = match.groupdict().get("more")
    return ratings.removesuffix(more) + f", rated {match['n']} kA" if more else ratings


def _remark(match: Match, place: Place) -> str | None:
    """What the language has no word for, as a note; none where the line has one already."""
    said = re.sub(r"[ \t\u00a0]+", " ", match[0].strip(" ,"))
    return None if re.search(r"\bnote\b", place.text) else f'note "{said}"'


def _housing(match: Match, place: Place) -> str | None:
    """``NEMA 3R, surface``: the enclosure and the mounting, each with its keyword; a note where neither may stand."""
    first = place.tokens[0]
    housed = first.kind in ("KIND", "TYPE") if place.statement else first.kind in ("KEY", "FLAG")
    said: dict[str, str] = {}
    for part in _ONE_HOUSED.finditer(match[0]):
        kind = (part["nema"] or part["type"] or "").upper()
        if kind and f"NEMA-{kind}" not in ENCLOSURE_TYPES:
            return None
        key, value = (
            ("enclosure", f"NEMA-{kind}" if kind else f"IP{part['ip']}")
            if kind or part["ip"]
            else ("mounting", part["mount"] or ("floor" if part["other"].startswith("free") else "flush"))
        )
        if key in said:
            return _remark(match, place)
        said[key] = value
    if not housed and first.start < match.start():
        return _remark(match, place)
    return ", ".join(f"{key} {value}" for key, value in said.items())


def _type(match: Match, _: Place) -> str | None:
    kind = f"NEMA-{match['type'].upper()}"
    return f"enclosure {kind}" if kind in ENCLOSURE_TYPES else None


def _terminals(match: Match, _: Place) -> str | tuple[str, ...]:
    scale = match["scale"]
    return (
        f"lug-temp {match['n']} deg{scale}" if scale else (f"lug-temp {match['n']} degC", f"lug-temp {match['n']} degF")
    )


def _fuses(match: Match, place: Place) -> str | None:
    """``400 A fuses``: fused, where that can be said; on a board a remark."""
    kind = place.tokens[0].text
    if "fused" in place.text:
        return None
    return "fused" if kind == "disconnect" or "fused" in flags_at(kind) else _remark(match, place)


BOARD_WORDS: tuple[Slip, ...] = (
    Slip(
        "lugs-only",
        whole(rf"(?:(?:[mM]ain{BB})?[lL]ugs{BB}only|MLO{BB}only|MAIN{BB}LUGS(?:{BB}ONLY)?)"),
        rewritten("main lugs"),
        "`main lugs` says that nothing protects the bus in the board itself.",
        "panel LP-5 208Y/120  bus 225 A, main lugs only",
        "panel LP-5 208Y/120  bus 225 A, main lugs",
    ),
    Slip(
        "bus-and-main-lugs",
        whole(rf"({N}){B}A[ \t\u00a0,]{{1,3}}(?:MLO|M\.L\.O\.)"),
        lambda match, place: None if re.search(r"\bbus\b", place.text) else f"bus {match[1]} A, main lugs",
        "A board with lugs only is rated by its bus: nothing protects it in the board itself.",
        "panel LP-5 208Y/120  225 A MLO",
        "panel LP-5 208Y/120  bus 225 A, main lugs",
    ),
    Slip(
        "main-breaker",
        whole(
            rf"{_BREAKER}{BB}(?P<n>{N})(?:{B}A[TF]?)?{_POLES.format(name='p')}"
            rf"|(?P<m>{N})(?:{B}AT?)?{_POLES.format(name='q')}{BB}{_BREAKER}"
        ),
        _main,
        "`main` is the device that protects the bus; its rating stands behind it.",
        "panel LP-5 208Y/120  bus 225 A, MCB 200 A",
        "panel LP-5 208Y/120  bus 225 A, main 200 A",
    ),
    Slip(
        "main-breaker-sound",
        whole(
            rf"[mM]ain{BB}(?:(?:[cC]ircuit{BB})?[bB]reaker|CB|C/B|BKR){BB}(?P<n>{N})(?:{B}A)?{_POLES.format(name='p')}"
            rf"|(?<!bus )(?<!main )(?P<m>{N}){B}A{_POLES.format(name='q')}{BB}"
            rf"main{BB}(?:(?:circuit{BB})?breaker|CB|C/B|BKR)"
        ),
        _main,
        "`main` is the device that protects the bus; its rating stands behind it.",
        "panel LP-5 208Y/120  bus 225 A, main breaker 200 A",
        "panel LP-5 208Y/120  bus 225 A, main 200 A",
        sound=True,
    ),
    Slip(
        "main-poles-first",
        whole(rf"main{BB}([1-4])[pP],?{BB}({N}){B}A"),
        rewritten(r"main \2 A \1p"),
        "A device is its rated current and then its poles.",
        "panel LP-5 208Y/120  bus 225 A, main 3P 200 A",
        "panel LP-5 208Y/120  bus 225 A, main 200 A 3p",
        sound=True,
    ),
    Slip(
        "main-breaker-alone",
        whole(r"MCB|MCCB|main[- ](?:circuit[- ])?breaker"),
        _main_of_the_bus,
        "`main` is the device that protects the bus, with its rating; it is often that of the bus, and may be less.",
        "panel LP-5 208Y/120  bus 225 A, MCB",
        "panel LP-5 208Y/120  bus 225 A, main 225 A",
        guess=True,
    ),
    Slip(
        "ratings-first",
        spelled(
            rf"{_FIRST_RATING}(?:[\s,]+{_RATED})+(?P<more>[\s,]+(?P<n>\d+(?:\.\d+)?){B}(?P<k>{_KA}){_IC})?(?={B}(?:,|$|//))"
        ),
        _ratings_behind,
        "A keyword stands before its value.",
        "panel LP-5 208Y/120  225 A bus, 100 A main",
        "panel LP-5 208Y/120  bus 225 A, main 100 A",
    ),
    Slip(
        "ratings-first-parted-by-commas",
        spelled(rf"{_FIRST_RATING}(?:(?:{B},{B}|{BB}){_RATED})+(?={B}(?:,|$|//)|{BB}{N}{B}kA{B}(?:,|$|//))"),
        _ratings_behind,
        "A keyword stands before its value: read so, each of these would have the value of its neighbour.",
        "panel LP-5 208Y/120  100 A main, 125 A bus, 10 kA",
        "panel LP-5 208Y/120  main 100 A, bus 125 A, 10 kA",
        sound=True,
    ),
    Slip(
        "interrupting-rating",
        whole(
            rf"(?:rated{BB})?(?P<n>\d+(?:,\d{{3}})*+(?:\.\d+)?)(?:{B}(?P<k>{_KA}))?{_IC}"
            r"|(?:AIC|aic|SCCR|sccr|Icu|Icn|(?P<short>Icw))[ \t\u00a0=:]*+"
            rf"(?P<m>\d+(?:,\d{{3}})*+(?:\.\d+)?)(?:{B}(?:(?P<l>{_KA})|A\b))?"
        ),
        _interrupting,
        "What it may interrupt or withstand is its rating, with the unit of a current.",
        "panel LP-5 208Y/120  bus 225 A, 22 kAIC",
        "panel LP-5 208Y/120  bus 225 A, rated 22 kA",
    ),
    Slip(
        "temperature-of-terminals",
        whole(rf"{_TEMPERATURE}{BB}{_OF_TERMINALS}"),
        _terminals,
        "The temperature that its terminals are rated for has a keyword.",
        "panel LP-5 208Y/120  bus 225 A, 75 C lugs",
        "panel LP-5 208Y/120  bus 225 A, lug-temp 75 degC",
    ),
    Slip(
        "temperature-of-terminals-behind",
        whole(rf"{_OF_TERMINALS}{BB}{_TEMPERATURE}"),
        _terminals,
        "The temperature that its terminals are rated for has a keyword.",
        "panel LP-5 208Y/120  bus 225 A, lugs 75 °C",
        "panel LP-5 208Y/120  bus 225 A, lug-temp 75 degC",
    ),
    Slip(
        "temperature-alone",
        whole(rf"(?P<n>60|75|90)(?:{B}(?:deg\.?|°))?{B}(?P<scale>C)"),
        lambda match, place: _terminals(match, place) if place.statement else None,
        "A temperature needs the keyword that says of what it is.",
        "panel LP-5 208Y/120  bus 225 A, 75C",
        "panel LP-5 208Y/120  bus 225 A, lug-temp 75 degC",
        guess=True,
    ),
    Slip(
        "enclosure",
        whole(
            rf"(?:enclosure{BB}(?=NEMA{BB}|UL|IP{BB}))?{_ANY_HOUSED}(?:[ \t\u00a0,]*+{_ANY_HOUSED})*+"
            rf"(?:{BB}enclosure)?"
        ),
        _housing,
        "What it is enclosed in and what it is mounted on are facts of their own, each with its keyword.",
        "panel LP-5 208Y/120  bus 225 A, NEMA 3R",
        "panel LP-5 208Y/120  bus 225 A, enclosure NEMA-3R",
    ),
    Slip(
        "type-of-an-enclosure",
        whole(rf"enclosure{BB}(?:[Tt]ype|TYPE){BB}(?P<type>{_TYPE})"),
        _type,
        "The types of enclosures of NEMA 250 and UL 50E are written with a hyphen.",
        "panel LP-5 208Y/120  bus 225 A, enclosure type 3R",
        "panel LP-5 208Y/120  bus 225 A, enclosure NEMA-3R",
    ),
    Slip(
        "figure-of-an-enclosure",
        whole(rf"enclosure{BB}(?:(?:NEMA|nema)(?:{BB}|-)?)?(?P<type>{_TYPE})"),
        _type,
        "The types of enclosures of NEMA 250 and UL 50E are written with a hyphen: a bare figure could be any.",
        "panel LP-5 208Y/120  bus 225 A, enclosure 3R",
        "panel LP-5 208Y/120  bus 225 A, enclosure NEMA-3R",
        sound=True,
    ),
    Slip(
        "fuses-of-no-class",
        whole(r"(?:with )?(?:[fF]uses|FUSES|fusible)"),
        _fuses,
        "A fuse is said by its class, as in `fuse J`; that there are some, by `fused`.",
        "disconnect DS-5  400 A 3p  fuses",
        "disconnect DS-5  400 A 3p  fused",
    ),
    Slip(
        "rows-of-a-board",
        whole(rf"\d{{1,2}}[ -]?rows?|[tT]ype{BB}[123](?={B}(?:$|,|connector|plug))(?:{BB}(?:connector|plug))?"),
        lambda match, place: _remark(match, place) if place.tokens[0].text in (*BOARDS, "charger") else None,
        "What is not judged is a note in the drafter's own words; `spaces` counts the single-pole positions.",
        "panel LP-5 400Y/230  bus 63 A, 3 rows",
        'panel LP-5 400Y/230  bus 63 A, note "3 rows"',
        message="the language has no word for `{wrong}`: write it as a note, `{right}`",
    ),
    Slip(
        "build",
        whole(rf"{_BUILD}(?:[ \t\u00a0,]*+{_BUILD})*+"),
        _remark,
        "How it is built inside is not judged, so it is a note in the drafter's own words.",
        "transformer TX-5 480 3ph -> 208Y/120  75 kVA, dry type",
        'transformer TX-5 480 3ph -> 208Y/120  75 kVA, note "dry type"',
        message="the language has no word for `{wrong}`: write it as a note, `{right}`",
    ),
)
