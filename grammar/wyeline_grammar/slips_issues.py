"""Known slips of a project's issues: dates as letters write them, and words in the order of a drawing's table."""

from __future__ import annotations

import re

from wyeline_grammar.issue_dates import is_a_day
from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, NAMED, B, Match, Place, rewritten, spelled
from wyeline_grammar.spelling import nearest

_MONTHS = "jan feb mar apr may jun jul aug sep oct nov dec".split()
_MONTH = "(?:" + "|".join(_MONTHS) + r")[a-z]*\.?"
_NAME = rf"(?:{NAMED}|\d+(?:\.\d+)?(?![./-]?\d))"
_ISO = r"\d{4}-\d{2}-\d{2}(?!\d)"
_SAID = rf"(?!(?:drawn|checked)\b|{_ISO})[^\s\",:\[\]]+"
_DATES: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(r"(\d{4})([./-]?)(\d{1,2})\2(\d{1,2})"), "ymd"),
    (re.compile(r"(\d{1,2})(\.) ?(\d{1,2})\. ?(\d{4}|\d{2})"), "dmy"),
    (re.compile(r"(\d{1,2})([/-])(\d{1,2})\2(\d{4}|\d{2})"), "either"),
    (re.compile(rf"(\d{{1,2}})(?:st|nd|rd|th)?\.?([ -]?)({_MONTH})[ -]?(\d{{4}}|\d{{2}})", re.IGNORECASE), "dmy"),
    (re.compile(rf"({_MONTH})( ?)(\d{{1,2}})(?:st|nd|rd|th)?,? (\d{{4}})", re.IGNORECASE), "mdy"),
)
"""How letters and drawings write a day, and the order of its parts. Points put the day first; a stroke puts the month
first in the United States and the day first elsewhere (common practice, no source)."""
_ANY = (
    r"\d{4}[./-]\d\d?[./-]\d\d?|\d{8}|\d\d?[./-] ?\d\d?[./-] ?(?:\d{4}|\d\d)"
    rf"|\d\d?(?:st|nd|rd|th)?\.?[ -]?{_MONTH}[ -]?(?:\d{{4}}|\d\d)|{_MONTH} ?\d\d?(?:st|nd|rd|th)?,? \d{{4}}"
)


def _days(match: Match, _: Place) -> str | tuple[str, ...] | None:
    """The days that a date may mean, as ISO 8601 writes them."""
    written = match["date"]
    for pattern, order in _DATES:
        parts = pattern.fullmatch(written)
        if parts is None:
            continue
        first, second, third = parts[1], parts[3], parts[4]
        read = {"ymd": [(first, second, third)], "dmy": [(third, second, first)], "mdy": [(third, first, second)]}
        days = read.get(order) or [(third, first, second), (third, second, first)]
        if len(days[0][0]) == 2 and second.isdigit():
            days.append((first, second, third))
        made = dict.fromkeys(day for day in (_iso(*one) for one in days) if is_a_day(day))
        return tuple(match["lead"] + day for day in made) or None
    return None


def _iso(year: str, month: str, day: str) -> str:
    number = month if month.isdigit() else str(_MONTHS.index(month[:3].lower()) + 1)
    return f"{year if len(year) == 4 else f'20{year}'}-{number:0>2}-{day:0>2}"


def _purpose(match: Match, place: Place) -> str | None:
    """Words in quotes, unless the first of them may be a misspelt keyword or stands where a line is whole."""
    wrong = place.wrong
    near = {word for _, word in nearest(match["said"].split()[0], frozenset({"KEY"}))}
    if wrong is None or wrong.start != match.start("said") or near & {"drawn", "checked"}:
        return None
    lead = f"{match['lead'].rstrip()} {match['date']} " if match["date"] else match["lead"]
    return f'{lead}"{match["said"]}"'


_WHY = "The day is written as year, month and day: 3/2 is another day here than there."

ISSUES: tuple[Slip, ...] = (
    Slip(
        "issue-by-another-word",
        spelled(rf"(?P<lead>^{BB})(?:Issue|ISSUE|[Rr]ev\.?|REV|[Rr]evision)(?={BB}{_NAME}{B},?{B}{_ISO})"),
        rewritten(r"\g<lead>issue"),
        "An issue with its date is a line of its own below the project; `revision` has a name alone.",
        '  revision A 2026-03-02 "for tender"',
        '  issue A 2026-03-02 "for tender"',
        message="an issue with its date is written `issue`",
    ),
    Slip(
        "issue-said-twice",
        spelled(rf"(?P<lead>^{BB}issue{BB})(?:[Rr]ev(?:ision)?\.?|REV|[Ii]ssue){BB}(?={_NAME})"),
        rewritten(r"\g<lead>"),
        "Behind `issue` stands its name.",
        '  issue Rev A 2026-03-02 "for tender"',
        '  issue A 2026-03-02 "for tender"',
        message="`{wrong}` is left out: behind `issue` stands its name",
    ),
    Slip(
        "issue-with-its-date-first",
        spelled(rf"(?P<lead>^{BB}issue{BB})(?P<date>{_ISO}){B},?{BB}(?P<name>(?!\"){_NAME})(?=[\s,]|$)"),
        rewritten(r"\g<lead>\g<name> \g<date>"),
        "The name of an issue stands before its date.",
        '  issue 2026-03-02 A "for tender"',
        '  issue A 2026-03-02 "for tender"',
    ),
    Slip(
        "issue-with-its-date-behind",
        spelled(rf'(?P<lead>^{BB}issue{BB}{_NAME})(?P<text>{BB}"[^"]*"){B},?{BB}(?P<date>{_ISO})'),
        rewritten(r"\g<lead> \g<date>\g<text>"),
        "The date of an issue stands behind its name.",
        '  issue A "for tender" 2026-03-02',
        '  issue A 2026-03-02 "for tender"',
        quotes=True,
    ),
    Slip(
        "issue-of-a-date",
        spelled(rf"(?P<lead>^{BB}issue{BB}{_NAME})(?:{B},?{BB}(?:of|date|dated|on):?|{B}:)(?={BB}{_ISO})"),
        rewritten(r"\g<lead>"),
        "The date of an issue stands behind its name without a word between them.",
        '  issue A dated 2026-03-02 "for tender"',
        '  issue A 2026-03-02 "for tender"',
        message="no word stands between an issue and its date",
    ),
    Slip(
        "date-of-an-issue",
        spelled(rf"(?P<lead>^{BB}issue{BB}{_NAME}{B},?{BB})(?P<date>(?i:{_ANY}))(?=[\s,]|$)"),
        _days,
        _WHY,
        '  issue A 02.03.2026 "for tender"',
        '  issue A 2026-03-02 "for tender"',
    ),
    Slip(
        "issue-without-quotes",
        spelled(
            rf"(?P<lead>^{BB}issue{BB}{_NAME}(?:{B},?{BB}{_ISO})?{B},?{BB})"
            rf"(?P<said>(?=[^\W\d]){_SAID}(?:{BB}{_SAID})*)(?:{B},?{BB}(?P<date>{_ISO}))?"
        ),
        _purpose,
        "What an issue is for stands in quotes, so that its words are not read as words of the language.",
        "  issue A 2026-03-02 for tender, drawn MK",
        '  issue A 2026-03-02 "for tender", drawn MK',
        message="what an issue is for stands in quotes",
        guess=True,
    ),
    Slip(
        "who-by-in-quotes",
        spelled(r"(?P<lead>\b(?:drawn|checked)) by(?= \")"),
        rewritten(r"\g<lead>"),
        "Who drew or checked it stands right behind the keyword.",
        '  drawn by "T. Aune"',
        '  drawn "T. Aune"',
        message="`by` is left out",
        sound=True,
    ),
    Slip(
        "who-by",
        spelled(rf"(?P<lead>\b(?:drawn|checked)){BB}by:?(?={BB})"),
        rewritten(r"\g<lead>"),
        "Who drew or checked it stands right behind the keyword.",
        '  issue A 2026-03-02 "for tender" drawn by MK',
        '  issue A 2026-03-02 "for tender" drawn MK',
        message="`by` is left out",
    ),
)
