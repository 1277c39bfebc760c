"""Boards without a main of their own: what protects their bus, and what their lugs pass on."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.notation import VoltageForm
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.findings import Edit, Finding, Fix, Related, Safety, Severity, append_phrase, replace
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Known

if TYPE_CHECKING:
    from wyeline_linter.view import View

_US = 'project "Annex"\n  basis us-2023\n'
_MSB = (
    _US + "utility UTIL 480Y/277  fault 14 kA, x/r 4\nfeeder UTIL -> MSB  400 A 3p\n"
    "switchboard MSB 480Y/277  bus 400 A, main 400 A\n"
)
_TX = _MSB + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %\nfeeder MSB -> TX-1  70 A 3p\nfeeder TX-1 -> LP-1\n"

LUGS = rule(
    name="lugs-only-unprotected",
    since="0.1",
    severity=Severity.ERROR,
    scope="board",
    basis="both",
    summary="A board without a main breaker has no device ahead of it, or one larger than its bus.",
    why="Nothing would open before the busbars are damaged.",
    clause={"us": "408.36", "iec": "60364-4-43 433.1"},
    wrong=_MSB + "panel LP-1 480Y/277  bus 100 A, main lugs\nfeeder MSB -> LP-1  125 A 3p\n",
    right=_MSB + "panel LP-1 480Y/277  bus 125 A, main lugs\nfeeder MSB -> LP-1  125 A 3p\n",
    mends=True,
)
AFTER_TRANSFORMER = rule(
    name="panel-after-transformer-unprotected",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    basis="both",
    summary="A panel behind a transformer has no device on the secondary side.",
    why="The device on the primary side sees the secondary current only scaled and shifted, and protects no panel.",
    clause={"us": "408.36(B), 240.21(C)", "iec": "60364-4-43 433.1"},
    wrong=_TX + "panel LP-1 208Y/120  bus 125 A\n",
    right=_TX + "panel LP-1 208Y/120  bus 125 A, main 125 A\n",
    mends=True,
)


def _main(equipment: Equipment) -> tuple[str, float | str | None]:
    """The key of the board's main, and its rating in ampere, its word, or None where nothing is written."""
    for key in ("main", "incomer"):
        fact = equipment.body.facts.get(key)
        if fact is not None:
            data = fact.value.data
            return key, float(data) if isinstance(data, float | int) else fact.value.text
    return "main", None


@LUGS.check
def bus_protection(view: View, equipment: Equipment) -> Iterator[Finding]:
    """A board's bus against the nearest device ahead of it."""
    state = view.state(equipment.name)
    if equipment.kind not in BOARDS or state is None or state.ahead is None or equipment.damaged:
        return
    key, main = _main(equipment)
    if isinstance(main, float) or not isinstance(state.arriving, Known):
        return
    ahead, bus = state.ahead, equipment.body.number("bus")
    maker = view.equipment(ahead.maker)
    if ahead.device_a is None:
        if maker is None or maker.damaged:
            return
        if maker.kind == "transformer":
            if equipment.kind == "panel" and not _covered_by_primary(view, maker):
                yield _unprotected(view, equipment, maker, key, main, bus)
        elif main == "lugs":
            yield LUGS.finding(
                equipment.place_of(key),
                f"`{equipment.name}` has main lugs, and no device is written between it and `{maker.name}`",
                found="no overcurrent device ahead of its bus",
                needed=f"a device of {bus:g} A or less" if bus else "a device no larger than its bus",
                change="Write the device on the feeder, or give the board a main.",
                subject=equipment.name,
                fixes=_give_main(equipment, key, main, bus),
                clause=clause_of(view, LUGS),
            )
        return
    if main is None or bus is None or ahead.device_a <= bus:
        return
    lugs = f", through the lugs of `{ahead.lugs[-1]}`" if ahead.lugs else ""
    device = view.model.feeders.get(ahead.device_at)
    holder = view.equipment(ahead.device_at)
    place = device.place if device is not None else holder.place if holder is not None else None
    yield LUGS.finding(
        equipment.place_of("bus"),
        f"the bus of `{equipment.name}` is rated {bus:g} A, and the device ahead of it is {ahead.device_a:g} A{lugs}",
        found=f"{ahead.device_a:g} A at `{ahead.device_at}`",
        needed=f"{bus:g} A or less, as the bus is rated",
        change="Choose a smaller device, a larger bus, or a main in this board.",
        subject=equipment.name,
        related=(Related(place, "the device is written here"),) if place is not None else (),
        fixes=_give_main(equipment, key, main, bus),
        clause=clause_of(view, LUGS),
    )


def _covered_by_primary(view: View, maker: Equipment) -> bool:
    """Whether the primary device may protect the secondary: two wires, or delta to delta with three (NEC 240.21(C)(1),
    408.36(B) exception)."""
    primary, secondary = view.derivation.stated(maker.primary), view.derivation.stated(maker.secondary)
    if primary is None or secondary is None:
        return False
    three = VoltageForm.THREE_WIRE
    return secondary.form is VoltageForm.TWO_WIRE or (primary.form is three and secondary.form is three)


def _unprotected(
    view: View, equipment: Equipment, maker: Equipment, key: str, main: float | str | None, bus: float | None
) -> Finding:
    return AFTER_TRANSFORMER.finding(
        equipment.place_of(key),
        f"`{equipment.name}` is fed by the transformer `{maker.name}`, and no device protects it on that side",
        found=f"no overcurrent device between `{maker.name}` and the bus of `{equipment.name}`",
        needed=f"a device of {bus:g} A or less on the secondary side" if bus else "a device on the secondary side",
        change="Give the panel a main, or write a device on the feeder from the transformer.",
        subject=equipment.name,
        related=(Related(maker.place, "the transformer"),),
        fixes=_give_main(equipment, key, main, bus),
        clause=clause_of(view, AFTER_TRANSFORMER),
    )


def _give_main(equipment: Equipment, key: str, main: float | str | None, bus: float | None) -> tuple[Fix, ...]:
    """A main as large as the bus, where the board's own statement says what its bus is."""
    if bus is None:
        return ()
    text = f"{key} {bus:g} A"
    own = equipment.statement.body.facts.get(key)
    edit: Edit
    if main is not None and own is not None:
        edit = replace(Place(equipment.block, own.span), text)
    else:
        edit = append_phrase(equipment.block, equipment.statement.head.line, text)
    return (Fix(f"Give `{equipment.name}` a main of its bus's rating: `{text}`", (edit,), Safety.LOOK),)


ABSENT = rule(
    name="through-lugs-absent",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder",
    summary="A panel passes its bus on by lugs that it is not said to have.",
    why="Feed-through and second lugs are ordered with the panel; they cannot be added on site.",
    wrong="utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LA-1  200 A 3p\npanel LA-1 208Y/120  bus 225 A\n"
    "panel LA-2 208Y/120  bus 225 A\nfeeder LA-1.through -> LA-2\n",
    right="utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LA-1  200 A 3p\n"
    "panel LA-1 208Y/120  bus 225 A, through-lugs\n"
    "panel LA-2 208Y/120  bus 225 A\nfeeder LA-1.through -> LA-2\n",
    mends=True,
)
_LUG_FLAGS = {"through": "through-lugs", "subfeed": "subfeed-lugs"}


@ABSENT.check
def through_lugs_absent(view: View, feeder: Feeder) -> Iterator[Finding]:
    source = view.equipment(feeder.source.name)
    flag = _LUG_FLAGS.get(feeder.source.port or "")
    if source is None or flag is None or source.kind != "panel" or flag in source.body.flags or source.damaged:
        return
    line = source.statement.head.line
    yield ABSENT.finding(
        Place(feeder.block, feeder.source.span),
        f"`{source.name}` feeds `{feeder.target.name}` by its lugs, and it is not said to have `{flag}`",
        found=f"`{source.name}` without `{flag}`",
        needed=f"`{flag}` on `{source.name}`",
        change=f"Write `{flag}` on `{source.name}`, or feed `{feeder.target.name}` through a device.",
        subject=feeder.key,
        related=(Related(source.place, "the panel"),),
        fixes=(Fix(f"Give `{source.name}` {flag}", (append_phrase(source.block, line, flag),), Safety.LOOK),),
    )
