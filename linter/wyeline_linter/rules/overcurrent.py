"""Devices and the wires they protect: ratings, small wires, wires without a device, load against device."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place, PlacedCircuit
from wyeline_grammar.model import Body
from wyeline_linter.demand_factors import fraction_dropped
from wyeline_linter.findings import Finding, Fix, Safety, Severity
from wyeline_linter.loads.leaves import MEASURED
from wyeline_linter.protection.ampacities import small_wire_limit_a
from wyeline_linter.protection.currents import current_of
from wyeline_linter.protection.lines import MEDIUM_VOLTAGE_V, Line, device_kind
from wyeline_linter.protection.purposes import ONE_LOAD, Purpose, purpose_of
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.line_findings import about, amps_text, device_words, line_text, rating_fix
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.lines import resized
from wyeline_linter.standard_ratings import device_ratings, is_standard_rating, rating_at_least
from wyeline_linter.systems import Known
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

US = (
    'project "Annex"\n  basis us-2023\nutility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\n'
    "feeder UTIL -> MSB  3x500kcmil + N 500kcmil Cu THWN-2  6 m  in 4 inch PVC-40\n"
    "switchboard MSB 480Y/277  bus 400 A, main 400 A, lug-temp 75 degC\n"
)
"""A service of 400 A that wants nothing: the examples of these rules hang on it."""
_LP = "panel LP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"

_HEATER = (
    US
    + _LP
    + '  1  DEVICE 1p  3 kVA heating  "Frost heater"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT, lug-temp 75 degC\n'
    + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n"
)

NOT_STANDARD = rule(
    name="rating-not-standard",
    since="0.1",
    severity=Severity.ADVICE,
    scope="feeder",
    basis="both",
    summary="A device has a rating that is in no standard series.",
    why="Nobody makes this rating; an adjustable device may be set to it, and then its frame is what is bought.",
    clause={"us": "240.6(A)", "iec": "60898-1, 60947-2"},
    wrong=US + _LP + "feeder MSB -> LP-1  95 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  90 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)


@NOT_STANDARD.check
def feeder_rating(view: View, feeder: Feeder) -> Iterator[Finding]:
    state = view.feeder_state(feeder.key)
    if state is not None and isinstance(state.offered, Known) and state.offered.system.widest_v > MEDIUM_VOLTAGE_V:
        return
    found = _rating(view, feeder.body, feeder.block, feeder.key)
    if found is not None:
        yield found


@NOT_STANDARD.also("circuit")
def circuit_rating(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    found = _rating(view, placed.circuit.body, placed.block, board.name, placed.key)
    if found is not None:
        yield found


def _rating(view: View, body: Body, block: Block, subject: str, position: str = "") -> Finding | None:
    fact, tables = body.facts.get("rating"), view.tables
    if fact is None or tables is None or "frame" in body.facts or body.flags.keys() & {"existing", "space"}:
        return None
    amps = fact.number
    kind = device_kind(body, amps, tables)
    if kind == "mcb" and not is_standard_rating(tables, amps, "mcb"):
        kind = "breaker" if is_standard_rating(tables, amps, "breaker") else "mcb"
    if is_standard_rating(tables, amps, kind) or is_standard_rating(tables, amps, "fuse" if kind == "fuse" else kind):
        return None
    ratings = device_ratings(tables, kind)
    below = max((r for r in ratings if r < amps), default=None)
    above = min((r for r in ratings if r > amps), default=None)
    near = [r for r in (below, above) if r is not None]
    from wyeline_linter.sizing.writing import rating_edit

    at = Place(block, fact.span)
    where = f"circuit {position} of `{subject}`" if position else f"`{subject}`"
    fixes = tuple(
        Fix(f"Write {r:g} A", (edit,), Safety.LOOK) for r in near if (edit := rating_edit(block, body, r)) is not None
    )
    shown = " or ".join(f"{r:g} A" for r in near)
    return NOT_STANDARD.finding(
        at,
        f"{amps:g} A at {where} is no standard rating of a {kind if kind != 'mcb' else 'miniature breaker'}",
        found=f"{amps:g} A",
        needed=f"a standard rating, such as {shown}",
        change=f"Choose {shown}, or write the frame of an adjustable device (`frame`).",
        subject=subject,
        position=position,
        fixes=fixes,
        clause=clause_of(view, NOT_STANDARD),
    )


UNDERPROTECTED = rule(
    name="wire-underprotected",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    basis="both",
    summary="A device lets more current through than its wires may carry, whatever the terminals and the surroundings.",
    why="The device lets the wire run hotter than its insulation bears.",
    clause={"us": "240.4(B), 240.4(C)", "iec": "60364-4-43 433.1"},
    wrong=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#6 + N #6 + G #8 Cu THWN-2  20 m  in 1 inch EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
    mends=True,
)
SMALL = rule(
    name="small-wire-limit",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="us",
    summary="A wire of 14, 12 or 10 AWG has a device larger than its fixed limit.",
    why="Small wires have a fixed device limit, below their ampacity: 15, 20 and 30 A for copper 14, 12 and 10 AWG.",
    clause={"us": "240.4(D)"},
    wrong=_HEATER.replace("DEVICE", "25 A"),
    right=_HEATER.replace("DEVICE", "20 A"),
    mends=True,
)


_PACKAGED = ("cooling", "heat-pump")
"""Classes of load that come as packaged units with a nameplate of their own."""


def small_limit_a(line: Line) -> float:
    """The device limit of a line's small wires; infinite for others."""
    return small_wire_limit_a(line.tables, line.wiring.size, line.wiring.metal, line.wiring.sets)


@SMALL.check
@SMALL.also("line")
def _small(view: View, line: Line) -> Iterator[Finding]:
    guard = line.guard
    limit = small_limit_a(line) if line.us else float("inf")
    if guard is None or guard.amps <= limit:
        return
    current = current_of(view, line)
    if purpose_of(view, line, current) in ONE_LOAD or line.claims & {"tap-10ft", "tap-25ft", "tap-outside"}:
        return
    wiring = line.wiring
    yield about(
        view, SMALL, line,
        f"{wiring.size} AWG {wiring.metal} at {line.where} has a {device_words(line)}, limit {limit:g} A",
        found=f"{device_words(line)} on {line_text(line)}",
        needed=f"{limit:g} A at the most",
        change=f"Make the device {limit:g} A, or pull larger wires."
        + " A cooling unit's nameplate may ask for more: with its `mca` and `mocp` in place of the load, these decide "
        "(240.4(G), 440.22)." * (not line.body.flags.keys().isdisjoint(_PACKAGED)),
        fixes=(*resized(view, line), *rating_fix(line, limit)) if (current.sizing_a or 0) > limit
        else (*rating_fix(line, limit), *resized(view, line)),
    )  # fmt: skip


MISSING = rule(
    name="protection-missing",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="both",
    summary="Wires run from a source or an unprotected bus, and no device stands ahead of them.",
    why="Nothing would open when these wires are overloaded or shorted.",
    clause={"us": "240.21", "iec": "60364-4-43 433.2, 434.2"},
    wrong='project "Annex"\n  basis us-2023\ngenerator GEN-1 480Y/277  100 kVA, pf 0.8, subtransient 12 %, x/r 18\n'
    "panel EP-1 480Y/277  bus 225 A, main 125 A, lug-temp 75 degC\n"
    "feeder GEN-1 -> EP-1  3#1/0 + N #1/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT, lug-temp 75 degC\n",
    right='project "Annex"\n  basis us-2023\ngenerator GEN-1 480Y/277  100 kVA, pf 0.8, subtransient 12 %, x/r 18\n'
    "panel EP-1 480Y/277  bus 225 A, main 125 A, lug-temp 75 degC\n"
    "feeder GEN-1 -> EP-1  125 A 3p  3#1/0 + N #1/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT, lug-temp 75 degC\n",
)


@MISSING.check
def feeder_protection(view: View, line: Line) -> Iterator[Finding]:
    feeder = line.feeder
    if line.guard is not None or feeder is None or view.derivation.delivers_into(feeder):
        return
    maker = view.equipment(line.maker)
    if maker is None or maker.damaged or line.claims:
        return
    at_utility = maker.kind == "utility" and not _behind_board(view, line)
    if at_utility or maker.kind in ("transformer", "drive") or maker.arrow:
        return
    place = line.place
    yield about(
        view, MISSING, line,
        f"{line.where} has no device, and none stands between it and `{maker.name}`",
        found=f"no overcurrent device from `{maker.name}` to `{line.target.name if line.target else ''}`",
        needed="a device where the wires start",
        change="Write a device on the feeder, or a main in the board it leaves.",
        place=place,
        fixes=_add_device(view, line),
    )  # fmt: skip


def _behind_board(view: View, line: Line) -> bool:
    """Whether the line leaves a board: there a device belongs, even where the service ahead of it has none."""
    state = view.state(line.source.name)
    return bool(state is not None and state.onward is not None and state.onward.board)


def _add_device(view: View, line: Line) -> tuple[Fix, ...]:
    from wyeline_linter.sizing.lines import Proposal, size_feeder

    if line.feeder is None:
        return ()
    made = size_feeder(view, line.feeder)
    return (made.fix(),) if isinstance(made, Proposal) and made.device and made.changes else ()


@MISSING.also("line")
def circuit_protection(view: View, line: Line) -> Iterator[Finding]:
    if line.guard is None and "with" not in line.body.facts and "spare" not in line.body.flags:
        yield about(
            view, MISSING, line,
            f"{line.where} has no device, and none stands ahead of `{line.source.name}`",
            found="wires without a device",
            needed="a device where the wires start",
            change="Write the rating and the poles of its device.",
            place=line.place,
        )  # fmt: skip


MARGIN = rule(
    name="continuous-load-margin",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="both",
    summary="A feeder's device is smaller than the load to size by: 125 % of what runs for hours, and the rest.",
    why="A load that lasts three hours or more needs 25 % reserve, or the device trips on a normal day.",
    clause={"us": "215.3, 210.20(A)", "iec": "60364-4-43 433.1"},
    wrong=US
    + "load KILN 480 3ph  40 kVA, heating continuous, lug-temp 75 degC\n"
    + "feeder MSB -> KILN  50 A 3p  3#6 + G #10 Cu THWN-2  20 m  in 1 inch EMT\n",
    right=US
    + "load KILN 480 3ph  40 kVA, heating continuous, lug-temp 75 degC\n"
    + "feeder MSB -> KILN  70 A 3p  3#4 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
)


@MARGIN.check
def continuous_margin(view: View, line: Line) -> Iterator[Finding]:
    rating = line.body.number("rating")
    if rating is None or line.target is None or ("full-rated" in line.body.flags and not _measured(view, line.target)):
        return
    current = current_of(view, line)
    purpose = purpose_of(view, line, current)
    need = current.sizing_a if line.us else current.design_a
    if purpose in ONE_LOAD or purpose is Purpose.GROUP or need is None or current.design_a is None:
        return
    if (fraction_dropped(need) if line.us else need) <= rating * 1.0005 or _told_of_target(line, rating):
        return
    how = f", {amps_text(need)} to size by" if need > current.design_a * 1.0005 else ""
    better = rating_at_least(line.tables, need, line.guard.kind if line.guard is not None else "breaker")
    change = "Choose a larger device and the wires for it, or move load away."
    if not isinstance(better, NotListed):
        change = f"Choose {better.value:g} A and the wires for it, or move load away."
    yield about(
        view, MARGIN, line,
        f"{line.where} carries {amps_text(current.design_a)}{how}; its device is {rating:g} A",
        found=f"{rating:g} A for {amps_text(need)}",
        needed=f"{amps_text(need)} or more",
        change=change,
        why="" if line.us else "A device that carries more than its rating trips on a normal day.",
        place=line.place_of("rating"),
    )  # fmt: skip


def _measured(view: View, target: Equipment) -> bool:
    """Whether a measured demand is part of what it draws: its 125 % are no matter of hours (NEC 220.87(2))."""
    return any(key.category == MEASURED for key in view.loads.nodes[target.name].up.rows)


def _told_of_target(line: Line, rating: float) -> bool:
    """Whether the board it feeds is overloaded itself, by a limit no larger than this device: that is told there."""
    target = line.target
    assert target is not None
    limits = [target.body.number(k) for k in ("bus", "main", "incomer", "rating")]
    known = [x for x in limits if x is not None]
    return target.kind in ("panel", "switchboard", "switchgear", "mcc", "busway", "transfer", "disconnect") and bool(
        known and min(known) <= rating
    )
