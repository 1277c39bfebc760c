"""How systems are earthed, and what must go with it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.findings import Finding, Fix, Related, Safety, Severity, delete_phrase, replace
from wyeline_linter.network import makes_system, two_sided
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.system_words import conductor_text, earthing_in_words
from wyeline_linter.systems import EarthingKind, Known, Shape, System, volts_text
from wyeline_linter.verdicts import NoteKind
from wyeline_linter.windings import Transformed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_US = 'project "Annex"\n  basis us-2023\n'
_MSB = "feeder UTIL -> MSB  400 A 3p\nswitchboard MSB 480 3ph  bus 400 A, main 400 A\n"
_BH = "feeder UTIL -> BH-1  200 A 3p\npanel BH-1  bus 225 A, main 200 A\n"

RESTATED = rule(
    name=NoteKind.EARTHING_RESTATED.value,
    since="0.1",
    severity=Severity.WARNING,
    scope="equipment",
    summary="A board names a system that is earthed otherwise than the source that feeds it.",
    why="Earthing is decided at the source or transformer that makes the system, never at a board.",
    clause={"us": "250.20", "iec": "60364-1 312.2"},
    wrong="system ISO-1 400Y/230  earthing IT\nutility UTIL 400Y/230  fault 10 kA, x/r 4, earthing TN-S\n"
    "feeder UTIL -> DP\npanel DP ISO-1  bus 100 A\n",
    right="system ISO-1 400Y/230  earthing IT\nutility UTIL ISO-1  fault 10 kA, x/r 4\n"
    "feeder UTIL -> DP\npanel DP ISO-1  bus 100 A\n",
    mends=True,
)


@RESTATED.check
def earthing_restated(view: View, equipment: Equipment) -> Iterator[Finding]:
    side, state = equipment.primary, view.state(equipment.name)
    if side is None or side.name is None or state is None or not isinstance(state.arriving, Known):
        return
    voltage = view.derivation.stated(side)
    if "earthing" in equipment.body.facts:
        return  # what a board says of its own earthing is judged by itself
    stated = view.derivation.earthing(equipment, side, voltage) if voltage is not None else None
    arriving = state.arriving.system
    if voltage is None or stated is None or stated.same_as(arriving.earthing):
        return
    place = Place(equipment.block, side.span)
    own = equipment.statement.primary == side
    yield RESTATED.finding(
        place if own else equipment.place,
        f"`{equipment.name}` names `{side.name}`, which is earthed otherwise than its source: "
        f"{earthing_in_words(arriving)}",
        found=f"`{side.name}`: {stated.arrangement.value if stated.arrangement else stated.kind.value}",
        needed=f"what the source makes: {earthing_in_words(arriving)}",
        change="Name the system at the source that makes it, and write the plain voltage here, or nothing.",
        subject=equipment.name,
        fixes=(Fix(f"Write `{voltage.text}`", (replace(place, voltage.text),), Safety.LOOK),) if own else (),
        clause=clause_of(view, RESTATED),
    )


MUST_GROUND = rule(
    name="system-must-be-grounded",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    basis="us",
    summary="A system that has to have one conductor tied to earth is stated to have none.",
    why="Without it the voltage to earth of every leg is left to chance, and an earth fault trips nothing.",
    clause={"us": "250.20(B)"},
    wrong=_US + "utility UTIL 208Y/120  fault 10 kA, x/r 4, ground none\n",
    right=_US + "utility UTIL 208Y/120  fault 10 kA, x/r 4\n",
    mends=True,
)


@MUST_GROUND.check
def system_must_be_grounded(view: View, equipment: Equipment) -> Iterator[Finding]:
    if not (makes_system(equipment) or two_sided(equipment)):
        return
    state = view.state(equipment.name)
    if state is None or not isinstance(state.system, Known):
        return
    if isinstance(state.winding, Transformed) and not state.winding.separately_derived:
        return
    system = state.system.system
    if system.frequency_hz == 0 or system.earthing.kind is not EarthingKind.NONE or not system.earthing.stated:
        return
    why = _why_grounded(system)
    if why is None:
        return
    key = next((k for k in ("ground", "earthing") if k in equipment.body.facts), None)
    place = equipment.place_of(key) if key else equipment.place
    own = key is not None and key in equipment.statement.body.facts
    yield MUST_GROUND.finding(
        place,
        f"`{equipment.name}` makes {system.nominal.text} with nothing earthed, and {why}",
        found="no earthed conductor",
        needed="one conductor solidly earthed",
        change="Leave `ground none` out, or say which conductor is earthed.",
        subject=equipment.name,
        fixes=(Fix("Leave `ground none` out", (delete_phrase(place),), Safety.LOOK),) if own else (),
        clause=clause_of(view, MUST_GROUND),
    )


def _why_grounded(system: System) -> str | None:
    """Which of the three cases of NEC 250.20(B) it is, in words, or None."""
    if system.shape in (Shape.WYE4, Shape.TWO_LEGS3):
        return "a wye whose neutral is a circuit conductor has it earthed"
    if system.shape in (Shape.HIGH_LEG4, Shape.SPLIT3):
        return "a winding whose middle is a circuit conductor has it earthed"
    if len(system.conductors) == 2 and system.widest_v <= 150.0:
        return f"a two-wire system of {volts_text(system.widest_v)} can be earthed within 150 V"
    return None


INDICATOR = rule(
    name="earth-fault-indicator-missing",
    since="0.1",
    severity=Severity.WARNING,
    scope="board",
    basis="both",
    summary="No leg of this system is solidly earthed, and nothing in the model shows the first earth fault.",
    why="The first fault trips nothing and makes no sound; unseen, it waits for the second one.",
    clause={"us": "250.21(B), 250.36(2)", "iec": "60364-4-41 411.6.3"},
    wrong=_US + "utility UTIL 480 3ph  fault 14 kA, x/r 4\n" + _MSB,
    right=_US + "utility UTIL 480Y/277  fault 14 kA, x/r 4\n" + _MSB,
)
_LOW_VOLTAGE_V = 1000.0


@INDICATOR.check
def earth_fault_indicator_missing(view: View, equipment: Equipment) -> Iterator[Finding]:
    """At the first board behind what makes the system: that is where the monitor stands."""
    if equipment.kind not in BOARDS:
        return
    state = view.state(equipment.name)
    if state is None or state.ahead is None or state.ahead.board or not isinstance(state.arriving, Known):
        return
    system = state.arriving.system
    if system.frequency_hz == 0 or system.widest_v > _LOW_VOLTAGE_V or system.earthing.kind is EarthingKind.SOLID:
        return
    maker = view.equipment(state.ahead.maker)
    earthed = "P"
    if maker is not None and system.earthing.kind is EarthingKind.NONE and not system.earthing.stated:
        how = "`earthing TN-S`" if view.derivation.practice == "iec" else "`ground solid`"
        earthed = f"If it is earthed, write how at `{maker.name}`, as in {how}; if not, p"
    yield INDICATOR.finding(
        equipment.place,
        f"`{equipment.name}` stands on a system without a solidly earthed conductor, and nothing shows an earth fault",
        found=f"{earthing_in_words(system)}; no earth-fault detector or insulation monitor",
        needed="an alarm that shows the first earth fault",
        change=f"{earthed}rovide a detector or monitor, and say where with "
        '`allow earth-fault-indicator-missing "…"` under this board.',
        subject=equipment.name,
        related=(Related(maker.place, "the system is made here"),) if maker is not None else (),
        clause=clause_of(view, INDICATOR),
    )


HIGH_MIDDLE = rule(
    name="high-leg-not-in-middle",
    since="0.1",
    severity=Severity.WARNING,
    scope="board",
    basis="us",
    summary="The high leg of a delta does not stand on the middle bus of a board.",
    why="Everyone who works on the board looks for the high leg in the middle, marked orange.",
    clause={"us": "408.3(E)(1), 110.15"},
    wrong=_US + "utility UTIL 240/120 3ph  fault 10 kA, x/r 2, high C\n" + _BH,
    right=_US + "utility UTIL 240/120 3ph  fault 10 kA, x/r 2\n" + _BH,
    mends=True,
)


@HIGH_MIDDLE.check
def high_leg_not_in_middle(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS:
        return
    state = view.state(equipment.name)
    if state is None or not isinstance(state.arriving, Known):
        return
    system = state.arriving.system
    high = system.high_leg
    if high is None or len(system.legs) != 3 or system.legs[1] == high:
        return
    maker = view.equipment(state.ahead.maker) if state.ahead is not None else None
    fact = maker.statement.body.facts.get("high") if maker is not None else None
    place = Place(maker.block, fact.span) if maker is not None and fact is not None else None
    middle = conductor_text(system.legs[1], view.basis)
    yield HIGH_MIDDLE.finding(
        equipment.place,
        f"`{equipment.name}` has the high leg on {conductor_text(high, view.basis)}, and its middle bus is {middle}",
        found=f"high leg {conductor_text(high, view.basis)}: {volts_text(system.nominal_v(high, 'N'))} to neutral",
        needed=f"the high leg on {middle}, marked orange",
        change="Turn the legs where the system is made, or accept the old board with a reason.",
        subject=equipment.name,
        related=(Related(place, "the high leg is set here"),) if place is not None else (),
        fixes=(Fix("Make B the high leg where the system is made", (replace(place, "high B"),), Safety.LOOK),)
        if place is not None
        else (),
        clause=clause_of(view, HIGH_MIDDLE),
    )
