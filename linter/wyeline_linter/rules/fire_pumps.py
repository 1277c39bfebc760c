"""Fire pumps under US practice: the device ahead of one carries its locked-rotor current, and never trips on it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.findings import Finding, Fix, Safety, Severity
from wyeline_linter.protection.lines import Line
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.sizing.devices import fire_pump_device, other_motors_a
from wyeline_linter.sizing.writing import rating_edit
from wyeline_linter.systems import Known, System
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_STUDIED = US.replace("  basis us-2023\n", '  basis us-2023\n  revision "A"\n').replace(
    "main 400 A,", "main 400 A, rated 22 kA,"
)
_PUMP = "motor FP-1 460 3ph  25 hp, pf 0.85, eff 93 %, lra 183 A, fire-pump\n"

# Section from memory, as is its other way: an assembly listed for fire pumps, with times of its own.
DEVICE = rule(
    name="fire-pump-device-small",
    since="0.1",
    severity=Severity.WARNING,
    scope="motor",
    basis="us",
    summary="The device ahead of a fire pump, or of several, is smaller than what they draw while one stalls.",
    why="A fire pump that stalls is to try on until it burns: its supply opens for nothing but a short circuit.",
    clause={"us": "695.4(B)(2)(a)"},
    wrong=US + _PUMP + "feeder MSB -> FP-1  70 A 3p  3#6 + G #6 Cu THWN-2  20 m  in 1-1/4 inch RMC\n",
    right=US + _PUMP + "feeder MSB -> FP-1  200 A 3p  3#6 + G #6 Cu THWN-2  20 m  in 1-1/4 inch RMC\n",
    mends=True,
)


# Section from memory.
TRIPS = rule(
    name="fire-pump-ground-fault-trip",
    since="0.1",
    severity=Severity.ERROR,
    scope="study",
    basis="us",
    summary="Ground-fault protection stands on the way to a fire pump.",
    why="A wet motor leaks to earth and still pumps. Ground-fault protection would stop it in the fire that it is for.",
    clause={"us": "695.6(G)"},
    wrong=_STUDIED + _PUMP + "feeder MSB -> FP-1  200 A 3p gfpe  3#6 + G #6 Cu THWN-2  20 m  in 1-1/4 inch RMC\n",
    right=_STUDIED + _PUMP + "feeder MSB -> FP-1  200 A 3p  3#6 + G #6 Cu THWN-2  20 m  in 1-1/4 inch RMC\n",
)


@TRIPS.check
def ground_fault_trip(view: View) -> Iterator[Finding]:
    """What holds such protection on the way to a fire pump: rows, feeders, mains of boards."""
    told = view.studies.of_each("fire pumps on the way", view.model.equipment, _has_fire_pump)
    for equipment in (e for e, has in told if has):
        key = next((p.key for p in equipment.circuits if "fire-pump" in p.circuit.body.flags), "")
        pump = f"circuit {key} of `{equipment.name}`" if key else f"`{equipment.name}`"
        own = view.network.supply.get(equipment.name) if not key else None
        holders: list[tuple[str, Place, bool]] = [
            (f"circuit {p.key} of `{equipment.name}`", Place(p.block, p.circuit.span), True)
            for p in equipment.circuits
            if "fire-pump" in p.circuit.body.flags and _trips_on_ground_faults(p.circuit.body)
        ]
        for name, feeders in _on_the_way(view, equipment.name):
            piece = view.equipment(name)
            if piece is not None and _trips_on_ground_faults(piece.body):
                holders.append((f"`{name}`", piece.place, False))
            trips = (feeder for feeder in feeders if _trips_on_ground_faults(feeder.body))
            holders += [(f"`{feeder.key}`", feeder.place, feeder is own) for feeder in trips]
        for holder, place, alone in holders:
            yield TRIPS.finding(
                place,
                f"{holder} has ground-fault protection, and " + ("feeds" if alone else "stands ahead of")
                + (" a fire pump" if holder == pump else f" the fire pump, {pump}"),
                severity=Severity.ERROR if alone else Severity.WARNING,
                found=f"ground-fault protection at {holder}",
                needed="none on the way to a fire pump",
                change="Leave it out here, or feed the pump from ahead of it.",
                subject=equipment.name,
                position=key,
                clause=clause_of(view, TRIPS),
            )  # fmt: skip


def _on_the_way(view: View, name: str) -> Iterator[tuple[str, list[Feeder]]]:
    """It and what stands ahead of it, over every input of a transfer switch, each with the feeders that feed it."""
    reached = [name, *view.network.above(name)]
    for each in reached:
        piece, supply = view.equipment(each), view.network.supply.get(each)
        feeders = [supply] if supply is not None else []
        if piece is not None and piece.kind == "transfer":
            feeders = view.feeders_into(each)
            ahead = [n for f in feeders for n in (f.source.name, *view.network.above(f.source.name))]
            reached += [n for n in dict.fromkeys(ahead) if n not in reached]
        yield each, feeders


def _has_fire_pump(equipment: Equipment) -> bool:
    if equipment.circuits:
        return any("fire-pump" in placed.circuit.body.flags for placed in equipment.circuits)
    return equipment.kind in LOAD_KINDS and "fire-pump" in equipment.body.flags


def _trips_on_ground_faults(body: Body) -> bool:
    return not {"gfpe", "gfci"}.isdisjoint(body.flags) or not {"gfpe-pickup", "rcd"}.isdisjoint(body.facts)


@DEVICE.check
def fire_pump(view: View, equipment: Equipment) -> Iterator[Finding]:
    state = view.state(equipment.name)
    ahead = state.ahead if state is not None else None
    if "fire-pump" not in equipment.body.flags or ahead is None or ahead.device_a is None:
        return
    holder = view.model.feeders.get(ahead.device_at)
    fact = holder.body.facts.get("rating") if holder is not None else None
    place = Place(holder.block, fact.span) if holder is not None and fact is not None else equipment.place
    own = holder.body if holder is not None and holder.target.name == equipment.name else None
    arriving = state.arriving if state is not None else None
    system = arriving.system if isinstance(arriving, Known) else None
    where = f"`{equipment.name}`"
    yield from _small(view, equipment.body, own, ahead.device_a, system, where, place, equipment.name, "")


@DEVICE.also("line")
def fire_pump_circuit(view: View, line: Line) -> Iterator[Finding]:
    guard = line.guard
    if guard is None or not guard.own or not {"motor", "fire-pump"} <= line.body.flags.keys():
        return
    yield from _small(
        view, line.body, line.body, guard.amps, line.system, line.where, line.place_of("rating"), line.subject,
        line.position,
    )  # fmt: skip


def _small(
    view: View, pump: Body, device: Body | None, device_a: float, system: System | None, where: str, place: Place,
    subject: str, position: str,
) -> Iterator[Finding]:  # fmt: skip
    locked_a = pump.number("lra")
    if view.tables is None or locked_a is None:
        return
    several = (pump.number("count") or 1.0) > 1
    others_a = other_motors_a(view.tables, pump, system) if system is not None else None
    carried_a = locked_a + (others_a or 0.0)
    if device_a >= carried_a * 0.9995:
        return
    draws, needed, change = f"{locked_a:g} A while it stalls", f"{carried_a:g} A or more", ""
    if several:
        running = f"{others_a:g} A" if others_a is not None else "an unknown current"
        draws = f"{locked_a:g} A while one pump stalls, and {running} of the others"
        needed = f"{needed}: {locked_a:g} A of one that stalls, {running} of the others at full load"
        change = " Where the pumps can start at once, the device carries the locked-rotor current of each."
    found = fire_pump_device(view.tables, carried_a)
    fixes: tuple[Fix, ...] = ()
    if device is not None and not isinstance(found, NotListed) and (others_a is not None or not several):
        edit = rating_edit(place.block, device, found.value)
        fixes = (Fix(f"Make the device {found.value:g} A", (edit,), Safety.LOOK),) if edit is not None else ()
    yield DEVICE.finding(
        place,
        f"{where} draws {draws}; the device ahead is {device_a:g} A",
        found=f"{device_a:g} A",
        needed=f"{needed}, besides the full-load current of all else behind the device",
        change="Take the next standard rating above. Where it is an assembly listed for fire pumps, accept this "
        f"with that reason.{change}",
        subject=subject,
        position=position,
        fixes=fixes,
        clause=clause_of(view, DEVICE),
    )
