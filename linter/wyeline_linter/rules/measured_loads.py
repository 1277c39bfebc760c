"""Demands that were measured at a board: whether NEC 220.87 takes them, and what they do not say."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_linter.findings import Finding, Fix, Safety, Severity, append_phrase, delete_phrase
from wyeline_linter.loads.measured import NO_POWER_FACTOR, NOT_LISTED, WORD, is_measured, stands
from wyeline_linter.loads.measured_sheets import YEAR_S, within_of
from wyeline_linter.network import follows_grid
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_US = 'project "Library"\n  basis us-2023\n'
_FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> MDP  225 A 3p  existing\n"
_MDP = "panel MDP 208Y/120  bus 225 A, main 225 A, existing, measured 86 A"
_NEW = '\n  2,4,6  30 A 3p  6 kVA heating "New unit heater"\n'
_DAY_S = 86_400.0

TOO_SHORT = rule(
    name="measurement-too-short",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    basis="us",
    summary="A demand was measured for less time than the code takes.",
    why="A short recording misses the heat wave, the holidays and the term: what it shows is a day, not the highest "
    "demand.",
    clause={"us": "220.87(1)"},
    wrong=_US + _FED + _MDP + ", measured-over 7 d" + _NEW,
    right=_US + _FED + _MDP + ", measured-over 30 d" + _NEW,
)


@TOO_SHORT.check
def measurement_too_short(view: View, board: Equipment) -> Iterator[Finding]:
    over, basis = board.body.number("measured-over"), view.loads.basis
    if over is None or basis is None or not is_measured(board):
        return
    least = basis.value_of("existing-recorded-least")
    if over < least * _DAY_S:
        text = board.body.facts["measured-over"].value.text
        yield TOO_SHORT.finding(
            board.place_of("measured-over"),
            f"what `{board.name}` draws was measured over {text}; NEC 2023 220.87 takes no less than {least:g} days",
            found=text,
            needed=f"the highest demand of a year, or {least:g} days and more of uninterrupted recording on the "
            "fullest leg while the building is in use",
            change="Measure for longer, ask the utility for the demand of a year, or list the circuits with their "
            "loads in place of the measurement.",
            subject=board.name,
        )


PERIOD = rule(
    name="measurement-period-missing",
    since="0.1",
    severity=Severity.GAP,
    scope="board",
    basis="us",
    summary="A measured demand does not say how long it was measured.",
    why="The code takes the highest demand of a year, or of 30 days and more; without the period nobody can tell.",
    clause={"us": "220.87(1)"},
    wrong=_US + _FED + _MDP + _NEW,
    right=_US + _FED + _MDP + ", measured-over 365 d" + _NEW,
)


@PERIOD.check
def measurement_period_missing(_: View, board: Equipment) -> Iterator[Finding]:
    if is_measured(board) and "measured-over" not in board.body.facts and not board.damaged:
        yield PERIOD.finding(
            board.place_of(WORD),
            f"`{board.name}` does not say how long its {board.body.facts[WORD].value.text} were measured",
            found=f"`{WORD} {board.body.facts[WORD].value.text}` alone",
            needed="the time that it was measured over",
            change="Add it, such as `measured-over 365 d`, and `measured-by` with what and when.",
            subject=board.name,
        )


FACTOR = rule(
    name="measured-power-factor-missing",
    since="0.1",
    severity=Severity.GAP,
    scope="board",
    summary="A demand was measured in kW, and its power factor is not written.",
    why="Wires and devices carry the current, which kW alone do not tell: the load of the board stays unknown.",
    wrong=_US + _FED + _MDP.replace("86 A", "30 kW") + ", measured-over 365 d" + _NEW,
    right=_US + _FED + _MDP.replace("86 A", "30 kW, pf 0.92") + ", measured-over 365 d" + _NEW,
)


@FACTOR.check
def measured_power_factor_missing(view: View, board: Equipment) -> Iterator[Finding]:
    reason = NO_POWER_FACTOR.format(board.name)
    if is_measured(board) and reason in view.loads.nodes[board.name].below.unknown:
        yield FACTOR.finding(
            board.place_of(WORD),
            f"{reason}, so its current is unknown",
            found=f"`{WORD} {board.body.facts[WORD].value.text}` without `pf`",
            needed="its power factor at that time, kVA, or the amperes of the fullest leg",
            change="Add `pf` as the meter or the bill tells it, or write kVA or A.",
            subject=board.name,
        )


STATUS = rule(
    name="measured-board-not-existing",
    since="0.1",
    severity=Severity.WARNING,
    scope="board",
    summary="A demand was measured at a board that is not marked as existing.",
    why="Only what stood when it was measured can be within a measurement; a board without a status is a new one.",
    clause={"us": "220.87"},
    wrong=_US + _FED + _MDP.replace(", existing", "") + ", measured-over 365 d" + _NEW,
    right=_US + _FED + _MDP + ", measured-over 365 d" + _NEW,
    mends=True,
)


@STATUS.check
def measured_board_not_existing(_: View, board: Equipment) -> Iterator[Finding]:
    if not is_measured(board) or stands(board.body.flags) or board.damaged:
        return
    place = board.place_of(WORD)
    fix = Fix("Mark it `existing`", (append_phrase(place.block, place.span.line, "existing"),), Safety.LOOK)
    yield STATUS.finding(
        place,
        f"`{board.name}` gives a measured demand, and is {board.status}",
        found=f"`{WORD} {board.body.facts[WORD].value.text}` on a board that is {board.status}",
        needed="a board that stood there when it was measured",
        change="Mark it `existing`, or give its loads as circuits in place of the measurement.",
        subject=board.name,
        fixes=(fix,) if board.status == "new" and "new" not in board.body.flags else (),
    )


BESIDE = rule(
    name="dwelling-also-measured",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    basis="us",
    summary="A dwelling is to be calculated by its floor area, and gives a measured demand as well.",
    why="The two are different methods for the same load: by the measurement, what is new is added to it.",
    clause={"us": "220.83, 220.87"},
    wrong=_US + _FED + _MDP + ", measured-over 365 d, dwelling standard, floor-area 140 m2" + _NEW,
    right=_US + _FED + _MDP + ", measured-over 365 d" + _NEW,
)


@BESIDE.check
def dwelling_also_measured(_: View, board: Equipment) -> Iterator[Finding]:
    fact = board.body.facts.get("dwelling")
    if fact is None or not is_measured(board):
        return
    place = board.place_of("dwelling")
    yield BESIDE.finding(
        place,
        f"`{board.name}` is to be calculated as a dwelling, and gives a measured demand: the measurement counts",
        found=f"`dwelling {fact.value.text}` beside `{WORD} {board.body.facts[WORD].value.text}`",
        needed="one of the two",
        change=f"Delete the words of the dwelling, or `{WORD}`.",
        subject=board.name,
        fixes=(Fix("Delete `dwelling`", (delete_phrase(place),), Safety.LOOK),),
    )


GENERATION = rule(
    name="measured-beside-generation",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    basis="us",
    summary="A measured demand counts on a board that generation feeds from behind.",
    why="What solar, wind or a battery delivers behind the meter never passed it: the loads were larger than what was "
    "measured. A recording of less than a year the code does not take there at all.",
    clause={"us": "220.87"},
    wrong=_US
    + _FED
    + _MDP
    + ", measured-over 365 d"
    + _NEW
    + "inverter PV-1 208 3ph  20 kW, limit 1.1 pu, grid-following, existing\nfeeder MDP -> PV-1  70 A 3p  existing\n",
    right=_US + _FED + _MDP + ", measured-over 365 d" + _NEW,
)


@GENERATION.check
def measured_beside_generation(view: View) -> Iterator[Finding]:
    behind: dict[str, list[Equipment]] = {}
    for inverter in view.of_kind("inverter") if view.loads.measured else ():
        if follows_grid(inverter) and view.network.fed(inverter.name) and inverter.status != "future":
            for above in view.network.above(inverter.name):
                if above in view.loads.measured:
                    behind.setdefault(above, []).append(inverter)
    for name, inverters in sorted(behind.items()):
        board = view.model.equipment[name]
        over = board.body.number("measured-over")
        recorded = over is not None and over < YEAR_S
        standing = [inverter for inverter in inverters if stands(inverter.body.flags)]
        if not recorded:
            inverters = standing  # the demand of a year, from before what is new delivered anything, is whole
        if not inverters:
            continue
        old = bool(standing)
        names = ", ".join(f"`{inverter.name}`" for inverter in inverters)
        feed = "feeds" if len(inverters) == 1 else "feed"
        yield GENERATION.finding(
            board.place_of(WORD),
            f"`{name}` counts a measured demand, and {names} {feed} it from behind",
            severity=None if old else Severity.WARNING,
            found=f"{names} behind `{name}`"
            + ("" if old else ", not there yet when it was measured, which the exception does not ask"),
            needed="no renewable generation and no shaving of peaks on a feeder or service that was recorded for less "
            "than a year"
            if recorded
            else "what the loads drew, not what was left of it after generation",
            why=""
            if old
            else "The code does not take a recording of less than a year on a feeder or service that "
            "has renewable generation, and does not say that it had to be there already.",
            change="List the circuits with their loads in place of the measurement."
            if old
            else "List the circuits with their loads, take the highest demand of a year, or accept this with what the "
            "authority having jurisdiction says.",
            subject=name,
        )


REFED = rule(
    name="standing-load-counts-as-new",
    since="0.1",
    severity=Severity.ADVICE,
    scope="equipment",
    summary="What stands already counts as new, because the feeder to it is not marked as existing.",
    why="It may have been fed from elsewhere when the demand was measured, so it adds to it; where it was fed from "
    "here, it counts twice.",
    wrong=_US + _FED + _MDP + ", measured-over 365 d" + _NEW + "feeder MDP -> LP-2  100 A 3p\n"
    'panel LP-2 208Y/120  bus 100 A, existing\n  1  20 A 1p  1.2 kVA lighting existing "Reading room"\n',
    right=_US + _FED + _MDP + ", measured-over 365 d" + _NEW + "feeder MDP -> LP-2  100 A 3p  existing\n"
    'panel LP-2 208Y/120  bus 100 A, existing\n  1  20 A 1p  1.2 kVA lighting existing "Reading room"\n',
    mends=True,
)


@REFED.check
def standing_load_counts_as_new(view: View, equipment: Equipment) -> Iterator[Finding]:
    name = equipment.name
    if name not in view.loads.behind:
        return
    for child in within_of(view.loads, name).refed:
        feeder = view.network.supply[child]
        if view.loads.nodes[child].up.empty or feeder.statement.damaged:
            continue
        fix = Fix("Mark it `existing`", (append_phrase(feeder.block, feeder.place.span.line, "existing"),), Safety.LOOK)
        unmarked = "new" not in feeder.body.flags and "relocated" not in feeder.body.flags
        yield REFED.finding(
            feeder.place,
            f"`{child}` stands already and adds to what was measured, because the feeder to it is not `existing`",
            found=f"`{child}` marked `existing` on a feeder that is not",
            needed="a feeder marked `existing` where it was fed this way when the demand was measured",
            change="Mark the feeder `existing`; a new one adds what it feeds to the measurement, as it does now.",
            subject=feeder.key,
            fixes=(fix,) if unmarked else (),
        )


NOTHING = rule(
    name="standing-load-not-listed",
    since="0.1",
    severity=Severity.GAP,
    scope="board",
    summary="A board behind a measured one stands already, and nothing tells what it carries.",
    why="The measurement further up holds its load, but its own feeder, main and bus are to be held against its own.",
    wrong=_US + _FED + _MDP + ", measured-over 365 d" + _NEW + "feeder MDP -> LP-2  100 A 3p  existing\n"
    'panel LP-2 208Y/120  bus 100 A, existing\n  1  20 A 1p  1.2 kVA lighting new "Reading room"\n',
    right=_US + _FED + _MDP + ", measured-over 365 d" + _NEW + "feeder MDP -> LP-2  100 A 3p  existing\n"
    "panel LP-2 208Y/120  bus 100 A, existing, measured 21 A, measured-over 30 d\n"
    '  1  20 A 1p  1.2 kVA lighting new "Reading room"\n',
)


@NOTHING.check
def standing_load_not_listed(view: View, board: Equipment) -> Iterator[Finding]:
    reason = NOT_LISTED.format(board.name)
    if reason in view.loads.nodes[board.name].below.unknown and not board.damaged:
        yield NOTHING.finding(
            board.place,
            reason,
            found=f"`{board.name}` marked `existing`, and none of its circuits and feeders",
            needed="its circuits marked `existing` with their loads, or the demand that was measured at it",
            change="Mark the circuits that stand already `existing`, or add `measured` with `measured-over`.",
            subject=board.name,
        )
