"""Whether a device is made for the voltage that it must open."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Fact
from wyeline_grammar.notation import Voltage
from wyeline_linter.board_positions import positions_of
from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Known, System, volts_text

if TYPE_CHECKING:
    from wyeline_linter.view import View

_DELTA = (
    "utility UTIL 480 3ph  fault 14 kA, x/r 4, ground none\nfeeder UTIL -> MSB\nswitchboard MSB 480 3ph  bus 400 A\n"
    "motor P-1 460 3ph  10 hp\n"
)

SLASH = rule(
    name="slash-rating-misused",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    summary="A device with a slash voltage rating stands where a leg may be farther from earth than its lower figure.",
    why="Each of its poles alone is made for the lower voltage; an earth fault puts more on one of them.",
    clause={"us": "240.85", "iec": "60947-2"},
    wrong=_DELTA + "feeder MSB -> P-1  35 A 3p voltage 480Y/277\n",
    right=_DELTA + "feeder MSB -> P-1  35 A 3p voltage 480 3ph\n",
    mends=True,
)
LOW = rule(
    name="device-voltage-low",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    summary="A device is rated for less than the voltage between the wires that it opens.",
    why="It cannot quench the arc of a higher voltage, and may burst when it tries.",
    clause={"us": "110.4, 240.83", "iec": "60947-2 4.3.2"},
    wrong=_DELTA + "feeder MSB -> P-1  35 A 3p voltage 240 V\n",
    right=_DELTA + "feeder MSB -> P-1  35 A 3p voltage 600 V\n",
)


@SLASH.also("feeder", said=("voltage",))
def feeder_device(view: View, feeder: Feeder) -> Iterator[Finding]:
    fact = feeder.body.facts.get("voltage")
    state = view.feeder_state(feeder.key)
    if fact is None or state is None or not isinstance(state.offered, Known):
        return
    legs = view.derivation.taken_legs(feeder, state.offered) or ()
    taken = tuple(leg for leg in legs if leg in state.offered.system.conductors)
    system = state.offered.system.restrict(tuple(dict.fromkeys(taken))) if taken else state.offered.system
    place = Place(feeder.block, fact.span)
    yield from _judge(view, place, fact, state.offered.system, system, f"`{feeder.source.name}`", feeder.key, "")


@SLASH.also("equipment", said=("voltage",))
def equipment_device(view: View, equipment: Equipment) -> Iterator[Finding]:
    state = view.state(equipment.name)
    if state is None:
        return
    fact = equipment.body.facts.get("voltage")
    if fact is not None and equipment.kind != "spd" and isinstance(state.arriving, Known):
        place = equipment.place_of("voltage")
        name = equipment.name
        yield from _judge(view, place, fact, state.arriving.system, state.arriving.system, f"`{name}`", name, "")
    if not any("voltage" in p.circuit.body.facts for p in equipment.circuits):
        return
    positions = positions_of(view, equipment)
    whole = positions.system
    for occupant in positions.occupants:
        fact = occupant.body.facts.get("voltage")
        if fact is None or occupant.circuit is None or whole is None:
            continue
        legs = positions.legs_of(occupant)
        part = whole.restrict(tuple(leg for leg in dict.fromkeys(legs) if leg in whole.legs)) if legs else whole
        where = f"circuit {occupant.key} of `{equipment.name}`"
        place = Place(occupant.place.block, fact.span)
        yield from _judge(view, place, fact, whole, part, where, equipment.name, occupant.key)


def _judge(
    view: View, place: Place, fact: Fact, whole: System, part: System, where: str, subject: str, position: str
) -> Iterator[Finding]:
    rated = fact.value.data
    if isinstance(rated, Voltage):
        straight, slash = rated.high_v or rated.line_v, rated.neutral_v
    elif isinstance(rated, float | int):
        straight, slash = float(rated), None
    else:
        return
    legs = part.legs
    between = max((part.nominal_v(a, b) for i, a in enumerate(legs) for b in legs[i + 1 :]), default=0.0)
    line = between or (part.nominal_v(legs[0], "N") if part.has_neutral and legs else 0.0)
    if line > straight * 1.01:
        yield LOW.finding(
            place,
            f"the device is rated {volts_text(straight)}, and {where} has {volts_text(line)} between its wires",
            found=f"a device for {volts_text(straight)}",
            needed=f"one for {volts_text(line)} or more",
            change=f"Choose a device rated for at least {volts_text(line)}.",
            subject=subject,
            position=position,
            clause=clause_of(view, LOW),
        )
        return
    ground = max((whole.volts_to_ground(leg) for leg in legs), default=0.0)
    if slash is None or ground <= slash * 1.01:
        return
    worst = max(legs, key=whole.volts_to_ground)
    why = (
        f"leg {worst} is {volts_text(ground)} to earth"
        if whole.earth is not None
        else f"the system is not solidly earthed, so a leg may stand at {volts_text(ground)} to earth"
    )
    straight_text = f"{whole.widest_v:g} 3ph" if whole.widest_v < 1000 else f"{whole.widest_v / 1000:g} kV 3ph"
    edit = replace(place, f"voltage {straight_text}")
    yield SLASH.finding(
        place,
        f"the device is rated {fact.value.text}, and at {where} {why}",
        found=why,
        needed=f"{volts_text(slash)} to earth at the most, on a solidly earthed system",
        change=f"Choose a device with a straight rating, as in `voltage {straight_text}`.",
        subject=subject,
        position=position,
        fixes=(Fix(f"Rate the device straight: `{straight_text}`", (edit,), Safety.LOOK),),
        clause=clause_of(view, SLASH),
    )
