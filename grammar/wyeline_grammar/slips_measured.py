"""Known slips of demands that were measured: how bills and loggers write them, and how long."""

from __future__ import annotations

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, B, Match, N, Place, whole

_DAYS = {"d": 1.0, "w": 7.0, "m": 365 / 12, "y": 365.0}
_PERIOD = rf"(?P<n>{N}|an?|one)?{B}-?(?P<unit>[dD]ays?|[wW](?:ee)?ks?|[mM]onths?|mos?\.?|[yY](?:ea)?rs?\.?)"
_AMOUNT = rf"(?P<amount>{N}){B}(?P<of>A|kVA|kW)"


def _days(match: Match) -> str:
    number = match["n"]
    count = float(number) if number and number[0].isdigit() else 1.0
    return f"measured-over {count * _DAYS[match['unit'][0].lower()]:.0f} d"


def _over(match: Match, _: Place) -> str:
    return _days(match)


def _demand(match: Match, _: Place) -> str:
    found = f"measured {match['amount']} {match['of']}"
    return f"{found}, {_days(match)}" if match["unit"] else found


MEASURED: tuple[Slip, ...] = (
    Slip(
        "measured-for-a-time",
        whole(
            rf"(?:[mM]easured|[rR]ecorded|[pP]eak(?:{BB}demand)?|[mM]ax(?:imum|\.)?{BB}demand|[hH]ighest{BB}demand)"
            rf"{B}[=:]?{B}{_AMOUNT}(?:{BB}(?:measured{BB})?(?:over|for|in|during){BB}{_PERIOD})?"
        ),
        lambda match, place: (
            None if match["unit"] is None and match[0].startswith("measured") else _demand(match, place)
        ),
        "The highest demand that was measured at a board and the time that it was measured over are a phrase each.",
        "panel LP-5 208Y/120  existing, measured 86 A over 1 year",
        "panel LP-5 208Y/120  existing, measured 86 A, measured-over 365 d",
    ),
    Slip(
        "measured-over-in-words",
        whole(rf"(?:measured[ -]over|(?:measured|recorded){BB}(?:over|for)){BB}{_PERIOD}"),
        _over,
        "The time that a demand was measured over is written in days.",
        "panel LP-5 208Y/120  existing, measured 86 A, measured-over 12 months",
        "panel LP-5 208Y/120  existing, measured 86 A, measured-over 365 d",
    ),
)
