"""Known slips of a drawing's remarks: status in brackets, a room without quotes, signs between phrases and in names."""

from __future__ import annotations

import re

from wyeline_grammar.attributes import FLAGS
from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, B, Match, Place, spelled, whole

_KEPT = ("existing to remain", "existing, to remain", "to remain", "etr", "e.t.r.")
_STATUS = {
    **dict.fromkeys(("e", "ex", "ex.", "exist", "exist.", "exstg", "exstg.", "existing", *_KEPT), "existing"),
    **dict.fromkeys(("n", "new"), "new"),
    **dict.fromkeys(("f", "fut", "fut.", "future"), "future"),
    **dict.fromkeys(
        (
            "d",
            "demo",
            "demolish",
            "demolished",
            "removed",
            "to be demolished",
            "to be removed",
            "to be demo'd",
            "remove",
        ),
        "demolish",
    ),
    **dict.fromkeys(("r", "rel", "relocated", "to be relocated"), "relocated"),
    **dict.fromkeys(("temp", "temp.", "temporary"), "temporary"),
}
"""What drawings write for the status of a thing (common practice, no source)."""
STATUS_WORDS = {word.strip("."): status for word, status in _STATUS.items() if " " not in word}
"""The same without those of several words, and without points."""
_WORDS = "|".join(re.escape(word) for word in sorted(_STATUS, key=len, reverse=True) if len(word) > 1)
_SIGNS = "–—‐‑"
"""Dashes that word processors put for a hyphen."""


def _status(match: Match, _: Place) -> str | None:
    return _STATUS.get((match["short"] or match["word"]).lower())


def _denied(match: Match, _: Place) -> str | None:
    """``not fused``: without the word that denies, it would say the opposite."""
    return "" if (match["what"] or match["one"]).lower() in (*FLAGS, "fusible") else None


def _room(match: Match, place: Place) -> str | None:
    """``location Room 12``, or ``Room 12`` alone where no location is written."""
    said = match["said"].rstrip()
    if match["key"]:
        return f'{match["key"]} "{said}"'
    wrong = place.wrong
    here = wrong is not None and wrong.start == match.start() and wrong not in place.tokens[:3]
    return f'location "{said}"' if here and not re.search(r"\blocation\b", place.text) else None


def _name(match: Match, place: Place) -> str | tuple[str, ...] | None:
    """A name with a sign that none may have, where a name must stand."""
    wrong = place.wrong
    if wrong is None or wrong.start != match.start() or wrong.kind != "ERROR":
        return None
    if not {"NAME", "TEXT"} & place.expected or "QUANTITY" in place.expected:
        return None
    hyphened = re.sub(f"[{_SIGNS}/#&\\\\]+", "-", match[0]).strip("-")
    plain = hyphened if any(c.isupper() for c in hyphened) else hyphened.upper()
    return plain if re.search(f"[{_SIGNS}]", match[0]) else (plain, f'"{match[0]}"')


REMARKS: tuple[Slip, ...] = (
    Slip(
        "curly-single-quotes",
        spelled('[‘’‚]([^‘’‚"]*)[‘’]'),
        lambda match, _: f'"{match[1]}"',
        "Texts stand in straight double quotes; word processors bend them.",
        "panel ‘Pump room’ 208Y/120",
        'panel "Pump room" 208Y/120',
    ),
    Slip(
        "sign-in-a-name",
        whole(rf"\w+(?:[{_SIGNS}/#&\\]\w+)+"),
        _name,
        "A name has letters, digits, `_`, and hyphens or points inside it; any other stands in quotes.",
        "panel LP–5 208Y/120  bus 225 A",
        "panel LP-5 208Y/120  bus 225 A",
    ),
    Slip(
        "colon-behind-a-name",
        spelled(rf"(?P<lead>^(?!feeder)[a-z]+{BB}\S+?){B}:(?=\s)"),
        lambda match, _: match["lead"],
        "A colon stands behind the label of a feeder only.",
        "panel LP-5: 208Y/120  bus 225 A",
        "panel LP-5 208Y/120  bus 225 A",
        message="a colon stands behind the label of a feeder only",
    ),
    Slip(
        "what-is-not-so",
        whole(
            r"(?:[nN]ot?|NOT?|[nN]on|NON)[ \t\u00a0-](?P<what>[A-Za-z][A-Za-z-]+)"
            r"|(?:[uU]n|[nN]on)(?P<one>fused|fusible)"
        ),
        _denied,
        "What a thing is not goes without saying: only what it is has a word.",
        "disconnect DS-5  60 A 3p, not fused",
        "disconnect DS-5  60 A 3p, ",
        message="what is not so is not written: `{wrong}` is left out",
        guess=True,
    ),
    Slip(
        "status-of-a-drawing",
        spelled(rf"(?<![^\s,])(?:\((?P<short>[ENFDR]|(?i:{_WORDS}))\)|(?P<word>(?i:{_WORDS})))(?![^\s,])"),
        _status,
        "The status is one of the words `existing`, `new`, `future`, `temporary`, `relocated` and `demolish`.",
        "panel LP-5 208Y/120  bus 225 A, (E)",
        "panel LP-5 208Y/120  bus 225 A, existing",
        guess=True,
    ),
    Slip(
        "room-without-quotes",
        whole(
            rf"(?P<key>location|note|per|client|drawn|checked|engineer){BB}(?P<said>[A-Za-z][^\s,\"]*(?:{BB}(?:[A-Z0-9][^\s,\"]*|of|the|and))+)"
        ),
        _room,
        "A text stands in quotes, so that its words are not read as words of the language.",
        "panel LP-5 208Y/120  bus 225 A, location Room 12",
        'panel LP-5 208Y/120  bus 225 A, location "Room 12"',
    ),
    Slip(
        "room-alone",
        whole(
            rf"(?P<key>)(?P<said>(?:[Rr]oom|[Ll]evel|[Ff]loor|RM|Rm|LVL|[Bb]uilding|[Bb]asement|[Rr]oof|[Cc]orridor)\.?(?:{BB}[A-Z0-9][\w.-]*)?)"
        ),
        _room,
        "Where it stands has the keyword `location`, and a text stands in quotes.",
        "panel LP-5 208Y/120  bus 225 A, Room 12",
        'panel LP-5 208Y/120  bus 225 A, location "Room 12"',
    ),
)
SEPARATORS: tuple[Slip, ...] = (
    Slip(
        "sign-between-phrases",
        spelled(rf"(?<=[\w%\")])(?:{B};(?=\s|$)|{BB}(?:&|/|\||and|[{_SIGNS}-])(?={BB}))"),
        lambda match, place: "," if match.end() < len(place.text.rstrip()) else "",
        "Phrases stand side by side; a comma helps the eye, and no other sign stands between them.",
        "panel LP-5 208Y/120  bus 225 A; main 100 A",
        "panel LP-5 208Y/120  bus 225 A, main 100 A",
        message="between two phrases stands a comma or a blank, not `{wrong}`",
    ),
)
