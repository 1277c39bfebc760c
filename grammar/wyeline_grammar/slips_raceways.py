"""Known slips of conduits: trade size and kind in another order, without the unit, or in the words of a drawing."""

from __future__ import annotations

from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import BB, RACEWAYS, SIZE, B, Match, N, Place, rewritten, spelled, whole

_FRACTION = r"(?:\d-)?\d/[248]"
_INCH = rf"(?:{B}-?{B}(?:inch(?:es)?|in\.?|\"|''|″|”))"


def _opened(match: Match, place: Place) -> str:
    """``in`` before the size, but for the line of a raceway."""
    return "" if place.text.startswith("raceway") and not match["opened"] else "in "


def _size_first(match: Match, place: Place) -> str:
    return f"{_opened(match, place)}{match['size']} inch {match['kind']}"


def _kind_first(match: Match, place: Place) -> str:
    size = f"{match['mm']} mm" if match["mm"] else f"{match['size']} inch"
    return f"{_opened(match, place)}{size} {match['kind']}"


def _conduit(match: Match, place: Place) -> str:
    return f"{_opened(match, place)}{match['size']} inch conduit"


CONDUITS: tuple[Slip, ...] = (
    Slip(
        "conduit-of-no-kind",
        spelled(
            rf"(?P<opened>(?<![\w-])in{BB})?(?<![\w./-])(?P<size>{SIZE})(?:{_INCH}{B}|(?<=[1-7]/[248])){B}"
            rf"(?:C|[cC]onduit|COND(?:UIT)?|cond)\b\.?(?![\w-])"
        ),
        _conduit,
        "`in` opens the raceway, and its size has its unit.",
        'feeder MSB -> LP-5  3#8 Cu  30 m, 3/4"C',
        "feeder MSB -> LP-5  3#8 Cu  30 m, in 3/4 inch conduit",
        quotes=True,
    ),
    Slip(
        "conduit-schedule",
        whole(
            rf"PVC{B}-?{B}(?:[Ss][Cc][Hh](?:\.|ed\.?|edule)?{B}-?{B})?([48]0)|[Ss][Cc][Hh](?:\.|ed\.?|edule)?{B}-?{B}([48]0){BB}PVC"
        ),
        lambda match, _: f"PVC-{match[1] or match[2]}",
        "The schedule is part of the name of the conduit, since the space inside hangs on it.",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 2 inch PVC Sch 40",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 2 inch PVC-40",
    ),
    Slip(
        "conduit-said-twice",
        whole(rf"({RACEWAYS}){BB}(?:[cC]onduit|CONDUIT|pipe|tubing)"),
        rewritten(r"\1"),
        "The abbreviation says the kind of conduit already.",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in EMT conduit",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in EMT",
    ),
    Slip(
        "conduit-size-hyphened",
        whole(rf"(?P<opened>in{BB})?(?P<size>{SIZE})-(?:inch|in\.?){BB}(?P<kind>{RACEWAYS}|conduit)"),
        _size_first,
        "A blank parts the size from its unit.",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 3/4-inch EMT",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 3/4 inch EMT",
    ),
    Slip(
        "conduit-size-without-unit",
        whole(rf"(?P<opened>in{BB})?(?P<size>{_FRACTION}|(?<=in )\d){BB}(?P<kind>{RACEWAYS}|conduit)"),
        _size_first,
        "A trade size has its unit.",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 3/4 EMT",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 3/4 inch EMT",
    ),
    Slip(
        "metric-designator-without-unit",
        whole(rf"(?P<opened>in{BB})(?P<size>16|21|27|35|41|53|63|78|91|103|129|155){BB}(?P<kind>{RACEWAYS}|conduit)"),
        lambda match, _: f"in {match['size']} mm {match['kind']}",
        "A trade size has its unit; metric designators are in millimetres.",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 53 EMT",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 53 mm EMT",
    ),
    Slip(
        "conduit-kind-first",
        whole(
            rf"(?P<opened>in{BB})?(?P<kind>{RACEWAYS}|conduit){B},?{BB}(?:(?P<size>{_FRACTION}|{N}(?={_INCH}))(?:{_INCH})?|(?P<mm>{N}){B}mm)"
        ),
        _kind_first,
        "The trade size stands before the raceway's kind, with its unit.",
        "feeder MSB -> LP-5  3#8 Cu  30 m  EMT 3/4",
        "feeder MSB -> LP-5  3#8 Cu  30 m  in 3/4 inch EMT",
        quotes=True,
    ),
)
