"""Raceways: how full they are, how their wires heat each other, and what may share them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Place
from wyeline_linter.findings import Edit, Finding, Fix, Related, Safety, Severity
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.shared_raceways import loaded_in, sharing
from wyeline_linter.protection.wiring import Wiring
from wyeline_linter.raceways import Wires, fill, raceway_kinds, smallest_raceway
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.line_findings import about
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.writing import raceway_edit_of, trade_of, wires_in
from wyeline_linter.systems import volts_text
from wyeline_linter.tables import Basis, NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LP = "panel LP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"
_LP2 = "panel LP-2 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"

_COMPUTERS = (
    'project "Annex"\n  basis us-2023\nutility UTIL 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4\n'
    "feeder UTIL -> MSB  2 sets 3#3/0 + N #3/0 Cu THWN-2  6 m  in 2 inch PVC-40\n"
    "switchboard MSB 208Y/120  bus 400 A, main 400 A, lug-temp 75 degC\n"
    "panel UP-1 208Y/120  bus 125 A, main 100 A, lug-temp 75 degC\n"
    '  1  20 A 1p  1.5 kVA it continuous  "Racks, row 1"\n  3  20 A 1p  1.5 kVA it continuous  "Racks, row 2"\n'
    '  5  20 A 1p  1.5 kVA it continuous  "Racks, row 3"\n'
    "feeder MSB -> UP-1  100 A 3p  "
)
_SHARED = (
    US
    + _LP
    + _LP2
    + "panel LP-3 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\nraceway R-7 2-1/2 inch EMT  30 m\n"
    + "feeder MSB -> LP-1  80 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n"
    + "feeder MSB -> LP-2  80 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n"
)

BUNDLED = rule(
    name="bundled-not-derated",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    basis="both",
    summary="Wires that lie together carry less than their device lets through.",
    why="Bundled wires heat each other: from four on, each carries less than the table says.",
    clause={"us": "310.15(C)(1)", "iec": "60364-5-52 B.52.17"},
    wrong=_SHARED + "feeder MSB -> LP-3  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n",
    right=_SHARED + "feeder MSB -> LP-3  90 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n",
    mends=True,
)
NEUTRAL_COUNTS = rule(
    name="neutral-counts-as-loaded",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    basis="both",
    summary="Wires carry less than their device lets through, once their neutral is counted among the loaded ones.",
    why="From two legs of a wye, or with electronic load, the neutral carries current all the time, and that is heat.",
    clause={"us": "310.15(E)", "iec": "60364-5-52 523.6.3, E.52.1 (numbered so from memory)"},
    wrong=_COMPUTERS + "3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT, ambient 38 degC\n",
    right=_COMPUTERS + "3#2 + N #2 + G #6 Cu THWN-2  20 m  in 1-1/4 inch EMT, ambient 38 degC\n",
    mends=True,
)


@BUNDLED.check
def shared_ampacity(view: View) -> Iterator[Finding]:
    """Lines in a raceway with a name, with all that lies beside them."""
    from wyeline_linter.rules.wires import judged

    for _, _, _, lines in sharing(view):
        loaded = loaded_in(view, lines)
        for line in lines:
            yield from judged(view, line, loaded)


FULL = rule(
    name="raceway-overfilled",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="us",
    summary="The wires take more of a raceway than may be filled.",
    why="Too many wires for this pipe: pulling them in damages them, and they cannot shed their heat.",
    clause={"us": "Chapter 9 Tables 1, 4 and 5; 376.22"},
    wrong=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1 inch EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)


@FULL.check
@FULL.also("line")
def _own_fill(view: View, line: Line) -> Iterator[Finding]:
    raceway = line.body.raceway
    if not line.us or raceway is None or raceway.named or raceway.trade_size is None or line.medium:
        return
    flags = line.body.flags
    wires = wires_in(with_insulation(line), sets=line.wiring.sets if "together" in flags else 1)
    worst = _overfill(line.tables, raceway.stuff, trade_of(raceway.trade_size), wires, nipple="nipple" in flags)
    if worst is None:
        return
    percent, limit, better = worst
    fixes: tuple[Fix, ...] = ()
    edit = raceway_edit_of(line.block, line.body, f"{better} inch {raceway.stuff}") if better else None
    if edit is not None:
        fixes = (Fix(f"Write `in {better} inch {raceway.stuff}`", (edit,), Safety.LOOK),)
    yield about(
        view, FULL, line,
        f"{line.where} fills its {raceway.trade_size} {raceway.stuff} to {percent:.3g} %, limit {limit:g} %",
        found=f"{percent:.3g} % of its inside",
        needed=f"{limit:g} % at the most",
        change=f"Take {better} inch {raceway.stuff}." if better else "Take a larger raceway, or two.",
        fixes=fixes,
    )  # fmt: skip


def with_insulation(line: Line) -> Wiring:
    """The wiring with a mark that the fill tables hold; unmarked small wires count as THHN, the thinnest held."""
    wiring = line.wiring
    return wiring if wiring.insulation is not None else wiring._replace(insulation="THHN")


def _overfill(
    tables: Basis, kind: str, trade_size: str, wires: list[Wires], *, nipple: bool
) -> tuple[float, float, str] | None:
    """Percent, limit and the smallest size that does; None where it fits or no table tells."""
    if kind not in raceway_kinds(tables):
        return None
    found = fill(tables, kind, trade_size, wires, nipple=nipple)
    if isinstance(found, NotListed) or found.fits:
        return None
    better = smallest_raceway(tables, kind, wires, nipple=nipple)
    return found.percent, found.limit_percent.value, "" if isinstance(better, NotListed) else better.trade_size


@FULL.also("model")
def shared_fill(view: View) -> Iterator[Finding]:
    for name, statement, place, lines in sharing(view):
        tables = view.tables
        if tables is None or statement.trade_size is None or statement.stuff is None or any(x.medium for x in lines):
            continue
        wires = [w for x in lines for w in wires_in(with_insulation(x), sets=x.wiring.sets)]
        worst = _overfill(
            tables, statement.stuff, trade_of(statement.trade_size), wires, nipple="nipple" in statement.body.flags
        )
        if worst is None:
            continue
        percent, limit, better = worst
        fixes: tuple[Fix, ...] = ()
        if better:
            text = place.block.lines[place.span.line]
            at = text.find(statement.trade_size, place.span.end)
            if at >= 0:
                edit = Edit(
                    place.block, place.span.line, at, place.span.line, at + len(statement.trade_size), f"{better} inch"
                )
                fixes = (Fix(f"Make `{name}` {better} inch", (edit,), Safety.LOOK),)
        yield FULL.finding(
            place,
            f"{len(lines)} lines fill `{name}` to {percent:.3g} %, limit {limit:g} %",
            found=f"{percent:.3g} % of its inside",
            needed=f"{limit:g} % at the most",
            change=f"Take {better} inch {statement.stuff}." if better else "Take a larger raceway, or two.",
            subject=name,
            related=tuple(Related(x.place, f"{x.where} lies in it") for x in lines),
            fixes=fixes,
            clause=clause_of(view, FULL),
        )


MIXED = rule(
    name="systems-mixed-in-raceway",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    basis="both",
    summary="A raceway holds wires above and below 1000 V, or emergency wiring together with other wiring.",
    why="A fault in one takes the other with it: life-safety wiring, and low-voltage insulation, must lie alone.",
    clause={"us": "300.3(C)(2), 700.10(B)", "iec": "60364-5-52 528.1, 60364-5-56 560.8"},
    wrong=US
    + _LP
    + "panel EP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC, emergency\n"
    + '  claim selectivity-study "report SC-12"\n'
    + "raceway R-7 2 inch EMT  30 m\n"
    + "feeder MSB -> LP-1  80 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n"
    + "feeder MSB -> EP-1  80 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7, emergency\n",
    right=US
    + _LP
    + _LP2
    + "raceway R-7 2 inch EMT  30 m\n"
    + "feeder MSB -> LP-1  80 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n"
    + "feeder MSB -> LP-2  80 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n",
)


@MIXED.check
def mixed(view: View) -> Iterator[Finding]:
    for name, _, place, lines in sharing(view):
        highest = max(lines, key=lambda x: x.system.widest_v)
        lowest = min(lines, key=lambda x: x.system.widest_v)
        if highest.medium and not lowest.medium:
            yield _mixed(
                view, name, place,
                f"`{name}` holds {volts_text(highest.system.widest_v)} together with "
                f"{volts_text(lowest.system.widest_v)}",
                "one raceway for medium and low voltage", "a raceway for each", [highest, lowest],
            )  # fmt: skip
        lives = [x for x in lines if _emergency(x)]
        others = [x for x in lines if not _emergency(x)]
        if lives and others:
            yield _mixed(
                view, name, place, f"`{name}` holds emergency wiring and other wiring",
                f"{lives[0].where} beside {others[0].where}", "emergency wiring alone in its raceway",
                [lives[0], others[0]], Severity.ERROR,
            )  # fmt: skip


def _emergency(line: Line) -> bool:
    return "emergency" in line.body.flags or (line.target is not None and "emergency" in line.target.body.flags)


def _mixed(
    view: View, name: str, place: Place, message: str, found: str, needed: str, lines: list[Line],
    severity: Severity = Severity.WARNING,
) -> Finding:  # fmt: skip
    return MIXED.finding(
        place, message, found=found, needed=needed, change="Give one of them a raceway of its own.", subject=name,
        severity=severity, related=tuple(Related(x.place, f"{x.where} lies in it") for x in lines),
        clause=clause_of(view, MIXED),
    )  # fmt: skip
